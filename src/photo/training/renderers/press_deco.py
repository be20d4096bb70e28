"""What deceives: things on and in the soap that are no flaw. Each acts on st for its pictures."""
import torch
from press_noise import sstep, mix, rot2
from press_spots import spots, paint, pick, region

NAMES = "glitter mica seeds oats petals embed stamp dew label cutmark".split()


def glitter(c, st):
    m, d, rnd, vec, r = spots(c, .16 + .2 * c.us(0), .02 + .03 * c.us(1), .4 + .4 * c.us(2), .1)
    m = m * torch.where(c.us(3) < .6, c.top, torch.ones_like(c.top)) * region(c, .5, .4)
    hue = torch.where(c.us(4) < .5, rnd[:, 1:4], torch.ones_like(rnd[:, 1:4]) * torch.tensor([.9, .7, .3], device=m.device).view(1, 3, 1, 1))
    paint(st, m, (hue * 2.6 * rnd[:, 2:3]).clamp(.03, 2.2), .15)


def mica(c, st):
    """a pencil line or a wandering metallic vein"""
    v = c.nz.flat(c.uv * .35 + 5, 3, 1, 8, 1, .4)
    line = torch.where(c.us(3) < .5, c.phi.abs(), v.abs() / .35)
    w = torch.maximum(.02 + .05 * c.us(0), .7 * c.px) * (1 + .6 * c.nz.flat(c.uv * 2, 2)).clamp_min(.2)
    m = sstep(w * 1.3, w * .7, line)
    gold = torch.cat([.45 + .3 * c.us(1), .3 + .25 * c.us(2), .1 + .4 * c.us(4)], 1) * torch.where(c.us(5) < .35, .2 * torch.ones_like(c.sev), torch.ones_like(c.sev))
    paint(st, m * .9, gold * (.8 + .3 * c.nz.flat(c.uv * 25, 1)), .25)


def seeds(c, st):
    """poppy seed, coffee grounds"""
    m, d, rnd, vec, r = spots(c, pick(c, .35, .22, .5) * (.7 + .6 * c.us(0)), pick(c, .045, .03, .06), .25 + .5 * c.us(1), pick(c, .1, .9, .4).mean())
    lit = sstep(.4, -.6, (vec * torch.tensor([-1., 1.], device=m.device).view(1, 2, 1, 1)).sum(1, keepdim=True) / r)
    col = mix(torch.tensor([.012, .014, .03], device=m.device).view(1, 3, 1, 1), torch.tensor([.06, .025, .01], device=m.device).view(1, 3, 1, 1), pick(c, 0, 1, .6))
    paint(st, m, col * (.6 + 1.2 * lit) * (.6 + .8 * rnd[:, 2:3]), .35, .02 * m)


def oats(c, st):
    m, d, rnd, vec, r = spots(c, .6 + .6 * c.us(0), .13 + .1 * c.us(1), .35 + .4 * c.us(2), .5, 1.8, c.us(3) * 3)
    ln = c.nz.flat(c.uv * 14, 2)
    col = torch.tensor([.52, .36, .18], device=m.device).view(1, 3, 1, 1) * (.8 + .5 * rnd[:, 2:3] + .25 * ln)
    rim = sstep(.7, 1., d) * m
    paint(st, m * .85, col * (1 - .35 * rim), .75, .02 * m)


def petals(c, st):
    f1, f2, vec, rnd = c.nz.cells(c.uv / (.9 + .7 * c.us(0)) + 3)
    a = rnd[:, 2:3] * 6.28
    x, y = vec[:, :1] * torch.cos(a) + vec[:, 1:] * torch.sin(a), -vec[:, :1] * torch.sin(a) + vec[:, 1:] * torch.cos(a)
    y = y + .6 * x * x
    q = (x / (.22 + .15 * rnd[:, 1:2])) ** 2 + (y / (.06 + .12 * c.us(1))) ** 2
    m = sstep(1.1, .9, q) * (rnd[:, :1] < .6).float() * torch.where(c.us(2) < .75, c.top, torch.ones_like(c.top))
    hues = torch.tensor([[.8, .35, .03], [.45, .03, .06], [.16, .12, .4], [.2, .22, .06], [.75, .55, .1]], device=m.device)
    col = hues[(c.u[:, 7] * 5).long().clamp_max(4)][:, :, None, None]
    col = col * (.7 + .6 * rnd[:, 3:4]) * (1 - .4 * torch.exp(-(y / .015) ** 2))
    paint(st, m, col, .8, .05 * m * (1 - q.clamp(0, 1)) + .03 * m)


