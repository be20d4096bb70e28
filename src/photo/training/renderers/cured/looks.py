"""Colours,designs and surroundings."""
import numpy as np
from .rig import lin,put,O,G

PALE = [0xF3ECDD,0xF6F1E6,0xEFE3CB,0xE9DEC6,0xF4EFE9,0xEADFD0,0xF1E6C8]
SOFT = [0xD9C7DD,0xE7C6C4,0xC9D6C0,0xBFD2D9,0xE8D3A2,0xD9C3A5,0xE6B9A0,0xC8C2B4,0xB9C7A5,0xD6B7C7,0xF0D27A]
DEEP = [0x6F5A8C,0x3E6B8A,0x2F4A6E,0x4F7350,0x8E3F4A,0xB5532E,0x6B4226,0x2E2C2E,0x9A6A2F,0x2F7F82,0xA83C6B,
		0xC98A1E,0x55606B,0x7A8C3C,0x3B2A20,0xC4576B]
DYE = [0x2F58B0,0xA0204A,0x1F8A8A,0x5B2F8F,0xC23A1E,0x2F7A3A,0xD07A10,0x202028,0xB81E78,0x1F3F8F,0x7A4A20]


def choose(r,l):
	return l[int(r.integers(len(l)))]


def jit(r,c,a=.03):
	c = np.array([(c >> 16) / 255,(c >> 8 & 255) / 255,(c & 255) / 255])
	return lin(np.clip(c * (1 + r.normal(0,a)) + r.normal(0,a * .5,3),.01,.97))


def dull(c,k):
	return c * (1 - k) + k * (.9 * (c @ [.25,.65,.1]) + .02)


def batch(r,design,base="any",contrast=False):
	"""Everything the bars of one batch share."""
	pool = dict(pale=PALE,soft=SOFT,deep=DEEP,mid=SOFT + DEEP[:6],any=PALE + PALE + SOFT + DEEP)[base]
	a = choose(r,pool)
	dark = a in DEEP
	b = choose(r,PALE + SOFT if dark else (DYE + DEEP if contrast else DEEP + SOFT + DYE[:6]))
	c = choose(r,PALE if r.random() < .4 else SOFT + DEEP)
	if design == 7:
		a,b = choose(r,PALE),choose(r,[0x2E2C2E,0x55606B,0x3B2A20,0x9A6A2F])
	A,B,C = [dull(jit(r,q),r.uniform(0,.4)) for q in (a,b,c)]
	d = dict(A=A,B=B,C=C,DES=design,SC=r.uniform(.45,1.0) if design != 3 else r.uniform(.5,.9),
			 P1=r.uniform(.2,1),P2=r.uniform(0,1) ** 2,NL=int(r.integers(2,5)) if design == 1 else int(r.choice([2,2,3,4,5])),
			 GLOSS=r.uniform(.25,.9),ROUGH=r.uniform(.34,.55),MOT=r.uniform(0,.5),WEAR=r.uniform(0,1) ** 2,
			 SEED=int(r.integers(1,60000)),AC=jit(r,choose(r,[0xC99A3B,0xB87333,0xD8B0B8,0x7E5AA0,0xB0B4B8])))
	return d


TRICKS = ["swirl","comb","wisps","rings","marble","mica","oats","poppy","coffee","glitter","petals","herbs",
		  "embed","stamp","dew","glare","window","leaves","blinds","label","mottle","halves","ombre"]


def trick(r,name,d,env):
	"""Add something that looks like a finding and is none."""
	ds = dict(swirl=2,comb=3,wisps=6,rings=5,marble=7,halves=8,ombre=4)
	if name in ds:
		d.update({k: v for k,v in batch(r,ds[name],"any",True).items() if k in "A B C DES SC P1 P2 NL".split()})
	elif name == "mica":
		d.update(DES=1,NL=int(r.integers(2,4)),MICA=r.uniform(.5,1))
	elif name in ("oats","poppy","coffee","glitter","petals","herbs"):
		d.update(ADD=["oats","poppy","coffee","glitter","petals","herbs"].index(name) + 1,AMT=r.uniform(.45,1))
		if name in ("petals","glitter"):
			env["want_top"] = True
		if name == "petals":
			d.update(AC=jit(r,choose(r,[0xC8A030,0x7A62A0,0xB04060,0x8A9A50])),AMT=r.uniform(.3,.8))
		if name == "herbs":
			d.update(AC=jit(r,choose(r,[0x4F6B30,0x8A5A2A,0xA03A2A,0xD08A20])))
	elif name == "embed":
		d.update(EMB=r.uniform(.2,1),EC=jit(r,choose(r,SOFT + DEEP)))
	elif name == "stamp":
		d.update(STAMP=int(r.integers(1,4)))
	elif name == "dew":
		d.update(DEW=r.uniform(.5,1))
	elif name == "glare":
		env.update(GLARE=r.uniform(4,9)); d.update(GLOSS=r.uniform(1.4,2.4),ROUGH=r.uniform(.22,.32))
	elif name in ("window","leaves","blinds"):
		env.update(GOBO=["window","leaves","blinds"].index(name) + 1,GSC=r.uniform(4,9),hard=True)
	elif name == "label":
		d.update(LABEL=r.uniform(1.2,2.2))
	elif name == "mottle":
		d.update(MOT=r.uniform(1.0,1.7))


