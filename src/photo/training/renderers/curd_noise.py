"""Noise on any device: lattice volume sampled smoothly, cells, spots. All batched."""
import numpy as np, torch, torch.nn.functional as F
_c = {}
def _t(a):
    """numpy to torch, also where the two do not know each other"""
    return torch.frombuffer(bytearray(np.ascontiguousarray(a, "float32").tobytes()), dtype=torch.float32).view(*a.shape).clone()
def _tabs(dev):
    k = str(dev)
    if k not in _c:
        r = np.random.RandomState(7)
        v = np.clip(r.randn(4, 32, 32, 32) * .55, -1.2, 1.2).astype('float32')
        v = np.pad(v, ((0, 0), (0, 1), (0, 1), (0, 1)), mode='wrap')
        t = r.rand(256 * 256, 8).astype('float32')
        _c[k] = (_t(v)[None].to(dev), _t(t).to(dev))
    return _c[k]
def noise(p):
    """p [m,3,H,W] -> [4,m,H,W]"""
    V = _tabs(p.device)[0]
    i = torch.floor(p); f = p - i
    f = f * f * (3 - 2 * f)
    c = (torch.remainder(i, 32) + f) / 16 - 1
    return F.grid_sample(V, c.permute(0, 2, 3, 1)[None], align_corners=True, padding_mode='border')[0]
def fbm(p, o=3, gain=.5, lac=2.03):
    a, s = 1., 0
    for k in range(o):
        s = s + a * noise(p * (lac ** k) + 11.3 * k); a *= gain
    return s
def ss(a, b, x):
    if not torch.is_tensor(b) and not torch.is_tensor(a) and a == b: b = a + 1e-4
    t = ((x - a) / (b - a)).clamp(0, 1)
    return t * t * (3 - 2 * t)
def _hash(ix, iy, dev):
    T = _tabs(dev)[1]
    return T[(torch.remainder(ix, 256) * 256 + torch.remainder(iy, 256)).long()]
def spots(uv, cell, dens, rlo, rhi, pw=2.):
    """jittered spots; uv [m,2,H,W] cm, cell [m,1,1] cm; radii in cells (<.5).
    -> q distance/radius of the nearest, rnd [m,H,W,8], dx,dy (cells), r (cells)"""
    x, y = uv[:, 0] / cell, uv[:, 1] / cell
    bx, by = torch.floor(x - .5), torch.floor(y - .5)
    q = torch.full_like(x, 99.); R = DX = DY = RR = None
    for i in (0, 1):
        for j in (0, 1):
            ix, iy = bx + i, by + j
            h = _hash(ix, iy, x.device)
            r = rlo + (rhi - rlo) * h[..., 2] ** pw
            jit = 1 - 2 * r
            dx = x - (ix + .5 + (h[..., 0] - .5) * jit); dy = y - (iy + .5 + (h[..., 1] - .5) * jit)
            d = torch.sqrt(dx * dx + dy * dy + 1e-9) / r
            d = torch.where(h[..., 3] < dens, d, torch.full_like(d, 99.))
            m = d < q
            if R is None: R, DX, DY, RR = h, dx, dy, r + 0 * x
            else:
                R = torch.where(m[..., None], h, R); DX = torch.where(m, dx, DX); DY = torch.where(m, dy, DY); RR = torch.where(m, r, RR)
            q = torch.minimum(q, d)
    return q, R, DX, DY, RR
def cells(uv, cell):
    """Voronoi: f1, edge distance (approx, in cells), random of the cell"""
    x, y = uv[:, 0] / cell, uv[:, 1] / cell
    bx, by = torch.floor(x), torch.floor(y)
    f1 = torch.full_like(x, 9.); f2 = f1.clone(); rid = torch.zeros_like(x)
    for i in (-1, 0, 1):
        for j in (-1, 0, 1):
            ix, iy = bx + i, by + j
            h = _hash(ix, iy, x.device)
            dx = x - ix - h[..., 0]; dy = y - iy - h[..., 1]
            d = torch.sqrt(dx * dx + dy * dy + 1e-9)
            m = d < f1
            f2 = torch.where(m, f1, torch.minimum(f2, d))
            rid = torch.where(m, h[..., 4], rid); f1 = torch.where(m, d, f1)
    return f1, f2 - f1, rid
def cat3(a, b, c): return torch.stack([a, b, c], 1)
