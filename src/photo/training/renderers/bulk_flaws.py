"""What can go wrong with a bar, one function a finding: each changes the part it is given and returns its mask."""
import torch

from bulk_fields import cells, fade, noise, over, scattered, softened, turned
from bulk_designs import lookup


def strong_hue(dice, part):
    """The undispersed colour of a portion: its hue deeper, or any strong pigment where the portion is pale."""
    n = dice.n
    own = part.table[torch.arange(n, device=dice.device), dice.pick([1] * 6)].view(n, 3, 1, 1)
    deeper = (own / own.amax(1, keepdim=True)) ** dice.uniform(1.5, 4) * own.amax(1, keepdim=True) * dice.uniform(0.1, 0.7)
    wheel = (torch.cos(6.2832 * (dice.uniform(0, 1) + torch.tensor([0, 1 / 3, 2 / 3], device=dice.device).view(1, 3, 1, 1))) + 1) / 2
    other = dice.uniform(0.15, 0.7) * (1 - dice.uniform(0.75, 0.98) * (1 - wheel)) ** 2
    return torch.where(dice.chance(0.55) > 0, deeper, other).clamp(0.003, 0.9)


def where_it_lies(dice, part, share=0.5):
    """Everywhere, in clusters, or in one portion alone."""
    clustered = fade(noise(dice, part.p, dice.log_uniform(0.6, 2.5), 2), 0.45, 0.6)
    gate = torch.where(dice.chance(0.4) > 0, clustered, torch.ones_like(clustered))
    wanted = dice.uniform(0, 3).floor()
    own = (part.portion == wanted).float()
    enough = (own * part.inside).flatten(1).sum(1) > 0.08 * part.inside.flatten(1).sum(1)
    only = (dice.chance(share) * enough.view(-1, 1, 1, 1).float()) > 0
    return torch.where(only, gate * own, gate)


def dots(dice, part, smallest, largest, fill=None, squash=None, p=None):
    """Soft-edged dots with radii between two sizes in bar widths; mask, distance over radius, vector, number."""
    radius = 2 * dice.log_uniform(smallest, largest)
    cell = radius * dice.log_uniform(2.6, 14)
    fill = dice.uniform(0.25, 0.9) if fill is None else fill
    least = radius / cell * dice.uniform(0.35, 0.9)
    far, vector, number, r = scattered(dice, part.p if p is None else p, cell, fill, least, radius / cell, squash)
    edge = (part.px / r).clamp(0.08, 3)
    small = ((r / part.px) ** 2 * 2.5).clamp(max=1)
    return (1 - fade(far, 1 - edge / 2, 1 + edge / 2)) * small, far, vector, number


def coloured_specks(dice, part):
    mask, *_ = dots(dice, part, 0.0022, 0.018)
    ragged = fade(noise(dice, part.p, 60.0, 1), 0.15, 0.35)
    mask = mask * where_it_lies(dice, part) * torch.where(dice.chance(0.4) > 0, ragged, 1.0)
    alpha = mask * dice.uniform(0.45, 1)
    part.albedo = over(part.albedo, strong_hue(dice, part), alpha)
    return mask


def smears(dice, part):
    angle = dice.uniform(0, 6.2832)
    bend = (noise(dice, part.p, 0.8, 1) - 0.5) * dice.uniform(0, 0.4) * dice.chance(0.4)
    p = turned(part.p + bend, angle)
    squash = dice.log_uniform(5, 26)
    mask, far, vector, _ = dots(dice, part, 0.0022, 0.012, squash=squash, p=p)
    # A grain at the head, a tail that thins away from it.
    tail = (1 - (vector[:, :1] * 0.5 + 0.5)).clamp(0, 1)
    taper = fade(tail - vector[:, 1:].abs() * dice.uniform(0.5, 1), -0.1, 0.6)
    mask = mask * taper * where_it_lies(dice, part, 0.3)
    part.albedo = over(part.albedo, strong_hue(dice, part), mask * dice.uniform(0.4, 1))
    return (mask * 1.4).clamp(max=1)


def white_specks(dice, part):
    stretch = torch.where(dice.chance(0.35) > 0, dice.uniform(1.2, 2.6), torch.ones_like(part.px))
    rough = (noise(dice, part.p, 40.0, 1) - 0.5) * 0.02 * dice.chance(0.6)
    p = turned(part.p + rough, dice.uniform(0, 6.28))
    mask, far, _, number = dots(dice, part, 0.002, 0.02, squash=stretch, p=p)
    mask = mask * where_it_lies(dice, part, 0.2)
    white = dice.uniform(0.75, 0.97) * torch.cat([torch.ones_like(part.px), dice.uniform(0.97, 1), dice.uniform(0.9, 1)], 1)
    part.albedo = over(part.albedo, white, mask * dice.uniform(0.5, 1))
    part.height = part.height + mask * (1 - far.clamp(max=1) ** 2) * dice.uniform(0, 0.02) * dice.chance(0.5)
    return mask


