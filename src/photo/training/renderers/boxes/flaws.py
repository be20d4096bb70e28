"""Flaws and harmless decoration painted onto the faces of a bar. Drawn by another hand."""
from .soap import *
def strong_col(s):
    r=s.r;base=np.mean(s.pal,0)
    for _ in range(60):
        c=lin(hx(pick(r,SAT+['1c3f8f','a01525','0f6b4f','5b2a86','3a2413','10122a','d0480f','b0126a'])))
        if np.abs(srgb(c)-srgb(base)).max()>.33: return c
    return c
def region(s,k):
    return [f.W[...,k] for f in s.f]
def coloured_specks(s,st,ch):
    r=s.r;only=s.K>1 and r.random()<.55
    k=r.integers(s.K);
    if s.K>1 and r.random()<.6: k=int(np.argmax([np.mean(s.f[0].W[...,q]) for q in range(s.K)]))
    col=srgb(s.pal[k]);h,sa,v=colorsys.rgb_to_hsv(*col.tolist())
    c=lin(hsv(h,min(1,sa*1.6+.35),v*.5)) if (sa>.18 and r.random()<.5 and v>.45) else strong_col(s)
    dens=r.uniform(1.2,4)*(.5+st);rm=s.w*.0025;rM=s.w*r.uniform(.007,.017)
    for f in s.f:
        w=f.W[...,k] if only else None
        def fn(dx,dy,R,sl,p):
            a=1-sst(R*.75,R*1.15,np.hypot(dx,dy)*(1+.12*np.sin(np.arctan2(dy,dx)*3+R*900)));a=a*(.75+.25*st)
            hal=.25*np.exp(-(dx*dx+dy*dy)/(R*R)*.9)
            f.c[sl]+=(c-f.c[sl])*np.clip(np.maximum(a,hal*.8),0,1)[...,None];f.m[ch][sl]=np.maximum(f.m[ch][sl],(a>.35))
        stampdots(f,[(u,v,R*1.0) for u,v,R in scatter(s,f,dens,rm,rM,w,r.uniform(.2,.8))],lambda dx,dy,R,sl,p:fn(dx,dy,R*.85,sl,p))
def smears(s,st,ch):
    r=s.r;c=strong_col(s);f=s.f[0];an=pick(r,[np.pi/2,0,np.pi/2+.2,r.uniform(0,3.1)])+r.normal(0,.06);sg=pick(r,[-1,1]);jit=r.uniform(.01,.1)
    n=int(r.integers(8,36)*(.5+st));A=np.zeros_like(f.U)
    rv=fbm(f.X,f.Y,f.Z,.3,2,.5,s.seed+71);
    for _ in range(n):
        for t in range(8):
            u,v=r.uniform(-.48,.48)*f.a,r.uniform(-.48,.48)*f.b
            if rv[int((v/f.b+.5)*rv.shape[0]),int((u/f.a+.5)*rv.shape[1])]>-.1: break
        ln=r.uniform(.02,.11)*s.w*(.7+.5*st);wd=s.w*r.uniform(.0025,.008);a=an+r.normal(0,jit)
        def fn(dx,dy,R,sl,p):
            x=(dx*np.cos(a)+dy*np.sin(a))*sg;y=-dx*np.sin(a)+dy*np.cos(a);t=x/ln
            wdt=wd*np.clip(1-t,.0,1)**.7;q=np.where((t>0)&(t<1),(1-sst(wdt*.6,wdt*1.25+.004,np.abs(y)))*(1-.65*t),0);q=np.maximum(q,1-sst(wd*.9,wd*1.25,np.hypot(x,y)))
            A[sl]=np.maximum(A[sl],q)
        stampdots(f,[(u,v,ln*1.1)],fn)
    A*=.7+.3*st;s.mix(f,A,c);s.mk(f,ch,A,.22)
