"""Two small U-nets: one reads a squared sheet, one finds the base in a whole photograph."""

import torch
import torch.nn as nn
import torch.nn.functional as F


class Block(nn.Sequential):
    def __init__(self, cin, cout, n=1):
        layers = []
        for k in range(n):
            layers += [
                nn.Conv2d(cin if k == 0 else cout, cout, 3, padding=1, bias=False),
                nn.BatchNorm2d(cout),
                nn.ReLU(inplace=True),
            ]
        super().__init__(*layers)


class Whole(nn.Module):
    """Adds to every place what is the mean of all: which paper this is, what the light."""

    def __init__(self, width):
        super().__init__()
        self.first = nn.Conv2d(width, width // 2, 1)
        self.second = nn.Conv2d(width // 2, width, 1)

    def forward(self, x):
        return x + self.second(F.relu(self.first(x.mean((2, 3), keepdim=True))))


class SheetNet(nn.Module):
    """
    Copper, lamp, cell on a sheet at 10 px/mm, or at 5. Most of the work is done on cells of 4 x 4 pixels and coarser, so that a
    wide view is cheap; `fine` maps go up to cells of 2 x 2 and meet the picture itself there, which keeps thin gaps open.
    In: (b, 3, h, w) in 0..1, h and w multiples of 64. Out: (b, 3, h, w) logits.
    """

    def __init__(self, widths=(32, 56, 88, 120, 128), down=(1, 2, 2, 2, 2), up=(1, 1, 2, 2), fine=4, last=12):
        super().__init__()
        inward = (48, *widths)
        self.downs = nn.ModuleList(Block(inward[k], inward[k + 1], down[k]) for k in range(len(widths)))
        self.wholes = nn.ModuleList(Whole(w) for w in widths[2:])
        self.narrows = nn.ModuleList(nn.Conv2d(widths[k + 1], widths[k], 1) for k in range(len(widths) - 1))
        self.ups = nn.ModuleList(Block(widths[k], widths[k] if k else 4 * fine, up[k]) for k in range(len(widths) - 1))
        self.refine = Block(fine + 12, last)
        self.head = nn.Conv2d(last, 12, 1)

    def forward(self, x):
        x = (x - 0.5) * 4
        seen = [self.downs[0](F.pixel_unshuffle(x, 4))]
        for k, down in enumerate(self.downs[1:]):
            y = down(F.max_pool2d(seen[-1], 2))
            seen.append(self.wholes[k - 1](y) if k else y)
        y = seen.pop()
        for k in reversed(range(len(seen))):
            y = self.ups[k](F.interpolate(self.narrows[k](y), scale_factor=2.0, mode="nearest") + seen[k])
        y = torch.cat([F.pixel_shuffle(y, 2), F.pixel_unshuffle(x, 2)], 1)
        return F.pixel_shuffle(self.head(self.refine(y)), 2)


class BaseNet(nn.Module):
    """The base in a photograph shrunk to 256 px, on cells of 2 x 2. In: (b, 3, h, w), multiples of 16. Out: (b, 1, h, w) logits."""

    def __init__(self, a=24, b=40, c=64, d=96):
        super().__init__()
        self.down0 = Block(12, a)
        self.down1 = Block(a, b, 2)
        self.down2 = Block(b, c, 2)
        self.down3 = Block(c, d, 3)
        self.up2 = Block(c + d, c, 2)
        self.up1 = Block(b + c, b, 2)
        self.up0 = Block(a + b, a + 8)
        self.head = nn.Conv2d(a + 8, 4, 1)

    def forward(self, x):
        x = (x - 0.5) * 4
        e0 = self.down0(F.pixel_unshuffle(x, 2))
        e1 = self.down1(F.max_pool2d(e0, 2))
        e2 = self.down2(F.max_pool2d(e1, 2))
        e3 = self.down3(F.max_pool2d(e2, 2))
        y = self.up2(torch.cat([F.interpolate(e3, scale_factor=2.0, mode="nearest"), e2], 1))
        y = self.up1(torch.cat([F.interpolate(y, scale_factor=2.0, mode="nearest"), e1], 1))
        y = self.up0(torch.cat([F.interpolate(y, scale_factor=2.0, mode="nearest"), e0], 1))
        return F.pixel_shuffle(self.head(y), 2)
