"""The camera: lens blur, colour fringes, vignette, mosaic sensor, noise, tone curve, sharpening, block coding."""
import math
import torch
import torch.nn.functional as F
from relief_fields import gauss, lerp, smooth


def optics(lin, depth, c):
    """Focus blur by depth, base softness, motion and vignette on linear light."""
    lin = lin.clamp(0, 12)
    coc = ((depth - c.focus).abs() / c.focus * c.aperture).clamp(max=1)
    soft = gauss(lin, c.soft, 5)
    wide = gauss(soft, c.defocus, 9)
    out = lerp(soft, wide, coc)
    return out * c.vign


def vignette(h, w, strength, dev):
    """Fall-off towards the corners."""
    y, x = torch.meshgrid(torch.linspace(-1, 1, h, device=dev), torch.linspace(-1, 1, w, device=dev), indexing="ij")
    return 1 - strength * (x * x + y * y)[None, None] * .5


def fringe(lin, amount):
    """Red and blue scaled about the centre."""
    n, _, h, w = lin.shape
    y, x = torch.meshgrid(torch.linspace(-1, 1, h, device=lin.device), torch.linspace(-1, 1, w, device=lin.device), indexing="ij")
    g = torch.stack([x, y], -1)[None].expand(n, h, w, 2)
    k = amount.reshape(n, 1, 1, 1)
    r = F.grid_sample(lin[:, 0:1], g * (1 + k), align_corners=True, padding_mode="border")
    b = F.grid_sample(lin[:, 2:3], g * (1 - k), align_corners=True, padding_mode="border")
    return torch.cat([r, lin[:, 1:2], b], 1)


def tone(lin, c):
    """White balance, colour matrix, tone curve and gamma to display values."""
    x = (lin * c.gain * c.wb).clamp(0, 8)
    grey = (x * torch.tensor([.3, .59, .11], device=x.device).reshape(1, 3, 1, 1)).sum(1, keepdim=True)
    x = (grey + (x - grey) * c.sat).clamp(0, 8)
    x = x * (1 + x / 6.) / (1 + x * c.shoulder)
    x = x.clamp(0, 1)
    s = torch.where(x < .0031308, 12.92 * x, 1.055 * x.clamp(min=1e-5) ** (1 / 2.4) - .055)
    s = lerp(s, s * s * (3 - 2 * s), c.contrast)
    return (c.lift + (1 - c.lift) * s).clamp(0, 1)


def mosaic(lin, c, gen):
    """Bayer sampling with shot and read noise, simple interpolation back."""
    n, _, h, w = lin.shape
    dev = lin.device
    z = torch.randn(lin.shape, generator=gen, device=dev)
    raw = lin + z * torch.sqrt((lin * c.shot ** 2).clamp(min=0) + c.read ** 2) / c.gain.sqrt()
    y, x = torch.arange(h, device=dev)[:, None] % 2, torch.arange(w, device=dev)[None] % 2
    m = torch.stack([((y == 0) & (x == 0)).float(), (y != x).float(), ((y == 1) & (x == 1)).float()])[None]
    k = torch.tensor([[1., 2, 1], [2, 4, 2], [1, 2, 1]], device=dev)[None, None].repeat(3, 1, 1, 1)
    num = F.conv2d(F.pad(raw * m, (1, 1, 1, 1), mode="reflect"), k, groups=3)
    den = F.conv2d(F.pad(m, (1, 1, 1, 1), mode="reflect"), k, groups=3)
    full = num / den
    return lerp(raw, full, c.bayer).clamp(min=0)


def dct_matrix(dev):
    """8-point DCT basis."""
    k = torch.arange(8, dtype=torch.float32, device=dev)
    m = torch.cos((2 * k[None] + 1) * k[:, None] * math.pi / 16) * .5
    m[0] *= 1 / math.sqrt(2)
    return m


def blocks(ch, q, m):
    """Quantise one plane in 8x8 blocks with table q [n,8,8]."""
    n, _, h, w = ch.shape
    ph, pw = (-h) % 8, (-w) % 8
    x = F.pad(ch, (0, pw, 0, ph), mode="replicate")
    H, W = x.shape[2:]
    b = x.reshape(n, H // 8, 8, W // 8, 8).permute(0, 1, 3, 2, 4)
    d = m @ b @ m.t()
    qq = q[:, None, None]
    d = torch.round(d / qq) * qq
    b = m.t() @ d @ m
    return b.permute(0, 1, 3, 2, 4).reshape(n, 1, H, W)[:, :, :h, :w]


def jpeg(s, quality):
    """Block coding of display values at a quality per picture [n,1,1,1]."""
    n, _, h, w = s.shape
    dev = s.device
    m = dct_matrix(dev)
    i = torch.arange(8, device=dev, dtype=torch.float32)
    base = 11 + 9.0 * (i[:, None] + i[None]) + .6 * i[:, None] * i[None]
    sc = torch.where(quality < 50, 50 / quality, 2 - quality / 50).reshape(n, 1, 1)
    ql = (base[None] * sc).clamp(min=1) / 255
    qc = ((base * 1.4).clamp(max=99)[None] * sc).clamp(min=1) / 255
    r, g, b = s[:, 0:1], s[:, 1:2], s[:, 2:3]
    y = .299 * r + .587 * g + .114 * b
    cb, cr = (b - y) * .564, (r - y) * .713
    y = blocks(y - .5, ql, m) + .5
    down = lambda c: F.avg_pool2d(c, 2, ceil_mode=True)
    up = lambda c: F.interpolate(c, size=(h, w), mode="bilinear", align_corners=False)
    cb, cr = up(blocks(down(cb), qc, m)), up(blocks(down(cr), qc, m))
    return torch.cat([y + 1.403 * cr, y - .344 * cb - .714 * cr, y + 1.773 * cb], 1)


def finish(lin, c, gen):
    """From blurred linear light to the file: fringes, mosaic, tone, denoise, sharpening, coding."""
    x = mosaic(fringe(lin, c.fringe), c, gen)
    s = tone(x, c)
    y = s.mean(1, keepdim=True)
    s = lerp(s, y + gauss(s - y, torch.full_like(c.soft, 1.6), 4), c.chroma)
    s = lerp(s, gauss(s, torch.full_like(c.soft, .9), 3), c.denoise)
    s = s + c.sharp * (s - gauss(s, c.sharp_r, 4))
    s = s.clamp(0, 1)
    return lerp(s, jpeg(s, c.quality), c.coded).clamp(0, 1)
