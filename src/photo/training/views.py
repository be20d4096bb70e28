"""From drawn pictures to what the network sees: whole pictures and crops of the bar, as the product cuts them."""
import torch
import torch.nn.functional as F

from disturb import chance, disturbed
from transplant import ONE_IN, given

WHOLE, CLOSE = 256, 512
MARGIN = 1.12
# Part of the batches of close views that are averaged from twice as many places, as the product looks at large bars.
FINE = 0.6
# Part of the close views that reach further than the bar, as where the first look took something beside it for soap.
FAR = 0.07


def boxes(bar):
    """Middle and half side [n,2],[n,1] in pixels of the square round each mask [n,1,H,W]; whole picture where none."""
    n, _, h, w = bar.shape
    on = bar[:, 0] > 0.5
    xs, ys = torch.arange(w, device=bar.device).float(), torch.arange(h, device=bar.device).float()
    cols, rows = on.any(1), on.any(2)
    big = 1e6
    left = torch.where(cols, xs, torch.full_like(xs, big)).amin(1)
    right = torch.where(cols, xs + 1, torch.zeros_like(xs)).amax(1)
    top = torch.where(rows, ys, torch.full_like(ys, big)).amin(1)
    bottom = torch.where(rows, ys + 1, torch.zeros_like(ys)).amax(1)
    none = ~on.flatten(1).any(1)
    left, top = left.masked_fill(none, 0), top.masked_fill(none, 0)
    right, bottom = right.masked_fill(none, w), bottom.masked_fill(none, h)
    middle = torch.stack([(left + right) / 2, (top + bottom) / 2], 1)
    half = torch.maximum(right - left, bottom - top).view(-1, 1) / 2
    return middle, half


def square(x, middle, half, side, turn=None):
    """The square round `middle` (pixels) brought to side x side; beyond the picture its edge goes on."""
    n, _, h, w = x.shape
    at = (torch.arange(side, device=x.device).float() + 0.5) / side * 2 - 1
    gy, gx = torch.meshgrid(at, at, indexing="ij")
    g = torch.stack([gx, gy], -1).expand(n, side, side, 2)
    if turn is not None:
        g = torch.einsum("nhwi,nji->nhwj", g, turn)
    at = middle.view(n, 1, 1, 2) + g * half.view(n, 1, 1, -1)
    size = torch.tensor([w, h], device=x.device).view(1, 1, 1, 2)
    grid = at / size * 2 - 1
    return F.grid_sample(x, grid, mode="bilinear", padding_mode="border", align_corners=False)


def shrunk_square(x, middle, half, side):
    """Like `square`, averaging where the picture is larger than what is wanted of it."""
    factor = int(max(1, round(float(half.max()) * 2 / side)))
    if factor > 1:
        fine = square(x, middle, half, side * factor)
        return F.avg_pool2d(fine, factor)
    return square(x, middle, half, side)


def turns(n, device, generator):
    """One of eight ways to turn and mirror a square; [n,2,2]."""
    k = torch.randint(0, 4, (n,), device=device, generator=generator)
    c, s = ((k == 0).float() - (k == 2).float()), ((k == 1).float() - (k == 3).float())
    m = torch.where(chance(n, device, generator)[:, 0] < 0.5, 1.0, -1.0)
    return torch.stack([torch.stack([c * m, -s], 1), torch.stack([s * m, c], 1)], 1)


def elsewhere(image, bar, kind, grounds, generator):
    """Some bars cut out along their masks and laid on pictures without soap, so that the surroundings tell nothing."""
    n, device = len(image), image.device
    moved = ((chance(n, device, generator) < 0.25) & (kind.view(n, 1) == 0)).view(n, 1, 1, 1)
    mask = F.interpolate(bar, scale_factor=2.0, mode="bilinear", align_corners=False)
    flipped = torch.where((chance(n, device, generator) < 0.5).view(n, 1, 1, 1), grounds.flip(3), grounds)
    gain = torch.exp(chance(n, device, generator, -0.4, 0.3)).view(n, 1, 1, 1)
    return torch.where(moved, flipped * gain + (image - flipped * gain) * mask, image)


