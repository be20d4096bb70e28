"""Solid texture of soap, its flaws, its deceivers, and tables. F: fields [k,H,W]; M: dict alb [k,3,H,W], h, gloss, tr."""
import torch
from slab_core import *


def over(M, al, col):
    """col [k,3,1,1] or [k,3,H,W]"""
    M['alb'] = M['alb'] + (col - M['alb']) * al[:, None]


def where_idx(t, v):
    return (t.view(-1) == v).nonzero().view(-1)


def make_col(pal, m):
    def col(j):
        j = torch.remainder(j, m)
        c = pal[:, 0][:, :, None, None] * 1.0
        for t in range(1, 4):
            c = torch.where((j == t)[:, None], pal[:, t][:, :, None, None], c)
        return c
    return col


def design(F, q):
    """q: per picture [k,1,1] and pal [k,4,3]. Leaves F['s'] etc. for the flaws that follow borders."""
    x, y, z = F['x'] / F['a'], F['y'] / F['b'], F['w']
    n = fbm(F['x'] * .35, F['y'] * .35, F['w'] * .3, q['o'], 3) - .5
    n2 = fbm(F['x'] * 1.1, F['y'] * 1.1, F['w'] * .8, q['o'] + 9, 3) - .5
    wav = q['wav']
    k = q['des']
    yl = (y + 1) * .5
    layers = yl * q['nl'] + wav * (n[0] * 2.2 + n2[1] * .25)
    half = (x + wav * n[0] * 3) * .8 + 1
    ta = q['o'] * 2.1
    cu, su = torch.cos(ta), torch.sin(ta)
    uu, vv = F['x'] * cu + F['y'] * su + 1.3 * n[1], -F['x'] * su + F['y'] * cu + 1.3 * n[2]
    n3 = fbm(uu * .28, vv * .95, F['w'] * .3, q['o'] + 4, 4) - .5
    pot = n[0] * q['f1'] * .7 + n3[1] * q['f1'] * 1.1 + .35 * q['f1'] * yl
    wx, wy = x + n[0] * 1.4 * wav + .2 * torch.sin(y * 4 + z * .3), y + n[1] * 1.2 * wav
    tai = torch.sin(wx * q['f1'] * 1.3 + 2 * n[2] + q['o']) * .9 + 1.2 + .8 * torch.sin(wy * 3 + wx * 2)
    rr = torch.sqrt((x * 1.2) ** 2 + (y - .1) ** 2) + n[0] * wav * 1.3
    ring = rr * q['f1'] * .8
    feather = yl * q['f1'] * 1.2 + .9 * torch.sin(wx * 5 + q['o']).abs() + n2[2] * wav
    s = torch.where(k == 1, layers, torch.where(k == 2, half, torch.where(k == 3, pot + 6, torch.where(
        k == 4, tai + 2, torch.where(k == 5, ring, torch.where(k == 6, feather, torch.full_like(x, .4) + 0 * x))))))
    F['s'] = s
    F['gs'] = torch.where(k <= 2, .5 * q['nl'] / F['b'], q['f1'] * .3)  # s per cm
    i = torch.floor(s)
    f = s - i
    F['si'], F['sf'] = i, f
    pal = q['pal']
    F['col'] = col = make_col(pal, q['nc'])
    e = q['edge']
    c = mix(col(i), col(i + 1), sstep(1 - e, 1.0, f)[:, None])
    # ombre
    om = (k == 7)
    c = torch.where(om[:, None], mix(pal[:, 0][:, :, None, None], pal[:, 1][:, :, None, None],
                                     (yl + .25 * n[0]).clamp(0, 1)[:, None]), c)
    plain = (k == 0)
    c = torch.where(plain[:, None], pal[:, 0][:, :, None, None] + 0 * c, c)
    # natural mottle & grain
    mot = 1 + q['mot'] * (n[3] * .9 + n2[3] * .5)
    fine = noise(F['x'] * 9 + q['o'], F['y'] * 9, F['w'] * 9)
    mot = mot + .04 * (fine[0] - .5)
    M = dict(alb=(c * mot[:, None]).clamp(.004, .95))
    rim = (1 - F['ins'] / .5).clamp(0, 1)
    M['alb'] = M['alb'] * (1 - q['rind'] * .12 * rim)[:, None]
    fd = sstep(.09, .03, F['px'])
    M['h'] = q['bump'] * (.008 * fd * (fine[1] - .5) + .03 * n2[0]) + .0035 * fd * F['cut'] * q['wire'] * (
        noise((F['x'] * q['wc'] + F['y'] * q['ws']) * 7 + q['o'], F['x'] * .15, F['y'] * .15)[2] - .5)
    # mica line at borders
    ml = q['mica'] * torch.exp(-(torch.minimum(f, 1 - f) / F['gs'] / .035) ** 2) * (n2[2] > -.2).float()
    ml = ml * ((k >= 1) & (k <= 2)).float()
    over(M, ml * .9, q['mcol'])
    M['gloss'] = q['gl'] + .25 * ml + 0 * x
    M['h'] = M['h'] - .01 * ml
    F['n'], F['n2'] = n, n2
    return M


