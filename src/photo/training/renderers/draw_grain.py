"""draw(n, (H, W), seed, device, clean): soap as layers of texture over ray-marched bars."""
import os, sys, math, numpy as np, torch
import torch.nn.functional as F
sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from grain_base import *
import grain_geo as gg, grain_soap as gs, grain_look as gk

POSE_FOR = {  # pose weights by wanted face
    'c': dict(lie=3, stand=3, side=1.2, stack=1, row=1.5, loafcut=1.6, closecut=4, held=1.5, scatter=1.2, sliced=1, loaf=.4),
    't': dict(stand=1.5, row=.8, loaf=3, loafcut=1.2, closetop=4, sliced=1, scatter=.3),
    's': dict(stand=.8, side=1.5, loaf=2, closeside=4, loafcut=.6, stack=.7, lie=.4),
    'a': dict(lie=2.5, stand=2.5, side=1, stack=1, row=1, loaf=1.4, loafcut=1.4, closecut=2.5, held=1.4, closetop=1.4, scatter=1, sliced=1, closeside=.6)}

def _pick(rs, d):
    k = list(d); w = np.array([d[a] for a in k], float)
    return k[rs.choice(len(k), p=w / w.sum())]

def _plan(rs, clean, force=None):
    U = rs.uniform; p = {}
    force = force or {}
    p['kind'] = int(rs.rand() < .06) if 'flaws' not in force else 0
    flawed = rs.rand() >= (0. if clean <= 0 else 1 if clean >= 1 else max(0., 1 - (1 - clean) / .88))   # some flaws turn out unseen
    fl = []
    if flawed and not p['kind']:
        m = rs.choice([1, 2, 3], p=[.7, .22, .08])
        wt = np.ones(16); wt[[0, 9, 12, 14, 15]] = 1.5; fl = list(rs.choice(16, m, replace=False, p=wt / wt.sum()))
        faces = {gs.FACE[f] for f in fl}
        if 't' in faces and 's' in faces: fl = fl[:1]
    if 'flaws' in force: fl = list(force['flaws'])
    dec = (rs.rand() < .6) if not fl else (rs.rand() < .25)
    p['fl'] = fl
    tr = []
    strong = 0
    if dec and not p['kind']:
        tr = list(rs.choice(len(gs.TRICKS), rs.choice([1, 2], p=[.75, .25]), replace=False))
        strong = int(rs.rand() < .3)      # light that deceives
    if 'tricks' in force: tr = list(force['tricks'])
    p['tr'] = tr; p['dec'] = int(bool(tr) or strong)
    face = gs.FACE[fl[0]] if fl else (gs.TFACE[tr[0]] if tr else 'a')
    if any(gs.FACE[f] == 't' for f in fl) and face != 's': face = 't' if rs.rand() < .5 or face == 't' else face
    pose = force.get('pose') or _pick(rs, POSE_FOR[face])
    p['pose'] = pose
    p['sc'] = gg.scene(rs, pose)
    need = None
    if 13 in fl: need = 'layers'
    elif 11 in fl: need = 'accent'
    elif 0 in fl or 1 in fl or 6 in fl: need = rs.choice(['plainish', None])
    elif 10 in fl or 7 in fl: need = rs.choice(['pale', None, 'plainish'])
    elif 2 in fl or 4 in fl or 5 in fl: need = rs.choice(['dark', 'dark', None])
    p['rec'] = gs.recipe_params(rs, need)
    if strong == 0 and not fl and p['rec']['k'] in (2, 6, 7, 8) and rs.rand() < .3: p['dec'] = 1
    sl = []
    for f in fl:
        pc = np.array(gs.ACC[rs.randint(14)]) * U(.5, 1)
        sl.append(dict(f=int(f), u=U(0, 1, 10), var=rs.randint(gs.NVAR[f]), sev=.2 + .8 * U() ** .8, R=math.exp(U(math.log(.8), math.log(5))) * (2.2 if f in (11, 13) else 1) if rs.rand() < .55 else 999., one=float(rs.rand() < .4), pcol=lin(np.clip(pc, .02, .9)), sd=U(0, 50)))
    p['sl'] = sl
    p['tl'] = [dict(f=int(f), u=U(0, 1, 10), var=rs.randint(3), sev=.5, sd=0.) for f in tr]
    # light
    T = U(2700, 6500) if rs.rand() < .5 else U(4800, 6500)
    hard = rs.rand() < .4
    e = math.radians(U(18, 75)); a = U(0, 6.28)
    Ld = np.array([math.cos(e) * math.sin(a), math.sin(e), math.cos(e) * math.cos(a)])
    if pose in ('closecut', 'stand', 'closeside', 'row') and Ld[2] < -.2: Ld[2] *= -1 if rs.rand() < .75 else 1
    a2 = U(0, 6.28); e2 = U(.1, 1.1)
    key = bb_ = gk.bb(T); mixed = rs.rand() < .25
    amb = gk.bb(U(2700, 6500)) if mixed else gk.bb(min(T * U(1., 1.25), 7500))
    r = U(.25, .9) if not hard else U(.15, .5)
    p['l'] = dict(L=Ld, L2=np.array([math.cos(e2) * math.sin(a2), math.sin(e2), math.cos(e2) * math.cos(a2)]), keyc=key * U(.8, 1.2) * (1.5 if hard else 1.), ambc=amb * r, fill=U(.05, .5), bounce=key * U(.05, .25), soft=(U(12, 60) if hard else math.exp(U(math.log(1.5), math.log(9)))), wrap=U(.3, 1.2),
                  gobo=(rs.randint(1, 4) if strong and rs.rand() < .7 else 0), gu=U(0, 1, 4))
    if strong and p['l']['gobo'] == 0: p['rec']['gloss'] = U(.8, 1.2); p['l']['fill'] = .9
    err = math.exp(rs.normal(0, .12)) if rs.rand() < .7 else math.exp(rs.normal(0, .3))
    Tw = np.clip(T * err, 2500, 7500); adapt = U(.6, 1.)
    wb = 1 / gk.bb(Tw) ** adapt * np.exp(rs.normal(0, .025, 3)); wb /= (wb * [.25, .65, .1]).sum()
    p['cam'] = dict(wb=wb, dof=abs(rs.normal(0, 1)) * (7 if rs.rand() < .8 else 16) if rs.rand() < .7 else 0., blur=.2 + (U(0, .35) if rs.rand() < .82 else U(.35, 1.2)), key=math.exp(rs.normal(math.log(.37), .22)), vg=U(0, .45) if rs.rand() < .6 else 0., sat=U(.78, 1.15), ns=math.exp(U(math.log(.002), math.log(.024))), nsz=U(.2, .9), sha=U(0, 1.4), shr=U(.6, 1.4), q=U(40, 96))
    if pose.startswith('close'): p['cam']['dof'] *= .45
    p['g'] = gk.ground_params(rs)
    p['mat'] = rs.randint(7)
    p['skin'] = lin(np.array([(.92, .74, .64), (.85, .64, .52), (.72, .50, .38), (.52, .34, .25), (.36, .23, .17), (.94, .78, .70)][rs.randint(6)]) * U(.93, 1.05))
    if p['kind'] and p['mat'] == 4: p['dec'] = 1
    p['vs'] = int(rs.randint(1 << 30))
    if p['kind'] and p['mat'] == 6: 
        for b in p['sc']['bars']: b['c'] = b['c'] + np.array([0, -900., 0])
    return p

