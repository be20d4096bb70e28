"""Findings 1 to 8. Each look takes (R, bk, c) and returns mask, colour or None, blend, height or None."""
import numpy as np
import torch
from tx_bank import smooth, turn
from tx_marks import cells, dots, streaks, wander


def deep(R, c, wild=.42):
    """Pigment colours: the portion's own hue driven deep, or a strong colour of its own."""
    n = c.n
    col = c.col
    m = col.mean(1, keepdim=True)
    sat = (m + (col - m) * R.u(1.6, 3.2, n)).clamp(0, 1)
    own = (sat * R.u(.2, .6, n)).clamp(0, 1)
    hue = c.rs.uniform(0, 1, n)
    rgb = np.clip(np.abs((hue[:, None] * 6 + np.array([[0, 4, 2]])) % 6 - 3) - 1, 0, 1)
    v, s = c.rs.uniform(.15, .85, (n, 1)), c.rs.uniform(.4, 1, (n, 1))
    oth = R.t(v * (1 - s * (1 - rgb)))
    grey = ((col.amax(1, keepdim=True) - col.amin(1, keepdim=True)).mean((2, 3), keepdim=True) < .14).float() * R.coin(.8, n)
    return torch.where(torch.maximum(R.coin(wild, n), grey) > 0, oth.expand_as(own), own)


def one_portion(R, c):
    k = torch.floor(R.u(0, 1, c.n) * c.nn)
    some = (c.Fv.floor() == k).float()
    return torch.where(R.coin(.5, c.n) > 0, some, torch.ones_like(some))


def patch(R, bk, c, lo=.1, hi=.9, s0=.15, s1=.6):
    f = R.field(bk, bk.soft, "cloud", c.GU, c.GV, s0, s1)
    q = R.u(lo, hi, c.n)
    return smooth(0, .15, f - q)


def wob(R, bk, c, amt):
    return R.field(bk, bk.soft, "swirl", c.GU, c.GV, .3, .9) * amt


def specks(mode):
    def f(R, bk, c):
        n, px = c.n, c.px
        if mode == "gravel":
            f = R.field(bk, bk.flatrank, "grain", c.GU, c.GV, .35, 1.2)
            q = R.u(.955, .99, n)
            m = smooth(0, .008, f - q)
        else:
            rhi = R.logu(.006, .03, n) if mode != "fine" else R.logu(.004, .011, n)
            cell = rhi * R.logu(2.6, 9, n)
            m, _, _, d, on, r = dots(R, c.GU, c.GV, cell, R.u(.25, .95, n), rhi * R.u(.2, .6, n), rhi, px, .1)
            if mode == "two":
                m2 = dots(R, c.GU + .37, c.GV, cell * 3, R.u(.2, .8, n), rhi, rhi * 1.6, px, .25)[0]
                m = torch.maximum(m, m2)
            if mode == "halo":
                m = torch.maximum(m, on * smooth(2.2, .8, d) * .45)
        if mode in ("cluster", "gravel"):
            m = m * patch(R, bk, c, .3, .8)
        m = m * one_portion(R, c)
        return m, deep(R, c), m * R.u(.35, 1, n), None
    return f


def smears(mode):
    def f(R, bk, c):
        n = c.n
        ang = R.u(-.25, .25, n) + R.t(c.rs.randint(0, 4, n) * 1.5708) if mode != "slant" else R.u(0, 6.28, n)
        x, y = turn(c.GU, c.GV, ang, 1., 0, 0)
        if mode == "curved":
            y = y + R.u(-.5, .5, n) * x * x
        if mode == "grainy":
            f = R.field(bk, bk.flatrank, "grain", x * .08, y, .7, 1.8)
            m = smooth(0, .01, f - R.u(.95, .98, n)) * patch(R, bk, c, .45, .85, .2, .7)
        else:
            L = R.logu(.15, .8, n)
            r = R.logu(.006, .022, n)
            m, s = streaks(R, x, y, L, r * R.u(3.5, 12, n), R.u(.25, .75, n), r * .4, r, c.px)
            m = m * (1 - s * R.u(.1, .8, n))
            if mode == "few":
                m = m * patch(R, bk, c, .2, .6)
        m = m * one_portion(R, c)
        return m, deep(R, c), m * R.u(.4, .95, n), None
    return f


