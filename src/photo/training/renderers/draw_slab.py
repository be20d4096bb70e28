"""draw(n, (H, W), seed, device, clean): soap as solids under a macro lens."""
import math
import os
import random
import sys
import torch
import torch.nn.functional as F_
sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from slab_core import *
import slab_mat as SM

NAMES = ['coloured-specks', 'smears', 'white-specks', 'translucent-veins', 'crackle-network', 'powdery-film',
         'dark-centre-ring', 'orange-spots', 'pinholes', 'crack', 'brown-outside-in', 'colour-bled', 'drag-lines',
         'layer-gap', 'wrinkled-top', 'mould-dimples']
BASES = [(.93, .88, .77), (.95, .92, .86), (.88, .80, .66), (.90, .85, .70), (.78, .64, .46), (.94, .90, .80),
         (.97, .95, .92), (.86, .78, .70)]
HUES = [(.80, .45, .50), (.93, .70, .72), (.55, .42, .62), (.72, .62, .82), (.35, .50, .68), (.60, .75, .85),
        (.42, .58, .42), (.66, .74, .55), (.30, .42, .33), (.85, .62, .30), (.92, .80, .45), (.75, .42, .28),
        (.50, .33, .22), (.22, .21, .22), (.35, .25, .22), (.30, .62, .62), (.85, .50, .38), (.62, .20, .28),
        (.80, .72, .60), (.96, .95, .93), (.18, .28, .48), (.88, .58, .72), (.62, .60, .58)]
POSES = ['lie', 'stand', 'edge', 'stack', 'row', 'loaf', 'group', 'close', 'held', 'lean', 'cutloaf']
TOPF = {5, 9, 14}


def jit(rg, c, s=.05):
    k = rg.uniform(.92, 1.06)
    return [min(.98, max(.03, v * k + rg.gauss(0, s * .5))) for v in c]


def Ry(t):
    c, s = math.cos(t), math.sin(t)
    return [[c, 0, s], [0, 1, 0], [-s, 0, c]]


def Rx(t):
    c, s = math.cos(t), math.sin(t)
    return [[1, 0, 0], [0, c, -s], [0, s, c]]


def Rz(t):
    c, s = math.cos(t), math.sin(t)
    return [[c, -s, 0], [s, c, 0], [0, 0, 1]]


def mm(a, b):
    return [[sum(a[i][k] * b[k][j] for k in range(3)) for j in range(3)] for i in range(3)]


STAND = [[1, 0, 0], [0, 1, 0], [0, 0, 1]]
LIE = [[1, 0, 0], [0, 0, 1], [0, -1, 0]]
LIEB = [[-1, 0, 0], [0, 0, 1], [0, 1, 0]]
EDGE = [[0, -1, 0], [1, 0, 0], [0, 0, 1]]


def cross(a, b):
    return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]


def norm(a):
    l = math.sqrt(sum(v * v for v in a)) + 1e-9
    return [v / l for v in a]


def pose_ok(pose, fl):
    for f in fl:
        if f in TOPF and pose in ('lie', 'edge', 'stack'):
            return False
        if f in (6, 10, 12) and pose in ('loaf',):
            return False
        if f == 15 and pose in ('close', 'held'):
            return False
    return True


