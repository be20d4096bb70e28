"""What sound soap looks like: colours, patterns through the bar, its faces; and what deceives."""
import numpy as np
from noise import F, at3, cells, at2, mix, rgb, smooth

PALE = ['f3ead6', 'f7f1e4', 'efe0c2', 'e9dcc6', 'f1e6d9', 'e6dfd2', 'f5ecd0', 'e4d2b0', 'ece6da']
DYED = ['d9a38f', 'c98f7a', 'b9c3a0', '9aa984', 'c7b7d4', 'a593bf', '9db8c4', '6f93a8', 'd8b05e', 'c99a4a', 'e3b7b4',
        'cf8b92', '8a6a4d', 'b08a63', '6b4a35', '4b5a78', '3d3d42', '55707a', '7fae9f', 'd7804f', 'bf5b4b', 'e8c9b0',
        'cfc4a8', 'a7b8a8', 'dcc7d6', '75845f', 'f0d27c', '9fc6c0', '8d4a5c']
BOLD = ['2f2f33', '2d4a78', '7a2e4a', '1f6e6a', 'a83c2e', '5a3a80', 'd06a2a', '3f6b3a', '5b3a26', 'c33b6b', '2a7fa5',
        'fbf8f0', 'e2b33c', 'c7a15a']
STYLES = ['swirl', 'layers', 'ombre', 'vein', 'hanger', 'marble']
DECEIVE = ['oats', 'poppy', 'coffee', 'botanicals', 'embeds', 'glitter', 'stamp', 'dew', 'glare', 'gobo', 'label',
           'crinkle', 'mottle']


def pick_colour(rng, names):
    c = rgb(names[rng.integers(len(names))])
    return np.clip(c * rng.uniform(0.9, 1.1, 3), 0.01, 0.93).astype(F)


def recipe(rng, style=None, pale=None, deceive=()):
    pale = rng.random() < 0.5 if pale is None else pale
    r = dict(style=style or 'plain', base=pick_colour(rng, PALE if pale else DYED), seed=int(rng.integers(1 << 31)),
             deceive=list(deceive), gloss=rng.uniform(0.12, 0.6), scale=rng.uniform(0.7, 1.5))
    cols = []
    while len(cols) < 3:
        c = pick_colour(rng, BOLD if rng.random() < 0.6 else DYED + PALE)
        if np.abs(np.sqrt(c) - np.sqrt(r['base'])).max() > 0.2:
            cols.append(c)
    r['cols'] = cols
    r['layer_z'] = sorted(rng.uniform(-0.55, 0.6, 1 + int(rng.random() < 0.5)))
    return r


def pattern(A, r, rng, shift):
    """Colour of the soap's body, and the region and colour of its main dye."""
    s, sc = A.solid, r['scale']
    d = s.d
    p = A.p * np.array([1, 1, 1], F)
    long = 0 if 'loaf' in s.roles else 1
    p[..., long] = p[..., long] * F(0.45) + F(shift)
    off = rng.uniform(0, 96, (6, 3))
    n1 = at3(p, 13 * sc, off[0])
    col = np.broadcast_to(r['base'], p.shape).astype(F)
    st, aa = r['style'], F(rng.choice([.02, .05, .14]))
    zc = p[..., 2] / d[2] if s.thin != 2 else p[..., 0] / d[0]
    hi = max(d[2], d[0]) if s.thin == 2 else d[2]
    A.border = None
    if st in ('swirl', 'marble'):
        w = p + np.stack([at3(p, 9 * sc, off[1]), at3(p, 9 * sc, off[2]), at3(p, 9 * sc, off[3])], -1) * F(
            0.5 if st == 'swirl' else 1.1) * F(sc)
        f = at3(w, (7 if st == 'swirl' else 9.5) * sc, off[4])
        dye = smooth(0.15 - aa, 0.15 + aa, f)
        g = at3(w, 8 * sc, off[5])
        col = mix(col, r['cols'][0], dye)
        if rng.random() < 0.6:
            col = mix(col, r['cols'][1], smooth(0.9, 0.97, g))
        A.dye, A.dyecol = dye, r['cols'][0]
    elif st == 'layers':
        wob = n1 * F(rng.choice([0.03, 0.1, 0.22]))
        for i, z in enumerate(r['layer_z']):
            dist = (zc - z) * hi - wob
            dye = smooth(-0.02, 0.02, dist)
            col = mix(col, r['cols'][i], dye)
            if i == 0:
                A.border, A.dye, A.dyecol = dist, dye, r['cols'][0]
    elif st == 'ombre':
        col = mix(col, r['cols'][1], smooth(-1, 1, zc + n1 * F(0.06)) * F(0.8))
    elif st == 'vein':
        dist = (zc - r['layer_z'][0]) * hi - n1 * F(0.12)
        col = mix(col, r['cols'][1], smooth(-.02, .02, dist) * F(rng.random() < 0.5))
        line = (1 - smooth(0.02, 0.05, np.abs(dist))) * smooth(-0.9, 0.2, at3(p, 5, off[1]))
        col = mix(col, rgb(['7a5a22', '2c2a2a', '8c7340', '6d3f55'][rng.integers(4)]), line * F(0.85))
        A.border = dist
    elif st == 'hanger':
        u = p[..., 0] if 'loaf' not in s.roles else p[..., 1]
        f = np.sin((u + n1 * F(0.7)) * F(rng.uniform(1.6, 3.4)) + at3(p, 6, off[1]) * F(0.8))
        dye = smooth(0.2 - 0.1, 0.2 + 0.1, f)
        col = mix(col, r['cols'][0], dye)
        col = mix(col, r['cols'][1], smooth(0.85, 0.93, np.sin(f * 3 + p[..., 2] * 1.3)) * F(0.9))
        A.dye, A.dyecol = dye, r['cols'][0]
    mott = at3(A.p + F(shift), 7, off[2], True)
    return col * (1 + mott * F(rng.uniform(0.008, 0.03)))[..., None]


