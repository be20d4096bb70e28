"""Textures: noise, cells, soap designs, flaws, distractors, grounds. All batched torch."""
import math, torch, numpy as np
import torch.nn.functional as F

def ss(a, b, x):
    t = ((x - a) / (b - a)).clamp(0, 1) if not isinstance(b - a, float) or b != a else (x > a).float()
    return t * t * (3 - 2 * t)

class Noise:
    D = 40
    def __init__(s, seed, dev):
        g = torch.Generator().manual_seed(int(seed) % (2 ** 31) + 11)
        v = torch.rand(1, 4, s.D, s.D, s.D, generator=g) * 2 - 1
        v = torch.cat([v, v[:, :, :1]], 2); v = torch.cat([v, v[:, :, :, :1]], 3); v = torch.cat([v, v[..., :1]], 4)
        s.V = v.to(dev); s.T = torch.rand(8192, 8, generator=g).to(dev)
    def vec(s, x, y, z):
        p = torch.stack(torch.broadcast_tensors(x, y, z), -1)
        i = p.floor(); f = p - i; f = f * f * (3 - 2 * f)
        p = (torch.remainder(i, s.D) + f) * (2.0 / s.D) - 1
        sh = p.shape[:-1]
        o = F.grid_sample(s.V, p.reshape(1, 1, 1, -1, 3), mode='bilinear', padding_mode='border', align_corners=True)
        return o.reshape(4, *sh)
    def __call__(s, x, y, z, f=1.0, o=1, ch=0):
        r = 0; a = 1.0; t = 0
        for k in range(o):
            r = r + a * s.vec(x * f + 7.3 * k, y * f + 3.1 * k, z * f + 5.7 * k)[ch]
            t += a; a *= 0.5; f = f * 2.03
        return r / (t ** 0.8) * 1.4
    def hash(s, i, j, k):
        i, j, k = torch.broadcast_tensors(i.long(), j.long(), k.long() if torch.is_tensor(k) else torch.tensor(int(k), device=s.T.device))
        h = i * 7919 + j * 104729 + k * 1299709 + (i * j) * 31 + (i * i) * 17
        return s.T[torch.remainder(h, 8192)]

def cells(N, u, v, sc, seed):
    """jittered grid, 3x3: nearest distances F1,F2 (in cell units) and random of the nearest."""
    a = u / sc; b = v / sc; i = a.floor(); j = b.floor(); F1 = torch.full_like(a, 9.); F2 = F1.clone(); R = None
    for di in (-1, 0, 1):
        for dj in (-1, 0, 1):
            r = N.hash(i + di, j + dj, seed)
            d = ((i + di + r[..., 0] - a) ** 2 + (j + dj + r[..., 1] - b) ** 2).sqrt()
            n = d < F1
            F2 = torch.where(n, F1, torch.minimum(F2, d)); F1 = torch.where(n, d, F1)
            R = r if R is None else torch.where(n[..., None], r, R)
    return F1, F2, R

def spots(N, u, v, sc, dens, rmin, rmax, seed, asp=None):
    """spots inside their own cell: returns d/r (big where none), dx,dy (cm), r, rnd."""
    a = u / sc; b = v / sc; i = a.floor(); j = b.floor(); R = N.hash(i, j, seed)
    r = rmin + (rmax - rmin) * R[..., 2] ** 2.5
    m = (r / sc).clamp(max=.45)
    dx = (a - i - m - (1 - 2 * m) * R[..., 0]) * sc; dy = (b - j - m - (1 - 2 * m) * R[..., 1]) * sc
    if asp is not None:
        th = R[..., 4] * 3.14159; c = th.cos(); s = th.sin()
        ex = dx * c + dy * s; ey = (dy * c - dx * s) * asp
        d = (ex * ex + ey * ey).sqrt()
    else: d = (dx * dx + dy * dy).sqrt()
    q = d / r
    return torch.where(R[..., 3] < dens, q, torch.full_like(q, 9.)), dx, dy, r, R

def mix(A, c, m): return A + (c - A) * m[:, None]
def C(c):  # [k,3] -> [k,3,1,1]
    return c[:, :, None, None]
def lin(c): return torch.where(c <= .04045, c / 12.92, ((c.clamp(min=0) + .055) / 1.055) ** 2.4)

def sub(d, idx): return {k: (v[idx] if torch.is_tensor(v) else v) for k, v in d.items()}

