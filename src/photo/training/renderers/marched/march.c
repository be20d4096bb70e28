#include <math.h>
#include <stdlib.h>
#include <string.h>
#include <stdint.h>
typedef struct{float x,y,z;}V;
static inline V v3(float a,float b,float c){V r={a,b,c};return r;}
static inline V add(V a,V b){return v3(a.x+b.x,a.y+b.y,a.z+b.z);}
static inline V sub(V a,V b){return v3(a.x-b.x,a.y-b.y,a.z-b.z);}
static inline V mul(V a,float s){return v3(a.x*s,a.y*s,a.z*s);}
static inline V had(V a,V b){return v3(a.x*b.x,a.y*b.y,a.z*b.z);}
static inline float dot(V a,V b){return a.x*b.x+a.y*b.y+a.z*b.z;}
static inline V crs(V a,V b){return v3(a.y*b.z-a.z*b.y,a.z*b.x-a.x*b.z,a.x*b.y-a.y*b.x);}
static inline V nrm(V a){return mul(a,1.f/sqrtf(dot(a,a)+1e-20f));}
static inline V mixv(V a,V b,float t){return v3(a.x+(b.x-a.x)*t,a.y+(b.y-a.y)*t,a.z+(b.z-a.z)*t);}
static inline float cl(float x){return x<0?0:x>1?1:x;}
static inline float mixf(float a,float b,float t){return a+(b-a)*t;}
static inline float ss(float a,float b,float x){float t=cl((x-a)/(b-a));return t*t*(3-2*t);}
static inline float mx(float a,float b){return a>b?a:b;}
static inline float mn(float a,float b){return a<b?a:b;}
static inline uint32_t hs(uint32_t x){x^=x>>16;x*=0x7feb352dU;x^=x>>15;x*=0x846ca68bU;x^=x>>16;return x;}
static inline uint32_t h3(int x,int y,int z,int s){return hs((uint32_t)x*73856093u^(uint32_t)y*19349663u^(uint32_t)z*83492791u^(uint32_t)s*2654435761u);}
static inline float u01(uint32_t h){return (h>>8)*(1.f/16777216.f);}
static unsigned char P[512];static int pinit=0;
static void initp(){uint32_t s=12345;for(int i=0;i<256;i++)P[i]=i;for(int i=255;i>0;i--){s=hs(s+i);int j=s%(i+1);unsigned char t=P[i];P[i]=P[j];P[j]=t;}for(int i=0;i<256;i++)P[256+i]=P[i];pinit=1;}
static inline int fl(float x){int i=(int)x;return i-(x<i);}
static inline float gr(int h,float x,float y,float z){h&=15;float u=h<8?x:y,v=h<4?y:(h==12||h==14?x:z);return ((h&1)?-u:u)+((h&2)?-v:v);}
static float pn(float x,float y,float z){int X=fl(x),Y=fl(y),Z=fl(z);x-=X;y-=Y;z-=Z;X&=255;Y&=255;Z&=255;
 float u=x*x*x*(x*(x*6-15)+10),v=y*y*y*(y*(y*6-15)+10),w=z*z*z*(z*(z*6-15)+10);
 int A=P[X]+Y,AA=P[A]+Z,AB=P[A+1]+Z,B=P[X+1]+Y,BA=P[B]+Z,BB=P[B+1]+Z;
 float a=mixf(gr(P[AA],x,y,z),gr(P[BA],x-1,y,z),u),b=mixf(gr(P[AB],x,y-1,z),gr(P[BB],x-1,y-1,z),u);
 float c=mixf(gr(P[AA+1],x,y,z-1),gr(P[BA+1],x-1,y,z-1),u),d=mixf(gr(P[AB+1],x,y-1,z-1),gr(P[BB+1],x-1,y-1,z-1),u);
 return mixf(mixf(a,b,v),mixf(c,d,v),w);}
static float fbm(V p,int o){float a=.5f,s=0;for(int i=0;i<o;i++){s+=a*pn(p.x,p.y,p.z);p=mul(p,2.03f);p.x+=17.3f;p.y+=5.1f;a*=.5f;}return s;}
static float pns(V p,float f,int seed){return pn(p.x*f+(seed%97)*1.37f,p.y*f+(seed%89)*2.11f,p.z*f+(seed%83)*.71f);}

typedef struct{int type,slot,region,seed;float p[10];float col[3];float pad;}Fx;
typedef struct{int pattern,ncol,nfx,seed;float col[6][3];float scale,warp,soft,hy,hz,mott,rough,spec;float bz[5];float wav;float par[6];Fx fx[8];}Soap;
typedef struct{int prim,mat,seed,flaw;float c[3];float R[9];float h[3];float r,toptype,topamp,topf,xoff,bump;float col[3];float col2[3];float rough,spec;float deform;}Obj;
typedef struct{int W,H,nobj,ground;float cp[3],cf[3],cr[3],cu[3];float tanf;float L[3],Lc[3];float lk;float sky[3],bnc[3];float wdir[3],wup[3];float wsx,wsy,wI;
 float gc[3][3];float gs,grot,grough,gspec;int gseed,gobo,gpad,edgeaa;float gobop[4];float wallc[3],wally;float gbump;float wrap;Soap soap[2];}Scene;

static const Scene*S;static const Obj*O;
typedef struct{V alb;float rough,spec,h,occ,w[2];float fl;}Sf;

/* ---- sdf ---- */
static float topH(const Obj*o,float x,float y){int t=(int)o->toptype;float f=o->topf;float sd=o->seed%61;
 if(t==0)return 0;
 if(t==1){float a=pn(x*f*.6f+sd,y*f*.6f,sd*.3f);float b=pn(x*f+2*a,y*f+2.5f*a+sd,1.7f);return o->topamp*(1.6f*fabsf(b)+.5f*a);} /* spoon peaks */
 if(t==2){float a=pn(x*.5f*f+sd,y*.4f*f,2.2f);float e=y/(o->h[1]);return o->topamp*(.6f*sinf(x*f*1.9f+5*a+sd)*(1-e*e)+.5f*(1-e*e)+.2f*pn(x*2*f,y*2*f,sd));} /* waves with ridge*/
 if(t==3){float e=y/(o->h[1]);float a=pn(x*f+sd,y*f,.4f);return o->topamp*(1.1f*(1-fabsf(e))+.5f*a*(1-e*e));}
 if(t==4){float a=pn(x*.35f*f+sd,y*.5f*f,.9f);return o->topamp*.35f*a;}
 return 0;}
static float sdf(const Obj*o,V p,int fine){const float*h=o->h;float r=o->r;
 switch(o->prim){
 case 0:{ if(fine){float lim=o->deform*1.6f+o->topamp*1.8f;float ax=fabsf(p.x)-h[0],ay=fabsf(p.y)-h[1],az=fabsf(p.z)-h[2];float dm=mx(ax,mx(ay,az));if(dm>lim+.15f)return dm-lim*.9f;if(o->toptype>0&&p.z>-h[2]*.3f)p.z-=topH(o,p.x,p.y)*ss(-h[2]*.2f,h[2],p.z);
   if(o->deform>0){float f=o->deform;float dz=1.25f*f*pn(p.x*.3f+o->seed%31,p.y*.33f,p.z*.36f+o->seed%29);p.x+=p.x>0?dz:-dz;p.y+=p.y>0?dz:-dz;p.z+=.6f*(p.z>0?dz:-dz);}}
  V q=v3(fabsf(p.x)-h[0]+r,fabsf(p.y)-h[1]+r,fabsf(p.z)-h[2]+r);
  V m=v3(mx(q.x,0),mx(q.y,0),mx(q.z,0));return sqrtf(dot(m,m))+mn(mx(q.x,mx(q.y,q.z)),0)-r;}
 case 1:{V a=v3(p.x/h[0],p.y/h[1],p.z/h[2]);float k=sqrtf(dot(a,a));V b=v3(a.x/h[0],a.y/h[1],a.z/h[2]);float k2=sqrtf(dot(b,b))+1e-9f;float d=k*(k-1)/k2;if(k<1e-3f)d=-mn(h[0],mn(h[1],h[2]));
   if(fine&&o->deform>0)d+=o->deform*pn(p.x*1.2f+o->seed%19,p.y*1.2f,p.z*1.2f);return d;}
 case 2:{float d1=sqrtf(p.x*p.x+p.y*p.y)-h[0]+r,d2=fabsf(p.z)-h[2]+r;float a=mx(d1,0),b=mx(d2,0);return mn(mx(d1,d2),0)+sqrtf(a*a+b*b)-r;}
 case 3:{float a=sqrtf(p.x*p.x+p.y*p.y)-(h[0]-h[2]);return sqrtf(a*a+p.z*p.z)-h[2];}
 case 4:{float k=cl((p.z+h[2])/(2*h[2]));float rr=h[0]*(.45f+.5f*sqrtf(k));float d=fabsf(sqrtf(p.x*p.x+p.y*p.y)-rr+.12f)-.13f;float fl_=fabsf(p.z+h[2]-.12f)-.12f;float ds=mx(d*.75f,fabsf(p.z)-h[2]);float df=mx(fl_,sqrtf(p.x*p.x+p.y*p.y)-h[0]*.45f);return mn(ds,df)-.03f;}
 case 5:{float rr=sqrtf(p.x*p.x+p.y*p.y);float z0=-h[2]+2*h[2]*ss(.55f,1.f,rr/h[0])*.8f;float d=fabsf(p.z-z0)-.12f;return mx(d*.7f,rr-h[0])-.05f;}
 case 6:{float z=p.z<-h[2]+r?-h[2]+r:p.z>h[2]-r?h[2]-r:p.z;float dz=p.z-z;return sqrtf(p.x*p.x+p.y*p.y+dz*dz)-r;}
 case 7:{float rr=sqrtf(p.x*p.x+p.y*p.y);float d=mx(fabsf(rr-h[0]+.15f)-.14f,fabsf(p.z)-h[2]);float b=mx(rr-h[0],fabsf(p.z+h[2]-.15f)-.15f);return mn(d,b)-.03f;}
 case 8:{/* leaf: bent lens */ float t=p.x/h[0];float w=h[1]*(1-t*t);p.z-=.25f*h[0]*t*t*o->deform;float d=mx(fabsf(p.y)-mx(w,0),fabsf(p.x)-h[0]);return mx(d*.6f,fabsf(p.z+.3f*fabsf(p.y)*0)-h[2]);}
 }return 1e9;}
