"""draw(n, size, seed, device): phone pictures of soap with the flaws that can be seen."""
import os
import sys
import numpy as np
import torch
import torch.nn.functional as F
sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import bench_camera as cam
import bench_decor as dec
import bench_flaws_body as fb
import bench_flaws_spots as fs
import bench_light as lig
import bench_scene as sce
import bench_soap as soap
import bench_table as tab
import bench_trace as tr
from bench_noise import Noise, gauss, mix, smooth, sub

NAMES = ['coloured-specks', 'smears', 'white-specks', 'translucent-veins', 'crackle-network', 'powdery-film', 'dark-centre-ring',
         'orange-spots', 'pinholes', 'crack', 'brown-outside-in', 'colour-bled', 'drag-lines', 'layer-gap', 'wrinkled-top', 'mould-dimples']
FUN = [fs.coloured_specks, fs.smears, fs.white_specks, fb.translucent_veins, fb.crackle_network, fb.powdery_film, fb.dark_centre_ring,
       fs.orange_spots, fs.pinholes, fb.crack, fb.brown_outside_in, fb.colour_bled, fs.drag_lines, fb.layer_gap, fb.wrinkled_top, fb.mould_dimples]
NVAR = [4, 3, 3, 3, 3, 4, 4, 3, 4, 4, 4, 3, 4, 3, 3, 3]
ORDER = [6, 10, 11, 3, 4, 1, 0, 2, 7, 12, 8, 14, 15, 9, 13, 5]
DECEIVE = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]


def plan(r, clean, force=None):
    """one picture's wishes (numpy)"""
    p = dict(nosoap=r.rand() < .05, flaws={}, decor=[], tricky=0.0)
    z = r.rand()
    if force is not None:
        p['nosoap'], fl = False, [force] if np.isscalar(force) else list(force)[:3]
    elif p['nosoap'] or z < clean:
        fl = []
    else:
        k = r.choice([1, 2, 3], p=[.68, .23, .09])
        fl = list(r.choice(16, k, replace=False))
    for f in fl:
        p['flaws'][int(f)] = (r.randint(NVAR[f]), r.rand() ** .75, r.rand() ** .85)
    need = sce.NEED[int(fl[0])] if fl else r.choice(['any', 'cut', 'top', 'side'], p=[.4, .3, .2, .1])
    p['scene'] = sce.build(r, need, p['nosoap'])
    p['des'] = int(r.choice(11, p=[.26, .12, .13, .08, .06, .07, .06, .06, .06, .05, .05]))
    if 11 in fl or 13 in fl:
        p['des'] = int(r.choice(soap.BORDERED if 13 not in fl else (1, 1, 8, 1)))
    if p['des'] not in (0,):
        p['tricky'] = 1.0 if not fl and p['des'] in (2, 3, 5, 6, 7, 9, 10) and r.rand() < .35 else 0.0
    dz = r.rand()
    if not p['nosoap'] and (dz < .5 if not fl else dz < .25):
        p['decor'] = list(r.choice(DECEIVE, 1 if r.rand() < .8 else 2, replace=False))
        p['tricky'] = 1.0
    if fl and p['decor'] and set(p['decor']) & {5} and r.rand() < .7:
        p['decor'] = []
        p['tricky'] = 0.0
    p['cols'] = soap.colours(r)
    if 11 in fl or 13 in fl:
        while np.abs(p['cols'][0] - p['cols'][1]).sum() < .35:
            p['cols'] = soap.colours(r)
    p['tc'] = np.stack([soap.lin(soap.hsv(r.rand() if r.rand() < .4 else r.uniform(.04, .14), r.uniform(0, .55), r.uniform(.2, .95))) for _ in range(3)])
    p['table'], p['light'], p['cam'] = int(r.randint(tab.NT)), lig.sample(r), cam.sample(r)
    p['q'], p['seed'] = r.rand(11), r.uniform(0, 40)
    p['mott'], p['lump'] = r.uniform(.005, .035) if r.rand() < .7 else r.uniform(.035, .08), r.uniform(0, 1)
    p['gloss'] = r.uniform(.05, .35) if r.rand() < .7 else r.uniform(.35, .8)
    p['skin'] = soap.lin(np.array([(.88, .66, .55), (.78, .55, .42), (.55, .36, .25), (.38, .24, .17), (.15, .25, .45), (.05, .05, .055), (.85, .85, .82)]
                                  [r.choice(7, p=[.25, .2, .2, .13, .1, .07, .05])]) * r.uniform(.93, 1.05))
    sc = p['scene']
    its = [k for k, i in enumerate(sc['items']) if i['mat'] == 0] or [0]
    p['main'] = its[-1] if sc['pose'] == 'row' else its[0]
    h = np.array(sc['items'][p['main']]['H']) if sc['items'] else np.ones(3)
    sp = h * np.array([r.uniform(-.65, .65), r.uniform(-.65, .65), r.uniform(-.65, .65)])
    if need == 'top':
        ax, sg = (2 if sc['ttype'] else 1), 1
    elif need == 'side':
        ax, sg = (2, -1) if sc['ttype'] else ((1, -1) if sc['pose'] == 'bottomup' else (0, 1 if 'loaf' not in sc['pose'] else r.choice([-1, 1])))
    else:
        ax, sg = (1 if need == 'any' and sc['pose'] in ('loaf', 'half', 'mould', 'standtop') and r.rand() < .65 else 2), 1
    sp[ax] = sg * h[ax]
    p['spot'] = sp
    return p


