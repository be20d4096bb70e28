"""Flaws made of grains: specks, smears, white grains, rancid spots, pinholes, powder, drags, bleeding."""
import torch
from scat_base import smooth, mix, hsv, to_linear, turn, deeper, luma
from scat_soap import portion, paint


def choose(look, *opts):
    """Pick per picture among several maps or parameters."""
    shape = torch.broadcast_shapes(*[o.shape for o in opts])
    out = opts[0].expand(shape)
    for i in range(1, len(opts)):
        out = torch.where(look == i, opts[i].expand(shape), out)
    return out


def cluster(S, d):
    """Where grains may lie: everywhere, in one portion, in blobs, near the rim or towards one side."""
    n = S.n
    w = S.fields.noise(S.ps * d.u(n, 0.7, 2.2) + d.u(n, 0, 20), 2)
    blob = smooth(w[:, :1], d.u(n, -0.2, 0.3), d.u(n, 0.35, 0.9))
    side = smooth(turn(S.uv0, d.u(n, 0, 6.28))[:, :1], -0.4, 0.5)
    rim = smooth(S.edge, 0.3, 0.08)
    one = torch.ones_like(blob)
    return choose(d.weighted(n, [3, 2.2, 2, 0.5, 0.8]), one, portion(S, d), blob, rim, side)


def aa(sd, S, scale):
    """Coverage of a signed distance in cell units; scale = cells per bar unit."""
    e = S.px * scale * 0.7
    return smooth(sd, e, -e)


def strong_hue(S, d):
    """Pigment colour: a deeper hue of the portion or an alien strong colour."""
    n = S.n
    h = torch.where(d.chance(n, 0.5) > 0, d.u(n, 0.55, 0.68), d.raw(n, 1, 1, 1))
    alien = to_linear(hsv(h, d.u(n, 0.55, 1), d.u(n, 0.15, 0.75)))
    alien = torch.where(d.chance(n, 0.15) > 0, alien * 0.12, alien)
    own = deeper(S.alb, d.u(n, 0.7, 1.15))
    m = S.alb.mean(1, keepdim=True)
    vivid = (m + (S.alb - m) * d.u(n, 2, 4)).clamp(0.004, 0.9) * d.u(n, 0.35, 0.8)
    return choose(d.weighted(n, [1.6, 1.6, 1.5]), own, vivid, alien.expand_as(own))


def coloured_specks(S, d):
    """Undispersed pigment dots, from dust of many to a few large ones, hard or with a halo."""
    n, look = S.n, d.pick(S.n, 5)
    lg = torch.log2
    cell = choose(look, d.log(n, 0.03, 0.06), d.log(n, 0.12, 0.35), d.log(n, 0.06, 0.14), d.log(n, 0.08, 0.2), d.log(n, 0.05, 0.1))
    cell = cell * S.grow
    keep = choose(look, d.log(n, 0.1, 0.7), d.log(n, 0.1, 0.6), d.log(n, 0.1, 0.6), d.log(n, 0.06, 0.4), d.log(n, 0.03, 0.3))
    r = (torch.maximum(d.log(n, 0.006, 0.032), 1.1 * S.pxm) / cell).clamp(max=0.3)
    q = S.uv / cell + d.u(n, 0, 60, 2) + 0.15 * S.fine[:, :2]
    reg = cluster(S, d)
    sd, rad, key, *_ = S.fields.dots(q, keep * smooth(reg, 0.25, 0.7), r * d.u(n, 0.25, 0.7), r, 1.6, 0.25)
    m = aa(sd, S, 1 / cell)
    halo = torch.exp(-(sd.clamp(min=0) / (rad * d.u(n, 0.5, 1.3))) ** 2) * d.u(n, 0.15, 0.6) * d.chance(n, 0.45)
    col = strong_hue(S, d)
    vary = 0.7 + 0.6 * S.fields.sites[6][key]
    a = torch.maximum(m * (d.u(n, 0.55, 1) * vary).clamp(max=1), halo * (sd < 2))
    S.alb = mix(S.alb, col, a)
    return torch.maximum(m, smooth(halo, 0.1, 0.4))


