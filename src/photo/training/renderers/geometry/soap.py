"""Surface context of the visible solids, colour inside the soap, harmless decoration."""
import torch
from . import scene as sc
from .bank import noise3, cells, sstep, fr, lerp
from .cast import to_local, normal


class Ctx:
    """per-pixel fields of a (sub)batch; b(x) shapes a per-picture number for broadcasting"""

    def sub(self, ix):
        o = Ctx()
        for k, v in self.__dict__.items():
            if torch.is_tensor(v):
                setattr(o, k, v[ix])
            elif isinstance(v, list):
                setattr(o, k, [q[ix] for q in v])
        return o

    def ls(self, f):
        """noise in loaf coordinates with features of size f (world units, [n,1,1] or number)"""
        return noise3(*[q / f for q in self.q])

    def cl(self, size, ang=None, sx=1.0, warp=0.0, seed=0.0):
        """cell pattern on the face; size in world units, ang rotation, sx stretch along the rotated u"""
        u, v = self.u, self.v
        if torch.is_tensor(warp) or warp:
            n = noise3(*[q / (size * 1.7) for q in self.q])
            u, v = u + n[0] * warp * size, v + n[1] * warp * size
        if ang is not None:
            ca, sa = torch.cos(ang), torch.sin(ang)
            u, v = ca * u + sa * v, ca * v - sa * u
        return cells(u / (size * sx) + seed * 17.3, v / size + seed * 31.7)

    def mix(self, col, m):
        """blend albedo to col ([n,3,1,1], [n,3,H,W] or number) by m [n,H,W]"""
        self.alb = self.alb + (col - self.alb) * m[:, None]


def build(table, o, d, t, idx, pix):
    n, H, W = idx.shape
    c = Ctx()
    ii = idx.clamp(min=0).view(n, -1)
    cache = {}

    def P(i):
        if i not in cache:
            cache[i] = table[:, :, i].gather(1, ii).view(n, H, W)
        return cache[i]
    hit = idx >= 0
    t = torch.where(hit, t, torch.full_like(t, 50.0))
    p = [o[k] + d[k] * t for k in range(3)]
    ps = to_local(P, *p)
    nn = normal(P, *ps)
    c.N = [P(sc.R + k) * nn[0] + P(sc.R + 3 + k) * nn[1] + P(sc.R + 6 + k) * nn[2] for k in range(3)]
    c.p, c.t = p, t
    m = lambda k, v: P(sc.ML + 3 * k) * v[0] + P(sc.ML + 3 * k + 1) * v[1] + P(sc.ML + 3 * k + 2) * v[2]
    c.l = [m(k, ps) for k in range(3)]
    c.n = [m(k, nn) for k in range(3)]
    h = [P(sc.H + k) for k in range(3)]
    c.h = [m(k, h).abs() for k in range(3)]
    c.q = [c.l[k] + P(sc.TO + k) for k in range(3)]
    c.slc = (P(sc.ML + 2) > .5).float()                     # slice of a loaf
    c.loaf = ((c.slc < .5) & (c.h[0] > .62)).float()
    c.W = 2 * (sum(c.h) - torch.maximum(torch.maximum(c.h[0], c.h[1]), c.h[2]) - torch.minimum(torch.minimum(c.h[0], c.h[1]), c.h[2]))
    g = [c.l[k].abs() - c.h[k] for k in range(3)]
    fx = (g[0] >= g[1]) & (g[0] >= g[2])
    fy = (~fx) & (g[1] >= g[2])
    c.u = torch.where(fx, c.l[1], c.l[0]) + fy.float() * 3.3 + P(sc.TO)
    c.v = torch.where(fx | fy, c.l[2], c.l[1]) + torch.sign(c.l[2]) * (~(fx | fy)).float() * 5.1 + P(sc.TO + 1)
    c.fx, c.fy, c.fz = fx.float(), fy.float(), (~(fx | fy)).float()
    # inside distance to the rim of the present face
    c.rim = torch.where(fx, torch.minimum(-g[1], -g[2]), torch.where(fy, torch.minimum(-g[0], -g[2]), torch.minimum(-g[0], -g[1]))).clamp(min=0)
    rp = P(sc.RP)
    qx, qy = ps[0].abs() - h[0] + rp, ps[1].abs() - h[1] + rp
    d2 = -((qx.clamp(min=0) ** 2 + qy.clamp(min=0) ** 2).sqrt() + torch.maximum(qx, qy).clamp(max=0) - rp)
    on_z = (ps[2].abs() - h[2]) > torch.maximum(ps[0].abs() - h[0], ps[1].abs() - h[1])
    c.rim = torch.where(on_z, d2.clamp(min=0), c.rim)
    c.up = c.n[2]
    nv = -(c.N[0] * d[0] + c.N[1] * d[1] + c.N[2] * d[2])
    c.nv = nv.clamp(min=.02)
    c.foot = t * pix / nv.clamp(min=.25)
    c.hit = hit
    c.idx = ii.view(n, H, W)
    c.soap = (hit & (P(sc.TY) == 1)).float()
    c.oth = (hit & (P(sc.TY) == 2)).float()
    c.mat = P(sc.MAT)
    c.FL = P(sc.FL) * c.soap
    return c


