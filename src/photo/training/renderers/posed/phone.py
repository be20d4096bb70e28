"""The phone: exposure, depth of field, white balance, noise, sharpening, tone, and faults."""
import numpy as np
from PIL import Image, ImageFilter
from .noise import F, blur, to_srgb, smooth


def settings(rng, lit, poor=None):
  wb = np.asarray(lit['wb'], F)
  s = dict(wbk=float(rng.beta(4, 1.6)), ev=float(np.exp(.16 * rng.standard_normal())), soft=float(rng.uniform(.5, .95)),
       dof=float(rng.choice([0, .5, 1.2]) * rng.uniform(.5, 1.4)), vig=float(rng.uniform(0, .35)), noise=float(rng.choice([.004, .009, .02], p=[.45, .35, .2])),
       sharp=float(rng.uniform(.2, 1.0)), sat=float(rng.uniform(.9, 1.25)), con=float(rng.uniform(.0, .5)), q=int(rng.integers(88, 96)), wb=wb,
       tint=np.array([1 + .03 * rng.standard_normal(), 1, 1 + .04 * rng.standard_normal()], F), poor=poor, seed=int(rng.integers(1 << 30)))
  if poor == 'blur':
    s.update(soft=float(rng.uniform(14, 24)))
  elif poor == 'motion':
    s.update(move=float(rng.uniform(50, 95)), ang=float(rng.uniform(0, 3.14)))
  elif poor == 'dark':
    s.update(ev=float(rng.uniform(.012, .028)), noise=.03)
  elif poor == 'burnt':
    s.update(ev=float(rng.uniform(9, 14)))
  return s


def tone(lin, s, expo):
  """Linear to sRGB without noise."""
  gain = s['wb'].mean() / s['wb']
  x = lin * (expo * s['ev'] * (1 + (gain - 1) * s['wbk']) * s['tint']).astype(F)
  x = x / (1 + .18 * np.clip(x - .5, 0, None))              # soft shoulder
  l = x.mean(2, keepdims=True)
  x = np.clip(l + (x - l) * s['sat'], 0, None)
  y = to_srgb(x)
  return y + s['con'] * .35 * (y * y * (3 - 2 * y) - y)


def exposure(lin, bar):
  m = lin[::6, ::6].mean(2)
  b = bar[::6, ::6]
  v = .55 * np.percentile(m, 60) + .45 * (np.percentile(m[b], 60) if b.any() else np.percentile(m, 60))
  e = .40 / (v + .02)
  hi = np.percentile(m, 98)
  return float(min(e ** .85, 1.05 / (hi + 1e-3)))


def shoot(lin, z, focus, s, expo, who, out):
  r = np.random.default_rng(s['seed'])
  bar = who != -1
  x = lin
  if s['dof'] > 0 and s['poor'] is None:
    c = np.abs(z - focus) / np.maximum(z, 1e-3)
    k = np.clip(smooth(.08, .6, c) * s['dof'], 0, 1)[..., None]
    o = 1 - bar.astype(F)
    big = blur(x * o[..., None], 5) / (blur(o, 5) + .02)[..., None]
    k = k * o[..., None]
    x = x * (1 - k) + big * k
  e = np.zeros(who.shape, F)
  e[1:] = who[1:] != who[:-1]
  e[:, 1:] = np.maximum(e[:, 1:], who[:, 1:] != who[:, :-1])
  rim = np.clip(2.2 * blur(e, .8), 0, 1)[..., None]
  x = np.minimum(x, 1.6 / (expo * s['ev']))
  x = x + (blur(x, .95) - x) * rim                           # soften the stair-steps of outlines
  x = blur(x, s['soft'] * .6)
  if s.get('move'):
    n = s['move'] * x.shape[1] / 1100
    acc = np.zeros_like(x)
    for t in np.linspace(-.5, .5, 20):
      acc += np.roll(x, (int(np.sin(s['ang']) * t * n), int(np.cos(s['ang']) * t * n)), (0, 1))
    x = blur(acc / 20, 2)
  hs, ws = x.shape[:2]
  yy, xx = np.linspace(-1, 1, hs, dtype=F)[:, None], np.linspace(-1, 1, ws, dtype=F)[None]
  x = x * (1 - s['vig'] * F(.5) * (xx * xx + yy * yy))[..., None]
  y = tone(x, s, expo)
  y += r.standard_normal((hs, ws, 3), dtype=F) * F(s['noise'] * .55) * (F(1.25) - np.clip(y, 0, 1))
  im = Image.fromarray((np.clip(y, 0, 1) * 255 + F(.5)).astype(np.uint8)).resize(out, Image.BICUBIC)
  if s['poor'] is None:
    im = im.filter(ImageFilter.UnsharpMask(1.6, int(25 + 70 * s['sharp']), 0))
  n = (r.standard_normal((out[1], out[0]), dtype=F) * F(255 * s['noise'])).astype(np.int16)
  return np.clip(np.asarray(im, np.int16) + n[..., None], 0, 255).astype(np.uint8)
