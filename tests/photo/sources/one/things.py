"""Pictures without soap, and small props beside it."""
import numpy as np
from noise import F, at3, mix, rgb, smooth
from scene import Camera, Solid, rot
from setting import light


def paint(rng, cols, period, amount=1.0, stripes=None):
    off, a, b = rng.uniform(0, 96, 3), rgb(cols[0]), rgb(cols[1])

    def f(p):
        n = at3(p, period, off, True)
        if stripes:
            n = np.sin(p[..., stripes] * 2.2 + n * 1.2) * 1.5
        return mix(np.broadcast_to(a, p.shape), b, smooth(-.8, 1.2, n) * F(amount))
    return f


def ell(rng, c, d, cols, gloss=.3, period=5, turn=np.eye(3), stripes=None, wax=.6):
    return Solid(d, c, turn, 'ell', mat=dict(paint=paint(rng, cols, period, 1, stripes), gloss=gloss, wax=wax))


def box(rng, c, d, cols, turn=np.eye(3), R=.05, r=.05, gloss=.2, period=4, thin=2, stripes=None):
    return Solid(d, c, turn, 'box', R=R, r=r, thin=thin, mat=dict(paint=paint(rng, cols, period, 1, stripes), gloss=gloss))


FRUIT = [(['c0392b', '8e2018'], 3.6), (['e67e22', 'd9731a'], 3.5), (['a9c24a', '7d9a2e'], 3.4), (['e8c531', 'd4b020'], 2.9),
         (['5b2a4f', '3b1a36'], 1.8)]


def fruit(rng, x, y):
    cols, r = FRUIT[rng.integers(len(FRUIT))]
    r *= rng.uniform(.85, 1.1)
    return ell(rng, (x, y, r * .93), (r, r, r * .93), cols, .9)


def mug(rng, x, y):
    h, r = rng.uniform(4, 5), rng.uniform(3.2, 4)
    c = [['e8e4dc', 'dcd6cb'], ['3f5a6b', '35505f'], ['b65c44', 'a85038'], ['2f2f31', '3b3b3d']][rng.integers(4)]
    cup = box(rng, (x, y, h), (r, r, h), c, R=r - .01, r=.25, gloss=1.0)
    tea = box(rng, (x, y, 2 * h - .12), (r * .86, r * .86, .16), ['4a2a16', '5a341c'], R=r * .86 - .01, r=.05, gloss=1.4)
    hd = Solid((1.6, .5, .5), (x + r + .6, y, h), rot(1, 90), 'cap', r=.5, mat=dict(paint=paint(rng, c, 5), gloss=1.0))
    return [cup, tea, hd]


def animal(rng):
    """A sitting or lying animal out of ellipsoids."""
    cols = [['c98a4b', 'f0dcc0'], ['4a4542', '2c2927'], ['d9d4cc', 'a39c92'], ['8a6a4d', '5a4230']][rng.integers(4)]
    e = lambda c, d, cc=cols, g=.02, t=np.eye(3), st=None: ell(rng, c, d, cc, g, 3, t, st, .2)
    st = 0 if rng.random() < .4 else None
    out = [e((0, 0, 5.5), (9, 5, 5.5), st=st), e((-8.5, -2.2, 10.5), (3.8, 3.5, 3.5)), e((6, -2.5, 3), (4.2, 3.4, 3.2), st=st),
           e((-5, -4.6, 1.3), (4.2, 1.3, 1.3)), e((10, -3, 1), (5, 1.1, 1.1), t=rot(2, rng.uniform(-50, 20)), st=st),
           e((-10, -5.2, 9.8), (1.5, 1.2, 1.1), ['efe4d6', 'e0d2c0'])]
    for k in (-1, 1):
        out.append(Solid((1.5, .8, 2.0), (-8.5 + k * 2.1, -1.8, 14.0), rot(1, k * 14), 'cone', mat=dict(paint=paint(rng, cols, 3), gloss=.02)))
        out.append(e((-9.6 + k * 1.35, -5.1, 11.3), (.55, .35, .6), ['1c2a16', '10140c'], 1.4))
    out.append(e((-10.1, -6.4, 10.3), (.45, .3, .3), ['7a4a45', '5a3530'], .8))
    return out


