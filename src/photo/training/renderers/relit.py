"""
Soap made of photographs and lit by photographs: its colours and grain are read from textures (material/, SOURCES.md), its light is what a photograph round it would send, blurred
for what is dull and sharper for what shines. Bodies are rounded, of many outlines; flaws are grown (grown_flaws.py). draw() is the way in.
"""
import math
import os
import sys

import torch
import torch.nn.functional as F

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from grown_canvas import FINDINGS, bordered, flawed, planned, seen_of  # noqa: E402, F401
from grown_fields import SIDE, Dice, blobs, fade, grid, marked, mix, noise, strewn  # noqa: E402
from grown_light import phone  # noqa: E402
from grown_soap import colours  # noqa: E402
from relit_shape import SPAN, bulge, frames, outlines, slopes, swept  # noqa: E402
from tx_bank import bank  # noqa: E402

# Pictures at a time; bars on one at most.
CHUNK, BARS = 12, 3
# How many pictures have a second flaw, and show no soap.
SECOND, NOTHING = 0.3, 0.05


def photographs(d, held, names=None):
    """Some of the bank's pictures, 0 to 1."""
    places = torch.arange(len(held), device=d.device) if names is None else torch.as_tensor(names, device=d.device)
    one = places[torch.randint(0, len(places), (d.n,), device=d.device, generator=d.generator)]
    return held[one].float() / 255 if held.dtype == torch.uint8 else held[one]


def laid(d, picture, at, small, large):
    """A picture over places [n,2,h,w], turned, `small` to `large` of them to 1, mirrored beyond."""
    turn, scale = d.r(0, 2 * math.pi), d.log(small, large)
    x, y = at[:, :1] * scale, at[:, 1:] * scale
    at = torch.cat([x * turn.cos() + y * turn.sin() + d.r(-1, 1), y * turn.cos() - x * turn.sin() + d.r(-1, 1)], 1)
    return F.grid_sample(picture, at.permute(0, 2, 3, 1), mode="bilinear", padding_mode="reflection", align_corners=False)


def soap(d, store, two):
    """A canvas of soap: colour, share of the second colour, how far below the border, that colour, and whether its pattern deceives."""
    u, v = grid(d)
    at = torch.cat(torch.broadcast_tensors(u * 2 - 1, v * 2 - 1), 1).expand(d.n, 2, SIDE, SIDE)
    held = colours(d)
    kind = torch.where(two, 1 + d.pick([0.5, 0.5]), d.pick([0.5, 0.12, 0.22, 0.16])).view(-1, 1, 1, 1)
    # 1: two portions with a border read from a picture's rows; 2: as light and dark lie in a photograph; 3: the photograph's own colours, paled.
    wave = laid(d, photographs(d, store.soft, store.g["cloud"]), at * torch.tensor([1.0, 0.2], device=d.device).view(1, 2, 1, 1), 0.2, 0.8) - 0.5
    straight = (v - 0.5) + wave * d.r(0, 0.12) + d.r(-0.12, 0.12)
    field = laid(d, photographs(d, store.rank, store.g["swirl"]), at, 0.2, 0.6)
    field = F.avg_pool2d(F.pad(field, (3, 3, 3, 3), mode="replicate"), 7, 1)
    level = torch.where(kind == 1, straight, (field - d.r(0.35, 0.65)) * 0.3)
    share = fade(level, -d.log(0.002, 0.02), d.log(0.002, 0.02)) * ((kind == 1) | (kind == 2))
    apart = (held[:, 0] - held[:, 1]).abs().mean(1, keepdim=True) < 0.15
    other = torch.where(two.view(-1, 1, 1, 1) & apart, held[:, 0] * d.r(0.1, 0.75, 3), held[:, 1])
    third = fade(field, 0.75, 0.78) * (kind == 2) * d.often(0.5) * (~two.view(-1, 1, 1, 1))
    own = laid(d, photographs(d, store.tex, store.g["swirl"]), at, 0.2, 0.6) ** 2.2
    colour = mix(mix(held[:, 0], other, share), held[:, 2], third)
    colour = torch.where(kind == 3, mix(own, held[:, 0].expand_as(own), d.r(0.2, 0.8)), colour)
    grain = laid(d, photographs(d, store.hp, store.g["surf"]), at, 0.3, 1.5)
    colour = colour * (1 + grain * d.r(0, 0.05))
    return colour.clamp(0.004, 0.97), share, level, other, (kind.view(-1) != 0), grain * d.log(1e-4, 1.5e-3)


