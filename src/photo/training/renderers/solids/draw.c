/* draw(): shoots one ray a pixel, lays soap and flaws on what it meets, then lights it. */
#include <stdlib.h>
#include "vec.h"
#include "model.h"
#include "shapes.h"
#include "pattern.h"
#include "deco.h"
#include "table.h"
#include "flaws1.h"
#include "flaws2.h"
#include "blur.h"

typedef struct { Surf s; V p, n; short obj; float t, sh, ao; } Px;

static void soap_point(const Obj *o, V loc, V nl, const Flaw *fs, int nf, Surf *s, float *mask) {
	V p = v3(loc.x, loc.y, loc.z + o->zoff);
	float ax = fabsf(nl.x), ay = fabsf(nl.y), az = fabsf(nl.z), u, v; int face, bar = (int)o->seed;
	if (az >= ax && az >= ay) { face = CUT; u = loc.x; v = loc.y; }
	else if (ay >= ax) { face = nl.y > 0 ? TOP : SIDE; u = loc.x; v = p.z; }
	else { face = S->kind == 2 ? CUT : SIDE; u = p.z; v = loc.y; }
	if (S->kind == 1) face = nl.y > 0.6f ? TOP : SIDE;
	int fid = az >= ax && az >= ay ? (nl.z > 0 ? 0 : 1) : ay >= ax ? (nl.y > 0 ? 2 : 3) : (nl.x > 0 ? 4 : 5);
	base_soap(p, loc, face, u, v, s, bar);
	for (int i = 0; i < 3; i++) if (S->deco[i].type == 9 || S->deco[i].type == 13 || S->deco[i].type == 4) decorate(&S->deco[i], p, face, u, v, s, bar);
	for (int i = 0; i < nf; i++) {
		const Flaw *f = fs + i;
		if (!((int)f->bits >> (bar & 7) & 1)) continue;
		int sd = (int)f->seed + 101 * bar + 7 * fid, s0 = (int)f->seed;
		float g = region(f, loc), m = 0;
		switch ((int)f->id) {
		case 0: m = coloured_specks(f, p, u, v, g, s, sd); break;
		case 1: m = smears(f, p, u, v, g, s, sd); break;
		case 2: m = white_specks(f, p, u, v, g, s, sd); break;
		case 3: m = veins(f, p, u, v, g, s, sd); break;
		case 4: m = crackle(f, p, u, v, g, s, sd); break;
		case 5: m = ash(f, loc, face, u, v, g, s, sd); break;
		case 6: m = ring(f, p, face, g, s, s0); break;
		case 7: m = rancid(f, loc, u, v, g, s, sd); break;
		case 8: m = pinholes(f, p, u, v, g, s, sd); break;
		case 9: m = crack(f, p, face, u, v, s, s0 + 3 * bar); break;
		case 10: m = browning(f, p, s, s0); break;
		case 11: m = bled(f, p, g, s, s0); break;
		case 12: m = drag(f, p, face, u, v, g, s, sd); break;
		case 13: m = gap(f, p, face, s, s0); break;
		case 14: m = wrinkled(f, p, face, s); break;
		case 15: m = dimples(f, p, face, u, v, g, s, sd); break;
		}
		mask[i] = m;
	}
	for (int i = 0; i < 3; i++) { int k = (int)S->deco[i].type; if (k != 9 && k != 13 && k != 4) decorate(&S->deco[i], p, face, u, v, s, bar); }
}

