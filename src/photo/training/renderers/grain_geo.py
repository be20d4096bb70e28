"""Scene set-up (numpy, per picture) and ray marching (torch, batched)."""
import math, numpy as np, torch
from grain_base import *

LIE = np.array([[1, 0, 0], [0, 0, 1], [0, -1, 0]], float)    # columns: obj x->X, y->-Z, z->Y
STAND = np.eye(3)
SIDE = np.array([[0, -1, 0], [1, 0, 0], [0, 0, 1]], float)   # x->Y, y->-X

def yaw(a):
    c, s = math.cos(a), math.sin(a)
    return np.array([[c, 0, s], [0, 1, 0], [-s, 0, c]])

def tilt(a, ax):
    c, s = math.cos(a), math.sin(a)
    return np.array([[1, 0, 0], [0, c, -s], [0, s, c]]) if ax == 0 else np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]])

POSES = ['lie', 'stand', 'side', 'stack', 'row', 'loaf', 'loafcut', 'closecut', 'held', 'closetop', 'scatter', 'sliced', 'closeside']

def scene(rs, pose):
    """-> dict: bars list (c,R,half,Rxy,r,zoff), camera, hand capsules"""
    U = rs.uniform
    hx = U(2.4, 4.3); hy = U(2.3, 4.2); hz = U(1.0, 1.7)
    sh = rs.choice(['box', 'box', 'box', 'soft', 'round'], p=[.3, .3, .15, .17, .08])
    if pose in ('loaf', 'loafcut', 'sliced', 'closetop', 'row', 'closeside') and sh == 'round': sh = 'box'
    if sh == 'round': hy = hx = U(2.6, 3.8); Rxy = hx * .97
    elif sh == 'soft': Rxy = U(.5, 1.4)
    else: Rxy = U(.03, .3)
    r = U(.02, .09) if rs.rand() < .6 else U(.1, .35)
    B = []
    def add(base, x, z, y0, half, ya, tl=None, zo=None):
        R = yaw(ya) @ base
        if tl is not None: R = R @ tl
        ex = np.abs(R) @ half
        B.append(dict(c=np.array([x, y0 + ex[1], z]), R=R, half=half.copy(), zoff=U(0, 20) if zo is None else zo))
        return ex
    half = np.array([hx, hy, hz])
    el = math.radians(U(12, 75)); az = math.radians(U(-35, 35)); zoom = U(.5, 1.05) if rs.rand() < .85 else U(1., 1.5); tgt = None; caps = []; ground = 0.
    ya = U(-.5, .5)
    if pose == 'lie':
        add(LIE, 0, 0, 0, half, U(-3.1, 3.1)); el = math.radians(U(30, 89))
    elif pose == 'stand':
        add(STAND, 0, 0, 0, half, ya); el = math.radians(U(5, 55))
    elif pose == 'side':
        add(SIDE if rs.rand() < .5 else SIDE @ yaw(math.pi), 0, 0, 0, half, ya); el = math.radians(U(8, 55))
    elif pose == 'stack':
        y = 0
        for k in range(rs.randint(2, 5)):
            h2 = half * U(.96, 1.03); add(LIE, U(-.5, .5), U(-.5, .5), y, h2, ya + U(-.4, .4)); y += 2 * h2[2]
        el = math.radians(U(12, 65))
    elif pose == 'row':
        k = rs.randint(2, 6); base = STAND if rs.rand() < .7 else SIDE; gap = U(.2, 1.5)
        w = (hx if base is STAND else hy) * 2 + gap
        along = rs.rand() < .5; sk = U(-.6, .6)
        for i in range(k):
            j = i - (k - 1) / 2
            if along: add(base, j * w, j * sk + U(-.2, .2), 0, half, U(-.15, .15))
            else: add(base, j * U(1.2, 2.5), j * (2 * hz + gap + .8), 0, half, ya + U(-.1, .1))
        el = math.radians(U(10, 50))
    elif pose == 'loaf':
        half[2] = U(7, 13); add(STAND, 0, 0, 0, half, U(.2, 1.3) * rs.choice([-1, 1])); el = math.radians(U(12, 60))
    elif pose == 'loafcut':
        L = half.copy(); L[2] = U(4, 9); a = U(-.7, .7)
        add(STAND, 0, 0, 0, L, a, zo=0.)
        d = yaw(a) @ np.array([0, 0, 1.])
        t = L[2]
        for k in range(rs.randint(1, 4)):
            t += hz + U(.15, 1.6)
            p = d * t
            if k == 0 or rs.rand() < .6: add(STAND, p[0] + U(-.4, .4), p[2], 0, half, a + U(-.25, .25), zo=t); t += hz
            else: add(LIE, p[0] + U(-2, 2), p[2] + hy + .5, 0, half, a + U(-.6, .6), zo=t); break
        el = math.radians(U(12, 55))
    elif pose == 'closecut':
        if rs.rand() < .5: add(LIE, 0, 0, 0, half, U(-3, 3)); el = math.radians(U(55, 89))
        else: add(STAND, 0, 0, 0, half, U(-.3, .3)); el = math.radians(U(2, 30)); az = U(-.3, .3)
        zoom = U(.3, .62)
    elif pose == 'closetop':
        half[2] = U(4, 10) if rs.rand() < .6 else half[2] * 1.5
        add(STAND, 0, 0, 0, half, U(-1.5, 1.5)); el = math.radians(U(35, 85)); zoom = U(.3, .6)
    elif pose == 'closeside':
        half[2] = U(2, 8); add(STAND, 0, 0, 0, half, math.pi / 2 * rs.choice([-1, 1]) + U(-.4, .4)); el = math.radians(U(5, 40)); zoom = U(.35, .8)
    elif pose == 'scatter':
        k = rs.randint(3, 6)
        for i in range(k):
            h2 = half * U(.93, 1.05); a = i * 2.4 + U(-.3, .3); rr = (hx + hy) * .75 * math.sqrt(i + .3) * 1.05
            base = LIE if rs.rand() < .75 else STAND
            add(base, math.cos(a) * rr * 1.15, math.sin(a) * rr * 1.15, 0, h2, U(-3, 3))
        el = math.radians(U(25, 88)); zoom = U(.5, .95)
    elif pose == 'sliced':
        a = U(.2, 1.2) * rs.choice([-1, 1]); d = yaw(a) @ np.array([0, 0, 1.]); k = 6
        t = -k * hz
        for i in range(k):
            add(STAND, d[0] * t + U(-.1, .1), d[2] * t, 0, half, a + U(-.05, .05), zo=t)
            t += 2 * hz + U(.03, .5)
        el = math.radians(U(12, 55))
    elif pose == 'held':
        ground = -U(12, 45); sg = rs.choice([-1, 1])
        a = U(-.3, .3)
        R = yaw(a) @ LIE
        half = half * .95
        B.append(dict(c=np.array([0, half[2], 0]), R=R, half=half, zoff=0.))
        el = math.radians(U(45, 88)); az = U(-.6, .6); zoom = U(.95, 1.35)
        y0 = -.75
        wx, wz = hx, hy
        mode = rs.randint(2)
        fr = U(.68, .85)
        for f in range(4):      # fingers pass under and show beyond the far side
            z = (f - 1.5) * 1.75 + U(-.15, .15)
            L = [1.6, 2.3, 2.0, 1.0][f] + U(-.3, .3)
            z0 = z * .92
            p0 = np.array([-sg * (wx * .3), y0 - .5, z0]); p1 = np.array([sg * (wx + .3), y0 - .1, z]); p2 = np.array([sg * (wx + .8 + .2 * L), y0 + half[2] * (.8 + .35 * L), z + U(-.2, .2)])
            p3 = np.array([sg * (wx - .15 + .05 * L), 2 * half[2] + fr * .65, z * .96 + U(-.15, .15)])
            caps += [(p0, p1, fr * 1.05), (p1, p2, fr)]
            if mode == 1: caps += [(p2, p3, fr * .9)]
        # palm and thumb
        caps += [(np.array([-sg * (wx + 1.2), y0 - 1., -2.2]), np.array([-sg * (wx + 1.0), y0 - 1., 2.2]), 1.7)]
        t0 = np.array([-sg * (wx + 1.6), y0 - .2, wz * .6 + 1.2]); t1 = np.array([-sg * (wx + .9), half[2] * 1.6 + .4, wz * .35]); t2 = np.array([-sg * (wx - 1.2), 2 * half[2] + .7, wz * U(-.1, .2)])
        caps += [(t0, t1, fr * 1.25), (t1, t2, fr * 1.1)]
        caps += [(np.array([-sg * (wx + 2.2), y0 - 1.4, 0]), np.array([-sg * (wx + 16), y0 - 4, U(-4, 8)]), 2.5)]
    P = np.concatenate([np.stack([b['c'] + b['R'] @ (b['half'] * np.array(s)) for s in [(i, j, k) for i in (-1, 1) for j in (-1, 1) for k in (-1, 1)]]) for b in B])
    ctr = (P.min(0) + P.max(0)) / 2
    rad = np.linalg.norm(P - ctr, axis=1).max()
    fov = math.radians(U(32, 62))
    dist = rad / math.sin(fov / 2) * zoom
    tgt = ctr + rs.normal(0, .1, 3) * rad * zoom
    if pose in ('closetop',): tgt[1] = half[1] * 1.9
    vd = np.array([math.cos(el) * math.sin(az), math.sin(el), math.cos(el) * math.cos(az)])
    if pose.startswith('close'):
        ext = (np.abs(B[0]['R']) @ B[0]['half'])
        tgt = B[0]['c'] + np.sign(vd) * ext * (np.abs(vd) > .5) * .8 + rs.normal(0, .12, 3) * rad
        fs = min(max(min(hx, hy), 2), 4)
        dist = fs * U(.75, 1.7) / math.tan(fov / 2)
        if pose == 'closetop': dist *= U(1., 1.6)
    cam = tgt + vd * max(dist, 4.)
    up = np.array([0, 1, 0.]) if el < 1.45 else np.array([-math.sin(az), 0, -math.cos(az)])
    f = -vd; rt = np.cross(f, up); rt /= np.linalg.norm(rt); u = np.cross(rt, f)
    ro = math.radians(rs.normal(0, 5)); rt, u = rt * math.cos(ro) + u * math.sin(ro), u * math.cos(ro) - rt * math.sin(ro)
    topkind = rs.randint(0, 5)     # flat, wave, peaks, ridge, spoon
    tp = dict(A=[U(0, .03), U(.08, .3), U(.1, .35), U(.2, .7), U(.1, .3)][topkind], f=U(.6, 2.2), k=topkind, ph=U(0, 6, 4))
    if sh == 'round' or (Rxy > .8): tp['A'] = 0.
    if pose in ('stack', 'lie', 'scatter', 'side') and tp['A'] > .3: tp['A'] *= .5
    wall = np.linalg.norm(cam[[0, 2]] - tgt[[0, 2]]) + rad + U(3, 40)
    return dict(bars=B, cam=cam, basis=np.stack([rt, u, f], 1), fov=fov, Rxy=min(Rxy, hx * .98, hy * .98), r=r, top=tp, caps=caps, ground=ground, wall=wall, ctr=ctr, rad=rad, focus=float(np.linalg.norm(cam - tgt)), topy=half[1])

