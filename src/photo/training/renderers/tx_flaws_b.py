"""Findings 9 to 16, same form as in flaws_a."""
import torch
from tx_bank import smooth, turn
from tx_flaws_a import patch, wob
from tx_marks import cells, dots, lines, wander


def darker(R, c, lo, hi, sat=1.3):
    mn = c.col.mean(1, keepdim=True)
    return ((mn + (c.col - mn) * sat) * R.u(lo, hi, c.n)).clamp(0, 1)


def holes(mode):
    def f(R, bk, c):
        n, px = c.n, c.px
        if mode == "gravel":
            g = R.field(bk, bk.flatrank, "grain", c.GU, c.GV, .25, .9)
            m = smooth(0, .015, R.u(.012, .06, n) - g) * patch(R, bk, c, .1, .7)
            return m, darker(R, c, .2, .6), m * R.u(.6, 1, n), -m * .02
        r = R.logu(.006, .024, n)
        if mode == "crater":
            r = R.logu(.025, .07, n)
        st = 1.8 if mode == "oval" else 1.
        m, lx, ly, d, on, q = dots(R, c.GU, c.GV, r * R.logu(2.5, 10, n), R.u(.1, .75, n), r * R.u(.2, .6, n), r, px, .06 if mode != "oval" else .12, st)
        if mode == "cluster":
            k = patch(R, bk, c, .4, .85)
            m, on = m * k, on * k
        side = (lx * c.lu + ly * c.lv)
        lit = on * (smooth(.75, 1., d) * smooth(1.45, 1.05, d)) * smooth(0, .8, -side)
        shade = m * (.55 + .45 * smooth(-.6, .8, side))
        rgb = darker(R, c, .15, .6)
        w = lit * R.u(.3, .9, n)
        al = shade * R.u(.6, 1, n)
        rgb = (rgb * al + (c.col * .4 + .6) * w) / (al + w).clamp_min(1e-4)
        return torch.maximum(m, .5 * lit), rgb, (al + w).clamp(max=1), None
    return f


def crack(mode):
    def f(R, bk, c):
        n = c.n
        onside = c.onside
        L, A = c.a, c.b
        fx, fy = c.U, c.V
        if mode in ("across",):
            fx, fy = c.V, c.U
            L, A = c.b, c.a
        flip = (c.a < c.b).float()
        if mode != "across":
            fx, fy = torch.where(flip > 0, c.V, c.U), torch.where(flip > 0, c.U, c.V)
        # on the swept face the middle of the depth is the line
        fx = torch.where(onside > 0, c.GU - 3.7, fx)
        fy = torch.where(onside > 0, c.GV - 1.3 - c.depth * .65, fy)
        ang = {"corner": .8, "slant": .45}.get(mode, .1)
        x, y = turn(fx, fy, R.u(-ang, ang, n), 1., 0, R.u(-.2, .2, n) * torch.where(onside > 0, c.depth, A))
        path = wander(R, x, R.u(.01, .07, n), 3.) + .05 * wob(R, bk, c, 1)
        dist = y - path
        w0 = R.logu(.008, .05, n)
        vary = (.55 + wander(R, x, .35, 4.)).clamp_min(.0)
        lo, ln = R.u(-1.2, .4, n) * 1., R.u(.6, 2.6, n)
        taper = smooth(0, .2, x - lo) * smooth(0, .3, lo + ln - x)
        w = w0 * vary * taper
        m = (.5 + (w - dist.abs()) / c.px.clamp_min(w0 * .25)).clamp(0, 1) * (w / c.px * 2).clamp(0, 1)
        if mode == "photo":
            g = R.field(bk, bk.flatrank, "cell", c.GU, c.GV, .12, .4)
            band = smooth(.22, .05, dist.abs() / R.u(.5, 1.5, n))
            m = torch.maximum(m * .7, smooth(0, .04, R.u(.06, .13, n) - g) * band * taper)
        if mode == "branch":
            d2 = y - path * .5 - (x - R.u(-.4, .4, n)).clamp_min(0) * R.u(-.9, .9, n) - wander(R, x, .02, 6.)
            x0 = R.u(-.4, .4, n)
            m2 = (.5 + (w * .6 - d2.abs()) / c.px).clamp(0, 1) * smooth(0, .05, x - x0) * smooth(.6, .2, x - x0) * (w / c.px * 2).clamp(0, 1)
            m = torch.maximum(m, m2)
        lip = torch.exp(-((dist.abs() - w) / (w0 * .8)) ** 2) * taper * (1 - m) * (vary > .1)
        rgb = darker(R, c, .08, .5, 1.1)
        h = lip * w0 * R.u(.2, 1.2, n)
        return torch.maximum(m, .25 * lip * (h > .003)), rgb, m * R.u(.7, 1, n), h - m * .01
    return f


