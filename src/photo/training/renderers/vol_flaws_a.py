"""Flaws one to eight as fields in the solid. Each returns alpha, multiplier, added colour, height, gloss change."""
import torch
from vol_noise import sstep, mix


def lum(a):
    return (a * a.new_tensor([.3, .6, .1]).view(1, 3, 1)).sum(1, keepdim=True)


def rgb(c, *v):
    return c["p"].new_tensor(v).view(1, 3, 1)


def one_portion(c, x):
    """1 in one colour portion only (for multi-coloured soap, when chance x says so)."""
    want = torch.floor((x - .5).clamp(min=0) * 2 * c["nc"])
    return torch.where(x > .5, (c["por"] == want).float(), torch.ones_like(c["por"]))


def ink(c, U, i):
    """Speck colour: a deeper hue of the ground, or a strong foreign pigment."""
    a = c["alb"]
    m = a.mean(1, keepdim=True)
    deep = ((a / m) ** (1.5 + 3 * U(i + 1)) * m * (.12 + .3 * U(i + 2))).clamp(0, 1)
    k = torch.floor(U(i + 1) * 5)
    fixed = torch.where(k == 0, rgb(c, .03, .06, .35), torch.where(k == 1, rgb(c, .4, .02, .03), torch.where(
        k == 2, rgb(c, .012, .012, .014), torch.where(k == 3, rgb(c, .03, .2, .05), rgb(c, .3, .03, .25)))))
    return torch.where(U(i) < .5, deep, fixed * (.6 + .9 * U(i + 2)))


def patches(fd, c, U, i, f=2.0):
    """Where a flaw gathers: everywhere, or in soft patches."""
    n = fd.noise(c["q"] * (f * (.5 + U(i + 1))) + c["so"] + 3)[:, :1]
    return torch.where(U(i) < .6, torch.ones_like(n), sstep(-.3, .2, n))


def coloured_specks(fd, c, U):
    """Dots of undispersed pigment, hard or with a halo, few or hundreds, at times in one portion."""
    al, ragged = 0, .1 + .5 * U(1)
    for j in range(2):
        sc = (13 + 22 * U(2)) * (1, .6)[j]
        rw = (.0035 + .012 * U(3) ** 1.5) * (1 if j else .7)
        hr = 1 + 1.3 * (U(4) > .5)
        d, r, rnd, cell = fd.particles(c["q"] * sc + c["so"] + 17 * j, .1 + .85 * U(5) ** 1.3, (rw * .4 * sc * hr).clamp(max=.3), (rw * 1.6 * sc * hr).clamp(max=.46), 2.0)
        d = d * hr * (1 + ragged * fd.noise(c["q"] * 1.2 / rw + 4)[:, :1])
        core = sstep(1.15, .8, d)
        al = torch.maximum(al * torch.ones_like(core), torch.maximum(core, .45 * sstep(hr, .7, d) * (hr > 1)))
    al = al * patches(fd, c, U, 6) * one_portion(c, U(8) * .85) * (.65 + .35 * U(9))
    return al, 0, ink(c, U, 10), 0, 0


def smears(fd, c, U):
    """Comets of colour drawn along the cut."""
    th = U(1) * 6.28
    x, y = c["p"][:, :1], c["p"][:, 1:2]
    u, v = x * th.cos() + y * th.sin(), y * th.cos() - x * th.sin()
    v = v + .06 * (U(2) - .5) * (u * 4).sin() + .15 * (U(3) - .5) * u * u
    al = 0
    for j in range(2):
        L, W = .12 + .5 * U(4) * (1, .6)[j], .03 + .09 * U(5)
        cv = torch.cat([u / L + 7.3 * j, v / W + .5 * j, torch.sign(c["n"][:, 2:]) + 5], 1)
        cv = torch.cat([cv[:, :1] + .37 * torch.floor(cv[:, 1:2]), cv[:, 1:]], 1) + torch.floor(c["so"] * 1)
        cell = torch.floor(cv)
        rnd, f = fd.cell_random(cell), cv - cell
        x0 = .05 + .25 * rnd[:, :1]
        ln = (.25 + .7 * rnd[:, 1:2] ** 1.5) * (1 - x0) * .95
        t = (f[:, :1] - x0) / ln
        w = (.004 + .012 * U(6)) * (.5 + rnd[:, 2:3]) / W
        dv = (f[:, 1:2] - .5 - .3 * (rnd[:, 3:4] - .5)).abs()
        head = sstep(1.2, .7, (((f[:, :1] - x0) * L / W / (w * 1.5)) ** 2 + (dv / (w * 1.3)) ** 2 + 1e-6).sqrt())
        tail = sstep(1.1, .4, dv / (w * (1 - .8 * t).clamp(min=.15))) * (t > 0) * (1 - t).clamp(0, 1) ** (.5 + 1.5 * U(7))
        al = torch.maximum(head, tail * (.5 + .5 * U(8))) * (rnd[:, 4:5] < .14 + .6 * U(9) ** 1.5) + al
    al = al.clamp(0, 1) * sstep(.5, .8, c["n"][:, 2:].abs()) * patches(fd, c, U, 13) * (.55 + .45 * U(15))
    pale = (U(16) > .85).float()
    return al, 0, mix(ink(c, U, 10), rgb(c, .85, .83, .8), pale), al * .001 * (U(17) - .5), 0