def region(F, q, fr=.45, ch=0):
    """where within the bar the flaw dwells: ext 0..1"""
    nn = fbm(F['x'] * fr, F['y'] * fr, F['w'] * fr, q['o'] * 1.31 + 2.2, 2)[ch]
    return sstep(0, .12, nn - (.78 - .85 * q['ext']))


def V(q, a, b, c):
    v = q['v']
    return torch.where(v == 0, torch.full_like(v, a), torch.where(v == 1, torch.full_like(v, b), torch.full_like(v, c)))


def soft(d, px_over_r=0.12):
    return sstep(1 + px_over_r, 1 - px_over_r, d)


def C3(c):
    return c[:, :, None, None] if c.dim() == 2 else c


def f_specks(M, F, q, white=False):
    reg = region(F, q)
    fr = V(q, 4.2, 1.7, 2.6) * (1 + .4 * (q['r0'] - .5)) if not white else V(q, 4.2, 1.4, 2.5) * (1 + .4 * (q['r0'] - .5))
    st = q['st']
    tot = torch.zeros_like(F['x'])
    for k, (m, d) in enumerate(((1., .55), (2.1, .5))):
        dd, r, ox, oy = dots(F['x'] + .03 * F['n2'][0], F['y'] + .1 * F['n2'][1], F['w'], fr * m, d * (.3 + .7 * st), .09 + .1 * st, .22 + .2 * st, q['o'] + 3 * k)
        tot = torch.maximum(tot, soft(dd, .3) * (.55 + .45 * r))
    # comets: long soft tails
    ang = q['r1'] * 3
    ca, sa = torch.cos(ang), torch.sin(ang)
    u, v = F['x'] * ca + F['y'] * sa + .25 * F['n'][0], -F['x'] * sa + F['y'] * ca + .25 * F['n'][1]
    dd, r, ox, oy = dots(u * .33, v, F['w'], fr * .8, .35 * torch.ones_like(fr), .1, .3, q['o'] + 11)
    com = sstep(1.1, .2, dd) * (.4 + .6 * sstep(-1, 1, ox)) * (q['v'] == 2).float()
    tot = torch.maximum(tot, com * (0 if white else .85))
    if white:
        tot = torch.maximum(tot * sstep(.0, .15, F['n2'][2] + .5), 0 * tot)
        al = (tot * reg * (.45 + .55 * st)).clamp(0, 1)
        over(M, al, C3(q['white']))
        M['h'] = M['h'] + al * .015 * (q['r2'] - .4)
        M['gloss'] = M['gloss'] * (1 - .6 * al)
    else:
        al = (tot * reg * (.5 + .5 * st)).clamp(0, 1)
        over(M, al, C3(q['pig']))


def f_white(M, F, q):
    f_specks(M, F, q, True)


def f_smears(M, F, q):
    reg = region(F, q, .4)
    ang = q['r0'] * 3.14
    ca, sa = torch.cos(ang), torch.sin(ang)
    cv = V(q, .25, 1.6, .8)
    u = F['x'] * ca + F['y'] * sa + cv * F['n'][0]
    v = -F['x'] * sa + F['y'] * ca + cv * F['n'][1]
    a = fbm(u * .35, v * V(q, 3., 2.2, 1.4), F['w'] * .5, q['o'] + 4, 3)
    s = sstep(.60 - .08 * q['st'], .74, a[0]) * (.5 + .5 * a[1])
    al = (s * reg * (.4 + .6 * q['st']) * 1.3).clamp(0, 1)
    over(M, al, C3(q['pig']))


def f_veins(M, F, q):
    reg = region(F, q, .3)
    fr = V(q, .8, .5, 1.5)
    n = fbm(F['x'] * fr + .5 * F['n2'][0], F['y'] * fr + .5 * F['n2'][1], F['w'] * fr * .5, q['o'] + 6, 3)
    w = V(q, .025, .06, .045) * (.6 + .8 * q['st']) * (.5 + n[2])
    r = torch.maximum(sstep(w, w * .35, (n[0] - .5).abs()), sstep(w, w * .35, (n[1] - .47).abs()) * (q['v'] > 0).float())
    al = r * reg * (.35 + .6 * q['st'])
    d = M['alb'].clamp(.01, .9)
    over(M, al, d ** 1.5 * .72)
    M['gloss'] = M['gloss'] + .15 * al
    M['h'] = M['h'] - .008 * al


def face_uv(F):
    u = torch.where(F['fc'] == 2, F['w'], F['x'])
    v = torch.where(F['fc'] == 1, F['w'], F['y'])
    return u, v


