"""Copper foil on the sheet."""

import numpy as np

from cell import TOP_MM
from circuit import CELL_MM
from foil import ribbon_grid
from materials import copper
from paths import at
from scene import COPPER, add, grid_mesh


def lay_tape(build, plan, lie, s):
    material = copper(s)
    finish_ends(build["ribbons"], plan, s)
    for i, r in enumerate(build["ribbons"]):
        r["layers"] = len(build["ribbons"])
        plane, above, uv = ribbon_grid(r, s)
        points = lie.world(plane[..., 0], plane[..., 1], above)
        add(f"foil {i}", grid_mesh("foil", points, uv + i * 37.0), material, COPPER)
        if r["corner"] == "fold":
            add(f"fold {i}", fold_flap(r, lie, s), material, COPPER)


def finish_ends(ribbons, plan, s):
    """One strip climbs onto the cell; now and then a free end curls."""
    for r in ribbons:
        first = np.array(r["path"][0])
        if s.cell and r["net"] == "P" and r["start"] == 0 and np.hypot(*(first - plan["cell"])) < 9:
            r["climb"] = (TOP_MM, over_rim(r, plan["cell"]) + 2.8)
        elif r["strip"] != "B" and s.rng.random() < 0.12 and "skew_end" not in r:
            r["curl"] = float(s.rng.uniform(0.4, 2.0))


def over_rim(r, cell):
    """Length along a ribbon at which it has left the cell's rim."""
    along = np.linspace(0, 30, 121)
    out = np.hypot(*(at(r["path"], along)[0] - cell).T) > CELL_MM / 2 + 0.4
    return float(along[np.argmax(out)])


def fold_flap(r, lie, s):
    """The doubled triangle that a folded corner leaves: its crease runs across the corner."""
    half = r["width"] / 2
    a, b = np.array(r["path"][0]), np.array(r["path"][1])
    ahead = (b - a) / np.hypot(*(b - a))
    side = np.array([-ahead[1], ahead[0]]) * s.rng.choice([-1, 1])
    corners = [a - half * ahead + half * side, a + half * ahead + half * side, a + half * ahead - half * side]
    t = np.linspace(0, 1, 14)
    rows = []
    for k in t:
        start, end = corners[0] + k * (corners[1] - corners[0]), corners[0] + k * (corners[2] - corners[0])
        rows.append(start + t[:, None] * (end - start))
    plane = np.array(rows)
    above = 0.22 + 0.12 * s.crumple * s.rng.random() * t[None, :] + s.rng.normal(0, 0.012, (14, 14))
    return grid_mesh("flap", lie.world(plane[..., 0], plane[..., 1], above), plane)
