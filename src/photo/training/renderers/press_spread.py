"""Flaws of the whole bar: ash, gel ring, cracks, browning, bleeding, wire lines, gaps, overheated tops."""
import torch
from press_noise import sstep, mix, rot2
from press_spots import pick, region, paint


def ash(c, st):
    n = c.nz.flat(c.uv * .5 + 5, 4, 1, 1, 0, .6)
    fine = c.nz.flat(c.uv * 11, 2, 1, 6, 1, .6)
    cryst = (1 - c.nz.flat(rot2(c.uv, c.us(6) * 3) * torch.cat([c.us(3) * 3 + 5, c.us(3) * 0 + 14], 1), 2, 1, 3, 2).abs() * 2.2).clamp(0, 1)
    cov = torch.where(c.ext > .8, torch.ones_like(n), sstep(-.35, .3, n + (c.ext - .5) * 1.4))
    edge = torch.exp(-(c.rim2 / (.25 + .9 * c.sev)))
    m = torch.where(c.var == 1, (edge * 1.5 + .3 * n).clamp(0, 1), cov)
    m = torch.where(c.var == 2, cov * (.3 + .9 * cryst), m)
    face = torch.where(c.u[:, 0:1, None, None] < .4, torch.maximum(c.top, .35 * c.side), torch.ones_like(c.top))
    face = torch.maximum(face, c.onface * .9)
    m = (m * (.75 + .5 * fine)).clamp(0, 1) * face
    a = (.38 + .57 * c.sev) * m
    w = torch.cat([torch.full_like(m, .82), torch.full_like(m, .82), torch.full_like(m, .8)], 1)
    paint(st, a, w, .95, .006 * a * fine + .004 * a)
    soft = torch.where(c.var == 2, cov * face, m)
    return sstep(.12, .35, soft)


def gel_ring(c, st):
    x, y = c.pl[:, :1] / c.B[:, :1], c.pl[:, 1:2] / c.B[:, 1:2]
    x = x - .3 * (c.us(0) - .5)
    y = y - .4 * (c.us(1) - .5) + .1
    p = pick(c, 2., 2.6, 4.)
    d = ((x.abs() + 1e-3) ** p + (y.abs() + 1e-3) ** p) ** (1 / p) * (1 + .07 * c.nz.flat(c.uv * .6, 2))
    R = .38 + .4 * c.ext
    s = pick(c, .03, .1, .05)
    inn = sstep(R + s, R - s, d)
    ring = torch.exp(-((d - R) / pick(c, .03, .05, .035)) ** 2)
    a = st["alb"]
    k = .25 + .5 * c.sev
    paint(st, inn * c.cut * k, a ** 1.25 * .68 + .02 * torch.tensor([1, .7, .3], device=a.device).view(1, 3, 1, 1), .3, None, .85)
    paint(st, ring * c.cut * k * pick(c, .8, .15, .5), a * pick(c, .5, .6, 1.3))
    return torch.maximum(inn, sstep(.3, .6, ring)) * c.cut


def crack(c, st):
    # on the top it runs along the loaf; on a cut face it goes down from the top
    u, v = c.pl[:, :1], torch.where(c.ontop > .5, c.pl[:, 2:3] + 3, c.tops)
    path = (c.us(0) - .5) * c.B[:, :1] * .9 + .35 * c.nz.flat(torch.cat([v * .5, v * 0], 1), 1, 1, 1) \
        + .13 * c.nz.flat(torch.cat([v * 2.5, v * 0 + 3], 1), 3, 1, 2, 1)
    d = (u - path).abs()
    br = (u - path - .55 * (v - 1.5 * c.us(1)) - .15 * c.nz.flat(torch.cat([v * 2.5, v * 0 + 8], 1), 2, 1, 3)).abs()
    w = (.02 + .13 * c.sev * c.us(2)) * (.7 + .6 * c.nz.flat(torch.cat([v * 1.3, v * 0], 1), 2, 1, 6)).clamp_min(.25)
    depth = .6 + c.B[:, 1:2] * 1.6 * c.ext
    fade = torch.where(c.ontop > .5, sstep(-.25, .0, c.ext - .35 + .5 * c.nz.flat(torch.cat([v * .25, v * 0], 1), 1, 1, 7)),
                       (1 - v / depth).clamp(0, 1) ** .5)
    w = w * fade
    on = sstep(.05, .25, fade)
    w = torch.maximum(w, .6 * c.px)
    aa = torch.maximum(.5 * c.px, .15 * w)
    f = torch.maximum(c.top, c.cut)
    m = sstep(w + aa, w - aa, d) * on * f
    m2 = sstep(w * .6 + aa, w * .6 - aa, br) * on * f * sstep(0, .3, v - 1.5 * c.us(1)) * pick(c, 0, 1, .6)
    m = torch.maximum(m, m2)
    lift = torch.exp(-(d / (.3 + 3 * w)) ** 2) * on * c.top * pick(c, .1, .05, .04)
    a = st["alb"]
    paint(st, m * .93, a * a * .25, .9, lift - .12 * m)
    return m


