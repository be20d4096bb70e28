/* casts rays on a table with soap and other things; writes linear RGB, depth and the soap mask */
#include <stdlib.h>
#include <string.h>
#include "soap.h"
#include "things.h"
#include "blur.h"
static const float *S, *OB, *PR; static int nob;
static V eye, fx, fy, fz; static int W, H;
static float brad[64]; static V bcen[64];
static V loc(const float *o, V p) { const float *m = o + O_m0; p = sub(p, v3(o[O_cx], o[O_cy], o[O_cz]));
    return v3(m[0]*p.x + m[1]*p.y + m[2]*p.z, m[3]*p.x + m[4]*p.y + m[5]*p.z, m[6]*p.x + m[7]*p.y + m[8]*p.z); }
static V locd(const float *o, V p) { const float *m = o + O_m0;
    return v3(m[0]*p.x + m[1]*p.y + m[2]*p.z, m[3]*p.x + m[4]*p.y + m[5]*p.z, m[6]*p.x + m[7]*p.y + m[8]*p.z); }
static V wld(const float *o, V p) { const float *m = o + O_m0;
    return v3(m[0]*p.x + m[3]*p.y + m[6]*p.z, m[1]*p.x + m[4]*p.y + m[7]*p.z, m[2]*p.x + m[5]*p.y + m[8]*p.z); }
