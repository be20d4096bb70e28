"""Harmless things that deceive: additives, decoration, stamps, wire marks, dew, glare, bands, crumbs, lint."""
import torch
from scat_base import length, smooth, mix, hsv, to_linear, turn, deeper, luma
from scat_flaws_grain import choose, cluster, aa
from scat_soap import portion

DECOYS = ["poppy", "oats", "coffee", "petals", "embeds", "stamp", "wire", "dew", "mica", "glitter", "band", "litter", "lint", "glare", "shade"]


def poppy(S, d):
    """Even, hard, small dark seeds, all of one size."""
    n = S.n
    cell = d.log(n, 0.07, 0.16)
    q = S.uv / cell + d.u(n, 0, 60, 2)
    sd, r, key, ox, oy = S.fields.dots(q, d.log(n, 0.15, 0.8), 0.014 / cell, 0.017 / cell, 1.0, 0.3)
    m = aa(sd, S, 1 / cell)
    S.alb = mix(S.alb, to_linear(hsv(d.u(n, 0.58, 0.68), d.u(n, 0.1, 0.3), d.u(n, 0.1, 0.26))), m * 0.95)
    S.hgt = S.hgt + m * 0.008 * torch.sqrt((1 - ((sd / r + 1) ** 2)).clamp(0, 1))


def oats(S, d):
    """Pale tan flakes and slivers of oat."""
    n = S.n
    cell = d.log(n, 0.12, 0.3)
    w = S.fields.noise2(S.uv * 12, 2)
    sd, r, key, *_ = S.fields.dots(S.uv / cell + 0.1 * w[:, :2] + d.u(n, 0, 60, 2), d.u(n, 0.15, 0.7), 0.05, 0.22, 1.2, 1.3)
    m = aa(sd + 0.03 * w[:, 2:3], S, 1 / cell)
    c = to_linear(hsv(d.u(n, 0.07, 0.12), d.u(n, 0.2, 0.5), d.u(n, 0.55, 0.88)))
    S.alb = mix(S.alb, c * (0.7 + 0.5 * S.fields.sites[6][key]) * (1 + 0.2 * w[:, 3:]), m * 0.85)
    S.hgt = S.hgt + 0.006 * m


def coffee(S, d):
    """Dark brown angular grounds of many sizes."""
    n = S.n
    cell = d.log(n, 0.05, 0.12)
    w = S.fields.noise2(S.uv * 35)
    sd, r, key, *_ = S.fields.dots(S.uv / cell + 0.12 * w[:, :2] + d.u(n, 0, 60, 2), d.u(n, 0.2, 0.8), 0.05, 0.22, 1.5, 0.6)
    m = aa(sd + 0.06 * w[:, 2:3], S, 1 / cell)
    c = to_linear(hsv(d.u(n, 0.04, 0.08), d.u(n, 0.4, 0.7), d.u(n, 0.1, 0.3)))
    S.alb = mix(S.alb, c, m * d.u(n, 0.7, 1))


def petals(S, d):
    """Dried petals or herbs: leaf-like flakes, mostly on the top."""
    n = S.n
    cell = d.log(n, 0.2, 0.6)
    w = S.fields.noise2(S.uv * 6, 2)
    sd, r, key, ox, oy = S.fields.dots(S.uv / cell + 0.08 * w[:, :2] + d.u(n, 0, 60, 2), d.u(n, 0.2, 0.7), 0.12, 0.3, 1, 1.6)
    m = aa(sd, S, 1 / cell) * torch.where(d.chance(n, 0.6) > 0, S.ptop, torch.ones_like(S.ptop))
    c = to_linear(hsv(choose(d.pick(n, 4), d.u(n, 0.09, 0.14), d.u(n, 0.9, 0.99), d.u(n, 0.2, 0.3), d.u(n, 0.62, 0.75)), d.u(n, 0.4, 0.9), d.u(n, 0.3, 0.85)))
    S.alb = mix(S.alb, c * (0.6 + 0.7 * S.fields.sites[6][key]) * (1 + 0.3 * w[:, 2:3]).clamp(min=0.2), m)
    S.hgt = S.hgt + m * 0.03 * (1 + w[:, 3:])


def embeds(S, d):
    """Cubes or balls of another soap set in as design."""
    n = S.n
    cell = d.log(n, 0.4, 0.9)
    q = turn(S.uv, d.u(n, 0, 3)) / cell + d.u(n, 0, 60, 2)
    sd, r, key, ox, oy = S.fields.dots(q, d.u(n, 0.4, 0.9), 0.15, 0.34, 1, 0.0)
    a = S.fields.sites[4][key] * 6.28
    sq = torch.maximum((ox * torch.cos(a) + oy * torch.sin(a)).abs(), (oy * torch.cos(a) - ox * torch.sin(a)).abs()) - r * 0.85
    m = aa(torch.where(d.chance(n, 0.5) > 0, sd, sq), S, 1 / cell) * (sd < 5)
    c = S.pal[5] * (0.7 + 0.5 * S.fields.sites[6][key])
    S.alb = mix(S.alb, c.clamp(0, 0.95), m)


