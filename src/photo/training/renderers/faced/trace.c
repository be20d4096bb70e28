/* Sphere tracing of a small soap scene, and texture look-up. */
#include <math.h>
#define NO 24 /* floats an object */
#define TS 33 /* side of a height map for tops */
typedef const float *cf;
static float mx(float a, float b) { return a > b ? a : b; }
static float mn(float a, float b) { return a < b ? a : b; }

static float top(cf t, float u, float v) {
	u = mn(mx(u, 0), 0.9999f) * (TS - 1); v = mn(mx(v, 0), 0.9999f) * (TS - 1);
	int i = (int)u, j = (int)v; float a = u - i, b = v - j; t += j * TS + i;
	a = a * a * (3 - 2 * a); b = b * b * (3 - 2 * b);
	return (t[0] * (1 - a) + t[1] * a) * (1 - b) + (t[TS] * (1 - a) + t[TS + 1] * a) * b;
}
/* object: type, centre 3, rotation 9 (rows: local axes), half 3, round, corner, top index, radius of its ball */
static void local(cf o, cf p, float *l) {
	float x = p[0] - o[1], y = p[1] - o[2], z = p[2] - o[3];
	for (int k = 0; k < 3; k++) l[k] = o[4 + 3 * k] * x + o[5 + 3 * k] * y + o[6 + 3 * k] * z;
}
static float sdf(cf o, cf tops, cf p) {
	float l[3]; local(o, p, l);
	float hx = o[13], hy = o[14], hz = o[15], r = o[16];
	int ty = (int)o[0];
	if (ty == 1) {
		float a = l[0] / hx, b = l[1] / hy, c = l[2] / hz, k0 = sqrtf(a * a + b * b + c * c);
		a /= hx; b /= hy; c /= hz;
		return k0 * (k0 - 1) / mx(sqrtf(a * a + b * b + c * c), 1e-6f);
	}
	if (ty == 2) { float x = mx(fabsf(l[0]) - hx, 0); return sqrtf(x * x + l[1] * l[1] + l[2] * l[2]) - hy; }
	if (ty == 4) { float q = sqrtf(l[0] * l[0] + l[1] * l[1]) - hx; return sqrtf(q * q + l[2] * l[2]) - hy; }
	if (o[18] >= 0 && l[1] > -hy * 0.3f) {
		float t = top(tops + (int)o[18] * TS * TS, l[0] / hx * 0.5f + 0.5f, l[2] / hz * 0.5f + 0.5f);
		l[1] -= t * mn(1, (l[1] + hy * 0.3f) / hy);
	}
	float d2;
	if (ty == 3) { float s = hx / hy; d2 = (sqrtf(l[0] * l[0] + l[1] * l[1] * s * s) - hx) * mn(1, 1 / s); }
	else {
		float c = o[17], qx = fabsf(l[0]) - hx + c, qy = fabsf(l[1]) - hy + c, ax = mx(qx, 0), ay = mx(qy, 0);
		d2 = sqrtf(ax * ax + ay * ay) + mn(mx(qx, qy), 0) - c;
	}
	float a = d2 + r, b = fabsf(l[2]) - hz + r, aa = mx(a, 0), bb = mx(b, 0);
	return mn(mx(a, b), 0) + sqrtf(aa * aa + bb * bb) - r;
}
static int cull(cf obj, int n, cf p, cf d, int *list, float *near_, float *far_) {
	int m = 0; *near_ = 1e9f; *far_ = 0;
	for (int i = 0; i < n; i++) {
		cf o = obj + i * NO; float x = o[1] - p[0], y = o[2] - p[1], z = o[3] - p[2];
		float b = x * d[0] + y * d[1] + z * d[2], c = x * x + y * y + z * z - b * b, r2 = o[19] * o[19];
		if (c > r2) continue;
		float h = sqrtf(r2 - c); if (b + h < 0) continue;
		*near_ = mn(*near_, mx(b - h, 0)); *far_ = mx(*far_, b + h); list[m++] = i;
	}
	return m;
}
void trace(int W, int H, cf cam, int n, cf obj, cf tops, cf L, float soft,
		   int *id, float *pos, float *nrm, float *dep, float *sh, float *ao) {
	int li[64];
	for (int y = 0; y < H; y++) for (int x = 0; x < W; x++) {
		int k = y * W + x, hit = -3;
		float u = (2 * (x + 0.5f) / W - 1) * cam[12], v = (1 - 2 * (y + 0.5f) / H) * cam[13], d[3], p[3], q[3], s = 0;
		for (int c = 0; c < 3; c++) { d[c] = cam[3 + c] * u + cam[6 + c] * v + cam[9 + c]; s += d[c] * d[c]; }
		s = 1 / sqrtf(s); for (int c = 0; c < 3; c++) d[c] *= s;
		float best = 400, t0, t1;
		if (d[1] < -1e-4f) { best = -cam[1] / d[1]; hit = -1; }
		if (cam[14] > 0 && d[2] < -1e-4f) { float t = (-cam[14] - cam[2]) / d[2]; if (t < best) { best = t; hit = -2; } }
		if (best > 400) { best = 400; hit = -3; }
		int m = cull(obj, n, cam, d, li, &t0, &t1);
		if (m) {
			float t = t0; t1 = mn(t1, best);
			for (int it = 0; it < 70 && t < t1; it++) {
				for (int c = 0; c < 3; c++) p[c] = cam[c] + d[c] * t;
				float dm = 1e9f; int bi = 0;
				for (int i = 0; i < m; i++) { float e = sdf(obj + li[i] * NO, tops, p); if (e < dm) { dm = e; bi = li[i]; } }
				if (dm < 0.0012f * t * 0.2f + 0.001f) { hit = bi; best = t; break; }
				t += dm * 0.9f;
			}
		}
		float N[3] = {0, 1, 0};
		for (int c = 0; c < 3; c++) p[c] = cam[c] + d[c] * best;
		if (hit == -2) { N[1] = 0; N[2] = 1; }
		if (hit >= 0) {
			float e = 0.02f, g = 0;
			cf o = obj + hit * NO; float base = sdf(o, tops, p);
			for (int c = 0; c < 3; c++) { q[0] = p[0]; q[1] = p[1]; q[2] = p[2]; q[c] += e; N[c] = sdf(o, tops, q) - base; g += N[c] * N[c]; }
			g = 1 / mx(sqrtf(g), 1e-9f); for (int c = 0; c < 3; c++) N[c] *= g;
			local(o, p, pos + 3 * k);
		} else for (int c = 0; c < 3; c++) pos[3 * k + c] = p[c];
		id[k] = hit; dep[k] = best;
		for (int c = 0; c < 3; c++) nrm[3 * k + c] = N[c];
		float shv = 1, aov = 1;
		if (hit > -3) {
			for (int c = 0; c < 3; c++) q[c] = p[c] + N[c] * 0.03f;
			if (N[0] * L[0] + N[1] * L[1] + N[2] * L[2] > -0.1f) {
				m = 0; t1 = 0;
				for (int i = 0; i < n; i++) { /* a wider ball, for the soft rim */
					cf o = obj + i * NO; float a = o[1] - q[0], b = o[2] - q[1], c = o[3] - q[2];
					float bb = a * L[0] + b * L[1] + c * L[2], cc = a * a + b * b + c * c - bb * bb;
					float r = o[19] + mx(bb, 0) / soft; if (cc > r * r || bb < -o[19]) continue;
					li[m++] = i; t1 = mx(t1, bb + r);
				}
				float t = 0.02f, w[3];
				for (int it = 0; m && it < 26 && t < t1; it++) {
					for (int c = 0; c < 3; c++) w[c] = q[c] + L[c] * t;
					float dm = 1e9f;
					for (int i = 0; i < m; i++) dm = mn(dm, sdf(obj + li[i] * NO, tops, w));
					shv = mn(shv, 0.5f + 0.5f * soft * dm / t); if (shv < 0.01f) { shv = 0; break; }
					t += mx(fabsf(dm) * 0.85f, 0.04f + 0.03f * t);
				}
				shv = mx(shv, 0); shv = shv * shv * (3 - 2 * shv);
			} else shv = 0;
			float oc = 0;
			for (int j = 1; j <= 3; j++) {
				float hh = 0.15f * j * j * 0.9f, w[3], dm = hh;
				for (int c = 0; c < 3; c++) w[c] = p[c] + N[c] * hh;
				if (hit != -1) dm = mn(dm, w[1]);
				for (int i = 0; i < n; i++) {
					cf o = obj + i * NO; float a = w[0] - o[1], b = w[1] - o[2], c = w[2] - o[3], r = o[19] + hh;
					if (a * a + b * b + c * c < r * r) dm = mn(dm, sdf(o, tops, w));
				}
				oc += (hh - mx(dm, 0)) / hh * 0.3f;
			}
			aov = mx(1 - oc, 0.06f);
		}
		sh[k] = shv; ao[k] = aov;
	}
}
/* bilinear: 6 channels r g b, slope u, slope v, gloss */
static void look(cf t, int w, int h, float u, float v, int wrap, float wt, float *out) {
	u -= 0.5f; v -= 0.5f;
	int i = (int)floorf(u), j = (int)floorf(v); float a = u - i, b = v - j; int i1 = i + 1, j1 = j + 1;
	if (wrap) { i = ((i % w) + w) % w; j = ((j % h) + h) % h; i1 = (i + 1) % w; j1 = (j + 1) % h; }
	else {
		i = i < 0 ? 0 : i >= w ? w - 1 : i; j = j < 0 ? 0 : j >= h ? h - 1 : j;
		i1 = i1 < 0 ? 0 : i1 >= w ? w - 1 : i1; j1 = j1 < 0 ? 0 : j1 >= h ? h - 1 : j1;
	}
	cf A = t + 6 * (j * w + i), B = t + 6 * (j * w + i1), C = t + 6 * (j1 * w + i), D = t + 6 * (j1 * w + i1);
	for (int c = 0; c < 6; c++) out[c] += wt * ((A[c] * (1 - a) + B[c] * a) * (1 - b) + (C[c] * (1 - a) + D[c] * a) * b);
}
/* tab: offset, w, h, ppc for each object's faces z, x, y; then 6 levels of ground and wall */
void paint(int N, int n, cf obj, const int *id, cf pos, cf nrm, cf dep, cf tex, const int *tab, float pix,
		   float *alb, float *nout, float *gls) {
	for (int k = 0; k < N; k++) {
		float o6[6] = {0}; cf P = pos + 3 * k, M = nrm + 3 * k; int i = id[k];
		float nn[3] = {M[0], M[1], M[2]};
		if (i >= 0) {
			cf o = obj + i * NO; float l[3], w[3], s = 0, d[3] = {0, 0, 0};
			for (int c = 0; c < 3; c++) {
				l[c] = o[4 + 3 * c] * M[0] + o[5 + 3 * c] * M[1] + o[6 + 3 * c] * M[2];
				float q = l[c] * l[c]; q *= q; w[c] = q * q; s += w[c];
			}
			for (int f = 0; f < 3; f++) {
				int ax = f == 0 ? 2 : f == 1 ? 0 : 1; float wt = w[ax] / s; if (wt < 0.004f) continue;
				const int *T = tab + 4 * (3 * i + f); float ppc = T[3] * 0.01f, t6[6] = {0}, u, v;
				if (f == 0) { u = P[0] + o[13]; v = o[14] - P[1]; }
				else if (f == 1) { u = P[2] + o[15]; v = o[14] - P[1]; }
				else { u = P[0] + o[13]; v = P[2] + o[15]; }
				look(tex + T[0], T[1], T[2], u * ppc, v * ppc, 0, wt, t6);
				for (int c = 0; c < 6; c++) o6[c] += t6[c];
				if (f == 0) { d[0] -= t6[3]; d[1] += t6[4]; }
				else if (f == 1) { d[2] -= t6[3]; d[1] += t6[4]; }
				else { d[0] -= t6[3]; d[2] -= t6[4]; }
			}
			for (int c = 0; c < 3; c++) nn[c] += o[4 + c] * d[0] + o[7 + c] * d[1] + o[10 + c] * d[2];
		} else if (i > -3) {
			const int *T = tab + 12 * n + (i == -2 ? 24 : 0);
			int lv = (int)floorf(log2f(mx(dep[k] * pix * T[3] * 0.01f, 1)) + 0.5f); lv = lv > 5 ? 5 : lv; T += 4 * lv;
			float ppc = T[3] * 0.01f;
			look(tex + T[0], T[1], T[2], P[0] * ppc, (i == -2 ? -P[1] : P[2]) * ppc, 1, 1, o6);
			nn[0] -= o6[3]; if (i == -2) nn[1] += o6[4]; else nn[2] -= o6[4];
		} else o6[0] = o6[1] = o6[2] = 0.5f;
		float s = 1 / mx(sqrtf(nn[0] * nn[0] + nn[1] * nn[1] + nn[2] * nn[2]), 1e-6f);
		for (int c = 0; c < 3; c++) { alb[3 * k + c] = o6[c]; nout[3 * k + c] = nn[c] * s; }
		gls[k] = o6[5];
	}
}
