"""Puts soap on a table before a camera, in the light of a small flat."""
import numpy as np

from .soaps import IDS, lin, make_soap, pick
from .things import hand, obj, rot, thing

# face that must be seen for each finding
FACE = {"dark-centre-ring": "cut", "brown-outside-in": "cut", "colour-bled": "cut", "drag-lines": "cut", "layer-gap": "cut",
		"wrinkled-top": "top", "mould-dimples": "side", "translucent-veins": "cut", "crackle-network": "cut"}
POSES = {"cut": ["flat", "flat", "stand", "stand", "row", "stack", "loafend", "hand", "lean", "grid", "pair"],
		 "top": ["slab", "slab", "loaf", "loaf", "standhigh", "slabs"],
		 "side": ["loafside", "mould", "mould", "moulds", "mould", "puck"],
		 "any": ["flat", "stand", "row", "stack", "flat", "lean", "grid", "pair", "slab", "slabs", "loaf", "mould", "moulds", "puck"]}


def face_for(r, ids):
	for i in ids:
		name = IDS[i]
		if name in FACE:
			return FACE[name]
		if name == "crack":
			return ["top", "cut"][r.integers(2)]
		if name == "powdery-film" and r.random() < 0.7:
			return "top"
	return "any"


def rest(h, R, x, z, y=0.0):
	return [x, y + float(np.abs(R[1]) @ np.asarray(h)), z]


