"""
Trains the reader: a final one on all renderers, and for each renderer one a seed that never sees it. One command:
    python3 train.py --out DIR --gpus 4 --minutes 18
What it needs and how long it takes: README.md.
"""
import argparse
import importlib
import json
import math
import os
import sys
import time
import traceback

import numpy as np
import torch
import torch.nn.functional as F

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [HERE, os.path.join(HERE, "renderers")]
from examine import examined, summary  # noqa: E402
from network import Reader  # noqa: E402
from pool import Ring, Store, keep_drawing  # noqa: E402
from views import training_view  # noqa: E402

RENDERERS = ["bulk", "geometry", "textures"]


def loss_of(model, view):
    image, targets, wanted, unsure, kind = view
    with torch.autocast("cuda" if image.is_cuda else "cpu", dtype=torch.bfloat16, enabled=image.is_cuda):
        maps, answers = model(image.contiguous(memory_format=torch.channels_last))
    maps, answers = maps.float(), answers.float()
    bar, found = maps[:, :1], maps[:, 1:]
    bar_loss = F.binary_cross_entropy_with_logits(bar, targets[:, :1])
    p = torch.sigmoid(bar)
    bar_loss = bar_loss + 1 - ((2 * (p * targets[:, :1]).sum((1, 2, 3)) + 100) / ((p + targets[:, :1]).sum((1, 2, 3)) + 100)).mean()
    weight = (~unsure).float()
    t = targets[:, 1:]
    pixel = F.binary_cross_entropy_with_logits(found, t, reduction="none") * (1 + 4 * t)
    pixel = (pixel.mean((2, 3)) * weight).sum() / weight.sum() * 6
    q = torch.sigmoid(found)
    overlap = 1 - (2 * (q * t).sum((2, 3)) + 20) / ((q + t).sum((2, 3)) + 20)
    overlap = (overlap * wanted).sum() / wanted.sum().clamp(min=1) * 0.5
    answer = F.binary_cross_entropy_with_logits(answers[:, :16], wanted, reduction="none")
    answer = (answer * weight).sum() / weight.sum()
    nothing = F.binary_cross_entropy_with_logits(answers[:, 16], kind)
    return bar_loss + pixel + overlap + 6 * answer + 0.5 * nothing, torch.stack([answer, overlap, bar_loss]).detach()


class Learner:
    def __init__(self, left_out, seed, device, batch, compile_it):
        torch.manual_seed(seed)
        self.left_out, self.seed, self.batch, self.seen, self.steps = left_out, seed, batch, 0, 0
        self.names = [name for name in RENDERERS if name != left_out]
        self.label = f"without-{left_out}-{seed}" if left_out else f"final-{seed}"
        self.model = Reader().to(device, memory_format=torch.channels_last)
        self.mean = Reader().to(device)
        self.mean.load_state_dict(self.model.state_dict())
        self.fast = torch.compile(self.model, dynamic=False) if compile_it else self.model
        plain = [p for p in self.model.parameters() if p.ndim < 2]
        heavy = [p for p in self.model.parameters() if p.ndim >= 2]
        self.optimizer = torch.optim.AdamW([{"params": heavy, "weight_decay": 0.02}, {"params": plain, "weight_decay": 0}], lr=1e-3)
        self.generator = torch.Generator(device=device)
        self.generator.manual_seed(seed)
        self.log = torch.zeros(3)

    def step(self, stores, rate):
        share = self.batch // len(self.names)
        parts = [stores[name].some(share, self.generator) for name in self.names]
        batch = {key: torch.cat([part[key] for part in parts]) for key in parts[0]}
        view = training_view(batch, self.generator, whole=self.steps % 4 == 3)
        for group in self.optimizer.param_groups:
            group["lr"] = rate
        self.optimizer.zero_grad(set_to_none=True)
        try:
            loss, log = loss_of(self.fast, view)
        except Exception:
            if self.fast is self.model:
                raise
            traceback.print_exc()
            print(self.label, "goes on uncompiled", flush=True)
            self.fast = self.model
            loss, log = loss_of(self.fast, view)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(self.model.parameters(), 2.0)
        self.optimizer.step()
        self.steps += 1
        self.seen += share * len(self.names)
        self.log = log if self.steps == 1 else 0.98 * self.log + 0.02 * log
        keep = min(0.9985, 1 - 1 / (1 + self.steps / 8))
        with torch.no_grad():
            own, mean = self.model.state_dict(), self.mean.state_dict()
            floats = [k for k in mean if mean[k].dtype.is_floating_point]
            torch._foreach_mul_([mean[k] for k in floats], keep)
            torch._foreach_add_([mean[k] for k in floats], [own[k] for k in floats], alpha=1 - keep)

    def save(self, out):
        half = {k: v.half() if v.dtype == torch.float32 else v for k, v in self.mean.state_dict().items()}
        torch.save({"mean": half, "seen": self.seen, "steps": self.steps}, f"{out}/{self.label}.tmp")
        os.replace(f"{out}/{self.label}.tmp", f"{out}/{self.label}.pt")


