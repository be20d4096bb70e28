"""Painted light and the phone camera."""
import numpy as np
from noise import unit3, mean3, fbm, sstep, grid, resize, blur
from scene import unit

TEMPS = [(1.30, 1., .62), (1.18, 1., .76), (1.08, 1., .88), (1., 1., 1.), (.95, 1., 1.08), (.9, 1., 1.16)]


class Light:
    def __init__(self, rng, cam):
        kind = rng.choice(['window', 'lamp', 'overcast', 'sun', 'flash'], p=[.42, .2, .2, .12, .06])
        el = dict(window=(25, 50), lamp=(45, 80), overcast=(60, 85), sun=(30, 60), flash=(60, 70))[kind]
        e, a = np.radians(rng.uniform(*el)), rng.uniform(0, 2 * np.pi)
        self.dir = unit([np.cos(e) * np.cos(a), np.cos(e) * np.sin(a), np.sin(e)])
        self.key, self.size = dict(window=(.75, .28), lamp=(.7, .16), overcast=(.3, .6), sun=(1.25, .03), flash=(.8, .04))[kind]
        self.key *= rng.uniform(.8, 1.15)
        if kind == 'flash':
            self.dir = unit(cam.pos + [1, 0, 2])
        self.amb = dict(window=.38, lamp=.34, overcast=.75, sun=.3, flash=.22)[kind] * rng.uniform(.8, 1.2)
        tk, ta = rng.integers(0, 3) if kind == 'lamp' else rng.integers(2, 5), rng.integers(2, 6)
        self.kc, self.ac = np.array(TEMPS[tk], np.float32), (np.array(TEMPS[ta]) + .5 * np.array(TEMPS[tk])).astype(np.float32) / 1.5
        self.side = unit([np.cos(a), np.sin(a), .5])
        self.spec, self.tight = rng.uniform(.4, 1.4), int(rng.choice([9, 18, 40]))
        up = unit(np.cross(self.dir, [.3, .2, 1]))
        vp = np.cross(self.dir, up)
        self.keys = [unit(self.dir + self.size * r * (np.cos(t) * up + np.sin(t) * vp)) for r, t in ((.15, 0), (.6, .5), (.6, 2.6), (.7, 4.7), (1, 1.6), (1, 4))]
        self.sky = [unit([np.cos(t) * c, np.sin(t) * c, s]) for t, c, s in [(i * 1.26 + .3, .9, .45 + .3 * (i % 2)) for i in range(5)]] + [np.array([0, 0, 1.], np.float32)]
        self.gobo = None

    def cast(self, P, blocks, q, skip=None):
        """Shares of key and of sky light that reach the points (found at every q-th pixel)."""
        h, w = P.shape[:2]
        p = P[::q, ::q]
        o = p.reshape(-1, 3)
        use = [b for b in blocks if b is not skip]
        out = []
        for dirs in (self.keys, self.sky):
            v = np.zeros(len(o), np.float32)
            if use:
                for d in dirs:
                    m = np.zeros(len(o), bool)
                    for b in use:
                        m |= b.hit(o, d)
                    v += m
            m = 1 - v.reshape(p.shape[:2]) / len(dirs)
            s = .9 if dirs is self.keys else 2.2
            out.append(np.clip(resize(blur(m, s), h, w), 0, 1))
        return out

    def shade(self, alb, N, gloss, D, key, sky, sss=0., box=None):
        """Linear light from a surface of sRGB albedo."""
        lin = np.clip(alb, 0, 1.1) ** np.float32(2.2)
        nl = N @ self.dir
        wrap = .12 + .2 * sss
        dif = np.clip((nl + wrap) / (1 + wrap), 0, 1) * key
        if self.gobo is not None:
            x0, y0, x1, y1 = box or (0, 0, None, None)
            dif = dif * self.gobo[y0:y1, x0:x1]
        am = self.amb * (.62 + .25 * N[..., 2] + .22 * (N @ self.side)) * sky
        out = lin * (self.kc * self.key * dif[..., None] + self.ac * am[..., None])
        if sss:
            out = out + sss * .1 * lin * (self.kc * self.key * .6 + self.ac * self.amb * .4)
        H = self.dir - D
        H = unit3(H)
        dot = lambda a, b: a[..., 0] * b[..., 0] + a[..., 1] * b[..., 1] + a[..., 2] * b[..., 2]
        sp = np.clip(dot(N, H), 0, 1) ** self.tight * key * np.clip(gloss, 0, 3) * self.spec * .055 * self.tight ** .5
        fr = (1 - np.clip(-dot(N, D), 0, 1)) ** 4 * .22 * np.clip(gloss, 0, 2) * self.amb * sky
        return out + sp[..., None] * self.kc + fr[..., None] * self.ac


