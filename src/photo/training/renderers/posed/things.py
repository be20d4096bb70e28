"""Pictures without soap: things on a table, fruit, cups, boxes, animals, kitchens."""
import numpy as np
from .noise import F, rng_of, fbm, smooth, blur, grid_noise, worley_edge, resize
from . import bars as B
from . import ground
from . import phone
from . import poses
from . import render


class Ball:
  """A ball or, squashed, an ellipsoid."""
  def __init__(self, c, r, col, kind='fruit', hair=0.0):
    self.c, self.rad, self.col, self.kind, self.hair = np.array(c, F), np.array(r, F) * np.ones(3, F), np.array(col, F), kind, hair

  def hit(self, o, d):
    a, b = (o - self.c) / self.rad, d / self.rad
    A, Bq, C = (b * b).sum(1), (a * b).sum(1), (a * a).sum() - 1
    D = Bq * Bq - A * C
    i = np.nonzero(D > 0)[0]
    t = (-Bq[i] - np.sqrt(D[i])) / A[i]
    p = a + b[i] * t[:, None]
    n = p / self.rad
    return i, t, p, n / np.linalg.norm(n, axis=1, keepdims=True)

  def shadow(self, P, L):
    a, b = (P - self.c) / self.rad, L / self.rad
    q = (a * b).sum(1)
    return ((q * q - (b * b).sum() * ((a * a).sum(1) - 1) > 0) & (q < 0)).astype(F)


