"""Ray intersection with rounded solids, soft shadow and occlusion, all batched.

A solid is one row of 40 numbers: 0-2 centre, 3-11 world-to-local rows, 12-14 half size, 15 rounding,
16 norm of the rounding, 17 footprint exponent (0 = box), 18 unevenness, 19 top relief, 20 relief scale,
21 kind (1 soap, 0 clutter), 22-24 colour, 25 gloss, 26 texture, 27-29 place in the loaf,
30 top axis (1 = y, 2 = z), 31 texture scale, 32 relief stretch."""
import torch
from vol_noise import sstep, length

WIDTH = 40


def rotate(m9, v):
    """Nine rows [B,9,1 or N] applied to v [B,3,N]."""
    return torch.cat([(m9[:, 3 * i:3 * i + 3] * v).sum(1, keepdim=True) for i in range(3)], 1)


def sdf(fd, p, s, relief):
    """Distance of local point p [B,3,N] to a solid with parameters s [B,40,1 or N]."""
    h, r, k, n = s[:, 12:15], s[:, 15:16], s[:, 16:17], s[:, 17:18]
    a = p.abs()
    q = a - h + r
    ne = n.clamp(min=1.5)
    e = ((a[:, :1] / h[:, :1]) ** ne + (a[:, 1:2] / h[:, 1:2]) ** ne + 1e-9) ** (1 / ne)
    qx = (e - 1) * torch.minimum(h[:, :1], h[:, 1:2]) + r
    foot = n > 1
    q = torch.cat([torch.where(foot, qx, q[:, :1]), torch.where(foot, qx * 0 - 9.0, q[:, 1:2]), q[:, 2:]], 1)
    m = q.clamp(min=0)
    d = ((m + 1e-6) ** k).sum(1, keepdim=True) ** (1 / k) + q.max(1, keepdim=True)[0].clamp(max=0) - r
    if relief:
        st = torch.cat([s[:, 20:21], s[:, 20:21] * 0.4, s[:, 20:21] * s[:, 32:33]], 1)
        w = fd.noise((p + s[:, 27:30]) * st + 31.3)
        up = torch.where(s[:, 30:31] < 1.5, p[:, 1:2] / h[:, 1:2], p[:, 2:3] / h[:, 2:3])
        d = d - s[:, 18:19] * w[:, :1] - s[:, 19:20] * (w[:, 1:2] - 0.2) * sstep(0.35, 0.95, up)
    return d


def slab(o, d, h):
    """Entry and exit of a ray through a box of half size h, local coordinates."""
    inv = 1 / torch.where(d.abs() < 1e-5, torch.full_like(d, 1e-5), d)
    t1, t2 = (-h - o) * inv, (h - o) * inv
    return torch.minimum(t1, t2).max(1, keepdim=True)[0], torch.maximum(t1, t2).min(1, keepdim=True)[0]


def trace(fd, ro, rd, solids, counts, table_t):
    """Nearest hit. solids [B,P,40]; counts: list of picture lists per slot. -> t, id (-1 = none)."""
    t = table_t.clone()
    ident = torch.full_like(t, -1.0)
    for k, rows in enumerate(counts):
        if not rows:
            continue
        sub = torch.tensor(rows, device=ro.device)
        s = solids[sub, k][:, :, None]
        o = rotate(s[:, 3:12], ro[sub] - s[:, 0:3])
        d = rotate(s[:, 3:12], rd[sub])
        soap = k < 6
        pad = (s[:, 18:19] + s[:, 19:20]) * 1.2
        tn, tf = slab(o, d, s[:, 12:15] + pad)
        inside = (tf > tn.clamp(min=0))
        tt = tn.clamp(min=0.02)
        for _ in range(12 if soap else 9):
            dist = sdf(fd, o + d * tt, s, soap)
            tt = torch.minimum(tt + dist * (0.85 if soap else 0.95), tf + 0.05)
        hit = inside & (dist < 0.012 + 0.002 * tt) & (tt < t[sub]) & (tt < tf + 0.02)
        t[sub] = torch.where(hit, tt, t[sub])
        ident[sub] = torch.where(hit, torch.full_like(tt, float(k)), ident[sub])
    return t, ident


def pick(solids, ident):
    """Per-pixel solid parameters [B,40,N]."""
    b, p, w = solids.shape
    idx = ident.clamp(min=0).long().expand(b, w, -1)
    return torch.gather(solids.permute(0, 2, 1), 2, idx)


def normal(fd, p, s, eps=0.006):
    """Local normal by a tetrahedron of distances."""
    n = 0
    for v in ((1, -1, -1), (-1, -1, 1), (-1, 1, -1), (1, 1, 1)):
        e = p.new_tensor(v).view(1, 3, 1)
        n = n + e * sdf(fd, p + e * eps, s, True)
    return n / length(n).clamp(min=1e-6)


def shadow(pos, light, solids, counts, soft, ident):
    """Soft shadow of rounded boxes towards a light place [B,3,1]; 1 = lit."""
    v = light - pos
    rd = v / length(v)
    out = torch.ones_like(pos[:, :1])
    for k, rows in enumerate(counts):
        if not rows:
            continue
        sub = torch.tensor(rows, device=pos.device)
        s = solids[sub, k][:, :, None]
        o = rotate(s[:, 3:12], pos[sub] - s[:, 0:3])
        d = rotate(s[:, 3:12], rd[sub])
        h = s[:, 12:15] * torch.where(s[:, 17:18] > 1, s.new_tensor(0.88), s.new_tensor(0.96))
        tn, tf = slab(o, d, h)
        w = soft[sub] * (0.06 + tn.clamp(min=0, max=4) * 0.5) + 0.004
        sh = ((tn - tf) / w * 0.5 + 0.5).clamp(0, 1)
        sh = sh * sh * (3 - 2 * sh)
        own = (ident[sub] == k) & (s[:, 17:18] > 1)
        sh = torch.where((tf < 0.02) | own, torch.ones_like(sh), sh)
        out[sub] = torch.minimum(out[sub], sh)
    return out


def occlusion(fd, pos, nrm, solids, counts, ident):
    """Darkening near touching solids and table."""
    ao = torch.ones_like(pos[:, :1])
    for k, rows in enumerate(counts):
        if not rows:
            continue
        sub = torch.tensor(rows, device=pos.device)
        s = solids[sub, k][:, :, None]
        own = ident[sub] == k
        for step, amt in ((0.05, 0.35), (0.2, 0.45)):
            q = rotate(s[:, 3:12], pos[sub] + nrm[sub] * step - s[:, 0:3])
            d = sdf(fd, q, s, False)
            occ = (1 - d / step).clamp(0, 1) * amt
            ao[sub] = ao[sub] * torch.where(own, torch.ones_like(occ), 1 - occ)
    low = (1 - pos[:, 2:3] / 0.15).clamp(0, 1) * (1 - nrm[:, 2:3].abs()) * 0.45
    return ao * torch.where(ident >= 0, 1 - low, torch.ones_like(low))
