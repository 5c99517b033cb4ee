"""What is printed, drawn or painted on the sheet: a picture in linear RGB at 10 px/mm, row 0 at the sheet's top."""

import numpy as np
from scipy.ndimage import gaussian_filter

from paths import smooth_curve

PX_PER_MM = 10
GROUNDS = {
    "white": (0.80, 0.80, 0.79),
    "lined": (0.79, 0.79, 0.77),
    "squared": (0.78, 0.79, 0.78),
    "doodled": (0.80, 0.79, 0.77),
    "felt": (0.80, 0.80, 0.78),
    "painted": (0.77, 0.76, 0.72),
    "cream": (0.78, 0.71, 0.56),
    "kraft": (0.46, 0.30, 0.175),
    "blue": (0.16, 0.33, 0.60),
    "grey": (0.40, 0.40, 0.41),
    "black": (0.022, 0.022, 0.024),
}
INKS = (
    (0.65, 0.03, 0.03),
    (0.02, 0.06, 0.45),
    (0.02, 0.35, 0.08),
    (0.85, 0.25, 0.02),
    (0.9, 0.7, 0.03),
    (0.35, 0.05, 0.4),
    (0.8, 0.15, 0.35),
    (0.02, 0.02, 0.02),
    (0.05, 0.45, 0.6),
    (0.25, 0.1, 0.04),
)


def draw(plan, s):
    """@returns (height, width, 3) float32."""
    sheet = Sheet(s)
    if s.paper in ("lined", "squared"):
        sheet.ruled(s.paper == "squared")
    if s.paper == "painted":
        sheet.washes()
    if s.paper in ("felt", "doodled"):
        sheet.doodles(int(s.rng.integers(4, 9)), filled=s.paper == "felt")
    if s.paper == "kraft":
        sheet.flecks()
    if s.rng.random() < 0.75:
        sheet.guides(plan)
    if s.rng.random() < 0.25 and s.paper != "felt":
        sheet.doodles(2, filled=False)
    return sheet.rgb