def f_crackle(M, F, q):
    reg = region(F, q, .35)
    u, v = face_uv(F)
    fr = V(q, 3.6, 2.2, 5.5) * (1 + .4 * (q['r0'] - .5))
    wu, wv = u * fr + F['n2'][0] * 1.6, v * fr + F['n2'][1] * 1.6
    _, e, rid = worley2(wu, wv, q['o'])
    _, e2, _ = worley2(wu * 2.1 + 5, wv * 2.1, q['o'] + 5)
    w = .06 + .09 * q['st']
    ln = torch.maximum(sstep(w * 1.5, w * .4, e), .6 * sstep(w * 1.6, w * .5, e2) * (q['v'] != 1).float())
    al = ln * reg * (.35 + .6 * q['st'])
    over(M, reg * (1 - ln) * .22 * q['st'] * (.5 + rid), C3(q['white']))
    over(M, al, M['alb'].clamp(.01, .9) ** 1.45 * .66)
    M['h'] = M['h'] - .006 * al


def f_ash(M, F, q):
    reg = region(F, q, .4)
    edge = sstep(.9, .1, F['ins'])
    wh = torch.where(q['v'] == 0, F['top'], torch.where(q['v'] == 1, (F['top'] + .7 * edge).clamp(0, 1), (F['top'] + F['cut'] * .8 + F['side'] * .8).clamp(0, 1)))
    n = fbm(F['x'] * 1.8, F['y'] * 1.8, F['w'] * 1.8, q['o'] + 8, 4)
    g = noise(F['x'] * 22, F['y'] * 22, F['w'] * 22)
    al = wh * reg * (.35 + .65 * q['st']) * sstep(.15, .7, n[0] + .35 * q['ext']) * (.55 + .75 * g[0])
    al = (al * 1.1).clamp(0, .93)
    over(M, al, C3(q['white']) * .97)
    M['gloss'] = M['gloss'] * (1 - .95 * al.clamp(0, 1))
    M['h'] = M['h'] + al * .012 * (g[1] - .3)


def f_gel(M, F, q):
    p = 2.6
    x = (F['x'] / F['a'] + (q['r0'] - .5) * .5 * (q['v'] == 1).float() + .10 * F['n'][0] + .03 * F['n2'][0])
    y = (F['y'] / F['b'] + (q['r1'] - .5) * .5 + .10 * F['n'][1] + .03 * F['n2'][1])
    r = (x.abs() ** p + y.abs() ** p + 1e-6) ** (1 / p)
    R = .42 + .4 * q['ext']
    core = sstep(R + .05, R - .03, r) * (q['v'] != 2).float() + sstep(R + .05, R - .25, r) * .35 * (q['v'] == 2).float()
    line = torch.exp(-((r - R) / (.03 + .03 * q['r2'])) ** 2) * (F['n'][2] > -.1 - q['ext']).float()
    on = F['cut']
    st = q['st']
    over(M, core * on * (.22 + .6 * st), M['alb'].clamp(.01, .9) ** 1.35 * .72)
    over(M, line * on * (.25 + .6 * st) * (.5 + .5 * (q['v'] == 2).float()), M['alb'].clamp(.01, .9) ** 1.4 * .62)
    M['gloss'] = M['gloss'] + .12 * core * on


def f_orange(M, F, q):
    reg = region(F, q, .3)
    fr = V(q, .65, 1.7, .8) * (1 + .4 * (q['r0'] - .5))
    st = q['st']
    dd, r, ox, oy = dots(F['x'] + .12 * F['n2'][0], F['y'] + .12 * F['n2'][1], F['w'], fr, .3 + .5 * q['ext'], .22, .45, q['o'])
    d2, r2, _, _ = dots(F['x'] + .1 * F['n2'][2], F['y'], F['w'], fr * 1.9, .35 * q['ext'], .1, .3, q['o'] + 6)
    halo = torch.maximum(sstep(1.15, .15, dd), .8 * sstep(1.1, .2, d2))
    core = torch.maximum(sstep(.55, .15, dd), sstep(.6, .2, d2)) * (q['v'] != 2).float()
    pat = sstep(.52, .75, fbm(F['x'] * .7, F['y'] * .7, F['w'] * .7, q['o'] + 2, 3)[1]) * (q['v'] == 2).float()
    halo = torch.maximum(halo, pat * .8)
    org = C3(q['org'])
    over(M, (halo * reg * (.25 + .6 * st)).clamp(0, .95), M['alb'] * .25 + .75 * org * M['alb'].mean(1, True).clamp(.25, .7) * 1.6)
    over(M, core * reg * (.3 + .6 * st), org * .55)
    M['gloss'] = M['gloss'] + .2 * core * reg * q['r1']