def white_specks(fd, c, U):
    """White grains, rice, crumbs standing proud, or a snow of stearic spots."""
    k = torch.floor(U(0) * 4)
    al, hgt = 0, 0
    for j in range(2):
        sc = torch.where(k == 2, 28 + 25 * U(2), 12 + 18 * U(2)) * (1, .6)[j]
        rw = torch.where(k == 2, .003 + .006 * U(3), (.0035 + .009 * U(3) ** 1.5) * torch.where(k == 1, .6 + 0 * sc, 1 + 0 * sc))
        st = torch.cat([1 + 0 * sc, torch.where(k == 1, .35 + 0 * sc, 1 + 0 * sc), 1 + 0 * sc], 1)
        dens = torch.where(k == 2, .5 + .45 * U(5), .14 + .7 * U(5) ** 1.5)
        hr = torch.where(k == 1, 2.4 + 0 * sc, 1 + 0 * sc)
        d, r, rnd, cell = fd.particles(fd.turn(c["q"]) * sc + c["so"] + 9 * j, dens, (rw * .4 * sc * hr).clamp(max=.3), (rw * 1.6 * sc * hr).clamp(max=.47), 2.0, st)
        d = d * hr * (1 + .5 * U(6) * fd.noise(c["q"] * 1.3 / rw)[:, :1])
        a = sstep(1.15, .8, d) * (.65 + .35 * rnd[:, 6:7])
        al = torch.maximum(al * torch.ones_like(a), a)
        hgt = hgt + (1 - d * d).clamp(min=0) * rw
    pt = torch.where(k == 2, sstep(-.1, .45, fd.fbm(c["q"] * (1.5 + 3 * U(7)) + c["so"], 2)[:, :1]), patches(fd, c, U, 8))
    al = al * pt * (.75 + .25 * U(10))
    return al, 0, rgb(c, .9, .89, .86) * (.8 + .2 * U(11)), hgt * pt * (U(12) - .35) * .8, -.3


def translucent_veins(fd, c, U):
    """A wandering glassy river net, wide or thin, darker or clearer."""
    f = 1.6 + 4 * U(1) ** 1.5
    q = c["q"] + (.12 + .2 * U(2)) / f * fd.noise(c["q"] * f * 2 + c["so"])[:, :3]
    n = fd.fbm(q * f + c["so"], 3, .4 + .15 * U(3))
    w = (.05 + .16 * U(4) ** 1.5) * (1 + .8 * n[:, 3:4])
    ln = torch.minimum(n[:, :1].abs(), n[:, 1:2].abs() * (1 + 2 * U(5)))
    if float((c["u"][:, 0] > .6).float().max()) > 0:
        f1, f2, _ = fd.worley(q * f * (.9 + .9 * U(6)) + c["so"])
        ln = torch.where(U(0) > .6, (f2 - f1) * .9 + .05 * n[:, 2:3].abs(), ln)
    al = sstep(1.1, .45 * U(7), ln / w.clamp(min=.02)) * patches(fd, c, U, 8, 1.5) * one_portion(c, U(10) * .7) * (.65 + .35 * U(11))
    m = c["alb"] / lum(c["alb"]).clamp(min=.02)
    dark = (.3 + .36 * U(12)) * m.clamp(.4, 1.3) ** .4
    return al, torch.where(U(13) < .8, dark, 1.15 * m.clamp(.5, 1.5) ** .5), 0, -al * .0015 * U(14), .3


def crackle_network(fd, c, U):
    """Closed cells like crackled glaze, chiefly in pale portions."""
    f = 9 + 24 * U(1) ** 1.3
    n = fd.fbm(c["q"] * f * .35 + c["so"], 2)
    q = c["q"] * f + (.3 + .8 * U(2)) * n[:, :3] + c["so"]
    st = torch.cat([1 + 0 * U(3), .6 + .8 * U(3), 1 + 0 * U(3)], 1)
    f1, f2, rid = fd.worley(q * st)
    e = (f2 - f1) + .1 * (U(4) - .3) * n[:, 2:3]
    w = .07 + .14 * U(5)
    line = sstep(1, .25, e / w)
    cellv = (rid - .5) * .25 * U(6)
    L = lum(c["alb"])
    mx = L.amax(2, keepdim=True)
    pale = torch.where(U(7) < .6, sstep(.35, .75, L / mx.clamp(min=.05)), torch.ones_like(L))
    area = torch.where(U(8) < .5, torch.ones_like(L), sstep(-.15, .25, fd.noise(c["q"] * 1.7 + c["so"])[:, :1]))
    al = (line + cellv.abs() * (1 - line)) * pale * area * (.45 + .55 * U(9))
    m = (c["alb"] / L.clamp(min=.02)).clamp(.4, 1.4)
    col = torch.where(U(10) < .75, c["alb"] * (.35 + .4 * U(11)) * m ** .5, (c["alb"] * 1.3 + .12).clamp(0, .95))
    return al, 0, col, -line * pale * area * .004 * U(12), 0


