"""Where things stand, and the camera. Objects are rows for trace.c; lengths in cm, y is up."""
import numpy as np
from scipy import ndimage as nd

I3 = np.eye(3)
FLAT = np.array([[1, 0, 0], [0, 0, -1], [0, 1, 0]], float)  # local axes in the world: cut face looks up


def yaw(a):
    c, s = np.cos(a), np.sin(a)
    return np.array([[c, 0, s], [0, 1, 0], [-s, 0, c]])


class Scene:
    def __init__(self):
        self.rows, self.tops, self.skin, self.soap = [], [], [], []

    def add(self, kind, c, R, half, r=.2, corner=None, skin=None, soap=False, top=None):
        row = np.zeros(24, np.float32)
        row[0], row[1:4], row[4:13], row[13:16], row[16] = kind, c, np.asarray(R).ravel(), half, r
        row[17] = r if corner is None else corner
        row[18] = -1
        if top is not None:
            row[18] = len(self.tops)
            self.tops.append(top.astype(np.float32))
        h = np.asarray(half, float)
        row[19] = {1: h.max(), 2: h[0] + h[1], 4: h[0] + h[1]}.get(kind, np.sqrt((h ** 2).sum())) * 1.02 + (.35 if top is not None else 0)
        self.rows.append(row)
        self.skin.append(skin)
        self.soap.append(soap)

    def bounds(self, soap=True):
        pts = []
        for row, s in zip(self.rows, self.soap):
            if s or not soap:
                R, h = row[4:13].reshape(3, 3), row[13:16]
                for a in (-1, 1):
                    for b in (-1, 1):
                        for c in (-1, 1):
                            pts.append(row[1:4] + R.T @ (h * [a, b, c]))
        return np.array(pts)


def topmap(rng, amp):
    g = rng.standard_normal((33, 33))
    s = rng.uniform(1.5, 4)
    g = nd.gaussian_filter(g, (s, s * rng.uniform(.6, 1.6)))
    return g / (np.abs(g).max() + 1e-6) * amp


def form(rng, pose):
    """Size and shape of a bar: kind, half sizes, rounding, corner."""
    hx, hy, hz = rng.uniform(2.9, 4.2), rng.uniform(2.2, 3.2), rng.uniform(1.0, 1.5)
    if pose in ('loaf', 'top'):
        return 0, (rng.uniform(2.8, 4), rng.uniform(2.4, 3.6), rng.uniform(6, 11)), rng.uniform(.05, .25), None
    q = rng.random()
    if q < .12 and pose in ('flat', 'several', 'close'):
        return 3, (hy * 1.1, hy * rng.choice([1, 1, .75]) * 1.1, hz), rng.uniform(.15, .4), None
    if q < .3:
        return 5, (hx, hy, hz), rng.uniform(.1, .4), rng.uniform(.5, 1.3)
    return 0, (hx, hy, hz), rng.uniform(.05, .28), None