static inline V tol(const Obj*o,V d){return v3(o->R[0]*d.x+o->R[1]*d.y+o->R[2]*d.z,o->R[3]*d.x+o->R[4]*d.y+o->R[5]*d.z,o->R[6]*d.x+o->R[7]*d.y+o->R[8]*d.z);}
static inline V tow(const Obj*o,V d){return v3(o->R[0]*d.x+o->R[3]*d.y+o->R[6]*d.z,o->R[1]*d.x+o->R[4]*d.y+o->R[7]*d.z,o->R[2]*d.x+o->R[5]*d.y+o->R[8]*d.z);}
static inline V oc(const Obj*o){return v3(o->c[0],o->c[1],o->c[2]);}
static int slab(V ro,V rd,const float*h,float m,float mt,float*t0,float*t1){float a=-1e9,b=1e9;const float*R=&ro.x,*D=&rd.x;
 for(int i=0;i<3;i++){float hh=h[i]+m+(i==2?mt:0);float d=D[i];if(fabsf(d)<1e-7f)d=1e-7f;float iv=1/d;float x=(-hh-R[i])*iv,y=(hh-R[i])*iv;if(x>y){float t=x;x=y;y=t;}if(x>a)a=x;if(y<b)b=y;}
 *t0=a;*t1=b;return a<b&&b>0;}
static float trace(const Obj*o,V ro,V rd,float tmax){V lo=tol(o,sub(ro,oc(o))),ld=tol(o,rd);float a,b;float hh[3]={o->h[0],o->h[1],o->h[2]};if(o->prim==2||o->prim==4||o->prim==5||o->prim==7||o->prim==3)hh[1]=hh[0];
 if(!slab(lo,ld,hh,o->deform+.02f+(o->prim>3?.15f:0),o->topamp*1.7f+(o->prim==8?o->h[0]*.3f:0),&a,&b))return -1;float t=a>0?a:0;if(t>tmax)return -1;float k=o->topamp>0?.7f:.95f;if(o->prim==1&&(o->h[0]/o->h[2]>2))k=.7f;
 for(int i=0;i<90&&t<b;i++){float d=sdf(o,add(lo,mul(ld,t)),1);if(d<.0012f+t*.00004f)return t<tmax?t:-1;t+=d*(o->topamp>0&&lo.z+ld.z*t<-.25f*o->h[2]?.95f:k);}return -1;}
static V *LD;static float *RB,*RA;
static float softsh(V p,V n,int self){float res=1;V L=v3(S->L[0],S->L[1],S->L[2]);
 for(int i=0;i<S->nobj;i++){const Obj*o=&O[i];V dw=sub(p,oc(o));float tb=-dot(dw,L);if(tb<-RB[i]||dot(dw,dw)-tb*tb>RB[i]*RB[i])continue;V lo=tol(o,dw),ld=LD[i];float hh[3]={o->h[0],o->h[1],o->h[2]};if(o->prim==2||o->prim==4||o->prim==5||o->prim==7||o->prim==3)hh[1]=hh[0];
  float a,b;float sz=mx(hh[0],mx(hh[1],hh[2]));float mg=mn(2.5f,sz*1.2f)*mn(1.f,6/S->lk);if(!slab(lo,ld,hh,mg,0,&a,&b))continue;float t=mx(a,i==self?.12f:.03f);int big=sz>1;
  for(int k=0;k<22&&t<b;k++){float d=sdf(o,add(lo,mul(ld,t)),0)+(i==self?.01f:0);float r=.5f+.5f*S->lk*d/(t+.1f);if(r<res)res=r;if(res<=0)return 0;float st=fabsf(d)*.9f;float ms=big?.12f:.03f;t+=st<ms?ms:st;}}
 res=cl(res);return res*res*(3-2*res);}
static float aoc(V p,V n,int self){float o=0,w=1;float d4[4]={.12f,.4f,1.0f,2.2f};int ls[64],nl=0;for(int i=0;i<S->nobj&&nl<64;i++){V l=sub(p,oc(&O[i]));float R=RA[i]+(RA[i]<.8f?1.2f:4.4f);if(dot(l,l)<R*R)ls[nl++]=i;}
 for(int k=0;k<4;k++){float t=d4[k];V q=add(p,mul(n,t));float d=q.z;for(int k2=0;k2<nl;k2++){int i=ls[k2];const Obj*ob=&O[i];V l=sub(q,oc(ob));float R=RA[i];if(dot(l,l)>(R+t)*(R+t))continue;float e=sdf(ob,tol(ob,l),0);if(i==self&&e<t*.9f)e=t;if(e<d)d=e;}
  if(d<t)o+=w*(t-d)/t;w*=.7f;}return cl(1-o*.42f);}

/* ---- helpers for patterns ---- */
typedef struct{float q,d,r;uint32_t id;V c;}Sp;
static Sp spot3(V p,float cell,float prob,float r0,float r1,int seed,V st){Sp best;best.q=-1;best.d=9;best.r=1;best.id=0;V q=mul(p,1/cell);int X=fl(q.x-.5f),Y=fl(q.y-.5f),Z=fl(q.z-.5f);
 for(int i=0;i<2;i++)for(int j=0;j<2;j++)for(int k=0;k<2;k++){uint32_t h=h3(X+i,Y+j,Z+k,seed);if(u01(h)>prob)continue;uint32_t a=hs(h+1),b=hs(h+2),c=hs(h+3),d=hs(h+4);
  V ce=v3((X+i+u01(a))*cell,(Y+j+u01(b))*cell,(Z+k+u01(c))*cell);float ur=u01(d);float r=r0+(r1-r0)*ur*ur;V dl=sub(p,ce);
  if(st.x!=1||st.y!=1||st.z!=1){float an=u01(hs(h+5))*6.28f,cs=cosf(an),sn=sinf(an);float x=dl.y*cs-dl.z*sn,y=dl.y*sn+dl.z*cs;dl.y=x*st.y;dl.z=y*st.z;dl.x*=st.x;}
  float dd=sqrtf(dot(dl,dl));float qv=1-dd/r;if(qv>best.q){best.q=qv;best.d=dd;best.r=r;best.id=h;best.c=dl;}}
 return best;}
static void wor2(float x,float y,int seed,float*f1,float*f2,uint32_t*id){int X=fl(x),Y=fl(y);*f1=9;*f2=9;for(int i=-1;i<2;i++)for(int j=-1;j<2;j++){uint32_t h=h3(X+i,Y+j,7,seed);float a=X+i+.1f+.8f*u01(h)-x,b=Y+j+.1f+.8f*u01(hs(h+9))-y;float d=sqrtf(a*a+b*b);if(d<*f1){*f2=*f1;*f1=d;*id=h;}else if(d<*f2)*f2=d;}}
typedef struct{V c;int reg,nb;float bd;V nc;}Pt; /* colour, region, neighbour, border distance */
static inline V colr(const Soap*s,int i){return v3(s->col[i][0],s->col[i][1],s->col[i][2]);}
static float field(const Soap*s,V p,int pat){float f=s->scale,sd=s->seed%101;p.y*=s->par[4];p.z*=s->par[5];V q=v3(p.x*.22f*f+sd,p.y*f,p.z*f);{float e=.09f*s->warp;q.y+=e*pn(q.y*4.5f,q.z*4.5f,q.x+3);q.z+=e*pn(q.y*4.5f+7,q.z*4.5f,q.x+1);}
 float a=pn(q.x,q.y*.9f,q.z*.9f+sd),b=pn(q.x+9.1f,q.y+3.3f,q.z+7.7f);
 float yy=q.y+s->warp*a,zz=q.z+s->warp*b;
 switch(pat){
 case 3:{float c=pn(yy*1.1f+4,zz*1.1f+sd,q.x);float d=pn(yy*2.3f+1,zz*2.3f,q.x*1.5f);return s->par[0]*(c+.33f*d)+s->par[1];}
 case 4:{float g=sinf(p.z*s->par[2]+3*a+sd)*s->par[3];return s->par[0]*.5f*(yy+g)+s->par[1];}
 case 6:{float r=sqrtf((yy-s->par[2])*(yy-s->par[2])+(zz-s->par[3])*(zz-s->par[3])*1.4f);return r*s->par[0]+s->par[1];}
 case 8:{float y0=yy-.3f*s->par[2],z0=zz-.3f*s->par[3];float r=sqrtf(y0*y0+z0*z0);return s->ncol*(atan2f(z0,y0)/6.2832f+.5f)+r*s->par[0]*.8f;}
 }return 0;}
