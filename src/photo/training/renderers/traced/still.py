"""Scenes without soap, and small props beside soap."""
import numpy as np
from . import core
from .bars import lin, jit, COLOURS
from .scene import rot


def ball(r, x, y, s, c, mat=4, squash=1.0, gloss=.35):
    o = core.obj(type=2, mat=mat, hx=s, hy=s * squash, hz=s * squash, seed=int(r.integers(999)), gloss=gloss)
    core.col(o, 0, c); core.col(o, 1, np.asarray(c) * .5); return core.place(o, (x, y, s * squash), rot(2, r.uniform(0, 6)).T)


def cup(r, x, y, c, hollow=1):
    R, h = r.uniform(2.6, 4), r.uniform(2.2, 5)
    o = core.obj(type=3, mat=0, hx=R, hy=R, hz=h, rad=.15, embed=hollow, chip=r.uniform(-.05, .15), gloss=.7); core.col(o, 0, c); core.put(o, hx=R)
    return core.place(o, (x, y, h), np.eye(3))


def bowl(r, x, y, c):
    R = r.uniform(4, 6.5); o = core.obj(type=4, mat=0, hx=R, hy=R, hz=R, rad=.2, gloss=.7); core.col(o, 0, c); return core.place(o, (x, y, R), np.eye(3))


def block(r, x, y, h, mat, c, c1, yaw=0, rad=.3, z=0, gloss=.2):
    o = core.obj(type=1, mat=mat, hx=h[0], hy=h[1], hz=h[2], rad=rad, seed=int(r.integers(999)), gloss=gloss); core.col(o, 0, c); core.col(o, 1, c1)
    return core.place(o, (x, y, h[2] + z), rot(2, yaw).T)


def animal(r, prims):
    """A cat, dog or hen from balls."""
    fur = lin([(196, 140, 84), (90, 86, 84), (230, 222, 210), (60, 46, 38), (170, 150, 130)][r.integers(5)]); n0 = len(prims); k = r.integers(0, 3); dark = lin((30, 24, 22))
    P = lambda a, b, ra, rb, c=fur, g=.05: prims.append([*a, *b, ra, rb, *c, g])
    if k == 0:
        P((-5, 1, 4), (4, 0, 4.5), 4.6, 4); P((6.5, -3, 6), (7, -3.4, 6), 3, 2.9); P((5, -3, 8), (4.6, -3, 10), 1.2, .4); P((8.4, -3, 8), (8.9, -3, 10), 1.2, .4); P((2, -5, 1), (8, -6, .9), 1.2, 1); P((-9, -1, 1.2), (-2, -6, 1.1), 1.2, .9)
        P((7, -6, 5.3), (7.2, -6.2, 5.3), .8, .7); P((5.7, -5.7, 6.7), (5.8, -5.8, 6.7), .42, .4, dark, .8); P((8.3, -5.7, 6.7), (8.3, -5.8, 6.7), .42, .4, dark, .8); P((7.1, -6.95, 5.5), (7.1, -7, 5.5), .3, .3, lin((150, 90, 90)), .4)
    elif k == 1:
        P((-4, 2, 7), (2, 0, 9), 4.5, 4); P((3, -2, 14), (3, -2.5, 14), 3.4, 3.2); P((3, -5, 13), (3, -7.4, 12.6), 1.8, 1.3); P((.2, -1, 15), (-1, -2, 11), 1.1, 1.3); P((5.8, -1, 15), (7, -2, 11), 1.1, 1.3)
        for x in (0, 4): P((x, -2, 7), (x, -4, 1), 1.5, 1.2)
        P((3, -8.6, 13), (3, -8.7, 13), .6, .6, dark, .8); P((1.6, -5.2, 14.9), (1.6, -5.3, 14.9), .45, .45, dark, .9); P((4.4, -5.2, 14.9), (4.4, -5.3, 14.9), .45, .45, dark, .9)
    else:
        P((-3, 0, 6), (2, 0, 7), 4.4, 3.6); P((3, 0, 9), (4.6, -1, 13), 2.4, 1.5); P((5.8, -1, 13), (6.9, -1.3, 12.7), .5, .15, lin((220, 160, 50)), .4); P((4.4, -1, 14.6), (5.2, -1, 14.8), .5, .4, lin((190, 40, 36)), .2); P((-6, 0, 8), (-9, 1, 11), 2, .7)
        P((5.5, -2.1, 13.3), (5.5, -2.2, 13.3), .25, .25, dark, .9)
    o = core.obj(type=5, mat=3, seed=int(r.integers(999)), p0=n0, pn=len(prims) - n0, rad=24, hx=1.4); core.col(o, 1, fur * r.uniform(.4, 1.6))
    return core.place(o, (0, 0, 0), rot(2, r.uniform(-.6, .4)).T)


