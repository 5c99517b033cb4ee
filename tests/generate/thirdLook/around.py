"""What else is in the room: fingers, tools, offcuts on the table, and the photographer whom the foil mirrors."""

import bmesh
import bpy
import numpy as np

from materials import Tree, plain, skin
from paths import smooth_curve
from scene import OTHER, add, ball, box, cylinder, tube

SKINS = ((0.55, 0.31, 0.22), (0.62, 0.38, 0.28), (0.33, 0.17, 0.1), (0.16, 0.075, 0.045), (0.5, 0.27, 0.19))


def lay_around(lie, camera, s):
    tone = SKINS[int(s.rng.integers(len(SKINS)))]
    photographer(camera, tone, s)
    if s.fingers:
        lay_fingers(lie, tone, s)
    if s.tool:
        lay_scissors(lie, s)
    lay_clutter(lie, s)


def photographer(camera, tone, s):
    """A phone, the hand that holds it, head and chest behind the camera: seen only as reflections and shade."""
    frame = np.array(camera.matrix_world)
    x, y, z, eye = frame[:3, 0], frame[:3, 1], frame[:3, 2], frame[:3, 3]
    cloth = plain("clothes", s.rng.uniform(0.02, 0.5) * s.rng.uniform(0.4, 1, 3), 0.9)
    phone = add("phone", box((76, 156, 8), 3), plain("phone", (0.02, 0.02, 0.022), 0.25))
    phone.matrix_world = camera.matrix_world
    phone.location = eye + 7 * z - 26 * x * s.rng.choice([-1, 1]) - 60 * y * s.rng.choice([-1, 1])
    nearer = -y * [1, 1, 0]
    nearer = nearer / max(1e-6, np.hypot(*nearer[:2]))
    shapes = (
        (cloth, nearer * 330 + (0, 0, eye[2] - 40), (230, 130, 330)),
        (skin(tone), eye + nearer * 130 + (0, 0, 260), (80, 100, 120)),
        (skin(tone), eye + 20 * z - 70 * y, (45, 40, 30)),
    )
    for material, at, radii in shapes:
        thing = add("photographer", ball(1, 32), material)
        thing.location, thing.scale = at, radii
        thing.visible_camera = False


def lay_fingers(lie, tone, s):
    """Fingertips that hold the sheet down at an edge."""
    rng = s.rng
    side = s.sides[-1]
    out = np.array([(0, 1), (1, 0), (0, -1), (-1, 0)][side], float)
    along = np.array([out[1], -out[0]])
    middle = (
        np.array([lie.w / 2, lie.h / 2])
        + out * [lie.w / 2, lie.h / 2]
        + along * rng.uniform(-0.3, 0.3) * (lie.w if out[0] == 0 else lie.h)
    )
    form = bmesh.new()
    nails = []
    for i in range(s.fingers):
        radius = rng.uniform(6.6, 8.2) * (1.2 if s.fingers == 1 else 1)
        tip = middle + along * (i - (s.fingers - 1) / 2) * 18 - out * rng.uniform(6, 20)
        way = out * np.cos(0.2 * (i - 1)) + along * np.sin(0.2 * (i - 1) + rng.normal(0, 0.15))
        ground = float(lie.height(*tip))
        for k in np.arange(0, 95, 2.0):
            rise = ground + radius * 0.85 + 22 * (k / 70) ** 1.6
            size = radius * (0.82 + 0.18 * min(1, k / 8)) * (1 + 0.05 * np.cos((k - 26) / 8)) * (1 + k / 500)
            p = tip + way * k
            sphere = bmesh.ops.create_uvsphere(form, u_segments=20, v_segments=12, radius=size)
            bmesh.ops.translate(form, verts=sphere["verts"], vec=(p[0] - lie.w / 2, lie.h / 2 - p[1], rise))
        knuckle = tip + way * 92
        for k in np.linspace(0, 1, 5):
            p = knuckle + k * (middle + out * 118 - knuckle)
            sphere = bmesh.ops.create_uvsphere(form, u_segments=24, v_segments=14, radius=13 + 9 * k)
            bmesh.ops.translate(form, verts=sphere["verts"], vec=(p[0] - lie.w / 2, lie.h / 2 - p[1], 38 - 6 * k))
        nails.append((tip + way * 2.5, np.arctan2(-way[1], way[0]), radius, ground))
    mesh = bpy.data.meshes.new("hand")
    form.to_mesh(mesh)
    form.free()
    hand = add("hand", mesh, skin(tone))
    shell = hand.modifiers.new("one skin", "REMESH")
    shell.mode, shell.voxel_size, shell.use_smooth_shade = "VOXEL", 0.9, True
    soft = hand.modifiers.new("soft", "SMOOTH")
    soft.factor, soft.iterations = 0.8, 12
    varnish = plain(
        "nail", np.clip(np.array(tone) * 1.25 + 0.05, 0, 1) if rng.random() < 0.7 else (0.5, 0.02, 0.06), 0.25
    )
    for at, turn, radius, ground in nails:
        nail = add("nail", ball(1, 24), varnish)
        nail.scale = (radius * 0.75, radius * 0.6, radius * 0.3)
        nail.location = (at[0] - lie.w / 2, lie.h / 2 - at[1], ground + radius * 1.42)
        nail.rotation_euler = (0, -0.12, turn)