def white_specks(s,st,ch):
    r=s.r;dens=r.uniform(.5,1.8)*(.5+st);big=r.random()<.5;rm,rM=s.w*.004,s.w*(.02 if big else .011);c=lin([.97,.96,.93]);recess=r.random()<.3
    pale=np.mean(srgb(np.mean(s.pal,0)))>.8
    for f in s.f:
        def fn(dx,dy,R,sl,p):
            th=p[0]*50;x=dx*np.cos(th)+dy*np.sin(th);y=(-dx*np.sin(th)+dy*np.cos(th))*(1.2+.8*np.sin(p[1]*99)**2);an=np.arctan2(y,x)
            d=np.hypot(x,y)*(1+.18*np.sin(an*3+p[0]*40)+.12*np.sin(an*5+p[1]*70));R=R*.7;a=1-sst(R*.82,R*1.05,d)
            ring=np.exp(-((d-R*1.15)/(R*.25))**2)*(.4 if pale else .2)
            f.c[sl]*=(1-ring)[...,None];f.c[sl]+=(c-f.c[sl])*(a*.95)[...,None];f.ht[sl]+=(-1 if recess else 1)*a*R*.5;f.gl[sl]*=1-.6*a;f.m[ch][sl]=np.maximum(f.m[ch][sl],(a>.35))
        stampdots(f,[(u,v,R/.7) for u,v,R in scatter(s,f,dens,rm,rM,None,r.uniform(0,.6))],fn)
def glass(s,f,a,k):
    sat=f.c/(f.c.mean(-1,keepdims=True)+1e-4);t=np.clip(f.c*(1-k)*np.clip(sat,.3,1.8)**.35,.003,1);f.c+=(t-f.c)*np.clip(a,0,1)[...,None];f.gl+=.22*a;f.ht-=.012*a
def translucent_veins(s,st,ch):
    r=s.r;fr=r.uniform(.28,.6);k=.15+.24*st;wd=r.uniform(.07,.13)
    for f in s.f:
        x,y=(f.X,f.Y) if f.i==0 else ((f.X,f.Z+3) if f.i==1 else (f.Z+2,f.Y))
        x2=x+.9*fbm(x,y,0*x,.5,4,.55,s.seed+61);y2=y+.9*fbm(x,y,0*x+7,.5,4,.55,s.seed+62)
        a1,b1,c1=worley(x2,y2,fr,s.seed);e=b1-a1
        gate=sst(-.22,.12,fbm(x,y,0*x+3,.28,2,.5,s.seed+63));wv=wd*(.5+.9*gate)*(1+.5*fbm(x,y,0*x,1.5,2,.5,s.seed+64))
        a=(1-sst(wv*.4,wv*1.25,e))*gate
        a2,b2,c2=worley(x2+.25*fbm(x,y,0*x+5,1.5,2,.5,s.seed),y2,fr*2.1,s.seed+5);a=np.maximum(a,.8*(1-sst(wd*.2,wd*.9,b2-a2))*(np.abs(c2-.5)<.22)*gate)
        a=ni.gaussian_filter(a,.045*f.px);a=np.clip(a*1.15,0,1);glass(s,f,a,k);s.mk(f,ch,a,.33)
def crackle_network(s,st,ch):
    r=s.r;fr=r.uniform(1.2,2.6);k=.2+.26*st;lum=[np.mean(srgb(p)) for p in s.pal];pale=np.argmax(lum)
    for f in s.f:
        x,y=(f.X,f.Y) if f.i==0 else ((f.X,f.Z+3) if f.i==1 else (f.Z+2,f.Y))
        x2=x+.10*fbm(x,y,0*x,1.6,3,.5,s.seed+61);y2=y+.10*fbm(x,y,0*x+7,1.6,3,.5,s.seed+62)
        a1,b1,c1=worley(x2,y2,fr,s.seed);pres=sst(-.35,.05,fbm(x,y,0*x,.3,2,.5,s.seed+63)+.15*st)
        if s.K>1: pres=pres*(.1+.9*f.W[...,pale])
        a=(1-sst(.02,.10+.03*st,b1-a1))*pres;a=ni.gaussian_filter(a,.012*f.px);f.c*=(1+.04*pres*(1-a))[...,None];glass(s,f,a,k);s.mk(f,ch,a,.33)
