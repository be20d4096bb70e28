"""Arrangements of bars and loaves; a hand of capsules."""
import numpy as np
from noise import fbm, sstep, grid, blur, resize
from scene import Block, orient

# which poses show which faces well
CUT = ['flat', 'flat', 'stand', 'stand', 'row', 'stack', 'lay', 'hand', 'loafcut', 'round', 'lean']
POURED = ['standtop', 'loaf', 'loaf', 'mould', 'mould', 'rowtop', 'hand_top']
LINER = ['side', 'bottom', 'side', 'bottom', 'loafside']


def arrange(rng, pose):
    """Blocks (soap), props, pitch in degrees, fill."""
    w, h, t = rng.uniform(6, 9), rng.uniform(4.8, 7), rng.uniform(2.1, 3.2)
    bev = rng.choice([4., 7., 14., 25.])
    B, props = [], []
    yaw = rng.uniform(-.9, .9)
    pitch, fill = rng.uniform(30, 85), rng.uniform(.62, .97)

    def put(kind, c, yw, s=(w, h, t), rd=False):
        A = orient(kind, yw)
        z = np.abs(A[:, 2]) @ (np.array(s) / 2)
        B.append(Block(s, (c[0], c[1], z + c[2]), A, rd, bev))
        return 2 * z

    def jit(k=1.):
        return rng.uniform(.97, 1.03, 3) * [w, h, t] if k else (w, h, t)
    if pose in ('flat', 'round', 'hand', 'hand_top'):
        if pose == 'round':
            h = w = rng.uniform(6, 8)
        if pose == 'hand':
            pitch, fill = rng.uniform(60, 85), rng.uniform(.48, .66)
        if pose == 'hand_top':
            pitch, fill, t = rng.uniform(30, 60), rng.uniform(.4, .55), 3.2
        put('stand' if pose == 'hand_top' else 'flat', (0, 0, 0), rng.uniform(0, 6.28) if pose == 'flat' else yaw * .5, (w, h, t), pose == 'round')
    elif pose in ('stand', 'standtop'):
        put('stand', (0, 0, 0), yaw * .8, (w, h, t if pose == 'stand' else rng.uniform(3, 7)))
        pitch = rng.uniform(6, 32) if pose == 'stand' else rng.uniform(42, 75)
        if rng.random() < .3:
            put('flat', (rng.uniform(-4, 4), 7.5, 0), rng.uniform(0, 6), jit())
    elif pose in ('row', 'rowtop'):
        n, gap = rng.integers(3, 7), rng.uniform(.05, 1.6)
        yaw = rng.uniform(.25, .9) * rng.choice([-1, 1])
        for i in range(n):
            put('stand', (-np.sin(yaw) * i * (t + gap), np.cos(yaw) * i * (t + gap), 0), yaw + rng.normal(0, .02), jit() * [1, 1, .97])
        pitch = rng.uniform(15, 40) if pose == 'row' else rng.uniform(45, 70)
        fill = rng.uniform(.7, 1.)
    elif pose == 'stack':
        z = 0
        for i in range(rng.integers(2, 5)):
            z += put('flat', (rng.normal(0, .4), rng.normal(0, .4), z), yaw + rng.normal(0, .25), jit())
        pitch = rng.uniform(18, 50)
    elif pose == 'lay':
        a, b = [(2, 1), (2, 2), (3, 2), (1, 3), (3, 3)][rng.integers(5)]
        for i in range(a):
            for j in range(b):
                put('flat', (i * (w + rng.uniform(.3, 1.2)), j * (h + rng.uniform(.3, 1.2)), 0), rng.normal(0, .05), jit())
        pitch, fill = rng.uniform(60, 89), rng.uniform(.7, 1.05)
    elif pose == 'lean':
        put('stand', (0, 3, 0), yaw * .3, jit())
        put('flat', (rng.uniform(-2, 2), -4, 0), yaw, jit())
        pitch = rng.uniform(25, 50)
    elif pose in ('loaf', 'loafside', 'loafcut'):
        L = rng.uniform(14, 24)
        yaw = rng.uniform(.3, 1.1) * rng.choice([-1, 1])
        if pose == 'loafcut':
            L, yaw = rng.uniform(8, 14), rng.uniform(-.7, .7)
        f = np.array([np.sin(yaw), -np.cos(yaw)])
        put('stand', (0, 0, 0), yaw, (w, h, L))
        if pose == 'loafcut':
            for i in range(rng.integers(1, 4)):
                p = f * (L / 2 + 1.8 + (t + .8) * i)
                put('stand', (p[0], p[1], 0), yaw + rng.normal(0, .12), jit())
        pitch = dict(loaf=rng.uniform(32, 75), loafside=rng.uniform(12, 35), loafcut=rng.uniform(14, 40))[pose]
        fill = rng.uniform(.7, 1.)
    elif pose == 'mould':
        L = rng.uniform(14, 24)
        yaw = rng.choice([0, np.pi / 2]) + rng.normal(0, .2)
        put('stand', (0, 0, 0), yaw, (w, h, L))
        A, th = B[0].A, rng.uniform(.5, 1.4)
        for ax, k, s in ((0, 1, (th, h + 1.2, L + 2 * th)), (0, -1, (th, h + 1.2, L + 2 * th)), (2, 1, (w, h + 1.2, th)), (2, -1, (w, h + 1.2, th))):
            c = np.array([0, 0, h / 2 + .6]) + A[ax] * k * ((w if ax == 0 else L) / 2 + th / 2 + .02)
            props.append(Block(s, c, A, False, 14.))
        pitch, fill = rng.uniform(58, 88), rng.uniform(.75, 1.25)
    elif pose in ('side', 'bottom'):
        put(pose, (0, 0, 0), rng.uniform(-.5, .5) + rng.choice([0, np.pi / 2, np.pi]), (w, h, rng.uniform(3, 6)))
        pitch = rng.uniform(40, 80)
    if pose in ('flat', 'stand', 'side', 'bottom') and rng.random() < .25:  # a companion
        put('flat', (rng.choice([-1, 1]) * (w + rng.uniform(.6, 3)), rng.uniform(-1, 4), 0), rng.uniform(0, 6.28), jit())
    return B, props, np.radians(pitch), fill


