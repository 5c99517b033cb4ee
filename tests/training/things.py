"""What else lies on or is drawn on a maker's sheet: marker strokes, lettering, wires, hands. Each takes a Scene."""

import math

import torch

from noise import chance, pick, uniform
from scene import CLEAR, PAINTS, col, cover, rgb

SKIN = [(0.75, 0.5, 0.4), (0.6, 0.38, 0.28), (0.4, 0.24, 0.16), (0.28, 0.16, 0.1), (0.2, 0.12, 0.08), (0.12, 0.07, 0.05), (0.85, 0.62, 0.55)]
SLEEVES = [(0.5, 0.03, 0.03), (0.03, 0.03, 0.03), (0.02, 0.1, 0.4), (0.7, 0.5, 0.05), (0.6, 0.6, 0.6), (0.1, 0.3, 0.1)]


def drawing(scene, n, p):
    """
    Strokes of marker, crayon or brush under the tape, as wide as tape at times, straight or round. A straight one as wide as
    tape is of a clear colour: in brown, grey or black it could not be told from tape.
    """
    b, d = scene.b, scene.device
    for _ in range(n):
        on = chance(b, p, d).float()
        half = torch.exp(uniform((b,), math.log(0.2), math.log(3), d))
        curve = scene.arcs(0.6, 3)
        sdf, u, _ = scene.box(uniform((b,), 2, 45, d), half, curve=curve)
        wobble = scene.noise(24)[:, 0] * col(uniform((b,), 0, 0.5, d))
        waxy = 1 - col(uniform((b,), 0, 0.6, d)) * torch.sigmoid(4 * scene.noise(200)[:, 0])
        ink = cover(sdf + wobble, scene.px) * col(on * uniform((b,), 0.3, 1, d)) * waxy
        like_tape = (half > 0.8) & (curve.abs() < 0.05)
        colour = torch.where(like_tape[:, None], pick(b, CLEAR, d), any_ink(b, d))
        scene.light_in = scene.light_in * (1 - ink[:, None] * (1 - rgb(colour)))


def any_ink(b, d):
    return torch.where(chance(b, 0.4, d)[:, None], torch.rand(b, 3, device=d) ** 2, pick(b, PAINTS, d))


def hatching(scene, n, p):
    """Round or square areas filled with felt-tip lines to and fro, or with one tone, and drawn round in another ink or not."""
    b, d = scene.b, scene.device
    for _ in range(n):
        on = chance(b, p, d).float()
        sdf, u, v = scene.box(uniform((b,), 2, 14, d), uniform((b,), 2, 10, d))
        disc = torch.sqrt(u * u + v * v) - col(uniform((b,), 2, 9, d))
        area = torch.where(col(chance(b, 0.5, d)), disc, sdf) + 0.5 * scene.noise(16)[:, 0]
        pitch = col(uniform((b,), 0.6, 3, d))
        slant = u + v * col(uniform((b,), -0.4, 0.4, d)) + 0.4 * scene.noise(20)[:, 0]
        pen = col(torch.exp(uniform((b,), math.log(0.15), math.log(0.9), d)))
        line = (torch.remainder(slant, 2 * pitch) - pitch).abs() - pen
        filled = col(chance(b, 0.25, d).float())
        within = cover(area, scene.px) * torch.maximum(cover(line, scene.px), filled * col(uniform((b,), 0.2, 1, d)))
        round_ = cover(area.abs() - pen, scene.px) * col(chance(b, 0.6, d).float())
        for mark in (within, round_):
            ink = mark * col(on * uniform((b,), 0.3, 1, d))
            scene.light_in = scene.light_in * (1 - ink[:, None] * (1 - rgb(any_ink(b, d))))


def scribble(scene, n, p):
    """A line of pen or felt-tip that waves and loops about a place, or runs up and down."""
    b, d = scene.b, scene.device
    for _ in range(n):
        on = chance(b, p, d).float()
        sdf, u, v = scene.box(uniform((b,), 4, 25, d), torch.full((b,), 30.0, device=d))
        long, high = col(uniform((b,), 1.5, 12, d)), col(uniform((b,), 0.5, 7, d))
        phase = u / long * math.pi + 2 * scene.noise(8)[:, 0]
        zigzag = torch.asin(torch.sin(phase).clamp(-0.999, 0.999)) / 1.57
        wave = torch.where(col(chance(b, 0.5, d)), torch.sin(phase), zigzag)
        steep = torch.sqrt(1 + (high * math.pi / long) ** 2)
        pen = col(torch.exp(uniform((b,), math.log(0.12), math.log(0.8), d)))
        line = torch.maximum((v - high * wave).abs() / steep - pen, sdf)
        ink = cover(line, scene.px) * col(on * uniform((b,), 0.4, 1, d))
        scene.light_in = scene.light_in * (1 - ink[:, None] * (1 - rgb(any_ink(b, d))))


