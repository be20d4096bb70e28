"""Findings, part two: crack, browning, bleeding, drag lines, layer gap, wrinkles, mould dimples."""
import torch
from relief_fields import fbm, noise, dots, voronoi, smooth, lerp, wide_blur
from relief_design import to_r, pattern, mix
from relief_flaws_a import line, patches, wobble, disc


def crack(s, d):
    top_run = s.need_top
    th = d.u(-1.57, 1.57)
    th = lerp(th, d.u(-.12, .12) + 1.5708, top_run)
    c, n = torch.cos(th), torch.sin(th)
    uu, vv = s.u, lerp(s.v, s.v_top, top_run)
    p, t = uu * c + vv * n, vv * c - uu * n
    p = p + d.u(0, 3) * 0
    f = d.log(1.2, 4)
    wn = fbm(s.vol, p * f + d.u(0, 9), p * 0 + 3.1, t * .6 + s.z * 0 + d.u(0, 9), 4, .55)
    amp = d.log(.02, .18)
    axis = amp * wn[:, 0:1] + d.u(-.25, .25) * lerp(torch.ones_like(top_run), top_run * 0 + .4, top_run)
    w = torch.maximum(d.log(.008, .075), s.px0 * .8)
    half = lerp(d.u(.35, 1.5), s.c * d.u(.4, 1.1), top_run)
    start = d.u(-.7, .7) * (1 - top_run * .7)
    ext = 1 - smooth(.55, 1.0, (p - start).abs() / half)
    wid = w * (.25 + ext) * (.55 + .9 * (wn[:, 1:2] + .4).clamp(0, 1.3)) * smooth(.02, .25, ext)
    dist = (t - axis).abs()
    jag = noise(s.vol, s.u * 25, s.v * 25, s.z * 0 + 1)[:, 0:1]
    g = line(dist + jag * .25 * wid, wid + 1e-5, s.px)
    fork = d.coin(.45)
    k = d.u(.25, .8) * d.of([-1., 1.])
    p0 = start + half * d.u(-.3, .4)
    d2 = (t - axis - k * (p - p0).clamp(min=0) - .5 * amp * wn[:, 2:3] * (p > p0)).abs()
    g2 = line(d2, wid * .6 + 1e-5, s.px) * smooth(0, .05, p - p0) * fork
    few = line((t - axis * .4 - d.u(-.5, .5) - .2 * wn[:, 3:4]).abs(), wid * .5 + 1e-5, s.px) * d.coin(.2) * patches(s, d, 1, 2, (0, .5))
    g = torch.maximum(g, torch.maximum(g2, few)) * (wid > 1e-3).float()
    lip = torch.exp(-((dist / (w * 2.2)) ** 2)) * ext * (1 - g)
    face = lerp(torch.ones_like(g), torch.maximum(smooth(.4, .7, s.top), .6 * s.cut * smooth(.5, .9, s.y / s.b)), top_run)
    a = g * face * d.u(.7, 1)
    rgb = s.alb * lerp(d.u(.06, .4), torch.ones_like(g) * .8, smooth(.4, 1, dist / (wid + 1e-4)) * .4)
    return a, rgb, (-1.0 * g * w + .25 * lip * w) * face, .1 * a, smooth(.15, .4, g * face)


def brown_outside_in(s, d):
    n = fbm(s.vol, s.x * 1.6 + d.u(0, 9), s.y * 1.6, s.z, 4)
    lam = d.log(.08, .34)
    pw = d.of([1., 1.5, 3., 8.])
    side = d.coin(.3)
    dirx, diry = d.u(-1, 1), d.u(-1, 1)
    depth = s.rim * (1 + d.u(.1, .6) * n[:, 0:1]) + side * .5 * smooth(-.3, 1., s.x * dirx + s.y * diry) * .6
    depth = depth + .04 * n[:, 1:2] * d.u(0, 1)
    a = torch.exp(-(depth.clamp(min=0) / lam) ** pw)
    a = lerp(a, a * 0 + 1, smooth(.5, .85, 1 - s.cut) * (1 - side * .5))
    only = d.coin(.3) * (s.k > 1.5).float()
    inpart = 1 - only * (s.portion != torch.remainder(s.portion_here, s.k)).float()
    a = a * inpart * d.u(.75, 1) * (.9 + .1 * n[:, 2:3].clamp(-1, 1))
    tab = torch.tensor([[.46, .27, .11], [.36, .19, .08], [.22, .10, .045], [.45, .24, .08], [.12, .055, .03]], device=s.x.device)
    br = tab[d.pick(5).long().reshape(-1)][:, :, None, None]
    rgb = to_r(s.ks * .8 + (1 - br) ** 2 / (2 * br) * (.7 + 1.1 * a))
    a = a * smooth(.12, .3, s.cut_share)
    band = smooth(.3, .55, a)
    return a, rgb, 0 * a, 0 * a, band


