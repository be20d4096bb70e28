"""Light on soap, props, table and wall; the finished picture as a camera sees it."""
import numpy as np
from PIL import Image
from scipy import ndimage as nd
from noise import F, at2, mix, resize, rgb, smooth, to_srgb


def bumped(P, N, h):
    """Tilt the normals by a height map given in the picture plane (after Mikkelsen)."""
    px, py = np.gradient(P, axis=1), np.gradient(P, axis=0)
    hx, hy = np.gradient(h, axis=1), np.gradient(h, axis=0)
    r1, r2 = np.cross(py, N), np.cross(N, px)
    det = (px * r1).sum(-1, keepdims=True)
    g = np.sign(det) * (r1 * hx[..., None] + r2 * hy[..., None])
    n = np.abs(det) * N - g
    bad = np.abs(det[..., 0]) < 1e-9
    n[bad] = N[bad]
    return (n / (np.linalg.norm(n, axis=-1, keepdims=True) + F(1e-12))).astype(F)


def reflect(V, N, lt):
    R = V - 2 * (V * N).sum(-1, keepdims=True) * N
    w = lt['wdir'] / np.linalg.norm(lt['wdir'])
    c = R @ w.astype(F)
    win = smooth(np.cos(lt['win'] * 1.2), np.cos(lt['win'] * .6), c)
    broad = np.maximum(c, 0)
    broad = broad * broad * broad
    broad = broad * broad
    broad = broad * broad
    return win, broad, np.clip(R[..., 2] * .5 + .5, 0, 1)


def lit(col, N, V, gloss, sh, ao, lt, wax=1.0):
    """Colour under the key light and the sky; wax: how far light wraps through the body."""
    ndl = (N @ lt['dir'])[..., None]
    wrap = np.array([.30, .22, .16], F) * F(wax)
    diff = np.clip((ndl + wrap) / (1 + wrap), 0, None) * (sh[..., None] * (1 - .06 * wax) + .06 * wax)
    up = (N[..., 2:3] * F(.5) + F(.5))
    amb = lt['sky'] * (up + lt['ground'] * (1 - up)) * ao[..., None]
    q = 1 - np.clip(-(V * N).sum(-1), 0, 1)
    q2 = q * q
    fr = F(.04) + F(.5) * q2 * q2 * q
    win, broad, up2 = reflect(V, N, lt)
    spec = gloss * (win * 1.6 * fr * 4 + broad * F(.10)) * sh + fr * gloss * up2 * lt['sky'].mean() * ao
    return col * (diff * lt['key'] + amb) + spec[..., None] * lt['key']


def soap_rgb(A, info, V, sh, ao, lt, k=1):
    col, h, gl = A.sample(k)
    M = info['solid'].M
    P = info['p'][::k, ::k] @ M.T
    N = info['n'][::k, ::k] @ M.T
    N[~info['hit'][::k, ::k]] = (0, 0, 1)
    return lit(col, bumped(P, N, h), V, np.clip(gl, 0, 2), sh, ao, lt)


# -- table and wall --------------------------------------------------------------------------------
SURF = ['wood', 'wood', 'planks', 'marble', 'linen', 'cloth', 'slate', 'paper', 'kraft', 'granite', 'plain', 'tiles', 'mat', 'stripes']


