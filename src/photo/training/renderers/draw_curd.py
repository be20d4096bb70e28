"""Soap bars as phone photos show them. draw(n,(h,w),seed,device,clean) -> dict of tensors."""
import os, sys
sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import torch, torch.nn.functional as F
from curd_noise import noise, fbm, ss, spots, cells, cat3, _t
import curd_scene, curd_flaws, curd_post
K = curd_scene.K
def dot(a, b): return (a * b).sum(1)
def nrm(a): return a / torch.sqrt((a * a).sum(1, keepdim=True) + 1e-12)
def V3(x): return x.view(x.shape[0], 3, 1, 1)
def V1(x): return x.view(-1, 1, 1)
def tloc(q, k, pw):
    R = q['bR'][:, k]; c = q['bc'][:, k]
    return rmul(R, pw - V3(c))
def rmul(R, v):
    m, _, H, W = v.shape
    return torch.bmm(R.transpose(1, 2), v.reshape(m, 3, -1)).view(m, 3, H, W)
def prof(q, lp):
    f, t = q['tf'], q['tp']; x, z = lp[:, 0], lp[:, 2]
    g = lambda i: (V1(f[:, i]), V1(t[:, i]))
    (f0, t0), (f1, t1), (f2, t2) = g(0), g(1), g(2)
    a = x * f0 + t0; b = x * f1 * 1.7 + z * .35 + t1; c = z * f2 * .5 + x * .4 + t2
    A = V1(q['ta'])
    return A * (torch.sin(a) + .5 * torch.sin(b) + .4 * torch.sin(c)), A * (f0 * torch.cos(a) + .85 * f1 * torch.cos(b) + .16 * torch.cos(c)), A * (.17 * torch.cos(b) + .2 * f2 * torch.cos(c))
def sdk(q, k, pw, grad=False):
    lp = tloc(q, k, pw); h = V3(q['bh'][:, k]); r = V1(q['rad']); wrp = (q['ta'].max() > 0)
    g = None
    y = lp[:, 1]
    if wrp:
        p0, px, pz = prof(q, lp); s = ((y + h[:, 1]) / (2 * h[:, 1])).clamp(0, 1); y = y - p0 * s + .8 * V1(q['ta']) * s
    lq = torch.stack([lp[:, 0], y, lp[:, 2]], 1)
    a = lq.abs() - h + r[:, None]
    mx = a.clamp(min=0); d = torch.sqrt((mx * mx).sum(1) + 1e-10) + a.max(1)[0].clamp(max=0) - r
    if q['shape'].max() > 0:
        e = h[:, :2]; u = lq[:, :2]; k0 = torch.sqrt(((u / e) ** 2).sum(1) + 1e-6); k1 = torch.sqrt(((u / e ** 2) ** 2).sum(1) + 1e-6)
        de = k0 * (k0 - 1) / k1; az = lq[:, 2].abs() - h[:, 2]; rr = r.clamp(min=.15)
        c = torch.stack([de, az], 1) + rr[:, None]; m2 = c.clamp(min=0)
        d2 = torch.sqrt((m2 * m2).sum(1) + 1e-10) + c.max(1)[0].clamp(max=0) - rr
        d = torch.where(V1(q['shape']) > .5, d2, d)
    if not grad: return d * (.8 if wrp else 1.)
    near = mx + 1e-3 * (a == a.max(1, keepdim=True)[0])
    n = nrm(torch.sign(lq) * near)
    if q['shape'].max() > 0:
        nu = u / e ** 2 / torch.sqrt(((u / e ** 2) ** 2).sum(1, keepdim=True) + 1e-9)
        w2 = m2 + 1e-3 * (c == c.max(1, keepdim=True)[0])
        n2 = nrm(torch.cat([nu * w2[:, :1], (torch.sign(lq[:, 2]) * w2[:, 1])[:, None]], 1)); n = torch.where(V1(q['shape'])[:, None] > .5, n2, n)
    if wrp: n = nrm(torch.stack([n[:, 0] - n[:, 1] * px * s, n[:, 1], n[:, 2] - n[:, 1] * pz * s], 1))
    return lq, n
def caps(p, a, b, ra, rb):
    pa = p - V3(a); ba = V3(b - a); t = (dot(pa, ba) / dot(ba, ba)).clamp(0, 1)
    e = pa - ba * t[:, None]
    return torch.sqrt(dot(e, e) + 1e-9) - (ra + (rb - ra) * t)
def smin(a, b, k):
    h = (.5 + .5 * (b - a) / k).clamp(0, 1)
    return b + (a - b) * h - k * h * (1 - h)
def handsd(q, pw):
    p = rmul(q['handR'], pw - V3(q['hc'])); hx, hy, hz = q['hh'].unbind(1); s = q['hs']; o = 0 * hx
    T = lambda x, y, z: torch.stack([x + o, y + o, z + o], 1)
    d = caps(p, T(hx * .2, -hy * .3, -hz - 1.6 * s), T(hx * .3, hy * .4, -hz - 1.5 * s), V1(1.7 * s), V1(1.6 * s))
    d = smin(d, caps(p, T(hx * .4, -hy * .8, -hz - 2.), T(hx * .9 + 2, -hy - 12, -hz - 6), V1(2.2 * s), V1(2.9 * s)), .8)
    for i in range(4):
        y = hy * .75 - i * 1.75 * s; L = [.75, 1.05, .95, .6][i]
        a, b, c, e = T(0, y * .8, -hz - 1.5), T(-hx - .75 * s, y, -hz * .3), T(-hx + L * .2, y - .05, hz + .55 * s), T(-hx + L * 1.5 * s, y - .1, hz + .6 * s)
        f = smin(caps(p, a, b, V1(.85 * s), V1(.78 * s)), caps(p, b, c, V1(.76 * s), V1(.68 * s)), .25); f = smin(f, caps(p, c, e, V1(.68 * s), V1(.55 * s)), .2)
        d = smin(d, f, .12)
    a, b, c = T(hx * .6, -hy * .7, -hz - 1), T(hx + .8 * s, -hy * .35, hz * .2), T(hx - 1. * s, hy * .15, hz + .7 * s)
    f = smin(caps(p, a, b, V1(1.3 * s), V1(.95 * s)), caps(p, b, c, V1(.95 * s), V1(.68 * s)), .4)
    return smin(d, f, .4), p
