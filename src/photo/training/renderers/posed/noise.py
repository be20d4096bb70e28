"""Noise, masks and small helpers. Everything is float32 numpy, everything takes its own rng."""
import numpy as np
from PIL import Image
from scipy import ndimage as ndi

F = np.float32


def rng_of(*keys):
  """An rng from a tuple of ints and words, the same every time."""
  out = []
  for k in keys:
    if isinstance(k, str):
      v = 0
      for c in k.encode():
        v = (v * 131 + c) & 0xffffffff
      out.append(v)
    else:
      out.append(int(k) & 0xffffffff)
  return np.random.Generator(np.random.PCG64(np.random.SeedSequence(out)))


def norm3(a):
  return np.sqrt(a[..., 0] ** 2 + a[..., 1] ** 2 + a[..., 2] ** 2)


def unit(a):
  return a / (norm3(a)[..., None] + F(1e-9))


def slab(o, d, h):
  """Entry and exit of rays through a box of half sizes h."""
  t0 = t1 = None
  for k in range(3):
    dk = d[..., k]
    a = (-h[k] - o[..., k]) / dk
    b = (h[k] - o[..., k]) / dk
    lo, hi = np.minimum(a, b), np.maximum(a, b)
    t0, t1 = (lo, hi) if t0 is None else (np.maximum(t0, lo), np.minimum(t1, hi))
  return t0, t1


def smooth(a, b, x):
  t = np.clip((x - a) / (b - a if abs(b - a) > 1e-9 else 1e-9), 0, 1)
  return (t * t * (3 - 2 * t)).astype(F)


def lerp(a, b, t):
  return a + (b - a) * t


def resize(a, shape, how=Image.BICUBIC):
  h, w = shape
  return np.asarray(Image.fromarray(np.ascontiguousarray(a, dtype=F)).resize((w, h), how), dtype=F)