def sample(rg, clean):
    """one picture's numbers"""
    D = {}
    D['kind'] = 1 if rg.random() < .035 else 0
    cl = rg.random() < clean
    nf = 0 if (cl or D['kind']) else rg.choices([1, 2, 3], [.66, .24, .10])[0]
    D['fl'] = sorted(rg.sample(range(16), nf))
    D['tricky'] = int((cl and rg.random() < .5) or D['kind'] == 1)
    des = rg.choices(range(8), [.24, .14, .08, .20, .12, .06, .08, .08])[0]
    if 11 in D['fl'] and des in (0, 7):
        des = rg.choice([1, 2, 3, 4, 5, 6])
    if 13 in D['fl'] and rg.random() < .75:
        des = 1
    D['des'] = des
    lightbase = rg.random() < .75
    c0 = jit(rg, rg.choice(BASES if lightbase else HUES))
    pal = [c0] + [jit(rg, rg.choice(HUES)) for _ in range(3)]
    if rg.random() < .3:
        pal[rg.randrange(1, 4)] = jit(rg, rg.choice(BASES))
    if 4 in D['fl'] and rg.random() < .7:
        pal[0] = jit(rg, rg.choice(HUES))
    if 10 in D['fl']:
        pal[0] = jit(rg, rg.choice(BASES[:6]))
    hm = rg.choice([0, .15, .35, .55])
    pal = [pal[0]] + [[mix_(v, pal[0][i], hm) for i, v in enumerate(c)] for c in pal[1:]]
    D['pal'] = [lin(c) for c in pal]
    D['nc'] = rg.choice([2, 2, 3, 4])
    D['nl'] = rg.choice([2, 2, 3, 3, 4])
    D['wav'] = rg.choice([.05, .15, .3, .6]) if des <= 2 else rg.uniform(.2, .8)
    D['f1'] = rg.uniform(1.6, 4.5)
    D['edge'] = rg.choice([.03, .04, .12])
    D['mot'] = rg.choice([.03, .06, .12])
    D['rind'] = rg.random()
    D['bump'] = rg.uniform(.15, 1.)
    D['wire'] = rg.uniform(0, .8)
    wa = rg.uniform(-.3, .3) + rg.choice([0, 1.57])
    D['wc'], D['ws'] = math.cos(wa), math.sin(wa)
    D['mica'] = float(rg.random() < .18)
    D['mcol'] = lin(rg.choice([(.80, .62, .28), (.85, .84, .82), (.75, .45, .28), (.2, .18, .18)]))
    D['gl'] = rg.choice([.08, .2, .35, .55])
    D['o'] = rg.uniform(0, 30)
    pose = rg.choices(POSES, [.15, .13, .07, .08, .09, .08, .10, .12, .08, .06, .04])[0]
    while not pose_ok(pose, D['fl']):
        pose = rg.choice(POSES)
    D['pose'] = pose
    # --- the bars
    rnd = pose in ('lie', 'stack', 'group', 'held', 'close') and rg.random() < .14 and not (set(D['fl']) & {5, 9, 14, 15})
    a, b, c = rg.uniform(2.9, 4.2), rg.uniform(2.2, 3.4), rg.uniform(.95, 1.7)
    if rg.random() < .2:
        a, b = b, a
    if rnd:
        b = a * rg.choice([1., 1., .72])
    r = rg.choice([.04, .07, .12, .3, .6 if rnd else .2])
    r = min(r, c * .6)
    tex = rg.random()
    wantflat = 14 in D['fl'] or 9 in D['fl']
    tamp = 0. if (tex < .4 or rnd) else rg.uniform(.1, .75) * (.4 if wantflat else 1)
    mound = rg.choice([0, 0, .25, .6]) if not rnd else 0
    base = dict(a=a, b=b, c=c, r=r, tamp=tamp, tk=rg.uniform(.9, 2.2), tph=rg.uniform(0, 6), mound=mound, round=float(rnd), bend=rg.choice([0, 0, .08, .2]), mat=0)
    slots = []

    def put(R, ctr, zo=0, **kw):
        s = dict(base)
        s.update(kw)
        s['R'], s['ctr'], s['zo'] = R, ctr, zo
        slots.append(s)
        return s
    el = rg.uniform(18, 75)
    az = rg.uniform(-25, 25)
    yaw = math.radians(rg.uniform(-50, 50))
    D['hand'] = 0
    size = max(a, b) * 2
    tgt = [0, c, 0]
    zo = rg.uniform(0, 20)
    frac = rg.uniform(.5, 1.05)
    if set(D['fl']) & TOPF:
        el = rg.uniform(32, 70)
    if pose == 'lie':
        put(mm(Ry(yaw * 3.6), rg.choice([LIE, LIEB])), [0, c, 0], zo)
        el = rg.uniform(30, 88)
    elif pose in ('stand', 'close'):
        R = STAND
        if pose == 'close' and rg.random() < .55 and not (set(D['fl']) & (TOPF | {15})):
            put(mm(Ry(yaw * 2), LIE), [0, c, 0], zo)
            el = rg.uniform(40, 88)
            tgt = [rg.uniform(-.5, .5) * a, 2 * c, rg.uniform(-.4, .4) * b]
        else:
            put(Ry(yaw), [0, b, 0], zo)
            el = rg.uniform(12, 60) if not (set(D['fl']) & TOPF) else rg.uniform(35, 70)
            up = bool(set(D['fl']) & TOPF)
            tgt = [rg.uniform(-.2, .2) * a, b * (1.7 if (up and pose == 'close') else rg.uniform(.8, 1.3)), c * .6]
        if pose == 'close':
            frac = rg.uniform(1.2, 2.3)
    elif pose == 'edge':
        put(mm(Ry(yaw), EDGE), [0, a, 0], zo)
        tgt = [0, a, 0]
        el = rg.uniform(10, 55)
    elif pose == 'stack':
        k = rg.randint(2, 4)
        y = 0
        for j in range(k):
            put(mm(Ry(yaw + rg.gauss(0, .25)), LIE), [rg.gauss(0, .25), y + c, rg.gauss(0, .25)], zo + 2 * c * j)
            y += 2 * c + .01
        tgt = [0, y * .6, 0]
        size = max(size, y)
        el = rg.uniform(15, 60)
    elif pose in ('row', 'cutloaf'):
        k = rg.randint(3, 5)
        gap = rg.choice([.06, .25, .9]) if pose == 'row' else .05
        Y = Ry(yaw * (1. if pose == 'row' else .8))
        zz = 0
        for j in range(k):
            hc = c * rg.uniform(.93, 1.07)
            if pose == 'cutloaf' and j == k - 1:
                hc = rg.uniform(4, 7)
            zz += hc
            pz = -zz
            put(mm(Y, Ry(rg.gauss(0, .03 if gap < .5 else .12))), [Y[0][2] * pz + rg.gauss(0, .08), b, Y[2][2] * pz], zo + pz, c=hc)
            zz += hc + gap + (rg.uniform(1, 2) if pose == 'cutloaf' and j == 0 else 0)
        tgt = [0, b, 0]
        size = max(size, zz * .8)
        frac = rg.uniform(.7, 1.3)
        el = max(15, el * .75)
    elif pose == 'loaf':
        L = rg.uniform(6, 11)
        yw = math.radians(rg.choice([-1, 1]) * rg.uniform(20, 75))
        put(Ry(yw), [0, b, 0], zo, c=L)
        size = L * 1.7
        frac = rg.uniform(.7, 1.25)
        tgt = [0, b, 0]
        el = rg.uniform(22, 70)
        tgt = [math.sin(yw) * L * .35, b * 1.2, math.cos(yw) * L * .35]
    elif pose == 'group':
        k = rg.randint(2, 5)
        pts = [(0, 0)]
        for j in range(1, k):
            th = j * 2.2 + rg.uniform(-.3, .3)
            pts.append((math.cos(th) * size * rg.uniform(1.0, 1.15), math.sin(th) * size * rg.uniform(1.0, 1.15)))
        mode = rg.choice(['lie', 'mix', 'stand']) if not (set(D['fl']) & TOPF) else 'stand'
        for (px, pz) in pts:
            if mode == 'stand' or (mode == 'mix' and rg.random() < .5 and not rnd):
                put(Ry(rg.uniform(-.6, .6)), [px, b, pz], zo + rg.uniform(0, 12))
            else:
                put(mm(Ry(rg.uniform(-3, 3)), LIE), [px, c, pz], zo + rg.uniform(0, 12))
        frac = rg.uniform(.3, .6)
        el = rg.uniform(25, 85)
        tgt = [0, c, 0]
    elif pose == 'held':
        R = mm(Ry(math.radians(rg.uniform(-35, 35))), mm(Rx(math.radians(rg.uniform(-5, 30))), Rz(math.radians(rg.uniform(-20, 20)))))
        y = rg.uniform(14, 22)
        put(R, [0, y, 0], zo)
        D['hand'] = 1
        tgt = [0, y - .6, 0]
        el = rg.uniform(5, 50)
        frac = rg.uniform(.4, .75)
    elif pose == 'lean':
        put(Ry(yaw * .4), [0, b, 0], zo)
        Y = Ry(yaw * .4)
        t = math.radians(rg.uniform(14, 30))
        R2 = mm(Y, Rx(-t))
        off = c + c / math.cos(t) + b * math.sin(t) + .05
        put(R2, [Y[0][2] * off + rg.uniform(-1, 1), b * math.cos(t) + c * math.sin(t), Y[2][2] * off], zo + 2 * c)
        tgt = [0, b, c]
        el = rg.uniform(15, 55)
    if D['kind'] == 0 and pose not in ('held', 'close') and rg.random() < .3 and len(slots) < 5:   # a thing beside
        th = rg.uniform(2.4, 5.2)
        q = size * rg.uniform(1.1, 1.6) + 2
        h = rg.uniform(.5, 4)
        put(Ry(rg.uniform(0, 3)), [math.cos(th) * q, h, -abs(math.sin(th)) * q], 0, a=rg.uniform(.8, 4), b=h, c=rg.uniform(.8, 4), r=.2, tamp=0, mound=0, mat=rg.randint(1, 4), round=0.)
        if slots[-1]['mat'] == 3:
            slots[-1]['R'] = mm(slots[-1]['R'], LIE)
            slots[-1].update(round=1.)
            slots[-1]['c'] = h
            slots[-1]['b'] = slots[-1]['a']
    if D['kind'] == 1:
        for s in slots:
            s['mat'] = rg.randint(1, 4)
            s['tamp'] *= .3
            if rg.random() < .5:
                s['a'] *= rg.uniform(.5, 1.4)
                s['r'] = min(s['a'], s['b'], s['c']) * rg.uniform(.1, .95)
    D['slots'] = slots
    D['propc'] = [lin(jit(rg, rg.choice([(.6, .42, .25), (.3, .3, .3), (.9, .9, .88), (.35, .5, .38), (.75, .6, .4), (.55, .22, .2), (.25, .35, .5)]), .08)) for _ in range(4)]
    # --- camera
    fov = math.radians(rg.choice([24, 32, 42, 55]))
    dist = size / frac / (2 * math.tan(fov / 2)) + c
    dist = max(dist, size * .55)
    e, z_ = math.radians(el), math.radians(az)
    cam = [tgt[0] + dist * math.sin(z_) * math.cos(e), tgt[1] + dist * math.sin(e), tgt[2] + dist * math.cos(z_) * math.cos(e)]
    fwd = norm([tgt[i] - cam[i] for i in range(3)])
    right = norm(cross(fwd, [0, 1, 0] if el < 86 else [0, 0, -1]))
    up = cross(right, fwd)
    roll = rg.gauss(0, .07) if rg.random() < .8 else rg.uniform(-.5, .5)
    cr, sr = math.cos(roll), math.sin(roll)
    right, up = [cr * right[i] + sr * up[i] for i in range(3)], [-sr * right[i] + cr * up[i] for i in range(3)]
    D.update(cam=cam, fwd=fwd, right=right, up=up, tf=math.tan(fov / 2), cx=rg.gauss(0, .10), cy=rg.gauss(0, .08))
    front = min(sum((s['ctr'][i] - cam[i]) * fwd[i] for i in range(3)) - .6 * s['c'] for s in slots[:1])
    D['zf'] = max(1.5, mix_(front, dist, rg.uniform(-.1, 1.0)) + rg.gauss(0, .1))
    D['ap'] = rg.choice([.0, .02, .04, .07, .12])
    if nf and rg.random() < .6:
        D['ap'] *= .4
    # --- light
    la = math.radians(az + rg.choice([-1, 1]) * (rg.uniform(50, 130) if rg.random() < .75 else rg.uniform(0, 180)))
    le = math.radians(rg.uniform(12, 50) if rg.random() < .75 else rg.uniform(50, 85))
    D['L'] = [math.sin(la) * math.cos(le), math.sin(le), math.cos(la) * math.cos(le)]
    k1 = rg.choice([2700, 3000, 3500, 4200, 5000, 5600, 6500])
    D['key'] = [v * rg.uniform(.9, 1.1) for v in kelvin(k1)]
    D['keyp'] = rg.uniform(.5, 1.3)
    D['amb'] = kelvin(rg.choice([k1, 5000, 6500, 7500, 4000]))
    D['ambp'] = rg.uniform(.25, .95)
    D['pen'] = rg.choice([3., 5., 9., 30.])
    l2 = la + rg.uniform(1.5, 4.5)
    e2 = rg.uniform(.3, 1.3)
    D['L2'] = [math.sin(l2) * math.cos(e2), math.sin(e2), math.cos(l2) * math.cos(e2)]
    D['win'] = rg.uniform(0, 1.2)
    D['gobo'] = float(rg.random() < .12)
    D['wbk'] = kelvin(mix_(k1, 5600, rg.uniform(0, .5)))
    D['wb'] = [math.exp(rg.gauss(0, .05)) for _ in range(3)]
    D['wbs'] = rg.uniform(.5, 1.0)
    D['exp'] = rg.uniform(.85, 1.3)
    D['con'] = rg.uniform(0, .5)
    D['vig'] = rg.choice([0, .15, .4])
    D['noise'] = rg.choice([.002, .004, .008, .015])
    D['soft'] = rg.choice([0, 0, .5, .9])
    D['sharp'] = rg.choice([0, .3, .6, 1.1])
    D['q'] = rg.choice([96, 92, 85, 75, 60, 45])
    D['tr'] = rg.uniform(.3, 1.3)
    # --- table
    D['gt'] = rg.choices(range(10), [.16, .20, .10, .10, .10, .08, .07, .06, .07, .06])[0]
    if D['gt'] in (1, 7):
        g = rg.choice([(.62, .45, .29), (.45, .30, .18), (.78, .63, .44), (.30, .20, .14), (.55, .52, .48), (.85, .82, .76)])
        g2 = [v * .6 for v in g]
    elif D['gt'] in (0, 2, 3, 8):
        g = rg.choice([(.9, .88, .84), (.8, .74, .64), (.35, .38, .42), (.45, .52, .45), (.7, .45, .42), (.2, .22, .28), (.85, .8, .7), (.55, .6, .7), (.12, .12, .12)])
        g2 = rg.choice([(.7, .2, .2), (.2, .3, .55), (.9, .9, .88), (.3, .4, .3)])
    else:
        g = rg.choice([(.92, .91, .89), (.82, .80, .77), (.5, .5, .5), (.75, .65, .5), (.3, .33, .33)])
        g2 = rg.choice([(.45, .45, .47), (.6, .5, .4), (.7, .35, .25), (.2, .22, .22)])
    D['g1'], D['g2'] = lin(jit(rg, g)), lin(jit(rg, g2))
    D['ggl'] = rg.choice([.0, .1, .35]) if D['gt'] in (0, 1, 4, 6) else 0.
    D['wall'] = lin(jit(rg, rg.choice([(.8, .78, .74), (.5, .5, .48), (.3, .35, .4), (.6, .5, .4), (.2, .2, .2)])))
    D['wz'] = rg.uniform(15, 50)
    D['skin'] = lin(jit(rg, rg.choice([(.93, .76, .66), (.85, .65, .52), (.70, .50, .38), (.48, .32, .24), (.33, .22, .17)]), .02))
    D['hv'] = rg.randint(0, 1)

    def fq():
        d = dict(st=rg.uniform(.2, 1.), ext=rg.choice([rg.uniform(.1, .4), rg.uniform(.4, .8), 1.1]), v=rg.randint(0, 2), o=rg.uniform(0, 30), nlq=rg.randint(2, max(2, D['nl'])))
        for j in range(4):
            d['r%d' % j] = rg.random()
        d['pig'] = lin(rg.choice([(.12, .12, .12), (.2, .15, .45), (.5, .1, .15), (.1, .3, .2), (.45, .25, .1), (.1, .2, .45), (.55, .12, .4)]))
        d['white'] = lin(rg.choice([(.97, .96, .93), (.94, .95, .96), (.93, .9, .82)]))
        d['org'] = lin(jit(rg, rg.choice([(.85, .52, .12), (.75, .42, .1), (.65, .35, .12), (.9, .62, .2)]), .04))
        d['brown'] = lin(jit(rg, rg.choice([(.42, .25, .13), (.55, .36, .2), (.3, .18, .11), (.65, .47, .28)]), .03))
        d['mcol3'] = lin(rg.choice([(.85, .68, .3), (.9, .9, .9), (.8, .5, .35), (.5, .6, .9), (.3, .3, .3)]))
        d['pet'] = lin(jit(rg, rg.choice([(.75, .3, .4), (.85, .65, .2), (.45, .38, .65), (.3, .35, .5), (.55, .5, .3), (.9, .8, .75)]), .05))
        d['emb'] = lin(jit(rg, rg.choice(HUES)))
        d['paper'] = lin(rg.choice([(.93, .92, .9), (.72, .58, .42), (.2, .2, .2), (.85, .8, .7)]))
        d['ink'] = lin(rg.choice([(.1, .1, .1), (.35, .2, .15), (.2, .35, .3)])) if sum(d['paper']) > .6 else lin((.9, .88, .8))
        return d
    D['fq'] = [fq() for _ in D['fl']]
    nd = rg.choice([1, 1, 2]) if D['tricky'] else (1 if (nf and rg.random() < .25) else 0)
    if D['kind']:
        nd = 0
    dl = rg.sample(range(len(SM.DECOYS)), nd)
    if rnd and 9 in dl:
        dl.remove(9)
    D['dl'] = dl
    D['dq'] = [fq() for _ in dl]
    if cl and not dl:
        D['tricky'] = 0 if D['kind'] == 0 else 1
    return D


