"""
What a maker lays beside, under and behind a bar, laid in pictures that have none: sheets of paper, cards, grey cards, cloths,
plates, boards and rulers. No renderer draws them as a maker is asked to lay them.
"""
import math

import torch
import torch.nn.functional as F

from disturb import chance, field, log_chance

SHEET, CARD, CLOTH, PLATE, BOARD, RULER = range(6)
# How often each is taken, one after the other.
OFTEN = (0.46, 0.12, 0.13, 0.11, 0.11, 0.07)
# Part of light that comes back: a card for white balance sends back 18 %.
GREY = 0.18
# Chance that a first, a second and a third thing lies there.
HOW_MANY = (1.0, 0.45, 0.2)
SIDE = 160


def even(n, device, generator):
    """Reflectances [n,3], linear: most of them white, as paper is, some cream or kraft. Dyed and even is what soap is: a reader then took such bars for paper."""
    r = lambda low, high, width=1: chance(n, device, generator, low, high, width)
    white = r(0.68, 0.95) * (1 + r(-0.03, 0.03, 3))
    cream = r(0.6, 0.85) * torch.cat([torch.ones(n, 1, device=device), r(0.86, 0.99), r(0.6, 0.95)], 1)
    return torch.where(r(0, 1) < 0.85, white, cream)


def wooden(n, device, generator):
    r = lambda low, high: chance(n, device, generator, low, high)
    return r(0.06, 0.6) * torch.cat([torch.ones(n, 1, device=device), r(0.5, 0.8), r(0.22, 0.6)], 1)


def reflectance(what, generator):
    """One colour [n,3] for each thing, after its kind."""
    n, device = len(what), what.device
    r = lambda low, high, width=1: chance(n, device, generator, low, high, width)
    grey = GREY * torch.exp(r(-0.4, 0.5)) * (1 + r(-0.03, 0.03, 3))
    dyed = r(0.03, 0.85, 3) ** 1.3
    paper, wood = even(n, device, generator), wooden(n, device, generator)
    kinds = torch.stack([paper, torch.where(r(0, 1) < 0.6, grey, paper), torch.where(r(0, 1) < 0.5, paper, dyed), torch.where(r(0, 1) < 0.75, paper, dyed),
                         torch.where(r(0, 1) < 0.8, wood, paper), torch.where(r(0, 1) < 0.5, torch.where(r(0, 1) < 0.5, wood, grey * 2), paper)])
    return kinds[what, torch.arange(n, device=device)].view(n, 3, 1, 1)


def measured(what, middle, half, size, generator):
    """Where each lies and how large it is, in pixels: place [n,2], half sides [n,2]. `middle`, `half`: of the bar's square; `size`: w, h."""
    n, device = len(what), what.device
    r = lambda low, high, width=1: chance(n, device, generator, low, high, width)
    one = lambda *these: sum((what == this) for this in these).view(n, 1) > 0
    long = (half * torch.exp(r(-1.1, 0.75))).clamp(18, 0.8 * max(size))
    aspect = torch.exp(r(0, 0.9))
    aspect = torch.where(one(RULER), r(5, 14), torch.where(one(PLATE), torch.exp(r(0, 0.5)), aspect))
    long = torch.where(one(RULER), half * torch.exp(r(-0.3, 0.8)), long)
    angle = r(0, 2 * math.pi)
    away = torch.cat([torch.cos(angle), torch.sin(angle)], 1)
    beside = middle + away * (half * r(0.7, 1.1) + long * r(0.45, 1.1))
    # The nearest that still lies in the picture, for the most part.
    bound = torch.tensor([float(side) for side in size], device=device)
    beside = torch.where(r(0, 1) < 0.8, beside.clamp(min=0).minimum(bound), beside)
    anywhere = r(0, 1, 2) * bound
    under = middle + half * r(-0.35, 0.35, 2)
    where = r(0, 1)
    lies_under = (where < 0.3) & ~one(RULER)
    place = torch.where(lies_under, under, torch.where(where < 0.85, beside, anywhere))
    long = torch.where(lies_under, half * r(0.95, 2.2) * aspect.sqrt(), long)
    sides = torch.cat([long, long / aspect], 1)
    return place, torch.where(r(0, 1) < 0.5, sides, sides.flip(1))


