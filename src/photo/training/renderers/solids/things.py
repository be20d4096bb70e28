"""Things that are no soap: crockery, fruit, animals, hands, books."""
import numpy as np

from .soaps import lin, pick

SKIN = ["d8a583", "b98262", "8a5a3e", "e6bd9f", "5f3d2a"]


def rot(axis, a):
	c, s = np.cos(a), np.sin(a)
	return np.array({"x": [[1, 0, 0], [0, c, -s], [0, s, c]], "y": [[c, 0, s], [0, 1, 0], [-s, 0, c]],
					 "z": [[c, -s, 0], [s, c, 0], [0, 0, 1]]}[axis])


def obj(shape, h, pos, R=None, mat=2, col=(.5, .5, .5), round=0.2, seed=1, zoff=0.0, topamp=0.0):
	return dict(shape=shape, h=h, pos=pos, rot=np.eye(3) if R is None else R, mat=mat, col=col, round=round, seed=seed,
				zoff=zoff, bits=255, topamp=topamp)


def thing(r, name, x, z):
	"""One thing standing on the table at (x, z); a list of objects."""
	yaw, sd = r.uniform(0, 6.28), int(r.integers(1, 999))
	R = rot("y", yaw)
	if name == "cup":
		h, w, c = r.uniform(3.5, 5.5), r.uniform(3, 4.2), pick(r, ["e8e4da", "36607a", "b5483a", "d8b04a", "57705a", "2c2c30"])
		d = R @ np.array([w + 0.9, 0, 0])
		return [obj(4, [w, h, w], [x, h, z], mat=3, col=c, seed=sd), obj(4, [1.9, .4, 1.9], [x + d[0] * .95, h, z + d[2] * .95], R @ rot("x", 1.57), 3, c, 0.3, sd)]
	if name == "plate":
		w = r.uniform(6, 10)
		return [obj(4, [w, 0.7, w], [x, 0.7, z], mat=3, col=pick(r, ["efece4", "d9dfe2", "c9b79a", "8fa3a0"]), seed=sd)]
	if name == "fruit":
		s, c = r.uniform(2.8, 3.8), pick(r, ["b3251e", "c9b02a", "6f9a2c", "d97a1c", "a83244"])
		return [obj(1, [s, s * r.uniform(.85, 1.05), s], [x, s * .93, z], R @ rot("x", r.normal() * .2), 9, c, seed=sd), obj(3, [.7, .15, .15], [x, 1.93 * s, z], R @ rot("z", 1.3), 2, lin("3f2a18"))]
	if name == "book":
		h = [r.uniform(6, 8), r.uniform(.7, 2), r.uniform(8, 11)]
		return [obj(0, h, [x, h[1], z], R, 5, pick(r, ["7a2e2e", "27476b", "d9d2bd", "3f5a3a", "c99a3a"]), 0.08, sd)]
	if name == "bread":
		h = [r.uniform(6, 9), r.uniform(3.2, 4.2), r.uniform(4, 5)]
		return [obj(1, h, [x, h[1] * .85, z], R, 10, lin("b9803f"), seed=sd)]
	if name == "board":
		return [obj(0, [r.uniform(9, 13), 0.8, r.uniform(6, 8)], [x, 0.8, z], R, 6, lin(["b98d58", "8a5a34", "d3b07c"][r.integers(3)]), 0.4, sd)]
	if name == "jar":
		w, h = r.uniform(2.2, 3.4), r.uniform(3.5, 6)
		return [obj(2, [w, h, w], [x, h, z], mat=3, col=pick(r, ["c98a2c", "6a3a1c", "d8d4c0", "7f9a8a", "a03a3a"]), round=0.6, seed=2), obj(2, [w * .9, .7, w * .9], [x, 2 * h + .6, z], mat=7, col=lin("b9b9b4"), round=.2)]
	if name == "sponge":
		return [obj(0, [4.6, 1.3, 3.1], [x, 1.35, z], R, 11, pick(r, ["e0c23a", "d98aa0", "7fb0c9"]), .35, sd), obj(0, [4.6, .35, 3.1], [x, 2.95, z], R, 7 + 3, lin("2f6a3a"), .2, sd)]
	if name == "spoon":
		d = R @ np.array([7.5, 0, 0])
		return [obj(3, [6, .35, .35], [x, .4, z], R, 7, lin("c0c0c4")), obj(1, [2.3, .4, 1.5], [x + d[0], .5, z + d[2]], R, 7, lin("c0c0c4"))]
	if name == "stone":
		s = r.uniform(1.5, 3.5)
		return [obj(1, [s, s * .55, s * .8], [x, s * .5, z], R, 10, pick(r, ["77736c", "9a9287", "55585c"]), seed=sd)]
	if name == "plant":
		out = [obj(2, [3.4, 3, 3.4], [x, 3, z], mat=2, col=lin("a8573a"), round=.4)]
		for i in range(8):
			a, t = r.uniform(0, 6.28), r.uniform(.3, 1.2)
			Q = rot("y", a) @ rot("z", t)
			p = np.array([x, 6.5, z]) + Q @ np.array([2.6, 0, 0])
			out.append(obj(1, [2.8, .18, .9], list(p), Q, 2, pick(r, ["3f6a34", "5a8a3f", "2f5a3a"])))
		return out
	if name == "animal":  # a cat or dog lying down, seen from its side
		c, k = pick(r, ["8a6a48", "3a3838", "c9a070", "d9d3c8", "7a7a7c"]), r.random() < .6
		def P(a, b, d):
			return list(np.array([x, 0, z]) + R @ np.array([a, b, d]))
		R = rot("y", r.uniform(-.5, .5))
		out = [obj(1, [9, 5, 5], P(0, 4.8, 0), R, 4, c, seed=sd), obj(1, [4.5, 5.2, 4.6], P(5.5, 6.2, 1), R, 4, c, seed=sd),
			   obj(1, [3.5, 3.2, 3.3], P(9, 11, 2), R, 4, c, seed=sd), obj(1, [1.7, 1.2, 1.5 if k else 2.6], P(9.6, 10, 4.8), R, 4, c * .9, seed=sd + 2),
			   obj(1, [.5, .4, .4], P(9.7, 10.5, 6.2 if k else 7.3), R, 3, lin("2a1c1a"), seed=1)]
		for s in (-1, 1):
			out.append(obj(6, [1.3, 1.5, .6], P(9 + 1.9 * s, 14.2, 1.8), R @ rot("z", -.3 * s), 4, c * .8, seed=sd) if k else obj(1, [.9, 2.6, 1.5], P(9 + 3.2 * s, 10.6, 1.8), R @ rot("z", .25 * s), 4, c * .6, seed=sd))
			out.append(obj(1, [.5, .6, .35], P(9.2 + 1.3 * s, 11.6, 4.7), R, 3, lin("8a9a3a" if k else "2a1a10"), seed=1))
			out.append(obj(1, [.2, .5, .2], P(9.2 + 1.3 * s, 11.6, 5.02), R, 3, lin("050505"), seed=1))
			out.append(obj(3, [4, 1.2, 1.2], P(8.5, 1.2, 2.5 + 2 * s), R, 4, c, seed=sd))
		return out + [obj(3, [7, 1, 1], P(-10, 1.2, 3), R @ rot("y", .7), 4, c, seed=sd)]
	raise KeyError(name)


