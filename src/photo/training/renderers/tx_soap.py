"""Colour of the soap: palettes, portions (plain, layers, swirls from photographs, embeds) and shading."""
import numpy as np
import torch
from tx_bank import fetch, samp, smooth, turn

NAT = [(.93, .88, .76), (.9, .84, .68), (.96, .94, .89), (.85, .76, .58), (.95, .92, .83), (.8, .69, .5), (.88, .86, .8)]
DARK = [(.08, .08, .09), (.2, .13, .09), (.15, .16, .2), (.26, .17, .1), (.1, .14, .12), (.3, .22, .15)]
PLAIN, LAYERS, SWIRL, OMBRE, EMBED, PHOTO = range(6)


def hsv(h, s, v):
    i = np.floor(h * 6) % 6
    f = h * 6 - np.floor(h * 6)
    p, q, t = v * (1 - s), v * (1 - s * f), v * (1 - s * (1 - f))
    return [(v, t, p), (q, v, p), (p, v, t), (p, q, v), (t, p, v), (v, p, q)][int(i)]


def colour(rs, mood):
    if mood == 0:
        c = NAT[rs.randint(len(NAT))]
    elif mood == 1:
        c = (.97 - .05 * rs.rand(),) * 3
        c = (c[0], c[1] - .01 * rs.rand(), c[2] - .05 * rs.rand())
    elif mood == 2:
        c = hsv(rs.rand(), rs.uniform(.08, .38), rs.uniform(.72, .96))
    elif mood == 3:
        c = hsv(rs.rand(), rs.uniform(.45, .95), rs.uniform(.35, .95))
    elif mood == 4:
        c = DARK[rs.randint(len(DARK))]
    else:
        c = hsv(rs.uniform(.02, .3), rs.uniform(.2, .65), rs.uniform(.3, .75))
    return np.clip(np.array(c) + rs.normal(0, .025, 3), .02, .985)


def recipe(rs, multi, layered, pale):
    """Palette [6,3], number of portions and pattern kind of one picture."""
    if layered:
        kind = LAYERS
    elif multi:
        kind = rs.choice([LAYERS, SWIRL, EMBED, PHOTO], p=[.4, .27, .08, .25])
    else:
        kind = rs.choice(6, p=[.4, .21, .13, .06, .06, .14])
    n = 1 if kind == PLAIN else int(rs.choice([2, 3, 4, 5, 6], p=[.38, .3, .16, .1, .06]))
    if kind == EMBED:
        n = rs.randint(2, 4)
    scheme = rs.rand()
    base = rs.choice(6, p=[.28, .12, .2, .17, .08, .15])
    pal = []
    for i in range(6):
        m = base if scheme < .5 else rs.choice(6, p=[.22, .2, .2, .23, .08, .07])
        c = colour(rs, m)
        if scheme < .5 and i:
            c = np.clip(pal[0] + rs.normal(0, .09, 3) + rs.normal(0, .17), .03, .98)
        if i and n > 1 and np.abs(c - pal[-1]).max() < .12:
            c = np.clip(pal[-1] + (.25 if pal[-1].mean() < .55 else -.25) * rs.uniform(.5, 1.2, 3), .03, .98)
        pal.append(c)
    if pale:
        pal[0] = colour(rs, rs.choice([0, 1, 2]))
    if scheme > .7 and n > 1:
        pal[rs.randint(n)] = colour(rs, 1)
    return np.array(pal, np.float32), n, kind


