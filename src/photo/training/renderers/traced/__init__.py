"""Bars, hands and things cast by rays in a C program, each flaw seen against the same bar without: `one` draws a picture. Needs a C compiler and Pillow."""
import numpy as np
from PIL import Image

from single import as_file, packed

from . import bars, camera
from .params import FINDINGS
from .shot import attempt, seen

KINDS_OF_NOTHING = 6


def subject(dice, clean):
    """What the next picture shows, as `attempt` takes it."""
    if dice.random() < 0.05:
        return {"kind": "none", "flaws": [], "trick": False, "sub": int(dice.integers(KINDS_OF_NOTHING))}
    if dice.random() < clean:
        trick = dice.random() < 0.55
        return {"kind": "clean", "flaws": [], "trick": trick, **({"name": str(dice.choice(bars.TRICKS))} if trick else {})}
    flaws = [FINDINGS[dice.integers(16)]]
    if dice.random() < 0.1:
        return {"kind": "close", "flaws": flaws, "trick": False, "strength": dice.uniform(0.2, 1)}
    if dice.random() < 0.38:
        flaws.append(str(dice.choice([name for name in FINDINGS if name not in flaws])))
    return {"kind": "flaw", "flaws": flaws, "strength": dice.random(), "trick": dice.random() < 0.25}


def enlarged(mask, size):
    return np.asarray(Image.fromarray(mask.astype(np.uint8) * 255).resize(size, Image.BILINEAR), np.float32) / 255


def one(seed, size, clean=0.4):
    """One picture of `size` (height, width), upright or lying, for a store (single.packed)."""
    dice = np.random.default_rng([seed, 3])
    job = {**subject(dice, clean), "size": size}
    made = attempt(0, job, seed, range(4), 5)
    # Where a flaw cannot be seen, once more, stronger and all over.
    if not all(seen(*measured) for measured in made[3].values()):
        made = attempt(0, {**job, "again": True}, seed, range(5, 9), 3)
    _, image, soap, shares, how, dice, (width, height) = made
    image = camera.sensor(camera.enlarge(image, width, height), how, dice)
    maps = {FINDINGS[k]: enlarged(there, (width, height)) for k, (_, _, there) in shares.items()}
    present = {FINDINGS[k] for k, measured in shares.items() if seen(*measured)}
    nothing = job["kind"] == "none"
    bar = enlarged((soap > 0) & (not nothing), (width, height))
    return packed(as_file((image * 255 + 0.5).astype(np.uint8), dice.integers(85, 97)), bar, maps, present, nothing)
