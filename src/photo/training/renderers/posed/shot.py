"""A picture with its flaws, each measured against the same picture without it."""
import numpy as np

from . import decoys, design, flaws_b, ground, phone, poses, render
from .noise import F, blur, resize, rng_of

# Asked for again with stronger flaws while none can be seen, so many times at most: the set that this drew first allowed six.
ATTEMPTS = 3
FACES = ("flat", "stand", "lean", "stack", "hand", "grid", "row")
# Poses that show what is asked for, each with its part.
POSES = {"cut": (FACES, [.27, .17, .12, .1, .14, .1, .1]),
         "top": (("flat", "loaf", "loafcut", "row", "grid", "hand"), [.35, .25, .12, .12, .08, .08]),
         "mould": (("flat", "lean", "stack", "hand", "grid", "stand"), [.32, .14, .14, .16, .1, .14]),
         "crack": (("loaf", "loafcut", "row", "stand", "flat", "lean", "hand"), [.28, .1, .14, .12, .2, .08, .08]),
         "any": (FACES + ("loaf", "loafcut", "side"), [.22, .14, .1, .1, .12, .08, .08, .06, .05, .05])}
# Of the cut face or of what was poured beside another colour: not in a mould of its own.
OF_THE_CUT = {"dark-centre-ring", "drag-lines", "layer-gap", "colour-bled", "brown-outside-in"}
ON_PALE = {"orange-spots", "brown-outside-in", "crackle-network", "dark-centre-ring", "translucent-veins"}
# What deceives beside a flaw: neither hides it nor wants another face.
BESIDE = [name for name in decoys.NAMES if name not in decoys.ON_TOP and name not in ("band", "crinkle", "stamp", "mottle")]


def kind_and_pose(rng, group, flaws, decoy):
  """Kind of bar and pose in which the asked flaws can be seen."""
  kind, pool = "loafbar", "cut" if flaws else "any"
  if "wrinkled-top" in flaws or decoy in decoys.ON_TOP:
    kind, pool = "slab" if rng.random() < .55 else "loafbar", "top"
  elif "mould-dimples" in flaws:
    kind, pool = "cavity", "mould"
  elif decoy in ("crinkle", "stamp", "embeds", "band", "mica"):
    pool = "cut"
  elif "crack" in flaws:
    pool = "crack"
  elif not OF_THE_CUT & set(flaws) and rng.random() < .22 and decoy not in ("crinkle", "mica"):
    kind = "cavity"
  if group == "close":
    return {"wrinkled-top": "slab", "mould-dimples": "cavity"}.get(flaws[0], "loafbar"), "close"
  pose = str(rng.choice(POSES[pool][0], p=POSES[pool][1]))
  if pool == "top" and kind == "loafbar" and pose in ("flat", "grid", "hand"):
    pose = "row"
  if kind == "slab" and pose in ("loaf", "loafcut", "row"):
    kind = "loafbar"
  return kind, pose


def designed(rng, group, flaws, decoy, dims):
  """How the soap was poured, where that is not to be left to chance."""
  there, kind = set(flaws), None
  if "layer-gap" in there:
    kind = "layers"
  elif "colour-bled" in there:
    kind = str(rng.choice(["layers", "pot", "hanger", "drop", "stripes"]))
  elif decoy == "mica":
    kind = str(rng.choice(["layers", "pot", "drop"]))
  elif group == "plain" or there & {"dark-centre-ring", "brown-outside-in"} and rng.random() < .7 or "smears" in there and rng.random() < .6:
    kind = "plain"
  made = design.make(rng, kind, (dims[0], dims[1], 2.5), bool(there & ON_PALE))
  if there & {"powdery-film", "white-specks"}:
    made["cols"] = [np.minimum(c, .55) * .8 for c in made["cols"]]
  return made


def lit_for(rng, decoy, bar, cam):
  lit = render.light(rng)
  if decoy == "glare":
    # The lamp stands where the large face mirrors it.
    lit["glare"] = True
    n = bar.R[:, 2] if (bar.R[:, 2] @ (cam["pos"] - bar.c)) > 0 else bar.R[:, 1]
    v = (cam["pos"] - bar.c) / np.linalg.norm(cam["pos"] - bar.c)
    towards = 2 * n * (n @ v) - v + .12 * rng.standard_normal(3)
    if towards[1] > .1:
      lit["L"] = (towards / np.linalg.norm(towards)).astype(F)
  if decoy == "blinds":
    lit["spread"], lit["blinds"] = .03, (rng.uniform(1.2, 3), rng.uniform(0, 3.14), int(rng.integers(2)))
  return lit


