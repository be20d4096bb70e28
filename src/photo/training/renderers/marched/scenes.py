"""Scenes, flaws, what deceives, and the camera. Drawn by another hand; see README.md."""
from .setting import *
CUT={'smears','dark-centre-ring','drag-lines','brown-outside-in','colour-bled','layer-gap'}
TOPF={'wrinkled-top','powdery-film'}
SIDE={'mould-dimples'}
NAMES=['coloured-specks','smears','white-specks','translucent-veins','crackle-network','powdery-film','dark-centre-ring','orange-spots','pinholes','crack','brown-outside-in','colour-bled','drag-lines','layer-gap','wrinkled-top','mould-dimples']
CODE={n:i+1 for i,n in enumerate(NAMES)}
TRICKS=['swirl','thin-veined-swirl','wavy-layers','ombre','mica-line','mica-shimmer','glitter','poppy-seeds','oats','coffee','petals','embeds','stamp','spoon-texture','bevels','wire-marks','dew','glare','shadows','paper-band','crumbs','lint','wood-grain','salt-on-top','black-and-white-swirl','window-bars-shadow']
def ground(s,sc):
  k=s.ch([0,0,1,1,2,3,3,4,4,5,6,7,8,9]);sc.ground=k;sc.gseed=s.i(0,9999);sc.grot=s.u(-.5,.5)+(math.pi/2 if s.p(.4) else 0);sc.gs=s.u(.7,1.3);sc.gbump=s.u(.1,.5);sc.grough=.6;sc.gspec=.5
  W=[('a9794d','6e4526','3a2414'),('d3b48a','b28a5c','7a5836'),('8d8478','6b6258','3c3630'),('5a3a24','3b2417','1d120b'),('e8e2d6','cfc6b6','8a8276')]
  if k in(0,9): c=s.ch(W)
  elif k==1: c=s.ch([('dcb98a','c0935f','8a6238'),('8b5a35','6d4226','3a2010'),('c79a66','a6763f','6b4a25')])
  elif k==2: c=s.ch([('f1efec','e0dedb','8c8c90'),('2e2e30','3a3a3d','c8c0b0'),('e9e2d6','d9cfbf','a08660'),('cfd8d2','bcc8c0','5e7468')]);sc.grough=.15;sc.gspec=1
  elif k==3: c=s.ch([('e8e0d0','cdc3ae','000000'),('8a9aa8','6c7d8c','000000'),('efece4','dcd8cc','38548a'),('b58a7a','96705f','000000'),('3e4a44','2e3833','000000'),('c9b79a','ae9b7c','8a3a34')])
  elif k==4: c=s.ch([('4a4e52','33363a','000000'),('a9a7a2','8c8a86','000000'),('6d6a64','57544f','000000'),('c9c4ba','b3aea4','000000')])
  elif k==5: c=s.ch([('d8d4cc','6a625a','a8978a'),('e6e2dc','b07a5c','5a6a70'),('5a5a5c','2a2a2c','9a948c')]);sc.grough=.2;sc.gspec=.9
  elif k==6: c=s.ch([('c9683f','b5562f','8a7868'),('f0f0ee','e4e6e6','b8b4ae'),('7fa0a6','6d9096','d8d4cc')]);sc.grough=.25;sc.gspec=.9
  elif k==7: c=[s.ch(['f4f2ee','e4d6c2','2a2c30','d9e2e4','f0dcd8','c9cfc0','b89a74','8fa0b4'])]*3
  else: c=s.ch([('f2efe8','b8403a','000000'),('f2efe8','4a6a9a','000000'),('efe9da','6f8a5a','000000')])
  if k==3 and c[2]=='000000': sc.gc[2][0]=0
  for i in range(3): setv(sc.gc[i],hx(c[i]) if not(k==3 and c[i]=='000000') else (0,0,0))
  if k==9: s.clothy=0
  setv(sc.wallc,hx(s.ch(['e8e4dc','c8cdd0','8a8680','d9c9b4','5a5e62','a8b5a8','3a3a3c','b9a08a'])));sc.wally=s.u(14,60)
def light(s,sc,glare=False,gobo=None,lamp=None):
  az=s.u(-2.6,-.3) if s.p(.45) else s.u(.2,2.9)  # direction to light
  el=math.radians(s.u(28,68));L=np.array([math.cos(az)*math.cos(el),math.sin(az)*math.cos(el),math.sin(el)])
  if glare: az=s.u(1.2,1.9);el=math.radians(s.u(35,55));L=np.array([math.cos(az)*math.cos(el),math.sin(az)*math.cos(el),math.sin(el)])
  K=s.ch([2700,3000,3500,4200,5000,5500,6000,6500]);s.K=K;kc=kelvin(K)
  mode=s.ch(['soft','hard','mid','shade'],[.35,.2,.33,.12])
  ki,si,lk={'soft':(1.5,.9,3),'hard':(3.2,.55,14),'mid':(2.1,.7,6),'shade':(.5,1.25,2)}[mode]
  if gobo: ki,si,lk=3.2,.6,12
  k2=kelvin(min(8500,K*s.u(.92,1.28)))
  setv(sc.L,L);setv(sc.Lc,kc*ki);sc.lk=lk;setv(sc.sky,k2*si);g=np.array([sc.gc[0][i] for i in range(3)]);setv(sc.bnc,(g*.45+.06)*kc*(si*.6+.25*ki*L[2]))
  w=L+s.r.normal(0,.12,3);w=w/np.linalg.norm(w);up=np.array([0,0,1])-w*w[2];up/=np.linalg.norm(up);setv(sc.wdir,w);setv(sc.wup,up);sc.wsx=s.u(.2,.6);sc.wsy=s.u(.25,.7);sc.wI=s.u(1.2,3.) if not glare else 9
  sc.gobo=0
  if gobo: sc.gobo=gobo;setv(sc.gobop,[s.u(0,3),{1:s.u(.25,.5),2:s.u(.22,.5),3:s.u(3.5,6),4:.3}[gobo],s.u(0,3),s.u(-.05,.12)])
  sc.wrap=s.u(.12,.3);s.mode=mode
