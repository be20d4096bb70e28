"""Blocks and discs of soap on a table before a camera: what each pixel of a batch meets. Lengths in bar lengths, y upwards."""
import math

import torch

from grown_fields import SIDE

# Bodies to a picture, at most. A far distance.
BODIES, FAR = 3, 1e4
# The part of the canvas that a bar's longest side takes.
SPAN = 0.62


def turned(v, turn):
    """[n,3,h,w] about the upright axis."""
    c, s = turn.cos(), turn.sin()
    return torch.cat([v[:, :1] * c - v[:, 2:] * s, v[:, 1:2], v[:, :1] * s + v[:, 2:] * c], 1)


def bodies(d, size):
    """Where soap lies: a list of bodies, each of half sides [n,3,1,1], middle, turn, whether it is round, lies (its cut face up) and is there at all."""
    n = d.n
    lies = d.often(0.55)
    round_ = d.often(0.3) * lies
    long, wide, thick = torch.ones(n, 1, 1, 1, device=d.device), d.r(0.5, 1), d.r(0.2, 0.45)
    wide = torch.where((round_ > 0) & (d.often(0.6) > 0), torch.ones_like(wide), wide)
    flat = torch.cat([long, thick, wide], 1) / 2
    upright = torch.cat([long, wide, thick], 1) / 2
    # A loaf now and then: deep behind its face.
    upright = torch.where(d.often(0.25) > 0, upright * torch.cat([torch.ones_like(long), torch.ones_like(long), d.r(2, 6)], 1), upright)
    half = torch.where(lies > 0, flat, upright)
    turn = torch.where(lies > 0, d.r(-math.pi, math.pi), d.r(-0.7, 0.7))
    many = d.pick([0.6, 0.22, 0.18]).view(-1, 1, 1, 1)
    row = d.often(0.5)
    out = []
    for k in range(BODIES):
        gap = d.r(0.02, 0.35)
        # In a row along its own side, or strewn.
        step = (torch.cat([(half[:, :1] * 2 + gap), torch.zeros_like(gap), d.r(-0.05, 0.05)], 1) * (0, 1, -1)[k])
        far = half[:, :1] + half[:, 2:] + gap
        away = turn + d.r(0, 2 * math.pi)
        strewn = torch.cat([away.cos() * far, torch.zeros_like(far), away.sin() * far], 1) * (k > 0)
        middle = torch.where(row > 0, turned(step, -turn), strewn)
        own = turn + (k > 0) * torch.where(row > 0, d.r(-0.06, 0.06), d.r(-1.5, 1.5))
        middle = middle + torch.cat([torch.zeros_like(gap), half[:, 1:2], torch.zeros_like(gap)], 1)
        out.append({"half": half, "middle": middle, "turn": own, "round": round_, "lies": lies, "there": (many >= k).float()})
    return out


def rays(d, h, w, lies):
    """The camera: its place [n,3,1,1] and a direction for each pixel [n,3,h,w]."""
    high = torch.where(lies > 0, d.r(0.45, 1.5), d.r(0.08, 0.75))
    around = d.r(-0.5, 0.5)
    narrow = d.r(0.28, 0.75)
    # How much of the picture's height a bar takes.
    fills = torch.where(d.often(0.12) > 0, d.r(1.0, 2.2), d.r(0.45, 0.98))
    far = 1 / (2 * narrow.tan() * fills) + 0.4
    back = torch.cat([high.cos() * around.sin(), high.sin(), high.cos() * around.cos()], 1)
    eye = back * far + torch.cat([d.r(-0.15, 0.15), torch.zeros_like(far) + 0.15, d.r(-0.15, 0.15)], 1)
    side = torch.cat([back[:, 2:], torch.zeros_like(far), -back[:, :1]], 1)
    side = side / side.norm(dim=1, keepdim=True)
    up = torch.cross(back, side, dim=1)
    roll = d.r(-0.12, 0.12) + torch.where(d.often(0.15) > 0, d.r(-math.pi, math.pi), torch.zeros_like(far))
    y, x = torch.meshgrid(torch.arange(h, device=d.device).float() + 0.5 - h / 2, torch.arange(w, device=d.device).float() + 0.5 - w / 2, indexing="ij")
    x, y = (x / h * 2).view(1, 1, h, w), (-y / h * 2).view(1, 1, h, w)
    x, y = x * roll.cos() - y * roll.sin(), x * roll.sin() + y * roll.cos()
    at = side * x * narrow.tan() + up * y * narrow.tan() - back
    return eye, at / at.norm(dim=1, keepdim=True)


