"""The soap itself: recipe (solid pattern), honest decoration that deceives, sixteen flaws."""
import math, numpy as np, torch
from grain_base import *

BASES = [(.94, .91, .84), (.93, .88, .76), (.97, .96, .93), (.88, .80, .66), (.90, .85, .78), (.82, .72, .56), (.86, .88, .78), (.80, .66, .50), (.93, .85, .82)]
ACC = [(.85, .62, .62), (.72, .38, .36), (.55, .66, .48), (.33, .45, .30), (.18, .18, .19), (.30, .40, .62), (.20, .25, .50), (.55, .42, .66), (.90, .70, .30), (.86, .56, .22), (.42, .28, .19), (.60, .42, .28), (.35, .62, .64), (.55, .78, .76), (.98, .97, .95), (.98, .97, .95), (.85, .45, .60), (.62, .20, .24), (.72, .70, .66), (.93, .82, .55)]

def recipe_params(rs, need=None):
    U = rs.uniform
    k = rs.choice(9, p=[.2, .13, .17, .07, .12, .07, .08, .08, .08])
    if need == 'layers': k = rs.choice([1, 5, 1, 3])
    if need == 'accent': k = rs.choice([1, 2, 4, 5, 7, 8])
    if need == 'plainish': k = rs.choice([0, 0, 6, 1, 2, 3])
    base = np.array(BASES[rs.randint(len(BASES))]) if rs.rand() < .72 else np.array(ACC[rs.randint(len(ACC))])
    if need == 'pale': base = np.array(BASES[rs.randint(3)])
    if need == 'dark' : base = np.array(ACC[rs.choice([0, 2, 3, 5, 7, 8, 11, 12, 16, 18, 1])])
    base = mix(base, (base * [.25, .6, .15]).sum(), U(0, .45)); cols = [np.clip(base + rs.normal(0, .025, 3), .04, .985)]
    for j in range(3):
        c = np.array(ACC[rs.randint(len(ACC))]); c = c * U(.85, 1.08) + rs.normal(0, .03, 3); c = mix(c, (c * [.25, .6, .15]).sum(), U(0, .55))
        if rs.rand() < .35: c = mix(c, cols[0], U(.3, .7))
        cols.append(np.clip(c, .03, .98))
    if k == 8 and rs.rand() < .5: cols[2] = cols[0]
    nacc = rs.choice([1, 2, 3], p=[.45, .35, .2])
    for j in range(nacc, 3): cols[j + 1] = cols[rs.randint(0, nacc + 1)]
    if rs.rand() < .35: cols[1:] = [np.clip(mix(cols[0], c, U(.25, .7)), .03, .98) for c in cols[1:]]
    return dict(k=k, col=lin(np.stack(cols)), thr=rs.uniform(-.5, .9, 3), f=U(.12, .45), warp=U(.2, 1.6), yb=np.sort(U(-.6, .7, 3)), nl=rs.randint(1, 4), edge=math.exp(U(math.log(.008), math.log(.12))),
                ang=U(-.25, .25) if k != 5 else U(-1.2, 1.2), ph=U(0, 6, 4), sf=U(.6, 2.2), wav=U(.02, .35), mott=U(.0, .05), gloss=U(.1, .8), off=U(0, 30, 3), grain=U(0, .012), body=U(.35, .9))