def brown(mode):
    def f(R, bk, c):
        n = c.n
        d = c.edge.clamp_min(0)
        g = R.field(bk, bk.soft, "cloud", c.U, c.V, .15, .6)
        d = (d + R.u(0, .16, n) * (g - .5)).clamp_min(0)
        if mode == "oneside":
            a = R.u(0, 6.28, n)
            q = (c.U / c.a * torch.cos(a) + c.V / c.b * torch.sin(a))
            d = torch.minimum(d * 1.8 + .1, (1.1 - q).clamp_min(0) * torch.minimum(c.a, c.b))
        w = R.logu(.07, .4, n) * torch.minimum(c.a, c.b)
        if mode == "step":
            m = smooth(1.15, .85, d / w) * (.55 + .45 * smooth(1, 0, d / w))
        elif mode == "rim":
            m = torch.exp(-d / (w * .35))
        elif mode == "blotch":
            g2 = R.field(bk, bk.rank, "cloud", c.U, c.V, .3, .9)
            m = torch.exp(-(d / w) ** 1.3) * smooth(.0, .55, g2 + .25 - d / w * .2)
        else:
            m = torch.exp(-(d / w) ** R.u(.9, 2, n))
        m = m.clamp(0, 1)
        k = R.t(c.rs.rand(n))
        rgb = R.t([[.8, .6, .36]]).expand(n, 3, 1, 1) * (1 - k) + R.t([[.24, .12, .06]]) * k
        rgb = (rgb + R.t(c.rs.normal(0, .03, (n, 3)))).clamp(.02, 1) * (.5 + .5 * c.col)
        return m, rgb, m * R.u(.35, .95, n), None
    return f


def bled(mode):
    def f(R, bk, c):
        n, nn = c.n, c.nn
        k = (1 + torch.floor(R.u(0, .999, n) * (nn - 1).clamp_min(1))).clamp(max=5)
        every = R.coin(.35, n)
        k = torch.where(every > 0, torch.floor(c.Fv + .5).clamp(min=torch.ones_like(nn), max=nn.clamp_min(2) - 1), k.expand_as(c.Fv))
        d = c.Fv - k
        way = R.coin(.5, n) * 2 - 1
        reach = R.u(.25, .8, n)
        g = R.field(bk, bk.rank, "cloud", c.U, c.V, .3, .9)
        if mode == "finger":
            h = R.field(bk, bk.hp, "line", c.U * 1.6, c.V * .5, .3, .9)
            reach = reach * (.65 + .3 * h).clamp(.1, 1.4)
        if mode == "patchy":
            reach = reach * (.15 + 1.2 * g)
        e = d * way
        m = smooth(-.02, .04, e) * smooth(1, 0, e / reach.clamp_min(.03))
        if mode == "both":
            m = smooth(1, 0, d.abs() / (reach * .7))
        if mode == "part":
            m = m * patch(R, bk, c, .15, .6)
        src = torch.where(way > 0, k - 1, k)
        rgb = 0
        for i in range(6):
            rgb = rgb + (src == i).float() * c.pal[:, i].view(n, 3, 1, 1)
        if mode == "both":
            a = 0
            for i in range(6):
                a = a + ((k - 1 == i).float() + (k == i).float()) * .5 * c.pal[:, i].view(n, 3, 1, 1)
            rgb = a
        m = m * (.75 + .25 * g)
        return m, rgb, m * R.u(.5, .95, n), None
    return f


