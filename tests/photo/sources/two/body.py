"""The soap itself: colours and designs painted on each face of a bar."""
import numpy as np
from noise import rim, fbm, sstep, grid, dots, blur

PALE = [(.93, .89, .80), (.95, .93, .88), (.90, .84, .70), (.88, .80, .66), (.92, .87, .74), (.86, .82, .74)]
HUES = [(.80, .58, .50), (.86, .64, .66), (.62, .68, .50), (.45, .55, .40), (.36, .48, .62), (.62, .56, .74),
        (.38, .37, .37), (.22, .21, .22), (.47, .33, .25), (.62, .45, .30), (.86, .70, .34), (.84, .52, .28),
        (.80, .34, .42), (.25, .58, .58), (.50, .30, .55), (.72, .76, .74), (.66, .30, .24), (.90, .76, .70),
        (.70, .80, .86), (.76, .70, .60)]
DYES = [(.72, .16, .30), (.16, .26, .62), (.44, .16, .50), (.10, .46, .46), (.80, .28, .14), (.14, .42, .22), (.16, .14, .18)]


def pick(rng, seq):
    c = np.array(seq[rng.integers(len(seq))]) + rng.normal(0, .025, 3)
    return np.clip(c, .06, .97).astype(np.float32)


class Face:
    """A face of w by h centimetres with its paint: colour, height (mm), gloss."""

    def __init__(self, role, w, h, ppc):
        self.role, self.w, self.h = role, w, h
        self.pw, self.ph = max(int(w * ppc), 24), max(int(h * ppc), 24)
        self.ppc = ppc
        self.rgb, self.round = None, False
        self.hgt = np.zeros((self.ph, self.pw), np.float32)
        self.gloss = np.full((self.ph, self.pw), 1., np.float32)
        self.zone = None

    def copy(self):
        f = object.__new__(Face)
        f.__dict__.update(self.__dict__)
        f.rgb, f.hgt, f.gloss = self.rgb.copy(), self.hgt.copy(), self.gloss.copy()
        return f

    def mix(self, colour, a):
        self.rgb += (np.asarray(colour, np.float32) - self.rgb) * a[..., None]

    def tint(self, factor, a):
        self.rgb *= 1 + (np.asarray(factor, np.float32) - 1) * a[..., None]


