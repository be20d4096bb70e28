"""One scene: light, ground, bars, hand; shaded with or without given flaws."""
import numpy as np
from .noise import F, norm3, unit, rng_of, blur, resize, smooth, grid_noise, fbm
from . import bars as B
from . import ground
from . import hand as HAND

SKY = {2700: (1.0, .62, .3), 3200: (1.0, .7, .42), 4000: (1.0, .83, .64), 5000: (1.0, .93, .85), 5600: (1, .98, .95), 6500: (.93, .97, 1.06)}


def light(rng):
  el, az = np.radians(rng.uniform(22, 72)), rng.uniform(0, 6.28)
  if rng.random() < .7:                                     # mostly from the side or behind
    az = rng.choice([rng.uniform(-2.9, -.6), rng.uniform(.6, 2.9)])
  L = np.array([np.sin(az) * np.cos(el), np.sin(el), np.cos(az) * np.cos(el)], F)
  k = int(rng.choice(list(SKY), p=[.12, .1, .12, .16, .28, .22]))
  hard = rng.random()
  lamp = np.array(SKY[k], F)
  return dict(L=L, key=lamp * rng.uniform(.65, 1.25), amb=(.5 * lamp + .5) * rng.uniform(.25, .65), spread=.04 if hard < .3 else rng.uniform(.12, .5),
        spec=rng.uniform(.3, 1.0), tempk=k, glare=False, blinds=None, wb=lamp)


