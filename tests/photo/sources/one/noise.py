"""Noise: smooth 2D grids, a periodic 3D volume, a periodic 2D tile and a cell tile."""
from functools import lru_cache
import numpy as np
from PIL import Image
import torch
from scipy import ndimage as nd
from torch.nn.functional import grid_sample
from scipy.spatial import cKDTree

F = np.float32
torch.set_num_threads(1)


def smooth(a, b, x):
    t = np.clip((x - a) / (b - a), 0, 1)
    return t * t * (3 - 2 * t)


def grid(rng, shape, cell):
    """Smooth noise of about unit spread whose features are `cell` pixels (a number or (y, x))."""
    cy, cx = (cell, cell) if np.isscalar(cell) else cell
    nh, nw = shape[0] / cy, shape[1] / cx
    g = rng.standard_normal((int(nh) + 4, int(nw) + 4)).astype(F)
    oy, ox = 1 + rng.random(), 1 + rng.random()
    im = Image.fromarray(g).resize((shape[1], shape[0]), Image.BICUBIC, box=(ox, oy, ox + nw, oy + nh))
    return np.asarray(im) * F(1.4)


def fbm(rng, shape, cell, octaves=4, gain=0.5):
    cell = np.array((cell, cell) if np.isscalar(cell) else cell, float)
    out, amp, norm = 0, 1.0, 0.0
    for _ in range(octaves):
        out = out + F(amp) * grid(rng, shape, np.maximum(cell, 1.01))
        norm += amp * amp
        amp *= gain
        cell = cell / 2
        if cell.max() < 1.2:
            break
    return out / F(np.sqrt(norm))


def _spectral(n, dim, power, seed):
    rng = np.random.default_rng(seed)
    f = np.fft.fftn(rng.standard_normal((n,) * dim))
    k = np.sqrt(sum(np.meshgrid(*[np.fft.fftfreq(n, 1 / n) ** 2] * dim, indexing='ij')))
    k[(0,) * dim] = 1
    f *= k ** -power * (k > 1.5)
    a = np.real(np.fft.ifftn(f))
    return (a / a.std()).astype(F)


@lru_cache(None)
def volume(rough):
    return _spectral(96, 3, 2.6 if rough else 3.6, 11 + rough)


@lru_cache(None)
def tile():
    return _spectral(1024, 2, 1.35, 5)


@lru_cache(None)
def cells():
    """Periodic cell tile of 24 x 24 cells: border distance (in cells) and a value for each cell."""
    rng = np.random.default_rng(9)
    n, g = 768, 24
    yy, xx = np.mgrid[:g, :g]
    pts = np.stack([yy + rng.random((g, g)), xx + rng.random((g, g))], -1).reshape(-1, 2) % g
    q = (np.mgrid[:n, :n].reshape(2, -1).T + 0.5) * g / n
    d, i = cKDTree(pts, boxsize=g).query(q, 2)
    val = rng.random(g * g)[i[:, 0]]
    return (d[:, 1] - d[:, 0]).reshape(n, n).astype(F), val.reshape(n, n).astype(F)


def gather(chans, coords, mode='bilinear'):
    """Sample planes or volumes [C, ...] at index coordinates given last axis first; stays inside."""
    dims = chans.shape[1:][::-1]
    g = np.stack([c * F(2 / (n - 1)) - F(1) for c, n in zip(coords, dims)], -1).astype(F)
    shape = g.shape[:-1]
    g = torch.from_numpy(g.reshape(1, *[1] * (len(dims) - 1), -1, len(dims)))
    o = grid_sample(torch.from_numpy(np.ascontiguousarray(chans))[None], g, mode=mode, padding_mode='border', align_corners=True)
    return o[0].numpy().reshape(-1, *shape)


_padded = {}


def padded(t):
    if id(t) not in _padded:
        _padded[id(t)] = np.pad(t, [(0, 1)] * t.ndim, mode='wrap')[None]
    return _padded[id(t)]


def resize(a, shape):
    return np.asarray(Image.fromarray(a.astype(F)).resize((shape[1], shape[0]), Image.BICUBIC))


def blur(a, sigma):
    """Gaussian blur that works on a smaller copy when sigma is large."""
    k = int(sigma / 2.5)
    if k < 2:
        return nd.gaussian_filter(a.astype(F), sigma)
    small = Image.fromarray(a.astype(F)).reduce(k)
    b = nd.gaussian_filter(np.asarray(small), sigma / k)
    return resize(b, a.shape)


def at3(p, period, off, rough=False):
    """The volume at points p [H,W,3] (cm), worked out on every third point; it repeats after `period` cm."""
    k = 3 if p.ndim == 3 and min(p.shape[:2]) > 60 else 1
    q = p[::k, ::k] if k > 1 else p
    c = [np.mod(q[..., i] * F(96 / period) + F(off[i]), F(96)) for i in (2, 1, 0)]
    out = gather(padded(volume(bool(rough))), c)[0]
    if k == 1:
        return out
    H, W = p.shape[:2]
    return np.asarray(Image.fromarray(out).resize((W, H), Image.BICUBIC, box=(0.5 - .5 / k, 0.5 - .5 / k, min(W / k + .3, out.shape[1]), min(H / k + .3, out.shape[0]))))


def at2(x, y, tex=None, order=1):
    tex = tile() if tex is None else tex
    n = F(tex.shape[0])
    return gather(padded(tex), [np.mod(x, n), np.mod(y, n)], 'bilinear' if order else 'nearest')[0]


def to_linear(c):
    c = np.asarray(c, F)
    return np.where(c <= 0.04045, c / 12.92, ((np.maximum(c, 0) + 0.055) / 1.055) ** 2.4).astype(F)


def to_srgb(c):
    c = np.clip(c, 0, 1)
    return np.where(c <= 0.0031308, c * 12.92, 1.055 * c ** F(1 / 2.4) - 0.055).astype(F)


def rgb(h):
    return to_linear([int(h[i:i + 2], 16) / 255 for i in (0, 2, 4)])


def mix(a, b, t):
    """Blend colours a and b by a field t."""
    return a + (b - a) * t[..., None]