def surface(rng, x, y, kind):
    """Colour, height and gloss of a table at points in cm."""
    t = rng.random() * 6.28
    u, v = (x * np.cos(t) + y * np.sin(t) + F(200)), (y * np.cos(t) - x * np.sin(t) + F(200))
    n = at2(u * 22, v * 22)
    g, h = F(.1), n * F(.004)
    if kind in ('wood', 'planks'):
        c = rgb(['8a5f3c', 'b58a5c', 'd2b48a', '5a3d2a', 'a87848', '8d8174', 'c9c1b4'][rng.integers(7)])
        w = rng.uniform(5, 10)
        plank = np.floor(v / F(w)) if kind == 'planks' else np.zeros_like(v)
        uu = u + plank * F(37.7)
        ring = np.sin((v + at2(uu * 3, v * 10 + plank * 91) * F(.9)) * F(rng.uniform(3, 7)))
        fine = at2(uu * 6, v * 150)
        shade = 1 + ring * F(.08) + fine * F(.07) + at2(plank * 57.3, plank * 31.1) * F(.12)
        col, h = c * shade[..., None], fine * F(.006)
        if kind == 'planks':
            gap = smooth(.02, .1, np.abs(v / F(w) - np.round(v / F(w))) * F(w))
            col = col * (.25 + .75 * gap)[..., None]
        g = F(rng.uniform(.05, .5))
    elif kind == 'marble':
        m = at2(u * 9 + n * 9, v * 9)
        vein = 1 - smooth(.0, .22, np.abs(m + n * F(.15)))
        col = rgb('e9e7e3') * (1 + at2(u * 5, v * 5) * F(.03))[..., None]
        col = mix(col, rgb('8f8f92'), vein * F(.6))
        g, h = F(.7), n * 0
    elif kind in ('linen', 'cloth', 'stripes'):
        c = rgb(['d8cfbf', 'e9e4da', '8f9aa3', '5f6f66', 'b98f86', 'c7b894', '3f4a5c', 'eeeeea'][rng.integers(8)])
        k = F(rng.uniform(14, 34)) if kind != 'cloth' else F(50)
        we = np.sin(u * k + at2(u * 2, v * 60) * 2) * np.sin(v * k + at2(u * 60, v * 2) * 2)
        fold = at2(u * 2.2, v * 5)
        col = c * (1 + we * F(.10) + at2(u * 70, v * 5) * F(.05) + at2(u * 5, v * 70) * F(.05))[..., None]
        if kind == 'stripes':
            s = smooth(.75, .8, np.sin(u * F(1.1)))
            col = mix(col, rgb(['7a2f2f', '35506b', '55604a'][rng.integers(3)]), s * F(.85))
        h, g = we * F(.008) + fold * F(.2), F(.02)
    elif kind == 'slate':
        col = rgb('3a3d40') * (1 + n * F(.09) + at2(u * 4, v * 7) * F(.08))[..., None]
        h = n * F(.02)
    elif kind == 'granite':
        f = at2(u * 90, v * 90)
        col = rgb(['8c8884', '4a4644', 'b9aea2'][rng.integers(3)]) * (1 + np.clip(f, -1.6, 1.6) * F(.28))[..., None]
        g = F(.6)
    elif kind == 'kraft':
        col = rgb('b08d62') * (1 + at2(u * 60, v * 14) * F(.05) + n * F(.02))[..., None]
        h = at2(u * 3, v * 3) * F(.06)
    elif kind == 'tiles':
        w = F(rng.uniform(5, 11))
        d = np.minimum(*[np.abs(q / w - np.round(q / w)) * w for q in (u, v)])
        col = mix(rgb('9a948a') + 0 * u[..., None], rgb(['e8e6e0', '9fb5b8', 'd9c7ae'][rng.integers(3)]), smooth(.08, .16, d))
        h, g = smooth(.05, .3, d) * F(.06), F(.8)
    elif kind == 'mat':
        col = rgb(['2f5a50', '44484f', '6f7f9a'][rng.integers(3)]) * (1 + n * F(.02))[..., None]
        ln = np.minimum(*[np.abs(q / 2 - np.round(q / 2)) * 2 for q in (u, v)])
        col = mix(col, rgb('c9d2c4'), (1 - smooth(.015, .05, ln)) * F(.5))
    else:
        c = rgb(['f2f0ec', 'd9d4cc', 'c8b6a6', '6d7a80', 'e2c9c4', '2f2c2a', 'b7c4b1'][rng.integers(7)])
        col = c * (1 + n * F(.012) + at2(u * 4, v * 4) * F(.02))[..., None]
        g = F(rng.uniform(0, .4))
    return np.clip(col, .01, .9), h, g


