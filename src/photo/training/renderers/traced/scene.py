"""Puts bars on a table, in light, before a camera."""
import numpy as np
from . import core
from .bars import lin, jit, COLOURS, CREAMS
from .params import OI


def rot(axis, a):
    c, s = np.cos(a), np.sin(a); i, j = [(1, 2), (2, 0), (0, 1)][axis]
    m = np.eye(3); m[i, i] = m[j, j] = c; m[i, j] = -s; m[j, i] = s
    return m


def standing(yaw): return rot(2, yaw).T
def lying(yaw): return (rot(2, yaw) @ rot(0, np.pi / 2)).T      # y axis of the bar looks up
def onback(yaw): return (rot(2, yaw) @ rot(2, np.pi / 2) @ rot(1, np.pi / 2)).T


def dims(o): return o[OI["hx"]], o[OI["hy"]], o[OI["hz"]]


def clone(o, r, off=None):
    b = o.copy(); b[OI["off"]] = r.uniform(-60, 60) if off is None else off
    return b


POSES = ["lying", "standing", "row", "loaf", "stack", "lean", "held", "group", "halfloaf"]


def arrange(o, pose, r):
    """Objects, prims, centre, radius, range of camera heights (degrees)."""
    hx, hy, hz = dims(o); yaw = r.uniform(-.7, .7); objs, prims = [], []
    if pose == "lying":
        core.place(o, (0, 0, hy), lying(yaw + r.choice([0, 1.57]))); objs = [o]; el = (32, 88)
        return objs, prims, (0, 0, hy), np.hypot(hx, hz) * 1.02, el
    if pose == "standing":
        core.place(o, (0, 0, hz), standing(yaw)); return [o], prims, (0, 0, hz * .9), np.hypot(hx, hz), (14, 55)
    if pose == "row":
        n = int(r.integers(2, 6)); gap = r.uniform(.1, 1.6); step = 2 * hy + gap; y0 = o[OI["off"]]
        for i in range(n):
            b = clone(o, r, y0 + i * 2 * hy); k = i - (n - 1) / 2; a = yaw * .8 + .35
            d = np.array([-np.sin(a), np.cos(a)]) * step * k; core.place(b, (d[0] + r.normal(0, .12), d[1], hz), standing(a + r.normal(0, .05))); objs.append(b)
        return objs, prims, (0, 0, hz * .8), np.hypot(hx, n * step / 2) * .95, (18, 55)
    if pose in ("loaf", "halfloaf"):
        core.put(o, hy=r.uniform(5, 10) if pose == "loaf" else r.uniform(2.5, 4.5)); hy = o[OI["hy"]]; a = r.uniform(-1.2, 1.2) if pose == "loaf" else r.uniform(-.7, .7)
        core.place(o, (0, 0, hz), standing(a)); objs = [o]; c = (0, 0, hz * .8)
        if pose == "halfloaf" and r.random() < .6:
            b = clone(o, r, o[OI["off"]] - 9); core.put(b, hy=r.uniform(1, 1.5)); d = hy + 1.6 + r.uniform(.5, 2)
            core.place(b, (np.sin(a) * d + r.normal(0, .4), -np.cos(a) * d, b[OI["hy"]]), lying(a + r.normal(0, .2)) if r.random() < .5 else lying(a + r.normal(0, .2)))
            bx = np.array([np.sin(a), -np.cos(a)]) * (hy + hz + .4); core.place(b, (bx[0], bx[1], b[OI["hy"]]), lying(a + r.normal(0, .2))); objs.append(b); c = (bx[0] * .35, bx[1] * .35, hz * .6)
        return objs, prims, c, np.hypot(hx, hy) * 1.0 + (hz if len(objs) > 1 else 0), (22, 62)
    if pose == "stack":
        n = int(r.integers(2, 5))
        for i in range(n):
            b = clone(o, r); core.place(b, (r.normal(0, .25), r.normal(0, .25), hy * (2 * i + 1)), lying(yaw + r.normal(0, .22))); objs.append(b)
        return objs, prims, (0, 0, n * hy * .95), max(np.hypot(hx, hz), n * hy) * 1.1, (18, 60)
    if pose == "lean":
        b = clone(o, r); core.place(b, (0, 0, hy), lying(yaw)); t = r.uniform(.5, .9)
        c = clone(o, r); m = (rot(2, yaw) @ rot(0, -t + .0)).T; d = hz * np.sin(t) + hy * np.cos(t)
        zc = hz * np.cos(t) + hy * np.sin(t); core.place(c, (-np.sin(yaw) * (hz * .75 + d * .62), np.cos(yaw) * (hz * .75 + d * .62), max(zc, 1)), m)
        return [c, b], prims, (0, hz * .5, hy * 1.4), np.hypot(hx, hz) * 1.25, (22, 55)
    if pose == "group":
        nx, ny = int(r.integers(2, 4)), int(r.integers(1, 4)); sx, sz = 2 * hx + r.uniform(.4, 2), 2 * hz + r.uniform(.4, 2)
        for i in range(nx):
            for j in range(ny):
                b = clone(o, r); core.place(b, ((i - (nx - 1) / 2) * sx + r.normal(0, .15), (j - (ny - 1) / 2) * sz + r.normal(0, .15), hy), lying(r.normal(0, .07) + np.pi * (r.random() < .3))); objs.append(b)
        return objs, prims, (0, 0, hy), np.hypot(nx * sx, ny * sz) / 2 * .9, (38, 88)
    # held: bar upright between thumb and fingers
    z = r.uniform(9, 14); tilt = r.normal(0, .2); m = (rot(2, yaw * .5) @ rot(0, r.uniform(-.5, -.05)) @ rot(1, tilt)).T
    core.place(o, (0, 0, z), m); skin = lin([(224, 178, 150), (198, 146, 112), (150, 102, 74), (104, 68, 48), (236, 196, 172)][r.integers(5)])
    sx = r.choice([-1, 1]); t = [0.72, .8]; P = lambda a, b, ra, rb, c=skin, g=.25: prims.append([*a, *b, ra, rb, *c, g])
    zz = r.uniform(-.4, .3) * hz; x0 = sx * hx
    P((x0 * 1.35, -.6, zz - 3.2), (x0 * 1.12, -hy - .35, zz - .9), 1.15, .95); P((x0 * 1.12, -hy - .35, zz - .9), (x0 * .62, -hy - .62, zz + .4), .95, .72)
    P((x0 * .60, -hy - 1.16, zz + .45), (x0 * .52, -hy - 1.08, zz + .75), .34, .3, np.clip(skin * 1.12 + .03, 0, 1), .7)
    for i in range(4): P((x0 * 1.5, hy + .9, zz - 2.6 + i * 1.25), (x0 * (.5 + .08 * i), hy + .7, zz - 1.9 + i * 1.5), .85, .72); P((x0 * 1.5, hy + .9, zz - 2.6 + i * 1.25), (x0 * 1.75, .4, zz - 3.2 + i * .7), .85, 1.)
    P((x0 * 1.8, .6, zz - 2.5), (x0 * 2.4, 1, zz - 6), 2.0, 2.4); P((x0 * 2.4, 1, zz - 6), (x0 * 3, 2, zz - 16), 2.3, 2.6)
    hand = core.obj(type=5, mat=2, seed=3, p0=0, pn=len(prims), rad=22, hx=1.1, gloss=.25); core.place(hand, (0, 0, z), m)
    return [o, hand], prims, (sx * hx * .25, 0, z - .3), np.hypot(hx, hz) * 1.3, (-4, 42)


