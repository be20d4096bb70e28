"""A scene without soap. Drawn by another hand; see ../../README.md."""
from .parts import *
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
