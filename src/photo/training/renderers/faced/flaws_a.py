"""Flaws of colour and grain: dots, smears, rivers, crackle, ash, spots."""
import numpy as np
from scipy import ndimage as nd
from scipy.spatial import cKDTree
from .noise import fbm, noise, step, mix, region, dots, scatter, resize, softblur

DYES = [(.55, .10, .12), (.10, .22, .50), (.12, .35, .18), (.32, .18, .10), (.80, .38, .08), (.09, .09, .10),
        (.45, .12, .45), (.75, .55, .08), (.08, .42, .48), (.80, .22, .45)]


def dye(rng, alb):
    """A pigment that stands out from what lies there."""
    m = alb[::9, ::9].mean((0, 1))
    for _ in range(30):
        c = np.array(DYES[rng.integers(len(DYES))], np.float32)
        if np.abs(c - m).max() > .3:
            return c
    return np.clip(m + .35, 0, .95)


def faces(b, rng, prob=.7):
    """The cut face, and mostly the others too, for what runs through the soap."""
    return [b['z']] + ([b['x'], b['y']] if rng.random() < prob else [])


def coloured_specks(b, rng, sev, ext):
    look, c = rng.integers(4), dye(rng, b['z'].alb)
    ang = rng.uniform(0, 6.3)
    for f in faces(b, rng, .85):
        m = region(rng, f.h, f.w, ext)
        n = int((18 + 260 * sev * rng.uniform(.3, 1)) * (.25 + .75 * ext) * min(2, f.a * f.b * 4 / 40)) + 4
        r0 = f.ppc * (.012 + .022 * sev)
        pts = []
        for y, x in scatter(rng, f.h, f.w, n, m):
            r = max(.8, r0 * rng.lognormal(0, .45) * (1.7 if look == 1 else 1))
            s = np.clip(rng.normal(.45 + .5 * sev, .15), .25, 1)
            pts.append((y, x, r, s))
            if look == 2 and rng.random() < .6:  # little comets
                L, a = rng.uniform(3, 12) * r, ang + rng.normal(0, .35)
                for t in np.linspace(.15, 1, 9):
                    pts.append((y + np.sin(a) * L * t, x + np.cos(a) * L * t, max(.6, r * (1 - .75 * t)), s * (1 - t) * .8))
        al = dots(rng, f.h, f.w, pts)
        if look in (1, 3):  # a stained halo
            mix(f.alb, c, np.clip(softblur(al, f.ppc * .05) * 1.1, 0, .35))
        mix(f.alb, c if look != 3 else c * .7 + rng.uniform(0, .25), al)


def smears(b, rng, sev, ext):
    look, c = rng.integers(4), dye(rng, b['z'].alb)
    f = b['z']
    m = region(rng, f.h, f.w, max(ext, .12))
    a, bend = rng.uniform(-1.6, 1.6), rng.uniform(-.12, .12)
    fl = .25 * noise(rng, f.h, f.w, f.ppc * 2)
    U = f.u * np.cos(a) + f.v * np.sin(a)
    V = -f.u * np.sin(a) + f.v * np.cos(a) + bend * U * U + fl
    if look == 0:  # many fine brush streaks
        n = streak(rng, U, V, 1.6, .09) + .6 * streak(rng, U, V, 2.5, .03)
        al = step(n, 1.0 - .5 * sev, 2.2) * m
    elif look == 1:  # a few ribbons with frayed ends
        al = np.zeros((f.h, f.w), np.float32)
        for _ in range(int(rng.integers(1, 3 + 4 * sev))):
            v0, u0, L, wd = rng.uniform(-.8, .8) * f.b, rng.uniform(-.6, .6) * f.a, rng.uniform(.5, 2.2 + ext), rng.uniform(.03, .1 + .14 * sev)
            t = (U - u0) / L
            al = np.maximum(al, step(wd * (1 - t * t) - np.abs(V - v0 + .12 * np.sin(U * 2 + v0)), -.01, .05) * (np.abs(t) < 1))
        al *= np.clip(.7 + .4 * streak(rng, U, V, .8, .03), 0, 1)
    elif look == 2:  # a hazy pull with a dark head
        u0, v0 = rng.uniform(-.5, .3) * f.a, rng.uniform(-.6, .6) * f.b
        t = np.clip((U - u0) / (.8 + 3 * ext), 0, 1)
        al = np.exp(-((V - v0) / (.08 + .25 * sev + .3 * t)) ** 2) * (1 - t) * (U > u0 - .06)
        al *= np.clip(.6 + .5 * streak(rng, U, V, 2, .06), 0, 1)
    else:  # swipes along the pour, broken
        n = streak(rng, U, V, 2.2, .22)
        al = step(n, 1.1 - .5 * sev, 1.5) * step(noise(rng, f.h, f.w, f.ppc * .5), -.8, .6) * m
    mix(f.alb, c, np.clip(al * (.25 + .7 * sev), 0, .95))