class Surroundings:
    """A photograph as the light of a place: what arrives on a dull surface, and what a glossy one mirrors, by normal [n,3,h,w]."""

    def __init__(self, d, store):
        seen = photographs(d, store.big) ** 2.2 * d.r(0.6, 1.4)
        # A window or lamp in it.
        u, v = torch.meshgrid(torch.linspace(-1, 1, 48, device=d.device), torch.linspace(-1, 1, 64, device=d.device), indexing="ij")
        cx, cy = d.r(-0.7, 0.7), d.r(-0.7, 0.7)
        pane = fade(torch.maximum((v - cx).abs() / d.r(0.08, 0.4), (u - cy).abs() / d.r(0.08, 0.4)), 1.15, 0.85)
        small = F.interpolate(seen, (48, 64), mode="area") + pane * d.r(2, 12) * (1 + d.r(-0.25, 0.25, 3))
        self.sharp = small
        grey = small.mean((2, 3), keepdim=True)
        wide = F.interpolate(F.avg_pool2d(F.pad(small, (16, 16, 16, 16), mode="reflect"), 33, 1), (48, 64), mode="bilinear", align_corners=False)
        self.dull = mix(grey, wide, d.r(0.5, 1.3)).clamp(min=0.02)
        self.key = torch.cat([cx, cy], 1)
        self.shine, self.rough = d.r(0.01, 0.12) * d.often(0.8), d.often(0.5)

    def at(self, held, normal):
        return F.grid_sample(held, normal[:, :2].permute(0, 2, 3, 1) * 0.95, mode="bilinear", padding_mode="border", align_corners=False)

    def on(self, colour, normal, gloss):
        mirrored = normal * 2 * normal[:, 2:]
        mirrored = torch.cat([mirrored[:, :2], mirrored[:, 2:] - 1], 1)
        soft = F.avg_pool2d(F.pad(self.sharp, (3, 3, 3, 3), mode="reflect"), 7, 1)
        shine = self.shine * (1 + gloss).clamp(0, 2.5) * (0.6 + 2 * (1 - normal[:, 2:]).clamp(0, 1) ** 3)
        return colour * self.at(self.dull, normal) + shine * self.at(mix(self.sharp, soft, self.rough), mirrored)


def ground(d, store, h, w):
    """What the bars lie on: a texture, or a whole photograph."""
    y, x = torch.meshgrid(torch.linspace(-1, 1, h, device=d.device), torch.linspace(-w / h, w / h, w, device=d.device), indexing="ij")
    at = torch.stack([x, y]).expand(d.n, 2, h, w)
    depth = 1 - d.r(0, 0.5) * at[:, 1:]
    flat = laid(d, photographs(d, store.tex, store.g["table"]), at / depth, 0.4, 1.4)
    whole = F.interpolate(photographs(d, store.big), (h, w), mode="bilinear", align_corners=False)
    even = d.r(0.1, 0.95, 3) * (0.95 + 0.05 * laid(d, photographs(d, store.soft), at, 0.2, 0.5))
    kind = d.pick([0.6, 0.12, 0.28]).view(-1, 1, 1, 1)
    return torch.where(kind == 0, flat, torch.where(kind == 1, whole, even)) ** 2.2 * d.r(0.5, 1.1)


def poured(d, store, wanted):
    """Canvases without and with flaws, each colour, relief and gloss; the flaws' maps; the outline of the bars; and whether anything deceives [n]."""
    colour, share, level, other, deceives, height = soap(d, store, bordered(wanted))
    outline = outlines(d)
    at = torch.arange(SIDE, device=d.device).float().add(0.5).div(SIDE).sub(0.5).div(SPAN)
    canvas = torch.stack(torch.meshgrid(at, at, indexing="xy")).expand(d.n, 2, SIDE, SIDE)
    face = fade(outline(canvas), -0.01, 0.01)
    # Seeds, a pressed ring or drops, on purpose.
    put = d.pick([0.75, 0.1, 0.08, 0.07]).view(-1, 1, 1, 1)
    seeds = fade(blobs(marked(*strewn(d, d.log(20, 150), face)), d.r(0.005, 0.009), 1.0), 0.2, 0.5) * (put == 1)
    colour = mix(colour, d.r(0.01, 0.5) * torch.ones_like(colour), seeds)
    ring = 1 - fade((outline(canvas) - d.r(0.1, 0.4)).abs(), 0.02, 0.04)
    height = height + ring * (put == 2) * d.r(-0.008, 0.008) + blobs(marked(*strewn(d, d.r(10, 80))), d.r(0.006, 0.014), 1.0) * 0.008 * (put == 3)
    *after, maps = flawed(d, colour, height, wanted, lambda _: face, face, (share, level, other))
    return (colour, height, torch.zeros_like(height)), after, maps, outline, deceives | (put.view(-1) > 0)