def place(rng, sc, pose, shape):
    """Put the bars of a pose; returns the elevation range of the camera."""
    kind, h, r, cor = shape
    hx, hy, hz = h
    amp = rng.choice([0, .05, .15, .3]) if kind == 0 else 0
    tops = lambda: topmap(rng, amp) if amp else None
    put = lambda c, R: sc.add(kind, c, R, h, r, cor, None, True, tops())
    a = rng.uniform(-.6, .6)
    if pose in ('flat', 'close'):
        a = rng.uniform(-3.1, 3.1) if rng.random() < .4 else a
        put((0, hz, 0), FLAT @ yaw(a))
        return (50, 88) if pose == 'close' else (32, 88)
    if pose == 'stand':
        put((0, hy + amp * .4, 0), yaw(a))
        return (8, 48)
    if pose == 'side':
        s = rng.choice([-1, 1])
        put((0, hy, 0), (np.diag([1, 1, 1.]) if s > 0 else np.diag([-1, 1, -1.])) @ yaw(s * rng.uniform(.65, 1.15)))
        return (12, 42)
    if pose == 'lean':
        t = rng.uniform(.5, 1.0)
        X = np.array([[1, 0, 0], [0, np.cos(t), -np.sin(t)], [0, np.sin(t), np.cos(t)]])
        put((0, hz, 0), FLAT @ yaw(a + .3))
        put((.3, hy * np.cos(t) + hz * np.sin(t), -hy - hz * .2), X @ yaw(a * .4))
        return (18, 50)
    if pose == 'loaf':
        put((0, hy, 0), yaw(rng.choice([-1, 1]) * rng.uniform(.35, 1.1)))
        return (18, 52)
    if pose == 'top':
        put((0, hy, 0), yaw(rng.choice([0, 1.57]) + rng.normal(0, .2)))
        return (55, 86)
    if pose == 'row':
        n, g, y = int(rng.integers(3, 6)), rng.uniform(.1, .9), rng.choice([-1, 1]) * rng.uniform(.3, .9)
        for i in range(n):
            z = (i - (n - 1) / 2) * (2 * hz + g)
            put(np.array([rng.normal(0, .12), hy, z]) @ yaw(y), yaw(y + rng.normal(0, .05)))
        return (18, 50)
    if pose == 'stack':
        for i in range(int(rng.integers(2, 5))):
            put((rng.normal(0, .25), hz * (2 * i + 1), rng.normal(0, .25)), FLAT @ yaw(a + rng.normal(0, .25)))
        return (24, 62)
    if pose == 'several':
        n = int(rng.integers(2, 7))
        cols = 2 if n < 5 else 3
        rr = np.hypot(hx, hy) if rng.random() < .4 else None
        for i in range(n):
            u, v = i % cols - (cols - 1) / 2, i // cols - .5
            dx, dz = (2 * rr + .2, 2 * rr + .2) if rr else (2 * hx + 1.0, 2 * hy + 1.0)
            put((u * dx + rng.normal(0, .15), hz, v * dz + rng.normal(0, .15)), FLAT @ yaw(rng.uniform(-3, 3) if rr else rng.normal(0, .09)))
        return (45, 88)
    if pose == 'held':  # fingers behind, a thumb before
        skin = ('flesh', [(.80, .60, .48), (.55, .38, .28), (.90, .72, .62), (.40, .27, .20)][rng.integers(4)])
        y0 = 9
        put((0, y0, 0), yaw(a * .5))
        s = rng.choice([-1, 1])
        for i in range(4):
            y = y0 + hy * .75 - i * 1.45
            t = .25 * rng.standard_normal()
            R = np.array([[np.cos(.3), np.sin(.3) * .3, .3], [-.1, 1, 0], [-.3, 0, 1.0]])
            R = np.linalg.qr(R.T)[0].T
            sc.add(2, (s * (hx + .1 + .15 * t), y, -hz * .2), np.diag([s, 1, 1.]) @ R if s > 0 else np.diag([1, 1, 1.]) @ R * [[-1], [1], [1]], (1.5, .72, .72), skin=skin)
        sc.add(2, (s * (hx - .3), y0 - hy - .3, hz + .75), np.array([[.6 * s, -.8, 0], [.8, .6 * s, 0], [0, 0, 1]]), (1.5, .85, .85), skin=skin)
        sc.add(1, (s * (hx + 2.2), y0 - hy * .8, -1.4), I3, (2.6, 4.2, 1.8), skin=skin)
        sc.add(2, (s * (hx + 4.0), y0 - hy - 5, -1.6), np.array([[.45 * s, -.9, 0], [.9, .45 * s, 0], [0, 0, 1]]), (6, 2.1, 2.1), skin=skin)
        return (5, 35)
    raise ValueError(pose)


def furnish(rng, sc, pose):
    """A board beneath, or a few things about."""
    P = sc.bounds()
    m, q = np.abs(P).max(0), rng.random()
    if q < .22 and pose not in ('held', 'close'):
        t = rng.uniform(.4, 1.0)
        for row in sc.rows:
            row[2] += 2 * t
        sk = ('grain', [(.62, .44, .28), (.80, .66, .48), (.35, .24, .17), (.88, .87, .84), (.3, .31, .33)][rng.integers(5)])
        k = m[[0, 2]] + rng.uniform(.8, 4, 2)
        if rng.random() < .3:
            sc.add(3, (0, t, 0), FLAT, (k.max() * 1.1, k.max() * 1.1, t), .15, skin=sk)
        elif rng.random() < .3:  # slats of a drying rack
            for i in range(-4, 5):
                sc.add(0, (i * k[0] / 4, t, 0), I3, (k[0] / 11, t, k[1]), .1, skin=sk)
        else:
            sc.add(0, (0, t, 0), yaw(rng.normal(0, .1)), (k[0], t, k[1]), .2, skin=sk)
    if rng.random() < .45 and pose not in ('close', 'top', 'held'):
        for _ in range(int(rng.integers(1, 4))):
            prop(rng, sc, rng.choice([-1, 1]) * (m[0] + rng.uniform(2, 6)), -m[2] - rng.uniform(2, 9))


