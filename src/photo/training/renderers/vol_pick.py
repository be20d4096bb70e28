"""Draws the lots of one picture (flaws, deceivers, light, camera, phone) and stacks pictures into tensors."""
import math
import numpy as np
import torch
from vol_look import design, palette, lin, hsv, one, FAMS
from vol_scene import FINDINGS, TRICKS, NEED, SOAP, SLOTS, layout, hand, clutter


DARKEN = {"coloured-specks", "dark-centre-ring", "orange-spots", "brown-outside-in", "crackle-network", "translucent-veins", "drag-lines", "crack", "mould-dimples", "layer-gap"}


# more often drawn where the eye more often misses them, so that all are seen about equally often
ODDS = np.array([1.15, 1, 1, 1.25, 1, 1, 1.05, 1, 1, 1.25, 1, 1.1, 1.35, 1.2, 1, 1.25])


def kelvin(t):
    """Colour of a lamp, roughly, linear."""
    x = np.interp(t, [2500, 3500, 4500, 5500, 6500, 9000], [0, 1, 2, 3, 4, 5])
    return np.array([np.interp(x, range(6), c) for c in ([1, 1, 1, 1, 1, .8], [.62, .76, .86, .94, 1, .95], [.3, .52, .7, .87, 1, 1.15])])


def choose_flaws(r, clean):
    """Finding numbers, wanted design, needed faces."""
    if r.random() < 1 - min(1, (1 - clean) * (1.06 if clean < 1 else 1)):
        return [], False
    k = int(r.choice([1, 2, 3], p=[.6, .28, .12]))
    f = [int(i) for i in r.choice(16, k, replace=False, p=ODDS / ODDS.sum())]
    if 8 in f and 15 in f:
        f.remove(15)
    return sorted(f, key=lambda i: i == 5), True


def lights(r):
    """Two lights and the surround."""
    mode = r.choice(["window", "lamp", "overcast", "studio", "mixed", "flash"], p=[.32, .2, .18, .12, .12, .06])
    cct = r.uniform(5000, 7500) if mode in ("window", "overcast", "studio") else r.uniform(2600, 5000)
    d = dict(lp=np.zeros((2, 3)), lc=np.zeros((2, 3)), ls=np.zeros(2), lb=np.zeros((2, 4)))
    for i in range(2):
        az, el = r.uniform(-3.14, 3.14), r.uniform(.3, 1.45) if mode != "window" else r.uniform(.2, .9)
        dist = r.uniform(4, 10)
        if mode == "flash" and i == 0:
            az, el = -1.57 + r.normal(0, .1), r.uniform(.6, 1.3)
        d["lp"][i] = dist * np.array([math.cos(az) * math.cos(el), math.sin(az) * math.cos(el), math.sin(el)])
        size = {"window": .25, "lamp": .06, "overcast": .8, "studio": .5, "mixed": .15, "flash": .03}[mode] * r.uniform(.6, 1.6)
        d["ls"][i] = size
        d["lb"][i] = [size * r.uniform(.5, 1.4), size * r.uniform(.5, 1.4), r.integers(0, 3) if mode == "window" else 0, r.choice([.02, .1, .3])]
        p = {"window": 2.6, "lamp": 3, "overcast": 1.0, "studio": 1.8, "mixed": 2, "flash": 3}[mode] * r.uniform(.6, 1.3)
        if i == 1:
            p *= r.choice([0, .2, .6], p=[.45, .3, .25])
        if mode == "mixed":
            cct = r.uniform(2600, 7000)
        d["lc"][i] = p * kelvin(cct)
    amb = kelvin(r.uniform(3500, 7500) if mode in ("mixed", "lamp") else cct + r.normal(0, 400))
    d["au"] = amb * r.uniform(.35, 1.0) * (1.6 if mode == "overcast" else 1)
    d["ag"] = amb * r.uniform(.1, .4)
    d["cast"] = d["lc"][0] * .8 + d["au"]
    return d


