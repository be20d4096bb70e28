"""Shared tools: random draws, lattice noise, jittered cells, blur and colour."""
import math
import torch
import torch.nn.functional as F

FINDINGS = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
            "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
            "layer-gap", "wrinkled-top", "mould-dimples"]
TABLE = 64
VOLUME = 24


class Draws:
    """Seeded source of per-picture parameters; every result has the shape [n, 1, 1, 1]."""

    def __init__(self, seed, device):
        self.gen = torch.Generator().manual_seed(int(seed) % (2 ** 62))
        self.device = device
        self.field_gen = torch.Generator(device=device).manual_seed(int(seed) % (2 ** 62) + 1)

    def raw(self, *shape):
        return torch.rand(*shape, generator=self.gen).to(self.device, non_blocking=True)

    def field(self, *shape):
        """Standard normal numbers for whole pictures, drawn on the device itself."""
        return torch.randn(*shape, generator=self.field_gen, device=self.device)

    def normal(self, *shape):
        return torch.randn(*shape, generator=self.gen).to(self.device, non_blocking=True)

    def u(self, n, lo=0.0, hi=1.0, c=1):
        return lo + (hi - lo) * self.raw(n, c, 1, 1)

    def log(self, n, lo, hi):
        return lo * (hi / lo) ** self.raw(n, 1, 1, 1)

    def chance(self, n, p):
        return (self.raw(n, 1, 1, 1) < p).float()

    def pick(self, n, k):
        return (self.raw(n, 1, 1, 1) * k).long().clamp(max=k - 1)

    def weighted(self, n, weights):
        w = torch.tensor(weights, dtype=torch.float32).cumsum(0)
        r = torch.rand(n, generator=self.gen) * w[-1]
        return (r[:, None] > w[None]).sum(1).to(self.device, non_blocking=True).view(n, 1, 1, 1)


class Fields:
    """Random lattices shared by a batch: a periodic noise volume and a table of jittered sites."""

    def __init__(self, draws):
        v = draws.raw(1, 4, VOLUME, VOLUME, VOLUME) * 2 - 1
        v = torch.cat([v, v[:, :, :1]], 2)
        v = torch.cat([v, v[:, :, :, :1]], 3)
        self.volume = torch.cat([v, v[..., :1]], 4) * 1.45
        self.sites = draws.raw(8, TABLE * TABLE)

    def noise(self, p, octaves=1, gain=0.5):
        """Four independent fractal noise fields [n, 4, H, W] at the points p [n, 3, H, W]."""
        total, amp, norm = 0, 1.0, 0.0
        for o in range(octaves):
            q = p * (2.03 ** o) + 5.37 * o
            i = torch.floor(q)
            f = q - i
            f = f * f * (3 - 2 * f)
            c = (torch.remainder(i, VOLUME) + f) * (2.0 / VOLUME) - 1
            g = c.permute(0, 2, 3, 1)[None]
            s = F.grid_sample(self.volume, g, mode="bilinear", padding_mode="border", align_corners=True)[0]
            total = total + amp * s.permute(1, 0, 2, 3)
            norm += amp * amp
            amp *= gain
        return total / math.sqrt(norm)

    def noise2(self, uv, octaves=1, gain=0.5):
        """Noise over a face: uv [n, 2, H, W]."""
        return self.noise(torch.cat([uv, uv[:, :1] * 0 + 0.37], 1), octaves, gain)

    def _near(self, q):
        i = torch.floor(q)
        f = q - i
        base = torch.remainder(i, TABLE).long()
        for dy in (-1, 0, 1):
            for dx in (-1, 0, 1):
                k = torch.remainder(base[:, 1:2] + dy, TABLE) * TABLE + torch.remainder(base[:, :1] + dx, TABLE)
                yield k, self.sites[0][k] + dx - f[:, :1], self.sites[1][k] + dy - f[:, 1:2]

    def cells(self, q):
        """Distance to the nearest and second site and the nearest site's key; q in cell units."""
        d1 = torch.full_like(q[:, :1], 9.0)
        d2 = d1.clone()
        key = torch.zeros_like(d1, dtype=torch.long)
        for k, ox, oy in self._near(q):
            d = torch.sqrt(ox * ox + oy * oy)
            near = d < d1
            d2 = torch.where(near, d1, torch.minimum(d2, d))
            key = torch.where(near, k, key)
            d1 = torch.where(near, d, d1)
        return d1, d2, key

    def dots(self, q, keep, rlo, rhi, power=2.0, slim=0.0):
        """Signed distance to the nearest living dot, its radius, key and offset; lengths in cell units."""
        best = torch.full_like(q[:, :1], 9.0)
        rad = torch.full_like(best, 1.0)
        key = torch.zeros_like(best, dtype=torch.long)
        offx, offy = torch.zeros_like(best), torch.zeros_like(best)
        for k, ox, oy in self._near(q):
            r = rlo * (rhi / rlo) ** (self.sites[2][k] ** power)
            a = self.sites[4][k] * 6.2832
            ca, sa = torch.cos(a), torch.sin(a)
            e = 1 + slim * (0.4 + self.sites[5][k])
            d = torch.sqrt((ox * ca + oy * sa) ** 2 / e + (oy * ca - ox * sa) ** 2 * e) - r
            d = torch.where(self.sites[3][k] < keep, d, torch.full_like(d, 9.0))
            near = d < best
            best = torch.where(near, d, best)
            rad, key = torch.where(near, r, rad), torch.where(near, k, key)
            offx, offy = torch.where(near, ox, offx), torch.where(near, oy, offy)
        return best, rad, key, offx, offy


