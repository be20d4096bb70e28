"""Things that deceive but are no flaw: exfoliants, glitter, mica, petals, stamps, dew, bands, salt, wire marks, lint."""
import torch
from relief_fields import fbm, noise, dots, smooth, lerp
from relief_flaws_a import disc, line, patches


def const(d, lo, hi):
    """A random colour per picture between two colours."""
    t = d.raw(d.n, 1, 1, 1)
    lo, hi = [torch.tensor(c, device=d.device).reshape(1, 3, 1, 1) for c in (lo, hi)]
    return lo + (hi - lo) * t


def exfoliants(s, d):
    """Poppy seed, oat, coffee: even scatter of one sort, slightly raised."""
    kind = d.pick(3)
    r = torch.maximum(d.u(.008, .018) + .016 * (kind == 1), s.px0 * .8)
    f = .42 / (r * d.u(2.2, 5))
    st = 1 + (kind == 1) * d.u(.3, 1)
    n = noise(s.vol, s.u * 3, s.v * 3, s.z * 0)
    sc, dx, dy, ra, rb = dots(s.table, s.u + .02 * n[:, 0:1], s.v / st, f, d.u(.4, .9), r * f * .8, r * f, 17)
    a = disc(sc, r, s.px)
    cols = torch.stack([torch.tensor(c, device=d.device) for c in ([.025, .028, .04], [.62, .47, .28], [.07, .035, .018])])
    rgb = cols[kind.long().reshape(-1)][:, :, None, None] * (.6 + .8 * rb)
    return a, rgb, .35 * r * a * (1 - sc.clamp(0, 1) ** 2), 0 * a, a * 0


def glitter(s, d):
    """Tiny bright flakes."""
    r = s.px0 * d.u(.5, 1.1)
    sc, _, _, ra, rb = dots(s.table, s.u, s.v, .3 / (r * d.u(2, 6)), d.u(.2, .6) * patches(s, d), .08, .3, 29)
    a = disc(sc, r, s.px) * smooth(.3, .9, rb)
    return a, lerp(const(d, (.9, .8, .5), (.95, .95, .98)), torch.ones_like(s.alb), .3 * ra), 0 * a, -.3 * a, a * d.u(.3, 2)


def mica_line(s, d):
    """A thin dark or golden line along a layer border, or pencilled across."""
    dist = (s.phi - torch.round(s.phi)).abs() / s.k * 2 * s.b
    n = fbm(s.vol, s.x * 4, s.y * 4, s.z, 3)
    dist = torch.where(s.style == 1, dist, (s.y + .1 * n[:, 0:1] + d.u(-.3, .3)).abs())
    a = line(dist, d.log(.006, .02) * (.6 + .8 * (n[:, 1:2] + .3).clamp(0, 1)), s.px) * d.u(.5, 1) * smooth(.5, .8, s.cut)
    rgb = torch.where(d.coin(.5) > .5, const(d, (.5, .3, .06), (.6, .42, .15)), const(d, (.02, .02, .02), (.1, .06, .12)))
    return a, rgb.expand_as(s.alb), 0 * a, -.1 * a, a * .3


def petals(s, d):
    """Dried petals, leaves or herbs pressed on the top or the face."""
    r = d.u(.05, .16)
    n = noise(s.vol, s.u * 8, s.v * 8, s.z * 0)
    sc, dx, dy, ra, rb = dots(s.table, s.u + .03 * n[:, 0:1], s.v + .03 * n[:, 1:2], .42 / (r * 1.3), d.u(.2, .7) * patches(s, d), .15, .42, 41)
    ang = rb * 6.28
    p, t = dx * torch.cos(ang) + dy * torch.sin(ang), dy * torch.cos(ang) - dx * torch.sin(ang)
    q = torch.sqrt(p * p + (t * (1.4 + 2 * ra)) ** 2) + .1 * n[:, 2:3]
    a = disc(q, r, s.px) * lerp(s.top, s.top + s.cut, d.coin(.4)).clamp(0, 1)
    rgb = const(d, (.35, .03, .08), (.75, .45, .08)) * (.5 + .6 * ra) * (1 - .3 * torch.exp(-(t * 6) ** 2))
    rgb = torch.where(d.coin(.35) > .5, const(d, (.08, .13, .03), (.2, .24, .1)) * (.6 + .6 * ra), rgb)
    return a, rgb.clamp(.01, .9), (.25 * r * (1 - q.clamp(0, 1) ** 2) + .01 * n[:, 3:4]) * a, .1 * a, 0 * a


def stamp(s, d):
    """A pressed emblem of plain geometry: ring, star, leaf or bars."""
    R = d.u(.25, .5)
    x, y = s.x - d.u(-.15, .15), s.y - d.u(-.1, .1)
    r, th = torch.sqrt(x * x + y * y + 1e-6), torch.atan2(y, x)
    k = d.pick(4)
    star = r / R - (.6 + .3 * torch.cos(th * torch.floor(d.u(3, 9))))
    ring = (r / R - .85).abs() - .07
    bars = torch.maximum((torch.remainder(x / R * 3 + 9, 1.) - .5).abs() - .22, torch.maximum(x.abs() / R - .8, y.abs() / R - .35 - .2 * torch.sin(torch.floor(x / R * 3) * 5)))
    leaf = torch.maximum((x / R).abs() - .75 * (1 - (y / R) ** 2), -((x / R).abs() - .05))
    sh = torch.where(k == 0, star, torch.where(k == 1, bars, torch.where(k == 2, leaf, ring)))
    sh = torch.minimum(sh, lerp(ring, ring * 0 + 9, d.coin(.5)))
    m = 1 - smooth(-.05, .06, sh)
    m = m * smooth(.5, .8, s.cut)
    gold = d.coin(.2)
    return m * gold * .9, const(d, (.5, .33, .08), (.7, .5, .2)).expand_as(s.alb), -m * d.u(.015, .05), -.1 * m * gold, m * gold


