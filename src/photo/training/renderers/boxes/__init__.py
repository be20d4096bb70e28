"""Boxes with painted faces, cast by rays in a C program: `one` draws a picture. Needs a C compiler, Pillow and scipy."""
import numpy as np

from single import as_file, packed

from . import draw
from .draw import FL, make, nothing
from .scene import post

LIE, STAND = ["lying", "stack", "grid", "closeup", "leaning"], ["standing", "standing", "loaf", "row", "closeup"]
DESIGNS = ["solid", "solid", "swirl", "swirl", "layers", "layers", "hanger", "drops", "ombre", "veined", "embeds", "confetti"]
# The designs on which a finding can be shown, and how the bar lies for it; any where none is named.
DESIGNS_OF = {"wrinkled-top": ["solid", "solid", "layers", "veined", "swirl"], "mould-dimples": ["moulded", "moulded", "solid", "layers", "swirl"],
              "colour-bled": ["hanger", "layers", "layers", "swirl", "drops", "embeds"], "layer-gap": ["layers"],
              "crackle-network": ["solid", "swirl", "layers", "hanger", "confetti", "ombre"],
              "translucent-veins": ["solid", "solid", "swirl", "layers", "ombre"], "dark-centre-ring": ["solid", "solid", "ombre", "veined", "layers"],
              "brown-outside-in": ["solid", "solid", "layers", "ombre", "swirl"]}
TOP = {"wrinkled-top", "powdery-film"}
COLOURS_OF = {"white-specks": ["pastel", "sat", "dark", "brown", "mix"], "powdery-film": ["sat", "dark", "brown", "pastel", "mix"],
              "brown-outside-in": ["cream", "white", "pastel"], "crackle-network": ["cream", "white", "pastel", "mix"],
              "orange-spots": ["cream", "white", "pastel"], "pinholes": ["cream", "white", "pastel", "sat", "mix"]}
TOGETHER = {"coloured-specks": ["pinholes", "crack", "drag-lines", "powdery-film", "dark-centre-ring", "translucent-veins"],
            "smears": ["coloured-specks", "pinholes", "crack", "drag-lines"], "white-specks": ["translucent-veins", "drag-lines", "smears", "crack", "brown-outside-in"],
            "translucent-veins": ["dark-centre-ring", "white-specks", "pinholes", "powdery-film"], "crackle-network": ["powdery-film", "coloured-specks"],
            "powdery-film": ["wrinkled-top", "pinholes", "crack"], "dark-centre-ring": ["crackle-network", "pinholes", "drag-lines"],
            "orange-spots": ["brown-outside-in", "pinholes", "crack", "powdery-film"], "pinholes": ["smears", "orange-spots", "drag-lines"],
            "crack": ["pinholes", "powdery-film", "orange-spots"], "brown-outside-in": ["orange-spots", "crackle-network", "white-specks", "crack"],
            "colour-bled": ["pinholes", "smears", "white-specks"], "drag-lines": ["white-specks", "coloured-specks", "dark-centre-ring"],
            "layer-gap": ["pinholes", "coloured-specks", "drag-lines"], "wrinkled-top": ["powdery-film", "crack", "coloured-specks", "orange-spots"],
            "mould-dimples": ["pinholes", "orange-spots", "white-specks"]}
DECEITS = ["swirl", "veined swirl", "wavy layers", "ombre", "mica line", "shimmer", "glitter", "poppy seeds", "oats", "coffee", "petals", "embeds",
           "stamp", "spoon texture", "bevels", "wire marks", "dew", "glare", "shadows", "paper band", "crumbs", "lint", "wood grain", "coarse salt"]
DECEIT_DESIGN = {"swirl": "swirl", "veined swirl": "veined", "wavy layers": "layers", "ombre": "ombre", "mica line": "layers", "embeds": "embeds"}
DECEIT_PLACE = {"petals": STAND[:3], "spoon texture": STAND[:3], "coarse salt": STAND[:3], "glitter": ["standing", "row"],
                "stamp": ["lying", "closeup"], "paper band": ["lying", "grid"]}
# The program's blurs are meant for pictures of this length.
LENGTH = 930
# And their grain for pictures that are made smaller before they are read.
GRAIN = 0.75


def pick(dice, of):
    return of[dice.integers(len(of))]


def subject(dice, clean):
    """What the next picture shows, as `make` takes it: without a flaw, or with one or two."""
    if clean:
        if dice.random() < 0.33:
            return {"findings": [], "fam": pick(dice, LIE + STAND), "pattern": pick(dice, DESIGNS + ["moulded"])}
        trick = pick(dice, DECEITS)
        return {"findings": [], "trick": trick, "fam": pick(dice, DECEIT_PLACE.get(trick, LIE + STAND)),
                "pattern": DECEIT_DESIGN.get(trick) or pick(dice, ["solid", "swirl", "layers", "drops", "hanger", "solid"])}
    first = pick(dice, list(FL))
    findings = [first] + ([pick(dice, TOGETHER[first])] if dice.random() < 0.4 else [])
    chosen = set(findings)
    asked = {"findings": findings, "pattern": pick(dice, DESIGNS_OF.get(first, DESIGNS)), "st": float(pick(dice, [0.35, 0.6, 0.8, 1.0])),
             "fam": pick(dice, STAND if chosen & TOP else LIE + STAND)}
    if first in COLOURS_OF:
        asked["mood"] = pick(dice, COLOURS_OF[first])
    if "crack" in chosen and (dice.random() < 0.5 or chosen & TOP):
        asked |= {"where": "top", "fam": pick(dice, ["loaf", "loaf", "standing"]), "top": "1"}
    elif "crack" in chosen:
        asked |= {"where": "face", "fam": pick(dice, ["lying", "closeup", "standing", "leaning"])}
    if dice.random() < 0.15 and asked["pattern"] != "moulded" and not chosen & {"white-specks", "coloured-specks", "pinholes", "mould-dimples"}:
        asked["exf"] = pick(dice, ["poppy", "coffee", "oats"])
    elif dice.random() < 0.1:
        asked["stamp"] = 1
    return asked


def drawn(seed, clean):
    """What `make` gives for the first subject that can be drawn: one too faint is refused by it. `clean`: without a flaw."""
    for again in range(16):
        dice = np.random.default_rng([seed, again])
        asked = subject(dice, clean)
        try:
            return asked, make(dice, asked), dice
        except (ValueError, IndexError, AttributeError, TypeError, NameError):
            continue
    raise ValueError(f"nothing could be drawn from seed {seed}")


def one(seed, size, clean=0.4):
    """One picture of `size` (height, width), upright or lying, for a store (single.packed)."""
    height, width = size
    draw.SIZES[:] = [(width, height), (width, height), (height, width)]
    dice = np.random.default_rng(seed)
    soap = dice.random() > 0.07
    if soap:
        asked, (image, depth, focus, how, _, _), dice = drawn(seed, dice.random() < clean)
    else:
        asked, (image, depth, focus, how) = {"findings": []}, nothing(dice, int(dice.integers(12)))
    how["blur"] *= max(size) / LENGTH
    how["noise"] *= GRAIN
    picture = as_file(post(dice, image, depth, focus, how, 1), how["jq"])
    bar = np.clip(image[..., 3], 0, 1)
    maps = {name: (image[..., 4 + k] > 0.35).astype(np.float32) for k, name in enumerate(asked["findings"])}
    present = {name for name, mask in maps.items() if mask.sum() > 0.0012 * bar.sum()}
    return packed(picture, bar, maps, present, nothing=not soap)
