"""What deceives: additions, decoration, water, stamps. Each takes (rng, face, ctx)."""
import numpy as np
from noise import fbm, sstep, grid, dots, polys, strokes, blur


def _bits(rng, f, dens, rl, rw, cols, lift=.3):
    """Flat bits (leaves, flakes, seeds) strewn over a face."""
    h, w, p = f.ph, f.pw, f.ppc
    groups = [[] for _ in cols]
    for _ in range(int(dens * f.w * f.h) + 3):
        x, y, a = rng.random() * w, rng.random() * h, rng.uniform(0, 6.28)
        l, b = rng.uniform(*rl) * p, rng.uniform(*rw) * p
        t = np.linspace(0, 6.28, 12, endpoint=False)
        px, py = l * np.cos(t), b * np.sin(t) * (1 + .2 * rng.standard_normal(12))
        groups[rng.integers(len(cols))].append((np.stack([x + px * np.cos(a) - py * np.sin(a), y + px * np.sin(a) + py * np.cos(a)], 1), rng.uniform(.75, 1)))
    for c, g in zip(cols, groups):
        m = polys(h, w, g)
        f.tint((.8, .78, .75), blur(np.roll(m, 2, 0), .02 * p) * (1 - m) * .6)
        f.rgb += (np.array(c, np.float32) * (1 + .1 * fbm(rng, h, w, .08 * p, 2))[..., None] - f.rgb) * m[..., None]
        f.hgt += blur(m, .015 * p) * lift


def oats(rng, f, c):
    _bits(rng, f, rng.uniform(.4, 1.5), (.12, .28), (.07, .14), [(.80, .70, .52), (.88, .80, .64), (.70, .58, .40)])


def poppy(rng, f, c):
    _bits(rng, f, rng.uniform(1.5, 7), (.035, .05), (.028, .04), [(.12, .12, .15), (.2, .18, .2)], .2)


def coffee(rng, f, c):
    _bits(rng, f, rng.uniform(3, 9), (.02, .07), (.015, .05), [(.22, .13, .08), (.32, .2, .12)], .15)


def petals(rng, f, c):
    cols = [[(.90, .62, .12), (.86, .50, .10)], [(.45, .40, .62), (.36, .33, .5)], [(.74, .30, .38), (.6, .2, .28)], [(.35, .42, .22), (.45, .5, .3)]][rng.integers(4)]
    _bits(rng, f, rng.uniform(.4, 1.6), (.15, .5), (.05, .14), cols, .8)


def embeds(rng, f, c):
    h, w, p = f.ph, f.pw, f.ppc
    cols = [c['pig'], (.95, .93, .88), np.clip(np.array(c['pig'])[[1, 2, 0]], .1, .9)]
    for _ in range(int(rng.integers(4, 16))):
        a, r = rng.uniform(0, 1.57), rng.uniform(.25, .7) * p
        t = a + np.arange(4) * np.pi / 2 + rng.normal(0, .12, 4)
        q = np.array([rng.random() * w, rng.random() * h]) + r * np.stack([np.cos(t), np.sin(t)], 1)
        f.mix(cols[rng.integers(3)], polys(h, w, [(q, 1)]) * .95)


def stamp(rng, f, c):
    h, w, p = f.ph, f.pw, f.ppc
    y, x = grid(h, w)
    x, y = (x - w / 2) / p / 1.6, (y - h / 2) / p / 1.6
    r, a = np.hypot(x, y), np.arctan2(y, x)
    k = rng.integers(0, 4)
    n = rng.integers(5, 10)
    sh = [1 - r / (.7 + .3 * np.cos(a * n)), 1 - np.abs(r - .8) / .12, (1 - (x * x + (-y + .2 - .6 * np.abs(x)) ** 2) * 1.6), .12 - np.abs(y - .15 * np.sin(x * 7)) * (np.abs(x) < 1.1)][k]
    m = sstep(sh, 0, .12) + sstep(1 - np.abs(r - 1.15) / .05, 0, 1) * (rng.random() < .6)
    m = np.clip(m, 0, 1)
    f.hgt -= blur(m, .02 * p) * 1.6
    f.tint((.88, .87, .85), m * .6)
    if rng.random() < .3:
        f.mix((.78, .62, .28), m * .7)


