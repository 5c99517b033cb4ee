"""
Random sheets of paper with copper tape, drawn in mm on whatever grid of places the caller gives.

A sheet is drawn by signed distances, so the same code serves a flat 10 px/mm sheet and a photograph seen through a
homography. Copper is a creased mirror: what it shows is a random room seen by its facets, not a colour of its own.
Truth is the visible copper, with cuts open; lamps and cells have masks of their own.
"""

import math

import torch

from noise import at, chance, pick, smooth, uniform
from rooms import Room

PAPERS = [
    (0.86, 0.87, 0.89), (0.84, 0.84, 0.84), (0.90, 0.90, 0.88), (0.83, 0.80, 0.70), (0.78, 0.75, 0.66),
    (0.70, 0.74, 0.80), (0.55, 0.66, 0.78), (0.32, 0.42, 0.55), (0.45, 0.45, 0.45), (0.25, 0.26, 0.27),
    (0.45, 0.31, 0.18), (0.52, 0.36, 0.22), (0.38, 0.25, 0.14), (0.80, 0.66, 0.62), (0.62, 0.72, 0.55),
    (0.04, 0.04, 0.045), (0.85, 0.80, 0.35), (0.86, 0.87, 0.89), (0.88, 0.88, 0.87), (0.82, 0.83, 0.85),
]
PAINTS = [
    (0.55, 0.12, 0.10), (0.75, 0.35, 0.10), (0.40, 0.20, 0.08), (0.15, 0.25, 0.55), (0.20, 0.45, 0.25),
    (0.80, 0.65, 0.15), (0.70, 0.40, 0.45), (0.10, 0.10, 0.12), (0.45, 0.35, 0.55), (0.60, 0.45, 0.30),
]
CLEAR = [
    (0.85, 0.70, 0.05), (0.80, 0.25, 0.03), (0.05, 0.15, 0.60), (0.03, 0.40, 0.12), (0.70, 0.05, 0.06), (0.60, 0.75, 0.05),
    (0.05, 0.45, 0.50), (0.45, 0.08, 0.45),
]
TABLES = [
    (0.35, 0.22, 0.12), (0.50, 0.36, 0.22), (0.20, 0.12, 0.07), (0.62, 0.50, 0.36), (0.03, 0.05, 0.10),
    (0.05, 0.12, 0.09), (0.04, 0.04, 0.04), (0.75, 0.75, 0.74), (0.86, 0.86, 0.86), (0.45, 0.45, 0.46),
    (0.30, 0.10, 0.10), (0.55, 0.55, 0.50), (0.20, 0.22, 0.30), (0.68, 0.62, 0.55),
]


def rgb(t):
    return t[:, :, None, None]


def col(t):
    return t[:, None, None]


def box_sdf(x, y, cx, cy, angle, half_u, half_v, curve=None):
    """
    Signed distance to an oriented box, and its own coordinates u (along), v (across); parameters are (b,). With `curve`
    (1/mm) its middle line is an arc, a closed ring where it is long enough.
    """
    c, s = torch.cos(angle), torch.sin(angle)
    dx, dy = x - col(cx), y - col(cy)
    u = dx * col(c) + dy * col(s)
    v = -dx * col(s) + dy * col(c)
    if curve is not None:
        u, v = bent(u, v, col(curve))
    return torch.maximum(u.abs() - col(half_u), v.abs() - col(half_v)), u, v


def bent(u, v, curve):
    """Length along and distance from an arc that leaves (0, 0) along u."""
    straight = curve.abs() < 1e-3
    radius = 1 / torch.where(straight, torch.full_like(curve, 1e-3), curve)
    side = torch.sign(radius)
    around = radius * torch.atan2(u * side, (radius - v) * side)
    off = radius - side * torch.sqrt(u * u + (radius - v) ** 2)
    return torch.where(straight, u, around), torch.where(straight, v, off)


def leaf_sdf(u, v, half_u, half_v, power):
    """About the distance to |u/a|^p + |v/b|^p = 1, an ellipse for p = 2."""
    r = ((u / half_u).abs() ** power + (v / half_v).abs() ** power).clamp(min=1e-6) ** (1 / power)
    return (r - 1) * torch.minimum(half_u, half_v)


def cover(sdf, mm_per_px):
    """Share of a pixel inside, from signed distance in mm."""
    return (0.5 - sdf / mm_per_px).clamp(0, 1)


