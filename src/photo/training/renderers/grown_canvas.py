"""What goes wrong on a canvas of soap, picture by picture of a batch, and what of it can be seen in the picture that is made of it."""
import torch
import torch.nn.functional as F

from grown_flaws import Face
from grown_flaws_body import BLED, BY_NUMBER, PARTED, bled, parted

FINDINGS = ("coloured-specks smears white-specks translucent-veins crackle-network powdery-film dark-centre-ring orange-spots pinholes "
            "crack brown-outside-in colour-bled drag-lines layer-gap wrinkled-top mould-dimples").split()
# Flaws that are an area and not its single marks.
AREA = (4, 5, 6, 10, 14, 15)
# The faintest flaw that is drawn.
LEAST_STRENGTH = 0.2
# Change of a picture (sRGB, 0 to 1) from which a mark can be seen; how much of a picture it has to cover (part), and its strength times its reach (pixels).
SEEN, LEAST, FORCE = 0.032, 6e-5, 0.28


def planned(d, clean, second):
    """Two flaws of each picture [n,2], -1 where none; `clean` of them have none, `second` of the others two."""
    one = torch.randint(0, 16, (d.n,), device=d.device, generator=d.generator)
    two = torch.randint(0, 16, (d.n,), device=d.device, generator=d.generator)
    two = torch.where((d.r().view(-1) < second) & (two != one), two, -1)
    flawed = d.r().view(-1) >= clean
    return torch.stack([torch.where(flawed, one, -1), torch.where(flawed, two, -1)], 1)


def bordered(wanted):
    """Which pictures need two colours that meet [n]."""
    return (wanted == BLED).any(1) | (wanted == PARTED).any(1)


def flawed(d, colour, height, wanted, inside_of, open_, pour):
    """
    The canvas with its flaws: colour [n,3,S,S], relief and gloss [n,1,S,S], and a map for each of the two [n,2,S,S]. `inside_of` gives where a flaw may be [n,1,S,S] by
    its number; `pour`: share of the second colour, how far below its border, that colour.
    """
    share, field, other = pour
    gloss, maps = torch.zeros_like(height), torch.zeros(d.n, 2, *height.shape[2:], device=d.device)
    colour, height = colour.clone(), height.clone()
    for slot in (0, 1):
        for k in range(16):
            i = (wanted[:, slot] == k).nonzero().view(-1)
            if not len(i):
                continue
            part = d.of(len(i))
            lone = Face(part, colour[i], inside_of(k)[i], open_[i])
            strength = part.r(LEAST_STRENGTH, 1) ** 0.7
            if k == BLED:
                change = bled(lone, strength, other[i], share[i])
            elif k == PARTED:
                change = parted(lone, strength, field[i])
            else:
                change = BY_NUMBER[k](lone, strength)
            colour[i] = torch.nan_to_num(change.colour).clamp(0.002, 1)
            height[i], gloss[i] = height[i] + change.height, gloss[i] + change.gloss
            maps[i, slot] = change.where[:, 0]
    return colour, height, gloss, maps


def seen_of(wanted, marks, image, before, grain):
    """
    What of the flaws can be seen: maps [n,16,h,w] and present [n,16], from their `marks` [n,2,h,w] over the picture and the pictures [n,3,h,w] with them
    and `before`, of that grain [n,1,1,1].
    """
    change = (image - before).abs().amax(1, keepdim=True)
    n, (h, w) = len(image), image.shape[2:]
    kept, present, i = torch.zeros(n, 16, h, w, device=image.device), torch.zeros(n, 16, device=image.device), torch.arange(n, device=image.device)
    clear = F.max_pool2d((F.avg_pool2d(change, 3, 1, 1) > SEEN + 0.7 * grain).float(), 3, 1, 1)
    wide = max(1, h // 40)
    around = F.max_pool2d(clear, 2 * wide + 1, 1, wide)
    for slot in (0, 1):
        k = wanted[:, slot].clamp(min=0)
        area = sum((k == one) for one in AREA).view(-1, 1, 1, 1) > 0
        mark = marks[:, slot : slot + 1] * torch.where(area, around, clear)
        covers = (mark > 0.3).float().mean((1, 2, 3))
        force = (change * mark).sum((1, 2, 3)) / mark.sum((1, 2, 3)).clamp(min=1) * mark.sum((1, 2, 3)).sqrt()
        there = (covers > LEAST) & (force > FORCE) & (wanted[:, slot] >= 0)
        kept[i, k] = torch.maximum(kept[i, k], mark[:, 0] * there.view(-1, 1, 1))
        present[i, k] = torch.maximum(present[i, k], there.float())
    return kept, present
