"""Per-picture random parameters other than the 3D scene: colours, design, flaws, light, table, camera."""
import numpy as np
from .scene import FINDINGS, K
from .soap import DECOR


def hsv(h, s, v):
    i = np.array([0, 2 / 3, 1 / 3])
    k = np.abs(((h + i) % 1) * 6 - 3) - 1
    return (v * (1 - s * (1 - np.clip(k, 0, 1)))) ** 2.2


def colour(g, fam=None):
    """one linear soap colour"""
    fam = g.choice(7, p=[.3, .13, .2, .12, .11, .06, .08]) if fam is None else fam
    h = g.random()
    if fam == 0:
        return hsv(g.uniform(.08, .16), g.uniform(.08, .4), g.uniform(.8, .97))    # cream to yellow
    if fam == 1:
        return hsv(h, g.uniform(0, .06), g.uniform(.88, .98))
    if fam == 2:
        return hsv(h, g.uniform(.12, .38), g.uniform(.72, .95))
    if fam == 3:
        return hsv(h, g.uniform(.4, .85), g.uniform(.3, .85))
    if fam == 4:
        return hsv(g.uniform(.02, .12), g.uniform(.35, .75), g.uniform(.25, .75))  # clay, caramel, coffee
    if fam == 5:
        return hsv(h, g.uniform(0, .3), g.uniform(.06, .25))
    return hsv(g.uniform(.18, .5), g.uniform(.1, .5), g.uniform(.35, .75))           # green clays


def light_colour(g, kelvin):
    t = kelvin / 1000.0
    r = 1.0 if t < 6.6 else (t / 6.6) ** -.6
    gg = .39 * np.log(t * 10) - .63 if t < 6.6 else 1.0
    b = 1.0 if t > 6.6 else max(.05, .543 * np.log(max(t * 10 - 10, 1.1)) - 1.196)
    c = np.clip([r, gg, b], .05, 1.2) ** 2.2
    return c / c.mean()


def design(g, need_layers, calm=False):
    """colour inside the soap"""
    d = {}
    ty = g.choice(6, p=[.26, .2, .28, .08, .1, .08])
    if calm and g.random() < .4:
        ty = g.choice([0, 0, 1])
    if need_layers:
        ty = g.choice([1, 1, 2, 4]) if need_layers == 1 else 1
    v = np.eye(3)[2] if g.random() < .72 else np.eye(3)[1]
    v = v + g.normal(0, .12, 3) * (g.random() < .4)
    d["dir"] = v / np.linalg.norm(v)
    d["K"], d["f"], d["amp"], d["wf"], d["pp"], d["soft"] = 1, 1.0, 0.0, g.uniform(1.5, 5), 0, g.choice([.0, .02, .08])
    d["am"], d["bias"], d["wz"] = 0, np.full(6, -50.0), g.choice([.35, .7, 1.0, 1.0])
    d["bend"], d["wx"], d["ph"] = g.choice([g.uniform(0, 1.2), g.uniform(1.2, 2.6)]), g.choice([.15, .5, 1.0]), g.uniform(-.15, .15)
    if ty == 1:
        d["K"] = int(g.integers(2, 6)); d["f"] = d["K"] * g.uniform(.9, 1.25); d["amp"] = g.choice([.0, g.uniform(.02, .3)])
        d["ph"] *= .5
    elif ty == 2:
        d["K"] = int(g.integers(2, 7)); d["pp"] = 1; d["f"] = g.uniform(0, 2.5); d["amp"] = g.uniform(.5, 2.2) * d["K"] / 3; d["soft"] = g.choice([.02, .08, .2, .5])
        if g.random() < .6:
            d["am"] = 1
            d["wf"] = g.uniform(.8, 3)
            d["bias"][g.permutation(3)[:2]] = g.normal(0, .5, 2)
            d["bias"][:d["K"]] = g.normal(0, .6, d["K"])
            d["bias"][d["K"]:] = -50
    elif ty == 3:
        d["K"] = int(g.integers(2, 5)); d["f"] = d["K"] * .9; d["soft"] = .5; d["amp"] = g.uniform(0, .12)
    elif ty == 4:
        d["K"] = 2; d["f"] = 2.0; d["amp"] = g.uniform(.05, .9)
    elif ty == 5:
        d["K"] = 3; d["pp"] = 0; d["f"] = .4; d["amp"] = g.uniform(.8, 2)       # streaks in a base
    d["rough"], d["tran"] = g.uniform(.3, .8), g.uniform(.1, .8)
    d["mott"], d["lump"] = g.choice([.01, .03, .08]), g.choice([.2, .8, 2.5])
    return d, ty


