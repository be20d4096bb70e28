/* Tables, cloths, walls and the stuff of things that are not soap. */
#ifndef TABLE_H
#define TABLE_H
#include "scene.h"
static Tex tx(v3 c,float gloss,float rough){Tex t={c,0,gloss,rough,0,1,1};return t;}
static float frac(float x){return x-floorf(x);}
static Tex wood(v3 p,v3 A,v3 B,uint32_t s,float plank){
	float k=floorf(p.y/plank);uint32_t h=hash3((int)k,1,2,s);v3 q=V(p.x*.07f+u01(h)*40,p.y*1.1f,p.z*1.1f+u01(nexth(h))*9);
	q=warp(q,.8f,.25f,s);float g=.5f+.5f*sinf(q.y*9+7*gn(mul(q,.7f),s+1)),f=gn(V(p.x*.5f,p.y*13,p.z*13),s+3);
	Tex t=tx(mul(mix3(A,B,sat(.25f+.3f*g+.28f*f+.25f*gn(mul(q,.35f),s+7))),.82f+.36f*u01(nexth(h))*1),.25f,.45f);
	float e=fabsf(frac(p.y/plank)-.5f)*plank;e=plank*.5f-e;if(e<.12f&&plank<90){t.c=mul(t.c,.25f+.75f*e/.12f);t.h=-.15f*(1-e/.12f);}
	t.h+=.006f*f+.004f*g;return t;
}
static Tex table(const float *G,int k,v3 w,v3 A,v3 B,v3 C,uint32_t s){
	float ca=cosf(G[G_TR]),sa=sinf(G[G_TR]),S=G[G_TS];v3 p=V((w.x*ca+w.y*sa),(-w.x*sa+w.y*ca),w.z);Tex t=tx(A,.15f,.5f);float a,b;uint32_t id;
	switch (k){
	case 0: return wood(p,A,B,s,7*S);
	case 1: return wood(p,A,B,s,99);
	case 2: {v3 q=warp(mul(p,.06f/S),.9f,.8f,s);float n=fabsf(fbm(q,4,s+1)),m=fabsf(fbm(mul(q,2.3f),3,s+2));
		t=tx(mix3(A,B,sat(.5f*expf(-n*30)+.25f*expf(-m*18)+.18f*fbm(mul(p,.1f),3,s))),.6f,.18f);break;}
	case 3: case 4: case 10: case 14: { /* cloth: linen, gingham, stripes, dots */
		float th=9/S;float u=p.x*th+.35f*gn(mul(p,1.5f),s+5),v=p.y*th+.35f*gn(mul(p,1.5f),s+6);
		float ov=(((int)floorf(u)+(int)floorf(v)) & 1)?1:-1,bu=sinf(3.1416f*frac(u)),bv=sinf(3.1416f*frac(v));float slub=gn(V(p.x*.5f,floorf(v),1),s)+gn(V(floorf(u),p.y*.5f,7),s);
		v3 c=A;float P=3.2f*S;
		if(k==4){int i=frac(p.x/P)<.5f,j=frac(p.y/P)<.5f;c=mix3(A,B,.5f*(i+j));}
		if(k==10) c=frac(p.x/(P*1.7f))<.22f+.1f*(s % 3)?B:A;
		if(k==14){float x=frac(p.x/P)-.5f,y=frac(p.y/P)-.5f;c=x*x+y*y<.05f?B:A;}
		t=tx(mul(c,.86f+.1f*(ov>0?bu:bv)+.09f*slub),.03f,.9f);t.h=.018f*(ov>0?bu:bv)*S+G[G_FOLD]*(.9f*gn(V(p.x*.07f,p.y*.17f,0),s+8)+.25f*gn(V(p.x*.3f,p.y*.14f,0),s+9));break;}
	case 5: {float n=fbm(mul(p,.5f),4,s);t=tx(mul(mix3(A,B,sat(.5f+.6f*n)),.9f+.15f*gn(mul(p,9),s)),.2f,.5f);t.h=.05f*n+.01f*gn(mul(p,5),s+2);break;}
	case 6: {float n=fbm(mul(p,.12f),4,s),f=gn(mul(p,4),s+2);t=tx(mul(mix3(A,B,sat(.5f+.8f*n)),1+.07f*f+.06f*gn(mul(p,17),s)),.12f,.6f);
		float in;float m=dots(p,2,.02f,.12f,.2f,.2f,0,A,s,&id,&in);t.c=mul(t.c,1-.5f*m);t.h=-.06f*m+.006f*f;break;}
	case 7: {v3 q=warp(p,.1f,2,s);float n=fabsf(gn(mul(q,.22f),s+1)),m=fabsf(gn(mul(q,.5f),s+2));t=tx(A,.12f,.5f);t.h=G[G_FOLD]*(.4f*n+.18f*m)+.002f*gn(mul(p,9),s);break;}
	case 8: {float T=7*S,x=frac(p.x/T),y=frac(p.y/T),e=fminf(fminf(x,1-x),fminf(y,1-y))*T;id=hash3((int)floorf(p.x/T),(int)floorf(p.y/T),0,s);
		t=tx(mul(mix3(A,B,.35f*u01(id)),.97f+.06f*fbm(mul(p,.3f),3,s)),.7f,.15f);if(e<.18f){t=tx(mul(C,.9f+.2f*gn(mul(p,6),s)),.05f,.8f);t.h=-.08f;} else t.h=.05f*sstep(.18f,.5f,e)+.01f*gn(mul(p,.5f),s);break;}
	case 9: {voro(V(p.x/(1.3f*S),p.y/(1.3f*S),.5f),s,&a,&b,&id);float e=b-a;v3 c=u01(id)<.33f?A:u01(id)<.66f?B:C;t=tx(e<.14f+.35f*u01(nexth(id))?mul(G[G_SEED]>0?V(.75f,.73f,.7f):A,.95f):mul(c,.7f+.5f*u01(nexth(id))),.5f,.2f);break;}
	case 11: t=tx(mul(A,1+.015f*gn(mul(p,3),s)),G[G_GLOSS],.25f);t.h=.0015f*gn(mul(p,2),s+1);break;
	case 12: {float T=4.6f*S,x=frac(p.x/T);t=wood(V(p.y,p.x,0),A,B,s,T);if(x>.72f) t=tx(mul(A,.16f),0,1);break;}
	case 13: {float n=gn(mul(p,3.2f),s),m=gn(mul(p,6.5f),s+1);t=tx(mul(A,.8f+.22f*n+.16f*m),.02f,1);t.h=.09f*n+.05f*m+G[G_FOLD]*.8f*gn(mul(p,.12f),s+4);break;}
	case 15: {float n=fbm(mul(p,.25f),3,s);float ring=fabsf(len(sub(p,V(9,6,0)))-4.2f);t=tx(mix3(A,B,sat(.3f+n)),.3f,.35f); /* used baking tray */
		t.c=mul(t.c,1-.25f*expf(-ring*ring*9));float q=fabsf(gn(V(p.x*.3f+p.y*.2f,p.y*4-p.x*3,0),s+3));t.c=mul(t.c,1+.12f*sstep(.05f,0,q));break;}
	}
	return t;
}
enum {M_SOAP=0,M_PLAIN=1,M_WOOD,M_SPECKLE,M_BREAD,M_CHEESE,M_FUR,M_LEAF,M_STONE,M_METAL,M_SPONGE,M_CLOTH,M_CITRUS,M_CHOC,M_FEATHER};
static Tex stuff(const float *O,v3 p,v3 n){
	uint32_t s=(uint32_t)O[O_SEED];v3 A=at(O,O_A),B=at(O,O_B),C=at(O,O_C);Tex t=tx(A,O[O_GLOSS],O[O_ROUGH]);float in;uint32_t id,k;
	switch ((int)O[O_MAT]){
	case M_WOOD: return wood(V(p.x,p.y,p.z*1.1f),A,B,s,99);
	case M_SPECKLE: {float m=dots(p,.5f,.01f,.09f,.6f,.3f,0,A,s,&id,&in);t.c=mix3(t.c,B,m*.9f);t.c=mul(t.c,1+.05f*fbm(mul(p,.6f),3,s));break;}
	case M_BREAD: {float cut=fabsf(p.x)>O[O_DIM]-.45f?1:0,m=dots(p,.6f,.03f,.24f,.8f,.3f,0,A,s,&id,&in),m2=dots(p,.3f,.02f,.1f,.7f,.3f,0,A,s+2,&id,&in),f=fbm(mul(p,1.4f),3,s);
		v3 crust=mix3(B,mul(B,.4f),sat(.4f+f));m=fmaxf(m,m2);t.c=cut?mul(mix3(A,mul(A,.55f),m),.95f+.1f*f):crust;t.h=cut?-.1f*m:.05f*f+.01f*gn(mul(p,6),s);t.tr=.3f;break;}
	case M_CHEESE: {float m=O[O_P2]>0?dots(p,1.8f,.1f,.55f,.8f,.12f,0,A,s,&id,&in):0;t.c=mul(mix3(A,mul(A,.6f),m),1+.03f*fbm(p,2,s));t.h=-.3f*m*in;t.occ=1-.4f*m;t.tr=.7f;break;}
	case M_FUR: {v3 q=V(p.x*1.5f,p.y*4,p.z*4),w=warp(p,.25f,1.2f,s);float f=gn(mul(q,1.5f),s)+.6f*gn(mul(q,3.3f),s+1);float st=O[O_P2]>0?sstep(.1f,.35f,sinf(w.x*1.5f)*.7f+.3f*f):sstep(0,.2f,fbm(mul(w,.25f),2,s+4));
		t.c=mul(mix3(A,B,st),.75f+.28f*f);t.h=.08f*f;t.gloss=.05f;t.rough=.8f;break;}
	case M_LEAF: {float v=fabsf(frac(fabsf(p.x)*1.2f+fabsf(p.y)*.9f)-.5f);t.c=mul(A,.8f+.3f*sstep(0,.1f,fabsf(p.y))-.1f*sstep(.05f,0,v));t.tr=.8f;break;}
	case M_STONE: t.c=mul(mix3(A,B,sat(.5f+fbm(mul(p,.7f),4,s))),.9f+.16f*gn(mul(p,8),s));t.h=.03f*fbm(mul(p,1.2f),3,s+1);break;
	case M_METAL: t.c=mul(A,.9f+.1f*gn(V(p.x*.4f,p.y*.4f,p.z*9),s));t.gloss=2;t.rough=.2f;break;
	case M_SPONGE: {float m=dots(p,.5f,.05f,.22f,.85f,.25f,0,A,s,&id,&in),m2=dots(p,.22f,.02f,.09f,.85f,.25f,0,A,s+1,&k,&in);m=fmaxf(m,m2);t.c=mul(p.z>O[O_DIM+2]*.55f&&O[O_P2]>0?B:A,1-.55f*m);t.h=-.16f*m;t.gloss=0;break;}
	case M_CLOTH: t.c=mul(frac(p.y*.35f)<.2f&&O[O_P2]>0?B:A,.85f+.14f*gn(mul(p,5),s));t.h=.06f*gn(mul(p,4),s+1);t.gloss=0;break;
	case M_CITRUS: {float m=dots(p,.22f,.02f,.09f,.9f,.7f,0,A,s,&id,&in);t.h=-.02f*m;t.c=mul(mix3(A,B,sat(.3f+.8f*fbm(mul(p,.4f),2,s))),1-.08f*m);break;}
	case M_CHOC: {float x=frac(p.x/2.4f)-.5f,y=frac(p.y/2.4f)-.5f,e=fmaxf(fabsf(x),fabsf(y));t.h=-.25f*sstep(.4f,.49f,e);t.occ=1-.35f*sstep(.44f,.5f,e);break;}
	case M_FEATHER: {v3 w=warp(p,.5f,.8f,s);float f=fabsf(frac(w.x*.9f+.3f*sinf(w.y*3))-.5f);t.c=mul(mix3(A,B,sat(.4f+fbm(mul(p,.5f),2,s))),.7f+.5f*f);t.h=.1f*f;break;}
	}
	(void)n;(void)C;return t;
}
#endif