def f_pin(M, F, q):
    reg = region(F, q, .4)
    st = q['st']
    fr = V(q, 4.2, 1.9, 2.8) * (1 + .4 * (q['r0'] - .5))
    tot, dep, rim = 0, 0, 0
    for k, m in enumerate((1., 1.9)):
        dd, r, ox, oy = dots(F['x'], F['y'], F['w'], fr * m, .35 + .6 * q['ext'] + 0 * st, .12 + .06 * st, .25 + .2 * st, q['o'] + 4 * k)
        c = (1 - dd * dd).clamp(0, 1)
        tot = torch.maximum(tot * torch.ones_like(c), soft(dd, .2) * (.5 + .5 * c))
        dep = dep + torch.sqrt(c) * .35 / (fr * m)
    near = torch.where(q['v'] == 2, sstep(.5, .15, torch.minimum(F['sf'], 1 - F['sf'])) * .6 + .4 * (F['n'][0] > 0).float(), torch.ones_like(reg))
    al = tot * reg * near
    over(M, al * (.3 + .5 * st), M['alb'] ** 1.3 * .28)
    M['h'] = M['h'] - dep * reg * near * (.35 + .5 * st)


def f_crack(M, F, q):
    st = q['st']
    z = F['w']
    nn = fbm(z * .35 + 3, F['y'] * .35, z * 0, q['o'], 3)
    jag = fbm(z * 2.5, F['y'] * 2.5, z * 0, q['o'] + 5, 2)
    x0 = F['a'] * (q['r0'] - .5) * .5 + (nn[0] - .5) * 2.2 + (jag[0] - .5) * .3
    depth = F['b'] * (.15 + 1.5 * q['ext'] * q['r1'])
    dpt = (F['b'] - F['y']) / depth
    w = (.02 + .20 * st * st) * (1 - dpt.clamp(0, 1)) * (.45 + 1.1 * jag[1]) + .012
    alo = sstep(.0, .1, nn[2] - .62 + .55 * q['ext'] + .2)

    def cut(d, w):
        return sstep(w * 1.15, w * .75, d.abs())
    m = cut(F['x'] - x0, w)
    m2 = cut(F['x'] - x0 - (nn[1] - .45) * 3 - .15, w * .5) * (q['v'] == 2).float()
    m3 = cut(F['x'] - x0 + (jag[2] - .3) * 1.6, w * .4) * (q['v'] >= 1).float()
    m = torch.maximum(m, torch.maximum(m2, m3)) * (dpt < 1).float() * alo
    over(M, m * (.75 + .2 * st), M['alb'] ** 1.5 * .10)
    lip = torch.exp(-((F['x'] - x0).abs() / (w * 2.2 + .1)) ** 2) * (dpt < 1).float() * alo
    M['h'] = M['h'] - m * (.08 + .12 * st) + F['top'] * lip * .10 * st
    M['gloss'] = M['gloss'] * (1 - m)


def f_brown(M, F, q):
    d = torch.minimum(F['a'] - F['x'].abs(), F['b'] - F['y'].abs()).clamp(min=0)
    d = torch.where(F['rnd'] > .5, (1 - torch.sqrt((F['x'] / F['a']) ** 2 + (F['y'] / F['b']) ** 2 + 1e-6)).clamp(min=0) * F['a'], d)
    dz = F['cut'] * d + (1 - F['cut']) * 0
    w = (.25 + 1.1 * q['ext']) * (1 + (V(q, .5, .3, 1.8)) * F['n'][0])
    band = torch.where(q['v'] == 1, sstep(w * 1.1, w * .85, dz), torch.exp(-(dz / w.clamp(min=.1)) ** 1.6))
    al = band * (.25 + .65 * q['st'])
    over(M, al.clamp(0, .95), C3(q['brown']) * (.55 + .8 * M['alb'].mean(1, True)))


def f_bled(M, F, q):
    f, i = F['sf'], F['si']
    dcm = f / F['gs']
    w = (.15 + .9 * q['ext']) * (.35 + 1.3 * (F['n2'][3] + .5)) * V(q, .7, 1.2, 1.)
    wis = torch.where(q['v'] == 2, sstep(.35, .65, fbm(F['x'] * 1.5, F['y'] * .6, F['w'], q['o'], 3)[0]) * 1.2, torch.ones_like(f))
    which = (torch.remainder(i - 1 + torch.round(q['r0'] * 3), 2) < .5).float()
    which = torch.where(q['r1'] < .5, torch.ones_like(which), which)
    al = torch.exp(-(dcm / w.clamp(min=.05)) ** 1.3) * which * (.3 + .65 * q['st']) * wis
    al = al * region(F, q, .25) if True else al
    over(M, al.clamp(0, .95), F['col'](i - 1) * .95)


