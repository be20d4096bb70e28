"""
Draws soap in bulk while the network learns: flat bars with painted relief, everything by chance, whole batches at once.
Never a figure of its pictures is a figure of photographs.
"""
import os
import sys
from types import SimpleNamespace

import torch

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from bulk_camera import glare, light_field, photographed, shaded  # noqa: E402
from bulk_deceits import DECEITS  # noqa: E402
from bulk_designs import design, painted, palettes  # noqa: E402
from bulk_fields import Dice, fade, noise, over, picture_plane, softened  # noqa: E402
from bulk_flaws import BY_RELIEF, DRAWN  # noqa: E402
from bulk_places import clutter, crumbs, fingers, stand, table_top  # noqa: E402

FINDINGS = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
            "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
            "layer-gap", "wrinkled-top", "mould-dimples"]
K = len(FINDINGS)
BLED, GAP = 11, 13
NO_SOAP = 0.07
# What a reader took for flaws most, and what it did not, as shares of the pictures that deceive.
OFTEN = {"band_label": 0.06, "exfoliants": 0.28, "glitter": 0.22, "mica_line": 0.22}
PARTS = ("p", "albedo", "height", "gloss", "depth", "inside", "aspect", "px", "light", "table", "portion", "level", "covered")


@torch.no_grad()
def draw(n, size, seed, device="cpu", clean=0.4):
    """See the contract in README.md: image, bar, maps, present, tricky, kind; the same for a seed and device."""
    height, width = size
    dice = Dice(n, device, seed)
    q = picture_plane(n, size, device)
    kind = dice.chance(NO_SOAP, n).long()
    soap = (1 - kind).view(n, 1, 1, 1).float()
    wanted, tricky = plan(dice, clean, kind)

    ground = table_top(dice, q)
    ground = crumbs(dice, q, clutter(dice, q, ground, busy=False))
    busy = clutter(dice, q, ground, busy=True)
    ground = torch.where(soap > 0, ground, busy)

    scene, bar, ground = bars(dice, q, ground, soap, wanted)
    before = scene.albedo
    maps, contrast = spoil(dice, scene, wanted)
    deceive(dice, scene, tricky)
    lit, relief = shaded(dice, scene, scene.light)
    for k in BY_RELIEF:
        contrast[:, k] = torch.maximum(contrast[:, k], (relief * 0.5)[:, 0] * (maps[:, k] > 0))
    side = scene.side
    lit = lit * (1 - side * dice.uniform(-0.15, 0.6)) * (1 - (1 - fade(scene.depth, 0, dice.uniform(0.01, 0.08))) * dice.uniform(-0.2, 0.35))
    picture = over(ground, lit, scene.inside)
    hand, skin = fingers(dice, q, scene.frame)
    hand = hand * dice.chance(0.13) * soap
    picture = over(picture, skin, hand)
    picture = picture * light_field(dice, q)
    picture = picture + glare(dice, q, scene.frame[2], scene.frame[1]) * dice.chance(0.2) * dice.uniform(0.1, 1.2) * scene.inside
    blur = dice.log_uniform(0.4, 2.6) * torch.where(dice.chance(0.1) > 0, dice.uniform(1, 2), torch.ones_like(soap)) * height / 384
    image = photographed(dice, picture, blur)

    hidden = (1 - hand) * scene.inside * (1 - scene.covered)
    maps = softened(maps * hidden, blur * 0.7)
    present = visible(maps, softened(contrast * hidden, blur), scene, wanted)
    return {"image": image, "bar": softened(bar * (1 - hand), blur * 0.5), "maps": maps * (wanted.view(n, K, 1, 1) > 0),
            "present": present, "tricky": tricky, "kind": kind}


def plan(dice, clean, kind):
    """Which pictures carry which findings, and which deceive."""
    n = dice.n
    flawed = (dice.uniform(0, 1, n) >= clean).float() * (1 - kind).float()
    many = dice.pick([5, 3, 1.5], n)
    score = dice.uniform(0, 1, n, K)
    rank = score.argsort(1).argsort(1)
    wanted = (rank <= many.view(n, 1)).float() * flawed.view(n, 1)
    tricky = torch.where(flawed > 0, dice.chance(0.4, n), dice.chance(0.55, n)) * (1 - kind).float()
    return wanted, tricky