# ---------------------------------------------------------------- designs
def design(N, G, P, des, idxs):
    """fills A (linear) and field (signed cm to main colour border; >0 is side of colour 1)"""
    n, H, W = G['x'].shape; dev = G['x'].device
    A = P['pal'][:, 0][:, :, None, None].expand(n, 3, H, W).clone()
    fld = torch.full((n, H, W), -9., device=dev)
    for name, ix in idxs(des).items():
        g = sub(G, ix); p = sub(P, ix); q = p['pal']; c0, c1, c2, c3 = [C(q[:, k]) for k in range(4)]
        X, Y, Z = g['X'], g['Y'], g['Z']; x, z = g['x'], g['z']; k1 = p['r1'][:, None, None]; k2 = p['r2'][:, None, None]; k3 = p['r3'][:, None, None]
        aa = g['pix'] * .8 + .012; f = None
        a = c0.expand(-1, -1, H, W)
        if name == 'layers' or name == 'mica':
            w = N(X, Y, Z * .3, .35 + .5 * k3, 2) * (.03 + .45 * k2 ** 2)
            zb = (k1 - .5) * .9 * g['hz']
            f = z - zb - w
            a = mix(a, c1, ss(-1., 1., f / aa))
            f2 = z - zb - (.35 + .3 * k2) * g['hz'] - N(X + 9, Y, Z, .5, 2) * .15
            a = mix(a, c2, ss(-1., 1., f2 / aa) * (k3 > .45).float())
            f3 = z - zb + (.35 + .3 * k3) * g['hz'] - N(X - 9, Y, Z, .5, 2) * .15
            a = mix(a, c3, ss(1., -1., f3 / aa) * (k2 > .6).float())
            if name == 'mica':
                wd = .025 + .05 * k3 + .03 * N(X, Y, Z, 1.5)
                m = ss(1., -1., (f.abs() - wd.clamp(min=.008)) / aa)
                mc = torch.where((k3 > .5)[:, None], c3.new_tensor([.32, .2, .06])[None, :, None, None], c3 * .3)
                a = mix(a, mc, m * .92)
        elif name == 'ombre':
            t = ss(0., 1., (z / g['hz'] * (.5 + .2 * k1) + .5 + .12 * N(X, Y, Z, .5, 2))); a = mix(a, c1, t)
            a = mix(a, c2, ss(.5, 1., t) * k3)
        elif name == 'swirl':
            wv = N.vec(X * .35, Y * .12, Z * .35); w2 = N.vec(X * .9 + 5, Y * .3, Z * .9)
            am = .8 + 1.6 * k1
            s = N(X + am * wv[0] + .3 * w2[0], Y * .4, Z + am * wv[1] + .3 * w2[1], .45 + .5 * k2, 1)
            f = (s - .1) * .9
            a = mix(a, c1, ss(-1., 1., f / (aa * 1.2)))
            s2 = N(X + am * wv[2] + 20, Y * .4, Z + am * wv[1] - 7, .6, 1)
            a = mix(a, c2, ss(-1., 1., (s2 - .35 + .3 * k3) / aa))
            a = mix(a, c3, ss(-1., 1., (s2 * -1 - .5 + .2 * k2) / aa) * (k3 > .5).float())
        elif name == 'feather':
            wv = N.vec(X * .6, Y * .2, Z * .6)
            ph = X * (2. + 3 * k1) + (1.2 + k2) * torch.sin(z * (1.2 + 1.5 * k3) + wv[0] * 1.5) + wv[1] * .8
            s = torch.sin(ph); f = (s - .1) * .25
            a = mix(a, c1, ss(-1., 1., f / aa)); a = mix(a, c2, ss(-1., 1., (torch.sin(ph * .5 + 1) - .72) * .4 / aa))
        elif name == 'hanger':
            wv = N.vec(X * .5, Y * .15, Z * .5); r = ((x - k1 + .5) ** 2 * (1 + k2) + (z - .8 * k3) ** 2 * .6 + .01).sqrt() + .35 * wv[0]
            s = torch.sin(r * (3. + 3 * k2) + 1.5 * wv[1]); f = s * .22
            a = mix(a, c1, ss(-1., 1., (f - .02) / aa)); a = mix(a, c2, ss(-1., 1., (torch.sin(r * 2.2 + 2) - .6) * .3 / aa) * .9)
        elif name == 'embed':
            sx = (k1 - .5) * g['hx']; sz = (k2 - .5) * g['hz'] * .8; rr = .5 + .7 * k3
            ang = torch.atan2(z - sz, x - sx); d = ((x - sx) ** 2 + (z - sz) ** 2).sqrt()
            lob = torch.where(k2 > .5, .16 * torch.cos(ang * 5 + k1 * 6), torch.zeros_like(ang))
            f = rr * (1 + lob) - d; a = mix(a, c1, ss(-1., 1., f / aa))
            a = mix(a, c2, ss(-1., 1., (rr * .5 - d) / aa) * (k1 > .6).float())
        elif name == 'rim':
            e = torch.minimum(g['hx'] - x.abs(), g['hz'] - z.abs()) + .06 * N(X, Y, Z, .8)
            f = (.25 + .3 * k1) - e; a = mix(a, c1, ss(-1., 1., f / aa))
            a = mix(a, c2, ss(-1., 1., (e - (.6 + .3 * k1)) / aa) * (k2 > .6).float())
        elif name == 'confetti':
            F1, F2, R = cells(N, X + .12 * N(X, Y, Z, 2.), Z, .45 + .4 * k1, 5)
            m = ss(0., 1., (F2 - F1 - .12) * .3 / aa) * (R[..., 5] < .3 + .3 * k2).float()
            sel = R[..., 6][:, None]; cc = torch.where(sel < .4, c1, torch.where(sel < .7, c2, c3)); a = mix(a, cc, m)
        elif name == 'marble':
            wv = N.vec(X * .5, Y * .3, Z * .5); s = N(X + wv[0] * 1.2, Y, Z + wv[1] * 1.2, .7, 4)
            a = mix(a, c1, ss(-.4, .5, s) * (.4 + .6 * k1)); a = mix(a, c2, ss(.1, .02, s.abs()) * .6 * k2)
        elif name == 'drop':
            for kk, cc in enumerate((c1, c2, c1)):
                wv = N.vec(X * .7 + kk * 11, Y * .25, Z * .7)
                cx = (torch.sin(k1 * 40 + kk * 2.4)) * g['hx'] * .7
                fk = (.35 + .4 * k2) - (((x - cx + .5 * wv[0]) ** 2) + ((z + .5 * wv[1] - (kk - 1) * .3 * k3) / (2.2)) ** 2).sqrt()
                f = fk if f is None else torch.maximum(f, fk); a = mix(a, cc, ss(-1., 1., fk / aa))
        A[ix] = a
        if f is not None: fld[ix] = f
    # natural: slow tone drift, faint mottling, slight oxidised skin
    nz = N(G['X'], G['Y'], G['Z'], .4, 3); nf = N(G['X'], G['Y'], G['Z'], 4., 2)
    A = A * (1 + P['mott'][:, None, None] * nz + .012 * nf)[:, None]
    wear = ss(.14, .0, G['ed']) * ss(-.1, .5, N(G['X'], G['Y'], G['Z'], 1.7, 2)); A = A * (1 + .12 * (P['r3'][:, None, None] - .35) * wear)[:, None]
    return A.clamp(.004, .95), fld