def translucent_veins(dice, part):
    f = dice.log_uniform(0.7, 2.6)
    warp = torch.cat([noise(dice, part.p, f, 2), noise(dice, part.p, f, 2)], 1) - 0.5
    p = part.p + warp * dice.uniform(0.2, 0.9)
    width = dice.uniform(0.02, 0.09)
    ridge = lambda freq, w: 1 - fade((noise(dice, p, freq, 2) - 0.5).abs(), w * 0.3, w * 1.1)
    veins = torch.maximum(ridge(f, width), ridge(f * dice.uniform(1.4, 2.4), width * 0.7) * dice.uniform(0.2, 1))
    network = 1 - fade(cells(dice, part.p + warp * 0.6, dice.log_uniform(0.25, 0.8)), width, width * 4)
    veins = torch.where(dice.chance(0.35) > 0, network, veins)
    veins = veins * fade(noise(dice, part.p, 0.9, 2), 0.25, 0.55)
    clear = part.albedo ** dice.uniform(1.25, 2.1) * dice.uniform(0.7, 1.0)
    lighter = over(part.albedo, torch.full_like(part.albedo, 0.75), dice.uniform(0.12, 0.35))
    changed = torch.where(dice.chance(0.82) > 0, clear, lighter)
    part.albedo = over(part.albedo, changed, veins * dice.uniform(0.35, 1))
    return fade(veins, 0.15, 0.6)


def crackle(dice, part):
    warp = torch.cat([noise(dice, part.p, 3.0, 2), noise(dice, part.p, 3.0, 2)], 1) - 0.5
    cell = dice.log_uniform(0.07, 0.3)
    line = dice.uniform(0.03, 0.13)
    edge = (part.px / cell).clamp(min=0.02)
    net = 1 - fade(cells(dice, part.p + warp * cell * dice.uniform(0, 1), cell), line * 0.4, line + edge)
    gate = fade(noise(dice, part.p, 1.0, 2), 0.25, 0.5)
    portion_pale = lookup(part.table, part.portion).mean(1, keepdim=True)
    pale = torch.where(dice.chance(0.6) > 0, fade(portion_pale, 0.25, 0.4), torch.ones_like(gate))
    net = net * torch.where(dice.chance(0.5) > 0, gate, torch.ones_like(gate)) * pale
    changed = part.albedo ** dice.uniform(1.2, 2) * dice.uniform(0.65, 0.98)
    part.albedo = over(part.albedo, changed, net * dice.uniform(0.35, 1))
    return net


def powdery_film(dice, part):
    patch = noise(dice, part.p, dice.log_uniform(0.7, 4), 3, 0.6)
    rim = 1 - fade(part.depth, 0.0, dice.uniform(0.1, 0.6))
    top = fade(-part.p[:, 1:] / part.aspect, dice.uniform(-0.6, 0.4), dice.uniform(0.5, 1))
    which = dice.uniform(0, 1)
    place = torch.where(which < 0.4, torch.ones_like(patch), torch.where(which < 0.7, rim, top))
    veil = fade(patch * 0.6 + place * 0.55, dice.uniform(0.35, 0.55), dice.uniform(0.65, 0.95)) * fade(place, 0.02, 0.4)
    dust = 0.75 + 0.5 * (noise(dice, part.p, dice.log_uniform(18, 60), 1) - 0.5)
    alpha = veil * dust * dice.uniform(0.25, 0.85)
    white = dice.uniform(0.68, 0.9) * torch.cat([dice.uniform(0.96, 1), dice.uniform(0.96, 1), dice.uniform(0.94, 1)], 1)
    part.albedo = over(part.albedo, white, alpha)
    part.gloss = part.gloss * (1 - veil * 0.8)
    return fade(veil, 0.2, 0.6)