static Pt pat(const Soap*s,V p,int needg){Pt o;o.reg=0;o.nb=0;o.bd=9;float sd=s->seed%101;int n=s->ncol;int pt=s->pattern;
 o.c=colr(s,0);o.nc=o.c;
 if(pt==0)return o;
 if(pt==2){float t=cl((p.z+s->hz)/(2*s->hz)+.06f*pn(p.x*.3f+sd,p.y*.5f,p.z*.5f))*(n-1);int i=(int)t;if(i>n-2)i=n-2;float f=t-i;o.c=mixv(colr(s,i),colr(s,i+1),f);o.reg=i;return o;}
 if(pt==1||pt==7){int k=pt==7?1:n-1;float best=9;int reg=0;float sg=0;for(int i=0;i<k;i++){float zb=s->bz[i]+s->wav*(1.3f*pn(p.y*.45f+sd+i*7.3f,p.x*.16f,i*3.1f)+.5f*pn(p.y*1.3f+i*3.3f,p.x*.3f+sd,1.1f)+.12f*pn(p.y*4+i,p.x*1.5f,sd));float d=p.z-zb;if(d>0)reg=i+1;if(fabsf(d)<best){best=fabsf(d);sg=d;o.nb=d>0?i:i+1;}}
  o.reg=reg;o.bd=best;
  if(pt==7&&reg==1){float v=field(s,p,3);int m=n-1;int i=fl(v);float f=v-i;int r0=1+((i%m)+m)%m;int r1=f>.5f?1+(((i+1)%m)+m)%m:1+(((i-1)%m)+m)%m;float bd=mn(f,1-f)/(s->par[0]*s->scale*1.2f);o.reg=r0;if(bd<o.bd){o.bd=bd;o.nb=r1;}else o.nb=0;}
 }else if(pt==5){o.c=colr(s,0);float f=s->scale;for(int k=1;k<n;k++){V q=v3(p.x*.2f*f+sd+k*5.3f,p.y*f,p.z*f);float a=pn(q.x,q.y,q.z+k),b=pn(q.x+4,q.y+8,q.z+k*2);float v=pn(q.x,q.y*.8f+s->warp*a+k*3,q.z*.8f+s->warp*b);float w=s->par[2]*(.4f+.8f*fabsf(pn(q.y*.7f+k,q.z*.7f,sd)))*f;float g=.55f*f;float d=(fabsf(v)-w*g)/g/f;float m=1-ss(-s->soft,s->soft,d*1.f);if(m>.5f)o.reg=k;if(fabsf(d)<o.bd){o.bd=fabsf(d);o.nb=m>.5f?0:k;}o.c=mixv(o.c,colr(s,k),m);}o.nc=colr(s,o.nb);return o;}
 else{float v=field(s,p,pt);int i=fl(v);float f=v-i;o.reg=((i%n)+n)%n;o.nb=f>.5f?(((i+1)%n)+n)%n:(((i-1)%n)+n)%n;float g;
  if(needg){float e=.03f;float v1=field(s,v3(p.x,p.y+e,p.z),pt),v2=field(s,v3(p.x,p.y,p.z+e),pt);g=sqrtf((v1-v)*(v1-v)+(v2-v)*(v2-v))/e;if(g>12)g=12;if(g<.3f)g=.3f;}else g=mx(.8f,s->par[0]*s->scale*.9f);
  o.bd=mn(f,1-f)/g;}
 o.c=colr(s,o.reg);o.nc=colr(s,o.nb);float m=.5f*(1-ss(0,s->soft,o.bd));o.c=mixv(o.c,o.nc,m);return o;}