def training_view(batch, grounds, generator, side, moved=ONE_IN):
    """
    A view of each picture with its targets; one of `moved` close ones is given another's flaw. `batch`: image; bar and parts (maps of a few findings) at half its size;
    which (the findings of the parts), present, kind. `grounds`: as many pictures without soap. `side`: of the view in
    pixels; of the whole picture where it is WHOLE, else of the bar.
    """
    whole = side == WHOLE
    image, bar, parts, which, present, kind = (batch[key] for key in ("image", "bar", "parts", "which", "present", "kind"))
    n, _, h, w = image.shape
    device = image.device
    r = lambda low, high, width=1: chance(n, device, generator, low, high, width)
    image = elsewhere(image, bar, kind, grounds, generator)
    box_middle, box_half = boxes(bar)
    box_middle, box_half = box_middle * 2, box_half * 2
    if whole:
        middle = torch.cat([torch.full((n, 1), w / 2, device=device), torch.full((n, 1), h / 2, device=device)], 1)
        half = torch.full((n, 1), max(w, h) / 2, device=device)
        # Some nearer, some further off: phones do not frame as a renderer does.
        near = r(0, 1) < 0.5
        middle = middle + half * torch.where(near, r(-0.12, 0.12, 2), torch.zeros_like(middle))
        half = half * torch.where(near, r(0.7, 1.2), torch.ones_like(half))
    else:
        near = r(0, 1) < 0.15
        middle = box_middle + box_half * torch.where(near, r(-0.6, 0.6, 2), r(-0.08, 0.08, 2))
        far = r(0, 1) < FAR
        middle = middle + box_half * torch.where(far & ~near, r(-0.5, 0.5, 2), torch.zeros_like(middle))
        half = (box_half * torch.where(near, r(0.35, 0.8), MARGIN * torch.where(far, r(1.2, 1.9), r(0.9, 1.2)))).clamp(min=16)
    turn = turns(n, device, generator)
    stretch = torch.exp(r(-0.14, 0.14, 1)) if not whole else torch.ones(n, 1, device=device)
    reach = torch.cat([half * stretch, half / stretch], 1)
    if whole:
        # Whole pictures shrink by two or more: average first, as the product does.
        parts_of = max(2, w // WHOLE)
        seen = square(F.avg_pool2d(image, parts_of), middle / parts_of, half / parts_of, side, turn)
    elif float(torch.rand(())) < FINE:
        seen = F.avg_pool2d(square(image, middle, reach, side * 2, turn), 2)
    else:
        seen = square(image, middle, reach, side, turn)
    targets = square(torch.cat([bar, parts], 1), middle / 2, reach / 2, side // 2, turn)
    # Beyond the picture's edge there is nothing to be found: what the edge drags along is not asked for.
    scale = (reach[:, 0] * reach[:, 1] * 4 / (side // 2) ** 2 / 4).view(n, 1)
    spread = lambda values: torch.zeros(n, present.shape[1], device=device).scatter_(1, which, values)
    there = spread(parts.flatten(2).sum(2))
    kept = spread(targets[:, 1:].flatten(2).sum(2)) * scale / there.clamp(min=1e-3)
    wanted = present * (kept > 0.5)
    unsure = ((there > 1.0) & (present == 0)) | ((present > 0) & (kept <= 0.5) & (kept > 0.03))
    widths = (box_half / half * side)[:, 0]
    if not whole:
        seen, targets, which, wanted, unsure = given(seen, targets, which, wanted, unsure, kind, generator, moved)
    seen, poor, told = disturbed(seen, targets[:, :1], widths, generator)
    maps = torch.zeros(n, present.shape[1], side // 2, side // 2, device=device)
    maps = maps.scatter_(1, which.view(n, -1, 1, 1).expand(-1, -1, side // 2, side // 2), targets[:, 1:])
    # Where nothing can be read, nothing is asked but whether that is so.
    unsure = unsure | (poor > 0).view(n, 1)
    return seen, torch.cat([targets[:, :1], maps], 1), wanted, unsure, kind.float(), poor, told.float()