def palette(g, k):
    if g.random() < .35:                                       # one hue, several depths
        h, s = g.random(), g.uniform(.1, .7)
        p = [hsv(h + g.normal(0, .03), np.clip(s + g.normal(0, .2), 0, 1), v) for v in g.permutation(np.linspace(g.uniform(.3, .6), .96, 6))]
    else:
        base = colour(g)
        p = [colour(g) if (q == 0 or g.random() < .75) else base for q in range(6)]
        if g.random() < .4:
            p[int(g.integers(0, 2))] = colour(g, g.choice([0, 1]))
    p = np.array(p)
    for q in range(1, 6):                                      # neighbours must differ
        if np.abs(p[q] ** .45 - p[q - 1] ** .45).max() < .1:
            p[q] = p[q] * .45 if p[q].mean() > .2 else p[q] * 2 + .1
    return np.clip(p, .004, .93)


GPAL = [[0, 11], [1, 8]]


def ground_colours(g, ty):
    n = lambda lo, hi, s=.1, h=None: hsv(g.random() if h is None else h, g.uniform(0, s), g.uniform(lo, hi))
    if ty in (1, 8):
        h = g.uniform(.05, .11); s = g.uniform(.2, .7); v = g.uniform(.2, .95)
        if g.random() < .15:
            s *= .15
        return hsv(h, s, v), hsv(h - .01, min(1, s * 1.2), v * g.uniform(.45, .8))
    if ty == 2:
        a, b = n(.85, .97), n(.3, .75, .2)
        return (a, b) if g.random() < .75 else (n(.05, .2), n(.6, .9))
    a = n(.75, .98, .12) if g.random() < .45 else n(.04, .95, g.choice([.15, .45, .85]))
    b = n(.05, .95, g.choice([.2, .5, .85]))
    if g.random() < .3:
        b = n(.8, .98, .05)
    return a, b


