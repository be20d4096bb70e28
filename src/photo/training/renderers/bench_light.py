"""Light: key, sky, flash, window glare, gobo shadows; relief by screen differences."""
import numpy as np
import torch
import torch.nn.functional as F
from bench_noise import smooth, mix, gauss


def kelvin(t):
    """linear rgb of a lamp, about 1 in the middle"""
    t = t / 100.0
    r = 255 if t <= 66 else 329.7 * (t - 60) ** -.1332
    g = 99.47 * np.log(t) - 161.1 if t <= 66 else 288.1 * (t - 60) ** -.0755
    b = 255 if t >= 66 else (0 if t <= 19 else 138.5 * np.log(t - 10) - 305.0)
    c = np.clip(np.array([r, g, b]) / 255, .02, 1) ** 2.2
    return c / c.mean()


def sample(r):
    """one picture's light (numpy)"""
    kind = r.choice(['window', 'sun', 'lamp', 'flash', 'dusk', 'soft', 'tubes'], p=[.27, .14, .18, .1, .08, .15, .08])
    u = r.uniform
    el = dict(window=u(15, 55), sun=u(25, 65), lamp=u(35, 80), flash=60, dusk=u(8, 30), soft=u(50, 85), tubes=u(55, 85))[kind]
    az = u(0, 6.28) if kind != 'window' else u(1.2, 5.0)
    e = np.radians(el)
    T = dict(window=u(5200, 6800), sun=u(4800, 5700), lamp=u(2700, 4200), flash=u(5200, 6200), dusk=u(2600, 8500), soft=u(4500, 7000),
             tubes=u(3500, 6500))[kind]
    hard = dict(window=u(1.5, 5), sun=u(15, 50), lamp=u(4, 20), flash=u(18, 45), dusk=u(1.5, 6), soft=u(.8, 2), tubes=u(1.5, 4))[kind]
    amb = dict(window=u(.18, .5), sun=u(.18, .45), lamp=u(.15, .45), flash=u(.06, .25), dusk=u(.2, .6), soft=u(.5, .9), tubes=u(.35, .7))[kind]
    key = kelvin(T)
    wbT = T * u(.85, 1.2) if r.rand() < .7 else (5500 if r.rand() < .7 else u(3000, 8000))
    wb = kelvin(np.clip(wbT, 2500, 9500))
    strength = u(.55, 1) if r.rand() < .8 else u(.2, .55)
    wb = wb ** strength
    return dict(L=np.array([np.cos(e) * np.sin(az), np.sin(e), np.cos(e) * np.cos(az)]), key=key, hard=hard, amb=amb,
                ambc=kelvin(np.clip(T * u(.8, 1.6), 2500, 9500)), flash=float(kind == 'flash'), wb=wb,
                expo=u(.8, 1.15) * (u(.55, .8) if kind == 'dusk' else 1), gobo=u(.3, .95) if r.rand() < .16 and kind in ('sun', 'window', 'lamp') else 0.0,
                goboT=float(r.rand() < .4), glare=u(.1, .9) if r.rand() < .35 else u(0, .15))


def dx(f):
    return F.pad(f[..., 2:] - f[..., :-2], (1, 1, 0, 0), mode='replicate') * .5


def dy(f):
    return F.pad(f[..., 2:, :] - f[..., :-2, :], (0, 0, 1, 1), mode='replicate') * .5


def bump(N, sx, sy, okx, oky, h):
    """normal tilted by a relief h (cm), from screen differences"""
    r1, r2 = torch.cross(sy, N, dim=1), torch.cross(N, sx, dim=1)
    det = (sx * r1).sum(1, keepdim=True)
    hx, hy = dx(h) * okx, dy(h) * oky
    g = torch.sign(det) * (hx * r1 + hy * r2)
    lim = det.abs().clamp(min=1e-9)
    gl = g.norm(dim=1, keepdim=True) / lim
    g = g * (1.6 / gl.clamp(min=1.6))
    n = lim * N - g
    return n / (n.norm(dim=1, keepdim=True) + 1e-12)


def shade(st, geo, li):
    """st: alb, hgt, gloss. linear light towards the phone"""
    N = bump(geo['N'], geo['sx'], geo['sy'], geo['ok'], geo['ok'], st['hgt'])
    L, V = geo['L'], geo['V']
    ndl = (N * L).sum(1, keepdim=True)
    g0 = (geo['N'] * L).sum(1, keepdim=True)
    soap = geo['soap']
    wrap = mix(torch.full_like(ndl, .02), torch.full_like(ndl, .22), soap)
    dif = ((ndl + wrap) / (1 + wrap)).clamp(min=0) * geo['sh']
    dif = dif * smooth(-.25, .05, g0) * geo['fall']
    rel = st['hgt'] - gauss(st['hgt'], geo['cavs'])
    cav = torch.exp((rel * 6).clamp(-1.4, .25))
    sky = (.62 + .38 * N[:, 1:2]) * geo['ao']
    bounce = (.5 - .5 * N[:, 1:2]) * .25 * geo['ao']
    light = li['key'] * dif + li['ambc'] * (sky + bounce) * li['amb']
    alb = st['alb']
    glow = soap * (.06 + .10 * geo['rim']) * (li['key'] * (.25 + .4 * geo['sh']))      # light that travels in soap
    out = alb * (light * cav + glow * alb.clamp(min=.05) ** .4)
    Hh = L + V
    Hh = Hh / (Hh.norm(dim=1, keepdim=True) + 1e-6)
    gl = st['gloss'].clamp(0, 1.4)
    ex = 6 * 2 ** (gl * 5)
    fr = .04 + .5 * (1 - (N * V).sum(1, keepdim=True).clamp(0, 1)) ** 5
    sp = (N * Hh).sum(1, keepdim=True).clamp(0, 1) ** ex * (ex + 2) / 14 * fr * geo['sh'] * geo['fall']
    out = out + sp * gl.clamp(min=.03) * li['key'] * cav
    Rf = 2 * (N * V).sum(1, keepdim=True) * N - V                                          # a window mirrored
    w1, w2 = (Rf * li['wu']).sum(1, keepdim=True), (Rf * li['wv']).sum(1, keepdim=True)
    s = .45 - .33 * gl.clamp(0, 1)
    fwd = ((Rf * li['wn']).sum(1, keepdim=True) > 0).float()
    win = smooth(.3 + s, .3 - s, w1.abs()) * smooth(.38 + s, .38 - s, w2.abs()) * fwd
    out = out + win * li['glare'] * fr * 2.2 * gl * li['ambc'] * geo['ao']
    return out
