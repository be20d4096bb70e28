"""Projecting the bodies into the picture: perspective rays, rounded extrusions, hits, shadow, occlusion."""
import torch


def body_distance(x, y, z, q):
    """Signed distance to an extruded rounded rectangle; q = object numbers along dim 1 or broadcast list."""
    a, b, c, rc, re, pa, fx, fz, ph = q[:9]
    peak = pa * torch.sin(fx * x + ph + 1.7 * torch.sin(fz * z)) * torch.sin(fz * z * .8 + ph * 2 + torch.sin(fx * x * .7))
    wob = q[14]
    x, y = x + wob * torch.sin(4.1 * y + ph + 5 * z), y + wob * torch.sin(3.3 * x + 2 * ph + 4 * z)
    y = y - peak * (y / b).clamp(0, 1)
    qx, qy = x.abs() - (a - rc), y.abs() - (b - rc)
    d2 = torch.maximum(qx, qy).clamp(max=0) + torch.sqrt(qx.clamp(min=0) ** 2 + qy.clamp(min=0) ** 2 + 1e-12) - rc
    wx, wz = d2 + re, z.abs() - c + re
    return torch.maximum(wx, wz).clamp(max=0) + torch.sqrt(wx.clamp(min=0) ** 2 + wz.clamp(min=0) ** 2 + 1e-12) - re


def rays(cam, size):
    """Unit world directions [n,3,H,W] and eyes [n,3] from the camera rows."""
    h, w = size
    dev = cam.device
    y, x = torch.meshgrid(torch.arange(h, device=dev), torch.arange(w, device=dev), indexing="ij")
    x = ((x + .5) / w * 2 - 1)[None, None]
    y = -((y + .5) / h * 2 - 1)[None, None] * (h / w)
    col = lambda i: cam[:, i:i + 3, None, None]
    f = cam[:, 12].reshape(-1, 1, 1, 1)
    d = col(3) * x + col(6) * y + col(9) * f
    return cam[:, :3], d / d.norm(dim=1, keepdim=True)


def to_local(rot, v):
    """Turn world vectors [n,3,...] into each body's axes: [n,M,...] triples."""
    r = rot[..., None, None]
    return [r[:, :, k] * v[:, None, 0] + r[:, :, 3 + k] * v[:, None, 1] + r[:, :, 6 + k] * v[:, None, 2] for k in range(3)]


def columns(obj):
    """Object numbers as broadcastable maps [n,M,1,1]."""
    return [obj[:, :, i, None, None] for i in range(obj.shape[2])]


def trace(obj, ctr, rot, eye, dirs, steps=13):
    """March each ray to each body. Returns hit distance, body index (-1 ground, -2 backdrop)."""
    q = columns(obj)
    dx, dy, dz = to_local(rot, dirs)
    ox, oy, oz = local_points(rot, eye[:, None] - ctr)
    near, far = None, None
    for o, d, half in ((ox, dx, q[0] + q[14]), (oy, dy, q[1] + q[5].abs() + q[14]), (oz, dz, q[2])):
        inv = 1 / torch.where(d.abs() < 1e-6, torch.full_like(d, 1e-6), d)
        t1, t2 = (-half - o) * inv, (half - o) * inv
        lo, hi = torch.minimum(t1, t2), torch.maximum(t1, t2)
        near = lo if near is None else torch.maximum(near, lo)
        far = hi if far is None else torch.minimum(far, hi)
    t = near.clamp(min=0)
    dist = None
    for _ in range(steps):
        dist = body_distance(ox + dx * t, oy + dy * t, oz + dz * t, q)
        t = t + dist * .92
    hit = (dist < .005 + .0012 * t) & (far > near) & (far > 0) & (q[0] > 0)
    t = torch.where(hit, t, torch.full_like(t, 1e4))
    best, idx = t.min(1, keepdim=True)
    g = -eye[:, 2].reshape(-1, 1, 1, 1) / dirs[:, 2:3].clamp(max=-1e-5)
    g = torch.where((dirs[:, 2:3] < -1e-4), g, torch.full_like(g, 1e4))
    wall = (14.0 - eye[:, 1].reshape(-1, 1, 1, 1)) / dirs[:, 1:2].clamp(min=1e-4)
    floor = torch.minimum(g, wall)
    idx = torch.where(best < floor, idx, torch.where(g < wall, torch.full_like(idx, -1), torch.full_like(idx, -2)))
    return torch.minimum(torch.minimum(best, floor), torch.full_like(best, 60.)), idx


