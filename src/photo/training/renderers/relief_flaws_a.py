"""Findings, part one: specks, smears, veins, crackle, film, dark centre, orange spots, pinholes.
Each returns (alpha, albedo, relief, roughness change, mask) for the pictures in s."""
import torch
from relief_fields import fbm, noise, dots, voronoi, smooth, lerp
from relief_design import to_r


def disc(score, radius, px, hard=.08):
    """Antialiased inside of dots whose score is 1 at the rim."""
    e = (px / radius.clamp(min=1e-4) * .7).clamp(.02, 1.2) + hard
    return 1 - smooth(0, 1, (score - (1 - e)) / (2 * e))


def line(d, w, px):
    """Antialiased line of half-width w at distance d; too thin ones fade rather than vanish."""
    we = torch.maximum(w, px * .75)
    return (1 - smooth(.55, 1.25, d / we)) * (w / we).clamp(max=1)


def patches(s, d, lo=1.0, hi=3.0, cover=(-.3, .5)):
    """Soft random areas 0..1 of the bar."""
    f = d.u(lo, hi)
    n = fbm(s.vol, s.x * f + d.u(0, 16), s.y * f, s.z * f, 3)[:, 0:1]
    c = d.u(*cover)
    return smooth(c - .12, c + .2, n)


def in_portion(s, d, p):
    """Limits to one colour portion with chance p."""
    want = torch.remainder(s.portion_here, s.k)
    only = d.coin(p)
    return 1 - only * (s.portion != want).float()


def strong(s, d):
    """Colour of undispersed pigment: a deeper hue of the portion, or a strong foreign one."""
    deep = to_r(s.ks * d.u(3, 9) + .02)
    sat = deep / deep.max(1, keepdim=True)[0].clamp(min=.02)
    deep = (deep * lerp(torch.ones_like(sat), sat, d.u(.3, 1.5))).clamp(.005, .9)
    tab = torch.tensor([[.02, .05, .4], [.45, .02, .03], [.012, .012, .014], [.02, .16, .04], [.25, .03, .2],
                        [.01, .2, .3], [.5, .14, .01], [.12, .05, .02]], device=s.x.device)
    other = tab[d.pick(8).long().reshape(-1)][:, :, None, None] * d.u(.6, 1.6)
    t = torch.maximum(d.coin(.5), (s.light_bar > .6).float() * d.coin(.5))
    return lerp(deep, other.expand_as(deep), t)


def wobble(s, d, f, amp):
    """Bends face coordinates."""
    n = noise(s.vol, s.u * f + d.u(0, 9), s.v * f, s.z * 0 + 2.2)
    return s.u + amp * n[:, 0:1], s.v + amp * n[:, 1:2]


def sized(s, d, rlo, rhi, widest=6.):
    """Frequency and cell radii so that dots have world radii rlo..rhi, cells up to widest times as big."""
    rmax = torch.maximum(d.log(rlo, rhi), s.px0 * 1.0)
    gap = d.log(1.15, widest)
    return .42 / (rmax * gap), .42 / gap * d.u(.25, .8), .42 / gap


def coloured_specks(s, d):
    f, r0, r1 = sized(s, d, .006, .03)
    u, v = wobble(s, d, f * 1.4, .25 * r1 / f * d.coin(.6))
    clump = lerp(torch.ones_like(u), patches(s, d, 1, 3, (-.4, .5)), d.coin(.5))
    sc, _, _, ra, rb = dots(s.table, u, v, f, d.u(.15, .9) * clump, r0, r1, 11, skew=3)
    core = disc(sc, r1 / f * .7, s.px, d.u(.0, .4)) * d.u(.7, 1.0)
    halo = (1 - smooth(.5, 2.3, sc)) * d.u(.15, .5) * d.coin(.4)
    a = torch.maximum(core, halo) * in_portion(s, d, .45)
    rgb = strong(s, d) * (.7 + .6 * ra)
    return a, rgb, .15 * core * r1 / f * d.u(-1, 1), 0 * a, (a > .12).float()


