"""The pour: a solid colour field, carried backwards through tool strokes, whirls and batter flow."""
import numpy as np
import torch
from press_noise import sstep, mix

COL = [(238, 228, 206), (246, 242, 232), (228, 210, 176), (222, 190, 150), (205, 160, 140), (226, 168, 172), (188, 120, 128),
       (176, 160, 196), (128, 108, 158), (110, 140, 178), (62, 92, 142), (150, 182, 176), (92, 140, 130), (160, 176, 128),
       (112, 128, 82), (74, 92, 62), (232, 200, 110), (226, 160, 82), (198, 110, 70), (150, 84, 56), (112, 76, 54),
       (84, 60, 46), (58, 56, 56), (36, 36, 38), (190, 190, 186), (240, 214, 204), (196, 70, 70), (220, 110, 130),
       (70, 150, 170), (214, 226, 206), (202, 214, 230), (168, 132, 96)]
STYLES = "plain layers ombre pot drop comb tiger rings column".split()


def lin(c):
    return np.power(np.clip(c, 0, 1), 2.2)


def params(rs, n, dev, plan):
    A = {k: [] for k in "pal m cy cr cn cx soft wrap warp wf vt ht vx cen mot blur".split()}
    names = []
    for q in range(n):
        fl = plan["flaws"][q]
        st = STYLES[rs.randint(len(STYLES))] if rs.rand() > .22 else "plain"
        if 13 in fl:
            st = "layers"
        if 11 in fl and st in ("plain", "ombre"):
            st = ["layers", "pot", "drop", "tiger"][rs.randint(4)]
        names.append(st)
        m = rs.randint(2, 5)
        base = np.array(COL[rs.choice([0, 1, 2, 3, 25, 0, 1] + list(range(len(COL))))]) / 255.
        pal = [base] + [np.array(COL[rs.randint(len(COL))]) / 255. for _ in range(4)]
        if rs.rand() < .25:
            pal = [np.clip(base * mix(1, .55, i / 4) if rs.rand() < .5 else mix(base, pal[1], i / 4.), 0, 1) for i in range(5)]
        if rs.rand() < .3:
            pal[1 + rs.randint(3)] = np.array(COL[1]) / 255.
        if 4 in fl or 3 in fl:
            if rs.rand() < .6:
                pal[0] = np.array(COL[rs.choice([1, 29, 30, 5, 7, 9, 11, 24])]) / 255.
        pal = np.array(pal)
        dull = np.array([.8, .74, .66]) * pal.mean(1, keepdims=True) / .73
        pal = mix(pal, dull, rs.uniform(.1, .5))
        pal = lin(np.clip(pal * rs.uniform(.93, 1.05) + rs.normal(0, .02, (5, 3)), .02, .97))
        H = rs.uniform(5, 8)
        cy = cr = cn = cx = 0.
        warp, wf, wrap = rs.uniform(.1, .5), rs.uniform(.2, .5), 1
        vt, ht, vx = np.zeros((4, 3)), np.zeros((3, 3)), np.zeros((3, 4))
        soft = rs.uniform(.02, .1)
        vx[:, 3] = 1; vt[:, 2] = 1; ht[:, 2] = 1
        def tines(k, a):
            for i in range(k):
                vt[i] = rs.uniform(-4, 4), rs.uniform(-a, a), rs.uniform(.25, 1.0)
        if st == "layers":
            cy, wrap = m / H, 0; warp = rs.uniform(.02, .35)
        elif st == "ombre":
            cy, wrap, soft = 3 / H, 0, 1.0; m = 5
            pal = np.array([mix(pal[0], pal[2], i / 4.) for i in range(5)])
        elif st == "pot":
            cn, warp, wf = rs.uniform(1.2, 2.6), rs.uniform(.8, 2.2), rs.uniform(.2, .45)
        elif st == "drop":
            cy = rs.uniform(.3, .7); tines(4, 4); warp = rs.uniform(.3, .9)
        elif st == "comb":
            cy = rs.uniform(.5, .9); tines(4, 2)
            for i in range(3):
                ht[i] = rs.uniform(-3, 3), rs.uniform(-3, 3), rs.uniform(.3, 1)
                vx[i] = rs.uniform(-3, 3), rs.uniform(-3, 3), rs.uniform(-3, 3), rs.uniform(.5, 1.6)
        elif st == "tiger":
            cy, cx = rs.uniform(.8, 2.0), rs.uniform(-.6, .6); warp = rs.uniform(.4, 1.3); wf = rs.uniform(.12, .3)
        elif st == "rings":
            cr = rs.uniform(.7, 1.8); warp = rs.uniform(.2, 1.0)
        elif st == "column":
            cr, cx = rs.uniform(.5, 1.2), rs.uniform(.2, .8); tines(3, 3)
            vx[0] = rs.uniform(-2, 2), rs.uniform(-2, 2), rs.uniform(-3, 3), rs.uniform(.8, 2)
        elif st == "plain":
            m = 1; wrap = 0
        for k, v in dict(pal=pal, m=m, cy=cy, cr=cr, cn=cn, cx=cx, soft=soft, wrap=wrap, warp=warp, wf=wf, vt=vt, ht=ht,
                         vx=vx, cen=rs.uniform(-2.5, 2.5, 2), mot=rs.uniform(.01, .07), blur=rs.uniform(0, 1)).items():
            A[k].append(v)
    D = {}
    for k, v in A.items():
        v = torch.from_numpy(np.asarray(v, np.float32)).to(dev)
        D[k] = v.view(n, 1, 1, 1) if v.dim() == 1 else v
    D["names"] = names
    return D