class Sheet:
    def __init__(self, s):
        self.s, self.rng = s, s.rng
        shape = (int(s.height_mm * PX_PER_MM), int(s.width_mm * PX_PER_MM))
        self.rgb = np.empty((*shape, 3), np.float32)
        self.rgb[:] = np.array(GROUNDS[s.paper]) * s.rng.normal(1, 0.03) * s.rng.normal(1, 0.012, 3)
        self.rgb *= 1 + 0.015 * self.clouds(18)[..., None]

    def clouds(self, wavelength_mm):
        """Smooth noise over the sheet, deviation about 1."""
        k = 8
        small = self.rng.normal(size=(self.rgb.shape[0] // k + 2, self.rgb.shape[1] // k + 2))
        small = gaussian_filter(small, wavelength_mm * PX_PER_MM / k / 4)
        small /= small.std() + 1e-9
        big = small.repeat(k, 0).repeat(k, 1)[: self.rgb.shape[0], : self.rgb.shape[1]]
        return gaussian_filter(big, k / 2).astype(np.float32)

    def lay(self, alpha, colour, corner=(0, 0)):
        """Lays ink over a window of the sheet: ink darkens what is below, like a transparent glaze."""
        y, x = corner
        window = self.rgb[y : y + alpha.shape[0], x : x + alpha.shape[1]]
        ink = np.array(colour, np.float32)
        over = 0.35 * ink + 0.65 * ink * np.minimum(1, window / 0.8)
        window += alpha[..., None] * (over - window)

    def stroke(self, points, width_mm, colour, strength=0.9):
        """A line of a pen through points (n, 2) mm; grainy where the pen is a pencil."""
        points = np.asarray(points, float)
        for a, b in zip(points[:-1], points[1:]):
            low = np.floor((np.minimum(a, b) - width_mm - 0.2) * PX_PER_MM).astype(int)
            high = np.ceil((np.maximum(a, b) + width_mm + 0.2) * PX_PER_MM).astype(int)
            x0, y0 = np.maximum(low, 0)
            x1, y1 = np.minimum(high, (self.rgb.shape[1], self.rgb.shape[0]))
            if x1 <= x0 or y1 <= y0:
                continue
            gy, gx = np.mgrid[y0:y1, x0:x1] / PX_PER_MM
            step = b - a
            t = np.clip(((gx - a[0]) * step[0] + (gy - a[1]) * step[1]) / max(1e-9, step @ step), 0, 1)
            d = np.hypot(gx - a[0] - t * step[0], gy - a[1] - t * step[1])
            alpha = np.clip((width_mm / 2 - d) * PX_PER_MM + 0.5, 0, 1) * strength
            if strength < 0.7:
                alpha *= self.rng.uniform(0.3, 1, alpha.shape)
            self.lay(alpha.astype(np.float32), colour, (y0, x0))

    def ruled(self, squared):
        """Rules 8 mm apart, or squares of 5 mm."""
        pitch = 5 if squared else 8
        tone = (0.42, 0.55, 0.72) if self.rng.random() < 0.7 else (0.6, 0.6, 0.62)
        half = self.rng.uniform(0.5, 1.2)
        for y in np.arange(pitch, self.s.height_mm, pitch):
            self.rgb[int(y * PX_PER_MM - half) : int(y * PX_PER_MM + half) + 1] = tone
        if squared:
            for x in np.arange(pitch, self.s.width_mm, pitch):
                self.rgb[:, int(x * PX_PER_MM - half) : int(x * PX_PER_MM + half) + 1] = tone

    def washes(self):
        """Watercolour: patches with dark rims and cloudy insides."""
        for _ in range(int(self.rng.integers(3, 6))):
            cloud = self.clouds(self.rng.uniform(35, 70)) + 0.25 * self.clouds(7)
            level = self.rng.uniform(0.3, 1.0)
            inside = np.clip((cloud - level) * 6, 0, 1)
            rim = np.exp(-(((cloud - level - 0.1) / 0.07) ** 2))
            colour = np.array(INKS[int(self.rng.integers(len(INKS)))]) * 0.6 + 0.3
            self.lay(inside * (0.35 + 0.12 * self.clouds(20)).clip(0.1, 0.7) + 0.25 * rim * inside, colour)

    def doodles(self, count, filled):
        """Houses, stars, hearts, suns and waves in felt-tip; filled ones are hatched."""
        for _ in range(count):
            size = self.rng.uniform(7, 24)
            c = self.rng.uniform((10, 10), (self.s.width_mm - 10, self.s.height_mm - 10))
            outline = np.array(SHAPES[int(self.rng.integers(len(SHAPES)))](self.rng)) * size + c
            colour = INKS[int(self.rng.integers(len(INKS)))]
            pen = self.rng.uniform(0.5, 1.6)
            wobble = self.rng.normal(0, 0.15, outline.shape)
            self.stroke(outline + wobble, pen, colour, self.rng.uniform(0.75, 0.95))
            if filled or self.rng.random() < 0.3:
                hatch = INKS[int(self.rng.integers(len(INKS)))]
                for y in np.arange(c[1] - size * 0.42, c[1] + size * 0.42, pen * self.rng.uniform(0.7, 1.5)):
                    wide = size * 0.42 * np.sqrt(max(0.05, 1 - ((y - c[1]) / size / 0.45) ** 2))
                    self.stroke(
                        [(c[0] - wide, y + self.rng.normal(0, 0.3)), (c[0] + wide, y + self.rng.normal(0, 0.3))],
                        pen,
                        hatch,
                        0.75,
                    )

    def flecks(self):
        for _ in range(700):
            at = self.rng.uniform((0, 0), (self.s.width_mm, self.s.height_mm))
            way = self.rng.normal(0, 0.9, 2)
            self.stroke([at, at + way], 0.14, (0.2, 0.11, 0.05) if self.rng.random() < 0.6 else (0.75, 0.6, 0.4), 0.5)

    def guides(self, plan):
        """Pencil: the strips' middle or edges, the cell's ring, plus and minus beside the pads, a name a lamp."""
        light = sum(GROUNDS[self.s.paper]) > 0.3
        lead = (0.12, 0.12, 0.13) if light else (0.6, 0.6, 0.6)
        wide = self.rng.uniform(0.25, 0.5)
        offset = self.rng.choice([0.0, 0.6, 1.0])
        for t in plan["strips"]:
            path = np.array(t["path"])
            for side in (-1, 1) if offset else (1,):
                shift = side * offset * t["width"] / 2 + self.rng.normal(0, 0.25, 2)
                self.stroke(path + shift, wide, lead, 0.55)
        turn = np.linspace(0, 2 * np.pi, 40)
        self.stroke(np.c_[np.cos(turn), np.sin(turn)] * 10.2 + plan["cell"], wide, lead, 0.55)
        for lamp in plan["lamps"]:
            for sign, pad in (("+", lamp["plus"]), ("-", lamp["minus"])):
                self.sign(np.array(pad) + self.rng.uniform(5, 7, 2) * self.rng.choice([-1, 1], 2), sign, lead, wide)

    def sign(self, c, sign, colour, wide):
        self.stroke([c - (1.3, 0), c + (1.3, 0)], wide, colour, 0.6)
        if sign == "+":
            self.stroke([c - (0, 1.3), c + (0, 1.3)], wide, colour, 0.6)


def star(rng):
    turn = np.linspace(0, 2 * np.pi, 11) + rng.uniform(0, 1)
    radius = np.where(np.arange(11) % 2, 0.2, 0.48)
    return np.c_[np.cos(turn), np.sin(turn)] * radius[:, None]


def heart(rng):
    t = np.linspace(0, 2 * np.pi, 40)
    x = 16 * np.sin(t) ** 3
    y = -(13 * np.cos(t) - 5 * np.cos(2 * t) - 2 * np.cos(3 * t) - np.cos(4 * t))
    return np.c_[x, y] / 36


def house(rng):
    return [(-0.4, 0.45), (-0.4, -0.1), (0, -0.48), (0.4, -0.1), (0.4, 0.45), (-0.4, 0.45), (0.4, -0.1), (-0.4, -0.1)]


def wave(rng):
    x = np.linspace(-0.9, 0.9, 40)
    return np.c_[x, 0.12 * np.sin(x * 11 + rng.uniform(0, 6))]


def ring(rng):
    t = np.linspace(0, 2 * np.pi, 40)
    return np.c_[np.cos(t), np.sin(t)] * 0.45


def scrawl(rng):
    return smooth_curve(rng.normal(0, 0.3, (9, 2)), 6)


SHAPES = (star, heart, house, wave, ring, scrawl)