def f_drag(M, F, q):
    ang = torch.where(q['r0'] < .5, torch.zeros_like(q['r0']), torch.full_like(q['r0'], 1.57)) + (q['r1'] - .5) * .5
    ca, sa = torch.cos(ang), torch.sin(ang)
    cv = V(q, 0., .0, .045)
    t = F['x'] * ca + F['y'] * sa
    l = -F['x'] * sa + F['y'] * ca
    t = t + cv * l * l
    a = noise(t * V(q, 9., 3.5, 6.) + q['o'], l * .10, F['w'] * .2 + q['o'])
    b = noise(t * V(q, 21., 8., 14.) + q['o'], l * .2, F['w'] * .2)
    ridge = sstep(.72 - .2 * q['ext'], .92 - .2 * q['ext'], a[0])
    chat = (.5 + .5 * torch.sin(l * 9 + 3 * a[2])) * (q['v'] == 2).float() * .4
    reg = region(F, q, .25) * F['cut']
    g = (ridge * (.7 + .3 * chat) + .25 * (b[1] - .5)) * reg
    M['h'] = M['h'] - g * (.012 + .05 * q['st'])
    over(M, (ridge * reg * (.08 + .3 * q['st'])).clamp(0, 1), M['alb'] * torch.where(a[1] > .5, 1.35, .6)[:, None].clamp(0, 2))


def f_gap(M, F, q):
    st = q['st']
    lay = ((F['gs'] > 0) & (F['isl'] > .5)).float()
    k = torch.ceil(q['nlq'] * .5)
    d = torch.where(lay > .5, (F['s'] - k) / F['gs'], F['y'] - F['b'] * (q['r0'] - .5) * .8 - .5 * F['n'][0])
    jag = fbm(F['x'] * 2, F['y'] * 2, F['w'] * 2, q['o'], 3)
    side = torch.where(q['r1'] < .5, F['x'] / F['a'], -F['x'] / F['a'])
    reach = sstep(-1.1 + 2 * (1 - q['ext']), -.7 + 2 * (1 - q['ext']) + .3, side)
    reach = torch.where(q['v'] == 0, sstep(.0, .1, F['n'][2] + q['ext'] - .35), reach)
    w = (.015 + V(q, .05, .14, .09) * st) * reach * (.5 + V(q, .6, .5, 1.6) * jag[0])
    on = (1 - F['top']) * (reach > .02).float()
    m = sstep(w * 1.15 + 1e-4, w * .7, d.abs()) * on
    over(M, m * .92, M['alb'] ** 1.5 * .07)
    M['h'] = M['h'] - m * .12
    M['gloss'] = M['gloss'] * (1 - m)


def f_wrinkle(M, F, q):
    reg = region(F, q, .3) * F['top']
    fr = V(q, 1.1, 2.2, .7) * (1 + .5 * (q['r0'] - .5))
    x, z = F['x'], F['w']
    n = fbm(x * fr + .8 * F['n2'][0], z * fr * V(q, 1., 1., .35), x * 0, q['o'], 2)
    a = (n[0] - .5).abs() * 5
    b = (n[1] - .5).abs() * 5
    hgt = torch.sqrt(torch.minimum(a, b).clamp(0, 1))
    rip = .5 + .5 * torch.sin((z * 1.2 + 2.5 * (n[2] - .5) * 3) * 4)
    hgt = torch.where(q['v'] == 2, rip * .6 + .4 * hgt, hgt)
    M['h'] = M['h'] + (hgt - 1) * reg * (.05 + .22 * q['st']) / fr.clamp(min=1)
    over(M, reg * (1 - hgt) ** 2 * (.2 + .5 * q['st']), M['alb'] ** 1.25 * .6)
    M['gloss'] = M['gloss'] + .15 * reg * q['r1']


def f_dimples(M, F, q):
    reg = region(F, q, .3) * F['side']
    u = F['w'] * F['isx'] + F['x'] * (1 - F['isx'])
    y = F['y'] * F['isx'] + F['w'] * (1 - F['isx'])
    fr = V(q, 2.2, 1., 1.2) * (1 + .5 * (q['r0'] - .5))
    dd, r, _, _ = dots(u, y, u * 0 + .35, fr, .5 + .4 * q['ext'], .3, .46, q['o'] * 0 + torch.floor(q['o']))
    # flattened in the third axis: use 2-D distance only roughly
    pit = torch.sqrt((1 - dd * dd).clamp(0, 1))
    n = fbm(u * .8, y * .8, u * 0, q['o'], 3)
    cr = sstep(.07, .0, (n[0] - .5).abs()) + .7 * sstep(.05, 0, (n[1] - .5 + .15 * u * .2).abs())
    fold = torch.exp(-((u * torch.cos(q['r1'] * 3) + y * torch.sin(q['r1'] * 3) + .5 * (n[2] - .5)) / .1) ** 2) * 1.3
    d = torch.where(q['v'] == 0, pit, torch.where(q['v'] == 1, cr, fold + cr * .5))
    M['h'] = M['h'] - d * reg * (.06 + .20 * q['st'])
    over(M, (d * reg * (.14 + .26 * q['st'])).clamp(0, .6), M['alb'] * .5)


