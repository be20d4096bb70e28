"""What a bar is made of when nothing went wrong: its colours and where each lies."""
import torch

from bulk_fields import fade, noise, scattered, turned

PORTIONS = 6
SOLID, LAYERS, SWIRL, OMBRE, BLOBS, HALVES, TUNNELS, FEATHER = range(8)


def colours(dice, n):
    """Linear RGB of n soaps: cream, white, pastel, strong, earthy or black; [n, 3]."""
    kind = dice.pick([3, 1.5, 3, 3, 2, 0.8], n)
    hue = dice.uniform(0, 1, n, 1)
    wheel = (torch.cos(6.2832 * (hue + torch.tensor([[0.0, 1 / 3, 2 / 3]], device=dice.device))) + 1) / 2
    r = lambda low, high: dice.uniform(low, high, n, 1)
    warm = torch.cat([r(0.86, 0.96), r(0.78, 0.9), r(0.55, 0.82)], 1)
    white = r(0.86, 0.97) * torch.cat([r(0.98, 1), r(0.97, 1), r(0.93, 1)], 1)
    pastel = 1 - r(0.15, 0.45) * (1 - wheel) - r(0.02, 0.15)
    strong = r(0.35, 0.95) * (1 - r(0.6, 0.97) * (1 - wheel))
    earthy = r(0.25, 0.75) * torch.cat([r(0.9, 1), r(0.6, 0.85), r(0.35, 0.65)], 1)
    black = r(0.04, 0.22) * torch.cat([r(0.9, 1), r(0.9, 1), r(0.9, 1.05)], 1)
    table = torch.stack([warm, white, pastel, strong, earthy, black], 1).clamp(0.02, 0.98)
    return table[torch.arange(n, device=dice.device), kind] ** 2.2


def palettes(dice):
    """[n, 6, 3] linear; often near relatives, often one of them pale."""
    n = dice.n
    table = colours(dice, n * PORTIONS).view(n, PORTIONS, 3)
    related = dice.chance(0.4, n, 1, 1)
    kin = (table[:, :1] * dice.log_uniform(0.4, 1.8, n, PORTIONS, 1) + dice.uniform(0, 0.12, n, PORTIONS, 1)).clamp(0.01, 0.95)
    table = torch.where(related > 0, kin, table)
    pale = dice.chance(0.35, n, 1)
    table[:, 1] = table[:, 1] * (1 - pale) + pale * dice.uniform(0.7, 0.92, n, 1)
    return table


def design(dice, p, aspect):
    """
    Where each portion lies at places p [n,2,H,W] (bar widths are 2). Returns level (a number whose whole part is the
    portion), how many portions, kind [n] and `layered` [n].
    """
    n = dice.n
    kind = dice.pick([4, 3, 4, 1, 1.5, 0.7, 1, 1.2])
    count = (dice.uniform(2, 6.5) * torch.ones_like(aspect)).floor().clamp(2, 6)
    tilt = dice.uniform(-0.25, 0.25) + 1.5708 * dice.chance(0.15)
    turnedp = turned(p, tilt)
    wave = dice.uniform(0, 0.35) * dice.chance(0.7)
    wobble = (noise(dice, p, dice.log_uniform(0.6, 4), 2) - 0.5) * wave
    layers = (turnedp[:, 1:] / aspect.clamp(min=0.3) * 0.5 + 0.5 + wobble) * count
    warp = torch.cat([noise(dice, p, dice.log_uniform(0.5, 2), 2), noise(dice, p, dice.log_uniform(0.5, 2), 2)], 1) - 0.5
    swirled = turnedp + warp * dice.uniform(0.6, 2.6)
    swirl = noise(dice, swirled * torch.cat([dice.log_uniform(0.4, 1.5), dice.log_uniform(0.6, 3)], 1), 1.0, 1) * count * dice.uniform(1, 1.8)
    ombre = (turnedp[:, 1:] / aspect * 0.5 + 0.5) * count
    blobs = fade(noise(dice, p, dice.log_uniform(1.2, 4), 1), 0.5, 0.56) + fade(noise(dice, p, dice.log_uniform(1, 4), 1), 0.62, 0.68)
    halves = turnedp[:, :1] + 1.0 + wobble + dice.uniform(-0.4, 0.4)
    ring, _, which, _ = scattered(dice, p + warp * 0.3, dice.uniform(0.5, 1.1), 0.85, 0.25, 0.5)
    tunnels = torch.where(ring < 1, 1 + (which * 3).floor() + 0.5, torch.full_like(ring, 0.5))
    comb = torch.sin(p[:, :1] * dice.uniform(4, 14) + dice.uniform(0, 6)) * dice.uniform(0.1, 0.3)
    feather = (p[:, 1:] / aspect * 0.5 + 0.5 + comb + wobble) * count * 1.5
    fields = torch.stack([torch.full_like(layers, 0.5), layers, swirl, ombre, blobs, halves, tunnels, feather], 1)
    level = fields[torch.arange(n, device=p.device), kind]
    smooth = (kind == OMBRE).float().view(-1, 1, 1, 1)
    return level, count, kind, smooth


def painted(level, table, soft, smooth):
    """Colours [n,3,H,W] of levels with borders `soft` levels wide, and whole portion numbers [n,1,H,W]."""
    portion = torch.floor(level)
    within = level - portion
    width = torch.where(smooth > 0, torch.ones_like(soft), soft)
    blend = fade(within, 1 - width, torch.ones_like(width)) * 1.0
    here = lookup(table, portion)
    following = lookup(table, portion + 1)
    return here + (following - here) * blend, portion


def lookup(table, portion):
    n = table.shape[0]
    # There and back again: neighbours in level are neighbours in the table.
    index = (portion.long() % (2 * PORTIONS - 2))
    index = torch.where(index >= PORTIONS, 2 * PORTIONS - 2 - index, index)
    flat = index.view(n, 1, -1).expand(-1, 3, -1)
    return table.permute(0, 2, 1).gather(2, flat).view(n, 3, *portion.shape[2:])
