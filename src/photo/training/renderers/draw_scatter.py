"""Drawn pictures of hand-made soap: surface fields, soft light with subsurface blur, and a phone camera."""
from types import SimpleNamespace
import torch
import torch.nn.functional as F
from scat_base import FINDINGS, Draws, Fields, smooth, mix, blur, hsv, to_linear, luma, deeper
from scat_scene import place, camera, cast
from scat_soap import surface, body, keep_state, subset, put_back, STATE
from scat_light import lamps, shadow, bump, ground, shade, cover
import scat_flaws_grain as G
import scat_flaws_form as R
import scat_decoys as D
import scat_camera as C

FLAWS = [G.coloured_specks, G.smears, G.white_specks, R.translucent_veins, R.crackle_network, G.powdery_film,
         R.dark_centre_ring, G.orange_spots, G.pinholes, R.crack, R.brown_outside_in, G.colour_bled, G.drag_lines,
         R.layer_gap, R.wrinkled_top, R.mould_dimples]
ORDER = [10, 6, 3, 4, 11, 7, 0, 1, 2, 13, 9, 8, 12, 14, 15, 5]      # bulk colour first, film last
NEED = [0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 1, 1, 1, 1, 2, 3]             # 1 cut face, 2 top, 3 moulded side
CHUNK = 32


def plan_batch(n, d, clean, only=None):
    """Decide per picture: flaws, harmless decoys, layout, pose, design."""
    P = SimpleNamespace(n=n)
    P.kind = (d.raw(n, 1, 1, 1) < 0.065).long()
    flawed = (d.raw(n, 1, 1, 1) * 0.84 < 1 - clean) & (P.kind == 0)   # some flaws turn out unseen
    count = d.weighted(n, [0.5, 0.32, 0.18]) + 1
    key = d.raw(n, 16)
    if only is not None:
        key[:, only] = 2.0
        flawed, count, P.kind = flawed | True, torch.ones_like(count), P.kind * 0
    rank = key.argsort(1, descending=True).argsort(1)
    P.flaw = ((rank < count.view(n, 1)) & flawed.view(n, 1))
    first = key.argmax(1)
    need = torch.tensor(NEED, device=d.device)
    P.need = torch.where(flawed.view(n), (need[None] * P.flaw).gather(1, (P.flaw.float() * (need[None] > 0) * key).argmax(1, keepdim=True)).view(n), torch.zeros_like(first)).view(n, 1, 1, 1)
    want = torch.where(flawed, d.chance(n, 0.4), d.chance(n, 0.66)) * (P.kind == 0)
    dk = d.raw(n, len(D.FUNCS))
    dn = d.weighted(n, [0.6, 0.3, 0.1]).view(n, 1) + 1
    P.decoy = (dk.argsort(1).argsort(1) < dn) & (want.view(n, 1) > 0)
    P.trick = want.view(n)
    P.tone = d.pick(n, 5) * want.long()                            # 1 brown all over, 2 dark centre as design, others none
    P.layout = d.weighted(n, [0.31, 0.13, 0.13, 0.1, 0.23, 0.1])
    P.layout = torch.where((P.need == 3) & (d.chance(n, 0.5) > 0), torch.ones_like(P.layout), P.layout)
    P.up = torch.where(d.chance(n, 0.6) > 0, torch.zeros_like(P.need), 1 + (d.chance(n, 0.2) > 0).long())
    P.up = torch.where(P.layout == 3, torch.zeros_like(P.up), P.up)
    P.up = torch.where(P.need == 2, torch.where(d.chance(n, 0.6) > 0, torch.ones_like(P.up), torch.zeros_like(P.up)), P.up)
    P.moulded = ((P.need >= 2) & (P.up == 0)).long()               # made in single moulds: large face is top or side
    P.peaks = d.chance(n, 0.25) * (P.need != 2)
    ds = d.weighted(n, [1.7, 1, 1.1, 0.5, 0.45, 0.5, 0.3, 0.5])
    ds = torch.where(P.flaw[:, 13].view(n, 1, 1, 1), torch.ones_like(ds), ds)
    bl = P.flaw[:, 11].view(n, 1, 1, 1) & ((ds == 0) | (ds == 3))
    ds = torch.where(bl, 1 + 3 * d.pick(n, 2), ds)
    ds = torch.where((P.tone == 2) & ~P.flaw[:, 6].view(n, 1, 1, 1) & (P.flaw[:, 13].view(n, 1, 1, 1) == 0), torch.full_like(ds, 6), ds)
    plainly = ~flawed & (want == 0)                                # an ordinary bar: one colour or straight layers
    P.design = torch.where(plainly, ds.clamp(max=1), ds)
    P.peaks = P.peaks * (~plainly).float()
    return P


