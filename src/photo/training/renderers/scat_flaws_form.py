"""Flaws of form and phase: veins, crackle, core, crack, browning, gaps, wrinkles, dimples."""
import torch
from scat_base import length, smooth, mix, hsv, to_linear, turn, deeper, luma
from scat_soap import portion
from scat_flaws_grain import choose, cluster


def tinted(S, d, lo=0.2, hi=0.6):
    """A darker, clearer version of the soap: what glassy soap looks like."""
    return deeper(S.alb, d.u(S.n, lo, hi))


def translucent_veins(S, d):
    """Glassy rivers: ridged noise, branching cell borders, broad patches or two-level networks."""
    n, look = S.n, d.pick(S.n, 5)
    fr = d.log(n, 0.9, 3.2)
    w = S.fields.noise(S.ps * fr, 3, 0.45)
    q = torch.cat([S.uv[:, :1] * fr, S.uv[:, 1:2] * fr * d.u(n, 0.6, 1.4)], 1) + 0.35 * w[:, 1:3] + d.u(n, 0, 50, 2)
    d1, d2, _ = S.fields.cells(q)
    gap = d2 - d1
    vary = 0.4 + 0.9 * smooth(w[:, 3:], -0.7, 0.6)
    wid = d.log(n, 0.035, 0.16)
    ridge = smooth(w[:, :1].abs(), wid * vary * 1.3, wid * vary * 0.25)
    two = torch.maximum(ridge, smooth(w[:, 1:2].abs(), wid * vary * 0.9, wid * 0.15 * vary))
    river = smooth(gap, wid * vary * 1.6, wid * vary * 0.3) * smooth(w[:, 3:], -0.7, -0.1)
    broad = smooth(w[:, :1].abs(), 0.35 * vary, 0.05) * smooth(w[:, 1:2], -0.6, 0.2)
    both = torch.maximum(river, 0.7 * ridge)
    a = choose(look, ridge, two, river, broad, both)
    reg = torch.where(d.chance(n, 0.55) > 0, torch.ones_like(a), smooth(cluster(S, d), 0.1, 0.6))
    a = a * reg
    S.alb = mix(S.alb, tinted(S, d, 0.35, 0.85), a * d.u(n, 0.45, 1.0))
    S.hgt = S.hgt - a * d.u(n, 0, 0.006)
    S.spec = S.spec * (1 + 0.5 * a)
    S.rough = S.rough * (1 - 0.3 * a)
    return smooth(a, 0.12, 0.5)


def crackle_network(S, d):
    """Closed glaze-like cells: fine dark lines, wide clear lines, nested cells, or pale cell bodies."""
    n, look = S.n, d.pick(S.n, 4)
    fr = d.log(n, 4.0, 13)
    fr = torch.minimum(fr, 0.12 / S.pxm)
    w = S.fields.noise2(S.uv * fr * 0.5, 2)
    q = torch.cat([S.uv[:, :1] * fr * d.u(n, 0.7, 1.3), S.uv[:, 1:2] * fr], 1) + 0.16 * w[:, :2] + d.u(n, 0, 60, 2)
    d1, d2, key = S.fields.cells(q)
    e = d2 - d1
    wd = choose(look, d.u(n, 0.06, 0.13), d.u(n, 0.16, 0.34), d.u(n, 0.06, 0.12), d.u(n, 0.1, 0.2)) * (1 + 0.35 * w[:, 2:3])
    wd = torch.maximum(wd, S.px * fr * 0.9)
    line = smooth(e, wd, wd * 0.25)
    f1, f2, _ = S.fields.cells(q * 0.37 + 9)
    big = smooth(f2 - f1, 0.1, 0.03)
    line = torch.where(look == 2, torch.maximum(0.65 * line, big), line)
    pale = smooth(luma(S.alb), 0.15, 0.4)
    patch = smooth(S.w[:, 1:2] + d.u(n, -0.1, 0.9), -0.2, 0.25)
    reg = torch.where(d.chance(n, 0.6) > 0, torch.where(pale.mean((1, 2, 3), keepdim=True) > 0.03, pale, torch.ones_like(pale)), torch.ones_like(pale)) * patch
    tone = 1 + 0.12 * (S.fields.sites[6][key] - 0.3) * (look == 3).float()
    a = line * reg
    S.alb = mix((S.alb * mix(1.0, tone, reg)).clamp(0, 0.95), tinted(S, d, 0.4, 0.9), a * d.u(n, 0.5, 1.0))
    S.hgt = S.hgt - a * d.u(n, 0, 0.004)
    return smooth(reg, 0.2, 0.6) * smooth(e, torch.maximum(wd * 1.6, 0 * wd + 0.25), wd * 0.5)


