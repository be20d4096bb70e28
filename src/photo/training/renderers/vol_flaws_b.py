"""Flaws nine to sixteen as fields in the solid, and the list of all."""
import torch
from vol_noise import sstep, mix
from vol_flaws_a import (rgb, lum, patches, one_portion, coloured_specks, smears, white_specks, translucent_veins,
                         crackle_network, powdery_film, dark_centre_ring, orange_spots)


def pinholes(fd, c, U):
    """Air holes: a few, a foam, large and small, at times tunnels; a bowl with a lip."""
    k = torch.floor(U(0) * 4)
    al, h = 0, 0
    for j in range(3):
        rw = torch.where(k == 1, .004 + .006 * U(1), .006 + .02 * U(1) ** 1.5) * (1, .6, .35)[j]
        sc = torch.where(k == 1, .3 + 0 * rw, .2 + .1 * U(2)) / rw / 1.5
        st = torch.cat([torch.where(k == 3, .3 + 0 * sc, 1 + 0 * sc), 1 + 0 * sc, 1 + 0 * sc], 1)
        lim = torch.where(k == 3, .14 + 0 * sc, .45 + 0 * sc)
        d, r, rnd, _ = fd.particles(fd.turn(c["q"]) * sc + c["so"] + 13 * j, torch.where(k == 1, .3 + .65 * U(4), .12 + .6 * U(4) ** 1.5),
                                    torch.minimum(rw * .5 * sc, lim * .5), torch.minimum(rw * 1.5 * sc, lim), 1.6, st)
        d = d * (1 + .12 * fd.noise(c["q"] / rw)[:, :1])
        a = sstep(1.08, .8, d)
        al = torch.maximum(al * torch.ones_like(a), a)
        bowl = -(1 - d * d).clamp(min=0).sqrt() * rw
        lip = torch.exp(-((d - 1.15) / .2) ** 2) * rw * .35 * U(5)
        h = h + bowl + lip
    pt = patches(fd, c, U, 6)
    dark = .12 + .5 * U(8)
    return al * pt * (.55 + .45 * U(9)), c["alb"] ** .3 * dark, 0, h * pt * (.6 + .8 * U(10)), -.5


def crack(fd, c, U):
    """A split: along the top, through the bar, from an edge, forked; hairline to gaping."""
    q, p, hh = c["q"], c["p"], c["h"]
    j1 = fd.fbm(q * (1.2 + 2 * U(1)) + c["so"], 4, .6)
    jag = j1[:, :1] * (.03 + .1 * U(2)) + .012 * fd.noise(q * 22)[:, :1]
    th = torch.where(U(0) < .45, 0 * U(1), U(3) * 6.28)
    u = p[:, :1] * th.cos() + p[:, 1:2] * th.sin()
    v = -p[:, :1] * th.sin() + p[:, 1:2] * th.cos()
    onx = (U(0) < .45).float()
    cross = mix(v - (U(4) - .5) * .4, u - (U(4) - .5) * .25, onx) + jag
    along = mix(u + .55, hh[:, 1:2] - p[:, 1:2], onx)
    length = mix(.6 + 1.2 * U(5), hh[:, 1:2] * (.3 + 1.3 * U(5) ** 2), onx)
    ends = torch.where(onx > 0, sstep(1, .75, p[:, 2:3].abs() / (hh[:, 2:] * (.5 + 1.2 * U(6)))), torch.ones_like(u))
    taper = (1 - along / length).clamp(0, 1) ** .6 * ends
    w = (.006 + .035 * U(7) ** 2) * (.5 + .5 * taper) * (1 + .4 * j1[:, 1:2])
    d = cross.abs() + (taper < .02) * 9
    fork = (cross - (along - .4 * length) * (.6 * (U(8) - .5)) - .01).abs() * 1.4 + ((along < .4 * length) | (U(9) < .6)) * 9 + (taper < .05) * 9
    d = torch.minimum(d, fork)
    al = sstep(1.15, .6, d / w.clamp(min=.0012)) * sstep(0, .15, taper)
    hgt = -al * (.01 + .6 * w) + torch.exp(-(d / (w * 3)) ** 2) * w * .5 * U(10) * (taper > .05)
    return al * (.75 + .25 * U(11)), c["alb"] ** .4 * (.03 + .22 * U(12)), 0, hgt, -.8