FLAWS = [f_specks, f_smears, f_white, f_veins, f_crackle, f_ash, f_gel, f_orange, f_pin, f_crack, f_brown, f_bled,
         f_drag, f_gap, f_wrinkle, f_dimples]


# ---- deceivers -------------------------------------------------------------------------------------------------
def d_glitter(M, F, q):
    dd, r, _, _ = dots(F['x'], F['y'], F['w'], 12 + 0 * q['o'], .5 + 0 * q['o'], .2, .45, q['o'])
    al = soft(dd, .2) * (F['top'] * .9 + (1 - F['top']) * .3 * (q['v'] == 1).float())
    over(M, al * (.3 + .7 * r), C3(q['mcol3']) * 1.4)
    M['gloss'] = M['gloss'] + al * 2.0 * (r > .6).float()


def d_seeds(M, F, q):
    fr = 3.6 + 1.5 * q['r0']
    dd, r, ox, oy = dots(F['x'], F['y'], F['w'], fr, .35 + .5 * q['ext'], .17, .24, q['o'])
    al = soft(dd, .25)
    over(M, al * .93, torch.tensor([.03, .032, .045], device=al.device).view(1, 3, 1, 1) * (.6 + r[:, None] * 1.2))
    M['h'] = M['h'] + torch.sqrt((1 - dd * dd).clamp(0, 1)) * .05
    M['gloss'] = M['gloss'] + al * .2


def d_coffee(M, F, q):
    dd, r, ox, oy = dots(F['x'] + .12 * F['n2'][0], F['y'] + .3 * F['n2'][1], F['w'], 5.5 + 0 * q['o'], .5 + .4 * q['ext'], .1, .36, q['o'])
    al = sstep(1.05, .8, dd + .5 * (noise(F['x'] * 9, F['y'] * 9, F['w'] * 9)[0] - .5))
    over(M, al * .9, torch.tensor([.06, .028, .014], device=al.device).view(1, 3, 1, 1) * (.6 + r[:, None]))
    M['h'] = M['h'] + al * .02


def d_oats(M, F, q):
    ang = dots(F['x'], F['y'], F['w'], 1.5 + 0 * q['o'], 1 + 0 * q['o'], .4, .45, q['o'])[1] * 3.1
    dd, r, ox, oy = dots(F['x'], F['y'], F['w'], 1.5 + 0 * q['o'], .4 + .5 * q['ext'], .28, .4, q['o'])
    u, v = ox * torch.cos(ang) + oy * torch.sin(ang), -ox * torch.sin(ang) + oy * torch.cos(ang)
    e = torch.sqrt(u * u + (v * 2.0) ** 2)
    al = sstep(1.05, .85, e) * (dd < 2).float()
    c = mix(torch.tensor([.62, .44, .24], device=al.device).view(1, 3, 1, 1), torch.tensor([.82, .70, .48], device=al.device).view(1, 3, 1, 1), (.5 + .5 * torch.cos(v * 6))[:, None])
    over(M, al * .9, c * (.7 + .3 * r[:, None]))
    M['h'] = M['h'] + (1 - e * e).clamp(0, 1) * .05 * al


def d_petals(M, F, q):
    on = F['top'] + (q['v'] == 2).float() * F['cut'] * .4
    ang = q['r0'] * 9
    tot = 0
    for k in range(2):
        u, v = F['x'] + .3 * F['n2'][k], F['w'] + .3 * F['n2'][2]
        dd, r, ox, oy = dots(u, F['y'] * .02 + 0 * u, v, .9 + .3 * k + 0 * q['o'], .55 + 0 * q['o'], .35, .46, q['o'] + 5 * k)
        dd = torch.sqrt(ox ** 2 + (2 * oy * 0 + dd * 1.0) ** 2)
        al = sstep(1.0, .85, dd * 1.1) * on
        c = mix(C3(q['pet']) * .45, C3(q['pet']), (.4 + .6 * sstep(0, 1, dd))[:, None]) * (.6 + .6 * r[:, None])
        over(M, al * .95, c)
        M['h'] = M['h'] + al * .09 * (.6 + .5 * torch.sin(ox * 5))
    return


def d_stamp(M, F, q):
    u, v = F['x'] / (F['b'] * .55), F['y'] / (F['b'] * .55)
    r = torch.sqrt(u * u + v * v + 1e-6)
    th = torch.atan2(v, u)
    ringd = torch.minimum((r - .95).abs(), (r - .82).abs() + .02)
    pet = (r - (.42 + .22 * torch.cos(th * (3 + torch.floor(q['r0'] * 5))))).abs()
    leaf = torch.minimum((u.abs() - .35 * (1 - v * v).clamp(0)).abs() + (v.abs() > .7).float(), u.abs() + (v.abs() > .7).float())
    hexa = (torch.maximum(u.abs() * .866 + v.abs() * .5, v.abs()) - .55).abs()
    fig = torch.where(q['v'] == 0, pet, torch.where(q['v'] == 1, leaf, hexa))
    d = torch.minimum(fig, torch.where(q['r1'] < .6, ringd, ringd + 9))
    m = sstep(.065, .03, d) * F['cut']
    M['h'] = M['h'] - m * (.05 + .06 * q['r2'])
    over(M, m * .25, M['alb'] * .6)
    over(M, m * .75 * (q['r3'] < .25).float(), C3(q['mcol3']))


