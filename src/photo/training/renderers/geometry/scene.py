"""Random sampling of the 3D scene: objects, camera. One light python loop, numpy only."""
import numpy as np

FINDINGS = ["coloured-specks", "smears", "white-specks", "translucent-veins", "crackle-network", "powdery-film",
            "dark-centre-ring", "orange-spots", "pinholes", "crack", "brown-outside-in", "colour-bled", "drag-lines",
            "layer-gap", "wrinkled-top", "mould-dimples"]
K = len(FINDINGS)
# slot columns
C, R, H, RP, RE, TY, MAT, ML, WA, W1, W2, WP, UP, TO, FL, NCOL = 0, 3, 12, 15, 16, 17, 18, 19, 28, 30, 33, 36, 38, 41, 44, 46
CUT, TOP, MOULD, ANY = 0, 1, 2, 3
NEED = [CUT, CUT, ANY, ANY, ANY, TOP, CUT, ANY, ANY, TOP, ANY, CUT, CUT, CUT, TOP, MOULD]

M_CAV = np.eye(3)
M_SLC = np.array([[0, 0, 1], [1, 0, 0], [0, 1, 0]], float)   # shape -> loaf
R_STAND = np.array([[1, 0, 0], [0, 0, -1], [0, 1, 0]], float)
R_SIDE = np.array([[0, -1, 0], [0, 0, -1], [1, 0, 0]], float)
R_FLIP = np.diag([1.0, -1, -1])


def rz(a):
    c, s = np.cos(a), np.sin(a)
    return np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]])


def rx(a):
    c, s = np.cos(a), np.sin(a)
    return np.array([[1, 0, 0], [0, c, -s], [0, s, c]])


def ry(a):
    c, s = np.cos(a), np.sin(a)
    return np.array([[c, 0, s], [0, 1, 0], [-s, 0, c]])


def slot(cen, Rws, h, rp, re, ty, mat=0.0, M=M_CAV, wave=None, off=(0, 0, 0), fl=0.0):
    v = np.zeros(NCOL, np.float32)
    v[C:C + 3] = cen
    v[R:R + 9] = Rws.T.ravel()
    v[H:H + 3] = h
    re = min(re, min(h) * 0.98)
    rp = min(max(rp, re), min(h[0], h[1]) * 0.995)
    v[RP], v[RE], v[TY], v[MAT] = rp, re, ty, mat
    v[ML:ML + 9] = M.ravel()
    if wave is not None:
        v[WA:WA + 2] = wave[0]
        v[W1:W1 + 3] = M.T @ wave[1]
        v[W2:W2 + 3] = M.T @ wave[2]
        v[WP:WP + 2] = wave[3]
    v[UP:UP + 3] = M.T @ np.array([0, 0, 1.0])
    v[TO:TO + 3] = off
    v[FL] = fl
    return v


def support(Rws, h):
    return float(np.abs(Rws[2]) @ np.asarray(h))


def bar_kind(g, need):
    """form of the bar: 0 loaf slice, 1 cavity-mould bar"""
    p = {CUT: 0.97, TOP: 0.35, MOULD: 0.3, ANY: 0.62}[need]
    if g.random() < p:
        hy, hz = g.uniform(.3, .48), g.uniform(.26, .44)
        tx = g.uniform(.09, .2)
        rp = g.uniform(0, .05)
        if g.random() < .12:
            hy = hz = g.uniform(.32, .42); rp = hy
        h = (hy, hz, tx)
        wave = None
        if g.random() < .45:
            a = g.uniform(.005, .05) * np.array([1, g.random()])
            wave = (a, np.array([g.uniform(0, 8), g.uniform(4, 16), 0]), np.array([g.uniform(-8, 8), g.uniform(8, 26), 0]), g.uniform(0, 6.28, 2))
        return 0, h, rp, M_SLC, wave
    hx, hy, hz = g.uniform(.4, .52), g.uniform(.27, .38), g.uniform(.1, .19)
    r = g.random()
    rp = g.uniform(.01, .12)
    if r < .15:
        hx = hy; rp = hy
    elif r < .35:
        rp = hy * g.uniform(.5, 1)
    wave = None
    if g.random() < .25:
        wave = (g.uniform(.004, .02) * np.array([1, g.random()]), np.array([g.uniform(4, 14), g.uniform(-4, 4), 0]),
                np.array([g.uniform(-9, 9), g.uniform(8, 20), 0]), g.uniform(0, 6.28, 2))
    return 1, (hx, hy, hz), rp, M_CAV, wave


