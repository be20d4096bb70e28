"""The soap's skin: pour colour, then what deceives, then flaws, each kept as a mask."""
import numpy as np
import torch
from press_noise import sstep, mix
import press_pour as pour
import press_spots as sp
import press_spread as sd
import press_deco as deco

FLAWS = [sp.coloured_specks, sp.smears, sp.white_specks, sp.veins, sp.crackle, sd.ash, sd.gel_ring, sp.orange_spots,
         sp.pinholes, sd.crack, sd.browning, sd.bled, sd.drag, sd.gap, sd.wrinkled, sp.dimples]
ORDER = [10, 6, 4, 3, 11, 1, 0, 2, 7, 12, 8, 15, 14, 13, 9, 5]     # ash lies on top of all


def plan(rs, n, clean):
    flaws, decos, tricky, kind, par = [], [], np.zeros(n), np.zeros(n), []
    for q in range(n):
        k = rs.rand() < .03
        f = []
        if not k and rs.rand() >= clean:
            m = rs.choice([1, 1, 1, 1, 2, 2, 3])
            f = list(rs.choice(16, m, replace=False))
        kind[q] = k
        d = []
        pt = .5 if not f else .3
        if not k and rs.rand() < pt:
            d = list(rs.choice(deco.NAMES, rs.choice([1, 1, 2]), replace=False))
            if rs.rand() < .2:
                d = d[:1] + ["light"]
            tricky[q] = 1
        flaws.append(f)
        decos.append(d)
        par.append({j: dict(sev=rs.uniform(.05, 1) ** .9, ext=rs.uniform(.1, 1.2), var=rs.randint(3), u=rs.rand(8)) for j in f})
    return dict(flaws=flaws, decos=decos, tricky=tricky, kind=kind, par=par)


class Ctx:
    """the fields a flaw needs, for a subset of the pictures"""
    def __init__(self, F, i, nz, sev=None, ext=None, var=None, u=None):
        for k, v in F.items():
            setattr(self, k, v[i])
        self.nz = nz.sub(i)
        t = lambda a: torch.as_tensor(np.asarray(a, np.float32), device=i.device).view(-1, 1, 1, 1)
        self.sev, self.ext, self.var = t(sev), t(ext), t(var)
        self.u = torch.as_tensor(np.asarray(u, np.float32), device=i.device)

    def us(self, j):
        return self.u[:, j].view(-1, 1, 1, 1)


def fields(sc, g, D, nz, pl):
    n, dev = sc.n, sc.dev
    P, B, Nl = g["P"], g["B"], g["Nl"]
    cut = sstep(.6, .8, Nl[:, 2:3].abs())
    top = sstep(.5, .75, Nl[:, 1:2])
    side = (1 - cut - top).clamp(0, 1)
    an = Nl.abs()
    iscut, isy = (an[:, 2:3] >= an[:, :2].max(1, keepdim=True)[0]), an[:, 1:2] >= an[:, :1]
    face = torch.where(iscut, 0., torch.where(isy, 1., 2.) + (Nl.sum(1, keepdim=True) < 0).float() * 2)
    uv = torch.where(iscut, P[:, :2], torch.where(isy, P[:, [0, 2]], P[:, [2, 1]]))
    zoff = sc.zoff.gather(1, g["bid"].long().flatten(1)).view_as(g["bid"])
    off = torch.where(iscut & (Nl[:, 2:3] > 0), 0., 1.) * 13.7 + face * 9.1 + g["bid"] * 5.3
    L = P.clone()
    L[:, 2:3] = P[:, 2:3] + zoff
    rim = -sc_outline(P, B, sc.rc)
    ey = torch.minimum(B[:, :1] - P[:, :1].abs(), B[:, 2:3] - P[:, 2:3].abs()).clamp_min(0)
    rim2 = torch.where(iscut, rim.clamp_min(0), torch.where(isy, ey, torch.minimum(B[:, 1:2] - P[:, 1:2].abs(), B[:, 2:3] - P[:, 2:3].abs())))
    px = g["t"] * sc.fov * 2 / g["t"].shape[2]
    # light direction in the face's plane (for the shade inside pits), roughly, from the first bar
    lw = torch.bmm(sc.R[:, 0].transpose(1, 2), sc.light[:, :, None])[:, :2, 0]
    ldir = lw / lw.norm(dim=1, keepdim=True).clamp_min(.2)
    m15 = torch.tensor([float(15 in f) for f in pl["flaws"]], device=dev).view(n, 1, 1, 1)
    flat = torch.tensor([float(p in ("lie", "grid", "hand", "stand")) for p in sc.pose], device=dev).view(n, 1, 1, 1)
    F = dict(pl=P, B=B, L=L, cut=cut, top=top, side=side, uv=uv + off, rim=rim, rim2=rim2, tops=B[:, 1:2] - P[:, 1:2], px=px,
             ontop=(~iscut & isy & (Nl[:, 1:2] > 0)).float(), frontcut=cut, ldir=ldir, onface=cut * m15 * flat)
    F["uv0"] = uv
    F["pal"] = D["pal"]
    return F


