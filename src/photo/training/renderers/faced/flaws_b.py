"""Flaws of form and heat."""
import numpy as np
from .noise import fbm, noise, step, mix, blur, region, dots, scatter, softblur
from .flaws_a import faces, dye


def dark_centre_ring(b, rng, sev, ext):
    look, f = rng.integers(4), b['z']
    k = rng.uniform(.5, .72) if ext > .5 else rng.uniform(.3, .5)
    cx, cy = rng.normal(0, .1) * f.a, rng.normal(0, .1) * f.b
    p = 2.0 if look < 2 else rng.uniform(2.6, 4.5)
    d = (np.abs((f.u - cx) / (f.a * k)) ** p + np.abs((f.v - cy) / (f.b * k)) ** p) ** (1 / p)
    d += .06 * fbm(rng, f.h, f.w, f.ppc * 1.2, 3)
    s = .06 if look % 2 else .18
    a = step(-d, -1 - s, -1 + s) * (.35 + .65 * sev)
    line = np.exp(-((d - 1) / (.035 + .03 * (look == 0))) ** 2) * (.3 + .6 * sev)
    f.alb *= 1 - a[..., None] * (np.array([.20, .24, .32]) * (.6 + .5 * sev))
    f.alb *= 1 - line[..., None] * np.array([.16, .18, .22])
    if look == 2:  # a pale collar outside the core
        mix(f.alb, np.array([.97, .96, .93]), .22 * sev * np.exp(-((d - 1.15) / .08) ** 2))
    f.gls += a * .15


