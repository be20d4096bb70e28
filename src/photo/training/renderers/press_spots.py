"""Flaws made of spots, streaks, veins and networks within the soap. Each changes st and returns its mask."""
import torch
from press_noise import sstep, mix, rot2


def pick(c, *v):
    """one value a picture, by its variant (v: numbers or tensors [m,1,1,1])"""
    out = torch.zeros_like(c.sev)
    for i, a in enumerate(v):
        out = torch.where(c.var == i, out * 0 + a, out)
    return out


def region(c, f=.35, lo=0.):
    """where a flaw of this extent lies: 1 in, 0 out"""
    nz = c.nz.flat(c.uv * f + 31, 2, 1, 3.3, 2)
    e = c.ext.clamp_min(lo)
    return torch.where(e > .85, torch.ones_like(nz), sstep(-.12, .12, nz + (e - .5) * 1.3))


def paint(st, m, col=None, rough=None, h=None, tr=None):
    if col is not None:
        st["alb"] = mix(st["alb"], col, m)
    if rough is not None:
        st["rough"] = mix(st["rough"], rough, m)
    if h is not None:
        st["h"] = st["h"] + h
    if tr is not None:
        st["tr"] = mix(st["tr"], tr, m)


PIG = [(.02, .04, .25), (.25, .03, .02), (.02, .14, .05), (.12, .03, .01), (.01, .01, .01), (.3, .02, .12), (.12, .02, .2), (.35, .2, .01), (.0, .12, .15)]


def pigment(c):
    p = torch.tensor(PIG, device=c.uv.device)
    return p[(c.u[:, 7] * len(PIG)).long().clamp_max(len(PIG) - 1)][:, :, None, None]


def spots(c, cell, rad, dens, ragged=.3, stretch=None, ang=None):
    """soft spots: (mask, shape value d/r, rnd, vec in cm)"""
    uv = c.uv + .05 * ragged * c.nz.flat(c.uv * 7, 2, 2, 1.7)
    if stretch is not None:
        uv = rot2(uv, ang)
        uv = torch.cat([uv[:, :1] / stretch, uv[:, 1:]], 1)
    f1, f2, vec, rnd = c.nz.cells(uv / cell + 7.7)
    r = torch.maximum(rad * (.45 + 1.1 * rnd[:, 1:2] ** 2), .8 * c.px)
    d = f1 * cell * (1 + ragged * c.nz.flat(c.uv / r.clamp_min(.02).mean() * .7, 2, 1, .3, 1))
    on = (rnd[:, :1] < dens).float()
    aa = torch.maximum(.25 * r, .5 * c.px)
    return on * sstep(r + aa, r - aa, d), d / r + 9 * (1 - on), rnd, vec * cell, r


def coloured_specks(c, st):
    cell = pick(c, .45, .8, .22) * (.7 + .6 * c.us(0))
    rad = pick(c, .035, .06, .018) * (.7 + 1.0 * c.us(1)) * (.6 + .8 * c.sev)
    dens = .12 + .7 * c.sev * c.us(2)
    m, d, rnd, vec, r = spots(c, cell, rad, dens, .35)
    # comets: a faint tail drawn behind the dot
    a = c.us(3) * 6.28 + .5 * c.nz.flat(c.uv * .4, 1, 1, 5)
    al, ac = vec[:, :1] * torch.cos(a) + vec[:, 1:] * torch.sin(a), -vec[:, :1] * torch.sin(a) + vec[:, 1:] * torch.cos(a)
    ln = cell * .42
    tail = sstep(0, .02, al) * (1 - al / ln).clamp(0, 1) * torch.exp(-(ac / (r * (1 - .6 * al / ln).clamp(.3, 1))) ** 2) * (d < 8).float()
    m = torch.maximum(m, pick(c, .0, .75, .25) * tail)
    m = m * region(c, .4, .2) * (c.us(4) * .4 + .6)
    col = pigment(c) * (.5 + rnd[:, 2:3])
    paint(st, m, col)
    return m