static float lum(V c){return .2126f*c.x+.7152f*c.y+.0722f*c.z;}
/* face: 0 = cut (x), 1 = side (y), 2 = top(+z), 3 = bottom */
static void fx1(const Fx*e,const Obj*o,const Soap*s,V p,V lp,V n,int face,Pt*pt,Sf*S_,int ho,V base){
 const float*P_=e->p;int sd=e->seed;V ec=v3(e->col[0],e->col[1],e->col[2]);float w=0;
 float u,v;if(face==0){u=p.y;v=p.z;}else if(face==1){u=p.x;v=p.z;}else{u=p.x;v=p.y;}
 float third=face==0?lp.x:0;
 switch(e->type){
 case 1:{if(ho)return;if(e->region>=0&&pt->reg!=e->region)return;float m=P_[4]>0?ss(-.15f,.15f,pns(lp,.5f,sd)):1;Sp q=spot3(lp,P_[0],P_[1]*m,P_[2],P_[3],sd,v3(1,1,1));
   w=ss(0,.28f,q.q+.18f*pns(lp,9,sd));V c=mul(ec,.8f+.4f*u01(q.id));S_->alb=mixv(S_->alb,c,w*P_[5]);break;}
 case 2:{if(ho||face!=0)return;float an=P_[4]+.25f*pn(u*.15f,v*.15f,sd);float cs=cosf(an),sn=sinf(an);float a=(u*cs+v*sn),b=(-u*sn+v*cs);float Lg=P_[0],ch=P_[1];float best=0;int X=fl(a/Lg),Y=fl(b/ch);
   for(int i=-1;i<2;i++)for(int j=-1;j<2;j++){uint32_t h=h3(X+i,Y+j,o->seed%7,sd);float hx=(X+i+u01(hs(h+1)))*Lg,hy=(Y+j+.5f+.6f*(u01(hs(h+2))-.5f))*ch;float dens=P_[2]*ss(-.25f,.2f,pn(hx*.35f+sd%17,hy*.35f,2.f));if(u01(h)>dens)continue;
     float ln=Lg*(.25f+.75f*u01(hs(h+3)));float wd=P_[3]*(.5f+.8f*u01(hs(h+4)));float t=(a-hx)/ln;float db=b-hy-.08f*ln*t*(u01(hs(h+6))-.5f);float tt=t<0?0:t>1?1:t;float da=(t<0?-t*ln:(t>1?(t-1)*ln:0));float ww=wd*(1-.75f*tt);float d=sqrtf(db*db+da*da);float k=(1-ss(ww*.6f,ww*1.15f,d))*(1-.8f*tt)*(t>=-1&&t<=1.1f);if(k>best)best=k;}
   best*=cl(.75f+.5f*pn(a*2,b*18,sd));w=best;S_->alb=mixv(S_->alb,ec,cl(w*P_[5]));w=cl(w*1.6f);break;}
 case 3:{float m=P_[4]>0?ss(-.2f,.1f,pns(lp,.45f,sd)):1;V wq=add(lp,v3(.05f*pns(lp,7,sd),.05f*pns(lp,8,sd+3),.05f*pns(lp,7,sd+5)));Sp q=spot3(wq,P_[0],P_[1]*m,P_[2],P_[3],sd,v3(1,P_[6],1));
   w=ss(.0f,.22f,q.q);S_->h+=.012f*ss(0,.5f,q.q);if(ho)return;float g=.93f+.14f*pns(lp,22,sd);S_->alb=mixv(S_->alb,mul(ec,g),w*P_[5]);if(w>.1f){S_->rough=mixf(S_->rough,.6f,w);}S_->occ*=1-.25f*ss(-.25f,0,q.q)*(1-w);break;}
 case 4:{float f=P_[0];V q=mul(lp,f);q.x*=.5f;float a=pns(q,1.f,sd),b=pns(q,1.f,sd+11);V r=add(q,v3(0,1.1f*a,1.1f*b));
   float l1=fabsf(pns(r,.8f,sd+2)),l2=fabsf(pns(r,1.7f,sd+7));float m2=ss(.25f,.02f,l1);float wd=P_[1];float fine=.25f*pns(lp,4,sd);
   float r1=1-ss(wd*.35f,wd*1.1f,l1+fine*wd),r2=(1-ss(wd*.4f,wd*1.3f,l2*.8f+fine*wd))*m2;w=mx(r1,r2*.85f);w*=ss(-.35f,-.05f,pns(lp,.28f,sd+5)+P_[3]);
   S_->h-=.006f*w;if(ho)return;V c=S_->alb;V dk=P_[4]>0?mixv(c,v3(mn(1,c.x*1.15f+.05f),mn(1,c.y*1.12f+.05f),mn(1,c.z*1.1f+.05f)),1):v3(powf(c.x,1.25f)*.78f,powf(c.y,1.33f)*.76f,powf(c.z,1.45f)*.74f);
   S_->alb=mixv(c,dk,w*P_[2]);S_->rough=mixf(S_->rough,.2f,w*.7f);break;}
 case 5:{float f=P_[0];V q=mul(lp,1);float x=(u+.12f*pn(u*2.2f,v*2.2f,sd%33))*f,y=(v+.12f*pn(u*2.2f+9,v*2.2f,sd%33))*f;float f1,f2;uint32_t id;wor2(x,y,sd+face,&f1,&f2,&id);float d=(f2-f1);float lw=P_[1]*f;float l=1-ss(lw*.35f,lw*1.2f,d);
   float g1,g2;uint32_t i2;wor2(x*2.1f+5,y*2.1f,sd+3,&g1,&g2,&i2);float l2=(1-ss(lw*.3f,lw*1.4f,g2-g1))*(u01(id)>.45f);l=mx(l,l2*.7f);
   float m=ss(P_[3]-.12f,P_[3]+.05f,lum(base))*ss(-.3f,0,pns(q,.3f,sd)+P_[4]);w=l*m;S_->h-=.004f*w;if(ho)return;V c=S_->alb;V dk=v3(powf(c.x,1.3f)*.72f,powf(c.y,1.45f)*.68f,powf(c.z,1.6f)*.62f);S_->alb=mixv(c,dk,w*P_[2]);
   /* also cell tint */ float ct=(u01(id)-.5f)*.05f*m;S_->alb=mul(S_->alb,1+ct);w=m>.4f?cl(w*1.2f):0;break;}
 case 6:{float edge=9;{float dx=o->h[0]-fabsf(p.x),dy=o->h[1]-fabsf(p.y),dz=o->h[2]-fabsf(p.z);if(face==0)edge=mn(dy,dz);else if(face==1)edge=mn(dx,dz);else edge=mn(dx,dy);}
   float top=face==2?1:0;float fall=face==2?0:ss(P_[1],0,o->h[2]-p.z)*.9f;float eg=P_[2]*ss(.9f,.0f,edge+.25f*pns(lp,1.5f,sd));float cov=mx(mx(top*P_[5],fall),eg);
   float nz=.5f+.9f*fbm(mul(add(p,v3(sd%50,0,0)),P_[3]),4);float a=ss(.3f,.72f,nz+.3f*(cov-.62f))*ss(.05f,.6f,cov);float gr_=.82f+.3f*pns(p,14,sd)+.25f*pns(p,41,sd);w=cl(a*gr_);
   if(ho){S_->h+=.006f*w;return;}S_->h+=.006f*w;V c=mixv(v3(.86f,.87f,.88f),v3(lum(S_->alb),lum(S_->alb),lum(S_->alb)),.1f);S_->alb=mixv(S_->alb,c,cl(w*P_[4]));S_->rough=mixf(S_->rough,.85f,a);S_->spec*=1-.8f*a;w=cl(a*1.1f);break;}
 case 7:{if(ho)return;float hy=s->hy*P_[0],hz=s->hz*P_[1];float yy=lp.y-P_[2],zz=lp.z-P_[3];float el=sqrtf(yy*yy/(hy*hy)+zz*zz/(hz*hz))+.13f*pns(lp,.5f,sd)+.05f*pns(lp,1.6f,sd);if(face!=0){return;}
   w=1-ss(1-P_[4],1+P_[4],el);V c=S_->alb;V dk=v3(powf(c.x,1.1f)*.84f,powf(c.y,1.18f)*.76f,powf(c.z,1.3f)*.66f);S_->alb=mixv(c,dk,w*P_[5]);S_->rough=mixf(S_->rough,S_->rough*.65f,w);float rim=ss(.75f,1,el)*(1-ss(1,1.25f,el))*P_[6];S_->alb=mixv(S_->alb,v3(.9f,.88f,.83f),rim*.25f);w=cl(w*1.25f);break;}
 case 8:{Sp q=spot3(lp,P_[0],P_[1],P_[2],P_[3],sd,v3(1,1,1));float nz=.35f*pns(lp,2.2f,sd)+.2f*pns(lp,6,sd);float core=ss(.0f,.35f,q.q*1.f+nz*.8f-.05f);if(q.q<-.5f)core=0;Sp q2=spot3(lp,P_[0],P_[1],P_[2]*P_[6],P_[3]*P_[6],sd,v3(1,1,1));float halo=P_[6]>1?ss(0,.6f,q2.q+nz*.5f)*.42f:0;
   if(ho){return;}V h=had(S_->alb,v3(.93f,.72f,.36f));S_->alb=mixv(S_->alb,h,halo);float vr=.7f+.6f*u01(q.id);V c=v3(ec.x*vr,ec.y*vr,ec.z*vr);S_->alb=mixv(S_->alb,c,core*P_[5]);if(halo>.1f)S_->rough=mixf(S_->rough,.18f,halo);w=mx(core,halo*.9f);break;}
 case 9:{if(face==0&&P_[6]>0)return;float m=P_[4]>0?ss(-.1f,.25f,pns(lp,.45f,sd)):1;Sp q=spot3(lp,P_[0],P_[1]*m,P_[2],P_[3],sd,v3(1,1,1));float in=ss(-.12f,.3f,q.q);S_->h-=.55f*q.r*ss(-.2f,.75f,q.q)+0;S_->h+=.06f*q.r*ss(-.6f,-.15f,q.q)*(1-ss(-.15f,.1f,q.q));if(ho)return;
   S_->alb=mul(S_->alb,1-P_[5]*ss(.02f,.35f,q.q));S_->occ*=1-.55f*in;S_->spec*=1-in;w=ss(-.12f,.15f,q.q);break;}
 case 10:{float along=face==2?lp.x:lp.z;float y0=P_[0]+P_[6]*p.x;float wob=P_[1]*(1.4f*pn(lp.x*.35f+sd%40,lp.z*.5f,.5f)+.5f*pn(lp.x*1.4f,lp.z*1.6f,sd%30)+.18f*pn(lp.x*6,lp.z*6,sd%20));float d,dep;float len=1;
   if(P_[5]<.5f){/* vertical plane crack from top*/ d=lp.y-y0-wob;dep=(s->hz-lp.z)/P_[3];if(face==1||face==3)return;len=ss(P_[7],P_[7]+1.2f,p.x+o->h[0])*ss(P_[8],P_[8]+1.2f,o->h[0]-p.x);if(face==0)len=1;}
   else{/* on the cut face, from an edge across, or on a side*/ if(face!=0)return; float an=P_[6];float a=p.y*cosf(an)+p.z*sinf(an),b=-p.y*sinf(an)+p.z*cosf(an);float tot=s->hy+s->hz*.3f;dep=(a+tot)/(P_[3]*2*tot);d=b-P_[0]-P_[1]*(1.2f*pn(a*.5f+sd%40,.3f,.5f)+.6f*pn(a*1.7f,.7f,sd%30)+.25f*pn(a*6.5f,.2f,sd%20));}
   if(dep<-.5f)dep=-.5f;float ww=P_[2]*(1-cl(dep))*len*(.75f+.7f*pn(lp.x*1.1f+3,lp.z*1.1f+(face!=2?lp.y:0)*.0f,sd%10));if(ww<=.002f)return;
   float br=.35f*ww*pns(p,7,sd);float ad=fabsf(d)+br;float in=1-ss(ww*.55f,ww*1.0f,ad);S_->h-=.3f*ww*(1-ss(0,ww*1.15f,ad));S_->h+=.10f*ww*(1-ss(ww,ww*3.f,ad));if(ho)return;V dk=mul(had(S_->alb,v3(.62f,.5f,.42f)),.28f);S_->alb=mixv(S_->alb,dk,in*P_[4]);S_->occ*=1-.75f*in;S_->spec*=1-in;w=in;break;}
 case 11:{if(ho)return;float hy=s->hy,hz=s->hz;float dy=hy-fabsf(lp.y),dz=hz-fabsf(lp.z);float d=mn(dy,dz);float k=1.f;float dd=-logf(expf(-dy*2.2f)+expf(-dz*2.2f)*(lp.z<0?P_[4]:1)+1e-6f)/2.2f;d=mx(0,dd);if(face!=0)d=0;float L=P_[0]*(1+.5f*pns(lp,.4f,sd)+.25f*pns(lp,1.1f,sd));w=P_[3]>.5f?1-ss(L*.6f,L*1.5f,d):expf(-d/mx(L,.05f));w=cl(w);V c=mixv(S_->alb,had(mixv(S_->alb,v3(.9f,.9f,.9f),.25f),ec),w*P_[1]);S_->alb=c;w=cl(w*1.15f*mn(1,P_[1]*1.2f));break;}
 case 12:{if(ho)return;if(pt->nb==pt->reg)return;int bl=e->region;float L=P_[0]*(.7f+.9f*(.5f+pns(lp,.7f,sd)));L=mx(L,.04f);if(pt->nb==bl&&pt->reg!=bl){float k=expf(-pt->bd/L);k*=.85f+.4f*pns(lp,2.5f,sd);w=cl(k);S_->alb=mixv(S_->alb,mixv(pt->nc,mul(pt->nc,.95f),.3f),cl(w*P_[1]));w=w>.22f?cl(w*1.6f):0;}
    else if(pt->reg==bl){float k=expf(-pt->bd/(L*.35f));S_->alb=mixv(S_->alb,mixv(pt->nc,S_->alb,.5f),cl(k*.8f));w=k*.75f;}break;}
 case 13:{if(face!=0)return;float an=P_[0];float a=u*cosf(an)+v*sinf(an),b=-u*sinf(an)+v*cosf(an);float best=0,hh=0;int N=(int)P_[1];for(int i=0;i<N;i++){uint32_t h=h3(i,o->seed%5,3,sd);float pos=P_[2]+(u01(h)-.5f)*P_[3];float d=fabsf(b-pos-.012f*pn(a*1.5f,i,sd%9));float wd=P_[4]*(.5f+.9f*u01(hs(h+1)));float st=-9+(u01(hs(h+2))<.7f?8+u01(hs(h+3))*3.5f-2:0);float g=ss(st,st+.03f,a)*ss(0,.8f,mx(9-a,0));if(P_[6]>0)g*=1-ss(st+2+3*u01(hs(h+5)),st+3+3.5f*u01(hs(h+5)),a);if(g<=0)continue;float k=(1-ss(wd*.5f,wd*1.3f,d))*g;float side=b-pos;hh-=.35f*wd*k;hh+=.12f*wd*(1-ss(wd*1.2f,wd*3,d))*g*(side>0?1:.3f);if(k>best)best=k;}
   best*=cl(.8f+.6f*pn(a*3,b*3,sd%19));S_->h+=hh*P_[7];if(ho)return;w=best;if(P_[5]>0)S_->alb=mixv(S_->alb,v3(.85f,.83f,.8f),w*P_[5]);else S_->alb=mul(S_->alb,1+w*P_[5]);S_->occ*=1-.3f*w;break;}
 case 14:{if(face>1)return;if(s->pattern!=1&&s->pattern!=7)return;int k=e->region;float zb=s->bz[k]+s->wav*(1.3f*pn(lp.y*.45f+(s->seed%101)+k*7.3f,lp.x*.16f,k*3.1f)+.5f*pn(lp.y*1.3f+k*3.3f,lp.x*.3f+(s->seed%101),1.1f)+.12f*pn(lp.y*4+k,lp.x*1.5f,(s->seed%101)));
   float al=face==0?lp.y:lp.x;float half=face==0?s->hy:o->h[0];float ex=P_[1]>0?ss(-.25f,.15f,pn(al*.35f,sd%50,.5f)+P_[1]-.5f):1;float rim=P_[4]>0?ss(half*.2f,half*.9f,fabsf(al)):1;float ww=P_[0]*ex*rim*(.7f+1.1f*(pn(al*1.3f,2.2f,sd%40)+.35f*pn(al*7,1.2f,sd%40)));if(ww<.006f)return;float d=lp.z-zb;float ad=fabsf(d+.3f*ww*pn(al*5,.3f,sd%13));float in=1-ss(ww*.5f,ww,ad);S_->h-=.3f*ww*(1-ss(0,ww*1.2f,ad));S_->h+=P_[3]*ss(-.08f,.08f,d)*(1-ss(.3f,1.5f,fabsf(d)))*.5f;if(ho)return;S_->alb=mixv(S_->alb,mul(S_->alb,.16f),in*P_[2]);S_->occ*=1-.7f*in;S_->spec*=1-in;w=in;break;}
 case 15:{if(face!=2)return;float f=P_[0];float a=pn(p.x*f*.5f,p.y*f*.5f,sd%40),b=pn(p.x*f*.5f+7,p.y*f*.5f,sd%40);float m=ss(-.3f,.0f,pn(p.x*.25f,p.y*.35f,sd%33)+P_[3]);float g=0,hh;float x=p.x*f+1.2f*a,y=p.y*f*P_[4]+1.2f*b;
   if(P_[2]<.5f){float f1,f2;uint32_t id;wor2(x,y,sd,&f1,&f2,&id);float d=f2-f1;float d2;wor2(x*2.2f,y*2.2f,sd+1,&f1,&f2,&id);d2=f2-f1;g=(1-ss(.02f,.26f,d))+.45f*(1-ss(.03f,.3f,d2));hh=-g;}
   else{float r=fabsf(pn(x*.7f,y*.7f,3.1f))+.5f*fabsf(pn(x*1.5f+2,y*1.5f,1.f));g=1-ss(.03f,.22f,r);hh=-g+.5f*r;}
   S_->h+=P_[1]*hh*m;if(ho)return;S_->alb=mul(S_->alb,1-.24f*cl(g)*m*P_[5]);S_->occ*=1-.45f*cl(g)*m;w=m*(g>.25f?1:.45f);break;}
 case 16:{int ok=(face==1&&P_[7]<.5f)||(face==3&&P_[7]<.5f)||(face==0&&P_[7]>=.5f);if(!ok)return;float h=0,ww=0;float ee=1;{float eu=(face==0?o->h[1]:o->h[0])-fabsf(u),ev=(face==3?o->h[1]:o->h[2])-fabsf(v);ee=ss(.05f,.3f,mn(eu,ev));}
   if(P_[0]<.5f||P_[0]>1.5f){float c=P_[1];int X=fl(u/c-.5f),Y=fl(v/c-.5f);for(int i=0;i<2;i++)for(int j=0;j<2;j++){uint32_t hh=h3(X+i,Y+j,face,sd);if(u01(hh)>P_[2])continue;float r=c*.5f*(.4f+.6f*u01(hs(hh+1)));float du=u-(X+i+u01(hs(hh+2)))*c,dv=v-(Y+j+u01(hs(hh+3)))*c;float d=sqrtf(du*du+dv*dv*1.2f)/r+.15f*pn(u*3,v*3,sd%9);float k=1-ss(.35f,1,d);h-=k*r*P_[3];ww=mx(ww,k);}}
   if(P_[0]>.5f){int N=(int)P_[4];for(int i=0;i<N;i++){uint32_t hh=h3(i,face,5,sd);float an=P_[5]+(u01(hh)-.5f)*P_[6];float pos=(u01(hs(hh+1))-.5f)*9;float b=-u*sinf(an)+v*cosf(an)-pos-.5f*pn(u*.3f,v*.3f,i+sd%9);float a=u*cosf(an)+v*sinf(an);float st=(u01(hs(hh+2))-.5f)*10;float ln=2+6*u01(hs(hh+3));float g=ss(st,st+.6f,a)*(1-ss(st+ln,st+ln+.6f,a));float k=(1-ss(0.f,.13f,fabsf(b)))*g;float asym=b>0?1:.35f;h-=k*.10f*P_[3]*asym*2;h+=.04f*P_[3]*g*ss(0,.05f,b)*(1-ss(.05f,.6f,b));ww=mx(ww,k);}}
   S_->h+=h*ee;if(ho)return;S_->alb=mul(S_->alb,1-.10f*ww*ee);S_->occ*=1-.22f*ww*ee;w=ww*ee*1.3f;break;}
 /* deceivers */
 case 101:case 103:{Sp q=spot3(lp,P_[0],P_[1],P_[2],P_[3],sd,v3(1,P_[4],1));w=ss(.0f,.25f,q.q+(e->type==103?.35f*pns(lp,13,sd):0));S_->h+=.01f*w;if(ho)return;S_->alb=mixv(S_->alb,mul(ec,.6f+.8f*u01(hs(q.id+4))),w*.95f);break;}
 case 102:{Sp q=spot3(lp,P_[0],P_[1],P_[2],P_[3],sd,v3(1,.45f,1));w=ss(0,.2f,q.q+.2f*pns(lp,6,sd));S_->h+=.008f*w;if(ho)return;float st=.85f+.3f*pns(lp,9,sd+(int)(q.id%50));V c=mul(mixv(ec,v3(.78f,.6f,.36f),u01(q.id)*.6f),st);S_->alb=mixv(S_->alb,c,w*.8f);S_->occ*=1-.15f*ss(-.2f,0,q.q)*(1-w);break;}
 case 104:{if(ho)return;if(P_[4]>.5f&&face!=2)return;Sp q=spot3(lp,P_[0],P_[1],P_[2],P_[3],sd,v3(1,1,1));w=ss(0,.3f,q.q);float tw=u01(hs(q.id+77));S_->alb=mixv(S_->alb,mul(ec,.5f+1.8f*tw*tw*tw),w);S_->fl=mx(S_->fl,w*(tw>.8f?(tw-.8f)*14:0));break;}
 case 105:{if(ho)return;if(pt->bd>P_[0]*(.6f+.9f*pns(lp,1.7f,sd)+.4f))return;if(e->region>=0&&pt->reg!=e->region&&pt->nb!=e->region)return;w=1;float sp=.8f+.6f*pns(lp,25,sd);S_->alb=mixv(S_->alb,mul(ec,sp),.9f);S_->spec*=2.5f;break;}
 case 106:{if(face!=0&&face!=2)return;float x=u-P_[0],y=v-P_[1];float r=sqrtf(x*x+y*y)/P_[2],an=atan2f(y,x);float g=9;int k=(int)P_[3];
   if(k==0){g=mn(fabsf(r-1),fabsf(r-.86f));float pet=fabsf(r-.62f*fabsf(cosf(an*2.5f)));g=mn(g,pet);}
   else if(k==1){float lf=fabsf(fabsf(y/P_[2])-.45f*(1-(x/P_[2])*(x/P_[2])));if(fabsf(x/P_[2])>1)lf=9;float st=fabsf(y/P_[2]);if(fabsf(x/P_[2])>1.25f)st=9;float ve=fabsf(fmodf(x/P_[2]+fabsf(y/P_[2])*.9f+20,.3f)-.15f);if(fabsf(y/P_[2])>.45f*(1-(x/P_[2])*(x/P_[2])))ve=9;g=mn(lf,mn(st,ve*1.3f));}
   else if(k==2){float hx=mx(fabsf(x),fabsf(y))/P_[2];g=mn(fabsf(hx-1),fabsf(r-.7f));g=mn(g,mx(fabsf(sinf(an*4))*r,r-.7f));}
   else {float t=fmodf(r*5-an*.159155f+10,1.f);g=r<1?fabsf(t-.5f)/5:fabsf(r-1);}
   float wd=.045f;float in=1-ss(wd*.6f,wd*1.6f,g);S_->h-=.06f*in*P_[4];if(ho)return;S_->occ*=1-.35f*in;break;}
 case 107:{if(face!=0)return;float b=v*cosf(P_[0])+u*sinf(P_[0]);float a=u*cosf(P_[0])-v*sinf(P_[0]);float q=b+P_[2]*a*a;S_->h+=P_[1]*(sinf(q*P_[3]+2*pn(q*.7f,a*.1f,sd%9))+.5f*sinf(q*P_[3]*2.7f+pn(q,a*.1f,sd%7)*4));if(ho)return;break;}
 case 108:{Sp q=spot3(p,P_[0],P_[1],P_[2],P_[3],sd,v3(1,1,1));float k=ss(0.f,.9f,q.q);S_->h+=q.r*.8f*sqrtf(mx(0,q.q));if(ho)return;w=ss(0,.08f,q.q);S_->alb=mul(S_->alb,1-.12f*w);S_->rough=mixf(S_->rough,.05f,w);S_->spec=mixf(S_->spec,2.2f,w);S_->occ*=1-.2f*ss(-.2f,0,q.q)*(1-w);break;}
 case 109:{if(ho)return;float best=0;for(int i=0;i<(int)P_[0];i++){uint32_t h=h3(i,1,o->seed%7,sd);float an=u01(h)*6.28f;float cx=(u01(hs(h+1))-.5f)*6,cy=(u01(hs(h+2))-.5f)*4.5f;float a=(u-cx)*cosf(an)+(v-cy)*sinf(an),b=-(u-cx)*sinf(an)+(v-cy)*cosf(an);float L=.4f+u01(hs(h+3));if(fabsf(a)>L)continue;float d=fabsf(b-(.5f*(u01(hs(h+4))-.5f))*a*a-.12f*sinf(a*5+i));float k=1-ss(.006f,.016f,d);best=mx(best,k);}S_->alb=mixv(S_->alb,ec,best*.75f);break;}
 case 110:{float best=9;int N=(int)P_[0];for(int i=0;i<N;i++){uint32_t h=h3(i,2,0,sd);float cy=(N>1?(-1+2.f*(i+.5f)/N):0)*s->hy*.8f+P_[2]*(u01(h)-.5f),cz=P_[3]+P_[2]*(u01(hs(h+1))-.5f)*1.2f;float y=lp.y-cy,z=lp.z-cz;float r=P_[1]*(.8f+.4f*u01(hs(h+2)));float d;int k=(int)P_[4];if(k==0)d=sqrtf(y*y+z*z)-r;else if(k==1){float a=u01(hs(h+3))*3;float yy=y*cosf(a)-z*sinf(a),zz=y*sinf(a)+z*cosf(a);d=mx(fabsf(yy),fabsf(zz))-r*.85f;}else{float yy=fabsf(y)/r,zz=z/r-.1f+ -.55f*sqrtf(fabsf(yy))*.9f;d=(sqrtf(yy*yy+zz*zz)-.85f)*r;}d+=.03f*pns(lp,2,sd);if(d<best)best=d;}
   if(face==2||face==3||face==1)return;if(ho)return;w=1-ss(-.015f,.015f,best);S_->alb=mixv(S_->alb,ec,w);if(w>.5f){pt->reg=7;pt->bd=9;}break;}
 case 111:{if(ho||face!=2)return;float k=ss(-.1f,.35f,pn(p.x*1.1f,p.y*1.1f,sd%20)+.5f*pn(p.x*5,p.y*5,sd%20)+.3f*pn(p.x*30,p.y*30,1.f));S_->alb=mixv(S_->alb,ec,k*P_[0]);S_->spec*=1+2*k;S_->rough=mixf(S_->rough,.35f,k);break;}
 }
 if(e->slot>=0){if(w>S_->w[e->slot])S_->w[e->slot]=w;}
}
static void soapSurf(const Obj*o,V p,V n,int ho,Sf*s){const Soap*sp=&S->soap[o->mat];V an=v3(fabsf(n.x),fabsf(n.y),fabsf(n.z));int face=an.x>an.y&&an.x>an.z?0:an.y>an.z?1:(n.z>0?2:3);
 V lp=v3(p.x+o->xoff,p.y,p.z);s->h=0;s->occ=1;s->w[0]=s->w[1]=0;s->rough=sp->rough;s->spec=sp->spec;s->fl=0;
 s->h+=o->bump*(.004f*pn(p.x*5,p.y*5,p.z*5)+.0016f*pn(p.x*17,p.y*17,p.z*17)+.015f*pn(p.x*1.1f+3,p.y*1.1f,p.z*1.1f));
 if(face==0){float q=sp->seed%3*.5f;s->h+=o->bump*.0016f*pn(p.y*(1.2f+q*20),p.z*(22-q*20),sp->seed%50);}
 int ng=0;for(int i=0;i<sp->nfx;i++)if(sp->fx[i].type==12)ng=1;
 Pt pt;pt.reg=0;pt.bd=9;int need=!ho;V base=v3(.7f,.7f,.7f);
 if(ho){for(int i=0;i<sp->nfx;i++){int t=sp->fx[i].type;if(t==5)need=1;}}
 if(need){V lq=lp; if(o->toptype>0&&face==2){}pt=pat(sp,lq,ng);base=pt.c;}
 s->alb=base;
 if(!ho){float m=1+sp->mott*(1.2f*pn(lp.x*.8f,lp.y*.8f,lp.z*.8f)+.7f*pn(lp.x*4,lp.y*4,lp.z*4)+.5f*pn(lp.x*13,lp.y*13,lp.z*13));s->alb=mul(s->alb,m);}
 for(int i=0;i<sp->nfx;i++){const Fx*e=&sp->fx[i];if(e->slot>=0&&!o->flaw)continue;fx1(e,o,sp,p,lp,n,face,&pt,s,ho,base);}
 if(!ho&&sp->fx){s->alb=v3(cl(s->alb.x),cl(s->alb.y),cl(s->alb.z));}
}
static void propSurf(const Obj*o,V p,V n,Sf*s){s->occ=1;s->fl=0;s->w[0]=s->w[1]=0;s->rough=o->rough;s->spec=o->spec;V a=v3(o->col[0],o->col[1],o->col[2]),b=v3(o->col2[0],o->col2[1],o->col2[2]);float sd=o->seed%71;float k=0;
 switch(o->mat){
 case 10:{float g=pn(p.x*.35f+sd,p.y*3.2f,p.z*3.2f);float r=sinf((p.y+p.z*.7f+.5f*g)*6+3*pn(p.x*.2f,p.y*.5f,sd));k=.5f+.3f*r+.5f*pn(p.x*.8f,p.y*14,p.z*14+sd);break;}
 case 11:k=.3f+.8f*fbm(mul(add(p,v3(sd,0,0)),1.1f),3);break;
 case 12:{k=.5f+.9f*pn(p.x*9+sd,p.y*9,p.z*9)+.4f*pn(p.x*2,p.y*2,p.z*2);break;}
 case 13:{/*fur*/V q=v3(p.x*2,p.y*2,p.z*2);k=.5f+.8f*pn(q.x+sd,q.y,q.z)+.7f*pn(p.x*22,p.y*7,p.z*22);if(o->r>0)k+=.5f*sinf(p.x*3+2*pn(p.x,p.y,p.z));break;}
 case 14:{k=fabsf(p.y)<.25f?1:.1f*pn(p.x*8,p.y*8,p.z*8);break;}/* cardboard w tape */
 case 15:{k=ss(.02f,.06f,fabsf(fmodf(p.z+20,1.2f)-.6f));break;}
 case 16:{/*paper band with simple sprig*/k=0;if(fabsf(n.x)>.6f){float x=p.y-sd*0,y=p.z;float lf=fabsf(y);if(fabsf(x)<1.2f&&lf<.03f)k=1;for(int i=-2;i<3;i++){float cx=i*.45f,dx=x-cx,dy=fabsf(y)-.28f;float e=(dx-.3f*fabsf(dy))*(dx-.3f*fabsf(dy))/.03f+dy*dy/.05f;if(e<1&&fabsf(x)<1.4f)k=1;}}k=k*.8f+.06f*pn(p.x*12,p.y*12,p.z*12);break;}
 case 17:{k=.5f+.5f*sinf(p.z*30)*0+.6f*pn(p.x*25,p.y*25,p.z*25);break;}
 case 18:{k=.15f*fabsf(p.y)/mx(o->h[1],.1f)+.4f*ss(.05f,0,fabsf(p.y))+.3f*pn(p.x*4,p.y*4,sd);break;}
 default:k=.25f*pn(p.x*1.5f+sd,p.y*1.5f,p.z*1.5f)+.1f;}
 s->alb=mixv(a,b,cl(k));}
