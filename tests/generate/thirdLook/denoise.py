"""Takes a path tracer's grain out of a picture, as a phone would: an edge-avoiding a-trous filter on the light alone, led by
the surfaces' own colour and slope (Dammertz, Sewtz, Hanika, Lensch 2010)."""

import numpy as np
from scipy.ndimage import gaussian_filter, median_filter

LEVELS = 5


def denoise(colour, albedo, normal, sparkling):
    """
    @param colour, albedo, normal (h, w, 3) float32, linear. @param sparkling (h, w) bool: where single pixels may stand out.
    @returns the picture, and the light that falls on its surfaces.
    """
    surface = np.maximum(albedo, 0.02)
    # A room picture's compression leaves a few values below nothing.
    light = np.clip(colour / surface, 0, 60)
    usual = median_filter(light, (5, 5, 1))
    speck = (np.abs(light - usual).mean(-1) > 0.35 * usual.mean(-1)) & ~sparkling
    light[speck] = usual[speck]
    for level in range(LEVELS):
        light = smooth(light, albedo, normal, sparkling, 2**level)
    return light * surface, light


def smooth(light, albedo, normal, sparkling, step):
    """One level: nine taps `step` pixels apart. Brightness parts them by its local mean, so that grain does not."""
    fine = np.log1p(light.mean(-1))
    coarse = gaussian_filter(fine, 1.5 * step)
    guide = np.where(sparkling, fine, coarse)
    total, weights = light * 0.25, np.full(guide.shape, 0.25, np.float32)
    for dy in (-1, 0, 1):
        for dx in (-1, 0, 1):
            if dx == dy == 0:
                continue
            near = lambda a: np.roll(a, (dy * step, dx * step), (0, 1))
            apart = ((normal - near(normal)) ** 2).sum(-1) / 0.01
            apart += ((albedo - near(albedo)) ** 2).sum(-1) / 0.004
            apart += (guide - near(guide)) ** 2 / 0.01
            apart[near(sparkling) != sparkling] = 50
            weight = np.exp(-apart) * (0.0625 if dx and dy else 0.125)
            total += near(light) * weight[..., None]
            weights += weight
    return total / weights[..., None]