def white(mode):
    def f(R, bk, c):
        n, px = c.n, c.px
        r = R.logu(.006, .022, n)
        st, wb = 1., .08
        if mode == "rice":
            r, st = R.logu(.015, .05, n), 2.4
        if mode == "crumb":
            r, wb = R.logu(.012, .045, n), .22
        if mode == "gravel":
            g = R.field(bk, bk.flatrank, "grain", c.GU, c.GV, .3, 1.0)
            m = smooth(0, .01, g - R.u(.94, .985, n)) * patch(R, bk, c, .2, .7)
            h = m * .012
        else:
            m, lx, ly, d, on, q = dots(R, c.GU, c.GV, r * R.logu(3, 11, n), R.u(.15, .8, n), r * R.u(.25, .7, n), r, px, wb, st)
            h = on * (1 - d * d).clamp_min(0).sqrt() * r * .25
            if mode == "drift":
                m = m * patch(R, bk, c, .4, .85)
        w = R.t(c.rs.uniform(.86, 1., (n, 1)) * [[1, 1, .97]])
        return m, w.expand_as(c.col), m * R.u(.55, 1, n), h * R.coin(.6, n)
    return f


def veins(mode):
    def f(R, bk, c):
        n = c.n
        wx = R.field(bk, bk.soft, "swirl", c.GU, c.GV, .2, .8) - .5
        wy = R.field(bk, bk.soft, "swirl", c.GU, c.GV, .2, .8) - .5
        k = R.u(.1, .6, n)
        x, y = c.GU + wx * k, c.GV + wy * k
        wid = R.logu(.5, 1.6, n)
        if mode == "photo":
            g = R.field(bk, bk.rank, "vein", x, y, .15, .5)
            inv = R.coin(.5, n)
            g = torch.where(inv > 0, 1 - g, g)
            m = smooth(0, .12, g - R.u(.82, .93, n))
        elif mode == "cells":
            _, e, _ = cells(R, x, y * R.u(.6, 1.2, n), R.logu(.2, .55, n))
            m = (1 - smooth(.01, .13, e / wid)) * smooth(.12, .5, R.field(bk, bk.rank, "cloud", x, y, .3, .9))
        elif mode == "ridge":
            g = R.field(bk, bk.soft, "swirl", x, y, .25, .9)
            m = 1 - smooth(.008, .05, (torch.remainder(g * 3, 1) - .5).abs() / wid)
        else:
            z = torch.sin(x * R.u(3, 9, n) + 4 * wy) + torch.sin(y * R.u(3, 9, n) + 5 * wx)
            z2 = torch.sin(x * R.u(5, 12, n) + y * R.u(5, 12, n))
            m = torch.maximum(1 - smooth(.03, .22, z.abs() / wid), .8 * (1 - smooth(.02, .2, (z2 + z * .5).abs() / wid)))
        m = m * (.35 + .65 * patch(R, bk, c, .05, .4))
        mn = c.col.mean(1, keepdim=True)
        clear = (mn + (c.col - mn) * R.u(1.0, 1.7, n)) * R.u(.55, .88, n)
        lite = R.coin(.12, n)
        rgb = torch.where(lite > 0, (c.col * .8 + .2), clear).clamp(0, 1)
        return m, rgb, m * R.u(.25, .85, n), -m * .003 * R.coin(.4, n)
    return f


def crackle(mode):
    def f(R, bk, c):
        n = c.n
        x, y = c.GU + .04 * wob(R, bk, c, 1), c.GV
        if mode == "photo":
            g = R.field(bk, bk.flatrank, "cell", x, y, .35, 1.3)
            m = 1 - smooth(0, .06, g - R.u(.06, .16, n))
        else:
            size = R.logu(.045, .16, n)
            w1 = R.field(bk, bk.hp, "cloud", x, y, .3, 1.) * size * .12
            _, e, _ = cells(R, x + w1, y - w1, size, 1.)
            m = 1 - smooth(.0, .11, e / R.u(.5, 1.2, n))
            if mode == "double":
                _, e2, _ = cells(R, x, y, size * .45)
                m = torch.maximum(m, .55 * (1 - smooth(.0, .12, e2)))
            if mode == "broken":
                m = m * smooth(.25, .5, R.field(bk, bk.rank, "cloud", x, y, .4, 1.2))
        lum = c.col.mean(1, keepdim=True)
        pale = smooth(.35, .7, lum) if mode != "all" else torch.ones_like(lum)
        m = m * torch.maximum(pale, R.coin(.35, n)) * (.3 + .7 * patch(R, bk, c, .0, .55))
        mn = lum
        rgb = ((mn + (c.col - mn) * 1.5) * R.u(.45, .85, n)).clamp(0, 1)
        rgb = torch.where(R.coin(.15, n) > 0, c.col * .5 + .5, rgb)
        return m, rgb, m * R.u(.3, 1, n), -m * R.u(0, .008, n)
    return f