def recipe(c, p):
    """adds s-fields; returns base state. p = pattern coords in cm"""
    r = c['rec']; k = r['k']
    v = c['vol']
    x0 = p + r['off']
    w = fbm(v, x0 * r['f'] * 1.0 + 5.1, 2)
    w2 = fbm(v, x0 * r['f'] * 3.1 + 9.7, 2)
    px = p[:, :1] + r['warp'] * (w[:, :1] + .3 * w2[:, :1]); py = p[:, 1:2] + r['warp'] * (w[:, 1:2] + .3 * w2[:, 1:2]); pz = p[:, 2:3] + r['warp'] * w[:, 2:3]
    sw = fbm(v, torch.cat([px, py, pz * .5], 1) * r['f'] + r['off'] * 1.7, 2)
    yy = p[:, 1:2] + torch.tan(r['ang'].clamp(-1.2, 1.2)) * p[:, :1]
    wav = r['wav'] * (w[:, 3:4] + .5 * w2[:, 3:4])
    hy = c['hy']
    s = []
    for j in range(3):
        yb = r['yb'][:, j:j + 1]
        layer = yy - yb * hy - wav * (1 + .3 * j)
        layer = torch.where(r['nl'] > j, layer, torch.full_like(layer, -9.))
        swirl = (sw[:, j:j + 1] - r['thr'][:, j:j + 1]) / r['f'] * .35
        hang = (torch.sin(px * r['sf'] * 2 + r['ph'][:, j:j + 1] + .6 * torch.sin(py * 1.3)) - .25 - .25 * j) / r['sf'] * .5
        half = torch.where(torch.full_like(yy, j) > 0, torch.full_like(yy, -9.), yy * torch.cos(r['ang']) - wav)
        mot = (w2[:, j:j + 1] - .75) * .3
        rr = torch.sqrt((px * (1. + .2 * j) - (j - 1) * 1.6) ** 2 + (py - .5 * (j - 1)) ** 2 + .01)
        col = (torch.sin(rr * r['sf'] * 2.4 + r['ph'][:, j:j + 1]) - .1) / r['sf'] * .4 - (.25 if j else 0) * (sw[:, j:j + 1] * .5 + .5)
        tig = (torch.sin((py + .35 * torch.abs(px)) * r['sf'] * 2.4 + 2.1 * j + r['ph'][:, 0:1]) - .35) / r['sf'] * .4
        none = torch.full_like(yy, -9.)
        o = none
        for kk, f in ((1, layer), (2, swirl), (4, hang), (5, half), (6, mot), (7, col), (8, tig)): o = torch.where(k == kk, f, o)
        s.append(o)
    c['s'] = s; c['w'] = w; c['w2'] = w2
    e = torch.sqrt(r['edge'] ** 2 + (c['pix'] * .7) ** 2)
    alb = r['col'][:, 0].unsqueeze(-1).unsqueeze(-1).expand(-1, 3, *p.shape[-2:])
    g = sstep(-1, 1, yy / hy + .2 * w[:, :1])
    c1 = r['col'][:, 1].unsqueeze(-1).unsqueeze(-1)
    alb = torch.where(k == 3, mix(alb, c1, g), alb)
    for j in range(3):
        alb = mix(alb, r['col'][:, j + 1].unsqueeze(-1).unsqueeze(-1), sstep(-e, e, s[j]))
    fine = fbm(v, p * 9.0, 2); med = fbm(v, p * 1.3 + 3.3, 3)
    alb = alb * (1 + r['mott'] * med[:, :1] + r['grain'] * fine[:, :1] * 2)
    # cut faces: faint roughness; mould sides: smoother; top: softer
    h = .004 * fine[:, 1:2] * r['body'] + .012 * med[:, 1:2] * r['body']
    h = h + c['topm'] * .03 * fbm(v, p * 2.2 + 1.7, 2)[:, :1]
    gl = r['gloss'] * (.6 + .4 * c['sidem'] + .1 * med[:, 2:3])
    # bevel of rims a bit paler / worn
    return dict(alb=alb, h=h, gl=gl.expand_as(h), tr=torch.full_like(h, .5), lab=torch.zeros_like(h))

def sub(c, idx):
    o = {}
    for k, v in c.items():
        if torch.is_tensor(v): o[k] = v[idx]
        elif isinstance(v, dict): o[k] = {a: b[idx] for a, b in v.items()}
        elif isinstance(v, list): o[k] = [b[idx] for b in v]
        else: o[k] = v
    return o

# ---------------------------------------------------------------- flaws
NAMES = ['coloured-specks', 'smears', 'white-specks', 'translucent-veins', 'crackle-network', 'powdery-film', 'dark-centre-ring', 'orange-spots', 'pinholes', 'crack', 'brown-outside-in', 'colour-bled', 'drag-lines', 'layer-gap', 'wrinkled-top', 'mould-dimples']

def L(c, i):  # per-picture parameter uniform 0..1
    return c['u'][:, i].view(-1, 1, 1, 1)

def is_(c, k):
    return (c['var'] == k)

def lum(a):
    return .25 * a[:, :1] + .65 * a[:, 1:2] + .1 * a[:, 2:3]

def put(st, col, m, h=None, gl=None):
    st = dict(st)
    st['alb'] = mix(st['alb'], col, m)
    if h is not None: st['h'] = st['h'] + h
    if gl is not None: st['gl'] = mix(st['gl'], gl, m)
    return st

def f_specks(c, st):
    sc = 1.2 + 3.2 * L(c, 0); keep = .25 + .7 * L(c, 1) * c['sev'] ** .5
    r0 = .06; r1 = .14 + .24 * c['sev'] * L(c, 2)
    uv = c['uv'] * sc
    tail = torch.where(is_(c, 0) | is_(c, 3), torch.ones_like(sc), 2 + 6 * L(c, 3))
    ang = L(c, 4) * 6.28 + .7 * c['w'][:, :1]
    uv = uv + .1 * c['w2'][:, :2]
    d, rb, vx, vy, r = dots(uv, L(c, 5) * 50, keep, r0, r1, tail=(ang, tail))
    core = 1 - sstep(.75, 1.15, d + .25 * c['fine'][:, :1]); halo = torch.where(is_(c, 2) | is_(c, 3), 1 - sstep(.8, 2.2, d), torch.zeros_like(d)) * .4
    col = c['pcol'] * (.55 + .7 * rb)
    return put(st, col, (torch.maximum(core, halo) * (.35 + .65 * c['sev'])) * c['reg'])

def f_smears(c, st):
    a = L(c, 0) * 6.28 ; ca, sa = torch.cos(a), torch.sin(a)
    x = c['uv'][:, :1] + .5 * c['w'][:, :1]; y = c['uv'][:, 1:2] + .5 * c['w'][:, 1:2]
    x, y = x + .35 * torch.sin(1.1 * y + 6 * L(c, 1)) * is_(c, 1), y
    l = (x * ca + y * sa) * (.18 + .2 * L(c, 2)); t = (-x * sa + y * ca) * (1.2 + 2.6 * L(c, 3))
    q = torch.cat([l, t, torch.full_like(l, 3.7) + L(c, 4) * 20], 1)
    nz = fbm(c['vol'], q, 3)
    thr = .75 - .7 * c['sev'] * (.4 + .6 * L(c, 5))
    m = sstep(thr, thr + .18 + .4 * is_(c, 2), nz[:, :1])
    m = m * sstep(-.9, .3, nz[:, 1:2] + .7)
    return put(st, c['pcol'] * (.9 + .2 * nz[:, 2:3]), m * c['reg'] * (.35 + .6 * c['sev']))

