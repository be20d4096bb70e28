"""Where bars lie: geometry of bars, tables, sheets, hands and the things that are no soap."""
import torch

from bulk_designs import colours
from bulk_fields import cells, fade, noise, over, scattered, turned


def box_distance(p, half, rounding):
    """Signed distance to a box with rounded corners, negative inside."""
    q = p.abs() - half + rounding
    return q.clamp(min=0).norm(dim=1, keepdim=True) + q.amax(1, keepdim=True).clamp(max=0) - rounding


def stand(dice, q, near=None):
    """
    A bar's own frame: p (half its width is 1), its aspect, distance to its outline, the side in view.
    `q` are places in the picture (half its height is 1); with `near` a neighbour of that bar.
    """
    wide = q[:, :1, :1, -1:].abs()
    if near is None:
        loaf = dice.chance(0.15)
        aspect = torch.where(loaf > 0, dice.uniform(0.25, 0.5), dice.uniform(0.45, 1.0))
        filling = dice.chance(0.14)
        scale = torch.where(filling > 0, dice.uniform(1.3, 2.6) * wide, dice.uniform(0.3, 0.95) * wide)
        scale = torch.where((filling == 0), torch.minimum(scale, 0.98 / aspect.clamp(min=0.6)), scale)
        room = (1.02 - torch.minimum(scale / wide, torch.ones_like(scale))).clamp(min=0.03)
        centre = torch.cat([dice.uniform(-1, 1) * wide * room, dice.uniform(-1, 1) * (1.05 - (scale * aspect).clamp(max=1))], 1)
        angle = torch.where(dice.chance(0.6) > 0, dice.uniform(-0.15, 0.15), dice.uniform(-3.14, 3.14))
        tilt = torch.cat([dice.uniform(-0.25, 0.25), dice.uniform(-0.3, 0.3)], 1) * dice.chance(0.6)
    else:
        aspect, scale, centre, angle, tilt = near
        angle = angle + dice.uniform(-0.25, 0.25) * dice.chance(0.5)
        way = dice.uniform(0, 6.2832)
        step = torch.cat([torch.cos(way), torch.sin(way) * aspect], 1) * scale * dice.uniform(1.7, 2.5)
        centre = centre + step
        aspect, scale = aspect * dice.uniform(0.93, 1.07), scale * dice.uniform(0.9, 1.1)
    frame = (aspect, scale, centre, angle, tilt)
    local = turned(q - centre, angle) / scale
    p = local / (1 + (tilt * local).sum(1, keepdim=True)).clamp(min=0.25)
    half = torch.cat([torch.ones_like(aspect), aspect], 1)
    rounding = dice.uniform(0.01, 0.16) * aspect
    uneven = (noise(dice, p, dice.log_uniform(0.6, 3), 2) - 0.5) * dice.uniform(0, 0.05)
    oval = ((p / half).norm(dim=1, keepdim=True) - 1) * aspect
    outline = lambda at: torch.where(is_oval > 0, ((at / half).norm(dim=1, keepdim=True) - 1) * aspect, box_distance(at, half, rounding)) + uneven
    is_oval = dice.chance(0.06)
    front = outline(p)
    way = torch.cat([dice.uniform(-0.5, 0.5), dice.uniform(-0.6, 0.25)], 1) * dice.chance(0.6)
    way = way / way.norm(dim=1, keepdim=True).clamp(min=0.3) * dice.uniform(0.1, 0.5)
    side = torch.full_like(front, 9.0)
    for step in range(1, 7):
        side = torch.minimum(side, outline(p - way * (step / 6)))
    return {"p": p, "half": half, "aspect": aspect, "front": front, "side": side, "frame": frame, "scale": scale}


def table_top(dice, q):
    """The ground under everything: board, cloth, paper, stone, lace, tiles; linear colours."""
    n = dice.n
    one, two = colours(dice, n).view(n, 3, 1, 1), colours(dice, n).view(n, 3, 1, 1)
    grey = dice.uniform(0.05, 0.85) * torch.ones_like(one)
    wooden = torch.cat([dice.uniform(0.2, 0.6), dice.uniform(0.1, 0.36), dice.uniform(0.04, 0.2)], 1)
    t = turned(q, dice.uniform(0, 3.1416))
    grain = noise(dice, torch.cat([t[:, :1] * 0.12, t[:, 1:]], 1) + (noise(dice, t, 0.7) - 0.5) * 0.2, dice.log_uniform(4, 16), 3, 0.65)
    planks = (torch.sin(t[:, 1:] * dice.uniform(3, 9)).abs() > 0.03).float()
    wood = wooden * (0.45 + 0.9 * grain) * (0.4 + 0.6 * planks)
    f = dice.log_uniform(20, 120)
    weave = 0.5 + 0.25 * (torch.sin(t[:, :1] * f) + torch.sin(t[:, 1:] * f))
    checks = ((torch.sin(t[:, :1] * f / 12) > 0) ^ (torch.sin(t[:, 1:] * f / 12) > 0)).float() * dice.chance(0.4)
    folds = noise(dice, t, dice.uniform(0.5, 2), 2)
    cloth = over(one, two, checks) * (0.75 + 0.25 * weave) * (0.7 + 0.5 * folds)
    vein = 1 - fade((noise(dice, t, dice.log_uniform(0.8, 2.5), 4, 0.6) - 0.5).abs(), 0.0, dice.uniform(0.02, 0.1))
    stone = grey * (0.85 + 0.3 * noise(dice, t, 6.0, 4, 0.7)) * (1 - vein * dice.uniform(0, 0.6))
    speckled = grey * (0.6 + 0.8 * noise(dice, t, dice.log_uniform(20, 70), 2))
    plain = one * (0.92 + 0.16 * noise(dice, t, 1.5, 2))
    hole, *_ = scattered(dice, t, dice.uniform(0.05, 0.14), 0.95, 0.2, 0.42)
    lace = over(two * 0.5, torch.full_like(two, 0.85), fade(hole, 0.7, 1.1))
    tile = over(grey * 0.5, one * 0.5 + 0.3, fade(cells(dice, torch.round(t * 2) / 2 + (t - torch.round(t * 2) / 2) * 0.3, 0.5), 0.0, 0.02))
    all_kinds = torch.stack([wood, cloth, stone, speckled, plain, lace, tile], 1)
    return all_kinds[torch.arange(n, device=q.device), dice.pick([4, 3, 2, 1, 3, 0.6, 0.6])].clamp(0.004, 0.95)


