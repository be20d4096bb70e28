"""The sixteen flaws, first part. Each takes a context s, random numbers r(j) in 0..1, look number k and
strength a, changes albedo, relief and gloss of s and returns its mask [m,H,W] in 0..1."""
import torch
from .bank import noise3, cells, sstep, fr, lerp
from .soap import spray


def deep(c, g=2.2, sat=1.6):
    m = c.mean(1, keepdim=True)
    return ((m + (c - m) * sat).clamp(.01, .95) ** (g * .75)) * .62


def hue3(r, lo=.02, hi=.65):
    return torch.stack([lo + (hi - lo) * (.5 + .5 * torch.sin(6.283 * r + k * 2.094)) for k in range(3)], 1)


def region(s, r, k):
    """where a scattered flaw lives: everywhere, one portion, clusters, rising to one side, near the rim"""
    n = s.ls(s.W * (.25 + .3 * r))
    por = (s.pi == ((r * 7).floor() % (s.pi * s.soap).amax((1, 2), keepdim=True).add(1).clamp(1, 3))).float()
    cl = sstep(.2, .9, n[0])
    gr = sstep(-.3, .4, (s.l[2] / s.W) * torch.where(r < .5, 1.0, -1.0) + .2 * n[1])
    rm = sstep(.16, .02, s.rim / s.W + .03 * n[0])
    o = torch.where(k == 1, por, torch.ones_like(cl))
    o = torch.where(k == 2, cl, o)
    o = torch.where(k == 3, gr, o)
    return torch.where(k == 4, rm, o)


def coloured_specks(s, r, k, a):
    reg = region(s, r(0), k)
    size = s.W * (.025 + .09 * r(1) ** 2)
    rr = s.W * (.003 + .012 * r(2) ** 2)
    m, x, y, i = spray(s, size, rr, .12 + .75 * r(3), r(4), None, 1.0, .12)
    m2, _, _, i2 = spray(s, size * 2.7, rr * (1.5 + r(6)), .1 + .4 * r(5), r(4) + 3, None, 1.0, .3)
    m = torch.maximum(m, m2 * (k != 0).float()) * reg
    col = deep(s.ci, (2.0 + r(7))[:, None], 2.2)
    pig = hue3(r(5) + .08 * (i - .5))
    pale = (s.ci.mean(1) > .45).float()
    col = lerp(col, pig, (torch.maximum(pale * .8, (r(6) > .5).float()))[:, None])
    m = m * (.45 + .55 * a)
    s.mix(col, m)
    return m


def smears(s, r, k, a):
    ang = (r(0) - .5) * 3.14 + .25 * s.ls(s.W)[0] * (k == 3).float()
    ln = 3 + 9 * r(1)
    size = s.W * (.025 + .05 * r(2))
    F1, e, dx, dy, i1, i2 = s.cl(size, ang, ln, .03, r(3))
    w = .1 + .16 * r(4)
    tail = (dx * .95 + .1).clamp(0, 1)
    wid = torch.where(k == 1, w * (1 - (dx.abs() * 2.2) ** 2).clamp(min=0), w * (1 - tail * 1.9).clamp(min=0) * sstep(-.09, -.05, dx))
    wid = torch.where(k == 2, 1.7 * wid, wid)
    soft = s.foot / size + .03 + .12 * (k == 2).float()
    m = sstep(soft, -soft, dy.abs() - wid) * sstep(.0, .05, wid) * (i2 < .1 + .55 * r(5)).float()
    m = m * s.fx.clamp(min=.0).where(s.slc > .5, torch.ones_like(m)) * region(s, r(6), (r(7) * 5).floor())
    m = m * (.35 + .65 * a) * (1 - .5 * tail * (k != 1).float()) * (.8 + .2 * s.fb.clamp(-1, 1))
    col = lerp(deep(s.ci, 1.6, 2.2), hue3(r(5) + .05 * i1), (torch.maximum((r(6) > .5).float(), (s.ci.mean(1) > .45).float()))[:, None])
    s.mix(col, m)
    return m


