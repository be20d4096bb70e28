"""One picture of soap, from its plan to image, mask and labels."""
import numpy as np
from . import deceive
from . import flaws_a as A
from . import flaws_b as B
from .design import Design, Face, stack
from .scene import Scene, form, place, furnish, camera
from .shade import light, geometry, lit, develop, exposure, lens, sensor
from .tables import ground, levels
from .noise import blur, resize, noise, step

FLAWS = {'coloured-specks': A.coloured_specks, 'smears': A.smears, 'white-specks': A.white_specks, 'translucent-veins': A.translucent_veins,
         'crackle-network': A.crackle_network, 'powdery-film': A.powdery_film, 'dark-centre-ring': B.dark_centre_ring, 'orange-spots': A.orange_spots,
         'pinholes': B.pinholes, 'crack': B.crack, 'brown-outside-in': B.brown_outside_in, 'colour-bled': B.colour_bled, 'drag-lines': B.drag_lines,
         'layer-gap': B.layer_gap, 'wrinkled-top': B.wrinkled_top, 'mould-dimples': B.mould_dimples}
ONLY = {'wrinkled-top': ['loaf', 'loaf', 'top', 'row', 'top'], 'mould-dimples': ['side', 'side', 'loaf', 'row'], 'layer-gap': ['flat', 'stand', 'stand', 'side', 'held', 'several'],
        'crack': ['loaf', 'top', 'flat', 'stand', 'row', 'several'], 'powdery-film': ['loaf', 'top', 'stand', 'flat', 'row', 'stack']}
POSES = ['flat'] * 6 + ['stand'] * 5 + ['lean'] * 2 + ['row'] * 2 + ['stack'] + ['several'] * 3 + ['held'] * 2 + ['loaf'] * 2
CUTFACE = ['flat'] * 4 + ['stand'] * 4 + ['several', 'several', 'lean', 'held']
LIGHTBASE = {'crackle-network', 'orange-spots', 'brown-outside-in', 'dark-centre-ring', 'translucent-veins'}


def small(rng, kind, col, half):
    """Plain skins for props: the same small texture on all faces."""
    t = np.zeros((96, 96, 6), np.float32)
    c = np.array(col, np.float32)[None, None] * np.ones((96, 96, 1), np.float32)
    n = noise(rng, 96, 96, 14) + .5 * noise(rng, 96, 96, 6)
    if kind == 'grain':
        n = noise(rng, 96, 96, 3, 60)
    if kind == 'fur':
        n = noise(rng, 96, 96, 9, 2) + noise(rng, 96, 96, 30)
    c *= 1 + {'flesh': .03, 'grain': .08, 'cloth': .06, 'fruit': .07, 'fur': .2}.get(kind, .02) * n[..., None]
    t[..., :3] = np.clip(c, .02, .97) ** 2.2
    if kind in ('cloth', 'fur', 'fruit', 'flesh'):
        t[..., 3], t[..., 4] = .1 * noise(rng, 96, 96, 2), .1 * noise(rng, 96, 96, 2)
    t[..., 5] = {'glaze': .75, 'fruit': .4, 'flesh': .22, 'grain': .15}.get(kind, .03)
    return [(t, 96 / (2 * m + .01)) for m in (max(half), ) * 3]


def gobo(rng):
    """Shadows of a blind or of leaves."""
    a, k = rng.uniform(0, 3.1), rng.uniform(1.2, 4)
    if rng.random() < .5:
        return lambda P, L: .25 + .75 * step(np.sin(((P[..., 0] - P[..., 1] * L[0] / L[1]) * np.cos(a) + (P[..., 2] - P[..., 1] * L[2] / L[1]) * np.sin(a)) * k), -.2, .3)
    p = rng.uniform(0, 6.3, 8)

    def leaves(P, L):
        x, z = P[..., 0] - P[..., 1] * L[0] / L[1], P[..., 2] - P[..., 1] * L[2] / L[1]
        v = sum(np.sin(x * np.cos(q) * f + z * np.sin(q) * f + q * 3) for q, f in zip(p, (.5, .9, 1.3, .7, 1.9, 1.1, .6, 2.3)))
        return .3 + .7 * step(v, -.6, .4)
    return leaves


def pick_pose(rng, flaws):
    opts = POSES
    for k in flaws:
        if k in ONLY:
            return str(rng.choice(ONLY[k]))
    if flaws:
        opts = CUTFACE
    return str(rng.choice(opts))


def half(g):
    """The same view at half the size."""
    q = {k: np.ascontiguousarray(v[::2, ::2]) if isinstance(v, np.ndarray) and v.ndim > 1 and k != 'obj' else v for k, v in g.items()}
    q['W'], q['H'] = q['id'].shape[::-1]
    return q


def seen(g, flaws, show):
    """What each flaw changes that an eye could tell: drawn with and without."""
    q, out = half(g), {}
    h, w = g['soap'].shape
    img = show(list(flaws), q)
    for f in flaws:
        other = show([x for x in flaws if x != f], q)
        d = np.stack([blur(img[..., c] - other[..., c], .6) for c in range(3)], 2)
        vis = (np.abs(d).max(2) > .04) & q['soap']
        n, tot = int(vis.sum()), int(q['soap'].sum())
        if n > 36 and n / tot > .0008 and np.abs(d).max(2)[vis].mean() > .055:
            out[f] = np.repeat(np.repeat(vis, 2, 0), 2, 1)[:h, :w].astype(np.float32)
    return out


