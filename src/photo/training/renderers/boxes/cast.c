#include <math.h>
#include <stdlib.h>
#include <string.h>
#include <stdint.h>
typedef struct{float x,y,z;}V;
static inline V v(float a,float b,float c){V r={a,b,c};return r;}
static inline V add(V a,V b){return v(a.x+b.x,a.y+b.y,a.z+b.z);}
static inline V sub(V a,V b){return v(a.x-b.x,a.y-b.y,a.z-b.z);}
static inline V mul(V a,float s){return v(a.x*s,a.y*s,a.z*s);}
static inline float dot(V a,V b){return a.x*b.x+a.y*b.y+a.z*b.z;}
static inline V nrm(V a){return mul(a,1.f/sqrtf(dot(a,a)+1e-20f));}
static inline float cl(float a,float l,float h){return a<l?l:(a>h?h:a);}
static inline uint32_t hs(int x,int y,int z,uint32_t s){uint32_t h=x*0x8da6b343u^y*0xd8163841u^z*0xcb1ab31fu^s*0x9e3779b1u;h^=h>>15;h*=0x2c1b3c6du;h^=h>>12;h*=0x297a2d39u;h^=h>>15;return h;}
static inline float hv(int x,int y,int z,uint32_t s){return (hs(x,y,z,s)&0xffffff)*(2.f/16777216.f)-1.f;}
static float noise(float x,float y,float z,uint32_t s){
 float fx=floorf(x),fy=floorf(y),fz=floorf(z);int i=(int)fx,j=(int)fy,k=(int)fz;x-=fx;y-=fy;z-=fz;
 float u=x*x*x*(x*(x*6-15)+10),w=y*y*y*(y*(y*6-15)+10),q=z*z*z*(z*(z*6-15)+10);
 float r[8];for(int c=0;c<8;c++){int a=c&1,b=(c>>1)&1,d=c>>2;uint32_t h=hs(i+a,j+b,k+d,s);
  float gx=((h&1023)-511.5f)/511.5f,gy=(((h>>10)&1023)-511.5f)/511.5f,gz=(((h>>20)&1023)-511.5f)/511.5f;
  r[c]=gx*(x-a)+gy*(y-b)+gz*(z-d);}
 float a=r[0]+(r[1]-r[0])*u,b=r[2]+(r[3]-r[2])*u,c=r[4]+(r[5]-r[4])*u,d=r[6]+(r[7]-r[6])*u;
 a=a+(b-a)*w;c=c+(d-c)*w;return 1.35f*(a+(c-a)*q);}
void fbm(float*X,float*Y,float*Z,int n,int oct,float fr,float gain,int seed,float*o){
 for(int i=0;i<n;i++){float f=fr,a=1,t=0,m=0;for(int k=0;k<oct;k++){t+=a*noise(X[i]*f,Y[i]*f,Z[i]*f,seed+k*17);m+=a;f*=2.03f;a*=gain;}o[i]=t/m*(1+.25f*(oct-1)*gain);}}
/* 2-D worley: F1,F2 and id, jittered grid */
void worley(float*X,float*Y,int n,float fr,int seed,float*f1,float*f2,float*id){
 for(int q=0;q<n;q++){float x=X[q]*fr,y=Y[q]*fr;int i=floorf(x),j=floorf(y);float a=9,b=9;uint32_t d=0;
  for(int u=-1;u<=1;u++)for(int w=-1;w<=1;w++){uint32_t h=hs(i+u,j+w,7,seed);float px=i+u+(h&1023)/1023.f,py=j+w+((h>>10)&1023)/1023.f;
   float e=sqrtf((px-x)*(px-x)+(py-y)*(py-y));if(e<a){b=a;a=e;d=h;}else if(e<b)b=e;}
  f1[q]=a;f2[q]=b;id[q]=(d>>12&1023)/1023.f;}}
