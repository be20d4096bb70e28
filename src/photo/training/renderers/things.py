"""
Draws what is no soap: fruit, cartons, mugs, plates, sponges, bread, cheese, books, folded cloth, animals, plants, spoons,
chocolate, on the tables of `bulk`. Only for the answer "no soap in view", and as surroundings for bars.
"""
import os
import sys

import torch

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from bulk_camera import light_field, photographed  # noqa: E402
from bulk_designs import colours  # noqa: E402
from bulk_fields import Dice, cells, fade, noise, over, picture_plane, scattered, turned  # noqa: E402
from bulk_places import box_distance, clutter, crumbs, table_top  # noqa: E402

FINDINGS = 16


def hue(dice, low=(0.02, 0.02, 0.02), high=(0.9, 0.9, 0.9)):
    return torch.cat([dice.uniform(a, b) for a, b in zip(low, high)], 1)


def ball(dice, p, far=None):
    """Fruit, an egg, a potato: round, lit from one side, with a shine or a stalk's dimple."""
    squash = torch.cat([dice.uniform(0.8, 1.2), dice.uniform(0.65, 1.1)], 1)
    bumps = (noise(dice, p, dice.uniform(0.5, 1.5), 2) - 0.5) * dice.uniform(0, 0.5)
    r = (p / squash).norm(dim=1, keepdim=True) + bumps if far is None else far
    light = torch.cat([dice.uniform(-0.8, 0.8), dice.uniform(-0.9, 0.1)], 1)
    z = (1 - r.clamp(max=1) ** 2).sqrt()
    shade = 0.25 + 0.75 * ((p * light).sum(1, keepdim=True) * 0.6 + 0.75 * z).clamp(0, 1)
    skin = over(hue(dice), hue(dice), noise(dice, p, dice.log_uniform(0.6, 3), 2) * dice.uniform(0, 0.8))
    skin = skin * (1 + (noise(dice, p, dice.log_uniform(8, 40), 2) - 0.5) * dice.uniform(0, 0.5))
    shine = torch.exp(-((p - light * 0.55).norm(dim=1, keepdim=True) / dice.uniform(0.08, 0.3)) ** 2) * dice.uniform(0, 0.6)
    return r - 1, skin * shade + shine


def printed(dice, p, colour):
    """Lettering and blocks of colour, as on a carton or a cover."""
    rows = fade(noise(dice, p * torch.tensor([9.0, 26.0], device=p.device).view(1, 2, 1, 1), 1.0), 0.52, 0.56) * (torch.sin(p[:, 1:] * dice.uniform(14, 30)) > 0.1)
    block = ((p - torch.cat([dice.uniform(-0.5, 0.5), dice.uniform(-0.4, 0.4)], 1)).abs() / torch.cat([dice.uniform(0.15, 0.7), dice.uniform(0.1, 0.35)], 1)).amax(1, keepdim=True)
    colour = over(colour, hue(dice), 1 - fade(block, 0.98, 1.0))
    bands = fade(torch.sin(p[:, :1] * dice.uniform(2, 20) + dice.uniform(0, 6)), 0.6, 0.7) * dice.chance(0.3)
    return over(over(colour, hue(dice), bands), hue(dice), rows * dice.uniform(0.4, 1))


def carton(dice, p, dress=printed):
    half = torch.cat([torch.ones_like(p[:, :1, :1, :1]), dice.uniform(0.4, 1.1)], 1)
    front = box_distance(p, half, dice.uniform(0, 0.03))
    way = torch.cat([dice.uniform(-0.5, 0.5), dice.uniform(-0.6, 0.1)], 1)
    side = front
    for step in range(1, 6):
        side = torch.minimum(side, box_distance(p - way * step / 5, half, 0.01))
    colour = colours(dice, dice.n).view(-1, 3, 1, 1)
    face = dress(dice, p, colour)
    return side, torch.where(front < 0, face, colour * dice.uniform(0.4, 0.9))


