"""The sixteen flaws. Each takes (skin, rng, strength 0..1, extent 0..1, recipe) and alters the skin."""
import numpy as np
from scipy import ndimage as nd
from noise import F, blur, at2, at3, cells, mix, rgb, smooth
from base import BOLD, pick_colour, put

IDS = ['coloured-specks', 'smears', 'white-specks', 'translucent-veins', 'crackle-network', 'powdery-film',
       'dark-centre-ring', 'orange-spots', 'pinholes', 'crack', 'brown-outside-in', 'colour-bled', 'drag-lines',
       'layer-gap', 'wrinkled-top', 'mould-dimples']
NEED = {'powdery-film': 'top', 'dark-centre-ring': 'cut', 'crack': 'topcut', 'brown-outside-in': 'cut', 'drag-lines': 'cut',
        'wrinkled-top': 'top', 'mould-dimples': 'side', 'crackle-network': 'any', 'layer-gap': 'cut', 'colour-bled': 'cut'}


def area(A):
    return A.used.sum() / A.ppc ** 2


def contrast(A, rng, r):
    for _ in range(9):
        c = pick_colour(rng, BOLD)
        if np.abs(np.sqrt(c) - np.sqrt(r['base'])).max() > 0.3:
            break
    return c


def deeper(A, k):
    """The same soap, more translucent: darker and fuller in colour."""
    m = A.col.mean(-1, keepdims=True)
    return np.clip((m + (A.col - m) * F(1 + .5 * k)) * F(1 - .42 * k) * np.array([1.03, 1.0, .93], F), .003, 1)


def coloured_specks(A, rng, s, e, r):
    c, reg = contrast(A, rng, r), A.region(rng, e, A.used)
    look, n = rng.integers(3), area(A) * (0.3 + .7 * e)
    rad = [(.014, .05), (.03, .11), (.02, .07)][look]
    dens = [5, .9, 1.6][look]
    f = A.spots(rng, int(n * dens * (.4 + s)) + 6, rad, reg, .3, .3, 1.4, rng.random() * 3)
    if look == 2:
        ang = rng.random() * 6.28
        tail = A.spots(np.random.default_rng(rng.integers(1 << 30)), int(n * .9) + 6, (.02, .05), reg, .8, .15, 12, ang)
        f = np.maximum(f, tail * F(.8))
    halo = blur(f, .05 * A.ppc) * F(.5)
    put(A, np.clip(np.maximum(f, halo) * F(.35 + .65 * s), 0, 1), c)


def smears(A, rng, s, e, r):
    c, reg, look = contrast(A, rng, r), A.region(rng, min(e, .8), A.used, 2.5), rng.integers(3)
    u, v = A.coords()
    t = rng.random() * 3.14
    a, b = u * np.cos(t) + v * np.sin(t), v * np.cos(t) - u * np.sin(t)
    bend = A.noise(rng, 3, 2) * F([.15, .5, .3][look])
    st = [(.6, 5.0), (.9, 3.0), (.35, 3.0)][look]
    n = at2((a / st[1]) * 60 + rng.random() * 999, (b + bend) / st[0] * 60) * F(.6) + A.noise(rng, 1.2, 3) * F(.5)
    f = smooth([.45, .75, .6][look], [1.5, 1.2, 1.0][look], n) * reg
    put(A, f * F(.2 + .75 * s), c)


def white_specks(A, rng, s, e, r):
    reg, look, n = A.region(rng, e, A.used), rng.integers(3), area(A) * (.3 + .7 * e)
    rad, dens = [((.012, .035), 9), ((.03, .13), 1.6), ((.02, .08), 3)][look]
    f = A.spots(rng, int(n * dens * (.4 + s)) + 8, rad, reg, .25, [.2, .4, .3][look], 1.5, 1)
    if look == 2:
        ring = np.clip(nd.grey_dilation(f, size=max(3, int(.04 * A.ppc))) - f, 0, 1)
        A.col = mix(A.col, deeper(A, .6), blur(ring, 1) * F(s))
    put(A, f * F(.4 + .6 * s), np.array([.93, .92, .88]), .006 * (look > 0), .15)


def translucent_veins(A, rng, s, e, r):
    reg, look = A.region(rng, e, A.used, 2.5), rng.integers(3)
    per = [9, 5, 6.5][look] * rng.uniform(.8, 1.3)
    o = rng.uniform(0, 96, (4, 3))
    q = A.p + np.stack([at3(A.p, 6, o[1]), at3(A.p, 6, o[2]), at3(A.p, 6, o[3])], -1) * F(.22)
    n = at3(q, per, o[0], True)
    w = [.16, .2, .13][look] * (.6 + .6 * s)
    f = 1 - smooth(w * .35, w, np.abs(n + .1))
    if look == 2:
        f = np.maximum(f, (1 - smooth(w * .3, w, np.abs(at3(q, per * .7, o[2], True)))) * F(.7))
    f = f * reg * F(.2 + .8 * s)
    A.col = mix(A.col, deeper(A, 1.0), f)
    A.hgt -= f * F(.004)
    A.gloss += f * F(.3)


