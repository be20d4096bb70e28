"""Grounds, light, camera and what the camera does to a picture. Drawn by another hand."""
from .flaws import *
import io
NC=8; _gc={}
def pack(c,ht,gl): return np.ascontiguousarray(np.dstack([np.clip(c,.003,.97),ht,gl*np.ones(c.shape[:2]),np.zeros(c.shape[:2]+(3,))]).astype(F))
GK=['wood','planks','darkwood','linen','stone','slate','marble','tile','paper','plaid','concrete','oilcloth']
def ground(r,kind,n=640):
    """returns texture and its size in cm"""
    key=(kind,int(r.integers(2)));
    if key in _gc: c,h,g,ts=_gc[key]
    else:
        q=np.random.default_rng(abs(hash(kind))%9999+key[1]);u=(np.arange(n)+.5)/n;X,Y=np.meshgrid(u.astype(F),u.astype(F));ts=40.;z=0*X
        X1=np.abs(X*2-1)*.5;Y1=np.abs(Y*2-1)*.5;sd=key[1]*50+7 # mirrored => tiles
        h=z.copy();g=.25
        if kind in('wood','planks','darkwood'):
            base={'wood':('b98a58','8f6136'),'planks':('c9b18c','a58a62'),'darkwood':('5a3a24','33200f')}[kind];a,b=lin(hx(base[0])),lin(hx(base[1]))
            nb=4 if kind!='darkwood' else 3;pl=np.floor(Y*nb);yo=Y*nb-pl;yy=Y+.37*pl
            w=fbm(X1*1.2,yy*9,z+pl*3,1.5,3,.5,sd);gr=fbm(X1*4,yy*90,z+pl,1.2,3,.6,sd+1);rings=np.sin((yy*60+6*w+X1*3)+pl*2)
            t=np.clip(.5+.25*rings+.5*gr+.25*w+.18*np.sin(pl*5),0,1);c=b+(a-b)*t[...,None];gap=np.exp(-(np.minimum(yo,1-yo)/.012)**2);c*=(1-.75*gap)[...,None];h=-.08*gap+.02*gr;g=.35
            if kind=='planks': g=.15
        elif kind in('linen','plaid','oilcloth'):
            f=n/ (5 if kind=='linen' else 4);wv=np.sin(X*6.283*128)*.5+.5;wy=np.sin(Y*6.283*128)*.5+.5;ck=np.where((np.sin(X*6.283*128)*np.sin(Y*6.283*128))>0,wv,wy);nn=fbm(X1*40,Y1*6,z,2,3,.5,sd)+fbm(X1*6,Y1*40,z,2,3,.5,sd+2);fold=fbm(X1*2,Y1*2,z,2,3,.5,sd+4)
            a=lin(hx({'linen':'cfc4ae','plaid':'ece6da','oilcloth':'dfe3df'}[kind]));c=a*(.92+.10*ck+.09*nn)[...,None];h=.02*ck+.15*fold*4;g=.05
            if kind=='plaid':
                s1=(np.mod(X*8,1)<.4)*1.;s2=(np.mod(Y*8,1)<.4)*1.;cc=lin(hx('8c3b3b' if key[1] else '3f5f86'));c+=(cc-c)*(.45*s1+.35*s2)[...,None]*.9
            if kind=='oilcloth': 
                h=z;g=.55;a1,b1,c1=worley(X,Y,9,sd);fl=(a1*(1+.25*np.sin(18*c1+0*X)))<.22;c+=(lin(hx('c98f9a'))-c)*(fl*.7)[...,None]
        elif kind in('stone','slate','concrete'):
            a=lin(hx({'stone':'b8b2a6','slate':'3b3f42','concrete':'a3a3a0'}[kind]));nn=fbm(X1*8,Y1*8,z,2,6,.6,sd);n2=fbm(X1*60,Y1*60,z,2,3,.6,sd+1);c=a*(1+.28*nn+.16*n2)[...,None];h=.05*nn+.02*n2;g=.2
        elif kind=='marble':
            w=fbm(X1*3,Y1*3,z,1.5,5,.55,sd);v=fbm(X1*3+w,Y1*3+.7*w,z+4,1.3,4,.5,sd+3);t=np.exp(-np.abs(v)/.05)*sst(-.3,.3,w);a=lin(hx('eeecea'));c=a*(1-.07*(w>0)*w)[...,None];c+=(lin(hx('8d8f94'))-c)*(t*.55)[...,None];g=.6
        elif kind=='tile':
            k=5;fx=np.abs(np.mod(X*k,1)-.5);fy=np.abs(np.mod(Y*k,1)-.5);e=np.maximum(fx,fy);gr=sst(.475,.488,e);a=lin(hx(['d9e0df','6f93a3'][key[1]]));c=a*(1+.05*fbm(X1*10,Y1*10,z,2,3,.5,sd))[...,None]*(1+.04*np.sin(np.floor(X*k)*7+np.floor(Y*k)*13))[...,None];c+=(lin(hx('a8a49c'))-c)*gr[...,None];h=-.06*gr;g=.6
        else:
            c=lin(hx(['f2f1ee','d8cdbb'][key[1]]))*(1+.02*fbm(X1*60,Y1*60,z,2,4,.7,sd))[...,None];g=.12
        _gc[key]=(c,h,g,ts)
    tint=np.clip(r.normal(1,.10,3)*r.uniform(.8,1.12),.5,1.3)
    if kind in('linen','paper','oilcloth') and r.random()<.6: tint=lin(hx(pick(r,['c9d3d6','b7a58c','5b6a78','7a4d4d','d9c9b9','8a9a82','f0f0f0','c7b2c9'])))*1.2
    return pack(c*tint.astype(F),h,g),ts
