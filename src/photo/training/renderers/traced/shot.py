"""What a picture shows, what the camera makes of it, and how much of each flaw can be seen in it. Drawn by another hand; see ../../README.md."""
import numpy as np

from . import bars, camera, core, scene, still
from .params import FINDINGS, OI

# How much smaller than its picture a scene is drawn.
DRAWN = 1.15
# The program's blurs are meant for pictures of this length, and their grain for pictures that are made smaller before they are read.
LENGTH, GRAIN = 1000, 0.75
TOP = {"powdery-film", "wrinkled-top", "crack"}
FACE = {"dark-centre-ring", "drag-lines", "brown-outside-in", "layer-gap"}


def pose_for(flaws, r, o):
    f = set(flaws)
    if f & TOP: c = ["standing", "row", "loaf", "halfloaf", "loaf", "standing"]
    elif f & FACE: c = ["lying", "standing", "row", "stack", "lean", "held", "group", "halfloaf", "lying"]
    elif "mould-dimples" in f: c = ["lying", "standing", "loaf", "held", "group", "halfloaf"] if o[OI["cut"]] < .5 else ["loaf", "halfloaf", "row"]
    else: c = scene.POSES + ["lying", "standing", "group"]
    p = str(r.choice(c))
    return "standing" if p in ("loaf", "halfloaf", "row") and o[OI["cut"]] < .5 else p


def compose(job, r):
    """A scene for the job: C scene numbers, objects, prims, focus, which flaws are on."""
    if job["kind"] == "none": objs, prims, c, rad, el = still.without_soap(r, job["sub"]); o, ks, fill = None, [], r.uniform(.6, .95)
    else:
        fl = job["flaws"]; o = bars.batch(r, fl); ks = []; trick = None
        if job["trick"]:
            trick = job.get("name") or str(r.choice(["exf1", "exf3", "embed", "stamp", "dew", "glitter", "mottle", "gobo", "glare", "topmica", "botan"]))
            bars.trick(o, trick, r)
        for f in fl: ks.append(bars.flaw(o, f, r, (1.6 if f in ("drag-lines", "mould-dimples") else .8) if job.get("again") else job["strength"], 1. if job.get("again") else float(r.choice([.12, .3, .55, 1, 1]))))
        if set(fl) & {"colour-bled", "layer-gap"} and o[OI["pattern"]] not in (1, 2, 4, 5): core.put(o, pattern=2, ncol=max(1, o[OI["ncol"]]), bleedable=1)
        pose = pose_for(fl + (["powdery-film"] if trick in ("botan", "topmica", "peaks") else []), r, o)
        if trick in ("stamp", "embed"): pose = str(r.choice(["lying", "group", "stack" if trick == "embed" else "lying"]))
        objs, prims, c, rad, el = scene.arrange(o, pose, r); fill = r.uniform(.62, 1.05)
        if set(fl) & TOP and pose != "held": el = (max(el[0], 30), max(el[1], 60))
        if "mould-dimples" in fl and pose != "held": el = (12, 45)
        if job["kind"] == "close": fill = r.uniform(1.5, 2.3); c = np.array(c) + r.normal(0, .12, 3) * rad
        if trick == "label" :
            b = [x for x in objs if x[OI["type"]] == 0][-1]; lab = core.obj(type=1, mat=6, rad=.05, seed=int(r.integers(99)), hx=b[OI["hx"]] * r.uniform(.3, .5), hy=b[OI["hy"]] + .04, hz=b[OI["hz"]] + .04)
            core.col(lab, 0, bars.lin([(200, 164, 120), (238, 234, 224)][r.integers(2)])); core.col(lab, 1, bars.lin((60, 50, 44))); core.put(b, topamp=0, warpamp=0)
            core.place(lab, b[OI["cx"]:OI["cx"] + 3], b[OI["m0"]:OI["m0"] + 9]); objs.append(lab)
        if pose not in ("held", "loaf", "group") and job["kind"] != "close": still.props(r, rad, objs)
        job["tricky"] = bool(trick)
    s = scene.surroundings(r, rad); s.update(scene.light(r, job.get("name") == "glare", job.get("name") == "gobo"))
    if job.get("name") == "glare": core.put(objs[0], gloss=1.3)
    if prims and o is not None: s["wdist"] = r.uniform(15, 70)
    portrait = r.random() < .5; cam, f = scene.aim(r, c, rad, el, portrait, fill); s.update(cam)
    height, width = job["size"]; wh = (height, width) if portrait else (width, height)
    return s, objs, prims, f, ks, wh


