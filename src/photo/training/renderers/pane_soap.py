"""What a bar is made of: poured patterns, decor, and sixteen flaws."""
import math
import numpy as np, torch
from pane_core import *

NAMES = 'coloured-specks smears white-specks translucent-veins crackle-network powdery-film dark-centre-ring orange-spots pinholes crack brown-outside-in colour-bled drag-lines layer-gap wrinkled-top mould-dimples'.split()
FACE = ['Z', 'Z', 'Z', 'Z', 'Z', 'Y', 'Z', 'Z', 'Z', 'Y', 'Z', 'Z', 'Z', 'Z', 'Y', 'X']

class Ctx: pass

def palette(rng, strong=False):
    U = rng.uniform
    def natural():
        return hsv(U(.07, .14), U(.05, .38), U(.72, .97))
    def clay():
        return hsv(rng.choice([.0, .03, .07, .09, .28, .33, .6, .95]) + U(-.02, .02), U(.15, .5), U(.45, .88))
    def bright():
        return hsv(rng.choice([.0, .04, .09, .13, .3, .42, .5, .58, .66, .75, .88, .95]) + U(-.03, .03), U(.3, .75), U(.35, .88))
    def pastel():
        return hsv(U(0, 1), U(.1, .32), U(.8, .97))
    def white(): return hsv(U(.08, .15), U(.0, .09), U(.88, .98))
    def dark(): return hsv(U(0, 1), U(0, .5), U(.08, .25))
    k = rng.choice(6, p=[.22, .2, .22, .16, .12, .08])
    first = [natural, clay, bright, pastel, white, dark][k]()
    rest = [[natural, clay, bright, pastel, white, dark][rng.choice(6, p=[.15, .18, .28, .14, .17, .08])]() for _ in range(3)]
    if strong:
        first = white() if rng.random() < .7 else pastel(); rest[0] = bright() if rng.random() < .8 else dark()
    if rng.random() < .3 and not strong:   # one family
        h = U(0, 1); rest = [hsv(h + rng.normal(0, .05), U(.2, .7), U(.35, .95)) for _ in range(3)]
    return [first] + rest

PATS = ['plain', 'mottle', 'layers', 'ombre', 'pot', 'drop', 'hanger', 'rings', 'embed', 'pencil', 'confetti', 'marble', 'halfs']
def choose(rng, flaws, S):
    """dict of one picture's batch of soap"""
    M = dict(seed=int(rng.integers(1 << 30)), no=float(rng.uniform(0, 900)))
    p = np.array([.22, .07, .1, .07, .12, .09, .09, .05, .05, .05, .04, .05, .04])
    if any(f in (10, 6, 7, 4) for f in flaws): p[0] += .5; p[1] += .25
    if 4 in flaws: p[0] += .5
    if 11 in flaws: p *= 0; p[[2, 5, 6, 4, 12, 8]] = [.3, .15, .15, .2, .15, .12]
    if 13 in flaws: p *= .15; p[[2, 9, 12]] = [.6, .3, .0]
    M['pat'] = PATS[rng.choice(len(PATS), p=p / p.sum())]
    M['pal'] = palette(rng, 11 in flaws)
    if 10 in flaws and rng.random() < .8: M['pal'][0] = hsv(rng.uniform(.08, .13), rng.uniform(.08, .3), rng.uniform(.8, .96))
    if 4 in flaws: M['pal'][0] = mix(M['pal'][0], np.array([.6, .58, .55]), .35)
    if 7 in flaws and rng.random() < .7: M['pal'][0] = hsv(rng.uniform(.08, .14), rng.uniform(.05, .3), rng.uniform(.8, .96))
    M['gloss'] = float(rng.uniform(.1, .9)); M['sss'] = float(rng.uniform(.2, 1))
    M['sp'] = float(rng.choice([.4, .7, 1, 1.4])); M['warp'] = float(rng.uniform(.2, 1.2))
    return M

