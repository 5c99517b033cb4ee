"""A phone's camera: a pinhole with a lens a little out of focus."""

import bpy
import numpy as np
from mathutils import Matrix

LONG_PX, LARGE_PX = 1440, 1680


def set_camera(scene, lie, s):
    """Places the camera so that the sheet fills most of the picture."""
    portrait = abs(np.sin(np.radians(s.roll_deg))) > 0.7
    long_px = LONG_PX if s.width_mm < 200 else LARGE_PX
    w, h = (long_px * 3 // 4, long_px) if portrait else (long_px, long_px * 3 // 4)
    scene.render.resolution_x, scene.render.resolution_y = w, h
    data = bpy.data.cameras.new("phone")
    data.sensor_fit, data.sensor_width = "HORIZONTAL", 36
    view = np.radians(s.rng.uniform(38, 62)) * (0.78 if portrait else 1)
    data.lens = 18 / np.tan(view / 2)
    data.clip_start, data.clip_end = 1, 10000
    camera = bpy.data.objects.new("phone", data)
    camera["truth"] = "none"
    bpy.context.collection.objects.link(camera)
    scene.camera = camera
    target, fill = np.zeros(3), s.rng.uniform(0.80, 0.90)
    lean, turn, roll = np.radians([s.tilt_deg, s.rng.uniform(0, 360), s.roll_deg])
    z = np.array([np.sin(lean) * np.cos(turn), np.sin(lean) * np.sin(turn), np.cos(lean)])
    up = np.array([-np.sin(roll), np.cos(roll), 0])
    x = np.cross(up, z)
    x /= np.linalg.norm(x)
    y = np.cross(z, x)
    distance = 250.0
    corners = lie.world(np.array([0, lie.w, lie.w, 0.0]), np.array([0, 0, lie.h, lie.h * 1.0]))
    for _ in range(12):
        eye = target + z * distance
        camera.matrix_world = Matrix([[*map(float, row), 0] for row in np.stack([x, y, z], 1)] + [[0, 0, 0, 1]])
        camera.location = eye
        bpy.context.view_layer.update()
        px = project(scene, camera, corners)
        low, high = px.min(0), px.max(0)
        distance *= max((high - low) / (w, h)) / fill
        scale = distance / (w / 2 / np.tan(view / 2))
        off = (low + high) / 2 - (w / 2, h / 2)
        target = target + (x * off[0] - y * off[1]) * scale
    data.dof.use_dof = True
    data.dof.focus_distance = distance * s.rng.normal(1, 0.03)
    # Cycles takes the lens in thousandths of a unit: an opening of some 1.2 mm across.
    data.dof.aperture_fstop = data.lens / 1000 / s.rng.uniform(0.5, 1.8)
    return camera


def project(scene, camera, points):
    """Photo pixels (n, 2) of world points (n, 3); x right, y down, (0, 0) the picture's corner."""
    w, h = scene.render.resolution_x, scene.render.resolution_y
    frame = np.array(camera.matrix_world)
    local = (np.atleast_2d(points) - frame[:3, 3]) @ frame[:3, :3]
    f = camera.data.lens / camera.data.sensor_width * w
    return np.stack([w / 2 + f * local[:, 0] / -local[:, 2], h / 2 - f * local[:, 1] / -local[:, 2]], -1)


def homography(mm, px):
    """The 3 x 3 map from four points in mm to four in pixels, last element 1."""
    rows, right = [], []
    for (x, y), (u, v) in zip(mm, px):
        rows += [[x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]]
        right += [u, v]
    return np.append(np.linalg.solve(np.array(rows, float), np.array(right, float)), 1).reshape(3, 3)
