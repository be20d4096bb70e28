"""Noise, solids, rays, lens and camera for draw_slab: batched torch, no per-pixel Python."""
import math
import torch
import torch.nn.functional as F

_VOL = {}


def vol(device):
    key = str(device)
    if key not in _VOL:
        g = torch.Generator().manual_seed(77)
        v = torch.rand(4, 32, 32, 32, generator=g)
        v = torch.cat([v, v[:, :1]], 1)
        v = torch.cat([v, v[:, :, :1]], 2)
        v = torch.cat([v, v[:, :, :, :1]], 3)
        _VOL[key] = v[None].to(device)
    return _VOL[key]


def sstep(a, b, x):
    t = ((x - a) / (b - a)).clamp(0, 1)
    return t * t * (3 - 2 * t)


def mix(a, b, t):
    return a + (b - a) * t


def noise(x, y, z):
    """[n,H,W] coords (cells) -> [4,n,H,W], 0..1, period 32."""
    def q(c):
        c = torch.remainder(c, 32.0)
        i = torch.floor(c)
        f = c - i
        f = f * f * f * (f * (f * 6 - 15) + 10)
        return (i + f) / 16.0 - 1.0
    g = torch.stack([q(x), q(y), q(z)], -1)[None]
    return F.grid_sample(vol(x.device), g, mode='bilinear', padding_mode='border', align_corners=True)[0]


def fbm(x, y, z, o, octv=3):
    """4 independent fbm channels, about 0..1, mean .5; o [n,1,1] offset."""
    s, a, t = 0, 1.0, 0.0
    f = 1.0
    for k in range(octv):
        s = s + a * noise(x * f + o, y * f + o * 1.7 + 5.3 * k, z * f - o * .6 + 3.1 * k)
        t += a
        a *= .5
        f *= 2.03
    s = s / t
    return (.5 + (s - .5) * 1.5).clamp(0, 1)


def hash33(x, y, z):
    def fr(v):
        return v - torch.floor(v)
    x, y, z = fr(x * .1031), fr(y * .1030), fr(z * .0973)
    d = x * (y + 33.33) + y * (x + 33.33) + z * (z + 33.33)
    x, y, z = x + d, y + d, z + d
    return fr((x + y) * z), fr((x + x) * y), fr((y + x) * x)


def dots(x, y, z, freq, dens, rmin, rmax, o):
    """One jittered ball a cell. -> (distance/radius, random, unit offset x, y)."""
    x, y, z = x * freq + o, y * freq + o * 1.3, z * freq + o * .7
    ix, iy, iz = torch.floor(x), torch.floor(y), torch.floor(z)
    h = hash33(ix, iy, iz)
    g = hash33(ix + 19.7, iy + 71.3, iz + 7.1)
    r = (rmin + (rmax - rmin) * g[0] * g[0]).clamp(max=.47)
    dx = (x - ix) - (r + (1 - 2 * r) * h[0])
    dy = (y - iy) - (r + (1 - 2 * r) * h[1])
    dz = (z - iz) - (r + (1 - 2 * r) * h[2])
    d = torch.sqrt(dx * dx + dy * dy + dz * dz + 1e-9) / r
    d = torch.where(g[1] < dens, d, torch.full_like(d, 9.))
    return d, g[2], dx / r, dy / r


def worley2(u, v, o):
    """-> F1, F2-F1, id random"""
    iu, iv = torch.floor(u), torch.floor(v)
    f1 = torch.full_like(u, 9.)
    f2 = torch.full_like(u, 9.)
    rid = torch.zeros_like(u)
    for a in (-1, 0, 1):
        for b in (-1, 0, 1):
            h = hash33(iu + a + o, iv + b + o * 1.7, iu * 0 + o)
            d = torch.sqrt((iu + a + h[0] - u) ** 2 + (iv + b + h[1] - v) ** 2)
            near = d < f1
            f2 = torch.where(near, f1, torch.minimum(f2, d))
            rid = torch.where(near, h[2], rid)
            f1 = torch.where(near, d, f1)
    return f1, f2 - f1, rid


