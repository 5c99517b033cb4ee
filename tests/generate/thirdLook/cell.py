"""A brushed coin cell with its rolled rim."""

from circuit import CELL_MM
from materials import Tree, plain
from scene import add, box, cylinder, pose

TOP_MM = 3.5


def lay_cell(at, lie, s):
    steel = brushed()
    flat = lie.world(*at)[2]
    for radius, height, z in ((CELL_MM / 2, 2.5, 1.55), (9.1, 0.5, 2.95)):
        thing = add("cell", cylinder(radius, height, 96), steel)
        bevel = thing.modifiers.new("rim", "BEVEL")
        bevel.width, bevel.segments = 0.25, 3
        pose(thing, lie, at, s.rng.uniform(0, 6), z)
        thing.location.z = flat + z
    # A plus pressed into the face, off the middle.
    for size in ((3.0, 0.5, 0.06), (0.5, 3.0, 0.06)):
        sign = add("plus", box(size, 0.02), plain("pressed", (0.35, 0.34, 0.33), 0.35, 1.0))
        pose(sign, lie, (at[0] - 4, at[1] + 3.5), 0.2, 0)
        sign.location.z = flat + 3.22


def brushed():
    tree = Tree("brushed steel")
    lines = tree.noise(tree.coordinates((0.15, 9, 1)), 1.0, 4)
    stain = tree.noise(tree.coordinates(), 0.25, 3)
    colour = tree.ramp(stain, (0.35, (0.55, 0.54, 0.52)), (0.65, (0.66, 0.65, 0.63)))
    return tree.set(
        Base_Color=colour, Metallic=1.0, Roughness=0.28, Anisotropic=0.6, Normal=tree.bump(lines, 0.02, 0.5)
    ).material