class Frame:
    """Each thing's own coordinates over the picture [n,1,h,w]: `u`, `v` from -1 to 1 across it, `edge` in pixels, below nought within."""

    def __init__(self, what, place, sides, size, generator):
        n, device = len(what), what.device
        r = lambda low, high: chance(n, device, generator, low, high).view(n, 1, 1, 1)
        w, h = size
        y, x = torch.meshgrid(torch.arange(h, device=device).float() + 0.5, torch.arange(w, device=device).float() + 0.5, indexing="ij")
        self.x, self.y = x - place[:, 0].view(n, 1, 1, 1), y - place[:, 1].view(n, 1, 1, 1)
        turn = torch.where(r(0, 1) < 0.5, r(-0.2, 0.2), r(-math.pi, math.pi))
        a, b = sides[:, 0].view(n, 1, 1, 1), sides[:, 1].view(n, 1, 1, 1)
        u, v = (self.x * turn.cos() + self.y * turn.sin()) / a, (self.y * turn.cos() - self.x * turn.sin()) / b
        depth = (1 + u * r(-0.16, 0.16) + v * r(-0.16, 0.16)).clamp(min=0.25)
        self.u, self.v, self.a, self.b = u / depth, v / depth, a, b
        is_of = lambda *these: (sum((what == this) for this in these) > 0).view(n, 1, 1, 1)
        least = torch.minimum(a, b)
        corner = torch.where(is_of(SHEET, RULER), r(0, 0.04), torch.where(is_of(CLOTH), r(0.02, 0.25), r(0, 0.2)))
        corner = torch.where(is_of(BOARD) & (r(0, 1) < 0.15), torch.ones_like(corner), corner) * least
        p, q = self.u.abs() * a - a + corner, self.v.abs() * b - b + corner
        straight = (p.clamp(min=0) ** 2 + q.clamp(min=0) ** 2 + 1e-6).sqrt() + torch.maximum(p, q).clamp(max=0) - corner
        self.r = (self.u**2 + self.v**2 + 1e-6).sqrt()
        self.edge = torch.where(is_of(PLATE), (self.r - 1) * least, straight)
        ragged = F.interpolate(field(n, SIDE, device, generator, 3, 14), (h, w), mode="bilinear", align_corners=False)
        self.edge = self.edge + ragged * least * torch.where(is_of(CLOTH), r(0, 0.06), torch.where(r(0, 1) < 0.12, r(0, 0.03), torch.zeros_like(least)))


def lines(at, width):
    """Where `at` is near a whole number, within `width`: 0 to 1."""
    return (1.5 - (at - torch.round(at)).abs() / width).clamp(0, 1)