def streak(rng, U, V, lu, lv):
    """Noise drawn out along U, in cm."""
    g = rng.standard_normal((220, 120)).astype(np.float32)
    return nd.map_coordinates(g, [110 + V / lv * .9, 60 + U / lu], order=1, mode='wrap') * 1.3


def white_specks(b, rng, sev, ext):
    look = rng.integers(4)
    c = np.array([.98, .97, .94], np.float32)
    for f in faces(b, rng):
        m = region(rng, f.h, f.w, ext)
        n = int((12 + 220 * sev * rng.uniform(.3, 1)) * (.25 + .75 * ext)) + 4
        r0 = f.ppc * (.014 + .028 * sev) * (2.4 if look == 1 else 1)
        if look == 1:
            n = n // 4 + 3
        pts = [(y, x, max(.9, r0 * rng.lognormal(0, .5)), np.clip(rng.normal(.5 + .5 * sev, .15), .35, 1))
               for y, x in scatter(rng, f.h, f.w, n, m)]
        if look == 2:  # nests of grains
            pts = [(y + rng.normal(0, 4 * r), x + rng.normal(0, 4 * r), max(.8, r * .7), s) for y, x, r, s in pts for _ in range(5)]
        al = dots(rng, f.h, f.w, pts, .9, .4)
        if look == 3:  # crystals with a clear rim
            f.alb *= 1 - .22 * np.clip(softblur(al, f.ppc * .04) * 1.5 - al, 0, 1)[..., None]
        mix(f.alb, c, al)
        f.hgt += al * .004
        f.gls -= al * .15


def translucent_veins(b, rng, sev, ext):
    look = rng.integers(4)
    for f in faces(b, rng, .8):
        m = region(rng, f.h, f.w, max(ext, .15))
        cell = f.ppc * rng.uniform(.8, 1.8)
        st = (3.0 if look == 2 else 1.0)
        n = noise(rng, f.h, f.w, cell, cell * st) + .5 * noise(rng, f.h, f.w, cell * .5, cell * .5 * st) + .2 * noise(rng, f.h, f.w, cell * .22)
        n2 = noise(rng, f.h, f.w, cell * .8, cell * st) + .35 * noise(rng, f.h, f.w, cell * .3)
        wd = .05 + .1 * sev
        wd = wd * np.clip(1 + .9 * noise(rng, f.h, f.w, f.ppc * .9), .15, 3)
        al = step(wd * (1 + .5 * n2) - np.abs(n), -.10, .12)
        if look != 3:
            al = np.maximum(al, .8 * step(wd * .7 - np.abs(n2), -.07, .08))
        if look == 1:  # pools between the rivers
            al = np.maximum(al, .7 * step(n + n2, .9, 1.5))
        al *= m * (.3 + .7 * sev)
        f.alb *= 1 - al[..., None] * np.array([.17, .19, .24]) * (.6 + .6 * sev)
        f.gls += al * .25
        f.hgt -= al * .003


