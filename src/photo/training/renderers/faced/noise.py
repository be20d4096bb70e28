"""Noise, masks and painting helpers."""
import numpy as np
from PIL import Image
from scipy import ndimage as nd


def resize(a, h, w, how=Image.BICUBIC):
    return np.asarray(Image.fromarray(np.ascontiguousarray(a, np.float32)).resize((w, h), how), np.float32)


def noise(rng, h, w, cell, cellx=None):
    """Smooth noise of about unit deviation; cell: size of a blob in pixels."""
    cy, cx = max(cell, 1.0), max(cellx or cell, 1.0)
    gh, gw = int(h / cy) + 4, int(w / cx) + 4
    g = rng.standard_normal((gh, gw)).astype(np.float32)
    box = (1.0, 1.0, 1.0 + w / cx, 1.0 + h / cy)
    return np.asarray(Image.fromarray(g).resize((w, h), Image.BICUBIC, box=box), np.float32) * 1.3


def fbm(rng, h, w, cell, octaves=4, gain=0.5):
    out, amp, tot = np.zeros((h, w), np.float32), 1.0, 0.0
    for _ in range(octaves):
        out += amp * noise(rng, h, w, cell)
        tot += amp * amp
        amp *= gain
        cell /= 2
        if cell < 1.5:
            break
    return out / np.sqrt(tot)


def step(a, lo, hi):
    t = np.clip((a - lo) / (hi - lo), 0, 1)
    return t * t * (3 - 2 * t)


def mix(alb, col, a):
    """Lay a colour (or picture) over alb in place, by share a."""
    alb += (np.asarray(col, np.float32) - alb) * a[..., None]


def blur(a, s):
    return nd.gaussian_filter(a, s, truncate=2.5) if s > 0.3 else a


def softblur(a, s):
    """A wide blur made cheaply: shrink, blur, grow."""
    f = max(1, int(s / 2.5))
    h, w = a.shape
    if f == 1:
        return blur(a, s)
    small = resize(a, max(2, h // f), max(2, w // f), Image.BOX)
    return resize(blur(small, s / f), h, w, Image.BILINEAR)


def region(rng, h, w, share):
    """A soft patch that covers about this share of a face."""
    if share > 0.93:
        return np.ones((h, w), np.float32)
    y, x = np.mgrid[0:h, 0:w].astype(np.float32)
    cy, cx = rng.uniform(0.15, 0.85) * h, rng.uniform(0.15, 0.85) * w
    d = np.hypot((y - cy) / h, (x - cx) / w)
    n = fbm(rng, h, w, 0.35 * min(h, w), 4) * 0.16 - d
    thr = np.quantile(n[::7, ::7], 1 - share)
    return step(n, thr - rng.uniform(0.02, 0.12), thr + rng.uniform(0.02, 0.1))


def dots(rng, h, w, pts, soft=0.8, ragged=0.25):
    """Alpha of ragged dots; pts: rows of y, x, radius, strength."""
    a = np.zeros((h, w), np.float32)
    for y, x, r, s in pts:
        m = r * (1 + ragged) + soft + 1
        y0, y1, x0, x1 = int(max(y - m, 0)), int(min(y + m + 2, h)), int(max(x - m, 0)), int(min(x + m + 2, w))
        if y1 <= y0 or x1 <= x0:
            continue
        yy, xx = np.ogrid[y0:y1, x0:x1]
        dy, dx = yy - y, xx - x
        d = np.sqrt(dy * dy + dx * dx)
        if r > 1.5 and ragged:
            t = np.arctan2(dy, dx)
            p = rng.uniform(0, 6.3, 3)
            d = d * (1 + ragged * (0.5 * np.sin(2 * t + p[0]) + 0.35 * np.sin(3 * t + p[1]) + 0.25 * np.sin(5 * t + p[2])))
        v = np.clip((r - d) / soft + 0.5, 0, 1) * s
        np.maximum(a[y0:y1, x0:x1], v, out=a[y0:y1, x0:x1])
    return a


def scatter(rng, h, w, n, mask=None):
    """n places, more of them where the mask is high."""
    out = []
    for _ in range(n * 12):
        y, x = rng.uniform(0, h), rng.uniform(0, w)
        if mask is None or rng.random() < mask[int(y), int(x)]:
            out.append((y, x))
            if len(out) >= n:
                break
    return out


def lerp(a, b, t):
    return a + (b - a) * t


def hsv(h, s, v):
    i = int(h * 6) % 6
    f = h * 6 - int(h * 6)
    p, q, t = v * (1 - s), v * (1 - f * s), v * (1 - (1 - f) * s)
    return np.array([(v, t, p), (q, v, p), (p, v, t), (p, q, v), (t, p, v), (v, p, q)][i], np.float32)