def powdery_film(s,st,ch):
    r=s.r;c=lin([.95,.95,.94]);m=r.integers(3)
    for f in s.f:
        n=fbm(f.X,f.Y,f.Z,.45,4,.6,s.seed+81);e=np.exp(-f.ed/(.12*s.h))
        if f.i==1: a=sst(-.5,.35,n)*.75+.25*e
        elif f.i==0: a=e*sst(-.5,.3,n)*(1 if m else 1.2)+(sst(.1,.5,n)*.6 if m==2 else 0)+sst(.28,.5,f.Y/s.h)*.5*sst(-.4,.3,n)
        else: a=.55*sst(-.3,.4,n)+.4*e
        g=ni.gaussian_filter(r.normal(0,1,f.U.shape),.015*f.px+.4)*3;g2=fbm(f.X,f.Y,f.Z,3,3,.6,s.seed+82)
        a=np.clip(a*(.85+.25*g+.5*g2),0,1)*(.5+.42*st);s.mix(f,a,c);f.gl*=1-.85*np.clip(a,0,1);s.mk(f,ch,ni.gaussian_filter(a,.04*f.px),.24)
def dark_centre_ring(s,st,ch):
    r=s.r;f=s.f[0];cx,cy=r.uniform(-.07,.07)*s.w,r.uniform(-.08,.08)*s.h;rx,ry=r.uniform(.26,.38)*s.w,r.uniform(.24,.36)*s.h
    d=np.sqrt(((f.X-cx)/rx)**2+((f.Y-cy)/ry)**2)+.10*fbm(f.X,f.Y,f.Z,.3,3,.5,s.seed+91);so=r.uniform(.1,.28);a=1-sst(1-so,1+so,d)
    if r.random()<.4: a=np.clip(a+.5*np.exp(-((d-1)/.07)**2),0,1.2)
    k=.22+.34*st;sat=f.c/(f.c.mean(-1,keepdims=True)+1e-4);f.c=np.clip(f.c*(1-k*a[...,None])*(sat**(.5*a[...,None])),.003,1);f.gl+=.1*a;s.mk(f,ch,a,.5)
    g=s.f[1]  # faint continuation none
def orange_spots(s,st,ch):
    r=s.r;c=lin(hx(pick(r,['c8761f','b5621a','d48a2c','a8551c','c06a2a'])));dens=r.uniform(.10,.4)*(.5+st);hal=r.random()<.6;big=r.random()<.5
    for f in s.f:
        n=fbm(f.U,f.V,0*f.U,1.3,3,.5,s.seed+95+f.i)
        def fn(dx,dy,R,sl,p):
            R=R/2.4;d=np.hypot(dx,dy)*(1+.9*n[sl]);a=(1-sst(R*.35,R*1.1,d))*(.6+.35*st);f.c[sl]+=(c-f.c[sl])*np.clip(a,0,1)[...,None]
            core=(1-sst(R*.1,R*.5,d))*.5;f.c[sl]*=(1-core*.5)[...,None];m=a
            if hal:
                b=(1-sst(R*1.2,R*2.3,d))*.22;f.c[sl]*=(1-b[...,None]*np.array([.5,.75,1.3],F));f.gl[sl]+=.25*b
            f.m[ch][sl]=np.maximum(f.m[ch][sl],(m>.22))
        pts=scatter(s,f,dens,s.w*.012,s.w*(.05 if big else .026),None,.5)
        if f.i==0 and len(pts)<3: pts+=[(r.uniform(-.4,.4)*f.a,r.uniform(-.4,.4)*f.b,s.w*r.uniform(.02,.045)) for _ in range(4)]
        stampdots(f,[(u,v,R*2.4) for u,v,R in pts],fn)
