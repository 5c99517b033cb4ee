"""The shape of one piece of copper foil: a fine grid over its length and width, crumpled as tape is."""

import numpy as np
from scipy.ndimage import gaussian_filter, map_coordinates

from paths import at

STEP_MM = 0.22


def ribbon_grid(r, s):
    """@returns plane (n, m, 2) mm on the sheet, height (n, m) mm above it, along/across coordinates (n, m, 2) mm."""
    rng = s.rng
    half = r["width"] / 2
    n = max(4, int((r["end"] - r["start"]) / STEP_MM) + 1)
    m = max(4, int(r["width"] / STEP_MM) + 1)
    t = np.linspace(-1, 1, m)[None, :] * half
    base = np.linspace(0, 1, n)[:, None]
    skew = (1 - base) * r.get("skew_start", rng.normal(0, 0.05)) + base * r.get("skew_end", rng.normal(0, 0.05))
    along = r["start"] + base * (r["end"] - r["start"]) + skew * t
    edge = 1 + (wander(n, 5, rng)[:, None] * 0.05 + wander(n, 1.2, rng)[:, None] * 0.018) / half * np.abs(t / half)
    points, tangent = at(r["path"], along.ravel())
    points, tangent = points.reshape(n, m, 2), tangent.reshape(n, m, 2)
    if len(r["path"]) > 2:
        tangent = np.stack([gaussian_filter(tangent[..., i], (8, 0), mode="nearest") for i in (0, 1)], -1)
        tangent /= np.hypot(tangent[..., 0], tangent[..., 1])[..., None]
    normal = np.stack([-tangent[..., 1], tangent[..., 0]], -1)
    plane = points + normal * (t * edge)[..., None]
    height = crumple(n, m, r, s) + 0.05 + 0.07 * r["layer"] / max(1, r["layers"])
    return plane, height + laid_over(along, r), np.stack([along, t + 0 * along], -1)


def crumple(n, m, r, s):
    """Height in mm of ripples, creases, dents and lifted edges."""
    rng, k = s.rng, s.crumple
    u = np.arange(n)[:, None] * STEP_MM
    v = np.linspace(-1, 1, m)[None, :] * r["width"] / 2
    h = 0.10 * k * field(n, m, 9, 6, rng) + 0.035 * k * field(n, m, 2.5, 2, rng)
    h = h + 0.05 * k * np.abs(field(n, m, 3.5, 5, rng)) + 0.015 * k * np.abs(field(n, m, 0.9, 1.3, rng))
    length = n * STEP_MM
    for _ in range(rng.poisson(length * 0.28 * k)):
        angle = rng.normal(0, 0.45) if rng.random() < 0.8 else rng.uniform(0, np.pi)
        wide = rng.uniform(0.25, 1.1)
        d = (u - rng.uniform(0, length)) * np.cos(angle) + (v - rng.uniform(-1, 1)) * np.sin(angle)
        h = h + rng.choice([-1, 1], p=[0.3, 0.7]) * wide * rng.uniform(0.05, 0.22) * np.maximum(0, 1 - np.abs(d) / wide)
    for _ in range(rng.poisson(length * 0.05)):
        d2 = (u - rng.uniform(0, length)) ** 2 + (v - rng.uniform(-2, 2)) ** 2
        h = h - 0.12 * np.exp(-d2 / rng.uniform(0.3, 2.0))
    if len(r["path"]) > 2:
        inner = np.clip(-v / r["width"] + 0.5, 0, 1) if rng.random() < 0.5 else np.clip(v / r["width"] + 0.5, 0, 1)
        h = h + 0.14 * inner * np.abs(field(n, m, 1.1, 8, rng))
    lift = np.abs(2 * v / r["width"]) ** 6 * 0.1 * k * np.maximum(0, wander(n, 7, rng))[:, None]
    return np.maximum(0, h - np.percentile(h, 8)) + lift


def laid_over(along, r):
    """A free end that curls up, and an end that climbs onto the cell. mm."""
    z = np.zeros_like(along)
    if r.get("curl"):
        z = z + r["curl"] * np.clip((along - r["end"] + 6) / 6, 0, 1) ** 2
    if r.get("climb"):
        top, reach = r["climb"]
        x = np.clip((reach - (along - r["start"])) / 2.5, 0, 1)
        z = z + top * x * x * (3 - 2 * x)
    return z


def wander(n, wavelength_mm, rng):
    """Smooth noise along a line, deviation about 1."""
    return field(n, 1, wavelength_mm, 1, rng)[:, 0]


def field(n, m, along_mm, across_mm, rng):
    """Smooth noise on the grid, deviation about 1."""
    a, b = along_mm / STEP_MM, across_mm / STEP_MM
    coarse = rng.normal(size=(int(n / a * 2) + 4, int(m / b * 2) + 4))
    grid = np.meshgrid(np.arange(n) * 2 / a + 1 + rng.random(), np.arange(m) * 2 / b + 1 + rng.random(), indexing="ij")
    return map_coordinates(coarse, grid, order=3, mode="nearest") * 1.4