def book(dice, p):
    far, colour = carton(dice, p)
    leaves = 0.75 + 0.2 * torch.sin(p[:, 1:] * dice.uniform(60, 160))
    half = dice.uniform(0.7, 0.9)
    return far, torch.where(p[:, :1] > half, leaves * hue(dice, (0.7, 0.65, 0.5), (0.9, 0.88, 0.8)), colour)


def mug(dice, p):
    height = dice.uniform(0.8, 1.3)
    body = box_distance(p, torch.cat([torch.full_like(height, 0.7), height], 1), dice.uniform(0.02, 0.2))
    rim = ((p + torch.cat([height * 0, height], 1)) / torch.cat([height * 0 + 0.7, dice.uniform(0.1, 0.3)], 1)).norm(dim=1, keepdim=True) - 1
    ear = ((p - torch.cat([dice.uniform(0.72, 0.85), height * 0], 1)).norm(dim=1, keepdim=True) - 0.42).abs() - dice.uniform(0.07, 0.13)
    colour = printed(dice, p, colours(dice, dice.n).view(-1, 3, 1, 1)) if dice.n % 2 else hue(dice)
    round_ = 0.5 + 0.5 * torch.cos((p[:, :1] - dice.uniform(-0.4, 0.4)) * 1.8)
    inside = hue(dice, (0.01, 0.01, 0.01), (0.8, 0.8, 0.8)) * 0.5
    return torch.minimum(torch.minimum(body, rim * 0.3), ear), torch.where(rim < 0, torch.where(rim < -0.12, inside, hue(dice, (0.5, 0.5, 0.5))), colour * round_)


def plate(dice, p):
    r = (p / torch.cat([torch.ones_like(p[:, :1, :1, :1]), dice.uniform(0.45, 1)], 1)).norm(dim=1, keepdim=True)
    colour = over(hue(dice, (0.6, 0.6, 0.55)), hue(dice), dice.chance(0.4))
    lip = 1 - 0.3 * torch.exp(-((r - 0.66) / 0.04) ** 2) + 0.15 * torch.exp(-((r - 0.95) / 0.03) ** 2)
    ring = torch.exp(-((r - dice.uniform(0.75, 0.95)) / 0.02) ** 2) * dice.chance(0.5)
    return r - 1, over(colour * lip, hue(dice), ring)


def sponge(dice, p):
    def pores(dice, p, colour):
        far, *_ = scattered(dice, p, dice.uniform(0.06, 0.16), 0.9, 0.1, 0.48)
        layer = (p[:, 1:] < -dice.uniform(0.2, 0.5)).float() * dice.chance(0.5)
        yellow = hue(dice, (0.5, 0.4, 0.02), (0.95, 0.8, 0.4))
        body = over(over(yellow, colour, dice.chance(0.5)), colour * 0.3, 1 - fade(far, 0.7, 1.0))
        rough = hue(dice, (0.02, 0.1, 0.02), (0.2, 0.4, 0.25)) * (0.4 + noise(dice, p, 40.0, 2))
        return over(body, rough, layer)
    return carton(dice, p, pores)


def bread(dice, p):
    far = box_distance(p, torch.cat([torch.ones_like(p[:, :1, :1, :1]), dice.uniform(0.6, 1)], 1), dice.uniform(0.2, 0.5)) + (noise(dice, p, 1.5, 2) - 0.5) * 0.25
    holes, *_ = scattered(dice, p + (noise(dice, p, 5.0, 2) - 0.5) * 0.1, dice.uniform(0.1, 0.25), 0.8, 0.05, 0.4)
    crumb = hue(dice, (0.5, 0.4, 0.25), (0.9, 0.8, 0.6)) * (0.8 + 0.3 * noise(dice, p, 20.0, 3))
    crumb = crumb * (1 - 0.35 * (1 - fade(holes, 0.6, 1.1)))
    crust = hue(dice, (0.15, 0.06, 0.02), (0.5, 0.25, 0.1))
    return far, over(crumb, crust, fade(far, -dice.uniform(0.05, 0.15), -0.02))


