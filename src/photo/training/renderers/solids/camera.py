"""What an old phone makes of the light: blur, bloom, colour, noise, sharpening."""
import io

import numpy as np
from PIL import Image

from .render import soften


def small_blur(im, s):
    """A wide blur, done on a quarter of the size."""
    k = max(1, int(s / 3))
    h, w = im.shape[:2]
    sm = im[:h // k * k, :w // k * k].reshape(h // k, k, w // k, k, -1).mean((1, 3))
    sm = soften(sm, s / k)
    return np.asarray([np.asarray(Image.fromarray(sm[..., c]).resize((w, h), Image.BILINEAR)) for c in range(3)]).transpose(1, 2, 0)


def make_camera(r, poor=None):
    warm = r.normal() * 0.10
    cam = dict(blur=r.uniform(0.3, 0.9), bloom=r.uniform(0.02, 0.12), vig=r.uniform(0.05, 0.4), warm=warm, tint=r.normal() * 0.03,
               expo=r.uniform(0.85, 1.25), contrast=r.uniform(0.0, 0.5), sat=r.uniform(0.78, 1.1), noise=r.uniform(0.004, 0.022) * (1 + (r.random() < .25)),
               chroma=r.uniform(0.3, 1.3), sharp=r.uniform(0, 1.1), dof=max(0, r.uniform(-0.8, 1.0)), motion=0, seed=int(r.integers(1 << 30)),
               haze=r.uniform(0, 0.06), recomp=int(r.integers(45, 80)) if r.random() < 0.3 else 0)
    if poor == "blur":
        cam.update(blur=r.uniform(13, 24))
    elif poor == "shake":
        cam.update(motion=int(r.integers(90, 170)), blur=r.uniform(4, 7), angle=r.uniform(0, 3.14))
    elif poor == "dark":
        cam.update(expo=r.uniform(0.012, 0.035), noise=r.uniform(0.02, 0.04), chroma=1.1, contrast=0.2, blur=r.uniform(1.5, 3))
    elif poor == "bright":
        cam.update(expo=r.uniform(9, 16), bloom=0.5, blur=r.uniform(3, 5))
    return cam


def level(lin):
    """Exposure as a phone would meter it: on the whole and a bit on the middle."""
    h, w = lin.shape[:2]
    y = lin.mean(-1)
    m = 0.5 * np.mean(y) + 0.5 * np.mean(y[h // 4:-h // 4, w // 4:-w // 4])
    bright = np.percentile(y[::4, ::4], 97)
    return min(0.36 / max(m, 1e-4), 0.95 / max(bright, 1e-4) * 1.05)


def develop(lin, depth, focus, cam, gain, scale=1.0):
    """The noise-free photo, sRGB 0..1. scale: size relative to the full photo."""
    im = lin * np.float32(gain * cam["expo"])
    im = im * np.array([1 + cam["warm"], 1 + cam["tint"], 1 - cam["warm"]], np.float32)
    h, w = im.shape[:2]
    if cam["dof"] > 0.2:
        coc = np.clip(np.abs(depth - focus) / focus - 0.18, 0, 1.2) * cam["dof"] * 9 * scale
        far = small_blur(np.minimum(im, 4), 6 * scale)
        k = np.clip(soften(coc, 4 * scale) / (5 * scale), 0, 1)[..., None]
        im = im * (1 - k) + far * k
    im = soften(im, cam["blur"] * scale) if cam["blur"] < 4 else small_blur(im, cam["blur"] * scale)
    if cam["motion"]:
        n, a, acc = 24, cam["angle"], 0
        for t in np.linspace(-.5, .5, n):
            d = t * cam["motion"] * scale
            acc = acc + np.roll(im, (int(d * np.sin(a)), int(d * np.cos(a) + 9 * scale * np.sin(5 * t))), (0, 1))
        im = acc / n
    glow = small_blur(np.clip(im - 0.55, 0, 3), 22 * scale)
    im = im + cam["bloom"] * 1.5 * glow + cam["haze"] * im.mean()
    y, x = np.mgrid[-1:1:h * 1j, -1:1:w * 1j].astype(np.float32)
    im = im * (1 - cam["vig"] * (0.5 * (x * x + y * y)) ** 1.3)[..., None]
    im = np.where(im < 0.7, im, 0.7 + 0.3 * (1 - np.exp(-(im - 0.7) / 0.3)))  # shoulder
    im = np.clip(im, 0, 1).astype(np.float32) ** np.float32(1 / 2.2)
    im = im + cam["contrast"] * 0.6 * (im * im * (3 - 2 * im) - im)
    g = im.mean(-1, keepdims=True)
    return np.clip(g + (im - g) * cam["sat"], 0, 1).astype(np.float32)


def enlarge(im, w, h):
    """A phone's digital zoom: the small sensor picture brought to full size."""
    return np.stack([np.asarray(Image.fromarray(im[..., c]).resize((w, h), Image.BICUBIC)) for c in range(3)], -1)


def sensor(im, cam):
    r = np.random.default_rng(cam["seed"])
    h, w = im.shape[:2]
    n = r.standard_normal((h, w, 1), np.float32) * cam["noise"]
    c = r.standard_normal((h // 3 + 1, w // 3 + 1, 3), np.float32) * cam["noise"] * cam["chroma"]
    c = np.repeat(np.repeat(c, 3, 0), 3, 1)[:h, :w]
    dark = 1.35 - 0.8 * im.mean(-1, keepdims=True)
    im = soften(im + (n * 1.4 + c) * dark, 0.45)
    if cam["sharp"] > 0.05:
        im = im + cam["sharp"] * (im - soften(im, 1.3))
    im8 = Image.fromarray((np.clip(im, 0, 1) * 255 + 0.5).astype(np.uint8))
    if cam["recomp"]:
        b = io.BytesIO()
        im8.save(b, "JPEG", quality=cam["recomp"])
        im8 = Image.open(io.BytesIO(b.getvalue())).convert("RGB")
    return im8