def mix_(a, b, t):
    return a + (b - a) * t


def T(v, dev):
    return torch.tensor(v, dtype=torch.float32, device=dev)


def S(Ds, k, dev):
    t = T([d[k] for d in Ds], dev)
    return t.view(-1, 1, 1) if t.dim() == 1 else t


def packq(qs, dev):
    o = {}
    for k in qs[0]:
        o[k] = S(qs, k, dev)
    return o


def subF(Fd, i):
    o = {}
    for k, v in Fd.items():
        if k == 'col':
            continue
        o[k] = v[:, i] if k in ('n', 'n2') else v[i]
    o['col'] = SM.make_col(o['pal'], o['nc'])
    return o


def apply_list(M, Fd, Ds, lists, fns, dev):
    """lists: per picture list of (fn index, q)"""
    for depth in range(max([len(l) for l in lists] + [0])):
        by = {}
        for j, l in enumerate(lists):
            if depth < len(l):
                by.setdefault(l[depth][0], []).append(j)
        for f in sorted(by):
            ii = by[f]
            i = torch.tensor(ii, device=dev)
            q = packq([lists[j][depth][1] for j in ii], dev)
            m = {k: v[i] for k, v in M.items()}
            fns[f](m, subF(Fd, i), q)
            for k in M:
                M[k][i] = m[k].clamp(.003, .97) if k == 'alb' else m[k]
    return M