def put(ground, colour, mask, shadow, dark):
    return over(ground * (1 - shadow * dark), colour, mask)


def clutter(dice, q, ground, busy):
    """Sheets of white, plates, boxes, jars, books: no soap among them."""
    n = dice.n
    wide = q[:, :1, :1, -1:].abs()
    for index in range(4):
        on = dice.chance(0.35 if index else 0.4) if not busy else dice.chance(0.8)
        centre = torch.cat([dice.uniform(-1, 1) * wide, dice.uniform(-1, 1)], 1) * (0.6 if busy else 1.15)
        at = turned(q - centre, dice.uniform(-3.14, 3.14) * dice.chance(0.5))
        half = torch.cat([dice.log_uniform(0.08, 0.8), dice.log_uniform(0.08, 0.6)], 1)
        box = box_distance(at, half, dice.uniform(0, 0.02))
        dish = (at / half[:, :1]).norm(dim=1, keepdim=True) * half[:, :1] - half[:, :1]
        blob = dish + (noise(dice, at, dice.log_uniform(1, 4), 2) - 0.5) * half[:, :1] * 1.2
        kind = dice.pick([3, 1.5, 1]).view(-1, 1, 1, 1)
        far = torch.where(kind == 0, box, torch.where(kind == 1, dish, blob))
        colour = colours(dice, n).view(n, 3, 1, 1)
        white = dice.uniform(0.7, 0.9) * torch.ones_like(colour)
        sheet = (kind == 0) & (dice.chance(0.4) > 0)
        colour = torch.where(sheet, white, colour)
        rings = fade((torch.remainder(-far, half[:, :1] * 0.45) / half[:, :1]), 0.0, 0.03)
        fur = 0.5 + noise(dice, torch.cat([at[:, :1], at[:, 1:] * 0.2], 1), dice.log_uniform(15, 50), 2)
        lines = fade(noise(dice, at * torch.tensor([3.0, 16.0], device=q.device).view(1, 2, 1, 1) / half[:, :1], 1.0), 0.5, 0.54)
        dressed = torch.where(kind == 0, over(colour, colour * 0.2 + 0.02, lines * dice.chance(0.5) * (1 - sheet.float()) * (far < -0.03)),
                              torch.where(kind == 1, colour * (0.7 + 0.3 * rings), colour * fur))
        mask = (1 - fade(far, -0.006, 0.006)) * on
        shadow = (1 - fade(far + 0.03 * at[:, :1], 0.0, dice.uniform(0.02, 0.2))) * on
        ground = put(ground, dressed, mask, shadow, dice.uniform(0, 0.6))
    return ground


def crumbs(dice, q, ground):
    far, _, number, _ = scattered(dice, q, dice.log_uniform(0.05, 0.25), dice.uniform(0.05, 0.5), 0.04, 0.16)
    colour = colours(dice, dice.n).view(-1, 3, 1, 1)
    return over(ground, colour * (0.6 + 0.6 * number), (1 - fade(far, 0.8, 1.1)) * dice.chance(0.25))


def fingers(dice, q, frame):
    """A hand that holds the bar from one side: mask and colour."""
    aspect, scale, centre, angle, _ = frame
    side = dice.uniform(0, 6.2832)
    at = turned(q - centre, side)
    reach = scale * torch.where(torch.cos(side - angle).abs() > 0.7, torch.ones_like(aspect), aspect)
    thick = dice.uniform(0.1, 0.17)
    far = torch.full_like(at[:, :1], 9.0)
    for finger in range(4):
        y = at[:, 1:] - (finger - 1.5) * thick * 2.1 + dice.uniform(-0.03, 0.03)
        tip = reach * dice.uniform(0.45, 0.85)
        x = (tip - at[:, :1]).clamp(min=0)
        far = torch.minimum(far, (x**2 + y**2).sqrt() - thick)
    skin = torch.cat([dice.uniform(0.25, 0.75), dice.uniform(0.5, 0.62), dice.uniform(0.5, 0.8)], 1)
    skin = torch.cat([skin[:, :1], skin[:, :1] * skin[:, 1:2], skin[:, :1] * skin[:, 1:2] * skin[:, 2:]], 1)
    glove = colours(dice, dice.n).view(-1, 3, 1, 1)
    skin = torch.where(dice.chance(0.25) > 0, glove, skin)
    shade = (0.55 + 0.45 * fade(-far / thick, 0, 0.9)) * (0.92 + 0.16 * noise(dice, q, 12.0, 2))
    return 1 - fade(far, -0.008, 0.008), skin * shade
