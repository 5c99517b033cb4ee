"""Pictures kept on the device to be learned from again: drawing them takes longer than learning from them."""

import torch

from noise import chance


class Pool:
    """
    Up to `room` samples of (3, n, n) pictures in 0..1, truth in 0..1 of as many maps as there are, and (1, n, n) weights under
    12.75 if there are any; as bytes.
    """

    units = (255.0, 255.0, 20.0)

    def __init__(self, room):
        self.kept, self.room, self.written = [], room, 0

    def put(self, batch):
        """Keeps a batch in place of the oldest."""
        if not self.kept:
            self.kept = [t.new_empty((self.room, *t.shape[1:]), dtype=torch.uint8) for t in batch]
        n = batch[0].shape[0]
        rows = torch.arange(self.written, self.written + n, device=batch[0].device) % self.room
        for kept, values, unit in zip(self.kept, batch, self.units):
            kept[rows] = (values * unit).round().clamp(0, 255).byte()
        self.written += n

    def take(self, n):
        """A batch from anywhere in the pool, laid anew and toned anew."""
        device = self.kept[0].device
        rows = torch.randint(min(self.written, self.room), (n,), device=device)
        picture, *maps = (kept[rows].float() / unit for kept, unit in zip(self.kept, self.units))
        gain = torch.exp(0.06 * torch.randn(n, 3, 1, 1, device=device))
        tone = torch.exp(0.12 * torch.randn(n, 1, 1, 1, device=device))
        picture = (picture.clamp(min=1e-3) ** tone * gain).clamp(0, 1)
        if chance(1, 0.5, device):
            picture, *maps = (t.transpose(2, 3) for t in (picture, *maps))
        flips = [axis for axis in (2, 3) if chance(1, 0.5, device)]
        return [t.flip(flips) for t in (picture, *maps)]
