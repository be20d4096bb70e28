"""Camera: lens blur, colour cast, exposure, tone, noise, sharpening, 8x8 block compression."""
import math
import numpy as np
import torch
import torch.nn.functional as F

T50 = np.array([16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51, 87, 80, 62,
                18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99], np.float32)


def gauss(x, sig, r=6):
    """Gaussian blur with one sigma (in pixels) per picture."""
    n, c, H, W = x.shape
    k = torch.arange(-r, r + 1, device=x.device, dtype=torch.float32).view(1, -1)
    w = torch.exp(-.5 * (k / sig.view(n, 1).clamp_min(.12)) ** 2)
    w = (w / w.sum(1, keepdim=True)).repeat_interleave(c, 0)
    y = F.pad(x, (r, r, r, r), mode="reflect").view(1, n * c, H + 2 * r, W + 2 * r)
    y = F.conv2d(y, w.view(n * c, 1, 1, -1), groups=n * c)
    return F.conv2d(y, w.view(n * c, 1, -1, 1), groups=n * c).view(n, c, H, W)


def box(x, k, times=2):
    for _ in range(times):
        x = F.avg_pool2d(F.pad(x, (k, k, 0, 0), mode="replicate"), (1, 2 * k + 1), 1)
        x = F.avg_pool2d(F.pad(x, (0, 0, k, k), mode="replicate"), (2 * k + 1, 1), 1)
    return x


def dct8(dev):
    k = torch.arange(8, dtype=torch.float32, device=dev)
    m = torch.cos((2 * k.view(1, 8) + 1) * k.view(8, 1) * math.pi / 16) * .5
    m[0] /= math.sqrt(2)
    return m


def blocks(y, q, D):
    """y [n,1,H,W] in -128..127 quantised with table q [n,8,8]."""
    n, _, H, W = y.shape
    ph, pw = -H % 8, -W % 8
    b = F.pad(y, (0, pw, 0, ph), mode="replicate")
    h, w = (H + ph) // 8, (W + pw) // 8
    b = b.view(n, h, 8, w, 8).permute(0, 1, 3, 2, 4)
    f = D @ b @ D.t()
    q = q.view(n, 1, 1, 8, 8)
    f = torch.round(f / q) * q
    b = (D.t() @ f @ D).permute(0, 1, 3, 2, 4).reshape(n, 1, H + ph, W + pw)
    return b[..., :H, :W]


def jpeg(x, quality):
    """x [n,3,H,W] 0..1; quality: numpy 5..100 per picture."""
    n, _, H, W = x.shape
    D = dct8(x.device)
    s = np.where(quality < 50, 5000 / quality, 200 - 2 * quality) / 100
    q = torch.from_numpy(np.clip(np.round(T50[None] * s[:, None]), 1, 255).astype(np.float32)).to(x.device)
    r, g, b = x[:, :1] * 255, x[:, 1:2] * 255, x[:, 2:] * 255
    Y = .299 * r + .587 * g + .114 * b
    cb, cr = (b - Y) * .564, (r - Y) * .713
    Y = blocks(Y - 128, q, D) + 128
    qc = (q * 1.6).clamp(1, 255)

    def chroma(t):
        t = blocks(F.avg_pool2d(t, 2, ceil_mode=True), qc, D)
        return F.interpolate(t, size=(H, W), mode="bilinear", align_corners=False)
    cb, cr = chroma(cb), chroma(cr)
    return torch.cat([Y + 1.403 * cr, Y - .344 * cb - .714 * cr, Y + 1.773 * cb], 1).div(255).clamp(0, 1)


def settings(R, n, H):
    """Draws of one batch; sigma in pixels is known before the picture is made, for judging what can be seen."""
    rs = R.rs
    sig = np.where(rs.rand(n) < .7, rs.uniform(.2, .9, n), np.exp(rs.uniform(np.log(.6), np.log(3.), n))) * H / 384
    noise = np.exp(rs.uniform(np.log(.002), np.log(.05), n)) * (rs.rand(n) < .85)
    ql = np.where(rs.rand(n) < .5, rs.uniform(75, 97, n), rs.uniform(22, 80, n))
    return dict(sig=sig.astype(np.float32), noise=noise.astype(np.float32), ql=ql)


