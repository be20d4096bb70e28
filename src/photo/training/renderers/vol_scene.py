"""Chance and layout: what lies where, of which colour, seen from where (numpy, one picture at a time)."""
import math
import numpy as np
from vol_look import palette, design, lin, hsv

FINDINGS = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
            "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
            "layer-gap", "wrinkled-top", "mould-dimples"]
TRICKS = ["mica", "glitter", "exfol", "petals", "stamp", "wire", "dew", "gobo", "band", "crumbs", "lint", "salt",
          "dots", "vein", "glare", "browner", "darkcore"]
NEED = dict(smears="cut", **{"drag-lines": "cut", "dark-centre-ring": "cut", "wrinkled-top": "top",
                             "mould-dimples": "side", "layer-gap": "cut"})
SOAP, SLOTS = 6, 14


def frame(up, front):
    """World-from-local rotation that brings local `up` to z and local `front` to -y."""
    m = np.stack([np.cross(-np.array(front), np.array(up)), -np.array(front), np.array(up)])
    return m.astype(float)


def turn_z(a):
    c, s = math.cos(a), math.sin(a)
    return np.array([[c, -s, 0], [s, c, 0], [0, 0, 1.0]])


def turn_x(a):
    c, s = math.cos(a), math.sin(a)
    return np.array([[1.0, 0, 0], [0, c, -s], [0, s, c]])


def solid(rows, centre, rot, h, **kw):
    """Appends one solid's row; rot is world-from-local."""
    v = np.zeros(40)
    v[0:3], v[3:12], v[12:15] = centre, rot.T.reshape(-1), h
    v[15], v[16], v[17] = kw.get("r", .02), kw.get("norm", 2), kw.get("foot", 0)
    v[18:21] = kw.get("rough", 0), kw.get("relief", 0), kw.get("scale", 4)
    v[21], v[25], v[26], v[31] = kw.get("soap", 0), kw.get("gloss", .5), kw.get("tex", .1), kw.get("texs", 4)
    v[22:25], v[27:30] = kw.get("col", (.5, .5, .5)), kw.get("off", (0, 0, 0))
    v[30], v[32] = kw.get("top", 1), kw.get("stretch", 1.0)
    rows.append(v)


def bar_shape(r, mould):
    """Half size and rounding of a bar."""
    if mould:
        h = np.array([.5, r.uniform(.3, .5), r.uniform(.13, .24)])
        foot = r.choice([0, 2.0, 2.0, 3.0, 4.5, 8])
        if foot and r.random() < .5:
            h[1] = h[0]
        kw = dict(r=min(h[2] * r.uniform(.25, .98), .2), foot=foot, norm=r.choice([2, 2, 2.6, 1.5]), top=2)
    else:
        h = np.array([.5, r.uniform(.3, .55), r.uniform(.12, .26)])
        kw = dict(r=r.choice([r.uniform(.004, .02), r.uniform(.02, .05), r.uniform(.05, .1)], p=[.45, .35, .2]),
                  foot=0, norm=r.choice([2.0, 1.25, 3.0], p=[.6, .25, .15]), top=1)
    kw.update(rough=r.choice([.003, .01, .02], p=[.5, .35, .15]), scale=r.uniform(2, 6), soap=1,
              gloss=r.choice([.15, .35, .7, 1.0]))
    return h, kw


POSE = {"cut": ["lying", "stand", "held", "stack", "several", "close", "loafend", "lying", "slices"],
        "top": ["stand", "loaf", "closetop", "several_st"], "side": ["side", "loaf", "stand_turn", "closeside"],
        "cut+top": ["stand", "loafend", "several_st"], "cut+side": ["stand_turn", "loafend"],
        "side+top": ["loaf", "stand_turn"], "cut+side+top": ["stand_turn", "loafend"]}


