"""Procedural materials of tables, cloths, papers and of things that are no soap."""
import torch
from .bank import noise3, cells, sstep, fr, lerp

NG = 12


def _st(a, b, c):
    return torch.stack([a, b, c], 1)


def ground(x, y, foot, typ, r, c1, c2):
    """x, y world [n,H,W]; typ list of python ints; r(j) random [n,1,1]; c1, c2 [n,3] linear colours
    -> albedo [n,3,H,W], height, roughness"""
    n, H, W = x.shape
    alb = torch.zeros(n, 3, H, W, device=x.device)
    hgt = torch.zeros_like(x)
    rou = torch.zeros_like(x)
    for g in sorted(set(typ)):
        ix = torch.tensor([i for i, q in enumerate(typ) if q == g], device=x.device)
        a, h, ro = _mat(g, x[ix], y[ix], foot[ix], lambda j: r(j)[ix], c1[ix][:, :, None, None], c2[ix][:, :, None, None])
        alb[ix], hgt[ix], rou[ix] = a, h + 0 * x[ix], ro + 0 * x[ix]
    return alb, hgt, rou


def _mat(g, x, y, foot, r, c1, c2):
    th = r(0) * 6.28
    x, y = torch.cos(th) * x + torch.sin(th) * y + 9 * r(1), torch.cos(th) * y - torch.sin(th) * x + 9 * r(2)
    z0 = 7 * r(3) + 0 * x
    fade = lambda per: (per / foot / 3 - .4).clamp(0, 1)
    n = noise3(x / (.15 + .5 * r(4)), y / (.15 + .5 * r(4)), z0)
    f = noise3(x / .03, y / .03, z0)
    one = torch.ones_like(x)
    if g == 0 or g == 11:                                     # paper, seamless
        return c1 * (1 + .03 * f[3] * fade(.03) + .04 * n[0] * (g == 0))[:, None], .0004 * f[3], .8 * one
    if g in (1, 8):                                           # planks
        w = .25 + .7 * r(5)
        pl = (y / w).floor()
        hs = fr(torch.sin(pl * 12.99 + r(6) * 50) * 437.5)
        gn = noise3(x / 1.1 + hs * 40, y / .06 + .3 * n[0], z0 + hs * 20)
        fi = noise3(x / .25 + hs * 9, y / .012, z0)
        ring = .5 + .5 * torch.sin(gn[0] * 2.5 + y / w * 9 + n[0] * 1.5)
        t = (.35 * ring + .3 * (gn[3] * .3 + .5) + .14 * fi[0] * fade(.012) + .5 * (hs - .5) + .1).clamp(0, 1)
        gap = sstep(.012 + foot / w, .004, (fr(y / w) - .5).abs() * -1 + .5) * (r(7) > .3).float()
        a = lerp(c1, c2, t[:, None]) * (1 - .75 * gap)[:, None]
        return a, -.006 * gap + .0008 * fi[0], (.35 + .4 * r(4)) * one
    if g == 2:                                                # marble
        q = noise3(x / .5 + .5 * n[0], y / .5 + .5 * n[1], z0)
        v = torch.exp(-(q[0].abs() / (.03 + .12 * r(5)))) * sstep(-.5, 1, q[2]) + .4 * torch.exp(-(q[1] + .3 * n[3]).abs() / .05) * sstep(0, 1, q[2])
        return lerp(c1, c2, (v * .8 + .1 * q[3].clamp(-1, 1) + .08).clamp(0, 1)[:, None]), 0 * x, (.15 + .2 * r(6)) * one
    if g in (3, 4, 9):                                        # woven cloth, checked, striped
        per = .018 + .04 * r(5)
        fa = fade(per)
        u, v = x / per + .12 * n[0], y / per + .12 * n[1]
        over = ((u.floor() + v.floor()) % 2)
        hu, hv = (fr(u) - .5).abs() * 2, (fr(v) - .5).abs() * 2
        h = torch.where(over > .5, 1 - hv * hv - .3 * hu, 1 - hu * hu - .3 * hv)
        h = h * fa + .45 * (1 - fa)
        P = .12 + .6 * r(6)
        su, sv = (fr(x / P + .01 * n[0]) < .5).float(), (fr(y / P + .01 * n[1]) < .2 + .4 * r(7)).float()
        t = torch.where(over > .5, su, sv) * fa + (1 - fa) * .5 * (su + sv) if g == 4 else (sv if g == 9 else .15 * n[0])
        a = lerp(c1, c2, (t + 0 * x).clamp(0, 1)[:, None]) * (.55 + .45 * h + .06 * f[0] * fade(.03))[:, None]
        return a, per * .25 * h * fa + .03 * n[0] * r(4), .9 * one
    if g == 5:                                                # granite, terrazzo
        s = .02 + .12 * r(5)
        F1, e, dx, dy, i1, i2 = cells(x / s, y / s)
        fa = fade(s)
        chip = sstep(.05, .12, e - .22 * r(6)) * fa
        col = lerp(c2, c1, i1[:, None]) * (.5 + .9 * i2)[:, None]
        return lerp(c1, col, (chip * .9)[:, None]) * (1 + .05 * f[3])[:, None], 0 * x, .35 * one
    if g == 6:                                                # tiles
        s = .3 + .9 * r(5)
        row = (y / s).floor()
        ux = x / s * (1 - .5 * (r(6) > .5).float()) + .5 * (row % 2) * (r(7) > .5).float()
        e = torch.minimum(.5 - (fr(ux) - .5).abs(), .5 - (fr(y / s) - .5).abs()) * s
        gr = sstep(.012, .012 + foot * 1.5, e)
        hs = fr(torch.sin(ux.floor() * 12.99 + row * 78.2) * 437.5)
        return lerp(c2, c1 * (.9 + .2 * hs + .04 * n[0])[:, None], gr[:, None]), .006 * sstep(.0, .03, e), lerp(.8 * one, .18 + .2 * r(4), gr)
    if g == 7:                                                # lace over a cloth
        s = .1 + .12 * r(5)
        F1, e, dx, dy, i1, i2 = cells(x / s * .6, y / s * .6)
        gx, gy = fr(x / s) - .5, fr(y / s) - .5
        rad, an = (gx * gx + gy * gy).sqrt(), torch.atan2(gy, gx)
        ring = sstep(.07, .03, (rad - .3 - .08 * torch.cos(an * 6)).abs()) + sstep(.05, .02, (rad - .12).abs())
        ring = ring + sstep(.05, .02, torch.minimum(gx.abs(), gy.abs())) * (rad > .3).float()
        m = torch.where(r(6) < .6, ring.clamp(0, 1), sstep(.14, .07, e)) * fade(s * .3) + .5 * (1 - fade(s * .3))
        return lerp(c2, .8 + 0 * c1, m[:, None]) * (1 + .08 * f[0])[:, None], .008 * m, .85 * one
    # rough stone, concrete, crumbs
    m = n[3] * .22 + f[3] * .16
    F1, e, dx, dy, i1, i2 = cells(x / (.06 + .1 * r(5)), y / (.06 + .1 * r(5)))
    cr = sstep(.16, .1, F1 / (.4 + i1)) * (i2 < .5 * r(6)).float() * fade(.05)
    a = lerp(lerp(c1, c2, (m + .3).clamp(0, 1)[:, None]), c2 * .5 + .2, cr[:, None])
    return a, .01 * n[3] * r(7) + .004 * f[3] + .01 * cr, .75 * one


