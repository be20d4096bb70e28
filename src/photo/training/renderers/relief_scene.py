"""Where things stand: bars, clutter and camera of each picture, chosen with plain numbers."""
import math

# numbers of a body: a,b,c,rc,re,peak amplitude,peak fx,peak fz,phase,kind (0 soap,1 clutter,2 skin),offsets xyz,flawed,outline waviness


def axes(yaw, mode, lean=0.0):
    """Local x, y, z axes in the world for a lying (z up) or standing (y up) body."""
    c, s = math.cos(yaw), math.sin(yaw)
    if mode == "lying":
        x, y, z = (c, s, 0), (-s, c, 0), (0, 0, 1)
        if lean:
            k, t = math.cos(lean), math.sin(lean)
            y, z = tuple(k * a + t * b for a, b in zip(y, z)), tuple(k * b - t * a for a, b in zip(y, z))
    else:
        x, y, z = (c, s, 0), (0, 0, 1), (s, -c, 0)
        if lean:
            k, t = math.cos(lean), math.sin(lean)
            y, z = tuple(k * a - t * b for a, b in zip(y, z)), tuple(k * b + t * a for a, b in zip(y, z))
    return [x[0], y[0], z[0], x[1], y[1], z[1], x[2], y[2], z[2]]


def body(r, dims, centre, rot, kind, shape, peak, flawed):
    """One object's numbers: half sizes, rounding, peaks, texture offset, centre and axes."""
    a, b, c = dims
    rc, re = shape
    rc, re = min(rc, min(a, b) * 0.999), min(re, c * 0.99, rc if rc > 0.3 * min(a, b) else 9)
    row = [a, b, c, rc, re, peak[0], peak[1], peak[2], peak[3], kind,
           r.uniform(-9, 9) if kind else 0.0, r.uniform(-.35, .35), r.uniform(0, 16), flawed,
           r.choice([0, .004, .012, .025]) * r.random() if not kind else 0.0]
    return row, list(centre), rot


def soap_dims(r, view):
    """Half sizes of the bar: width 1, loaf height, slice thickness or loaf length, and roundings."""
    b = r.choice([r.uniform(.55, .8), r.uniform(.8, 1.05)])
    c = r.uniform(1.5, 3.2) if view == "loaf" else r.uniform(.22, .48)
    style = r.random()
    re = r.choice([.012, .03, .06, r.uniform(.02, .12)])
    rc = re + r.uniform(0, .03)
    if view != "loaf" and style < .16:
        rc, re = r.uniform(.15, min(.7, b)), r.uniform(.05, .2)
    if view != "loaf" and style < .06:
        b = r.uniform(.7, 1.0)
        rc, re = b, r.uniform(.04, .2)
    return (1.0, b, c), (rc, re)


def place_bars(r, view, dims, shape, peak, only_one):
    """Bars of the picture for a view; returns bodies and the aim point."""
    a, b, c = dims
    out = []
    n = 1 if r.random() < .55 else r.choice([2, 3])
    flag = lambda i: 1.0 if i == 0 or (not only_one and r.random() < .6) else 0.0
    if view == "lying":
        yaw = r.gauss(0, .35) if r.random() < .8 else r.uniform(-3.1, 3.1)
        out.append(body(r, dims, (0, 0, c), axes(yaw, "lying"), 0, shape, peak, 1.0))
        for i in range(1, n):
            if r.random() < .3 and i == 1:
                out.append(body(r, dims, (r.uniform(-.4, .4) + 1.1, r.uniform(.5, .9), c),
                                axes(yaw + r.gauss(0, .3) + 1.2, "lying"), 0, shape, peak, flag(i)))
                out[-1][1][0] = 2.3 + r.uniform(0, .4)
            else:
                gap = r.uniform(2.1, 2.5)
                sgn = 1 if i == 1 else -1
                dx, dy = ((gap * sgn, r.gauss(0, .1)) if r.random() < .6 else (r.gauss(0, .1), (2 * b + r.uniform(.1, .4)) * sgn))
                cy, sy = math.cos(yaw), math.sin(yaw)
                out.append(body(r, dims, (dx * cy - dy * sy, dx * sy + dy * cy, c), axes(yaw + r.gauss(0, .06), "lying"),
                                0, shape, peak, flag(i)))
        return out, (0, 0, c)
    if view == "stack":
        for i in range(max(2, n)):
            k = max(2, n) - 1 - i
            out.append(body(r, dims, (r.gauss(0, .08), r.gauss(0, .08), c * (2 * k + 1)),
                            axes(r.gauss(0, .25), "lying"), 0, shape, peak, flag(i)))
        return out, (0, 0, c * (2 * len(out) - 1))
    if view == "held":
        out.append(body(r, dims, (0, 0, 1.6), axes(r.gauss(0, .3), "standing", r.gauss(.2, .15)), 0, shape, peak, 1.0))
        return out, (0, 0, 1.6)
    if view == "loaf":
        yaw = r.choice([r.gauss(0, .3), r.gauss(.9, .3), r.gauss(-.9, .3), 1.57 + r.gauss(0, .15)])
        out.append(body(r, dims, (0, 0, b), axes(yaw, "standing"), 0, shape, peak, 1.0))
        if r.random() < .2:
            d = (dims[0], b, r.uniform(.25, .4))
            off = dims[2] + d[2] + r.uniform(.05, .5)
            out.append(body(r, d, (math.sin(yaw) * off, -math.cos(yaw) * off, b), axes(yaw + r.gauss(0, .1), "standing"),
                            0, shape, peak, flag(1)))
        return out, (0, 0, b)
    yaw = r.gauss(0, .45)
    lean = r.gauss(0, .05) if r.random() < .7 else r.uniform(.1, .35)
    lean = max(0, lean)
    out.append(body(r, dims, (0, 0, b * math.cos(lean) + c * math.sin(lean)), axes(yaw, "standing", lean), 0, shape, peak, 1.0))
    for i in range(1, n):
        sgn = 1 if i == 1 else -1
        if r.random() < .5:
            ctr = (sgn * r.uniform(2.1, 2.4), r.uniform(-.2, .5), b)
            out.append(body(r, dims, ctr, axes(yaw + r.gauss(0, .15), "standing"), 0, shape, peak, flag(i)))
        else:
            ctr = (sgn * r.uniform(.3, 1.2), i * (2 * c + r.uniform(.05, .5)), b)
            out.append(body(r, dims, ctr, axes(yaw * .5, "standing"), 0, shape, peak, flag(i)))
    return out, (0, 0, b)