def things(rng, size):
    look, s, surf = rng.integers(6), [], None
    t, dist, el = np.array([0, 0, 3.0]), rng.uniform(34, 52), rng.uniform(18, 60)
    if look == 0:
        for i in range(rng.integers(3, 7)):
            s.append(fruit(rng, (i % 3 - 1) * 7.4 + rng.normal(0, .5), (i // 3 - .5) * 7.6 + rng.normal(0, .5)))
    elif look == 1:
        s += mug(rng, -5, 1)
        z = 0
        for _ in range(rng.integers(1, 5)):
            h = rng.uniform(.6, 1.6)
            cc = [['7a2f35', '6c262c'], ['31506b', '2b475f'], ['d8cdb4', 'cfc2a6'], ['4d5e45', '44543c']][rng.integers(4)]
            q = rot(2, rng.normal(10, 12))
            s += [box(rng, (7, 2, z + h), (5.4, 7.4, h), cc, q), box(rng, (7.15, 2, z + h), (5.4, 7.3, h * .82), ['efe9da', 'e2dac6'], q)]
            z += 2 * h
    elif look == 2:
        s, t, dist, el = animal(rng), np.array([0, 0, 6.5]), rng.uniform(46, 62), rng.uniform(8, 32)
    elif look == 3:                                            # bread and a board
        s.append(box(rng, (0, 0, .6), (12, 8, .6), ['b98a58', 'a87a48'], rot(2, 12), R=1.2, r=.3, stripes=1))
        s.append(ell(rng, (-3, 0, 4.2), (7.5, 4.4, 3.6), ['b5733a', 'e0b27c'], .1, 3, rot(2, 20)))
        s += [ell(rng, (6, -3 + 3 * k, 2.6), (2.1, 1.6, 1.55), ['e9d8c0', 'd8bfa2'], .3, 6) for k in range(3)]
    elif look == 4:                                            # a pan, a bowl, jars
        s.append(box(rng, (-6, 1, 1.6), (8, 8, 1.6), ['2a2a2c', '343436'], R=7.98, r=.4, gloss=.9))
        s.append(box(rng, (-6, 1, 3.1), (7.3, 7.3, .2), ['3d3a38', '4b4644'], R=7.28, r=.05, gloss=.5))
        s.append(ell(rng, (-7, 0, 3.5), (3.4, 3.0, .25), ['f4f1ea', 'efe9dc'], .8))
        s.append(ell(rng, (-6.5, -.3, 3.8), (1.3, 1.3, .7), ['f0a823', 'e89c18'], 1.0))
        for k in range(2):
            s.append(box(rng, (7 + k * 5.5, 3 - 3 * k, 4), (2.4, 2.4, 4), [['8a5a2f', 'a8743f'], ['c9c4b6', 'b5b0a4']][k], R=2.38, r=.4, gloss=1.2))
            s.append(box(rng, (7 + k * 5.5, 3 - 3 * k, 8.4), (2.5, 2.5, .6), ['9a9a98', 'b5b5b2'], R=2.48, r=.1, gloss=1.0))
    else:                                                      # balls of wool, pebbles, wooden blocks
        for i in range(rng.integers(4, 8)):
            r, x, y = rng.uniform(1.5, 3), (i % 3 - 1) * 6.5, (i // 3 - 1) * 6
            if rng.random() < .5:
                s.append(ell(rng, (x, y, r * .6), (r * 1.2, r, r * .6), [['8a8a88', '6f7074'], ['b8ada0', '9d9184']][i % 2], .2, 2))
            else:
                s.append(ell(rng, (x, y, r), (r, r, r), [['7a3b4a', 'a55f70'], ['4a6a78', '6f94a2']][i % 2], .02, .8, stripes=int(rng.integers(3))))
    az = rng.normal(0, 25)
    cam = Camera(size, t, az, el, dist, rng.uniform(36, 52), rng.normal(0, 3))
    cam.az, cam.el = az, el
    return s, cam, light(rng, az), surf


def props(rng, bars, cam):
    """One or two things well behind or beside the soap."""
    a = np.deg2rad(cam.az)
    back, side = np.array([-np.sin(a), np.cos(a)]), np.array([np.cos(a), np.sin(a)])
    x, y = back * rng.uniform(10, 13) + side * rng.uniform(-8, 8)
    k = rng.integers(3)
    if k == 0:
        return mug(rng, x, y)
    if k == 1:
        return [fruit(rng, x, y)]
    return [ell(rng, (x + i * 2.2, y + (i % 2) * 2, .8), (1.1, 1.0, .8), ['8a8a88', '6f7074'], .2, 2) for i in range(4)]
