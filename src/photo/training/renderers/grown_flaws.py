"""
Flaws as what went on in the soap leaves them: clots that gathered, liquids that parted, skins that dried, buckled or tore, bubbles, blades. Each is a function of
a Face and a strength [n,1,1,1] from 0 to 1 and returns a Change over the canvas. Lengths are parts of the canvas, whose face is about 0.7 of it wide.
"""
import dataclasses
import math

import torch

from grown_fields import blobs, cells, cut, fade, grid, marked, mix, moved, noise, spread, strewn


@dataclasses.dataclass
class Face:
    """A canvas of soap: chances, its colour [n,3,S,S] linear, where soap is [n,1,S,S], 0 to 1, and where a top lies open to the air."""

    dice: object
    colour: torch.Tensor
    inside: torch.Tensor
    open: torch.Tensor


@dataclasses.dataclass
class Change:
    """What a flaw changes: colour it becomes [n,3,S,S], relief in parts of the canvas, gloss more or less, and where it is."""

    colour: torch.Tensor
    where: torch.Tensor
    height: object = 0.0
    gloss: object = 0.0


def patchy(face, low=0.35, bumps=(0.8, 3)):
    """Where a flaw is at all: everywhere, or in parts."""
    d = face.dice
    part = fade(noise(d, d.log(*bumps)), d.r(-1.2, 0.6), d.r(0.7, 1.4))
    return torch.where(d.often(low) > 0, torch.ones_like(part), part)


def pigment(face):
    """A colour a maker stirs in, linear [n,3,1,1]: related to the soap's or not."""
    d = face.dice
    own = face.colour.mean((2, 3), keepdim=True).clamp(0.01, 1)
    hue = torch.rand((d.n, 3, 1, 1), device=d.device, generator=d.generator) ** 2 * d.r(0.05, 0.6)
    earth = d.r(0.02, 0.3) * torch.cat([torch.ones_like(own[:, :1]), d.r(0.3, 0.8), d.r(0.05, 0.6)], 1)
    deep = own ** d.r(1.8, 4) * d.r(0.3, 1)
    kind = d.pick([0.35, 0.3, 0.35]).view(-1, 1, 1, 1)
    return torch.where(kind == 0, hue, torch.where(kind == 1, earth, deep)).clamp(0.004, 0.9)


def clots(face, strength, small, large, many):
    """Grains that gathered: chains of them about seeds, few large and many small, ragged. 0 to 1."""
    d = face.dice
    thick = torch.exp(noise(d, d.log(0.7, 4)) * d.r(0, 1.6)) * face.inside
    count = d.log(*many) * (0.35 + 0.65 * strength)
    places, there = strewn(d, count, thick)
    size = d.log(small, large) * (0.7 + 0.5 * strength)
    out = torch.zeros_like(face.inside)
    step = places
    chain = d.r(0, 2.2)
    for i, (part, share) in enumerate(((1.0, 0.25), (0.62, 0.55), (0.4, 1.0))):
        out = out + blobs(marked(step, there & (torch.rand(there.shape, device=d.device, generator=d.generator) < share)), size * part)
        step = step + torch.randn(step.shape, device=d.device, generator=d.generator) * (size * chain).view(-1, 1, 1)
    ragged = noise(d, 0.35 / size, 1.5) * d.r(0.02, 0.16)
    return fade(out + ragged * (out > 0.06), 0.38, d.r(0.5, 0.85)) * face.inside


def coloured_specks(face, strength):
    d = face.dice
    spots = clots(face, strength, 0.004, 0.018, (14, 170))
    colour = mix(face.colour, pigment(face), spots * d.r(0.6, 1))
    # Dye creeps out of some.
    halo = spread(spots, d.r(0.006, 0.02)) * d.r(0, 2.5) * d.often(0.35)
    colour = colour * torch.exp(-halo * (1 - pigment(face)) * 1.5)
    return Change(colour, spots, d.r(-0.001, 0.002) * spots)


