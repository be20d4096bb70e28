"""What looks like a flaw and is none."""
import torch

from bulk_fields import cells, fade, noise, over, scattered, turned
from bulk_flaws import dots


def tint(dice, low, high):
    return dice.uniform(low, high, dice.n, 3, 1, 1)


def mica_line(dice, part):
    within = part.level - part.portion
    border = torch.exp(-((torch.minimum(within, 1 - within) / dice.uniform(0.02, 0.08)) ** 2))
    gold = torch.cat([dice.uniform(0.5, 0.85), dice.uniform(0.35, 0.6), dice.uniform(0.08, 0.6)], 1)
    spark = noise(dice, part.p, 60.0, 1)
    part.albedo = over(part.albedo, gold * (0.6 + spark), border * dice.uniform(0.4, 0.95) * (part.level > 0.6))


def mica_shimmer(dice, part):
    spark = fade(noise(dice, part.p, dice.log_uniform(30, 90), 1), 0.6, 0.9)
    part.albedo = (part.albedo * (1 + spark * dice.uniform(0.1, 0.7))).clamp(max=1)


def glitter(dice, part):
    mask, *_ , number = dots(dice, part, 0.0015, 0.006)
    band = 1 - fade(part.p[:, 1:] / part.aspect, dice.uniform(-0.9, -0.5), dice.uniform(-0.45, 0.4))
    colour = tint(dice, 0.3, 1) * (0.4 + 1.2 * number)
    part.albedo = over(part.albedo, colour.clamp(max=1.3), mask * band)


def exfoliants(dice, part):
    which = dice.pick([1, 1, 1]).view(-1, 1, 1, 1)
    poppy = torch.cat([dice.uniform(0.01, 0.04), dice.uniform(0.012, 0.04), dice.uniform(0.02, 0.06)], 1)
    oat = torch.cat([dice.uniform(0.45, 0.7), dice.uniform(0.33, 0.5), dice.uniform(0.18, 0.32)], 1)
    coffee = torch.cat([dice.uniform(0.03, 0.09), dice.uniform(0.015, 0.05), dice.uniform(0.005, 0.03)], 1)
    colour = torch.where(which == 0, poppy, torch.where(which == 1, oat, coffee))
    rough = (torch.cat([noise(dice, part.p, 30.0), noise(dice, part.p, 30.0)], 1) - 0.5) * 0.02 * (which > 0)
    squash = torch.where(which == 1, dice.uniform(1.3, 2.5), torch.ones_like(part.px))
    mask, *_ = dots(dice, part, 0.004, 0.016, fill=dice.uniform(0.6, 1), squash=squash, p=part.p + rough)
    part.albedo = over(part.albedo, colour, mask * dice.uniform(0.7, 1))


def botanicals(dice, part):
    p = turned(part.p, dice.uniform(0, 6.28))
    mask, far, vector, number = dots(dice, part, 0.012, 0.05, fill=dice.uniform(0.15, 0.6), squash=dice.uniform(1.2, 3.5), p=p)
    band = 1 - fade(part.p[:, 1:] / part.aspect, dice.uniform(-0.8, 0.2), dice.uniform(0.25, 1))
    colour = torch.cat([dice.uniform(0.05, 0.6), dice.uniform(0.04, 0.35), dice.uniform(0.03, 0.4)], 1)
    vein = 0.75 + 0.4 * noise(dice, part.p, 22.0, 2)
    part.albedo = over(part.albedo, colour * vein * (0.7 + 0.6 * number), mask * band)
    part.height = part.height + mask * band * 0.02


def embeds(dice, part):
    square = dice.chance(0.4)
    size = dice.uniform(0.12, 0.35)
    cell = size * dice.uniform(2.4, 4)
    far, vector, number, _ = scattered(dice, part.p, cell, dice.uniform(0.4, 0.9), size / cell * 0.8, size / cell)
    corner = vector.abs().amax(1, keepdim=True) * 1.2 + (far > 100) * 1e3
    far = torch.where(square > 0, corner, far)
    mask = 1 - fade(far, 0.95, 1.0)
    part.albedo = over(part.albedo, tint(dice, 0.02, 0.9) * (0.6 + 0.6 * number), mask)


