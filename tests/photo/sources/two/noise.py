"""Noise fields and small paint helpers. All arrays are float32."""
import numpy as np
from PIL import Image, ImageDraw
from scipy.ndimage import gaussian_filter
from scipy.spatial import cKDTree


def resize(a, h, w):
    return np.asarray(Image.fromarray(np.asarray(a, np.float32), 'F').resize((w, h), Image.BICUBIC))


def fbm(rng, h, w, scale, octs=4, gain=.5, sx=1., sy=1.):
    """Sum of smooth noises; scale is the size in pixels of the coarsest; sx, sy stretch."""
    out = np.zeros((h, w), np.float32)
    amp, tot = 1., 0.
    for _ in range(octs):
        cy, cx = max(scale * sy, 1.), max(scale * sx, 1.)
        gh, gw = int(h / cy) + 4, int(w / cx) + 4
        if cy < 1.01 and cx < 1.01:
            gh, gw, cy, cx = h + 4, w + 4, 1., 1.
        g = Image.fromarray(rng.standard_normal((gh, gw)).astype(np.float32), 'F')
        oy, ox = 1 + rng.random() * .9, 1 + rng.random() * .9
        box = (ox, oy, min(ox + w / cx, gw), min(oy + h / cy, gh))
        out += amp * np.asarray(g.resize((w, h), Image.BICUBIC, box=box))
        tot += amp * amp
        amp *= gain
        scale /= 2
        if scale < 1.2:
            break
    return out / np.float32(tot ** .5)


def unit3(a):
    """Vectors of the last axis made one long."""
    return a / (np.sqrt(a[..., :1] ** 2 + a[..., 1:2] ** 2 + a[..., 2:] ** 2) + np.float32(1e-6))


def mean3(a):
    return (a[..., 0] + a[..., 1] + a[..., 2]) * np.float32(1 / 3)


def sstep(x, a, b):
    t = np.clip((x - a) / (b - a), 0, 1)
    return t * t * (3 - 2 * t)


def grid(h, w):
    return np.meshgrid(np.arange(h, dtype=np.float32), np.arange(w, dtype=np.float32), indexing='ij')


def rim(f):
    """Distance in centimetres from the rim of a face."""
    y, x = grid(f.ph, f.pw)
    if f.round and f.role == 'cut':
        return np.maximum(1 - np.hypot(x / f.pw * 2 - 1, y / f.ph * 2 - 1), 0) * min(f.w, f.h) / 2
    return np.minimum(np.minimum(y, f.ph - y), np.minimum(x, f.pw - x)) / f.ppc


def region(rng, h, w, ext, scale):
    """Soft patch mask that covers about the share ext."""
    if ext > .93:
        return np.ones((h, w), np.float32)
    f = fbm(rng, h, w, scale, 3)
    q = np.quantile(f[::7, ::7], 1 - ext)
    return sstep(f, q - .25, q + .25)


def dots(h, w, items, ss=2):
    """Antialiased discs; items of (x, y, r, level 0..1)."""
    im = Image.new('L', (w * ss, h * ss))
    d = ImageDraw.Draw(im)
    for x, y, r, lv in items:
        x, y, r = x * ss, y * ss, max(r * ss, .6)
        d.ellipse((x - r, y - r, x + r, y + r), fill=int(255 * lv))
    return np.asarray(im.resize((w, h), Image.BOX), np.float32) / 255


def polys(h, w, items, ss=2):
    """Antialiased polygons; items of (points [n,2] in pixels, level)."""
    im = Image.new('L', (w * ss, h * ss))
    d = ImageDraw.Draw(im)
    for pts, lv in items:
        d.polygon([(float(x) * ss, float(y) * ss) for x, y in pts], fill=int(255 * lv))
    return np.asarray(im.resize((w, h), Image.BOX), np.float32) / 255


def strokes(h, w, items, ss=2):
    """Polylines of varying width; items of (points [n,2], widths [n], level)."""
    im = Image.new('L', (w * ss, h * ss))
    d = ImageDraw.Draw(im)
    for pts, wd, lv in items:
        p = np.asarray(pts) * ss
        f = int(255 * lv)
        for i in range(len(p) - 1):
            k = max(wd[i] * ss, 1)
            d.line((p[i, 0], p[i, 1], p[i + 1, 0], p[i + 1, 1]), fill=f, width=int(round(k)))
            if k > 3:
                d.ellipse((p[i, 0] - k / 2, p[i, 1] - k / 2, p[i, 0] + k / 2, p[i, 1] + k / 2), fill=f)
    return np.asarray(im.resize((w, h), Image.BOX), np.float32) / 255


def walk(rng, p0, ang, length, step, wob, jit=1.):
    """A wandering line: points [n,2]."""
    n = max(int(length / step), 3)
    a = ang + np.cumsum(rng.normal(0, wob, n)) * .6 + rng.normal(0, wob * jit, n)
    return np.array(p0) + np.cumsum(np.stack([np.cos(a), np.sin(a)], 1) * step, 0)


def cells(rng, h, w, size, warp=.3, stretch=1.):
    """Worley field: distance to the border of the cell (pixels), cell id, number."""
    k = 2 if min(h, w) > 200 else 1
    hh, ww = (h + k - 1) // k, (w + k - 1) // k
    n = int((h / size + 2) * (w / size / stretch + 2)) + 4
    pts = rng.random((n, 2)) * [h + 2 * size, (w + 2 * size) / stretch] - size
    y, x = grid(hh, ww)
    y, x = y * k, x * k
    y = y + fbm(rng, hh, ww, size / k, 3) * size * warp
    x = (x + fbm(rng, hh, ww, size / k, 3) * size * warp) / stretch
    d, i = cKDTree(pts).query(np.stack([y.ravel(), x.ravel()], 1), k=2)
    e = resize(((d[:, 1] - d[:, 0]) * .5).reshape(hh, ww), h, w)
    ids = np.kron(i[:, 0].reshape(hh, ww), np.ones((k, k), int))[:h, :w]
    return e, ids, n


def blur(a, s):
    if s < .3:
        return a
    if a.ndim == 3:
        return np.stack([blur(a[..., i], s) for i in range(a.shape[2])], -1)
    if s > 6:
        k = int(s / 3)
        h, w = a.shape
        small = Image.fromarray(np.asarray(a, np.float32), 'F').resize((max(w // k, 2), max(h // k, 2)), Image.BOX)
        return resize(gaussian_filter(np.asarray(small), s / k, mode='nearest', truncate=3), h, w)
    return gaussian_filter(a, s, mode='nearest', truncate=3)
