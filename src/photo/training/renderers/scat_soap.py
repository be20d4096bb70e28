"""The soap body: face coordinates, solid colour designs, and the plain surface."""
from types import SimpleNamespace
import torch
from scat_base import smooth, mix, hsv, to_linear, luma, turn, wide_blur

STATE = ("alb", "hgt", "spec", "rough", "trans", "occ", "shine")


def surface(hit, sc, plan, d):
    """Per-pixel quantities of the visible soap surface."""
    n = sc.n
    a = hit.p.abs() - hit.h
    face = a.argmax(1, keepdim=True)
    p, s = hit.p, hit.slot
    z, y = face == 2, face == 1
    u = torch.where(z | y, p[:, :1], p[:, 2:])
    v = torch.where(z, p[:, 1:2], torch.where(y, p[:, 2:], p[:, 1:2]))
    sgn = p.gather(1, face).sign()
    shift = face.float() * 7.31 + s * 13.77 + sgn * 3.1
    S = SimpleNamespace(n=n, fields=plan.fields)
    S.p, S.h, S.slot, S.face = p, hit.h, s, face
    S.uv0 = torch.cat([u, v], 1)
    S.uv = S.uv0 + shift
    S.soap = hit.cov * (1 - hit.clutter)
    S.cut, S.side, S.ptop = z.float(), ((face == 0) | (y & (sgn < 0))).float(), (y & (sgn > 0)).float()
    second = a.topk(2, dim=1).values[:, 1:2]
    S.edge = (-second).clamp(min=0)
    rim = a[:, :2].max(1, keepdim=True).values
    S.rim = (-rim).clamp(min=0)
    S.px = hit.t.clamp(max=40) * sc.pix.view(n, 1, 1, 1) / 0.8
    ok = (S.soap > 0.5).float()
    S.pxm = ((S.px * ok).sum((1, 2, 3), keepdim=True) / ok.sum((1, 2, 3), keepdim=True).clamp(min=1)).clamp(0.001, 0.1)
    S.grow = (S.pxm / 0.008).clamp(1, 3.5) ** 0.85
    S.nl, S.t = hit.n, hit.t
    S.ps = p + torch.cat([s * 0, s * 0, s * (1.3 + p[:, 2:] * 0)], 1) * 0.35 + d.u(n, 0, 20, 3)
    S.main = (s == d.pick(n, 2).float()).float()
    S.main = torch.where((S.main * S.soap).sum((1, 2, 3), keepdim=True) > 200, S.main, torch.ones_like(S.main))
    return S


def palette(plan, d):
    """Six linear colours per picture in one of several families."""
    n = plan.n
    base, cols = d.raw(n, 1, 1, 1), []
    fam = d.weighted(n, [3.0, 2.2, 2.5, 1.7, 1.2, 0.7, 1.1])
    for i in range(6):
        h = torch.remainder(torch.where(d.chance(n, 0.5) > 0, base + 0.09 * d.u(n, -1, 1), d.raw(n, 1, 1, 1)), 1.0)
        nat = hsv(d.u(n, 0.07, 0.15), d.u(n, 0.08, 0.38), d.u(n, 0.78, 0.96))
        white = hsv(d.u(n, 0.05, 0.16), d.u(n, 0.0, 0.1), d.u(n, 0.86, 0.97))
        pastel = hsv(h, d.u(n, 0.12, 0.38), d.u(n, 0.72, 0.95))
        strong = hsv(h, d.u(n, 0.4, 0.85), d.u(n, 0.3, 0.8))
        brown = hsv(d.u(n, 0.03, 0.1), d.u(n, 0.35, 0.75), d.u(n, 0.25, 0.66))
        black = hsv(h, d.u(n, 0, 0.3), d.u(n, 0.07, 0.22))
        muted = hsv(h, d.u(n, 0.15, 0.45), d.u(n, 0.4, 0.72))
        st = torch.stack([nat, white, pastel, strong, brown, black, muted])
        f = torch.where(d.chance(n, 0.55 if i else 1.0) > 0, fam, d.pick(n, 7))
        cols.append(to_linear(st.gather(0, f.view(1, n, 1, 1, 1).expand(1, n, 3, 1, 1))[0]))
    for i in range(1, 6):                                          # keep neighbours apart
        gap = (cols[i] - cols[i - 1]).abs().sum(1, keepdim=True)
        push = torch.where(luma(cols[i - 1]) > 0.3, cols[i] * 0.4, mix(cols[i], torch.ones_like(cols[i]), 0.55))
        cols[i] = torch.where(gap < 0.2, push, cols[i])
    return cols


def paint(t, pal, edges, soft):
    """Colours along the design coordinate t with soft borders."""
    c = pal[0]
    for i in range(5):
        c = mix(c, pal[i + 1], smooth(t - edges[:, i:i + 1], -soft, soft))
    return c


