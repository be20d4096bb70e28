"""What lies where: bars, poses, camera, light. Random choices made with numpy, then handed to the device."""
import numpy as np
import torch

ORI = {"y": np.eye(3), "z": np.array([[1, 0, 0], [0, 0, 1], [0, -1, 0]], float),
       "x": np.array([[0, 0, -1], [1, 0, 0], [0, -1, 0]], float)}
UP = {"y": 1, "z": 2, "x": 0}
K = 6
FACE = ["cut", "cut", "cut", "cut", "cut", "top", "cut", "cut", "cut", "top", "cut", "cut", "cut", "cut", "top", "side"]
TINY = {0, 2, 4, 8, 12}


def yaw(a):
    c, s = np.cos(a), np.sin(a)
    return np.array([[c, 0, s], [0, 1, 0], [-s, 0, c]])


def roll(a, ax):
    c, s = np.cos(a), np.sin(a)
    return np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]]) if ax == "z" else np.array([[1, 0, 0], [0, c, -s], [0, s, c]])


def place(rs, want, b):
    """returns bars [(R, c, b)], elevation range, close-up chance, hand?"""
    bw, bh, bt = b
    f = {"cut": ["lie", "stand", "stand", "stack", "row", "lean", "grid", "hand", "loafcut", "lie"],
         "top": ["loaf", "loaf", "block", "row", "loafcut", "stand", "hand"],
         "side": ["loaf", "sideup", "block", "sideup", "stack"]}[want]
    pose = f[rs.randint(len(f))]
    out, el = [], (15, 55)
    j = lambda s: rs.uniform(-s, s)
    if pose == "lie":
        el = (38, 88)
        m = rs.choice([1, 1, 2, 3])
        for q in range(m):
            out.append((yaw(j(.7)) @ ORI["z"], [(q - (m - 1) / 2) * (2.3 * max(bw, bh)) + j(.4), bt, j(1.5)], b))
    elif pose == "stand":
        m = rs.choice([1, 1, 2])
        for q in range(m):
            out.append((yaw(j(.75)), [(q - (m - 1) / 2) * 2.6 * bw, bh, -q * 2.5 + j(.5)], b))
        el = (8, 42) if want == "cut" else (30, 65)
    elif pose == "stack":
        m = rs.randint(2, 5)
        o = "z" if want == "cut" and rs.rand() < .6 else "x"
        e = b[UP[o]]
        for q in range(m):
            out.append((yaw(j(.35) + (0 if o == "z" else 1.57)) @ ORI[o], [j(.5), e * (2 * q + 1) + .02 * q, j(.4)], b))
        el = (35, 75) if o == "z" or want == "side" else (10, 45)
    elif pose == "row":
        m = rs.randint(3, 7)
        a = rs.choice([-1, 1]) * rs.uniform(.25, 1.0)
        Y = yaw(a)
        for q in range(m):
            p = Y @ np.array([j(.15), 0, ((m - 1) / 2 - q) * (2 * bt + rs.uniform(.1, .9))])
            out.append((yaw(a + j(.06)), [p[0], bh, p[2]], b))
        el = (15, 50) if want == "cut" else (35, 75)
    elif pose == "lean":
        out.append((yaw(j(.3)) @ ORI["z"], [j(.3), bt, 0], b))
        a = -rs.uniform(.25, .6)
        out.append((yaw(j(.3)) @ roll(a, "x"), [j(.6), bh * np.cos(a) + bt * abs(np.sin(a)) + .02, -bh - bt - 1.], b))
        el = (18, 60)
    elif pose == "grid":
        el = (60, 88)
        cols = 3 if rs.rand() < .6 else 2
        for q in range(rs.choice([4, 6]) if cols == 2 else 6):
            out.append((yaw(j(.06) + (np.pi if rs.rand() < .3 else 0)) @ ORI["z"],
                        [(q % cols - (cols - 1) / 2) * (2 * bw + .8), bt, (q // cols - .5) * (2 * bh + .8)], b))
    elif pose == "hand":
        out.append((yaw(j(.4)) @ roll(j(.3), "z") @ roll(rs.uniform(-.7, .1) if want == "cut" else rs.uniform(.3, 1.0), "x"),
                    [0, 12, 0], b))
        el = (0, 40)
    elif pose in ("loaf", "block", "loafcut"):
        Ln = rs.uniform(7, 13) if pose == "loaf" else rs.uniform(4, 8)
        lb = (bw, bh, Ln)
        a = rs.choice([-1, 1]) * (rs.uniform(.9, 1.5) if want != "cut" else rs.uniform(.2, .9))
        Y = yaw(a)
        out.append((Y, [0, bh, 0], lb))
        if pose == "loafcut":
            for q in range(rs.randint(1, 4)):
                p = Y @ np.array([j(.3), 0, Ln + 1 + bt + q * (2 * bt + rs.uniform(.3, 1.6))])
                out.append((yaw(a + j(.1)), [p[0], bh, p[2]], b))
        el = {"cut": (12, 50), "top": (38, 85), "side": (8, 40)}[want]
    elif pose == "sideup":
        for q in range(rs.randint(1, 4)):
            out.append((yaw(1.57 + j(.5)) @ ORI["x"], [q * (2 * bt + 3.5) - 1.5, bw, j(1)], b))
        el = (30, 85)
    return out, el, pose


def make(rs, n, dev, plan):
    S = type("S", (), {})()
    A = {k: [] for k in "R c b live rc r top eye cam fov wall light hard fa fb fr lensk zoff".split()}
    S.pose, hand = [], []
    for q in range(n):
        fl = plan["flaws"][q]
        want = FACE[fl[0]] if fl else rs.choice(["cut", "cut", "cut", "top", "side"])
        if fl and fl[0] == 9:
            want = rs.choice(["cut", "top"])
        if fl and fl[0] == 5:
            want = rs.choice(["top", "top", "cut", "side"])
        if fl and fl[0] == 15 and rs.rand() < .3:
            want = "cut"
        sh = rs.rand()
        b = (rs.uniform(2.6, 4.6), rs.uniform(2.2, 4.2), rs.uniform(.9, 1.8))
        rc = rs.uniform(.05, .5)
        if sh < .16 and want == "cut":
            b = (b[0], b[0], b[2]); rc = b[0] * .995
        elif sh < .28 and want == "cut":
            rc = min(b[0], b[1]) * rs.uniform(.5, .98)
        bars, el, pose = place(rs, want, b)
        S.pose.append(pose)
        if plan["kind"][q]:
            bars = bars[:rs.choice([0, 1, 1, 2])]
            rc = min(b[0], b[1]) * rs.choice([.1, .99])
        Rs, cs, bs = np.tile(np.eye(3), (K, 1, 1)), np.tile([0., -99, 0], (K, 1)), np.ones((K, 3))
        lv = np.zeros(K)
        for k, (R, c, bb) in enumerate(bars[:K]):
            Rs[k], cs[k], bs[k], lv[k] = R, c, bb, 1
        big = pose in ("loaf", "block", "loafcut")
        amp = rs.choice([0, rs.uniform(.03, .2), rs.uniform(.1, .35)]) if rc < 1 and pose not in ("stack", "lean") else 0
        A["top"].append([amp, rs.uniform(.6, 2.5), rs.uniform(.4, 2), rs.uniform(0, 6), rs.uniform(0, .25) if amp else 0])
        cl = cs[:max(len(bars), 1)] if bars else np.zeros((1, 3))
        tgt = cl.mean(0) if rs.rand() < .7 else cl[rs.randint(len(cl))].copy()
        rad = np.abs(cl - tgt).max() + (max(b) if not big else 7)
        p_close = .3 + .3 * bool(fl and fl[0] in TINY)
        close = rs.rand() < p_close
        fill = rs.uniform(.65, 1.3) if not close else rs.uniform(1.2, 2.4)
        if close and bars:
            kk = rs.randint(len(bars))
            tgt = cs[kk] + Rs[kk] @ (np.array([rs.uniform(-.5, .5), rs.uniform(-.5, .5), 1]) * bs[kk] if want == "cut"
                                     else np.array([0, 1, rs.uniform(-.6, .6)]) * bs[kk] if want == "top" else np.zeros(3))
            rad = max(b)
        e = np.deg2rad(rs.uniform(*el)); az = rs.uniform(-.25, .25)
        fov = np.tan(np.deg2rad(rs.uniform(34, 66)) / 2)
        dist = max(rad / fov / fill, 5.0) + (0 if close else b[2])
        tgt = tgt + rs.uniform(-.12, .12, 3) * rad
        eye = tgt + dist * np.array([np.sin(az) * np.cos(e), np.sin(e), np.cos(az) * np.cos(e)])
        eye[1] = max(eye[1], 1.0)
        zc = (eye - tgt) / np.linalg.norm(eye - tgt)
        xc = np.cross([0, 1, 0], zc) if e < 1.45 else np.array([1., 0, 0])
        xc /= np.linalg.norm(xc)
        cam = np.stack([xc, np.cross(zc, xc), zc], 1) @ roll(rs.normal(0, .06) + (rs.rand() < .08) * 1.57, "z")
        la, le = rs.uniform(0, 6.28), np.deg2rad(rs.uniform(22, 75))
        if np.sin(la) < -.5 and rs.rand() < .5:
            la = -la
        fa, fb, fr = np.zeros((7, 3)), np.ones((7, 3)), np.ones(7)
        if pose == "hand" and bars:
            hand.append(q)
            R, c = Rs[0], cs[0]
            s = rs.choice([-1, 1])
            sk = rs.uniform(.7, .95)
            zb = -b[2] - .7
            for f in range(4):
                y = (-.75 + .5 * f) * b[1]
                fa[f] = c + R @ [s * (b[0] + 3.2), y * .9 - .5, zb - .8]
                fb[f] = c + R @ [-s * b[0] * rs.uniform(.1, .5), y, zb - .05]
                fr[f] = sk
            fa[4] = c + R @ [s * (b[0] + 3.4), -b[1] - .4, zb + .6]
            fb[4] = c + R @ [s * (b[0] * .72), -b[1] * rs.uniform(.1, .7), b[2] + .65]
            fr[4] = sk * 1.05
            fa[5] = c + R @ [s * (b[0] + 3.0), b[1] * .3, zb - .3]; fb[5] = c + R @ [s * (b[0] + 4.2), -b[1] * 1.2, zb - .2]; fr[5] = 2.0
            fa[6] = c + R @ [s * (b[0] + 4.5), -b[1] * .5, zb - .4]; fb[6] = c + R @ [s * (b[0] + 14), -b[1] - 6, zb - 3]; fr[6] = 2.6
        for k, v in dict(R=Rs, c=cs, b=bs, live=lv, rc=rc, r=rs.uniform(.04, .22) if rs.rand() < .75 else rs.uniform(.2, .5),
                         eye=eye, cam=cam, fov=fov, wall=rs.uniform(9, 50), hard=np.exp(rs.uniform(.4, 3.6)),
                         light=[np.cos(la) * np.cos(le), np.sin(le), np.sin(la) * np.cos(le)], fa=fa, fb=fb, fr=fr,
                         lensk=rs.normal(0, .012), zoff=np.cumsum(rs.uniform(2, 4, K)) + rs.uniform(0, 40)).items():
            A[k].append(v)
    for k, v in A.items():
        v = torch.from_numpy(np.asarray(v, np.float32)).to(dev)
        if k in ("rc", "r", "fov", "wall", "hard", "lensk"):
            v = v.view(n, 1, 1, 1)
        setattr(S, k, v)
    S.r = torch.minimum(S.r, S.rc * .9 + .02)
    S.top = S.top.view(n, 5, 1, 1)
    S.n, S.dev, S.K = n, dev, K
    live = np.asarray(A["live"])
    S.alive = [torch.from_numpy(np.nonzero(live[:, k])[0]).to(dev) for k in range(K)]
    S.hand = torch.tensor(hand, dtype=torch.long, device=dev)
    return S
