"""
Starts all that learning needs on one machine and leaves it running: processes that draw, and the learners.
    python3 everything.py OUT --gpus 4 --cores 64 --minutes 21
One GPU of several draws, the others learn; a single one does both. Processors draw for the renderers that need no GPU.
"""
import argparse
import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
# Slow ones twice: a process is held up by starting small operations more than by the GPU.
ON_GPU = ["bulk", "geometry", "textures", "draw_relief", "draw_volume", "things", "geometry", "textures", "draw_relief", "draw_volume"]
ON_PROCESSOR = ["marched", "boxes"]


def started(command, log, **more):
    """A process of its own session, so that it outlasts the one that started it."""
    alone = {"OMP_NUM_THREADS": "1", "OPENBLAS_NUM_THREADS": "1", "MKL_NUM_THREADS": "1", "PYTHONUNBUFFERED": "1", **more}
    with open(log, "ab") as file:
        return subprocess.Popen([sys.executable, *command], stdout=file, stderr=file, start_new_session=True, env={**os.environ, **alone}).pid


def drawers(a, learners):
    """Commands of the processes that draw, with their logs."""
    size = ["--size", *map(str, a.size)]
    given = lambda name, seed: [f"{HERE}/drawing.py", name, a.pictures, "--learners", str(learners), "--seed", str(seed), "--count", "48", *size]
    first = learners if a.gpus > learners else 0
    commands = [(given(name, 10 + i) + ["--device", f"cuda:{first}"], name) for i, name in enumerate(ON_GPU)]
    # A core for each process with a GPU, and some to spare.
    spare = max(2, a.cores - 2 * learners - len(ON_GPU) - 4)
    return commands + [(given(ON_PROCESSOR[i % 2], 100 + i), ON_PROCESSOR[i % 2]) for i in range(spare)]


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument("out")
    ask.add_argument("--gpus", type=int, default=4)
    ask.add_argument("--cores", type=int, default=os.cpu_count())
    ask.add_argument("--pictures", default="/dev/shm/pictures")
    ask.add_argument("--size", nargs=2, type=int, default=[480, 640])
    ask.add_argument("--part", choices=["draw", "learn", "both"], default="both")
    ask.add_argument("--learning", nargs=argparse.REMAINDER, default=[], help="what else train.py is told, last")
    a = ask.parse_args()
    os.makedirs(a.out, exist_ok=True)
    learners = max(1, a.gpus - 1)
    if a.part != "learn":
        for i, (command, name) in enumerate(drawers(a, learners)):
            started(command, f"{a.out}/draw-{name}.log", PYTHONHASHSEED=str(i))
    if a.part != "draw":
        told = ["--out", a.out, "--pictures", a.pictures, "--learners", str(learners), "--size", *map(str, a.size)]
        print("learning:", started([f"{HERE}/train.py", *told, *a.learning], f"{a.out}/train.log"))


if __name__ == "__main__":
    main()
