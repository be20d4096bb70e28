"""The soap as a solid of colour: pattern scalar, palette, and the designs and deceivers of a maker."""
import torch
from vol_noise import sstep, mix

KEYS = ["p", "q", "n", "h", "alb", "s", "bd", "nb", "por", "cut", "top", "side", "soap", "fp", "foot", "w3"]


def sub(c, rows):
    """The pictures `rows` of a context."""
    return {k: (v[rows] if torch.is_tensor(v) else v) for k, v in c.items()}


def scalar(fd, q, S):
    """The number whose whole parts name the colours."""
    so = S["seedoff"]
    w = q + S["warp"] * fd.noise(q * S["wf"] + so)[:, :3]
    n = fd.noise(w * S["ff"] + so + 5.5)
    s = S["s0"] + (S["A"] * w).sum(1, keepdim=True) + S["fa"] * n[:, :1]
    s = s + S["comb"] * torch.sin(S["cf"] * (S["cd"] * w).sum(1, keepdim=True) + 2 * n[:, 1:2])
    m = None
    for i in range(4):
        d = ((w[:, :2] - S["rc"][:, i]) * S["rs"][:, :2]).pow(2).sum(1, keepdim=True).sqrt()
        m = d if m is None else torch.minimum(m, d)
    return s + S["rad"] * m


def colour_of(pal, i, nc, wrapc):
    """Palette colour of whole number i."""
    i = torch.where(wrapc > .5, torch.remainder(i, nc), torch.minimum(i.clamp(min=0), nc - 1)).clamp(0, 7)
    return torch.gather(pal, 2, i.long().expand(-1, 3, -1)), i


def base(fd, q, n, S):
    """Colour, pattern number, signed distance to the next border, the neighbour's colour, portion."""
    s = scalar(fd, q, S)
    t1 = torch.cat([n[:, 1:2], -n[:, :1], n[:, 2:] * 0], 1) + torch.cat([n[:, 2:].abs(), n[:, :1] * 0, n[:, :1] * 0], 1)
    t2 = torch.cat([n[:, :1] * 0, n[:, 2:3], -n[:, 1:2]], 1)
    g = ((scalar(fd, q + .01 * t1, S) - s) ** 2 + (scalar(fd, q + .01 * t2, S) - s) ** 2).sqrt() / .01
    i0 = torch.floor(s)
    fr = s - i0
    w = ((fr - .5) / S["soft"] + .5).clamp(0, 1)
    c0, p0 = colour_of(S["pal"], i0, S["nc"], S["wrapc"])
    c1, p1 = colour_of(S["pal"], i0 + 1, S["nc"], S["wrapc"])
    other, same = fr > .5, p0 == p1
    bd = (fr - .5) / g.clamp(min=.3) + same.float() * 9
    nb, por = torch.where(other, c0, c1), torch.where(other, p1, p0)
    a = mix(c0, c1, w * w * (3 - 2 * w))
    if float(S["va"].max()) > 0:
        v = fd.fbm(q * S["vf"] + S["seedoff"] + 9, 2)
        a = mix(a, S["vcol"], S["va"] * sstep(1, .3, v[:, :1].abs() / (S["vw"] * (1.2 + v[:, 1:2]))))
    if float(S["ne"].max()) > 0:
        for i in range(3):
            e = S["ec"][:, i]
            d = torch.cat([(q[:, :1] - e[:, 0:1]) * e[:, 3:4], q[:, 1:2] - e[:, 1:2], (torch.remainder(q[:, 2:] + 9, .8) - .4) * S["ez"]], 1)
            d = (d.abs() + 1e-4).pow(S["ek"]).sum(1, keepdim=True).pow(1 / S["ek"]) - e[:, 2:3]
            on = (S["ne"] > i).float()
            al = sstep(.006, -.006, d) * on
            bd = torch.where((d.abs() < bd.abs()) & (on > 0), -d, bd)
            nb = torch.where((al < .5) & (d < .15) & (on > 0), S["ecol"][:, i].expand_as(nb), nb)
            a = mix(a, S["ecol"][:, i], al)
    a = a * (1 + S["mot"] * fd.fbm(q * S["motf"] + S["seedoff"], 3)[:, :1])
    return a.clamp(.003, 1), s, bd, nb, por


