"""What lies where: parameters of each picture, drawn on the CPU from the seed."""
import numpy as np
K = 6
F_ = ['coloured-specks','smears','white-specks','translucent-veins','crackle-network','powdery-film','dark-centre-ring','orange-spots','pinholes','crack','brown-outside-in','colour-bled','drag-lines','layer-gap','wrinkled-top','mould-dimples']
DEC = ['poppy','oats','coffee','botanicals','embeds','stamp','dew','glare','gobo','label','crinkle','mottle','vein','glitter','swirl','ombre','layers','micatop']
NAT = [(.86,.78,.62),(.9,.86,.76),(.93,.92,.87),(.84,.72,.5),(.76,.66,.5),(.88,.82,.7),(.8,.74,.6)]
DYE = [(.62,.3,.26),(.75,.45,.42),(.85,.6,.6),(.3,.42,.26),(.5,.6,.4),(.66,.7,.5),(.08,.08,.09),(.2,.2,.22),(.16,.22,.42),(.35,.45,.65),(.6,.7,.8),(.8,.55,.15),(.85,.7,.3),(.3,.17,.1),(.45,.28,.16),(.5,.4,.62),(.68,.6,.76),(.1,.4,.42),(.4,.66,.64),(.7,.16,.2),(.85,.42,.2),(.5,.48,.45),(.75,.74,.72),(.85,.5,.65),(.24,.5,.22),(.95,.94,.92)]
def lin(c): return np.asarray(c, 'float64') ** 2.0
def kelvin(k):
    t = k / 100.
    r = 1. if t <= 66 else 1.29 * (t - 60) ** -.133
    g = (.39 * np.log(t) - .632) if t <= 66 else 1.13 * (t - 60) ** -.0755
    b = 1. if t >= 66 else max(.02, .543 * np.log(t - 10) - 1.196)
    return np.clip([r, g, b], 0, 1.3) ** 2.2
def rot(up, yaw):
    M = {'z': [[1,0,0],[0,0,1],[0,-1,0]], 'y': np.eye(3), 'x': [[0,0,1],[1,0,0],[0,1,0]]}[up]
    c, s = np.cos(yaw), np.sin(yaw)
    return np.array([[c,0,s],[0,1,0],[-s,0,c]]) @ np.array(M, float)