def _slot(ps, key, s, idx, dev):
    T = lambda x, sh: torch.tensor(np.asarray(x, np.float32).tolist(), dtype=torch.float32, device=dev).view(*sh)
    L = [ps[i][key][s] for i in idx]; m = len(L)
    d = dict(u=T([a['u'] for a in L], (m, 10)), var=T([a['var'] for a in L], (m, 1, 1, 1)), sev=T([a['sev'] for a in L], (m, 1, 1, 1)))
    if key == 'sl': d.update(R=T([a['R'] for a in L], (m, 1, 1, 1)), one=T([a['one'] for a in L], (m, 1, 1, 1)), pcol=T([a['pcol'] for a in L], (m, 3, 1, 1)), sd=T([a['sd'] for a in L], (m, 1, 1, 1)))
    return d

def _apply(ps, key, s, c, st, dev, centre=None, only=None):
    """apply slot s of every picture that has one; grouped by kind of finding"""
    table = gs.FLAWS if key == 'sl' else gs.TRICKS
    by = {}
    for i, p in enumerate(ps):
        if len(p[key]) > s: by.setdefault(p[key][s]['f'], []).append(i)
    if not by: return st
    st = {k: v.clone() for k, v in st.items()}
    for f, idx in sorted(by.items()):
        it = torch.tensor(idx, device=dev)
        cc = gs.sub(c, it); cc.update(_slot(ps, key, s, idx, dev))
        if key == 'sl':
            face = {'c': cc['cutm'], 't': cc['topm'], 's': cc['sidem'], 'a': torch.ones_like(cc['cutm'])}[gs.FACE[f]]
            H, W = face.shape[-2:]
            ii = torch.arange(H * W, device=dev, dtype=torch.float32).view(1, 1, H, W)
            hh = hsh(torch.remainder(ii, 997.), torch.floor(ii / 997.) * .37, cc['sd'])
            w = (cc['soap'] * (face > .6)) * (.01 + hh)
            if f in (11, 13): w = w * (.02 + (cc['s'][0].abs() < .3).float())      # on the border itself
            am = w.flatten(1).argmax(1)
            pc = torch.gather(cc['p'].flatten(2), 2, am.view(-1, 1, 1).expand(-1, 3, 1)).view(-1, 3, 1, 1)
            bi = torch.gather(cc['idx'].flatten(1), 1, am.view(-1, 1)).view(-1, 1, 1, 1)
            dd = torch.sqrt(dot3(cc['p'] - pc, cc['p'] - pc) + 1e-6) + .5 * cc['R'].clamp(max=3) * cc['w'][:, 1:2] * .6
            reg = 1 - sstep(.75, 1.15, dd / cc['R'])
            reg = torch.where((cc['one'] > 0) | (cc['R'] < 100), reg * (cc['idx'] == bi), reg)
            cc['pc'] = pc; cc['reg'] = reg
        s0 = {k: v[it] for k, v in st.items()}
        s1 = table[f](cc, s0)
        if key == 'sl': s1 = {k: mix(v, s0[k], s0['lab']) for k, v in s1.items()}     # a paper band lies over the flaws
        for k in st: st[k][it] = s1[k]
    return st