def smooth(x, lo, hi):
    """Smooth step from 0 at lo to 1 at hi (lo may exceed hi)."""
    t = ((x - lo) / (hi - lo)).clamp(0, 1)
    return t * t * (3 - 2 * t)


def length(x):
    """Euclidean length over axis 1, kept as one channel."""
    return (x * x).sum(1, keepdim=True).sqrt()


def mix(a, b, w):
    return a + (b - a) * w


def turn(uv, ang):
    """Rotate face coordinates by ang [n, 1, 1, 1]."""
    c, s = torch.cos(ang), torch.sin(ang)
    return torch.cat([uv[:, :1] * c + uv[:, 1:2] * s, uv[:, 1:2] * c - uv[:, :1] * s], 1)


def blur(x, sigma, reach=None):
    """Gaussian blur with a width per picture, as a sum of shifted copies."""
    n = x.shape[0]
    if not torch.is_tensor(sigma):
        sigma = torch.full((n, 1, 1, 1), float(sigma), device=x.device)
    r = reach or max(1, int(math.ceil(2.5 * float(sigma.max()))))
    k = torch.arange(-r, r + 1, device=x.device, dtype=x.dtype).view(1, -1)
    w = torch.exp(-0.5 * (k / sigma.view(n, 1).clamp(min=0.05)) ** 2)
    w = w / w.sum(1, keepdim=True)
    h, wd = x.shape[-2:]
    y = F.pad(x, (r, r, 0, 0), mode="replicate")
    x = sum(y[..., j:j + wd] * w[:, j].view(n, 1, 1, 1) for j in range(2 * r + 1))
    y = F.pad(x, (0, 0, r, r), mode="replicate")
    return sum(y[..., j:j + h, :] * w[:, j].view(n, 1, 1, 1) for j in range(2 * r + 1))


def wide_blur(x, sigma, factor=4, reach=8):
    """Large blur on a reduced grid; sigma in full-size pixels."""
    h, w = x.shape[-2:]
    y = F.avg_pool2d(x, factor, ceil_mode=True)
    y = blur(y, (sigma / factor).clamp(0.3, reach / 2.0), reach)
    return F.interpolate(y, size=(y.shape[-2] * factor, y.shape[-1] * factor), mode="bilinear",
                         align_corners=False)[..., :h, :w]


def to_linear(c):
    return torch.where(c <= 0.04045, c / 12.92, ((c.clamp(min=0) + 0.055) / 1.055) ** 2.4)


def to_srgb(c):
    c = c.clamp(0, 1)
    return torch.where(c <= 0.0031308, c * 12.92, 1.055 * c.clamp(min=1e-6) ** (1 / 2.4) - 0.055)


def hsv(h, s, v):
    """sRGB from hue, saturation, value; the channel axis is 1."""
    k = torch.cat([(h * 6 + o) % 6 for o in (5.0, 3.0, 1.0)], 1)
    return v - v * s * torch.minimum(k, 4 - k).clamp(0, 1)


def luma(x):
    return x[:, :1] * 0.2126 + x[:, 1:2] * 0.7152 + x[:, 2:3] * 0.0722


def deeper(alb, amount=1.0):
    """A deeper, more saturated version of a linear colour."""
    m = alb.mean(1, keepdim=True)
    return (alb + (alb - m) * 0.8 * amount).clamp(0.003, 1) * (1 - 0.62 * amount if not torch.is_tensor(amount)
                                                             else (1 - 0.62 * amount))
