"""Flaws of one renderer moved to clean bars of another, so that how a flaw looks does not go with how the bar is drawn."""
import torch
import torch.nn.functional as F

# Findings that are marks on whatever soap they lie on: specks, smears, white specks, veins, crackle, orange spots, pinholes,
# cracks, drag lines, by their places in findings/ids.ts. What needs a layer, a rim or a top stays where it was drawn.
MOVABLE = (0, 1, 2, 3, 4, 7, 8, 9, 12)
# Of so many views one is given another's flaw.
ONE_IN = 6
# Mean change of the picture where the flaw lies (sRGB, 0 to 1) and its size (of the view) from which anybody sees it.
SEEN, LARGE = 0.05, 0.0006
# A flaw is moved at this part of its strength at the least: makers are to hear of faint ones as well.
WEAKEST = 0.5


def surroundings(x, keep):
    """What lies round the marks: a mean of what is to be kept within about a twelfth of the side, twice over."""
    side = x.shape[-1] // 12 // 2 * 2 + 1
    for _ in range(2):
        sums = F.avg_pool2d(torch.cat([x * keep, keep], 1), side, 1, side // 2)
        mean = sums[:, :3] / sums[:, 3:].clamp(min=1e-3)
        x, keep = torch.where(keep > 0.5, x, mean), torch.ones_like(keep)
    return F.avg_pool2d(x, side, 1, side // 2)


def given(seen, targets, which, wanted, unsure, kind, generator, one_in=ONE_IN):
    """
    Views `seen` [n,3,S,S] with `targets` [n,1+parts,S/2,S/2] (bar, then the maps of the findings `which` [n,parts]) and `wanted`,
    `unsure` [n,16]; some that show no flaw, one of `one_in` at most, are given one of another view. Returns them anew.
    """
    n, count = len(seen), len(seen) // one_in
    if count == 0:
        return seen, targets, which, wanted, unsure
    # Powers are taken: what rounding left below nought would have none.
    seen = seen.clamp(0, 1)
    chance = lambda: torch.rand(n, device=seen.device, generator=generator)
    movable = torch.zeros(wanted.shape[1], device=seen.device)
    movable[list(MOVABLE)] = 1
    filled = targets[:, 1:].flatten(2).sum(2) > 1
    offered = (wanted * movable).gather(1, which) * filled
    clean = (wanted.sum(1) == 0) & (kind == 0) & ~filled.any(1)
    to = (clean.float() * 2 + chance()).topk(count).indices
    source = (offered.any(1).float() * 2 + chance()).topk(count).indices
    slot = (offered[source] + 0.5 * torch.rand(offered[source].shape, device=seen.device, generator=generator) * offered[source]).argmax(1)
    pick = torch.arange(count, device=seen.device)
    finding = which[source][pick, slot]
    flaw = targets[source][pick, 1 + slot].unsqueeze(1)
    wide = lambda x: F.interpolate(x, scale_factor=2.0, mode="bilinear", align_corners=False)
    marks = F.max_pool2d(targets[source][:, 1:].amax(1, keepdim=True), 5, 1, 2)
    own = F.avg_pool2d(seen[source], 2) ** 2.2
    round_it = surroundings(own, ((targets[source][:, :1] > 0.5) & (marks < 0.1)).float())
    ratio = ((seen[source] ** 2.2 + 0.02) / (wide(round_it) + 0.02)).clamp(0.05, 8)
    ratio = ratio ** (WEAKEST + (1.05 - WEAKEST) * torch.rand((count, 1, 1, 1), device=seen.device, generator=generator))
    bar = targets[to][:, :1]
    moved = flaw * bar
    within = wide(F.avg_pool2d(F.max_pool2d(moved, 3, 1, 1), 3, 1, 1))
    before = seen[to]
    after = ((before**2.2 * (1 + within * (ratio - 1))).clamp(min=0) ** (1 / 2.2)).clamp(0, 1)
    change = ((after - before).abs().mean(1, keepdim=True) * wide(moved)).sum((1, 2, 3)) / wide(moved).sum((1, 2, 3)).clamp(min=1)
    good = clean[to] & offered[source].any(1) & (change > SEEN) & (moved.mean((1, 2, 3)) > LARGE)
    seen, targets, which, wanted, unsure = seen.clone(), targets.clone(), which.clone(), wanted.clone(), unsure.clone()
    pixel = good.view(-1, 1, 1, 1)
    seen[to] = torch.where(pixel, after, before)
    targets[to, 1:2] = torch.where(pixel, moved, targets[to, 1:2])
    # A place each: the finding moved comes first, any others are empty.
    places = (finding.view(-1, 1) + torch.arange(which.shape[1], device=seen.device)) % wanted.shape[1]
    which[to] = torch.where(good.view(-1, 1), places, which[to])
    there = F.one_hot(finding, wanted.shape[1]).to(wanted.dtype)
    wanted[to] = torch.where(good.view(-1, 1), there, wanted[to])
    unsure[to] = unsure[to] & ~(good.view(-1, 1) & (there > 0))
    return seen, targets, which, wanted, unsure
