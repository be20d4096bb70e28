"""Placement of bars, loaves and clutter, the camera, and casting of rays against rounded boxes."""
import math
from types import SimpleNamespace
import torch
from scat_base import length, smooth, mix

SLOTS = 5


def _rot(axis, a):
    """Rotation matrices [n, 3, 3] about a world axis."""
    c, s = torch.cos(a), torch.sin(a)
    o, z = torch.ones_like(a), torch.zeros_like(a)
    rows = {"z": (c, -s, z, s, c, z, z, z, o), "x": (o, z, z, z, c, -s, z, s, c), "y": (c, z, s, z, o, z, -s, z, c)}
    return torch.stack(rows[axis], -1).view(-1, 3, 3)


def _axes(up, yaw):
    """Local-to-world matrices: up 0 = cut face upward, 1 = loaf top upward, 2 = side upward."""
    n = yaw.shape[0]
    eye = torch.eye(3, device=yaw.device)
    stand = torch.stack([eye[0], eye[2], -eye[1]], 1)           # x->x, y->z, z->-y
    side = torch.stack([eye[2], eye[0], eye[1]], 1)
    base = torch.stack([eye, stand, side])[up.view(n)]
    return _rot("z", yaw) @ base


def place(plan, d):
    """Draw centres, axes and sizes of the boxes of every picture."""
    n, dev = plan.n, d.device
    f = lambda lo, hi: d.u(n, lo, hi).view(n)
    lay, up = plan.layout.view(n), plan.up.view(n)
    hx, hy, hz = f(0.75, 1.05), f(0.55, 1.1), f(0.2, 0.5)
    yaw0 = f(-0.9, 0.9) * (f(0, 1) > 0.25).float()
    hz = torch.where(f(0, 1) < 0.15, f(0.07, 0.2), hz)               # thin slices
    rad = torch.exp(f(math.log(0.012), math.log(0.16))).minimum(0.8 * hz)
    long = torch.exp(f(math.log(1.6), math.log(4.0)))
    C, R, Hs, ok, kind, rr = [], [], [], [], [], []
    zacc = torch.zeros(n, device=dev)
    count = (f(0, 1) * 3).long() + 2
    row = f(-0.5, 0.5)
    for j in range(SLOTS):
        loaf = (lay == 1) & (j == 0)
        h = torch.stack([hx, hy, torch.where(loaf, long, hz * (1 + 0.12 * f(-1, 1) * (j > 0)))], 1)
        u = torch.where(lay == 1, torch.where(torch.tensor(j == 0, device=dev), torch.ones_like(up), up), up)
        yaw = yaw0 + f(-0.35, 0.35) * (j > 0)
        height = torch.where(u == 0, h[:, 2], torch.where(u == 1, h[:, 1], h[:, 0]))
        c = torch.zeros(n, 3, device=dev)
        step = torch.where(u == 0, 2 * hx, torch.where(u == 1, 2 * hx, 2 * hy)) * (1.1 + 0.45 * f(0, 1))
        side = float((j + 1) // 2) * (1 if j % 2 else -1)
        c[:, 0] = torch.where(lay == 2, step * side * torch.cos(row), c[:, 0])
        c[:, 1] = torch.where(lay == 2, step * side * torch.sin(row) + 0.4 * f(-1, 1), c[:, 1])
        c[:, :2] = torch.where((lay == 3)[:, None], 0.14 * torch.stack([f(-1, 1), f(-1, 1)], 1), c[:, :2])
        ahead = torch.stack([torch.sin(yaw0), -torch.cos(yaw0)], 1)   # world direction of the loaf axis
        ext = torch.where(u == 0, hy, hz)                             # reach of a slice along the loaf
        gap = (long + 0.1 + 0.3 * f(0, 1) + ext + (j - 1) * (2.15 * ext + 0.25))[:, None]
        c[:, :2] = torch.where(((lay == 1) & (j > 0))[:, None], ahead * gap + 0.2 * f(-1, 1)[:, None], c[:, :2])
        c[:, 2] = torch.where(lay == 3, zacc + height, height)
        zacc = zacc + 2 * height
        many = (lay == 2) | (lay == 3)
        valid = torch.tensor(j == 0, device=dev) | (many & (j < count)) | ((lay == 1) & (j < count - 1) & (j < 3))
        valid = valid & (plan.kind.view(n) == 0)
        clutter = (~valid) & (f(0, 1) < torch.where(plan.kind.view(n) == 1, 0.6, 0.22)) & (lay != 4)
        ch = torch.stack([f(0.15, 1.0), f(0.15, 1.0), f(0.05, 0.8)], 1)
        ang, far = f(0, 6.283), f(1.5, 3.6)
        cc = torch.stack([torch.cos(ang) * far, torch.sin(ang) * far, ch[:, 2]], 1)
        m = clutter[:, None]
        C.append(torch.where(m, cc, c))
        Hs.append(torch.where(m, ch, h))
        R.append(torch.where(m[..., None], _rot("z", f(0, 6.283)), _axes(u, yaw)))
        round_c = ch.min(1).values * (0.05 + 0.94 * (f(0, 1) > 0.5).float())
        rr.append(torch.where(clutter, round_c, rad))
        ok.append((valid | clutter).float())
        kind.append(clutter.float())
    sc = SimpleNamespace(n=n, C=C, R=R, H=Hs, ok=ok, clutter=kind, rad=rr)
    sc.any = [bool(o.any()) for o in ok]
    sc.amp = torch.where(plan.peaks.view(n) > 0, f(0.03, 0.1), f(0, 0.015))
    sc.kx, sc.kz, sc.ph = f(1.5, 6), f(1.5, 6), f(0, 6.283)
    return sc


def camera(sc, plan, d, H, W):
    """Ray origin [n, 3] and directions [n, 3, H, W]; chosen so that the soap fills a random share."""
    n = sc.n
    f = lambda lo, hi: d.u(n, lo, hi).view(n)
    lay, up = plan.layout.view(n), plan.up.view(n)
    el = torch.where(up == 0, f(35, 89), f(10, 60))
    el = torch.where((plan.need.view(n) == 2), f(32, 78), el) * math.pi / 180
    az = -math.pi / 2 + f(-0.7, 0.7)
    soap = torch.stack([o * (1 - c) for o, c in zip(sc.ok, sc.clutter)])
    ctr = sum(c * s[:, None] for c, s in zip(sc.C, soap)) / soap.sum(0).clamp(min=1)[:, None]
    size = torch.stack([((c - ctr).norm(dim=1) + h.norm(dim=1)) * s for c, h, s in zip(sc.C, sc.H, soap)]).max(0).values
    size = torch.where(size < 0.5, f(1.5, 3), size)
    focal = torch.exp(f(math.log(1.7), math.log(4.5)))
    zoom = torch.where(lay == 4, f(0.3, 0.6), torch.where(lay == 1, f(0.42, 0.8), torch.exp(f(math.log(0.55), math.log(1.15)))))
    dist = (size * focal * zoom).maximum(size * 0.9 + 0.8 + 0.0 * zoom)
    look = ctr + torch.stack([f(-1, 1), f(-1, 1), f(-.4, .4)], 1) * (0.22 * size * torch.where(lay == 4, 0.9, 1.0))[:, None]
    out = torch.stack([torch.cos(el) * torch.cos(az), torch.cos(el) * torch.sin(az), torch.sin(el)], 1)
    eye = look + out * dist[:, None]
    eye[:, 2] = eye[:, 2].clamp(min=0.15)
    fw = -out
    rt = torch.stack([-torch.sin(az), torch.cos(az), torch.zeros_like(az)], 1)
    upv = torch.cross(rt, fw, dim=1)
    roll = (f(-0.12, 0.12) + (f(0, 1) < 0.12).float() * f(-1.6, 1.6))[:, None]
    rt, upv = rt * torch.cos(roll) + upv * torch.sin(roll), upv * torch.cos(roll) - rt * torch.sin(roll)
    ys = (torch.arange(H, device=d.device) + 0.5) / H * 2 - 1
    xs = ((torch.arange(W, device=d.device) + 0.5) / W * 2 - 1) * (W / H)
    v = lambda a: a.view(n, 3, 1, 1)
    ray = v(fw) * focal.view(n, 1, 1, 1) + v(rt) * xs.view(1, 1, 1, W) - v(upv) * ys.view(1, 1, H, 1)
    sc.eye, sc.ray, sc.look, sc.dist = eye, ray / length(ray), look, dist
    sc.pix = 2.0 / H / focal
    return sc


def box_distance(p, h, r, amp=None, kx=None, kz=None, ph=None):
    """Signed distance to a rounded box whose +y side carries a wave."""
    q = p.abs() - (h - r)
    d = length(q.clamp(min=0)) + torch.maximum(torch.maximum(q[:, :1], q[:, 1:2]), q[:, 2:]).clamp(max=0) - r
    if amp is not None:
        top = smooth(p[:, 1:2] / h[:, 1:2], 0.55, 1.0)
        d = d - amp * top * torch.sin(kx * p[:, :1] + ph) * torch.sin(kz * p[:, 2:] + 2 * ph)
    return d


def rotate(R, x):
    """Matrix times vector field in full single precision: R [n, 3, 3], x [n, 3, h, w]."""
    R = R[..., None, None]
    return torch.stack([R[:, i, 0] * x[:, 0] + R[:, i, 1] * x[:, 1] + R[:, i, 2] * x[:, 2] for i in range(3)], 1)


def local(sc, j, x, point=True):
    """World points or directions in the frame of slot j."""
    n = sc.n
    if point:
        x = x - sc.C[j].view(n, 3, 1, 1)
    return rotate(sc.R[j].transpose(1, 2), x)


def slot_args(sc, j):
    """Half sizes, radius and wave of slot j with broadcastable shapes."""
    b = lambda a: a.view(sc.n, -1, 1, 1)
    return b(sc.H[j]), b(sc.rad[j]), b(sc.amp * (1 - sc.clutter[j])), b(sc.kx), b(sc.kz), b(sc.ph)


def cast(sc, H, W):
    """First hit of every ray: slot, local point, normal, coverage and distance."""
    n, dev = sc.n, sc.ray.device
    best = torch.full((n, 1, H, W), 1e4, device=dev)
    hit = SimpleNamespace(t=best, cov=torch.zeros_like(best), slot=torch.zeros_like(best),
                          p=torch.zeros(n, 3, H, W, device=dev), h=torch.ones(n, 3, H, W, device=dev),
                          clutter=torch.zeros_like(best))
    hit.n = torch.zeros_like(hit.p)
    for j in range(SLOTS):
        if not sc.any[j]:
            continue
        h, r, amp, kx, kz, ph = slot_args(sc, j)
        o = local(sc, j, sc.eye.view(n, 3, 1, 1))
        v = local(sc, j, sc.ray, False)
        v = torch.where(v.abs() < 1e-6, torch.full_like(v, 1e-6), v)
        big = h + amp + 0.02
        a, b = (-big - o) / v, (big - o) / v
        t0 = torch.minimum(a, b).max(1, keepdim=True).values.clamp(min=0.02)
        t1 = torch.maximum(a, b).min(1, keepdim=True).values
        inside = (t1 > t0) & (sc.ok[j].view(n, 1, 1, 1) > 0)
        t, low, tl = t0, torch.full_like(t0, 9.0), t0
        for _ in range(13):
            dd = box_distance(o + v * t, h, r, amp, kx, kz, ph)
            tl = torch.where(dd < low, t, tl)
            low = torch.minimum(low, dd)
            t = torch.minimum(t + dd * 1.4, t1)                        # over-relaxed: the box is convex
        px = tl * sc.pix.view(n, 1, 1, 1)
        cov = (0.5 - (low - 0.3 * px) / px).clamp(0, 1) * inside
        new = (cov > 0.15) & ((tl < hit.t) | (cov > 0.9) & (hit.cov < 0.5)) & ~((hit.cov > 0.9) & (hit.t < tl))
        p = o + v * tl
        top = smooth(p[:, 1:2] / h[:, 1:2], 0.55, 1.0)               # undo the wave: material coordinates of a flat box
        lift = amp * top * torch.sin(kx * p[:, :1] + ph) * torch.sin(kz * p[:, 2:] + 2 * ph)
        p = torch.cat([p[:, :1], p[:, 1:2] - lift, p[:, 2:]], 1)
        q = (p.abs() - (h - r)).clamp(min=0) * p.sign()
        nl = q / length(q).clamp(min=1e-6)
        nw = rotate(sc.R[j], nl)
        hit.t = torch.where(new, tl, hit.t)
        hit.cov = torch.maximum(hit.cov, cov)
        hit.slot = torch.where(new, torch.full_like(t, float(j)), hit.slot)
        hit.clutter = torch.where(new, sc.clutter[j].view(n, 1, 1, 1).expand_as(t), hit.clutter)
        hit.p, hit.n = torch.where(new, p, hit.p), torch.where(new, nw, hit.n)
        hit.h = torch.where(new, h.expand_as(p), hit.h)
    return hit


def scene_distance(sc, x):
    """Distance of world points to all boxes (for shadow and occlusion)."""
    out = torch.full_like(x[:, :1], 9.0)
    for j in range(SLOTS):
        if not sc.any[j]:
            continue
        dd = box_distance(local(sc, j, x), *slot_args(sc, j)) + 9.0 * (1 - sc.ok[j].view(sc.n, 1, 1, 1))
        out = torch.minimum(out, dd)
    return out