def pattern(c, M):
    rng = np.random.default_rng(M['seed']); U = rng.uniform; dev = c.dev
    P = [col(v, dev) for v in M['pal']]; x, y, z = c.x, c.y, c.z
    w = fbm(c.p * torch.tensor([1, 1, .6], device=dev).view(3, 1, 1), .22, M['no'], 3); k = M['pat']; wp = M['warp']
    sharp = U(.02, .12) + c.pix * .4
    one = torch.ones_like(x)[None]; q = None
    if k == 'plain': a = P[0] * one
    elif k == 'mottle': a = P[0] * (1 + U(.1, .35) * w[0:1]) * (1 + .12 * w[1:2] * col((1, 0, -1), dev))
    elif k == 'layers':
        n = rng.integers(2, 5); ys = [float(v) * c.H[1] for v in np.sort(U(-.75, .75, n - 1))]; a = P[0] * one
        for i, y0 in enumerate(ys):
            wav = U(.02, .45) * w[i % 4] + U(-.08, .08) * x
            qq = y - y0 - wav; q = qq if q is None else q
            a = mix(a, P[(i + 1) % 4], sst(-sharp, sharp, qq)[None])
        c.bA, c.bB = P[1], P[0]
    elif k == 'ombre':
        t = (y / c.H[1] * .5 + .5 + .1 * w[0]).clamp(0, 1)
        if rng.random() < .5: n = int(rng.integers(3, 7)); t = (torch.floor(t * n) + sst(.4, .6, t * n % 1)) / n
        a = mix(P[0], P[1], t[None])
    elif k in ('pot', 'marble'):
        s = U(.25, .6) if k == 'pot' else U(.5, 1.2)
        f = fbm(c.p + 3 * wp * w[:3], s * .6, M['no'] + 5, 2 if k == 'pot' else 3)
        q = (f[0] - U(-.15, .3)) * 1.3; a = mix(P[0] * one, P[1], sst(-sharp, sharp, q)[None])
        if rng.random() < .6: a = mix(a, P[2], sst(-sharp, sharp, f[1] - U(.15, .5))[None])
        c.bA, c.bB = P[1], P[0]
    elif k == 'drop':
        X = x / U(.8, 1.8) + 1.2 * w[0] + .5 * torch.sin(y * U(.5, 1.2) + U(0, 6)); yy = y / c.H[1]
        q = (torch.cos(X * 2.2) * .55 + U(.1, .5) * yy + w[1] * .5 - U(-.2, .3)); a = mix(P[0] * one, P[1], sst(-sharp * 1.5, sharp * 1.5, q)[None])
        q2 = torch.cos(X * 2.2 + U(1, 3)) * .5 + .5 * w[2] - U(.2, .5); a = mix(a, P[2], sst(-sharp, sharp, q2)[None])
        c.bA, c.bB = P[1], P[0]
    elif k == 'hanger':
        s = U(.9, 2.2); X = x + wp * (1.1 * torch.sin(y * U(.7, 1.5) + U(0, 6) + w[0]) + .6 * w[1]); Y = y + wp * (.9 * torch.sin(x * U(.6, 1.3) + U(0, 6)) + .5 * w[2])
        t = (torch.sin(X * s) + torch.sin(Y * s * U(.6, 1.2))); q = t * .4
        a = mix(P[0] * one, P[1], sst(-sharp * 2, sharp * 2, t)[None]); t2 = (t + .6).abs() - U(.12, .3) * (1 if rng.random() < .4 else -1)
        a = mix(a, P[2], 1 - sst(-sharp, sharp, t2)[None]); c.bA, c.bB = P[1], P[0]
    elif k == 'rings':
        r = torch.sqrt((x - U(-2, 2) + w[0] * .5) ** 2 + (y - U(-2, 2) + .5 * w[1]) ** 2 * U(.7, 1.6)) * U(1, 2.6) + w[2] * wp * .6
        t = torch.sin(r * 2); a = mix(P[0] * one, P[1], sst(-.25, .25, t)[None]); a = mix(a, P[2], sst(.3, .45, torch.sin(r * .7 + 2))[None] * .8); q = t * .25
        c.bA, c.bB = P[1], P[0]
    elif k == 'embed':
        X, Y = x - U(-1.2, 1.2), y - U(-.7, .7); sh = rng.integers(0, 4); R = U(.7, 1.5)
        an = torch.atan2(Y, X); r = torch.sqrt(X * X + Y * Y)
        q = [lambda: R - r, lambda: R * (1 + .3 * torch.cos(an * 5)) - r, lambda: R - torch.maximum(X.abs(), Y.abs()), lambda: R * .95 - torch.sqrt(X * X + (Y * 1.1 - .75 * X.abs().clamp(max=1.4) + .25) ** 2)][sh]()
        q = q + .05 * w[0]; a = mix(P[0] * one, P[1], sst(-sharp * .5, sharp * .5, q)[None]); c.bA, c.bB = P[1], P[0]
    elif k == 'pencil':
        y0 = U(-.6, .6) * c.H[1]; qq = y - y0 - U(.05, .4) * w[0] - U(-.1, .1) * x
        a = mix(P[0] * one, P[1] if rng.random() < .6 else P[0], sst(-sharp, sharp, qq)[None])
        ln = 1 - sst(.02, .06 + c.pix, qq.abs() + .03 * w[1]); cl = col(hsv(*[(.1, .6, .3), (.12, .7, .7), (0, .02, .12), (.08, .7, .25)][rng.integers(0, 4)]), dev)
        a = mix(a, cl, ln[None] * U(.6, 1)); q = qq; c.bA, c.bB = P[1], P[0]
    elif k == 'confetti':
        d, e, h = worley(c.u + .3 * w[0], c.v + .3 * w[1], U(.5, 1.1), M['seed'] % 999)
        m = (sst(.04, .14, e) * (h < U(.3, .7)).float())[None]; pc = torch.where(h[None] < .2, P[1], torch.where(h[None] < .4, P[2], P[3])); a = mix(P[0] * one, pc, m * .9)
    else:
        q = x * math.cos(.3) + y * U(-.5, .5) + wp * .8 * w[0] - U(-1, 1); a = mix(P[0] * one, P[1], sst(-sharp, sharp, q)[None]); c.bA, c.bB = P[1], P[0]
    c.q = q; c.w = w
    if not hasattr(c, 'bA'): c.bA, c.bB = P[1], P[0]
    f = noise3(c.p, .9, M['no'] + 40)
    a = a * (1 + U(.01, .06) * w[3:4] + U(.005, .04) * f[:1])
    if rng.random() < .5: c.hgt = c.hgt + U(.001, .006) * noise3(c.p, 7., M['no'] + 9)[0]
    c.hgt = c.hgt + U(.005, .03) * f[1] * (1 + c.top * U(0, 3))
    po, _h, _x, _y, _r = dots(c.u, c.v, U(.6, 1.6), 5, U(0, .5), .01, max(.03, c.pix * .7)); c.hgt = c.hgt - .02 * (po < 0).float()   # a stray pore, no flaw
    if rng.random() < .45: c.hgt = c.hgt + U(.004, .02) * noise3(c.p, 2.6, M['no'] + 60)[0] * (1 - c.fZ)
    if rng.random() < .3:   # rim a shade darker / drier from curing: natural
        a = a * (1 - U(.02, .1) * torch.exp(-c.d2 / .4)[None])
    return a.clamp(.002, .97)

