/* Small vectors, hashes and noise. */
#ifndef VEC_H
#define VEC_H
#include <math.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
typedef struct {float x,y,z;} v3;
static inline v3 V(float x,float y,float z){v3 r={x,y,z};return r;}
static inline v3 add(v3 a,v3 b){return V(a.x+b.x,a.y+b.y,a.z+b.z);}
static inline v3 sub(v3 a,v3 b){return V(a.x-b.x,a.y-b.y,a.z-b.z);}
static inline v3 mul(v3 a,float s){return V(a.x*s,a.y*s,a.z*s);}
static inline v3 had(v3 a,v3 b){return V(a.x*b.x,a.y*b.y,a.z*b.z);}
static inline float dot(v3 a,v3 b){return a.x*b.x+a.y*b.y+a.z*b.z;}
static inline v3 cross(v3 a,v3 b){
	return V(a.y*b.z-a.z*b.y,a.z*b.x-a.x*b.z,a.x*b.y-a.y*b.x);
}
static inline float len(v3 a){return sqrtf(dot(a,a));}
static inline v3 norm(v3 a){return mul(a,1.f/(len(a)+1e-12f));}
static inline v3 mix3(v3 a,v3 b,float t){return add(mul(a,1-t),mul(b,t));}
static inline float mixf(float a,float b,float t){return a+(b-a)*t;}
static inline float clampf(float x,float a,float b){return x<a?a:x>b?b:x;}
static inline float sat(float x){return clampf(x,0,1);}
static inline float sstep(float a,float b,float x){
	float t=sat((x-a)/(b-a));return t*t*(3-2*t);
}
static inline float smin(float a,float b,float k){
	float h=sat(.5f+.5f*(b-a)/k);return mixf(b,a,h)-k*h*(1-h);
}
static inline uint32_t hash3(int x,int y,int z,uint32_t s){
	uint32_t h=(uint32_t)x*374761393u+(uint32_t)y*668265263u
				+ (uint32_t)z*2246822519u+s*0x9E3779B9u;
	h=(h ^ (h >> 15))*2246822519u;h=(h ^ (h >> 13))*3266489917u;
	return h ^ (h >> 16);
}
static inline float u01(uint32_t h){return (h & 0xffffff)*(1.f/16777216.f);}
static inline uint32_t nexth(uint32_t h){h=h*747796405u+2891336453u;return (h ^ (h >> 15))*277803737u;}
static inline int ifloor(float x){int i=(int)x;return i-(x<i);}
static const float GR[16][3]={{1,1,0},{-1,1,0},{1,-1,0},{-1,-1,0},{1,0,1},{-1,0,1},{1,0,-1},
	{-1,0,-1},{0,1,1},{0,-1,1},{0,1,-1},{0,-1,-1},{1,1,0},{-1,1,0},{0,-1,1},{0,-1,-1}};
/* gradient noise, about -1..1 */
static inline float gn(v3 p,uint32_t s){
	int X=ifloor(p.x),Y=ifloor(p.y),Z=ifloor(p.z);
	float x=p.x-X,y=p.y-Y,z=p.z-Z,r[8];
	for(int i=0;i<8;i++){
		int a=i & 1,b=(i >> 1) & 1,c=i >> 2;
		const float *g=GR[hash3(X+a,Y+b,Z+c,s) & 15];
		r[i]=g[0]*(x-a)+g[1]*(y-b)+g[2]*(z-c);
	}
	float u=x*x*x*(x*(x*6-15)+10),v=y*y*y*(y*(y*6-15)+10),
			w=z*z*z*(z*(z*6-15)+10);
	return mixf(mixf(mixf(r[0],r[1],u),mixf(r[2],r[3],u),v),
				mixf(mixf(r[4],r[5],u),mixf(r[6],r[7],u),v),w);
}
static inline float fbm(v3 p,int oct,uint32_t s){
	float a=.6f,r=0;
	for(int i=0;i<oct;i++){
		r+=a*gn(p,s+i*17);a*=.5f;
		p=V(p.x*2.03f+3.1f,p.y*2.03f-1.7f,p.z*2.03f+5.3f);
	}
	return r;
}
static inline v3 warp(v3 p,float f,float a,uint32_t s){
	v3 q=mul(p,f);
	return add(p,V(a*fbm(q,2,s),a*fbm(q,2,s+101),a*fbm(q,2,s+202)));
}
/* cellular: distances to the nearest two points, id of the nearest */
static inline void voro(v3 p,uint32_t s,float *f1,float *f2,uint32_t *id){
	int X=ifloor(p.x),Y=ifloor(p.y),Z=ifloor(p.z);float a=9,b=9;*id=0;
	for(int k=-1;k<2;k++) for(int j=-1;j<2;j++) for(int i=-1;i<2;i++){
		uint32_t h=hash3(X+i,Y+j,Z+k,s),h2=nexth(h),h3=nexth(h2);
		v3 d=V(X+i+u01(h)-p.x,Y+j+u01(h2)-p.y,Z+k+u01(h3)-p.z);
		float q=dot(d,d);
		if(q<a){b=a;a=q;*id=h;} else if(q<b) b=q;
	}
	*f1=sqrtf(a);*f2=sqrtf(b);
}
/* scattered dots: returns the greatest cover; size r (cells), share dens of the cells filled */
static inline float dots(v3 p,float cell,float r0,float r1,float dens,float edge,float tail,
							v3 dir,uint32_t s,uint32_t *id,float *inner){
	v3 q=mul(p,1/cell);float best=0;*inner=0;
	int X=ifloor(q.x-.5f),Y=ifloor(q.y-.5f),Z=ifloor(q.z-.5f);
	for(int i=0;i<8;i++){
		int a=X+(i & 1),b=Y+((i >> 1) & 1),c=Z+(i >> 2);
		uint32_t h=hash3(a,b,c,s);
		if(u01(h)>dens) continue;
		uint32_t h2=nexth(h),h3=nexth(h2),h4=nexth(h3),h5=nexth(h4);
		float k=u01(h5);float r=(r0+(r1-r0)*k*k)/cell;
		v3 d=V(q.x-a-u01(h2),q.y-b-u01(h3),q.z-c-u01(h4));
		float al=1;
		if(tail>0){
			float t=dot(d,dir),L=tail*(.3f+u01(h4))*r;
			if(t>0){float e=t<L?t:L;d=sub(d,mul(dir,e));al=1-.85f*e/L;r*=1-.6f*e/L;}
		}
		float m=len(d);
		float cv=(1-sstep(r*(1-edge),r*(1+.3f*edge),m))*al;
		if(cv>best){best=cv;*id=h;*inner=sat(1-m/r);}
	}
	return best;
}
#endif
