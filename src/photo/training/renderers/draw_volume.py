"""Pictures of hand-made soap drawn as solids of three-dimensional colour; draw() is the whole interface."""
import os
import sys
import torch
import torch.nn.functional as F
sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from vol_noise import field, sstep, mix
from vol_trace import trace, pick, rotate, sdf, normal, shadow, occlusion
from vol_scene import FINDINGS
from vol_pick import sample, collate
from vol_soap import base, deceive, sub, KEYS
from vol_flaws_b import FLAWS
from vol_table import table_look
from vol_light import shade, bump, frame_of, gobo, unit
from vol_phone import lens, meter, tone, grain, finish, gauss, small_gauss

SUPER = 1.35
CHUNK = 22


def columns(S):
    """Shapes the lots for broadcasting over pixels."""
    out = {}
    for k, v in S.items():
        out[k] = v if k == "solids" else (v.view(-1, 1, 1) if v.dim() == 1 else v[..., None])
    out["pal"] = S["pal"].permute(0, 2, 1).contiguous()
    return out


def rays(S, hw):
    """Camera rays [B,3,N] and the angle of a pixel."""
    h, w = hw
    dev = S["cp"].device
    yy, xx = torch.meshgrid((torch.arange(h, device=dev) + .5 - h / 2) * 2 / w, (torch.arange(w, device=dev) + .5 - w / 2) * 2 / w, indexing="ij")
    xx, yy = xx.reshape(1, 1, -1), yy.reshape(1, 1, -1)
    k = 1 + S["k1"] * (xx ** 2 + yy ** 2)
    d = S["cz"] + S["fov"] * k * (xx * S["cr"] - yy * S["cu"])
    return unit(d), S["fov"] * 2 / w


def ground(S, rd):
    """Distance to the table or the wall, and which."""
    o = S["cp"]
    tt = torch.where(rd[:, 2:] < -1e-4, -o[:, 2:] / rd[:, 2:].clamp(max=-1e-4), torch.full_like(rd[:, 2:], 60.))
    tw = torch.where(rd[:, 1:2] > 1e-4, (S["wy"] - o[:, 1:2]) / rd[:, 1:2].clamp(min=1e-4), torch.full_like(tt, 60.)).clamp(max=60)
    return torch.minimum(tt, tw).clamp(max=60), (tw < tt).float()


def geometry(fd, S, host, hw):
    """What each pixel sees: place, normal, solid, local place, light visibility."""
    rd, ang = rays(S, hw)
    t0, wall = ground(S, rd)
    ro = S["cp"].expand_as(rd)
    t, ident = trace(fd, ro, rd, S["solids"], host["counts"], t0)
    pos = ro + rd * t
    hit = (ident >= 0).float()
    sp = pick(S["solids"], ident)
    p = rotate(sp[:, 3:12], pos - sp[:, 0:3])
    nl = normal(fd, p, sp)
    nw = torch.cat([(sp[:, 3 + i:12:3] * nl).sum(1, keepdim=True) for i in range(3)], 1)
    flat = torch.cat([0 * wall, -wall, 1 - wall], 1)
    g = dict(pos=pos, view=-rd, t=t, ident=torch.where(hit > 0, ident, -1 - wall), nrm=torch.where(hit > 0, nw, flat), nl=nl, p=p, sp=sp, hit=hit,
             wall=wall * (1 - hit), soap=hit * (sp[:, 21:22] > .5).float(), fp=t * ang)
    lift = pos + g["nrm"] * .012
    sh = [shadow(lift, S["lp"][:, i], S["solids"], host["counts"], S["ls"][:, i:i + 1], ident) for i in range(2)]
    sh[0] = sh[0] * gobo(fd, pos, S, host)
    g["sh"] = sh
    g["ao"] = occlusion(fd, pos, g["nrm"], S["solids"], host["counts"], ident)
    return g


def context(fd, g, S):
    """Everything a flaw may ask about a soap point."""
    sp, n = g["sp"], g["nl"]
    q = g["p"] + torch.cat([0 * g["hit"], 0 * g["hit"], sp[:, 29:30]], 1)
    alb, s, bd, nb, por = base(fd, q, n, S)
    zt = (sp[:, 30:31] > 1.5).float()
    top = mix(sstep(.55, .85, n[:, 1:2]), sstep(.6, .85, n[:, 2:]), zt)
    cut = mix(sstep(.7, .9, n[:, 2:].abs()), sstep(.7, .9, n[:, 2:]), zt)
    side = (1 - torch.maximum(top, cut)).clamp(0, 1) * (1 - sstep(.3, .9, -n[:, 2:]) * (1 - zt))
    return dict(p=g["p"], q=q, n=n, h=sp[:, 12:15], alb=alb, s=s, bd=bd, nb=nb, por=por, cut=cut, top=top, side=side,
                soap=g["soap"], fp=g["fp"], foot=sp[:, 17:18], w3=(sp[:, 14:15] > .6).float())


