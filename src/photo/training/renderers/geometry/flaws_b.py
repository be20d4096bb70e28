"""The sixteen flaws, second part. Each takes a context s, random numbers r(j) in 0..1, look number k and
strength a, changes albedo, relief and gloss of s and returns its mask [m,H,W] in 0..1."""
import torch
from .bank import noise3, cells, sstep, fr, lerp
from .soap import spray
from .flaws_a import region


def pinholes(s, r, k, a):
    reg = region(s, r(0), torch.where(k == 2, 2.0, torch.where(k == 4, 4.0, torch.where(r(7) < .3, 3.0, 0.0))))
    big = (k == 1).float()
    size = s.W * (.03 + .06 * r(1) + .08 * big)
    rr = s.W * (.003 + .006 * r(2) + .012 * big * (.5 + r(3)))
    m, x, y, i = spray(s, size, rr, .15 + .7 * r(4), r(5), r(6) * 6, torch.where(k == 3, 1.8, 1.0), .05)
    m2, x2, y2, _ = spray(s, size * .5, rr * .55, .15 + .4 * r(4), r(5) + 5)
    use2 = (m2 > m).float() * (r(3) > .4).float()
    m, x, y = lerp(m, m2, use2) * reg, lerp(x, x2, use2), lerp(y, y2, use2)
    d2 = (x * x + y * y).clamp(max=1.5)
    s.hgt = s.hgt - m * rr * (1.0 + 1.2 * a) * (1 - d2 * .75).clamp(min=0)
    s.mix((s.alb ** 1.15) * (.5 - .32 * a)[:, None], m * sstep(1.1, .3, d2) * .9)
    return m


def crack(s, r, k, a):
    n = s.ls(s.W * (.55 + .5 * r(0)))
    f = s.ls(s.W * .09)
    wob = (.02 + .05 * r(1)) * n[0] + .003 * f[3] + (.003 + .006 * r(0)) * f[0]
    along = torch.where(k == 1, s.l[1], s.l[0]) / s.W
    across = torch.where(k == 1, s.l[0] + .5 * (r(2) - .5) * s.l[1], s.l[1]) / s.W
    th = r(2) * 3.14                                        # through a face at any angle
    uu, vv = torch.where(s.fx > .5, s.l[1], s.l[0]), torch.where(s.fz > .5, s.l[1], s.l[2])
    diag = (torch.cos(th) * uu + torch.sin(th) * vv) / s.W
    dal = (torch.cos(th) * vv - torch.sin(th) * uu) / s.W
    free = ((k == 2) | (k == 3)).float() * (1 - s.loaf)
    x = torch.where(free > .5, diag, across) + (r(3) - .5) * .3 + wob
    al = torch.where(free > .5, dal, along)
    x2 = x + (al + .3 * (r(4) - .5)) * (.35 + .5 * r(5))     # fork
    w = (.005 + .034 * r(6) * a) * (.5 + .7 * sstep(-1, 1.2, n[1]) + .25 * f[1].clamp(-1, 1) + .08 * f[3].clamp(-1.5, 1.5))
    w = w * torch.where(k == 3, .35, 1.0)
    ext = .25 + .9 * r(7)
    w = w * sstep(ext + .25, ext * .3, (al - .4 * (r(4) - .5)).abs())
    depth = (s.h[2] - s.l[2]) / s.W                          # a top crack goes down some way
    topd = .1 + .4 * a * r(5)
    w = torch.where(free > .5, w, w * sstep(topd + .08, 0 * topd, depth) * (1 - .0 * w))
    g = s.foot / s.W
    m = sstep(w + g * .7, w - g * .7, x.abs()) * sstep(.0, .0015, w) * (w * 2 / g).clamp(max=1)
    w2 = w * .6 * ((al + .3 * (r(4) - .5)) > 0).float()
    m2 = sstep(w2 + g * .7, w2 - g * .7, x2.abs()) * sstep(.0, .0015, w2) * (w2 * 2 / g).clamp(max=1)
    m = torch.maximum(m, m2 * ((k == 4) | (k == 3)).float())
    fl = sstep(4 * w + .02, w, x.abs()) * sstep(0, .003, w)
    s.hgt = s.hgt + .010 * s.W * fl * r(0) - m * s.W * (.02 + .03 * a)
    s.mix((s.alb ** 1.1) * (.3 - .22 * a)[:, None], m * .95)
    return m