def smears(s, d):
    th = d.u(-1.57, 1.57)
    bend = d.u(0, .12)
    u, v = wobble(s, d, d.u(.5, 1.5), bend)
    w = torch.maximum(d.log(.007, .03), s.px0 * .9)
    st = d.log(4, 14)
    c, n = torch.cos(th), torch.sin(th)
    p, t = (u * c + v * n) / st, v * c - u * n
    gap = d.log(1.1, 2.6)
    f = .42 / (w * gap)
    clump = lerp(torch.ones_like(u), patches(s, d, 1, 2.5, (-.4, .2)), d.coin(.4))
    sc, dx, dy, ra, rb = dots(s.table, p, t, f, d.u(.3, .95) * clump, .42 / gap * .6, .42 / gap, 23, skew=1.5)
    along = (dx + 1) * .5
    head = disc(torch.sqrt(((dx + .8) * st) ** 2 + dy ** 2) / .95, w, s.px)
    width = lerp(.9, .25, along.clamp(0, 1))
    tail = (1 - smooth(.4, 1.2, dy.abs() / width)) * (1 - along).clamp(0, 1) ** d.u(.5, 2) * smooth(-.86, -.7, dx)
    strands = .75 + .25 * torch.sin(dy * 9 + ra * 30)
    a = torch.maximum(head * d.u(.5, 1), tail * strands * d.u(.45, .95)) * (sc < 1.4).float() * in_portion(s, d, .3)
    return a, strong(s, d), -.05 * w * a * d.coin(.4), 0 * a, (a > .1).float()


def white_specks(s, d):
    f, r0, r1 = sized(s, d, .008, .035)
    mode = d.pick(4)
    rice, crumb, snow = (mode == 1).float(), (mode == 2).float(), (mode == 3).float()
    th = d.u(-3, 3) + 3 * noise(s.vol, s.u * 2, s.v * 2, s.z * 0)[:, 0:1] * rice
    u, v = wobble(s, d, f * 2.2, crumb * .5 * r1 / f)
    st = 1 + rice * d.u(.8, 2.2)
    p, t = (u * torch.cos(d.u(-3, 3)) + v * .6) / st, v
    u, v = lerp(u, p, rice), v
    clump = lerp(torch.ones_like(u), patches(s, d, 1, 3), d.coin(.45))
    sc, _, _, ra, rb = dots(s.table, u, v, f, d.u(.12, .8) * clump, r0, r1, 37, skew=2)
    grain = disc(sc, r1 / f, s.px, .05)
    fl = fbm(s.vol, s.x * 7 * d.u(.5, 1.5), s.y * 7, s.z * 7, 4)
    cov = d.u(.25, .6)
    flake = smooth(cov, cov + .25, fl[:, 0:1] + .35 * patches(s, d, 1.5, 3) - .2) * (.6 + .4 * fl[:, 1:2].clamp(-1, 1))
    a = lerp(grain * d.u(.55, 1), torch.maximum(flake * d.u(.3, .9), grain * .8 * d.coin(.5)), snow).clamp(0, 1)
    a = a * in_portion(s, d, .15)
    white = torch.cat([d.u(.86, .94), d.u(.85, .92), d.u(.78, .9)], 1) * (.92 + .08 * ra)
    return a, white, .25 * grain * r1 / f * d.u(-.2, 1), .2 * a, (a > .15).float()


def translucent_veins(s, d):
    f = d.log(.8, 3)
    w1 = fbm(s.vol, s.x * f * .7 + d.u(0, 9), s.y * f * .7, s.z * f * .7, 3)
    wp = d.u(.1, .5)
    n = fbm(s.vol, (s.x + wp * w1[:, 0:1] / f) * f, (s.y + wp * w1[:, 1:2] / f) * f, s.z * f + d.u(0, 9), 3, .45)
    width = d.log(.03, .22) * (.55 + .8 * (w1[:, 2:3] + .4).clamp(0, 1.2))
    v1 = torch.exp(-(n[:, 0:1] / width) ** 2)
    v2 = torch.exp(-(n[:, 1:2] / (width * .6)) ** 2) * d.coin(.7)
    v3 = torch.exp(-(n[:, 2:3] / (width * .35)) ** 2) * d.coin(.5) * smooth(.0, .7, v1 + n[:, 3:4])
    patch = smooth(.25, .6, n[:, 3:4]) * d.coin(.2)
    v = torch.maximum(torch.maximum(v1, v2), torch.maximum(v3, patch))
    a = v * lerp(torch.ones_like(v), patches(s, d, .8, 1.6, (-.5, .1)), d.coin(.6)) * in_portion(s, d, .25)
    a = a * d.u(.55, 1.0)
    dark = to_r(s.ks * d.u(1.8, 4.0) + d.u(.0, .02))
    clear = to_r(s.ks * d.u(.3, .6))
    rgb = lerp(dark, clear, d.coin(.15) * (s.light_bar < .5).float())
    tint = lerp(torch.ones_like(rgb), rgb / rgb.mean(1, keepdim=True), d.u(0, .6))
    return a, (rgb * tint).clamp(.004, .95), -.004 * a * d.coin(.4), -.12 * a, smooth(.25, .5, v) * (a > .1).float()


