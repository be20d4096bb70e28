"""One picture from its plan: pose, soap, flaws, light, camera, labels."""
import numpy as np
from scipy import ndimage as nd
from base import bake, recipe
from flaws import NEED
from flaws2 import FLAW
from noise import F, resize
from scene import shadows, trace
from setting import POSES, build, camera, hand, light
from shade import develop, finish, ground, lens, lit, photograph, soap_rgb
from skin import Skin
from things import props, things

RAKE = {'wrinkled-top', 'mould-dimples', 'drag-lines', 'pinholes', 'crack'}


def size(rng):
    w = int(rng.choice([900, 912, 928, 960, 1024, 1200], p=[.5, .2, .15, .1, .03, .02]))
    h = int(w * rng.choice([.75, .75, .667, .667, .5625]))
    return (h, w) if rng.random() < .62 else (w, h)


def compose(g, cam, infos, skins, sh, ao, lt, cover):
    """Linear picture: table below, solids above it with soft borders."""
    out = g['lit'].copy()
    for k in np.argsort([-i['t'][i['hit']].mean() for i in infos]):
        i = infos[k]
        y0, y1, x0, x1 = i['rect']
        V, s, a = g['D'][y0:y1, x0:x1], sh[y0:y1, x0:x1], ao[y0:y1, x0:x1]
        if skins[k] is not None:
            c = soap_rgb(skins[k], i, V, s, a, lt)
        else:
            m = i['solid'].mat
            N = i['n'] @ i['solid'].M.T
            col = m['paint'](i['p']) if 'paint' in m else np.broadcast_to(np.asarray(m['col'], F), N.shape)
            c = lit(col, N, V, np.full(s.shape, m.get('gloss', .2), F), s, a, lt, m.get('wax', .6))
        vis = i['vis'].astype(F)
        m = nd.gaussian_filter(vis, .55, truncate=3)
        if not vis.any():
            continue
        if vis.mean() < .999:                                  # carry colours over the rim
            w = nd.uniform_filter(vis, 5) + F(1e-4)
            near = np.stack([nd.uniform_filter(c[..., q] * vis, 5) for q in range(3)], -1) / w[..., None]
            c = np.where(i['vis'][..., None], c, near)
        o = out[y0:y1, x0:x1]
        o += (c - o) * m[..., None]
    return out


def stage(rng, cam, lt, solids, kind=None):
    g = ground(rng, cam, lt, kind)
    depth, Nf = g['t'].copy(), g['N'].copy()
    infos = []
    for s in solids:
        i = trace(cam, s)
        if i is None or not i['hit'].any():
            continue
        y0, y1, x0, x1 = i['rect']
        d = depth[y0:y1, x0:x1]
        i['vis0'] = i['hit'] & (i['t'] < d)
        d[i['vis0']] = i['t'][i['vis0']]
        Nf[y0:y1, x0:x1][i['vis0']] = (i['n'] @ s.M.T)[i['vis0']]
        infos.append(i)
    for i in infos:
        y0, y1, x0, x1 = i['rect']
        i['vis'] = i['vis0'] & (i['t'] <= depth[y0:y1, x0:x1] + 1e-3)
    infos = [i for i in infos if i['vis'].any()]
    sh, ao = shadows(cam, depth, Nf, solids, lt['dir'], lt['hard'])
    if lt['gobo'] is not None:
        yy, xx = np.mgrid[:cam.h, :cam.w].astype(F) / F(cam.w)
        q = xx * np.cos(lt['gobo'][0]) + yy * np.sin(lt['gobo'][0])
        bars = np.sin(q * lt['gobo'][1]) + lt['gobo'][2]
        sh = sh * (.22 + .78 * np.clip(bars * lt['gobo'][3] + .5, 0, 1))
    b = lit(g['col'], g['Nb'], g['D'], g['gloss'] * np.ones_like(sh), sh, ao, lt, .1)
    t0 = min([np.median(i['t'][i['hit']]) for i in infos], default=40)
    if rng.random() < .75:
        k = np.clip((g['t'] / t0 - 1.25) * rng.uniform(.6, 2.2), 0, 1)[..., None]
        b2 = np.stack([resize(nd.gaussian_filter(b[::3, ::3, q], 2.6), b.shape[:2]) for q in range(3)], -1)
        b = b + (b2 - b) * k
    g['lit'] = b.astype(F)
    return g, infos, sh, ao


