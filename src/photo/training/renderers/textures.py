"""Pictures of hand-made soap composited over photographic material; entry point draw()."""
import os
import sys
import numpy as np
import torch
import torch.nn.functional as F
sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import tx_flaws_a as flaws_a
import tx_flaws_b as flaws_b
import tx_geom as geom
import tx_scene as scene
import tx_soap as soap
import tx_tricks as tricks
from tx_bank import Rnd, bank, fetch, samp, smooth, turn
from tx_camera import box, gauss, settings, shoot

FINDINGS = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
            "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
            "layer-gap", "wrinkled-top", "mould-dimples"]
K = len(FINDINGS)
LOOKS = {**flaws_a.LOOKS, **flaws_b.LOOKS}
NEED = {1: 0, 6: 0, 10: 0, 12: 0, 13: 0, 14: 1, 15: 2}
TOPS = {"glitter", "botanical", "salt", "petals", "spoon"}
CHUNK = {"cpu": 4, "cuda": 64}


class Ctx:
    """Per-bar tensors; sub() takes rows."""
    def __init__(self, d, R):
        self.__dict__.update(d)
        self._k, self._R, self.rs = list(d), R, R.rs
        self.n = self.U.shape[0]

    def sub(self, i):
        return Ctx({k: getattr(self, k)[i] for k in self._k}, self._R)


def draw(n, size, seed, device, clean=.4, force=None):
    device = str(device)
    step = CHUNK.get(device.split(":")[0], 16)
    parts = [chunk(min(step, n - i), size, seed * 7919 + i, device, clean, force) for i in range(0, n, step)]
    return {k: torch.cat([p[k] for p in parts]) for k in parts[0]}