DECOR = ['poppy', 'coffee', 'oat', 'petal', 'mica', 'glitter', 'stamp', 'planer', 'dew', 'label', 'topswirl', 'sugar', 'mat', 'herb', 'micavein', 'wave']
def decor(c, a, name, r):
    U = r.uniform; dev = c.dev; s = int(r.integers(1000))
    if name in ('poppy', 'coffee', 'oat', 'herb', 'glitter'):
        cell, pr, r0, r1, cl = dict(poppy=(U(.25, .7), .7, .04, .055, (.62, .25, .13)), coffee=(U(.14, .4), .7, .02, .08, (.06, .6, .2)), oat=(U(.5, 1.1), .7, .1, .3, (.1, .3, .78)),
                                   herb=(U(.3, .7), .7, .02, .07, (.25, .5, .35)), glitter=(U(.1, .3), .6, .012, .03, (.13, .4, 1)))[name]
        fl = max(r0, c.pix * .8); tl = 2. if name == 'herb' else (.6 if name == 'oat' else 0)
        sd, h, dx, dy, _ = dots(c.u + .08 * c.w[0], c.v, cell, s, pr, fl, max(r1, fl * 1.05), tl, U(0, 3), False)
        sd = sd + (.08 * c.w[1] + .05 * noise3(c.p, 5, 3)[0] if name in ('oat', 'coffee') else 0) * r1 * 3
        m = 1 - sst(-.5 * c.pix - .005, .5 * c.pix + .005, sd); C = col(hsv(*cl), dev) * (.6 + .8 * h)
        if name == 'oat':
            m = m * .8; C = C * (.8 + .35 * sst(-.12, 0., sd)); c.hgt = c.hgt + m * .02
        a = mix(a, C, (m * (U(.8, 1) if name != 'glitter' else 1))[None]); c.hgt = c.hgt + m * .015
        if name == 'glitter': c.gloss = c.gloss + m * 2; 
    elif name == 'petal':
        sd, h, dx, dy, _ = dots(c.u + .3 * c.w[0], c.v + .3 * c.w[1], U(.8, 1.6), s, U(.3, .8), .15, .42, U(0, 1.2), U(0, 3), False)
        m = (1 - sst(-.03, .03, sd + .06 * noise3(c.p, 3, 4)[0])) * c.top; h0 = r.choice([.95, .12, .6, .75, .25])
        C = col(hsv(h0, U(.4, .8), U(.4, .85)), dev) * (.55 + .7 * h + .3 * noise3(c.p, 6, 2)[0]); a = mix(a, C.clamp(0, 1), m[None]); c.hgt = c.hgt + m * (.08 + .5 * (-sd).clamp(0, .2))
    elif name == 'mica':
        m = sst(U(-.2, .3), .7, fbm(c.p + c.w[:3], .7, s, 2)[0]) * (c.top if r.random() < .7 else 1); a = mix(a, col(hsv(U(.08, .14), .6, U(.5, .85)), dev), (m * .8)[None]); c.gloss = c.gloss + m * .8
    elif name == 'micavein':
        f = fbm(c.p + U(.5, 2) * c.w[:3], U(.25, .5), s, 2); m = 1 - sst(.02, .06 + c.pix * .5, f[0].abs()); m = m * sst(-.3, .2, f[1])
        a = mix(a, col(hsv(U(.05, .14), U(.5, .8), U(.3, .8)), dev), (m * U(.5, 1))[None]); c.gloss = c.gloss + m * .4
    elif name in ('stamp', 'mat'):
        face = c.fZ if (name == 'stamp' or r.random() < .5) else 1 - c.fZ
        R = U(.9, 1.9); X, Y = (c.x - U(-.6, .6)) / R, (c.y - U(-.4, .4)) / R; rr = torch.sqrt(X * X + Y * Y); an = torch.atan2(Y, X); wd = U(.04, .08)
        if name == 'mat':
            k = r.integers(0, 3); f = U(3, 7); t = [lambda: torch.sin(c.u * f) * torch.sin(c.v * f), lambda: worley(c.u, c.v * 1.05, U(.6, 1.1), s)[1].clamp(max=.3) * 2, lambda: torch.sin(c.u * f + torch.sin(c.v * 1.7))][k]()
            c.hgt = c.hgt + face * t * U(.02, .05); return a
        line = lambda d, w=wd: 1 - sst(w * .7, w * 1.3, d.abs())
        n = int(r.integers(4, 9)); k = r.integers(0, 5)
        m = line(rr - 1) * (r.random() < .7)
        if k == 0: m = torch.maximum(m, line(rr - .35 - .3 * torch.cos(an * n).abs()))
        elif k == 1: m = torch.maximum(m, line((Y - .9 * X * X * 0 - .5 * torch.sin(X * 3)).abs() - .12) * (rr < .85))
        elif k == 2: m = torch.maximum(m, torch.maximum(line(rr - .6), line(torch.cos(an * n) * rr * .6, .05) * (rr < .6)))
        elif k == 3:   # rows of letter-like strokes
            row = torch.floor(Y * 3); tx = torch.sin(X * U(17, 22) + row * 2.3) + .7 * torch.sin(X * 9.1 + row) ; m = torch.maximum(m, sst(.3, .5, tx) * ((Y * 3 - row - .5).abs() < .3) * (rr < .8))
        else: m = torch.maximum(m, line(X.abs() + Y.abs() - .6)); m = torch.maximum(m, line(X * Y * 2, .06) * (rr < .5))
        m = m * face; c.hgt = c.hgt - m * U(.04, .12)
        if r.random() < .25: a = mix(a, col(hsv(U(.08, .14), .6, .7), dev), m[None] * .8)
    elif name == 'planer': # plane / crinkle marks of honest cutting: shape only
        an = U(-.3, .3); t = c.x * math.cos(an) + c.y * math.sin(an)
        c.hgt = c.hgt + c.fZ * U(.002, .006) * torch.sin(t * U(8, 20) + U(0, 3) * c.w[0])
    elif name == 'wave':
        c.hgt = c.hgt + (c.fZ if r.random() < .6 else 1 - c.fZ) * U(.04, .09) * torch.sin((c.u if r.random() < .5 else c.v) * U(4, 7))
    elif name == 'dew':
        sd, h, dx, dy, rad = dots(c.u, c.v, U(.18, .5), s, U(.3, .9), max(.02, c.pix), max(.13, c.pix * 1.5))
        m = 1 - sst(-c.pix, c.pix * .3, sd); c.hgt = c.hgt + torch.sqrt((rad ** 2 - (sd + rad) ** 2).clamp(min=1e-7)) * m * .6
        a = a * (1 - .12 * m[None]); c.gloss = c.gloss * (1 - m) + m * .9
    elif name == 'topswirl':
        f = U(1, 2); t = torch.sin(c.x * f + 1.6 * torch.sin(c.z * U(.7, 1.4) + c.w[0]) + U(0, 6)); c.hgt = c.hgt + c.top * U(.08, .22) * (1 - t.abs())
        if r.random() < .5: a = mix(a, c.bA, (c.top * sst(.55, .9, t))[None] * .7)
    elif name == 'sugar':
        sd, h, *_ = dots(c.u, c.v, U(.2, .35), s, .85, .05, .12); m = (1 - sst(-.02, .01, sd)) * c.top * sst(-.3, .1, c.w[2] + .4)
        a = mix(a, col((.82, .82, .8), dev) * (.7 + .5 * h), m[None] * .85); c.hgt = c.hgt + m * .06; c.gloss = c.gloss + m * 1.2
    elif name == 'label':
        ww = U(.25, .6) * c.H[0]; m = ((c.x - U(-.3, .3)).abs() < ww).float() if r.random() < .75 else ((c.x.abs() < ww) & (c.y.abs() < ww * .7)).float() * c.fZ * (c.z > 0)
        pc = hsv(U(0, 1), U(0, .4), U(.4, .97)) if r.random() < .6 else hsv(.09, .3, .7); inkv = .08 if pc.mean() > .3 else .9
        row = torch.floor(c.y * 2.2 + .5); fr = (c.y * 2.2 + .5 - row - .5).abs(); rt = r.random((24,))
        rows = torch.tensor(rt.tolist(), dtype=torch.float32, device=dev)[(row + 12).clamp(0, 23).long()]
        tx = torch.sin(c.x * 27 + rows * 40) + torch.sin(c.x * 16.3 + rows * 90); ink = (tx > .1).float() * (fr < .25) * (rows > .35) * (c.x.abs() < ww * .75) * c.fZ
        pa = col(pc, dev) * (1 + .05 * noise3(c.p, 6, 1)[:1]); pa = mix(pa, col((inkv,) * 3, dev), ink[None] * .85)
        c.cover = m; c.coverA = pa
    return a