def pinholes(s,st,ch,Ld=(-.6,-.6)):
    r=s.r;dens=r.uniform(1,4.5)*(.5+st);rm,rM=s.w*.004,s.w*r.uniform(.009,.016)
    for f in s.f:
        def fn(dx,dy,R,sl,p):
            R=R/1.6;d=np.hypot(dx,dy);a=1-sst(R*.8,R*1.05,d);f.c[sl]*=(1-.72*a*(.8+.2*st))[...,None]
            lit=np.clip(-(dx*Ld[0]+dy*Ld[1])/(R+1e-6),0,1.3);rim=np.exp(-((d-R*1.08)/(R*.22))**2)*lit*.55;f.c[sl]+=(.97-f.c[sl])*np.clip(rim,0,1)[...,None]
            f.ht[sl]-=a*R*.7;f.m[ch][sl]=np.maximum(f.m[ch][sl],(d<R*1.1))
        stampdots(f,[(u,v,R*1.6) for u,v,R in scatter(s,f,dens,rm,rM,None,r.uniform(.2,.9))],fn)
def crackpath(s,f,along,off,wmax,ch,lo=-.5,hi=.5,seed=0,branch=True):
    t=(f.U/f.a if along=='u' else f.V/f.b);o=(f.V if along=='u' else f.U);tt=(f.U if along=='u' else f.V)
    z=0*t;path=off+.22*fbm(tt,z,z+seed,.35,3,.5,s.seed+101)+.10*fbm(tt,z,z+seed,1.6,4,.65,s.seed+102)
    env=sst(lo-.001,lo+.14,t)*(1-sst(hi-.14,hi+.001,t)) if hi-lo<.99 else 1+0*t
    w=wmax*env*(.55+.6*np.abs(fbm(tt,z,z,.8,3,.6,s.seed+103))+.2*fbm(f.U,f.V,z,3,3,.6,s.seed+104));w=np.maximum(w,0)
    d=np.abs(o-path);a=(1-sst(w*.55,w*1.0+.012,d))*(w>.006)
    if branch:
        for q in range(s.r.integers(1,4)):
            t0=s.r.uniform(lo+.1,hi-.1);sl=s.r.choice([-1,1])*s.r.uniform(.4,1.2);ln=s.r.uniform(.05,.16);dt=(t-t0);L_=f.a if along=='u' else f.b
            d2=np.abs(o-path-sl*dt*L_);e=((dt>0)&(dt<ln))*(1-dt/ln);w2=wmax*.45*e;a=np.maximum(a,(1-sst(w2*.5,w2+.01,d2))*(w2>.006))
    lip=np.exp(-(d/(w*2.2+.05))**2)*env
    f.ht+=.06*lip*np.minimum(1,wmax*6)-.25*np.minimum(wmax*2,.6)*a;dk=np.clip(.30*f.c*np.array([1,.85,.7],F),.004,1);f.c+=(dk-f.c)*(a*.95)[...,None];f.gl*=1-.7*a;s.mk(f,ch,a,.35)
    return path
def crack(s,st,ch,where='auto'):
    r=s.r;wm=r.uniform(.06,.12)*(.5+.9*st)*s.h/5.5
    if where=='top':
        f=s.f[1];off=r.uniform(-.12,.12)*s.w
        full=s.d<6 or r.random()<.4;lo,hi=(-.6,.6) if full else (r.uniform(-.45,-.25),r.uniform(.2,.48))
        if s.d<s.w*.7 and r.random()<.5: crackpath(s,f,'u',r.uniform(-.1,.1)*s.d,wm*.8,ch,r.uniform(-.5,-.2),r.uniform(.2,.5))
        else:
            crackpath(s,f,'v',off,wm*2.2,ch,lo,hi)
            if full:  # runs down the cut face a little
                g=s.f[0];q=r.uniform(.1,.35);t=(.5-g.Y/s.h);z=0*t;off0=off+.22*fbm(z+s.d/2,z,z,.35,3,.5,s.seed+101)+.10*fbm(z+s.d/2,z,z,1.6,4,.65,s.seed+102)
                w=wm*1.8*np.clip(1-t/q,0,1);d=np.abs(g.X-off0-.1*fbm(g.Y,z,z,1.2,3,.6,s.seed));a=(1-sst(w*.5,w+.01,d))*(w>.006);dk=.3*g.c;g.c+=(dk-g.c)*(a*.95)[...,None];s.mk(g,ch,a,.35)
    else:
        f=s.f[0]
        if r.random()<.5: crackpath(s,f,'u',r.uniform(-.25,.25)*s.h,wm,ch,-.55 if r.random()<.5 else r.uniform(-.4,-.2),r.uniform(.1,.45))
        else: crackpath(s,f,'v',r.uniform(-.3,.3)*s.w,wm,ch,-.6 if r.random()<.6 else -.3,r.uniform(0,.45))
