"""The soap itself: palettes mixed from pigments in a cream base, patterns, and the table and clutter."""
import colorsys
import torch
from relief_fields import fbm, noise, dots, smooth, lerp, look

STYLES = ["plain", "layers", "swirl", "drops", "comb", "ombre", "veins", "embeds", "marble-centre"]


def to_ks(r):
    """Reflectance to absorption over scattering."""
    r = r.clamp(.004, .985)
    return (1 - r) ** 2 / (2 * r)


def to_r(ks):
    """Absorption over scattering back to reflectance."""
    return 1 + ks - torch.sqrt(ks * ks + 2 * ks)


def palette(r, pale=False):
    """Six linear reflectances: a cream base with pigments of one family."""
    base = [(.86, .80, .66), (.90, .88, .82), (.80, .70, .50), (.72, .58, .38), (.84, .79, .72)][r.randrange(5)]
    fam = r.choices(["natural", "pastel", "strong", "dark", "hue", "earth", "brown"], [2, 2, 1, .7, 1.2, 1.2, .8])[0]
    if pale and r.random() < .7:
        fam = r.choice(["natural", "pastel"])
    out = []
    h0 = r.random()
    for i in range(6):
        h = (h0 + (r.gauss(0, .05) if fam == "hue" else r.random())) % 1
        sat, val, amt = r.uniform(.4, .98), r.uniform(.15, .9), r.uniform(.3, 2.0)
        if fam == "natural":
            h, sat, amt = r.uniform(.06, .15), r.uniform(.1, .5), r.uniform(0, .4)
        if fam == "pastel":
            amt, sat = r.uniform(.05, .3), r.uniform(.3, .8)
        if fam == "earth":
            h, val = r.choice([.04, .08, .11, .22, .3, .02]) + r.gauss(0, .01), r.uniform(.2, .6)
        if fam == "brown":
            h, val, sat, amt = r.uniform(.03, .09), r.uniform(.08, .4), r.uniform(.4, .8), r.uniform(.5, 2.5)
        if fam == "dark" and i % 2 == 0 or r.random() < .06:
            sat, val, amt = r.uniform(0, .3), .03, r.uniform(.6, 2.5)
        if r.random() < (.5 if i == 1 else .22):
            amt = r.uniform(0, .12)
        pig = [c ** 2.0 for c in colorsys.hsv_to_rgb(h % 1, sat, val)]
        ks = [(1 - min(max(b, .01), .98)) ** 2 / (2 * min(max(b, .01), .98)) + amt * (1 - max(p, .02)) ** 2 / (2 * max(p, .02)) * .35
              for b, p in zip(base, pig)]
        out.append(ks)
    return out


def pattern(s, x, y, z):
    """Colour coordinate of the chosen style at body points; whole numbers are borders between portions."""
    b = s.b
    n1 = fbm(s.vol, x * s.wf + 2.1, y * s.wf, z * s.wf * .6, 3)
    ax, ay, az = x + s.warp * n1[:, 0:1], y + s.warp * n1[:, 1:2], z + s.warp * n1[:, 2:3]
    n2 = fbm(s.vol, ax * s.wf * 1.7 + 7, ay * s.wf * 1.7, az * s.wf, 3)
    sx, sy = ax + s.warp * .6 * n2[:, 0:1], ay + s.warp * .6 * n2[:, 1:2]
    k = s.k
    up = (y / b + 1) * .5
    layers = (up + s.wave * n1[:, 3:4] * .12) * k
    swirl = (sx * s.sa + sy * s.sb) * s.freq + n2[:, 3:4] * s.freq * .5
    d1 = torch.sqrt((ax - s.cx) ** 2 + (ay - s.cy) ** 2 + 1e-6)
    d2 = torch.sqrt((ax + s.cx) ** 2 * .6 + (ay + s.cy * .5) ** 2 + 1e-6)
    drops = torch.minimum(d1, d2 + .3) * s.freq * 1.6
    comb = (y / b + s.wave * .35 * torch.sin(x * s.combf + s.cx * 9) * torch.sin(y * 2.1 + s.cy * 5) + .2 * n1[:, 0:1] * s.warp * 3) * s.freq * 1.4
    vein = 1 - smooth(.0, s.vw, (n2[:, 1:2] + .4 * n1[:, 3:4]).abs())
    vein2 = 1 - smooth(.0, s.vw * .7, (n2[:, 2:3] - .2).abs())
    veins = torch.maximum(vein, vein2 * (k > 2.5).float() * 2)
    sc, _, _, ra, rb = dots(s.table, x + .1 * n1[:, 0:1] * s.warp, y, s.ef, s.ed, .22, .42, 91, .8)
    emb = smooth(1.06, .98, sc) * (1 + torch.floor(rb * (k - 1).clamp(min=1)))
    mc = smooth(.9, .3, torch.sqrt((x * .9) ** 2 + (y / b) ** 2) + .25 * n1[:, 1:2])
    marble = swirl * mc
    opts = [torch.zeros_like(x) + .5, layers, swirl, drops, comb, up * (k - 1.01).clamp(min=.99) + .05 * n1[:, 3:4], veins, emb, marble]
    out = opts[0]
    for i, o in enumerate(opts):
        out = torch.where(s.style == i, o, out)
    return out, n1, n2


