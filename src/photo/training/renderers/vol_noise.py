"""Random fields in three dimensions: smooth noise, hashed particles, Worley cells."""
import torch
import torch.nn.functional as F

_STORE = {}


class Field:
    """Periodic random volume and hash table, the same for every run."""

    def __init__(self, device):
        g = torch.Generator().manual_seed(7)
        v = torch.rand(4, 64, 64, 64, generator=g) * 2 - 1
        for d in (1, 2, 3):
            v = torch.cat([v, v.narrow(d, 0, 1)], d)
        self.vol = v[None].to(device).contiguous()
        self.table = torch.rand(262144, 8, generator=g).to(device)

    def noise(self, p):
        """Value noise, p [B,3,N] in cells -> [B,4,N], about -1..1."""
        p = torch.remainder(p, 64.0)
        i = torch.floor(p)
        f = p - i
        f = f * f * (3 - 2 * f)
        g = (i + f) * (2 / 64.0) - 1
        g = g.permute(0, 2, 1)[None, :, :, None, :]
        o = F.grid_sample(self.vol, g, mode="bilinear", padding_mode="border", align_corners=True)
        return o[0, :, :, :, 0].permute(1, 0, 2)

    def turn(self, p):
        """Rotates coordinates so that grid axes do not show."""
        x, y, z = p[:, :1], p[:, 1:2], p[:, 2:]
        return torch.cat([.36 * x + .48 * y - .8 * z, .6 * y - .8 * x, .48 * x + .64 * y + .6 * z], 1)

    def fbm(self, p, octaves=3, gain=0.5):
        """Sum of octaves of noise, each turned against the last -> [B,4,N]."""
        a, s, o = 1.0, 0.0, 0.0
        for _ in range(octaves):
            o = o + a * self.noise(p)
            s += a
            a *= gain
            p = self.turn(p) * 2.03 + 11.7
        return o * (1.3 / s)

    def cell_random(self, cell):
        """Eight random numbers of an integer cell, cell [B,3,N] -> [B,8,N]."""
        c = torch.remainder(cell, 64.0)
        idx = ((c[:, 0] * 64 + c[:, 1]) * 64 + c[:, 2]).long()
        return self.table[idx].permute(0, 2, 1)

    def particles(self, q, dens, rmin, rmax, power=2.0, stretch=None):
        """Balls hashed in unit cells. Returns d/r (large if none), r, randoms, cell."""
        cell = torch.floor(q)
        rnd = self.cell_random(cell)
        r = rmin + (rmax - rmin) * rnd[:, 3:4] ** power
        c = r + rnd[:, :3] * (1 - 2 * r)
        v = q - cell - c
        if stretch is not None:
            v = v * stretch
        d = v.pow(2).sum(1, keepdim=True).sqrt()
        gone = (rnd[:, 4:5] > dens).float()
        return d / r + gone * 99, r, rnd, cell

    def worley(self, q, jitter=0.9):
        """First and second nearest distance and the nearest cell's random, 3D."""
        cell = torch.floor(q)
        f = q - cell
        f1 = torch.full_like(q[:, :1], 9.0)
        f2 = f1.clone()
        rid = torch.zeros_like(f1)
        for k in range(27):
            o = q.new_tensor([k // 9 - 1, k // 3 % 3 - 1, k % 3 - 1]).view(1, 3, 1)
            rnd = self.cell_random(cell + o)
            d = (o + 0.5 + (rnd[:, :3] - 0.5) * jitter - f).pow(2).sum(1, keepdim=True)
            near = d < f1
            f2 = torch.where(near, f1, torch.minimum(f2, d))
            rid = torch.where(near, rnd[:, 5:6], rid)
            f1 = torch.where(near, d, f1)
        return f1.sqrt(), f2.sqrt(), rid

    def worley2(self, q, jitter=0.9):
        """Flat Worley cells: q [B,2,N]."""
        q = torch.cat([q, torch.zeros_like(q[:, :1])], 1)
        cell = torch.floor(q)
        f = (q - cell)[:, :2]
        f1 = torch.full_like(q[:, :1], 9.0)
        f2 = f1.clone()
        rid = torch.zeros(q.shape[0], 3, q.shape[2], device=q.device)
        for k in range(9):
            o = q.new_tensor([k // 3 - 1, k % 3 - 1, 0]).view(1, 3, 1)
            rnd = self.cell_random(cell + o)
            d = (o[:, :2] + 0.5 + (rnd[:, :2] - 0.5) * jitter - f).pow(2).sum(1, keepdim=True)
            near = d < f1
            f2 = torch.where(near, f1, torch.minimum(f2, d))
            rid = torch.where(near, rnd[:, 4:7], rid)
            f1 = torch.where(near, d, f1)
        return f1.sqrt(), f2.sqrt(), rid


def field(device):
    """The shared Field of a device."""
    key = str(device)
    if key not in _STORE:
        _STORE[key] = Field(device)
    return _STORE[key]


def sstep(a, b, x):
    """Smooth step from a to b (numbers or tensors)."""
    t = ((x - a) / (b - a)).clamp(0, 1)
    return t * t * (3 - 2 * t)


def length(v):
    """Length of vectors [B,3,N]."""
    return (v[:, :1] * v[:, :1] + v[:, 1:2] * v[:, 1:2] + v[:, 2:] * v[:, 2:]).sqrt()


def mix(a, b, t):
    """Linear blend."""
    return a + (b - a) * t
