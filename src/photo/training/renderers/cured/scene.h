/* Layout of the arrays that Python hands over, and what a shaded point is. */
#ifndef SCENE_H
#define SCENE_H
#include "vec.h"
#define OS 64            /* floats an object */
#define FS 16            /* floats a flaw */
enum {SPECK,SMEAR,WHITE,VEIN,CRACKLE,ASH,RING,ORANGE,PIN,CRACK,BROWN,BLED,DRAG,GAP,WRINKLE,DIMPLE,NF};
enum {F_ST,F_COV,F_VAR,F_SEED,F_R,F_G,F_B,F_SIZE,F_ANG,F_X,F_Y,F_Z,F_A,F_C};
enum {O_SHAPE,O_POS,O_ROT=4,O_DIM=13,O_RND=16,O_MAT,O_SEED,O_A,O_B=22,O_C=25,
		O_DES=28,O_SC,O_P1,O_P2,O_NL,O_TOP,O_TAMP,O_SLICE,O_ADD,O_AMT,O_AC,
		O_GLOSS=41,O_STAMP,O_MOT,O_FLAW=45,O_LABEL,O_MICA,O_DEW,O_EMB,O_WEAR,O_EC=52,O_ROUGH=55};
enum {G_CAM,G_RIGHT=3,G_UP=6,G_FWD=9,G_FOC=12,G_KEY,G_KC=16,G_SKY=19,G_SOFT=22,
		G_TAB,G_TA,G_TB=27,G_TC=30,G_TS=33,G_TR,G_SEED,G_WALL,G_WT,G_WC,G_GLOSS=41,
		G_GOBO,G_GSC,G_FOLD,G_TRANS,G_GLARE};
typedef struct {v3 c;float h,gloss,rough,tr,occ,spec;} Tex;
static inline v3 at(const float *a,int i){return V(a[i],a[i+1],a[i+2]);}
static const float *FL; /* the flaws, NF x FS */
static uint32_t OFF; /* bit i set: draw without flaw i */
static inline const float *flaw(int i){
	const float *f=FL+i*FS;return (f[F_ST]>0&&!((OFF >> i) & 1))?f:0;
}
static inline v3 to_local(const float *O,v3 p){
	v3 d=sub(p,at(O,O_POS));
	return V(dot(at(O,O_ROT),d),dot(at(O,O_ROT+3),d),dot(at(O,O_ROT+6),d));
}
static inline v3 dir_local(const float *O,v3 d){
	return V(dot(at(O,O_ROT),d),dot(at(O,O_ROT+3),d),dot(at(O,O_ROT+6),d));
}
static inline v3 dir_world(const float *O,v3 d){
	return add(add(mul(at(O,O_ROT),d.x),mul(at(O,O_ROT+3),d.y)),mul(at(O,O_ROT+6),d.z));
}
#endif
