"""Things a maker puts in or on soap, or light and water do to it, that a hasty eye takes for flaws."""
import numpy as np
from PIL import Image, ImageDraw
from .noise import F, smooth, fbm, splat, blur, bandpass, grid_noise, quant_mask, lerp
from .flaws_a import tint
from .flaws_b import polyline, wander

NAMES = ['mica', 'glitter', 'oats', 'poppy', 'coffee', 'petals', 'buds', 'embeds', 'stamp', 'dew', 'glare', 'blinds',
     'band', 'crinkle', 'mottle', 'peaks', 'confetti', 'micatop']
ON_TOP = ('petals', 'buds', 'peaks', 'micatop')               # wants a poured top in view
IN_SCENE = ('glare', 'blinds')                                # done by the light, not here


def scatter(f, rng, n):
  h, w = f.shape
  return zip(rng.uniform(0, h, n), rng.uniform(0, w, n))


def flakes(f, rng, n, r, aspect, cols, relief, ragged=.35, opaque=.9):
  for y, x in scatter(f, rng, min(n, 380)):
    rr = f.ppc * r * np.exp(.3 * rng.standard_normal())
    R = int(rr * aspect * 1.8) + 2
    y0, y1, x0, x1 = max(int(y) - R, 0), int(y) + R + 1, max(int(x) - R, 0), int(x) + R + 1
    sub = f.alb[y0:y1, x0:x1]
    if sub.size == 0:
      continue
    m = np.zeros(sub.shape[:2], F)
    splat(m, y - y0, x - x0, rr, rng.uniform(1, aspect), rng.uniform(0, 3.14), .18, opaque * rng.uniform(.6, 1), ragged, rng)
    c = cols[rng.integers(len(cols))] * rng.uniform(.75, 1.25)
    sub += (c.astype(F) - sub) * m[..., None]
    f.ht[y0:y1, x0:x1] += m * relief


def c(*rows):
  return [np.array(r, F) for r in rows]


