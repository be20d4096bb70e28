"""Things that are no flaws but may pass for one; all painted on the sound soap."""
import numpy as np
from PIL import Image, ImageDraw, ImageFont
from .noise import fbm, noise, step, mix, blur, region, dots, scatter, softblur, resize
from .flaws_b import path, slit


FONT = '/usr/share/fonts/truetype/dejavu/DejaVuSerif-Bold.ttf'


def lettering(size):
    """A font of that size in pixels: the library's own where this machine has no other."""
    try:
        return ImageFont.truetype(FONT, size)
    except OSError:
        return ImageFont.load_default(size)


def mica(b, rng):
    c = np.array([(.80, .62, .25), (.78, .78, .80), (.72, .42, .30), (.55, .35, .6)][rng.integers(4)], np.float32)
    for f in (b['z'], b['y']):
        n = noise(rng, f.h, f.w, f.ppc * 1.6) + .4 * noise(rng, f.h, f.w, f.ppc * .6)
        w = .03 + .04 * np.clip(noise(rng, f.h, f.w, f.ppc * .7), -.6, 2)
        al = step(w - np.abs(n), -.01, .03) * np.clip(.7 + .4 * noise(rng, f.h, f.w, 2), 0, 1)
        mix(f.alb, c * (1 + .15 * noise(rng, f.h, f.w, 1.5)[..., None]), al)
        f.gls += al * .4


def glitter(b, rng):
    for f in (b['y'], b['z'])[:1 + int(rng.random() < .5)]:
        m = region(rng, f.h, f.w, .7)
        pts = [(y, x, rng.uniform(.8, 1.8), 1) for y, x in scatter(rng, f.h, f.w, 320, m)]
        al = dots(rng, f.h, f.w, pts, .7, 0)
        hue = np.clip(.75 + .3 * rng.standard_normal((f.h, f.w, 1)) + .15 * rng.standard_normal((f.h, f.w, 3)), .2, 1).astype(np.float32)
        mix(f.alb, hue, al)
        f.gls += al
        f.hgt += al * .02 * rng.standard_normal((f.h, f.w)).astype(np.float32)


def grains(b, rng, col, var, r, n, stretch=1.0, shell=False):
    for f in (b['z'], b['x'], b['y']):
        k = int(n * min(2.2, f.a * f.b / 9)) + 6
        for y, x in scatter(rng, f.h, f.w, k):
            R, a = f.ppc * r * rng.lognormal(0, .3), rng.uniform(0, 3.2)
            m = int(R * stretch + 3)
            y0, y1, x0, x1 = max(int(y) - m, 0), min(int(y) + m, f.h), max(int(x) - m, 0), min(int(x) + m, f.w)
            if y1 - y0 < 2 or x1 - x0 < 2:
                continue
            yy, xx = np.ogrid[y0:y1, x0:x1]
            u, v = (xx - x) * np.cos(a) + (yy - y) * np.sin(a), (yy - y) * np.cos(a) - (xx - x) * np.sin(a)
            d = np.sqrt((u / stretch) ** 2 + v * v) + .15 * R * np.sin(u / R * 4 + y)
            al = np.clip((R - d) / 1.2 + .5, 0, 1).astype(np.float32) * .92
            c = np.array(col, np.float32) + rng.normal(0, var)
            t = (np.clip(d / R, 0, 1)[..., None] * .35 + .75) if shell else 1.0
            s = f.alb[y0:y1, x0:x1]
            s += (c * t - s) * al[..., None]
            f.hgt[y0:y1, x0:x1] += al * .01 * rng.choice([-.6, 1])


def oats(b, rng):
    grains(b, rng, (.82, .70, .50), .05, .11, 26, 1.5, True)


def poppy(b, rng):
    grains(b, rng, (.13, .14, .17), .03, .035, 90)


def coffee(b, rng):
    grains(b, rng, (.20, .12, .08), .04, .03, 190, 1.2)


