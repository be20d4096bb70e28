"""The sixteen findings as material: each gives A (cover), C (colour), dh (relief, cm), dr (roughness), w (where)."""
import torch
from curd_noise import noise, fbm, ss, spots, cells, cat3
def pick(v, a, b, c): 
    return torch.where(v < .5, a + 0 * v, torch.where(v < 1.5, b + 0 * v, c + 0 * v))
def out(G, A, C, w, dh=0., dr=0.):
    z = torch.zeros_like(G['px'])
    return dict(A=(A + z).clamp(0, 1), C=C + torch.zeros_like(G['alb']), w=(w + z).clamp(0, 1), dh=dh + z, dr=dr + z)
def P3(G, sc): return G['pz'] / sc[:, None] + G['off']
def uvr(G, ang, st):
    c, s = torch.cos(ang), torch.sin(ang); u, v = G['uv'][:, 0], G['uv'][:, 1]
    return torch.stack([(c * u + s * v) / st, -s * u + c * v], 1)
def jig(G, amp, sc):
    n = noise(P3(G, sc)); return torch.stack([n[0], n[1]], 1) * amp[:, None]
def r_(G, i): return G['r'][:, i]
def specks(G):
    v, s = G['v'], G['s']; cell = pick(v, .22, .5, .4) * (.6 + r_(G, 0))
    uv = uvr(G, r_(G, 1) * 6.3, pick(v, 1., 2.6, 1.)) + jig(G, pick(v, .02, .05, .06), cell * .3)
    lo = torch.maximum(.05 + .05 * s, .6 * G['px'] / cell).clamp(max=.3)
    q, R, dx, dy, rr = spots(uv, cell, .15 + .5 * s, lo, pick(v, .22, .3, .42), 3.)
    a = 1 - ss(.7, 1.1, q)
    tail = torch.exp(-(dy / rr) ** 2 * 1.6) * ss(-.1, .1, dx) * torch.exp(-dx.clamp(min=0) * (2 + 4 * R[..., 5])) * (q < 90)
    halo = torch.exp(-(q / 1.8) ** 2) * .5
    a = torch.maximum(a * (.55 + .45 * s), pick(v, 0., .75, 0.) * tail * s) ; a = torch.maximum(a, pick(v, 0, 0., 1.) * halo * s)
    a = a * G['reg']; C = G['pig'] * (.5 + R[..., 6][:, None])
    return out(G, a, C, a)
def smears(G):
    v, s = G['v'], G['s']; st = pick(v, 3.5, 9., 5.)
    uv = uvr(G, r_(G, 1) * 6.3, st); sc = pick(v, .8, .25, .5) * (.6 + r_(G, 0)); w = jig(G, .35 * sc * (1 + r_(G, 2) * 3), sc * 4)
    x = torch.cat([(uv + w) / sc[:, None], G['face'][:, None] * 5], 1) + G['off']
    n = fbm(x, 3); a = ss(.45 - .3 * s, .75 - .2 * s, n[0])
    edge = pick(v, 0., 0., 1.); a = a * (1 - edge) + edge * ss(-.1, .05, n[0] - .25 + .15 * s) * (.35 + .65 * ss(.8, .1, n[0]) ) 
    a = a * G['reg'] * (.3 + .65 * s) * (.6 + .4 * (n[1] * .5 + .5))
    C = torch.where((r_(G, 3) < .25)[:, None], .88 + 0 * G['pig'], G['pig'] * (.6 + .8 * r_(G, 4)[:, None])) * (.8 + .2 * n[2][:, None])
    C = C * .75 + G['alb'] * .25 * (r_(G, 3) >= .25)[:, None]
    return out(G, a, C, ss(.05, .25, a))
def white(G):
    v, s = G['v'], G['s']; cell = pick(v, .2, .6, .45) * (.6 + r_(G, 0))
    uv = G['uv'] + jig(G, pick(v, .03, .16, .05), pick(v, .1, .25, .1))
    lo = torch.maximum(.05 + .04 * s, .6 * G['px'] / cell).clamp(max=.3)
    q, R, dx, dy, rr = spots(uv, cell, .12 + .5 * s, lo, pick(v, .25, .4, .45), 2.5)
    th = torch.atan2(dy, dx); star = .65 + .35 * torch.cos(th * torch.floor(5 + 4 * R[..., 5]) + 6 * R[..., 6])
    q = torch.where(v > 1.5, q / star.clamp(.2), q)
    g = noise(P3(G, .05 + 0 * v))[0]
    a = (1 - ss(.6, 1.15, q + .2 * g)) * G['reg'] * (.5 + .5 * s) * (.85 + .15 * g)
    return out(G, a, .92 + .04 * R[..., 4][:, None] + 0 * G['alb'], a, a * pick(v, .012, -.03, .01), a * .4)