def bake(A, r, key, shift=0.0):
    rng = np.random.default_rng([r['seed'], 1])
    A.col = pattern(A, r, rng, shift)
    own = np.random.default_rng([r['seed'], key, 2])
    fine = A.noise(own, 0.09, 4, 0.7)
    u, v = A.coords()
    A.gloss[:] = r['gloss'] * np.where(A.cut, 0.8, 1.0)
    A.hgt += fine * np.where(A.top, 0.002, np.where(A.cut, 0.0005, 0.0008)).astype(F)
    wavy = A.noise(own, 1.6, 2) * F(0.02)
    A.hgt += wavy * np.where(A.top, 1.4, 0.5).astype(F)
    kind = rng.integers(4)
    if A.solid.top is not None:
        A.hgt += A.solid.top_height(A.p) * A.top
    elif kind == 0:
        A.hgt += A.top * (np.sin(u * F(3) + A.noise(own, 2.0, 2)) * F(0.04))
    pale = at3(A.p, 3.5, own.uniform(0, 96, 3), True) * F(0.012)
    A.col *= (1 + pale + fine * F(0.006))[..., None]
    edge = 1 - smooth(0.0, 0.12, A.rim)
    A.col *= (1 + edge * F(own.uniform(-0.04, 0.07)))[..., None]
    if own.random() < 0.6:                                    # a small nick or two from handling
        A.hgt -= A.spots(own, own.integers(1, 5), (0.03, 0.12), A.rim < 0.3, 0.7, 0.6, 3, own.random() * 3) * F(0.02)
    for what in r['deceive']:
        deceive(A, r, what, np.random.default_rng([r['seed'], key, sum(map(ord, what))]))
    np.clip(A.col, 0.004, 0.96, out=A.col)


def put(A, field, colour, height=0.0, gloss=None):
    A.col = mix(A.col, np.asarray(colour, F), field)
    A.hgt = A.hgt + field * F(height)
    if gloss is not None:
        A.gloss += (F(gloss) - A.gloss) * field


