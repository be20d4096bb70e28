"""Tracing through trace.c, light on it all, and the phone camera."""
import ctypes
import os

import numpy as np

from compiled import built

from .noise import blur, softblur, step, noise, resize, lerp


LIB = built(os.path.dirname(os.path.abspath(__file__)), 'trace.c')


def ptr(a):
    return a.ctypes.data_as(ctypes.c_void_p)


def light(rng):
    """Direction, softness, colours of key and fill, maybe a pattern of shadows."""
    e, a = np.radians(rng.uniform(22, 72)), rng.uniform(-2.6, 2.6) + 1.57
    L = np.array([np.cos(e) * np.cos(a), np.sin(e), np.cos(e) * np.sin(a) * .8 + .1])
    k = rng.random()
    warm = np.array([1, .72, .44]) if k < .25 else np.array([1, .88, .72]) if k < .5 else np.array([1, .97, .92])
    sky = np.array([.82, .92, 1.1]) if rng.random() < .6 else np.array([1, .93, .84])
    key = rng.uniform(.55, 1.6)
    return dict(L=(L / np.linalg.norm(L)).astype(np.float32), soft=float(np.exp(rng.uniform(np.log(2.5), np.log(22)))), key=(warm * key).astype(np.float32), fill=(sky * rng.uniform(.3, .75)).astype(np.float32), gobo=None, glare=0.0)


def geometry(sc, cam, W, H, lt):
    n = len(sc.rows)
    obj = np.ascontiguousarray(np.stack(sc.rows), np.float32)
    tops = np.ascontiguousarray(np.stack(sc.tops) if sc.tops else np.zeros((1, 33, 33)), np.float32)
    g = dict(W=W, H=H, obj=obj, id=np.empty((H, W), np.int32), pos=np.empty((H, W, 3), np.float32), nrm=np.empty((H, W, 3), np.float32),
             dep=np.empty((H, W), np.float32), sh=np.empty((H, W), np.float32), ao=np.empty((H, W), np.float32), cam=cam)
    LIB.trace(W, H, ptr(cam), n, ptr(obj), ptr(tops), ptr(lt['L']), ctypes.c_float(lt['soft']),
              ptr(g['id']), ptr(g['pos']), ptr(g['nrm']), ptr(g['dep']), ptr(g['sh']), ptr(g['ao']))
    g['soap'] = np.isin(g['id'], [i for i, s in enumerate(sc.soap) if s])
    x, y = np.meshgrid((np.arange(W) + .5) / W * 2 - 1, 1 - (np.arange(H) + .5) / H * 2)
    d = cam[3:6] * (x * cam[12])[..., None] + cam[6:9] * (y * cam[13])[..., None] + cam[9:12]
    g['view'] = (d / np.linalg.norm(d, axis=2, keepdims=True)).astype(np.float32)
    return g


def paint(g, packs):
    """packs: (texture, ppc) for each object's three faces, then twelve levels of ground and wall."""
    parts, tab, off = [], [], 0
    seen = {}
    for t, ppc in packs:
        if id(t) not in seen:
            seen[id(t)] = off
            parts.append(t.ravel())
            off += t.size
        tab += [seen[id(t)], t.shape[1], t.shape[0], int(ppc * 100)]
    tex, tab = np.concatenate(parts), np.array(tab, np.int32)
    n = g['id'].size
    alb, nr, gl = np.empty((n, 3), np.float32), np.empty((n, 3), np.float32), np.empty(n, np.float32)
    pix = float(2 * g['cam'][12] / g['W'])
    LIB.paint(n, len(g['obj']), ptr(g['obj']), ptr(g['id']), ptr(g['pos']), ptr(g['nrm']), ptr(g['dep']), ptr(tex), ptr(tab), ctypes.c_float(pix), ptr(alb), ptr(nr), ptr(gl))
    s = g['id'].shape
    return alb.reshape(*s, 3), nr.reshape(*s, 3), gl.reshape(s)


