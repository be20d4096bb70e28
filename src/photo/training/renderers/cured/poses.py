"""How the bars lie,what stands about them,where the phone is."""
import numpy as np
from .rig import obj,put,G,rot_flat,rot_stand,rot_side,rot_down,turn,lin
from .looks import choose,jit,SOFT,DEEP,PALE

POSES = dict(cut=["flat"] * 4 + ["stand"] * 4 + ["row","stack","several","several","slices","glove","pair"],
			 top=["top"] * 4 + ["loaf"] * 4 + ["slices","standrow","standrow"],
			 side=["side"] * 4 + ["down"] * 3 + ["moulded"] * 3 + ["sides"],close=["near"])


def bars(r,pose,d,face):
	"""-> list of soap objects,centre,radius,wished elevation (degrees),yaw of the camera"""
	hx,hy,hz = d["DIM"]
	top = d.get("TOP",0)
	rnd = d["RND"]
	keep = {k: v for k,v in d.items() if k not in ("DIM","RND","TOP","OVAL")}
	S = []

	def bar(R,c,half=None,sl=0.,shape="bar",rn=None):
		k = dict(keep); k["SLICE"] = d["SLICE"] + sl; k["FLAW"] = 1
		S.append(obj(shape,c,R,half or (hx,hy,hz),rn or rnd,"soap",**{a: k.pop(a) for a in []},seed=k.pop("SEED"),TOP=top,**k))
	yaw = r.uniform(-.5,.5); el = r.uniform(15,45); t = min(.6,.3 + d.get("TAMP",0)) if top else 0
	if pose == "flat":
		bar(rot_flat(r.uniform(0,6.28)),(0,0,hz)); el = r.uniform(32,84)
	elif pose == "near":
		if face == "cut":
			bar(rot_flat(0),(0,0,hz))
		elif face == "top":
			bar(rot_stand(0),(0,0,hy))
		else:
			bar(rot_side(0),(0,0,hx))
	elif pose == "stand":
		bar(rot_stand(yaw),(0,0,hy)); el = r.uniform(8,42)
	elif pose == "top":
		bar(rot_stand(r.uniform(-.9,.9)),(0,0,hy)); el = r.uniform(42,82)
	elif pose == "loaf":
		L = r.uniform(7,12); bar(rot_stand(r.uniform(.35,1.2) * r.choice([-1,1])),(0,0,hy),(hx,hy,L)); el = r.uniform(28,62)
	elif pose == "slices":
		n = int(r.integers(2,5)); y0 = r.uniform(.3,.9) * r.choice([-1,1]); R = rot_stand(y0); ax = R[2]; z = 0; L = r.uniform(4,8)
		bar(R,tuple(-ax * (L + .02) + np.array([0,0,hy])),(hx,hy,L),-L)
		for i in range(n):
			z += r.uniform(.15,.9); c = ax * (z + hz) + np.array([r.normal(0,.12),r.normal(0,.12),hy]); z += 2 * hz
			bar(rot_stand(y0 + r.normal(0,.04)),c,sl=z)
		el = r.uniform(20,55)
	elif pose in ("row","standrow"):
		n = int(r.integers(3,5)); st = r.uniform(.15,1.2); y0 = r.uniform(-.4,.4); R = rot_stand(y0); dx = r.uniform(-1,1)
		for i in range(n):
			bar(turn((0,0,1),r.normal(0,.06),R),R[2] * -i * (2 * hz + st) + R[0] * dx * i + np.array([0,0,hy]),sl=-i * 2.6)
		el = r.uniform(20,45) if pose == "row" else r.uniform(40,68)
	elif pose == "stack":
		n = int(r.integers(2,4)); y0 = r.uniform(0,6.28)
		for i in range(n):
			bar(rot_flat(y0 + r.normal(0,.25)),(r.normal(0,.35),r.normal(0,.35),hz * (2 * i + 1)),sl=i * 2.6)
		el = r.uniform(26,60)
	elif pose in ("several","sides"):
		n = int(r.integers(2,7)); cols = 2 if n < 5 else 3; y0 = r.uniform(-.4,.4); c,s = np.cos(y0),np.sin(y0); sx = 2 * hx + r.uniform(.5,1.8); sy = 2 * hy + r.uniform(.5,2)
		for i in range(n):
			u,v = (i % cols) * sx + r.normal(0,.25),(i // cols) * sy + r.normal(0,.25)
			a = y0 + r.normal(0,.1)
			if pose == "sides":
				bar(rot_down(a),(u * c - v * s * .6,u * s + v * c * .6,hy),sl=i * 2.6)
			else:
				bar(rot_flat(a + (np.pi if r.random() < .2 else 0)),(u * c - v * s,u * s + v * c,hz),sl=i * 2.6)
		el = r.uniform(40,85)
	elif pose == "pair":                      # one standing,one lying before it
		bar(rot_stand(yaw),(0,1.2,hy)); bar(rot_flat(yaw + r.uniform(-.5,.5)),(r.uniform(-3,3),-hy - 1.6,hz),sl=2.6); el = r.uniform(22,50)
	elif pose == "side":
		bar(rot_side(r.uniform(-.9,.9)),(0,0,hx)); el = r.uniform(35,75)
	elif pose == "down":
		bar(rot_down(r.uniform(-.9,.9)),(0,0,hy)); el = r.uniform(38,78)
	elif pose == "moulded":                   # from a single mould,smooth sides
		k = r.choice(["cyl","oval"]); rr = r.uniform(3.1,3.8); half = (rr,rr,hz) if k == "cyl" else (rr * 1.25,rr * .88,hz)
		R = rot_flat(r.uniform(0,6.28)); zc = hz if k == "cyl" else hz + .4
		bar(R,(0,0,zc),half,shape=k,rn=r.uniform(.2,.8))
		if r.random() < .4:
			bar(rot_flat(1),(2 * rr * 1.3,r.uniform(-2,2),zc),half,sl=3,shape=k,rn=.4)
		el = r.uniform(28,70)
	elif pose == "glove":
		R = turn((1,0,0),r.uniform(-.5,.1),rot_stand(r.uniform(-.3,.3))); R = turn(R[2],r.normal(0,.3) + r.choice([0,1.57]) * 0,R)
		c = np.array([0,0,17.]); bar(R,c)
		S.append(obj("glove",c,R,(hx + 6,12,hz + 7),.5,"plain",1,A=jit(r,choose(r,[0x2E5E9A,0x2A2A2E,0xE4E6E6,0x6A4A9A,0x3F8F8A,0x5FA0D0])),
					P1=hx,P2=hy,SC=hz,GLOSS=r.uniform(.3,.9),ROUGH=.42)); el = r.uniform(5,40)
	return S,el,t


def look_at(r,g,tgt,rad,el,az,fill,aspect,foc=None,S=()):
	"""Aim the phone; with soap in S stand just so far off that it fills the wished share."""
	foc = foc or r.uniform(1.8,3.4)
	dist = rad * foc / (fill * min(1,aspect))
	e = np.radians(el)
	f = -np.array([np.cos(e) * np.sin(az),-np.cos(e) * np.cos(az),np.sin(e)])
	right = np.cross(f,[0,0,1.]); right /= np.linalg.norm(right) + 1e-9
	up = np.cross(right,f)
	roll = r.normal(0,.06); right,up = right * np.cos(roll) + up * np.sin(roll),up * np.cos(roll) - right * np.sin(roll)
	t = np.asarray(tgt,float)
	Q = [s[1:4] + np.array([i,j,k]) * s[13:16] @ s[4:13].reshape(3,3) for s in S for i in (-1,1) for j in (-1,1) for k in (-1,1)]
	if Q:
		Q = np.array(Q)
		for _ in range(6):
			q = Q - (t - f * dist); z = np.maximum(q @ f,1)
			x,y = q @ right / z * foc / aspect,q @ up / z * foc
			t = t + right * (x.max() + x.min()) / 2 * dist / foc * aspect + up * (y.max() + y.min()) / 2 * dist / foc
			dist *= max(x.max() - x.min(),y.max() - y.min()) / 2 / fill
		room = np.clip(1 - fill,0,1)
		t = t + right * r.uniform(-.7,.7) * room * (1 if aspect < 1 else aspect) * dist / foc + up * r.uniform(-.6,.6) * room * dist / foc
	put(g,G,CAM=t - f * dist,RIGHT=right,UP=up,FWD=f,FOC=foc)
	return dist


def free(S,x,y,R,extra=.4):
	return all(np.hypot(x - o[1],y - o[2]) > R + np.linalg.norm(o[13:16][np.argsort(o[13:16])[1:]]) + extra for o in S)


def props(r,S,rad,n):
	"""Workshop odds and ends,never across the soap."""
	out = []
	for _ in range(n * 3):
		if len(out) >= n:
			break
		a = r.uniform(.1,3.04) if r.random() < .75 else r.uniform(-.6,3.7); q = rad + r.uniform(3,16); x,y = q * np.cos(a),q * np.sin(a)
		R = r.uniform(1,4.5); k = choose(r,["bowl","bottle","jar","cup","cloth","stones","leaf","candle","box","cyl","sprig","sprig"])
		if not free(S + out,x,y,R + 1):
			continue
		col = jit(r,choose(r,PALE + SOFT + DEEP)); fl = rot_flat(r.uniform(0,6.28)); s = int(r.integers(9999))
		if k == "bowl":
			out.append(obj("bowl",(x,y,R * .5),fl,(R * 1.2,R * 1.2,R * .5),.1,"plain",s,A=col,GLOSS=1,ROUGH=.2))
		elif k in ("bottle","jar","cup"):
			h = dict(bottle=2.2,jar=1.2,cup=1.)[k] * R
			out.append(obj("lathe",(x,y,h + .1),fl,(R * .8,R * .8,h),.1,"plain",s,A=col,P1=dict(bottle=0,cup=1,jar=2)[k],GLOSS=1.2,ROUGH=.2))
		elif k == "cloth":
			for j in range(2):
				out.append(obj("pillow",(x,y,.5 + j),fl,(R * 1.3,R,.55),.45,"cloth",s,A=col,B=jit(r,choose(r,PALE)),P2=float(r.random() < .4)))
		elif k == "stones":
			out.append(obj("ell",(x,y,R * .22),fl,(R * .5,R * .4,R * .24),.1,"stone",s,A=jit(r,0x8A8886),B=jit(r,0x5E5C5A)))
		elif k == "candle":
			out.append(obj("cyl",(x,y,R * .9),fl,(R * .6,R * .6,R * .9),.15,"plain",s,A=jit(r,0xF1E8D6)))
		elif k == "box":
			out.append(obj("bar",(x,y,R * .7),fl,(R * 1.1,R * .7,R * .7),.1,"wood",s,A=jit(r,0xC9A26B),B=jit(r,0x9A7042)))
		elif k == "cyl":
			out.append(obj("cyl",(x,y,R * .5),fl,(R,R,R * .5),.1,"wood",s,A=jit(r,0xB08A5C),B=jit(r,0x7A5230)))
		else:                                    # a twig with leaves,or dried flowers
			ang = r.uniform(0,6.28); c,sn = np.cos(ang),np.sin(ang); fl_col = jit(r,choose(r,[0x5F7A46,0x7A6AA8,0x8FA08A,0xA0506A,0x3F5A3A]))
			for j in range(7):
				u = (j - 3) * .85; side = (-1) ** j * .5; R2 = turn((0,0,1),side * 1.6,rot_flat(ang)); R2 = turn(R2[1],r.uniform(-.35,.1),R2)
				out.append(obj("ell",(x + u * c - side * sn,y + u * sn + side * c,.35),R2,(r.uniform(.7,1.1),r.uniform(.25,.4),.1),.1,"leaf",s,A=fl_col,GLOSS=.3))
			out.append(obj("caps",(x,y,.2),rot_flat(ang),(3.2,.1,.09),.1,"plain",s,A=jit(r,0x6A5A3A)))
	return out[:20]