def sample(g, n, clean):
    """flaw plan and parameters; returns dict of numpy arrays"""
    P = {}
    nosoap = g.random(n) < .065
    cl = (g.random(n) < clean * .82) | nosoap        # some flaws turn out hidden: they count as clean
    on = np.zeros((n, K), bool)
    need = np.full(n, 3)
    from .scene import NEED
    for i in range(n):
        if not cl[i]:
            c = g.choice(3, p=[.4, .35, .25]) + 1
            ks = g.choice(K, c, replace=False)
            nd = NEED[ks[0]]
            ks = [k for k in ks if k == ks[0] or NEED[k] in (nd, 3) or nd == 3 and k == ks[0] or g.random() < .4]
            on[i, ks] = True
            need[i] = nd if nd != 3 else next((NEED[k] for k in ks if NEED[k] != 3), 3)
        elif g.random() < .7:
            need[i] = g.choice([0, 0, 1, 2])
    P["on"], P["need"], P["nosoap"] = on, need, nosoap
    P["look"] = g.integers(0, 5, (n, K)).astype(np.float32)
    P["str"] = g.choice([0, 1, 1], (n, K)) * g.uniform(.35, 1, (n, K)) + 0.0
    P["str"] = np.where(P["str"] == 0, g.uniform(.1, .45, (n, K)), P["str"]).astype(np.float32)
    P["fr"] = g.random((n, K, 8)).astype(np.float32)
    # harmless decoration
    p = np.array([.09, .1, .08, .12, .14, .06, .07, .05, .08, .06, .06, .08])
    boost = (cl & (g.random(n) < .16) & ~nosoap)
    dec = g.random((n, 12)) < p[None] * np.where(boost, 2.6, np.where(cl, .13, .45))[:, None]
    extra = g.integers(0, 12, n)
    dec[np.arange(n)[boost], extra[boost]] = True
    dec[nosoap] = False
    dec[dec[:, 10] & (g.random(n) < .0), 10] = False
    P["dec"], P["U"] = dec, g.random((n, 12, 8)).astype(np.float32)
    P["tricky_base"] = dec[:, [0, 1, 2, 3, 4, 5, 6, 7, 8, 10, 11]].any(1)
    ds, tys, pals = [], [], []
    k_l, k_b = FINDINGS.index("layer-gap"), FINDINGS.index("colour-bled")
    for i in range(n):
        d, ty = design(g, 2 if on[i, k_l] else 1 if on[i, k_b] else 0, bool(cl[i]))
        ds.append(d); tys.append(ty)
        same = g.random() < .7
        a = palette(g, 6)
        pals.append(np.stack([a if same else palette(g, 6) for _ in range(16)]))
    P["D"] = {k: np.array([d[k] for d in ds], np.float32) for k in ds[0]}
    P["D"]["pal"] = np.array(pals, np.float32)
    P["ty"] = np.array(tys)
    # light
    U = g.random
    L = {}
    az, el = U(n) * 6.283, np.deg2rad(g.choice([1, 0], n) * g.uniform(14, 45, n) + 0.0)
    el = np.where(el == 0, np.deg2rad(g.uniform(40, 86, n)), el)
    L["L"] = np.stack([np.cos(el) * np.cos(az), np.cos(el) * np.sin(az), np.sin(el)], 1)
    a2, e2 = az + g.uniform(1.5, 4.5, n), g.uniform(.1, 1.2, n)
    L["F"] = np.stack([np.cos(e2) * np.cos(a2), np.cos(e2) * np.sin(a2), np.sin(e2)], 1)
    aw, ew = U(n) * 6.283, g.uniform(.3, 1.5, n)
    L["Wd"] = np.stack([np.cos(ew) * np.cos(aw), np.cos(ew) * np.sin(aw), np.sin(ew)], 1)
    kt = [light_colour(g, k) for k in g.choice([g.uniform(2700, 3500, n), g.uniform(3500, 6500, n), g.uniform(4800, 6600, n)])]
    kf = [light_colour(g, k) for k in g.uniform(3000, 7500, n)]
    mixl = U(n)[:, None] < .3
    kt = np.array(kt)
    kf = np.where(mixl, np.array(kf), kt * .5 + .5)
    ks, as_ = g.uniform(.5, 3.2, n), g.uniform(.12, .9, n)
    L["ck"], L["ca"], L["cf"], L["cf0"] = kt * ks[:, None], kf * as_[:, None], kf * (U(n) * .45)[:, None], kt * .9
    L["size"], L["wi"] = g.choice([g.uniform(.02, .12, n), g.uniform(.12, .9, n)]), g.choice([0, 1, 3], n) * U(n)
    L["soft"], L["sss"] = g.uniform(.3, 1.2, n), g.uniform(2, 11, n)
    L["cook"] = np.where(U(n) < .22, g.uniform(.35, .95, n), 0)
    L["cookp"] = np.stack([g.uniform(.15, 1.2, n), U(n) * 6.28, U(n), U(n)], 1)
    P["L"] = {k: np.asarray(v, np.float32) for k, v in L.items()}
    # table
    P["gt"] = g.choice(12, n, p=[.15, .14, .09, .1, .06, .07, .07, .06, .08, .05, .08, .05])
    gc = [ground_colours(g, t) for t in P["gt"]]
    P["gc1"], P["gc2"] = np.array([a for a, _ in gc], np.float32), np.array([b for _, b in gc], np.float32)
    P["gr"], P["gs"] = U((n, 8)).astype(np.float32), g.uniform(.45, 1.8, n).astype(np.float32)
    P["wall"], P["wd"] = np.array([colour(g) for _ in range(n)], np.float32), g.uniform(1.5, 9, n).astype(np.float32)
    P["rnd"] = U((n, 16, 4)).astype(np.float32)
    # camera
    C = {}
    good = U(n)
    C["blur"] = .35 + g.choice([.25, .6, 1.2, 2.2], n, p=[.4, .33, .19, .08]) * U(n)
    C["dof"] = np.where(U(n) < .35, g.uniform(1, 11, n), g.uniform(0, 1, n))
    C["focus"], C["range"] = g.normal(0, .05, n), g.uniform(.3, 1.5, n)
    C["mot"] = (U(n) < .08).astype(float)
    C["mot_a"], C["mot_l"] = U(n) * 6.28, g.uniform(1.5, 7, n)
    C["target"], C["hi"] = g.uniform(.1, .42, n), g.uniform(.7, 1.5, n)
    wb = g.normal(0, .07, (n, 3)) + np.where(U(n)[:, None] < .6, -1.0, -.25) * np.log(kt) * .8
    C["wb"] = np.exp(wb - wb.mean(1, keepdims=True))
    C["noise"] = g.choice([.003, .01, .025, .05], n, p=[.42, .34, .17, .07]) * (.4 + U(n))
    C["coarse"], C["chroma"] = U(n), U(n)
    C["shoulder"], C["contrast"] = g.uniform(.5, .9, n), g.uniform(-.08, .5, n)
    C["satur"], C["lift"] = g.normal(1.0, .15, n), np.where(U(n) < .25, g.uniform(0, .09, n), 0)
    C["sharp"], C["shr"] = np.where(U(n) < .7, g.uniform(0, 1.3, n), 0), g.uniform(.6, 1.6, n)
    C["q"], C["sub"] = np.where(U(n) < .2, g.uniform(28, 60, n), g.uniform(60, 97, n)), (U(n) < .7)
    C["vig"] = np.where(U(n) < .5, g.uniform(0, .5, n), 0)
    P["C"] = {k: np.asarray(v, np.float32) for k, v in C.items()}
    return P