def brown_outside_in(fd, c, U):
    """Vanilla-like browning from the rim inward, deepest at the rim."""
    a, hh = c["p"].abs(), c["h"]
    e = ((a[:, :1] / hh[:, :1]) ** 3 + (a[:, 1:2] / hh[:, 1:2]) ** 3 + 1e-6) ** (1 / 3)
    d = torch.where(c["foot"] > 1, (1 - e) * hh[:, :2].amin(1, keepdim=True), (hh[:, :2] - a[:, :2]).amin(1, keepdim=True))
    dz = (hh[:, 2:] - a[:, 2:]) + .02
    d = torch.where((U(0) > .85) & (c["w3"] < .5), torch.minimum(d, dz * 3), d).clamp(min=0)
    n = fd.fbm(c["q"] * (1.5 + 3 * U(1)) + c["so"], 3)
    d = d * (1 + .5 * U(2) * n[:, 1:2]) + .05 * U(2) * n[:, :1]
    w = .03 + .14 * U(3) ** 1.3
    soft, firm = torch.exp(-d.clamp(min=0) / w), sstep(w * 1.5, w * (.6 + .7 * U(4)), d) * (.6 + .4 * torch.exp(-d.clamp(min=0) / w))
    al = torch.where(U(5) < .55, soft, firm) * one_portion(c, U(6) * .75) * (.45 + .55 * U(7))
    g = U(8)
    tan = torch.cat([.62 - .4 * g, .40 - .3 * g, .2 - .16 * g], 1)
    return al, tan * (.6 + .5 * U(9)), 0, 0, 0


def colour_bled(fd, c, U):
    """Colour creeping over its border as halo, stain or feather."""
    n = fd.fbm(c["q"] * (2 + 7 * U(1)) + c["so"], 3, .6)
    b = c["bd"] * torch.where(U(2) > .5, 1 + 0 * U(2), -1 + 0 * U(2))
    reach = (.04 + .12 * U(3)) * (1 + (.3 + .8 * U(4)) * n[:, :1]).clamp(min=.1)
    d = b.abs()
    soft = .5 * torch.exp(-(d / reach) ** 2) + .5 * torch.exp(-d / reach)
    stain = sstep(1.1, .4 + .5 * U(5), d / reach) * (.7 + .3 * n[:, 1:2])
    al = torch.where(U(0) < .5, soft, stain) * (d < 2) * (c["bd"].abs() < 3)
    side = torch.where(U(6) < .8, (b > 0).float(), torch.ones_like(b))
    pt = torch.where(U(7) < .4, torch.ones_like(b), sstep(-.3, .3, n[:, 2:3] + fd.noise(c["q"] * 1.3 + c["so"])[:, :1]))
    al = (al * side * pt * (.65 + .35 * U(8))).clamp(0, 1)
    dif = (c["nb"] - c["alb"]).abs().max(1, keepdim=True)[0]
    m = c["nb"].sqrt() * c["alb"].sqrt()
    return al * sstep(.02, .06, dif), 0, mix(c["nb"], m, .5 * U(9)), 0, .1


def drag_lines(fd, c, U):
    """Straight parallel scratches over the cut, one to many."""
    th = U(1) * 3.14
    x, y = c["p"][:, :1], c["p"][:, 1:2]
    u, v = x * th.cos() + y * th.sin(), y * th.cos() - x * th.sin() + .04 * (U(2) - .5) * x * x
    al, h, drag = 0, 0, 0
    for j in range(2):
        W = (.02 + .1 * U(3) ** 1.5) * (1, 1.7)[j]
        cv = v / W + 20 + torch.floor(c["so"][:, :1]) + 9 * j
        cell = torch.floor(cv)
        rnd = fd.cell_random(torch.cat([cell, cell * 0 + 3 + j, torch.sign(c["n"][:, 2:])], 1))
        ctr = .2 + .6 * rnd[:, :1]
        w = (.0035 + .008 * U(4) ** 1.5) * (.5 + rnd[:, 1:2]) / W
        x0 = torch.where(rnd[:, 5:6] < .4, -9 + 0 * u, rnd[:, 2:3] * .9 - .6)
        x1 = torch.where(rnd[:, 6:7] < .5, 9 + 0 * u, x0 + .15 + rnd[:, 3:4])
        seg = sstep(0, .04, u - x0) * sstep(0, .2, x1 - u)
        d = (cv - cell - ctr) / w
        on = seg * (rnd[:, 4:5] < .18 + .75 * U(5) ** 1.5) * (.5 + .5 * rnd[:, 7:8])
        n = fd.noise(torch.cat([u * 4, cv, cv * 0], 1))[:, :1] * .4 + .8
        al = al + sstep(1.2, .4, d.abs()) * on * n
        h = h - sstep(1.1, .2, d.abs()) * on * w * W * .7 + sstep(1, .3, (d.abs() - 1.4).abs()) * on * w * W * .2
        drag = drag + sstep(3, .5, d.abs()) * on * n
    f = sstep(.6, .85, c["n"][:, 2:].abs()) * patches(fd, c, U, 13, 1.2)
    al, drag = (al * f).clamp(0, 1), (drag * f).clamp(0, 1)
    k = U(6)
    col = torch.where(k < .45, c["alb"] * (.35 + .35 * U(7)), torch.where(k < .7, (c["alb"] * 1.35 + .08).clamp(0, .95), mix(c["alb"] * .6, c["nb"] * .8, (c["bd"].abs() < 3).float())))
    al = torch.where(k < .7, al, torch.maximum(al, drag * .7)) * (.55 + .45 * U(8))
    return al, 0, col, h * f * (1 + 1.5 * U(9)), -.3