def f_white(c, st):
    sc = torch.where(is_(c, 1), 1.0 + 1.2 * L(c, 0), torch.where(is_(c, 2), 5 + 4 * L(c, 0), 2.2 + 2.5 * L(c, 0)))
    d, rb, vx, vy, r = dots(c['uv'] * sc + .12 * c['w2'][:, :2], L(c, 5) * 50, .12 + .75 * c['sev'] * (.4 + .6 * L(c, 1)), .06, .16 + .2 * c['sev'], skew=2.5)
    d = d + .3 * c['fine'][:, :1] + .15 * c['w2'][:, 2:3]
    m = 1 - sstep(.7, 1.1, d)
    ring = torch.where(is_(c, 1), sstep(.9, 1.15, d) * (1 - sstep(1.2, 1.9, d)), torch.zeros_like(d))
    wh = torch.tensor([.93, .92, .89], device=d.device).view(1, 3, 1, 1)
    k = c['reg'] * (.35 + .65 * c['sev'])
    st = put(st, st['alb'] * torch.tensor([.80, .74, .62], device=d.device).view(1, 3, 1, 1), ring * k * .8)
    return put(st, wh, m * k, h=.012 * m * k * torch.where(is_(c, 1), -torch.ones_like(k), torch.ones_like(k)), gl=.05)

def f_veins(c, st):
    fq = torch.where(is_(c, 1), .35 + .3 * L(c, 0), .22 + .2 * L(c, 0))
    p = c['p'] + (.3 + 1.2 * L(c, 1)) * c['w'][:, :3] * 1.0
    n1 = fbm(c['vol'], p * fq + 2.2 + 9 * L(c, 2), 3)
    ridge = 1 - n1[:, :1].abs() * (1.8); r2 = 1 - n1[:, 1:2].abs() * 2.2
    wd = (.05 + .22 * c['sev'] * L(c, 3))
    m = sstep(1 - wd * 1.5, 1 - wd * .4, ridge)
    m = torch.where(is_(c, 0), m, torch.maximum(m, .8 * sstep(1 - wd, 1 - wd * .3, r2)))
    bl = sstep(.25, .7, n1[:, 2:3])
    m = torch.where(is_(c, 2), torch.maximum(m, bl * .75) , m)
    m = m * c['reg'] * (.25 + .7 * c['sev'])
    a = st['alb']
    st = put(st, (a ** 1.5) * .72, m, h=-.006 * m, gl=.9)
    st['tr'] = mix(st['tr'], torch.ones_like(m), m)
    return st

def f_crackle(c, st):
    sc = 1.3 + 3.2 * L(c, 0)
    uv = c['uv'] + (.10 + .15 * L(c, 1)) * c['w2'][:, :2] + .04 * c['fine'][:, :2]
    f1, e, rb = cells(uv * sc, L(c, 5) * 50)
    f1b, e2, _ = cells(uv * sc * 2.3 + 3.3, L(c, 5) * 50 + 5)
    wd = (.04 + .12 * c['sev']) * (.6 + .8 * L(c, 2)) + c['pix'] * sc * .4
    net = 1 - sstep(wd * .4, wd * 1.4, e)
    net2 = (1 - sstep(wd * .4, wd * 1.4, e2)) * (rb > .5)
    net = torch.where(is_(c, 1), torch.maximum(net, .7 * net2), net)
    soft = (1 - sstep(0., .35, e))
    a = st['alb']
    k = c['reg'] * (.3 + .7 * c['sev'])
    isl = (1 - net) * (.12 + .4 * L(c, 3)) * torch.where(is_(c, 2), 1 - soft * .8, torch.ones_like(soft))
    wh = torch.clamp(lum(a) * 1.15 + .08, max=.93) * torch.tensor([1., .99, .96], device=a.device).view(1, 3, 1, 1)
    st = put(st, mix(a, wh, .75), isl * k)
    st = put(st, a ** 1.35 * .72, net * k * .9, h=-.008 * net * k, gl=.8)
    st['tr'] = mix(st['tr'], torch.ones_like(net), net * k)
    return st

def f_ash(c, st):
    p = c['p']
    n1 = fbm(c['vol'], p * (.35 + .5 * L(c, 0)) + 7.7, 4, .6); n2 = fbm(c['vol'], p * 5 + 1.3, 3, .7)
    face = torch.where(is_(c, 2), torch.ones_like(c['topm']), torch.maximum(c['topm'], .0 * c['topm']))
    face = torch.where(is_(c, 3), torch.maximum(c['topm'], (1 - sstep(0., .25 + 1.2 * L(c, 1), c['edge'] + .25 * n1[:, 1:2])) * c['cutm']), face)
    thr = .7 - 1.5 * (.35 + .65 * c['sev']) * L(c, 2)
    pat = sstep(thr, thr + .5, n1[:, :1] + .35 * n2[:, :1])
    film = torch.where(is_(c, 1), .65 + .35 * sstep(-.8, .6, n2[:, :1] + n1[:, :1]), pat)
    # feathery crystals
    f1, e, rb = cells(c['uv'] * 1.1 + .15 * c['w2'][:, :2], L(c, 5) * 40)
    feath = (1 - sstep(.1, .75, f1 + .25 * n2[:, 1:2])) * (.5 + .5 * torch.sin(n2[:, 2:3] * 7))
    film = torch.where(is_(c, 4), feath * (rb < .75), film)
    film = film * (.8 + .25 * n2[:, 3:4]).clamp(0, 1)
    m = film * face * c['reg'] * (.25 + .7 * c['sev'])
    wh = torch.tensor([.86, .87, .87], device=p.device).view(1, 3, 1, 1)
    return put(st, wh, m, h=.006 * n2[:, 1:2] * m + .006 * m, gl=0.)