def faces(S, P, hit):
    """Main visible face and the faces that count as top and as moulded side."""
    n = P.n
    cnt = torch.stack([((S.face == i).float() * S.soap * S.main).sum((1, 2, 3)) for i in range(3)], 1)
    S.mface = cnt.argmax(1).view(n, 1, 1, 1)
    S.topface = torch.where(P.moulded > 0, torch.full_like(S.mface, 2), torch.ones_like(S.mface))
    m2 = cnt.clone()
    m2[:, 2] = m2[:, 2] * P.moulded.view(n)
    S.mouldface = m2.argmax(1).view(n, 1, 1, 1)
    S.cover = torch.zeros_like(S.hgt)
    S.lit = torch.ones_like(S.hgt)


def with_subset(S, flags, fn, d):
    """Apply fn to the flagged pictures only; returns its mask in full size (or None) and the indices."""
    idx = flags.nonzero().view(-1)
    if len(idx) == 0:
        return None, idx
    T = subset(S, idx)
    before = keep_state(T)
    m = fn(T, d)
    if m is not None:                                              # flaws spare bands and, often, all bars but one
        on = (T.main * T.onemain + (1 - T.onemain)) * (1 - T.cover)
        for k in STATE:
            setattr(T, k, mix(before[k], getattr(T, k), on))
        m = m * on
    put_back(S, T, idx)
    S.cover[idx], S.lit[idx] = T.cover, T.lit
    return m, idx


def fingers(n, d, H, W, use, img, cov):
    """A hand that holds the bar: blurred skin-coloured capsules from below or aside, shaded as cylinders."""
    y = torch.linspace(-1, 1, H, device=d.device).view(1, 1, H, 1)
    x = torch.linspace(-1, 1, W, device=d.device).view(1, 1, 1, W) * (W / H)
    skin = to_linear(hsv(d.u(n, 0.03, 0.075), d.u(n, 0.25, 0.6), d.u(n, 0.3, 0.92)))
    bright = (img * cov).sum((1, 2, 3), keepdim=True) / (3 * cov.sum((1, 2, 3), keepdim=True)).clamp(min=1) * 1.8 + 0.1
    ang, rad, side, face_nail = d.u(n, 0, 6.283), d.u(n, 0.1, 0.19), d.u(n, -1, 1), d.chance(n, 0.5)
    ca, sa = torch.cos(ang), torch.sin(ang)
    along, across = x * ca + y * sa, y * ca - x * sa
    occ = torch.zeros(n, 1, H, W, device=d.device)
    pore = 1 + 0.05 * blur(d.field(n, 1, H, W), 1.2, 3)
    shift = d.u(n, -0.3, 0.3)
    for j in range(4):
        tip, lean = d.u(n, 0.3, 0.75), d.u(n, -0.1, 0.1)
        v = across - (j - 1.5) * rad * 2.02 + lean * (along - tip) + 0.05 * torch.sin(3 * along + j) + shift
        u = along - tip
        r = rad * d.u(n, 0.88, 1.05) * (1 - 0.18 * smooth(u, 0.5, 0.0)) * (1 + 0.03 * torch.cos(9 * u))
        dd = torch.sqrt((-u * 1.15).clamp(min=0) ** 2 + v * v + 1e-6) / r
        m = smooth(dd, 1.06, 0.94) * use
        nz = torch.sqrt((1 - dd * dd).clamp(min=0.02))
        fold = 1 - 0.25 * smooth((torch.remainder(u - 0.32, 0.42) - 0.05).abs(), 0.025, 0.0) * (u > 0.2).float()
        nail = smooth(torch.sqrt(((u - 0.1) / 0.85) ** 2 + v * v) / r, 0.62, 0.55) * face_nail
        tone = mix(skin, skin * to_linear(torch.tensor([1.0, 0.93, 0.93], device=d.device).view(1, 3, 1, 1)) * 1.15, nail)
        lit = (0.32 + 0.72 * nz + 0.35 * v / r * side).clamp(min=0.12) * fold * pore + 0.12 * nail
        edge = torch.tensor([1.0, 0.72, 0.6], device=d.device).view(1, 3, 1, 1)
        img = mix(img, img * (0.6 + 0.4 * smooth(dd, 1.0, 1.5)), use * (1 - m) * (1 - occ))
        img = mix(img, tone * bright * lit * mix(edge, torch.ones_like(edge), nz), m)
        occ = torch.maximum(occ, m)
    return img, occ