def smears(c, st):
    a = c.us(0) * 3.14
    uv = c.uv + (.5 + .6 * c.us(1)) * c.nz.flat(c.uv * .3, 2, 2, 2.2)
    uv = rot2(uv, a)
    f = pick(c, 2.2, 1.0, 1.5) * (.7 + .6 * c.us(2))
    st_ = pick(c, 7., 4., 3.)
    v = c.nz.flat(torch.cat([uv[:, :1] * f / st_, uv[:, 1:] * f], 1) + 3, 3, 1, 8, 0, .6)
    th = .95 - .55 * c.sev * (.5 + c.us(3))
    m = sstep(th, th + pick(c, .12, .5, .25), v)
    fil = .6 + .4 * c.nz.flat(torch.cat([uv[:, :1] * 1.5, uv[:, 1:] * 14], 1), 2, 1, 4)
    m = m * fil.clamp(0, 1) * region(c, .3, .35) * (.55 + .4 * c.us(4))
    paint(st, m, mix(pigment(c) * 1.6, st["alb"] * .4, .3 * c.us(5)))
    return m * 1.4


def white_specks(c, st):
    cell = pick(c, .3, .9, 1.2) * (.7 + .6 * c.us(0))
    rad = pick(c, .022, .08, .13) * (.6 + .9 * c.us(1)) * (.6 + .8 * c.sev)
    m, d, rnd, vec, r = spots(c, cell, rad, .15 + .7 * c.sev, pick(c, .25, .8, .5).mean())
    reg = region(c, .4, .2)
    wet = sstep(1.9, 1.2, d) * pick(c, 0., 0., 1.) * reg
    paint(st, wet * .45, st["alb"] * .5, .22)
    m = m * reg
    g = .8 + .15 * c.nz.flat(c.uv * 20, 1)
    paint(st, m * (.6 + .4 * c.us(2)), torch.cat([g, g * .98, g * .93], 1).clamp(0, .95), .8, .012 * m * pick(c, 0, 1, 1.5))
    return m


def veins(c, st):
    f = pick(c, .9, .45, 1.6) * (.7 + .7 * c.us(0))
    q = c.uv * f + .55 * c.nz.flat(c.uv * f * .8 + 4, 2, 2, 6)
    n1 = c.nz.flat(q, 2, 1, 1.1, 0, .35).abs()
    n2 = c.nz.flat(q * 1.3 + 11, 2, 1, 4.1, 1, .35).abs()
    w = (.03 + .11 * c.sev) * (1 + .7 * c.nz.flat(c.uv * .7, 1, 1, 9)) * pick(c, 1, .8, 1.3)
    w = torch.maximum(w, f * c.px * .7)
    m = torch.maximum(sstep(w * 1.6, w * .5, n1), pick(c, 1, 0, 1) * sstep(w * 1.6, w * .5, n2))
    m = m * region(c, .3, .3)
    a = st["alb"]
    paint(st, m * (.35 + .5 * c.sev), (a ** 1.35) * .62, .25, -.004 * m, .9)
    return m


def crackle(c, st):
    f = pick(c, 3.2, 1.8, 5.5) * (.7 + .6 * c.us(0))
    q = c.uv + .22 * c.nz.flat(c.uv * 1.6, 2, 2, 2.6)
    f1, f2, vec, rnd = c.nz.cells(q * f)
    e = f2 - f1
    w = torch.maximum((.06 + .16 * c.sev) * (1 + .8 * c.nz.flat(c.uv * 1.2, 2, 1, 5)), 1.1 * f * c.px)
    m = sstep(w * 1.3, w * .35, e)
    reg = region(c, .3, .35)
    lum = st["alb"].mean(1, keepdim=True)
    pale = mix(torch.ones_like(lum), sstep(.12, .4, lum), c.us(3).round())
    reg = reg * pale
    a = st["alb"]
    isl = reg * (1 - m) * (.15 + .3 * c.us(4))
    paint(st, isl, (a * 1.25 + .08).clamp(0, .93))
    paint(st, m * reg * (.3 + .5 * c.sev), (a ** 1.4) * .6, .25, -.003 * m * reg, .9)
    return sstep(.2, .6, reg) * sstep(2.6 * w, 1.3 * w, e)