def flat(col,gl=.3,r=None,n=64,mott=.06,ht=.0):
    u=np.arange(n)/n;X,Y=np.meshgrid(u.astype(F),u.astype(F));q=fbm(X,Y,0*X,6,4,.6,int(r.integers(9999)) if r is not None else 1);return pack(np.asarray(col,F)*(1+mott*q)[...,None],ht*q,gl)
class Scene:
    def __init__(s,r): s.r=r;s.t=[];s.o=[];s.m=[];s.disp=[np.zeros(4,F)];s.nd=4;L.reset();s.gob=np.ones((4,4),F);s.usegob=0;s.gsc=30
    def tex(s,a): s.t.append(a);return L.addtex(P(a),a.shape[1],a.shape[0])
    def mat(s,a,b=None,c=None):
        i=len(s.m);t=(a,a if b is None else b,a if c is None else c);s.m.append(t);L.setmat(i,*t);return i
    def obj(s,type,p,h,mat,R=np.eye(3),rd=.1,warp=0,disp=None,taper=0):
        h=np.asarray(h,float)
        d=(-1,2,2,0)
        if disp is not None: d=(s.nd,disp.shape[1],disp.shape[0],float(disp.max()));s.disp.append(disp.astype(F).ravel());s.nd+=disp.size
        br={0:np.linalg.norm([h[0]*(1+abs(taper)),h[1]+max(0,d[3]),h[2]])+warp*2,1:h.max(),2:np.hypot(h[0]+abs(taper)*h[1],h[1]),3:h[0]+rd,4:h[0]+rd,5:np.hypot(h[0]+abs(taper)*h[1]+rd,h[1])+.2}[type]+.03
        a=np.array([type,*p,*R.ravel(),*h,rd,mat,warp,s.r.integers(1,50),br,*d,taper],F);i=len(s.o);s.o.append(a);L.setobj(i,P(a));return i
def roty(a): c,s_=np.cos(a),np.sin(a);return np.array([[c,0,-s_],[0,1,0],[s_,0,c]])
def rotx(a): c,s_=np.cos(a),np.sin(a);return np.array([[1,0,0],[0,c,s_],[0,-s_,c]])
def rotz(a): c,s_=np.cos(a),np.sin(a);return np.array([[c,s_,0],[-s_,c,0],[0,0,1]])
# rows are local axes in world. standing: roty(yaw); lying: local z -> up
def Rstand(y): return roty(y)
def Rlie(y,flip=1): return rotx(-np.pi/2)@roty(y) if False else np.stack([[np.cos(y),0,-np.sin(y)],[-np.sin(y)*flip,0,-np.cos(y)*flip],[0,1,0]])
def kelvin(T):
    t=T/100;R=1 if t<=66 else 1.29*(t-60)**-.133;G=(.39*np.log(t)-.632) if t<=66 else 1.13*(t-60)**-.0755;B=1 if t>=66 else (.543*np.log(t-10)-1.196);return lin(np.clip([R,G,B],0,1))
