"""Where every pixel's ray meets the soap, the hand, the table or the wall: the geometry buffer."""
import torch
from press_noise import mix


def dot(a, b):
    return (a * b).sum(1, keepdim=True)


def unit(a):
    return a / a.norm(dim=1, keepdim=True).clamp_min(1e-6)


def turn(R, v):
    """R [n,3,3], v [n,3,h,w]"""
    R = R[:, :, :, None, None]          # written out: a matmul might run in TF32
    return R[:, :, 0] * v[:, :1] + R[:, :, 1] * v[:, 1:2] + R[:, :, 2] * v[:, 2:3]


def outline(p, b, rc):
    """distance to the outline of the bar's cross-section (inside below 0)"""
    q = p[:, :2].abs() - (b[:, :2] - rc)
    return q.clamp_min(0).norm(dim=1, keepdim=True) + q.max(1, keepdim=True)[0].clamp_max(0) - rc


def bump(p, b, top):
    """pour-top relief: a few peaks and furrows; top [n,5,1,1] amp, freqs, phase, dome"""
    x, z = p[:, :1], p[:, 2:3]
    k = torch.sin(x * top[:, 1:2] + top[:, 3:4]) * torch.cos(z * top[:, 2:3] + 2 * torch.sin(x * .9 + top[:, 3:4]))
    dome = 1 - (x / b[:, :1]) ** 2
    return top[:, :1] * k + top[:, 4:5] * dome


def soap_sdf(p, b, rc, r, top):
    y = p[:, 1:2]
    y = y - bump(p, b, top) * (y / b[:, 1:2]).clamp(0, 1)
    p = torch.cat([p[:, :1], y, p[:, 2:]], 1)
    d2 = outline(p, b, rc)
    wv = torch.cat([d2 + r, p[:, 2:].abs() - b[:, 2:] + r], 1)
    return wv.clamp_min(0).norm(dim=1, keepdim=True) + wv.max(1, keepdim=True)[0].clamp_max(0) - r


def local(sc, k, i, x):
    return turn(sc.R[i, k].transpose(1, 2), x - sc.c[i, k][:, :, None, None])


def bar_dist(sc, k, i, x):
    return soap_sdf(local(sc, k, i, x), sc.b[i, k][:, :, None, None], sc.rc[i], sc.r[i], sc.top[i])


def hand_dist(sc, i, x):
    d = None
    for j in range(sc.fa.shape[1]):
        a, e = sc.fa[i, j][:, :, None, None], sc.fb[i, j][:, :, None, None]
        ba = e - a
        t = (dot(x - a, ba) / dot(ba, ba)).clamp(0, 1)
        q = (x - a - ba * t).norm(dim=1, keepdim=True) - sc.fr[i, j][:, None, None, None] * (1 - .18 * t)
        if d is None:
            d = q
        else:
            m = (0.5 + 0.5 * (d - q) / 0.35).clamp(0, 1)
            d = mix(d, q, m) - 0.35 * m * (1 - m)
    return d


def union(sc, x):
    d = torch.full_like(x[:, :1], 50.0)
    for k in range(sc.K):
        i = sc.alive[k]
        if len(i):
            d[i] = torch.minimum(d[i], bar_dist(sc, k, i, x[i]))
    if len(sc.hand):
        i = sc.hand
        d[i] = torch.minimum(d[i], hand_dist(sc, i, x[i]))
    return d


