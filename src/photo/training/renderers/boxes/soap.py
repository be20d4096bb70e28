"""The soap's design on the faces of a box. Drawn by another hand."""
import os
from compiled import built
import numpy as np, ctypes as ct
from scipy import ndimage as ni
from PIL import Image, ImageDraw
L=built(os.path.dirname(os.path.abspath(__file__)),'cast.c'); fp=ct.POINTER(ct.c_float); F=np.float32
def P(a): return a.ctypes.data_as(fp)
def fbm(X,Y,Z,fr=1,oct=4,gain=.5,seed=0):
    X,Y,Z=[np.ascontiguousarray(np.broadcast_to(q,np.broadcast(X,Y,Z).shape),F) for q in (X,Y,Z)]
    o=np.empty(X.shape,F); L.fbm(P(X),P(Y),P(Z),X.size,oct,ct.c_float(fr),ct.c_float(gain),int(seed)%100000,P(o)); return o
def worley(X,Y,fr,seed):
    X,Y=np.ascontiguousarray(X,F),np.ascontiguousarray(Y,F); a,b,c=[np.empty(X.shape,F) for _ in range(3)]
    L.worley(P(X),P(Y),X.size,ct.c_float(fr),int(seed)%100000,P(a),P(b),P(c)); return a,b,c
def lin(c): c=np.asarray(c,F); return np.where(c<=.04045,c/12.92,((c+.055)/1.055)**2.4).astype(F)
def srgb(c): c=np.clip(c,0,1); return np.where(c<=.0031308,c*12.92,1.055*c**(1/2.4)-.055).astype(F)
def hx(s): return np.array([int(s[i:i+2],16)/255 for i in (0,2,4)],F)
def sst(a,b,x): t=np.clip((x-a)/(b-a+1e-9),0,1); return t*t*(3-2*t)
import colorsys
def hsv(h,s,v): return np.array(colorsys.hsv_to_rgb(h%1,s,v),F)
CREAM=['efe3c8','f3ead6','e9d9b4','f6f0e2','ead9bd','f2e6c4','e4d3a8']
WHITE=['f5f3ee','f1efe8','f7f5f2']
PASTEL=['e8b9bd','b9d3e0','c9dcb8','d8c2e2','f2d0b0','bfe0d4','f3e2a6','e3a9b5','a9bfdc','d5b8a4']
SAT=['b5303f','2c5f9e','3d7d46','6d3f94','d9822b','178a8a','c9447c','8a3b22','d6b02c','243f6b','556b2f']
BROWN=['8a5f3c','6b4428','a97c50','c49a6c','4f3322']
BLACK=['26262a','2f2d2c','1e2226','3a3a3e']
def pick(r,l): return l[r.integers(len(l))]
def palette(r,k,mood=None):
    mood=mood or pick(r,['cream','cream','white','pastel','pastel','sat','sat','dark','brown','mix'])
    base={'cream':CREAM,'white':WHITE,'pastel':PASTEL,'sat':SAT,'dark':BLACK,'brown':BROWN,'mix':CREAM+PASTEL+SAT}[mood]
    out=[hx(pick(r,base))]
    acc={'cream':PASTEL+SAT+BROWN,'white':PASTEL+SAT+BLACK,'pastel':WHITE+PASTEL+SAT,'sat':WHITE+CREAM+SAT,'dark':WHITE+CREAM+SAT,'brown':CREAM+BROWN,'mix':CREAM+PASTEL+SAT+BLACK}[mood]
    t=0
    while len(out)<k and t<200:
        t+=1; c=hx(pick(r,acc))
        if min(np.abs(c-o).sum() for o in out)>.35: out.append(c)
    while len(out)<k: out.append(hx(pick(r,CREAM+SAT)))
    return [lin(np.clip(c+r.normal(0,.02,3),.03,.97)) for c in out]
