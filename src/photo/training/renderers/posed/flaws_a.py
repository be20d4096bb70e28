"""Flaws of the batter and of the cut, one function each, drawn on a face.
f: Face (alb, ht in cm, gl gloss, occ, X, Y cm, ppc, role, bd, pair, dims). q: dict(s strength 0..1, e extent 0..1, v look 0..2)."""
import numpy as np
from PIL import Image, ImageDraw
from .noise import F, smooth, fbm, quant_mask, splat, blur, worley_edge, bandpass, remap, grid_noise


def region(f, rng, e, cell=2.0):
  return quant_mask(fbm(rng, f.shape, cell * f.ppc, 3), e)


def tint(f, m, col):
  f.alb += (np.asarray(col, F) - f.alb) * m[..., None]


def place(f, rng, n, e):
  """n points, gathered where a region of share e lies."""
  h, w = f.shape
  reg = region(f, rng, e)
  y, x = rng.uniform(0, h, n * 6), rng.uniform(0, w, n * 6)
  ok = reg[y.astype(int), x.astype(int)] > rng.uniform(0, 1, n * 6)
  return y[ok][:max(int(n), 1)], x[ok][:max(int(n), 1)]


def pigment(q, f):
  """A pigment colour that differs from the bar."""
  pal = np.array([[.03, .05, .3], [.45, .03, .05], [.02, .2, .08], [.02, .02, .02], [.12, .05, .02], [.5, .2, .01],
          [.2, .03, .3], [.02, .22, .3], [.55, .08, .2]], F)
  c = pal[q['seed'] % len(pal)]
  base = f.alb[::8, ::8].reshape(-1, 3).mean(0)
  if np.abs(c - base).sum() < .25:
    c = pal[(q['seed'] + 3) % len(pal)] if base.mean() > .2 else np.array([.7, .66, .6], F)
  return c