def crackle_network(b, rng, sev, ext):
    look = rng.integers(3)
    for f in faces(b, rng, .8):
        m = region(rng, f.h, f.w, max(ext, .2))
        q = 2
        h, w = f.h // q, f.w // q
        d = f.ppc / q * rng.uniform(.22, .5) * (1.5 if look == 1 else 1)
        n = int(h * w / d / d) + 6
        P = rng.uniform(0, 1, (n, 2)) * [h + 2 * d, w + 2 * d] - d
        y, x = np.mgrid[0:h, 0:w].astype(np.float32)
        wy, wx = y + d * .35 * noise(rng, h, w, d * .8), x + d * .35 * noise(rng, h, w, d * .8)
        dd, ii = cKDTree(P).query(np.stack([wy.ravel(), wx.ravel()], 1), k=2, eps=.1)
        e = ((dd[:, 1] - dd[:, 0]).reshape(h, w) / d).astype(np.float32)
        tone = rng.normal(0, 1, n).astype(np.float32)[ii[:, 0]].reshape(h, w)
        e, tone = resize(e, f.h, f.w), resize(tone, f.h, f.w)
        wd = .05 + .10 * sev * (.5 if look == 2 else 1)
        v = np.clip(1 + .5 * noise(rng, f.h, f.w, f.ppc * .6), .2, 2)
        al = step(wd * v - e, -.06, .06) * m * (.3 + .7 * sev)
        isl = np.clip(e * 2, 0, 1) * m
        f.alb += (isl * (.02 + .03 * sev) + tone * .008 * m)[..., None]
        f.alb *= 1 - al[..., None] * np.array([.28, .33, .40]) * (.6 + .6 * sev)
        f.gls += al * .2
        f.hgt -= al * .003


def powdery_film(b, rng, sev, ext):
    look = rng.integers(4)
    for f in ([b['y']] if rng.random() < .35 else [b['y'], b['z'], b['x']]):
        m = region(rng, f.h, f.w, ext)
        n = fbm(rng, f.h, f.w, f.ppc * .6, 5, .65)
        fine = noise(rng, f.h, f.w, 2.2)
        if look == 0:  # an even veil
            al = .75 + .12 * n + .08 * fine
        elif look == 1:  # cloudy and fluffy
            al = step(n, -.3, 1.2) * (1 + .12 * fine)
        elif look == 2:  # thick at the rim
            al = np.exp(-f.edge / rng.uniform(.25, .9)) * (1.1 + .3 * n) + .1 * fine
        else:  # blotches and grains of ash
            al = .25 + .8 * step(n, .1, .5) + .3 * step(fine + .5 * n, 1.2, 1.6)
        al = np.clip(al * m * (.22 + .68 * sev), 0, .93)
        mix(f.alb, np.array([.93, .93, .92]) if f.alb.mean() < .8 else np.array([.99, .99, 1.0]), al)
        f.gls *= 1 - al
        f.hgt += al * (.0022 * fine + .006 * n)


def orange_spots(b, rng, sev, ext):
    look = rng.integers(3)
    c = np.array([.74, .40, .10], np.float32) + rng.normal(0, .05, 3).astype(np.float32)
    for f in faces(b, rng):
        m = region(rng, f.h, f.w, ext)
        n = int(2 + 14 * (.3 + sev) * (.3 + ext) * (2.2 if look == 1 else 1))
        r0 = f.ppc * (.04 + .09 * sev) * (.55 if look == 1 else 1)
        pts = [(y, x, max(1.6, r0 * rng.lognormal(0, .45)), np.clip(rng.normal(.5 + .45 * sev, .12), .3, 1)) for y, x in scatter(rng, f.h, f.w, n, m)]
        core = dots(rng, f.h, f.w, pts, r0 * .8, .35)
        halo = softblur(dots(rng, f.h, f.w, [(y, x, r * 2, s) for y, x, r, s in pts], r0, .25), r0 * (.8 + (look == 2)))
        tint = f.alb * np.array([1.0, .78, .42]) * .95
        mix(f.alb, tint, np.clip(halo * (.65 + .3 * sev), 0, .85))
        mix(f.alb, np.clip(c * (.85 + .2 * f.alb.mean()), 0, 1), core * (.55 + .4 * sev))
        f.gls += halo * .15
