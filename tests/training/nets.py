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


class UNet(nn.Module):
    """
    Works on cells of `cell` x `cell` pixels (space to depth), so that the wide view is cheap; its answer is shuffled back to
    full resolution. With `fine` > 0 that many maps go up to cells of 2 x 2 first and meet the picture itself there, which
    keeps thin gaps open. In: (b, 3, h, w) in 0..1, h and w multiples of 8 * cell. Out: (b, outs, h, w) logits.
    """

    def __init__(self, outs, cell, widths, deep, fine=0):
        super().__init__()
        self.cell, self.fine = cell, fine
        a, b, c, d = widths
        self.down0 = Block(3 * cell * cell, a)
        self.down1 = Block(a, b, 2)
        self.down2 = Block(b, c, 2)
        self.down3 = Block(c, d, deep)
        self.up2 = Block(c + d, c, 2)
        self.up1 = Block(b + c, b, 2)
        self.up0 = Block(a + b, 4 * fine if fine else a + 8)
        self.refine = Block(fine + 12, 16) if fine else nn.Identity()
        self.head = nn.Conv2d(16, outs * 4, 1) if fine else nn.Conv2d(a + 8, outs * cell * cell, 1)

    def forward(self, x):
        x = (x - 0.5) * 4
        e0 = self.down0(F.pixel_unshuffle(x, self.cell))
        e1 = self.down1(F.max_pool2d(e0, 2))
        e2 = self.down2(F.max_pool2d(e1, 2))
        e3 = self.down3(F.max_pool2d(e2, 2))
        y = self.up2(torch.cat([F.interpolate(e3, scale_factor=2.0, mode="nearest"), e2], 1))
        y = self.up1(torch.cat([F.interpolate(y, scale_factor=2.0, mode="nearest"), e1], 1))
        y = self.up0(torch.cat([F.interpolate(y, scale_factor=2.0, mode="nearest"), e0], 1))
        if not self.fine:
            return F.pixel_shuffle(self.head(y), self.cell)
        y = torch.cat([F.pixel_shuffle(y, 2), F.pixel_unshuffle(x, 2)], 1)
        return F.pixel_shuffle(self.head(self.refine(y)), 2)


def sheet_net():
    """Copper, lamp, cell on a sheet at 10 px/mm."""
    return UNet(outs=3, cell=4, widths=(24, 40, 64, 96), deep=3, fine=8)


def base_net():
    """The base in a photograph shrunk to 256 px."""
    return UNet(outs=1, cell=2, widths=(24, 40, 64, 96), deep=3)
