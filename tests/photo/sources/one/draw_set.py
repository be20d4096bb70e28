"""Write a labelled set of soap pictures: python3 draw_set.py OUT SEED [FIRST LAST]"""
import json
import os
import sys
import numpy as np
from PIL import Image
from base import DECEIVE, STYLES
from flaws import IDS
from picture import draw


def plan_flawed(rng, first, second):
    p = dict(kind='soap', flaws=[], deceive=[])
    for n in filter(None, (first, second)):
        p['flaws'].append((n, float(rng.uniform(.15, 1) ** .8), float(rng.choice([rng.uniform(.12, .4), rng.uniform(.4, .9), 1.0]))))
    names = [f[0] for f in p['flaws']]
    if 'layer-gap' in names:
        p['style'] = 'layers'
    elif 'colour-bled' in names:
        p['style'] = ['swirl', 'layers', 'hanger'][rng.integers(3)]
    else:
        p['style'] = 'plain' if rng.random() < .55 else STYLES[rng.integers(len(STYLES))]
        if rng.random() < .15:
            p['deceive'] = [['oats', 'poppy', 'dew', 'gobo', 'glare', 'label', 'stamp'][rng.integers(7)]]
    if {'white-specks', 'powdery-film'} & set(names):
        p['pale'] = bool(rng.random() < .12)
    if {'crackle-network', 'brown-outside-in', 'orange-spots', 'dark-centre-ring'} & set(names):
        p['pale'] = bool(rng.random() < .75)
    return p


def plans(rng):
    out = []
    order = list(IDS) * 8 + [IDS[i] for i in (6, 10, 11, 13, 6, 10, 11, 13, 14, 15)]
    for k, n in enumerate(order):
        two = None
        if rng.random() < .38:
            two = IDS[rng.integers(16)]
            clash = {two, n} <= {'powdery-film', 'wrinkled-top', 'mould-dimples'} or two == n
            cross = {two, n} & {'wrinkled-top', 'mould-dimples', 'powdery-film'} and {two, n} & {
                'colour-bled', 'layer-gap', 'drag-lines', 'dark-centre-ring', 'brown-outside-in'}
            two = None if clash or cross or {two, n} == {'colour-bled', 'layer-gap'} else two
        out.append(plan_flawed(rng, n, two))
    for k in range(30):
        out.append(dict(kind='soap', flaws=[], deceive=[], style='plain'))
    for k in range(36):
        w = (DECEIVE + STYLES)[k % 19]
        d = [w] if w in DECEIVE else []
        st = w if w in STYLES else ('plain' if rng.random() < .5 else STYLES[rng.integers(len(STYLES))])
        if rng.random() < .3:
            d = d + [x for x in [DECEIVE[rng.integers(len(DECEIVE))]] if x not in d]
        out.append(dict(kind='soap', flaws=[], deceive=d, style=st))
    out += [dict(kind='none', flaws=[], deceive=[]) for _ in range(12)]
    out += [dict(kind='poor', flaws=[], deceive=[], style=['plain', 'swirl', 'layers'][k % 3]) for k in range(12)]
    near = [IDS[i] for i in rng.permutation([0, 1, 2, 3, 4, 5, 7, 8, 9, 12, 14, 15])]
    for n in near:
        p = plan_flawed(rng, n, None)
        p.update(kind='close', flaws=[(n, float(rng.uniform(.5, 1)), 1.0)], deceive=[])
        out.append(p)
    return out


def main(out, seed, first=0, last=None):
    os.makedirs(out, exist_ok=True)
    todo = plans(np.random.default_rng(seed))
    names = np.random.default_rng([seed, 1]).permutation(len(todo))
    labels = []
    for k, p in list(enumerate(todo))[first:last]:
        best = None
        for tries in range(4):                                 # a flaw that cannot be seen: try again
            img, mask, present, share, q = draw(p, [seed, k, tries])
            low = p['kind'] != 'none' and mask.mean() < .04
            if not low and (p['kind'] == 'poor' or len(present) >= min(len(p['flaws']), 1) and (
                    not p['flaws'] or p['flaws'][0][0] in present)):
                break
            p['flaws'] = [(n, min(s * 1.3 + .1, 1), e) for n, s, e in p['flaws']]
        name = f'soap-{names[k]:03d}'
        img.save(os.path.join(out, name + '.jpg'), quality=q)
        Image.fromarray(mask.astype(np.uint8) * 255).save(os.path.join(out, name + '-bar.png'))
        tricky = bool(p['deceive']) or p.get('style', 'plain') != 'plain'
        row = dict(file=name + '.jpg', present=present, tricky=tricky and p['kind'] != 'poor')
        if p['kind'] == 'none':
            row['soap'] = False
        if p['kind'] == 'poor':
            row['poor'] = True
        row.update(bar=name + '-bar.png', share=share)
        labels.append((int(names[k]), row))
    with open(os.path.join(out, 'labels.json'), 'w') as f:
        json.dump([r for _, r in sorted(labels, key=lambda x: x[0])], f, indent=1)


if __name__ == '__main__':
    a = sys.argv
    main(a[1], int(a[2]), *map(int, a[3:5]))
