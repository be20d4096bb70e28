"""Noise, cells and small helpers; every field is [..., H, W] on one device."""
import math
import numpy as np, torch
import torch.nn.functional as F
_C = {}

def _np(a):
    return torch.frombuffer(bytearray(np.ascontiguousarray(a).tobytes()), dtype=torch.float32).reshape(tuple(a.shape))

def _tab(dev):
    k = str(dev)
    if k not in _C:
        r = np.random.default_rng(20931)
        v = r.uniform(-1, 1, (4, 64, 64, 64)).astype('f')
        v = np.pad(v, ((0, 0), (0, 1), (0, 1), (0, 1)), mode='wrap')
        t = r.uniform(0, 1, (65536, 4)).astype('f')
        _C[k] = (_np(v)[None].to(dev), _np(t).to(dev))
    return _C[k]

def _const(dev):
    k = ('c', str(dev))
    if k not in _C: _C[k] = (torch.tensor([3.7, 11.3, 27.9], device=dev).view(3, 1, 1), _ROT.to(dev))
    return _C[k]

def noise3(p, scale=1.0, off=0.0):
    """p [3,H,W] -> [4,H,W] smooth noise in -1..1, one lattice cell = 1/scale."""
    q = p * scale + (off * 7.31 + _const(p.device)[0])
    q = q - torch.floor(q / 64) * 64
    i = torch.floor(q); f = q - i
    q = i + f * f * (3 - 2 * f)
    g = (q / 32 - 1).permute(1, 2, 0)[None, None]
    return F.grid_sample(_tab(p.device)[0], g, mode='bilinear', padding_mode='border', align_corners=True)[0, :, 0]

_ROT = torch.tensor([[0.36, 0.48, -0.8], [-0.8, 0.6, 0.0], [0.48, 0.64, 0.6]])
def fbm(p, scale=1.0, off=0.0, oct=3, gain=.5):
    R = _const(p.device)[1]; a = 1.; s = 0.; t = 0.
    for o in range(oct):
        s = s + a * noise3(p, scale, off + 1.7 * o); t += a
        a *= gain; scale *= 2.03; p = torch.einsum('ij,jhw->ihw', R, p)
    return s / t * 1.5

def sst(a, b, x):
    t = ((x - a) / (b - a)).clamp(0, 1) if torch.is_tensor(x) else min(1, max(0, (x - a) / (b - a)))
    return t * t * (3 - 2 * t)

def _hash(ix, iy, s, dev):
    h = ix * 374761393 + iy * 668265263 + int(s) * 69069
    h = (h ^ (h >> 13)) * 1274126177
    h = (h ^ (h >> 16)) & 65535
    return _tab(dev)[1][h]

def _nine(u, v, cell, seed):
    dev = u.device
    x = u / cell; y = v / cell
    fx = torch.floor(x); fy = torch.floor(y)
    o = torch.tensor([(a, b) for a in (-1, 0, 1) for b in (-1, 0, 1)], device=dev)
    ix = fx.long()[None] + o[:, 0].view(9, 1, 1); iy = fy.long()[None] + o[:, 1].view(9, 1, 1)
    h = _hash(ix, iy, seed, dev)
    return x, y, ix.float(), iy.float(), h

def dots(u, v, cell, seed, prob, r0, r1, tail=0., ang=0., taper=True):
    """scattered dots: signed distance in cm (neg inside), random of nearest, offset vector (cm)."""
    if tail:
        c, s = math.cos(ang), math.sin(ang)
        u, v = c * u + s * v, -s * u + c * v
        u = u / (1 + tail)
    x, y, ix, iy, h = _nine(u, v, cell, seed)
    rad = r0 + (r1 - r0) * h[..., 2] ** 3
    m = (rad / cell).clamp(max=.45)
    dx = x - (ix + m + (1 - 2 * m) * h[..., 0]); dy = y - (iy + m + (1 - 2 * m) * h[..., 1])
    if tail and taper:
        d = torch.sqrt(dx * dx + dy * dy * (1 + 1.5 * torch.sigmoid(dx * 6 / m.clamp(min=.02))) ** 2)
    else:
        d = torch.sqrt(dx * dx + dy * dy)
    sd = d * cell - rad + (h[..., 3] > prob) * 9.
    b, k = sd.min(0)
    k = k[None]
    rnd = ((h[..., 3] / max(prob, 1e-3)).gather(0, k)[0]).clamp(0, 1)
    return b, rnd, dx.gather(0, k)[0] * cell, dy.gather(0, k)[0] * cell, rad.gather(0, k)[0]

def worley(u, v, cell, seed):
    x, y, ix, iy, h = _nine(u, v, cell, seed)
    d = torch.sqrt((x - ix - h[..., 0]) ** 2 + (y - iy - h[..., 1]) ** 2)
    t, k = d.topk(2, dim=0, largest=False)
    return t[0], t[1] - t[0], h[..., 3].gather(0, k[:1])[0]

def col(c, dev):
    return torch.tensor([float(v) for v in c], dtype=torch.float32, device=dev).view(3, 1, 1)

def lin(c):
    c = np.asarray(c, float)
    return np.where(c < .04045, c / 12.92, ((c + .055) / 1.055) ** 2.4)

def hsv(h, s, v):
    import colorsys
    return lin(colorsys.hsv_to_rgb(h % 1, min(max(s, 0), 1), min(max(v, 0), 1)))

def mix(a, b, m):
    return a + (b - a) * m

def gauss(x, s):
    """x [C,H,W]"""
    if s < .25: return x
    dn = 1
    H, W = x.shape[-2:]
    while s > 5 and min(x.shape[-2:]) > 40:
        x = F.avg_pool2d(x[None], 2, ceil_mode=True)[0]; s /= 2; dn *= 2
    r = max(1, int(2.5 * s + .5))
    r = min(r, min(x.shape[-2:]) - 1)
    k = torch.exp(-.5 * (torch.arange(-r, r + 1, device=x.device, dtype=torch.float32) / s) ** 2); k = k / k.sum()
    y = F.pad(x[:, None], (r, r, r, r), mode='reflect')
    y = F.conv2d(F.conv2d(y, k.view(1, 1, 1, -1)), k.view(1, 1, -1, 1))[:, 0]
    if dn > 1: y = F.interpolate(y[None], size=(H, W), mode='bilinear', align_corners=False)[0]
    return y