def gobo(rng, h, w):
    """Shadow pattern of a blind, leaves or a window bar."""
    y, x = grid(h, w)
    kind = rng.integers(0, 3)
    a = rng.uniform(-.8, .8)
    t = x * np.sin(a) + y * np.cos(a)
    if kind == 0:
        p = rng.uniform(.06, .16) * h
        m = (np.sin(t / p * 6.28) > .1).astype(np.float32)
    elif kind == 1:
        m = (fbm(rng, h, w, rng.uniform(.1, .25) * w, 3, .6, sx=2) > .0).astype(np.float32)
    else:
        m = (np.abs(t - t.mean() + rng.normal(0, .1) * h) > rng.uniform(.02, .12) * h).astype(np.float32)
    return .3 + .7 * blur(m, rng.uniform(3, 14))


class Phone:
    """A camera with fixed faults; develop() makes the picture, without noise first."""

    def __init__(self, rng, poor=None):
        self.seed = int(rng.integers(1 << 31))
        self.wb = np.exp(rng.normal(0, .03, 3)).astype(np.float32)
        self.adapt = rng.uniform(.4, .95)
        self.ev = rng.normal(0, .16)
        self.vig, self.con = rng.uniform(0, .35), rng.uniform(.1, .7)
        self.sat = rng.uniform(.75, 1.08)
        self.soft = rng.choice([.4, .6, .9, 1.4], p=[.35, .35, .2, .1])
        self.noise = rng.choice([.004, .009, .018, .03], p=[.35, .35, .2, .1])
        self.sharp = rng.uniform(0, 1.1)
        self.quality = int(rng.integers(88, 96))
        self.poor, self.gain = poor, None
        self.motion = rng.uniform(25, 60)
        self.dark = rng.uniform(.006, .022)

    def develop(self, lin, box=None, centre=None):
        h, w = lin.shape[:2]
        if self.gain is None:
            g = lin.reshape(-1, 3)[::17]
            m = g.mean(0)
            wb = (m.mean() / m) ** (self.adapt * .35)
            tgt = np.quantile(g.mean(1), .93) if centre is None else max(np.quantile(g.mean(1), .9) * .8, centre)
            self.gain = (np.clip(.72 / tgt, .4, 3.2) * 2 ** self.ev * wb * self.wb).astype(np.float32)
        x0, y0, x1, y1 = box or (0, 0, w, h)
        im = lin[y0:y1, x0:x1]
        if self.poor == 'blur':
            im = blur(im, self.motion)
        elif self.poor == 'shake':
            n = int(self.motion * 2.5)
            dx = np.linspace(-1, 1, 24) * n
            im = sum(np.roll(np.roll(im, int(d), 1), int(d * .5 + 12 * np.sin(d * .04)), 0) for d in dx) / 24
            im = blur(im, 5)
        else:
            im = blur(im, self.soft)
        y, x = grid(*im.shape[:2])
        r2 = ((x + x0 - w / 2) ** 2 + (y + y0 - h / 2) ** 2) / (w * w + h * h) * 4
        im = im * self.gain * (1 - self.vig * r2)[..., None]
        if self.poor == 'dark':
            im = im * self.dark
        im = np.clip(im, 0, None)
        if not hasattr(self, 'lut'):  # tone curve as a table
            t = np.linspace(0, 4, 8192) ** 2 / 4
            u = np.where(t > .7, .7 + .3 * (1 - np.exp(-(t - .7) / .3)), t) ** (1 / 2.2)
            self.lut = (u + self.con * 1.1 * (u - .5) * u * (1 - u)).astype(np.float32)
        s = self.lut[(np.sqrt(np.minimum(im, 4)) * np.float32(8191 / 2)).astype(np.int32)]
        l = mean3(s)[..., None]
        return np.clip(l + (s - l) * np.float32(self.sat), 0, 1)

    def finish(self, s, size=None):
        rng = np.random.default_rng(self.seed)
        if size:
            s = np.stack([resize(s[..., i], *size) for i in range(3)], -1)
        h, w = s.shape[:2]
        if self.sharp > .1 and not self.poor:
            l = mean3(s)
            s = s + (np.clip(l - blur(l, 1.6), -.08, .08) * np.float32(self.sharp))[..., None]
        k = self.noise * (3.5 if self.poor == 'dark' else 1)
        nz = rng.standard_normal((h, w), dtype=np.float32) + .7 * fbm(rng, h, w, 3, 2)
        s = s + (np.float32(k) * nz * (1.25 - mean3(s)))[..., None]
        for i in range(3):
            s[..., i] += np.float32(k) * fbm(rng, h, w, 7, 1) * (1.1 - s[..., i])
        return (np.clip(s, 0, 1) * 255 + .5).astype(np.uint8)