def flawed(rng, bars, pose):
  """Which of the bars have the flaws."""
  if len(bars) == 1 or rng.random() < .6 or pose in ("loafcut", "lean", "row", "stack"):
    return list(range(len(bars)))
  return [int(k) for k in rng.permutation(len(bars))[:max(1, len(bars) // 2)]]


def visible(scene, linear, asks, again, s, exposure):
  """Where each flaw can be seen, masks of the drawn size by name; those too faint are left out."""
  box = tuple(slice(int(v.min()), int(v.max()) + 1) for v in np.nonzero(scene.bar))
  look = lambda picture: phone.tone(blur(picture[box], .7), s, exposure)
  full, bar, found = look(linear), scene.bar[box], {}
  for q in asks:
    change = np.abs(np.clip(full, 0, 1) - np.clip(look(again([o for o in asks if o is not q], q["bars"])), 0, 1)).max(2)
    # Long straight lines show through the noise.
    k = .6 if q["name"] == "drag-lines" else 1
    seen = (change > k * (.032 + .6 * s["noise"])) & bar
    strong = float(np.sort(change[seen])[-min(int(seen.sum()), 40):].mean()) if seen.any() else 0
    if seen.sum() > 60 and strong > k * (.065 + 1.2 * s["noise"]):
      found[q["name"]] = np.zeros(scene.bar.shape, F)
      found[q["name"]][box] = seen
  return found


def drawn(group, flaws, decoy, seed, size, attempt):
  rng = rng_of(seed, "soap", attempt)
  kind, pose = kind_and_pose(rng, group, flaws, decoy)
  bars, cam = poses.build(rng, pose, kind, int(rng.integers(1 << 30)), size)
  made = designed(rng, group, flaws, decoy, bars[0].dims)
  lit = lit_for(rng, decoy, bars[0], cam)
  shared = dict(cache={}, gloss=float(rng.uniform(.9, 1.6) if lit["glare"] else rng.uniform(.15, 1.0)), rough=float(rng.uniform(.4, 2.2)),
                topwave=float(rng.uniform(.2, 1.5)), worn=float(rng.uniform(0, 1.3)), plane=bool(rng.random() < .5), wrap=float(rng.uniform(.1, .35)),
                ggloss=float(rng.choice([0, .05, .3])), dec=decoys.choices(rng))
  scene = render.Scene(rng, bars, cam, lit, str(rng.choice(ground.KINDS)), seed, hand=pose == "hand")
  asks = [{**flaws_b.ask(rng, name), "bars": flawed(rng, bars, pose)} for name in flaws]
  for q in asks if attempt else ():
    q["s"], q["e"] = max(q["s"], .55), max(q["e"], .5)
  s = phone.settings(rng, lit)
  again = lambda some, only=(): scene.render(some, made, [decoy] if decoy else [], shared, only)
  linear = again(asks)
  exposure = phone.exposure(linear, scene.bar)
  found = visible(scene, linear, asks, again, s, exposure) if scene.bar.any() else {}
  depth = scene.z.reshape(scene.bar.shape)
  focus = float(np.percentile(depth[scene.bar], 25)) if scene.bar.any() else cam["dist"]
  image = phone.shoot(linear, depth, focus, s, exposure, scene.who.reshape(scene.bar.shape), cam["out"])
  enlarged = lambda mask: np.clip(resize(mask.astype(F), image.shape[:2]), 0, 1)
  return image, enlarged(scene.bar), {name: enlarged(mask) for name, mask in found.items()}, s["q"]


def picture(group, flaws, decoy, seed, size):
  """
  A picture at `size` (height, width): bytes [H,W,3], soap [H,W] 0 to 1, by name where each flaw can be seen, and the
  quality of its file. `group`: plain, tricky, flaw or close; `decoy`: one of decoys.NAMES, or none.
  """
  for attempt in range(ATTEMPTS):
    image, bar, found, quality = drawn(group, flaws, decoy, seed, size, attempt)
    if bar.max() > .5 and (found or not flaws):
      break
  return image, bar, found, quality
