"""What a view says against what is asked for."""
import torch
import torch.nn.functional as F

# Answers that earlier readers hardly ever gave count for more: specks, smears, white specks, film, pinholes, bled colour,
# gaps, wrinkles, dimples.
WEIGHTS = [1.4, 1.4, 1.5, 1, 1, 1.4, 1, 1, 1.3, 1, 1, 1.5, 1.1, 1.2, 1.2, 1.5]
# A flaw that covers less of the view than this (as a mean of its map) is asked for less firmly.
FAINT, FIRM = 0.002, 0.85


def loss_of(model, view, counting, alarms=0.0, faint=0.0):
    """
    The loss, and its parts for the report. `counting`: how much each finding's answer counts; `alarms`: how much it counts beside
    that a bar without any flaw is called flawed, whichever finding it is called: one that deceives mostly deceives in one; `faint`: how much
    more a flaw's answer counts that covers little of the view.
    """
    image, targets, wanted, unsure, kind, poor, told = view
    with torch.autocast("cuda" if image.is_cuda else "cpu", dtype=torch.bfloat16, enabled=image.is_cuda):
        maps, answers = model(image.contiguous(memory_format=torch.channels_last))
    maps, answers = maps.float(), answers.float()
    clear = 1 - poor
    bar, found = maps[:, :1], maps[:, 1:]
    bar_loss = F.binary_cross_entropy_with_logits(bar, targets[:, :1])
    p = torch.sigmoid(bar)
    bar_loss = bar_loss + 1 - ((2 * (p * targets[:, :1]).sum((1, 2, 3)) + 100) / ((p + targets[:, :1]).sum((1, 2, 3)) + 100)).mean()
    weight = (~unsure).float()
    t = targets[:, 1:]
    pixel = F.binary_cross_entropy_with_logits(found, t, reduction="none") * (1 + 4 * t)
    pixel = (pixel.mean((2, 3)) * weight).sum() / weight.sum() * 6
    q = torch.sigmoid(found)
    overlap = 1 - (2 * (q * t).sum((2, 3)) + 20) / ((q + t).sum((2, 3)) + 20)
    there = wanted * clear.view(-1, 1)
    overlap = (overlap * there).sum() / there.sum().clamp(min=1) * 0.5
    large = (t.mean((2, 3)) / FAINT).clamp(max=1)
    firmly = wanted * (FIRM + (1 - FIRM) * large)
    answer = F.binary_cross_entropy_with_logits(answers[:, :16], firmly, reduction="none")
    heavy = weight * counting * (1 + faint * wanted * (1 - large))
    answer = (answer * heavy).sum() / heavy.sum()
    clean = (wanted.sum(1) == 0) & ~unsure.any(1) & (kind == 0)
    alarm = F.softplus(torch.logsumexp(answers[:, :16], 1)) * clean
    alarm = alarm.sum() / clean.sum().clamp(min=1)
    nothing = F.binary_cross_entropy_with_logits(answers[:, 16], kind, reduction="none")
    nothing = (nothing * clear).sum() / clear.sum().clamp(min=1)
    unreadable = F.binary_cross_entropy_with_logits(answers[:, 17], poor, reduction="none")
    unreadable = (unreadable * told).sum() / told.sum().clamp(min=1)
    return bar_loss + pixel + overlap + 6 * answer + alarms * alarm + 1.5 * nothing + 0.5 * unreadable, torch.stack([answer, overlap, bar_loss, nothing, unreadable]).detach()
