"""A picture with its flaws, each measured against the same picture without it."""
import numpy as np
from PIL import Image

from . import flaws,looks,others,photo,poses
from .rig import Renderer,put,G,rot_flat,obj,FS

# Drawn this much larger, then brought down.
SUPER = 1.16
# Seen and measured at this part of the size; close-ups and the like may need several attempts.
MEASURED = .6
_renderer = None


def compose(r,kind,names,extra):
	env,S,g = {},[],None
	main = names[0] if names else None
	fl = np.zeros((16,FS),np.float32)
	if kind == "none":
		S,rad,el = others.without(r,extra)
		g = looks.surroundings(r,env)
		return g,S,fl,dict(rad=rad,el=el,tgt=(0,0,max(2.5,rad * .35 if extra in ("cat","bird") else 2.5)),fill=r.uniform(.6,1),az=r.uniform(-.5,.5),S=S),False,None
	design = int(r.choice(flaws.DES[main])) if main else int(r.choice([0,0,0,1,4] if kind != "tricky" else [0,0,1,2,4]))
	d = looks.batch(r,design,flaws.BASE[main] if main else "any",main in ("colour-bled",))
	d["DIM"] = (r.uniform(3.3,4.6),r.uniform(2.5,3.5),r.uniform(1.1,1.6)) if r.random() < .75 else (r.uniform(2.8,3.4),r.uniform(3.2,4.1),r.uniform(1.1,1.5))
	d["RND"] = r.uniform(.05,.16) if r.random() < .75 else r.uniform(.2,.45)
	d["SLICE"] = r.uniform(-9,9)
	tricky = kind == "tricky"
	if tricky:
		looks.trick(r,extra,d,env)
		if r.random() < .3:
			looks.trick(r,looks.choose(r,["oats","stamp","window","leaves","petals","glare"]),d,env)
	elif kind == "flaw" and r.random() < .3:
		t = looks.choose(r,["oats","poppy","coffee","herbs","glitter","petals","stamp","window","leaves","blinds","glare"])
		e = dict(d); env2 = dict(env); looks.trick(r,t,e,env2)
		if flaws.fits(int(e.get("ADD",0)),names):
			d,env,tricky = e,env2,True
	if d["DES"] in (2,3,5,6,7,8) or d.get("MICA",0) > 0 or d["MOT"] > 1:
		tricky = True
	face = flaws.FACE[main] if main else ("top" if env.get("want_top") else r.choice(["cut","cut","cut","top","side"]))
	if main == "crack" and r.random() < .5:
		face = "top"
	close = kind == "close"
	pose = looks.choose(r,poses.POSES["close" if close else face])
	if main == "drag-lines" and pose == "moulded" or extra in ("stamp","embed","label"):
		pose = looks.choose(r,["flat","stand","flat","pair"])
	if r.random() < (.65 if face == "top" else .4) and pose not in ("stack",) and not (main == "wrinkled-top" and r.random() < .6):
		d.update(TOP=int(r.integers(1,5)),TAMP=r.uniform(.12,.45))
	if pose in ("down","sides","moulded","side"):
		d.update(TOP=0)
	for n in names:
		flaws.make(r,n,fl,d,close)
		if n == "crack" and face == "top":
			fl[9][2] = 0
		if n == "powdery-film" and face != "top":
			fl[5][13] = 0
		if n == "dark-centre-ring":
			d["DES"] = d["DES"] if d["DES"] != 1 else 0
	S,el,_ = poses.bars(r,pose,d,face)
	if len(S) > 1 and names and pose in ("several","row","pair","stack"):
		for s in S[1:]:
			s[45] = float(r.random() < .75)    # not every bar of the lot has it
	g = looks.surroundings(r,env)
	if env.get("GOBO") and r.random() < .5:
		put(g,G,TAB=looks.choose(r,[11,3,6]))
	lo,hi = bounds(S)
	tgt = (lo + hi) / 2
	rad = max(np.linalg.norm(hi - lo) / 2,1)
	fill = r.uniform(.6,1.0) if len(S) < 3 else r.uniform(.72,1.1)
	view = dict(rad=rad,el=el,tgt=tgt,fill=fill,az=r.uniform(-.35,.35),S=[s for s in S if s[17] == 0])
	soap = [s for s in S if s[17] == 0]
	if close:
		h = d["DIM"]; ax = dict(cut=(h[0],h[1],2 * h[2]),top=(h[0],h[2],2 * h[1]),side=(h[1],h[2],2 * h[0]))[face]
		m = min(ax[0] / 1.33,ax[1]); hh = r.uniform(.55,.85) * m
		view = dict(rad=hh,el=r.uniform(66,86),tgt=(r.uniform(-.2,.2) * (ax[0] - 1.33 * hh),0,ax[2]),fill=1.,az=r.uniform(-.15,.15),foc=r.uniform(2.6,4))
	elif pose != "glove":
		if r.random() < .22 and pose in ("flat","several","stack","stand","row","moulded","side"):    # on a board
			e = max(hi[0] - lo[0],hi[1] - lo[1]) * .5 + r.uniform(1,5)
			c = looks.choose(r,looks.TABLES[looks.choose(r,[0,1])])
			for s in S:
				s[3] += 1.2
			S.append(obj("bar" if r.random() < .6 else "cyl",(tgt[0],tgt[1],.6),rot_flat(r.uniform(-.4,.4)),(e * 1.25,e,.6),.2,"wood",5,A=looks.jit(r,c[0]),B=looks.jit(r,c[1]),GLOSS=.25,ROUGH=.5))
			rad = max(rad,e * 1.5)
		S += poses.props(r,S,rad,int(r.choice([0,0,1,2,3,4])))
	else:
		S += poses.props(r,S,8,int(r.integers(0,4)))
	return g,S[:31],fl,view,tricky,len(soap)


