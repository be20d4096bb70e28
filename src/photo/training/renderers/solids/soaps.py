"""Kinds of soap: colours, patterns, ornaments; and the parameters of flaws."""
import numpy as np

IDS = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
       "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
       "layer-gap", "wrinkled-top", "mould-dimples"]
LIGHT = ["ece2c6", "f2ecdc", "e3d2ac", "e9cfc4", "dfe2cb", "d9d6e6", "cfe0e4", "f0dfa0", "e8c9a4", "d6c7b0", "eadcd2"]
MID = ["c98f86", "9fb08a", "8fb3bf", "a58fb5", "d6a657", "c77b52", "7fa69a", "b7a27c", "d48fa4", "6f8fb0", "a9b94f",
       "c2a58a", "b5655a", "7d9a5c"]
DARK = ["3b3a3d", "5a4030", "27333d", "5e2f3c", "2f4a3c", "41365c", "6d4a2c", "1f5160", "7a3328"]
PIGMENT = ["2b4fa8", "1c7a4b", "b3262e", "222226", "6a2f8f", "c7551a", "0f7f86", "8c3a20", "c22a74", "3d2a1e"]


def lin(hexcol):
    c = np.array([int(hexcol[i:i + 2], 16) for i in (0, 2, 4)]) / 255.0
    return (c ** 2.2).astype(np.float32)


def pick(r, names, jitter=0.06):
    c = lin(names[r.integers(len(names))])
    return np.clip(c * (1 + jitter * r.normal(size=3)) * (1 + jitter * r.normal()), 0.004, 0.93)


def palette(r, n, tone):
    pools = {"light": [LIGHT], "any": [LIGHT, MID, MID, DARK], "tinted": [MID, MID, DARK], "pale": [LIGHT, LIGHT, MID]}[tone]
    cols = [pick(r, pools[r.integers(len(pools))])]
    for _ in range(40):
        if len(cols) >= n:
            break
        c = pick(r, [LIGHT, MID, DARK][r.integers(3)])
        if min(abs(np.sqrt(c) - np.sqrt(q)).sum() for q in cols[-2:]) > (0.3 if r.random() < .6 else .5):
            cols.append(c)
    return cols


def make_soap(r, kind, flaw_ids=(), pattern=None):
    need = [IDS[i] for i in flaw_ids]
    tone = "any"
    if any(k in need for k in ("orange-spots", "brown-outside-in")):
        tone = "light"
    elif any(k in need for k in ("powdery-film", "white-specks", "crackle-network")):
        tone = "tinted"
    elif any(k in need for k in ("coloured-specks", "smears")):
        tone = "pale"
    if pattern is None:
        pattern = r.choice([0, 1, 2, 3, 4, 5, 6], p=[.42, .10, .16, .14, .06, .06, .06])
        if any(k in need for k in ("coloured-specks", "smears", "crackle-network", "dark-centre-ring", "brown-outside-in")) and r.random() < 0.6:
            pattern = 0
    if "dark-centre-ring" in need and pattern not in (0, 4):  # a gel ring is read on an even ground
        pattern = 0
    if "layer-gap" in need:
        pattern = 1
    if "colour-bled" in need:
        pattern = [1, 2, 3, 5][r.integers(4)]
    if kind == 1 and pattern in (1, 4, 6):
        pattern = 0
    n = 1 if pattern == 0 else int(r.integers(2, 5))
    cols = palette(r, n, tone)
    if "colour-bled" in need:  # a strong dye beside a pale batter
        cols = [pick(r, LIGHT), pick(r, MID + DARK)] + ([pick(r, LIGHT)] if r.random() < .4 else [])
    n = len(cols)
    h = {0: [r.uniform(3.1, 4.4), r.uniform(2.5, 3.7), r.uniform(1.0, 1.5)],
         1: [r.uniform(3.4, 4.3), r.uniform(1.2, 1.7), r.uniform(2.4, 3.0)],
         2: [r.uniform(3.4, 4.3), r.uniform(1.1, 1.6), r.uniform(2.5, 3.2)]}[kind]
    return dict(kind=kind, pattern=int(pattern), ncol=n, col=np.concatenate((cols + [cols[0]] * 4)[:4]),
                freq=r.uniform(0.35, 1.3) if pattern != 3 else r.uniform(.4, 1.5), warp=r.uniform(0.2, 1.5), angle=r.uniform(0, 3.14), pa=r.uniform(-.6, .6), pb=r.uniform(-.4, .5),
                mottle=r.uniform(0.04, 0.22), gloss=r.uniform(0.15, 0.9), trans=r.uniform(0.3, 0.8), h=h,
                topstyle=int(r.integers(3)) if r.random() < .55 else 0, topfreq=r.uniform(0.5, 1.1), mica=r.uniform(.3, 1) if r.random() < 0.15 else 0,
                micacol=lin(["c9a24a", "b9b9bd", "b87f5a", "c58ba0"][r.integers(4)]), seed=int(r.integers(1, 9000)), deco=[])


DECEIVERS = dict(poppy=1, oats=2, coffee=3, line=4, glitter=5, stamp=6, dew=7, petals=8, embed=9, salt=10, crinkle=11,
                 band=12, rim=13, lint=14, crumbs=15)


def deco(r, name):
    col = {"line": ["c9a24a", "3a2416", "8d8d90"], "petals": ["d9921c", "7b6aa8", "b0455a"], "band": ["d9c9a5", "f0eee6", "b89b6e"],
           "glitter": ["d9c67a", "c9d2dc", "d99ab0"]}.get(name, LIGHT + MID + DARK)
    size = {"stamp": r.uniform(0.9, 1.5), "line": r.uniform(-1, 1), "embed": r.uniform(.6, 1.2)}.get(name, r.uniform(0.1, 1))
    return dict(type=DECEIVERS[name], amount=r.uniform(0.15, 1), size=size, col=pick(r, col), seed=int(r.integers(1, 9000)))


def make_flaw(r, i, soap, face, strength=None, extent=None, size=None):
    """A flaw with a random look; c is a point on the face that the camera sees."""
    h = soap["h"]
    c = [r.uniform(-.7, .7) * h[0], r.uniform(-.7, .7) * h[1], r.uniform(-.7, .7) * h[2]]
    if face == "cut":
        c[2] = h[2]
    elif face == "top":
        c[1] = h[1]
    elif face == "side":
        c[0] = h[0]
    pale = pick(r, ["f4f1ea", "f4f1ea", "e9e0cf"])
    base = np.mean(soap["col"][:3])
    col = pick(r, PIGMENT, 0.1) if base > 0.12 or r.random() < .3 else pale
    if IDS[i] == "smears" and r.random() < 0.3:
        col = pale if base < 0.5 else col
    return dict(id=i, look=int(r.integers(3)), strength=r.uniform(0.15, 1) if strength is None else strength,
                extent=r.uniform(0.05, 1) if extent is None else extent, size=r.uniform(0, 1) if size is None else size,
                bits=255, c=c, col=col, seed=int(r.integers(1, 9000)))