def soap(rng, size, flaws=(), trick=None, close=False, deg=None):
    """Returns image [H,W,3] of `size`, mask, a mask for each flaw that can be seen."""
    pose = pick_pose(rng, flaws)
    if close:
        pose = 'close' if not set(flaws) & {'wrinkled-top', 'mould-dimples'} else 'top' if 'wrinkled-top' in flaws else 'side'
    if trick in ('salt', 'petals', 'feather'):
        pose = str(rng.choice(['loaf', 'top', 'row']))
    need = None
    if 'layer-gap' in flaws:
        need = 'layers'
    elif 'colour-bled' in flaws:
        need = str(rng.choice(['layers', 'layers', 'pot', 'hanger', 'tiger', 'drop']))
    elif set(flaws) & {'crackle-network', 'translucent-veins', 'dark-centre-ring'} and rng.random() < .6:
        need = 'plain'
    elif trick == 'pencil':
        need = 'pencil'
    elif trick in ('mottle', 'embeds', 'stamp', 'dew') and rng.random() < .6:
        need = str(rng.choice(['plain', 'ombre']))
    shape = form(rng, pose)
    if need == 'layers' and shape[0] == 3:
        shape = (0,) + shape[1:]
    sc = Scene()
    elev = place(rng, sc, pose, shape)
    nsoap = len(sc.rows) if pose != 'held' else 1
    furnish(rng, sc, pose)
    fill = rng.uniform(.68, 1.0) if pose not in ('close',) else rng.uniform(2.2, 3.6)
    if close and pose != 'close':
        fill = rng.uniform(1.6, 2.2)
    if pose in ('several', 'row') and rng.random() < .2:
        fill = 1.25
    H, W = size
    asp = W / H
    cam, D = camera(rng, sc, elev, fill, asp)
    if pose == 'held':
        cam[14] = rng.uniform(6, 25) if rng.random() < .8 else -1
    lt = light(rng)
    if pose in ('top', 'loaf') and set(flaws) & {'wrinkled-top'} or 'mould-dimples' in flaws:
        lt['soft'] = max(lt['soft'], 5)
        lt['fill'] = lt['fill'] * .6
    if trick == 'shade':
        lt['gobo'], lt['soft'] = gobo(rng), 18.0
    if trick == 'glare':
        lt['glare'] = rng.uniform(.3, .9)
    g = geometry(sc, cam, W, H, lt)
    scale = min(W / (2 * cam[12] * D), 160 if close else 105)
    design = Design(rng, shape[1], need, True if set(flaws) & LIGHTBASE and rng.random() < .85 else None, 'colour-bled' in flaws)
    seeds = {f: int(rng.integers(1 << 31)) for f in flaws}
    if deg is None:
        deg = {f: (rng.uniform(.12, 1), rng.uniform(.12, 1) if rng.random() < .75 else 1.0) for f in flaws}
    spare = {i for i in range(nsoap) if nsoap > 2 and rng.random() < .25 and i > 0}
    texel = scale if nsoap == 1 else min(scale, 75)
    if pose in ('loaf', 'top'):
        texel = min(texel, 60)
    tseed = int(rng.integers(1 << 31))

    def bars(trick):
        out = []
        for i in range(nsoap):
            b = {n: design.base(Face(n, shape[1], texel, i * 2.7)) for n in 'zxy'}
            b['design'], b['loaf'] = design, pose in ('loaf', 'top')
            if trick in deceive.NAMES:
                deceive.NAMES[trick](b, np.random.default_rng([tseed, i]))
            out.append(b)
        return out

    sound = bars(trick)
    skins = [p for r, s in zip(sc.rows[nsoap:], sc.skin[nsoap:]) for p in small(rng, s[0], s[1], r[13:16])]
    gp = float(np.clip(W / (2 * cam[12] * D) * .8, 14, 60))
    gt = [(t, gp / 2 ** i) for i, t in enumerate(levels(ground(rng, gp)))]
    wt = gt if cam[14] < 0 else [(t, 14 / 2 ** i) for i, t in enumerate(levels(ground(rng, 14, str(rng.choice(['plain', 'plain', 'concrete', 'tiles', 'linen'])))))]

    def render(names, g, sound=sound, lt=lt):
        packs = []
        for i, b in enumerate(sound):
            c = dict(b)
            if names and i not in spare:
                for n in 'zxy':
                    c[n] = b[n].copy()
                for f in names:
                    FLAWS[f](c, np.random.default_rng([seeds[f], i]), *deg[f])
            packs += [(stack(c[n]), c[n].ppc) for n in 'zxy']
        return lit(g, packs + skins + gt + wt, lt)

    full = render(list(flaws), g)
    ex = exposure(rng, full)
    wb = np.exp(rng.normal(0, .06, 3)).astype(np.float32) * (lt['key'] / lt['key'].max()) ** -rng.uniform(.4, .95)
    sat = rng.uniform(.82, 1.05)
    foc, amt = float(np.median(g['dep'][g['soap']])), rng.choice([0, 0, 2, 5, 9]) * (.5 if close else 1)
    img = lens(g, develop(full, ex, wb, sat), foc, amt)
    shares = seen(g, flaws, lambda names, q: lens(q, develop(render(names, q), ex, wb, sat), foc, amt * .5)) if flaws else {}
    out = sensor(rng, np.clip(img, 0, 1), W, H, rng.uniform(.5, 1))
    return out, g['soap'], shares
