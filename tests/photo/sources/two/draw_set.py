"""python3 draw_set.py OUT SEED: writes 240 labelled pictures of soap into OUT."""
import json
import os
import sys
if os.path.isdir('/usr/lib/python3/dist-packages'):  # Debian's numpy before any other: its scipy needs it
    sys.path.insert(1, '/usr/lib/python3/dist-packages')
import numpy as np
from PIL import Image
from flaws_b import TABLE
from picture import Picture
from things import Still

NAMES = list(TABLE)


def plan(rng):
    """240 jobs: (kind, flaws)."""
    jobs = []
    firsts = [NAMES[i % 16] for i in range(138)]
    for f in firsts:
        two = rng.random() < .33
        g = str(rng.choice([n for n in NAMES if n != f])) if two else None
        jobs.append(('flawed', [f, g] if g else [f]))
    jobs += [('clean', [])] * 30 + [('tricky', [])] * 36
    jobs += [('none', ['things', 'animal', 'kitchen', 'things'][i % 4]) for i in range(12)]
    jobs += [('poor', [NAMES[rng.integers(16)]] if i % 2 else []) for i in range(12)]
    order = rng.permutation(16)
    jobs += [('close', [NAMES[order[i]]]) for i in range(12)]
    return [jobs[i] for i in rng.permutation(len(jobs))]


def draw(kind, flaws, seed):
    """Picture, mask, label without the names."""
    if kind == 'none':
        s = Still(seed, flaws)
        a = s.make()
        return a, np.zeros(a.shape[:2], bool), dict(present=[], tricky=False, soap=False, share={}), s.phone
    poor = ['blur', 'shake', 'dark', 'dark'][seed % 4] if kind == 'poor' else None
    p = None
    for t in range(12):
        p = Picture(seed + t * 1000003, flaws, kind == 'tricky' or kind == 'flawed' and seed % 7 == 0, poor, kind == 'close')
        a, bar, present, share = p.make()
        if poor or not flaws or flaws[0] in present and bar.mean() > .03:
            break
    lab = dict(present=present, tricky=bool(p.tricky), share=share)
    if poor:
        lab['poor'] = True
    return a, bar, lab, p.phone


def main(out, seed):
    os.makedirs(out, exist_ok=True)
    rng = np.random.default_rng(seed)
    labels = []
    for i, (kind, flaws) in enumerate(plan(rng)):
        a, bar, lab, phone = draw(kind, flaws, seed * 100000 + i * 37)
        name = f'b{i:03d}'
        Image.fromarray(a).save(os.path.join(out, name + '.jpg'), quality=phone.quality)
        Image.fromarray((bar * 255).astype(np.uint8)).save(os.path.join(out, name + '-bar.png'))
        labels.append(dict(file=name + '.jpg', **lab, bar=name + '-bar.png'))
        with open(os.path.join(out, 'labels.json'), 'w') as f:
            json.dump(labels, f, indent=0)


if __name__ == '__main__':
    main(sys.argv[1], int(sys.argv[2]))
