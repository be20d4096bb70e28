"""What stands where: how bars are grouped for a snapshot, and where the phone is."""
import numpy as np

K = 9
NEED = {0: 'any', 1: 'cut', 2: 'any', 3: 'cut', 4: 'cut', 5: 'top', 6: 'cut', 7: 'any', 8: 'cut', 9: 'top',
        10: 'cut', 11: 'cut', 12: 'cut', 13: 'cut', 14: 'top', 15: 'side'}
POSES = {'cut': ['lie', 'stand', 'row', 'grid', 'stack', 'hand', 'lean', 'loafcut', 'lie', 'stand', 'sheet', 'hand'],
         'top': ['loaf', 'loafcut', 'mould', 'cavity', 'slab', 'standtop', 'cavitygrid', 'loaf', 'half'],
         'side': ['sideup', 'loafside', 'bottomup', 'half', 'sideup', 'sidegrid', 'handside'],
         'any': ['lie', 'stand', 'row', 'grid', 'stack', 'hand', 'lean', 'loaf', 'loafcut', 'cavity', 'slab', 'mould',
                 'sheet', 'standtop', 'sideup', 'cavitygrid', 'half']}
BASE = {'stand': [[1, 0, 0], [0, 1, 0], [0, 0, 1]], 'lie': [[1, 0, 0], [0, 0, 1], [0, -1, 0]],
        'side': [[0, -1, 0], [1, 0, 0], [0, 0, 1]], 'bottom': [[1, 0, 0], [0, 0, 1], [0, -1, 0]],
        'under': [[1, 0, 0], [0, -1, 0], [0, 0, -1]]}


def ry(a):
    c, s = np.cos(a), np.sin(a)
    return np.array([[c, 0, s], [0, 1, 0], [-s, 0, c]])


def rx(a):
    c, s = np.cos(a), np.sin(a)
    return np.array([[1, 0, 0], [0, c, -s], [0, s, c]])


def rz(a):
    c, s = np.cos(a), np.sin(a)
    return np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]])


class Set:
    def __init__(self, r):
        self.r, self.items = r, []

    def add(self, base, h, xz=(0, 0), yaw=0.0, y0=0.0, tilt=0.0, mat=0, rad=0.1, rnd=0, wave=0.0, roll=0.0):
        if len(self.items) >= K:
            return 0
        R = ry(yaw) @ rx(tilt) @ rz(roll) @ np.array(BASE[base], float)
        up = float(np.abs(R[1]) @ np.array(h))
        self.items.append(dict(C=[xz[0], y0 + up, xz[1]], R=R, H=list(h), mat=mat, rad=rad, rnd=rnd, wave=wave))
        return y0 + 2 * up