/* ground */
static void ground(float X,float Y,Sf*s,float*hh,int ho){float c=cosf(S->grot),sn=sinf(S->grot);float x=(X*c-Y*sn)*S->gs,y=(X*sn+Y*c)*S->gs;float sd=S->gseed%97;V a=v3(S->gc[0][0],S->gc[0][1],S->gc[0][2]),b=v3(S->gc[1][0],S->gc[1][1],S->gc[1][2]),d=v3(S->gc[2][0],S->gc[2][1],S->gc[2][2]);float h=0;V al=a;float oc_=1;
 if(ho==1){switch(S->ground){case 2:case 5:case 7:*hh=0;return;case 3:case 8:{float wv=S->ground==3?sinf(x*26)*.5f+sinf(y*26)*.5f:sinf(x*24)*.5f+sinf(y*24)*.5f;float fo=S->ground==3?pn(x*.13f+sd,y*.22f,1.4f)+.4f*pn(x*.3f,y*.5f,sd):pn(x*.15f+sd,y*.2f,1.4f);*hh=.012f*wv+(S->ground==3?.9f:.8f)*fo*S->gbump;return;}case 4:*hh=.03f*fbm(v3(x*.8f,y*.8f,sd),3)*S->gbump*2+.004f*pn(x*6,y*6,sd);return;case 1:*hh=.006f*pn(x*.7f,y*14,sd);return;}}
 switch(S->ground){
 case 0:{/*planks*/float pw=5.5f;int k=fl(y/pw);float yy=y-k*pw;uint32_t id=h3(k,0,0,(int)sd);float g0=pn(x*.12f+u01(id)*50,y*.6f,sd);float r=sinf((yy+1.8f*g0)*3.2f+u01(id)*9);float gn=pn(x*.5f+u01(id)*30,y*9,sd)+.6f*pn(x*1.6f,y*26,sd);float t=cl(.45f+.22f*r+.55f*gn+.35f*(u01(hs(id))-.5f));al=mixv(a,b,t);float sm=mn(yy,pw-yy);float gp=1-ss(.02f,.07f,sm);al=mixv(al,mul(d,.35f),gp);h=-.06f*gp+.012f*gn;float kn=pn(x*.1f,y*.25f,sd+3);if(kn>.5f)al=mixv(al,d,.6f*ss(.5f,.65f,kn));break;}
 case 1:{/*board fine grain*/float g0=pn(x*.1f,y*.5f,sd);float t=.5f+.45f*sinf((y+2.2f*g0)*2.1f)+.4f*pn(x*.7f,y*12,sd)+.25f*pn(x*2,y*30,sd);al=mixv(a,b,cl(t));h=.006f*pn(x*.7f,y*14,sd);break;}
 case 2:{/*marble*/V p=v3(x*.16f,y*.16f,sd);float q=fbm(p,4);float v=fabsf(pn(x*.12f+2.2f*q,y*.12f+1.5f*q,sd+2));float v2=fabsf(pn(x*.3f+2*q,y*.3f,sd+5));float t=.75f*(1-ss(.0f,.07f,v))+.4f*(1-ss(0,.04f,v2));al=mixv(mixv(a,b,.4f*cl(.5f+q)),d,cl(t*.7f));break;}
 case 3:{/*cloth*/float wv=sinf(x*26+.4f*pn(x*3,y*3,1))*.5f+sinf(y*26+.4f*pn(x*3,y*3,4))*.5f;float fo=pn(x*.13f+sd,y*.22f,1.4f)+.4f*pn(x*.3f,y*.5f,sd);h=.012f*wv+.9f*fo*S->gbump;float th=pn(x*1.5f,y*22,2)+pn(x*22,y*1.5f,5);al=mixv(a,b,cl(.4f+.25f*wv+.35f*th));if(d.x>0){float st=fmodf(fabsf(y)+100.f,4.f);if(st<.35f||(st>.7f&&st<.9f))al=mixv(al,d,.75f);}break;}
 case 4:{/*slate/concrete*/float q=fbm(v3(x*.25f,y*.25f,sd),5);float f=pn(x*6,y*6,sd)+.7f*pn(x*19,y*19,sd);al=mixv(a,b,cl(.5f+.9f*q+.12f*f));h=.03f*fbm(v3(x*.8f,y*.8f,sd),4)*S->gbump*2+.004f*f;break;}
 case 5:{/*granite/terrazzo*/float f1,f2;uint32_t id;wor2(x*2.2f,y*2.2f,(int)sd,&f1,&f2,&id);float u=u01(id);al=u<.5f?a:u<.8f?b:d;al=mixv(a,al,ss(.55f,.35f,f1)*.85f);al=mul(al,1+.15f*pn(x*8,y*8,sd));break;}
 case 6:{/*tile*/float tw=9;float fx=x/tw-fl(x/tw),fy=y/tw-fl(y/tw);uint32_t id=h3(fl(x/tw),fl(y/tw),1,(int)sd);float e=mn(mn(fx,1-fx),mn(fy,1-fy))*tw;float gp=1-ss(.12f,.22f,e);al=mul(mixv(a,b,cl(.4f+fbm(v3(x*.3f,y*.3f,u01(id)*9),3))),.92f+.16f*u01(id));al=mixv(al,d,gp);h=-.05f*gp;break;}
 case 7:{/*plain paper*/al=mul(a,1+.02f*pn(x*2,y*2,sd)+.02f*pn(x*11,y*11,sd));h=.002f*pn(x*9,y*9,sd);break;}
 case 8:{/*checked cloth*/float wv=sinf(x*24)*.5f+sinf(y*24)*.5f;float fo=pn(x*.15f+sd,y*.2f,1.4f);h=.012f*wv+.8f*fo*S->gbump;int cx=fl(x/2.2f)&1,cy=fl(y/2.2f)&1;float t=(cx+cy)*.5f;al=mul(mixv(a,b,t),1+.1f*wv);break;}
 case 9:{/*slats rack*/float pw=3.4f;int k=fl(y/pw);float yy=y-k*pw;float gn=pn(x*.5f+k*7,y*8,sd);al=mixv(a,b,cl(.5f+.6f*gn+.4f*(u01(h3(k,1,1,3))-.5f)));float e=mn(yy,pw-yy);float gp=1-ss(.45f,.52f,e);al=mixv(al,mul(d,.25f),gp);h=-.05f*(1-ss(.45f,.7f,e))+.01f*gn;break;}
 }
 *hh=h;if(!ho){s->alb=v3(cl(al.x),cl(al.y),cl(al.z));s->occ=oc_;s->rough=S->grough;s->spec=S->gspec;s->w[0]=s->w[1]=0;s->fl=0;}
}
static float gobo(V p){if(!S->gobo)return 1;V L=v3(S->L[0],S->L[1],S->L[2]);float t=-p.z/L.z;float x=p.x+L.x*t,y=p.y+L.y*t;const float*g=S->gobop;float c=cosf(g[0]),s=sinf(g[0]);float u=x*c-y*s,v=x*s+y*c;
 if(S->gobo==1){float f=u*g[1]+g[2];f-=fl(f);float e=.10f;return .12f+.88f*(ss(.0f,e*1.5f,f)*(1-ss(.55f,.55f+e*1.5f,f)));}
 if(S->gobo==2){float k=pn(u*g[1]+g[2],v*g[1]*.6f,3.3f)+.5f*pn(u*g[1]*2.3f,v*g[1]*1.7f,g[2]);return .18f+.82f*ss(-.12f,.1f,k+g[3]);}
 if(S->gobo==3){float f=fabsf(fmodf(u+200,g[1])-g[1]/2),h=fabsf(fmodf(v+200,g[1]*1.3f)-g[1]*.65f);return .1f+.9f*ss(.1f,.5f,mn(f,h));}
 return .15f+.85f*ss(-.6f,.6f,u-g[2]);}