def place_clutter(r, view, nosoap):
    """Balls, boxes, pucks, sticks and, for a held bar, fingers."""
    out = []
    if view == "held":
        side = r.choice([-1, 1])
        for i in range(3):
            z = 1.6 - .45 + .32 * i if i else 1.2
            x = side * (r.uniform(.75, 1.0))
            y = -.42 if i == 0 else .3
            out.append(body(r, (r.uniform(.55, .9), .16, .14), (x + side * .35, y, z), axes(r.gauss(0, .3), "lying"),
                            2, (.158, .138), (0, 1, 1, 0), 0))
        return out
    for _ in range(r.choice([0, 0, 1, 2, 3]) if not nosoap else r.choice([1, 2, 3, 3])):
        ang, rad = r.uniform(0, 6.28), (r.uniform(1.9, 3.4) if not nosoap else r.uniform(0, 1.4))
        s = r.uniform(.2, .8) if not nosoap else r.uniform(.3, 1.0)
        what = r.randrange(5)
        if what == 0:
            d, sh = (s, s, s), (s, s)
        elif what == 1:
            d, sh = (s, s * r.uniform(.5, 1), s * r.uniform(.3, 1.2)), (.03, .03)
        elif what == 2:
            d, sh = (s, s, s * r.uniform(.2, 1.6)), (s, .04)
        elif what == 3:
            d, sh = (s * 2, s * .12, s * .12), (.1 * s, .1 * s)
        else:
            d, sh = (s, s * r.uniform(.6, .9), s * .5), (s * .5, s * .45)
        out.append(body(r, d, (rad * math.cos(ang), rad * math.sin(ang) + (.8 if not nosoap else 0), d[2]),
                        axes(r.uniform(0, 3), "lying"), 1, sh, (0, 1, 1, 0), 0))
    return out


def camera(r, view, aim, dims, need):
    """Eye, right, up, forward vectors, focal length (per half width) and aim distance."""
    elev = {"lying": r.uniform(.6, 1.5), "stack": r.uniform(.4, 1.2), "standing": r.uniform(.06, .6),
            "loaf": r.uniform(.35, 1.15), "held": r.uniform(.1, .5)}[view]
    if view == "lying" and r.random() < .3:
        elev = r.uniform(1.45, 1.56)
    if need == "top":
        elev = {"standing": r.uniform(.5, 1.1), "loaf": r.uniform(.6, 1.5)}.get(view, elev)
    fill = r.uniform(.4, .85) if r.random() < .62 else r.uniform(.85, 1.9)
    if need == "whole":
        fill = r.uniform(.4, .85)
    half = {"loaf": 1.0 + .35 * dims[2]}.get(view, 1.0) / fill
    if need == "close":
        half = min(half, r.uniform(.6, 1.3))
    f = 1 / math.tan(r.uniform(.22, .55))
    dist = half * f
    jit = .25 * half
    az = r.gauss(0, .2)
    fw = (math.sin(az) * math.cos(elev), math.cos(az) * math.cos(elev), -math.sin(elev))
    right = (math.cos(az), -math.sin(az), 0)
    up = (right[1] * fw[2] - right[2] * fw[1], right[2] * fw[0] - right[0] * fw[2], right[0] * fw[1] - right[1] * fw[0])
    roll = r.gauss(0, .06) if r.random() < .92 else r.choice([1.57, -1.57]) + r.gauss(0, .05)
    cr, sr = math.cos(roll), math.sin(roll)
    right, up = tuple(cr * a + sr * b for a, b in zip(right, up)), tuple(cr * b - sr * a for a, b in zip(right, up))
    jx, jy = r.uniform(-jit, jit), r.uniform(-jit, jit) * .6
    eye = [aim[i] + right[i] * jx + up[i] * jy - fw[i] * dist for i in range(3)]
    eye[2] = max(eye[2], .15)
    return eye + list(right) + list(up) + list(fw) + [f, dist]
