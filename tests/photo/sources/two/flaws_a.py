"""Flaws one to eight. Each takes (rng, face, s strength, ext extent, look 0..2, ctx)."""
import numpy as np
from noise import rim, fbm, sstep, grid, region, dots, polys, strokes, walk, cells, blur


def _scatter(rng, f, per_cm2, ext, rmin, rmax, tail=2.5):
    """Positions inside a patch, radii in px with many small and few large."""
    reg = region(rng, f.ph, f.pw, ext, 2.5 * f.ppc)
    n = int(np.clip(per_cm2 * f.w * f.h, 3, 1500))
    out = []
    for _ in range(n):
        x, y = rng.random() * f.pw, rng.random() * f.ph
        if reg[min(int(y), f.ph - 1), min(int(x), f.pw - 1)] > rng.random():
            out.append((x, y, (rmin + (rmax - rmin) * rng.random() ** tail) * f.ppc))
    return out


def coloured_specks(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    pts = _scatter(rng, f, (1 + 9 * s) * (2 if look == 0 else 1), ext, .014 + .01 * s, (.05, .08, .13)[look] * (.6 + .6 * s))
    sp = [(x, y, r, rng.uniform(.6, 1)) for x, y, r in pts]
    if look == 1:
        ang = ctx['ang']
        tails = []
        for x, y, r in pts:
            if rng.random() < .6:
                ln = r * rng.uniform(4, 14)
                q = walk(rng, (x, y), ang + rng.normal(0, .15), ln, max(r, 1.5), .1)
                tails.append((q, np.linspace(1.6 * r, .5, len(q)), rng.uniform(.25, .6)))
        f.mix(ctx['pig'], blur(strokes(h, w, tails), .8) * (.4 + .4 * s))
    if look == 2:
        halo = blur(dots(h, w, [(x, y, r * 2.2, .6) for x, y, r in pts]), .05 * p)
        f.mix(ctx['pig'], halo * .35 * (.3 + s))
    f.mix(ctx['pig'], dots(h, w, sp) * (.55 + .45 * s))


def smears(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    if look == 0:  # separate long streaks
        it = []
        for _ in range(int(2 + 9 * ext + 3 * s)):
            q = walk(rng, (rng.random() * w - .1 * w, rng.random() * h), ctx['ang'] * .3 + rng.normal(0, .2), rng.uniform(.8, 4) * p * (.5 + ext), .08 * p, .07)
            it.append((q, np.sin(np.linspace(.1, 3.1, len(q))) * rng.uniform(.06, .32) * p, rng.uniform(.5, 1)))
        a = blur(strokes(h, w, it), .02 * p) * (.6 + .4 * sstep(fbm(rng, h, w, .3 * p, 3, sx=5), -.6, .6))
    elif look == 1:  # wisps
        t = fbm(rng, h, w, .35 * p, 4, .6, sx=rng.uniform(5, 10)) + .5 * fbm(rng, h, w, 2 * p, 2)
        a = sstep(t, .7 - .4 * s, 1.7 - .4 * s) * region(rng, h, w, ext, 2 * p)
    else:  # arcs of a spoon
        y, x = grid(h, w)
        r = np.hypot(x - rng.uniform(-.3, 1.3) * w, y - rng.uniform(.6, 1.8) * h)
        t = fbm(rng, 1, 2400, .22 * p, 4, .6)[0][np.clip(r, 0, 2399).astype(int)] + .6 * fbm(rng, h, w, 1.2 * p, 3)
        a = sstep(t, .7, 1.6) * region(rng, h, w, ext * .8, 2 * p)
    f.mix(ctx['pig'], np.clip(a * (.3 + .6 * s), 0, .95))


def white_specks(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    dens, rmax = ((6 + 18 * s, .04), (1 + 4 * s, .16), (2 + 7 * s, .09))[look]
    pts = _scatter(rng, f, dens, ext, .014 + .012 * s, rmax)
    it = []
    for x, y, r in pts:
        m = 7 if look == 1 else 10
        a = np.linspace(0, 6.28, m, endpoint=False)
        rr = r * rng.uniform(.55, 1.3, m) if look else r * np.ones(m)
        it.append((np.stack([x + rr * np.cos(a), y + rr * np.sin(a)], 1), rng.uniform(.65, 1)))
    m = polys(h, w, it)
    if look == 2:
        f.tint((.86, .84, .8), blur(m, .05 * p) * .7 * s)
    f.mix((.98, .975, .95), m * (.5 + .45 * s))
    f.hgt += blur(m, 1) * .08
    f.gloss *= 1 - .5 * m


def translucent_veins(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    sc = (1.6, .8, 1.1)[look] * p
    wx, wy = fbm(rng, h, w, sc, 3), fbm(rng, h, w, sc * .5, 4, .6)
    n = np.abs(fbm(rng, h, w, sc, 4, .55, sx=1.5 if look else 1.) + .25 * wy)
    wd = (.16, .09, .28)[look] * (.5 + s) * (1 + .5 * np.clip(wx, -1, 1))
    a = (1 - sstep(n, wd * .3, wd)) * region(rng, h, w, ext, 3 * p)
    if look == 2:
        a = np.maximum(a, .6 * sstep(wy, .8, 1.6) * region(rng, h, w, ext, 3 * p))
    c = f.rgb.mean((0, 1))
    f.tint(np.array([.80, .77, .68]) - .12 * s + .06 * (c / max(c.max(), .1)), a * (.3 + .7 * s))
    f.mix((.98, .97, .95), (1 - a) * .12 * s * region(rng, h, w, ext, 3 * p))
    f.gloss *= 1 + .6 * a


def crackle_network(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    size = (.22, .42, .3)[look] * p
    e, ids, n = cells(rng, h, w, size, .35, 2.2 if look == 2 else 1.)
    reg = region(rng, h, w, ext, 2.5 * p)
    ln = 1 - sstep(e, .1 * size * (.3 + .5 * s), .1 * size * (.9 + s) + 1)
    lv = rng.uniform(.2, 1, n).astype(np.float32)[ids]
    f.mix((.98, .97, .95), blur(lv, 1.5) * sstep(e, 0, size * .35) * reg * (.15 + .35 * s))
    f.tint((.74, .70, .62), ln * reg * (.35 + .6 * s) * (.6 + .4 * sstep(fbm(rng, h, w, p, 2), -1, .5)))
    f.hgt -= ln * reg * .05


def powdery_film(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    g = fbm(rng, h, w, .06 * p, 3, .8)
    b = fbm(rng, h, w, .9 * p, 5, .6)
    if look == 0:  # even dust
        a = region(rng, h, w, max(ext, .35), 4 * p) * (.75 + .2 * b + .06 * g)
    elif look == 1:  # flowery patches with sharp fringe
        q = np.quantile(b[::5, ::5], 1 - .85 * ext)
        a = sstep(b + .12 * g, q - .15, q + .35) * (.85 + .07 * g)
    else:  # from the rims
        e = rim(f)
        a = np.exp(-e / (.15 + 1.1 * ext)) * (1 + .5 * b) * 1.2 + .1 * g
    a = np.clip(a, 0, 1) * (.25 + .65 * s)
    f.mix((.93, .93, .92), a)
    f.gloss *= 1 - .9 * np.clip(a * 1.5, 0, 1)
    f.hgt += .02 * a * g


def dark_centre_ring(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    y, x = grid(h, w)
    r0 = .25 + .42 * ext
    cx, cy = w * (.5 + rng.normal(0, .04)), h * (.52 + rng.normal(0, .05))
    if look == 2:
        cy = h * rng.uniform(.7, .95)
    k = (2., 3., 2.2)[look]
    d = (np.abs((x - cx) / (w * .72)) ** k + np.abs((y - cy) / (h * .72)) ** k) ** (1 / k)
    d += .025 * fbm(rng, h, w, 1.5 * p, 3)
    ins = 1 - sstep(d, r0 - .03, r0 + .03)
    f.tint(np.array([.86, .82, .74]) - np.array([.18, .2, .2]) * s, ins * (.45 + .55 * s))
    ring = np.exp(-((d - r0) / .022) ** 2)
    f.tint((.80, .77, .70) if look != 1 else (1.1, 1.1, 1.09), ring * (.3 + .5 * s))
    f.gloss *= 1 + .3 * ins


def orange_spots(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    num = int(1 + (14, 5, 26)[look] * ext * (f.w * f.h / 40) ** .7 + rng.integers(0, 3))
    core, halo = [], []
    for _ in range(num):
        x, y = rng.random() * w, rng.random() * h
        r = rng.uniform(*((.05, .16), (.15, .4), (.025, .08))[look]) * p
        halo.append((x, y, r * rng.uniform(1.6, 2.8), rng.uniform(.6, 1)))
        core += [(x + rng.normal(0, .25) * r, y + rng.normal(0, .25) * r, r * rng.uniform(.45, .9), rng.uniform(.6, 1)) for _ in range(3)]
    wob = 1 + .35 * fbm(rng, h, w, .2 * p, 3)
    hm = blur(dots(h, w, halo, 1), (.08, .16, .04)[look] * p)
    cm = blur(dots(h, w, core, 1), (.025, .07, .015)[look] * p)
    f.mix((.88, .66, .30), np.clip(hm * wob, 0, 1) * (.25 + .45 * s))
    f.mix((.70, .36, .09), np.clip(cm * wob, 0, 1) * (.35 + .55 * s))
    f.gloss *= 1 + 1.2 * cm