def apply(f, k, rng, sh):
  """sh: a dict of choices shared by the bar's faces."""
  h, w = f.shape
  A = f.area
  if k == 'mica':                                           # a gold line poured along a border
    d = np.abs(f.bd + .02 * fbm(rng, f.shape, .3 * f.ppc, 3))
    wd = .025 + .05 * sh['a']
    m = smooth(wd * 1.2, wd * .6, d * np.clip(1 + .5 * grid_noise(rng, f.shape, f.ppc), .5, 3))
    sp = np.clip(.75 + .5 * fbm(rng, f.shape, .03 * f.ppc + 2, 1), .2, 1.8)
    tint(f, m * .9, np.array([(.62, .4, .1), (.6, .3, .18), (.55, .55, .52), (.1, .25, .4)][sh['i'] % 4], F))
    f.alb *= lerp(np.ones_like(sp), sp, m)[..., None]
    f.gl += .5 * m
  elif k == 'glitter':
    flakes(f, rng, int(A * 6), .014, 1.3, c((.9, .75, .4), (.9, .9, .9), (.5, .35, .1)), .004)
  elif k == 'oats':
    flakes(f, rng, int(A * (1 + 2.5 * sh['a'])), .085, 1.5, c((.6, .45, .26), (.48, .33, .17), (.7, .56, .37)), .006, .22, .75)
  elif k == 'poppy':
    flakes(f, rng, int(A * (1.5 + 5 * sh['a'])), .04, 1.35, c((.03, .035, .05), (.06, .06, .08), (.02, .02, .02)), .006, .15, 1)
  elif k == 'coffee':
    flakes(f, rng, int(A * (2 + 7 * sh['a'])), .028, 1.8, c((.05, .02, .01), (.1, .045, .02)), .003, .6, .95)
  elif k == 'petals' and f.role == 'top':
    pal = c((.75, .33, .02), (.8, .45, .03)) if sh['i'] % 2 else c((.5, .04, .1), (.35, .02, .06), (.6, .2, .25))
    flakes(f, rng, int(A * (.5 + sh['a'])), .09, 4.5, pal, .05, .25, 1)
  elif k == 'buds' and f.role == 'top':
    flakes(f, rng, int(A * (.6 + 1.4 * sh['a'])), .075, 2.6, c((.13, .1, .25), (.2, .17, .3), (.16, .18, .13)), .06, .25, 1)
  elif k == 'embeds':
    r2 = np.random.default_rng(sh['seed'])
    sq = sh['i'] % 2
    for _ in range(int(2 + A * .08)):
      y, x, r = r2.uniform(0, h), r2.uniform(0, w), f.ppc * r2.uniform(.3, .75)
      a = r2.uniform(0, 3)
      X, Y = np.arange(w, dtype=F)[None] - F(x), np.arange(h, dtype=F)[:, None] - F(y)
      u, v = X * np.cos(a) + Y * np.sin(a), -X * np.sin(a) + Y * np.cos(a)
      d = np.maximum(np.abs(u), np.abs(v)) if sq else np.sqrt(u * u + v * v)
      m = smooth(r + .02 * f.ppc, r - .02 * f.ppc, d)
      tint(f, m * .95, sh['col'] * (1 + .03 * fbm(rng, f.shape, .5 * f.ppc, 2).mean()))
  elif k == 'confetti':
    cols = [sh['col'], sh['col2'], np.array([.8, .76, .68], F)]
    flakes(f, rng, int(A * (.5 + 1.2 * sh['a'])), .2, 2.2, cols, 0, .7, 1)
  elif k == 'stamp' and f.big:
    im = Image.new('L', (w, h), 0)
    d = ImageDraw.Draw(im)
    cx, cy, R, lw = w / 2, h / 2, min(w, h) * (.2 + .14 * sh['a']), max(2, int(.07 * f.ppc))
    if sh['i'] % 3 == 0:                                  # a leaf
      t = np.linspace(-1, 1, 40)
      for sg in (1, -1):
        d.line([(cx + R * x, cy + sg * R * .45 * (1 - x * x)) for x in t], fill=255, width=lw)
      d.line((cx - R * 1.2, cy, cx + R, cy), fill=255, width=lw)
      for x in (-.5, 0, .5):
        for sg in (1, -1):
          d.line((cx + R * x, cy, cx + R * (x + .25), cy + sg * R * .28), fill=255, width=lw)
    elif sh['i'] % 3 == 1:                                # a heart in a ring
      t = np.linspace(0, 6.28, 80)
      d.line([(cx + R * .045 * 16 * np.sin(a) ** 3, cy - R * .045 * (13 * np.cos(a) - 5 * np.cos(2 * a) - 2 * np.cos(3 * a) - np.cos(4 * a))) for a in t], fill=255, width=lw)
      d.ellipse((cx - R * 1.2, cy - R * 1.2, cx + R * 1.2, cy + R * 1.2), outline=255, width=lw)
    else:                                                 # a flower
      for a in np.linspace(0, 6.28, 7)[:-1]:
        x, y = cx + R * .55 * np.cos(a), cy + R * .55 * np.sin(a)
        d.ellipse((x - R * .4, y - R * .4, x + R * .4, y + R * .4), outline=255, width=lw)
      d.ellipse((cx - R * .25, cy - R * .25, cx + R * .25, cy + R * .25), fill=255)
    m = blur(np.asarray(im, F) / 255, .015 * f.ppc)
    f.ht -= m * .05
    f.occ *= 1 - .25 * m
    if sh['i'] % 5 == 4:
      tint(f, m * .8, [.5, .33, .1])
  elif k == 'dew':
    n = int(A * (.6 + 2 * sh['a']))
    for y, x in scatter(f, rng, min(n, 200)):
      r = f.ppc * .05 * np.exp(.6 * rng.standard_normal())
      R = int(r * 1.6) + 2
      y0, x0 = max(int(y) - R, 0), max(int(x) - R, 0)
      s = np.s_[y0:int(y) + R + 1, x0:int(x) + R + 1]
      if f.alb[s].size == 0:
        continue
      m = np.zeros(f.alb[s].shape[:2], F)
      splat(m, y - y0, x - x0, r, 1 + .3 * rng.random(), rng.uniform(0, 3), .1, 1, .15, rng)
      X, Y = np.mgrid[0:m.shape[0], 0:m.shape[1]]
      dd = ((X - (y - y0)) ** 2 + (Y - (x - x0)) ** 2) / (r * r)
      f.ht[s] += np.sqrt(np.clip(1 - dd, 0, 1)).astype(F) * r / f.ppc * .55
      f.alb[s] *= 1 - (.28 * m * (1 - .5 * dd.clip(0, 1)))[..., None].astype(F)
      f.gl[s] = np.maximum(f.gl[s], 2.2 * m)
  elif k == 'band' and f.axis_z != 2:
    pass
  elif k == 'crinkle' and f.role == 'cut':
    f.ht += .05 * np.sin(f.X * 6.28 / (.55 + .3 * sh['a'])).astype(F)
  elif k == 'mottle':
    f.alb *= np.clip(1 + .07 * (1 + sh['a']) * fbm(rng, f.shape, .9 * f.ppc, 5, .65), .5, 1.5)[..., None]
  elif k == 'peaks' and f.role == 'top':                    # a top combed and lifted with a spoon
    b = np.sin((f.V * 3.2 if sh['i'] % 2 else f.U * 3.2) + 1.2 * grid_noise(rng, f.shape, 1.5 * f.ppc)) + .4 * grid_noise(rng, f.shape, .6 * f.ppc)
    f.ht += blur(b.astype(F), .03 * f.ppc) * .13
    f.occ *= 1 - .25 * smooth(.2, -1.2, b)
  elif k == 'micatop' and f.role == 'top':
    m = np.zeros(f.shape, F)
    for _ in range(6):
      p = wander(rng, rng.uniform(-.1, .3) * w, rng.uniform(0, h), rng.uniform(-.5, .5), w * .9, 40, .5)
      m = np.maximum(m, polyline(f, p, np.full(40, f.ppc * rng.uniform(.03, .12))))
    m = blur(m, .03 * f.ppc) * np.clip(.8 + .5 * fbm(rng, f.shape, .04 * f.ppc + 2, 2), .2, 1.2)
    tint(f, np.clip(m, 0, .95), [(.65, .43, .12), (.6, .32, .2)][sh['i'] % 2])
    f.gl += .6 * m
  if k == 'band' and f.axis_z == 2 or (k == 'band' and f.big):
    u = f.U / (f.U.max() + 1e-6)                          # a paper sleeve with scribbles for words
    lo, hi = -.34 - .1 * sh['a'], .34 + .1 * sh['a']
    m = smooth(lo - .006, lo + .006, u) * smooth(hi + .006, hi - .006, u)
    tint(f, m, sh['paper'] * (1 + 0 * m.mean()))
    f.alb *= (1 + .03 * m * fbm(rng, f.shape, .08 * f.ppc, 3))[..., None]
    sh_e = np.exp(-np.clip(np.maximum(lo - u, u - hi), 0, 1) / .012) * (1 - m)
    f.alb *= (1 - .35 * sh_e)[..., None]
    f.gl *= 1 - .6 * m
    im = Image.new('L', (w, h), 0)
    d = ImageDraw.Draw(im)
    r2 = np.random.default_rng(sh['seed'])
    for i in range(5):
      y, L, t = h * (.24 + .12 * i), w * r2.uniform(.08, .22), max(1, int(f.ppc * (.1 if i == 1 else .035)))
      x = w / 2 - L
      while x < w / 2 + L:
        d.line([(x, y), (x + t * 1.5, y - r2.uniform(-1, 1.6) * t * 2), (x + t * 3, y + r2.uniform(-1, 1) * t)], fill=255, width=t)
        x += t * r2.uniform(2.2, 4.4)
    tint(f, np.asarray(im, F) / 255 * m * .85, [.04, .04, .05])
    f.ht += .012 * m


def choices(rng):
  pal = np.array([[.5, .1, .12], [.1, .2, .45], [.1, .3, .16], [.65, .4, .1], [.3, .12, .4], [.04, .04, .05], [.75, .72, .66]], F)
  i, j = rng.choice(len(pal) - 1, 2, replace=False)
  return dict(a=float(rng.random()), i=int(rng.integers(1000)), seed=int(rng.integers(1 << 30)), col=pal[i], col2=pal[j],
        paper=np.array([(.75, .72, .66), (.45, .32, .19), (.82, .82, .8), (.3, .38, .33)][rng.integers(4)], F))
