"""Plans of small circuits on a sheet. A strip is {id, net, width, path, arc}; a lamp {id, plus, minus}; mm, y down.
The cell joins net P (its top) and net N (below it)."""

import numpy as np

CELL_MM = 20.0


def plan(s):
    """@param s the scene's settings. @returns {strips, lamps, cell} with every point inside the sheet."""
    return {"loop": loop, "ladder": ladder, "arc": arc, "chain": chain}[s.circuit](s)


def strip(id, net, width, *path, arc=False):
    return {"id": id, "net": net, "width": float(width), "path": [list(map(float, p)) for p in path], "arc": arc}


def lamp(number, plus, minus):
    return {"id": f"L{number}", "plus": list(map(float, plus)), "minus": list(map(float, minus))}


def pad_pitch(s):
    """Distance of a lamp's two pads, mm."""
    return {"chip": 3.4, "dome": 9.0, "sticker": 9.0}[s.lamp]


def apart(s):
    """Centre distance of two rails that a lamp spans, mm: its pads come to lie 0.5 mm or more inside the tape."""
    return s.tape_mm + max(2.4, pad_pitch(s) - s.tape_mm if s.lamp != "chip" else 2.4)


def ends(s):
    """How far the two rails' ends keep from the cell's centre: near if a cell joins them, clear of each other if not."""
    return 3.0 if s.cell else 7.0


def loop(s):
    """Two rails side by side around three sides, lamps across them."""
    w, h, m, d = s.width_mm, s.height_mm, 7 + s.tape_mm / 2 + s.rng.uniform(0, 3), apart(s)
    cell = (m + 11, h - m - 8)
    outer = [(cell[0], cell[1] - ends(s) + 2), (cell[0], m), (w - m, m), (w - m, h - m)]
    low = cell[1] + (0 if s.cell else 4)
    inner = [
        (cell[0] + ends(s) + (0 if s.cell else 4), low),
        (w - m - d, low),
        (w - m - d, m + d),
        (cell[0] + d + 4, m + d),
    ]
    count = int(s.rng.integers(2, 6))
    half = pad_pitch(s) / 2
    lamps = []
    for i, x in enumerate(np.linspace(cell[0] + d + 14, w - m - d - 14, count)):
        lamps.append(lamp(i + 1, (x, m + d / 2 + half), (x, m + d / 2 - half)))
    if h > 110:
        lamps.append(lamp(count + 1, (w - m - d / 2 - half, h / 2), (w - m - d / 2 + half, h / 2)))
    strips = [strip("T1", "N", s.tape_mm, *outer), strip("T2", "P", s.tape_mm, *inner)]
    return {"strips": strips, "lamps": lamps, "cell": list(cell)}


def ladder(s):
    """A rail above, one below, branches between them that a lamp interrupts."""
    w, h, m = s.width_mm, s.height_mm, 8 + s.tape_mm / 2 + s.rng.uniform(0, 4)
    cell = (m + 8, h / 2 + s.rng.uniform(-8, 8))
    thin = s.tape_mm if s.rng.random() < 0.5 else max(3.0, s.tape_mm - 2)
    strips = [
        strip("T1", "P", s.tape_mm, (cell[0], cell[1] - ends(s) + 1), (cell[0], m), (w - m, m)),
        strip("T2", "N", s.tape_mm, (cell[0], cell[1] + ends(s) - 1), (cell[0], h - m), (w - m, h - m)),
    ]
    lamps = []
    half = pad_pitch(s) / 2
    reach = 1.3 if s.lamp == "chip" else half - 1.2
    for i, x in enumerate(np.linspace(cell[0] + 22, w - m - 3, int(s.rng.integers(3, 6)))):
        y = h / 2 + s.rng.uniform(-h / 8, h / 8)
        strips.append(strip(f"T{2 * i + 3}", "P", thin, (x, m), (x, y - reach)))
        strips.append(strip(f"T{2 * i + 4}", "N", thin, (x, h - m), (x, y + reach)))
        lamps.append(lamp(i + 1, (x, y - half), (x, y + half)))
    return {"strips": strips, "lamps": lamps, "cell": list(cell)}


def arc(s):
    """Two bows, one within the other, with lamps across."""
    w, h, d = s.width_mm, s.height_mm, apart(s)
    centre = np.array([w / 2, h * 0.64])
    radius = min(w / 2, h * 0.64) - 7 - s.tape_mm / 2
    turn = np.radians(s.rng.uniform(-8, 8))
    bow = lambda r, a, b: [
        centre + r * np.array([np.cos(t), np.sin(t)]) for t in np.radians(np.linspace(a, b, 25)) + turn
    ]
    outer, inner = bow(radius, 160, 385), bow(radius - d, 152, 378)
    strips = [
        strip("T1", "N", s.tape_mm, *outer, arc=True),
        strip("T2", "P", s.tape_mm, *inner, arc=True),
    ]
    half = pad_pitch(s) / 2
    lamps = []
    for i, t in enumerate(np.radians(np.linspace(215, 335, int(s.rng.integers(3, 6)))) + turn):
        out = np.array([np.cos(t), np.sin(t)])
        middle = centre + (radius - d / 2) * out
        lamps.append(lamp(i + 1, middle - half * out, middle + half * out))
    cell = (outer[0] + inner[0]) / 2
    return {"strips": strips, "lamps": lamps, "cell": [float(k) for k in cell]}


def chain(s):
    """Lamps one after another along a path with three legs; each interrupts it."""
    w, h, m = s.width_mm, s.height_mm, 9 + s.tape_mm / 2
    cell = (m + 8, h / 2)
    reach = 1.3 if s.lamp == "chip" else pad_pitch(s) / 2 - 1.2
    x1, x2 = w * s.rng.uniform(0.35, 0.45), w * s.rng.uniform(0.68, 0.78)
    half = pad_pitch(s) / 2
    strips = [
        strip("T1", "P", s.tape_mm, (cell[0], cell[1] - ends(s) + 1), (cell[0], m), (x1 - reach, m)),
        strip("T2", "M1", s.tape_mm, (x1 + reach, m), (w - m, m), (w - m, h - m), (x2 + reach, h - m)),
        strip("T3", "N", s.tape_mm, (x2 - reach, h - m), (cell[0], h - m), (cell[0], cell[1] + ends(s) - 1)),
        strip("T4", "N", s.tape_mm, (x1 + 6, h - m), (x1 + 6, m + s.tape_mm + s.rng.uniform(2.5, 5))),
    ]
    lamps = [lamp(1, (x1 - half, m), (x1 + half, m)), lamp(2, (x2 + half, h - m), (x2 - half, h - m))]
    return {"strips": strips, "lamps": lamps, "cell": list(cell)}