def powdery_film(fd, c, U):
    """A veil of ash: over the top, the edges, one face or in drifts; dusty, fluffy or crystalline."""
    k = torch.floor(U(0) * 4)
    a = c["p"].abs() / c["h"]
    srt = a.sort(1)[0]
    edge = sstep(.8, 1.0, srt[:, 1:2]) + (1 - c["n"].abs().max(1, keepdim=True)[0]) * 2
    n = fd.fbm(c["q"] * (1.2 + 4 * U(1)) + c["so"], 4, .6)
    where = torch.where(k == 0, torch.maximum(c["top"], .4 * edge.clamp(0, 1)), torch.where(k == 1, edge.clamp(0, 1), torch.where(
        k == 2, torch.maximum(c["cut"], c["top"] * .5), torch.ones_like(edge))))
    cover = sstep(-.5 + .8 * U(2), .1 + 1.1 * U(2) * U(3), n[:, :1] + .5 * (U(4) - .3))
    fine = fd.fbm(c["q"] * (25 + 70 * U(5)) + c["so"], 2, .7)[:, :1]
    grain = torch.where(U(6) < .35, sstep(-.1, .4, fine), 1 + .35 * fine)
    al = (where * cover * grain * (.3 + .65 * U(7))).clamp(0, 1)
    return al, 0, rgb(c, .8, .79, .77) * (.8 + .2 * U(8)), al * grain * .003 * U(9), -.9


def dark_centre_ring(fd, c, U):
    """The darker, glassier heart of a gelled core: full, soft, firm, off centre, or the ring alone."""
    n = fd.noise(c["q"] * (1 + 3 * U(1)) + c["so"])[:, :1] * (.03 + .12 * U(2))
    ctr = (torch.cat([U(3), U(4)], 1) - .5) * c["h"][:, :2] * .5
    ab = c["h"][:, :2] * (.35 + .45 * torch.cat([U(5), .5 * U(5) + .5 * U(6)], 1))
    k = 2 + 3 * U(7)
    e = (((c["p"][:, :2] - ctr).abs() + 1e-4) / ab).pow(k).sum(1, keepdim=True).pow(1 / k) + n
    soft = .02 + .22 * U(8) ** 2
    fill = sstep(1 + soft, 1 - soft, e)
    w = .03 + .1 * U(10)
    ring = torch.exp(-((e - 1) / w) ** 2)
    al = torch.where(U(9) < .55, fill, torch.where(U(9) < .78, ring, (fill * .7 + ring * .6).clamp(0, 1)))
    al = al * (.65 + .35 * U(11)) * sstep(.2, .5, c["n"][:, 2:].abs())
    tint = torch.cat([.9 + 0 * U(12), .84 + .06 * U(12), .68 + .2 * U(12)], 1)
    return al, tint * (.38 + .38 * U(13)), 0, 0, .25


def orange_spots(fd, c, U):
    """Rancid spots, dot to blotch, some in an oily halo."""
    al, halo = 0, 0
    for j in range(2):
        rw = (.008 + .05 * U(1) ** 2) * (1, .5)[j]
        sc = (.22 + .2 * U(2)) / rw / 2.2
        hr = 1.3 + 1.2 * U(3)
        d, r, rnd, _ = fd.particles(c["q"] * sc + c["so"] + 6 * j, .2 + .7 * U(4) ** 1.5, rw * .4 * sc * hr, (rw * 1.3 * sc * hr).clamp(max=.48), 1.5)
        n = fd.fbm(c["q"] * .8 / rw + c["so"], 3)
        d = d * hr * (1 + (.15 + .6 * U(5)) * n[:, :1])
        a = sstep(1.15, .5 + .4 * U(6), d) * (.6 + .4 * rnd[:, 6:7] + .3 * n[:, 1:2]).clamp(0, 1)
        al = torch.maximum(al * torch.ones_like(a), a)
        halo = torch.maximum(halo * torch.ones_like(a), sstep(hr, .8, d))
    pt = patches(fd, c, U, 7)
    g = U(9)
    col = torch.cat([.3 + .45 * g, .08 + .28 * g * (.6 + .4 * U(10)), .008 + .03 * U(11)], 1)
    core = al * (.6 + .4 * U(12))
    tot = (core + .3 * halo * (U(13) > .4) * (1 - core)).clamp(0, 1) * pt
    return tot, c["alb"] ** .5 * .35 * (1 - .7 * core), col * (.35 + .65 * core), 0, .3
