"""Colours, light, the soap's design and its objects, as the C program takes them. Drawn by another hand; see ../../README.md."""
from compiled import built
import ctypes as C, numpy as np, math, json, sys, os, time, io
from PIL import Image
from scipy.ndimage import gaussian_filter, zoom, maximum_filter
F=C.c_float;I=C.c_int
class Fx(C.Structure): _fields_=[('type',I),('slot',I),('region',I),('seed',I),('p',F*10),('col',F*3),('pad',F)]
class Soap(C.Structure): _fields_=[('pattern',I),('ncol',I),('nfx',I),('seed',I),('col',(F*3)*6),('scale',F),('warp',F),('soft',F),('hy',F),('hz',F),('mott',F),('rough',F),('spec',F),('bz',F*5),('wav',F),('par',F*6),('fx',Fx*8)]
class Obj(C.Structure): _fields_=[('prim',I),('mat',I),('seed',I),('flaw',I),('c',F*3),('R',F*9),('h',F*3),('r',F),('toptype',F),('topamp',F),('topf',F),('xoff',F),('bump',F),('col',F*3),('col2',F*3),('rough',F),('spec',F),('deform',F)]
class Scene(C.Structure): _fields_=[('W',I),('H',I),('nobj',I),('ground',I),('cp',F*3),('cf',F*3),('cr',F*3),('cu',F*3),('tanf',F),('L',F*3),('Lc',F*3),('lk',F),('sky',F*3),('bnc',F*3),('wdir',F*3),('wup',F*3),('wsx',F),('wsy',F),('wI',F),('gc',(F*3)*3),('gs',F),('grot',F),('grough',F),('gspec',F),('gseed',I),('gobo',I),('gpad',I),('edgeaa',I),('gobop',F*4),('wallc',F*3),('wally',F),('gbump',F),('wrap',F),('soap',Soap*2)]
lib=built(os.path.dirname(os.path.abspath(__file__)),'march.c');assert lib.szS()==C.sizeof(Scene) and lib.szO()==C.sizeof(Obj)
lin=lambda c:tuple(((x/255+.055)/1.055)**2.4 if x>10 else x/255/12.92 for x in c)
def hx(s): return lin(tuple(int(s[i:i+2],16) for i in (0,2,4)))
def kelvin(k):
    t=k/100
    r=255 if t<=66 else 329.7*(t-60)**-.1332
    g=99.47*math.log(t)-161.1 if t<=66 else 288.1*(t-60)**-.0755
    b=255 if t>=66 else 138.5*math.log(t-10)-305
    a=np.array(lin((min(255,r),min(255,g),max(20,min(255,b)))));return a/(a@[.2126,.7152,.0722])
def setv(a,v):
    for i,x in enumerate(v): a[i]=float(x)
PAL=dict(
 cream=['efe3c8','f3ead6','e6d5b0','ecdcb8','f0e6cc','e9dcc0'],
 white=['f5f3ee','f2efe6','eeece6'],
 pastel=['f0c4cc','c9dfc8','c5d3ea','d8c8e6','f5d9b8','f4e6a8','bfe0dc','e8b8b0','dcc3d4'],
 mid=['d98a7a','8fae7c','7d97c2','a184bd','d6a24e','c9724f','6fb0a8','b98f62','c56d8c','a3b06a','8a7a6a'],
 strong=['b5252f','1f5a9c','2f7a3f','6a2f8a','d9731c','c2185b','007c86','e0a800','22408f','8e2a52'],
 dark=['2b2a2a','3a2a20','24303a','1d2b22','3b1f2a','332d28'])