def d_dew(M, F, q):
    u, v = face_uv(F)
    tot = 0
    for k, fr in enumerate((3., 6.5)):
        dd, r, ox, oy = dots(F['x'] * 1.0, F['y'] * 1.0, F['w'] * 1.0, fr + 0 * q['o'], .75 + 0 * q['o'], .2, .47, q['o'] + k)
        c = (1 - dd * dd).clamp(0, 1)
        al = soft(dd, .15)
        M['h'] = M['h'] + torch.sqrt(c) * .28 / fr
        over(M, al * .5, M['alb'] * (.72 + .5 * sstep(-1, 1, ox + oy))[:, None])
        M['gloss'] = M['gloss'] + al * 1.2


def d_embeds(M, F, q):
    dd, r, ox, oy = dots(F['x'] + .0, F['y'], F['w'] * .35, .62 + .5 * q['r0'], .6 + 0 * q['o'], .36, .46, q['o'])
    cub = torch.maximum(ox.abs(), oy.abs()) * 1.5 + (dd > 2).float() * 5
    d = torch.where(q['v'] == 0, dd, cub)
    al = sstep(1.03, .97, d)
    over(M, al * .97, C3(q['emb']) * (.75 + .4 * r[:, None]))
    M['h'] = M['h'] - .01 * sstep(.12, .0, (d - 1).abs())


def d_shavings(M, F, q):
    u, v = F['x'] + .5 * F['n2'][0], F['y'] + .5 * F['n2'][1]
    dd, r, ox, oy = dots(u * .6, v * 2.2, F['w'], 1.1 + .6 * q['r0'], .7 + 0 * q['o'], .3, .46, q['o'])
    over(M, sstep(1.05, .9, dd) * .9, C3(q['emb']) * (.6 + .6 * r[:, None]))


def d_label(M, F, q):
    sh = (q['r0'] - .5) * .5 * F['a']
    hw = F['a'] * (.22 + .25 * q['r1'])
    u = (F['x'] - sh) / hw
    m = sstep(1.01, .985, u.abs())
    pap = C3(q['paper']) * (1 + .08 * (noise(F['x'] * 15, F['y'] * 15, F['w'] * 15)[0] - .5))[:, None]
    over(M, m, pap + 0 * M['alb'])
    yy, b = F['y'] * torch.where(F['fc'] == 3, 1., 0.) , F['b']
    v = yy / b * 7
    row = torch.floor(v)
    wob = noise(F['x'] * 5.5, row * 3.3 + q['o'], row * 0 + q['o'])
    fr = v - row
    txt = ((fr > .3) & (fr < .7) & (u.abs() < .35 + .4 * wob[1]) & (wob[0] > .42) & (F['fc'] == 3) & (row.abs() < 4)).float()
    over(M, m * txt * .85, C3(q['ink']))
    M['h'] = M['h'] * (1 - m) + m * .03
    M['gloss'] = M['gloss'] * (1 - m) + m * .15
    M['lab'] = m


def d_bevel(M, F, q):
    """planed edges: a bright narrow facet"""
    m = sstep(.16, .12, F['ins']) * F['cut']
    M['h'] = M['h'] - (.16 - F['ins']).clamp(min=0) * .7 * F['cut']
    over(M, m * .15, M['alb'] * 1.3)


def d_mottle(M, F, q):
    n = fbm(F['x'] * .9, F['y'] * .9, F['w'] * .9, q['o'] + 3, 4)
    M['alb'] = (M['alb'] * (1 + .5 * (n[0] - .5))[:, None] * (1 + .08 * (n[1] - .5)[:, None])).clamp(.004, .95)


def d_topmica(M, F, q):
    n = fbm(F['x'] * 1.2 + F['n'][0], F['y'] * 0, F['w'] * .4, q['o'] + 3, 3)
    al = F['top'] * sstep(.5, .65, n[0]) * .8
    over(M, al, C3(q['mcol3']))
    M['gloss'] = M['gloss'] + .4 * al


def d_dust(M, F, q):
    """clay or cocoa line / flour-dusted corner crumbs"""
    dd, r, _, _ = dots(F['x'], F['y'], F['w'], 8 + 0 * q['o'], .25 + 0 * q['o'], .1, .35, q['o'])
    over(M, soft(dd, .3) * .7 * region(F, q), M['alb'] * .75 + .12)
    M['h'] = M['h'] + (1 - dd).clamp(0, 1) * .04