def orange_spots(c, st):
    cell = pick(c, 1.1, 2.6, 1.6) * (.7 + .6 * c.us(0))
    rad = pick(c, .09, .28, .16) * (.6 + .9 * c.us(1)) * (.6 + .7 * c.sev)
    m, d, rnd, vec, r = spots(c, cell, rad, .3 + .6 * c.sev, .6)
    reg = region(c, .3, .35)
    halo = sstep(pick(c, 1.9, 2.1, 2.6), .5, d) * reg
    oc = torch.cat([.55 + .2 * c.us(3), .2 + .1 * c.us(4), .03 + .03 * c.us(5)], 1)
    paint(st, halo * (.3 + .35 * c.sev), oc * (.6 + .5 * st["alb"].mean(1, keepdim=True)) + .15 * st["alb"])
    paint(st, m * reg * (.4 + .5 * c.sev), oc * .55, .28, -.006 * m * reg)
    return torch.maximum(m * reg, sstep(.25, .5, halo))


def pinholes(c, st):
    h = 0
    mm = 0
    reg = region(c, .4, .25)
    band = torch.exp(-((c.tops - .4) / .5) ** 2)
    reg = torch.where(c.var == 2, torch.maximum(reg * .3, band * c.cut).round() * 1., reg)
    for k, s in enumerate((1., .45)):
        cell = pick(c, .3, .75, .4) * (.7 + .6 * c.us(0)) * s
        rad = pick(c, .03, .085, .045) * (.6 + .9 * c.us(1)) * (.6 + .8 * c.sev) * s
        m, d, rnd, vec, r = spots(c, cell, rad, (.12 + .6 * c.sev) * (.7 if k else 1), .12)
        m = m * reg
        lo = torch.sum(vec * torch.stack([c.ldir[:, 0], c.ldir[:, 1]], 1)[:, :, None, None], 1, keepdim=True) / r
        a = st["alb"]
        shade = (.16 + .3 * (.5 - .5 * lo).clamp(0, 1))       # the lit side of a pit is the far one
        paint(st, m, a * shade, .7, -.03 * m * r / .05)
        rim = sstep(1.45, 1.1, d) * (1 - m) * reg * (-lo).clamp(0, 1) * .5
        paint(st, rim, (a * 1.35 + .04).clamp(0, .95))
        mm = torch.maximum(m, m * 0 + mm)
    return mm


def dimples(c, st):
    cell = pick(c, .5, .9, 1.3) * (.7 + .6 * c.us(0))
    where = torch.maximum(c.side, c.onface.clamp(0, 1)) * region(c, .35, .35)
    f1, f2, vec, rnd = c.nz.cells(c.uv / cell + 2.2)
    on = (rnd[:, :1] < .35 + .6 * c.sev).float()
    r = .22 + .28 * rnd[:, 1:2]
    pit = on * sstep(1.0, .3, f1 / r)
    uv = rot2(c.uv, c.us(1) * 3.14) + .35 * c.nz.flat(c.uv * .6, 2, 2, 7)
    wr = c.nz.flat(torch.cat([uv[:, :1] * .35, uv[:, 1:] * 1.6], 1), 2, 1, 2, 1, .4).abs()
    ww = .07 + .1 * c.sev
    line = sstep(ww * 1.5, ww * .3, wr)
    m = torch.where(c.var == 1, line, pit) * where
    m = torch.where(c.var == 2, torch.maximum(pit, line * .8) * where, m)
    amp = (.05 + .12 * c.sev) * pick(c, 1, .8, 1)
    paint(st, m * (.12 + .3 * c.sev), st["alb"] * .55, None, -amp * m)
    return m * 1.5