def stamp(dice, part):
    """A ring, strokes like letters, or a leaf pressed into the face."""
    q = turned(part.p - torch.cat([dice.uniform(-0.2, 0.2), dice.uniform(-0.1, 0.1)], 1), dice.uniform(-0.2, 0.2)) / dice.uniform(0.6, 1.1)
    r = q.norm(dim=1, keepdim=True)
    ring = (r - dice.uniform(0.35, 0.55)).abs() / 0.025
    strokes = torch.maximum((q[:, 1:].abs() - 0.13) / 0.01 + 1, ((q[:, :1] * 9 - torch.floor(q[:, :1] * 9) - 0.5).abs() - 0.18 * noise(dice, q, 9.0)) * 14)
    strokes = torch.maximum(strokes, (q[:, :1].abs() - 0.42) / 0.01 + 1)
    leaf = (torch.sin(q[:, :1] * 6).abs() * 0.22 - q[:, 1:].abs()).abs() / 0.02 + (q[:, :1].abs() > 0.5) * 9
    kind = dice.pick([1, 1, 1]).view(-1, 1, 1, 1)
    far = torch.where(kind == 0, torch.minimum(ring, strokes), torch.where(kind == 1, strokes, leaf))
    mask = 1 - fade(far, 0.5, 1.5)
    part.height = part.height - mask * dice.uniform(0.01, 0.035) * torch.sign(dice.uniform(-0.3, 1))
    part.albedo = over(part.albedo, part.albedo * 0.7, mask * dice.uniform(0, 0.7))
    gold = torch.cat([dice.uniform(0.5, 0.8), dice.uniform(0.35, 0.55), dice.uniform(0.05, 0.25)], 1)
    part.albedo = over(part.albedo, gold, mask * dice.chance(0.2))


def spooned_top(dice, part):
    warp = torch.cat([noise(dice, part.p, 1.2, 1), noise(dice, part.p, 1.2, 1)], 1) - 0.5
    relief = noise(dice, part.p + warp * dice.uniform(0.3, 1), dice.log_uniform(1, 2.5), 1)
    band = 1 - fade(part.p[:, 1:] / part.aspect, dice.uniform(-0.9, 0.2), dice.uniform(0.25, 1.2))
    part.height = part.height + relief * band * dice.uniform(0.08, 0.3)


def bevel(dice, part):
    part.height = part.height + fade(part.depth, 0, dice.uniform(0.05, 0.16)) * dice.uniform(0.03, 0.09)


def wire_marks(dice, part):
    q = turned(part.p, dice.uniform(-0.2, 0.2) + 1.57 * dice.chance(0.4))
    curve = q[:, 1:] + dice.uniform(-0.15, 0.15) * q[:, :1] ** 2
    wave = noise(dice, torch.cat([q[:, :1] * 0.05, curve], 1), dice.log_uniform(6, 22), 2)
    part.height = part.height + (wave - 0.5) * dice.uniform(0.004, 0.016)
    part.albedo = part.albedo * (1 + (wave - 0.5) * dice.uniform(0.02, 0.12))


def dew(dice, part):
    mask, far, vector, _ = dots(dice, part, 0.004, 0.025)
    lens = part.albedo * (1 - 0.25 * fade((vector * part.light).sum(1, keepdim=True), -0.6, 0.8))
    part.albedo = over(part.albedo, lens, mask * 0.8)
    glint = (vector - part.light * 0.45).norm(dim=1, keepdim=True)
    part.albedo = over(part.albedo, torch.full_like(part.albedo, 1.2), (1 - fade(glint, 0.12, 0.3)) * mask)


def band_label(dice, part):
    across = torch.where(dice.chance(0.5) > 0, part.p[:, :1], part.p[:, 1:])
    at = across - dice.uniform(-0.4, 0.4)
    half = dice.uniform(0.12, 0.4)
    mask = 1 - fade(at.abs(), half - part.px, half)
    paper = tint(dice, 0.5, 0.9) * torch.where(dice.chance(0.5) > 0, torch.ones_like(part.px), dice.uniform(0.2, 1))
    print_rows = (fade(noise(dice, part.p * torch.tensor([14.0, 5.0], device=part.p.device).view(1, 2, 1, 1), 1.0), 0.55, 0.6)) * (at.abs() < half * 0.6)
    part.albedo = over(part.albedo, over(paper, paper * 0.15, print_rows), mask)
    part.height = part.height * (1 - mask)
    part.covered = torch.maximum(part.covered, mask)


def lint(dice, part):
    q = part.p + (torch.cat([noise(dice, part.p, 3.0), noise(dice, part.p, 3.0)], 1) - 0.5) * 0.4
    hair = 1 - fade((noise(dice, q, dice.uniform(0.8, 2), 1) - 0.5).abs(), 0.001, 0.006)
    gate = fade(noise(dice, part.p, 1.5), 0.62, 0.66)
    part.albedo = over(part.albedo, tint(dice, 0.02, 0.85), hair * gate * dice.uniform(0.4, 0.9))


def salt_on_top(dice, part):
    mask, *_ , number = dots(dice, part, 0.006, 0.022)
    band = 1 - fade(part.p[:, 1:] / part.aspect, dice.uniform(-1, -0.7), dice.uniform(-0.7, -0.45))
    part.albedo = over(part.albedo, dice.uniform(0.7, 0.95) * (0.75 + 0.35 * number) * torch.ones_like(part.albedo), mask * band)
    part.height = part.height + mask * band * 0.03


def crumbs_of_soap(dice, part):
    part.height = part.height + (noise(dice, part.p, dice.log_uniform(10, 40), 2) - 0.5) * dice.uniform(0.002, 0.01)


DECEITS = [mica_line, mica_shimmer, glitter, exfoliants, botanicals, embeds, stamp, spooned_top, bevel, wire_marks, dew,
           band_label, lint, salt_on_top, crumbs_of_soap]