def shoot(R, lin, S, X, Y, ref):
    """Linear light to a camera file; ref is the same scene without flaws. Also returns how far the two differ, before noise."""
    n, _, H, W = lin.shape
    rs, dev = R.rs, lin.device
    sg = torch.from_numpy(S["sig"]).to(dev)
    x, z = gauss(lin.clamp(0, 4), sg), gauss(ref.clamp(0, 4), sg)
    mi = np.flatnonzero(rs.rand(n) < .1)
    if len(mi):
        a, L = R.u(0, 3.1416, len(mi)), R.logu(.008, .04, len(mi))
        from tx_bank import samp
        xs, ys = (X[mi] * H / W + 1) / 2, (Y[mi] + 1) / 2
        for y in (x, z):
            y[mi] = sum(samp(y[mi], xs + torch.cos(a) * L * k * .75, ys + torch.sin(a) * L * k) for k in (-1, -.6, -.2, .2, .6, 1)) / 6
    t = rs.normal(0, 1, n) * np.where(rs.rand(n) < .35, .28, .09)
    m = rs.normal(0, .04, n)
    wb = R.t(np.stack([np.exp(t * .8), np.exp(-m), np.exp(-t)], 1))
    med = x.mean((1, 2, 3), keepdim=True)
    auto = R.u(.0, .75, n)
    ex = (.22 / med.clamp_min(.02)) ** auto * torch.exp(R.t(rs.normal(0, .18, n)))
    vg = R.u(-.02, .35, n) * R.coin(.6, n)
    fl = R.u(0, .06, n) * R.coin(.25, n)
    sh, knee = R.u(.6, 1.4, n), R.coin(.5, n)
    gm, k, st = 1 / R.u(1.9, 2.5, n), R.u(-.15, .55, n), R.u(.75, 1.35, n)

    def tone(x):
        x = x.clamp_min(1e-5)
        y = x - sh * .7
        x = torch.where((knee > 0) & (y > 0), sh * .7 + y / (1 + y.clamp_min(0) / (1.02 - sh * .7).clamp_min(.05)), x)
        x = x.clamp(1e-5, 1) ** gm
        x = x + k * (x * x * (3 - 2 * x) - x)
        g = x.mean(1, keepdim=True)
        return (g + (x - g) * st).clamp(0, 1)
    dev_ = wb * ex * (1 - vg * ((X * H / W) ** 2 + Y ** 2) * .5) * (1 - fl)
    x, z = x * dev_ + fl, z * dev_ + fl
    clear = tone(x)
    dif = (clear - tone(z)).abs()
    dif = .6 * dif.amax(1, keepdim=True) + .4 * dif.mean(1, keepdim=True)
    nz = torch.randn(x.shape, generator=R.gen, device=dev)
    lo = F.interpolate(torch.randn((n, 3, (H + 3) // 4, (W + 3) // 4), generator=R.gen, device=dev), size=(H, W), mode="bilinear", align_corners=False)
    nse = R.t(S["noise"])
    x = tone(x + nse * (x.clamp(0, 1) * .5 + .03).sqrt() * (nz * .7 + lo * R.u(0, .8, n)))
    busy = (x - clear).std((1, 2, 3), keepdim=True)
    si = np.flatnonzero(rs.rand(n) < .45)
    if len(si):
        y = x[si]
        x[si] = (y + (y - box(y, 1, 1)) * R.logu(.2, 2.2, len(si))).clamp(0, 1)
    li = np.flatnonzero(rs.rand(n) < .1)
    if len(li):
        f = rs.uniform(.45, .8)
        y = F.interpolate(x[li], scale_factor=f, mode="bilinear", align_corners=False, recompute_scale_factor=True)
        x[li] = F.interpolate(y, size=(H, W), mode="bicubic", align_corners=False).clamp(0, 1)
    ji = np.flatnonzero(rs.rand(n) < .8)
    if len(ji):
        x[ji] = jpeg(x[ji], S["ql"][ji])
    return x, dif, busy
