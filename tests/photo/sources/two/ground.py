"""Tables, cloths and backdrops."""
import numpy as np
import torch
import torch.nn.functional as F
from noise import unit3, fbm, sstep, grid, resize, dots, blur
from body import pick

KINDS = ['oak', 'walnut', 'pine', 'grey', 'marble', 'linen', 'check', 'stripe', 'board', 'board', 'slate', 'concrete', 'tile', 'paper', 'rack', 'towel', 'granite']


def texture(rng, kind, ppc, n=720):
    """Square tile of a table top: rgb, height in mm, gloss."""
    y, x = grid(n, n)
    p = ppc
    hgt, gloss = np.zeros((n, n), np.float32), .2
    if kind in ('oak', 'walnut', 'pine', 'grey'):
        base = dict(oak=(.72, .55, .37), walnut=(.36, .24, .16), pine=(.84, .69, .48), grey=(.56, .53, .49))[kind]
        pw = rng.uniform(5, 14) * p
        pl = np.floor(y / pw).astype(int)
        tone = rng.normal(0, .07, pl.max() + 1)[pl]
        t = fbm(rng, n, n, .5 * p, 5, .7, sx=14) + .8 * np.sin(y / p * 2.5 + 2.5 * fbm(rng, n, n, 4 * p, 2, sx=3) + pl * 7)
        rgb = np.array(base) * (1 + .09 * t + tone)[..., None]
        fine = fbm(rng, n, n, .1 * p, 2, sx=20)
        rgb = rgb * (1 - .12 * np.clip(fine - .5, 0, 2))[..., None]
        seam = np.abs(((y + pw / 2) % pw) - pw / 2)
        rgb *= (1 - .7 * np.exp(-(seam / (.05 * p)) ** 2))[..., None]
        hgt += .03 * fine
        gloss = rng.uniform(.1, .5)
    elif kind in ('marble', 'granite'):
        v = np.abs(fbm(rng, n, n, 7 * p, 6, .55))
        rgb = np.array(rng.choice([.93, .9, .3], p=[.5, .3, .2]) * np.ones(3)) * (1 + .03 * fbm(rng, n, n, 3 * p, 3))[..., None]
        if kind == 'marble':
            rgb = rgb + (np.array([.5, .5, .52]) - rgb) * (np.exp(-v / .07) * sstep(fbm(rng, n, n, 5 * p, 2), -1, 1))[..., None] * .8
        else:
            rgb = rgb * .8 * (1 + .12 * fbm(rng, n, n, .3 * p, 3, .9))[..., None]
        gloss = .6
    elif kind in ('linen', 'check', 'stripe', 'towel'):
        c = pick(rng, [(.88, .85, .78), (.75, .70, .62), (.58, .62, .66), (.93, .93, .92), (.48, .52, .46), (.70, .45, .42), (.3, .33, .4)])
        fr = rng.uniform(5, 9) if kind != 'towel' else 3.5
        wv = np.sin(x / p * fr * 6.28 + fbm(rng, n, n, 2 * p, 2)) * np.sin(y / p * fr * 6.28 + fbm(rng, n, n, 2 * p, 2))
        th = fbm(rng, n, n, .2 * p, 3, sx=10) + fbm(rng, n, n, .2 * p, 3, sy=10)
        rgb = c * (1 + .06 * wv + .05 * th)[..., None]
        if kind in ('check', 'stripe'):
            c2, q = pick(rng, [(.7, .2, .2), (.25, .35, .55), (.3, .45, .35), (.4, .4, .4)]), rng.uniform(1.5, 4) * p
            a = (np.sin(x / q * 3.14) > .2) * .55
            a = np.maximum(a * .7, 0) + ((np.sin(y / q * 3.14) > .2) * .4 if kind == 'check' else 0)
            rgb += (c2 - rgb) * blur(a.astype(np.float32), 1.5)[..., None]
        f = fbm(rng, n, n, 9 * p, 3, .5, sx=1.6)
        hgt += 5 * np.abs(f) * rng.choice([0., .5, 1.2]) + .12 * wv + .08 * th
        gloss = 0.
    elif kind == 'board':
        rgb = pick(rng, [(.95, .95, .94), (.93, .90, .86), (.2, .2, .21), (.80, .84, .86), (.88, .78, .74), (.62, .68, .62), (.5, .5, .52)]) * (1 + .01 * fbm(rng, n, n, .1 * p, 3, .9) + .015 * fbm(rng, n, n, 6 * p, 3))[..., None]
    elif kind == 'paper':
        cr = np.abs(fbm(rng, n, n, 4 * p, 3, .4)) * 4
        rgb = pick(rng, [(.78, .66, .50), (.93, .91, .86), (.86, .80, .70)]) * (1 + .02 * fbm(rng, n, n, .08 * p, 3, .9))[..., None]
        hgt += cr * .5
    elif kind in ('slate', 'concrete'):
        b = .22 if kind == 'slate' else .66
        t = fbm(rng, n, n, 4 * p, 7, .65)
        rgb = np.array([b, b * 1.01, b * 1.03]) * (1 + .09 * t)[..., None]
        hgt += .25 * t
        if kind == 'concrete':
            rgb *= (1 - .4 * dots(n, n, [(rng.random() * n, rng.random() * n, rng.uniform(.01, .07) * p, 1) for _ in range(120)], 1))[..., None]
    elif kind == 'tile':
        q = rng.uniform(4, 10) * p
        d = np.minimum(np.abs((x + q / 2) % q - q / 2), np.abs((y + q / 2) % q - q / 2))
        c = pick(rng, [(.92, .92, .9), (.75, .82, .84), (.82, .74, .66), (.35, .42, .48)])
        tone = rng.normal(0, .03, (60, 60))[np.floor(y / q).astype(int) % 60, np.floor(x / q).astype(int) % 60]
        rgb = c * (1 + tone + .015 * fbm(rng, n, n, 2 * p, 3))[..., None]
        rgb += (np.array([.7, .68, .65]) - rgb) * (1 - sstep(d, .1 * p, .13 * p))[..., None]
        gloss = .7
    else:  # a wire rack over something dark or pale
        q = rng.uniform(1.2, 2.2) * p
        rgb = np.ones((n, n, 3)) * pick(rng, [(.25, .22, .2), (.8, .78, .74), (.5, .4, .32)]) * (1 + .04 * fbm(rng, n, n, 3 * p, 3))[..., None]
        d = np.abs((x + q / 2) % q - q / 2) / (.13 * p)
        rgb *= (1 - .4 * np.exp(-(np.abs((x + q / 2 - .4 * p) % q - q / 2) / (.2 * p)) ** 2))[..., None]
        m = 1 - sstep(d, .8, 1.1)
        rgb += (np.array([.72, .72, .73]) * (1.25 - .8 * d[..., None] ** 2) - rgb) * m[..., None]
    return np.clip(rgb, .01, 1.05).astype(np.float32), hgt.astype(np.float32), float(gloss)