def pack(scs, dev):
    n = len(scs); K = max(len(s['bars']) for s in scs); C = max(len(s['caps']) for s in scs)
    c = np.full((n, K, 3), 0.); R = np.tile(np.eye(3), (n, K, 1, 1)); h = np.full((n, K, 3), .001); zo = np.zeros((n, K)); on = np.zeros((n, K))
    A = np.full((n, max(C, 1), 7), 0.); A[:, :, 1] = -999; A[:, :, 4] = -999
    for i, s in enumerate(scs):
        c[i, :, 1] = -999
        for k, b in enumerate(s['bars']):
            c[i, k] = b['c']; R[i, k] = b['R']; h[i, k] = b['half']; zo[i, k] = b['zoff']; on[i, k] = 1
        for k, (p, q, r) in enumerate(s['caps']): A[i, k] = [*p, *q, r]
    T = lambda x: torch.tensor(np.asarray(x, dtype=np.float32).tolist(), dtype=torch.float32, device=dev)
    g = dict(c=T(c), R=T(R), h=T(h), zo=T(zo), K=K, C=C, A=T(A), Rxy=T([s['Rxy'] for s in scs]).view(n, 1, 1), r=T([s['r'] for s in scs]).view(n, 1, 1),
             tA=T([s['top']['A'] for s in scs]).view(n, 1, 1), tf=T([s['top']['f'] for s in scs]).view(n, 1, 1), tk=T([s['top']['k'] for s in scs]).view(n, 1, 1),
             tph=T([s['top']['ph'] for s in scs]), cam=T([s['cam'] for s in scs]), basis=T([s['basis'] for s in scs]), fov=T([s['fov'] for s in scs]),
             ground=T([s['ground'] for s in scs]).view(n, 1, 1, 1), wall=T([s['wall'] for s in scs]).view(n, 1, 1, 1), ctr=T([s['ctr'] for s in scs]), rad=T([s['rad'] for s in scs]).view(n, 1, 1, 1),
             focus=T([s['focus'] for s in scs]).view(n, 1, 1, 1), n=n)
    return g