def learn(who, rings, device, begin, a):
    """Trains some readers by turns on one GPU until the time is up, then examines them."""
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
    torch.set_num_threads(2)
    device = torch.device(device)
    learners = [Learner(left_out, seed, device, a.batch, a.compile and left_out is None) for left_out, seed in who]
    names = sorted({name for learner in learners for name in learner.names})
    stores = {name: Store(rings[name], a.room, device) for name in names}
    while min(store.filled for store in stores.values()) < a.batch:
        for store in stores.values():
            store.refresh()
        time.sleep(0.1)
    start, told, saved = time.time(), time.time(), time.time()
    end = begin + 60 * a.minutes
    while time.time() < end:
        progress = (time.time() - start) / (end - start)
        rate = a.rate * (0.01 + 0.99 * 0.5 * (1 + math.cos(math.pi * min(1.0, progress))))
        for learner in learners:
            learner.model.train()
            learner.step(stores, rate * min(1.0, (learner.steps + 1) / 300))
        for store in stores.values():
            store.refresh()
        if time.time() - told > 25:
            told = time.time()
            logs = "; ".join(f"{x.label} {x.seen} {[round(float(v), 4) for v in x.log]}" for x in learners)
            print(f"{told - begin:.0f}s {device} filled {[s.filled for s in stores.values()]} {logs}", flush=True)
        if time.time() - saved > 280:
            saved = time.time()
            for learner in learners:
                learner.save(a.out)
            if a.watch:
                examine(learners, device, a.watch, a, "so far")
    for store in stores.values():
        store.kept = {}
    if device.type == "cuda":
        torch.cuda.empty_cache()
    for learner in learners:
        learner.save(a.out)
    examine(learners, device, a.examine, a, "at the end", keep=True)
    print(device, "done", f"{time.time() - begin:.0f}s", flush=True)
    os._exit(0)


def examine(learners, device, count, a, when, keep=False):
    asked = [(name, [x for x in learners if x.left_out in (None, name)]) for name in RENDERERS]
    for name, those in asked:
        if not those:
            continue
        found = examined([x.mean for x in those], importlib.import_module(name).draw, count, 777_000_000, device, size=a.size)
        for learner, rows in zip(those, found):
            told = {"label": learner.label, "asked": name, "seen": learner.seen, **summary(rows)}
            print(when, json.dumps(told), flush=True)
            if keep:
                np.savez_compressed(f"{a.out}/{learner.label}-on-{name}.npz", **{k: v.astype(np.float16) for k, v in rows.items()})
                with open(f"{a.out}/figures.jsonl", "a") as file:
                    file.write(json.dumps(told) + "\n")


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument("--out", required=True)
    ask.add_argument("--gpus", type=int, default=1)
    ask.add_argument("--minutes", type=float, default=18)
    ask.add_argument("--seeds", nargs="+", type=int, default=[1, 2, 3])
    ask.add_argument("--batch", type=int, default=96)
    ask.add_argument("--room", type=int, default=9000, help="pictures of each renderer kept on each GPU")
    ask.add_argument("--rate", type=float, default=1.5e-3)
    ask.add_argument("--examine", type=int, default=2048)
    ask.add_argument("--watch", type=int, default=0, help="pictures to examine on the way")
    ask.add_argument("--drawers", type=int, default=2, help="processes that draw")
    ask.add_argument("--compile", action="store_true")
    ask.add_argument("--size", nargs=2, type=int, default=[384, 512])
    ask.add_argument("--device", default="cuda")
    a = ask.parse_args()
    a.size = tuple(a.size)
    os.makedirs(a.out, exist_ok=True)
    begin = time.time()
    left_out = [(name, seed) for seed in a.seeds for name in RENDERERS]
    last = a.gpus - 1
    # The final reader has the first GPU to itself, those that draw the last.
    teams = [[(None, a.seeds[0])]] + [left_out[i :: max(1, a.gpus - 2)] for i in range(max(1, a.gpus - 2))]
    where = lambda gpu: f"cuda:{min(gpu, last)}" if a.device == "cuda" else a.device
    rings = {name: [Ring(size=a.size) for _ in range(a.drawers)] for name in RENDERERS}
    end = begin + 60 * a.minutes
    drawing = []
    children = []
    for k in range(a.drawers):
        child = os.fork()
        if child == 0:
            keep_drawing({name: rings[name][k] for name in RENDERERS}, where(last), 1_000_000 * (k + 1), end)
        drawing.append(child)
    for gpu, team in enumerate(teams):
        child = os.fork()
        if child == 0:
            try:
                learn(team, rings, where(gpu), begin, a)
            except BaseException:
                traceback.print_exc()
                os._exit(1)
        children.append(child)
    failed = [child for child in children if os.waitpid(child, 0)[1] != 0]
    for child in drawing:
        os.waitpid(child, 0)
    drawn = {name: int(sum(int(ring.written[0]) for ring in those)) for name, those in rings.items()}
    print("drawn", drawn, "failed", len(failed), f"{time.time() - begin:.0f}s", flush=True)
    with open(f"{a.out}/drawn.json", "w") as file:
        json.dump({"drawn": drawn, "seconds": time.time() - begin}, file)


if __name__ == "__main__":
    main()
