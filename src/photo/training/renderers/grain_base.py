"""Noise, dots, blur: the small tools of grain."""
import math, torch
import torch.nn.functional as F
G = 32

def sstep(a, b, x):
    t = ((x - a) / (b - a)).clamp(0, 1)
    return t * t * (3 - 2 * t)

def mix(a, b, t):
    return a + (b - a) * t

def noise(vol, p):
    """vol [n,4,G+1,G+1,G+1], p [n,3,H,W] -> [n,4,H,W] in about -1..1"""
    c = torch.remainder(p, G)
    f = torch.floor(c)
    t = c - f
    c = f + t * t * (3 - 2 * t)
    g = (c * (2.0 / G) - 1).permute(0, 2, 3, 1).unsqueeze(1)
    return F.grid_sample(vol, g, align_corners=True, padding_mode='border')[:, :, 0]

_off = (7.3, 19.1, 3.7)
def fbm(vol, p, oct=3, gain=0.5):
    o = 0; a = 1.0; s = 0
    off = torch.tensor(_off, device=p.device).view(1, 3, 1, 1)
    for i in range(oct):
        o = o + a * noise(vol, p * (2.03 ** i) + off * i)
        s += a * a; a *= gain
    return o / math.sqrt(s)

def hsh(x, y, s):
    v = torch.sin(x * 12.9898 + y * 78.233 + s * 3.17) * 43758.5453
    return v - torch.floor(v)

def dots(uv, seed, keep, r0, r1, asp=1.0, tail=None, skew=2.0):
    """uv [n,2,H,W] in cells. Nearest kept dot: (d/radius, rand, vx, vy, radius). r in cells. tail: (angle, stretch)"""
    ix, iy = torch.floor(uv[:, :1]), torch.floor(uv[:, 1:2])
    best = torch.full_like(ix, 9.0); rb = torch.zeros_like(ix); bx = torch.zeros_like(ix); by = torch.zeros_like(ix); br = torch.ones_like(ix)
    for dx in (-1, 0, 1):
        for dy in (-1, 0, 1):
            cx, cy = ix + dx, iy + dy
            a = hsh(cx, cy, seed); b = hsh(cx, cy, seed + 11.3); k = hsh(cx, cy, seed + 23.9); q = hsh(cx, cy, seed + 37.1)
            vx = uv[:, :1] - (cx + 0.1 + 0.8 * a); vy = uv[:, 1:2] - (cy + 0.1 + 0.8 * b)
            r = r0 + (r1 - r0) * q ** skew
            if tail is not None:
                ca, sa = torch.cos(tail[0]), torch.sin(tail[0])
                lx = vx * ca + vy * sa; ly = -vx * sa + vy * ca
                st = 1 + (tail[1] - 1) * (a * 7.1 % 1.0)
                lx2 = torch.where(lx > 0, lx / st, lx)
                ly2 = ly * (1 + (lx.clamp(min=0) / r / st) * 1.2)
                d = torch.sqrt(lx2 * lx2 + ly2 * ly2) / r
            elif torch.is_tensor(asp) or asp != 1.0:
                th = k * 40.0
                ca, sa = torch.cos(th), torch.sin(th)
                lx = vx * ca + vy * sa; ly = -vx * sa + vy * ca
                d = torch.sqrt(lx * lx + (ly * asp) ** 2) / r
            else:
                d = torch.sqrt(vx * vx + vy * vy) / r
            d = torch.where(k < keep, d, torch.full_like(d, 9.0))
            t = d < best
            best = torch.where(t, d, best); rb = torch.where(t, (q * 13.7 + b * 5.1) % 1.0, rb)
            bx = torch.where(t, vx, bx); by = torch.where(t, vy, by); br = torch.where(t, r, br)
    return best, rb, bx, by, br

def cells(uv, seed):
    """Worley: F1, F2-F1, rand of the cell"""
    ix, iy = torch.floor(uv[:, :1]), torch.floor(uv[:, 1:2])
    f1 = torch.full_like(ix, 9.0); f2 = f1.clone(); rb = torch.zeros_like(ix)
    for dx in (-1, 0, 1):
        for dy in (-1, 0, 1):
            cx, cy = ix + dx, iy + dy
            a = hsh(cx, cy, seed); b = hsh(cx, cy, seed + 11.3)
            vx = uv[:, :1] - (cx + a); vy = uv[:, 1:2] - (cy + b)
            d = torch.sqrt(vx * vx + vy * vy)
            t = d < f1
            f2 = torch.where(t, f1, torch.minimum(f2, d))
            rb = torch.where(t, (a * 7.7 + b * 3.3) % 1.0, rb)
            f1 = torch.minimum(f1, d)
    return f1, f2 - f1, rb

def blur_lod(x, lod, levels=4):
    """Per-pixel variable blur by a pyramid; lod [n,1,H,W] or [n,1,1,1]"""
    out = x * (1 - lod).clamp(0, 1)
    y = x
    H, W = x.shape[-2:]
    for k in range(1, levels + 1):
        y = F.avg_pool2d(F.pad(y, (1, 1, 1, 1), mode='replicate'), 4, 2, 0) if min(y.shape[-2:]) > 4 else y
        u = F.interpolate(y, size=(H, W), mode='bilinear', align_corners=False)
        w = (1 - (lod.clamp(max=levels) - k).abs()).clamp(0, 1)
        out = out + u * w
    return out

def gauss(x, s):
    """[n,c,H,W], one small sigma per picture [n], radius 4"""
    n, c, H, W = x.shape
    r = torch.arange(-4, 5, device=x.device, dtype=x.dtype)
    k = torch.exp(-0.5 * (r / s.clamp(min=0.05).view(n, 1)) ** 2)
    k = k / k.sum(1, keepdim=True)
    a = F.pad(x, (4, 4, 0, 0), mode='replicate'); y = 0
    for i in range(9): y = y + a[..., i:i + W] * k[:, i].view(n, 1, 1, 1)
    a = F.pad(y, (0, 0, 4, 4), mode='replicate'); y = 0
    for i in range(9): y = y + a[..., i:i + H, :] * k[:, i].view(n, 1, 1, 1)
    return y

def dot3(a, b):
    return (a * b).sum(1, keepdim=True)

def norm3(a):
    return a / torch.sqrt(dot3(a, a) + 1e-12)

def cross3(a, b):
    return torch.stack([a[:, 1] * b[:, 2] - a[:, 2] * b[:, 1], a[:, 2] * b[:, 0] - a[:, 0] * b[:, 2], a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0]], 1)

def dil(m, k):
    return F.max_pool2d(m, 2 * k + 1, 1, k)

def ero(m, k):
    return 1 - F.max_pool2d(1 - m, 2 * k + 1, 1, k)

def to_srgb(x):
    x = x.clamp(0, 1)
    return torch.where(x < 0.0031308, 12.92 * x, 1.055 * x.clamp(min=1e-6) ** (1 / 2.4) - 0.055)

def lin(c):
    import numpy as np
    c = np.asarray(c, dtype=float)
    return np.where(c < 0.04045, c / 12.92, ((c + 0.055) / 1.055) ** 2.4)
