"""The light: a photographed room all round, and lamps or a window of its own. Irradiances are told as shares of the
main light's on the sheet, so that a strength of 1 is a paper white of 0.8 / pi."""

import base64
import os
import tempfile

import bpy
import numpy as np
from mathutils import Vector

from materials import plain
from scene import NONE, add, box

WARM, COOL, DAY = (1.0, 0.62, 0.3), (0.8, 0.9, 1.0), (1.0, 0.95, 0.88)


def light_up(scene, camera, lie, s, rooms):
    """@param rooms folder with NAME.exr, or NAME.exr.js that holds one as a data URL."""
    room, make = LIGHTS[s.light]
    world_light(scene, os.path.join(rooms, s.room), room * s.rng.uniform(0.7, 1.4), s)
    lamp = make(camera, s) if make else None
    if s.light.endswith("shadow"):
        cast_shadow(lamp, lie, s)


def world_light(scene, stem, irradiance, s):
    image = bpy.data.images.load(room_file(stem))
    w, h = image.size
    rgb = np.empty(w * h * 4, np.float32)
    image.pixels.foreach_get(rgb)
    rgb = rgb.reshape(h, w, 4)[..., :3]
    # Rows run from the nadir up; the upper half lights the sheet by the cosine of its zenith angle.
    elevation = (np.arange(h) + 0.5) / h * np.pi - np.pi / 2
    weight = np.maximum(0, np.sin(elevation)) * np.cos(elevation) * (np.pi / h) * (2 * np.pi / w)
    total = float((rgb.mean(-1) * weight[:, None]).sum())
    scene.world.use_nodes = True
    nodes, links = scene.world.node_tree.nodes, scene.world.node_tree.links
    where, turn, sky = (
        nodes.new("ShaderNodeTexCoord"),
        nodes.new("ShaderNodeMapping"),
        nodes.new("ShaderNodeTexEnvironment"),
    )
    sky.image = image
    turn.inputs["Rotation"].default_value = (s.rng.normal(0, 0.1), s.rng.normal(0, 0.1), s.rng.uniform(0, 2 * np.pi))
    links.new(where.outputs["Generated"], turn.inputs["Vector"])
    links.new(turn.outputs["Vector"], sky.inputs["Vector"])
    links.new(sky.outputs["Color"], nodes["Background"].inputs["Color"])
    nodes["Background"].inputs["Strength"].default_value = irradiance / total
    scene.world.cycles.sampling_method, scene.world.cycles.sample_map_resolution = "MANUAL", 512


def room_file(stem):
    if os.path.exists(f"{stem}.exr"):
        return f"{stem}.exr"
    if not os.path.exists(f"{stem}.exr.js"):
        raise SystemExit(
            f"No room {stem}.exr (or .exr.js with its data URL). Name the folder of rooms as fourth argument."
        )
    with open(f"{stem}.exr.js") as source:
        code = source.read().split("base64,")[1].split("'")[0]
    path = os.path.join(tempfile.mkdtemp(), "room.exr")
    with open(path, "wb") as target:
        target.write(base64.b64decode(code))
    return path


def area(at, size, irradiance, rgb, shape="RECTANGLE"):
    """An area light that faces the sheet. A lamp of power P gives P / (4 d^2) straight ahead."""
    data = bpy.data.lights.new("lamp", "AREA")
    data.shape, data.size, data.size_y = shape, size[0], size[1]
    at = Vector([float(k) for k in at])
    upright = max(0.2, at.z / at.length)
    data.energy = 4 * at.length_squared * irradiance / upright
    data.color = rgb
    thing = bpy.data.objects.new("lamp", data)
    thing.location = at
    thing.rotation_euler = (-at).to_track_quat("-Z", "Y").to_euler()
    thing["truth"] = NONE
    bpy.context.collection.objects.link(thing)
    return thing


def around(s, distance, elevation_deg):
    turn, up = s.rng.uniform(0, 2 * np.pi), np.radians(s.rng.uniform(*elevation_deg))
    return np.array([np.cos(turn) * np.cos(up), np.sin(turn) * np.cos(up), np.sin(up)]) * distance


def window(camera, s):
    """One bright opening, upright."""
    at = around(s, s.rng.uniform(900, 1600), (22, 50))
    rgb = COOL if s.rng.random() < 0.6 else DAY
    return area(at, (s.rng.uniform(500, 1000), s.rng.uniform(700, 1200)), 1.0, rgb)


def torch(camera, s):
    """The phone's own lamp, 15 mm beside its camera."""
    frame = np.array(camera.matrix_world)
    at = frame[:3, 3] + frame[:3, 0] * 14 * s.rng.choice([-1, 1]) - frame[:3, 2] * 1
    return area(at, (4, 4), s.rng.uniform(0.6, 1.2), COOL, "DISK")


def desk_lamp(camera, s):
    size = s.rng.uniform(40, 150)
    rgb = np.array(WARM) * s.rng.uniform(0.4, 1) + (1 - np.array(WARM)) * 0.25
    return area(
        around(s, s.rng.uniform(350, 600), (35, 75)), (size, size), s.rng.uniform(0.9, 1.6), rgb / rgb.max(), "DISK"
    )


def ceiling(camera, s):
    count = int(s.rng.integers(1, 4))
    rgb = WARM if s.rng.random() < 0.4 else DAY
    return [
        area(
            around(s, s.rng.uniform(1400, 2200), (40, 85)),
            (s.rng.uniform(60, 180), s.rng.uniform(60, 700)),
            1.0 / count,
            rgb,
        )
        for _ in range(count)
    ][0]


def sun(camera, s):
    at = around(s, 1, (25, 60))
    data = bpy.data.lights.new("sun", "SUN")
    data.energy, data.angle, data.color = 2.2, 0.0093, (1.0, 0.93, 0.82)
    thing = bpy.data.objects.new("sun", data)
    thing.location = at * 2000
    thing.rotation_euler = (-Vector(at)).to_track_quat("-Z", "Y").to_euler()
    thing["truth"] = NONE
    bpy.context.collection.objects.link(thing)
    return thing


def cast_shadow(lamp, lie, s):
    """A phone or an arm between the lamp and a part of the sheet, outside the picture."""
    spot = np.array([s.rng.uniform(-0.5, 0.5) * lie.w, s.rng.uniform(-0.5, 0.5) * lie.h, 0])
    way = np.array(lamp.location) - spot
    size = (75, 150, 9) if s.rng.random() < 0.5 else (260, 60, 50)
    thing = add("shade", box(size, 4), plain("shade", (0.1, 0.08, 0.07), 0.6), NONE)
    thing.location = spot + way / np.linalg.norm(way) * s.rng.uniform(90, 200)
    thing.rotation_euler = (0, 0, s.rng.uniform(0, 6))
    thing.visible_camera = False


LIGHTS = {
    "room": (1.0, None),
    "window": (0.35, window),
    "torch": (0.3, torch),
    "desk lamp": (0.25, desk_lamp),
    "ceiling": (0.4, ceiling),
    "sun": (0.4, sun),
    "window shadow": (0.3, window),
    "lamp shadow": (0.3, desk_lamp),
}
