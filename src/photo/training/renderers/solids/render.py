"""Bridge to the C ray shooter: plain float rows handed over."""
import ctypes
import os

import numpy as np

from compiled import built

HERE = os.path.dirname(os.path.abspath(__file__))
_lib = None

OBJ = ["shape", "h", "round", "pos", "rot", "mat", "col", "seed", "zoff", "bits", "topamp"]
DECO = ["type", "amount", "size", "col", "seed"]
SOAP = ["kind", "pattern", "ncol", "col", "freq", "warp", "angle", "pa", "pb", "mottle", "gloss", "trans",
        "h", "topstyle", "topfreq", "mica", "micacol", "seed"]
FLAW = ["id", "look", "strength", "extent", "size", "bits", "c", "col", "seed"]
VIEW = ["pos", "right", "up", "fwd", "tanx", "ldir", "lcol", "soft", "amb", "bounce", "stripes", "stripescale",
        "stripeangle", "tkind", "tcol", "tcol2", "tscale", "tangle", "tgloss", "tedge", "wkind", "wcol", "seed"]


def library():
    global _lib
    _lib = _lib or built(HERE, "draw.c")
    return _lib


def row(d, names):
    return np.concatenate([np.ravel(np.asarray(d[k], np.float32)) for k in names]).astype(np.float32)


def rows(ds, names):
    return np.ascontiguousarray(np.stack([row(d, names) for d in ds])) if ds else np.zeros((1, 1), np.float32)


def ptr(a):
    return a.ctypes.data_as(ctypes.c_void_p)


def render(scene, w, h, flaws):
    """Linear light [h,w,3], object ids, depth, flaw masks of a scene with the given flaws."""
    view, objs = row(scene["view"], VIEW), rows(scene["objs"], OBJ)
    none = dict(type=0, amount=0, size=0, col=[0, 0, 0], seed=0)
    deco = (scene["soap"]["deco"] + [none] * 3)[:3]
    soap = np.concatenate([row(scene["soap"], SOAP)] + [row(d, DECO) for d in deco]).astype(np.float32)
    fl = rows(flaws, FLAW)
    out = np.zeros((h, w, 3), np.float32)
    ids = np.zeros((h, w), np.int32)
    depth = np.zeros((h, w), np.float32)
    masks = np.zeros((max(1, len(flaws)), h, w), np.float32)
    library().draw(w, h, ptr(view), ptr(soap), ptr(objs), len(scene["objs"]), ptr(fl), len(flaws),
                   ptr(out), ptr(ids), ptr(depth), ptr(masks))
    return np.nan_to_num(out), ids, depth, masks[:len(flaws)]


def soften(im, s):
    """Gaussian blur of [h,w,3] or [h,w]."""
    if s < 0.2:
        return im
    a = np.array(im, np.float32, order="C")
    library().blur(ptr(a), a.shape[1], a.shape[0], 1 if a.ndim == 2 else a.shape[2], ctypes.c_float(s))
    return a
