"""What soap is on its canvas before anything goes wrong: colours, swirls and layers, and what is put on it on purpose."""
import math

import torch

from grown_fields import SIDE, blobs, cells, cut, fade, grid, marked, mix, moved, noise, strewn

PLAIN, LAYERS, SWIRL, HALVES, OMBRE, MARBLE = range(6)


def colours(d, count=4):
    """Soap colours, linear [n,count,3,1,1]: half of all bars are cream or white, colourants pale or deep."""
    out = []
    for _ in range(count):
        cream = d.r(0.55, 0.92) * torch.cat([torch.ones(d.n, 1, 1, 1, device=d.device), d.r(0.86, 1), d.r(0.58, 0.98)], 1)
        pale = mix(d.r(0.2, 0.9, 3), torch.ones(d.n, 3, 1, 1, device=d.device) * 0.8, d.r(0.2, 0.7))
        deep = d.r(0, 1, 3) ** 2 * d.r(0.15, 0.8) + 0.01
        earth = d.r(0.08, 0.5) * torch.cat([torch.ones(d.n, 1, 1, 1, device=d.device), d.r(0.5, 0.9), d.r(0.2, 0.75)], 1)
        kind = d.pick([0.36, 0.3, 0.2, 0.14]).view(-1, 1, 1, 1)
        out.append(torch.where(kind == 0, cream, torch.where(kind == 1, pale, torch.where(kind == 2, deep, earth))))
    return torch.stack(out, 1)


def poured(d, bordered):
    """
    A canvas of soap: its colour [n,3,S,S]; for flaws of borders the share of the second colour, how far a place is below the border,
    that colour; and whether its pattern deceives. `bordered` [n]: has to have two colours that meet.
    """
    u, v = grid(d)
    kind = d.pick([0.5, 0.12, 0.16, 0.06, 0.06, 0.1])
    kind = torch.where(bordered, torch.where(d.often(0.65).view(-1) > 0, LAYERS, SWIRL), kind).view(-1, 1, 1, 1)
    held = colours(d)
    turn = torch.where(d.often(0.7) > 0, d.r(-0.1, 0.1), d.r(-math.pi, math.pi))
    level = (v - 0.5) * turn.cos() + (u - 0.5) * turn.sin()
    wave = noise(d, d.log(0.8, 4)) * d.r(0, 0.03)
    border = level + wave + d.r(-0.12, 0.12)
    swirl = noise(d, d.log(1, 5), 3) * d.r(0.05, 0.25) + level * d.r(0, 1)
    swirl = moved(swirl, noise(d, d.log(1, 3)) * d.r(0, 0.08), noise(d, d.log(1, 3)) * d.r(0, 0.08))
    wisps = torch.where(d.often(0.4) > 0, cut(d, "parted", d.r(0.3, 0.8)) * 0.1, swirl)
    field = torch.where(kind == SWIRL, swirl, torch.where(kind == MARBLE, wisps, border))
    sharp = d.log(0.0015, 0.012)
    share = fade(field, -sharp, sharp)
    share = torch.where(kind == OMBRE, fade(border, -0.35, 0.35), share)
    second = fade(field - d.r(0.06, 0.16), -sharp, sharp) * (((kind == LAYERS) | (kind == SWIRL)) & (d.often(0.45) > 0)) * (~bordered.view(-1, 1, 1, 1))
    third = fade(-field - d.r(0.06, 0.16), -sharp, sharp) * (((kind == LAYERS) | (kind == SWIRL)) & (d.often(0.3) > 0)) * (~bordered.view(-1, 1, 1, 1))
    plain = kind == PLAIN
    share = torch.where(plain, torch.zeros_like(share), share)
    # Flaws of a border need colours that are apart.
    apart = (held[:, 0] - held[:, 1]).abs().mean(1, keepdim=True) < 0.15
    other = torch.where(bordered.view(-1, 1, 1, 1) & apart, held[:, 0] * torch.cat([d.r(0.1, 0.7), d.r(0.1, 0.7), d.r(0.1, 0.7)], 1), held[:, 1])
    colour = mix(mix(mix(held[:, 0], other, share), held[:, 2], second), held[:, 3], third)
    colour = colour * (1 + noise(d, d.log(2, 12)) * d.r(0, 0.035) + noise(d, d.log(30, 90), 1) * d.r(0, 0.02))
    deceives = ~plain.view(-1) & (kind.view(-1) != HALVES)
    return colour.clamp(0.004, 0.97), share, field, other, deceives