TABLES = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]


def surroundings(r, radius):
    k = int(r.choice(TABLES, p=[.2, .16, .1, .13, .07, .06, .07, .05, .05, .06, .05]))
    wood = [((196, 150, 104), (150, 104, 66)), ((120, 80, 52), (84, 52, 34)), ((222, 190, 150), (196, 158, 116)), ((90, 84, 78), (60, 55, 50)), ((170, 110, 70), (120, 70, 42))]
    any_ = [(236, 232, 224), (200, 196, 188), (90, 96, 102), (176, 160, 140), (120, 140, 150), (206, 170, 160), (54, 56, 60), (150, 165, 140), (220, 214, 196), (70, 84, 110)]
    if k in (0, 8, 9): a, b = wood[r.integers(len(wood))]
    elif k == 1: a = any_[r.integers(len(any_))]; b = tuple(np.array(a) * .72)
    elif k == 2: a, b = [((236, 234, 230), (150, 148, 148)), ((44, 46, 48), (150, 140, 120)), ((222, 210, 196), (170, 140, 110))][r.integers(3)]
    elif k == 3: a, b = [((70, 72, 76), (46, 48, 52)), ((168, 164, 158), (134, 130, 124)), ((196, 180, 160), (164, 146, 124))][r.integers(3)]
    elif k == 4: a = (240, 238, 232); b = COLOURS[r.choice([3, 6, 11, 1, 14, 8])]
    elif k == 6: a = [(240, 234, 222), (190, 156, 116)][r.integers(2)]; b = a
    else: a = any_[r.integers(len(any_))]; b = any_[r.integers(len(any_))]
    A, B = jit(r, a, 6), jit(r, b, 6); w = jit(r, any_[r.integers(len(any_))], 8)
    return dict(table=k, tscale=r.uniform(.7, 1.5), tang=r.uniform(0, 3.1), tseed=int(r.integers(1, 999)), tar=A[0], tag=A[1], tab=A[2], tbr=B[0], tbg=B[1], tbb=B[2],
                fold=r.uniform(0, 1) ** 1.5, wall=int(r.choice([0, 1, 2, 3, 4], p=[.35, .15, .2, .2, .1])), wdist=radius * 1.2 + r.uniform(4, 60), wr=w[0], wg=w[1], wb=w[2])


