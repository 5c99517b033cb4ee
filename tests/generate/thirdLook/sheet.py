"""The base sheet: curled, creased, never quite flat."""

import bpy
import numpy as np
from scipy.ndimage import gaussian_filter, map_coordinates

from drawing import draw
from materials import paper
from scene import PAPER, add, grid_mesh

STEP_MM = 1.0
THICK_MM = 0.28


class Lie:
    """How the sheet lies: height of its upper face over mm on the sheet, and mm to the world."""

    def __init__(self, s):
        self.w, self.h = s.width_mm, s.height_mm
        y, x = np.mgrid[0 : self.h + 1, 0 : self.w + 1].astype(float)
        u, v = x / self.w - 0.5, y / self.h - 0.5
        rng = s.rng
        turn = rng.uniform(0, np.pi)
        z = s.curl_mm * 4 * (u * np.cos(turn) + v * np.sin(turn)) ** 2 * rng.choice([1, 1, -1])
        for su in (-1, 1):
            for sv in (-1, 1):
                z = z + rng.exponential(0.5) * s.curl_mm * np.clip(su * u + sv * v - 0.55, 0, 1) ** 2 * 4
        if rng.random() < 0.3:
            middle = (u if rng.random() < 0.5 else v) - rng.normal(0, 0.03)
            z = z + rng.uniform(1, 3.5) * np.abs(middle) * 2
        z = z + 0.12 * gaussian_filter(rng.normal(size=z.shape), 9) * 25 * rng.uniform(0, 1)
        self.z = z - z.min() + THICK_MM + 0.05

    def height(self, x, y):
        """Height in mm at places in mm on the sheet (nearest edge outside)."""
        x, y = np.asarray(x, float), np.asarray(y, float)
        return map_coordinates(self.z, [np.ravel(y), np.ravel(x)], order=1, mode="nearest").reshape(x.shape)

    def world(self, x, y, above=0.0):
        """World coordinates (..., 3) of places on the sheet."""
        x, y = np.asarray(x, float), np.asarray(y, float)
        return np.stack([x - self.w / 2, self.h / 2 - y, self.height(x, y) + above], -1)


def lay_sheet(plan, s):
    """Adds the sheet with its drawing. @returns its Lie."""
    lie = Lie(s)
    y, x = np.meshgrid(np.arange(0, s.height_mm + 0.5, STEP_MM), np.arange(0, s.width_mm + 0.5, STEP_MM), indexing="ij")
    uv = np.stack([x / s.width_mm, 1 - y / s.height_mm], -1)
    material = paper(as_image("drawing", draw(plan, s)), s.paper == "black")
    thing = add("sheet", grid_mesh("sheet", lie.world(x, y), uv), material, PAPER)
    solid = thing.modifiers.new("thickness", "SOLIDIFY")
    solid.thickness = THICK_MM
    solid.offset = -1.0
    return lie


def as_image(name, rgb):
    """A Blender image of linear values from (h, w, 3), row 0 at the top."""
    h, w, _ = rgb.shape
    image = bpy.data.images.new(name, w, h, float_buffer=True, is_data=True)
    rgba = np.dstack([rgb[::-1], np.ones((h, w), np.float32)]).astype(np.float32)
    image.pixels.foreach_set(rgba.ravel())
    image.update()
    image.pack()
    return image
