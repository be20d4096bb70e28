"""The camera: lens blur, exposure, mosaic sensor with noise, denoise, colour, tone curve, sharpening, JPEG."""
import math
from types import SimpleNamespace
import torch
import torch.nn.functional as F
from scat_base import blur, mix, smooth, luma, to_srgb, wide_blur

_Q = [16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51, 87,
      80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101, 72,
      92, 95, 98, 112, 100, 103, 99]
_C = [17, 18, 24, 47, 18, 21, 26, 66, 24, 26, 56, 99, 47, 66, 99, 99]


def settings(n, d, H):
    """Draw one camera per picture, from good to bad."""
    K = SimpleNamespace(n=n)
    bad = d.raw(n, 1, 1, 1) ** 1.6
    k = H / 384.0
    K.psf = (0.35 + d.log(n, 0.1, 0.6) + bad * d.u(n, 0, 1.3)) * max(k, 0.6)
    K.defocus = d.log(n, 0.5, 12) * d.chance(n, 0.7) * k
    K.fshift = d.u(n, -0.05, 0.05) + d.chance(n, 0.12) * d.u(n, -0.25, 0.25)
    K.shake = d.chance(n, 0.12) * d.u(n, 0.5, 3.0) * k
    K.angle = d.u(n, 0, 3.14)
    K.target = d.log(n, 0.22, 0.5)
    K.vig = d.u(n, 0, 0.4) * d.chance(n, 0.6)
    K.noise = 0.001 + 0.006 * d.raw(n, 1, 1, 1) + 0.02 * bad ** 2
    K.shot = 0.004 + 0.02 * bad
    K.mosaic = d.chance(n, 0.3) * d.u(n, 0.4, 1.0)
    K.den = d.u(n, 0, 1.0)
    K.awb = d.u(n, 0.45, 1.0)
    K.tint = torch.exp(d.normal(n, 3, 1, 1) * torch.tensor([0.045, 0.02, 0.06]).to(d.device).view(1, 3, 1, 1))
    K.sat = d.u(n, 0.8, 1.22)
    K.curve = d.u(n, 0, 0.75)
    K.black = d.u(n, -0.02, 0.02)
    K.sharp = d.u(n, 0, 1.0)
    K.srad = d.u(n, 0.6, 1.4)
    K.quality = torch.where(d.chance(n, 0.25) > 0, d.u(n, 25, 60), d.u(n, 60, 97))
    K.top = d.u(n, 0.55, 1.15)
    return K


def lens(x, t, focus, K):
    """Defocus by distance, shake and point spread, on linear radiance."""
    coc = ((focus / t.clamp(min=0.05)) - 1 - K.fshift).abs() * K.defocus
    b1, b2, b3 = blur(x, 1.2, 3), wide_blur(x, torch.full_like(K.psf, 3.2), 2, 4), wide_blur(x, torch.full_like(K.psf, 8.0), 4, 5)
    c = blur(coc, 1.5, 4)
    x = mix(x, b1, smooth(c, 0.3, 1.2))
    x = mix(x, b2, smooth(c, 1.2, 3.2))
    x = mix(x, b3, smooth(c, 3.2, 8.0))
    x = blur(x, K.psf, 5)
    if float(K.shake.max()) > 0:
        acc = torch.zeros_like(x)
        n, _, h, w = x.shape
        base = F.affine_grid(torch.eye(2, 3, device=x.device)[None].expand(n, 2, 3), (n, 1, h, w), align_corners=False)
        dv = torch.cat([torch.cos(K.angle) * 2 / w, torch.sin(K.angle) * 2 / h], 1).view(n, 1, 1, 2) * K.shake.view(n, 1, 1, 1)
        for o in (-1.0, -0.5, 0.0, 0.5, 1.0):
            acc = acc + F.grid_sample(x, base + dv * o, mode="bilinear", padding_mode="border", align_corners=False)
        x = torch.where(K.shake > 0, acc / 5, x)
    return x


def expose(x, soap, K):
    """Automatic exposure and white balance gains from the lens image."""
    m = 0.35 + 0.65 * soap
    mean = (x * m).sum((2, 3), keepdim=True) / m.sum((2, 3), keepdim=True)
    lum = luma(mean).clamp(min=1e-4)
    top = torch.quantile(luma(x).flatten(1)[:, ::17], 0.985, dim=1).view(-1, 1, 1, 1).clamp(min=1e-4)
    g = torch.minimum(K.target / lum * (0.5 + 0.9 * lum.clamp(max=1) ** 0.5), K.top / top)
    return g


