"""Camera, blocks and poses: which point of which face each pixel sees."""
import numpy as np
import torch
import torch.nn.functional as F
from noise import fbm, unit3

torch.set_num_threads(2)


def unit(v):
    v = np.asarray(v, np.float32)
    return v / np.float32(np.linalg.norm(v))


class Camera:
    def __init__(self, h, w, target, pitch, yaw, dist, roll=0.):
        self.h, self.w = h, w
        cp, sp = np.cos(pitch), np.sin(pitch)
        self.pos = (np.asarray(target, np.float32) + dist * np.array([np.sin(yaw) * cp, -np.cos(yaw) * cp, sp])).astype(np.float32)
        fwd = unit(target - self.pos)
        right = np.array([np.cos(yaw), np.sin(yaw), 0], np.float32)
        down = np.cross(fwd, right)
        c, s = np.cos(roll), np.sin(roll)
        self.M = np.stack([c * right + s * down, c * down - s * right, fwd]).astype(np.float32)
        self.f, self.cx, self.cy = 1., 0., 0.

    def project(self, p):
        q = (np.asarray(p) - self.pos) @ self.M.T
        return self.f * q[:, :2] / q[:, 2:] + [self.cx, self.cy]

    def fit(self, pts, fill, rng):
        q = self.project(pts)
        lo, hi = q.min(0), q.max(0)
        self.f = float(min(fill * self.w / (hi[0] - lo[0]), fill * self.h / (hi[1] - lo[1])))
        m = (lo + hi) / 2 * self.f
        play = np.maximum([self.w, self.h] - (hi - lo) * self.f, 0) * .3
        self.cx, self.cy = (float(v) for v in np.array([self.w, self.h]) / 2 - m + rng.uniform(-.7, .7, 2) * play)

    def rays(self, x, y):
        d = np.stack([(x - self.cx) / self.f, (y - self.cy) / self.f, np.ones_like(x)], -1)
        return d.astype(np.float32) @ self.M.astype(np.float32)


class Block:
    """A box (or disc) of size w, h, t along its local axes (rows of A)."""

    def __init__(self, size, centre, A, round_=False, bevel=6.):
        self.half = np.asarray(size, np.float32) / 2
        self.c, self.A = np.asarray(centre, np.float32), np.asarray(A, np.float32)
        self.round, self.bevel = round_, bevel

    def corners(self):
        s = np.array(np.meshgrid([-1, 1], [-1, 1], [-1, 1])).reshape(3, 8).T
        return self.c + (s * self.half) @ self.A

    def hit(self, o, d):
        """Do rays from o [M,3] along d [3] meet the block ahead?"""
        lo, ld = (o - self.c) @ self.A.T, self.A @ d
        ld = np.where(np.abs(ld) < 1e-4, 1e-4, ld).astype(np.float32)
        if not self.round:
            en, ex = None, None
            for i in range(3):
                m, k = lo[:, i] * (-1 / ld[i]), self.half[i] / abs(ld[i])
                en = m - k if en is None else np.maximum(en, m - k)
                ex = m + k if ex is None else np.minimum(ex, m + k)
            return ex > np.maximum(en, .02)
        a, b = (-self.half * np.sign(ld) - lo) / ld, (self.half * np.sign(ld) - lo) / ld
        if self.round:
            q = ld[:2] / self.half[:2]
            r = lo[:, :2] / self.half[:2]
            B, A2 = r @ q, q @ q
            disc = B * B - A2 * (r[:, 0] ** 2 + r[:, 1] ** 2 - 1)
            sq = np.sqrt(np.maximum(disc, 0))
            en = np.maximum((-B - sq) / A2, a[:, 2])
            ex = np.minimum((-B + sq) / A2, b[:, 2])
            return (disc > 0) & (ex > np.maximum(en, .02))


FACES = {(2, 1): ('cut', 0, 1, 1, -1), (2, -1): ('cut', 0, -1, 1, -1), (1, 1): ('poured', 0, 1, 2, 1),
         (1, -1): ('bottom', 0, 1, 2, -1), (0, 1): ('liner', 2, -1, 1, -1), (0, -1): ('liner', 2, 1, 1, -1)}


def face_size(b, axis, sign):
    role, u, _, v, _ = FACES[(axis, sign)]
    if b.round and axis == 0:
        return 'liner', float(np.pi * (b.half[0] + b.half[1])), float(2 * b.half[2])
    return role, float(2 * b.half[u]), float(2 * b.half[v])


