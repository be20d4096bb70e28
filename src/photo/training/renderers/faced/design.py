"""Soap without flaws: colours, layers and swirls that run through the whole block."""
import numpy as np
from scipy import ndimage as nd
from .noise import fbm, noise, step, mix, blur, lerp, hsv

PALETTE = [(.93, .89, .78), (.96, .95, .91), (.90, .84, .68), (.80, .80, .62), (.86, .74, .52), (.88, .70, .68),
           (.74, .68, .82), (.62, .70, .56), (.42, .68, .70), (.22, .28, .48), (.17, .17, .18), (.74, .42, .30),
           (.45, .31, .22), (.91, .76, .34), (.80, .60, .22), (.80, .45, .55), (.68, .83, .74), (.55, .36, .50),
           (.35, .45, .30), (.62, .22, .24), (.92, .80, .74), (.50, .60, .72), (.70, .58, .46), (.86, .88, .84)]
KINDS = ['plain', 'plain', 'plain', 'layers', 'layers', 'ombre', 'pot', 'pot', 'drop', 'drop', 'hanger', 'tiger', 'marble']


def colour(rng, light=None):
    for _ in range(40):
        c = np.array(PALETTE[rng.integers(len(PALETTE))], np.float32)
        c = np.clip(c + rng.normal(0, 0.03, 3), 0.06, 0.97).astype(np.float32)
        if light is None or (c.mean() > 0.62) == light:
            break
    if rng.random() < 0.12 and light is not True:
        c = hsv(rng.random(), rng.uniform(0.2, 0.55), rng.uniform(0.4, 0.85))
    return c


def far(rng, other, light=None, gap=0.28):
    for _ in range(60):
        c = colour(rng, light)
        if np.abs(c - other).max() > gap:
            break
    return c


class Face:
    """One side of a block: grids of where it lies in the block, colour, height (cm) and gloss."""

    def __init__(self, name, half, ppc, z0):
        hx, hy, hz = half
        self.name, self.ppc, self.half = name, ppc, half
        a, b = {'z': (hx, hy), 'x': (hz, hy), 'y': (hx, hz)}[name]
        self.w, self.h = max(24, int(2 * a * ppc)), max(24, int(2 * b * ppc))
        u = ((np.arange(self.w) + .5) / self.w * 2 - 1)[None].astype(np.float32) * a
        v = ((np.arange(self.h) + .5) / self.h * 2 - 1)[:, None].astype(np.float32) * b
        o = np.zeros((self.h, self.w), np.float32)
        self.u, self.v, self.a, self.b = u + o, v + o, a, b
        if name == 'z':
            self.X, self.Y, self.Z = u + o, o - v, o + hz + z0
        elif name == 'x':
            self.X, self.Y, self.Z = o + hx, o - v, u + o + z0
        else:
            self.X, self.Y, self.Z = u + o, o + hy, v + o + z0
        self.edge = np.minimum(a - np.abs(self.u), b - np.abs(self.v))

    def copy(self):
        c = object.__new__(Face)
        c.__dict__.update(self.__dict__)
        c.alb, c.hgt, c.gls = self.alb.copy(), self.hgt.copy(), self.gls.copy()
        return c