def smears(face, strength):
    """Clots that a shear drew out: each point is what passed there, weaker the further it came."""
    d = face.dice
    spots = clots(face, strength, 0.006, 0.02, (4, 26))
    turn = d.r(0, 2 * math.pi) + noise(d, d.log(0.6, 2)) * d.r(0, 0.5)
    along, down = turn.cos(), turn.sin()
    reach = d.log(0.05, 0.35) * (0.5 + 0.5 * strength)
    out, steps = spots, 18
    for i in range(1, steps + 1):
        far = reach * i / steps
        drawn = moved(spots, -along * far, -down * far)
        out = torch.maximum(out, drawn * (1 - i / (steps + 1)) ** 0.6)
    thin = 0.75 + 0.25 * noise(d, d.log(6, 20), 2, stretch=4.0, turn=turn.mean((2, 3), keepdim=True))
    out = (fade(spread(out, 0.002), 0.05, 0.9) * thin).clamp(0, 1) * face.inside
    colour = face.colour * torch.exp(-out * (1 - pigment(face)) * d.log(0.7, 4))
    pale = mix(face.colour, 0.9 * torch.ones_like(face.colour), out * d.r(0.4, 0.9))
    return Change(torch.where(d.often(0.18) > 0, pale, colour), fade(out, 0.12, 0.45))


def white_specks(face, strength):
    d = face.dice
    round_ones = clots(face, strength, 0.004, 0.016, (14, 170))
    # Hard fat that set first: grains as of rice.
    turn = d.r(0, math.pi)
    rice = fade(noise(d, d.log(18, 42), 2.5, stretch=d.r(1.5, 3), turn=turn) * patchy(face, 0.6), 1.5 - 0.5 * strength, 2.2) * face.inside
    spots = torch.where(d.often(0.25) > 0, rice, round_ones)
    white = torch.cat([d.r(0.75, 0.98), d.r(0.72, 0.98), d.r(0.62, 0.97)], 1)
    return Change(mix(face.colour, white, spots * d.r(0.55, 1)), spots, spots * d.r(-0.001, 0.003))


def translucent(face, where, deep=(0.5, 1.3)):
    """Soap that lets light in: deeper and of more colour where it is coloured, greyish where it is white."""
    d = face.dice
    own = face.colour.clamp(0.004, 1)
    deeper = own ** d.r(1.15, 1.9) * d.r(0.5, 0.95) * torch.cat([d.r(0.9, 1.05), d.r(0.85, 1), d.r(0.65, 0.95)], 1)
    return mix(own, deeper, (where * d.r(*deep)).clamp(0, 1))


def veins(face, strength):
    """Where two liquids parted while it was hot: rivers along the borders, or the lesser liquid itself."""
    d = face.dice
    field = cut(d, "parted", d.r(0.35, 1.1))
    loose = noise(d, d.log(1.2, 5), 2.2)
    level = torch.where(d.often(0.5) > 0, field, loose) + noise(d, d.log(4, 14)) * d.r(0, 0.25)
    level = moved(level, noise(d, d.log(0.8, 3)) * d.r(0, 0.06), noise(d, d.log(0.8, 3)) * d.r(0, 0.06))
    width = d.r(0.12, 0.42)
    river = torch.exp(-((level / width) ** 2))
    pool = fade(level, 0.55, 0.9)
    out = torch.where(d.often(0.25) > 0, pool, river) * patchy(face, 0.5) * face.inside
    colour = translucent(face, out * (0.35 + 0.65 * strength))
    return Change(colour, fade(out, 0.25, 0.6), out * d.r(-0.002, 0.001), out * d.r(0, 0.6))


def crackle(face, strength):
    """A web of lines, first the wide ones between large cells, then finer within."""
    d = face.dice
    first, _ = cells(d, d.log(3.5, 9), d.r(0.6, 1))
    second, opened = cells(d, d.log(8, 18), d.r(0.6, 1))
    wide = d.r(0.05, 0.12) * (0.7 + 0.6 * strength) * (1 + 0.4 * noise(d, d.log(1, 5)))
    web = 1 - fade(first, wide * 0.4, wide)
    fine = (1 - fade(second, wide * 0.5, wide)) * (opened < d.r(0.1, 1)).float() * d.often(0.6)
    out = torch.maximum(web, fine * d.r(0.5, 1)) * patchy(face, 0.45) * face.inside
    clear = translucent(face, out * (0.45 + 0.55 * strength))
    pale = mix(face.colour, face.colour**0.5 * 1.05, out * d.r(0.3, 0.8))
    return Change(torch.where(d.often(0.15) > 0, pale, clear), fade(out, 0.2, 0.6), -out * d.r(0, 0.004), out * d.r(-0.2, 0.5))


