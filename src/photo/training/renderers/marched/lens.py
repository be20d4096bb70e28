"""The picture as the program casts it, what the camera makes of it, and whether a flaw can be seen in it. Drawn by another hand; see ../../README.md."""
from .setting import *
def raw(s,W,H,aa,noflaw=False):
  sc=s.sc;sc.W=W;sc.H=H;sc.edgeaa=aa;sc.nobj=len(s.objs);A=(Obj*len(s.objs))(*s.objs)
  if noflaw:
    for o in A: o.flaw=0
  rgb=np.zeros((H,W,3),np.float32);m=[np.zeros((H,W),np.float32) for _ in range(4)];P=lambda a:a.ctypes.data_as(C.c_void_p)
  lib.render(C.byref(sc),A,P(rgb),*[P(a) for a in m]);return rgb,m
def srgb(x): x=np.clip(x,0,1);return np.where(x<.0031308,12.92*x,1.055*x**(1/2.4)-.055)
def tone(x): return np.where(x<.6,x,.6+.4*(1-np.exp(-(x-.6)/.4)))
def expo(s,rgb,soap):
  l=rgb@np.array([.2126,.7152,.0722],np.float32);m=np.exp(np.mean(np.log(l+.01)));k=.25/m
  w=soap>.5
  if w.any(): q=np.percentile(l[w],90);k=min(k*1.1,.85/q);k=max(k,.10/np.percentile(l[w],75)*.6)
  else: k=min(k,1.0/np.percentile(l,97))
  return k
def finish(s,rgb,m,q):
  """q: quality dict"""
  r=s.r;H,W=rgb.shape[:2];soap,dep=m[0],m[3]
  k=expo(s,rgb,soap)*2**s.u(-.35,.3)*q.get('ev',1)
  x=rgb*k
  kc=kelvin(s.K);res=s.u(0,.28) if not q.get('badwb') else s.u(.5,.85);wb=kc**(1-res);tint=np.array([1,1+s.u(-.03,.03),1]);x=(x/wb*tint).astype(np.float32)
  zf=np.median(dep[soap>.5]) if (soap>.5).any() else np.median(dep)
  ap=q.get('dof',0)
  if ap>0:
    coc=np.abs(1-zf/np.maximum(dep,.1))*ap;coc=np.maximum(0,coc-.6);coc=np.where(soap>.5,coc*.35,coc).astype(np.float32);coc=gaussian_filter(coc,2,truncate=2)
    nb=(soap<.3).astype(np.float32)[...,None]+.002;wz=gaussian_filter(nb,(2.5,2.5,0),truncate=2.);b1=np.where(soap[...,None]>.3,x,gaussian_filter(x*nb,(2.5,2.5,0),truncate=2.)/wz);sm=(x*nb)[::4,::4];b2=gaussian_filter(sm,(2,2,0))/gaussian_filter(nb[::4,::4],(2,2,0));b2=zoom(b2,(H/b2.shape[0],W/b2.shape[1],1),order=1)[:H,:W];b2=np.where(soap[...,None]>.3,x,b2)
    a=np.clip(coc/2.5,0,1)[...,None];b=np.clip((coc-2.5)/5,0,1)[...,None];x=x*(1-a)+b1*a;x=x*(1-b)+b2*b
  v=q.get('vig',0)
  rr=(((np.arange(W,dtype=np.float32)/W-.5)**2)[None]+((np.arange(H,dtype=np.float32)/H-.5)**2)[:,None])*2;x=x*(1-np.float32(v)*rr)[...,None]
  bl=q.get('blur',.45)
  if q.get('motion'):
    n=q['motion'];a=s.u(0,3.14);acc=np.zeros_like(x)
    for t in np.linspace(-.5,.5,9): acc+=np.roll(x,(int(round(t*n*math.sin(a))),int(round(t*n*math.cos(a)))),(0,1))
    x=acc/9
  if bl>4: sm=x[::2,::2];sm=gaussian_filter(sm,(bl/2,bl/2,0));x=zoom(sm,(H/sm.shape[0],W/sm.shape[1],1),order=1)[:H,:W]
  elif bl>0: x=gaussian_filter(x,(bl,bl,0),truncate=2.5)
  fl=q.get('haze',0);x=x*(1-fl)+fl*.25
  y=srgb(tone(np.maximum(x,0)))
  ct=q.get('con',.22);y=y+ct*(y-.5)*(1-np.abs(2*y-1));sat=q.get('sat',1);g=y.mean(2,keepdims=True);y=g+(y-g)*sat
  sh=q.get('sharp',0)
  if sh: y=y+sh*(y-gaussian_filter(y,(1.2,1.2,0),truncate=2))
  nz=q.get('noise',.008);n=r.standard_normal((H,W),dtype=np.float32)*nz;cn=r.standard_normal((H//2+1,W//2+1,3),dtype=np.float32)*nz*.9;cn=cn.repeat(2,0).repeat(2,1)[:H,:W]
  if q.get('nblur'): n=gaussian_filter(n,.7)*1.6
  y=y+(n[...,None]+cn)*(1.2-.6*y)
  return Image.fromarray((np.clip(y,0,1)*255+.5).astype(np.uint8)),k
def quality(s,kind,flawed):
  q={}
  if kind=='poor':
    t=s.ch(['blur','dark','motion']);s.poor=t
    if t=='blur': q=dict(blur=s.u(11,22),noise=.01)
    elif t=='dark': q=dict(ev=s.u(.006,.022),noise=s.u(.02,.045),blur=1)
    else: q=dict(motion=s.u(50,110),blur=4,noise=.012)
    q['jq']=s.i(60,85);return q
  c=s.ch(['good','good','phone','cheap'],[.35,.25,.25,.15])
  if c=='good': q=dict(blur=s.u(.3,.55),noise=s.u(.003,.008),dof=s.ch([0,0,5,12]),vig=s.u(0,.2),jq=s.i(86,95))
  elif c=='phone': q=dict(blur=s.u(.5,.75),noise=s.u(.006,.014),sharp=s.u(.3,.9),con=s.u(.15,.5),sat=s.u(1,1.25),dof=s.ch([0,0,3]),jq=s.i(72,90),nblur=1,vig=s.u(0,.25))
  else: q=dict(blur=s.u(.7,1.3 if flawed else 1.6),noise=s.u(.012,.03),sharp=s.u(0,.5),haze=s.u(0,.06),sat=s.u(.8,1.05),vig=s.u(.1,.5),jq=s.i(50,75),nblur=1,badwb=s.p(.5))
  if s.p(.06): q['badwb']=True
  s.cam=c;return q
def check(s,findings):
  """half-size pair: with and without flaw"""
  W,H=s.sc.W,s.sc.H;w,h=W//3,H//3;a,m=raw(s,w,h,0);b,_=raw(s,w,h,0,True) if findings else (a,None);s.sc.W,s.sc.H=W,H
  k=expo(s,a,m[0]);d=np.abs(srgb(tone(a*k))-srgb(tone(b*k))).sum(2)/3;soap=m[0]>.5;n=soap.sum();out={}
  dl=maximum_filter(d,3)
  for j,f in enumerate(findings):
    mk=(m[1+j]>.3)&soap&(dl>.012);sh=mk.sum()/max(n,1);ct=float(np.percentile(d[mk],75)) if mk.sum()>5 else 0;out[f]=(dl>.012,float(sh),ct)
  return soap,out,n/(w*h)
