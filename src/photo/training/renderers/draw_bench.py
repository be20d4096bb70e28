"""draw(n, size, seed, device): phone pictures of soap with the flaws that can be seen."""
import os
import sys
import numpy as np
import torch
sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
import bench_camera as cam
import bench_light as lig
import bench_scene as sce
import bench_soap as soap
import bench_table as tab
from bench_flaws import NVAR
from bench_paint import chunk

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


def draw(n, size, seed, device, clean=0.4, force=None, ss=None):
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
