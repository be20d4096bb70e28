"""Whole scenes: where bars lie and stand, what is beside them, pictures without soap. Drawn by another hand."""
from .scene import *
TOPF={'wrinkled-top','powdery-film'};
SIZES=[(900,675),(675,900),(920,690),(690,920),(900,600),(960,720),(960,720),(720,960),(900,720),(720,900),(900,900),(960,640),(900,600),(600,900),(900,675),(960,640),(675,900),(1200,800)]
def topdisp(r,s,kind):
    n=72;m=max(16,int(n*s.d/s.w)) if s.d>s.w else 40;m=min(m,200);x=np.linspace(-.5,.5,n)*s.w;z=np.linspace(-.5,.5,m)*s.d;X,Z=np.meshgrid(x.astype(F),z.astype(F));sd=s.seed
    if kind=='spoon':
        a,b,c=worley(X+.5*fbm(X,Z,0*X,.6,2,.5,sd),Z*.8,.55,sd);h=.5*(1-sst(0,.8,a))+.25*fbm(X,Z,0*X,.7,3,.5,sd);h=np.maximum(h,-.1)
    elif kind=='ridge': h=.55*np.exp(-((X+.25*np.sin(Z*1.1))/(.22*s.w))**2)+.12*np.sin(Z*2.2+2*X)+.1*fbm(X,Z,0*X,.8,3,.5,sd)
    elif kind=='curl': h=.22*np.sin(2.4*X+1.3*np.sin(Z*1.2))*np.cos(Z*.9)+.15*fbm(X,Z,0*X,.7,3,.5,sd)
    else: h=.05*fbm(X,Z,0*X,.4,2,.5,sd)
    return h.astype(F)
