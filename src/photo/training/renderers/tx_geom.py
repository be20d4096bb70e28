"""Layouts, cut-out shapes and their sweep into a body. Picture coordinates: y -1..1 down, x scaled alike."""
import numpy as np
import torch
import torch.nn.functional as F

CUT, TOP, MOULD = 0, 1, 2
KEYS = ("cx cy sz a b rad th gx gy dx dy shrink dome wave wfreq wph lump bevel sup").split()


def roles(rs, need):
    """Front and side roles, and where the body goes, for the set of needed roles of one picture."""
    r = rs.rand()
    if TOP in need and MOULD in need:
        return MOULD, TOP, "up"
    if TOP in need:
        return (CUT, TOP, "up") if CUT in need or r < .45 else (TOP, MOULD, "down")
    if MOULD in need:
        return (CUT, MOULD, "across") if CUT in need or r < .35 else (MOULD, TOP, "up")
    if CUT in need:
        return (CUT, TOP, "up") if r < .4 else (CUT, MOULD, "across")
    return [(CUT, TOP, "up"), (CUT, MOULD, "across"), (TOP, MOULD, "down"), (MOULD, TOP, "up")][rs.choice(4, p=[.35, .3, .23, .12])]


def layout(rs, asp, need, layered):
    """Bars of one picture, back to front: a list of dicts, and the layout's name."""
    front, side, way = roles(rs, need)
    kind = rs.choice(["flat", "box", "close", "loaf", "row", "pile", "held", "scatter"], p=[.24, .22, .14, .09, .11, .06, .09, .05])
    u = rs.uniform
    long = kind == "loaf" and front != CUT
    ratio = u(.27, .5) if long else np.exp(u(np.log(.5), np.log(1.0)))
    upright = rs.rand() < .45 and not long
    a, b = (ratio, 1.) if upright else (1., ratio)
    shape = rs.choice(["box", "soft", "round", "super"], p=[.62, .22, .1, .06])
    m = min(a, b)
    if shape == "round" and not long and not layered:
        m = a = b = 1.
    rad = {"box": np.exp(u(np.log(.01), np.log(.12))), "soft": u(.12, .4), "round": .999, "super": .6}[shape] * m
    size = {"flat": u(.45, 1.1), "box": u(.4, .95), "close": u(1.1, 2.6), "loaf": u(.6, 1.25), "row": u(.28, .62), "pile": u(.38, .7), "held": u(.42, .9), "scatter": u(.26, .5)}[kind]
    th = rs.normal(0, .12) if way == "up" or rs.rand() < .5 else u(-3.14, 3.14)
    depth = size * (u(.25, 1.3) if kind in ("box", "row", "loaf") else u(.0, .5))
    if front == TOP or kind == "flat":
        depth = min(depth, size * u(.02, .5))
    if side in need and front not in need:
        depth = max(depth, size * u(.5, 1.2))
    if kind == "close":
        depth = size * u(0, .5) if side in need else size * u(0, .2)
    ang = {"up": -1.571 + rs.normal(0, .45), "down": 1.571 + rs.normal(0, .5), "across": rs.choice([0, 3.14]) + u(-1.0, 1.0)}[way] + (th if abs(th) < .7 else 0)
    base = dict(sz=size, a=a, b=b, rad=rad, th=th, gx=rs.normal(0, .1), gy=rs.normal(0, .1), dx=depth * np.cos(ang), dy=depth * np.sin(ang),
                shrink=u(0, .25) * (depth > .1), dome=u(.0, .22) * a * (side == TOP and rs.rand() < .6) if way == "up" else 0.,
                wave=u(.0, .05) * (side == TOP and rs.rand() < .5 and way == "up"), wfreq=u(2, 14), wph=u(0, 6.28), lump=u(0, .014) * (rs.rand() < .45),
                bevel=u(.01, .09) * (rs.rand() < .4), sup=float(shape == "super"), cx=rs.normal(0, .16) * asp, cy=rs.normal(.05, .16))
    if kind == "close":
        base["cx"], base["cy"] = rs.normal(0, .45, 2) * size * .6
    base["cx"] -= base["dx"] * .45
    base["cy"] -= base["dy"] * .45
    bars = []
    if kind == "row":
        k = rs.randint(2, 6)
        al = u(-.5, .5) if rs.rand() < .7 else u(1.1, 2.)
        st = size * (min(a, b) * 2 if rs.rand() < .3 else 2) * u(.75, 1.35)
        for i in range(k):
            o = (i - (k - 1) / 2) * st
            bars.append(dict(base, cx=base["cx"] + o * np.cos(al), cy=base["cy"] + o * np.sin(al), th=th + rs.normal(0, .05), wph=u(0, 6.28)))
        bars.sort(key=lambda q: q["cy"])
    elif kind == "pile":
        k, y = rs.randint(2, 5), u(.3, .75)
        for i in range(k):
            bars.append(dict(base, th=rs.normal(0, .08), cx=base["cx"] + rs.normal(0, .06), cy=y))
            y -= 2 * size * b * (.97 if rs.rand() < .8 else .8)
    elif kind == "scatter":
        for i in range(rs.randint(2, 5)):
            bars.append(dict(base, cx=u(-.8, .8) * asp, cy=u(-.7, .8), th=th + rs.normal(0, .8), sz=size * u(.85, 1.2)))
        bars.sort(key=lambda q: q["cy"])
    else:
        bars.append(base)
        if rs.rand() < .12 and kind in ("flat", "box"):
            bars.insert(0, dict(base, cx=base["cx"] + u(-1.2, 1.2), cy=base["cy"] - u(.3, .9), th=u(-.5, .5), sz=size * u(.6, .9)))
    return bars, kind, front, side