def draw(plan, key):
    """plan: flaws [(id, strength, extent)], deceive [..], kind ('soap', 'none', 'poor', 'close')."""
    rng = np.random.default_rng(key)
    kind, flaws = plan['kind'], plan['flaws']
    sz, ln = size(rng), lens(rng)
    if kind == 'none':
        solids, cam, lt, surf = things(rng, sz)
        rec, need = None, None
    else:
        names = [f[0] for f in flaws]
        need = next((NEED[n] for n in names if n in NEED), 'any')
        if need == 'topcut' and 'colour-bled' in names:
            need = 'cut'
        style = plan['style']
        pose = POSES[need][rng.integers(len(POSES[need]))]
        if plan.get('pose'):
            pose = plan['pose']
        if kind == 'close':
            pose = {'cut': 'lying', 'any': 'lying', 'topcut': 'lying', 'top': 'mould', 'side': 'standing'}[need]
        if 'crinkle' in plan['deceive'] or ('botanicals' in plan['deceive'] and pose == 'lying'):
            pose = 'lying' if 'crinkle' in plan['deceive'] else 'loaf'
        bars, mid, ext = build(rng, pose)
        if kind == 'close' and need == 'side':
            bars[0].roles = {k: 'side' for k in range(6)}
        cam = camera(rng, sz, pose, need, mid, ext, bars, kind == 'close')
        lt = light(rng, cam.az, bool(RAKE & set(names)) and rng.random() < .7)
        solids, surf = list(bars), None
        if pose == 'held':
            solids += hand(rng, bars[0])
        elif rng.random() < .25 and kind != 'close' and pose in ('lying', 'standing', 'mould', 'stack'):
            solids += props(rng, bars, cam)
        rec = recipe(rng, style, plan.get('pale'), plan['deceive'])
        if 'gobo' in plan['deceive']:
            lt['gobo'] = (rng.uniform(.2, 2.8), rng.uniform(8, 40), rng.uniform(-.3, .5), rng.uniform(1, 6))
            lt['hard'] = F(9)
    for s in solids:
        s.soap = bool(s.roles)
    g, infos, sh, ao = stage(rng, cam, lt, solids, surf)
    clean, spoil = [], []
    mask = np.zeros(sz, bool)
    for n, i in enumerate(infos):
        A = None
        if i['solid'].soap:
            i['hit_full'] = i['hit']
            A = Skin(i, cam, i['solid'].roles)
            A = A if A.ok else None
            i['solid'].mat = i['solid'].mat or dict(col=rec['base'] if rec else (.5, .5, .5))
            y0, y1, x0, x1 = i['rect']
            mask[y0:y1, x0:x1] |= i['vis']
            if A is not None:
                bake(A, rec, n, n * 2.6)
        clean.append(A)
        spoil.append(A is not None and (n == 0 or rng.random() < .6))
    if spoil and not any(spoil):
        spoil = [a is not None for a in clean]

    def flawed(use):
        out = []
        for n, A in enumerate(clean):
            if A is not None and spoil[n] and use:
                A = A.copy()
                for f in use:
                    q = np.random.default_rng([*np.atleast_1d(key), len(f[0]), 7, n if f[0] in ('crack',) else n + 1])
                    if f[0] in ('coloured-specks', 'smears', 'orange-spots', 'layer-gap', 'brown-outside-in', 'crackle-network'):
                        q = np.random.default_rng([*np.atleast_1d(key), len(f[0]), 8])
                    FLAW[f[0]](A, q, f[1], f[2], rec)
                np.clip(A.col, .002, .96, out=A.col)
            out.append(A)
        return out

    full = flawed(flaws)
    lin = compose(g, cam, infos, full, sh, ao, lt, mask)
    med = np.median(lin[mask].mean(-1)) if mask.sum() > 500 else np.median(lin)
    whole = np.mean(lin)
    expo = (ln['level'] ** 2.2) * 1.35 / (.5 * med + .5 * whole)
    img = photograph(lin, ln, expo)
    present, share = [], {}
    for f in flaws:
        rest = flawed([x for x in flaws if x is not f])
        seen = np.zeros(sz, bool)
        for i, A, B in zip(infos, full, rest):
            if A is None or A is B:
                continue
            y0, y1, x0, x1 = i['rect']
            V, s, a = (q[y0:y1:2, x0:x1:2] for q in (g['D'], sh, ao))
            c1, c2 = (develop(soap_rgb(q, i, V, s, a, lt, 2) * ln['wb'], expo, ln['curve']) for q in (A, B))
            d = nd.gaussian_filter(np.abs(c1 - c2).max(-1), .5)
            hot = (d > .03 + .9 * ln['noise']).repeat(2, 0).repeat(2, 1)[:y1 - y0, :x1 - x0]
            seen[y0:y1, x0:x1] |= hot & i['vis']
        if seen.sum() > max(90, .0014 * mask.sum()):
            present.append(f[0])
            share[f[0]] = round(float(seen.sum() / mask.sum()), 4)
    if kind == 'poor':
        how = rng.integers(3)
        if how == 0:
            img = nd.gaussian_filter(img, (*[max(sz) / rng.uniform(40, 60)] * 2, 0))
        elif how == 1:
            img = img * F(rng.uniform(.06, .1))
            ln['noise'] = .035
        else:
            L = max(sz) / rng.uniform(9, 14)
            img = nd.uniform_filter1d(nd.gaussian_filter(img, (5, 5, 0)), int(L), axis=int(rng.integers(2)))
        present, share = [], {}
    return finish(rng, img, ln), mask, present, share, ln['quality']
