"""What the phone does: focus, exposure, white balance, tone, noise, sharpening."""
import numpy as np
from PIL import Image
from .core import gauss


def blur(a, s):
    return gauss(a, s) if s > 0.15 else a


def focus(lin, dep, f, strength):
    """Blur that grows with the distance from the focal plane."""
    if strength < 0.02: return lin
    s = max(lin.shape[:2]) / 1100
    coc = np.clip(np.abs(1 / np.maximum(dep, 1) - 1 / f) * f * strength * 14 - 0.3, 0, 9)
    coc = gauss(coc, 2 * s)
    out, levels, prev = lin.copy(), [1.2, 3, 8], 0
    for l in levels:
        w = np.clip((coc - prev) / (l - prev), 0, 1)[..., None]; out = out * (1 - w) + blur(lin, l * s) * w; prev = l
    return out


def develop(lin, c):
    """Exposure, white balance, vignette, tone: linear to 0..1 sRGB."""
    h, w = lin.shape[:2]
    y, x = np.mgrid[0:h, 0:w]; r2 = (((x - w / 2) / w) ** 2 + ((y - h / 2) / h) ** 2) * 2
    a = lin * (c["gain"] * np.asarray(c["wb"]))[None, None] * (1 - c["vig"] * r2)[..., None]
    a = np.maximum(a, 0); a = np.where(a > .7, .7 + .3 * np.tanh((a - .7) / .55), a)
    m = a.mean(2, keepdims=True); a = np.clip(m + (a - m) * c["sat"], 0, 1)
    a = np.where(a < .0031308, a * 12.92, 1.055 * a ** (1 / 2.4) - .055)
    return np.clip(a + c["con"] * (a - .5) * a * (1 - a) * 2 + c["haze"] * (1 - a), 0, 1)


def enlarge(a, w, h):
    return np.dstack([np.asarray(Image.fromarray(np.ascontiguousarray(a[..., i], np.float32)).resize((w, h), Image.BICUBIC)) for i in range(3)])


def sensor(a, c, r):
    h, w = a.shape[:2]
    a = blur(a, c["blur"])
    if c["move"] > 0:
        n = max(2, int(c["move"])); acc = 0
        for t in np.linspace(-.5, .5, n): acc = acc + np.roll(a, (int(t * c["move"] * c["mdir"][0]), int(t * c["move"] * c["mdir"][1])), (0, 1))
        a = acc / n
    k = c["noise"]
    if k > 0:
        n = r.standard_normal((h, w, 1), np.float32); n2 = gauss(np.repeat(np.repeat(r.standard_normal((h // 3 + 1, w // 3 + 1, 3), np.float32), 3, 0), 3, 1)[:h, :w], 1.2)
        n = n * .7 + gauss(n, .8) * .9
        a = a + k * (n * .7 + n2 * .8) * (1.2 - .8 * a)
    if c["sharp"] > 0: a = a + c["sharp"] * (a - blur(a, 1.1))
    return np.clip(a, 0, 1)


def settings(r, lin, ids, tgt=None):
    l = lin.mean(2); m = np.percentile(l, 60) * .5 + (l[ids > 0].mean() if (ids > 0).any() else l.mean()) * .5
    t = tgt or r.uniform(.22, .46)
    wb = np.array([1 + r.normal(0, .05), 1, 1 + r.normal(0, .07)])
    gain = t / max(m, 1e-4); hi = np.percentile(lin.max(2), 97) * gain
    if hi > 1.25: gain *= 1.25 / hi
    return dict(gain=gain, wb=wb, vig=r.uniform(0, .45), sat=r.uniform(.7, 1.0), con=r.uniform(0, .9), haze=r.choice([0, 0, .03]),
                blur=r.choice([0, .3, .5, .9]), move=0, mdir=(1, 0), noise=r.choice([.004, .008, .014, .024], p=[.3, .35, .25, .1]), sharp=r.uniform(.4, 1.3))