def prep(q):
    """per box: the pictures that have it, and their parameters"""
    S = []
    for k in range(K):
        i = (q['bon'][:, k] > .5).nonzero()[:, 0]
        S.append((k, i, {n: q[n][i] for n in ('bR', 'bc', 'bh', 'rad', 'shape', 'ta', 'tf', 'tp')}) if len(i) else None)
    i = (q['hand'] > .5).nonzero()[:, 0]
    return S, i, {n: q[n][i] for n in ('handR', 'hc', 'hh', 'hs')}
def scene(q, p):
    d = torch.full_like(p[:, 0], 1e3); S, i, qi = q['_prep']
    for x in S:
        if x is None: continue
        k, j, qk = x
        if len(j) == d.shape[0]: d = torch.minimum(d, sdk(qk, k, p)); continue
        d[j] = torch.minimum(d[j], sdk(qk, k, p[j]))
    if len(i): d[i] = torch.minimum(d[i], handsd(qi, p[i])[0])
    return d
def ground(q, x, z, px):
    """table colour and relief; x,z [m,H,W] in cm"""
    c, s = torch.cos(V1(q['gyaw'])), torch.sin(V1(q['gyaw'])); sc = V1(q['gsc'])
    u, v = (c * x + s * z) / sc, (-s * x + c * z) / sc; o = q['off']
    p = torch.stack([u, v, 0 * u], 1) + V3(o); c0, c1 = V3(q['gc'][:, 0]), V3(q['gc'][:, 1]); t = q['gt'].round().long()
    alb = c0 + 0 * p; h = 0 * u
    N = torch.zeros_like
    for k in t.unique().tolist():
        i = (t == k).nonzero()[:, 0]; P = p[i]; U, W = P[:, 0], P[:, 1]; a0, a1 = c0[i], c1[i]; X = px[i] / sc[i]
        lo = lambda per: ss(.5, .22, X / per)      # fade what the pixel cannot hold
        if k in (0, 1):      # planks
            w = 9.; b = torch.floor(W / w); e = (torch.remainder(W, w) / w - .5).abs(); g = torch.stack([U * .05 + b * 7, W * (.9 if k else .5), b * 3.7], 1)
            n = fbm(g + .6 * noise(g * .7)[0][:, None], 4); r = torch.sin(n[0] * 14) * .5 + .5
            m = a0 * (.75 + .3 * (r * .5 + n[1] * .4)[:, None]) * (.85 + .22 * noise(torch.stack([b * 3.1, 0 * b, 0 * b], 1))[0][:, None]); gp = ss(.488, .496, e); al = m * (1 - .8 * gp[:, None]); hh = .01 * r - .1 * gp
        elif k in (2, 3):    # woven cloth, folds, checks
            f = 9. if k == 2 else 5.; k1 = lo(1 / f * 6.28 / 3); wv = torch.sin(U * f * 2) * torch.sin(W * f * 2) * k1; n = fbm(P * .12, 3); m = fbm(torch.stack([U * .3, W * 4, 0 * U], 1), 2)
            al = a0 * (.9 + .14 * wv + .06 * m[0] * 1)[:, None]; hh = .02 * wv + n[0] * .5
            ck = ss(.4, .42, (torch.remainder(U / 3, 1) - .5).abs() * 2) * .5 + (ss(.4, .42, (torch.remainder(W / 3, 1) - .5).abs() * 2) * .5 if k == 3 else 0)
            on = (torch.remainder(o[i, 1], 2) > 1).float().view(-1, 1, 1); al = al * (1 - (on * ck)[:, None]) + a1 * (on * ck)[:, None] * (.9 + .1 * wv[:, None])
        elif k == 4:         # marble
            n = fbm(P * .15, 5); vn = 1 - ss(0, .09, (n[0] + .3 * noise(P * .9)[1]).abs()); v2 = 1 - ss(0, .2, n[1].abs()); al = (.72 + .1 * n[2] - .3 * vn - .1 * v2)[:, None] * (.6 + .4 * a0 / a0.mean(1, keepdim=True).clamp(min=.1)).clamp(0, 1.2); hh = N(U)
        elif k == 5:         # slate / concrete
            n = fbm(P * .5, 5); al = a0.mean(1, keepdim=True) * .6 * (.9 + .25 * n[0] + .1 * n[1])[:, None].expand(-1, 3, -1, -1); hh = .04 * n[2]
        elif k == 6:         # tiles
            w = 5.; e = torch.maximum((torch.remainder(U, w) / w - .5).abs(), (torch.remainder(W, w) / w - .5).abs()); g = ss(.47, .485, e); b = noise(torch.stack([torch.floor(U / w) * 3.3, torch.floor(W / w) * 5.7, N(U)], 1))[0]
            al = a0 * (.95 + .1 * b)[:, None] * (1 - g[:, None]) + .45 * g[:, None]; hh = -.08 * g
        elif k == 7:         # terrazzo / granite
            f1, e, r = cells(torch.stack([U, W], 1), torch.full_like(U[:, :1, :1], .9)); m = ss(.1, .16, e) * (r > .35); al = a0 * (1 - m[:, None]) + m[:, None] * (a1 * .5 + r[:, None] * .5); hh = N(U)
        elif k == 8:         # crumpled paper
            f1, e, r = cells(torch.stack([U, W], 1) + noise(P * .3)[:2].transpose(0, 1), torch.full_like(U[:, :1, :1], 5.)); n = fbm(P * .25, 3); al = a0 * (.97 + .04 * noise(P * 8)[0] * lo(.1))[:, None]; hh = .35 * (n[0].abs()) + .25 * f1
        elif k == 9:         # wire rack / slats
            e = (torch.remainder(U / 1.6, 1) - .5).abs() * 1.6; w = 1 - ss(.13, .17, e); al = a0 * w[:, None] + a1 * .25 * (1 - w[:, None]) ; hh = torch.sqrt((.16 - e ** 2).clamp(min=0)) * .5 * w
        else:                # plain
            n = fbm(P * .2, 3); al = a0 * (.95 + .06 * n[0])[:, None]; hh = .004 * noise(P * 3)[0]
        alb = alb.index_copy(0, i, al.clamp(.005, .95)); h = h.index_copy(0, i, hh * sc[i])
    return alb, h
