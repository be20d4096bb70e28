"""One chunk of pictures: trace, paint, light, spoil, photograph."""
import numpy as np
import torch
import torch.nn.functional as F
import bench_camera as cam
import bench_decor as dec
import bench_light as lig
import bench_soap as soap
import bench_table as tab
import bench_trace as tr
from bench_noise import Noise, gauss, mix, smooth, sub
from bench_flaws import FUN, ORDER
from bench_geometry import geometry

bc = tr.bc


def stack(ps, key, dev, shape=None):
    v = torch.tensor(np.array([p[key] for p in ps]), dtype=torch.float32, device=dev)
    return v.view(-1, 1, 1, 1) if v.dim() == 1 else v


def params(ds, dev):
    out = {}
    for k in ds[0]:
        v = torch.tensor(np.array([d[k] for d in ds]), dtype=torch.float32, device=dev)
        out[k] = v.view(-1, 1, 1, 1) if v.dim() == 1 else bc(v)
    return out


class Rows:
    """random numbers by name: q[i] -> [m,1,1,1]"""

    def __init__(self, t):
        self.t = t

    def __getitem__(self, i):
        if isinstance(i, int):
            return self.t[:, i].view(-1, 1, 1, 1)
        return Rows(self.t[i])


def cut(c, idx):
    out = sub(c, idx)
    out['q'] = Rows(c['q'].t[idx])
    return out


def coords(g, idx, loc, nrm, ps, dev):
    """soap coordinates: which side one sees, how far from the rim"""
    H = tr.pick(g['H'], idx).clamp(min=.05)
    rad = tr.pick(g['rad'][..., None], idx)
    tt = torch.tensor([float(p['scene']['ttype']) for p in ps], device=dev).view(-1, 1, 1, 1)
    koff = tr.pick(g['koff'][..., None], idx)
    P = loc + torch.cat([koff * 0, koff * 0, koff], 1)
    a = nrm.abs()
    zt = smooth(.45, .75, a[:, 2:3])
    topw = mix(smooth(.45, .75, nrm[:, 1:2]), smooth(.45, .75, nrm[:, 2:3]), tt)
    cutw = zt * (1 - tt)
    sidew = (1 - topw - cutw).clamp(0, 1)
    rnd = tr.pick(g['rnd'][..., None], idx)
    e2 = torch.minimum(H[:, :1] - loc[:, :1].abs(), H[:, 1:2] - loc[:, 1:2].abs())
    er = (1 - ((loc[:, :2] / H[:, :2]) ** 2).sum(1, keepdim=True).clamp(min=1e-6).sqrt()) * H[:, :1]
    edge = torch.where(rnd > .5, er, e2).clamp(min=0)
    d3 = (H - loc.abs()).clamp(min=0).sort(1)[0]
    rim = smooth(.28, .02, d3[:, 1:2] - rad * .3)
    return dict(P=P, L=loc, H=H, topw=topw, cutw=cutw, sidew=sidew, edge=edge, rim=rim, ttype=tt, koff=koff)


