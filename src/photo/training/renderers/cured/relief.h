/* Findings that change the surface itself: pits, cracks, gaps, lines, folds, ash. */
#ifndef RELIEF_H
#define RELIEF_H
#include "flaws.h"
static float crackw(const float *f,v3 p,v3 d,float *dist){ /* half width here and distance to the path */
	uint32_t s=(uint32_t)f[F_SEED];int v=(int)f[F_VAR];float st=f[F_ST],w,x,k;
	float jag=.1f*gn(mul(p,2.3f),s+1)+.035f*gn(mul(p,7.f),s+2),big=.45f*gn(V(p.x*0,p.y*.35f,p.z*.35f),s+3);
	if(v==0){ /* along the top, going down into the loaf */
		x=p.x-f[F_X]*.3f-big-jag;k=(d.y-p.y)/(.5f+2.6f*f[F_COV]);
		w=(.03f+.17f*st)*(1-k)*(.65f+.7f*sat(.5f+gn(V(0,0,p.z*.45f),s+4)));
	} else if(v==1){ /* right through a face at some angle */
		float a=f[F_ANG],u=p.x*sinf(a)-p.y*cosf(a);float bow=.5f*gn(V(u*.35f,1,p.z*.2f),s+5);
		x=(p.x-f[F_X])*cosf(a)+(p.y-f[F_Y])*sinf(a)-bow-jag;k=fabsf(u-1.5f*gn(V(1,2,3),s))/(1.2f+4.5f*f[F_COV]);
		w=(.018f+.085f*st)*(1-k*k);
	} else { /* several running in from the rim */
		x=9;w=0;float bx=9;
		for(int i=0;i<4;i++){
			float a=u01(hash3(i,1,1,s))*6.283f,ca=cosf(a),sa=sinf(a),R=fminf(d.x/fmaxf(fabsf(ca),.05f),d.y/fmaxf(fabsf(sa),.05f));
			float u=R-(p.x*ca+p.y*sa),y=-p.x*sa+p.y*ca-.35f*gn(V(u*.8f,i*5.f,p.z*.2f),s+6)-jag;
			float L=(.5f+2.3f*f[F_COV])*(.5f+u01(hash3(i,2,1,s))),wi=(.02f+.09f*st)*(1-u/L);
			if(u>-.3f&&wi>0&&fabsf(y)-wi<bx){bx=fabsf(y)-wi;x=y;w=wi;}
		}
	}
	*dist=fabsf(x);return w;
}
static void flaws_b(const float *O,const Pt *P,Tex *t){
	v3 p=P->p;p.z+=O[O_SLICE];const float *f;float in,m,st,z;uint32_t id,s;int v;
	if((f=flaw(DRAG))&&P->face==0){ /* what the wire drew across the cut */
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];z=f[F_SIZE];float a=f[F_ANG],r=region(f,p,s);
		float u=p.x*cosf(a)+p.y*sinf(a),w=-p.x*sinf(a)+p.y*cosf(a);w+=.004f*u*u*(gn(V(1,5,9),s)>0?1:-1)+.05f*gn(V(u*.25f,w*.3f,0),s+1);
		float h=0,tone=0;
		if(v==0){h=.6f*gn(V(u*.06f,w*7/z,1),s+2)+.5f*gn(V(u*.1f,w*15/z,4),s+3);tone=h;}
		else if(v==1) for(int i=0;i<7;i++){ /* single grooves, each from a crumb on the wire */
			uint32_t q=hash3(i,7,3,s);float w0=(u01(q)-.5f)*2*P->d.y*.95f,b=u01(nexth(q))*.05f+.02f+.03f*z,e=(w-w0)/b,u0=(u01(nexth(nexth(q)))-.6f)*8;
			float on=sstep(u0,u0+.4f,u);h+=on*(-expf(-e*e)+.45f*expf(-(e-1.7f)*(e-1.7f)*1.5f));tone-=.8f*on*expf(-e*e);
		} else {float c=sinf(w*11/z+1.2f*gn(V(u*.12f,w*.8f,2),s+4));h=.6f*c*(.4f+.6f*sat(.5f+gn(V(u*.2f,w,3),s)))+.3f*gn(V(u*.1f,w*12,5),s+5);tone=.5f*h;}
		t->h+=r*h*(.004f+.016f*st)*(v==1?1.8f:1);t->c=mul(t->c,1+r*tone*(.03f+.15f*st));t->occ*=1-.3f*st*r*sat(-h);
	}
	if((f=flaw(DIMPLE))&&P->face != (O[O_SHAPE]==S_BAR?0:9)&&P->face != 1){ /* the liner's print */
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];z=f[F_SIZE];float r=region(f,p,s);
		v3 q=P->face==2?V(p.z,p.y,0):P->face==3?V(p.x,p.z,0):V(p.x,p.y,0);q.z=P->face*7.f;float h=0;
		if(v==0){float a=.25f+.25f*z,b,c;uint32_t i;v3 g=mul(q,1/a);g.z=0;voro(V(g.x,g.y,P->face+.5f),s,&b,&c,&i);h=-.9f*(1-sstep(.05f,.5f,b));}
		else if(v==1){v3 g=warp(q,.35f,.9f,s);float a=f[F_ANG],e=fabsf(gn(V((g.x*cosf(a)+g.y*sinf(a))*.22f,(g.y*cosf(a)-g.x*sinf(a))*.75f/z,3),s+2));
			float e2=fabsf(gn(V(g.x*.7f,g.y*.4f,8),s+3));h=-1.5f*expf(-e*16)-.8f*expf(-e2*22)+.5f*gn(V(g.x*.3f,g.y*.6f,2),s+4);}
		else {h=-dots(V(q.x,q.y,q.z+.5f),.85f,.08f,.2f+.2f*z,.9f,.75f,0,V(1,0,0),s,&id,&in);h*=.5f+.5f*in*(2-in);h-=.5f*dots(V(q.x,q.y,q.z+.5f),.4f,.03f,.12f,.7f,.8f,0,V(1,0,0),s+5,&id,&in);}
		t->h+=h*r*(.012f+.045f*st);t->occ*=1-.3f*st*r*sat(-h);if(h<0) t->c=mul(t->c,1+.1f*st*h*r);
	}
	if((f=flaw(WRINKLE))&&P->face==1){
		float b=brain(V(P->p.x,0,P->p.z),f);t->occ*=1-.75f*b*f[F_ST];t->c=mix3(t->c,mul(shade(t->c,1.25f),.85f),b*.5f*f[F_ST]);
		t->gloss+=.12f*f[F_ST]*(1-b);t->h-=(.02f+.03f*f[F_ST])*b;
	}
	if((f=flaw(PIN))){ /* air pits */
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];z=f[F_SIZE];float r=region(f,p,s);
		if(r>.3f){
			v3 q=v==2?V(p.x*.7f,p.y*1.25f,p.z):p;float m2,in2;uint32_t i2;q=warp(q,5,.03f,s);
			m=dots(q,.62f,.018f,.045f+.085f*z,(v==1?.5f:.25f)+.45f*st,.22f,0,V(1,0,0),s,&id,&in);
			m2=v==1?dots(q,.25f,.008f,.032f+.02f*z,.2f+.5f*st,.25f,0,V(1,0,0),s+3,&i2,&in2):0;m=fmaxf(m,m2);
			t->h-=.09f*m*(.3f+.7f*in);t->occ*=1-(.3f+.5f*st)*m;t->c=mul(t->c,1-(.08f+.25f*st)*m);t->gloss*=1-.8f*m;t->tr*=1-.5f*m;
		}
	}
	if((f=flaw(GAP))&&O[O_DES]==1){ /* layers coming apart */
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];int k=(int)f[F_A];float b=layer_y(O,k,P->p.x,P->p.z+O[O_SLICE]);
		float d=P->p.y-b+.035f*gn(mul(p,5),s)+.02f*gn(mul(p,13),s+1),u=p.x/P->d.x,w=.015f+.1f*st;
		if(v==0) w*=.6f+.6f*gn(V(p.x*.8f,1,p.z*.4f),s+2);
		else if(v==1){float sgn=gn(V(3,4,.5f),s)>0?1:-1;w*=1.5f*sat(sgn*u*.6f+f[F_COV]*1.1f-.25f);}
		else w*=1.4f*sstep(-.1f,.35f,gn(V(p.x*.7f,4,p.z*.4f),s+2)+(f[F_COV]-.45f));
		if(w>.004f){m=1-sstep(w*.55f,w*1.05f,fabsf(d));float lip=expf(-fabsf(fabsf(d)-w*1.25f)/.03f)*(1-m);
			t->c=mix3(t->c,mul(t->c,.1f),m*.94f);t->occ*=1-.85f*m;t->h-=.12f*m;t->h+=.02f*lip;t->c=mul(t->c,1+.06f*lip);t->gloss*=1-m;t->tr*=1-m;}
	}
	if((f=flaw(CRACK))){
		float x,w=crackw(f,p,P->d,&x);st=f[F_ST];
		if(w>.003f){m=1-sstep(w*.5f,w*1.05f,x);float lip=expf(-fabsf(x-w*1.5f)/(.03f+w*.5f))*(1-m),deep=1-.85f*sat(1.2f-x/w);
			t->c=mix3(t->c,mul(shade(t->c,1.3f),.16f+.3f*deep),m*.95f);t->occ*=1-m*(.6f+.3f*st);t->h-=.14f*m*(1-.5f*x/w);t->h+=.05f*lip*st;t->gloss*=1-m;t->tr*=1-.8f*m;}
	}
	if((f=flaw(ASH))){ /* soda ash: dry white powder */
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];float n=fbm(mul(p,.65f),4,s),fine=gn(mul(p,13.f),s+3),mid=gn(mul(p,4.2f),s+4);
		float top=P->face==1?1:0,y=(P->d.y-P->p.y);int bar=O[O_SHAPE]==S_BAR;
		if(v==0) m=(bar?top+(1-top)*.75f*expf(-fmaxf(y-.25f*n,0)*5)*(P->face != 0?1:.7f):1)*sstep(-.55f,.3f,n+(f[F_COV]-.45f)*1.3f); /* an even veil on the top */
		else if(v==1) m=sstep(-.02f,.22f,n+.12f*mid+(f[F_COV]-.55f)*.9f)*(bar&&f[F_C]>.5f?fmaxf(top,.1f):1); /* patches with a crisp edge */
		else m=sat(1.3f*expf(-P->ez/(.12f+.9f*f[F_COV]*(1+n)))*(.8f+n))+top*sstep(0,.4f,n); /* frost along the edges */
		float body=.72f+.22f*mid+.16f*fine;m=sat(m*body*(.2f+.8f*st));
		t->c=mix3(t->c,V(.89f,.885f,.87f),m*(.3f+.6f*st));t->h+=.005f*m*(fine+mid);t->gloss*=1-.95f*sat(m*1.5f);t->tr*=1-.6f*m;
	}
}
static Tex soap(const float *O,v3 p,v3 n){
	Pt P;Tex t;P.p=p;P.n=n;P.d=at(O,O_DIM);v3 a=V(fabsf(n.x),fabsf(n.y),fabsf(n.z));int bar=O[O_SHAPE]==S_BAR;
	float r=sqrtf(p.x*p.x+p.y*p.y);
	if(O[O_SHAPE]==S_OVAL){float k=sqrtf(p.x*p.x/(P.d.x*P.d.x)+p.y*p.y/(P.d.y*P.d.y));P.rim=(1-k)*P.d.y;}
	else P.rim=bar?fminf(P.d.x-fabsf(p.x),P.d.y-fabsf(p.y)):P.d.x-r;
	P.rim=fmaxf(P.rim,0);float ez=P.d.z-fabsf(p.z);
	if(bar){
		P.face=a.z>a.y&&a.z>a.x?0:a.x>a.y?2:n.y>0?1:3;if(O[O_TOP]>0&&p.y>P.d.y-.9f&&P.face != 0&&n.y>.25f) P.face=1;
		if(P.face==0&&fabsf(p.z)<P.d.z-.45f&&p.y>0) P.face=1;
		float ex=P.d.x-fabsf(p.x),ey=P.d.y-fabsf(p.y);
		P.ez=P.face==0?fminf(ex,ey):P.face==2?fminf(ey,ez):fminf(ex,ez);
		if(O[O_TOP]>0&&P.face==0&&p.y>0) P.ez=ex;
	} else {P.face=a.z>.6f?0:2;P.ez=P.face==0?P.rim:ez;}
	if(P.ez<0) P.ez=0;
	base_soap(O,&P,&t);
	if(O[O_FLAW]>0){flaws_a(O,&P,&t);flaws_b(O,&P,&t);}
	return t;
}
#endif