class Pose:
    """One bar on the picture: where it covers, where its side shows below, where it keeps the light off, and its surface by its canvas."""

    def __init__(self, frame, outline, swell, light, there, thick, hard):
        place, self.own, px = frame
        within = outline(place)
        self.cover = fade(within * px, -0.7, 0.7) * there
        reach = px.mean((2, 3), keepdim=True) * thick
        self.body = swept(self.cover, torch.zeros_like(reach), reach)
        cast = swept(self.cover, -light.key[:, :1] * reach * hard, (0.3 - light.key[:, 1:]) * reach * hard)
        for wide in (10, 6):
            cast = F.avg_pool2d(F.pad(cast, (wide,) * 4, mode="replicate"), 2 * wide + 1, 1)
        self.cast, self.place, self.light = cast, place * SPAN * 2, light
        self.form = slopes(swell(within) * self.cover, px)

    def read(self, x):
        return F.grid_sample(x, self.place.permute(0, 2, 3, 1), mode="bilinear", padding_mode="border", align_corners=False)

    def surface(self, colour, height, gloss):
        lean = torch.cat([F.pad(height[..., 1:] - height[..., :-1], (0, 1, 0, 0)), F.pad(height[..., 1:, :] - height[..., :-1, :], (0, 0, 0, 1))], 1) * SIDE
        s = self.read(lean)
        spun = torch.cat([s[:, :1] * self.own.cos() - s[:, 1:] * self.own.sin(), s[:, :1] * self.own.sin() + s[:, 1:] * self.own.cos()], 1)
        normal = torch.cat([-self.form - spun, torch.ones_like(self.cover)], 1)
        return self.light.on(self.read(colour), normal / normal.norm(dim=1, keepdim=True), self.read(gloss))


def drawn(n, size, seed, device, clean):
    d, store, (h, w) = Dice(n, seed, device), bank(str(device)), size
    wanted = planned(d, clean, SECOND)
    nothing = d.r().view(-1) < NOTHING
    wanted[nothing] = -1
    without, with_, maps, outline, tricky = poured(d, store, wanted)
    light, table, swell = Surroundings(d, store), ground(d, store, h, w), bulge(d)
    upward = torch.zeros(n, 3, h, w, device=d.device)
    upward[:, 2] = 1
    clean_one = flawed_one = light.on(table, upward, -torch.ones(n, 1, 1, 1, device=d.device))
    bar, marks = torch.zeros_like(clean_one[:, :1]), torch.zeros(n, 2, h, w, device=d.device)
    many = d.pick([0.65, 0.2, 0.15]).view(-1, 1, 1, 1)
    thick, deep, hard, side_light, alike = d.r(0, 0.35), d.r(0.3, 0.85), d.r(1, 3), d.r(0.35, 0.9), d.often(0.5)
    # The furthest first: what is nearer hides it.
    for k, frame in reversed(list(enumerate(frames(d, h, w, BARS)))):
        pose = Pose(frame, outline, swell, light, (many >= k).float() * (~nothing).float().view(-1, 1, 1, 1), thick, hard)
        same = 1.0 if k == 0 else alike
        before = pose.surface(*without)
        after = mix(before, pose.surface(*with_), same)
        wall = pose.read(without[0]).mean((2, 3), keepdim=True) * light.at(light.dull, upward) * side_light
        clean_one, flawed_one = (mix(mix(x * (1 - pose.cast * deep * (1 - pose.body)), wall, pose.body), top, pose.cover) for x, top in ((clean_one, before), (flawed_one, after)))
        bar = torch.maximum(bar * (1 - pose.body), pose.body)
        marks = marks * (1 - pose.body) + pose.read(maps) * pose.cover * same
    develop, grain = phone(d, h, w), d.r(0, 0.03)
    image = develop(flawed_one)
    kept, present = seen_of(wanted, marks, image, develop(clean_one), grain)
    image = (image + d.normal(3, h, w) * grain).clamp(0, 1)
    bar = (bar > 0.5).float()
    return {"image": image, "bar": bar, "maps": kept * bar, "present": present, "tricky": tricky.float(), "kind": nothing.float()}


@torch.no_grad()
def draw(n, size, seed, device, clean=0.4):
    """See ../README.md: image, bar, maps, present, tricky and kind."""
    parts = [drawn(min(CHUNK, n - at), size, seed * 1013 + at * 5 + 3, device, clean) for at in range(0, n, CHUNK)]
    return {key: torch.cat([part[key] for part in parts]) for key in parts[0]}
