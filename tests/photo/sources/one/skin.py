"""The skin of one soap solid: a flat sheet on which its visible faces lie side by side."""
import numpy as np
from noise import F, blur, fbm, gather, smooth

AXES = [(1, 2), (0, 2), (0, 1)]


class Skin:
    """Channels col (linear), hgt (cm), gloss; p: local points; role masks cut, top, side."""

    def __init__(self, hitinfo, cam, roles):
        s, p, n, hit = hitinfo['solid'], hitinfo['p'], hitinfo['n'], hitinfo['hit']
        ax = np.abs(n).argmax(-1)
        sgn = np.take_along_axis(n, ax[..., None], -1)[..., 0] > 0
        face = ax * 2 + sgn
        ppc = cam.f / np.median(hitinfo['t'][hit])
        self.ok, faces, total = True, [], 0.0
        for f in range(6):
            m = hit & (face == f)
            if m.sum() < 40:
                continue
            u, v = (p[..., k][m] for k in AXES[f // 2])
            faces.append([f, u.min() - .06, u.max() + .06, v.min() - .06, v.max() + .06, m.sum()])
            total += (faces[-1][2] - faces[-1][1]) * (faces[-1][4] - faces[-1][3])
        if not faces:
            self.ok = False
            return
        hgt = max(f[4] - f[3] for f in faces)
        wid = sum(f[2] - f[1] for f in faces)
        ppc = min(ppc, np.sqrt(1.1e6 / (hgt * wid)))
        self.ppc, self.solid = ppc, s
        H = int(hgt * ppc) + 3
        W = sum(int((f[2] - f[1]) * ppc) + 3 for f in faces)
        self.shape = (H, W)
        self.p, self.face = np.zeros((H, W, 3), F), np.zeros((H, W), np.int8)
        self.rows = np.zeros(hit.shape, F)
        self.cols = np.zeros(hit.shape, F)
        self.rects, x = {}, 0
        yy = np.arange(H, dtype=F)[:, None]
        for f, u0, u1, v0, v1, cnt in faces:
            w = int((u1 - u0) * ppc) + 3
            a, (i, j) = f // 2, AXES[f // 2]
            xx = np.arange(w, dtype=F)[None]
            q = self.p[:, x:x + w]
            q[..., i], q[..., j] = u0 + xx / ppc, v0 + yy / ppc
            q[..., a] = s.d[a] * (1 if f % 2 else -1)
            self.face[:, x:x + w] = f
            self.rects[f] = (x, x + w, int((v1 - v0) * ppc), cnt)
            m = face == f
            self.cols[m] = x + 1 + np.clip((p[..., i][m] - u0) * ppc, 0, w - 3)
            self.rows[m] = np.clip((p[..., j][m] - v0) * ppc, 0, H - 1)
            x += w
        role = np.array([roles.get(f, 'side') for f in range(6)])
        self.cut, self.top, self.side = ((role == k)[self.face] for k in ('cut', 'top', 'side'))
        used = np.zeros((H, W), bool)
        for x0, x1, hh, _ in self.rects.values():
            used[:hh, x0:x1] = True
        self.used = used
        e = s.d - np.abs(self.p)
        ids = [np.take_along_axis(e, np.take(np.array([k[m] for k in AXES]), self.face // 2)[..., None], -1)[..., 0]
               for m in (0, 1)]
        self.rim = np.minimum(*ids)
        self.hgt, self.gloss = np.zeros((H, W), F), np.full((H, W), 0.3, F)
        self.col = np.zeros((H, W, 3), F)
        self.dye = self.dyecol = self.border = None

    def copy(self):
        o = Skin.__new__(Skin)
        o.__dict__.update(self.__dict__)
        o.hgt, o.gloss, o.col = self.hgt.copy(), self.gloss.copy(), self.col.copy()
        return o

    def coords(self):
        """Coordinates on the face in cm: u along, v across or up."""
        i = np.array([k[0] for k in AXES])[self.face // 2]
        j = np.array([k[1] for k in AXES])[self.face // 2]
        return (np.take_along_axis(self.p, i[..., None].astype(int), -1)[..., 0],
                np.take_along_axis(self.p, j[..., None].astype(int), -1)[..., 0])

    def sample(self, k=1):
        """Colour, height and gloss at every k-th pixel of the solid's rectangle."""
        a = np.concatenate([np.moveaxis(self.col * self.cavity()[..., None], -1, 0), self.hgt[None], self.gloss[None]])
        o = gather(a, [self.cols[::k, ::k], self.rows[::k, ::k]])
        return np.moveaxis(o[:3], 0, -1), o[3], o[4]

    def noise(self, rng, cm, octaves=4, gain=0.5):
        cm = np.array((cm, cm) if np.isscalar(cm) else cm)
        return fbm(rng, self.shape, cm * self.ppc, octaves, gain)

    def region(self, rng, extent, where, cm=2.0):
        """A soft patch that covers about `extent` of `where`."""
        if extent > 0.92:
            return where.astype(F)
        n = self.noise(rng, cm, 3)
        vals = n[where & self.used]
        if vals.size < 10:
            return where.astype(F) * 0
        t = np.quantile(vals[::7], 1 - extent)
        return smooth(t - 0.25, t + 0.25, n) * where

    def spots(self, rng, n, radius, where, soft=0.25, ragged=0.0, stretch=1.0, angle=0.0, most=None):
        """Paint n spots of the given radii (cm: low, high), weighted by `where`. A field 0..1."""
        H, W = self.shape
        out = np.zeros((H, W), F)
        k = max(n * 30, 200)
        ys, xs = rng.integers(0, H, k), rng.integers(0, W, k)
        w = np.asarray(where, F) * self.used
        keep = np.flatnonzero(rng.random(k) < w[ys, xs])[:n]
        lo, hi = radius
        ca, sa = np.cos(angle), np.sin(angle)
        for i in keep:
            r = max(lo * (hi / lo) ** (rng.random() ** 1.8) * self.ppc, 0.55)
            st = 1 + (stretch - 1) * rng.random()
            R = int(r * max(st, 1) * 1.6 + 3)
            y0, y1, x0, x1 = max(ys[i] - R, 0), min(ys[i] + R + 1, H), max(xs[i] - R, 0), min(xs[i] + R + 1, W)
            dy = np.arange(y0, y1, dtype=F)[:, None] - ys[i]
            dx = np.arange(x0, x1, dtype=F)[None] - xs[i]
            a, b = (dx * ca + dy * sa) / st, dy * ca - dx * sa
            d = np.sqrt(a * a + b * b) / r
            if ragged:
                th = np.arctan2(b, a)
                ph = rng.random(3) * 6.28
                d = d * (1 + ragged * (np.sin(2 * th + ph[0]) + np.sin(3 * th + ph[1]) + .7 * np.sin(5 * th + ph[2])) / 2)
            e = max(soft, 0.6 / r)
            amp = 0.6 + 0.4 * rng.random() if most is None else most
            np.maximum(out[y0:y1, x0:x1], amp * (1 - smooth(1 - e, 1 + e, d)), out=out[y0:y1, x0:x1])
        return out

    def cavity(self):
        """Darkening of hollows."""
        h = self.hgt * F(self.ppc)
        d = h - blur(h, max(0.10 * self.ppc, 1.5))
        return np.clip(1 + d * F(2.2 / max(0.10 * self.ppc, 1.5)), 0.12, 1.12)
