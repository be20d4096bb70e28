"""
How a reader fares with a hand that it never learned from: short trainings from nothing on one pool of pictures, each with one
renderer left out or none, several seeds each, all on as many views; read on pictures that were set aside before and that no
training sees.
    python3 left_out.py OUT --minutes 25 --drawing 225
What is drawn and set aside: aside.py. What it needs and how long it takes: README.md.
"""
import argparse
import json
import os
import sys
import time

import numpy as np
import torch

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [HERE, os.path.join(HERE, "renderers")]
from aside import Drawn, sets_of  # noqa: E402
from examine import read, summary  # noqa: E402
from network import Reader  # noqa: E402
from schedule import ending  # noqa: E402
from train import NO_SOAP, SHARES, Learner  # noqa: E402

LEFT_OUT = ("bulk", "draw_grown", "posed", "textures", "draw_press", "marched")
# Left out with it, since it draws with its flaws or its photographs.
KIN = {"textures": {"relit"}, "draw_grown": {"relit"}}
# Side in pixels of close views, for learning and reading: bars of the pool are some 300 pixels wide.
SIDE = 320
# Parts of the views after which what was learned is read on the renderers that are left out.
CURVE = (0.25, 0.5, 0.75)
# Seconds that reading takes beside one training, and the part of the time left that is planned with.
READING, SURE = 5.0, 0.95


def short(model, a, seed, device):
    """A learner from nothing, renderers by even shares. The same network each time, filled anew."""
    torch.manual_seed(seed)
    model.load_state_dict(Reader().state_dict())
    told = argparse.Namespace(learners=1, batch=a.batch, seed=seed, moved=a.moved, alarms=0.0, faint=0.0)
    learner = Learner(model, told, 0, device)
    learner.shares = {name: 0.6 if name == NO_SOAP else 1.0 for name in SHARES}
    learner.early = learner.late = (SIDE,) * 3
    return learner


def learned(learner, stores, views, rate, look):
    """Learns from so many views; what `look` says of the running mean at each part of them."""
    learner.begin()
    seen, parts = [], list(CURVE)
    while learner.seen < views:
        learner.model.train()
        learner.step(stores, rate, learner.seen / views)
        if parts and learner.seen >= parts[0] * views:
            parts.pop(0)
            seen.append({"views": learner.seen, "read": look(learner.mean)})
    return seen


@torch.no_grad()
def said(model, sets):
    """Of each set what `model` says, as the product reads: figures, and all answers."""
    model.eval()
    device, figures, answers = next(model.parameters()).device, {}, {}
    for name, held in sets.items():
        kept = {"answers": np.zeros((len(held["present"]), 18), np.float32), "overlap": np.zeros(len(held["present"]), np.float32)}
        for where, image, bar in held["groups"]:
            for at in range(0, len(where), 48):
                told, soap, *_ = read(model, image[at : at + 48].to(device).float() / 255, SIDE)
                truth, soap = bar[at : at + 48].to(device) > 127, soap > 0.5
                both = (truth & soap).flatten(1).sum(1) / (truth | soap).flatten(1).sum(1).clamp(min=1)
                kept["answers"][where[at : at + 48]] = told.float().cpu().numpy()
                kept["overlap"][where[at : at + 48]] = both.cpu().numpy()
        rows = {**kept, "present": held["present"], "kind": held["kind"]}
        soap = held["kind"] == 0
        figures[name] = {**summary(rows), "overlap": float(kept["overlap"][soap].mean()), "pictures": int(soap.sum())}
        answers[name] = np.concatenate([kept["answers"], kept["overlap"][:, None]], 1).astype(np.float16)
    return figures, answers


def rate_of(model, drawn, a, device):
    """Views a second, from forty steps after twelve."""
    learner = short(model, a, 0, device)
    for step in range(52):
        if step == 12:
            begin, before = now(), learner.seen
        learner.model.train()
        learner.step(drawn.stores, 1e-3, 0.1)
    return (learner.seen - before) / (now() - begin)


def now():
    if torch.cuda.is_available():
        torch.cuda.synchronize()
    return time.time()


