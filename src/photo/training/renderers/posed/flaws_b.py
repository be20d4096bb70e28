"""Flaws of the surface, of heat, of age and of the mould; same interface as flaws_a."""
import numpy as np
from PIL import Image, ImageDraw
from .noise import F, smooth, fbm, quant_mask, splat, blur, bandpass, remap, grid_noise, worley_edge
from .flaws_a import region, tint, place
from . import flaws_a as A


def powdery_film(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  if q['toponly'] and f.role != 'top':
    return
  cl = fbm(rng, f.shape, (1.4, 2.6, .7)[v] * f.ppc, 5, .62)
  if v == 1:                                               # from the edges and corners inwards
    cl = cl + 1.5 * (1 - smooth(0, 1.6, f.edge))
  m = quant_mask(cl, .1 + .88 * e, .8 if v != 2 else .4)
  gr = fbm(rng, f.shape, .05 * f.ppc + 2, 2)
  m = m * np.clip(.82 + .16 * gr + .12 * fbm(rng, f.shape, .3 * f.ppc, 3), .15, 1)
  if v == 2:                                               # crystals like frost
    m *= .55 + .45 * np.clip(bandpass(rng, f.shape, .1 * f.ppc + 3, 1.2, 1.6), 0, 1)
  m = np.clip(m * (.18 + .72 * s), 0, .95)
  tint(f, m, [.86, .86, .85])
  f.gl *= 1 - .9 * m
  f.ht += m * .0035 * gr


def orange_spots(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  n = int((2 + f.area * (.05 + .5 * e)) * (1, .4, 2.2)[v]) + 1
  ys, xs = place(f, rng, min(n, 160), max(e, .15))
  core, halo = np.zeros(f.shape, F), np.zeros(f.shape, F)
  for y, x in zip(ys, xs):
    r = f.ppc * (.07, .16, .035)[v] * (.7 + .7 * s) * np.exp(.45 * rng.standard_normal())
    an = rng.uniform(0, 3)
    splat(halo, y, x, r * rng.uniform(1.7, 2.6), 1 + .4 * rng.random(), an, .75, .8, .22, rng)
    splat(core, y, x, r, 1 + .5 * rng.random(), an, .6, .7 + .3 * rng.random(), .25, rng)
  halo = blur(halo, .03 * f.ppc)
  k = .3 + .7 * s
  base = np.clip(f.alb, .01, 1)
  f.alb[:] = base * (1 - (halo * .6 * k)[..., None] * np.array([.1, .38, .85], F))
  tint(f, core * .85 * k * (.85 + .15 * fbm(rng, f.shape, .06 * f.ppc + 2, 2)), np.array([.42, .15, .025], F) * (.8 + .5 * q['side']))
  f.gl += .3 * core * (v == 1)


def polyline(f, pts, widths, k=2):
  h, w = f.shape
  im = Image.new('L', (w * k // 2 + 1, h * k // 2 + 1), 0)
  dr = ImageDraw.Draw(im)
  for (xa, ya), (xb, yb), wd in zip(pts, pts[1:], widths):
    wd = max(wd, .8)
    dr.line((xa, ya, xb, yb), fill=255, width=int(np.ceil(wd)))
    dr.ellipse((xb - wd / 2, yb - wd / 2, xb + wd / 2, yb + wd / 2), fill=255)
  return np.asarray(im.resize((w, h), Image.BILINEAR), F) / 255


def wander(rng, x, y, a, L, n, turn):
  pts, drift = [(x, y)], 0.0
  for _ in range(n):
    drift = .75 * drift + turn * rng.standard_normal()
    x += np.cos(a + drift) * L / n
    y += np.sin(a + drift) * L / n
    pts.append((x, y))
  return pts


def carve(f, m, depth, lip, s):
  soft = blur(m, .012 * f.ppc + .4)
  wide = blur(m, .09 * f.ppc)
  f.ht += wide * lip - soft * depth
  f.alb *= 1 - np.clip(soft * (.45 + .4 * s), 0, .9)[..., None] * np.array([.93, 1, 1.04], F)
  f.occ *= 1 - .7 * soft
  f.gl *= 1 - .8 * soft


def crack(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  h, w = f.shape
  wd = f.ppc * (.018 + .15 * s * s) * (1, 1, .5)[v]
  m = np.zeros(f.shape, F)
  if f.role == 'top' or (f.role != 'cut' and v == 2):
    along = f.axis_z == 0                               # the loaf's length runs along the face's x
    L = (.3 + .75 * e) * (w if along else h)
    cx, cy = w * (.5 + .12 * q['ox']), h * (.5 + .12 * q['oy'])
    a = 0.0 if along else np.pi / 2
    if v == 2:
      a += q['ox'] * 2
    n = 40
    st = (cx - np.cos(a) * L / 2, cy - np.sin(a) * L / 2)
    pts = wander(rng, st[0], st[1], a, L, n, .32)
    ws = wd * np.sin(np.linspace(.05, 1, n) * np.pi * .97) * (1 + .5 * rng.random(n))
    m = polyline(f, pts, ws)
    for _ in range((1, 2, 7)[v]):
      i = rng.integers(5, n - 3)
      b = wander(rng, *pts[i], a + rng.choice([-1, 1]) * rng.uniform(.4, 1.1), L * rng.uniform(.1, .3), 14, .35)
      m = np.maximum(m, polyline(f, b, ws[i] * .5 * np.linspace(1, .2, 14)))
    carve(f, m, .12 * (.4 + s), .05 * s, s)
  elif f.role == 'cut':
    top = 0
    x = w * (.5 + .5 * q['ox'])
    L = h * (.12 + .8 * e)
    if v == 2:                                            # a hair crack that wanders over the face
      pts = wander(rng, x, h * .1, np.pi / 2 + q['oy'], L, 40, .4)
      ws = wd * np.linspace(1, .3, 40)
    else:
      pts = wander(rng, x, top - 2, np.pi / 2 + .3 * q['oy'], L, 40, .3)
      ws = wd * 1.5 * np.linspace(1, .05, 40) ** .8
    m = polyline(f, pts, ws)
    if s > .4:
      i = int(rng.integers(8, 30))
      b = wander(rng, *pts[i], np.pi / 2 + rng.choice([-1, 1]) * .8, L * .25, 12, .4)
      m = np.maximum(m, polyline(f, b, ws[i] * .6 * np.linspace(1, .2, 12)))
    carve(f, m, .1 * (.4 + s), .02 * s, s)


def brown_outside_in(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  W, H, T = f.dims
  if f.role == 'cut':
    dx = W / 2 - np.abs(f.X)
    dy = H / 2 - np.abs(f.Y)
    d = np.minimum(dx, dy)
    r = 1.2
    d = np.where((dx < r) & (dy < r), r - np.sqrt(np.clip(r - dx, 0, None) ** 2 + np.clip(r - dy, 0, None) ** 2), d)
    dep = min(W, H) / 2 * (.1 + .72 * e)
    d = d + .12 * dep * fbm(rng, f.shape, 1.6 * f.ppc, 3)
    m = (smooth(dep * 1.12, dep * .8, d), smooth(dep * 1.7, 0, d), smooth(dep * 1.12, dep * .85, d) * (.65 + .35 * smooth(0, dep, d)))[v]
  else:
    m = np.clip(.95 + .06 * fbm(rng, f.shape, 1.5 * f.ppc, 3), 0, 1)
  m = np.clip(m * (.22 + .75 * s), 0, .96)[..., None]
  br = np.array([(.2, .085, .03), (.3, .15, .06), (.12, .05, .022)][q['seed'] % 3], F)
  a = f.alb
  a[:] = a * (1 - m) + m * (br * (.35 + 1.1 * a.mean(2, keepdims=True)))


def layer_gap(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  if f.role == 'top':
    return
  n = grid_noise(rng, f.shape, 1.5 * f.ppc, 3)
  wd = (.012 + .075 * s) * np.clip(1 + .55 * n, 0.1, 2.2) * (1, .6, 1.5)[v]
  along = f.u01 if q['side'] else 1 - f.u01
  part = smooth(.05 + .95 * e + .06, .05 + .95 * e - .1, along)
  if v == 1:
    part = part * quant_mask(n, .6, .2)
  d = np.abs(f.bd + .015 * fbm(rng, f.shape, .3 * f.ppc, 3))
  m = smooth(1.2, .75, d / (wd * np.clip(part, .02, 1) + 1e-4)) * (part > .05)
  f.ht -= m * .09
  f.alb *= 1 - (m * (.55 + .4 * s))[..., None] * np.array([.95, 1, 1.03], F)
  f.occ *= 1 - .8 * m
  f.occ *= 1 - .25 * blur(m, .05 * f.ppc)
  if v == 2:                                                # the upper layer has lifted a little
    f.ht += .03 * s * smooth(.25, 0, f.bd) * (f.bd > 0) * part


def wrinkled_top(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  if f.role != 'top':
    return
  wv = f.ppc * (.55, .38, .85)[v] * q['scale']
  b = bandpass(rng, f.shape, wv, (1.6, 2.2, 1.0)[v], (1, 1, 3)[v])
  d = .3 * wv
  b = remap(b, grid_noise(rng, f.shape, wv * 2) * d, grid_noise(rng, f.shape, wv * 2) * d)
  b = np.where(b > 0, b * .8, b) if v != 1 else 1 - 2 * np.abs(b) ** .6
  reg = region(f, rng, .2 + .8 * e, 3)
  amp = (.015 + .075 * s) * reg * q['scale'] * (1, .8, 1.2)[v]
  f.ht += b * amp
  gro = smooth(.2, -.9, b) * reg
  f.alb *= 1 - (gro * (.06 + .3 * s))[..., None] * np.array([.75, .9, 1.1], F)
  f.occ *= 1 - .4 * gro * s
  f.gl += reg * .18 * s


def mould_dimples(f, q, rng):
  s, e, v = q['s'], q['e'], q['v']
  if f.role != 'mould':
    return
  if v == 0:                                                # round dents
    ys, xs = place(f, rng, int(5 + f.area * (.15 + 1.3 * e)), max(e, .15))
    m = np.zeros(f.shape, F)
    for y, x in zip(ys, xs):
      r = f.ppc * .11 * q['scale'] * np.exp(.4 * rng.standard_normal())
      splat(m, y, x, r, 1 + .4 * rng.random(), rng.uniform(0, 3), .75, rng.uniform(.5, 1), .2, rng)
    f.ht -= blur(m, .02 * f.ppc) * (.014 + .045 * s)
    f.occ *= 1 - .22 * s * m
  elif v == 1:                                              # creases of a paper or plastic liner
    g = np.zeros(f.shape, F)
    h, w = f.shape
    for _ in range(int(2 + 9 * e)):
      a = q['ang'] + .5 * rng.standard_normal()
      L = f.ppc * rng.uniform(1.5, 5)
      p = wander(rng, rng.uniform(0, w), rng.uniform(0, h), a, L, 20, .12)
      g = np.maximum(g, polyline(f, p, f.ppc * (.025 + .03 * s) * np.sin(np.linspace(.1, 1, 20) * 3)) * rng.uniform(.4, 1))
    g = blur(g, .018 * f.ppc)
    f.ht -= g * (.012 + .04 * s)
    f.ht += blur(g, .1 * f.ppc) * .025 * s
    f.occ *= 1 - .3 * s * g
  else:                                                     # orange peel
    b = bandpass(rng, f.shape, f.ppc * .26 * q['scale'], 1.0)
    reg = region(f, rng, .2 + .8 * e, 2.5)
    f.ht += np.minimum(b, .3) * (.004 + .018 * s) * reg
    f.occ *= 1 - .12 * s * smooth(0, -1, b) * reg


NAMES = ['coloured-specks', 'smears', 'white-specks', 'translucent-veins', 'crackle-network', 'powdery-film',
     'dark-centre-ring', 'orange-spots', 'pinholes', 'crack', 'brown-outside-in', 'colour-bled', 'drag-lines',
     'layer-gap', 'wrinkled-top', 'mould-dimples']
DRAW = {n: getattr(A, n.replace('-', '_'), None) or globals()[n.replace('-', '_')] for n in NAMES}


def ask(rng, name, close=False):
  """How strong, how large, which look."""
  return dict(name=name, s=float(rng.beta(1.1, 1.0) * .85 + .15), e=float(rng.beta(.8, .8)), v=int(rng.integers(3)),
        seed=int(rng.integers(1 << 20)), ang=float(rng.uniform(0, 3.14)), scale=float(np.exp(.3 * rng.standard_normal())),
        ox=float(rng.uniform(-.12, .12) if name == 'dark-centre-ring' else rng.uniform(-.7, .7)),
        oy=float(rng.uniform(-.08, .12) if name == 'dark-centre-ring' else rng.uniform(-.7, .7)),
        side=int(rng.integers(2)), dir=float(rng.choice([0, 1.571]) + .05 * rng.standard_normal()),
        bow=float(rng.uniform(-.06, .06)), toponly=bool(rng.random() < .25))
