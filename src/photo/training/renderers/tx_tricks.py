"""Things that deceive: exfoliants, mica, glitter, stamps, spoon waves, wire marks, botanicals, salt, dew, lint, labels."""
import numpy as np
import torch
from tx_bank import fetch, samp, smooth, turn
from tx_marks import cells, dots, wander

BASE = ["exfol", "micaline", "shimmer", "stamp", "spoon", "wire", "oats"]
OVER = ["glitter", "botanical", "salt", "dew", "lint", "label", "petals"]


def base(name, R, bk, c):
    """Part of the soap itself: returns colour, blend, height."""
    n, rs = c.n, R.rs
    z = torch.zeros_like(c.U)
    if name == "exfol":
        r = R.logu(.006, .014, n)
        m = dots(R, c.GU, c.GV, r * R.u(3, 9, n), R.u(.2, .9, n), r * .7, r, c.px, .08)[0]
        k = rs.choice(3, n)
        col = R.t(np.array([[.13, .15, .2], [.22, .13, .07], [.35, .25, .12]])[k] * rs.uniform(.5, 1.3, (n, 1)))
        return col.expand_as(c.col), m * R.u(.6, 1, n), m * .004
    if name == "oats":
        r = R.logu(.02, .06, n)
        m = dots(R, c.GU, c.GV, r * R.u(2.6, 6, n), R.u(.2, .8, n), r * .4, r, c.px, .3, 1.7)[0]
        col = R.t(np.array([[.78, .66, .46]]) * rs.uniform(.6, 1.15, (n, 1)) + rs.normal(0, .03, (n, 3)))
        return col.expand_as(c.col), m * R.u(.3, .8, n), m * .004
    if name == "micaline":
        d = (c.Fv - torch.floor(c.Fv + .5)).abs() + 1e-3
        k = torch.floor(c.Fv + .5)
        hp = R.field(bk, bk.hp, "grain", c.U, c.V, 1., 2.5)
        m = smooth(R.u(.02, .07, n), .0, d) * ((k > .5) & (k < c.nn - .5)).float() * (.6 + .4 * hp).clamp(0, 1)
        col = R.t(np.array([[.8, .6, .2], [.75, .75, .78], [.7, .38, .22], [.25, .2, .18]])[rs.choice(4, n)])
        return (col * (1 + .35 * hp)).clamp(0, 1).expand_as(c.col), m * R.u(.5, 1, n), z
    if name == "shimmer":
        hp = R.field(bk, bk.hp, "grain", c.GU, c.GV, 1., 3.)
        s = R.field(bk, bk.soft, "swirl", c.GU, c.GV, .2, .7)
        m = (hp - R.u(.6, 1.8, n)).clamp(0, 1) * smooth(.3, .8, s)
        return (c.col * .3 + .75).clamp(0, 1), m * R.u(.3, .9, n), z
    if name == "stamp":
        o = fetch(bk.obj, rs.choice(bk.og["any"], n))[:, 3:]
        w = torch.minimum(c.a, c.b) * R.u(.6, 1.1, n)
        u, v = turn(c.U - R.u(-.15, .15, n) * c.a, c.V, R.t(rs.normal(0, .1, n)), 1., 0, 0)
        ins = samp(o, u / w * .5 + .5, v / w * .5 + .5, "zeros") * (1 - c.side)
        ring = smooth(.04, .02, ((u * u + v * v).sqrt() - w * .95).abs()) * R.coin(.4, n) * (1 - c.side)
        m = torch.maximum(ins, ring)
        gold = R.coin(.2, n)
        return R.t([[.75, .55, .2]]).expand_as(c.col), m * gold * .8, -m * R.u(.01, .03, n)
    if name == "spoon":
        wx = R.field(bk, bk.soft, "swirl", c.GU, c.GV, .2, .5)
        h = R.field(bk, bk.soft, "swirl", c.GU + .3 * wx, c.GV, .4, 1.0)
        on = torch.maximum(c.topw, R.coin(.15, n) * c.topw)
        return c.col, z, (h - .5) * R.u(.1, .4, n) * on
    y = turn(c.U, c.V, R.t(rs.randint(0, 2, n) * 1.5708) + R.u(-.3, .3, n), 1., 0, 0)
    q = y[1] + R.u(-.1, .1, n) * y[0] ** 2
    h = torch.sin(q * R.logu(40, 130, n) + wander(R, y[1], 1., 3.)) * (1 - c.side)
    return c.col, z, h * R.logu(.0004, .0016, n)


