"""Ray casting of rounded extruded solids with a displaced top, by sphere tracing inside their slabs."""
import torch
from . import scene as sc


def cam_rays(cam, H, W):
    n = cam.shape[0]
    dev = cam.device
    v = lambda i: cam[:, i].view(n, 1, 1)
    y = (torch.arange(H, device=dev, dtype=torch.float32) + .5).view(1, H, 1)
    x = (torch.arange(W, device=dev, dtype=torch.float32) + .5).view(1, 1, W)
    px = (x - W / 2) / (W / 2) * v(12)
    py = (H / 2 - y) / (W / 2) * v(12)
    d = [v(3 + k) * px + v(6 + k) * py + v(9 + k) for k in range(3)]
    il = torch.rsqrt(d[0] ** 2 + d[1] ** 2 + d[2] ** 2)
    d = [c * il for c in d]
    o = [v(k) for k in range(3)]
    pix = (2 * v(12) / W)                                   # angle of a pixel
    return o, d, pix


def wave(P, x, y, z):
    """top displacement, P gives columns"""
    up = P(sc.UP) * x + P(sc.UP + 1) * y + P(sc.UP + 2) * z
    hz = (P(sc.UP) * P(sc.H) + P(sc.UP + 1) * P(sc.H + 1) + P(sc.UP + 2) * P(sc.H + 2)).abs()
    a = P(sc.W1) * x + P(sc.W1 + 1) * y + P(sc.W1 + 2) * z + P(sc.WP)
    b = P(sc.W2) * x + P(sc.W2 + 1) * y + P(sc.W2 + 2) * z + P(sc.WP + 1)
    c = ((up / hz) * 1.6 - .4).clamp(0, 1)
    return a, b, c


def sdf(P, x, y, z, waves=True):
    if waves:
        a, b, c = wave(P, x, y, z)
        d = (P(sc.WA) * (torch.sin(a) - 1) + P(sc.WA + 1) * (torch.sin(b + torch.sin(a)) - 1)) * c
        x, y, z = x - P(sc.UP) * d, y - P(sc.UP + 1) * d, z - P(sc.UP + 2) * d
    rp, re = P(sc.RP), P(sc.RE)
    qx, qy = x.abs() - P(sc.H) + rp, y.abs() - P(sc.H + 1) + rp
    d2 = (qx.clamp(min=0) ** 2 + qy.clamp(min=0) ** 2).sqrt() + torch.maximum(qx, qy).clamp(max=0) - rp + re
    dz = z.abs() - P(sc.H + 2) + re
    return (d2.clamp(min=0) ** 2 + dz.clamp(min=0) ** 2).sqrt() + torch.maximum(d2, dz).clamp(max=0) - re


def to_local(P, x, y, z, rot_only=False):
    if not rot_only:
        x, y, z = x - P(sc.C), y - P(sc.C + 1), z - P(sc.C + 2)
    r = lambda i: P(sc.R + i)
    return r(0) * x + r(1) * y + r(2) * z, r(3) * x + r(4) * y + r(5) * z, r(6) * x + r(7) * y + r(8) * z


def slab(P, lo, ld, grow=0.0):
    tn, tf = None, None
    for k in range(3):
        inv = 1.0 / torch.where(ld[k].abs() < 1e-6, torch.full_like(ld[k], 1e-6), ld[k])
        h = P(sc.H + k) + grow
        a, b = (-h - lo[k]) * inv, (h - lo[k]) * inv
        mn, mx = torch.minimum(a, b), torch.maximum(a, b)
        tn = mn if tn is None else torch.maximum(tn, mn)
        tf = mx if tf is None else torch.minimum(tf, mx)
    return tn, tf


def col(table, s):
    n = table.shape[0]
    return lambda i: table[:, s, i].view(n, 1, 1)


SUB = list(range(sc.H, sc.RE + 1)) + list(range(sc.WA, sc.TO))


def compact(table, s, act, *comps):
    """only the pixels where act: flat indices, column getter, picked tensors"""
    n = table.shape[0]
    f = act.reshape(-1).nonzero()[:, 0]
    pic = torch.div(f, act[0].numel(), rounding_mode="floor")
    cols = table[:, s][:, SUB].t().index_select(1, pic)
    where = {c: k for k, c in enumerate(SUB)}
    return f, (lambda i: cols[where[i]]), [c.expand_as(act).reshape(-1)[f] for c in comps]


