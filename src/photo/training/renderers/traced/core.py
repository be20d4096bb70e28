"""Builds and calls the C core."""
import ctypes, os, subprocess, tempfile
import numpy as np
from . import params

HERE = os.path.dirname(os.path.abspath(__file__))
_lib = None


def lib():
    global _lib
    if _lib is None:
        d = tempfile.mkdtemp(prefix="soapdraw")
        with open(os.path.join(d, "gen_params.h"), "w") as f:
            f.write(params.header())
        so = os.path.join(d, "trace.so")
        subprocess.check_call(["cc", "-O3", "-ffast-math", "-march=native", "-shared", "-fPIC", "-w", "-I" + d,
                               "-o", so, os.path.join(HERE, "trace.c"), "-lm"])
        _lib = ctypes.CDLL(so)
    return _lib


def obj(**kw):
    o = np.zeros(len(params.OBJ), np.float32)
    o[params.OI["m0"]] = o[params.OI["m4"]] = o[params.OI["m8"]] = 1
    put(o, **kw)
    return o


def put(o, **kw):
    for k, v in kw.items():
        o[params.OI[k]] = v
    return o


def col(o, i, rgb):
    j = params.OI["c%dr" % i]
    o[j:j + 3] = rgb
    return o


def place(o, centre, m):
    o[params.OI["cx"]:params.OI["cx"] + 3] = centre
    o[params.OI["m0"]:params.OI["m0"] + 9] = np.asarray(m).ravel()
    return o


def render(scene, objs, prims, w, h, aa=1):
    sc = np.zeros(len(params.SCENE), np.float32)
    for k, v in scene.items():
        sc[params.SI[k]] = v
    ob = np.ascontiguousarray(np.stack(objs) if objs else np.zeros((0, len(params.OBJ))), np.float32)
    pr = np.ascontiguousarray(prims if len(prims) else np.zeros((1, len(params.PRIM))), np.float32)
    rgb, dep, ids = np.zeros((h, w, 3), np.float32), np.zeros((h, w), np.float32), np.zeros((h, w), np.uint8)
    p = lambda a: a.ctypes.data_as(ctypes.c_void_p)
    lib().render(w, h, p(sc), p(ob), len(objs), p(pr), p(rgb), p(dep), p(ids), aa)
    return np.nan_to_num(rgb), dep, ids


def gauss(a, s):
    """Gaussian blur of an image [h, w] or [h, w, channels]."""
    b = np.array(a, np.float32, order="C", copy=True)
    lib().gauss(b.ctypes.data_as(ctypes.c_void_p), b.shape[0], b.shape[1], b.shape[2] if b.ndim > 2 else 1, ctypes.c_float(s))
    return b
