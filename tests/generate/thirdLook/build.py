"""The plan as hands build it: a little off, in several pieces of tape, with gaps and bridges planted."""

import numpy as np

from paths import at, distance, lengths, nearest, smooth_curve

GAPS_MM = (0.5, 0.7, 1.0, 1.5, 2.5)


def build(plan, s):
    """@returns {ribbons, faults, seams}: a ribbon is one piece of foil {net, strip, width, path, start, end, layer, cut},
    a stretch of a path from length `start` to `end` in mm; faults and seams lie in mm on the sheet."""
    laid = [dict(t, path=[[x + e, y + f] for (x, y), (e, f) in zip(t["path"], shifts(t, s))]) for t in plan["strips"]]
    ribbons = [piece for t in laid for piece in pieces(t, s)]
    seams = [r["seam"] for r in ribbons if r.get("seam")] + branch_seams(laid)
    faults = plant_gaps(ribbons, laid, plan, s)
    faults += plant_bridges(ribbons, laid, plan, faults, s)
    for layer, r in enumerate(ribbons):
        r["layer"] = layer
    return {"ribbons": ribbons, "faults": faults, "seams": seams, "laid": laid}


def shifts(t, s):
    if t["arc"]:
        return np.tile(s.rng.normal(0, 0.25, 2), (len(t["path"]), 1))
    return s.rng.normal(0, 0.3, (len(t["path"]), 2))


def pieces(t, s):
    """One ribbon a straight leg (the corner folded, or a new piece laid over); a bow is one ribbon."""
    path = np.array(t["path"])
    common = {"net": t["net"], "strip": t["id"], "width": t["width"]}
    if t["arc"] or len(path) == 2:
        path = smooth_curve(path) if t["arc"] else path
        return [dict(common, path=path, start=0.0, end=lengths(path)[-1], corner=None)]
    out = []
    for i in range(len(path) - 1):
        leg = path[i : i + 2]
        first, last = i == 0, i == len(path) - 2
        folded = s.rng.random() < 0.5
        half = t["width"] / 2
        out.append(
            dict(
                common,
                path=leg,
                start=0.0 if first else -half * (0.96 if folded else s.rng.uniform(0.7, 1.3)),
                end=lengths(leg)[-1] + (0 if last else half * 0.96),
                corner=None if first else ("fold" if folded else "lap"),
            )
        )
        if not first and not folded:
            out[-1]["seam"] = [float(leg[0][0]), float(leg[0][1])]
    return out


def branch_seams(laid):
    """Where a strip begins on another of its net, two pieces of tape overlap."""
    return [
        list(t["path"][0])
        for t in laid
        for other in laid
        if other is not t
        and other["net"] == t["net"]
        and distance(other["path"], np.array(t["path"][0])) < other["width"] / 2
    ]


def clear_of(point, plan, faults):
    lamps = [np.mean([l["plus"], l["minus"]], axis=0) for l in plan["lamps"]]
    near = lambda places, reach: any(np.hypot(*(np.array(p) - point)) < reach for p in places)
    return not (near(lamps, 8) or near([plan["cell"]], 15) or near([(f["x_mm"], f["y_mm"]) for f in faults], 14))


def plant_gaps(ribbons, laid, plan, s):
    faults = []
    for _ in range(60):
        if len(faults) == s.gaps:
            break
        r = ribbons[s.rng.integers(len(ribbons))]
        free = 5 + r["width"] / 2
        if r["end"] - r["start"] < 2 * free + 6:
            continue
        where = s.rng.uniform(r["start"] + free, r["end"] - free)
        point = at(r["path"], where)[0][0]
        crossed = any(
            distance(t["path"], point) < t["width"] / 2 + 6
            for t in laid
            if t["id"] != r["strip"] and t["net"] == r["net"]
        )
        if crossed or not clear_of(point, plan, faults):
            continue
        size = float(GAPS_MM[(s.number + len(faults) * 2) % len(GAPS_MM)])
        skew = float(np.tan(np.radians(s.rng.normal(0, 6))))
        rest = dict(r, start=where + size / 2, corner=None, seam=None, skew_start=skew)
        r.update(end=where - size / 2, skew_end=skew)
        ribbons.append(rest)
        faults.append(
            {"kind": "gap", "x_mm": float(point[0]), "y_mm": float(point[1]), "size_mm": size, "nets": [r["net"]]}
        )
    return faults


def plant_bridges(ribbons, laid, plan, gaps, s):
    """A sliver of foil over the clearance between two nets, 0.8 to 2.5 mm wide."""
    faults = []
    for _ in range(200):
        if len(faults) == s.bridges:
            break
        a, b = (laid[i] for i in s.rng.integers(len(laid), size=2))
        if a["net"] == b["net"]:
            continue
        start = at(a["path"], s.rng.uniform(4, max(5, lengths(np.array(a["path"]))[-1] - 4)))[0][0]
        end = nearest(b["path"], start)
        way = end - start
        span = np.hypot(*way)
        tip = min(np.hypot(*(end - b["path"][k])) for k in (0, -1)) < 0.1
        # From b's axis to its border, on the way; past its tip there is none.
        beyond = 0.0 if tip else b["width"] / 2
        clearance = span - a["width"] / 2 - beyond
        others = [t for t in laid if t is not a and t is not b]
        middle = (start + end) / 2
        blocked = any(distance(t["path"], middle) < t["width"] / 2 + 3 for t in others)
        if not 1.2 < clearance < 8 or blocked or not clear_of(middle, plan, gaps + faults):
            continue
        unit = way / span
        width = float(s.rng.choice([0.8, 1.2, 1.8, 2.5]))
        path = np.array([start + unit * (a["width"] / 2 - 1.3), end - unit * (beyond - 1.3)])
        centre = start + unit * (a["width"] / 2 + clearance / 2)
        ribbons.append(
            {
                "net": a["net"],
                "strip": "B",
                "width": width,
                "path": path,
                "start": 0.0,
                "end": lengths(path)[-1],
                "corner": None,
            }
        )
        faults.append(
            {
                "kind": "bridge",
                "x_mm": float(centre[0]),
                "y_mm": float(centre[1]),
                "size_mm": width,
                "nets": [a["net"], b["net"]],
            }
        )
    return faults
