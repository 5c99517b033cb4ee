"""Pictures in and out of Blender, as arrays with row 0 at the top."""

import os
import tempfile

import bpy
import numpy as np

PASSES = ("Image", "Denoising Albedo", "Denoising Normal")


def render_linear(scene):
    """Renders the scene. @returns (h, w, 3) linear RGB."""
    path = os.path.join(tempfile.mkdtemp(), "render.exr")
    settings = scene.render.image_settings
    settings.file_format, settings.color_mode, settings.color_depth = "OPEN_EXR", "RGB", "32"
    scene.render.filepath, scene.use_nodes = path, False
    bpy.ops.render.render(write_still=True)
    return read_linear(path)


def render_passes(scene):
    """Renders the scene. @returns its light, its surfaces' colour, their normals; each (h, w, 3)."""
    folder = tempfile.mkdtemp()
    scene.view_layers[0].cycles.denoising_store_passes = True
    scene.use_nodes = True
    nodes, links = scene.node_tree.nodes, scene.node_tree.links
    nodes.clear()
    layers, out = nodes.new("CompositorNodeRLayers"), nodes.new("CompositorNodeOutputFile")
    out.base_path = folder
    out.format.file_format, out.format.color_mode, out.format.color_depth = "OPEN_EXR", "RGB", "32"
    out.file_slots.clear()
    for i, name in enumerate(PASSES):
        out.file_slots.new(f"p{i}_")
        links.new(layers.outputs[name], out.inputs[i])
    bpy.ops.render.render()
    return [read_linear(os.path.join(folder, f"p{i}_{scene.frame_current:04d}.exr")) for i in range(len(PASSES))]


def read_linear(path):
    image = bpy.data.images.load(path)
    w, h = image.size
    rgba = np.empty(w * h * 4, np.float32)
    image.pixels.foreach_get(rgba)
    bpy.data.images.remove(image)
    os.remove(path)
    return rgba.reshape(h, w, 4)[::-1, :, :3].copy()


def save_png(path, mask):
    """A black and white picture of a mask (h, w) bool."""
    save_colours(path, np.repeat(mask[..., None], 3, -1))


def save_colours(path, flags):
    """A picture of the eight full colours from (h, w, 3) bool."""
    image = blank(flags.astype(np.float32), "Non-Color")
    image.filepath_raw, image.file_format = path, "PNG"
    image.save()
    bpy.data.images.remove(image)


def save_jpeg(path, rgb, quality, scene):
    """A photograph from sRGB values 0..1."""
    image = blank(rgb, "sRGB")
    scene.view_settings.view_transform = "Standard"
    settings = scene.render.image_settings
    settings.file_format, settings.color_mode, settings.quality = "JPEG", "RGB", quality
    image.save_render(path, scene=scene)
    bpy.data.images.remove(image)


def blank(rgb, space):
    h, w, _ = rgb.shape
    image = bpy.data.images.new("picture", w, h)
    image.colorspace_settings.name = space
    rgba = np.dstack([rgb[::-1], np.ones((h, w), np.float32)]).astype(np.float32)
    image.pixels.foreach_set(rgba.ravel())
    image.update()
    return image
