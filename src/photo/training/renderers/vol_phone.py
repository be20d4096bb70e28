"""A phone camera: lens blur by depth, motion, halo of HDR, noise, tone curve, smear, over-sharpening, JPEG blocks."""
import math
import torch
import torch.nn.functional as F
from vol_noise import sstep, mix


def gauss(x, sigma):
    """Separable Gaussian blur with one sigma for all pictures [B,C,H,W]."""
    if sigma < .25:
        return x
    r = max(1, int(math.ceil(2.5 * sigma)))
    k = torch.exp(-torch.arange(-r, r + 1, dtype=torch.float32) ** 2 / (2 * sigma * sigma))
    k = (k / k.sum()).tolist()
    for d, pad in ((3, (r, r, 0, 0)), (2, (0, 0, r, r))):
        y, n = F.pad(x, pad, mode="replicate"), x.shape[d]
        x = y.narrow(d, r, n) * k[r]
        for j in range(r):
            x = x.add_(y.narrow(d, j, n), alpha=k[j]).add_(y.narrow(d, 2 * r - j, n), alpha=k[j])
    return x


def small_gauss(x, sigma):
    """Wide blur done on a smaller picture."""
    f = 1
    while sigma / f > 3 and f < 16:
        f *= 2
    y = F.avg_pool2d(x, f, ceil_mode=True) if f > 1 else x
    y = gauss(y, sigma / f)
    return F.interpolate(y, size=x.shape[2:], mode="bilinear", align_corners=False) if f > 1 else y


def defocus(x, sig, sc):
    """Blur whose width sig [B,1,H,W] changes over the picture."""
    lv = [0., .6, 1.2, 2.4, 5., 10.]
    out, prev = x, x
    for a, b in zip(lv[:-1], lv[1:]):
        cur = small_gauss(x, b * sc)
        t = ((sig - a) / (b - a)).clamp(0, 1)
        out = torch.where(sig > a, mix(prev, cur, t), out)
        prev = cur
    return out


def motion(x, S, host, sc):
    """Straight shake of the hand, for the pictures that have it."""
    rows = [i for i, it in enumerate(host["items"]) if it["mlen"] > 0]
    if not rows:
        return x
    r = torch.tensor(rows, device=x.device)
    b, _, h, w = x[r].shape
    acc = 0
    th = torch.eye(2, 3, device=x.device)[None].repeat(b, 1, 1)
    for j in range(7):
        t = (j / 6 - .5) * S["mlen"][r, 0, 0] * sc
        th[:, 0, 2], th[:, 1, 2] = t * S["mang"][r, 0, 0].cos() * 2 / w, t * S["mang"][r, 0, 0].sin() * 2 / h
        acc = acc + F.grid_sample(x[r], F.affine_grid(th, (b, 3, h, w), align_corners=False), padding_mode="border", align_corners=False)
    x = x.clone()
    x[r] = acc / 7
    return x


def col(S, k):
    return S[k][..., None]


def lens(x, depth, S, host):
    """Radiance through the lens: focus, shake, bloom, haze, vignette."""
    b, _, h, w = x.shape
    sc = w / 512
    foc = (S["dist"] * (1 + S["foff"]))[..., None]
    coc = (col(S, "aperture") * 3.2 * (depth - foc).abs() / depth.clamp(min=.2) * (1.5 / foc.clamp(min=.8))).clamp(max=6)
    x = defocus(x, (col(S, "focus") ** 2 + small_gauss(coc, 2 * sc) ** 2).sqrt(), sc)
    x = motion(x, S, host, sc)
    x = x + col(S, "bloom") * small_gauss((x - 1.0).clamp(0, 6), 14 * sc)
    yy, xx = torch.meshgrid(torch.linspace(-1, 1, h, device=x.device), torch.linspace(-1, 1, w, device=x.device), indexing="ij")
    x = x * (1 - col(S, "vig") * (xx ** 2 + yy ** 2) * .6)
    return x + col(S, "haze") * x.mean((1, 2, 3), keepdim=True)


def meter(x, S):
    """Exposure and white balance of the whole picture, to be kept for its twins."""
    L = x.mean(1, keepdim=True).clamp(min=1e-4)
    m = torch.exp(L.clamp(max=6).log().mean((2, 3), keepdim=True))
    hi = L.flatten(1).kthvalue(int(L[0].numel() * .97), 1)[0].view(-1, 1, 1, 1)
    gain = torch.minimum(col(S, "key") / m, 1.5 / hi.clamp(min=1e-3))
    cast = col(S, "cast")
    cast = cast / cast.mean(1, keepdim=True)
    return gain, (cast ** -col(S, "adapt")) * (1 + col(S, "wb"))