def local_points(rot, v):
    """Turn per-body vectors [n,M,3] into body axes, as [n,M,1,1] triples."""
    l = [(rot[:, :, k] * v[..., 0] + rot[:, :, 3 + k] * v[..., 1] + rot[:, :, 6 + k] * v[..., 2]) for k in range(3)]
    return [c[:, :, None, None] for c in l]


def gather_rows(table, idx):
    """Rows of [n,M,K] chosen per pixel: [n,K,H,W]."""
    n, m, k = table.shape
    h, w = idx.shape[2:]
    i = idx.clamp(min=0).reshape(n, 1, -1).expand(n, k, h * w)
    return torch.gather(table.permute(0, 2, 1), 2, i).reshape(n, k, h, w)


def surface(obj, ctr, rot, eye, dirs, t, idx):
    """Maps at the hit points: world point, local point, local and world normal, object numbers."""
    p = eye[:, :, None, None] + dirs * t
    q = gather_rows(obj, idx)
    r = gather_rows(rot, idx)
    v = p - gather_rows(ctr, idx)
    loc = [r[:, k:k + 1] * v[:, 0:1] + r[:, 3 + k:4 + k] * v[:, 1:2] + r[:, 6 + k:7 + k] * v[:, 2:3] for k in range(3)]
    qs = [q[:, i:i + 1] for i in range(q.shape[1])]
    e, d0 = .004, body_distance(*loc, qs)
    g = [body_distance(*[c + (e if j == k else 0) for j, c in enumerate(loc)], qs) - d0 for k in range(3)]
    g = torch.cat(g, 1)
    ln = g / g.norm(dim=1, keepdim=True).clamp(min=1e-6)
    wn = torch.cat([(r[:, 3 * k:3 * k + 3] * ln).sum(1, keepdim=True) for k in range(3)], 1)
    ground = torch.zeros_like(wn)
    ground[:, 2] = 1
    wall = torch.zeros_like(wn)
    wall[:, 1] = -1
    wn = torch.where(idx >= 0, wn, torch.where(idx == -1, ground, wall))
    return p, torch.cat(loc, 1), ln, wn, q


def shadow(obj, ctr, rot, p, nrm, light, hardness):
    """Share of the lamp seen from each point, by stepping towards it past every body."""
    q = columns(obj)
    start = p + nrm * .02
    l = local_points(rot, light[:, None].expand(-1, obj.shape[1], -1))
    off = to_local(rot, start)
    base = local_points(rot, ctr)
    pos = [o - c for o, c in zip(off, base)]
    res = torch.ones_like(p[:, :1])
    for t in (.04, .1, .2, .36, .6, 1.0, 1.6, 2.7):
        d = body_distance(*[a + b * t for a, b in zip(pos, l)], q)
        d = torch.where(q[0] > 0, d, torch.full_like(d, 9.))
        res = torch.minimum(res, (hardness * d / t).min(1, keepdim=True)[0])
    s = (res * .5 + .5).clamp(0, 1)
    return s * s * (3 - 2 * s)


def occlusion(obj, ctr, rot, p, nrm):
    """Share of open sky from distances to bodies and ground along the normal."""
    q = columns(obj)
    ao = torch.ones_like(p[:, :1])
    base = local_points(rot, ctr)
    for s, k in ((.12, .55), (.45, .45)):
        x = p + nrm * s
        pos = [o - c for o, c in zip(to_local(rot, x), base)]
        d = body_distance(*pos, q)
        d = torch.where(q[0] > 0, d, torch.full_like(d, 9.)).min(1, keepdim=True)[0]
        d = torch.minimum(d, x[:, 2:3].clamp(min=-1))
        ao = ao - k * ((s - d) / s).clamp(0, 1)
    return ao.clamp(.08, 1)
