"""What the sheet lies on."""

import numpy as np

from materials import Tree
from scene import NONE, add, grid_mesh

WOODS = (
    ((0.62, 0.42, 0.24), (0.42, 0.25, 0.12)),
    ((0.72, 0.55, 0.36), (0.55, 0.38, 0.21)),
    ((0.5, 0.3, 0.16), (0.3, 0.15, 0.07)),
)
DARK_WOODS = (((0.16, 0.085, 0.045), (0.07, 0.035, 0.02)), ((0.24, 0.12, 0.06), (0.1, 0.045, 0.025)))
MATS = ((0.02, 0.12, 0.08), (0.03, 0.07, 0.16), (0.05, 0.05, 0.055), (0.3, 0.1, 0.17))
CLOTHS = (
    (0.55, 0.08, 0.08),
    (0.12, 0.2, 0.38),
    (0.6, 0.56, 0.47),
    (0.09, 0.09, 0.1),
    (0.65, 0.65, 0.62),
    (0.2, 0.3, 0.2),
)
CARPETS = ((0.3, 0.28, 0.25), (0.2, 0.06, 0.05), (0.42, 0.36, 0.27), (0.12, 0.14, 0.18))


def table(s):
    """A plane of 1.6 m with the scene's table surface, at z = 0."""
    points = np.array([[[x, y, 0.0] for y in (-800, 800)] for x in (-800, 800)])
    surface = SURFACES[s.table](s)
    return add("table", grid_mesh("table", points), surface.material, NONE)


def choose(s, options):
    return options[int(s.rng.integers(len(options)))]


def wood(s, kinds=WOODS):
    light, dark = choose(s, kinds)
    tree = Tree("wood")
    turn = s.rng.uniform(0, np.pi)
    grain = tree.coordinates((0.004, 0.09, 0.05), turn=turn)
    rings = tree.noise(grain, 1.6, 4, 0.55, 1.2)
    pores = tree.noise(tree.coordinates((0.05, 2.2, 1), turn=turn), 1.0, 1)
    colour = tree.mix(0.6, tree.ramp(rings, (0.32, dark), (0.66, light)), tree.ramp(pores, (0.35, dark), (0.55, light)))
    plank = tree.node(
        "TexBrick",
        {
            "Vector": tree.coordinates((0.004, 0.004, 1), turn=turn),
            "Scale": 1.0,
            "Mortar Size": 0.002,
            "Color1": (0.85, 0.85, 0.85),
            "Color2": (1, 1, 1),
            "Mortar": (0.25, 0.25, 0.25),
            "Brick Width": 4.0,
            "Row Height": float(s.rng.choice([0.35, 0.6, 9.0])),
        },
    )
    colour = tree.mix(1.0, colour, plank.outputs["Color"], "MULTIPLY")
    return tree.set(Base_Color=colour, Roughness=float(s.rng.uniform(0.25, 0.6)), Normal=tree.bump(pores, 0.08, 0.5))


def desk(s, tones):
    tree = Tree("desk")
    tone = float(s.rng.uniform(*tones))
    speck = tree.noise(tree.coordinates(), 0.9, 3, 0.7)
    tint = s.rng.normal(1, 0.03, 3)
    colour = tree.ramp(speck, (0.3, list(tone * 0.88 * tint)), (0.7, list(tone * tint)))
    return tree.set(Base_Color=colour, Roughness=float(s.rng.uniform(0.15, 0.55)), Normal=tree.bump(speck, 0.03, 0.4))