def hand_sdf(x, y, z, caps, k=.45):
    d = None
    for (a, b, r0, r1) in caps:
        bx, by, bz = [b[i] - a[i] for i in range(3)]
        px, py, pz = x - a[0], y - a[1], z - a[2]
        h = ((px * bx + py * by + pz * bz) / (bx * bx + by * by + bz * bz + 1e-6)).clamp(0, 1)
        e = torch.sqrt((px - bx * h) ** 2 + (py - by * h) ** 2 + (pz - bz * h) ** 2 + 1e-8) - (r0 + (r1 - r0) * h)
        if d is None:
            d = e
        else:
            w = (.5 + .5 * (d - e) / k).clamp(0, 1)
            d = d + (e - d) * w - k * w * (1 - w)
    return d


def hand_caps(a, b, c, v, dev):
    """in the bar's local frame; a,b,c [k,1,1]"""
    z = a * 0
    if v == 0:   # pinch from below: thumb before, fingers behind and beside
        P = [((-1.2 + z, -b - 5, z - .5), (1.6 + z, -b - 4.6, z - .8), 2.0, 1.8),
             ((.2 + z, -b - 12, z - 1), (.2 + z, -b - 5, z - .6), 2.6, 2.1),
             ((1.9 + z, -b - 4, z + .9), (1.4 + z, -b - 1.2, c + 1.35), 1.15, .95),
             ((1.4 + z, -b - 1.2, c + 1.35), (.5 + z, -b + 1.5, c + .75), .92, .72)]
        for j in range(4):
            u = -2.6 + 1.75 * j
            P.append(((u * .8 + z, -b - 3.6, z - .9), (u + z, -b + 1.0 + .4 * (j % 2), -c - .85), .9, .75))
        P.append(((-2.8 + z, -b - 3.2, z - .3), (-2.9 + z, -b - .65, c * .3), .85, .65))
    else:        # grip by the sides, from the left
        P = [((-a - 5.5, z - 1.0, z - 1.5), (-a - 4.5, z + 1.6, z - 1.5), 2.2, 2.0),
             ((-a - 12, z - 2, z - 1), (-a - 5, z - .2, z - 1.2), 2.6, 2.2),
             ((-a - 4, z - 1.6, z + .4), (-a - 1.3, z - 1.3, c + 1.2), 1.15, .95),
             ((-a - 1.3, z - 1.3, c + 1.2), (-a + 1.5, z - .7, c + .75), .9, .7)]
        for j in range(4):
            u = -1.9 + 1.55 * j
            P.append(((-a - 3.5, u * .8 + z, z - 1.4), (-a + 1.2, u + z, -c - .85), .88, .74))
        P.append(((-a - 3., z + 2.6, z - .5), (-a - .62, z + 1.5, z + c * .2), .85, .6))
    return P


PK = ['a', 'b', 'c', 'r', 'tamp', 'tk', 'tph', 'mound', 'round', 'bend', 'zo', 'mat']


