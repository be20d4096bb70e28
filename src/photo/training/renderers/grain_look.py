"""Ground, wall, light, camera."""
import math, numpy as np, torch
import torch.nn.functional as F
from grain_base import *
from grain_geo import shadow, ao

def bb(T):
    """rough black-body colour, linear, green = 1"""
    x = (T - 2700.) / 3800.
    return np.array([1.75 - .80 * x, 1.0, .38 + .74 * x])

GC = [[(.62, .45, .30), (.42, .28, .17), (.80, .68, .52), (.25, .17, .12), (.72, .70, .66)], [(.92, .91, .90), (.88, .86, .83), (.20, .20, .22)], [(.86, .83, .77), (.55, .58, .60), (.35, .40, .48), (.75, .62, .58), (.93, .92, .90)],
      [(.95, .95, .95), (.85, .82, .80), (.90, .78, .78), (.75, .82, .86), (.18, .18, .19), (.93, .88, .70)], [(.60, .59, .57), (.45, .44, .44), (.75, .73, .70)], [(.88, .88, .86), (.55, .66, .70), (.80, .74, .66)], [(.13, .13, .14), (.2, .21, .22)],
      [(.75, .25, .25), (.30, .42, .62), (.35, .5, .38), (.3, .3, .32)], [(.78, .74, .68), (.6, .62, .66), (.82, .70, .66)], [(.86, .80, .70), (.9, .89, .87)], [(.70, .55, .36), (.55, .40, .26)], [(.35, .36, .36), (.7, .66, .6)], [(.66, .52, .38), (.72, .60, .46)], [(.5, .4, .3), (.55, .58, .5)]]

def ground_params(rs):
    k = rs.randint(len(GC)); U = rs.uniform
    c = np.array(GC[k][rs.randint(len(GC[k]))]) * U(.85, 1.1) + rs.normal(0, .03, 3)
    w = np.array([(.9, .88, .85), (.7, .72, .75), (.4, .38, .36), (.85, .78, .70), (.3, .36, .34), (.55, .6, .68)][rs.randint(6)]) + rs.normal(0, .05, 3)
    if rs.rand() < .3: w = c * U(.8, 1.1)
    return dict(k=k, c=lin(np.clip(c, .03, .97)), w=lin(np.clip(w, .03, .97)), u=U(0, 1, 8), a=U(0, 3.14), wb=U(0, 1))