def bounds(S):
	lo,hi = np.full(3,1e9),np.full(3,-1e9)
	for s in S:
		if s[17] != 0:
			continue
		e = np.abs(s[4:13].reshape(3,3).T) @ s[13:16]
		lo,hi = np.minimum(lo,s[1:4] - e),np.maximum(hi,s[1:4] + e)
	return lo,hi


def soap_mask(ids,S):
	lut = np.zeros(256,bool)
	for i,s in enumerate(S):
		lut[i] = s[17] == 0
	return lut[ids]


def visible(a,b,m,size):
	"""Where two developed pictures differ to the eye, [h,w] of booleans, and whether that is enough."""
	d = np.abs(np.asarray(a,np.int16) - np.asarray(b,np.int16)).max(-1) * m
	n = max(m.sum(),1); area = size[0] * size[1]
	ok = (d > 16).sum() > max(.0008 * n,.0001 * area) or ((d > 9).sum() > .03 * n)
	return d > 9,bool(ok)


def drawn(r,parts,size,p,names,marks=False):
	"""A developed picture of `size` (width, height), its soap [h,w] of booleans, and for each finding that is asked for where it shows and whether that is enough."""
	global _renderer
	R = _renderer = _renderer or Renderer()
	g,S,fl,view,_,_ = parts
	W,H = int(size[0] * SUPER),int(size[1] * SUPER)
	ids,depth = R.trace(g,S,fl,W,H)
	mask = soap_mask(ids,S)
	full = R.shade(0)
	k = photo.expose(full,mask if mask.any() else ids < 32,p)
	focus = float(np.median(depth[mask])) if mask.any() else float(np.median(depth))
	im = photo.develop(full,k,depth,focus,p,size,R)
	small = np.asarray(Image.fromarray((mask * 255).astype(np.uint8)).resize(size,Image.BOX)) > 127
	found = {}
	for n in names:
		i = flaws.NAMES.index(n)
		if fl[i][0] <= 0:
			continue
		if n == "wrinkled-top":                # its shape is traced, not only its colour
			f2 = fl.copy(); f2[i] = 0
			R.trace(g,S,f2,W,H)
			b = R.shade(0); R.trace(g,S,fl,W,H)
		else:
			b = R.shade(1 << i)
		found[n] = visible(im,photo.develop(b,k,depth,focus,p,size,R),small,size)
	return im,small,found


def picture(kind,names,extra,seed,size):
	"""
	The picture that a wish (kind none, plain, tricky, flaw or close; findings; what deceives or which thing) and a seed give, at `size` (width, height):
	bytes [H,W,3], soap [h,w] of booleans, and by finding's name where it can be seen. Drawn up to five times, with more of each flaw, until all can be seen.
	"""
	for t in range(5):
		r = np.random.default_rng([seed,7,t])
		parts = compose(r,kind,names,extra)
		for row in parts[2]:
			if row[0] > 0:
				row[0] = min(1,row[0] + .12 * t); row[1] = min(1,row[1] + .15 * t)
		v = parts[3]
		poses.look_at(r,parts[0],v["tgt"],v["rad"],v["el"],v["az"],v["fill"],size[0] / size[1],v.get("foc"),v.get("S",()))
		p = photo.plan(r)
		if kind == "close":
			p["dof"] = min(p["dof"],.5)
		q = MEASURED if names else .3
		_,bar,found = drawn(r,parts,(int(size[0] * q),int(size[1] * q)),p,names)
		if kind == "none" or bar.mean() >= .08 and all(ok for _,ok in found.values()):
			break
	im,bar,_ = drawn(r,parts,size,p,())
	return np.asarray(photo.grain(im,p,r)),bar,{n: there for n,(there,ok) in found.items() if ok}
