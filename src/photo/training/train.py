"""
Trains the reader. One command:  python3 train.py --out DIR --job final | left-out --renderer NAME --seeds 1 2 3
Needs a GPU; see README.md for how long it takes and what it needs.
"""
import argparse
import importlib
import json
import math
import os
import sys
import time

import numpy as np
import torch
import torch.nn.functional as F

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [HERE, os.path.join(HERE, "renderers")]
from network import Reader  # noqa: E402
from views import CLOSE, MARGIN, WHOLE, boxes, shrunk_square, training_view  # noqa: E402

RENDERERS = ["bulk", "geometry", "textures"]
SIZE = (384, 512)
DRAW = 32


class Store:
    """The latest drawn pictures of one renderer, kept on the GPU and used a few times each."""

    def __init__(self, name, room, device, seed):
        self.draw = importlib.import_module(name).draw
        self.name, self.room, self.device, self.seed = name, room, device, seed
        self.at = self.drawn = 0
        h, w = SIZE
        empty = lambda *shape: torch.zeros((room, *shape), dtype=torch.uint8, device=device)
        self.kept = {"image": empty(3, h, w), "bar": empty(1, h, w), "maps": empty(16, h // 2, w // 2)}
        self.present = torch.zeros((room, 16), device=device)
        self.kind = torch.zeros(room, device=device)

    @torch.no_grad()
    def refill(self, count=DRAW):
        d = self.draw(count, SIZE, self.seed + self.drawn, str(self.device))
        self.drawn += count
        where = (self.at + torch.arange(count, device=self.device)) % self.room
        as_bytes = lambda x: (torch.nan_to_num(x).clamp(0, 1) * 255 + 0.5).to(torch.uint8)
        self.kept["image"][where] = as_bytes(d["image"])
        self.kept["bar"][where] = as_bytes(d["bar"])
        self.kept["maps"][where] = as_bytes(F.avg_pool2d(d["maps"].float(), 2))
        self.present[where] = d["present"].float()
        self.kind[where] = d["kind"].float()
        self.at = (self.at + count) % self.room

    def some(self, count, generator):
        filled = min(self.drawn, self.room)
        i = torch.randint(0, filled, (count,), device=self.device, generator=generator)
        batch = {key: value[i].float() / 255 for key, value in self.kept.items()}
        return {**batch, "present": self.present[i], "kind": self.kind[i]}


def loss_of(model, view):
    image, targets, wanted, unsure, kind = view
    with torch.autocast("cuda" if image.is_cuda else "cpu", dtype=torch.bfloat16, enabled=image.is_cuda):
        maps, answers = model(image.contiguous(memory_format=torch.channels_last))
    bar, found = maps[:, :1], maps[:, 1:]
    bar_loss = F.binary_cross_entropy_with_logits(bar, targets[:, :1])
    p = torch.sigmoid(bar)
    bar_loss = bar_loss + 1 - (2 * (p * targets[:, :1]).sum((1, 2, 3)) + 100).div((p + targets[:, :1]).sum((1, 2, 3)) + 100).mean()
    weight = (~unsure).float()
    t = targets[:, 1:]
    pixel = F.binary_cross_entropy_with_logits(found, t, reduction="none") * (1 + 4 * t)
    pixel = (pixel.mean((2, 3)) * weight).sum() / weight.sum() * 6
    q = torch.sigmoid(found)
    overlap = 1 - (2 * (q * t).sum((2, 3)) + 20) / ((q + t).sum((2, 3)) + 20)
    overlap = (overlap * wanted).sum() / wanted.sum().clamp(min=1) * 0.5
    answer = F.binary_cross_entropy_with_logits(answers[:, :16], wanted, reduction="none")
    answer = (answer * weight).sum() / weight.sum() * 6
    nothing = F.binary_cross_entropy_with_logits(answers[:, 16], kind)
    return bar_loss + pixel + overlap + answer + 0.5 * nothing, answer.detach()


class Learner:
    def __init__(self, seed, names, device, batch):
        torch.manual_seed(seed)
        self.seed, self.names, self.batch, self.seen = seed, names, batch, 0
        self.model = Reader().to(device, memory_format=torch.channels_last)
        self.mean = Reader().to(device)
        self.mean.load_state_dict(self.model.state_dict())
        plain = [p for p in self.model.parameters() if p.ndim < 2]
        heavy = [p for p in self.model.parameters() if p.ndim >= 2]
        self.optimizer = torch.optim.AdamW([{"params": heavy, "weight_decay": 0.02}, {"params": plain, "weight_decay": 0}], lr=1e-3)
        self.generator = torch.Generator(device=device)
        self.generator.manual_seed(seed)
        self.steps = 0
        self.log = 0.0

    def step(self, stores, rate):
        share = self.batch // len(self.names)
        parts = [stores[name].some(share, self.generator) for name in self.names]
        batch = {key: torch.cat([part[key] for part in parts]) for key in parts[0]}
        view = training_view(batch, self.generator, whole=self.steps % 4 == 3)
        for group in self.optimizer.param_groups:
            group["lr"] = rate
        self.optimizer.zero_grad(set_to_none=True)
        loss, answer = loss_of(self.model, view)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(self.model.parameters(), 2.0)
        self.optimizer.step()
        self.steps += 1
        self.seen += self.batch
        self.log = 0.98 * self.log + 0.02 * answer if self.steps > 1 else answer
        keep = min(0.9985, 1 - 1 / (1 + self.steps / 8))
        with torch.no_grad():
            own, mean = self.model.state_dict(), self.mean.state_dict()
            floats = [k for k in mean if mean[k].dtype.is_floating_point]
            torch._foreach_mul_([mean[k] for k in floats], keep)
            torch._foreach_add_([mean[k] for k in floats], [own[k] for k in floats], alpha=1 - keep)


@torch.no_grad()
def read(model, image):
    """Both passes as the product runs them. Returns answers [n,17], overlap inputs: bar [n,1,h,w] at half, maps and box."""
    n, _, h, w = image.shape
    device = image.device
    middle = torch.tensor([w / 2, h / 2], device=device).repeat(n, 1)
    half = torch.full((n, 1), max(w, h) / 2, device=device)
    first, told = model(shrunk_square(image, middle, half, WHOLE))
    # Back from the square to the picture, at half of its size.
    grid_h, grid_w = h // 2, w // 2
    soap = F.interpolate(torch.sigmoid(first[:, :1]), (max(grid_h, grid_w),) * 2, mode="bilinear", align_corners=False)
    top, left = (soap.shape[2] - grid_h) // 2, (soap.shape[3] - grid_w) // 2
    soap = soap[:, :, top : top + grid_h, left : left + grid_w]
    middle, half = boxes(soap)
    middle, half = middle * 2, (half * 2 * MARGIN).clamp(min=16)
    maps, answers = model(square_at(image, middle, half))
    return torch.cat([answers[:, :16], told[:, 16:]], 1), soap, maps, middle, half


def square_at(image, middle, half):
    return shrunk_square(image, middle, half, CLOSE)


@torch.no_grad()
def examined(model, draw, count, seed, device, batch=32):
    """What the model says of fresh pictures, with the truth beside it."""
    model.eval()
    rows = {key: [] for key in ("answers", "present", "tricky", "kind", "overlap", "share", "seen_share")}
    for at in range(0, count, batch):
        d = draw(batch, SIZE, seed + at, str(device), 0.4)
        image = torch.nan_to_num(d["image"]).clamp(0, 1)
        image = ((image * 255 + 0.5).to(torch.uint8)).float() / 255
        answers, soap, maps, middle, half = read(model, image)
        truth = F.avg_pool2d(d["bar"], 2) > 0.5
        said = soap > 0.5
        overlap = (truth & said).flatten(1).sum(1) / (truth | said).flatten(1).sum(1).clamp(min=1)
        rows["answers"].append(answers)
        rows["present"].append(d["present"])
        rows["tricky"].append(d["tricky"])
        rows["kind"].append(d["kind"])
        rows["overlap"].append(overlap)
        rows["share"].append(d["maps"].float().flatten(2).sum(2) / d["bar"].flatten(1).sum(1, keepdim=True).clamp(min=1))
        probability = torch.sigmoid(maps)
        rows["seen_share"].append(probability[:, 1:].flatten(2).sum(2) / probability[:, :1].flatten(2).sum(2).clamp(min=1))
    return {key: torch.cat(value).float().cpu().numpy() for key, value in rows.items()}


def auc(score, truth):
    order = score.argsort()
    rank = np.empty(len(score))
    rank[order] = np.arange(1, len(score) + 1)
    positive = truth > 0.5
    p, q = positive.sum(), (~positive).sum()
    return float((rank[positive].sum() - p * (p + 1) / 2) / max(1, p * q)) if p and q else float("nan")


def summary(rows):
    soap = rows["kind"] == 0
    aucs = [auc(rows["answers"][soap, k], rows["present"][soap, k]) for k in range(16)]
    return {"bar": float((rows["overlap"][soap] > 0.7).mean()), "auc": [round(a, 4) for a in aucs], "mean_auc": float(np.nanmean(aucs)),
            "no_soap_auc": auc(rows["answers"][:, 16], rows["kind"])}


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument("--out", required=True)
    ask.add_argument("--job", choices=["final", "left-out"], required=True)
    ask.add_argument("--renderer", help="the one that is left out")
    ask.add_argument("--renderers", nargs="+", default=RENDERERS)
    ask.add_argument("--seeds", nargs="+", type=int, default=[1])
    ask.add_argument("--minutes", type=float, default=9.0, help="of training in this call")
    ask.add_argument("--progress", nargs=2, type=float, default=[0.0, 1.0], help="part of the schedule that this call is")
    ask.add_argument("--resume")
    ask.add_argument("--batch", type=int, default=96)
    ask.add_argument("--reuse", type=float, default=3.0, help="times each drawn picture is shown")
    ask.add_argument("--room", type=int, default=6000)
    ask.add_argument("--examine", type=int, default=2048)
    ask.add_argument("--rate", type=float, default=1.5e-3)
    ask.add_argument("--device", default="cuda")
    a = ask.parse_args()
    os.makedirs(a.out, exist_ok=True)
    begun = time.time()
    device = torch.device(a.device)
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
    torch.backends.cudnn.benchmark = True
    names = [name for name in a.renderers if name != a.renderer]
    label = "final" if a.job == "final" else f"without-{a.renderer}"
    first = int(1e6 * (1 + 7 * a.progress[0])) * 10
    stores = {name: Store(name, a.room, device, first + 101 * i) for i, name in enumerate(names)}
    learners = [Learner(seed, names, device, a.batch) for seed in a.seeds]
    if a.resume:
        for learner in learners:
            state = torch.load(f"{a.resume}/{label}-{learner.seed}.pt", map_location=device, weights_only=False)
            learner.model.load_state_dict({k: v.float() if v.dtype == torch.float16 else v for k, v in state["model"].items()})
            learner.mean.load_state_dict({k: v.float() if v.dtype == torch.float16 else v for k, v in state["mean"].items()})
            learner.seen, learner.steps = state["seen"], state["steps"]
    spent = {"draw": 0.0, "learn": 0.0}
    owed = {name: 0.0 for name in names}
    for store in stores.values():
        while store.drawn < min(384, a.room):
            store.refill()
    told = time.time()
    while True:
        part = (time.time() - begun) / 60 / a.minutes
        if part >= 1:
            break
        progress = a.progress[0] + (a.progress[1] - a.progress[0]) * part
        warm = min(1.0, learners[0].steps / 300)
        rate = a.rate * warm * (0.02 + 0.98 * 0.5 * (1 + math.cos(math.pi * progress)))
        now = time.time()
        for learner in learners:
            learner.model.train()
            learner.step(stores, rate)
        if device.type == "cuda":
            torch.cuda.synchronize()
        spent["learn"] += time.time() - now
        now = time.time()
        for name in names:
            # The learners share what is drawn: each shows a picture about `reuse` times.
            owed[name] += a.batch / len(names) / a.reuse
            if owed[name] >= DRAW:
                owed[name] -= DRAW
                stores[name].refill()
        if device.type == "cuda":
            torch.cuda.synchronize()
        spent["draw"] += time.time() - now
        if time.time() - told > 20:
            told = time.time()
            print(f"{label} {told - begun:.0f}s steps {learners[0].steps} answer {[round(float(x.log) / 6, 4) for x in learners]} "
                  f"drawn {[s.drawn for s in stores.values()]} draw {spent['draw']:.0f}s learn {spent['learn']:.0f}s", flush=True)
    report = {"label": label, "names": names, "drawn": {s.name: s.drawn for s in stores.values()}, "seconds": time.time() - begun, "runs": []}
    for store in stores.values():
        store.kept = {}
    if device.type == "cuda":
        torch.cuda.empty_cache()
    for learner in learners:
        half = lambda state: {k: v.half() if v.dtype == torch.float32 else v for k, v in state.items()}
        torch.save({"model": half(learner.model.state_dict()), "mean": half(learner.mean.state_dict()), "seen": learner.seen,
                    "steps": learner.steps, "seed": learner.seed}, f"{a.out}/{label}-{learner.seed}.pt")
        if a.examine:
            asked = [a.renderer] if a.job == "left-out" else a.renderers
            found = {name: examined(learner.mean, importlib.import_module(name).draw, a.examine, 777_000_000, device) for name in asked}
            np.savez_compressed(f"{a.out}/{label}-{learner.seed}.npz", **{f"{name}/{key}": value.astype(np.float32) for name, rows in found.items() for key, value in rows.items()})
            run = {"seed": learner.seed, "seen": learner.seen, **{name: summary(rows) for name, rows in found.items()}}
            report["runs"].append(run)
            print(label, learner.seed, learner.seen, {name: (round(r["bar"], 4), round(r["mean_auc"], 4), round(r["no_soap_auc"], 4), r["auc"]) for name, r in run.items() if isinstance(r, dict)}, flush=True)
    with open(f"{a.out}/{label}.json", "w") as file:
        json.dump(report, file, indent=1)
    print(label, "all done", f"{time.time() - begun:.0f}s", flush=True)


if __name__ == "__main__":
    main()