def f_gel(c, st):
    x = c['q'][:, :1] / c['hs'][:, :1]; y = c['q'][:, 1:2] / c['hs'][:, 1:2]; zz = c['q'][:, 2:3] / c['hs'][:, 2:3]
    cx = (L(c, 0) - .5) * .4; cy = (L(c, 1) - .5) * .4
    ex = torch.where(is_(c, 1), torch.full_like(cx, 4.), torch.full_like(cx, 2.2 + 1.0))
    ex = torch.where(is_(c, 2), torch.full_like(cx, 2.), ex)
    rr = ((x - cx).abs() ** ex + (y - cy).abs() ** ex + 1e-6) ** (1 / ex)
    R = .3 + .5 * L(c, 2)
    s = (R - rr) * 3. + (.12 + .3 * L(c, 3)) * c['w'][:, :1] + .08 * c['w2'][:, :1]       # ~cm
    sf = .04 + .35 * L(c, 4) * (1 - .6 * is_(c, 0))
    core = sstep(-sf, sf, s) * c['cutm']
    lw = .05 + .12 * L(c, 6)
    line = torch.exp(-(s / lw) ** 2) * c['cutm'] * torch.where(is_(c, 3), torch.full_like(R, .1), torch.full_like(R, .75))
    k = (.2 + .8 * c['sev'])
    a = st['alb']
    st = put(st, a ** 1.3 * .80, core * k)
    st = put(st, a ** 1.5 * .6, line * k, gl=.8)
    pale = sstep(-.5, -.05, -s.abs()) * (s < 0) * c['cutm'] * .25 * is_(c, 1)
    st = put(st, a * .9 + .09, pale * k)
    st['tr'] = mix(st['tr'], torch.ones_like(core), core * k)
    return st

def f_dos(c, st):
    sc = torch.where(is_(c, 1), 1.6 + 1.4 * L(c, 0), .35 + .6 * L(c, 0))
    uv = c['uv'] * sc + .06 * sc * c['w2'][:, :2] + .05 * c['w'][:, :2]
    d, rb, vx, vy, r = dots(uv, L(c, 5) * 50, .25 + .6 * L(c, 1) * c['sev'] ** .4, .07, .14 + .28 * c['sev'])
    d = d + .22 * c['fine'][:, :1] + .25 * c['w2'][:, 2:3]
    core = torch.exp(-(d.clamp(min=0) / .75) ** 2 * 1.2); halo = torch.exp(-(d.clamp(min=0) / 1.5) ** 2)
    T = lambda v: torch.tensor(v, device=d.device).view(1, 3, 1, 1)
    oc = mix(T([.62, .27, .05]), T([.36, .14, .035]), L(c, 2)); hc = T([.80, .50, .14])
    k = c['reg'] * (.3 + .7 * c['sev'])
    st = put(st, hc * (.4 + .6 * lum(st['alb'])), halo * k * (.25 + .5 * L(c, 3)))
    st = put(st, oc * (.3 + .7 * lum(st['alb'])) * (.8 + .4 * rb), core * k, h=.02 * core * k * is_(c, 2), gl=torch.where(is_(c, 2), torch.full_like(k, 1.), torch.full_like(k, .4)))
    return st

def f_pin(c, st):
    sc = torch.where(is_(c, 1), 1.0 + L(c, 0), 2.5 + 3.5 * L(c, 0))
    r1 = torch.where(is_(c, 1), .2 + .2 * c['sev'], .12 + .22 * c['sev'])
    asp = torch.where(is_(c, 2), torch.full_like(sc, 2.2), torch.full_like(sc, 1.15))
    d, rb, vx, vy, r = dots(c['uv'] * sc + .05 * c['w2'][:, :2], L(c, 5) * 50, .1 + .8 * c['sev'] * L(c, 1) ** .5, .05, r1, asp=asp, skew=2)
    d = d + .12 * c['fine'][:, :1]
    m = (1 - sstep(.7, 1.1, d)) * c['reg']
    rim = sstep(.8, 1.05, d) * (1 - sstep(1.1, 1.5, d)) * c['reg']
    dep = (r / sc) * (.5 + .7 * c['sev'])
    prof = (1 - d.clamp(0, 1) ** 2) * dep
    st = put(st, st['alb'] * (.55 - .35 * c['sev'] * L(c, 2)), m * (.4 + .6 * c['sev']), h=-prof * c['reg'] + .1 * rim * dep, gl=.05)
    return st

