"""Soap pictures from geometry and light. draw(...) is the only entry."""
import numpy as np
import torch
import torch.nn.functional as F
from . import scene, sample as smp, cast, soap, flaws, ground, shade, camera
from .bank import noise3, sstep, lerp, gauss
from .scene import FINDINGS, K

__all__ = ["draw", "FINDINGS"]
CHUNK_PIX = 24 * 384 * 512                                   # pixels worked on at a time


def _t(x, ix, dev):
    return torch.from_numpy(np.ascontiguousarray(x[ix])).to(dev)


def draw(n, size, seed, device, clean=0.4):
    g = np.random.default_rng(seed)
    P = smp.sample(g, n, clean)
    H, W = size
    scenes = [scene.sample_picture(g, int(P["need"][i]), bool(P["nosoap"][i]), H / W) for i in range(n)]
    gen = torch.Generator(device=device)
    gen.manual_seed(int(seed))
    order = np.argsort([len(s[0]) for s in scenes], kind="stable")
    out = {"image": torch.empty(n, 3, H, W, device=device), "bar": torch.empty(n, 1, H, W, device=device),
           "maps": torch.zeros(n, K, H, W, device=device), "present": torch.zeros(n, K, device=device)}
    step = max(1, CHUNK_PIX // (H * W))
    with torch.no_grad():
        for a in range(0, n, step):
            ix = order[a:a + step]
            ti = torch.from_numpy(ix.copy()).to(device)
            im, bar, mp, pr = _chunk([scenes[i] for i in ix], P, ix, H, W, device, gen)
            out["image"][ti], out["bar"][ti], out["maps"][ti], out["present"][ti] = im, bar, mp, pr
    tr = P["tricky_base"] | (np.isin(P["ty"], [2, 3]) & ~P["nosoap"]) | (P["L"]["cook"] > .6) & ~P["nosoap"]
    out["tricky"] = torch.from_numpy((tr & ~P["nosoap"]).astype(np.float32)).to(device)
    out["kind"] = torch.from_numpy(P["nosoap"].astype(np.int64)).to(device)
    return out


def _chunk(scn, P, ix, H, W, dev, gen):
    n = len(ix)
    S = max(1, max(len(s[0]) for s in scn))
    tab = np.zeros((n, S, scene.NCOL), np.float32)
    tab[:, :, [scene.R, scene.R + 4, scene.R + 8, scene.H, scene.H + 1, scene.H + 2, scene.ML, scene.ML + 4, scene.ML + 8, scene.UP + 2]] = 1
    for i, s in enumerate(scn):
        for j, r in enumerate(s[0]):
            tab[i, j] = r
    waves = [bool((tab[:, j, scene.WA:scene.WA + 2] > 0).any()) for j in range(S)]
    tab = torch.from_numpy(tab).to(dev)
    cam = torch.from_numpy(np.stack([s[1] for s in scn])).to(dev)
    b = lambda x: x.view(-1, 1, 1)
    o, d, pix = cast.cam_rays(cam, H, W)
    t, idx = cast.cast(tab, o, d, pix, waves)
    tg = torch.where(d[2] < -1e-4, -o[2] / d[2].clamp(max=-1e-4), torch.full_like(t, 1e9))
    tw = torch.where(d[1] > 1e-4, (b(cam[:, 13]) * 1.0 + b(_t(P["wd"], ix, dev)) - 0 * o[1]) / d[1].clamp(min=1e-4), torch.full_like(t, 1e9))
    isg = tg < tw
    tb = torch.minimum(tg, tw).clamp(max=60)
    hit = (idx >= 0) & (t < tb + .02)
    idx = torch.where(hit, idx, torch.full_like(idx, -1))
    c = soap.build(tab, o, d, t, idx, pix)
    D = {k: _t(v, ix, dev) for k, v in P["D"].items()}
    soap.solid(c, D)
    dec = P["dec"][ix]
    U = _t(P["U"], ix, dev)
    soap.decorate(c, {nm: torch.from_numpy(np.nonzero(dec[:, k])[0]).to(dev) for k, nm in enumerate(soap.DECOR)}, U)
    # table, wall, other things
    pb = [o[k] + d[k] * tb for k in range(3)]
    gs = b(_t(P["gs"], ix, dev))
    gr = _t(P["gr"], ix, dev)
    gfoot = tb * pix / d[2].abs().clamp(min=.15)
    ga, gh, gro = ground.ground(pb[0] / gs, pb[1] / gs, gfoot / gs, [int(v) for v in P["gt"][ix]], lambda j: b(gr[:, j]), _t(P["gc1"], ix, dev), _t(P["gc2"], ix, dev))
    wn = noise3(pb[0] / 1.1 + 9 * b(gr[:, 0]), pb[2] / .9, b(gr[:, 1]) * 9 + 0 * t)
    wall = _t(P["wall"], ix, dev)[:, :, None, None] * (1 + .5 * (wn[0] * b(gr[:, 2]))[:, None]).clamp(.15, 2)
    ga = torch.where(isg[:, None], ga, wall)
    oa, oh, oro = ground.things(c, _t(P["rnd"], ix, dev))
    h4, so = hit.float()[:, None], c.soap
    full = lambda A, Oq, G: torch.where(hit, torch.where(so > .5, A, Oq), G)
    gN = [torch.zeros_like(t), torch.where(isg, torch.zeros_like(t), -torch.ones_like(t)), isg.float()]
    N = [torch.where(hit, c.N[k], gN[k]) for k in range(3)]
    p = [torch.where(hit, c.p[k], pb[k]) for k in range(3)]
    foot = torch.where(hit, c.foot, gfoot)
    V = [-v for v in d]
    ids = torch.where(hit, idx, torch.where(isg, -1, -2).to(idx))
    fm = shade.Frame(p, N, V, ids, foot)
    # light
    L = {k: _t(v, ix, dev) for k, v in P["L"].items()}
    Lt = {"L": [b(L["L"][:, k]) for k in range(3)], "F": [b(L["F"][:, k]) for k in range(3)], "Wd": [b(L["Wd"][:, k]) for k in range(3)]}
    for k in ("ck", "ca", "cf", "cf0"):
        Lt[k] = L[k][:, :, None, None]
    for k in ("size", "wi", "soft", "sss"):
        Lt[k] = b(L[k])
    sx = (L["L"] * cam[:, 3:6]).sum(1)
    sy = -(L["L"] * cam[:, 6:9]).sum(1)
    il = torch.rsqrt(sx ** 2 + sy ** 2 + 1e-6)
    Lt["sx"], Lt["sy"] = b(sx * il), b(sy * il)
    vis, ao = cast.shadow(tab, p, Lt["L"], ids, b(L["size"]) + .02)
    ao = ao * torch.where(hit, .55 + .45 * sstep(-.02, .16, c.p[2]), torch.ones_like(t))
    q = [(p[k] - Lt["L"][k] / Lt["L"][2] * p[2]) for k in range(2)]   # patterned shade thrown over the scene
    cp = L["cookp"]
    kn = noise3(q[0] / b(cp[:, 0]), q[1] / b(cp[:, 0]), b(cp[:, 2]) * 9 + 0 * t)
    st = torch.sin((torch.cos(b(cp[:, 1])) * q[0] + torch.sin(b(cp[:, 1])) * q[1]) / b(cp[:, 0]) * 4 + 6 * b(cp[:, 3]))
    ck = torch.where(b(cp[:, 3]) < .45, kn[0], torch.where(b(cp[:, 3]) < .7, st, torch.cos(b(cp[:, 1])) * q[0] + torch.sin(b(cp[:, 1])) * q[1]))
    vis = vis * (1 - b(L["cook"]) * sstep(-.15 - 1.1 * b(cp[:, 2]), .15 + 1.1 * b(cp[:, 2]), ck))

    def lit(cc, sel):
        f = lambda A: A if sel is None else A[sel]
        hh, ss = f(hit), f(so)
        comb = lambda A, Oq, G: torch.where(hh, torch.where(ss > .5, A, f(Oq)), f(G))
        alb = torch.where(hh[:, None], torch.where(ss[:, None] > .5, cc["alb"], f(oa)), f(ga))
        z = f(torch.zeros_like(t))
        hgt = comb(cc["hgt"], oh + 0 * t, torch.where(isg, gh * gs, torch.zeros_like(gh)))
        ro = comb(cc["rough"], oro, gro)
        lt = Lt if sel is None else {k: ([q_[sel] for q_ in v] if isinstance(v, list) else v[sel]) for k, v in Lt.items()}
        return shade.light(alb.clamp(.003, .96), hgt, ro, cc["tran"], cc["spark"] * ss, fm if sel is None else fm.sub(sel), f(vis), f(ao), ss, lt)
    keys = ("alb", "hgt", "rough", "tran", "spark")
    on = P["on"][ix]
    fl = np.nonzero(on.any(1))[0]
    maps = torch.zeros(n, K, H, W, device=dev)
    C = {k: _t(v, ix, dev) for k, v in P["C"].items()}
    for k in ("blur", "dof", "mot_l", "shr"):                  # pixel sizes are given for 512 wide pictures
        C[k] = (C[k] * (W / 512.0) + (.25 if k in ("blur", "shr") else 0) * (1 - W / 512.0)).clamp(min=.05)
    C["mot_ix"] = torch.from_numpy(np.nonzero(P["C"]["mot"][ix])[0]).to(dev)
    C["any_dof"] = True
    fi = torch.from_numpy(fl).to(dev)
    base = {k: getattr(c, k)[fi].clone() for k in keys} if len(fl) else None
    if len(fl):
        fr_, lk, sg = _t(P["fr"], ix, dev), _t(P["look"], ix, dev), _t(P["str"], ix, dev)
        for k in range(K):
            w = np.nonzero(on[:, k])[0]
            if len(w) == 0:
                continue
            w = torch.from_numpy(w).to(dev)
            s = c.sub(w)
            old = {q_: getattr(s, q_) for q_ in keys}
            gate = s.FL * (1 - s.cover)
            R = fr_[w][:, k]
            m = flaws.FUNCS[k](s, lambda j: b(R[:, j]), b(lk[w][:, k]), b(sg[w][:, k]))
            for q_ in keys:
                v = getattr(s, q_)
                e = gate[:, None] if q_ == "alb" else gate
                getattr(c, q_)[w] = lerp(old[q_], v.clamp(.003, .97) if q_ == "alb" else v, e)
            maps[w, k] = (m * gate).clamp(0, 1)
    img = lit({k: getattr(c, k) for k in keys}, None)
    # camera
    far = torch.where(hit, t, tb)
    foc = b(cam[:, 13] * (1 + C["focus"]))
    coc = ((far - foc).abs() / (foc * b(C["range"])) - .12).clamp(0, 1)
    ex = camera.expose(img, C)
    yy = ((torch.arange(H, device=dev) + .5) / H - .5).view(1, 1, H, 1)
    xx = ((torch.arange(W, device=dev) + .5) / W - .5).view(1, 1, 1, W)
    vg = 1 - C["vig"].view(-1, 1, 1, 1) * 2 * (xx * xx + yy * yy)
    ll = camera.lens(img * ex, C, coc) * vg
    image = camera.sensor(ll, C, gen)
    if len(fl):
        maps[fi] = maps[fi] / maps[fi].amax((2, 3), keepdim=True).clamp(min=.3)
        cs = {k: (v[fi] if torch.is_tensor(v) and k != "mot_ix" else v) for k, v in C.items()}
        cs["mot_ix"] = torch.from_numpy(np.nonzero(P["C"]["mot"][ix][fl])[0]).to(dev)
        l0 = camera.lens(lit(base, fi) * ex[fi], cs, coc[fi]) * vg[fi]
        dd = (camera.tone(l0, cs) - camera.tone(ll[fi], cs)).abs().amax(1, keepdim=True)
        dd = gauss(dd, torch.full((len(fl),), 1.2 * W / 512 + .3, device=dev), 4)
        thr = (.022 + .35 * cs["noise"]).view(-1, 1, 1, 1)
        mm = gauss(maps[fi], C["blur"][fi].clamp(.4, 1.6), 4)
        mm = torch.maximum(mm, maps[fi] * .8) * sstep(.35, 1.1, dd / thr)
        maps[fi] = mm
    area = (maps > .25).float().sum((2, 3))
    pres = (area > max(6.0, 14.0 * H * W / 196608)).float()
    share = (maps * so[:, None]).sum((2, 3)) / so.sum((1, 2)).clamp(min=1)[:, None]
    for k in (FINDINGS.index("dark-centre-ring"), FINDINGS.index("brown-outside-in")):
        pres[:, k] = pres[:, k] * (share[:, k] < .9).float()    # with no sound soap in view it can not be told from plain colour
    bar = gauss(so[:, None], C["blur"].clamp(.3, 1.5), 4).clamp(0, 1)
    return image, bar, maps * pres[:, :, None, None], pres