def without(objs, k):
    out = [o.copy() for o in objs]
    for o in out: o[OI["f%d_amt" % k]] = 0
    return out


def measure(s, objs, prims, f, ks, w, h, r, job, dof, small=False):
    """Develops the picture with and without each flaw; returns image, mask, shares, settings."""
    k0 = 1 if small else DRAWN; w, h = int(w / k0), int(h / k0)               # drawn smaller, enlarged later as phones do
    lin, dep, ids = core.render(s, objs, prims, w, h, 0 if small else 1); cs = camera.settings(r, lin, ids); cs["blur"] *= max(job["size"]) / LENGTH; cs["noise"] *= GRAIN
    mid = ids[h // 4:h - h // 4, w // 4:w - w // 4] > 0; f = float(np.median(dep[h // 4:h - h // 4, w // 4:w - w // 4][mid])) if mid.any() else f
    if job["kind"] == "poor":
        cs["blur"] = 1
        if job["how"] == 0: cs["blur"] = r.uniform(9, 20) * w / 1000
        elif job["how"] == 1: cs.update(gain=cs["gain"] * r.uniform(.008, .03), noise=r.uniform(.03, .07), con=.3)
        else: a = r.uniform(0, 6.3); cs.update(move=r.uniform(50, 110), mdir=(np.sin(a), np.cos(a)), blur=3)
    img = camera.develop(camera.focus(lin, dep, f, dof), cs); shares = {}
    if not ks: return img, ids, shares, cs
    z = 1 if small else 1.25; soft = cs["blur"] / z + .4 + .5 * dof
    look = lambda ob: (lambda a: (camera.blur(camera.develop(a[0], cs), soft), a[2]))(core.render(s, ob, prims, int(w / z), int(h / z), -1))
    base, i1 = look(objs); bar = i1 > 0; n = max(bar.sum(), 1)
    for k in ks:
        b2, i2 = look(without(objs, k))
        d = np.abs(base - b2).max(2); d = np.maximum(d, core.gauss(d, 1.0)); vis = (d > .04 + cs["noise"]) & bar
        v = vis.sum() / n; strong = d[vis].mean() if vis.any() else 0
        shares[k] = (v, strong, vis)
    return img, ids, shares, cs


def good(job, ids, shares):
    a = (ids > 0).mean()
    if job["kind"] != "none" and a < (.75 if job["kind"] == "close" else .1): return False
    return all(v > (.05 if job["kind"] == "close" else .004) and q > .06 for v, q, _ in shares.values())


def attempt(i, job, seed, tries, div):
    best = None
    for t in tries:                                                # look at a small one first
        r = np.random.default_rng([seed, i, t]); comp = compose(job, r); s, objs, prims, f, ks, (w, h) = comp; dof = r.choice([0, .15, .35, .7]) * (1 if job["kind"] != "close" else .12)
        _, ids, sh, _ = measure(s, objs, prims, f, ks, w // div, h // div, np.random.default_rng(1), job, dof, True)
        best = (comp, dof)
        if good(job, ids, sh): break
    (s, objs, prims, f, ks, (w, h)), dof = best; r = np.random.default_rng([seed, i, 99])
    img, ids, sh, cs = measure(s, objs, prims, f, ks, w, h, r, job, dof)
    return job, img, ids, sh, cs, r, (w, h)


def seen(v, q, m): return v > .0008 and m.sum() > 25 and q > .05


def seen(v, q, m): return v > .0008 and m.sum() > 25 and q > .05