def brown_outside_in(s, r, k, a):
    n = s.ls(s.W * (.3 + .3 * r(0)))
    dpt = s.W * (.05 + .3 * r(1) * (.4 + .6 * a))
    one = torch.where(k == 3, .5 + .5 * torch.sin(6.28 * r(2) + 2.5 * (s.l[1] + s.l[2]) / s.W), torch.ones_like(s.u))
    d = s.rim / (dpt * (1 + .22 * n[0] + .1 * n[3]) * (.25 + .75 * one)).clamp(min=1e-3)
    out = torch.where((s.slc > .5) | (s.loaf > .5), 1 - s.fx, torch.zeros_like(d))
    d = d * (1 - out)
    m = torch.where(k == 1, sstep(1.05, .85, d), torch.where(k == 2, (1 - sstep(0, 1, d)) * .5 + .5 * sstep(.5, .35, d), sstep(1, .0, d)))
    t = m * (.3 + .68 * a)
    br = torch.stack([.34 - .2 * r(3) + 0 * d, .19 - .125 * r(3) + .01 * n[1], .08 - .05 * r(3) + 0 * d], 1)
    br = torch.where(r(4)[:, None] < .5, br, torch.minimum(br * 1.3, s.alb * 1.6))
    s.mix(torch.minimum(br, s.alb * 1.15 + .02), t * (.9 + .1 * n[3].clamp(-1, 1)))
    return m * (.45 + .55 * a)


def colour_bled(s, r, k, a):
    sd = torch.where(r(0) < .5, 1.0, -1.0)
    on = torch.where(r(1) < .6, torch.ones_like(s.u), (s.bid == 1).float())
    w = s.W * (.02 + .10 * r(2) * (.35 + .65 * a))
    n = s.ls(s.W * .12)
    wn = w * torch.where(k == 1, (1 + .9 * n[0]).clamp(.05, 3), (1 + .25 * n[0]).clamp(.3, 2))
    fing = s.ls(s.W * .035)
    wn = torch.where(k == 2, wn * (1 + .8 * fing[0]).clamp(.1, 3), wn)
    side = torch.where(k == 3, torch.ones_like(s.u), (s.side == sd).float())
    part = torch.where(r(3) < .4, sstep(-.4, .5, n[1] * .5 + s.ls(s.W * .5)[2]), torch.ones_like(s.u))
    x = s.db / wn
    m = (torch.exp(-x * 1.6) * 1.0 * sstep(2.2, 1.2, x)) * on * side * part * (s.db < 5).float()
    dif = (s.cn - s.alb).abs().amax(1)
    t = (m * (.4 + .5 * a)).clamp(0, .9)
    s.mix(lerp(s.cn, s.cn * s.alb ** .5, .35), t)
    return sstep(.05, .4, m) * sstep(.02, .08, dif) * (.5 + .5 * a)