def dark_centre(dice, part):
    size = dice.uniform(0.4, 0.8)
    centre = torch.cat([dice.uniform(-0.15, 0.15), dice.uniform(-0.15, 0.15) * part.aspect], 1)
    half = torch.cat([torch.ones_like(part.aspect), part.aspect], 1) * size
    power = dice.uniform(2, 5)
    r = (((part.p - centre) / half).abs() ** power).sum(1, keepdim=True) ** (1 / power)
    r = r + (noise(dice, part.p, dice.log_uniform(0.7, 2), 2) - 0.5) * dice.uniform(0.05, 0.45)
    soft = dice.uniform(0.08, 0.5)
    heart = 1 - fade(r, 1 - soft / 2, 1 + soft / 2)
    rim = torch.exp(-(((r - 1) / (0.3 * soft + 0.03)) ** 2)) * dice.chance(0.3) * dice.uniform(0.1, 0.4)
    changed = part.albedo ** dice.uniform(1.1, 1.7) * dice.uniform(0.55, 0.92)
    part.albedo = over(part.albedo, changed, heart * dice.uniform(0.5, 1))
    part.albedo = over(part.albedo, part.albedo * 0.6, rim)
    return fade(heart, 0.2, 0.7)


def orange_spots(dice, part):
    rough = torch.cat([noise(dice, part.p, 9.0, 2), noise(dice, part.p, 9.0, 2)], 1) - 0.5
    p = part.p + rough * dice.uniform(0, 0.08)
    mask, far, _, number = dots(dice, part, 0.004, 0.06, fill=dice.uniform(0.12, 0.7), p=p)
    gate = where_it_lies(dice, part, 0.1)
    soft = torch.where(dice.chance(0.5) > 0, torch.exp(-(far * 1.1) ** 2), mask)
    halo = torch.exp(-((far / dice.uniform(1.3, 2.2)) ** 2)) * dice.chance(0.6) * 0.45
    mask = torch.maximum(soft, halo) * gate
    orange = torch.cat([dice.uniform(0.4, 0.8), dice.uniform(0.13, 0.36), dice.uniform(0.01, 0.09)], 1) * dice.uniform(0.5, 1.05)
    stain = over(orange, orange * part.albedo * 1.6, dice.uniform(0, 0.8))
    part.albedo = over(part.albedo, stain, mask * dice.uniform(0.45, 0.95))
    return fade(mask, 0.12, 0.5)


def pinholes(dice, part):
    shape = torch.where(dice.chance(0.3) > 0, dice.uniform(1, 1.8), torch.ones_like(part.px))
    mask, far, vector, _ = dots(dice, part, 0.003, 0.022, squash=shape)
    gate = where_it_lies(dice, part, 0.1)
    mask = mask * gate
    hollow = (1 - far.clamp(max=1) ** dice.uniform(1.5, 4)) * mask
    deep = dice.uniform(0.25, 0.85)
    # The wall away from the light is lit, the one towards it lies in shade.
    towards = (vector * part.light).sum(1, keepdim=True)
    inner = part.albedo * (1 - deep * (0.45 + 0.55 * fade(towards, -0.7, 0.5)))
    part.albedo = over(part.albedo, inner, mask)
    ring = torch.exp(-(((far - 1.05) / 0.28) ** 2)) * fade(-towards, 0.1, 0.9) * gate * (far < 1.8)
    part.albedo = over(part.albedo, (part.albedo * 1.5 + 0.05).clamp(max=1), ring * dice.uniform(0.2, 0.9))
    part.height = part.height - hollow * dice.uniform(0.0, 0.02)
    return mask


def crack(dice, part):
    along = dice.chance(0.75)
    q = torch.where(along > 0, part.p, part.p.flip(1))
    reach = torch.where(along > 0, torch.ones_like(part.aspect), part.aspect)
    across = torch.where(along > 0, part.aspect, torch.ones_like(part.aspect))
    q = turned(q, dice.uniform(-0.35, 0.35))
    path = (noise(dice, torch.cat([q[:, :1], q[:, :1] * 0], 1), dice.log_uniform(1, 4), 3, 0.6) - 0.5) * dice.uniform(0.05, 0.5)
    ragged = noise(dice, q, dice.log_uniform(6, 16), 2)
    middle = dice.uniform(-0.55, 0.55) * across
    begin = -reach * dice.uniform(0.1, 1.3)
    end = reach * dice.uniform(0.1, 1.3)
    width = dice.log_uniform(0.008, 0.06) * (0.25 + 1.4 * noise(dice, torch.cat([q[:, :1], q[:, :1] * 0], 1), dice.log_uniform(1, 5), 2))
    ends = fade(q[:, :1], begin, begin + 0.3) * (1 - fade(q[:, :1], end - 0.3, end))
    far = (q[:, 1:] - middle - path).abs() + (ragged - 0.5) * width * 1.2
    edge = part.px
    mask = (1 - fade(far, width * ends - edge, width * ends + edge)) * (ends > 0.02)
    dark = part.albedo * dice.uniform(0.06, 0.5)
    part.albedo = over(part.albedo, dark, mask * (0.55 + 0.45 * (1 - far / (width + 1e-3)).clamp(0, 1)) * dice.uniform(0.6, 1))
    part.height = part.height + torch.exp(-(far / (width * 2 + 0.01)) ** 2) * ends * 0.02 * dice.uniform(0, 1) - mask * 0.03
    return mask


