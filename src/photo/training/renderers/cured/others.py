"""Pictures with no soap in them: food,things,animals,kitchen corners."""
import numpy as np
from .rig import obj,rot_flat,rot_stand,turn
from .looks import choose,jit,SOFT,DEEP,PALE

KINDS = ["fruit","bread","cheese","cat","bird","kitchen","stones","sponges","chocolate","candles","crockery","blocks"]


def without(r,kind):
	"""-> objects,radius,elevation"""
	y = r.uniform(0,6.28); s = int(r.integers(9999)); T = []; fl = rot_flat(y)

	def add(sh,c,R,dim,rnd,mat,**k):
		k.setdefault("A",jit(r,choose(r,SOFT + DEEP))); k.setdefault("B",jit(r,choose(r,PALE + DEEP)))
		T.append(obj(sh,c,R,dim,rnd,mat,s + len(T),**k))
	if kind == "fruit":
		add("bowl",(0,0,3),fl,(8,8,3),.1,"plain",GLOSS=1.2,ROUGH=.2)
		for i in range(6):
			a = i * 1.05; q = 3.9 if i else 0
			if r.random() < .5:
				add("fruit",(q * np.cos(a),q * np.sin(a),4.6 + .6 * (i == 0)),turn((1,.3,0),r.uniform(-.5,.5),fl),(2.9,2.9,2.7),.1,"citrus",A=jit(r,choose(r,[0xB02A22,0x8FA83A,0xD08A2A])),B=jit(r,0xC9B04A),GLOSS=1,ROUGH=.25)
			else:
				add("ell",(q * np.cos(a),q * np.sin(a),4.6),turn((0,1,0),r.uniform(-.5,.5),rot_flat(a)),(3.0,2.6,2.6),.1,"citrus",A=jit(r,choose(r,[0xE08A1A,0xE8C42A])),B=jit(r,0xE07A1A),GLOSS=.7,ROUGH=.35)
		return T,9,r.uniform(30,60)
	if kind == "bread":
		add("bar",(0,0,1),fl,(13,8,1),.3,"wood",A=jit(r,0xC9A26B),B=jit(r,0x9A7042))
		add("pillow",(0,1,6),fl,(8,4.2,4.2),1.6,"bread",A=jit(r,0xE9D6AE),B=jit(r,0xA8692E),ROUGH=.7)
		add("ell",(3,-5,3.5),rot_flat(y + .5),(3,2.4,1.7),.1,"bread",A=jit(r,0xC98A4A),B=jit(r,0xB06A2A))
		return T,11,r.uniform(25,50)
	if kind == "cheese":
		add("cyl",(0,0,.5),fl,(11,11,.5),.1,"wood",A=jit(r,0x8A6240),B=jit(r,0x5E3E26))
		add("bar",(-2,0,3.6),fl,(4.5,2.6,2.6),.15,"cheese",A=jit(r,0xE8BE52),P2=1.,GLOSS=.8)
		add("cyl",(5,3,2.4),fl,(3.4,3.4,1.4),.5,"cheese",A=jit(r,0xF3EBD8),GLOSS=.2)
		for i in range(6):
			add("ell",(4 + r.normal(0,1.3),-4 + r.normal(0,1),1.9),fl,(1,1,.95),.1,"plain",A=jit(r,choose(r,[0x4A2A4A,0x6A8A3A])),GLOSS=.9)
		return T,10,r.uniform(28,60)
	if kind == "cat":
		A,B = jit(r,choose(r,[0xB0713A,0x6A6460,0x2E2A28,0xD8C8B0])),jit(r,choose(r,[0x7A4420,0xEDE6DA,0x3A3634])); st = float(r.random() < .6)
		R = rot_flat(r.uniform(-.6,.6)); P = lambda v: tuple(np.array(v) @ R)
		k = dict(A=A,B=B,P2=st)
		add("ell",P((0,0,6.5)),R,(11,6.5,6.8),.1,"fur",**k); add("ell",P((-10,-3,10)),R,(4.6,4.2,4),.1,"fur",**k)
		for sgn in (-1,1):
			add("ell",P((-10.3 ,-3 + sgn * 2.5,13.4)),turn((1,0,0),-sgn * .3,R),(.8,1.3,2.1),.1,"fur",**k); add("ell",P((-9,-2 + sgn * 2.6,1.6)),R,(4.5,1.5,1.5),.1,"fur",**k)
			add("ell",P((-14.1,-3 + sgn * 1.6,10.8)),R,(.45,.6,.7),.1,"plain",A=jit(r,0x8A9A2A),GLOSS=2,ROUGH=.15)
		add("ell",P((-14.3,-3,9.2)),R,(.6,1.5,1),.1,"fur",A=B,B=B); add("ell",P((-14.8,-3,9.7)),R,(.25,.45,.3),.1,"plain",A=jit(r,0xB06A6A))
		add("caps",P((9,-6,1.6)),turn((0,0,1),-.5,R),(8,1.3,1.3),.1,"fur",**k)
		return T,14,r.uniform(10,35)
	if kind == "bird":
		A,B = jit(r,choose(r,[0x7A5A3A,0xD8D0C4,0x3A4A5A,0xB0602A])),jit(r,choose(r,[0x3A2A1E,0xE9E2D4])); R = rot_flat(r.uniform(-.8,.8)); P = lambda v: tuple(np.array(v) @ R)
		add("ell",P((0,0,8)),turn(R[1],.35,R),(7.5,5,5),.1,"feather",A=A,B=B); add("ell",P((-5.5,0,13)),R,(2.7,2.4,2.6),.1,"feather",A=A,B=B)
		add("ell",P((7.5,0,9.5)),turn(R[1],-.6,R),(5,2,1),.1,"feather",A=B,B=A); add("ell",P((-8.5,0,12.7)),R,(1.4,.5,.45),.1,"plain",A=jit(r,0xD8A02A))
		for sgn in (-1,1):
			add("ell",P((-6.9,sgn * 1.8,13.5)),R,(.4,.4,.4),.1,"plain",A=jit(r,0x101010),GLOSS=2,ROUGH=.1); add("caps",P((0,sgn * 1.5,1.8)),turn(R[1],1.57,R),(2.2,.3,.3),.1,"plain",A=jit(r,0xC98A2A))
			add("ell",P((1,sgn * 4.2,8.5)),turn(R[1],.3,R),(5.5,1.1,3.2),.1,"feather",A=B,B=A)
		return T,11,r.uniform(8,30)
	if kind == "kitchen":
		for i in range(5):
			x = -16 + i * 8 + r.normal(0,1); k = choose(r,["jar","bottle","pot","cup"]); R = r.uniform(2.4,4)
			if k == "pot":
				add("cyl",(x,r.uniform(0,6),4),fl,(R + 1.5,R + 1.5,4),.3,"metal",A=jit(r,0x9A9A9C))
			else:
				h = dict(jar=1.4,bottle=2.5,cup=1.1)[k] * R; add("lathe",(x,r.uniform(0,6),h),fl,(R,R,h),.1,"plain",P1=dict(bottle=0,cup=1,jar=2)[k],GLOSS=1.4,ROUGH=.15)
		add("bar",(2,-8,.7),fl,(9,6,.7),.3,"wood",A=jit(r,0xC9A26B),B=jit(r,0x9A7042)); add("citrus" and "ell",(1,-8,3.4),fl,(2.7,2.3,2.2),.1,"citrus",A=jit(r,0xE8C42A),B=jit(r,0xD0A01A))
		return T,17,r.uniform(12,35)
	n = int(r.integers(5,10))
	for i in range(n):
		q = r.uniform(0,8) if i else 0; a = r.uniform(0,6.28); c = [q * np.cos(a),q * np.sin(a),0]; R = r.uniform(1.3,3)
		if any(np.hypot(c[0] - t[1],c[1] - t[2]) < R + np.hypot(t[13],t[14]) * .8 for t in T):
			continue
		f = rot_flat(r.uniform(0,6.28))
		if kind == "stones":
			add("ell",(c[0],c[1],R * .5),f,(R,R * r.uniform(.6,.9),R * .55),.1,"stone",A=jit(r,choose(r,[0x8A8886,0xC9C0B0,0x5A5A5E])),B=jit(r,choose(r,[0x4A4846,0xE6E0D4])))
		elif kind == "sponges":
			add("pillow",(c[0],c[1],1.4),f,(R * 1.5,R,1.5),.4,"sponge",A=jit(r,choose(r,[0xE8C83A,0xD87A9A,0x6AB0C0,0xC9A86A])),B=jit(r,0x3A6A3A),P2=float(r.random() < .5),ROUGH=.9)
		elif kind == "chocolate":
			add("bar",(c[0],c[1],.45),f,(R * 1.6,R,.45),.1,"choc",A=jit(r,choose(r,[0x3A2014,0x6A3E22,0xEADDC0])),GLOSS=.9,ROUGH=.3)
		elif kind == "candles":
			add("cyl",(c[0],c[1],R),f,(R * .7,R * .7,R),.12,"plain",A=jit(r,choose(r,[0xF1E8D6,0xB03A3A,0xC9A24A,0x7A6AA0])),GLOSS=.6); add("cyl",(c[0],c[1],2 * R + .3),f,(.08,.08,.5),.02,"plain",A=jit(r,0x2A2420))
		elif kind == "crockery":
			sh = choose(r,["bowl","lathe","cyl"]); h = .35 if sh == "cyl" else R * .7; add(sh,(c[0],c[1],h),f,(R * 1.1,R * 1.1,h),.2,"speckle",A=jit(r,choose(r,PALE + SOFT)),B=jit(r,0x4A3A30),P1=1.,GLOSS=1.2,ROUGH=.2)
		else:
			add("bar",(c[0],c[1],R * .6),f,(R,R * .7,R * .6),.08,"wood",A=jit(r,choose(r,[0xC9A26B,0x8A5A34,0xE0CCA0])),B=jit(r,0x7A5230))
	return T,9,r.uniform(30,65)