def look(what, frame, generator):
    """What a thing's colour is multiplied by over the picture: print, folds, weave, grain, rims, marks of a ruler; [n,1,h,w]."""
    n, device = len(what), what.device
    h, w = frame.u.shape[-2:]
    r = lambda low, high: chance(n, device, generator, low, high).view(n, 1, 1, 1)
    often = lambda part: (r(0, 1) < part).float()
    of = lambda *these: (sum((what == this) for this in these) > 0).float().view(n, 1, 1, 1)
    wide = lambda low, high: F.interpolate(field(n, SIDE, device, generator, low, high), (h, w), mode="bilinear", align_corners=False)
    u, v, a, b = frame.u, frame.v, frame.a, frame.b
    out = 1 + wide(2, 9) * r(0, 0.05) * often(0.5)
    out = out + torch.randn((n, 1, h, w), device=device, generator=generator) * r(0, 0.03)
    # Paper: ruled or squared, written on, folded.
    ruled = torch.maximum(lines(v * b / r(7, 26), 0.09), lines(u * a / r(7, 26), 0.09) * often(0.4)) * often(0.1)
    rows = lines(v * b / r(7, 22), 0.3)
    words = (wide(12, 22) + 0.8 * torch.sin(u * a * r(0.15, 0.6)) > r(-0.2, 1)).float()
    written = rows * words * (torch.maximum(u.abs(), v.abs()) < r(0.5, 0.92)).float() * often(0.12)
    fold = u + r(-0.4, 0.4)
    folded = (torch.sign(fold) * r(-0.07, 0.07) - (1 - fold.abs() * a / 2.5).clamp(0, 1) * r(0, 0.2)) * often(0.25)
    out = out + of(SHEET, CARD) * (folded - ruled * r(0.1, 0.6) - written * r(0.2, 0.9))
    # Cloth: weave, folds, stripes or squares.
    t = r(1.2, 4)
    weave = (torch.sin(u * a * 2 / t) + torch.sin(v * b * 2 / t)) * r(0, 0.09)
    ridge = wide(1.5, 6)
    creases = (1 - ridge.abs() * 3).clamp(0, 1) * r(0, 0.3) + wide(1, 4) * r(0, 0.2)
    squares = (torch.sin(u * r(3, 20)) > 0).float() * often(0.35) + (torch.sin(v * r(3, 20)) > 0).float() * often(0.35)
    out = out + of(CLOTH) * (weave - creases - squares * r(0.1, 0.4))
    # A plate's rim and its hollow, a board's grain and its lower edge, a ruler's marks.
    inner = r(0.55, 0.85)
    rim = torch.tanh((frame.r - inner) * 30) * torch.sin(torch.atan2(v, u) + r(-3, 3)) * torch.exp(-(((frame.r - inner) / 0.08) ** 2)) * r(0, 0.3)
    ring = lines((frame.r - r(0.9, 0.97)) * r(0.5, 3), 0.03) * r(0, 0.6) * often(0.4)
    out = out + of(PLATE) * (rim - ring * (frame.r > 0.8).float() - (frame.r < inner).float() * r(-0.03, 0.08))
    grain = torch.sin(v * b * r(0.1, 0.5) + 5 * wide(1, 3)) * r(0, 0.14) + wide(10, 24) * r(0, 0.08)
    out = out + of(BOARD, RULER) * grain * torch.where(of(RULER) > 0, often(0.4), torch.ones_like(grain[:, :, :1, :1]))
    step = r(4, 12)
    marks = torch.maximum(lines(u * a / step, 0.14) * (v < -0.45).float(), lines(u * a / step / 5, 0.04) * (v < 0.1).float())
    out = out + of(RULER) * (-marks * r(0.4, 0.95) - of(RULER) * (rows * words * (v > 0.2).float()) * 0.5 * often(0.6))
    return out.clamp(0.02, 1.6)


def light_of(image, bar, generator):
    """How bright what is wholly white would be there [n,3,1,1], linear, and how that changes over the picture [n,1,h,w]."""
    n, _, h, w = image.shape
    device = image.device
    r = lambda low, high, width=1: chance(n, device, generator, low, high, width).view(n, -1, 1, 1)
    small = F.avg_pool2d(image, 8) ** 2.2
    dim = small.mean(1, keepdim=True)
    top = dim.flatten(1).kthvalue(int(0.97 * dim[0].numel()), dim=1).values.view(n, 1, 1, 1)
    level = torch.where(r(0, 1) < 0.6, top * r(0.8, 1.8), r(0.25, 1.5)).clamp(0.06, 1.7)
    tint = (small.mean((2, 3), keepdim=True) / small.mean((1, 2, 3), keepdim=True).clamp(min=1e-3)).clamp(0.3, 3) ** (r(0, 0.5))
    wander = F.interpolate(field(n, SIDE, device, generator, 0.6, 2.5), (h, w), mode="bilinear", align_corners=False)
    # Light and shade that lie on the table lie on what covers it as well.
    off = F.avg_pool2d(1 - F.avg_pool2d(bar, 4), 9, 1, 4)
    shade = F.avg_pool2d(dim * (1 - F.avg_pool2d(bar, 4)), 9, 1, 4) / off.clamp(min=0.05)
    shade = (shade / dim.mean((2, 3), keepdim=True).clamp(min=1e-3)).clamp(0.3, 1.5) ** (r(0, 0.7) * (r(0, 1) < 0.4))
    shade = F.interpolate(shade, (h, w), mode="bilinear", align_corners=False)
    return level * tint, torch.exp(wander * r(0, 0.22)) * shade