def herbs(b, rng):
    grains(b, rng, (.30, .36, .16), .05, .05, 50, 2.6)


def corn(b, rng):
    grains(b, rng, (.93, .82, .50), .05, .04, 120)


def salt(b, rng):
    f = b['y']
    pts = [(y, x, f.ppc * rng.uniform(.05, .13), 1) for y, x in scatter(rng, f.h, f.w, int(40 + 20 * f.a * f.b), region(rng, f.h, f.w, .6))]
    al = dots(rng, f.h, f.w, pts, 1.2, .5)
    mix(f.alb, (.95, .94, .93), al * .8)
    f.hgt += al * .06
    f.gls += al * .3


def petals(b, rng):
    f = b['y']
    cs = [(.75, .25, .35), (.90, .72, .20), (.45, .38, .65), (.85, .75, .55)][rng.integers(4)]
    for y, x in scatter(rng, f.h, f.w, int(10 + 5 * f.a * f.b), region(rng, f.h, f.w, .8)):
        L, a = rng.uniform(.15, .45), rng.uniform(0, 6.3)
        u, v = x / f.w * 2 * f.a - f.a, y / f.h * 2 * f.b - f.b
        p = path(rng, f, (u, v), (u + np.cos(a) * L, v + np.sin(a) * L), .35)
        al = slit(f, p, rng.uniform(.03, .1), rng)
        mix(f.alb, np.clip(np.array(cs) * rng.uniform(.7, 1.15), 0, 1), al * .95)
        f.hgt += al * .08


def embeds(b, rng):
    f = b['z']
    cs = [np.array(c, np.float32) for c in [(.8, .3, .3), (.3, .5, .7), (.95, .93, .88), (.4, .25, .18), (.5, .65, .4), (.9, .75, .3)]]
    for _ in range(int(rng.integers(2, 9))):
        u, v, r = rng.uniform(-.8, .8) * f.a, rng.uniform(-.8, .8) * f.b, rng.uniform(.2, .6)
        c, s, a = cs[rng.integers(6)], rng.uniform(.6, 1.5), rng.uniform(0, 3)
        U, V = (f.u - u) * np.cos(a) + (f.v - v) * np.sin(a), (f.v - v) * np.cos(a) - (f.u - u) * np.sin(a)
        p = 2.0 if rng.random() < .5 else 6.0
        d = (np.abs(U / s) ** p + np.abs(V * s) ** p) ** (1 / p) - r
        mix(f.alb, c * (1 + .02 * fbm(rng, f.h, f.w, f.ppc * .5, 3)[..., None]), step(-d, -.015, .015))
        f.alb *= 1 - .1 * np.exp(-(d / .03) ** 2)[..., None]


def stamp(b, rng):
    f = b['z']
    S = 400
    im = Image.new('L', (S, S), 0)
    d = ImageDraw.Draw(im)
    k = rng.integers(4)
    if k == 0:
        d.ellipse((40, 40, 360, 360), outline=255, width=10)
        d.text((200, 200), ['Soap', 'Hecho', 'Bar', '100 g', 'Olive'][rng.integers(5)], 255, lettering(90), 'mm')
    elif k == 1:  # a leaf
        for t in np.linspace(-120, 120, 9):
            d.line((200, 200 + t, 200 + 90 - abs(t) * .5, 150 + t), 255, 8)
            d.line((200, 200 + t, 110 + abs(t) * .5, 150 + t), 255, 8)
        d.line((200, 40, 200, 370), 255, 10)
    elif k == 2:  # a sun, as on a plate rim
        for a in np.arange(0, 6.28, .393):
            d.line((200 + 70 * np.cos(a), 200 + 70 * np.sin(a), 200 + 165 * np.cos(a), 200 + 165 * np.sin(a)), 255, 12)
        d.ellipse((140, 140, 260, 260), outline=255, width=12)
    else:
        d.rectangle((30, 110, 370, 290), outline=255, width=9)
        d.text((200, 200), ['LAVANDA', 'OLIVE', 'MIEL', 'AVENA', 'ROSA'][rng.integers(5)], 255, lettering(62), 'mm')
    sz = int(min(f.w, f.h) * rng.uniform(.5, .85))
    a = resize(np.asarray(im, np.float32) / 255, sz, sz)
    y0, x0 = (f.h - sz) // 2, (f.w - sz) // 2
    al = np.zeros((f.h, f.w), np.float32)
    al[y0:y0 + sz, x0:x0 + sz] = np.clip(a, 0, 1)
    al = blur(al, 1.2)
    f.hgt -= al * .08
    f.alb *= 1 - .08 * al[..., None]
    if rng.random() < .3:
        mix(f.alb, (.78, .60, .25), al * .7)