def f_crack(c, st):
    q = c['q']; y = q[:, 1:2]; hy = c['hs'][:, 1:2]; pz = c['p'][:, 2:3]
    one = torch.zeros_like(y)
    n1 = fbm(c['vol'], torch.cat([pz * .5, y * .35, one + 3.3 + 20 * L(c, 0)], 1), 4, .6)
    n2 = fbm(c['vol'], torch.cat([pz * .6, one + 7.1, one + 20 * L(c, 0)], 1), 2)
    x0 = (L(c, 1) - .5) * .9 * c['hs'][:, :1]
    x = q[:, :1] - x0 - n1[:, :1] * (.2 + .5 * L(c, 2))
    br = q[:, :1] - x0 - .5 - n1[:, 1:2] * .9 + (hy - y) * .5
    across = is_(c, 2)                       # a crack going across the bar instead of along
    xa = pz - c['pc'][:, 2:3] - n1[:, 2:3] * .3 - .3 * fbm(c['vol'], torch.cat([q[:, :1] * .5, y * .4, one + 5], 1), 3, .6)[:, :1]
    x = torch.where(across, xa, x)
    dep = hy * (.25 + 1.6 * L(c, 3) * c['sev'])
    dep = torch.where(is_(c, 3), hy * 2.2 + one, dep)
    taper = (1 - (hy - y) / dep).clamp(0, 1) ** .7
    W = (.035 + .24 * c['sev'] * (.3 + .7 * L(c, 4))) * taper * (.8 + .5 * n2[:, :1]).clamp(.1, 2)
    W = torch.where(is_(c, 1), W * .3 + .022 * taper, W)
    ext = sstep(1.0, .7, (pz - c['pc'][:, 2:3]).abs() / (1.2 + 12 * L(c, 6)))
    ext = torch.where(across, torch.ones_like(ext), ext)
    W = W * ext
    px = c['pix'] * .6
    m = (1 - sstep(W - px, W + px, x.abs())) * (W / (W + px * .5)).clamp(0, 1) * sstep(.0, .03, taper)
    m2 = (1 - sstep(W * .3, W * .3 + px, br.abs())) * is_(c, 0) * .7 * (W / (W + px)) 
    m = torch.maximum(m, m2)
    bul = torch.exp(-(x / .5) ** 2) * ext * taper * c['topm']
    k = .45 + .55 * c['sev']
    a = st['alb']
    deep = a * a * .35 * (.5 + .5 * (x.abs() / (W + 1e-3)).clamp(0, 1))
    return put(st, deep, m * k, h=-m * (.12 + .5 * W) * k + .15 * bul * c['sev'] * L(c, 7), gl=.05)

def f_brown(c, st):
    e = c['edge'] + .25 * c['w'][:, 1:2] * (.3 + L(c, 0)) + .05 * c['w2'][:, 1:2]
    dep = (.15 + 1.6 * L(c, 1) ** 1.5)
    sf = .1 + .6 * L(c, 2)
    m = 1 - sstep(dep - sf * dep, dep + sf * dep, e)
    out = 1 - c['cutm']
    m = torch.maximum(m * c['cutm'], out)
    m = torch.where(is_(c, 1), torch.maximum(m, .35 * torch.ones_like(m)), m)       # face half gone too
    m = torch.where(is_(c, 2), m * sstep(-.9, .3, c['w'][:, 2:3] + .4), m)           # patchy
    m = torch.where(is_(c, 3), m * sstep(-.05, .08, torch.maximum(c['s'][0], -9 + 18 * (c['s'][0] < -8).float())), m)  # only the vanilla part
    T = lambda v: torch.tensor(v, device=m.device).view(1, 3, 1, 1)
    br = mix(T([.52, .31, .15]), T([.16, .075, .035]), L(c, 3) * c['sev'])
    br = br * (.55 + .45 * lum(st['alb']) / .7).clamp(max=1.2)
    return put(st, br, m * (.2 + .75 * c['sev']))

def f_bled(c, st):
    r = c['rec']
    s = c['s'][0]; col = r['col'][:, 1].unsqueeze(-1).unsqueeze(-1)
    base = r['col'][:, 0].unsqueeze(-1).unsqueeze(-1)
    dark = (lum(col) < lum(base)).float()
    s = torch.where(dark > 0, s, -s); dye = torch.where(dark > 0, col.expand_as(base), base.expand_as(base))
    # most saturated tint
    d2 = dye / (dye.amax(1, keepdim=True) + 1e-3); tint = (d2 ** 1.6) * (.25 + .6 * dye.amax(1, keepdim=True))
    tint = mix(dye, tint, .6)
    Ln = (.08 + .9 * c['sev'] * (.3 + .7 * L(c, 0))) * (1 + .5 * c['w2'][:, 2:3]).clamp(.3, 2)
    w = torch.exp(-((-s).clamp(min=0) / Ln) ** torch.where(is_(c, 1), torch.full_like(Ln, 1.), torch.full_like(Ln, 1.7)))
    fing = sstep(-.2, .8, c['w2'][:, 3:4] + .3)
    w = torch.where(is_(c, 2), w * fing, w)
    w = w * (s < 0).float() * (s > -8).float()
    return put(st, tint, w * (.35 + .55 * c['sev']) * c['reg'])