def browning(dice, part):
    reach = dice.uniform(0.08, 0.55)
    wander = (noise(dice, part.p, dice.log_uniform(0.8, 3), 2) - 0.5) * dice.uniform(0, 0.8) * reach
    rim = torch.exp(-((part.depth + wander).clamp(min=0) / reach) ** dice.uniform(1, 3))
    one_sided = fade((part.p * part.light.roll(1, 1)).sum(1, keepdim=True), -1.2, 0.3)
    rim = rim * torch.where(dice.chance(0.2) > 0, one_sided, torch.ones_like(rim))
    tan = torch.cat([dice.uniform(0.22, 0.6), dice.uniform(0.1, 0.32), dice.uniform(0.02, 0.14)], 1)
    stain = over(tan, tan * part.albedo * 1.7, dice.uniform(0.1, 0.9))
    part.albedo = over(part.albedo, stain, rim * dice.uniform(0.35, 0.95))
    return fade(rim, 0.25, 0.6)


def bled(dice, part):
    """One colour creeps over the border into its neighbour, on one side alone."""
    within = part.level - part.portion
    upward = dice.chance(0.5)
    far = torch.where(upward > 0, within, 1 - within)
    reach = dice.uniform(0.12, 0.5)
    patch = fade(noise(dice, part.p, dice.log_uniform(0.5, 2), 2), 0.15, 0.4)
    wander = (noise(dice, part.p, 5.0, 2) - 0.5) * 0.3 * reach
    halo = torch.exp(-((far + wander).clamp(min=0) / reach) ** dice.uniform(0.8, 1.6)) * patch
    guest = lookup(part.table, part.portion + torch.where(upward > 0, -1.0, 1.0))
    apart = (guest - lookup(part.table, part.portion)).abs().sum(1, keepdim=True)
    part.albedo = over(part.albedo, guest * dice.uniform(0.8, 1.1), halo * dice.uniform(0.45, 0.9))
    return fade(halo, 0.15, 0.5) * fade(apart, 0.06, 0.2)


def drag_lines(dice, part):
    angle = dice.uniform(0, 6.2832)
    q = turned(part.p, angle)
    mask = 0
    for _ in range(2):
        gap = dice.log_uniform(0.03, 0.4)
        length = dice.log_uniform(0.3, 3)
        thin = dice.log_uniform(0.004, 0.016)
        row = torch.floor(q[:, 1:] / gap)
        table = torch.rand((dice.n, 4, 64), generator=dice.generator, device=q.device)
        value = table.gather(2, (row.long() % 64).flatten(2).expand(-1, 4, -1)).view(dice.n, 4, *q.shape[2:])
        far = ((q[:, 1:] / gap - row) - 0.3 - 0.4 * value[:, :1]).abs() * gap
        along = (q[:, :1] - (value[:, 1:2] * 2 - 1) * 1.0).abs() / (length * (0.3 + value[:, 2:3]))
        line = (1 - fade(far, thin * 0.5, thin * 0.5 + part.px)) * (1 - fade(along, 0.75, 1.0)) * (value[:, 3:4] < dice.uniform(0.35, 1))
        mask = torch.maximum(line * (thin / part.px * 1.5).clamp(max=1), mask if torch.is_tensor(mask) else torch.zeros_like(line))
    mask = mask * fade(noise(dice, part.p, 0.8, 1), 0.2, 0.45)
    dark = part.albedo * dice.uniform(0.35, 0.85)
    light = over(part.albedo, torch.full_like(part.albedo, 0.85), dice.uniform(0.25, 0.6))
    part.albedo = over(part.albedo, torch.where(dice.chance(0.55) > 0, dark, light), mask * dice.uniform(0.4, 1))
    part.height = part.height - mask * 0.006
    return mask


