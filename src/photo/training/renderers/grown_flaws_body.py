"""Flaws of the whole body or of its skin: heat, air that creeps in, dyes that creep out, blades, tears and dents; see grown_flaws.py."""
import math

import torch
import torch.nn.functional as F

from grown_fields import SIDE, cut, fade, grid, mix, moved, noise, spread
from grown_flaws import Change, coloured_specks, crackle, film, orange_spots, patchy, pinholes, smears, translucent, veins, white_specks


def warmth(inside, size):
    """How warm soap that heats itself gets while its border stays cool, 0 to 1: heat spread over the body, some of it lost beyond."""
    heat = inside
    for part in (0.5, 0.35, 0.25):
        heat = spread(heat, size * part) * inside
    return heat / heat.amax((2, 3), keepdim=True).clamp(min=1e-4)


def dark_centre(face, strength):
    d = face.dice
    shift = lambda x: moved(x, d.r(-0.06, 0.06), d.r(-0.06, 0.06))
    heat = shift(warmth(face.inside, d.r(0.22, 0.45))) + noise(d, d.log(0.8, 5)) * d.r(0, 0.05)
    bound = d.r(0.35, 0.75)
    soft = d.r(0.01, 0.14)
    heart = fade(heat, bound - soft, bound + soft) * face.inside
    rim = torch.exp(-(((heat - bound) / (0.02 + 0.3 * soft)) ** 2)) * d.often(0.35) * d.r(0.1, 0.4)
    own = face.colour.clamp(0.004, 1)
    deeper = own ** d.r(1.1, 1.8) * d.r(0.55, 0.95)
    colour = mix(own, deeper, heart * (0.4 + 0.6 * strength)) * (1 - rim * face.inside)
    return Change(colour, fade(heart, 0.2, 0.7), 0.0, heart * d.r(0, 0.3))


def browning(face, strength):
    """Air and light reach it from outside: brown at the rim, less the deeper."""
    d = face.dice
    reach = d.log(0.02, 0.12)
    depth = ((spread(face.inside, reach) - 0.5) * 2).clamp(0, 1)
    front = depth + noise(d, d.log(0.8, 6)) * d.r(0, 0.3)
    u, v = grid(d)
    turn = d.r(0, 2 * math.pi)
    side = fade((u - 0.5) * turn.cos() + (v - 0.5) * turn.sin() + 0 * front, -0.35, 0.1)
    rim = (1 - fade(front, d.r(0, 0.3), d.r(0.5, 1.05))) * torch.where(d.often(0.2) > 0, side, torch.ones_like(front)) * face.inside
    tan = torch.cat([d.r(0.3, 0.75), d.r(0.12, 0.45), d.r(0.02, 0.2)], 1)
    stained = torch.where(d.often(0.5) > 0, face.colour * tan / 0.8, mix(tan * 0.7, face.colour * tan, d.r(0, 0.6)))
    return Change(mix(face.colour, stained, rim * (0.4 + 0.6 * strength)), fade(rim, 0.25, 0.6))


def bled(face, strength, other, share):
    """Dye of `other` [n,3,1,1], which has `share` [n,1,S,S] of the soap, creeps into its neighbour by fingers."""
    d = face.dice
    fingers = moved(share, noise(d, d.log(3, 14)) * d.r(0, 0.03), noise(d, d.log(3, 14)) * d.r(0, 0.03))
    reach = d.log(0.015, 0.07) * (0.6 + 0.6 * strength)
    halo = (spread(fingers, reach) * d.r(1.2, 2.2)).clamp(0, 1) * (1 - share) * patchy(face, 0.6, (0.6, 2)) * face.inside
    dye = (other.clamp(0.01, 1) / other.amax(1, keepdim=True).clamp(min=0.02)).clamp(0.02, 1)
    dyed = mix(face.colour * dye ** d.r(0.7, 1.4), other.expand_as(face.colour), d.r(0.2, 0.8))
    colour = mix(face.colour, dyed, halo * d.r(0.6, 1))
    apart = (other - face.colour).abs().sum(1, keepdim=True)
    return Change(colour, fade(halo, 0.15, 0.5) * fade(apart, 0.06, 0.2))