def powder(mode):
    def f(R, bk, c):
        n = c.n
        g = R.field(bk, bk.rank, "cloud", c.GU, c.GV, .2, .8)
        fine = R.field(bk, bk.hp, "grain", c.GU, c.GV, .6, 2.)
        soft = R.u(.15, .6, n)
        ed = torch.exp(-c.edge.clamp_min(0) / R.logu(.04, .3, n))
        upper = smooth(.2, -1, c.V / c.b)
        side_w = c.side
        if mode == "edge":
            m = ed * smooth(0, .5, g - R.u(0, .4, n))
        elif mode == "top":
            m = torch.maximum(side_w, upper) * smooth(0, 1, (g - R.u(.0, .45, n)) / soft)
        elif mode == "patch":
            m = smooth(0, 1, (g - R.u(.4, .75, n)) / soft)
        elif mode == "frost":
            v = R.field(bk, bk.flatrank, "vein", c.GU, c.GV, .3, 1.1)
            m = smooth(.45, .95, v) * smooth(0, .4, g - R.u(.1, .6, n)) + .25 * ed
        else:
            m = (.45 + .55 * smooth(0, .6, g - R.u(0, .3, n))) * torch.maximum(side_w, .6 + .4 * ed)
        m = (m * (1 + .16 * fine)).clamp(0, 1)
        w = R.t(c.rs.uniform(.84, .97, (n, 1)) * [[1, 1, 1]] + c.rs.normal(0, .012, (n, 3)))
        return m, w.expand_as(c.col), m * R.u(.3, .9, n), m * fine * .003
    return f


def ring(mode):
    def f(R, bk, c):
        n = c.n
        p = R.u(2, 4, n)
        cx, cy = R.u(-.15, .15, n) * c.a, R.u(-.15, .15, n) * c.b
        if mode == "shift":
            cx, cy = R.u(-.55, .55, n) * c.a, R.u(-.5, .5, n) * c.b
        q = (((c.U - cx).abs() / c.a) ** p + ((c.V - cy).abs() / c.b) ** p + 1e-6) ** (1 / p)
        q = q + R.u(.0, .3, n) * (R.field(bk, bk.soft, "cloud", c.U, c.V, .15, .5) - .5)
        rad, s = R.u(.35, .82, n), R.logu(.03, .22, n)
        disc = smooth(0, 1, (rad + s / 2 - q) / s)
        line = torch.exp(-((q - rad) / (s * .6 + .02)) ** 2)
        if mode == "line":
            m = torch.maximum(line, disc * .35)
        elif mode == "double":
            m = torch.maximum(disc * .7, torch.exp(-((q - rad * .6) / .06) ** 2) * .9)
        elif mode == "core":
            m = disc * (.4 + .6 * smooth(1.05, .1, q / rad))
        else:
            m = disc
        mn = c.col.mean(1, keepdim=True)
        rgb = ((mn + (c.col - mn) * R.u(1.1, 1.8, n)) * R.u(.55, .88, n)).clamp(0, 1)
        return m, rgb, m * R.u(.4, 1, n), None
    return f


def orange(mode):
    def f(R, bk, c):
        n = c.n
        x, y = c.GU + .05 * wob(R, bk, c, 1), c.GV + .05 * wob(R, bk, c, 1)
        r = R.logu(.012, .1, n)
        if mode == "freckle":
            r = R.logu(.005, .02, n)
        cell = r * R.u(3, 9, n)
        m, lx, ly, d, on, q = dots(R, x, y, cell, R.u(.12, .6, n), r * .25, r, c.px, .14)
        core = on * smooth(1.05, R.t(c.rs.uniform(.1, .8, n)), d)
        if mode == "halo":
            core = torch.maximum(core, on * smooth(2., .7, d) * R.u(.2, .5, n))
        if mode == "blotch":
            g = R.field(bk, bk.rank, "cloud", c.GU, c.GV, .15, .5)
            g2 = R.field(bk, bk.rank, "grain", c.GU, c.GV, .3, .8)
            core = smooth(0, .2, g * .8 + g2 * .2 - R.u(.72, .86, n))
        if mode == "edge":
            core = core * torch.exp(-c.edge.clamp_min(0) / R.u(.06, .25, n))
        if mode == "freckle":
            core = torch.maximum(m, core) * patch(R, bk, c, .2, .8)
        rgb = R.t([[.75, .4, .08]] + c.rs.normal(0, 1, (n, 3)) * [[.13, .1, .05]]).clamp(.02, 1)
        rgb = rgb * (.55 + .45 * c.col.mean(1, keepdim=True).clamp_min(.4))
        return core, rgb, core * R.u(.3, .9, n), None
    return f


LOOKS = {
    0: [specks(m) for m in ("fine", "plain", "two", "cluster", "gravel", "halo")],
    1: [smears(m) for m in ("plain", "slant", "curved", "grainy", "few")],
    2: [white(m) for m in ("pin", "rice", "crumb", "gravel", "drift")],
    3: [veins(m) for m in ("photo", "cells", "ridge", "waves")],
    4: [crackle(m) for m in ("photo", "plain", "double", "broken", "all")],
    5: [powder(m) for m in ("edge", "top", "patch", "frost", "full")],
    6: [ring(m) for m in ("disc", "line", "shift", "double", "core")],
    7: [orange(m) for m in ("dot", "halo", "blotch", "freckle", "edge")],
}