def put_on(d, colour, inside, which):
    """What is put on soap on purpose, by number `which` [n] (0 nothing): its colour and relief anew."""
    u, v = grid(d)
    of = lambda k: (which == k).float().view(-1, 1, 1, 1)
    height = torch.zeros_like(inside)
    strew = lambda low, high, size, hard=1.0: blobs(marked(*strewn(d, d.log(low, high), inside)), size, hard).clamp(0, 1) * inside
    # Seeds, oats and coffee, all of one kind and all over.
    seeds = fade(strew(25, 200, d.r(0.005, 0.009)), 0.2, 0.5)
    colour = mix(colour, d.r(0.01, 0.08) * torch.ones_like(colour), seeds * of(1))
    height = height + seeds * 0.002 * of(1)
    flakes, _ = cells(d, d.log(8, 16), 1.0)
    flakes = fade(flakes, 0.25, 0.4) * fade(noise(d, d.log(6, 12)), 1.0, 1.2) * inside
    colour = mix(colour, torch.cat([d.r(0.4, 0.75), d.r(0.3, 0.55), d.r(0.12, 0.35)], 1), flakes * of(2) * 0.9)
    height = height + flakes * 0.004 * of(2)
    # A line of mica or of charcoal between two portions; a sheen over all.
    line = torch.exp(-(((v - 0.5 + noise(d, d.log(0.8, 3)) * d.r(0.005, 0.03)) / d.r(0.002, 0.006)) ** 2)) * inside
    gold = torch.cat([d.r(0.2, 0.9), d.r(0.15, 0.7), d.r(0.02, 0.6)], 1) * torch.where(d.often(0.3) > 0, d.r(0.03, 0.1), torch.ones_like(height[:, :, :1, :1]))
    colour = mix(colour, gold, line * of(3) * d.r(0.6, 1))
    glitter = fade(noise(d, d.r(60, 110), 0.8), 2.0, 2.5) * inside
    colour = mix(colour, d.r(0.5, 1, 3), glitter * of(4))
    # A stamp: a ring and strokes, sunk or raised.
    far = ((u - 0.5) ** 2 + (v - 0.5) ** 2).sqrt()
    angle = torch.atan2(v - 0.5, u - 0.5)
    petals = d.r(3, 9).floor()
    rose = 1 - fade((far - d.r(0.06, 0.14) * (1 + 0.35 * torch.cos(angle * petals + d.r(0, 6)))).abs(), 0.004, 0.009)
    ring = 1 - fade((far - d.r(0.15, 0.22)).abs(), 0.004, 0.008)
    stamp = torch.maximum(rose, ring * d.often(0.6)) * inside
    height = height + stamp * d.r(-0.012, 0.008) * of(5)
    colour = mix(colour, gold, stamp * of(5) * d.often(0.25) * 0.8)
    # Petals and leaves, laid on.
    leaves = (1 - fade((cells(d, d.log(4, 9), 0.9)[0] - 0.75).abs(), 0.1, 0.25)) * fade(noise(d, d.log(2, 5)), 0.9, 1.2) * inside
    colour = mix(colour, d.r(0.05, 0.6, 3), leaves * of(6))
    height = height + leaves * 0.006 * of(6)
    # Dew: drops that are clear, with a light in each.
    drop = strew(20, 160, d.r(0.006, 0.016))
    colour = colour * (1 - 0.12 * fade(drop, 0, 0.3) * of(7))
    height = height + drop * 0.01 * of(7)
    # Peaks a spoon left.
    spoon = noise(d, d.log(2.5, 7), 3)
    height = height + (-spoon.abs() * d.r(0.006, 0.02) + noise(d, 14.0) * 0.001) * inside * of(8)
    return colour.clamp(0.003, 0.97), height


TRICKS = 8