def chunk(ps, size, ss, gen, dev):
    m = len(ps)
    hw = (int(size[0] * ss), int(size[1] * ss))
    g, ro, rd = geometry(ps, hw, dev)
    noise = Noise(m, gen, dev)
    t, idx, loc, nl = tr.trace(ro, rd, g)
    ty = torch.tensor([p['scene']['table_y'] for p in ps], dtype=torch.float32, device=dev).view(-1, 1, 1, 1)
    tt = (ty - bc(ro)[:, 1:2]) / torch.where(rd[:, 1:2] > -1e-3, torch.full_like(t, -1e-3), rd[:, 1:2])
    blk = (idx >= 0)
    far = (tt > 160) | (rd[:, 1:2] > -1e-3)
    depth = torch.where(blk & (t < tt), t, tt.clamp(max=160))
    blk = blk & (t < tt + .1)
    X = bc(ro) + rd * depth
    N = torch.where(blk, tr.toworld(nl, g, idx), torch.tensor([0., 1, 0], device=dev).view(1, 3, 1, 1))
    mat = tr.pick(g['mat'][..., None], idx)
    issoap = blk & (mat == 0)
    # the hand
    hands = [i for i, p in enumerate(ps) if p['scene']['hand'] is not None]
    skin = torch.zeros_like(blk)
    hand = None
    if hands:
        hi = torch.tensor(hands, device=dev)
        cap = [ps[i]['scene']['hand'] for i in hands]
        A, B = (torch.tensor(np.array([[q[j] for q in c] for c in cap]), dtype=torch.float32, device=dev) for j in (0, 1))
        r = torch.tensor(np.array([[q[2] for q in c] for c in cap]), dtype=torch.float32, device=dev)
        on = torch.ones_like(r)
        ct, cn, num, al = tr.capsules(ro[hi], rd[hi], A, B, r, on)
        ok = ct < depth[hi]
        depth[hi] = torch.where(ok, ct, depth[hi])
        X[hi] = bc(ro[hi]) + rd[hi] * depth[hi]
        N[hi] = torch.where(ok, cn, N[hi])
        blk[hi], issoap[hi], skin[hi] = blk[hi] & ~ok, issoap[hi] & ~ok, ok
        hand = (hi, A, B, r, on, num, al)
    q = Rows(torch.tensor(np.array([p['q'] for p in ps]), dtype=torch.float32, device=dev))
    tc, seed = stack(ps, 'tc', dev), stack(ps, 'seed', dev)
    c = dict(noise=noise, q=q, tc=tc, seed=seed, X=X)
    kt = torch.tensor([p['table'] for p in ps], device=dev)
    talb, thgt, tgl = tab.table(c, kt)
    talb = torch.where(far, tab.room(c, rd), talb)
    c = dict(coords(g, idx, loc, nl, ps, dev), noise=noise, q=q, seed=seed, tc=tc, cols=stack(ps, 'cols', dev), mott=stack(ps, 'mott', dev),
             lump=stack(ps, 'lump', dev), gloss=stack(ps, 'gloss', dev), spot=bc(stack(ps, 'spot', dev)))
    c['pig'] = bc(c['cols'][:, 4])
    zs = torch.tensor([[0., 0, 1]], device=dev)
    main = [p['main'] for p in ps]
    c['spot'] = c['spot'] + bc(torch.stack([g['koff'][i, max(k, 0)] for i, k in enumerate(main)])[:, None] * zs)
    oalb, ohgt, ogl = tab.things(c, mat)
    des = torch.tensor([p['des'] for p in ps], device=dev)
    alb, gloss, hgt, sd, dye = soap.body(c, des)
    c.update(alb=alb, gloss=gloss, sd=sd, dye=dye)
    cover = torch.zeros_like(sd)
    seen = torch.zeros(m, device=dev)
    for k in range(dec.ND):
        ii = [i for i, p in enumerate(ps) if k in p['decor']]
        if ii:
            it = torch.tensor(ii, device=dev)
            a, dh, gl, reg = dec.DECOR[k](cut(c, it))
            alb[it] = a
            hgt[it] += dh if dh is not None else 0
            if gl is not None:
                gloss[it] = gl
            if k in (0, 1, 2, 3, 5, 6, 8):
                cover[it] = torch.maximum(cover[it], reg)
            seen[it] = torch.maximum(seen[it], ((reg > .3) & issoap[it]).float().mean((1, 2, 3)) * 400)
    # light on all
    li = params([p['light'] for p in ps], dev)
    Vd = -rd
    toc = bc(ro) + bc(torch.tensor([.6, 1.2, 0.], device=dev)[None]) - X
    dist = toc.norm(dim=1, keepdim=True)
    L = torch.where(li['flash'] > .5, toc / dist, li['L'].expand_as(X))
    aim = torch.tensor([np.linalg.norm(p['scene']['cam'] - p['scene']['tgt']) for p in ps], dtype=torch.float32, device=dev).view(-1, 1, 1, 1)
    fall = torch.where(li['flash'] > .5, (aim / dist).clamp(.1, 1.6) ** 2 * .9, torch.ones_like(dist))
    sh = tr.shadow(X, N, L, li['hard'], g)
    gb = noise.fbm(X * torch.tensor([1, .3, 1.], device=dev).view(1, 3, 1, 1), .13, 3.0, 2)
    bl = torch.sin(X[:, :1] * .9 + X[:, 2:3] * .5 + X[:, 1:2] * .4)
    sh = sh * (1 - li['gobo'] * smooth(-.1, .1 + 2 / li['hard'], torch.where(li['goboT'] > .5, bl, gb)))
    ao = tr.closeness(X, N, g, ty)
    if hand is not None:
        hi, A, B, r, on, num, al = hand
        dn = tr.capnear(X[hi] + N[hi] * .7, A, B, r, on)
        near = torch.where(skin[hi], torch.ones_like(dn), smooth(-.5, 1.2, dn) * .75 + .25)
        ao[hi], sh[hi] = ao[hi] * near, sh[hi] * near
        sk = bc(torch.tensor(np.array([ps[i]['skin'] for i in hands]), dtype=torch.float32, device=dev))
        tone = noise.sub(hi).fbm(X[hi], .7, 2.0, 3)
        red = X.new_tensor([1.06, .9, .88]).view(1, 3, 1, 1)
        nail = smooth(.78, .9, al) * .1
        cs = sk * (1 + .08 * tone) * mix(torch.ones_like(red), red, smooth(.6, 1, al) + nail)
        cr = noise.sub(hi)(X[hi] * 6, 1.0, 1.0) * .006 - .02 * torch.exp(-((al - .5) / .02) ** 2)
        talb[hi], thgt[hi] = torch.where(skin[hi], cs, talb[hi]), torch.where(skin[hi], cr, thgt[hi])
        tgl[hi] = torch.where(skin[hi], torch.full_like(cr, .35), tgl[hi])
    rest_a, rest_h, rest_g = (torch.where(blk, o, s) for o, s in ((oalb, talb), (ohgt, thgt), (ogl, tgl)))
    sx, sy = lig.dx(X), lig.dy(X)
    key = torch.where(skin, 30 + 0 * idx, torch.where(blk, idx, -1 + 0 * idx)) + far.float() * 50
    ok = ((lig.dx(key) == 0) & (lig.dy(key) == 0) & ~far).float()
    wn = torch.nn.functional.normalize(li['L'] + X.new_tensor([0, .15, 0]).view(1, 3, 1, 1), dim=1)
    wu = F.normalize(torch.cross(wn, X.new_tensor([0, 1, 0.01]).view(1, 3, 1, 1).expand_as(wn), dim=1), dim=1)
    li.update(wn=wn, wu=wu, wv=torch.cross(wn, wu, dim=1))
    geo = dict(N=N, L=L, V=Vd, sh=sh, ao=ao, fall=fall, soap=issoap.float(), rim=c['rim'], sx=sx, sy=sy, ok=ok, cavs=5.0 * hw[1] / 768)
    S = lambda a, h, gl: dict(alb=torch.where(issoap, a, rest_a), hgt=torch.where(issoap, h, rest_h), gloss=torch.where(issoap, gl, rest_g))
    img = lig.shade(S(alb, hgt, gloss), geo, li)
    img = torch.where(far, talb * 1.0, img)
    gain = cam.expose(img, dict(wb=li['wb'], expo=li['expo']))
    gw = gain / li['wb']
    cp = params([p['cam'] for p in ps], dev)
    cp['aim'] = aim
    down = lambda x: F.interpolate(x, size=tuple(size), mode='area')
    maps = torch.zeros(m, 16, *size, device=dev)
    for k in ORDER:
        ii = [i for i, p in enumerate(ps) if k in p['flaws']]
        if not ii:
            continue
        it = torch.tensor(ii, device=dev)
        cs = cut(dict(c, alb=alb, gloss=gloss), it)
        fv = [ps[i]['flaws'][k] for i in ii]
        v = torch.tensor([f[0] for f in fv], device=dev)
        s, e = (torch.tensor([f[j] for f in fv], dtype=torch.float32, device=dev).view(-1, 1, 1, 1) for j in (1, 2))
        a, dh, gl, reg = FUN[k](cs, v, s, e)
        keep = smooth(.3, .8, cover[it]) if k != 5 else cover[it] * 0
        a = mix(a, alb[it], keep).clamp(.002, .97)
        nh = hgt[it] + (dh if dh is not None else 0) * (1 - keep)
        ng = gloss[it] if gl is None else mix(gl, gloss[it], keep)
        gi = {kk: (vv[it] if torch.is_tensor(vv) else vv) for kk, vv in geo.items()}
        lii = {kk: vv[it] for kk, vv in li.items()}
        so, ra, rh, rg = issoap[it], rest_a[it], rest_h[it], rest_g[it]
        new = lig.shade(dict(alb=torch.where(so, a, ra), hgt=torch.where(so, nh, rh), gloss=torch.where(so, ng, rg)), gi, lii)
        new = torch.where(far[it], talb[it], new)
        ci = {kk: vv[it] for kk, vv in cp.items()}
        bl = lambda x: down(cam.focus(x * gw[it], depth[it], ci)[0])
        y0, y1 = cam.tone(bl(img[it]), ci), cam.tone(bl(new), ci)
        df = gauss((y1 - y0), .6).abs().amax(1, keepdim=True)
        bsh = (1 + ci['blur']).clamp(1, 3)
        thr = .034 + .7 * ci['noise'] + .012 * bsh
        rg_ = F.max_pool2d(down(reg * (1 - keep) * so.float()), 3, 1, 1)
        mp = ((df > thr) & (rg_ > .08)).float()
        maps[it, k] = mp[:, 0]
        alb[it], hgt[it], gloss[it], img[it] = a, nh, ng, new
    img, _ = cam.focus(img * gw, depth, cp)
    pic = cam.phone(down(img), cp, gen)
    bar = (down(issoap.float()) > .5).float()
    maps = maps * F.max_pool2d(bar, 3, 1, 1)
    need = max(7.0, size[0] * size[1] * 1e-4)
    present = (maps.sum((2, 3)) > need).float()
    maps = maps * present[:, :, None, None]
    tricky = torch.tensor([p['tricky'] for p in ps], device=dev)
    dc = torch.tensor([float(bool(p['decor'])) for p in ps], device=dev)
    tricky = torch.where((dc > .5) & (seen < .4), torch.zeros_like(tricky), tricky)
    has = (bar.sum((1, 2, 3)) > 0).float()
    return dict(image=pic, bar=bar, maps=maps, present=present, tricky=tricky * has, kind=1 - has)
