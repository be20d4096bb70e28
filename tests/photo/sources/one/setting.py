"""Poses of bars and loaves, the camera and the light."""
import numpy as np
from noise import F, fbm
from scene import Camera, Solid, rot

CUT = {0: 'side', 1: 'side', 2: 'cut', 3: 'cut', 4: 'side', 5: 'top'}
MOULD = {0: 'side', 1: 'side', 2: 'side', 3: 'side', 4: 'side', 5: 'top'}
LOAF = {0: 'cut', 1: 'cut', 2: 'side', 3: 'side', 4: 'side', 5: 'top', 'loaf': True}


def wavy_top(rng, h):
    n = fbm(rng, (320, 320), (rng.uniform(50, 140), rng.uniform(35, 90)), 2)
    k = rng.integers(3)
    x = np.linspace(0, 1, 320, dtype=F)
    if k == 1:
        n = np.sin(x[None] * rng.uniform(15, 45) + n) + .4 * n
    elif k == 2:
        n = np.abs(n) * 1.4 - .7 + np.exp(-((x[:, None] - .5) / .12) ** 2)
    n = n - n.min()
    return (n / n.max() * h).astype(F)


def cut_bar(rng, dims, centre, turn, top=None):
    s = Solid(dims, centre, turn, R=rng.choice([.06, .12, .25]), r=rng.choice([.04, .08, .14]), thin=1, top=top)
    s.roles = CUT
    return s