def table(rng, cam, kind, ang, far):
    """Albedo, normals, gloss, points for the table in view; also the backdrop's share."""
    h, w = cam.h, cam.w
    y, x = grid(h, w)
    D = cam.rays(x, y)
    dz = np.minimum(D[..., 2], -.004)
    t = cam.pos[2] / -dz
    P = cam.pos + D * t[..., None]
    P[..., 2] = 0
    sc = cam.f / np.linalg.norm(cam.pos)
    ppc = float(np.clip(sc * .9, 8, 32))
    rgb, hgt, gl = texture(rng, kind, ppc)
    n = rgb.shape[0]
    dv, du = np.gradient(hgt)
    c, s = np.cos(ang), np.sin(ang)
    u, v = P[..., 0] * c + P[..., 1] * s, P[..., 1] * c - P[..., 0] * s
    k = ppc * .1
    tex = np.concatenate([rgb, (du * k)[..., None], (dv * k)[..., None]], -1).astype(np.float32)
    g = np.stack([u, v], -1) * ppc / (n / 2)
    g = 1 - np.abs((g + 1) % 4 - 2)  # mirror tiling
    o = F.grid_sample(torch.from_numpy(tex).permute(2, 0, 1)[None], torch.from_numpy(g.astype(np.float32))[None], align_corners=True, padding_mode='border')[0].permute(1, 2, 0).numpy()
    N = np.zeros((h, w, 3), np.float32)
    N[..., 2] = 1
    N[..., 0] -= o[..., 3] * c
    N[..., 1] -= o[..., 3] * s + o[..., 4] * c
    N = unit3(N)
    depth = (P - cam.pos) @ cam.M[2]
    fwd = cam.M[2, :2] / (np.linalg.norm(cam.M[2, :2]) + 1e-6)
    back = sstep(((P[..., :2] - cam.pos[:2]) @ fwd) - (far - cam.pos[:2] @ fwd), -.4, .4) if cam.M[2, 2] > -.93 else np.zeros((h, w), np.float32)
    back = np.maximum(back, (D[..., 2] > -.004).astype(np.float32))
    return o[..., :3], N, gl, P.astype(np.float32), back, depth, D


def backdrop(rng, h, w):
    """A wall or a dim room, out of focus (linear light)."""
    H, W, h, w = h, w, h // 4, w // 4
    y, x = grid(h, w)
    c = pick(rng, [(.85, .83, .8), (.5, .5, .5), (.3, .28, .26), (.7, .74, .72), (.55, .42, .33), (.93, .93, .92)]) ** 2.2
    im = c * (1 + .15 * fbm(rng, h, w, 125, 2))[..., None]
    if rng.random() < .7:
        for _ in range(rng.integers(3, 12)):
            a, b = rng.uniform(.03, .22, 2) * w
            m = (np.abs(x - rng.random() * w) < a) & (np.abs(y - rng.random() * h) < b)
            im = im + (pick(rng, [(.8, .75, .7), (.3, .25, .2), (.4, .5, .4), (.9, .9, .9), (.5, .35, .25), (.3, .4, .5)]) ** 2.2 - im) * (m * rng.uniform(.4, 1))[..., None]
        if rng.random() < .4:
            im = im + dots(h, w, [(rng.random() * w, rng.random() * h * .5, rng.uniform(.01, .035) * w, .8) for _ in range(9)], 1)[..., None] * np.array([1.4, 1.2, .9])
    im = blur(im.astype(np.float32), rng.uniform(2.5, 7))
    return np.stack([resize(im[..., i], H, W) for i in range(3)], -1)
