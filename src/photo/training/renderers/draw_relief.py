"""Soap pictures painted as relief and material maps under simulated light and camera: draw()."""
import os
import random
import sys
import torch
import torch.nn.functional as F

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import relief_trace as rt
import relief_flaws_a as fa
import relief_flaws_b as fb
from relief_camera import optics, tone, finish, vignette
from relief_design import mix, pattern, table_colour, clutter_colour, to_ks, to_r
from relief_extras import EXTRAS, band
from relief_fields import Dice, fbm, noise, dots, gauss, wide_blur, lerp, make_volume, smooth
from relief_light import Frame
from relief_plan import plan, stack

FINDINGS = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
            "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
            "layer-gap", "wrinkled-top", "mould-dimples"]
PAINT = [fa.coloured_specks, fa.smears, fa.white_specks, fa.translucent_veins, fa.crackle_network, fa.powdery_film,
         fa.dark_centre_ring, fa.orange_spots, fa.pinholes, fb.crack, fb.brown_outside_in, fb.colour_bled, fb.drag_lines,
         fb.layer_gap, fb.wrinkled_top, fb.mould_dimples]

# how far around a seen edge a finding of each kind counts as seen, pixels at 512 wide
WIDE = torch.tensor([3., 3, 3, 5, 10, 10, 16, 4, 3, 3, 14, 8, 4, 3, 12, 6])


def geometry(s, size):
    """Hits of all rays, and maps of where on which face of the soap each pixel lies."""
    eye, dirs = rt.rays(s.cam, size)
    t, idx = rt.trace(s.obj, s.ctr, s.rot, eye, dirs)
    p, loc, ln, wn, q = rt.surface(s.obj, s.ctr, s.rot, eye, dirs, t, idx)
    s.t, s.idx, s.p, s.wn, s.q, s.loc = t, idx, p, wn, q, loc
    s.eye = eye
    s.soap = ((idx >= 0) & (q[:, 9:10] < .5)).float()
    s.px = t * 2 / size[1] / s.cam[:, 12].reshape(-1, 1, 1, 1)
    area = s.soap.sum((2, 3), keepdim=True).clamp(min=1)
    s.px0 = (s.px * s.soap).sum((2, 3), keepdim=True) / area
    s.px0 = torch.where(s.px0 > 0, s.px0, torch.full_like(s.px0, .01))
    s.x, s.y, s.z = loc[:, 0:1], loc[:, 1:2], loc[:, 2:3]
    ay, az, ax = ln[:, 1:2].clamp(min=0), ln[:, 2:3].abs(), ln[:, 0:1].abs()
    s.top, s.cut, s.side = [(smooth(.45, .85, v) * s.soap) for v in (ay, az, ax)]
    top, cut = (ay > az) & (ay > ax), (az >= ay) & (az >= ax)
    side = ~(top | cut) & (ax > ln[:, 1:2].abs())
    s.u = torch.where(side, s.z, s.x)
    s.v = torch.where(cut | side, s.y, s.z) + q[:, 11:12]
    s.v_top, s.z_rel = s.z, s.z
    s.zs = s.z + q[:, 12:13]
    ex, ey, ez = [(q[:, k:k + 1] - c.abs()).clamp(min=0) for k, c in enumerate((s.x, s.y, s.z))]
    middle = torch.maximum(torch.minimum(ex, ey), torch.minimum(torch.maximum(ex, ey), ez))
    qx, qy = s.x.abs() - (q[:, 0:1] - q[:, 3:4]), s.y.abs() - (q[:, 1:2] - q[:, 3:4])
    plan_in = q[:, 3:4] - torch.sqrt(qx.clamp(min=0) ** 2 + qy.clamp(min=0) ** 2 + 1e-9) - torch.maximum(qx, qy).clamp(max=0)
    s.rim = torch.where(cut, plan_in.clamp(min=0), middle)
    s.cut_share = (cut.float() * s.soap).sum((2, 3), keepdim=True) / area
    s.flawed = s.soap * q[:, 13:14]