def gobo(r,kind):
    n=256;im=Image.new('L',(n,n),255);d=ImageDraw.Draw(im)
    if kind=='blind':
        for i in range(0,n,32): d.rectangle([0,i,n,i+14],fill=20)
    elif kind=='leaf':
        for _ in range(16):
            x,y,a,l=r.uniform(0,n),r.uniform(0,n),r.uniform(0,6.3),r.uniform(30,70);p=[]
            for t in np.linspace(0,1,12): p.append((x+np.cos(a)*l*t-np.sin(a)*l*.22*np.sin(3.14*t),y+np.sin(a)*l*t+np.cos(a)*l*.22*np.sin(3.14*t)))
            for t in np.linspace(1,0,12): p.append((x+np.cos(a)*l*t+np.sin(a)*l*.22*np.sin(3.14*t),y+np.sin(a)*l*t-np.cos(a)*l*.22*np.sin(3.14*t)))
            for ox in(-n,0,n):
                for oy in(-n,0,n): d.polygon([(q[0]+ox,q[1]+oy) for q in p],fill=25)
    else:
        for i in range(0,n,128): d.rectangle([i,0,i+22,n],fill=15);d.rectangle([0,i,n,i+16],fill=15)
    return ni.gaussian_filter(np.asarray(im,F)/255,r.uniform(2,6),mode='wrap')
def light(sc,r,ctr,glare=False,lowside=False,hard=None):
    T=pick(r,[2700,3000,3500,4200,5000,5500,5500,6000,6500]);c=kelvin(T);az=r.uniform(-2.6,2.6) if not lowside else pick(r,[-1,1])*r.uniform(1.1,2.0);el=r.uniform(.55,1.2) if not lowside else r.uniform(.35,.6)
    near=T<4000 and r.random()<.6;D=r.uniform(40,70) if near else 200
    d=np.array([np.sin(az)*np.cos(el),np.sin(el),np.cos(az)*np.cos(el)]);lp=ctr+d*D
    k=hard or np.exp(r.uniform(np.log(2.2),np.log(14)));key=r.uniform(.65,1.2);am=r.uniform(.22,.5) if not lowside else r.uniform(.2,.32)
    sky=kelvin(pick(r,[5000,6500,6500,8000]) if r.random()<.6 else T);g=np.zeros(64,F);g[0:3]=lp;g[3:6]=c*key;g[6]=k;g[8:11]=sky*am;g[11:14]=c*am*.45;g[14]=D;g[20:23]=[np.sin(az),max(.25,np.sin(el)),np.cos(az)];g[23]=r.uniform(.3,.8);g[24:27]=c*r.uniform(.8,2.2);fd=r.uniform(-3,3);g[31:34]=[np.sin(fd),.3,np.cos(fd)];g[34:37]=sky*r.uniform(.04,.18);g[37]=r.uniform(.12,.3);g[27:30]=.3*sky
    g[7]=sc.usegob;g[38]=sc.gsc;s=d
    sc.T=T;sc.mix=T
    return g,d
def camera(ctr,az,el,dist,fl,roll=0,off=(0,0)):
    e=ctr+dist*np.array([np.sin(az)*np.cos(el),np.sin(el),np.cos(az)*np.cos(el)]);f=(ctr-e)/np.linalg.norm(ctr-e);up=np.array([0,1,0]) if el<1.5 else np.array([-np.sin(az),0,-np.cos(az)]);r_=np.cross(f,up);r_/=np.linalg.norm(r_);u=np.cross(r_,f)
    c,s=np.cos(roll),np.sin(roll);r2=r_*c+u*s;u2=u*c-r_*s
    e=e+r2*off[0]+u2*off[1]
    return np.array([*e,*r2,*u2,*f,fl],F)