def chunk(Ds, H, W, ss, dev, gen):
    n = len(Ds)
    h, w = int(round(H * ss)), int(round(W * ss))
    K = max(len(d['slots']) for d in Ds)
    dummy = dict(Ds[0]['slots'][0])
    dummy.update(a=.01, b=.01, c=.01, r=.001, ctr=[0, -500., 0], R=STAND, tamp=0, mound=0, bend=0, round=0, mat=9)
    sl = [d['slots'] + [dummy] * (K - len(d['slots'])) for d in Ds]
    PT = {k: T([[float(s[k]) for s in q] for q in sl], dev) for k in PK}
    RT = T([[s['R'] for s in q] for q in sl], dev)      # n,K,3,3
    CT = T([[s['ctr'] for s in q] for q in sl], dev)

    def slot(k):
        p = {q: PT[q][:, k].view(n, 1, 1) for q in PK}
        R = [[RT[:, k, i, j].view(n, 1, 1) for j in range(3)] for i in range(3)]
        c = [CT[:, k, i].view(n, 1, 1) for i in range(3)]
        return p, R, c
    cam = T([d['cam'] for d in Ds], dev)
    fw, rt, up = [T([d[k] for d in Ds], dev) for k in ('fwd', 'right', 'up')]
    tf = S(Ds, 'tf', dev)
    m = min(h, w)
    u = ((torch.arange(w, device=dev) + .5 - w / 2) / (m / 2)).view(1, 1, w).expand(n, h, w) + S(Ds, 'cx', dev)
    v = -((torch.arange(h, device=dev) + .5 - h / 2) / (m / 2)).view(1, h, 1).expand(n, h, w) + S(Ds, 'cy', dev)

    def comp(a, i):
        return a[:, i].view(n, 1, 1)
    d = [comp(fw, i) + tf * (u * comp(rt, i) + v * comp(up, i)) for i in range(3)]
    ln = torch.sqrt(d[0] ** 2 + d[1] ** 2 + d[2] ** 2)
    d = [q / ln for q in d]
    o = [comp(cam, i) for i in range(3)]
    fz = 1 / ln       # cos to the axis
    FAR = 400.
    # table and wall
    tg = torch.where(d[1] < -1e-3, -o[1] / d[1].clamp(max=-1e-3), torch.full_like(ln, FAR)).clamp(max=FAR)
    wz = S(Ds, 'wz', dev)
    tw = torch.where(d[2] < -1e-3, (-wz - o[2]) / d[2].clamp(max=-1e-3), torch.full_like(ln, FAR)).clamp(max=FAR)
    best = torch.minimum(tg, tw)
    idx = torch.where(tg <= tw, torch.full_like(ln, -1.), torch.full_like(ln, -2.)).long()
    pix = 2 * tf / m
    for k in range(K):
        p, R, c = slot(k)
        lo = local(R, c, o[0], o[1], o[2])
        z0 = [torch.zeros_like(c[0])] * 3
        ld = local(R, z0, d[0], d[1], d[2])
        pad = p['tamp'] * .9 + p['mound'] + .02
        hb = p['c'] + p['bend'] * .7 + .01
        t1, t2 = boxhit(p['a'] + .01, p['b'] + pad, hb, lo[0], lo[1], lo[2], ld[0], ld[1], ld[2])
        ok = (t2 > t1.clamp(min=0)) & (t1 < best)
        t = t1.clamp(min=.1)
        for it in range(15):
            dd = sdf(p, lo[0] + ld[0] * t, lo[1] + ld[1] * t, lo[2] + ld[2] * t)
            t = t + dd * .85
        hit = ok & (dd < .015 + pix * t) & (t < t2 + .3) & (t < best) & (t > .3)
        best = torch.where(hit, t, best)
        idx = torch.where(hit, torch.full_like(idx, k), idx)
    hl = [j for j in range(n) if Ds[j]['hand']]
    caps_by = {}
    for hv in (0, 1):
        hh = [j for j in hl if Ds[j]['hv'] == hv]
        if not hh:
            continue
        i = torch.tensor(hh, device=dev)
        p, R, c = slot(0)
        p = {q: p[q][i] for q in p}
        R = [[R[a][b][i] for b in range(3)] for a in range(3)]
        c = [q[i] for q in c]
        caps = hand_caps(p['a'], p['b'], p['c'], hv, dev)
        caps_by[hv] = (i, p, R, c, caps)
        lo = local(R, c, o[0][i], o[1][i], o[2][i])
        ld = local(R, [torch.zeros_like(c[0])] * 3, d[0][i], d[1][i], d[2][i])
        t = torch.zeros_like(best[i]) + 2.
        for it in range(36):
            dd = hand_sdf(lo[0] + ld[0] * t, lo[1] + ld[1] * t, lo[2] + ld[2] * t, caps)
            t = (t + dd).clamp(max=FAR)
        bi = best[i]
        hit = (dd < .03) & (t < bi)
        best[i] = torch.where(hit, t, bi)
        ii = idx[i]
        idx[i] = torch.where(hit, torch.full_like(ii, -3), ii)
    P = [o[q] + d[q] * best for q in range(3)]
    depth = best * fz
    # per pixel slot numbers
    gi = idx.clamp(min=0).view(n, -1)

    def gat(tn):
        return torch.gather(tn, 1, gi).view(n, h, w)
    s = {k: gat(PT[k]) for k in PK}
    R = [[gat(RT[:, :, i, j].contiguous()) for j in range(3)] for i in range(3)]
    c = [gat(CT[:, :, i].contiguous()) for i in range(3)]
    L = local(R, c, P[0], P[1], P[2])
    bar = (idx >= 0)
    e = .012
    nl = [0, 0, 0]
    for sx, sy, sz in ((1, -1, -1), (-1, -1, 1), (-1, 1, -1), (1, 1, 1)):
        dd = sdf(s, L[0] + e * sx, L[1] + e * sy, L[2] + e * sz)
        nl = [nl[0] + sx * dd, nl[1] + sy * dd, nl[2] + sz * dd]
    q = torch.sqrt(nl[0] ** 2 + nl[1] ** 2 + nl[2] ** 2 + 1e-12)
    nl = [a / q for a in nl]
    N = [R[i][0] * nl[0] + R[i][1] * nl[1] + R[i][2] * nl[2] for i in range(3)]
    gN = [0., 1., 0.]
    wN = [0., 0., 1.]
    N = [torch.where(bar, N[i], torch.where(idx == -1, torch.full_like(ln, gN[i]), torch.full_like(ln, wN[i]))) for i in range(3)]
    for hv, (i, p, R2, c2, caps) in caps_by.items():
        Lh = local(R2, c2, P[0][i], P[1][i], P[2][i])
        g = [0, 0, 0]
        for sx, sy, sz in ((1, -1, -1), (-1, -1, 1), (-1, 1, -1), (1, 1, 1)):
            dd = hand_sdf(Lh[0] + .03 * sx, Lh[1] + .03 * sy, Lh[2] + .03 * sz, caps)
            g = [g[0] + sx * dd, g[1] + sy * dd, g[2] + sz * dd]
        q = torch.sqrt(g[0] ** 2 + g[1] ** 2 + g[2] ** 2 + 1e-12)
        g = [a / q for a in g]
        hm = idx[i] == -3
        for a in range(3):
            N[a][i] = torch.where(hm, R2[a][0] * g[0] + R2[a][1] * g[1] + R2[a][2] * g[2], N[a][i])
    # shadow and occlusion, from plain solids
    Ld = [comp(T([q['L'] for q in Ds], dev), i) for i in range(3)]
    pen = S(Ds, 'pen', dev)
    sh = torch.ones_like(ln)
    ao = torch.ones_like(ln)
    Q = [P[i] + N[i] * .05 for i in range(3)]
    for k in range(K):
        p, Rk, ck = slot(k)
        lo = local(Rk, ck, Q[0], Q[1], Q[2])
        ld = local(Rk, [torch.zeros_like(ck[0])] * 3, Ld[0], Ld[1], Ld[2])
        t1, t2 = boxhit(p['a'] + 1.5, p['b'] + 1.5, p['c'] + 1.5, lo[0], lo[1], lo[2], ld[0], ld[1], ld[2])
        ok = (t2 > t1.clamp(min=0))
        t = t1.clamp(min=.04)
        res = torch.ones_like(ln)
        own = idx == k
        for it in range(11):
            dd = sdf(p, lo[0] + ld[0] * t, lo[1] + ld[1] * t, lo[2] + ld[2] * t, False)
            res = torch.minimum(res, torch.where(t < t2, .5 + .5 * pen * dd / t.clamp(min=.05), torch.ones_like(res)))
            t = t + dd.abs().clamp(.03, 2.)
        res = sstep(0, 1, res.clamp(0, 1))
        sh = torch.where(ok & ~own, torch.minimum(sh, res), sh)
        ln_ = local(Rk, [torch.zeros_like(ck[0])] * 3, N[0], N[1], N[2])
        for dist, wt in ((.35, .5), (1.3, .45)):
            dd = sdf(p, lo[0] + ln_[0] * dist, lo[1] + ln_[1] * dist, lo[2] + ln_[2] * dist, False)
            ao = ao * torch.where(own, torch.ones_like(ao), 1 - wt * (1 - dd / dist).clamp(0, 1))
    for hv, (i, p, R2, c2, caps) in caps_by.items():
        lo = local(R2, c2, Q[0][i], Q[1][i], Q[2][i])
        ld = local(R2, [torch.zeros_like(c2[0])] * 3, Ld[0][i], Ld[1][i], Ld[2][i])
        t = torch.zeros_like(lo[0]) + .3
        res = torch.ones_like(t)
        for it in range(10):
            dd = hand_sdf(lo[0] + ld[0] * t, lo[1] + ld[1] * t, lo[2] + ld[2] * t, caps)
            res = torch.minimum(res, .5 + .5 * pen[i] * dd / t)
            t = t + dd.abs().clamp(.08, 3.)
        hm = idx[i] == -3
        sh[i] = torch.where(hm, sh[i], torch.minimum(sh[i], sstep(0, 1, res.clamp(0, 1))))
        nn = local(R2, [torch.zeros_like(c2[0])] * 3, N[0][i], N[1][i], N[2][i])
        dd = hand_sdf(lo[0] + nn[0] * .5, lo[1] + nn[1] * .5, lo[2] + nn[2] * .5, caps)
        ao[i] = torch.where(hm, ao[i], ao[i] * (1 - .5 * (1 - dd / .5).clamp(0, 1)))
    ao = ao * torch.where(idx == -1, torch.ones_like(ao), 1 - .55 * torch.exp(-P[1].clamp(min=0) / 1.0) * (1 - .5 * (N[1] + 1)).clamp(0, 1))
    gobo = S(Ds, 'gobo', dev)
    if float(gobo.max()) > 0:
        gx, gz = P[0] - Ld[0] / Ld[1].clamp(min=.15) * P[1], P[2] - Ld[2] / Ld[1].clamp(min=.15) * P[1]
        gb = fbm(gx * .16, gz * .16, gx * 0, S(Ds, 'o', dev) + 3, 2)[0]
        blinds = .5 + .5 * torch.sin(gx * .9 + gz * .6)
        sh = sh * (1 - gobo * .75 * sstep(.42, .58, torch.where(S(Ds, 'o', dev) > 15, gb, blinds)))
    # fields
    an = [nl[0].abs(), nl[1].abs(), nl[2].abs()]
    fc = torch.where((an[2] >= an[0]) & (an[2] >= an[1]), 3., torch.where(an[1] >= an[0], 1., 2.).to(ln)).to(ln)
    top = sstep(.35, .7, nl[1]) * (s['round'] < .5).float()
    cut = (fc == 3).float()
    side = ((fc == 2) | ((fc == 1) & (nl[1] < 0))).float()
    ex, ey, ez = s['a'] - L[0].abs(), s['b'] - L[1].abs(), s['c'] - L[2].abs()
    ins = torch.where(fc == 3, torch.minimum(ex, ey), torch.where(fc == 1, torch.minimum(ex, ez), torch.minimum(ey, ez))).clamp(min=0)
    Fd = dict(x=L[0], y=L[1], z=L[2], w=L[2] + s['zo'], a=s['a'], b=s['b'], c=s['c'], top=top, cut=cut, side=side, fc=fc, ins=ins,
              rnd=s['round'], isx=(fc == 2).float(), px=best * pix)
    dq = {k: S(Ds, k, dev) for k in ('des', 'pal', 'nc', 'nl', 'wav', 'f1', 'edge', 'mot', 'rind', 'bump', 'wire', 'wc', 'ws', 'mica', 'gl', 'o', 'tr')}
    dq['mcol'] = C3q(S(Ds, 'mcol', dev))
    Fd['pal'], Fd['nc'] = dq['pal'], dq['nc']
    Fd['isl'] = (dq['des'] == 1).float() + 0 * ln
    M0 = SM.design(Fd, dq)
    M0['lab'] = torch.zeros_like(ln)
    soap = bar & (s['mat'] < .5)
    # everything that is no soap
    GQ = {k: S(Ds, k, dev) for k in ('gt', 'g1', 'g2', 'ggl', 'o')}
    for j in range(3):
        GQ['r%d' % j] = T([dd['fq0'][j] for dd in Ds], dev).view(n, 1, 1)
    X = SM.ground(dict(x=P[0], z=P[2], px=best * pix / d[1].abs().clamp(min=.15) ** .5), GQ)
    wl = noise(P[0] * .09 + GQ['o'], P[1] * .09, ln * 0)
    wcol = S(Ds, 'wall', dev)[:, :, None, None] * (.5 + 1.0 * wl[0])[:, None] * mix(torch.ones(3, device=dev).view(1, 3, 1, 1), torch.stack([wl[1], wl[2], wl[3]], 1) * 2, .35)
    isw = (idx == -2)
    X['alb'] = torch.where(isw[:, None], wcol, X['alb'])
    pc = S(Ds, 'propc', dev)
    pm = s['mat'] + GQ['o'].floor()
    pcol = pc[:, 0][:, :, None, None]
    gidx = gi.view(n, h, w)
    for j in range(1, 4):
        pcol = torch.where((torch.remainder(gidx, 4) == j)[:, None], pc[:, j][:, :, None, None], pcol)
    gr = fbm(L[0] * .4, L[1] * 2.2, L[2] * 2.2, GQ['o'], 3)
    sp = noise(L[0] * 5, L[1] * 5, L[2] * 5)
    pal_ = pcol * torch.where(s['mat'] == 1, .5 + gr[0], torch.where(s['mat'] == 2, .7 + .6 * sp[0], torch.ones_like(ln)))[:, None]
    prop = bar & ~soap
    X['alb'] = torch.where(prop[:, None], pal_, X['alb'])
    ph = torch.where(s['mat'] == 2, .12 * sp[1], torch.where(s['mat'] == 4, -.10 * sstep(.3, .15, sp[2]), .01 * gr[1]))
    hand = idx == -3
    sk = noise(P[0] * 1.2, P[1] * 1.2, P[2] * 1.2)
    sk2 = noise(P[0] * 9, P[1] * 14, P[2] * 9)
    hc = S(Ds, 'skin', dev)[:, :, None, None] * (1 + .16 * (sk[0] - .5) + .06 * (sk2[0] - .5))[:, None]
    hc = hc * torch.stack([1 + .08 * sk[1], 1 - .05 * sk[1], 1 - .05 * sk[1]], 1)
    X['alb'] = torch.where(hand[:, None], hc, X['alb'])
    X['h'] = torch.where(prop, ph, torch.where(hand, .015 * sk2[0] + .012 * torch.sin(P[1] * 8 + 3 * sk[2]) * sk[3], torch.where(isw, 0 * ln, X['h'])))
    X['gloss'] = torch.where(prop, torch.where(s['mat'] == 3, .7, .1).to(ln), torch.where(hand, .25 + 0 * ln, X['gloss']))
    Pt = torch.stack(P, 1)
    Nt = torch.stack(N, 1)
    ids = idx.float()

    def dxy(a):
        ax = torch.cat([a[..., 1:], a[..., -1:]], -1) - torch.cat([a[..., :1], a[..., :-1]], -1)
        ay = torch.cat([a[..., 1:, :], a[..., -1:, :]], -2) - torch.cat([a[..., :1, :], a[..., :-1, :]], -2)
        return ax * .5, ay * .5
    dPx, dPy = dxy(Pt)
    ix, iy = dxy(ids)
    big = best * pix * 12
    same = ((ix == 0) & (iy == 0) & ~isw & (dPx.norm(dim=1) < big) & (dPy.norm(dim=1) < big)).float()
    R1, R2_ = torch.cross(dPy, Nt, dim=1), torch.cross(Nt, dPx, dim=1)
    det = (dPx * R1).sum(1)
    adet = det.abs().clamp(min=1e-9)
    key = S(Ds, 'key', dev)[:, :, None, None] * S(Ds, 'keyp', dev)[:, None] * 2.2
    amb = S(Ds, 'amb', dev)[:, :, None, None] * S(Ds, 'ambp', dev)[:, None]
    Lt = torch.cat([T([[q['L'][i]] for q in Ds], dev).view(n, 1, 1, 1) for i in range(3)], 1)
    L2 = torch.cat([T([[q['L2'][i]] for q in Ds], dev).view(n, 1, 1, 1) for i in range(3)], 1)
    Vt = -torch.stack(d, 1)
    win = S(Ds, 'win', dev)
    tr = dq['tr']
    hfac = torch.where(hand, .5, 1.).to(ln)
    coc = (S(Ds, 'ap', dev) * m * .5 * (depth - S(Ds, 'zf', dev)).abs() / depth.clamp(min=.5)).clamp(max=.035 * m)
    maxc = [float(c_) for c_ in coc.amax((1, 2)).tolist()]

    def shade(M, i):
        alb = torch.where(soap[i][:, None], M['alb'], X['alb'][i])
        hh = torch.where(soap[i], M['h'], X['h'][i])
        gl = torch.where(soap[i], M['gloss'], X['gloss'][i]).clamp(0, 3)
        hx, hy = dxy(hh)
        hx, hy = hx * same[i], hy * same[i]
        g = torch.sign(det[i])[:, None] * (hx[:, None] * R1[i] + hy[:, None] * R2_[i]) / adet[i][:, None]
        gm = g.norm(dim=1, keepdim=True)
        g = g / (1 + gm / 2.5)
        Nb = F_.normalize(Nt[i] - g, dim=1)
        ndl = (Nb * Lt[i]).sum(1)
        ng = (Nt[i] * Lt[i]).sum(1)
        scat = (torch.where(soap[i] | hand[i], 1., 0.).to(ndl) * tr[i] * .5)
        dif = []
        for wch, mxn in ((.45, .45), (.28, .25), (.18, .1)):
            wr = wch * scat
            a = ndl + (ng - ndl) * mxn * scat
            dif.append(((a + wr) / (1 + wr)).clamp(min=0) * (sh[i] + (1 - sh[i]) * .12 * wr))
        dif = torch.stack(dif, 1)
        hb = F_.avg_pool2d(hh[:, None], 9, 1, 4)[:, 0]
        cav = (1 + ((hh - hb) * 9 * same[i]).clamp(-.5, .12))
        sky = (.55 + .45 * Nb[:, 1]) * ao[i] * cav
        bounce = (.5 - .5 * Nb[:, 1]).clamp(min=0) * ao[i]
        gcol = S_g1[i]
        col = alb * (key[i] * dif * cav[:, None] + amb[i] * sky[:, None] + (amb[i] + .3 * key[i]) * gcol * bounce[:, None] * .5)
        Hh = F_.normalize(Lt[i] + Vt[i], dim=1)
        ndh = (Nb * Hh).sum(1).clamp(0, 1)
        ro = (.62 - .38 * gl.clamp(0, 1.2)).clamp(min=.12)
        a2 = ro ** 4
        D_ = a2 / (3.14 * (ndh * ndh * (a2 - 1) + 1) ** 2 + 1e-6)
        fr = .04 + .96 * (1 - (Nb * Vt[i]).sum(1).clamp(0, 1)) ** 5 * .6
        spec = (D_ * .25).clamp(max=12) * fr * sh[i] * ndl.clamp(min=0) ** .5
        rv = 2 * (Nb * Vt[i]).sum(1, True) * Nb - Vt[i]
        w2 = torch.exp(-((1 - (rv * L2[i]).sum(1)).clamp(min=0) / (.02 + ro * .5)) ** 2) * win[i] * fr * 4 * gl.clamp(0, 1) * ao[i]
        envr = fr * (.3 + .5 * rv[:, 1].clamp(0, 1)) * (.25 + gl.clamp(0, 1)) * ao[i]
        return col + key[i] * spec[:, None] + amb[i] * (w2 + envr * .8)[:, None]

    S_g1 = S(Ds, 'g1', dev)[:, :, None, None]
    wbk = (S(Ds, 'wb', dev) / S(Ds, 'wbk', dev) ** S(Ds, 'wbs', dev).view(-1, 1))[:, :, None, None]

    def develop(col, i, ex=None):
        il = i.tolist()
        mx = max(maxc[j] for j in il)
        col = lens(col.clamp(max=6), coc[i][:, None], mx)
        col = col * wbk[i]
        if ex is None:
            lum = (col * torch.tensor([.3, .6, .1], device=dev).view(1, 3, 1, 1)).sum(1)
            wts = .25 + soap[i].float()
            ex = S(Ds, 'exp', dev)[i] * .40 / ((lum * wts).sum((1, 2)) / wts.sum((1, 2)) + .02).view(-1, 1, 1) ** .72
        col = col * ex[:, None]
        col = col * (1 - S(Ds, 'vig', dev)[i] * .5 * (u[i] ** 2 + v[i] ** 2) * .6).clamp(min=.2)[:, None]
        col = torch.where(col > .6, .6 + .4 * torch.tanh((col - .6) / .55), col)
        g = to_srgb(col).clamp(0, 1)
        cn = S(Ds, 'con', dev)[i][:, None]
        g = g + cn * .6 * (g * g * (3 - 2 * g) - g)
        if ss != 1:
            g = F_.interpolate(g, size=(H, W), mode='bilinear', antialias=True, align_corners=False)
        return g.clamp(0, 1), ex

    def mats(i, drop, decoys=True):
        il = i.tolist()
        M = {k: v_[i].clone() for k, v_ in M0.items()}
        fs = subF(Fd, i)
        fl = [[(f, Ds[j]['fq'][t]) for t, f in enumerate(Ds[j]['fl']) if t != drop] for j in il]
        apply_list(M, fs, Ds, fl, SM.FLAWS, dev)
        if decoys:
            apply_list(M, fs, Ds, [list(zip(Ds[j]['dl'], Ds[j]['dq'])) for j in il], SM.DECOYS, dev)
        return M
    allx = torch.arange(n, device=dev)
    M = mats(allx, -1)
    img, ex = develop(shade(M, allx), allx)
    soapm = (soap & (M['lab'] < .5)).float()[:, None]
    bm = (F_.interpolate(soapm, size=(H, W), mode='bilinear', antialias=True, align_corners=False) > .5).float()
    maps = torch.zeros(n, 16, H, W, device=dev)
    noi = S(Ds, 'noise', dev)
    for t in range(3):
        ii = [j for j in range(n) if len(Ds[j]['fl']) > t]
        if not ii:
            continue
        i = torch.tensor(ii, device=dev)
        im2, _ = develop(shade(mats(i, t), i), i, ex[i])
        df = (img[i] - im2).abs().amax(1, True)
        df = blur(df, max(.6, H / 400.)) 
        thr = (.022 + 1.0 * noi[i])[:, None]
        mp = (df > thr).float()
        mp = F_.max_pool2d(mp, 3, 1, 1) * bm[i]
        # must be seen: enough pixels, with enough contrast
        strong = ((df > thr * 1.6).float() * bm[i]).sum((1, 2, 3))
        for jj, j in enumerate(ii):
            if float(strong[jj]) > 6e-4 * H * W ** 1.0 * .5 + 6:
                maps[j, Ds[j]['fl'][t]] = mp[jj, 0]
    # a deceiver that cannot be seen deceives nobody (swirled designs still do)
    ii = [j for j in range(n) if Ds[j]['tricky'] and not Ds[j]['kind'] and Ds[j]['des'] not in (3, 4, 5, 6)]
    if ii:
        i = torch.tensor(ii, device=dev)
        im2, _ = develop(shade(mats(i, -1, False), i), i, ex[i])
        sn = ((img[i] - im2).abs().amax(1, True) > .03 + noi[i][:, None]).float().sum((1, 2, 3)).tolist()
        for jj, j in enumerate(ii):
            if sn[jj] < 6e-4 * H * W + 4:
                Ds[j]['tricky'] = 0
    # the phone
    sf = [dd['soft'] for dd in Ds]
    for val in sorted(set(sf)):
        if val > 0:
            i = torch.tensor([j for j in range(n) if sf[j] == val], device=dev)
            img[i] = blur(img[i], val * H / 512. + .15)
    r1 = torch.randn(n, 3, H, W, generator=gen, device=dev)
    r2 = torch.randn(n, 1, H, W, generator=gen, device=dev)
    rr = blur(r1, .6) * 1.3 * .7 + r2 * .8
    img = img + rr * noi[:, None] * (1.2 - .6 * img)
    shp = S(Ds, 'sharp', dev)[:, None]
    img = img + shp * (img - blur(img, .9 + H / 1000.)) * .6
    img = jpeg(img.clamp(0, 1), S(Ds, 'q', dev).view(-1))
    return img, bm, maps


