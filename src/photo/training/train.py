"""
Trains the reader on one GPU, drawing beside the learning. One command:
    python3 train.py --out DIR --minutes 24 --start ../model/reader.onnx --watch DIR
What it needs and how long it takes: README.md.
"""
import argparse
import importlib
import json
import math
import os
import sys
import time

import torch
import torch.nn.functional as F

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [HERE, os.path.join(HERE, "renderers")]
from examine import examined, summary  # noqa: E402
from network import Reader  # noqa: E402
from pool import Drawing, Store  # noqa: E402
from start import started  # noqa: E402
from views import training_view  # noqa: E402
from watch import Watched  # noqa: E402

RENDERERS = ["bulk", "geometry", "textures"]
# Draws no soap at all: a smaller share of each batch.
NO_SOAP = "things"


def loss_of(model, view):
    image, targets, wanted, unsure, kind, poor, told = view
    with torch.autocast("cuda" if image.is_cuda else "cpu", dtype=torch.bfloat16, enabled=image.is_cuda):
        maps, answers = model(image.contiguous(memory_format=torch.channels_last))
    maps, answers = maps.float(), answers.float()
    clear = 1 - poor
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
    there = wanted * clear.view(-1, 1)
    overlap = (overlap * there).sum() / there.sum().clamp(min=1) * 0.5
    answer = F.binary_cross_entropy_with_logits(answers[:, :16], wanted, reduction="none")
    answer = (answer * weight).sum() / weight.sum()
    nothing = F.binary_cross_entropy_with_logits(answers[:, 16], kind, reduction="none")
    nothing = (nothing * clear).sum() / clear.sum().clamp(min=1)
    unreadable = F.binary_cross_entropy_with_logits(answers[:, 17], poor, reduction="none")
    unreadable = (unreadable * told).sum() / told.sum().clamp(min=1)
    return bar_loss + pixel + overlap + 6 * answer + nothing + 0.5 * unreadable, torch.stack([answer, overlap, bar_loss, nothing, unreadable]).detach()


class Learner:
    def __init__(self, label, model, seed, device, batch):
        self.label, self.batch, self.seen, self.steps = label, batch, 0, 0
        self.model = model.to(device, memory_format=torch.channels_last)
        self.mean = Reader().to(device)
        self.mean.load_state_dict(self.model.state_dict())
        plain = [p for p in self.model.parameters() if p.ndim < 2]
        heavy = [p for p in self.model.parameters() if p.ndim >= 2]
        self.optimizer = torch.optim.AdamW([{"params": heavy, "weight_decay": 0.02}, {"params": plain, "weight_decay": 0}], lr=1e-3, fused=device.type == "cuda")
        own, mean = self.model.state_dict(), self.mean.state_dict()
        floats = [k for k in mean if mean[k].dtype.is_floating_point]
        self.own, self.kept = [own[k] for k in floats], [mean[k] for k in floats]
        self.generator = torch.Generator(device=device)
        self.generator.manual_seed(seed)
        self.log = None

    def view(self, stores, whole):
        names = [name for name in stores if name != NO_SOAP]
        without = self.batch // 16 if NO_SOAP in stores else 0
        share = (self.batch - without) // len(names)
        counts = {**{name: share for name in names}, **({NO_SOAP: self.batch - share * len(names)} if without else {})}
        parts = [stores[name].some(count, self.generator) for name, count in counts.items()]
        mixed = torch.randperm(sum(counts.values()), device=parts[0]["image"].device, generator=self.generator)
        batch = {key: torch.cat([part[key] for part in parts])[mixed] for key in parts[0]}
        grounds = torch.cat([stores[name].grounds(count, self.generator) for name, count in counts.items()])
        grounds = grounds[torch.randperm(len(grounds), device=grounds.device, generator=self.generator)]
        return training_view(batch, grounds, self.generator, whole)

    def step(self, stores, rate):
        with torch.no_grad():
            view = self.view(stores, whole=self.steps % 4 == 3)
        for group in self.optimizer.param_groups:
            group["lr"] = rate
        self.optimizer.zero_grad(set_to_none=True)
        loss, log = loss_of(self.model, view)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(self.model.parameters(), 2.0)
        self.optimizer.step()
        self.steps += 1
        self.seen += len(view[0])
        self.log = log if self.log is None else 0.98 * self.log + 0.02 * log
        if self.steps % 4 == 0:
            keep = min(0.998, 1 - 1 / (1 + self.steps / 8)) ** 4
            with torch.no_grad():
                torch._foreach_mul_(self.kept, keep)
                torch._foreach_add_(self.kept, self.own, alpha=1 - keep)

    def save(self, out, name=None):
        half = {k: v.half() if v.dtype == torch.float32 else v for k, v in self.mean.state_dict().items()}
        torch.save({"mean": half, "seen": self.seen, "steps": self.steps}, f"{out}/{self.label}.tmp")
        os.replace(f"{out}/{self.label}.tmp", f"{out}/{name or self.label}.pt")