def white_specks(s, r, k, a):
    reg = region(s, r(0), (r(0) * 9).floor() % 5)
    size = s.W * (.03 + .08 * r(1))
    rr = s.W * (.0035 + .009 * r(2) ** 2)
    m, x, y, i = spray(s, size, rr, .12 + .7 * r(3), r(4), None, 1.0, .1)
    th = i * 20
    X, Y = torch.cos(th) * x + torch.sin(th) * y, torch.cos(th) * y - torch.sin(th) * x
    q = (X / 2.1) ** 2 + (Y / .7) ** 2
    inr = spray(s, size, rr * 2.4, .12 + .7 * r(3), r(4))[0]
    th2 = (X * .42) ** 2 + (Y * 1.4) ** 2
    aa = s.foot / rr
    rice = inr * sstep(1 + aa, 1 - aa, q)
    crumb, cx, cy, _ = spray(s, size * 1.4, rr * 2.2, .1 + .4 * r(3), r(5) + 2, None, 1.0, .38)
    m = torch.where(k == 1, rice, torch.where(k == 2, crumb, torch.where(k == 3, torch.maximum(m, crumb), m))) * reg
    m = torch.where(k == 3, torch.maximum(m, spray(s, size * .4, rr * .6, .3 + .3 * r(6), r(5))[0] * reg), m)
    m = m * (.5 + .5 * a)
    s.mix(.86, m * .95)
    s.hgt = s.hgt + m * rr * (.6 * r(7) - .1)
    s.rough = lerp(s.rough, .7 + 0 * m, m)
    return m


def translucent_veins(s, r, k, a):
    f = s.W * (.1 + .22 * r(0))
    st = torch.where(k == 3, 2.4, 1.0)
    b = noise3(s.q[0] / f, s.q[1] / f / st, s.q[2] / f)
    c = noise3(s.q[0] / f / 2.1 + .5 * b[0], s.q[1] / f / 2.1 / st + .5 * b[1], s.q[2] / f / 2.1 + 7)
    w = .05 + .13 * r(1)
    g = (s.foot / f) * 1.2
    ln = lambda v, ww: sstep(ww + g, ww * .25, (v + .25 * b[3] * .3).abs())
    m = ln(c[0], w * (1 + .5 * c[3]).clamp(.3, 2))
    m = torch.maximum(m, ln(c[1] + .2 * b[2], w * .8) * (k != 0).float())
    e = s.cl(f * 1.5, None, 1.0, .35, r(2))
    m = torch.where(k == 2, sstep(w * .9 + g, w * .2, e[1] * (1 + .4 * b[0])), m)
    m = torch.where(k == 4, sstep(.2, .9, c[0] + .4 * b[1]), m)
    m = m * sstep(-1.2 + 1.2 * r(3), .2, c[2] + .6)
    m = m * region(s, r(4), torch.where(r(5) < .7, 0.0, (r(6) * 5).floor()))
    t = m * (.25 + .75 * a) * (.55 + .45 * r(7))
    col = (s.alb ** 1.35) * (.62 + .14 * r(6))[:, None]
    dark = (s.alb.mean(1, keepdim=True) < .12).float()
    s.mix(lerp(col, s.alb * 1.5 + .03, dark), t)
    s.rough = s.rough - .22 * t
    s.hgt = s.hgt - .0025 * s.W * m * r(5)
    return m * (.4 + .6 * a)


def crackle_network(s, r, k, a):
    size = s.W * (.035 + .08 * r(0))
    sx = torch.where(k == 3, 2.0, 1.0)
    e = s.cl(size, r(1) * 6, sx, .1 + .25 * r(2), r(3))[1]
    w = .03 + .05 * r(4)
    g = s.foot / size
    m = sstep(w + g, w * .3, e) * (w / g * 2).clamp(max=1)
    e2 = s.cl(size * .38, r(1) * 5, 1.0, .25, r(3) + 2)[1]
    n = s.ls(s.W * .3)
    m = torch.maximum(m, .6 * sstep(2.2 * w + g * 2, w * .3, e2) * (k == 2).float() * sstep(0, 1, n[0]))
    pale = s.ci.mean(1)
    mx = pale.amax((1, 2), keepdim=True)
    reg = torch.where(r(5) < .5, (pale > mx * .6).float(), torch.ones_like(pale)) * torch.where(r(6) < .5, sstep(-.8, .3, n[1]), torch.ones_like(pale))
    m = m * reg
    t = m * (.3 + .7 * a)
    light = (k == 1).float() * (r(7) < .7).float()
    s.mix(lerp((s.alb ** 1.3) * .6, s.alb * .4 + .55, light[:, None]), t * .85)
    s.hgt = s.hgt - t * size * .05 * (r(7) - .3)
    s.rough = s.rough - .1 * t
    return m * (.45 + .55 * a)


