"""Lamps over the clearance of two strips: chips, 5 mm domes with legs, stickers; some lit."""

from math import atan2

import numpy as np

from materials import fake_glass, glow, plain
from paths import smooth_curve
from scene import add, ball, box, cylinder, pose, tube

COLOURS = {
    "red": (1.0, 0.03, 0.02),
    "green": (0.05, 0.9, 0.12),
    "blue": (0.05, 0.15, 1.0),
    "yellow": (1.0, 0.55, 0.03),
    "white": (0.85, 0.92, 1.0),
    "warm": (1.0, 0.75, 0.42),
}


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


def lay_lamps(plan, lie, s):
    metal = plain("steel", (0.62, 0.6, 0.57), 0.25, 1.0)
    for lamp in plan["lamps"]:
        name = str(s.rng.choice(list(COLOURS)))
        burning = s.lit and s.rng.random() < 0.8
        {"chip": chip, "dome": dome, "sticker": sticker}[s.lamp](lamp, COLOURS[name], burning, metal, lie, s)
