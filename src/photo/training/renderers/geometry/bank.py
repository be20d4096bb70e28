"""Tileable noise volume and cell tile, built once per device, plus small helpers."""
import numpy as np
import torch
import torch.nn.functional as F

_CACHE = {}
CELLS = 40


def _volume(res=96, seed=11):
    rng = np.random.default_rng(seed)
    k = np.fft.fftfreq(res) * res
    kk = np.sqrt(k[:, None, None] ** 2 + k[None, :, None] ** 2 + k[None, None, :] ** 2)
    out = []
    for c in range(4):
        w = np.fft.fftn(rng.standard_normal((res,) * 3))
        if c < 3:
            f = np.exp(-((kk - 5.5) / 2.2) ** 2)
        else:
            f = np.where((kk > 3) & (kk < 44), 1.0 / np.maximum(kk, 1) ** 2.1, 0)
        v = np.fft.ifftn(w * f).real
        out.append(v / v.std())
    v = np.stack(out).astype(np.float32)
    return np.pad(v, ((0, 0), (0, 1), (0, 1), (0, 1)), mode="wrap")


def _cells(res=1024, seed=12):
    """channels: dx, dy to the nearest point (cell units), border distance, id1, id2"""
    rng = np.random.default_rng(seed)
    n = CELLS
    jit = rng.random((n, n, 2)).astype(np.float32) * 0.86 + 0.07
    ids = rng.random((n, n, 2)).astype(np.float32)
    g = (np.arange(res, dtype=np.float32)) / res * n
    X, Y = np.meshgrid(g, g)
    ix, iy = X.astype(int), Y.astype(int)
    b1 = np.full(X.shape, 1e9, np.float32)
    b2 = b1.copy()
    p1 = np.zeros(X.shape + (2,), np.float32)
    p2 = p1.copy()
    i1 = p1.copy()
    for oy in range(-2, 3):
        for ox in range(-2, 3):
            cx, cy = ix + ox, iy + oy
            j = jit[cy % n, cx % n]
            v = np.stack([cx + j[..., 0] - X, cy + j[..., 1] - Y], -1)
            d = (v ** 2).sum(-1)
            m1 = d < b1
            m2 = (~m1) & (d < b2)
            b2 = np.where(m1, b1, np.where(m2, d, b2))
            p2 = np.where(m1[..., None], p1, np.where(m2[..., None], v, p2))
            b1 = np.where(m1, d, b1)
            p1 = np.where(m1[..., None], v, p1)
            i1 = np.where(m1[..., None], ids[cy % n, cx % n], i1)
    edge = (b2 - b1) / (2 * np.sqrt(((p1 - p2) ** 2).sum(-1)) + 1e-6)
    t = np.stack([p1[..., 0], p1[..., 1], edge, i1[..., 0], i1[..., 1]]).astype(np.float32)
    return np.pad(t, ((0, 0), (0, 1), (0, 1)), mode="wrap")


def get(device):
    key = str(device)
    if key not in _CACHE:
        _CACHE[key] = (torch.from_numpy(_volume())[None].to(device),
                       torch.from_numpy(_cells())[None].to(device))
    return _CACHE[key]


def noise3(x, y, z):
    """x, y, z in feature units [n,H,W] -> 4 tensors of about unit variance"""
    vol = get(x.device)[0]
    n, h, w = x.shape
    g = torch.stack([x, y, z], -1).mul_(1 / 6.0)
    g = (g - g.floor()).mul_(2).sub_(1)
    o = F.grid_sample(vol, g.view(1, n * h, w, 1, 3), mode="bilinear", padding_mode="border", align_corners=True)
    o = o.view(4, n, h, w)
    return o[0], o[1], o[2], o[3]


def cells(u, v):
    """u, v in cell units -> (F1, border distance, dx, dy, id1, id2)"""
    t = get(u.device)[1]
    n, h, w = u.shape
    g = torch.stack([u, v], -1).mul_(1.0 / CELLS)
    g = (g - g.floor()).mul_(2).sub_(1)
    o = F.grid_sample(t, g.view(1, n * h, w, 2), mode="bilinear", padding_mode="border", align_corners=True)
    o = o.view(5, n, h, w)
    return (o[0] ** 2 + o[1] ** 2).sqrt(), o[2], o[0], o[1], o[3], o[4]


def sstep(a, b, x):
    t = ((x - a) / (b - a)).clamp(0, 1)
    return t * t * (3 - 2 * t)


def fr(x):
    return x - torch.floor(x)


def lerp(a, b, t):
    return a + (b - a) * t


def gauss(img, sigma, radius):
    """img [n,C,H,W], sigma [n] in px; separable per-picture blur"""
    n, c, h, w = img.shape
    x = torch.arange(-radius, radius + 1, device=img.device, dtype=img.dtype)
    k = torch.exp(-0.5 * (x[None] / sigma.clamp(min=0.05)[:, None]) ** 2)
    k = (k / k.sum(1, keepdim=True))[:, None].expand(n, c, -1).reshape(n * c, 1, 1, -1)
    o = F.pad(img, (radius,) * 4, mode="replicate").reshape(1, n * c, h + 2 * radius, w + 2 * radius)
    o = F.conv2d(o, k, groups=n * c)
    o = F.conv2d(o, k.transpose(2, 3), groups=n * c)
    return o.view(n, c, h, w)


def to_lin(c):
    return c.clamp(0, 1) ** 2.2