def f_drag(c, st):
    th = (L(c, 0) - .5) * .5 + torch.where(L(c, 1) < .5, torch.zeros_like(L(c, 0)), torch.full_like(L(c, 0), 1.57))
    uv = c['uvc'] 
    l = uv[:, :1] * torch.cos(th) + uv[:, 1:2] * torch.sin(th); t = -uv[:, :1] * torch.sin(th) + uv[:, 1:2] * torch.cos(th)
    t = t + (L(c, 2) - .5) * .04 * l * l
    f = 1.2 + 3 * L(c, 3)
    one = torch.zeros_like(t)
    n1 = fbm(c['vol'], torch.cat([t * f, l * .06, one + 4.4 + 9 * L(c, 5)], 1), 4, .75)
    g = n1[:, :1]
    thr = .6 - .7 * c['sev'] * L(c, 4)
    groove = sstep(thr, thr + .25, n1[:, 1:2])
    few = sstep(.7, .85, n1[:, 2:3] + .3 * c['sev'])
    h = torch.where(is_(c, 0), g * .5, torch.where(is_(c, 1), -groove, -few * 1.5))
    # chatter: regular ripples
    chat = torch.sin(l * (9 + 8 * L(c, 6)) + .8 * n1[:, 3:4])
    h = torch.where(is_(c, 3), chat * .55 * sstep(-.3, .6, c['w'][:, :1] + .3), h)
    k = c['reg'] * c['cutm'] * (.45 + .8 * c['sev'])
    sm = sstep(.6, 1.3, n1[:, 3:4]) * is_(c, 1) * .5 
    a = st['alb']
    st = put(st, a * (.72), (torch.maximum((-h).clamp(0, 1) * .8, 0 * h)) * k)
    st = put(st, c['pcol'], sm * k)
    st['h'] = st['h'] + h * k * .07
    return st

def f_gap(c, st):
    s = c['s'][0]
    n1 = fbm(c['vol'], torch.cat([c['p'][:, :1] * .4, c['p'][:, 2:3] * .4, torch.zeros_like(s) + 2.1 + 9 * L(c, 0)], 1), 3, .6)
    x = (c['q'][:, :1] / c['hs'][:, :1])
    W = (.02 + .14 * c['sev']) * (.75 + .6 * n1[:, :1]).clamp(.0, 2)
    W = torch.where(is_(c, 1), W * sstep(.2, 1., torch.where(L(c, 1) < .5, x, -x) + .5 - .6 * L(c, 2)), W)   # opens from one side
    W = torch.where(is_(c, 2), W * sstep(-.1, .5, n1[:, 1:2]), W)                        # broken
    W = W * (c['reg'] > .4).float() * (s > -8).float()
    px = c['pix'] * .6
    m = (1 - sstep(W - px, W + px, (s + .02 * c['fine'][:, :1] ).abs())) * (W / (W + px * .5))
    a = st['alb']
    return put(st, a * a * .22, m * (.4 + .6 * c['sev']), h=-(.1 + W) * m, gl=0.)

def f_wrinkle(c, st):
    p = torch.stack([c['q'][:, 0], c['p'][:, 2], torch.zeros_like(c['q'][:, 0])], 1)
    w = fbm(c['vol'], p * (.25 + .2 * L(c, 0)) + 3.1, 2)
    q = p + 1.4 * w[:, :3] * (.5 + L(c, 1))
    n1 = fbm(c['vol'], q * (.35 + .45 * L(c, 2)) + 11 * L(c, 5), 2)
    brain = (1 - (n1[:, :1] * 1.6).abs()).clamp(0, 1) ** 1.0
    wav = .5 + .5 * torch.sin((q[:, :1] * torch.cos(L(c, 3) * 6) + q[:, 1:2] * torch.sin(L(c, 3) * 6)) * (2.2 + 3 * L(c, 4)) + 2 * w[:, 3:4])
    fold = 1 - torch.abs(torch.sin(n1[:, 1:2] * 4.5 + n1[:, :1] * 2))
    hh = torch.where(is_(c, 0), -brain ** 2, torch.where(is_(c, 1), wav, -fold ** 2))
    k = c['topm'] * c['reg'] * (.2 + .8 * c['sev'])
    a = st['alb']
    val = torch.where(is_(c, 1), 1 - wav, -hh)
    st = put(st, a ** 1.25 * .7, (val.clamp(0, 1) ** 2) * k * .75, h=hh * k * .42, gl=.75)
    return st

def f_dimple(c, st):
    sc = 1.3 + 3 * L(c, 0)
    d, rb, vx, vy, r = dots(c['uv'] * sc + .15 * c['w2'][:, :2], L(c, 5) * 50, .35 + .6 * L(c, 1), .1, .28 + .2 * c['sev'], asp=1.3)
    dim = -torch.exp(-(d.clamp(max=3)) ** 2) * (r / sc) * .7
    a = L(c, 2) * 3.14; uv = c['uv'] + .35 * c['w'][:, :2]
    n1 = fbm(c['vol'], torch.cat([(uv[:, :1] * torch.cos(a) + uv[:, 1:2] * torch.sin(a)) * .9, (-uv[:, :1] * torch.sin(a) + uv[:, 1:2] * torch.cos(a)) * .12, torch.zeros_like(d) + 5 + 9 * L(c, 3)], 1), 3)
    wr = -(1 - (n1[:, :1] * 2.).abs()).clamp(0, 1) ** 3 * .14
    blis = fbm(c['vol'], torch.cat([uv * (1.1 + L(c, 4)), torch.zeros_like(d) + 8.], 1), 2)[:, :1]
    blis = -sstep(.2, .7, blis) * .1
    hh = torch.where(is_(c, 0), dim, torch.where(is_(c, 1), wr, blis))
    k = c['sidem'] * c['reg'] * (.25 + .75 * c['sev'])
    st = put(st, st['alb'] * .75, (-hh * 4).clamp(0, 1) * k * .5, h=hh * k * 1.3)
    return st