def geometry(ps, hw, dev):
    """blocks of all pictures in one table"""
    K, m = sce.K, len(ps)
    g = dict(C=np.zeros((m, K, 3)), R=np.tile(np.eye(3), (m, K, 1, 1)), H=np.ones((m, K, 3)), rad=np.full((m, K), .1), rnd=np.zeros((m, K)),
             wave=np.zeros((m, K)), on=np.zeros((m, K)), mat=np.zeros((m, K)), koff=np.zeros((m, K)))
    for i, p in enumerate(ps):
        for k, it in enumerate(p['scene']['items'][:K]):
            for a in ('C', 'R', 'H', 'rad', 'rnd', 'wave', 'mat'):
                g[a][i, k] = it[a]
            g['on'][i, k], g['koff'][i, k] = 1, (k * 3.1 + p['seed']) if it['mat'] == 0 else 0
            g['rad'][i, k] = min(it['rad'], .45 * min(it['H']))
    g['wl'], g['ph'] = np.array([p['scene']['wl'] for p in ps]), np.array([p['scene']['ph'] for p in ps])
    g = {k: torch.tensor(v, dtype=torch.float32, device=dev) for k, v in g.items()}
    ro, fw, rt, up, tn = [], [], [], [], []
    for p in ps:
        s = p['scene']
        f = s['tgt'] - s['cam']
        f = f / np.linalg.norm(f)
        a = np.cross(f, [0, 1, 0.0])
        a = a / (np.linalg.norm(a) + 1e-6)
        b = np.cross(a, f)
        c, d = np.cos(s['roll']), np.sin(s['roll'])
        ro.append(s['cam']), fw.append(f), rt.append(a * c + b * d), up.append(b * c - a * d), tn.append(np.tan(s['fov'] / 2))
    T = lambda v: torch.tensor(np.array(v), dtype=torch.float32, device=dev)
    H, W = hw
    yy, xx = torch.meshgrid(torch.linspace(1, -1, H, device=dev) * H / max(H, W), torch.linspace(-1, 1, W, device=dev) * W / max(H, W), indexing='ij')
    t = T(tn).view(-1, 1, 1, 1)
    bc = tr.bc
    rd = bc(T(fw)) + t * (xx * bc(T(rt)) + yy * bc(T(up)))
    return g, T(ro), rd / rd.norm(dim=1, keepdim=True)


def draw(n, size, seed, device, clean=0.4, force=None, ss=None):
    from bench_paint import chunk
    dev = torch.device(device)
    ss = ss or 1.5
    per = max(1, int(5.0e6 / (size[0] * size[1] * ss * ss)))
    outs = []
    was = torch.backends.cuda.matmul.allow_tf32, torch.backends.cudnn.allow_tf32
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = False
    with torch.no_grad(), torch.autocast(dev.type, enabled=False):
        for j, a in enumerate(range(0, n, per)):
            k = min(per, n - a)
            ps = [plan(np.random.RandomState((int(seed) * 1000003 + a + i) % (2 ** 31 - 1)), clean,
                       None if force is None else force[(a + i) % len(force)]) for i in range(k)]
            gen = torch.Generator(device=dev).manual_seed(int(seed) * 7919 + j)
            outs.append(chunk(ps, size, ss, gen, dev))
    torch.backends.cuda.matmul.allow_tf32, torch.backends.cudnn.allow_tf32 = was
    return {k: torch.cat([o[k] for o in outs]) for k in outs[0]}
