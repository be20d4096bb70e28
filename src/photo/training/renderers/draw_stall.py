"""draw(n,(h,w),seed,device,clean): pictures of cold-process soap with flaw labels.
Ray-marched rounded bars, solid textures, phone camera. All batched in torch."""
import math, os, sys, numpy as np, torch
import torch.nn.functional as F
from PIL import Image, ImageDraw, ImageFont
sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from stall_tex import Noise, ss, lin, sub, design, flaw, distract, ground
K = 8
FLAWS = ['coloured-specks', 'smears', 'white-specks', 'translucent-veins', 'crackle-network', 'powdery-film', 'dark-centre-ring', 'orange-spots', 'pinholes', 'crack', 'brown-outside-in', 'colour-bled', 'drag-lines', 'layer-gap', 'wrinkled-top', 'mould-dimples']
DIS = ['poppy', 'coffee', 'oats', 'tea', 'salt', 'glitter', 'petals', 'stamp', 'label', 'dew', 'crinkle', 'mottle', 'veinmica', 'topdust', 'peaks', 'print']
DES = ['plain', 'layers', 'mica', 'ombre', 'swirl', 'feather', 'hanger', 'embed', 'rim', 'confetti', 'marble', 'drop']
GRD = ['wood', 'linen', 'check', 'marble', 'plain', 'slate', 'concrete', 'terrazzo', 'tile', 'rack', 'towel']
PAL = np.array([[245,238,222],[238,224,196],[228,205,160],[250,248,242],[214,180,132],[190,140,90],[140,92,58],[92,58,38],[235,190,190],[222,140,150],[180,70,80],[215,180,215],[160,120,175],[100,70,130],[150,185,150],[100,140,95],[60,95,65],[170,200,215],[90,140,175],[45,80,125],[60,150,150],[240,210,110],[225,165,60],[215,120,60],[175,80,45],[50,48,48],[95,95,98],[165,160,155],[200,195,150],[130,130,70],[235,225,210],[242,230,205]], float) / 255
_atl = {}

def atlas(dev):
    if str(dev) in _atl: return _atl[str(dev)]
    rs = np.random.RandomState(5); out = []
    def font(s):
        for f in ('/usr/share/fonts/truetype/dejavu/DejaVuSerif.ttf', '/usr/share/fonts/truetype/dejavu/DejaVuSans-Bold.ttf'):
            try: return ImageFont.truetype(f, s)
            except Exception: pass
        return ImageFont.load_default()
    words = ['SOAP', 'handmade', 'olive', 'lavender', 'goat milk', 'natural', 'pure', 'honey', 'rose', 'sea salt', 'mint', 'oat']
    for i in range(32):
        im = Image.new('L', (128, 128)); d = ImageDraw.Draw(im); t = i % 6 if i < 16 else 6
        if t in (0, 1):
            npt = rs.randint(4, 9); a = np.linspace(0, 2 * np.pi, 240); r = 30 + 22 * np.abs(np.cos(a * npt / 2))
            pts = [(64 + q * np.cos(b), 64 + q * np.sin(b)) for q, b in zip(r, a)]
            d.polygon(pts, fill=255); d.ellipse([50, 50, 78, 78], fill=0)
            if t: d.ellipse([6, 6, 122, 122], outline=255, width=5)
        elif t == 2:
            d.ellipse([40, 14, 88, 92], fill=255); d.line([64, 20, 64, 120], fill=0, width=4); d.line([64, 92, 64, 120], fill=255, width=5)
            for y in range(30, 90, 12): d.line([64, y + 8, 46, y], fill=0, width=3); d.line([64, y + 8, 82, y], fill=0, width=3)
        elif t == 3: d.pieslice([20, 24, 66, 70], 180, 360, fill=255); d.pieslice([62, 24, 108, 70], 180, 360, fill=255); d.polygon([(20, 47), (108, 47), (64, 106)], fill=255)
        else:
            ws = [words[rs.randint(12)] for _ in range(1 if t < 6 else rs.randint(2, 5))]
            y = 48 if t < 6 else 20
            for j, w in enumerate(ws):
                f = font(26 if t < 6 or j == 0 else 13); b = f.getsize(w) if hasattr(f, 'getsize') else f.getbbox(w)[2:]
                d.text((64 - b[0] / 2, y), w, fill=255, font=f); y += b[1] + 10
            if t == 4: d.rectangle([4, 36, 124, 92], outline=255, width=4)
            if t == 6 and rs.rand() < .6: d.rectangle([3, 3, 124, 124], outline=200, width=2)
        out.append(np.asarray(im, np.float32) / 255)
    a = torch.tensor(np.stack(out).tolist(), dtype=torch.float32)[:, None]; a = F.avg_pool2d(a, 3, 1, 1); _atl[str(dev)] = a.to(dev); return _atl[str(dev)]

def cct(T):
    T = T / 100.; r = 1. if T <= 66 else 1.29 * (T - 60) ** -.133
    g = .39 * math.log(T) - .632 if T <= 66 else 1.13 * (T - 60) ** -.0755; b = 1. if T >= 66 else .543 * math.log(T - 10) - 1.196
    c = np.array([r, g, b]).clip(.02, 1) ** 2.2; return c / c[1]
def rz(a): c, s = math.cos(a), math.sin(a); return np.array([[c, -s, 0], [s, c, 0], [0, 0, 1.]])
def rx(a): c, s = math.cos(a), math.sin(a); return np.array([[1., 0, 0], [0, c, -s], [0, s, c]])
def l_(c): return np.where(c <= .04045, c / 12.92, ((c + .055) / 1.055) ** 2.4)

