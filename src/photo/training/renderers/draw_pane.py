"""draw(n, (H, W), seed, device, clean) : pictures of cold-process soap as a phone sees it, with labels."""
import os, sys
sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import math
import numpy as np, torch
import torch.nn.functional as F
from pane_core import *
import pane_scene as SC, pane_soap as SO, pane_camera as CA
SS = 1.5
FORCE = None   # for looking at one flaw only
# deceivers for a clean picture, by the flaw they resemble
LIKE = ['poppy', 'coffee', 'oat', 'petal', 'mica', 'glitter', 'stamp', 'planer', 'dew', 'label', 'topswirl', 'sugar', 'mat', 'herb', 'micavein', 'wave']

def sky(G, Lt, rng, dev):
    w = col(Lt['wall'], dev); n = noise3(torch.stack([G['px'], G['py'], 0 * G['px']]), 1.3, rng.uniform(0, 99))
    return (w * (1 + .5 * n[:1] + .25 * G['py'][None]) * (Lt['amb'] + .35 * Lt['key'])).clamp(min=.003)

def nosoap(G, S, rng, dev):
    """wood, card, sponge, cloth or brick instead of soap"""
    p = G['pl']; k = rng.integers(0, 5); U = rng.uniform; s = U(0, 99); n = fbm(p, .4, s, 3); h = 0 * n[0]
    if k == 0: a = col(hsv(U(.05, .1), U(.3, .6), U(.3, .8)), dev) * (1 + .3 * torch.sin(4 * noise3(p * torch.tensor([.1, 1., 1], device=dev).view(3, 1, 1), 1, s)[:1] * 6))
    elif k == 1: a = col(hsv(.085, U(.35, .5), U(.6, .75)), dev) * (1 + .06 * torch.sin(p[1:2] * 16) + .05 * n[:1]); a = mix(a, col(hsv(.11, .3, U(.7, .9)), dev), (p[1].abs() < .8).float()[None] * .8); h = .01 * torch.sin(p[1] * 16)
    elif k == 2: b = noise3(p, 3, s)[0] + noise3(p, 6, s)[1] * .6; h = .15 * b; a = col(hsv(rng.choice([.13, .33, .9, .55]), .7, .85), dev) * (1 - .4 * sst(.2, .8, -b))[None] 
    elif k == 3: kn = torch.sin(p[0] * 6 + torch.sin(p[1] * 12).abs()) * torch.sin(p[2] * 6 + p[1] * 3); h = .14 * kn; st = sst(-.1, .1, torch.sin(p[1] * U(1, 4)) * torch.cos(p[0] * U(.2, 2)))[None]; a = mix(col(hsv(U(0, 1), U(0, .5), U(.4, .9)), dev), col(hsv(U(0, 1), U(.2, .7), U(.2, .9)), dev), st) * (1 + .25 * kn[None] + .1 * n[:1])
    else: a = col(hsv(.03, .6, .5), dev) * (1 + .4 * n[:1] + .3 * noise3(p, 5, s)[:1]); h = .1 * n[1]
    return a.clamp(.01, .95), h, torch.full_like(h, U(0, .5))