def brown_outside_in(s,st,ch):
    r=s.r;c=lin(hx(pick(r,['b98a56','8a5a32','a8763f','6b4022','c49a66','7a4a28'])));dp=r.uniform(.09,.22)*s.h;k=.5+.45*st
    for f in s.f:
        n=fbm(f.X,f.Y,f.Z,.4,3,.5,s.seed+111)
        if f.i==0: a=1-sst(.05,1.0,np.clip(f.ed,0,9)/(dp*(1+.5*n)))
        else: a=np.clip(.93+.12*n,0,1)
        a=a*k;t=c*(.75+.5*f.c.mean(-1,keepdims=True));f.c+=(t-f.c)*np.clip(a,0,1)[...,None];s.mk(f,ch,a,.22)
def colour_bled(s,st,ch):
    r=s.r;lum=[np.mean(srgb(p)) for p in s.pal];ks=int(np.argmin(lum));sg=r.uniform(.09,.2)*s.h*(.55+.5*st)*.6
    for f in s.f:
        M=f.W[...,ks];n=sst(-.5,.35,fbm(f.X,f.Y,f.Z,.4,3,.5,s.seed+121))
        b=ni.gaussian_filter(M,sg*f.px,mode='nearest');b2=ni.gaussian_filter(M,sg*.4*f.px,mode='nearest');a=np.clip(1.5*b*.6+.7*b2,0,1)*(1-M)*(.45+.55*n)*(.55+.4*st)
        col=s.pal[ks];h,sa,v=colorsys.rgb_to_hsv(*srgb(col).tolist());pc=lin(hsv(h,sa*.9,min(1,v*1.12)))
        s.mix(f,a,pc);s.mk(f,ch,a,.16)
        e=4*b2*(1-b2)*M*.35*n;oth=np.mean([s.pal[q] for q in range(s.K) if q!=ks],0);s.mix(f,e,oth)
def drag_lines(s,st,ch):
    r=s.r;f=s.f[0];an=pick(r,[0,np.pi/2,np.pi/2,r.uniform(-.3,.3)])+r.normal(0,.04);n=int(r.integers(5,22)*(.6+.6*st));x=f.U*np.cos(an)+f.V*np.sin(an);y=-f.U*np.sin(an)+f.V*np.cos(an);A=np.zeros_like(x);B=np.zeros_like(x)
    R=np.hypot(f.a,f.b)/2;cl=r.random()<.5;c0=r.uniform(-.2,.2)*f.b
    for _ in range(n):
        o=c0+r.normal(0,.12)*f.b if cl and r.random()<.7 else r.uniform(-.5,.5)*min(f.a,f.b)*1.2;x0=r.uniform(-1,.3)*R;x1=x0+r.uniform(.3,2)*R;w=s.w*r.uniform(.002,.005)*(.7+.6*st);am=r.uniform(.5,1)
        d=(y-o-.01*np.sin(x*.7+o*9));e=sst(x0,x0+.25,x)*(1-sst(x0+.3*(x1-x0),x1,x)*.95);a=np.exp(-(d/w)**2)*e*am;A=np.maximum(A,a);B=np.maximum(B,np.exp(-((d-1.7*w)/w)**2)*e*am)
    f.ht-=.025*A*(.6+.6*st);f.c*=(1-.34*A*(.5+.5*st))[...,None];f.c+=(.95-f.c)*(.28*B*(.4+.6*st)*(1-A))[...,None];s.mk(f,ch,A,.3)
