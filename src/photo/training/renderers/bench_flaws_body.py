"""Flaws in the body, on the top and the sides. Each: f(c, v, s, e) -> alb, dh, gloss, region."""
import torch
from bench_noise import smooth, mix, cells, dots
from bench_flaws_spots import V, patch


def deep(a, k):
    """the colour of soap that lets light further in"""
    g = a.mean(1, keepdim=True)
    return (a * (a / (g + 1e-3)).clamp(.3, 1.6) ** .7 * (1 - k)).clamp(0, 1)


def translucent_veins(c, v, s, e):
    n, P = c['noise'], c['P']
    f = .45 + .6 * c['q'][6]
    w = n.warp(P, f, .5 + .3 * V(v, 1), 7.0, 3)
    r1 = n.fbm(w, f, 19.0, 2).abs()
    r2 = n.fbm(w, f * 1.7, 29.0, 2).abs()
    wd = .05 + .09 * s + .06 * V(v, 0)
    m = smooth(wd, wd * .25, r1)
    m = torch.maximum(m, smooth(wd, wd * .3, r2) * V(v, 1))
    m = torch.maximum(m, smooth(.25, .75, n.fbm(w, f * 1.2, 3.0, 2)) * V(v, 2))
    m = m * smooth(-.7, .1, n(P, .8, 4.0) + e) * patch(c, e)
    return mix(c['alb'], deep(c['alb'], .22 + .25 * s), m * (.4 + .6 * s)), -m * .006, mix(c['gloss'], c['gloss'] * .5 + .5, m), m


def crackle_network(c, v, s, e):
    n = c['noise']
    P = n.warp(c['P'], 1.5, .12 + .18 * V(v, 1), 7.0, 2)
    f = 1.0 + 1.5 * c['q'][6] + 1.1 * V(v, 2)
    d, gap, num = cells(P, f, c['seed'] + 11)
    wd = .05 + .10 * s + .05 * V(v, 1)
    d2, gap2, _ = cells(P + 5, f * .45, c['seed'] + 12)
    m = torch.maximum(smooth(wd, wd * .2, gap), smooth(wd * .6, wd * .1, gap2) * V(v, 1))
    pa = patch(c, e)
    m = m * pa * (.75 + .35 * n(P, 2.0, 3.0))
    isl = (1 - m) * pa * (.05 + .15 * s) * (.6 + .8 * num)
    out = mix(c['alb'], c['alb'] * .3 + .68, isl * .8)
    return mix(out, deep(c['alb'], .42), m.clamp(0, 1) * (.35 + .65 * s)), -m * .005, None, m.clamp(0, 1) + .4 * pa * (pa > .5).float()


def powdery_film(c, v, s, e):
    n, P = c['noise'], c['P']
    big = n.fbm(n.warp(P, .5, .6, 3.0, 2), .55, 23.0, 4, gain=.6)
    fine = n.fbm(P, 9.0, 5.0, 2)
    t = c['topw'] * (.55 + .45 * smooth(-.7, .4, big + e * 1.3))
    pt = smooth(.15, .75, big + e * .8 - .25 + fine * .12)
    rim = (c['rim'] * 1.1 + smooth(.9, .1, c['edge'] + big * .35) * .8).clamp(0, 1) * smooth(-.6, .3, big + e)
    drift = smooth(.1, .7, n.fbm(P * P.new_tensor([.35, 1.6, .35]).view(1, 3, 1, 1), .9, 2.0, 3) + e * .7 - .2) * (.3 + .7 * c['topw'])
    m = t * V(v, 0) + pt * V(v, 1) + rim * V(v, 2) + drift * V(v, 3)
    m = (m * (.85 + .25 * fine)).clamp(0, 1)
    cry = smooth(.5, .9, n(P, 18.0, 3.0)) * m
    white = c['alb'].new_tensor([.86, .86, .84]).view(1, 3, 1, 1)
    return mix(c['alb'], white, m * (.14 + .72 * s) + cry * .08), m * .004 + fine * m * .004, c['gloss'] * (1 - .9 * m), m


