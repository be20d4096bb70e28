"""
Trains the reader on one or more GPUs as one learner, from what other processes draw (drawing.py; everything.py starts
all of them):
    python3 train.py --out DIR --pictures FOLDER --learners 3 --minutes 21 --start ../model/reader.onnx
What it needs and how long it takes: README.md.
"""
import argparse
import copy
import json
import os
import sys
import time

import torch
import torch.distributed as together
import torch.multiprocessing

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [HERE, os.path.join(HERE, "renderers")]
from loss import WEIGHTS, loss_of  # noqa: E402
from network import Reader  # noqa: E402
from pool import Arriving, Store  # noqa: E402
from pretrained import PretrainedReader  # noqa: E402
from schedule import ending, rate_at  # noqa: E402
from start import started  # noqa: E402
from transplant import ONE_IN  # noqa: E402
from views import WHOLE, training_view  # noqa: E402
from watch import Watched  # noqa: E402

# How many pictures of a batch each renderer gives, in parts. Those that draw on a device go evenly, `things` slower.
# A quarter from those that are new.
SHARES = {"bulk": 0.7, "geometry": 0.9, "textures": 0.9, "draw_relief": 0.9, "draw_volume": 0.9, "draw_scatter": 1, "draw_slab": 1.1,
          "draw_pane": 1.1, "draw_stall": 1.2, "draw_curd": 1.2, "draw_grain": 1.2, "draw_press": 1.4, "draw_bench": 1.4, "marched": 1,
          "boxes": 1, "traced": 1.1, "solids": 1.2, "cured": 1.4, "posed": 1.6, "faced": 2.4, "draw_grown": 3.0, "relit": 2.4, "things": 0.6}
# How many pictures are drawn of each beside the others.
DRAWN = {"draw_press": 1.2, "draw_bench": 1.2, "draw_grown": 2.0, "relit": 1.8, "things": 0.4}
ON_PROCESSOR = {"marched", "boxes", "traced", "solids", "cured", "posed", "faced"}
# Draws no soap at all.
NO_SOAP = "things"
# Of four steps the last looks at whole pictures; the sides in pixels of the others, first and from LATER of the time on.
EARLY, LATE, LATER = (384, 512, 384), (512, 384, 512), 0.55
# What was learned from photographs is to stay: so much slower its first layers and its later ones learn than the rest.
SLOW = {"stem": 0.05, "blocks": 0.15}


