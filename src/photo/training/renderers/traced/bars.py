"""Recipes: the look of one batch of soap, its flaws, and what deceives."""
import numpy as np
from . import core
from .params import FINDINGS, OI

CREAMS = [(238, 226, 200), (243, 240, 230), (225, 205, 170), (236, 214, 178), (214, 190, 150), (240, 233, 214)]
COLOURS = [(214, 160, 150), (160, 172, 130), (175, 160, 200), (90, 130, 170), (225, 170, 80), (180, 104, 74),
           (200, 90, 112), (170, 205, 182), (50, 130, 132), (104, 70, 48), (92, 130, 72), (168, 58, 54),
           (228, 110, 150), (62, 62, 66), (60, 78, 120), (150, 110, 80), (230, 200, 120), (120, 90, 140),
           (200, 215, 222), (196, 178, 160)]
STRONG = [3, 6, 8, 9, 10, 11, 12, 13, 14, 17, 5]


def lin(c):
    c = np.asarray(c, float) / 255
    return np.where(c < 0.04045, c / 12.92, ((c + 0.055) / 1.055) ** 2.4)


def jit(r, c, s=10):
    return lin(np.clip(np.array(c) + r.normal(0, s, 3), 8, 246))


def batch(r, need=None):
    """One recipe. need: findings it must be able to show."""
    need = need or []
    o = core.obj(type=0, soapy=1, seed=int(r.integers(1, 9000)), rad=r.choice([0.06, 0.12, 0.25, 0.45], p=[.3, .3, .25, .15]))
    cut = float(r.random() < 0.72)
    if {"dark-centre-ring", "drag-lines", "brown-outside-in"} & set(need): cut = 1.0
    if "mould-dimples" in need: cut = float(r.random() < 0.3)
    if cut: hx, hy, hz = r.uniform(3.2, 4.5), r.uniform(1.0, 1.7), r.uniform(2.4, 3.6)
    else:
        hx, hz = r.uniform(3.4, 4.6), r.uniform(2.4, 3.1); hy = r.uniform(1.0, 1.5)
        core.put(o, rad=r.uniform(0.3, 0.9))
    core.put(o, hx=hx, hy=hy, hz=hz, cut=cut, gloss=r.uniform(0.1, 0.75), transl=r.uniform(0.2, 1), mottle=r.uniform(0.2, 0.9),
             warpamp=r.choice([0, 0.06, 0.14]), chip=r.choice([0, 0, 0.08, 0.16]), pscale=r.uniform(0.22, 0.6), pwarp=r.uniform(0.4, 1.1),
             pang=r.uniform(0, 3.1), ncol=r.integers(1, 4), off=r.uniform(-50, 50))
    pat = int(r.choice([0, 1, 2, 3, 4, 5, 6], p=[.36, .18, .14, .07, .08, .09, .08]))
    if "layer-gap" in need: pat = 2
    if "colour-bled" in need: pat = int(r.choice([1, 2, 4, 5], p=[.3, .4, .15, .15]))
    if {"brown-outside-in", "dark-centre-ring"} & set(need) and r.random() < 0.75: pat = 0
    if "crackle-network" in need and r.random() < 0.5: pat = 0
    base = jit(r, CREAMS[r.integers(len(CREAMS))]) if pat or r.random() < 0.62 else jit(r, COLOURS[r.integers(len(COLOURS))])
    if {"brown-outside-in", "orange-spots", "dark-centre-ring"} & set(need) : base = jit(r, CREAMS[r.integers(len(CREAMS))]) if r.random() < .75 else base
    if "white-specks" in need and r.random() < .75 and pat == 0: base = jit(r, COLOURS[r.integers(len(COLOURS))], 14)
    if "powdery-film" in need and r.random() < .7: base = jit(r, COLOURS[r.integers(len(COLOURS))], 14)
    if {"translucent-veins", "crackle-network"} & set(need) and r.random() < .7: base = jit(r, COLOURS[r.choice([0, 1, 2, 3, 4, 6, 7, 15, 16, 18, 19])], 12)
    if pat and r.random() < 0.25: base = jit(r, COLOURS[r.integers(len(COLOURS))])
    core.col(o, 0, base)
    for i in (1, 2, 3):
        pool = STRONG if "colour-bled" in need and i == 1 else range(len(COLOURS))
        c = jit(r, COLOURS[r.choice(list(pool))], 12)
        if i > 1: c = jit(r, CREAMS[1]) if r.random() < .4 else np.clip(o[OI["c1r"]:OI["c1r"] + 3] * r.uniform(.4, 1.9), .01, .85) if r.random() < .6 else c
        elif r.random() < .35 and "colour-bled" not in need: c = c * .5 + base * .5
        core.col(o, i, c)
    l1 = r.uniform(-0.5, 0.35)
    core.put(o, pattern=pat, lay1=l1, lay2=l1 + r.uniform(0.3, 0.6), bleedable=float(pat == 2))
    if pat == 2: core.put(o, pwarp=r.choice([0.05, 0.25, 0.6]), ncol=r.integers(1, 3) if l1 < 0.1 else 1)
    if pat == 4: core.put(o, pscale=r.uniform(0.45, 0.9), pwarp=r.uniform(.3, .8))
    if pat == 0: core.put(o, ncol=0)
    if cut and r.random() < 0.6:
        core.put(o, topamp=r.uniform(0.08, 0.55), topscale=r.uniform(0.4, 1.3), topkind=r.integers(0, 3))
    if "wrinkled-top" in need: core.put(o, topamp=r.choice([0, 0.05]))
    if "powdery-film" in need and r.random() < .5: core.put(o, topamp=r.uniform(0.1, 0.4), topscale=r.uniform(.4, 1.1), topkind=r.integers(0, 3))
    if r.random() < 0.08: core.put(o, stamp=r.integers(1, 6), stsize=min(hx, hz) * r.uniform(0.4, 0.62))
    return o