# ---------------------------------------------------------------- flaws
def region(N, g, ext, o):
    r = N(g['X'] + o, g['Y'] - o, g['Z'] + 2 * o, .33, 2)
    return ss(-.12, .12, r - (1.0 - 2.3 * ext))

def flaw(N, k, g, S, q):
    """apply flaw k to states S (A,h,gl,fld) of one subset. q: sev,ext,var,sc,seed,dir,col tensors. returns mask 0..1"""
    e = lambda t: t[:, None, None]
    sev, ext, var, sc, sd, th = [e(q[a]) for a in ('sev', 'ext', 'var', 'sc', 'seed', 'dir')]
    sd = sd.floor(); X, Y, Z, u, v, x, y, z = [g[a] for a in 'X Y Z u v x y z'.split()]
    A, h, gl = S['A'], S['h'], S['gl']; fc, ft, fs = g['fc'], g['ft'], g['fs']
    aa = g['pix'] * .7; reg = region(N, g, ext, q['seed'].remainder(13.)[:, None, None]); one = torch.ones_like(x)
    V = lambda i: (var == i).float()
    c, s = th.cos(), th.sin(); ur = u * c + v * s; vr = v * c - u * s
    col = C(q['col']); lum = (A * A.new_tensor([.3, .6, .1])[None, :, None, None]).sum(1, keepdim=True)
    if k == 0:
        dens = (.12 + .5 * sc); m = torch.zeros_like(x)
        for L, (cs, r0, r1) in enumerate(((.35, .02, .07), (.8, .04, .12), (1.9, .07, .24))):
            wob = N(u, v, sd * .01 + x * 0, 7.) * .15
            d, dx, dy, r, R = spots(N, u, v, torch.tensor(cs, device=x.device), dens * (1 if L < 2 else .8 * sc), r0, r1, sd + L * 7)
            big = (R[..., 3] < dens)
            core = ss(1.15, .8, d + wob)
            a_ = dx * c + dy * s; b_ = dy * c - dx * s; b_ = b_ + a_ * a_ * .3
            tail = torch.exp(-(b_ / (r * .7)) ** 2) * torch.exp(-a_.clamp(min=0) / (r * 4)) * (a_ > 0) * (d < 8.9) * big
            # fade tail at cell border
            halo = torch.exp(-(d / 2.2) ** 2) * .5
            m = torch.maximum(m, torch.maximum(core, V(1) * tail * .8 + V(2) * halo) * (1 if L == 0 else 1) * (torch.ones_like(V(3)) if L == 2 else (1 - V(3))))
        m = m * reg; S['A'] = mix(A, col, m * (.4 + .6 * sev)); return m
    if k == 1:
        w = N.vec(X * .6, Y * .6, Z * .6)[0]
        uu = ur + .5 * w; vv = vr + (.35 + .3 * sc) * w + .08 * uu * uu * (sc - .5)
        a0 = ss(.15, .6, N(uu * .3, vv * 2.6 * (1 + sc), X * 0 + sd, 1., 2))
        a1 = ss(1., .2, ((vv - (sc - .5) * 2) / (.12 + .35 * sc + .1 * w)).abs()) * ss(-.6, .5, N(uu * .4, vv * 6, X * 0 + sd, 1., 2))
        a2 = ss(.3, .6, N(uu * 1.0, vv * 4.5, X * 0 + sd, 1., 2))
        m = (V(0) * a0 + V(1) * a1 + V(2) * a2 + V(3) * torch.maximum(a1, a2 * .6)) * torch.where(var == 1, one, reg)
        S['A'] = mix(A, col, m * (.25 + .65 * sev)); return m
    if k == 2:
        m = torch.zeros_like(x); ring = torch.zeros_like(x)
        for L, (cs, r0, r1, vs) in enumerate(((.28, .015, .05, (0, 3)), (.7, .04, .11, (0, 1, 3)), (1.4, .1, .3, (1,)), (.2, .02, .05, (2,)))):
            on = sum(V(i) for i in vs)
            d, dx, dy, r, R = spots(N, u, v, torch.tensor(cs, device=x.device), .15 + .45 * sc, r0, r1, sd + 11 * L, asp=1 + (2. if L == 3 else .5))
            d = d + N(u, v, sd * .03 + x * 0, 5.) * (.1 + .35 * V(1))
            m = torch.maximum(m, on * ss(1.1, .75, d) * (.6 + .4 * R[..., 6])); ring = torch.maximum(ring, on * ss(2., 1.2, d) * V(3))
        m = m * reg; ring = ring * reg * (1 - m)
        A = A * (1 - .25 * ring * sev)[:, None]
        wc = A.new_tensor([.88, .86, .8])[None, :, None, None]
        S['A'] = mix(A, wc, m * (.35 + .65 * sev)); S['h'] = h + m * .01; return torch.maximum(m, ring * .6)
    if k == 3:
        wv = N.vec(X * .5 + sd, Y * .5, Z * .5); fr = .6 + .9 * sc
        r0 = N(X + wv[0], Y, Z + wv[1], fr, 2, 1).abs(); r1 = N(X + .5 * wv[0], Y, Z + .5 * wv[1], fr * 2.2, 2, 2).abs()
        st = (torch.sin(vr * (3 + 3 * sc) + 2.2 * wv[2] + .8 * N(X, Y, Z, 1.5)) + .1).abs() * .45
        wd = .05 + .1 * sev
        m = V(0) * ss(1.3, .1, r0 / wd) + V(1) * ss(1.3, .1, r1 / (wd * 1.5)) + V(2) * ss(1.3, .1, st / (wd * 1.2)) * ss(-.4, .1, wv[3]) + V(3) * torch.maximum(ss(1.3, .1, r0 / (wd * 1.6)), ss(1.2, .2, r1 / wd) * .7)
        m = m * reg * (1 - .3 * ft); hi = A.max(1, keepdim=True)[0]
        tc = (A * (A / hi.clamp(min=.02)) ** .7 * (.72 - .25 * e(q['sev'])[:, None]))
        S['A'] = mix(A, tc, m * (.45 + .55 * sev)); S['gl'] = gl + .25 * m; S['h'] = h - .006 * m; return m
    if k == 4:
        w = .12 * N(X, Y, Z, 2.5) ; asp = 1 + 1.6 * V(2); size = .16 + .3 * sc
        F1, F2, R = cells(N, (ur + w), (vr + w) / asp, size, sd)
        ln = ss(.16, .03, F2 - F1)
        G1, G2, R2 = cells(N, ur + w, vr - w, size * 2.8, sd + 3); l2 = ss(.1, .02, G2 - G1)
        ln = torch.maximum(ln * (1 - .5 * V(1)), l2 * (V(1) + .5 * V(3)))
        isl = (1 - ln) * reg
        A1 = mix(A, lum * .15 + .8, isl * .45 * (.3 + .7 * sev) * (.6 + .4 * R[..., 5]))
        tc = A * A.clamp(min=.02) ** .2 * .8
        m = ln * reg; S['A'] = mix(A1, tc, m * (.35 + .6 * sev)); S['h'] = h - .008 * m; return (reg > .4).float() * torch.maximum(m, isl)
    if k == 5:
        nz = N(X, Y, Z, .8, 4); gr = N(X, Y, Z, 9., 2); topw = torch.maximum(ft, .25 * fs)
        rim = ss(.55, .0, g['ed'] + .25 * nz)
        cr = ss(.18, .02, N(X + .5 * nz, Y, Z, 1.6, 2, 1).abs())
        base = V(0) * topw * ss(-.6, .1, nz + 1.3 * ext - .5) + V(1) * ss(-.15, .5, nz + 1.5 * ext - .9) + V(2) * rim * ss(-.4, .3, nz + ext - .3) + V(3) * torch.maximum(ft, .4 * (1 - fc)) * torch.maximum(cr, ss(.1, .6, nz)) * ss(-.5, .1, nz + ext)
        m = (base * (.8 + .25 * gr)).clamp(0, 1); wc = A.new_tensor([.8, .79, .77])[None, :, None, None]
        S['A'] = mix(A, wc, m * (.2 + .7 * sev)); S['h'] = h + .006 * m * gr; S['gl'] = gl * (1 - .8 * m); return m
    if k == 6:
        nz = .12 * N(X, Y, Z, .7, 2); a_ = x / g['hx'] - (sc - .5) * .3; b_ = z / g['hz'] + V(2) * .45 - (sc - .5) * .15
        rad = .45 + .4 * ext
        d0 = (a_ ** 2 + b_ ** 2 + .001).sqrt(); d1 = ((a_ ** 4 + b_ ** 4 + .0001)) ** .25
        d = torch.where((var == 1) | (var == 3), d1, d0) + nz
        t = (d - rad) / .06; soft = .6 + 2.5 * (sc - .3).clamp(min=0)
        m = ss(1., -1., t / soft); ring = torch.exp(-(t / (.35 + .5 * sc)) ** 2)
        m = m * (1 - ft); ring = ring * (1 - ft); hi = A.max(1, keepdim=True)[0].clamp(min=.02)
        tc = A * (A / hi) ** .5 * (.72 - .3 * sev)[:, None]
        S['A'] = mix(A, tc, m * (.45 + .5 * sev)); S['A'] = mix(S['A'], torch.where((V(3) + V(0) > 0)[:, None], S['A'] * .55, A * 1.2 + .05 + .1 * lum), ring * (.25 + .5 * sev))
        S['gl'] = gl + .2 * m; return (torch.maximum(m, ring) > .25).float() * (1 - ft)
    if k == 7:
        m = torch.zeros_like(x); co = torch.zeros_like(x); nz = N(u, v, x * 0 + sd, 3., 2)
        for L, (cs, r0, r1, vs) in enumerate(((2.6, .2, .6, (0, 3)), (1.2, .08, .25, (0, 1, 2)), (.5, .03, .1, (1,)))):
            on = sum(V(i) for i in vs); d, dx, dy, r, R = spots(N, u, v, torch.tensor(cs, device=x.device), .25 + .4 * sc, r0, r1, sd + 5 * L)
            d = d + .25 * nz
            m = torch.maximum(m, on * torch.exp(-(d.clamp(min=0) / (.9 - .2 * V(1))) ** 2)); co = torch.maximum(co, on * ss(.6, .3, d))
        ptch = ss(.0, .7, N(X, Y, Z, .7, 3) + .9 - 1.3 * g['ed']) * V(2)
        m = torch.maximum(m, ptch * .8) * torch.where(var == 3, one, reg); co = co * torch.where(var == 3, one, reg)
        S['A'] = mix(A, A * C(q['col']).new_tensor([.85, .42, .1])[None, :, None, None] + A.new_tensor([.06, .018, 0])[None, :, None, None], m * (.35 + .6 * sev))
        S['A'] = mix(S['A'], A.new_tensor([.22, .08, .015])[None, :, None, None], co * (.25 + .55 * sev) * (1 - .7 * V(2))); S['gl'] = gl + .2 * m * V(3); return ss(.2, .3, m)
    if k == 8:
        m = torch.zeros_like(x); sh = torch.zeros_like(x); dep = torch.zeros_like(x)
        for L, (cs, r0, r1, vs) in enumerate(((.5, .02, .06, (0, 3)), (.16, .012, .04, (1,)), (1.3, .06, .22, (2, 0)), (.28, .02, .06, (1, 2, 3)))):
            on = sum(V(i) for i in vs); d, dx, dy, r, R = spots(N, u, v, torch.tensor(cs, device=x.device), .15 + .6 * sc - .1 * L, r0, r1, sd + 3 * L, asp=1.3)
            mk = on * ss(1.1, .8, d); m = torch.maximum(m, mk)
            sh = torch.where(mk > 0, (dx * c + dy * s) / r, sh); dep = torch.maximum(dep, on * (1 - d * d).clamp(min=0).sqrt() * r)
        band = ss(.45, .2, (z - .4 * N(X, Y, Z, .4) - (sc - .5) * 2).abs()); rg = torch.where(var == 3, band, reg)
        m = m * rg; S['A'] = A * (1 - m * (.35 + .5 * sev) * (.75 + .35 * sh.clamp(-1, 1)))[:, None].clamp(0, 1); S['h'] = h - dep * rg * 1.2; return m
    if k == 9:
        wn = .35 * N(Y * .6 + sd, Z * .8, X * .1, 1., 3) + .06 * N(Y * .6, Z, X * 0 + sd, 5., 1)
        x0 = (sc - .5) * 1.1 * g['hx']; d = (x - x0 - wn).abs()
        below = (g['hz'] - z).clamp(min=0); deep = (.5 + 1.8 * ext) * g['hz'] * (1 + .2 * N(Y, X * 0, X * 0 + sd, .7)); deep = torch.where(var == 2, deep * 9, deep)
        taper = (1 - below / deep).clamp(0, 1) ** .7
        w = (.025 + .16 * sev * (.4 + .6 * V(1)) - .02 * V(3)) * taper * (.7 + .5 * N(Y, Z, X * 0 + sd, 1.2))
        w = w * torch.where(var == 3, one * .35, one); along = torch.where(g['fc'] > .5, one, ss(-.1, .1, N(Y * .35, X * 0, X * 0 + sd, 1.) + 1.6 * ext - .5))
        m = ss(1., -1., (d - w.clamp(min=0)) / (aa + .01)) * (taper > 0) * (w > .006) * along
        d2 = (x - x0 - wn - (below * .7 + .3 * N(Y + 5, Z, X * 0, 1.)) * torch.sign(sc - .5)).abs()
        m2 = ss(1., -1., (d2 - (w * .45)) / (aa + .01)) * (taper > .3) * V(1); m = torch.maximum(m, m2)
        lip = torch.exp(-(d / (w + .12)) ** 2) * taper * along
        S['h'] = h + .08 * sev * lip - .12 * m; S['A'] = mix(A, A * .16, m * (.7 + .3 * sev)); S['gl'] = gl * (1 - m); return m
    if k == 10:
        ee = torch.minimum(g['hx'] - x.abs(), g['hz'] - z.abs()).clamp(min=0); ee = torch.where(fc > .5, ee, torch.minimum(ee, one * .02))
        nz = N(X, Y, Z, .6, 3); dep = (.25 + 1.2 * ext) * (1 + .35 * nz + V(2) * .6 * (N(X, Y, Z, .25) + torch.sign(x) * .5))
        soft = torch.where((var == 1) | (var == 3), one * .14, one * .6); dep = dep + V(3) * .35 * g['hz']
        m = ss(1., -1., (ee - dep) / (soft * dep.clamp(min=.15))); bc = q['col']
        br = A.new_tensor([.36, .19, .08])[None, :, None, None] * (1.25 - .85 * sev)[:, None]
        S['A'] = mix(A, br * (.5 + lum).clamp(.45, 1.2), m * (.3 + .6 * sev)); return (m > .3).float()
    if k == 11:
        f = S['fld']; nz = N(X, Y, Z, .9, 3); wd = (.12 + .7 * sev * (.3 + .7 * ext)) * (1 + .5 * nz)
        fing = ss(-.2, .5, N(X * 2.2, Y, Z * .4, 1., 2)); wd = wd * torch.where(var == 1, 1.8 * ss(-.5, .6, N(X, Y, Z, 1.1, 2)), one) * torch.where(var == 2, .25 + 2.2 * fing, one)
        t = (-f).clamp(min=0) / wd.clamp(min=.02); m = torch.exp(-t ** (1.3)) * (f < .02) * (f > -5)
        m = m * torch.where(ext > .75, one, (.15 + .85 * reg)); m = torch.where(m < .04, m * 0, m)
        # the bar's dye: colour at the dark side of the border
        dye = C(q['dye']); S['A'] = A * (1 - m * (.35 + .6 * sev))[:, None] + torch.minimum(dye * 1.15, A * .95) * (m * (.35 + .6 * sev))[:, None]
        return (m > .28).float()
    if k == 12:
        th2 = torch.where(sc > .5, (th * .06), 1.571 + th * .06); c2, s2 = th2.cos(), th2.sin()
        a_ = x * c2 + z * s2; b_ = z * c2 - x * s2; b_ = b_ + V(2) * .05 * a_ * a_ + .02 * N(a_, b_, x * 0 + sd, .5)
        n1 = N(a_ * .06, b_ * 9, x * 0 + sd, 1., 2); n2 = N(a_ * .15, b_ * 2.5, x * 0 + sd, 1., 1)
        fine = n1 * (V(0) + V(2)) ; few = -ss(.42, .75, n2) * 1.6 + .4 * ss(.25, .4, n2) * (n2 < .45)
        sg = torch.exp(-((b_ - (ext - .5) * 2) / (.05 + aa)) ** 2) * -1.7 + torch.exp(-((b_ - .12 - (ext - .5) * 2) / .06) ** 2) * .7
        ln = (fine + V(1) * few + V(3) * sg) * fc; rg = torch.where((var == 1) | (var == 3), one, reg) * ss(-1., -.3, N(a_, x * 0, x * 0 + sd, .3) + 1.2 * ext)
        ln = ln * rg; S['h'] = h + ln * .035 * (.3 + sev); drag = N(a_ * .2, b_ * 5, x * 0 + sd, 1., 2) * V(1) * .3 * rg * fc
        S['A'] = A * (1 + (.06 + .2 * sev) * ln.clamp(-1.5, .8) + drag * sev)[:, None].clamp(.3, 1.4); return ss(.2, .35, ln.abs() + drag.abs() * 0) if True else ln
    if k == 13:
        f = S['fld']; alt = z - (sc - .5) * g['hz'] * .9 - .2 * N(X, Y, Z, .5, 2); f = torch.where(f < -8, alt, f)
        f = f + .03 * N(X, Y, Z, 3., 2)
        nx = N(X * .5 + sd, Y * .3, X * 0, 1., 2); opn = torch.where(var == 1, ss(.1, .9, torch.sign(sc - .5) * x / g['hx'] + ext), torch.where(var == 2, .6 + .4 * nx, ss(.0, .6, nx + 1.2 * ext - .3)))
        w = (.015 + .12 * sev * (.35 + .65 * (V(1) + V(2)).clamp(max=1))) * opn
        m = ss(1., -1., (f.abs() - w) / (aa + .008)) * (w > .01)
        f3 = f - .55 * g['hz']; m = torch.maximum(m, V(3) * ss(1., -1., (f3.abs() - w * .8) / (aa + .008)) * (w > .01)); m = m * (1 - ft) * (1 - g['fb'])
        lo = ss(0., .12, (f + w)) * ss(.35, .12, f + w) * opn
        S['h'] = h - .15 * m + .03 * torch.tanh(f / .15) * opn * V(2) * sev; S['A'] = mix(A, A * .12, m * (.65 + .35 * sev)) * (1 + .06 * lo)[:, None]; S['gl'] = gl * (1 - m); return m
    if k == 14:
        wv = N.vec(X * .8 + sd, Y * .8, Z * .1); fr = 1.0 + 1.5 * sc
        B1, B2, BR = cells(N, (X - 200) + .55 * wv[0] + .2 * wv[1], ((Y - 200) + .55 * wv[2]) * (.55 + .3 * sc), 1.5 / fr, sd); b = 1.7 * ss(.0, .42, B2 - B1) - 1 + .25 * N(X, Y, X * 0, 2.5)
        rp = torch.sin((ur + .45 * wv[0]) * 3.2 * fr + 1.8 * wv[1]) * (.6 + .5 * wv[3])
        lp = 1 - 2 * N(X + .4 * wv[0], Y + .4 * wv[1], X * 0 + sd, fr * .9, 2).abs() * 1.4
        hh = V(0) * b + V(1) * rp + V(2) * lp + V(3) * (b * .6 + .5 * rp); rg = torch.where(ext > .6, one, reg) * ft
        S['h'] = h + hh * rg * (.07 + .2 * sev) / fr ** .5; S['A'] = A * (1 - rg * (.08 + .27 * sev) * ss(.1, -.9, hh))[:, None]; S['gl'] = gl + .15 * rg; return (rg > .4).float()
    if k == 15:
        side = torch.maximum(torch.maximum(fs, g['fb']), g['puck']); rg = torch.where(ext > .6, one, reg) * side
        d, dx, dy, r, R = spots(N, u, v, .5 + .8 * sc, .6, .1, .35, sd, asp=1.2); dim = (1.1 * (1 - d * d)).clamp(min=0)
        F1, F2, R1 = cells(N, ur + .25 * N(u, v, x * 0 + sd, .8), vr * (.35 + .4 * sc), .9 + .8 * sc, sd); cre = ss(.16, .0, F2 - F1)
        pe = ss(-.1, .6, N(u, v, x * 0 + sd, 4 + 3 * sc, 1)); fold = torch.exp(-((vr + .35 * N(ur, x * 0, x * 0 + sd, .5, 2) + (sc - .5)) / .09).abs()) + torch.exp(-((vr * .7 + ur * .35 + 1.1) / .07).abs()) + torch.exp(-((vr * .8 - ur * .3 - 1.) / .08).abs())
        hh = -(V(0) * dim + V(1) * cre + V(2) * pe * .45 + V(3) * fold); S['h'] = h + hh * rg * (.06 + .17 * sev)
        S['A'] = A * (1 + (.05 + .2 * sev) * hh.clamp(-1, 0) * rg)[:, None]; return (ss(.1, .3, -hh) * rg > .4).float()

