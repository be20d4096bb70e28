"""Tables and cloths, light, and the phone's own pipeline."""
import math
import numpy as np, torch
import torch.nn.functional as F
from pane_core import *

GR = ['planks', 'linen', 'paper', 'marble', 'slate', 'rack', 'gingham', 'towel', 'tile', 'concrete', 'granite', 'bamboo', 'board', 'bakingpaper', 'stripe']
def ground(P, rng, dev, pix):
    U = rng.uniform; g = rng.choice(GR); an = U(0, 3.14); s = int(rng.integers(1000))
    u = P[0] * math.cos(an) + P[1] * math.sin(an); v = -P[0] * math.sin(an) + P[1] * math.cos(an)
    z0 = torch.zeros_like(u) + U(0, 50); q = torch.stack([u, v, z0]); h = 0 * u; gl = U(0, .3)
    n = fbm(q, .12, s, 3)
    wood = lambda: hsv(U(.045, .1), U(.25, .65), U(.25, .85))
    any_ = lambda: hsv(U(0, 1), U(0, .5) * rng.random(), U(.12, .95))
    if g in ('planks', 'board', 'bamboo'):
        w = {'planks': U(4, 12), 'board': U(25, 40), 'bamboo': U(1, 2.5)}[g]; row = torch.floor(v / w); fr = (v / w - row)
        t = noise3(torch.stack([u * .05, v * U(.6, 1.4) + .9 * n[0], row * 7.7]), 1, s); t2 = noise3(torch.stack([u * .25, v * 5, row * 3.1]), 1, s + 4)
        a = col(wood(), dev) * (1 + .22 * torch.sin(t[0:1] * 9) * U(.3, 1) + .12 * t2[:1] + .12 * torch.sin(row * 12.9)[None]).clamp(.2, 2)
        j = 1 - sst(.0, .02 + pix / w, torch.minimum(fr, 1 - fr)); a = a * (1 - .6 * j[None]); h = -.04 * j + .01 * t2[1]; gl = U(.05, .6)
    elif g in ('linen', 'towel', 'gingham', 'stripe'):
        f = U(12, 30) if g != 'towel' else U(8, 14); f = min(f, 1.2 / pix); wv = torch.sin(u * f) * torch.sin(v * f + 1.5 * n[2]); C = any_(); a = col(C, dev) * (1 + .15 * wv[None] + .1 * n[:1])
        h = .02 * wv + U(.1, .8) * n[1] * (1 if rng.random() < .6 else .1)
        if g == 'towel': h = h + .1 * noise3(q, 3, s)[0]
        if g in ('gingham', 'stripe'):
            p = U(.6, 3); m = sst(-.1, .1, torch.sin(u / p * 3)); m = m * .5 + .5 * sst(-.1, .1, torch.sin(v / p * 3)) if g == 'gingham' else m; a = mix(a, col(any_(), dev) * (1 + .15 * wv[None]), m[None])
        gl = 0
    elif g in ('paper', 'concrete', 'bakingpaper'):
        C = hsv(U(0, 1), U(0, .15), U(.55, .98)) if g != 'paper' or rng.random() < .5 else any_(); k = dict(paper=.02, concrete=.25, bakingpaper=.05)[g]; a = col(C, dev) * (1 + k * n[:1] + k * .5 * noise3(q, 2.5, s)[:1])
        if g == 'bakingpaper': h = .25 * (noise3(q, .25, s)[0].abs()) + .05 * n[1]; gl = .3
    elif g == 'marble':
        f = fbm(q + 3 * n[:3], .08, s, 3); m = torch.exp(-(f[0] / .06) ** 2) * .6 + .3 * sst(0, .8, f[1]); a = mix(col(hsv(.1, .02, U(.85, .97)), dev), col(hsv(.6, .05, U(.4, .6)), dev), m[None]); gl = U(.4, 1)
    elif g in ('slate', 'granite'):
        a = col(hsv(U(.5, .7), U(0, .15), U(.12, .35)), dev) * (1 + .3 * n[:1] + .15 * noise3(q, 3, s)[:1]); h = .1 * n[1] + .02 * noise3(q, 3, s)[1]
        if g == 'granite': k = noise3(q, 4, s); a = mix(mix(a, col(any_(), dev), sst(.1, .3, k[2])[None]), col((.8, .78, .75), dev), sst(.3, .45, k[3])[None]); gl = U(.3, 1)
    elif g == 'rack':
        p = U(1.2, 2.6); fr = (v / p) % 1 - .5; m = 1 - sst(.08, .1 + pix / p, fr.abs()); m2 = 1 - sst(.03, .035 + pix / 12, ((u / 12) % 1 - .5).abs()); m = torch.maximum(m, m2)
        dk = col(any_(), dev) * U(.1, .5) * (1 + .3 * n[:1]); a = mix(dk, col(hsv(U(0, 1), .05, U(.3, .95)) if rng.random() < .7 else wood(), dev), m[None]); h = .1 * m; gl = .6
    else:
        p = U(5, 14); fu, fv = (u / p) % 1, (v / p) % 1; e = torch.minimum(torch.minimum(fu, 1 - fu), torch.minimum(fv, 1 - fv)); m = 1 - sst(.01, .02 + pix / p, e)
        a = mix(col(any_(), dev) * (1 + .05 * n[:1]), col(hsv(.1, .05, U(.4, .9)), dev), m[None]); h = -.05 * m; gl = U(.3, 1)
    if g == 'board' or rng.random() < .12:   # edge of a board / mat, another surface beyond
        e = torch.maximum(u.abs() - U(9, 16), v.abs() - U(8, 14)); m = sst(0, .1 + pix, e)[None]; b = col(any_(), dev) * (1 + .1 * n[1:2]); a = mix(a, b, m); h = h - .3 * sst(0, .25, e)
        a = a * (1 - .5 * torch.exp(-((e - .2) / .35) ** 2) * (e > 0))[None]
    if rng.random() < .2:   # crumbs and dust
        sd, hh, *_ = dots(u, v, U(.8, 2), s, .5, max(.04, pix), .15); a = mix(a, col(any_(), dev), (1 - sst(-pix, pix, sd))[None] * .8)
    return a.clamp(.005, .95), h, torch.full_like(u, gl)