def blur(a, s):
  """Gaussian blur of a map; wide ones are done on a smaller map."""
  if s <= 0.3:
    return a
  if a.ndim == 3:
    return np.dstack([blur(a[..., i], s) for i in range(a.shape[2])])
  h, w = a.shape
  k = int(s // 4)
  if k >= 2 and min(h, w) > 4 * k:
    small = resize(a, (max(h // k, 4), max(w // k, 4)), Image.BOX)
    return resize(ndi.gaussian_filter(small, s / k, mode='nearest'), (h, w))
  return ndi.gaussian_filter(a, s, mode='nearest', truncate=3).astype(F)


def grid_noise(rng, shape, cell, stretch=1.0):
  """Smooth noise about N(0,1); cell in px, stretch > 1 lengthens it along x."""
  h, w = shape
  ny = max(int(np.ceil(h / cell)) + 3, 4)
  nx = max(int(np.ceil(w / (cell * stretch))) + 3, 4)
  ny, nx = min(ny, h + 3), min(nx, w + 3)
  g = rng.standard_normal((ny, nx), dtype=F)
  H, W = int(ny * cell) + 1, int(nx * cell * stretch) + 1
  H, W = max(H, h), max(W, w)
  oy, ox = rng.integers(0, H - h + 1), rng.integers(0, W - w + 1)
  box = (ox * nx / W, oy * ny / H, (ox + w) * nx / W, (oy + h) * ny / H)
  im = Image.fromarray(g).resize((w, h), Image.BICUBIC, box=box)
  return np.asarray(im, dtype=F) * 1.5


def fbm(rng, shape, cell, octaves=4, gain=0.5, stretch=1.0):
  out = np.zeros(shape, F)
  a, tot = 1.0, 0.0
  for _ in range(octaves):
    if cell < 1.5:
      break
    out += a * grid_noise(rng, shape, cell, stretch)
    tot += a * a
    a *= gain
    cell *= 0.5
  return out / F(np.sqrt(max(tot, 1e-6)))


def quant_mask(f, share, soft=0.35):
  """Soft mask over about `share` of the map, where f is highest."""
  if share >= 0.99:
    return np.ones_like(f)
  t = np.quantile(f[::4, ::4], 1 - share)
  sd = f[::4, ::4].std() + 1e-6
  return smooth(t - soft * sd, t + soft * sd, f)


def remap(a, dx, dy):
  """a displaced by dx, dy px."""
  h, w = a.shape[:2]
  yy, xx = np.mgrid[0:h, 0:w].astype(F)
  c = [np.clip(yy + dy, 0, h - 1), np.clip(xx + dx, 0, w - 1)]
  if a.ndim == 2:
    return ndi.map_coordinates(a, c, order=1).astype(F)
  return np.dstack([ndi.map_coordinates(a[..., i], c, order=1) for i in range(a.shape[2])]).astype(F)


def bandpass(rng, shape, wave, sharp=1.5, stretch=1.0, angle=None):
  """Labyrinth-like noise of one wave length (px), in -1..1."""
  h, w = shape
  k = max(wave / 8.0, 1.0)
  s = (max(int(h / k), 8), max(int(w / k), 8))
  g = rng.standard_normal(s, dtype=F)
  wv = wave / k
  sg = (wv * 0.2, wv * 0.2 * stretch)
  f = ndi.gaussian_filter(g, sg) - ndi.gaussian_filter(g, (sg[0] * 1.7, sg[1] * 1.7))
  f = np.tanh(sharp * f / (f.std() + 1e-6))
  f = ndi.gaussian_filter(f, wv * 0.1)
  return resize(f, shape)


def splat(mask, y, x, r, aspect=1.0, angle=0.0, soft=0.4, amount=1.0, wob=0.0, rng=None):
  """Max a soft, perhaps oblong, perhaps ragged dot into mask."""
  h, w = mask.shape
  R = int(np.ceil(r * max(aspect, 1) * (1 + soft + wob))) + 1
  y0, y1, x0, x1 = max(int(y) - R, 0), min(int(y) + R + 1, h), max(int(x) - R, 0), min(int(x) + R + 1, w)
  if y1 <= y0 or x1 <= x0:
    return
  yy, xx = np.mgrid[y0:y1, x0:x1].astype(F)
  yy -= F(y)
  xx -= F(x)
  c, s = np.cos(angle), np.sin(angle)
  u, v = (xx * c + yy * s) / aspect, -xx * s + yy * c
  d = np.sqrt(u * u + v * v) / max(r, 0.3)
  if wob and rng is not None:
    th = np.arctan2(v, u)
    p = rng.uniform(0, 6.28, 3)
    d = d * (1 + wob * (0.5 * np.sin(2 * th + p[0]) + 0.35 * np.sin(3 * th + p[1]) + 0.25 * np.sin(5 * th + p[2])))
  m = np.clip((1 + soft - d) / (2 * soft), 0, 1) * amount
  np.maximum(mask[y0:y1, x0:x1], m, out=mask[y0:y1, x0:x1])


def worley_edge(rng, shape, cell, squash=1.0, jitter=1.0):
  """Distance (px) to the nearest cell border, and a random value per cell."""
  from scipy.spatial import cKDTree
  h, w = shape
  k = max(1, int(cell / 12))
  ny, nx = int(h / cell) + 4, int(w * squash / cell) + 4
  gy, gx = np.mgrid[0:ny, 0:nx].astype(F)
  pts = np.stack([(gy - 1.5 + jitter * rng.uniform(-.5, .5, gy.shape)) * cell,
          (gx - 1.5 + jitter * rng.uniform(-.5, .5, gx.shape)) * cell], -1).reshape(-1, 2)
  hs, ws = h // k + 1, w // k + 1
  wy = grid_noise(rng, (hs, ws), max(cell / k, 3)) * cell * .12
  wx = grid_noise(rng, (hs, ws), max(cell / k, 3)) * cell * .12
  yy, xx = np.mgrid[0:hs, 0:ws].astype(F)
  q = np.stack([yy * k + wy, (xx * k) * squash + wx], -1).reshape(-1, 2)
  d, i = cKDTree(pts).query(q, k=2)
  a, b = pts[i[:, 0]], pts[i[:, 1]]
  gap = (d[:, 1] ** 2 - d[:, 0] ** 2) / (2 * np.linalg.norm(a - b, axis=1) + 1e-6)
  val = rng.uniform(0, 1, len(pts))[i[:, 0]].reshape(hs, ws).astype(F)
  return resize(gap.reshape(hs, ws).astype(F), shape), resize(val, shape, Image.BILINEAR)


def to_lin(c):
  c = np.asarray(c, F)
  return np.where(c <= 0.04045, c / 12.92, ((c + 0.055) / 1.055) ** 2.4).astype(F)


_T = np.linspace(0, 1, 4097) ** 2                             # a finer table in the dark
TABLE = np.where(_T <= 0.0031308, _T * 12.92, 1.055 * _T ** (1 / 2.4) - 0.055).astype(F)


def to_srgb(c):
  return TABLE[(np.sqrt(np.clip(c, 0, 1)) * 4096 + .5).astype(np.int16)]