def met(body, eye, towards):
    """How far along a ray a body is met (FAR where it is not), and the normal there in the body's own frame, its place there."""
    o, v = turned(eye - body["middle"], body["turn"]), turned(towards, body["turn"])
    v = torch.where(v.abs() < 1e-6, torch.full_like(v, 1e-6), v)
    half = body["half"]
    near, far = ((-half * v.sign() - o) / v), ((half * v.sign() - o) / v)
    first, last = near.amax(1, keepdim=True), far.amin(1, keepdim=True)
    box = torch.where((first < last) & (first > 1e-3), first, torch.full_like(first, FAR))
    axis = near.argmax(1, keepdim=True)
    normal_box = torch.zeros_like(v).scatter_(1, axis, 1.0) * -v.sign()
    # Round: an upright cylinder over an ellipse, and its lid.
    ex, ez = half[:, :1], half[:, 2:]
    ox, oz, vx, vz = o[:, :1] / ex, o[:, 2:] / ez, v[:, :1] / ex, v[:, 2:] / ez
    a, b, c = vx**2 + vz**2, ox * vx + oz * vz, ox**2 + oz**2 - 1
    root = b**2 - a * c
    wall = (-b - root.clamp(min=0).sqrt()) / a
    wall = torch.where((root > 0) & (wall > 1e-3) & ((o[:, 1:2] + wall * v[:, 1:2]).abs() < half[:, 1:2]), wall, torch.full_like(wall, FAR))
    lid = (half[:, 1:2] - o[:, 1:2]) / v[:, 1:2]
    lid = torch.where((lid > 1e-3) & ((ox + lid * vx) ** 2 + (oz + lid * vz) ** 2 < 1) & (v[:, 1:2] < 0), lid, torch.full_like(lid, FAR))
    disc = torch.minimum(wall, lid)
    at = o + disc.clamp(max=50) * v
    normal_disc = torch.cat([at[:, :1] / ex**2, torch.zeros_like(ex * wall), at[:, 2:] / ez**2], 1)
    normal_disc = normal_disc / normal_disc.norm(dim=1, keepdim=True).clamp(min=1e-6)
    upward = torch.zeros_like(normal_disc)
    upward[:, 1] = 1
    normal_disc = torch.where(lid < wall, upward, normal_disc)
    is_round = body["round"] > 0
    t = torch.where(is_round, disc, box)
    t = torch.where(body["there"] > 0, t, torch.full_like(t, FAR))
    return t, torch.where(is_round, normal_disc, normal_box), o + t.clamp(max=50) * v


def unfolded(body, place, normal):
    """Where on its canvas a place of a body lies, -1 to 1 [n,2,h,w], as if its faces were unfolded about the one that was cut; and the canvas's own axes there."""
    half = body["half"]
    long = half.amax(1, keepdim=True).clamp(max=0.5)
    x, y, z = place[:, :1], place[:, 1:2], place[:, 2:]
    side = (normal[:, :1].abs() > 0.6).float() * normal[:, :1].sign()
    # Lying: the top is the face, and what is in front of it or beside it folds down.
    front = (normal[:, 2:].abs() > 0.6).float() * normal[:, 2:].sign()
    down = half[:, 1:2] - y
    s_lies, t_lies = x + side * down, z + front * down
    # Upright: the front is the face, the top folds up, sides fold back.
    top = (normal[:, 1:2] > 0.6).float()
    back = half[:, 2:] - z
    s_up, t_up = x + side * back, -y - top * back
    lies = body["lies"] > 0
    s, t = torch.where(lies, s_lies, s_up), torch.where(lies, t_lies, t_up)
    return torch.cat([s, t], 1) / (2 * long) * SPAN * 2


def footprint(body):
    """Which part of the canvas is the cut face, and which the top that lay open to the air: [n,1,SIDE,SIDE] each."""
    half = body["half"]
    long = 2 * half.amax(1, keepdim=True).clamp(max=0.5)
    tall = torch.where(body["lies"] > 0, half[:, 2:], half[:, 1:2])
    a, b = half[:, :1] / long * SPAN, tall / long * SPAN
    at = (torch.arange(SIDE, device=half.device).float() + 0.5) / SIDE - 0.5
    u, v = at.view(1, 1, 1, -1), at.view(1, 1, -1, 1)
    square = torch.maximum(u.abs() - a, v.abs() - b)
    oval = ((u / a) ** 2 + (v / b) ** 2).sqrt() - 1
    edge = torch.where(body["round"] > 0, oval * torch.minimum(a, b), square)
    face = (0.5 - edge * SIDE).clamp(0, 1)
    above = ((u.abs() < a) & (v < -b)).float().expand_as(face)
    return face, torch.where(body["lies"] > 0, face, above)


def bevelled(body, place, normal, wide):
    """The normal turned towards the next face near an edge, `wide` [n,1,1,1] in bar lengths."""
    left = (body["half"] - place.abs()).clamp(min=0)
    lean = (1 - left / wide).clamp(0, 1) ** 2 * place.sign() * (1 - normal.abs())
    lean = torch.where(body["round"] > 0, lean * torch.tensor([0.0, 1.0, 0.0], device=lean.device).view(1, 3, 1, 1), lean)
    out = normal + lean
    return out / out.norm(dim=1, keepdim=True)