def rate_at(progress, highest):
    """Rises for a fiftieth of the time, then falls to nought along half a cosine."""
    return highest * min(1.0, progress * 50 + 0.02) * 0.5 * (1 + math.cos(math.pi * min(1.0, progress)))


def learn(a, begin):
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
    device = torch.device(a.device)
    if device.type == "cuda":
        # What is learned goes before what is drawn.
        torch.cuda.set_stream(torch.cuda.Stream(priority=-1))
    sys.setswitchinterval(0.001)
    names = [name for name in RENDERERS if name != a.left_out]
    stores = {name: Store(a.room, device, a.size) for name in names}
    stores[NO_SOAP] = Store(a.room // 4, device, a.size)
    torch.manual_seed(a.seed)
    drawing = Drawing(stores, device, a.seed * 1_000_000, a.ahead, a.clean, a.draws, {NO_SOAP: 0.4})
    while min(stores[name].filled for name in names) < a.first:
        time.sleep(0.1)
    label = f"without-{a.left_out}-{a.seed}" if a.left_out else f"final-{a.seed}"
    learner = Learner(label, Reader(), a.seed, device, a.batch)
    if a.start:
        with torch.no_grad():
            view = learner.view(stores, whole=False)
        started(learner.model, a.start, view[0])
        learner.mean.load_state_dict(learner.model.state_dict())
    watched = Watched(a.watch, device) if a.watch else None
    start = told = watching = time.time()
    end = begin + 60 * a.minutes
    if watched:
        print("before", json.dumps(watched.figures(learner.mean)), flush=True)
    while time.time() < end:
        learner.model.train()
        learner.step(stores, rate_at((time.time() - start) / (end - start), a.rate))
        if time.time() - told > 15:
            told = time.time()
            print(f"{told - begin:.0f}s {learner.seen} drawn {[s.filled for s in stores.values()]} {[round(float(v), 4) for v in learner.log]}", flush=True)
        if time.time() - watching > a.every:
            watching = time.time()
            learner.save(a.out)
            if watched:
                print("so far", learner.seen, json.dumps(watched.figures(learner.mean)), flush=True)
    drawing.stop()
    learner.save(a.out)
    if watched:
        print("at the end", learner.seen, json.dumps(watched.figures(learner.mean)), flush=True)
    drawn = {name: store.filled for name, store in stores.items()}
    stores.clear()
    with open(f"{a.out}/figures.jsonl", "a") as file:
        file.write(json.dumps({"label": label, "seen": learner.seen, "steps": learner.steps, "drawn": drawn, "seconds": time.time() - begin}) + "\n")
        for name in RENDERERS if a.examine else []:
            found = examined([learner.mean], importlib.import_module(name).draw, a.examine, 777_000_000, device, size=a.size)
            line = json.dumps({"label": label, "asked": name, "seen": learner.seen, **summary(found[0])})
            print(line, flush=True)
            file.write(line + "\n")
            file.flush()
    print("done", f"{time.time() - begin:.0f}s", flush=True)
    os._exit(0)


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument("--out", required=True)
    ask.add_argument("--minutes", type=float, default=24)
    ask.add_argument("--start", help="a reader to go on from: an ONNX file, or a checkpoint")
    ask.add_argument("--left-out", choices=RENDERERS)
    ask.add_argument("--seed", type=int, default=1)
    ask.add_argument("--batch", type=int, default=144)
    ask.add_argument("--room", type=int, default=14000, help="pictures of each renderer kept on the GPU: 0.84 MB each")
    ask.add_argument("--first", type=int, default=1024, help="pictures of each before learning begins")
    ask.add_argument("--ahead", type=float, default=2.0, help="how many times more a fast renderer may draw than a slow one")
    ask.add_argument("--draws", type=int, default=64, help="pictures drawn at a time")
    ask.add_argument("--clean", type=float, default=0.45)
    ask.add_argument("--rate", type=float, default=1.2e-3)
    ask.add_argument("--examine", type=int, default=1024)
    ask.add_argument("--watch", help="a folder with a labelled set that is never learned from: see watch.py")
    ask.add_argument("--every", type=float, default=120, help="seconds between saving and watching")
    ask.add_argument("--size", nargs=2, type=int, default=[384, 512])
    ask.add_argument("--device", default="cuda")
    a = ask.parse_args()
    a.size = tuple(a.size)
    os.makedirs(a.out, exist_ok=True)
    learn(a, time.time())


if __name__ == "__main__":
    main()