def layer_gap(s,st,ch):
    r=s.r;k=r.integers(len(s.bounds));wm=r.uniform(.035,.075)*(.5+.9*st)*s.h/5.5;lo=r.uniform(-.7,.0);hi=lo+r.uniform(.45,1.4);dirn=r.choice([-1,1])
    for f in s.f:
        if f.i==1: continue
        t=(f.X if f.i==0 else f.Z*0+s.w/2)/s.w*dirn;z=0*t;env=sst(lo,lo+.15,t)*(1-sst(hi-.15,hi,t));y=f.bd[k]-.03*fbm(f.X,f.Z,z,1.2,3,.6,s.seed+131)
        w=wm*env*(.6+.7*np.abs(fbm(f.X,z,f.Z,.7,3,.6,s.seed+132)));a=(1-sst(w*.6,w+.012,np.abs(y)))*(w>.008);dk=np.clip(f.c*.22,.003,1);f.c+=(dk-f.c)*(a*.97)[...,None];f.ht-=.12*a
        led=np.exp(-((y+w*1.5)/(w*.7+.01))**2)*env*(w>.008);f.c+=(.95-f.c)*(.22*led*(1-a))[...,None];f.ht+=.03*led;f.m[ch]=np.maximum(f.m[ch],(a>.3))
def wrinkled_top(s,st,ch):
    r=s.r;f=s.f[1];m=r.integers(3);x,y=f.X,f.Z;z=0*x
    fr=r.uniform(.9,1.8);x2=x+.25*fbm(x,y,z,.9,3,.5,s.seed+141);y2=y+.25*fbm(x,y,z+4,.9,3,.5,s.seed+142)
    if m==0: a1,b1,c1=worley(x2,y2,fr,s.seed);h=sst(0,.35,b1-a1)
    elif m==1: v=fbm(x2*1.0,y2*.45,z,fr*.8,3,.55,s.seed+143);h=1-np.exp(-np.abs(v)/.09)
    else: a1,b1,c1=worley(x2,y2*.4,fr*1.1,s.seed);v=fbm(x2,y2,z,fr*1.6,2,.5,s.seed+3);h=.6*sst(0,.3,b1-a1)+.4*(1-np.exp(-np.abs(v)/.1))
    pres=sst(-.45,-.05,fbm(x,y,z,.2,2,.5,s.seed+144)+.25*st);h2=ni.gaussian_filter((h-1)*pres,.035*f.px);f.ht+=.11*(.5+.7*st)*h2;f.c*=(1+.33*(.5+.6*st)*h2)[...,None];f.m[ch]=np.maximum(f.m[ch],(ni.gaussian_filter(pres,.1*f.px)>.45).astype(F))
def mould_dimples(s,st,ch):
    r=s.r;st=max(st,.6);st*=1.5 if s.d>8 else 1;m=r.integers(3);faces=[0,2] if s.pattern=='moulded' else [2,0] if False else [2]
    for i in faces:
        f=s.f[i];A=np.zeros_like(f.U)
        if m!=1:
            def fn(dx,dy,R,sl,p):
                x=dx+.3*dy*np.sin(p[0]*9);y=dy*(1+.5*np.sin(p[1]*7));q=1-sst(0.25*R,R*.98,np.hypot(x,y));f.ht[sl]-=q*R*.20*(.6+.6*st);f.c[sl]*=(1-.10*q*st)[...,None];A[sl]=np.maximum(A[sl],q)
            k=.22;pts=scatter(s,f,k*(.5+st),s.w*.02,s.w*.07,None,.2)
            while len(pts)<5: pts.append((r.uniform(-.42,.42)*f.a,r.uniform(-.42,.42)*f.b,s.w*r.uniform(.03,.07)))
            stampdots(f,pts,fn)
        if m>=1:
            for _ in range(r.integers(2,6)):
                an=r.uniform(-.7,.7)+(np.pi/2 if r.random()<.5 else 0);o=r.uniform(-.3,.3)*min(f.a,f.b);x=f.U*np.cos(an)+f.V*np.sin(an);y=-f.U*np.sin(an)+f.V*np.cos(an)-o+.12*fbm(x,0*x,0*x+o,.5,2,.5,s.seed)
                x0=r.uniform(-.6,.1)*f.a;x1=x0+r.uniform(.35,.9)*f.a;e=sst(x0,x0+.4,x)*(1-sst(x1-.5,x1,x));w=s.w*r.uniform(.008,.018)
                q=np.exp(-(y/w)**2)*e;f.ht-=.06*(.5+.6*st)*q;f.c*=(1-.14*q*st)[...,None];A=np.maximum(A,q)
        f.m[ch]=np.maximum(f.m[ch],(A>.25))