def browning(c, st):
    lam = (.12 + .9 * c.sev * pick(c, 1, .8, 1.2)) * (.4 + .8 * c.ext)
    d = c.rim + .12 * c.nz.flat(c.uv * .8, 2) * pick(c, .6, 1.4, .6)
    d = torch.where(c.var == 2, d * (.6 + 1.1 * sstep(0, 1, .5 - .5 * c.pl[:, 1:2] / c.B[:, 1:2] + .3 * (c.us(0) - .5))), d)
    m = torch.where(c.var == 1, sstep(lam * 1.15 + .02, lam * .85 - .02, d), torch.exp(-(d.clamp_min(0) / lam) ** 1.5))
    m = torch.where(c.cut > .5, m, torch.ones_like(m))
    br = torch.cat([.2 + .2 * c.us(1), .09 + .1 * c.us(1), .03 + .05 * c.us(2)], 1)
    a = st["alb"]
    paint(st, m * (.3 + .6 * c.sev), mix(a * br * 2.2, br, .55))
    return m * 1.25


def bled(c, st):
    side = torch.where(c.u[:, 0:1, None, None] < .5, torch.ones_like(c.sev), -torch.ones_like(c.sev))
    lam = (.12 + .6 * c.sev) * (1 + .8 * pick(c, .1, 1, .4) * c.nz.flat(c.uv * .7, 2, 1, 2)).clamp_min(.05)
    d = c.phi * side
    lobes = pick(c, 0, 0, .35) * c.nz.flat(c.uv * torch.cat([c.us(1) * 0 + 1.6, c.us(1) * 0 + .5], 1), 2, 1, 5).abs()
    m = torch.exp(-((d - lobes).clamp_min(0) / lam) ** 1.3) * (d > -.02).float() * (c.phi.abs() < 5).float()
    m = m * region(c, .3, .45)
    # dye of the other side, bright hued
    j = torch.round(torch.where(side > 0, c.k - 1, c.k)).long().clamp(0, 4)
    dye = c.pal.gather(1, j.flatten(1)[:, :, None].expand(-1, -1, 3)).transpose(1, 2).reshape(-1, 3, *j.shape[2:])
    sat = (dye / dye.max(1, keepdim=True)[0]) ** 1.3
    paint(st, m * (.35 + .55 * c.sev), mix(dye, st["alb"] * sat, .35))
    return sstep(.12, .4, m)


def drag(c, st):
    a = (c.us(0) - .5) * .5 + (c.us(1) < .3).float() * 1.57
    uv = rot2(c.uv, a)
    x, y = uv[:, :1], uv[:, 1:] + pick(c, 0, 0, .05) * uv[:, :1] ** 2 + .03 * c.nz.flat(c.uv * .6, 1)
    f = pick(c, 5., 1.6, 3.) * (.7 + .6 * c.us(2))
    ln = c.nz.flat(torch.cat([x * .06, y * f], 1), 3, 1, 2.5, 0, .75)
    th = .75 - .6 * c.sev
    p = sstep(th, th + .2, ln) - .6 * sstep(th, th + .25, -ln)
    ln_on = sstep(-.4, 0., c.nz.flat(torch.cat([x * .4, y * f * .7], 1) + 9, 1, 1, 4) + c.ext)
    m = p.abs() * ln_on * c.cut * region(c, .25, .5)
    s = p * ln_on * c.cut * region(c, .25, .5)
    al = st["alb"]
    paint(st, m * (.12 + .35 * c.sev), torch.where(s > 0, al * .62, (al * 1.3 + .05).clamp(0, .95)), None, -.02 * s * (.4 + c.sev))
    return sstep(.2, .6, m)


def gap(c, st):
    one = (torch.remainder(c.k, 2) == (c.u[:, 2:3, None, None] < .5).float()).float()
    one = torch.where(c.var == 1, torch.ones_like(one), one)
    v = c.nz.flat(torch.cat([c.uv[:, :1] * .5, c.uv[:, 1:] * .1], 1), 2, 1, 3)
    w = (.02 + .12 * c.sev) * (.7 + .8 * v).clamp_min(.2)
    e = sstep(-.1, .1, v + (c.ext - .4) * 1.2)
    e = torch.where(c.var == 2, sstep(.25 + 1.4 * c.ext, .1 + 1.2 * c.ext, c.rim), e)
    w = torch.maximum(w * e, .6 * c.px)
    d = (c.phi + .02 * c.nz.flat(c.uv * 6, 2)).abs()
    aa = torch.maximum(.5 * c.px, .15 * w)
    m = sstep(w + aa, w - aa, d) * sstep(.1, .4, e) * one * (1 - c.top)
    lip = torch.exp(-(d / (2.5 * w)) ** 2) * e * one * (1 - c.top)
    al = st["alb"]
    paint(st, m * .95, al * al * .2, .9, -.05 * m + .015 * lip)
    return m


def wrinkled(c, st):
    f = pick(c, 1.3, .9, 1.9) * (.75 + .5 * c.us(0))
    q = rot2(c.uv, c.us(1) * 3.14) * f
    q = q + pick(c, 1.1, .7, .9) * c.nz.flat(q * .6 + 8, 2, 2, 2)
    s = torch.where(c.var == 2, torch.ones_like(c.sev) * .45, torch.ones_like(c.sev))
    v = c.nz.flat(torch.cat([q[:, :1] * s, q[:, 1:]], 1) * 1.1, 1, 1, 4, 1).abs() * 2.2
    v = torch.minimum(v, c.nz.flat(q * .9 + 19, 1, 1, 2, 2).abs() * 2.2)
    fold = sstep(0, .7, v) ** .6
    reg = c.top * region(c, .25, .5)
    amp = (.12 + .4 * c.sev) / f
    crease = sstep(.3, .0, v)
    al = st["alb"]
    paint(st, reg * crease * (.25 + .45 * c.sev), al * .45)
    paint(st, reg * .4, st["alb"] * .95, .28, amp * fold * reg, .6)
    return reg