@torch.no_grad()
def chunk(n, size, seed, device, clean, force=None):
    H, W = size
    asp = W / H
    R = Rnd(seed, device)
    rs, bk = R.rs, bank(device)
    # --- plan on the CPU
    nos = rs.rand(n) < .065
    isclean = (rs.rand(n) < clean ** 1.15) | nos  # a few wanted flaws turn out invisible
    wants, plan = np.zeros((n, K), bool), []
    for i in range(n):
        if not isclean[i]:
            ks = rs.choice(K, rs.choice([1, 2, 3], p=[.55, .3, .15]), replace=False)
            wants[i, ks] = True
            if wants[i, 6] and wants[i, 10]:
                wants[i, 10] = False
    if force is not None:
        nos[:], isclean[:], wants[:] = False, False, False
        wants[:, force] = True
    trick_on = np.where(isclean, rs.rand(n) < .16, rs.rand(n) < .2) & ~nos
    tnames = [list(rs.choice(tricks.BASE + tricks.OVER + ["shadow", "glare"], rs.choice([1, 2], p=[.7, .3]), replace=False)) if trick_on[i] else [] for i in range(n)]
    owner, bars, info = [], [], []
    pal = np.zeros((n, 6, 3), np.float32)
    nn, kind = np.zeros(n, np.float32), np.zeros(n, int)
    for i in range(n):
        need = {NEED[k] for k in range(K) if wants[i, k] and k in NEED}
        lay = wants[i, 13]
        if TOPS & set(tnames[i]) and len(need) < 2:
            need.add(1)
        bs, nm, front, side = geom.layout(rs, asp, need, lay)
        pal[i], nn[i], kind[i] = soap.recipe(rs, wants[i, 11] or "micaline" in tnames[i], lay, wants[i, 4])
        info.append((nm, front, side))
        for j, b in enumerate(bs):
            owner.append(i)
            bars.append(dict(b, order=j))
    owner = np.array(owner)
    first = np.array([b["order"] for b in bars])
    last = np.array([max(first[owner == i]) for i in range(n)])[owner] == first
    P = {k: R.t([b[k] for b in bars]) for k in geom.KEYS}
    N = len(bars)
    X, Y = geom.grid(N, H, W, P["cx"].device)
    B = geom.Body(P, X, Y, None)
    Xn, Yn = X[:n], Y[:n]
    # --- colour
    sel = np.array([info[i][1] for i in owner])
    sels = np.array([info[i][2] for i in owner])
    ang = np.where(rs.rand(n) < .6, 0, rs.choice([1.5708, .785, -.6], n)) + rs.normal(0, .1, n)
    Fv, crisp, kk, nnb, w1, w2, _ = soap.portions(R, bk, B, kind, nn, ang, owner)
    palb = R.t(pal.reshape(n, -1))[owner].view(N, 6, 3) + R.t(rs.normal(0, .012, (N, 18))).view(N, 6, 3)
    col = soap.paint(Fv, crisp, palb.clamp(0, 1), nnb)
    grainy = samp(fetch(bk.hp, bk.pick(rs, "surf", n))[owner], *turn(B.GU, B.GV, R.u(0, 6.28, N), R.logu(.25, 1.3, N), R.u(0, 2, N), R.u(0, 2, N)))
    cloudy = samp(fetch(bk.soft, bk.pick(rs, "cloud", n))[owner], *turn(B.GU, B.GV, R.u(0, 6.28, N), R.logu(.15, .5, N), R.u(0, 2, N), R.u(0, 2, N)))
    col = col * (1 + R.logu(.002, .025, n)[owner] * grainy) * (1 + R.u(-.01, .12, n)[owner] * (cloudy - .5))
    la = R.u(0, 6.283, n)
    lx, ly = torch.cos(la)[owner], torch.sin(la)[owner]
    roleF, roleS = R.t(sel), R.t(sels)
    topw = torch.where(roleF == 1, B.front, torch.zeros_like(B.front)) + torch.where(roleS == 1, B.side, torch.zeros_like(B.side))
    ones = torch.ones_like(B.U)
    c = Ctx(dict(U=B.U, V=B.V, GU=B.GU, GV=B.GV, t=B.t, front=B.front, side=B.side, mask=B.mask, edge=B.edge, rim=B.rim, px=B.px, col=col.clamp(0, 1),
                 Fv=Fv, pal=palb.clamp(0, 1), nn=nnb, a=P["a"], b=P["b"], depth=B.depth, lu=lx * B.c + ly * B.s, lv=ly * B.c - lx * B.s,
                 topw=topw, onside=torch.zeros_like(B.px)), R)
    hgt = R.logu(.0001, .0017, n)[owner] * grainy * R.coin(.7, n)[owner] + (cloudy - .5) * R.logu(.002, .022, N)
    # --- tricks in the soap
    tricky = (trick_on | np.isin(kind, [soap.SWIRL, soap.OMBRE, soap.EMBED, soap.PHOTO])) & ~nos
    for name in tricks.BASE:
        ix = np.flatnonzero([name in tnames[i] for i in owner])
        if len(ix):
            q = c.sub(ix)
            rgb, al, h = tricks.base(name, R, bk, q)
            c.col[ix] = q.col * (1 - al) + rgb * al
            hgt[ix] += h
    col0, h0 = c.col, hgt
    col1, h1 = c.col.clone(), hgt.clone()
    maps = torch.zeros((N, K, H, W), device=X.device)
    everyb = rs.rand(n) < .6
    has = wants[owner] & (last | everyb[owner])[:, None]
    hit = np.zeros((N, K), bool)
    for k in rs.permutation(K):
        ix = np.flatnonzero(has[:, k])
        if not len(ix):
            continue
        look = rs.randint(len(LOOKS[k]), size=n)[owner]
        for l in np.unique(look[ix]):
            j = ix[look[ix] == l]
            q = c.sub(j)
            q.col = col1[j]
            fr, sd = sel[j], sels[j]
            role = NEED.get(k, -1)
            useside = (fr != role) & (sd == role) if role >= 0 else np.zeros(len(j), bool)
            if k == 9:
                useside = (sd == 1) & (rs.rand(len(j)) < .6)
            us = R.t(useside)
            q.onside = us
            both = np.isin(k, [0, 2, 3, 4, 5, 7, 8, 11, 13]) * np.ones(len(j))
            reg = torch.where(us > 0, q.side, q.front + q.side * R.t(both))
            m, rgb, al, h = LOOKS[k][l](R, bk, q)
            m, al = (m * reg).clamp(0, 1), (al * reg).clamp(0, 1)
            col1[j] = col1[j] * (1 - al) + rgb * al
            if h is not None:
                h1[j] = h1[j] + h * reg
            maps[j, k] = m[:, 0]
            hit[j, k] = True
    # --- shading
    S = settings(R, n, H)
    g0, g1 = shade_pair(R, bk, B, P, n, owner, X, Y, lx, ly, col0, h0, col1, h1, asp)
    img1 = g1
    soapmask = B.mask.clone()
    tx = fetch(bk.tex, bk.pick(rs, "all", n))
    # --- things on the soap
    for name in tricks.OVER:
        ix = np.flatnonzero([name in tnames[i] for i in owner])
        if not len(ix):
            continue
        q = c.sub(ix)
        rgb, al, hide, nosp = tricks.over(name, R, bk, q)
        lt = (img1[ix].mean(1, keepdim=True) / col1[ix].clamp_min(.02).pow(2.2).mean(1, keepdim=True)).clamp(.1, 1.6)
        lay = rgb.clamp(0, 1) ** 2.2 * lt * al
        img1[ix], g0[ix] = img1[ix] * (1 - al) + lay, g0[ix] * (1 - al) + lay
        maps[ix] *= 1 - hide
        if nosp:
            soapmask[ix] *= 1 - al
    # --- wooden, stone and paper blocks for some pictures without soap
    img = scene.table(R, bk, Xn, Yn) ** 2.2
    cover = torch.zeros((n, 1, H, W), device=X.device)
    rows_no = np.flatnonzero(nos)
    blocks = np.zeros(n, bool)
    if len(rows_no):
        kn = scene.nosoap(R, bk, img, cover, rows_no, Xn, Yn)
        blocks[rows_no[kn == 3]] = True
        jb = np.flatnonzero(blocks[owner])
        if len(jb):
            base = scene.tint(R, samp(tx[owner[jb]], *turn(B.GU[jb], B.GV[jb], R.u(0, 6.28, len(jb)), R.logu(.15, .6, len(jb)), 0, 0)), len(jb)) ** 2.2
            img1[jb] = base * (g0[jb].mean(1, keepdim=True) / col0[jb].clamp_min(.05).pow(2.2).mean(1, keepdim=True)).clamp(.1, 1.6)
    # --- compose
    back = np.flatnonzero((rs.rand(n) < .28) & ~nos)
    scene.paste(R, bk, img, torch.zeros_like(cover), back, rs.choice(["any", "food", "thing", "flower", "food"]), Xn, Yn, .15, .8)
    nm = np.array([q[0] for q in info])
    held = np.flatnonzero((nm == "held") & ~nos)
    lead = np.array([np.flatnonzero(owner == i)[-1] for i in range(n)])
    hp_ = [np.array([bars[lead[i]][k] for i in held]) for k in ("cx", "cy")]
    hs = np.array([bars[lead[i]]["sz"] for i in held]) * rs.uniform(.8, 1.5, len(held))
    R.a0 = R.u(0, 6.28, max(len(held), 1))
    scene.hand(R, bk, img, torch.zeros_like(cover), held, Xn, Yn, hp_[0], hp_[1], hs, True) if len(held) else None
    bar = torch.zeros((n, 1, H, W), device=X.device)
    M = torch.zeros((n, K, H, W), device=X.device)
    ref = img.clone()
    lxn, lyn = torch.cos(la), torch.sin(la)
    dens, spread = R.u(.25, .85, n), R.u(.02, .22, n)
    for o in range(first.max() + 1):
        j = np.flatnonzero((first == o) & (~nos | blocks)[owner])
        if not len(j):
            continue
        r = owner[j]
        sil = F.avg_pool2d(B.mask[j], 4, ceil_mode=True)
        h, w = sil.shape[2:]
        yy, xx = torch.meshgrid((torch.arange(h, device=X.device) + .5) / h, (torch.arange(w, device=X.device) + .5) / w, indexing="ij")
        shift = (spread * 1.2)[r]
        sh = samp(sil, xx + lxn[r] * -shift / asp * .5, yy + (lyn[r] * -.6 - .3) * shift * .5)
        sh = box(sh, max(1, int(h * rs.uniform(.01, .06))), 2) * dens[r]
        ct = box(sil, max(1, h // 60), 2) * .7
        sh = F.interpolate(torch.maximum(sh, ct * dens[r]), size=(H, W), mode="bilinear", align_corners=False)
        a = B.mask[j]
        s = soapmask[j]
        veil = (1 - sh) * (1 - a)
        img[r], ref[r] = img[r] * veil + img1[j] * a, ref[r] * veil + g0[j] * a
        ns = R.t(1. - nos[r])
        bar[r] = bar[r] * (1 - a) + s * ns
        M[r] = M[r] * (1 - a) + maps[j] * ns
    if len(held):
        scene.hand(R, bk, img, cover, held, Xn, Yn, hp_[0], hp_[1], hs, False)
    frontrows = np.flatnonzero((rs.rand(n) < .13) & ~nos)
    scene.paste(R, bk, img, cover, frontrows, "any", Xn, Yn, .15, .6, front=True)
    keep = 1 - cover
    bar, M = bar * keep, M * keep
    ref = ref * keep + img * cover
    # --- light over the whole picture
    f = samp(fetch(bk.soft, bk.pick(rs, "photo", n)), *turn(Xn, Yn, R.u(0, 6.28, n), R.logu(.08, .3, n), R.u(0, 2, n), R.u(0, 2, n)))
    light = 1 + R.u(0, .9, n) * (f - .5)
    cast = R.t(rs.normal(0, .18, n) * (rs.rand(n) < .4))
    light = torch.cat([light * (1 + cast * (f - .5)), light, light * (1 - cast * (f - .5))], 1)
    shd = rs.rand(n) < .12
    for i in range(n):
        if "shadow" in tnames[i]:
            shd[i] = True
    tricky |= shd & ~nos
    si = np.flatnonzero(shd)
    if len(si):
        m = len(si)
        u, v = turn(Xn[si], Yn[si], R.u(0, 6.28, m), 1., 0, R.u(-.5, .5, m))
        lf = samp(fetch(bk.rank, bk.pick(rs, "photo", m)), u * .3 + .5, v * .3 + .5)
        lf = F.interpolate(box(F.avg_pool2d(lf, 4), max(1, H // 128), 1), size=(H, W), mode="bilinear", align_corners=False)
        w = R.logu(.01, .3, m)
        e = torch.where(R.coin(.4, m) > 0, smooth(-.15, .15, lf - R.u(.3, .6, m)), torch.where(R.coin(.4, m) > 0, smooth(-w, w, v.abs() - .25), smooth(-w, w, v)))
        light[si] = light[si] * (1 - R.u(.25, .75, m) * e)
    gl = np.flatnonzero(np.array(["glare" in t for t in tnames]) | (rs.rand(n) < .06))
    add = 0
    if len(gl):
        m = len(gl)
        u, v = turn(Xn[gl] - R.u(-.6, .6, m), Yn[gl] - R.u(-.6, .6, m), R.u(0, 3, m), 1., 0, 0)
        sp = torch.exp(-(u / R.u(.08, .5, m)) ** 2 - (v / R.u(.04, .3, m)) ** 2) * R.u(.2, 1.2, m)
        img[gl] = img[gl] + sp * bar[gl] * .8
        ref[gl] = ref[gl] + sp * bar[gl] * .8
    out, vis, busy = shoot(R, img * light, S, Xn, Yn, ref * light)
    # --- what a careful person could see
    thr = .045 + 1.6 * busy + .02 * R.t((S["ql"] < 40).astype(float))
    seen, faint = (vis > thr).float(), (vis > .6 * thr).float()
    need_px = 14 * (H * W) / (384 * 512)
    area = (M > .3).float()
    cnt = (seen * area).sum((2, 3))
    want = torch.from_numpy(wants.astype(np.float32)).to(X.device)
    full = area.sum((2, 3))
    strong = (cnt >= max(4., need_px)) & (cnt >= .08 * full)
    wide = (faint * area).sum((2, 3)) >= (.2 * full).clamp_min(25 * need_px)
    present = ((strong | wide) & (want > 0)).float()
    r = max(2, H // 60)
    M = M * smooth(.2, .4, F.max_pool2d(vis, 2 * r + 1, 1, r) / thr)
    M = M * present.view(n, K, 1, 1)
    return dict(image=out, bar=bar.clamp(0, 1), maps=M.clamp(0, 1), present=present,
                tricky=R.t(tricky.astype(np.float32)).view(n), kind=torch.from_numpy(nos.astype(np.int64)).to(X.device))


def shade_pair(R, bk, B, P, n, owner, X, Y, lx, ly, col0, h0, col1, h1, asp):
    """Linear light of the soap without and with its flaws, under the same light."""
    H = X.shape[2]
    key = R.u(.25, 1.0, n)[owner]
    amb = 1.15 - key * R.u(.4, .8, n)[owner]
    nl = -(B.nx * lx + B.ny * ly) * -1
    sidek = amb * R.u(.55, 1.05, n)[owner] + key * (.35 + .65 * nl).clamp(0, 1.2) * .8
    facek = amb + key * R.u(.35, .75, n)[owner]
    k = facek * B.front + sidek * (1 - B.front)
    bw = (P["bevel"] + R.logu(.004, .025, n)[owner])
    bev = torch.exp(-(B.edge.clamp_min(0) / bw) ** 2) * B.front
    gain = R.logu(.35, 1.6, n)[owner]
    gloss = (R.logu(.02, .6, n) * R.coin(.8, n))[owner]
    tight = R.logu(3, 40, n)[owner]
    spx = R.u(-.5, .5, n)[owner]
    pixel = 2. / H / P["sz"]
    u = (B.U * lx + B.V * ly)
    grad = 1 + R.u(-.25, .25, n)[owner] * u
    env = samp(fetch(bk.soft, bk.pick(R.rs, "photo", n))[owner], *turn(B.GU, B.GV, R.u(0, 6.28, n)[owner], R.u(.08, .3, n)[owner], 0, 0))

    inf = (B.f <= 0).float()
    seam = F.max_pool2d(inf, 3, 1, 1) + F.max_pool2d(-inf, 3, 1, 1)
    tj = F.max_pool2d(B.GU, 3, 1, 1) + F.max_pool2d(-B.GU, 3, 1, 1)
    smoothed = (1 - seam) * (tj < .15).float()

    def one(col, h):
        gx, gy = torch.zeros_like(h), torch.zeros_like(h)
        gx[..., 1:-1] = (h[..., 2:] - h[..., :-2]) / 2
        gy[:, :, 1:-1] = (h[:, :, 2:] - h[:, :, :-2]) / 2
        s = (-(gx * lx + gy * ly) / pixel).clamp(-2.5, 2.5) * smoothed
        rel = 1 + gain * .8 * torch.tanh(s * 1.6) + bev * nl * .4
        spec = torch.exp(-tight * (s - .25 - .3 * spx + bev * .3 - .5 * (env - .5)) ** 2) * gloss * (.25 + .75 * env)
        return (col.clamp(0, 1) ** 2.2 * k * grad * rel.clamp(.08, 2.) + spec * .22).clamp(0, 4)
    return one(col0, h0), one(col1, h1)
