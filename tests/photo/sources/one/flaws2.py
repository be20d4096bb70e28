"""The flaws that follow lines, borders and faces; and the table of all sixteen."""
import numpy as np
from PIL import Image, ImageDraw
from scipy import ndimage as nd
from noise import F, blur, at2, mix, rgb, smooth
import flaws as f1
from flaws import deeper


def path(A, rng, start, ang, length, width, jit, out, depth=0):
    """Draw a ragged line that tapers; branch now and then."""
    step = max(.05 * A.ppc, 2)
    n = int(length * A.ppc / step)
    x, y, a0 = start[0], start[1], ang
    for i in range(n):
        ang += rng.normal(0, jit * .8)
        ang += (a0 - ang) * .25
        x2, y2 = x + np.cos(ang) * step, y + np.sin(ang) * step
        w = width * A.ppc * min(1, (n - i) / n * 1.6) * min(1, .3 + i / max(n, 1) * 5) * rng.uniform(.6, 1.3)
        out.line([x, y, x2, y2], fill=255, width=max(1, int(round(w))))
        if w > 2:
            out.ellipse([x2 - w / 2, y2 - w / 2, x2 + w / 2, y2 + w / 2], fill=255)
        if depth < 2 and rng.random() < .012:
            path(A, rng, (x2, y2), ang + rng.choice([-1, 1]) * rng.uniform(.5, 1.1), length * .3, width * .5, jit, out, depth + 1)
        x, y = x2, y2


def crack(A, rng, s, e, r):
    im = Image.new('L', A.shape[::-1], 0)
    dr = ImageDraw.Draw(im)
    tops = [f for f in A.rects if A.top[5, A.rects[f][0] + 5]]
    cuts = [f for f in A.rects if A.cut[5, A.rects[f][0] + 5]]
    if tops and (not cuts or A.rects[tops[0]][3] > .35 * A.rects[cuts[0]][3] or rng.random() < .5):
        f = tops[0]
        x0, x1, hh, _ = A.rects[f]
        L = (x1 - x0) / A.ppc * (.3 + .7 * e)
        horizontal = (x1 - x0) >= hh * .8
        for _ in range(1 + (rng.random() < .3)):
            if horizontal:
                path(A, rng, (x0 + (x1 - x0) * rng.uniform(0, max(.02, 1 - e)), hh * rng.uniform(.35, .65)), rng.normal(0, .08), L,
                     .02 + .16 * s * s, .35, dr)
            else:
                path(A, rng, ((x0 + x1) / 2 + rng.normal(0, 8), 0), 1.57, hh / A.ppc * (.4 + .6 * e), .02 + .14 * s * s, .35, dr)
        ok = A.face == f
    else:
        f = (cuts or list(A.rects))[0]
        x0, x1, hh, _ = A.rects[f]
        look = rng.integers(3)
        x = rng.uniform(x0 + .2 * (x1 - x0), x1 - .2 * (x1 - x0))
        a, st = (-1.57, (x, hh)) if look else (rng.normal(0, .2), (x0 + 2, hh * rng.uniform(.3, .7)))
        path(A, rng, st, a + rng.normal(0, .25), (hh if look else x1 - x0) / A.ppc * (.3 + .65 * e), .015 + .1 * s * s, .4, dr)
        ok = A.face == f
    m = blur(np.asarray(im, F) / 255, .7) * ok
    lip = blur(m, .1 * A.ppc)
    A.hgt -= m * F(.06 + .15 * s) - lip * F(.12 * s)
    A.col = mix(A.col, A.col * F(.22 + .3 * (1 - s)), np.clip(m * 1.3, 0, 1))
    A.gloss *= 1 - np.clip(m, 0, 1)


def brown_outside_in(A, rng, s, e, r):
    look = rng.integers(4)
    w = (.15 + 1.2 * e) * min(A.solid.d[0], A.solid.d[2], 3) * .55
    d = A.rim + A.noise(rng, 1.3, 4) * F(.07 + .12 * e)
    if look == 1:
        d = d + (A.p[..., 2] / A.solid.d[2]) * F(w * .5)
    sharp = [.25, .5, .12, .9][look]
    a = 1 - smooth(w * (1 - sharp), w * (1 + sharp * .4), d)
    a = np.where(A.cut, a, F(1.0) * (.9 + .1 * np.tanh(A.noise(rng, 1.5, 3))))
    tone = rgb(['a8743f', '8a5a30', '6e4424', 'b98a55'][rng.integers(4)])
    b = A.col * (tone / F(.62)) * F(1.0)
    A.col = mix(A.col, np.minimum(b, A.col), np.clip(a, 0, 1) * F(.2 + .75 * s))


def colour_bled(A, rng, s, e, r):
    if A.dye is None:
        return
    look = rng.integers(3)
    g = (.08 + .35 * e) * A.ppc
    src = A.dye
    n = A.noise(rng, .8, 4)
    sig = [(g, g), (g * 1.6, g * .5), (g * .7, g * .7)][look]
    b = nd.gaussian_filter(src, sig)
    if look == 1:
        b = np.maximum(b, nd.gaussian_filter(np.roll(src, -int(g), 0), sig) * F(.8))
    a = np.clip(b * 2.1 + n * F(.12) * (b > .02), 0, 1) * (1 - src)
    if look == 2:
        a = a * smooth(-.7, .7, n)
    reg = A.region(rng, min(1, .4 + e), A.used, 3)
    A.col = mix(A.col, A.dyecol * F(.75) + A.col * F(.25), a * reg * F(.25 + .7 * s))


