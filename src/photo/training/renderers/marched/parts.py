"""Ground, light, camera, things beside the bar, flaws and what deceives. Drawn by another hand; see ../../README.md."""
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