#define NC 8
typedef struct{int type;V p;V r0,r1,r2;V h;float rd;int mat;float warp;int seed;float br;int disp,dw,dh;float dmax;float taper;}O;
typedef struct{int nl;int W[12],H[12];float*d[12];}T;
static O ob[128];static int no;static T tx[64];static int ntx;static int mt[64][3];static float*dispb;
static V toL(const O*o,V p){V q=sub(p,o->p);return v(dot(o->r0,q),dot(o->r1,q),dot(o->r2,q));}
static V dirL(const O*o,V q){return v(dot(o->r0,q),dot(o->r1,q),dot(o->r2,q));}
static V dirW(const O*o,V q){return v(o->r0.x*q.x+o->r1.x*q.y+o->r2.x*q.z,o->r0.y*q.x+o->r1.y*q.y+o->r2.y*q.z,o->r0.z*q.x+o->r1.z*q.y+o->r2.z*q.z);}
static float dsp(const O*o,float x,float z){float u=(x/(2*o->h.x)+.5f)*(o->dw-1),w=(z/(2*o->h.z)+.5f)*(o->dh-1);u=cl(u,0,o->dw-1.01f);w=cl(w,0,o->dh-1.01f);int i=u,j=w;u-=i;w-=j;float*b=dispb+o->disp+j*o->dw+i;return (b[0]*(1-u)+b[1]*u)*(1-w)+(b[o->dw]*(1-u)+b[o->dw+1]*u)*w;}
static inline float fs_(float x){x*=.15915494f;x-=rintf(x);float y=x*(8.f-16.f*fabsf(x));return y*(.775f+.225f*fabsf(y));}
#define fc_(x) fs_((x)+1.5707963f)
static float sdL(const O*o,V p){
 switch(o->type){
 case 0:{ if(o->warp>0){float f=.35f;float a=o->warp;p.x+=a*fs_(p.y*f*1.7f+o->seed)*fc_(p.z*f+o->seed*2.f);p.y+=a*fs_(p.x*f*1.3f+o->seed*3.f)*fc_(p.z*f*.8f+1);p.z+=a*fs_(p.x*f*.9f+o->seed*.7f)*fc_(p.y*f*1.1f+2);float w2=.3f*a*fs_(p.x*2.3f+o->seed)*fs_(p.y*2.9f+2.f*o->seed)*fs_(p.z*2.6f+o->seed*.3f);p.x+=w2;p.y+=w2;p.z-=w2;}
  if(o->taper!=0)p.x*=1+o->taper*p.y/o->h.y;
  float ex=0;if(o->disp>=0&&p.y>0){ex=dsp(o,p.x,p.z);float hh=o->h.y; p.y-=ex*cl(p.y/hh,0,1);}
  float a=fabsf(p.x)-o->h.x+o->rd,b=fabsf(p.y)-o->h.y+o->rd,c=fabsf(p.z)-o->h.z+o->rd;
  float A=a>0?a:0,B=b>0?b:0,C=c>0?c:0;float m=a>b?a:b;m=m>c?m:c;float d=sqrtf(A*A+B*B+C*C)+(m<0?m:0)-o->rd;return o->disp>=0?d*.75f:d;}
 case 1:{float k0=sqrtf(p.x*p.x/(o->h.x*o->h.x)+p.y*p.y/(o->h.y*o->h.y)+p.z*p.z/(o->h.z*o->h.z));float k1=sqrtf(p.x*p.x/powf(o->h.x,4)+p.y*p.y/powf(o->h.y,4)+p.z*p.z/powf(o->h.z,4));return k0*(k0-1)/(k1+1e-9f);}
 case 2:{float rr=o->h.x+o->taper*p.y;float a=sqrtf(p.x*p.x+p.z*p.z)-rr+o->rd,b=fabsf(p.y)-o->h.y+o->rd;float A=a>0?a:0,B=b>0?b:0;float m=a>b?a:b;return (sqrtf(A*A+B*B)+(m<0?m:0)-o->rd)*.9f;}
 case 3:{float q=sqrtf(p.x*p.x+p.y*p.y)-o->h.x;return sqrtf(q*q+p.z*p.z)-o->rd;}
 case 4:{/*open bowl: shell lower half sphere*/ float l=sqrtf(dot(p,p));float d=fabsf(l-o->h.x)-o->rd;float c=p.y-o->h.y;return d>c?d:c;}
 case 5:{/*open cup*/ float rr=o->h.x+o->taper*p.y;float q=sqrtf(p.x*p.x+p.z*p.z);float d=fabsf(q-rr)-o->rd;float b=fabsf(p.y)-o->h.y;float s=d>b?d:b;float e=fabsf(p.y+o->h.y-.2f)-.2f;float f=q-rr;e=e>f?e:f;return (s<e?s:e)*.9f;}
 }return 9;}