def build(rng, pose):
    """Solids of soap (z up, table at 0), height of the middle, and extent."""
    a, c, b = rng.uniform(3.2, 4.6), rng.uniform(2.3, 3.4), rng.uniform(1.0, 1.5)
    top = wavy_top(rng, rng.uniform(.1, .42)) if pose != 'stack' and rng.random() < .4 else None
    rough = top.max() if top is not None else 0
    lie = rot(0, 90) if rng.random() < .8 else rot(0, -90)
    if pose == 'lying':
        return [cut_bar(rng, (a, b, c), (0, 0, b), lie, top)], b, 4.8
    if pose == 'standing':
        return [cut_bar(rng, (a, b, c), (0, 0, c), rot(2, rng.uniform(-20, 20)), top)], c, 4.6
    if pose == 'mould':
        R = rng.choice([.3, .8, 1.6, c - .02])
        a = c if R > 2 else a
        s = Solid((a, c, b), (0, 0, b), rot(2, rng.uniform(-30, 30)), R=R, r=rng.uniform(.1, .45), thin=2)
        s.roles = MOULD
        return [s], b, 4.8
    if pose in ('loaf', 'loafcut'):
        L, w, h = rng.uniform(7, 12), rng.uniform(3, 4), rng.uniform(2.4, 3.4)
        s = Solid((L, w, h), (0, 0, h), np.eye(3), R=.15, r=rng.choice([.06, .2]), thin=2, top=top)
        s.roles = LOAF
        out = [s]
        if pose == 'loafcut':
            x = L + 1.6
            for _ in range(rng.integers(1, 4)):
                t = rot(2, 90 + rng.normal(0, 8))
                q = cut_bar(rng, (w, 1.2, h), (x, rng.normal(0, .3), h), t)
                out.append(q)
                x += 2.4 + rng.uniform(.4, 1.6)
            for q in out:
                q.c[0] -= F((x - L) * .6)
        return out, h, L * .85 + (len(out) - 1) * 1.2
    if pose == 'row':
        out, n, g = [], rng.integers(3, 6), rng.uniform(.15, 1.6)
        for i in range(n):
            out.append(cut_bar(rng, (a, b, c), (rng.normal(0, .2), (i - n / 2) * (2 * b + g), c), rot(2, rng.normal(0, 3)), top))
        return out, c, 5.2
    if pose == 'stack':
        out, z = [], 0
        for i in range(rng.integers(2, 5)):
            out.append(cut_bar(rng, (a, b, c), (rng.normal(0, .3), rng.normal(0, .25), z + b), rot(2, rng.normal(0, 14)) @ lie, top))
            z += 2 * b
        return out, z / 2, 5.4
    if pose == 'several':
        out, n = [], rng.integers(2, 7)
        nx = 2 if n < 5 else 3
        for i in range(n):
            q = np.array([(i % nx - (nx - 1) / 2) * (2 * a + 1.1), (i // nx - (n - 1) // nx / 2) * (2 * c + rough + .8), b])
            t = rot(2, rng.normal(0, 7)) @ lie
            out.append(cut_bar(rng, (a, b, c), q + np.append(rng.normal(0, .15, 2), 0), t, top))
        return out, b, 6.0 + 2.2 * (nx - 1) + n * .3
    if pose == 'held':
        s = cut_bar(rng, (a, b, c), (0, 0, 8), rot(0, 90), None)
        return [s], 8, 5.6
    raise ValueError(pose)


def hand(rng, bar):
    """Fingers and a thumb around a bar that is held up flat."""
    d, z, out = bar.d, bar.c[2], []
    skin = np.array([[.80, .56, .43], [.55, .34, .23], [.30, .17, .11], [.86, .64, .52]][rng.integers(4)])
    mat = dict(col=skin ** 1.4, gloss=.25, skin=True)
    for i in range(4):
        y = (i - 1.5) * 1.5 + rng.normal(0, .1)
        out.append(Solid((1.9, .8, .8), (-d[0] - .1, y, z + .15 + rng.normal(0, .05)), rot(1, rng.uniform(20, 32)) @ rot(0, 0), 'cap', r=.72 - .06 * (i == 3), mat=mat))
    out.append(Solid((2.7, 1, 1), (d[0] + .6, -1.2, z + .5), rot(2, 22) @ rot(1, -14), 'cap', r=.9, mat=mat))
    out.append(Solid((6, 3.6, 1.6), (d[0] + 2.2, -2.6, z - 2.6), rot(2, 25), 'ell', mat=mat))
    out.append(Solid((7, 2.6, 2.2), (d[0] + 8, -6.0, z - 3), rot(2, -32), 'ell', mat=mat))
    return out


POSES = {'any': ['lying'] * 4 + ['standing', 'mould', 'mould', 'loaf', 'loafcut', 'row', 'stack', 'several', 'several', 'held'],
         'cut': ['lying'] * 4 + ['standing', 'standing', 'several', 'stack', 'row', 'loafcut', 'held'],
         'top': ['loaf', 'loaf', 'mould', 'mould', 'row', 'standing', 'loafcut'],
         'topcut': ['loaf', 'loaf', 'lying', 'standing', 'row', 'mould', 'lying', 'loafcut'],
         'side': ['mould', 'loaf', 'loaf', 'standing', 'loafcut', 'stack']}


def camera(rng, size, pose, need, mid, ext, bars, close):
    fov = rng.uniform(32, 52)
    el, az = rng.uniform(32, 86), rng.normal(0, 28)
    if pose in ('standing', 'row', 'loafcut'):
        el = rng.uniform(12, 45) if need not in ('top', 'topcut') else rng.uniform(38, 66)
        az = rng.normal(0, 24)
    if pose == 'loaf':
        el, az = rng.uniform(28, 65), rng.uniform(-60, 60)
    if pose == 'loafcut':
        az = rng.uniform(35, 68)
    if pose == 'stack':
        el = rng.uniform(15, 55)
    if pose == 'row':
        az = rng.uniform(-50, 50)
    if pose == 'held':
        el, az = rng.uniform(66, 88), rng.normal(0, 10)
    if need == 'side':
        el, az = rng.uniform(14, 38), rng.uniform(-65, 65)
    t = np.array([0, 0, mid * .9])
    tan = np.tan(np.deg2rad(fov) / 2)
    dist = ext * rng.uniform(1.0, 1.6) / tan * (.92 if max(size) == size[1] else 1.1)
    t[:2] += rng.normal(0, .09 * ext, 2)
    roll = rng.normal(0, 4) if el < 60 else rng.normal(0, 4) + rng.choice([0, 0, 0, 90, 35, -40])
    if close:
        s = bars[0]
        f = {'cut': 1, 'topcut': 1, 'any': 1, 'top': 2, 'side': 1}[need] if 'loaf' not in s.roles else (2 if need in ('top', 'topcut') else 1)
        n = np.zeros(3)
        n[f] = s.d[f] * (1 if (s.M[2, f] > .3 or (f == 1 and s.M[1, 1] < 0)) else -1)
        t = s.c + s.M @ n
        dims = np.delete(s.d, f).min()
        dist = dims * rng.uniform(.62, .85) / tan
        el = rng.uniform(72, 88) if (s.M @ n)[2] > .5 else rng.uniform(5, 18)
        az, roll = rng.normal(0, 8), rng.normal(0, 3)
        t[2] -= 0
    c = Camera(size, t, az, el, dist, np.rad2deg(2 * np.arctan(tan)), roll)
    c.az, c.el = az, el
    return c


def kelvin(k):
    """Rough colour of a lamp, linear, green = 1."""
    x = (k - 6500) / 1000
    return np.array([1 - .13 * x, 1.0, 1 + .13 * x if x < 0 else 1 + .1 * x]).clip(.3, 2).astype(F)


def light(rng, az, raking=False):
    a = np.deg2rad(az + rng.choice([-1, 1]) * rng.uniform(35, 150))
    e = np.deg2rad(rng.uniform(14, 30) if raking else rng.uniform(24, 70))
    d = np.array([np.cos(e) * np.sin(a), -np.cos(e) * np.cos(a), np.sin(e)], F)
    hard = rng.choice([2.2, 4, 9, 30], p=[.3, .35, .2, .15])
    k = rng.uniform(2900, 6800)
    amb = rng.uniform(.28, .75) * (.8 if hard > 8 else 1)
    key = kelvin(k) * rng.uniform(.75, 1.0)
    sky = kelvin(np.clip(k + rng.normal(500, 700), 2800, 8000)) * amb
    adapt = kelvin(np.clip(k + rng.normal(0, 600), 2700, 8000))
    return dict(dir=d, hard=F(hard), key=key / adapt, sky=sky / adapt, ground=F(rng.uniform(.35, .7)), gobo=None,
                win=rng.uniform(.25, .6), wdir=d + rng.normal(0, .12, 3).astype(F))