def ground(rng, cam, lt, kind=None):
    D = cam.rays()
    z = D[..., 2]
    t = np.where(z < -1e-3, -cam.eye[2] / np.minimum(z, -1e-3), F(1e5))
    a = np.deg2rad(cam.az)
    back = np.array([-np.sin(a), np.cos(a), 0], F)
    wall = F(rng.uniform(10, 45))
    dn = np.maximum(D @ back, 1e-4)
    tw = (wall - cam.eye @ back) / dn
    onwall = (t > tw)
    P = cam.eye + D * np.minimum(t, 400)[..., None]
    col, h, g = surface(rng, P[..., 0], P[..., 1], kind or SURF[rng.integers(len(SURF))])
    N = np.zeros(D.shape, F)
    N[..., 2] = 1
    far = smooth(60, 160, t)
    Nb = bumped(P, N, h * (1 - far))
    if onwall.any():
        Q = cam.eye + D * np.clip(tw, 0, 600)[..., None]
        wc = rgb(['d9d5cd', 'b9b2a6', '8c979c', '6a5f55', 'cfd6d2', '3b3936', 'a88f78'][rng.integers(7)])
        lum = 1 + np.tanh(at2(Q[..., 0] * 3 + 300, Q[..., 2] * 3 + 50)) * F(.25)
        col[onwall] = (wc * lum[..., None])[onwall]
        Nb[onwall] = -back * .8 + np.array([0, 0, .6], F)
        N[onwall] = Nb[onwall]
        t = np.where(onwall, tw, t)
    return dict(D=D, t=t.astype(F), col=col, N=N, Nb=Nb, gloss=g * (1 - onwall * .9), wall=onwall)


# -- the camera ------------------------------------------------------------------------------------
def develop(lin, expo, curve):
    x = np.maximum(lin * F(expo), 0)
    hot = x > .7
    x[hot] = .7 + .3 * np.tanh((x[hot] - .7) / .45)
    s = to_srgb(x)
    return s + F(curve) * s * (1 - s) * (s - F(.45))


def lens(rng):
    return dict(blur=rng.uniform(.45, .95), sharp=rng.uniform(.2, .9), noise=rng.choice([.004, .009, .018, .03], p=[.4, .3, .2, .1]),
                vig=rng.uniform(0, .22), wb=np.exp(rng.normal(0, .045, 3) * [1, .4, 1.1]).astype(F), curve=rng.uniform(.2, 1.0),
                level=rng.uniform(.43, .63), quality=int(rng.integers(88, 96)))


def photograph(lin, ln, expo):
    """Optics and tone, without noise."""
    x = nd.gaussian_filter(lin, (ln['blur'], ln['blur'], 0), truncate=2.6)
    H, W = x.shape[:2]
    r = ((np.arange(H, dtype=F)[:, None] / H - .5) ** 2 + (np.arange(W, dtype=F)[None] / W - .5) ** 2)
    x = x * (1 - F(ln['vig']) * 2 * r)[..., None] * ln['wb']
    s = develop(x, expo, ln['curve'])
    y = s @ np.array([.3, .59, .11], F)
    return s + (F(ln['sharp']) * (y - nd.gaussian_filter(y, 1.3, truncate=2.5)))[..., None]


def finish(rng, s, ln):
    H, W = s.shape[:2]
    chroma = np.stack([resize(rng.standard_normal((H // 2, W // 2), dtype=F), (H, W)) for _ in range(3)], -1)
    n = rng.standard_normal((H, W), dtype=F)[..., None] + .6 * chroma
    s = s + n * F(ln['noise']) * (1.25 - s)
    return Image.fromarray((np.clip(s, 0, 1) * 255 + .5).astype(np.uint8))
