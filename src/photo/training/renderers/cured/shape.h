/* Signed distances of the things on the table, in their own frames (soap: x across
	the mould,y up in the mould,z along the loaf;other things: z up). */
#ifndef SHAPE_H
#define SHAPE_H
#include "scene.h"
enum {S_BAR,S_ELL,S_CYL,S_BOWL,S_TORUS,S_CAPS,S_LATHE,S_OVAL,S_GLOVE,S_PILLOW,S_FRUIT};

static float brain(v3 p,const float *f){ /* folds of an overheated top, 0..1 deep */
	uint32_t s=(uint32_t)f[F_SEED];float fr=1.0f/f[F_SIZE];
	v3 q=V(p.x,0,p.z);int v=(int)f[F_VAR];
	if(v==1) q=V(q.x*.55f,0,q.z*1.6f);
	if(v==2) q=V(q.x*1.4f,0,q.z*.7f);
	q=warp(q,.5f*fr,.9f*f[F_SIZE],s);
	float n=fabsf(gn(mul(q,fr),s+5)+.3f*gn(mul(q,2.1f*fr),s+6));
	float d=expf(-n*5.5f);
	if(v==2) d=.6f*d+.4f*(.5f+.5f*gn(mul(q,1.5f*fr),s+9));
	float m=f[F_COV]>.93f?1:sstep(-.12f,.12f,fbm(V(p.x*.25f,3,p.z*.25f),2,s+33)
				+ (f[F_COV]-.5f)*1.1f);
	return d*m;
}
static float top_disp(const float *O,v3 p){
	int k=(int)O[O_TOP];float a=O[O_TAMP],r=0;uint32_t s=(uint32_t)O[O_SEED]+900;
	float x=p.x,z=p.z+O[O_SLICE],hx=O[O_DIM];
	if(k==1) r=a*gn(V(x*.35f,0,z*.3f),s);
	if(k==2){float u=x/hx;r=a*(1.2f*expf(-u*u*3.5f)+.55f*sinf(z*2.1f+2.5f*gn(V(x*.5f,1,z*.4f),s))
					* cosf(x*1.3f+.5f)-.6f);}
	if(k==3){v3 q=warp(V(x,0,z),.35f,1.6f,s);r=a*(.8f*sinf(q.x*2.2f+1.5f*sinf(q.z*1.1f))+.3f*gn(mul(q,1.5f),s));}
	if(k==4){float t=sinf(x*2.6f+2.2f*gn(V(x*.3f,0,z*.5f),s));r=a*(.45f*t+.3f*gn(V(x*.9f,2,z*.8f),s+2));}
	const float *f=O[O_FLAW]>0?flaw(WRINKLE):0;
	if(f) r-=.42f*f[F_ST]*(.35f+.65f*f[F_SIZE])*brain(V(x,0,z),f);
	return r;
}
static float caps(v3 p,v3 a,v3 b,float r){
	v3 pa=sub(p,a),ba=sub(b,a);float h=sat(dot(pa,ba)/dot(ba,ba));
	return len(sub(pa,mul(ba,h)))-r;
}
static float glove(v3 p,v3 d){ /* bar's half sizes d; palm behind (-z), thumb before */
	float k=1e9f,bx=d.x,bz=d.z;
	float side=1;
	for(int i=0;i<4;i++){ /* fingers come round the far edge */
		float y=(-1.5f+i)*1.5f-.2f;
		float l=i==3?.75f:i==0?.9f:1.f;
		v3 a=V(-bx*.6f,y*.9f-.3f,-bz-1.5f),b=V(bx+.55f,y,-bz-.35f),c=V(bx+.35f,y+.12f,bz+.35f*l),
			e=V(bx-1.35f*l,y+.2f,bz+.62f);
		float f=fminf(caps(p,a,b,.72f),smin(caps(p,b,c,.7f),caps(p,c,e,.68f),.06f));
		k=smin(k,f,.12f);
	}
	float palm=caps(p,V(-bx*.2f,-2.2f,-bz-1.7f),V(-bx*.2f,2.0f,-bz-1.6f),1.5f);
	palm=smin(palm,caps(p,V(-bx*.5f,-1.5f,-bz-1.9f),V(-bx-3.f,-12.f,-bz-5.f),2.3f),2.f);
	float th=smin(caps(p,V(-bx*.6f,-2.2f,-bz-1.2f),V(-bx-.75f,-.9f,bz*.2f),.95f),
					caps(p,V(-bx-.75f,-.9f,bz*.2f),V(-bx+1.25f,.9f,bz+.7f),.74f),.4f);
	return side*smin(smin(k,palm,.8f),th,.5f);
}
static float lathe(float r,float z,v3 d,int kind){/* bottles, cups, jars, pears: radius by height */
	float t=z/d.z,R;
	if(kind==0) R=t<.25f?1:t<.6f?mixf(1,.33f,sstep(.25f,.6f,t)):.33f; /* bottle */
	else if(kind==1) R=.72f+.28f*sstep(-1,.4f,t); /* cup */
	else if(kind==2) R=t<.7f?1:.86f; /* jar */
	else if(kind==3) R=sqrtf(sat(1-t*t))*(1-.32f*sstep(-.2f,.9f,t)); /* pear */
	else R=.5f+.5f*cosf(t*1.9f-.5f); /* vase */
	float q=r-R*d.x,e=fabsf(z)-d.z;
	float o=sqrtf((q>0?q*q:0)+(e>0?e*e:0))+fminf(fmaxf(q,e),0);
	if(kind==1) o=fmaxf(o,-fmaxf(r-R*d.x+.35f,-(z+d.z-.5f)));
	return o-.12f;
}
static float sdf(const float *O,v3 p){
	v3 d=at(O,O_DIM);float r=O[O_RND];
	switch ((int)O[O_SHAPE]){
	case S_BAR: {
		float hy=d.y;
		if(p.y>d.y-1.2f&&(O[O_TOP]>0||flaw(WRINKLE))) hy+=top_disp(O,p);
		float x=fabsf(p.x)-d.x+r,y=(p.y>0?p.y-hy:-p.y-d.y)+r,z=fabsf(p.z)-d.z+r;
		float X=fmaxf(x,0),Y=fmaxf(y,0),Z=fmaxf(z,0);
		return sqrtf(X*X+Y*Y+Z*Z)+fminf(fmaxf(x,fmaxf(y,z)),0)-r;}
	case S_ELL: {v3 q=V(p.x/d.x,p.y/d.y,p.z/d.z),g=V(q.x/d.x,q.y/d.y,q.z/d.z);
		float k=len(q);return k*(k-1)/(len(g)+1e-6f);}
	case S_CYL: {float q=sqrtf(p.x*p.x+p.y*p.y)-d.x+r,e=fabsf(p.z)-d.z+r;
		return sqrtf((q>0?q*q:0)+(e>0?e*e:0))+fminf(fmaxf(q,e),0)-r;}
	case S_OVAL: {float k=sqrtf(p.x*p.x/(d.x*d.x)+p.y*p.y/(d.y*d.y));
		float dome=r*(1-k*k)*.7f;
		float q=(k-1)*d.y+r,e=fabsf(p.z)-d.z-dome+r;
		return (sqrtf((q>0?q*q:0)+(e>0?e*e:0))+fminf(fmaxf(q,e),0)-r)*.8f;}
	case S_BOWL: {v3 q=V(p.x,p.y,p.z-d.z);float l=len(V(q.x,q.y,q.z*d.x/(2*d.z)));
		float s=fabsf(l-d.x)-.22f;return fmaxf(s,p.z-d.z)*.7f;}
	case S_TORUS: {float q=sqrtf(p.x*p.x+p.y*p.y)-d.x+d.z;return sqrtf(q*q+p.z*p.z)-d.z;}
	case S_CAPS: return caps(p,V(-d.x+d.z,0,0),V(d.x-d.z,0,0),d.z);
	case S_LATHE: return lathe(sqrtf(p.x*p.x+p.y*p.y),p.z,d,(int)O[O_P1])*.8f;
	case S_GLOVE: return glove(p,V(O[O_P1],O[O_P2],O[O_SC]));
	case S_PILLOW: {float u=p.x/d.x,v=p.y/d.y;float h=d.z*(1-.5f*(u*u+v*v))+.12f*gn(mul(p,.6f),(uint32_t)O[O_SEED]);
		float x=fabsf(p.x)-d.x+r,y=fabsf(p.y)-d.y+r,z=fabsf(p.z)-h+r,X=fmaxf(x,0),Y=fmaxf(y,0),Z=fmaxf(z,0);
		return (sqrtf(X*X+Y*Y+Z*Z)+fminf(fmaxf(x,fmaxf(y,z)),0)-r)*.85f;}
	case S_FRUIT: {float q=sqrtf(p.x*p.x+p.y*p.y);float e=.28f*d.x*expf(-q*q*9/(d.x*d.x))*(p.z>0?1:.6f);
		return (len(V(p.x,p.y,p.z*d.x/d.z))-d.x+e)*.75f;}
	}
	return 1e9f;
}
#endif
