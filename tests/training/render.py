"""Training pictures: squared sheets with copper truth, and whole photographs with base truth."""

import math

import torch
import torch.nn.functional as F

from camera import blur, shoot
from noise import chance, pick, uniform
from scene import TABLES, Scene, box_sdf, col, cover, rgb
from things import drawing, hand, hatching, lettering, scribble, wires


def sheets(b, size, device, near=False):
    """
    A scene at 4 to 12 px/mm (8 to 12 for `near`), still to be lit, and (b, 3, size, size) its own light, (b, 3, ...) truth of copper, lamp, cell,
    (b, 1, ...) weights.
    """
    # Mostly near 10 px/mm, or always for `near`; else down to 4: the net is read at half scale too, where it sees more of the sheet.
    px = 0.085 + (0.04 if near or torch.rand(1) < 0.6 else 0.15) * float(torch.rand(1))
    span = size * px
    axis = (torch.arange(size, device=device) + 0.5) * px - span / 2
    y, x = torch.meshgrid(axis, axis, indexing="ij")
    x, y = x[None].expand(b, -1, -1).contiguous(), y[None].expand(b, -1, -1).contiguous()
    edge, _, _ = box_sdf(
        x, y, uniform((b,), -0.6, 0.6, device) * span, uniform((b,), -0.6, 0.6, device) * span,
        0.08 * torch.randn(b, device=device), uniform((b,), 0.5, 1.6, device) * span, uniform((b,), 0.5, 1.6, device) * span,
    )
    whole = chance(b, 0.6, device).float()
    inside = torch.maximum(cover(edge, px), col(whole))
    scene = Scene(x, y, inside, px, span, device)
    draw(scene, strips=13 if px > 0.15 else 9)
    brink(scene, edge)
    truth = torch.stack([scene.copper, scene.lamp, scene.cell], 1)
    weight = weighed(truth[:, :1], 8 * scene.fine[:, None], 1.2 / px, 18 if near else 9)
    weight = weight * (1 - scene.unknown[:, None])
    return scene, scene.light_in, truth, weight


def weighed(copper, places, width, narrow):
    """Weights of pixels: more on what `places` add, at borders, and by `narrow` in spaces of up to `width` px."""
    border = copper - blur(copper, torch.full((copper.shape[0],), 2.0, device=copper.device))
    return 1 + places + 2 * border.abs() + narrow * narrow_space(copper, width)


