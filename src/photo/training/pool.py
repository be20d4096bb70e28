"""Pictures drawn in threads beside the learning, and kept on the same GPU."""
import importlib
import threading
import time
import traceback

import torch
import torch.nn.functional as F

SIZE = (384, 512)
FINDINGS = 16
BATCH = 64
# Maps kept of one picture: no renderer draws more findings into one.
PARTS = 4


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


class Drawing:
    """One thread a renderer draws into its store, none far ahead of the others."""

    def __init__(self, stores, device, seed, ahead, clean, count=BATCH, shares=None):
        self.stores, self.device, self.seed, self.ahead, self.clean, self.count, self.over = stores, device, seed, ahead, clean, count, False
        self.shares = {name: (shares or {}).get(name, 1.0) for name in stores}
        self.threads = [threading.Thread(target=self.keep_drawing, args=(i, name), daemon=True) for i, name in enumerate(stores)]
        for thread in self.threads:
            thread.start()

    def keep_drawing(self, i, name):
        draw, store, at = importlib.import_module(name).draw, self.stores[name], 0
        size = tuple(store.kept["image"].shape[2:])
        if self.device.type == "cuda":
            torch.cuda.set_stream(torch.cuda.Stream(priority=0))
        while not self.over:
            least = min(other.filled / self.shares[one] for one, other in self.stores.items())
            if store.filled > least * self.shares[name] * self.ahead + 4 * self.count:
                time.sleep(0.02)
                continue
            try:
                with torch.no_grad():
                    store.put(as_bytes(draw(self.count, size, self.seed + 10_000_000 * i + at, str(self.device), self.clean)))
            except torch.cuda.OutOfMemoryError:
                torch.cuda.empty_cache()
            except Exception:
                traceback.print_exc()
                time.sleep(1)
            at += self.count

    def stop(self):
        self.over = True
        for thread in self.threads:
            thread.join()