def hand(r, c, h, R):
	"""Fingers under and over the long edges of a bar at centre c with half sizes h (local axes R)."""
	col, out, sd = pick(r, SKIN, .04), [], int(r.integers(999))
	n, w = 4, r.uniform(0.72, 0.88)
	x0 = r.uniform(-1.2, 0.3)
	def put(a, L, rad, Q, shape=3):
		out.append(obj(shape, [L, rad, rad * 1.0], list(np.asarray(c) + R @ np.asarray(a)), R @ Q, 1, col, seed=sd))
	for i in range(n):  # finger tips come round the far edge
		x = x0 + (i - 1.5) * 2.05 * w + 1.0
		L = [2.0, 2.4, 2.3, 1.7][i]
		put([x, h[1] + 0.25 - 0.1 * i, h[2] * 0.2], L, w, rot("z", .06 * (i - 1.5)) @ rot("y", 1.57 + 0.25))
		put([x + .1, h[1] - L * .15 - .2, h[2] + w * .72], L * .62, w * .94, rot("z", -1.57 + .12 * (i - 1.5)))
		out.append(obj(1, [.52 * w, .62 * w, .2], list(np.asarray(c) + R @ np.array([x + .1, h[1] - L * .62, h[2] + w * 1.53])), R @ rot("x", .25), 1, col, seed=sd))
	put([x0 + .5, -h[1] - .6, h[2] * .1], 4.2, 1.35, rot("z", .35))  # ball of the thumb
	put([x0 + 1.4, -h[1] + .55, h[2] + .8], 2.5, 1.0, rot("z", 1.2))
	put([x0, 0, -h[2] - 1.9], 5, 2.4, rot("z", .2))  # palm behind
	put([x0 - 7.5, -2.5, -h[2] - 2.5], 8, 2.7, rot("z", .3))  # wrist
	return out