def narrow_space(copper, width):
    """Where the paper between copper is at most `width` px wide: a net that slips there joins what must stay apart."""
    side = int(width / 2) * 2 + 1
    grown = F.max_pool2d(copper, side, 1, side // 2)
    return -F.max_pool2d(-grown, side, 1, side // 2) - copper


def brink(scene, edge):
    """The paper's own border: a dark, light or coloured line of its thickness, and a shadow on what lies under it."""
    b, d = scene.b, scene.device
    scene.shade(edge, 1.2, col(uniform((b,), 0, 0.9, d) * chance(b, 0.6, d).float()))
    line = cover((edge - col(uniform((b,), -0.2, 0.4, d))).abs() - col(uniform((b,), 0.1, 0.5, d)), scene.px)
    on = col(uniform((b,), 0.3, 1, d) * chance(b, 0.5, d).float())
    scene.over(line * on, rgb(pick(b, TABLES, d) * uniform((b, 1), 0.1, 1.4, d)))


def draw(scene, strips):
    scene.ground()
    drawing(scene, 3, 0.25)
    hatching(scene, 2, 0.22)
    scribble(scene, 2, 0.28)
    scene.matte(2, 0.25)
    scene.lay_copper(strips)
    lettering(scene, 0.25)
    scene.solder(0.15)
    scene.lamps(6)
    scene.coin(0.3)
    scene.covers()
    wires(scene, 2, 0.25)
    hand(scene, 0.18)


def photographs(b, size, device):
    """The scene, linear light of photographs (b, 3, 2 * size, 2 * size) and the base's mask (b, 1, ...)."""
    big = size * 2
    width, height = uniform((b,), 70, 220, device), uniform((b,), 70, 220, device)
    grid = mm_grid(b, big, width, height, device)
    x, y = grid[..., 0], grid[..., 1]
    base, _, _ = box_sdf(x, y, *(torch.zeros(b, device=device),) * 3, width / 2, height / 2)
    bow = 0.6 * torch.randn(b, device=device)
    base = base + col(bow) * torch.sin(x / col(width) * 3.14)
    px = (width + height).mean() / big
    truth = cover(base, px)
    inside = truth.clone()
    for _ in range(2):
        inside = torch.maximum(inside, flap(x, y, width, height, px))
    scene = Scene(x, y, inside, px, 200.0, device)
    draw(scene, strips=9)
    outer = 1 - truth
    on_table = (outer * (1 - inside))[:, None]
    scene.light_in = scene.light_in * (1 - on_table) + scene.table() * on_table
    scene.shade(base, 1.5, col(uniform((b,), 0, 0.5, device)) * (1 - inside))
    clutter(scene, base)
    light = blur(scene.lit(scene.light_in), uniform((b,), 0.3, 1.5, device))
    return scene, light, truth[:, None]


def clutter(scene, base):
    """Things on the table round the base; some reach over it."""
    b, d = scene.b, scene.device
    for _ in range(5):
        on = chance(b, 0.4, d).float()
        sdf, u, v = scene.box(uniform((b,), 8, 60, d), uniform((b,), 3, 40, d))
        sdf = torch.maximum(sdf, -base + 0.5) if torch.rand(1) < 0.85 else sdf
        colour = (torch.rand(b, 3, device=d) ** 1.4)[:, :, None, None] * (1 + 0.1 * scene.noise(60))
        m = cover(sdf, scene.px) * col(on)
        scene.light_in = scene.light_in * (1 - m[:, None]) + colour.clamp(0, 1.2) * m[:, None]


def flap(x, y, width, height, px):
    """A flap hinged at one side, the paper running on."""
    b, d = x.shape[0], x.device
    on = chance(b, 0.4, d).float()
    upright = chance(b, 0.5, d)
    side = torch.where(chance(b, 0.5, d), 1.0, -1.0)
    long = uniform((b,), 8, 22, d)
    out = uniform((b,), 6, 18, d)
    slide = uniform((b,), -0.3, 0.3, d)
    cx = torch.where(upright, side * (width / 2 + out), slide * width)
    cy = torch.where(upright, slide * height, side * (height / 2 + out))
    sdf, _, _ = box_sdf(x, y, cx, cy, torch.zeros(b, device=d), torch.where(upright, out, long), torch.where(upright, long, out))
    return cover(sdf, px) * col(on)


def mm_grid(b, size, width, height, device):
    """mm on the base for each picture pixel, through a random pose of a pinhole camera; (b, size, size, 2)."""
    axis = (torch.arange(size, device=device) + 0.5) / size * 2 - 1
    py, px = torch.meshgrid(axis, axis, indexing="ij")
    tilt = uniform((b,), 0, 0.65, device) * torch.rand(b, device=device)
    lean = uniform((b,), 0, 2 * math.pi, device)
    roll = uniform((b,), 0, 2 * math.pi, device)
    focal = uniform((b,), 1.3, 2.4, device)
    largest = torch.sqrt(width**2 + height**2)
    away = largest / 2 * focal / uniform((b,), 0.45, 1.05, device)
    # Ray directions, turned by the tilt about a leaning axis, met with the plane z = 0.
    ray = torch.stack([px[None] / col(focal), py[None] / col(focal), torch.ones_like(px)[None].expand(b, -1, -1)], -1)
    ax, ay = torch.cos(lean), torch.sin(lean)
    c, s = torch.cos(tilt), torch.sin(tilt)
    k = torch.zeros(b, 3, 3, device=device)
    k[:, 0, 2], k[:, 1, 2], k[:, 2, 0], k[:, 2, 1] = ay, -ax, -ay, ax
    eye = torch.eye(3, device=device)[None]
    turn = eye + s[:, None, None] * k + (1 - c)[:, None, None] * (k @ k)
    spin = torch.zeros(b, 3, 3, device=device)
    spin[:, 0, 0], spin[:, 0, 1], spin[:, 1, 0], spin[:, 1, 1], spin[:, 2, 2] = torch.cos(roll), -torch.sin(roll), torch.sin(roll), torch.cos(roll), 1
    m = spin @ turn
    ray = torch.einsum("bij,bhwj->bhwi", m, ray)
    centre = -away[:, None] * m[:, :, 2]
    reach = -centre[:, 2][:, None, None] / ray[..., 2].clamp(min=0.15)
    place = centre[:, None, None, :2] + reach[..., None] * ray[..., :2]
    shift = torch.stack([uniform((b,), -0.15, 0.15, device) * width, uniform((b,), -0.15, 0.15, device) * height], -1)
    return place + shift[:, None, None]