def bars(r, pose, soap):
	"""Objects of soap for a pose, the camera's elevation range and the direction it looks along."""
	h, k = soap["h"], soap["kind"]
	rnd = r.uniform(0.06, 0.22) if k == 0 else r.uniform(.1, .25) if k == 2 else r.uniform(0.3, 0.7)
	top = r.uniform(.1, .5) if soap["topstyle"] or r.random() < .5 else 0.0
	if k == 1:
		top = 0.0
	out, n = [], 0

	def put(R, x, z, y=0.0, hh=None, shape=0, zoff=None):
		nonlocal n
		hh = hh or [h[0] * r.uniform(.985, 1.015), h[1], h[2] * r.uniform(.93, 1.07)]
		out.append(obj(shape, hh, rest(hh, R, x, z, y), R, 0, (0, 0, 0), min(rnd, .9 * min(hh)), n, n * 2.6 * h[2] if zoff is None else zoff, top))
		n += 1
	yaw, flat, elev = r.normal() * 0.35, rot("x", -np.pi / 2), (25, 60)
	Y = rot("y", yaw)
	if pose == "flat":
		put(Y @ flat, 0, 0); elev = (38, 86)
	elif pose == "stand":
		put(Y, 0, 0); elev = (6, 38)
	elif pose == "standhigh":
		put(rot("y", r.normal() * .6), 0, 0); elev = (38, 60)
	elif pose == "pair":
		put(Y, -h[0] * .7, -2.5); put(rot("y", r.normal() * .3) @ flat, h[0] * .8, h[1] * .7); elev = (25, 50)
	elif pose == "row":
		m, a = int(r.integers(3, 5)), r.uniform(.2, .7) * r.choice([-1, 1])
		for i in range(m):
			put(rot("y", a + r.normal() * .05), (i - m / 2) * (2 * h[2] + r.uniform(1, 2.5)) * np.sign(a), -(i - m / 2) * r.uniform(.3, 1.4))
		elev = (15, 42)
	elif pose == "stack":
		y = 0
		for i in range(int(r.integers(2, 4))):
			put(rot("y", yaw + r.normal() * .25) @ flat, r.normal() * .3, r.normal() * .3, y); y += 2 * out[-1]["h"][2] + .02
		elev = (28, 60)
	elif pose == "grid":
		for i in range(2):
			for j in range(2):
				put(rot("y", yaw * .3 + r.normal() * .06) @ flat, (i - .5) * (2 * h[0] + r.uniform(.3, 1)), (j - .5) * (2 * h[1] + r.uniform(.3, 1)))
		elev = (45, 85)
	elif pose == "lean":
		put(rot("y", yaw) @ flat, 0, -h[1] * .6)
		t = r.uniform(.5, .9); R = rot("y", yaw + r.normal() * .1) @ rot("x", -t)
		put(R, 0, h[1] * .6 + .4); elev = (18, 45)
	elif pose == "hand":
		R = rot("y", yaw) @ rot("x", -r.uniform(.2, 1.1)) @ rot("z", r.normal() * .25)
		put(R, 0, 0); out[0]["pos"] = [0, r.uniform(9, 12), 0]
		out += hand(r, out[0]["pos"], h, R); elev = (15, 50)
	elif pose in ("loaf", "loafside", "loafend"):
		a = yaw + (r.uniform(.9, 1.5) * r.choice([-1, 1]) if pose != "loafend" else r.uniform(.25, .6) * r.choice([-1, 1]))
		if pose == "loafside":
			a = -np.pi / 2 + r.normal() * .3
		R = rot("y", a)
		put(R, 0, 0, zoff=0.0)
		if pose != "loafside" and r.random() < .5:
			sl = [h[0], h[1], 1.3]; g = R @ np.array([r.normal() * .4, 0, h[2] + 2.6])
			put(R @ rot("y", r.normal() * .1), g[0], g[2], hh=sl, zoff=h[2] + 1.3)
		elev = {"loaf": (32, 60), "loafside": (14, 35), "loafend": (12, 35)}[pose]
	elif pose in ("slab", "mould", "puck"):
		R = rot("y", yaw)
		if k == 1:
			R = R @ rot("x", np.pi)  # turned out of its mould, bottom up
		put(R, 0, 0, shape=5 if pose == "puck" else 0); elev = (35, 80)
	else:  # slabs, moulds
		m = int(r.integers(2, 5)); shape = 5 if pose == "moulds" and r.random() < .4 else 0
		for i in range(m):
			R = rot("y", r.normal() * .2) @ (rot("x", np.pi) if k == 1 else np.eye(3))
			put(R, (i % 3 - 1) * (2 * h[0] + 1), (i // 3 - .5) * (2 * h[2] + 1), shape=shape)
		elev = (35, 75)
	return out, elev


TABLES = [(0, "b98a58", "8f6238", .3), (0, "6a4630", "4a2e1e", .4), (0, "d9c3a0", "c0a47c", .2), (0, "ded9d0", "c4bcae", .2), (1, "d8d0c0", "0", 0), (1, "8f9aa0", "0", 0),
		  (1, "b0705a", "0", 0), (2, "e6e4e0", "8d8f94", .7), (3, "e2e4e2", "9a968e", .8), (3, "8fb0a8", "d8d4cc", .8), (4, "b9b4a8", "6a625a", .6), (4, "4a4848", "8a8680", .6),
		  (5, "c8a87c", "0", .05), (5, "ece6d8", "0", .25), (6, "e9e6de", "a83a36", .5), (6, "e8e6e0", "3a5f93", .5), (7, "d9d6d0", "0", 0), (7, "6f8fa0", "0", 0),
		  (8, "3f4244", "5c5f60", .2), (8, "9a958c", "b3aea4", .15), (9, "c9a468", "a9824a", .25), (10, "f0efec", "0", .1), (10, "222225", "0", .3), (10, "c9d4cf", "0", .15), (10, "d9b9b0", "0", .1)]


def make_view(r, target, radius, elev, fill, portrait, roll=None):
	kind, a, b, gl = TABLES[r.integers(len(TABLES))]
	e, az = np.radians(r.uniform(*elev)), r.normal() * .15
	fov = np.radians(r.uniform(42, 62)) * (0.8 if portrait else 1)
	D = radius / np.tan(fov / 2) / fill + radius * .4
	d = np.array([np.cos(e) * np.sin(az), np.sin(e), np.cos(e) * np.cos(az)])
	pos = np.asarray(target) + D * d
	pos[1] = max(pos[1], 1.2)
	f = np.asarray(target) - pos; f = f / np.linalg.norm(f)
	right = np.cross(f, [0, 1, 0]); right /= np.linalg.norm(right); up = np.cross(right, f)
	q = r.normal() * .05 if e < 1 else r.normal() * .25
	right, up = right * np.cos(q) + up * np.sin(q), up * np.cos(q) - right * np.sin(q)
	t = r.choice([2700, 3200, 4000, 5200, 5600, 6500, 6000, 5500])
	c = np.array({2700: [1, .66, .34], 3200: [1, .73, .45], 4000: [1, .85, .66], 5200: [1, .96, .9], 5500: [1, .98, .95], 5600: [1, .99, .98], 6000: [.97, .98, 1], 6500: [.92, .97, 1.06]}[int(t)])
	c = c / (0.25 + .75 * c)  # the phone's white balance takes most of it away
	la, le = r.uniform(0, 2 * np.pi), np.radians(r.uniform(16, 72))
	if r.random() < .7:
		la = r.uniform(-2.6, 2.6)
	ld = np.array([np.cos(le) * np.sin(la), np.sin(le), np.cos(le) * np.cos(la)])
	key = r.uniform(.35, 1.0); amb = (1.15 - key) * r.uniform(.6, 1.0) + .12
	tc = lin(a) * r.uniform(.75, 1.1)
	return dict(pos=pos, right=right, up=up, fwd=f, tanx=np.tan(fov / 2), ldir=ld, lcol=c * key * 1.3, soft=np.exp(r.uniform(np.log(.03), np.log(.5))),
				amb=np.array([.92, .97, 1.05]) * amb * c ** .4, bounce=amb * (.25 + .6 * tc), stripes=0, stripescale=r.uniform(1.5, 3.5), stripeangle=r.uniform(0, 3.14),
				tkind=kind, tcol=tc, tcol2=lin(b if b != "0" else a) * r.uniform(.75, 1.1), tscale=r.uniform(.8, 1.3), tangle=r.uniform(0, 3.14), tgloss=gl * r.uniform(.3, 1.3),
				tedge=-r.uniform(14, 60), wkind=int(r.integers(4)), wcol=pick(r, ["d9d4c8", "b9c0bc", "8f8a80", "c9b79a", "6f7f86", "e6e2da"]), seed=int(r.integers(9000))), D


def soap_scene(r, ids=(), pattern=None, pose=None, close=False, clutter=.35):
	face = face_for(r, ids)
	choices = POSES[face]
	if face == "any" and not ids and pattern in (1, 4, 6):
		choices = POSES["cut"]
	pose = pose or choices[r.integers(len(choices))]
	if any(IDS[i] in ("layer-gap", "colour-bled", "dark-centre-ring") for i in ids) and pose not in POSES["cut"]:
		pose = "flat"
	if pose == "hand" and r.random() < .6:
		pose = "stand"
	if close:
		pose = {"cut": ["flat", "stand"], "top": ["slab", "loaf"], "side": ["mould", "loafside"], "any": ["flat", "slab", "mould"]}[face][r.integers(2)]
	kind = 1 if pose in ("mould", "moulds", "puck") else 2 if pose in ("slab", "slabs") else 0
	soap = make_soap(r, kind, ids, pattern)
	if pose.startswith("loaf"):
		soap["h"][2] = r.uniform(7.5, 11)
	objs, elev = bars(r, pose, soap)
	seen = {"cut": "cut", "top": "top", "side": "side"}.get(face, {0: "cut", 1: "side", 2: "top"}[kind])
	if seen == "side" and kind == 1:
		seen = "low"  # -y faces up
	soaps = [o for o in objs if o["mat"] == 0]
	P = np.array([o["pos"] for o in soaps]); lo, hi = P.min(0), P.max(0)
	target = (lo + hi) / 2
	radius = max(np.linalg.norm((hi - lo)) / 2 * .9 + np.linalg.norm(soaps[0]["h"]) * (.82 if len(soaps) < 3 else .7), 3)
	portrait = r.random() < .4
	fill = r.uniform(.75, 1.12)
	if close:
		fill, target = r.uniform(2.3, 3.3), np.array(soaps[0]["pos"], float)
		n = {"cut": [0, 0, soaps[0]["h"][2]], "top": [0, soaps[0]["h"][1], 0], "low": [0, -soaps[0]["h"][1], 0], "side": [soaps[0]["h"][0], 0, 0]}[seen]
		target = target + soaps[0]["rot"] @ np.array(n)
	elif pose != "grid":
		target = target + np.array([r.normal() * .8, 0, r.normal() * .6])
	view, D = make_view(r, target, radius, elev, fill, portrait)
	if not close and pose != "hand" and r.random() < clutter:  # things of the flat, behind and beside
		for _ in range(int(r.integers(1, 3))):
			name = ["cup", "plate", "jar", "book", "spoon", "stone", "fruit"][r.integers(7)]
			objs += thing(r, name, r.uniform(-22, 22), -r.uniform(14, 26) - max(0, -lo[2]))
		view["tedge"] = min(view["tedge"], -38)
	return dict(view=view, soap=soap, objs=objs, focus=D, portrait=portrait, face=seen, pose=pose, nbars=len(soaps))


def empty_scene(r):
	"""No soap: crockery, fruit, bread, books, animals, a kitchen."""
	what = r.choice(["table", "animal", "kitchen", "blocks"], p=[.35, .25, .2, .2])
	objs, T, rad, elev = [], [0, 3, 0], 11, (15, 50)
	if what == "animal":
		objs, T, rad, elev = thing(r, "animal", 0, 0), [1, 6, 0], 15, (6, 25)
	elif what == "blocks":
		objs = thing(r, ["sponge", "book", "board", "bread"][r.integers(4)], 0, 0) + thing(r, ["cup", "spoon", "jar"][r.integers(3)], 9, -7)
		rad = 8
	else:
		n = 3 if what == "table" else 7
		for i in range(n):
			name = ["cup", "plate", "fruit", "fruit", "bread", "jar", "spoon", "stone", "plant", "board"][r.integers(10)]
			objs += thing(r, name, (i - n / 2) * r.uniform(8, 11) + 3, r.uniform(-6, 5) - (10 if what == "kitchen" else 0))
		if what == "kitchen":
			rad, elev, T = 24, (5, 20), [0, 8, -8]
	portrait = r.random() < .3
	view, D = make_view(r, T, rad, elev, r.uniform(.8, 1.1), portrait)
	if what == "kitchen":
		view["tedge"], view["wkind"] = -30, [1, 3, 2][r.integers(3)]
	soap = make_soap(r, 0)
	return dict(view=view, soap=soap, objs=objs, focus=D, portrait=portrait, face="cut", pose=what, nbars=0)
