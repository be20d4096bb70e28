"""Tables, cloths and walls, and the skin of a hand: albedo, height and roughness of all that is not soap."""
import numpy as np
import torch
from press_noise import sstep, mix

KINDS = "wood plank marble linen gingham concrete paper slate tile bamboo felt kraft".split()
TINT = {"wood": (.35, .2, .1), "plank": (.5, .38, .26), "marble": (.75, .74, .72), "linen": (.6, .54, .45), "gingham": (.75, .74, .7),
        "concrete": (.4, .4, .39), "paper": (.82, .82, .8), "slate": (.06, .065, .07), "tile": (.7, .72, .72), "bamboo": (.55, .38, .2),
        "felt": (.2, .25, .3), "kraft": (.42, .28, .16)}
HUES = [(.3, .05, .06), (.06, .12, .28), (.1, .2, .1), (.25, .25, .24), (.4, .2, .06), (.15, .08, .05)]


def ground(g, nz, rs, n, dev, kinds_soap):
    X = g["X"]
    uv = X[:, [0, 2]]
    a = torch.from_numpy(rs.uniform(0, 3.14, (n, 1, 1, 1)).astype(np.float32)).to(dev)
    ca, sa = torch.cos(a), torch.sin(a)
    uv = torch.cat([ca * uv[:, :1] - sa * uv[:, 1:], sa * uv[:, :1] + ca * uv[:, 1:]], 1) + 11
    near = sstep(.35, .06, g["t"] * .004)
    alb = torch.ones_like(X) * .5
    h = torch.zeros_like(X[:, :1])
    rough = torch.full_like(h, .6)
    pick = rs.randint(len(KINDS), size=n)
    U = rs.rand(n, 6)
    for kk, name in enumerate(KINDS):
        q = np.nonzero(pick == kk)[0]
        if not len(q):
            continue
        i = torch.tensor(q, device=dev)
        N, p = nz.sub(i), uv[i]
        u = torch.from_numpy(U[q].astype(np.float32)).to(dev)
        s = lambda j: u[:, j].view(-1, 1, 1, 1)
        base = torch.tensor(TINT[name], device=dev).view(1, 3, 1, 1) * (.6 + .7 * s(0))
        hue = torch.tensor(HUES, device=dev)[(u[:, 1] * 6).long().clamp_max(5)][:, :, None, None]
        x, y = p[:, :1], p[:, 1:]
        c, hh, r = base.expand(-1, -1, x.shape[2], x.shape[3]), 0 * x, .6 + 0 * x
        if name in ("wood", "plank", "bamboo"):
            wd = {"wood": 60, "plank": 9, "bamboo": 2.2}[name] * (.7 + .6 * s(2))
            b = torch.floor(y / wd)
            gr = N.flat(torch.cat([x * .06 + b * 7, y * .9 + b * 3], 1), 4, 1, 2, 0, .6)
            ring = torch.sin(10 * N.flat(torch.cat([x * .025 + b * 3, y * .25 + b], 1), 1, 1, 6) * 3)
            fib = N.flat(torch.cat([x * .5, y * 9], 1), 2, 1, 1, 1)
            seam = (1 - ((y / wd - b - .5).abs() * 2 - .97).clamp_min(0) / .03)
            c = c * (1 + .25 * gr + .1 * ring + .1 * fib + .12 * torch.sin(b * 12.9)) * (.25 + .75 * seam)
            hh, r = .01 * fib + .02 * gr, .3 + .4 * s(3) + 0 * x
        elif name == "marble":
            v = N.flat(p * .12 + .5 * N.flat(p * .2, 3, 2, 4), 4, 1, 3, 2, .55).abs()
            c = mix(c, torch.full_like(c, .3), sstep(.12, .0, v) * .5) * (1 + .05 * N.flat(p * .3, 3))
            r = .2 + 0 * x
        elif name in ("linen", "gingham", "felt"):
            f = 9 + 8 * s(2)
            wx, wy = torch.sin(x * f + N.flat(p, 1)), torch.sin(y * f + N.flat(p + 9, 1))
            wv = torch.where((torch.floor(x * f / 6.283) + torch.floor(y * f / 6.283)) % 2 > .5, wx, wy) * near[i]
            fold = N.flat(p * .13, 2, 1, 8)
            if name == "gingham":
                P_ = 1.5 + 2 * s(4)
                k = ((x / P_) % 2 > 1).float() + ((y / P_) % 2 > 1).float()
                c = mix(c, hue * 1.5, k * .45)
            elif s(5).mean() > .4:
                c = mix(c, hue * 1.6, (s(5) > .5).float() * .8)
            c = c * (1 + .12 * wv + .06 * N.flat(p * 6, 2))
            hh, r = .015 * wv + .8 * fold * s(3), .95 + 0 * x
        elif name in ("concrete", "slate"):
            v = N.flat(p * .4, 5, 1, 3, 0, .6)
            c = c * (1 + .22 * v + .12 * N.flat(p * 6, 2))
            hh, r = .04 * v, .7 - .3 * s(3) + 0 * x
        elif name == "tile":
            f = 3 + 5 * s(2)
            gx = torch.maximum(((x / f) % 1 - .5).abs(), ((y / f) % 1 - .5).abs())
            c = mix(mix(c, hue * 2, (s(4) > .5).float()), torch.full_like(c, .35), sstep(.47, .485, gx))
            r, hh = .15 + 0 * x, -.1 * sstep(.46, .49, gx)
        else:
            v = N.flat(p * 5, 3)
            c = mix(c, hue * 1.7, (s(4) > .75).float()) * (1 + .05 * v + .03 * N.flat(p * .3, 2))
            hh, r = .004 * v, .9 + 0 * x
        alb[i], h[i], rough[i] = c, hh + 0 * x, r
    wall = g["what"] == 1
    wc = torch.from_numpy((rs.uniform(.05, .8, (n, 1)) * rs.uniform(.8, 1.1, (n, 3))).astype(np.float32)).to(dev)[:, :, None, None]
    blob = nz.flat(X[:, :2] * .06 + 3, 2, 3, 5) * .15 + .6 * nz.flat(X[:, :2] * .05 + 8, 2, 1, 2)
    alb = torch.where(wall, wc * (1 + torch.from_numpy(rs.uniform(0, .8, (n, 1, 1, 1)).astype(np.float32)).to(dev) * blob), alb)
    h = torch.where(wall, torch.zeros_like(h), h)
    rough = torch.where(wall, torch.ones_like(h), rough)
    # hand
    tone = torch.from_numpy(np.array([(.62, .38, .28), (.5, .28, .18), (.3, .15, .09), (.13, .06, .035), (.7, .46, .36)], np.float32)
                            [rs.randint(5, size=n)]).to(dev)[:, :, None, None]
    if (g["what"] == 3).any():
        sk = nz.fbm(X * 1.2, 3)
        lines = nz.fbm(X * torch.tensor([3., 9., 3.], device=dev).view(1, 3, 1, 1), 2)
        hand = g["what"] == 3
        alb = torch.where(hand, tone * (1 + .1 * sk) * torch.cat([1 + .06 * sk, 1 - .04 * sk, 1 - .04 * sk], 1), alb)
        h = torch.where(hand, .012 * lines, h)
        rough = torch.where(hand, torch.full_like(h, .45), rough)
    # things that are no soap at all
    no = torch.from_numpy(np.asarray(kinds_soap, np.float32)).to(dev).view(n, 1, 1, 1) > 0
    col = torch.from_numpy((rs.uniform(.03, .8, (n, 3))).astype(np.float32)).to(dev)[:, :, None, None]
    thing = no & (g["what"] == 2)
    card = torch.from_numpy((rs.rand(n, 1, 1, 1) < .5).astype(np.float32)).to(dev)
    grain = nz.fbm(g["P"] * torch.tensor([.5, 8., .5], device=dev).view(1, 3, 1, 1), 3)
    alb = torch.where(thing, col * (1 + .25 * card * grain), alb)
    rough = torch.where(thing, .1 + .7 * card + 0 * h, rough)
    h = torch.where(thing, torch.zeros_like(h), h)
    return alb.clamp(.01, .97), h, rough.clamp(.08, 1)
