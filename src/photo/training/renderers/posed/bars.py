"""Bars as rounded boxes: where a pixel's ray meets them, and the textures of their faces."""
import numpy as np
from .noise import F, norm3, unit, slab, rng_of, fbm, blur, smooth, grid_noise, resize
from . import design
from . import flaws_b
from . import decoys

ORDER = ['colour-bled', 'smears', 'brown-outside-in', 'translucent-veins', 'crackle-network', 'dark-centre-ring',
     'coloured-specks', 'white-specks', 'orange-spots', 'pinholes', 'drag-lines', 'crack', 'layer-gap',
     'wrinkled-top', 'mould-dimples', 'powdery-film']


class Bar:
  """dims W,H,T along local x (width), y (up in the mould), z (along the loaf); R local->world; c centre."""
  def __init__(self, dims, R, c, r, kind, seed, key):
    self.h = np.array(dims, F) / 2
    self.dims, self.R, self.c, self.r, self.kind = dims, R.astype(F), np.array(c, F), float(r), kind
    self.seed, self.key = seed, key
    self.uneven = 0.0

  def role(self, ax, sg):
    if self.kind == 'cavity':
      return 'top' if (ax, sg) == (2, -1) else 'mould'
    if self.kind == 'slab':
      return 'top' if (ax, sg) == (2, 1) else 'mould' if ax == 2 else 'cut'
    if ax == 2:
      return 'cut'
    return 'top' if (ax, sg) == (1, 1) else 'mould'

  def sdf(self, p):
    q = np.abs(p) - (self.h - self.r)
    top = np.maximum(np.maximum(q[..., 0], q[..., 1]), q[..., 2])
    return norm3(np.maximum(q, 0)) + np.minimum(top, 0) - self.r

  def hit(self, o, d):
    """Ray origin o [3], dirs d [n,3] in the world. Returns index of hits, t, local point, normal."""
    lo = ((o - self.c) @ self.R).astype(F)
    ld = d @ self.R
    ld = np.where(np.abs(ld) < 1e-6, 1e-6, ld)
    t0, t1 = slab(lo, ld, self.h)
    i = np.nonzero((t1 > t0) & (t0 > 0))[0]
    t0, ld, t1 = t0[i], ld[i], t1[i]
    p = lo + ld * t0[:, None]
    e = self.h - np.abs(p)
    e = np.maximum(np.minimum(e[:, 0], e[:, 1]), np.minimum(np.maximum(e[:, 0], e[:, 1]), e[:, 2]))
    near = np.nonzero(e < self.r)[0]
    for _ in range(9):
      s = self.sdf(p[near])
      t0[near] += s
      p[near] = lo + ld[near] * t0[near, None]
    ok = np.ones(len(i), bool)
    ok[near] = self.sdf(p[near]) < .012
    p, t0, i = p[ok], t0[ok], i[ok]
    q = np.sign(p) * np.maximum(np.abs(p) - (self.h - self.r), 0)
    n = unit(q)
    return i, t0.astype(F), p.astype(F), n.astype(F)

  def shadow(self, P, L):
    """True where the way from P towards L is blocked."""
    lo = (P - self.c) @ self.R
    ld = L @ self.R
    ld = np.where(np.abs(ld) < 1e-5, 1e-5, ld)
    k = .94
    t0, t1 = slab(lo, ld, self.h * k)
    return (t1 > np.maximum(t0, .02)).astype(F)


UV = {0: (2, 1), 1: (0, 2), 2: (0, 1)}                        # face axis -> its u and v axes in the bar


class Face:
  pass


def face_uv(bar, ax, p):
  u, v = UV[ax]
  return p[:, u], p[:, v]


