/* Traces the scene once into buffers, then shades it as often as asked
	(with every finding,or with one of them left out). One thread. */
#include "relief.h"
#include "table.h"
#include <stdio.h>
#define MAXPX 2600000
#define LM 224
static uint8_t ID[MAXPX];static float TT[MAXPX],HH[MAXPX],VI[MAXPX],VB[MAXPX];static v3 PP[MAXPX],NN[MAXPX];static Tex TX[MAXPX];
static float LK[LM*LM],LA[LM*LM],lx0,ly0,ls;
static float BR[32];static int NO;static const float *OB,*GG;static v3 KX,KY,KD;

static float hitbox(const float *O,v3 o,v3 d,float grow,float *far){
	v3 D=at(O,O_DIM),m;float tn,tf;int sh=(int)O[O_SHAPE];float ex=grow,tp=(sh==S_BAR&&grow>0)?.75f:0;
	if(sh==S_TORUS||sh==S_CAPS) D=V(D.x,sh==S_CAPS?D.z:D.x,D.z);
	if(sh==S_CYL||sh==S_LATHE||sh==S_FRUIT) D.y=D.x;
	if(sh==S_BOWL) D=V(D.x+.3f,D.x+.3f,D.z+.3f);
	if(sh==S_OVAL) D.z+=O[O_RND]*.7f;
	D=V(D.x+ex,D.y+ex+tp,D.z+ex);m=V(1/d.x,1/d.y,1/d.z);
	v3 n=had(m,o),k=V(fabsf(m.x)*D.x,fabsf(m.y)*D.y,fabsf(m.z)*D.z);
	tn=fmaxf(fmaxf(-n.x-k.x,-n.y-k.y),-n.z-k.z);tf=fminf(fminf(-n.x+k.x,-n.y+k.y),-n.z+k.z);
	if(tn>tf||tf<0) return -1;
	*far=tf;return tn>0?tn:0;
}
static int blocked(const float *O,v3 p,v3 d){ /* rough shadow body of a thing */
	v3 o=to_local(O,p),l=dir_local(O,d);float f;int sh=(int)O[O_SHAPE];
	float g=sh==S_BAR?-.05f:sh==S_PILLOW?-.1f:.15f;
	if(hitbox(O,o,l,g,&f)<0) return 0;
	if(sh==S_BAR||sh==S_PILLOW) return 1;
	if(sh==S_ELL||sh==S_FRUIT||sh==S_BOWL){v3 D=at(O,O_DIM);if(sh==S_FRUIT) D.y=D.x;if(sh==S_BOWL) D.y=D.x;
		v3 a=V(o.x/D.x,o.y/D.y,o.z/D.z),b=V(l.x/D.x,l.y/D.y,l.z/D.z);float A=dot(b,b),B=dot(a,b),C=dot(a,a)-1;return B*B>A*C;}
	float R=O[O_DIM]-(sh==S_OVAL?0:.02f),ky=sh==S_OVAL?O[O_DIM]/O[O_DIM+1]:1;
	if(sh==S_CYL||sh==S_LATHE||sh==S_OVAL){float ax=o.x,ay=o.y*ky,bx=l.x,by=l.y*ky,A=bx*bx+by*by,B=ax*bx+ay*by,C=ax*ax+ay*ay-R*R;return B*B>A*C;}
	{float t=0,hi=f;for(int i=0;i<14&&t<hi;i++){float q=sdf(O,add(o,mul(l,t)));if(q<.03f) return 1;t+=fmaxf(q,.1f);} return 0;}
}
static v3 keyray(uint32_t h){
	float a=u01(h)*6.2832f,r=sqrtf(u01(nexth(h)))*GG[G_SOFT];
	return norm(add(KD,add(mul(KX,r*cosf(a)),mul(KY,r*sinf(a)))));
}
static void lightmap(void){
	float x0=1e9f,y0=1e9f,x1=-1e9f,y1=-1e9f,kz=fmaxf(KD.z,.25f);
	for(int i=0;i<NO;i++){const float *O=OB+i*OS;float r=BR[i]*1.15f+2,z=O[O_POS+2]+BR[i]*.7f;float sx=-KD.x/kz*z,sy=-KD.y/kz*z;
		x0=fminf(x0,fminf(O[O_POS]-r,O[O_POS]-r+sx));x1=fmaxf(x1,fmaxf(O[O_POS]+r,O[O_POS]+r+sx));
		y0=fminf(y0,fminf(O[O_POS+1]-r,O[O_POS+1]-r+sy));y1=fmaxf(y1,fmaxf(O[O_POS+1]+r,O[O_POS+1]+r+sy));}
	ls=fmaxf(x1-x0,y1-y0)/(LM-1);lx0=x0;ly0=y0;
	for(int j=0;j<LM;j++) for(int i=0;i<LM;i++){
		v3 p=V(x0+i*ls,y0+j*ls,.01f);int k=0,a=0;const int NS=8;uint8_t near[32];int nn=0;
		for(int q=0;q<NO;q++){v3 d=sub(at(OB+q*OS,O_POS),p);float r=BR[q];if(d.x*d.x+d.y*d.y<(r+9)*(r+9)) near[nn++]=q;}
		for(int n=0;n<NS;n++){
			uint32_t h=hash3(i,j,n,5);v3 d=keyray(h);
			for(int q=0;q<NO;q++){v3 c=sub(at(OB+q*OS,O_POS),p);float t=dot(c,d);if(t<-BR[q]||dot(c,c)-t*t>BR[q]*BR[q]) continue;if(blocked(OB+q*OS,p,d)){k++;break;}}
			if(!nn) continue;
			uint32_t h2=nexth(h+77);float an=(n+u01(h2))/NS*6.2832f,r=u01(nexth(h2));float sr=sqrtf(r);d=V(sr*cosf(an),sr*sinf(an),sqrtf(1-r)+.02f);
			for(int q=0;q<nn;q++) if(blocked(OB+near[q]*OS,p,d)){a++;break;}
		}
		LK[j*LM+i]=1-k/(float)NS;LA[j*LM+i]=1-a/(float)NS;
	}
	for(int pass=0;pass<2;pass++) for(int m=0;m<2;m++){ /* smooth the grain away */
		float *S=m?LA:LK;static float T[LM*LM];int R=m?3:1;
		memcpy(T,S,sizeof T);for(int j=0;j<LM;j++) for(int i=R;i<LM-R;i++){float s=0;for(int e=-R;e<=R;e++) s+=S[j*LM+i+e];T[j*LM+i]=s/(2*R+1);}
		memcpy(S,T,sizeof T);for(int j=R;j<LM-R;j++) for(int i=0;i<LM;i++){float s=0;for(int e=-R;e<=R;e++) s+=T[(j+e)*LM+i];S[j*LM+i]=s/(2*R+1);}
	}
}
static float lm(const float *M,float x,float y){
	float u=(x-lx0)/ls,v=(y-ly0)/ls;if(u<0||v<0||u>=LM-1||v>=LM-1) return 1;
	int i=(int)u,j=(int)v;u-=i;v-=j;const float *q=M+j*LM+i;return mixf(mixf(q[0],q[1],u),mixf(q[LM],q[LM+1],u),v);
}
static v3 camray(int x,int y,int W,int H){
	float u=(x+.5f-W*.5f)/(H*.5f),v=(H*.5f-y-.5f)/(H*.5f),f=GG[G_FOC];
	return norm(add(add(mul(at(GG,G_RIGHT),u),mul(at(GG,G_UP),v)),mul(at(GG,G_FWD),f)));
}
void trace_scene(const float *G,const float *O0,int no,const float *F,int W,int H,uint8_t *ids,float *depth){
	GG=G;OB=O0;NO=no;FL=F;OFF=0;v3 cam=at(G,G_CAM);KD=norm(at(G,G_KEY));KX=norm(cross(KD,V(.3f,.2f,.9f)));KY=cross(KD,KX);
	for(int i=0;i<no;i++){const float *O=OB+i*OS;v3 D=at(O,O_DIM);int sh=(int)O[O_SHAPE];if(sh==S_CYL||sh==S_LATHE||sh==S_FRUIT||sh==S_BOWL||sh==S_TORUS) D.y=D.x;BR[i]=len(D)+(sh==S_BAR?.5f:.3f);}
	lightmap();
	for(int y=0;y<H;y++) for(int x=0;x<W;x++){
		int k=y*W+x,id=255;v3 d=camray(x,y,W,H),n=V(0,0,1),pl=V(0,0,0);float best=1e9f;
		if(d.z<-1e-4f){best=-cam.z/d.z;id=254;}
		if(d.y>1e-4f){float t=(G[G_WALL]-cam.y)/d.y;if(t<best){best=t;id=253;n=V(0,-1,0);}}
		if(id==255) best=500;
		v3 pw=add(cam,mul(d,best));
		for(int i=0;i<no;i++){
			const float *O=OB+i*OS;v3 c=sub(at(O,O_POS),cam);float tc=dot(c,d);if(tc<0||dot(c,c)-tc*tc>BR[i]*BR[i]*1.3f||tc-BR[i]*1.2f>best) continue;
			v3 o=to_local(O,cam),l=dir_local(O,d);float far,t=hitbox(O,o,l,.06f,&far);if(t<0||t>best) continue;
			int hit=0;float st=(O[O_SHAPE]==S_BAR&&O[O_TOP]>0)?.75f:.95f;
			for(int s=0;s<60;s++){float q=sdf(O,add(o,mul(l,t)));if(q<.004f){hit=1;break;} t+=q*st+.001f;if(t>far+.05f||t>best) break;}
			if(hit&&t<best){
				best=t;id=i;pl=add(o,mul(l,t));pw=add(cam,mul(d,t));const float e=.02f;v3 g=V(0,0,0);
				static const v3 K[4]={{1,-1,-1},{-1,-1,1},{-1,1,-1},{1,1,1}};for(int q=0;q<4;q++) g=add(g,mul(K[q],sdf(O,add(pl,mul(K[q],e)))));
				n=norm(g);
			}
		}
		ids[k]=ID[k]=id;depth[k]=TT[k]=best;NN[k]=n;PP[k]=id<32?pl:pw;float vis=1;
		if(id==254) vis=lm(LK,pw.x,pw.y);
		else if(id<32){
			v3 w=dir_world(OB+id*OS,n);w=dot(w,d)>0?mul(w,-1):w;v3 b=add(pw,mul(w,.08f));int hitn=0;uint32_t h=hash3(x,y,3,11);int alone=no==1;
			if(dot(w,KD)>-.3f&&!alone) for(int s=0;s<4;s++){h=nexth(h+s);v3 kd=keyray(h);
				for(int i=0;i<no;i++) if(i != id){v3 c=sub(at(OB+i*OS,O_POS),b);float t=dot(c,kd);if(t<-BR[i]||dot(c,c)-t*t>BR[i]*BR[i]) continue;if(blocked(OB+i*OS,b,kd)){hitn++;break;}}}
			vis=1-hitn/4.f;
		}
		VI[k]=vis;
	}
	for(int pass=0;pass<4;pass++){float *S=pass & 1?VB:VI,*T=pass & 1?VI:VB;int st=pass & 1?W:1,R=2; /* smooth shadow grain within a thing */
		for(int k=0;k<W*H;k++){if(ID[k]>31||no==1){T[k]=S[k];continue;} float s=0,c=0;for(int e=-R;e<=R;e++){int q=k+e*st;if(q<0||q>=W*H||ID[q] != ID[k]) continue;if(dot(NN[q],NN[k])<.8f) continue;s+=S[q];c++;} T[k]=s/c;}}
}
static float ao(int id,v3 p,v3 n){ /* nearness of table and of other things */
	float a=1,z;for(int i=1;i<=3;i++){float r=.45f*i*i;v3 q=add(p,mul(n,r));z=q.z;
		for(int j=0;j<NO;j++) if(j != id){v3 c=sub(at(OB+j*OS,O_POS),q);if(dot(c,c)>(BR[j]+r)*(BR[j]+r)) continue;z=fminf(z,sdf(OB+j*OS,to_local(OB+j*OS,q)));}
		if(id>=32) z=9;a-=.24f*sat((r-z)/r);}
	return a;
}
static float gobo(v3 p){
	float g=GG[G_GOBO];if(g<=0) return 1;float u=dot(p,KX)/GG[G_GSC],v=dot(p,KY)/GG[G_GSC];
	if(g<1.5f){float x=fabsf(u-floorf(u)-.5f),y=fabsf(v*.7f-floorf(v*.7f)-.5f);return .12f+.88f*sstep(.05f,.09f,x)*sstep(.05f,.09f,y);} /* window bars */
	if(g<2.5f) return .15f+.85f*sstep(-.1f,.12f,gn(V(u*1.6f,v*1.6f,2),7)+.5f*gn(V(u*3.9f,v*3.9f,2),8)); /* leaves */
	float x=fabsf(v-floorf(v)-.5f);return .2f+.8f*sstep(.16f,.24f,x); /* blinds */
}
void shade_scene(uint32_t off,int W,int H,float *out){
	const float *G=GG;OFF=off;v3 cam=at(G,G_CAM),kc=at(G,G_KC),sky=at(G,G_SKY),tb=mix3(at(G,G_TA),at(G,G_TB),.4f);uint32_t gs=(uint32_t)G[G_SEED];
	for(int k=0;k<W*H;k++){
		int id=ID[k];v3 p=PP[k];
		if(id<32){const float *O=OB+id*OS;TX[k]=O[O_MAT]==M_SOAP?soap(O,p,NN[k]):stuff(O,p,NN[k]);}
		else if(id==254) TX[k]=table(G,(int)G[G_TAB],p,at(G,G_TA),at(G,G_TB),at(G,G_TC),gs);
		else TX[k]=table(G,(int)G[G_WT],V(p.x,p.z,0),at(G,G_WC),mul(at(G,G_WC),.75f),mul(at(G,G_WC),.55f),gs+5);
		HH[k]=TX[k].h;
	}
	for(int y=0;y<H;y++) for(int x=0;x<W;x++){
		int k=y*W+x,id=ID[k];v3 d=camray(x,y,W,H),n=NN[k],pw=add(cam,mul(d,TT[k]));if(id<32) n=dir_world(OB+id*OS,n);
		if(dot(n,d)>0) n=mul(n,-1);
		v3 n0=n;Tex *t=&TX[k];int k1=x+1<W?k+1:k-1,k2=y+1<H?k+W:k-W;
		if(ID[k1]==id&&ID[k2]==id){ /* bump from the heights next door */
			v3 e1=sub(PP[k1],PP[k]),e2=sub(PP[k2],PP[k]);if(id<32){e1=dir_world(OB+id*OS,e1);e2=dir_world(OB+id*OS,e2);}
			float h1=HH[k1]-HH[k],h2=HH[k2]-HH[k];v3 r1=cross(e2,n),r2=cross(n,e1);float det=dot(e1,r1);float lim=.25f;
			if(fabsf(det)>1e-9f&&len(e1)<lim&&len(e2)<lim){float sg=det<0?-1:1;v3 g=mul(add(mul(r1,h1),mul(r2,h2)),sg);v3 nn=sub(mul(n,fabsf(det)),g);
				float l=len(nn);if(l>1e-9f){nn=mul(nn,1/l);if(dot(nn,n)<.35f) nn=norm(add(nn,mul(n,.5f)));n=nn;}}
		}
		float vis=VI[k],a=id==254?lm(LA,pw.x,pw.y):id<32?ao(id,pw,n0):1;float nl=dot(n,KD),tr=t->tr,w=.32f*tr;
		vis*=gobo(pw);vis=mixf(vis,1,.1f*tr);float dif=sat((nl+w)/(1+w));dif=mixf(dif,dif*dif*(3-2*dif),.1f);
		v3 L=mul(kc,dif*vis);L=add(L,mul(sky,(.52f+.48f*n.z)*a));v3 fl=mul(cross(KX,V(0,0,1)),.0f);(void)fl;
		L=add(L,had(mul(tb,(.5f-.5f*n.z)*(.3f+.7f*a)),add(mul(kc,.55f*KD.z),mul(sky,.6f))));
		float side=sat(-dot(n,V(KD.x,KD.y,0))*.5f+.5f);L=add(L,mul(sky,.16f*side*a));
		v3 c=had(t->c,mul(L,t->occ));if(tr>0){v3 sss=had(t->c,t->c);c=add(c,mul(had(sss,kc),.12f*tr*(1-dif)*sat(nl+.7f)*vis*t->occ));}
		v3 hv=norm(sub(KD,d));float nh=sat(dot(n,hv)),al=t->rough*t->rough+.0008f+G[G_SOFT]*G[G_SOFT]*.1f,q=nh*nh*(al*al-1)+1,D=al*al/(3.14159f*q*q),nv=sat(-dot(n,d)),fr=.04f+.5f*(1-nv)*(1-nv)*(1-nv)*(1-nv)*(1-nv);
		c=add(c,mul(kc,fr*fminf(D,40)*sat(nl)*vis*t->gloss*t->occ*.9f));
		v3 r=sub(d,mul(n,2*dot(n,d)));float win=sstep(.55f,.9f,dot(r,KD))*G[G_GLARE];float smooth=1-t->rough;
		c=add(c,mul(add(mul(sky,.5f+.5f*r.z),mul(kc,win*vis)),fr*t->gloss*smooth*t->occ*a*1.3f));
		out[3*k]=c.x;out[3*k+1]=c.y;out[3*k+2]=c.z;
	}
}
void blur(float *im,int W,int H,int C,int R){ /* three box passes */
	if(R<1) return;int M=(W>H?W:H);float *b=malloc(sizeof(float)*(M+1)*C);
	for(int p=0;p<3;p++) for(int ax=0;ax<2;ax++){int n=ax?H:W,o=ax?W:H,st=ax?W*C:C,so=ax?C:W*C;
		for(int j=0;j<o;j++){float *l=im+j*so;for(int c=0;c<C;c++){float s=0;for(int e=-R;e<=R;e++) s+=l[(e<0?0:e>=n?n-1:e)*st+c];
			for(int i=0;i<n;i++){b[i]=s/(2*R+1);int a=i+R+1,z=i-R;s+=l[(a>=n?n-1:a)*st+c]-l[(z<0?0:z)*st+c];}
			for(int i=0;i<n;i++) l[i*st+c]=b[i];}}}
	free(b);
}
/* exposed light -> 8 bit: shoulder, sRGB, contrast, colour, lens shade */
void finish(const float *x,int W,int H,const float *k,float contrast,float satu,float lift,float vign,uint8_t *out){
	static float L[4097];for(int i=0;i<=4096;i++){float q=i/4096.f*2,v=q*q;if(v>.62f) v=.62f+.38f*(1-expf(-(v-.62f)/.38f));
		float y=v<.0031f?12.92f*v:1.055f*powf(v,1/2.4f)-.055f;L[i]=sat(y+(contrast-1)*.125f*sinf((y-.5f)*6.283f));}
	for(int j=0;j<H;j++) for(int i=0;i<W;i++){float u=2.f*i/W-1,v=2.f*j/H-1,s=1-vign*.5f*(u*u+v*v),c[3],g=0;const float *p=x+3*(j*W+i);
		for(int e=0;e<3;e++){float q=sqrtf(fmaxf(p[e]*k[e]*s,0))*2048;int n=q>4095?4095:(int)q;c[e]=mixf(L[n],L[n+1],sat(q-n));g+=c[e]/3;}
		for(int e=0;e<3;e++) out[3*(j*W+i)+e]=(uint8_t)(sat((g+(c[e]-g)*satu)*(1-fmaxf(lift,0))+lift)*255+.5f);}
}