def colour_bled(s, d):
    mode = d.pick(5)
    is_ = lambda k: (mode == k).float()
    f = d.log(1.5, 7)
    n = fbm(s.vol, s.x * f + d.u(0, 9), s.y * f, s.z * f, 4, .6)
    sig = (d.log(.03, .16) / s.px0).clamp(2.5, 34)
    b = wide_blur(torch.cat([s.ks * s.soap, s.soap], 1), sig)
    kb = b[:, :3] / b[:, 3:4].clamp(min=.03)
    creep = torch.maximum(s.ks, kb * d.u(.8, 1.5))
    blotchy = torch.maximum(s.ks, kb * 1.4 * smooth(-.1, .5, n[:, 0:1]) + s.ks * .5)
    moved = lerp(s.phi, s.phi + d.u(.15, .4) * n[:, 0:1] + .2 * n[:, 1:2], is_(3))
    shifted, _ = mix(s, moved, (s.soft + d.u(.3, .7)).clamp(max=.95))
    ks = is_(0) * kb + is_(1) * creep + is_(2) * blotchy + is_(3) * shifted + is_(4) * torch.maximum(s.ks, lerp(creep, kb, .5))
    rgb = to_r(ks)
    area = lerp(torch.ones_like(s.phi), patches(s, d, .8, 2, (-.6, .1)), d.coin(.5))
    a = area * d.u(.75, 1)
    diff = (rgb - s.alb).abs().max(1, keepdim=True)[0]
    return a, rgb, 0 * a, 0 * a, smooth(.02, .08, diff * a)


def drag_lines(s, d):
    th = d.of([0., 1.5708]) + d.u(-.25, .25)
    c, n = torch.cos(th), torch.sin(th)
    t, p = s.v * c - s.u * n, s.u * c + s.v * n
    t = t + d.u(-.1, .1) * p * p * d.coin(.4)
    many = d.coin(.45)
    g, rel, tone = torch.zeros_like(t), torch.zeros_like(t), torch.zeros_like(t)
    for k in range(7):
        on = 1.0 if k == 0 else d.coin(.45) * (1 - many * .3)
        off = d.u(-.75, .75)
        w = torch.maximum(d.log(.004, .018), s.px0 * .7)
        a0, a1 = d.u(-1.4, .2), d.u(.1, 1.5)
        span = smooth(-.05, .03, p - a0) * smooth(-.25, .05, a1 - p)
        gg = line((t - off).abs(), w, s.px) * span * on * d.u(.4, 1)
        grain = (((t - off) ** 2 + (p - a0) ** 2) < (1.6 * w) ** 2).float() * d.coin(.4) * on
        g = torch.maximum(g, torch.maximum(gg, grain))
        rel = rel - gg * w * d.of([1., 1., -.7]) + .5 * w * torch.exp(-(((t - off).abs() - 1.8 * w) / w) ** 2) * span * on * .5
    ff = torch.minimum(d.log(18, 60), .3 / s.px0)
    comb1 = noise(s.vol, t * ff + d.u(0, 9), p * .25, t * 0 + 5.5)[:, 0:1]
    area = patches(s, d, .7, 1.6, (-.5, .1))
    cm = smooth(.35, .75, comb1) * many * area
    g = torch.maximum(g, cm * d.u(.4, 1))
    rel = rel - cm * .007
    sp = d.u(.2, .5)
    ca, sa = c * 1.0, n * 1.0
    x2 = t * -n + p * c * sp + .15 * comb1
    y2 = t * c + p * n * sp
    phi, _, _ = pattern(s, x2, y2, s.zs)
    ks, _ = mix(s, phi, s.soft)
    dragged = lerp(s.alb * d.of([.4, .55, .7, 1.3]), to_r(ks), d.coin(.4))
    a = g * d.u(.4, .95) * s.cut.round()
    return a, dragged.clamp(.004, .95), rel * s.cut.round() * d.u(.6, 1.6), .1 * a, smooth(.15, .4, g) * s.cut.round()


def layer_gap(s, d):
    n = fbm(s.vol, s.x * 2 + d.u(0, 9), s.z * 2, s.y * .4, 3)
    j = torch.floor(1 + d.raw(d.n, 1, 1, 1) * (s.k - 1).clamp(min=1) * .999)
    every = d.coin(.2)
    near = torch.where(every > .5, torch.round(s.phi).clamp(min=1).minimum(s.k - 1), j.expand_as(s.phi))
    dist = (s.phi - near) / s.k * 2 * s.b
    w = torch.maximum(d.log(.004, .035), s.px0 * .6)
    part = d.coin(.6)
    sgn = d.of([-1., 1.])
    ext = lerp(torch.ones_like(dist), smooth(-.15, .25, s.x * sgn + d.u(-.5, .6) + .3 * n[:, 0:1]), part)
    broken = lerp(torch.ones_like(dist), smooth(-.3, .1, n[:, 1:2] + .15), d.coin(.4))
    wid = w * ext * broken * (.6 + .8 * (n[:, 2:3] + .4).clamp(0, 1.2))
    jag = noise(s.vol, s.x * 22, s.z * 22, s.y * 5)[:, 0:1]
    g = line(dist.abs() + .35 * jag * wid, wid + 1e-5, s.px) * (wid > .0008).float()
    ledge = d.coin(.4) * d.of([-1., 1.]) * smooth(-.02, .02, dist) * (1 - smooth(.0, .25, dist.abs())) * ext
    lip = torch.exp(-(dist / (w * 2.5)) ** 2) * (1 - g) * d.coin(.4)
    a = g * d.u(.6, 1)
    rgb = s.alb * d.u(.06, .4)
    side = (1 - smooth(.5, .8, s.top))
    return a * side, rgb, (-w * g + .02 * ledge + .3 * w * lip) * side, 0 * a, smooth(.15, .4, g) * side


