"""Surfaces, as node trees. Colours are linear RGB."""

import bpy


class Tree:
    """A material's nodes, built by short calls."""

    def __init__(self, name):
        self.material = bpy.data.materials.new(name)
        self.material.use_nodes = True
        self.nodes, self.links = self.material.node_tree.nodes, self.material.node_tree.links
        self.surface = self.nodes["Principled BSDF"]
        self.output = self.nodes["Material Output"]

    def node(self, kind, inputs=None, **settings):
        """Adds a node; an input is a value or another node's socket."""
        node = self.nodes.new(f"ShaderNode{kind}")
        for key, value in settings.items():
            setattr(node, key, value)
        for key, value in (inputs or {}).items():
            self.feed(node.inputs[key], value)
        return node

    def feed(self, socket, value):
        if isinstance(value, bpy.types.NodeSocket):
            self.links.new(value, socket)
        elif hasattr(value, "__len__") and len(value) == 3 and socket.type == "RGBA":
            socket.default_value = (*value, 1)
        else:
            socket.default_value = value

    def set(self, **inputs):
        """Feeds the principled surface: Base_Color, Roughness, ..."""
        for key, value in inputs.items():
            self.feed(self.surface.inputs[key.replace("_", " ")], value)
        return self

    def coordinates(self, scale=(1, 1, 1), kind="Object", turn=0.0):
        texture = self.node("TexCoord")
        mapping = self.node("Mapping", {"Vector": texture.outputs[kind], "Scale": scale, "Rotation": (0, 0, turn)})
        return mapping.outputs["Vector"]

    def noise(self, vector, scale, detail=4.0, rough=0.6, distortion=0.0):
        inputs = {"Vector": vector, "Scale": scale, "Detail": detail, "Roughness": rough, "Distortion": distortion}
        return self.node("TexNoise", inputs).outputs["Fac"]

    def ramp(self, fac, *stops):
        """Colours by a value: stops (position, rgb)."""
        node = self.node("ValToRGB", {"Fac": fac})
        elements = node.color_ramp.elements
        while len(elements) < len(stops):
            elements.new(0.5)
        for element, (position, rgb) in zip(elements, stops):
            element.position = position
            element.color = (*rgb, 1)
        return node.outputs["Color"]

    def mix(self, fac, a, b, blend="MIX"):
        return self.node("MixRGB", {"Fac": fac, "Color1": a, "Color2": b}, blend_type=blend).outputs["Color"]

    def bump(self, height, distance_mm, strength=1.0, normal=None):
        inputs = {"Height": height, "Distance": distance_mm, "Strength": strength}
        if normal:
            inputs["Normal"] = normal
        return self.node("Bump", inputs).outputs["Normal"]


def plain(name, rgb, roughness=0.5, metallic=0.0, **more):
    return Tree(name).set(Base_Color=rgb, Roughness=roughness, Metallic=metallic, **more).material


def copper(s):
    """Copper's own reflectance at normal incidence, darker and redder where tarnished; the foil's micro-creases as bumps."""
    tree = Tree("copper")
    uv = tree.coordinates(kind="UV")
    stain = tree.noise(uv, 0.35, 3, 0.65)
    bright, dull = (0.955, 0.637, 0.538), (0.42 + 0.3 * (1 - s.tarnish), 0.24, 0.15)
    low = 0.75 - 0.5 * s.tarnish
    colour = tree.ramp(stain, (low, bright), (low + 0.22, dull))
    smudge = tree.noise(uv, 0.5, 2)
    rough = tree.node(
        "MapRange",
        {"Value": smudge, "From Min": 0.35, "From Max": 0.7, "To Min": s.roughness, "To Max": s.roughness * 1.5 + 0.03},
    )
    lines = tree.noise(tree.coordinates((0.25, 6, 1), kind="UV"), 1.0, 1)
    fine = tree.noise(uv, 1.3, 2, 0.5, 0.4)
    normal = tree.bump(lines, 0.012, 0.5)
    normal = tree.bump(fine, 0.06 * s.crumple, 0.45, normal)
    return tree.set(Base_Color=colour, Metallic=1.0, Roughness=rough.outputs["Result"], Normal=normal).material


def paper(image, black=False):
    """The sheet: its drawing, a felt of fibres, a trace of sheen."""
    tree = Tree("paper")
    uv = tree.coordinates(kind="UV")
    texture = tree.node("TexImage", {"Vector": uv}, image=image, extension="EXTEND", interpolation="Cubic")
    fibres = tree.noise(tree.coordinates(), 2.2, 3, 0.7)
    tone = tree.ramp(fibres, (0.3, (0.93, 0.93, 0.93)), (0.7, (1, 1, 1)))
    colour = tree.mix(1.0, texture.outputs["Color"], tone, "MULTIPLY")
    normal = tree.bump(fibres, 0.05, 0.5)
    return tree.set(Base_Color=colour, Roughness=0.75, Specular=0.3 if black else 0.2, Normal=normal).material


def fake_glass(name, rgb, clear=0.85, roughness=0.08, haze=(0.8, 0.8, 0.8)):
    """See-through stuff without refraction: some light passes straight, some scatters, the surface shines."""
    tree = Tree(name)
    through = tree.node("BsdfTransparent", {"Color": rgb})
    tree.set(Base_Color=[c * h for c, h in zip(rgb, haze)], Roughness=roughness, Specular=0.6)
    mixed = tree.node("MixShader", {0: clear, 1: tree.surface.outputs["BSDF"], 2: through.outputs["BSDF"]})
    tree.links.new(mixed.outputs["Shader"], tree.output.inputs["Surface"])
    return tree.material


def clear_tape():
    """Adhesive tape: hardly seen but for its shine."""
    tree = Tree("clear tape")
    ripples = tree.bump(tree.noise(tree.coordinates((0.3, 1, 1)), 0.4, 3), 0.25, 0.6)
    shine = tree.node("BsdfGlossy", {"Roughness": 0.12, "Normal": ripples})
    through = tree.node("BsdfTransparent", {"Color": (0.96, 0.96, 0.94)})
    edge = tree.node("LayerWeight", {"Blend": 0.25, "Normal": ripples})
    mixed = tree.node("MixShader", {0: edge.outputs["Fresnel"], 1: through.outputs["BSDF"], 2: shine.outputs["BSDF"]})
    tree.links.new(mixed.outputs["Shader"], tree.output.inputs["Surface"])
    return tree.material


def glow(name, rgb, strength):
    """A lit surface; a strength of 0.25 is as bright as white paper in the main light."""
    tree = Tree(name)
    return tree.set(Base_Color=rgb, Emission=rgb, Emission_Strength=float(strength), Roughness=0.3).material


def skin(rgb):
    tree = Tree("skin")
    where = tree.coordinates()
    blotch = tree.mix(
        0.5,
        rgb,
        tree.ramp(tree.noise(where, 0.12, 3), (0.35, [c * f for c, f in zip(rgb, (1.0, 0.78, 0.75))]), (0.65, rgb)),
    )
    pores = tree.bump(tree.noise(where, 1.1, 4), 0.25, 0.5)
    return tree.set(Base_Color=blotch, Roughness=0.45, Specular=0.35, Normal=pores, Subsurface=0.0).material
