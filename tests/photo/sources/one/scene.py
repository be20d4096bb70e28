"""Ray-cast solids over a table: camera, shapes, depth, soft shadows."""
import numpy as np
from scipy import ndimage as nd

F = np.float32


def rot(axis, deg):
    a = np.deg2rad(deg)
    c, s = np.cos(a), np.sin(a)
    i, j = [(1, 2), (2, 0), (0, 1)][axis]
    m = np.eye(3)
    m[i, i], m[i, j], m[j, i], m[j, j] = c, -s, s, c
    return m


class Solid:
    """A rounded prism, ellipsoid or capsule. d: half sizes (cm); R: corner, r: edge rounding."""

    def __init__(self, d, centre, turn=np.eye(3), kind='box', R=0.1, r=0.1, thin=1, top=None, mat=None):
        self.d, self.c, self.M = np.array(d, F), np.array(centre, F), np.array(turn, F)
        self.kind, self.R, self.r, self.thin, self.top, self.mat = kind, F(R), F(r), thin, top, mat
        self.roles = {}

    def sdf(self, p, bump=True):
        d = self.d
        if self.kind == 'ell':
            k0 = np.sqrt(((p / d) ** 2).sum(-1))
            k1 = np.sqrt(((p / (d * d)) ** 2).sum(-1)) + F(1e-6)
            return k0 * (k0 - 1) / k1
        if self.kind == 'cap':
            x = np.maximum(np.abs(p[..., 0]) - (d[0] - self.r), 0)
            return np.sqrt(x * x + p[..., 1] ** 2 + p[..., 2] ** 2) - self.r
        if self.kind == 'cone':
            q = np.sqrt(p[..., 0] ** 2 + p[..., 1] ** 2) - d[0] * (0.5 - 0.5 * p[..., 2] / d[2])
            return np.maximum(q * F(0.8), np.abs(p[..., 2]) - d[2])
        i, j = [k for k in range(3) if k != self.thin]
        R, r = self.R, self.r
        z = p[..., self.thin]
        pi, pj = p[..., i], p[..., j]
        if self.top is not None and bump:
            h = self.top_height(p)
            if self.thin == 2:
                z = z - h * (z > 0)
            else:
                pj = pj - h * (pj > 0)
        qx, qy = np.abs(pi) - (d[i] - R), np.abs(pj) - (d[j] - R)
        q2 = np.sqrt(np.maximum(qx, 0) ** 2 + np.maximum(qy, 0) ** 2) + np.minimum(np.maximum(qx, qy), 0) - R
        wx, wy = q2 + r, np.abs(z) - (d[self.thin] - r)
        return np.sqrt(np.maximum(wx, 0) ** 2 + np.maximum(wy, 0) ** 2) + np.minimum(np.maximum(wx, wy), 0) - r

    def top_height(self, p):
        n = self.top.shape[0]
        m = max(self.d[0], self.d[1])
        ix = np.clip((p[..., 0] / m * 0.5 + 0.5) * (n - 1), 0, n - 1).astype(np.int32)
        iy = np.clip((p[..., 1] / m * 0.5 + 0.5) * (n - 1), 0, n - 1).astype(np.int32)
        return self.top[iy, ix]

    def bounds(self):
        b = self.d.copy()
        if self.top is not None:
            b[2] += self.top.max() + 0.02
        return b

    def corners(self):
        s = np.array([[x, y, z] for x in (-1, 1) for y in (-1, 1) for z in (-1, 1)], F)
        return s * self.bounds() @ self.M.T + self.c

    def normal(self, p):
        e, n = F(0.01), 0
        for k in np.array([[1, -1, -1], [-1, -1, 1], [-1, 1, -1], [1, 1, 1]], F):
            n = n + k * self.sdf(p + k * e, False)[..., None]
        return n / (np.linalg.norm(n, axis=-1, keepdims=True) + F(1e-9))


class Camera:
    def __init__(self, size, target, az, el, dist, fov, roll=0):
        self.h, self.w = size
        a, e = np.deg2rad(az), np.deg2rad(el)
        back = np.array([np.cos(e) * np.sin(a), -np.cos(e) * np.cos(a), np.sin(e)])
        self.eye = (np.array(target) + back * dist).astype(F)
        right = np.array([np.cos(a), np.sin(a), 0])
        up = np.cross(back, right)
        t = np.deg2rad(roll)
        right, up = right * np.cos(t) + up * np.sin(t), up * np.cos(t) - right * np.sin(t)
        self.B = np.stack([right, up, -back]).astype(F)
        self.f = max(size) / 2 / np.tan(np.deg2rad(fov) / 2)

    def rays(self, y0=0, y1=None, x0=0, x1=None, step=1):
        y = np.arange(y0, self.h if y1 is None else y1, step, dtype=F)
        x = np.arange(x0, self.w if x1 is None else x1, step, dtype=F)
        gx, gy = np.meshgrid((x - self.w / 2) / self.f, (self.h / 2 - y) / self.f)
        d = gx[..., None] * self.B[0] + gy[..., None] * self.B[1] + self.B[2]
        return (d / np.linalg.norm(d, axis=-1, keepdims=True)).astype(F)

    def project(self, P):
        q = (P - self.eye) @ self.B.T
        z = np.maximum(q[..., 2], 0.1)
        return self.w / 2 + q[..., 0] / z * self.f, self.h / 2 - q[..., 1] / z * self.f


