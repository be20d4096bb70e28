"""What the soap lies on, what else is there, and the blurred room behind."""
import torch
from bench_noise import smooth, mix, dots, cells

NT = 10


def table(c, kind):
    """c: X world place [m,3,h,w] (y up), noise, tc [m,3,3] colours, q, seed. -> alb, relief, gloss"""
    X, n = c['X'], c['noise']
    ca, sa = torch.cos(c['q'][0] * 6.28), torch.sin(c['q'][0] * 6.28)
    x, z = X[:, :1] * ca + X[:, 2:3] * sa, -X[:, :1] * sa + X[:, 2:3] * ca
    o = torch.zeros_like(x)
    P = torch.cat([x, o, z], 1)
    t0, t1, t2 = (c['tc'][:, i][:, :, None, None] for i in range(3))
    K = lambda k: (kind == k).view(-1, 1, 1, 1)
    alb, hgt, gl = t0.expand_as(P) * (1 + .05 * n.fbm(P, .15, 1.0, 3)), n(P, 6.0, 2.0) * .004, o + .15
    # wood: planks, grain drawn out, rings, knots
    wd = 6 + 8 * c['q'][1]
    pl = (z / wd).floor()
    G = torch.cat([x * .07 + pl * 7.3, z * .6 + .6 * n(torch.cat([x * .08, z * .1, pl], 1), 1.0, 3.0), pl * 3.1 + o], 1)
    gr = n.fbm(G, 1.0, 5.0, 3, gain=.6)
    fine = n(torch.cat([x * .35, z * 6, o], 1), 1.0, 2.0)
    ring = torch.sin(gr * 9 + z * .6)
    wood = mix(t0, t0 * .45, (smooth(-1, 1, ring) * .5 + .25 * fine + .2 * gr).clamp(0, 1)) * (1 + .12 * torch.sin(pl * 12.9))
    gapl = smooth(.12, .03, ((z / wd) - pl - .5).abs().sub(.5).abs() * wd) * (c['q'][2] > .35).float()
    wood = mix(wood, wood * .12, gapl)
    alb, hgt = torch.where(K(0), wood, alb), torch.where(K(0), -gapl * .1 + fine * .012, hgt)
    # linen / towel weave
    fr = 3.5 + 5 * c['q'][1]
    wv = torch.sin(x * fr * 3.1 + n(P, 1.0, 1.0)) * torch.sin(z * fr * 3.1)
    fold = n.fbm(n.warp(P, .08, 3.0, 2.0, 2), .09, 8.0, 2) * .9
    st = smooth(.75, .85, torch.sin(x * (.3 + .6 * c['q'][3]))) * (c['q'][2] > .55).float()
    cl = mix(t0, t1, st) * (1 + .16 * wv + .06 * n(P, 9.0, 1.0))
    alb, hgt = torch.where(K(1), cl, alb), torch.where(K(1), wv * .025 + fold, hgt)
    # checked cloth
    ck = (torch.sin(x * .8 + o).sign() + torch.sin(z * .8).sign()) * .25 + .5
    chk = mix(t0 * .5 + .4, t1, ck) * (1 + .1 * wv)
    alb, hgt = torch.where(K(2), chk, alb), torch.where(K(2), wv * .02 + fold * .7, hgt)
    # marble and stone
    ve = smooth(.1, .0, n.fbm(n.warp(P, .07, 4.0, 3.0, 3), .07, 2.0, 3).abs())
    alb = torch.where(K(3), mix(t0 * .3 + .6, t1 * .5 + .15, ve * .6) * (1 + .05 * n.fbm(P, .3, 6.0, 3)), alb)
    gl, hgt = torch.where(K(3), o + .75, gl), torch.where(K(3), o, hgt)
    sl = n.fbm(P, .5, 2.0, 4, gain=.6)
    alb = torch.where(K(4), (o + .06 + .02 * sl).clamp(min=.01) * (.5 + t0), alb)
    hgt = torch.where(K(4), sl * .06, hgt)
    # kraft or baking paper with creases
    cr = (n.fbm(n.warp(P, .1, 2.0, 2.0, 2), .12, 8.0, 3).abs())
    pap = mix(P.new_tensor([.50, .33, .18]).view(1, 3, 1, 1), P.new_tensor([.85, .83, .78]).view(1, 3, 1, 1), (c['q'][2] > .5).float())
    alb = torch.where(K(5), pap * (1 + .06 * n(P, 9.0, 2.0) + .04 * n(P, 3.0, 2.0)), alb)
    hgt = torch.where(K(5), -smooth(.08, .0, cr) * .06 + cr * .3, hgt)
    # wire rack over a dark or light underneath
    wx, wz = (torch.remainder(x, 1.9) - .95).abs(), (torch.remainder(z, 11.) - 5.5).abs()
    wire = torch.maximum(smooth(.2, .12, wx), smooth(.24, .16, wz))
    shw = smooth(.34, .1, (torch.remainder(x + .7, 1.9) - .95).abs())
    und = t1 * (1 - .55 * shw) * (1 + .1 * n.fbm(P, .4, 2.0, 2))
    alb = torch.where(K(6), mix(und, o + .55, wire), alb)
    hgt, gl = torch.where(K(6), wire * (.2 - wx * .9).clamp(min=0) * .8, hgt), torch.where(K(6), o + wire * .9, gl)
    # tiles
    tw = 7 + 6 * c['q'][1]
    tx, tz = torch.remainder(x, tw), torch.remainder(z, tw)
    gt = torch.maximum(smooth(.3, .2, torch.minimum(tx, tw - tx)), smooth(.3, .2, torch.minimum(tz, tw - tz)))
    alb = torch.where(K(7), mix(t0 * .5 + .35, t1 * .4 + .1, gt), alb)
    hgt, gl = torch.where(K(7), -gt * .1, hgt), torch.where(K(7), .8 - gt * .7, gl)
    # flowery oilcloth, terrazzo
    d, h, _ = dots(P + .37, .22, c['seed'] + 60, .7, .15, .4, 1.0)
    fl = (smooth(1, .9, d) - smooth(.45, .35, d)).clamp(0, 1)
    alb = torch.where(K(8), mix(mix(t0, t1, fl), t2, smooth(.4, .3, d)), alb)
    gl = torch.where(K(8), o + .6, gl)
    dd, gap, num = cells(P + .11, .7, c['seed'] + 61)
    alb = torch.where(K(9), mix(t0 * .4 + .5, mix(t1, t2, num), smooth(.05, .1, gap) * (num > .4).float() * (dd < .5).float()), alb)
    return alb.clamp(.006, .92), hgt, gl


