"""A scene with bars. Drawn by another hand; see ../../README.md."""
from .parts import *
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
