"""What lies under and behind: wood, terrazzo, weave, marble, paper, tiles, granite, paint; crumbs and lint."""
import torch
from vol_noise import sstep, mix


def wood(fd, x, y, C, so):
    """Planks with bent rings and pores."""
    pl = torch.floor(y / 1.1 + 50)
    o = pl * 7.31
    g = fd.fbm(torch.cat([x * .5 + o, y * 2.2, o + 0 * x], 1) + so, 3)
    ring = ((y * 9 + 5 * g[:, :1] + o) * 2.2).sin()
    pore = sstep(.25, .6, fd.noise(torch.cat([x * 3, y * 60, o + 0 * x], 1))[:, :1])
    a = mix(C[:, 0], C[:, 0] * .6 + .15 * C[:, 1], .35 * (ring * .5 + .5) + .25 * g[:, 1:2])
    gap = sstep(.02, .005, (y / 1.1 + 50 - pl - .01).abs())
    return a * (1 - .3 * pore) * (1 - .8 * gap), -.004 * pore - .02 * gap


def terrazzo(fd, x, y, C, so):
    """Stone chips in a plain ground."""
    a, h = C[:, 0] + 0 * x, 0 * x
    for s in (3.5, 9):
        f1, f2, rid = fd.worley2(torch.cat([x, y], 1) * s + so[:, :2])
        chip = sstep(.08, .14, f2 - f1 - .25 * rid[:, 1:2]) * (rid[:, :1] < .5)
        a = mix(a, mix(C[:, 1], C[:, 2], (rid[:, 2:3] > .5).float()) * (.5 + rid[:, 1:2]), chip * .9)
    return a.clamp(0, 1), h


def weave(fd, x, y, C, so):
    """Cloth threads over and under, sometimes with stripes."""
    n = fd.noise(torch.cat([x * 1.5, y * 1.5, 0 * x], 1) + so)
    u, v = (x + .03 * n[:, :1]) * 28, (y + .03 * n[:, 1:2]) * 28
    tu, tv = (u * 3.14).sin().abs(), (v * 3.14).sin().abs()
    par = torch.remainder(torch.floor(u) + torch.floor(v), 2)
    t = torch.where(par > .5, tu, tv)
    st = sstep(.2, .3, (x * 6).sin()) * (so[:, :1] > 30)
    return mix(C[:, 0], C[:, 1], st) * (.65 + .35 * t), t * .006 + .03 * n[:, 2:3]


def marble(fd, x, y, C, so):
    """Veined stone."""
    q = torch.cat([x, y, 0 * x], 1)
    n = fd.fbm(q * .8 + so + .5 * fd.noise(q * 1.5)[:, :3], 4, .55)
    v = sstep(.12, 0, n[:, :1].abs()) * sstep(-.3, .4, n[:, 1:2])
    return mix(C[:, 0] * (1 + .1 * n[:, 2:3]), C[:, 1] * .6, v * .7), 0 * x


def paper(fd, x, y, C, so):
    """Plain sheet with fibre and a few creases."""
    n = fd.fbm(torch.cat([x * 20, y * 20, 0 * x], 1) + so, 3, .7)
    c = fd.noise(torch.cat([x * .8, y * .8, 0 * x], 1) + so)
    return C[:, 0] * (1 + .04 * n[:, :1]), .002 * n[:, 1:2] + .03 * c[:, :1].abs()


def tiles(fd, x, y, C, so):
    """Glazed tiles and grout."""
    u, v = x / .9, y / .9
    d = torch.minimum((u - torch.round(u)).abs(), (v - torch.round(v)).abs())
    g = sstep(.03, .015, d)
    n = fd.noise(torch.cat([torch.floor(u + .5), torch.floor(v + .5), 0 * x], 1) * 3.7 + so)
    return mix(C[:, 0] * (1 + .1 * n[:, :1]), C[:, 1] * .7, g), -.02 * g


