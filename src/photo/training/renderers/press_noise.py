"""Noise on the device: smooth solid noise from a lattice, and cells for spots, without scatter."""
import numpy as np
import torch
import torch.nn.functional as F

L = 32
T = 64


class Noise:
    def __init__(self, vol, tab):
        self.vol, self.tab = vol, tab

    @staticmethod
    def make(rs, n, dev):
        vol = rs.uniform(-1, 1, (n, 4, L, L, L)).astype(np.float32)
        tab = rs.uniform(0, 1, (n, 6, T * T)).astype(np.float32)
        return Noise(torch.from_numpy(vol).to(dev), torch.from_numpy(tab).to(dev))

    def sub(self, i):
        return Noise(self.vol[i], self.tab[i])

    def solid(self, p, c=1, ch=0):
        """p [n,3,h,w] in cells -> [n,c,h,w], about -1..1"""
        i = torch.floor(p)
        f = p - i
        f = f * f * (3 - 2 * f)
        g = (i + f).permute(0, 2, 3, 1)[:, None] * (2.0 / (L - 1)) - 1
        return F.grid_sample(self.vol[:, ch:ch + c], g, mode="bilinear",
                             padding_mode="reflection", align_corners=True)[:, :, 0]

    def fbm(self, p, octaves=3, c=1, gain=0.5, ch=0):
        out, a = 0, 1.0
        for o in range(octaves):
            out = out + a * self.solid(p + 5.37 * o, c, ch)
            p = p[:, [1, 2, 0]] * 2.07
            a *= gain
        return out

    def flat(self, uv, octaves=3, c=1, z=0.0, ch=0, gain=0.5):
        p = torch.cat([uv, torch.zeros_like(uv[:, :1]) + z], 1)
        return self.fbm(p, octaves, c, gain, ch)

    def cells(self, uv, jitter=0.85):
        """uv [n,2,h,w] in cells -> f1, f2 [n,1,h,w], vec [n,2,..] from centre, rnd [n,4,..]"""
        n, _, h, w = uv.shape
        base = torch.floor(uv)
        fr = uv - base
        bi = base.long()
        f1 = torch.full((n, 1, h, w), 9.0, device=uv.device)
        f2 = f1.clone()
        vec = torch.zeros_like(uv)
        best = torch.zeros((n, 1, h, w), dtype=torch.long, device=uv.device)
        for dy in (-1, 0, 1):
            for dx in (-1, 0, 1):
                ix = torch.remainder(bi[:, :1] + dx, T)
                iy = torch.remainder(bi[:, 1:] + dy, T)
                k = iy * T + ix
                kk = k.view(n, 1, -1)
                jx = self.tab[:, :1].gather(2, kk).view(n, 1, h, w)
                jy = self.tab[:, 1:2].gather(2, kk).view(n, 1, h, w)
                vx = fr[:, :1] - (dx + 0.5 + (jx - 0.5) * jitter)
                vy = fr[:, 1:] - (dy + 0.5 + (jy - 0.5) * jitter)
                d = (vx * vx + vy * vy).sqrt()
                near = d < f1
                f2 = torch.where(near, f1, torch.minimum(f2, d))
                f1 = torch.where(near, d, f1)
                vec = torch.where(near, torch.cat([vx, vy], 1), vec)
                best = torch.where(near, k, best)
        rnd = self.tab[:, 2:6].gather(2, best.view(n, 1, -1).expand(-1, 4, -1)).view(n, 4, h, w)
        return f1, f2, vec, rnd


def sstep(a, b, x):
    t = ((x - a) / (b - a)).clamp(0, 1)
    return t * t * (3 - 2 * t)


def mix(a, b, t):
    return a + (b - a) * t


def rot2(uv, ang):
    """ang [n,1,1,1]"""
    c, s = torch.cos(ang), torch.sin(ang)
    return torch.cat([c * uv[:, :1] - s * uv[:, 1:], s * uv[:, :1] + c * uv[:, 1:]], 1)
