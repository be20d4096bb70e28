"""
Lets processes that draw on a GPU rest now and then, so that learning has it to itself:  python3 resting.py AFTER DRAW REST PID...
After so many seconds they draw and rest by turns, so many seconds each, until they end.
"""
import os
import signal
import sys
import time


def told(pids, what):
    """Sends a signal to those that are still there; returns them."""
    left = []
    for pid in pids:
        try:
            os.kill(pid, what)
            left.append(pid)
        except ProcessLookupError:
            pass
    return left


def main(after, draw, rest, *pids):
    pids = [int(pid) for pid in pids]
    time.sleep(float(after))
    while pids:
        pids = told(pids, signal.SIGSTOP)
        time.sleep(float(rest))
        pids = told(pids, signal.SIGCONT)
        time.sleep(float(draw))


if __name__ == "__main__":
    main(*sys.argv[1:])