def grid(n, H, W, dev):
    y = (torch.arange(H, device=dev, dtype=torch.float32) + .5) / H * 2 - 1
    x = ((torch.arange(W, device=dev, dtype=torch.float32) + .5) / W * 2 - 1) * (W / H)
    return x.view(1, 1, 1, W).expand(n, 1, H, W), y.view(1, 1, H, 1).expand(n, 1, H, W)


class Body:
    """Per-pixel description of every bar of a flat list: coordinates, masks, faces."""

    def __init__(self, P, X, Y, lumps):
        self.P, self.lumps = P, lumps
        p = self.p = {k: P[k] for k in KEYS}
        c, s = torch.cos(p["th"]), torch.sin(p["th"])
        self.c, self.s = c, s
        px = 1.6 / X.shape[2] / p["sz"]
        # place of least distance along the sweep: searched at half size, then refined
        Xh, Yh = X[:, :, ::2, ::2], Y[:, :, ::2, ::2]
        fm, k = torch.stack([self.sdf(*self.local(Xh, Yh, t)) for t in (0., .25, .5, .75, 1.)]).min(0)
        tm, h = k.float() * .25, .125
        for _ in range(3):
            for o in (-h, h):
                tt = (tm + o).clamp(0, 1)
                ff = self.sdf(*self.local(Xh, Yh, tt))
                tm, fm = torch.where(ff < fm, tt, tm), torch.minimum(fm, ff)
            h *= .5
        tm = F.interpolate(tm, size=X.shape[2:], mode="bilinear", align_corners=False)
        U0, V0 = self.local(X, Y, 0.)
        f0 = self.sdf(U0, V0)
        fm = torch.minimum(f0, self.sdf(*self.local(X, Y, tm)))
        for o in (-.02, .02):
            tt = (tm + o).clamp(0, 1)
            ff = self.sdf(*self.local(X, Y, tt))
            tm, fm = torch.where(ff < fm, tt, tm), torch.minimum(fm, ff)
        self.front = (.5 - f0 / px).clamp(0, 1)
        self.mask = (.5 - fm / px).clamp(0, 1)
        self.mask = torch.maximum(self.mask, self.front)
        lo, hi, flo, fhi = torch.zeros_like(tm), tm, f0, fm.clamp(max=-1e-4)
        t = tm
        for _ in range(3):
            t = lo + (hi - lo) * (flo / (flo - fhi)).clamp(.02, 1)
            ft = self.sdf(*self.local(X, Y, t))
            out = ft > 0
            lo, flo = torch.where(out, t, lo), torch.where(out, ft, flo)
            hi, fhi = torch.where(out, hi, t), torch.where(out, fhi, ft.clamp(max=-1e-4))
        infront = f0 <= 0
        self.t = torch.where(infront, torch.zeros_like(t), t)
        Us, Vs = self.local(X, Y, self.t)
        e = 2e-2
        gu, gv = (self.sdf(Us + e, Vs) - self.sdf(Us - e, Vs)) / (2 * e), (self.sdf(Us, Vs + e) - self.sdf(Us, Vs - e)) / (2 * e)
        nn = (gu * gu + gv * gv).sqrt().clamp_min(1e-3)
        self.gu, self.gv = gu / nn, gv / nn
        self.U, self.V, self.f = Us, Vs, f0
        self.nx, self.ny = self.gu * c - self.gv * s, self.gu * s + self.gv * c
        self.side = self.mask * (1 - self.front)
        self.depth = (p["dx"] ** 2 + p["dy"] ** 2).sqrt() / p["sz"]
        w = Us * self.gv.abs() + Vs * self.gu.abs()
        self.GU = torch.where(infront, Us, w + 3.7)
        self.GV = torch.where(infront, Vs, self.t * self.depth * 1.3 + 1.3)
        self.edge = torch.where(infront, -f0, torch.minimum(self.t, 1 - self.t).clamp_min(0) * self.depth)
        self.rim = torch.minimum(self.edge, (-fm).clamp_min(0) * 1.5)
        self.sil = fm
        self.px = px

    def local(self, X, Y, t):
        p = self.p
        k = 1 / (1 - p["shrink"] * t)
        x = (X - p["cx"] - p["dx"] * t) / p["sz"] * k
        y = (Y - p["cy"] - p["dy"] * t) / p["sz"] * k
        u, v = x * self.c + y * self.s, y * self.c - x * self.s
        w = (1 + p["gx"] * u.clamp(-3, 3) + p["gy"] * v.clamp(-3, 3)).clamp_min(.3)
        return u / w, v / w

    def sdf(self, u, v):
        p = self.p
        un = u / p["a"]
        lift = p["dome"] * (1 - un * un).clamp_min(0) + p["wave"] * torch.sin(u * p["wfreq"] + p["wph"]) * torch.sin(u * p["wfreq"] * .37 + 1)
        v = v + lift * (.5 - v / p["b"] * .5).clamp(0, 1)
        u = u + p["lump"] * torch.sin(v * 5 + p["wph"]) * torch.sin(v * 2.3 + u)
        v = v + p["lump"] * torch.sin(u * 4.1 + 2 * p["wph"])
        qx, qy = u.abs() - p["a"] + p["rad"], v.abs() - p["b"] + p["rad"]
        box = (qx.clamp_min(0) ** 2 + qy.clamp_min(0) ** 2 + 1e-9).sqrt() + torch.maximum(qx, qy).clamp(max=0) - p["rad"]
        sup = (((u / p["a"]) ** 4 + (v / p["b"]) ** 4 + 1e-6) ** .25 - 1) * torch.minimum(p["a"], p["b"])
        return box + p["sup"] * (sup - box)