def granite(fd, x, y, C, so):
    """Speckled stone or cork."""
    q = torch.cat([x, y, 0 * x], 1)
    n, m = fd.fbm(q * 14 + so, 3, .8), fd.noise(q * 45 + so)
    a = mix(C[:, 0], C[:, 1], sstep(-.1, .2, n[:, :1]))
    return mix(a, C[:, 2], sstep(.3, .5, m[:, :1])) * (1 + .15 * m[:, 1:2]), .002 * n[:, 2:3]


def painted(fd, x, y, C, so):
    """Paint worn in places, concrete, slate."""
    n = fd.fbm(torch.cat([x, y, 0 * x], 1) * 1.3 + so, 4, .6)
    return mix(C[:, 0], C[:, 1], sstep(.0, .6, n[:, :1]) * .6) * (1 + .08 * n[:, 1:2]), .01 * n[:, 2:3]


def plain(fd, x, y, C, so):
    return C[:, 0] + 0 * x, 0 * x


def rack(fd, x, y, C, so):
    """Slats or bamboo mat."""
    u = x * 3.2
    t = (u * 3.14).sin().abs()
    n = fd.noise(torch.cat([torch.floor(u) * 3.1, y * .7 + torch.floor(u), y * 30], 1) + so)[:, :1]
    return C[:, 0] * (.2 + .8 * sstep(.1, .4, t)) * (1 + .2 * n), .06 * t


KINDS = [wood, terrazzo, weave, marble, paper, tiles, granite, painted, plain, rack]


def table_look(fd, pos, S, host, fp):
    """Albedo and height of the table plane at pos [B,3,N]."""
    a, h = torch.zeros_like(pos), torch.zeros_like(pos[:, :1])
    kinds = [int(i["tk"]) for i in host["items"]]
    cs, sn = S["trot"].cos(), S["trot"].sin()
    x = (pos[:, :1] * cs + pos[:, 1:2] * sn) * S["tsc"]
    y = (pos[:, 1:2] * cs - pos[:, :1] * sn) * S["tsc"]
    for k in set(kinds):
        r = torch.tensor([i for i, v in enumerate(kinds) if v == k], device=pos.device)
        C = S["tc"][r]
        aa, hh = KINDS[k](fd, x[r], y[r], C, S["seedoff"][r])
        far = sstep(.01, .04, fp[r])
        a[r], h[r] = mix(aa, C[:, 0] * .85, far * .7), hh * (1 - far)
    for k, fn in ((9, crumbs), (10, lint)):
        rows = [i for i, it in enumerate(host["items"]) if it["tricks"][k] > 0]
        if rows:
            r = torch.tensor(rows, device=pos.device)
            a[r], h[r] = fn(fd, pos[r], a[r], h[r], S["tu"][r][:, k], S["pal"][r][:, :, 0:1], S["seedoff"][r])
    return a.clamp(.003, .95), h


def crumbs(fd, pos, a, h, U, col, so):
    """Soap crumbs on the table."""
    q = torch.cat([pos[:, :2] * (6 + 14 * U[:, :1]), 0 * pos[:, 2:] + .5], 1) + so
    d, _, rnd, _ = fd.particles(q, .08 + .4 * U[:, 1:2], .05, .3, 3.0)
    al = sstep(1.1, .8, d * (1 + .5 * fd.noise(q * 4)[:, :1]))
    return mix(a, col * (.8 + .3 * rnd[:, 5:6]), al), h + al * .02


def lint(fd, pos, a, h, U, col, so):
    """Short curved fibres."""
    v = pos[:, :2] * 3.5 + so[:, :2]
    cell = torch.floor(v)
    rnd = fd.cell_random(torch.cat([cell, cell[:, :1] * 0 + 2], 1))
    f = v - cell - .5
    th = rnd[:, :1] * 6.28
    x, y = f[:, :1] * th.cos() + f[:, 1:2] * th.sin(), f[:, 1:2] * th.cos() - f[:, :1] * th.sin()
    al = sstep(.03, .012, (y + (rnd[:, 1:2] - .5) * x * x * 3).abs()) * (x.abs() < .32) * (rnd[:, 2:3] < .6)
    return mix(a, 0 * a + torch.where(U[:, :1] > .5, U.new_tensor(.8), U.new_tensor(.05)), al * .8), h + al * .004
