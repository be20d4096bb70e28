"""What the soap is meant to look like: its batter colours and how they were poured.
A design is a dict; paint(face) gives albedo and the fields that flaws need."""
import numpy as np
from scipy import ndimage as ndi
from .noise import F, rng_of, smooth, resize, fbm, to_lin, grid_noise

BASES = ['#f1e6cf', '#efe9da', '#e9dcc0', '#f4efe3', '#e3d3ac', '#dccfae', '#ead9c4', '#f0e2c0', '#d9cba0', '#ece4d6']
PIGS = ['#d9a5a0', '#c7837c', '#b26a5a', '#8aa37b', '#6f8b5e', '#4f6f52', '#3d4a4e', '#2d2c2e', '#54504e', '#8f86ad',
    '#6d5e96', '#3f5578', '#4c7c99', '#86b3bf', '#57a4a0', '#e0b04e', '#d88a3a', '#c9a66b', '#7a5236', '#4b3023',
    '#9d6b48', '#d77f94', '#bf4f6a', '#e5b7c3', '#c9d3a8', '#b9c7d6', '#a8453a', '#e8cf7a', '#b6a58c', '#9aa7a0']
KINDS = ['plain', 'layers', 'ombre', 'pot', 'hanger', 'drop', 'stripes', 'marble']


def hexlin(s):
  return to_lin(np.array([int(s[i:i + 2], 16) for i in (1, 3, 5)]) / 255.0)


def lum(c):
  return c @ np.array([.2126, .7152, .0722], F)


def make(rng, kind=None, dims=(8, 6, 2.5), light=False):
  """kind None: any; light: the main colour must be pale."""
  if kind is None:
    kind = rng.choice(KINDS, p=[.38, .12, .06, .18, .07, .03, .06, .1])
  d = dict(kind=str(kind), dims=dims)
  base = hexlin(str(rng.choice(BASES)))
  pig = [hexlin(str(c)) for c in rng.choice(PIGS, 4, replace=False)]
  jit = lambda c: np.clip(c * rng.uniform(.9, 1.08) * rng.uniform(.95, 1.05, 3), .012, .88).astype(F)
  if kind in ('plain',):
    c0 = base if light or rng.random() < .55 else pig[0] * .6 + base * .4 if rng.random() < .6 else pig[0]
    cols = [c0]
  elif kind == 'ombre':
    cols = [base, base * .55 + pig[0] * .45, pig[0]]
    if rng.random() < .5:
      cols = cols[::-1]
  else:
    n = int(rng.choice([2, 2, 3, 3, 4]))
    cols = [base if rng.random() < .75 or light else pig[3]] + pig[:n - 1]
    if n >= 3 and rng.random() < .5:
      cols[2] = hexlin('#f6f2ea')
    if kind != 'layers' or rng.random() < .5:
      order = rng.permutation(len(cols))
      cols = [cols[i] for i in order] if not light else cols
  for i in range(1, len(cols)):                      # neighbours must be told apart
    if kind != 'ombre' and abs(lum(cols[i]) - lum(cols[i - 1])) < .09:
      cols[i] = cols[i] * (.5 if lum(cols[i - 1]) > .25 else 2.0)
  d['cols'] = [jit(c) for c in cols]
  d['lat'] = rng.standard_normal((5, 20, 20, 20)).astype(F)
  d['off'] = rng.uniform(0, 20, (5, 3)).astype(F)
  d['freq'] = rng.uniform(.18, .45)
  d['warp'] = rng.uniform(.4, 1.4)
  d['wav'] = rng.choice([.04, .1, .25]) * rng.uniform(.5, 1.5)
  d['zs'] = rng.uniform(.12, .4)
  d['soft'] = rng.uniform(.006, .05)
  n = len(cols)
  cuts = np.cumsum(rng.uniform(.6, 1.5, n))
  d['cuts'] = (cuts[:-1] / cuts[-1]).astype(F)
  d['ph'] = rng.uniform(0, 6.28, 4)
  d['long'] = np.array([(1, 2.1, 1), (2.0, 1, 1), (1, 1, 1)][rng.integers(3)], F)
  d['turns'] = float(rng.uniform(1.6, 3.2))
  d['mott'] = rng.choice([.015, .03, .06, .1], p=[.35, .35, .2, .1])
  d['cell'] = rng.uniform(.8, 2.2)
  d['drops'] = np.stack([rng.uniform(-.5, .5, 14), rng.uniform(-.5, .5, 14), rng.uniform(.3, 1.2, 14), rng.uniform(-1.5, 1.5, 14)], 1)
  return d


def solid(d, i, P, freq):
  """Smooth solid noise at points P (cm)."""
  c = (P * freq + d['off'][i]).reshape(-1, 3).T
  return ndi.map_coordinates(d['lat'][i], c, order=3, mode='grid-wrap', prefilter=False).reshape(P.shape[:-1]).astype(F) * 2.2


