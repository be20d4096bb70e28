"""A phone: focus, lens blur, exposure, white balance off, vignette, noise, sharpening, JPEG blocks."""
import math
import numpy as np
import torch
import torch.nn.functional as F


def gauss(x, s):
    """s [n,1,1,1] in pixels, one radius for all so that it runs as one grouped conv"""
    n, c, h, w = x.shape
    r = int(math.ceil(float(s.max()) * 2.5)) or 1
    r = min(r, 24, h - 1, w - 1)
    t = torch.arange(-r, r + 1, device=x.device, dtype=torch.float32)
    k = torch.exp(-.5 * (t[None] / s.view(n, 1).clamp_min(.05)) ** 2)
    k = (k / k.sum(1, keepdim=True)).repeat_interleave(c, 0)
    y = x.reshape(1, n * c, h, w)
    y = F.conv2d(F.pad(y, (r, r, 0, 0), mode="reflect"), k.view(n * c, 1, 1, -1), groups=n * c)
    y = F.conv2d(F.pad(y, (0, 0, r, r), mode="reflect"), k.view(n * c, 1, -1, 1), groups=n * c)
    return y.view(n, c, h, w)


def params(rs, n, dev, h):
    v = lambda a: torch.from_numpy(np.asarray(a, np.float32)).to(dev).view(n, -1, 1, 1)
    wb = np.exp(rs.normal(0, .06, (n, 3)))
    adapt = rs.uniform(.55, 1.0, n)
    sc = h / 512.
    return dict(wb=v(wb), adapt=v(adapt), ev=v(rs.normal(0, .28, n)), dof=v(rs.choice([0, 1, 1, 2.5], n) * rs.uniform(.5, 1.6, n) * sc),
                blur=v(rs.choice([.35, .5, .8, 1.4], n) * rs.uniform(.7, 1.3, n) * max(sc, .5)), vig=v(rs.uniform(0, .35, n)),
                noise=v(np.exp(rs.uniform(-6.2, -3.5, n))), sharp=v(rs.choice([0, .4, .8, 1.4], n) * rs.uniform(.5, 1.3, n)),
                q=v(rs.choice([0, .4, .6, 1., 1.6], n) * rs.uniform(.6, 1.4, n)), con=v(rs.uniform(.0, .5, n)), sat=v(rs.uniform(.85, 1.2, n)))


def focus(p, x, g):
    """blur by distance from the focused depth"""
    t = g["t"]
    m = (g["what"] == 2).float() + 1e-4
    ft = (t * m).sum((2, 3), keepdim=True) / m.sum((2, 3), keepdim=True)
    ft = torch.where(m.mean((2, 3), keepdim=True) < .01, t.mean((2, 3), keepdim=True), ft)
    coc = ((1 - ft / t).abs() * 4).clamp(0, 2.2)
    coc = gauss(coc, p["dof"] + .5)
    y = x
    for k, s in enumerate((.8, 1.8, 4.0)):
        wgt = (coc * p["dof"] / s - .3).clamp(0, 1)
        y = y + (gauss(x, torch.full_like(p["dof"], s) * (p["dof"] > 0).float() + .05) - y) * wgt
    return y


def tone(p, x, light):
    """linear to sRGB as a phone would: part white balance, exposure by the middle, a shoulder"""
    w = light / light.mean(1, keepdim=True)
    x = x / (1 + p["adapt"] * (w - 1)) * p["wb"]
    lum = x.mean(1, keepdim=True)
    n = x.shape[0]
    mid = lum.flatten(1).clamp_min(1e-4).log().mean(1).exp().view(n, 1, 1, 1)
    hi = torch.quantile(lum[:, :, ::4, ::4].flatten(1), .97, dim=1).view(n, 1, 1, 1)
    gain = torch.minimum(.27 / mid, 1.05 / hi) ** .85 * 2 ** p["ev"]
    return gain.clamp(.2, 6)


def finish(p, x, gain, light):
    w = light / light.mean(1, keepdim=True)
    x = x / (1 + p["adapt"] * (w - 1)) * p["wb"] * gain
    n, _, h, w_ = x.shape
    yy = torch.linspace(-1, 1, h, device=x.device).view(1, 1, h, 1)
    xx = torch.linspace(-1, 1, w_, device=x.device).view(1, 1, 1, w_)
    x = x * (1 - p["vig"] * (xx ** 2 + yy ** 2) * .5)
    x = x.clamp_min(0)
    x = torch.where(x > .7, .7 + .3 * (1 - torch.exp(-(x - .7) / .3)), x)
    x = x.clamp(1e-5, 1) ** (1 / 2.2)
    x = x + p["con"] * .5 * (x - .5) * (1 - (2 * x - 1) ** 2)
    l = x.mean(1, keepdim=True)
    return (l + (x - l) * p["sat"]).clamp(0, 1)


def dct(dev):
    k = torch.arange(8, dtype=torch.float32, device=dev)
    m = torch.cos((k[None] + .5) * k[:, None] * math.pi / 8) * math.sqrt(2 / 8)
    m[0] *= math.sqrt(.5)
    return m


def jpeg(x, q):
    n, c, h, w = x.shape
    H, W = -(-h // 8) * 8, -(-w // 8) * 8
    M = torch.tensor([[.299, .587, .114], [-.169, -.331, .5], [.5, -.419, -.081]], device=x.device)
    y = torch.einsum("ij,njhw->nihw", M, F.pad(x, (0, W - w, 0, H - h), mode="replicate"))
    b = y.view(n, 3, H // 8, 8, W // 8, 8).permute(0, 1, 2, 4, 3, 5)
    D = dct(x.device)
    d = D @ b @ D.t()
    k = torch.arange(8, dtype=torch.float32, device=x.device)
    step = (8 + 7 * (k[:, None] + k[None])) / 255.
    step = step[None, None, None, None] * q.view(n, 1, 1, 1, 1, 1).clamp_min(1e-3) * torch.tensor([1., 2., 2.], device=x.device).view(1, 3, 1, 1, 1, 1)
    d = torch.round(d / step) * step
    y = (D.t() @ d @ D).permute(0, 1, 2, 4, 3, 5).reshape(n, 3, H, W)[:, :, :h, :w]
    y = torch.einsum("ij,njhw->nihw", torch.inverse(M), y)
    return torch.where(q > 0, y, x)


def sensor(p, x, gen):
    nz = torch.randn(x.shape, generator=gen, device=x.device)
    nz = .6 * nz + .4 * F.avg_pool2d(F.pad(nz, (1, 1, 1, 1), mode="reflect"), 3, 1) * 3
    x = x + nz * p["noise"] * (1.3 - x)
    x = x + p["sharp"] * (x - gauss(x, torch.full_like(p["sharp"], 1.0)))
    return jpeg(x.clamp(0, 1), p["q"]).clamp(0, 1)
