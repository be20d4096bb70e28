"""The soap itself: body colour and designs in solid space, and its borders."""
import numpy as np
import torch
from bench_noise import smooth, mix, dots, cells, sub

NDES = 11
BORDERED = (1, 2, 3, 8)


def lin(c):
    return np.power(np.clip(c, 0, 1), 2.2)


def hsv(h, s, v):
    i = int(h * 6) % 6
    f = h * 6 - int(h * 6)
    p, q, t = v * (1 - s), v * (1 - f * s), v * (1 - (1 - f) * s)
    return np.array([(v, t, p), (q, v, p), (p, v, t), (p, q, v), (t, p, v), (v, p, q)][i])


def colours(r):
    """five linear colours of one picture: body, three others, a pigment"""
    nat = [(.93, .90, .83), (.90, .85, .72), (.86, .78, .62), (.95, .94, .91), (.82, .72, .55), (.88, .86, .80), (.78, .74, .62)]
    out = []
    z = r.rand()
    body = np.array(nat[r.randint(len(nat))]) + r.normal(0, .015, 3)
    if z > .5:
        body = hsv(r.rand(), r.uniform(.08, .5), r.uniform(.55, .93))
    if z > .88:
        body = hsv(r.rand(), r.uniform(.2, .75), r.uniform(.2, .55))
    out.append(body)
    h0 = r.rand()
    for _ in range(3):
        if r.rand() < .25:
            out.append(np.array(nat[r.randint(len(nat))]))
        elif r.rand() < .15:
            out.append(hsv(r.rand(), r.uniform(0, .3), r.uniform(.1, .25)))
        else:
            out.append(hsv((h0 + r.normal(0, .12)) % 1, r.uniform(.2, .75), r.uniform(.35, .9)))
    out.append(hsv(r.rand(), r.uniform(.55, .95), r.uniform(.15, .7)))
    return np.stack([lin(c) for c in out])


def col(c, i):
    return c['cols'][:, i][:, :, None, None]


def d_plain(c):
    return col(c, 0).expand_as(c['P']).clone(), None, None


def d_layers(c):
    P, n = c['P'], c['noise']
    a = c['q'][0]
    y = P[:, 1:2] + P[:, 0:1] * (a - .5) * .3 + n.fbm(P, .35, 3.0, 3) * (.05 + .6 * c['q'][1] ** 2)
    y0, y1 = (c['q'][2] - .5) * 2.2, (c['q'][2] - .5) * 2.2 + .7 + c['q'][3] * 1.2
    out = mix(col(c, 1).expand_as(P), col(c, 0).expand_as(P), smooth(-.03, .03, y - y0))
    third = (c['q'][4] > .45).float()
    return mix(out, col(c, 2), smooth(-.03, .03, y - y1) * third), y - y0, col(c, 1)


def d_swirl(c):
    P, n = c['P'], c['noise']
    s = .25 + .35 * c['q'][0]
    w = n.warp(P, s, 1.2 + 1.5 * c['q'][1], 7.0, 3)
    v = n.fbm(w * P.new_tensor([1, 1, .4]).view(1, 3, 1, 1), s * 1.2, 1.0, 2)
    v2 = n.fbm(w, s * 1.4, 21.0, 2)
    edge = .06 + .25 * c['q'][2] ** 3
    th = (c['q'][3] - .5) * .5
    out = mix(col(c, 0).expand_as(P), col(c, 1).expand_as(P), smooth(-edge, edge, v - th))
    out = mix(out, col(c, 2), smooth(.25, .25 + edge, v2) * (c['q'][4] > .4).float())
    return out, (th - v) / (s * 1.6), col(c, 1)


def d_drop(c):
    P, n = c['P'], c['noise']
    w = n.warp(P, .28, 1.1 + c['q'][1], 2.0, 2)
    x = w[:, 0:1] + .4 * torch.sin(w[:, 1:2] * (.5 + c['q'][0]))
    f = 1.2 + 1.8 * c['q'][2]
    v = torch.sin(x * f)
    v2 = torch.sin(x * f * .5 + 1.3 + w[:, 1:2] * .4)
    out = mix(col(c, 0).expand_as(P), col(c, 1).expand_as(P), smooth(.2, .3, v) * smooth(-3, -1 + c['q'][3], -w[:, 1:2] * .7))
    out = mix(out, col(c, 2), smooth(.6, .7, v2))
    return out, (.25 - v) / f, col(c, 1)


def d_ombre(c):
    P = c['P']
    t = smooth(-3, 3, P[:, 1:2] + c['noise'].fbm(P, .3, 5.0, 2) * .6)
    return mix(col(c, 0).expand_as(P), col(c, 1).expand_as(P), t), None, None