# ---------------------------------------------------------------- distractors
def distract(N, name, g, S, p, atlas):
    e = lambda t: t[:, None, None]
    sd = e(p['dseed']).floor(); k1, k2, k3 = e(p['d1']), e(p['d2']), e(p['d3']); u, v, x, y, z, X, Y, Z = [g[a] for a in 'u v x y z X Y Z'.split()]
    A, h, gl = S['A'], S['h'], S['gl']; t3 = lambda *c: A.new_tensor(c)[None, :, None, None]; aa = g['pix'] * .7; K = lambda f: torch.tensor(f, device=x.device)
    if name in ('poppy', 'coffee', 'oats', 'tea', 'salt', 'glitter'):
        cfg = dict(poppy=(.3, .03, .045, 1., (.012, .012, .016)), coffee=(.22, .015, .06, 1.3, (.035, .017, .008)), oats=(.55, .07, .2, 1.7, (.5, .36, .18)), tea=(.4, .04, .12, 3., (.06, .08, .02)), salt=(.4, .06, .16, 1.2, (.8, .78, .78)), glitter=(.12, .008, .02, 1., (.9, .8, .5)))[name]
        on = g['ft'] if name in ('salt', 'glitter') else torch.ones_like(x)
        for L in range(2):
            d, dx, dy, r, R = spots(N, u, v, K(cfg[0] * (1 + .7 * L)), .2 + .5 * k1, cfg[1], cfg[2], sd + L, asp=cfg[3])
            m = ss(1.1, .75, d + .2 * N(u, v, sd + x * 0, 6.)) * on
            cc = t3(*cfg[4]) * (.6 + .8 * R[..., 5])[:, None]; S['A'] = mix(S['A'], cc, m * (.85 if name != 'oats' else .7)); 
            S['h'] = S['h'] + m * ((1 - d * d).clamp(min=0) * cfg[2] * (.6 if name == 'salt' else .12))
            if name == 'glitter': S['gl'] = S['gl'] + m * 3 * (R[..., 6] > .5)
            if name == 'oats': S['A'] = mix(S['A'], cc * .6, m * ss(.5, .0, (dx * 9).sin().abs()) * .3)
    elif name == 'petals':
        for L in range(3):
            d, dx, dy, r, R = spots(N, u, v, K(1.1 - .25 * L), .25 + .45 * k1, .15, .42, sd + L, asp=1.6 + L * .8)
            m = ss(1.05, .9, d + .15 * N(u, v, x * 0 + sd, 3.)) * g['ft']; q = R[..., 5:6].permute(0, 3, 1, 2)
            pc = C(p['pal'][:, 2]) * .6 + t3(.12, .03, .1); pc = torch.where(q < .3, t3(.1, .13, .03), torch.where(q < .7, pc, t3(.5, .3, .05)))
            sh = ss(1.5, 1., d) * (1 - m) * g['ft']; S['A'] = S['A'] * (1 - .4 * sh)[:, None]
            S['A'] = mix(S['A'], pc * (.6 + .6 * R[..., 6] + .25 * N(u, v, x * 0, 8.))[:, None], m); S['h'] = S['h'] + m * (1.1 - d).clamp(min=0) * .12; S['gl'] = S['gl'] * (1 - .8 * m)
    elif name in ('stamp', 'label'):
        px, pz = (x, z)
        wd = (.75 + .4 * k1) * torch.minimum(g['hx'], g['hz']) * 1.1; ox = (k2 - .5) * .25 * g['hx']; oz = (k3 - .5) * .3 * g['hz']
        gx = (px - ox) / wd; gy = -(pz - oz) / wd; fl = torch.sign(y); gx = gx * -fl
        inb = (gx.abs() < 1) & (gy.abs() < 1); na = atlas.shape[0]; base = (sd[:, 0, 0].long() % (na // 2)) + (0 if name == 'stamp' else na // 2)
        t = F.grid_sample(atlas[base], torch.stack([gx, gy], -1), align_corners=False)[:, 0] * inb * g['fc']
        if name == 'stamp':
            S['h'] = h - .09 * t; S['A'] = A * (1 - .12 * t)[:, None]
            S['A'] = mix(S['A'], t3(.6, .42, .12), t * (k1 > .75) * .8)
        else:
            band = ss(1., -1., ((x - ox).abs() - (.35 + .35 * k3) * g['hx']) / aa); pc = t3(.72, .68, .6) * (.75 + .3 * k1)[:, None]; pc = torch.where((k2 > .6)[:, None], t3(.42, .28, .16), pc)
            S['A'] = mix(A, pc * (1 + .05 * N(u, v, x * 0, 12., 2))[:, None], band); S['A'] = mix(S['A'], pc * .12, t * band * .9); S['h'] = h * (1 - band) + .04 * band; S['gl'] = gl * (1 - .8 * band); S['lab'] = band
    elif name == 'dew':
        for L, cs in enumerate((.22, .5, .9)):
            d, dx, dy, r, R = spots(N, u, v, K(cs), .3 + .4 * k1, .1 * cs, .36 * cs, sd + L)
            m = ss(1.05, .92, d); S['h'] = S['h'] + m * (1 - (d * d).clamp(max=1)).sqrt() * r * .6; S['gl'] = S['gl'] + m * 2.5
            S['A'] = S['A'] * (1 - .2 * m * ss(.2, 1., d))[:, None]
    elif name == 'crinkle':
        S['h'] = h + .09 * torch.sin(torch.where(k2 > .5, x, z) * (5 + 4 * k1)) * g['fc']
    elif name == 'mottle':
        S['A'] = A * (1 + .13 * N(X, Y, Z, 1.1, 3) * (.5 + k1) + .05 * N(X, Y, Z, 6., 2))[:, None]
    elif name == 'veinmica':
        wv = N.vec(X * .5, Y * .2, Z * .5); r = (z - (k1 - .5) * 2 - .5 * wv[0] + .12 * N(X, Y, Z, 2., 2)).abs()
        m = ss(1., -1., (r - (.02 + .045 * k2) * (1 + wv[1])) / (aa + .01)); cc = torch.where((k3 > .5)[:, None], t3(.45, .3, .09), C(p['pal'][:, 3]) * .35); S['A'] = mix(A, cc, m * .9 * (1 - g['ft'])); S['gl'] = gl + .6 * m
    elif name == 'topdust':
        m = g['ft'] * ss(.0, .6, N(X, Y, Z, .9, 3) + k1 - .3); cc = torch.where((k3 > .5)[:, None], t3(.55, .36, .1), torch.where((k3 > .25)[:, None], t3(.5, .2, .28), t3(.3, .34, .5))); S['A'] = mix(A, cc, m * .8); S['gl'] = gl + .9 * m; S['h'] = h + .01 * m * N(u, v, x * 0, 8.)
    elif name == 'peaks':
        wv = N.vec(X * .6, Y * .6, Z * 0); S['h'] = h + g['ft'] * (.22 * N(X + .6 * wv[0], Y * .8, Z * 0, .7 + .6 * k1, 2) + .05 * torch.sin((X + wv[1]) * 4 * (1 + k2)))
    elif name == 'print':
        rr = ((u - k1 * 2 + 1) ** 2 + ((v - k2 + .5) * .75) ** 2).sqrt(); wv = N(u, v, sd + x * 0, 1.2, 1)
        m = ss(.75, .45, rr + .1 * wv); S['h'] = h + m * .004 * torch.sin(rr * 90 + 7 * wv); S['gl'] = gl + .35 * m; S['h'] = S['h'] - .03 * m * ss(.7, 0., rr)

# ---------------------------------------------------------------- grounds
def ground(N, gx, gy, pix, kind, p, idxs):
    n, H, W = gx.shape; A = torch.zeros(n, 3, H, W, device=gx.device); h = torch.zeros_like(gx); gl = torch.full_like(gx, .05)
    o = p['goff'][:, None, None]; th = p['gth'][:, None, None]; U = gx * th.cos() + gy * th.sin() + o; V_ = gy * th.cos() - gx * th.sin() + 2 * o
    for name, ix in idxs(kind).items():
        u, v = U[ix], V_[ix]; a, b = [C(p[k][ix]) for k in ('gc0', 'gc1')]; k1 = p['gk'][ix][:, None, None]; z0 = u * 0 + o[ix]; px = pix[ix]
        fade = ss(.3, .06, px); hh = u * 0; gg = u * 0 + .06
        if name == 'wood':
            b = a * a.new_tensor([.62, .55, .48])[None, :, None, None]
            pw = 7 + 9 * k1; r = N.hash((v / pw).floor(), (u / 1000).floor(), 3); f = torch.remainder(v / pw, 1.)
            w = N.vec(u * .06 + 50 * r[..., 0], v * .2, z0); gr = N(u * .05 + 30 * r[..., 0], v * 1.5 + w[0] * 2.5, z0, 1., 3); fi = N(u * .3, v * 9, z0, 1., 2)
            c_ = mix(a.expand(-1, -1, H, W), b, ss(-.5, .7, gr)) * (1 + .1 * fi * fade)[:, None] * (.8 + .35 * r[..., 2])[:, None]
            gap = ss(.012, .003, torch.minimum(f, 1 - f)); c_ = c_ * (1 - .75 * gap)[:, None]; hh = .02 * fi * fade - .05 * gap; gg = gg + .12
        elif name == 'linen':
            f = 14.; tu = torch.sin(u * f); tv = torch.sin(v * f); wv = (tu * tv) * fade; sl = N(u * .4, v * 6, z0, 1., 2) + N(u * 6, v * .4, z0 + 3, 1., 2)
            c_ = mix(a.expand(-1, -1, H, W), b, ss(-1., 1., sl) * .4) * (1 + .14 * wv)[:, None]; hh = .03 * wv + .5 * N(u, v, z0, .12, 2); gg = u * 0
        elif name == 'check':
            pw = 1.5 + 2.5 * k1; s1 = (torch.remainder(u / pw, 2.) > 1).float(); s2 = (torch.remainder(v / pw, 2.) > 1).float(); c_ = mix(a.expand(-1, -1, H, W), b, (s1 + s2) * .45) * (1 + .12 * torch.sin(u * 13) * torch.sin(v * 13) * fade)[:, None]; hh = .35 * N(u, v, z0, .15, 2); gg = u * 0
        elif name == 'marble':
            w = N.vec(u * .08, v * .08, z0); m = N(u + 6 * w[0], v + 6 * w[1], z0, .07, 4).abs(); m2 = N(u + 4 * w[1], v + 4 * w[2], z0 + 5, .16, 3).abs()
            c_ = a.new_tensor([.78, .77, .75])[None, :, None, None] * (1 - .5 * ss(.12, .0, m) - .25 * ss(.06, .0, m2) - .06 * w[3])[:, None]; c_ = torch.where((k1 > .75)[:, None], (.86 - c_) * .4 + .01, c_); gg = gg + .4
        elif name == 'plain':
            c_ = a.expand(-1, -1, H, W) * (1 + .04 * N(u, v, z0, .1, 2) + .02 * N(u, v, z0, 7., 1) * fade)[:, None]; gg = gg + .15 * k1
        elif name == 'slate':
            q = N(u, v, z0, .35, 4); c_ = a.new_tensor([.05, .053, .058])[None, :, None, None] * (1 + .5 * q + .3 * N(u, v, z0, 8., 2) * fade)[:, None]; hh = .06 * q; gg = gg + .1
        elif name == 'concrete':
            q = N(u, v, z0, .15, 4); c_ = a.new_tensor([.4, .39, .37])[None, :, None, None] * (.5 + .5 * k1)[:, None] * (1 + .22 * q + .1 * N(u, v, z0, 6., 2) * fade)[:, None]
        elif name == 'terrazzo':
            c_ = a.new_tensor([.66, .64, .6])[None, :, None, None].expand(len(u), 3, H, W)
            for L in range(2):
                F1, F2, R = cells(N, u, v, .9 + L, 3 + L); m = ss(.25, .3, F2 - F1) * (R[..., 5] < .4).float(); c_ = mix(c_, torch.where(R[..., 6:7].permute(0, 3, 1, 2) < .5, a, b) * (.5 + R[..., 7])[:, None], m)
            gg = gg + .25
        elif name == 'tile':
            pw = 5 + 6 * k1; fu = torch.remainder(u / pw, 1.); fv = torch.remainder(v / pw, 1.); d = torch.minimum(torch.minimum(fu, 1 - fu), torch.minimum(fv, 1 - fv)) * pw; r = N.hash((u / pw).floor(), (v / pw).floor(), 2)
            gm = ss(.2, .12, d); c_ = mix(a.expand(-1, -1, H, W) * (.9 + .2 * r[..., 1])[:, None], a.new_tensor([.45, .44, .42])[None, :, None, None], gm); hh = -.06 * gm; gg = gg + .5 * (1 - gm)
        elif name == 'rack':
            pw = 1.3 + 1.2 * k1; d = (torch.remainder(u, pw) - pw / 2).abs(); d2 = (torch.remainder(v, pw * 5) - pw * 2.5).abs(); m = torch.maximum(ss(.17, .12, d), ss(.22, .16, d2)); c_ = mix(b.expand(-1, -1, H, W) * (.35 + .05 * N(u, v, z0, .3, 2))[:, None], a.new_tensor([.55, .55, .57])[None, :, None, None], m); hh = .15 * m; gg = gg + .8 * m
        else:  # towel / parchment
            q = N(u, v, z0, 3.5, 2) * fade; f = N(u, v, z0, .25, 2); c_ = a.expand(-1, -1, H, W) * (1 + .22 * q)[:, None]; hh = .12 * q + .5 * f; gg = u * 0
        A[ix] = c_; h[ix] = hh; gl[ix] = gg
    return A.clamp(.005, .92), h, gl
