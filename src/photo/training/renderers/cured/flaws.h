/* The sixteen findings, drawn over the base. Each takes strength, cover, variant. */
#ifndef FLAWS_H
#define FLAWS_H
#include "soap.h"
static float region(const float *f,v3 p,uint32_t s){/* where on the bar */
	if(f[F_COV]>.93f) return 1;
	float n=fbm(mul(p,.45f),3,s+71);
	float d=len(sub(p,V(f[F_X],f[F_Y],f[F_Z])))/(.6f+5.5f*f[F_COV])+.5f*n;
	return 1-sstep(.75f,1.05f,d);
}
static v3 shade(v3 c,float k){return V(powf(c.x,k),powf(c.y,k),powf(c.z,k));}
static void flaws_a(const float *O,const Pt *P,Tex *t){
	v3 p=P->p,fc;p.z+=O[O_SLICE];const float *f;float in,m,st,z;uint32_t id,s;int v;
	if((f=flaw(VEIN))){ /* glycerine rivers: clearer, deeper winding veins */
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];z=f[F_SIZE];float w=.05f+.12f*st,r=region(f,p,s);
		if(r>0){
			v3 q=warp(p,.8f/z,.75f*z,s),q2=warp(p,1.9f/z,.25f*z,s+4);float n;
			if(v==0) n=fabsf(fbm(mul(q,.7f/z),3,s+1));
			else if(v==1){float a,b;uint32_t i;voro(mul(add(q2,mul(sub(q,p),.5f)),.75f/z),s,&a,&b,&i);n=(b-a)*.55f;}
			else n=fminf(fabsf(gn(mul(q,.9f/z),s+2)),fabsf(gn(mul(q2,1.5f/z),s+3))+.05f);
			w*=.6f+.8f*sat(.5f+gn(mul(p,.7f),s+8));m=(1-sstep(w*.4f,w*1.25f,n))*r;float halo=expf(-n/(w*2))*r;
			t->c=mix3(t->c,mul(shade(t->c,1.25f+.5f*st),.92f-.3f*st),m*(.3f+.65f*st));
			t->c=mul(t->c,1+.05f*st*(halo-m));t->gloss+=.25f*m*st;t->h-=.006f*m*st;t->tr+=.4f*m;
		}
	}
	if((f=flaw(CRACKLE))){ /* pale islands, clear hairlines between */
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];z=f[F_SIZE]*(v==2?.6f:v==1?.42f:.33f);float r=region(f,p,s);
		if(r>0){
			float a,b;uint32_t i;v3 q=warp(p,1.3f/z,.2f*z,s),q3=mul(q,1/z);if(v==1) q3.x*=.55f;
			voro(q3,s,&a,&b,&i);float e=b-a,w=.05f+.14f*sat(.4f+gn(mul(p,.9f),s+2));if(v==2){float a2,b2;uint32_t i2;voro(mul(q3,2.3f),s+4,&a2,&b2,&i2);e=fminf(e,.05f+.6f*(b2-a2));}
			m=(1-sstep(w*.5f,w*1.6f,e))*r;float isl=r*sstep(w,.55f,e);
			t->c=mix3(t->c,V(.93f,.92f,.88f),isl*st*.24f*(.3f+1.1f*u01(i)));
			t->c=mix3(t->c,mul(shade(t->c,1.35f),.72f),m*(.2f+.65f*st));t->h+=.004f*st*(isl-m);
		}
	}
	if((f=flaw(RING))){ /* partial gel: deeper core with an outline */
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];float hx=P->d.x,hy=P->d.y,hz=O[O_SHAPE]==S_BAR?f[F_A]:9;
		float x=(p.x-f[F_X]*.25f)/hx,y=(P->p.y-f[F_Y]*.2f)/hy,zz=hz>4?P->p.z/hz*(hz<9):0;
		float pw=v==1?2.f:3.2f,rr=powf(powf(fabsf(x),pw)+powf(fabsf(y),pw)+powf(fabsf(zz),4),1/pw);
		float R=.35f+.5f*f[F_COV],d=rr-R+.09f*fbm(mul(p,.5f),3,s);float sf=v==2?.12f:.045f;
		m=1-sstep(-sf,sf,d);float line=expf(-d*d/(v==2?.008f:.0012f));
		t->c=mix3(t->c,mul(shade(t->c,1.2f+.25f*st),.97f-.22f*st),m*(.25f+.65f*st));
		t->c=mul(t->c,1-line*st*(v==2?.12f:.3f));t->c=mul(t->c,1+.05f*st*expf(-fabsf(d-.09f)*22));t->gloss+=.1f*m*st;t->tr+=.3f*m;
	}
	if((f=flaw(BROWN))){ /* vanillin browning from the rim inwards */
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];float d=P->rim;float D=(.12f+2.3f*f[F_COV])*(1+.5f*fbm(mul(p,.45f),3,s));
		if(v==2) D*=sat(.55f+.9f*(P->p.y*cosf(f[F_ANG])+P->p.x*sinf(f[F_ANG]))/P->d.y);
		float soft=v==0?.12f*D+.03f:.75f*D;m=1-sstep(D-soft,D+soft,d);if(v != 0) m=sqrtf(m)*m;m*=.9f+.1f*gn(mul(p,1.4f),s+3);
		fc=at(f,F_R);v3 b=had(fc,mix3(V(1,1,1),t->c,.55f));t->c=mix3(t->c,b,sat(m*(.22f+.78f*st)));
	}
	if((f=flaw(BLED))&&P->two){ /* dye creeping over a border */
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];int up=f[F_A]>.5f;float d=up?P->v:-P->v;
		v3 dye=up?P->lo:P->hi;float L=(.12f+1.1f*st*f[F_SIZE])*(.45f+1.1f*sat(.5f+fbm(mul(p,v==1?1.8f:.7f),2,s)))*region(f,p,s);
		if(d>0&&L>.01f){m=v==2?1-sstep(.35f*L,1.3f*L,d):expf(-d/L*1.2f);if(v==1) m*=.75f+.5f*gn(V(p.x*3,p.y*.8f,p.z),s+2);
			v3 tint=mix3(had(t->c,mix3(V(1,1,1),dye,.9f)),dye,.5f);t->c=mix3(t->c,tint,sat(m*(.3f+.62f*st)));}
	}
	if((f=flaw(SMEAR))){ /* streaks of pigment never stirred in */
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];float r=region(f,p,s);fc=at(f,F_R);
		if(r>0){
			float ca=cosf(f[F_ANG]),sa=sinf(f[F_ANG]);v3 q=warp(p,.4f,.6f,s);z=f[F_SIZE];
			float u=q.x*ca+q.y*sa,w=-q.x*sa+q.y*ca;u-=f[F_X]*ca+f[F_Y]*sa;w-=-f[F_X]*sa+f[F_Y]*ca;
			if(v==0){ /* one long stroke with a feathered tail */
				float L=1.f+3.f*f[F_COV],tt=(u+L)/(2*L),wd=(.1f+.3f*z)*(1-.75f*tt)*sstep(0,.12f,tt)*(tt<1);
				float fe=gn(V(u*.5f,w*9,p.z*2),s+2);m=wd>0?1-sstep(wd*.35f,wd*1.2f,fabsf(w)+.1f*fe*tt):0;m*=(1-.6f*sat(tt))*(1+.5f*fe);
			} else if(v==1) m=sstep(.22f,.5f,gn(V(u*.5f,w*3.2f/z,p.z*.8f),s+2)+.3f*gn(V(u*1.2f,w*11,p.z),s+3))*r;
			else m=sstep(.05f,.6f,fbm(V(u*.8f,w*1.3f,p.z*.7f),3,s+4)+.35f*gn(V(u*.7f,w*8,p.z),s+5))*r*.9f;
			t->c=mix3(t->c,fc,sat(m*(.2f+.75f*st)));
		}
	}
	if((f=flaw(SPECK))){
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];z=f[F_SIZE];float r=region(f,p,s);
		if(r>0){
			v3 dir=norm(V(cosf(f[F_ANG]),sinf(f[F_ANG]),.2f));v3 q=v==1?p:warp(p,4,.04f,s);uint32_t id2;float in2;
			if(v==0) m=dots(q,.4f,.012f,.035f+.05f*z,.25f+.6f*st,.3f,0,dir,s,&id,&in);
			else if(v==1) m=dots(p,1.25f,.03f,.06f+.06f*z,.4f+.5f*st,.35f,9+5*z,dir,s,&id,&in);
			else {m=dots(q,1.1f,.05f,.13f+.12f*z,.35f+.5f*st,.35f,0,dir,s,&id,&in);float m2=dots(q,.35f,.01f,.035f,.4f,.3f,0,dir,s+8,&id2,&in2);if(m2>m){m=m2;id=id2;}}
			fc=mul(at(f,F_R),.75f+.5f*u01(nexth(id)));t->c=mix3(t->c,fc,sat(m*r*(.4f+.7f*st)));
			if(v==2){float hl=dots(q,1.1f,.12f,.3f+.2f*z,.35f+.5f*st,1,0,dir,s,&id,&in);t->c=mix3(t->c,fc,hl*r*.16f*st);}
		}
	}
	if((f=flaw(WHITE))){
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];z=f[F_SIZE];float r=region(f,p,s);
		if(r>0){
			v3 q=warp(p,6,v==1?.1f:.035f,s),d=V(1,0,0);float cell=v==0?.42f:v==1?1.f:.6f;
			m=dots(q,cell,.012f,(v==0?.05f:v==1?.22f:.12f)*(.6f+.7f*z),.3f+.55f*st,v==1?.12f:.3f,0,d,s,&id,&in);
			m*=r;t->c=mix3(t->c,mul(V(.93f,.92f,.88f),.94f+.06f*gn(mul(p,14),s)),sat(m*(.3f+.7f*st)));t->h+=(v==2?-.03f:.008f)*m*in;t->gloss*=1-.6f*m;
			if(v==2){float w=dots(q,cell,.03f,.22f,.3f+.55f*st,.6f,0,d,s,&id,&in)*r-m;if(w>0) t->c=mul(t->c,1-.14f*w*st);}
		}
	}
	if((f=flaw(ORANGE))){
		s=(uint32_t)f[F_SEED];st=f[F_ST];v=(int)f[F_VAR];z=f[F_SIZE];float r=region(f,p,s);fc=at(f,F_R);
		if(r>0){
			float cell=v==0?2.2f:v==1?.75f:1.4f,rad=(v==0?.5f:v==1?.1f:.3f)*(.6f+.8f*z),hl,inn;uint32_t i2;v3 q=warp(p,2.2f,.14f,s),d=V(1,0,0);
			hl=dots(q,cell,rad*.9f,rad*2.1f>cell*.5f?cell*.5f:rad*2.1f,.35f+.5f*st,1,0,d,s,&id,&in);
			m=dots(q,cell,rad*.3f,rad,.35f+.5f*st,.5f,0,d,s,&i2,&inn);if(v==2) m=sat(m*.6f+hl*.35f*(1+gn(mul(p,3),s+3)));
			v3 pale=mix3(V(1,.72f,.3f),fc,.3f);t->c=mix3(t->c,had(t->c,pale),sat(hl*r*(.2f+.6f*st)));
			t->c=mix3(t->c,mix3(fc,had(t->c,fc),.3f),sat(m*r*(.25f+.7f*st)*(.7f+.4f*inn)));t->gloss+=.3f*m*st*r;
		}
	}
}
#endif