def d_marble(c):
    P, n = c['P'], c['noise']
    w = n.warp(P, .3, 1.4, 4.0, 3)
    v = n.fbm(w, .35, 9.0, 2).abs()
    k = .04 + .12 * c['q'][0]
    return mix(col(c, 1).expand_as(P), col(c, 0).expand_as(P), smooth(k * .4, k * 1.8, v) * .85 + .15), None, None


def d_rings(c):
    P, n = c['P'], c['noise']
    w = n.warp(P, .3, .7 + c['q'][0], 3.0, 2)
    r = ((w[:, 0:1] - (c['q'][1] - .5) * 4) ** 2 + ((w[:, 1:2] - (c['q'][2] - .5) * 6) * .7) ** 2 + .01).sqrt()
    v, v2 = torch.sin(r * (2 + 2.5 * c['q'][3])), torch.sin(r * 1.1 + 1)
    out = mix(col(c, 0).expand_as(P), col(c, 1).expand_as(P), smooth(.1, .25, v))
    return mix(out, col(c, 2), smooth(.5, .6, v2) * (v > .5).float()), None, None


def d_mica(c):
    P, n = c['P'], c['noise']
    w = n.warp(P, .35, .5, 8.0, 2)
    y = w[:, 1:2] - (c['q'][0] - .5) * 3
    out = mix(col(c, 1).expand_as(P), col(c, 0).expand_as(P), smooth(-.04, .04, y))
    line = torch.exp(-(y / (.035 + .05 * c['q'][1])) ** 2) * smooth(-.6, .2, n(P, 1.1, 2.0))
    return mix(out, col(c, 4) * .8, line), None, None


def d_diag(c):
    P, n = c['P'], c['noise']
    a = c['q'][0] * 3.1
    y = P[:, 0:1] * torch.sin(a) + P[:, 1:2] * torch.cos(a) + n.fbm(P, .4, 3.0, 2) * .5 * c['q'][1]
    return mix(col(c, 1).expand_as(P), col(c, 0).expand_as(P), smooth(-.03, .03, y)), y, col(c, 1)


def d_chunks(c):
    P = c['noise'].warp(c['P'], .8, .15, 2.0, 1)
    d, gap, num = cells(P, .6 + .5 * c['q'][0], c['seed'])
    e = smooth(.05, .08, gap) * (d < .42).float() * (num > .35 + .4 * c['q'][1]).float()
    cc = mix(col(c, 1).expand_as(P), col(c, 2).expand_as(P), (num * 37 % 1 > .5).float())
    return mix(col(c, 0).expand_as(P), cc, e), None, None


def d_fine(c):
    P, n = c['P'], c['noise']
    w = n.warp(P, .6, .7, 2.0, 3)
    v = n.fbm(w * P.new_tensor([1, 2.2, .5]).view(1, 3, 1, 1), .7, 1.0, 3)
    return mix(col(c, 0).expand_as(P), col(c, 1).expand_as(P), smooth(.0, .7, v) * .8), None, None


DES = [d_plain, d_layers, d_swirl, d_drop, d_ombre, d_marble, d_rings, d_mica, d_diag, d_chunks, d_fine]


def body(c, des):
    """colour, gloss, relief of clean soap; sd, dye: a border and the colour at its negative side"""
    P, n = c['P'], c['noise']
    alb = torch.zeros_like(P)
    sd, dye = torch.full_like(P[:, :1], 9.0), torch.zeros_like(P)
    for k in range(NDES):
        i = (des == k).nonzero().flatten()
        if len(i):
            a, s, dy = DES[k](sub(c, i))
            alb[i] = a
            if s is not None:
                sd[i], dye[i] = s, dy.expand_as(a)
    mot = n.fbm(P, .9, 11.0, 3) * c['mott'] + n.fbm(P, 5.0, 1.0, 2) * c['mott'] * .35
    alb = alb * (1 + mot)
    fine = n(P, 14.0, 0.0) * .5 + n(P, 27.0, 3.0) * .5
    alb = alb * (1 + fine * .018)
    edge = c['rim']
    alb = mix(alb, alb * alb.new_tensor([1.03, 1.0, .93]).view(1, 3, 1, 1), edge * .8)
    hgt = n.fbm(P, .8, 2.0, 2) * .02 * c['lump'] + fine * .0022
    tc = c['topw'] * (1 - c['ttype'])
    hgt = hgt + tc * n.fbm(P, .9, 6.0, 3) * .07 * c['lump']
    return alb.clamp(.004, .95), c['gloss'].expand_as(sd).clone(), hgt, sd, dye