def phone(r):
    """A phone camera's traits, good or bad."""
    bad = r.choice([0.2, .5, 1.0], p=[.4, .35, .25])
    return dict(
        focus=r.choice([.35, .7, 1.3, 2.2], p=[.45, .38, .13, .04]) * (.7 + .6 * bad * r.random()),
        aperture=r.choice([0, .6, 1.6, 4.0], p=[.35, .35, .24, .06]), foff=r.normal(0, .06),
        mlen=float(r.random() < .15) * r.uniform(1.5, 5), mang=r.uniform(0, 3.14),
        hdr=float(r.random() < .35) * r.uniform(.2, .7), bloom=float(r.random() < .3) * r.uniform(.02, .12),
        vig=float(r.random() < .5) * r.uniform(.05, .4), wb=r.normal(0, .07 * bad + .015, 3), adapt=r.uniform(.55, 1.0),
        noise=bad * r.uniform(.004, .03), chroma=r.uniform(0, 1), key=r.choice([.2, .27, .34, .42], p=[.15, .35, .35, .15]),
        shoulder=r.uniform(.75, 1.6), contrast=r.uniform(.85, 1.3), black=r.uniform(-.03, .05), sat=r.choice([.75, 1, 1.15, 1.4]),
        smear=float(r.random() < .3) * r.uniform(.3, 1), sharp=r.choice([0, .4, 1.0, 2.2], p=[.25, .4, .25, .1]), srad=r.choice([.8, 1.5]),
        q=r.choice([r.uniform(75, 96), r.uniform(45, 75), r.uniform(18, 45)], p=[.55, .33, .12]), haze=float(r.random() < .1) * r.uniform(.02, .15))


def table(r):
    """Table, board, cloth, stone, paper and wall."""
    k = int(r.integers(0, 10))
    h = r.random()
    c1 = {0: hsv(r.uniform(.05, .1), r.uniform(.3, .7), r.uniform(.15, .8)), 3: hsv(h, .05, r.uniform(.6, .95)),
          4: hsv(.1, .1, r.uniform(.7, .97)), 6: hsv(h, .1, r.uniform(.1, .7))}.get(k, one(r, r.choice(FAMS)))
    if r.random() < .12:
        c1 = hsv(h, r.uniform(0, .1), r.choice([.03, .97]))
    c2 = np.clip(c1 * r.uniform(.4, 1.5) + r.normal(0, .04, 3), 0, 1)
    return dict(tk=k, tc=np.stack([lin(c1), lin(c2), lin(one(r, r.choice(FAMS)))]), tsc=r.uniform(.6, 1.8), trot=r.uniform(-3, 3), toff=r.uniform(0, 60, 2),
                tgl=r.choice([0, .1, .6, 1.2]), wy=r.uniform(2.5, 14), wc=np.stack([lin(one(r, r.choice(FAMS))) for _ in range(2)]), wk=r.random())


def camera(r, elev, target, fill, rows, nosoap):
    """Place and axes of the camera."""
    far = max(np.linalg.norm(v[12:15]) for v in rows) if rows else 1
    ext = min(max(1.15, far * 1.5), 3.0) * (1 if fill > 1.15 else (1.2 if len(rows) > 1 else 1))
    fov = r.choice([.55, .85, 1.1, 1.35], p=[.2, .4, .3, .1])
    dist = ext / (2 * math.tan(fov / 2) * fill)
    e, az = math.radians(elev), -1.57 + r.normal(0, .15)
    target = target + r.normal(0, .07, 3) * min(1, dist) * (2 if nosoap else 1)
    pos = target + dist * np.array([math.cos(az) * math.cos(e), math.sin(az) * math.cos(e), math.sin(e)])
    pos[2] = max(pos[2], .12)
    f = target - pos; fd = np.linalg.norm(f); f /= fd
    rt = np.cross(f, [0, 0, 1.0]) if abs(f[2]) < .999 else np.array([1.0, 0, 0]); rt /= np.linalg.norm(rt)
    up = np.cross(rt, f)
    a = r.choice([r.normal(0, .04), r.normal(0, .3), r.choice([1.57, 3.14, -1.57])], p=[.75, .17, .08])
    rt, up = rt * math.cos(a) + up * math.sin(a), up * math.cos(a) - rt * math.sin(a)
    return dict(cp=pos, cr=rt, cu=up, cz=f, fov=math.tan(fov / 2), dist=fd, k1=r.choice([0, r.normal(0, .06)]))


