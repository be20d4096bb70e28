"""Light: area-like lamps, soft-box reflections, sky dome, bump from height, simple translucency."""
import torch
from vol_noise import sstep, mix, length


def unit(v):
    return v / length(v).clamp(min=1e-6)


def cross(a, b):
    return torch.cat([a[:, 1:2] * b[:, 2:] - a[:, 2:] * b[:, 1:2], a[:, 2:] * b[:, :1] - a[:, :1] * b[:, 2:], a[:, :1] * b[:, 1:2] - a[:, 1:2] * b[:, :1]], 1)


def dx(f, hw, axis):
    """Central difference along the picture's axis (0 = x, 1 = y), f [B,C,N]."""
    g = f.reshape(f.shape[0], f.shape[1], *hw)
    o = torch.zeros_like(g)
    if axis == 0:
        o[..., 1:-1] = (g[..., 2:] - g[..., :-2]) * .5
    else:
        o[..., 1:-1, :] = (g[..., 2:, :] - g[..., :-2, :]) * .5
    return o.reshape(f.shape)


def frame_of(pos, ident, n, hw):
    """Screen derivatives of position, kept for every bump of the picture."""
    px, py = dx(pos, hw, 0), dx(pos, hw, 1)
    edge = (dx(ident, hw, 0).abs() + dx(ident, hw, 1).abs()) > .2
    r1, r2 = cross(py, n), cross(n, px)
    det = (px * r1).sum(1, keepdim=True)
    ok = (~edge) & (det.abs() > 1e-9)
    return r1, r2, det, ok.float()


def bump(n, H, fr, hw):
    """Normal turned by the height H (Mikkelsen's way, in screen space)."""
    r1, r2, det, ok = fr
    g = (r1 * dx(H, hw, 0) + r2 * dx(H, hw, 1)) / torch.where(det.abs() < 1e-9, torch.ones_like(det), det)
    ln = length(g)
    g = g * (2.2 / (1.2 + ln)).clamp(max=1)
    return unit(n - g * ok)


def box_light(R, P, S, i, rough):
    """Reflected soft box or window i seen along R."""
    L = unit(S["lp"][:, i] - P)
    up = R.new_tensor([.1, .2, 1.]).view(1, 3, 1).expand(R.shape[0], 3, 1)
    U = unit(cross(L, up.expand_as(L)))
    V = cross(L, U)
    z = (R * L).sum(1, keepdim=True)
    a, b = (R * U).sum(1, keepdim=True) / z.clamp(min=.05), (R * V).sum(1, keepdim=True) / z.clamp(min=.05)
    lb = S["lb"][:, i]
    w, h = lb[:, 0:1], lb[:, 1:2]
    e = rough + .02
    m = sstep(w + e, w - e, a.abs()) * sstep(h + e, h - e, b.abs()) * (z > .05)
    bars = lb[:, 2:3]
    t = torch.remainder((a / w) * (bars + 1) * .5 + .5 * (bars + 1), 1.0)
    mun = sstep(.06, .1, (t - .5).abs() * -1 + .5)
    m = m * torch.where(bars > 0, mix(mun, torch.ones_like(mun), (rough * 3).clamp(0, 1)), torch.ones_like(mun))
    area = (w * h * 4).clamp(min=.01)
    return m * (area / (area + 3 * e * e)), area


def shade(g, alb, n, gloss, S, glit=None):
    """Radiance [B,3,N] of the visible points."""
    P, V, soap = g["pos"], g["view"], g["soap"]
    tr = S["transl"] * soap
    ng = mix(n, g["nrm"], .35 * tr)
    E = S["au"] * (.5 + .5 * ng[:, 2:]) + S["ag"] * (.5 - .5 * ng[:, 2:])
    E = E * g["ao"]
    spec = 0
    rough = mix(torch.full_like(gloss, .5), torch.full_like(gloss, .06), (gloss / 1.2).clamp(0, 1))
    R = unit(2 * (n * V).sum(1, keepdim=True) * n - V)
    fres = .04 + .6 * (1 - (n * V).sum(1, keepdim=True).clamp(0, 1)) ** 5
    for i in range(2):
        v = S["lp"][:, i] - P
        L = unit(v)
        fall = (S["lp"][:, i].pow(2).sum(1, keepdim=True) / v.pow(2).sum(1, keepdim=True)).clamp(max=4)
        wrap = (S["ls"][:, i:i + 1] * .3 + .35 * tr).clamp(max=.6)
        ndl = (((ng * L).sum(1, keepdim=True) + wrap) / (1 + wrap) / (1 + wrap)).clamp(min=0)
        E = E + S["lc"][:, i] * ndl * g["sh"][i] * fall
        m, area = box_light(R, P, S, i, rough)
        spec = spec + S["lc"][:, i] * m * (.15 + .85 * g["sh"][i]) * (1.2 / area).clamp(.8, 14)
        if glit is not None:
            spec = spec + glit * S["lc"][:, i] * 8
    sky = S["au"] * (.3 + .7 * sstep(-.2, .6, R[:, 2:])) * .8
    deep = mix(alb, alb ** .8, tr)
    return deep * E + (spec + sky * g["ao"]) * fres * gloss.clamp(0, 3)


def gobo(fd, pos, S, host):
    """Shadow of leaves or a blind thrown on the scene by something out of view."""
    out = torch.ones_like(pos[:, :1])
    rows = [i for i, it in enumerate(host["items"]) if it["tricks"][7] > 0]
    if rows:
        r = torch.tensor(rows, device=pos.device)
        U, L, p = S["tu"][r][:, 7], unit(S["lp"][r][:, 0]), pos[r]
        q = (p - L * (p[:, 2:] / L[:, 2:].clamp(min=.2)))[:, :2]
        n = fd.fbm(torch.cat([q * (.8 + 2 * U[:, :1]), 0 * q[:, :1]], 1) + S["seedoff"][r], 2)[:, :1]
        leaf = sstep(-.02 - .2 * U[:, 1:2], .02 + .2 * U[:, 1:2], n)
        th = U[:, 2:3] * 3
        blind = sstep(-.3, .3, ((q[:, :1] * th.cos() + q[:, 1:2] * th.sin()) * (5 + 9 * U[:, 3:4])).sin())
        out[r] = torch.where(U[:, 4:5] > .5, leaf, blind) * (.3 + .5 * U[:, 5:6]) + (1 - (.3 + .5 * U[:, 5:6]))
    return out