def dew(s, d):
    """Clear droplets."""
    r = d.u(.012, .05)
    sc, dx, dy, ra, rb = dots(s.table, s.u, s.v, .42 / (r * d.u(1.1, 2)), d.u(.3, .8) * patches(s, d), .06, .4, 47)
    dome = torch.sqrt((1 - sc ** 2).clamp(min=0))
    a = disc(sc, r, s.px) * .6
    return a, s.alb * (.8 + .35 * dy.clamp(-1, 1)), dome * r * .5, -.45 * (a > .1), a * .8


def band(s, d):
    """A plain paper band around the bar, with a few dark printed bars."""
    ax = torch.where(d.coin(.5) > .5, s.x, s.y / s.b)
    ot = torch.where(d.coin(.5) > .5, s.y / s.b, s.x)
    w = d.u(.15, .4)
    dd = (ax - d.u(-.3, .3)).abs()
    a = 1 - smooth(w - .01, w + .01, dd)
    n = noise(s.vol, s.x * 9, s.y * 9, s.z * 9)
    ink = (torch.remainder(ot * 5 + torch.floor(ax * 17), 1.) < .5).float() * (dd < w * .5).float() * (ot.abs() < .6).float() * d.coin(.7) * (torch.remainder(ax * 17, 1.) < .45).float()
    rgb = const(d, (.45, .33, .2), (.85, .84, .8)) * (1 + .06 * n[:, 0:1]) * (1 - .85 * ink)
    return a, rgb, .02 * a, .4 * a, 0 * a


def salt(s, d):
    """Coarse clear crystals on the top."""
    r = d.u(.03, .08)
    n = noise(s.vol, s.u * 12, s.v * 12, s.z * 0)
    sc, dx, dy, ra, rb = dots(s.table, s.u + .03 * n[:, 0:1], s.v + .03 * n[:, 1:2], .42 / (r * 1.2), d.u(.3, .9) * patches(s, d), .2, .42, 53)
    q = torch.maximum(dx.abs() * (.7 + .3 * rb), dy.abs()) * 1.2
    a = disc(q, r, s.px) * torch.maximum(s.top, s.need_top * 0 + d.coin(.3) * s.cut)
    return a * .85, const(d, (.85, .72, .68), (.93, .93, .93)) * (.7 + .35 * rb), a * r * (.5 + .3 * dx.clamp(-1, 1) * rb), -.3 * a, .6 * a


def wire_marks(s, d):
    """Faint regular ridges a cutting wire leaves, no colour."""
    th = d.of([0., 1.57]) + d.u(-.2, .2)
    t = s.v * torch.cos(th) - s.u * torch.sin(th) + d.u(-.2, .2) * s.u * s.v
    n = noise(s.vol, s.u * 2, s.v * 2, s.z * 0)
    h = torch.sin(t * torch.minimum(d.log(30, 110), .9 / s.px0) + n[:, 0:1]) * (.4 + .6 * n[:, 1:2].clamp(0, 1))
    a = s.cut * 0
    return a, s.alb, h * d.u(.0006, .003) * s.cut, 0 * a, a


def lint(s, d):
    """Loose fibres and hairs lying on the soap."""
    a = torch.zeros_like(s.x)
    for k in range(4):
        th = d.u(-3, 3)
        p, t = s.u * torch.cos(th) + s.v * torch.sin(th), s.v * torch.cos(th) - s.u * torch.sin(th)
        n = noise(s.vol, p * 3 + 5 * k, p * 0, p * 0 + 4)
        a = torch.maximum(a, line((t - d.u(-.6, .6) - .15 * n[:, 0:1]).abs(), s.px0 * .6, s.px) * (1 - smooth(.1, .25, (p - d.u(-.7, .7)).abs())))
    rgb = torch.where(d.coin(.5) > .5, const(d, (.03, .03, .03), (.1, .07, .05)), const(d, (.8, .8, .8), (.7, .72, .8)))
    return a * .8, rgb.expand_as(s.alb), .01 * a, 0 * a, 0 * a


def dot_design(s, d):
    """Regular round inlays placed on purpose."""
    sc, _, _, ra, rb = dots(s.table, s.x, s.y, d.u(1.6, 4), 1.1, .2, .26, 59, 0.)
    a = (1 - smooth(.97, 1.03, sc)) * smooth(.5, .8, s.cut)
    return a, const(d, (.1, .2, .5), (.7, .2, .1)).expand_as(s.alb), 0 * a, 0 * a, 0 * a


def shimmer(s, d):
    """Mica sheen in soft drifts."""
    n = fbm(s.vol, s.x * 2, s.y * 2, s.z * 2, 3)
    a = smooth(.0, .6, n[:, 0:1]) * d.u(.1, .5)
    return a * .5, s.alb * const(d, (1.3, 1.15, .8), (1.1, 1.1, 1.3)), 0 * a, -.2 * a, a


EXTRAS = [exfoliants, glitter, mica_line, petals, stamp, dew, band, salt, wire_marks, lint, dot_design, shimmer]
