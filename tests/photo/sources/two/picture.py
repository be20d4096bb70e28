"""One picture: plan, paint faces with and without flaws, light, develop, label."""
import numpy as np
import torch
import torch.nn.functional as F
from noise import blur, unit3, mean3, resize
from scene import Camera, View, unit
from body import Design, Face, DYES, HUES, pick
from flaws_b import TABLE
from extras import EXTRAS, TOP_ONLY, CUT_ONLY
from lens import Light, Phone, gobo
from poses import arrange, hand, CUT, POURED, LINER
from ground import table, backdrop, texture, KINDS

DARK_NEEDS = {'white-specks', 'powdery-film', 'crackle-network'}
SWIRLS = ['swirl', 'drop', 'feather']


def frame(rng):
    L = int(rng.integers(900, 1301))
    S = int(L * rng.choice([.75, .75, .5625, .667, .8, 1.]))
    return (L, S) if rng.random() < .5 else (S, L)


def choose_pose(rng, flaws, close):
    f = flaws[0] if flaws else None
    if f == 'wrinkled-top' or (f == 'crack' and rng.random() < .65) or (f == 'powdery-film' and rng.random() < .5):
        return str(rng.choice(['standtop', 'loaf', 'mould'] if close else POURED))
    if f == 'mould-dimples':
        return str(rng.choice(LINER[:4] if close else LINER))
    if f is None and rng.random() < .25:
        return str(rng.choice(POURED + LINER))
    if f == 'brown-outside-in' and close:
        return 'flat'
    return str(rng.choice(['flat', 'stand'] if close else CUT))