def drag(mode):
    def f(R, bk, c):
        n = c.n
        a = R.t(c.rs.randint(0, 2, n) * 1.5708) + R.u(-.12, .12, n)
        x, y = turn(c.U, c.V, a, 1., 0, 0)
        if mode == "arc":
            y = y + R.u(-.15, .15, n) * x * x
        gap = {"few": R.u(.2, .5, n), "bundle": R.logu(.012, .05, n)}.get(mode, R.logu(.05, .2, n))
        if mode == "photo":
            g = R.field(bk, bk.hp, "line", x * .02, y, .5, 1.3)
            h1 = R.field(bk, bk.hp, "grain", x * .015, y * 1.3, .3, 1.)
            m = smooth(.7, 1.5, h1 + .4 * g) * patch(R, bk, c, .1, .5)
            off = h1
        else:
            wid = R.logu(.0022, .008, n)
            m, off, along, on = lines(R, x, y, gap, R.u(.35, .95, n), wid, c.px)
            if mode == "bundle":
                m = m * smooth(R.u(.1, .5, n), 0., (y - R.u(-.4, .4, n) * c.b).abs())
            if mode == "grain":
                head = on * smooth(1.6, 1., (off ** 2 + ((along - .02) / wid) ** 2).clamp_min(0).sqrt() / 3)
                m = torch.maximum(m, head)
        lite = R.coin(.35, n)
        rgb = torch.where(lite > 0, c.col * .6 + .4, darker(R, c, .35, .8))
        return m, rgb, m * R.u(.3, .9, n), -m * R.u(.001, .008, n)
    return f


def gap(mode):
    def f(R, bk, c):
        n, nn = c.n, c.nn
        k = (1 + torch.floor(R.u(0, .999, n) * (nn - 1).clamp_min(1))).clamp(max=5)
        gx, gy = torch.zeros_like(c.Fv), torch.zeros_like(c.Fv)
        gx[..., 1:-1] = (c.Fv[..., 2:] - c.Fv[..., :-2]) / 2
        gy[:, :, 1:-1] = (c.Fv[:, :, 2:] - c.Fv[:, :, :-2]) / 2
        slope = (gx * gx + gy * gy).sqrt().clamp_min(1e-4) / (c.px * 1.25)
        d = (c.Fv - k) / slope
        x = torch.where(gx.abs() < gy.abs(), c.U, c.V)
        w0 = R.logu(.006, .03, n)
        vary = (.7 + wander(R, x, .22, 5.)).clamp_min(.08)
        if mode == "partial":
            s = R.coin(.5, n) * 2 - 1
            vary = vary * smooth(-.5, .9, x * s + R.u(-.6, .4, n))
        if mode == "crumbly":
            vary = (vary + .6 * R.field(bk, bk.hp, "grain", c.U, c.V, .8, 2.)).clamp_min(0)
        if mode == "inner":
            vary = vary * smooth(.9, .3, (x - R.u(-.4, .4, n)).abs())
        w = w0 * vary
        m = (.5 + (w - d.abs()) / c.px).clamp(0, 1) * (w / c.px * 2).clamp(0, 1)
        ledge = smooth(0, 1, 1 - (d.abs() - w) / (w0 * 2.5)) * (d > 0) * (1 - m) * (vary > .15)
        h = ledge * w0 * R.u(.0, 1., n) - m * .01
        if mode == "ledge":
            m = torch.maximum(m, ledge * .8)
        rgb = darker(R, c, .05, .45, 1.)
        return torch.maximum(m, ledge * .2), rgb, m * R.u(.6, 1, n), h
    return f


