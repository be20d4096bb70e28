/* What soap looks like before anything goes wrong: colour, design, additions. */
#ifndef SOAP_H
#define SOAP_H
#include "shape.h"
typedef struct {v3 p,n;float ez,ex,ey,rim;int face;v3 d;float v,thr;v3 lo,hi;int two;float gapd;} Pt;
/* face 0 cut (z), 1 top (+y), 2 side (x), 3 bottom; rim: distance to the rim in the cut plane */
static float layer_y(const float *O,int i,float x,float z){
	int n=(int)O[O_NL];uint32_t s=(uint32_t)O[O_SEED]+40+i*7;
	float hy=O[O_DIM+1],y=-hy+2*hy*(i+1.f)/n+.25f*hy/n*(u01(hash3(i,3,1,s))*2-1);
	return y+O[O_P1]*(.6f*gn(V(x*.35f,i*3.f,z*.12f),s)+.16f*gn(V(x*1.1f,i*3.f,z*.3f),s+1));
}
static v3 pick(const float *O,int i){return at(O,O_A+3*(i % 3));}
static v3 design(const float *O,Pt *P){
	v3 p=P->p,A=at(O,O_A),B=at(O,O_B),C=at(O,O_C),c=A;
	uint32_t s=(uint32_t)O[O_SEED];float sc=O[O_SC],e=.04f+.22f*O[O_P2];
	p.z=(p.z+O[O_SLICE])*.35f;P->two=0;P->v=0;P->thr=0;P->gapd=9;
	v3 q;float v,w;
	switch ((int)O[O_DES]){
	case 1: { /* layers */
		int n=(int)O[O_NL],k=0;float d=9;
		for(int i=0;i<n-1;i++){
			float b=layer_y(O,i,p.x,p.z*2.8f),t=P->p.y-b;
			if(t>0) k=i+1;
			if(fabsf(t)<fabsf(d)){d=t;P->lo=pick(O,i);P->hi=pick(O,i+1);}
		}
		c=pick(O,k);c=mix3(P->lo,P->hi,sstep(-e*.5f,e*.5f,d));
		P->v=d;P->two=1;P->gapd=d;
		if(O[O_MICA]>0){float l=expf(-d*d/(.0011f*(1+.6f*gn(mul(p,3),s))));
			c=mix3(c,at(O,O_AC),sat(l*O[O_MICA]*(1+gn(mul(p,7),s+3))));}
		break;}
	case 2: /* hanger and drop swirls */
		q=warp(mul(p,sc),.45f,2.4f,s);q=warp(q,1.1f,.5f,s+9);
		v=sinf(q.x*2.5f+3.2f*gn(mul(q,.35f),s+3))*.8f+.5f*gn(V(q.x*1.6f,q.y*.5f,q.z),s+4)+.12f*gn(V(q.x*6,q.y*1.3f,q.z),s+6)-.1f;w=gn(mul(q,.7f),s+77);
		c=mix3(A,B,sstep(.12f-e,.12f+e,v));c=mix3(c,C,sstep(.3f,.3f+2*e,w)*O[O_P1]);
		P->v=(v-.12f)*.6f/sc;P->two=1;P->lo=A;P->hi=B;break;
	case 3: { /* combed, taiwan */
		q=warp(p,.5f,.5f,s);float t=q.y*sc*1.2f;
		v=sinf(q.x*sc*3.f+2.4f*sinf(t)+.8f*sinf(2*t+1));w=sinf(q.x*sc*1.5f+2.4f*sinf(t)+2);
		c=mix3(A,B,sstep(-e*2,e*2,v));c=mix3(c,C,sstep(.75f-e,.75f+e,w)*O[O_P1]);
		P->v=v*.33f/sc;P->two=1;P->lo=A;P->hi=B;break;}
	case 4: { /* fading from one colour to another */
		float t=P->p.y/O[O_DIM+1]*.5f+.5f+.12f*fbm(mul(p,.6f),3,s);
		int n=(int)O[O_NL];if(n>2){float f=t*n,k=floorf(f);t=(k+sstep(.5f-.2f-e,.5f+.2f+e,f-k))/n;}
		c=mix3(A,B,sstep(0,1,t));break;}
	case 5: /* rings poured round a point */
		q=warp(p,.5f,.7f,s);v=sinf(len(V(q.x-O[O_P1]*2+1,(q.y+1)*1.2f,.35f))*sc*3.2f+.5f*gn(mul(q,1.4f),s+6));
		c=mix3(A,B,sstep(-e*2,e*2,v));P->v=v*.3f/sc;P->two=1;P->lo=A;P->hi=B;break;
	case 6: /* in-the-pot wisps */
		q=warp(mul(p,sc),.3f,1.8f,s);q.y*=.5f;v=fbm(V(q.x*1.7f,q.y*.7f,q.z),4,s+5);w=fbm(mul(q,.7f),3,s+8);
		c=mix3(A,B,sstep(.02f-e*.7f,.1f+e,v));c=mix3(c,C,sstep(.15f,.15f+e*2,w)*O[O_P1]);
		P->v=(v-.05f)*1.1f/sc;P->two=1;P->lo=A;P->hi=B;break;
	case 7: /* thin pencil veins of a marble look */
		q=warp(mul(p,sc),.5f,1.4f,s);v=fabsf(fbm(mul(q,.6f),3,s+1));w=fabsf(fbm(mul(q,1.1f),2,s+4));
		c=mix3(A,B,.85f*expf(-v*v*900)+.3f*expf(-v*12));c=mix3(c,C,.5f*O[O_P1]*expf(-w*w*500));break;
	case 8: { /* two halves, wavy wall between */
		v=p.x+.9f*sinf(p.y*sc*.9f)+.5f*gn(mul(p,.6f),s);
		c=mix3(A,B,sstep(-e,e,v));P->v=v*.8f;P->two=1;P->lo=A;P->hi=B;break;}
	}
	if(O[O_EMB]>0){ /* embedded curls, balls or cubes */
		float r=.55f+.4f*O[O_EMB],d;v3 o=V(P->p.x-.6f*O[O_P1],P->p.y+.3f,0);
		if(O[O_EMB]>.5f) d=sqrtf(o.x*o.x+o.y*o.y)-r*1.3f;
		else {float u=fmodf(fabsf(P->p.x+40),2.1f)-1.05f,w2=fmodf(fabsf(P->p.y+40),2.1f)-1.05f;d=fmaxf(fabsf(u*.8f+w2*.5f),fabsf(w2*.8f-u*.5f))-r*.8f;}
		c=mix3(at(O,O_EC),c,sstep(-.02f,.03f,d));
	}
	return c;
}
/* flecks and things put in on purpose; they deceive */
static void additions(const float *O,const Pt *P,Tex *t){
	int k=(int)O[O_ADD];float a=O[O_AMT],in;uint32_t id,s=(uint32_t)O[O_SEED]+600;if(!k) return;
	v3 p=P->p;p.z+=O[O_SLICE];v3 ac=at(O,O_AC);
	if(k==1){ /* oat flakes */
		v3 q=warp(p,3.f,.07f,s);float m=dots(V(q.x,q.y*1.5f,q.z),.55f,.04f,.17f,.6f*a,.25f,0,V(1,0,0),s,&id,&in);
		v3 o=mix3(V(.55f,.38f,.2f),V(.72f,.58f,.38f),u01(nexth(id)));t->c=mix3(t->c,mul(o,.8f+.5f*in),m*.85f);t->h+=.012f*m;
	} else if(k==2||k==3){ /* poppy seed; coffee grounds */
		float c=k==2?.32f:.2f;v3 q=k==3?warp(p,7.f,.05f,s):p;
		float m=dots(q,c,k==2?.035f:.008f,k==2?.05f:.05f,.75f*a,.2f,0,V(1,0,0),s,&id,&in);
		v3 o=k==2?V(.03f,.034f,.05f):mul(V(.09f,.04f,.018f),.6f+u01(nexth(id)));
		t->c=mix3(t->c,o,m);t->h+=(u01(id)>.006f?.018f:-.02f)*m*in;t->gloss+=.25f*m*in;
	} else if(k==4&&P->face==1){ /* glitter or mica dust on the top */
		float g=sat(fbm(mul(p,.5f),3,s)*2+a);uint32_t h=hash3(ifloor(p.x*26),ifloor(p.y*26),ifloor(p.z*26),s);
		t->c=mix3(t->c,ac,g*(.25f+.3f*u01(h)));if(u01(nexth(h))>.965f){t->c=mix3(t->c,V(1,.95f,.8f),g);t->gloss+=g*2;}
	} else if(k==5&&P->face==1){ /* petals and buds on the top */
		v3 q=warp(V(p.x,0,p.z),1.2f,.25f,s);float m=dots(V(q.x*.6f+q.z*.3f,0,q.z*1.2f),1.f,.1f,.36f,.8f*a,.12f,0,V(1,0,0),s,&id,&in);
		v3 o=mul(mix3(ac,V(.3f,.2f,.06f),.6f*u01(nexth(id))),.55f+.7f*in+.25f*gn(mul(p,9),s));t->c=mix3(t->c,o,m);t->h+=.12f*m*in;t->gloss*=1-m;
	} else if(k==6){ /* herbs, ground peel: small dull bits with own colour */
		v3 q=warp(p,5.f,.09f,s);float m=dots(V(q.x*.6f,q.y,q.z),.3f,.01f,.07f,.7f*a,.3f,0,V(1,0,0),s,&id,&in);
		t->c=mix3(t->c,mul(ac,.5f+.8f*u01(nexth(id))),m*.85f);
	}
}
static void stamp(const float *O,const Pt *P,Tex *t){
	int k=(int)O[O_STAMP];if(!k||P->face != 0||P->n.z<0) return;
	float x=P->p.x,y=P->p.y,r=sqrtf(x*x+y*y),a=atan2f(y,x),d=9,R=fminf(O[O_DIM],O[O_DIM+1])*.55f;
	if(k==1) d=fminf(fabsf(r-R),fabsf(r-R*.86f)),d=fminf(d,fabsf(r-R*(.45f+.25f*fabsf(cosf(a*2.5f)))));
	if(k==2){float l=fabsf(x)-R*.75f*sqrtf(sat(1-y*y/(R*R)))*.7f;d=fminf(fabsf(l),fabsf(y)<R?fabsf(x):9); /* leaf */
		float v=fmodf(fabsf(y*3-fabsf(x)*3+30),1.f)-.5f;if(l<0) d=fminf(d,fabsf(v)*.3f);if(fabsf(y)>R) d=9;}
	if(k==3){d=fabsf(r-R*.75f);float px=fmodf(a+6.2832f,.7854f)-.3927f;d=fminf(d,fabsf(px)*r>.05f||r<R*.8f||r>R*1.05f?9:fabsf(px)*r);d=fminf(d,fabsf(r-R*.3f));}
	float m=1-sstep(.035f,.085f,d);t->h-=.06f*m;t->occ*=1-.3f*m;t->c=mul(t->c,1-.08f*m);
}
static void base_soap(const float *O,Pt *P,Tex *t){
	uint32_t s=(uint32_t)O[O_SEED];v3 p=P->p;p.z+=O[O_SLICE];
	t->c=design(O,P);t->gloss=O[O_GLOSS];t->rough=O[O_ROUGH];t->tr=.6f;t->h=0;t->occ=1;t->spec=1;
	float m=fbm(mul(p,.55f),2,s+11),f=gn(mul(p,4.3f),s+12),g=gn(mul(p,19.f),s+13),h=gn(mul(p,9.f),s+14);
	t->c=mul(t->c,1+O[O_MOT]*(.16f*m+.05f*f)+.012f*g+.016f*h);
	t->h+=.0022f*h+.0009f*g+.004f*f;
	/* cured rim is a little drier and paler; edges worn soft, chipped here and there */
	float nick=sat(gn(mul(p,2.1f),s+20)*2-.55f);
	if(P->ez<.14f){float e=1-P->ez/.14f;t->c=mix3(t->c,V(.9f,.88f,.84f),.07f*e*e);t->h-=O[O_WEAR]*nick*e*.05f;}
	if(P->face==1&&O[O_TOP]>0) t->h+=.006f*gn(mul(p,2.7f),s+21);
	if(P->face==2||P->face==3){t->gloss*=1.2f;t->h+=.003f*gn(mul(p,1.3f),s+22);}
	float sc=fabsf(gn(V(p.x*.6f+p.y*.9f,p.y*5-p.x*4,p.z),s+24)); /* scuffs, handling */
	float lo=sat(gn(mul(p,.4f),s+25)-.25f)*O[O_WEAR];t->gloss*=1-.5f*lo;t->h+=.002f*lo*sstep(.1f,0,sc);
	additions(O,P,t);stamp(O,P,t);
	if(O[O_DEW]>0&&P->n.y+P->n.z>.3f){ /* dew: clear beads */
		float in;uint32_t id;float dm=dots(p,.34f,.03f,.15f,.6f*O[O_DEW],.15f,0,V(1,0,0),s+31,&id,&in);
		t->h+=.1f*dm*sqrtf(in);t->c=mul(t->c,1-.2f*dm*(1-in));t->gloss=mixf(t->gloss,2.2f,dm);t->rough=mixf(t->rough,.12f,dm);
	}
	if(O[O_LABEL]>0&&fabsf(P->p.x)<O[O_LABEL]){ /* a paper band round the bar */
		float l=fabsf(P->p.x)/O[O_LABEL];v3 w=V(.82f,.76f,.64f);if(l>.86f&&l<.92f) w=at(O,O_AC);
		float row=fmodf(fabsf(P->p.y*2.2f+30),1.f);if(l<.6f&&row<.34f&&fabsf(P->p.y)<1.6f&&gn(V(p.x*9,floorf(P->p.y*2.2f)*3,0),s)>-.05f) w=V(.12f,.1f,.09f);
		t->c=w;t->gloss=.08f;t->tr=.2f;t->h=.05f+.001f*g;
	}
}
#endif
