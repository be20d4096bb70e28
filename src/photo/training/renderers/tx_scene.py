"""Tables, backgrounds, cut-outs of things, hands, shadows, no-soap pictures. All colours are linear light."""
import numpy as np
import torch
import torch.nn.functional as F
from tx_bank import fetch, samp, smooth, turn
from tx_camera import box
from tx_marks import dots


def tint(R, x, n, amt=.12):
    """Recolour: brightness, saturation and cast."""
    g = x.mean(1, keepdim=True)
    x = (g + (x - g) * R.u(.15, 1.3, n)) * R.logu(.55, 1.5, n)
    return (x * (1 + R.t(R.rs.normal(0, amt, (n, 3))))).clamp(0, 1)


def table(R, bk, X, Y):
    """Table and background of each picture, 0..1 (gamma)."""
    n, _, H, W = X.shape
    rs = R.rs
    hor = R.t(np.where(rs.rand(n) < .35, rs.uniform(-1.1, -.1, n), -3.))
    dep = 1 / (Y - hor + .25).clamp_min(.05)
    persp = (hor > -2).float()
    x, y = torch.where(persp > 0, X * dep, X), torch.where(persp > 0, dep * R.u(1, 2, n), Y)
    a, b = turn(x, y, R.u(0, 6.28, n), R.logu(.16, 1.1, n), R.u(0, 2, n), R.u(0, 2, n))
    g = fetch(bk.tex, bk.pick(rs, "table", n))
    tex = tint(R, samp(g, a, b), n)
    fine = samp(fetch(bk.hp, bk.pick(rs, "all", n)), a * 2.3 + .1, b * 2.3)
    flat = R.t(np.where(rs.rand(n, 1) < .45, rs.uniform(.75, 1, (n, 1)) + rs.normal(0, .02, (n, 3)), rs.uniform(.05, 1, (n, 3)) * .45 + .5 * rs.rand(n, 1))).clamp(.02, 1)
    flat = (flat + fine * R.logu(.002, .06, n)).clamp(0, 1)
    # cloth: checks, stripes, lace holes
    u, v = turn(x, y, R.u(0, 3.14, n), R.logu(2, 16, n), 0, 0)
    chk = ((torch.sin(u * 3.14) > R.u(-.6, .6, n)).float() + R.coin(.6, n) * (torch.sin(v * 3.14) > 0).float()) * .5
    fu, fv = torch.remainder(u * 1.5, 1) - .5, torch.remainder(v * 1.5, 1) - .5
    rr = (fu * fu + fv * fv).sqrt()
    lace = smooth(.3, .26, rr) - .6 * smooth(.12, .1, rr)
    pat = torch.where(R.coin(.3, n) > 0, lace, chk)
    c2 = R.t(rs.uniform(.05, 1, (n, 3)))
    cloth = flat * (1 - pat * R.u(.2, 1, n)) + c2 * pat * R.u(.2, .6, n) + .25 * fine * R.u(.0, .25, n)
    soft = samp(fetch(bk.soft, bk.pick(rs, "all", n)), a * .5, b * .5)
    cloth = cloth * (1 - R.u(0, .35, n) * soft)
    k = R.t(rs.rand(n))
    out = torch.where(k < .62, tex, torch.where(k < .8, flat, cloth)).clamp(0, 1)
    # photograph as background: beyond the table's far edge, or whole
    pi = rs.choice(bk.g["photo"], n)
    ph = fetch(bk.big, np.array([bk.big_of[i] for i in pi]))
    z = R.u(.35, 1, n)
    ph = samp(ph, X * H / W * .5 * z + R.u(.3, .7, n), Y * .5 * z + R.u(.3, .7, n))
    bl = F.interpolate(box(F.avg_pool2d(ph, 4), max(1, H // 96), 2), size=(H, W), mode="bilinear", align_corners=False)
    ph = torch.where(R.coin(.75, n) > 0, bl, ph) * R.u(.4, 1.05, n)
    wall = torch.where(R.coin(.35, n) > 0, flat.flip(1) * (1 - .2 * soft), ph)
    edge = smooth(.01, -.01, Y - hor - .06 * X * R.u(-1, 1, n)) * persp
    whole = R.coin(.1, n)
    out = out * (1 - edge) + wall * edge
    out = out * (1 - whole) + ph * whole
    # sheet of paper beside or under the bar
    su, sv = turn(X - R.u(-1, 1, n), Y - R.u(-.7, .7, n), R.u(-.6, .6, n), 1., 0, 0)
    sheet = smooth(.006, -.006, torch.maximum(su.abs() - R.u(.3, 1.2, n), sv.abs() - R.u(.2, .9, n))) * R.coin(.22, n)
    paper = (R.t(rs.uniform(.82, 1, (n, 1)) * [[1, 1, 1]] + rs.normal(0, .02, (n, 3))) + .02 * fine + .08 * (soft - .5) * R.coin(.5, n)).clamp(0, 1)
    out = out * (1 - sheet) + paper * sheet
    # crumbs, flour, stains on the table
    ci = np.flatnonzero(rs.rand(n) < .22)
    if len(ci):
        m = len(ci)
        r = R.logu(.005, .03, m)
        d = dots(R, x[ci], y[ci], r * R.u(3, 9, m), R.u(.1, .7, m), r * .3, r, torch.full_like(r, 1.5 / H), .2, 1.4)[0]
        d = d * smooth(.3, .6, samp(fetch(bk.soft, bk.pick(rs, "cloud", m)), a[ci], b[ci]))
        cc = R.t(np.where(rs.rand(m, 1) < .5, rs.uniform(.6, 1, (m, 1)), rs.uniform(.05, .9, (m, 3))))
        out[ci] = out[ci] * (1 - d) + cc * d
    return out


def paste(R, bk, img, cover, rows, group, X, Y, lo=.12, hi=.55, front=False, where=None):
    """Cut-outs with soft shadows onto rows of img; cover [n,1,H,W] is what they hide."""
    m = len(rows)
    if not m:
        return
    rs = R.rs
    _, _, H, W = X.shape
    o = fetch(bk.obj, rs.choice(bk.og[group], m))
    asp = W / H
    cx, cy = rs.uniform(-1, 1, m) * asp, rs.uniform(-.9, .9, m)
    if front:
        s = rs.rand(m) < .5
        cx = np.where(s, np.sign(cx) * asp * rs.uniform(.8, 1.15, m), cx)
        cy = np.where(s, cy, np.sign(cy) * rs.uniform(.85, 1.15, m))
    if where is not None:
        cx, cy = where
    cx, cy, sc = R.t(cx), R.t(cy), R.logu(lo, hi, m)
    u, v = turn(X[rows] - cx, Y[rows] - cy, R.t(np.where(rs.rand(m) < .6, rs.normal(0, .25, m), rs.uniform(0, 6.28, m))), 1., 0, 0)
    u = u * R.t(rs.choice([-1., 1.], m))
    q = samp(o, u / sc * .5 + .5, v / sc * .5 + .5, "zeros")
    al = q[:, 3:]
    sx, sy = R.u(-.5, .5, m), R.u(.0, .5, m)
    sh = samp(o[:, 3:], (u - sx * sc * .25) / sc * .48 + .5, (v - sy * sc * .25) / sc * .48 + .5, "zeros")
    sh = F.interpolate(box(F.avg_pool2d(sh, 4), max(1, H // 128), 2), size=(H, W), mode="bilinear", align_corners=False)
    x = img[rows] * (1 - sh * R.u(.2, .65, m))
    col = tint(R, q[:, :3], m, .05) ** 2.2
    img[rows] = x * (1 - al) + col * al
    cover[rows] = torch.maximum(cover[rows], al)


def hand(R, bk, img, cover, rows, X, Y, cx, cy, size, behind):
    """A hand-like shape: a palm and wrist behind, fingers across the rim in front."""
    m = len(rows)
    if not m:
        return
    rs = R.rs
    x, y = X[rows], Y[rows]
    skin = rs.uniform(0, 1, (m, 1)) ** 1.6
    col = R.t((np.array([[.93, .76, .66]]) * (1 - skin) + np.array([[.33, .2, .14]]) * skin) * rs.uniform(.85, 1.1, (m, 1)) + rs.normal(0, .02, (m, 3))).clamp(.03, 1)
    a0 = R.a0 if hasattr(R, "a0") and R.a0.shape[0] == m else R.u(0, 6.28, m)
    R.a0 = a0
    cx, cy, size = R.t(cx), R.t(cy), R.t(size)
    u, v = turn(x - cx, y - cy, a0, 1., 0, 0)
    u, v = u / size, v / size
    hp = samp(fetch(bk.hp, bk.pick(rs, "surf", m)), u * .35 + .5, v * .35 + .5)
    best, shade = torch.full_like(u, 9.), torch.zeros_like(u)
    parts = []
    if behind:
        parts.append((R.u(.2, .9, m), R.u(-.2, .2, m), R.u(3, 4, m), R.u(-.4, .4, m), R.u(.65, .95, m)))
    else:
        k = rs.randint(2, 5)
        for i in range(k):
            o = (i - (k - 1) / 2) * .42
            parts.append((R.u(.45, .75, m) + .06 * i * (k - i), o + R.u(-.05, .05, m), R.u(1.8, 2.2, m), o * 1.1 + R.u(-.1, .1, m), R.u(.15, .2, m)))
        if rs.rand() < .6:
            parts.append((R.u(-.8, -.5, m), R.u(-.5, .5, m), R.u(-2, -1.4, m), R.u(-.8, .8, m), R.u(.19, .26, m)))
    nail = torch.zeros_like(u)
    for ax, ay, bx, by, r in parts:
        dx, dy = bx - ax, by - ay
        t = (((u - ax) * dx + (v - ay) * dy) / (dx * dx + dy * dy)).clamp(0, 1)
        d = ((u - ax - t * dx) ** 2 + (v - ay - t * dy) ** 2).sqrt() - r
        sh = (1 - ((d + r) / r).clamp(0, 1) ** 2).clamp_min(.05).sqrt()
        shade = torch.where(d < best, sh, shade)
        if not behind:
            q = (((u - ax - .1 * r) / (.75 * r)) ** 2 + ((v - ay) / (.58 * r)) ** 2).sqrt()
            nail = torch.where(d < best, torch.zeros_like(nail), nail) + (smooth(1.05, .9, q) * .16 - .2 * torch.exp(-((q - 1.05) / .12) ** 2)) * (d <= best)
        best = torch.minimum(best, d)
    al = smooth(.5, -.5, best / (1.6 / Y.shape[2] / size))
    dark = torch.exp(-(best.clamp_min(0)) / .12) * .55
    body = (col * (.68 + .36 * shade) * (1 + .018 * hp + nail)).clamp(0, 1) ** 2.2
    img[rows] = img[rows] * (1 - dark * (1 - al)) * (1 - al) + body * al
    cover[rows] = torch.maximum(cover[rows], al)


def nosoap(R, bk, img, cover, rows, X, Y):
    """Pictures without soap: photographs, tables with things, plates, boxes, plain texture close-ups."""
    rs = R.rs
    H, W = X.shape[2:]
    kind = rs.choice(5, len(rows), p=[.34, .3, .14, .12, .1])
    r0 = rows[kind == 0]
    if len(r0):
        m = len(r0)
        ph = fetch(bk.big, rs.choice(bk.clear, m))
        z = R.u(.6, 1, m)
        img[r0] = tint(R, samp(ph, X[r0] * H / W * .5 * z * R.t(rs.choice([-1., 1.], m)) + .5 + (1 - z) * R.u(-.5, .5, m), Y[r0] * .5 * z + .5 + (1 - z) * R.u(-.5, .5, m)), m, .08) ** 2.2
    r2 = rows[kind == 2]
    if len(r2):
        m = len(r2)
        rr = (((X[r2] - R.u(-.4, .4, m)) / R.u(.9, 1.3, m)) ** 2 + ((Y[r2] - R.u(-.3, .3, m)) / R.u(.5, 1, m)) ** 2).sqrt()
        disc = smooth(.81, .8, rr)
        c = R.t(np.where(rs.rand(m, 1) < .6, rs.uniform(.8, 1, (m, 1)) * np.ones(3), rs.uniform(.1, .9, (m, 3))))
        lip = 1 - .25 * torch.exp(-((rr - .55) / .03) ** 2) + .2 * torch.exp(-((rr - .78) / .02) ** 2)
        img[r2] = img[r2] * (1 - disc) * (1 - .4 * smooth(.95, .8, rr)) + (c * lip).clamp(0, 1) ** 2.2 * disc
    r4 = rows[kind == 4]
    if len(r4):
        m = len(r4)
        a, b = turn(X[r4], Y[r4], R.u(0, 6.28, m), R.logu(.2, .5, m), R.u(0, 2, m), R.u(0, 2, m))
        img[r4] = tint(R, samp(fetch(bk.tex, bk.pick(rs, "rough", m)), a, b), m) ** 2.2
    for _ in range(2):
        k = rows[(kind != 0) & (rs.rand(len(rows)) < .75)]
        paste(R, bk, img, cover, k, rs.choice(["food", "animal", "thing", "any", "flower"]), X, Y, .2, .95)
    return kind
