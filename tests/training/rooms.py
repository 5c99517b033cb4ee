"""
Real surroundings for the foil to mirror: panoramas of rooms and open places.

    npm pack @pmndrs/assets@1.7.0 && tar xzf pmndrs-assets-1.7.0.tgz && python3 rooms.py package/hdri rooms.npy

They are light-probe photographs by several makers, given to the public domain (CC0); only `train.py --rooms` reads them, from
outside the repository. Six more of the package are left for pictures that the nets are examined with.
"""

import base64
import math
import re
import sys

import torch

from noise import chance, uniform

NAMES = ["apartment", "city", "forest", "lobby", "night", "park", "sky", "studio", "sunrise", "sunset", "warehouse", "workshop"]
# Foil is more or less brushed: what it mirrors is blurred by this much, in px of 256 for the whole way round.
BLURS = [0.5, 3, 9]


class Room:
    """A panorama for each of `b` sheets, turned at random; `is_real` (b, 1, 1, 1) tells which sheets lie in one at all."""

    # (n, 3, h, w), linear light, up at the top; none until given.
    panoramas = None

    def __init__(self, b, device):
        self.is_real = chance(b, 0.45, device)[:, None, None, None]
        which = torch.randint(len(Room.panoramas), (b,), device=device)
        gain = torch.exp(0.6 * torch.randn(b, device=device) - 0.3)
        self.map = (Room.panoramas[which] * gain[:, None, None, None]).clamp(0.002, 8)
        spin = uniform((b,), 0, 2 * math.pi, device)
        tilt = uniform((b,), 0, 1.0, device) * torch.rand(b, device=device)
        self.spin, self.tilt = (t[:, None, None] for t in (spin, tilt))
        self.steep = uniform((b, 1, 1), 0.4, 1.4, device)
        # The one who takes the photograph stands in the way of what lies straight above.
        self.head = uniform((b, 1, 1), 0.1, 0.5, device)
        self.head_dark = uniform((b, 1, 1), 0.1, 0.9, device) * chance(b, 0.5, device).float()[:, None, None]

    def mirrored(self, slope_u, slope_v, tu, tv):
        """What foil of these slopes (b, h, w) shows to a camera above; tu, tv (b, h, w) in 0..1 place it on the sheet."""
        nx, ny = slope_u * self.steep, slope_v * self.steep
        vx, vy = 0.5 * (tu - 0.5), 0.5 * (tv - 0.5)
        scale = 2 * (1 - vx * nx - vy * ny) / (1 + nx * nx + ny * ny)
        x, y, z = vx + scale * nx, vy + scale * ny, scale - 1
        blocked = torch.sigmoid((self.head - torch.sqrt(x * x + y * y) / z.clamp(min=0.05)) / 0.05) * self.head_dark
        x, z = x * torch.cos(self.tilt) + z * torch.sin(self.tilt), z * torch.cos(self.tilt) - x * torch.sin(self.tilt)
        around = torch.atan2(y, x) + self.spin
        u = torch.remainder(around / (2 * math.pi), 1.0)
        v = torch.acos((z / torch.sqrt(x * x + y * y + z * z).clamp(min=1e-4)).clamp(-1, 1)) / math.pi
        grid = torch.stack([u * 2 - 1, v * 2 - 1], -1)
        seen = torch.nn.functional.grid_sample(self.map, grid, padding_mode="border", align_corners=False)
        return seen * (1 - blocked)[:, None]


def read(path, device):
    import numpy

    Room.panoramas = torch.tensor(numpy.load(path).astype("float32"), device=device)


def main(folder, out):
    import os

    os.environ["OPENCV_IO_ENABLE_OPENEXR"] = "1"
    import cv2
    import numpy

    rows = []
    for name in NAMES:
        text = open(os.path.join(folder, name + ".exr.js")).read()
        data = numpy.frombuffer(base64.b64decode(re.search("base64,([A-Za-z0-9+/=]+)", text)[1]), "uint8")
        picture = cv2.resize(cv2.imdecode(data, cv2.IMREAD_UNCHANGED)[:, :, 2::-1].clip(0, 60), (256, 128), interpolation=cv2.INTER_AREA)
        picture *= 0.5 / picture.clip(0, 4).mean()
        for sigma in BLURS:
            wrapped = cv2.GaussianBlur(numpy.concatenate([picture] * 3, 1), (0, 0), sigma)[:, 256:512]
            rows.append(wrapped.transpose(2, 0, 1).clip(0, 60))
    numpy.save(out, numpy.array(rows, dtype="float16"))


if __name__ == "__main__":
    main(*sys.argv[1:])
