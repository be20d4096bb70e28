"""Light on the scene: a sun or lamp with soft shadow, sky of the room, and a window mirrored in the gloss."""
import numpy as np
import torch
from press_noise import sstep, mix
from press_trace import dot, unit


def dxy(a):
    x = torch.zeros_like(a); y = torch.zeros_like(a)
    x[:, :, :, 1:-1] = (a[:, :, :, 2:] - a[:, :, :, :-2]) * .5
    y[:, :, 1:-1] = (a[:, :, 2:] - a[:, :, :-2]) * .5
    return x, y


def cross(a, b):
    return torch.cross(a, b, dim=1)


def frame(g):
    """screen-space derivatives of position, for relief (after Mikkelsen)"""
    Xx, Xy = dxy(g["X"])
    N = g["N"]
    R1, R2 = cross(Xy, N), cross(N, Xx)
    det = dot(Xx, R1)
    w = g["what"] + 10 * g["bid"]
    sx, sy = dxy(w)
    same = ((sx == 0) & (sy == 0)).float()
    return R1, R2, det, same


def relief(g, fr, h):
    R1, R2, det, same = fr
    hx, hy = dxy(h)
    gr = torch.sign(det) * (hx * R1 + hy * R2) * same
    nb = det.abs().clamp_min(1e-8) * g["N"] - gr
    nn = unit(nb)
    ok = dot(nn, g["N"]) > .15
    return torch.where(ok, nn, unit(g["N"] + nn))


def kelvin(k):
    t = (np.clip(k, 2000, 9000) / 6500.)
    return np.stack([np.minimum(1.25, t ** -.65), np.ones_like(t) * t ** .06, np.minimum(1.3, t ** 1.1)], -1)


def lights(rs, n, dev, pl):
    f = lambda a: torch.from_numpy(np.asarray(a, np.float32)).to(dev)
    v = lambda a, b: f(rs.uniform(a, b, (n, 1, 1, 1)))
    k1, k2 = rs.uniform(2700, 6500, n), rs.uniform(2700, 7500, n)
    same = rs.rand(n) < .7
    k2 = np.where(same, k1 * rs.uniform(.95, 1.2, n), k2)
    odd = np.array(["light" in d for d in pl["decos"]], float)
    return dict(key=f(kelvin(k1))[:, :, None, None] * v(.6, 2.2), sky=f(kelvin(k2))[:, :, None, None] * v(.25, .9),
                win=v(1.5, 9), wx=v(.25, .7), wy=v(.3, .8), bars=f(rs.randint(0, 4, (n, 1, 1, 1))), slat=f(odd * (rs.rand(n) < .8)).view(n, 1, 1, 1),
                glare=f(odd).view(n, 1, 1, 1), up=unit(f(rs.normal(0, .25, (n, 3)) + np.array([0, 1, 0]))[:, :, None, None]),
                sl=v(.25, 1.2), sa=v(0, 3.14), tint=v(.0, .3), wrap=v(.1, .4))


def shade(sc, g, fr, L, alb, h, rough, tr, reach, nz):
    sh, ao = reach
    N = relief(g, fr, h)
    soap = (g["what"] == 2).float()
    Ld = sc.light[:, :, None, None].expand_as(N)
    V = -g["d"]
    # slats or leaves between lamp and soap
    X = g["X"]
    s = X[:, :1] * torch.cos(L["sa"]) + X[:, 2:3] * torch.sin(L["sa"]) + .5 * X[:, 1:2]
    leaf = sstep(-.1, .1, torch.where(L["wx"] > .45, torch.sin(s * L["sl"] * 2), nz.solid(X * L["sl"] * .5) * 2))
    sh = sh * mix(torch.ones_like(sh), .25 + .75 * leaf, L["slat"])
    ndl = dot(N, Ld)
    gl = dot(g["N"], Ld)
    wrap = L["wrap"] * soap * (.5 + tr)
    dif = ((ndl + wrap) / (1 + wrap)).clamp_min(0)
    shs = mix(sh, .12 + .88 * sh, soap * tr * .6) * sstep(-.25, .15, gl + wrap)
    hem = .55 + .45 * dot(N, L["up"])
    # light that has travelled through the soap takes on its colour
    warm = mix(torch.ones_like(alb), (alb.clamp_min(.02) ** .35), soap * tr * (1 - dif.clamp_max(1)) * .5)
    low = (1 - sstep(0, 5, g["X"][:, 1:2])) * (1 - soap)
    E = L["key"] * dif * shs + L["sky"] * hem * ao
    col = alb * E * warm + alb * soap * .08 * tr * L["key"]
    # mirror: a window image blurred by the roughness
    R = 2 * dot(N, V) * N - V
    side = unit(cross(Ld, torch.tensor([0., 1., 0.], device=Ld.device).view(1, 3, 1, 1).expand_as(Ld) + .01))
    upv = cross(side, Ld)
    z = dot(R, Ld).clamp_min(.05)
    px, py = dot(R, side) / z, dot(R, upv) / z
    b = (rough * rough * 1.1).clamp_min(.015)
    pane = torch.sigmoid((L["wx"] - px.abs()) / b) * torch.sigmoid((L["wy"] - py.abs()) / b)
    mull = 1
    for k, (p, ww) in enumerate(((px, L["wx"]), (py, L["wy"]))):
        mull = mull * (1 - torch.exp(-(p / (.04 + b)) ** 2) * .05 / (.05 + b) * ((L["bars"] == k) | (L["bars"] == 2)).float())
    spread = 1 / (1 + 14 * b)
    wini = pane * mull * (dot(R, Ld) > 0).float() * L["win"] * (1 + 2.0 * L["glare"]) * spread
    fres = .04 + .6 * (1 - dot(N, V).clamp(0, 1)) ** 5 * (1 - rough)
    env = L["sky"] * (.35 + .65 * R[:, 1:2].clamp(-.3, 1)) * ao
    col = col + fres * (L["key"] * wini * 2.2 * (.3 + .7 * sh) + env * .8)
    return col