def embed(c, st):
    x, y = c.pl[:, :1] - (c.us(0) - .5) * c.B[:, :1], c.pl[:, 1:2] - (c.us(1) - .5) * c.B[:, 1:2]
    R = (.6 + 1.1 * c.us(2))
    rr = (x * x + y * y).sqrt()
    sq = torch.maximum((x * .8 + y * .6).abs(), (y * .8 - x * .6).abs())
    star = rr * (1 + .25 * torch.cos(5 * torch.atan2(y, x + 1e-4)))
    d = torch.where(c.us(3) < .4, rr, torch.where(c.us(3) < .7, sq, star))
    m = sstep(.03, -.03, d - R) * c.cut
    paint(st, m, c.pal[:, 3][:, :, None, None] * (1 + .05 * c.nz.flat(c.uv * 2, 2)), .3)


def stamp(c, st):
    p = torch.where(c.cut > .5, c.pl[:, :2], c.uv * torch.ones_like(c.pl[:, :2]))
    x, y = p[:, :1], p[:, 1:2]
    r = (x * x + y * y + 1e-4).sqrt()
    th = torch.atan2(y, x)
    R = .9 + .7 * c.us(0)
    kk = torch.round(3 + 5 * c.us(1))
    flower = (r - R * (.55 + .25 * torch.cos(kk * th))).abs()
    ring = (r - R).abs()
    leaf = torch.maximum((y - .35 * torch.sin(x * 2)).abs() * .7, (x.abs() - R) * 1.)
    d = torch.where(c.us(2) < .6, torch.minimum(flower, ring), torch.minimum(leaf, ring))
    w = .05 + .05 * c.us(3)
    m = sstep(w * 1.3, w * .7, d) * torch.maximum(c.cut, c.top)
    fill = torch.where(c.us(4) < .3, torch.ones_like(c.sev), torch.zeros_like(c.sev))
    paint(st, m * fill * .8, torch.tensor([.6, .42, .14], device=m.device).view(1, 3, 1, 1), .3)
    paint(st, m * .2, st["alb"] * .6, None, -.1 * m)


def dew(c, st):
    for s in (1., .4):
        m, d, rnd, vec, r = spots(c, (.35 + .4 * c.us(0)) * s, (.07 + .08 * c.us(1)) * s, .5, .15)
        dome = (1 - d.clamp(0, 1) ** 2).clamp_min(0).sqrt()
        paint(st, m * .3, st["alb"] * .7, .06, dome * r * .8 * m)
        st["rough"] = mix(st["rough"], torch.full_like(m, .06), m)


def label(c, st):
    """a paper band about the bar, with rows of scribble"""
    ang = torch.where(c.us(0) < .5, c.pl[:, :1], c.pl[:, 1:2]) - (c.us(1) - .5)
    W = .7 + .9 * c.us(2)
    m = sstep(.02, -.02, ang.abs() - W)
    oth = torch.where(c.us(0) < .5, c.pl[:, 1:2], c.pl[:, :1])
    row = torch.sin(ang * 9 + 1.0)
    ink = sstep(.3, .6, row) * sstep(.0, .25, c.nz.flat(torch.cat([oth * 6, torch.floor(ang * 9 / 6.283 + .4)], 1), 2, 1, 5) + .1) \
        * sstep(W * .8, W * .7, ang.abs()) * sstep(2., 1.8, oth.abs())
    base = torch.cat([.75 - .45 * (c.us(3) < .4).float(), .7 - .5 * (c.us(3) < .4).float(), .62 - .52 * (c.us(3) < .4).float()], 1)
    col = base * (1 + .06 * c.nz.flat(c.uv * 16, 2))
    paint(st, m, mix(col, torch.full_like(col, .03), ink * .85), .75, .04 * m)
    st["cover"] = torch.maximum(st["cover"], m)


def cutmark(c, st):
    """a clean wire's faint ripples, crumbs at the edge"""
    uv = rot2(c.uv, (c.us(0) - .5) * .3)
    v = torch.sin(uv[:, 1:] * (6 + 10 * c.us(1)) + 2 * c.nz.flat(c.uv * .5, 2))
    st["h"] = st["h"] + .0035 * v * c.cut
    e = sstep(.12, .0, c.rim) * sstep(.1, .4, c.nz.flat(c.uv * 5, 2))
    paint(st, e * .4 * c.cut, (st["alb"] * 1.2).clamp(0, .95), None, .03 * e * c.cut)


FUN = dict(glitter=glitter, mica=mica, seeds=seeds, oats=oats, petals=petals, embed=embed, stamp=stamp, dew=dew, label=label, cutmark=cutmark)