def coloured_specks(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  n = int(f.area * np.interp(s, [0, 1], [.6, 7]) * np.interp(e, [0, 1], [.35, 1]) * (2.2 if v == 2 else 1)) + 3
  ys, xs = place(f, rng, min(n, 420), max(e, .08))
  m, halo = np.zeros(f.shape, F), np.zeros(f.shape, F)
  flow = q['ang'] + .5 * rng.standard_normal(len(ys))
  for y, x, a in zip(ys, xs, flow):
    r = f.ppc * (.018 + .035 * s) * np.exp(.45 * rng.standard_normal()) * (.55 if v == 2 else 1)
    splat(m, y, x, r, 1 + .5 * rng.random(), a, .35, .75 + .25 * rng.random(), .2, rng)
    if v == 1:                                            # comets
      L = rng.uniform(3, 12)
      for t in np.linspace(.3, 1, 7):
        splat(halo, y + np.sin(a) * r * L * t, x + np.cos(a) * r * L * t, r * (1.1 - .8 * t), 2.2, a, .8, .7 * (1 - t))
    elif rng.random() < .4:
      splat(halo, y, x, r * 2.2, 1, 0, .9, .3)
  c = pigment(q, f)
  tint(f, np.clip(halo * (.4 + .4 * s), 0, 1), c * .6 + .4 * f.alb.mean((0, 1)))
  tint(f, np.clip(m * (.55 + .45 * s), 0, 1), c)


def smears(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  h, w = f.shape
  k = 2
  im = Image.new('L', (w // k + 1, h // k + 1), 0)
  dr = ImageDraw.Draw(im)
  p = f.ppc / k
  n = int(1 + e * (14 if v == 1 else 7))
  a0 = q['ang']
  cy, cx = rng.uniform(.2, .8) * h / k, rng.uniform(.2, .8) * w / k
  for _ in range(n):
    a = a0 + .18 * rng.standard_normal()
    L = p * rng.uniform(1.2, 2 + 4 * e)
    y = cy + rng.standard_normal() * (.1 + .35 * e) * h / k
    x = cx + rng.standard_normal() * (.1 + .35 * e) * w / k
    bend = rng.standard_normal() * (.25 if v != 2 else 1.6)
    wd = p * (.04 + .12 * s) * np.exp(.4 * rng.standard_normal()) * (.45 if v == 1 else 1.2)
    pts = []
    for t in np.linspace(0, 1, 22):
      aa = a + bend * t * t
      x += np.cos(aa) * L / 22
      y += np.sin(aa) * L / 22
      pts.append((x, y, wd * (.25 + np.sin(np.pi * min(t * 1.15, 1)) ** .7)))
    for (xa, ya, wa), (xb, yb, _) in zip(pts, pts[1:]):
      dr.line((xa, ya, xb, yb), fill=255, width=max(1, int(wa)))
  m = np.asarray(im.resize((w, h), Image.BILINEAR), F) / 255
  d = .12 * f.ppc
  m = remap(m, grid_noise(rng, f.shape, .5 * f.ppc) * d, grid_noise(rng, f.shape, .5 * f.ppc) * d)
  br = fbm(rng, f.shape, .07 * f.ppc + 2, 3, stretch=5)      # bristle grain
  m = blur(m, f.ppc * (.015 if v == 1 else .035)) * np.clip(.75 + .3 * br, .1, 1)
  tint(f, np.clip(m * (.3 + .65 * s), 0, .97), pigment(q, f))


def white_specks(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  n = int(f.area * (1 + 7 * s) * (.3 + .7 * e) * (1, .35, 2.0)[v]) + 4
  ys, xs = place(f, rng, min(n, 450), max(e, .08))
  m = np.zeros(f.shape, F)
  for y, x in zip(ys, xs):
    r = f.ppc * (.02, .06, .014)[v] * (.7 + .7 * s) * np.exp(.45 * rng.standard_normal())
    splat(m, y, x, r, 1 + .6 * rng.random(), rng.uniform(0, 3), (.4, .6, .3)[v], .7 + .3 * rng.random(), .22, rng)
  if v == 1:
    m *= np.clip(.85 + .2 * fbm(rng, f.shape, .05 * f.ppc + 2, 2), .4, 1)
    ring = np.clip(blur(m, .05 * f.ppc) - m, 0, 1)
    f.alb *= 1 - .25 * s * ring[..., None]
  base = f.alb.mean()
  tint(f, np.clip(m * (.45 + .55 * s), 0, 1), np.array([.9, .89, .86], F) if base < .62 else np.array([.98, .98, .97], F))
  f.ht += m * .006 * (1 if v != 2 else -.6)
  f.gl *= 1 - .6 * m


def translucent_veins(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  cell = (.8, 1.5, .9)[v] * f.ppc * q['scale']
  st = (1, 1, 3.0)[v]
  n = fbm(rng, f.shape, cell, 3, .45, st)
  d = .35 * cell
  n = remap(n, grid_noise(rng, f.shape, cell * .8) * d, grid_noise(rng, f.shape, cell * .8) * d)
  gy, gx = np.gradient(n)
  g = blur(np.sqrt(gx * gx + gy * gy), 2) + .15 / cell
  wid = f.ppc * (.025, .07, .035)[v] * (.7 + .6 * s)
  wid = wid * np.clip(1 + .5 * grid_noise(rng, f.shape, cell), .35, 2.2)
  m = smooth(1.25, .55, np.abs(n) / g / wid)
  n2 = fbm(rng, f.shape, cell * .8, 2)
  gy, gx = np.gradient(n2)
  m = np.maximum(m, .8 * smooth(1.3, .5, np.abs(n2 - .3) / (np.sqrt(gx * gx + gy * gy) + .2 / cell) / wid * 1.3))
  m *= region(f, rng, .15 + .85 * e)
  m = np.clip(m * (.25 + .75 * s), 0, 1)[..., None]
  base = np.clip(f.alb, .01, 1)
  f.alb[:] = base * (1 - m) + m * base ** 1.35 * .74
  f.ht -= m[..., 0] * .004
  f.gl += .25 * m[..., 0]


def crackle_network(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  cell = f.ppc * (.22, .4, .3)[v] * q['scale']
  ed, val = worley_edge(rng, f.shape, cell, (1, 1, .5)[v], .95)
  m = smooth(f.ppc * (.016 + .03 * s) * (1 + .8 * v / 2), f.ppc * .004, ed - f.ppc * .006 * fbm(rng, f.shape, .4 * f.ppc, 2))
  reg = region(f, rng, .15 + .85 * e, 1.6)
  isl = smooth(0, .16 * f.ppc, ed) * reg
  w = f.white * reg
  a = f.alb
  a += (np.clip(a * 1.12 + .07, 0, .92) - a) * (isl * w * (.25 + .35 * s) * (.7 + .5 * val))[..., None]
  mm = (m * w * (.3 + .65 * s))[..., None]
  a[:] = a * (1 - mm) + mm * np.clip(a, .01, 1) ** 1.5 * .55
  f.ht -= mm[..., 0] * .005


def dark_centre_ring(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  W, H, _ = f.dims
  r0 = np.interp(e, [0, 1], [.2, .42])
  if f.role != 'cut':
    return
  ox, oy = q['ox'] * W, q['oy'] * H
  p = (2.0, 3.5, 2.4)[v]
  wob = .05 + .06 * (v == 2)
  x, y = (f.X - ox) / (W * r0 * (1.05 if v != 2 else .8)), (f.Y - oy) / (H * r0 * 1.1)
  r = (np.abs(x) ** p + np.abs(y) ** p) ** (1 / p) + wob * fbm(rng, f.shape, 2.0 * f.ppc, 2)
  core = smooth(1.03, .93, r) * (.85 + .15 * smooth(.2, 1, r))
  lin = np.exp(-((r - 1) / (.018 + .03 * (v == 1))) ** 2)
  halo = np.exp(-((r - 1.07) / .05) ** 2)
  a = np.clip(f.alb, .01, 1)
  k = (core * (.2 + .65 * s) * (1 if v != 1 else .55))[..., None]
  a = a * (1 - k) + k * a ** 1.3 * np.array([.78, .73, .64], F)
  a *= 1 - (lin * (.1 + .4 * s))[..., None] * np.array([.7, .85, 1], F)
  a += (halo * .06 * s)[..., None]
  f.alb[:] = a
  f.gl += .15 * core * s


def pinholes(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  n = int(f.area * (1.2 + 6 * s) * (.3 + .7 * e) * (1, 2.2, .3)[v]) + 4
  ys, xs = place(f, rng, min(n, 420), max(e, .07))
  m = np.zeros(f.shape, F)
  for y, x in zip(ys, xs):
    r = f.ppc * (.022, .013, .06)[v] * (.75 + .6 * s) * np.exp(.4 * rng.standard_normal())
    splat(m, y, x, r, 1 + (.9 * rng.random() ** 2), q['ang'] + .4 * rng.standard_normal(), .25, 1, .15, rng)
  f.ht -= m * .05 * (.6 + .6 * s)
  f.alb *= 1 - (m * (.35 + .4 * s))[..., None] * np.array([.9, 1, 1.05], F)
  f.occ *= 1 - .45 * m
  f.gl *= 1 - .8 * m


def drag_lines(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  if f.role != 'cut':
    return
  h, w = f.shape
  a = q['dir']
  X, Y = f.X - f.X.mean(), f.Y - f.Y.mean()
  d = X * -np.sin(a) + Y * np.cos(a)
  t = X * np.cos(a) + Y * np.sin(a)
  if v == 1:
    d = d + q['bow'] * t * t                                # a wire that bowed
  L = 2048
  prof = np.zeros(L, F)
  n = (30, 60, 9)[v]
  for _ in range(int(n * (.4 + e))):
    c, wd = rng.uniform(0, L), rng.uniform(2.0, 7) * (1, .7, 2.2)[v]
    i = np.arange(max(int(c - 30), 0), min(int(c + 30), L))
    prof[i] += rng.choice([-1, 1], p=[.7, .3]) * rng.uniform(.3, 1) * np.exp(-((i - c) / wd) ** 2)
  pos = np.clip((d / 14 + .5) * L, 0, L - 1.01)
  i0 = pos.astype(int)
  p = prof[i0] + (prof[np.minimum(i0 + 1, L - 1)] - prof[i0]) * (pos - i0)
  start = grid_noise(rng, f.shape, 1.2 * f.ppc) * .4
  p = p * smooth(-.6, .1, start + .9 * e) * region(f, rng, .25 + .75 * e, 3)
  p = p * (.85 + .15 * fbm(rng, f.shape, .15 * f.ppc, 2))
  f.ht += p * .022 * (.35 + .9 * s)
  f.alb *= np.clip(1 + p * (.08 + .24 * s), .5, 1.25)[..., None]
  f.gl *= np.clip(1 - .3 * np.abs(p), .3, 1)


def colour_bled(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  lo, hi = f.pair
  one = q['side']
  src, d = (hi, -f.bd) if one else (lo, f.bd)
  L = (.12 + .55 * s) * (1, 1.5, .8)[v]
  n = fbm(rng, f.shape, (.5, 1.2, .25)[v] * f.ppc, 3)
  L = L * np.clip(1 + (.6, .45, .9)[v] * n, .1, 2.4)
  m = np.exp(-np.clip(d, 0, None) / L) * (d > -.02)
  if v == 1:
    m = smooth(1.3, .1, d / (L * 1.4)) * .7 * (d > -.02)
  m *= region(f, rng, .2 + .8 * e, 2.2) * (.4 + .5 * s)
  m = np.clip(m, 0, .95)
  dye = np.clip(src, .01, 1) ** .8
  tint(f, m, dye)
