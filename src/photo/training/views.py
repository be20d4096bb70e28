"""From drawn pictures to what the network sees: whole pictures and crops of the bar, as the product cuts them."""
import torch
import torch.nn.functional as F

WHOLE, CLOSE = 256, 384
MARGIN = 1.12


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


def chance(n, device, generator, low=0.0, high=1.0, width=1):
    return low + (high - low) * torch.rand((n, width), device=device, generator=generator)


def turns(n, device, generator):
    """One of eight ways to turn and mirror a square; [n,2,2]."""
    k = torch.randint(0, 4, (n,), device=device, generator=generator)
    c, s = torch.tensor([1.0, 0, -1, 0], device=device)[k], torch.tensor([0.0, 1, 0, -1], device=device)[k]
    m = torch.where(chance(n, device, generator)[:, 0] < 0.5, 1.0, -1.0)
    return torch.stack([torch.stack([c * m, -s], 1), torch.stack([s * m, c], 1)], 1)


def training_view(batch, generator, whole):
    """A view of each picture with its targets. `batch`: image, bar, maps (half size), present, kind."""
    image, bar, maps, present, kind = (batch[key] for key in ("image", "bar", "maps", "present", "kind"))
    n, _, h, w = image.shape
    device = image.device
    r = lambda low, high, width=1: chance(n, device, generator, low, high, width)
    if whole:
        middle = torch.tensor([w / 2, h / 2], device=device).repeat(n, 1)
        half = torch.full((n, 1), max(w, h) / 2, device=device)
        side = WHOLE
    else:
        middle, half = boxes(bar)
        near = r(0, 1) < 0.15
        middle = middle + half * torch.where(near, r(-0.6, 0.6, 2), r(-0.08, 0.08, 2))
        half = (half * torch.where(near, r(0.35, 0.8), MARGIN * r(0.9, 1.2))).clamp(min=16)
        side = CLOSE
    turn = turns(n, device, generator)
    stretch = torch.exp(r(-0.14, 0.14, 1)) if not whole else torch.ones(n, 1, device=device)
    reach = torch.cat([half * stretch, half / stretch], 1)
    if whole:
        # Whole pictures shrink by two: average first, as the product does.
        image = F.avg_pool2d(image, 2)
        seen = square(image, middle / 2, half / 2, side, turn)
    else:
        seen = square(image, middle, reach, side, turn)
    targets = square(torch.cat([F.avg_pool2d(bar, 2), maps], 1), middle / 2, reach / 2, side // 2, turn)
    # Beyond the picture's edge there is nothing to be found: what the edge drags along is not asked for.
    scale = (reach[:, 0] * reach[:, 1] * 4 / (side // 2) ** 2 / 4).view(n, 1)
    there = maps.flatten(2).sum(2)
    kept = targets[:, 1:].flatten(2).sum(2) * scale / there.clamp(min=1e-3)
    wanted = present * (kept > 0.5)
    unsure = ((there > 1.0) & (present == 0)) | ((present > 0) & (kept <= 0.5) & (kept > 0.03))
    return disturbed(seen, generator), targets, wanted, unsure, kind.float()


def disturbed(x, generator):
    """What another renderer or camera would have done otherwise: colour cast, tone, softness, grain."""
    n, device = x.shape[0], x.device
    r = lambda low, high, width=1: chance(n, device, generator, low, high, width).view(n, -1, 1, 1)
    x = x.clamp(0, 1) ** torch.exp(r(-0.25, 0.25)) * torch.exp(r(-0.12, 0.12, 3)) * torch.exp(r(-0.15, 0.12))
    grey = x.mean(1, keepdim=True)
    x = grey + (x - grey) * r(0.7, 1.3)
    soft = F.avg_pool2d(F.pad(x, (1, 1, 1, 1), mode="replicate"), 3, 1)
    x = x + (soft - x) * r(-0.6, 1.0) * (r(0, 1) < 0.5)
    grain = torch.randn(x.shape, device=device, generator=generator) * r(0, 0.03) * (r(0, 1) < 0.4)
    return (x + grain).clamp(0, 1)