SPK=['c21830','1747a6','0f6e3a','5a1e8c','e06a00','111111','b00060','00758a','7a1d10','203a70','4a2a10']
class G:
  def __init__(s,seed): s.r=np.random.default_rng(seed);s.objs=[]
  def u(s,a,b): return float(s.r.uniform(a,b))
  def ch(s,l,p=None): return l[int(s.r.choice(len(l),p=p))]
  def p(s,x): return s.r.random()<x
  def i(s,a,b): return int(s.r.integers(a,b))
  def pc(s,k):
    c=np.array(hx(s.ch(PAL[k])));g=c.mean();d={'strong':s.u(.12,.35),'mid':s.u(.0,.2)}.get(k,0);return (c*(1-d)+(g*.8+.06)*d)*s.u(.92,1.06)
  # ---------- soap
  def soap(s,so,pattern,tone,hy,hz,n=None):
    so.pattern=pattern;so.seed=s.i(0,9999);so.hy=hy;so.hz=hz
    lights={'white':['white'],'cream':['cream'],'pastel':['pastel'],'mid':['mid'],'strong':['strong'],'dark':['dark']}[tone]
    n=n or {0:1,1:s.i(2,5),2:s.i(2,4),3:s.i(2,6),4:s.i(2,5),5:s.i(2,4),6:s.i(2,5),7:s.i(3,5),8:s.i(2,5)}[pattern]
    cols=[s.pc(tone)]
    others={'white':['pastel','strong','mid','dark','cream'],'cream':['mid','pastel','strong','dark','white'],'pastel':['white','strong','mid','pastel','cream'],'mid':['cream','white','dark','strong','mid'],'strong':['white','cream','dark','strong','mid'],'dark':['white','strong','cream','mid']}[tone]
    if pattern==2:
      a=s.pc(tone)
      for _ in range(30):
        b=s.pc(s.ch(others))
        if np.abs(np.sqrt(a)-np.sqrt(b)).sum()>.6: break
      cols=[a*(1-t)+b*t for t in np.linspace(0,1,n)]
    else:
      t=0
      while len(cols)<n and t<60:
        t+=1;c=s.pc(s.ch(others));
        if min(np.abs(np.sqrt(c)-np.sqrt(k)).sum() for k in cols)>(.75 if pattern==5 and len(cols)==1 else .4) or t>50: cols.append(c)
    n=len(cols);so.ncol=n;s.cols=cols
    for k,c in enumerate(cols): setv(so.col[k],np.clip(c,0.01,.93))
    so.scale=s.u(.35,.8);so.warp=s.u(.8,2.2);so.soft=s.ch([.015,.03,.05]);so.mott=s.u(.015,.05);so.rough=s.u(.3,.62);so.spec=s.u(.6,1.3)
    ed=np.sort(np.linspace(-1,1,n+1)[1:-1]+s.r.uniform(-.15,.15,n-1))*hz if n>1 else []
    for k,z in enumerate(ed[:5]): so.bz[k]=float(z)
    if pattern==7: so.bz[0]=s.u(-.35,.3)*hz
    so.wav=s.ch([.03,.12,.35,.6])*s.u(.7,1.2)
    so.par[0]=s.u(2,4.2)*(1.4 if n>3 else 1);so.par[1]=s.u(0,9);so.par[2]=s.u(.4,1.1) if pattern!=5 else s.u(.05,.16);so.par[3]=s.u(.3,.9)
    if pattern==6: so.par[0]=s.u(1.5,3.5);so.par[2]=so.seed%101*0+s.u(-1,1);so.par[3]=s.u(-1,1)-0;
    if pattern==6: so.scale=s.u(.4,.9)
    if pattern==8: so.par[2]=s.u(-1.5,1.5);so.par[3]=s.u(-1.5,1.5);so.par[0]=s.u(.6,1.8);so.warp=s.u(.3,1.)
    so.par[4],so.par[5]=s.ch([(1,1),(1.4,.5),(.5,1.2),(1.8,.6),(.8,.8),(1.2,1.2)]);so.nfx=0
  def fx(s,so,type,slot=-1,region=-1,p=(),col=(0,0,0)):
    if so.nfx>=8: return
    f=so.fx[so.nfx];so.nfx+=1;f.type=type;f.slot=slot;f.region=region;f.seed=s.i(1,99999);setv(f.p,p);setv(f.col,col)
  # ---------- objects
  def o(s,prim,mat,c,R,h,r=.1,**k):
    o=Obj();o.prim=prim;o.mat=mat;o.seed=s.i(0,99999);o.flaw=1;setv(o.c,c);setv(o.R,np.array(R).ravel());setv(o.h,h);o.r=r;o.bump=0;o.rough=.5;o.spec=.8
    for a,b in k.items():
      if a in('col','col2'): setv(getattr(o,a),b)
      else: setattr(o,a,b)
    s.objs.append(o);return o
  def rz(s,t): return np.array([[math.cos(t),math.sin(t),0],[-math.sin(t),math.cos(t),0],[0,0,1.]])
  def bar(s,pose,x,y,z,th,**k):
    """pose: 'lie','stand','side'"""
    a=s.rz(th);h=[s.bh[0],s.bh[1],s.bh[2]]
    if 'hx' in k: h[0]=k.pop('hx')
    if pose=='stand': R=a;zz=h[2]
    elif pose=='lie': R=np.array([[0,0,1],a[0],a[1]]);zz=h[0]   # x up, y along a0, z along a1
    else: R=np.array([a[0],[0,0,1],-a[1]]);zz=h[1]
    t=s.u(-.012,.012)
    k.setdefault('toptype',s.tt);k.setdefault('topamp',s.ta);k.setdefault('topf',s.tf)
    o=s.o(0,k.pop('mat',0),(x,y,z+zz-.02),R,h,k.pop('r',s.br),bump=k.pop('bump',s.bb),deform=k.pop('deform',s.u(.02,.09)),**k)
    if pose!='stand' : pass
    return o