def smears(S, d):
    """Comet streaks dragged from specks; head at one end, fading tail."""
    n, look = S.n, d.pick(S.n, 5)
    L = choose(look, d.log(n, 0.15, 0.5), d.log(n, 0.4, 1.3), d.log(n, 0.08, 0.25), d.log(n, 0.2, 0.7), d.log(n, 0.12, 0.4))
    cw = choose(look, d.log(n, 0.06, 0.15), d.log(n, 0.06, 0.2), d.log(n, 0.03, 0.07), d.log(n, 0.12, 0.3), d.log(n, 0.04, 0.09))
    cw, L = cw * S.grow, L * S.grow.clamp(max=1.5)
    uv = turn(S.uv, d.u(n, 0, 6.283))
    bend = d.u(n, 0, 0.25) * torch.sin(uv[:, :1] * d.u(n, 0.6, 2.2)) + 0.012 * S.fields.noise2(uv * 5)[:, :1]
    q = torch.cat([uv[:, :1] / L, (uv[:, 1:2] + bend) / cw], 1) + d.u(n, 0, 60, 2)
    i = torch.floor(q)
    keep = choose(look, d.u(n, 0.1, 0.5), d.u(n, 0.08, 0.4), d.u(n, 0.1, 0.6), d.u(n, 0.06, 0.3), d.u(n, 0.1, 0.5))
    reg = cluster(S, d) * S_any(S)
    out = torch.zeros_like(S.hgt)
    wid = choose(look, d.u(n, 0.1, 0.22), d.u(n, 0.05, 0.14), d.u(n, 0.12, 0.25), d.u(n, 0.14, 0.3), d.u(n, 0.08, 0.2))
    pw = d.u(n, 0.5, 2.0)
    for oy in (-1, 0, 1):
        for ox in (-1, 0):
            k = torch.remainder(i[:, 1:2] + oy, 64).long() * 64 + torch.remainder(i[:, :1] + ox, 64).long()
            t = S.fields.sites
            ln = 0.35 + 0.65 * t[4][k]
            s = (q[:, :1] - i[:, :1] - ox - t[0][k]) / ln
            v = (q[:, 1:2] - i[:, 1:2] - oy - t[1][k]).abs()
            head = wid * (0.5 + 0.5 * t[5][k])
            w = head * (1 - s.clamp(0, 1)) ** 0.7 + 0.25 * S.px / cw
            sx = s * ln * L / cw
            dist = torch.where(s < 0, torch.sqrt(sx * sx + v * v) - head, v - w)
            a = smooth(dist, 1.0 * S.px / cw, -0.6 * S.px / cw) * (1 - s.clamp(0, 1)) ** pw
            out = torch.maximum(out, a * (t[3][k] < keep * smooth(reg, 0.25, 0.7)).float())
    S.alb = mix(S.alb, strong_hue(S, d), out * d.u(n, 0.55, 1))
    S.hgt = S.hgt - out * d.u(n, 0, 0.006)
    return smooth(out, 0.06, 0.3)


def S_any(S):
    """Ones shaped like the state maps."""
    return torch.ones_like(S.hgt)


def white_specks(S, d):
    """Hard white grains, crumbs, rice-like slivers or snowy patches of stearic spots."""
    n, look = S.n, d.pick(S.n, 5)
    cell = choose(look, d.log(n, 0.06, 0.15), d.log(n, 0.15, 0.4), d.log(n, 0.12, 0.3), d.log(n, 0.04, 0.08), d.log(n, 0.2, 0.5))
    keep = choose(look, d.log(n, 0.08, 0.6), d.log(n, 0.1, 0.6), d.log(n, 0.1, 0.6), d.log(n, 0.3, 0.9), d.log(n, 0.2, 0.8))
    slim = choose(look, d.u(n, 0, 0.2), d.u(n, 0.2, 0.6), d.u(n, 1.2, 2.2), d.u(n, 0, 0.4), d.u(n, 0, 0.5))
    rmax = choose(look, d.u(n, 0.1, 0.22), d.u(n, 0.08, 0.2), d.u(n, 0.08, 0.15), d.u(n, 0.15, 0.32), d.u(n, 0.25, 0.4))
    cell = cell * S.grow
    w = S.fields.noise2(S.uv / cell * d.u(n, 1.2, 3), 2)
    q = S.uv / cell + 0.12 * w[:, :2] + d.u(n, 0, 60, 2)
    reg = torch.where(look == 3, smooth(S.fields.noise2(S.uv * d.u(n, 1, 2.5))[:, :1], 0, 0.4), cluster(S, d))
    sd, rad, key, ox, oy = S.fields.dots(q, keep * smooth(reg, 0.25, 0.7), rmax * 0.3, rmax, 1.5, slim)
    sd = sd + 0.1 * w[:, 2:3] * rad * (0.6 + slim)
    soft = choose(look, *[d.u(n, 0.0, 0.02) for _ in range(3)], d.u(n, 0.02, 0.1), d.u(n, 0.08, 0.25))
    m = smooth(sd, S.px / cell * 0.7 + soft, -S.px / cell * 0.7 - soft)
    white = to_linear(hsv(d.u(n, 0.08, 0.16), d.u(n, 0, 0.12), d.u(n, 0.88, 1)))
    S.alb = mix(S.alb, white, m * choose(look, *[d.u(n, 0.6, 1) for _ in range(3)], d.u(n, 0.4, 0.9), d.u(n, 0.25, 0.7)))
    S.hgt = S.hgt + m * cell * rmax * d.u(n, -0.5, 0.6) * (look < 3).float()
    S.spec = S.spec * (1 - 0.5 * m)
    return m


