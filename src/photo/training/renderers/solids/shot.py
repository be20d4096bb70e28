"""A picture with its flaws, each measured against the same picture without it."""
import numpy as np

from . import camera
from .render import render
from .scene import empty_scene, soap_scene
from .soaps import deco, make_flaw

SURFACE = ["poppy", "oats", "coffee", "glitter", "stamp", "dew", "lint", "crumbs", "band"]
# Seen and measured at this longer side, in pixels.
MEASURED = 340
# Rendered at this part of the size, then enlarged as a small sensor's picture is.
RENDERED = 0.76


def deceive(r, sc):
    """Adds what is no flaw but looks like one."""
    soap, face = sc["soap"], sc["face"]
    names = SURFACE + (["petals", "salt"] if face == "top" else []) + (["embed", "rim", "line", "crinkle", "rim", "embed"] if face == "cut" else [])
    for _ in range(1 + (r.random() < .2)):
        soap["deco"].append(deco(r, names[r.integers(len(names))]))
    if r.random() < .2:
        sc["view"]["stripes"] = int(r.integers(1, 3))
    if r.random() < .15:
        soap["gloss"] = 2.2


def soap_mask(sc, ids):
    is_soap = np.array([False] + [o["mat"] == 0 for o in sc["objs"]])
    return is_soap[ids]


def visible(sc, flaws, cam, gain, size):
    """Where on the bar each flaw can be seen, [h,w] of booleans by its number, at MEASURED pixels; those too faint are left out."""
    q = MEASURED / max(size)
    h, w = int(size[0] * q), int(size[1] * q)
    lin, ids, depth, _ = render(sc, w, h, flaws)
    bar = soap_mask(sc, ids)
    full = camera.develop(lin, depth, sc["focus"], cam, gain, q)
    found = {}
    for f in flaws:
        lin0, _, d0, _ = render(sc, w, h, [g for g in flaws if g is not f])
        bare = camera.develop(lin0, d0, sc["focus"], cam, gain, q)
        d = np.abs(full - bare)
        diff = np.maximum(d.max(-1) * .6, np.abs((full - bare) @ np.array([.3, .55, .15])))
        there = (diff > 9 / 255 + cam["noise"] * .5) & bar
        share, peak = there.sum() / max(bar.sum(), 1), np.percentile(diff[bar], 99.8) if bar.any() else 0
        if there.sum() > 30 and share > 0.0012 and peak > 16 / 255 + cam["noise"]:
            found[f["id"]] = there
    return found


def build(r, job, attempt):
    """Scene, flaws and camera of a job: `kind` none, clean, flaw or close; `flaws` by their numbers; `trick`."""
    if job["kind"] == "none":
        return empty_scene(r), [], camera.make_camera(r)
    close = job["kind"] == "close"
    sc = soap_scene(r, job["flaws"], close=close)
    low = min(.9, .15 + .25 * attempt)
    flaws = []
    for i in job["flaws"]:
        f = make_flaw(r, i, sc["soap"], sc["face"], strength=r.uniform(max(low, .45) if close else low, 1),
                      extent=r.uniform(.5, 1) if close else r.uniform(min(.6, .05 + .2 * attempt), 1))
        if sc["face"] == "low":
            f["c"][1] = -sc["soap"]["h"][1]
        if sc["nbars"] > 2 and r.random() < .35:
            f["bits"] = int(r.integers(1, 255)) | 1 << int(r.integers(sc["nbars"]))
        flaws.append(f)
    if job["trick"]:
        deceive(r, sc)
    return sc, flaws, camera.make_camera(r)


def picture(job, seed, size):
    """
    The picture of a job at `size` (height, width): bytes [H,W,3], soap [h,w] of booleans, and by finding's number where it can be seen.
    Drawn up to four times, with stronger flaws each time, until each can be seen.
    """
    found = {}
    for attempt in range(4):
        r = np.random.default_rng([seed, 8, attempt])
        sc, flaws, cam = build(r, job, attempt)
        lin, ids, depth, _ = render(sc, int(size[1] * RENDERED), int(size[0] * RENDERED), flaws)
        gain, bar = camera.level(lin), soap_mask(sc, ids)
        found = visible(sc, flaws, cam, gain, size)
        if job["kind"] != "none" and bar.mean() < .05:
            continue
        if len(found) == len(flaws):
            break
    im = camera.enlarge(camera.develop(lin, depth, sc["focus"], cam, gain, RENDERED), size[1], size[0])
    return np.asarray(camera.sensor(im, cam)), bar, found
