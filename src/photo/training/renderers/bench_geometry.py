"""Blocks and rays of a chunk of pictures."""
import numpy as np
import torch
import bench_scene as sce
import bench_trace as tr


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