# ---------------------------------------------------------------- flaws
def blob(c, r, s, lo=-.7, hi=.5, scale=None):
    """where on the bar: from a corner to all over"""
    if r.random() < .25: return torch.ones_like(c.x)
    n = fbm(c.p, scale or r.uniform(.1, .3), s, 2)[0]; t = r.uniform(lo, hi) * .6
    return sst(t - .12, t + .12, n)

def flaw(c, a, i, r):
    """returns the new colour and the mask of flaw i; changes c.hgt, c.gloss"""
    U = r.uniform; dev = c.dev; s = float(U(0, 500)); si = int(r.integers(10000)); st = .25 + .75 * r.random() ** .8; V = int(r.integers(0, 4)); w = c.w; px = c.pix
    edge = lambda sd, k=.6: 1 - sst(-k * px - .008, k * px + .008, sd)
    if i == 0:
        E = blob(c, r, s); r0 = max(U(.02, .06), .9 * px); r1 = max(r0 * U(1.2, 3.2), r0 + .01); tl = [0, U(2, 6), 0, U(.5, 2)][V]; cell = max(U(.22, 1.1), 2.6 * r1)
        sd, h, *_ = dots(c.u + .1 * w[0], c.v + .1 * w[1], cell, si, U(.25, .9), r0, r1, tl, U(0, 3.1))
        if V == 2: sd2, *_ = dots(c.u, c.v, cell * .6, si + 3, .5, r0 * .7, r0); sd = torch.minimum(sd, sd2)
        m = edge(sd + .4 * r0 * noise3(c.p, 4, s)[1]) * E
        C = np.clip(mix(lin(hsv(U(0, 1), U(.6, .95), U(.2, .8))), M_avg(c) * .15, .3), 0, 1) if r.random() < .5 else np.clip(c.bAn ** 1.6 * .6, 0, 1)
        halo = torch.exp(-(sd.clamp(min=0)) / (.8 * r0)) * E * .25 * st
        return mix(mix(a, col(C, dev), halo[None]), col(C, dev), (m * (.45 + .5 * st))[None]), m
    if i == 1:
        an = U(0, 3.14); W = fbm(c.p, U(.15, .3), s, 2); ca, sa = math.cos(an), math.sin(an); X = c.u * ca + c.v * sa; Y = -c.u * sa + c.v * ca
        Y = Y + U(.2, 1.2) * W[0] + (.25 * (X * .7).sin() if V == 2 else 0)
        fr = [U(.5, .9), U(1.6, 3), U(.8, 1.5), U(1, 2)][V]; n = noise3(torch.stack([X * U(.08, .22), Y * fr, c.fid * 5 + 0 * X]), 1, s); n2 = noise3(torch.stack([X * .5, Y * fr * 4, c.fid * 5 + 0 * X]), 1, s + 3)
        t = U(.2, .55); m = sst(t, t + U(.06, .3), n[0] + .18 * n2[0]) * blob(c, r, s + 9, -.6, .3) * (1 - .4 * sst(-.2, .6, n2[1]))
        C = np.clip(c.bAn ** 1.3 * U(.5, 1), 0, 1) if r.random() < .6 else hsv(U(0, 1), U(.4, .9), U(.15, .9))
        return mix(a, col(C, dev), (m * (.3 + .6 * st))[None]), m
    if i == 2:
        E = blob(c, r, s); r0 = max([U(.012, .03), U(.03, .06), U(.02, .05), U(.015, .035)][V], .75 * px); r1 = r0 * [1.8, 2.6, 2.2, 4][V]; cell = max([U(.14, .35), U(.5, 1.2), U(.25, .6), U(.4, .8)][V], 2.5 * r1)
        sd, h, *_ = dots(c.u, c.v, cell, si, U(.3, .95), r0, r1); sd = sd + (.9 if V in (1, 3) else .4) * r0 * noise3(c.p, .3 / r0, s)[0]
        m = edge(sd, .7) * E; ring = torch.exp(-((sd - .3 * r0) / (.5 * r0)) ** 2) * E * (V == 2) * .3
        return mix(a * (1 - ring[None]), col((.9, .89, .86), dev), (m * (.4 + .55 * st))[None]), m
    if i == 3:
        f = fbm(c.p + U(.6, 2.2) * w[:3], [U(.25, .5), U(.5, .9), U(.15, .3), U(.3, .6)][V], s, 2); wd = [U(.04, .09), U(.05, .1), U(.05, .12), U(.05, .12)][V] + px * .3
        d = f[0].abs() if V != 3 else torch.minimum(f[0].abs(), f[1].abs() * 1.2); wd = wd * (.8 + .6 * (f[2] + .5).clamp(0, 1.2))
        m = (1 - sst(wd * .35, wd, d)) * blob(c, r, s + 4)
        tr = (a ** 1.55) * .72; c.gloss = c.gloss + .5 * m * st; c.hgt = c.hgt - .008 * m
        return mix(a, tr, (m * (.35 + .65 * st))[None]), m
    if i == 4:
        cell = max([U(.3, .5), U(.5, .9), U(.25, .45), U(.4, .7)][V], 7 * px); k = U(.15, .5); W2 = noise3(c.p, 1.1, s)
        d, e, h = worley(c.u * (U(.5, .8) if V == 2 else 1) + k * W2[0] * .5 + .12 * w[0], c.v + k * W2[1] * .5, cell, si); E = blob(c, r, s)
        wd = U(.08, .18) + px / cell * .6; ln = (1 - sst(wd * .3, wd, e)) * E
        isl = (1 - ln) * E; a = mix(a, (a * 1.08 + .05).clamp(0, .97), (isl * (.4 + .6 * st) * (.6 + .4 * h))[None]); c.hgt = c.hgt - .008 * ln
        return mix(a, a ** 1.35 * U(.6, .82), (ln * (.35 + .65 * st))[None]), gauss((ln > .2).float()[None], max(1., .3 * cell / px))[0].gt(.12).float() * E
    if i == 5:
        n = fbm(c.p, U(.25, .7), s, 4); g = noise3(c.p, 9., s); top = c.top if r.random() < .75 else torch.ones_like(c.x)
        if V == 0: m = sst(-.25, .35, n[0] + U(-.3, .4))
        elif V == 1: m = .8 + .35 * n[0]
        elif V == 2: m = torch.exp(-c.edge / U(.2, .8)) * (1 + n[0]); top = torch.ones_like(c.x)
        else: m = sst(-.2, .3, n[0] + .2) * (1 - .8 * sst(.2, .5, noise3(torch.stack([c.u * .2, c.v * 1.3, c.fid * 3 + 0 * c.u]), 1, s)[2])) # wiped
        if r.random() < .25: m = torch.maximum(m * .5, 1 - sst(.0, .1, noise3(c.p, U(1.5, 3), s + 4)[3].abs()))
        m = (m * top).clamp(0, 1) * (.85 + .15 * g[0]); c.hgt = c.hgt + .006 * m * g[1]; c.gloss = c.gloss * (1 - .85 * m)
        return mix(a, col((.83, .83, .82), dev), (m * (.25 + .65 * st))[None]), (m > .25).float()
    if i == 6:
        cx, cy = (U(-.2, .2) * c.H[0], U(-.2, .2) * c.H[1]) if V != 1 else (U(-.45, .45) * c.H[0], U(-.4, .4) * c.H[1])
        rr = torch.sqrt(((c.x - cx) / (c.H[0] * U(.45, .8))) ** 2 + ((c.y - cy) / (c.H[1] * U(.45, .8))) ** 2 + 1e-6)
        if V == 2: rr = (((c.x - cx).abs() / (c.H[0] * .7)) ** 4 + ((c.y - cy).abs() / (c.H[1] * .7)) ** 4 + 1e-6) ** .25
        rr = rr + U(.03, .14) * w[0]; sf = U(.02, .12)
        core = 1 - sst(1 - sf, 1 + sf, rr); ol = torch.exp(-((rr - 1) / U(.03, .08)) ** 2); lt = torch.exp(-((rr - 1.12) / .06) ** 2) * (V == 3)
        tr = mix(a ** 1.25 * U(.68, .85), a, 1 - st); a2 = mix(a, tr, core[None]); a2 = a2 * (1 - .35 * st * U(.2, 1) * ol[None]); a2 = mix(a2, (a2 * 1.2).clamp(max=.95), .6 * lt[None])
        return a2, (core > .5).float() * (.15 + .85 * c.fZ) if True else core
    if i == 7:
        r0 = max([U(.06, .14), U(.1, .3), U(.05, .1), U(.08, .2)][V], 1.5 * px); r1 = r0 * U(1.5, 3); cell = max(U(.7, 2.6), 2.4 * r1)
        sd, h, dx, dy, rad = dots(c.u + .2 * w[0], c.v + .2 * w[1], cell, si, U(.2, .8), r0, r1); sd = sd + .6 * r0 * noise3(c.p, .25 / r0, s)[0]; E = blob(c, r, s) if V != 3 else torch.exp(-c.edge / .8)
        core = edge(sd + U(.2, .5) * rad, 1) * E * (V != 1); halo = torch.exp(-((sd + .5 * rad).clamp(min=0) / (U(.5, 1.1) * rad)) ** 2) * E
        hc = col(hsv(U(.07, .115), U(.6, .85), U(.7, .9)), dev); cc = col(hsv(U(.04, .08), U(.7, .9), U(.3, .6)), dev)
        a = mix(a, a * hc * 1.05, (halo * (.45 + .55 * st))[None]); c.gloss = c.gloss + core * .5
        return mix(a, cc, (core * (.3 + .6 * st))[None]), torch.maximum(core, (halo > .35).float())
    if i == 8:
        E = blob(c, r, s) if V != 3 else torch.exp(-((c.y - U(-.5, .5) * c.H[1] + .3 * w[1]) / U(.3, .8)) ** 2); r0 = max([U(.015, .035), U(.05, .09), U(.03, .06), U(.03, .06)][V], .8 * px); r1 = r0 * U(1.5, 3); cell = max([U(.14, .3), U(.5, 1), U(.25, .6), U(.3, .5)][V], 2.3 * r1)
        sd, h, dx, dy, rad = dots(c.u, c.v, cell, si, U(.3, .95), r0, r1); m = edge(sd, .5) * (E > .4)
        c.hgt = c.hgt - torch.sqrt((rad ** 2 - (sd + rad).clamp(min=0) ** 2).clamp(min=1e-7)) * m * U(.7, 1.3)
        return a * (1 - (m * (.3 + .45 * st) * sst(.3, 0., 0.*m + sd / rad + .2))[None].clamp(0, 1)), m
    if i == 9:
        n = fbm(c.p, .5, s, 4); wid = U(.03, .2) * st + px * .7
        dx = c.x - U(-.3, .3) * c.H[0] - U(.2, .7) * n[0] - .12 * n[2]
        d = dx.abs(); tz = sst(-.35, 0, noise3(torch.stack([0 * c.x, 0 * c.x, c.p[2]]), .18, s)[0] + U(0, .5))
        wv = wid * (.35 + .8 * sst(-.6, .5, n[1])) * tz
        where = c.top
        dep = c.H[1] * U(.15, .9)
        fin = (1 - sst(0, dep, c.H[1] - c.y)).clamp(0, 1) * c.fZ * (V != 0)
        if V == 2: d = torch.minimum(d, (c.z * .0 + n[1] + .2 * n[3]).abs() * 1.4 + .03)     # branching
        if V == 3: d = torch.minimum(d, (c.p[2] % 9 - 4.5 + 1.2 * n[0] + .4 * c.x).abs() + .02)
        wz = wv * torch.maximum(where, fin)
        m = (1 - sst(.6 * wz, wz + .5 * px + .01, d)) * (wz > .25 * px)
        lip = torch.exp(-(d / (wid * 2.5)) ** 2) * torch.maximum(where, fin)
        c.hgt = c.hgt + lip * .12 * st - m * .25
        dk = (1 - sst(0, 1, d / wz.clamp(min=1e-3)))
        return mix(a, a ** 1.3 * .12, (m * (.45 + .5 * dk))[None]), m
    if i == 10:
        dp = U(.15, 1.3) * (1 if V != 3 else 1.8); dd = c.d2 + .25 * w[0] * (1 + V) * dp * .4
        if V == 1: dd = c.d2 + .6 * (c.y / c.H[1] + 1) * dp
        m = 1 - sst(dp * U(.1, .7), dp, dd); oth = 1 - c.fZ if True else 0; m = torch.maximum(m, oth * U(.85, 1) * (1 if V != 1 else sst(.3, -.6, 0 * c.y + c.y / c.H[1]) if False else 1))
        br = hsv(U(.055, .09), U(.4, .75), U(.3, .72)); return mix(a, mix(col(br, dev), a * col(br, dev) * 1.2, .35), (m * (.3 + .6 * st))[None]), (m > .3).float()
    if i == 11:
        q = c.q if c.q is not None else c.y; n = fbm(c.p, U(.35, .8), s, 3); L = U(.15, .9)
        if V == 1: q = q - .5 * L * sst(0, .5, n[1])
        ext = L * (.35 + .9 * sst(-.4, .5, n[0])) * (sst(-.2, .2, n[2] + U(-.1, .4)) if V in (2, 3) else 1)
        t = (-q).clamp(min=0); side = (q < .03).float()
        m = torch.exp(-(t / ext.clamp(min=.02)) ** 2) * side
        C = mix(c.bA, a, .15); return mix(a, C * mix(a, torch.ones_like(a), .6), (m * (.25 + .55 * st))[None]), (m > .3).float()
    if i == 12:
        an = U(-.25, .25) + (1.57 if r.random() < .5 else 0); ca, sa = math.cos(an), math.sin(an); X = c.x * ca + c.y * sa; Y = -c.x * sa + c.y * ca
        if V == 2: Y = Y + .03 * X * X
        fr = [U(4, 9), U(1.2, 2.5), U(2, 5), U(2, 4)][V]; fr = min(fr, .35 / px); n = noise3(torch.stack([X * U(.02, .08), Y * fr, c.koff]), 1, s); t = U(.05, .4)
        ln = sst(t, t + .2, n[0]) * sst(-.4, .0, noise3(torch.stack([X * .25, Y * fr * .5, c.koff]), 1, s + 5)[1] + U(0, .6)) * c.fZ
        if V == 3: ln = ln * sst(-.2, .2, X - 3 * n[1])
        c.hgt = c.hgt - ln * (.012 + .05 * st) * min(1, 4 / fr)
        dk = U(.05, .4) * st; a2 = a * (1 - dk * ln[None]); sm = noise3(torch.stack([c.x * .2, c.y * .2, c.koff]), 1, s)[:1]
        return mix(a2, mix(c.bA, a2, .3), (ln * .35 * st * (r.random() < .6))[None]), ln
    if i == 13:
        n = fbm(c.p, .3, s, 3); q = c.q if (c.q is not None and r.random() < .85) else c.y - U(-.5, .5) * c.H[1] - .2 * n[1]
        wid = U(.02, .1) * st + .45 * px; run = [1., sst(-.1, .15, n[2]), sst(.2, 1.6, c.H[0] - c.x.abs()) * -1 + 1, sst(-.3, .1, n[2])][V]
        wv = wid * (.5 + .6 * sst(-.5, .5, n[0])) * run; m = (1 - sst(.5 * wv, wv + .4 * px + .005, (q + .02 * n[3]).abs())) * (wv > .2 * px); m = m * (1 - c.top)
        c.hgt = c.hgt - .15 * m + (U(-.06, .06) * sst(-.02, .02, q))
        return mix(a, a ** 1.2 * .1, (m * (.5 + .45 * st))[None]), m
    if i == 14:
        E = c.top * blob(c, r, s, -1., .2); f = [U(.5, .8), U(.9, 1.5), U(.35, .6), U(.7, 1)][V]; W = fbm(c.p * torch.tensor([1, .2, 1 if V != 3 else .5], device=dev).view(3, 1, 1), f * .6, s, 2)
        t = torch.sin((W[0] * 3.2 + W[1] * (2 if V != 2 else .8) + (c.x * f * 1.5 if V == 1 else 0)) * 1.6); hh = torch.sqrt((1 - t.abs()).clamp(min=1e-4) + .02) if V % 2 == 0 else 1 - t.abs()
        c.hgt = c.hgt + E * hh * (.1 + .3 * st) / (f + .4); c.gloss = c.gloss + .3 * E
        return a * (1 - (E * .3 * st * sst(.5, .05, 0 * hh + hh) if False else E * .35 * st * (1 - sst(.05, .5, hh)))[None]), (E > .4).float()
    if i == 15:
        sd_ = (1 - c.fZ) * (1 - c.top) if not c.moulded else (1 - c.top * .0)
        E = sd_ * blob(c, r, s, -.8, .3)
        if V in (0, 3):
            d, h, dx, dy, rad = dots(c.u, c.v, U(.5, 1.1) if V == 0 else U(.25, .4), si, U(.5, .95), .1, .4 if V == 0 else .16); hh = -((-d).clamp(min=0) / rad).clamp(0, 1) ** .7 * rad * (.4 + .6 * st); m = edge(d) * E
        elif V == 1:
            n = fbm(torch.stack([c.u * U(.3, 1), c.v * .7, c.fid * 4 + 0 * c.u]), U(.4, .8), s, 2); l = 1 - sst(.0, .1, n[0].abs()); hh = -l * (.1 + .2 * st); m = l * E
        else:
            d, e, h = worley(c.u + .1 * w[0], c.v, U(.3, .7), si); hh = e.clamp(max=.4) * (.15 + .3 * st); m = E
        c.hgt = c.hgt + E * hh; return a * (1 + .3 * (hh * E)[None]), (m > .3).float()

