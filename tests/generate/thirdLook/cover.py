"""What lies over the copper: clear tape, paper patches, loose wires."""

import numpy as np

from materials import clear_tape, plain
from paths import smooth_curve
from scene import NONE, add, grid_mesh, tube


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
