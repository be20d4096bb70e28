"""Flaws that come as spots, pits and streaks. Each: f(c, v, s, e) -> alb, dh, gloss, region."""
import torch
from bench_noise import smooth, mix, dots, gauss


def V(v, k):
    return (v == k).float().view(-1, 1, 1, 1)


def patch(c, e, f=.35, off=13.0):
    """where a flaw lies: e 0 a small place .. 1 everywhere"""
    x = c['noise'].fbm(c['P'], f, off, 2) / 1.1
    d = (c['P'] - c['spot']).norm(dim=1, keepdim=True)
    loc = smooth(0, 1, 1.4 - d / (.7 + 5 * e))
    return torch.where(e > .65, torch.ones_like(x), smooth(.0, .25, x * .5 + loc - .35))


def direction(c):
    a = c['q'][5] * 3.14
    return torch.cat([torch.cos(a), torch.sin(a), a * 0 + .2], 1)


def coloured_specks(c, v, s, e):
    f = 1.1 + 2.2 * c['q'][6] + 1.6 * V(v, 2)
    P = c['noise'].warp(c['P'], 2.0, .06, 4.0, 1)
    pig, pa = c['pig'], patch(c, e)
    out, reg = c['alb'], 0
    dv = direction(c)
    for k in range(3):
        d, h, rel = dots(P + k * 3.3, f * (1 + .5 * k), c['seed'] + k * 5, (.12 + .75 * s), .06, .26 + .1 * V(v, 3), 2)
        a = smooth(1.1, .75, d)
        along = (rel * dv).sum(1, keepdim=True)
        perp = (rel - along * dv).norm(dim=1, keepdim=True)
        tail = smooth(.07, .0, perp) * smooth(.45, .0, along) * smooth(-.02, .03, along) * (d < 8).float() * .8
        halo = torch.exp(-(d - 1).clamp(min=0) * 1.6) * (d < 8).float() * .5
        a = torch.maximum(a, tail * V(v, 1))
        a = torch.maximum(a, halo * V(v, 3))
        a = a * pa * (.45 + .55 * h[:, :1]) * (.45 + .55 * s)
        out = mix(out, pig * (.7 + .6 * h[:, 1:2]), a)
        reg = torch.maximum(a, reg + 0 * a)
    return out, None, None, reg


def white_specks(c, v, s, e):
    f = 1.3 + 2.2 * c['q'][6] + 2.0 * V(v, 0)
    P = c['noise'].warp(c['P'], 2.5, .09 + .1 * V(v, 1), 4.0, 2)
    pa = patch(c, e)
    out, reg, dh, gl = c['alb'], 0, 0, c['gloss']
    white = c['alb'].new_tensor([.93, .92, .88]).view(1, 3, 1, 1)
    for k in range(3):
        d, h, _ = dots(P + k * 3.3, f * (1 + .45 * k), c['seed'] + 40 + k * 5, .12 + .75 * s, .06, .26 + .12 * V(v, 1), 2.2)
        a = smooth(1.15, .7, d) * pa * (.5 + .5 * h[:, :1]) * (.4 + .6 * s)
        ring = torch.exp(-((d - 1.25) / .25) ** 2) * pa * (d < 8).float()
        out = mix(out, out * .78, ring * (V(v, 1) + V(v, 2)) * .5)
        out = mix(out, white * (1 - .1 * V(v, 1)), a)
        dh = dh - .03 * a * V(v, 2) + .012 * a * V(v, 0)
        gl = gl * (1 - .7 * a)
        reg = torch.maximum(a, reg + 0 * a)
    return out, dh, gl, reg


def orange_spots(c, v, s, e):
    f = .28 + .25 * c['q'][6] + .55 * V(v, 1)
    P = c['noise'].warp(c['P'], 1.0, .28, 4.0, 3)
    pa = torch.where(v.view(-1, 1, 1, 1) == 1, patch(c, e), torch.ones_like(c['alb'][:, :1]))
    cA = c['alb'].new_tensor([.62, .22, .03]).view(1, 3, 1, 1)
    cB = c['alb'].new_tensor([.80, .45, .12]).view(1, 3, 1, 1)
    out, reg = c['alb'], 0
    for k in range(3):
        d, h, _ = dots(P + k * 2.7, f * (1 + .5 * k), c['seed'] + 70 + k * 3, .25 + .55 * e, .05, .24 + .12 * V(v, 2), 1.5)
        ok = (d < 8).float() * pa
        g = c['noise'].fbm(c['P'], 3.0, 2.0, 2) * .25
        halo = torch.exp(-(d * .75 - .2 + g).clamp(min=0) ** 2) * ok * (.35 + .65 * h[:, :1]) * (.35 + .55 * s)
        core = smooth(.75, .2, d + g) * ok * (.2 + .8 * s) * (1 - .5 * V(v, 2))
        out = mix(out, torch.minimum(cB, out * 1.1 * cB / .8), halo * .9)
        out = mix(out, torch.minimum(cA, out * 1.2) * .9, core * .85)
        reg = torch.maximum(torch.maximum(halo * smooth(.1, .25, halo), core), reg + 0 * d)
    return out, -.004 * reg, None, reg