def dark_centre_ring(c, v, s, e):
    n, L, h = c['noise'], c['L'], c['H']
    zz = torch.cat([L[:, :2], c['P'][:, 2:3] * .5], 1)
    ox, oy = (c['q'][5] - .5) * .35, (c['q'][6] - .5) * .35 - V(v, 3) * .55
    r = ((L[:, :1] / h[:, :1] - ox).abs() ** 2.4 + (L[:, 1:2] / h[:, 1:2] - oy).abs() ** 2.4 + 1e-5) ** (1 / 2.4)
    r = r + n.fbm(zz, .35, 3.0, 2) * .09
    R = .32 + .5 * e
    w = .015 + .03 * c['q'][7] + .18 * V(v, 1)
    core = smooth(R + w, R - w, r)
    line = torch.exp(-((r - R) / (.025 + .02 * c['q'][7])) ** 2) * (1 - .8 * V(v, 1))
    line = line + V(v, 2) * .8 * torch.exp(-((r - R * .8) / .03) ** 2)
    broken = smooth(-.7, -.1, n(zz, .4, 8.0))
    d = c['alb']
    out = mix(d, deep(d, .15 + .25 * s), core * (.25 + .6 * s))
    out = mix(out, deep(d, .4), (line * broken).clamp(0, 1) * (.2 + .5 * s))
    cw = (1 - c['topw']) * (1 - c['sidew'] * (1 - c['ttype']))
    out = mix(d, out, cw)
    return out, None, mix(c['gloss'], c['gloss'] * .6 + .35, core * cw * .6), torch.maximum(core * .6, line.clamp(0, 1) * .8) * cw


def brown_outside_in(c, v, s, e):
    n = c['noise']
    dep = .35 + 1.7 * e
    g = c['edge'] + n.fbm(c['P'], .6, 2.0, 3) * (.12 + .5 * V(v, 2))
    g = g + V(v, 3) * .5 * (1 - c['L'][:, 1:2] / c['H'][:, 1:2])
    w = .07 + .5 * V(v, 1) + .25 * V(v, 2)
    m = smooth(dep + w, dep - w, g)
    m = m * torch.where(v.view(-1, 1, 1, 1) == 1, .5 + .5 * smooth(dep, 0, g), torch.ones_like(m))
    br = mix(c['alb'].new_tensor([.33, .15, .055]), c['alb'].new_tensor([.55, .34, .16]), c['q'][7].view(-1, 1)).view(-1, 3, 1, 1)
    k = (.2 + .7 * s)
    return mix(c['alb'], br * (.35 + c['alb']), m * k), None, None, m


def colour_bled(c, v, s, e):
    n, P = c['noise'], c['P']
    reach = (.12 + .9 * e) * (1 + 1.1 * V(v, 1) * n.fbm(P, 1.3, 6.0, 2).clamp(-.8, 1))
    sd = c['sd'] + n.fbm(P, 1.8, 2.0, 2) * .06
    m = torch.exp(-(sd.clamp(min=0) / reach.clamp(min=.05)) ** (1 + .4 * V(v, 0))) * (c['sd'] > -.02).float() * (c['sd'] < 8).float()
    m = m * torch.where(v.view(-1, 1, 1, 1) == 2, smooth(-.2, .4, n.fbm(P, .5, 9.0, 2) + e - .3), torch.ones_like(m))
    m = m * (.4 + .5 * s)
    return mix(c['alb'], c['dye'] * .6 + .4 * c['alb'] * c['dye'].clamp(min=.1) ** .3, m), None, None, m * (m > .06).float()


def crack(c, v, s, e):
    n, L, h = c['noise'], c['L'], c['H']
    t0 = c['ttype']
    a1, a2 = mix(L[:, :1], L[:, 1:2], t0), mix(L[:, 2:3], L[:, :1], t0)      # across, along on the top
    wig = n.fbm(c['P'], .45, 3.0, 4, gain=.55)
    ha = mix(h[:, :1], h[:, 1:2], t0)
    top = a1 - (c['q'][5] - .5) * .7 * ha + wig * .55
    ln = mix(h[:, 2:3], h[:, :1], t0)
    span = smooth(0, .25, (.25 + .9 * e) - (a2 / ln - (c['q'][6] - .5) * .6).abs())
    wv = (.012 + .14 * s ** 1.5) * (.55 + .6 * n(c['P'], .9, 4.0) + .25 * n(c['P'], 5.0, 1.0)).clamp(.08, 1.4)
    d = top.abs() / (wv * span + 1e-4)
    below = (h[:, 1:2] - L[:, 1:2]) / (h[:, 1:2] * 2)                          # on the faces: down from the top
    reach = .12 + .8 * e * (.4 + .6 * s)
    wf = wv * smooth(reach, reach * .3, below)
    df = top.abs() / (wf + 1e-4)
    face = c['cutw'] * (1 - t0)
    dd = torch.where(face > .5, df, d)
    br = n.fbm(n.warp(c['P'], .5, .5, 2.0, 2), .7, 33.0, 3).abs() / (.5 * wv * span + 1e-4)   # branching
    bmask = smooth(1.6, .2, top.abs())
    dd = torch.where((v.view(-1, 1, 1, 1) == 1), torch.minimum(dd, br / bmask.clamp(min=.02)), dd)
    m = smooth(1.15, .6, dd) * (1 - c['sidew'] * .0)
    m = m * torch.where(v.view(-1, 1, 1, 1) == 3, smooth(-.25, .15, n(c['P'], 1.3, 6.0) + .2), torch.ones_like(m))
    use = torch.where(face > .5, torch.ones_like(m), (c['topw'] > .4).float())
    m = m * use
    lip = torch.exp(-(top.abs() / (.25 + .3 * s)) ** 2) * span * c['topw'] * V(v, 2)           # a raised ridge
    rim = torch.exp(-((dd - 1.5) / .5) ** 2) * use * .4
    out = mix(c['alb'], c['alb'] * c['alb'] * .16, m * .92)
    return out, -m * (.05 + .2 * s) + lip * .25 * s + rim * .01, c['gloss'] * (1 - m), m


