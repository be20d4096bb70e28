"""
The mean of two readers of which one began where the other ended:  python3 average.py ONE.pt OTHER.pt MEAN.pt [part of the other]
What further learning won stays for the most part, what it lost comes back (Wortsman et al., CVPR 2022).
"""
import sys

import torch

from network import Reader
from start import started


def held(path):
    reader = Reader()
    started(reader, path, None)
    return reader.state_dict()


def main(one, other, target, part="0.5"):
    a, b, part = held(one), held(other), float(part)
    mean = {name: a[name] + (b[name] - a[name]) * part if a[name].dtype.is_floating_point else b[name] for name in a}
    torch.save({"mean": {name: value.half() if value.dtype == torch.float32 else value for name, value in mean.items()}}, target)


if __name__ == "__main__":
    main(*sys.argv[1:])
