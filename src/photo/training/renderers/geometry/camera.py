"""The phone camera: exposure, white balance, lens, noise, tone curve, sharpening, block compression."""
import numpy as np
import torch
import torch.nn.functional as F
from .bank import gauss, lerp

_T = {}
QL = np.array([16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51, 87, 80, 62,
               18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99])


def _tab(dev):
    k = str(dev)
    if k not in _T:
        i = np.arange(8)
        d = np.cos((2 * i[None] + 1) * i[:, None] * np.pi / 16) * .5
        d[0] *= 2 ** -.5
        qc = np.minimum(99, np.add.outer(i, i) * 22 + 17)
        _T[k] = [torch.tensor(v, dtype=torch.float32, device=dev) for v in (d, QL.reshape(8, 8), qc)]
    return _T[k]


def blocks(x, q, scale):
    """quantise the 8x8 cosine coefficients of [n,c,H,W] in 0..255 with table q*scale[n]"""
    d = _tab(x.device)[0]
    n, c, H, W = x.shape
    ph, pw = (-H) % 8, (-W) % 8
    x = F.pad(x, (0, pw, 0, ph), mode="replicate") - 128
    hh, ww = x.shape[2:]
    b = x.view(n, c, hh // 8, 8, ww // 8, 8).transpose(3, 4)
    f = d @ b @ d.t()
    s = (q[None] * scale.view(n, 1, 1)).clamp(min=1).view(n, 1, 1, 1, 8, 8)
    f = torch.round(f / s) * s
    o = (d.t() @ f @ d).transpose(3, 4).reshape(n, c, hh, ww)
    return o[:, :, :H, :W] + 128


def jpeg(x, quality, sub):
    _, ql, qc = _tab(x.device)
    r, g, b = (x * 255).unbind(1)
    Y = .299 * r + .587 * g + .114 * b
    C = torch.stack([128 - .1687 * r - .3313 * g + .5 * b, 128 + .5 * r - .4187 * g - .0813 * b], 1)
    sc = torch.where(quality < 50, 50 / quality, 2 - quality / 50)
    H, W = Y.shape[1:]
    Y = blocks(Y[:, None], ql, sc)[:, 0]
    C2 = F.interpolate(blocks(F.avg_pool2d(C, 2, ceil_mode=True), qc, sc), size=(H, W), mode="bilinear", align_corners=False)
    C = torch.where(sub.view(-1, 1, 1, 1) > .5, C2, C) - 128
    o = torch.stack([Y + 1.402 * C[:, 1], Y - .3441 * C[:, 0] - .7141 * C[:, 1], Y + 1.772 * C[:, 0]], 1) / 255
    return o.clamp(0, 1)


def motion(x, ang, ln):
    """straight motion blur, 5 taps; ln px [n]"""
    n, c, H, W = x.shape
    dev = x.device
    yy = ((torch.arange(H, device=dev) + .5) / H * 2 - 1).view(1, H, 1)
    xx = ((torch.arange(W, device=dev) + .5) / W * 2 - 1).view(1, 1, W)
    o = 0
    for k in range(5):
        t = (k - 2) / 4 * ln
        gx = (xx + (torch.cos(ang) * t * 2 / W).view(n, 1, 1)).expand(n, H, W)
        gy = (yy + (torch.sin(ang) * t * 2 / H).view(n, 1, 1)).expand(n, H, W)
        o = o + F.grid_sample(x, torch.stack([gx, gy], -1), mode="bilinear", padding_mode="border", align_corners=False)
    return o / 5


def lens(x, C, coc):
    """blur of lens, focus and hand; coc [n,H,W] 0..1 share of the defocus blur"""
    s = gauss(x, C["blur"], 6)
    if C["any_dof"]:
        d1 = gauss(s, C["dof"] * .45, 6)
        lo = F.avg_pool2d(s, 4, 4, ceil_mode=True)
        d2 = F.interpolate(gauss(lo, C["dof"] / 4, 5), size=x.shape[2:], mode="bilinear", align_corners=False)
        c = coc[:, None]
        s = torch.where(c < .5, lerp(s, d1, (c * 2).clamp(0, 1)), lerp(d1, d2, (c * 2 - 1).clamp(0, 1)))
    ix = C["mot_ix"]
    if len(ix):
        s[ix] = motion(s[ix], C["mot_a"][ix], C["mot_l"][ix])
    return s


def tone(x, C):
    b = lambda k: C[k].view(-1, 1, 1, 1)
    x = x.clamp(min=0)
    sh = b("shoulder")
    x = torch.where(x > sh, sh + (1 - sh) * (1 - torch.exp(-(x - sh) / (1 - sh))), x)
    y = torch.where(x <= .0031308, 12.92 * x, 1.055 * x.clamp(min=1e-6) ** (1 / 2.4) - .055)
    y = lerp(y, y * y * (3 - 2 * y), b("contrast"))
    g = y.mean(1, keepdim=True)
    return (g + (y - g) * b("satur") + b("lift") * (1 - y)).clamp(0, 1)


def expose(x, C):
    """factor per picture [n,3,1,1]"""
    g = x.mean(1)
    mean = g.mean((1, 2))
    hi = F.adaptive_max_pool2d(F.avg_pool2d(g[:, None], 8), 8).flatten(1).kthvalue(52, 1).values
    e = torch.minimum(C["target"] / mean.clamp(min=1e-3), C["hi"] / hi.clamp(min=1e-3))
    return e.view(-1, 1, 1, 1) * C["wb"][:, :, None, None]


def sensor(x, C, gen):
    """noise, tone, sharpening, compression; x linear after lens and exposure"""
    n, _, H, W = x.shape
    b = lambda k: C[k].view(-1, 1, 1, 1)
    nz = torch.randn(n, 3, H, W, device=x.device, generator=gen)
    sm = F.avg_pool2d(nz, 3, 1, 1) * 2.2
    nz = lerp(nz, sm, b("coarse"))
    nz = lerp(nz.mean(1, keepdim=True) * 1.6, nz, b("chroma"))
    x = x + nz * b("noise") * (x.clamp(min=0) + .01).sqrt()
    y = tone(x, C)
    y = y + b("sharp") * (y - gauss(y, C["shr"], 3))
    return jpeg(y.clamp(0, 1), C["q"], C["sub"])