FLAWS = [f_specks, f_smears, f_white, f_veins, f_crackle, f_ash, f_gel, f_dos, f_pin, f_crack, f_brown, f_bled, f_drag, f_gap, f_wrinkle, f_dimple]
NVAR = [4, 3, 3, 3, 3, 5, 4, 3, 3, 4, 4, 3, 4, 3, 3, 3]
# which face must be in view: c cut, t top, s mould side, a any
FACE = ['a', 'c', 'a', 'c', 'c', 't', 'c', 'a', 'a', 't', 'c', 'c', 'c', 'c', 't', 's']

# ---------------------------------------------------------------- what deceives
def t_exfol(c, st):   # poppy seed, coffee, oats
    sc = torch.where(is_(c, 2), 1.1 + L(c, 0), 3 + 4 * L(c, 0))
    d, rb, vx, vy, r = dots(c['uv'] * sc, L(c, 5) * 50, .3 + .6 * L(c, 1), .1, torch.where(is_(c, 2), .32 + 0 * sc, .17 + .08 * L(c, 2)), asp=torch.where(is_(c, 0), 1.25 + 0 * sc, 1.9 + 0 * sc))
    m = 1 - sstep(.8, 1.1, d + .15 * c['fine'][:, :1])
    T = lambda v: torch.tensor(v, device=d.device).view(1, 3, 1, 1)
    col = torch.where(is_(c, 0), T([.03, .035, .05]), torch.where(is_(c, 1), T([.09, .045, .02]), T([.62, .46, .26])))
    return put(st, col * (.6 + .9 * rb), m * (.5 + .5 * (rb > .3).float()), h=.015 * m * (1 - d.clamp(0, 1)))

def t_botan(c, st):
    sc = .7 + .9 * L(c, 0)
    d, rb, vx, vy, r = dots(c['uv'] * sc, L(c, 5) * 50, .35 + .55 * L(c, 1), .18, .42, asp=1.6 + 2.2 * L(c, 2))
    m = (1 - sstep(.85, 1.1, d + .2 * c['fine'][:, :1])) * c['topm']
    T = lambda v: torch.tensor(v, device=d.device).view(1, 3, 1, 1)
    col = torch.where(is_(c, 0), T([.22, .15, .42]), torch.where(is_(c, 1), T([.80, .40, .05]), T([.55, .12, .16])))
    col = mix(col, T([.18, .22, .06]), (rb > .75).float())
    return put(st, col * (.5 + .8 * rb), m, h=.1 * m * (1 - d.clamp(0, 1) ** 2))

def t_mica(c, st):    # fine metallic vein following the pattern
    s = c['s'][0]
    s = torch.where(s < -8, (c['w'][:, 1:2]) * 1.2 + c['q'][:, 1:2] * .5, s)
    wd = .015 + .05 * L(c, 0)
    m = torch.exp(-(s / torch.sqrt(wd ** 2 + c['pix'] ** 2 * .25)) ** 2) * (wd / (wd + .3 * c['pix'])) * sstep(-.9, .2, c['w2'][:, :1] + .5)
    T = lambda v: torch.tensor(v, device=s.device).view(1, 3, 1, 1)
    col = torch.where(is_(c, 0), T([.60, .38, .10]), torch.where(is_(c, 1), T([.07, .05, .04]), T([.55, .28, .20])))
    return put(st, col, m * c['cutm'] * (.5 + .5 * L(c, 1)), gl=.9)

def t_glit(c, st):
    d, rb, vx, vy, r = dots(c['uv'] * (6 + 6 * L(c, 0)), L(c, 5) * 50, .2 + .5 * L(c, 1), .12, .2)
    m = (1 - sstep(.8, 1.1, d)) * torch.where(is_(c, 0), torch.maximum(c['topm'], .0 * d), torch.ones_like(d))
    T = lambda v: torch.tensor(v, device=d.device).view(1, 3, 1, 1)
    col = torch.where(rb > .6, T([1.6, 1.4, 1.0]), T([.45, .35, .18]))
    return put(st, col, m * .9)

def t_embed(c, st):
    d, rb, vx, vy, r = dots(c['uv'] * (.35 + .4 * L(c, 0)), L(c, 5) * 50, .6, .2, .36)
    dsq = torch.maximum(vx.abs(), vy.abs()) / r
    d = torch.where(is_(c, 1), dsq * 1.1 + (d > 8).float() * 9, d)
    m = (1 - sstep(.93, 1.0, d)) * c['cutm']
    col = mix(c['rec']['col'][:, 2].unsqueeze(-1).unsqueeze(-1), c['rec']['col'][:, 3].unsqueeze(-1).unsqueeze(-1), (rb > .5).float())
    return put(st, col, m)