def design(S, plan, d):
    """Solid design: the coordinate t, its borders and colours; kinds by chance and by need."""
    n, p = S.n, S.ps
    kind = plan.design
    fr = d.log(n, 0.5, 1.7)
    w = S.fields.noise(p * fr, 2)
    w2 = S.fields.noise(p * fr * 2.3 + 1.5 * w[:, :3] * d.u(n, 0, 0.8), 2)
    yy, xx = S.p[:, 1:2] / S.h[:, 1:2], S.p[:, :1]
    tilt = d.u(n, -0.15, 0.15)
    wav = d.log(n, 0.01, 0.22)
    lay = 0.5 + 0.5 * yy + tilt * xx + wav * (w[:, :1] + 0.25 * w2[:, :1]) + d.u(n, 0, 0.04) * torch.sin(xx * d.u(n, 3, 16))
    swirl = 0.5 + 0.5 * torch.sin(d.u(n, 2, 5.5) * w2[:, :1] + d.u(n, 0.5, 3) * w[:, 1:2] + d.u(n, 0, 3) * yy)
    q = turn(S.ps[:, :2], d.u(n, -1.6, 1.6))
    comb = 0.5 + 0.5 * torch.sin(d.u(n, 6, 22) * (q[:, :1] + d.u(n, 0.02, 0.25) * torch.sin(q[:, 1:2] * d.u(n, 3, 9))
                                                 + d.u(n, 0.03, 0.2) * w[:, 2:3]))
    drop = S.fields.cells(S.ps[:, :2] * d.u(n, 1.3, 3.2) + d.u(n, 0.05, 0.5) * w[:, :2])[0] * 1.1
    cen = torch.sqrt((xx / S.h[:, :1]) ** 2 + yy ** 2) * 0.8 + d.u(n, 0.04, 0.3) * w[:, :1]
    vein = (w[:, 3:] + 0.35 * w2[:, 1:2]).abs() * d.u(n, 1.0, 3.0)
    ts = torch.cat([lay, lay, swirl, lay, drop, comb, cen, vein], 1)
    sc = torch.cat([2 * S.h[:, 1:2].mean((2, 3), keepdim=True)] * 2 + [0.7 / fr, 2 + 0 * fr, 0.5 + 0 * fr, 0.2 + 0 * fr,
                                                                      1 + 0 * fr, 0.5 / fr], 1)
    S.tq = ts.gather(1, kind.expand(n, 1, *ts.shape[-2:]))
    S.tscale = sc.gather(1, kind)
    k = torch.where(kind == 0, torch.zeros_like(kind), 1 + d.pick(n, 5))
    k = torch.where((kind == 7) | (kind == 3), k.clamp(max=2), k)
    gaps = d.u(n, 0.35, 1, 6)
    live = (torch.arange(6, device=gaps.device).view(1, 6, 1, 1) <= k).float()
    e = (gaps * live).cumsum(1) / (gaps * live).sum(1, keepdim=True)
    e = torch.where(kind == 7, e * 0.35, e)
    S.edges = torch.where(torch.arange(5, device=e.device).view(1, 5, 1, 1) < k, e[:, :5], torch.full_like(e[:, :5], 9.0))
    S.k = k
    S.soft = torch.where(kind == 3, d.u(n, 0.2, 0.5), d.log(n, 0.004, 0.05))
    S.pal = palette(plan, d)
    S.w, S.w2 = w, w2
    return paint(S.tq, S.pal, S.edges, S.soft)


def portion(S, d, idx_random=True):
    """Soft window of one randomly chosen colour portion."""
    n = S.tq.shape[0]
    i = (d.raw(n, 1, 1, 1) * (S.k + 1).float()).long()
    e = torch.cat([torch.full_like(S.edges[:, :1], -9.0), S.edges, torch.full_like(S.edges[:, :1], 9.0)], 1)
    lo, hi = e.gather(1, i), e.gather(1, (i + 1).clamp(max=6))
    s = S.soft * 0.6
    return smooth(S.tq - lo, -s, s) * smooth(hi - S.tq, -s, s)


def body(S, plan, d):
    """Fill the plain state: albedo, height, gloss and translucency of soap without any flaw."""
    n = S.n
    alb = design(S, plan, d)
    fine = S.fields.noise(S.ps * d.u(n, 9, 30), 3, 0.7)
    big = S.fields.noise(S.ps * d.u(n, 0.6, 2.5), 2)
    alb = alb * (1 + d.u(n, 0, 0.05) * fine[:, :1] + d.u(n, 0, 0.08) * big[:, :1])
    alb = alb * (1 + d.u(n, 0, 0.06) * (big[:, 1:2] * torch.tensor([1.0, 0.0, -1.0], device=alb.device).view(1, 3, 1, 1)))
    skin = mix(torch.ones_like(S.cut), S.cut, d.chance(n, 0.5))        # outer sides a little different
    alb = alb * mix(d.u(n, 0.86, 1.05), torch.ones_like(S.cut), skin)
    S.alb = alb.clamp(0.003, 0.95)
    rough = d.log(n, 0.0002, 0.0028)
    S.hgt = rough * fine[:, 1:2] + d.log(n, 0.001, 0.012) * big[:, 2:3] * 0.6
    S.hgt = S.hgt + torch.where(plan.peaks > 0, d.u(n, 0.01, 0.06) * S.fields.noise(S.ps * d.u(n, 1.5, 4), 2)[:, :1]
                                * S.ptop, torch.zeros_like(S.hgt))
    S.spec = (d.u(n, 0.15, 1.0) * (1 + 0.25 * big[:, 3:])).clamp(0.02, 1.5) + 0 * S.hgt
    S.rough = (d.log(n, 0.12, 0.7) * (1 + 0.3 * fine[:, 2:3])).clamp(0.08, 1)
    S.trans = d.log(n, 0.01, 0.09) + 0 * S.hgt
    S.occ = torch.ones_like(S.hgt)
    S.shine = torch.zeros_like(S.alb)
    S.fine = fine
    return S


def keep_state(S):
    """Copy of the changeable state."""
    return {k: getattr(S, k).clone() for k in STATE}


def subset(S, idx):
    """View of the surface for the chosen pictures."""
    T = SimpleNamespace(fields=S.fields)
    for k, v in vars(S).items():
        if torch.is_tensor(v) and v.dim() == 4 and v.shape[0] == S.n:
            setattr(T, k, v[idx])
        elif k == "pal":
            T.pal = [c[idx] for c in v]
    T.n = len(idx)
    return T


def put_back(S, T, idx):
    """Write the changed state of a subset into the whole."""
    for k in STATE:
        getattr(S, k)[idx] = getattr(T, k)