def paint(d, P, shape, ppc, key):
  """P: coarse grid [h,w,3] of the face's points (cm, in the bar). Returns albedo, s field, border distance."""
  W, H, T = d['dims']
  up = lambda a: resize(a, shape)
  Q = P.copy()
  Q[..., 2] *= d['zs']
  n0, n1 = solid(d, 0, Q, d['freq']), solid(d, 1, Q, d['freq'])
  n2 = solid(d, 2, Q, d['freq'] * 2.6)
  k = d['kind']
  x, y = P[..., 0] / W, P[..., 1] / H
  if k in ('layers', 'ombre', 'plain'):
    s = .5 + y + d['wav'] * (.35 * n0 + .12 * n2) + .04 * d['wav'] * n1
  elif k == 'pot':
    Q2 = (Q + 1.3 * d['warp'] * np.stack([n0, n1, 0 * n0], -1)) * d['long']
    s = .5 + .45 * np.sin(d['turns'] * (solid(d, 3, Q2, d['freq'] * 1.1) + .2 * n2 + y) + d['ph'][1])
  elif k == 'marble':
    Q2 = Q + .7 * d['warp'] * np.stack([n0, n1, 0 * n0], -1)
    s = .5 + .3 * np.sin(5 * (x * np.cos(d['ph'][0]) + y * np.sin(d['ph'][0])) + 1.3 * solid(d, 3, Q2, .6) + .6 * n2)
  elif k == 'hanger':
    r = np.sqrt((x * 1.2) ** 2 + (y + .15) ** 2)
    s = .5 + .42 * np.sin(11 * r + 2.2 * n0 + .6 * n2 + 2.4 * np.arctan2(y + .15, x * 1.2))
  elif k == 'drop':
    s = np.full(x.shape, .08, F)
    for i, (dx, dy, r, z) in enumerate(d['drops']):
      q = np.sqrt((P[..., 0] - dx * W + .3 * n0) ** 2 + ((P[..., 1] - dy * H + .3 * n1) * (1.7 if i % 3 else .8)) ** 2)
      s = np.maximum(s, (1.0 - q / (1.5 * r)) * (.7 + .3 * (i % 2)) * (1 - .1 * abs(z)))
  else:
    a = d['ph'][0] * .25
    s = .5 + .45 * np.sin(6.28 * (x * np.cos(a) * 3.2 + y * np.sin(a) * 2) + .9 * n0 + .35 * n2 + 1.2 * d['warp'] * n1 * .6)
  two = None
  if k in ('pot', 'marble', 'stripes') and len(d['cols']) > 2:          # later colours have their own course
    Q3 = Q + d['warp'] * np.stack([n1, n0, 0 * n0], -1)
    two = up(.5 + .3 * np.sin(d['turns'] * .8 * (solid(d, 4, (Q3 + 7) * d['long'], d['freq']) + .25 * n2)))
  s = up(s)
  rng = rng_of(*key, 'grain')
  ragged = fbm(rng, shape, max(.22 * ppc, 2), 3) * .008
  sr = s + ragged
  gy, gx = np.gradient(s[::4, ::4])
  g = resize(np.sqrt(gx * gx + gy * gy) / 4 * ppc, shape) + 1e-3          # per cm
  g = np.maximum(g, .06)
  cols = d['cols']
  alb = np.broadcast_to(cols[0], shape + (3,)).astype(F).copy()
  soft = d['soft'] if k != 'ombre' else .3
  vary = np.clip(1 + .8 * up(n1), .3, 3)
  for ci, (c, t) in enumerate(zip(cols[1:], d['cuts'])):
    if two is not None and ci > 0:
      alb += (c - alb) * smooth(-1, 1, (two + ragged - .55 - .13 * (ci - 1)) / (.03 * vary))[..., None]
      continue
    w = smooth(-1, 1, (sr - t) / (g * soft * vary) if k != 'ombre' else (s - t) / soft)
    alb += (c - alb) * w[..., None]
  if len(d['cuts']):
    i = 0 if two is not None else len(d['cuts']) // 2
    bd = (sr - d['cuts'][i]) / g
  else:
    i, bd = 0, np.full(shape, 9, F)
  m = d['mott'] * fbm(rng, shape, d['cell'] * ppc, 4, .6) + .012 * fbm(rng, shape, .06 * ppc + 1.5, 2)
  alb *= np.clip(1 + m, .5, 1.5)[..., None]
  alb *= 1 + .02 * fbm(rng, shape, 2.5 * ppc, 2)[..., None] * np.array([1, 0, -1], F)
  lo = cols[i]
  hi = cols[min(i + 1, len(cols) - 1)]
  return alb, s, bd.astype(F), (lo, hi)