def things(c, rnd):
    """albedo, height, roughness of solids that are no soap; rnd [n,16,4] per slot"""
    n, H, W = c.u.shape
    sl = c.idx.view(n, -1)
    R = [rnd[:, :, k].gather(1, sl).view(n, H, W) for k in range(4)]
    x, y, z = c.l
    m = c.mat
    nz = noise3(x / .14 + 9 * R[0], y / .14 + 9 * R[1], z / .14)
    fi = noise3(x / .02, y / .05 + 5 * R[2], z / .02)
    wd = noise3(x / 1.2 + 5 * R[0], y / .05, z / .05 + 9 * R[1])
    ring = .5 + .5 * torch.sin(y * 26 + 2 * wd[0] + nz[0])
    hue = [(.5 + .5 * torch.sin(6.28 * (R[0] + k / 3))) for k in range(3)]
    g = .06 + .6 * R[1]
    sat = R[2] * .8
    base = _st(*[(g * (1 - sat) + sat * h * .7) for h in hue])
    is_ = lambda k: (m == k).float()[:, None]
    wood = lerp(_st(.55 + 0 * g, .36 + 0 * g, .2 + 0 * g), _st(.2 + 0 * g, .1 + 0 * g, .05 + 0 * g), (.45 * ring + .12 * fi[0] + .5 * R[3]).clamp(0, 1)[:, None])
    fur = _st(.3 + .3 * R[1], .2 + .25 * R[1], .13 + .25 * R[1]) * (.8 + .35 * fi[0] + .3 * nz[0]).clamp(.1, 2)[:, None]
    fur = lerp(fur, .8 + 0 * fur, (sstep(.2, .5, nz[1]) * (R[3] > .4).float())[:, None])
    prn = ((fr(z * 11 + R[0] * 9) < .45) & (torch.sin(x * 70 + 4 * torch.sin(x * 23)) > -.2) & (x.abs() < .25)).float() * (R[2] > .3).float()
    card = lerp(_st(.45 + 0 * g, .31 + 0 * g, .18 + 0 * g), base, (R[3] > .5).float()[:, None])
    card = lerp(card, card * .25, prn[:, None])
    stripe = lerp(base, 1 - base * .6, (fr((x + z) * (5 + 14 * R[3])) < .4).float()[:, None] * (R[0] > .4).float()[:, None]) * (.85 + .12 * fi[0])[:, None]
    skin = _st(.72 - .5 * R[1] + .04 * nz[0], .46 - .36 * R[1] + .02 * nz[0], .34 - .28 * R[1]) * (1 + .05 * nz[3])[:, None]
    a = is_(0) * fur + is_(1) * wood + is_(2) * (.82 + .02 * nz[3])[:, None] + is_(3) * base + is_(4) * card + is_(5) * stripe
    fruit = (_st(*hue) * .7 + .02) * (1 + .15 * nz[3] + .2 * nz[0])[:, None]
    a = a + is_(6) * fruit + is_(7) * (.45 + .04 * wd[0])[:, None] + is_(8) * (.05 + .02 * nz[3])[:, None] + is_(9) * skin
    h = .012 * fi[0] * (m == 0) + .0015 * fi[0] * ((m == 1) | (m == 5)) + .0006 * nz[3] * (m == 9) + .004 * fi[3] * ((m == 6) | (m == 8))
    ro = .75 - .5 * ((m == 3) | (m == 6) | (m == 7)).float() - .25 * (m == 9).float()
    return a.clamp(.01, .92), h, ro