static V nL(const O*o,V p){const float e=.004f;float a=sdL(o,v(p.x+e,p.y-e,p.z-e)),b=sdL(o,v(p.x-e,p.y-e,p.z+e)),c=sdL(o,v(p.x-e,p.y+e,p.z-e)),d=sdL(o,v(p.x+e,p.y+e,p.z+e));return nrm(v(a-b-c+d,-a-b+c+d,-a+b-c+d));}
static void samp(const T*t,int l,float u,float w,float*o,int wrap){int W=t->W[l],H=t->H[l];float x=u*W-.5f,y=w*H-.5f;
 int i=floorf(x),j=floorf(y);x-=i;y-=j;int i1=i+1,j1=j+1;
 if(wrap){i=((i%W)+W)%W;j=((j%H)+H)%H;i1=((i1%W)+W)%W;j1=((j1%H)+H)%H;}else{i=i<0?0:i>=W?W-1:i;i1=i1<0?0:i1>=W?W-1:i1;j=j<0?0:j>=H?H-1:j;j1=j1<0?0:j1>=H?H-1:j1;}
 float*a=t->d[l]+(j*W+i)*NC,*b=t->d[l]+(j*W+i1)*NC,*c=t->d[l]+(j1*W+i)*NC,*d=t->d[l]+(j1*W+i1)*NC;
 for(int k=0;k<NC;k++)o[k]=(a[k]*(1-x)+b[k]*x)*(1-y)+(c[k]*(1-x)+d[k]*x)*y;}
static void samptri(const T*t,float lod,float u,float w,float*o,int wrap){lod=cl(lod,0,t->nl-1);int l=lod;float f=lod-l;samp(t,l,u,w,o,wrap);if(f>.02f&&l+1<t->nl){float q[NC];samp(t,l+1,u,w,q,wrap);for(int k=0;k<NC;k++)o[k]+=(q[k]-o[k])*f;}}
static float gparm[64];
/* gparm: 0-2 lpos,3-5 lcol,6 softk,7 gobo(0/1),8-10 amb top,11-13 amb bottom,14 lref dist, 15 ground tile size,16 groundtex,17 wallz(0 none) 18 walltex 19 wall tile,20-22 window dir,23 window size,24-26 window col, 27-29 sky col, 30 ground y, 31-33 fill dir,34-36 fillcol,37 sss, 38 gobo scale*/
static float*gob;static int gw;
static float mapn(V p,float reach){float m=p.y-gparm[30];if(m>reach)m=reach;for(int i=0;i<no;i++){O*o=ob+i;V q=sub(p,o->p);float l=dot(q,q);float R=o->br+reach;if(l>R*R)continue;float d=sdL(o,toL(o,p));if(d<m)m=d;}return m;}
static int trace(V ro,V rd,float*tb,V*pl){int hit=-1;float best=*tb;
 for(int i=0;i<no;i++){O*o=ob+i;V q=sub(o->p,ro);float b=dot(q,rd),c=dot(q,q)-o->br*o->br,h=b*b-c;if(h<0)continue;h=sqrtf(h);float t0=b-h,t1=b+h;if(t1<0||t0>best)continue;if(t0<0.01f)t0=0.01f;if(t1>best)t1=best;
  V lo=toL(o,ro),ld=dirL(o,rd);if(fabsf(ld.x)<1e-5f)ld.x=1e-5f;if(fabsf(ld.y)<1e-5f)ld.y=1e-5f;if(fabsf(ld.z)<1e-5f)ld.z=1e-5f;
  if(o->type==0){V B=v(o->h.x*(1+fabsf(o->taper)*1.1f)+o->warp+.02f,o->h.y+o->warp+.02f,o->h.z+o->warp+.02f);float up=B.y+o->dmax;float a,bq;
   a=(-B.x-lo.x)/ld.x;bq=(B.x-lo.x)/ld.x;if(a>bq){float s=a;a=bq;bq=s;}if(a>t0)t0=a;if(bq<t1)t1=bq;
   a=(-B.y-lo.y)/ld.y;bq=(up-lo.y)/ld.y;if(a>bq){float s=a;a=bq;bq=s;}if(a>t0)t0=a;if(bq<t1)t1=bq;
   a=(-B.z-lo.z)/ld.z;bq=(B.z-lo.z)/ld.z;if(a>bq){float s=a;a=bq;bq=s;}if(a>t0)t0=a;if(bq<t1)t1=bq;if(t0>t1)continue;}
  float t=t0;for(int k=0;k<48&&t<t1;k++){V p=add(lo,mul(ld,t));float d=sdL(o,p);if(d<.004f){best=t;hit=i;*pl=p;break;}t+=d;}}
 *tb=best;return hit;}