def kelvin(K):
    t = K / 100
    r = 255 if t <= 66 else 329.7 * (t - 60) ** -.1332
    g = 99.47 * math.log(t) - 161.12 if t <= 66 else 288.12 * (t - 60) ** -.0755
    b = 255 if t >= 66 else 138.52 * math.log(max(t - 10, 1.1)) - 305.04
    c = lin(np.clip([r, g, b], 20, 255) / 255); return c / c.mean()

def light(rng, S):
    U = rng.uniform; k = rng.choice(['window', 'sun', 'lamp', 'flash', 'overcast'], p=[.36, .16, .22, .12, .14])
    az = U(0, 6.28); el = dict(window=U(.3, .9), sun=U(.4, 1.2), lamp=U(.7, 1.4), flash=0, overcast=U(.8, 1.4))[k]
    L = np.array([math.cos(el) * math.cos(az), math.cos(el) * math.sin(az), math.sin(el)])
    T = dict(window=U(5000, 7000), sun=U(4800, 5800), lamp=U(2700, 5000), flash=5600, overcast=U(6000, 7500))[k]
    if k == 'flash': L = -S['fw'] + .12 * S['upv'] + .06 * S['rt']; L = L / np.linalg.norm(L)
    if L[2] < .08: L[2] = .08; L = L / np.linalg.norm(L)
    if S['pose'] == 'hand' and L @ -S['fw'] < 0: L = L - 2 * (L @ -S['fw']) * -S['fw']
    soft = dict(window=U(.15, .5), sun=U(.02, .06), lamp=U(.06, .25), flash=.03, overcast=U(.6, 1.))[k]
    key = dict(window=U(.6, 1), sun=U(1.1, 1.5), lamp=U(.6, 1.1), flash=U(.9, 1.3), overcast=U(.2, .5))[k]
    amb = dict(window=U(.2, .45), sun=U(.18, .4), lamp=U(.15, .4), flash=U(.05, .2), overcast=U(.5, .8))[k]
    wb = (1 / kelvin(T)) ** U(.55, 1.05)
    return dict(kind=k, L=L, soft=soft, key=key, amb=amb, c=kelvin(T) * wb, ac=kelvin(U(4500, 8000)) * wb, gobo=rng.random() < .12, seed=int(rng.integers(1 << 30)),
                wall=hsv(U(0, 1), U(0, .2) * rng.random(), U(.1, .9)), spec=U(.3, 1.2))

