"""
Draws an exam set by path tracing: photographs of paper circuits with their truth, in the layout `tape-exam/1`.

    blender -b -t 1 -P tests/generate/thirdLook/make.py -- OUT COUNT FROM ROOMS [SCALE [SHOT]]

OUT gets tNNN.jpg, tNNN_question.json, tNNN.json, tNNN_mask.png, tNNN_sorts.png, tNNN_rect_mask.png, tNNN_rect_valid.png for COUNT
scenes from number FROM on; a scene that is there already is left. ROOMS is a folder of lighting pictures (settings.ROOMS); SCALE a
share of the full size, for a quick look. SHOT 1 and up photographs the very same sheets again, from another place and in
another light (settings.again), into an OUT of their own; 0 is the first shot. Needs Blender 3.4 with numpy and scipy. Numbers
0 to 23 are held back: nothing is fitted to them or chosen by them. Numbers from 100 on are free to use.
"""

import os
import sys
import time

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))

from around import lay_around  # noqa: E402
from build import build  # noqa: E402
from camera import set_camera  # noqa: E402
from cell import lay_cell  # noqa: E402
from circuit import plan  # noqa: E402
from cover import lay_clear_tape, lay_patch, lay_wires  # noqa: E402
from denoise import denoise  # noqa: E402
from develop import develop  # noqa: E402
from lamps import lay_lamps  # noqa: E402
from lights import light_up  # noqa: E402
from pictures import render_passes, save_jpeg  # noqa: E402
from scene import fresh  # noqa: E402
from settings import again, settings  # noqa: E402
from sheet import lay_sheet  # noqa: E402
from tables import table  # noqa: E402
from tape import lay_tape  # noqa: E402
from truth import visible, write_truth  # noqa: E402

SAMPLES = 6


def main(out, count, first, rooms, scale="1", shot="0"):
    os.makedirs(out, exist_ok=True)
    for number in range(int(first), int(first) + int(count)):
        name = f"t{number:03d}"
        if os.path.exists(os.path.join(out, f"{name}.jpg")):
            continue
        start = time.time()
        photograph(number, os.path.join(out, name), name, rooms, float(scale), int(shot))
        print(f"{name}: {time.time() - start:.0f} s", flush=True)


def photograph(number, stem, name, rooms, scale, shot):
    s = settings(number)
    scene = fresh()
    planned = plan(s)
    built = build(planned, s)
    lie = lay_sheet(planned, s)
    table(s)
    lay_tape(built, planned, lie, s)
    lay_lamps(planned, lie, s)
    if s.cell:
        lay_cell(planned["cell"], lie, s)
    if s.wires:
        lay_wires(lie, s)
    if s.clear_tape:
        lay_clear_tape(built, lie, s)
    patch = lay_patch(built, planned, lie, s)
    if shot:
        again(s, shot)
    camera = set_camera(scene, lie, s)
    lay_around(lie, camera, s)
    light_up(scene, camera, lie, s, rooms)
    sample(scene, s)
    for side in ("resolution_x", "resolution_y"):
        setattr(scene.render, side, int(getattr(scene.render, side) * scale))
    passes = render_passes(scene)
    seen = visible(scene)
    write_truth(stem, name, seen, planned, built, patch, lie, scene, s)
    picture = develop(*denoise(*passes, seen["copper"]), s)
    save_jpeg(f"{stem}.jpg", picture, s.quality, scene)


def sample(scene, s):
    """How long Cycles looks: what noise is left passes for the sensor's."""
    scene.render.engine = "CYCLES"
    cycles = scene.cycles
    cycles.device, cycles.seed = "CPU", s.number
    cycles.samples, cycles.use_adaptive_sampling, cycles.use_denoising = SAMPLES, False, False
    cycles.max_bounces, cycles.diffuse_bounces, cycles.glossy_bounces = 3, 1, 3
    cycles.transparent_max_bounces = 8
    cycles.caustics_reflective = cycles.caustics_refractive = False
    cycles.sample_clamp_direct, cycles.sample_clamp_indirect = 30, 3
    cycles.blur_glossy = 0.3
    scene.render.use_persistent_data = False


if __name__ == "__main__":
    main(*sys.argv[sys.argv.index("--") + 1 :])
