"""Rounded solids cast by rays in a C program, each flaw seen against the same picture without it: `one` draws a picture. Needs a C compiler and Pillow."""
import numpy as np
from PIL import Image

from single import FINDINGS, as_file, packed

from .shot import picture


def subject(dice, clean):
    """What the next picture shows, as `picture` takes it."""
    if dice.random() < 0.05:
        return {"kind": "none", "flaws": [], "trick": False}
    if dice.random() < clean:
        return {"kind": "clean", "flaws": [], "trick": dice.random() < 0.55}
    flaws = [int(dice.integers(16))]
    if dice.random() < 0.1:
        return {"kind": "close", "flaws": flaws, "trick": False}
    if dice.random() < 0.35:
        flaws.append(int(dice.choice([i for i in range(16) if i not in flaws])))
    return {"kind": "flaw", "flaws": flaws, "trick": dice.random() < 0.25}


def enlarged(mask, size):
    return np.asarray(Image.fromarray(mask.astype(np.uint8) * 255).resize(size, Image.BILINEAR), np.float32) / 255


def one(seed, size, clean=0.4):
    """One picture of `size` (height, width), upright or lying, for a store (single.packed)."""
    dice = np.random.default_rng([seed, 3])
    job = subject(dice, clean)
    height, width = size if dice.random() < 0.6 else size[::-1]
    image, bar, found = picture(job, seed, (height, width))
    nothing = job["kind"] == "none"
    maps = {FINDINGS[k]: enlarged(there, (width, height)) for k, there in found.items()}
    return packed(as_file(image, dice.integers(85, 97)), enlarged(bar & (not nothing), (width, height)), maps, set(maps), nothing)