def build(r, need, nosoap):
    """r: numpy RandomState; returns the scene of one picture"""
    pose = POSES[need][r.randint(len(POSES[need]))]
    s = Set(r)
    u = lambda a, b: r.uniform(a, b)
    ttype, rnd = 0, 0
    rad = u(0.04, 0.16) if r.rand() < .7 else u(.15, .35)
    h = np.array([u(2.8, 4.4), u(2.5, 4.0), u(.95, 1.6)])
    if pose in ('cavity', 'cavitygrid') or (pose in ('lie', 'hand', 'grid', 'sideup', 'bottomup', 'sidegrid') and
                                            need != 'cut' and r.rand() < .45):
        ttype, h = 1, np.array([u(3.2, 4.4), u(2.2, 3.2), u(1.0, 1.7)])
        rad = u(.12, .75)
        if r.rand() < .35:
            rnd = 1
            h[1] = h[0] = u(2.6, 4.0)
            if r.rand() < .3:
                h[1] *= u(.65, .9)
            rad = min(rad, .5)
    yaw = u(-.8, .8)
    wave = 0.0 if ttype or r.rand() < .5 else u(.03, .17)
    el = u(20, 85)
    mats = 0
    kw = dict(rad=rad, rnd=rnd, wave=wave)
    hand = None
    if pose in ('lie', 'cavity'):
        s.add('lie', h, (0, 0), yaw + r.choice([0, 1.57, 0, -1.57]), **kw)
        el = u(30, 90)
    elif pose in ('grid', 'cavitygrid'):
        nx, ny = r.randint(2, 4), r.randint(2, 4)
        gap = u(.1, 1.5)
        for i in range(nx):
            for j in range(ny):
                q = ry(yaw) @ np.array([(i - (nx - 1) / 2) * (2 * h[0] + gap), 0, (j - (ny - 1) / 2) * (2 * h[1] + gap)])
                s.add('lie', h, (q[0] + u(-.2, .2), q[2] + u(-.2, .2)), yaw + u(-.08, .08), **kw)
        el = u(35, 90)
    elif pose in ('stand', 'standtop'):
        s.add('stand', h, (0, 0), yaw, **kw)
        if r.rand() < .4:
            s.add('lie' if r.rand() < .5 else 'stand', h, (2 * h[0] + u(.5, 2), u(-4, 1)), u(-1, 1), **kw)
        el = u(8, 40) if pose == 'stand' else u(35, 65)
    elif pose == 'row':
        nb, gap = r.randint(3, 7), u(.1, 1.6)
        yaw = r.choice([-1, 1]) * u(.25, .9)
        for i in range(nb):
            q = ry(yaw) @ np.array([u(-.2, .2), 0, (i - nb / 2) * (2 * h[2] + gap)])
            s.add('stand', h, (q[0], q[2]), yaw + u(-.06, .06), **kw)
        el = u(12, 45)
    elif pose == 'stack':
        y = 0
        for i in range(r.randint(2, 5)):
            y = s.add('lie', h, (u(-.6, .6), u(-.6, .6)), yaw + u(-.5, .5), y0=y, **kw)
        el = u(20, 60)
    elif pose == 'lean':
        s.add('stand', h, (0, 0), yaw, **kw)
        s.add('stand', h, tuple((ry(yaw) @ np.array([u(-1, 1), 0, 2.2 * h[2] + h[1] * .45]))[[0, 2]]), yaw + u(-.1, .1),
              tilt=-u(.35, .8), **kw)
        el = u(12, 50)
    elif pose in ('loaf', 'loafcut', 'loafside', 'half'):
        lz = u(6, 12)
        yaw = r.choice([-1, 1]) * (u(.2, 1.2) if pose != 'loafside' else u(1.0, 1.5))
        hl = [h[0], h[1], lz]
        s.add('stand', hl, (0, 0), yaw, **kw)
        f = ry(yaw) @ np.array([0, 0, 1.0])
        if pose == 'loafcut':
            z = lz + h[2]
            for i in range(r.randint(1, 4)):
                z += u(.2, 1.4)
                q = f * z
                s.add('stand', h, (q[0], q[2]), yaw + u(-.1, .1), tilt=u(-.12, .0), **kw)
                z += 2 * h[2]
        if pose == 'half':
            side = ry(yaw) @ np.array([1.0, 0, 0])
            for sg in ((-1, 1) if r.rand() < .4 else (r.choice([-1, 1]),)):
                q = side * sg * (h[0] + u(.25, 1.8))
                s.add('stand', [.25, h[1] * 1.1, lz * 1.03], (q[0], q[2]), yaw, roll=-sg * u(0, .35), mat=2, rad=.1)
        el = u(18, 60) if pose != 'loafside' else u(8, 35)
    elif pose == 'mould':
        lz = u(6, 12)
        yaw = u(-1.5, 1.5)
        s.add('stand', [h[0], h[1], lz], (0, 0), yaw, y0=.25, **kw)
        ex = u(.2, 1.6)
        for v, hh in (([1, 0], [.3, h[1] + ex, lz + .5]), ([-1, 0], [.3, h[1] + ex, lz + .5]),
                      ([0, 1], [h[0] + .6, h[1] + ex, .3]), ([0, -1], [h[0] + .6, h[1] + ex, .3])):
            q = ry(yaw) @ np.array([v[0] * (h[0] + .31), 0, v[1] * (lz + .31)])
            s.add('stand', hh, (q[0], q[2]), yaw, mat=2, rad=.1)
        el = u(50, 88)
    elif pose == 'slab':
        ttype = 1
        h = np.array([u(6, 10), u(5, 8), u(1.2, 2)])
        s.add('lie', h, (0, 0), yaw, rad=u(.05, .3))
        el = u(25, 85)
    elif pose in ('sideup', 'bottomup', 'sidegrid'):
        base = 'side' if pose != 'bottomup' else ('under' if ttype == 0 else 'lie')
        nb = 1 if pose != 'sidegrid' else r.randint(2, 4)
        if ttype:
            base = 'lie'
        for i in range(nb):
            s.add(base, h, ((i - (nb - 1) / 2) * (2.4 * h[1] + .6 + (h[0] if ttype else 0)), u(-.5, .5)), yaw + u(-.2, .2),
                  tilt=np.pi if ttype else 0, **dict(kw, wave=0.0 if base == 'under' else wave))
        el = u(20, 75)
    elif pose == 'sheet':
        s.add('lie', [u(6, 12), u(5, 10), .03], (0, 0), u(-.6, .6), mat=3, rad=.01)
        for i in range(r.randint(1, 4)):
            s.add('lie', h, (i * (2 * h[0] + .5) - h[0], u(-1, 1)), u(-.3, .3), y0=.06, **kw)
        el = u(30, 90)
    elif pose in ('hand', 'handside'):
        s.add('stand' if pose == 'hand' else 'side', h, (0, 0), u(-.5, .5), y0=0, tilt=-u(0.0, .7), roll=u(-.5, .5), **kw)
        el = u(5, 50)
        hand = fingers(r, s.items[0], pose)
    if pose not in ('hand', 'handside') and r.rand() < .22 and len(s.items) < K:      # a thing beside the soap
        a = u(0, 6.28)
        s.add('lie', [u(.8, 4), u(.8, 3), u(.2, 2.5)], (np.cos(a) * 11, np.sin(a) * 11), u(-1, 1), mat=r.choice([2, 3, 4]),
              rad=u(.05, .2), rnd=int(r.rand() < .4))
    if nosoap:
        mk = r.choice([4, 5, 6, 7, 8])
        for it in s.items:
            if it['mat'] == 0:
                it['mat'] = mk
        if r.rand() < .25:
            s.items = [i for i in s.items if i['mat'] in (2, 3)]
    C = np.array([i['C'] for i in s.items]) if s.items else np.zeros((1, 3))
    ext = max(4.0, max([np.linalg.norm(np.array(i['C']) - C.mean(0)) + .8 * max(i['H'])
                        for i in s.items if i['mat'] in (0, 4, 5, 6, 7, 8)] or [5]))
    z = r.rand()
    zoom = u(.36, .6) if z < .3 else (u(.6, .92) if z < .85 else u(.92, 1.25))
    tgt = C.mean(0)
    soaps = [i for i in s.items if i['mat'] == 0]
    if zoom < .6 and soaps:
        i = soaps[r.randint(len(soaps))]
        tgt = np.array(i['C']) * .9 + C.mean(0) * .1
        ext = max(3.2, np.linalg.norm(i['H'][:3]) * .85)
    if need == 'side':
        el = min(el, 60)
    fov = np.radians(u(22, 58))
    dist = ext * zoom / np.tan(fov / 2) * 1.35
    dist = max(dist, ext * .9 + 2.5)
    e, az = np.radians(el), u(-.35, .35)
    cam = tgt + dist * np.array([np.sin(az) * np.cos(e), np.sin(e), np.cos(az) * np.cos(e)])
    cam[1] = max(cam[1], .8)
    tgt = tgt + np.array([u(-1, 1), u(-.5, .5), u(-1, 1)]) * ext * .16 * min(zoom * 1.4, 1)
    return dict(items=s.items, cam=cam, tgt=tgt, fov=fov, roll=u(-.3, .3) if r.rand() < .6 else u(-1.6, 1.6), ttype=ttype, pose=pose,
                hand=hand, table_y=-u(6, 25) if hand is not None else 0.0, bar=h, wl=u(.5, 1.6), ph=u(0, 6), zoom=zoom)