class View:
    """What the camera sees of one block: crop, coverage, normals, face coordinates."""

    def __init__(self, cam, b, rng, disp=None):
        q = cam.project(b.corners())
        m = 12
        x0, y0 = np.maximum(np.floor(q.min(0) - m).astype(int), 0)
        x1, y1 = np.minimum(np.ceil(q.max(0) + m).astype(int), [cam.w, cam.h])
        self.box = (x0, y0, x1, y1)
        self.ok = x1 - x0 > 8 and y1 - y0 > 8
        if not self.ok:
            return
        y, x = np.meshgrid(np.arange(y0, y1, dtype=np.float32), np.arange(x0, x1, dtype=np.float32), indexing='ij')
        sc = cam.f / np.linalg.norm(b.c - cam.pos)
        hh, ww = x.shape
        x = x + fbm(rng, hh, ww, 2.5 * sc, 3) * sc * .025
        y = y + fbm(rng, hh, ww, 2.5 * sc, 3) * sc * .025
        D = cam.rays(x, y)
        d = D @ b.A.T
        o = b.A @ (cam.pos - b.c)
        sg = np.sign(o)
        sd = np.where(d >= 0, np.float32(1), np.float32(-1))
        d = np.where(np.abs(d) < 1e-5, np.float32(1e-5) * sd, d)
        te, tx = (-sd * b.half - o) / d, (sd * b.half - o) / d
        if b.round:
            qd, qo = d[..., :2] / b.half[:2], o[:2] / b.half[:2]
            B, A2 = qd @ qo, qd[..., 0] ** 2 + qd[..., 1] ** 2
            disc = B * B - A2 * (qo @ qo - 1)
            sq = np.sqrt(np.maximum(disc, 0))
            gap = np.where(disc > 0, 0, np.sqrt(np.maximum(-disc, 0)) / A2)
            t1, t2 = (-B - sq) / A2 + gap, (-B + sq) / A2 - gap
            te = np.stack([t1, np.full_like(t1, -1e3), te[..., 2]], -1)
            tx = np.stack([t2, np.full_like(t2, 1e3), tx[..., 2]], -1)
        if disp is not None and sg[1] > 0 and not b.round:
            te[..., 1] -= disp(o + d * te[..., 1:2]) / np.maximum(-d[..., 1], .03)
        k = b.bevel
        mx = np.maximum(np.maximum(te[..., :1], te[..., 1:2]), te[..., 2:])
        mn = np.minimum(np.minimum(tx[..., :1], tx[..., 1:2]), tx[..., 2:])
        we, wx = np.exp(np.maximum(k * (te - mx), -30)), np.exp(np.maximum(k * (mn - tx), -30))
        ent = mx[..., 0] + np.log(we[..., 0] + we[..., 1] + we[..., 2]) / k
        ext = mn[..., 0] - np.log(wx[..., 0] + wx[..., 1] + wx[..., 2]) / k
        we /= we[..., :1] + we[..., 1:2] + we[..., 2:]
        wx /= wx[..., :1] + wx[..., 1:2] + wx[..., 2:]
        s = ext - ent
        gy, gx = np.gradient(s)
        self.alpha = np.clip(s / (np.hypot(gx, gy) + 1e-4) + .5, 0, 1).astype(np.float32)
        pt = o + d * np.minimum(ent, ext + .1)[..., None]
        nl = -sd * we
        nx = sd * wx
        if b.round:
            rad = pt[..., :2] / b.half[:2] ** 2
            rad /= np.linalg.norm(rad, axis=-1, keepdims=True) + 1e-6
            nl[..., :2] = rad * we[..., :1]
            nx[..., :2] = rad * wx[..., :1]
        n = nl + nx * np.exp(-np.clip(k * s, 0, 30))[..., None] * .9
        n = unit3(n)
        self.N = (n @ b.A).astype(np.float32)
        self.P = (b.c + pt @ b.A).astype(np.float32)
        self.D = unit3(D)
        self.scale = sc
        self.faces = []
        for ax in range(3):
            if b.round and ax == 1 or (abs(o[ax]) <= b.half[ax] and not (b.round and ax == 0)):
                continue
            key = (ax, int(sg[ax]) or 1)
            wgt = we[..., ax] * (self.alpha > 0)
            if (wgt > .5).sum() < 40:
                continue
            role, us, vs = face_size(b, *key)
            _, u, su, v, sv = FACES[key]
            yy, xx = np.where(wgt > .02)
            r = slice(yy.min(), yy.max() + 1), slice(xx.min(), xx.max() + 1)
            p = pt[r]
            if b.round and ax == 0:
                uu, vv = np.arctan2(p[..., 1], p[..., 0]) / np.pi, p[..., 2] / b.half[2]
            else:
                uu, vv = su * p[..., u] / b.half[u], sv * p[..., v] / b.half[v]
            self.faces.append(dict(key=key, role=role, w=us, h=vs, sl=r, wt=wgt[r].astype(np.float32),
                                   g=torch.from_numpy(np.stack([uu, vv], -1).astype(np.float32))[None],
                                   U=su * b.A[u], V=sv * b.A[v], area=float((wgt > .5).sum())))

    def paint(self, faces):
        """Gather the faces' paint: albedo [..3], gloss, bumped normals."""
        H, W = self.alpha.shape
        col, gl, N = np.zeros((H, W, 3), np.float32), np.zeros((H, W), np.float32), self.N.copy()
        tot = np.full((H, W), 1e-5, np.float32)
        for fc, f in zip(self.faces, faces):
            if f.ph * f.pw == 0:
                continue
            dv, du = np.gradient(f.hgt)
            k = f.ppc * .1
            t = np.concatenate([f.rgb, f.gloss[..., None], (du * np.float32(k))[..., None], (dv * np.float32(k))[..., None]], -1).astype(np.float32)
            o = F.grid_sample(torch.from_numpy(t).permute(2, 0, 1)[None], fc['g'], mode='bilinear', padding_mode='border', align_corners=False)
            o = o[0].permute(1, 2, 0).numpy()
            r, w = fc['sl'], fc['wt']
            col[r] += o[..., :3] * w[..., None]
            gl[r] += o[..., 3] * w
            tot[r] += w
            N[r] -= (o[..., 4:5] * fc['U'] + o[..., 5:6] * fc['V']) * w[..., None]
        N = unit3(N)
        return col / tot[..., None], gl / tot, N


def orient(pose, yaw):
    A = {'flat': [(1, 0, 0), (0, 1, 0), (0, 0, 1)], 'stand': [(1, 0, 0), (0, 0, 1), (0, -1, 0)],
         'side': [(0, 0, 1), (1, 0, 0), (0, 1, 0)], 'bottom': [(1, 0, 0), (0, 0, -1), (0, 1, 0)]}[pose]
    c, s = np.cos(yaw), np.sin(yaw)
    return np.array(A, np.float32) @ np.array([[c, s, 0], [-s, c, 0], [0, 0, 1]], np.float32)