DECOYS = [d_glitter, d_seeds, d_coffee, d_oats, d_petals, d_stamp, d_dew, d_embeds, d_shavings, d_label, d_bevel,
          d_mottle, d_topmica, d_dust]


# ---- tables ----------------------------------------------------------------------------------------------------
def ground(F, q):
    """F: x,z (cm on the table), q: type gt, cols g1,g2 [k,3], o -> M"""
    x, z, o = F['x'], F['z'], q['o']
    M = dict(alb=C3(q['g1']) + 0 * x[:, None], h=0 * x, gloss=0 * x + q['ggl'])
    one = torch.ones_like(x)
    n = fbm(x * .25, z * .25, x * 0, o, 3)
    for t in range(10):
        i = where_idx(q['gt'], t)
        if len(i) == 0:
            continue
        X, Z, O, N = x[i], z[i], o[i], n[:, i]
        m = dict(alb=M['alb'][i], h=M['h'][i], gloss=M['gloss'][i])
        g2 = C3(q['g2'][i])
        fi = noise(X * 8, Z * 8, X * 0)
        if t == 0:      # paint / paper
            m['alb'] = m['alb'] * (1 + .10 * (N[0] - .5) + .06 * (fi[0] - .5))[:, None]
            m['h'] = .006 * fi[1]
        elif t == 1 or t == 7:    # planks, slats
            pw = 6 + 8 * q['r0'][i]
            u = X / pw
            k = torch.floor(u)
            fr = (u - k)
            g = fbm(X * 1.2 + k * 7, Z * .07 + k * 3.7, k, O, 4)
            line = .5 + .5 * torch.sin((g[0] * 9 + X * .8) * 3.)
            rough = noise(X * 14, Z * .6, k)
            over(m, .55 * line * g[1] + .3 * (rough[0] - .3), g2)
            m['alb'] = m['alb'] * (.85 + .3 * hash33(k, k * 2, k)[0])[:, None]
            ed = torch.minimum(fr, 1 - fr) * pw
            gw = .06 if t == 1 else .7
            gap = sstep(gw, gw * .6, ed)
            over(m, gap * .85, m['alb'] * .12)
            m['h'] = .012 * rough[1] - .15 * gap + .01 * line
        elif t in (2, 3, 8):   # cloths
            fq = 7 + 8 * q['r0'][i]
            wx, wz = X + .4 * N[0], Z + .4 * N[1]
            a, b = torch.sin(wx * fq), torch.sin(wz * fq)
            wv = torch.maximum(a * torch.sign(b), b * torch.sign(a)) * .5
            th = noise(wx * fq * .3, wz * .5, X * 0)[0] + noise(wx * .5, wz * fq * .3, X * 0)[1] - 1
            m['alb'] = m['alb'] * (1 + .16 * wv * .8 + .22 * th)[:, None]
            if t == 3:
                p = 2.5 + 3 * q['r1'][i]
                sx, sz = (torch.remainder(wx / p, 1) > .5).float(), (torch.remainder(wz / p, 1) > .5).float()
                sz = torch.where(q['r2'][i] > .5, sz, sx)
                over(m, (sx + sz) * .5 * .8, g2)
            fold = fbm(X * .12, Z * .05, X * 0, O + 5, 2)
            fdw = sstep(.11, .05, F['px'][i])
            wv = wv * fdw
            m['h'] = .012 * wv + (2.2 if t == 8 else .5) * (fold[0] - .5).abs()
            m['gloss'] = m['gloss'] * 0
        elif t == 4:   # marble
            w = fbm(X * .12 + N[0] * .6, Z * .12 + N[1] * .6, X * 0, O, 4)
            v = sstep(.06, .0, (w[0] - .5).abs()) * .7 + .35 * sstep(.03, 0, (w[1] - .5).abs())
            over(m, v * .7 + .2 * (N[2] - .3).clamp(0), g2)
        elif t == 5:   # slate
            m['alb'] = m['alb'] * .25 * (.7 + .6 * N[0] + .3 * fi[0])[:, None]
            st = fbm(X * .5, Z * 1.1, X * 0, O, 4)
            m['h'] = .12 * (st[0] - .5)
        elif t == 6:   # terrazzo
            _, e, rid = worley2(X * 1.3, Z * 1.3, torch.floor(O))
            on = (rid > .45).float() * sstep(.12, .2, e)
            over(m, on * .8, g2 * (.5 + rid[:, None]))
        elif t == 9:   # crumpled parchment
            c = fbm(X * .25, Z * .25, X * 0, O, 3)
            ridge = (c[0] - .5).abs() + .6 * (c[1] - .5).abs()
            m['h'] = -1.6 * ridge
            m['alb'] = m['alb'] * (1 + .08 * (fi[0] - .5))[:, None]
        for kk in m:
            M[kk][i] = m[kk]
    return M