def prop(rng, sc, x, z, scale=1.0):
    c = tuple(np.clip(np.array([(.85, .82, .78), (.35, .45, .40), (.60, .36, .26), (.25, .28, .35), (.75, .62, .42), (.82, .80, .50)][rng.integers(6)]) + rng.normal(0, .05, 3), .05, .95))
    k, s = rng.integers(6), scale
    if k == 0:  # jar
        h, r = rng.uniform(2, 5) * s, rng.uniform(1.3, 3) * s
        sc.add(3, (x, h, z), FLAT, (r, r, h), .4, skin=('glaze', c))
        sc.add(3, (x, 2 * h + .3, z), FLAT, (r * .85, r * .85, .5), .15, skin=('grain', (.6, .45, .3)))
    elif k == 1:  # bowl-like pot with a lip
        r = rng.uniform(2, 3.5) * s
        sc.add(1, (x, r * .75, z), I3, (r, r * .8, r), skin=('glaze', c))
        sc.add(4, (x, r * 1.4, z), FLAT, (r * .62, .28 * s, .28), skin=('glaze', c))
    elif k == 2:  # fruit
        for i in range(int(rng.integers(1, 4))):
            r = rng.uniform(1.4, 2.6) * s
            sc.add(1, (x + i * 2.7 * s, r * .9, z + rng.normal(0, 1.5)), yaw(i), (r * rng.uniform(1, 1.25), r * .93, r), skin=('fruit', [(.85, .62, .12), (.70, .18, .14), (.45, .58, .18), (.90, .45, .10)][rng.integers(4)]))
    elif k == 3:  # rolled towel
        for i in range(2):
            sc.add(3, (x, 1.3 * s + i * 2.2 * s, z - i * .3), yaw(rng.uniform(.9, 1.8)), (1.3 * s, 1.3 * s, 5 * s), .5, skin=('cloth', c))
    elif k == 4:  # book or box
        sc.add(0, (x, 1.2 * s, z), yaw(rng.uniform(-1, 1)), (3.2 * s, 1.2 * s, 4.5 * s), .1, skin=('paper', c))
    else:  # a brush of wood
        sc.add(2, (x, 1.0 * s, z), yaw(rng.uniform(-1, 1)), (4 * s, 1.0 * s, 1.0 * s), skin=('grain', (.66, .48, .32)))


def camera(rng, sc, elev, fill, aspect, soap=True):
    """Look at the things so that they take `fill` of the frame."""
    P = sc.bounds(soap)
    tgt = (P.max(0) + P.min(0)) / 2
    e, az, roll = np.radians(rng.uniform(*elev)), rng.normal(0, .12), rng.normal(0, .05)
    f = -np.array([np.sin(az) * np.cos(e), np.sin(e), np.cos(az) * np.cos(e)])
    r = np.cross(f, [0, 1, 0])
    r /= np.linalg.norm(r)
    u = np.cross(r, f)
    r, u = r * np.cos(roll) + u * np.sin(roll), u * np.cos(roll) - r * np.sin(roll)
    t = rng.uniform(.30, .42)
    tx, ty = (t * aspect, t) if aspect < 1 else (t, t / aspect)
    ratio = lambda D: max(np.abs(((P - tgt) @ r) / (tx * (D + (P - tgt) @ f))).max(), np.abs(((P - tgt) @ u) / (ty * (D + (P - tgt) @ f))).max())
    lo, hi = np.abs((P - tgt) @ f).max() + 1.5, 200.0
    for _ in range(30):
        D = (lo + hi) / 2
        lo, hi = (D, hi) if ratio(D) > fill else (lo, D)
    off = (r * tx * rng.normal(0, .12) + u * ty * rng.normal(0, .10)) * D * max(0, 1 - fill)
    pos = tgt - f * D + off
    if pos[1] < 1.0:
        pos[1] = 1.0
    wall = -1.0 if rng.random() < .5 else rng.uniform(4, 22) - P[:, 2].min()
    return np.array([*pos, *r, *u, *f, tx, ty, wall], np.float32), D