def without_soap(r, kind):
    objs, prims = [], []; pal = lambda: jit(r, COLOURS[r.integers(len(COLOURS))])
    if kind == 0: objs.append(animal(r, prims)); rad = 11; c = (0, 0, 7)
    elif kind == 1:
        for i in range(int(r.integers(3, 8))): objs.append(ball(r, r.uniform(-9, 9), r.uniform(-7, 7), r.uniform(2.2, 3.6), lin([(230, 130, 30), (200, 40, 36), (150, 180, 60), (226, 200, 60), (228, 200, 170), (240, 236, 228)][r.integers(6)]), 4, r.uniform(.8, 1)))
        objs.append(bowl(r, r.uniform(4, 12), r.uniform(6, 12), pal())); rad = 12; c = (0, 0, 2)
    elif kind == 2:
        for i in range(int(r.integers(2, 5))): objs.append(cup(r, -12 + i * 8 + r.normal(0, 1), r.normal(0, 3), pal(), r.integers(0, 2)))
        objs.append(block(r, r.normal(0, 4), -9, (6, 3.5, .8), 1, lin((190, 140, 90)), lin((140, 90, 56)), r.normal(0, .4), .2)); rad = 13; c = (0, 0, 3)
    elif kind == 3:
        objs.append(block(r, 0, 0, (8, 4, 3.6), 5, lin((190, 120, 60)), lin((110, 60, 26)), r.normal(0, .5), 2.4)); objs.append(block(r, 0, 0, (11, 7, .8), 1, lin((206, 160, 110)), lin((160, 110, 70)), .1, .3)); objs[0][core.params.OI["cz"]] += 1.6; rad = 11; c = (0, 0, 3)
    elif kind == 4:
        z = 0
        for i in range(int(r.integers(2, 6))): h = r.uniform(.8, 2); objs.append(block(r, r.normal(0, .4), r.normal(0, .4), (r.uniform(7, 9), r.uniform(5, 6), h), 0, pal(), pal(), r.normal(0, .15), .1, z)); z += 2 * h
        objs.append(cup(r, 13, 2, pal())); rad = 11; c = (2, 0, z / 2)
    else:
        for i in range(int(r.integers(2, 6))): o = cup(r, r.uniform(-12, 12), r.uniform(-4, 8), pal(), 0); core.put(o, mat=r.choice([0, 8, 1]), hz=r.uniform(2, 9)); o[core.params.OI["cz"]] = o[core.params.OI["hz"]]; objs.append(o)
        objs.append(block(r, 0, -7, (r.uniform(4, 7), 3, .35), 9, pal(), pal(), r.normal(0, .5), .3)); rad = 13; c = (0, 0, 4)
    return objs, prims, c, rad, (14, 60)


def props(r, radius, objs):
    """A few things behind or beside the soap."""
    for _ in range(int(r.choice([0, 0, 1, 2]))):
        a = r.choice([r.uniform(.15, 1.1), r.uniform(2.0, 3.0)]); d = radius * 1.25 + r.uniform(3, 8); x, y = d * np.cos(a), d * np.sin(a); k = r.integers(0, 4); c = jit(r, COLOURS[r.integers(len(COLOURS))])
        objs.append(ball(r, x, y, r.uniform(1.2, 3), c) if k == 0 else cup(r, x, y, c) if k == 1 else bowl(r, x + 2 * np.sign(x), y + 2, c) if k == 2 else block(r, x, y, (3.5, 2, .4), 9, c, c * .6, r.uniform(0, 3), .35))
