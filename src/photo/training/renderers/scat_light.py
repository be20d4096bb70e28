"""Light: a few soft lobes, traced shadow, contact occlusion, screen-space subsurface blur, ground and clutter."""
import math
from types import SimpleNamespace
import torch
import torch.nn.functional as F
from scat_base import length, smooth, mix, hsv, to_linear, blur, wide_blur, turn
from scat_scene import scene_distance

LOBES = 3


def kelvin(t):
    """Approximate linear colour of light of a temperature t [n, 1, 1, 1] relative to 5500 K."""
    x = (t - 5500) / 3000
    return torch.cat([torch.exp(-0.33 * x), torch.ones_like(x), torch.exp(0.5 * x)], 1)


def lamps(n, d):
    """Directions, widths and colours of the light lobes and the ambient light."""
    L = SimpleNamespace(dir=[], col=[], wrap=[], k=[])
    base = d.u(n, 2700, 6800)
    mixed = d.chance(n, 0.3)
    for i in range(LOBES):
        az, el = d.u(n, 0, 6.283), d.u(n, 0.2 if i == 0 else 0.05, 1.45)
        L.dir.append(torch.cat([torch.cos(el) * torch.cos(az), torch.cos(el) * torch.sin(az), torch.sin(el)], 1))
        t = torch.where(mixed > 0, d.u(n, 2700, 6800), base + d.u(n, -400, 400))
        power = d.log(n, 0.6, 2.4) if i == 0 else d.u(n, 0, 0.55) * d.chance(n, 0.7)
        L.col.append(kelvin(t) * power)
        w = d.u(n, 0.0, 0.7)
        L.wrap.append(w)
        L.k.append(torch.exp(6.5 - 6 * w))
    L.sky = kelvin(base + d.u(n, 0, 1500)) * d.log(n, 0.18, 0.8)
    L.floor = kelvin(base) * d.u(n, 0.05, 0.35)
    L.soft = d.log(n, 3, 40)
    return L


def shadow(sc, pos, nrm, L):
    """Soft shadow of the first lobe and contact occlusion at every pixel."""
    v = L.dir[0].expand_as(pos)
    out = torch.ones_like(pos[:, :1])
    t = torch.full_like(out, 0.03)
    start = pos + nrm * 0.025
    for _ in range(14):
        dd = scene_distance(sc, start + v * t)
        out = torch.minimum(out, (0.5 + 0.5 * L.soft * dd / t).clamp(0, 1))
        t = t + dd.clamp(0.03, 0.6)
    out = out * out * (3 - 2 * out)
    occ = torch.ones_like(out)
    for hh, w in ((0.06, 0.35), (0.22, 0.35), (0.6, 0.3)):
        occ = occ - w * ((hh - scene_distance(sc, pos + nrm * hh)) / hh).clamp(0, 1)
    return out, occ.clamp(0.05, 1)


def bump(nrm, pos, hgt, slot_edge):
    """Perturb normals by the height field using screen derivatives of position."""
    def dx(a):
        return F.pad(a[..., 2:] - a[..., :-2], (1, 1, 0, 0), mode="replicate") * 0.5

    def dy(a):
        return F.pad(a[..., 2:, :] - a[..., :-2, :], (0, 0, 1, 1), mode="replicate") * 0.5
    px, py = dx(pos), dy(pos)
    r1, r2 = torch.cross(py, nrm, dim=1), torch.cross(nrm, px, dim=1)
    det = (px * r1).sum(1, keepdim=True)
    g = det.sign() * (dx(hgt) * r1 + dy(hgt) * r2) / det.abs().clamp(min=1e-9)
    m = length(g)
    g = g / (1 + m / 1.6) * slot_edge
    out = nrm - g
    return out / length(out).clamp(min=1e-6)