static float shad(V p,V L,float D,float k){float r=1;for(int i=0;i<no;i++){O*o=ob+i;V q=sub(o->p,p);float b=dot(q,L);float pen=b>0?b/k:0;float R=o->br+pen*1.2f;float c=dot(q,q)-b*b;if(c>R*R||b<-o->br)continue;
  float t0=b-R;if(t0<.03f)t0=.03f;float t1=b+R;if(t1>D)t1=D;V lo=toL(o,p),ld=dirL(o,L);float t=t0;for(int j=0;j<20&&t<t1;j++){float d=sdL(o,add(lo,mul(ld,t)));float s=.5f+.5f*k*d/t;if(s<r)r=s;if(r<=0)return 0;t+=d>.05f?d:.05f;if(d<-.2f)return 0;}}
 r=cl(r,0,1);return r*r*(3-2*r);}
static float envw(V R,float rough){V w=nrm(v(gparm[20],gparm[21],gparm[22]));V a=nrm(v(-w.z,0,w.x));V b=v(w.y*a.z-w.z*a.y,w.z*a.x-w.x*a.z,w.x*a.y-w.y*a.x);float d=dot(R,w);if(d<=.05f)return 0;float x=fabsf(dot(R,a)/d),y=fabsf(dot(R,b)/d);float s=gparm[23],e=rough*.9f+.02f;float X=cl((s+e-x)/(2*e),0,1),Y=cl((s*1.3f+e-y)/(2*e),0,1);X=X*X*(3-2*X);Y=Y*Y*(3-2*Y);float area=s/(s+e);return X*Y*area*area;}
static int shade(V ro,V rd,float pix,float*out,float*dep,int*face){
 float t=1e4f;V pl;int g=-1;
 float gy=gparm[30];if(rd.y<-1e-4f){float q=(gy-ro.y)/rd.y;if(q>0&&q<t){t=q;g=0;}}
 if(gparm[17]<0&&rd.z<0){float q=(gparm[17]-ro.z)/rd.z;if(q>0&&q<t){t=q;g=1;}}
 int h=trace(ro,rd,&t,&pl);float s[NC];V N;V P=add(ro,mul(rd,t));*dep=t;*face=0;
 float px=pix*t;
 if(h>=0){O*o=ob+h;V n=nL(o,pl);V an=v(fabsf(n.x),fabsf(n.y),fabsf(n.z));int f=an.z>=an.x&&an.z>=an.y?0:(an.y>=an.x?1:2);*face=f;
  T*tt=tx+mt[o->mat][f];float u,w,su,sw;V A,B;
  float dy=o->h.y+1e-3f;
  if(f==0){u=pl.x/(2*o->h.x)+.5f;w=.5f-pl.y/(2*dy);su=2*o->h.x;sw=2*dy;A=v(1,0,0);B=v(0,-1,0);if(n.z<0)u=1-u,A.x=-1;}
  else if(f==1){u=pl.x/(2*o->h.x)+.5f;w=pl.z/(2*o->h.z+1e-3f)+.5f;su=2*o->h.x;sw=2*o->h.z;A=v(1,0,0);B=v(0,0,1);}
  else{u=pl.z/(2*o->h.z+1e-3f)+.5f;w=.5f-pl.y/(2*dy);su=2*o->h.z;sw=2*dy;A=v(0,0,1);B=v(0,-1,0);}
  if(su<.5f)su=.5f;if(sw<.5f)sw=.5f;V nw=dirW(o,n);float cs=fabsf(dot(nw,rd));float lod=log2f(px/sqrtf(cs+.05f)/(su/tt->W[0])+1e-6f);
  samptri(tt,lod,u,w,s,0);
  int L=cl(lod,0,tt->nl-1);float q1[NC],q2[NC];float eu=1.f/tt->W[L],ew=1.f/tt->H[L];samp(tt,L,u+eu,w,q1,0);samp(tt,L,u,w+ew,q2,0);float q0[NC];samp(tt,L,u,w,q0,0);
  float da=(q1[3]-q0[3])/(eu*su),db=(q2[3]-q0[3])/(ew*sw);da=cl(da,-2,2);db=cl(db,-2,2);
  n=nrm(sub(n,add(mul(A,da),mul(B,db))));N=dirW(o,n);
 }else if(g>=0){T*tt=tx+(int)gparm[g?18:16];float ts=gparm[g?19:15];float u,w;V A,B;if(!g){u=P.x/ts;w=P.z/ts;N=v(0,1,0);A=v(1,0,0);B=v(0,0,1);}else{u=P.x/ts;w=-P.y/ts;N=v(0,0,1);A=v(1,0,0);B=v(0,-1,0);}
  float cs=fabsf(dot(N,rd));float lod=log2f(px/sqrtf(cs+.02f)/(ts/tt->W[0])+1e-6f);samptri(tt,lod,u,w,s,1);int L=cl(lod,0,tt->nl-1);float q1[NC],q2[NC],q0[NC];float eu=1.f/tt->W[L],ew=1.f/tt->H[L];samp(tt,L,u+eu,w,q1,1);samp(tt,L,u,w+ew,q2,1);samp(tt,L,u,w,q0,1);
  N=nrm(sub(N,add(mul(A,cl((q1[3]-q0[3])/(eu*ts),-1,1)),mul(B,cl((q2[3]-q0[3])/(ew*ts),-1,1)))));s[5]=s[6]=s[7]=0;
 }else{for(int k=0;k<3;k++)out[k]=gparm[27+k];out[3]=out[4]=out[5]=0;return -2;}
 V lp=v(gparm[0],gparm[1],gparm[2]);V Lv=sub(lp,P);float D=sqrtf(dot(Lv,Lv));V L=mul(Lv,1/D);float att=gparm[14]/D;att*=att;
 V Pn=add(P,mul(N,.02f));float nl=dot(N,L);float ss=h>=0?gparm[37]:0;float df=cl((nl+ss)/(1+ss),0,1);float sh=df>0?shad(Pn,L,D,gparm[6]):0;
 if(gparm[7]>0&&df>0){float sc=gparm[38];float gx=(P.x-L.x/L.y*P.y)/sc,gz=(P.z-L.z/L.y*P.y)/sc;gx-=floorf(gx);gz-=floorf(gz);float a=gx*gw,b=gz*gw;int i=a,j=b;a-=i;b-=j;int i1=(i+1)%gw,j1=(j+1)%gw;i%=gw;j%=gw;sh*=(gob[j*gw+i]*(1-a)+gob[j*gw+i1]*a)*(1-b)+(gob[j1*gw+i]*(1-a)+gob[j1*gw+i1]*a)*b;}
 float ao=0,sc=1;for(int i=1;i<=3;i++){float e=.22f*i*i;float d=mapn(add(P,mul(N,e)),e);ao+=sc*(e-d)/e;sc*=.6f;}ao=cl(1-.55f*ao,0.1f,1);
 V R=sub(rd,mul(N,2*dot(N,rd)));float fr=1-cl(-dot(N,rd),0,1);float fres=.04f+.6f*fr*fr*fr*fr*fr;float gl=cl(s[4],0,1.5f);float rough=cl(1-gl,.05f,1);
 V H=nrm(sub(L,rd));float sp=powf(cl(dot(N,H),0,1),6+200*gl*gl)*(.6f+8*gl*gl)*fres*1.2f;float ew=envw(R,rough)*fres*1.5f*(.3f+gl);
 float up=.5f+.5f*N.y;float fl=cl(.3f+.7f*dot(N,nrm(v(gparm[31],gparm[32],gparm[33]))),0,1);
 for(int k=0;k<3;k++){float am=gparm[11+k]+(gparm[8+k]-gparm[11+k])*up;float e=gparm[3+k]*att*df*sh+am*ao+gparm[34+k]*fl*ao;
  if(ss>0){float tint=s[k];e=e*(1+.10f*(tint-.5f));}
  out[k]=s[k]*e+(gparm[3+k]*att*sh*sp*(nl>0))+gparm[24+k]*ew*(.4f+.6f*ao)+gl*fres*.5f*am*ao;}
 out[3]=s[5];out[4]=s[6]*(s[5]>0);out[5]=s[7]*(s[5]>0);return h;}