def veins(G):
    v, s = G['v'], G['s']; sc = pick(v, 1.4, .7, .45) * (.6 + r_(G, 0))
    x = P3(G, sc); n1 = fbm(x * .6, 2); x = x + .5 * n1[:3].transpose(0, 1)
    n = fbm(x, 2); wd = .06 + .16 * s
    a = 1 - ss(wd * .5, wd * 1.3, n[0].abs()); a = torch.maximum(a, .8 * (1 - ss(wd * .3, wd, n[1].abs())) * pick(v, 0., 1., 0.))
    a = torch.where(v > 1.5, ss(.1, .35, n[0] + .25 * s - .15), a)
    a = a * G['reg'] * (.35 + .6 * s)
    m = G['alb'].mean(1, keepdim=True)
    C = (G['alb'] ** 1.35) * (.5 + .2 * r_(G, 3)[:, None]) * (1 + .12 * torch.sign(G['alb'] - m) * 0)
    return out(G, a, C * torch.tensor([1.06, 1., .86], device=C.device).view(1, 3, 1, 1), ss(.08, .3, a), -.004 * a, -.25 * a)
def crackle(G):
    v, s = G['v'], G['s']; cell = pick(v, .28, .6, .4) * (.7 + .6 * r_(G, 0))
    uv = uvr(G, r_(G, 1) * 6.3, pick(v, 1., 1., 1.8)) + jig(G, cell * .35, cell * .8)
    f1, e, rid = cells(uv, cell); n = fbm(P3(G, 1.5 + 0 * v), 2)
    wd = torch.maximum((.06 + .16 * s) * (.6 + .5 * n[1].clamp(-.8, 1)), 1. * G['px'] / cell)
    line = 1 - ss(wd * .4, wd * 1.4, e); f2_, e2, _ = cells(uv + 31.7, cell * .45)
    line = torch.maximum(line, .5 * (1 - ss(wd * .4, wd * 1.6, e2)) * pick(v, 0., .8, .4))
    isl = ss(-.9, .2, n[0]) * G['reg']
    wh = torch.tensor([.86, .84, .79], device=f1.device).view(1, 3, 1, 1) * (.88 + .12 * rid[:, None])
    pale = (.45 + .45 * r_(G, 4))
    body = G['alb'] ** 1.4 * .55
    lk = line * (.5 + .5 * s)
    C = wh * (1 - lk[:, None]) + body * lk[:, None]
    A = isl * torch.maximum(lk, pale * (.4 + .6 * s))
    return out(G, A, C, isl * ss(.0, .3, .3 + isl), -.01 * lk * isl, -.2 * lk * isl)
def ash(G):
    v, s = G['v'], G['s']; top = (G['face'] == 1) & (G['nl'][:, 1] > 0); top = top.float()
    spread = ss(.75, .2, 1 - (G['p'][:, 1] / G['h'][:, 1]))  * .5
    allf = (r_(G, 0) < .25).float(); T = torch.maximum(torch.maximum(top, spread * (G['face'] != 1)), allf * .8)
    n = fbm(P3(G, pick(v, 2.5, 1., .5)), 4); g = fbm(P3(G, .07 + 0 * v), 2)
    ed = 1 - torch.minimum((G['h'][:, 0] - G['p'][:, 0].abs()), (G['h'][:, 2] - G['p'][:, 2].abs())).clamp(0, 1)
    a = pick(v, 1., 0, 0) * (.75 + .35 * n[0]) + pick(v, 0, 1., 0) * ss(-.05 - .4 * s, .45, n[0] + .3 * n[1]) + pick(v, 0, 0, 1.) * ss(.1, .9, ed + .5 * n[0])
    a = a * (.65 + .45 * g[0]) * (.25 + .65 * s) * T * torch.where(v < .5, torch.ones_like(n[0]), G['reg'].clamp(.0))
    return out(G, a, torch.tensor([.86, .87, .87], device=a.device).view(1, 3, 1, 1), ss(.08, .3, a), .012 * g[1] * a, a.clamp(0, 1) * .9)
