"""Light, lens, sensor and file: from linear colours to what a phone keeps."""
import math

import torch
import torch.nn.functional as F

from bulk_fields import fade, noise, over, softened


def lamp(dice):
    """Linear gains of the light as the camera balanced it; most cameras leave some of its cast."""
    warmth = dice.uniform(-0.35, 0.75) * dice.chance(0.8)
    green = dice.uniform(-0.08, 0.08)
    return torch.exp(torch.cat([0.45 * warmth, green, -0.8 * warmth], 1))


def light_field(dice, q):
    """How much light falls where: falling off, a shadow with an edge, leaves or blinds; [n,3,H,W]."""
    way = dice.uniform(0, 6.2832)
    slope = torch.exp((torch.cos(way) * q[:, :1] + torch.sin(way) * q[:, 1:]) * dice.uniform(0, 0.5))
    edge = torch.cos(way * 2) * q[:, :1] + torch.sin(way * 2) * q[:, 1:] - dice.uniform(-0.8, 0.8)
    cast = fade(edge, -dice.uniform(0.01, 0.4), 0.01)
    blotch = fade(noise(dice, q, dice.uniform(0.6, 2.5), 2), 0.45, 0.5 + dice.uniform(0.02, 0.3))
    blinds = fade(torch.sin(edge * dice.uniform(6, 16)), -0.3, 0.3)
    kind = dice.pick([5, 2, 1.2, 0.5]).view(-1, 1, 1, 1)
    lit = torch.where(kind == 1, cast, torch.where(kind == 2, blotch, torch.where(kind == 3, blinds, torch.ones_like(cast))))
    lit = 1 - (1 - lit) * dice.uniform(0.2, 0.75)
    mixed = over(torch.ones_like(lamp(dice)), lamp(dice), fade(edge, -1, 1) * dice.chance(0.25))
    vignette = 1 - dice.uniform(0, 0.3) * (q**2).sum(1, keepdim=True) / 3
    return slope * lit * mixed * vignette


def shaded(dice, scene, light):
    """Relief under a slanting light, and its shine."""
    h = scene.height
    dx = F.pad(h[..., 1:] - h[..., :-1], (0, 1, 0, 0)) / scene.px
    dy = F.pad(h[..., 1:, :] - h[..., :-1, :], (0, 0, 0, 1)) / scene.px
    slope = (dx * light[:, :1] + dy * light[:, 1:]).clamp(-1.2, 1.2)
    strength = dice.uniform(0.5, 1.5)
    shade = (1 - strength * slope).clamp(0.25, 2)
    shine = fade(-slope * 1.3 + (noise(dice, scene.p, 0.5) - 0.5), 0.35, 0.8) * scene.gloss
    return scene.albedo * shade + shine * dice.uniform(0, 0.5), (strength * slope).abs()


def glare(dice, q, centre, scale):
    at = (q - centre - (torch.cat([dice.uniform(-1, 1), dice.uniform(-1, 1)], 1) * scale * 0.7)) / scale
    round_one = 1 - fade((at * torch.cat([dice.uniform(1, 3), dice.uniform(1, 3)], 1)).norm(dim=1, keepdim=True), dice.uniform(0, 0.3), dice.uniform(0.4, 1.1))
    pane = (1 - fade(at.abs().amax(1, keepdim=True), 0.25, 0.32)) * (at.abs().amin(1, keepdim=True) > 0.015)
    return torch.where(dice.chance(0.3) > 0, pane, round_one)


def jpeg(image, quality):
    """Blocks of 8 x 8 rounded as JPEG rounds them; `quality` [n,1,1,1] is a step size for middle frequencies, 0..1."""
    n, c, h, w = image.shape
    k = torch.arange(8, device=image.device, dtype=torch.float32)
    basis = torch.cos((2 * k.view(1, -1) + 1) * k.view(-1, 1) * math.pi / 16) * math.sqrt(0.25)
    basis[0] = math.sqrt(0.125)
    m = torch.tensor([[0.299, 0.587, 0.114], [-0.1687, -0.3313, 0.5], [0.5, -0.4187, -0.0813]], device=image.device)
    ycc = torch.einsum("ij,njhw->nihw", m, image)
    ph, pw = (-h) % 8, (-w) % 8
    blocks = F.pad(ycc, (0, pw, 0, ph), mode="replicate").view(n, 3, (h + ph) // 8, 8, (w + pw) // 8, 8)
    f = torch.einsum("ua,ncyaxb,vb->ncyuxv", basis, blocks, basis)
    step = (1 + 0.55 * (k.view(8, 1, 1) + k.view(1, 1, 8))) * quality.view(n, 1, 1, 1, 1, 1)
    step = step * torch.tensor([1.0, 1.8, 1.8], device=image.device).view(1, 3, 1, 1, 1, 1)
    f = torch.round(f / step) * step
    blocks = torch.einsum("ua,ncyuxv,vb->ncyaxb", basis, f, basis)
    ycc = blocks.reshape(n, 3, h + ph, w + pw)[:, :, :h, :w]
    return torch.einsum("ij,njhw->nihw", torch.linalg.inv(m), ycc)


def photographed(dice, linear, blur):
    """Exposure, tone, blur, noise, sharpening, rounding. Linear colours in, sRGB 0..1 out."""
    mean = linear.mean((1, 2, 3), keepdim=True).clamp(min=0.02)
    exposure = (dice.uniform(0.16, 0.34) / mean) ** dice.uniform(0.3, 0.9) * torch.exp(dice.uniform(-0.5, 0.35))
    seen = softened(linear * exposure * lamp(dice), blur).clamp(min=0)
    tone = dice.uniform(0, 0.6) * dice.chance(0.5)
    seen = over(seen, seen * (1 + seen / 1.2) / (1 + seen), tone)
    encoded = torch.where(seen <= 0.0031308, 12.92 * seen, 1.055 * seen.clamp(min=1e-6) ** (1 / 2.4) - 0.055)
    contrast = dice.uniform(0.85, 1.2)
    encoded = (encoded - 0.5) * contrast + 0.5 + dice.uniform(-0.04, 0.04)
    grey = encoded.mean(1, keepdim=True)
    encoded = grey + (encoded - grey) * dice.uniform(0.8, 1.25)
    grain = torch.randn(encoded.shape, generator=dice.generator, device=encoded.device)
    coarse = softened(grain, dice.uniform(0.3, 1.2))
    amount = dice.log_uniform(0.002, 0.05)
    encoded = encoded + coarse * amount * (0.5 + 0.8 * (1 - grey.clamp(0, 1)))
    crisp = dice.uniform(0, 1.2) * dice.chance(0.5)
    encoded = encoded + crisp * (encoded - softened(encoded, torch.full_like(crisp, 1.2)))
    packed = jpeg(encoded.clamp(0, 1), dice.log_uniform(0.004, 0.06))
    return torch.where(dice.chance(0.8) > 0, packed, encoded).clamp(0, 1)
