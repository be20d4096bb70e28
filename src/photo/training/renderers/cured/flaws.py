"""Choosing how a finding looks: strength,size,cover,colour,variant."""
import numpy as np
from .rig import put,F,lin
from .looks import DYE,choose,jit

NAMES = ["coloured-specks","smears","white-specks","translucent-veins","crackle-network","powdery-film","dark-centre-ring",
		 "orange-spots","pinholes","crack","brown-outside-in","colour-bled","drag-lines","layer-gap","wrinkled-top","mould-dimples"]
# base colours on which a maker would meet and see it,designs,faces it shows on
BASE = dict(zip(NAMES,["pale","pale","mid","any","soft","mid","mid","pale","any","any","pale","pale","any","any","any","any"]))
DES = dict(zip(NAMES,[[0,0,1,4],[0,0,4],[0,0,1,4,6],[0,0,1,2,6],[0,0,1,2],[0,0,1,2,4],[0,0,4,1,2],[0,0,0,1,4],
					[0,0,1,2,6],[0,1,2,4,6],[0,0,1,2,6],[1,1,2,2,5,8,6],[0,0,1,2,4],[1],[0,0,2,6,1],[0,0,1,2,4]]))
FACE = dict(zip(NAMES,["cut"] * 5 + ["top"] + ["cut"] * 8 + ["top","side"]))


def level(r):
	"""Faint to strong,more or less even,never quite nothing."""
	return float(np.clip(r.uniform(.12,1.05),.12,1))


def make(r,name,fl,bar,close=False):
	i = NAMES.index(name)
	var = int(r.integers(3)); st = level(r); cov = float(r.choice([r.uniform(.05,.3),r.uniform(.3,.7),1.0],p=[.35,.35,.3])); size = r.uniform(0,1)
	hx,hy,hz = bar["DIM"]
	x,y = r.uniform(-.6,.6) * hx,r.uniform(-.6,.6) * hy
	col,ang,A,C = np.zeros(3),r.uniform(0,6.283),0,0
	if name == "coloured-specks":
		col = jit(r,choose(r,DYE))
	elif name == "smears":
		col = jit(r,choose(r,DYE + [0xF6F3EC,0x6B4226])); cov = max(cov,.2); size = r.uniform(.2,1); x *= .5; y *= .5
	elif name == "translucent-veins":
		size = r.uniform(.7,1.7); cov = max(cov,.25)
	elif name == "crackle-network":
		size = r.uniform(.55,1.15) * (.7 if close else 1); cov = max(cov,.25)
	elif name == "powdery-film":
		C = float(r.random() < .6); cov = r.uniform(.1,1)
	elif name == "dark-centre-ring":
		A = hz; cov = r.uniform(.2,.95); st = max(st,.22)
	elif name == "orange-spots":
		col = jit(r,choose(r,[0xC8731E,0xB5651D,0xD98A2B,0x9A4F14,0xE0902F]))
	elif name == "crack":
		cov = r.uniform(.1,1); x = r.uniform(-.5,.5) * hx
	elif name == "brown-outside-in":
		col = jit(r,choose(r,[0x8A5A34,0x6B4426,0xA87A4C,0x5A3A26,0x9A7048])); cov = r.uniform(.03,.8)
	elif name == "colour-bled":
		A = float(r.random() < .5); size = r.uniform(.3,1); cov = max(cov,.3)
	elif name == "drag-lines":
		ang = r.choice([0,0,np.pi / 2]) + r.normal(0,.07); size = r.uniform(.5,1.5); cov = max(cov,.3)
	elif name == "layer-gap":
		A = int(r.integers(max(1,bar.get("NL",2) - 1))); cov = r.uniform(.15,1)
	elif name == "wrinkled-top":
		size = r.uniform(.55,1.5); cov = r.choice([1,r.uniform(.4,.9)]); st = max(st,.2)
	elif name == "mould-dimples":
		cov = max(cov,.3); st = max(st,.2)
	if close:
		cov = max(cov,.6)
	put(fl[i],F,ST=st,COV=cov,VAR=var,SEED=int(r.integers(1,30000)),COL=col,SIZE=size,ANG=ang,X=x,Y=y,Z=bar["SLICE"] + r.uniform(-.3,1) * min(hz,1.2),A=A,C=C)


CLASH = {1: {0,2,7,8},2: {0,8},3: {0,8},4: {5,14},5: {5,14,9},6: {0,7}}


def fits(add,names):
	return not ({NAMES.index(n) for n in names} & CLASH.get(add,set()))
