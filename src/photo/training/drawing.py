"""
Draws without end beside the learning, a process of its own:
    python3 drawing.py RENDERER FOLDER --learners 3 --seed 5 [--device cuda:3] [--size 480 640]
Batches of pictures as bytes go by turns to FOLDER/LEARNER/RENDERER, where pool.Arriving takes them. Waits while too many lie
there. Renderers that have `draw` use the device; those that have `one` draw picture by picture on a processor.
"""
import argparse
import importlib
import os
import pickle
import sys
import time
import traceback

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [HERE, os.path.join(HERE, "renderers")]

# Batches that may lie unread for one learner.
WAITING = 12
SINGLE = 8


def batch_of(name, a):
    """A function from a seed to a batch as bytes, arrays in host memory."""
    renderer = importlib.import_module(name)
    if not hasattr(renderer, "one"):
        import torch

        from pool import as_bytes
        torch.set_grad_enabled(False)
        torch.set_num_threads(1)
        return lambda seed: {key: part.cpu().numpy() for key, part in as_bytes(renderer.draw(a.count, a.size, seed, a.device, a.clean)).items()}
    from single import together
    return lambda seed: together([renderer.one(seed + i, a.size, a.clean) for i in range(SINGLE)])


def left(folder, batch, name):
    """Writes a batch so that it is seen whole or not at all."""
    with open(f"{folder}/{name}.part", "wb") as file:
        pickle.dump(batch, file, protocol=5)
    os.replace(f"{folder}/{name}.part", f"{folder}/{name}.batch")


def left_to_all(folders, batch, name):
    """The same batch for every learner."""
    path = f"{folders[0]}/{name}.part"
    with open(path, "wb") as file:
        pickle.dump(batch, file, protocol=5)
    for folder in folders:
        os.link(path, f"{folder}/{name}.batch")
    os.remove(path)


def waiting(folder):
    return sum(name.endswith(".batch") for name in os.listdir(folder))


def keep_drawing(a):
    folders = [f"{a.folder}/{learner}/{a.renderer}" for learner in range(a.learners)]
    for folder in folders:
        os.makedirs(folder, exist_ok=True)
    draw, at, turn = batch_of(a.renderer, a), a.seed * 10_000_000, a.seed
    while not os.path.exists(f"{a.folder}/over"):
        free = [folder for folder in folders if waiting(folder) < WAITING]
        if len(free) < (a.learners if a.same else 1):
            time.sleep(0.05)
            continue
        try:
            name = f"{a.seed}-{at}"
            left_to_all(folders, draw(at), name) if a.same else left(free[turn % len(free)], draw(at), name)
        except Exception:
            traceback.print_exc()
            time.sleep(0.2)
        at, turn = at + max(a.count, SINGLE), turn + 1


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument("renderer")
    ask.add_argument("folder")
    ask.add_argument("--learners", type=int, default=1)
    ask.add_argument("--same", action="store_true", help="every learner is given every picture")
    ask.add_argument("--seed", type=int, default=1)
    ask.add_argument("--device", default="cpu")
    ask.add_argument("--size", nargs=2, type=int, default=[480, 640])
    ask.add_argument("--count", type=int, default=64, help="pictures drawn at a time on a device")
    ask.add_argument("--clean", type=float, default=0.43)
    a = ask.parse_args()
    a.size = tuple(a.size)
    keep_drawing(a)


if __name__ == "__main__":
    main()