def camera(s,sc,tgt,rad,el,fill,W,H,roll=0.03,az=0):
  f=math.radians(s.u(26,52));sc.tanf=math.tan(f/2);asp=H/W;d=rad/(sc.tanf*min(1,asp*1.15)*fill);s.dist=d
  el=math.radians(el);a=az;cf=np.array([math.sin(a)*math.cos(el),math.cos(a)*math.cos(el),-math.sin(el)]);tgt=np.array(tgt,float);cp=tgt-cf*d
  up=np.array([0,0,1.]) if el<1.5 else np.array([math.sin(a),math.cos(a),0.]);cr=np.cross(cf,up);cr/=np.linalg.norm(cr);cu=np.cross(cr,cf);ro=s.u(-roll,roll)
  cr,cu=cr*math.cos(ro)+cu*math.sin(ro),cu*math.cos(ro)-cr*math.sin(ro)
  off=rad/fill*.12;cp=cp+cr*s.u(-off,off)+cu*s.u(-off,off)
  setv(sc.cp,cp);setv(sc.cf,cf);setv(sc.cr,cr);setv(sc.cu,cu);sc.W=W;sc.H=H
def leaf(s,x,y,z,th,L,col,tilt=.15,**k):
  t=s.u(-tilt,tilt);a=s.rz(th);ax=a[0]*math.cos(t)+np.array([0,0,math.sin(t)]);n=np.cross(ax,a[1]);n/=np.linalg.norm(n)
  return s.o(8,18,(x,y,z),[ax,a[1],n],(L,L*s.u(.3,.45),.03),deform=s.u(.2,.9),col=col,col2=np.array(col)*.55,rough=.5,**k)
def props(s,ext,n=None,top=True):
  n=s.ch([0,0,1,2,3]) if n is None else n
  for _ in range(n):
    k=s.ch(['sprig','sprig','bowl','pebbles','box','jar','cloth','petals','citrus']);a=s.u(0.3,2.8) if s.p(.75) else s.u(3.4,6.1);r=ext+s.u(1.5,6);x,y=r*math.cos(a)*1.15,r*math.sin(a)
    if k=='sprig':
      th=s.u(0,6.3);c=hx(s.ch(['5b7a4a','7d9a6a','3f5a3a','8fa08a']));L=s.u(3,6);
      s.o(6,0+17,(x,y,.12),[[0,0,1],[-math.sin(th),math.cos(th),0],[math.cos(th),math.sin(th),0]],(.07,.07,L/2),.07,col=hx('6a5a3a'),col2=hx('4a4a2a'))
      for q in np.linspace(-.45,.5,s.i(5,10)):
        for sd in(-1,1): leaf(s,x+math.cos(th)*q*L-math.sin(th)*.45*sd,y+math.sin(th)*q*L+math.cos(th)*.45*sd,.15,th+sd*s.u(.6,1.1),s.u(.45,.8),c)
    elif k=='bowl': s.o(s.ch([4,4,7]),11,(x*1.2,y*1.2,1.9),s.rz(0),(s.u(2.2,3.6),3,1.9),.1,col=hx(s.ch(['e8e4da','6a7a80','b5683f','2e3034'])),col2=hx('a09888'),rough=.25)
    elif k=='pebbles':
      for _ in range(s.i(2,6)): rr=s.u(.4,1.);s.o(1,12,(x+s.u(-2,2),y+s.u(-1.5,1.5),rr*.5),s.rz(s.u(0,3)),(rr*1.3,rr,rr*.6),deform=.1,col=hx(s.ch(['9a968e','6a6660','c4beb2'])),col2=hx('7a766e'))
    elif k=='box': h=[s.u(1.5,4),s.u(1.2,3),s.u(.8,3)];s.o(0,s.ch([10,14,11]),(x*1.25,y*1.25+1,h[2]),s.rz(s.u(0,3)),h,.1,col=hx(s.ch(['b08a5e','8a6a48','d8cfc0','4a5a50'])),col2=hx('a5794a'))
    elif k=='jar': rr=s.u(1.2,2.2);hh=s.u(1.5,4);s.o(2,15,(x*1.3,y*1.2+1,hh),s.rz(0),(rr,rr,hh),.25,col=hx(s.ch(['6a4a2a','d8d8d0','3a4a44','a8b8b0'])),col2=hx('3a2a1a'),rough=.15)
    elif k=='cloth': h=[s.u(3,5),s.u(2,3.5),s.u(.2,.5)];s.o(0,12,(x*1.3,y*1.3,h[2]),s.rz(s.u(0,3)),h,.2,deform=.15,col=hx(s.ch(['c8bca4','7a8a96','b88a7a'])),col2=hx('9a927f'),rough=.9,spec=.2)
    elif k=='petals':
      c=hx(s.ch(['d8a0b4','b08ac8','e8c040','d86a70']))
      for _ in range(s.i(4,12)): leaf(s,x+s.u(-3,3),y+s.u(-2.5,2.5),.15,s.u(0,6),s.u(.35,.8),c,.3)
    else:
      rr=s.u(1.8,2.6);s.o(1,12,(x*1.1,y*1.1,rr*.9),s.rz(0),(rr,rr,rr*.95),deform=.08,bump=.12,col=hx(s.ch(['e8a020','e8cc30','b8c840','c03a28'])),col2=hx('d08020'),rough=.35)