def things(c, mat):
    """c with P local, cols etc.; mat field. moulds, paper, wood, cheese, stone, sponge, dark sweet"""
    P, n = c['P'], c['noise']
    t1, t2 = c['tc'][:, 1][:, :, None, None], c['tc'][:, 2][:, :, None, None]
    f = n.fbm(P, 1.0, 2.0, 3)
    o = f * 0
    rgb = lambda *v: P.new_tensor(v).view(1, 3, 1, 1)
    alb, hgt, gl = (t2 * (1 + .03 * f)).expand_as(P), n(P, 5.0, 1.0) * .006, o + .35
    pap = rgb(.6, .45, .3) * (1 + .08 * n(P, 9.0, 1.0)) * (.6 + .4 * t1)
    alb = torch.where(mat == 3, pap, alb)
    wood = mix(rgb(.52, .33, .17), rgb(.25, .13, .06), smooth(-1, 1, torch.sin(n.fbm(P * P.new_tensor([.1, 1, 1]).view(1, 3, 1, 1), .8, 1.0, 2) * 7)))
    alb = torch.where(mat == 4, wood, alb)
    d, h, _ = dots(P, .8, c['seed'] + 77, .5, .1, .42, 1.5)
    pit = smooth(1.02, .9, d)
    alb = torch.where(mat == 5, rgb(.82, .58, .16) * (1 - .5 * pit + .04 * f), alb)
    hgt = torch.where(mat == 5, -pit * .3, hgt)
    alb = torch.where(mat == 6, (t1 * .4 + .12) * (1 + .35 * n.fbm(P, 3.0, 3.0, 3)), alb)
    hgt = torch.where(mat == 6, n.fbm(P, 2.0, 3.0, 3) * .06, hgt)
    d2, _, _ = dots(P, 2.6, c['seed'] + 78, .8, .15, .45, 1.0)
    p2 = smooth(1.05, .7, d2)
    alb = torch.where(mat == 7, (t2 * .6 + rgb(.3, .26, .05)) * (1 - .7 * p2), alb)
    hgt = torch.where(mat == 7, -p2 * .15, hgt)
    alb = torch.where(mat == 8, rgb(.10, .045, .022) * (1 + .15 * f), alb)
    return alb.clamp(.006, .92), hgt, gl


def room(c, rd):
    """beyond the table: blobs of a room out of focus"""
    n = c['noise']
    a = n.fbm(rd, 1.6, 3.0, 2)
    b = smooth(.5, .6, n(rd, 5.0, 9.0)) * (c['q'][4] > .5).float()
    t0, t2 = c['tc'][:, 0][:, :, None, None], c['tc'][:, 2][:, :, None, None]
    return (mix(t0, t2, smooth(-.6, .6, a)) * (.35 + .5 * c['q'][5]) + b * .5).clamp(.003, 2)