class Scene:
  def __init__(self, rng, bars, cam, lit, gkind, seed, hand=False):
    self.bars, self.cam, self.lit, self.seed = bars, cam, lit, seed
    h, w = cam['h'], cam['w']
    yy, xx = np.mgrid[0:h, 0:w].astype(F)
    for key in ('fw', 'rt', 'up'):
      cam[key] = cam[key].astype(F)
    for key in ('foc', 'dist', 'cx', 'cy'):
      cam[key] = float(cam[key])
    d = cam['fw'] + ((xx - cam['cx']) / cam['foc'])[..., None] * cam['rt'] - ((yy - cam['cy']) / cam['foc'])[..., None] * cam['up']
    d = unit(d.astype(F))
    self.d = d.reshape(-1, 3)
    o = cam['pos']
    n = h * w
    self.z = np.full(n, 1e9, F)
    self.who = np.full(n, -1, np.int16)
    self.hits = []
    self.base = None
    for k, b in enumerate(bars):
      i = self.near(b)
      j, t, p, nn = b.hit(o, self.d[i])
      i = i[j]
      ok = t < self.z[i]
      i, t, p, nn = i[ok], t[ok], p[ok], nn[ok]
      self.z[i], self.who[i] = t, k
      self.hits.append((i, p, nn))
    self.hits = [tuple(a[self.who[i] == k] for a in (i, p, nn)) for k, (i, p, nn) in enumerate(self.hits)]
    self.skin = None
    self.ground(rng, gkind)
    if hand:
      self.hold(rng)
    self.bar = (self.who >= 0).reshape(h, w)
    self.shadows(rng)

  def near(self, b):
    """Pixels that the bar's corners enclose."""
    c, h, w = self.cam, self.cam['h'], self.cam['w']
    s = np.array([[x, y, z] for x in (-1, 1) for y in (-1, 1) for z in (-1, 1)], F) * b.h @ b.R.T + b.c - c['pos']
    z = np.maximum(s @ c['fw'], .5)
    x, y = c['cx'] + c['foc'] * (s @ c['rt']) / z, c['cy'] - c['foc'] * (s @ c['up']) / z
    x0, x1, y0, y1 = int(max(x.min() - 2, 0)), int(min(x.max() + 2, w)), int(max(y.min() - 2, 0)), int(min(y.max() + 2, h))
    if x1 <= x0 or y1 <= y0:
      return np.zeros(0, int)
    return (np.arange(y0, y1)[:, None] * w + np.arange(x0, x1)[None]).ravel()

  def ground(self, rng, kind):
    o, h, w = self.cam['pos'], self.cam['h'], self.cam['w']
    dy = np.minimum(self.d[:, 1], -1e-4)
    t = -o[1] / dy
    P = o + self.d * t[:, None]
    far = self.cam['dist'] * 2.2 + 30
    wall = (self.d[:, 1] > -1e-3) | (t > far)
    size = 480
    ppc = float(np.clip(self.cam['foc'] / self.cam['dist'], 12, 45))
    tex = ground.make(rng, kind, size, ppc)
    a = rng.uniform(0, 6.28)
    ca, sa = float(np.cos(a)), float(np.sin(a))
    u = (P[:, 0] * ca + P[:, 2] * sa) * ppc + rng.uniform(0, 500) + size / 2
    v = (-P[:, 0] * sa + P[:, 2] * ca) * ppc + size / 2
    tri = lambda q: np.abs((np.nan_to_num(q, posinf=0, neginf=0) % (2 * size - 2)) - (size - 1))
    self.need = np.nonzero(self.who < 0)[0]
    g = np.zeros((h * w, 3), F)
    g[self.need] = B.sample(tex, tri(u[self.need]), tri(v[self.need]))
    if wall.any():
      wc = ground.hx(rng, '#d8d4cc', '#a9b0b0', '#c9b9a2', '#5d5f5e', '#e8e6e1', '#8f9b88')
      wn = resize(grid_noise(rng, (40, 60), 14), (h, w)).ravel() * .18
      g[wall] = wc * np.clip(.8 + wn[wall], .2, 1.4)[:, None]
    fog = smooth(far * .7, far, t)[:, None] * .3
    self.g = g * (1 - fog) + fog * g.mean(0)
    self.z = np.where(self.who < 0, np.where(wall, far, np.minimum(t, far)), self.z)
    self.wall = wall
    self.gn = ground

  def hold(self, rng):
    c, h, w, k = self.cam, self.cam['h'], self.cam['w'], 3
    caps = HAND.parts(self.bars[0], rng)
    d = self.d.reshape(h, w, 3)[k // 2::k, k // 2::k]
    sh = d.shape[:2]
    hit, t, n = HAND.march(self.bars[0], caps, c['pos'], d.reshape(-1, 3), c['dist'] * .55)
    up = lambda a: resize(a.reshape(sh).astype(F), (h, w)).ravel()
    cover = up(hit)
    m = cover > .5
    tt = up(hit * t) / np.maximum(cover, .2)
    m &= tt < self.z
    nn = np.stack([up(n[:, i]) for i in range(3)], 1)
    self.who[m] = -2
    self.z[m] = tt[m]
    nn = nn[m] / (np.linalg.norm(nn[m], axis=1, keepdims=True) + 1e-6)
    tone = ground.hx(rng, '#e8b99a', '#d9a17f', '#c68a63', '#9a6544', '#6d4430', '#f0c8ae', '#3f6f8f', '#e9e9ea')
    tx = 1 + .05 * fbm(rng, (h, w), 30, 4, .6).ravel()[m] + .03 * grid_noise(rng, (h, w), 3).ravel()[m]
    self.skin = (np.nonzero(m)[0], nn, tone * tx[:, None])
    self.hits = [tuple(a[self.who[i] == q] for a in (i, p, n2)) for q, (i, p, n2) in enumerate(self.hits)]

  def shadows(self, rng):
    h, w, k = self.cam['h'], self.cam['w'], 4
    P = (self.cam['pos'] + self.d * np.minimum(self.z, 1e5)[:, None]).reshape(h, w, 3)[::k, ::k].reshape(-1, 3)
    who = self.who.reshape(h, w)[::k, ::k].ravel()
    L = self.lit['L']
    n = 9 if len(self.bars) < 3 else 7
    Ls = [v / np.linalg.norm(v) for v in L + self.lit['spread'] * np.clip(rng.standard_normal((n, 3)), -1.5, 1.5)]
    S, ao = np.zeros(len(P), F), np.ones(len(P), F)
    for q, b in enumerate(self.bars):
      other = np.nonzero((who != q) & (who != -2) & (norm3(P - b.c) < 60))[0]
      d = np.maximum(b.sdf((P[other] - b.c) @ b.R), 0)
      ao[other] *= 1 - .55 * np.exp(-d / .35) - .25 * np.exp(-d / 1.6)
    for v in Ls:
      s = np.zeros(len(P), F)
      for q, b in enumerate(self.bars):
        o = np.nonzero(who != q)[0]
        s[o] = np.maximum(s[o], b.shadow(P[o], v.astype(F)))
      S += s / n
    sh = P.reshape(len(P), 3)
    if self.lit['blinds'] is not None:
      f, a, kind = self.lit['blinds']
      u = P[:, 0] * np.cos(a) + P[:, 2] * np.sin(a) + P[:, 1] * .5
      if kind:
        v = smooth(-.5, .2, np.sin(u * f))
      else:
        hh, ww = -(-h // k), -(-w // k)
        v = smooth(-.5, .3, fbm(rng, (hh, ww), min(hh, ww) / 4, 3)).ravel()
      S = np.maximum(S, 1 - v)
    sz = (-(-h // k), -(-w // k))
    up = lambda a: np.clip(resize(blur(a.reshape(sz).astype(F), .8), (sz[0] * k, sz[1] * k))[:h, :w], 0, 1).ravel()
    self.sh, self.ao = 1 - up(S), up(ao)

  def shade(self, alb, n, i, occ=1.0, ks=1.0, gl=0.0, soft=.15):
    L, lit = self.lit['L'], self.lit
    v = -self.d[i]
    nl = n @ L
    dif = np.clip((nl + soft) / (1 + soft), 0, 1) * self.sh[i] * ks
    am = (.62 + .38 * n[:, 1]) * occ * self.ao[i]
    hv = L + v
    hv = unit(hv)
    dot = lambda a, b: np.clip(a[:, 0] * b[:, 0] + a[:, 1] * b[:, 1] + a[:, 2] * b[:, 2], 0, 1)
    nh = dot(n, hv) ** 2
    nh = nh * nh * nh * nh
    k = 1 - dot(n, v)
    fr = .04 + .3 * k * k * k * k * k
    sp = gl * lit['spec'] * self.sh[i] * (.10 * nh * nh + .35 * nh ** 9 * (3.0 if lit['glare'] else 1)) * (nl > 0) * ks
    sp = sp * (2.5 if lit['glare'] else 1) + gl * fr * .5 * occ * self.ao[i]
    out = alb * (dif[:, None] * lit['key'] + am[:, None] * lit['amb'])
    return out + sp[:, None] * lit['key']

  def render(self, flaws, des, decs, shared, only=()):
    """flaws: list of asks. Returns linear image [h,w,3]."""
    c = self.cam
    h, w = c['h'], c['w']
    img = np.zeros((h * w, 3), F)
    i = self.need
    if self.base is not None:
      img[:] = self.base
    gn = np.broadcast_to(np.array([0, 1, 0], F), (len(i), 3))
    if self.base is None:
      img[i] = self.shade(self.g[i], gn, i, gl=shared['ggloss'])
      wi = np.nonzero(self.wall)[0]
      img[wi] = self.g[wi] * (self.lit['amb'] + .4 * self.lit['key'])
    for k, b in enumerate(self.bars):
      i, p, n = self.hits[k]
      if not len(i):
        continue
      dist = float(np.linalg.norm(b.c - c['pos']))
      ppc = float(np.clip(.95 * c['foc'] / (dist - .3 * max(b.h)), 16, 125))
      fl = [q for q in flaws if k in q['bars']]
      if self.base is not None and k not in only:
        continue
      ax = np.abs(p / 1.0 - 0) - (b.h - b.r)
      v3 = np.abs(n) + 1e-3 * ax
      fa = np.where(v3[:, 0] > np.maximum(v3[:, 1], v3[:, 2]), 0, np.where(v3[:, 1] > v3[:, 2], 1, 2))
      q = p / b.h
      sg = np.sign(np.take_along_axis(q, fa[:, None], 1)[:, 0])
      out = np.zeros((len(i), 3), F)
      for a in range(3):
        for s in (-1, 1):
          j = np.nonzero((fa == a) & (sg == s))[0]
          if len(j) < 12:
            continue
          ua, va = B.UV[a]
          tex = B.make_face(b, des, a, s, ppc if len(j) > 900 else max(.45 * ppc, 12), fl, decs, shared, self.lit['L'])
          th, tw = tex.shape[:2]
          x = (p[j, ua] / b.h[ua] * .5 + .5) * (tw - 1)
          y = (.5 - p[j, va] / b.h[va] * .5) * (th - 1)
          t = B.sample(tex, x, y)
          m = n[j].copy()
          m[:, ua] -= t[:, 3]
          m[:, va] -= t[:, 4]
          m = unit(m)
          out[j] = self.shade(t[:, :3], m @ b.R.T, i[j], t[:, 5], t[:, 7], t[:, 6], shared['wrap'])
      img[i] = out
    if self.skin is not None and self.base is None:
      i, n, alb = self.skin
      rim = np.clip(.25 - n @ self.lit['L'], 0, 1)[:, None] * np.array([.08, .02, .01], F)
      img[i] = self.shade(alb, n, i, gl=.25, soft=.3) + alb * rim
    if self.base is None:
      self.base = img
    return img.reshape(h, w, 3)
