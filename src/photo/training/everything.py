"""
Starts all that learning needs on one machine and leaves it running: processes that draw, and the learners.
    python3 everything.py OUT --gpus 4 --cores 64 --minutes 21
One GPU of several draws, the others learn; a single one does both. With --apart each GPU draws and has a learner of its
own, which is told what follows --learning and, the first, --one, the second, --two; all see the same pictures. Processors draw for the renderers that need no GPU.
"""
import argparse
import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
# Those that are new or slow several times. Each holds 3 to 18 GB of its GPU's memory.
ON_GPU = ["draw_grown", "relit", "draw_press", "draw_bench", "bulk", "geometry", "textures", "draw_relief", "draw_volume", "draw_scatter",
          "things", "draw_slab", "draw_pane", "draw_curd", "draw_stall", "draw_grain", "draw_curd", "draw_pane"]
ON_PROCESSOR = ["faced", "posed", "faced", "cured", "faced", "solids", "posed", "traced", "marched", "boxes"]
# Not all flaws that these are asked for can be seen.
CLEAN = {"draw_pane": 0.25, "draw_curd": 0.3, "traced": 0.3, "solids": 0.3, "cured": 0.35, "posed": 0.35, "faced": 0.35, "draw_grown": 0.33, "relit": 0.33}


def started(command, log, **more):
    """A process of its own session, so that it outlasts the one that started it."""
    alone = {"OMP_NUM_THREADS": "1", "OPENBLAS_NUM_THREADS": "1", "MKL_NUM_THREADS": "1", "PYTHONUNBUFFERED": "1", **more}
    with open(log, "ab") as file:
        return subprocess.Popen([sys.executable, *command], stdout=file, stderr=file, start_new_session=True, env={**os.environ, **alone}).pid


def drawers(a, learners):
    """Commands of the processes that draw, with their logs."""
    size = ["--size", *map(str, a.size), *(["--same"] if a.apart else [])]
    given = lambda name, seed: [f"{HERE}/drawing.py", name, a.pictures, "--learners", str(learners), "--seed", str(seed), "--count", str(a.count),
                                "--clean", str(CLEAN.get(name, 0.4)), *size]
    first = learners if a.gpus > learners else 0
    commands = [(given(name, a.seed + i) + ["--device", f"cuda:{i % a.gpus if a.apart else first}"], name) for i, name in enumerate(ON_GPU)]
    # A core for each process with a GPU, and some to spare.
    spare = max(2, a.cores - 2 * learners - len(ON_GPU) - 4)
    return commands + [(given(ON_PROCESSOR[i % len(ON_PROCESSOR)], a.seed + 100 + i), ON_PROCESSOR[i % len(ON_PROCESSOR)]) for i in range(spare)]


def main():
    ask = argparse.ArgumentParser()
    ask.add_argument("out")
    ask.add_argument("--gpus", type=int, default=4)
    ask.add_argument("--cores", type=int, default=os.cpu_count())
    ask.add_argument("--pictures", default="/dev/shm/pictures")
    ask.add_argument("--size", nargs=2, type=int, default=[480, 640])
    ask.add_argument("--count", type=int, default=48, help="pictures drawn at a time on a GPU")
    ask.add_argument("--part", choices=["draw", "learn", "both"], default="both")
    ask.add_argument("--seed", type=int, default=10, help="of the first process that draws; the others count on")
    ask.add_argument("--rest", nargs=3, type=float, help="seconds from which on processes that draw on a GPU rest, how long they draw then, how long they rest")
    ask.add_argument("--apart", action="store_true")
    ask.add_argument("--one", type=str.split, default=[])
    ask.add_argument("--two", type=str.split, default=[])
    ask.add_argument("--learning", nargs=argparse.REMAINDER, default=[], help="what else train.py is told, last")
    a = ask.parse_args()
    os.makedirs(a.out, exist_ok=True)
    learners = a.gpus if a.apart else max(1, a.gpus - 1)
    if a.part != "learn":
        pids = [(started(command, f"{a.out}/draw-{name}.log", PYTHONHASHSEED=str(i)), name) for i, (command, name) in enumerate(drawers(a, learners))]
        if a.rest:
            resting = [str(pid) for pid, name in pids if name not in ON_PROCESSOR]
            started([f"{HERE}/resting.py", *map(str, a.rest), *resting], f"{a.out}/resting.log")
    if a.part != "draw":
        told = ["--pictures", a.pictures, "--size", *map(str, a.size)]
        if not a.apart:
            print("learning:", started([f"{HERE}/train.py", "--out", a.out, *told, "--learners", str(learners), *a.learning], f"{a.out}/train.log"))
        for i, own in enumerate((a.one, a.two)[: learners if a.apart else 0]):
            command = [f"{HERE}/train.py", "--out", f"{a.out}/{i}", *told, "--folder", str(i), "--gpu", str(i), *a.learning, *own]
            print("learning:", started(command, f"{a.out}/train-{i}.log"))


if __name__ == "__main__":
    main()
