"""Light on what the camera meets, and what a phone makes of it."""
import math

import torch
import torch.nn.functional as F

from grown_fields import fade
from grown_scene import FAR, met


def lights(d):
    """A window or lamp, and what comes from all around: directions [n,3,1,1] and colours."""
    high, around = d.r(0.3, 1.35), d.r(0, 2 * math.pi)
    key = torch.cat([high.cos() * around.cos(), high.sin(), high.cos() * around.sin()], 1)
    warm = d.r(-0.3, 0.35)
    tint = torch.cat([1 + warm, torch.ones_like(warm), 1 - warm], 1)
    cool = d.r(-0.2, 0.2)
    around_tint = torch.cat([1 - cool, torch.ones_like(cool), 1 + cool], 1)
    return {"key": key, "strength": tint * d.r(0.5, 1.3), "sky": around_tint * d.r(0.25, 0.8), "wide": d.r(0.02, 0.3),
            "wrap": d.r(0, 0.35), "gloss": d.r(0.02, 0.5) * d.often(0.75), "sharp": d.log(6, 90), "blind": d.often(0.15), "stripes": d.r(2, 9)}


def shadow(d, bodies, at, light, several=5):
    """How much of the key light reaches `at` [n,3,h,w]: 1 all."""
    out = 0
    for _ in range(several):
        towards = light["key"] + d.normal(3, 1, 1) * light["wide"]
        towards = towards / towards.norm(dim=1, keepdim=True)
        start = at + towards * 2e-3
        free = torch.ones_like(at[:, :1])
        for body in bodies:
            free = free * (met(body, start, towards.expand_as(at))[0] > FAR / 2).float()
        out = out + free / several
    return out


def shaded(light, colour, normal, relief, towards, lit, gloss, near):
    """
    Light that comes back [n,3,h,w]. `normal` with the relief's lean worked in by `relief` [n,3,h,w], `lit` the key light that arrives, `gloss` [n,1,h,w] more or less,
    `near` how much of the sky other things hide.
    """
    bent = normal + relief
    bent = bent / bent.norm(dim=1, keepdim=True)
    facing = ((bent * light["key"]).sum(1, keepdim=True) + light["wrap"]) / (1 + light["wrap"])
    half = light["key"] - towards
    half = half / half.norm(dim=1, keepdim=True)
    shine = light["gloss"] * (1 + gloss).clamp(0, 2.5)
    spark = (bent * half).sum(1, keepdim=True).clamp(0, 1) ** light["sharp"] * shine * light["sharp"] / 40
    sky = light["sky"] * (0.55 + 0.45 * bent[:, 1:2]) * near
    mirrored = towards - 2 * (towards * bent).sum(1, keepdim=True) * bent
    pane = fade(mirrored[:, 1:2], 0.2, 0.6) * 0.25 * shine * (1 - (towards * bent).sum(1, keepdim=True).abs()).clamp(0, 1) ** 2
    return colour * (light["strength"] * facing.clamp(min=0) * lit + sky) + (spark * lit + pane) * light["strength"]


def leaning(height, place):
    """The relief `height` [n,1,S,S], in parts of the canvas, as slopes along and down at `place` [n,2,h,w] (-1 to 1)."""
    across = height.shape[-1]
    du = F.pad(height[..., 1:] - height[..., :-1], (0, 1, 0, 0)) * across
    dv = F.pad(height[..., 1:, :] - height[..., :-1, :], (0, 0, 0, 1)) * across
    return F.grid_sample(torch.cat([du, dv], 1), place.permute(0, 2, 3, 1), mode="bilinear", padding_mode="border", align_corners=False)


def phone(d, h, w):
    """What a phone does, as one function of light [n,3,h,w] that does the same each time but for its grain."""
    white = torch.exp(d.r(-0.12, 0.12, 3))
    bright, toe, rich = d.r(0.75, 1.15), d.r(0.85, 1.25), d.r(0.75, 1.3)
    soft, falls = d.log(0.35, 1.4), d.r(0, 0.35)
    y, x = torch.meshgrid(torch.linspace(-1, 1, h, device=d.device), torch.linspace(-1, 1, w, device=d.device), indexing="ij")
    dim = 1 - falls * (x**2 + y**2).view(1, 1, h, w) / 2
    level = {}

    def blurred(x):
        at = torch.arange(-4, 5, device=x.device).float().view(1, 1, -1)
        bell = torch.exp(-(at**2) / (2 * soft.view(-1, 1, 1) ** 2))
        bell = bell / bell.sum(2, keepdim=True)
        n = len(x)
        flat = x.reshape(1, n * 3, h, w)
        bell = bell.repeat_interleave(3, 0)
        flat = F.conv2d(F.pad(flat, (4, 4, 0, 0), mode="replicate"), bell.view(n * 3, 1, 1, 9), groups=n * 3)
        flat = F.conv2d(F.pad(flat, (0, 0, 4, 4), mode="replicate"), bell.view(n * 3, 1, 9, 1), groups=n * 3)
        return flat.view(n, 3, h, w)

    def developed(x):
        x = blurred(x * dim)
        if "is" not in level:
            level["is"] = 0.5 * x.mean((1, 2, 3), keepdim=True) + 0.25 * x.flatten(1).quantile(0.95, 1).view(-1, 1, 1, 1)
        x = x / level["is"].clamp(min=1e-3) * 0.33 * bright * white
        x = (1 - torch.exp(-x.clamp(min=0) * 1.6)) ** (toe / 2.2) * 1.06
        grey = x.mean(1, keepdim=True)
        return (grey + (x - grey) * rich).clamp(0, 1)

    return developed