def kelvin(t):
    """Tint of a lamp against a 5,200 K balance."""
    x = (t - 5200) / 5200; return np.array([1 - .42 * x, 1, 1 + .75 * x]) if x < 0 else np.array([1 - .25 * x, 1, 1 + .3 * x])


def light(r, glare=False, gobo=False):
    a, e = r.uniform(0, 2 * np.pi), np.radians(r.uniform(22, 75))
    if glare: a, e = np.pi / 2 + r.normal(0, .25), np.radians(r.uniform(30, 55))
    hard = r.random(); soft = r.uniform(.02, .08) if hard < .3 or gobo else r.uniform(.15, .7)
    k = kelvin(r.choice([2700, 3200, 4000, 5200, 5600, 6500])); k2 = kelvin(r.choice([4500, 5500, 7500])); key = r.uniform(.8, 2.2) * (1.3 if soft < .1 else 1); amb = r.uniform(.35, .9)
    d = (np.cos(e) * np.cos(a), np.cos(e) * np.sin(a), np.sin(e)); kk, aa = k * key, k2 * amb
    s = dict(lx=d[0], ly=d[1], lz=d[2], lr=kk[0], lg=kk[1], lb=kk[2], ar=aa[0], ag=aa[1], ab=aa[2], soft=soft)
    if gobo or r.random() < .12: s.update(gobo=int(r.integers(1, 5)), gscale=r.uniform(.12, .4), gang=r.uniform(0, 3.1), gamt=r.uniform(.4, .9))
    return s


def aim(r, centre, radius, el, portrait, fill, az=None):
    e = np.radians(r.uniform(*el)); a = r.normal(0, .3) if az is None else az; fov = r.uniform(.36, .6)
    dist = radius / (fov * fill) * (1.15 if portrait else 1.0) * .92
    c = np.array(centre, float) + r.normal(0, radius * .06, 3) * (1, 1, .4)
    p = c + dist * np.array([np.sin(a) * np.cos(e), -np.cos(a) * np.cos(e), np.sin(e)]); p[2] = max(p[2], 1.2)
    return dict(camx=p[0], camy=p[1], camz=p[2], tgtx=c[0], tgty=c[1], tgtz=c[2], roll=r.normal(0, .06), fov=fov), float(np.linalg.norm(p - c)) - radius * .3