def addflaw(s,so,f,slot,x):
  """x=strength .. 0 weak 1 strong"""
  u=s.u;n=so.ncol;R=lambda:-1
  multi=so.pattern not in(0,2)
  lumc=[float(np.dot(c,[.2126,.7152,.0722])) for c in s.cols]
  T=s.top
  if f=='coloured-specks':
    look=s.ch(['fine','mid','big','mix']);r0,r1,cell,pr={'fine':(.025,.05,.2,.45),'mid':(.035,.085,.32,.5),'big':(.06,.13,.55,.6),'mix':(.02,.12,.36,.6)}[look]
    reg=int(np.argmax(lumc)) if multi and s.p(.6) else -1
    for _ in range(20):
      c=hx(s.ch(SPK));base=s.cols[reg if reg>=0 else 0]
      if np.abs(np.sqrt(c)-np.sqrt(np.clip(base,0,1))).sum()>.75: break
    s.fx(so,1,slot,reg,[cell,pr*(.55+.6*x),r0,r1,float(s.p(.5)),.75+.25*x],c);return look
  if f=='smears':
    lumb=lumc[0];c=hx(s.ch(['c21830','1747a6','0f6e3a','5a1e8c','111111','7a1d10','e06a00'])) if lumb>.1 else hx(s.ch(['f4f0e8','e0a800','e06a60','60c0d0']))
    L=s.ch([.7,1.3,2.2]);s.fx(so,2,slot,-1,[L,s.ch([.16,.26,.4]),.35+.5*x,u(.03,.075),s.ch([0,math.pi/2,u(-.3,.3),math.pi/2+u(-.25,.25),math.pi,-math.pi/2]),.6+.4*x],c);return 'L%.1f'%L
  if f=='white-specks':
    look=s.ch(['pin','rice','crumb']);a={'pin':(.25,.5,.025,.07,1),'rice':(.6,.6,.09,.2,.42),'crumb':(.55,.6,.06,.22,.8)}[look]
    s.fx(so,3,slot,-1,[a[0],a[1]*(.6+.6*x),a[2],a[3],float(s.p(.5)),.8+.2*x,a[4]],hx(s.ch(['fbfaf6','f4efe2','ffffff'])));return look
  if f=='translucent-veins':
    s.fx(so,4,slot,-1,[u(.3,.75),u(.05,.11),.6+.5*x,u(-.05,.3),float(lumc[0]<.06)]);return 'rivers'
  if f=='crackle-network':
    s.fx(so,5,slot,-1,[u(1.6,3.6),u(.035,.06),.55+.45*x,min(.3,max(.05,max(lumc)*.6)),u(-.05,.25)]);return 'cells'
  if f=='powdery-film':
    look=s.ch(['top','edges','patchy','all']);a={'top':(.6,.15,1.),'edges':(.5,.95,.6),'patchy':(.9,.5,.9),'all':(1.6,.9,1.1)}[look]
    s.fx(so,6,slot,-1,[0,a[0],a[1],u(.35,1.),.45+.5*x,a[2]]);return look
  if f=='dark-centre-ring':
    s.fx(so,7,slot,-1,[u(.45,.75),u(.42,.75),u(-.35,.35),u(-.3,.3),u(.1,.28),.6+.5*x,float(s.p(.5))]);return 'oval'
  if f=='orange-spots':
    look=s.ch(['dots','blotch','halo','oily']);a={'dots':(.7,.5,.05,.14,1),'blotch':(1.6,.7,.25,.75,1),'halo':(1.2,.6,.1,.3,2.3),'oily':(1.7,.7,.2,.5,1.9)}[look]
    s.fx(so,8,slot,-1,[a[0],a[1]*(.7+.4*x),a[2],a[3],0,.55+.45*x,a[4]],hx(s.ch(['b5651d','c9781f','a0521a','d08a2a'])));return look
  if f=='pinholes':
    look=s.ch(['fine','mixed','few-big','band']);a={'fine':(.22,.4,.025,.055,0),'mixed':(.35,.5,.03,.12,0),'few-big':(.6,.5,.07,.17,0),'band':(.28,.75,.03,.1,1)}[look]
    s.fx(so,9,slot,-1,[a[0],a[1]*(.6+.6*x),a[2],a[3],a[4],.5+.3*x]);return look
  if f=='crack':
    if s.crackface=='top':
      s.fx(so,10,slot,-1,[u(-.5,.5),u(.35,.7),.10+.2*x,u(.9,3.2),.9,0,u(-.03,.03),s.ch([-3,0,2]),s.ch([-3,0,2])]);return 'along the top'
    s.fx(so,10,slot,-1,[u(-.9,.9),u(.25,.6),.10+.14*x,u(.55,1.15),.9,1,s.ch([u(-.3,.3),math.pi/2+u(-.3,.3),-math.pi/2+u(-.3,.3),math.pi+u(-.3,.3),u(.6,1)])]);return 'through the bar'
  if f=='brown-outside-in':
    s.fx(so,11,slot,-1,[u(.3,1.5),.6+.4*x,0,float(s.p(.35)),u(.2,1)],np.array(hx(s.ch(['c49a68','a5703e','7a4a28','8f5f38','5e3820'])))*1.1);return 'rim'
  if f=='colour-bled':
    k=s.bleed=int(np.argmin(lumc)) if s.p(.75) else int(np.argmax([c.max()-c.min() for c in s.cols]))
    s.fx(so,12,slot,k,[u(.12,.45),.75+.25*x]);return 'halo'
  if f=='drag-lines':
    s.fx(so,13,slot,-1,[s.ch([0,math.pi/2,u(-.15,.15),math.pi/2+u(-.15,.15),math.pi,-math.pi/2]),s.ch([4,6,10,16]),u(-1,1),s.ch([2.,4,6.]),u(.02,.04),s.ch([-.35,-.2,.3]) if lumc[0]>.12 else .25,float(s.p(.3)),.6+.8*x]);return 'lines'
  if f=='layer-gap':
    k=s.i(0,max(1,n-1)) if so.pattern==1 else 0
    s.fx(so,14,slot,k,[.06+.13*x*u(.6,1.2),u(.4,.75) if s.p(.55) else 0,.9,u(-.1,.15),float(s.p(.4))]);return 'gap'
  if f=='wrinkled-top':
    s.fx(so,15,slot,-1,[u(1.,2.6),u(.035,.07)*(.7+.6*x),float(s.p(.45)),u(-.05,.35),u(.7,1.8),1]);return 'wrinkles'
  if f=='mould-dimples':
    k=s.ch([0,0,1,2]);s.fx(so,16,slot,-1,[k,s.ch([.5,.8,1.2]),.6+.3*x,.30+.25*x,s.i(5,12),s.ch([0,math.pi/2,.5]),s.ch([.3,1.2]),float(s.dimface=='cut')]);return ['dimples','creases','both'][k]