def ground(c, g):
    """-> albedo, height, gloss for ground pixels (whole frame); by category on subsets"""
    P = c['P']; n = P.shape[0]; H, W = P.shape[-2:]
    v = lambda t: t.view(-1, 1, 1, 1)
    ca, sa = v(torch.cos(g['a'])), v(torch.sin(g['a']))
    X = P[:, :1] * ca + P[:, 2:3] * sa; Y = -P[:, :1] * sa + P[:, 2:3] * ca
    X = X.clamp(-120, 120); Y = Y.clamp(-120, 120)
    alb = g['c'].view(n, 3, 1, 1).expand(n, 3, H, W).clone(); h = torch.zeros_like(X); gl = torch.full_like(X, .1)
    k = g['k']
    for kk in torch.unique(k).tolist():
        kk = int(kk); i = torch.nonzero(k == kk)[:, 0]
        x, y, vol = X[i], Y[i], c['vol'][i]; u = g['u'][i]; U = lambda j: u[:, j].view(-1, 1, 1, 1)
        a = alb[i]; hh = h[i]; G = gl[i]; o = torch.zeros_like(x)
        pf = c['pix'][i]
        fade = lambda per: (1 - sstep(per * .25, per * .9, pf))
        nz = lambda fx, fy, s=0., oc=4, gn=.6: fbm(vol, torch.cat([x * fx, y * fy, o + s], 1), oc, gn)
        if kk in (0, 10, 12):      # wood, bamboo, cardboard
            w = 7 + 9 * U(0) if kk == 0 else (.7 + 1.2 * U(0) if kk == 10 else 400 + o)
            b = torch.floor(y / w); e = torch.remainder(y, w) / w
            q = fbm(vol, torch.cat([x * .05 + b * 3.7, y * (.9 if kk != 12 else .5), o + b * 1.3 + 2], 1), 4, .65)
            rg = torch.sin(q[:, :1] * (5 + 6 * U(1)) + y * .8)
            a = a * (1 + (.06 + .16 * U(2)) * rg + .12 * q[:, 1:2] + .10 * (hsh(b, o, 3.) - .5) * 2 * (kk != 12))
            gap = (1 - sstep(.0, .012 + pf / w * .5, torch.minimum(e, 1 - e))) * (kk != 12)
            a = a * (1 - .75 * gap); hh = -.1 * gap + .01 * rg; G = .15 + .5 * U(3) + o
            if kk == 12: a = a * (1 + .04 * torch.sin(x * 8) * fade(.7))
        elif kk == 1:              # marble
            q = nz(.08, .08, 1., 4); r = nz(.12, .12, 6., 4)
            vein = torch.exp(-((r[:, :1] + .5 * q[:, 1:2]).abs() * 7) ) * sstep(-.6, .6, q[:, 2:3])
            a = mix(a, 1 - .75 * a, vein * (.25 + .5 * U(0))) * (1 + .05 * q[:, 3:4]); G = .7 + o
        elif kk in (2, 7, 8):      # linen, checks, knit towel
            per = .09 + .12 * U(0) if kk != 8 else .3 + .3 * U(0)
            q = nz(.15, .15, 2., 3); wob = .5 * q[:, :1]
            wv = torch.sin((x + wob) * 6.28 / per) * torch.sin((y + wob) * 6.28 / per)
            th = nz(9., .5, 1., 2)[:, :1] + nz(.5, 9., 4., 2)[:, :1]
            a = a * (1 + .16 * wv * fade(per) + .07 * th + .05 * q[:, 1:2])
            if kk == 7:
                s = 1.2 + 2.5 * U(1); ch = ((torch.remainder(x + wob, 2 * s) < s).float() + (torch.remainder(y + wob, 2 * s) < s).float()) / 2
                a = mix(torch.full_like(a, .8), a, ch)
            fold = nz(.06, .05, 9., 3)
            hh = .02 * wv * fade(per) + (.25 + 1.1 * U(2)) * fold[:, :1] + .3 * U(2) * torch.exp(-(fold[:, 1:2] * 5) ** 2); G = o
        elif kk == 3:              # paper / painted board
            q = nz(.1, .1, 2., 3); a = a * (1 + .03 * q[:, :1] + .02 * nz(4., 4., 3., 2)[:, 1:2]); G = .05 + .3 * U(1) + o
        elif kk in (4, 6, 11):     # concrete, slate, terrazzo/granite
            q = nz(.25, .25, 2., 5, .7); f = nz(5., 5., 3., 2)
            a = a * (1 + .12 * q[:, :1] + .08 * f[:, :1]); hh = .03 * q[:, :1] + .008 * f[:, 1:2]; G = .15 + .3 * U(1) + o
            if kk == 11:
                f1, e, rb = cells(torch.cat([x, y], 1) * (1.2 + 3 * U(2)), U(3) * 30)
                a = mix(a, a * 0 + .02 + .8 * rb, (1 - sstep(.2, .4, f1)) * (.3 + .6 * U(4)) * fade(.6)); G = .5 + o
        elif kk == 5:              # tiles
            s = 3 + 8 * U(0); ex = torch.remainder(x, s); ey = torch.remainder(y + .5 * s * torch.floor(x / s) * (U(1) > .5), s)
            d = torch.minimum(torch.minimum(ex, s - ex), torch.minimum(ey, s - ey)); gr = 1 - sstep(.1, .2 + pf, d)
            a = mix(a * (1 + .06 * nz(.2, .2)[:, :1]), a * 0 + .35, gr); hh = -.08 * gr; G = .8 * (1 - gr)
        elif kk == 9:              # baking paper with creases
            q = nz(.12, .12, 2., 3, .7); cr = torch.exp(-(q[:, :1].abs() * 12)) + torch.exp(-(q[:, 1:2].abs() * 14))
            a = a * (1 - .04 * cr); hh = .5 * q[:, 2:3] * .5 + .05 * cr + .15 * q[:, :1].abs(); G = .25 + o
        else:                      # slatted rack
            s = 1.6 + 2 * U(0); e = torch.remainder(y, s) / s; sl = sstep(.0, .05, e - .3) * sstep(0., .05, .97 - e)
            a = mix(a * .12, a * (1 + .15 * nz(.1, 2.)[:, :1]), sl); hh = .25 * sl; G = .2 + o
        alb[i] = a; h[i] = hh; gl[i] = G
    # wall
    A = math.pi
    w = g['w'].view(n, 3, 1, 1)
    q = fbm(c['vol'], P * .05 + 3.3, 3)
    blob = torch.sign(q[:, 1:2]) * .5 + .5
    wc = w * (1 + .08 * q[:, :1])
    wc = mix(wc, mix(w, g['c'].view(n, 3, 1, 1).flip(1), .6) * .8, sstep(.3, .5, q[:, 1:2]) * (v(g['wb']) > .5))
    wc = mix(wc, w * .3, sstep(.35, .5, q[:, 2:3]) * (v(g['wb']) > .75))
    alb = mix(alb, wc, c['wall']); h = h * (1 - c['wall']); gl = gl * (1 - c['wall'])
    return alb.clamp(.01, .95), h, gl