def layer_gap(dice, part):
    within = part.level - part.portion
    step = (part.level[:, :, 1:, :] - part.level[:, :, :-1, :]).abs()
    slope = torch.cat([step, step[:, :, -1:]], 2).clamp(1e-4, 0.5) / part.px
    far = torch.minimum(within, 1 - within) / slope
    border = torch.round(part.level)
    wanted = border == dice.uniform(1, 4).floor()
    one = torch.where(dice.chance(0.6) > 0, wanted.float(), torch.ones_like(far))
    width = dice.log_uniform(0.006, 0.035) * (0.2 + 1.3 * noise(dice, part.p, dice.log_uniform(1, 5), 2))
    begin = dice.uniform(-1.4, 0.4)
    extent = fade(part.p[:, :1], begin, begin + 0.4) * (1 - fade(part.p[:, :1], begin + dice.uniform(0.5, 2.4), begin + 2.8))
    extent = torch.where(dice.chance(0.4) > 0, torch.ones_like(extent), extent)
    mask = (1 - fade(far, width * extent - part.px * 0.7, width * extent + part.px)) * (extent > 0.1) * one * (slope < 8)
    part.albedo = over(part.albedo, part.albedo * dice.uniform(0.05, 0.5), mask * dice.uniform(0.6, 1))
    part.height = part.height - mask * 0.02
    return mask


def wrinkles(dice, part):
    q = turned(part.p, dice.uniform(0, 3.14))
    warp = torch.cat([noise(dice, part.p, 2.5, 2), noise(dice, part.p, 2.5, 2)], 1) - 0.5
    cell = dice.log_uniform(0.05, 0.22)
    skin = torch.cat([q[:, :1] / dice.uniform(1, 2.5), q[:, 1:]], 1) + warp * dice.uniform(0.1, 0.5)
    scales = fade(cells(dice, skin, cell), 0.0, dice.uniform(0.25, 0.6))
    folds = 1 - (2 * noise(dice, skin / cell * 0.35, 1.0, 2) - 1).abs() * 2
    relief = torch.where(dice.chance(0.6) > 0, scales, folds.clamp(0, 1))
    whole = dice.chance(0.55)
    band = 1 - fade(part.p[:, 1:] / part.aspect, dice.uniform(-0.8, -0.1), dice.uniform(0, 0.6))
    gate = torch.where(whole > 0, fade(noise(dice, part.p, 0.8, 1), 0.1, 0.35), band)
    depth = dice.uniform(0.008, 0.03)
    part.height = part.height + relief * gate * depth * cell * 6
    part.albedo = part.albedo * (1 - (1 - relief) * gate * dice.uniform(0.08, 0.4))
    return fade(gate, 0.3, 0.7)


def dimples(dice, part):
    radius = 2 * dice.log_uniform(0.012, 0.06)
    regular = dice.chance(0.45)
    pitch = radius * dice.uniform(2.2, 4.5)
    q = turned(part.p, dice.uniform(-0.3, 0.3))
    row = torch.floor(q[:, 1:] / pitch)
    shifted = torch.cat([q[:, :1] + (row % 2) * pitch / 2 * dice.chance(0.5), q[:, 1:]], 1)
    grid = ((shifted / pitch - torch.floor(shifted / pitch) - 0.5) * pitch / radius).norm(dim=1, keepdim=True)
    free, *_ = scattered(dice, part.p, radius * 2.6, 0.6, torch.full_like(radius, 0.22), torch.full_like(radius, 0.38))
    far = torch.where(regular > 0, grid, free)
    bowl = (1 - far.clamp(max=1) ** 2) ** 1.5
    crease = 1 - fade((noise(dice, turned(part.p, dice.uniform(0, 3.14)) * torch.tensor([0.4, 1.6], device=q.device).view(1, 2, 1, 1), dice.log_uniform(0.6, 2), 1) - 0.5).abs(), 0.004, 0.02)
    liner = dice.chance(0.3)
    gate = fade(noise(dice, part.p, 0.7, 1), 0.15, 0.4)
    relief = torch.where(liner > 0, crease * 0.5, bowl) * gate
    part.height = part.height - relief * radius * dice.uniform(0.15, 0.5)
    part.albedo = part.albedo * (1 - relief * dice.uniform(0.0, 0.25))
    return fade(relief, 0.1, 0.4)


DRAWN = [coloured_specks, smears, white_specks, translucent_veins, crackle, powdery_film, dark_centre, orange_spots,
         pinholes, crack, browning, bled, drag_lines, layer_gap, wrinkles, dimples]
# Findings that go by light on relief more than by colour.
BY_RELIEF = {14, 15}
