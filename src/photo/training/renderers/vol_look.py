"""Colours and patterns of soap: palettes, swirls, layers, embeds, all as numbers of a 3D colour field."""
import colorsys
import numpy as np


def hsv(h, s, v):
    return np.array(colorsys.hsv_to_rgb(h % 1.0, min(max(s, 0), 1), min(max(v, 0), 1)))


def lin(c):
    """sRGB to linear light."""
    c = np.asarray(c, float)
    return np.where(c < .04045, c / 12.92, ((c + .055) / 1.055) ** 2.4)


def one(r, fam):
    """One soap colour of a family (sRGB)."""
    if fam == "cream":
        return hsv(r.uniform(.08, .16), r.uniform(.04, .3), r.uniform(.8, .97))
    if fam == "white":
        return hsv(r.uniform(.05, .6), r.uniform(0, .06), r.uniform(.88, .98))
    if fam == "pastel":
        return hsv(r.random(), r.uniform(.15, .35), r.uniform(.75, .95))
    if fam == "deep":
        return hsv(r.random(), r.uniform(.5, .9), r.uniform(.3, .8))
    if fam == "brown":
        return hsv(r.uniform(.04, .1), r.uniform(.3, .7), r.uniform(.2, .7))
    if fam == "green":
        return hsv(r.uniform(.15, .4), r.uniform(.2, .6), r.uniform(.3, .75))
    return hsv(r.random(), r.uniform(0, .25), r.uniform(.06, .25))


FAMS = ["cream", "white", "pastel", "deep", "brown", "green", "black"]


def palette(r, n, pale=0, apart=.08):
    """n linear colours; the first is the ground."""
    base = r.choice(FAMS, p=[.3, .14, .18, .13, .11, .08, .06])
    if pale == 2:
        base = r.choice(["deep", "brown", "green", "black", "pastel"])
    if pale == 3:
        base = r.choice(["cream", "white", "pastel", "deep", "green", "brown"], p=[.36, .13, .2, .14, .1, .07])
    if pale == 1:
        base = r.choice(["cream", "white", "pastel"])
    cols = [one(r, base)]
    mood = r.choice(["same", "mixed", "contrast"])
    for _ in range(n - 1):
        if mood == "same":
            h, s, v = colorsys.rgb_to_hsv(*cols[0])
            c = hsv(h + r.normal(0, .05), s * r.uniform(.6, 2) + .05, v * r.uniform(.5, 1.1))
        elif mood == "mixed":
            c = one(r, r.choice(FAMS))
        else:
            c = one(r, r.choice(["deep", "black", "white", "brown"]))
        if np.abs(c - cols[-1]).max() < apart:
            c = c * .6 if c.max() > .4 else np.clip(c + .35, 0, 1)
        cols.append(c)
    return [lin(c) for c in cols]


def design(r, want, pale):
    """Numbers of the colour field; want: None, 'multi', 'layers', 'plain'."""
    kind = r.choice(["plain", "layers", "swirl", "comb", "drop", "ombre", "vein", "rings"],
                    p=[.3, .14, .2, .08, .08, .07, .07, .06])
    if want == "layers":
        kind = "layers"
    if want == "multi":
        kind = r.choice(["layers", "swirl", "comb", "drop", "layers", "swirl"])
    if want == "plain":
        kind = r.choice(["plain", "plain", "layers"])
    nc = 1 if kind in ("plain", "vein") else int(r.choice([2, 2, 3, 3, 4, 5, 6]))
    if kind == "ombre":
        nc = int(r.integers(2, 4))
    cols = palette(r, max(nc, 1), pale, .25 if want == "multi" else .08)
    if kind in ("swirl", "comb", "drop") and nc < 5 and r.random() < .5:
        cols = [c for x in cols[1:] for c in (cols[0], x)] or cols
    pal = np.zeros((8, 3))
    for i in range(8):
        pal[i] = cols[i % len(cols)]
    d = dict(A=np.zeros(3), warp=0., wf=2., fa=0., ff=2., comb=0., cf=10., cd=np.array([1., 0, 0]), rad=0., rs=np.ones(3),
             rc=np.zeros((4, 2)), s0=0., soft=r.choice([.01, .03, .1]), nc=len(cols), wrapc=1., pal=pal, kind=kind)
    ax = r.choice([1, 1, 1, 0]) if kind != "ombre" else r.integers(2)
    if kind in ("layers", "ombre"):
        d["A"][ax] = max(nc, 2) / r.uniform(.9, 1.3)
        d["A"] += r.normal(0, .12, 3) * r.choice([0, 1]) * [1, 1, .1]
        d.update(wrapc=0., s0=nc / 2 + r.uniform(-.2, .2), warp=r.choice([.0, .02, .08]), wf=r.uniform(1, 4), fa=r.choice([0, .06, .25]), ff=r.uniform(1, 5))
        if kind == "ombre":
            d.update(soft=1.0, fa=.1, A=d["A"] * .7)
    if kind == "swirl":
        d.update(A=r.normal(0, .8, 3), warp=r.uniform(.1, .6), wf=r.uniform(.7, 2.5), fa=r.uniform(1, 4), ff=r.uniform(.5, 2), s0=r.uniform(0, 8))
    if kind == "comb":
        cd = r.normal(0, 1, 3); cd[2] *= .2
        d.update(comb=r.uniform(.4, 1.4), cf=r.uniform(8, 25), cd=cd / np.linalg.norm(cd), warp=r.uniform(.02, .15), wf=r.uniform(1, 3), fa=.3, s0=r.uniform(0, 8))
        d["A"][r.integers(2)] = r.uniform(2, 6)
    if kind in ("drop", "rings"):
        d.update(rad=r.uniform(4, 11), rs=np.array([1, r.uniform(.4, 1), .1]), rc=r.uniform(-.4, .4, (4, 2)), warp=r.uniform(.02, .2), wf=r.uniform(1.5, 4), fa=.2)
        if kind == "rings":
            d["rc"][:] = r.uniform(-.15, .15, 2)
    v = kind == "vein" or (r.random() < .08 and want != "plain")
    d.update(va=float(v) * r.uniform(.4, 1), vf=r.uniform(1, 4), vw=r.uniform(.02, .12), vcol=palette(r, 2)[1])
    e = 1 if (r.random() < .1 and want != "plain") or (want == "multi" and kind == "plain") else 0
    d.update(ne=float(e * r.integers(1, 4)), ec=np.concatenate([r.uniform(-.3, .3, (3, 2)), r.uniform(.05, .18, (3, 1)), r.uniform(.5, 2, (3, 1))], 1),
             ecol=np.stack([lin(one(r, r.choice(FAMS))) for _ in range(3)]), ek=r.choice([2., 2., 6.]), ez=r.choice([0., 1.]))
    d.update(multi=float(nc > 1 or e), transl=r.uniform(.05, .5), mot=r.choice([.01, .03, .08]), motf=r.uniform(3, 14))
    return d