static V envr(V r,float rough){V sky=v3(S->sky[0],S->sky[1],S->sky[2]),bn=v3(S->bnc[0],S->bnc[1],S->bnc[2]);V c=mixv(bn,sky,ss(-.3f,.4f,r.z));V w=v3(S->wdir[0],S->wdir[1],S->wdir[2]);V up=v3(S->wup[0],S->wup[1],S->wup[2]);V rt=crs(w,up);float d=dot(r,w);if(d>.05f){float a=dot(r,rt)/d,b=dot(r,up)/d;float so=.04f+rough*1.1f;float k=ss(S->wsx+so,S->wsx-so,fabsf(a))*ss(S->wsy+so,S->wsy-so,fabsf(b));float en=S->wsx*S->wsy/((S->wsx+so*.6f)*(S->wsy+so*.6f));if(rough<.3f){float bar=ss(.0f,.02f+rough*.2f,fabsf(a))*ss(.0f,.02f+rough*.2f,fabsf(b));k*=.3f+.7f*bar;}c=add(c,mul(v3(S->Lc[0],S->Lc[1],S->Lc[2]),k*S->wI*en));}return c;}
typedef struct{V c;float soap,w0,w1,z;int id;}Res;
static V shade(V p,V n,V gn,V rd,Sf*s,int self,int soap){V L=v3(S->L[0],S->L[1],S->L[2]),Lc=v3(S->Lc[0],S->Lc[1],S->Lc[2]);
 float nl=dot(n,L),gl=dot(gn,L);float wr=soap?S->wrap:0.02f;float df=(nl+wr)/(1+wr);if(df<0)df=0;float sh=0;if(gl>-wr){sh=softsh(add(p,mul(gn,.02f)),gn,self)*gobo(p);}
 if(soap)sh=.04f+.96f*sh;float ao=aoc(p,gn,self);V sky=v3(S->sky[0],S->sky[1],S->sky[2]),bn=v3(S->bnc[0],S->bnc[1],S->bnc[2]);V amb=mul(mixv(bn,sky,.5f+.5f*n.z),ao);
 float wn=mx(0,dot(n,v3(S->wdir[0],S->wdir[1],S->wdir[2])));amb=add(amb,mul(sky,.35f*wn*ao));
 V c=had(s->alb,add(mul(Lc,df*sh*(.35f+.65f*s->occ)),mul(amb,s->occ)));
 V r=sub(rd,mul(n,2*dot(rd,n)));float nv=mx(0,-dot(rd,n));float F=(.035f+.5f*powf(1-nv,5)*(1-s->rough))*s->spec;V en=envr(r,s->rough);c=add(c,mul(en,F*ao*s->occ*(.35f+.65f*sh)));
 V hv=nrm(sub(L,rd));float nh=mx(0,dot(n,hv));float a=s->rough*s->rough;float a2=a*a;float D=a2/(3.14159f*((nh*nh*(a2-1)+1)*(nh*nh*(a2-1)+1)));if(D>30)D=30;c=add(c,mul(Lc,mn(D*.25f*.04f*s->spec,2.5f)*sh*mx(0,nl)*s->occ));
 if(s->fl>0)c=add(c,mul(Lc,s->fl*.5f));
 return c;}
