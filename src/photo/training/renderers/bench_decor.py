"""What deceives: grains, petals, stamps, bands, dew, cut marks, glitter. f(c) -> alb, dh, gloss, cover."""
import torch
from bench_noise import smooth, mix, dots, cells

ND = 12


def rgb(c, *v):
    return c['alb'].new_tensor(v).view(1, 3, 1, 1)


def grains(c, f, colr, dens, rmin, rmax, flat=1.0, sd=0.0, where=1.0, rise=.02):
    P = c['noise'].warp(c['P'], 1.5, .1, 3.0, 1) * P_flat(c, flat)
    out, dh, reg = c['alb'], 0, 0
    for k in range(2):
        d, h, rel = dots(P + 2.1 * k, f * (1 + .4 * k), c['seed'] + 200 + sd + k, dens, rmin, rmax, 1.0)
        a = smooth(1.1, .8, d) * where
        out = mix(out, colr * (.6 + .7 * h[:, :1]), a * .95)
        dh = dh + a * rise
        reg = torch.maximum(a, reg + 0 * a)
    return out, dh, None, reg


def P_flat(c, k):
    return c['P'].new_tensor([1.0, 1.0 + k, 1.0]).view(1, 3, 1, 1)


def oats(c):
    return grains(c, 1.0, rgb(c, .62, .48, .28), .25 + .5 * c['q'][8], .1, .34, 1.2)


def poppy(c):
    return grains(c, 3.2, rgb(c, .03, .032, .04), .15 + .5 * c['q'][8], .14, .2, 0.0)


def coffee(c):
    return grains(c, 4.5, rgb(c, .09, .045, .02), .2 + .6 * c['q'][8], .12, .32, .5)


def petals(c):
    col = mix(rgb(c, .65, .30, .03), rgb(c, .22, .16, .38), (c['q'][9] > .5).float())
    col = mix(col, rgb(c, .45, .05, .09), (c['q'][9] > .8).float())
    return grains(c, .75, col, .2 + .4 * c['q'][8], .15, .42, 2.0, 9.0, (c['topw'] > .5).float(), .06)


def stamp(c):
    L, h = c['L'], c['H']
    u = torch.where(c['cutw'] + c['topw'] * c['ttype'] > .5, L[:, :2], L[:, :2] * 0 + 9)
    r = u.norm(dim=1, keepdim=True)
    R = .5 * h[:, :2].amin(1, keepdim=True) * (.7 + .5 * c['q'][8])
    ang = torch.atan2(u[:, 1:2], u[:, :1])
    kk = (3 + 6 * c['q'][9]).floor()
    flower = r - R * (.55 + .3 * torch.cos(ang * kk))
    box = torch.maximum(u[:, :1].abs(), u[:, 1:2].abs() * 1.6) - R
    bars = (torch.sin(u[:, 1:2] * 4.2 / R) + .3) * (box < 0).float() - .6
    line = torch.minimum((r - R).abs(), (r - R * .86).abs())
    z = c['q'][7]
    d = torch.where(z < .35, flower.abs() - .05, torch.where(z < .7, torch.minimum(line, flower.abs()) - .045, -bars * .3 - .03))
    m = smooth(.035, -.035, d)
    return c['alb'] * (1 - .15 * m), -.09 * m, None, m


def band(c):
    L, h, n = c['L'], c['H'], c['noise']
    ax = (c['q'][9] > .6).float()
    x = mix(L[:, :1], L[:, 1:2], ax)
    w = .8 + 1.5 * c['q'][8]
    m = (x.abs() < w).float() * (1 - c['rim'] * 0)
    kr = mix(rgb(c, .48, .31, .17), rgb(c, .84, .83, .80), (c['q'][7] > .45).float())
    fib = n(c['P'], 12.0, 1.0) * .06 + n(c['P'] * P_flat(c, 3), 3.0, 4.0) * .05
    col = kr * (1 + fib)
    oth = mix(L[:, 1:2], L[:, :1], ax)
    lines = smooth(.35, .45, torch.sin(oth * 9)) * (x.abs() < w * .7).float() * smooth(-.2, 0, n(torch.cat([x * 3, (oth * 1.43).floor() * 7, x * 0], 1), 1.0, 2.0))
    col = mix(col, col * .12, lines * (c['q'][10] > .4).float() * (oth.abs() < 1.6).float())
    edge = torch.exp(-((x.abs() - w).clamp(min=0) / .1) ** 2) * (1 - m)
    return mix(c['alb'] * (1 - .3 * edge), col, m), m * .03, mix(c['gloss'], c['gloss'] * 0 + .1, m), m


