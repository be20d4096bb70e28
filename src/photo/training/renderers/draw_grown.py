"""
Soap with flaws that are grown: clots gather, liquids part, skins dry, buckle and tear, heat and air move through the body (grown_flaws.py), on blocks and
discs that are met by rays. Each flaw is drawn with and without, and kept where it can be seen. draw() is the way in.
"""
import math
import os
import sys

import torch
import torch.nn.functional as F

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from grown_canvas import FINDINGS, bordered, flawed, planned, seen_of  # noqa: E402, F401
from grown_fields import Dice, fade, mix, noise  # noqa: E402
from grown_light import leaning, lights, phone, shaded, shadow  # noqa: E402
from grown_scene import FAR, bevelled, bodies, footprint, met, rays, turned, unfolded  # noqa: E402
from grown_soap import TRICKS, poured, put_on  # noqa: E402

# Pictures at a time; drawn so much larger than asked for.
CHUNK, FINE = 12, 1.25
# On what lay open to the air, on the cut face; the others anywhere.
ON_TOP, ON_FACE = (5, 9, 14), (4, 6, 10, 11, 12, 13)
# How many pictures have a second flaw, and show no soap.
SECOND, NOTHING = 0.35, 0.03


def table(d, at):
    """The table's colour at `at` [n,2,h,w]: plain, wooden, woven, tiled, or of paper."""
    u, v = at[:, :1], at[:, 1:]
    turn = d.r(0, math.pi)
    along, across = u * turn.cos() + v * turn.sin(), v * turn.cos() - u * turn.sin()
    own = mix(d.r(0.03, 0.8, 3), torch.ones(d.n, 3, 1, 1, device=d.device) * d.r(0.05, 0.85), d.r(0.3, 1))
    cloudy = noise(d, d.log(1.5, 8), d.r(1.2, 3))
    read = lambda x, scale: F.grid_sample(x, torch.cat([along * scale[:, :1], across * scale[:, -1:]], 1).permute(0, 2, 3, 1), mode="bilinear", padding_mode="reflection", align_corners=False)
    mottle = read(cloudy, d.log(0.3, 1.5, 1)) * d.r(0, 0.18)
    grain = read(noise(d, d.log(20, 60), 1.5), torch.cat([d.r(0.05, 0.15), d.r(0.6, 1.5)], 1))
    plank = ((across * d.r(0.6, 2)) % 1 - 0.5).abs()
    wood = torch.cat([d.r(0.25, 0.7), d.r(0.15, 0.45), d.r(0.06, 0.3)], 1) * d.r(0.3, 1.1)
    wooden = wood * (1 + grain * d.r(0.05, 0.25)) * (0.4 + 0.6 * fade(plank, 0.005, 0.02))
    thread = d.r(40, 90)
    woven = own * (1 + 0.1 * torch.sin(along * thread) * torch.sin(across * thread) + 0.4 * mottle)
    checks = own * (1 - d.r(0.2, 0.6) * 0.5 * ((torch.sin(along * d.r(4, 20)) > 0).float() + (torch.sin(across * d.r(4, 20)) > 0).float()))
    size = d.r(0.8, 2.5)
    joint = torch.minimum(((along * size) % 1 - 0.5).abs(), ((across * size) % 1 - 0.5).abs())
    tiled = mix(d.r(0.1, 0.7) * torch.ones_like(own), own * (1 + mottle), fade(joint, 0.01, 0.025))
    kind = d.pick([0.35, 0.3, 0.12, 0.08, 0.15]).view(-1, 1, 1, 1)
    out = torch.where(kind == 0, own * (1 + mottle), torch.where(kind == 1, wooden, torch.where(kind == 2, woven, torch.where(kind == 3, checks, tiled))))
    return out.clamp(0.005, 0.95)


def seen_by(d, soap, h, w):
    """What each pixel meets: which body, where on its canvas, its normal, its place; and whether it is soap."""
    eye, towards = rays(d, h, w, soap[0]["lies"])
    first = torch.where(towards[:, 1:2] < -1e-3, -eye[:, 1:2] / towards[:, 1:2].clamp(max=-1e-3), torch.full_like(towards[:, :1], FAR)).clamp(max=60)
    is_soap, which = torch.zeros_like(first), torch.zeros_like(first)
    normal = torch.zeros_like(towards)
    normal[:, 1] = 1
    place, along, down = torch.zeros_like(towards[:, :2]), torch.zeros_like(towards), torch.zeros_like(towards)
    wide = d.log(0.012, 0.07)
    for k, body in enumerate(soap):
        t, own, at = met(body, eye, towards)
        nearer = t < first
        smooth = turned(bevelled(body, at, own, wide), -body["turn"])
        side = torch.where(own[:, :1].abs() > 0.6, torch.tensor([0.0, 0.0, 1.0], device=t.device).view(1, 3, 1, 1), torch.tensor([1.0, 0.0, 0.0], device=t.device).view(1, 3, 1, 1))
        other = torch.cross(own, side.expand_as(own), dim=1)
        for held, value in ((normal, smooth), (place, unfolded(body, at, own)), (along, turned(side.expand_as(own), -body["turn"])), (down, turned(other, -body["turn"]))):
            held.copy_(torch.where(nearer, value, held))
        is_soap, which, first = torch.where(nearer, torch.ones_like(t), is_soap), torch.where(nearer, torch.full_like(t, float(k)), which), torch.minimum(first, t)
    return {"towards": towards, "at": eye + towards * first, "soap": is_soap, "which": which, "normal": normal, "place": place, "along": along, "down": down, "far": first}