/* img: H*W*6, dep: H*W */
void setobj(int i,float*f){O*o=ob+i;o->type=f[0];o->p=v(f[1],f[2],f[3]);o->r0=v(f[4],f[5],f[6]);o->r1=v(f[7],f[8],f[9]);o->r2=v(f[10],f[11],f[12]);o->h=v(f[13],f[14],f[15]);o->rd=f[16];o->mat=f[17];o->warp=f[18];o->seed=f[19];o->br=f[20];o->disp=f[21];o->dw=f[22];o->dh=f[23];o->dmax=f[24];o->taper=f[25];if(i+1>no)no=i+1;}
void reset(){no=0;for(int i=0;i<ntx;i++)for(int l=1;l<tx[i].nl;l++)free(tx[i].d[l]);ntx=0;}
int addtex(float*d,int W,int H){T*t=tx+ntx;t->nl=1;t->W[0]=W;t->H[0]=H;t->d[0]=d;while(t->nl<9&&t->W[t->nl-1]>3&&t->H[t->nl-1]>3){int l=t->nl,w=t->W[l-1]/2,h=t->H[l-1]/2;float*q=malloc(sizeof(float)*w*h*NC),*p=t->d[l-1];int pw=t->W[l-1];for(int y=0;y<h;y++)for(int x=0;x<w;x++)for(int k=0;k<NC;k++){float*a=p+((2*y)*pw+2*x)*NC+k;q[(y*w+x)*NC+k]=.25f*(a[0]+a[NC]+a[pw*NC]+a[pw*NC+NC]);}t->d[l]=q;t->W[l]=w;t->H[l]=h;t->nl++;}return ntx++;}
void setmat(int i,int a,int b,int c){mt[i][0]=a;mt[i][1]=b;mt[i][2]=c;}
void render(float*gp,float*cam,float*db,float*gb,int gwid,int W,int H,float*img,float*dep){
 memcpy(gparm,gp,sizeof(gparm));dispb=db;gob=gb;gw=gwid;V e=v(cam[0],cam[1],cam[2]),r=v(cam[3],cam[4],cam[5]),u=v(cam[6],cam[7],cam[8]),f=v(cam[9],cam[10],cam[11]);float fl=cam[12];
 int*id=malloc(sizeof(int)*W*H);float pix=1.f/(fl*W);
 #define RAY(X,Y) nrm(add(f,add(mul(r,((X)/W-.5f)/fl),mul(u,-((Y)/W-.5f*H/W)/fl))))
 for(int y=0;y<H;y++)for(int x=0;x<W;x++){int fc;int h=shade(e,RAY(x+.5f,y+.5f),pix,img+(y*W+x)*6,dep+y*W+x,&fc);id[y*W+x]=h*3+fc;}
 float*o2=malloc(sizeof(float)*W*H*6);memcpy(o2,img,sizeof(float)*W*H*6);
 static const float jx[4]={.125f,.625f,.375f,.875f},jy[4]={.375f,.125f,.875f,.625f};
 for(int y=1;y<H-1;y++)for(int x=1;x<W-1;x++){int q=y*W+x;int n4[4]={q-1,q+1,q-W,q+W};int go=0;float l=img[q*6]+img[q*6+1]+img[q*6+2];for(int k=0;k<4;k++){int z=n4[k];float m=img[z*6]+img[z*6+1]+img[z*6+2];if(id[z]!=id[q]||(id[q]>=0?fabsf(m-l)>.3f*(m+l):0))go=1;}
  if(go){float a[6]={0},b[6],dd;int fc;for(int k=0;k<4;k++){shade(e,RAY(x+jx[k],y+jy[k]),pix,b,&dd,&fc);for(int c=0;c<6;c++)a[c]+=b[c]>4?4:b[c];}for(int c=0;c<6;c++)o2[q*6+c]=a[c]*.25f;}}
 memcpy(img,o2,sizeof(float)*W*H*6);free(o2);free(id);}
