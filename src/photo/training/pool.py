"""Pictures that other processes draw beside the learning (drawing.py), kept on the GPU that learns from them."""
import os
import pickle
import threading
import time
import traceback

import torch
import torch.nn.functional as F

from grown_on import with_flaws_grown
from laid import laid
from views import boxes

SIZE = (480, 640)
FINDINGS = 16
# Maps kept of one picture: no renderer draws more findings into one.
PARTS = 4
# Part of the pictures that have paper and the like laid in them. Once, where they are kept: in every view it would cost a third of the time.
LAID = 0.4
# Part of the clean ones whose bars are made as flat and even as the plainest are: no renderer draws many such, and beside paper they passed for cards.
EVEN = 0.25


def as_bytes(d):
    """What `draw` returns, as bytes; the bar and the maps that are not empty at half size, labels with `kind` last."""
    whole = lambda x: (torch.nan_to_num(x.float()).clamp(0, 1) * 255 + 0.5).to(torch.uint8)
    maps = F.avg_pool2d(d["maps"].float(), 2)
    which = maps.flatten(2).sum(2).topk(PARTS, 1).indices
    parts = maps.gather(1, which.view(*which.shape, 1, 1).expand(-1, -1, *maps.shape[2:]))
    return {"image": whole(d["image"]), "bar": whole(F.avg_pool2d(d["bar"].float(), 2)), "parts": whole(parts), "which": which.to(torch.uint8),
            "labels": torch.cat([d["present"], d["kind"].view(-1, 1).float()], 1).to(torch.uint8)}