def render(q, H, W, dev, out):
    dn = lambda x: F.avg_pool2d(x, 2) if (H, W) == (2 * out[0], 2 * out[1]) else F.interpolate(x, size=out, mode='area')
    m = q['cam'].shape[0]; q['_prep'] = prep(q)
    s2 = min(H, W)
    ys = (torch.arange(H, device=dev) + .5 - H / 2) / (s2 / 2); xs = (torch.arange(W, device=dev) + .5 - W / 2) / (s2 / 2)
    rd = nrm(V3(q['cr']) * xs.view(1, 1, 1, -1) - V3(q['cu']) * ys.view(1, 1, -1, 1) + V3(q['cf'] * q['foc'][:, None])); ro = V3(q['cam'])
    # start from the slabs
    t = torch.full((m, H, W), 1e4, device=dev)
    for k in range(K):
        if q['bon'][:, k].max() < .5: continue
        o = torch.einsum('mij,mi->mj', q['bR'][:, k], q['cam'] - q['bc'][:, k]); d = rmul(q['bR'][:, k], rd)
        d = torch.where(d.abs() < 1e-5, torch.full_like(d, 1e-5), d); hh = V3(q['bh'][:, k] + q['ta'][:, None] * torch.tensor([.0, 2., 0], device=dev))
        a, b = (-hh - V3(o)) / d, (hh - V3(o)) / d; tn = torch.minimum(a, b).max(1)[0]; tf = torch.maximum(a, b).min(1)[0]
        t = torch.where((tn < tf) & (tf > 0) & (V1(q['bon'][:, k]) > .5), torch.minimum(t, tn), t)
    t = torch.where(V1(q['hand']) > .5, V1(q['fdist'] * .55).expand_as(t), t)
    tg = (V1(q['gy'] - 20 * q['hand']) - ro[:, 1]) / rd[:, 1].clamp(max=-1e-4); tw = (-V1(q['zw'] + 15 * q['hand']) - ro[:, 2]) / rd[:, 2].clamp(max=-1e-4)
    nst = 12 if q['hand'].max() < .5 else 24
    for _ in range(nst): t = t + scene(q, ro + rd * t[:, None]).clamp(-1, 3)
    P = ro + rd * t[:, None]
    px = t / V1(q['foc']) / (s2 / 2)
    best = torch.full_like(t, 1e3); bid = torch.zeros_like(t)
    for k in range(K):
        if q['bon'][:, k].max() < .5: continue
        e = sdk(q, k, P) + (1 - V1(q['bon'][:, k])) * 1e3; bid = torch.where(e < best, k + 0 * t, bid); best = torch.minimum(e, best)
    eps = torch.clamp(px * 1.0, min=.004)
    hit = (best < eps) & (t < tg) & (t > 0) & (t < 5e3)
    skin = torch.zeros_like(hit); ns = None
    if q['hand'].max() > .5:
        i = (q['hand'] > .5).nonzero()[:, 0]; qi = {k: v[i] for k, v in q.items() if k in ('handR', 'hc', 'hh', 'hs')}; Pi = P[i]
        d, hp = handsd(qi, Pi); sk = (d < eps[i] * 2) & (d < best[i]); g = []
        for e in ((.02, 0, 0), (0, .02, 0), (0, 0, .02)): g.append(handsd(qi, Pi + torch.tensor(e, device=dev).view(1, 3, 1, 1))[0] - d)
        skin = skin.index_copy(0, i, sk); ns = torch.zeros_like(P).index_copy(0, i, nrm(torch.stack(g, 1)))
        hit = hit & ~skin
    # soap local frame
    lp = torch.zeros_like(P); nl = torch.zeros_like(P); N = torch.zeros_like(P); h = torch.ones_like(P); tz = torch.zeros_like(t)
    for k in range(K):
        if q['bon'][:, k].max() < .5: continue
        a, n = sdk(q, k, P, True); mk = ((bid == k) & hit)[:, None]
        lp = torch.where(mk, a, lp); nl = torch.where(mk, n, nl); h = torch.where(mk, V3(q['bh'][:, k]), h); tz = torch.where(mk[:, 0], V1(q['btz'][:, k]), tz)
        N = torch.where(mk, rmul(q['bR'][:, k].transpose(1, 2), n), N)
    face = nl.abs().argmax(1); fsg = torch.gather(nl, 1, face[:, None])[:, 0].sign()
    uv = torch.where((face == 0)[:, None], torch.stack([lp[:, 2], lp[:, 1]], 1), torch.where((face == 1)[:, None], torch.stack([lp[:, 0], lp[:, 2]], 1), lp[:, :2]))
    uv = uv + (face * 41. + fsg * 17. + bid * 29.)[:, None] + V3(q['off'])[:, :2]
    pz = torch.stack([lp[:, 0], lp[:, 1], lp[:, 2] + tz], 1)
    alb, hgt, base_d, cA, cB = soap(q, lp, pz, h, face, uv, bid, px, nl)
    rough = torch.zeros_like(t); spk = torch.zeros_like(t); decm = torch.zeros_like(t); cst = alb
    alb, dh, spk, decm = deco(q, alb, lp, pz, h, face, fsg, uv, px, nl, base_d)
    hgt = hgt + dh
    ndecp = decm
    # table, wall
    wall = (tw < tg) & (tw > 0) | (rd[:, 1] > -1e-3); bg = ~(hit | skin)
    tb = torch.where(wall, torch.where(tw > 0, tw, 1e3 + 0 * t).clamp(max=1e3), tg).clamp(0, 1e3)
    Pb = ro + rd * tb[:, None]; pxg = tb / V1(q['foc']) / (s2 / 2)
    ga, gh = ground(q, Pb[:, 0], Pb[:, 2], pxg)
    wn = fbm(Pb * .06 + V3(q['off']), 2)[0]; ga = torch.where(wall[:, None], V3(q['wc']) * (.9 + .15 * wn)[:, None], ga); gh = torch.where(wall, 0 * gh, gh)
    NG = torch.where(wall[:, None], torch.tensor([0., 0, 1], device=dev).view(1, 3, 1, 1), torch.tensor([0., 1, 0], device=dev).view(1, 3, 1, 1))
    b3 = bg[:, None]
    P = torch.where(b3, Pb, P); N = torch.where(b3, NG, N); t = torch.where(bg, tb, t)
    if ns is not None:
        sn = fbm(P * 1.2 + 5, 3); N = torch.where(skin[:, None], ns, N)
        sc = V3(q['skin']) * (1 + .1 * sn[0])[:, None] * torch.stack([1 + .08 * sn[1], 1 - .05 * sn[1], 1 - .05 * sn[1]], 1)
        alb = torch.where(skin[:, None], sc, alb); hgt = torch.where(skin, .01 * noise(P * 9)[0], hgt)
    alb = torch.where(b3, ga, alb); hgt = torch.where(bg, gh, hgt)
    mat = torch.where(hit, bid + 1, torch.where(skin, 20 + 0 * bid, torch.where(wall, 30 + 0 * bid, 31 + 0 * bid)))
    hm = hit.float()
    gloss = torch.where(hit, V1(q['gloss']) + 0 * t, torch.where(skin, .25 + 0 * t, V1(q['groff']) * (~wall)))
    rgh = torch.where(hit, V1(q['rough']) + 0 * t, .3 + 0 * t)
    # light
    L = V3(q['L']).expand_as(P); pen = V1(q['pen'])
    Ph, Nh = P[:, :, ::2, ::2], N[:, :, ::2, ::2]; Lh = L[:, :, ::2, ::2]; sh = torch.ones_like(Ph[:, 0]); tt = .06 + 0 * sh; Po = Ph + Nh * (.03 + px[:, ::2, ::2].clamp(0, .1))[:, None]
    for _ in range(11):
        d = scene(q, Po + Lh * tt[:, None]); sh = torch.minimum(sh, .5 + .5 * pen * d / tt); tt = tt + d.clamp(.1, 2.2)
    ao = torch.ones_like(sh)
    for e, w in ((.25, .45), (.9, .3), (2.5, .3)): ao = ao * (1 - w * (1 - (scene(q, Ph + Nh * e) / e)).clamp(0, 1))
    sa = torch.stack([ss(0., 1., sh.clamp(0, 1)), ao], 1)
    # spread back, each pixel from the neighbour of its own body
    mh = mat[:, ::2, ::2]; up = lambda x: x.repeat_interleave(2, 1).repeat_interleave(2, 2)
    acc, wt = 0, 1e-4
    for oy in (0, 1):
        for ox in (0, 1):
            f = lambda x: F.pad(x, (0, ox, 0, oy), mode='replicate')[..., oy:, ox:]
            sx = f(sa); mm = f(mh[:, None].float())[:, 0]; Px = f(Ph)
            U = lambda x: x.repeat_interleave(2, -2).repeat_interleave(2, -1)
            w = (U(mm) == mat).float() * (1.01 if ox + oy == 0 else .99) / (.02 + ((U(Px) - P) ** 2).sum(1) / (px ** 2 + 1e-9)) + 1e-6
            acc = acc + U(sx) * w[:, None]; wt = wt + w
    sa = acc / wt[:, None]; sh, ao = sa[:, 0], sa[:, 1]
    ao = torch.where(V1(q['hand']) * bg > .5, torch.ones_like(ao), ao)
    gb = gobo(q, P); sh = sh * gb
    view = -rd
    # flaw layers
    lays = []; alb0, h0, r0 = alb, hgt, torch.zeros_like(t); cur = alb
    for sl in range(3):
        fi = q['fl'][:, sl].round().long(); ly = dict(A=torch.zeros_like(t), C=torch.zeros_like(P), w=torch.zeros_like(t), dh=torch.zeros_like(t), dr=torch.zeros_like(t))
        if fi.max() < 0: lays.append(None); continue
        for f in fi.unique().tolist():
            if f < 0: continue
            i = (fi == f).nonzero()[:, 0]; off = q['foff'][i, sl]
            G = dict(p=lp[i], pz=pz[i], h=h[i], face=face[i], nl=nl[i], uv=uv[i] + V3(off)[:, :2].floor() * 1., alb=cur[i], d=base_d[i], cA=cA[i], cB=cB[i], px=px[i], s=V1(q['fs'][i, sl]), v=V1(q['fv'][i, sl]), r=q['fr'][i, sl].view(len(i), 8, 1, 1), pig=V3(q['fpig'][i, sl]), off=V3(off), cov=V1(q['fcov'][i, sl]))
            n = fbm(G['pz'] / 2.8 + 3 + G['off'] + 7 * bid[i][:, None], 2)[0]; c = G['cov']
            G['reg'] = torch.where(c > .95, torch.ones_like(n), ss(0., .3, n - .7 + 1.4 * c))
            gain = torch.gather(q['fbar'][i, sl], 1, bid[i].long().view(len(i), -1)).view_as(n) * hm[i]
            o = curd_flaws.FN[f](G)
            for kk in ly: 
                g = gain if o[kk].dim() == 3 else 1.
                ly[kk] = ly[kk].index_copy(0, i, o[kk] * g)
        cur = cur * (1 - ly['A'][:, None]) + ly['C'] * ly['A'][:, None]; lays.append(ly)
    same = lambda a: a
    mx = (mat[:, :, 1:] == mat[:, :, :-1]).float(); my = (mat[:, 1:] == mat[:, :-1]).float()
    dPx = F.pad((P[..., 1:] - P[..., :-1]) * mx[:, None], (0, 1)); dPy = F.pad((P[:, :, 1:] - P[:, :, :-1]) * my[:, None], (0, 0, 0, 1))
    r1 = torch.cross(dPy, N, 1); r2 = torch.cross(N, dPx, 1); det = dot(dPx, r1)
    T1 = nrm(torch.cross(L, torch.tensor([.13, .97, .2], device=dev).view(1, 3, 1, 1).expand_as(L), 1)); T2 = torch.cross(T1, L, 1)
    kc, ac = V3(q['kk'] * q['kint'][:, None]), V3(q['ka'] * q['aint'][:, None]); gcol = V3(q['gc'].mean(1)); tr = V1(q['trans']) * hm
    def shade(al, hg, dr):
        hx = F.pad((hg[..., 1:] - hg[..., :-1]) * mx, (0, 1)); hy = F.pad((hg[:, 1:] - hg[:, :-1]) * my, (0, 0, 0, 1))
        g = torch.sign(det)[:, None] * (hx[:, None] * r1 + hy[:, None] * r2) / (det.abs() + 1e-7)[:, None]
        gl = torch.sqrt(dot(g, g) + 1e-9); g = g * (2.2 * torch.tanh(gl / 2.2) / gl)[:, None]
        n = nrm(N - g); ndl = dot(n, L); wr = .12 + .35 * tr
        df = ((ndl + wr) / (1 + wr)).clamp(min=0); df = df * torch.where(tr > 0, .0 * df + 1, 1 + 0 * df)
        shs = sh * ss(-.15, .15, dot(N, L) + .1)
        lt = kc * (df * shs)[:, None] + ac * (ao * (.55 + .45 * n[:, 1] + .12 * n[:, 0]))[:, None] + (kc + ac) * gcol * (.22 * ao * (.6 - .4 * n[:, 1]).clamp(0, 1))[:, None]
        lt = lt + kc * (tr * .1)[:, None] * al
        R = 2 * dot(n, view)[:, None] * n - view; a, b, c = dot(R, T1), dot(R, T2), dot(R, L)
        ro_ = (rgh + dr).clamp(.02, 1.2); w0, w1 = V1(q['win'][:, 0]), V1(q['win'][:, 1])
        bx = ss(w0 + ro_, w0 - ro_, a.abs()) * ss(w1 + ro_, w1 - ro_, b.abs()) * (c > 0) * torch.minimum(torch.ones_like(ro_), .15 / ro_)
        fr = .04 + .3 * (1 - dot(n, view).clamp(0.08, 1)) ** 5
        gg = gloss * (1 - .85 * dr.clamp(0, 1))
        sp = kc * (gg * bx * shs * (.35 + 4 * fr))[:, None] + ac * (gg * fr * ao * .7)[:, None]
        return al * lt + sp
    # compose with and without
    def comp(skip):
        al, hg, dr = alb0, h0, r0
        for j, ly in enumerate(lays):
            if ly is None or j == skip: continue
            A = ly['A'][:, None]; al = al * (1 - A) + ly['C'] * A; hg = hg + ly['dh']; dr = dr + ly['dr']
        c = shade(al, hg, dr) + spk[:, None] * (sh * .8 + .3)[:, None] * hm[:, None]
        return dn(c)
    full = comp(-1); less = [None if l is None else comp(j) for j, l in enumerate(lays)]
    ww = [None if l is None else dn(l['w'][:, None]) for l in lays]
    down = lambda x: dn(x[:, None])
    return full, less, ww, down(hm), down(t), down(decm * hm)
