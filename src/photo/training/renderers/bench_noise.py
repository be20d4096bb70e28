"""Random fields: a solid noise volume per picture, cell dots, cracked cells."""
import math
import torch
import torch.nn.functional as F

ROT = torch.tensor([[0.36, 0.48, -0.80], [-0.80, 0.60, 0.0], [0.48, 0.64, 0.60]])


def smooth(a, b, x):
    t = ((x - a) / (b - a)).clamp(0, 1)
    return t * t * (3 - 2 * t)


def mix(a, b, t):
    return a + (b - a) * t


class Noise:
    """Value noise in 3D, each picture its own volume; values about -1..1."""

    def __init__(self, m, gen, device, ch=4, res=36, vol=None):
        self.res = res
        if vol is None:
            v = torch.rand(m, ch, res, res, res, generator=gen, device=device) * 2 - 1
            v = torch.cat([v, v[:, :, :1]], 2)
            v = torch.cat([v, v[:, :, :, :1]], 3)
            vol = torch.cat([v, v[..., :1]], 4)
        self.vol = vol
        self.rot = ROT.to(vol.device)

    def sub(self, idx):
        n = Noise.__new__(Noise)
        n.res, n.rot, n.vol = self.res, self.rot, self.vol[idx]
        return n

    def __call__(self, p, f=1.0, off=0.0, ch=1, c0=0):
        q = torch.remainder(p * f + off, self.res)
        fl = q.floor()
        fr = q - fl
        q = fl + fr * fr * (3 - 2 * fr)
        g = (q * (2.0 / self.res) - 1).permute(0, 2, 3, 1).unsqueeze(1)
        return F.grid_sample(self.vol[:, c0:c0 + ch], g, align_corners=True,
                             padding_mode='border').squeeze(2)

    def fbm(self, p, f=1.0, off=0.0, octs=3, ch=1, gain=0.5, c0=0):
        out, amp, q = 0, 1.0, p * f + off
        for _ in range(octs):
            out = out + amp * self(q, 1.0, 0.0, ch, c0)
            q = torch.einsum('ij,njhw->nihw', self.rot, q) * 2.03 + 5.7
            amp *= gain
        return out

    def warp(self, p, f, amp, off=0.0, octs=2):
        """p pushed about by a soft vector noise."""
        return p + amp * self.fbm(p, f, off, octs, 3)


def hash3(c, seed):
    """three numbers 0..1 for each whole-number cell"""
    a = torch.cat([
        c[:, 0:1] * 12.9898 + c[:, 1:2] * 78.233 + c[:, 2:3] * 37.719 + seed,
        c[:, 0:1] * 39.346 + c[:, 1:2] * 11.135 + c[:, 2:3] * 83.155 + seed * 1.7,
        c[:, 0:1] * 73.156 + c[:, 1:2] * 52.235 + c[:, 2:3] * 9.151 + seed * 2.3], 1)
    s = torch.sin(a) * 4375.85453
    return s - s.floor()


def dots(p, f, seed, dens, rmin=0.1, rmax=0.35, power=2.0):
    """balls strewn in space, one a cell: distance over radius (9 = none),
    three random numbers of the ball, the vector from its centre (in cells)"""
    q = p * f
    c = q.floor()
    a, b = hash3(c, seed), hash3(c + 19.0, seed + 3.1)
    rad = rmin + (rmax - rmin) * b[:, 0:1] ** power
    rel = q - c - (rad + a * (1 - 2 * rad))
    d = rel.pow(2).sum(1, keepdim=True).sqrt() / rad
    d = torch.where(b[:, 1:2] < dens, d, torch.full_like(d, 9.0))
    return d, hash3(c + 7.0, seed + 9.7), rel


def cells(p, f, seed):
    """Voronoi in space (8 nearest cells): nearest, gap to the second, a number"""
    q = p * f
    base = (q - 0.5).floor()
    d1 = torch.full_like(q[:, :1], 9.0)
    d2, num = d1.clone(), torch.zeros_like(d1)
    for i in range(8):
        c = base + torch.tensor([i & 1, (i >> 1) & 1, i >> 2], device=p.device,
                                dtype=p.dtype).view(1, 3, 1, 1)
        h = hash3(c, seed)
        d = (q - c - 0.5 - (h - 0.5) * 0.8).pow(2).sum(1, keepdim=True).sqrt()
        near = d < d1
        d2 = torch.where(near, d1, torch.minimum(d2, d))
        num = torch.where(near, h[:, :1], num)
        d1 = torch.where(near, d, d1)
    return d1, d2 - d1, num


def gauss(x, sigma):
    """blur all by one sigma (pixels)"""
    if sigma < 0.2:
        return x
    r = max(1, int(math.ceil(sigma * 2.5)))
    t = torch.arange(-r, r + 1, device=x.device, dtype=x.dtype)
    k = torch.exp(-t * t / (2 * sigma * sigma))
    k = k / k.sum()
    n, c, h, w = x.shape
    y = x.reshape(n * c, 1, h, w)
    y = F.conv2d(F.pad(y, (r, r, 0, 0), mode='replicate'), k.view(1, 1, 1, -1))
    y = F.conv2d(F.pad(y, (0, 0, r, r), mode='replicate'), k.view(1, 1, -1, 1))
    return y.reshape(n, c, h, w)


def sub(ctx, idx):
    """the pictures idx of a dict of fields"""
    out = {}
    for k, v in ctx.items():
        if torch.is_tensor(v):
            out[k] = v[idx]
        elif isinstance(v, Noise):
            out[k] = v.sub(idx)
        elif hasattr(v, 't'):
            out[k] = type(v)(v.t[idx])
        else:
            out[k] = v
    return out
