"""Random numbers, noise and scattered shapes for a whole batch at once."""
import math

import torch
import torch.nn.functional as F


def picture_plane(n, size, device):
    """Where each pixel lies, [n, 2, H, W]: x and y, -1 to 1 from top to bottom, x as far as the picture is wide."""
    height, width = size
    y, x = torch.meshgrid(torch.linspace(-1, 1, height, device=device), torch.linspace(-1, 1, width, device=device) * width / height, indexing="ij")
    return torch.stack([x, y]).expand(n, 2, height, width)


class Dice:
    """Everything random comes from here: one generator on the device, so that a seed draws the same pictures."""

    def __init__(self, n, device, seed):
        self.n, self.device = n, torch.device(device)
        self.generator = torch.Generator(device=self.device)
        self.generator.manual_seed(int(seed) & 0x7FFFFFFF)

    def uniform(self, low, high, *shape):
        """Uniform in [low, high); shape [n, 1, 1, 1] unless given."""
        shape = shape or (self.n, 1, 1, 1)
        return low + (high - low) * torch.rand(shape, generator=self.generator, device=self.device)

    def log_uniform(self, low, high, *shape):
        return torch.exp(self.uniform(math.log(low), math.log(high), *shape))

    def chance(self, p, *shape):
        return (self.uniform(0, 1, *shape) < p).float()

    def pick(self, weights, n=None):
        """One index a picture, by weight; int64 [n]."""
        w = torch.tensor(weights, dtype=torch.float32, device=self.device).expand(n or self.n, -1)
        return torch.multinomial(w, 1, generator=self.generator)[:, 0]

    def part(self, n):
        """The same stream of chances for `n` pictures of the batch."""
        other = object.__new__(Dice)
        other.n, other.device, other.generator = n, self.device, self.generator
        return other


def fade(x, low, high):
    """Smooth step from 0 at `low` to 1 at `high` (tensors or numbers)."""
    t = ((x - low) / (high - low)).clamp(0, 1)
    return t * t * (3 - 2 * t)


def noise(dice, p, frequency, octaves=1, roughness=0.5):
    """Smooth noise about 0 to 1 at places p [n,2,H,W]; `frequency` in bumps per unit, number or [n,1,1,1]."""
    total, weight, amplitude = 0, 0, 1.0
    n = p.shape[0]
    for octave in range(octaves):
        grid = torch.rand((n, 1, 64, 64), generator=dice.generator, device=p.device)
        offset = torch.rand((n, 2, 1, 1), generator=dice.generator, device=p.device) * 8
        at = (p * frequency * 2**octave + offset) / 32
        at = (at + 1).remainder(4) - 1
        at = torch.where(at > 1, 2 - at, at)  # mirrored, so that there are no seams
        value = F.grid_sample(grid, at.permute(0, 2, 3, 1), mode="bilinear", padding_mode="border", align_corners=True)
        total, weight = total + amplitude * value, weight + amplitude
        amplitude *= roughness
    value = total / weight
    return ((value - 0.5) * (1.25 + 0.3 * (octaves - 1)) + 0.5).clamp(0, 1)


def turned(p, angle):
    c, s = torch.cos(angle), torch.sin(angle)
    x, y = p[:, :1], p[:, 1:]
    return torch.cat([c * x + s * y, c * y - s * x], 1)


def scattered(dice, p, cell, fill, smallest, largest, squash=None):
    """
    Shapes scattered one to a cell. Returns (distance from the nearest shape's middle over its radius, the vector from
    that middle over its radius, a random number 0 to 1 per shape, radius), each [n,1 or 2,H,W]. `cell` in units of p,
    `fill` the share of cells that hold one, radii as shares of the cell. `squash` [n,1,1,1] > 1 lengthens along x.
    """
    n = p.shape[0]
    size = 48
    table = torch.rand((n, 5, size * size), generator=dice.generator, device=p.device)
    q = p / cell
    if squash is not None:
        q = torch.cat([q[:, :1] / squash, q[:, 1:]], 1)
    base = torch.floor(q)
    best = None
    for dy in (-1, 0, 1):
        for dx in (-1, 0, 1):
            shift = torch.tensor([dx, dy], device=p.device, dtype=p.dtype).view(1, 2, 1, 1)
            c = base + shift
            key = (c[:, :1].long() % size) * size + c[:, 1:].long() % size
            values = table.gather(2, key.flatten(2).expand(-1, 5, -1)).view(n, 5, *p.shape[2:])
            middle = c + 0.15 + 0.7 * values[:, :2]
            radius = smallest + (largest - smallest) * values[:, 2:3] ** 2
            vector = (q - middle) / radius
            far = vector.norm(dim=1, keepdim=True) + 1e3 * (values[:, 3:4] > fill)
            if best is None:
                best = [far, vector, values[:, 4:5], radius]
            else:
                closer = far < best[0]
                best = [torch.where(closer, new, old) for new, old in zip((far, vector, values[:, 4:5], radius), best)]
    return best[0], best[1], best[2], best[3] * cell


def cells(dice, p, cell):
    """Distance to the border between cells of scattered middles, in cells, 0 at a border; [n,1,H,W]."""
    n, size = p.shape[0], 48
    table = torch.rand((n, 2, size * size), generator=dice.generator, device=p.device)
    q = p / cell
    base = torch.floor(q)
    first = torch.full_like(q[:, :1], 9.0)
    second = first.clone()
    for dy in (-1, 0, 1):
        for dx in (-1, 0, 1):
            c = base + torch.tensor([dx, dy], device=p.device, dtype=p.dtype).view(1, 2, 1, 1)
            key = (c[:, :1].long() % size) * size + c[:, 1:].long() % size
            jitter = table.gather(2, key.flatten(2).expand(-1, 2, -1)).view(n, 2, *p.shape[2:])
            d = (q - c - jitter).norm(dim=1, keepdim=True)
            second = torch.where(d < first, first, torch.minimum(second, d))
            first = torch.minimum(first, d)
    return second - first


def softened(x, sigma):
    """Gaussian blur with its own sigma a picture, pixels [n,1,1,1], at most about 6."""
    radius = int(min(15, math.ceil(float(sigma.max()) * 2.5))) if sigma.numel() else 0
    if radius < 1:
        return x
    n, c, h, w = x.shape
    at = torch.arange(-radius, radius + 1, device=x.device, dtype=x.dtype)
    kernel = torch.exp(-0.5 * (at.view(1, -1) / sigma.view(-1, 1).clamp(min=0.05)) ** 2)
    kernel = (kernel / kernel.sum(1, keepdim=True)).repeat_interleave(c, 0)
    flat = x.reshape(1, n * c, h, w)
    flat = F.conv2d(F.pad(flat, (radius, radius, 0, 0), mode="replicate"), kernel.view(n * c, 1, 1, -1), groups=n * c)
    flat = F.conv2d(F.pad(flat, (0, 0, radius, radius), mode="replicate"), kernel.view(n * c, 1, -1, 1), groups=n * c)
    return flat.view(n, c, h, w)


def over(below, above, alpha):
    return below + (above - below) * alpha
