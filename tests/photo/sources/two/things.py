"""Pictures without soap: things on a table, animals, kitchens."""
import numpy as np
from noise import fbm, sstep, grid, dots, cells, blur
from scene import Camera, View, Block, orient
from body import Face, pick
from lens import Light, Phone
from ground import table, backdrop, texture, KINDS

FOOD = [(.85, .68, .35), (.90, .80, .45), (.72, .50, .28), (.45, .28, .16), (.80, .25, .20), (.92, .86, .72), (.35, .5, .25), (.55, .35, .55), (.9, .55, .2), (.3, .35, .5)]


class Still:
    """A still life of boxes, discs and round things, or an animal, or a kitchen."""

    def __init__(self, seed, what):
        self.rng = rng = np.random.default_rng(seed)
        L = int(rng.integers(900, 1301))
        self.size = (L, int(L * .75)) if rng.random() < .4 else (int(L * .75), L)
        self.h, self.w = int(self.size[0] * .66), int(self.size[1] * .66)
        self.phone, self.what = Phone(rng), what

    def box_paint(self, f, rng, kind):
        n = max(f.ph, f.pw)
        if kind in ('book', 'box', 'mug', 'candle'):
            c = pick(rng, FOOD) if kind != 'candle' else np.array([.93, .87, .66])
            f.rgb = np.ones((f.ph, f.pw, 3), np.float32) * np.array(self.col[kind] if kind in self.col else c, np.float32)
            self.col[kind] = f.rgb[0, 0].copy()
            f.rgb *= (1 + .02 * fbm(rng, f.ph, f.pw, f.ppc, 3))[..., None]
            if kind == 'book' and f.role == 'liner':
                f.rgb = np.array([.9, .87, .8]) * (1 + .12 * fbm(rng, f.ph, f.pw, 4, 2, sx=40))[..., None]
            if kind == 'box':  # cardboard with tape
                f.rgb *= np.array([.74, .58, .40]) / f.rgb[0, 0]
                y, _ = grid(f.ph, f.pw)
                f.mix((.80, .70, .52), sstep(.12 - np.abs(y / f.ph - .5), 0, .01) * .8)
            if kind == 'mug' and f.role == 'cut':
                y, x = grid(f.ph, f.pw)
                d = np.hypot(x - f.pw / 2, y - f.ph / 2) / f.pw
                f.mix((.22, .12, .06), 1 - sstep(d, .43, .45))
        elif kind == 'bread':
            e, _, _ = cells(rng, f.ph, f.pw, .35 * f.ppc, .5)
            f.rgb = np.ones((f.ph, f.pw, 3), np.float32) * ((.90, .80, .60) if f.role == 'cut' else (.62, .38, .18))
            f.tint((.8, .72, .6), sstep(e, 0, .15 * f.ppc))
            f.hgt -= blur(e, 1) / f.ppc * 4
        elif kind == 'cheese':
            f.rgb = np.ones((f.ph, f.pw, 3), np.float32) * (.93, .78, .38)
            f.tint((.72, .65, .5), dots(f.ph, f.pw, [(rng.random() * f.pw, rng.random() * f.ph, rng.uniform(.1, .5) * f.ppc, 1) for _ in range(14)]))
        elif kind == 'cake':
            y, _ = grid(f.ph, f.pw)
            z = np.sin(y / f.ph * 15) > .3
            f.rgb = np.where((z if f.role != 'poured' else z < 2)[..., None], (.95, .9, .85), (.45, .27, .16)).astype(np.float32)
            f.rgb *= (1 + .12 * fbm(rng, f.ph, f.pw, .15 * f.ppc, 3, .8))[..., None]
            f.hgt += .5 * fbm(rng, f.ph, f.pw, .2 * f.ppc, 3)
        else:
            t, f.hgt, g = texture(rng, kind, f.ppc, n)
            f.rgb, f.hgt = t[:f.ph, :f.pw].copy(), f.hgt[:f.ph, :f.pw].copy()

    def ball(self, lin, cx, cy, r, ry, col, li, cam, fur=0., tilt=0.):
        rng = self.rng
        y0, y1, x0, x1 = max(int(cy - ry * 1.1 - r * .3), 0), min(int(cy + ry * 1.1 + r * .3), self.h), max(int(cx - r * 1.3), 0), min(int(cx + r * 1.3), self.w)
        if y1 - y0 < 6 or x1 - x0 < 6:
            return
        y, x = grid(y1 - y0, x1 - x0)
        h, w = y.shape
        a, b = (x + x0 - cx) / r, (y + y0 - cy) / ry
        a, b = a * np.cos(tilt) + b * np.sin(tilt), b * np.cos(tilt) - a * np.sin(tilt)
        q = a * a + b * b + .06 * fbm(rng, h, w, r * .6, 3) + (fur * .12 * fbm(rng, h, w, 10, 3, .9, sy=2.5) if fur else 0)
        z = np.sqrt(np.clip(1 - q, .0, 1))
        N = np.stack([a, b, -z], -1) @ cam.M
        N = N + .25 * fur * fbm(rng, h, w, 9, 3, .8, sy=3)[..., None]
        N /= np.linalg.norm(N, axis=-1, keepdims=True) + 1e-6
        t = fbm(rng, h, w, r * .5, 4)
        alb = np.array(col) * (1 + .08 * t + fur * .16 * fbm(rng, h, w, 8, 3, .9, sy=3))[..., None]
        c = li.shade(np.clip(alb, .02, 1), N, np.full((h, w), .8 * (1 - fur), np.float32), np.broadcast_to(cam.M[2], N.shape), 1, .5 + .5 * z, .3)
        m = 1 - sstep(q, .97, 1.03)
        d = lin[y0:y1, x0:x1]
        d += (c - d) * m[..., None]

    def make(self):
        rng, h, w = self.rng, self.h, self.w
        self.col = {}
        pitch = np.radians(rng.uniform(20, 60) if self.what == 'things' else rng.uniform(8, 25))
        cam = Camera(h, w, np.array([0, 0, 3.]), pitch, 0., rng.uniform(40, 70), rng.normal(0, .04))
        cam.cx, cam.cy, cam.f = w / 2, h / 2, min(h, w) / rng.uniform(22, 34) * 55
        li = Light(rng, cam)
        B, K = [], []
        if self.what != 'animal':
            for i in range(rng.integers(2, 6)):
                k = str(rng.choice(['book', 'box', 'mug', 'candle', 'bread', 'cheese', 'cake', 'oak', 'slate', 'marble']))
                s = dict(book=(13, 2.5, 19), mug=(8, 8, 9), candle=(6, 6, 9), bread=(11, 10, 16), cheese=(9, 6, 7), cake=(7, 8, 7)).get(k, tuple(rng.uniform(4, 14, 3)))
                rd = k in ('mug', 'candle')
                A = orient('flat' if rd else 'stand', 0 if rd else rng.uniform(0, 6.28))
                z = s[2] / 2 if rd else s[1] / 2
                a = i * 2.4 + rng.random()
                B.append(Block(s, (np.cos(a) * 10 * (i > 0) + rng.normal(0, 1), np.sin(a) * 9 * (i > 0), z), A, rd, 8.))
                K.append(k)
        alb, N, gl, P, back, depth, D = table(rng, cam, str(rng.choice(KINDS)), rng.uniform(0, 3), rng.uniform(10, 40))
        key, sky = li.cast(P + np.array([0, 0, .01], np.float32), B, 4)
        lin = li.shade(alb, N, np.full((h, w), gl, np.float32), D / np.linalg.norm(D, axis=-1, keepdims=True), key, sky)
        bd = backdrop(rng, h, w) * (li.ac * li.amb * .8 + .25 * li.key * li.kc)
        lin = lin + (bd - lin) * back[..., None]
        for b, k in sorted(zip(B, K), key=lambda t: -np.linalg.norm(t[0].c - cam.pos)):
            v = View(cam, b, rng)
            if not v.ok or not v.faces:
                continue
            fs = []
            for fc in v.faces:
                f = Face(fc['role'], fc['w'], fc['h'], float(np.clip(v.scale, 6, 60)))
                self.box_paint(f, rng, k)
                f.rgb = np.clip(f.rgb, .02, 1).astype(np.float32)
                fs.append(f)
            al, g, Nn = v.paint(fs)
            ky, sk = li.cast(v.P + v.N * .06, B, 4, b)
            c = li.shade(al, Nn, g, v.D, ky, sk * (1 - .45 * np.exp(-np.clip(v.P[..., 2], 0, 9))), .2, v.box)
            x0, y0, x1, y1 = v.box
            t = lin[y0:y1, x0:x1]
            t += (c - t) * v.alpha[..., None]
        if self.what == 'animal':
            fur = pick(rng, [(.75, .55, .35), (.25, .22, .2), (.85, .82, .78), (.5, .48, .45), (.6, .4, .22)])
            s, x, y = min(h, w) * rng.uniform(.2, .3), w * rng.uniform(.4, .6), h * rng.uniform(.42, .52)
            sh = 1 - .6 * blur(dots(h, w, [(x, y + 1.6 * s, 1.1 * s, 1)], 1), s * .25)
            lin *= sh[..., None]
            for dx, dy, a, b, k, t in ((.5, 1.35, 1.25, 1., .95, .1), (-.6, 1.9, .3, .5, 1., 0), (.1, 1.95, .3, .5, 1., 0), (1.8, 1.6, .9, .2, .9, -.5),
                                       (-.55, -.7, .26, .5, .85, -.4), (.55, -.7, .26, .5, .85, .4), (0, 0, .92, .82, 1.05, 0), (0, .35, .42, .32, 1.2, 0)):
                self.ball(lin, x + dx * s, y + dy * s, a * s, b * s, np.clip(fur * k, 0, 1), li, cam, 1., t)
            for e in (-1, 1):
                self.ball(lin, x + e * .36 * s, y - .08 * s, .15 * s, .15 * s, (.5, .55, .2), li, cam)
                self.ball(lin, x + e * .36 * s, y - .08 * s, .07 * s, .12 * s, (.03, .03, .03), li, cam)
            self.ball(lin, x, y + .2 * s, .13 * s, .09 * s, (.35, .2, .2), li, cam)
        else:
            for _ in range(rng.integers(0, 7)):
                q = np.array([[rng.uniform(-14, 14), rng.uniform(-9, 4), 0]])
                r = rng.uniform(1.2, 3.6)
                (cx, cy), s = cam.project(q + [[0, 0, r]])[0], cam.f / 60 * r
                sh = 1 - .55 * blur(dots(h, w, [(cx - li.dir[0] * s * .5, cy + s * .75, s * .8, 1)], 1), s * .2)
                lin *= sh[..., None]
                self.ball(lin, cx, cy, s, s * rng.uniform(.8, 1.05), pick(rng, FOOD), li, cam)
        return self.phone.finish(self.phone.develop(lin.astype(np.float32)), self.size)