def trick(s,so,t,sc):
  u=s.u
  if t=='poppy-seeds': s.fx(so,101,p=[u(.28,.45),.7,.035,.055,1.4],col=hx('23252e'))
  if t=='coffee': s.fx(so,103,p=[u(.22,.35),.7,.025,.075,1.],col=hx('2e1a0e'))
  if t=='oats': s.fx(so,102,p=[u(.5,.8),.7,.1,.28],col=hx('e6d2a4'))
  if t=='glitter': s.fx(so,104,p=[.2,.5,.018,.042,float(s.p(.5))],col=hx(s.ch(['e8d28a','d8dce4','e8b0c0'])))
  if t=='mica-line': s.fx(so,105,region=s.i(0,2),p=[u(.02,.045)],col=hx(s.ch(['c9992e','b87a4a','a8a8b0','3a3a40','2a5a9a'])))
  if t=='mica-shimmer': s.fx(so,111,p=[u(.4,.8)],col=hx(s.ch(['d8ab40','c8c8d0','c87a5a','e0b0c0'])))
  if t=='stamp': s.fx(so,106,p=[u(-.4,.4),u(-.3,.3),u(1.1,1.7),s.i(0,4),1.])
  if t=='wire-marks': s.fx(so,107,p=[u(-.3,.3)+s.ch([0,1.57]),u(.006,.012),u(-.05,.05),u(4,8)])
  if t=='dew': s.fx(so,108,p=[u(.35,.6),.75,.04,.2])
  if t=='lint': s.fx(so,109,p=[s.i(4,8)],col=hx(s.ch(['3a4a8a','222222','b03030'])))
  if t=='embeds': s.fx(so,110,p=[s.i(1,5),u(.5,.95),.5,u(-.8,.6),s.i(0,3)],col=hx(s.ch(['c21830','1f5a9c','f4f0e6','e0a800','2f7a3f','c2185b'])))