def layer_gap(fd, c, U):
    """Layers that part: gap or ledge along a border."""
    b = c["bd"] + .006 * fd.noise(c["q"] * 12)[:, :1]
    n = fd.noise(c["q"] * torch.cat([1 + 2 * U(1), .5 + 0 * U(1), 1 + 0 * U(1)], 1) + c["so"])
    whole = torch.where(U(2) < .35, torch.ones_like(b), sstep(-.15, .3, n[:, :1] + .3 * (U(3) - .4)))
    w = (.006 + .02 * U(4) ** 2) * (.6 + .5 * n[:, 1:2].abs()) * (.25 + .75 * whole)
    pick = torch.where(U(5) < .6, (torch.floor(c["s"] + .5) % 2 == torch.floor(U(6) * 2)).float(), torch.ones_like(b))
    al = sstep(1.2, .7, b.abs() / w) * sstep(.1, .4, whole) * pick
    ledge = torch.where(U(7) < .4, sstep(-w, w, b) * whole * pick * .015 * U(8), 0 * b)
    return al * (.75 + .25 * U(9)), c["alb"] ** .4 * (.06 + .3 * U(10)), 0, -al * (.006 + w) + ledge, -.8


def wrinkled_top(fd, c, U):
    """Alligator skin or folds on the top."""
    f = 4 + 11 * U(1)
    st = torch.cat([1 + 0 * U(2), .5 + 0 * U(2), .35 + .9 * U(2)], 1)
    q = c["q"] * st * f + (.2 + .6 * U(3)) * fd.noise(c["q"] * f * .6 + c["so"])[:, :3] + c["so"]
    n = fd.fbm(q, 3, .5)
    ridge = (1 - n[:, :1].abs() * 2.6).clamp(0, 1) ** 1.5
    r2 = (1 - n[:, 1:2].abs() * 2.6).clamp(0, 1) ** 1.5
    f1, f2, _ = fd.worley(q * .9)
    k = torch.floor(U(0) * 4)
    valley = sstep(.35, .0, f2 - f1)
    m = torch.where(k == 0, valley, torch.where(k == 1, torch.maximum(ridge, r2), torch.where(k == 2, ridge, .6 * valley + .6 * r2))).clamp(0, 1)
    area = c["top"] * torch.where(U(4) < .5, torch.ones_like(m), sstep(-.25, .2, fd.noise(c["q"] * 1.8 + c["so"])[:, :1]))
    h = -m * area * (.35 + .65 * U(5)) * .26 / f
    al = area * (.35 + .65 * m)
    return al, 1 - m * (.08 + .35 * U(6)), 0, h, .2


def mould_dimples(fd, c, U):
    """Shallow dimples or liner creases on the sides that lay against a mould."""
    a, p, so = c["n"].abs(), c["p"], c["so"]
    mx = a.max(1, keepdim=True)[0]
    uv = torch.where(a[:, :1] >= mx, p[:, 1:3], torch.where(a[:, 1:2] >= mx, torch.cat([p[:, :1], p[:, 2:]], 1), p[:, :2]))
    f = 5 + 13 * U(1)
    v = uv * f
    v = torch.cat([v[:, :1] + .5 * torch.remainder(torch.floor(v[:, 1:2]), 2) * (U(2) > .5), v[:, 1:2]], 1)
    lat = ((v - torch.floor(v) - .5).pow(2).sum(1, keepdim=True).sqrt() / (.22 + .2 * U(3)))
    d1, _, rid = fd.worley2(uv * f * .8 + so[:, :2], .95)
    rnd = d1 / (.15 + .3 * rid[:, :1]) + (rid[:, 1:2] > .35 + .6 * U(4)) * 9
    n = fd.fbm(torch.cat([uv * (1 + 2.5 * U(5)), 0 * mx], 1) + so, 2)
    cr = torch.minimum(n[:, :1].abs(), n[:, 1:2].abs() * 1.5) / (.012 + .03 * U(6)) * (1 - .3 * n[:, 2:3])
    k = torch.floor(U(0) * 4)
    d = torch.where(k == 0, lat, torch.where(k <= 2, rnd, cr))
    bowl = (1 - d * d).clamp(min=0)
    deep = torch.where(k == 3, .008 + .012 * U(8), (.03 + .05 * U(8)) * 7 / f)
    area = c["side"] * torch.where(U(9) < .6, torch.ones_like(d), sstep(-.2, .25, fd.noise(c["q"] * 1.5 + so)[:, :1]))
    al = sstep(1.1, .8, d) * area
    return al, 1 - .28 * U(10) * bowl, 0, -bowl * area * deep, .1


FLAWS = [coloured_specks, smears, white_specks, translucent_veins, crackle_network, powdery_film, dark_centre_ring,
         orange_spots, pinholes, crack, brown_outside_in, colour_bled, drag_lines, layer_gap, wrinkled_top, mould_dimples]