def wrinkled_top(s, d):
    mode = d.pick(4)
    is_ = lambda k: (mode == k).float()
    f = torch.minimum(d.log(2.5, 11), .12 / s.px0)
    th = d.u(-1.6, 1.6)
    uu, vv = s.u, s.v_top
    u, v = uu * torch.cos(th) + vv * torch.sin(th), vv * torch.cos(th) - uu * torch.sin(th)
    w = fbm(s.vol, u * f * .3 + d.u(0, 9), v * f * .3, u * 0 + 6, 3)
    u, v = u + .5 * w[:, 0:1] / f * 2, v + .5 * w[:, 1:2] / f * 2
    fo = fbm(s.vol, u * f * d.u(.15, .4), v * f, u * 0 + 2, 3, .55)
    folds = 1 - (fo[:, 0:1].abs() * 2.2).clamp(0, 1)
    _, e, r = voronoi(s.table, u * d.log(.5, 1), v, f, 5)
    gator = 1 - smooth(0, .45, e)
    fin = fbm(s.vol, u * f * 1.5, v * f * 1.5, u * 0 + 9, 3, .6)
    skin = 1 - (torch.minimum(fin[:, 0:1].abs(), fin[:, 1:2].abs()) * 3).clamp(0, 1)
    pud = .5 + .5 * torch.sin(v * f * 3.5 + 4 * w[:, 2:3] + 2 * fo[:, 1:2])
    g = is_(0) * gator + is_(1) * folds + is_(2) * skin + is_(3) * pud
    area = lerp(torch.ones_like(g), patches(s, d, .7, 1.6, (-.6, .0)), d.coin(.5)) * smooth(.5, .8, s.top)
    sgn = d.of([-1., -1., 1.])
    rel = sgn * (g ** d.u(1, 2)) * d.log(.02, .07) / f * 3 * area
    a = smooth(.55, 1, g) * area * d.u(.05, .45)
    return a, s.alb * d.u(.35, .75), rel, .05 * area, smooth(.3, .6, area)


def mould_dimples(s, d):
    mode = d.pick(5)
    is_ = lambda k: (mode == k).float()
    r = torch.maximum(d.log(.02, .075), s.px0 * 2.2)
    gap = d.u(1.1, 2.6)
    f = .42 / (r * gap)
    jit = lerp(d.u(.5, 1), d.u(0, .12), is_(0) + is_(1))
    u, v = wobble(s, d, .8, .02)
    u = u + is_(1) * .5 * torch.remainder(torch.floor(v * f), 2) / f
    sc, dx, dy, ra, _ = dots(s.table, u, v, f, 1 - (1 - is_(0) - is_(1)) * d.u(.1, .7), .42 / gap * d.u(.5, .95), .42 / gap, 83, jit, 1.)
    dim = (1 - sc.clamp(0, 1) ** 2) ** 1.5
    soft = d.u(.3, .9) * r * dim * d.of([-1., -1., -1., 1.])
    th = d.u(-1.5, 1.5)
    crease = torch.zeros_like(sc)
    for k in range(5):
        a = th + d.u(-.5, .5)
        t = s.v * torch.cos(a) - s.u * torch.sin(a) + d.u(-.7, .7)
        p = s.u * torch.cos(a) + s.v * torch.sin(a)
        t = t + .05 * noise(s.vol, p * 1.5 + 3 * k, p * 0, p * 0 + 1)[:, 0:1]
        ln = torch.exp(-(t / torch.maximum(d.log(.008, .03), s.px0)) ** 2) * smooth(-.1, .3, p - d.u(-1.3, .2)) * d.coin(.75 if k else 1.01)
        crease = torch.maximum(crease, ln)
    lined = is_(3)
    both = is_(4)
    face = lerp(smooth(.55, .85, s.side), torch.maximum(smooth(.55, .85, s.cut), smooth(.55, .85, s.side)), s.moulded)
    area = lerp(torch.ones_like(sc), patches(s, d, .7, 1.5, (-.6, .0)), d.coin(.4)) * face
    rel = (soft * (1 - lined) + .035 * crease * d.of([-1., 1.]) * torch.maximum(lined, both)) * area
    m = torch.maximum((1 - smooth(.8, 1.15, sc)) * (1 - lined), smooth(.25, .6, crease) * torch.maximum(lined, both)) * area
    a = (dim * (1 - lined) + crease * torch.maximum(lined, both)).clamp(0, 1) * area * d.u(0, .12)
    return a, s.alb * .6, rel, 0 * a, m
