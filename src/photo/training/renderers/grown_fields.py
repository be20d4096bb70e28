"""Chance, noise, marks at points and simulated patterns over square canvases [n,1,SIDE,SIDE], for flaws that are grown as they come about."""
import functools
import math

import torch
import torch.nn.functional as F

# Canvases in pixels, and the fields that are simulated once and then cut from.
SIDE, TILE, KEPT = 256, 128, 16


class Dice:
    """Chances of a batch: each call gives [n,width,1,1]."""

    def __init__(self, n, seed, device):
        self.n, self.device = n, torch.device(device)
        self.generator = torch.Generator(device=self.device)
        self.generator.manual_seed(int(seed) % (2**63 - 1))

    def of(self, n):
        """The same chances for a part of the batch."""
        other = Dice.__new__(Dice)
        other.n, other.device, other.generator = n, self.device, self.generator
        return other

    def r(self, low=0.0, high=1.0, width=1):
        return low + (high - low) * torch.rand((self.n, width, 1, 1), device=self.device, generator=self.generator)

    def log(self, low, high, width=1):
        return torch.exp(self.r(math.log(low), math.log(high), width))

    def often(self, part):
        return (self.r() < part).float()

    def normal(self, *shape):
        return torch.randn((self.n, *shape), device=self.device, generator=self.generator)

    def pick(self, weights):
        """One of the weighted kinds for each: [n]."""
        parts = torch.tensor(weights, device=self.device, dtype=torch.float32)
        return torch.multinomial(parts, self.n, replacement=True, generator=self.generator)


def mix(a, b, part):
    return a + (b - a) * part


def fade(x, low, high):
    """0 below `low`, 1 above `high`, smooth between."""
    t = ((x - low) / (high - low + 1e-6)).clamp(0, 1)
    return t * t * (3 - 2 * t)


@functools.lru_cache(maxsize=8)
def waves(side, device):
    """Waves across [side, side // 2 + 1]: how many down, how many along, and both."""
    down = torch.fft.fftfreq(side, device=device).view(-1, 1) * side
    along = torch.fft.rfftfreq(side, device=device).view(1, -1) * side
    return down, along, (down**2 + along**2).sqrt()


def noise(dice, bumps, slope=2.5, side=SIDE, stretch=None, turn=None):
    """Noise of mean 0 and spread 1 with some `bumps` [n,1,1,1] across, the rougher the smaller `slope`; `stretch` times longer along `turn`."""
    down, along, far = waves(side, dice.device)
    if stretch is not None:
        a, b = along * turn.cos() + down * turn.sin(), down * turn.cos() - along * turn.sin()
        far = ((a * stretch) ** 2 + b**2).sqrt()
    amplitude = (1 + (far / bumps) ** 2) ** (-slope / 2 - 0.5)
    white = torch.fft.rfft2(dice.normal(1, side, side))
    out = torch.fft.irfft2(white * amplitude, s=(side, side))
    out = out - out.mean((2, 3), keepdim=True)
    return out / out.std((2, 3), keepdim=True).clamp(min=1e-6)


def grid(dice, side=SIDE):
    """Places across the canvas, 0 to 1: along, down [1,1,side,side]."""
    at = (torch.arange(side, device=dice.device).float() + 0.5) / side
    return at.view(1, 1, 1, -1), at.view(1, 1, -1, 1)


def moved(x, along, down):
    """`x` as it is found so far along and down (parts of the canvas)."""
    u, v = torch.broadcast_tensors(*[(torch.arange(x.shape[-1], device=x.device).float() + 0.5).view(s) / x.shape[-1] for s in ((1, 1, 1, -1), (1, 1, -1, 1))])
    places = torch.stack([(u + along).squeeze(1), (v + down).squeeze(1)], -1) * 2 - 1
    return F.grid_sample(x, places.expand(len(x), -1, -1, -1), mode="bilinear", padding_mode="reflection", align_corners=False)


def spread(x, size):
    """`x` diffused: a Gaussian of spread `size` [n,1,1,1] in parts of the canvas; its sum stays."""
    side = x.shape[-1]
    _, _, far = waves(side, x.device)
    return torch.fft.irfft2(torch.fft.rfft2(x) * torch.exp(-2 * (math.pi * size * far) ** 2), s=(side, side))


def blobs(points, size, hard=0.0):
    """A mark of height 1 at each of `points`: a bell of spread `size`, or with `hard` a dome of that radius."""
    side = points.shape[-1]
    at = torch.arange(side, device=points.device).float()
    at = torch.minimum(at, side - at) / side
    far = (at.view(1, 1, 1, -1) ** 2 + at.view(1, 1, -1, 1) ** 2).sqrt() / size
    kernel = mix(torch.exp(-(far**2) / 2), (1 - far**2).clamp(min=0).sqrt(), hard)
    return torch.fft.irfft2(torch.fft.rfft2(points) * torch.fft.rfft2(kernel), s=(side, side))