def stamp(S, d):
    """A pressed mark of rings, spokes and bars on the main face."""
    n = S.n
    uv = turn(S.uv0, d.u(n, 0, 6)) - d.u(n, -0.15, 0.15, 2)
    r, th = length(uv), torch.atan2(uv[:, 1:2], uv[:, :1])
    r0, k = d.u(n, 0.2, 0.5), d.pick(n, 6).float() + 3
    ring = smooth((r - r0).abs(), 0.03, 0.015)
    flower = smooth((r - r0 * (0.55 + 0.25 * torch.cos(th * k))).abs(), 0.03, 0.012)
    spoke = smooth(torch.sin(th * k).abs() * r, 0.04, 0.02) * (r < r0).float()
    bars = smooth((torch.remainder(uv[:, 1:2] * 6, 1) - 0.5).abs(), 0.3, 0.2) * smooth((torch.remainder(uv[:, :1] * 4 + torch.floor(uv[:, 1:2] * 6) * 0.37, 1) - 0.5).abs(), 0.42, 0.36) * (uv.abs().max(1, keepdim=True).values < r0).float()
    p = d.pick(n, 3)
    m = torch.maximum(ring * (d.chance(n, 0.7)), choose(p, flower, spoke, bars)) * (S.face == S.mface).float() * S.main
    S.hgt = S.hgt - m * d.u(n, 0.01, 0.035)
    S.alb = mix(S.alb, choose(d.pick(n, 2), S.alb, to_linear(hsv(d.u(n, 0.09, 0.14), d.u(n, 0.4, 0.7), d.u(n, 0.5, 0.9))).expand_as(S.alb)), m * d.chance(n, 0.3))


def wire(S, d):
    """Broad soft parallel ripples left by a cutting wire on the whole cut face."""
    n = S.n
    uv = turn(S.uv, d.u(n, -0.25, 0.25) + 1.571 * d.pick(n, 2).float())
    w = S.fields.noise2(uv * 0.9, 2)
    x = uv[:, 1:2] + 0.12 * uv[:, :1] ** 2 * d.u(n, 0, 0.3) + 0.03 * w[:, :1]
    S.hgt = S.hgt + S.cut * torch.sin(x * d.u(n, 14, 45) + 2 * w[:, 1:2]) * d.u(n, 0.0008, 0.003) * (0.6 + 0.4 * w[:, 2:3])


def dew(S, d):
    """Clear droplets of water: dark side, bright side, glint."""
    n = S.n
    cell = d.log(n, 0.06, 0.2)
    sd, r, *_ = S.fields.dots(S.uv / cell + d.u(n, 0, 60, 2), d.u(n, 0.2, 0.8), 0.06, 0.32, 1.3, 0.15)
    m = aa(sd, S, 1 / cell)
    x = (1 + sd / r).clamp(0, 1)
    S.hgt = S.hgt + m * r * cell * 0.55 * torch.sqrt((1 - x * x).clamp(min=0.0))
    S.alb = mix(S.alb, deeper(S.alb, 0.25), m)
    S.spec = mix(S.spec, torch.full_like(S.spec, 1.3), m)
    S.rough = mix(S.rough, torch.full_like(S.rough, 0.1), m)


def mica(S, d):
    """Shimmer: a metallic line along a colour border or a golden sheen over a portion."""
    n = S.n
    w = S.fields.noise(S.ps * 2.5, 2)
    line = smooth(((S.tq - S.edges[:, :1]) * S.tscale + 0.01 * w[:, :1]).abs(), d.log(n, 0.008, 0.03), 0 * d.u(n)) * S.cut
    veil = smooth(w[:, 1:2], 0, 0.7)
    m = choose(d.pick(n, 2), line, veil * 0.6)
    c = to_linear(hsv(choose(d.pick(n, 3), d.u(n, 0.09, 0.14), d.u(n, 0.03, 0.07), d.raw(n, 1, 1, 1)), d.u(n, 0.2, 0.7), d.u(n, 0.6, 0.95)))
    S.alb = mix(S.alb, c, m * d.u(n, 0.4, 0.9))
    S.spec = S.spec + m * (0.8 + 0.8 * S.fine[:, 3:].clamp(min=0))
    S.hgt = S.hgt + m * 0.002 * S.fine[:, :1]