def rot_t(R, v):
    # plain products: no TF32 whatever the caller has set
    r = lambda i: R[:, i].reshape(-1, 3, 1, 1)
    return r(0) * v[:, :1] + r(1) * v[:, 1:2] + r(2) * v[:, 2:3]

def local(g, k, p):
    """world p [n,3,H,W] -> object k coords"""
    return rot_t(g['R'][:, k], p - g['c'][:, k].view(-1, 3, 1, 1))

def topdisp(g, x, z):
    ph = g['tph']; f = g['tf']; P = lambda i: ph[:, i].view(-1, 1, 1)
    a = torch.sin(f * x + .7 * torch.sin(1.3 * z + P(0)) + P(1)); b = torch.sin(f * 1.4 * z + 1.1 * torch.sin(x * f + P(2)) + P(3))
    k = g['tk']
    return g['tA'] * torch.where(k == 3, torch.exp(-(x * .8) ** 2) + .25 * b, torch.where(k == 2, a * b, .6 * a + .4 * b))

def sd_bar(g, k, q, top=True):
    h = g['h'][:, k]; H = lambda i: h[:, i].view(-1, 1, 1)
    r = torch.minimum(g['r'], H(2) * .8); R = torch.maximum(torch.minimum(g['Rxy'], torch.minimum(H(0), H(1)) - .0) - r, torch.zeros_like(r))
    x, y, z = q[:, 0], q[:, 1], q[:, 2]
    if top: y = y - topdisp(g, x, z) * ((y / H(1)) * 2).clamp(0, 1)
    dx = x.abs() - (H(0) - r - R); dy = y.abs() - (H(1) - r - R)
    d2 = torch.sqrt(dx.clamp(min=0) ** 2 + dy.clamp(min=0) ** 2 + 1e-9) + torch.maximum(dx, dy).clamp(max=0) - R
    dz = z.abs() - (H(2) - r)
    return torch.sqrt(d2.clamp(min=0) ** 2 + dz.clamp(min=0) ** 2 + 1e-9) + torch.maximum(d2, dz).clamp(max=0) - r

