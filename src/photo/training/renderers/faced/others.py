"""Pictures without soap: things on a table, animals, kitchens."""
import numpy as np
from .scene import Scene, prop, camera, yaw, I3, FLAT
from .picture import small
from .shade import light, geometry, lit, develop, exposure, lens, sensor
from .tables import ground, levels


def animal(rng, sc):
    """A cat, dog or hen of rounded parts."""
    c = np.array([(.80, .55, .30), (.30, .28, .27), (.88, .84, .78), (.50, .36, .26)][rng.integers(4)])
    f, dark = ('fur', tuple(c)), ('glaze', (.06, .05, .05))
    s = rng.choice([-1, 1])
    k = rng.integers(3)
    if k < 2:  # sitting or lying, four legs
        sc.add(1, (0, 6, 0), yaw(.3 * s), (8 + 2 * k, 5.5, 5), skin=f)
        hx, hy = s * 8.5, 11 - 2 * k
        sc.add(1, (hx, hy, 2), I3, (3.8, 3.5, 3.6), skin=f)
        sc.add(1, (hx + s * 1.6, hy - 1, 4.8), I3, (1.8, 1.4, 1.9), skin=('fur', tuple(np.clip(c * 1.15, 0, .95))))
        sc.add(1, (hx + s * 1.6, hy - .3, 6.6), I3, (.6, .45, .4), skin=dark)
        for e in (-1, 1):
            sc.add(1, (hx + e * 2.3, hy + 3.6 - k, 1.6), yaw(e), (1.1, 2.3, .7), skin=f)
            sc.add(1, (hx + e * 1.4 + s * .6, hy + .8, 5.1), I3, (.5, .6, .4), skin=dark)
            sc.add(2, (s * 4 + e * 2.2, 1.3, 5), FLAT[[1, 2, 0]], (3, 1.2, 1.2), skin=f)
        sc.add(2, (-s * 8.5, 2.2, 3), yaw(.6 * s), (4, 1.0, 1.0), skin=f)
    else:
        sc.add(1, (0, 7, 0), yaw(.2), (7, 5, 4.6), skin=f)
        sc.add(1, (s * 6, 12.5, 0), I3, (2.3, 3.6, 2.2), skin=f)
        sc.add(1, (s * 8.6, 13.6, 0), I3, (1.5, .6, .6), skin=('glaze', (.85, .6, .2)))
        for i in range(3):
            sc.add(1, (s * (5 + i), 16.2 + .3 * (i == 1), 0), I3, (.8, 1.1, .4), skin=('fruit', (.7, .12, .10)))
        sc.add(1, (s * 6.9, 13.7, 1.9), I3, (.35, .35, .3), skin=dark)
        sc.add(1, (-s * 7, 10, 0), I3, (2.4, 4.6, 1.6), skin=f)
        for e in (-1, 1):
            sc.add(2, (e * 1.6, 1.4, 0), np.array([[0, 1, 0], [-1, 0, 0], [0, 0, 1]]), (1.6, .4, .4), skin=('grain', (.85, .6, .25)))


def kitchen(rng, sc):
    """Pots and jars on a worktop before a wall, with a shelf."""
    for i in range(int(rng.integers(4, 8))):
        prop(rng, sc, -16 + i * 6 + rng.normal(0, 1), rng.normal(0, 3), rng.uniform(1, 1.8))
    sc.add(0, (0, 20, -8), I3, (26, .6, 4), .1, skin=('grain', (.55, .4, .28)))
    for i in range(5):
        h = rng.uniform(2, 4)
        sc.add(3, (-18 + 8 * i, 20.6 + h, -8), FLAT, (2.2, 2.2, h), .4, skin=('glaze', tuple(rng.uniform(.3, .9, 3))))


def things(rng, sc):
    n = int(rng.integers(3, 8))
    for i in range(n):
        a = i * 2.4
        prop(rng, sc, 3.4 * i ** .5 * np.cos(a) * 2, 3.4 * i ** .5 * np.sin(a) * 2, rng.uniform(.8, 1.3))


def nosoap(rng, which, size):
    """A picture [H,W,3] of `size` without soap."""
    sc = Scene()
    (things, animal, kitchen)[which % 3](rng, sc)
    H, W = size
    asp = W / H
    cam, D = camera(rng, sc, ((25, 70), (10, 40), (6, 20))[which % 3], rng.uniform(.75, 1.05), asp, False)
    if which % 3 == 2:
        cam[14] = 13
    lt = light(rng)
    g = geometry(sc, cam, W, H, lt)
    skins = [p for r, s in zip(sc.rows, sc.skin) for p in small(rng, s[0], s[1], r[13:16])]
    gp = float(np.clip(W / (2 * cam[12] * D) * .8, 14, 60))
    gt = [(t, gp / 2 ** i) for i, t in enumerate(levels(ground(rng, gp)))]
    wt = [(t, 14 / 2 ** i) for i, t in enumerate(levels(ground(rng, 14, 'tiles' if which % 3 == 2 else None)))]
    lin = lit(g, skins + gt + wt, lt)
    img = develop(lin, exposure(rng, lin), np.exp(rng.normal(0, .05, 3)).astype(np.float32), rng.uniform(.85, 1.05))
    img = lens(g, img, D, rng.choice([0, 2, 5]))
    return sensor(rng, np.clip(img, 0, 1), W, H, rng.uniform(.5, 1))