class Store:
    """The latest pictures of one renderer on a GPU."""

    def __init__(self, room, device, size=SIZE):
        h, w = size
        self.room, self.device, self.filled = room, device, 0
        shapes = {"image": (3, h, w), "bar": (1, h // 2, w // 2), "parts": (PARTS, h // 2, w // 2), "which": (PARTS,), "labels": (FINDINGS + 1,)}
        self.kept = {name: torch.zeros((room, *shape), dtype=torch.uint8, device=device) for name, shape in shapes.items()}

    def put(self, drawn):
        count = len(drawn["image"])
        where = (self.filled + torch.arange(count, device=self.device)) % self.room
        for name, part in drawn.items():
            self.kept[name][where] = part
        if self.device.type == "cuda":
            torch.cuda.current_stream().synchronize()
        self.filled += count

    def some(self, count, generator):
        i = torch.randint(0, min(self.filled, self.room), (count,), device=self.device, generator=generator)
        batch = {name: self.kept[name][i].float() / 255 for name in ("image", "bar", "parts")}
        labels = self.kept["labels"][i].float()
        return {**batch, "which": self.kept["which"][i].long(), "present": labels[:, :FINDINGS], "kind": labels[:, FINDINGS]}

    def grounds(self, count, generator):
        """Pictures without soap, as they come; none while there are none."""
        kinds = self.kept["labels"][: min(self.filled, self.room), FINDINGS].float()
        i = torch.multinomial(kinds + 1e-6, count, replacement=True, generator=generator)
        return self.kept["image"][i].float() / 255


def with_things_laid(batch, generator):
    """The batch with sheets, cloths and plates beside or under the bars of some of its pictures (laid.py)."""
    n = len(batch["image"])
    some = torch.rand(n, device=generator.device, generator=generator) < LAID
    if not some.any():
        return batch
    image, bar = batch["image"][some].float() / 255, batch["bar"][some].float() / 255
    middle, half = boxes(bar)
    # Where there is no bar, its square is the whole picture, and what lies there is to be no larger than beside one.
    half = torch.where((bar.flatten(1).amax(1) > 0.5).view(-1, 1), half * 2, half)
    seen = laid(image, bar, middle * 2, half, generator)
    kept = batch["image"].clone()
    kept[some] = (torch.nan_to_num(seen).clamp(0, 1) * 255 + 0.5).to(torch.uint8)
    return {**batch, "image": kept}


def with_even_bars(batch, generator):
    """The batch with the bars of some of its clean pictures smoothed to one colour and, partly, the light that lies on it."""
    labels = batch["labels"]
    clean = (labels[:, :FINDINGS].sum(1) == 0) & (labels[:, FINDINGS] == 0)
    some = clean & (torch.rand(len(labels), device=generator.device, generator=generator) < EVEN)
    if not some.any():
        return batch
    image, bar = batch["image"][some].float() / 255, batch["bar"][some].float() / 255
    chance = lambda most: most * torch.rand((len(image), 1, 1, 1), device=image.device, generator=generator)
    mask = F.interpolate(bar, scale_factor=2.0, mode="bilinear", align_corners=False)
    small, part = F.avg_pool2d(image * mask, 8), F.avg_pool2d(mask, 8)
    spread = lambda x: F.avg_pool2d(F.avg_pool2d(x, 13, 1, 6), 13, 1, 6)
    soft = spread(small) / spread(part).clamp(min=1e-3)
    mean = small.sum((2, 3), keepdim=True) / part.sum((2, 3), keepdim=True).clamp(min=1e-3)
    soft = F.interpolate(soft, image.shape[2:], mode="bilinear", align_corners=False)
    # Of the light only: colours that run into each other would look like one that bled.
    light = soft.mean(1, keepdim=True) / mean.mean(1, keepdim=True).clamp(min=1e-3) - 1
    even = mean * (1 + light * chance(0.5)) + (image - soft) * chance(0.06) + torch.randn(image.shape, device=image.device, generator=generator) * chance(0.012)
    kept = batch["image"].clone()
    kept[some] = ((image + (even - image) * mask).clamp(0, 1) * 255 + 0.5).to(torch.uint8)
    return {**batch, "image": kept}


class Arriving:
    """
    A thread that takes what is drawn into the stores: `folder` holds a folder of batches for each. Of those drawn on GPUs
    (`even`) none gets far ahead of the others, whose processes wait in their turn for what is left lying.
    """

    def __init__(self, stores, folder, even, ahead, fresh=1000.0, seed=1):
        self.stores, self.folder, self.even, self.ahead, self.fresh, self.over = stores, folder, even, ahead, fresh, False
        self.generator = torch.Generator(device=stores[next(iter(stores))].device)
        self.generator.manual_seed(seed)
        for name in stores:
            os.makedirs(f"{folder}/{name}", exist_ok=True)
        self.thread = threading.Thread(target=self.keep_taking, daemon=True)
        self.thread.start()

    def keep_taking(self):
        if self.stores[next(iter(self.stores))].device.type == "cuda":
            device = self.stores[next(iter(self.stores))].device
            torch.cuda.set_device(device)
            torch.cuda.set_stream(torch.cuda.Stream())
        begin, first = time.time(), 1500 * len(self.stores)
        while not self.over:
            taken = 0
            # Drawing slows learning down where both use one device: after a good many no more than are asked for.
            enough = sum(store.filled for store in self.stores.values()) > max(first, self.fresh * (time.time() - begin))
            # The second least: one that draws nothing does not hold up the others.
            least = sorted(self.stores[name].filled / share for name, share in self.even.items())[:2]
            for name, store in self.stores.items():
                if name in self.even and (enough or store.filled > least[-1] * self.even[name] * self.ahead + 256):
                    continue
                taken += self.take(name, store)
            if not taken:
                time.sleep(0.02)

    def take(self, name, store):
        for entry in sorted(os.listdir(f"{self.folder}/{name}")):
            if entry.endswith(".batch"):
                path = f"{self.folder}/{name}/{entry}"
                try:
                    with open(path, "rb") as file:
                        batch = pickle.load(file)
                    batch = {key: torch.from_numpy(part).to(store.device) for key, part in batch.items()}
                    batch = with_flaws_grown(with_even_bars(batch, self.generator), self.generator, FINDINGS)
                    store.put(with_things_laid(batch, self.generator))
                except Exception:
                    traceback.print_exc()
                os.remove(path)
                return 1
        return 0

    def stop(self):
        self.over = True
        self.thread.join()