class Design:
    """A recipe for the inside of a batch: the same in each bar cut from it."""

    def __init__(self, rng, half, kind=None, light=None, contrast=False):
        self.kind = kind or KINDS[rng.integers(len(KINDS))]
        self.seed = int(rng.integers(1 << 31))
        self.half = half
        self.c = [colour(rng, light)]
        for _ in range(3):
            self.c.append(far(rng, self.c[0], True if rng.random() < .4 and not contrast else None, .34 if contrast else .2))
        if contrast and self.kind in ('layers', 'pot', 'drop', 'hanger', 'tiger') and light is None and self.c[0].mean() < self.c[1].mean():
            self.c[0], self.c[1] = self.c[1], self.c[0]
        self.p = rng.random(16)
        g = 200
        self.F = [blur(noise(rng, g, g, c), 1) for c in (46, 46, 26, 90)]
        n = 2 if rng.random() < .6 else int(rng.integers(2, 5))
        self.cuts = np.sort(rng.uniform(-.62, .62, n - 1)) if n > 2 else np.array([rng.uniform(-.45, .45)])
        self.gloss = rng.uniform(.12, .5)

    def field(self, i, x, y):
        k = 200 / 13.0
        return nd.map_coordinates(self.F[i], [100 + y * k, 100 + x * k], order=1, mode='mirror')

    def warp(self, f):
        p = self.p
        wx = f.X + .25 * np.sin(f.Z * .7 + p[0] * 6 + .5 * f.Y) * (self.kind != 'layers')
        wy = f.Y + .15 * np.sin(f.Z * .9 + p[1] * 6 + .6 * f.X)
        return wx, wy

    def border(self, x, z):
        """Heights where layers meet (cm)."""
        p, hy = self.p, self.half[1]
        w = (.03 + .16 * p[2]) * np.sin(x * (.5 + p[3]) + p[4] * 6 + .3 * z) + .04 * np.sin(x * 2.7 + z + p[5] * 6)
        return [c * hy + w * (1 + .4 * i) for i, c in enumerate(self.cuts)]

    def base(self, f):
        """Paint a face and keep .M: where the first dye lies, and .D: signed distance-like field."""
        rng = np.random.default_rng([self.seed, 'zxy'.index(f.name)])
        p, c = self.p, self.c
        x, y = self.warp(f)
        jit = noise(rng, f.h, f.w, f.ppc * .12) * .006 + noise(rng, f.h, f.w, 2.5) * .003
        alb = np.empty((f.h, f.w, 3), np.float32)
        alb[:] = c[0]
        D = np.full((f.h, f.w), -1, np.float32)
        k = self.kind
        s = .02 + .05 * p[6]
        if k in ('layers', 'pencil'):
            for i, b in enumerate(self.border(x, f.Z)):
                d = y - b + jit
                mix(alb, c[1 + i % 3], step(d, -s / 2, s / 2))
                if i == 0:
                    D = d
            if k == 'pencil':
                b = self.border(x, f.Z)[0]
                wid = .025 + .05 * p[7] * (1 + .6 * np.sin(x * 2.1 + p[8] * 6))
                line = [(.24, .14, .08), (.75, .6, .25), (.12, .12, .13), (.62, .62, .66)][int(p[9] * 4)]
                a = step(wid - np.abs(y - b + 2 * jit), 0, .02) * np.clip(.75 + .3 * noise(rng, f.h, f.w, f.ppc * .3), 0, 1)
                mix(alb, line, a)
        elif k == 'ombre':
            t = step(y / self.half[1] + .15 * self.field(3, x, y), -1, 1)
            if p[7] < .3:
                t = np.round(t * 5) / 5
            mix(alb, lerp(c[0], c[1], .75), t)
        elif k in ('pot', 'marble'):
            q = .55 if k == 'pot' else 1.2
            xx, yy = x + q * self.field(0, x, y), y + q * self.field(1, x, y)
            n = self.field(2, xx * .8, yy * (.6 + .8 * p[8])) + .25 * self.field(0, xx * 1.9, yy * 1.9)
            D = (n - .25 + jit * 3) * .35
            mix(alb, c[1], step(D, -s, s))
            if p[9] < .6:
                mix(alb, c[2], step(self.field(1, xx * 1.1 + 3, yy * .9) - .7 + jit * 3, -.1, .1))
        elif k == 'drop':
            for i in range(int(3 + p[7] * 3)):
                r = np.random.default_rng([self.seed, 7, i])
                cx, bot, wd = r.uniform(-.9, .9) * self.half[0], r.uniform(-.8, .3) * self.half[1], r.uniform(.25, .8)
                xx = x - cx + .25 * self.field(0, x, y)
                d = wd * np.clip((y - bot) / 2.5, 0, 1) ** .5 - np.abs(xx) - .25 * np.clip(bot - y, 0, 9) + jit
                d = np.where(y < bot, np.minimum(d, bot - y - .3), d)
                if i % 2 == 0:
                    D = np.maximum(D, d)
                mix(alb, c[1 + i % 2], step(d, -s / 2, s / 2))
        elif k == 'hanger':
            cy = self.half[1] * (-1.6 + 2.2 * p[7])
            r = np.hypot(x * (.6 + p[13]), (y - cy) * .9) + (.3 + .5 * p[14]) * self.field(0, x, y) - .5 * np.exp(-(x / .35) ** 2) * (p[15] < .6)
            t = np.sin(r * (2.5 + 3 * p[8]) + 1.2 * self.field(2, x, y))
            D = (t - .35 + jit * 4) * .22
            mix(alb, c[1], step(D, -s, s))
            if p[9] < .5:
                mix(alb, c[2], step(-t - .75 + jit * 4, -.1, .1))
        elif k == 'tiger':
            t = (y + .18 * x * x * (.3 + p[7]) + .3 * self.field(0, x, y)) * (2.2 + 2.5 * p[8])
            D = (np.sin(t) + jit * 5) * .25
            mix(alb, c[1], step(D, -s, s))
            mix(alb, c[2], step(np.sin(t * .5 + 1) - .55 + jit * 4, -.08, .08))
        f.M, f.D, f.px, f.py = step(D, -.02, .02), D, x, y
        # what every soap has: a little mottling, a paler or darker rim, faint grain
        alb *= 1 + (.008 + .016 * p[10]) * fbm(rng, f.h, f.w, f.ppc * 1.2, 4)[..., None]
        alb *= 1 + .008 * noise(rng, f.h, f.w, 2)[..., None]
        rim = np.exp(-np.maximum(f.edge, 0) / (.15 + .3 * p[11]))
        if f.name == 'z':
            alb *= 1 + ((p[12] - .6) * .08 * rim)[..., None]
        f.alb = alb
        f.gls = np.full((f.h, f.w), self.gloss, np.float32) + .05 * fbm(rng, f.h, f.w, f.ppc * .8, 3)
        h = .004 * fbm(rng, f.h, f.w, f.ppc * 1.5, 3) + .0006 * noise(rng, f.h, f.w, 3)
        if f.name == 'z':  # the knife leaves a faint sweep
            h += .0006 * noise(rng, f.h, f.w, f.ppc * 3, f.ppc * .12) * p[13]
            if p[14] < .25:
                d = dent(rng, f)
                h -= d
        elif f.name == 'y':
            h += .012 * fbm(rng, f.h, f.w, f.ppc * .9, 4) * (.3 + p[15])
        f.hgt = h
        return f


def dent(rng, f):
    """A knock from handling near a corner."""
    cx, cy = rng.choice([-1, 1]) * f.a * .93, rng.choice([-1, 1]) * f.b * rng.uniform(.4, .95)
    return .06 * np.exp(-((f.u - cx) ** 2 + (f.v - cy) ** 2) / .05).astype(np.float32)


def stack(f):
    """Six channels for the tracer: linear colour, slopes, gloss."""
    out = np.empty((f.h, f.w, 6), np.float32)
    out[..., :3] = np.clip(f.alb, .01, .98) ** 2.2
    out[..., 4], out[..., 3] = np.gradient(f.hgt * f.ppc)
    out[..., 5] = np.clip(f.gls, 0, 1)
    return out