def shadow_of(bar, half, size, generator):
    """What the bar leaves of the light round it, 0 to 1 [n,1,h,w]: a shadow to one side, and one right under it."""
    n, device = len(bar), bar.device
    w, h = size
    r = lambda low, high, width=1: chance(n, device, generator, low, high, width)
    angle = r(0, 2 * math.pi)
    away = torch.cat([torch.cos(angle), torch.sin(angle)], 1) * half * r(0.02, 0.3) / torch.tensor([w / 2, h / 2], device=device)
    soft = lambda x, k: F.avg_pool2d(F.avg_pool2d(x, k, 1, k // 2, count_include_pad=False), k, 1, k // 2, count_include_pad=False)
    kernel = int(torch.randint(1, 12, ())) * 2 + 1
    cast = soft(bar, kernel)
    identity = torch.eye(2, 3, device=device).expand(n, 2, 3).clone()
    identity[:, :, 2] = -away
    cast = F.grid_sample(cast, F.affine_grid(identity, cast.shape, align_corners=False), padding_mode="border", align_corners=False)
    near = soft(bar, 9)
    view = lambda x: x.view(n, 1, 1, 1)
    left = (1 - cast * view(r(0.1, 0.8))) * (1 - near * view(r(0, 0.6)))
    return F.interpolate(left, (h, w), mode="bilinear", align_corners=False)


def laid(image, bar, middle, half, generator):
    """
    Pictures `image` [n,3,h,w] with a thing or more beside or under the bars [n,1,h/2,w/2], whose squares `middle` [n,2] and
    `half` [n,1] are in pixels; the bars stay as they are.
    """
    n, _, h, w = image.shape
    device, size = image.device, (w, h)
    r = lambda low, high: chance(n, device, generator, low, high).view(n, 1, 1, 1)
    level, over = light_of(image, bar, generator)
    dim = shadow_of(bar, half, size, generator)
    linear = image.clamp(0, 1) ** 2.2
    ends = torch.tensor(OFTEN, device=device).cumsum(0)
    for part in HOW_MANY:
        what = torch.bucketize(chance(n, device, generator)[:, 0], ends[:-1])
        frame = Frame(what, *measured(what, middle, half, size, generator), size, generator)
        there = (r(0, 1) < part).float()
        cover = (0.5 - frame.edge / log_chance(n, device, generator, 1, 3.5).view(n, 1, 1, 1)).clamp(0, 1) * there
        towards = r(0, 2 * math.pi)
        side = torch.sigmoid((frame.x * towards.cos() + frame.y * towards.sin()) / torch.minimum(frame.a, frame.b) * 6)
        thick = torch.where((what >= PLATE).view(n, 1, 1, 1), r(2, 18), r(0.5, 4))
        lies = torch.exp(-frame.edge.clamp(min=0) / thick) * side * r(0.1, 0.65) * there
        white = reflectance(what, generator) * look(what, frame, generator)
        # Its own rim, dark or bright.
        rim = torch.exp(frame.edge.clamp(max=0) / thick) * (side - 0.5) * torch.where((what >= PLATE).view(n, 1, 1, 1), r(-0.5, 0.5), r(-0.1, 0.1))
        colour = white * (1 + rim) * level * over * dim
        linear = linear * (1 - lies)
        linear = linear + (colour - linear) * cover
    seen = linear.clamp(1e-6, 1) ** (1 / 2.2)
    mask = F.interpolate(bar, scale_factor=2.0, mode="bilinear", align_corners=False)
    return seen + (image - seen) * mask
