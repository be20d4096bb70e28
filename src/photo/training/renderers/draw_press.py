"""Soap bars as a phone shows them: solid pours, cut and lit by a window. draw() is the way in."""
import os
import sys
import numpy as np
import torch
import torch.nn.functional as F

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import press_ground as ground
import press_lens as lens
import press_pour as pour
import press_scene as scene
import press_shade as light
import press_skin as skin
import press_trace as trace
from press_noise import Noise, mix

CHUNK = 8
AREA = {4, 5, 6, 10, 14}          # findings that are an area, not its single marks
FINDINGS = ("coloured-specks smears white-specks translucent-veins crackle-network powdery-film dark-centre-ring orange-spots pinholes "
            "crack brown-outside-in colour-bled drag-lines layer-gap wrinkled-top mould-dimples").split()


def _chunk(n, size, seed, dev, clean, over=None):
    rs = np.random.RandomState(seed)
    H, W = size
    ss = float(os.environ.get("PRESS_SS", 1.4 if max(H, W) <= 640 else 1.0))
    h, w = int(H * ss), int(W * ss)
    pl = skin.plan(rs, n, clean)
    if over:
        over(pl, rs)
    sc = scene.make(rs, n, dev, pl)
    D = pour.params(rs, n, dev, pl)
    nz = Noise.make(rs, n, dev)
    L = light.lights(rs, n, dev, pl)
    p = lens.params(rs, n, dev, H)
    gen = torch.Generator(device=dev)
    gen.manual_seed(int(rs.randint(2 ** 31)))
    g = trace.trace(sc, h, w)
    reach = trace.light_reach(sc, g)
    ga, gh, gr = ground.ground(g, nz, rs, n, dev, pl["kind"])
    clean_st, st, masks = skin.build(sc, g, D, nz, pl, rs)
    no = torch.from_numpy(pl["kind"].astype(np.float32)).to(dev).view(n, 1, 1, 1)
    soap = (g["what"] == 2).float() * (1 - no)
    fr = light.frame(g)
    down = lambda a: F.interpolate(a, size=(H, W), mode="area") if ss != 1 else a

    def render(s, gain=None):
        pick = lambda a, b: torch.where(soap > 0, a, b)
        col = light.shade(sc, g, fr, L, pick(s["alb"], ga).clamp(.004, 1.6), pick(s["h"], gh), pick(s["rough"], gr).clamp(.06, 1),
                          s["tr"], reach, nz)
        col = down(col)
        gd = {k: down(g[k]) for k in ("t",)}
        gd["what"] = 2 * (down(soap) > .5).float()
        col = lens.gauss(lens.focus(p, col, gd), p["blur"])
        lt = L["key"] + .7 * L["sky"]
        if gain is None:
            gain = lens.tone(p, col, lt)
        return lens.finish(p, col, gain, lt), gain

    img, gain = render(st)
    maps = torch.zeros(n, 16, H, W, device=dev)
    if masks:
        ref, _ = render(clean_st, gain)
        diff = (img - ref).abs().max(1, keepdim=True)[0]
        d1 = lens.gauss(diff, torch.full_like(p["blur"], .8))
        thr = .032 + p["noise"]
        seen = F.max_pool2d((d1 > thr).float(), 3, 1, 1)
        r = max(1, H // 40)
        wide = F.max_pool2d(seen, 2 * r + 1, 1, r)
        for j, (i, m) in masks.items():
            m = F.interpolate(m * soap[i], size=(H, W), mode="area")
            mm = ((m > .22).float()) * (wide if j in AREA else seen)[i]
            k = mm.flatten(1).sum(1)
            force = ((d1[i] * mm).flatten(1).sum(1) / k.clamp_min(1)) * k.sqrt()      # strength times reach
            maps[i, j] = mm[:, 0] * ((k > 6e-5 * H * W + 5) & (force > .28))[:, None, None].float()
    image = lens.sensor(p, img, gen)
    bar = (down(soap) > .5).float()
    maps = maps * bar
    present = (maps.flatten(2).sum(2) > 4).float()
    maps = maps * present[:, :, None, None]
    return dict(image=image, bar=bar, maps=maps, present=present,
                tricky=torch.from_numpy(pl["tricky"].astype(np.float32)).to(dev), kind=torch.from_numpy(pl["kind"].astype(np.float32)).to(dev)), pl, sc


@torch.no_grad()
def draw(n, size, seed, device, clean=0.4):
    dev = torch.device(device)
    out = []
    for k, a in enumerate(range(0, n, CHUNK)):
        with torch.backends.cudnn.flags(enabled=True, benchmark=False, deterministic=True, allow_tf32=False), \
                torch.autocast(dev.type, enabled=False):
            out.append(_chunk(min(CHUNK, n - a), size, (int(seed) * 100003 + k * 7919 + 17) % (2 ** 32 - 1), dev, clean)[0])
    return {k: torch.cat([o[k] for o in out]) for k in out[0]}
