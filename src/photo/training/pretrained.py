"""The reader on layers that have learned from photographs: backbone.py's going down, its own coming up; see network.py."""
import torch
import torch.nn as nn
import torch.nn.functional as F

from backbone import HANDED_WIDTHS, Backbone
from network import Answers, Residual, conv, other_style

# Of what comes up, from a half to a sixteenth of the side, and of the deepest.
UP = (24, 64, 96, 128)
DEEPEST = 160


class PretrainedReader(nn.Module):
    """image [n,3,H,W] sRGB 0..1, sides multiples of 32; returns what network.Reader does."""

    def __init__(self, findings=16):
        super().__init__()
        self.backbone = Backbone()
        self.deepest = conv(HANDED_WIDTHS[4], DEEPEST, 1)
        wide = (*UP, DEEPEST)
        self.join = nn.ModuleList()
        self.up = nn.ModuleList()
        for i in (3, 2, 1):
            self.join.append(conv(HANDED_WIDTHS[i] + wide[i + 1], UP[i], 1))
            self.up.append(Residual(UP[i]))
        self.narrow = conv(UP[1], UP[0], 1)
        # The finest also sees the picture itself, four pixels at a time: marks are a few pixels wide.
        self.last = conv(UP[0] + HANDED_WIDTHS[0] + 12, UP[0])
        self.finest = Residual(UP[0])
        self.maps = nn.Conv2d(UP[0], 1 + findings, 1)
        self.answers = Answers(2 * HANDED_WIDTHS[4] + 2 * UP[3], findings)
        nn.init.constant_(self.maps.bias, -3.0)

    def forward(self, image):
        kept = self.backbone(image, other_style if self.training else None)
        x, middle = F.relu(self.deepest(kept[4])), None
        for step, (join, up) in enumerate(zip(self.join, self.up)):
            wide = F.interpolate(x, scale_factor=2.0, mode="nearest")
            x = up(F.relu(join(torch.cat([wide, kept[3 - step]], 1))))
            middle = x if step == 0 else middle
        wide = F.interpolate(F.relu(self.narrow(x)), scale_factor=2.0, mode="nearest")
        x = self.finest(F.relu(self.last(torch.cat([wide, kept[0], F.pixel_unshuffle(image - 0.5, 2)], 1))))
        maps = self.maps(x).float()
        return maps, self.answers(maps, kept[4], middle)