def soap_of(d, soap, wanted):
    """Canvases without and with flaws, each colour, relief and gloss; the flaws' maps; and whether anything deceives [n]."""
    colour, share, field, other, deceives = poured(d, bordered(wanted))
    face, open_ = footprint(soap[0])
    everywhere = torch.ones_like(face)
    spare = (wanted < 0).all(1)
    trick = torch.where(d.r().view(-1) < torch.where(spare, 0.4, 0.08), torch.randint(1, TRICKS + 1, (d.n,), device=d.device, generator=d.generator), 0)
    colour, height = put_on(d, colour, everywhere, trick)
    height = height + noise(d, d.log(4, 20)) * d.log(0.0001, 0.0012)
    inside_of = lambda k: open_ if k in ON_TOP else face if k in ON_FACE else everywhere
    *after, maps = flawed(d, colour, height, wanted, inside_of, open_, (share, field, other))
    return (colour, height, torch.zeros_like(height)), after, maps, deceives | (trick > 0)


def drawn(n, size, seed, device, clean):
    d = Dice(n, seed, device)
    (h, w) = (int(side * FINE) // 2 * 2 for side in size)
    wanted = planned(d, clean, SECOND)
    nothing = d.r().view(-1) < NOTHING
    wanted[nothing] = -1
    soap = bodies(d, size)
    for body in soap:
        body["there"] = body["there"] * (~nothing).float().view(-1, 1, 1, 1)
    without, with_, maps, tricky = soap_of(d, soap, wanted)
    g = seen_by(d, soap, h, w)
    light = lights(d)
    lit = shadow(d, soap, g["at"] + g["normal"] * 2e-3, light)
    # Light through a blind, across all.
    stripe = fade(torch.sin((g["at"][:, :1] + 0.6 * g["at"][:, 2:]) * light["stripes"] * 2), -0.2, 0.2)
    lit = lit * mix(torch.ones_like(stripe), stripe, light["blind"] * 0.8)
    near = 1 - 0.5 * (1 - g["soap"]) * torch.exp(-((g["at"] - soap[0]["middle"]) ** 2).sum(1, keepdim=True).sqrt().clamp(max=1) * 2)
    ground = table(d, torch.cat([g["at"][:, :1], g["at"][:, 2:]], 1) * 0.7)
    # The other bars have the flaws too, or not.
    alike = (g["which"] < 0.5).float() + (g["which"] >= 0.5).float() * d.often(0.5)
    flip = torch.where(g["which"] >= 0.5, -1.0, 1.0)
    place = torch.cat([g["place"][:, :1] * flip, g["place"][:, 1:]], 1)
    read = lambda x: F.grid_sample(x, place.permute(0, 2, 3, 1), mode="bilinear", padding_mode="border", align_corners=False)
    smaller = lambda x: F.interpolate(x, size=size, mode="area")

    def picture(colour, height, gloss):
        slope = leaning(height, place)
        relief = -(g["along"] * slope[:, :1] * flip + g["down"] * slope[:, 1:]) * g["soap"]
        seen = mix(ground, read(colour), g["soap"])
        return shaded(light, seen, g["normal"], relief, g["towards"], lit, read(gloss) * g["soap"], near)

    develop, grain = phone(d, *size), d.r(0, 0.035)
    before = picture(*without)
    image = develop(smaller(mix(before, picture(*with_), alike)))
    bar = (smaller(g["soap"]) > 0.5).float()
    kept, present = seen_of(wanted, smaller(read(maps) * alike * g["soap"]), image, develop(smaller(before)), grain)
    grainy = d.normal(3, *size) * grain
    image = (image + torch.where(d.often(0.5) > 0, grainy, grainy.mean(1, keepdim=True) * 1.5)).clamp(0, 1)
    return {"image": image, "bar": bar, "maps": kept * bar, "present": present, "tricky": tricky.float(), "kind": nothing.float()}


@torch.no_grad()
def draw(n, size, seed, device, clean=0.4):
    """See ../README.md: image, bar, maps, present, tricky and kind."""
    parts = [drawn(min(CHUNK, n - at), size, seed * 1009 + at * 7 + 11, device, clean) for at in range(0, n, CHUNK)]
    return {key: torch.cat([part[key] for part in parts]) for key in parts[0]}