def cast(table, o, d, pix, waves, steps=9):
    """-> t [n,H,W], slot index [n,H,W] (-1 none); waves[s] tells whether any top of slot s is displaced"""
    n, S = table.shape[:2]
    best = torch.full_like(d[0], 1e9)
    idx = torch.full(d[0].shape, -1, dtype=torch.int64, device=d[0].device)
    for s in range(S):
        P = col(table, s)
        lo = to_local(P, *o)
        ld = to_local(P, *d, rot_only=True)
        tn, tf = slab(P, lo, ld)
        ok = (tn < tf) & (tf > 0) & (P(sc.TY) > 0) & (tn < best)
        f, Q, v = compact(table, s, ok, *lo, *ld, tn, tf, best, pix)
        lx, ly, lz, ax, ay, az, tn, tf, bs, px = v
        t = tn.clamp(min=.02)
        e = t
        for _ in range(steps):
            e = sdf(Q, lx + ax * t, ly + ay * t, lz + az * t, waves[s])
            t = t + e * .92
        hit = (e < px * t * .8) & (t < tf + .01) & (t < bs)
        best.view(-1)[f] = torch.where(hit, t, bs)
        old = idx.view(-1)[f]
        idx.view(-1)[f] = torch.where(hit, torch.full_like(old, s), old)
    return best, idx


def normal(P, x, y, z):
    """analytic local normal of the gathered solid"""
    a, b, c = wave(P, x, y, z)
    ca = torch.cos(a)
    cb = torch.cos(b + torch.sin(a))
    dd = (P(sc.WA) * (torch.sin(a) - 1) + P(sc.WA + 1) * (torch.sin(b + torch.sin(a)) - 1)) * c
    X, Y, Z = x - P(sc.UP) * dd, y - P(sc.UP + 1) * dd, z - P(sc.UP + 2) * dd
    rp, re = P(sc.RP), P(sc.RE)
    qx, qy = X.abs() - P(sc.H) + rp, Y.abs() - P(sc.H + 1) + rp
    cx, cy = qx.clamp(min=0), qy.clamp(min=0)
    l2 = (cx ** 2 + cy ** 2).sqrt()
    flat = l2 < 1e-6
    gx = torch.where(flat, (qx >= qy).float(), cx / (l2 + 1e-9))
    gy = torch.where(flat, (qx < qy).float(), cy / (l2 + 1e-9))
    d2 = l2 + torch.maximum(qx, qy).clamp(max=0) - rp + re
    dz = Z.abs() - P(sc.H + 2) + re
    c2, c3 = d2.clamp(min=0), dz.clamp(min=0)
    l3 = (c2 ** 2 + c3 ** 2).sqrt()
    fl3 = l3 < 1e-6
    w2 = torch.where(fl3, (d2 >= dz).float(), c2 / (l3 + 1e-9))
    w3 = torch.where(fl3, (d2 < dz).float(), c3 / (l3 + 1e-9))
    sg = lambda v: torch.where(v < 0, -torch.ones_like(v), torch.ones_like(v))
    nx, ny, nz = w2 * gx * sg(X), w2 * gy * sg(Y), w3 * sg(Z)
    nu = nx * P(sc.UP) + ny * P(sc.UP + 1) + nz * P(sc.UP + 2)
    ka, kb = P(sc.WA) * ca + P(sc.WA + 1) * cb * ca, P(sc.WA + 1) * cb
    o = []
    for k, v in enumerate((nx, ny, nz)):
        o.append(v - nu * c * (ka * P(sc.W1 + k) + kb * P(sc.W2 + k)))
    il = torch.rsqrt(o[0] ** 2 + o[1] ** 2 + o[2] ** 2 + 1e-12)
    return [v * il for v in o]


def shadow(table, p, L, own, size):
    """soft shadow toward L and closeness occlusion from all other solids. p world, L [n,1,1] comps"""
    n, S = table.shape[:2]
    vis = torch.ones_like(p[0])
    ao = torch.ones_like(p[0])
    for s in range(S):
        P = col(table, s)
        lo = to_local(P, *p)
        ld = to_local(P, *L, rot_only=True)
        tn, tf = slab(P, lo, ld, .24)
        act = (own != s) & (P(sc.TY) > 0)
        d0 = sdf(P, *lo, waves=False)
        ao = ao * torch.where(act, 1 - .55 * torch.exp(-d0.clamp(min=0) / .07), torch.ones_like(ao))
        a = tn.clamp(min=.0)
        f, Q, v = compact(table, s, act & (tf > a) & (tf > 0), *lo, *ld, a, tf, size)
        lx, ly, lz, ax, ay, az, a, tf, sz = v
        r = torch.full_like(a, 9.0)
        for k in range(4):
            t = a + (tf - a) * (k + .5) / 4
            r = torch.minimum(r, sdf(Q, lx + ax * t, ly + ay * t, lz + az * t, False) / ((t.clamp(min=.02) * sz).clamp(max=.22) + .01))
        q = (r * .5 + .5).clamp(0, 1)
        vis.view(-1)[f] = vis.view(-1)[f] * q * q * (3 - 2 * q)
    return vis, ao