def trace(sc, h, w):
    n, dev = sc.n, sc.dev
    ys = (torch.arange(h, device=dev) + .5) / h * 2 - 1
    xs = ((torch.arange(w, device=dev) + .5) / w * 2 - 1) * (w / h)
    gx, gy = xs[None, None, None].expand(n, 1, h, w), ys[None, None, :, None].expand(n, 1, h, w)
    rr = 1 + sc.lensk * (gx ** 2 + gy ** 2)
    f = sc.fov
    d = unit(turn(sc.cam, torch.cat([gx * f * rr, -gy * f * rr, -torch.ones_like(gx)], 1)))
    o = sc.eye[:, :, None, None].expand(n, 3, h, w)
    far = 400.0
    # table y=0 and wall z=-D
    tp = torch.where(d[:, 1:2] < -1e-4, -o[:, 1:2] / d[:, 1:2].clamp_max(-1e-4), torch.full_like(gx, far))
    tw = torch.where(d[:, 2:3] < -1e-4, (-sc.wall - o[:, 2:3]) / d[:, 2:3].clamp_max(-1e-4), torch.full_like(gx, far))
    t = torch.minimum(tp, tw).clamp(0.1, far)
    what = torch.where(tp <= tw, 0.0, 1.0)          # 0 table 1 wall 2 soap 3 hand
    P = torch.zeros_like(d)
    B = torch.ones_like(d)
    bid = torch.zeros_like(gx)
    for k in range(sc.K):
        i = sc.alive[k]
        if not len(i):
            continue
        b = sc.b[i, k][:, :, None, None]
        ol, dl = local(sc, k, i, o[i]), turn(sc.R[i, k].transpose(1, 2), d[i])
        dl = torch.where(dl.abs() < 1e-5, torch.full_like(dl, 1e-5), dl)
        pad = b + 0.02 + (sc.top[i, :1].abs() + sc.top[i, 4:5].abs())
        t1, t2 = (-pad - ol) / dl, (pad - ol) / dl
        tn = torch.minimum(t1, t2).max(1, keepdim=True)[0].clamp_min(0.05)
        tf = torch.maximum(t1, t2).min(1, keepdim=True)[0]
        ok = tn < tf
        tt = tn
        for _ in range(16):
            dist = soap_sdf(ol + dl * tt, b, sc.rc[i], sc.r[i], sc.top[i])
            tt = tt + dist * 0.85
        hit = ok & (dist.abs() < 0.03) & (tt < t[i]) & (tt < tf + .3)
        t[i] = torch.where(hit, tt, t[i])
        what[i] = torch.where(hit, torch.full_like(tt, 2.0), what[i])
        P[i] = torch.where(hit, ol + dl * tt, P[i])
        B[i] = torch.where(hit, b.expand_as(dl), B[i])
        bid[i] = torch.where(hit, torch.full_like(tt, float(k)), bid[i])
    if len(sc.hand):
        i = sc.hand
        tt = (t[i] * 0 + 1) * (sc.eye[i] - sc.c[i, 0]).norm(dim=1)[:, None, None, None] - 9
        tt = tt.clamp_min(.5)
        for _ in range(16):
            dist = hand_dist(sc, i, o[i] + d[i] * tt)
            tt = tt + dist
        hit = (dist.abs() < 0.05) & (tt < t[i])
        t[i] = torch.where(hit, tt, t[i])
        what[i] = torch.where(hit, torch.full_like(tt, 3.0), what[i])
    X = o + d * t
    N = torch.zeros_like(X)
    N[:, 1:2] = (what == 0).float()
    N[:, 2:3] = (what == 1).float()
    e = 0.03
    soap = (what == 2)
    Rn = torch.zeros_like(X)
    for s in ((1, -1, -1), (-1, -1, 1), (-1, 1, -1), (1, 1, 1)):
        v = torch.tensor(s, device=dev, dtype=torch.float32).view(1, 3, 1, 1)
        Rn = Rn + v * soap_sdf(P + v * e, B, sc.rc, sc.r, sc.top)
    Nl = unit(Rn)
    Nw = torch.zeros_like(X)
    for k in range(sc.K):
        i = sc.alive[k]
        if len(i):
            m = soap[i] & (bid[i] == k)
            Nw[i] = torch.where(m, turn(sc.R[i, k], Nl[i]), Nw[i])
    N = torch.where(soap, Nw, N)
    if len(sc.hand):
        i = sc.hand
        G = torch.zeros_like(X[i])
        for s in ((1, -1, -1), (-1, -1, 1), (-1, 1, -1), (1, 1, 1)):
            v = torch.tensor(s, device=dev, dtype=torch.float32).view(1, 3, 1, 1)
            G = G + v * hand_dist(sc, i, X[i] + v * e)
        N[i] = torch.where(what[i] == 3, unit(G), N[i])
    return dict(X=X, N=unit(N), Nl=Nl, P=P, B=B, bid=bid, what=what, t=t, d=d, gx=gx, gy=gy)


def light_reach(sc, g):
    """soft shadow towards the light, and how open the point is (ambient)"""
    X = g["X"] + g["N"] * 0.06
    Ld = sc.light[:, :, None, None].expand_as(X)
    res = torch.ones_like(X[:, :1])
    t = torch.full_like(res, 0.12)
    for _ in range(12):
        d = union(sc, X + Ld * t)
        res = torch.minimum(res, 0.5 + 0.5 * sc.hard * d / t)
        t = t + d.clamp(0.14, 2.5)
    res = res.clamp(0, 1)
    sh = res * res * (3 - 2 * res)
    ao = 1.0
    for s in (0.5, 1.6):
        ao = ao * (0.3 + 0.7 * (union(sc, g["X"] + g["N"] * s) / s).clamp(0, 1))
    return sh, ao