def bump(P, N, h, bar):
    gx = lambda t: torch.cat([t[..., 1:2] - t[..., :1], (t[..., 2:] - t[..., :-2]) * .5, t[..., -1:] - t[..., -2:-1]], -1)
    gy = lambda t: torch.cat([t[..., 1:2, :] - t[..., :1, :], (t[..., 2:, :] - t[..., :-2, :]) * .5, t[..., -1:, :] - t[..., -2:-1, :]], -2)
    cross = lambda a, b: torch.stack([a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]])
    px, py = gx(P), gy(P); r1, r2 = cross(py, N), cross(N, px); det = (px * r1).sum(0)
    lim = 1.5 * torch.maximum(px.norm(dim=0), py.norm(dim=0))
    hx = gx(h); hy = gy(h); hx = torch.maximum(torch.minimum(hx, lim), -lim); hy = torch.maximum(torch.minimum(hy, lim), -lim)
    k = F.avg_pool2d(bar[None].float(), 3, 1, 1)[0]; k = ((k > .99) | (k < .01)).float()
    g = torch.sign(det) * (hx * r1 + hy * r2) * k
    N2 = det.abs() * N - g
    return N2 / N2.norm(dim=0, keepdim=True).clamp(min=1e-12)

def shade(G, Lt, a, h, gloss, sh, ao, sss, bar):
    dev = a.device; L = col(Lt['L'], dev); N = bump(G['P'], G['N'], h, bar); V = -G['d']; r = np.random.default_rng(Lt['seed'])
    nl = (N * L).sum(0); wr = .25 * sss * bar; dif = ((nl + wr) / (1 + wr)).clamp(min=0) * sh
    fall = (G['t'].median() / G['t']) ** 2 if Lt['kind'] == 'flash' else (1 + r.uniform(-.02, .02) * G['P'][0] + r.uniform(-.02, .02) * G['P'][1]).clamp(.4, 1.6)
    if Lt['gobo']: dif = dif * (.35 + .65 * sst(-.1, .25, noise3(G['P'] - L * (G['P'][2] / float(Lt['L'][2])), r.uniform(.12, .4), r.uniform(0, 99))[0] + r.uniform(0, .3)))
    up = .6 + .4 * N[2]
    amb = ao * up * Lt['amb']
    E = col(Lt['c'], dev) * (dif * Lt['key'] * fall)[None] + col(Lt['ac'], dev) * amb[None]
    E = E + (1 - up)[None] * .15 * ao[None] * col(np.clip(Lt['c'], 0, 2) * .6, dev)
    if True:
        Es = gauss(E * bar[None] + E.mean((1, 2), keepdim=True) * (1 - bar)[None], .12 / G['pix']); E = mix(E, Es, (.45 * sss * bar)[None])
    Hh = L + V; Hh = Hh / Hh.norm(dim=0, keepdim=True); nh = (N * Hh).sum(0).clamp(0, 1)
    fres = .04 + .5 * (1 - (N * V).sum(0).clamp(0, 1)) ** 5
    pw = 8 + 60 * gloss.clamp(0, 2.5) * (.4 if Lt['soft'] > .3 else 1)
    sp = nh ** pw * (pw + 8) / 25 * sh * Lt['key'] * .1 * gloss * Lt['spec']
    R = 2 * (N * V).sum(0) * N - V
    win = sst(.72, .9, (R * L).sum(0)) * (.12 * Lt['spec']) * gloss if Lt['kind'] in ('window', 'lamp', 'flash') else sst(0, 1, R[2]) * .06 * gloss
    out = a * E + col(Lt['c'], dev) * (sp + win * sh + fres * gloss.clamp(max=1) * Lt['amb'] * .5 * ao)[None]
    return out