def ddx(a):
    d = a[..., 1:] - a[..., :-1]
    return F.pad(d, (0, 1, 0, 0), mode='replicate')

def ddy(a):
    d = a[..., 1:, :] - a[..., :-1, :]
    return F.pad(d, (0, 0, 0, 1), mode='replicate')

def bump(c, h, k):
    P, N = c['P'], c['N']
    sx, sy = c['sx'], c['sy']
    r1 = cross3(sy, N); r2 = cross3(N, sx)
    det = dot3(sx, r1)
    hx, hy = ddx(h), ddy(h)
    lim = c['pix'] * 2.
    hx = torch.maximum(torch.minimum(hx, lim), -lim); hy = torch.maximum(torch.minimum(hy, lim), -lim)
    gr = torch.sign(det) * (hx * r1 + hy * r2)
    N2 = norm3(det.abs() * N - gr * k + 1e-9 * N)
    ok = c['okb']
    return norm3(mix(N, N2, ok))

def light(c, st, l):
    """c: hit, l: light params. -> linear radiance"""
    N = bump(c, st['h'], 1.)
    Lk = l['L']; V = -c['d']
    ndl = dot3(N, Lk)
    wrap = l['wrap'] * (c['soap'] * .25 + c['hand'] * .15)
    dif = ((ndl + wrap) / (1 + wrap)).clamp(min=0)
    win = l['L2']
    up = N[:, 1:2]
    amb = l['ambc'] * (.55 + .45 * up) + l['fill'] * l['keyc'] * (.5 + .5 * dot3(N, win)) ** 1.5
    bounce = l['bounce'] * (.5 - .5 * up)
    cav = (1 + (st['h'].clamp(max=0) * 2.5)).clamp(.35, 1)
    E = l['keyc'] * dif * c['sh'] + (amb + bounce) * c['ao'] * cav
    m = c['soap'] + c['hand']
    lod = torch.log2((.16 * st['tr'] + .03) / c['pix'] + 1).clamp(0, 3.5)
    Eb = blur_lod(E * m, lod) / (blur_lod(m, lod) + 1e-3)
    E = mix(E, Eb, m * (.25 + .35 * st['tr']))
    Hh = norm3(Lk + V)
    g = st['gl'].clamp(0, 1.5)
    ex = 6 + 150 * (g.clamp(0, 1) ** 2)
    nh = dot3(N, Hh).clamp(0, 1)
    fr = .04 + .5 * (1 - dot3(N, V).clamp(0, 1)) ** 5
    sp = fr * (ex + 8) / 25 * nh ** ex * c['sh'] * (ndl > 0) * l['keyc'] * (.2 + 1.3 * g)
    R = 2 * dot3(N, V) * N - V
    env = fr * g * (l['ambc'] * (.5 + .5 * R[:, 1:2]) + l['fill'] * 3 * l['keyc'] * sstep(.75, .95, dot3(R, win))) * c['ao']
    glow = .10 * st['tr'] * c['soap'] * (1 - dot3(N, V).clamp(0, 1)) ** 2 * l['keyc']
    return st['alb'].clamp(0, 1.6) * (E + glow) + sp.clamp(max=3) + env

