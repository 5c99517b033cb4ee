"""A phone camera after the light: exposure, white balance, blur, sampling, noise, sharpening, tone, JPEG."""

import math

import torch
import torch.nn.functional as F

from noise import chance, uniform


def rgb(t):
    return t[:, :, None, None]


def srgb(linear):
    """IEC 61966-2-1 transfer."""
    low = linear.clamp(0, 1)
    return torch.where(low <= 0.0031308, 12.92 * low, 1.055 * low.clamp(min=1e-6) ** (1 / 2.4) - 0.055)


def blur(picture, sigma):
    """Gaussian by a fixed 13-tap window, one sigma a sample (b,), px."""
    b, c, h, w = picture.shape
    k = torch.arange(-6, 7, device=picture.device, dtype=torch.float32)
    window = torch.exp(-0.5 * (k[None] / sigma.clamp(min=0.05)[:, None]) ** 2)
    window = (window / window.sum(1, keepdim=True)).repeat_interleave(c, 0)
    flat = picture.reshape(1, b * c, h, w)
    flat = F.conv2d(F.pad(flat, (6, 6, 0, 0), mode="reflect"), window[:, None, None, :], groups=b * c)
    flat = F.conv2d(F.pad(flat, (0, 0, 6, 6), mode="reflect"), window[:, None, :, None], groups=b * c)
    return flat.reshape(b, c, h, w)


LUMA = [
    [16, 11, 10, 16, 24, 40, 51, 61], [12, 12, 14, 19, 26, 58, 60, 55], [14, 13, 16, 24, 40, 57, 69, 56],
    [14, 17, 22, 29, 51, 87, 80, 62], [18, 22, 37, 56, 68, 109, 103, 77], [24, 35, 55, 64, 81, 104, 113, 92],
    [49, 64, 78, 87, 103, 121, 120, 101], [72, 92, 95, 98, 112, 100, 103, 99],
]


def jpeg(picture, strength):
    """Rounds 8 x 8 cosine coefficients by the luminance table of ITU-T T.81 annex K, times a strength (b,)."""
    b, c, h, w = picture.shape
    d = picture.device
    h8, w8 = h // 8 * 8, w // 8 * 8
    n = torch.arange(8, device=d, dtype=torch.float32)
    basis = torch.cos((2 * n[None] + 1) * n[:, None] * math.pi / 16) * math.sqrt(0.25)
    basis[0] *= math.sqrt(0.5)
    m = torch.tensor([[0.299, 0.587, 0.114], [-0.1687, -0.3313, 0.5], [0.5, -0.4187, -0.0813]], device=d)
    ycc = torch.einsum("kc,bchw->bkhw", m, picture[:, :, :h8, :w8] * 255)
    coarse = F.interpolate(F.avg_pool2d(ycc[:, 1:], 2), scale_factor=2.0, mode="bilinear", align_corners=False)
    halved = rgb(chance(b, 0.7, d).float()[:, None])
    ycc = torch.cat([ycc[:, :1], ycc[:, 1:] * (1 - halved) + coarse * halved], 1)
    blocks = ycc.reshape(b, 3, h8 // 8, 8, w8 // 8, 8).permute(0, 1, 2, 4, 3, 5)
    coeff = basis @ blocks @ basis.T
    table = torch.tensor(LUMA, device=d, dtype=torch.float32)[None, None] * strength[:, None, None, None]
    table = table * torch.tensor([1.0, 1.8, 1.8], device=d)[None, :, None, None]
    table = table[:, :, None, None].clamp(min=0.5)
    back = basis.T @ (torch.round(coeff / table) * table) @ basis
    ycc = back.permute(0, 1, 2, 4, 3, 5).reshape(b, 3, h8, w8)
    out = picture.clone()
    out[:, :, :h8, :w8] = torch.einsum("ck,bkhw->bchw", torch.linalg.inv(m), ycc) / 255
    return out


def bloom(light):
    """What is burnt out spills over: a lens's glare, a phone's halo."""
    b, _, h, w = light.shape
    d = light.device
    spill = F.avg_pool2d((light - 1).clamp(0, 4), 8)
    spill = blur(spill, uniform((b,), 0.3, 3.5, d)) * rgb(uniform((b, 1), 0, 0.35, d) * chance(b, 0.45, d).float()[:, None])
    return light + F.interpolate(spill, size=(h, w), mode="bilinear", align_corners=False)


def shoot(light, scale_range=(0.4, 1.0), crisp_share=0.5):
    """
    light (b, 3, h, w) linear -> sRGB 0..1 of the same size, as if photographed at a lower resolution (one for the batch)
    and resampled back.
    """
    b, _, h, w = light.shape
    d = light.device
    level = light.mean((1, 2, 3), keepdim=True).clamp(min=0.02)
    light = light * rgb(torch.exp(uniform((b, 1), -0.9, 0.9, d))) * (0.35 / level) ** rgb(uniform((b, 1), 0, 0.9, d))
    cast = torch.exp(0.07 * torch.randn(b, 3, device=d) + torch.tensor([1.0, 0, -1.0], device=d) * uniform((b, 1), -0.18, 0.42, d))
    # So many pictures are in focus and fine enough that a slit of half a millimetre shows.
    crisp = chance(b, crisp_share, d)
    light = blur(bloom(light * rgb(cast)), torch.where(crisp, uniform((b,), 0.0, 0.9, d), uniform((b,), 0.0, 2.2, d) ** 1.3))
    least = scale_range[0] if torch.rand(1) > crisp_share else max(scale_range[0], 0.65)
    scale = float(torch.rand(1)) * (scale_range[1] - least) + least
    size = (int(h * scale) // 8 * 8, int(w * scale) // 8 * 8)
    small = F.interpolate(light, size=size, mode="bilinear", antialias=True, align_corners=False)
    noise = rgb(torch.exp(uniform((b, 1), math.log(0.001), math.log(0.03), d)))
    small = small + torch.randn_like(small) * noise * (small.clamp(min=0) + 0.02).sqrt()
    # Noise smoothed away, then edges sharpened, as phones do.
    small = blur(small, uniform((b,), 0, 1.0, d) * chance(b, 0.4, d).float())
    picture = srgb(small)
    sharp = rgb(uniform((b, 1), 0, 1.8, d) * chance(b, 0.6, d).float()[:, None])
    picture = picture + sharp * (picture - blur(picture, uniform((b,), 0.7, 1.8, d)))
    curve = rgb(uniform((b, 1), -0.25, 0.35, d))
    picture = picture + curve * picture * (1 - picture) * (2 * picture - 1)
    picture = jpeg(picture.clamp(0, 1), torch.exp(uniform((b,), math.log(0.05), math.log(0.9), d)))
    return F.interpolate(picture, size=(h, w), mode="bilinear", align_corners=False).clamp(0, 1)