def soap(q, lp, pz, h, face, uv, bid, px, nl):
    m, H, W = bid.shape; off = V3(q['off']); s = V1(q['pws'])[:, None]; zs = V1(q['pzs'])
    x = torch.stack([pz[:, 0], pz[:, 1], pz[:, 2] * zs], 1)
    w = fbm(x / s + off, 2); y = x + V1(q['pwa'])[:, None] * w[:3].transpose(0, 1) * .7
    n = fbm(y / V1(q['pns'])[:, None] + off + 9, 2)[0]; c = q['pc']; rr = torch.sqrt((y[:, 0] - V1(q['pctr'][:, 0])) ** 2 + (y[:, 1] - V1(q['pctr'][:, 1])) ** 2 + 1e-4)
    v = V1(c[:, 0]) * y[:, 0] + V1(c[:, 1]) * y[:, 1] + V1(c[:, 2]) * y[:, 2] + V1(c[:, 3]) * rr + V1(c[:, 4]) * n * 2.2
    fr = V1(q['pfr']); v = v * fr + V1(q['pph']); f = torch.floor(v); g = v - f
    ix = torch.remainder(f, 4).long(); b = torch.arange(m, device=v.device).view(-1, 1, 1) * K + bid.long(); pl = q['pal'].reshape(-1, 3)
    A, B = pl[b * 4 + ix].permute(0, 3, 1, 2), pl[b * 4 + (ix + 1) % 4].permute(0, 3, 1, 2)
    sf = V1(q['psoft']); soft = torch.maximum(sf, 1.5 * px * fr); k = ss(torch.where(sf > .9, 0 * soft, (1 - soft)), 1 + 0 * soft, g)[:, None]
    # distance to the border behind us (cm) for bleeding and veins
    dd = g / fr; dn = (1 - g) / fr
    prev = pl[b * 4 + (ix + 3) % 4].permute(0, 3, 1, 2)
    a = A * (1 - k) + B * k
    mo = fbm(pz / V1(q['mots'])[:, None] + off, 4); a = a * (1 + V1(q['mot']) * mo[0] * 1.2 + V1(q['grain']) * noise(pz / .06 + off)[1] * ss(.08, .03, px))[:, None]
    # rind: the outside of bars dries paler
    e = torch.sort(h - lp.abs(), 1)[0]; a = a * (1 + .06 * ss(.12, 0., e[:, 1]))[:, None]
    hg = V1(q['relief']) * (fbm(pz / .9 + off, 4)[2] + .3 * noise(pz / .12 + off)[0])
    ct = noise(torch.stack([lp[:, 0] * .3, lp[:, 1] * 7., 0 * bid], 1) + off)[0]; hg = hg + .0015 * ct * (face == 2)
    # non-soap objects
    ns = q['nosoap'] > .5
    if ns.any():
        i = ns.nonzero()[:, 0]; P = pz[i]; o = off[i]; mt = V1(q['nsmat'][i]); c0 = V3(q['gc'][i, 1])
        wd = fbm(torch.stack([P[:, 0] * 1.1, P[:, 1] * 1.1, P[:, 2] * .08], 1) + o, 3); wood = torch.tensor([.42, .25, .12], device=v.device).view(1, 3, 1, 1) * (.8 + .3 * torch.sin(wd[0] * 16))[:, None]
        q1 = spots(uv[i], .3 + 0 * mt, .9 + 0 * mt, .1, .4)[0]; hole = 1 - ss(.7, 1.1, q1); sponge = torch.tensor([.85, .68, .15], device=v.device).view(1, 3, 1, 1) * (1 - .65 * hole[:, None])
        st = fbm(P * 1.2 + o, 5); stone = .35 * (1 + .5 * st[0] + .4 * st[1])[:, None].expand(-1, 3, -1, -1); hs = .05 * st[2]
        al = torch.where((mt < .5)[:, None], wood, torch.where((mt < 1.5)[:, None], sponge, torch.where((mt < 2.5)[:, None], stone, torch.where((mt < 3.5)[:, None], c0 + 0 * wood, c0 * (.9 + .1 * torch.sin(P[:, 1] * 25))[:, None]))))
        a = a.index_copy(0, i, al.clamp(.01, .95)); hg = hg.index_copy(0, i, torch.where((mt > .5) & (mt < 1.5), -hole * .1, torch.where((mt > 1.5) & (mt < 2.5), hs, 0 * hs)))
    return a.clamp(.004, .95), hg, dd, prev, A