def main():
    a = asked()
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
    device = torch.device(a.device)
    os.makedirs(a.out, exist_ok=True)
    drawn = Drawn(a, device)
    model = Reader().to(device, memory_format=torch.channels_last)
    drawn.wait()
    sets = sets_of(drawn, a.sets)
    say = lambda *words: print(f"{time.time() - a.begin:.0f}s", *words, flush=True)
    say("learn from", {name: min(store.filled, store.room) for name, store in drawn.stores.items()})
    say("set aside", {name: [len(held["kind"]), int(held["present"].sum())] for name, held in sets.items()})
    np.savez_compressed(f"{a.out}/sets.npz", **{f"{name}.{key}": held[key] for name, held in sets.items() for key in ("present", "kind")})
    one_by_one = [(names, seed) for names in ((), *((name,) for name in a.left_out)) for seed in range(1, a.seeds + 1)]
    plan = [(names, seed) for seed in range(1, a.seeds + 1) for names in ((), tuple(a.left_out))] if a.together else one_by_one
    rate = rate_of(model, drawn, a, device)
    views = a.views or int(rate * (SURE * (ending(a.until, a.begin + 60 * a.minutes) - time.time()) / len(plan) - READING))
    say(f"{rate:.0f} views a second, {views} views a training")
    rows = []
    for names, seed in plan:
        begin = now()
        out = set(names).union(*(KIN.get(name, set()) for name in names))
        stores = {one: store for one, store in drawn.stores.items() if one not in out}
        looked = {one: sets[one] for one in names or a.left_out if one in sets}
        learner = short(model, a, seed, device)
        curve = learned(learner, stores, views, a.rate, lambda mean: said(mean, looked)[0])
        figures, answers = said(learner.mean, sets)
        seconds = now() - begin
        rows.append({"left_out": names, "seed": seed, "views": learner.seen, "steps": learner.steps, "seconds": round(seconds, 1), "curve": curve, "end": figures})
        np.savez_compressed(f"{a.out}/answers-{'+'.join(names) or 'none'}-{seed}.npz", **answers)
        with open(f"{a.out}/rows.json.part", "w") as file:
            json.dump(rows, file)
        os.replace(f"{a.out}/rows.json.part", f"{a.out}/rows.json")
        say(names, seed, f"{seconds:.0f} s", {one: round(figures[one]["mean_auc"], 3) for one in figures}, [round(float(x), 3) for x in learner.log])
    open(f"{a.out}/done", "w").close()


def asked():
    ask = argparse.ArgumentParser()
    ask.add_argument("out")
    ask.add_argument("--pictures", default="/dev/shm/pictures")
    ask.add_argument("--minutes", type=float, default=25, help="for all of it, from the start")
    ask.add_argument("--drawing", type=float, default=225, help="seconds of drawing at most")
    ask.add_argument("--until", default="", help="a file that may tell, before learning begins, when to end: seconds since 1970")
    ask.add_argument("--left-out", nargs="*", default=LEFT_OUT, help="in this order; those at the end lack where time does")
    ask.add_argument("--together", action="store_true", help="all of them at once, by turns with none")
    ask.add_argument("--seeds", type=int, default=3)
    ask.add_argument("--views", type=int, default=0, help="views of each training; what the time bears where it is not told")
    ask.add_argument("--batch", type=int, default=64, help="views of 384 pixels to a step")
    ask.add_argument("--moved", type=int, default=6, help="one of so many close views at most is given another's flaw")
    ask.add_argument("--rate", type=float, default=1.5e-3)
    ask.add_argument("--room", type=int, default=900, help="pictures of each renderer to learn from")
    ask.add_argument("--aside", type=int, default=256, help="pictures set aside of each that is left out")
    ask.add_argument("--others", type=int, default=96, help="pictures set aside of each of the others")
    ask.add_argument("--sets", default="", help="a folder of labelled sets by other hands, packed by aside.py")
    ask.add_argument("--count", type=int, default=16, help="pictures drawn at a time on a GPU")
    ask.add_argument("--size", nargs=2, type=int, default=[480, 640])
    ask.add_argument("--device", default="cuda:0")
    return ask.parse_args(namespace=argparse.Namespace(begin=time.time()))


if __name__ == "__main__":
    main()
