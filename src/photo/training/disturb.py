"""What another renderer, lens or camera would have done otherwise, and pictures too poor to read."""
import math

import torch
import torch.nn.functional as F

# Blur as a share of the bar's width, as a standard deviation: from here on nothing small is left, up to here all is well.
# The smallest flaws are 0.01 wide.
POOR_BLUR, GOOD_BLUR = 0.026, 0.012
# The brightest twentieth of a picture, and grain, likewise.
POOR_LIGHT, GOOD_LIGHT = 0.2, 0.33
POOR_GRAIN, GOOD_GRAIN = 0.17, 0.1
# Of so many pictures of a batch one is made poor, or nearly.
ONE_IN = 7


def chance(n, device, generator, low=0.0, high=1.0, width=1):
    return low + (high - low) * torch.rand((n, width), device=device, generator=generator)


def log_chance(n, device, generator, low, high):
    return torch.exp(chance(n, device, generator, math.log(low), math.log(high)))


def field(n, side, device, generator, low, high):
    """Smooth noise about -1 to 1 over a square [n,1,side,side], with `low` to `high` bumps across."""
    grid = torch.randn((n, 1, 24, 24), device=device, generator=generator)
    at = torch.linspace(-1, 1, side, device=device)
    y, x = torch.meshgrid(at, at, indexing="ij")
    reach = (log_chance(n, device, generator, low, high) / 24).view(n, 1, 1)
    shift = chance(n, device, generator, -0.5, 0.5, 2).view(n, 2, 1, 1) * (1 - reach.view(n, 1, 1, 1))
    places = torch.stack([x * reach + shift[:, 0], y * reach + shift[:, 1]], -1)
    return F.grid_sample(grid, places, mode="bicubic", padding_mode="reflection", align_corners=True)


def swirled(x, bar, generator):
    """
    Colours poured in on purpose, in some pictures: lines between the bands of a swirl, or its bands dyed, over the bar
    [n,1,H,W]. Lines have another hue or are much paler or darker than the soap; what is translucent keeps its hue.
    """
    n, device, side = x.shape[0], x.device, x.shape[-1]
    r = lambda low, high, width=1: chance(n, device, generator, low, high, width).view(n, -1, 1, 1)
    level = field(n, side, device, generator, 1.2, 6) * r(0.6, 1.6) + field(n, side, device, generator, 2, 12) * r(0, 0.35)
    at = level * r(0.6, 2.2) + r(0, 1)
    within = at - torch.floor(at)
    steep = F.pad((at[..., 1:] - at[..., :-1]).abs(), (0, 1, 0, 0)) + F.pad((at[..., 1:, :] - at[..., :-1, :]).abs(), (0, 0, 0, 1))
    width = r(0.004, 0.03) * side
    line = (1.5 + width / 2 - (torch.minimum(within, 1 - within) / steep.clamp(min=1e-3))).clamp(0, 1)
    even = torch.cat([r(0, 1), r(0, 1), r(0, 1)], 1)
    grey = r(0, 1)
    colour = torch.where(r(0, 1) < 0.35, grey.expand_as(even) ** 0.5, even)
    drawn = x + (colour - x) * line * r(0.3, 1)
    soft = (within / r(0.02, 0.5)).clamp(0, 1)
    step = (torch.floor(at).remainder(2) * 2 - 1) * (2 * soft - 1)
    dyed = x * torch.exp(step * r(-0.35, 0.35, 3))
    which = r(0, 1)
    changed = torch.where(which < 0.12, drawn, torch.where(which < 0.24, dyed, x))
    return x + (changed - x) * bar