def colour(D, nz, p, by):
    """p [n,3,h,w] loaf coordinates in cm (z along the loaf) -> albedo, boundary field"""
    q = torch.cat([p[:, :2], p[:, 2:] * .35], 1)
    q = q + D["warp"] * nz.fbm(q * D["wf"] + 3.1, 3, 3)
    q = q + .09 * nz.fbm(q * 1.6 + 8.3, 2, 3)
    x, y = q[:, :1], q[:, 1:2]
    s = lambda a: a[:, None, None, None]
    for i in range(4):
        c, a, l = (s(D["vt"][:, i, j]) for j in range(3))
        y = y - a / (1 + ((x - c) / l) ** 2) ** 1.5
    for i in range(3):
        c, a, l = (s(D["ht"][:, i, j]) for j in range(3))
        x = x - a * torch.exp(-((y - c) / l).abs() ** 1.5)
    for i in range(3):
        cx, cy, a, l = (s(D["vx"][:, i, j]) for j in range(4))
        dx, dy = x - cx, y - cy
        an = a * torch.exp(-(dx * dx + dy * dy) / (l * l))
        co, si = torch.cos(an), torch.sin(an)
        x, y = cx + co * dx - si * dy, cy + si * dx + co * dy
    r = ((x - s(D["cen"][:, 0])) ** 2 + (y - s(D["cen"][:, 1])) ** 2 + 1e-4).sqrt()
    big = nz.fbm(torch.cat([x, y, q[:, 2:]], 1) * .33 + 9.7, 3)
    t = D["cy"] * y + D["cr"] * r + D["cn"] * big + D["cx"] * x
    m = D["m"]
    t = t + m * .5
    tw = torch.where(D["wrap"] > 0, torch.remainder(t, m), torch.minimum(t.clamp_min(0), m - .001))
    alb = 0
    sf = D["soft"] * (.6 + .8 * D["blur"])
    for i in range(5):
        lo = sstep(-sf, sf, tw - i) if i else torch.ones_like(tw)
        hi = sstep(-sf, sf, tw - (i + 1))
        hi = torch.where(m - 1 <= i, torch.where(D["wrap"] > 0, sstep(-sf, sf * 0, tw - m), torch.zeros_like(hi)), hi)
        wgt = lo - hi if i else 1 - hi
        wgt = wgt * (m > i).float()
        if i == 0:     # wrap-around edge
            wgt = torch.where(D["wrap"] > 0, wgt + sstep(-sf, sf * 0, tw - m), wgt)
        alb = alb + wgt * D["pal"][:, i][:, :, None, None]
    k = torch.round(tw)
    inner = ((k > .5) & (k < m - .5)).float()
    slope = (D["cy"].abs() + D["cr"] + D["cn"] * .35 + D["cx"].abs()).clamp_min(.05)
    phi = torch.where(inner > 0, (tw - k) / slope, torch.full_like(tw, 9.0))
    mot = nz.fbm(p * .8 + 21, 3)
    alb = alb * (1 + D["mot"] * mot)
    return alb.clamp(.01, .98), phi, k
