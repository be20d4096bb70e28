"""Geometry: rounded blocks, round cakes, capsules, a table plane; shadow, nearness."""
import torch


def bc(x):
    return x[..., None, None]


def sdf(p, h, rad, rnd, wave, wl, ph):
    """distance to a rounded block; rnd=1 an elliptic cake; wave lifts the +y top"""
    x, y, z = p[:, 0:1], p[:, 1:2], p[:, 2:3]
    hx, hy, hz = h[:, 0:1], h[:, 1:2], h[:, 2:3]
    if wave is not None:
        lift = torch.sin(x * wl + ph) * torch.cos(z * wl * 0.7 - ph * 2) + 0.6 * torch.sin(
            x * wl * 1.9 + z * wl * 1.3 + 3 * ph)
        y = y - wave * lift * (y / hy).clamp(0, 1)
    ax, ay, az = x.abs() - hx + rad, y.abs() - hy + rad, z.abs() - hz + rad
    o = (ax.clamp(min=0) ** 2 + ay.clamp(min=0) ** 2 + az.clamp(min=0) ** 2).sqrt()
    box = o + torch.maximum(ax, torch.maximum(ay, az)).clamp(max=0) - rad
    e = ((x / (hx - rad)) ** 2 + (y / (hy - rad)) ** 2 + 1e-9).sqrt()
    w = (e - 1) * torch.minimum(hx, hy)
    cyl = (w.clamp(min=0) ** 2 + az.clamp(min=0) ** 2).sqrt() + torch.maximum(w, az).clamp(max=0) - rad
    return torch.where(rnd > 0.5, cyl, box)


def trace(ro, rd, g, steps=9):
    """nearest block: t, its number (-1 none), place and normal in its own axes"""
    m, _, hh, ww = rd.shape
    best = torch.full((m, 1, hh, ww), 1e4, device=rd.device)
    idx = torch.full_like(best, -1.0)
    loc, nrm = torch.zeros_like(rd), torch.zeros_like(rd)
    for k in range(g['C'].shape[1]):
        if not bool((g['on'][:, k] > 0).any()):
            continue
        R = g['R'][:, k]
        o = bc(torch.einsum('nji,nj->ni', R, ro - g['C'][:, k]))
        d = torch.einsum('nji,njhw->nihw', R, rd)
        h, rad, rnd = bc(g['H'][:, k]), bc(g['rad'][:, k:k + 1]), bc(g['rnd'][:, k:k + 1])
        wv = bc(g['wave'][:, k:k + 1])
        par = (h, rad, rnd, wv, bc(g['wl'][:, None]), bc(g['ph'][:, None]))
        hb = h + torch.cat([wv * 0, wv * 1.7, wv * 0], 1)
        inv = 1 / torch.where(d.abs() < 1e-6, torch.full_like(d, 1e-6), d)
        a, b = (-hb - o) * inv, (hb - o) * inv
        tn, tf = torch.minimum(a, b).amax(1, keepdim=True), torch.maximum(a, b).amin(1, keepdim=True)
        ok = (tn < tf) & (tf > 0) & (bc(g['on'][:, k:k + 1]) > 0)
        t = tn.clamp(min=0)
        for _ in range(steps):
            s = sdf(o + d * t, *par)
            t = t + s * 0.85
        ok = ok & (s < 0.03) & (t < best) & (t < tf + 0.05)
        p = o + d * t
        n = torch.zeros_like(p)
        for e in ((1, -1, -1), (-1, -1, 1), (-1, 1, -1), (1, 1, 1)):
            ev = torch.tensor(e, device=p.device, dtype=p.dtype).view(1, 3, 1, 1)
            n = n + ev * sdf(p + ev * 0.02, *par)
        best = torch.where(ok, t, best)
        idx = torch.where(ok, torch.full_like(idx, float(k)), idx)
        loc = torch.where(ok, p, loc)
        nrm = torch.where(ok, n, nrm)
    nrm = nrm / (nrm.norm(dim=1, keepdim=True) + 1e-9)
    return best, idx, loc, nrm


def pick(table, idx):
    """table [m,K,c] by number field idx [m,1,h,w] -> [m,c,h,w]"""
    m, K, c = table.shape
    out = torch.zeros(m, c, *idx.shape[2:], device=idx.device)
    for k in range(K):
        out = torch.where(idx == k, bc(table[:, k]), out)
    return out


def toworld(v, g, idx):
    out = torch.zeros_like(v)
    for k in range(g['R'].shape[1]):
        if bool((g['on'][:, k] > 0).any()):
            out = torch.where(idx == k, torch.einsum('nij,njhw->nihw', g['R'][:, k], v), out)
    return out