def over(name, R, bk, c):
    """Lies on the soap: returns colour, blend, opaque-to-flaws mask, and whether it is no soap (label)."""
    n, rs = c.n, R.rs
    if name in ("botanical", "petals"):
        big = name == "petals"
        r = R.logu(.05, .16, n) if not big else R.logu(.15, .4, n)
        m, lx, ly, d, on, q = dots(R, c.GU, c.GV, r * R.u(2.05, 5, n), R.u(.2, .9, n), r * .6, r, c.px)
        o = fetch(bk.obj, rs.choice(bk.og["flower" if big or rs.rand() < .5 else "herb"], n))
        a = q * 6.28
        u, v = lx * torch.cos(a) + ly * torch.sin(a), ly * torch.cos(a) - lx * torch.sin(a)
        s = samp(o, u * .5 + .5, v * .5 + .5, "zeros")
        sh = smooth(1.1, .3, d) * on * .35 * c.topw
        al = s[:, 3:] * on * c.topw
        col = s[:, :3] * R.u(.5, 1.1, n)
        tot = (al + sh * (1 - al)).clamp(0, 1)
        return col * al / tot.clamp_min(1e-3), tot, al, 0
    if name == "glitter":
        r = R.logu(.004, .01, n)
        m, lx, ly, d, on, q = dots(R, c.GU, c.GV, r * R.u(2.5, 7, n), R.u(.2, .8, n), r * .5, r, c.px)
        col = torch.where(R.coin(.5, n) > 0, torch.cat([q, (q * 7) % 1, (q * 13) % 1], 1) * .5 + .5, R.t([[1., .85, .5]]) * (.4 + 1.2 * q)).clamp(0, 1)
        return col, m * c.topw * smooth(.2, .5, q), m * c.topw, 0
    if name == "salt":
        r = R.logu(.012, .04, n)
        m, lx, ly, d, on, q = dots(R, c.GU, c.GV, r * R.u(2.2, 5, n), R.u(.2, .8, n), r * .5, r, c.px, .2)
        f = (.75 + .3 * (-lx * c.lu - ly * c.lv)).clamp(.3, 1)
        sh = on * smooth(1.6, .9, ((lx - c.lu * -.5) ** 2 + (ly - c.lv * -.5) ** 2).sqrt()) * .4 * (1 - m)
        al = (m * .9 + sh) * c.topw
        return (f * m / (m + sh).clamp_min(1e-3)).expand_as(c.col), al, m * c.topw, 0
    if name == "dew":
        r = R.logu(.012, .05, n)
        m, lx, ly, d, on, q = dots(R, c.GU, c.GV, r * R.u(2.2, 6, n), R.u(.15, .9, n), r * .25, r, c.px, .05)
        k = lx * c.lu + ly * c.lv
        hi = smooth(.32, .1, ((lx - c.lu * .5) ** 2 + (ly - c.lv * .5) ** 2).sqrt())
        col = (c.col * (1 - .45 * k) * R.u(.7, .95, n)).clamp(0, 1) * (1 - hi) + hi
        return col, m * R.u(.5, .95, n), m * 0., 0
    if name == "lint":
        m = 0
        for i in range(4):
            u, v = turn(c.U, c.V, R.u(0, 6.28, n), 1., 0, 0)
            p = v - R.u(-.6, .6, n) - wander(R, u, .05, 3.)
            on = smooth(0, .05, u - R.u(-.9, .5, n)) * smooth(.0, -.05, u - R.u(-.2, .9, n)) * R.coin(.7, n)
            m = m + smooth(1.2, .3, p.abs() / c.px) * on
        col = R.t(np.where(rs.rand(n, 1) < .5, .1, .95) + rs.normal(0, .1, (n, 3))).clamp(0, 1)
        return col.expand_as(c.col), m.clamp(0, 1) * R.u(.3, .8, n), m * 0., 0
    # paper band or sticker with dashes for writing
    axis = R.coin(.5, n)
    p, q = torch.where(axis > 0, c.U, c.V), torch.where(axis > 0, c.V, c.U)
    w = R.u(.18, .55, n) * torch.where(axis > 0, c.a, c.b)
    band = smooth(c.px, -c.px, (p - R.u(-.2, .2, n)).abs() - w)
    st = R.coin(.35, n)
    rr = torch.maximum(((p) / w).abs(), (q / (w * R.u(.7, 1.4, n))).abs())
    stick = smooth(.02, -.02, rr - 1) * (1 - c.side)
    m = torch.where(st > 0, stick, band)
    base_c = R.t(np.where(rs.rand(n, 1) < .6, rs.uniform(.75, 1, (n, 1)) + rs.normal(0, .03, (n, 3)), rs.uniform(.1, 1, (n, 3)))).clamp(0, 1)
    hp = R.field(bk, bk.hp, "all", c.GU, c.GV, .3, 1.)
    ln = R.logu(.03, .1, n)
    tab = R.table(n, 2)
    from tx_bank import lookup
    iy, ix = torch.floor(q / ln), torch.floor(p / (ln * .45))
    t = lookup(tab, ix, iy)
    ink = ((torch.remainder(q / ln, 1) - .5).abs() < .25 * t[:, 1:2] + .05).float() * (t[:, :1] < .72) * (p.abs() < w * .75).float() * ((torch.remainder(p / ln / .45, 1) - .5).abs() < .4)
    ic = R.t(rs.uniform(0, .5, (n, 3)))
    col = base_c * (1 + .03 * hp) * (1 - ink * .8) + ic * ink * .8
    return col.clamp(0, 1), m, m, 1