def crackle_network(A, rng, s, e, r):
    reg, look = A.region(rng, e, A.used, 2.5), rng.integers(3)
    u, v = A.coords()
    cell = [.16, .3, .5][look] * rng.uniform(.8, 1.3)
    w = A.noise(rng, cell * 1.5, 3) * F(6)
    k = 32 / cell
    d, val = at2(u * k + w, v * k + np.roll(w, 31, 0), cells()[0]), at2(u * k + w, v * k + np.roll(w, 31, 0), cells()[1])
    fine = at2(u * k * 2.3 - w, v * k * 2.3 + w, cells()[0])
    line = np.maximum(1 - smooth(.05, .2, d), (1 - smooth(.04, .16, fine)) * F(.5)) * smooth(-1.3, .2, A.noise(rng, .8, 2))
    white = np.clip(A.col * F(1.12) + F(.04), 0, .95)
    A.col = mix(A.col, white * (1 + (val - .5) * .12)[..., None], reg * F(.7 * s))
    A.col = mix(A.col, deeper(A, 1.05), np.clip(line * reg * F(.25 + .85 * s), 0, 1))
    A.hgt -= line * reg * F(.004 * s)


def powdery_film(A, rng, s, e, r):
    look = rng.integers(4)
    where = np.maximum(A.top.astype(F), (A.side & ~A.top) * F(.85 if look == 3 else 0)) if A.top.sum() > 3000 else A.used.astype(F)
    reg = A.region(rng, e, where > .3, 1.4) * where
    if look == 1:
        reg = reg * smooth(1.1, .1, A.rim + A.noise(rng, .8, 3) * F(.3))
    grain = A.noise(rng, .035, 3, .8)
    cloud = A.noise(rng, .7, 4, .7)
    a = smooth(-1.3, 1.2, cloud + grain * F(.25)) * (.8 + .2 * smooth(-.9, .9, grain))
    if look == 2:
        vein = 1 - smooth(.05, .5, np.abs(A.noise(rng, .5, 4, .6)))
        a = a * F(.5) + vein * F(.6)
    a = np.clip(a * reg * F(.25 + .9 * s), 0, .95)
    put(A, a, np.array([.88, .88, .87]), 0, .02)
    A.hgt += a * (grain * F(.004) + F(.004))


def dark_centre_ring(A, rng, s, e, r):
    look = rng.integers(4)
    u, v = A.coords()
    for f, (x0, x1, hh, _) in A.rects.items():
        m = A.cut & (A.face == f)
        if not m.any():
            continue
        us, vs = A.solid.d[1 if f < 2 else 0], A.solid.d[1 if f > 3 else 2]
        k = .4 + .42 * e
        cx, cy = (rng.uniform(-.15, .15), rng.uniform(-.2, .1)) if look != 2 else (rng.uniform(-.5, .5), -.4)
        g = rng.uniform(2.0, 3.6)
        wob = A.noise(rng, 2.2, 3) * F(.05 if look != 3 else .1)
        q = (np.abs(u / us - cx) ** g + np.abs(v / vs - cy) ** g) ** F(1 / g) / F(k) + wob
        soft = [.03, .06, .05, .14][look]
        core = (1 - smooth(1 - soft, 1 + soft, q)) * m
        A.col = mix(A.col, deeper(A, .9), core * F(.15 + .75 * s))
        if look != 3:
            line = (1 - smooth(.015, .07, np.abs(q - 1))) * m
            A.col = mix(A.col, deeper(A, 1.2), line * F(.15 + .5 * s))
        A.gloss += core * F(.15)


def orange_spots(A, rng, s, e, r):
    look, n = rng.integers(4), area(A) * (.25 + .75 * e)
    reg = A.region(rng, e, A.used)
    if look == 3:
        reg = reg * smooth(1.0, .1, A.rim)
    rad, dens = [((.05, .14), .7), ((.12, .38), .16), ((.02, .06), 3), ((.06, .2), .6)][look]
    f = A.spots(rng, int(n * dens * (.5 + s)) + 3, rad, reg, .5, .35, 1.3, 0)
    halo = blur(f, rad[1] * 1.1 * A.ppc)
    halo = np.clip(halo / max(halo.max(), .05) * .9, 0, 1)
    tone = [rgb('c4702a'), rgb('b5651d'), rgb('d08a2e'), rgb('a8571f')][rng.integers(4)]
    A.col *= 1 - (halo * F(.3 + .5 * s))[..., None] * (1 - tone / tone.max()) * F(.7)
    A.col *= 1 - (f * smooth(-1.5, .8, A.noise(rng, .12, 3)) * F(.3 + .65 * s))[..., None] * (1 - tone * F(.75))
    A.gloss += f * F(.3)


def pinholes(A, rng, s, e, r):
    look, n = rng.integers(4), area(A) * (.25 + .75 * e)
    reg = A.region(rng, e, A.used)
    rad, dens, st = [((.012, .03), 9, 1.2), ((.03, .1), 1.6, 1.4), ((.015, .07), 4, 1.3), ((.03, .08), 1.5, 2.6)][look]
    f = A.spots(rng, int(n * dens * (.4 + s)) + 8, rad, reg, .3, .15, st, rng.random() * 3)
    f = f * (.5 + .5 * s)
    A.hgt -= f * F(rad[1] * .8)
    A.col *= (1 - f * F(.35 + .35 * s))[..., None]
    A.gloss *= 1 - f