def glitter(S, d):
    """Tiny bright flakes that catch the light."""
    n = S.n
    cell = d.log(n, 0.04, 0.1)
    sd, r, key, *_ = S.fields.dots(S.uv / cell + d.u(n, 0, 60, 2), d.u(n, 0.1, 0.5), 0.06, 0.16, 1, 0.3)
    m = aa(sd, S, 1 / cell)
    f = (S.fields.sites[6][key] > 0.55).float() * S.fields.sites[7][key]
    S.shine = S.shine + m * f * 1.6 * hsv(d.raw(n, 1, 1, 1), d.u(n, 0, 0.5), torch.ones_like(cell))
    S.alb = mix(S.alb, to_linear(hsv(d.u(n, 0.08, 0.15), d.u(n, 0, 0.6), d.u(n, 0.6, 1))), m * 0.5)


def band(S, d):
    """A plain paper or cloth band around the bar."""
    n = S.n
    ax = torch.where(d.chance(n, 0.5) > 0, S.p[:, :1], S.p[:, 1:2]) - d.u(n, -0.2, 0.2)
    w = d.u(n, 0.12, 0.35)
    m = smooth(ax.abs(), w + S.px, w - S.px)
    paper = to_linear(hsv(d.u(n, 0.05, 0.14), d.u(n, 0, 0.45), d.u(n, 0.5, 0.97)))
    twine = 1 - 0.15 * smooth((torch.remainder(ax * 25, 1) - 0.5).abs(), 0.2, 0.4) * d.chance(n, 0.3)
    S.alb = mix(S.alb, paper * twine * (1 + 0.04 * S.fine[:, :1]), m)
    S.hgt = mix(S.hgt, 0.02 + 0.001 * S.fine[:, :1], m)
    S.spec = S.spec * (1 - 0.9 * m)
    S.cover = torch.maximum(S.cover, m)


def litter(S, d):
    """A few loose soap crumbs of the bar's own colour lying on it, raised with tiny shadows."""
    n = S.n
    cell = d.log(n, 0.25, 0.6)
    w = S.fields.noise2(S.uv * 20)
    q = S.uv / cell + d.u(n, 0, 60, 2) + 0.03 * w[:, :2]
    sd, *_ = S.fields.dots(q, d.u(n, 0.1, 0.4), 0.02, 0.07, 1.3, 0.5)
    m = aa(sd, S, 1 / cell)
    S.hgt = S.hgt + 0.025 * m
    S.occ = S.occ * (1 - 0.35 * smooth(sd, 0.03, 0.0) * (1 - m))
    S.alb = mix(S.alb, (S.pal[0] * 1.1).clamp(max=0.95), m * 0.8)


def lint(S, d):
    """Curled hairs or fibres."""
    n = S.n
    for _ in range(3):
        c = d.u(n, -0.6, 0.6, 2)
        uv = turn(S.uv0 - c, d.u(n, 0, 6.3))
        r = d.u(n, 0.1, 0.5)
        arc = (torch.sqrt((uv ** 2).sum(1, keepdim=True) + 1e-6) - r - 0.03 * torch.sin(uv[:, :1] * 14)).abs()
        m = smooth(arc, 0.0025 + S.px * 0.6, 0.0) * smooth(uv[:, :1], -0.05, 0.05) * (S.face == S.mface).float() * d.chance(n, 0.6) * 0.75
        S.alb = mix(S.alb, to_linear(hsv(d.raw(n, 1, 1, 1), d.u(n, 0, 0.4), torch.where(d.chance(n, 0.5) > 0, 0.9, 0.15) + 0 * r)), m)


def glare(S, d):
    """A patch so glossy that it throws the lamp back: film-thin wet gloss."""
    w = S.fields.noise(S.ps * 1.2, 2)
    m = smooth(w[:, :1], -0.3, 0.5)
    S.spec = S.spec + 1.0 * m
    S.rough = mix(S.rough, torch.full_like(S.rough, 0.18), m)


def shade(S, d):
    """The shadow of something outside the picture: leaf, blind or hand, laid on as darker light."""
    n = S.n
    uv = turn(S.uv0, d.u(n, 0, 6))
    s = d.log(n, 0.02, 0.2)
    bars = smooth(torch.sin(uv[:, :1] * d.u(n, 3, 14)), -s * 3, s * 3)
    leaf = smooth(S.fields.cells(uv * d.u(n, 1, 2.5) + d.u(n, 0, 50, 2))[0], 0.4 - s, 0.4 + s)
    half = smooth(uv[:, :1], -s, s)
    S.lit = S.lit * mix(d.u(n, 0.35, 0.75), torch.ones_like(bars), choose(d.pick(n, 3), bars, leaf, half))


FUNCS = [poppy, oats, coffee, petals, embeds, stamp, wire, dew, mica, glitter, band, litter, lint, glare, shade]