def solid(c, D):
    """colour inside the soap from design parameters D (dict of per-picture tensors)"""
    b = lambda x: x.view(-1, 1, 1)
    n, H, W = c.u.shape
    wf = b(D["wf"])
    nz = noise3(c.q[0] * wf * b(D["wx"]), c.q[1] * wf, c.q[2] * wf * b(D["wz"]))
    n2 = noise3(c.q[0] * wf * 2.3 + nz[0] * b(D["bend"]), c.q[1] * wf * 2.3 + nz[1] * b(D["bend"]), c.q[2] * wf * 2.3)
    c.fb, c.fm = n2[3], nz[3]
    w = nz[2] + .45 * n2[0] * b(D["bend"]).clamp(max=1)
    lin = sum(c.l[k] * b(D["dir"][:, k]) for k in range(3)) / c.W
    s = (lin + .5 + b(D["ph"])) * b(D["f"]) + b(D["amp"]) * w
    K = b(D["K"]).float()
    sc_ = torch.minimum(s.clamp(min=0), K - 1e-3)
    sp = fr(s / K / 2) * 2
    sp = (1 - (sp - 1).abs()) * K * .999
    s = torch.where(b(D["pp"]) > .5, sp, sc_)
    i = s.floor()
    f = s - i
    lo = f < .5
    nb = torch.where(lo, i - 1, i + 1)
    am = b(D["am"]) > .5                                     # the strongest of several fields wins: no nested rings
    sco = torch.stack([n2[0], n2[1], n2[2], nz[0], nz[1], nz[2]], 1) + D["bias"][:, :, None, None]
    tv, tk = sco.topk(2, 1)
    i, nb = torch.where(am, tk[:, 0].float(), i), torch.where(am, tk[:, 1].float(), nb)
    ok = (nb >= 0) & (nb <= K - 1)
    nb = torch.where(ok, nb, i)
    ds = torch.where(am, (tv[:, 0] - tv[:, 1]) * .25, torch.minimum(f, 1 - f))
    g = torch.where(am, .6 * wf, b(D["f"]) / c.W + .9 * b(D["amp"]) * wf)
    c.db = torch.where(ok, ds / g, torch.full_like(ds, 9.0))     # distance to the nearest border
    c.side = torch.where(lo, -torch.ones_like(f), torch.ones_like(f))
    c.bid = torch.maximum(i, nb)                             # which border
    soft = b(D["soft"]).clamp(min=1e-3)
    mx = .5 * (1 - sstep(torch.zeros_like(soft), soft, ds))
    mx = torch.where(b(D["soft"]) > .45, (.5 - ds).clamp(min=0), mx)
    mx = torch.where(ok, mx, torch.zeros_like(mx))
    S = D["pal"].shape[1]
    pal = D["pal"].reshape(n, S * 6, 3)
    gi = lambda k: pal.gather(1, (c.idx.clamp(max=S - 1) * 6 + k.long().clamp(0, 5)).view(n, -1, 1).expand(-1, -1, 3)).view(n, H, W, 3).permute(0, 3, 1, 2)
    c.ci, c.cn = gi(i), gi(nb)
    c.pi = i
    a = lerp(c.ci, c.cn, mx[:, None])
    a = a * (1 + b(D["mott"])[:, None] * (.6 * c.fm + .5 * c.fb)[:, None]).clamp(.4, 1.6)
    c.alb = a.clamp(.004, .95)
    c.hgt = .0012 * b(D["lump"]) * nz[3] + .0006 * b(D["lump"]) * n2[3]
    c.rough = (b(D["rough"]) + .05 * c.fb).clamp(.12, .95)
    c.tran = b(D["tran"]) + 0 * c.u
    c.spark = torch.zeros_like(c.u)
    c.cover = torch.zeros_like(c.u)