def lit(g, packs, lt):
    """Linear light that reaches the camera."""
    alb, N, gl = paint(g, packs)
    L, V = lt['L'], g['view']
    sh = g['sh']
    if lt['gobo']:
        P = g['cam'][:3] + V * g['dep'][..., None]
        sh = sh * lt['gobo'](P, L)
    ndl = N @ L
    soap = g['soap']
    wrap = np.where(soap, .22, .05).astype(np.float32)
    dif = np.clip((ndl + wrap) / (1 + wrap), 0, None) * sh
    if soap.any():  # light that creeps through the soap
        m = soap.astype(np.float32)
        glow = softblur(dif * m, g['W'] * .012) / np.maximum(softblur(m, g['W'] * .012), .05)
        dif = np.where(soap, dif * .72 + .28 * glow, dif)
    amb = (.62 + .38 * N[..., 1]) * g['ao']
    col = alb * (lt['key'] * dif[..., None] + lt['fill'] * amb[..., None] + .06 * lt['key'] * (g['ao'] * (.5 - .5 * N[..., 1]))[..., None])
    Hh = L - V
    Hh /= np.sqrt(np.einsum('ijk,ijk->ij', Hh, Hh))[..., None]
    nh = np.clip(np.einsum('ijk,ijk->ij', N, Hh), 0, 1)
    nv = np.clip(-np.einsum('ijk,ijk->ij', N, V), 0, 1)
    fr = .04 + .5 * (1 - nv) ** 5
    ex = 8 + 240 * gl * gl
    sp = nh ** ex * (ex + 8) / 60 * sh * (fr + .03) * (.3 + gl)
    R = V + 2 * nv[..., None] * N
    sky = step(R[..., 1], .1, .9) * fr * gl * 1.1
    if lt['glare']:
        sp = sp + lt['glare'] * step(nh, .93, .985) * soap
    return col + sp[..., None] * lt['key'] + sky[..., None] * lt['fill'] * g['ao'][..., None]


def exposure(rng, lin):
    y = lin[::4, ::4].mean(2)
    return rng.uniform(.82, 1.12) / (.45 * y.mean() / .23 + .55 * np.quantile(y, .97) / .80)


def develop(lin, ex, wb, sat=1.06):
    """Phone tone curve; returns sRGB 0..1."""
    x = np.clip(lin * ex * wb, 0, None)
    x = np.where(x > .6, .6 + .4 * (1 - np.exp(-(x - .6) / .4)), x)
    y = x ** (1 / 2.2)
    m = y.mean(2, keepdims=True)
    y = m + (y - m) * sat
    return (y + .10 * (y - .5) * (1 - np.abs(2 * y - 1))).astype(np.float32)


def lens(g, img, focus, amount):
    """Depth of field: what is far from the focus is blurred."""
    i = g['id']
    e = np.zeros(i.shape, np.float32)  # smooth the stairs along outlines
    e[:, 1:] += i[:, 1:] != i[:, :-1]
    e[1:] += i[1:] != i[:-1]
    e = np.clip(blur(e, 1) * 2, 0, 1)[..., None]
    img = img + (np.stack([blur(img[..., k], .9) for k in range(3)], 2) - img) * e
    if amount < .3:
        return img
    c = np.abs(1 / np.maximum(g['dep'], 1) - 1 / focus) * focus * amount
    c = blur(np.clip(c, 0, 8), 2)
    out = img.copy()
    for lo, s in ((.6, 1.6), (2, 3.6), (4.5, 7)):
        t = step(c, lo * .6, lo * 1.4)[..., None]
        if t.max() <= 0:
            break
        b = np.stack([softblur(img[..., k], s) for k in range(3)], 2)
        out = lerp(out, b, t)
    return out


def sensor(rng, img, W, H, quality=1.0):
    """Softness, noise, sharpening, vignette; the picture at its final size."""
    img = np.stack([blur(img[..., k], .62 + .5 * (1 - quality)) for k in range(3)], 2)
    img = np.stack([resize(img[..., k], H, W) for k in range(3)], 2)
    amp = rng.uniform(.002, .012) * (1 + 1.5 * (1 - quality))
    n = rng.standard_normal((H, W)).astype(np.float32)
    n = .6 * n + 1.3 * blur(n, .8)
    img += (n * amp * (1.25 - img.mean(2)))[..., None]
    for k in range(3):
        img[..., k] += noise(rng, H, W, 3) * amp * .5
    s = rng.uniform(.1, .6)
    img = np.stack([img[..., k] + s * (img[..., k] - blur(img[..., k], 1.2)) for k in range(3)], 2)
    y, x = np.ogrid[-1:1:H * 1j, -1:1:W * 1j]
    return img * (1 - rng.uniform(0, .16) * (x * x + y * y) / 2)[..., None].astype(np.float32)