class Picture:
    def __init__(self, seed, flaws=(), tricky=False, poor=None, close=False):
        self.rng = rng = np.random.default_rng(seed)
        self.flaws, self.tricky, self.poor = list(flaws), tricky, poor
        self.size = frame(rng)
        k = .8 if close else .66  # painted smaller, as phones smooth anyway
        self.h, self.w = int(self.size[0] * k), int(self.size[1] * k)
        self.phone = Phone(rng, poor)
        kind = None
        if 'colour-bled' in flaws:
            kind = rng.choice(['layers', 'swirl', 'feather', 'layers'])
        if 'layer-gap' in flaws:
            kind = 'layers'
        elif not kind and set(flaws) & {'brown-outside-in', 'dark-centre-ring', 'crackle-network', 'translucent-veins', 'drag-lines'} and rng.random() < .6:
            kind = rng.choice(['plain', 'mottled'])
        self.add = []
        if tricky:
            self.how = rng.choice(['extra', 'extra', 'extra', 'gobo', 'glare', 'swirl'])
            if self.how == 'extra':
                self.add = [str(rng.choice(list(EXTRAS)))]
                if self.add[0] in ('insert', 'embeds'):
                    kind = 'plain'
            if self.how == 'swirl':
                kind = str(rng.choice(SWIRLS + ['mottled', 'ombre']))
        elif rng.random() < .1 and flaws:
            self.add = [str(rng.choice(['oats', 'poppy', 'stamp', 'petals', 'mica', 'dew', 'glitter']))]
        self.design = D = Design(rng, kind, 'colour-bled' in flaws)
        if set(flaws) & DARK_NEEDS and D.col[0].mean() > .72:
            D.col[0] = pick(rng, HUES)
        if 'brown-outside-in' in flaws:
            D.col[0] = pick(rng, [(.93, .88, .76), (.95, .92, .85), (.90, .80, .66)])
        if self.add and self.add[0] in ('insert', 'embeds', 'poppy', 'coffee'):
            D.col[0] = pick(rng, [(.92, .87, .76), (.9, .8, .7), (.85, .85, .75), (.8, .7, .75)])
        pose = choose_pose(rng, flaws, close)
        if self.add and self.add[0] in CUT_ONLY:
            pose = str(rng.choice(CUT))
        if self.add and self.add[0] in TOP_ONLY:
            pose = str(rng.choice(POURED))
        self.pose = pose
        self.blocks, self.props, pitch, fill = arrange(rng, pose)
        if close:
            fill, pitch = rng.uniform(1.5, 2.3), max(pitch, np.radians(40)) if pose != 'stand' else pitch * .6
            if pose == 'flat':
                pitch = np.radians(rng.uniform(65, 89))
            self.blocks = self.blocks[:1]
        cen = np.mean([b.c for b in self.blocks], 0)
        ext = np.concatenate([b.corners() for b in self.blocks])
        size = np.linalg.norm(ext.max(0) - ext.min(0))
        self.cam = Camera(self.h, self.w, cen, pitch, 0., size * rng.uniform(1.9, 3.4), rng.normal(0, .05))
        self.cam.fit(ext, fill, rng)
        self.light = Light(rng, self.cam)
        self.near = sorted(self.blocks + self.props, key=lambda b: -np.linalg.norm(b.c - self.cam.pos) + b.c[2] * .3)
        if self.tricky and self.how == 'gobo' or rng.random() < .06:
            self.light.gobo = gobo(rng, self.h, self.w)
        if self.tricky and self.how == 'glare':
            self.design.gloss, self.light.spec, self.light.tight = rng.uniform(1.5, 2.5), 4., rng.choice([5, 10, 20])
            v, n = unit(self.cam.pos - cen), self.blocks[0].A[2] * np.sign(self.blocks[0].A[2] @ (self.cam.pos - cen))
            self.light.dir = unit(2 * (v @ n) * n - v + rng.normal(0, .12, 3))
        self.spec = {f: (rng.choice([.12, .3, .55, .8, 1.], p=[.12, .25, .28, .2, .15]) if not close else rng.uniform(.4, 1),
                         rng.choice([.12, .3, .6, 1.]) if not close else rng.uniform(.6, 1), int(rng.integers(0, 3)), int(rng.integers(1 << 30))) for f in flaws}
        pig = pick(rng, DYES + HUES)
        while abs(pig - D.col[0]).sum() < .55:
            pig = pick(rng, DYES + HUES)
        self.ctx = dict(pig=pig, ang=rng.uniform(-.6, .6), drag=rng.choice([0, 0, 1.57]) + rng.normal(0, .08), gap=int(rng.integers(0, 4)), flip=bool(rng.random() < .5),
                        vein=rng.uniform(.3, .7), k=int(rng.integers(0, 12)), cx=rng.uniform(.35, .65), rad=rng.uniform(.8, 2.))
        self.setting()
        self.bodies()

    def setting(self):
        """Table, its shadows, the backdrop and a hand: all that no flaw changes."""
        rng, cam, li = self.rng, self.cam, self.light
        kind = str(rng.choice(KINDS))
        held = self.pose.startswith('hand')
        alb, N, gl, P, back, depth, D = table(rng, cam, kind, rng.uniform(0, 3.14) if rng.random() < .6 else rng.normal(0, .1), max(b.c[1] for b in self.blocks) + rng.uniform(9, 40))
        key, sky = (np.ones((self.h, self.w), np.float32),) * 2 if held else li.cast(P + np.array([0, 0, .01], np.float32), self.near, 5)
        lin = li.shade(alb, N, np.full(key.shape, gl, np.float32), unit3(D), key, sky)
        if back.max() > 0:
            b = backdrop(rng, self.h, self.w) * (li.ac * li.amb * .8 + .25 * li.key * li.kc)
            lin = lin + (b - lin) * back[..., None]
        if held:
            lin = blur(lin, rng.uniform(5, 20))
        else:
            foc = np.linalg.norm(cam.pos - self.blocks[0].c)
            a = np.clip(np.abs(depth - foc) / foc * rng.uniform(.5, 3) - .1, 0, 1)[..., None]
            lin = lin + (blur(lin, rng.uniform(3, 9)) - lin) * a
        self.front = None
        if held:
            bk, self.front = hand(rng, cam, self.blocks[0], li)
            lin = lin + (bk[0] - lin) * bk[1][..., None]
        self.back = lin.astype(np.float32)

    def bodies(self):
        rng, li = self.rng, self.light
        one = rng.random() < .35  # flaw on one bar only
        hero = max(self.blocks, key=lambda b: -np.linalg.norm(b.c - self.cam.pos))
        seeds = {}
        self.items = []
        self.mask = np.zeros((self.h, self.w), np.float32)
        woodk, wrng = str(rng.choice(['pine', 'oak', 'board'])), np.random.default_rng(rng.integers(1 << 30))
        for b in self.near:
            prop = b in self.props
            disp, base = None, int(rng.integers(1 << 30))
            sc = self.cam.f / np.linalg.norm(b.c - self.cam.pos)
            ppc = float(np.clip(sc, 6, min(110, 1300 / (2 * b.half.max()))))
            top = None
            if not prop and not b.round and (b.A[1] @ (self.cam.pos - b.c)) > b.half[1]:
                top = Face('poured', 2 * b.half[0], 2 * b.half[2], ppc)
                self.design.paint(top, np.random.default_rng(base + 1))
                t = torch.from_numpy(top.disp.astype(np.float32))[None, None] * .1

                def disp(p, t=t, b=b):
                    g = np.stack([p[..., 0] / b.half[0], p[..., 2] / b.half[2]], -1).astype(np.float32)
                    return F.grid_sample(t, torch.from_numpy(g)[None], padding_mode='border', align_corners=False)[0, 0].numpy()
            v = View(self.cam, b, np.random.default_rng(base), disp)
            if not v.ok or not v.faces:
                continue
            faces = []
            for fc in v.faces:
                r = np.random.default_rng(base + (1 if fc['role'] == 'poured' else 2 + fc['key'][0]))
                if fc['role'] == 'poured' and top is not None:
                    f = top
                else:
                    f = Face(fc['role'], fc['w'], fc['h'], ppc)
                    f.round = b.round
                    if prop:
                        t, hg, g = texture(r, woodk, ppc, max(f.ph, f.pw))
                        t = t if f.pw > f.ph else t.transpose(1, 0, 2)
                        f.rgb, f.gloss[:] = t[:f.ph, :f.pw].copy(), g
                    else:
                        self.design.paint(f, r)
                lit = -np.array([li.dir @ fc['U'], li.dir @ fc['V']])
                f.lit = lit / (np.linalg.norm(lit) + 1e-6)
                if not prop:
                    for e in self.add:
                        if (e not in CUT_ONLY or f.role == 'cut') and (e not in TOP_ONLY or f.role == 'poured'):
                            EXTRAS[e](r, f, dict(self.ctx, lit=f.lit))
                    np.clip(f.rgb, .02, 1.05, out=f.rgb)
                faces.append(f)
            x0, y0, x1, y1 = v.box
            key, sky = li.cast(v.P + v.N * .06, self.near, 4, b) if len(self.near) > 1 else (np.ones(v.alpha.shape, np.float32),) * 2
            sky = sky * (1 - .45 * np.exp(-np.clip(v.P[..., 2], 0, 9) / .35))
            m = self.mask[y0:y1, x0:x1]
            m[:] = m * (1 - v.alpha) if prop else np.maximum(m, v.alpha)
            self.items.append((v, faces, key, sky, prop, base, (not one) or b is hero))
        if self.front is not None:
            self.mask *= 1 - self.front[1]

    def render(self, flaws, box=None):
        lin = self.back.copy()
        for v, faces, key, sky, prop, base, hit in self.items:
            fs = faces
            if not prop and hit and flaws:
                fs = []
                for fc, f in zip(v.faces, faces):
                    use = [n for n in flaws if f.role in TABLE[n][1]]
                    f = f.copy() if use else f
                    for n in use:
                        s, e, look, sd = self.spec[n]
                        r = np.random.default_rng(sd + base % 9973 + 31 * fc['key'][0])
                        TABLE[n][0](r, f, s, e, look, dict(self.ctx, lit=f.lit))
                        np.clip(f.rgb, .01, 1.05, out=f.rgb)
                    fs.append(f)
            alb, gl, N = v.paint(fs)
            x0, y0, x1, y1 = v.box
            c = self.light.shade(alb, N, gl, v.D, key, sky, 0. if prop else .8, v.box)
            t = lin[y0:y1, x0:x1]
            t += (c - t) * v.alpha[..., None]
        if self.front is not None:
            lin += (self.front[0] - lin) * self.front[1][..., None]
        if self.phone.gain is None:
            c = mean3(lin)[self.mask > .5]
            self.centre = float(np.quantile(c[::7], .8)) if len(c) > 50 else None
        return self.phone.develop(lin, box, self.centre)

    def make(self):
        """8-bit picture, mask, present, shares."""
        full = self.render(self.flaws)
        bar = self.mask > .5
        area = max(bar.sum(), 1)
        bx = [i[0].box for i in self.items] or [(0, 0, self.w, self.h)]
        box = (min(b[0] for b in bx), min(b[1] for b in bx), max(b[2] for b in bx), max(b[3] for b in bx))
        cut = slice(box[1], box[3]), slice(box[0], box[2])
        present, share = [], {}
        if not self.poor:
            for n in self.flaws:
                d = mean3(np.abs(full[cut] - self.render([m for m in self.flaws if m != n], box))) * bar[cut]
                d = np.maximum(d, blur(d, 1.2))
                seen = (d > max(.02, self.phone.noise * 1.1)) & bar[cut]
                sh = float(seen.sum() / area)
                if sh > .0012 and np.quantile(d[seen], .9) > .035 + self.phone.noise:
                    present.append(n)
                    share[n] = round(sh, 4)
        big = resize(self.mask, *self.size) > .5
        return self.phone.finish(full, self.size), big, present, share