def lathe_mark(kind, x, y, U):
    """Height of a pressed stamp: ring, leaf strokes, star or bars (no writing)."""
    r = (x * x + y * y).sqrt()
    th = torch.atan2(y, x)
    n = torch.floor(3 + U[:, 2:3] * 6)
    ring = sstep(.012, .004, (r - .17).abs())
    petal = sstep(.01, -.005, (r - .06 - .07 * torch.cos(th * n).abs()).abs() - .006)
    bars = sstep(.3, .5, torch.sin(x * 70)) * (r < .14).float()
    star = sstep(.01, -.01, r - .1 * (1 + .4 * torch.cos(th * n)))
    k = torch.floor(kind * 4)
    return torch.where(k == 0, ring + petal, torch.where(k == 1, ring + bars, torch.where(k == 2, star, petal)))


def deceive(fd, c, host, S, H, gl, glit):
    """Adds the maker's decoration to c['alb'], height and gloss. Returns band alpha."""
    band = torch.zeros_like(H)
    items = host["items"]

    def who(k):
        rows = [i for i, it in enumerate(items) if it["tricks"][k] > 0 and not it["nosoap"]]
        return torch.tensor(rows, device=H.device) if rows else None

    def put(r, x, al, col):
        c["alb"][r] = mix(c["alb"][r], col, al)

    for k in (0, 1, 2, 3, 4, 5, 6, 11, 12, 16, 8):
        r = who(k)
        if r is None:
            continue
        x = sub({a: c[a] for a in KEYS}, r)
        U, T = S["tu"][r][:, k], S["tricol"][r]
        so, q, p = S["seedoff"][r], x["q"], x["p"]
        if k == 0:
            n = fd.noise(q * 60 + so)[:, :1]
            al = sstep(.012, .004, x["bd"].abs()) * (.6 + .4 * n)
            put(r, x, al, torch.cat([.5 + .2 * U[:, :1], .33 + 0 * U[:, :1], .12 * U[:, 1:2]], 1))
            gl[r] = gl[r] + al
        elif k == 1:
            d, _, rnd, _ = fd.particles(q * (60 + 50 * U[:, :1]) + so, .1 + .5 * U[:, 1:2], .1, .25)
            a = sstep(1.1, .8, d)
            glit[r] = glit[r] + a * (rnd[:, 5:6] > .5)
            put(r, x, a * .6, mix(T[:, 0], p.new_tensor([.5, .33, .08]).view(1, 3, 1), (U[:, 2:3] > .4).float()) * (.3 + .9 * rnd[:, 6:7]))
        elif k == 2:
            sc = 9 + 14 * U[:, :1]
            kind = torch.floor(U[:, 1:2] * 3)
            d, _, rnd, _ = fd.particles(q * sc + so, .15 + .6 * U[:, 2:3], .1, torch.where(kind == 0, .16 + 0 * sc, .38 + 0 * sc), 1.0)
            n = fd.noise(q * sc * 3 + so)
            d = d * (1 + torch.where(kind == 0, .1 + 0 * sc, .5 + 0 * sc) * n[:, :1])
            poppy, oat, coffee = p.new_tensor([.015, .016, .022]), p.new_tensor([.55, .4, .2]), p.new_tensor([.1, .05, .025])
            col = torch.where(kind == 0, poppy.view(1, 3, 1), torch.where(kind == 1, oat.view(1, 3, 1), coffee.view(1, 3, 1)))
            al = sstep(1.05, .85, d)
            put(r, x, al * .9, col * (1 + .4 * n[:, 1:2]))
            H[r] += al * .004
        elif k == 3:
            st = torch.cat([U[:, :1] * 0 + 1, U[:, :1] * 0 + .3, U[:, 1:2] * 2 + 1.5], 1)
            d, _, rnd, _ = fd.particles(fd.turn(q) * (4 + 5 * U[:, :1]) + so, .5, .2, .45, 1.0, st)
            al = sstep(1.02, .9, d * (1 + .3 * fd.noise(q * 20)[:, :1])) * sstep(.3, .7, x["top"])
            put(r, x, al, torch.where(rnd[:, 5:6] > .5, T[:, 0], T[:, 1]) * (.7 + .5 * rnd[:, 6:7]))
            H[r] += al * .015
        elif k == 4:
            onz = sstep(.7, .9, x["n"][:, 2:].abs())
            ang = U[:, 3:4] * 6.28
            a, b = p[:, :1] - (U[:, 4:5] - .5) * .2, p[:, 1:2] - (U[:, 5:6] - .5) * .2
            m = lathe_mark(U[:, :1], a * ang.cos() + b * ang.sin(), b * ang.cos() - a * ang.sin(), U).clamp(0, 1) * onz
            H[r] -= m * (.005 + .012 * U[:, 1:2])
            put(r, x, m * (U[:, 6:7] > .7).float() * .8, T[:, 2])
        elif k == 5:
            a = p[:, :1] * (U[:, :1] * 3).cos() + p[:, 1:2] * (U[:, :1] * 3).sin() + p[:, 1:2] ** 2 * U[:, 1:2] * .5
            n = fd.noise(torch.cat([a * (25 + 40 * U[:, 2:3]), p[:, 1:2] * 1.5, p[:, 2:] * 0], 1) + so)[:, :1]
            H[r] += n * x["cut"] * (.001 + .0025 * U[:, 3:4])
        elif k == 6:
            d, rr, rnd, _ = fd.particles(p * (9 + 16 * U[:, :1]) + so, .7, .08, .42, 2.0)
            dome = (1 - d * d).clamp(min=0).sqrt()
            H[r] += dome * .02
            gl[r] = gl[r] + 2.0 * (d < 1)
            put(r, x, sstep(1, .9, d) * .25, x["alb"] * .6)
        elif k == 11:
            v = fd.turn(q) * (14 + 14 * U[:, :1]) + so
            cell = torch.floor(v)
            rnd = fd.cell_random(cell)
            d = (v - cell - .5 - (rnd[:, :3] - .5) * .3).abs().max(1, keepdim=True)[0] / (.15 + .2 * rnd[:, 3:4])
            al = sstep(1.1, .9, d) * (rnd[:, 4:5] < .5 * U[:, 1:2] + .1) * sstep(.3, .8, x["top"])
            put(r, x, al * .85, p.new_tensor([.85, .84, .82]).view(1, 3, 1))
            H[r] += al * .015; gl[r] = gl[r] + al
        elif k == 12:
            f = 5 + 5 * U[:, :1]
            v = p[:, :2] * f
            d = (v - torch.round(v)).pow(2).sum(1, keepdim=True).sqrt()
            put(r, x, sstep(.02, -.02, d - .1 - .2 * U[:, 1:2]) * (x["n"][:, 2:].abs() > .5), T[:, 0])
        elif k == 16:
            n = fd.fbm(q * (2.5 + 3 * U[:, :1]) + so, 3)
            e = (p[:, :2] / (x["h"][:, :2] * (.3 + .3 * U[:, 1:2]))).pow(2).sum(1, keepdim=True).sqrt() + n[:, :1] * .9
            put(r, x, sstep(1.15, .85, e) * sstep(-.3, .3, n[:, 1:2]) * .85, T[:, 1])
        elif k == 8:
            ax = torch.where(U[:, :1] > .5, p[:, :1], p[:, 1:2])
            al = sstep(.008, 0., (ax - (U[:, 1:2] - .5) * .3).abs() - .08 - .15 * U[:, 2:3])
            f = fd.noise(p * 30 + so)[:, :1] * .05
            stripe = sstep(.3, .35, (ax * (10 + 20 * U[:, 3:4])).sin()) * (U[:, 4:5] > .5)
            put(r, x, al, mix(T[:, 0] * .5 + .4, T[:, 2], stripe) * (1 + f))
            band[r] = al
            H[r] = H[r] * (1 - al) + al * .006
    return band
