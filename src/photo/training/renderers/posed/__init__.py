"""Bars in many poses, traced as rounded boxes with painted and embossed faces; each flaw seen against the same picture without it: `one` draws a picture. Needs Pillow and scipy."""
import numpy as np

from single import FINDINGS, as_file, packed

from . import decoys, things
from .noise import rng_of
from .shot import BESIDE, picture


def wish(dice, clean):
  """What the next picture shows, as `picture` takes it: group, flaws, what deceives."""
  if dice.random() < .05:
    return "none", [], None
  if dice.random() < clean:
    return ("tricky", [], str(dice.choice(decoys.NAMES))) if dice.random() < .55 else ("plain", [], None)
  main = str(dice.choice(FINDINGS))
  if dice.random() < .1:
    return "close", [main], None
  flaws = [main]
  other = str(dice.choice(FINDINGS))
  # A top as poured and a side from the mould are not seen together.
  if dice.random() < .35 and other != main and {main, other} != {"wrinkled-top", "mould-dimples"}:
    flaws.append(other)
  return "flaw", flaws, str(dice.choice(BESIDE)) if dice.random() < .22 else None


def one(seed, size, clean=.4):
  """One picture of `size` (height, width), upright or lying, for a store (single.packed)."""
  dice = np.random.default_rng([seed, 10])
  group, flaws, decoy = wish(dice, clean)
  size = size if dice.random() < .6 else size[::-1]
  if group == "none":
    image, quality = things.draw(*rng_of(seed, "none").integers(1 << 30, size=2), int(dice.integers(len(things.WHATS))), size)
    return packed(as_file(image, quality), np.zeros(size, np.float32), {}, set(), True)
  image, bar, found, quality = picture(group, flaws, decoy, seed, size)
  return packed(as_file(image, quality), bar, found, set(found))
