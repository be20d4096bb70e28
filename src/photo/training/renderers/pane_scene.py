"""Poses of bars, camera, tracing of rounded bars, shadow and contact shade."""
import math
import numpy as np, torch
from pane_core import *

def rotz(a):
    c, s = math.cos(a), math.sin(a); return np.array([[c, -s, 0], [s, c, 0], [0, 0, 1.]])
def rotx(a):
    c, s = math.cos(a), math.sin(a); return np.array([[1, 0, 0], [0, c, -s], [0, s, c]])
LIE = np.eye(3)
STAND = np.array([[1, 0, 0], [0, 0, -1.], [0, 1, 0]])   # Y up, Z toward the viewer

def make(rng, want):
    """want: 'Z' cut face, 'Y' top, 'X' mould side, None. Returns dict of the scene."""
    U = rng.uniform
    pr = {'Z': dict(lie=.34, stand=.2, scatter=.12, row=.07, stack=.05, hand=.09, close=.13),
          'Y': dict(loaf=.36, stand=.26, row=.16, loafcut=.12, close=.10),
          'X': dict(loaf=.36, stand=.3, row=.1, loafcut=.1, lieside=.14),
          None: dict(lie=.2, stand=.17, scatter=.13, row=.1, stack=.1, hand=.08, close=.07, loaf=.08, loafcut=.07)}[want]
    pose = rng.choice(list(pr), p=np.array(list(pr.values())) / sum(pr.values()))
    hx, hy, hz = U(3, 4.6), U(2.4, 3.8), U(1, 1.7)
    rnd = U(.06, .3); sh = rng.random()
    rc = rnd + U(.02, .35)
    moulded = False
    loafish = pose in ('loaf', 'loafcut', 'row') or want in ('Y', 'X')
    if not loafish:
        if sh < .1: hx = hy = U(2.8, 4); rc = hx; moulded = rng.random() < .6
        elif sh < .22: rc = U(.5, .98) * hy; rnd = U(.25, .6); moulded = True
        elif sh < .3: rc = rnd + U(.5, 1.2); rnd = U(.2, .5); moulded = True
    S = dict(pose=pose, moulded=moulded, round=min(rnd, hz * .8), rc=min(rc, min(hx, hy)))
    hs = []; cs = []; Rs = []; off = []
    ang = U(-math.pi, math.pi)
    up_amp = 0.
    elev = math.radians(U(35, 89))
    def add(c, R, h, o): cs.append(c); Rs.append(R); hs.append(h); off.append(o)
    h = (hx, hy, hz)
    jit = lambda s: rng.normal(0, s)
    if pose in ('lie', 'close', 'lieside') and not (pose == 'close' and want == 'Y'):
        add((0, 0, hz), rotz(ang), h, (0, 0, 0))
        if pose == 'lieside': elev = math.radians(U(22, 45)); Rs[0] = rotz(math.pi / 2 * rng.integers(0, 4) + jit(.3))
        if pose == 'lie' and rng.random() < .35:
            add((U(-1, 1) * 2, U(.9, 1.3) * 2.2 * hx + 1, hz), rotz(U(-3, 3)), h, (0, 0, 9))
    elif pose in ('stand', 'close'):
        ya = U(-.9, .9) if want != 'X' else rng.choice([-1, 1]) * U(.5, 1.15); flip = rng.random() < .15 and want != 'Y'
        R = rotz(ya) @ STAND
        if flip: R = R @ rotz(math.pi / 2)
        hh = hx if flip else hy
        add((0, 0, hh), R, h, (0, 0, 0)); elev = math.radians(U(30, 72) if want == 'Y' else U(12, 45))
        if rng.random() < .3:
            add((U(-1, 1) * 4, U(3, 7), hh), rotz(ya + jit(.3)) @ (R if flip else STAND), h, (0, 0, 7))
    elif pose == 'scatter':
        k = rng.integers(2, 7); gx = 2 * max(hx, hy) + U(.3, 2); tid = rng.random() < .5
        cells = [(i % 3, i // 3) for i in range(6)] if k > 4 else [(i % 2, i // 2) for i in range(4)]
        base = rotz(ang)
        for i in range(k):
            j = .05 if tid else .5
            x, y = cells[i]
            p = np.array([(x - .8) * (2 * hx + .6 if tid else gx), (y - .5) * (2 * hy + .6 if tid else gx), hz])
            p = base @ (p + np.array([jit(.1), jit(.1), 0]))
            add(tuple(p), base @ rotz(jit(j) + (math.pi if rng.random() < .3 else 0)), h, (0, 0, 2.6 * i))
        elev = math.radians(U(38, 89))
    elif pose in ('row', 'loafcut'):
        k = rng.integers(3, 7) if pose == 'row' else rng.integers(2, 4); gap = U(.1, 1.6)
        A = rotz(rng.choice([-1, 1]) * U(.5, 1.2) if want == 'X' else U(-1.1, 1.1)) @ STAND; z = 0
        zs = []
        for i in range(k):
            add(A @ np.array([jit(.1), 0, z]) + [0, 0, hy], A @ np.array(rotx(0)), h, (0, 0, z)); zs.append(z)
            z -= 2 * hz + gap * U(.7, 1.3)
            if pose == 'loafcut' and i == k - 1:
                L = U(5, 10); add(A @ np.array([0, 0, z + hz - L - gap]) + [0, 0, hy], A, (hx, hy, L), (0, 0, z - L))
        for i in range(k):
            Rs[i] = rotz(jit(.05)) @ Rs[i]
        up_amp = U(0, .35) if rng.random() < .6 else 0
        elev = math.radians(U(28, 65) if want else U(16, 65))
        m = np.mean([c[:2] for c in cs], 0)
        cs[:] = [(c[0] - m[0], c[1] - m[1], c[2]) for c in cs]
    elif pose == 'stack':
        k = rng.integers(2, 5)
        for i in range(k):
            add((jit(.25), jit(.25), hz * (2 * i + 1)), rotz(ang + jit(.25)), h, (0, 0, 2.6 * i))
        elev = math.radians(U(14, 60))
    elif pose == 'loaf':
        L = U(8, 14); add((0, 0, hy), rotz(rng.choice([-1, 1]) * U(.35 if want == 'X' else .1, 1.35)) @ STAND, (hx, hy, L), (0, 0, 0))
        up_amp = U(0, .5) if rng.random() < .6 else 0
        elev = math.radians(U(25, 80) if want == 'Y' else U(18, 50))
    elif pose == 'hand':
        R = rotx(jit(.35)) @ rotz(jit(.1)) @ STAND @ rotz(U(-.6, .6)) @ rotx(jit(.3))
        add((0, 0, 18), R, h, (0, 0, 0)); elev = math.radians(U(-5, 60))
        if elev > .3: Rs[0] = rotx(-elev) @ Rs[0]
    hs = np.array(hs, float); cs = np.array(cs, float); Rs = np.array(Rs)
    S.update(h=hs, c=cs, R=Rs, off=np.array(off, float), up=up_amp, K=len(hs))
    S['up'] = float(S['up']); S['round'] = float(S['round']); S['rc'] = float(S['rc'])
    S['wav'] = (U(.5, 1.6), U(.3, 1.2), U(0, 6), U(0, 6), rng.random() < .5)
    # camera
    f = U(1.5, 3.2); tgt = cs.mean(0) if pose != 'lie' else cs[0] * .8 + cs.mean(0) * .2
    tgt = np.array(tgt, float)
    rad = max(np.linalg.norm(np.abs(c - tgt) * .85 + np.linalg.norm(hh) * .8) for c, hh in zip(cs, hs)) if len(cs) > 1 else np.linalg.norm(hs[0])
    rad = min(rad, 1.0 * np.max(np.linalg.norm(cs - tgt, axis=1) + np.linalg.norm(hs, axis=1)))
    frac = U(.85, 1.3)
    if pose == 'close': frac = U(1.5, 2.6)
    if pose in ('loaf', 'row', 'loafcut'): frac = U(.95, 1.6)
    if pose == 'scatter': frac *= 1.1
    if rng.random() < .1: frac *= .65
    D = f * rad / frac
    tgt = tgt + np.array([jit(.08), jit(.08), jit(.04)]) * rad
    cam = tgt + D * np.array([0, -math.cos(elev), math.sin(elev)])
    fw = (tgt - cam) / D
    rt = np.cross(fw, [0, 0, 1.]) if abs(fw[2]) < .995 else np.array([1., 0, 0]); rt /= np.linalg.norm(rt); upv = np.cross(rt, fw)
    ro = jit(.06)
    rt, upv = math.cos(ro) * rt + math.sin(ro) * upv, -math.sin(ro) * rt + math.cos(ro) * upv
    S.update(cam=cam, fw=fw, rt=rt, upv=upv, f=float(f), D=float(D), elev=elev, rad=float(rad))
    # hand: capsules (a, b, r)
    S['caps'] = []
    if pose == 'hand':
        R = Rs[0]; s = U(.85, 1.1); sx = rng.choice([-1, 1]); t0 = U(-.2, .5)
        w = lambda x, y, z: cs[0] + R @ np.array([x * sx, y, z])
        for i in range(4):
            y = (i - 1.5) * 1.75 * s + jit(.1); k = U(.2, 1.0)
            S['caps'].append((w(hx + 5, y * .9 - 1, -hz - 1.6), w(hx + .55, y, -hz - .7), .85 * s))
            S['caps'].append((w(hx + .55, y, -hz - .7), w(-hx + hx * k, y, -hz - .8), .8 * s))
        a = w(hx + 4.5, -hy * .9 - 1, 0); b = w(hx * .95, -hy * .4 + t0, hz + .65); c2 = w(hx * U(.35, .7), -hy * .2 + t0, hz + .62)
        S['caps'] += [(a, b, .95 * s), (b, c2, .82 * s)]
        S['caps'].append((w(hx + 5, -1, -hz - 2), w(hx + 16, -9, -hz - 5), 3.4 * s))
    return S

def tt(a, dev): return torch.tensor(np.asarray(a, float).tolist(), dtype=torch.float32, device=dev)

def sdf(S, x, y, z):
    """x,y,z [K,H,W] in bar coordinates"""
    h = S['_h']; r = S['round']; rc = S['rc']
    if S['up'] > 0:
        a, b, p, q, two = S['wav']
        w = torch.sin(x * a * 1.7 + p + 1.3 * torch.sin(z * b)) * torch.sin(z * b * 2.1 + q + torch.sin(x * a)) if two else torch.sin(z * b * 2.2 + q + 1.5 * torch.sin(x * a + p))
        y = y - S['up'] * w * ((y + h[1] * .2) / h[1]).clamp(0, 1)
    qx = x.abs() - h[0] + rc; qy = y.abs() - h[1] + rc
    d2 = torch.sqrt(qx.clamp(min=0) ** 2 + qy.clamp(min=0) ** 2 + 1e-9) + torch.maximum(qx, qy).clamp(max=0) - rc
    a = d2 + r; b = z.abs() - h[2] + r
    return torch.sqrt(a.clamp(min=0) ** 2 + b.clamp(min=0) ** 2 + 1e-9) + torch.maximum(a, b).clamp(max=0) - r

def trace(S, H, W, dev):
    K = S['K']; m = min(H, W)
    yy, xx = torch.meshgrid(torch.arange(H, device=dev, dtype=torch.float32), torch.arange(W, device=dev, dtype=torch.float32), indexing='ij')
    px = (xx + .5 - W / 2) / (m / 2); py = -(yy + .5 - H / 2) / (m / 2)
    d = tt(S['fw'] * S['f'], dev).view(3, 1, 1) + tt(S['rt'], dev).view(3, 1, 1) * px + tt(S['upv'], dev).view(3, 1, 1) * py
    d = d / d.norm(dim=0, keepdim=True)
    R = tt(S['R'], dev); c = tt(S['c'], dev)
    S['_h'] = [tt(S['h'][:, i], dev).view(K, 1, 1) for i in range(3)]
    S['_R'] = R; S['_c'] = c
    ol = torch.einsum('kij,ki->kj', R, tt(S['cam'], dev) - c).view(K, 3, 1, 1)
    dl = torch.einsum('kij,ihw->kjhw', R, d)
    pad = S['up'] * 1.02 + .01
    inv = 1 / torch.where(dl.abs() < 1e-6, torch.full_like(dl, 1e-6), dl)
    hh = torch.stack([S['_h'][0] + .01, S['_h'][1] + pad, S['_h'][2] + .01], 1)
    t1 = (-hh - ol) * inv; t2 = (hh - ol) * inv
    tn = torch.minimum(t1, t2).amax(1); tf = torch.maximum(t1, t2).amin(1)
    ok = (tn < tf) & (tf > 0)
    t = tn.clamp(min=.01)
    st = .75 if S['up'] > 0 else 1.
    for _ in range(14 if S['up'] > 0 else 9):
        p = ol + dl * t[:, None]
        t = t + sdf(S, p[:, 0], p[:, 1], p[:, 2]) * st
    p = ol + dl * t[:, None]
    s = sdf(S, p[:, 0], p[:, 1], p[:, 2])
    pix = S['D'] / (S['f'] * m / 2)
    hit = ok & (s < max(.7 * pix, .012)) & (t < tf + .1)
    tb = torch.where(hit, t, torch.full_like(t, 1e6))
    tbest, k = tb.min(0)
    hitm = tbest < 1e5
    g = lambda v: v.gather(0, k[None, None].expand(1, 3, -1, -1))[0]
    pl = g(p)
    # normal by differences, only on chosen bar
    Sx = dict(S); Sx['_h'] = [v.expand(K, H, W).gather(0, k[None]) for v in S['_h']]
    e = .02
    x, y, z = pl[0:1], pl[1:2], pl[2:3]
    n = torch.cat([sdf(Sx, x + e, y, z) - sdf(Sx, x - e, y, z), sdf(Sx, x, y + e, z) - sdf(Sx, x, y - e, z), sdf(Sx, x, y, z + e) - sdf(Sx, x, y, z - e)], 0)
    n = n / n.norm(dim=0, keepdim=True).clamp(min=1e-6)
    # ground
    o = tt(S['cam'], dev).view(3, 1, 1)
    tg = torch.where(d[2] < -1e-3, -o[2] / d[2].clamp(max=-1e-3), torch.full_like(d[2], 1e6))
    far = S['D'] * 2.2 + 25
    gr = tg < far
    t = torch.where(hitm, tbest, torch.where(gr, tg, torch.full_like(tg, far)))
    hand = torch.zeros_like(hitm); nh = torch.zeros_like(d)
    for a, b, r in S['caps']:
        a = tt(a, dev).view(3, 1, 1); b = tt(b, dev).view(3, 1, 1)
        ba = b - a; oa = o - a
        baba = (ba * ba).sum(); bard = (ba * d).sum(0); baoa = (ba * oa).sum(); rdoa = (d * oa).sum(0); oaoa = (oa * oa).sum()
        A = baba - bard ** 2; B = baba * rdoa - baoa * bard; C = baba * oaoa - baoa ** 2 - r * r * baba
        disc = B * B - A * C
        tc = (-B - disc.clamp(min=0).sqrt()) / A.clamp(min=1e-5)
        yv = baoa + tc * bard
        oc = torch.where(yv <= 0, oa.expand_as(d), (o - b).expand_as(d))
        bb = (d * oc).sum(0); cc = (oc * oc).sum(0) - r * r; h2 = bb * bb - cc
        body = (yv > 0) & (yv < baba) & (disc > 0)
        ts = torch.where(body, tc, torch.where(h2 > 0, -bb - h2.clamp(min=0).sqrt(), torch.full_like(tc, 1e6)))
        better = (ts > 0) & (ts < t)
        P = o + d * ts
        hcl = (((P - a) * ba).sum(0) / baba).clamp(0, 1)
        nn = (P - a - ba * hcl) / r
        t = torch.where(better, ts, t); hand = hand | better; nh = torch.where(better, nn, nh)
    bar = hitm & ~hand
    Rk = R[k]                                           # H,W,3,3
    nw = torch.einsum('hwij,jhw->ihw', Rk, n)
    up = col((0, 0, 1), dev)
    N = torch.where(bar, nw, torch.where(hand, nh, up.expand_as(nw)))
    return dict(d=d, t=t, P=o + d * t, N=N, bar=bar, hand=hand, ground=gr & ~bar & ~hand, k=k, pl=pl, nl=n, R=Rk, px=px, py=py, pix=pix)

def shade_terms(S, G, L, soft):
    """soft shadow toward L and contact shade from the bars"""
    R, c, K = S['_R'], S['_c'], S['K']; dev = L.device
    P = G['P'] + G['N'] * .06
    pl = torch.einsum('kij,kihw->kjhw', R, P[None] - c.view(K, 3, 1, 1))
    Ll = torch.einsum('kij,i->kj', R, L).view(K, 3, 1, 1)
    ao = 1.
    Nl = torch.einsum('kij,ihw->kjhw', R, G['N'])
    for s in (.35, 1.3, 3.5):
        q = pl + Nl * s
        dd = sdf(S, q[:, 0], q[:, 1], q[:, 2])
        ao = ao * (.3 + .7 * (dd / s * 1.05 + .02).clamp(0, 1)).prod(0) ** .62
    sh = torch.ones_like(pl[:, 0]); t = .05 + torch.zeros_like(sh)
    for _ in range(11):
        q = pl + Ll * t[:, None]
        dd = sdf(S, q[:, 0], q[:, 1], q[:, 2])
        sh = torch.minimum(sh, .5 + .5 * dd / (soft * t))
        t = t + dd.clamp(.12, 2.5)
    sh = sh.clamp(0, 1).amin(0); sh = sh * sh * (3 - 2 * sh)
    return sh, ao