def picture(H, W, seed, i, dev, clean):
    rng = np.random.default_rng([int(seed) & 0xffffffff, i, 77]); U = rng.uniform
    isclean = rng.random() < clean; kind = 1 if rng.random() < .04 else 0
    flaws = []
    if not isclean and not kind:
        k = rng.choice([1, 2, 3], p=[.66, .24, .1]); first = int(rng.integers(16)); flaws = [first]
        while len(flaws) < k:
            j = int(rng.integers(16))
            if j not in flaws: flaws.append(j)
    if FORCE is not None: flaws = list(FORCE); kind = 0
    want = SO.FACE[flaws[0]] if flaws else None
    if want == 'Z' and rng.random() < .12: want = None
    fs = [(j, int(rng.integers(1 << 30))) for j in flaws]
    fs.sort(key=lambda t: [4, 6, 10, 11, 3, 1, 12, 14, 15, 0, 2, 7, 8, 5, 13, 9].index(t[0]))
    dec = []; tricky = 0
    if (not flaws and rng.random() < .5) or (flaws and rng.random() < .22):
        tricky = 1; dec = [(str(rng.choice(LIKE)), int(rng.integers(1 << 30)))]
        if rng.random() < .25: dec.append((str(rng.choice(LIKE)), int(rng.integers(1 << 30))))
    if dec and not flaws and any(d[0] in ('topswirl', 'petal', 'sugar') for d in dec): want = 'Y'
    S = SC.make(rng, want)
    for _ in range(4):      # rim and core need the whole face
        if S['pose'] == 'close' and any(f in (6, 10) for f in flaws): S = SC.make(rng, want)
    M = SO.choose(rng, flaws, S)
    if 15 in flaws and rng.random() < .3: S['moulded'] = True
    Lt = CA.light(rng, S); C = CA.camera_params(rng)
    if any(d[0] in ('dew', 'glitter') for d in dec): M['gloss'] = max(M['gloss'], .5)
    h, w = int(H * SS + .5), int(W * SS + .5)
    empty = kind and rng.random() < .4
    if empty: S['c'][:, 2] -= 400; S['caps'] = []
    if kind: tricky = int(not empty)
    G = SC.trace(S, h, w, dev)
    L = torch.tensor(Lt['L'].tolist(), dtype=torch.float32, device=dev); sh, ao = SC.shade_terms(S, G, L, Lt['soft'])
    bar = G['bar'].float(); hand = G['hand']; bm = G['bar'][None]
    ga, gh, gg = CA.ground(G['P'], rng, dev, G['pix'])
    if S['caps']:
        n = fbm(G['P'], .8, 5, 3); sk = hsv(U(.03, .07), U(.25, .6), U(.3, .93)); hm = hand[None]
        skin = col(sk, dev) * (1 + .1 * n[:1] + .08 * n[1:2] * col((1, -.4, -.4), dev)); ga = torch.where(hm, skin, ga); gh = torch.where(hand, .02 * noise3(G['P'], 5, 3)[0] + .03 * n[2], gh); gg = torch.where(hand, torch.full_like(gg, .3), gg)
    wall = sky(G, Lt, rng, dev); solid = (G['bar'] | G['ground'] | hand)[None]
    crop = None
    def compose(drop=None):
        if kind: a, hh, gl = nosoap(G, S, np.random.default_rng(M['seed']), dev); mk = {}
        else: a, hh, gl, mk = SO.material(S, G, M, dec, fs, drop)
        a = torch.where(bm, a, ga); hh = torch.where(G['bar'], hh, gh); gl = torch.where(G['bar'], gl, gg)
        x = CA.shade(G, Lt, a, hh, gl, sh, ao, M['sss'], bar)
        return torch.where(solid, x, wall), mk
    x, mk = compose()
    lum = (x.mean(0) * bar).sum() / bar.sum().clamp(min=50) if not kind else x.mean()
    lum = .5 * lum + .5 * x.mean(); ex = .30 * math.exp(C['ev']) / lum.clamp(min=.01)
    r2 = (G['px'] ** 2 + G['py'] ** 2) / 2; gain = (ex * (1 - C['vig'] * r2.clamp(max=1)))[None]
    down = lambda v: F.interpolate(v[None], size=(H, W), mode='bilinear', align_corners=False, antialias=True)[0]
    far = None
    if C['dof']:
        coc = ((G['t'] - S['D']).abs() - S['rad'] * .8).clamp(min=0) / S['D']; far = down((coc * C['dof'] * 2.2).clamp(0, 1)[None] * (1 - bar * .3)[None])
    def post(v):
        v = down(v * gain)
        if far is not None: v = mix(v, gauss(v, min(H, W) * .012 * (.5 + C['dof'])), far)
        return v
    y = post(x); img = CA.pipeline(y, C)
    bmask = (down(bar[None]) > .5).float() * (1 - kind); maps = torch.zeros(16, H, W, device=dev); pres = torch.zeros(16, device=dev)
    s0 = C['blur'] * (.6 + .4 * min(H, W) / 512) + (C['mot'] * .4 * min(H, W) / 512)
    if fs: ty = CA.tone(gauss(y, s0), C)
    for j, (f, _) in enumerate(fs):
        tx = CA.tone(gauss(post(compose(j)[0]), s0), C); d = (ty - tx).abs().amax(0)
        thr = .022 + C['nz'] * .5
        dm = gauss(F.max_pool2d(d[None], 3, 1, 1), .8)[0]
        m = ((down((mk[f] * bar)[None])[0] > .2) & (dm > thr) & (bmask[0] > 0)).float()
        ok = ((m.sum() > max(10., H * W * 1.2e-4)) & ((d * m).amax() > 1.6 * thr)).float()
        maps[f] = m * ok; pres[f] = ok
    return img, bmask, maps, pres, float(tricky or (not flaws and M['pat'] in ('rings', 'pencil') and False)), float(kind)

@torch.no_grad()
def draw(n, size, seed, device, clean=.4):
    H, W = size; dev = torch.device(device)
    old = torch.backends.cuda.matmul.allow_tf32, torch.backends.cudnn.allow_tf32
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = False
    o = [picture(H, W, seed, i, dev, clean) for i in range(n)]
    torch.backends.cuda.matmul.allow_tf32, torch.backends.cudnn.allow_tf32 = old
    f = lambda j: torch.stack([v[j] for v in o])
    t = lambda j: torch.tensor([v[j] for v in o], dtype=torch.float32, device=dev)
    return dict(image=f(0), bar=f(1), maps=f(2), present=f(3), tricky=t(4), kind=t(5))
