"""What is true of the scene: masks from a render of flat colours by the very camera, and places in mm and pixels."""

import json

import bpy
import numpy as np

from camera import homography, project
from paths import distance
from pictures import render_linear, save_colours, save_png
from scene import COPPER, NONE, OTHER, PAPER

PX_PER_MM = 10
CODES = {COPPER: (1, 0, 0), PAPER: (0, 1, 0), OTHER: (0, 0, 1)}
# Things told apart among the others for training: what lamps' bodies and cells are, and what is thin or melted onto the copper.
SORTS = {"lamp": (1, 1, 0), "cell": (0, 1, 1), "thin": (1, 0, 1)}
SORT_OF = {
    **dict.fromkeys(("chip", "window", "dome", "sticker", "lamp", "lit"), "lamp"),
    **dict.fromkeys(("cell", "plus"), "cell"),
    **dict.fromkeys(("leg", "pad", "solder", "wire"), "thin"),
}


def visible(scene):
    """
    Renders classes at the pixels' centres: {copper, paper, other} -> (h, w) bool, and {sorts} -> (h, w, 3) bool by CODES and
    SORTS. It spoils the scene's materials.
    """
    flat = {}
    for name, rgb in (CODES | SORTS).items():
        material = bpy.data.materials.new(name)
        material.use_nodes = True
        nodes, links = material.node_tree.nodes, material.node_tree.links
        nodes.clear()
        light, out = nodes.new("ShaderNodeEmission"), nodes.new("ShaderNodeOutputMaterial")
        light.inputs["Color"].default_value = (*rgb, 1)
        links.new(light.outputs["Emission"], out.inputs["Surface"])
        flat[name] = material
    for thing in scene.objects:
        kind = thing.get("truth", NONE)
        if kind == NONE:
            thing.hide_render = thing.type != "CAMERA"
        else:
            thing.data.materials.clear()
            sort = SORT_OF.get(thing.name.split(".")[0], kind) if kind == OTHER else kind
            thing.data.materials.append(flat[sort])
    scene.world.use_nodes = False
    scene.world.color = (0, 0, 0)
    scene.camera.data.dof.use_dof = False
    cycles = scene.cycles
    cycles.samples, cycles.use_adaptive_sampling, cycles.max_bounces = 1, False, 0
    cycles.pixel_filter_type, cycles.filter_width = "BOX", 0.01
    rgb = render_linear(scene) > 0.5
    same = lambda code: (rgb == np.array(code, bool)).all(-1)
    copper, paper = same(CODES[COPPER]), same(CODES[PAPER])
    return {COPPER: copper, PAPER: paper, OTHER: rgb.any(-1) & ~copper & ~paper, "sorts": rgb}