def materials(s, plans, d, seed):
    """Clean maps: albedo, relief, roughness, glint, and the deceiving extras laid on them."""
    s.phi, n1, n2 = pattern(s, s.x, s.y, s.zs)
    ks, s.portion = mix(s, s.phi, s.soft)
    soap_alb = to_r(ks * (1 + s.mott * n1[:, 3:4] + .5 * s.mott * n2[:, 3:4]).clamp(.4, 2))
    fine = fbm(s.vol, s.u * 22 + 3, s.v * 22, s.z * 0 + s.side * 3, 3, .6)
    big = n1[:, 2:3]
    pit = (1 - smooth(.5, 1, dots(s.table, s.u, s.v, .25 / s.px0, .08 * s.pit, .15, .4, 97)[0])) * .003
    soap_h = s.tex * (.0016 * fine[:, 0:1] + .010 * big * (.4 + s.top)) - pit * s.pit
    tab_alb, tab_h = table_colour(s, s.p, s.px * s.t / s.eye[:, 2].reshape(-1, 1, 1, 1))
    cl_alb, cl_h = clutter_colour(s, s.loc, s.q)
    crumb = dots(s.table, s.p[:, 0:1], s.p[:, 1:2], 9., .12 * smooth(-.2, .5, n1[:, 0:1]), .03, .12, 3)[0]
    crumb = (1 - smooth(.8, 1.1, crumb)) * s.crumbs
    base = to_r(s.pal[:, :, 0][:, :, None, None])
    tab_alb = lerp(tab_alb, base.expand_as(tab_alb), crumb)
    tab_h = tab_h + .03 * crumb
    body = (s.idx >= 0).float()
    rest_alb, rest_h = lerp(tab_alb, cl_alb, body), lerp(tab_h, cl_h, body)
    s.alb = lerp(rest_alb, soap_alb, s.soap)
    s.h = lerp(rest_h, soap_h, s.soap)
    s.rough = lerp(.35 + .5 * torch.sin(s.tf * 9).abs(), s.rough0 + .1 * n2[:, 2:3], s.soap).clamp(.15, 1)
    s.glint = torch.zeros_like(s.h)
    for k in sorted(range(len(EXTRAS)), key=lambda k: EXTRAS[k] is band):
        f = EXTRAS[k]
        ids = [i for i, p in enumerate(plans) if k in p["extras"]]
        if ids:
            i = torch.tensor(ids, device=s.h.device)
            sub = s.take(i)
            a, rgb, dh, rg, gl = f(sub, Dice(len(ids), seed * 131 + k, s.h.device))
            a = (a * sub.soap).clamp(0, 1)
            s.alb[i] = lerp(sub.alb, rgb.expand_as(sub.alb), a)
            s.h[i] = sub.h + dh * sub.soap
            s.rough[i] = (sub.rough + rg * sub.soap).clamp(.12, 1)
            if f is band:  # paper hides what the soap has under it
                s.flawed[i] = sub.flawed * (1 - a)
                gl = gl - sub.glint * a
                s.glint[i] = sub.glint + gl
                continue
            s.glint[i] = torch.maximum(sub.glint, gl * sub.soap)
    s.alb = s.alb.clamp(.004, .96)
    s.ks = to_ks(s.alb)
    area = s.soap.sum((2, 3), keepdim=True).clamp(min=1)
    s.light_bar = (s.alb.mean(1, keepdim=True) * s.soap).sum((2, 3), keepdim=True) / area
    pick = (s.flawed * d.raw(*s.flawed.shape)).flatten(1).argmax(1)
    s.portion_here = s.portion.flatten(1).gather(1, pick[:, None])[:, :, None, None]


def findings(s, plans, seed):
    """Paint each finding on the pictures that have it; returns per-slot layers and masks."""
    n, dev = s.h.shape[0], s.h.device
    h, w = s.h.shape[2:]
    lay = torch.zeros(n, 3, 7, h, w, device=dev)  # alpha, rgb, relief, roughness, mask
    for k, f in enumerate(PAINT):
        ids = [(i, p["found"].index(k)) for i, p in enumerate(plans) if k in p["found"]]
        if not ids:
            continue
        i, j = [torch.tensor(v, device=dev) for v in zip(*ids)]
        sub = s.take(i)
        a, rgb, dh, rg, m = f(sub, Dice(len(ids), seed * 257 + k, dev))
        on = sub.flawed
        lay[i, j] = torch.cat([(a * on).clamp(0, 1), rgb.expand(-1, 3, h, w), dh * on, rg * on, m.clamp(0, 1) * on], 1)
    return lay


def lights(s):
    """Shadow, open sky and patterned light for the frame."""
    sh = rt.shadow(s.obj, s.ctr, s.rot, s.p, s.wn, s.key_dir[:, :, 0, 0], s.hardness)
    ao = rt.occlusion(s.obj, s.ctr, s.rot, s.p, s.wn)
    blind = smooth(-.3, .3, torch.sin((s.p[:, 0:1] * s.tc + s.p[:, 1:2] * s.ts) * 4 + s.p[:, 2:3] * 3))
    leaf = smooth(-.25, .15, noise(s.vol, s.p[:, 0:1] * 1.3, s.p[:, 1:2] * 1.3, s.p[:, 2:3] * 1.1)[:, 0:1])
    sh = sh * torch.where(s.cookie == 1, blind, torch.where(s.cookie == 2, leaf, torch.ones_like(leaf)))
    names = ("key_dir", "key_col", "key_power", "sky_col", "sky_dir", "fill_dir", "fill_col", "pane", "glow")
    out = {k: getattr(s, k) for k in names}
    out.update(sh=sh, ao=ao, glow_px=(s.glow_w / s.px0).clamp(.3, 4.5))
    return out


def compose(s, lay, skip=-1):
    """Maps with the findings laid on, all or all but one slot."""
    alb, h, rough = s.alb, s.h, s.rough
    for j in range(3):
        if j != skip:
            a = lay[:, j, 0:1]
            alb = lerp(alb, lay[:, j, 1:4], a)
            h = h + lay[:, j, 4:5]
            rough = (rough + lay[:, j, 5:6]).clamp(.12, 1)
    return alb, h, rough