def trace(cam, s):
    """Cast the rays that may meet s. Returns rect, hit, distance, local point and local normal."""
    x, y = cam.project(s.corners())
    x0, x1 = int(max(x.min() - 4, 0)), int(min(x.max() + 5, cam.w))
    y0, y1 = int(max(y.min() - 4, 0)), int(min(y.max() + 5, cam.h))
    if x1 - x0 < 8 or y1 - y0 < 8:
        return None
    D = cam.rays(y0, y1, x0, x1) @ s.M
    o = (cam.eye - s.c) @ s.M
    b = s.bounds()
    inv = 1 / np.where(np.abs(D) < 1e-6, F(1e-6), D)
    ta, tb = (-b - o) * inv, (b - o) * inv
    t0, t1 = np.minimum(ta, tb).max(-1), np.maximum(ta, tb).min(-1)
    hit = (t1 > t0) & (t0 > 0)
    d, t, end = D[hit], t0[hit].copy(), t1[hit]
    rough = s.top is not None
    res = np.full(t.shape, 9, F)
    live = np.arange(t.size)
    for _ in range(26 if rough or s.kind != 'box' else 14):
        v = s.sdf(o + d[live] * t[live, None])
        t[live] += v * (F(0.8) if rough else 1)
        res[live] = v
        live = live[(np.abs(v) > 0.003) & (t[live] < end[live])]
        if not live.size:
            break
    ok = res < 0.02
    full = np.zeros(hit.shape, bool)
    full[hit] = ok
    T = np.full(hit.shape, 1e6, F)
    T[full] = t[ok]
    T2 = np.where(full, T, t0 if t0.size else 0)
    p = o + D * np.clip(T2, 0, 1e3)[..., None]
    n = np.zeros_like(p)
    n[full] = s.normal(p[full])
    return dict(rect=(y0, y1, x0, x1), hit=full, t=T, p=p, n=n, solid=s)


def shade_field(P, N, solids, light, hard, reach=14.0):
    """Soft shadow towards the light and nearness (contact) darkening, at points P."""
    sh, ao = np.ones(P.shape[:-1], F), np.ones(P.shape[:-1], F)
    for s in solids:
        o = (P + N * F(0.06) - s.c) @ s.M
        L = (light @ s.M).astype(F)
        rad = np.linalg.norm(s.bounds()) + 0.5
        b = -(o @ L)
        off = np.sqrt(np.maximum((o * o).sum(-1) - b * b, 0))
        near = (off < rad + 3.0 / hard * 6) & (b > -rad)
        if near.any():
            q = o[near]
            m, t = np.ones(len(q), F), np.full(len(q), 0.05, F)
            for _ in range(18):
                v = s.sdf(q + t[:, None] * L)
                m = np.minimum(m, 0.5 + 0.5 * np.clip(hard * v / t, -1, 1))
                t += np.clip(np.abs(v), 0.12, 3)
            sh[near] *= m * m * (3 - 2 * m)
        o2 = o + (N @ s.M) * F(0.5)
        nr = np.linalg.norm(o, axis=-1) < rad + 3
        if nr.any():
            v = np.maximum(s.sdf(o2[nr]), 0)
            ao[nr] *= 1 - F(0.62) * np.exp(-v / F(0.55)) * (v < 4)
    return sh, ao


def shadows(cam, t, N, solids, light, hard):
    """Shadow and contact darkening for the whole picture, worked out on a coarse grid."""
    k = 4
    P = cam.eye + cam.rays(step=k) * np.minimum(t[::k, ::k], 300)[..., None]
    sh, ao = shade_field(P, N[::k, ::k], solids, light.astype(F), hard)
    z = lambda a: nd.zoom(a, k, order=1)[:cam.h, :cam.w]

    def fit(a):
        a = z(a)
        return np.pad(a, ((0, cam.h - a.shape[0]), (0, cam.w - a.shape[1])), mode='edge')
    return fit(sh), fit(ao)