/* out: w*h*3 linear light; ids: object index + 1 (0 table or wall); depth; masks: nf planes. */
int draw(int w, int h, const View *vw, const Soap *soap, const Obj *os, int no, const Flaw *fs, int nf,
		 float *out, int *ids, float *depth, float *masks) {
	S = soap; wrinkle_amp = 0;
	for (int i = 0; i < nf; i++) if (fs[i].id == 14) {
		wrinkle_amp = 0.06f + 0.34f * fs[i].strength; wrinkle_look = fs[i].look; wrinkle_size = 0.6f + 0.9f * fs[i].size; wrinkle_seed = (int)fs[i].seed;
		if (wrinkle_look > 0.5f && wrinkle_look < 1.5f) wrinkle_amp *= 0.7f;
	}
	Px *px = malloc(sizeof(Px) * w * h);
	V ro = v3(vw->pos[0], vw->pos[1], vw->pos[2]), R = v3(vw->right[0], vw->right[1], vw->right[2]), U = v3(vw->up[0], vw->up[1], vw->up[2]), F = v3(vw->fwd[0], vw->fwd[1], vw->fwd[2]);
	V L = v3(vw->ldir[0], vw->ldir[1], vw->ldir[2]), lc = v3(vw->lcol[0], vw->lcol[1], vw->lcol[2]), am = v3(vw->amb[0], vw->amb[1], vw->amb[2]), bo = v3(vw->bounce[0], vw->bounce[1], vw->bounce[2]);
	float k = 1 / vw->soft;
	memset(masks, 0, sizeof(float) * w * h * (nf ? nf : 1));
	for (int y = 0; y < h; y++) for (int x = 0; x < w; x++) {
		int i = y * w + x; Px *q = px + i; float m[MAXF] = {0};
		float a = (2 * (x + .5f) / w - 1) * vw->tanx, b = (1 - 2 * (y + .5f) / h) * vw->tanx * h / w;
		V rd = unit(add(F, add(mul(R, a), mul(U, b))));
		float t = 1e8f; int hit = -1;
		if (rd.y < 0) { float tt = -ro.y / rd.y; if (ro.z + rd.z * tt > vw->tedge) t = tt; }
		for (int j = 0; j < no; j++) { float tt = hit_obj(os + j, ro, rd, t); if (tt < t) { t = tt; hit = j; } }
		q->obj = hit; memset(&q->s, 0, sizeof(Surf));
		if (hit >= 0) {
			const Obj *o = os + hit; q->p = add(ro, mul(rd, t));
			V lp = to_local(o, q->p), nl = normal_at(o, lp); q->n = dir_world(o, nl);
			if (o->mat < 0.5f) soap_point(o, lp, nl, fs, nf, &q->s, m); else thing(o, lp, nl, &q->s);
		} else if (t < 1e7f) { q->p = add(ro, mul(rd, t)); q->n = v3(0, 1, 0); tabletop(vw, q->p.x, q->p.z, &q->s); }
		else { /* the wall behind */
			float zb = vw->tedge - 25, tt = fabsf(rd.z) > 1e-4f ? (zb - ro.z) / rd.z : 1e4f; if (tt < 0 || tt > 900) tt = 900;
			t = tt; q->p = add(ro, mul(rd, tt)); q->n = v3(0, 0, 1); q->s.alb = wall(vw, q->p); q->obj = -2;
		}
		q->t = t; depth[i] = t; ids[i] = hit + 1;
		for (int j = 0; j < nf; j++) masks[j * w * h + i] = m[j];
	}
	for (int y = 0; y < h; y++) for (int x = 0; x < w; x++) {
		int i = y * w + x; Px *q = px + i; Surf *s = &q->s; V n = q->n;
		V rd = unit(sub(q->p, ro));
		Px *qx = px + (x + 1 < w ? i + 1 : i - 1), *qy = px + (y + 1 < h ? i + w : i - w);
		if (q->obj > -2 && qx->obj == q->obj && qy->obj == q->obj) { /* relief from the heights */
			V sx = sub(qx->p, q->p), sy = sub(qy->p, q->p);
			sx = sub(sx, mul(n, dot(sx, n))); sy = sub(sy, mul(n, dot(sy, n)));
			V r1 = cross(sy, n), r2 = cross(n, sx); float det = dot(sx, r1), lim = 1.4f;
			if (fabsf(det) > 1e-9f) {
				V g = mul(add(mul(r1, qx->s.hgt - s->hgt), mul(r2, qy->s.hgt - s->hgt)), 1 / det);
				float gl = len(g); if (gl > lim) g = mul(g, lim / gl);
				n = unit(sub(n, g));
			}
		}
		V c;
		if (q->obj == -2) c = mulv(s->alb, add(am, mul(lc, 0.25f)));
		else {
			int skin = q->obj >= 0; float sh = 1, ao, nl = dot(n, L), wr = s->trans * 0.45f;
			Px *near = px + (y & ~1) * w + (x & ~1); /* one shadow ray for four pixels alike */
			if (near != q && near->obj == q->obj && dot(near->n, q->n) > 0.97f) { sh = near->sh; ao = near->ao; }
			else {
				ao = occl(os, no, q->p, q->n);
				if (dot(q->n, L) > -wr) sh = shadow(os, no, add(q->p, mul(q->n, 0.03f)), L, k);
			}
			q->sh = sh; q->ao = ao;
			if (vw->stripes > 0.5f) { /* light through blinds or leaves */
				float cs = cosf(vw->stripeangle), sn = sinf(vw->stripeangle), px_ = q->p.x - q->p.y * L.x / L.y, pz_ = q->p.z - q->p.y * L.z / L.y;
				float a = (px_ * cs + pz_ * sn) / vw->stripescale, b = (-px_ * sn + pz_ * cs) / vw->stripescale;
				float m = vw->stripes < 1.5f ? smooth(0.25f, 0.4f, fabsf(a - floorf(a) - 0.5f)) : smooth(0.42f, 0.52f, fbm2(a * 1.3f, b * 1.3f, 3, (int)vw->seed));
				sh *= 0.15f + 0.85f * m;
			}
			float dif = clampf((nl + wr) / ((1 + wr) * (1 + wr)), 0, 1) * sh, up = 0.5f + 0.5f * n.y;
			V amb = mul(lerpv(bo, am, up), ao);
			V tintd = lerpv(v3(1, 1, 1), v3(1, 0.93f, 0.85f), skin * s->trans * (1 - dif));
			c = mulv(mulv(s->alb, tintd), add(mul(lc, dif), amb));
			V H = unit(sub(L, rd)); float nh = maxf(dot(n, H), 0), e = 2 / (s->rough * s->rough * s->rough * s->rough + 1e-4f);
			float fr = 0.04f + 0.5f * powf(1 - clampf(-dot(n, rd), 0, 1), 5), sp = s->gloss * fr * (e * 0.06f) * powf(nh, e > 900 ? 900 : e) * sh * maxf(nl, 0);
			V rf = sub(rd, mul(n, 2 * dot(rd, n)));
			float sky = smooth(-0.2f, 0.9f, rf.y) * (0.6f + 0.7f * smooth(0.2f, 0.9f, dot(rf, L)));
			c = add(c, add(mul(lc, minf(sp, 3)), mul(am, s->gloss * fr * sky * ao * 1.6f)));
		}
		out[3 * i] = c.x; out[3 * i + 1] = c.y; out[3 * i + 2] = c.z;
	}
	free(px);
	return 0;
}