def t_stamp(c, st):
    x = c['q'][:, :1] - (L(c, 0) - .5); y = c['q'][:, 1:2] - (L(c, 1) - .5); R = 1. + .8 * L(c, 2)
    rr = torch.sqrt(x * x + y * y + 1e-6); th = torch.atan2(y, x)
    k = torch.floor(3 + L(c, 3) * 6)
    flower = rr - R * (.55 + .3 * torch.cos(th * k)); ring = (rr - R).abs() - .07
    a = flower.abs() - .06
    grid = torch.maximum((torch.remainder(x * 1.7, 1.) - .5).abs() - .16, torch.maximum(y.abs() - .35, x.abs() - R * 1.2)) * .6
    grid = torch.maximum(grid, -((torch.remainder(y * 3.1 + torch.floor(x * 1.7) * .37, 1.) - .5).abs() - .12))
    sd = torch.where(is_(c, 0), torch.minimum(a, ring), torch.where(is_(c, 1), torch.minimum(grid, ring), flower))
    m = (1 - sstep(-.03, .05, sd)) * c['cutm']
    gold = torch.tensor([.55, .36, .1], device=m.device).view(1, 3, 1, 1)
    return put(st, mix(st['alb'] * .92, gold, (L(c, 4) > .7).float()), m, h=-.10 * m)

def t_dew(c, st):
    d, rb, vx, vy, r = dots(c['uv'] * (1.5 + 2.5 * L(c, 0)), L(c, 5) * 50, .3 + .6 * L(c, 1), .1, .35, skew=2.)
    m = 1 - sstep(.9, 1.05, d)
    prof = torch.sqrt((1 - d.clamp(0, 1) ** 2).clamp(min=0)) * r * .35
    return put(st, st['alb'] ** 1.1 * .88, m, h=prof * m * .5, gl=1.4)

def t_band(c, st):
    u = torch.where(is_(c, 0), c['q'][:, :1], c['q'][:, 1:2]) - (L(c, 0) - .5) * 1.2
    wd = .7 + 1.0 * L(c, 1)
    m = 1 - sstep(wd - .02, wd + .02, u.abs())
    T = lambda v: torch.tensor(v, device=m.device).view(1, 3, 1, 1)
    col = torch.where(L(c, 2) < .5, T([.52, .37, .22]), T([.85, .84, .8]))
    o = torch.where(is_(c, 0), c['q'][:, 1:2], c['q'][:, :1])
    row = torch.remainder(u * (3 + 2 * L(c, 3)), 1.)
    ink = ((row > .3) & (row < .72) & (hsh(torch.floor(o * 7), torch.floor(u * (3 + 2 * L(c, 3))), 3.) > .4) & (u.abs() < wd * .7) & (o.abs() < 1.9)).float()
    col = col * (1 - .8 * ink) * (1 + .05 * c['fine'][:, :1])
    st = put(st, col, m, gl=.1); st['h'] = mix(st['h'], torch.full_like(m, .06), m); st['lab'] = torch.maximum(st['lab'], m); st['tr'] = st['tr'] * (1 - m)
    return st

def t_crinkle(c, st):
    th = L(c, 0) * 3.14
    u = c['q'][:, :1] * torch.cos(th) + c['q'][:, 1:2] * torch.sin(th)
    st = dict(st); st['h'] = st['h'] + .1 * torch.sin(u * (5 + 4 * L(c, 1))) * c['cutm']
    return st

def t_mottle(c, st):
    n1 = fbm(c['vol'], c['p'] * (.5 + 1.2 * L(c, 0)) + 4.2, 4, .65)
    m = sstep(-.3, .8, n1[:, :1])
    return put(st, st['alb'] ** (1.15) * .9, m * (.3 + .5 * L(c, 1)))

def t_goldtop(c, st):
    n1 = fbm(c['vol'], c['p'] * .5 + 1.2 * c['w'][:, :3] + 3, 3)
    m = (1 - sstep(.05, .2 + .25 * L(c, 0), n1[:, :1].abs())) * c['topm'] * (.6 + .4 * n1[:, 1:2]).clamp(0, 1)
    T = lambda v: torch.tensor(v, device=m.device).view(1, 3, 1, 1)
    return put(st, torch.where(is_(c, 0), T([.62, .42, .13]), torch.where(is_(c, 1), T([.75, .74, .72]), T([.35, .18, .1]))), m * .85, gl=.8)

def t_salt(c, st):   # salt / sugar crystals strewn on top
    d, rb, vx, vy, r = dots(c['uv'] * (2.2 + 2 * L(c, 0)), L(c, 5) * 50, .3 + .4 * L(c, 1), .1, .25, asp=1.3)
    m = (1 - sstep(.85, 1.05, d)) * c['topm']
    T = lambda v: torch.tensor(v, device=m.device).view(1, 3, 1, 1)
    return put(st, mix(T([.85, .85, .86]), T([.9, .6, .5]), is_(c, 1).float()), m * .8, h=.08 * m, gl=1.2)

def t_bevel(c, st):  # a planed, brighter bevel along the rims; harmless cut mark
    m = (1 - sstep(.12 + .2 * L(c, 0), .14 + .2 * L(c, 0), c['edge'])) * c['cutm']
    return put(st, st['alb'] * .93 + .03, m * .7, h=-(.14 - c['edge']).clamp(min=0) * m * .8, gl=.8)

TRICKS = [t_exfol, t_botan, t_mica, t_glit, t_embed, t_stamp, t_dew, t_band, t_crinkle, t_mottle, t_goldtop, t_salt, t_bevel]
TFACE = ['a', 't', 'c', 'a', 'c', 'c', 'a', 'c', 'c', 'a', 't', 't', 'c']