def orange_spots(S, d):
    """Rancid spots: dots or blotches of yellow, orange or brown, some with an oily halo."""
    n, look = S.n, d.pick(S.n, 5)
    cell = choose(look, d.log(n, 0.12, 0.3), d.log(n, 0.5, 1.1), d.log(n, 0.25, 0.6), d.log(n, 0.06, 0.14), d.log(n, 0.4, 0.9))
    rmax = choose(look, d.u(n, 0.12, 0.25), d.u(n, 0.2, 0.38), d.u(n, 0.08, 0.22), d.u(n, 0.12, 0.25), d.u(n, 0.15, 0.35))
    keep = d.log(n, 0.12, 0.6)
    w = S.fields.noise2(S.uv / cell * d.u(n, 1.5, 4), 3, 0.6)
    q = S.uv / cell + 0.12 * w[:, :2] + d.u(n, 0, 60, 2)
    reg = cluster(S, d)
    sd, rad, key, *_ = S.fields.dots(q, keep * smooth(reg, 0.2, 0.6), rmax * 0.25, rmax, 1.5, d.u(n, 0, 0.4))
    sd = sd + 0.2 * rad * w[:, 2:3]
    soft = choose(look, d.u(n, 0.02, 0.06), d.u(n, 0.06, 0.2), d.u(n, 0.02, 0.06), d.u(n, 0.01, 0.05), d.u(n, 0.1, 0.25))
    m = smooth(sd, soft + S.px / cell, -soft)
    halo = smooth(sd, d.u(n, 0.5, 1.6) * rad, 0 * rad) * choose(look, *[d.u(n, 0, 0.3) * d.chance(n, 0.5)] * 2, d.u(n, 0.35, 0.8),
                                                               d.u(n, 0, 0.4), d.u(n, 0.2, 0.6))
    col = to_linear(hsv(d.u(n, 0.045, 0.125), d.u(n, 0.55, 0.95), d.u(n, 0.4, 0.9)))
    core = to_linear(hsv(d.u(n, 0.03, 0.07), d.u(n, 0.7, 0.9), d.u(n, 0.2, 0.5)))
    own = mix(col, col * (0.3 + 0.9 * luma(S.alb)) * 1.3, 0.7)
    S.alb = mix(S.alb, S.alb * mix(1 - 0.55 * (1 - col), 1, 0.1), halo)
    S.alb = mix(S.alb, own, m * d.u(n, 0.4, 0.95))
    S.alb = mix(S.alb, core, smooth(sd, -0.3 * rad, -0.7 * rad) * d.u(n, 0, 0.8) * d.chance(n, 0.5))
    S.spec = S.spec * (1 + 0.8 * halo)
    return torch.maximum(m, smooth(halo, 0.12, 0.4))