def dew(c):
    dh, reg, out = 0, 0, c['alb']
    for k in range(3):
        d, h, _ = dots(c['P'] + 1.9 * k, 1.5 * (1 + .7 * k), c['seed'] + 230 + k, .3 + .5 * c['q'][8], .1, .34, 2.0)
        a = smooth(1.05, .95, d)
        dh = dh + (1 - d * d).clamp(min=0).sqrt() * a * .07
        out = mix(out, out * .86, a * smooth(.3, 1, d))
        reg = torch.maximum(a, reg + 0 * a)
    return out, dh, mix(c['gloss'], torch.ones_like(reg) * 1.3, reg), reg


def cutmark(c):
    """one knife step or a planer's soft chatter: no flaw"""
    L, n = c['L'], c['noise']
    ax = (c['q'][9] > .5).float()
    y = mix(L[:, 1:2], L[:, :1], ax) + .04 * n(L, .5, 2.0)
    step = smooth(-.03, .03, y - (c['q'][8] - .5) * 3) * .02
    chat = torch.sin(y * (2.5 + 2 * c['q'][10])) * .012
    return c['alb'], torch.where(c['q'][7] > .5, step, chat) * c['cutw'], None, c['cutw']


def glitter(c):
    top = mix(c['topw'], torch.ones_like(c['topw']), (c['q'][9] > .8).float())
    d, h, _ = dots(c['P'], 9.0, c['seed'] + 250, .15 + .4 * c['q'][8], .12, .3, 1.0)
    a = smooth(1.0, .7, d) * top * smooth(-.4, .3, c['noise'].fbm(c['P'], .7, 2.0, 2))
    gold = mix(rgb(c, .75, .5, .15), rgb(c, .8, .8, .85), (c['q'][10] > .6).float())
    return mix(c['alb'], gold * (.3 + 1.1 * h[:, :1]), a), a * .02 * (h[:, 1:2] - .5), mix(c['gloss'], a * 0 + 1.2, a), a


def mottle(c):
    """natural marbled shading, no flaw"""
    k = c['noise'].fbm(c['P'], .5, 41.0, 3)
    return c['alb'] * (1 + .07 * k), None, None, torch.ones_like(k)


def micatop(c):
    n, P = c['noise'], c['P']
    w = n.warp(P, .5, 1.0, 3.0, 2)
    k = smooth(.12, .03, n.fbm(w, .5, 17.0, 2).abs()) * c['topw'] * .8
    return mix(c['alb'], c['pig'] * .5 + rgb(c, .35, .25, .08), k), None, mix(c['gloss'], k * 0 + .9, k), k


def embed(c):
    """a round or square piece set in the bar's middle, seen on the cut"""
    L, h = c['L'], c['H']
    x, y = L[:, :1] - (c['q'][8] - .5) * h[:, :1], L[:, 1:2] - (c['q'][10] - .5) * h[:, 1:2]
    R = .6 + .7 * c['q'][7]
    d = torch.where(c['q'][9] > .5, (x * x + y * y + 1e-6).sqrt() - R, torch.maximum(x.abs(), y.abs()) - R * .8)
    m = smooth(.04, -.04, d) * (1 - c['topw'] * (1 - c['ttype']))
    cl = c['cols'][:, 2][:, :, None, None]
    return mix(c['alb'], cl * (1 + .04 * c['noise'](c['P'], 4.0, 1.0)), m), None, mix(c['gloss'], m * 0 + .6, m), m


DECOR = [oats, poppy, coffee, petals, stamp, band, dew, cutmark, glitter, mottle, micatop, embed]