FL={'coloured-specks':coloured_specks,'smears':smears,'white-specks':white_specks,'translucent-veins':translucent_veins,'crackle-network':crackle_network,'powdery-film':powdery_film,'dark-centre-ring':dark_centre_ring,'orange-spots':orange_spots,'pinholes':pinholes,'crack':crack,'brown-outside-in':brown_outside_in,'colour-bled':colour_bled,'drag-lines':drag_lines,'layer-gap':layer_gap,'wrinkled-top':wrinkled_top,'mould-dimples':mould_dimples}
# ---- harmless decoration
def stamp(s,kind=None):
    r=s.r;f=s.f[0];kind=r.integers(5);R=min(s.w,s.h)*r.uniform(.2,.32);x,y=f.U,f.V;d=np.hypot(x,y);an=np.arctan2(y,x);lw=.07
    if kind==0: sd=np.minimum(abs(d-R)-lw,d-R*(.35+.28*np.cos(an*5)))
    elif kind==1: sd=np.minimum(np.maximum(abs(y*1.8)-(R-abs(x))*.9,-(abs(y)-.05)),abs(d-R*1.1)-lw*.6)
    elif kind==2: X=x/R;Y=-y/R+.2;sd=((X*X+Y*Y-.6)**3-X*X*Y**3)*R
    elif kind==3: sd=np.minimum(abs(d-R)-lw,np.minimum(abs(np.mod(an*8/6.283,1)-.5)*d*.7-.05,9)+(d>R*.8)*9+(d<R*.2)*9)
    else:
        q=9+0*x
        for i in range(6): q=np.minimum(q,abs(np.hypot(x-R*.5*np.cos(i*1.047),y-R*.5*np.sin(i*1.047))-R*.5)-lw*.55)
        sd=q
    a=1-sst(-.03,.03,sd);f.ht-=.09*a;f.c*=(1-.10*a)[...,None]
    if r.random()<.35: s.mix(f,a*.8,lin(hx('c9a24a')));f.gl+=.3*a
def seeds(s,kind):
    r=s.r
    col,rm,rM,de={'poppy':('2a2d38',.035,.05,3.5),'coffee':('3a2415',.025,.07,4),'oats':('d9bd8c',.10,.26,.6)}[kind]
    cc=lin(hx(col));de*=r.uniform(.6,1.6)
    for f in s.f:
        def fn(dx,dy,R,sl,p):
            th=p[0]*77;x=dx*np.cos(th)+dy*np.sin(th);y=(-dx*np.sin(th)+dy*np.cos(th))*(1.25+.4*np.sin(p[1]*50));R=R*.8;d=np.hypot(x,y)*(1+(.15*np.sin(4*np.arctan2(y,x)+p[0]*9) if kind!='poppy' else 0));a=1-sst(R*.8,R*1.05,d)
            c=cc*(.8+.5*abs(np.sin(p[1]*31)));f.c[sl]+=(c-f.c[sl])*(a*.92)[...,None];f.ht[sl]+=a*R*.25
            if kind=='oats': q=np.exp(-((d-R)/(R*.15))**2)*.25;f.c[sl]*=(1-q)[...,None];f.c[sl]*=(1-.25*a*np.exp(-(y/(.1*R))**2))[...,None]
        stampdots(f,[(u,v,R/.8) for u,v,R in scatter(s,f,de*(1.5 if f.i==1 else 1),rm,rM)],fn)