def drag_lines(s, r, k, a):
    th = torch.where(r(0) < .6, 1.57 * (r(0) * 3.33 // 1), r(0) * 6.28) + .15 * (r(1) - .5)
    u = (torch.cos(th) * s.l[1] + torch.sin(th) * s.l[2]) / s.W
    v = (torch.cos(th) * s.l[2] - torch.sin(th) * s.l[1]) / s.W + .012 * s.fm * (k == 3).float()
    v = v + (k == 3).float() * u * u * (r(2) - .5) * .8
    m, gr = torch.zeros_like(u), torch.zeros_like(u)
    g = s.foot / s.W
    for j in range(7):
        q = fr(r(3) * 7.1 + j * .381 + .61 * fr(r(4) * 13 * (j + 1)))
        pos = torch.where(k == 1, (r(3) - .5) * .5 + (j - 3) * (.01 + .025 * r(5)) + .01 * (q - .5), q - .5)
        w = (.0015 + .006 * r(6) * fr(q * 7 + .3)) * (.6 + .4 * a)
        st = fr(q * 11.3) * .8 - .55
        ln = .15 + .8 * fr(q * 5.7 + r(7))
        on = (j < 1 + 6 * r(5)).float() if torch.is_tensor(r(5)) else 1
        on = torch.where((k == 1) | (k == 2), torch.ones_like(on), on)
        seg = sstep(0, .01, u - st) * sstep(.02, -.06, u - st - ln)
        x = (v - pos)
        mm = sstep(w + g * .7, w - g * .7, x.abs()) * (2.2 * w / g).clamp(max=1) * seg * on
        m = torch.maximum(m, mm)
        hd = sstep(w * 2.6 + g, w * 1.6, ((u - st) ** 2 + x * x).sqrt()) * on * (k == 0).float()
        gr = torch.maximum(gr, hd)
    fine = noise3(u * .8, v * 60 + 5 * r(4), 0 * u + r(3) * 30)
    m = torch.maximum(m, (k == 2).float() * sstep(.9, 1.6, fine[0] + .3 * fine[1]) * .8 * (.012 / g).clamp(max=1))
    m, gr = m * s.fx, gr * s.fx
    s.hgt = s.hgt - m * s.W * .008 * (.3 + a)
    lt = (r(6) > .6).float()
    s.mix(lerp(s.alb * .62, s.alb * .5 + .42, lt[:, None]), m * (.25 + .6 * a))
    s.mix(lerp(s.alb * .4, .8 + 0 * s.alb, lt[:, None]), gr * .8)
    return torch.maximum(m, gr) * (.5 + .5 * a)


def layer_gap(s, r, k, a):
    n = s.ls(s.W * .15)
    w = s.W * (.003 + .016 * r(0) * a) * (1 + .45 * n[0] + .2 * n[3]).clamp(.15, 2.2)
    lat = (s.l[1] / s.W) * torch.where(r(1) < .5, 1.0, -1.0)
    part = torch.where(k == 1, sstep(.15 - .3 * r(2), -.1 - .3 * r(2), lat), torch.where(k == 2, sstep(-.2, .35, n[2] + .3 * r(3)), torch.ones_like(w)))
    w = w * part
    on = torch.where(r(4) < .65, (s.bid == torch.where(r(5) < .5, 1.0, 2.0).minimum(s.bid.amax((1, 2), keepdim=True))).float(), torch.ones_like(w))
    on = on * (s.db < 5).float()
    g = s.foot
    m = sstep(w + g * .7, w - g * .7, s.db) * (2 * w / g).clamp(max=1) * on * sstep(0, .001, w)
    ledge = on * part * (k == 3).float() * sstep(.05 * s.W, 0, s.db * (s.side > 0).float() + 9 * (s.side < 0).float()) * (s.side > 0).float()
    s.hgt = s.hgt - m * s.W * (.015 + .03 * a) - ledge * s.W * .012 * (.4 + r(6))
    s.mix((s.alb ** 1.1) * (.3 - .2 * a)[:, None], m * .95)
    m = torch.maximum(m, on * part * (k == 3).float() * sstep(.012 * s.W + g, 0, s.db) * .9)
    return m * (.6 + .4 * a)


def wrinkled_top(s, r, k, a):
    top = sstep(.25, .7, s.up)
    f = s.W * (.03 + .06 * r(0))
    n = s.ls(f * 3.5)
    e = s.cl(f, r(1) * 6, torch.where(k == 1, 2.6, 1.3), .35, r(2))
    ali = sstep(0, .4, e[1]) ** .7
    ridg = 1 - noise3(s.q[0] / f + .6 * n[0], s.q[1] / f / torch.where(k == 2, 3.0, 1.0) + .6 * n[1], s.q[2] / f)[0].abs().clamp(max=1)
    th = r(3) * 3.14
    fold = .5 + .5 * torch.sin((torch.cos(th) * s.q[0] + torch.sin(th) * s.q[1]) / f * 3.5 + 1.5 * n[0] + .7 * n[3])
    h = torch.where(k <= 1, ali, torch.where(k == 2, ridg ** 2, torch.where(k == 3, fold, .5 * ali + .5 * ridg)))
    part = sstep(-.9 + 1.4 * r(4), .2 + 1.2 * r(4), s.ls(s.W * .4)[0] + .8)
    m = top * part
    s.hgt = s.hgt + m * h * f * (.06 + .26 * a) * (1 + .3 * n[3])
    s.mix(s.alb * .55, m * (1 - h) * .5 * a)
    s.mix(s.alb * .5 + .4, m * h * .18 * (r(5) > .6).float())
    s.rough = s.rough + .12 * m
    return m * (.5 + .5 * a)


def mould_dimples(s, r, k, a):
    face = torch.where(s.slc > .5, torch.maximum(s.fy, s.fz * (s.up < -.3).float()),
                       torch.where(s.loaf > .5, torch.maximum(s.fy, s.fz * (s.up < -.3).float()), (s.up < .5).float()))
    size = s.W * (.07 + .13 * r(0))
    th = r(1) * 1.5
    u, v = torch.cos(th) * s.u + torch.sin(th) * s.v, torch.cos(th) * s.v - torch.sin(th) * s.u
    row = (v / size).floor()
    gx, gy = fr(u / size + .5 * (row % 2) * (r(2) > .5).float()) - .5, fr(v / size) - .5
    dgrid = (gx * gx + gy * gy).sqrt()
    rg = .16 + .22 * r(3)
    grid = sstep(rg + .08, rg - .12, dgrid)
    F1, e, _, _, i1, i2 = s.cl(size * .9, None, 1.0, .1, r(4))
    rnd = sstep(.38, .1, F1 / (.5 + i1)) * (i2 < .3 + .5 * r(5)).float()
    n = s.ls(s.W * (.3 + .3 * r(6)))
    cr1 = (torch.cos(th) * s.u + torch.sin(th) * s.v) / s.W + .12 * n[0]
    cr2 = (torch.cos(th + 1.1) * s.u + torch.sin(th + 1.1) * s.v) / s.W * .7 + .16 * n[1]
    wl = .012 + .014 * r(7)
    cre = torch.maximum(sstep(wl * 1.8, 0, (fr(cr1 * 2.1 + r(4)) - .5).abs()), sstep(wl * 1.4, 0, (fr(cr2 * 1.6 + r(5)) - .5).abs())) * sstep(-.6, .3, n[2])
    bub = sstep(.1, 1.0, s.ls(size * .8)[0])
    h = torch.where(k == 0, grid, torch.where(k == 1, rnd, torch.where(k == 2, cre, torch.where(k == 3, bub, torch.maximum(rnd, cre)))))
    m = h * face
    s.hgt = s.hgt - m * size * (.05 + .2 * a) * torch.where(k == 2, .45 * torch.where(r(5) < .5, -1.0, 1.0), 1.0)
    s.mix(s.alb * .75, m * .25 * a)
    return m * (.55 + .45 * a)