TABLES = {0: [(0x8A6240,0x5E3E26),(0xB98D5E,0x8A6238),(0x6A5A4C,0x453A32),(0xD2C2A8,0xB09A7C),(0xE6E2DA,0xCFC9BE)],
		  1: [(0xC9A26B,0xA87B47),(0xDCC196,0xC4A070),(0x7A5234,0x573620)],2: [(0xEDEBE8,0x9A9A9C),(0x3A3C40,0xA0A09C),(0xD8CFC0,0xA08C70)],
		  3: [(0xE4DCCB,0),(0xB7B0A2,0),(0x7D8C99,0),(0xF0EEE9,0),(0x8A5B56,0),(0x4A5548,0)],4: [(0xF2F0EC,0xB03A3A),(0xF2F0EC,0x4A6A9A),(0xF2EEDF,0x6A8A5A)],
		  5: [(0x3C3F42,0x2A2C2F),(0x55524E,0x3A3836)],6: [(0xA9A7A3,0x8C8A86),(0xC9C5BE,0xB1ACA3)],7: [(0xF1EFEB,0),(0xD9BE94,0),(0xB08A5C,0)],
		  8: [(0xF0EFEC,0xD5DADB),(0x9CB4B8,0x6F8D94),(0xC98A6A,0xA86A4C)],9: [(0xC9B8A0,0x8A8A88),(0xE0D6CC,0xA06A50)],
		  10: [(0xF0EBDF,0x3F5A80),(0xEFEAE0,0xA03C34),(0xE8E0CC,0x6F6A62)],11: [(0xF4F4F2,0),(0x2B2B2D,0),(0xD8DFE2,0),(0xE8D8D0,0),(0x9FB5A0,0),(0x3C4A60,0),(0xD9B44A,0)],
		  12: [(0xB89A74,0xA08258),(0xE0D8CA,0xD4CABA)],13: [(0xECEBE7,0),(0x8FA5B0,0),(0xC7A9A0,0),(0x6A6E70,0)],14: [(0xF2EEE6,0x4F6A90),(0x3A4A66,0xEDE8DC)],
		  15: [(0x8A8A8A,0x5A5856),(0x4A4744,0x2E2B29)]}


def kelvin(k):
	t = k / 100
	r = 255 if t <= 66 else 329.7 * (t - 60) ** -.1332
	g = 99.47 * np.log(t) - 161.1 if t <= 66 else 288.1 * (t - 60) ** -.0755
	b = 255 if t >= 66 else 138.5 * np.log(t - 10) - 305
	c = lin(np.clip(np.array([r,g,b]) / 255,.05,1))
	return c / c.mean()


def surroundings(r,env):
	"""Table,wall and light as fields of the global array."""
	k = int(r.choice([0,0,0,1,1,1,2,2,2,3,3,3,3,4,5,6,6,6,7,7,7,8,9,10,11,11,11,11,12,13,13,14,15]))
	a,b = choose(r,TABLES[k])
	g = np.zeros(56,np.float32)
	wt = int(r.choice([11,11,11,11,6,8,0,7]))
	wc = choose(r,[0xE9E6E0,0xD8D2C6,0xB8BEC0,0x8A8F90,0xC9BBA8,0x6A7478,0xF0EFEC,0x4A4C4E,0xA9B7A6,0xD9C9C0])
	kel = r.choice([2800,3200,4000,5000,5600,6300,7200]) * r.uniform(.95,1.05)
	el = np.radians(r.uniform(22,78)); az = r.uniform(0,6.283)
	if np.sin(az) < -.3 and r.random() < .6:      # light seldom comes from behind the phone
		az = -az
	mode = "hard" if env.get("hard") else r.choice(["window","sun","overcast","lamp","bulbs"],p=[.38,.17,.2,.15,.1])
	soft = dict(window=r.uniform(.3,.55),sun=.02,overcast=.9,lamp=r.uniform(.08,.2),bulbs=r.uniform(.15,.4),hard=r.uniform(.015,.06))[mode]
	ratio = dict(window=r.uniform(1.3,2.6),sun=r.uniform(3,6),overcast=r.uniform(.5,.9),lamp=r.uniform(1.8,4),bulbs=r.uniform(1,2),hard=r.uniform(3.5,6))[mode]
	kc = kelvin(kel) * ratio
	sky = kelvin(np.clip(kel * r.uniform(.95,1.5),2700,9500))
	awb = (kelvin(kel) * .85 + kelvin(6000) * .15) ** r.uniform(.85,1.15)     # the phone takes most of the cast out
	put(g,G,KEY=[np.cos(el) * np.cos(az),np.cos(el) * np.sin(az),np.sin(el)],KC=kc / awb,SKY=sky / awb,SOFT=soft,TAB=k,
		TA=jit(r,a,.02),TB=jit(r,b or a,.02),TC=jit(r,choose(r,[0x6A6660,0xC9C5BE,0xE6E3DC])),TS=r.uniform(.75,1.4),TR=r.uniform(-1.6,1.6),
		SEED=int(r.integers(1,9999)),WALL=r.uniform(28,130),WT=wt,WC=jit(r,wc),GLOSS=r.uniform(.1,.7),GOBO=env.get("GOBO",0),GSC=env.get("GSC",6),
		FOLD=r.choice([0,.35,.9]) * r.uniform(.5,1.2),GLARE=env.get("GLARE",r.choice([0,1.,2.5])))
	return g