def fingers(r, it, pose):
    """capsules about a bar: fingers behind with tips over one edge, a thumb before it"""
    R, C, H = it['R'], np.array(it['C']), np.array(it['H'])
    ax = R.T
    n = int(np.argmax([abs(a[2]) for a in ax]))
    order = [i for i in range(3) if i != n]
    a, b = (order if H[order[0]] > H[order[1]] else order[::-1])
    f = ax[n] * np.sign(ax[n][2] + 1e-6)
    up, rt = ax[b] * np.sign(ax[b][1] + 1e-6), ax[a]
    sg = r.choice([-1, 1])
    ha, hb, hn = H[a], H[b], H[n]
    caps = []
    rr = r.uniform(.75, .95)
    g = r.uniform(0, .5)
    for i in range(4):
        v = (i - 1.5) * 1.75 * rr + g
        base = C - f * (hn + rr) + up * v * .9 - rt * sg * (ha + 3)
        mid = C - f * (hn + rr * .9) + up * v + rt * sg * (ha * .7)
        tip = C + rt * sg * (ha + rr * .75) + up * v + f * (hn * r.uniform(.2, 1.1))
        caps += [(base, mid, rr), (mid + rt * sg * ha * .3, tip, rr * .95)]
    t0 = C - rt * sg * (ha + 2.5) - up * (hb + .5) + f * 0
    t1 = C - rt * sg * ha * r.uniform(.55, 1.0) - up * hb * r.uniform(.1, .8) + f * (hn + rr * .8)
    caps += [(t0, t1, rr * 1.2)]
    w = C - rt * sg * (ha + 4) - f * (hn + 1.6)
    caps += [(w - up * 1.8, w + up * 1.5, 2.3), (w, w - rt * sg * 14 - up * 5, 2.6)]
    return caps