def flaw_layers(fd, c, S, host, band):
    """For the three places of flaws: alpha, multiplier, added colour, height, gloss change."""
    B, _, N = c["p"].shape
    new = lambda k, v=0.: torch.full((B, k, N), v, device=c["p"].device)
    layers = []
    for j in range(3):
        ids = [int(i["fl"][j]) for i in host["items"]]
        if max(ids) < 0:
            break
        A, M, D, H, G = new(1), new(3, 1.), new(3), new(1), new(1)
        for f in sorted(set(ids) - {-1}):
            r = torch.tensor([i for i, v in enumerate(ids) if v == f], device=A.device)
            x = sub({k: c[k] for k in KEYS}, r)
            u = S["fu"][r, j]
            x.update(u=u, nc=S["nc"][r], so=S["seedoff"][r] + 3 * j)
            al, mul, add, hg, gl = FLAWS[f](fd, x, lambda i: u[:, i:i + 1])
            ok = x["soap"] * (1 - band[r])
            A[r] = (al * ok).clamp(0, 1)
            M[r] = M[r] * mul
            D[r] = D[r] * 0 + add
            H[r] = H[r] * 0 + hg * ok
            G[r] = G[r] * 0 + gl
        layers.append((A, M, D, H, G, ids))
    return layers


def blend(alb, H, gl, layers, skip=-1):
    """Puts the flaws over the clean soap, leaving one out."""
    for j, (A, M, D, h, G, _) in enumerate(layers):
        if j != skip:
            alb, H, gl = mix(alb, alb * M + D, A), H + h, (gl * (1 + A * G)).clamp(min=0)
    return alb.clamp(.003, .97), H, gl


def scene(fd, S, host, hw):
    """Draws the radiance of a chunk: full, and without each flaw; plus masks."""
    g = geometry(fd, S, host, hw)
    c = context(fd, g, S)
    soap, sp, hit = g["soap"], g["sp"], g["hit"]
    fade = lambda f: (1 / (f * g["fp"] * 2 + .5)).clamp(max=1)
    H = fd.fbm(c["q"] * S["uneven_f"] + S["seedoff"], 3)[:, :1] * S["uneven"] * .05 / S["uneven_f"] * fade(S["uneven_f"] * 3)
    gl, glit = sp[:, 25:26].clone(), torch.zeros_like(H)
    band = deceive(fd, c, host, S, H, gl, glit)
    layers = flaw_layers(fd, c, S, host, band)
    ta, th = table_look(fd, g["pos"], S, host, g["fp"])
    wn = fd.noise(g["pos"] * .7 + S["seedoff"])
    wallc = mix(S["wc"][:, 0], S["wc"][:, 1], sstep(-.2, .3, wn[:, :1]) * (S["wk"] > .5))
    cn = fd.fbm(g["p"] * sp[:, 31:32] + sp[:, 27:30], 3)[:, :1]
    clut = (sp[:, 22:25] * (1 + sp[:, 26:27] * 1.5 * cn)).clamp(.003, .95)
    rest = torch.where(hit > 0, clut, torch.where(g["wall"] > 0, wallc, ta))
    rgl = torch.where(hit > 0, sp[:, 25:26], S["tgl"] * (1 - g["wall"]))
    rh = torch.where(hit > 0, cn * sp[:, 26:27] * .02, th * (1 - g["wall"]))
    fr = frame_of(g["pos"], g["ident"], g["nrm"], hw)

    def render(rows, skip):
        sl = [tuple(v[rows] if torch.is_tensor(v) else v for v in L) for L in layers]
        a, h, gg = blend(c["alb"][rows], H[rows], gl[rows], sl, skip)
        m = soap[rows] > 0
        a, h, gg = torch.where(m, a, rest[rows]), torch.where(m, h, rh[rows]), torch.where(m, gg, rgl[rows])
        G = {k: (g[k][rows] if torch.is_tensor(g[k]) else [v[rows] for v in g[k]]) for k in ("pos", "view", "nrm", "soap", "ao", "sh")}
        n = bump(G["nrm"], h, tuple(v[rows] for v in fr), hw)
        out = shade(G, a, n, gg, {k: v[rows] for k, v in S.items()}, glit[rows] * soap[rows])
        return out.clamp(0, 30).reshape(len(rows), 3, *hw)

    every = torch.arange(soap.shape[0], device=soap.device)
    full = render(every, -1)
    twins = []
    for j, L in enumerate(layers):
        r = torch.tensor([i for i, v in enumerate(L[5]) if v >= 0], device=soap.device)
        twins.append((r, [L[5][i] for i in r.tolist()], render(r, j), L[0][r].reshape(len(r), 1, *hw)))
    img = lambda v: v.reshape(-1, 1, *hw)
    return full, twins, img(soap), img(g["t"])