def write_truth(stem, name, seen, plan, build, patch, lie, scene, s):
    """Writes the layout `tape-exam/1` beside the photograph."""
    camera = scene.camera
    px = lambda p, above=0.0: [round(float(k), 3) for k in project(scene, camera, lie.world(*p, above)[None])[0]]
    size = (lie.w, lie.h)
    corners_mm = [(0, 0), (lie.w, 0), (lie.w, lie.h), (0, lie.h)]
    corners_px = [px(c) for c in corners_mm]
    to_px = homography(corners_mm, corners_px)
    rect = {kind: square_up(seen[kind], to_px, size) for kind in (COPPER, PAPER)}
    valid = rect[COPPER] | rect[PAPER]
    faults = [dict(f, **dict(zip(("x_px", "y_px"), px((f["x_mm"], f["y_mm"]))))) for f in build["faults"]]
    shown = [f for f in faults if is_seen(f, valid)]
    lamps = [dict(l, c=[(a + b) / 2 for a, b in zip(l["plus"], l["minus"])]) for l in plan["lamps"]]
    w, h = scene.render.resolution_x, scene.render.resolution_y
    focal = camera.data.lens / camera.data.sensor_width * w
    base = {"width_mm": lie.w, "height_mm": lie.h}
    truth = {
        "schema": "tape-exam/1",
        "seed": s.number,
        "image": f"{name}.jpg",
        "image_size": [w, h],
        "base": {**base, "corners_px": corners_px, "order": "(0,0),(W,0),(W,H),(0,H); mm frame: x right, y down"},
        "camera": {
            "homography_mm_to_undistorted_px": to_px.tolist(),
            "K": [[focal, 0, w / 2], [0, focal, h / 2], [0, 0, 1]],
            "distortion": {"k1": 0, "k2": 0},
            "tilt_deg": s.tilt_deg,
        },
        "asbuilt": {
            "strips": [{k: t[k] for k in ("id", "net", "width", "path")} for t in build["laid"]],
            "lamps": [{"id": l["id"], "c_mm": l["c"]} for l in lamps],
            "pad_component": {f"{l['id']}{sign}": "copper" for l in lamps for sign in "+-"},
            "seams": [{"x_mm": x, "y_mm": y} for x, y in build["seams"]],
        },
        "faults": shown,
        "hidden_faults": [f for f in faults if f not in shown],
        "settings": {k: v for k, v in vars(s).items() if k not in ("rng", "sides")},
    }
    question = {
        "image": f"{name}.jpg",
        "base": base,
        "taps": {
            "lamps": [{"id": l["id"], "c_px": px(l["c"], 0.5), "plus_px": px(l["plus"], 0.3)} for l in lamps],
            "cell": {"c_px": px(plan["cell"], 3.2 if s.cell else 0), "face_up": "+"},
        },
        "plan": planned(plan, lamps, patch),
    }
    for suffix, content in (("", truth), ("_question", question)):
        with open(f"{stem}{suffix}.json", "w") as target:
            json.dump(content, target, indent=1, default=float)
    save_png(f"{stem}_mask.png", seen[COPPER])
    save_colours(f"{stem}_sorts.png", seen["sorts"])
    save_png(f"{stem}_rect_mask.png", rect[COPPER])
    save_png(f"{stem}_rect_valid.png", valid)


def planned(plan, lamps, patch):
    axis = lambda l: (np.subtract(l["minus"], l["plus"]) / np.hypot(*np.subtract(l["minus"], l["plus"]))).tolist()
    return {
        "strips": [{k: t[k] for k in ("id", "path", "width", "net")} | {"surface": "base"} for t in plan["strips"]],
        "lamps": [
            {"id": l["id"], "c": l["c"], "axis_plus_to_minus": axis(l), "net_plus": net_at(plan, l["plus"])}
            for l in lamps
        ],
        "cell": {"c": plan["cell"], "top_net": "P", "face_up": "+"},
        "flaps": [],
        "patches": [patch] if patch else [],
        "openings": [],
    }


def net_at(plan, point):
    return min(plan["strips"], key=lambda t: distance(t["path"], np.array(point)))["net"]


def square_up(mask, to_px, size_mm):
    """The photo's mask on the base's own frame, 10 px/mm, the nearest pixel."""
    w, h = (round(k * PX_PER_MM) for k in size_mm)
    y, x = (np.mgrid[0:h, 0:w] + 0.5) / PX_PER_MM
    at = np.stack([x, y, np.ones_like(x)], -1) @ to_px.T
    px, py = (np.floor(at[..., i] / at[..., 2]).astype(int) for i in (0, 1))
    inside = (px >= 0) & (py >= 0) & (px < mask.shape[1]) & (py < mask.shape[0])
    out = np.zeros((h, w), bool)
    out[inside] = mask[py[inside], px[inside]]
    return out


def is_seen(fault, valid):
    """A fault counts when hardly anything covers its place within 2 mm."""
    x, y, r = int(fault["x_mm"] * PX_PER_MM), int(fault["y_mm"] * PX_PER_MM), 2 * PX_PER_MM
    return valid[max(0, y - r) : y + r, max(0, x - r) : x + r].mean() > 0.85
