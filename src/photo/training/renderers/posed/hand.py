"""A hand-like shape of capsules that holds the bar: ray-marched on a small grid."""
import numpy as np
from .noise import F, norm3, resize, fbm, rng_of, smooth


def parts(bar, rng):
  """Capsules (a, b, ra) in the bar's space: thumb before, fingers behind, palm to one side."""
  W, H, T = bar.dims
  sx = rng.choice([-1, 1])
  x0 = sx * W / 2
  out = []
  zt, zb = T / 2 + .75, -T / 2 - .8
  y = -H * rng.uniform(.15, .4)
  palm = np.array([x0 + sx * 3.6, y - 2.6, -.3])
  tip = np.array([x0 - sx * rng.uniform(.8, 2.4), y + rng.uniform(.2, 1.4), zt])
  kn = np.array([x0 + sx * 1.3, y - .6, zt + .35])
  out += [(tip, kn, .78), (kn, palm + [0, .4, .9], 1.0)]
  for i in range(4):
    fy = y - 2.0 + 1.5 * i
    k = np.array([x0 + sx * 1.7, fy - .3, zb - .3 + .1 * i])
    out += [(palm + [0, .5 * i - .5, -.6], k, .95 - .06 * (i == 3)), (k, np.array([x0 - sx * (W * .45), fy + .3, zb - .1]), .72)]
  out += [(palm, palm + [sx * 4, -5, -1], 2.3), (palm + [sx * 4, -5, -1], palm + [sx * 11, -12, -2], 2.5)]
  return [(np.asarray(a, F), np.asarray(b, F), F(r)) for a, b, r in out]


def sdf(p, caps, k=.28):
  d = None
  acc = 0
  for a, b, r in caps:
    ab = b - a
    t = np.clip(((p - a) @ ab) / (ab @ ab), 0, 1)
    q = p - a - t[:, None] * ab
    acc = acc + np.exp(-(norm3(q) - r * (1 - .1 * t)) / k)
  return -k * np.log(acc + 1e-30)


def march(bar, caps, o, d, tnear):
  lo, ld = ((o - bar.c) @ bar.R).astype(F), (d @ bar.R).astype(F)
  t = np.full(len(d), tnear, F)
  alive = np.arange(len(d))
  for _ in range(16):
    s = sdf(lo + ld[alive] * t[alive, None], caps)
    t[alive] += s * .95
    alive = alive[(s > .02) & (t[alive] < tnear * 2.6 + 20)]
    if not len(alive):
      break
  p = lo + ld * t[:, None]
  s = sdf(p, caps)
  hit = s < .09
  n = np.zeros_like(p)
  i = np.nonzero(hit)[0]
  for ax in range(3):
    e = np.zeros(3, F)
    e[ax] = .05
    n[i, ax] = sdf(p[i] + e, caps) - s[i]
  n /= np.linalg.norm(n, axis=1, keepdims=True) + 1e-9
  return hit, t, n @ bar.R.T
