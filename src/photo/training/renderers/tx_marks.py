"""Building blocks of marks: dots, streaks, cell networks, lines."""
import torch
from tx_bank import lookup, smooth


def dots(R, x, y, cell, dens, rlo, rhi, px, wob=0., stretch=1.):
    """One jittered dot per cell. cell, dens, rlo, rhi are [n,1,1,1] (radii in units of x). Returns cover, unit offsets, radius, random."""
    n = x.shape[0]
    tab = R.table(n, 6)
    ix, iy = torch.floor(x / cell), torch.floor(y / cell)
    r6 = lookup(tab, ix, iy)
    rad = rlo * (rhi / rlo) ** (r6[:, 2:3] ** 1.6)
    rad = torch.minimum(rad, cell * .46)
    room = (cell * .5 - rad).clamp_min(0)
    lx = x - (ix + .5) * cell - (r6[:, 0:1] * 2 - 1) * room
    ly = y - (iy + .5) * cell - (r6[:, 1:2] * 2 - 1) * room
    if stretch != 1.:
        a = r6[:, 4:5] * 6.283
        lx, ly = lx * torch.cos(a) + ly * torch.sin(a), (ly * torch.cos(a) - lx * torch.sin(a)) * stretch
    d = (lx * lx + ly * ly).sqrt()
    if wob:
        th = torch.atan2(ly, lx)
        d = d * (1 + wob * torch.sin(th * 2 + r6[:, 4:5] * 6) + wob * .7 * torch.sin(th * 5 + r6[:, 5:6] * 20) + wob * .4 * torch.sin(th * 9 + r6[:, 0:1] * 40))
    on = (r6[:, 3:4] < dens).float()
    cover = (.5 + (rad - d) / px.clamp_min(1e-5)).clamp(0, 1) * (rad / px).clamp(0, 1) * on
    return cover, lx / rad, ly / rad, d / rad, on, r6[:, 5:6]


def cells(R, x, y, size, jit=.9):
    """Distances of a jittered cell network: F1, F2 - F1 (in cells), and a random number of the cell."""
    n = x.shape[0]
    tab = R.table(n, 3)
    gx, gy = x / size, y / size
    ix, iy = torch.floor(gx), torch.floor(gy)
    f1 = torch.full_like(x, 9.)
    f2 = torch.full_like(x, 9.)
    idn = torch.zeros_like(x)
    for ox in (-1, 0, 1):
        for oy in (-1, 0, 1):
            r = lookup(tab, ix + ox, iy + oy)
            d = ((ix + ox + .5 + (r[:, :1] - .5) * jit - gx) ** 2 + (iy + oy + .5 + (r[:, 1:2] - .5) * jit - gy) ** 2).sqrt()
            near = d < f1
            f2 = torch.where(near, f1, torch.minimum(f2, d))
            idn = torch.where(near, r[:, 2:3], idn)
            f1 = torch.where(near, d, f1)
    return f1, f2 - f1, idn


def streaks(R, x, y, length, gap, dens, rlo, rhi, px):
    """Comets along +x: a head and a thinning tail. Returns cover and position along the tail 0..1."""
    tab = R.table(x.shape[0], 6)
    iy = torch.floor(y / gap)
    sh = lookup(tab, iy * 0 + 7, iy)[:, 4:5] * length
    ix = torch.floor((x + sh) / length)
    r = lookup(tab, ix, iy)
    rad = rlo * (rhi / rlo) ** r[:, 2:3]
    ln = length * (.25 + .7 * r[:, 0:1])
    s = ((x + sh) - ix * length - .02 * length) / ln
    yy = y - (iy + .3 + .4 * r[:, 1:2]) * gap - .12 * gap * (s - .5) * (r[:, 4:5] - .5)
    wid = rad * (1 - s.clamp(0, 1)) ** (.4 + r[:, 5:6]) * (s * 12).clamp(0, 1) ** .5
    ok = ((s > 0) & (s < 1)).float() * (r[:, 3:4] < dens)
    return (.5 + (wid - yy.abs()) / px).clamp(0, 1) * (wid / px * 1.5).clamp(0, 1) * ok, s.clamp(0, 1)


def lines(R, x, y, gap, dens, wid, px):
    """Straight scratches along x: cover, signed offset across in widths, position along."""
    tab = R.table(x.shape[0], 6)
    iy = torch.floor(y / gap)
    r = lookup(tab, iy * 0 + 3, iy)
    yy = y - (iy + .25 + .5 * r[:, 0:1]) * gap
    w = wid * (.4 + 1.2 * r[:, 1:2])
    a, b = r[:, 2:3] * 2.6 - 1.9, r[:, 4:5] * 1.8 + .35
    along = smooth(0, .15, x - a) * smooth(0, .25, a + b + .3 - x)
    on = (r[:, 3:4] < dens).float() * along
    return (.5 + (w - yy.abs()) / px).clamp(0, 1) * (w / px * 1.2).clamp(.25, 1) * on, yy / w, x - a, on


def wander(R, x, amp, f0):
    """A ragged one-dimensional path: sum of sines of random phase, four octaves."""
    n, out = x.shape[0], 0
    for i in range(5):
        out = out + amp * .62 ** i * torch.sin(x * f0 * 2.03 ** i + R.u(0, 6.28, n))
    return out