def dark_centre_ring(S, d):
    """Partial gel: a darker, clearer core of a cut face; full, ring-like, off centre or broken."""
    n, look = S.n, d.pick(S.n, 4)
    x = S.p[:, :1] / S.h[:, :1] - d.u(n, -0.2, 0.2) * (1 + (look == 2).float())
    y = S.p[:, 1:2] / S.h[:, 1:2] - d.u(n, -0.2, 0.2) * (1 + (look == 2).float())
    k = d.log(n, 1.7, 5)
    w = S.fields.noise(S.ps * d.u(n, 0.8, 2.4), 2)
    r = ((x * d.u(n, 0.85, 1.25)).abs() ** k + (y * d.u(n, 0.85, 1.25)).abs() ** k + 1e-6) ** (1 / k)
    r = r + d.u(n, 0.01, 0.12) * w[:, :1]
    r0 = d.u(n, 0.35, 0.78)
    s = d.log(n, 0.02, 0.22)
    core = smooth(r, r0 + s, r0 - s)
    rw = d.u(n, 0.025, 0.1)
    ring = torch.exp(-((r - r0) / rw) ** 2)
    part = core * smooth(w[:, 1:2], -0.6, 0.1)
    a = choose(look, core, ring * (0.7 + 0.3 * smooth(w[:, 2:3], -0.5, 0.2)), core, torch.maximum(part * 0.8, 0.9 * ring * smooth(w[:, 1:2], -0.5, 0)))
    a = a * S.cut
    S.alb = mix(S.alb, tinted(S, d, 0.35, 0.85), a * d.u(n, 0.45, 1.0))
    S.alb = mix(S.alb, (S.alb * 1.15).clamp(max=0.95), ring * S.cut * d.chance(n, 0.3) * (look == 0).float())
    S.spec = S.spec * (1 + 0.4 * a)
    return smooth(a, 0.15, 0.55)


def crack(S, d):
    """A split: along the loaf top, through the bar, from an edge, or forked; hairline to gaping."""
    n, look = S.n, d.pick(S.n, 5)
    top = (look == 0)
    w = S.fields.noise(S.ps * d.u(n, 1.2, 3), 5, 0.62)
    fin = S.fields.noise(S.ps * d.u(n, 6, 14), 2)
    ang = d.u(n, 0, 6.283)
    uv = turn(S.uv0, ang)
    amp = d.log(n, 0.03, 0.14)
    top_d = S.p[:, :1] - d.u(n, -0.2, 0.2) + amp * w[:, :1]
    s_top = S.p[:, 2:] / S.h[:, 2:]
    off = d.u(n, -0.35, 0.35)
    dist = torch.where(top, top_d, uv[:, 1:2] - off + amp * (w[:, :1] + 0.15 * fin[:, :1]))
    s = torch.where(top, s_top, uv[:, :1])
    reach = choose(look, d.u(n, 0.3, 1.5), d.u(n, 2, 3), d.u(n, -0.5, 0.5), d.u(n, -0.1, 1.0), d.u(n, 0.1, 0.9))
    taper = smooth(reach - s, 0.0, 0.7)
    taper = torch.where(look == 4, smooth(reach - s.abs(), 0, 0.4), taper)
    taper = torch.where(top, smooth(reach - s.abs(), 0, 0.5), taper)
    wd = d.log(n, 0.008, 0.06) * S.grow ** 0.5 * (0.35 + 0.65 * taper) * (1 + 0.4 * w[:, 2:3]).clamp(min=0.3)
    wd = torch.maximum(wd, S.px * 0.7) * (taper > 0.02).float()
    s0 = d.u(n, -0.3, 0.3)
    fork = dist + (s - s0).clamp(min=0) * d.u(n, 0.4, 1.0) * torch.where(d.chance(n, 0.5) > 0, 1.0, -1.0) + 0.04 * w[:, 3:]
    fk = ((look == 3) | (d.chance(n, 0.25) > 0)).float() * (s > s0).float()
    dd = torch.minimum(dist.abs() / wd.clamp(min=1e-4), torch.where(fk > 0, fork.abs() / (0.7 * wd).clamp(min=1e-4), torch.full_like(wd, 99.0)))
    dd = dd + 0.25 * fin[:, 1:2]
    region = torch.where(top, smooth(S.p[:, 1:2] / S.h[:, 1:2], 0.55, 0.9), torch.where(S.face == S.mface, 1.0, 0.0) + 0 * dd)
    pxw = S.px / wd.clamp(min=1e-4)
    m = smooth(dd, 1 + 0.6 * pxw, (1 - 0.6 * pxw).clamp(min=0.2)) * (taper > 0.02).float() * region
    S.occ = S.occ * (1 - m * (d.u(n, 0.75, 0.98)))
    S.alb = mix(S.alb, S.alb * S.alb.sqrt() * 0.7, m * 0.8)
    S.hgt = S.hgt - m * wd * 1.5 + 0.25 * wd * torch.exp(-((dd - 1.6) / 0.6) ** 2) * region * d.u(n, 0, 1)
    S.spec = S.spec * (1 - 0.9 * m)
    return m