def pinholes(b, rng, sev, ext):
    look = rng.integers(3)
    for f in faces(b, rng):
        m = region(rng, f.h, f.w, ext)
        n = int((10 + 190 * sev * rng.uniform(.3, 1)) * (.3 + .7 * ext) * (.35 if look == 1 else 1)) + 3
        r0 = f.ppc * (.016 + .028 * sev) * (1.9 if look == 1 else 1)
        pts = [(y, x, max(1.1, r0 * rng.lognormal(0, .4)), rng.uniform(.7, 1)) for y, x in scatter(rng, f.h, f.w, n, m)]
        if look == 2:  # strings of bubbles along the pour
            pts += [(y + rng.normal(0, 1.5 * r), x + r * 3 * j, r * rng.uniform(.5, 1), s) for y, x, r, s in pts[:len(pts) // 2] for j in (1, 2, 3)]
        al = dots(rng, f.h, f.w, pts, 1.0, .12)
        f.hgt -= blur(al, .8) * .05
        f.alb *= 1 - al[..., None] * np.array([.42, .46, .50]) * (.65 + .4 * sev)
        f.gls *= 1 - al


def path(rng, f, p0, p1, rough):
    """A jagged line from p0 to p1, as points in cm."""
    n = 65
    t = np.linspace(0, 1, n)
    w = np.cumsum(np.convolve(rng.standard_normal(n), np.ones(5) / 5, 'same')) * .10 * rough
    w -= w[0] + (w[-1] - w[0]) * t
    w += rng.standard_normal(n) * .012 * rough
    d = np.array(p1) - np.array(p0)
    L = np.hypot(*d) + 1e-6
    w *= min(1.5, L / 5)
    nrm = np.array([-d[1], d[0]]) / L
    return np.array(p0)[None] + t[:, None] * d + w[:, None] * nrm


def slit(f, pts, wid, rng):
    """Alpha of a gash along points; width in cm."""
    al = np.zeros((f.h, f.w), np.float32)
    t = np.linspace(0, 1, 420)
    x = np.interp(t, np.linspace(0, 1, len(pts)), pts[:, 0])
    y = np.interp(t, np.linspace(0, 1, len(pts)), pts[:, 1])
    tap = np.minimum(1, np.minimum(t, 1 - t) * 7 + .25) * np.interp(t, np.linspace(0, 1, 14), rng.uniform(.45, 1.3, 14))
    q = [((yy + f.b) / f.b / 2 * f.h, (xx + f.a) / f.a / 2 * f.w, max(.7, wid * f.ppc * k), 1) for xx, yy, k in zip(x, y, tap)]
    return np.maximum(al, dots(rng, f.h, f.w, q, 1.0, 0))


def carve(f, al, deep, tone):
    f.hgt -= softblur(al, f.ppc * .05 + 1) * deep
    f.hgt += np.clip(softblur(al, f.ppc * .14 + 1) - al, 0, 1) * deep * .35
    f.alb *= 1 - al[..., None] * np.array([.72, .76, .80]) * tone
    f.gls *= 1 - al


def crack(b, rng, sev, ext):
    look = rng.integers(4)
    wid = .012 + .05 * sev * rng.uniform(.5, 1.2)
    tone = .5 + .5 * sev
    if look in (0, 3) or b.get('loaf'):  # along the top; in a loaf the end shows it too
        f = b['y']
        lng = f.b > f.a
        L = .25 + .7 * ext
        c = rng.uniform(-1, 1) * (1 - L)
        off = rng.normal(0, .2)
        ends = [(off * f.a, (c - L) * f.b), (off * f.a + rng.normal(0, .1), (c + L) * f.b)] if lng else [((c - L) * f.a, off * f.b), ((c + L) * f.a, off * f.b)]
        pts = path(rng, f, *ends, 1 + f.b * .1)
        al = slit(f, pts, wid * 1.6, rng)
        if rng.random() < .5:
            i = rng.integers(15, 50)
            al = np.maximum(al, slit(f, path(rng, f, pts[i], pts[i] + rng.normal(0, .9, 2), .8), wid * .8, rng))
        carve(f, al, .25, tone)
        bulge = np.exp(-((f.u - off * f.a) / (f.a * .5)) ** 2) * .15 * sev
        f.hgt += bulge.astype(np.float32) if lng else 0
    if look != 3:
        f = b['z']
        x0 = rng.uniform(-.6, .6) * f.a
        if look == 0:
            ends = (x0, -f.b), (x0 + rng.normal(0, .5), -f.b + 2 * f.b * rng.uniform(.15, .3 + .5 * ext))
        elif look == 1:
            y0 = rng.uniform(-.6, .6) * f.b
            ends = (-f.a * rng.uniform(.3, 1.05), y0), (f.a * (2 * rng.uniform(.2, .4 + .6 * ext) - 1), y0 + rng.normal(0, .7))
        else:
            a = rng.uniform(0, 6.3)
            ends = (x0, rng.uniform(-.5, .5) * f.b), (x0 + np.cos(a) * (1 + 4 * ext), np.sin(a) * (1 + 4 * ext))
        pts = path(rng, f, *ends, 1.4)
        al = slit(f, pts, wid, rng)
        for _ in range(int(rng.integers(0, 3))):
            i = rng.integers(15, 55)
            al = np.maximum(al, .8 * slit(f, path(rng, f, pts[i], pts[i] + rng.normal(0, .8, 2), 1.2), wid * .5, rng))
        carve(f, al, .16, tone)


def brown_outside_in(b, rng, sev, ext):
    look = rng.integers(4)
    brown = np.array([[.42, .26, .15], [.52, .35, .20], [.33, .20, .13], [.58, .42, .24]][rng.integers(4)], np.float32)
    deep = (.15 + 1.1 * ext) * (b['z'].b / 3)
    for f in (b['z'], b['x'], b['y']):
        n = fbm(rng, f.h, f.w, f.ppc * 1.3, 4)
        if f.name == 'z':
            p = 3.0
            r = 1 - (np.abs(f.u / f.a) ** p + np.abs(f.v / f.b) ** p) ** (1 / p)
            e = lerp_edge(f.edge, r * f.b, .6) + .12 * n * (1 + (look == 3))
            a = 1 - step(e, deep * (.35 if look != 1 else .85), deep * (1.25 if look != 1 else 1.05))
            if look == 2:  # uneven: one side far browner
                a *= np.clip(.75 + .6 * f.u / f.a * rng.choice([-1, 1]), .15, 1)
        else:
            a = np.clip(.92 + .08 * n, 0, 1)
        al = np.clip(a * (.28 + .62 * sev), 0, .93)
        mix(f.alb, brown * (1 + .15 * n[..., None] * .3), al)


def lerp_edge(a, b, t):
    return a * (1 - t) + np.maximum(b, 0) * t


def colour_bled(b, rng, sev, ext):
    """The first dye wanders out on one side; its own border stays."""
    look, d = rng.integers(4), b['design']
    up = rng.random() < .5
    reach = .2 + .9 * sev * (.4 + ext)
    c = d.c[1] * .8 + .2 * dye(rng, b['z'].alb) if look == 3 else d.c[1]
    for f in (b['z'], b['x'], b['y']):
        n = fbm(rng, f.h, f.w, f.ppc * .9, 4)
        out = np.maximum(-f.D, 0)
        if d.kind not in ('layers',):
            out = out * 3.0
        fade = np.exp(-(out / (reach * np.clip(.75 + .35 * n, .2, 2))) ** (1.4 if look != 1 else 3))
        if look == 2:  # fingers running off
            fade *= step(noise(rng, f.h, f.w, f.ppc * 3, f.ppc * .28), -.7, .6)
        g = region(rng, f.h, f.w, max(.3, ext))
        if d.kind != 'layers':
            sy, sx = np.gradient(softblur(f.M, f.ppc * .25))
            g = g * step((sy if up else sx) * f.ppc, -.25, .12)
        al = fade * (1 - f.M) * g * (.3 + .55 * sev)
        mix(f.alb, c, np.clip(al, 0, .85))


def drag_lines(b, rng, sev, ext):
    look, f = rng.integers(4), b['z']
    a = rng.choice([0, 1.57]) + rng.normal(0, .12)
    V = -f.u * np.sin(a) + f.v * np.cos(a)
    U = f.u * np.cos(a) + f.v * np.sin(a)
    V = V + rng.uniform(-.02, .02) * U * U
    m = region(rng, f.h, f.w, max(.25, ext))
    n = int((4 + 26 * ext) if look != 1 else 2 + 4 * ext)
    h = np.zeros((f.h, f.w), np.float32)
    for _ in range(n):
        v0, wd = rng.uniform(-1, 1) * (f.b + .3), rng.uniform(.012, .035) * (1.8 if look == 1 else 1)
        u0, L = rng.uniform(-1, 1) * f.a, rng.uniform(.8, 2.5) * f.a
        t = np.clip((L - np.abs(U - u0)) / .25, 0, 1)
        h = np.maximum(h, np.exp(-((V - v0) / wd) ** 2) * rng.uniform(.4, 1) * t)
    if look == 2:  # a comb of even lines
        h = np.maximum(h, .7 * step(np.sin(V * rng.uniform(14, 30)), .3, 1))
    h *= m if look != 1 else 1
    k = (.25 + .75 * sev)
    f.hgt -= h * .018 * k
    f.alb *= 1 - (h * .16 * k)[..., None]
    if look == 3:  # crumbs caught and pulled along
        pts = [(y, x, f.ppc * rng.uniform(.015, .05), 1) for y, x in scatter(rng, f.h, f.w, int(10 + 30 * sev), np.clip(h * 2, 0, 1))]
        al = dots(rng, f.h, f.w, pts, 1, .4)
        f.hgt += al * .03
        mix(f.alb, np.clip(f.alb * 1.05, 0, 1), al)


def layer_gap(b, rng, sev, ext):
    d, look = b['design'], rng.integers(3)
    i = rng.integers(len(d.cuts))
    wid = .015 + .06 * sev
    left, L = rng.choice([-1, 1]), .3 + 1.7 * ext
    for f in (b['z'], b['x']):
        y = d.border(f.px, f.Z)[i]
        v = np.clip(.9 + .45 * noise(rng, f.h, f.w, f.ppc * 9, f.ppc * .8), .1, 2) + .12 * noise(rng, f.h, f.w, f.ppc * 9, f.ppc * .12)
        if f.name == 'z':
            t = (f.u * left / f.a + 1)  # 0 at the open side
            tap = np.clip((L - t) / (.8 if look else .25), 0, 1)
            if look == 2:
                tap = step(noise(rng, f.h, f.w, f.ppc * 50, f.ppc * 1.5), -.4, .5)
        else:
            tap = 1.0 if left > 0 or look == 2 else 0.0
        g = wid * v * tap
        al = step(g - np.abs(f.py - y), -.008, .012) * (g > .006)
        carve(f, al.astype(np.float32), .12, .65 + .35 * sev)


def wrinkled_top(b, rng, sev, ext):
    look, f = rng.integers(4), b['y']
    m = region(rng, f.h, f.w, max(.3, ext))
    cell = f.ppc * (.5 + .6 * sev) * (1.5 if look == 1 else 1)
    st = 2.2 if look == 2 else 1.0
    n = noise(rng, f.h, f.w, cell * st, cell) + .45 * noise(rng, f.h, f.w, cell * .6)
    if look == 3:  # ripples about the middle
        n = np.sin(np.hypot(f.u * 1.3, f.v) * rng.uniform(4, 6) + 2.6 * noise(rng, f.h, f.w, f.ppc * 1.2))
    r = 1 - np.minimum(np.abs(n) * 1.05, 1) ** .6  # brain-like folds: valleys along the zero lines
    h = -(r * m) * (.12 + .30 * sev)
    f.hgt += blur(h.astype(np.float32), f.ppc * (.04 + .04 * rng.random()))
    f.alb *= 1 - (r ** 2 * m * (.06 + .2 * sev))[..., None] * np.array([.8, .9, 1.0])
    f.gls += m * .25


def mould_dimples(b, rng, sev, ext):
    look = rng.integers(3)
    for f in (b['x'], b['y']) if rng.random() < .5 and not b.get('loaf') else (b['x'],):
        m = region(rng, f.h, f.w, max(.3, ext))
        if look == 0:  # round dimples of bubbles against the liner
            r0 = f.ppc * (.05 + .09 * sev)
            pts = [(y, x, r0 * rng.lognormal(0, .45), rng.uniform(.5, 1)) for y, x in scatter(rng, f.h, f.w, int(10 + 70 * ext * min(2, f.a * f.b / 6)), m)]
            h = blur(dots(rng, f.h, f.w, pts, 2, .15), r0 * .25) * (.04 + .05 * sev)
        elif look == 1:  # folds of a wrinkled paper liner
            h = np.zeros((f.h, f.w), np.float32)
            for _ in range(int(3 + 9 * ext)):
                a, o = rng.uniform(-.9, .9) + rng.choice([0, 1.57]), rng.uniform(-1, 1) * max(f.a, f.b)
                V = -f.u * np.sin(a) + f.v * np.cos(a) - o + .06 * noise(rng, f.h, f.w, f.ppc)
                h = np.maximum(h, np.exp(-np.abs(V) / (.02 + .03 * sev)) * rng.uniform(.4, 1))
            h = blur(h * m, 1) * (.05 + .07 * sev)
        else:  # a pebbled, orange-skin side
            n = noise(rng, f.h, f.w, f.ppc * (.14 + .12 * sev))
            h = step(n, .2, 1.3) * m * (.035 + .05 * sev)
        f.hgt -= h
        f.alb *= 1 - np.clip(h * 1.4, 0, .2)[..., None]