def honest(full, bare, final, masks, soap, H):
    """Scale each mask by what can be seen: difference of the twins against noise and texture."""
    diff = (full - bare).abs().mean(1, keepdim=True)
    diff = blur(diff, 0.7, 2)
    noise = (final - full).abs().mean(1, keepdim=True)
    hp = (bare - blur(bare, 1.6, 4)).abs().mean(1, keepdim=True)
    out, pres = [], []
    for m in masks.unbind(1):
        m = m[:, None]
        area = m.sum((2, 3), keepdim=True)
        w = m / area.clamp(min=1)
        floor = 0.013 + 1.05 * (noise * w).sum((2, 3), keepdim=True) + 0.55 * (hp * w).sum((2, 3), keepdim=True)
        seen = smooth(F.max_pool2d(diff, 5, 1, 2), 0.35 * floor, 1.0 * floor)
        mm = m * seen
        strong = (mm * smooth(diff, 0.9 * floor, 1.7 * floor)).sum((1, 2, 3))
        ok = (strong > 10.0 * (H / 384.0)).float()
        out.append(mm * ok.view(-1, 1, 1, 1))
        pres.append(ok)
    return torch.cat(out, 1), torch.stack(pres, 1)


def chunk(n, size, seed, device, clean, only=None):
    """Draw up to CHUNK pictures."""
    H, W = size
    d = Draws(seed, device)
    P = plan_batch(n, d, clean, only)
    P.fields = Fields(d)
    sc = place(P, d)
    camera(sc, P, d, H, W)
    hit = cast(sc, H, W)
    S = surface(hit, sc, P, d)
    body(S, P, d)
    S.onemain = d.chance(n, 0.4)
    faces(S, P, hit)
    S.alb = torch.where(P.tone == 1, S.alb * to_linear(hsv(d.u(n, 0.06, 0.1), d.u(n, 0.25, 0.6), d.u(n, 0.6, 0.95))), S.alb)
    wave = sc.amp.view(n, 1, 1, 1) * torch.sin(sc.kx.view(n, 1, 1, 1) * S.p[:, :1] + sc.ph.view(n, 1, 1, 1)) \
        * torch.sin(sc.kz.view(n, 1, 1, 1) * S.p[:, 2:] + 2 * sc.ph.view(n, 1, 1, 1))
    S.hgt = S.hgt + wave * S.ptop
    for i, fn in enumerate(D.FUNCS):
        with_subset(S, P.decoy[:, i], fn, d)
    clutter_alb = cover(n, S.uv, d, P.fields, S.px, 3)[0] if bool((hit.clutter * hit.cov).any()) else S.alb
    bare = keep_state(S)
    masks = torch.zeros(n, 16, H, W, device=device)
    for i in ORDER:
        m, idx = with_subset(S, P.flaw[:, i], FLAWS[i], d)
        if m is not None:
            masks[idx, i:i + 1] = m.clamp(0, 1)
    grd = ground(sc, hit, d, P)
    L = lamps(n, d)
    cov = hit.cov
    cl = hit.clutter * (cov > 0.02)
    eye = sc.eye.view(n, 3, 1, 1)
    on = cov > 0.3
    pos = torch.where(on, eye + sc.ray * hit.t.clamp(max=500), grd.pos)
    nrm = torch.where(on, hit.n, grd.nrm)
    sh, occ = shadow(sc, pos, nrm, L)
    inner = (blur(on.float(), 0.8, 1) > 0.98).float() * (blur(hit.slot.float() ** 2, 1.0, 1) - blur(hit.slot.float(), 1.0, 1) ** 2 < 1e-3)
    back = torch.where(on, 0 * grd.alb, grd.alb)
    gpix = shade(grd.alb, bump(grd.nrm, grd.pos, grd.hgt, 1.0 - on.float()), grd.pos, eye, L, fill(sh, on), fill(occ, on),
                 grd.gloss + 0 * occ, torch.full_like(occ, 0.4))
    rad_px = (S.trans.mean((1, 2, 3), keepdim=True) / S.pxm).clamp(0.3, 14)
    soap = S.soap * (cov > 0.02)

    def light(st):
        nn_ = bump(hit.n, pos, mix(st["hgt"], 0 * st["hgt"], cl), inner)
        alb = mix(st["alb"].clamp(0.003, 0.95), clutter_alb.clamp(0.01, 0.9), cl)
        v = shade(alb, nn_, pos, eye, L, sh * S.lit, occ * st["occ"].clamp(0.03, 1) * (0.5 + 0.5 * S.lit), st["spec"] * (1 - 0.7 * cl),
                  st["rough"].clamp(0.05, 1), rad_px, (cov > 0.3).float())
        return mix(gpix, v * st["occ"].clamp(0.03, 1) ** 0.5 + st["shine"] * sh * (1 - cl), cov)
    full, plain = light(keep_state(S)), light(bare)
    held = (P.layout == 5).float() * (P.kind == 0).float()
    hand, hand_f = d.gen.get_state(), d.field_gen.get_state()
    full, hocc = fingers(n, d, H, W, held, full, cov)
    d.gen.set_state(hand)
    d.field_gen.set_state(hand_f)
    plain, _ = fingers(n, d, H, W, held, plain, cov)
    soap, masks = soap * (1 - hocc), masks * soap * (1 - hocc)
    K = C.settings(n, d, H)
    t = torch.where(cov > 0.5, hit.t, grd.t)
    focus = (t * (soap + 0.01)).sum((1, 2, 3), keepdim=True) / (soap + 0.01).sum((1, 2, 3), keepdim=True)
    full, plain = C.lens(full, t, focus, K), C.lens(plain, t, focus, K)
    gain = C.expose(full, soap, K)
    tone = (L.col[0] + L.sky).mean((2, 3), keepdim=True)
    tone = tone / luma(tone)
    noise = d.field(n, 3, H, W)
    a, b = C.develop(full, K, gain, tone), C.develop(plain, K, gain, tone)
    img = C.jpeg(C.develop(full, K, gain, tone, noise), K.quality)
    maps, present = honest(a, b, img, masks, soap, H)
    present = present * P.flaw.float()
    nosoap = (soap.sum((1, 2, 3)) < 60)
    present = present * (~nosoap).float()[:, None]
    maps = maps * present.view(n, 16, 1, 1)
    trick = P.trick * (~nosoap).float()
    return {"image": img, "bar": soap * (~nosoap).float().view(n, 1, 1, 1), "maps": maps, "present": present, "tricky": trick,
            "kind": nosoap.long(), "twin": b}


def fill(x, hole):
    """Ground light under covered pixels is unknown: take it from the nearest open ground, a little darker at contact."""
    w = (~hole).float()
    near = blur(torch.cat([x * w, w], 1), 1.2, 3)
    return torch.where(hole, 0.75 * near[:, :1] / near[:, 1:].clamp(min=1e-3), x)


@torch.no_grad()
def draw(n, size, seed, device, clean=0.4, only=None, twin=False):
    """n pictures of the given size with finding maps; see the key names in the returned dictionary."""
    parts, i = [], 0
    while i < n:
        m = min(CHUNK, n - i)
        parts.append(chunk(m, size, int(seed) * 1009 + i, device, clean, only))
        i += m
    out = {k: torch.cat([p[k] for p in parts]) for k in parts[0]}
    if not twin:
        out.pop("twin")
    return out