TRICKS = ["exf1", "exf2", "exf3", "exf4", "embed", "stamp", "dew", "glitter", "wavy", "botan", "mottle", "mica",
          "topmica", "marble", "ombre", "gobo", "glare", "drops", "label", "peaks"]


def trick(o, name, r):
    """Something innocent that may look like a flaw; gives scene hints back."""
    P = lambda **k: core.put(o, **k)
    if name.startswith("exf"):
        k = int(name[3]); P(exf=k, exfd=r.uniform(.25, .85), exfs=[0, r.uniform(.3, .5), r.uniform(.25, .5), r.uniform(.5, .9), r.uniform(.35, .7)][k])
    elif name == "embed":
        e = r.uniform(.6, 1.3); P(embed=r.integers(1, 4), ex=r.uniform(-1, 1), ez=r.uniform(-.6, .6), er=e)
    elif name == "stamp": P(stamp=r.integers(1, 6), stsize=min(o[OI["hx"]], o[OI["hz"]]) * r.uniform(.45, .7))
    elif name == "dew": P(dew=r.uniform(.25, .7))
    elif name == "glitter": P(glitter=r.uniform(.3, .9))
    elif name == "wavy": P(wavy=r.uniform(.06, .14))
    elif name == "botan": P(botan=r.integers(1, 4), topamp=max(o[OI["topamp"]], .15), topscale=.7)
    elif name == "mottle": P(mottle=r.uniform(1.5, 2.2))
    elif name == "mica":
        P(pattern=2, lay1=r.uniform(-.3, .4), ncol=1, micaline=r.uniform(.6, 1), pwarp=r.uniform(.1, .7)); core.col(o, 1, jit(r, COLOURS[r.integers(len(COLOURS))]))
    elif name == "topmica":
        P(topmica=r.uniform(.6, 1)); core.col(o, 3, jit(r, [(200, 160, 70), (190, 190, 200), (190, 110, 80)][r.integers(3)]))
    elif name == "marble": P(pattern=6, ncol=r.integers(1, 3), pscale=r.uniform(.25, .5), pwarp=r.uniform(.6, 1.1))
    elif name == "ombre": P(pattern=3, ncol=0)
    elif name == "drops": P(pattern=4, ncol=2, pscale=r.uniform(.5, .9), pwarp=.6)
    elif name == "peaks": P(topamp=r.uniform(.4, .7), topscale=r.uniform(.6, 1.2), topkind=1)
    return name


def flaw(o, name, r, strength, cover, size=None):
    """Puts a finding on the recipe. strength, cover: 0..1."""
    k = FINDINGS.index(name); v = int(r.integers(0, 3)); g = lambda a, b: r.uniform(a, b)
    scale = {0: g(.25, .7), 1: g(.6, 1.6), 2: [g(.2, .4), g(.4, 1.0), g(.2, .5)][v], 3: g(.35, 1.0), 4: g(.3, .9) if v != 1 else g(.3, .6), 5: 1,
             6: g(.5, .85), 7: g(.9, 2.0) if v != 1 else g(.6, 1.1), 8: g(.25, .7), 9: g(.6, 1), 10: g(.35, 1.4), 11: g(.15, .9),
             12: g(.6, 1.5), 13: g(.4, 1), 14: g(1.0, 2.4), 15: g(.7, 1.7)}[k]
    lo = [.35, .3, .4, .45, .45, .3, .35, .4, .3, .15, .4, .5, .4, .15, .3, .35][k]
    amt = lo + (1 - lo) * strength
    s = int(r.integers(1, 4000))
    base = o[OI["c0r"]:OI["c0r"] + 3]
    c = jit(r, COLOURS[r.choice(STRONG)], 12)
    if k == 1 and r.random() < .3: c = np.clip(base * 2.2, 0, .9) if base.mean() < .4 else base * .35
    if k == 10: c = lin((r.uniform(95, 150), r.uniform(60, 95), r.uniform(30, 60)))
    core.put(o, **{"f%d_amt" % k: amt, "f%d_scale" % k: scale, "f%d_var" % k: v, "f%d_cov" % k: cover,
                   "f%d_r" % k: c[0], "f%d_g" % k: c[1], "f%d_b" % k: c[2], "f%d_seed" % k: s})
    return k


def closer(o, k, r):
    """Finer or coarser for close views of about a third of the bar."""
    if k in (0, 2, 8): core.put(o, **{"f%d_scale" % k: o[OI["f%d_scale" % k]] * r.uniform(.6, 1)})
