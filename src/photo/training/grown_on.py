"""Flaws that are grown (renderers/grown_flaws.py) on clean bars of any renderer, so that how a flaw looks does not go with how a bar is drawn."""
import torch
import torch.nn.functional as F

from grown_fields import SIDE, Dice, fade, mix, spread
from grown_flaws import Face
from grown_flaws_body import BY_NUMBER
from views import boxes

# Part of the clean pictures that are given a flaw where they are kept.
GROWN = 0.35
# The canvas is so much wider than the square round the bars: what is grown knows 0.62 to 0.76 of it as soap.
ROOM = 1.45
# Bars that take less of the picture are left as they are; change (sRGB, 0 to 1) from which a mark can be seen; part of the picture; strength times reach in pixels.
LEAST_BAR, SEEN, LEAST, FORCE = 0.03, 0.04, 1e-4, 0.35


def canvas_places(middle, half, turn, size):
    """Where in a picture of `size` (h, w) each place of the canvas is, and the other way round: grids for grid_sample."""
    n, (h, w) = len(middle), size
    at = (torch.arange(SIDE, device=middle.device).float() + 0.5) / SIDE * 2 - 1
    v, u = torch.meshgrid(at, at, indexing="ij")
    c, s = turn.cos().view(n, 1, 1), turn.sin().view(n, 1, 1)
    reach = (half * ROOM).view(n, 1, 1)
    x = middle[:, 0].view(n, 1, 1) + (u * c - v * s) * reach
    y = middle[:, 1].view(n, 1, 1) + (u * s + v * c) * reach
    there = torch.stack([x / w * 2 - 1, y / h * 2 - 1], -1)
    px, py = (torch.arange(w, device=middle.device).float() + 0.5).view(1, 1, w), (torch.arange(h, device=middle.device).float() + 0.5).view(1, h, 1)
    dx, dy = (px - middle[:, 0].view(n, 1, 1)) / reach, (py - middle[:, 1].view(n, 1, 1)) / reach
    back = torch.stack(torch.broadcast_tensors(dx * c + dy * s, dy * c - dx * s), -1)
    return there, back


def relief_lit(d, height):
    """What relief does to light from one side: more or less of it [n,1,S,S]."""
    if not torch.is_tensor(height):
        return 1.0
    du = F.pad(height[..., 1:] - height[..., :-1], (0, 1, 0, 0)) * SIDE
    dv = F.pad(height[..., 1:, :] - height[..., :-1, :], (0, 0, 0, 1)) * SIDE
    towards = d.r(0, 6.283)
    lean = du * towards.cos() + dv * towards.sin()
    return (1 - lean * d.r(0.25, 0.8)).clamp(0.25, 1.9) / (1 + 0.3 * (du**2 + dv**2)).sqrt()


def grown(image, bar, dice):
    """
    Each picture [n,3,h,w] with a flaw on its bars [n,1,h/2,w/2]. Returns it, the flaw's map [n,1,h/2,w/2], its number [n] and whether it can be seen [n].
    """
    n, _, h, w = image.shape
    middle, half = boxes(bar)
    middle, half = middle * 2, (half * 2).clamp(min=16)
    mask = F.interpolate(bar, scale_factor=2.0, mode="bilinear", align_corners=False)
    there, back = canvas_places(middle, half, dice.r(0, 6.283), (h, w))
    linear = image.clamp(0, 1) ** 2.2
    cut = F.grid_sample(torch.cat([linear, mask], 1), there, mode="bilinear", padding_mode="border", align_corners=False)
    inside = cut[:, 3:]
    # What of it is light: its spread brightness over a reflectance that is guessed.
    near = torch.full((n, 1, 1, 1), 0.05, device=image.device)
    bright = cut[:, :3].mean(1, keepdim=True)
    light = spread(bright * inside, near).clamp(min=1e-4) / spread(inside, near).clamp(min=1e-3) / dice.r(0.3, 0.75)
    light = torch.maximum(light, cut[:, :3].amax(1, keepdim=True) * 0.9).clamp(min=0.01)
    colour = (cut[:, :3] / light).clamp(0.004, 1)
    numbers = torch.tensor(list(BY_NUMBER), device=image.device)[dice.pick([1.0] * len(BY_NUMBER))]
    ratio, where, new = torch.ones_like(colour), torch.zeros_like(inside), colour.clone()
    for k, flaw in BY_NUMBER.items():
        i = (numbers == k).nonzero().view(-1)
        if len(i):
            part = dice.of(len(i))
            change = flaw(Face(part, colour[i], inside[i], inside[i]), part.r(0.25, 1) ** 0.7)
            after = torch.nan_to_num(change.colour).clamp(0.002, 1.2) * relief_lit(part, change.height)
            new[i], where[i] = after, change.where
            ratio[i] = after / colour[i]
    read = lambda x: F.grid_sample(x, back, mode="bilinear", padding_mode="border", align_corners=False)
    whole = read(torch.cat([ratio, new * light, where], 1))
    times, painted, found = whole[:, :3], whole[:, 3:6], whole[:, 6:] * mask
    after = mix(linear * times, painted, fade(times.amax(1, keepdim=True), 1.3, 2.5))
    after = mix(linear, after, mask).clamp(1e-6, 1) ** (1 / 2.2)
    change = (after - image).abs().amax(1, keepdim=True)
    clear = F.max_pool2d((F.avg_pool2d(change, 3, 1, 1) > SEEN).float(), 13, 1, 6)
    found = found * clear
    pixels = (found > 0.3).float().sum((1, 2, 3))
    force = (change * found).sum((1, 2, 3)) / found.sum((1, 2, 3)).clamp(min=1) * found.sum((1, 2, 3)).sqrt()
    seen = (pixels > LEAST * h * w) & (force > FORCE) & (bar.mean((1, 2, 3)) > LEAST_BAR)
    return after, F.avg_pool2d(found, 2), numbers, seen


def with_flaws_grown(batch, generator, findings):
    """The batch of pictures as bytes (pool.as_bytes), some of its clean ones with a flaw."""
    labels = batch["labels"]
    clean = (labels[:, :findings].sum(1) == 0) & (labels[:, findings] == 0)
    some = (clean & (torch.rand(len(labels), device=generator.device, generator=generator) < GROWN)).nonzero().view(-1)
    if not len(some):
        return batch
    dice = Dice(len(some), 0, generator.device)
    dice.generator = generator
    after, found, numbers, seen = grown(batch["image"][some].float() / 255, batch["bar"][some].float() / 255, dice)
    some, after, found, numbers = some[seen], after[seen], found[seen], numbers[seen]
    as_byte = lambda x: (torch.nan_to_num(x).clamp(0, 1) * 255 + 0.5).to(torch.uint8)
    kept = {key: part.clone() for key, part in batch.items()}
    kept["image"][some], kept["parts"][some] = as_byte(after), 0
    kept["parts"][some, 0] = as_byte(found)[:, 0]
    slots = kept["which"].shape[1]
    kept["which"][some] = ((numbers.view(-1, 1) + torch.arange(slots, device=numbers.device)) % findings).to(torch.uint8)
    kept["labels"][some, numbers] = 1
    return kept