static int *bbx;
static Res pix(float px,float py){Res R;R.soap=R.w0=R.w1=0;R.id=-1;float sx=(2*px/S->W-1)*S->tanf,sy=(1-2*py/S->H)*S->tanf*S->H/S->W;V ro=v3(S->cp[0],S->cp[1],S->cp[2]);
 V rd=nrm(v3(S->cf[0]+sx*S->cr[0]+sy*S->cu[0],S->cf[1]+sx*S->cr[1]+sy*S->cu[1],S->cf[2]+sx*S->cr[2]+sy*S->cu[2]));
 float best=1e6;int hit=-1;int ix=(int)px,iy=(int)py;for(int i=0;i<S->nobj;i++){int*b=bbx+4*i;if(ix<b[0]||ix>b[2]||iy<b[1]||iy>b[3])continue;float t=trace(&O[i],ro,rd,best);if(t>0&&t<best){best=t;hit=i;}}
 float tg=rd.z<-1e-5f?-ro.z/rd.z:1e9;float pixa=2*S->tanf/S->W;
 if(hit>=0&&best<tg){const Obj*o=&O[hit];V p=add(ro,mul(rd,best));V lp=tol(o,sub(p,oc(o)));float e=.006f;V k1=v3(1,-1,-1),k2=v3(-1,-1,1),k3=v3(-1,1,-1),k4=v3(1,1,1);
  V g=add(add(mul(k1,sdf(o,add(lp,mul(k1,e)),1)),mul(k2,sdf(o,add(lp,mul(k2,e)),1))),add(mul(k3,sdf(o,add(lp,mul(k3,e)),1)),mul(k4,sdf(o,add(lp,mul(k4,e)),1))));V n=nrm(g);V gnw=tow(o,n);Sf s;V nn=n;int soap=o->mat<2;
  if(soap){soapSurf(o,lp,n,0,&s);float be=mx(.007f,best*pixa*.8f);V t1=nrm(fabsf(n.x)>.7f?crs(n,v3(0,1,0)):crs(n,v3(1,0,0)));V t2=crs(n,t1);Sf a,b;soapSurf(o,add(lp,mul(t1,be)),n,1,&a);soapSurf(o,add(lp,mul(t2,be)),n,1,&b);float ga=(a.h-s.h)/be,gb=(b.h-s.h)/be;float gm=sqrtf(ga*ga+gb*gb);if(gm>1.2f){ga*=1.2f/gm;gb*=1.2f/gm;}nn=nrm(sub(n,add(mul(t1,ga),mul(t2,gb))));}
  else {propSurf(o,lp,n,&s);if(o->bump>0){float f=o->mat==13?14:6;V q=mul(lp,f);nn=nrm(add(n,mul(v3(pn(q.x,q.y,q.z),pn(q.x+9,q.y,q.z),pn(q.x,q.y+9,q.z)),o->bump)));}}
  V nw=tow(o,nn);if(dot(nw,rd)>0)nw=nrm(sub(nw,mul(rd,1.05f*dot(nw,rd))));R.c=shade(p,nw,gnw,rd,&s,hit,soap||o->mat==20);R.z=best;R.id=hit;if(soap){R.soap=1;R.w0=cl(s.w[0]);R.w1=cl(s.w[1]);}
 }else{float yw=S->wally;float tw=1e9;/* wall plane perpendicular to flat camera dir */V fd=nrm(v3(S->cf[0],S->cf[1],0));float dn=dot(fd,rd);if(dn>1e-4f)tw=(yw-dot(ro,fd))/dn;
  if(tg<tw&&tg<400){V p=add(ro,mul(rd,tg));Sf s;float h0,h1,h2;ground(p.x,p.y,&s,&h0,0);float be=mx(.015f,tg*pixa);Sf d;if(S->ground>=1&&S->ground!=6&&S->ground!=9)ground(p.x,p.y,&d,&h0,1);ground(p.x+be,p.y,&d,&h1,1);ground(p.x,p.y+be,&d,&h2,1);V n=nrm(v3(-(h1-h0)/be,-(h2-h0)/be,1));R.c=shade(p,n,v3(0,0,1),rd,&s,-1,0);R.z=tg;}
  else{V p=add(ro,mul(rd,tw<1e8?tw:100));V wc=v3(S->wallc[0],S->wallc[1],S->wallc[2]);float l=.75f+.25f*cl(p.z/25)+.08f*pn(p.x*.1f,p.y*.1f,p.z*.1f);V li=add(mul(v3(S->Lc[0],S->Lc[1],S->Lc[2]),.28f),mul(v3(S->sky[0],S->sky[1],S->sky[2]),.6f));R.c=mul(had(wc,li),l);R.z=tw<1e8?tw:100;R.id=-2;}}
 return R;}