def crackle_network(s, d):
    f = torch.minimum(d.log(4, 16), .11 / s.px0)
    u, v = wobble(s, d, f * .45, .35 / f)
    u2, v2 = wobble(s, d, f * 1.7, .10 / f)
    u, v = u + u2 - s.u, v + v2 - s.v
    stretch = d.log(.6, 1.6)
    _, e1, r1 = voronoi(s.table, u * stretch, v, f, 51)
    _, e2, _ = voronoi(s.table, u, v, f * 2.1, 77)
    w = d.log(.03, .14)
    soft = d.u(.5, 2)
    pxl = s.px * f
    l1 = 1 - smooth(0, 1, e1 / (torch.maximum(w, pxl * .9) * (1 + soft)))
    l2 = (1 - smooth(0, 1, e2 / (torch.maximum(w, pxl * .9) * 1.6))) * d.coin(.4) * .7
    ln = torch.maximum(l1, l2) * (w / pxl).clamp(.35, 1)
    area = lerp(torch.ones_like(ln), patches(s, d, .8, 2, (-.6, .1)), d.coin(.7))
    pale = smooth(.05, .3, s.alb.mean(1, keepdim=True))
    a = (ln * d.u(.35, .95) + .12 * (r1 - .5) * d.coin(.4)).clamp(0, 1) * area * pale
    rgb = to_r(s.ks * d.u(2, 5) + d.u(.01, .05))
    m = smooth(.2, .5, area * pale) * smooth(.05, .3, lerp(ln, ln * 0 + 1, torch.full_like(ln, .35)))
    return a, rgb, -.006 * ln * area * d.coin(.5), -.05 * a, m


def powdery_film(s, d):
    mode = d.pick(5)
    is_ = lambda k: (mode == k).float()
    f = d.log(1, 4)
    n = fbm(s.vol, s.x * f + d.u(0, 9), s.y * f, s.z * f, 5, .6)
    fine = fbm(s.vol, s.u * 30, s.v * 30, s.z * 0 + 4, 3, .7)
    rim = torch.exp(-s.rim / d.log(.03, .2))
    where = is_(0) * smooth(.2, .7, s.top + .4 * smooth(.12, .0, s.rim)) + is_(1) * rim + is_(2) * smooth(.5, .8, s.cut) \
        + is_(3) * smooth(d.u(-.3, .2), d.u(.3, .6), n[:, 1:2] + .2) + is_(4) * smooth(-.5, .5, n[:, 2:3] + (s.y / s.b) * d.of([-1., 1.]))
    cov = d.u(-.5, .3)
    un = smooth(cov, cov + d.u(.25, 1.0), n[:, 0:1] + .25 * fine[:, 0:1])
    fluff = d.coin(.35)
    grain = lerp(.8 + .2 * fine[:, 1:2].clamp(-1, 1), smooth(-.2, .5, fine[:, 1:2]), fluff)
    thick = d.u(.25, .95)
    a = (where * un * grain * thick).clamp(0, .97)
    white = torch.cat([d.u(.82, .93)] * 2 + [d.u(.8, .95)], 1)
    return a, white.expand(-1, 3, *a.shape[2:]), .006 * fluff * fine[:, 2:3] * a, .5 * a, smooth(.1, .3, where * un)


def dark_centre_ring(s, d):
    ox, oy = d.u(-.25, .25), d.u(-.2, .2)
    w = fbm(s.vol, s.x * 1.5 + d.u(0, 9), s.y * 1.5, s.z * .5, 3)
    on_top = s.view_loaf * (1 - smooth(.3, .6, s.cut_share)) 
    lx, ly = d.u(.4, .85), d.u(.4, .85) * s.b
    px_, py_ = (s.x - ox), (s.y - oy * s.b)
    tx, ty = px_, s.z_rel - oy
    px_, py_ = lerp(px_, tx, on_top * s.top.round()), lerp(py_, ty, on_top * s.top.round())
    ly = lerp(ly, s.c * d.u(.5, .85), on_top)
    pw = d.of([2., 2.3, 3., 5.])
    r = ((px_.abs() / lx) ** pw + (py_.abs() / ly) ** pw + 1e-6) ** (1 / pw) + d.u(.02, .15) * w[:, 0:1]
    soft = d.log(.015, .3)
    zone = 1 - smooth(1 - soft, 1 + soft, r)
    bw = d.log(.03, .12)
    ring = torch.exp(-((r - 1) / bw) ** 2)
    mode = d.pick(5)
    is_ = lambda k: (mode == k).float()
    a = is_(0) * zone + is_(1) * ring + is_(2) * torch.maximum(zone * .55, ring) + is_(3) * zone * (.6 + .4 * w[:, 1:2].clamp(-1, 1)) \
        + is_(4) * torch.maximum(zone * .8, ring * .4)
    arc = lerp(torch.ones_like(a), smooth(-.5, .4, px_ * torch.cos(d.u(-3, 3)) + py_), d.coin(.2))
    face = lerp(smooth(.5, .8, s.cut), torch.maximum(smooth(.5, .8, s.top), smooth(.5, .8, s.cut)), on_top)
    a = a * arc * face * d.u(.6, 1)
    rgb = to_r(s.ks * d.u(1.6, 4.0) + d.u(.004, .03))
    lightrim = is_(4) * ring * d.u(0, .4)
    rgb = lerp(rgb, s.alb * 1.15, lightrim)
    whole = torch.maximum(zone, smooth(.3, .6, ring)) * face * arc
    return a.clamp(0, 1), rgb.clamp(.004, .95), -.004 * a, -.15 * a, lerp(whole, smooth(.3, .6, ring) * face * arc, is_(1))