def layer_gap(c, v, s, e):
    n, P = c['noise'], c['P']
    x = c['L'][:, :1] / c['H'][:, :1]
    k = n(P * P.new_tensor([1, .1, .6]).view(1, 3, 1, 1), .55, 4.0)
    wedge = smooth(-1.1 + 1.6 * (1 - e), 1.0, x * torch.sign(c['q'][5] - .5))
    op = wedge * V(v, 0) + smooth(.5 - e, .9 - e, k + .2) * V(v, 1) + (.6 + .4 * k) * V(v, 2)
    wd = (.02 + .13 * s) * op * (1 + .4 * n(P, 3.0, 2.0))
    d = (c['sd'] + n.fbm(P, 2.0, 8.0, 2) * .02).abs() / (wd + 1e-4)
    m = smooth(1.2, .6, d) * (wd > .008).float()
    up = smooth(0, -.25, c['sd']) * smooth(-.9, -.3, c['sd']) * op
    return mix(c['alb'], c['alb'] ** 1.6 * .13, m * .95), -m * (.06 + .14 * s) - up * .02, c['gloss'] * (1 - m), m


def wrinkled_top(c, v, s, e):
    n, P = c['noise'], c['P']
    f = .55 + .5 * c['q'][6]
    w = n.warp(P, f, .8, 7.0, 2)
    brain = 1 - (n.fbm(w, f * 1.2, 5.0, 2).abs() * 2.2).clamp(0, 1)
    st = P * mix(P.new_tensor([.3, .3, 1.6]), P.new_tensor([1.5, .3, .35]), c['q'][5].view(-1, 1)).view(-1, 3, 1, 1)
    wav = 1 - (n.fbm(n.warp(st, .8, .35, 3.0, 2), 1.1, 9.0, 2).abs() * 2).clamp(0, 1)
    fine = 1 - (n.fbm(n.warp(P, 1.2, .3, 2.0, 1), 1.5, 15.0, 1).abs() * 2).clamp(0, 1)
    k = brain * V(v, 0) + wav * V(v, 1) + fine * V(v, 2)
    k = k ** 2
    pa = c['topw'] * patch(c, e)
    amp = (.05 + .26 * s) * (1 - .65 * V(v, 2))
    out = mix(c['alb'], deep(c['alb'], .3), k * pa * (.08 + .4 * s))
    return out, -k * pa * amp, mix(c['gloss'], c['gloss'] * .5 + .45, pa), pa * (.3 + .7 * smooth(.1, .4, k))


def mould_dimples(c, v, s, e):
    n, P = c['noise'], c['P']
    sw = (c['sidew'] * (1 - c['rim'] * .7)).clamp(0, 1)
    f = 1.1 + 1.5 * c['q'][6]
    Pw = n.warp(P, .8, .15, 3.0, 1)
    dh = 0
    for k in range(2):
        d, h, _ = dots(Pw + k * 1.7, f * (1 + .4 * k), c['seed'] + 140 + k, .35 + .6 * s, .15, .42, 1.3)
        dh = dh - (1 - d * d).clamp(min=0) * (.25 / f)
    a = c['q'][5] * 3.1
    x = P[:, :1] + P[:, 2:3] * .8
    y = P[:, 1:2] + P[:, 2:3] * .4
    st = torch.cat([(x * torch.cos(a) + y * torch.sin(a)) * .25, (-x * torch.sin(a) + y * torch.cos(a)) * 1.3, P[:, 2:3] * .3], 1)
    crs = (1 - (n.fbm(n.warp(st, .5, .3, 2.0, 2), .9, 9.0, 2).abs() * 3).clamp(0, 1)) ** 2
    crumple = (cells(n.warp(P, .6, .4, 5.0, 2), .9, c['seed'] + 150)[0] - .4)
    dh = dh * V(v, 0) - crs * .14 * V(v, 1) + crumple * .25 * V(v, 2)
    pa = patch(c, e) * sw
    act = (dh.abs() / .06).clamp(0, 1)
    out = c['alb'] * (1 - .12 * act * pa * (dh < 0).float())
    return out, dh * pa * (.25 + .9 * s), None, pa * (.25 + .75 * act)