def beside(lie, s, reach):
    """A place on the table at the sheet's next side, its middle `reach` mm from the edge; world mm, and an angle."""
    side = s.sides[0]
    s.sides = s.sides[1:] + s.sides[:1]
    out = np.array([(0, 1), (1, 0), (0, -1), (-1, 0)][side], float)
    along = np.array([out[1], -out[0]])
    span = lie.w if out[0] == 0 else lie.h
    depth = lie.h if out[0] == 0 else lie.w
    return out * (depth / 2 + reach) + along * s.rng.uniform(-0.55, 0.55) * span, np.arctan2(
        along[1], along[0]
    ) + s.rng.normal(0, 0.4)


def lay_scissors(lie, s):
    """Two blades and two loops."""
    c, turn = beside(lie, s, s.rng.uniform(22, 36))
    steel = plain("blade", (0.5, 0.5, 0.5), 0.25, 1.0)
    grip = plain("grip", [(0.015, 0.015, 0.015), (0.5, 0.03, 0.02), (0.03, 0.08, 0.3)][int(s.rng.integers(3))], 0.4)
    turned = lambda p: c + np.array(
        [np.cos(turn) * p[0] - np.sin(turn) * p[1], np.sin(turn) * p[0] + np.cos(turn) * p[1]]
    )
    for side in (-1, 1):
        blade = add("blade", box((70, 9, 1.6), 0.4), steel)
        spread = turn + side * 0.07
        blade.location = (*turned((34, side * 3.0)), 1.6 + side * 0.9)
        blade.rotation_euler = (0, 0, spread)
        t = np.linspace(0, 2 * np.pi, 40, endpoint=False)
        loop = np.array([turned((-38 + 19 * np.cos(k), side * 15 + 12 * np.sin(k))) for k in t])
        tube("loop", np.c_[loop, np.full(40, 5.0)], 3.6, grip, cyclic=True)
        neck = np.array([turned((-20, side * 9)), turned((-6, side * 4)), turned((6, -side * 1))])
        tube("neck", smooth_curve(np.c_[neck, np.full(3, 4.0)]), 3.0, grip)


def lay_clutter(lie, s):
    """A pencil, paper offcuts, a roll of tape: no copper of the circuit."""
    if s.rng.random() < 0.4:
        c, turn = beside(lie, s, s.rng.uniform(8, 20))
        rgb = [(0.7, 0.4, 0.02), (0.5, 0.02, 0.02), (0.02, 0.15, 0.05), (0.02, 0.02, 0.02)][int(s.rng.integers(4))]
        for mesh, shift, colour in (
            (cylinder(3.6, 120, 6), 0, rgb),
            (cylinder(3.4, 16, 24, 0.6), 68, (0.6, 0.4, 0.22)),
        ):
            pencil = add("pencil", mesh, plain("pencil", colour, 0.35))
            pencil.location = (c[0] + shift * np.cos(turn), c[1] + shift * np.sin(turn), 3.5)
            pencil.rotation_euler = (0, np.pi / 2, turn)
    for _ in range(int(s.rng.integers(0, 3))):
        c, turn = beside(lie, s, s.rng.uniform(6, 25))
        scrap = add(
            "offcut",
            box((s.rng.uniform(8, 40), s.rng.uniform(5, 25), 0.25)),
            plain("offcut", s.rng.choice([0.75, 0.6, 0.15]) * s.rng.uniform(0.6, 1, 3), 0.85),
        )
        scrap.location = (*c, 0.4)
        scrap.rotation_euler = (s.rng.normal(0, 0.01), s.rng.normal(0, 0.01), turn)
    if s.rng.random() < 0.25:
        c, turn = beside(lie, s, s.rng.uniform(26, 36))
        roll = Tree("roll").set(Base_Color=(0.9, 0.58, 0.47), Metallic=1.0, Roughness=0.25).material
        core = plain("core", (0.5, 0.36, 0.22), 0.9)
        for radius, height, material in (
            (24, 6, roll),
            (20, 6.3, core),
            (18, 6.6, plain("hole", (0.03, 0.03, 0.03), 1)),
        ):
            ring = add("roll", cylinder(radius, height, 96), material, OTHER)
            ring.location = (*c, height / 2)
