"""Relief from height, light, soft relief shadows, translucency, gloss."""
import torch
import torch.nn.functional as F
from .bank import sstep, lerp, gauss


def dif(a, ax):
    """central difference along the last (ax=-1) or the line axis (-2) of [n,H,W]"""
    if ax == -1:
        o = torch.zeros_like(a)
        o[..., 1:-1] = (a[..., 2:] - a[..., :-2]) * .5
        return o
    o = torch.zeros_like(a)
    o[:, 1:-1] = (a[:, 2:] - a[:, :-2]) * .5
    return o


class Frame:
    """geometry terms shared by the flawed and the flawless version"""

    def __init__(s, p, N, V, ids, foot):
        px = [dif(c, -1) for c in p]
        py = [dif(c, -2) for c in p]
        same = torch.ones_like(foot)
        i = ids.float()
        same[..., 1:-1] *= (i[..., 2:] == i[..., :-2]).float()
        same[:, 1:-1] *= (i[:, 2:] == i[:, :-2]).float()
        cr = lambda a, b: [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
        s.r1, s.r2 = cr(py, N), cr(N, px)
        det = px[0] * s.r1[0] + px[1] * s.r1[1] + px[2] * s.r1[2]
        s.k = torch.sign(det) / (det.abs() + 1e-9) * same
        s.N, s.V, s.foot, s.same, s.ids = N, V, foot, same, ids

    def sub(s, ix):
        o = object.__new__(Frame)
        for k, v in s.__dict__.items():
            setattr(o, k, [q[ix] for q in v] if isinstance(v, list) else v[ix])
        return o

    def bump(s, h):
        hx, hy = dif(h, -1) * s.k, dif(h, -2) * s.k
        g = [hx * s.r1[j] + hy * s.r2[j] for j in range(3)]
        gl = (g[0] ** 2 + g[1] ** 2 + g[2] ** 2).sqrt()
        f = (1.6 * torch.tanh(gl / 1.6)) / (gl + 1e-9)
        n = [s.N[j] - g[j] * f for j in range(3)]
        il = torch.rsqrt(n[0] ** 2 + n[1] ** 2 + n[2] ** 2 + 1e-9)
        return [v * il for v in n]


def relief_shadow(h, fr_, lx, ly, ndl, soft):
    """march the height map in the picture toward the light; lx, ly [n,1,1] unit picture direction"""
    n, H, W = h.shape
    dev = h.device
    yy = ((torch.arange(H, device=dev) + .5) / H * 2 - 1).view(1, H, 1)
    xx = ((torch.arange(W, device=dev) + .5) / W * 2 - 1).view(1, 1, W)
    occ = torch.zeros_like(h)
    tanl = ndl.clamp(.05, .98) / (1 - ndl.clamp(.05, .98) ** 2).sqrt()
    for k in (1.2, 2.6, 5.5):
        k = k * W / 512 + .5
        g = torch.stack([xx + lx * (2 * k / W) + 0 * h, yy + ly * (2 * k / H) + 0 * h], -1)
        q = F.grid_sample(h[:, None], g, mode="bilinear", padding_mode="border", align_corners=False)[:, 0]
        dh = q - h - tanl * k * fr_.foot * .8
        occ = torch.maximum(occ, sstep(-.2, 1.0, dh / (fr_.foot * k * soft + 1e-6)))
    return 1 - .8 * occ * fr_.same


def light(alb, hgt, rough, tran, spark, fm, vis, ao, soap, Lt):
    """-> linear radiance [n,3,H,W]. Lt: dict of lights with [n,1,1] entries (colours [n,3,1,1])"""
    N = fm.bump(hgt)
    L, V = Lt["L"], fm.V
    dot = lambda a, b: a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
    ndl0 = dot(fm.N, L)
    ndl = dot(N, L)
    wrap = .06 + .4 * tran * soap
    dk = ((ndl + wrap) / (1 + wrap)).clamp(min=0)
    rs = relief_shadow(hgt, fm, Lt["sx"], Lt["sy"], ndl0, Lt["soft"])
    hb = F.avg_pool2d(hgt[:, None], 7, 1, 3, count_include_pad=False)[:, 0]
    cav = 1 - .6 * ((hb - hgt) / (fm.foot * 3.0) - .05).clamp(0, 1) * fm.same
    gate = sstep(-.1, .15, ndl0)
    key = dk * vis * rs * gate
    amb = (.62 + .38 * N[2]) * ao * cav
    fil = (.5 + .5 * dot(N, Lt["F"])) * ao * cav
    E = key[:, None] * Lt["ck"] + amb[:, None] * Lt["ca"] + fil[:, None] * Lt["cf"]
    # light spreads inside soap: masked blur at a quarter of the size
    n, _, H, W = E.shape
    m = soap[:, None]
    lo = F.avg_pool2d(torch.cat([E * m, m], 1), 4, 4, ceil_mode=True)
    lo = gauss(lo, (Lt["sss"] / 4).view(-1).clamp(.4, 3.5), 5)
    bl = F.interpolate(lo[:, :3] / lo[:, 3:].clamp(min=1e-3), size=(H, W), mode="bilinear", align_corners=False)
    E = lerp(E, bl, (tran * soap * .75)[:, None])
    out = alb * E * (1 + .25 * (tran * soap)[:, None] * (1 - alb))
    # gloss
    Hh = [L[k] + V[k] for k in range(3)]
    il = torch.rsqrt(dot(Hh, Hh) + 1e-9)
    ndh = (dot(N, Hh) * il).clamp(0, 1)
    ndv = dot(N, V).clamp(.05, 1)
    a = (rough.clamp(.1, 1) ** 2 + .25 * Lt["size"]).clamp(.015, 1)
    D = a * a / (3.14 * ((ndh * ndh) * (a * a - 1) + 1) ** 2)
    fres = .04 + .6 * (1 - ndv) ** 5 * (1 - rough).clamp(0, 1)
    spec = (D * fres * .25 / (ndv * .5 + .3)).clamp(max=6) * (ndl.clamp(0, 1) * vis * rs)
    Rv = [2 * dot(N, V) * N[k] - V[k] for k in range(3)]
    win = sstep(.5 - .3 * rough, .75, dot(Rv, Lt["Wd"])) * Lt["wi"] * (1 - rough) ** 2
    env = (.35 + .65 * (Rv[2] * .5 + .5)) * ao * cav
    out = out + spec[:, None] * Lt["ck"] * (1 + 3 * spark)[:, None]
    out = out + (fres * env * (1 - rough * .6))[:, None] * Lt["ca"] * .9 + (fres * win * ao)[:, None] * Lt["cf0"]
    out = out + spark[:, None] * alb * ((ndh ** 6)[:, None] * Lt["ck"] * vis[:, None] + .15 * Lt["ca"])
    return out
