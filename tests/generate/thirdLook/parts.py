"""Lamps, cell, solder, wires, clear tape and paper patches on the sheet."""

from math import atan2

import numpy as np

from materials import Tree, clear_tape, fake_glass, glow, plain
from paths import smooth_curve
from scene import NONE, ball, box, cylinder, add, grid_mesh, tube
from tape import CELL_TOP_MM

COLOURS = {
    "red": (1.0, 0.03, 0.02),
    "green": (0.05, 0.9, 0.12),
    "blue": (0.05, 0.15, 1.0),
    "yellow": (1.0, 0.55, 0.03),
    "white": (0.85, 0.92, 1.0),
    "warm": (1.0, 0.75, 0.42),
}


def lay_parts(plan, build, lie, s):
    """@returns the colour and place of each lit lamp."""
    lit = []
    metal = plain("steel", (0.62, 0.6, 0.57), 0.25, 1.0)
    for lamp in plan["lamps"]:
        name = str(s.rng.choice(list(COLOURS)))
        burning = s.lit and s.rng.random() < 0.8
        {"chip": chip, "dome": dome, "sticker": sticker}[s.lamp](lamp, COLOURS[name], burning, metal, lie, s)
        if burning:
            lit.append((lamp, COLOURS[name]))
    if s.cell:
        lay_cell(plan["cell"], lie, s)
    if s.wires:
        lay_wires(lie, s)
    if s.clear_tape:
        lay_clear_tape(build, lie, s)
    return lit


def pose(thing, lie, at, turn=0.0, above=0.0):
    """Puts a thing onto the sheet at mm, turned about z by radians."""
    thing.location = lie.world(*at, above)
    thing.rotation_euler = (0, 0, turn)
    return thing


def middle_of(lamp):
    plus, minus = np.array(lamp["plus"]), np.array(lamp["minus"])
    way = minus - plus
    return (plus + minus) / 2, way / np.hypot(*way), atan2(-way[1], way[0])


def chip(lamp, colour, burning, metal, lie, s):
    """A surface-mount lamp: white body, yellow window, tinned ends, often solder over them."""
    c, along, turn = middle_of(lamp)
    turn += s.rng.normal(0, 0.06)
    body = plain("chip body", (0.8, 0.8, 0.77), 0.4)
    window = (
        glow("chip window", colour, s.rng.uniform(4, 16))
        if burning
        else plain("chip window", (0.75, 0.62, 0.12) if min(colour) > 0.3 else [0.4 + 0.5 * k for k in colour], 0.2)
    )
    pose(add("chip", box((3.2, 2.4, 0.9), 0.12), body), lie, c, turn, 0.65)
    pose(add("window", cylinder(0.95, 0.1), window), lie, c, turn, 1.08)
    for side in (-1, 1):
        pose(add("pad", box((0.7, 2.2, 0.5), 0.1), metal), lie, c + along * side * 1.55, turn, 0.4)
        if s.rng.random() < 0.5:
            solder(c + along * side * 2.2, s.rng.uniform(0.8, 1.6), lie, s)


def solder(at, radius, lie, s):
    blob = ball(radius)
    for v in blob.vertices:
        v.co.z *= 0.55
        v.co *= 1 + s.rng.normal(0, 0.02)
        v.co.x *= 1.15
    pose(
        add("solder", blob, plain("solder", (0.6, 0.6, 0.62), s.rng.uniform(0.12, 0.35), 1.0)),
        lie,
        at,
        s.rng.uniform(0, 6),
        0.15,
    )