def cheese(dice, p):
    slope = dice.uniform(0.3, 0.9)
    wedge = torch.maximum(torch.maximum(p[:, 1:].abs() * 1.2 - 0.75, p[:, :1] - 1), -p[:, :1] - 1 + (p[:, 1:] * slope).abs())
    holes, vector, *_ = scattered(dice, p, dice.uniform(0.3, 0.7), 0.7, 0.1, 0.42)
    yellow = hue(dice, (0.7, 0.45, 0.05), (0.95, 0.8, 0.45))
    deep = yellow * (0.45 + 0.4 * fade(vector[:, 1:], -1, 1))
    return wedge, over(yellow, deep, 1 - fade(holes, 0.9, 1.0))


def cloth(dice, p):
    far = box_distance(p + (noise(dice, p, 1.2, 2) - 0.5) * 0.2, torch.cat([torch.ones_like(p[:, :1, :1, :1]), dice.uniform(0.4, 1)], 1), dice.uniform(0.03, 0.2))
    folds = 0.6 + 0.6 * noise(dice, torch.cat([p[:, :1] * 0.3, p[:, 1:]], 1), dice.uniform(1, 4), 2)
    stripes = (torch.sin(p[:, :1] * dice.uniform(6, 40)) > dice.uniform(-0.3, 0.8)).float() * dice.chance(0.6)
    weave = 0.9 + 0.2 * noise(dice, p, 60.0, 1)
    return far, over(hue(dice), hue(dice), stripes) * folds * weave


def animal(dice, p):
    """A body, a head, ears and eyes, furry or of wood."""
    at = torch.cat([dice.uniform(-0.5, 0.5), dice.uniform(-0.9, -0.6)], 1)
    body = (p / torch.cat([dice.uniform(0.6, 1), dice.uniform(0.5, 0.8)], 1)).norm(dim=1, keepdim=True)
    head = (p - at).norm(dim=1, keepdim=True) / dice.uniform(0.3, 0.45)
    ear = torch.minimum(*((p - at - torch.cat([torch.full_like(at[:, :1], s), torch.full_like(at[:, :1], -0.38)], 1)).norm(dim=1, keepdim=True) / 0.15 for s in (-0.25, 0.25)))
    far = torch.minimum(torch.minimum(body, head), ear)
    fur = 1 + (noise(dice, torch.cat([p[:, :1], p[:, 1:] * 0.25], 1), dice.log_uniform(12, 40), 3) - 0.5) * dice.uniform(0.1, 1)
    _, skin = ball(dice, p, far)
    for s in (-0.13, 0.13):
        eye = (p - at - torch.cat([torch.full_like(at[:, :1], s), torch.full_like(at[:, :1], -0.05)], 1)).norm(dim=1, keepdim=True)
        skin = over(skin, torch.full_like(skin, 0.01), 1 - fade(eye, 0.045, 0.06))
    return far - 1, skin * fur


def plant(dice, p):
    far = torch.full_like(p[:, :1], 9.0)
    shade = torch.ones_like(far)
    for _ in range(7):
        q = turned(p, dice.uniform(0, 6.28)) - torch.cat([dice.uniform(0.3, 0.6), dice.uniform(-0.1, 0.1)], 1)
        leaf = (q / torch.cat([dice.uniform(0.35, 0.6), dice.uniform(0.08, 0.25)], 1)).norm(dim=1, keepdim=True) - 1
        shade = torch.where(leaf < 0, 0.6 + 0.5 * torch.sigmoid(q[:, 1:] * 40) + 0 * leaf, shade)
        far = torch.minimum(far, leaf * 0.2)
    return far, hue(dice, (0.02, 0.1, 0.01), (0.5, 0.6, 0.3)) * shade