def cutting_mat(s):
    """A ruled mat: thin lines each 10 mm, thicker ones each 50."""
    tree = Tree("mat")
    ground = choose(s, MATS)
    ink = tuple(c + 0.28 for c in ground)
    turn = s.rng.uniform(0, np.pi)
    speck = tree.noise(tree.coordinates(), 1.5, 3, 0.7)
    colour = tree.ramp(speck, (0.3, [c * 0.8 for c in ground]), (0.7, ground))
    for pitch, width in ((10, 0.3), (50, 0.6)):
        grid = tree.node(
            "TexBrick",
            {
                "Vector": tree.coordinates((1 / pitch,) * 3, turn=turn),
                "Scale": 1.0,
                "Mortar Size": width / pitch / 2,
                "Mortar Smooth": 0.1,
                "Brick Width": 1.0,
                "Row Height": 1.0,
            },
            offset=0.0,
        )
        colour = tree.mix(grid.outputs["Fac"], colour, ink)
    return tree.set(Base_Color=colour, Roughness=0.5, Normal=tree.bump(speck, 0.12, 0.6))


def cloth(s):
    """A weave of two threads about 0.8 mm apart, with soft folds in its shading."""
    tree = Tree("cloth")
    rgb = choose(s, CLOTHS)
    turn, pitch = s.rng.uniform(0, np.pi), s.rng.uniform(2.5, 4.5)
    warp = tree.node(
        "TexWave",
        {"Vector": tree.coordinates(turn=turn), "Scale": pitch, "Distortion": 0.6, "Detail": 1.0, "Detail Scale": 2.0},
        bands_direction="X",
    ).outputs["Fac"]
    weft = tree.node(
        "TexWave",
        {"Vector": tree.coordinates(turn=turn), "Scale": pitch, "Distortion": 0.6, "Detail": 1.0, "Detail Scale": 2.0},
        bands_direction="Y",
    ).outputs["Fac"]
    weave = tree.node("Math", {0: warp, 1: weft}, operation="MULTIPLY").outputs["Value"]
    fuzz = tree.noise(tree.coordinates(), 1.2, 3, 0.75)
    colour = tree.mix(
        0.4,
        tree.ramp(weave, (0.0, [c * 0.45 for c in rgb]), (0.6, rgb)),
        tree.ramp(fuzz, (0.3, [c * 0.6 for c in rgb]), (0.7, rgb)),
    )
    if s.rng.random() < 0.4:
        stripes = tree.node(
            "TexWave", {"Vector": tree.coordinates(turn=turn), "Scale": 0.016, "Distortion": 0.0}, wave_profile="SIN"
        ).outputs["Fac"]
        colour = tree.mix(tree.ramp(stripes, (0.48, (0, 0, 0)), (0.52, (0.7, 0.7, 0.7))), colour, choose(s, CLOTHS))
    folds = tree.bump(tree.noise(tree.coordinates(), 0.012, 2), 14.0, 0.5)
    return tree.set(
        Base_Color=colour, Roughness=0.9, Specular=0.1, Sheen=0.4, Normal=tree.bump(weave, 0.35, 0.8, folds)
    )


def carpet(s):
    tree = Tree("carpet")
    rgb = choose(s, CARPETS)
    loops = tree.node("TexVoronoi", {"Vector": tree.coordinates(), "Scale": 0.45, "Randomness": 0.9}).outputs[
        "Distance"
    ]
    fluff = tree.noise(tree.coordinates(), 1.4, 3, 0.8)
    shade = tree.ramp(loops, (0.1, rgb), (0.75, [c * 0.3 for c in rgb]))
    colour = tree.mix(0.55, shade, tree.ramp(fluff, (0.3, [c * 0.35 for c in rgb]), (0.7, [c * 1.4 for c in rgb])))
    normal = tree.bump(fluff, 1.2, 1.0, tree.bump(loops, -2.5, 1.0))
    return tree.set(Base_Color=colour, Roughness=1.0, Specular=0.0, Normal=normal)


SURFACES = {
    "wood": wood,
    "dark wood": lambda s: wood(s, DARK_WOODS),
    "white desk": lambda s: desk(s, (0.6, 0.8)),
    "black desk": lambda s: desk(s, (0.012, 0.04)),
    "cutting mat": cutting_mat,
    "cloth": cloth,
    "carpet": carpet,
}