def blurred(x, generator, widths):
    """Out of focus, smeared by a hand or softened, each by its own measure; returns it and that measure in bar widths."""
    n, _, side, _ = x.shape
    device = x.device
    r = lambda low, high: chance(n, device, generator, low, high).view(n, 1, 1)
    measure = log_chance(n, device, generator, 0.006, 0.11)
    sigma = (measure * widths.view(n, 1)).clamp(0.3, side / 9).view(n, 1, 1)
    # A length that transforms fast.
    room = -(-side // 6 // 32) * 32
    full = side + 2 * room
    at = torch.arange(full, device=device).float()
    at = torch.minimum(at, full - at) * torch.where(at > full / 2, -1.0, 1.0)
    y, z = at.view(1, -1, 1), at.view(1, 1, -1)
    bell = torch.exp(-(y**2 + z**2) / (2 * sigma**2))
    disc = ((2 * sigma - (y**2 + z**2).sqrt()) * 1.5 + 0.5).clamp(0, 1)
    angle = r(0, math.pi)
    along, across = z * torch.cos(angle) + y * torch.sin(angle), y * torch.cos(angle) - z * torch.sin(angle)
    smear = ((1.73 * sigma - along.abs()) + 0.5).clamp(0, 1) * torch.exp(-(across**2) / (2 * (0.12 * sigma + 0.5) ** 2))
    kind = r(0, 1)
    kernel = torch.where(kind < 0.35, bell, torch.where(kind < 0.7, disc, smear))
    kernel = kernel / kernel.sum((1, 2), keepdim=True)
    wide = F.pad(x, (room,) * 4, mode="replicate")
    seen = torch.fft.irfft2(torch.fft.rfft2(wide) * torch.fft.rfft2(kernel).unsqueeze(1), s=(full, full))
    return seen[..., room:-room, room:-room], measure[:, 0]


def brightest(x):
    """The brightest twentieth of each picture: 0 black, 1 white."""
    small = F.avg_pool2d(x, 4).amax(1).flatten(1)
    return small.kthvalue(int(0.95 * small.shape[1]), dim=1).values


def cast(x, generator):
    """Colour cast, tone, light that falls off, and now and then one tone curve a channel."""
    n, device, side = x.shape[0], x.device, x.shape[-1]
    r = lambda low, high, width=1: chance(n, device, generator, low, high, width).view(n, -1, 1, 1)
    x = x.clamp(0, 1) ** torch.exp(r(-0.45, 0.45)) * torch.exp(r(-0.2, 0.2, 3)) * torch.exp(r(-0.25, 0.15))
    mean = x.mean((1, 2, 3), keepdim=True)
    x = torch.where(r(0, 1) < 0.5, mean + (x - mean) * torch.exp(r(-0.4, 0.35)), x)
    # Another sensor's colours: each channel sees a little of the others.
    mixed = torch.einsum("nij,njhw->nihw", torch.eye(3, device=device) + 0.07 * torch.randn((n, 3, 3), device=device, generator=generator), x)
    x = torch.where(r(0, 1) < 0.3, mixed, x)
    curve = 1 + 0.25 * torch.sin(x * 3.1416) * r(-1, 1, 3)
    x = torch.where(r(0, 1) < 0.3, x * curve, x)
    fall = torch.exp(field(n, side, device, generator, 0.5, 2) * r(0, 0.25))
    x = torch.where(r(0, 1) < 0.35, x * fall, x)
    grey = x.mean(1, keepdim=True)
    return grey + (x - grey) * r(0.45, 1.6)


def evened(x, generator):
    """As a phone evens out light and dark parts, and sharpens what it has, with halos; each in some pictures."""
    n, device, side = x.shape[0], x.device, x.shape[-1]
    r = lambda low, high: chance(n, device, generator, low, high).view(n, 1, 1, 1)
    light = F.avg_pool2d(x.clamp(0, 1).mean(1, keepdim=True), 8)
    wide = F.avg_pool2d(light, side // 48 * 2 + 1, 1, side // 48, count_include_pad=False)
    gain = ((light.mean((2, 3), keepdim=True) + 0.1) / (wide + 0.1)) ** (r(0, 0.6) * (r(0, 1) < 0.25))
    x = x * F.interpolate(gain, scale_factor=8.0, mode="bilinear", align_corners=False)
    soft = F.avg_pool2d(F.pad(x, (3, 3, 3, 3), mode="replicate"), 7, 1)
    return x + (x - soft) * r(0.3, 1.3) * (r(0, 1) < 0.2)


def resampled(x, generator):
    """Kept with fewer pixels and brought back, a third of the batch by one measure; the smallest marks are left."""
    n, side = len(x), x.shape[-1]
    count = n // 3
    if count == 0:
        return x
    some = torch.rand(3, device="cpu")
    small = max(32, int(side * (0.5 + 0.45 * float(some[0]))))
    at = int((n - count) * float(some[1]))
    part = F.interpolate(x[at : at + count], (small, small), mode="bilinear", align_corners=False, antialias=bool(some[2] < 0.6))
    part = F.interpolate(part, (side, side), mode="bicubic" if some[2] < 0.4 else "bilinear", align_corners=False)
    return torch.cat([x[:at], part, x[at + count :]])


def packed(x, generator):
    """Blocks of 8 x 8 kept coarsely, as a file of poor quality does; only part of the batch."""
    n, _, h, w = x.shape
    device = x.device
    k = torch.arange(8, device=device).float()
    basis = torch.cos((2 * k.view(1, -1) + 1) * k.view(-1, 1) * math.pi / 16) * 0.5
    basis = torch.cat([basis[:1] * math.sqrt(0.5), basis[1:]])
    blocks = x.view(n, 3, h // 8, 8, w // 8, 8)
    f = torch.einsum("ua,ncyaxb,vb->ncyuxv", basis, blocks, basis)
    coarse = log_chance(n, device, generator, 0.01, 0.09).view(n, 1, 1, 1, 1, 1)
    step = (1 + 0.4 * (k.view(8, 1, 1) + k.view(1, 1, 8))) * coarse
    f = torch.round(f / step) * step
    return torch.einsum("ua,ncyuxv,vb->ncyaxb", basis, f, basis).reshape(n, 3, h, w)


def disturbed(x, bar, widths, generator):
    """
    A view [n,3,side,side] as another hand or camera would have given it. `bar` is its mask at half the side, `widths` the
    bars' widths in pixels. Returns it, how poor it is (1 too poor, 0 good) and where that is beyond doubt.
    """
    n, device = x.shape[0], x.device
    r = lambda low, high, width=1: chance(n, device, generator, low, high, width).view(n, -1, 1, 1)
    x = swirled(x, F.interpolate(bar, scale_factor=2.0, mode="bilinear", align_corners=False), generator)
    x = cast(x, generator)
    soft = F.avg_pool2d(F.pad(x, (2, 2, 2, 2), mode="replicate"), 5, 1)
    x = x + (soft - x) * r(-0.5, 1.0) * (r(0, 1) < 0.4)
    x = resampled(evened(x, generator), generator)
    parts = list(x.split([n - 2 * (n // ONE_IN), n // ONE_IN, n // ONE_IN]))
    first, some = len(parts[0]), len(parts[1])
    # The second part is blurred, the last one dim; the rest is good.
    poor, good = torch.zeros(n, device=device), torch.ones(n, device=device)
    if some:
        parts[1], measure = blurred(parts[1], generator, widths[first : first + some])
        gain = log_chance(some, device, generator, 0.004, 0.3).view(-1, 1, 1, 1)
        parts[2] = (parts[2].clamp(0, 1) ** 2.2 * gain) ** (1 / 2.2)
        poor[first : first + some] = (measure > POOR_BLUR).float()
        good[first : first + some] = (measure < GOOD_BLUR).float()
    x = torch.cat(parts)
    light = brightest(x)
    grain = torch.cat([chance(n - some, device, generator, 0, 0.04) * (chance(n - some, device, generator) < 0.5),
                       chance(some, device, generator, 0, 0.24)])
    coarse = torch.randn(x.shape, device=device, generator=generator)
    mixed = (F.avg_pool2d(F.pad(coarse, (1, 1, 1, 1)), 3, 1) * 2.2)
    coarse = torch.where(r(0, 1) < 0.4, mixed, coarse)
    x = (x + coarse * grain.view(n, 1, 1, 1)).clamp(0, 1)
    kept = n // 3
    if kept:
        at = int(torch.randint(0, n - kept + 1, ()))
        x = torch.cat([x[:at], packed(x[at : at + kept], generator).clamp(0, 1), x[at + kept :]])
    too_poor = (poor > 0) | (light < POOR_LIGHT) | (grain[:, 0] > POOR_GRAIN)
    well = (good > 0) & (light > GOOD_LIGHT) & (grain[:, 0] < GOOD_GRAIN)
    return x, too_poor.float(), too_poor | well