def dome(lamp, colour, burning, metal, lie, s):
    """A 5 mm lamp standing or lying over the clearance, its legs bent flat onto the rails."""
    c, along, turn = middle_of(lamp)
    tint = [0.25 + 0.75 * k for k in colour] if s.rng.random() < 0.6 else (0.9, 0.92, 0.93)
    if burning:
        body = glow("lit dome", colour, s.rng.uniform(2, 8))
    else:
        body = fake_glass("dome", tint, 0.55, 0.06)
    lean = s.rng.uniform(0, 0.35) if s.rng.random() < 0.6 else 1.5
    up = np.array([0, np.sin(lean), np.cos(lean)])
    for mesh, offset in ((cylinder(2.5, 5.4, smooth=True), 3.6), (ball(2.5), 6.3), (cylinder(2.9, 1.0), 1.2)):
        thing = pose(add("dome", mesh, body), lie, c, turn, 0.3 + 2.6 * np.sin(lean))
        thing.rotation_euler = (-lean, 0, turn)
        local = up * offset
        thing.location = thing.location[:] + np.array([-np.sin(turn) * local[1], np.cos(turn) * local[1], local[2]])
    for side in (-1, 1):
        foot = c + along * side * s.rng.uniform(5.5, 8.0)
        points = [
            lie.world(*(c + along * side * 1.27), 1.2),
            lie.world(*(c + along * side * 2.2), 0.5),
            lie.world(*foot, 0.42),
        ]
        tube("leg", smooth_curve(points, 4), 0.26, metal)
        if s.rng.random() < 0.4:
            solder(c + along * side * 4.8, s.rng.uniform(1.0, 1.7), lie, s)


def sticker(lamp, colour, burning, metal, lie, s):
    """A lamp on a small stiff sticker with a tinned pad at either end."""
    c, along, turn = middle_of(lamp)
    base = plain("sticker", (0.78, 0.78, 0.74) if s.rng.random() < 0.7 else (0.1, 0.09, 0.09), 0.35)
    plate = add("sticker", cylinder(1, 0.25, 24), base)
    plate.scale = (6.0, 3.4, 1)
    pose(plate, lie, c, turn, 0.55)
    for side in (-1, 1):
        pad = add("pad", cylinder(1.3, 0.1, 20), metal)
        pose(pad, lie, c + along * side * 4.0, turn, 0.7)
    window = glow("lit", colour, s.rng.uniform(4, 16)) if burning else plain("lamp", (0.8, 0.7, 0.25), 0.2)
    pose(add("lamp", box((1.8, 1.1, 0.7), 0.1), window), lie, c, turn, 1.0)


def lay_cell(at, lie, s):
    """A brushed coin cell with its rolled rim."""
    steel = brushed()
    flat = lie.world(*at)[2]
    for radius, height, z in ((10.0, 2.5, 1.55), (9.1, 0.5, 2.95)):
        thing = add("cell", cylinder(radius, height, 96), steel)
        bevel = thing.modifiers.new("rim", "BEVEL")
        bevel.width, bevel.segments = 0.25, 3
        pose(thing, lie, at, s.rng.uniform(0, 6), z)
        thing.location.z = flat + z
    # A plus pressed into the face, off the middle.
    for size in ((3.0, 0.5, 0.06), (0.5, 3.0, 0.06)):
        sign = add("plus", box(size, 0.02), plain("pressed", (0.35, 0.34, 0.33), 0.35, 1.0))
        pose(sign, lie, (at[0] - 4, at[1] + 3.5), 0.2, 0)
        sign.location.z = flat + 3.22
    assert CELL_TOP_MM > 3.22


def brushed():
    tree = Tree("brushed steel")
    lines = tree.noise(tree.coordinates((0.15, 9, 1)), 1.0, 4)
    stain = tree.noise(tree.coordinates(), 0.25, 3)
    colour = tree.ramp(stain, (0.35, (0.55, 0.54, 0.52)), (0.65, (0.66, 0.65, 0.63)))
    return tree.set(
        Base_Color=colour, Metallic=1.0, Roughness=0.28, Anisotropic=0.6, Normal=tree.bump(lines, 0.02, 0.5)
    ).material


