"""Reads drawn pictures as the product does and keeps what was said beside the truth."""
import numpy as np
import torch
import torch.nn.functional as F

from pool import SIZE
from views import CLOSE, MARGIN, WHOLE, boxes, shrunk_square

KEPT = ("answers", "present", "tricky", "kind", "overlap", "share", "seen_share")


@torch.no_grad()
def read(model, image, side=CLOSE, mirrored=False):
    """Both passes, the bar at `side` pixels. Returns answers [n,18], the bar's chances at half size, maps of the close look, its square."""
    n, _, h, w = image.shape
    middle = torch.tensor([w / 2, h / 2], device=image.device).repeat(n, 1)
    half = torch.full((n, 1), max(w, h) / 2, device=image.device)
    first, told = model(shrunk_square(image, middle, half, WHOLE))
    # Back from the square to the picture, at half of its size.
    rows, columns = h // 2, w // 2
    soap = F.interpolate(torch.sigmoid(first[:, :1]), (max(rows, columns),) * 2, mode="bilinear", align_corners=False)
    top, left = (soap.shape[2] - rows) // 2, (soap.shape[3] - columns) // 2
    soap = soap[:, :, top : top + rows, left : left + columns]
    middle, half = boxes(soap)
    middle, half = middle * 2, (half * 2 * MARGIN).clamp(min=16)
    close = shrunk_square(image, middle, half, side)
    maps, answers = model(close)
    if mirrored:
        other, otherwise = model(close.flip(3))
        maps, answers = (maps + other.flip(3)) / 2, (answers + otherwise) / 2
    return torch.cat([answers[:, :16], told[:, 16:17], answers[:, 17:]], 1), soap, maps, middle, half


@torch.no_grad()
def examined(models, draw, count, seed, device, batch=64, size=None):
    """What each model says of the same fresh pictures."""
    rows = [{key: [] for key in KEPT} for _ in models]
    for model in models:
        model.eval()
    for at in range(0, count, batch):
        d = draw(batch, size or SIZE, seed + at, str(device), 0.45)
        image = torch.round(torch.nan_to_num(d["image"]).clamp(0, 1) * 255) / 255
        truth = F.avg_pool2d(d["bar"], 2) > 0.5
        share = d["maps"].float().flatten(2).sum(2) / d["bar"].flatten(1).sum(1, keepdim=True).clamp(min=1)
        for model, kept in zip(models, rows):
            answers, soap, maps, _, _ = read(model, image)
            said = soap > 0.5
            overlap = (truth & said).flatten(1).sum(1) / (truth | said).flatten(1).sum(1).clamp(min=1)
            chance = torch.sigmoid(maps)
            seen = chance[:, 1:].flatten(2).sum(2) / chance[:, :1].flatten(2).sum(2).clamp(min=1)
            for key, value in zip(KEPT, (answers, d["present"], d["tricky"], d["kind"], overlap, share, seen)):
                kept[key].append(value.float().cpu())
    return [{key: torch.cat(value).numpy() for key, value in kept.items()} for kept in rows]


def auc(score, truth):
    order = score.argsort()
    rank = np.empty(len(score))
    rank[order] = np.arange(1, len(score) + 1)
    positive = truth > 0.5
    p, q = positive.sum(), (~positive).sum()
    return float((rank[positive].sum() - p * (p + 1) / 2) / (p * q)) if p and q else float("nan")


def summary(rows):
    soap = rows["kind"] == 0
    aucs = [auc(rows["answers"][soap, k], rows["present"][soap, k]) for k in range(16)]
    return {"bar": float((rows["overlap"][soap] > 0.7).mean()), "auc": [round(a, 4) for a in aucs],
            "mean_auc": float(np.nanmean(aucs)), "no_soap_auc": auc(rows["answers"][:, 16], rows["kind"])}