def box_tex(rng, what, shape, ppc):
  """Skins of boxes that look a little like soap."""
  h, w = shape
  if what == 'cheese':
    a = np.array([.8, .55, .16], F) * (1 + .03 * fbm(rng, shape, ppc, 4))[..., None]
    m = smooth(1.1, 1.3, grid_noise(rng, shape, ppc * 1.3))
    return a * (1 - .5 * m)[..., None]
  if what == 'book':
    a = np.broadcast_to(ground.hx(rng, '#7a2f2f', '#2f4a6d', '#3d5b45', '#c9a94d'), (h, w, 3)).copy()
    a[: h // 12] = a[-h // 12:] = [.75, .72, .65]
    return a * (1 + .05 * fbm(rng, shape, 3, 2))[..., None]
  if what == 'wood':
    return ground.make(rng, 'wood', max(h, w), 20)[:h, :w]
  if what == 'sponge':
    a = np.broadcast_to(ground.hx(rng, '#e8cf4a', '#f0b65a', '#8fc27a'), (h, w, 3)).copy()
    return a * (1 - .55 * smooth(.6, 1.3, grid_noise(rng, shape, .12 * ppc + 3)))[..., None] * (1 + .05 * fbm(rng, shape, 4, 2))[..., None]
  if what == 'bread':
    a = np.array([.72, .52, .3], F) * (1 + .08 * fbm(rng, shape, ppc * .5, 5, .7))[..., None]
    yy, xx = np.mgrid[-1:1:h * 1j, -1:1:w * 1j]
    a *= (1 - .6 * smooth(.88, .97, np.maximum(abs(xx), abs(yy))))[..., None]
    return a * (1 - .3 * smooth(.9, 1.4, grid_noise(rng, shape, .18 * ppc + 3)))[..., None]
  if what == 'butter':
    return np.array([.86, .74, .42], F) * (1 + .015 * fbm(rng, shape, ppc, 4))[..., None] * np.ones((h, w, 1), F)
  if what == 'chocolate':
    a = np.array([.1, .045, .02], F) * (1 + .08 * fbm(rng, shape, ppc, 4))[..., None]
    yy, xx = np.mgrid[0:h, 0:w] / ppc
    g = np.minimum(abs(xx / 2 - np.round(xx / 2)), abs(yy / 2 - np.round(yy / 2)))
    return a * (1 - .5 * smooth(.07, .03, g) + .5 * smooth(.05, .08, g) * smooth(.12, .09, g))[..., None]
  a = np.broadcast_to(np.array([.012, .013, .016], F), (h, w, 3)).copy()      # a phone lying there
  return a


WHATS = [('cheese', 'fruit'), ('sponge',), ('cat',), ('book', 'cup'), ('bread', 'cup'), ('dog',), ('wood', 'wood'), ('kitchen', 'cup', 'fruit'),
     ('fruit',), ('chocolate', 'cup'), ('butter', 'fruit'), ('kitchen', 'cat')]
FUR = ['#3a3532', '#b98a57', '#e8e2d8', '#8c8681', '#d8a866', '#4c3524']


def animal(rng, what):
  col = ground.hx(rng, *FUR)
  s, dx = (1.0, rng.uniform(-2, 2))
  e = lambda c, r, cc=col, k='fur': Ball(np.array(c) * s + [dx, 0, 0], np.array(r) * s, cc, k, .35)
  belly = col * .5 + .35
  ob = [e((2, 6, -4), (8.5, 6, 6)), e((-6, 10, 2), (4.2, 3.9, 3.9)), e((-6.3, 8.8, 5.2), (2.0, 1.5, 1.7), belly), e((-4, 3, 3), (1.5, 3.4, 1.6)), e((-7.5, 3, 3), (1.5, 3.4, 1.6)),
     e((-4, .9, 4.2), (1.5, .9, 2.0), belly), e((-7.5, .9, 4.2), (1.5, .9, 2.0), belly), e((11, 3, -3), (4.5, 1.3, 1.6))]
  if what == 'cat':
    ob += [e((-8.2, 13.6, 1.4), (1.1, 2.0, .8)), e((-3.8, 13.6, 1.4), (1.1, 2.0, .8))]
  else:
    ob += [e((-10, 9.2, 1.6), (1.1, 3, 1.5), col * .6), e((-2.1, 9.2, 1.6), (1.1, 3, 1.5), col * .6)]
  ob += [e((-7.6, 10.6, 5.2), (.62, .62, .5), (.015, .013, .01), 'eye'), e((-4.6, 10.6, 5.2), (.62, .62, .5), (.015, .013, .01), 'eye'), e((-6.3, 9.4, 6.7), (.6, .42, .4), (.03, .015, .015), 'eye')]
  return ob


def draw(seed, i, what, size):
  rng = rng_of(seed, i, 'things')
  parts = WHATS[what]
  big = 'cat' in parts or 'dog' in parts
  _, cam = poses.build(rng, 'flat', 'loafbar', 1, size)
  el = np.radians(rng.uniform(14, 30) if big or 'kitchen' in parts else rng.uniform(30, 65))
  cam['tgt'] = np.array([0, 6 if big else 2.5, 0], F)
  D = (40 if big else 27) * cam['foc'] / 1000 * rng.uniform(.9, 1.2)
  cam['pos'] = (cam['tgt'] + D * np.array([0, np.sin(el), np.cos(el)])).astype(F)
  fw = (cam['tgt'] - cam['pos']) / D
  rt = np.array([1, 0, 0], F)
  cam.update(fw=fw.astype(F), rt=rt, up=np.cross(rt, fw).astype(F), dist=D)
  objs, boxes = [], []
  for k in parts:
    x, zz = rng.uniform(-6, 6), rng.uniform(-5, 3)
    if k == 'fruit':
      col = ground.hx(rng, '#c8462f', '#d98a2b', '#e6c53c', '#7d9c3a', '#8e3d52')
      for _ in range(rng.integers(2, 6)):
        r = rng.uniform(2.4, 3.8)
        objs.append(Ball((rng.uniform(-10, 10), r * .93, rng.uniform(-7, 5)), (r, r * .94, r), col * rng.uniform(.8, 1.2)))
    elif k == 'cup':
      col = ground.hx(rng, '#e9e6df', '#7f98a0', '#5a6d5a', '#caa58a')
      objs += [Ball((x + 5, 3.4, zz - 4), (4, 4.6, 4), col, 'cup')]
    elif k in ('cat', 'dog'):
      objs += animal(rng, k)
    elif k != 'kitchen':
      dims = {'book': (14, 20, 2.2), 'wood': (9, 6, 3), 'sponge': (11, 7, 3)}.get(k, (9.5, 7, 3.4))
      R = poses.yaw(rng.uniform(-.7, .7)) @ poses.FLAT
      b = B.Bar(dims, R, (x * .5 + 9 * len(boxes) - 3, dims[2] / 2, zz * .5), {'book': .05, 'sponge': .3, 'butter': .15}.get(k, .12), 'x', 1, 0)
      b.skin = k
      boxes.append(b)
  lit = render.light(rng)
  sc = render.Scene(rng, [], cam, lit, 'tiles' if 'kitchen' in parts and rng.random() < .5 else str(rng.choice(ground.KINDS)), seed)
  h, w = cam['h'], cam['w']
  o, hits = cam['pos'], []
  for b in boxes + objs:
    j, t, p, n = b.hit(o, sc.d)
    ok = (t < sc.z[j]) & (t > 0)
    j, t, p, n = j[ok], t[ok], p[ok], n[ok]
    sc.z[j], sc.who[j] = t, len(hits)
    hits.append((b, j, p, n))
  k = 4
  P = (o + sc.d * np.minimum(sc.z, 1e4)[:, None]).reshape(h, w, 3)[::k, ::k].reshape(-1, 3)
  who = sc.who.reshape(h, w)[::k, ::k].ravel()
  S = np.zeros(len(P), F)
  for _ in range(6):
    v = lit['L'] + lit['spread'] * rng.standard_normal(3)
    s = np.zeros(len(P), F)
    for q, (b, *_) in enumerate(hits):
      s = np.maximum(s, b.shadow(P, v.astype(F)) * (who != q))
    S += s / 6
  sz = (-(-h // k), -(-w // k))
  sc.sh = np.clip(1 - resize(blur(S.reshape(sz), 1), (sz[0] * k, sz[1] * k))[:h, :w].ravel(), 0, 1)
  img = sc.render([], None, [], dict(ggloss=.1)).reshape(-1, 3)
  if 'kitchen' in parts:                                    # cupboards behind, out of focus
    xx = np.arange(w) / w * rng.uniform(3, 5)
    bands = resize((np.abs((xx % 1) - .5) < .47).astype(F)[None].repeat(8, 0), (h, w)).ravel()
    hh = (np.arange(h)[:, None] / h * np.ones(w)).ravel()
    c = ground.hx(rng, '#e6e2d8', '#6f8791', '#8f9c84', '#b78a5e')
    m = np.nonzero((sc.who < 0) & sc.wall)[0]
    img[m] = (c * (.45 + .55 * bands[m])[:, None] * (.7 + .4 * smooth(.0, .5, hh[m]))[:, None]) * (lit['amb'] + .4 * lit['key'])
  grain = [fbm(rng, (h, w), c, 3, .7, st).ravel() for c, st in ((5, 4), (60, 1), (4, 1))]
  for q, (b, j, p, n) in enumerate(hits):
    keep = sc.who[j] == q
    j, p, n = j[keep], p[keep], n[keep]
    if isinstance(b, B.Bar):
      tex = box_tex(rng, b.skin, (500, 700), 700 / b.dims[0])
      tx = B.sample(np.ascontiguousarray(tex, dtype=F), (p[:, 0] / b.h[0] * .5 + .5) * 699, (.5 - p[:, 1] / b.h[1] * .5) * 499)
      tx *= np.where(np.abs(p[:, 2]) < b.h[2] - b.r, .85, 1)[:, None]
      gl = .9 if b.skin in ('phone', 'book', 'chocolate') else .2
      img[j] = sc.shade(tx, n @ b.R.T, j, gl=gl)
    else:
      if b.kind == 'fur':
        n = n + .28 * np.stack([grain[0][j], grain[1][j] * .3, grain[2][j] * .5], 1)
        n /= np.linalg.norm(n, axis=1, keepdims=True)
        col = b.col * np.clip(1 + .25 * grain[0][j] + .1 * grain[1][j], .3, 1.8)[:, None]
      elif b.kind == 'fruit':
        col = b.col * (1 + .1 * grain[1][j] + .04 * grain[2][j])[:, None]
        stem = smooth(.3, .0, np.hypot(p[:, 0], p[:, 2])) * (p[:, 1] > 0)
        col = col * (1 - .7 * stem)[:, None]
      elif b.kind == 'cup':
        col = np.where((p[:, 1] > .62)[:, None], np.array([.06, .03, .015], F), b.col)
        flat = p[:, 1] > .62
        n = np.where(flat[:, None], np.array([0, 1, 0], F), n)
      else:
        col = np.broadcast_to(b.col, p.shape)
      img[j] = sc.shade(col.astype(F), n.astype(F), j, gl={'fur': .05, 'eye': 2, 'cup': .9}.get(b.kind, .6))
  s = phone.settings(rng, lit)
  img = img.reshape(h, w, 3).astype(F)
  bar = sc.who.reshape(h, w) >= 0
  return phone.shoot(img, sc.z.reshape(h, w), D, s, phone.exposure(img, bar), sc.who.reshape(h, w), cam['out']), s['q']
