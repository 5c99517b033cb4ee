"""From the scene's light to a phone's picture: glare, exposure, white balance, noise, sharpening, tone."""

import numpy as np
from scipy.ndimage import gaussian_filter


def develop(linear, falling, s):
    """@param linear, falling (h, w, 3): the picture, and the light on its surfaces. @returns sRGB values 0..1."""
    rng = s.rng
    light = linear * exposure(linear, s)
    light = light * balance(falling, s)
    light = glare(light, rng)
    light = light * falloff(light.shape, rng)
    light = grain(light, s)
    picture = tone(light, rng.uniform(0, 0.5))
    return np.clip(sharpen(picture, rng.uniform(0.2, 1.0)), 0, 1).astype(np.float32)


def exposure(linear, s):
    """A phone's metering: the mean to a mid grey, highlights kept a little, then the maker's error in stops."""
    luminance = linear @ np.array([0.21, 0.72, 0.07], np.float32)
    mean = np.minimum(luminance, np.percentile(luminance, 98)).mean()
    gain = min(0.30 / mean, 1.6 / np.percentile(luminance, 97))
    return float(gain * 2**s.exposure_ev)


def balance(falling, s):
    """A phone knows the light's colour nearly: most of its cast is taken out, and it errs by some warmth."""
    cast = np.median(falling.reshape(-1, 3), 0)
    gain = (cast[1] / cast) ** s.rng.uniform(0.75, 1.0)
    gain = gain * [1 + s.warmth, 1, 1 - s.warmth]
    return (gain / gain.mean()).astype(np.float32)


def blur(picture, sigma):
    return gaussian_filter(picture, (sigma, sigma, 0))


def glare(light, rng):
    """Very bright spots spread over their surroundings; the lens veils all a little."""
    bright = np.minimum(light, 30)
    small = bright[::4, ::4]
    wide = np.kron(blur(small, 12), np.ones((4, 4, 1), np.float32))[: light.shape[0], : light.shape[1]]
    near = blur(bright, 3)
    out = 0.94 * light + 0.035 * near + 0.02 * wide + 0.005 * light.mean((0, 1))
    return blur(out, rng.uniform(0.35, 0.9))


def falloff(shape, rng):
    h, w, _ = shape
    y, x = np.mgrid[-1 : 1 : h * 1j, -1 : 1 : w * 1j]
    return (1 - rng.uniform(0.03, 0.2) * (x * x + y * y) / 2)[..., None].astype(np.float32)


def grain(light, s):
    """Shot and reading noise, smoothed as phones do: colour more than brightness."""
    rng = s.rng
    noise = rng.normal(size=light.shape).astype(np.float32) * np.sqrt(
        np.maximum(0, light) * s.noise**2 + (s.noise / 4) ** 2
    )
    grey = noise.mean(-1, keepdims=True)
    colour = blur(noise - grey, 1.2) * 1.5
    return light + blur(grey, 0.5) * 1.6 + colour


def tone(light, contrast):
    """A shoulder above 0.8, the sRGB curve, and an S-curve in part."""
    light = np.maximum(light, 0)
    over = np.maximum(light - 0.7, 0)
    light = np.minimum(light, 0.7) + 0.3 * (1 - np.exp(-over / 0.35))
    srgb = np.where(light <= 0.0031308, 12.92 * light, 1.055 * np.maximum(light, 1e-6) ** (1 / 2.4) - 0.055)
    return srgb + contrast * (srgb * srgb * (3 - 2 * srgb) - srgb)


def sharpen(picture, amount):
    return picture + amount * (picture - blur(picture, 1.1))