def brown_outside_in(S, d):
    """Browning deepest at the rim and fading inward: smooth, with a front, blotchy, one layer only, one side."""
    n, look = S.n, d.pick(S.n, 5)
    w = S.fields.noise(S.ps * d.u(n, 0.8, 3), 4, 0.6)
    depth = torch.where(d.chance(n, 0.35) > 0, torch.minimum(S.rim, S.edge + 0 * S.rim), S.rim)
    wd = d.log(n, 0.07, 0.4)
    x = (depth + d.u(n, 0.01, 0.1) * w[:, :1]).clamp(min=0) / wd
    grad = torch.exp(-x * 1.2)
    front = smooth(x, 1.15, 0.75) * (0.7 + 0.3 * torch.exp(-x))
    blot = torch.exp(-x) * smooth(w[:, 1:2], -0.5, 0.4)
    lay = torch.exp(-x * 0.8) * portion(S, d)
    side = torch.exp(-x) * smooth(turn(S.p[:, :2] / S.h[:, :2], d.u(n, 0, 6.283))[:, :1], -0.8, 0.4)
    a = choose(look, grad, front, blot, lay, side)
    br = to_linear(hsv(d.u(n, 0.045, 0.105), d.u(n, 0.4, 0.75), d.u(n, 0.22, 0.75)))
    br = br * mix(1.0, (0.3 + luma(S.alb)).clamp(max=1), 0.6)
    a = a * d.u(n, 0.45, 0.97)
    S.alb = mix(S.alb, torch.minimum(br.expand_as(S.alb), S.alb * 1.02), a)
    seen = ((S.cut * S.soap).sum((2, 3), keepdim=True) > 0.2 * S.soap.sum((2, 3), keepdim=True)).float()
    return smooth(a, 0.12, 0.45) * seen


def layer_gap(S, d):
    """Parting layers: hairline, gaping, a ledge, or crumbly and partial."""
    n, look = S.n, d.pick(S.n, 4)
    sel = (d.raw(n, 1, 1, 1) * S.k.float()).long().clamp(min=0)
    e = S.edges.gather(1, sel.clamp(max=4))
    w = S.fields.noise(S.ps * d.u(n, 0.8, 2.5), 4, 0.6)
    fin = S.fields.noise(S.ps * d.u(n, 8, 20), 2)
    x = (S.tq - e) * S.tscale + 0.008 * fin[:, :1] * (1 + 2 * (look == 3).float())
    along = S.p[:, :1] + S.p[:, 2:] * 0.6
    part = torch.where(d.chance(n, 0.55) > 0, smooth(along * torch.where(d.chance(n, 0.5) > 0, 1.0, -1.0) + 0.3 * w[:, :1], d.u(n, -0.6, 0.3), 0.6),
                       smooth(w[:, :1], -1.2, -0.2))
    wd = choose(look, d.log(n, 0.006, 0.014), d.log(n, 0.02, 0.06), d.log(n, 0.008, 0.02), d.log(n, 0.012, 0.04))
    wd = torch.maximum(wd * (0.3 + 0.7 * part) * (1 + 0.4 * w[:, 1:2]).clamp(min=0.3), S.px * 0.6)
    on = (part > 0.05).float() * (S.ptop < 0.5).float() * (S.k > 0).float()
    m = smooth(x.abs(), wd + S.px * 0.5, (wd - S.px * 0.5).clamp(min=0)) * on * smooth(part, 0.02, 0.2)
    S.occ = S.occ * (1 - m * d.u(n, 0.5, 0.95))
    S.alb = S.alb * (1 - 0.3 * m)
    ledge = smooth(x, -0.01, 0.01) * part * d.u(n, 0.01, 0.03) * ((look == 2).float() + 0.3)
    S.hgt = S.hgt - m * wd * 1.2 + ledge
    return m