def tone(x, S, sc):
    """Local HDR compression, filmic curve, gamma, contrast, saturation -> sRGB."""
    L = x.mean(1, keepdim=True).clamp(min=1e-4)
    lb = small_gauss(L.clamp(max=4).log(), 22 * sc)
    x = x * torch.exp(-col(S, "hdr") * (lb - math.log(.3)))
    s = col(S, "shoulder")
    x = 1 - torch.exp(-x * s * 1.35)
    x = x.clamp(0, 1)
    y = torch.where(x < .0031, x * 12.92, 1.055 * x.clamp(min=1e-5) ** (1 / 2.4) - .055)
    y = (y - .5) * col(S, "contrast") + .5 + col(S, "black")
    g = y.mean(1, keepdim=True)
    return (g + (y - g) * col(S, "sat")).clamp(0, 1)


def grain(x, S, gen, sc):
    """Shot and read noise, partly coloured and partly coarse, before the curve."""
    b, _, h, w = x.shape
    n = torch.randn(b, 3, h, w, device=x.device, generator=gen)
    c = F.interpolate(torch.randn(b, 3, h // 2, w // 2, device=x.device, generator=gen), size=(h, w), mode="bilinear", align_corners=False)
    mono = n.mean(1, keepdim=True) * 1.5
    n = mix(mono.expand_as(n), .7 * n + .6 * c, col(S, "chroma"))
    return (x + col(S, "noise") * n * (x.clamp(0, 2) * 1.2 + .04).sqrt()).clamp(min=0)


def finish(y, S, sc):
    """Night-mode smear (guided filter), sharpening and JPEG."""
    box = lambda t: F.avg_pool2d(t, 5, 1, 2, count_include_pad=False)
    m = box(y)
    v = (box(y * y) - m * m).clamp(min=0)
    a = v / (v + (.035 * col(S, "smear")) ** 2 + 1e-6)
    y = mix(y, box(a) * y + box(m * (1 - a)), (col(S, "smear") > 0).float())
    hi = torch.where(col(S, "srad") > 1, y - gauss(y, 1.6 * sc), y - gauss(y, .8 * sc))
    y = (y + col(S, "sharp") * hi.clamp(-.15, .15)).clamp(0, 1)
    return jpeg(y, S["q"])


_Q = torch.tensor([16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56,
                   14, 17, 22, 29, 51, 87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92,
                   49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99.]).view(8, 8)
_QC = torch.full((8, 8), 99.)
_QC[:4, :4] = torch.tensor([[17, 18, 24, 47], [18, 21, 26, 66], [24, 26, 56, 99], [47, 66, 99, 99.]])


def dct_round(x, q):
    """Block transform, rounding by table q [B,1,8,8], and back."""
    b, c, h, w = x.shape
    ph, pw = -h % 8, -w % 8
    y = F.pad(x, (0, pw, 0, ph), mode="replicate") if ph or pw else x
    k = torch.arange(8, dtype=torch.float32, device=x.device)
    D = torch.cos((2 * k[None] + 1) * k[:, None] * math.pi / 16) * .5
    D[0] = math.sqrt(1 / 8)
    z = y.reshape(b, c, (h + ph) // 8, 8, (w + pw) // 8, 8).permute(0, 1, 2, 4, 3, 5)
    f = torch.matmul(torch.matmul(D, z), D.t())
    q = q[:, :, None, None]
    f = torch.round(f / q) * q
    z = torch.matmul(torch.matmul(D.t(), f), D).permute(0, 1, 2, 4, 3, 5)
    return z.reshape(b, c, h + ph, w + pw)[:, :, :h, :w]


def jpeg(y, quality):
    """JPEG at a quality per picture, chroma at half size."""
    q = quality.view(-1, 1, 1, 1)
    s = torch.where(q < 50, 5000 / q, 200 - 2 * q) / 100
    x = y * 255
    Y = .299 * x[:, :1] + .587 * x[:, 1:2] + .114 * x[:, 2:]
    C = torch.cat([(x[:, 2:] - Y) * .564, (x[:, :1] - Y) * .713], 1)
    Y = dct_round(Y - 128, (_Q.to(y.device) * s).clamp(min=1)) + 128
    c = dct_round(F.avg_pool2d(C, 2), (_QC.to(y.device) * s).clamp(min=1))
    c = F.interpolate(c, size=y.shape[2:], mode="bilinear", align_corners=False)
    r, b = Y + c[:, 1:] * 1.403, Y + c[:, :1] * 1.773
    g = (Y - .299 * r - .114 * b) / .587
    return (torch.cat([r, g, b], 1) / 255).clamp(0, 1)
