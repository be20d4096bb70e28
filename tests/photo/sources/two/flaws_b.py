"""Flaws nine to sixteen, and the table of all."""
import numpy as np
from scipy.ndimage import distance_transform_edt
from noise import rim, fbm, sstep, grid, region, dots, strokes, walk, blur
import flaws_a as A


def pinholes(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    pts = A._scatter(rng, f, (5 + 14 * s, 1 + 2.5 * s, 3 + 9 * s)[look], ext, .018 + .008 * s, (.04, .17, .09)[look] * (.7 + .5 * s))
    if look == 2:  # gathered towards the top
        pts = [q for q in pts if rng.random() < 1.3 - 1.3 * q[1] / h]
    m = dots(h, w, [(x, y, r, 1) for x, y, r in pts])
    o = .3
    hi = dots(h, w, [(x + ctx['lit'][0] * r * o, y + ctx['lit'][1] * r * o, r * 1.12, 1) for x, y, r in pts])
    sh = dots(h, w, [(x - ctx['lit'][0] * r * o, y - ctx['lit'][1] * r * o, r * .85, 1) for x, y, r in pts])
    f.tint((1.12, 1.12, 1.11), hi * (1 - m) * (.4 + .6 * s))
    f.tint((.82, .79, .75), m * (.5 + .5 * s))
    f.tint((.45, .41, .36), blur(sh * m, .7) * (.4 + .6 * s))
    f.tint((1.3, 1.28, 1.25), np.clip(hi - sh, 0, 1) * m * .6)
    f.gloss *= 1 - .9 * m


def crack(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    it, lip = [], []
    if f.role == 'poured':
        along = w >= h
        L, W = (w, h) if along else (h, w)
        for k in range((1, 1, 3)[look]):
            a0 = rng.uniform(0, max(1 - ext, .02)) * L
            q = walk(rng, (a0, W * (.5 + rng.normal(0, .1 + .1 * (look == 2)))), 0, min((.35 + ext) * L, L * 1.05), .1 * p, .07, 6)
            q[:, 1] += (W * .5 - q[:, 1]) * .6
            it.append(q if along else q[:, ::-1])
    else:
        x0 = w * rng.uniform(.3, .7)
        it.append(walk(rng, (x0, -2), np.pi / 2 + rng.normal(0, .2), h * (.25 + .9 * ext), .1 * p, .07, 6))
    wd0 = (.02 + .13 * s) * p
    segs = []
    for q in it:
        n = len(q)
        prof = np.sin(np.linspace(.25, 3.0, n)) if f.role == 'poured' else np.linspace(1, .15, n)
        segs.append((q, np.maximum(prof * wd0 * (1 + .4 * rng.standard_normal(n)), 1), 1))
        if look > 0:
            for _ in range(2 + int(4 * s)):
                j = rng.integers(1, n)
                b = walk(rng, q[j - 1], rng.uniform(0, 6.28), rng.uniform(.3, 1.2) * p, .07 * p, .3)
                segs.append((b, np.linspace(wd0 * .5, .7, len(b)), .9))
    m = blur(strokes(h, w, segs), .6)
    near = np.exp(-distance_transform_edt(m < .3) / ((.1 + .12 * s) * p))
    f.hgt += near * (.5 + 1.2 * s) - m * 2
    f.tint((1.07, 1.06, 1.04), near * (1 - m) * .6)
    f.tint(np.array([.5, .45, .38]) - .2 * s, m * (.6 + .4 * s))
    f.gloss *= 1 - m


def brown_outside_in(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    y, x = grid(h, w)
    if f.role == 'cut':
        e = rim(f)
        if look == 2:
            e = np.minimum(e, y / p * .6 + .1)
        e = e * (1 + .2 * fbm(rng, h, w, 2 * p, 3)) + .05 * fbm(rng, h, w, .4 * p, 3)
        d = (.12, .35, .25)[look] + (.3, 1.0, .6)[look] * ext
        a = (1 - sstep(e, d * .25, d * (1.05 if look == 0 else 1.5)))
    else:
        a = np.full((h, w), .95, np.float32) + .06 * fbm(rng, h, w, 2 * p, 3)
    c = ((.52, .34, .18), (.42, .26, .14), (.60, .42, .24))[look]
    f.mix(c, np.clip(a, 0, 1) * (.22 + .62 * s))


def colour_bled(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    if f.zone is None or f.role == 'poured':
        return
    k = 1
    z = np.floor(f.zone).astype(int) == k
    if not z.any() or z.all():
        return
    d = distance_transform_edt(~z) / p
    side = np.floor(f.zone) < k if look != 1 else np.floor(f.zone) > k
    if not side.any() or look == 2:
        side = ~z
    L = (.12 + .5 * s) * (.6 if look == 2 else 1)
    d = d * (1 + .5 * np.clip(fbm(rng, h, w, .9 * p, 3), -1.3, 1.6))
    a = np.exp(-(d / L) ** 1.3) * blur(side.astype(np.float32), .7) * region(rng, h, w, max(ext, .3), 2 * p)
    col = f.rgb[z].mean(0)
    f.mix(col * .75 + .25 * np.array([.9, .8, .85]), np.clip(a, 0, 1) * (.35 + .5 * s))


def drag_lines(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    y, x = grid(h, w)
    ang = ctx['drag']
    t = x * np.sin(ang) + y * np.cos(ang)
    if look == 2:
        t = t + ((x * np.cos(ang) - y * np.sin(ang)) / w - .5) ** 2 * p * rng.uniform(.5, 2)
    t = t + .03 * p * fbm(rng, h, w, 2 * p, 2, sx=4)
    n = 4000
    prof = np.zeros(n, np.float32)
    for _ in range(int((8, 45, 20)[look] * (.4 + .8 * s) * (f.h / 5.5))):
        wd = rng.uniform(.012, (.06, .03, .05)[look]) * p
        prof += rng.choice([-1, 1], p=[.75, .25]) * rng.uniform(.4, 1) * np.exp(-((np.arange(n) - 1000 - rng.random() * (h + w)) / wd) ** 2)
    v = prof[np.clip(t + 1000, 0, n - 1).astype(int)]
    v = v * region(rng, h, w, ext, 2.5 * p) * sstep(fbm(rng, h, w, 2.5 * p, 2, sx=2.5) + 1, .1, 1)
    f.hgt += v * (.05 + .16 * s)
    f.tint((1.22, 1.22, 1.2), np.clip(v, -1.2, 1) * (.25 + .6 * s))


def layer_gap(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    if not getattr(f, 'lines', None):
        return
    line = f.lines[ctx['gap'] % len(f.lines)]
    y, x = grid(h, w)
    u = np.arange(w) / w
    if look == 2:  # in the middle
        prof = sstep(.5 * (ext + .25) - np.abs(u - .5), 0, .25)
    else:
        prof = sstep(ext * 1.1 + .12 - (u if ctx['flip'] else 1 - u), 0, .3)
    wob = 1 + .5 * fbm(rng, 1, w, .5 * p, 4, .7)[0]
    wd = (.012 + .07 * s) * p * prof * np.clip(wob, .1, 2)
    d = np.abs(y - line + .15 * wd * fbm(rng, h, w, .1 * p, 2))
    m = (1 - sstep(d, wd, wd + 1.4)) * np.clip(prof * 5, 0, 1)
    if look == 1:
        m = np.maximum(m, (1 - sstep(d, wd * 2, wd * 2 + 2)) * sstep(fbm(rng, h, w, .1 * p, 2), .5, .9) * np.clip(prof * 2, 0, 1))
    f.tint(np.array([.42, .37, .32]) - .22 * s, m * (.65 + .35 * s))
    f.tint((1.1, 1.1, 1.1), np.clip(1 - np.abs(d - wd * 1.8) / (wd + 1.5), 0, 1) * prof * (1 - m) * .5)
    f.gloss *= 1 - m


def wrinkled_top(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    sc = (.85, .6, 1.25)[look] * p
    wx = fbm(rng, h, w, sc * 2, 3)
    if look == 1:
        n = np.sin(3.2 * (fbm(rng, h, w, sc * 1.6, 2, sx=3.) + .4 * wx) * 1.6)
    else:
        n = 1 - 2.2 * np.abs(fbm(rng, h, w, sc, 2, .35))
        n = n + .3 * wx
    n = n * blur(region(rng, h, w, max(ext, .45), 3 * p), .25 * p)
    f.hgt += n * (.5 + 1.1 * s)
    f.tint((.80, .76, .70), sstep(-n, .0, 1.2) * (.2 + .6 * s))
    f.gloss *= 1.3


def mould_dimples(rng, f, s, ext, look, ctx):
    h, w, p = f.ph, f.pw, f.ppc
    reg = region(rng, h, w, ext, 2 * p)
    if look == 0:
        pts = A._scatter(rng, f, 1.5 + 3.5 * s, ext, .06, .2, 1)
        m = blur(dots(h, w, [(x, y, r, rng.uniform(.5, 1)) for x, y, r in pts], 1), .035 * p)
    elif look == 1:  # creases of the liner
        it = []
        for _ in range(int(3 + 9 * ext)):
            q = walk(rng, (rng.random() * w, rng.random() * h), rng.choice([ctx['ang'], ctx['ang'] + 1.2]), rng.uniform(.8, 4) * p, .12 * p, .08)
            it.append((q, np.sin(np.linspace(.2, 3, len(q))) * rng.uniform(.04, .12) * p, rng.uniform(.5, 1)))
        m = blur(strokes(h, w, it, 1), .02 * p)
    else:  # orange peel
        m = sstep(fbm(rng, h, w, .22 * p, 2), .4, 1.3) * reg
    f.hgt -= m * (.35 + .75 * s)
    f.tint((.84, .83, .80), m * (.3 + .5 * s))
    f.tint((1.08, 1.08, 1.08), np.clip(blur(m, .05 * p) - m, 0, 1) * s)


# finding: (painter, faces it may lie on)
ALL = ('cut', 'poured', 'liner', 'bottom')
TABLE = {
    'coloured-specks': (A.coloured_specks, ALL), 'smears': (A.smears, ('cut',)), 'white-specks': (A.white_specks, ALL),
    'translucent-veins': (A.translucent_veins, ('cut', 'liner')), 'crackle-network': (A.crackle_network, ('cut', 'liner')),
    'powdery-film': (A.powdery_film, ALL), 'dark-centre-ring': (A.dark_centre_ring, ('cut',)),
    'orange-spots': (A.orange_spots, ALL), 'pinholes': (pinholes, ('cut', 'liner')), 'crack': (crack, ('poured', 'cut')),
    'brown-outside-in': (brown_outside_in, ALL), 'colour-bled': (colour_bled, ('cut', 'liner')),
    'drag-lines': (drag_lines, ('cut',)), 'layer-gap': (layer_gap, ('cut', 'liner')),
    'wrinkled-top': (wrinkled_top, ('poured',)), 'mould-dimples': (mould_dimples, ('liner', 'bottom'))}