def lin(c):
    return [((v / 12.92) if v <= .04045 else ((v + .055) / 1.055) ** 2.4) for v in c]


def to_srgb(x):
    x = x.clamp(min=1e-6)
    return torch.where(x <= .0031308, 12.92 * x, 1.055 * x.pow(1 / 2.4) - .055)


def kelvin(k):
    k = k / 100.
    r = 255. if k <= 66 else 329.7 * (k - 60) ** -.1332
    g = 99.47 * math.log(k) - 161.1 if k <= 66 else 288.1 * (k - 60) ** -.0755
    b = 255. if k >= 66 else (0. if k <= 19 else 138.5 * math.log(k - 10) - 305.)
    c = lin([min(1, max(0.02, v / 255.)) for v in (r, g, b)])
    m = .3 * c[0] + .6 * c[1] + .1 * c[2]
    return [v / m for v in c]


def local(R, c, px, py, pz):
    """world -> local; R [n,3,3] columns are the local axes."""
    x, y, z = px - c[0], py - c[1], pz - c[2]
    return (R[0][0] * x + R[1][0] * y + R[2][0] * z,
            R[0][1] * x + R[1][1] * y + R[2][1] * z,
            R[0][2] * x + R[1][2] * y + R[2][2] * z)


def top_h(s, x, z):
    """modelled top: swoops and peaks, <=0 at most amp above/below."""
    a = s['tamp']
    k = s['tk']
    ph = s['tph']
    z = z + s['zo']
    u = x / s['a']
    w1 = torch.sin(x * k + ph + 1.3 * torch.sin(z * k * .55 + ph * 1.7))
    w2 = torch.sin(z * k * .8 + ph * 2.3 + 1.1 * torch.sin(x * k * .9))
    swoop = 1 - torch.sqrt(w1 * w1 + .02) + .35 * w2
    mound = (1 - u * u) * s['mound']
    return a * (swoop * .5 - .35) + mound


def sdf(s, x, y, z, disp=True):
    a, b, c, r = s['a'], s['b'], s['c'], s['r']
    z = z + s['bend'] * torch.sin(y * .6 + s['tph']) * .35 + s['bend'] * .03 * x
    if disp:
        y = y - torch.where(y > 0, top_h(s, x, z) * sstep(-.6, .6, y / b), y * 0)
    qx, qy, qz = x.abs() - (a - r), y.abs() - (b - r), z.abs() - (c - r)
    m = torch.maximum(qx, torch.maximum(qy, qz)).clamp(max=0)
    d = torch.sqrt(qx.clamp(min=0) ** 2 + qy.clamp(min=0) ** 2 + qz.clamp(min=0) ** 2 + 1e-10) + m - r
    e1 = (torch.sqrt((x / a) ** 2 + (y / b) ** 2 + 1e-9) - 1) * torch.minimum(a, b) + r
    e2 = qz
    de = torch.maximum(e1, e2).clamp(max=0) + torch.sqrt(e1.clamp(min=0) ** 2 + e2.clamp(min=0) ** 2 + 1e-10) - r
    return torch.where(s['round'] > .5, de, d)


def boxhit(hx, hy, hz, ox, oy, oz, dx, dy, dz):
    def sl(o, d, h):
        d = torch.where(d.abs() < 1e-5, torch.full_like(d, 1e-5), d)
        t1, t2 = (-h - o) / d, (h - o) / d
        return torch.minimum(t1, t2), torch.maximum(t1, t2)
    a, b, c = sl(ox, dx, hx), sl(oy, dy, hy), sl(oz, dz, hz)
    return torch.maximum(torch.maximum(a[0], b[0]), c[0]), torch.minimum(torch.minimum(a[1], b[1]), c[1])