class Design:
    """What a batch of soap looks like; paint(face, rng) draws one face."""

    def __init__(self, rng, kind=None, dye=False):
        self.kind = kind or rng.choice(['plain', 'plain', 'plain', 'mottled', 'mottled', 'layers', 'swirl', 'drop', 'ombre', 'feather', 'fleck'])
        self.n = int(rng.integers(2, 5)) if self.kind == 'layers' else int(rng.integers(2, 4))
        base = pick(rng, PALE) if rng.random() < .6 else pick(rng, HUES)
        self.col = [base]
        while len(self.col) < 4:
            c = pick(rng, DYES) if dye else pick(rng, HUES + PALE)
            if not dye:
                c = base + (c - base) * rng.choice([.3, .5, .75, 1.]).astype(np.float32)
            if abs(c - self.col[-1]).sum() > rng.uniform(.08, .3):
                self.col.append(c)
        if dye:
            self.col[0], self.col[2] = pick(rng, PALE), pick(rng, PALE)
        cuts = np.sort(rng.random(self.n - 1)) * .5 + .25
        self.cuts = np.linspace(0, 1, self.n + 1)[1:-1] * .7 + cuts * .3
        self.wave, self.wlen = rng.uniform(.02, .3), rng.uniform(1.5, 6)
        self.scale, self.warp = rng.uniform(1.2, 3.5), rng.uniform(.5, 1.6)
        self.ang = rng.uniform(0, np.pi)
        self.soft, self.fray, self.freq = rng.choice([.02, .06, .18]), rng.uniform(.02, .16), rng.uniform(1.6, 3.4)
        self.gloss = rng.uniform(.25, 1.3)
        self.top = rng.choice(['flat', 'flat', 'ripple', 'peaks', 'comb'])
        self.dry = rng.uniform(0, 1)

    def zones(self, f, rng):
        """Zone field: real number whose floor is the colour's index."""
        h, w, p = f.ph, f.pw, f.ppc
        y, x = grid(h, w)
        if self.kind == 'layers':
            if f.role in ('poured', 'bottom'):
                return np.full((h, w), .5 if f.role == 'poured' else self.n - .5, np.float32)
            z = np.full((h, w), .5, np.float32)
            wav = fbm(rng, 1, w, self.wlen * p, 3)[0]
            f.lines = []
            for c in self.cuts:
                line = c * h + (wav + .5 * fbm(rng, 1, w, self.wlen * p, 3)[0]) * self.wave * p
                f.lines.append(line)
                z += sstep(y - line, -1.2, 1.2)
            return z
        if self.kind == 'ombre':
            return y / h * (self.n - 1) * .98 + .5 if f.role not in ('poured', 'bottom') else np.full((h, w), .5, np.float32)
        a = fbm(rng, h, w, self.scale * p, 4, .45)
        b = fbm(rng, h, w, self.scale * p, 4, .45)
        if self.kind == 'drop':
            r = np.hypot(x - w * rng.uniform(.3, .7), (y - h * rng.uniform(.2, .6)) * 1.5) / p
            t = r * 1.3 + a * self.warp * .8
        elif self.kind == 'feather':
            t = x / p * 1.2 + a * .25 + self.warp * np.sin(y / p * 2.4 + b * .6) * .6
        else:
            t = (x * np.cos(self.ang) + y * np.sin(self.ang)) / p / self.scale * 1.5 + a * self.warp + .4 * b
        t = t + self.fray * fbm(rng, h, w, .35 * p, 4, .6)
        s = .5 + .42 * np.sin(t * self.freq) + .1 * fbm(rng, h, w, 1.6 * p, 3)
        k = np.zeros((h, w), np.float32) + .5
        for i in range(1, self.n):
            q = i / self.n + .08
            k += sstep(s, q - self.soft, q + self.soft)
        return k

    def paint(self, f, rng):
        h, w, p = f.ph, f.pw, f.ppc
        grain = fbm(rng, h, w, .12 * p, 3, .7)
        slow = fbm(rng, h, w, 2.5 * p, 3)
        f.lines = None
        if self.kind in ('plain', 'mottled', 'fleck'):
            f.rgb = np.broadcast_to(self.col[0], (h, w, 3)).copy()
            if self.kind == 'mottled':
                m = fbm(rng, h, w, .9 * p, 4, .6)
                f.rgb *= (1 + .035 * m)[..., None]
            if self.kind == 'fleck':
                k = rng.integers(60, 200)
                f.tint((.8, .78, .75), dots(h, w, [(rng.random() * w, rng.random() * h, p * .012, .8) for _ in range(int(k * f.w * f.h / 40))]))
        else:
            z = self.zones(f, rng)
            f.zone = z
            i = np.clip(z - .5, 0, len(self.col) - 1.001)
            lo = np.floor(i).astype(int)
            col = np.array(self.col, np.float32)
            f.rgb = col[lo] + (col[lo + 1] - col[lo]) * (i - lo)[..., None].astype(np.float32)
        f.rgb = f.rgb * (1 + .008 * grain + .022 * slow)[..., None]
        f.rgb[..., 2] *= 1 - .012 * fbm(rng, h, w, 1.5 * p, 2)
        f.gloss *= self.gloss * (1 + .15 * slow)
        f.hgt += .006 * grain + .05 * fbm(rng, h, w, 1.2 * p, 3)
        if f.role == 'cut':  # faint plane marks of any wire cut
            f.hgt += .02 * fbm(rng, h, w, .5 * p, 3, sx=8)
            f.tint((1.05, 1.05, 1.04), np.exp(-rim(f) / .12) * self.dry)
        if f.role == 'poured':
            self.top_relief(f, rng)
        elif f.role == 'liner':
            f.gloss *= 1.25
            f.hgt += .03 * fbm(rng, h, w, 2 * p, 2)
        np.clip(f.rgb, .02, 1, out=f.rgb)

    def top_relief(self, f, rng):
        h, w, p = f.ph, f.pw, f.ppc
        y, x = grid(h, w)
        if self.top == 'flat':
            r = .25 * fbm(rng, h, w, 1.5 * p, 3)
        elif self.top == 'ripple':
            r = .7 * fbm(rng, h, w, 1.2 * p, 2, sx=1.8)
        elif self.top == 'peaks':
            r = 1.4 * np.abs(fbm(rng, h, w, 1.3 * p, 3)) + .3 * fbm(rng, h, w, .4 * p, 2)
        else:
            r = .6 * np.sin(x / p * 5 + 1.2 * fbm(rng, h, w, 2 * p, 2)) * (1 + .3 * fbm(rng, h, w, p, 2))
        f.hgt += r
        f.disp = blur(r, .05 * p)
        f.gloss *= .5