def _chunk(ps, H, W, ss, dev):
    n = len(ps)
    h, w = int(round(H * ss)), int(round(W * ss))
    T = lambda x, sh: torch.tensor(np.asarray(x, np.float32).tolist(), dtype=torch.float32, device=dev).view(*sh)
    g = gg.pack([p['sc'] for p in ps], dev)
    c = gg.march(g, h, w)
    vol = []
    for p in ps:
        gen = torch.Generator(); gen.manual_seed(p['vs'])
        vol.append(torch.rand(4, G, G, G, generator=gen) * 2 - 1)
    vol = torch.stack(vol).to(dev) * 1.25
    for d in (2, 3, 4): vol = torch.cat([vol, vol.narrow(d, 0, 1)], d)
    c['vol'] = vol.contiguous(); c['ss'] = ss
    c['sx'], c['sy'] = ddx_lim(c['P']), ddy_lim(c['P'])
    okb = ((torch.sqrt(dot3(c['sx'], c['sx'])) < c['pix'] * 9) & (torch.sqrt(dot3(c['sy'], c['sy'])) < c['pix'] * 9)).float()
    same = torch.ones_like(okb); ob = c['soap'] * (c['idx'] + 2) + c['hand'] * 50 
    same[..., :-1] *= (ob[..., 1:] == ob[..., :-1]).float(); same[..., :-1, :] *= (ob[..., 1:, :] == ob[..., :-1, :]).float()
    c['okb'] = okb * same
    no = c['no']; a = no.abs()
    cut = sstep(.62, .8, a[:, 2:3]); top = sstep(.45, .7, no[:, 1:2]) * (1 - cut); side = ((1 - cut) * (1 - top))
    c['cutm'] = cut * c['soap']; c['topm'] = top * c['soap']; c['sidem'] = side * c['soap']
    q = c['q']; p3 = torch.cat([q[:, :2], q[:, 2:3] + c['zo']], 1); c['p'] = p3
    iscut = (a[:, 2:3] > .7); isx = (a[:, :1] > a[:, 1:2])
    u1 = torch.where(iscut, p3[:, :1], torch.where(isx, p3[:, 2:3], p3[:, :1])); v1 = torch.where(iscut, p3[:, 1:2], torch.where(isx, p3[:, 1:2], p3[:, 2:3]))
    off = c['idx'].clamp(min=0) * 13.7 + torch.where(iscut, torch.zeros_like(u1), 5.3 + 3.1 * isx.float()) + torch.sign(no[:, 2:3]) * 2.2 * iscut
    c['uv'] = torch.cat([u1 + off, v1 + off * .7], 1); c['uvc'] = q[:, :2]
    hs = c['hs']; c['edge'] = torch.minimum(hs[:, :1] - q[:, :1].abs(), hs[:, 1:2] - q[:, 1:2].abs()).clamp(min=0)
    Rx = g['Rxy'].unsqueeze(1); dx = (q[:, :1].abs() - hs[:, :1] + Rx).clamp(min=0); dy = (q[:, 1:2].abs() - hs[:, 1:2] + Rx).clamp(min=0)
    c['edge'] = torch.where((dx > 0) & (dy > 0), (Rx - torch.sqrt(dx * dx + dy * dy + 1e-9)).clamp(min=0), c['edge'])
    c['hy'] = hs[:, 1:2]
    R = lambda k, *sh: T([p['rec'][k] for p in ps], (n, *sh))
    c['rec'] = dict(k=R('k', 1, 1, 1), col=R('col', 4, 3), thr=R('thr', 3, 1, 1), f=R('f', 1, 1, 1), warp=R('warp', 1, 1, 1), yb=R('yb', 3, 1, 1), nl=R('nl', 1, 1, 1), edge=R('edge', 1, 1, 1), ang=R('ang', 1, 1, 1), ph=R('ph', 4, 1, 1), sf=R('sf', 1, 1, 1), wav=R('wav', 1, 1, 1), mott=R('mott', 1, 1, 1), gloss=R('gloss', 1, 1, 1), off=R('off', 3, 1, 1), grain=R('grain', 1, 1, 1), body=R('body', 1, 1, 1))
    c['fine'] = fbm(c['vol'], p3 * 7 + 2.2, 2)
    st = gs.recipe(c, p3)
    kind = T([p['kind'] for p in ps], (n, 1, 1, 1)); mat = T([p['mat'] for p in ps], (n, 1, 1, 1))
    if kind.max() > 0: st = _other(c, st, kind, mat)
    for s in range(max([len(p['tl']) for p in ps] + [0])): st = _apply(ps, 'tl', s, c, st, dev)
    # light
    l = {k: T([p['l'][k] for p in ps], (n, 3, 1, 1)) for k in ('L', 'L2', 'keyc', 'ambc', 'bounce')}
    for k in ('fill', 'soft', 'wrap'): l[k] = T([p['l'][k] for p in ps], (n, 1, 1, 1))
    c['sh'] = gg.shadow(g, c['P'], c['N'], l['L'], l['soft']) * (dot3(c['N'], l['L']) > -.3)
    c['ao'] = gg.ao(g, c['P'], c['N'])
    gob = T([p['l']['gobo'] for p in ps], (n, 1, 1, 1))
    if gob.max() > 0:
        gu = T([p['l']['gu'] for p in ps], (n, 4, 1, 1))
        t = c['P'] - l['L'] * (c['P'][:, 1:2] / l['L'][:, 1:2].clamp(min=.2))
        x, y = t[:, :1], t[:, 2:3]; th = gu[:, :1] * 6.28; X = x * torch.cos(th) + y * torch.sin(th); Y = -x * torch.sin(th) + y * torch.cos(th)
        f = 1 + 2.5 * gu[:, 1:2]; sf = .1 + .3 * gu[:, 2:3]
        bl = sstep(-sf, sf, torch.sin(X * f)); lf = sstep(-sf, sf * .6, fbm(c['vol'], torch.cat([X * .25 * f, Y * .12 * f, torch.zeros_like(X) + 3], 1), 3)[:, :1]); la = 1 - (1 - sstep(.0, .1 + sf, (torch.sin(X * .6)).abs())) * 1. 
        la = la * sstep(.0, .1 + sf, torch.sin(Y * .5).abs())
        m = torch.where(gob == 1, bl, torch.where(gob == 2, lf, la))
        c['sh'] = torch.where(gob > 0, c['sh'] * m, c['sh'])
    gp = dict(k=T([p['g']['k'] for p in ps], (n,)), c=T([p['g']['c'] for p in ps], (n, 3)), w=T([p['g']['w'] for p in ps], (n, 3)), u=T([p['g']['u'] for p in ps], (n, 8)), a=T([p['g']['a'] for p in ps], (n,)), wb=T([p['g']['wb'] for p in ps], (n,)))
    ga, gh, ggl = gk.ground(c, gp)
    skin = T([p['skin'] for p in ps], (n, 3, 1, 1))
    if g['C']:
        sn = fbm(c['vol'], c['P'] * .6, 3); s2 = fbm(c['vol'], c['P'] * 4., 2)
        skin = skin * (1 + .09 * sn[:, :1] * torch.tensor([.5, 1., 1.], device=dev).view(1, 3, 1, 1) + .05 * s2[:, :1])
        hb = .012 * s2[:, 1:2] + .01 * torch.sin(c['P'][:, :1] * 6 + 2 * sn[:, 2:3])
    else: hb = 0.
    S, Hd = c['soap'], c['hand']
    def comp(s):
        return dict(alb=ga * (1 - S - Hd) + s['alb'] * S + skin * Hd, h=gh * (1 - S - Hd) + s['h'] * S + hb * Hd, gl=ggl * (1 - S - Hd) + s['gl'] * S + .3 * Hd, tr=s['tr'] * S + .5 * Hd)
    CV = lambda k, *sh: T([p['cam'][k] for p in ps], (n, *sh))
    yy, xx = torch.meshgrid(torch.linspace(-1, 1, H, device=dev), torch.linspace(-1, 1, W, device=dev), indexing='ij')
    cam = dict(wb=CV('wb', 3, 1, 1), dof=CV('dof', 1, 1, 1), blur=CV('blur'), key=CV('key', 1, 1, 1), sat=CV('sat', 1, 1, 1), ns=CV('ns', 1, 1, 1), nsz=CV('nsz'), sha=CV('sha', 1, 1, 1), shr=CV('shr'), q=CV('q'), focus=g['focus'], vig=1 - CV('vg', 1, 1, 1) * ((xx ** 2 + yy ** 2) / 2))
    ns = max([len(p['sl']) for p in ps] + [0])
    full = st
    for s in range(ns): full = _apply(ps, 'sl', s, c, full, dev)
    img, ex = gk.expose(gk.light(c, comp(full), l), c, cam, H, W)
    bar = (F.adaptive_avg_pool2d(S, (H, W)) > .5).float() * (1 - kind)
    maps = torch.zeros(n, 16, H, W, device=dev)
    present = torch.zeros(n, 16, device=dev)
    sc = max(1, int(round(H / 170)))
    for s in range(ns):
        # only the pictures that have this slot; leave this slot out
        part = st
        for s2 in range(ns):
            if s2 != s: part = _apply(ps, 'sl', s2, c, part, dev)
        im2, _ = gk.expose(gk.light(c, comp(part), l), c, cam, H, W, ex)
        d = (img - im2).abs().amax(1, keepdim=True)
        d = .6 * d + .4 * gauss(d, torch.full((n,), .8 * H / 256., device=dev))
        thr = (.015 + .45 * cam['ns'])
        m = (d > thr).float() * dil(bar, 1)
        m = ero(dil(m, sc), sc) * bar
        area = m.sum((1, 2, 3)) / (H * W); peak = (d * bar).flatten(1).kthvalue(max(1, H * W - max(4, H * W // 8000)), dim=1)[0]
        ok = ((area > .0005) & (peak > .04 + .8 * cam['ns'].view(-1))).float()
        for i, p in enumerate(ps):
            if len(p['sl']) > s:
                f = p['sl'][s]['f']; maps[i, f] = m[i, 0] * ok[i]; present[i, f] = ok[i]
    nz = []
    for p in ps:
        gen = torch.Generator(); gen.manual_seed(p['vs'] + 1); nz.append(torch.randn(3, H, W, generator=gen))
    out = gk.finish(img, cam, torch.stack(nz).to(dev))
    return out, bar, maps, present

def ddx_lim(a): return gk.ddx(a)
def ddy_lim(a): return gk.ddy(a)

def _other(c, st, kind, mat):
    p = c['p']; v = c['vol']
    T = lambda a: torch.tensor(a, device=p.device).view(1, 3, 1, 1)
    n1 = fbm(v, torch.cat([p[:, :1] * .9, p[:, 1:2] * .9, p[:, 2:3] * .06], 1), 4, .6); n2 = fbm(v, p * 1.5, 4, .7)
    rb = torch.sin(torch.sqrt(p[:, :1] ** 2 + (p[:, 1:2] + 5) ** 2) * 5 + 2 * n1[:, :1])
    wood = T([.42, .25, .12]) * (1 + .3 * rb + .2 * n1[:, 1:2])
    stone = T([.35, .33, .31]) * (1 + .35 * n2[:, :1])
    d, r_, _, _, _ = dots(c['uv'] * 3.5, torch.full_like(p[:, :1], 3.), .95, .1, .42); hole = 1 - sstep(.7, 1.1, d)
    sponge = T([.80, .62, .12]) * (1 - .6 * hole); card = T([.50, .34, .20]) * (1 + .05 * torch.sin(p[:, :1] * 16))
    box = c['rec']['col'][:, 1].unsqueeze(-1).unsqueeze(-1) * torch.ones_like(n2[:, :1]); cake = T([.10, .05, .03]) * (1 + .6 * n2[:, :1])
    alb = wood
    for k, a in ((1, stone), (2, sponge), (3, card), (4, box), (5, cake)): alb = torch.where(mat == k, a, alb)
    h = torch.where(mat == 2, -.1 * hole, torch.where((mat == 1) | (mat == 5), .08 * n2[:, 1:2], 0 * hole))
    on = kind > 0
    return dict(alb=torch.where(on, alb.clamp(.01, 1), st['alb']), h=torch.where(on, h, st['h']), gl=torch.where(on, torch.where(mat == 4, 1. + 0 * h, .1 + 0 * h), st['gl']), tr=torch.where(on, 0 * h, st['tr']), lab=st['lab'])

@torch.no_grad()
def draw(n, size, seed, device='cpu', clean=0.4, force=None, ss=None):
    if torch.device(device).type == 'cuda':
        with torch.autocast('cuda', enabled=False): return _draw(n, size, seed, device, clean, force, ss)
    return _draw(n, size, seed, device, clean, force, ss)

def _draw(n, size, seed, device, clean, force, ss):
    H, W = size
    dev = torch.device(device)
    rs = np.random.RandomState(int(seed) % (2 ** 32 - 1))
    ps = [_plan(np.random.RandomState(rs.randint(1 << 31)), clean, force) for _ in range(n)]
    if ss is None: ss = 2. if H * W <= 300 * 300 else 1.5
    order = sorted(range(n), key=lambda i: (len(ps[i]['sc']['caps']) > 0, len(ps[i]['sc']['bars']), len(ps[i]['sl'])))
    per = max(1, min(8, int(3.7e6 / (H * W * ss * ss))))
    o = dict(image=torch.zeros(n, 3, H, W, device=dev), bar=torch.zeros(n, 1, H, W, device=dev), maps=torch.zeros(n, 16, H, W, device=dev), present=torch.zeros(n, 16, device=dev))
    for a in range(0, n, per):
        ix = order[a:a + per]; it = torch.tensor(ix, device=dev)
        im, b, m, pr = _chunk([ps[i] for i in ix], H, W, ss, dev)
        o['image'][it] = im; o['bar'][it] = b; o['maps'][it] = m; o['present'][it] = pr
    o['tricky'] = torch.tensor([float(p['dec']) for p in ps], device=dev)
    vis = o['bar'].flatten(1).sum(1) > 0.002 * H * W
    o['kind'] = torch.tensor([float(p['kind']) for p in ps], device=dev)
    o['kind'] = torch.where(vis, o['kind'], torch.ones_like(o['kind']))
    ok = (1 - o['kind']); o['present'] *= ok.view(-1, 1); o['maps'] *= ok.view(-1, 1, 1, 1)
    return o
