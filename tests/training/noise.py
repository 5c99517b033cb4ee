"""Smooth random fields, on the device, a batch at a time."""

import torch
import torch.nn.functional as F


def smooth(b, h, w, cells, device, channels=1):
    """Band-limited noise of about unit spread: a random grid of `cells` nodes, bicubic to h x w. (b, channels, h, w)"""
    grid = torch.randn(b, channels, cells + 3, cells + 3, device=device)
    big = F.interpolate(grid, size=(h + 8, w + 8), mode="bicubic", align_corners=False)
    return big[:, :, 4 : 4 + h, 4 : 4 + w]


def at(field, u, v):
    """Samples (b, c, n, n) noise at u, v in 0..1 (wrapped by reflection); u, v are (b, h, w). -> (b, c, h, w)"""
    grid = torch.stack([u * 2 - 1, v * 2 - 1], -1)
    return F.grid_sample(field, grid, mode="bilinear", padding_mode="reflection", align_corners=False)


def uniform(shape, low, high, device):
    return torch.rand(shape, device=device) * (high - low) + low


def chance(b, p, device):
    """(b,) booleans, true with probability p."""
    return torch.rand(b, device=device) < p


def pick(b, rows, device):
    """One row of `rows` (n, k) a sample, as (b, k)."""
    table = torch.tensor(rows, device=device, dtype=torch.float32)
    return table[torch.randint(len(rows), (b,), device=device)]