def layout(r, need, topped, dirty):
    """Solids of soap and the camera aim: rows, elevation, target, apparent width."""
    key = "+".join(sorted(need)) or "cut"
    pose = r.choice(POSE[key])
    if not need and r.random() < .25:
        pose = r.choice(["loaf", "closetop", "side", "several_st"])
    mould = r.random() < .22 and pose in ("lying", "held", "stack", "several", "close", "side", "closeside")
    h, kw = bar_shape(r, mould)
    kw["off"] = r.uniform(-9, 9, 3)
    if topped and not mould:
        kw["relief"], kw["stretch"] = r.uniform(.02, .14), r.choice([1.0, .3, 1.0])
    rows, up, fr = [], (0, 0, 1), [(0, -1, 0), (1, 0, 0), (0, 1, 0)][r.integers(3)]
    elev, yaw, fill, centre = r.uniform(38, 89), r.uniform(-3.1, 3.1), r.uniform(.6, 1.15) if dirty else r.uniform(.45, 1.1), None
    if pose.startswith(("stand", "several_st", "slices")):
        up, fr = (0, 1, 0), (0, 0, 1)
        elev, yaw = r.uniform(4, 55), r.uniform(-.6, .6)
        if "top" in need:
            elev = r.uniform(25, 65)
        if pose == "stand_turn":
            yaw = r.choice([-1, 1]) * r.uniform(.5, 1.1)
    if pose in ("side", "closeside"):
        up, fr = [((0, 1, 0), (1, 0, 0)), ((1, 0, 0), (0, 0, 1)), ((0, -1, 0), (0, 0, 1)), ((1, 0, 0), (0, -1, 0))][r.integers(4)]
        if mould:
            up, fr = (0, 0, -1), (0, -1, 0)
        elev, yaw = (r.uniform(10, 50), r.uniform(-.5, .5)) if up[0] == 0 and up[2] == 0 else (r.uniform(40, 85), r.uniform(-3, 3))
    if pose == "closetop":
        up, fr, elev = (0, 1, 0), (0, 0, 1), r.uniform(45, 88)
        h[2] *= r.uniform(1, 3)
    if pose.startswith("loaf"):
        up, fr = (0, 1, 0), (0, 0, 1)
        h[2] = r.uniform(1.0, 2.2)
        elev = r.uniform(15, 60)
        yaw = r.choice([-1, 1]) * (r.uniform(.15, .7) if pose == "loafend" else r.uniform(.7, 1.57))
    rot0 = frame(up, fr)
    ext = np.abs(rot0) @ h
    nb, off = 1, kw["off"]
    if pose == "stack":
        nb = r.integers(2, 5)
        for i in range(nb):
            kw["off"] = off + np.array([0, 0, i * 2.2 * h[2]])
            solid(rows, np.array([r.normal(0, .05), r.normal(0, .05), ext[2] * (2 * i + 1)]),
                  turn_z(yaw + r.normal(0, .25)) @ rot0, h, **kw)
        elev = r.uniform(38, 75) if "cut" in need else r.uniform(12, 60)
        centre = np.array([0, 0, ext[2] * nb])
    elif pose.startswith("several") or pose == "slices":
        nb, k = r.integers(2, 7), 0
        per = r.integers(1, 4) if pose == "several" else nb
        gx = ext[1 if pose == "slices" else 0] * 2 + r.choice([.02, .15, .4]) + (.06 if pose == "slices" else 0)
        for i in range(nb):
            kw["off"] = off + np.array([0, 0, i * 2.2 * h[2]])
            gy = (i // per) * (ext[1] * 2 + .15)
            c = np.array([(i % per) * gx, gy, ext[2]]) if pose != "slices" else np.array([i * .25, i * gx, ext[2]])
            jit = r.choice([.02, .3]) if gx > 2 * ext[0] + .3 else .03
            solid(rows, turn_z(yaw * (pose == "several")) @ c, turn_z((yaw if pose != "slices" else 0) * (pose == "several") + r.normal(0, jit)) @ rot0, h, **kw)
        if pose == "several":
            elev = r.uniform(30, 88)
        fill *= r.choice([1, .7])
        centre = np.mean([q[0:3] for q in rows], 0)
        centre = rows[r.integers(len(rows))][0:3] * .6 + centre * .4
    else:
        z = ext[2]
        lift = turn_z(0)
        if pose == "held":
            z, lift = r.uniform(1.2, 3), turn_x(r.uniform(-.3, 1.0)) @ turn_z(r.normal(0, .2))
            elev = r.uniform(10, 60)
        solid(rows, np.array([0, 0, z]), lift @ turn_z(yaw) @ rot0, h, **kw)
        centre = np.array([0, 0, z])
        if pose == "loafend":
            centre = rows[0][0:3] + turn_z(yaw) @ np.array([0, -h[2] * r.uniform(.3, 1), 0])
            if r.random() < .4:
                kw["off"] = off + np.array([0, 0, h[2] * 1.2])
                h2 = h.copy(); h2[2] = r.uniform(.1, .2)
                a = r.uniform(-.6, .6)
                solid(rows, rows[0][0:3] + turn_z(yaw) @ np.array([r.uniform(-.3, .3), -h[2] - .3 - .5 * abs(a), 0]), turn_z(yaw + a) @ rot0, h2, **kw)
    if pose.startswith("close"):
        fill = r.uniform(1.0, 1.65)
    return rows, elev, centre, fill, pose, mould, h


def hand(r, rows, soap_row):
    """Fingers as capsules gripping the first bar."""
    skin = lin(hsv(r.uniform(.03, .075), r.uniform(.3, .6), r.uniform(.35, .95)))
    rot, h, c = soap_row[3:12].reshape(3, 3).T, soap_row[12:15], soap_row[0:3]
    ax, n = r.integers(2), r.integers(2, 5)
    side = r.choice([-1, 1])
    for i in range(n + 1):
        sd = side if i < n else -side
        loc, rr = np.zeros(3), r.uniform(.075, .1)
        loc[ax] = sd * (h[ax] + rr * .6)
        loc[1 - ax] = (i - n / 2) * .2 if i < n else r.uniform(-.15, .15)
        loc[2] = r.uniform(-.05, .08)
        a = r.uniform(.2, .7)
        d = np.zeros(3); d[2] = math.sin(a) * -1; d[ax] = sd * math.cos(a); d[1 - ax] = r.uniform(-.3, .3)
        d /= np.linalg.norm(d)
        b = np.cross(d, [.3, .5, .8]); b /= np.linalg.norm(b)
        m = np.stack([d, b, np.cross(d, b)], 1)
        ln = r.uniform(.3, .5)
        solid(rows, c + rot @ (loc + d * (ln - .14)), rot @ m, np.array([ln, rr, rr]), r=rr * .98, col=skin, gloss=.3, tex=.08, texs=9)


def clutter(r, rows, centre, spread, count):
    """Cups, sticks, berries, boards and other things beside the soap."""
    for _ in range(count):
        kind, a = r.integers(6), r.uniform(0, 6.28)
        d = spread * r.uniform(1.1, 2.2)
        x, y = centre[0] + d * math.cos(a), centre[1] + d * abs(math.sin(a)) * r.choice([1, 1, -.6])
        col = lin(hsv(r.random(), r.choice([.05, .3, .8]), r.uniform(.1, .95)))
        kw = dict(col=col, gloss=r.choice([.1, .5, 1.5]), tex=r.choice([.03, .2, .5]), texs=r.uniform(2, 15))
        if kind == 0:
            q = r.uniform(.15, .5); h = np.array([q, q, r.uniform(.1, .6)]); kw.update(foot=2, r=.03)
        elif kind == 1:
            q = r.uniform(.03, .09); h = np.array([r.uniform(.3, 1), q, q]); kw.update(r=q * .98)
        elif kind == 2:
            q = r.uniform(.05, .2); h = np.array([q, q, q]); kw.update(r=q * .98)
        elif kind == 3:
            h = np.array([r.uniform(.3, .9), r.uniform(.2, .6), r.uniform(.02, .2)]); kw.update(r=.012)
        elif kind == 4:
            h = np.array([r.uniform(.1, .4), r.uniform(.05, .15), .012]); kw.update(foot=1.7, r=.008, col=lin(hsv(r.uniform(.18, .4), .6, r.uniform(.2, .6))))
        else:
            q = r.uniform(.3, .8); h = np.array([q, q, .05]); kw.update(foot=2, r=.04, gloss=1.5)
        if len(rows) < SLOTS:
            solid(rows, np.array([x, y, h[2]]), turn_z(r.uniform(0, 6.28)), h, **kw)
