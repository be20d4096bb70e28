"""Bars as distance fields, marched by rays in a C program: `one` draws a picture. Needs a C compiler, Pillow and scipy."""
import numpy as np
from PIL import Image

from single import as_file, packed

from .lens import check, finish, quality, raw
from .other_things import nothing
from .parts import NAMES, TRICKS
from .scenes import build

# What may be in one picture together: two at most, as the program keeps two masks.
PAIRS = [("coloured-specks", "drag-lines"), ("coloured-specks", "crack"), ("coloured-specks", "pinholes"), ("smears", "drag-lines"),
         ("white-specks", "drag-lines"), ("white-specks", "crack"), ("translucent-veins", "crack"), ("translucent-veins", "pinholes"),
         ("crackle-network", "pinholes"), ("crackle-network", "coloured-specks"), ("powdery-film", "crack"), ("powdery-film", "white-specks"),
         ("powdery-film", "pinholes"), ("dark-centre-ring", "crack"), ("dark-centre-ring", "pinholes"), ("dark-centre-ring", "drag-lines"),
         ("orange-spots", "pinholes"), ("orange-spots", "brown-outside-in"), ("orange-spots", "crack"), ("brown-outside-in", "crack"),
         ("brown-outside-in", "pinholes"), ("colour-bled", "pinholes"), ("colour-bled", "smears"), ("layer-gap", "pinholes"),
         ("layer-gap", "smears"), ("layer-gap", "crack"), ("layer-gap", "coloured-specks"), ("wrinkled-top", "crack"),
         ("wrinkled-top", "pinholes"), ("wrinkled-top", "coloured-specks"), ("mould-dimples", "pinholes"), ("mould-dimples", "coloured-specks"),
         ("mould-dimples", "orange-spots"), ("translucent-veins", "layer-gap"), ("smears", "coloured-specks"), ("colour-bled", "layer-gap"),
         ("colour-bled", "drag-lines")]
OTHER_THINGS = ["mugs", "kitchen", "plates", "plant", "animal", "boxes", "eggs", "fruit", "cloth", "books", "tin"]
# Findings made of small marks are kept with their whole mask; the others where the picture changes with them.
SMALL = {"pinholes", "coloured-specks", "drag-lines", "crack", "smears", "white-specks", "layer-gap", "orange-spots"}
# The program's blurs are meant for pictures of this length.
LENGTH = 950
# And their grain for pictures that are made smaller before they are read.
GRAIN = 0.75


def subject(dice, clean):
    """Findings and deceit of the next picture."""
    if dice.random() < clean:
        return (), (str(dice.choice(TRICKS)) if dice.random() < 0.67 else None)
    first = str(dice.choice(NAMES))
    pairs = [pair for pair in PAIRS if first in pair]
    if pairs and dice.random() < 0.35:
        return pairs[dice.integers(len(pairs))], None
    return (first,), None


def one(seed, size, clean=0.4):
    """One picture of `size` (height, width), upright or lying, for a store (single.packed)."""
    dice = np.random.default_rng(seed)
    height, width = size
    if dice.random() < 0.07:
        scene = nothing(seed, str(dice.choice(OTHER_THINGS)), width, height)
        how, soap, visible, findings = quality(scene, "nothing", False), None, {}, ()
    else:
        findings, trick = subject(dice, clean)
        scene = build(seed, findings, trick, W=width, H=height)
        visible = check(scene, findings)[1] if findings else {}
        how = quality(scene, "bar", bool(findings))
    shrunk = max(size) / LENGTH
    how["blur"] = how.get("blur", 0.45) * shrunk * dice.uniform(0.7, 1.4)
    how["noise"] = how.get("noise", 0.008) * GRAIN
    colours, masks = raw(scene, scene.sc.W, scene.sc.H, 1)
    image = as_file(np.asarray(finish(scene, colours, masks, how)[0]), how.get("jq", 85))
    bar = masks[0] if findings or scene.cols else np.zeros_like(masks[0])
    maps, present = {}, set()
    for i, name in enumerate(findings):
        changed, share, contrast = visible[name]
        there = (masks[1 + i] > 0.3) & (bar > 0.5)
        if name not in SMALL:
            there &= np.asarray(Image.fromarray(changed).resize(bar.shape[::-1]))
        maps[name] = there.astype(np.float32)
        if share >= 0.0012 and contrast >= 0.03:
            present.add(name)
    return packed(image, bar, maps, present, nothing=not scene.cols)