def ring(G):
    v, s = G['v'], G['s']; p, h = G['p'], G['h']; z = (G['face'] == 2).float()
    n = fbm(P3(G, 1.8 + 0 * v), 3)
    cx = (r_(G, 0) - .5) * .5; cy = (r_(G, 1) - .5) * .5 - pick(v, 0, 0, .3)
    x, y = p[:, 0] / h[:, 0] - cx, p[:, 1] / h[:, 1] - cy
    pw = pick(v, 2., 4., 2.5); d = ((x.abs() + 1e-4) ** pw + (y.abs() + 1e-4) ** pw) ** (1 / pw) / (.45 + .38 * r_(G, 2)) + .1 * n[0]
    soft = .03 + .1 * r_(G, 3); core = ss(1 + soft, 1 - soft, d); line = torch.exp(-((d - 1) / (.025 + .04 * r_(G, 4))) ** 2)
    A = z * (core * (.25 + .5 * s) + line * (.3 + .4 * s) * (.4 + .6 * r_(G, 5))).clamp(0, .95)
    C = G['alb'] ** 1.3 * (.5 + .2 * r_(G, 6))[:, None]
    pl = (r_(G, 7) < .25).float() * line
    C = C * (1 - pl[:, None]) + pl[:, None] * (G['alb'] * .5 + .45)
    return out(G, A, C * torch.tensor([1.05, 1, .88], device=A.device).view(1, 3, 1, 1), z * torch.maximum(core, line), 0., -.15 * core * z)
def orange(G):
    v, s = G['v'], G['s']; cell = pick(v, 2.2, .8, 1.3) * (.6 + .6 * r_(G, 0))
    uv = G['uv'] + jig(G, .12 * cell, cell * .25)
    q, R, dx, dy, rr = spots(uv, cell, .3 + .5 * s, .1, pick(v, .42, .3, .45), 1.6)
    n = noise(P3(G, .15 + 0 * v))
    halo = torch.exp(-(q * 1.2) ** 2 * 1.1); core = 1 - ss(.2, .6, q + .12 * n[0])
    a = (halo * .65 + core * .6) * G['reg'] * (.35 + .6 * s)
    c1 = torch.tensor([.72, .34, .06], device=a.device).view(1, 3, 1, 1); c2 = torch.tensor([.42, .13, .015], device=a.device).view(1, 3, 1, 1)
    C = (c1 * (1 - core[:, None]) + c2 * core[:, None]) * (.35 + .8 * G['alb'].mean(1, keepdim=True)) * (.75 + .5 * R[..., 5][:, None])
    return out(G, a.clamp(0, .95), C, ss(.1, .3, a), 0., -.1 * core)
def pin(G):
    v, s = G['v'], G['s']; cell = pick(v, .2, .7, .35) * (.6 + .8 * r_(G, 0))
    uv = uvr(G, r_(G, 1) * 6.3, pick(v, 1., 1., 1.7)) + jig(G, .03 + 0 * v, cell * .3)
    lo = torch.maximum(.08 + 0 * s, .8 * G['px'] / cell).clamp(max=.33)
    q, R, dx, dy, rr = spots(uv, cell, .12 + .6 * s, lo, pick(v, .28, .36, .4), 3.)
    reg = torch.where(v > 1.5, ss(.1, .4, noise(P3(G, 1.2 + 0 * v))[0]), torch.ones_like(q)) * G['reg']
    on = (reg > .3).float()
    pit = (1 - q ** 2).clamp(0, 1) ** .7 * on; edge = (1 - ss(.85, 1.15, q)) * on
    lip = torch.exp(-((q - 1.15) / .2) ** 2) * on
    rc = rr * cell
    return out(G, edge * (.35 + .45 * s), G['alb'] * (.22 + .3 * r_(G, 3)[:, None]) , edge, -pit * rc * .9 + lip * rc * .06, .4 * edge)