void render(const Scene*sc,const Obj*ob,float*rgb,float*soap,float*w0,float*w1,float*dep){if(!pinit)initp();S=sc;O=ob;int W=S->W,H=S->H;LD=malloc(sizeof(V)*(S->nobj+1));RB=malloc(4*(S->nobj+1));RA=malloc(4*(S->nobj+1));for(int i=0;i<S->nobj;i++){const Obj*o=&O[i];LD[i]=tol(o,v3(S->L[0],S->L[1],S->L[2]));float a=o->h[0],b=o->h[1],c=o->h[2];if(o->prim>1&&o->prim<8&&o->prim!=6)b=a;RA[i]=sqrtf(a*a+b*b+c*c)+o->deform*.5f;float sz=mx(a,mx(b,c));RB[i]=sqrtf(a*a+b*b+c*c)+mn(2.5f,sz*1.2f)*mn(1.f,6/S->lk)*1.5f;}bbx=malloc(sizeof(int)*4*(S->nobj+1));
 V ro=v3(S->cp[0],S->cp[1],S->cp[2]);for(int i=0;i<S->nobj;i++){const Obj*o=&O[i];float x0=1e9,y0=1e9,x1=-1e9,y1=-1e9;int bad=0;for(int k=0;k<8;k++){float hx=o->h[0]+.2f+o->deform,hy=o->h[1]+.2f+o->deform,hz=o->h[2]+.2f+o->topamp*1.7f+o->deform;if(o->prim>1)hy=mx(hx,hy);if(o->prim==8)hz+=o->h[0]*.3f;V l=v3(k&1?hx:-hx,k&2?hy:-hy,k&4?hz:-hz);V p=sub(add(oc(o),tow(o,l)),ro);float z=dot(p,v3(S->cf[0],S->cf[1],S->cf[2]));if(z<.1f){bad=1;break;}float X=dot(p,v3(S->cr[0],S->cr[1],S->cr[2]))/z/S->tanf,Y=dot(p,v3(S->cu[0],S->cu[1],S->cu[2]))/z/S->tanf*W/H;X=(X+1)*.5f*W;Y=(1-Y)*.5f*H;x0=mn(x0,X);x1=mx(x1,X);y0=mn(y0,Y);y1=mx(y1,Y);}
  int*b=bbx+4*i;if(bad){b[0]=0;b[1]=0;b[2]=W;b[3]=H;}else{b[0]=(int)mx(-1e6,x0)-1;b[1]=(int)mx(-1e6,y0)-1;b[2]=(int)mn(1e6,x1)+1;b[3]=(int)mn(1e6,y1)+1;}}
 float*lm=malloc(sizeof(float)*W*H);
 for(int y=0;y<H;y++)for(int x=0;x<W;x++){Res r=pix(x+.5f,y+.5f);int i=y*W+x;rgb[3*i]=r.c.x;rgb[3*i+1]=r.c.y;rgb[3*i+2]=r.c.z;soap[i]=r.soap;w0[i]=r.w0;w1[i]=r.w1;dep[i]=r.z;lm[i]=powf(lum(v3(mx(r.c.x,0),mx(r.c.y,0),mx(r.c.z,0)))+1e-4f,.45f)+.15f*r.soap;}
 if(S->edgeaa){for(int y=1;y<H-1;y++)for(int x=1;x<W-1;x++){int i=y*W+x;float d=mx(mx(fabsf(lm[i]-lm[i-1]),fabsf(lm[i]-lm[i+1])),mx(fabsf(lm[i]-lm[i-W]),fabsf(lm[i]-lm[i+W])));if(d<.11f)continue;
  static const float ox[3]={.17f,.83f,.42f},oy[3]={.38f,.29f,.86f};float a[3]={rgb[3*i],rgb[3*i+1],rgb[3*i+2]},so=soap[i],u=w0[i],v=w1[i];for(int k=0;k<3;k++){Res r=pix(x+ox[k],y+oy[k]);a[0]+=r.c.x;a[1]+=r.c.y;a[2]+=r.c.z;so+=r.soap;u+=r.w0;v+=r.w1;}
  rgb[3*i]=a[0]*.25f;rgb[3*i+1]=a[1]*.25f;rgb[3*i+2]=a[2]*.25f;soap[i]=so*.25f;w0[i]=u*.25f;w1[i]=v*.25f;}}
 free(lm);free(bbx);free(LD);free(RB);free(RA);}
int szS(){return sizeof(Scene);}int szO(){return sizeof(Obj);}