def dew(b, rng):
    for f in (b['z'], b['y'], b['x']):
        pts = [(y, x, f.ppc * rng.lognormal(-2.9, .5), 1) for y, x in scatter(rng, f.h, f.w, int(14 * f.a * f.b), region(rng, f.h, f.w, .75))]
        al = dots(rng, f.h, f.w, pts, 1.0, .12)
        dome = np.sqrt(np.clip(softblur(al, f.ppc * .05) * al, 0, 1))
        f.hgt += dome * .09
        f.gls = np.maximum(f.gls, al)
        f.alb *= 1 - .12 * al[..., None] + .1 * np.clip(np.roll(al, 2, 0) - al, 0, 1)[..., None]


def label(b, rng):
    c = np.array([(.95, .93, .88), (.72, .58, .42), (.20, .22, .22), (.85, .80, .70)][rng.integers(4)], np.float32)
    k = rng.uniform(.25, .5)
    for f in (b['z'], b['y']):
        al = step(k * f.a - np.abs(f.u), -.01, .01)
        mix(f.alb, c * (1 + .03 * noise(rng, f.h, f.w, 2)[..., None]), al)
        f.hgt += al * .03
        f.gls = f.gls * (1 - al) + .08 * al
        if f.name == 'z':
            im = Image.new('L', (f.w, f.h), 0)
            d = ImageDraw.Draw(im)
            s = max(8, int(k * f.a * f.ppc * .3))
            d.text((f.w / 2, f.h * .4), ['avena', 'miel', 'soap', 'rosa', 'salvia', 'carbon'][rng.integers(6)], 255, lettering(int(s)), 'mm')
            for j in range(3):
                d.line((f.w / 2 - s * 1.1, f.h * (.55 + .06 * j), f.w / 2 + s * 1.1, f.h * (.55 + .06 * j)), 160, max(1, s // 14))
            mix(f.alb, (.15, .13, .12) if c.mean() > .5 else (.9, .85, .7), np.asarray(im, np.float32) / 255)


def crinkle(b, rng):
    f = b['z']
    f.hgt += .05 * np.sin(f.v * rng.uniform(7, 12)) if rng.random() < .5 else .05 * np.sin(f.u * rng.uniform(7, 12))


def mottle(b, rng):
    for f in (b['z'], b['x'], b['y']):
        n = fbm(rng, f.h, f.w, f.ppc * rng.uniform(.5, 1.5), 5, .6)
        f.alb *= 1 + .035 * n[..., None]


def feather(b, rng):
    """Thin, wilful lines drawn with a skewer on top."""
    f = b['y']
    n = np.sin(f.u * 3 + 1.5 * np.sin(f.v * 2.5)) + .2 * noise(rng, f.h, f.w, f.ppc)
    mix(f.alb, b['design'].c[2], step(n, .5, .62) * .9)
    f.hgt += .02 * np.sin(f.v * 5 + n)


ALL = [mica, glitter, oats, poppy, coffee, herbs, corn, salt, petals, embeds, stamp, dew, label, crinkle, mottle, feather]
NAMES = {f.__name__: f for f in ALL}
