"""Frames and plain objects of a Blender scene. One Blender unit is 1 mm; the sheet's centre is the origin, z is up."""

import bmesh
import bpy
import numpy as np

COPPER, PAPER, OTHER, NONE = "copper", "paper", "other", "none"


def fresh():
    """An empty scene."""
    bpy.ops.wm.read_factory_settings(use_empty=True)
    scene = bpy.context.scene
    scene.world = bpy.data.worlds.new("room")
    return scene


def add(name, mesh, material, truth=OTHER):
    """Puts a mesh into the scene. @param truth what it is in the truth masks; NONE: it is not seen there."""
    thing = bpy.data.objects.new(name, mesh)
    if material:
        mesh.materials.append(material)
    thing["truth"] = truth
    bpy.context.collection.objects.link(thing)
    return thing


def grid_mesh(name, points, uv=None, smooth=True):
    """A mesh from points (n, m, 3); uv (n, m, 2) goes into its UV layer."""
    n, m, _ = points.shape
    i = np.arange(n * m).reshape(n, m)
    faces = np.stack([i[:-1, :-1], i[1:, :-1], i[1:, 1:], i[:-1, 1:]], -1).reshape(-1, 4)
    mesh = bpy.data.meshes.new(name)
    mesh.from_pydata(points.reshape(-1, 3).tolist(), [], faces.tolist())
    if uv is not None:
        layer = mesh.uv_layers.new(name="uv")
        layer.data.foreach_set("uv", uv.reshape(-1, 2)[faces.ravel()].astype(np.float32).ravel())
    mesh.polygons.foreach_set("use_smooth", [smooth] * len(faces))
    return mesh


def solid(make, smooth=True, **options):
    """A mesh from a bmesh primitive: solid(bmesh.ops.create_cone, radius1=2, ...)."""
    mesh = bpy.data.meshes.new("solid")
    form = bmesh.new()
    make(form, **options)
    form.to_mesh(mesh)
    form.free()
    mesh.polygons.foreach_set("use_smooth", [smooth] * len(mesh.polygons))
    return mesh


def box(size, bevel=0.0):
    """A box of three side lengths about the origin, its edges rounded."""
    mesh = bpy.data.meshes.new("box")
    form = bmesh.new()
    bmesh.ops.create_cube(form, size=1)
    bmesh.ops.scale(form, vec=size, verts=form.verts)
    if bevel:
        bmesh.ops.bevel(form, geom=form.edges, offset=bevel, segments=3, profile=0.5, affect="EDGES")
    form.to_mesh(mesh)
    form.free()
    return mesh


def cylinder(radius, height, segments=48, top=None, smooth=False):
    """A cylinder (or a cone with `top` radius) about the origin along z."""
    return solid(
        bmesh.ops.create_cone,
        smooth,
        cap_ends=True,
        segments=segments,
        radius1=radius,
        radius2=radius if top is None else top,
        depth=height,
    )


def ball(radius, segments=24):
    return solid(bmesh.ops.create_uvsphere, u_segments=segments, v_segments=segments // 2, radius=radius)


def tube(name, points, radius, material, truth=OTHER, cyclic=False):
    """A smooth round tube through points (n, 3)."""
    curve = bpy.data.curves.new(name, "CURVE")
    curve.dimensions = "3D"
    curve.bevel_depth = radius
    curve.bevel_resolution = 4
    spline = curve.splines.new("POLY")
    spline.points.add(len(points) - 1)
    spline.use_cyclic_u = cyclic
    spline.points.foreach_set("co", np.c_[np.asarray(points, float), np.ones(len(points))].ravel())
    thing = bpy.data.objects.new(name, curve)
    curve.materials.append(material)
    thing["truth"] = truth
    bpy.context.collection.objects.link(thing)
    return thing


def pose(thing, lie, at, turn=0.0, above=0.0):
    """Puts a thing onto the sheet at mm, turned about z by radians."""
    thing.location = lie.world(*at, above)
    thing.rotation_euler = (0, 0, turn)
    return thing
