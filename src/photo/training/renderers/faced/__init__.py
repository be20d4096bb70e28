"""Bars, rows and loaves with textured faces, traced in C; each flaw is drawn with and without, and kept where that can be seen: `one` draws a picture. Needs Pillow and scipy."""
import numpy as np

from single import FINDINGS, as_file, packed

from .deceive import NAMES
from .others import nosoap
from .picture import soap

# What deceives: painted on the soap, and what light and a pencil's line do.
TRICKS = [*NAMES, "shade", "glare", "pencil"]
BESIDE = ["mica", "oats", "poppy", "stamp", "shade", "glare", "herbs"]
CLOSE = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "orange-spots", "pinholes", "crack",
         "drag-lines", "layer-gap", "colour-bled", "mould-dimples"]
# Drawn again with stronger flaws while the first cannot be seen, so many times at most: the set that this drew first allowed nine.
ATTEMPTS = 4


def strengths(rng, flaws, attempt, close):
    """Severity and extent of each flaw, 0 to 1; faint ones first."""
    low = 0.12 + 0.2 * attempt
    return {f: (rng.uniform(max(low, 0.35 if close else 0), 1), 1.0 if rng.random() < 0.25 or close else rng.uniform(low, 1)) for f in flaws}


def flawed(dice, seed, size):
    main = str(dice.choice(FINDINGS))
    close = main in CLOSE and dice.random() < 0.1
    flaws = [main]
    other = str(dice.choice(FINDINGS))
    if not close and dice.random() < 0.35 and other != main:
        flaws.append(other)
    for attempt in range(ATTEMPTS):
        rng = np.random.default_rng([seed, 11, attempt])
        trick = str(rng.choice(BESIDE)) if rng.random() < 0.1 and not close else None
        got = soap(rng, size, flaws, trick, close, strengths(rng, flaws, attempt, close))
        if main in got[2]:
            break
    return got


def one(seed, size, clean=0.4):
    """One picture of `size` (height, width), upright or lying, for a store (single.packed)."""
    dice = np.random.default_rng([seed, 12])
    size = size if dice.random() < 0.6 else size[::-1]
    file = lambda image: as_file((np.clip(image, 0, 1) * 255 + 0.5).astype(np.uint8), dice.integers(80, 96))
    if dice.random() < 0.05:
        return packed(file(nosoap(dice, int(dice.integers(3)), size)), np.zeros(size, np.float32), {}, set(), True)
    if dice.random() < clean:
        image, bar, found = soap(dice, size, (), str(dice.choice(TRICKS)) if dice.random() < 0.55 else None)
    else:
        image, bar, found = flawed(dice, seed, size)
    return packed(file(image), bar.astype(np.float32), found, set(found))