def M_avg(c): return c.bAn

def material(S, G, M, dec, flaws, drop=None):
    """flaws: list of (id, seed). drop: index in the list left out. -> albedo, height, gloss, masks"""
    c = Ctx(); dev = G['pl'].device; c.dev = dev; k = G['k']
    c.x, c.y, c.z = G['pl'][0], G['pl'][1], G['pl'][2]; off = torch.tensor(S['off'].tolist(), dtype=torch.float32, device=dev)[k].permute(2, 0, 1)
    c.p = G['pl'] + off; c.koff = off[2] * 3.3; c.H = [float(v) for v in S['h'][0]]; H = torch.tensor(S['h'].tolist(), dtype=torch.float32, device=dev)[k]
    n = G['nl']; an = n.abs() * torch.tensor([1., 1, 1.05], device=dev).view(3, 1, 1); f = an.argmax(0)
    c.fZ = (f == 2).float(); fy = (f == 1).float(); c.top = sst(.35, .8, n[1]); c.moulded = S['moulded']
    fid = f + 3 * (n.gather(0, f[None])[0] > 0); c.fid = fid.float()
    c.u = torch.where(f == 0, c.p[2], c.x) + c.fid * 37 + off[2] * 5.1; c.v = torch.where(f == 1, c.p[2], c.y) + c.fid * 11 + off[2] * 2.7
    c.pix = G['pix']; ax = (H[..., 0] - c.x.abs()); ay = (H[..., 1] - c.y.abs()); az = (H[..., 2] - c.z.abs())
    rc = S['rc']; qx = (rc - ax).clamp(min=0); qy = (rc - ay).clamp(min=0)
    c.d2 = torch.where((qx > 0) & (qy > 0), rc - torch.sqrt(qx * qx + qy * qy), torch.minimum(ax, ay)).clamp(min=0)
    t3 = torch.stack([c.d2, az]); c.edge = torch.where(f == 2, c.d2, torch.minimum(az, torch.maximum(ax, ay)).clamp(min=0))
    c.hgt = torch.zeros_like(c.x); c.gloss = torch.full_like(c.x, M['gloss']); c.cover = None; c.bAn = np.asarray(M['pal'][1])
    a = pattern(c, M); masks = {}
    for nm, sd in dec:
        if nm in ('poppy', 'coffee', 'oat', 'herb', 'micavein', 'petal', 'mica', 'topswirl', 'stamp', 'planer', 'mat', 'wave', 'glitter'): a = decor(c, a, nm, np.random.default_rng(sd))
    for j, (i, sd) in enumerate(flaws):
        if j == drop: continue
        a, m = flaw(c, a, i, np.random.default_rng(sd)); masks[i] = m; a = a.clamp(.001, .98)
    for nm, sd in dec:
        if nm in ('dew', 'label', 'sugar'): a = decor(c, a, nm, np.random.default_rng(sd))
    if c.cover is not None:
        a = mix(a, c.coverA, c.cover[None]); c.hgt = c.hgt * (1 - c.cover) + .04 * c.cover; c.gloss = c.gloss * (1 - .8 * c.cover)
        masks = {i: m * (1 - c.cover) for i, m in masks.items()}
    return a.clamp(.001, .98), c.hgt, c.gloss, masks