def crack(G):
    v, s = G['v'], G['s']; p, h = G['pz'], G['h']; lp = G['p']
    n = fbm(P3(G, 1.3 + 0 * v), 4); al = r_(G, 0) < .2
    ax, bx = torch.where(al, p[:, 2], p[:, 0]), torch.where(al, p[:, 0], p[:, 2])
    d1 = ax * torch.where(al, 0., 1.) + torch.where(al, lp[:, 2], 0 * bx) + n[0] * .45 - (r_(G, 1) - .5) * .9 * torch.where(al, h[:, 2], h[:, 0]) * .8
    d1 = torch.where(al, lp[:, 2], lp[:, 0]) + n[0] * .4 - (r_(G, 1) - .5) * .8 * torch.where(al, h[:, 2], h[:, 0])
    top = ((G['face'] == 1) & (G['nl'][:, 1] > 0)).float()
    depth = h[:, 1] * pick(v, .12, 1.2, .3) * (.6 + .8 * r_(G, 2)); fall = (1 - (h[:, 1] - lp[:, 1]) / depth).clamp(0, 1)
    lng = ss(.0, .35, 1 - (bx / 4 + r_(G, 3) - .5).abs() / (.5 + 2 * G['cov'])) 
    wid = (.035 + .15 * s ** 1.5) * (.5 + .7 * (n[1] * .5 + .5)) * torch.maximum(top * lng, fall * (1 - top) * (G['nl'][:, 1] > -.5))
    wid = torch.where(wid > .006, torch.maximum(wid, .9 * G['px']), wid * 0 + 1e-5)
    d2 = d1 + .5 + .5 * n[2] + .5 * bx * (r_(G, 4) - .5); br = pick(v, 0., 0., 1.); wid2 = wid * .6 * br + 1e-5
    a = torch.maximum(1 - ss(wid * .6, wid * 1.15, d1.abs()), 1 - ss(wid2 * .6, wid2 * 1.15, d2.abs()))
    lip = torch.exp(-(d1.abs() / (wid * 3 + .05)) ** 2) * (wid > .01)
    core = ss(.2, .9, a)
    return out(G, a * .92, G['alb'] * (.1 + .3 * (1 - core[:, None])), ss(.1, .4, a), lip * .07 * (.4 + s) - a * .12, .4 * a)
def brown(G):
    v, s = G['v'], G['s']; p, h = G['p'], G['h']; z = G['face'] == 2
    n = fbm(P3(G, 1.6 + 0 * v), 3)
    e = torch.minimum(h[:, 0] - p[:, 0].abs(), h[:, 1] - p[:, 1].abs()).clamp(min=0)
    dep = pick(v, .35, 1., 1.9) * (.6 + .8 * r_(G, 0)); sf = .2 + .6 * r_(G, 1)
    a = torch.where(z, ss(1 + sf, 1 - sf, e / dep + .3 * n[0]), torch.ones_like(e) * (.9 + .1 * n[1]))
    a = a * (.3 + .65 * s); c = torch.tensor([.33, .15, .06], device=a.device).view(1, 3, 1, 1) * (.5 + 1.2 * r_(G, 2))[:, None]
    return out(G, a, c * (.5 + .7 * G['alb'].mean(1, keepdim=True)), ss(.12, .4, a))
def bled(G):
    v, s = G['v'], G['s']; d = G['d']; n = fbm(P3(G, pick(v, 1.5, .5, .8)), 3)
    L = pick(v, .35, .7, .5) * (.5 + s) * (.6 + .8 * (n[0] * .5 + .5).clamp(0, 1.2))
    a = torch.exp(-(d / L).clamp(min=0) ** 1.3) 
    fing = ss(-.2, .4, n[1] + .4 - d / (L * 2.)); a = a * torch.where(v > 1.5, fing, torch.ones_like(a))
    sm = (((G['cA'] - G['cB']).abs()).mean(1) > .03).float()
    a = a * G['reg'] * (.35 + .6 * s) * sm
    C = torch.where((G['cA'].mean(1, keepdim=True) > G['cB'].mean(1, keepdim=True)), G['cB'] ** .8 * .6 + G['cA'] * .4, G['cA'])
    C = torch.where((r_(G, 3) < .3)[:, None], G['cA'] * .75 + .25 * G['pig'] , G['cA'])
    return out(G, a, C, ss(.1, .3, a))
def drag(G):
    v, s = G['v'], G['s']; z = (G['face'] == 2).float(); p = G['p']
    hor = (r_(G, 0) < .3); a_, b_ = torch.where(hor, p[:, 1], p[:, 0]), torch.where(hor, p[:, 0], p[:, 1])
    arc = pick(v, .0, .0, .05) * (r_(G, 1) - .5) * 2 * b_ * b_ + (r_(G, 2) - .5) * .25 * b_
    x = a_ + arc + .03 * noise(P3(G, 1.5 + 0 * v))[0]
    sc = pick(v, .5, .1, .25) * (.7 + .6 * r_(G, 3))
    one = torch.zeros_like(x)
    n = fbm(torch.stack([x / sc, b_ * .09, one], 1) + G['off'], 3); m = noise(torch.stack([x / sc * 1.3, b_ * .4, one + 5], 1) + G['off'])
    g = torch.where(v < .5, 1 - ss(.02, .14, n[0].abs()), ss(-.6, .9, n[0]))
    g = g * (.35 + .65 * ss(-.3, .3, m[1]))
    reg = G['reg'] * z
    dark = (g * (.18 + .55 * s)) * reg
    return out(G, dark, G['alb'] * (.35 + .3 * r_(G, 4))[:, None], reg * ss(.05, .4, .2 + g), -g * reg * (.02 + .05 * s) * pick(v, 1., .5, .8), .2 * dark)