def deco(q, alb, lp, pz, h, face, fsg, uv, px, nl, bd):
    H0 = torch.zeros_like(px); dh, spk, dm = H0, H0, H0; dv = q['dv']; off = V3(q['off'])
    def sub(n): return (q['d_' + n] > .5).nonzero()[:, 0]
    def put(i, a, C, h_=None, s_=None):
        nonlocal alb, dh, spk, dm
        x = alb[i]; alb = alb.index_copy(0, i, x * (1 - a[:, None]) + C * a[:, None]); dm = dm.index_copy(0, i, torch.maximum(dm[i], a))
        if h_ is not None: dh = dh.index_copy(0, i, dh[i] + h_); dm = dm.index_copy(0, i, torch.maximum(dm[i], (h_.abs() > .004).float()))
        if s_ is not None: spk = spk.index_copy(0, i, spk[i] + s_); dm = dm.index_copy(0, i, torch.maximum(dm[i], (s_ > .05).float()))
    T = lambda *c: torch.tensor(c, device=px.device).view(1, 3, 1, 1)
    top = ((face == 1) & (nl[:, 1] > .3)).float()
    for nm in ('poppy', 'coffee', 'oats'):
        i = sub(nm)
        if not len(i): continue
        d = V1(dv[i, 0]); n1 = noise(pz[i] / .12 + off[i]); cell = {'poppy': .35, 'coffee': .22, 'oats': .9}[nm] * (.7 + .8 * V1(dv[i, 1]))
        w = torch.stack([n1[0], n1[1]], 1) * {'poppy': .0, 'coffee': .02, 'oats': .03}[nm]
        lo, hi = {'poppy': (.05, .056), 'coffee': (.03, .07), 'oats': (.12, .3)}[nm]; lo, hi = lo / cell, hi / cell
        mxr = torch.full_like(cell, .42); qq, R, dx, dy, rr = spots(uv[i] + w, cell, .25 + .6 * d, torch.minimum(lo, mxr), torch.minimum(hi, mxr), 1.)
        if nm == 'oats': 
            th = R[..., 5] * 6.3; ex = torch.cos(th) * dx + torch.sin(th) * dy; ey = -torch.sin(th) * dx + torch.cos(th) * dy; qq = torch.where(qq < 90, torch.sqrt(ex ** 2 + (ey / .5) ** 2 + 1e-9) / rr, qq)
        a = 1 - ss(.75, 1.15, qq)
        C = {'poppy': T(.035, .04, .055), 'coffee': T(.05, .022, .01), 'oats': T(.62, .45, .25)}[nm] * (.6 + .8 * R[..., 6])[:, None]
        if nm == 'oats': C = C * (.8 + .3 * torch.exp(-(ey / rr * 6) ** 2) * -1 + .2 * n1[2])[:, None]
        put(i, a * .92, C, a * (.012 if nm != 'oats' else .02))
    i = sub('botanicals')
    if len(i):
        n1 = noise(pz[i] / .4 + off[i]); cell = .8 + .6 * V1(dv[i, 1]); qq, R, dx, dy, rr = spots(uv[i] + .08 * n1[:2].transpose(0, 1), cell, .4 + .5 * V1(dv[i, 0]), .22, .45, 1.)
        th = R[..., 5] * 6.3; ex = torch.cos(th) * dx + torch.sin(th) * dy; ey = -torch.sin(th) * dx + torch.cos(th) * dy; asp = .3 + .5 * V1(dv[i, 2]); q2 = torch.where(qq < 90, torch.sqrt(ex ** 2 + (ey / asp) ** 2 + 1e-9) / rr, qq)
        a = (1 - ss(.85, 1., q2)) * top[i]; rib = torch.exp(-(ey / rr * 8) ** 2)
        C = V3(q['bot'][i]) * (.4 + .8 * R[..., 6])[:, None] * (1 + .25 * torch.sin(ey / rr * 14) * .5 - .3 * rib)[:, None] * (.9 + .2 * n1[3])[:, None]
        put(i, a, C, a * (.1 + .04 * torch.cos(ex / rr * 3)) * 1.)
        dark = torch.exp(-((q2 - 1.05).clamp(min=0) / .15) ** 2) * (1 - a) * top[i] * .3; put(i, dark, alb[i] * .3)
    i = sub('micatop')
    if len(i):
        n = fbm(pz[i] / .9 + off[i], 4); a = ss(.1, .9, n[0] + .4) * top[i] * .8; g = noise(pz[i] / .05)[0]; put(i, a * (.7 + .3 * g).clamp(0, 1), V3(q['veinc'][i]) * (1 + .3 * g)[:, None], None, a * ss(.75, 1., g) * .5)
    i = sub('vein')
    if len(i):
        n = noise(pz[i] / .3 + off[i]); wd = torch.maximum(V1(q['veinw'][i]) * (1 + .6 * n[0]), .6 * px[i]); a = 1 - ss(wd * .6, wd * 1.2, bd[i]); put(i, a * (.75 + .2 * n[1]).clamp(0, 1), V3(q['veinc'][i]) + 0 * alb[i], -.004 * a)
    i = sub('embeds')
    if len(i):
        n = noise(pz[i] / .8 + off[i]); cell = 1.6 + V1(dv[i, 1]); x = lp[i][:, :2] + off[i][:, :2].floor() + .12 * n[:2].transpose(0, 1); qq, R, dx, dy, rr = spots(x, cell, .35 + .5 * V1(dv[i, 0]), .2, .38, 1.)
        th = R[..., 5] * 6.3; ex = (torch.cos(th) * dx + torch.sin(th) * dy).abs() / rr; ey = (-torch.sin(th) * dx + torch.cos(th) * dy).abs() / rr
        sq = torch.where(qq < 90, torch.maximum(ex, ey * 1.2) * 1.25, qq); q2 = torch.where(V1(dv[i, 2]) < .5, sq, qq); a = (1 - ss(.96, 1.02, q2)) * (face[i] == 2); put(i, a, V3(q['emb'][i]) * (.6 + .7 * R[..., 6])[:, None], None)
    i = sub('stamp')
    if len(i):
        L = lp[i]; r0 = torch.minimum(h[i][:, 0], h[i][:, 1]) * (.4 + .3 * V1(dv[i, 0])); x, y = L[:, 0] / r0, L[:, 1] / r0; r = torch.sqrt(x * x + y * y + 1e-5); th = torch.atan2(y, x)
        e = (r - 1).abs() - .04; np_ = torch.floor(3 + 6 * V1(dv[i, 1])); pet = (r - .45 - .22 * torch.cos(np_ * th)).abs() - .04; sx = torch.maximum((x.abs() - .5), (((y + .15 * torch.sin(x * 9 + 6 * V1(dv[i, 2]))).abs() - .05)))
        dd = torch.minimum(e, torch.where(V1(dv[i, 3]) < .5, pet, torch.minimum(sx, (r - .3).abs() - .03 + 1. * (V1(dv[i, 4]) < .5)))); w = .02 + px[i] / r0; a = ss(w, -w, dd) * (face[i] == 2)
        put(i, a * .12, alb[i] * .55, -a * .07)
        mi = (V1(dv[i, 5]) < .3).float(); put(i, a * mi * .7, V3(q['veinc'][i]) + 0 * alb[i])
    i = sub('label')
    if len(i):
        L = lp[i]; ax = torch.where(V1(dv[i, 0]) < .5, L[:, 0], L[:, 1]); hb = torch.where(V1(dv[i, 0]) < .5, h[i][:, 0], h[i][:, 1]); ot = torch.where(V1(dv[i, 0]) < .5, L[:, 1], L[:, 0])
        e = (ax - (V1(dv[i, 6]) - .5) * .4).abs() / hb; w = .3 + .3 * V1(dv[i, 1]); a = ss(w + .006, w - .006, e) * torch.where(V1(dv[i, 0]) < .5, face[i] != 0, face[i] != 1)
        col = torch.where(V1(dv[i, 2])[:, None] < .4, T(.55, .38, .22), torch.where(V1(dv[i, 2])[:, None] < .8, T(.85, .84, .8), T(.05, .05, .05))) + 0 * alb[i]
        ln = torch.floor(ot / .32); wd = noise(torch.stack([torch.floor(ax / .09) * 3.7, ln * 5.1, 0 * ax], 1))[0]; tx = ((torch.remainder(ot, .32) - .16).abs() < .07) & (wd > -.25) & (e < w * .7) & (ot.abs() < 1.1) & (face[i] == 2)
        bar = (ot.abs() - 1.45).abs() < .03; ink = (tx | (bar & (e < w * .7) & (face[i] == 2))).float()[:, None] * .8; col = col * (1 - ink) + ink * torch.where(col.mean(1, keepdim=True) > .2, T(.06, .05, .05), T(.8, .75, .6)); put(i, a, col * (.97 + .06 * noise(pz[i] / .08)[0])[:, None], a * .05)
    i = sub('dew')
    if len(i):
        cell = .25 + .5 * V1(dv[i, 0]); n = noise(pz[i] / .2 + off[i]); qq, R, dx, dy, rr = spots(uv[i] + .04 * n[:2].transpose(0, 1), cell, .5 + .45 * V1(dv[i, 1]), .08, .46, 2.); dome = torch.sqrt((1 - qq ** 2).clamp(min=0)); a = 1 - ss(.92, 1.04, qq)
        rim = torch.exp(-((qq - .95) / .12) ** 2); hl = torch.exp(-(((dx / rr + .35) ** 2 + (dy / rr - .35) ** 2) / .03)) * a; put(i, a * .3 + rim * .15, alb[i] * .62, dome * rr * cell * .45, hl * .7)
    i = sub('glitter')
    if len(i):
        cell = .12 + .2 * V1(dv[i, 0]); qq, R, dx, dy, rr = spots(uv[i], cell, .3 + .3 * V1(dv[i, 1]), torch.maximum(.12 + 0 * cell, .6 * px[i] / cell).clamp(max=.3), .31, 3.); a = 1 - ss(.7, 1.1, qq); put(i, a * .5, V3(q['veinc'][i]) + .2 + 0 * alb[i], None, a * (R[..., 5] > .6) * R[..., 6] * .9)
    i = sub('crinkle')
    if len(i):
        L = lp[i]; vert = V1(dv[i, 0]) < .5; a_ = torch.where(vert, L[:, 0], L[:, 1]); per = .55 + .5 * V1(dv[i, 1]); put(i, H0[i], alb[i], torch.sin(a_ / per * 6.28) * .11 * per * (face[i] == 2))
    return alb, dh, spk, dm