def band(rng, f, c):
    h, w, p = f.ph, f.pw, f.ppc
    y, x = grid(h, w)
    b0, b1 = w * rng.uniform(.2, .35), w * rng.uniform(.65, .8)
    m = sstep(x, b0 - 1, b0 + 1) * sstep(-x, -b1 - 1, -b1 + 1)
    f.tint((.8, .8, .8), blur(m, .06 * p) * (1 - m))
    col = np.array([(.80, .68, .52), (.95, .94, .9), (.3, .32, .3)][rng.integers(3)])
    f.rgb += (col * (1 + .03 * fbm(rng, h, w, .08 * p, 2))[..., None] - f.rgb) * m[..., None]
    ink, rows = np.zeros((h, w), np.float32), rng.integers(2, 6)
    for i in range(rows):  # scribbles for writing
        yy, hh = h * (.3 + .45 * i / rows), rng.uniform(.08, .22) * p
        l = (b1 - b0) * rng.uniform(.25, .42)
        q = np.arange((b0 + b1) / 2 - l, (b0 + b1) / 2 + l, .06 * p)
        ink = np.maximum(ink, strokes(h, w, [(np.stack([q, yy + hh * rng.uniform(-.5, .5, len(q))], 1), np.full(len(q), .03 * p), .9)]))
    f.mix((.12, .12, .12) if col.mean() > .5 else (.9, .9, .85), ink)
    f.gloss *= 1 - .8 * m
    f.hgt *= 1 - m
    f.hgt += m * .4


def mica_vein(rng, f, c):
    h, w, p = f.ph, f.pw, f.ppc
    y, _ = grid(h, w)
    if f.role == 'poured':
        m = sstep(fbm(rng, h, w, 1.2 * p, 3, sx=3), .6, 1.2) * .7
    else:
        q = h * c['vein'] + .12 * p * fbm(rng, 1, w, 2.5 * p, 4)[0]
        m = np.exp(-((y - q) / (.035 * p)) ** 2)
    m = m * (.8 + .3 * fbm(rng, h, w, .05 * p, 1))
    f.mix([(.72, .55, .22), (.6, .35, .2), (.2, .2, .22), (.5, .3, .5)][c['k'] % 4], np.clip(m, 0, .95))
    f.gloss += m * 2


def glitter(rng, f, c):
    m = dots(f.ph, f.pw, [(rng.random() * f.pw, rng.random() * f.ph, .016 * f.ppc * rng.uniform(.5, 1.6), rng.random()) for _ in range(int(14 * f.w * f.h))])
    f.mix([(1, .95, .75), (.95, .97, 1), (1, .8, .85)][c['k'] % 3], m)


def dew(rng, f, c):
    h, w, p = f.ph, f.pw, f.ppc
    pts = [(rng.random() * w, rng.random() * h, rng.uniform(.03, .05 + .16 * rng.random() ** 3) * p) for _ in range(int(rng.uniform(2, 6) * f.w * f.h))]
    m = dots(h, w, [(x, y, r, 1) for x, y, r in pts])
    lx, ly = -c['lit'][0], -c['lit'][1]  # towards the light
    f.tint((.82, .82, .82), m * .8)
    f.tint((1.25, 1.25, 1.25), dots(h, w, [(x - lx * r * .35, y - ly * r * .35, r * .6, 1) for x, y, r in pts]) * .8)
    f.mix((1.1, 1.1, 1.1), dots(h, w, [(x + lx * r * .45, y + ly * r * .45, max(r * .2, .6), 1) for x, y, r in pts]))
    f.hgt += blur(m, .03 * p) * .5
    f.gloss += m


def crinkle(rng, f, c):
    if f.role == 'cut':
        y, x = grid(f.ph, f.pw)
        f.hgt += .9 * np.sin(x / f.ppc * 6.28 / .9)


def insert(rng, f, c):
    """A darker disc or half moon by design: sharp edge, other colour."""
    if f.role == 'cut':
        y, x = grid(f.ph, f.pw)
        d = np.hypot(x - f.pw * c['cx'], y - f.ph * .5) / f.ppc
        f.mix(c['pig'], (1 - sstep(d, c['rad'] - .015, c['rad'] + .015)) * .95)


def comb(rng, f, c):
    """Honeycomb of bubble wrap pressed on purpose into the top."""
    if f.role in ('poured', 'bottom', 'liner') or c['k'] % 2:
        y, x = grid(f.ph, f.pw)
        q = .55 * f.ppc
        r = np.round(y / (q * .866))
        cx = (np.round(x / q - .5 * (r % 2)) + .5 * (r % 2)) * q
        d = np.hypot(x - cx, y - r * q * .866) / q
        m = 1 - sstep(d, .36, .48)
        f.hgt -= m * .9
        f.tint((.93, .91, .88), m)


def salt(rng, f, c):
    f.hgt += .35 * fbm(rng, f.ph, f.pw, .08 * f.ppc, 2)
    f.rgb *= (1 + .04 * fbm(rng, f.ph, f.pw, .07 * f.ppc, 2))[..., None]


EXTRAS = dict(oats=oats, poppy=poppy, coffee=coffee, petals=petals, embeds=embeds, stamp=stamp, band=band, mica=mica_vein,
              glitter=glitter, dew=dew, crinkle=crinkle, insert=insert, comb=comb, salt=salt)
TOP_ONLY = ('petals',)
CUT_ONLY = ('stamp', 'band', 'embeds', 'insert', 'crinkle')