def wrinkle(mode):
    def f(R, bk, c):
        n = c.n
        x, y = c.GU, c.GV
        if mode == "folds":
            x, y = turn(x, y, R.u(-.5, .5, n), 1., 0, 0)
            x = x * R.u(.15, .4, n)
        wx = R.field(bk, bk.soft, "swirl", x, y, .3, .8) - .5
        if mode == "skin":
            _, e, idn = cells(R, x + .15 * wx, y * 1.2, R.logu(.05, .15, n), 1.)
            h = smooth(0, .35, e) - .5
        elif mode == "brain":
            g = R.field(bk, bk.soft, "swirl", x + .1 * wx, y, .7, 1.6)
            h = torch.sin(g * R.u(14, 30, n)) * .5
        elif mode == "folds":
            h = torch.sin(y * R.u(22, 60, n) + 7 * wx + wander(R, x * 3, .8, 2.)) * .5
        else:
            h = R.field(bk, bk.flatrank, "wrinkle", x + .05 * wx, y, .3, 1.) - .5
        area = patch(R, bk, c, -.2, .6, .1, .35)
        line = smooth(.0, -.45, h)
        m = area * (.65 + .35 * smooth(.0, .45, h.abs()))
        return m, darker(R, c, .6, .9), line * area * R.u(.1, .6, n), h * area * R.logu(.006, .03, n)
    return f


def dimple(mode):
    def f(R, bk, c):
        n = c.n
        x, y = turn(c.GU, c.GV, R.u(-.15, .15, n), 1., 0, 0)
        s = R.logu(.06, .2, n)
        if mode == "lattice":
            sh = R.coin(.5, n) * .5
            iy = torch.floor(y / s)
            fx = torch.remainder(x / s + sh * torch.remainder(iy, 2), 1) - .5
            fy = y / s - iy - .5
            d = (fx * fx + fy * fy).sqrt() / R.u(.3, .46, n)
            m = smooth(1, .8, d)
            h = -(1 - d * d).clamp_min(0)
        elif mode == "random":
            m, lx, ly, d, on, q = dots(R, x, y, s, R.u(.3, .9, n), s * .1, s * .4, c.px, .08)
            h = -on * (1 - d * d).clamp_min(0)
            m = on * smooth(1.05, .8, d)
        elif mode == "crease":
            m = h = 0
            for i in range(4):
                u, v = turn(x, y, R.u(0, 6.28, n), 1., 0, 0)
                q = (v - R.u(-.7, .7, n) - wander(R, u, .02, 3.)) / R.logu(.006, .02, n)
                on = R.coin(.75, n) * smooth(-.1, .1, u - R.u(-1, .3, n))
                m = torch.maximum(on * torch.exp(-q * q), m * torch.ones_like(q))
                h = h - on * torch.exp(-q * q) + .5 * on * torch.exp(-(q - 1.6) ** 2)
        elif mode == "liner":
            g = R.field(bk, bk.flatrank, "wrinkle", x, y, .15, .5)
            h = (g - .5) * 1.2
            m = smooth(.1, .4, h.abs())
        else:
            fx, fy = torch.remainder(x / s, 1) - .5, torch.remainder(y / s * R.u(.8, 1.2, n), 1) - .5
            d = torch.maximum(fx.abs(), fy.abs())
            h = -smooth(.42, .34, d)
            m = -h
        area = patch(R, bk, c, -.3, .5, .1, .35)
        mk = m * area * R.u(0, .5, n)
        return m * area, darker(R, c, .6, .9), mk * .5, h * area * s * R.logu(.1, .5, n)
    return f


LOOKS = {
    8: [holes(m) for m in ("plain", "crater", "oval", "cluster", "gravel")],
    9: [crack(m) for m in ("long", "across", "slant", "photo", "branch", "corner")],
    10: [brown(m) for m in ("soft", "step", "rim", "blotch", "oneside")],
    11: [bled(m) for m in ("plain", "finger", "patchy", "both", "part")],
    12: [drag(m) for m in ("few", "bundle", "plain", "arc", "photo", "grain")],
    13: [gap(m) for m in ("full", "partial", "crumbly", "inner", "ledge")],
    14: [wrinkle(m) for m in ("skin", "brain", "folds", "photo")],
    15: [dimple(m) for m in ("lattice", "random", "crease", "liner", "waffle")],
}