def sd_all(g, p, want_id=False):
    best = None
    for k in range(g['K']):
        d = sd_bar(g, k, local(g, k, p))
        if best is None: best = d; idx = torch.zeros_like(d)
        else:
            if want_id: idx = torch.where(d < best, torch.full_like(d, k), idx)
            best = torch.minimum(best, d)
    if g['C']:
        hand = sd_hand(g, p)
        if want_id: idx = torch.where(hand < best, torch.full_like(hand, -1.), idx)
        best = torch.minimum(best, hand)
    return (best.unsqueeze(1), idx.unsqueeze(1)) if want_id else best.unsqueeze(1)

def sd_hand(g, p):
    acc = 0
    kk = 5.0
    for c in range(g['C']):
        a = g['A'][:, c]
        pa = p - a[:, :3].view(-1, 3, 1, 1); ba = (a[:, 3:6] - a[:, :3]).view(-1, 3, 1, 1)
        t = (dot3(pa, ba) / (dot3(ba, ba) + 1e-6)).clamp(0, 1)
        e = pa - ba * t
        d = torch.sqrt(dot3(e, e) + 1e-9)[:, 0] - a[:, 6].view(-1, 1, 1) * (1 - .12 * t[:, 0])
        acc = acc + torch.exp(-kk * d.clamp(-3, 8))
    return -torch.log(acc + 1e-17) / kk