def gobo(q, P):
    L = V3(q['L']); k = P[:, 1] / L[:, 1].clamp(min=.2); x, z = P[:, 0] - L[:, 0] * k, P[:, 2] - L[:, 2] * k; c, s = torch.cos(V1(q['ga'])), torch.sin(V1(q['ga'])); sc = V1(q['gs']) * 3
    u, v = (c * x + s * z) / sc, (-s * x + c * z) / sc; n = fbm(torch.stack([u, v * .5, 0 * u], 1) + V3(q['off']), 3); g = V1(q['gobo'])
    leaf = ss(.15, -.1, n[0].abs() - .3 + .2 * n[1]); bar = ss(.1, .16, (torch.remainder(u, 1) - .5).abs()) ; bl = ss(.12, .2, (torch.remainder(v * 1.5, 1) - .5).abs())
    return torch.where(g < .5, torch.ones_like(u), .15 + .85 * torch.where(g < 1.5, 1 - leaf, torch.where(g < 2.5, bar * ss(.04, .08, (torch.remainder(v * .6, 1) - .5).abs()), bl)))
@torch.no_grad()
def draw(n, size, seed, device, clean=.4):
    H, W = size; dev = torch.device(device)
    Q = {k: _t(v).to(dev) for k, v in curd_scene.batch(n, clean, seed).items()}
    sc = 1. if min(H, W) < 320 else .75; Hs, Ws = 2 * int(round(H * sc)), 2 * int(round(W * sc)); ch = max(1, int(3.6e6 // (Hs * Ws))); image, bars, maps, pres, trick = [], [], [], [], []
    gen = torch.Generator(device=dev); gen.manual_seed(int(seed) % (2 ** 31) + 5)
    for a in range(0, n, ch):
        q = {k: v[a:a + ch] for k, v in Q.items()}; m = q['cam'].shape[0]
        full, less, ww, bar, dep, dm = render(q, Hs, Ws, dev, (H, W))
        wb = (q['kk'] * q['kint'][:, None] * .6 + q['ka'] * q['aint'][:, None] * .5); wb = wb / wb.mean(1, keepdim=True); wb = V3(wb ** q['wb'][:, None]) / V3(q['tint'])
        lum = full.mean(1).view(m, -1); wgt = .4 + bar.view(m, -1); mean = (lum * wgt).sum(1) / wgt.sum(1); ex = q['exp'] * .36 / (mean * .62 + .38 * torch.quantile(lum[:, ::17], .9, dim=1) * .62 + .02)
        ex = ex.clamp(max=2.6).view(-1, 1, 1, 1); con = V1(q['con'])[:, None]; sat = V1(q['sat'])[:, None]
        yy = torch.linspace(-1, 1, H, device=dev).view(1, 1, -1, 1); xx = torch.linspace(-1, 1, W, device=dev).view(1, 1, 1, -1); vg = 1 - V1(q['vig'])[:, None] * (xx ** 2 + yy ** 2)
        bs = bar.sum((1, 2, 3)); fd = torch.where(bs > 60, (dep * bar).sum((1, 2, 3)) / (bs + 1), q['fdist'])
        coc = ((1 - fd.view(-1, 1, 1, 1) / dep).abs() * 5 * V1(q['dof'])[:, None] - .6).clamp(0, 1.) * (1 - .75 * bar); bl = q['blur'] * min(H, W) / 384
        gauss = curd_post.gauss; bgm = (1 - bar) + .03
        def tone(x):
            x = gauss(x * ex / wb * vg, bl); g1 = torch.full((m,), min(H, W) / 200, device=dev); b1 = gauss(x * bgm, g1) / gauss(bgm, g1); x = x + (b1 - x) * (coc * 2).clamp(0, 1); b2 = curd_post.wide(x * bgm, max(2, H // 64)) / curd_post.wide(bgm, max(2, H // 64)); x = x + (b2 - x) * (coc * 2 - 1).clamp(0, 1)
            x = x * (1 + x / 2.2) / (1 + x) * 1.12; x = x.clamp(0, 1); x = torch.where(x < .0031, x * 12.92, 1.055 * x.clamp(min=1e-6) ** (1 / 2.4) - .055)
            x = x + con * .25 * torch.sin((x - .5) * 6.283) * .5 * 1.; g = x.mean(1, keepdim=True); return (g + (x - g) * sat).clamp(0, 1)
        gauss = curd_post.gauss
        img = tone(full); mp = torch.zeros(m, 16, H, W, device=dev); pr = torch.zeros(m, 16, device=dev); R = max(1, round(min(H, W) / 130))
        for j in range(3):
            if less[j] is None: continue
            d = (img - tone(less[j])).abs().max(1, keepdim=True)[0]; thr = (.035 + 1.2 * q['ns']).view(-1, 1, 1, 1)
            on = (d > thr) & (ww[j] > .06); mk = (F.max_pool2d(on.float(), 2 * R + 1, 1, R) * (ww[j] > .3).float()); mk = torch.maximum(mk, on.float()) * (bar > .4)
            area = mk.view(m, -1).sum(1); core = (d * mk).view(m, -1).sum(1) / (area + 1); ok = (area > max(16, 6e-4 * H * W)) & (core > .03)
            f = q['fl'][:, j].round().long()
            v = (f >= 0) & ok; oh = F.one_hot(f.clamp(min=0), 16).float() * v[:, None]; pr = torch.maximum(pr, oh); mp = torch.maximum(mp, oh[:, :, None, None] * mk)
        s = q['ns'].view(-1, 1, 1, 1); gn = lambda c: torch.randn(m, c, H, W, device=dev, generator=gen)
        nz = (gn(1) + .5 * gn(3)) * s * (1.3 - .8 * img); nz = nz * .6 + gauss(nz, torch.full((m,), .8, device=dev)) * 1.2
        x = (img + nz).clamp(0, 1); x = x + V1(q['sharp'])[:, None] * (x - gauss(x, torch.full((m,), 1.2, device=dev))); x = curd_post.jpeg(x.clamp(0, 1), q['jq'])
        nd = sum(q['d_' + d] for d in curd_scene.DEC) > .5
        scr = (q['d_glare'] + q['d_gobo'] + q['d_mottle'] + q['d_swirl'] + q['d_ombre'] + q['d_layers']) > .5
        tr = (nd & (scr | ((dm > .3).float().view(m, -1).mean(1) > 4e-4)))
        image.append(x); bars.append((bar > .5).float() * (q['nosoap'] < .5).float().view(-1, 1, 1, 1)); maps.append(mp); pres.append(pr); trick.append(tr.float())
        del full, less, ww
    c = torch.cat
    return dict(image=c(image), bar=c(bars), maps=c(maps), present=c(pres), tricky=c(trick), kind=Q['nosoap'].clone())