def powdery_film(s, r, k, a):
    n = s.ls(s.W * (.12 + .35 * r(0)))
    top = sstep(.2, .7, s.up)
    edge = sstep(.075 + .1 * r(1), .01, s.rim / s.W + .02 * n[3])
    wh = torch.where(k == 1, edge, torch.where(k == 2, torch.maximum(top, edge), torch.where(k == 4, torch.ones_like(top), top)))
    wh = torch.where(s.slc > .5, torch.maximum(wh, edge * .8 * sstep(0, .25, s.l[2] / s.W)), wh)
    cov = sstep(.7 - 2.2 * r(2) - r(3), 1.3 - 2.2 * r(2) + 1.2 * r(3), n[0] + .5 * n[3] + .25 * s.fb)
    str_ = sstep(-.4, 1.2, noise3(s.q[0] / s.W * 1.5, s.q[1] / s.W * 14, s.q[2] / s.W * 2)[0] + .6 * n[0])
    cov = torch.where(k == 3, str_, cov)
    fine = s.ls(s.W * .012)
    cr = s.cl(s.W * .02, None, 1.0, .3, r(4))[1]
    gr = (.72 + .3 * fine[3] * (.3 + r(5)) + .25 * (k == 2).float() * (cr * 4 - .8)).clamp(.1, 1.15)
    m = (wh * cov).clamp(0, 1)
    t = (m * gr * (.22 + .75 * a)).clamp(0, .97)
    s.mix(torch.stack([.80 + 0 * t, .79 + .0 * t, .76 + .05 * r(6) + 0 * t], 1), t)
    s.rough = lerp(s.rough, .9 + 0 * t, t)
    s.hgt = s.hgt + t * s.W * .0035 * (.5 + .5 * fine[0] * .4)
    s.spark = s.spark * (1 - t)
    return m * sstep(0, .5, gr) * (.4 + .6 * a)


def dark_centre_ring(s, r, k, a):
    cy, cz = (r(0) - .5) * .22 * s.W, (r(1) - .5) * .22 * s.W
    n = s.ls(s.W * .35)
    ky, kz = s.h[1] * (.5 + .36 * r(2)), s.h[2] * (.5 + .36 * r(3))
    e = torch.where(k == 1, 4.5, 2.2)
    A = (((s.l[1] - cy) / ky).abs() + 1e-4) ** e + (((s.l[2] - cz) / kz).abs() + 1e-4) ** e
    rad = A ** (1 / e) * (1 + (.03 + .07 * r(4)) * n[0])
    sf = .04 + .2 * r(5)
    m = sstep(1 + sf, 1 - sf, rad)
    m = torch.where(k == 3, m * sstep(.15, .8, rad), m)
    m = m * s.fx
    rim = torch.exp(-((rad - 1.0) / (.04 + .04 * r(6))) ** 2) * (k == 2).float() * s.fx
    t = m * (.25 + .75 * a)
    s.mix((s.alb ** (1.25 + .3 * r(7))[:, None]) * (.6 + .14 * r(6))[:, None], t)
    s.mix((s.alb ** 1.4) * .45, rim * .6 * a)
    s.rough = s.rough - .12 * t
    s.tran = s.tran + .15 * t
    return torch.maximum(m, rim) * (.5 + .5 * a)


def orange_spots(s, r, k, a):
    big = (k == 1).float()
    size = s.W * (.06 + .14 * r(0) + .2 * big)
    rr = s.W * (.006 + .016 * r(1) + .05 * big * (.4 + r(2)))
    reg = region(s, r(3), torch.where(k == 2, 4.0, torch.where(k == 3, 2.0, 0.0)))
    jag = .1 + .2 * r(4)
    F1, e, dx, dy, i1, i2 = s.cl(size, None, 1.0, .06, r(5))
    nn = s.ls(rr.clamp(min=.004) * 1.3)
    on = (i2 < .12 + .5 * r(6)).float() * reg
    q = F1 * size / (rr * (.5 + i1)) * (1 + jag * nn[0] * .8)
    g = s.foot / rr
    core = sstep(1.15 + g, .55, q)
    halo = torch.exp(-(q / 2.2) ** 2) * sstep(.55, .3, F1)
    col = torch.stack([.50 - .22 * r(7) + 0 * q, .19 - .10 * r(7) + .03 * nn[1] * .5, .025 + 0 * q], 1)
    h = halo * on * (.25 + .45 * (k >= 2).float()) * a
    s.mix((s.alb * torch.stack([.92 + 0 * r(0), .68 + 0 * r(0), .34 + 0 * r(0)], 1)), h)
    t = core * on * (.45 + .55 * a)
    s.mix(col, t)
    s.rough = s.rough - .2 * (h + t).clamp(max=1)
    return torch.maximum(t, h * .9).clamp(0, 1)