def ground(sc, hit, d, plan):
    """Table and wall behind: position, normal, albedo, height and gloss for every pixel."""
    n = sc.n
    o, v = sc.eye.view(n, 3, 1, 1), sc.ray
    low = torch.where(plan.layout == 5, d.u(n, 2.5, 7), torch.zeros(n, 1, 1, 1, device=v.device))
    tg = torch.where(v[:, 2:] < -1e-4, -(o[:, 2:] + low) / v[:, 2:].clamp(max=-1e-4), torch.full_like(hit.t, 400.0))
    fw = sc.look - sc.eye
    fw = torch.cat([fw[:, :2], fw[:, :1] * 0], 1)
    fw = (fw / length(fw).clamp(min=1e-3)).view(n, 3, 1, 1)
    wall = d.log(n, 2.5, 14) + sc.dist.view(n, 1, 1, 1)
    va = (v * fw).sum(1, keepdim=True)
    tw = torch.where(va > 1e-3, wall / va.clamp(min=1e-3), torch.full_like(va, 400.0))
    isw = (tw < tg).float()
    t = torch.minimum(tg, tw).clamp(max=60)
    pos = o + v * t
    nrm = mix(torch.tensor([0.0, 0, 1], device=v.device).view(1, 3, 1, 1), -fw, isw)
    flat = torch.cat([pos[:, 2:] * isw + (pos[:, 1:2]) * (1 - isw), pos[:, :1]], 1)
    uv = turn(flat, d.u(n, 0, 3.14)) + d.u(n, 0, 30)
    alb, hgt, gl = cover(n, uv, d, plan.fields, t * sc.pix.view(n, 1, 1, 1))
    far = hsv(d.raw(n, 1, 1, 1), d.u(n, 0, 0.4), d.u(n, 0.1, 0.95))
    alb = mix(alb, to_linear(far), isw * d.chance(n, 0.7))
    return SimpleNamespace(pos=pos, nrm=nrm.expand_as(pos), alb=alb.clamp(0.004, 0.92), hgt=hgt * (1 - isw), gloss=gl, t=t, wall=isw)


def cover(n, uv, d, fields, px, kinds=6):
    """Wood, cloth, stone, paper, tiles or crumb-strewn board over plane coordinates uv."""
    kind = d.pick(n, kinds)
    c1 = to_linear(torch.where(d.chance(n, 0.5) > 0, hsv(d.u(n, 0.03, 0.13), d.u(n, 0.08, 0.5), d.u(n, 0.2, 0.9)),
                               hsv(d.raw(n, 1, 1, 1), d.u(n, 0, 0.35), d.u(n, 0.05, 0.97))))
    a = fields.noise2(uv * d.u(n, 0.5, 1.5), 3)
    st = torch.cat([uv[:, :1] * d.u(n, 2, 9), uv[:, 1:2] * d.u(n, 0.1, 0.6)], 1)
    g = fields.noise2(st + 0.5 * a[:, :2], 4, 0.65)
    plank = (torch.remainder(uv[:, :1] * d.u(n, 0.3, 0.8), 1) - 0.5).abs()
    fade = (1 - px * 18).clamp(0, 1)
    wood = c1 * (1 + 0.4 * torch.sin(g[:, :1] * d.u(n, 3, 14)) * d.u(n, 0.2, 1) + 0.2 * g[:, 1:2]) * mix(0.3, 1, smooth(0.5 - plank, 0, 0.012) + 0 * plank)
    fr = d.u(n, 20, 60)
    wv = torch.sin(uv[:, :1] * fr + a[:, :1]) * torch.sin(uv[:, 1:2] * fr + a[:, 1:2]) * fade
    check = ((torch.remainder(uv * 0.9, 1) > 0.5).float().sum(1, keepdim=True) == 1).float() * d.chance(n, 0.25)
    cloth = c1 * (1 + 0.2 * wv + 0.1 * a[:, :1]) * (1 - 0.45 * check)
    sp = fields.noise2(uv * d.u(n, 12, 40), 2)
    stone = c1 * (1 + 0.3 * a[:, :1] + 0.25 * sp[:, :1] * fade)
    vein = smooth(a[:, 2:3].abs(), 0.07, 0.0) * smooth(a[:, 3:], -0.2, 0.6) * d.chance(n, 0.35)
    stone = mix(stone, (c1 * 2.2 + 0.05).clamp(max=0.9), vein * 0.4)
    paper = mix(c1, torch.ones_like(c1), d.u(n, 0, 0.8)) * (1 + 0.03 * sp[:, :1] * fade)
    til = (torch.remainder(uv * 0.55, 1) - 0.5).abs().max(1, keepdim=True).values
    tile = mix(c1 * (1 + 0.06 * a[:, :1]), c1 * 0.45 + 0.1, smooth(til, 0.47, 0.49))
    sd = fields.dots(uv * d.log(n, 2, 9), d.u(n, 0.03, 0.5), 0.02, 0.3, 2.0, 0.5)
    crumb = smooth(sd[0], 0.02, -0.02)
    ccol = to_linear(torch.where(d.chance(n, 0.5) > 0, hsv(d.raw(n, 1, 1, 1), d.u(n, 0, 0.3), d.u(n, 0.8, 1)),
                                 hsv(d.raw(n, 1, 1, 1), d.u(n, 0.2, 0.9), d.u(n, 0.1, 0.9))))
    crumbs = mix(paper, ccol, crumb)
    allc = torch.stack([x.expand_as(stone) for x in (wood, cloth, stone, paper, tile, crumbs)])
    alb = allc.gather(0, kind[None].expand(1, *stone.shape))[0]
    hg = torch.cat([0.01 * g[:, :1], 0.02 * wv, 0.006 * sp[:, :1], 0.002 * sp[:, 1:2], -0.03 * smooth(til, 0.46, 0.49), 0.05 * crumb * (1 + sp[:, :1])], 1)
    return alb, hg.gather(1, kind.expand(n, 1, *hg.shape[-2:])), d.u(n, 0, 0.5) * d.chance(n, 0.5)


