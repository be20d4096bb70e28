"""Bridge to the C renderer: array layout, calling it."""
import ctypes
import os

import numpy as np

from compiled import built

HERE = os.path.dirname(os.path.abspath(__file__))
OS, FS, GS = 64, 16, 56
O = dict(SHAPE=0, POS=1, ROT=4, DIM=13, RND=16, MAT=17, SEED=18, A=19, B=22, C=25, DES=28, SC=29, P1=30, P2=31,
		 NL=32, TOP=33, TAMP=34, SLICE=35, ADD=36, AMT=37, AC=38, GLOSS=41, STAMP=42, MOT=43, FLAW=45, LABEL=46,
		 MICA=47, DEW=48, EMB=49, WEAR=50, EC=52, ROUGH=55)
G = dict(CAM=0, RIGHT=3, UP=6, FWD=9, FOC=12, KEY=13, KC=16, SKY=19, SOFT=22, TAB=23, TA=24, TB=27, TC=30, TS=33,
		 TR=34, SEED=35, WALL=36, WT=37, WC=38, GLOSS=41, GOBO=42, GSC=43, FOLD=44, TRANS=45, GLARE=46)
F = dict(ST=0, COV=1, VAR=2, SEED=3, COL=4, SIZE=7, ANG=8, X=9, Y=10, Z=11, A=12, C=13)
SHAPE = dict(bar=0, ell=1, cyl=2, bowl=3, torus=4, caps=5, lathe=6, oval=7, glove=8, pillow=9, fruit=10)
MAT = dict(soap=0, plain=1, wood=2, speckle=3, bread=4, cheese=5, fur=6, leaf=7, stone=8, metal=9, sponge=10,
		   cloth=11, citrus=12, choc=13, feather=14)


def lin(c):
	"""sRGB 0..1 (or 0xRRGGBB) to linear light."""
	if isinstance(c, int):
		c = ((c >> 16) / 255, (c >> 8 & 255) / 255, (c & 255) / 255)
	c = np.clip(np.asarray(c, np.float32), 0, 1)
	return np.where(c < .04045, c / 12.92, ((c + .055) / 1.055) ** 2.4)


def obj(shape, pos, rot, dim, rnd=.2, mat="plain", seed=0, **k):
	a = np.zeros(OS, np.float32)
	a[0], a[1:4], a[4:13], a[13:16], a[16] = SHAPE[shape], pos, np.asarray(rot).ravel(), dim, rnd
	a[O["MAT"]], a[O["SEED"]], a[O["GLOSS"]], a[O["ROUGH"]] = MAT[mat], seed, .4, .4
	put(a, O, **k)
	return a


def put(a, names, **k):
	for n, v in k.items():
		i = names[n]
		v = np.atleast_1d(np.asarray(v, np.float32))
		a[i:i + len(v)] = v
	return a


def rot_flat(yaw):
	c, s = np.cos(yaw), np.sin(yaw)
	return np.array([[c, s, 0], [-s, c, 0], [0, 0, 1.]])


def rot_stand(yaw):
	c, s = np.cos(yaw), np.sin(yaw)
	return np.array([[c, s, 0], [0, 0, 1.], [s, -c, 0]])


def rot_side(yaw):
	c, s = np.cos(yaw), np.sin(yaw)
	return np.array([[0, 0, 1.], [c, s, 0], [-s, c, 0]])


def rot_down(yaw):
	c, s = np.cos(yaw), np.sin(yaw)
	return np.array([[c, s, 0], [0, 0, -1.], [-s, c, 0]])


def turn(axis, a, R):
	"""Turn the rows of R about a world axis."""
	x, y, z = np.asarray(axis, float) / np.linalg.norm(axis)
	K = np.array([[0, -z, y], [z, 0, -x], [-y, x, 0]])
	M = np.eye(3) + np.sin(a) * K + (1 - np.cos(a)) * K @ K
	return R @ M.T


def ptr(a):
	return a.ctypes.data_as(ctypes.c_void_p)


class Renderer:
	def __init__(self):
		self.lib = built(HERE, "render.c")

	def trace(self, g, objs, fl, W, H):
		self.keep = (np.ascontiguousarray(g, np.float32), np.ascontiguousarray(np.stack(objs), np.float32),
					np.ascontiguousarray(fl, np.float32))
		self.W, self.H = W, H
		ids, depth = np.zeros((H, W), np.uint8), np.zeros((H, W), np.float32)
		self.lib.trace_scene(ptr(self.keep[0]), ptr(self.keep[1]), len(objs), ptr(self.keep[2]), W, H, ptr(ids), ptr(depth))
		return ids, depth

	def shade(self, off=0):
		out = np.zeros((self.H, self.W, 3), np.float32)
		self.lib.shade_scene(ctypes.c_uint32(off), self.W, self.H, ptr(out))
		return out

	def blur(self, im, r):
		im = np.ascontiguousarray(im, np.float32)
		self.lib.blur(ptr(im), im.shape[1], im.shape[0], im.shape[2] if im.ndim == 3 else 1, int(r))
		return im

	def finish(self, im, p):
		im = np.ascontiguousarray(im, np.float32)
		out, one = np.zeros(im.shape, np.uint8), np.ones(3, np.float32)
		f = ctypes.c_float
		self.lib.finish(ptr(im), im.shape[1], im.shape[0], ptr(one), f(p["contrast"]), f(p["sat"]), f(p["lift"]), f(p["vign"]), ptr(out))
		return out