static float blob(const float *o, V p, int *which, float *w2) {
    int a = o[O_p0], n = o[O_pn]; float k = 0.35f * o[O_hx], d = 1e9f, best = 1e9f; *which = a;
    for (int i = a; i < a + n; i++) {
        const float *q = PR + i * NPR; V A = v3(q[0], q[1], q[2]), B = v3(q[3], q[4], q[5]), pa = sub(p, A), ba = sub(B, A);
        float t = clampf(dot(pa, ba) / (dot(ba, ba) + 1e-6f), 0, 1), e = len(sub(pa, mul(ba, t))) - mixf(q[6], q[7], t);
        if (e < best) { best = e; *which = i; }
        float h = clampf(0.5f + 0.5f * (e - d) / k, 0, 1); d = i == a ? e : mixf(e, d, h) - k * h * (1 - h);
    }
    return d;
}
static float sdf(const float *o, V p, int fine) {
    int t = o[O_type], w; V h = v3(o[O_hx], o[O_hy], o[O_hz]);
    if (t == 0) return soap_sdf(o, p, fine);
    if (t == 1) return rbox(p, h, o[O_rad]);
    if (t == 2) { V q = v3(p.x / h.x, p.y / h.y, p.z / h.z); float a = len(q), b = len(v3(q.x / h.x, q.y / h.y, q.z / h.z)); return a * (a - 1) / (b + 1e-6f); }
    if (t == 3) { float r = sqrtf(p.x*p.x + p.y*p.y), R = h.x * (1 + o[O_chip] * p.z / h.z), x = r - R + o[O_rad], y = fabsf(p.z) - h.z + o[O_rad];
        float d = fminf(fmaxf(x, y), 0) + sqrtf(fmaxf(x, 0) * fmaxf(x, 0) + fmaxf(y, 0) * fmaxf(y, 0)) - o[O_rad];
        if (o[O_embed] > 0) d = fmaxf(d, -fmaxf(r - R + 0.35f, -p.z - h.z + 0.5f)); return d * 0.9f; }
    if (t == 4) { float r = len(p), d = fabsf(r - h.x) - o[O_rad]; return fmaxf(d, p.z - 0.1f * h.x) * 0.95f; }
    return blob(o, p, &w, 0);
}
/* shadow and occlusion are smooth: each block of four pixels shares one look */
static float *memo; static int memo_w, memo_x, memo_y, lean;
static int march(V ro, V rd, float tmax, float *tt, V *pl) {
    int hit = -1; float best = tmax;
    for (int i = 0; i < nob; i++) {
        V oc = sub(bcen[i], ro); float b = dot(oc, rd), q = dot(oc, oc) - b * b, R = brad[i];
        if (q > R * R) continue;
        float s = sqrtf(R * R - q), t = fmaxf(b - s, 0.01f), te = fminf(b + s, best); if (t > te) continue;
        const float *o = OB + i * NO; V lo = loc(o, ro), ld = locd(o, rd); float k = o[O_type] < 0.5f ? (o[O_F + 14 * 8] > 0 ? 0.6f : 0.8f) : 1;
        for (int j = 0; j < 90 && t < te; j++) {
            float d = sdf(o, add(lo, mul(ld, t)), 1); if (d < 0.0012f * t * 0.1f + 0.001f) { best = t; hit = i; *pl = add(lo, mul(ld, t)); break; }
            t += fmaxf(d * k, 0.003f); }
    }
    *tt = best; return hit;
}
static float shadow(V ro, V rd, float soft) {
    float res = 1;
    for (int i = 0; i < nob; i++) {
        V oc = sub(bcen[i], ro); float b = dot(oc, rd), q = dot(oc, oc) - b * b, R = brad[i] * 1.02f + soft * fmaxf(b, 0);
        if (q > R * R || b < -R) continue;
        float s = sqrtf(R * R - q), t = fmaxf(b - s, 0.03f), te = b + s; const float *o = OB + i * NO; V lo = loc(o, ro), ld = locd(o, rd);
        for (int j = 0; j < 22 && t < te; j++) { float d = sdf(o, add(lo, mul(ld, t)), t < 0.6f); res = fminf(res, 0.5f + 0.5f * d / (soft * t + 0.004f)); if (res < 0.01f) return 0; t += clampf(d * 0.9f, 0.04f, 2.5f); }
    }
    res = clampf(res, 0, 1); return res * res * (3 - 2 * res);
}
static float occl(V p, V n, int self) {
    float o1 = 0; const float D[3] = {0.25f, 0.9f, 2.6f}, W[3] = {0.35f, 0.4f, 0.4f};
    for (int j = 0; j < 3; j++) { V q = add(p, mul(n, D[j])); float d = fmaxf(q.z, 0) ; if (n.z > 0.95f && self < 0) d = D[j];
        for (int i = 0; i < nob; i++) { if (len(sub(q, bcen[i])) - brad[i] > D[j]) continue; d = fminf(d, sdf(OB + i * NO, loc(OB + i * NO, q), 0)); }
        o1 += W[j] * clampf((D[j] - d) / D[j], 0, 1); }
    return clampf(1 - 0.8f * o1, 0.08f, 1);
}
static float gobo(V p, V L) {                                         /* shadow patterns of window, leaves, phone */
    int k = S[S_gobo]; if (!k) return 1;
    V a = nrm(cross(L, v3(0.3f, 0.1f, 1))), b = cross(L, a); float c = cosf(S[S_gang]), s = sinf(S[S_gang]), u0 = dot(p, a), v0 = dot(p, b), f = S[S_gscale], u = (u0*c + v0*s) * f, v = (v0*c - u0*s) * f, g = 1;
    int sd = S[S_tseed];
    if (k == 1) g = sst(0.42f, 0.58f, fabsf(u - floorf(u) - 0.5f) * 2);
    else if (k == 2) { V w = warp(v3(u, v, 1), 1, 0.4f, sd); w.x *= 2; g = sst(-0.1f, 0.25f, noise(w, sd) + 0.5f * noise(mul(w, 2.2f), sd + 1) + 0.15f); }
    else if (k == 3) g = sst(-0.15f, 0.15f, u * 0.5f + 0.2f * sinf(v));
    else { float x = fabsf(u - floorf(u) - 0.5f), y = fabsf(v * 0.7f - floorf(v * 0.7f) - 0.5f); g = sst(0.44f, 0.40f, x) * sst(0.44f, 0.40f, y); }
    return mixf(1, g, S[S_gamt]);
}
static V env(V d, V L, V lc, V ac, float rough) {
    float up = sst(-0.2f, 0.9f, d.z), k = fmaxf(dot(d, L), 0); V c = mul(ac, 0.25f + 1.0f * up);
    float e = mixf(240, 14, rough); return add(c, mul(lc, powf(k, e) * e * 0.02f));
}
static V shade(V p, V n, V ng, V rd, Mat *m, int self, V bounce, int soap) {
    V L = v3(S[S_lx], S[S_ly], S[S_lz]), lc = v3(S[S_lr], S[S_lg], S[S_lb]), ac = v3(S[S_ar], S[S_ag], S[S_ab]);
    const float *o = OB + (self < 0 ? 0 : self) * NO; float tr = soap ? o[O_transl] : 0;
    float nl = dot(n, L), w = 0.12f + 0.25f * tr; if (!soap) w = 0.02f; nl = fmaxf((nl + w) / (1 + w), 0);
    float sh, ao, dep = dot(sub(p, eye), fz), *q = memo ? memo + ((size_t)(memo_y >> 1) * memo_w + (memo_x >> 1)) * 4 : 0;
    if (q && q[2] == self + 2 && fabsf(q[3] - dep) < 0.02f * dep) { sh = q[0]; ao = q[1]; }
    else { sh = dot(ng, L) > -0.3f ? shadow(add(p, mul(ng, 0.035f)), L, S[S_soft]) : 0; ao = occl(p, ng, self); if (q) { q[0] = sh; q[1] = ao; q[2] = self + 2; q[3] = dep; } }
    sh *= gobo(p, L);
    V amb = mulv(ac, v3(1, 1, 1)); float hemi = 0.6f + 0.4f * n.z; amb = add(mul(amb, hemi * ao), mul(bounce, 0.35f * (0.5f - 0.5f * n.z) * (0.3f + 0.7f * ao)));
    V tint = soap ? v3(powf(m->c.x, 0.25f), powf(m->c.y, 0.25f), powf(m->c.z, 0.25f)) : v3(1, 1, 1);
    V lit = mul(lc, nl * sh); if (soap) lit = add(lit, mul(mulv(lc, tint), 0.10f * tr * (0.4f + 0.6f * sh)));
    V c = mul(mulv(m->c, add(lit, amb)), m->dark);
    float g = m->gloss; if (g > 0.01f) { float f = 0.04f + 0.96f * powf(1 - fmaxf(-dot(n, rd), 0), 5) * 0.5f; V r = sub(rd, mul(n, 2 * dot(rd, n)));
        V e = env(r, L, mul(lc, 0.3f + 0.7f * sh), ac, clampf(1.15f - g * 0.7f, 0.03f, 1)); c = add(c, mul(e, f * fminf(g, 1.3f) * m->dark * (0.4f + 0.6f * ao))); }
    if (m->glint > 0) { V r = sub(rd, mul(n, 2 * dot(rd, n))); float q = powf(fmaxf(dot(r, L), 0), 2); c = add(c, mul(add(mul(lc, q * 0.5f), ac), m->glint * 0.35f)); }
    return c;
}
static V ray(V ro, V rd, float *depth, unsigned char *id) {
    float t, tt = rd.z < -1e-4f ? -ro.z / rd.z : 1e4f, tw = rd.y > 1e-4f ? (S[S_wdist] - ro.y) / rd.y : 1e4f; int wall = tw < tt; float tb = fminf(tw, tt); if (tb < 0) tb = 1e3f;
    V pl, c, L = v3(S[S_lx], S[S_ly], S[S_lz]), bounce = mulv(v3(S[S_tar], S[S_tag], S[S_tab]), v3(S[S_lr], S[S_lg], S[S_lb])); Mat m; int h = march(ro, rd, tb, &t, &pl);
    *depth = t; *id = 0; V p = add(ro, mul(rd, t));
    if (h >= 0) {
        const float *o = OB + h * NO; int soap = o[O_soapy] > 0.5f; float e = 0.012f; V n = v3(0, 0, 0);
        for (int i = 0; i < 4; i++) { V k = v3(i == 0 || i == 3 ? 1 : -1, i == 1 || i == 3 ? 1 : -1, i == 2 || i == 3 ? 1 : -1); n = add(n, mul(k, sdf(o, add(pl, mul(k, e)), 1))); }
        n = nrm(n); V nb; e = 0.0009f * t * 0.6f + 0.004f;
        if (soap) { V u = nrm(fabsf(n.z) < 0.8f ? cross(n, v3(0, 0, 1)) : cross(n, v3(1, 0, 0))), v = cross(n, u);
            float h0 = soap_height(o, pl, n), hu = soap_height(o, add(pl, mul(u, e)), n) - h0, hv = soap_height(o, add(pl, mul(v, e)), n) - h0;
            nb = nrm(sub(n, add(mul(u, clampf(hu / e, -1.6f, 1.6f)), mul(v, clampf(hv / e, -1.6f, 1.6f))))); soap_mat(o, pl, n, &m); *id = 255;
        } else { int k = o[O_mat], s = o[O_seed]; if (o[O_type] > 4.5f) { int w; blob(o, pl, &w, 0); float *cc = (float *)o + O_c0r; const float *q = PR + w * NPR; cc[0] = q[8]; cc[1] = q[9]; cc[2] = q[10]; ((float *)o)[O_gloss] = q[11]; }
            V g = v3(thing_height(k, add(pl, v3(e,0,0)), s), thing_height(k, add(pl, v3(0,e,0)), s), thing_height(k, add(pl, v3(0,0,e)), s)); float g0 = thing_height(k, pl, s);
            g = mul(sub(g, v3(g0, g0, g0)), 1 / e); g = sub(g, mul(n, dot(g, n))); nb = nrm(sub(n, g)); thing_mat(o, pl, n, &m); }
        if (lean && !soap) return v3(0, 0, 0);
        return shade(p, wld(o, nb), wld(o, n), rd, &m, h, bounce, soap);
    }
    if (lean) return v3(0, 0, 0);
    if (wall) { wall_mat(S, p.x, p.z, &m); c = shade(p, v3(0, -1, 0), v3(0, -1, 0), rd, &m, -1, v3(0,0,0), 0); return c; }
    if (tb > 900) { wall_mat(S, rd.x * 60, rd.z * 60, &m); return mul(m.c, 0.5f); }
    float e = 0.0012f * t + 0.01f; Mat a, b; table_mat(S, p.x, p.y, &m); V n = v3(0, 0, 1);
    if (S[S_table] != 2 && S[S_table] != 7) { table_mat(S, p.x + e, p.y, &a); table_mat(S, p.x, p.y + e, &b); n = nrm(v3(-(a.h - m.h) / e, -(b.h - m.h) / e, 1)); }
    return shade(p, n, v3(0, 0, 1), rd, &m, -1, v3(0, 0, 0), 0);
}
static V px(float x, float y, float *d, unsigned char *id) {
    float s = 2 * S[S_fov] / (W > H ? W : H), a = (x - W * 0.5f) * s, b = (H * 0.5f - y) * s;
    return ray(eye, nrm(add(fz, add(mul(fx, a), mul(fy, b)))), d, id);
}
int render(int w, int h, const float *sc, const float *ob, int n, const float *pr, float *rgb, float *dep, unsigned char *id, int aa) {
    S = sc; OB = ob; nob = n; PR = pr; W = w; H = h; if (n > 64) return 1;
    for (int i = 0; i < n; i++) { const float *o = ob + i * NO; bcen[i] = v3(o[O_cx], o[O_cy], o[O_cz]);
        float e = o[O_type] < 0.5f ? o[O_topamp] * 1.6f + o[O_F + 14 * 8] * 0.5f + 0.15f : 0; V b = v3(o[O_hx], o[O_hy], o[O_hz] + e); brad[i] = len(b) + 0.05f;
        if (o[O_type] > 1.5f && o[O_type] < 2.5f) brad[i] = fmaxf(b.x, fmaxf(b.y, b.z)) * 1.01f; if (o[O_type] > 4.5f) brad[i] = o[O_rad]; }
    eye = v3(sc[S_camx], sc[S_camy], sc[S_camz]); fz = nrm(sub(v3(sc[S_tgtx], sc[S_tgty], sc[S_tgtz]), eye));
    V r = nrm(cross(fz, v3(0, 1e-3f, 1))), u = cross(r, fz); float c = cosf(sc[S_roll]), s = sinf(sc[S_roll]);
    fx = add(mul(r, c), mul(u, s)); fy = sub(mul(u, c), mul(r, s));
    lean = aa < 0; memo_w = w / 2 + 1; memo = calloc((size_t)memo_w * (h / 2 + 1) * 4, sizeof(float));
    for (int y = 0; y < h; y++) for (int x = 0; x < w; x++) { int i = y * w + x; memo_x = x; memo_y = y; V q = px(x + 0.5f, y + 0.5f, dep + i, id + i); rgb[3*i] = q.x; rgb[3*i+1] = q.y; rgb[3*i+2] = q.z; }
    if (aa < 1) { free(memo); memo = 0; return 0; }
    float *o2 = malloc(sizeof(float) * 3 * w * h); memcpy(o2, rgb, sizeof(float) * 3 * w * h);
    for (int y = 0; y < h; y++) for (int x = 0; x < w; x++) {
        int i = y * w + x, need = 0; float l = sqrtf(fmaxf(o2[3*i+1], 0)), dz = dep[i];
        int nb[4] = {x > 0 ? i - 1 : i, x < w - 1 ? i + 1 : i, y > 0 ? i - w : i, y < h - 1 ? i + w : i};
        for (int k = 0; k < 4; k++) if (fabsf(sqrtf(fmaxf(o2[3*nb[k]+1], 0)) - l) > 0.12f || fabsf(dep[nb[k]] - dz) > 0.03f * dz) need = 1;
        if (!need) continue; memo_x = x; memo_y = y;
        V a = v3(0, 0, 0); float d; unsigned char t; static const float J[3][2] = {{.2f,.3f},{.75f,.15f},{.6f,.8f}};
        for (int k = 0; k < 3; k++) { V q = px(x + J[k][0], y + J[k][1], &d, &t); a = add(a, v3(fminf(q.x, 4), fminf(q.y, 4), fminf(q.z, 4))); }
        rgb[3*i] = 0.25f * (o2[3*i] + a.x); rgb[3*i+1] = 0.25f * (o2[3*i+1] + a.y); rgb[3*i+2] = 0.25f * (o2[3*i+2] + a.z);
    }
    free(o2); free(memo); memo = 0; return 0;
}