def near(p, g):
    """distance in the world to all blocks (no waves) """
    out = torch.full_like(p[:, :1], 1e3)
    for k in range(g['C'].shape[1]):
        if not bool((g['on'][:, k] > 0).any()):
            continue
        q = torch.einsum('nji,njhw->nihw', g['R'][:, k], p - bc(g['C'][:, k]))
        rnd = bc(g['rnd'][:, k:k + 1])
        a = q.abs() - bc(g['H'][:, k]) + 0.15
        d = (a.clamp(min=0) ** 2).sum(1, keepdim=True).sqrt() + a.amax(1, keepdim=True).clamp(max=0) - 0.15
        if bool((g['rnd'][:, k] > 0.5).any()):
            h = bc(g['H'][:, k])
            w = (((q[:, :2] / h[:, :2]) ** 2).sum(1, keepdim=True).sqrt() - 1) * h[:, :2].amin(1, keepdim=True)
            az = q[:, 2:3].abs() - h[:, 2:3]
            c = (w.clamp(min=0) ** 2 + az.clamp(min=0) ** 2).sqrt() + torch.maximum(w, az).clamp(max=0)
            d = torch.where(rnd > 0.5, c, d)
        out = torch.minimum(out, torch.where(bc(g['on'][:, k:k + 1]) > 0, d, out))
    return out


def shadow(p, n, L, hard, g, steps=14):
    """1 lit .. 0 dark; hard: sharpness of the edge (large = sharp)"""
    q = p + n * 0.06
    t = torch.full_like(p[:, :1], 0.08)
    res = torch.ones_like(t)
    for _ in range(steps):
        d = near(q + L * t, g)
        res = torch.minimum(res, 0.5 + 0.5 * hard * d / t)
        t = t + d.clamp(0.12, 3.0)
    res = res.clamp(0, 1)
    return res * res * (3 - 2 * res)


def closeness(p, n, g, table_y):
    """ambient light left near other things"""
    occ = torch.zeros_like(p[:, :1])
    for s, w in ((0.25, 0.5), (0.8, 0.35), (2.0, 0.3)):
        q = p + n * s
        d = torch.minimum(near(q, g), q[:, 1:2] - table_y)
        occ = occ + w * (1 - d / s).clamp(0, 1)
    return (1 - 0.75 * occ).clamp(0.12, 1)


def capsules(ro, rd, A, B, r, on):
    """fingers: t, normal, number, along (0..1)"""
    m, _, hh, ww = rd.shape
    best = torch.full((m, 1, hh, ww), 1e4, device=rd.device)
    nrm, num, al = torch.zeros_like(rd), torch.zeros_like(best), torch.zeros_like(best)
    o = bc(ro).expand_as(rd)
    for k in range(A.shape[1]):
        a, b, rk = bc(A[:, k]), bc(B[:, k]), bc(r[:, k:k + 1])
        t = ((a + b) * 0.5 - o).norm(dim=1, keepdim=True) - (b - a).norm(dim=1, keepdim=True) * 0.5 - rk
        t = t.clamp(min=0.5)
        for _ in range(14):
            p = o + rd * t
            ba, pa = b - a, p - a
            hq = ((pa * ba).sum(1, keepdim=True) / (ba * ba).sum(1, keepdim=True)).clamp(0, 1)
            v = pa - ba * hq
            ln = v.norm(dim=1, keepdim=True)
            knuckle = rk * (1 + 0.07 * torch.cos(hq * 12.0) - 0.14 * hq)
            d = ln - knuckle
            t = t + d
        ok = (d < 0.03) & (t < best) & (bc(on[:, k:k + 1]) > 0)
        best, nrm = torch.where(ok, t, best), torch.where(ok, v / (ln + 1e-6), nrm)
        num, al = torch.where(ok, torch.full_like(num, float(k)), num), torch.where(ok, hq, al)
    return best, nrm, num, al


def capnear(p, A, B, r, on):
    out = torch.full_like(p[:, :1], 1e3)
    for k in range(A.shape[1]):
        a, ba = bc(A[:, k]), bc(B[:, k] - A[:, k])
        hq = (((p - a) * ba).sum(1, keepdim=True) / (ba * ba).sum(1, keepdim=True)).clamp(0, 1)
        d = (p - a - ba * hq).norm(dim=1, keepdim=True) - bc(r[:, k:k + 1])
        out = torch.where(bc(on[:, k:k + 1]) > 0, torch.minimum(out, d), out)
    return out