def wrinkled_top(S, d):
    """Alligator skin, folds, brain-like ripples or fine crepe on the top."""
    n, look = S.n, d.pick(S.n, 4)
    fr = d.log(n, 3, 11) / S.grow ** 0.7
    p = S.uv
    w = S.fields.noise2(p * fr * 0.35, 3)
    q = turn(p, d.u(n, 0, 3.14)) * fr * torch.cat([torch.ones_like(fr), d.u(n, 0.4, 1)], 1) + 0.5 * w[:, :2] + d.u(n, 0, 50, 2)
    d1, d2, _ = S.fields.cells(q)
    skin = smooth(d2 - d1, 0.0, 0.35)
    fold = 0.5 + 0.5 * torch.sin(q[:, :1] * 3 + 3.5 * w[:, 2:3])
    brain = S.fields.noise2(q * 1.0, 2)[:, :1].abs().clamp(max=1)
    r = S.fields.noise2(torch.cat([q[:, :1] * 0.8, q[:, 1:2] * 3], 1), 3, 0.6)[:, :1].abs().clamp(max=1)
    h = choose(look, skin, fold, brain, r)
    reg = torch.where(S.face == S.topface, 1.0, 0.0) * torch.where(d.chance(n, 0.5) > 0, torch.ones_like(h), smooth(S.w[:, :1], -0.4, 0.3))
    reg = reg * smooth(S.edge, 0.0, 0.05)
    amp = d.u(n, 0.15, 0.5) / fr * choose(look, d.u(n, 0.6, 1), d.u(n, 0.5, 1), d.u(n, 0.7, 1.2), d.u(n, 0.6, 1))
    S.hgt = S.hgt + h * amp * reg
    S.occ = S.occ * (1 - reg * (1 - h) ** 2 * d.u(n, 0.1, 0.5))
    return smooth(reg, 0.2, 0.7)


def mould_dimples(S, d):
    """Dimples of a mould (regular, shifted, random) or creases of a liner on a moulded side."""
    n, look = S.n, d.pick(S.n, 5)
    face = torch.where(S.face == S.mouldface, 1.0, 0.0) + 0 * S.hgt
    c = d.log(n, 0.08, 0.3) * S.grow ** 0.6
    q = turn(S.uv, d.u(n, -0.3, 0.3)) / c
    hexq = torch.cat([q[:, :1] + 0.5 * torch.remainder(torch.floor(q[:, 1:2]), 2), q[:, 1:2]], 1)
    g = torch.where((look == 1), torch.remainder(hexq, 1), torch.remainder(q, 1)) - 0.5
    rr = d.u(n, 0.25, 0.45)
    reg_d = smooth(length(g), rr, rr * 0.3)
    rd = S.fields.dots(q + d.u(n, 0, 50, 2), d.u(n, 0.2, 0.8), 0.15, 0.4, 1.0, 0.2)
    rand_d = smooth(rd[0], 0.02, -0.2)
    w = S.fields.noise2(S.uv * 1.5, 3)
    crease = torch.zeros_like(reg_d)
    for _ in range(4):
        v = turn(S.uv0, d.u(n, 0, 3.14))
        x = v[:, 1:2] - d.u(n, -0.7, 0.7) + 0.05 * w[:, :1] + 0.1 * (v[:, :1] - d.u(n, -0.4, 0.4)).abs() * d.u(n, -1, 1)
        ww = d.log(n, 0.015, 0.05)
        crease = torch.maximum(crease, torch.exp(-(x / ww) ** 2) * d.chance(n, 0.75) * smooth(v[:, :1] * torch.where(d.chance(n, 0.5) > 0, 1.0, -1.0), -0.8, 0.2))
    cren = crease + 0.0 * g[:, :1]
    band = smooth(S.w[:, 2:3], d.u(n, -0.9, -0.2), 0.1)
    a = choose(look, reg_d, reg_d, rand_d, cren, cren) * face
    a = a * torch.where(look < 3, mix(band, torch.ones_like(band), d.chance(n, 0.5)), torch.ones_like(band))
    depth = choose(look, *[c * d.u(n, 0.1, 0.4)] * 3, *[d.u(n, 0.012, 0.04)] * 2) * torch.where(look == 4, torch.where(d.chance(n, 0.5) > 0, 1.0, -1.0), torch.ones_like(c))
    S.hgt = S.hgt - a * depth
    S.occ = S.occ * (1 - 0.15 * a)
    return smooth(a, 0.05, 0.3)
