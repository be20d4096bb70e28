"""Pictures drawn by some processes and learned from by others: rings in shared memory, and copies of them on each GPU."""
import importlib
import mmap
import os
import time

import numpy as np
import torch
import torch.nn.functional as F

SIZE = (384, 512)
FINDINGS = 16
SLOTS = 1536
BATCH = 96


def shapes(size):
    h, w = size
    return {"image": (3, h, w), "bar": (1, h, w), "maps": (FINDINGS, h // 2, w // 2), "labels": (FINDINGS + 1,)}


class Ring:
    """The latest pictures of one drawing process, in memory that forked processes share."""

    def __init__(self, slots=None, size=None):
        self.slots, self.size = slots or SLOTS, size or SIZE
        self.parts = {}
        for name, shape in shapes(self.size).items():
            memory = mmap.mmap(-1, self.slots * int(np.prod(shape)))
            self.parts[name] = np.frombuffer(memory, dtype=np.uint8).reshape(self.slots, *shape)
        self.written = np.frombuffer(mmap.mmap(-1, 8), dtype=np.int64)

    def put(self, drawn):
        count = len(drawn["image"])
        where = (int(self.written[0]) + np.arange(count)) % self.slots
        for name, part in self.parts.items():
            part[where] = drawn[name]
        self.written[0] += count


def as_bytes(d):
    """What `draw` returns, as bytes; maps at half size, labels with `kind` last."""
    whole = lambda x: (torch.nan_to_num(x.float()).clamp(0, 1) * 255 + 0.5).to(torch.uint8)
    return {"image": whole(d["image"]), "bar": whole(d["bar"]), "maps": whole(F.avg_pool2d(d["maps"].float(), 2)),
            "labels": torch.cat([d["present"], d["kind"].view(-1, 1).float()], 1).to(torch.uint8)}


def keep_drawing(rings, device, seed, end):
    """Draws with each renderer by turns, as many pictures of each, until the time is up."""
    torch.set_num_threads(4)
    draws = {name: importlib.import_module(name).draw for name in rings}
    at = 0
    while time.time() < end:
        for i, (name, ring) in enumerate(rings.items()):
            try:
                drawn = as_bytes(draws[name](BATCH, ring.size, seed + 10_000_000 * i + at, device))
            except torch.cuda.OutOfMemoryError:
                torch.cuda.empty_cache()
                continue
            ring.put({key: value.cpu().numpy() for key, value in drawn.items()})
        at += BATCH
    os._exit(0)


class Store:
    """The latest pictures of one renderer on a GPU."""

    def __init__(self, rings, room, device):
        self.rings, self.room, self.device = rings, room, device
        self.read = [0] * len(rings)
        self.filled = 0
        self.kept = {name: torch.zeros((room, *shape), dtype=torch.uint8, device=device) for name, shape in shapes(rings[0].size).items()}

    def refresh(self, most=64):
        """Takes over what was drawn since; at most so many a ring, the oldest first."""
        for i, ring in enumerate(self.rings):
            written = int(ring.written[0])
            # What a drawing process may be writing over just now is left alone.
            self.read[i] = max(self.read[i], written - ring.slots + 2 * BATCH)
            count = min(most, written - self.read[i])
            if count <= 0:
                continue
            source = (self.read[i] + np.arange(count)) % ring.slots
            where = (self.filled + torch.arange(count, device=self.device)) % self.room
            for name, part in ring.parts.items():
                self.kept[name][where] = torch.from_numpy(part[source]).to(self.device)
            self.read[i] += count
            self.filled += count

    def some(self, count, generator):
        i = torch.randint(0, min(self.filled, self.room), (count,), device=self.device, generator=generator)
        batch = {name: self.kept[name][i].float() / 255 for name in ("image", "bar", "maps")}
        labels = self.kept["labels"][i].float()
        return {**batch, "present": labels[:, :FINDINGS], "kind": labels[:, FINDINGS]}