def rays(g, H, W):
    n = g['n']; dev = g['cam'].device
    t = torch.tan(g['fov'] / 2).view(n, 1, 1)
    m = min(H, W)
    xs = ((torch.arange(W, device=dev, dtype=torch.float32) + .5) * 2 - W) / m; ys = -((torch.arange(H, device=dev, dtype=torch.float32) + .5) * 2 - H) / m
    X = (xs.view(1, 1, W) * t).expand(n, H, W); Y = (ys.view(1, H, 1) * t).expand(n, H, W)
    d = torch.stack([X, Y, torch.ones_like(X)], 1)
    d = rot_t(g['basis'].transpose(1, 2), d)
    return norm3(d), 2 * t.view(n, 1, 1, 1) / m

def march(g, H, W, steps=32):
    o = g['cam'].view(-1, 3, 1, 1)
    d, pix = rays(g, H, W)
    R = g['rad'] * 1.15 + .6 + (12. if g['C'] else 0.)
    oc = o - g['ctr'].view(-1, 3, 1, 1)
    t = (-dot3(oc, d) - torch.sqrt((dot3(oc, d) ** 2 - dot3(oc, oc) + R * R).clamp(min=0))).clamp(min=.05)
    for _ in range(steps):
        t = (t + sd_all(g, o + d * t) * .85).clamp(max=300)
    s, idx = sd_all(g, o + d * t, True)
    hit = (s < pix * t * .7 + .004) & (t < 250)
    tg = (g['ground'] - o[:, 1:2]) / torch.where(d[:, 1:2].abs() < 1e-4, torch.full_like(t, -1e-4), d[:, 1:2])
    tg = torch.where(tg > 0, tg, torch.full_like(tg, 1e4))
    f = g['basis'][:, :, 2].clone(); f[:, 1] = 0; f = f / (f.norm(dim=1, keepdim=True) + 1e-6); f = f.view(-1, 3, 1, 1)
    tw = g['wall'] / dot3(d, f).clamp(min=1e-3)
    iswall = (tw < tg)
    tb = torch.minimum(torch.minimum(tg, tw), torch.full_like(tg, 400.))
    hit = hit & (t < tb)
    T = torch.where(hit, t, tb)
    P = o + d * T
    e = 2e-3 + pix * T * .5
    N = 0
    for v in ((1, -1, -1), (-1, -1, 1), (-1, 1, -1), (1, 1, 1)):
        vv = torch.tensor(v, device=P.device, dtype=P.dtype).view(1, 3, 1, 1)
        N = N + vv * sd_all(g, P + vv * e)
    N = norm3(N)
    up = torch.zeros_like(N); up[:, 1] = 1
    N = torch.where(hit, N, torch.where(iswall, -f.expand_as(N), up))
    soap = hit & (idx >= 0); hand = hit & (idx < 0)
    # object coords
    q = torch.zeros_like(P); no = torch.zeros_like(P); hs = torch.ones_like(P); zo = torch.zeros_like(T); on = torch.zeros_like(P)
    for k in range(g['K']):
        m = (idx == k)
        q = torch.where(m, local(g, k, P), q)
        no = torch.where(m, rot_t(g['R'][:, k], N), no)
        hs = torch.where(m, g['h'][:, k].view(-1, 3, 1, 1).expand_as(hs), hs)
        zo = torch.where(m, g['zo'][:, k].view(-1, 1, 1, 1).expand_as(zo), zo)
    return dict(P=P, N=N, d=d, t=T, pix=pix * T, soap=soap.float(), hand=hand.float(), wall=(iswall & ~hit).float(), idx=idx, q=q, no=no, hs=hs, zo=zo, f=f)

def shadow(g, P, N, L, k, steps=14):
    t = torch.full_like(P[:, :1], .06)
    res = torch.ones_like(t)
    P = P + N * .04
    for _ in range(steps):
        s = sd_all(g, P + L * t)
        res = torch.minimum(res, (k * s / t + .5 * 0).clamp(0, 1))
        t = t + s.clamp(.05, 2.5)
    return res * res * (3 - 2 * res)

def ao(g, P, N):
    o = 0
    for s, w in ((.25, .5), (.8, .35), (2., .25)):
        o = o + w * (1 - ((sd_all(g, P + N * s) / s)).clamp(0, 1))
    return (1 - .8 * o).clamp(.08, 1)
