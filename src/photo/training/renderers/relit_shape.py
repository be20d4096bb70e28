"""Bars as rounded bodies seen from above: outlines of many kinds, how their surface bulges, where on a bar a pixel lies."""
import math

import torch


# A bar's outline lies within 1 of its middle; the part of the flaw's canvas that this takes.
SPAN = 0.36


def frames(d, h, w, many):
    """
    Frames of `many` bars on each picture: where each pixel lies on it [n,2,h,w] (a bar reaches from -1 to 1), as the camera sees it, and how many pixels 1 is.
    The first is the largest; the others lie round it and behind.
    """
    y, x = torch.meshgrid(torch.arange(h, device=d.device).float() - h / 2, torch.arange(w, device=d.device).float() - w / 2, indexing="ij")
    x, y = x.view(1, 1, h, w), y.view(1, 1, h, w)
    size = h * torch.where(d.often(0.14) > 0, d.r(0.55, 1.1), d.r(0.2, 0.44))
    turn = torch.where(d.often(0.5) > 0, d.r(-0.25, 0.25), d.r(-math.pi, math.pi))
    tilt, lean = d.r(0, 0.35), d.r(0.6, 1)
    out = []
    for k in range(many):
        away = d.r(0, 2 * math.pi)
        far = 0 if k == 0 else d.r(1.75, 2.6)
        cx, cy = d.r(-0.25, 0.25) * size + away.cos() * far * size, d.r(-0.25, 0.25) * size + away.sin() * far * size * lean
        own = turn + (0 if k == 0 else d.r(-0.5, 0.5))
        px, py = (x - cx) / size, (y - cy) / size
        # What is further up is further off.
        depth = (1 - tilt * py).clamp(min=0.3)
        px, py = px / depth, py / depth / lean
        out.append((torch.cat([px * own.cos() + py * own.sin(), py * own.cos() - px * own.sin()], 1), own, size / depth))
    return out


def outlines(d):
    """A function from places [n,2,h,w] to how far inside an outline they are (bar radii, below nought outside): boxes, ovals, flowers, leaves, hexagons."""
    kind = d.pick([0.5, 0.16, 0.1, 0.12, 0.12]).view(-1, 1, 1, 1)
    wide, power = d.r(0.55, 1), d.log(3, 14)
    corners, deep, turn = d.r(5, 12).floor(), d.r(0.03, 0.14), d.r(0, 6.283)
    sides = d.r(6, 8.99).floor()

    def inside(at):
        x, y = at[:, :1], at[:, 1:] / wide
        box = 1 - ((x.abs() + 1e-4) ** power + (y.abs() + 1e-4) ** power) ** (1 / power)
        round_ = 1 - (x**2 + y**2 + 1e-6).sqrt()
        r, angle = (x**2 + at[:, 1:] ** 2 + 1e-6).sqrt(), torch.atan2(at[:, 1:], x)
        flower = 1 - deep - r - deep * torch.cos(corners * angle + turn)
        leaf = 1 - (x**2 + (y * (1.3 + 0.5 * x)) ** 2 + 1e-6).sqrt()
        part = 2 * math.pi / sides
        polygon = 0.92 - r * torch.cos((angle + turn).remainder(part) - part / 2)
        return torch.where(kind == 0, box, torch.where(kind == 1, round_, torch.where(kind == 2, flower, torch.where(kind == 3, polygon, leaf))))

    return inside


def bulge(d):
    """A function from how far inside a place is to how high it stands: flat with a rounded rim, or domed."""
    rim, high, dome = d.log(0.03, 0.3), d.r(0.04, 0.25), d.r(0, 0.25) * d.often(0.5)

    def height(inside):
        part = (inside / rim).clamp(0, 1)
        return high * (1 - (1 - part) ** 2).clamp(min=0).sqrt() * rim / 0.3 + dome * (1 - (1 - inside.clamp(0, 1)) ** 2)

    return height


def slopes(height, size):
    """How a height over the picture slopes along and down, for `size` pixels to 1."""
    along, down = torch.zeros_like(height), torch.zeros_like(height)
    along[..., 1:-1] = (height[..., 2:] - height[..., :-2]) / 2
    down[..., 1:-1, :] = (height[..., 2:, :] - height[..., :-2, :]) / 2
    return torch.cat([along, down], 1) * size


def swept(cover, along, down, steps=10):
    """`cover` [n,1,h,w] and all that it sweeps over where it moves so many pixels along and down [n,1,1,1]."""
    n, _, h, w = cover.shape
    base = torch.eye(2, 3, device=cover.device).expand(n, 2, 3).clone()
    out = cover
    for i in range(1, steps + 1):
        base[:, 0, 2] = -along.view(-1) * i / steps * 2 / w
        base[:, 1, 2] = -down.view(-1) * i / steps * 2 / h
        grid = torch.nn.functional.affine_grid(base, list(cover.shape), align_corners=False)
        out = torch.maximum(out, torch.nn.functional.grid_sample(cover, grid, mode="bilinear", padding_mode="zeros", align_corners=False))
    return out
