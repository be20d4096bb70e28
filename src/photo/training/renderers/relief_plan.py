"""Deciding each picture with plain numbers, and stacking the numbers into tensors."""
import math
import random
import torch
from relief_scene import soap_dims, place_bars, place_clutter, camera, axes
from relief_design import palette

TOP, CUT, SIDE = {9, 14}, {6, 10, 12}, {15}
# more draws for findings that the visibility check drops more often
WEIGHT = [1.0, 1.4, 1.0, 1.4, 1.2, 1.0, 1.1, 1.0, 1.0, 1.0, 1.0, 1.25, 1.25, 1.1, 1.3, 1.7]


def choose_findings(r):
    """One to three findings that can share a picture."""
    k = r.choices([1, 2, 3], [.5, .34, .16])[0]
    got = []
    for _ in range(12):
        f = r.choices(range(16), WEIGHT)[0]
        if f in got or (f in TOP and set(got) & SIDE) or (f in SIDE and set(got) & (TOP | CUT)) or (f in CUT and set(got) & SIDE):
            continue
        if {f} | set(got) >= {11, 13}:
            continue
        got.append(f)
        if len(got) == k:
            break
    return got


def choose_view(r, found):
    """How the soap is shown, so that the findings can be seen; and which face matters."""
    need = ""
    if 14 in found or (9 in found and r.random() < .55):
        need = "top"
        return r.choices(["loaf", "standing"], [.75, .25])[0], need
    if 15 in found:
        return r.choices(["loaf", "standing", "lying"], [.35, .25, .4])[0], need
    if set(found) & CUT:
        return r.choices(["lying", "standing", "stack", "held", "loaf"], [.47, .36, .02, .12, .03])[0], need
    return r.choices(["lying", "standing", "stack", "loaf", "held"], [.4, .24, .08, .18, .1])[0], need


def kelvin(t):
    """Linear colour of a lamp, green near 1."""
    u = (t - 2700) / (6500 - 2700)
    return [1.55 - .6 * u, 1.0, .42 + .68 * u]


def look_of(r, p, view):
    """Light and camera of one picture."""
    az, el = r.uniform(-3.14, 3.14), r.uniform(.35, 1.35)
    d = lambda az, el: [math.cos(el) * math.cos(az), math.cos(el) * math.sin(az), math.sin(el)]
    if view in ("standing", "held"):
        az = -1.57 + r.gauss(0, .9)
    t1 = r.choice([2700, 3000, 3500, 4200, 5000, 5600, 6500]) * r.uniform(.95, 1.05)
    t2 = t1 if r.random() < .7 else min(6800, max(2700, t1 + r.gauss(0, 1300)))
    k1, k2 = kelvin(t1), kelvin(t2)
    ref = [(a * .6 + b * .4) ** r.uniform(.7, 1.05) for a, b in zip(k1, k2)]
    hard = r.random()
    kp = r.uniform(.5, 1.2) if hard < .6 else r.uniform(1.2, 3.0)
    p.update(key_dir=d(az, el), key_col=[a / b for a, b in zip(k1, ref)], key_power=[kp],
             hardness=[r.uniform(.8, 2.5) if hard < .5 else r.choice([5, 12, 40])],
             sky_col=[a / b * r.uniform(.3, .8) for a, b in zip(k2, ref)],
             sky_dir=d(r.uniform(-3.1, 3.1), r.uniform(.7, 1.57)), fill_dir=d(r.uniform(-3.1, 0), r.uniform(.2, 1.2)),
             fill_col=[a * r.choice([0, .1, .3]) for a in k2], pane=[r.choice([0, 0, .6, 1.5])],
             cookie=[0 if p["simple"] else r.choices([0, 1, 2], [.86, .05, .09])[0]], glow=[r.uniform(.2, .8)], glow_w=[r.uniform(.01, .05)],
             rough0=[r.choice([r.uniform(.22, .4), r.uniform(.4, .75), r.uniform(.6, .9)])])
    bad = r.random() < .35
    p.update(soft=[r.uniform(.35, .8) if not bad else r.uniform(.7, 1.7)], defocus=[r.uniform(1, 4.5)], aperture=[r.choice([0, .6, 1.5, 3])],
             focus_off=[r.gauss(1, .04 if not bad else .12)], vig=[r.uniform(0, .5)], fringe=[r.gauss(0, .0012)],
             wb=[1 + r.gauss(0, .05), 1., 1 + r.gauss(0, .07)], sat=[r.uniform(.7, 1.12)], shoulder=[r.uniform(.1, .6)],
             contrast=[r.uniform(0, .6)], lift=[max(0, r.gauss(.0, .02))], expo=[math.exp(r.gauss(0, .28))],
             shot=[r.uniform(.004, .03) * (1 + bad)], read=[r.uniform(.001, .008) * (1 + bad)], bayer=[r.uniform(.2, 1)],
             chroma=[r.uniform(0, .8)], denoise=[r.choice([0, 0, .4, .9])], sharp=[r.choice([0, .3, .7, 1.2])],
             sharp_r=[r.uniform(.7, 1.8)], quality=[r.uniform(25, 60) if bad else r.uniform(55, 95)], coded=[float(r.random() < .85)])