def strewn(dice, count, thick=None, most=240, side=SIDE):
    """`count` [n,1,1,1] points, where `thick` (any field, more is likelier) has them: their places [n,most,2] in parts of the canvas, and which are there."""
    n = dice.n
    if thick is None:
        places = torch.rand((n, most, 2), device=dice.device, generator=dice.generator)
    else:
        coarse = F.avg_pool2d(thick, 4).flatten(1) + 1e-6
        cell = torch.multinomial(coarse, most, replacement=True, generator=dice.generator)
        wide = side // 4
        places = torch.stack([cell % wide, cell // wide], -1).float()
        places = (places + torch.rand(places.shape, device=dice.device, generator=dice.generator)) / wide
    return places, torch.arange(most, device=dice.device).view(1, -1) < count.view(n, 1)


def marked(places, there, side=SIDE):
    """A canvas with 1 at each place."""
    n = len(places)
    cell = (places * side).long().clamp(0, side - 1)
    flat = torch.zeros(n, side * side, device=places.device)
    flat.scatter_add_(1, cell[..., 1] * side + cell[..., 0], there.float())
    return flat.clamp(max=1).view(n, 1, side, side)


def cells(dice, across, loose=0.9, side=SIDE):
    """Cells about points, `across` of them along: how far each place is from the border of its cell (in cells), and the cell's own chance."""
    u, v = grid(dice, side)
    bend = 0.35 / across
    u = (u + noise(dice, across * 0.7) * bend * dice.r(0, 0.7)) * across
    v = (v + noise(dice, across * 0.7) * bend * dice.r(0, 0.7)) * across
    u, v = torch.broadcast_tensors(u, v)
    own = torch.rand((dice.n, 3, 64, 64), device=dice.device, generator=dice.generator)
    flat = own.flatten(2)
    near = torch.full_like(u, 9.0)
    second, chance = near.clone(), torch.zeros_like(u)
    for dy in (-1, 0, 1):
        for dx in (-1, 0, 1):
            cx, cy = u.floor() + dx, v.floor() + dy
            at = (cy.remainder(64) * 64 + cx.remainder(64)).long().flatten(1).unsqueeze(1).expand(-1, 3, -1)
            jitter = flat.gather(2, at).view(dice.n, 3, side, side)
            far = ((cx + 0.5 + (jitter[:, :1] - 0.5) * loose - u) ** 2 + (cy + 0.5 + (jitter[:, 1:2] - 0.5) * loose - v) ** 2).sqrt()
            closer = far < near
            second = torch.where(closer, near, torch.minimum(second, far))
            chance = torch.where(closer, jitter[:, 2:], chance)
            near = torch.where(closer, far, near)
    return second - near, chance


@functools.lru_cache(maxsize=4)
def simulated(device):
    """
    Patterns that arise by themselves, [KEPT,1,TILE,TILE] each of spread 1, without borders: 'parted', two liquids that part
    (Cahn and Hilliard, J. Chem. Phys. 28, 1958), and 'buckled', a skin that is too wide for what it lies on (Swift and Hohenberg, Phys. Rev. A 15, 1977).
    """
    generator = torch.Generator(device=device)
    generator.manual_seed(7)
    down, along, far = waves(TILE, torch.device(device))
    start = torch.randn((KEPT, 1, TILE, TILE), device=device, generator=generator)
    some = torch.linspace(0, 1, KEPT, device=device).view(-1, 1, 1, 1)
    k2 = (far * 2 * math.pi / TILE) ** 2
    x = 0.1 * start + (some - 0.5) * 0.7
    for _ in range(300):
        x = torch.fft.irfft2((torch.fft.rfft2(x) - 0.4 * k2 * torch.fft.rfft2(x**3 - 3 * x)) / (1 + 0.4 * k2 * (2 + 1.2 * k2)), s=(TILE, TILE))
    parted = x
    bend = 1 + 0.3 * some ** 2 * (down**2 - along**2) / (far**2 + 1e-3)
    ring = (far / 12) ** 2
    x = 0.2 * start
    for _ in range(140):
        x = torch.fft.irfft2((torch.fft.rfft2(x) + 0.25 * torch.fft.rfft2(1.3 * x - x**3)) / (1 + 0.25 * ((1 - ring) ** 2 * 1.5 + 1.3 * (1 - 0.6 * bend))), s=(TILE, TILE))
    return {"parted": evened(parted), "buckled": evened(x)}


def evened(x):
    x = torch.nan_to_num(x) - torch.nan_to_num(x).mean((2, 3), keepdim=True)
    return x / x.std((2, 3), keepdim=True).clamp(min=1e-4)


def cut(dice, pattern, part, side=SIDE):
    """A piece of a simulated pattern, `part` [n,1,1,1] of its tile wide, turned."""
    held = simulated(str(dice.device))[pattern]
    tile = held[torch.randint(0, len(held), (dice.n,), device=dice.device, generator=dice.generator)]
    tile = torch.cat([torch.cat([tile, tile], 2)] * 2, 3)
    tile = torch.cat([torch.cat([tile, tile], 2)] * 2, 3)
    turn = dice.r(0, 2 * math.pi)
    u, v = grid(dice, side)
    u, v = torch.broadcast_tensors((u - 0.5) * part / 2, (v - 0.5) * part / 2)
    x, y = u * turn.cos() - v * turn.sin() + dice.r(-0.15, 0.15), u * turn.sin() + v * turn.cos() + dice.r(-0.15, 0.15)
    return F.grid_sample(tile, torch.stack([x.squeeze(1), y.squeeze(1)], -1), mode="bilinear", padding_mode="reflection", align_corners=False)