def develop(x, K, gain, cast, noise=None):
    """Raw linear image to the file's sRGB values; noise None gives the ideal noiseless twin without JPEG."""
    n, _, h, w = x.shape
    yy = torch.linspace(-1, 1, h, device=x.device).view(1, 1, h, 1)
    xx = torch.linspace(-1, 1, w, device=x.device).view(1, 1, 1, w)
    x = x * gain * (1 - K.vig * 0.5 * (yy * yy + xx * xx))
    if noise is not None:
        x = x + noise * torch.sqrt(K.noise ** 2 + K.shot ** 2 * 0.25 * x.clamp(min=0))
        x = x.clamp(max=1.4)
        x = mix(x, demosaic(x), K.mosaic)
        y = luma(x)
        ch = x - y
        yb = blur(y, 1.0, 2)
        keep = smooth((y - yb).abs(), 0.4 * K.noise + 0.01, 2.5 * K.noise + 0.04)
        y = mix(y, mix(yb, y, keep), K.den)
        x = y + mix(ch, blur(ch, 1.6, 4), 0.3 + 0.7 * K.den)
    x = x / cast ** K.awb * K.tint
    y = luma(x)
    x = (y + (x - y) * K.sat).clamp(min=0)
    x = torch.where(x > 0.8, 0.8 + 0.25 * (1 - torch.exp(-(x - 0.8) / 0.25)), x)
    s = to_srgb(x)
    s = mix(s, s * s * (3 - 2 * s), K.curve * 0.7) + K.black
    s = s + K.sharp * (s - blur(s, K.srad, 4))
    return s.clamp(0, 1)


def demosaic(x):
    """Sample a Bayer mosaic and interpolate it bilinearly."""
    n, _, h, w = x.shape
    r, g, b = torch.zeros(1, 1, h, w, device=x.device), torch.ones(1, 1, h, w, device=x.device), torch.zeros(1, 1, h, w, device=x.device)
    r[..., 0::2, 0::2] = 1
    b[..., 1::2, 1::2] = 1
    m = torch.cat([r, g - r - b, b], 1)
    k = torch.tensor([[1.0, 2, 1], [2, 4, 2], [1, 2, 1]], device=x.device).view(1, 1, 3, 3).repeat(3, 1, 1, 1)
    pad = lambda a: F.pad(a, (1, 1, 1, 1), mode="replicate")
    y = x * m
    out = F.conv2d(pad(y), k, groups=3) / F.conv2d(pad(m), k, groups=3).clamp(min=1)
    return mix(out, x, m)


def jpeg(s, quality):
    """Block transform coding with 4:2:0 colour at a quality per picture."""
    n, _, h, w = s.shape
    ph, pw = (-h) % 16, (-w) % 16
    x = F.pad(s, (0, pw, 0, ph), mode="replicate") * 255
    r, g, b = x[:, :1], x[:, 1:2], x[:, 2:]
    y = 0.299 * r + 0.587 * g + 0.114 * b - 128
    c = torch.cat([(b - y - 128) * 0.564, (r - y - 128) * 0.713], 1)
    c = F.avg_pool2d(c, 2)
    i = torch.arange(8, device=s.device, dtype=s.dtype)
    D = torch.cos((2 * i[None] + 1) * i[:, None] * math.pi / 16) * 0.5
    D[0] = D[0] * math.sqrt(0.5)
    sc = torch.where(quality < 50, 5000 / quality, 200 - 2 * quality).view(n, 1, 1, 1, 1, 1) / 100
    qy = torch.tensor(_Q, device=s.device, dtype=s.dtype).view(8, 8)
    qc = torch.full((8, 8), 99.0, device=s.device)
    qc[:4, :4] = torch.tensor(_C, device=s.device, dtype=s.dtype).view(4, 4)

    def code(p, q):
        nn_, cc, hh, ww = p.shape
        v = p.view(nn_, cc, hh // 8, 8, ww // 8, 8).permute(0, 1, 2, 4, 3, 5)
        q = (q * sc).clamp(min=1)
        v = torch.round(D @ v @ D.t() / q) * q
        return (D.t() @ v @ D).permute(0, 1, 2, 4, 3, 5).reshape(nn_, cc, hh, ww)
    y = code(y, qy)
    c = F.interpolate(code(c, qc), scale_factor=2, mode="bilinear", align_corners=False)
    cb, cr = c[:, :1], c[:, 1:]
    out = torch.cat([y + 1.402 * cr, y - 0.344 * cb - 0.714 * cr, y + 1.772 * cb], 1) + 128
    return (torch.round(out) / 255).clamp(0, 1)[..., :h, :w]