def lens(img, coc, maxr, taps=40):
    """img [n,C,H,W] linear, coc [n,1,H,W] radius in px; gather with leak control."""
    n, C, H, W = img.shape
    if maxr < .6:
        return img
    ys = (torch.arange(H, device=img.device) + .5) / H * 2 - 1
    xs = (torch.arange(W, device=img.device) + .5) / W * 2 - 1
    base = torch.stack([xs[None, :].expand(H, W), ys[:, None].expand(H, W)], -1)[None].expand(n, H, W, 2)
    both = torch.cat([img, coc], 1)
    acc = img * 1.0
    wt = torch.ones_like(coc)
    for k in range(taps):
        rad = maxr * math.sqrt((k + .5) / taps)
        th = k * 2.399963
        ox, oy = rad * math.cos(th), rad * math.sin(th)
        g = base + torch.tensor([ox * 2 / W, oy * 2 / H], device=img.device)
        s = F.grid_sample(both, g, mode='bilinear', padding_mode='reflection', align_corners=False)
        cs = s[:, C:]
        w = ((cs - rad) * 1.0 + .5).clamp(0, 1)
        w = w * (maxr / cs.clamp(min=.7)).clamp(max=20.) ** 0  # equal light a tap
        acc = acc + s[:, :C] * w
        wt = wt + w
    return acc / wt


def blur(x, s):
    """separable gauss, s float px"""
    if s < .25:
        return x
    r = max(1, int(math.ceil(2.5 * s)))
    k = torch.exp(-.5 * (torch.arange(-r, r + 1, device=x.device, dtype=torch.float32) / s) ** 2)
    k = k / k.sum()
    C = x.shape[1]
    x = F.conv2d(F.pad(x, (r, r, 0, 0), mode='replicate'), k.view(1, 1, 1, -1).expand(C, 1, 1, -1), groups=C)
    return F.conv2d(F.pad(x, (0, 0, r, r), mode='replicate'), k.view(1, 1, -1, 1).expand(C, 1, -1, 1), groups=C)


_QL = [16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29,
       51, 87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121,
       120, 101, 72, 92, 95, 98, 112, 100, 103, 99]


def jpeg(img, q):
    """q [n] quality 30..98"""
    n, _, H, W = img.shape
    dev = img.device
    ph, pw = (-H) % 16, (-W) % 16
    x = F.pad(img, (0, pw, 0, ph), mode='replicate') * 255
    r, g, b = x[:, 0], x[:, 1], x[:, 2]
    Y = .299 * r + .587 * g + .114 * b - 128
    cc = torch.stack([-.1687 * r - .3313 * g + .5 * b, .5 * r - .4187 * g - .0813 * b], 1)
    cc = F.avg_pool2d(cc, 2)
    D = torch.tensor([[math.cos((2 * j + 1) * i * math.pi / 16) * (math.sqrt(.125) if i == 0 else .5) for j in range(8)]
                      for i in range(8)], device=dev)
    ql = torch.tensor(_QL, device=dev, dtype=torch.float32).view(8, 8)
    sc = torch.where(q < 50, 50 / q, 2 - q / 50)

    def go(p, qt):
        m, h, w = p.shape
        t = p.view(m, h // 8, 8, w // 8, 8).permute(0, 1, 3, 2, 4)
        t = D @ t @ D.t()
        t = torch.round(t / qt) * qt
        t = D.t() @ t @ D
        return t.permute(0, 1, 3, 2, 4).reshape(m, h, w)
    qt = (ql[None] * sc.view(-1, 1, 1)).clamp(min=1).view(n, 1, 1, 8, 8)
    Y = go(Y, qt) + 128
    qc = (torch.full((8, 8), 60., device=dev)[None] * sc.view(-1, 1, 1)).clamp(min=1).view(n, 1, 1, 8, 8)
    cb, cr = go(cc[:, 0], qc), go(cc[:, 1], qc)
    c = F.interpolate(torch.stack([cb, cr], 1), scale_factor=2, mode='bilinear', align_corners=False)
    cb, cr = c[:, 0], c[:, 1]
    o = torch.stack([Y + 1.402 * cr, Y - .344 * cb - .714 * cr, Y + 1.772 * cb], 1) / 255
    return o[:, :, :H, :W].clamp(0, 1)