def deceive(A, r, what, rng):
    area = A.used.sum() / A.ppc ** 2
    allw = A.used.astype(F)
    if what == 'oats':
        for c in ('c9a877', 'b8935f', 'dcc59a'):
            put(A, A.spots(rng, int(area * rng.uniform(.4, 1.6)), (.06, .2), allw, .15, .35, 2.5, rng.random() * 3, 1), rgb(c), .006)
    elif what == 'poppy':
        f = A.spots(rng, int(area * rng.uniform(1.5, 7)), (.03, .05), allw, .2, .2, 1.4, 0, 1)
        put(A, f, rgb('2b2a30'), .006, .5)
    elif what == 'coffee':
        for c in ('4a2f1f', '2f1d13', '6b4a30'):
            put(A, A.spots(rng, int(area * rng.uniform(2, 8)), (.012, .05), allw, .25, .7, 1.5, 1, 1), rgb(c), .004)
    elif what == 'botanicals':
        cs = [['8f4a6e', 'b46a90'], ['d9a520', 'e8b93a'], ['6f7fb8', '8a94c8'], ['7d8a4a', '5f6b38'], ['b23a4a', '8c2a3a']][rng.integers(5)]
        on = A.top if A.top.sum() > 4000 else A.used
        n = int(on.sum() / A.ppc ** 2 * rng.uniform(.5, 1.3)) + 4
        for k in range(5):
            f = A.spots(rng, n // 4 + 1, (.07, .2), on, .12, .3, 3.2, rng.random() * 3.1, 1)
            put(A, f, rgb(cs[k % 2]) * rng.uniform(.6, 1.1), .05, .1)
    elif what == 'embeds':
        d, val = cells()
        x, y = A.coords()
        k = 32 / rng.uniform(.5, 1.1)
        w = A.noise(rng, .5, 2) * 5
        b, v = at2(x * k + w, y * k - w, d), at2(x * k + w, y * k - w, val, 0)
        f = smooth(.1, .14, b) * (v < rng.uniform(.15, .4))
        cc = np.array([r['cols'][0], r['cols'][1], r['cols'][2]])[(v * 30).astype(int) % 3]
        A.col = mix(A.col, cc, f)
    elif what == 'glitter':
        f = A.spots(rng, int(area * rng.uniform(6, 16)), (.008, .018), A.region(rng, .5, A.used), .3, 0, 1, 0)
        put(A, f, [(.9, .75, .4), (.9, .9, .92)][rng.integers(2)], .003, 1.0)
    elif what == 'stamp':
        f0 = max(A.rects, key=lambda k: A.rects[k][3])
        x, y = A.coords()
        m = A.face == f0
        c = [(x[m].min() + x[m].max()) / 2, (y[m].min() + y[m].max()) / 2]
        x, y = x - c[0], y - c[1]
        R = F(min(np.ptp(x[m]), np.ptp(y[m])) * rng.uniform(.25, .38))
        q, th = np.sqrt(x * x + y * y) / R, np.arctan2(y, x)
        k = rng.integers(3)
        if k == 0:
            g = np.minimum(np.abs(q - .95), np.abs(q - .45 - .25 * np.cos(th * int(rng.integers(5, 9)))))
        elif k == 1:
            g = np.minimum(np.abs(q - .92), np.maximum(np.abs(x) / R - .0, np.abs(y) / R - .75))
            g = np.minimum(g, np.maximum(np.abs(np.abs(x) / R - .6 * (1 - (y / R) ** 2)), np.abs(y) / R - .9))
        else:
            hx = np.maximum(np.abs(x) * .866 + np.abs(y) * .5, np.abs(y)) / R
            g = np.minimum(np.abs(hx - .85), np.abs(hx - .5))
        A.hgt -= (1 - smooth(.035, .085, g)) * m * F(.07)
    elif what == 'dew':
        for lo, hi, n in ((.03, .09, 6), (.1, .24, 1.2)):
            f = A.spots(rng, int(area * rng.uniform(.5, 1.5) * n), (lo, hi), allw, .75, .12, 1.2, 0, 1)
            A.hgt += np.sqrt(f) * F(lo * .9)
            A.col *= (1 - .12 * smooth(.02, .4, f))[..., None]
            A.gloss += smooth(.02, .2, f) * (1.6 - A.gloss)
    elif what == 'glare':
        A.gloss[:] = rng.uniform(1.1, 1.7)
    elif what == 'crinkle':
        u, v = A.coords()
        t = u if rng.random() < .7 else v
        A.hgt += np.abs(np.sin(t * F(np.pi / rng.uniform(.5, .9)))) * A.cut * F(.12)
    elif what == 'mottle':
        n = at3(A.p, rng.uniform(4, 9), rng.uniform(0, 96, 3), True)
        A.col *= (1 + n * F(rng.uniform(.05, .08)))[..., None]
    elif what == 'label':
        u = A.p[..., 0] if A.solid.d[0] >= A.solid.d[2] * .8 else A.p[..., 2]
        w = F(rng.uniform(.22, .4) * A.solid.d[0])
        f = (np.abs(u + F(rng.uniform(-.3, .3))) < w).astype(F)
        paper = rgb(['e9e2d4', 'c3a27a', 'f5f3ef', '3a3a3a', 'a9b7a0'][rng.integers(5)])
        x, y = A.coords()
        put(A, f, paper, .03, .08)
        ln = (np.abs(np.sin(y * F(4.5))) > .86) * (np.abs(u) < w * .7) * (at2(x * 160, np.floor(y * 1.43) * 37) > -.2) * (np.abs(y) < 1.4)
        A.col = mix(A.col, paper * .2 if paper.mean() > .2 else paper * 6, ln * F(.8))