def film(face, strength):
    """A bloom that the air lays down: thicker at edges and in drafts, fine grains, now and then wiped or run down in drops."""
    d = face.dice
    edge = 1 - spread(face.inside, d.r(0.03, 0.12)) / 0.95
    lie = noise(d, d.log(0.8, 6), d.r(1.3, 3)) + edge * d.r(-1.5, 4) + noise(d, d.log(15, 40), 1.5) * d.r(0, 0.5)
    thick = fade(lie, d.r(-1.1, 0.7) - 0.6 * strength, d.r(1, 2.2))
    grain = 0.8 + 0.25 * noise(d, d.log(50, 110), 1.2)
    u, v = grid(d)
    turn = d.r(0, math.pi)
    across = u * turn.cos() + v * turn.sin()
    wiped = fade((across - d.r(0.1, 0.7) + 0.02 * noise(d, d.log(2, 8))).abs(), d.r(0.02, 0.1), d.r(0.1, 0.14))
    thick = thick * mix(torch.ones_like(wiped), wiped, d.often(0.2))
    drops, there = strewn(d, d.r(0, 40))
    thick = thick * (1 - blobs(marked(drops, there), d.r(0.006, 0.02), 1.0).clamp(0, 1) * d.often(0.15))
    out = (thick * grain).clamp(0, 1) * face.inside
    white = torch.cat([d.r(0.72, 0.92), d.r(0.72, 0.92), d.r(0.7, 0.92)], 1)
    colour = mix(face.colour, white, out * (0.25 + 0.6 * strength) * d.r(0.7, 1))
    return Change(colour, fade(thick * face.inside, 0.2, 0.55), 0.0008 * out * noise(d, d.log(40, 90), 1.5), -out * d.r(0.2, 0.8))


def orange_spots(face, strength):
    """Fat that turns, from a few places outwards."""
    d = face.dice
    places, there = strewn(d, d.log(1.5, 16), torch.exp(noise(d, 2.0)) * face.inside)
    size = d.log(0.01, 0.05) * (0.6 + 0.6 * strength)
    out = torch.zeros_like(face.inside)
    for part, share in ((1.0, 0.5), (0.55, 0.8), (1.6, 0.15)):
        some = there & (torch.rand(there.shape, device=d.device, generator=d.generator) < share)
        out = torch.maximum(out, blobs(marked(places, some), size * part))
    out = (out * (1 + 0.3 * noise(d, 0.3 / size, 1.8))).clamp(0, 1) * face.inside
    rust = torch.cat([d.r(0.35, 0.75), d.r(0.1, 0.33), d.r(0.005, 0.08)], 1)
    stain = fade(out, 0.08, d.r(0.4, 0.95)) * (0.35 + 0.65 * strength)
    colour = mix(face.colour, torch.where(d.often(0.5) > 0, face.colour * rust / rust.amax(1, keepdim=True), rust), stain * d.r(0.7, 1))
    heart = fade(out, 0.6, 0.95) * d.r(0, 0.6)
    return Change(colour * (1 - heart), fade(out, 0.15, 0.45), 0.0, stain * d.r(0, 0.4))


def pinholes(face, strength):
    """Bubbles that were cut open or came up."""
    d = face.dice
    up = 1 - grid(d)[1]
    thick = torch.exp(noise(d, d.log(0.8, 4)) * d.r(0, 1.4) + up * d.r(-1, 3)) * face.inside
    places, there = strewn(d, d.log(10, 170) * (0.4 + 0.6 * strength), thick)
    size = d.log(0.0035, 0.014)
    out, deep = torch.zeros_like(face.inside), torch.zeros_like(face.inside)
    for part, share in ((0.6, 1.0), (1.0, 0.45), (1.9, 0.12)):
        some = there & (torch.rand(there.shape, device=d.device, generator=d.generator) < share)
        dome = blobs(marked(places, some), size * part, 1.0).clamp(0, 1)
        out, deep = torch.maximum(out, dome), torch.maximum(deep, dome * size * part)
    out, deep = out * face.inside, deep * face.inside
    dark = fade(out, 0.15, 0.9) * d.r(0.25, 0.75)
    return Change(face.colour * (1 - dark), fade(out, 0.05, 0.4), -deep * d.r(0.7, 1.6), -out * 0.5)