class Face: pass
class Soap:
    def __init__(s,r,w,h,d,ppc,pattern,ncol=3,mood=None,pal=None):
        s.r=r;s.w,s.h,s.d=w,h,d;s.seed=int(r.integers(1,90000));s.pattern=pattern
        tot=(w*h+w*d+h*d)*ppc*ppc
        if tot>6.5e5: ppc*=np.sqrt(6.5e5/tot)
        s.ppc=ppc
        K={'solid':1,'ombre':2,'veined':2,'embeds':2,'moulded':1}.get(pattern,max(2,ncol)); s.pal=pal or palette(r,K,mood); s.K=K
        s.par=dict(fr=r.uniform(.13,.34)*(1.5 if r.random()<.45 else 1)*5/h*1.2,a=r.uniform(.5,1.8),rot=r.uniform(-.5,.5),rep=r.uniform(1,2.2),wave=r.choice([.0,.03,.08,.15])*h)
        s.f=[]
        for i,(a,b) in enumerate([(w,h),(w,d),(d,h)]):
            f=Face();W,H=max(24,int(a*ppc)),max(24,int(b*ppc));u=((np.arange(W)+.5)/W-.5).astype(F)*a;q=((np.arange(H)+.5)/H-.5).astype(F)*b
            U,Q=np.meshgrid(u,q)
            f.U,f.V,f.a,f.b,f.px=U,Q,a,b,W/a
            if i==0:f.X,f.Y,f.Z=U,-Q,np.full_like(U,d/2)
            elif i==1:f.X,f.Y,f.Z=U,np.full_like(U,h/2),Q
            else:f.X,f.Y,f.Z=np.full_like(U,w/2),-Q,U
            f.i=i; s.f.append(f); f.m=[np.zeros_like(U),np.zeros_like(U)]; f.ht=np.zeros_like(U); f.soap=np.ones_like(U)
            f.ed=np.minimum(a/2-abs(U),b/2-abs(Q))
        s.bounds=None
        getattr(s,'p_'+pattern)()
        mott=r.uniform(.01,.045);gl=r.uniform(.25,.62);gr=r.uniform(.005,.015)
        s.gl0=gl
        for f in s.f:
            f.W=np.clip(f.W,0,1);f.W/=f.W.sum(-1,keepdims=True)+1e-6
            c=np.zeros(f.U.shape+(3,),F)
            for k in range(s.K): c+=f.W[...,k:k+1]*s.pal[k]
            n=fbm(f.X,f.Y,f.Z,.5,4,.6,s.seed+3)
            n2=ni.zoom(r.normal(0,1,(f.U.shape[0]//2+2,f.U.shape[1]//2+2)).astype(F),2,order=1)[:f.U.shape[0],:f.U.shape[1]]
            c*=(1+mott*n+gr*n2)[...,None]
            e=np.exp(-f.ed/.25)*.05; c*=(1+e)[...,None]   # edges a little paler
            f.c=np.clip(c,.004,.97);f.gl=np.full_like(f.U,gl)+.05*n
            if i!=9: f.ht+=.006*n+.002*fbm(f.X,f.Y,f.Z,4,2,.5,s.seed+9)
        if pattern!='moulded' and r.random()<.5: s.chatter(r.uniform(.0005,.0015))
    def chatter(s,a):
        f=s.f[0];t=f.U*np.cos(.1)+f.V*np.sin(.1);f.ht+=(a*np.sin(t*r_(s,6,14)+2*fbm(f.U,f.V,0*f.U,.3,2,.5,s.seed))).astype(F)
    def each(s,fn):
        for f in s.f: fn(f)
    def p_solid(s):
        for f in s.f: f.W=np.ones(f.U.shape+(1,),F)
    p_moulded=p_solid
    def p_layers(s):
        r=s.r;K=s.K;y=np.sort(r.dirichlet(np.ones(K)*4).cumsum()[:-1]);s.bounds=[(.5-q)*s.h*.96 for q in y][:]
        s.bounds=sorted([(q-.5)*s.h*.96 for q in y])
        for f in s.f:
            W=np.zeros(f.U.shape+(K,),F);prev=np.ones_like(f.U);f.bd=[]
            for k,b in enumerate(s.bounds):
                yy=f.Y-b-s.par['wave']*fbm(f.X,0*f.X+k*5,f.Z,.25,3,.5,s.seed+k)-.015*fbm(f.X,f.Y,f.Z,2.,3,.6,s.seed+40+k)
                if f.i==1: yy=np.full_like(f.Y,1.)
                f.bd.append(yy);a=sst(-.03,.03,yy);W[...,k]=prev*(1-a);prev=prev*a
            W[...,K-1]=prev;f.W=W
    def warp(s,f,amp,fr,z=.35):
        a=s.seed;x=f.X+amp*fbm(f.X,f.Y,f.Z*z,fr,3,.5,a+1);y=f.Y+amp*fbm(f.X,f.Y,f.Z*z,fr,3,.5,a+2);return x,y
    def p_swirl(s):
        for f in s.f:
            x,y=s.warp(f,2.2*s.par['a'],s.par['fr']);v=fbm(x,y,f.Z*.35,s.par['fr']*1.1,2,.4,s.seed+5)*s.par['rep']*1.3+(x*np.sin(s.par['rot'])+y*np.cos(s.par['rot']))*.16*s.par['rep']
            t=(v*.5+.5)*s.K;m=np.mod(t,s.K);W=np.zeros(f.U.shape+(s.K,),F);e=.018+.014*(s.seed%3)
            for k in range(s.K):
                d=np.abs(np.mod(m-k-.5+s.K/2,s.K)-s.K/2);W[...,k]=1-sst(.5-e,.5+e,d)
            f.W=W+1e-4
    def p_hanger(s):
        r=s.r;n=r.integers(4,8);fx=r.uniform(.5,1.1);am=r.uniform(.5,1.4);ph=r.uniform(0,6)
        for f in s.f:
            x,y=s.warp(f,.5,.35);y=y+am*np.sin(x*fx+ph)*np.cos(y*.5)+.3*am*np.sin(x*fx*2.3+ph*2);x=x+.6*np.sin(y*1.1)
            t=(y/s.h+.5)*n+.3*np.sin(x*1.4);m=np.mod(np.floor(t)*1,s.K);fr=t-np.floor(t);W=np.zeros(f.U.shape+(s.K,),F);g=sst(.0,.08,fr)
            for k in range(s.K): W[...,k]=(m==k)*g+(np.mod(m-1,s.K)==k)*(1-g)
            f.W=W
    def p_drops(s):
        r=s.r;C=[(r.uniform(-.5,.5)*s.w,r.uniform(-.45,.5)*s.h,r.uniform(.8,2.2)) for _ in range(r.integers(5,11))]
        for f in s.f:
            x,y=s.warp(f,.9,.3);idx=np.zeros_like(x,int);
            for j,(cx,cy,R) in enumerate(C):
                d=np.sqrt((x-cx)**2+((y-cy)*1.3)**2);ring=np.floor(d/R*3).astype(int);idx=np.where(d<R,(ring+j)%s.K,idx)
            W=np.stack([(idx==k).astype(F) for k in range(s.K)],-1);f.W=ni.gaussian_filter(W,(.025*f.px,.025*f.px,0))
    def p_ombre(s):
        d=s.r.random()<.3
        for f in s.f:
            q=(f.X/s.w if d else f.Y/s.h)+.5+.06*fbm(f.X,f.Y,f.Z,.3,3,.5,s.seed);a=sst(.02,.98,q);f.W=np.stack([1-a,a],-1)
    def p_veined(s):
        t=s.r.uniform(.02,.06)
        for f in s.f:
            x,y=s.warp(f,1.8,s.par['fr']);v=fbm(x,y,f.Z*.3,s.par['fr'],3,.5,s.seed+5);v2=fbm(x,y,f.Z*.3,s.par['fr']*.8,2,.5,s.seed+8)
            a=1-sst(t*.6,t*1.4,np.abs(v)*(1+.8*v2));f.W=np.stack([1-a*.9,a*.9],-1)
    def p_embeds(s):
        r=s.r;C=[(r.uniform(-.42,.42)*s.w,r.uniform(-.4,.4)*s.h,r.uniform(.25,.8),r.integers(3),r.uniform(0,3)) for _ in range(r.integers(3,12))]
        for f in s.f:
            a=np.zeros_like(f.U)
            for cx,cy,R,t,an in C:
                dx,dy=f.X-cx,f.Y-cy;x=dx*np.cos(an)-dy*np.sin(an);y=dx*np.sin(an)+dy*np.cos(an)
                d=np.hypot(x,y) if t==0 else np.maximum(abs(x),abs(y)) if t==1 else np.maximum(abs(x)*.87+y*.5,-y)
                d=d+.04*fbm(f.X,f.Y,f.Z,1.5,2,.5,s.seed)
                if f.i==1: d=d+9*(cy<s.h/2-R-.2)
                a=np.maximum(a,1-sst(R-.03,R+.03,d))
            f.W=np.stack([1-a,a],-1)
    def p_confetti(s):
        for f in s.f:
            x,y=(f.X,f.Y) if f.i==0 else ((f.X,f.Z) if f.i==1 else (f.Z,f.Y))
            a,b,c=worley(x+.2*fbm(x,y,0*x,.8,2,.5,s.seed),y,1.0,s.seed);on=(c>.55)*sst(.08,.13,b-a)
            W=[1-on]
            for k in range(1,s.K): W.append(on*(np.floor((c-.55)/.45*(s.K-1)*.999)==k-1))
            f.W=np.stack(W,-1)
    # --- painting helpers
    def mix(s,f,a,col): f.c+=(np.asarray(col,F)-f.c)*np.clip(a,0,1)[...,None]
    def mk(s,f,ch,a,th=.3): 
        if ch is not None: f.m[ch]=np.maximum(f.m[ch],(a>th).astype(F))
    def tex(s,f):
        return np.ascontiguousarray(np.dstack([np.clip(f.c,.003,.98),f.ht,np.clip(f.gl,0,1.2),f.soap,f.m[0],f.m[1]]).astype(F))
def r_(s,a,b): return s.r.uniform(a,b)
def stampdots(f,pts,fn):
    """pts: (u,v,rad,...) ; fn(dx,dy,rad,patch slices,extra)"""
    H,W=f.U.shape
    for p in pts:
        u,v,rad=p[:3];cx=(u/f.a+.5)*W;cy=(v/f.b+.5)*H;R=rad*f.px
        x0,x1=int(cx-R-1),int(cx+R+2);y0,y1=int(cy-R-1),int(cy+R+2);x0,y0=max(0,x0),max(0,y0);x1,y1=min(W,x1),min(H,y1)
        if x1<=x0 or y1<=y0: continue
        yy,xx=np.mgrid[y0:y1,x0:x1].astype(F);fn((xx+.5-cx)/f.px,(yy+.5-cy)/f.px,rad,(slice(y0,y1),slice(x0,x1)),p)
def scatter(s,f,dens,rmin,rmax,where=None,clump=.0,seed=0):
    n=s.r.poisson(dens*f.a*f.b*3);u=s.r.uniform(-.5,.5,n)*f.a;v=s.r.uniform(-.5,.5,n)*f.b;rad=np.exp(s.r.uniform(np.log(rmin),np.log(rmax),n))
    H,W=f.U.shape;ix=np.clip(((u/f.a+.5)*W).astype(int),0,W-1);iy=np.clip(((v/f.b+.5)*H).astype(int),0,H-1)
    pr=np.full(n,1/3.)
    if where is not None: pr*=where[iy,ix]
    if clump>0:
        q=fbm(f.X,f.Y,f.Z,.35,2,.5,s.seed+77+seed);pr*=(1-clump)+clump*3*sst(-.05,.45,q)[iy,ix]
    k=s.r.random(n)<pr;return list(zip(u[k],v[k],rad[k]))