def make(r,spec,small=1.0):
    """spec: findings,trick,kind -> image, masks"""
    FN=spec.get('findings',[]);tr=spec.get('trick');sc=Scene(r);pat=spec['pattern'];fam=spec['fam']
    W,H=SIZES[r.integers(len(SIZES))];W,H=int(W*small),int(H*small)
    if fam=='row' and H>W: W,H=H,W
    if fam=='loaf': w,h,d=r.uniform(7,9),r.uniform(6,8),r.uniform(16,24)
    else:
        w,h,d=r.uniform(6.5,9),r.uniform(4.6,6.6),r.uniform(2.2,3.4)
        if r.random()<.2: w=h=r.uniform(5.5,6.5)
        if 'mould-dimples' in FN and pat!='moulded': d=r.uniform(3.5,5.5)
    ctr=np.array([0,h/2,0.]);objs=[];nv=1
    needtop=bool(TOPF&set(FN)) or spec.get('top')=='1' or tr in('spoon texture','coarse salt','petals','glitter','oats')
    # ----- family
    az=0
    if fam=='lying':
        y=r.uniform(-3.1,3.1) if r.random()<.6 else r.normal(0,.12);objs=[((0,d/2,0),Rlie(y),0)];ctr=np.array([0,d/2,0]);el=pick(r,[1.52,r.uniform(.9,1.35),r.uniform(.6,.95)]);
        if needtop: y=r.uniform(-.7,.7);objs=[((0,d/2,0),np.stack([[-np.cos(y),0,np.sin(y)],[np.sin(y),0,np.cos(y)],[0,1,0]]),0)];el=r.uniform(.5,.75)
        ext=max(w,h)*1.15
    elif fam=='standing':
        y=pick(r,[r.normal(0,.08),r.uniform(-.75,.75)]);el=r.uniform(.5,.8) if needtop else r.uniform(.12,.6)
        if 'mould-dimples' in FN: y=pick(r,[-1,1])*r.uniform(.75,1.1)
        objs=[((0,h/2,0),Rstand(y),0)];ext=max(w,h*1.1)*1.15
    elif fam=='stack':
        n=int(r.integers(2,5));yy=0;el=r.uniform(.45,.95)
        if needtop: el=r.uniform(.3,.5)
        for i in range(n):
            y=(0 if not needtop else 3.14)+r.normal(0,.35);objs.append(((r.normal(0,.35),yy+d/2,r.normal(0,.35)),Rlie(y),i%2));yy+=d
        if r.random()<.5: objs.append((((w*.8)*pick(r,[-1,1]),h/2+0,h*.4+d),Rstand(r.normal(0,.25)),1));
        ctr=np.array([0,yy/2,0]);ext=max(w,yy)*1.45;nv=2
    elif fam=='loaf':
        y=pick(r,[-1,1])*r.uniform(.35,.95);el=r.uniform(.35,.75);objs=[((0,h/2,0),Rstand(y),0)];ext=d*1.0+2;
        R=Rstand(y)
        if r.random()<.45: # slices in front of the cut end
            sl=r.uniform(2.2,3);p=R[2]*(d/2+sl/2+r.uniform(.3,1.4))+R[0]*r.uniform(-.5,.5);objs.append((p+np.array([0,h/2,0]),Rstand(y+r.normal(0,.15)),1));nv=2;ext+=1.5
            if r.random()<.5: p=p+R[2]*(4+sl*.5)+R[0]*r.uniform(-2,2);objs.append((np.array([p[0],sl/2,p[2]]),Rlie(r.uniform(-1,1)),1))
        ctr=np.array([0,h*.45,0])
    elif fam=='row':
        n=int(r.integers(2,5));y=r.uniform(-.5,.5);el=r.uniform(.5,.75) if needtop else r.uniform(.25,.6);gap=r.uniform(.6,2.2);m=r.integers(2)
        if m and 'mould-dimples' not in FN:
            for i in range(n): objs.append((((i-(n-1)/2)*(w+gap),h/2,r.normal(0,.3)),Rstand(r.normal(0,.08)),i%2))
            ext=n*(w+gap);y=0
        else:
            for i in range(n): R=Rstand(y+.45);p=R[2]*((n-1)/2-i)*(d+gap);objs.append((p+np.array([0,h/2,0]),Rstand(y+.45+r.normal(0,.05)),i%2))
            ext=n*(d+gap)*.8+w*1.1
        nv=2
    elif fam=='grid':
        nx,ny=pick(r,[(2,2),(3,2),(2,3),(2,1),(1,2),(3,1)]);g=r.uniform(.25,1.2);lean=r.normal(0,.05)
        for i in range(nx):
            for j in range(ny): objs.append((((i-(nx-1)/2)*(w+g),d/2,(j-(ny-1)/2)*(h+g)),Rlie(lean+r.normal(0,.04)+(np.pi if r.random()<.3 else 0)),(i+j)%2))
        ext=max(nx*(w+g),ny*(h+g)*1.1)*1.02;el=pick(r,[1.53,r.uniform(1,1.3)]);ctr=np.array([0,d/2,0]);nv=2
    elif fam=='closeup':
        if r.random()<.6 and not needtop: objs=[((0,d/2,0),Rlie(r.normal(0,.2)),0)];ctr=np.array([r.normal(0,.2),d,r.normal(0,.2)]);el=r.uniform(1.1,1.5);ext=min(w,h*W/H)*r.uniform(.75,.95)
        else: objs=[((0,h/2,0),Rstand(r.uniform(-.3,.3)),0)];ctr=np.array([0,h*.55,d/2]);el=r.uniform(.15,.4) if not needtop else r.uniform(.6,.8);ext=w*r.uniform(.72,.95)
    elif fam=='leaning':
        t=r.uniform(.45,.8);y=r.uniform(-.4,.4)
        objs=[((0,d/2,-2),Rlie(y+r.normal(0,.2)),1)];R=rotx(-t)@Rstand(y)  # leaning back on first
        hh=h/2*np.cos(t)+d/2*np.sin(t);objs.append((np.array([np.sin(y)*(h*.42),hh,np.cos(y)*(h*.42)]),R,0));ctr=np.array([0,h*.4,0]);el=r.uniform(.35,.8);ext=w*1.6;nv=2
    fl=r.uniform(.9,2.1);aspect=W/H;azc=r.normal(0,.12);roll=r.normal(0,.03)
    if fam!='closeup':
        zoom=r.uniform(.66,.93) if fam not in('row','grid','loaf') else r.uniform(.84,.97);pts=[];dd=dims_=(w,h,d)
        for p,R,vi in objs:
            k=sl if (fam=='loaf' and vi) else d
            for cx in(-1,1):
                for cy in(-1,1):
                    for cz in(-1,1): pts.append(np.array(p)+np.array([cx*w/2,cy*h/2,cz*k/2])@np.asarray(R))
        pts=np.array(pts);ctr=(pts.max(0)+pts.min(0))/2;dist=ext*fl*1.3
        for _ in range(4):
            cm=camera(ctr,azc,el,dist,fl,roll);q=pts-cm[:3];zz=q@cm[9:12];px_=fl*(q@cm[3:6])/zz;py_=fl*(q@cm[6:9])/zz*aspect
            ctr=ctr+cm[3:6]*(px_.max()+px_.min())/2/fl*dist+cm[6:9]*(py_.max()+py_.min())/2/fl/aspect*dist
            ratio=max(px_.max()-px_.min(),py_.max()-py_.min())/zoom;dist=max(dist*ratio,dist*.4)
    else: dist=ext*fl+d/2
    ppc=W*fl/dist*(1.05 if fam!='closeup' else 1.05)
    ppc=min(ppc,150)
    if FN and fam!='closeup' and 0: pass
    # ----- soap textures
    mood=spec.get('mood');ncol=int(r.integers(2,6));texk=spec.get('topkind') or (pick(r,['flat','flat','spoon','ridge','curl']) if pat!='moulded' else 'flat')
    if 'wrinkled-top' in FN: texk='flat'
    if tr=='spoon texture': texk=pick(r,['spoon','ridge','curl'])
    soaps=[];g,ld=light(sc,r,ctr,lowside=('mould-dimples' in FN or 'wrinkled-top' in FN) )
    if 'mould-dimples' in FN and pat!='moulded' and g[0]*y>0: g[0]*=-1;g[20]*=-1;ld[0]*=-1
    clean2=nv==2 and r.random()<.3 and len(FN)>0
    pal=None;st=spec.get('st',.7);dims=[(w,h,d)]*nv
    if fam=='loaf' and nv==2: dims=[(w,h,d),(w,h,sl)]
    seed0=int(r.integers(1e6))
    for v_ in range(nv):
        rr=np.random.default_rng(seed0+v_*7)
        s=Soap(rr,*dims[v_],ppc,pat,ncol,mood,pal);pal=s.pal
        for f in s.f: f.c0=f.c.copy()
        if not(clean2 and v_==1):
            for ch,fn in enumerate(FN):
                pre=[f.c.copy() for f in s.f]
                if fn=='crack': crack(s,st,ch,spec.get('where','auto'))
                elif fn=='pinholes':
                    R0=objs[0][1];pinholes(s,st,ch,Ld=(float(R0[0]@ld),float(-(R0[1]@ld))) )
                else: FL[fn](s,st,ch)
                nn=0;tt=0.
                for f,p_ in zip(s.f,pre):
                    k=f.m[ch]>0
                    if k.any(): tt+=np.abs(srgb(f.c[k])-srgb(p_[k])).max(-1).sum();nn+=k.sum()
                vis=tt/max(nn,1);lim={'wrinkled-top':0.02,'mould-dimples':0.0,'translucent-veins':.06,'crackle-network':.05,'drag-lines':.05,'brown-outside-in':.16}.get(fn,.085)
                if nn==0 or vis<lim: raise ValueError('faint %s %.3f'%(fn,vis))
        if tr in('poppy seeds','oats','coffee'): seeds(s,tr.split()[0])
        elif tr=='stamp' or spec.get('stamp'): stamp(s)
        elif tr=='shimmer': shimmer(s)
        elif tr=='glitter': shimmer(s,True)
        elif tr=='mica line': micaline(s)
        elif tr=='wire marks': wiremarks(s)
        elif tr=='dew': dew(s)
        elif tr=='paper band': band(s)
        elif tr=='lint': lint(s)
        elif tr=='glare':
            for f in s.f: f.gl+=.4
        if spec.get('exf'): seeds(s,spec['exf'])
        ts=[sc.tex(s.tex(f)) for f in s.f];s.mat=sc.mat(*ts);s.disp=topdisp(rr,s,texk) if texk!='flat' else None;soaps.append(s)
    bev=tr=='bevels';rd=r.uniform(.35,.7) if bev else (r.uniform(.5,.9) if pat=='moulded' else r.uniform(.08,.35))
    yo=0
    # support
    sup=r.random();top_of=[o for o in objs]
    kind=spec.get('ground') or pick(r,GK)
    if tr=='wood grain': kind=pick(r,['wood','planks','darkwood'])
    gt,ts=ground(r,kind);ts*=r.uniform(.7,1.3)
    if fam not in('closeup',) and sup<.3:
        bw=ext*r.uniform(.62,.8);bt,_=ground(r,pick(r,['wood','slate','planks','marble','darkwood']));bt2=sc.tex(bt);m=sc.mat(bt2);yo=r.uniform(.8,2)
        sc.obj(0,(0,yo/2,0),(max(bw,ext*.6),yo/2,bw*.75),m,roty(r.normal(0,.2)),.15)
    elif fam in('lying','standing') and sup<.42:
        c=lin(hx(pick(r,WHITE+PASTEL+['5a6b73','d9cdb8'])));m=sc.mat(sc.tex(flat(c,.7,r)));yo=.7;R=max(w,d)*.85;sc.obj(2,(0,yo/2,0),(R,yo/2,R),m,rd=.2)
    elif fam in('lying','stack') and sup<.52:
        ct_,_=ground(r,pick(r,['linen','plaid']));m=sc.mat(sc.tex(ct_));yo=0
        for i in range(2): sc.obj(0,(r.normal(0,.3),yo+.45,r.normal(0,.3)),(ext*.62,.45,ext*.5),m,roty(r.normal(0,.1)),.4,.05);yo+=.85
    warp=r.uniform(.01,.05)
    for p,R,vi in objs:
        vi=min(vi,nv-1);s=soaps[vi];sc.obj(0,(p[0],p[1]+yo,p[2]),(s.w/2,s.h/2,s.d/2),s.mat,np.asarray(R),rd,warp,s.disp,taper=0 if fam=='loaf' else r.normal(0,.008))
    ctr=ctr+np.array([0,yo,0])
    # small things
    s=soaps[0];p0,R0,_=objs[0];p0=np.array(p0)+np.array([0,yo,0])
    def onface(face,u,v):
        R=np.asarray(R0);hx_=np.array([s.w/2,s.h/2,s.d/2]);l=np.array([u*hx_[0],v*hx_[1],hx_[2]]) if face==0 else np.array([u*hx_[0],hx_[1],v*hx_[2]]);return p0+l@R
    upface=0 if abs(np.asarray(R0)[2][1])>.7 else 1
    if s.disp is not None and upface==1: hadd=lambda u,v:float(s.disp[int((v*.5+.5)*(s.disp.shape[0]-1)),int((u*.5+.5)*(s.disp.shape[1]-1))])
    else: hadd=lambda u,v:0
    if tr=='coarse salt' or tr=='petals':
        n=int(r.integers(20,42)) if tr!='petals' else int(r.integers(7,16))
        if tr=='petals': mm=[sc.mat(sc.tex(flat(lin(hx(c)),.15,r,64,.25))) for c in pick(r,[['b5506a','d98aa0','8a2f4a'],['e0b23a','d98a2a','c97020'],['6a5a9a','8a7ab8','4f4478']])]
        else: mm=[sc.mat(sc.tex(flat(lin(hx(c)),.8,r,16,.1))) for c in pick(r,[['f2efee','e6e2e0'],['e8b8a8','f0d0c4']])]
        for i in range(n):
            u,v=r.uniform(-.85,.85),r.uniform(-.8,.8);q=onface(upface,u,v)+np.array([0,hadd(u,v),0]);a=roty(r.uniform(0,6))@rotx(r.normal(0,.3))
            if tr=='petals': sc.obj(1,q+[0,.03,0],(r.uniform(.3,.6),.06,r.uniform(.15,.35)),mm[i%len(mm)],a)
            else: e=r.uniform(.08,.2);sc.obj(0,q+[0,e*.4,0],(e,e*r.uniform(.6,1),e*r.uniform(.6,1)),mm[i%len(mm)],rotz(r.normal(0,.5))@a,.03)
    if tr=='crumbs' or r.random()<.12:
        m=s.mat
        m=sc.mat(sc.tex(flat(np.mean(s.pal,0),.3,r)))
        for i in range(int(r.integers(10,26))):
            a=r.uniform(0,6.28);rr_=ext*r.uniform(.3,.6);e=r.uniform(.06,.22);q=np.array([np.cos(a)*rr_,yo*0+e*.6,np.sin(a)*rr_]) if (yo>0 or r.random()<.8) else np.array([np.cos(a)*rr_,e*.6,np.sin(a)*rr_])
            sc.obj(0,q,(e,e*.6,e*r.uniform(.4,1)),m,roty(r.uniform(0,6))@rotz(r.normal(0,.3)),e*.25,e*.2)
        if tr=='crumbs':
            for i in range(6): u,v=r.uniform(-.8,.8,2);e=r.uniform(.05,.13);sc.obj(0,onface(upface,u,v)+np.array([0,e*.5+hadd(u,v),0]),(e,e*.6,e*.8),m,roty(r.uniform(0,6)),e*.3,e*.2)
    # background props
    if fam in('standing','loaf','row','stack','leaning','lying') and r.random()<.55: bgprops(sc,r,ext,yo)
    if tr=='shadows' or (not tr and r.random()<.08): g[7]=1;g[38]=r.uniform(14,30);sc.gob=gobo(r,pick(r,['blind','leaf','leaf','window']));g[6]=14;g[3:6]*=1.3
    # ground & wall
    g[16]=sc.tex(gt);g[15]=ts
    if r.random()<.55 and el<.9:
        wt,wts=ground(r,pick(r,['paper','concrete','planks','tile','linen','stone']));g[17]=-ext*r.uniform(.9,2);g[18]=sc.tex(wt);g[19]=wts
    cam=camera(ctr,azc,el,dist,fl,roll,(r.normal(0,.01)*ext,r.normal(0,.01)*ext))
    if tr=='glare' or r.random()<.15:
        # put the window where the face mirrors it
        Rm=np.asarray(R0);nrmv=Rm[2] if fam in('lying','closeup','stack','grid') and upface==0 else Rm[2];vv=(ctr-cam[:3]);vv/=np.linalg.norm(vv);rf=vv-2*nrmv*(vv@nrmv)+r.normal(0,.12,3);rf[1]=max(rf[1],.1);g[20:23]=rf;g[23]=r.uniform(.10,.25);g[24:27]=g[3:6]*(r.uniform(22,40) if tr=='glare' else r.uniform(4,9))
    img,dep=render(sc,g,cam,W,H)
    q=quality(r);lc=g[3:6]/g[3:6].max();q['lcol']=lc*.7+.3*g[8:11]/g[8:11].max();q['expo']=r.uniform(.36,.55);q['sl']=.65
    av=np.mean(srgb(np.mean(soaps[0].pal,0)));q['expo']*=1
    q3=dep[img[...,3]>.5];focus=float(np.percentile(q3[np.isfinite(q3)],35)) if q3.size>100 else dist
    return img,dep,focus,q,soaps,ppc