def make_face(bar, des, ax, sg, ppc, flaws, decs, shared, light):
  """Texture of one face: [h,w,8] albedo, slopes, occlusion, gloss, small shadows."""
  ua, va = UV[ax]
  wu, wv = bar.h[ua] * 2, bar.h[va] * 2
  f = Face()
  w, h = max(int(wu * ppc), 16), max(int(wv * ppc), 16)
  f.shape, f.ppc, f.role, f.axis_z, f.dims = (h, w), ppc, bar.role(ax, sg), (0 if ua == 2 else 1 if va == 2 else 2), bar.dims
  f.area, f.big = float(wu * wv), wu * wv > .8 * max(bar.h[0] * bar.h[1], bar.h[0] * bar.h[2]) * 4
  k = max(1, int(ppc / 7))
  hs, ws = h // k + 3, w // k + 3
  us, vs = np.linspace(-wu / 2, wu / 2, ws), np.linspace(wv / 2, -wv / 2, hs)
  P = np.zeros((hs, ws, 3), F)
  P[..., ua], P[..., va], P[..., ax] = us[None], vs[:, None], sg * bar.h[ax]
  P[..., 2] += bar.key * 2.3                                # each bar is a slice further along
  key = (bar.seed, bar.key, ax, sg + 1)
  f.U, f.V = [np.broadcast_to(x, (h, w)).astype(F) for x in (np.linspace(-wu / 2, wu / 2, w)[None], np.linspace(wv / 2, -wv / 2, h)[:, None])]
  f.X, f.Y = (f.U, f.V) if ax == 2 else (f.V * 0 + sg * bar.h[0], f.V) if ax == 0 else (f.U, f.V)
  f.u01 = f.U / wu + .5
  f.edge = np.minimum(wu / 2 - np.abs(f.U), wv / 2 - np.abs(f.V))
  if key not in shared['cache']:
    shared['cache'][key] = design.paint(des, P, f.shape, ppc, key)
  alb, s, f.bd, f.pair = shared['cache'][key]
  f.alb = alb.copy()
  l = f.alb.mean(2)
  f.white = smooth(.3, .6, l) if l.max() > .45 else np.ones_like(l)
  rng = rng_of(*key, 'surface')
  f.occ = np.ones(f.shape, F)
  f.gl = np.full(f.shape, shared['gloss'] * (1.0 if f.role != 'cut' else .85), F) * np.clip(1 + .15 * fbm(rng, f.shape, ppc, 3), .3, 2)
  rough = shared['rough']
  f.ht = fbm(rng, f.shape, 1.6 * ppc, 3) * .006 + fbm(rng, f.shape, .12 * ppc + 2, 2) * .0007 * rough
  if f.role == 'top' and bar.kind != 'cavity':
    f.ht += fbm(rng, f.shape, 1.4 * ppc, 2) * .03 * shared['topwave']
    f.gl += .1
  if f.role == 'cut' and shared['plane']:                   # faint traces of any blade, no flaw
    f.ht += grid_noise(rng, f.shape, .05 * ppc + 2, 60) * .00035
  nick = smooth(1.5, 2.3, fbm(rng, f.shape, .5 * ppc, 3) + .9 * np.exp(-f.edge / .06) * shared['worn']) * np.exp(-f.edge / .1)
  f.ht -= nick * .03                                        # handled edges, no flaw
  f.alb += (np.clip(f.alb * 1.12, 0, .93) - f.alb) * (nick * .7)[..., None]
  scr = smooth(2.3, 2.8, grid_noise(rng, f.shape, .03 * ppc + 1.6, 30))
  f.ht -= scr * .0012 * shared['worn']
  late = ('dew', 'band', 'petals', 'buds')
  for d in decs:
    if d not in late:
      decoys.apply(f, d, rng_of(*key, d), shared['dec'])
  have = {q['name']: q for q in flaws}
  for n in ORDER:
    if n in have:
      flaws_b.DRAW[n](f, have[n], rng_of(*key, n, have[n]['seed']))
  for d in decs:
    if d in late:
      decoys.apply(f, d, rng_of(*key, d), shared['dec'])
  f.alb *= 1 + .07 * np.exp(-f.edge / .12)[..., None]        # thin edges let light through
  # slopes and small shadows; image rows run against v
  gy, gx = np.gradient(f.ht)
  gx, gy = gx * ppc, -gy * ppc
  f.occ *= np.clip(1 - 3.0 * np.clip(blur(f.ht, .1 * ppc) - f.ht, 0, .2), .3, 1)
  Ll = light @ bar.R
  lu, lv, ln = Ll[ua], Ll[va], Ll[ax] * sg
  ks = np.ones(f.shape, F)
  if ln > .02 and f.ht.max() - f.ht.min() > .03:
    t = float(np.hypot(lu, lv)) + 1e-6
    for dd in (.02, .05, .1, .18):
      dx, dy = int(round(lu / t * dd * ppc)), int(round(-lv / t * dd * ppc))
      sh = np.roll(f.ht, (-dy, -dx), (0, 1))
      ks = np.minimum(ks, 1 - np.clip((sh - f.ht - dd * ln / t) / .02, 0, 1) * .75)
    ks = blur(ks, .8)
  return np.dstack([f.alb, gx, gy, f.occ, f.gl, ks]).astype(F)


def sample(tex, x, y):
  """Bilinear look-up, x y in px."""
  h, w, c = tex.shape
  x, y = np.clip(x, 0, w - 1.001), np.clip(y, 0, h - 1.001)
  x0, y0 = x.astype(np.int32), y.astype(np.int32)
  fx, fy = (x - x0)[:, None].astype(F), (y - y0)[:, None].astype(F)
  t = tex.reshape(-1, c)
  i = y0 * w + x0
  a = t[i]
  a += (t[i + 1] - a) * fx
  b = t[i + w]
  b += (t[i + w + 1] - b) * fx
  a += (b - a) * fy
  return a