def render(sc,g,cam,W,H):
    img=np.zeros((H,W,6),F);dep=np.zeros((H,W),F);db=np.concatenate(sc.disp).astype(F);gb=np.ascontiguousarray(sc.gob,F)
    L.render(P(g),P(cam),P(db),P(gb),gb.shape[0],W,H,P(img),P(dep));bad=~np.isfinite(img)|(np.abs(img)>60);
    if bad.any(): img[bad]=0
    return img,dep
def post(r,img,dep,focus,q,pix):
    """q: dict(quality). returns uint8"""
    H,W=img.shape[:2];c=img[...,:3].copy()
    lo=img[...,3]>.5
    y=c.mean(-1);ref=np.percentile(y[lo],70) if lo.sum()>500 else np.percentile(y,75)
    allp=np.percentile(y,85);tgt=q.get('expo',r.uniform(.34,.6));sl=q.get('sl',.55)
    c*=tgt/((ref**(1-sl)*sl+0) if False else (sl*tgt**0*allp+(1-sl)*ref)+1e-6)
    # white balance: cameras neutralise most of the cast
    m=np.percentile(c.reshape(-1,3),80,axis=0);wb=(m.mean()/m)**0;k=q.get('wbk',r.uniform(.45,1.0));lc=q['lcol'];lc=lc/lc.mean();c/=lc**k
    c*=np.array([1+q.get('wbs',0),1,1-q.get('wbs',0)],F)
    dof=q.get('dof',0)
    if dof>0:
        dep=np.nan_to_num(dep,nan=focus);
        coc=np.clip(np.abs(1/dep-1/focus)*focus*dof*W,0,.03*W);b1=ni.gaussian_filter(c,(2.5,2.5,0));b2=ni.gaussian_filter(c,(7,7,0));t=np.clip(coc/2.5,0,1)[...,None];c=c*(1-t)+b1*t;t=np.clip((coc-2.5)/7,0,1)[...,None];c=c*(1-t)+b2*t
    if q.get('blur',0)>0: c=ni.gaussian_filter(c,(q['blur'],q['blur'],0))
    if q.get('motion',0)>1:
        n=int(q['motion']);c=ni.uniform_filter1d(c,n,axis=int(r.integers(2)))
    yy,xx=np.mgrid[-1:1:H*1j,-1:1:W*1j];c*=(1-q.get('vig',0)*(xx**2+yy**2)/2)[...,None].astype(F)
    bl=ni.gaussian_filter(np.clip(c-.9,0,3),(6,6,0));c+=.2*bl
    x=np.clip(c*q.get('mulexp',1),0,None);x=np.where(x<.7,x,.7+.3*(1-np.exp(-(x-.7)/.3)));x=srgb(x);x=np.clip(x+q.get('con',.06)*np.sin((x-.5)*2*np.pi*.5)*(1-np.abs(2*x-1)),0,1)
    ns=q.get('noise',.006)
    if ns>0:
        n=r.normal(0,1,(H,W,1)).astype(F)+.6*r.normal(0,1,(H,W,3)).astype(F)
        if q.get('nblur',0): n=ni.gaussian_filter(n,(q['nblur'],q['nblur'],0))*3.
        x=x+ns*n*(.5+.8*(1-x))
    if q.get('sharp',0)>0: x=x+q['sharp']*(x-ni.gaussian_filter(x,(1.2,1.2,0)))
    return (np.clip(x,0,1)*255+.5).astype(np.uint8)
def quality(r):
    q=dict(vig=pick(r,[0,0,.15,.3,.45]),noise=pick(r,[.003,.006,.01,.02]),sharp=pick(r,[0,.2,.4,.7]),dof=pick(r,[0,0,.012,.025,.04]),jq=int(pick(r,[92,88,84,76,66,55])),blur=0,wbs=0)
    t=r.random()
    if t<.14: q['blur']=r.uniform(.6,1.3)
    elif t<.24: q['noise']=r.uniform(.025,.04);q['nblur']=.7
    elif t<.34: q['jq']=int(r.integers(30,45))
    elif t<.46: q['wbs']=pick(r,[-1,1])*r.uniform(.06,.16)
    return q