class Learner:
    """One of the processes that learn: its own pictures, gradients averaged with the others'."""

    def __init__(self, model, a, rank, device):
        self.rank, self.learners, self.batch, self.seen, self.steps, self.progress = rank, a.learners, a.batch, 0, 0, 0.0
        self.model = model.to(device, memory_format=torch.channels_last)
        self.mean = copy.deepcopy(self.model)
        self.parameters = list(self.model.parameters())
        self.optimizer = torch.optim.AdamW(groups_of(self.model), lr=1e-3,
                                           **({"fused": True} if device.type == "cuda" else {}))
        own, mean = self.model.state_dict(), self.mean.state_dict()
        floats = [k for k in mean if mean[k].dtype.is_floating_point]
        self.own, self.kept = [own[k] for k in floats], [mean[k] for k in floats]
        self.generator = torch.Generator(device=device)
        self.generator.manual_seed(1000 * a.seed + rank)
        self.counting = torch.tensor(WEIGHTS, device=device)
        self.moved, self.alarms, self.faint, self.log = a.moved, a.alarms, a.faint, None
        # What a protocol may set otherwise (left_out.py).
        self.shares, self.early, self.late = SHARES, EARLY, LATE

    def begin(self):
        """All learners go on from what the first one holds."""
        if self.learners > 1:
            for value in self.model.state_dict().values():
                together.broadcast(value, 0)
        self.mean.load_state_dict(self.model.state_dict())

    def view(self, stores, side):
        # As many pixels to a step whatever the side.
        size = int(self.batch * {WHOLE: 1.5, 384: 1.0}.get(side, (384 / side) ** 2))
        names = [name for name in stores if stores[name].filled]
        ends = [round(size * sum(self.shares[one] for one in names[: i + 1]) / sum(self.shares[one] for one in names)) for i in range(len(names))]
        counts = {name: end - begun for name, begun, end in zip(names, [0, *ends], ends) if end > begun}
        parts = [stores[name].some(count, self.generator) for name, count in counts.items()]
        mixed = torch.randperm(size, device=parts[0]["image"].device, generator=self.generator)
        batch = {key: torch.cat([part[key] for part in parts])[mixed] for key in parts[0]}
        grounds = torch.cat([stores[name].grounds(count, self.generator) for name, count in counts.items()])
        grounds = grounds[torch.randperm(size, device=grounds.device, generator=self.generator)]
        return training_view(batch, grounds, self.generator, side, self.moved)

    def average(self, progress):
        """Gradients and progress, averaged over the learners, so that all take the same step."""
        grads = [p.grad for p in self.parameters]
        flat = torch.cat([g.flatten() for g in grads] + [torch.tensor([progress], device=grads[0].device)])
        # A picture that cannot be learned from costs a step, not the reader.
        flat = torch.nan_to_num(flat, 0, 0, 0)
        together.all_reduce(flat)
        flat /= self.learners
        pieces = flat[:-1].split([g.numel() for g in grads])
        for piece, g in zip(pieces, grads):
            g.copy_(piece.view_as(g))
        self.latest = flat[-1]

    def step(self, stores, highest, progress):
        with torch.no_grad():
            sides = self.late if self.progress > LATER else self.early
            view = self.view(stores, (*sides, WHOLE)[self.steps % 4])
            view = (torch.nan_to_num(view[0], 0.5), *view[1:])
        for group in self.optimizer.param_groups:
            group["lr"] = rate_at(self.progress, highest) * group["part"]
        self.optimizer.zero_grad(set_to_none=True)
        loss, log = loss_of(self.model, view, self.counting, self.alarms, self.faint)
        loss.backward()
        if self.learners > 1:
            self.average(progress)
        else:
            for p in self.parameters:
                p.grad.nan_to_num_(0, 0, 0)
        torch.nn.utils.clip_grad_norm_(self.parameters, 2.0)
        self.optimizer.step()
        self.steps += 1
        # Read now and then only: reading waits for the device.
        if self.learners == 1:
            self.progress = progress
        elif self.steps % 8 == 0:
            self.progress = float(self.latest)
        self.seen += len(view[0]) * self.learners
        log = torch.nan_to_num(log, 9, 9, 9)
        self.log = log if self.log is None else 0.98 * self.log + 0.02 * log
        if self.steps % 4 == 0:
            keep = min(0.998, 1 - 1 / (1 + self.steps / 8)) ** 4
            with torch.no_grad():
                torch._foreach_mul_(self.kept, keep)
                torch._foreach_add_(self.kept, self.own, alpha=1 - keep)

    def save(self, out, name):
        half = {k: v.half() if v.dtype == torch.float32 else v for k, v in self.mean.state_dict().items()}
        torch.save({"mean": half, "seen": self.seen, "steps": self.steps}, f"{out}/{name}.tmp")
        os.replace(f"{out}/{name}.tmp", f"{out}/{name}.pt")


def groups_of(model):
    """Parameters by how fast they learn, and whether they are held small."""
    groups = {}
    for name, p in model.named_parameters():
        part = SLOW[name.split(".")[1]] if name.startswith("backbone.") else 1.0
        groups.setdefault((part, p.ndim >= 2), []).append(p)
    return [{"params": those, "part": part, "weight_decay": 0.02 if heavy and part == 1 else 0} for (part, heavy), those in groups.items()]


