/* What Python hands over: plain floats only, in the order of render.py. */
typedef struct {
	float shape, h[3], round, pos[3], rot[9], mat, col[3], seed, zoff, bits, topamp;
} Obj;
typedef struct { float type, amount, size, col[3], seed; } Deco;
typedef struct {
	float kind, pattern, ncol, col[12], freq, warp, angle, pa, pb, mottle, gloss, trans;
	float h[3], topstyle, topfreq, mica, micacol[3], seed;
	Deco deco[3];
} Soap;
typedef struct { float id, look, strength, extent, size, bits, c[3], col[3], seed; } Flaw;
typedef struct {
	float pos[3], right[3], up[3], fwd[3], tanx;
	float ldir[3], lcol[3], soft, amb[3], bounce[3], stripes, stripescale, stripeangle;
	float tkind, tcol[3], tcol2[3], tscale, tangle, tgloss, tedge, wkind, wcol[3], seed;
} View;
/* Surface of a point as it is built up. */
typedef struct { V alb; float hgt, gloss, rough, trans; } Surf;
enum { CUT, TOP, SIDE };
#define MAXF 4