def lettering(scene, p):
    """Rows of small dark marks, as print and handwriting are."""
    b, d = scene.b, scene.device
    on = chance(b, p, d).float()
    sdf, u, v = scene.box(uniform((b,), 6, 30, d), uniform((b,), 1, 10, d))
    high = col(uniform((b,), 1.2, 4, d))
    row = (torch.remainder(v, 1.7 * high) < high).float()
    letters = torch.sin(u * 4.5 / high + 4 * scene.noise(60)[:, 0]) + torch.sin(v * 3.1 / high + 4 * scene.noise(90)[:, 0])
    mark = torch.sigmoid((letters.abs() - 1.1) * 8) * row * cover(sdf, scene.px) * col(on * uniform((b,), 0.4, 0.97, d))
    scene.light_in = scene.light_in * (1 - mark * (scene.copper < 0.5))[:, None]


def wires(scene, n, p):
    """Insulated wires and bare leads, bent, over all."""
    b, d = scene.b, scene.device
    for _ in range(n):
        on = chance(b, p, d)
        half = uniform((b,), 0.2, 1.1, d)
        sdf, u, v = scene.box(uniform((b,), 8, 50, d), half, curve=scene.arcs(0.7, 8))
        scene.shade(sdf, 0.6, col(on.float() * uniform((b,), 0, 0.8, d)))
        bare = col(chance(b, 0.3, d).float())[:, None]
        colour = rgb(pick(b, SLEEVES, d)) * (1 - bare) + bare * scene.seen_room(v * 0.3, u * 0.02).mean(1, keepdim=True)
        gleam = torch.exp(-(((v + col(half) * 0.3) / (col(half) * 0.25)) ** 2))[:, None] * rgb(uniform((b, 1), 0, 0.6, d))
        scene.over(cover(sdf, scene.px) * col(on.float()), colour + gleam)


def hand(scene, p):
    """Up to three fingers side by side, bent, with nails; they shade what lies beneath."""
    b, d = scene.b, scene.device
    here = chance(b, p, d)
    half = scene.span / 2
    cx, cy = uniform((b,), -half, half, d), uniform((b,), -half, half, d)
    angle = uniform((b,), 0, 2 * math.pi, d)
    skin = pick(b, SKIN, d) * uniform((b, 3), 0.85, 1.15, d)
    curve = scene.arcs(0.5, 40)
    for k in range(3):
        on = here & chance(b, (1.0, 0.6, 0.4)[k], d)
        wide, long = uniform((b,), 4, 7, d), uniform((b,), 15, 45, d)
        aside = 15.0 * k + torch.randn(b, device=d)
        x, y = cx - torch.sin(angle) * aside, cy + torch.cos(angle) * aside
        sdf, u, v = scene.box(long, wide, angle + 0.08 * torch.randn(b, device=d), x, y, curve)
        # A rounded box: the tip.
        sdf = torch.sqrt((u.abs() - col(long - wide)).clamp(min=0) ** 2 + v**2) - col(wide)
        scene.cast(x, y, angle, long, wide, uniform((b,), 0.5, 5, d), on)
        scene.shade(sdf, 2.0, col(on.float() * uniform((b,), 0, 0.6, d)))
        fade = (1 - 0.5 * (v / col(wide)).clamp(-1, 1) ** 2)[:, None]
        fold = 1 - 0.15 * torch.exp(-((torch.remainder(u, 18) - 9) ** 2))[:, None]
        colour = rgb(skin) * fade * fold * (1 + 0.05 * scene.noise(60) + 0.03 * scene.noise(200))
        nail = (((u - col(long - 0.6 * wide)) / col(0.7 * wide)) ** 2 + (v / col(0.6 * wide)) ** 2 < 1).float()[:, None]
        polish = rgb(chance(b, 0.35, d).float()[:, None]) * nail
        colour = colour * (1 - polish) + polish * rgb(torch.rand(b, 3, device=d)) + nail * rgb(uniform((b, 1), 0, 0.2, d))
        scene.over(cover(sdf, scene.px) * col(on.float()), colour)
