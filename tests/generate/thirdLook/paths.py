"""Plane geometry of paths: arrays of shape (n, 2), mm, x right, y down."""

import numpy as np


def lengths(path):
    """Length along the path at each of its points."""
    steps = np.hypot(*np.diff(path, axis=0).T)
    return np.concatenate([[0.0], np.cumsum(steps)])


def at(path, s):
    """Points and unit tangents at lengths s along the path (straight on beyond its ends)."""
    path = np.asarray(path, float)
    s = np.atleast_1d(np.asarray(s, float))
    along = lengths(path)
    i = np.clip(np.searchsorted(along, s, side="right") - 1, 0, len(path) - 2)
    step = path[i + 1] - path[i]
    tangent = step / np.maximum(np.hypot(*step.T), 1e-9)[:, None]
    return path[i] + tangent * (s - along[i])[:, None], tangent


def distance(path, point):
    """Least distance of a point from a path, mm."""
    path = np.asarray(path, float)
    a, step = path[:-1], np.diff(path, axis=0)
    t = np.clip(((point - a) * step).sum(1) / np.maximum((step**2).sum(1), 1e-9), 0, 1)
    return float(np.hypot(*(a + t[:, None] * step - point).T).min())


def nearest(path, point):
    """The path's point nearest to a point."""
    path = np.asarray(path, float)
    a, step = path[:-1], np.diff(path, axis=0)
    t = np.clip(((point - a) * step).sum(1) / np.maximum((step**2).sum(1), 1e-9), 0, 1)
    feet = a + t[:, None] * step
    return feet[np.argmin(np.hypot(*(feet - point).T))]


def smooth_curve(points, steps=12):
    """A Catmull-Rom curve through points (n, k)."""
    p = np.asarray(points, float)
    p = np.vstack([2 * p[0] - p[1], p, 2 * p[-1] - p[-2]])
    t = np.linspace(0, 1, steps, endpoint=False)[:, None]
    out = []
    for a, b, c, d in zip(p, p[1:], p[2:], p[3:]):
        out.append(0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t**2 + (3 * b - a - 3 * c + d) * t**3))
    return np.vstack(out + [p[-2:-1]])