def face_rot(g, kind, need):
    """rotation for a lying bar so that a wanted face looks up; second: for a standing bar, face to the camera"""
    if kind == 0:
        if need == TOP:
            return R_STAND
        if need == MOULD:
            return R_SIDE if g.random() < .6 else ry(np.pi) @ R_STAND
        return np.eye(3)
    if need == MOULD or (need == ANY and g.random() < .4):
        return R_FLIP
    return np.eye(3)


def sample_picture(g, need, nosoap, aspect):
    S = []
    re = g.choice([g.uniform(.004, .02), g.uniform(.02, .07)])
    off = g.uniform(-20, 20, 3)
    arr = g.choice(9, p=[.33, .12, .08, .08, .08, .10, .05, .09, .07])
    zb = 0.0
    el = np.deg2rad(g.choice([g.uniform(72, 89.5), g.uniform(28, 72), g.uniform(10, 32)], p=[.32, .48, .2]))
    frac = g.uniform(.36, 1.0)
    if not nosoap and arr != 2 and g.random() < .16:      # cutting board, tray or sheet of paper below
        t = g.choice([.05, .004, .02])
        rr = rz(g.uniform(0, 6.28))
        S.append(slot([g.uniform(-.3, .3), g.uniform(-.3, .3), t], rr, (g.uniform(.8, 2.2), g.uniform(.7, 1.5), t), g.uniform(0, .3), t * .4, 2, g.choice([1, 2, 3, 8])))
        zb = 2 * t
    pts = []
    if nosoap:
        m = g.integers(0, 6)
        if g.random() < .3:                                # animal-like blob
            for q in range(4):
                r = g.uniform(.15, .5)
                S.append(slot([g.uniform(-.5, .5), g.uniform(-.4, .4), r * .8], rz(g.uniform(0, 6)), (r * g.uniform(1, 1.6), r, r * .95), r, r * .9, 2, 0))
        else:
            for q in range(m):
                f = g.integers(0, 4)
                h = [(.4, .3, .2), (.45, .45, .05), (.22, .22, .35), (.25, .25, .25)][f] * g.uniform(.5, 1.6, 3)
                rp = [g.uniform(.0, .08), 9, 9, 9][f]
                S.append(slot([g.uniform(-.8, .8), g.uniform(-.6, .6), h[2]], rz(g.uniform(0, 6)), tuple(h), rp, [.01, .03, .03, .24][f], 2, g.integers(0, 10)))
        pts = [[0, 0, .2]]
        ext = g.uniform(.6, 2.2)
        tgt = np.array([0, 0, .1])
    elif arr == 2:                                        # held
        kind, h, rp, M, wv = bar_kind(g, need)
        el = np.deg2rad(g.uniform(8, 80))
        cdir = np.array([0, -np.cos(el), np.sin(el)])
        zax = cdir + g.normal(0, .22, 3); zax /= np.linalg.norm(zax)
        if need == MOULD and kind == 1:
            zax = -zax
        up = np.array([0, np.sin(el), np.cos(el)])
        xax = np.cross(up, zax); xax /= np.linalg.norm(xax)
        B = np.stack([xax, np.cross(zax, xax), zax], 1) @ rz(g.normal(0, .5) + (np.pi if g.random() < .5 else 0))
        cen = np.array([0, 0, g.uniform(.5, 2.5)])
        S.append(slot(cen, B, h, rp, re, 1, 0, M, wv, off, 1))
        sx = -1
        f = -1.0 if (zax @ cdir) < 0 else 1.0
        add = lambda q, hh, ry_, A=np.eye(3): S.append(slot(cen + B @ np.array(q), B @ A, hh, ry_, ry_, 2, 9))
        fr_ = g.uniform(.055, .075)
        for q in range(3):
            add([.06 + g.uniform(-.05, .05), (q - 1) * .16 + g.uniform(-.02, .02), -f * (h[2] + fr_)], (h[0] + g.uniform(.02, .12), fr_, fr_), fr_, rz(g.normal(0, .12)))
        add([-h[0] - .02 + g.uniform(-.05, .12), g.uniform(-.2, .2), f * (h[2] + fr_ * .8)], (.24, fr_ * 1.15, fr_), fr_, rz(g.normal(0, .5)))
        add([-h[0] - .42, 0, -f * (h[2] + .05)], (.42, .33, .13), .12)
        ext, tgt = 2 * max(h[:2]), cen
    else:
        pal = g.random() < .6
        multi = {3: 4, 4: 5, 7: 4}.get(int(arr), 1)
        nb = g.integers(2, multi + 1) if multi > 1 else 1
        z = zb
        if arr in (5, 6):                                 # loaf
            h = (g.uniform(.8, 1.6), g.uniform(.3, .45), g.uniform(.24, .42))
            wv = None
            if g.random() < .7:
                wv = (g.uniform(.004, .07) * np.array([1, g.random()]), np.array([g.uniform(3, 18), g.uniform(-6, 6), 0]), np.array([g.uniform(-5, 5), g.uniform(3, 14), 0]), g.uniform(0, 6.28, 2))
            yaw = np.pi / 2 + g.normal(0, .5) if need == CUT else g.uniform(0, 6.28)
            up = ry(np.pi) if need == MOULD and g.random() < .5 else np.eye(3)
            rr = rz(yaw) @ up
            S.append(slot([0, 0, z + h[2]], rr, h, g.uniform(.0, .06), re, 1, 0, M_CAV, wv, off, 1))
            if arr == 6:
                d = rz(yaw) @ np.array([-1.0, 0, 0]); x = -h[0]
                for q in range(g.integers(1, 4)):
                    tx = g.uniform(.1, .16); x -= tx + g.uniform(.004, .1)
                    R_ = rz(yaw + g.normal(0, .07)) @ np.array([[0, 0, 1], [1, 0, 0], [0, 1, 0]], float)
                    c = -d * x
                    c = rz(yaw) @ np.array([x, 0, 0]); c[2] = z + h[2]
                    S.append(slot(c, R_, (h[1], h[2], tx), .01, re, 1, 0, M_SLC, None if wv is None else wv, off + M_SLC.T @ np.array([0, 0, 0]), 1))
                    x -= tx
                if need == CUT or g.random() < .5:
                    rot = rz(-np.pi / 2 + np.pi + g.normal(0, .5) - yaw + np.pi)
                    for s in S[-(len(S)):]:
                        if s[TY] == 1:
                            s[C:C + 3] = rot @ s[C:C + 3]; s[R:R + 9] = (rot @ s[R:R + 9].reshape(3, 3).T).T.ravel()
            ext = 2 * h[0] * g.uniform(.5, 1.05) if g.random() < .75 else .9
            tgt = np.array([0, 0, h[2]]) + (0 if g.random() < .4 else 1) * S[-1][C:C + 3] * g.uniform(0, 1)
            frac = g.uniform(.5, 1.15)
        else:
            kind, h, rp, M, wv = bar_kind(g, need)
            F0 = face_rot(g, kind, need)
            x = 0.0
            for q in range(nb):
                if arr in (0, 7, 8):
                    Rw = rz(g.uniform(0, 6.28) if g.random() < .6 else g.normal(0, .12) + np.pi / 2 * g.integers(0, 4)) @ F0
                    if arr == 7 and kind == 0 and g.random() < .2:
                        Rw = rz(g.normal(0, .6)) @ R_STAND
                    c = np.array([0, 0, 0.0]) if arr != 7 else np.array([(q % 2) * g.uniform(.85, 1.15), (q // 2) * g.uniform(.75, 1.05), 0]) - [.4 * (nb > 1), .4 * (nb > 2), 0]
                    if arr == 0 and g.random() < .12:      # leaning
                        Rw = rx(g.uniform(.1, .5)) @ Rw
                    c[2] = zb + support(Rw, h)
                elif arr == 1:                            # standing
                    Rw = rz(g.normal(0, .45)) @ rx(g.normal(0, .08)) @ (R_STAND if g.random() < .6 or kind else R_SIDE) @ rz(0 if g.random() < .7 else np.pi)
                    c = np.array([0, 0, zb + support(Rw, h)])
                    el = np.deg2rad(g.uniform(4, 38))
                elif arr == 3:                            # stack
                    Rw = rz(g.normal(0, .35)) @ F0
                    c = np.array([g.normal(0, .04), g.normal(0, .04), z + support(Rw, h)])
                    z += 2 * support(Rw, h)
                else:                                     # row of slices
                    Rw = rz(.35) @ R_STAND if q == 0 else rz(.35 + g.normal(0, .05)) @ R_STAND
                    c = rz(.35) @ np.array([0, x, 0]); c[2] = zb + support(Rw, h)
                    x += 2 * h[2] + g.choice([.01, .05, .2])
                    el = np.deg2rad(g.uniform(12, 55))
                S.append(slot(c, Rw, h, rp, re, 1, 0, M, wv, off + (0 if pal else g.uniform(-9, 9, 3)), 1 if (q == nb - 1 or q == 0 or g.random() < .7) else 0))
            cs = np.array([s[C:C + 3] for s in S if s[TY] == 1])
            tgt = cs.mean(0)
            ext = max(2 * max(h), float(np.ptp(cs, 0).max()) + 1.5 * max(h))
            if arr == 8:
                frac = g.uniform(1.2, 2.6); tgt = tgt + g.uniform(-.18, .18, 3) * [1, 1, 0]
    if not nosoap and arr != 2:                           # distractors
        for q in range(g.choice(4, p=[.6, .22, .12, .06])):
            a = g.uniform(0, 6.28); r = ext * .5 + g.uniform(.35, .8)
            f = g.integers(0, 5)
            h = np.array([(.25, .2, .1), (.4, .4, .03), (.2, .2, .3), (.5, .05, .01), (.35, .25, .002)][f]) * g.uniform(.7, 1.5, 3)
            S.append(slot([r * np.cos(a), r * np.sin(a) + (.3 if el < .5 else 0), h[2]], rz(g.uniform(0, 6)), tuple(h), [.04, 9, 9, .05, 0][f], min(.02, h[2] * .7), 2, g.choice([0, 1, 2, 3, 4, 5, 6, 7])))
    fov = np.deg2rad(g.uniform(18, 68))
    d = ext / frac / (2 * np.tan(fov / 2)) + .1
    tgt = tgt + g.normal(0, .05, 3) * ext * np.array([1, 1, 0])
    cam = tgt + d * np.array([0, -np.cos(el), np.sin(el)])
    fw = (tgt - cam) / np.linalg.norm(tgt - cam)
    rt = np.cross(fw, [0, 0, 1.0]); rt /= np.linalg.norm(rt) + 1e-9
    u = np.cross(rt, fw)
    ro = g.normal(0, .06) if g.random() < .7 else g.normal(0, .5)
    rt, u = np.cos(ro) * rt + np.sin(ro) * u, np.cos(ro) * u - np.sin(ro) * rt
    camv = np.concatenate([cam, rt, u, fw, [np.tan(fov / 2), d]]).astype(np.float32)
    return S, camv
