"""
One pool of pictures of all renderers on the GPU that learns from it, and of each a part set aside that nobody learns from
(left_out.py). Sets by other hands are packed for it, with their masks, by  python3 aside.py FOLDER TARGET
"""
import json
import os
import pickle
import signal
import sys
import threading
import time
import traceback

import numpy as np
import torch

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [HERE, os.path.join(HERE, "renderers")]
from everything import CLEAN, started  # noqa: E402
from pool import FINDINGS, Store, with_even_bars, with_things_laid  # noqa: E402
from train import NO_SOAP, ON_PROCESSOR, SHARES  # noqa: E402
from watch import IDS  # noqa: E402

# Sides of the sets by other hands, as large as what is drawn here.
LONGEST = 640
# Processes that draw at once, the slow ones several times; when a renderer has enough, the one that is furthest behind is given its place.
FIRST = [*(name for name in SHARES if name not in ON_PROCESSOR), "draw_curd", "draw_pane", "draw_grown", "draw_press", "draw_bench",
         "posed", "posed", "marched", "marched", "faced", "cured", "traced", "solids", "boxes"]
MOST = 4


class Drawn:
    """Pictures as they come: the first of each renderer are set aside as they are, the others go to its store as pool.py changes them, but without grown flaws, which are one renderer's."""

    def __init__(self, a, device):
        self.a, self.device, self.over, self.running, self.asked = a, device, False, [], 0
        rooms = {name: a.room // 3 if name == NO_SOAP else a.room for name in SHARES}
        self.stores = {name: Store(room, device, tuple(a.size)) for name, room in rooms.items()}
        self.aside = {name: [] for name in SHARES}
        self.wanted = {name: 0 if name == NO_SOAP else a.aside if name in a.left_out else a.others for name in SHARES}
        self.generator = torch.Generator(device=device)
        self.generator.manual_seed(1)
        for name in FIRST:
            self.draw(name)
        self.thread = threading.Thread(target=self.keep_taking, daemon=True)
        self.thread.start()

    def draw(self, name):
        self.asked += 1
        command = [f"{HERE}/drawing.py", name, self.a.pictures, "--seed", str(100 + self.asked), "--count", str(self.a.count), "--clean", str(CLEAN.get(name, 0.4)),
                   "--size", *map(str, self.a.size), *([] if name in ON_PROCESSOR else ["--device", self.a.device])]
        os.makedirs(f"{self.a.pictures}/0/{name}", exist_ok=True)
        pid = started(command, f"{self.a.out}/draw-{name}.log", PYTHONHASHSEED=str(self.asked))
        # More of them than cores: what takes their pictures comes first.
        os.setpriority(os.PRIO_PROCESS, pid, 10)
        self.running.append((name, pid))

    def part(self, name):
        """How much of what is wanted of a renderer is there."""
        return (sum(map(len, (b["labels"] for b in self.aside[name]))) + self.stores[name].filled) / (self.wanted[name] + self.stores[name].room)

    def keep_taking(self):
        if self.device.type == "cuda":
            torch.cuda.set_device(self.device)
            torch.cuda.set_stream(torch.cuda.Stream())
        while not self.over:
            if not sum(self.take(name) for name in SHARES if self.part(name) < 1):
                time.sleep(0.02)
            for name, pid in [(name, pid) for name, pid in self.running if self.part(name) >= 1]:
                self.end(name, pid)
                behind = sorted((one for one in SHARES if self.part(one) < 1 and [n for n, _ in self.running].count(one) < MOST), key=self.part)
                if behind and time.time() < self.a.begin + self.a.drawing - 40:
                    self.draw(behind[0])

    def end(self, name, pid):
        self.running.remove((name, pid))
        try:
            os.killpg(pid, signal.SIGKILL)
        except ProcessLookupError:
            pass

    def take(self, name):
        folder = f"{self.a.pictures}/0/{name}"
        for entry in sorted(one for one in os.listdir(folder) if one.endswith(".batch"))[:1]:
            try:
                with open(f"{folder}/{entry}", "rb") as file:
                    batch = pickle.load(file)
                if sum(len(b["labels"]) for b in self.aside[name]) < self.wanted[name]:
                    self.aside[name].append(batch)
                else:
                    batch = {key: torch.from_numpy(part).to(self.device) for key, part in batch.items()}
                    self.stores[name].put(with_things_laid(with_even_bars(batch, self.generator), self.generator))
            except Exception:
                traceback.print_exc()
            os.remove(f"{folder}/{entry}")
            return 1
        return 0

    def wait(self):
        """Until there is enough of all, or no time left; then nothing draws any more."""
        while time.time() < self.a.begin + self.a.drawing and min(map(self.part, SHARES)) < 1:
            time.sleep(0.2)
        self.over = True
        self.thread.join()
        for name, pid in list(self.running):
            self.end(name, pid)


def sets_of(drawn, folder):
    """What is read: of each renderer what was set aside, and the sets of `folder`. Groups of one size: places, pictures, masks of bars at half the size."""
    sets = {}
    for name, batches in drawn.aside.items():
        if batches:
            whole = {key: np.concatenate([batch[key] for batch in batches])[: drawn.wanted[name]] for key in ("image", "bar", "labels")}
            groups = [(np.arange(len(whole["labels"])), torch.from_numpy(whole["image"]), torch.from_numpy(whole["bar"]))]
            sets[name] = {"present": whole["labels"][:, :FINDINGS], "kind": whole["labels"][:, FINDINGS], "groups": groups}
    for name in sorted(os.listdir(folder)) if folder else ():
        sets[name] = of_folder(f"{folder}/{name}")
    return sets


def of_folder(folder):
    from PIL import Image
    groups = {}
    labels = [label for label in json.load(open(f"{folder}/labels.json")) if not label.get("poor")]
    for i, label in enumerate(labels):
        picture = np.asarray(Image.open(f"{folder}/{label['file']}").convert("RGB"))
        h, w = picture.shape[:2]
        bar = Image.open(f"{folder}/{label['bar']}").convert("L").resize((w // 2, h // 2)) if label.get("bar") else Image.new("L", (w // 2, h // 2))
        groups.setdefault(picture.shape, []).append((i, picture.transpose(2, 0, 1), np.asarray(bar)[None]))
    return {"present": np.array([[int(id in label["present"]) for id in IDS] for label in labels], np.uint8),
            "kind": np.array([int(not label.get("soap", True)) for label in labels], np.uint8),
            "groups": [(np.array([i for i, *_ in those]), *(torch.from_numpy(np.stack([one[k] for one in those])) for k in (1, 2))) for those in groups.values()]}


def pack(folder, target):
    from PIL import Image
    os.makedirs(target, exist_ok=True)
    labels = json.load(open(f"{folder}/labels.json"))
    for label in labels:
        picture = Image.open(f"{folder}/{label['file']}").convert("RGB")
        scale = min(1, LONGEST / max(picture.size))
        w, h = round(picture.width * scale), round(picture.height * scale)
        picture.resize((w, h), Image.LANCZOS).save(f"{target}/{label['file']}", "WEBP", quality=80)
        if label.get("bar"):
            Image.open(f"{folder}/{label['bar']}").convert("L").resize((w // 2, h // 2), Image.BOX).point(lambda v: 255 * (v > 127)).convert("1").save(f"{target}/{label['bar']}")
    json.dump(labels, open(f"{target}/labels.json", "w"))


if __name__ == "__main__":
    pack(*sys.argv[1:3])
