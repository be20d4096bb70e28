"""Where the bars lie, and where the phone is held."""
import numpy as np
from .noise import F
from .bars import Bar

FLAT = np.array([[1, 0, 0], [0, 0, 1], [0, -1, 0]], F)         # columns: where the bar's x, y, z point
STAND = np.eye(3, dtype=F)
SIDE = np.array([[0, -1, 0], [1, 0, 0], [0, 0, 1]], F)


def yaw(a):
  c, s = np.cos(a), np.sin(a)
  return np.array([[c, 0, s], [0, 1, 0], [-s, 0, c]], F)


def pitch(a):
  c, s = np.cos(a), np.sin(a)
  return np.array([[1, 0, 0], [0, c, -s], [0, s, c]], F)


def rest(R, h, base=0.0):
  return base + float(np.abs(R[1]) @ np.array(h))


def build(rng, pose, kind, seed, size):
  """Bars and camera for a pose, for a picture of `size` (height, width). kind: loafbar, cavity, slab, loaf."""
  W, H, T = rng.uniform(6.5, 9), rng.uniform(4.8, 7), rng.uniform(2.0, 3.2)
  if kind == 'cavity':
    r = rng.uniform(.25, .9)
    r = min(r, T * .42)
  else:
    r = rng.choice([.06, .12, .22]) * rng.uniform(.8, 1.3)
  bars = []
  tgt = np.array([0, 0, 0], F)

  def add(R, x, z, base=0.0, dims=None, k=kind):
    d = dims or (W, H, T)
    h = np.array(d) / 2
    b = Bar(d, R, (x, rest(R, h, base), z), r, k, seed, len(bars))
    bars.append(b)
    return b
  j = lambda s=1.0: s * rng.standard_normal()
  el, az, fill = rng.uniform(35, 85), j(.3), rng.uniform(.42, .85)
  span = W
  if pose == 'flat':
    add(yaw(j(.5)) @ FLAT, 0, 0)
    if rng.random() < .25:
      add(yaw(j(.5)) @ FLAT, W * rng.choice([-1.15, 1.15]), -W * .5 + j(.5))
      fill *= 1.2
  elif pose == 'stand':
    add(yaw(j(.35)) @ STAND, 0, 0)
    el = rng.uniform(12, 45)
  elif pose == 'side':
    add(yaw(j(.35)) @ SIDE, 0, 0)
    el = rng.uniform(12, 45)
  elif pose == 'lean':
    b = add(yaw(j(.25)) @ pitch(-rng.uniform(.3, .8)) @ STAND, 0, 0)
    add(yaw(j(.15)) @ FLAT, j(.8), -H * .45 - H * .5)
    el = rng.uniform(20, 50)
  elif pose == 'stack':
    y = 0
    for i in range(rng.integers(2, 5)):
      add(yaw(j(.25)) @ FLAT, j(.25), j(.25), y)
      y += T
    tgt[1] = y * .6
    el, span = rng.uniform(25, 60), W * 1.15
  elif pose == 'row':
    n = int(rng.integers(3, 6))
    g = T + rng.uniform(.05, 1.2)
    A = yaw(rng.choice([-1, 1]) * rng.uniform(.3, .75))
    for i in range(n):
      c = A @ np.array([j(.08), 0, -(i - .3) * g], F)
      add(A @ yaw(j(.04)) @ STAND, c[0], c[2])
    el, span = rng.uniform(20, 55), max(W * 1.2, n * g * .75)
    tgt[:] = (A @ np.array([0, 0, -(n - 1) * g * .4], F))
  elif pose == 'grid':
    nx, ny = int(rng.integers(2, 4)), int(rng.integers(2, 4))
    for a in range(nx):
      for b in range(ny):
        add(yaw(j(.06)) @ FLAT, (a - (nx - 1) / 2) * (W + .7), (b - (ny - 1) / 2) * (H + .7))
    el, span, fill = rng.uniform(55, 88), max(nx * W, ny * H * 1.2), rng.uniform(.8, 1.05)
  elif pose in ('loaf', 'loafcut'):
    L = rng.uniform(15, 22)
    A = yaw(rng.choice([-1, 1]) * rng.uniform(.5, 1.25))
    add(A, 0, 0, dims=(W, H, L))
    span, el = L * .9, rng.uniform(22, 60)
    if pose == 'loafcut':
      for i in range(rng.integers(1, 3)):
        c = A @ np.array([j(.3), 0, L / 2 + T * (.8 + 1.3 * i)], F)
        add(A @ yaw(j(.15)) @ pitch(0) @ STAND, c[0], c[2])
      c = A @ np.array([0, 0, T], F)
      tgt[:] = c
  elif pose == 'hand':
    R = yaw(j(.2)) @ pitch(-rng.uniform(0, .7))
    b = add(R, 0, 0)
    b.c[1] = 22
    el, fill = rng.uniform(15, 45), rng.uniform(.5, .75)
  else:                                                     # close
    W, H, T = 9.5, 7.6, 3
    add(yaw(j(.08)) @ FLAT, 0, 0)
    el, az = rng.uniform(72, 90), 0
  if pose == 'close':
    fill, span = 1.5, W
  if tgt[1] == 0:
    tgt[1] = np.mean([b.c[1] for b in bars]) * .9
  up = rng.uniform(1.1, 1.35)                                # drawn smaller, then enlarged by the camera
  h, w = (int(side / up) for side in size)
  fov = np.radians(rng.uniform(38, 62)) if pose != 'close' else np.radians(40)
  foc = .5 * max(w, h) / np.tan(fov / 2)
  dist = foc * span / (fill * w)
  if pose in ('flat', 'side', 'stand', 'stack', 'row', 'lean'):
    dist = max(dist, foc * H * 1.15 / (.9 * h))
  e = np.radians(el)
  pos = tgt + dist * np.array([np.sin(az) * np.cos(e), np.sin(e), np.cos(az) * np.cos(e)], F)
  fw = (tgt - pos) / np.linalg.norm(tgt - pos)
  up = np.array([0, 1, 0], F) if el < 87 else np.array([0, 0, -1], F)
  rt = np.cross(fw, up)
  rt /= np.linalg.norm(rt)
  up = np.cross(rt, fw)
  ro = j(.04) if pose != 'close' else 0
  rt, up = rt * np.cos(ro) + up * np.sin(ro), up * np.cos(ro) - rt * np.sin(ro)
  sx, sy = (rng.uniform(-.06, .06, 2) if pose != 'close' else (0, 0))
  cam = dict(pos=pos.astype(F), fw=fw, rt=rt, up=up, foc=foc, w=w, h=h, cx=w * (.5 + sx), cy=h * (.5 + sy), dist=dist, tgt=tgt, out=size[::-1])
  return bars, cam
