"""Grounds and walls: tiles that repeat, and their smaller copies."""
import numpy as np
from PIL import Image
from .noise import step, mix, hsv
from scipy import ndimage as nd

S = 512


def tn(rng, cell, cellx=None):
    """Noise that repeats."""
    gh, gw = max(1, round(S / cell)), max(1, round(S / (cellx or cell)))
    g = np.pad(rng.standard_normal((gh, gw)).astype(np.float32), 3, mode='wrap')
    return np.asarray(Image.fromarray(g).resize((S, S), Image.BICUBIC, box=(3, 3, 3 + gw, 3 + gh)), np.float32) * 1.3


def tf(rng, cell, n=5, gain=.55):
    return sum(gain ** i * tn(rng, cell / 2 ** i) for i in range(n)) / 1.25


def ground(rng, ppc, kind=None):
    y, x = np.mgrid[0:S, 0:S].astype(np.float32)
    kinds = ['wood', 'wood', 'linen', 'gingham', 'marble', 'paper', 'concrete', 'tiles', 'slate', 'terrazzo', 'clay', 'palm', 'plain']
    k = kind or kinds[rng.integers(len(kinds))]
    h = np.zeros((S, S), np.float32)
    alb = np.empty((S, S, 3), np.float32)
    gls = .15
    if k == 'wood':
        base = np.array([(.72, .54, .36), (.45, .30, .20), (.80, .68, .52), (.55, .50, .46), (.30, .20, .15), (.88, .84, .78)][rng.integers(6)], np.float32)
        nb = int(rng.choice([3, 4, 6]))
        bd = (y * nb / S).astype(int)
        tone = rng.normal(0, .06, nb).astype(np.float32)[bd]
        sh = rng.uniform(0, 600, nb).astype(np.float32)[bd]
        g = tn(rng, 14, 380) + .6 * tn(rng, 5, 250) + .5 * tn(rng, 60, 380)
        g = nd.map_coordinates(g, [y, x + sh], order=0, mode='wrap')
        alb[:] = base
        alb *= (1 + tone + .09 * g + .04 * tn(rng, 2, 60))[..., None]
        e = np.abs((y * nb / S) % 1 - .5)
        gap = step(e, .485, .497)
        alb *= 1 - .65 * gap[..., None]
        h += -gap * .1 + .004 * g
        gls = rng.uniform(.05, .4)
    elif k in ('linen', 'gingham'):
        c = np.array([(.85, .82, .75), (.55, .58, .62), (.75, .62, .58), (.92, .91, .89), (.30, .36, .42), (.70, .30, .28)][rng.integers(6)], np.float32)
        alb[:] = c
        p = 2 * np.pi * 128 / S
        tx, ty = np.sin(x * p + .6 * tn(rng, 40)), np.sin(y * p + .6 * tn(rng, 40))
        wv = np.where((np.floor(x * 128 / S) + np.floor(y * 128 / S)) % 2 > 0, tx, ty)
        alb *= (1 + .06 * wv + .05 * tn(rng, 3, 40) + .05 * tn(rng, 40, 3))[..., None]
        if k == 'gingham':
            d, n = hsv(rng.random(), rng.uniform(.15, .5), .55), int(rng.choice([8, 12, 16]))
            a = ((x * n / S).astype(int) % 2) * .45 + ((y * n / S).astype(int) % 2) * .45
            mix(alb, d, a.astype(np.float32))
        h += .012 * wv + .12 * tn(rng, 190) * rng.uniform(0, 1)
        gls = .03
    elif k == 'marble':
        alb[:] = (.90, .90, .89) if rng.random() < .7 else (.20, .21, .22)
        n = tf(rng, 300, 6)
        v = np.exp(-np.abs(n) * 14) + .5 * np.exp(-np.abs(tf(rng, 200, 6) - .4) * 22)
        mix(alb, (.55, .56, .58), np.clip(.5 * v, 0, 1))
        alb *= (1 + .02 * tf(rng, 250))[..., None]
        gls = .6
    elif k in ('concrete', 'slate', 'clay', 'paper', 'plain'):
        c = {'concrete': (.62, .61, .59), 'slate': (.24, .25, .27), 'clay': (.66, .38, .26), 'paper': (.72, .58, .42)}.get(k)
        alb[:] = c if c else np.clip(hsv(rng.random(), rng.uniform(0, .25), rng.uniform(.3, .97)), 0, .96)
        amp = .02 if k in ('paper', 'plain') else .045
        alb *= (1 + amp * tf(rng, 200, 6, .65) + .5 * amp * tn(rng, 2))[..., None]
        h += (.03 if k == 'slate' else .006) * tf(rng, 90, 6, .6)
        gls = .05 if k == 'paper' else rng.uniform(.05, .3)
    elif k == 'tiles':
        n = int(rng.choice([3, 4, 6]))
        c = hsv(rng.random(), rng.uniform(0, .3), rng.uniform(.5, .93))
        e = np.minimum(.5 - np.abs((x * n / S) % 1 - .5), .5 - np.abs((y * n / S) % 1 - .5))
        t = rng.normal(0, .04, (n, n)).astype(np.float32)[(y * n / S).astype(int), (x * n / S).astype(int)]
        alb[:] = c
        alb *= (1 + t + .02 * tf(rng, 90))[..., None]
        g = 1 - step(e, .012, .03)
        mix(alb, (.78, .76, .72), g)
        h -= .06 * g
        gls = .5
    elif k == 'terrazzo':
        alb[:] = (.86, .84, .80)
        for _ in range(5):
            mix(alb, hsv(rng.random(), rng.uniform(.05, .5), rng.uniform(.3, .9)), step(tf(rng, 30, 3), 1.25, 1.3))
        gls = .4
    else:  # palm mat, plaited
        n = 16
        q = ((x * n / S).astype(int) + (y * n / S).astype(int)) % 2
        fx, fy = (x * n / S) % 1, (y * n / S) % 1
        ar = np.where(q > 0, np.sin(np.pi * fx), np.sin(np.pi * fy))
        alb[:] = (.78, .66, .42)
        alb *= (.7 + .35 * ar + .06 * np.where(q > 0, tn(rng, 60, 3), tn(rng, 3, 60)))[..., None]
        h += .1 * ar
        gls = .1
    if k in ('wood', 'marble', 'plain') and rng.random() < .5 or rng.random() < .3:
        alb, h = alb.transpose(1, 0, 2), h.T
    out = np.empty((S, S, 6), np.float32)
    out[..., :3] = np.clip(alb, .02, .97) ** 2.2
    hp = np.pad(h, 1, mode='wrap') * ppc
    out[..., 3] = (hp[1:-1, 2:] - hp[1:-1, :-2]) / 2
    out[..., 4] = (hp[2:, 1:-1] - hp[:-2, 1:-1]) / 2
    out[..., 5] = gls
    return out


def levels(t):
    L = [t]
    for _ in range(5):
        a = L[-1]
        L.append((a[::2, ::2] + a[1::2, ::2] + a[::2, 1::2] + a[1::2, 1::2]) / 4)
    return L