def pinholes(S, d):
    """Round air holes: scattered pits, foam, a few large voids or short tunnels."""
    n, look = S.n, d.pick(S.n, 5)
    cell = choose(look, d.log(n, 0.08, 0.2), d.log(n, 0.03, 0.07), d.log(n, 0.25, 0.6), d.log(n, 0.15, 0.4), d.log(n, 0.05, 0.12))
    keep = choose(look, d.log(n, 0.08, 0.5), d.log(n, 0.3, 0.95), d.log(n, 0.1, 0.5), d.log(n, 0.1, 0.4), d.log(n, 0.15, 0.8))
    rmax = choose(look, d.u(n, 0.16, 0.3), d.u(n, 0.24, 0.38), d.u(n, 0.1, 0.3), d.u(n, 0.12, 0.22), d.u(n, 0.2, 0.34))
    slim = choose(look, d.u(n, 0, 0.1), d.u(n, 0, 0.1), d.u(n, 0, 0.3), d.u(n, 1.0, 2.0), d.u(n, 0, 0.15))
    cell = cell * S.grow
    reg = cluster(S, d)
    q = S.uv / cell + d.u(n, 0, 60, 2) + 0.03 * S.fine[:, :2]
    sd, rad, *_ = S.fields.dots(q, keep * smooth(reg, 0.25, 0.7), rmax * d.u(n, 0.25, 0.7), rmax, 1.2, slim)
    x = (1 + sd / rad).clamp(0, 1.6)                        # 0 centre, 1 rim
    m = aa(sd, S, 1 / cell)
    deep = d.u(n, 0.35, 1.0)
    S.hgt = S.hgt - rad * cell * deep * torch.sqrt((1 - x * x).clamp(min=0)) * 1.3
    S.hgt = S.hgt + rad * cell * d.u(n, 0, 0.2) * torch.exp(-((x - 1.15) / 0.18) ** 2)
    S.occ = S.occ * (1 - m * (1 - 0.45 * x.clamp(max=1) ** 2) * d.u(n, 0.45, 0.95))
    S.alb = S.alb * (1 - 0.25 * m)
    return m


def powdery_film(S, d):
    """Whitish veil: patchy, on the edges, on the top, crystalline, fluffy or partly wiped."""
    n, look = S.n, d.pick(S.n, 6)
    w = S.fields.noise(S.ps * d.u(n, 0.8, 3), 4, 0.6)
    hi = S.fields.noise(S.ps * d.u(n, 14, 40), 2)
    patch = smooth(w[:, :1], d.u(n, -0.6, 0.1), d.u(n, 0.2, 0.8))
    edge = smooth(S.edge + 0.1 * w[:, 1:2], d.u(n, 0.12, 0.4), 0.0)
    face = torch.where(d.pick(n, 3) == S.face, torch.ones_like(patch), torch.zeros_like(patch)) * smooth(w[:, 2:3], -0.9, 0.3)
    cryst = smooth(hi[:, :1] + 0.6 * w[:, :1], 0.25, 0.6)
    fluff = smooth(w[:, 1:2] + 0.35 * hi[:, 1:2], 0.05, 0.6)
    wipe = smooth(S.fields.noise2(turn(S.uv, d.u(n, 0, 6)) * torch.tensor([0.5, 7.0], device=w.device).view(1, 2, 1, 1), 2)[:, :1], -0.9, 0.9)
    a = choose(look, patch, edge, face, cryst, fluff, wipe * smooth(w[:, :1], -0.5, 0.2))
    a = (a * (1 + 0.25 * hi[:, 2:3] * d.u(n, 0, 1))).clamp(0, 1)
    white = to_linear(hsv(d.u(n, 0.05, 0.65), d.u(n, 0, 0.06), d.u(n, 0.86, 1)))
    k = a * d.u(n, 0.22, 0.85)
    S.alb = mix(S.alb, white, k)
    S.spec = S.spec * (1 - 0.9 * k)
    S.rough = mix(S.rough, torch.ones_like(S.rough), k)
    S.hgt = S.hgt + a * (0.004 * hi[:, 3:]) * d.u(n, 0, 1.5) + torch.where(look == 4, 0.02 * a, 0 * a)
    return smooth(a, 0.1, 0.5)