def gap(G):
    v, s = G['v'], G['s']; p, h, lp = G['pz'], G['h'], G['p']; side = (G['face'] != 1).float()
    n = fbm(torch.stack([p[:, 0] / 1.6, 0 * p[:, 1], p[:, 2] / 1.6], 1) + G['off'], 3); f = noise(P3(G, .1 + 0 * v))
    y0 = (r_(G, 0) - .5) * 1.1 * h[:, 1]; y = lp[:, 1] - y0 - .16 * n[0] * (.4 + r_(G, 1)) - .015 * f[0]
    ux = torch.where(G['face'] == 2, lp[:, 0] / h[:, 0], lp[:, 2] / h[:, 2]); sgn = torch.sign(r_(G, 2) - .5)
    L = torch.where(G['face'] == 2, (1 - (1 - ux * sgn) / (.5 + 2.2 * G['cov'])), .7 + .4 * n[2]).clamp(0, 1)
    wid = (.022 + .09 * s ** 1.3) * pick(v, .6, 1.5, 1.) * (.25 + .75 * (n[1] * .6 + .5).clamp(0, 1)) * torch.where(v < .5, ss(0., .2, L), L) * torch.where(v > 1.5, ss(-.3, .1, n[2] + .25), torch.ones_like(L))
    wid = torch.where(wid > .005, torch.maximum(wid, .8 * G['px']), 0 * wid + 1e-5)
    a = (1 - ss(wid * .7, wid * 1.2, y.abs())) * side; lip = torch.exp(-((y + wid * 1.5) / (wid + .02)) ** 2) * side * (wid > .006)
    return out(G, a * .93, G['alb'] * .08, ss(.1, .4, a), -a * .1 + lip * .02, .3 * a)
def wrinkle(G):
    v, s = G['v'], G['s']; top = ((G['nl'][:, 1] > .35)).float()
    sc = pick(v, .55, 1.1, .35) * (.7 + .6 * r_(G, 0)); x = P3(G, sc); x = torch.stack([x[:, 0], x[:, 1] * .2, x[:, 2] * (.45 + .8 * r_(G, 1))], 1)
    n = fbm(x * .5, 2); x = x + .9 * n[:3].transpose(0, 1)
    m = fbm(x, 2); rd = m[0].abs(); hgt = torch.where(v > 1.5, torch.sin(m[0] * 7), (rd * 2.5).clamp(0, 1) ** .6)
    w = top * G['reg']; val = (1 - ss(.0, .35, hgt)) * w
    return out(G, val * (.15 + .4 * s), G['alb'] ** 1.2 * .5, w, hgt * w * sc * (.12 + .4 * s), -.12 * w)
def dimple(G):
    v, s = G['v'], G['s']; sd = ((G['face'] == 0) | ((G['face'] == 1) & (G['nl'][:, 1] < 0))).float()
    cell = pick(v, .5, .8, .3) * (.6 + .8 * r_(G, 0)); uv = G['uv'] + jig(G, .12 * cell, cell * .6)
    q, R, dx, dy, rr = spots(uv, cell, .35 + .6 * s, .2, .46, 1.)
    dim = torch.cos((q.clamp(0, 1)) * 3.14) * .5 + .5
    x = torch.cat([uvr(G, r_(G, 1) * 6.3, 4 + 0 * v) / cell[:, None] * .8, 0 * G['face'][:, None]], 1) + G['off']; m = fbm(x, 3); cr = 1 - ss(.0, .22, m[0].abs())
    lump = fbm(P3(G, cell * .7), 2)[0]
    hh = pick(v, 1., 0, 0) * -dim * .22 + pick(v, 0, 1., 0) * -cr * .14 + pick(v, 0, 0, 1.) * lump * .25
    reg = sd * G['reg']; w = reg * torch.where(v < .5, ss(0, .2, dim), torch.where(v < 1.5, ss(.05, .3, cr), torch.ones_like(cr)))
    return out(G, (-hh * 2).clamp(0, 1) * reg * (.15 + .35 * s), G['alb'] * .6, w, hh * reg * cell * (.6 + 1.7 * s), 0.)
FN = [specks, smears, white, veins, crackle, ash, ring, orange, pin, crack, brown, bled, drag, gap, wrinkle, dimple]