def portions(R, bk, B, kind, n, layered_ang, idx, soft=None):
    """Scalar portion field: its integer part is the palette entry. Parameters are drawn per picture, idx spreads them to bars."""
    k = len(kind)
    rs = R.rs
    U, V, t = B.U, B.V, B.t
    ex = lambda x: x[idx]
    nn = R.t(n)[idx]
    ang = ex(R.t(layered_ang))
    seedx, seedy = R.u(0, 2, k)[idx], R.u(0, 2, k)[idx]
    drift = (R.u(-.12, .12, k)[idx]) * t

    def fld(src, group, lo, hi, jitter=.08):
        pic = bk.pick(rs, group, k)
        an, sc = R.u(0, 6.28, k)[idx], R.logu(lo, hi, k)[idx]
        j = R.u(-jitter, jitter, len(idx))
        a, b = turn(U + drift, V + drift, an, sc, seedx + j, seedy + j)
        return samp(fetch(src, pic[idx]), a, b)
    w1, w2 = fld(bk.soft, "swirl", .15, .6) - .5, fld(bk.soft, "swirl", .3, 1.2) - .5
    amp = (R.logu(.02, .35, k) * R.coin(.75, k))[idx]
    x, y = turn(U, V, ang, torch.ones_like(ang), 0, 0)
    fr = R.logu(2, 16, k)[idx]
    pos = (y + amp * (w1 + .5 * w2) + R.u(0, .05, k)[idx] * torch.sin(x * fr + 6 * seedx) + drift) / (B.p["b"] * torch.cos(ang).abs() + B.p["a"] * torch.sin(ang).abs())
    lay = (pos * .5 + .5).clamp(0, .9999)
    lay = lay ** R.u(.6, 1.7, k)[idx]
    Lf = lay * nn
    sw = R.u(.35, 1.6, k)[idx]
    z1 = torch.sin((x + w1 * 1.6 * sw) * R.u(.8, 3.2, k)[idx] + 2.2 * w2 * sw + seedx * 5)
    z2 = torch.sin((y + w2 * 1.6 * sw) * R.u(1, 4.5, k)[idx] + 2.6 * w1 * sw + seedy * 5)
    Sf = ((z1 + z2) * .27 + .5).clamp(0, .9999) * nn
    ph, ps = fld(bk.rank, "swirl", .08, .3), fld(bk.soft, "swirl", .15, .5)
    mix = R.u(.0, .7, k)[idx]
    Pf = ((ph * mix + ps * (1 - mix) - .5) * (1 + .7 * mix * (1 - mix) * 2) + .5).clamp(0, .9999) * nn
    Of = (pos * .5 + .5).clamp(0, .9999) * nn
    eu, ev, er = R.u(-.5, .5, k)[idx], R.u(-.3, .3, k)[idx], R.u(.15, .5, k)[idx]
    rep = R.coin(.4, k)[idx]
    qu, qv = U - eu, V - ev
    q2u, q2v = torch.remainder(U + .3, .55) - .28, torch.remainder(V + .2, .55) - .28
    d = torch.where(rep > 0, torch.maximum(q2u.abs(), q2v.abs()) - er * .35, (qu * qu + qv * qv).sqrt() - er * torch.minimum(B.p["a"], B.p["b"]))
    d = d + R.u(0, .22, k)[idx] * w1 * R.coin(.5, k)[idx]
    Ef = 1 - (d / (B.px * 3)).clamp(-.5, .499)
    kk = torch.as_tensor(np.asarray(kind), device=U.device)[idx].view(-1, 1, 1, 1)
    Fv = torch.where(kk == LAYERS, Lf, torch.where(kk == SWIRL, Sf, torch.where(kk == PHOTO, Pf, torch.where(kk == OMBRE, Of, torch.where(kk == EMBED, Ef, torch.full_like(Lf, .5))))))
    Fv = torch.minimum(Fv, nn - 1e-3)
    crisp = (R.logu(.02, .3, k)[idx] if soft is None else soft)
    crisp = torch.where(kk == OMBRE, torch.full_like(crisp, .5), torch.where(kk == EMBED, torch.full_like(crisp, .3), crisp))
    return Fv, crisp, kk, nn, w1, w2, (x, y)


def paint(Fv, crisp, pal, nn):
    """Blend palette [n,6,3] by the portion field; crisp is the half-width of a border in portions."""
    n, _, H, W = Fv.shape
    base = Fv.floor()
    fr = Fv - base
    up = fr > .5
    nb = torch.where(up, base + 1, base - 1)
    w = torch.where(up, smooth(1 - crisp, 1 + crisp, fr), 1 - smooth(-crisp, crisp, fr)) * ((nb >= 0) & (nb < nn))
    tab = pal.transpose(1, 2)

    def pick(k):
        return tab.gather(2, k.clamp(0, 5).long().view(n, 1, -1).expand(n, 3, -1)).view(n, 3, H, W)
    return pick(base) * (1 - w) + pick(nb) * w