def bgprops(sc,r,ext,yo):
    n=int(r.integers(1,4))
    for i in range(n):
        sx=pick(r,[-1,1]);x=sx*ext*r.uniform(.45,.95);z=-ext*r.uniform(.45,1.0);k=r.integers(6);c=lin(hx(pick(r,WHITE+PASTEL+SAT+BROWN+BLACK)))
        m=sc.mat(sc.tex(flat(c,r.uniform(.2,.8),r)))
        if k==2: ct_,_=ground(r,pick(r,['linen','plaid']));m=sc.mat(sc.tex(ct_))
        if k==5: m=sc.mat(sc.tex(flat(lin(hx(pick(r,['b08d5e','a07c4c','c9a777']))),.1,r,64,.1)))
        if k==0: e=r.uniform(2,3.5);sc.obj(5,(x,4,z),(e,4,e),m,taper=.05,rd=.15)
        elif k==1: e=r.uniform(1.2,2);hh=r.uniform(4,8);sc.obj(2,(x,hh,z),(e,hh,e),m,rd=.5);sc.obj(2,(x,hh*2+1,z),(e*.4,1.2,e*.4),m,rd=.1)
        elif k==2:
            for j in range(2): sc.obj(0,(x+r.normal(0,.2),.7+1.4*j,z),(4,.7,3),m,roty(r.normal(0,.3)),.6,.08)
        elif k==3: plant(sc,r,x,0,z,r.uniform(.7,1.2))
        elif k==4: e=r.uniform(2,4);sc.obj(4,(x,e,z),(e,0,e),m,rd=.15)
        else: sc.obj(0,(x,5,z-2),(r.uniform(4,6),5,r.uniform(3,4)),m,roty(r.uniform(-1,1)),.05)