def lay_wires(lie, s):
    for _ in range(int(s.rng.integers(1, 4))):
        colour = [(0.6, 0.02, 0.02), (0.02, 0.02, 0.02), (0.75, 0.6, 0.05), (0.05, 0.2, 0.6), (0.05, 0.4, 0.1)][
            int(s.rng.integers(5))
        ]
        start = np.array([s.rng.choice([-40, lie.w + 40]), s.rng.uniform(0, lie.h)])
        end = s.rng.uniform((0.25 * lie.w, 0.2 * lie.h), (0.75 * lie.w, 0.8 * lie.h))
        if s.rng.random() < 0.5:
            end = start + s.rng.normal(0, 1, 2) * (15, lie.h)
        k = np.linspace(0, 1, 6)[:, None]
        plane = start + k * (end - start) + s.rng.normal(0, 9, (6, 2)) * np.sin(np.pi * k)
        points = (
            lie.world(plane[:, 0], plane[:, 1], 0)
            + np.c_[np.zeros((6, 2)), 1.0 + s.rng.uniform(0, 5, 6) * np.sin(np.pi * k[:, 0])]
        )
        tube("wire", smooth_curve(points), s.rng.uniform(0.5, 0.9), plain("wire", colour, 0.35))


def lay_clear_tape(build, lie, s):
    """Clear adhesive tape over copper: the copper is seen through it, so it does not count in the truth."""
    material = clear_tape()
    for _ in range(int(s.rng.integers(1, 4))):
        r = build["ribbons"][int(s.rng.integers(len(build["ribbons"])))]
        path = np.array(r["path"])
        c = path[0] + s.rng.random() * (path[-1] - path[0])
        turn = s.rng.uniform(0, np.pi)
        long, wide = s.rng.uniform(18, 40), s.rng.choice([12, 15, 19])
        u, v = np.meshgrid(np.linspace(-0.5, 0.5, 60) * long, np.linspace(-0.5, 0.5, 24) * wide, indexing="ij")
        x, y = c[0] + u * np.cos(turn) - v * np.sin(turn), c[1] + u * np.sin(turn) + v * np.cos(turn)
        inside = (x > 1) & (x < lie.w - 1) & (y > 1) & (y < lie.h - 1)
        if inside.mean() < 0.8:
            continue
        above = 0.55 + 0.05 * np.cos(u * 0.9) * np.cos(v * 0.7)
        add("clear tape", grid_mesh("clear", lie.world(x, y, above)), material, NONE)


def lay_patch(build, plan, lie, s):
    """A paper patch over a strip. @returns {c, size} mm, or nothing."""
    if not s.patch:
        return None
    free = [r for r in build["ribbons"] if len(r["path"]) == 2 and r["end"] - r["start"] > 25]
    for r in free:
        path = np.array(r["path"])
        way = (path[1] - path[0]) / np.hypot(*(path[1] - path[0]))
        c = path[0] + way * ((r["start"] + r["end"]) / 2)
        size = np.array([s.rng.uniform(10, 16), s.rng.uniform(10, 16)])
        busy = (
            [np.mean([l["plus"], l["minus"]], axis=0) for l in plan["lamps"]]
            + [(f["x_mm"], f["y_mm"]) for f in build["faults"]]
            + [plan["cell"]]
        )
        if any(np.hypot(*(np.array(p) - c)) < 16 for p in busy):
            continue
        x, y = np.meshgrid(
            np.linspace(-0.5, 0.5, 40) * size[0] + c[0], np.linspace(-0.5, 0.5, 40) * size[1] + c[1], indexing="ij"
        )
        above = 0.55 + 0.1 * np.cos((x - c[0]) / size[0] * 3) + 0.06 * np.sin(y)
        rgb = [(0.78, 0.78, 0.76), (0.75, 0.6, 0.2), (0.65, 0.25, 0.2), (0.3, 0.5, 0.6)][int(s.rng.integers(4))]
        add("patch", grid_mesh("patch", lie.world(x, y, above)), plain("patch", rgb, 0.8))
        return {"c": [float(k) for k in c], "size": [float(k) for k in size]}
    return None