def parted(face, strength, height):
    """Layers that no longer hold together along `height` [n,1,S,S], nought at their border, in parts of the canvas."""
    d = face.dice
    width = d.log(0.004, 0.014) * (0.6 + 0.6 * strength) * (1 + 0.5 * noise(d, d.log(1.5, 8)))
    reach = patchy(face, 0.5, (0.5, 1.6))
    wander = noise(d, d.log(2, 10)) * d.r(0, 0.008)
    out = (1 - fade((height + wander).abs(), width * reach - 0.003, width * reach + 0.002)) * (reach > 0.1) * face.inside
    return Change(face.colour * (1 - out * d.r(0.55, 0.96)), out, -out * d.r(0.004, 0.03))


def drag_lines(face, strength):
    """What a blade drags along: grooves and colour, all one way."""
    d = face.dice
    turn = torch.where(d.often(0.75) > 0, torch.where(d.often(0.5) > 0, d.r(-0.12, 0.12), math.pi / 2 + d.r(-0.12, 0.12)), d.r(0, math.pi))
    u, v = grid(d)
    across = (v - 0.5) * turn.cos() - (u - 0.5) * turn.sin()
    along = (u - 0.5) * turn.cos() + (v - 0.5) * turn.sin()
    across = across + along**2 * d.r(-0.2, 0.2)
    far = torch.arange(SIDE // 2 + 1, device=d.device).float().view(1, 1, 1, -1)
    rough = torch.fft.irfft(torch.fft.rfft(d.normal(1, 1, SIDE)) * (1 + (far / d.log(8, 60)) ** 2) ** -0.9, n=SIDE)
    rough = rough / rough.std(3, keepdim=True)
    place = ((across * 1.2).clamp(-0.99, 0.99)).squeeze(1)
    line = F.grid_sample(rough, torch.stack([place, torch.zeros_like(place)], -1), mode="bilinear", padding_mode="reflection", align_corners=False)
    sparse = fade(line, d.r(0.3, 1.3), d.r(1.5, 2.5))
    many = line * 0.4
    groove = torch.where(d.often(0.5) > 0, sparse, many) * patchy(face, 0.5, (0.5, 1.8)) * (0.4 + 0.6 * strength)
    dragged = sum(moved(face.colour, turn.cos() * far * s, turn.sin() * far * s) for far in (0.02, 0.05, 0.09) for s in (d.r(-1, 1),)) / 3
    colour = mix(face.colour, dragged, (groove.abs() * d.r(0.2, 1)).clamp(0, 1)) * (1 - groove * d.r(-0.25, 0.4)).clamp(0.3, 1.6)
    there = fade(spread(groove.abs(), 0.008), 0.06, 0.25) * face.inside
    return Change(mix(face.colour, colour, face.inside), there, -groove * d.r(0.001, 0.006) * face.inside)


def crack(face, strength):
    """A tear: a path that wanders about a line, wide in its middle, with a branch or two."""
    d = face.dice
    out, deep = torch.zeros_like(face.inside), torch.zeros_like(face.inside)
    main = torch.where(d.often(0.7) > 0, d.r(-0.3, 0.3), d.r(0, math.pi))
    u, v = grid(d)
    where = (spread(face.inside, 0.13) ** 2 * torch.exp(noise(d, 1.5) * 0.5)).flatten(1)
    pick = where.argmax(1).view(-1, 1, 1, 1)
    cu, cv = (pick % SIDE) / SIDE, (pick // SIDE) / SIDE
    for i in range(3):
        turn = main + (d.r(-1.1, 1.1) if i else 0)
        along, across = (u - cu) * turn.cos() + (v - cv) * turn.sin(), (v - cv) * turn.cos() - (u - cu) * turn.sin()
        rough = torch.fft.irfft(torch.fft.rfft(d.normal(1, 1, SIDE)) * (1 + (torch.arange(SIDE // 2 + 1, device=d.device) / d.log(1.5, 5)) ** 2) ** -0.95, n=SIDE)
        rough = rough / rough.std(3, keepdim=True) * d.r(0.008, 0.05)
        read = lambda x: F.grid_sample(x, torch.stack([along.squeeze(1) * 1.4, torch.zeros_like(along.squeeze(1))], -1), mode="bilinear", padding_mode="border", align_corners=False)
        off = across - read(rough) + read(rough[..., SIDE // 2 : SIDE // 2 + 1].expand(-1, -1, -1, SIDE)) * (i > 0)
        reach = d.r(0.15, 0.5) * (1.0 if i == 0 else 0.45)
        taper = (1 - ((along - (reach * 0.5 if i else 0)) / reach) ** 2).clamp(0, 1)
        width = d.log(0.004, 0.016) * (0.6 + 0.7 * strength) * taper * (1 + 0.4 * noise(d, d.log(4, 16))) * (1.0 if i == 0 else 0.6)
        there = 1.0 if i == 0 else d.often(0.35)
        open_ = (1 - fade(off.abs(), width * 0.55, width + 0.003)) * (taper > 0.02) * there
        out, deep = torch.maximum(out, open_), torch.maximum(deep, open_ * width)
    out = out * face.inside
    lip = spread(out, 0.012) * d.r(0, 0.02)
    return Change(face.colour * (1 - out * d.r(0.35, 0.92)), fade(out, 0.1, 0.5), lip - deep.clamp(min=0) * d.r(1.2, 2.5) * face.inside, -out * 0.4)


def wrinkles(face, strength):
    """A skin that buckled."""
    d = face.dice
    part = d.r(0.35, 1.2)
    fold = cut(d, "buckled", part)
    fold = moved(fold, noise(d, d.log(1, 4)) * d.r(0, 0.05), noise(d, d.log(1, 4)) * d.r(0, 0.05))
    sharp = torch.where(d.often(0.5) > 0, -fold.abs(), fold)
    there = patchy(face, 0.5, (0.6, 2)) * face.inside
    height = sharp * there * d.r(0.004, 0.01) * (0.5 + 0.7 * strength) * (part / 0.8)
    tone = 1 + fold * there * d.r(-0.08, 0.08)
    return Change(face.colour * tone, fade(there, 0.25, 0.6), height, there * d.r(-0.3, 0.3))


def dimples(face, strength):
    """Small round dents side by side, as bubbles between soap and mould leave."""
    d = face.dice
    across = d.log(12, 34)
    u, v = grid(d)
    u, v = torch.broadcast_tensors(u, v)
    x = u * across
    y = v * across + 0.5 * (x.floor() % 2) * d.often(0.5)
    flat = torch.rand((d.n, 3, 64 * 64), device=d.device, generator=d.generator)
    at = ((y.floor() % 64) * 64 + x.floor() % 64).long().flatten(1).unsqueeze(1).expand(-1, 3, -1)
    chance = flat.gather(2, at).view(d.n, 3, SIDE, SIDE)
    far = ((x % 1 - 0.5 - (chance[:, :1] - 0.5) * 0.35) ** 2 + (y % 1 - 0.5 - (chance[:, 1:2] - 0.5) * 0.35) ** 2).sqrt()
    wide = d.r(0.22, 0.38) * (0.7 + 0.6 * chance[:, 2:])
    there = patchy(face, 0.35, (0.6, 2.2))
    dent = (1 - (far / wide) ** 2).clamp(min=0) * (chance[:, 2:] < d.r(0.4, 1.1)).float() * fade(there, 0.3, 0.5) * face.inside
    deep = d.r(0.2, 0.5) * (0.5 + 0.6 * strength) / across
    area = fade(spread(dent, 0.6 / across), 0.04, 0.12) * fade(there, 0.3, 0.5) * face.inside
    return Change(face.colour * (1 - dent * d.r(0, 0.15)), area, -dent * deep * 0.4)


# In the order of ../../findings/ids.ts; bled colours and parted layers are told apart, since they need a border.
BY_NUMBER = {0: coloured_specks, 1: smears, 2: white_specks, 3: veins, 4: crackle, 5: film, 6: dark_centre, 7: orange_spots, 8: pinholes, 9: crack,
             10: browning, 12: drag_lines, 14: wrinkles, 15: dimples}
BLED, PARTED = 11, 13