def orange_spots(s, d):
    f, r0, r1 = sized(s, d, .015, .11, 3.)
    u, v = wobble(s, d, f * 1.2, .3 * r1 / f)
    u2, v2 = wobble(s, d, f * 4, .12 * r1 / f)
    u, v = u + u2 - s.u, v + v2 - s.v
    edge = lerp(torch.ones_like(u), (1 - smooth(.0, .3, s.rim) + .25).clamp(0, 1), d.coin(.3))
    clump = lerp(torch.ones_like(u), patches(s, d, .8, 2), d.coin(.5))
    sc, _, _, ra, rb = dots(s.table, u, v, f, d.u(.3, .95) * clump * edge, r0, r1, 61, skew=2)
    core = 1 - smooth(0, 1, (sc - d.u(.25, .85)) / d.u(.2, .7).clamp(min=.05))
    halo = (1 - smooth(.6, 1.9, sc)) * d.coin(.45) * d.u(.2, .5)
    tab = torch.tensor([[.75, .33, .04], [.62, .20, .03], [.8, .5, .08], [.4, .15, .03], [.7, .28, .07], [.3, .12, .04]], device=s.x.device)
    hue = tab[d.pick(6).long().reshape(-1)][:, :, None, None]
    ks = (1 - hue) ** 2 / (2 * hue)
    mott = .7 + .5 * noise(s.vol, s.u * f * 3, s.v * f * 3, s.z * 0)[:, 0:1]
    a = torch.maximum(core * d.u(.75, 1) * mott.clamp(.55, 1), halo)
    rgb = to_r(s.ks * .6 + ks * d.u(.7, 2.0) * (.6 + rb * .8))
    return a.clamp(0, 1), rgb, -.004 * core, -.2 * halo - .1 * core, (a > .12).float()


def pinholes(s, d):
    mode = d.pick(5)
    foam, tun = (mode == 1).float(), (mode == 3).float()
    f, r0, r1 = sized(s, d, .007, .04)
    f, r0, r1 = lerp(f, .3 / torch.maximum(d.log(.008, .02), s.px0), foam), lerp(r0, r0 * 0 + .1, foam), lerp(r1, r1 * 0 + .46, foam)
    th = d.u(-3, 3)
    u, v = s.u * torch.cos(th) + s.v * torch.sin(th), s.v * torch.cos(th) - s.u * torch.sin(th)
    u = u / (1 + tun * d.u(1, 5))
    clump = lerp(torch.ones_like(u), patches(s, d, .8, 2.5), torch.maximum(d.coin(.4), foam * d.coin(.7)))
    sc, dx, dy, ra, rb = dots(s.table, u, v, f, (d.u(.1, .7) + .4 * foam) * clump, r0, r1, 71, skew=2.5)
    hole = disc(sc, r1 / f * .8, s.px, .05)
    depth = (1 - sc.clamp(0, 1) ** 2)
    rim = torch.exp(-((sc - 1.1) / .14) ** 2) * d.coin(.5)
    far = smooth(-.5, .9, dx * d.u(-1, 1) + dy * d.of([-1., 1.]))
    dark = lerp(s.alb * d.u(.12, .4), s.alb * .75, far * d.u(.3, 1) * smooth(.2, .9, sc))
    a = hole * d.u(.65, 1)
    rgb = lerp(dark, s.alb * 1.25, rim * (1 - hole)).clamp(.003, .95)
    a = torch.maximum(a, rim * .35 * (1 - hole))
    return a, rgb, (-.9 * depth * hole + .12 * rim) * r1 / f * d.u(.5, 1.2), 0 * a, (hole > .2).float()