def build(seed,findings=(),tr=None,kind='bar',force_scene=None,W=None,H=None):
  s=G(seed);sc=Scene();fs=set(findings);s.top=0
  Ls=s.ch([900,960,1000,1100,1200,1400,1600],[.66,.13,.1,.05,.03,.015,.015]);asp=s.ch([.75,.75,.667,.8,.5625,1.0],[.3,.2,.22,.12,.1,.06])
  over=s.p(.68)
  if W is None: W,H=(Ls,int(Ls*asp)) if over else (int(Ls*asp),Ls);W-=W%2;H-=H%2
  elif not over: W,H=H,W
  ground(s,sc);gobo=None
  if tr=='shadows': gobo=s.ch([2,4,2]);
  if tr=='window-bars-shadow': gobo=s.ch([1,3])
  
  if tr=='wood-grain': sc.ground=s.ch([0,1]);[setv(sc.gc[i],hx(c)) for i,c in enumerate(['a9794d','5e3820','2a1a0e'])]
  light(s,sc,glare=tr=='glare',gobo=gobo)
  # bar shape
  s.bh=[s.u(1.05,1.6),s.u(3.0,4.1),s.u(2.3,3.3)]
  s.br=s.ch([.06,.12,.2,.35]);s.bb=s.u(.5,1.6)
  topy=s.ch([0,1,1,2,3,4])
  if tr=='spoon-texture': topy=s.ch([1,2])
  if 'wrinkled-top' in fs: topy=s.ch([0,4,4])
  if tr=='salt-on-top': topy=s.ch([0,4])
  s.tt=topy;s.ta=0 if topy==0 else s.u(.18,.45);s.tf=s.u(.45,.85)
  if tr=='spoon-texture': s.ta=s.u(.45,.8)
  # pattern and tone
  tone=s.ch(['cream','white','pastel','mid','strong','dark'],[.22,.17,.22,.2,.12,.07]);pt=s.ch([0,1,2,3,4,5,6,7,8],[.25,.14,.07,.16,.09,.06,.08,.1,.05])
  if fs&{'brown-outside-in','crackle-network'}: tone=s.ch(['cream','white','pastel'])
  if fs&{'orange-spots','dark-centre-ring'}: tone=s.ch(['cream','white','pastel','cream'])
  if fs&{'white-specks','powdery-film'}: tone=s.ch(['mid','strong','dark','mid','pastel','mid'])
  if fs&{'translucent-veins'}: tone=s.ch(['pastel','mid','strong','cream','pastel'])
  if fs&{'coloured-specks'}: tone=s.ch(['cream','white','pastel','pastel','cream','mid'])
  if 'colour-bled' in fs: pt=s.ch([1,3,4,7,6,1]);tone=s.ch(['white','cream','pastel'])
  if 'layer-gap' in fs: pt=s.ch([1,1,7])
  if fs&{'dark-centre-ring','brown-outside-in','translucent-veins'} and pt in(3,4,6,8) and s.p(.6): pt=s.ch([0,0,1,2])
  if fs&{'crackle-network'} and pt==2: pt=0
  if 'crack' in fs and pt in(3,4,5,6,8) and s.p(.85): pt=s.ch([0,0,1,2,7])
  if fs and pt in(3,4,5,6,8) and 'colour-bled' not in fs and s.p(.9 if fs&{'wrinkled-top','drag-lines','dark-centre-ring','brown-outside-in','smears','crack','white-specks','pinholes','coloured-specks','orange-spots'} else .6): pt=s.ch([0,0,1,2])
  if 'layer-gap' in fs: pt=s.ch([1,1,7])
  if tr=='swirl': pt=s.ch([3,4,6,8])
  if tr=='thin-veined-swirl': pt=5
  if tr=='wavy-layers': pt=1
  if tr in('mica-shimmer','wire-marks','poppy-seeds','coffee','lint','crumbs','glitter','dew','oats') and pt in(3,4,5,6,8) : pt=s.ch([0,0,1,2])
  if tr=='ombre': pt=2
  if tr=='mica-line': pt=s.ch([1,7])
  if tr=='black-and-white-swirl': pt=s.ch([3,4,8]);tone='dark'
  if tr in('poppy-seeds','coffee','lint'): tone=s.ch(['cream','white','pastel'])
  if tr in('oats',): tone=s.ch(['cream','mid','dark'])
  if tr is None and not fs and kind=='bar' and pt not in(0,1): pt=s.ch([0,0,0,1,2])
  so=sc.soap[0];s.soap(so,pt,tone,s.bh[1],s.bh[2])
  if tr=='wavy-layers': so.wav=s.u(.4,.7)
  if fs&{'wrinkled-top','translucent-veins','colour-bled','crackle-network','powdery-film','mould-dimples','white-specks','pinholes'} and pt in(3,4,7): so.par[0]*=.6;so.par[4]=min(so.par[4],1);so.par[5]=min(so.par[5],1)
  # scene
  fam=['lie','lie','stand','stack','row','loaf','close','flat','mould','several','cutloaf']
  need='any'
  if fs&TOPF or tr in('salt-on-top','mica-shimmer','petals','spoon-texture'): need='top'
  if fs&CUT or tr in('stamp','embeds','wire-marks','thin-veined-swirl','mica-line'): need='cut' if need=='any' else 'both'
  if fs&SIDE: need='side' if need=='any' else 'side'
  if 'crack' in fs: s.crackface=s.ch(['top','cut']);
  if 'crack' in fs and need=='any': need='top' if s.crackface=='top' else 'cut'
  elif 'crack' in fs and need=='cut': s.crackface='cut'
  elif 'crack' in fs: s.crackface='top'
  s.dimface='side'
  if need=='top': fam=['loaf','loaf','mould','cutloaf','stand','closetop','row']
  elif need=='cut': fam=['lie','stand','stack','row','close','close','flat','several','cutloaf']
  elif need=='both': fam=['stand','cutloaf','row','stand','standclose']
  elif need=='side':
    fam=['loafside','standside','lieside','cav','cavclose'] 
    if fs&{'colour-bled','layer-gap','drag-lines','smears','dark-centre-ring','brown-outside-in'}: fam=['standside']
  if tr=='paper-band': fam=['lie','stand','several']
  if tr=='bevels': fam=['lie','stand','flat','several']
  if tr in('poppy-seeds','coffee','oats','glitter','lint','wire-marks','dew','crumbs'): fam=['lie','stand','close','cutloaf','lie']
  if tr=='glare': fam=['lie','loaf','mould','lie']
  if tr=='glare': so.rough=.22;so.spec=1.6
  if not fs and kind=='bar' and tr is None: fam=['lie','stand','stack','row','loaf','flat','several','cutloaf','close','mould']
  sce=force_scene or s.ch(fam)
  if tr in('stamp','bevels'): s.br=s.u(.25,.5)
  B=s.bh;fill=s.u(.74,1.08);tgt=[0,0,.8];el=40;rad=4.6;ext=4.5
  if sce in('lie','flat','cav'):
    o=s.bar('lie',0,0,0,s.u(-.6,.6)+(math.pi/2 if s.p(.2) else 0)+(math.pi if s.p(.12) else 0));el=s.u(38,72) if sce!='flat' else s.u(83,89.5);tgt=[0,0,B[0]]
    if sce=='flat' and s.p(.45):
      s.objs.clear();n=s.ch([2,3,4,6]);c=2 if n in(2,4) else 3;th=s.u(-.06,.06) if s.p(.6) else .3
      for k in range(n): s.bar('lie',(k%c-(c-1)/2)*(B[1]*2+s.u(.5,1.1)),(k//c-(n/c-1)/2)*(B[2]*2+s.u(.8,1.3)),0,th+s.u(-.05,.05),xoff=s.u(-8,8))
      rad=(B[1]*c+1) if c==3 else max(B[1]*2.2,5.5);ext=rad+1
  elif sce=='several':
    n=s.i(2,6);ps=[]
    for k in range(n*25):
      x,y=s.u(-7,7),s.u(-4,6.5)
      if all(math.hypot(x-a,y-b)>8.7 for a,b in ps): ps.append((x,y))
      if len(ps)>=n: break
    for k,(x,y) in enumerate(ps): s.bar(s.ch(['lie','lie','stand']),x,y,0,s.u(-.7,.7)+(math.pi/2 if s.p(.15) else -1.57 if s.p(.3) else 0),xoff=s.u(-8,8))
    el=s.u(35,65);rad=8.5;ext=11;tgt=[0,.5,1]
  elif sce in('stand','standclose','standside'):
    th=-math.pi/2+s.u(-.75,.75)  # local x toward camera
    if sce=='standside': th=s.ch([-1,1])*s.u(0.15,.6)
    el=s.u(8,32) if need not in('both','top') else s.u(26,44);tgt=[0,0,B[2]];rad=4.9
    s.bar('stand',0,0,0,th,**({'hx':s.u(1.6,2.6)} if sce=='standside' else {}))
    if s.p(.3): s.bar(s.ch(['stand','lie']),s.ch([-1,1])*s.u(8,9.5),s.u(2,6),0,s.u(-2,-1),xoff=s.u(3,9))
    if sce=='standclose': fill=s.u(1.0,1.2)
  elif sce=='stack':
    n=s.i(2,5);z=0;th=s.u(-.5,.5)
    for k in range(n): s.bar('lie',s.u(-.4,.4),s.u(-.4,.4),z,th+s.u(-.15,.15)+(math.pi/2 if s.p(.2) else 0),xoff=s.u(-8,8),toptype=0 if False else s.tt);z+=B[0]*2+.03
    el=s.u(30,55);tgt=[0,0,z*.55];rad=max(5.2,z*.8)
    if s.p(.4): s.bar('stand',s.u(-1,1),-B[2]-s.u(2.5,4),0,-math.pi/2+s.u(-.4,.4),xoff=9);tgt[1]=-2;rad=6.4
  elif sce=='row':
    n=s.i(3,8);gap=s.u(.3,1.6);th=s.ch([-1,1])*s.u(.55,1.15)-(0 if True else 0);a=s.rz(th)[0]
    if s.p(.5): th=-math.pi/2+s.u(-.5,.5);a=s.rz(th+s.u(-.3,.3))[0]
    for k in range(n):
      q=(k-(n-1)/2)*(B[0]*2+gap);s.bar('stand',a[0]*q,a[1]*q,0,th+s.u(-.05,.05),xoff=q*.9)
    el=s.u(18,42) if need not in('both','top') else s.u(32,48);tgt=[0,0,B[2]];rad=min(9,max(6,n*(B[0]+gap/2)*.8+2.5));ext=rad+2
  elif sce in('loaf','mould','cutloaf','loafside'):
    L=s.u(7,11);th=s.ch([-1,1])*s.u(.15,.95);el=s.u(28,58)
    if sce=='loafside': th=s.ch([-1,1])*s.u(.05,.5);el=s.u(8,28)
    if sce=='mould': el=s.u(48,78)
    a=s.rz(th)[0]
    if sce=='cutloaf': th=s.ch([-1,1])*s.u(.6,1.2);a=s.rz(th)[0];L=s.u(4,7)
    s.bar('stand',0,0,0,th,hx=L,r=s.br)
    tgt=[0,0,B[2]*.9];rad=L*.95+1;ext=L+2
    if sce=='mould':
      g=s.u(.02,.15);w=s.u(.4,.7);c=hx(s.ch(['c79a66','b08050','8a6a48','d8d4cc','7a9aa8','a8b8a0']));m=10 if c[0]>c[2]*1.6 else 11;b=s.rz(th)
      H2=B[2]*.5+s.u(.1,.5)
      for sg in(-1,1):
        p=b[1]*sg*(B[1]+g+w);s.o(0,m,(p[0],p[1],H2*2-B[2]*0-.0),b,(L+2*w+g,w,H2*2-B[2]*.0),.06,col=c,col2=np.array(c)*.6)
        p=b[0]*sg*(L+g+w);s.o(0,m,(p[0],p[1],H2*2),b,(w,B[1]+g,H2*2),.06,col=c,col2=np.array(c)*.6)
      for o_ in s.objs[1:]: o_.c[2]=B[2]*.5+.25+H2*.0+B[2]*.5;o_.h[2]=B[2]+.3+s.u(0,.3)
      tgt[2]=B[2]*1.6
      if s.p(.3): fill*=1.25
    if sce=='cutloaf':
      sg=-1 if a[1]>0 else 1
      for k in range(s.i(1,4)):
        q=sg*(L+(k+.5)*2*B[0]+(k+1)*s.u(.35,1.1));s.bar('stand',a[0]*q,a[1]*q,0,th+s.u(-.08,.08),xoff=q)
        mid=a*q*.5;tgt=[mid[0],mid[1],B[2]*.9];rad=max(rad,abs(q)*.62+3)
      rad=min(rad,9.5);
      if need in('top',): el=s.u(38,58)
      else: el=s.u(18,42)
  elif sce=='close':
    s.bar('lie',0,0,0,s.u(-.5,.5));el=s.u(55,89);tgt=[s.u(-.8,.8),s.u(-.5,.5),B[0]*2];fill=s.u(1.15,1.5)
    if s.p(.35): s.objs.clear();s.bar('stand',0,0,0,-math.pi/2+s.u(-.4,.4));el=s.u(3,22);tgt=[s.u(-.6,.6),-1,B[2]+s.u(-.4,.4)]
  elif sce=='closetop':
    L=s.u(7,11);s.bar('stand',0,0,0,s.u(-.7,.7),hx=L);el=s.u(42,75);tgt=[s.u(-3,3),s.u(-.4,.4),B[2]*2];rad=4.5;fill=s.u(1.,1.5)
  elif sce in('lieside','cavclose'):
    if sce=='lieside': s.bar('side',0,0,0,s.u(-.5,.5),hx=s.u(2.2,3.5));el=s.u(35,70);tgt=[0,0,B[1]*2];rad=4.6
    else: s.bar('lie',0,0,0,s.u(-.5,.5),r=s.u(.35,.7));el=s.u(45,80);tgt=[0,0,B[0]*2];fill=s.u(1.1,1.45)
  if sce in('cav','cavclose'): s.dimface='cut';s.objs[0].toptype=0;s.objs[0].topamp=0;s.objs[0].r=s.u(.35,.7)
  if tr=='bevels':
    for o_ in s.objs: o_.r=s.u(.4,.75)
  if fs and len(s.objs)>2 and sce in('several','flat','row') and s.p(.35):
    keep=s.i(0,len(s.objs));kk=[keep]+([s.i(0,len(s.objs))] if s.p(.6) else [])
    if sce!='row':
      for j,o_ in enumerate(s.objs): o_.flaw=int(j in kk)
  if "crack" in fs and s.crackface=="cut" and len(s.objs)>1:
    for j,o_ in enumerate(s.objs): o_.flaw=int(j==keepc) if (keepc:=min(range(len(s.objs)),key=lambda q_:s.objs[q_].c[1])) is not None else 0
  nb=len(s.objs);look={}
  sst={}
  for j,f in enumerate(findings): x=s.u(.15,1);sst[f]=round(x,2);look[f]=addflaw(s,so,f,j,x)
  if tr: trick(s,so,tr,sc)
  extra=None
  if fs and s.p(.3):
    extra=s.ch(['stamp','glitter','poppy-seeds','oats','wire-marks','mica-shimmer','embeds','lint'])
    if extra in('poppy-seeds','oats') and fs&{'coloured-specks','white-specks','pinholes'}: extra=None
    if extra=='embeds' and sce=='loaf': extra=None
    if extra: trick(s,so,extra,sc)
  if not fs and tr and tr not in('wire-marks',) and s.p(.25): trick(s,so,'wire-marks',sc)
  # physical things on/near
  b0=min(s.objs[:nb],key=lambda o_:o_.c[1]);R0=np.array(list(b0.R)).reshape(3,3);c0=np.array(list(b0.c));h0=np.array(list(b0.h))
  upax=int(np.argmax(np.abs(R0[:,2])))
  def onface(m=.85):
    l=np.array([s.u(-m,m)*h0[k] for k in range(3)]);l[upax]=h0[upax]*(1 if R0[upax,2]>0 else -1);w=c0+R0.T@l;return w
  if tr=='salt-on-top':
    if sce in('closetop','loaf','mould'): h0[0]=min(h0[0],4.5)
    for _ in range(s.i(80,130)):
      w=onface(.9);q=s.u(.06,.15);t=s.u(0,3);w[2]+=q*.5+ (0 if s.tt==0 else s.ta*.1);A=s.rz(t);s.o(0,20,w,A,(q,q*s.u(.6,1),q*s.u(.5,.9)),q*.3,col=hx('fbfaf8'),col2=hx('f0e8e4'),rough=.12,spec=1.5)
  if tr=='petals':
    c=hx(s.ch(['c86a8a','9a7ac0','e0b030','6a4a8a','d84a50']))
    for _ in range(s.i(10,26)): w=onface(.8);leaf(s,w[0],w[1],w[2]+.1+.5*s.ta,s.u(0,6),s.u(.3,.7),c,.35)
  if tr=='crumbs' or (fs and s.p(.12)):
    col=s.cols[0]
    for _ in range(s.i(14,40)):
      if s.p(.3) and tr=='crumbs': w=onface(.9)
      else: a=s.u(0,6.3);r=s.u(.6,3.5);w=np.array([c0[0]+(abs(h0).max()*.8+r)*math.cos(a),c0[1]+(abs(h0).max()*.8+r)*math.sin(a)*.8,0])
      q=s.u(.03,.15);w[2]+=q*.4;col=s.cols[s.i(0,len(s.cols))];M,_q=np.linalg.qr(s.r.normal(size=(3,3)));s.o(0,20,w,M,(q*s.u(.8,1.6),q*s.u(.5,1),q*s.u(.35,.8)),q*.25,col=np.clip(col,0,.9),col2=np.clip(col*.9,0,.9),spec=.5)
  if tr=='paper-band' :
    c=hx(s.ch(['d8c4a0','f2efe8','b89a74','dcd4c8','3a4a44']));c2=hx('5a4a3a') if c[0]>.2 else hx('e8e0d0')
    for o_ in s.objs[:nb]:
      bw=s.u(.3,.45);R=np.array(list(o_.R)).reshape(3,3);h=list(o_.h);o_.deform=.02;o_.topamp*=.0;o_.toptype=0
      s.o(0,16,list(o_.c),R,(h[0]+.05,h[1]*bw,h[2]+.05),min(o_.r+.03,.3),seed=0,col=c,col2=c2,rough=.8,spec=.3)
  if sce not in('close','closetop','standclose','cavclose'): props(s,ext)
  az=0
  W2,H2=W,H
  if sce in('stand','standclose') and W>H*1.2 and s.p(.5): pass
  camera(s,sc,tgt,rad,el,fill,W,H)
  if tr=='glare':
    e_=math.radians(el+s.u(-6,6));a_=math.pi/2+s.u(-.15,.15);w_=np.array([math.cos(a_)*math.cos(e_),math.sin(a_)*math.cos(e_),math.sin(e_)]);u_=np.array([0,0,1])-w_*w_[2];u_/=np.linalg.norm(u_);setv(sc.wdir,w_);setv(sc.wup,u_);sc.wI=70;sc.wsx=s.u(.12,.25);sc.wsy=s.u(.12,.25)
  s.meta=dict(scene=sce,look=look,strength=sst,pattern=pt,tone=tone,extra=extra,K=s.K)
  s.sc=sc
  return s
def nothing(seed,k,W,H):
  s=G(seed);sc=Scene();over=s.p(.7);W,H=(W,H) if over else (H,W)
  ground(s,sc);light(s,sc);s.bh=[1,1,1];rz=s.rz(0);el=s.u(18,50);tgt=[0,0,2];rad=7
  c=lambda *l:hx(s.ch(l))
  if k in('mugs','kitchen'):
    for x,y in((-4,0),(3.5,2),(1,-3))[:s.i(2,4)]:
      q=s.u(2,2.8);cc=c('e8e4da','3a5a7a','b5483f','d8b060','2e3034');s.o(7,11,(x,y,q*1.1),rz,(q,q,q*1.1),.1,col=cc,col2=np.array(cc)*.85,rough=.2)
      a=s.u(0,6);s.o(3,11,(x+(q+.5)*math.cos(a),y+(q+.5)*math.sin(a),q*1.1),[[math.cos(a),math.sin(a),0],[0,0,1],[math.sin(a),-math.cos(a),0]],(1.3,1.3,.28),col=cc,col2=cc,rough=.2)
    if k=='kitchen': s.o(6,10,(0,-5.5,.4),[[0,0,1],[0,1,0],[-1,0.2,0]],(.4,.4,6),.4,col=c('b08050'),col2=c('8a5a30'));s.o(4,11,(-1,6,2.2),rz,(4,4,2.2),col=c('8fa8a0'),col2=c('7a9a90'),rough=.2);rad=9
  elif k=='plates':
    for j in range(3): s.o(5,11,(s.u(-.2,.2),s.u(-.2,.2),.4+j*.45),rz,(6-j*1.,6,.4),col=c('f0eee8','c8d4d8','e8d8c8'),col2=c('e0ddd4'),rough=.15)
    for _ in range(4): s.o(1,12,(s.u(-2,2),s.u(-2,2),2.2),s.rz(s.u(0,3)),(1.1,1,.9),deform=.1,col=c('c03a28','8a2a3a','d8a030'),col2=c('a03020'),rough=.3)
    s.o(0,19,(8,0,.1),s.rz(.1),(.4,5,.1),.08,col=c('c8c8cc'),col2=c('a0a0a4'),rough=.12,spec=3);rad=9
  elif k=='plant':
    s.o(2,11,(0,0,2.5),rz,(2.6,2.6,2.5),.2,col=c('c0683f','e0ddd4','4a5a60'),col2=c('a0552f'),rough=.7)
    s.o(2,12,(0,0,4.95),rz,(2.3,2.3,.2),.1,col=c('3a2a1e'),col2=c('241a12'))
    g=c('4a7a3f','6a9a5a','3a5a3a')
    for _ in range(46):
      a=s.u(0,6.3);t=s.u(.1,1.2);ax=np.array([math.cos(a)*math.cos(t),math.sin(a)*math.cos(t),math.sin(t)]);b=np.array([-math.sin(a),math.cos(a),0]);q=s.u(1.,2.1);p=np.array([0,0,5.2])+ax*s.u(.9,3.2);s.o(8,18,p,[ax,b,np.cross(ax,b)],(q,q*.35,.04),deform=-.7,col=g,col2=np.array(g)*.6,rough=.4)
    tgt=[0,0,5];rad=8;el=s.u(8,25)
  elif k=='animal':
    f=c('8a6a48','3a3632','d8c8b0','a0a0a0','c08040');f2=np.array(f)*.5;kw=dict(mat=13,col=f,col2=f2,rough=.9,spec=.15,bump=.5,deform=.25)
    def E(c_,h,R=rz,**q): a=dict(kw);a.update(q);m=a.pop('mat');s.o(1,m,c_,R,h,1,**a)
    E((0,0,3.2),(5,3,3.1));E((-4.2,-1,5.6),(2.1,1.9,1.9));E((3.5,-1.6,1.6),(2,1.4,1.6));E((-3.6,-2.2,.8),(1.2,2.2,.8));E((-2,-2.4,.7),(1.1,2.2,.7))
    for d in(-1,1): E((-4.2+d*1.2,-.7,7.4),(.55,.4,1.1),s.rz(0),deform=.05)
    for d in(-1,1): s.o(1,19,(-4.2+d*.75,-2.75,6.),rz,(.33,.2,.38),1,col=c('8aa040'),col2=c('8aa040'),rough=.05);s.o(1,19,(-4.2+d*.75,-2.93,6.),rz,(.12,.08,.33),1,col=c('0a0a0a'),col2=c('0a0a0a'),rough=.05)
    s.o(1,19,(-4.2,-2.9,5.35),rz,(.25,.18,.17),1,col=c('c08080'),col2=c('a06060'))
    for t in np.linspace(0,1,14): E((4.8-9*t*t*.6+1.5*math.sin(3*t),-2.2-1.6*math.sin(3.1*t),.8),(.75,.75,.7),deform=.1)
    tgt=[-.5,-1,3.6];rad=8;el=s.u(10,30)
  elif k=='boxes':
    for j in range(s.i(3,6)): h=[s.u(2,4),s.u(2,3.5),s.u(1.2,3)];s.o(0,14,(s.u(-6,6),s.u(-2,6)+j*.5,h[2]),s.rz(s.u(-.6,.6)),h,.06,col=c('b08a5e','a07848','c8a878'),col2=c('d8c8a8'),rough=.9,spec=.2);rad=9
  elif k=='eggs':
    for j in range(7): s.o(1,12,(s.u(-5,5),s.u(-3,4),1.6),s.rz(s.u(0,6)),(2.3,1.7,1.7),1,col=c('e8c8a0','f0e8dc','c89870'),col2=c('d8b088'),rough=.5)
    s.o(4,11,(5,4,2),rz,(4,4,2),col=c('d8dce0'),col2=c('c8ccd0'),rough=.2);rad=8
  elif k=='fruit':
    s.o(4,10,(0,0,1.8),rz,(6,6,1.8),col=c('a5794a'),col2=c('7a5530'),rough=.5)
    for j in range(9): a=j*.9;r=0 if j<2 else 2.6;s.o(1,12,(r*math.cos(a),r*math.sin(a),3.+(j<2)*1.),s.rz(a),(1.7,1.6,1.55),1,deform=.1,bump=.08,col=c('c83a28','e8a020','7aa838','e8cc40'),col2=c('b85020','b8a030'),rough=.3)
    rad=7.5
  elif k=='cloth':
    sc.ground=s.ch([3,8]);sc.gbump=1.6;[setv(sc.gc[i],hx(x)) for i,x in enumerate(s.ch([('c8bca4','a89a80','000000'),('6a7f96','54687e','000000')]))];setv(sc.gc[2],(0,0,0));el=65
    h=[4,3,.5];s.o(0,12,(2,1,.5),s.rz(.4),h,.3,deform=.2,col=c('b88a7a'),col2=c('a07060'),rough=.9,spec=.2);s.o(0,12,(2,1,1.4),s.rz(.45),[3.8,2.9,.45],.3,deform=.2,col=c('7a8a70'),col2=c('6a7a60'),rough=.9,spec=.2)
  elif k=='books':
    z=0
    for j in range(4): h=[s.u(4.5,6),s.u(3.2,4),s.u(.4,.9)];z+=h[2];s.o(0,12,(s.u(-.5,.5),0,z),s.rz(s.u(-.3,.3)),h,.05,col=c('8a2a2a','2a4a6a','3a5a3a','c8a050','2a2a2a'),col2=c('555555'),rough=.6);z+=h[2]+.02
    s.o(2,15,(7.5,2,3),rz,(1.8,1.8,3),.3,col=c('a8b8b0'),col2=c('6a7a70'),rough=.1);tgt=[1,0,2];rad=7.5
  else:
    sc.ground=s.ch([0,6,2])
    s.o(2,19,(-3,0,1.5),rz,(2.2,2.2,1.5),.3,col=c('c8c8cc'),col2=c('909094'),rough=.12,spec=5);s.o(6,10,(3,-1,.5),[[0,0,1],[-.5,.86,0],[.86,.5,0]],(.5,.5,5),.5,col=c('b08050'),col2=c('8a5a30'));s.o(4,11,(4,5,2),rz,(3.5,3.5,2),col=c('e8e4da'),col2=c('d0ccc0'),rough=.2);rad=8
  camera(s,sc,tgt,rad,el,s.u(.75,1.),W,H);s.sc=sc;s.meta=dict(scene=k,look={},pattern=None,tone=None,extra=None,K=s.K);s.cols=[];return s
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