class Scene:
    """
    Draws into linear light. `x`, `y` are (b, h, w) mm; `inside` the paper's mask (b, h, w), `mm_per_px` (b, h, w) or number.
    """

    def __init__(self, x, y, inside, mm_per_px, span, device):
        self.x, self.y, self.inside, self.px, self.span = x, y, inside, mm_per_px, span
        self.device = device
        self.b, self.h, self.w = x.shape
        self.copper = torch.zeros_like(x)
        self.lamp = torch.zeros_like(x)
        self.cell = torch.zeros_like(x)
        self.fine = torch.zeros_like(x)
        self.unknown = torch.zeros_like(x)
        # Where the light comes from: a thing 1 mm high throws its shadow this far (mm), this dark.
        self.sun = uniform((self.b, 2), -1.3, 1.3, device)
        self.gloom = uniform((self.b,), 0, 0.99, device) * chance(self.b, 0.7, device).float()
        # A turned, shifted frame in 0..1 for textures.
        self.tu = x / span + 0.5 + 0.13
        self.tv = y / span + 0.5 - 0.07

    def noise(self, cells, channels=1):
        return at(smooth(self.b, 256, 256, cells, self.device, channels), self.tu, self.tv)

    # -- ground ---------------------------------------------------------------------------------------------------

    def ground(self):
        b, d = self.b, self.device
        known = pick(b, PAPERS, d) * uniform((b, 3), 0.92, 1.06, d)
        dyed = torch.rand(b, 3, device=d) * 0.7 + 0.05
        tone = torch.where(chance(b, 0.12, d)[:, None], dyed, known)
        # Now and then the table is nearly of the paper's own tone.
        self.alike = rgb(chance(b, 0.12, d).float()[:, None] * uniform((b, 1), 0.7, 1, d))
        self.tone = rgb(tone * uniform((b, 1), 0.75, 1.15, d))
        paper = rgb(tone)
        grain = self.noise(160) * col(uniform((b,), 0.0, 0.02, d))[:, None] + self.noise(40) * 0.01
        paper = paper * (1 + grain)
        paper = self.blotches(paper)
        paper = self.lines(paper)
        table = self.table()
        # Now and then the tape lies on wood, cloth or a dark desk itself.
        stuff = chance(b, 0.12, d).float()[:, None, None, None]
        paper = paper * (1 - stuff) + self.table() * stuff
        m = self.inside[:, None]
        self.light_in = paper * m + table * (1 - m)

    def table(self):
        b, d = self.b, self.device
        base = rgb(pick(b, TABLES, d) * uniform((b, 3), 0.8, 1.25, d))
        base = base * (1 - self.alike) + self.tone * self.alike
        angle = uniform((b,), 0, math.pi, d)
        u = (self.x * col(torch.cos(angle)) + self.y * col(torch.sin(angle))) / 300
        v = (-self.x * col(torch.sin(angle)) + self.y * col(torch.cos(angle))) / 300
        wood = at(smooth(b, 512, 512, 60, d), u * 0.12 + 0.5, v + 0.5) + 0.5 * at(
            smooth(b, 512, 512, 200, d), u * 0.05 + 0.5, v + 0.5
        )
        plain = self.noise(30) * 0.3 + self.noise(200)
        kind = torch.randint(3, (b,), device=d)[:, None, None, None]
        texture = torch.where(kind == 0, wood * 0.22, torch.where(kind == 1, plain * 0.10, plain * 0.03))
        pile = at(torch.randn(b, 1, 200, 200, device=d), self.tu, self.tv)
        carpet = 0.25 * self.noise(200) + 0.2 * torch.randn(b, 1, self.h, self.w, device=d) + rgb(uniform((b, 1), 0, 0.4, d)) * pile
        texture = torch.where(rgb(chance(b, 0.25, d)[:, None]), carpet, texture)
        pitch = col(uniform((b,), 5, 25, d))
        grid = ((u * 300) % pitch).minimum((v * 300) % pitch) < col(uniform((b,), 0.2, 0.5, d))
        grid = (grid & (kind[:, 0] == 1)).float()[:, None] * 0.25
        return (base * (1 + texture) + grid * rgb(uniform((b, 3), 0.1, 1, d))).clamp(0.005, 1)

    def blotches(self, paper):
        b, d = self.b, self.device
        for _ in range(5):
            on = chance(b, 0.28, d).float()[:, None, None, None]
            ragged = col(uniform((b,), 0.05, 0.7, d))[:, None]
            large = col(torch.rand(b, device=d))[:, None]
            field = (1 - large) * self.noise(6) + 1.3 * large * self.noise(2) + ragged * self.noise(30) + 0.5 * ragged * self.noise(110)
            level = col(uniform((b,), -0.2, 1.2, d))[:, None]
            soft = col(torch.exp(uniform((b,), math.log(0.02), math.log(0.3), d)))[:, None]
            shape = torch.sigmoid((field - level) / soft)
            rim = torch.exp(-(((field - level) / 0.12) ** 2)) * 0.35
            strength = col(uniform((b,), 0.15, 0.95, d))[:, None]
            paint = rgb(pick(b, PAINTS, d) * uniform((b, 3), 0.8, 1.3, d))
            grainy = rgb(uniform((b, 1), 0, 0.12, d) * chance(b, 0.6, d).float()[:, None])
            paint = paint * (1 + grainy * (self.noise(200) + self.noise(90))).clamp(min=0.3)
            mix = (on * strength * (shape + rim * shape)).clamp(0, 1)
            paper = paper * (1 - mix) + mix * paint * (0.35 + 0.65 * paper / 0.85)
        return paper

    def lines(self, paper):
        """Ruled or squared paper, pencil, ink."""
        b, d = self.b, self.device
        on = chance(b, 0.15, d).float()[:, None, None]
        pitch = col(uniform((b,), 4, 9, d))
        thick = col(uniform((b,), 0.15, 0.35, d))
        across = ((self.x % pitch) < thick).float() * col(chance(b, 0.5, d).float())
        rule = torch.maximum(((self.y % pitch) < thick).float(), across) * on * col(uniform((b,), 0.15, 0.6, d))
        paper = paper * (1 - rule[:, None] * rgb(uniform((b, 3), 0.1, 1, d)))
        for _ in range(5):
            on = chance(b, 0.4, d).float()
            sdf, u, _ = self.box(uniform((b,), 4, 60, d), uniform((b,), 0.08, 0.4, d), curve=self.arcs(0.35, 3))
            dash = col(uniform((b,), 1, 4, d))
            sdf = sdf + ((u % (2 * dash)) > dash).float() * col(chance(b, 0.3, d).float())
            wobble = self.noise(20)[:, 0] * 0.15
            ink = cover(sdf + wobble, self.px) * col(on * uniform((b,), 0.2, 0.9, d))
            paper = paper * (1 - ink[:, None] * (1 - rgb(uniform((b, 3), 0.02, 0.35, d))))
        return paper

    def box(self, half_u, half_v, angle=None, cx=None, cy=None, curve=None):
        b, d = self.b, self.device
        half = self.span / 2
        cx = uniform((b,), -half, half, d) if cx is None else cx
        cy = uniform((b,), -half, half, d) if cy is None else cy
        angle = uniform((b,), 0, math.pi, d) if angle is None else angle
        return box_sdf(self.x, self.y, cx, cy, angle, half_u, half_v, curve)

    def arcs(self, p, least):
        """Curvatures (1/mm) of either sign with radii from `least` mm up, for a share p; 0 for the rest."""
        b, d = self.b, self.device
        radius = least * torch.exp(uniform((b,), 0, 2.5, d)) * torch.where(chance(b, 0.5, d), 1.0, -1.0)
        return torch.where(chance(b, p, d), 1 / radius, torch.zeros_like(radius))

    # -- things ---------------------------------------------------------------------------------------------------

    def matte(self, n, p):
        """
        Card scraps, washi tape, painted bars: flat colour. Those as narrow as tape are of a clear colour: a narrow bar of
        brown, grey or black with a straight edge is tape, for all that can be seen.
        """
        b, d = self.b, self.device
        for _ in range(n):
            on = chance(b, p, d)
            narrow = chance(b, 0.2, d)
            half_v = torch.where(narrow, uniform((b,), 1, 4, d), uniform((b,), 4, 15, d))
            sdf, u, v = self.box(uniform((b,), 4, 30, d), half_v, curve=self.arcs(0.2, 20))
            m = cover(sdf, self.px) * col(on.float())
            colour = torch.where(narrow[:, None], pick(b, CLEAR, d), pick(b, PAINTS, d)) * uniform((b, 3), 0.6, 1.3, d)
            stripes = 1 + 0.15 * torch.sin(u * 2.5) * col((torch.rand(b, device=d) < 0.3).float())
            self.over(m, rgb(colour) * stripes[:, None] * (1 + 0.02 * self.noise(160)))

    def over(self, m, colour, keep=False):
        """Lays an opaque thing over all: colour (b, 3, h, w) or broadcastable, m (b, h, w). It hides copper unless `keep`."""
        self.light_in = self.light_in * (1 - m[:, None]) + colour * m[:, None]
        if not keep:
            for name in ("copper", "lamp", "cell", "fine"):
                setattr(self, name, getattr(self, name) * (1 - m))

    def shade(self, sdf, depth, strength):
        """A thin thing's contact shadow, outside its edge."""
        dark = torch.exp(-(sdf.clamp(min=0) / depth)) * (sdf > 0) * strength
        self.light_in = self.light_in * (1 - dark[:, None])

    def cast(self, cx, cy, turn, half_u, half_v, height, on, curve=None):
        """The shadow that a thing `height` mm high throws away from the light, drawn before the thing itself."""
        dark = torch.zeros_like(self.x)
        for share in (0.35, 0.7, 1.0):
            x, y = cx + self.sun[:, 0] * height * share, cy + self.sun[:, 1] * height * share
            sdf, _, _ = box_sdf(self.x, self.y, x, y, turn, half_u, half_v, curve)
            dark = torch.maximum(dark, torch.sigmoid(-sdf / (0.08 + 0.1 * col(height) * share)))
        self.light_in = self.light_in * (1 - dark * col(self.gloom * on.float()))[:, None]

    def solder(self, p):
        b, d = self.b, self.device
        sdf, u, v = self.box(uniform((b,), 0.8, 2.2, d), uniform((b,), 0.8, 2.2, d))
        round_ = torch.sqrt(u * u + v * v) - col(uniform((b,), 1, 2.5, d)) + 0.4 * self.noise(24)[:, 0]
        m = cover(round_, self.px) * col(chance(b, p, d).float())
        shine = self.seen_room(u * 0.2, v * 0.2)[:, :1]
        self.over(m, (0.25 + 0.6 * shine).expand(-1, 3, -1, -1), keep=True)
        self.unknown = torch.maximum(self.unknown, m)

    # -- copper ---------------------------------------------------------------------------------------------------

    def begin_copper(self):
        """One look for all strips of a sheet: crease fields from broad dents to grain, ridges, facets; room, tint."""
        b, d = self.b, self.device
        rough = rgb(torch.exp(uniform((b, 1), math.log(0.006), math.log(0.35), d)))
        liked = torch.tensor([0.3, 0.8, 0.6, -0.2, 0.0], device=d)
        share = torch.softmax(liked + 1.8 * torch.randn(b, 5, device=d), 1)[:, :, None, None]
        ridged = self.noise(36, 2)
        ridged = 1.5 * (1 - 2 * ridged.abs()) * torch.tensor([1.0, -1.0], device=d)[None, :, None, None]
        facets = torch.round(self.noise(50, 2) * 2.2) / 2.2
        fields = (self.noise(10, 2), self.noise(28, 2), ridged, self.noise(100, 2), facets)
        self.creases = 1.6 * rough * sum(share[:, k : k + 1] * field for k, field in enumerate(fields))
        # A lamp seen in the foil burns a stretch of it out.
        place = uniform((b, 2), -0.5, 0.5, d) * self.span
        r2 = (self.x - col(place[:, 0])) ** 2 + (self.y - col(place[:, 1])) ** 2
        burst = torch.exp(uniform((b,), 0, 3.2, d)) * chance(b, 0.35, d).float()
        self.burst = col(burst) * torch.exp(-r2 / col(torch.exp(uniform((b,), 2.5, 6.5, d))))
        self.sweep = uniform((b, 2, 1, 1), -0.6, 0.6, d)
        # On some sheets the foil lies smooth, wholly or in part, and on some the tape stands off the paper.
        self.plain = rgb(uniform((b, 1), 0.5, 1.0, d) * chance(b, 0.3, d).float()[:, None])
        patchy = chance(b, 0.4, d).float()[:, None, None, None]
        self.plain = self.plain * (1 - patchy + patchy * torch.sigmoid(6 * self.noise(8)))
        self.stands = uniform((b,), 0.05, 0.9, d) * chance(b, 0.35, d).float()
        tint = torch.tensor([0.955, 0.637, 0.538], device=d)
        pale = rgb(uniform((b, 1), 0.0, 1.0, d) ** 2 * 0.85)
        self.tint = rgb(tint[None].expand(b, 3)) * (1 - pale) + pale * 0.75
        brown = chance(b, 0.4, d).float()[:, None, None, None] * torch.sigmoid(self.noise(10) * 2)
        oxide = rgb(pick(b, [(0.5, 0.3, 0.15), (0.35, 0.25, 0.2), (0.3, 0.45, 0.4), (0.2, 0.5, 0.4), (0.6, 0.35, 0.4)], d))
        self.tint = self.tint * (1 - 0.6 * brown) + 0.6 * brown * oxide

    def strip(self, cx, cy, angle, half_u, half_v, on):
        """
        One straight piece of tape, laid over what is there, with its own burr, cut, cracks and seam lines.
        Truth follows: where it is cut the paper shows.
        """
        b, d = self.b, self.device
        curve = self.arcs(0.15, 10)
        sdf, u, v = self.box(half_u, half_v, angle, cx, cy, curve)
        self.lifted(u, v, half_u, half_v, on)
        self.cast(cx, cy, angle, half_u, half_v, self.stands * uniform((b,), 0.5, 1.0, d), on, curve)
        burr = self.noise(60)[:, 0] * col(uniform((b,), 0.0, 0.12, d))
        sdf = sdf + burr
        self.traced(sdf, on)
        cut = self.cut(u, v, half_u, half_v)
        self.cuts.append(self.cut_place(cx, cy, angle))
        m = cover(torch.maximum(sdf, cut), self.px) * col(on.float())
        self.shade(sdf, 0.35, (col(on.float() * uniform((b,), 0, 0.5, d))) * self.inside)
        lean = uniform((b, 2), -0.35, 0.35, d)
        bend = 0.12 * torch.sin(u * col(uniform((b,), 0.05, 0.8, d)) + col(uniform((b,), 0, 6, d)))
        lines = torch.sin(u * col(uniform((b,), 1.0, 9.0, d)) + 3 * self.noise(30)[:, 0])
        lines = torch.sign(lines) * lines.abs() ** 0.5 * col(uniform((b,), 0, 0.12, d))
        nu = self.creases[:, 0] + col(lean[:, 0]) + bend + lines + self.x * self.sweep[:, 0] / 100
        nv = self.creases[:, 1] + col(lean[:, 1]) + 0.6 * lines + self.y * self.sweep[:, 1] / 100
        for _ in range(2):
            step = self.folded(u, v, half_u)
            nu, nv = nu + step * col(uniform((b,), -0.4, 0.4, d)), nv + step * col(uniform((b,), -0.4, 0.4, d))
        seen = self.seen_room(nu, nv) * (1 - self.plain) + self.flat_light(u, half_u) * self.plain
        seen = seen * (1 + self.burst[:, None]) + 0.3 * self.burst[:, None]
        for _ in range(2):
            seen = seen * self.creased(u, v, half_u)
        edge = (1 - (sdf.abs() / 0.12).clamp(0, 1)) * col(uniform((b,), -0.5, 0.8, d))
        colour = self.tint * seen * (1 + edge[:, None]).clamp(0.1)
        self.over(m, colour, keep=True)
        near_cut = torch.exp(-(cut.clamp(max=0) / 1.2) ** 2) * (sdf < 0.5)
        self.copper = torch.maximum(self.copper, m)
        self.fine = torch.maximum(self.fine, near_cut * col(on.float() * self.has_cut))
        self.last = (cx, cy, angle, half_u, half_v)

    def folded(self, u, v, half_u):
        """1 beyond a fold that runs straight or aslant over a strip, 0 before it: from there on it shows another part of the room."""
        b, d = self.b, self.device
        slant = torch.where(chance(b, 0.5, d), uniform((b,), -1.2, 1.2, d), 0.1 * torch.randn(b, device=d))
        past = u - col(uniform((b,), -1, 1, d) * half_u) - col(slant) * v
        return torch.sigmoid(past / col(uniform((b,), 0.05, 0.4, d))) * col(chance(b, 0.35, d).float())

    def creased(self, u, v, half_u):
        """A thin dark or bright line across a strip, where it was bent and laid flat again: no cut, for it shows no paper."""
        b, d = self.b, self.device
        slant = torch.where(chance(b, 0.5, d), uniform((b,), -1.0, 1.0, d), 0.1 * torch.randn(b, device=d))
        past = u - col(uniform((b,), -1, 1, d) * half_u) - col(slant) * v + 0.15 * self.noise(40)[:, 0]
        wide = col(torch.exp(uniform((b,), math.log(0.06), math.log(0.3), d)))
        depth = col(uniform((b,), -0.9, 1.5, d) * chance(b, 0.3, d).float())
        return (1 + depth * torch.exp(-((past / wide) ** 2)))[:, None]

    def flat_light(self, u, half_u):
        """What foil pressed smooth shows: one part of the room or sky, near black to white, along the whole strip or nearly."""
        b, d = self.b, self.device
        level = torch.exp(uniform((b, 1), math.log(0.03), math.log(1.3), d))
        sky = torch.tensor([1.0, 0, -1.0], device=d) * 0.28 * torch.randn(b, 1, device=d) + 0.07 * torch.randn(b, 3, device=d)
        level = level * torch.exp(sky)
        drift = torch.exp((u / col(half_u))[:, None] * rgb(0.4 * torch.randn(b, 1, device=d)))
        dull = 1 + 0.1 * self.noise(12) + rgb(uniform((b, 1), 0, 0.12, d)) * self.noise(120)
        return rgb(level) * drift * dull.clamp(min=0.2)

    def lifted(self, u, v, half_u, half_v, on):
        """The shadow of a strip that curls off the paper towards an end."""
        b, d = self.b, self.device
        on = col((on & chance(b, 0.12, d)).float() * uniform((b,), 0.3, 0.95, d)) * self.inside
        lift = col(uniform((b,), -4, 4, d)) * (0.5 + 0.5 * u / col(half_u)).clamp(0, 1) ** 2
        sdf = torch.maximum(u.abs() - col(half_u), (v - lift).abs() - col(half_v))
        soft = col(uniform((b,), 0.1, 1.0, d))
        self.light_in = self.light_in * (1 - torch.sigmoid(-sdf / soft) * on)[:, None]

    def traced(self, sdf, on):
        """A pencil outline that the strip was laid by."""
        b, d = self.b, self.device
        drawn = (on & chance(b, 0.08, d)).float() * uniform((b,), 0.2, 0.6, d)
        line = (sdf - col(uniform((b,), -0.3, 1.5, d)) + 0.15 * self.noise(20)[:, 0]).abs() - 0.12
        self.light_in = self.light_in * (1 - (cover(line, self.px) * col(drawn))[:, None])

    def cut(self, u, v, half_u, half_v):
        """Signed distance into a cut across the strip (positive inside the cut); far negative where there is none."""
        b, d = self.b, self.device
        self.has_cut = chance(b, 0.5, d).float()
        at_u = uniform((b,), -0.85, 0.85, d) * half_u
        width = torch.exp(uniform((b,), math.log(0.25), math.log(3.5), d))
        self.cut_at = (at_u, width)
        slant = uniform((b,), -0.6, 0.6, d) * chance(b, 0.5, d).float()
        jag = 0.12 * self.noise(70)[:, 0]
        middle = (u - col(at_u) - col(slant) * v + jag).abs() - col(width) / 2
        part = chance(b, 0.2, d).float()
        torn = v - col(uniform((b,), -0.6, 0.6, d) * half_v)
        torn = torch.where(col(part) > 0, torn, torch.full_like(torn, -99.0))
        depth = -torch.maximum(middle, torn)
        return torch.where(col(self.has_cut) > 0, depth, torch.full_like(depth, -99.0))

    def cut_place(self, cx, cy, angle):
        """The middle of the last cut, the way over it, its width."""
        at_u, width = self.cut_at
        return cx + torch.cos(angle) * at_u, cy + torch.sin(angle) * at_u, angle, width * self.has_cut

    def seen_room(self, nu, nv):
        """What a mirror shows along two angles: a room of soft areas, windows, small lamps; (b, 3, h, w) linear light."""
        if not hasattr(self, "room"):
            self.room = Room(self.b, self.device) if Room.panoramas is not None else None
        if self.room is None:
            return self.drawn_room(nu, nv)
        return torch.where(self.room.is_real, self.room.mirrored(nu, nv, self.tu, self.tv), self.drawn_room(nu, nv))

    def drawn_room(self, nu, nv):
        if not hasattr(self, "room_grid"):
            b, d, n = self.b, self.device, 36
            spread = rgb(uniform((b, 1), 0.25, 1.4, d))
            soft = rgb(torch.rand(b, 1, device=d) ** 0.6)
            areas = smooth(b, n, n, 6, d) * soft + torch.randn(b, 1, n, n, device=d) * (1 - soft)
            level = torch.exp(areas * spread + rgb(uniform((b, 1), -3.2, -0.3, d)))
            lamps = (torch.rand(b, 1, n, n, device=d) < rgb(uniform((b, 1), -0.05, 0.22, d))).float()
            window = (smooth(b, n, n, 5, d) > rgb(uniform((b, 1), -0.2, 2.5, d))).float()
            lamps = torch.where(rgb(chance(b, 0.4, d)[:, None]), window, lamps)
            tint = 1 + 0.2 * torch.randn(b, 3, n, n, device=d) * rgb(chance(b, 0.4, d).float()[:, None])
            tint = tint * rgb(torch.exp(torch.randn(b, 3, device=d) * uniform((b, 1), 0, 0.35, d)))
            self.room_grid = ((level + lamps * rgb(uniform((b, 1), 0.6, 6, d))) * tint).clamp(0.002, 8)
        return at(self.room_grid, nu + 0.5, nv + 0.5)

    def lay_copper(self, n):
        """Rails, branches, parallel pairs, bends, slivers: mostly along two directions of the sheet."""
        b, d = self.b, self.device
        self.begin_copper()
        self.cuts, self.channels = [], []
        base = uniform((b,), -0.15, 0.15, d) + chance(b, 0.25, d).float() * uniform((b,), 0, math.pi, d)
        half = self.span / 2
        usual = 1.0 + 3.4 * torch.rand(b, device=d) ** 1.3
        for k in range(n):
            on = chance(b, 0.75, d)
            turn = chance(b, 0.5, d).float() * (math.pi / 2) + chance(b, 0.06, d).float() * uniform((b,), 0, 1.6, d)
            half_v = usual * uniform((b,), 0.85, 1.1, d) * torch.where(chance(b, 0.25, d), 0.6, 1.0)
            half_u = uniform((b,), 3, half * 1.2, d)
            cx, cy = uniform((b,), -half, half, d), uniform((b,), -half, half, d)
            angle = base + turn + 0.02 * torch.randn(b, device=d)
            if k % 3 == 1:
                cx, cy, angle, half_u, half_v = self.beside(half_v)
            if k % 3 == 2:
                cx, cy, angle, half_u = self.bend(half_v)
            self.strip(cx, cy, angle, half_u, half_v, on)
        for _ in range(2):
            self.sliver()

    def beside(self, half_v):
        """Parallel to the last strip with a clearance from tight to wide."""
        b, d = self.b, self.device
        cx, cy, angle, half_u, last_v = self.last
        space = torch.exp(uniform((b,), math.log(0.3), math.log(8), d))
        apart = last_v + half_v + space
        t, aside = uniform((b,), -0.8, 0.8, d) * half_u, last_v + space / 2
        self.channels.append((
            cx + torch.cos(angle) * t - torch.sin(angle) * aside, cy + torch.sin(angle) * t + torch.cos(angle) * aside,
            angle + math.pi / 2, space,
        ))
        return (
            cx - torch.sin(angle) * apart, cy + torch.cos(angle) * apart,
            angle + 0.01 * torch.randn(b, device=d), half_u * uniform((b,), 0.6, 1.1, d), half_v,
        )

    def bend(self, half_v):
        """From an end of the last strip, at a right angle mostly."""
        b, d = self.b, self.device
        cx, cy, angle, half_u, last_v = self.last
        end = torch.where(chance(b, 0.5, d), 1.0, -1.0) * (half_u - last_v)
        turned = angle + math.pi / 2 + 0.03 * torch.randn(b, device=d)
        reach = uniform((b,), 4, self.span / 2, d)
        side = torch.where(chance(b, 0.5, d), 1.0, -1.0) * (reach - half_v)
        return (
            cx + torch.cos(angle) * end + torch.cos(turned) * side,
            cy + torch.sin(angle) * end + torch.sin(turned) * side, turned, reach,
        )

    def sliver(self):
        """A scrap of foil 0.2 to 2 mm wide, near the last strip's edge: it may bridge."""
        b, d = self.b, self.device
        cx, cy, angle, half_u, half_v = self.last
        along = uniform((b,), -0.9, 0.9, d) * half_u
        aside = torch.where(chance(b, 0.5, d), 1.0, -1.0) * (half_v + uniform((b,), 0, 1.5, d))
        sdf, u, v = self.box(
            uniform((b,), 0.8, 3, d), torch.exp(uniform((b,), math.log(0.12), math.log(1.0), d)),
            angle + math.pi / 2 + 0.4 * torch.randn(b, device=d),
            cx + torch.cos(angle) * along - torch.sin(angle) * aside,
            cy + torch.sin(angle) * along + torch.cos(angle) * aside,
        )
        on = chance(b, 0.45, d).float()
        m = cover(sdf, self.px) * col(on)
        self.over(m, self.tint * self.seen_room(self.creases[:, 0] + u * 0.1, self.creases[:, 1] + v * 0.1), keep=True)
        self.copper = torch.maximum(self.copper, m)
        self.fine = torch.maximum(self.fine, torch.exp(-((sdf.clamp(min=0) / 0.8) ** 2)) * col(on))

    # -- parts ----------------------------------------------------------------------------------------------------

    def lamps(self, n):
        """
        Chips, domes, and stickers with a pad at either end; where makers put them: over a cut, across the channel between two
        strips, on a strip, anywhere.
        """
        b, d = self.b, self.device
        for k in range(n):
            x0, y0, turn, span = self.seat(k)
            on = chance(b, 0.65, d)
            kind = torch.randint(10, (b,), device=d)
            round_, leaf = kind < 3, kind > 5
            hu, hv = uniform((b,), 0.8, 4.5, d), uniform((b,), 0.6, 2.4, d)
            hu = torch.where(leaf, uniform((b,), 3, 8, d), torch.maximum(hu, span / 2 + uniform((b,), 0.1, 1.5, d)))
            hv = torch.where(leaf, hu * uniform((b,), 0.4, 0.9, d), torch.minimum(hv, hu))
            sdf, u, v = self.box(hu, hv, turn, x0, y0)
            radius = torch.maximum(uniform((b,), 1.4, 2.7, d), torch.where(span > 0, span / 2 + 0.4, 0 * span)).clamp(max=4)
            disc = torch.sqrt(u * u + v * v) - col(radius)
            body = torch.where(col(round_), disc, torch.where(col(leaf), leaf_sdf(u, v, col(hu), col(hv), self.pointed(k)), sdf))
            legs, _, _ = self.box(uniform((b,), 5, 14, d), uniform((b,), 0.2, 0.35, d), turn, x0, y0)
            leg = cover(legs, self.px) * col((on & round_).float())
            self.over(leg, rgb(uniform((b, 1), 0.1, 0.8, d)).expand(-1, 3, 1, 1))
            tall = torch.where(leaf, uniform((b,), 0.1, 0.5, d), uniform((b,), 0.5, 2.2, d) * torch.where(round_, 2.0, 1.0))
            self.cast(x0, y0, turn, torch.where(round_, radius, hu), torch.where(round_, radius, hv), tall, on & ~leaf)
            self.shade(body, 0.5, col(on.float() * uniform((b,), 0, 0.5, d)))
            m = cover(body, self.px) * col(on.float())
            lit = on & chance(b, 0.22, d)
            shown = torch.where(rgb(leaf[:, None]), self.sticker_colour(u, v, hu, hv), self.lamp_colour(u, v, hu, radius, round_))
            bright = torch.where(lit, torch.exp(uniform((b,), 0, 3, d)), torch.ones(b, device=d))
            self.over(m, shown * rgb(bright[:, None]))
            self.lamp = torch.maximum(self.lamp, m)
            self.glow(x0, y0, lit)

    def seat(self, k):
        """Where the k-th lamp lies and which way; and how wide the space is that it spans, 0 where it spans none. mm."""
        b, d = self.b, self.device
        half = self.span / 2
        cx, cy, angle, half_u, _ = self.last
        t = uniform((b,), -1, 1, d) * half_u
        turn = angle + (math.pi / 2) * chance(b, 0.5, d).float()
        anywhere = (uniform((b,), -half, half, d), uniform((b,), -half, half, d), turn, torch.zeros(b, device=d))
        on_strip = (cx + torch.cos(angle) * t, cy + torch.sin(angle) * t, turn, torch.zeros(b, device=d))
        spots = [anywhere, on_strip, self.cuts[(2 * k) % len(self.cuts)], self.channels[k % len(self.channels)]]
        chosen = torch.multinomial(torch.tensor([0.25, 0.25, 0.25, 0.25], device=d), b, replacement=True)
        return [torch.stack(values).gather(0, chosen[None])[0] for values in zip(*spots)]

    def pointed(self, k):
        """How pointed a sticker's ends are: 2 is an ellipse, less is a leaf, more is nearly a box. One for the batch."""
        return (2.0, 1.6, 2.0, 3.0, 2.2)[k % 5]

    def sticker_colour(self, u, v, hu, hv):
        """A flat lamp on a slip of card or film of any tone, with a chip in the middle and a dark or shining pad at either end."""
        b, d = self.b, self.device
        tones = [(0.85, 0.85, 0.85), (0.8, 0.82, 0.88), (0.75, 0.85, 0.8), (0.85, 0.6, 0.55), (0.3, 0.3, 0.3), (0.06, 0.06, 0.06),
                 (0.05, 0.2, 0.12), (0.1, 0.15, 0.4), (0.6, 0.5, 0.3), (0.16, 0.13, 0.1)]
        body = rgb(pick(b, tones, d) * uniform((b, 3), 0.8, 1.15, d)) * (1 + 0.03 * self.noise(120))
        chip = torch.maximum(u.abs(), v.abs()) - col(uniform((b,), 0.3, 1.1, d))
        shown = cover(chip, self.px)[:, None] * rgb(chance(b, 0.8, d).float()[:, None])
        body = body * (1 - shown) + shown * rgb(pick(b, [(0.85, 0.8, 0.15), (0.9, 0.6, 0.1), (0.8, 0.8, 0.8), (0.5, 0.45, 0.1)], d))
        away = col(hu * uniform((b,), 0.55, 0.8, d))
        pad = torch.sqrt((u.abs() - away) ** 2 + v**2) - col(hv * uniform((b,), 0.25, 0.5, d))
        pad = cover(pad, self.px)[:, None] * rgb(chance(b, 0.75, d).float()[:, None])
        speck = rgb(uniform((b, 1), 0.03, 0.5, d)) * (1 + rgb(uniform((b, 1), 0, 0.5, d)) * self.noise(250)).clamp(min=0.1)
        metal = self.seen_room(self.creases[:, 0] * 2, self.creases[:, 1] * 2).mean(1, keepdim=True) * rgb(uniform((b, 3), 0.6, 1, d))
        shining = rgb(chance(b, 0.4, d).float()[:, None])
        return body * (1 - pad) + pad * (speck * (1 - shining) + metal * shining)

    def lamp_colour(self, u, v, hu, radius, round_):
        b, d = self.b, self.device
        case = rgb(uniform((b, 1), 0.8, 1.1, d) * pick(b, [(0.85, 0.85, 0.85), (0.6, 0.62, 0.65), (0.05, 0.25, 0.12), (0.8, 0.78, 0.7), (0.08, 0.08, 0.08)], d))
        ends = ((u.abs() > col(hu) * 0.7) & ~col(round_)).float()[:, None]
        case = case * (1 - ends) + ends * rgb(uniform((b, 1), 0.3, 0.8, d))
        r = torch.sqrt(u * u + v * v)
        dot = cover(r - col(radius) * 0.35, self.px)[:, None]
        chip = rgb(pick(b, [(0.85, 0.8, 0.15), (0.9, 0.6, 0.1), (0.7, 0.7, 0.7), (0.9, 0.85, 0.5)], d))
        glass = rgb(pick(b, [(0.7, 0.08, 0.06), (0.8, 0.6, 0.1), (0.1, 0.5, 0.15), (0.1, 0.2, 0.7), (0.75, 0.78, 0.8)], d))
        glint = torch.exp(-(((u - 0.5) ** 2 + (v + 0.5) ** 2) / 0.3))[:, None]
        lens = glass * (1 - 0.4 * (r / 2.7).clamp(0, 1)[:, None]) + glint
        return torch.where(col(round_)[:, None], lens, case * (1 - dot) + dot * chip)

    def glow(self, cx, cy, on):
        b, d = self.b, self.device
        r2 = (self.x - col(cx)) ** 2 + (self.y - col(cy)) ** 2
        wide = torch.exp(-r2 / col(uniform((b,), 10, 150, d))) + 4 * torch.exp(-r2 / col(uniform((b,), 2, 12, d)))
        colour = rgb(pick(b, [(1, 0.15, 0.1), (1, 0.7, 0.3), (0.9, 0.95, 1), (0.2, 0.4, 1), (0.2, 1, 0.3)], d))
        self.light_in = self.light_in + wide[:, None] * colour * col(on.float() * torch.exp(uniform((b,), -1.6, 1.2, d)))[:, None]

    def coin(self, p):
        b, d = self.b, self.device
        half = self.span / 2
        cx, cy = uniform((b,), -half, half, d), uniform((b,), -half, half, d)
        radius = pick(b, [(10,), (10,), (10,), (8,), (6.2,), (5.8,)], d)[:, 0]
        on = chance(b, p, d)
        dx, dy = self.x - col(cx), self.y - col(cy)
        r = torch.sqrt(dx * dx + dy * dy)
        self.shade(r - col(radius), 1.0, col(on.float() * uniform((b,), 0, 0.7, d)))
        dark = torch.zeros_like(r)
        for share in (0.3, 0.65, 1.0):
            far = 3.2 * share * self.sun
            off = torch.sqrt((dx - col(far[:, 0])) ** 2 + (dy - col(far[:, 1])) ** 2) - col(radius)
            dark = torch.maximum(dark, torch.sigmoid(-off / (0.1 + 0.4 * share)))
        self.light_in = self.light_in * (1 - dark * col(self.gloom * on.float()))[:, None]
        theta = torch.atan2(dy, dx)
        brushed = self.seen_room(0.25 * torch.sin(theta * 2) + 0.1 * dx / 10, 0.2 * torch.cos(theta) + dy / 40)
        grey = brushed.mean(1, keepdim=True) * 0.7 + 0.12
        own = chance(b, 0.25, d).float()[:, None, None, None]
        shown = grey.expand(-1, 3, -1, -1) * (1 - own) + own * brushed
        ring = ((r - col(radius) * 0.9).abs() < 0.35).float()[:, None] * 0.4
        text = (self.noise(120)[:, :1] > 1.2).float() * 0.15
        m = cover(r - col(radius), self.px) * col(on.float())
        self.over(m, (shown * (1 - ring) * (1 - text)).clamp(0, 4))
        self.cell = torch.maximum(self.cell, m)
        # Tape that comes onto the cell's upper face and ends there.
        turn, reach = uniform((b,), 0, 2 * math.pi, d), uniform((b,), 5, 20, d)
        away = reach + radius * uniform((b,), -0.6, 0.7, d)
        self.strip(cx + torch.cos(turn) * away, cy + torch.sin(turn) * away, turn, reach, uniform((b,), 1.2, 4, d), on & chance(b, 0.4, d))
        self.cell = self.cell * (1 - self.copper)

    def covers(self):
        """Patches, tools, clear tape: what may lie over copper."""
        b, d = self.b, self.device
        on = chance(b, 0.15, d).float()
        sdf, _, _ = self.box(uniform((b,), 4, 14, d), uniform((b,), 4, 14, d))
        self.over(cover(sdf, self.px) * col(on), rgb(pick(b, PAPERS + PAINTS, d)) * (1 + 0.02 * self.noise(120)))
        on = chance(b, 0.2, d).float()
        sdf, u, v = self.box(uniform((b,), 15, 60, d), uniform((b,), 1.5, 9, d))
        self.shade(sdf, 1.5, col(on * uniform((b,), 0, 0.8, d)))
        ribs = rgb(uniform((b, 1), 0, 0.4, d))
        tool = rgb(torch.rand(b, 3, device=d) ** 1.5 * uniform((b, 1), 0.1, 1, d)) * (1 + ribs * torch.sin(v)[:, None])
        tool = tool * (1 + rgb(uniform((b, 1), 0, 0.25, d)) * self.noise(220)).clamp(min=0.2)
        self.over(cover(sdf, self.px) * col(on), tool.clamp(0, 1.5))
        on = chance(b, 0.12, d).float()
        sdf, u, v = self.box(uniform((b,), 10, 40, d), uniform((b,), 4, 10, d))
        film = cover(sdf, self.px) * col(on)
        sheen = torch.exp(-((v - 2 + self.noise(20)[:, 0]) ** 2)) * 0.5
        self.light_in = self.light_in + (film * (0.03 + sheen * 0.4))[:, None]

    # -- light ----------------------------------------------------------------------------------------------------

    def shadow(self, straight):
        """Share of the light that a thing out of view takes away, its border sharp or wide, grainy as a sensor sees it."""
        b, d = self.b, self.device
        if straight:
            angle = uniform((b,), 0, 2 * math.pi, d)
            edge = (self.x * col(torch.cos(angle)) + self.y * col(torch.sin(angle))) / self.span * 5
            edge = edge[:, None] + 0.03 * self.noise(60)
        else:
            edge = self.noise(3) + 0.3 * self.noise(8)
        hard = rgb(torch.exp(uniform((b, 1), math.log(0.01), math.log(0.6), d)))
        grain = torch.randn(b, 1, self.h, self.w, device=d) * rgb(uniform((b, 1), 0, 0.7, d) * chance(b, 0.4, d).float()[:, None])
        within = torch.sigmoid((edge - rgb(uniform((b, 1), -1.2, 1.2, d))) / hard + grain)
        return (1 - rgb(torch.exp(uniform((b, 1), math.log(0.01), math.log(0.8), d)))) * within

    def lit(self, picture):
        """The picture (b, 3, h, w) under lamps, shadows and spots of its own; each call lights it anew."""
        b, d = self.b, self.device
        field = 1 + 0.35 * torch.tanh(self.noise(2)) * col(uniform((b,), 0, 1, d))[:, None]
        for straight in (False, True, True):
            on = chance(b, 0.25, d).float()[:, None, None, None]
            field = field * (1 - on * self.shadow(straight))
        spot = chance(b, 0.15, d).float()[:, None, None, None]
        r2 = (self.tu - col(torch.rand(b, device=d))) ** 2 + (self.tv - col(torch.rand(b, device=d))) ** 2
        pool = (rgb(uniform((b, 1), 0.01, 0.2, d)) + torch.exp(-r2[:, None] / rgb(uniform((b, 1), 0.02, 0.3, d)))) * 1.3
        field = field * (1 - spot) + spot * pool
        haze = col(uniform((b,), 0, 0.03, d))[:, None]
        return picture * field + haze