def spray(c, size, r, dens, seed, ang=None, sx=1.0, jag=0.0):
    """scattered dots: (mask, local x, y in units of r, id1)"""
    F1, e, dx, dy, i1, i2 = c.cl(size, ang, sx, 0.0, seed)
    rr = torch.minimum(r * (.5 + .9 * i1 ** 2), .4 * size)
    d = F1 * size
    if jag:
        th = torch.atan2(dy, dx)
        d = d * (1 + jag * (.6 * torch.sin(th * 2 + i1 * 40) + .5 * torch.sin(th * 3 + i2 * 90) + .3 * torch.sin(th * 7 + i1 * 170)))
    m = sstep(rr + c.foot * .6, rr - c.foot * .6, d) * (rr / c.foot * 1.5).clamp(max=1)
    m = m * (i2 < dens).float()
    return m, dx * size / rr, dy * size / rr, i1


def decorate(c, ix_of, U):
    """harmless things on or in the soap; ix_of[name] picture indices, U [n,12,8] random numbers"""
    def go(name, fn):
        ix = ix_of[name]
        if len(ix) == 0:
            return
        s = c.sub(ix)
        k = list(ix_of).index(name)
        fn(s, lambda j: U[ix][:, k, j].view(-1, 1, 1))
        for a in ("alb", "hgt", "rough", "spark", "cover", "tran"):
            getattr(c, a)[ix] = getattr(s, a)

    def embeds(s, r):
        size = s.W * (.12 + .5 * r(0))
        F1, e, dx, dy, i1, i2 = cells(s.q[1] / size + r(1) * 9, s.q[2] / size + .4 * (r(2) - .5) * s.q[0] / size)
        on = (i2 < .25 + .6 * r(3)).float()
        rnd = sstep(.34 + s.foot / size, .34 - s.foot / size, F1)
        shard = sstep(.06, .06 + 2 * s.foot / size, e)
        m = on * torch.where(r(4) < .5, rnd, shard) * s.soap
        h = torch.stack([.55 + .45 * torch.sin(6.28 * (i1 * r(5) + r(6)) + k * 2.1) for k in range(3)], 1)
        s.mix(h.clamp(.02, .9) ** 1.5, m * .95)

    def seeds(s, r):                                        # poppy seeds, coffee, oats
        kind = (r(0) * 3).floor()
        size = s.W * (.03 + .06 * r(1))
        rr = s.W * torch.where(kind == 0, .006 + .003 * r(2), torch.where(kind == 1, .007 + .01 * r(2), .012 + .018 * r(2)))
        m, x, y, i1 = spray(s, size, rr, .25 + .6 * r(3), r(4), r(5) * 6, torch.where(kind == 2, 1.6, 1.0), .18)
        m = m * s.soap
        cb = torch.where(kind == 0, .02 + .02 * i1, torch.where(kind == 1, .03 + .05 * i1, .35 + .2 * i1))
        col = torch.stack([cb * 1.15, cb * torch.where(kind == 0, 1.05, .8), cb * torch.where(kind == 0, 1.2, .5)], 1)
        s.mix(col, m * .92)
        s.hgt = s.hgt + m * rr * .5 * (1 - (x * x + y * y)).clamp(min=0)

    def petals(s, r):
        size = s.W * (.1 + .16 * r(0))
        top = (s.up > .5).float() * s.soap
        m, x, y, i1 = spray(s, size, s.W * (.025 + .03 * r(1)), .25 + .5 * r(2), r(3), r(4) * 6, 1 + 1.5 * r(5), .2)
        m = m * top
        hue = r(6) * 6.28 + i1
        col = torch.stack([(.35 + .3 * torch.sin(hue + k * 2.1)) for k in range(3)], 1).clamp(.03, .8)
        col = torch.where((r(7) < .5)[:, None], col, torch.stack([.18 + .1 * i1, .1 + .1 * i1, .3 + .2 * i1], 1))
        s.mix(col * (1 + .25 * torch.sin(x * 9))[:, None], m)
        s.hgt = s.hgt + m * s.W * .012 * (1 - .5 * x * x)

    def glitter(s, r):
        m, x, y, i1 = spray(s, s.W * .016, s.W * .004, (.1 + .6 * r(0)) * sstep(-.5, 1.0, s.fm + r(1)), r(2), None, 1.0, .2)
        m = m * s.soap * torch.where(r(3) < .6, (s.up > .5).float(), torch.ones_like(m))
        s.mix(torch.stack([.6 + .4 * r(4), .55 + 0 * r(4), .3 + .5 * r(5)], 1), m * .8)
        s.spark = s.spark + m * (i1 > .35).float() * 2.5

    def mica(s, r):
        w = s.W * (.002 + .006 * r(0))
        m = sstep(w + s.foot, w * .4, s.db) * s.soap
        s.mix(torch.stack([.55 * r(1) + .2, .4 * r(2) + .1, .1 + .5 * r(3)], 1), m * .9)
        s.spark = s.spark + m * .3

    def stamp(s, r):                                        # pressed rosette, frame or letter-like strokes
        u, v = torch.where(s.fx > .5, s.l[1], s.l[0]), torch.where((s.fx + s.fy) > .5, s.l[2], s.l[1])
        face = torch.maximum(s.fx * s.slc, s.fz * (1 - s.slc)) * s.soap
        rad = (u * u + v * v).sqrt() / s.W
        an = torch.atan2(v, u)
        nfo = 3 + (r(0) * 6).floor()
        R = .12 + .2 * r(1)
        ros = (rad - R * (.7 + .3 * torch.cos(an * nfo))).abs() - .012
        fra = (torch.maximum(u.abs() / s.W - R, v.abs() / s.W - R * (.5 + .5 * r(2)))).abs() - .012
        cu = u / s.W / .11
        row = (v / s.W / .16)
        ce = torch.sin(cu.floor() * 12.9 + row.floor() * 78.2 + r(3) * 50)
        fu, fv = fr(cu) - .5, fr(row) - .5
        let = torch.minimum((fu + .3 * ce.sign() * fv * (ce.abs() > .6)).abs(), (fv - .25 * ce).abs() + (fu.abs() - .3).clamp(min=0)) * .11 - .01
        let = torch.maximum(let, torch.maximum(v.abs() / s.W - .15, u.abs() / s.W - R * 1.2))
        let = torch.where(fu.abs() > .36, let * 0 + .1, let)
        dd = torch.where(r(4) < .35, ros, torch.where(r(4) < .6, fra, let)) * s.W
        m = sstep(s.foot, -s.foot, dd) * face
        s.hgt = s.hgt - m * s.W * (.004 + .012 * r(5)) * torch.where(r(6) < .75, 1.0, -1.0)
        s.mix(torch.stack([.75 + 0 * r(7), .55 + 0 * r(7), .25 + 0 * r(7)], 1), m * (r(7) > .8).float() * .8)

    def wire(s, r):                                         # broad soft arcs left by the wire
        k = s.fx * s.soap
        a = r(0) * 6.28
        x = torch.cos(a) * s.l[1] + torch.sin(a) * s.l[2]
        y = torch.cos(a) * s.l[2] - torch.sin(a) * s.l[1]
        ph = (x + y * y * (r(1) - .5) * 1.2) / s.W
        s.hgt = s.hgt + k * s.W * .0007 * (.3 + r(2)) * (torch.sin(ph * (40 + 80 * r(3)) + s.fm * .5) + .6 * torch.sin(ph * 23 + r(4) * 9))

    def dew(s, r):
        for q, (a, bb) in enumerate(((.09, .032), (.035, .013))):
            m, x, y, i1 = spray(s, s.W * a * (.6 + .8 * r(0)), s.W * bb * (.5 + r(1)), .5 + .4 * r(2), r(3) + q, None, 1.0, .06)
            m = m * s.soap
            s.hgt = s.hgt + m * s.W * bb * .55 * (1 - (x * x + y * y) * .5).clamp(min=0)
            s.rough = lerp(s.rough, torch.full_like(m, .13), m)
            s.alb = s.alb * (1 - .22 * m)[:, None]
            s.spark = s.spark + .12 * m

    def label(s, r):
        ax = torch.where(s.slc > .5, s.l[1], s.l[0]) / s.W
        w = .12 + .25 * r(0)
        m = ((ax - .3 * (r(1) - .5)).abs() < w).float() * s.soap
        ln = ((fr(torch.where(s.slc > .5, s.l[2], s.l[1]) / s.W * 9 + r(2)) < .4) & (torch.sin(ax * 160 + r(3) * 9 + 5 * torch.sin(ax * 57)) > -.2) & ((ax - .3 * (r(1) - .5)).abs() < w * .7)).float()
        base = torch.stack([.75 + .2 * r(4) - .3 * (r(5) > .6), .7 + .25 * r(4) - .45 * (r(5) > .6), .55 + .35 * r(6) - .4 * (r(5) > .6)], 1)
        s.mix(base + 0 * s.alb, m)
        s.mix(base * .2, m * ln * (r(7) > .25).float())
        s.cover = m
        s.hgt = s.hgt * (1 - m) + m * .004
        s.rough = lerp(s.rough, torch.full_like(m, .7), m)

    def salt(s, r):
        m, x, y, i1 = spray(s, s.W * (.02 + .03 * r(0)), s.W * (.006 + .01 * r(1)), .2 + .7 * r(2), r(3), None, 1.0, .25)
        m = m * s.soap * (s.up > .6).float()
        s.mix(.82, m * .75)
        s.hgt = s.hgt + m * s.W * .012 * (1 - .5 * (x.abs() + y.abs())).clamp(min=0)
        s.spark = s.spark + m * (i1 > .6).float() * .7

    def lint(s, r):
        n = s.ls(s.W * .3)
        g = n[0] - .3 + r(0)
        m = sstep(s.foot * .9, s.foot * .2, (g.abs() * s.W * .12)) * (n[1] > 1.5).float() * s.soap
        s.mix(torch.where(r(1) < .5, .7, .1)[:, None], m * .7)

    def shimmer(s, r):
        n = s.ls(s.W * .01)
        s.spark = s.spark + s.soap * (n[0] - 1.2).clamp(min=0) * (.1 + .4 * r(0)) * sstep(-.6, .8, s.fm + r(1))
    for k in ix_of:
        go(k, locals()[k])
DECOR = ["embeds", "seeds", "mica", "stamp", "wire", "petals", "glitter", "salt", "shimmer", "lint", "dew", "label"]