def expose(rad, c, cam, H, W, exp=None):
    """lens, depth of field, down-sampling, exposure, tone: -> sRGB before noise"""
    x = rad
    coc = ((c['t'] - cam['focus']).abs() / c['t'] * cam['dof'] / c['ss'] * 1.)
    lod = torch.log2(1 + coc * x.shape[-1] / 256.).clamp(0, 4)
    lod = blur_lod(lod, torch.full_like(lod[:, :, :1, :1], 1.))
    x = blur_lod(x, lod)
    if x.shape[-2:] != (H, W): x = F.adaptive_avg_pool2d(x, (H, W)) if x.shape[-1] % W == 0 else F.interpolate(x, size=(H, W), mode='bilinear', align_corners=False, antialias=False)
    x = gauss(x, cam['blur'] * H / 256.)
    if exp is None:
        y = (x * torch.tensor([.25, .65, .1], device=x.device).view(1, 3, 1, 1)).sum(1, keepdim=True)
        exp = cam['key'] / (y.mean((1, 2, 3), keepdim=True) * .6 + .4 * y.flatten(1).quantile(.9, dim=1).view(-1, 1, 1, 1) * .6 + 1e-4)
    x = x * exp * cam['wb'] * cam['vig']
    lum_ = (x * torch.tensor([.25, .65, .1], device=x.device).view(1, 3, 1, 1)).sum(1, keepdim=True)
    x = mix(lum_.expand_as(x), x, cam['sat']).clamp(min=0)
    x = torch.where(x < .6, x, .6 + .4 * (1 - torch.exp(-(x - .6) / .4)))
    return to_srgb(x), exp

_D = None
def jpeg(x, q):
    n, c, H, W = x.shape
    ph, pw = (-H) % 16, (-W) % 16
    x = F.pad(x, (0, pw, 0, ph), mode='replicate') if ph or pw else x
    dev = x.device
    i = torch.arange(8, device=dev, dtype=torch.float32)
    D = torch.cos((2 * i.view(1, 8) + 1) * i.view(8, 1) * math.pi / 16) * .5; D[0] = D[0] / math.sqrt(2)
    u = i.view(8, 1) + i.view(1, 8)
    Qy = (10 + u * 7 + u ** 2 * .3).view(1, 1, 8, 1, 8) ; Qc = (14 + u * 14).clamp(max=99).view(1, 1, 8, 1, 8)
    s = torch.where(q < 50, 50 / q, 2 - q / 50).view(-1, 1, 1, 1, 1)
    y = .299 * x[:, :1] + .587 * x[:, 1:2] + .114 * x[:, 2:3]
    cb = (x[:, 2:3] - y) * .564; cr = (x[:, :1] - y) * .713
    cc = F.avg_pool2d(torch.cat([cb, cr], 1), 2)
    def go(a, Q):
        n, c, h, w = a.shape
        b = a.reshape(n * c, h // 8, 8, w // 8, 8) * 255
        sQ = (Q * s.repeat_interleave(c, 0)).clamp(min=1)
        f = torch.einsum('ij,najbk->naibk', D, b); f = torch.einsum('naibk,lk->naibl', f, D)
        f = torch.round(f / sQ) * sQ
        b = torch.einsum('ij,naibk->najbk', D, f); b = torch.einsum('najbl,lk->najbk', b, D)
        return b.reshape(n, c, h, w) / 255
    y = go(y - .5, Qy) + .5; cc = F.interpolate(go(cc, Qc), scale_factor=2, mode='bilinear', align_corners=False)
    r = y + cc[:, 1:2] / .713; b = y + cc[:, :1] / .564; g = (y - .299 * r - .114 * b) / .587
    return torch.cat([r, g, b], 1)[..., :H, :W]

def finish(x, cam, nz):
    """noise (nz [n,3,H,W] normal), denoise, sharpening, JPEG"""
    m = nz.mean(1, keepdim=True)
    z = mix(nz * .7, m * 1.6, .6)
    z = gauss(z, cam['nsz']) * (1 + cam['nsz'].view(-1, 1, 1, 1) * 1.5)
    x = x + z * cam['ns'] * (.35 + .65 * (1 - x))
    b = gauss(x, cam['shr'])
    x = x + (x - b) * cam['sha']
    x = x.clamp(0, 1)
    return jpeg(x, cam['q']).clamp(0, 1)
