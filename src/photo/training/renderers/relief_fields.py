"""Random numbers and scalar fields: dice, solid noise, scattered dots, cells, blurs."""
import math
import torch
import torch.nn.functional as F


class Dice:
    """Per-picture random numbers as [n,1,1,1] tensors, from a seeded CPU generator."""

    def __init__(self, n, seed, device):
        self.n, self.device = n, device
        self.gen = torch.Generator().manual_seed(seed % (2 ** 62))

    def raw(self, *shape):
        """Uniform 0..1 tensor of any shape on the device."""
        return torch.rand(*shape, generator=self.gen).to(self.device)

    def u(self, lo, hi):
        """Uniform between lo and hi."""
        return lo + (hi - lo) * self.raw(self.n, 1, 1, 1)

    def log(self, lo, hi):
        """Log-uniform between lo and hi."""
        return torch.exp(self.u(math.log(lo), math.log(hi)))

    def coin(self, p):
        """1.0 with chance p, else 0.0."""
        return (self.raw(self.n, 1, 1, 1) < p).float()

    def pick(self, k):
        """A whole number 0..k-1 as float."""
        return torch.floor(self.u(0, k - 1e-4))

    def of(self, values):
        """One of the listed values, each equally likely."""
        t = torch.tensor(values, device=self.device)
        return t[self.pick(len(values)).long()]


def smooth(lo, hi, x):
    """Smoothstep with tensor or number limits."""
    t = ((x - lo) / (hi - lo)).clamp(0, 1)
    return t * t * (3 - 2 * t)


def lerp(a, b, t):
    """Linear mix."""
    return a + (b - a) * t


def make_volume(n, gen_raw):
    """Periodic lattice of random values for solid noise, [n,4,17,17,17]."""
    v = gen_raw(n, 4, 16, 16, 16) * 2 - 1
    return F.pad(v, (0, 1, 0, 1, 0, 1), mode="circular") * 1.5


def noise(vol, x, y, z):
    """Smooth solid noise, four channels, about -1..1."""
    g = torch.stack([x, y, z], -1)[:, 0].unsqueeze(1)
    g = torch.remainder(g, 16.0)
    i = torch.floor(g)
    f = g - i
    g = (i + f * f * (3 - 2 * f)) / 8.0 - 1.0
    return F.grid_sample(vol, g, mode="bilinear", padding_mode="border", align_corners=True)[:, :, 0]


def fbm(vol, x, y, z, octaves=4, gain=0.5):
    """Fractal sum of solid noise, four channels, about -1..1."""
    out, amp = 0, 1.0
    for k in range(octaves):
        s = 2.03 ** k
        a = 0.7 * k
        c, n = math.cos(a), math.sin(a)
        out = out + amp * noise(vol, (x * c - y * n) * s + 3.7 * k, (x * n + y * c) * s + 1.3 * k, z * s + 5.1 * k)
        amp *= gain
    return out


def look(table, i, j, salt):
    """Hash a lattice cell to four random numbers: table [n,4,T]."""
    n, _, t = table.shape
    k = torch.remainder(i * 61 + j * 823 + salt, t).long().reshape(n, 1, -1)
    r = torch.gather(table, 2, k.expand(n, 4, k.shape[2]))
    return r.reshape(n, 4, *i.shape[2:])


def dots(table, u, v, freq, density, rmin, rmax, salt=0, jitter=1.0, skew=2.0):
    """Scattered discs. Radii in cell units (< .5). Returns score (<1 inside), dx, dy in radii, two randoms."""
    x, y = u * freq, v * freq
    ix, iy = torch.floor(x), torch.floor(y)
    best = torch.full_like(x, 1e3)
    bx, by, ra, rb = torch.zeros_like(x), torch.zeros_like(x), torch.zeros_like(x), torch.zeros_like(x)
    for dj in (-1, 0, 1):
        for di in (-1, 0, 1):
            r = look(table, ix + di, iy + dj, salt)
            rad = rmin + (rmax - rmin) * r[:, 2:3] ** skew
            dx = (ix + di + 0.5 + (r[:, 0:1] - 0.5) * jitter - x) / rad
            dy = (iy + dj + 0.5 + (r[:, 1:2] - 0.5) * jitter - y) / rad
            s = torch.sqrt(dx * dx + dy * dy) + 1e3 * (r[:, 3:4] >= density).float()
            m = s < best
            best = torch.where(m, s, best)
            bx, by = torch.where(m, dx, bx), torch.where(m, dy, by)
            ra = torch.where(m, r[:, 2:3], ra)
            rb = torch.where(m, (r[:, 3:4] * 7.31 + r[:, 0:1] * 3.7) % 1.0, rb)
    return best, -bx, -by, ra, rb


def voronoi(table, u, v, freq, salt=0):
    """Cell pattern: nearest distance, distance to the border between cells, cell's random."""
    x, y = u * freq, v * freq
    ix, iy = torch.floor(x), torch.floor(y)
    f1 = torch.full_like(x, 9.0)
    f2 = torch.full_like(x, 9.0)
    rr = torch.zeros_like(x)
    for dj in (-1, 0, 1):
        for di in (-1, 0, 1):
            r = look(table, ix + di, iy + dj, salt)
            d = torch.sqrt((ix + di + r[:, 0:1] - x) ** 2 + (iy + dj + r[:, 1:2] - y) ** 2)
            m = d < f1
            f2 = torch.where(m, f1, torch.minimum(f2, d))
            rr = torch.where(m, r[:, 2:3], rr)
            f1 = torch.where(m, d, f1)
    return f1, f2 - f1, rr


def gauss(x, sigma, half):
    """Gaussian blur of [n,c,h,w] with a sigma per picture [n,1,1,1] in pixels; fixed half-width."""
    n, c, h, w = x.shape
    s = sigma.reshape(n, 1).clamp(min=0.05)
    k = torch.arange(-half, half + 1, device=x.device, dtype=x.dtype)
    k = torch.exp(-0.5 * (k / s) ** 2)
    k = (k / k.sum(1, keepdim=True)).repeat_interleave(c, 0).reshape(n * c, 1, 1, -1)
    y = F.pad(x.reshape(1, n * c, h, w), (half, half, half, half), mode="replicate")
    y = F.conv2d(y, k, groups=n * c)
    y = F.conv2d(y, k.transpose(2, 3), groups=n * c)
    return y.reshape(n, c, h, w)


def wide_blur(x, sigma):
    """Large blur done at quarter size; sigma in full-size pixels."""
    s = F.avg_pool2d(x, 4, ceil_mode=True)
    s = gauss(s, sigma / 4, 9)
    return F.interpolate(s, size=x.shape[2:], mode="bilinear", align_corners=False)