_D = {}
def jpeg(x, q, sub):
    dev = x.device
    if str(dev) not in _D:
        k = np.arange(8); D = np.sqrt(2 / 8) * np.cos((2 * k[None] + 1) * k[:, None] * np.pi / 16); D[0] /= math.sqrt(2)
        QY = np.array([[16, 11, 10, 16, 24, 40, 51, 61], [12, 12, 14, 19, 26, 58, 60, 55], [14, 13, 16, 24, 40, 57, 69, 56], [14, 17, 22, 29, 51, 87, 80, 62], [18, 22, 37, 56, 68, 109, 103, 77], [24, 35, 55, 64, 81, 104, 113, 92], [49, 64, 78, 87, 103, 121, 120, 101], [72, 92, 95, 98, 112, 100, 103, 99.]])
        QC = np.full((8, 8), 99.); QC[:4, :4] = [[17, 18, 24, 47], [18, 21, 26, 66], [24, 26, 56, 99], [47, 66, 99, 99]]
        M = np.array([[.299, .587, .114], [-.1687, -.3313, .5], [.5, -.4187, -.0813]])
        _D[str(dev)] = [torch.tensor(v.tolist(), dtype=torch.float32, device=dev) for v in (D, QY, QC, M, np.linalg.inv(M))]
    D, QY, QC, M, Mi = _D[str(dev)]
    H, W = x.shape[-2:]; ph, pw = (-H) % 16, (-W) % 16
    y = F.pad(torch.einsum('ij,jhw->ihw', M, x * 255)[None], (0, pw, 0, ph), mode='replicate')[0]
    s = 5000 / q if q < 50 else 200 - 2 * q
    def dct(p, Q):
        h, w = p.shape[-2:]; Q = ((Q * s + 50) / 100).floor().clamp(1, 255)
        b = p.reshape(-1, h // 8, 8, w // 8, 8).permute(0, 1, 3, 2, 4); b = torch.round(D @ (b) @ D.t() / Q) * Q; b = D.t() @ b @ D
        return b.permute(0, 1, 3, 2, 4).reshape(-1, h, w)
    Y = dct(y[:1] - 128, QY) + 128; C = y[1:]
    if sub: C = F.interpolate(dct(F.avg_pool2d(C[None], 2)[0], QC)[None], scale_factor=2, mode='bilinear', align_corners=False)[0]
    else: C = dct(C, QC)
    return (torch.einsum('ij,jhw->ihw', Mi, torch.cat([Y, C]))[:, :H, :W] / 255).clamp(0, 1)

def camera_params(rng):
    U = rng.uniform; b = rng.random()
    return dict(ev=U(-.35, .4), wb=np.exp(rng.normal(0, .05, 3)), vig=U(0, .35), blur=U(.2, .5) if b < .72 else U(.5, 1.5), mot=U(1, 5) if rng.random() < .08 else 0, mang=U(0, 3.1),
                nz=10 ** U(-2.6, -1.5), cz=U(.3, 1.6), con=U(.0, 1.), loc=U(0, .4) if rng.random() < .6 else 0, sat=U(.85, 1.25), shp=U(0, 1.1) if rng.random() < .7 else 0, q=int(U(35, 97)), sub=rng.random() < .75, den=rng.random() < .3, seed=int(rng.integers(1 << 30)), dof=U(0, 1.) if rng.random() < .6 else 0, veil=U(0, .03))

def tone(x, C):
    """linear to display, no noise"""
    x = x * col(C['wb'], x.device); x = x + C['veil']
    y = 1 - torch.exp(-x * 1.35)                                   # shoulder
    y = mix(x.clamp(0, 1), y / .9, .55).clamp(0, 1)
    y = torch.where(y <= .0031308, 12.92 * y, 1.055 * y.clamp(min=1e-5) ** (1 / 2.4) - .055)
    s = y * y * (3 - 2 * y); y = mix(y, s, C['con'] * .5)
    m = y.mean(0, keepdim=True); return (m + (y - m) * C['sat']).clamp(0, 1)

def pipeline(x, C, G=None):
    """x [3,H,W] linear, at output size"""
    dev = x.device; H, W = x.shape[-2:]; m = min(H, W); sc = m / 512
    x = gauss(x, C['blur'] * (.6 + .4 * sc))
    if C['mot']:
        L = C['mot'] * sc; ys = sum(torch.roll(x, (int(round(L * t * math.sin(C['mang']))), int(round(L * t * math.cos(C['mang'])))), (1, 2)) for t in (-1, -.5, 0, .5, 1)) / 5; x = ys
    g = torch.Generator(device=dev); g.manual_seed(C['seed'])
    n = torch.randn((7, H, W), generator=g, device=dev)
    cn = gauss(n[3:6], 1.2) * 3
    x = x + C['nz'] * (x.clamp(min=.004) ** .5) * (.6 * n[:3] * .5 + .6 * n[6:7] + C['cz'] * .6 * cn)
    y = tone(x, C)
    if C['den']: y = mix(y, gauss(y, 1.), .6)
    if C['loc']: y = y + C['loc'] * (y - gauss(y, m * .05)).clamp(-.25, .25)
    if C['shp']: y = y + C['shp'] * (y - gauss(y, 1.)).clamp(-.12, .12)
    return jpeg(y.clamp(0, 1), C['q'], C['sub'])