def drag_lines(S, d):
    """Straight scratches on a cut face: one, several, a fine band, or with colour dragged along."""
    n, look = S.n, d.pick(S.n, 5)
    ang = torch.where(d.chance(n, 0.6) > 0, d.pick(n, 2).float() * 1.571 + d.u(n, -0.12, 0.12), d.u(n, 0, 3.14))
    uv = turn(S.uv, ang)
    v = uv[:, 1:2] + d.u(n, 0, 0.06) * d.chance(n, 0.4) * torch.sin(uv[:, :1] * 1.1) + 0.002 * S.fine[:, :1]
    c = S.grow ** 0.5 * choose(look, d.log(n, 0.5, 1.1), d.log(n, 0.12, 0.35), d.log(n, 0.025, 0.06), d.log(n, 0.1, 0.4), d.log(n, 0.05, 0.15))
    q = v / c + d.u(n, 0, 60)
    i = torch.floor(q)
    out, hg = torch.zeros_like(q), torch.zeros_like(q)
    t = S.fields.sites
    row = d.pick(n, 60) * 64
    keep = choose(look, d.u(n, 0.6, 1), d.u(n, 0.3, 0.9), d.u(n, 0.4, 0.95), d.u(n, 0.3, 0.8), d.u(n, 0.2, 0.6))
    band = torch.where(look == 2, smooth(S.fields.noise2(v * torch.tensor([1.0, 0.0], device=v.device).view(1, 2, 1, 1) * 1.3)[:, :1], -0.1, 0.25), torch.ones_like(q))
    wid = torch.maximum(S.grow * d.log(n, 0.004, 0.018) * choose(look, *[d.u(n, 0.8, 1.8)] * 2, d.u(n, 0.4, 0.9), d.u(n, 0.8, 1.5), d.u(n, 0.5, 1)), S.px * 0.8)
    for o in (-1, 0, 1):
        k = (row + torch.remainder(i + o, 64).long())
        s0, ln = t[4][k] * 2.6 - 1.6, 0.5 + 3.0 * t[5][k]
        u0 = uv[:, :1] - S.uv.mean((1, 2, 3), keepdim=True) * 0 - (uv[:, :1] * S.soap).sum((2, 3), keepdim=True) / S.soap.sum((2, 3), keepdim=True).clamp(min=1)
        ext = smooth(u0 - s0, 0, 0.03) * smooth(s0 + ln - u0, 0, 0.25)
        dist = (q - i - o - t[0][k]).abs() * c
        a = smooth(dist, wid * (0.6 + t[6][k]) + S.px * 0.5, wid * 0.2) * ext * (t[3][k] < keep).float() * (0.45 + 0.55 * t[2][k])
        out = torch.maximum(out, a)
    out = out * band * S.cut * smooth(S.edge, 0.0, 0.03)
    S.hgt = S.hgt - out * wid * d.u(n, 1.0, 2.8)
    S.occ = S.occ * (1 - out * d.u(n, 0.2, 0.65))
    shift = paint(S.tq + d.u(n, -0.3, 0.3), S.pal, S.edges, S.soft)
    col = torch.where(d.chance(n, 0.5) > 0, shift, deeper(S.alb, d.u(n, 0.5, 1.0)))
    S.alb = mix(S.alb, col, out * torch.where(look == 3, d.u(n, 0.5, 0.95), d.u(n, 0.15, 0.6)))
    return smooth(out, 0.08, 0.35)


def colour_bled(S, d):
    """A colour creeping over its border: one-sided halo, wash on both sides, blotches or a tinted fringe."""
    n, look = S.n, d.pick(S.n, 4)
    w = S.fields.noise(S.ps * d.u(n, 1.5, 5), 3, 0.6)
    wd = (d.log(n, 0.08, 0.35) / S.tscale.clamp(min=0.15)).clamp(0.03, 0.35)
    wd = wd * choose(look, 1 + 0.3 * w[:, :1], 1 + 0.3 * w[:, :1], (0.3 + 1.5 * smooth(w[:, :1], -0.2, 0.6)), 0.7 + 0.3 * w[:, 1:2]).clamp(min=0.1)
    dirn = torch.where(d.chance(n, 0.5) > 0, 1.0, -1.0)
    strength = d.u(n, 0.6, 1.0)
    one = d.chance(n, 0.5)
    sel = (d.raw(n, 1, 1, 1) * S.k.float()).long()
    total = torch.zeros_like(S.hgt)
    alb = S.alb
    for i in range(5):
        x = S.tq - S.edges[:, i:i + 1]
        use = torch.where(one > 0, (sel == i).float(), torch.ones_like(strength)) * (S.k > i).float()
        lo, hi = S.pal[i], S.pal[i + 1]
        src = torch.where(dirn > 0, lo, hi)
        y = x * dirn
        fall = torch.exp(-(y.clamp(min=0) / wd) ** 1.3) * smooth(y, -S.soft * 0.5, S.soft * 0.5)
        wash = torch.exp(-(x / wd) ** 2)
        both = mix(lo, hi, smooth(x, -wd, wd))
        a = choose(look, fall, wash, fall, fall) * strength * use * (x.abs() < 0.5).float()
        tint = choose(look, src.expand_as(alb), both.expand_as(alb), src.expand_as(alb), (src * src.clamp(min=0.05).sqrt()).expand_as(alb))
        alb = mix(alb, tint, a * (0.9 + 0.2 * w[:, 2:3]).clamp(0, 1))
        total = torch.maximum(total, a)
    S.alb = alb
    return smooth(total, 0.1, 0.4)
