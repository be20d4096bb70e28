import math, torch, torch.nn.functional as F
def gauss(x, sig):
    """per-picture gaussian, sig [m] px, radius 4"""
    R = 4; k = torch.arange(-R, R + 1, device=x.device, dtype=x.dtype)
    w = torch.exp(-.5 * (k[None] / sig.clamp(min=.05)[:, None]) ** 2); w = w / w.sum(1, keepdim=True)
    m, c, H, W = x.shape
    y = F.pad(x, (R, R, R, R), mode='replicate'); o = 0
    for i in range(2 * R + 1): o = o + y[:, :, i:i + H] * w[:, i].view(-1, 1, 1, 1)
    z = 0
    for i in range(2 * R + 1): z = z + o[..., i:i + W] * w[:, i].view(-1, 1, 1, 1)
    return z
def wide(x, f):
    H, W = x.shape[2:]; y = F.avg_pool2d(x, f, f, ceil_mode=True, count_include_pad=False); y = gauss(y, torch.full((x.shape[0],), 1.5, device=x.device))
    return F.interpolate(y, size=(H, W), mode='bilinear', align_corners=False)
_q = [16,11,10,16,24,40,51,61,12,12,14,19,26,58,60,55,14,13,16,24,40,57,69,56,14,17,22,29,51,87,80,62,18,22,37,56,68,109,103,77,24,35,55,64,81,104,113,92,49,64,78,87,103,121,120,101,72,92,95,98,112,100,103,99]
def jpeg(x, q):
    m, _, H, W = x.shape; dev = x.device
    ph, pw = (-H) % 16, (-W) % 16; x = F.pad(x, (0, pw, 0, ph), mode='replicate') * 255
    r, g, b = x[:, 0], x[:, 1], x[:, 2]
    Y = .299 * r + .587 * g + .114 * b - 128; cb = (b - Y - 128) * .564; cr = (r - Y - 128) * .713
    i = torch.arange(8., device=dev); D = torch.cos((2 * i[None] + 1) * i[:, None] * math.pi / 16) * .5; D[0] = D[0] * math.sqrt(.5)
    Q = torch.tensor(_q, device=dev, dtype=x.dtype).view(8, 8); S = torch.where(q < 50, 50 / q, 2 - q / 50).view(-1, 1, 1, 1, 1)
    def blk(c, mul):
        h, w = c.shape[1:]; t = c.view(m, h // 8, 8, w // 8, 8).permute(0, 1, 3, 2, 4)
        T = D @ t @ D.T; qq = (Q * S * mul).clamp(min=1); T = torch.round(T / qq) * qq
        return (D.T @ T @ D).permute(0, 1, 3, 2, 4).reshape(m, h, w)
    Y = blk(Y, 1.); lo = lambda c: F.interpolate(blk(F.avg_pool2d(c[:, None], 2)[:, 0], 1.3)[:, None], scale_factor=2, mode='bilinear', align_corners=False)[:, 0]
    cb, cr = lo(cb), lo(cr); Y = Y + 128
    o = torch.stack([Y + 1.403 * cr, Y - .344 * cb - .714 * cr, Y + 1.773 * cb], 1) / 255
    return o[:, :, :H, :W].clamp(0, 1)