def broad(x):
    """Mean of a wide neighbourhood, to tell a local change from an overall one."""
    k = max(2, x.shape[3] // 64)
    y = gauss(F.avg_pool2d(x, k, ceil_mode=True), torch.full_like(x[:, :, :1, :1], 4.), 9)
    return F.interpolate(y, size=x.shape[2:], mode="bilinear", align_corners=False)


def visible(full, without, mask, soap, final, kind_wide):
    """Honest mask and presence: contrast of the finding over noise and over the texture around it."""
    diff = (full - without).abs().max(1, keepdim=True)[0]
    one = torch.ones_like(kind_wide)
    grain = gauss(((final - full) ** 2).mean(1, keepdim=True), one * 3, 7).sqrt()
    grey = without.mean(1, keepdim=True)
    tex = gauss((grey - gauss(grey, one * 1.5, 4)) ** 2, one * 3, 7).sqrt()
    need = .018 + .55 * grain + .5 * tex
    near = gauss(diff, one, 3)
    seen = smooth(.7, 1.5, torch.maximum(near, diff * .8) / need)
    spread = wide_blur(seen, kind_wide)
    m = mask * smooth(.08, .35, spread) * soap
    weight = (m * seen).sum((1, 2, 3))
    size = soap.sum((1, 2, 3)).clamp(min=1)
    strong = ((m * near / need).flatten(1).topk(24, 1)[0]).mean(1)
    local = (diff - broad(diff * soap) / broad(soap).clamp(min=.03)).abs()
    local = ((m * gauss(local, one, 3) / need).flatten(1).topk(60, 1)[0]).mean(1)
    ok = (weight > 14) & (strong > 1.7) & (local > 1.2) & (weight > .0004 * size)
    return m, ok.float()


def chunk(n, size, seed, device, clean):
    """Draw a handful of pictures."""
    plans = [plan(random.Random(seed * 1000003 + i), clean) for i in range(n)]
    s = stack(plans, device)
    d = Dice(n, seed * 7 + 1, device)
    scale = size[1] / 512
    s.soft, s.defocus = (s.soft * scale).clamp(min=.4), s.defocus * scale
    s.vol, s.table = make_volume(n, d.raw), d.raw(n, 4, 4096)
    geometry(s, size)
    materials(s, plans, d, seed)
    lay = findings(s, plans, seed)
    frame = Frame(s.p, s.wn, s.eye, s.soap, s.px, lights(s))
    s.focus = s.cam[:, 13].reshape(-1, 1, 1, 1) * s.focus_off
    s.vign = vignette(size[0], size[1], 1, device) * s.vig + (1 - s.vig)
    lin = optics(frame.shade(*compose(s, lay), s.glint), s.t, s)
    where = torch.where(s.soap.sum((2, 3), keepdim=True) > 50, s.soap, torch.ones_like(s.soap))
    lev = lambda w: (lin.mean(1, keepdim=True) * w).sum((2, 3), keepdim=True) / w.sum((2, 3), keepdim=True)
    mean = .5 * lev(where) + .5 * lev(torch.ones_like(where))
    s.gain = .34 * s.expo / mean.clamp(min=.01) * (.55 + s.light_bar)
    full = tone(lin, s)
    gen = torch.Generator(device=device).manual_seed(seed * 31 + 5)
    image = finish(lin, s, gen)
    maps = torch.zeros(n, 16, *size, device=device)
    present = torch.zeros(n, 16, device=device)
    for j in range(3):
        ids = [i for i, p in enumerate(plans) if p["found"][j] >= 0]
        if not ids:
            continue
        i = torch.tensor(ids, device=device)
        k = torch.tensor([plans[a]["found"][j] for a in ids], device=device)
        sub = s.take(i)
        lin0 = optics(frame.take(i).shade(*compose(sub, lay[i], j), sub.glint), sub.t, sub)
        m, ok = visible(full[i], tone(lin0, sub), lay[i, j, 6:7], sub.soap, image[i], WIDE.to(device)[k][:, None, None, None] * scale)
        maps[i, k] = m[:, 0] * ok[:, None, None]
        present[i, k] = ok
    tricky = torch.tensor([p["tricky"] for p in plans], device=device)
    kind = torch.tensor([p["kind"] for p in plans], device=device, dtype=torch.int64)
    return {"image": image, "bar": s.soap, "maps": maps, "present": present, "tricky": tricky, "kind": kind}


@torch.no_grad()
def draw(n, size, seed, device, clean=0.4):
    """n pictures of size (H, W) with their maps and labels; see FINDINGS for the order of the maps."""
    step = max(1, min(n, int((24 if str(device) == "cpu" else 76) * 384 * 512 / (size[0] * size[1]))))
    parts = [chunk(min(step, n - a), size, seed * 4099 + a, device, clean) for a in range(0, n, step)]
    return {k: torch.cat([p[k] for p in parts]) for k in parts[0]}