def make(r, clean):
    """parameters of one picture (numpy, CPU)"""
    U = r.uniform; ch = lambda *a: a[r.randint(len(a))]
    P = {}; fl = []; dis = []; kind = int(r.rand() < .05); tricky = 0
    if not kind:
        if r.rand() < clean:
            if r.rand() < .55: tricky = 1
        else:
            k = r.choice([1, 2, 3], p=[.68, .23, .09]); fl = list(r.choice(16, k, replace=False))
            if 9 in fl and 14 in fl and r.rand() < .5: fl.remove(14)
            if 11 in fl and 13 in fl: fl.remove(13)
            tricky = int(r.rand() < .25)
    des = r.choice(DES, p=np.array([4.5, 1.6, .5, .8, 1.6, .8, .8, .4, .25, .35, .8, .7]) / 13.1)
    if 11 in fl: des = ch('layers', 'swirl', 'swirl', 'drop', 'hanger', 'feather', 'layers')
    if 13 in fl: des = ch('layers', 'layers', 'plain', 'mica' if tricky else 'layers')
    if 4 in fl or 3 in fl or 6 in fl or 10 in fl or 1 in fl:
        if r.rand() < .45: des = 'plain'
    if tricky:
        t = r.rand()
        if t < .35: des = ch('mica', 'feather', 'rim', 'embed', 'confetti', 'marble', 'swirl', 'ombre', 'drop', 'hanger')
        if t > .2: dis = list(r.choice(DIS, ch(1, 1, 2), replace=False))
        if 'stamp' in dis and 'label' in dis: dis.remove('label')
    poses = ['lie'] * 4 + ['stand'] * 4 + ['row'] * 3 + ['stack'] * 2 + ['scatter'] * 2 + ['loaf'] * 1 + ['cutloaf'] * 2 + ['macro'] * 4 + ['hand'] * 2 + ['topdown'] + ['lean'] * 2 + ['puck']
    f0 = fl[0] if fl else -1
    topd = any(d in dis for d in ('salt', 'petals', 'topdust', 'peaks', 'glitter'))
    if f0 == 14 or topd: poses = ['loaf'] * 4 + ['cutloaf'] * 3 + ['topdown'] * 3 + ['stand'] * 2 + ['row'] * 2 + ['mtop'] * 4
    if f0 == 15: poses = ['loaf'] * 4 + ['mside'] * 3 + ['puck'] * 4 + ['cutloaf'] + ['lie'] * 2 + ['hand'] + ['stack']
    if f0 == 9: poses += ['loaf'] * 5 + ['cutloaf'] * 4 + ['mtop'] * 3 + ['topdown'] * 2
    if f0 == 5: poses += ['loaf'] * 3 + ['mtop'] * 3 + ['topdown'] * 3
    if f0 in (6, 11, 13, 12, 10): poses = [q for q in poses if q not in ('loaf', 'topdown', 'puck')] + ['macro'] * 2
    pose = ch(*poses)
    # bar sizes (cm, half)
    hx = U(2.8, 4.2); hz = U(2.3, 3.6); hy = U(1.0, 1.6); R1 = U(.03, .35) if r.rand() < .75 else U(.3, .9); r2 = ch(.03, .05, .08, .15, .3) * U(.7, 1.3)
    if pose == 'puck':
        if r.rand() < .55: hx = hz = U(2.8, 4); R1 = hx * .995
        else: R1 = U(.6, min(hx, hz) * .98)
        hy = U(1.2, 1.8); r2 = U(.25, .9)
    S0 = (hx, hy, hz); obs = []
    def add(c, R, h, R1_=R1, r2_=r2, mat=0): obs.append((np.array(c, float), R, np.array(h, float), min(R1_, min(h[0], h[2]) * .998), min(r2_, h[1] * .6), mat))
    LIE = rx(math.pi / 2); yaw0 = U(-.6, .6); el = None; az = U(-.5, .5); tgt = None; rad = None; jit = lambda s=.12: 1 + U(-s, s)
    lie = lambda x, y, z, a, m=0: add((x, y, z), rz(a) @ LIE @ (rz(0) if r.rand() < .5 else np.diag([-1., -1, 1])) if False else rz(a) @ LIE, (hx * jit(.02), hy * jit(.06), hz * jit(.02)), mat=m)
    stand = lambda x, y, a, m=0: add((x, y, hz), rz(a), (hx * jit(.01), hy * jit(.1), hz), mat=m)
    if kind:
        pose = ch('empty', 'balls', 'box', 'slab', 'mug', 'hand0', 'mixed')
        n_ = 0 if pose in ('empty', 'hand0') else r.randint(1, 6)
        for _ in range(n_):
            a, d = U(0, 6.28), U(0, 9) if n_ > 1 else U(0, 2); s = U(1.5, 4); q = pose if pose != 'mixed' else ch('balls', 'box', 'slab', 'mug')
            if q == 'balls': add((a and d * math.cos(a), d * math.sin(a), s), rz(a), (s, s * .999, s), s, s, 1 + r.randint(5))
            elif q == 'box': add((d * math.cos(a), d * math.sin(a), s * .7), rz(a), (s, s * U(.6, 2), s * .7), .1, .08, 1 + r.randint(5))
            elif q == 'slab': add((d * math.cos(a), d * math.sin(a), .4), rz(a) @ LIE, (s, .4, s * U(.7, 1.6)), U(.1, 1), .1, 1 + r.randint(5))
            else: add((d * math.cos(a), d * math.sin(a), s), rz(a) @ LIE, (s * .8, s, s * .8), s * .8, .2, 1 + r.randint(5))
        el = U(15, 85); rad = U(6, 13); tgt = np.array([0, 0, 1.5])
    elif pose in ('lie', 'puck'): lie(0, 0, hy, yaw0 + ch(0, 0, 1.57)); el = U(28, 88)
    elif pose == 'stand': stand(0, 0, yaw0); el = U(8, 50)
    elif pose == 'row':
        m = r.randint(2, 8); gap = ch(.05, .3, 1.0, 2.0) * U(.7, 1.3)
        if r.rand() < .55:
            for j in range(m): stand(U(-.1, .1), (j - m / 2) * (2 * hy + gap), U(-.05, .05))
            az = U(.25, 1.15) * ch(-1, 1)
        else:
            for j in range(min(m, 5)): stand((j - min(m, 5) / 2 + .5) * (2 * hx + gap), U(-.3, .3), U(-.1, .1))
        el = U(12, 50)
    elif pose == 'stack':
        m = r.randint(2, 6); z = 0; ox = 0
        for j in range(m): obs_h = hy; lie(U(-.5, .5), U(-.4, .4), z + hy * 1.05, yaw0 + U(-.3, .3) + (1.57 * (j % 2) if hx > 3.9 else 0)); z += hy * 2.1
        if r.rand() < .4: stand(hx * 1.2 + hz, -U(0, 2), U(-.7, .7))
        el = U(12, 55)
    elif pose == 'scatter':
        m = r.randint(3, 8); cols = ch(2, 3); gx = 2 * hx + U(.3, 2); gy = 2 * hz + U(.3, 2); rj = ch(.03, .2, .5)
        if rj > .15: gx += 1; gy += 1.6
        for j in range(m): lie((j % cols - (cols - 1) / 2) * gx, (j // cols - .8) * gy, hy, U(-rj, rj))
        el = U(40, 89)
    elif pose in ('loaf', 'cutloaf', 'mtop', 'mside'):
        L = U(6, 12); 
        add((0, 0 if pose != 'cutloaf' else L * .3, hz), rz(0), (hx, L if pose != 'cutloaf' else L * .6, hz))
        if pose == 'cutloaf' or (pose in ('mtop', 'mside') and r.rand() < .3):
            y = obs[0][0][1] - obs[0][2][1]
            for j in range(r.randint(1, 5)):
                y -= hy + U(.2, 1.4); 
                if r.rand() < .25 and j: lie(U(-1, 1), y - hz, hy, U(-.4, .4)); break
                stand(U(-.3, .3), y, U(-.12, .12)); y -= hy
        az = U(.35, 1.25) * ch(-1, 1); el = U(15, 60)
        if pose == 'mtop': el = U(45, 85)
        if pose == 'mside': az = U(1.0, 1.57) * ch(-1, 1); el = U(5, 35)
    elif pose == 'macro':
        if r.rand() < .55: lie(0, 0, hy, U(-3.1, 3.1)); el = U(50, 89)
        else: stand(0, 0, 0); el = U(3, 25); az = U(-.4, .4)
    elif pose == 'hand':
        R = rz(U(-.6, .6)) @ rx(math.pi / 2 + U(-.1, .7)); add((0, 0, U(5, 14)), R, S0); el = U(35, 80)
    elif pose == 'topdown':
        m = r.randint(3, 7); gap = U(.1, 1.5)
        for j in range(m): stand(U(-.15, .15), (j - m / 2 + .5) * (2 * hy + gap), U(-.06, .06))
        if m < 5 and r.rand() < .5:
            for j in range(min(m, K - m)): stand(2 * hx + U(.5, 2), (j - m / 2 + .5) * (2 * hy + gap), U(-.06, .06))
        el = U(55, 88); az = U(-1.57, 1.57)
    elif pose == 'lean':
        lie(0, 1, hy, U(-.3, .3)); t = U(.25, .7); zc = hz * math.cos(t) + hy * math.sin(t)
        add((U(-1, 1), -hz * 1. - hy * .5 + 1 - .4, zc), rz(U(-.25, .25)) @ rx(-t), S0); el = U(15, 50)
        if r.rand() < .5: lie(0, 1.3, 3 * hy, U(-.3, .3))
    obs = obs[:K]; m = len(obs)
    oc = np.zeros((K, 3)); oc[:, 2] = -500; oR = np.tile(np.eye(3), (K, 1, 1)); oh = np.full((K, 3), .5); o1 = np.full(K, .1); o2 = np.full(K, .1); om = np.zeros(K); 
    for j, (c, R, h, a, b, mt) in enumerate(obs): oc[j], oR[j], oh[j], o1[j], o2[j], om[j] = c, R, h, a, b, mt
    if tgt is None:
        tgt = oc[:m].mean(0); pts = np.concatenate([oc[j] + (oR[j] @ (oh[j] * np.array(s))) [None] for j in range(m) for s in [(1,1,1),(-1,1,1),(1,-1,1),(1,1,-1),(-1,-1,1),(-1,1,-1),(1,-1,-1),(-1,-1,-1)]])
        rad = np.abs(pts - tgt).max() * 1.12; fill = U(.8, 1.35)
        if m > 1 and r.rand() < .5:  # look at one of them
            j = r.randint(m); tgt = oc[j] * .8 + tgt * .2; rad = oh[j].max() * U(1.3, 2.2); fill = 1
        if pose == 'macro':
            j = 0; a, b = U(-.35, .35), U(-.35, .35)
            if f0 in (6, 10): a, b = a * .3, b * .3
            tgt = oc[0] + oR[0] @ np.array([a * hx, hy if el > 40 else -hy, b * hz]); rad = min(hx, hz) * U(.45, .95) * (1.15 if f0 in (6, 10) else 1); fill = 1
        if pose == 'mtop': tgt = oc[0] + np.array([U(-.3, .3) * hx, U(-.5, .4) * oh[0, 1], hz]); rad = hx * U(.6, 1.3); fill = 1
        if pose == 'mside': tgt = oc[0] + np.array([math.copysign(hx, -math.sin(-az)), U(-.5, .5) * oh[0, 1], U(-.2, .3) * hz]); rad = hz * U(.7, 1.5); fill = 1
        if pose == 'hand': rad = max(hx, hz) * U(1.15, 2.1); fill = 1
        rad /= fill
    fov = math.radians(U(28, 62)); dist = rad / math.tan(fov / 2) + (0 if pose in ('macro', 'mtop', 'mside') else hy)
    el = math.radians(el); d = np.array([math.sin(az) * math.cos(el), -math.cos(az) * math.cos(el), math.sin(el)])
    P['cam'] = tgt + d * dist; P['cam'][2] = max(P['cam'][2], 1.0)
    fw = (tgt - P['cam']); fw /= np.linalg.norm(fw); up = np.array([0, 0, 1.]) if el < 1.45 else np.array([-math.sin(az), math.cos(az), 0])
    rt = np.cross(fw, up); rt /= np.linalg.norm(rt); upv = np.cross(rt, fw); roll = r.normal(0, .06) if r.rand() < .8 else U(-3.1, 3.1) * (el > .9)
    c, s = math.cos(roll), math.sin(roll); P['fwd'] = fw; P['rt'] = c * rt + s * upv; P['up'] = c * upv - s * rt; P['tan'] = math.tan(fov / 2); P['dist'] = dist
    off = r.normal(0, .12, 2) if pose not in ('macro', 'mtop', 'mside') else np.zeros(2); P['shift'] = off
    P.update(oc=oc, oR=oR, oh=oh, o1=o1, o2=o2, om=om, noff=U(0, 400, 3), ooff=U(0, 30, (K, 3)) * (0.06 if r.rand() < .6 else 1.), m=m)
    P['hc'], P['hR'], P['hh'] = (oc[0].copy(), oR[0].copy(), oh[0].copy()) if pose != 'hand0' else (np.array([U(-2, 2), U(-2, 2), U(4, 9)]), rz(U(-1, 1)) @ rx(math.pi / 2 + U(-.5, .8)), np.array([U(2, 3.4), U(.6, 1.2), U(1.8, 3)]))
    P['odisp'] = np.array([(U(.05, .3) if (14 in fl or 'peaks' in dis or r.rand() < .15) and pose not in ('puck',) else 0.)] * K); P['odf'] = U(.5, 1.4)
    P['hand'] = float(pose in ('hand', 'hand0')); P['puck'] = float(pose == 'puck')
    sk = np.array(ch((236, 196, 172), (224, 172, 140), (190, 130, 95), (150, 106, 80), (104, 74, 58), (245, 212, 190))) / 255.; P['skin'] = l_(sk * U(.92, 1.05))
    # palette
    pi = r.randint(0, len(PAL), 4)
    if r.rand() < .55: pi[0] = ch(0, 1, 2, 3, 30, 31, 4, 0)
    if 4 in fl: pi[0] = ch(0, 3, 8, 9, 11, 14, 17, 18, 20, 25, 12, 15)
    if 10 in fl or 7 in fl: pi[0] = ch(0, 1, 3, 30, 31, 2, 0)
    if 5 in fl and r.rand() < .6: pi[0] = ch(25, 7, 19, 16, 6, 13, 10, 15, 18)
    if 3 in fl and r.rand() < .7: pi[0] = ch(9, 12, 15, 18, 23, 26, 20, 28, 22)
    if 2 in fl and r.rand() < .85: pi[0] = ch(25, 7, 19, 16, 6, 13, 10, 15, 18, 23, 5)
    for _ in range(30):
        if np.abs(PAL[pi[0]] - PAL[pi[1]]).max() > .2: break
        pi[1] = r.randint(len(PAL))
    if 11 in fl:
        pi[0] = ch(0, 1, 3, 30, 31, 17, 8); pi[1] = ch(10, 13, 16, 19, 20, 24, 25, 7, 12, 23, 9, 18)
    pal = (PAL[pi] * U(.88, 1.08, (4, 1)) + r.normal(0, .025, (4, 3))).clip(.04, .98); P['pal'] = l_(pal); P['des'] = DES.index(des); P['dye'] = P['pal'][1]
    P['r1'], P['r2'], P['r3'] = U(0, 1, 3); P['mott'] = U(.01, .05)
    P['flaws'] = fl; P['dis'] = dis; P['tricky'] = tricky; P['kind'] = kind; P['pose'] = pose
    for s in range(3):
        f = fl[s] if s < len(fl) else -1; q = dict(sev=.08 + .92 * U(0, 1) ** .75, ext=ch(U(.25, .6), U(.4, 1), 1.), var=float(r.randint(3 if f in (4, 11) and r.rand() < .9 else 4)), sc=U(0, 1), seed=float(r.randint(1, 900)), dir=U(-3.14, 3.14))
        if f == 4: q['var'] = float(r.randint(4))
        if f == 11: q['var'] = float(r.randint(3)); q['sev'] = .2 + .8 * q['sev']
        col = PAL[ch(10, 13, 16, 19, 24, 25, 7, 20, 18, 23, 6, 12)] * U(.6, 1.1)
        if np.abs(col - pal[0]).max() < .22: col = pal[0] * .4 if pal[0].mean() > .4 else pal[0] * .5 + .45
        q['col'] = l_(np.clip(col, .01, 1)); q['f'] = f
        for a, b in q.items(): P['s%d%s' % (s, a)] = b
    P['dseed'] = float(r.randint(1, 900)); P['d1'], P['d2'], P['d3'] = U(0, 1, 3)
    # ground, light
    P['grd'] = r.randint(len(GRD)); g0 = ch((200, 160, 115), (150, 105, 70), (95, 65, 45), (225, 205, 175), (240, 238, 232), (170, 175, 178), (205, 195, 180), (150, 165, 150), (90, 110, 130), (60, 60, 62), (235, 220, 205), (190, 120, 110), (225, 215, 235), (245, 245, 245))
    P['gc0'] = l_(np.array(g0) / 255. * U(.85, 1.05)).clip(0, .9); P['gc1'] = (P['gc0'] * (U(.35, .75) if r.rand() < .6 else 1) if r.rand() < .6 else l_(PAL[r.randint(len(PAL))])); P['gk'] = U(0, 1); P['gth'] = U(-3.14, 3.14) if r.rand() < .6 else ch(0, 1.57) + U(-.1, .1); P['goff'] = U(0, 300)
    P['wally'] = U(14, 60); P['wallc'] = l_(np.array(ch((230, 228, 222), (180, 175, 168), (90, 95, 100), (60, 50, 45), (200, 210, 200), (160, 130, 105)) ) / 255. * U(.8, 1.05)); P['wallk'] = U(0, 1)
    T = ch(U(2700, 3500), U(3500, 5000), U(5000, 6500), U(5000, 6500)); la = U(0, 6.28); le = math.radians(U(22, 75)); P['L'] = np.array([math.cos(la) * math.cos(le), math.sin(la) * math.cos(le), math.sin(le)])
    k = U(.15, .8); k = k if r.rand() < .85 else U(0, .15); lc = cct(T); ac = cct(np.clip(T + U(-800, 2500), 2700, 8500)); P['lc'] = lc * k * 2.6; P['ac'] = ac * (1 - k) * 1.3; P['pk'] = ch(U(3, 6), U(6, 14), U(20, 60))
    wb = cct(np.clip(T * U(.8, 1.25), 2700, 7500)); e = (lc * k + ac * (1 - k)); wb = wb ** .4 * e ** .6 if r.rand() < .85 else wb ** .5; P['wb'] = 1 / (wb / wb.mean())
    P['gobo'] = float(r.choice([0, 1, 2, 3], p=[.72, .1, .1, .08]) if tricky == 0 else r.choice([0, 1, 2, 3], p=[.55, .15, .15, .15])); P['gs'] = U(.15, .6); P['gsoft'] = U(.1, .6)
    P['glare'] = U(0, .5) if r.rand() < .8 else U(.5, 2.2); P['shin'] = ch(12., 25., 60., 140.); P['wrap'] = U(.1, .35)
    P['expo'] = U(-.45, .35); P['contr'] = U(.85, 1.25); P['sat'] = U(.85, 1.2); P['vig'] = U(0, .35); P['dof'] = U(0, .8) if r.rand() < .8 else U(.8, 2)
    P['blur'] = U(.42, .65) if r.rand() < .8 else U(.55, 1.3); P['mblur'] = U(0, 2.2) * (r.rand() < .12); P['mdir'] = U(0, 3.14); P['noise'] = U(.001, .006) if r.rand() < .75 else U(.006, .022); P['sharp'] = U(0, 1.0); P['jq'] = U(.08, .5) if r.rand() < .75 else U(.5, 1.8); P['haze'] = U(0, .025) if r.rand() < .88 else U(.025, .12)
    return P

# ------------------------------------------------------------ geometry
def vdot(a, b): return (a * b).sum(1)
def E(t): return t[:, None, None]
def sdf_local(q, h, R1, r2, disp):
    """q [n,3,H,W] local, h [n,3], R1,r2 [n]; disp [n,H,W] added to height of top. returns d, parts"""
    x, y, z = q[:, 0], q[:, 1], q[:, 2]
    if disp is not None: z = z - disp * ss(0., .6, z / E(h[:, 2]))
    ax = x.abs() - E(h[:, 0] - R1); az = z.abs() - E(h[:, 2] - R1); mx = ax.clamp(min=0); mz = az.clamp(min=0)
    l2 = (mx * mx + mz * mz + 1e-9).sqrt(); d2 = l2 + torch.maximum(ax, az).clamp(max=0) - E(R1)
    w0 = d2 + E(r2); w1 = y.abs() - E(h[:, 1] - r2); m0 = w0.clamp(min=0); m1 = w1.clamp(min=0); l = (m0 * m0 + m1 * m1 + 1e-9).sqrt()
    return l + torch.maximum(w0, w1).clamp(max=0) - E(r2), (x, y, z, ax, az, w0, w1)
def tolocal(p, P, k): return torch.einsum('nji,njhw->nihw', P['oR'][:, k], p - P['oc'][:, k][:, :, None, None])
def disp_of(N, q, P, k):
    if not P['anydisp']: return None
    o = P['ooff'][:, k]; f = E(P['odf']); return N(q[:, 0] + E(o[:, 0]), q[:, 1] + E(o[:, 1]), torch.zeros_like(q[:, 0]) + 3.3, f, 1).mul(.62).add(.62).clamp(min=0) * E(P['odisp'][:, k])
def scene(N, p, P, disp=False):
    d = None
    for k in range(P['M']):
        q = tolocal(p, P, k); dk = sdf_local(q, P['oh'][:, k], P['o1'][:, k], P['o2'][:, k], None)[0]; d = dk if d is None else torch.minimum(d, dk)
    return d if d is not None else torch.full_like(p[:, 0], 99.)

def hand_caps(P):
    """capsules in the local frame of bar 0: list of (a,b,r) [n,3],[n,3],[n]"""
    h = P['hh']; o = torch.zeros_like(h[:, 0]); hx, hy, hz = h[:, 0], h[:, 1], h[:, 2]; v = lambda x, y, z: torch.stack([x + o, -(y + o), z + o], 1); L = []
    sg = torch.sign(P['r1'] - .5)
    L.append((v(-sg * .5, hy + 1.6, -hz * .4), v(sg * .3, hy + 1.6, hz * .35), o + 1.7)); L.append((v(-sg * .6, hy + 2, -hz - 1.), v(-sg * 2.5, hy + 4, -hz - 16), o + 2.4))
    for j in range(4):
        zf = -hz * .45 + j * 1.55 - .4 + .3 * P['r2']; rr = .78 - (.12 if j == 3 else 0.)
        L.append((v(sg * .4, hy + 1.1, zf * .8), v(sg * (hx + .45), hy + .35, zf), o + rr)); L.append((v(sg * (hx + .55), hy + .3, zf), v(sg * (hx + .35 - .5 * P['r3']), -hy - .3 - .5 * P['r3'], zf + .15), o + rr * .93))
    zt = hz * .15 - P['r3'] * hz * .5
    L.append((v(-sg * 1.2, hy + 1.6, -hz * .5), v(-sg * (hx + .6), hy * .4, zt - .8), o + 1.0)); L.append((v(-sg * (hx + .6), hy * .3, zt - .8), v(-sg * (hx - .3 - P['r2'] * .7), -hy - .45, zt + .6), o + .85))
    return L
def hand_sdf(p, P, L):
    q = torch.einsum('nji,njhw->nihw', P['hR'], p - P['hc'][:, :, None, None]); d = None
    for a, b, r in L:
        pa = q - a[:, :, None, None]; ba = (b - a)[:, :, None, None]; t = ((pa * ba).sum(1) / (ba * ba).sum(1)).clamp(0, 1); dk = (pa - ba * t[:, None]).norm(dim=1) - E(r)
        if d is None: d = dk
        else: hh = (.5 + .5 * (d - dk) / .35).clamp(0, 1); d = d + (dk - d) * hh - .35 * hh * (1 - hh)
    return d

def bump(Nn, Pw, h, oid):
    def df(a):
        dx = torch.zeros_like(a); dx[..., :, 1:-1] = (a[..., :, 2:] - a[..., :, :-2]) * .5; dy = torch.zeros_like(a); dy[..., 1:-1, :] = (a[..., 2:, :] - a[..., :-2, :]) * .5; return dx, dy
    Px, Py = df(Pw); hx, hy = df(h); ox, oy = df(oid); ok = ((ox.abs() + oy.abs()) < .01).float(); hx = hx * ok; hy = hy * ok
    lx = Px.norm(dim=1) + 1e-6; ly = Py.norm(dim=1) + 1e-6; hx = torch.maximum(torch.minimum(hx, lx), -lx); hy = torch.maximum(torch.minimum(hy, ly), -ly)
    c1 = torch.cross(Py, Nn, dim=1); c2 = torch.cross(Nn, Px, dim=1); det = vdot(Px, c1); sg = torch.sign(det)
    g = sg[:, None] * (hx[:, None] * c1 + hy[:, None] * c2); v = det.abs()[:, None] * Nn - g; nv = v / (v.norm(dim=1, keepdim=True) + 1e-9)
    return torch.where(((det.abs() > 1e-9).float() * ok)[:, None] > 0, nv, Nn)

def gauss(x, sig, rad=None):
    n, c, H, W = x.shape; R = rad or int(min(12, max(2, math.ceil(float(sig.max()) * 2.6)))); t = torch.arange(-R, R + 1, device=x.device).float()
    k = torch.exp(-.5 * (t[None] / sig.clamp(min=.05)[:, None]) ** 2); k = (k / k.sum(1, keepdim=True)).repeat_interleave(c, 0)
    y = F.pad(x, (R, R, R, R), mode='replicate').reshape(1, n * c, H + 2 * R, W + 2 * R)
    y = F.conv2d(y, k[:, None, None, :], groups=n * c); y = F.conv2d(y, k[:, None, :, None], groups=n * c); return y.reshape(n, c, H, W)

def jpeg(x, q):
    n, c, H, W = x.shape; ph, pw = -H % 16, -W % 16; x = F.pad(x, (0, pw, 0, ph), mode='replicate'); r, g, b = x[:, 0], x[:, 1], x[:, 2]
    Y = .299 * r + .587 * g + .114 * b; cb = (b - Y) * .564; cr = (r - Y) * .713
    i = torch.arange(8, device=x.device).float(); D = torch.cos((2 * i[None] + 1) * i[:, None] * math.pi / 16) * .5; D[0] *= 2 ** -.5
    Q = (6 + 5.5 * (i[:, None] + i[None]) + .4 * (i[:, None] + i[None]) ** 2) / 255
    def dct(a, s):
        h, w = a.shape[1:]; B = a.reshape(n, h // 8, 8, w // 8, 8).permute(0, 1, 3, 2, 4); T = D @ B @ D.t(); qq = Q * s * q[:, None, None, None, None]; T = torch.round(T / qq) * qq
        return (D.t() @ T @ D).permute(0, 1, 3, 2, 4).reshape(n, h, w)
    Y = dct(Y, 1.); ds = lambda a: F.interpolate(dct(F.avg_pool2d(a[:, None], 2)[:, 0], 1.4)[:, None], scale_factor=2, mode='bilinear', align_corners=False)[:, 0]
    cb, cr = ds(cb), ds(cr); return torch.stack([Y + cr / .713, Y - .509 * cr / .713 * 1.0 - .194 * cb / .564, Y + cb / .564], 1)[:, :, :H, :W]

def chunk(Ps, H, W, seed, dev, N):
    n = len(Ps); P = {}
    for k in Ps[0]:
        v = Ps[0][k]
        if k in ('flaws', 'dis', 'pose'): continue
        P[k] = torch.tensor(np.stack([np.asarray(p[k], np.float32) for p in Ps]).tolist(), device=dev, dtype=torch.float32)
    P['M'] = max(p['m'] for p in Ps); P['anydisp'] = any(p['odisp'][0] > 0 for p in Ps)
    dm = max(float(p['odisp'][0]) for p in Ps)
    Tix = lambda l: torch.tensor(l, device=dev)
    ys, xs = torch.meshgrid(torch.arange(H, device=dev).float(), torch.arange(W, device=dev).float(), indexing='ij'); mn = min(H, W)
    sx = ((xs + .5) - W / 2) / (mn / 2); sy = -((ys + .5) - H / 2) / (mn / 2)
    sx = sx[None] + E(P['shift'][:, 0]); sy = sy[None] + E(P['shift'][:, 1]); tn = E(P['tan'])
    v4 = lambda a: a[:, :, None, None]
    rd = v4(P['fwd']) + v4(P['rt']) * (sx * tn)[:, None] + v4(P['up']) * (sy * tn)[:, None]; rd = rd / rd.norm(dim=1, keepdim=True); ro = v4(P['cam'])
    # ground and wall
    BIG = 1e4; tg = torch.where(rd[:, 2] < -1e-4, -ro[:, 2] / rd[:, 2].clamp(max=-1e-4), torch.full_like(rd[:, 2], BIG)); wdir = v4(P['fwd']).clone(); wdir[:, 2] = 0; wdir = wdir / wdir.norm(dim=1, keepdim=True).clamp(min=1e-3)
    den = (rd * wdir).sum(1); tw = torch.where(den > 1e-3, (E(P['dist'] + P['wally'])) / den.clamp(min=1e-3), torch.full_like(den, BIG)); flat = (P['fwd'][:, 2] < -.9).float(); tw = torch.where(E(flat) > 0, torch.full_like(tw, BIG), tw)
    t = torch.minimum(tg, tw).clamp(max=400.); wall = (tw < tg).float(); oid = torch.full_like(t, -1.) - wall
    Nn = torch.zeros(n, 3, H, W, device=dev); Nn[:, 2] = 1; Nn = torch.where(wall[:, None] > 0, -wdir.expand_as(Nn), Nn); q0 = torch.zeros(n, 3, H, W, device=dev); fn = torch.zeros(n, 3, H, W, device=dev)
    for k in range(P['M']):
        h = P['oh'][:, k]; lo = torch.einsum('nji,njhw->nihw', P['oR'][:, k], ro - v4(P['oc'][:, k])); ld = torch.einsum('nji,njhw->nihw', P['oR'][:, k], rd)
        iv = 1 / torch.where(ld.abs() < 1e-6, torch.full_like(ld, 1e-6), ld); hb = v4(h).clone(); hb[:, 2] = hb[:, 2] + dm * 1.55; a = (-hb - lo) * iv; b = (hb - lo) * iv
        t0 = torch.minimum(a, b).max(1)[0].clamp(min=.01); t1 = torch.maximum(a, b).min(1)[0]; tk = t0.clone(); hit = (t0 < t1)
        for it in range(18 if P['anydisp'] else 9):
            q = lo + ld * tk[:, None]; d, pr = sdf_local(q, h, P['o1'][:, k], P['o2'][:, k], disp_of(N, q, P, k)); tk = tk + d * (.62 if P['anydisp'] else 1.); tk = torch.minimum(tk, t1 + .5)
        hit = hit & (d < .004 * tk.clamp(min=8.)) & (tk < t) & (tk <= t1 + .1)
        x, y, z, ax, az, w0, w1 = pr; gx = torch.where((ax > 0) & (az > 0), ax, (ax > az).float()) * torch.sign(x); gz = torch.where((ax > 0) & (az > 0), az, (az >= ax).float()) * torch.sign(z); gl = (gx * gx + gz * gz + 1e-9).sqrt(); gx, gz = gx / gl, gz / gl
        c0 = torch.where((w0 > 0) & (w1 > 0), w0, (w0 > w1).float()); c1 = torch.where((w0 > 0) & (w1 > 0), w1, (w1 >= w0).float()); cl = (c0 * c0 + c1 * c1 + 1e-9).sqrt(); c0, c1 = c0 / cl, c1 / cl
        ln = torch.stack([c0 * gx, c1 * torch.sign(y), c0 * gz], 1)
        m = hit[:, None]; t = torch.where(hit, tk, t); oid = torch.where(hit, torch.full_like(oid, float(k)), oid); q0 = torch.where(m, torch.stack([x, y, z], 1), q0); fn = torch.where(m, ln, fn); Nn = torch.where(m, torch.einsum('nij,njhw->nihw', P['oR'][:, k], ln), Nn)
    # hand
    hi = [i for i, p in enumerate(Ps) if p['hand'] > 0]; handm = torch.zeros_like(t)
    if hi:
        ix = Tix(hi); Q = {k: (v[ix] if torch.is_tensor(v) else v) for k, v in P.items()}; L = hand_caps(Q); rdi = rd[ix]; roi = Q['cam'][:, :, None, None]; tk = (E(Q['dist']) * .45).expand_as(t[ix]).clone()
        for it in range(26): d = hand_sdf(roi + rdi * tk[:, None], Q, L); tk = (tk + d * .95).clamp(max=300.)
        hit = (d.abs() < .04) & (tk < t[ix]); pp = roi + rdi * tk[:, None]; g = []
        for ax_ in range(3):
            o = torch.zeros(1, 3, 1, 1, device=dev); o[0, ax_] = .04; g.append(hand_sdf(pp + o, Q, L) - hand_sdf(pp - o, Q, L))
        g = torch.stack(g, 1); g = g / (g.norm(dim=1, keepdim=True) + 1e-9); t[ix] = torch.where(hit, tk, t[ix]); oid[ix] = torch.where(hit, torch.full_like(tk, 20.), oid[ix]); Nn[ix] = torch.where(hit[:, None], g, Nn[ix]); handm[ix] = hit.float()
    Pw = ro + rd * t[:, None]; ob = ((oid >= 0) & (oid < 19)).float(); matk = torch.gather(P['om'], 1, oid.long().clamp(0, K - 1).reshape(n, -1)).reshape(n, H, W); soap = ob * (matk < .5).float() * E(1 - P['kind'])
    # texture coordinates
    io = oid.long().clamp(0, K - 1).reshape(n, -1); gat = lambda a: torch.gather(a, 1, io).reshape(n, H, W); x, y, z = q0[:, 0], q0[:, 1], q0[:, 2]
    oo = [gat(P['ooff'][..., j]) for j in range(3)]; hh = [gat(P['oh'][..., j]) for j in range(3)]; no = P['noff']; an = fn.abs()
    fc = (an[:, 1] >= torch.maximum(an[:, 0], an[:, 2])).float() * ob; pk = E(P['puck']); top = ((fn[:, 2] > an[:, 0]) & (fc < .5)).float() * ob; bot = ((-fn[:, 2] > an[:, 0]) & (fc < .5)).float() * ob; side = (ob - fc - top - bot).clamp(min=0)
    fidx = oid * 3.7; u = torch.where(side > 0, z, x) + fidx + 40 * side; v = torch.where(fc > 0, z, y) + fidx * 1.3 + 17 * fc * torch.sign(y)
    eds = torch.stack([hh[0] - x.abs() + 99 * side, hh[1] - y.abs() + 99 * fc, hh[2] - z.abs() + 99 * (top + bot)], 1).min(1)[0]
    pix = t * E(P['tan']) * 2 / mn
    G = dict(x=x, y=y, z=z, X=x + oo[0] + E(no[:, 0]), Y=y + oo[1] + E(no[:, 1]), Z=z + oo[2] + E(no[:, 2]), u=u, v=v, fc=fc, ft=top * (1 - pk), fs=torch.maximum(side, pk * (top + bot)), fb=bot * (1 - pk), puck=pk * ob, ed=eds.clamp(0, 9), hx=hh[0], hy=hh[1], hz=hh[2], pix=pix)
    def idxs_of(key, names):
        def f(_):
            d = {}
            for i, p in enumerate(Ps): d.setdefault(names[int(p[key])], []).append(i)
            return {a: Tix(b) for a, b in d.items()}
        return f
    A, fld = design(N, G, P, None, idxs_of('des', DES))
    if any(p['kind'] for p in Ps):
        w = N(G['X'], G['Y'] * .15, G['Z'], 1.2, 3); tab = torch.tensor([[.3, .15, .06], [.5, .03, .03], [.2, .32, .05], [.4, .3, .18], [.6, .6, .58]], device=dev); mc = tab[(matk.long() - 1).clamp(0, 4)].permute(0, 3, 1, 2)
        A = torch.where((E(P['kind'])[:, None] > 0), mc * (1 + .3 * w * (matk < 1.5))[:, None] * (.7 + .6 * E(P['r1'])[:, None]), A)
    S = dict(A=A, h=.004 * N(G['X'], G['Y'], G['Z'], 2.5, 2) + .0015 * N(G['u'], G['v'], G['X'] * 0, 14., 1), gl=torch.full_like(t, .35), fld=fld)
    # ground layer
    Ag, hg, glg = ground(N, Pw[:, 0], Pw[:, 1], pix, None, P, idxs_of('grd', GRD)); wz = Pw[:, 2]; wa = v4(P['wallc']) * (1 + .12 * N(Pw[:, 0], Pw[:, 1], wz, .12, 2) * E(P['wallk']))[:, None] * (.8 + .2 * ss(0., 20., wz))[:, None]
    Ag = torch.where(wall[:, None] > 0, wa, Ag); hg = hg * (1 - wall)
    if hi:
        Nz = N(Pw[:, 0], Pw[:, 1], Pw[:, 2], .6, 2); n2 = N(Pw[:, 0], Pw[:, 1], Pw[:, 2], 4., 2); sk = v4(P['skin']) * (1 + .12 * Nz + .06 * n2)[:, None]; sk = sk * torch.stack([1 + .06 * Nz, 1 - .05 * Nz, 1 - .06 * Nz], 1); Ag = torch.where(handm[:, None] > 0, sk, Ag); hg = torch.where(handm > 0, .02 * n2 + .008 * N(Pw[:, 0], Pw[:, 1], Pw[:, 2], 12.), hg); glg = torch.where(handm > 0, torch.full_like(glg, .18), glg)
    # shadow + AO
    Ld = v4(P['L']).expand_as(Pw); sh = torch.ones_like(t); ts = torch.full_like(t, .06); pkk = E(P['pk']); base = Pw + Nn * .05
    Q = None
    if hi: ixh = Tix(hi); Q = {k: (v[ixh] if torch.is_tensor(v) else v) for k, v in P.items()}; Lh = hand_caps(Q)
    def sc(p):
        d = scene(N, p, P)
        if hi: d = d.clone(); d[ixh] = torch.minimum(d[ixh], hand_sdf(p[ixh], Q, Lh))
        return d
    for k in range(P['M']):  # each bar's shadow by its own march: the transform is done once
        lo = tolocal(base, P, k); ld = torch.einsum('nji,nj->ni', P['oR'][:, k], P['L'])[:, :, None, None]; tk = ts.clone()
        for it in range(8):
            d = sdf_local(lo + ld * tk[:, None], P['oh'][:, k], P['o1'][:, k], P['o2'][:, k], None)[0]; sh = torch.minimum(sh, (.5 + .5 * pkk * d / tk).clamp(0, 1)); tk = tk + d.clamp(.1 * (1 + it * .3), 8.)
    if hi:
        tk = ts[ixh].clone(); shh = sh[ixh]; bh = base[ixh]; lh = Ld[ixh]; ph = pkk[ixh]
        for it in range(10): d = hand_sdf(bh + lh * tk[:, None], Q, Lh); shh = torch.minimum(shh, (.5 + .5 * ph * d / tk).clamp(0, 1)); tk = tk + d.clamp(.15 * (1 + it * .3), 6.)
        sh[ixh] = shh
    sh = sh * sh * (3 - 2 * sh); ao = torch.zeros_like(t); wsum = 0
    for dd, ww in ((.25, 1.), (.8, .8), (2.2, .6)): d = sc(Pw + Nn * dd); ao = ao + ww * (d.clamp(0, dd) / dd); wsum += ww
    ao = (.25 + .75 * ao / wsum)
    gp = [Pw[:, j] - P['L'][:, j][:, None, None] / P['L'][:, 2][:, None, None].clamp(min=.2) * Pw[:, 2] for j in (0, 1)]; gs = E(P['gs']); gb = E(P['gobo']); sf = E(P['gsoft'])
    leaf = ss(-1., 1., N(gp[0] * gs + 30, gp[1] * gs * 2.2, t * 0 + E(no[:, 0]), 1., 2) / sf); win = ss(-1., 1., (torch.minimum((torch.remainder(gp[0] * gs * .5, 1.) - .5).abs(), (torch.remainder(gp[1] * gs * .35, 1.) - .5).abs()) - .07) / (sf * .12)); half = ss(-1., 1., (gp[0] * .8 + gp[1] * .6 + (E(P['r1']) - .5) * 5) / (sf * 4))
    gobo = torch.where(gb == 1, .25 + .75 * leaf, torch.where(gb == 2, .2 + .8 * win, torch.where(gb == 3, .15 + .85 * half, torch.ones_like(t)))); sh = sh * gobo
    grain = None
    def shade(S, ix=None):
        f = (lambda a: a) if ix is None else (lambda a: a[ix]); o = f(ob)[:, None]; Aall = torch.where(o > 0, S['A'], f(Ag)); h = torch.where(o[:, 0] > 0, S['h'], f(hg)); gl = torch.where(o[:, 0] > 0, S['gl'], f(glg)); Nb = bump(f(Nn), f(Pw), h, f(oid))
        V = -f(rd); L = f(Ld); w = torch.where(o[:, 0] > 0, E(f(P['wrap'])), torch.zeros_like(h)); nl0 = vdot(Nb, L); nl = ((nl0 + w) / (1 + w)).clamp(min=0); s_ = f(sh); s_ = s_ + (1 - s_) * .06 * o[:, 0]
        up = Nb[:, 2]; amb = f(ao) * (.62 + .38 * up) + .12 * (vdot(Nb, f(v4(P['rt']))) * torch.sign(f(P['L'][:, :1, None]) + 1e-3))
        Hv = L + V; Hv = Hv / (Hv.norm(dim=1, keepdim=True) + 1e-6); sp = vdot(Nb, Hv).clamp(min=0); shn = E(f(P['shin'])) * (1 + gl.clamp(max=3)); spec = sp ** shn * (shn + 8) / 60 * s_ * (nl0 > 0)
        rf = 2 * vdot(Nb, V)[:, None] * Nb - V; fr = .04 + .5 * (1 - vdot(Nb, V).clamp(0, 1)) ** 5; env = fr * (.35 + .65 * rf[:, 2].clamp(0, 1)) * f(ao)
        glz = E(f(P['glare'])) * gl; bounce = f(v4(P['gc0'])) * (.5 - .5 * up)[:, None].clamp(0, 1) * .35
        return Aall * (f(v4(P['lc'])) * (nl * s_)[:, None] + f(v4(P['ac'])) * (amb.clamp(min=.03)[:, None] + bounce * f(ao)[:, None])) + f(v4(P['lc'])) * (spec * glz * .35)[:, None] + f(v4(P['ac'])) * (env * glz * .8)[:, None]
    at = atlas(dev); labm = torch.zeros_like(t)
    for i, nm in enumerate(DIS):
        ixl = [j for j, p in enumerate(Ps) if nm in p['dis'] and not p['kind']]
        if ixl:
            ix = Tix(ixl); Ss = {k: v[ix] for k, v in S.items()}; Ss.pop('lab', None); distract(N, nm, sub(G, ix), Ss, {k: v[ix] for k, v in P.items() if torch.is_tensor(v)}, at)
            if 'lab' in Ss: labm[ix] = Ss['lab']
            for k in ('A', 'h', 'gl'): S[k][ix] = Ss[k]
    ev = lambda lin_: (lin_.clamp(min=0) / (.6 + lin_)).clamp(0, 1) ** (1 / 2.0)   # perceptual compare
    img = shade(S); maps = torch.zeros(n, 16, H, W, device=dev); pres = torch.zeros(n, 16, device=dev)
    expo = E(torch.exp2(P['expo']))[:, None]
    for s in range(3):
        byf = {}
        for j, p in enumerate(Ps):
            if int(p['s%df' % s]) >= 0 and not p['kind']: byf.setdefault(int(p['s%df' % s]), []).append(j)
        allj = []; masks = {}
        for f, l in sorted(byf.items()):
            ix = Tix(l); Ss = {k: v[ix] for k, v in S.items()}; q = {a: P['s%d%s' % (s, a)][ix] for a in ('sev', 'ext', 'var', 'sc', 'seed', 'dir', 'col')}; q['dye'] = P['dye'][ix]
            m = flaw(N, f, sub(G, ix), Ss, q)
            lb = labm[ix]; m = m * (1 - lb)  # paper hides flaws
            for k in ('A', 'h', 'gl'): S[k][ix] = Ss[k] + (S[k][ix] - Ss[k]) * (lb[:, None] if k == 'A' else lb)
            S['A'] = S['A'].clamp(.003, .95)
            for a, j in enumerate(l): masks[j] = (f, m[a]); allj.append(j)
        if not allj: continue
        allj.sort(); ix = Tix(allj); new = shade({k: v[ix] for k, v in S.items()}, ix); old = img[ix]; dd = (ev(new * expo[ix]) - ev(old * expo[ix])).abs().max(1)[0] * soap[ix]
        M = torch.stack([masks[j][1] for j in allj]).clamp(0, 1) * soap[ix]; fi = Tix([masks[j][0] for j in allj])
        th = .018 + .8 * P['noise'][ix]; ds = gauss(dd[:, None], P['blur'][ix] * .9 + .4)[:, 0]
        # wide surface flaws: visible where the neighbourhood differs; small ones: at the pixel
        wide = ((fi == 14) | (fi == 15) | (fi == 4) | (fi == 12)).float(); R = max(2, mn // 40); dn = F.max_pool2d(ds[:, None], 2 * R + 1, 1, R)[:, 0]
        sm = F.max_pool2d(M[:, None], 3, 1, 1)[:, 0] * soap[ix]
        vis = torch.where(E(wide) > 0, (dn > E(th) * 1.6) & (M > .3), (ds > E(th)) & (sm > .22)).float()
        strong = (vis * (ds > E(th) * 1.7)).sum((1, 2)); ok = (strong > max(6., 22. * H * W / 65536.)) & (vis.sum((1, 2)) > max(6., 20. * H * W / 65536.))
        # invisible flaw is taken back altogether
        img[ix] = torch.where(ok[:, None, None, None], new, old); maps[ix, fi] = vis * ok[:, None, None]; pres[ix, fi] = ok.float()
    # ------------------------------------------------ camera
    x = img * v4(P['wb'])
    lum = (x * soap[:, None]).sum((1, 2, 3)) / (soap.sum((1, 2)) * 3).clamp(min=1); la = x.mean((1, 2, 3)); mix_ = torch.where(soap.sum((1, 2)) > H * W * .03, .35 * lum + .65 * la, la); x = x * (.50 / mix_.clamp(min=.02) ** .72)[:, None, None, None] * expo
    x = x * (1 - E(P['vig']) * .5 * ((sx - E(P['shift'][:, 0])) ** 2 + (sy - E(P['shift'][:, 1])) ** 2))[:, None].clamp(min=.2)
    oe = oid[:, None]; ed_ = ((F.max_pool2d(oe, 3, 1, 1) + F.max_pool2d(-oe, 3, 1, 1)).abs() > .01).float(); x = x + (gauss(x, torch.full((n,), .85, device=dev)) - x) * ed_  # silhouettes smoothed
    coc = (E(P['dof']) * (t - E(P['dist']) * .97).abs() / t * 2.2 * mn / 128).clamp(max=mn / 40.); coc = torch.where(soap > 0, coc * .5, coc)
    b1 = gauss(x, torch.full((n,), mn / 170., device=dev)); b2 = gauss(b1, torch.full((n,), mn / 60., device=dev), rad=max(3, int(mn / 60. * 2.4)))
    k1, k2 = mn / 170., mn / 50.; w1 = (gauss((coc / k1)[:, None].clamp(0, 1), torch.full((n,), 1., device=dev))); w2 = gauss(((coc - k1) / (k2 - k1)).clamp(0, 1)[:, None], torch.full((n,), 1.2, device=dev)); x = x + (b1 - x) * w1; x = x + (b2 - x) * w2
    x = x + b2 * E(P['haze'])[:, None] * .5
    bl = P['blur'] * max(1., mn / 320.) ; x = gauss(x, bl)
    mi = [i for i, p in enumerate(Ps) if p['mblur'] > 0]
    if mi:
        ix = Tix(mi); y = 0; yy, xx = torch.meshgrid(torch.linspace(-1 + 1 / H, 1 - 1 / H, H, device=dev), torch.linspace(-1 + 1 / W, 1 - 1 / W, W, device=dev), indexing='ij')
        for a in (-1., -.5, 0., .5, 1.): o = P['mblur'][ix] * a * mn / 224; y = y + F.grid_sample(x[ix], torch.stack([xx[None] + E(o * P['mdir'][ix].cos() * 2 / W), yy[None] + E(o * P['mdir'][ix].sin() * 2 / H)], -1), padding_mode='border', align_corners=False)
        x[ix] = y / 5
    g = torch.Generator(device=dev).manual_seed(int(seed) % (2 ** 31)); nz = torch.randn(n, 3, H, W, device=dev, generator=g); nz = nz + 1.2 * gauss(torch.randn(n, 3, H, W, device=dev, generator=g), torch.full((n,), .9, device=dev))
    x = x.clamp(min=0); x = (x * (1 + x / 6)) / (1 + x * .85); x = torch.where(x <= .0031308, x * 12.92, 1.055 * x.clamp(min=1e-5) ** (1 / 2.4) - .055)
    c = E(P['contr'])[:, None]; xc = x.clamp(0, 1); x = x + .3 * (xc * xc * (3 - 2 * xc) - xc); x = .5 + (x - .5) * (1 + (c - 1) * .6); l = x.mean(1, keepdim=True); x = l + (x - l) * E(P['sat'])[:, None]
    x = x + nz * E(P['noise'])[:, None] * (1.4 - x.clamp(0, 1)); x = x + (x - gauss(x, torch.full((n,), 1.2, device=dev))) * E(P['sharp'])[:, None]
    x = jpeg(x.clamp(0, 1), P['jq']).clamp(0, 1)
    return x, soap[:, None], maps, pres

@torch.no_grad()
def draw(n, size, seed, device='cpu', clean=0.4, _info=None):
    H, W = size; dev = torch.device(device); Ps = []; clean = clean if clean >= 1 else max(0., clean - .14 * (1 - clean))  # some flaws turn out unseen and are dropped
    for i in range(n): Ps.append(make(np.random.RandomState((int(seed) * 1000003 + i * 7919 + 17) % (2 ** 32)), clean))
    N = Noise(seed * 31 + 5, dev); out = []; B = max(1, min(n, int(8 * 512 * 512 / (H * W)))) if dev.type == 'cuda' else max(1, min(n, 3))
    od = sorted(range(n), key=lambda i: (Ps[i]['m'], Ps[i]['odisp'][0] > 0))  # like with like: fewer objects to march
    for a in range(0, n, B): out.append(chunk([Ps[i] for i in od[a:a + B]], H, W, int(seed) * 977 + a, dev, N))
    inv = torch.tensor([od.index(i) for i in range(n)], device=dev); im, bar, maps, pres = [torch.cat(t)[inv] for t in zip(*out)]
    if _info is not None: _info.extend(Ps)
    kd = [p['kind'] for p in Ps]; 
    tr = [float(bool((p['tricky'] and not p['kind'] and (len(p['dis']) or p['des'] or p['gobo'])) or (p['kind'] and p['m'] > 0))) for p in Ps]
    return dict(image=im, bar=bar, maps=maps, present=pres, tricky=torch.tensor(tr, device=dev, dtype=torch.float32), kind=torch.tensor(kd, device=dev, dtype=torch.float32))