def shrink(x, size):
    """Averages the finer drawing down to the picture's size."""
    return F.interpolate(x, size=size, mode="bilinear", align_corners=False, antialias=True)


def judge(D, T, noise, mask, sc):
    """Where the difference is plain to the eye, and whether there is enough of it."""
    v1 = D / (.03 + .75 * noise + .45 * T)
    v2 = gauss(D, 2.2 * sc) / (.025 + .35 * noise + .35 * T)
    v = torch.maximum(v1, v2) * (gauss(mask, 1.2 * sc) > .06)
    m = gauss(sstep(.45, 1.1, v), .6 * sc) * sstep(.03, .3, gauss(mask, .8 * sc))
    area = (v > 1).float().sum((1, 2, 3)) / sc ** 2
    strong = (v * (v > 1)).clamp(max=4).sum((1, 2, 3)) / sc ** 2
    return m.clamp(0, 1), (area > 18) & (strong > 36)


def draw_chunk(first, n, size, seed, device, clean, force):
    """One small batch from lots to labelled pictures."""
    fd = field(device)
    raw, host = collate([sample(seed, first + i, clean, force[i] if force else None) for i in range(n)], device)
    S = columns(raw)
    hw = (int(round(size[0] * SUPER)), int(round(size[1] * SUPER)))
    full, twins, soap, depth = scene(fd, S, host, hw)
    sc = size[1] / 512
    dep = shrink(depth, size)
    x = lens(shrink(full, size), dep, S, host)
    gain, wb = meter(x, S)
    x = x * gain * wb
    still = tone(x, S, sc)
    gen = torch.Generator(device=device).manual_seed((int(seed) * 7919 + first) & 0x7fffffff)
    image = torch.nan_to_num(finish(tone(grain(x, S, gen, sc), S, sc), S, sc))
    maps, present = torch.zeros(n, 16, *size, device=device), torch.zeros(n, 16, device=device)
    for r, ids, rad, mask in twins:
        Sr, hr = {k: v[r] for k, v in S.items()}, dict(items=[host["items"][i] for i in r.tolist()])
        y = tone(lens(shrink(rad, size), dep[r], Sr, hr) * gain[r] * wb[r], Sr, sc)
        D = (y - still[r]).abs().mean(1, keepdim=True)
        L = y.mean(1, keepdim=True)
        T = (small_gauss(L * L, 3 * sc) - small_gauss(L, 3 * sc) ** 2).clamp(min=0).sqrt()
        m, ok = judge(D, T, Sr["noise"][..., None] * 1.3 + (100 - Sr["q"][..., None]) * 1e-4, shrink(mask, size), sc)
        k = torch.tensor(ids, device=device)
        bare = shrink(soap[r] * (mask < .35), size).sum((1, 2, 3)) / shrink(soap[r], size).sum((1, 2, 3)).clamp(min=1)
        ok = ok & ((bare > .1) | ((k != 6) & (k != 10)))  # a zone needs its sound surroundings to be told as one
        okf = ok.float()
        maps[r, k] = m[:, 0] * okf.view(-1, 1, 1)
        present[r, k] = okf
    return dict(image=image, bar=shrink(soap, size).clamp(0, 1), maps=maps, present=present, tricky=raw["looks"].clone(), kind=raw["nosoap"].long())


@torch.no_grad()
def draw(n, size, seed, device, clean=0.4, force=None):
    """Draws n labelled pictures. force (a list of finding numbers, -1 clean) is for trying only."""
    parts = []
    for a in range(0, n, CHUNK):
        k = min(CHUNK, n - a)
        parts.append(draw_chunk(a, k, size, seed, device, clean, force[a:a + k] if force else None))
    return {k: torch.cat([p[k] for p in parts]) for k in parts[0]}