def C3q(t):
    return t[:, :, None, None]


@torch.no_grad()
def draw(n, size, seed, device, clean=0.4, _force=None):
    H, W = size
    dev = torch.device(device)
    Ds = []
    for j in range(n):
        rg = random.Random(seed * 1000003 + j * 7919 + 17)
        D = sample(rg, clean)
        if _force:
            D = _force(rg, j, D)
        D['fq0'] = [rg.random() for _ in range(3)]
        Ds.append(D)
    gen = torch.Generator(device=dev).manual_seed(int(seed) % (2 ** 31) + 5)
    ss = 1.5 if min(H, W) >= 384 else 2.0
    per = max(1, int(4.8e6 / (H * W * ss * ss)))
    order = sorted(range(n), key=lambda j: (len(Ds[j]['slots']), Ds[j]['hand'], len(Ds[j]['fl'])))
    img = torch.zeros(n, 3, H, W, device=dev)
    bar = torch.zeros(n, 1, H, W, device=dev)
    maps = torch.zeros(n, 16, H, W, device=dev)
    for k in range(0, n, per):
        o = order[k:k + per]
        a, b, c = chunk([Ds[j] for j in o], H, W, ss, dev, gen)
        i = torch.tensor(o, device=dev)
        img[i], bar[i], maps[i] = a, b, c
    kind = T([float(D['kind']) for D in Ds], dev)
    gone = (bar.sum((1, 2, 3)) < .004 * H * W) & (kind < .5)
    kind = torch.where(gone, torch.ones_like(kind), kind)
    bar[gone] = 0
    maps[gone] = 0
    return dict(image=img, bar=bar, maps=maps, present=(maps.sum((2, 3)) > 0).float(), tricky=T([float(D['tricky']) for D in Ds], dev), kind=kind,
                _info=[(D['pose'], D['des'], D['fl'], D['dl']) for D in Ds]) if _force else dict(
        image=img, bar=bar, maps=maps, present=(maps.sum((2, 3)) > 0).float(), tricky=T([float(D['tricky']) for D in Ds], dev), kind=kind)
