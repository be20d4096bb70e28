"""The phone: focus, white balance, tone, vignette, grain, sharpening, blocks."""
import math
import numpy as np
import torch
import torch.nn.functional as F
from bench_noise import gauss, smooth, mix


def sample(r):
    u = r.uniform
    bad = r.rand() < .3
    return dict(dof=u(0, 3.5) if r.rand() < .6 else 0.0, foc=u(-1, 1) * (3.0 if bad else .6), blur=u(.8, 2.0) if bad and r.rand() < .6 else u(0, .7),
                noise=u(.012, .045) if bad else u(.002, .015), sharp=u(.0, 1.2), vig=u(0, .45), q=u(18, 60) if r.rand() < .4 else u(60, 95),
                sat=u(.85, 1.25), con=u(-.15, .5), haze=u(.02, .12) if r.rand() < .15 else 0.0, gtint=u(-.05, .05))


def focus(img, depth, c):
    """near and far out of focus; c['foc'] cm off the aim"""
    s = img.shape[-1] / 512
    coc = ((depth - c['aim'] - c['foc']).abs() / c['aim'] * c['dof'] * 6 - .35).clamp(0, 7) * s
    b1, b2, b3 = gauss(img, 1.3 * s), gauss(img, 3.2 * s), gauss(img, 7 * s)
    x = mix(img, b1, (coc / (1.3 * s)).clamp(0, 1))
    x = mix(x, b2, ((coc / s - 1.3) / 1.9).clamp(0, 1))
    return mix(x, b3, ((coc / s - 3.2) / 3.8).clamp(0, 1)), coc


def expose(img, c):
    """one gain per picture from its bright parts, white balance"""
    x = img / c['wb']
    y = x.mean(1).flatten(1)
    k = y[:, ::7] if y.shape[1] > 20000 else y
    hi = torch.quantile(k, .92, dim=1).view(-1, 1, 1, 1)
    mid = k.mean(1).view(-1, 1, 1, 1)
    return c['expo'] * .72 / (.55 * hi + .9 * mid * .9 + 1e-4)


def tone(x, c):
    x = x.clamp(min=0)
    x = torch.where(x > .7, .7 + .3 * (1 - torch.exp(-(x - .7) / .3)), x)
    y = x.clamp(1e-6, 1) ** (1 / 2.2)
    g = y.mean(1, keepdim=True)
    y = g + (y - g) * c['sat']
    sc = y * y * (3 - 2 * y)
    y = mix(y, sc, c['con'])
    return mix(y, torch.full_like(y, .75), c['haze']).clamp(0, 1)


def dct(n, dev):
    k = torch.arange(n, device=dev, dtype=torch.float32)
    m = torch.cos(math.pi / n * (k[None] + .5) * k[:, None]) * math.sqrt(2 / n)
    m[0] = math.sqrt(1 / n)
    return m


def blocks(x, q):
    """JPEG-like: 8x8 cosine blocks, rounded by quality q [n,1,1,1]"""
    n, _, h, w = x.shape
    ph, pw = (-h) % 16, (-w) % 16
    x = F.pad(x, (0, pw, 0, ph), mode='replicate')
    M = x.new_tensor([[.299, .587, .114], [-.1687, -.3313, .5], [.5, -.4187, -.0813]])
    y = torch.einsum('ij,njhw->nihw', M, x) * 255
    sc = torch.where(q < 50, 50 / q, 2 - q / 50).clamp(min=.02)
    D = dct(8, x.device)
    i = torch.arange(8, device=x.device, dtype=torch.float32)
    ql = (10 + 4.6 * (i[:, None] + i[None]) + 1.2 * (i[:, None] * i[None]) * .5)
    qc = (17 + 14 * (i[:, None] + i[None])).clamp(max=99)

    def one(p, qt):
        a, b, hh, ww = p.shape
        t = p.reshape(a, b, hh // 8, 8, ww // 8, 8).permute(0, 1, 2, 4, 3, 5)
        t = D @ t @ D.t()
        st = (qt * sc.view(-1, 1, 1, 1, 1, 1)).clamp(min=.7)
        t = torch.round(t / st) * st
        t = D.t() @ t @ D
        return t.permute(0, 1, 2, 4, 3, 5).reshape(a, b, hh, ww)
    lum = one(y[:, :1], ql)
    chroma = F.interpolate(one(F.avg_pool2d(y[:, 1:], 2), qc), scale_factor=2, mode='bilinear', align_corners=False)
    y = torch.cat([lum, chroma], 1) / 255
    return torch.einsum('ij,njhw->nihw', torch.linalg.inv(M), y)[..., :h, :w].clamp(0, 1)


def phone(lin, c, gen):
    """linear light at final size -> sRGB picture; c: parameters [n,1,1,1]"""
    n, _, h, w = lin.shape
    s = w / 512
    yy, xx = torch.meshgrid(torch.linspace(-1, 1, h, device=lin.device), torch.linspace(-1, 1, w, device=lin.device), indexing='ij')
    vig = 1 - c['vig'] * (xx ** 2 + yy ** 2)[None, None] * .5
    x = lin * vig
    b1, b2 = gauss(x, .7 * s), gauss(x, 1.8 * s)
    x = mix(mix(x, b1, (c['blur'] / .7).clamp(0, 1)), b2, ((c['blur'] - .7) / 1.1).clamp(0, 1))
    y = tone(x, c)
    z = torch.randn(y.shape, generator=gen, device=y.device)
    zc = gauss(torch.randn(y.shape, generator=gen, device=y.device), 1.2)
    y = y + (z.mean(1, keepdim=True) * 1.2 + .35 * z + .6 * zc) * c['noise'] * (1.25 - y)
    y = y + (y - gauss(y, 1.0 * max(s, .5))) * c['sharp'] * .6
    return blocks(y.clamp(0, 1), c['q'])
