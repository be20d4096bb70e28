"""Tables, cloths and walls: square textures in linear light, ppc px to the cm."""
import numpy as np
from .noise import F, fbm, grid_noise, smooth, blur, to_lin, worley_edge, remap

KINDS = ['wood', 'planks', 'marble', 'linen', 'gingham', 'paper', 'concrete', 'slate', 'tiles', 'kraft', 'towel', 'bamboo', 'rack', 'felt', 'stone']


def hx(rng, *cols):
  s = str(rng.choice(cols))
  return to_lin(np.array([int(s[i:i + 2], 16) for i in (1, 3, 5)]) / 255) * rng.uniform(.85, 1.12)


def make(rng, kind, size=480, ppc=20.0):
  n = (size, size)
  yy, xx = np.mgrid[0:size, 0:size].astype(F) / ppc
  col = lambda c: np.broadcast_to(np.asarray(c, F), n + (3,)).copy()
  if kind in ('wood', 'planks', 'bamboo'):
    c = hx(rng, '#b98d5e', '#8a5f3b', '#d8b98c', '#5b3d28', '#c9a77c', '#9a8672', '#e4d2b4')
    ring = fbm(rng, n, 60, 4, .5, 9)
    fine = fbm(rng, n, 5, 3, .7, 30)
    band = np.sin(xx * .1 + 7 * ring + yy * rng.uniform(1, 3))
    v = 1 + .12 * band + .1 * fine + .08 * ring
    pw = rng.uniform(7, 13) if kind == 'planks' else rng.uniform(.5, 1.2) if kind == 'bamboo' else 99
    k = np.floor(yy / pw)
    v *= 1 + .12 * np.sin(k * 12.9898 + 3) * (kind != 'wood')
    gap = np.abs(yy / pw - np.round(yy / pw)) * pw
    v *= 1 - .65 * smooth(.1, .02, gap) * (kind != 'wood')
    a = col(c) * np.clip(v, .15, 1.6)[..., None]
    a[..., 2] *= np.clip(1 - .08 * band, .7, 1.2)
  elif kind == 'marble':
    a = col(hx(rng, '#eceae6', '#e3e1dd', '#f3f1ee', '#3a3b3d'))
    f = fbm(rng, n, 160, 5, .55)
    m = np.exp(-(np.abs(f) / .07)) * .5 + .12 * smooth(-.5, 1.5, fbm(rng, n, 200, 3))
    a += (np.array([.35, .35, .37], F) - a) * (m * .7)[..., None]
  elif kind in ('linen', 'gingham', 'towel', 'felt'):
    c = hx(rng, '#e8dfce', '#cfc3ae', '#8e9aa3', '#b7a998', '#f0ece3', '#5d6a70', '#c89f95', '#7a8b78', '#39414f')
    p = 1.4 if kind == 'linen' else 1
    t = 9.0
    wv = np.sin(xx * 6.28 * t / 4 + fbm(rng, n, 40, 2)) * .5 + np.sin(yy * 6.28 * t / 4 + fbm(rng, n, 40, 2)) * .5
    wv = wv * (.09 if kind != 'felt' else .02) + .06 * fbm(rng, n, 3, 1, .5, 12) + .06 * fbm(rng, n, 3, 1, .5, 1)
    if kind == 'towel':
      wv = .22 * fbm(rng, n, 6, 2, .8)
    fold = fbm(rng, n, 250, 3, .45)
    gy, gx = np.gradient(blur(fold, 6))
    v = 1 + wv * p + np.clip(14 * (gx + gy), -.35, .3) * rng.uniform(.2, 1)
    a = col(c)
    if kind == 'gingham':
      q = rng.uniform(.9, 2)
      s = ((np.floor(xx / q) % 2) + (np.floor(yy / q) % 2)) / 2
      c2 = hx(rng, '#b0403f', '#3d5a86', '#4d7a52', '#6b6660')
      a = hx(rng, '#f0ece4') + (c2 - hx(rng, '#f0ece4')) * (s * .85)[..., None]
    a = a * np.clip(v, .3, 1.5)[..., None]
  elif kind in ('paper', 'kraft'):
    a = col(hx(rng, '#f6f4f0', '#eae7e1', '#dfe3e6', '#f3e9e2', '#d9e2da', '#efe4ec') if kind == 'paper' else hx(rng, '#b58d62', '#c29b70'))
    a *= (1 + (.012 if kind == 'paper' else .05) * fbm(rng, n, 6, 3, .7))[..., None]
    if rng.random() < .4:                                 # creased baking paper
      e, _ = worley_edge(rng, n, 170)
      a *= (1 - .1 * smooth(4, 0, e) + .03 * fbm(rng, n, 100, 2))[..., None]
  elif kind in ('concrete', 'stone', 'slate'):
    a = col(hx(rng, '#a9a7a2', '#8d8b87', '#c7c4bd') if kind == 'concrete' else hx(rng, '#33373b', '#2a2c2f', '#41464a') if kind == 'slate' else hx(rng, '#b8ab97', '#8f8577', '#56524d'))
    v = 1 + .12 * fbm(rng, n, 120, 6, .65) + .05 * fbm(rng, n, 3, 1)
    if kind == 'stone':
      v *= 1 - .3 * smooth(.7, 1.6, fbm(rng, n, 9, 2)) + .2 * smooth(.9, 1.8, fbm(rng, n, 8, 2))
    if kind == 'slate':
      v += .12 * fbm(rng, n, 14, 3, .6, 6)
    a *= np.clip(v, .3, 1.7)[..., None]
  elif kind == 'tiles':
    q = rng.uniform(4, 11)
    gap = np.minimum(np.abs(xx / q - np.round(xx / q)), np.abs(yy / q - np.round(yy / q))) * q
    k = np.sin(np.round(xx / q - .5) * 91.7 + np.round(yy / q - .5) * 37.3)
    a = col(hx(rng, '#e9e6df', '#c8d3d6', '#b98a6c', '#dcd2c0', '#7f98a0')) * (1 + .05 * k + .03 * fbm(rng, n, 80, 4))[..., None]
    a += (np.array([.4, .38, .36], F) - a) * smooth(.2, .12, gap)[..., None]
  else:                                                     # a wire rack over a tray
    a = col(hx(rng, '#d9d4ca', '#6e6a66', '#c9b596')) * (1 + .05 * fbm(rng, n, 90, 4))[..., None]
    q = rng.uniform(1.2, 2)
    d = np.abs(xx / q - np.round(xx / q)) * q
    dy = np.abs(yy / 7 - np.round(yy / 7)) * 7
    a *= (1 - .45 * smooth(.3, .05, np.abs(d - .3)))[..., None]
    for e in (d, dy):
      a += (np.array([.5, .5, .52], F) * np.clip(1.2 - e[..., None] / .12, .1, 1.4) - a) * smooth(.15, .11, e)[..., None]
  if rng.random() < .4:                                     # crumbs
    m = smooth(2.6, 2.9, grid_noise(rng, n, 4))
    a += (np.array([.6, .55, .45], F) - a) * (m * .8)[..., None]
  return np.clip(a, .004, .95).astype(F)
