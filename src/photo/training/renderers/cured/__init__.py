"""Lots of bars, as a maker photographs them while they cure, cast by rays in a C program; each flaw seen against the same picture without it: `one` draws a picture. Needs a C compiler and Pillow."""
import numpy as np
from PIL import Image

from single import FINDINGS, as_file, packed

from . import looks, others
from .shot import picture

CLOSE = [name for name in FINDINGS if name not in ("layer-gap", "dark-centre-ring", "brown-outside-in", "colour-bled")]


def wish(dice, clean):
    """What the next picture shows, as `picture` takes it."""
    if dice.random() < 0.05:
        return "none", [], str(dice.choice(others.KINDS))
    if dice.random() < clean:
        return ("tricky", [], str(dice.choice(looks.TRICKS))) if dice.random() < 0.55 else ("plain", [], None)
    if dice.random() < 0.1:
        return "close", [str(dice.choice(CLOSE))], None
    main = str(dice.choice(FINDINGS))
    if dice.random() >= 0.35:
        return "flaw", [main], None
    # Those that need a face or a layer of their own come alone or first.
    barred = {main, "wrinkled-top", "powdery-film", "mould-dimples", "layer-gap", "colour-bled" if main == "layer-gap" else main}
    return "flaw", [main, str(dice.choice([name for name in FINDINGS if name not in barred]))], None


def enlarged(mask, size):
    return np.asarray(Image.fromarray(mask.astype(np.uint8) * 255).resize(size, Image.BILINEAR), np.float32) / 255


def one(seed, size, clean=0.4):
    """One picture of `size` (height, width), upright or lying, for a store (single.packed)."""
    dice = np.random.default_rng([seed, 9])
    kind, names, extra = wish(dice, clean)
    height, width = size if dice.random() < 0.6 else size[::-1]
    image, bar, found = picture(kind, names, extra, seed, (width, height))
    maps = {name: enlarged(there, (width, height)) for name, there in found.items()}
    return packed(as_file(image, dice.integers(88, 96)), enlarged(bar, (width, height)), maps, set(maps), kind == "none")