def spoon(dice, p):
    bowl = ((p + torch.tensor([0.7, 0.0], device=p.device).view(1, 2, 1, 1)) / torch.cat([dice.uniform(0.25, 0.35), dice.uniform(0.15, 0.22)], 1)).norm(dim=1, keepdim=True) - 1
    stem = box_distance(p - torch.tensor([0.25, 0.0], device=p.device).view(1, 2, 1, 1), torch.tensor([0.75, 0.045], device=p.device).view(1, 2, 1, 1), 0.03)
    sheen = 0.4 + 0.6 * noise(dice, p, dice.uniform(1, 4), 2)
    metal = over(hue(dice, (0.4, 0.4, 0.4), (0.7, 0.7, 0.7)).mean(1, keepdim=True).expand(-1, 3, -1, -1), hue(dice, (0.3, 0.15, 0.05), (0.6, 0.4, 0.2)), dice.chance(0.4))
    return torch.minimum(bowl * 0.2, stem), metal * sheen


def chocolate(dice, p):
    def squares(dice, p, colour):
        q = p * dice.uniform(2, 4)
        edge = (q - torch.floor(q) - 0.5).abs().amax(1, keepdim=True)
        brown = over(hue(dice, (0.03, 0.012, 0.005), (0.25, 0.12, 0.06)), hue(dice, (0.6, 0.5, 0.35), (0.9, 0.85, 0.7)), dice.chance(0.2))
        lit = (q - torch.floor(q) - 0.5).sum(1, keepdim=True)
        return brown * (1 - 0.5 * fade(edge, 0.44, 0.48)) * (1 - lit * 0.5 * fade(edge, 0.3, 0.36))
    return carton(dice, p, squares)


THINGS = [ball, carton, book, mug, plate, sponge, bread, cheese, cloth, animal, plant, spoon, chocolate]


@torch.no_grad()
def draw(n, size, seed, device="cpu", clean=0.4):
    """See the contract in README.md; every picture is without soap, and `clean` says nothing here."""
    height, width = size
    dice = Dice(n, device, seed)
    q = picture_plane(n, size, device)
    ground = crumbs(dice, q, clutter(dice, q, table_top(dice, q), busy=False))
    wide = width / height
    for place in range(4):
        which = dice.pick([1.0] * len(THINGS))
        on = dice.chance(0.95 if place == 3 else 0.45)
        scale = dice.log_uniform(0.25, 0.95) if place == 3 else dice.log_uniform(0.12, 0.5)
        reach = 0.5 if place == 3 else 1.0
        centre = torch.cat([dice.uniform(-1, 1) * wide * reach, dice.uniform(-1, 1) * reach], 1)
        p = turned(q - centre, dice.uniform(-0.6, 0.6) + 3.14 * dice.chance(0.3) * dice.uniform(0, 1)) / scale
        for k, thing in enumerate(THINGS):
            rows = (which == k).nonzero()[:, 0]
            if len(rows) == 0:
                continue
            part = dice.part(len(rows))
            far, colour = thing(part, p[rows])
            mask = (1 - fade(far * scale[rows], -0.006, 0.006)) * on[rows]
            shadow = (1 - fade(far + 0.06 * p[rows][:, 1:], 0.0, part.uniform(0.05, 0.5))) * on[rows]
            ground[rows] = over(ground[rows] * (1 - shadow * part.uniform(0.1, 0.7)), colour.clamp(0.003, 1.2), mask)
    image = photographed(dice, ground * light_field(dice, q), dice.log_uniform(0.4, 2.6) * height / 384)
    zeros = torch.zeros(n, device=device)
    return {"image": image, "bar": torch.zeros(n, 1, height, width, device=device), "maps": torch.zeros(n, FINDINGS, height, width, device=device),
            "present": torch.zeros(n, FINDINGS, device=device), "tricky": zeros, "kind": zeros.long() + 1}