def mix(s, phi, soft):
    """Absorption of the mixed pigments at a colour coordinate: [n,3,H,W] and the portion index."""
    n, _, h, w = phi.shape
    i = torch.floor(phi)
    f = phi - i
    hard = smooth(1 - soft, 1.0, f)
    t = torch.where(s.graded > .5, f, hard)
    cap = s.k - 1
    wrap = lambda j: torch.where(s.open > .5, torch.remainder(j, s.k), torch.minimum(j.clamp(min=0), cap))
    get = lambda j: torch.gather(s.pal, 2, j.long().reshape(n, 1, -1).expand(n, 3, h * w)).reshape(n, 3, h, w)
    ia, ib = wrap(i), wrap(i + 1)
    return lerp(get(ia), get(ib), t), torch.where(t > .5, ib, ia)


def table_colour(s, p, foot):
    """Table and wall: albedo, relief, roughness from world position."""
    x, y = p[:, 0:1], p[:, 1:2]
    gx, gy = x * s.tc + y * s.ts, y * s.tc - x * s.ts
    far = torch.exp(-(foot * s.tw * .5) ** 2)
    fade = 1 / (1 + (foot * 30) ** 2)
    n1 = fbm(s.vol, gx * .8, gy * .8, x * 0 + 3, 3)
    wood = fbm(s.vol, gx * .5 + n1[:, 0:1] * .15, gy * 7, x * 0 + 8, 3)
    ring = .5 + .5 * torch.sin((gy * 5 + n1[:, 1:2] * 2.5) * s.tf * 2)
    plank = smooth(.03, .0, (torch.remainder(gy, 1.6) - .8).abs())
    woodv = .5 + .35 * wood[:, 0:1] * s.tk * fade + .25 * (ring - .5)
    stone = fbm(s.vol, gx * 2 * s.tf, gy * 2 * s.tf, x * 0 + 1, 4)
    stone = stone * fade
    vein = smooth(.12, 0., (stone[:, 1:2] + n1[:, 0:1] * .5).abs()) * fade
    weave = torch.sin(gx * s.tw) * torch.sin(gy * s.tw) * far
    fold = n1[:, 2:3]
    checks = (torch.sin(gx * 3) * torch.sin(gy * 3) > 0).float()
    speck = dots(s.table, gx, gy, s.tf * 7, .5, .1, .45, 33)[0]
    mixes = [woodv, woodv - plank * .6, .5 + .5 * stone[:, 0:1] - vein * .8, .5 + .2 * weave + .15 * fold, .5 + .06 * stone[:, 2:3],
             checks * .8 + .1 + .1 * weave, .3 + .7 * smooth(1.1, .9, speck) * fade, .5 + .05 * fold]
    rel = [.01 * wood[:, 0:1], .01 * wood[:, 0:1] - .05 * plank, .002 * stone[:, 0:1], .012 * weave + .09 * fold, .004 * stone[:, 2:3] * s.tk,
           .006 * weave, 0 * x, .03 * fold]
    v, h = mixes[0], rel[0]
    for i in range(1, 8):
        v, h = torch.where(s.ttype == i, mixes[i], v), torch.where(s.ttype == i, rel[i], h)
    alb = torch.exp(lerp(torch.log(s.tc1), torch.log(s.tc2), v.clamp(-.3, 1.3)))
    return alb.clamp(.01, .95), h


def clutter_colour(s, loc, q):
    """Albedo of things beside the soap, from their local position."""
    u = q[:, 10:11]
    seed = torch.cat([torch.sin(u * 3.1), torch.sin(u * 5.7 + 1), torch.sin(u * 7.9 + 2)], 1)
    grey = seed.mean(1, keepdim=True)
    base = (.42 + .36 * (grey + (seed - grey) * (.2 + .4 * torch.sin(u * 11).abs()))).clamp(.03, .9)
    f = fbm(s.vol, loc[:, 0:1] * 1.2 + u, loc[:, 1:2] * (2 + 7 * (u > 3).float()), loc[:, 2:3] * 2, 3)
    alb = base * torch.exp(.45 * f[:, 0:1] * (.4 + (u.abs() % 2)))
    skin = s.skin * torch.exp(.12 * f[:, 1:2] + .1 * f[:, 2:3])
    return torch.where(q[:, 9:10] > 1.5, skin, alb).clamp(.01, .95), .01 * f[:, 0:1]