def stores_of(a, device):
    names = [name for name in SHARES if name != a.left_out and (not a.only or name in a.only)]
    rooms = {name: a.room // 3 if name == NO_SOAP else a.room for name in names}
    return {name: Store(room, device, tuple(a.size)) for name, room in rooms.items()}


def learn(rank, a, begin):
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
    device = torch.device(f"cuda:{rank + a.gpu}" if a.device == "cuda" else a.device)
    if device.type == "cuda":
        torch.cuda.set_device(device)
    else:
        torch.set_num_threads(1)
    if a.learners > 1:
        together.init_process_group("nccl" if device.type == "cuda" else "gloo", init_method=f"file://{os.path.abspath(a.out)}/meeting",
                                    rank=rank, world_size=a.learners)
    torch.manual_seed(a.seed)
    stores = stores_of(a, device)
    even = {name: DRAWN.get(name, 1.0) for name in stores if name not in ON_PROCESSOR}
    arriving = Arriving(stores, f"{a.pictures}/{a.folder if a.learners == 1 else rank}", even, a.ahead, a.fresh, a.seed)
    # A renderer that does not get going does not hold up the others for ever.
    while min(store.filled for name, store in stores.items() if name != NO_SOAP) < a.first and time.time() < begin + a.wait:
        time.sleep(0.1)
    learner = Learner(PretrainedReader() if a.network == "pretrained" else Reader(), a, rank, device)
    if a.start:
        with torch.no_grad():
            view = learner.view(stores, 384)
        started(learner.model, a.start, view[0])
    learner.begin()
    if rank == 0:
        # What it began from, as it goes on from it: for the mean of both (average.py).
        learner.save(a.out, "begin")
    watched = Watched(a.watch, device) if a.watch and rank == 0 else None
    report = lambda *words: print(f"{time.time() - begin:.0f}s", *words, flush=True) if rank == 0 else None
    start = told = watching = saved = time.time()
    end = max(begin + 60 * a.minutes, start + 20)
    report("begins", {name: store.filled for name, store in stores.items()})
    while learner.progress < 1:
        learner.model.train()
        learner.step(stores, a.rate, (time.time() - start) / (end - start))
        if learner.steps % 8 == 0 and time.time() - told > a.tell:
            told = time.time()
            report(learner.seen, "views, drawn", {name: store.filled for name, store in stores.items()}, [round(float(v), 4) for v in learner.log])
            end = ending(a.until, end)
        if rank == 0 and time.time() - saved > a.every:
            saved = time.time()
            learner.save(a.out, f"reader-{a.seed}")
        if watched and time.time() - watching > a.look:
            watching = time.time()
            report("so far", learner.seen, json.dumps(watched.figures(learner.mean)))
    arriving.stop()
    counts = {name: store.filled for name, store in stores.items()}
    with open(f"{a.out}/figures-{rank}.json", "w") as file:
        json.dump({"seen": learner.seen, "steps": learner.steps, "drawn": counts, "seconds": time.time() - begin}, file)
    if rank == 0:
        learner.save(a.out, f"reader-{a.seed}")
        report("done", learner.seen, learner.steps)
        if watched:
            report("at the end", json.dumps(watched.figures(learner.mean)))
            watched.write(learner.mean, a.out)
        open(f"{a.out}/done", "w").close()
    os._exit(0)


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument("--out", required=True)
    ask.add_argument("--pictures", required=True, help="the folder that drawing.py fills")
    ask.add_argument("--learners", type=int, default=1, help="GPUs that learn, from the first one on")
    ask.add_argument("--minutes", type=float, default=21)
    ask.add_argument("--start", default="", help="a reader to go on from: an ONNX file, or a checkpoint")
    ask.add_argument("--left-out", choices=list(SHARES))
    ask.add_argument("--only", nargs="*", help="renderers to learn from; all where none is named")
    ask.add_argument("--seed", type=int, default=1)
    ask.add_argument("--batch", type=int, default=128, help="views of 384 pixels to a step, for each learner")
    ask.add_argument("--room", type=int, default=3000, help="pictures of each renderer kept on each GPU: 1.3 MB each")
    ask.add_argument("--first", type=int, default=256, help="pictures of each before learning begins")
    ask.add_argument("--wait", type=float, default=90, help="seconds to wait for them")
    ask.add_argument("--folder", type=int, default=0, help="which of the folders with pictures a single learner takes")
    ask.add_argument("--gpu", type=int, default=0, help="the first one that learns")
    ask.add_argument("--fresh", type=float, default=1000, help="new pictures taken in a second at most")
    ask.add_argument("--network", choices=["plain", "pretrained"], default="plain")
    ask.add_argument("--ahead", type=float, default=1.6, help="how many times more a fast renderer may draw than a slow one")
    ask.add_argument("--rate", type=float, default=1.5e-3)
    ask.add_argument("--moved", type=int, default=ONE_IN, help="one of so many close views at most is given another's flaw")
    ask.add_argument("--alarms", type=float, default=0.0, help="how much a clean bar called flawed counts beside the findings one by one")
    ask.add_argument("--faint", type=float, default=0.0, help="how much more a flaw's answer counts that covers little of the view")
    ask.add_argument("--watch", help="a folder with labelled sets that are never learned from: see watch.py")
    ask.add_argument("--every", type=float, default=60, help="seconds between saving")
    ask.add_argument("--look", type=float, default=400, help="seconds between watching")
    ask.add_argument("--until", default="", help="a file that may tell, while this runs, when to end: seconds since 1970")
    ask.add_argument("--tell", type=float, default=15, help="seconds between two lines of the report")
    ask.add_argument("--size", nargs=2, type=int, default=[480, 640])
    ask.add_argument("--device", default="cuda")
    a = ask.parse_args()
    os.makedirs(a.out, exist_ok=True)
    begin = time.time()
    if a.learners == 1:
        learn(0, a, begin)
    torch.multiprocessing.spawn(learn, (a, begin), a.learners)


if __name__ == "__main__":
    main()
