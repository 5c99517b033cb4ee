"""What a scene is made of, chosen from its number alone. The lists are walked with coprime steps, so that a run of numbers
meets every paper, table, light and room about equally often."""

from types import SimpleNamespace

import numpy as np

PAPERS = ("white", "lined", "kraft", "cream", "felt", "squared", "blue", "white", "painted", "black", "grey", "doodled")
TABLES = ("wood", "white desk", "cutting mat", "cloth", "dark wood", "black desk", "carpet")
LIGHTS = ("window", "room", "torch", "desk lamp", "ceiling", "window", "room", "sun", "window shadow", "lamp shadow")
ROOMS = ("hall", "lab", "venice", "bridge", "esplanade", "dawn")
SIZES = ((148, 105), (148, 105), (150, 100), (140, 140), (148, 105), (130, 130), (210, 148))
CIRCUITS = ("loop", "ladder", "arc", "chain")


def settings(number):
    """@returns a namespace; lengths in mm, angles in degrees."""
    rng = np.random.default_rng([7193, number])
    pick = lambda options, step, shift=0: options[(number * step + shift) % len(options)]
    width, height = pick(SIZES, 3, number // len(SIZES))
    return SimpleNamespace(
        number=number,
        rng=rng,
        sides=[int(k) for k in rng.permutation(4)],
        paper=pick(PAPERS, 5, number // len(PAPERS)),
        table=pick(TABLES, 3, number // len(TABLES)),
        light=pick(LIGHTS, 3, number // len(LIGHTS)),
        room=pick(ROOMS, 1, number // len(ROOMS)),
        circuit=pick(CIRCUITS, 1, number // len(CIRCUITS)),
        width_mm=width,
        height_mm=height,
        tape_mm=float(rng.choice([3, 4, 5, 5, 5, 6, 6, 6, 7, 8])),
        lamp=str(rng.choice(["chip", "chip", "dome", "sticker"])),
        lit=rng.random() < 0.4,
        cell=bool(rng.random() < 0.45),
        tilt_deg=float(rng.uniform(0, 25)),
        roll_deg=float(rng.choice([0, 0, 90, 180]) + rng.normal(0, 8)),
        crumple=float(rng.uniform(0.2, 1.5)),
        roughness=float(rng.uniform(0.05, 0.35)),
        tarnish=float(rng.beta(1.2, 3)),
        curl_mm=float(rng.choice([0, 0.5, 1.5, 3.0])),
        exposure_ev=float(rng.choice([-0.9, -0.4, 0, 0, 0.3, 0.8]) + rng.normal(0, 0.12)),
        warmth=float(rng.normal(0, 0.08)),
        noise=float(rng.uniform(0.003, 0.012)),
        quality=int(rng.integers(75, 93)),
        fingers=int(rng.choice([0, 0, 0, 1, 2, 3])),
        tool=bool(rng.random() < 0.3),
        wires=bool(rng.random() < 0.2),
        clear_tape=bool(rng.random() < 0.4),
        patch=bool(rng.random() < 0.15),
        gaps=int(rng.choice([0, 1, 1, 2, 3])),
        bridges=int(rng.choice([0, 0, 1, 1])),
    )


def again(s, shot):
    """
    For a further shot of the very same sheet: camera, light and fingers are drawn anew, sheet, build and room stay. To be called
    once all that stays is laid.
    """
    rng = s.rng = np.random.default_rng([7193, s.number, shot])
    s.light = str(rng.choice(LIGHTS))
    s.tilt_deg = float(rng.uniform(0, 25))
    s.roll_deg = float(rng.choice([0, 0, 90, 180]) + rng.normal(0, 8))
    s.exposure_ev = float(rng.choice([-0.9, -0.4, 0, 0, 0.3, 0.8]) + rng.normal(0, 0.12))
    s.warmth = float(rng.normal(0, 0.08))
    s.fingers = int(rng.choice([0, 0, 0, 1, 2, 3]))