def sc_outline(P, B, rc):
    from press_trace import outline
    return outline(P, B, rc)


def build(sc, g, D, nz, pl, rs):
    """-> (state without flaws, state with flaws, masks {flaw: (idx, mask)})"""
    n, dev = sc.n, sc.dev
    F = fields(sc, g, D, nz, pl)
    alb, phi, k = pour.colour(D, nz, F["L"], F["B"])
    F["phi"], F["k"] = phi, k
    fine = nz.fbm(F["L"] * 9, 2, 1)
    micro = nz.flat(F["uv"] * 6, 3, 1, 2, 3)
    v = lambda a, b: torch.from_numpy(rs.uniform(a, b, (n, 1, 1, 1)).astype(np.float32)).to(dev)
    alb = alb * (1 + v(.005, .03) * fine)
    # the outside of a bar cures a little darker and smoother than the cut
    alb = alb * (1 - v(0, .12) * F["side"])
    st = dict(alb=alb, h=micro * v(.0, .007) + v(0, .03) * nz.flat(F["uv"] * .9, 2, 1, 1.4),
              rough=(v(.25, .65) + .1 * F["cut"]) * torch.ones_like(phi), tr=v(.2, .7) * torch.ones_like(phi), cover=torch.zeros_like(phi))
    bare = {a: st[a].clone() for a in ("alb", "h")}
    for name in deco.NAMES:
        if name == "label" or name == "dew":
            continue
        _deco(name, st, F, nz, pl, rs, dev)
    clean = {a: b.clone() for a, b in st.items()}
    masks = {}
    for j in ORDER:
        q = [a for a in range(n) if j in pl["flaws"][a]]
        if not q:
            continue
        i = torch.tensor(q, device=dev)
        par = [pl["par"][a][j] for a in q]
        c = Ctx(F, i, nz, *([p[x] for p in par] for x in ("sev", "ext", "var", "u")))
        sub = {a: b[i].clone() for a, b in st.items()}
        m = FLAWS[j](c, sub).clamp(0, 1)
        for a in st:
            st[a][i] = sub[a]
        masks[j] = (i, m)
    for s in (clean, st):
        state = rs.get_state()
        for name in ("label", "dew"):
            _deco(name, s, F, nz, pl, rs, dev)
        if s is clean:
            rs.set_state(state)
    # a deceiver must be seen, too
    soap = (g["what"] == 2).float()
    dif = (((clean["alb"] - bare["alb"]).abs().amax(1, keepdim=True) > .03) | ((clean["h"] - bare["h"]).abs() > .003)).float()
    share = ((dif * soap).sum((1, 2, 3)) / soap.sum((1, 2, 3)).clamp_min(1)).tolist()
    for a in range(n):
        if share[a] < .002 and "light" not in pl["decos"][a]:
            pl["tricky"][a] = 0
    for j, (i, m) in masks.items():
        masks[j] = (i, m * (1 - clean["cover"][i]))
    return clean, st, masks


def _deco(name, st, F, nz, pl, rs, dev):
    q = [a for a in range(len(pl["decos"])) if name in pl["decos"][a]]
    u = rs.rand(len(pl["decos"]), 12)
    if not q:
        return
    i = torch.tensor(q, device=dev)
    c = Ctx(F, i, nz, u[q, 8], .3 + u[q, 9], np.floor(u[q, 10] * 3), u[q, :8])
    if name in ("stamp",):
        c.uv = c.uv0
    sub = {a: b[i].clone() for a, b in st.items()}
    deco.FUN[name](c, sub)
    for a in st:
        st[a][i] = sub[a]