NEED = {5:'y', 6:'z', 9:'y', 10:'z', 12:'z', 14:'y', 15:'x'}
def picture(r, clean, asp):
    u = r.uniform; P = {}
    nosoap = r.rand() < .05
    fl, dec = [], set()
    cl = r.rand() < clean
    if not cl and not nosoap:
        k = 1 if r.rand() < .68 else (2 if r.rand() < .75 else 3)
        fl = [int(x) for x in r.choice(16, k, replace=False)]
        if r.rand() < .25: dec.add(DEC[r.randint(len(DEC))])
    elif cl and r.rand() < .55:
        for _ in range(1 + (r.rand() < .35)): dec.add(DEC[r.randint(len(DEC))])
    need = None
    for f in fl:
        if f in NEED: need = NEED[f]; break
    if need is None:
        need = r.choice(['z', 'y', 'x'], p=[.7, .18, .12])
        if dec & {'botanicals', 'micatop'}: need = 'y'
        if dec & {'stamp', 'crinkle', 'embeds'}: need = 'z'
    # ---- bars
    h = np.array([u(2.7, 4.3), u(2.2, 4.4), u(.95, 1.7)])
    shape = 0
    if r.rand() < .14 and need != 'y' and 15 not in fl: shape = 1; h[1] = h[0] * u(.62, 1); h[2] = u(1, 1.6)
    rad = r.choice([u(.04, .12), u(.12, .3), u(.3, .7)], p=[.5, .35, .15])
    loafz = u(8, 13)
    pose = {'z': ['single','flat','close','several','stack','hand','stand','row','loaf','loafcut','grid'],
            'y': ['loaf','loafcut','close','single','stand','row','hand','several','flat'],
            'x': ['single','close','loaf','several','hand','flat','stack']}[need]
    pw = {'z': [.15,.1,.17,.1,.08,.09,.1,.06,.03,.05,.07], 'y': [.26,.14,.16,.1,.1,.1,.06,.05,.03], 'x': [.25,.2,.2,.1,.1,.1,.05]}[need]
    pose = pose[r.choice(len(pose), p=np.array(pw) / sum(pw))]
    B = []   # (centre, R, half, textureZ)
    ax = 'xyz'.index(need)
    el, az, D = np.radians(u(28, 62)), u(-.6, .6), 0
    up = need
    def lie(hh, upx, x, z, y0=0, yaw=0., tz=0.):
        B.append((np.array([x, y0 + hh['xyz'.index(upx)], z]), rot(upx, yaw), np.array(hh), tz))
    tgt = None; fill = u(.5, 1.0)
    if pose in ('single', 'flat', 'close', 'several', 'grid'):
        if pose == 'flat' or pose == 'grid': el = np.radians(u(76, 89))
        # footprint
        R0 = rot(up, 0); foot = np.abs(R0 @ h)
        nb = 1 if pose in ('single', 'flat', 'close') else (r.randint(2, 7) if pose == 'several' else 6)
        if pose == 'close' and r.rand() < .3: nb = 2
        cols = int(np.ceil(np.sqrt(nb))); gap = u(1.03, 1.12) if pose == 'grid' else u(1.15, 1.5)
        jy = .05 if pose == 'grid' else .3
        if pose == 'grid': cols = 3
        yaw0 = u(-.5, .5) if pose != 'grid' else u(-.1, .1)
        for i in range(nb):
            cx, cz = (i % cols - (cols - 1) / 2) * 2 * foot[0] * gap, (i // cols - ((nb - 1) // cols) / 2) * 2 * foot[2] * gap
            c, s = np.cos(yaw0), np.sin(yaw0)
            lie(h, up, c * cx + s * cz, -s * cx + c * cz, 0, yaw0 + u(-jy, jy) + (np.pi * (r.rand() < .3)), u(0, 30))
    elif pose == 'stack':
        y = 0; yaw = u(-.6, .6)
        for i in range(r.randint(2, 5)):
            lie(h, up, u(-.5, .5), u(-.5, .5), y, yaw + u(-.35, .35), 2.6 * i); y += 2 * h[ax] + .01
        el = np.radians(u(12, 50))
    elif pose in ('stand', 'row'):
        nb = 1 if pose == 'stand' else r.randint(3, 7)
        yaw = u(-.7, .7); sp = 2 * h[2] + u(.02, 1.2)
        for i in range(nb):
            q = rot('y', yaw) @ np.array([u(-.25, .25), 0, (i - (nb - 1) / 2) * sp])
            lie(h, 'y', q[0], q[2], 0, yaw + u(-.06, .06), 2.6 * i)
        el = np.radians(u(8, 35) if need != 'y' else u(35, 68))
    elif pose in ('loaf', 'loafcut'):
        yaw = {'z': u(-.55, .55), 'y': u(-1.6, 1.6), 'x': np.pi / 2 + u(-.5, .5)}[need]
        el = np.radians(u(12, 35) if need != 'y' else u(30, 75))
        if need == 'x': el = np.radians(u(8, 40))
        hl = h.copy(); ns = 0 if pose == 'loaf' else r.randint(1, 5)
        hl[2] = loafz if ns == 0 else loafz * u(.4, .75)
        z = hl[2]; fr = rot('y', yaw)
        lie(hl, 'y', 0, 0, 0, yaw, 0)
        for i in range(ns):
            z += u(.05, 1.2) + h[2]
            q = fr @ np.array([u(-.15, .15), 0, z]); lie(h, 'y', q[0], q[2], 0, yaw + u(-.08, .08), z); z += h[2]
    handR = np.eye(3); hand = 0; hh = h.copy()
    if pose == 'hand':
        hand = 1; el = np.radians(u(15, 60)); az = u(-.4, .4)
        f = np.array([np.cos(el) * np.sin(az), np.sin(el), np.cos(el) * np.cos(az)])
        rt = np.cross([0, 1, 0], f); rt /= np.linalg.norm(rt); upv = np.cross(f, rt)
        a, b = u(-.4, .4), u(-.35, .35)
        f2 = f + a * rt + b * upv; f2 /= np.linalg.norm(f2)
        rt = np.cross(upv, f2); rt /= np.linalg.norm(rt); upv = np.cross(f2, rt)
        t = u(-.5, .5); rt, upv = np.cos(t) * rt + np.sin(t) * upv, -np.sin(t) * rt + np.cos(t) * upv
        fr = np.stack([rt, upv, f2], 1); handR = fr if r.rand() < .5 else fr @ np.diag([-1, 1, 1.])
        cyc = {'z': np.eye(3), 'y': np.array([[0,0,1],[1,0,0],[0,1,0.]]).T, 'x': np.array([[0,1,0],[0,0,1],[1,0,0.]])}[need]
        # columns of R: where local axes go; frame z is towards the camera
        R = fr @ cyc; hh = np.abs(cyc @ h)
        B.append((np.array([0., 14, 0]), R, h, 0.))
    if nosoap:
        m = r.randint(3)
        if m == 0: B = []
        elif m == 1: B = B[:2]
    P['nosoap'] = float(nosoap); P['nsmat'] = float(r.randint(5))
    # ---- camera
    pts = np.concatenate([c + (np.array([[a, b, d] for a in (-1, 1) for b in (-1, 1) for d in (-1, 1)]) * hf) @ R.T for c, R, hf, _ in B]) if B else np.array([[-6, 0, -6], [6, 3, 6.]])
    tgt = (pts.max(0) + pts.min(0)) / 2; size = np.linalg.norm(pts - tgt, axis=1).max()
    foc = u(1.8, 3.6)
    if pose == 'close' and B:
        fill = u(1.5, 3.2); tgt = B[0][0] + rot(up, 0)[:, [i for i in range(3) if i != ax]] @ (u(-.45, .45, 2) * np.delete(h, ax)); tgt[1] = B[0][0][1] + h[ax] * .8
        el = np.radians(u(40, 88))
        if need == 'y' and abs(az) < 9: az = u(-1.5, 1.5)
    elif pose in ('loaf', 'loafcut'): fill = u(.8, 1.5); tgt = tgt + u(-.15, .15, 3) * size * [1, 0, 1]
    elif pose == 'grid': fill = u(.9, 1.6)
    else: fill = u(.55, 1.25)
    D = foc * size / fill
    tgt = tgt + u(-.12, .12, 3) * size * [1, .4, 1] * (0 if pose == 'close' else 1)
    if pose == 'hand': tgt = np.array([0, 14., 0]) + u(-.8, .8, 3)
    cam = tgt + D * np.array([np.cos(el) * np.sin(az), np.sin(el), np.cos(el) * np.cos(az)])
    fw = (tgt - cam) / np.linalg.norm(tgt - cam); rt = np.cross(fw, [0, 1, 0]); rt /= np.linalg.norm(rt); upv = np.cross(rt, fw)
    ro = u(-.12, .12) if pose not in ('flat', 'grid', 'close') else u(-.6, .6)
    P['cam'] = cam; P['cr'] = np.cos(ro) * rt + np.sin(ro) * upv; P['cu'] = -np.sin(ro) * rt + np.cos(ro) * upv; P['cf'] = fw; P['foc'] = foc
    P['fdist'] = D
    P['bc'] = np.zeros((K, 3)); P['bR'] = np.tile(np.eye(3), (K, 1, 1)); P['bh'] = np.ones((K, 3)); P['bon'] = np.zeros(K); P['btz'] = np.zeros(K)
    for i, (c, R, hf, tz) in enumerate(B[:K]):
        P['bc'][i], P['bR'][i], P['bh'][i], P['bon'][i], P['btz'][i] = c, R, hf, 1, tz
    P['shape'] = float(shape); P['rad'] = rad
    # wavy poured top
    P['ta'] = r.choice([0, u(.03, .12), u(.12, .38)], p=[.35, .35, .3]) * (shape == 0); P['tf'] = u(.7, 2.2, 4); P['tp'] = u(0, 6.28, 4)
    P['hand'] = float(hand); P['handR'] = handR; P['hh'] = hh; P['hc'] = np.array([0, 14., 0]); P['skin'] = lin([(.9,.72,.6),(.82,.6,.46),(.62,.42,.3),(.4,.26,.18),(.94,.78,.7)][r.randint(5)]); P['hs'] = u(.8, 1.15)
    # ---- colours
    des = r.choice(['plain', 'swirl', 'layers', 'ombre', 'pot', 'stripe', 'ring'], p=[.4, .2, .14, .05, .11, .05, .05])
    if 'swirl' in dec: des = r.choice(['swirl', 'pot', 'stripe', 'ring'])
    if 'ombre' in dec: des = 'ombre'
    if dec & {'layers', 'vein'} or 13 in fl: des = 'layers'
    if 11 in fl and des in ('plain', 'ombre'): des = r.choice(['swirl', 'layers', 'pot', 'ring'])
    if 'mottle' in dec: des = 'plain'
    diff = r.rand() < .25
    P['pal'] = np.zeros((K, 4, 3))
    def pal():
        base = lin(NAT[r.randint(len(NAT))] if r.rand() < .55 else DYE[r.randint(len(DYE))])
        cs = [base]
        for _ in range(3):
            c = lin(DYE[r.randint(len(DYE))] if r.rand() < .7 else NAT[r.randint(len(NAT))]); a = u(.35, 1); cs.append(base * (1 - a) + c * a)
        if des == 'plain': cs = [base] * 4
        if des in ('layers', 'swirl', 'pot', 'ring') and r.rand() < .5: cs = [cs[0], cs[1], cs[0], cs[2]]
        if r.rand() < .35: cs = [cs[0], cs[1], cs[0], cs[1]]
        if des == 'ombre': cs = [cs[0], cs[0] * .6 + cs[1] * .4, cs[1], cs[1]]
        return np.clip(np.array(cs) * u(.88, 1.08), .006, .93)
    p0 = pal()
    if 4 in fl or 5 in fl or 2 in fl:   # white shows on something
        p0 = np.clip(p0 * (u(.3, .7) if p0[0].mean() > .5 and r.rand() < .75 else 1), .006, .9)
    if 10 in fl and p0[0].mean() < .3: p0 = np.repeat(lin(NAT[r.randint(len(NAT))])[None], 4, 0)
    if set(fl) & {3, 6, 7, 10} and p0[0].mean() < .2: a = u(.55, .9); p0 = p0 * (1 - a) + a * lin(NAT[r.randint(len(NAT))])
    if 11 in fl:      # a dye that wanders needs a paler neighbour
        lt = lin(NAT[r.randint(len(NAT))]); dk = lin(DYE[r.choice([0,3,6,8,9,13,17,19,20,23,24])]); p0 = np.array([lt, dk, lt, dk * u(.6, 1.3)]) if r.rand() < .6 else np.array([dk, lt, p0[2], lt])
    P0m = p0[0]
    for k in range(K): P['pal'][k] = (pal() if (diff and k) else p0) * u(.95, 1.03)
    c = dict(plain=(0,.1,0,0,.2), swirl=(u(-.2,.2),u(.0,.25),0,0,u(.5,1)), layers=(u(-.12,.12),1,0,0,0), ombre=(u(-.3,.3),1,0,0,0), pot=(.1,.1,.02,0,1), stripe=(1,u(-1,1),0,0,.1), ring=(0,0,0,1,.05))[des]
    P['pc'] = np.array(c); P['pfr'] = dict(plain=.3, swirl=u(.5,1.3), layers=u(.25,.7), ombre=.5/h[1], pot=u(.5,1.6), stripe=u(.5,1.4), ring=u(.5,1.2))[des]
    P['psoft'] = 1. if des == 'ombre' else r.choice([.06, .15, .4]); P['pph'] = u(0, 4) if des != 'ombre' else .5 + .5
    P['pwa'] = dict(plain=1, swirl=u(.8,2.2), layers=u(0,.3), ombre=u(0,.6), pot=u(1,2.5), stripe=u(.2,1.2), ring=u(.1,.8))[des]
    P['pws'] = u(1.5, 4); P['pns'] = u(1.5, 3.5); P['pzs'] = u(.08, .5); P['pctr'] = u(-.5, .5, 2) * h[:2]
    P['mot'] = u(.01, .06) if 'mottle' not in dec else u(.15, .35); P['mots'] = u(.8, 3); P['grain'] = u(0, .05)
    P['off'] = u(0, 900, 3); P['gloss'] = r.choice([u(.05, .3), u(.3, .8), u(.8, 1.3)], p=[.4, .4, .2]); P['rough'] = u(.12, .5); P['trans'] = u(0, .5); P['relief'] = u(.0, .012)
    if 'glare' in dec: P['gloss'] = u(2, 3.2); P['rough'] = u(.02, .15)
    for d in DEC: P['d_' + d] = float(d in dec and not nosoap)
    P['dv'] = r.rand(8)
    if dec & {'vein'}: P['veinw'] = u(.02, .06)
    else: P['veinw'] = .02
    P['veinc'] = lin([(.35,.24,.12),(.2,.2,.2),(.75,.55,.2),(.5,.25,.2)][r.randint(4)]); P['bot'] = lin([(.6,.4,.65),(.85,.55,.2),(.75,.3,.35),(.35,.4,.2)][r.randint(4)])
    P['emb'] = lin(DYE[r.randint(len(DYE))])
    # ---- light
    P['kk'] = kelvin(u(2700, 6500)); P['ka'] = kelvin(np.clip(u(3500, 8000), 2700, 9000))
    ea, ee = u(-3.14, 3.14), np.radians(u(18, 78))
    P['L'] = np.array([np.cos(ee) * np.sin(ea), np.sin(ee), np.cos(ee) * np.cos(ea)])
    if 'glare' in dec:
        f = cam - tgt; f = f / np.linalg.norm(f); L = np.array([-f[0], f[1], -f[2]]) + u(-.08, .08, 3); L[1] = max(L[1], .25); P['L'] = L / np.linalg.norm(L)
    P['pen'] = np.exp(u(np.log(2.2), np.log(30))); P['kint'] = u(.6, 1.7); P['aint'] = u(.25, .8); P['win'] = u(.06, .35, 2)
    P['wb'] = u(.45, 1.05); P['tint'] = np.exp(r.randn(3) * .035); P['exp'] = np.exp(r.randn() * .16)
    P['gobo'] = float(r.randint(1, 4)) if ('gobo' in dec or r.rand() < .06) else 0.; P['gs'] = u(.6, 2.5); P['ga'] = u(0, 3.14)
    # ---- table
    P['gt'] = float(r.randint(12)); P['gc'] = np.stack([lin(np.clip(np.array([(.55,.38,.24),(.75,.6,.44),(.35,.22,.14),(.85,.82,.78),(.9,.9,.9),(.3,.3,.32),(.5,.5,.5),(.65,.68,.7),(.4,.5,.55),(.7,.45,.4),(.78,.72,.6),(.2,.3,.25),(.12,.12,.13)][r.randint(13)]) * u(.85, 1.1), .02, .97)) for _ in range(2)])
    P['gsc'] = np.exp(u(-.5, .7)); P['gyaw'] = u(0, 3.14); P['groff'] = u(0, .8) ** 2; P['gy'] = 0.
    P['zw'] = u(8, 40) if r.rand() < .7 else 500.; P['wc'] = lin([(.9,.89,.87),(.6,.62,.62),(.35,.36,.36),(.75,.68,.6),(.25,.3,.33),(.6,.7,.65)][r.randint(6)])
    # ---- camera
    P['blur'] = r.choice([0., u(.3, .8), u(.8, 1.6)], p=[.5, .35, .15]); P['ns'] = np.exp(u(np.log(.002), np.log(.022))); P['sharp'] = u(0, 1.2); P['jq'] = u(38, 96); P['vig'] = u(0, .35) ** 1.3; P['dof'] = u(0, 1) if r.rand() < .6 else 0.
    P['sat'] = u(.85, 1.2); P['con'] = u(0, .5)
    # ---- flaws
    P['fl'] = np.array((fl + [-1, -1, -1])[:3], float)
    P['fv'] = r.randint(0, 3, 3).astype(float); P['fs'] = u(.12, 1, 3) ** .8; P['fcov'] = np.where(r.rand(3) < .35, 1., u(.12, .8, 3)); P['fr'] = r.rand(3, 8)
    g = np.ones((3, K))
    for s in range(3):
        if r.rand() < .4: g[s] = r.rand(K) < .5; g[s, 0] = 1
    P['fbar'] = g; P['fpig'] = np.stack([lin(np.array([(.75,.1,.12),(.1,.25,.65),(.1,.5,.25),(.2,.12,.08),(.05,.05,.06),(.55,.15,.5),(.85,.5,.05),(.05,.45,.5)][r.randint(8)])) for _ in range(3)])
    for j, f in enumerate(fl[:3]):
        if f in (0, 1):
            for _ in range(6):
                if np.abs(np.sqrt(P['fpig'][j]) - np.sqrt(P0m)).max() > .3: break
                P['fpig'][j] = lin(np.clip(r.rand(3) ** 1.3 * u(.2, .95), .03, .9))
    P['foff'] = u(0, 900, (3, 3))
    return P
def batch(n, clean, seed, asp=1.):
    r = np.random.RandomState(seed % (2 ** 32)); L = [picture(np.random.RandomState(r.randint(2 ** 31)), clean, asp) for _ in range(n)]
    return {k: np.stack([np.asarray(l[k], 'float32') for l in L]) for k in L[0]}
