"""The reader's network: a small residual U-Net with maps at half size and answers for the whole picture."""
import torch
import torch.nn as nn
import torch.nn.functional as F

WIDTHS = (24, 48, 96, 144, 192)
BLOCKS = (1, 2, 2, 2, 2)


def conv(i, o, size=3, stride=1):
    return nn.Sequential(nn.Conv2d(i, o, size, stride, size // 2, bias=False), nn.BatchNorm2d(o))


class Residual(nn.Module):
    def __init__(self, width):
        super().__init__()
        self.one, self.two = conv(width, width), conv(width, width)

    def forward(self, x):
        return F.relu(x + self.two(F.relu(self.one(x))))


def other_style(x, some=0.35):
    """
    Some pictures of a batch given the mean and spread of another's features, mixed with their own, so that how a picture
    is drawn and lit tells less (MixStyle: Zhou et al., ICLR 2021).
    """
    n = len(x)
    mean, spread = x.detach().float().mean((2, 3), keepdim=True), x.detach().float().std((2, 3), keepdim=True) + 1e-3
    own = 1 - 0.5 * torch.rand((n, 1, 1, 1), device=x.device) * (torch.rand((n, 1, 1, 1), device=x.device) < some)
    other = torch.randperm(n, device=x.device)
    wide = (own + (1 - own) * spread[other] / spread).clamp(0.3, 3)
    return x * wide.to(x.dtype) + (own * mean + (1 - own) * mean[other] - mean * wide).to(x.dtype)


class Answers(nn.Module):
    """Answers for the whole picture, from the maps and from features pooled."""

    def __init__(self, pooled, findings):
        super().__init__()
        self.k = findings
        self.whole = nn.Sequential(nn.Linear(pooled, 128), nn.ReLU(), nn.Linear(128, findings + 2))
        self.from_maps = nn.Parameter(torch.tensor([0.3, 0.2, 0.1, 1.0]).view(1, 4, 1).repeat(1, 1, findings))

    def forward(self, maps, deepest, middle):
        soap = torch.sigmoid(maps[:, :1])
        found = maps[:, 1:]
        share = (torch.sigmoid(found) * soap).sum((2, 3)) / (soap.sum((2, 3)) + 1.0)
        wide = F.avg_pool2d(found, 4)
        views = torch.stack([found.amax((2, 3)), wide.amax((2, 3)), F.avg_pool2d(wide, 4).amax((2, 3)), torch.log(share + 1e-4)], 1)
        pooled = torch.cat([deepest.mean((2, 3)), deepest.amax((2, 3)), middle.mean((2, 3)), middle.amax((2, 3))], 1)
        whole = self.whole(pooled.float())
        # The sum over views, written out: a mask and a map both speak for a finding.
        answers = (views * self.from_maps).sum(1) + whole[:, : self.k]
        return torch.cat([answers, whole[:, self.k :]], 1)


class Reader(nn.Module):
    """
    image [n,3,H,W] sRGB 0..1, sides multiples of 32. Returns map logits [n,1+K,H/2,W/2], the bar's first, and
    answer logits [n,K+2]: each finding, then "no soap in view", then "too poor to read".
    """

    def __init__(self, findings=16):
        super().__init__()
        k = findings
        self.stem = conv(12, WIDTHS[0])
        self.down = nn.ModuleList()
        self.levels = nn.ModuleList()
        for i, width in enumerate(WIDTHS):
            self.down.append(nn.Identity() if i == 0 else conv(WIDTHS[i - 1], width, 3, 2))
            self.levels.append(nn.Sequential(*[Residual(width) for _ in range(BLOCKS[i])]))
        self.join = nn.ModuleList()
        self.up = nn.ModuleList()
        for i in range(len(WIDTHS) - 2, -1, -1):
            self.join.append(conv(WIDTHS[i] + WIDTHS[i + 1], WIDTHS[i], 1 if i > 0 else 3))
            self.up.append(Residual(WIDTHS[i]))
        self.maps = nn.Conv2d(WIDTHS[0], 1 + k, 1)
        self.answers = Answers(2 * WIDTHS[4] + 2 * WIDTHS[3], k)
        nn.init.constant_(self.maps.bias, -3.0)

    def forward(self, image):
        x = F.relu(self.stem(F.pixel_unshuffle(image - 0.5, 2)))
        kept = []
        for depth, (down, level) in enumerate(zip(self.down, self.levels)):
            x = other_style(x) if self.training and depth in (1, 2) else x
            x = level(down(x) if down is self.down[0] else F.relu(down(x)))
            kept.append(x)
        deepest = x
        middle = None
        for step, (join, up) in enumerate(zip(self.join, self.up)):
            skip = kept[len(WIDTHS) - 2 - step]
            x = up(F.relu(join(torch.cat([F.interpolate(x, scale_factor=2.0, mode="nearest"), skip], 1))))
            if step == 0:
                middle = x
        maps = self.maps(x).float()
        return maps, self.answers(maps, deepest, middle)