def shade(alb, nrm, pos, eye, L, sh, occ, spec, rough, trans_px=None, mask=None):
    """Outgoing linear radiance of lobes and sky; diffuse light is blurred on soap as subsurface scattering."""
    up = nrm[:, 2:]
    e = (mix(L.floor, L.sky, 0.5 + 0.5 * up)) * occ
    view = eye - pos
    view = view / length(view).clamp(min=1e-6)
    refl = 2 * (nrm * view).sum(1, keepdim=True) * nrm - view
    fres = 0.04 + 0.96 * (1 - (nrm * view).sum(1, keepdim=True).clamp(0, 1)) ** 5 * (1 - 0.7 * rough)
    s = mix(L.floor, L.sky, smooth(refl[:, 2:], -0.3, 0.6)) * occ * (1 - 0.4 * rough) * 0.8
    for i in range(LOBES):
        v = L.dir[i]
        nl = ((nrm * v).sum(1, keepdim=True) + L.wrap[i]) / (1 + L.wrap[i])
        vis = sh if i == 0 else occ
        e = e + L.col[i] * nl.clamp(min=0) * vis
        k = 1 / (1 / L.k[i] + 0.5 * rough ** 4 + 0.002)
        lobe = torch.exp(k * ((refl * v).sum(1, keepdim=True) - 1)) * (0.25 + k * 0.06).clamp(max=6)
        s = s + L.col[i] * lobe * vis
    if trans_px is not None:
        mm = mask.clamp(0, 1)
        e1 = e
        num = torch.cat([e * mm, mm], 1)
        tot = wide_blur(num, trans_px.clamp(max=14), 4, 9)
        far = tot[:, :3] / tot[:, 3:].clamp(min=0.15)
        near = blur(num, trans_px.clamp(max=3.2) * 0.5, 4)
        near = near[:, :3] / near[:, 3:].clamp(min=0.05)
        depth = torch.tensor([0.62, 0.42, 0.3], device=e.device).view(1, 3, 1, 1)
        e = e1 * (1 - depth * 1.1) + near * depth * 0.5 + far * depth * 0.6
    return alb * e * 0.6 + spec * fres * s