def drag_lines(A, rng, s, e, r):
    u, v = A.coords()
    look = rng.integers(4)
    t = rng.normal(0, .06) + (1.57 if rng.random() < .3 else 0)
    x = u * np.cos(t) + v * np.sin(t) + (F(.02) * (v * v) if look == 2 else 0)
    y = v * np.cos(t) - u * np.sin(t)
    ax = np.arange(-20, 20, .01)
    pulse = np.zeros(ax.size, F)
    n = int([14, 70, 30, 8][look] * (.4 + .9 * s) * 6)
    pos = rng.integers(0, ax.size, n)
    pulse[pos] = rng.uniform(.3, 1, n) * rng.choice([-1, -1, 1], n)
    pulse = nd.gaussian_filter1d(pulse, [2.2, 1.0, 1.6, 3][look])
    pulse /= np.abs(pulse).max()
    xi = np.clip((x + 20 + A.noise(rng, 3, 1) * F(.015)) * 100, 0, ax.size - 2)
    i = xi.astype(int)
    g = pulse[i] + (pulse[i + 1] - pulse[i]) * (xi - i)
    start = at2(x * F(40), np.zeros_like(x), None) * F(1.2)
    along = smooth(-.6, .3, y * F(.5) + start) if look in (2, 3) else smooth(-1.6, .0, A.noise(rng, (2.5, 2.5), 2))
    reg = A.region(rng, e, A.cut, 3) * along
    A.hgt += g * reg * F(.006 + .03 * s)
    A.col *= (1 + g * reg * F(.1 + .3 * s))[..., None]


def layer_gap(A, rng, s, e, r):
    if A.border is None:
        return
    look = rng.integers(3)
    lw = (.012 + .07 * s * s) * (1 + .5 * np.tanh(A.noise(rng, .6, 3)))
    u = A.p[..., 0] if 'loaf' not in A.solid.roles else A.p[..., 1]
    U = A.solid.d[0] if 'loaf' not in A.solid.roles else A.solid.d[1]
    t = (u / U * rng.choice([-1, 1]) + 1) / 2
    if look == 0:
        k = smooth(e + .04, e - .3, t)
    elif look == 1:
        k = smooth(e * .6 + .03, e * .4, np.abs(t - rng.uniform(.3, .7)))
    else:
        k = smooth(-.6, .2, A.noise(rng, 1.6, 2) + F(e * 2 - 1))
    w = lw * k
    f = (1 - smooth(.55, 1.1, np.abs(A.border + A.noise(rng, .3, 2) * F(.006)) / np.maximum(w, 1e-4))) * (w > .006) * ~A.top
    f = blur(f, .6)
    A.hgt -= f * F(.12)
    A.col = mix(A.col, A.col * F(.1 + .35 * (1 - s)), np.clip(f * 1.1, 0, 1))
    lip = blur(f, .06 * A.ppc) * (1 - f)
    A.col *= (1 - lip * F(.25 * s))[..., None]


def wrinkled_top(A, rng, s, e, r):
    look = rng.integers(4)
    top = A.top if A.top.sum() > 2000 else A.used
    c = [.75, .5, 1.0, .65][look] * rng.uniform(.8, 1.2)
    g = c * A.ppc * .3
    n = A.noise(rng, c, 3, .45)
    if look == 2:
        n = A.noise(rng, (c * .6, c * 2.2), 3, .45)
    n = blur(n, g * .45) - blur(n, g * 2.2)
    n = n / max(n.std(), 1e-3)
    h = [1 - np.abs(np.tanh(n * 1.1)) ** .8 * 1.7, np.tanh(n * 1.6), np.tanh(n * 1.3), -np.abs(np.tanh(n * 1.4)) ** .6 * 1.6][look]
    reg = blur(A.region(rng, e, top, 2.5), .08 * A.ppc) * top * smooth(0, .25, A.rim)
    A.hgt = A.hgt * (1 - .5 * reg) + h * reg * F((.03 + .11 * s) * c)
    A.col = mix(A.col, deeper(A, .6), np.clip(-h, 0, 1) * reg * F(.2 + .4 * s))
    A.gloss += reg * F(.25)


def mould_dimples(A, rng, s, e, r):
    side = A.side if A.side.sum() > 2500 else A.used & ~A.cut
    reg, look = A.region(rng, e, side, 2), rng.integers(3)
    n = side.sum() / A.ppc ** 2 * (.3 + .7 * e)
    if look == 0:
        f = A.spots(rng, int(n * 2.2) + 5, (.08, .28), reg, .9, .25, 1.6, 0)
        A.hgt -= f * F(.025 + .075 * s)
    elif look == 1:
        f = 0
        u, v = A.coords()
        for _ in range(rng.integers(2, 5)):
            t = rng.random() * 3.14
            q = (u * np.cos(t) + v * np.sin(t) + A.noise(rng, 2.2, 2) * F(.12)) * F(rng.uniform(.5, 1.3)) + rng.random()
            d = np.abs(q - np.round(q))
            f = np.maximum(f, (1 - smooth(.0, .07, d)) * smooth(-.3, .8, A.noise(rng, 1.6, 2)))
        A.hgt -= blur(f * reg, 1) * F(.02 + .06 * s)
    else:
        f = A.spots(rng, int(n * 9) + 8, (.03, .1), reg, .6, .15, 1.2, 0)
        A.hgt -= f * F(.02 + .05 * s)
    A.col *= (1 - np.clip(f * reg, 0, 1) * F(.05 + .1 * s))[..., None]


ALL = [f1.coloured_specks, f1.smears, f1.white_specks, f1.translucent_veins, f1.crackle_network, f1.powdery_film,
       f1.dark_centre_ring, f1.orange_spots, f1.pinholes, crack, brown_outside_in, colour_bled, drag_lines, layer_gap,
       wrinkled_top, mould_dimples]
FLAW = dict(zip(f1.IDS, ALL))