def bars(dice, q, ground, soap, wanted):
    """The main bar and its neighbours, laid on the ground: one scene to be painted at once."""
    n = q.shape[0]
    main = stand(dice, q)
    several = dice.chance(0.25) * soap
    layers = [main]
    for index in range(3):
        layers.append(stand(dice, q, near=main["frame"]))
    height = q.shape[2]
    px = 2.0 / height / main["scale"]
    p = depth = side = inside = None
    way = torch.cat([dice.uniform(-1, 1), dice.uniform(-1, 1)], 1)
    way = way / way.norm(dim=1, keepdim=True).clamp(min=0.2)
    dark, reach = dice.uniform(0.1, 0.75), dice.uniform(0.03, 0.4)
    for index, one in reversed(list(enumerate(layers))):
        on = soap if index == 0 else several * dice.chance(0.6)
        whole = torch.minimum(one["front"], one["side"])
        mask = (1 - fade(whole, -px * 0.7, px * 0.7)) * on
        shadow = (1 - fade(whole + (one["p"] * way).sum(1, keepdim=True) * 0.05, 0, reach)) * on
        ground = ground * (1 - shadow * dark)
        top = mask > 0.5
        on_side = (one["front"] > 0).float()
        own = one["p"].clamp(-1.3, 1.3) + index * 7.3
        if p is None:
            p, depth, side, inside = own, -whole, on_side, mask
            local = one["p"]
        else:
            p = torch.where(top, own, p)
            local = torch.where(top, one["p"], local)
            depth = torch.where(top, -torch.where(one["front"] < 0, one["front"], whole), depth)
            side = torch.where(top, on_side, side)
            inside = torch.maximum(inside, mask)
    level, _, kind, smooth = design(dice, p, main["aspect"])
    # What lies between colours needs colours with borders.
    need = (wanted[:, BLED] + wanted[:, GAP]) > 0
    count = dice.uniform(2, 5).floor()
    wavy = (noise(dice, p, dice.log_uniform(0.6, 3), 2) - 0.5) * dice.uniform(0, 0.35)
    layered = (local[:, 1:] / main["aspect"] * 0.5 + 0.5 + wavy) * count + dice.uniform(0, 3).floor()
    force = (need & ((kind == 0) | (kind == 3) | (wanted[:, GAP] > 0))).view(n, 1, 1, 1)
    level = torch.where(force, layered, level)
    smooth = torch.where(force, torch.zeros_like(smooth), smooth)
    table = palettes(dice)
    soft = torch.where(dice.chance(0.7) > 0, px * 4, dice.uniform(0.02, 0.3)).clamp(max=0.5)
    albedo, portion = painted(level.clamp(-6, 60), table, soft, smooth)
    mottle = (noise(dice, p, dice.log_uniform(1, 8), 3, 0.6) - 0.5) * dice.uniform(0, 0.25)
    albedo = (albedo * (1 + mottle)).clamp(0.003, 0.97)
    light = torch.cat([dice.uniform(-1, 1), dice.uniform(-1, 1)], 1)
    light = light / light.norm(dim=1, keepdim=True).clamp(min=0.2)
    zeros = torch.zeros_like(depth)
    scene = SimpleNamespace(p=local, albedo=albedo, height=zeros.clone(), gloss=zeros + dice.uniform(0, 1), depth=depth,
                            inside=inside, aspect=main["aspect"], px=px, light=light, table=table, portion=portion,
                            level=level, covered=zeros.clone(), side=side * (depth > -9), frame=main["frame"], scale=main["scale"])
    return scene, inside, ground


def on_part(dice, scene, which, change):
    """Runs a change on the pictures that `which` names and writes it back; returns what it returned."""
    part = SimpleNamespace(**{name: getattr(scene, name)[which] for name in PARTS})
    result = change(dice.part(len(which)), part)
    for name in ("albedo", "height", "gloss", "covered"):
        setattr(scene, name, getattr(scene, name).index_copy(0, which, getattr(part, name).expand_as(getattr(scene, name)[which]).contiguous()))
    return result


def spoil(dice, scene, wanted):
    n, _, height, width = scene.depth.shape
    maps = torch.zeros(n, K, height, width, device=scene.depth.device)
    contrast = torch.zeros_like(maps)
    order = [6, 10, 3, 4, 11, 14, 15, 12, 7, 5, 13, 9, 8, 2, 0, 1]
    encode = lambda linear: linear.clamp(0.0005, 1.2) ** (1 / 2.2)
    for k in order:
        which = wanted[:, k].nonzero()[:, 0]
        if len(which) == 0:
            continue
        before = scene.albedo[which]
        mask = on_part(dice, scene, which, DRAWN[k]).clamp(0, 1)
        maps[which, k] = mask[:, 0]
        contrast[which, k] = (encode(scene.albedo[which]) - encode(before)).abs().amax(1) * (mask[:, 0] > 0.02)
    return maps, contrast


def deceive(dice, scene, tricky):
    for change in DECEITS:
        which = (tricky * dice.chance(OFTEN.get(change.__name__, 0.15), dice.n)).nonzero()[:, 0]
        if len(which):
            on_part(dice, scene, which, change)


def visible(maps, contrast, scene, wanted):
    """A finding counts where enough of it stands out from what is round it, at this size and blur."""
    stands_out = (contrast > 0.035) & (maps > 0.12)
    area = stands_out.float().flatten(2).sum(2)
    bar = scene.inside.flatten(1).sum(1, keepdim=True).clamp(min=1)
    return ((area > 9) & (area > 0.00025 * bar)).float() * wanted