def pinholes(c, v, s, e):
    f = 1.5 + 1.8 * c['q'][6] + 2.4 * V(v, 0)
    P = c['P'] * (1 - c['P'].new_tensor([.0, .5, .0]).view(1, 3, 1, 1) * V(v, 3))
    pa = patch(c, e)
    pa = torch.where(v.view(-1, 1, 1, 1) == 2, pa * smooth(.45, .1, c['noise'].fbm(c['P'], .5, 31.0, 2).abs()), pa)
    dh, reg, out = 0, 0, c['alb']
    for k in range(3):
        d, h, _ = dots(P + k * 2.3, f * (1 + .5 * k), c['seed'] + 90 + k * 3, .08 + .75 * s * (.5 + .5 * e), .06, .22 + .14 * V(v, 1), 3)
        a = smooth(1.05, .75, d) * (pa > .4).float()
        depth = (1 - d * d).clamp(min=0).sqrt() * a
        dh = dh - depth * (.22 / f)
        out = mix(out, out * out * .5, a * (.35 + .45 * smooth(1.0, .4, d)))
        reg = torch.maximum(a, reg + 0 * a)
    return out, dh, None, reg


def smears(c, v, s, e):
    n, P = c['noise'], c['P']
    a = c['q'][5] * 3.14
    w = n.warp(P, .3, .35 + .6 * V(v, 2), 3.0, 2)
    x = w[:, :1] * torch.cos(a) + w[:, 1:2] * torch.sin(a)
    y = -w[:, :1] * torch.sin(a) + w[:, 1:2] * torch.cos(a)
    z = w[:, 2:3]
    q = torch.cat([x * (.22 + .1 * V(v, 1)), y * (1.1 + 1.6 * V(v, 1)), z * .5], 1)
    k = n.fbm(q, 1.0, 17.0, 2)
    fib = n(torch.cat([x * .4, y * 9, z], 1), 1.0, 5.0) * .22
    th = .75 - .5 * e
    m = smooth(th, th + .12 + .25 * V(v, 2), k + fib) * smooth(-1.1, -.2, n(torch.cat([x * .5, y * .6, z], 1), 1.0, 3.0))
    m = m * torch.where(e > .75, torch.ones_like(m), smooth(-.1, .4, patch(c, e)))
    m = m * (.3 + .65 * s)
    pg = torch.where(c['q'][7] > .72, torch.full_like(c['pig'], .88), c['pig'])
    pg = torch.where(c['q'][7] < .3, c['cols'][:, 1][:, :, None, None] * .55, pg)
    return mix(c['alb'], pg, m), None, None, m


def drag_lines(c, v, s, e):
    n, L = c['noise'], c['L']
    a = (c['q'][5] - .5) * .25 + (c['q'][7] > .5).float() * 1.57
    bow = V(v, 2) * .05 * (L[:, :1] * torch.cos(a) + L[:, 1:2] * torch.sin(a)) ** 2
    x = L[:, :1] * torch.cos(a) + L[:, 1:2] * torch.sin(a)
    y = -L[:, :1] * torch.sin(a) + L[:, 1:2] * torch.cos(a) + bow
    zz = c['koff'] * 3.7
    o = torch.zeros_like(x)
    f = 2.5 + 6 * c['q'][6] + 5 * V(v, 1)
    k = n(torch.cat([y * f, x * .09 + 3, zz + o], 1), 1.0, 1.0) + .6 * n(torch.cat([y * f * 2.3, x * .13, zz + o + 4], 1), 1.0, 2.0)
    start = smooth(-.15, .1, n(torch.cat([y * f * .6, x * .12 + 9, zz + o], 1), 1.0, 8.0) + (e - .45))
    th = .75 - .55 * e
    m = smooth(th, th + .3, k) * start * c['cutw']
    tint = mix(c['alb'] * .62, c['alb'] * .5 + .35, (n(torch.cat([y * f * .8, o, o], 1), 1.0, 6.0) > 0).float() * (1 - .5 * V(v, 3)))
    tint = mix(tint, c['pig'], V(v, 3) * .5)
    return (mix(c['alb'], tint, m * (.12 + .5 * s)), -m * (.01 + .05 * s), None, m)