def shimmer(s,glit=False):
    r=s.r
    c=lin(hx(pick(r,['e8c25a','d9d9de','d98a5a','e0a0c0'])))
    for f in s.f:
        n=r.random(f.U.shape);n=ni.zoom(r.random((f.U.shape[0]//2+2,f.U.shape[1]//2+2)),2,order=0)[:f.U.shape[0],:f.U.shape[1]] if glit else n
        g=sst(-.2,.4,fbm(f.X,f.Y,f.Z,.4,3,.5,s.seed+151));th=.985 if glit else .93
        if f.i!=1 and glit: g=g*sst(.25,.5,f.Y/s.h)
        a=(n>th)*g;s.mix(f,.8*a,np.clip(c*1.3,0,.97));s.mix(f,g*.12,c);f.gl+=.5*a+.15*g
def micaline(s):
    k=s.r.integers(len(s.bounds));c=lin(hx(pick(s.r,['b08a35','3b3230','7a4a2a','5a5f66','8d6b2e'])))
    for f in s.f:
        if f.i==1: continue
        a=(1-sst(.015,.05,abs(f.bd[k]+.02*fbm(f.X,f.Y,f.Z,2,2,.5,s.seed))))*.85;s.mix(f,a,c);f.gl+=.3*a
def wiremarks(s):
    f=s.f[0];x=f.V+.04*(f.U-1)**2*.3;n=fbm(0*x,x,0*x,2.2,3,.6,s.seed);f.ht+=.012*n;f.c*=(1+.06*n)[...,None]
def dew(s):
    r=s.r
    for f in s.f:
        def fn(dx,dy,R,sl,p):
            R=R*.9;d=np.hypot(dx,dy*(1+.1*np.sin(p[0]*9)))/R;q=np.sqrt(np.clip(1-d*d,0,1));ins=d<1;f.ht[sl]=np.where(ins,f.ht[sl]+q*R*.55,f.ht[sl]);f.gl[sl]=np.where(ins,1.1,f.gl[sl]);f.c[sl]*=(1-ins*(.10+.12*np.clip(-dy/R-.1*dx/R,-1,1)))[...,None]
        stampdots(f,[(u,v,R/.9) for u,v,R in scatter(s,f,r.uniform(.8,2.5),.035,.17,None,.4)],fn)
def band(s):
    r=s.r;c=lin(hx(pick(r,['c9a777','f4f1ea','b08d5e','3c4a3e','e9ddc9','2e3440'])));w=r.uniform(.25,.5)*s.w;off=r.uniform(-.1,.1)*s.w;c2=lin(hx(pick(r,['3a3128','7d6a4f','efe6d2','8a2f2f'])))
    for f in s.f:
        if f.i==2: continue
        x=f.U-off;a=1-sst(w/2-.015,w/2+.015,abs(x));f.c*=(1-.25*np.exp(-((abs(x)-w/2-.04)/.05)**2)*(1-a))[...,None];n=fbm(f.U,f.V,0*f.U,6,3,.6,s.seed);cc=c*(1+.06*n)[...,None];f.c+=(cc-f.c)*a[...,None];f.ht=np.where(a>.5,.035,f.ht);f.gl=np.where(a>.5,.1,f.gl);f.soap=np.where(a>.5,0,f.soap).astype(F)
        if f.i==0:
            for yy,l in ((-.1,.6),(.12,.4),(.3,.5)):
                q=(abs(f.V-yy*f.b)<.035*f.b)*(abs(x)<l*w/2)*(np.sin(x*28+3*np.sin(x*9+yy*9))>-.4)*(np.sin(f.V*30+x*11)>-.7);s.mix(f,q*.8,c2)
            q=abs(abs(x)-w*.44)<.02;s.mix(f,q*.6,c2)
def lint(s):
    r=s.r
    for f in s.f[:2]:
        H,W=f.U.shape;im=Image.new('L',(W*2,H*2));d=ImageDraw.Draw(im)
        for _ in range(r.integers(3,9)):
            p=[np.array([r.uniform(0,2*W),r.uniform(0,2*H)])];a=r.uniform(0,6.28);ka=r.normal(0,.06)
            for _ in range(r.integers(12,50)): a+=ka+r.normal(0,.08);p.append(p[-1]+np.array([np.cos(a),np.sin(a)])*f.px*.09)
            d.line([tuple(q) for q in p],fill=255,width=max(2,int(f.px*.035)))
        a=np.asarray(im.resize((W,H),Image.BOX),F)/255;c=lin(hx(pick(r,['f0f0f0','3a4a6a','8a2a3a','22252c'])));s.mix(f,a*.85,c)
        f.ht+=.02*a