def dull(c, k=.45):
    """A colour pulled towards its own grey."""
    g = sum(c) / 3
    return [g + (x - g) * k for x in c]


def design_of(r, p, found, dims):
    """Pattern numbers of one picture."""
    style = r.choices(range(9), [.24, .13, .17, .08, .08, .07, .09, .08, .06])[0]
    if 13 in found:
        style = 1
    if 11 in found and style in (0, 5):
        style = r.choice([1, 1, 2, 3, 4, 6, 7])
    if p["simple"]:
        style = r.choices([0, 1], [.75, .25])[0]
    k = 1 if style == 0 else r.choices([2, 3, 4, 5, 6], [.4, .3, .15, .1, .05])[0]
    an = r.uniform(-3, 3)
    p.update(style=[style], k=[k], wf=[r.uniform(.5, 1.6)], warp=[r.uniform(.1, .9)], wave=[r.choice([.05, .4, 1., 1.6]) if style != 1 or 13 not in found else r.choice([0., .15, .5])],
             sa=[math.cos(an)], sb=[math.sin(an)], freq=[r.choice([.6, 1., 1.6, 2.4] + [3.6] * (not set(found) & {1, 3, 4, 11, 12})) * r.uniform(.8, 1.2)], cx=[r.uniform(-.6, .6)], cy=[r.uniform(-.5, .5)],
             combf=[r.uniform(3, 12)], vw=[r.choice([.05, .1, .25])], ef=[r.uniform(1.2, 5)], ed=[r.uniform(.3, .9)],
             soft=[r.choice([.03, .06] if 11 in found else [.03, .06, .15, .3])], graded=[float(style == 5 or r.random() < .04)], open=[float(style not in (1, 5, 6, 7))],
             pal=palette(r, bool(set(found) & {0, 1, 3, 4, 6, 7, 10, 14, 15})), b=[dims[1]], c=[dims[2]], tex=[r.uniform(.2, 1.2)], mott=[r.uniform(0, .12)], pit=[r.uniform(0, 1)])
    an = r.uniform(-3, 3)
    tcol = lambda: [c ** 1.6 for c in r.choice([(.55, .4, .25), (.75, .6, .42), (.3, .2, .13), (.85, .85, .84), (.9, .88, .84), (.2, .2, .22),
                    (.5, .5, .52), (.35, .45, .5), (.55, .38, .36), (.75, .7, .6), (.12, .11, .1), dull([r.uniform(.1, .9) for _ in range(3)])])]
    c1 = tcol()
    sk = r.uniform(.25, 1)
    p.update(ttype=[r.choices(range(8), [.2, .1, .15, .18, .14, .04, .05, .14])[0]], tc=[math.cos(an)], ts=[math.sin(an)], tf=[r.uniform(.5, 2)], tk=[r.uniform(.4, 1.5)], tw=[r.uniform(25, 80)],
             tc1=c1, tc2=tcol() if r.random() < .4 else [min(.95, c * r.uniform(.35, 1.6)) for c in c1], skin=[.72 * sk, .45 * sk ** 1.3, .33 * sk ** 1.5],
             crumbs=[float(r.random() < .2)])