SKIN = [(.90, .75, .67), (.85, .69, .59), (.76, .58, .47), (.62, .45, .35), (.50, .36, .28), (.93, .80, .73)]


def hand(rng, cam, block, light):
    """Layers (colour linear, alpha) of a hand behind and of a thumb before the bar."""
    q = cam.project(block.corners())
    lo, hi = q.min(0), q.max(0)
    sc = cam.f / np.linalg.norm(block.c - cam.pos)
    k = 2
    h, w = cam.h // k, cam.w // k
    y, x = grid(h, w)
    x, y = x * k, y * k
    side = rng.choice([-1, 1])
    c = (lo + hi) / 2
    skin = np.clip(np.array(SKIN[rng.integers(len(SKIN))]) + rng.normal(0, .02, 3), .1, 1)

    def caps(list_):
        z = np.zeros((h, w), np.float32)
        for a, b, r0, r1 in list_:
            ab = b - a
            t = np.clip(((x - a[0]) * ab[0] + (y - a[1]) * ab[1]) / (ab @ ab + 1e-3), 0, 1)
            r = (r0 + (r1 - r0) * t) * (1 + .06 * np.sin(t * 9))
            d2 = (x - a[0] - t * ab[0]) ** 2 + (y - a[1] - t * ab[1]) ** 2
            z = np.maximum(z, np.sqrt(np.maximum(r * r - d2, 0)))
        return z

    def paint(z, nail):
        zb = blur(z, 1.5)
        gy, gx = np.gradient(zb / k)
        N = np.stack([-gx, -gy, np.ones_like(gx)], -1)
        N /= np.linalg.norm(N, axis=-1, keepdims=True)
        L = cam.M @ light.dir
        L = np.array([L[0], L[1], max(-L[2], .2)])
        d = np.clip((N @ L + .35) / 1.35, 0, 1)
        t = 1 + .05 * fbm(rng, h, w, sc * .5 / k, 3) + .03 * fbm(rng, h, w, 4, 2)
        alb = skin * t[..., None]
        alb[..., 1:] *= (1 - .10 * sstep(fbm(rng, h, w, sc * 2 / k, 2), -.5, 1.5))[..., None]
        if nail is not None:
            p, u, r = nail
            a = (x - p[0]) * u[0] + (y - p[1]) * u[1]
            b = -(x - p[0]) * u[1] + (y - p[1]) * u[0]
            m = sstep(1 - (np.abs(a / (r * .8)) ** 3 + np.abs(b / (r * .62)) ** 3), 0, .15)
            alb += (np.clip(skin * [1.08, .98, .98] + .04, 0, 1) - alb) * m[..., None]
            d = d + .12 * m
        lin = alb ** 2.2 * ((light.kc + 1) / 2 * light.key * d[..., None] + (light.ac + 1) / 2 * light.amb * (.5 + .5 * N[..., 2:]))
        lin += alb ** 2.2 * np.array([.06, .02, .015]) * (1 - N[..., 2:])
        a = sstep(zb, .6 * k, 2.2 * k)
        up = [resize(m, cam.h, cam.w) for m in (lin[..., 0], lin[..., 1], lin[..., 2], a)]
        return np.stack(up[:3], -1).clip(0), up[3].clip(0, 1)
    wrist = np.array([c[0] + side * cam.w * .55, c[1] + cam.h * .75])
    palm = c + [side * (hi[0] - lo[0]) * .25, (hi[1] - lo[1]) * .3]
    fl = [(wrist, palm, 3.2 * sc, 3.4 * sc), (palm, palm - [side * 1.5 * sc, 0], 3.3 * sc, 3. * sc)]
    for i in range(4):
        e = np.array([(lo if side > 0 else hi)[0] - side * rng.uniform(.5, 1.3) * sc, lo[1] + (hi[1] - lo[1]) * (.02 + .3 * i)])
        fl.append((palm - [0, (1.5 - i) * 1.2 * sc], e, 1. * sc, (.72 - .05 * abs(i - 1)) * sc))
    back = paint(caps(fl), None)
    tip = np.array([(hi if side > 0 else lo)[0] - side * rng.uniform(.8, 2.) * sc, c[1] + rng.uniform(-.1, .3) * (hi[1] - lo[1])])
    mid = tip + [side * 2.6 * sc, 1.2 * sc]
    u = (tip - mid) / np.linalg.norm(tip - mid)
    front = paint(caps([(palm + [side * 3.5 * sc, 1.5 * sc], mid, 1.5 * sc, .95 * sc), (mid, tip, .95 * sc, .78 * sc)]), (tip - u * .1 * sc, u, .75 * sc))
    return back, front