def sample(seed, index, clean, force=None):
    """All lots of one picture. force: a finding's number to draw, for trying."""
    r = np.random.default_rng([int(seed) & 0x7fffffff, index])
    nosoap = r.random() < .065 and force is None
    fl, dirty = choose_flaws(r, clean)
    if force is not None:
        fl, dirty = ([force], True) if force >= 0 else ([], False)
    if nosoap:
        fl = []
    names = [FINDINGS[i] for i in fl]
    need = {NEED[n] for n in names if n in NEED}
    if "crack" in names and r.random() < .6:
        need.add("top")
    tricky = dirty is False and r.random() < .67
    p = .2 if tricky else (.05 if dirty else 0.0)
    tr = (r.random(len(TRICKS)) < p).astype(float)
    if tricky and tr.sum() == 0:
        tr[r.integers(len(TRICKS))] = 1
    topped = not ({"wrinkled-top"} & set(names)) and r.random() < (.5 if tricky else .3 if dirty else 0)
    if tr[3] or tr[11]:
        need = need | {"top"}
    rows, elev, target, fill, pose, mould, h = layout(r, need, topped, dirty)
    if pose.startswith("close") and {"dark-centre-ring", "brown-outside-in"} & set(names):
        fill = r.uniform(.7, 1.1)
    want = "layers" if "layer-gap" in names else "multi" if "colour-bled" in names else None
    if dirty is False and not tricky:
        want = "plain"
    d = dict(design(r, want, 1 if "crackle-network" in names and r.random() < .8 else 2 if {"white-specks", "powdery-film"} & set(names) and r.random() < .75 else 3 if set(names) & DARKEN and r.random() < .8 else 0))
    if tr[15]:
        d["pal"] = d["pal"] * lin(hsv(r.uniform(.05, .1), r.uniform(.3, .7), r.uniform(.5, .9)))
    if pose == "held" and r.random() < .85 and not nosoap:
        hand(r, rows, rows[0])
    if nosoap:
        rows = []
    soaprows = len(rows)
    nsoap = sum(v[21] > .5 for v in rows)
    slots = [None] * SLOTS
    i1, i2 = 0, SOAP
    extra = []
    spread = .8 if nosoap else max(.7, float(np.linalg.norm(h)))
    clutter(r, extra, target * [1, 1, 0], spread if not nosoap else .35, int(r.choice([0, 1, 2, 4], p=[.35, .25, .25, .15])) + 3 * nosoap)
    for v in rows + extra:
        if v[21] > .5 and i1 < SOAP:
            slots[i1] = v; i1 += 1
        elif v[21] < .5 and i2 < SLOTS:
            slots[i2] = v; i2 += 1
    d.update(solids=np.stack([np.zeros(40) + 1e-3 if v is None else v for v in slots]), used=np.array([v is not None for v in slots]).astype(float))
    d.update(camera(r, elev, target, fill, rows, nosoap)); d.update(lights(r)); d.update(table(r)); d.update(phone(r))
    d.update(tricks=tr, tu=r.random((len(TRICKS), 8)), fl=np.array((fl + [-1, -1, -1])[:3]), fu=r.random((3, 24)), fh=h,
             tricol=np.stack([palette(r, 2)[1] for _ in range(3)]), nosoap=float(nosoap), mould=float(mould), uneven=r.choice([0, .5, 1.]), uneven_f=r.uniform(8, 40),
             looks=float(not nosoap and (tr.sum() > 0 or topped or d["ne"] > 0 or d["va"] > 0 or d["kind"] in ("swirl", "vein", "ombre", "comb", "drop", "rings"))), seedoff=r.uniform(0, 60, 3))
    return d


def collate(items, device):
    """Stacks numbers to float tensors [B,...] and keeps the host lists."""
    out, host = {}, dict(items=items)
    for k, v in items[0].items():
        if isinstance(v, str):
            continue
        a = np.stack([np.asarray(i[k], np.float64) for i in items])
        out[k] = torch.tensor(a.reshape(-1).tolist(), dtype=torch.float32, device=device).view(*a.shape)
    used = np.stack([i["used"] for i in items])
    host["counts"] = [[int(b) for b in np.nonzero(used[:, k])[0]] for k in range(SLOTS)]
    return out, host