def plant(sc,r,x,y,z,s):
    m=sc.mat(sc.tex(flat(lin(hx(pick(r,['b5603a','e6e2da','5a6068']))),.2,r)));g=[sc.mat(sc.tex(flat(lin(hx(c)),.4,r,64,.3))) for c in ('3f6b35','5a8a45','2f5230')]
    sc.obj(5,(x,y+2.2*s,z),(2.2*s,2.2*s,0),m,taper=.2,rd=.2)
    for i in range(int(r.integers(10,20))):
        a=r.uniform(0,6.28);t=r.uniform(.1,1.2);R=rotx(t)@roty(a);ln=r.uniform(1.5,3.6)*s;up=R[1];p=np.array([x,y+4*s,z])+up*ln;sc.obj(1,p,(ln*.28,ln,ln*.08),g[i%3],R)

def nothing(r,idx,small=1.0):
    sc=Scene(r);W,H=SIZES[r.integers(len(SIZES))];W,H=int(W*small),int(H*small);ctr=np.array([0,4.,0])
    def fm(c,g=.4,m=.06,ht=0): return sc.mat(sc.tex(flat(lin(hx(c)),g,r,96,m,ht)))
    def gm(k): t,_=ground(r,k);return sc.mat(sc.tex(t))
    kind=pick(r,GK);el=r.uniform(.3,.7);ext=30
    if idx==0: # mugs and a bowl
        for i in range(3):
            m=fm(pick(r,WHITE+PASTEL+SAT),.75);x=(i-1)*10+r.normal(0,1);z=r.normal(0,2);sc.obj(5,(x,4.5,z),(3.8,4.5,0),m,taper=.03,rd=.2);sc.obj(3,(x+3.9,4.5,z),(2.2,2.2,.5),m,roty(r.uniform(-.6,.6)),.45)
        sc.obj(4,(3,4,9),(4.5,0,0),fm('d8d2c4',.6),rd=.2)
    elif idx==1: # fruit
        for i in range(7): c=pick(r,['d9822b','c9302a','7fa03a','d6b02c']);e=r.uniform(2.8,3.8);a=i*.9;sc.obj(1,(np.cos(a)*7,e*.95,np.sin(a)*5),(e,e*.93,e),fm(c,.5,.12,.02))
        sc.obj(4,(-1,8,-10),(8,0,0),fm('eeeae0',.6),rd=.25)
    elif idx==2: # cat lying
        f=lambda:sc.mat(sc.tex(pack(lin(hx('b07a48'))*(1+.35*np.sin(np.linspace(0,40,128))[None,:,None]*np.ones((128,1,1))*.5+.25*r.normal(0,1,(128,128,1))),.05*r.normal(0,1,(128,128)),.08)))
        m=f();sc.obj(1,(0,4.5,0),(10,5,5.5),m);sc.obj(1,(9,8.5,2),(3.9,3.5,3.6),m);
        for q in(-1,1): sc.obj(1,(9+q*2,11.6,1.8),(1.1,2,.5),m,rotz(-q*.25));sc.obj(1,(9+q*1.4,9,5.3),(.5,.6,.35),fm('20240f',1))
        sc.obj(1,(9,7.6,5.4),(.5,.35,.4),fm('8a4a44',.5));sc.obj(1,(-11,1.6,3),(6,1.3,1.3),m,roty(.7));sc.obj(1,(6,1.3,6),(1.4,1.2,3.5),m);sc.obj(1,(9.5,1.3,6.3),(1.4,1.2,3.5),m);kind='plaid'
    elif idx==3: # cartons
        for i in range(4):
            m=fm(pick(r,['b08d5e','a07c4c','c9a777','b99a70']),.1,.1);a=r.uniform(4,8);b=r.uniform(3,7);sc.obj(0,((i-1.5)*12,b,r.normal(0,4)),(a,b,r.uniform(4,7)),m,roty(r.uniform(-.6,.6)),.05)
        ext=50
    elif idx==4: # plates
        for i in range(5): sc.obj(2,(r.normal(0,.2),.4+.8*i,r.normal(0,.2)),(9,.35,9),fm(pick(r,WHITE+['b9c6cf']),.8),rd=.3)
        sc.obj(2,(17,.4,6),(7,.4,7),fm('8a9aa5',.7),rd=.3);sc.obj(1,(17,.9,6),(1.6,.4,2.4),fm('b0b0b0',1));sc.obj(0,(17,.9,13),(.4,.2,6),fm('b0b0b0',1),rd=.15)
    elif idx==5:
        for i in range(3): plant(sc,r,(i-1)*13,0,r.normal(0,3),r.uniform(1.2,1.9))
        ctr[1]=7;ext=40
    elif idx==6: # crumpled cloth filling the frame
        kind=pick(r,['linen','plaid'])
        for i in range(9): sc.obj(1,(r.uniform(-15,15),0,r.uniform(-12,12)),(r.uniform(5,12),r.uniform(1,3),r.uniform(1.5,4)),gm(kind),roty(r.uniform(0,3)))
    elif idx==7: # bottles and jars
        for i in range(5):
            m=fm(pick(r,['5a3418','2f5a3a','dcd6c6','a8c0c8','222222']),.95);e=r.uniform(1.8,3);h=r.uniform(5,9);x=(i-2)*7.5;sc.obj(2,(x,h,r.normal(0,3)),(e,h,e),m,rd=.8);sc.obj(2,(x,2*h+1.2,0*h),(e*.35,1.4,e*.35),fm('2a2a2a',.4),rd=.1)
        ctr[1]=8;ext=42
    elif idx==8: # loaf of bread and rolls
        m=fm('b5793a',.15,.3,.15);sc.obj(1,(-4,4.3,0),(12,5,5),m,roty(.3))
        for i in range(3): sc.obj(1,(9+i*3,2.2,5-5*i),(3.6,2.6,3.2),m)
        kind='wood'
    elif idx==9: # pans, spoons on tiles
        sc.obj(5,(-5,3,0),(9,3,0),fm('3a3c40',.85),taper=.03,rd=.2);sc.obj(0,(10,5,0),(7,.5,.9),fm('1e1e1e',.4),rd=.4)
        for i in range(3): sc.obj(1,(6+3*i,.4,12),(1.3,.35,1.9),fm('8f6136',.2));sc.obj(0,(6+3*i,.35,19),(.4,.25,6),fm('8f6136',.2),rd=.2)
    elif idx==10: # eggs in a bowl, flour sack
        sc.obj(4,(0,7,0),(7.5,0,0),fm('7b95a3',.6),rd=.25)
        for i in range(7): a=i*.9;q=3.4*(i>0);sc.obj(1,(q*np.cos(a),6.2+(i==0),q*np.sin(a)),(1.9,1.9,2.5),fm(pick(r,['e9cfae','d9b48a','f4ece0']),.3,.05),roty(a)@rotx(.3))
        sc.obj(0,(-14,6,-5),(5,6,3.5),gm('linen'),roty(.3),2,.3)
    else: # books and a candle
        for i in range(5): sc.obj(0,(r.normal(0,.6),1.2+2.4*i,r.normal(0,.6)),(9,1.15,6.5),fm(pick(r,SAT+BROWN+BLACK),.25),roty(r.normal(0,.12)),.08)
        sc.obj(2,(15,3,3),(2.5,3,2.5),fm('efe6d0',.3),rd=.3);sc.obj(2,(15,6.3,3),(.1,.5,.1),fm('222222',.1),rd=.05);ctr[1]=5;ext=36
    g,ld=light(sc,r,ctr);gt,ts=ground(r,kind);g[16]=sc.tex(gt);g[15]=ts
    if r.random()<.6: wt,wts=ground(r,pick(r,['paper','tile','concrete','planks']));g[17]=-24;g[18]=sc.tex(wt);g[19]=wts
    fl=r.uniform(1,1.8);dist=ext*.95*fl*max(1,W/H*.8);cam=camera(ctr,r.normal(0,.4),el,dist,fl,r.normal(0,.03));img,dep=render(sc,g,cam,W,H);img[...,3:]=0
    q=quality(r);lc=g[3:6]/g[3:6].max();q['lcol']=lc*.7+.3*g[8:11]/g[8:11].max();q['expo']=r.uniform(.36,.52);return img,dep,dist,q
