"""Path-traced photographs to learn from, beside the scenes drawn on the fly; the folder may still be filling."""

import glob
import json
import math
import os

import numpy as np
import torch
import torch.nn.functional as F

from camera import blur
from noise import chance, uniform
from render import weighed

# With fewer photographs the net would learn them by heart.
FEWEST = 8


def read(stem, device):
    """A photograph of tests/generate/thirdLook: its pixels, what is seen in each, sheet to picture, places to look at."""
    from PIL import Image

    with open(f"{stem}.json") as f:
        truth = json.load(f)
    picture = np.asarray(Image.open(f"{stem}.jpg").convert("RGB"))
    r, g, b = np.moveaxis(np.asarray(Image.open(f"{stem}_sorts.png").convert("RGB")) > 127, -1, 0)
    maps = np.stack([r & ~g & ~b, r & g, g & b, r & b], -1)
    joined = np.concatenate([picture, maps.astype(np.uint8) * 255], -1)
    return {
        "pixels": torch.tensor(joined, device=device).permute(2, 0, 1),
        "to_px": np.array(truth["camera"]["homography_mm_to_undistorted_px"]),
        "size": (truth["base"]["width_mm"], truth["base"]["height_mm"]),
        "places": [(f["x_mm"], f["y_mm"]) for f in truth["faults"]],
    }


class Traced:
    """All photographs of a folder that have their truth beside them."""

    def __init__(self, folder, device):
        self.folder, self.device, self.known, self.sheets = folder, device, set(), []

    def refresh(self):
        """Takes up what is new; a file that is half written waits for the next time."""
        for path in sorted(glob.glob(os.path.join(self.folder, "*_rect_valid.png"))):
            stem = path[: -len("_rect_valid.png")]
            if stem in self.known or not os.path.exists(f"{stem}.jpg"):
                continue
            try:
                self.sheets.append(read(stem, self.device))
            except (OSError, ValueError):
                continue
            self.known.add(stem)

    def ready(self):
        return len(self.sheets) >= FEWEST

    def take(self, n, size):
        """(n, 3, size, size) pictures, (n, 3, ...) truth of copper, lamp, cell, (n, 1, ...) weights: pieces of sheets, toned anew."""
        pixels = torch.cat([self.piece(size) for _ in range(n)])
        picture, truth, thin = pixels[:, :3], pixels[:, 3:6], pixels[:, 6:7]
        # Legs, wires and solder, through which copper may go on, say nothing.
        weight = weighed(truth[:, :1], 6 * pixels[:, 7:8], 12, 18) * (1 - F.max_pool2d(thin, 3, 1, 1))
        return worn(picture, self.device), truth, weight.clamp(0, 12)

    def piece(self, size):
        """One piece at 8 to 12 px/mm, now and then down to 5, about upright: (1, 8, size, size), the last map near faults."""
        sheet = self.sheets[int(torch.randint(len(self.sheets), (1,)))]
        scale = float(uniform((1,), 8, 12, "cpu") if torch.rand(1) < 0.75 else uniform((1,), 5, 8, "cpu"))
        to_px = sheet["to_px"] @ self.laid(sheet, size, scale)
        axis = torch.arange(size, device=self.device, dtype=torch.float32) + 0.5
        y, x = torch.meshgrid(axis, axis, indexing="ij")
        m = torch.tensor(to_px, device=self.device, dtype=torch.float32)
        at = torch.stack([x, y, torch.ones_like(x)], -1) @ m.T
        h, w = sheet["pixels"].shape[1:]
        grid = at[..., :2] / at[..., 2:] * torch.tensor([2 / w, 2 / h], device=self.device) - 1
        pixels = sheet["pixels"].float()[None] / 255
        picture = F.grid_sample(pixels[:, :3], grid[None], mode="bilinear", padding_mode="border", align_corners=False)
        maps = F.grid_sample(pixels[:, 3:], grid[None], mode="nearest", padding_mode="zeros", align_corners=False)
        return torch.cat([picture, maps, self.near_faults(sheet, to_px, at)], 1)

    def laid(self, sheet, size, scale):
        """Piece pixels to mm: about a random place of the sheet or a fault, turned by quarters and a little more."""
        w, h = sheet["size"]
        if sheet["places"] and torch.rand(1) < 0.35:
            c = np.array(sheet["places"][int(torch.randint(len(sheet["places"]), (1,)))])
            c = c + (torch.rand(2).numpy() - 0.5) * 0.6 * size / scale
        else:
            c = torch.rand(2).numpy() * (w, h)
        # Mostly sheet, as the checked ones are; a little of what lies round it.
        half = size / scale / 2 - 5
        c = np.array([np.clip(k, min(half, m / 2), max(m - half, m / 2)) for k, m in zip(c, (w, h))])
        turn = float(torch.randint(4, (1,))) * math.pi / 2 + float(torch.randn(1)) * 0.05
        flip = 1 if torch.rand(1) < 0.5 else -1
        cos, sin = math.cos(turn) / scale, math.sin(turn) / scale
        m = np.array([[cos * flip, -sin, 0], [sin * flip, cos, 0], [0, 0, 1]])
        m[:2, 2] = c - m[:2, :2] @ (size / 2, size / 2)
        return m

    def near_faults(self, sheet, to_px, at):
        """1 within 1.5 mm of a fault, in picture pixels by the picture's own scale there."""
        near = torch.zeros((1, 1, *at.shape[:2]), device=self.device)
        photo = at[..., :2] / at[..., 2:]
        for x, y in sheet["places"]:
            ends = [sheet["to_px"] @ (x + d, y, 1) for d in (0, 1.5)]
            a, b = (e[:2] / e[2] for e in ends)
            far = (photo - torch.tensor(a, device=self.device, dtype=torch.float32)).norm(dim=-1)
            near[0, 0] = torch.maximum(near[0, 0], (far < float(np.hypot(*(b - a)))).float())
        return near


def worn(picture, device):
    """Another exposure, tint, focus and noise of the same photograph."""
    n = picture.shape[0]
    tone = torch.exp(0.2 * torch.randn(n, 1, 1, 1, device=device))
    gain = torch.exp(0.1 * torch.randn(n, 1, 1, 1, device=device) + 0.06 * torch.randn(n, 3, 1, 1, device=device))
    picture = (picture.clamp(min=1e-3) ** tone * gain).clamp(0, 1)
    softened = uniform((n,), 0, 1.2, device) * chance(n, 0.3, device).float()
    picture = blur(picture, softened)
    noise = uniform((n, 1, 1, 1), 0, 0.025, device) * chance(n, 0.4, device).float()[:, None, None, None]
    return (picture + noise * torch.randn_like(picture)).clamp(0, 1)