def plan(r, clean):
    """All choices of one picture."""
    p = {"kind": 1 if r.random() < .065 else 0}
    nosoap, is_clean = p["kind"] == 1, r.random() < clean
    tricky = not nosoap and (r.random() < .67 if is_clean else r.random() < .45)
    found = [] if nosoap or is_clean else choose_findings(r)
    p["simple"] = not nosoap and is_clean and not tricky
    view, need = choose_view(r, found)
    dims, shape = soap_dims(r, view)
    peaky = view in ("loaf", "standing") and r.random() < (.25 if not p["simple"] else 0)
    peak = (r.uniform(.02, .09), r.uniform(4, 9), r.uniform(4, 9), r.uniform(0, 6)) if peaky else (0, 1, 1, 0)
    bars, aim = place_bars(r, view, dims, shape, peak, r.random() < .5)
    need = need or ("whole" if set(found) & {6, 10, 15} else "") or ("close" if set(found) & {0, 1, 2, 4, 8, 12} and r.random() < .5 else "")
    if 15 in found and view != "lying" and r.random() < .7:
        yaw = r.choice([-1, 1]) * r.uniform(.7, 1.4) if view != "loaf" else r.choice([-1, 1]) * r.uniform(.8, 1.6)
        bars = bars[:1]
        bars[0] = (bars[0][0], bars[0][1], axes(yaw, "standing"))
    clutter = place_clutter(r, view, nosoap)
    empty = ([0.0] * 3 + [0.1, .05, 0, 1, 1, 0, 1, 0, 0, 0, 0, 0], [0, 0, -50], [1, 0, 0, 0, 1, 0, 0, 0, 1])
    if nosoap:
        bars = []
    p["empty"] = empty
    p["obj"] = bars + clutter
    p["cam"] = camera(r, view, aim, dims, need)
    look_of(r, p, view)
    design_of(r, p, found, dims)
    nx = r.choice([0, 1, 1, 2, 3] if p["style"][0] > 1 else [1, 1, 2, 3]) if tricky else 0
    p["extras"] = r.sample(range(12), nx) if nx else []
    if 8 in found or 0 in found:
        p["extras"] = [e for e in p["extras"] if e not in (0, 6)]
    if 2 in found:
        p["extras"] = [e for e in p["extras"] if e not in (1, 7)]
    if 13 in found:
        p["extras"] = [e for e in p["extras"] if e != 2]
    p["found"] = (found + [-1] * 3)[:3]
    p["tricky"] = float(not nosoap and (nx > 0 or p["style"][0] > 1 or p["cookie"][0] > 0 or peak[0] > 0))
    p["need_top"] = [float(need == "top")]
    p["view_loaf"] = [float(view == "loaf")]
    p["moulded"] = [float(15 in found and view != "loaf")]
    return p


class State:
    """Named tensors with one row per picture; take() keeps some rows."""

    def take(self, i):
        s = State()
        s.__dict__.update({k: v[i] for k, v in self.__dict__.items()})
        return s


def stack(plans, device):
    """Plans to tensors: scalars and colours as [n,k,1,1]; bodies as [n,M,...]."""
    s = State()
    for k, v in plans[0].items():
        if isinstance(v, list) and k not in ("obj", "empty", "cam", "pal", "extras", "found"):
            s.__dict__[k] = torch.tensor([p[k] for p in plans], dtype=torch.float32, device=device)[:, :, None, None]
    tt = lambda x: torch.tensor(x, dtype=torch.float32, device=device)
    most = max(1, max(len(p["obj"]) for p in plans))
    rows = [(p["obj"] + [p["empty"]] * most)[:most] for p in plans]
    s.pal = tt([p["pal"] for p in plans]).permute(0, 2, 1)
    s.obj, s.ctr, s.rot = [tt([[o[j] for o in row] for row in rows]) for j in range(3)]
    s.cam = tt([p["cam"] for p in plans])
    return s
