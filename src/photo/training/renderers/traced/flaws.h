/* the sixteen findings, as solid textures of the bar; p in cm, bar-local (x width, y thickness, z height) */
#pragma once
#include "base.h"
#define FV(k, j) o[O_F + 8 * (k) + (j)]
static inline V fcol(const float *o, int k) { return v3(FV(k,4), FV(k,5), FV(k,6)); }
/* where a finding lies: 1 all over, else patches */
static inline float region(const float *o, int k, V p) {
    float cov = FV(k, 3); if (cov >= 0.99f) return 1;
    int s = (int)FV(k, 7) + 900; float f = mixf(0.55f, 0.3f, cov);
    float n = noise(add(mul(p, f), v3(s * 0.37f, s * 0.11f, 0)), s) * 0.8f + 0.2f * noise(mul(p, 1.4f), s + 5);
    float t = mixf(0.42f, -0.6f, cov); return sst(t - 0.1f, t + 0.16f, n);
}
static inline float crack_w(const float *o, V p, float *depth) {      /* half width of the crack here minus distance */
    float a = FV(9, 0), sc = FV(9, 1); int s = FV(9, 7), v = FV(9, 2);
    float hx = o[O_hx], hz = o[O_hz], y = p.y + o[O_off], w, d;
    if (v == 1) {                                                     /* through: across the face from one side */
        float x0 = hx * 0.8f * (h1(hsh(s, 1, 2, 3)) - 0.5f), lean = (h1(hsh(s, 5, 2, 3)) - 0.5f) * 0.8f;
        d = fabsf(p.x - x0 - lean * p.z - 0.22f * fbm(v3(y * 0.7f, p.z * 1.1f, 1), s, 3));
        w = (0.02f + 0.10f * a) * sst(-1.1f + 1.4f * (1 - FV(9,3)), 0.3f, p.z / hz + 0.2f);
        *depth = 1;
    } else {                                                          /* along the top */
        float x0 = hx * 0.5f * (h1(hsh(s, 1, 2, 3)) - 0.5f), t = hz + o[O_topamp] - p.z, dep = hz * mixf(0.12f, 0.95f, a * sc);
        d = fabsf(p.x - x0 - 0.5f * fbm(v3(y * 0.35f, 0, 1), s, 3) - 0.13f * fbm(v3(y * 1.6f, p.z * 1.2f, 1), s + 9, 3));
        float k = 1 - t / dep; w = k > 0 ? (0.03f + 0.2f * a) * powf(k, 0.8f) : -1;
        w *= mixf(sst(-0.25f, 0.2f, noise(v3(y * 0.25f, 3, s), s + 3) + FV(9,3) - 0.4f), 1, FV(9,3));
        if (v == 2) { float x1 = x0 + 1.1f + 0.5f * noise(v3(y * 0.5f, 4, 4), s + 8), d2 = fabsf(p.x - x1 - 0.15f * fbm(v3(y*1.5f, p.z, 2), s + 11, 3));
            if (d2 * 1.7f < d) { d = d2 * 1.7f; } }
        *depth = clampf(k, 0, 1);
    }
    return w - d;
}
/* top of the pour: peaks, and the overheated wrinkle */
static inline float top_h(const float *o, float x, float y) {
    float r = 0; int s = o[O_seed]; y += o[O_off];
    V q = v3(x * o[O_topscale], y * o[O_topscale], s * 0.1f);
    if (o[O_topamp] > 0) {
        if (o[O_topkind] < 0.5f) r = o[O_topamp] * fbm(warp(q, 0.8f, 0.7f, s), s + 3, 2);
        else if (o[O_topkind] < 1.5f) { float n = noise(warp(q, 0.7f, 0.9f, s), s + 3); r = o[O_topamp] * (1 - 2.2f * fabsf(n)); }
        else r = o[O_topamp] * sinf(q.x * 2.2f + 1.2f * sinf(q.y * 1.5f) + noise(q, s));
    }
    float a = FV(14, 0);
    if (a > 0) {
        int t = FV(14, 7), v = FV(14, 2); float f = FV(14, 1), g;
        V w = v3(x * f, y * f, t * 0.3f);
        if (v == 1) w = v3(x * f * 0.45f, y * f * 1.3f, t * 0.3f);
        w = warp(w, 0.6f, v == 2 ? 0.6f : 1.2f, t);
        g = v == 2 ? sinf(w.x * 2.1f + 2 * noise(mul(w, 0.5f), t + 4)) * 0.5f : 0.75f - 2.f * (sqrtf(powf(noise(w, t + 2), 2) + 0.012f) - 0.08f);
        r += a * 0.46f * g * region(o, 14, v3(x, y, 0)) / (0.55f + 0.5f * f);
    }
    return r;
}
static inline float cutlines(const float *o, V p, int want_raw) {     /* drag-line profile over the cut face */
    int s = FV(12, 7), v = FV(12, 2); float sc = FV(12, 1);
    float ang = (h1(hsh(s, 3, 3, 3)) - 0.5f) * (v == 1 ? 0.9f : 0.3f), c = cosf(ang), sn = sinf(ang);
    float u = p.x * c - p.z * sn, w = p.x * sn + p.z * c;
    if (v == 2) u += 0.06f * w * w + 0.05f * noise(v3(w * 0.5f, 1, 1), s);
    float n = noise(v3(u * 3.1f * sc, w * 0.06f, 1), s), m = noise(v3(u * 8.3f * sc, w * 0.1f, 2), s + 1);
    float l = v == 1 ? -sst(0.62f, 0.9f, fabsf(noise(v3(u * 2.2f * sc, w * 0.05f, 1), s))) * 1.6f + 0.1f * m : 0.55f * n * fabsf(n) * 1.6f + 0.6f * m;
    return l * region(o, 12, p);
}
/* heights (bump) of the flaws, cm */
static inline float flaw_height(const float *o, V p, V n) {
    float h = 0, id, a;
    V L = add(p, v3(0, o[O_off], 0));
    if ((a = FV(8,0)) > 0) {
        float r = region(o, 8, L); if (r > 0.05f) {
            float d = dots(L, FV(8,1), FV(8,7), (0.15f + 0.7f * a) * r, 0.06f, FV(8,2) == 1 ? 0.42f : 0.24f, 0, &id);
            h -= FV(8,1) * 0.5f * (1 - sst(0.6f, 1.1f, d)); }
    }
    if ((a = FV(12,0)) > 0 && fabsf(n.y) > 0.7f && o[O_cut] > 0) h += 0.035f * a * cutlines(o, p, 0) / FV(12,1);
    if ((a = FV(15,0)) > 0 && n.z < 0.5f && (o[O_cut] < 0.5f || fabsf(n.y) < 0.6f)) {
        int s = FV(15,7), v = FV(15,2); float f = FV(15,1), r = region(o, 15, L);
        if (v == 0) { float d = dots(L, 1.1f / f, s, 0.85f, 0.2f, 0.5f, 0, &id); h -= a * r * 0.14f / f * (1 - sst(0, 1, d)); }
        else if (v == 1) { V q = warp(mulv(L, v3(1, 0.35f, 1)), 0.7f, 0.5f, s); float g = 1 - fabsf(noise(mul(q, f * 0.9f), s)) * 3.2f; h -= a * r * 0.10f / f * (g > 0 ? g * g : 0); }
        else h += a * r * 0.11f / f * (fbm(mul(L, 2.6f * f), s, 2) + 0.7f * noise(mul(L, 1.1f * f), s + 4));
    }
    if ((a = FV(5,0)) > 0) { float t = n.z > 0.3f || FV(5,2) == 2 ? region(o, 5, L) : 0; h += 0.006f * a * t * noise(mul(L, 22), FV(5,7)); }
    if ((a = FV(2,0)) > 0 && FV(2,2) == 1) { float d = dots(L, FV(2,1), FV(2,7), 0.5f, 0.08f, 0.3f, 0, &id); h += 0.02f * (1 - sst(0.5f, 1.1f, d)); }
    return h;
}
/* colours of the flaws, laid over the bar's own */
static inline void flaw_colour(const float *o, V p, V n, float sd, Mat *m) {
    float a, id, d, r; V L = add(p, v3(0, o[O_off], 0));
    float ix = o[O_hx] - fabsf(p.x), iz = o[O_hz] - fabsf(p.z), iy = o[O_hy] - fabsf(p.y);
    if ((a = FV(6,0)) > 0) {                                          /* partial gel: darker clear core */
        int s = FV(6,7), v = FV(6,2); float e = v == 1 ? 4 : 2.4f, sz = FV(6,1);
        float x = fabsf(p.x + (v == 2 ? 0.12f : 0.03f) * o[O_hx]) / (o[O_hx] * sz), z = fabsf(p.z + (v == 2 ? 0.2f : 0.06f) * o[O_hz]) / (o[O_hz] * sz);
        float q = powf(powf(x, e) + powf(z, e), 1 / e) + 0.07f * fbm(mul(L, 0.5f), s, 3);
        float core = 1 - sst(0.96f, 1.04f, q), line = expf(-powf((q - 1) / 0.035f, 2));
        V dk = mulv(m->c, v3(1 - 0.30f * a, 1 - 0.42f * a, 1 - 0.58f * a));
        m->c = mix(m->c, dk, core * (0.85f + 0.15f * q));
        m->c = mix(m->c, v == 2 ? mix(m->c, v3(.9f,.88f,.82f), 0.5f) : mul(m->c, 0.62f), line * a * 0.8f);
    }
    if ((a = FV(10,0)) > 0) {                                         /* vanilla: brown comes from the rim */
        int s = FV(10,7), v = FV(10,2); float w = FV(10,1);
        d = fminf(ix, iz); if (o[O_cut] < 0.5f) d = fminf(d, iy + 0.1f * w);
        d += w * 0.2f * fbm(mul(L, 0.7f), s, 3); r = v == 0 ? 1 - sst(0.75f * w, 1.15f * w, d) : expf(-fmaxf(d, 0) / (w * 0.8f));
        if (v == 2) r = fmaxf(0.55f * (1 - sst(w * 0.9f, w * 1.1f, d)), r);
        m->c = mix(m->c, mulv(m->c, mix(v3(.62f,.36f,.17f), fcol(o, 10), 0.5f)), r * a);
    }
    if ((a = FV(3,0)) > 0 && (r = region(o, 3, L)) > 0) {             /* glycerin rivers */
        int s = FV(3,7), v = FV(3,2); float f = FV(3,1); V q = warp(mul(L, f), 0.9f, 0.55f, s);
        d = fabsf(noise(q, s + 2)); float w = v == 2 ? 0.24f : 0.10f, g = 1 - sst(w * 0.45f, w, d + 0.03f * noise(mul(q, 4), s));
        if (v == 1) g = fmaxf(g, 0.8f * (1 - sst(0.05f, 0.13f, fabsf(noise(mul(q, 2.1f), s + 7)))));
        V t = v3(powf(m->c.x, 1.5f) * 0.86f, powf(m->c.y, 1.65f) * 0.82f, powf(m->c.z, 1.9f) * 0.78f);
        m->c = mix(m->c, t, g * a * r); m->gloss += 0.2f * g * a * r;
    }
    if ((a = FV(4,0)) > 0 && (r = region(o, 4, L)) > 0) {             /* crackle between pale islands */
        int s = FV(4,7), v = FV(4,2); V q = warp(mul(L, 1 / FV(4,1)), 0.8f, v == 1 ? 0.8f : 0.35f, s);
        if (v == 1) q.x *= 0.55f;
        d = cells(q, s, &id); float w = v == 2 ? 0.16f : 0.09f, g = 1 - sst(w * 0.3f, w, d);
        if (v == 2) g *= 0.6f + 0.4f * sst(-.2f, .4f, noise(mul(q, 0.5f), s + 3));
        m->c = mix(m->c, v3(.93f,.92f,.88f), (1 - g) * a * r * (0.10f + 0.12f * id));
        m->c = mix(m->c, mulv(m->c, v3(.60f,.52f,.42f)), g * a * r);
    }
    if ((a = FV(1,0)) > 0 && (r = region(o, 1, L)) > 0) {             /* streaks of raw pigment */
        int s = FV(1,7), v = FV(1,2); float f = FV(1,1), t = h1(hsh(s, 1, 1, 1)) * 3.1f, c = cosf(t), sn = sinf(t), g;
        V q = warp(L, 0.45f, 0.7f, s); q = v3(q.x * c + q.z * sn, q.y, q.z * c - q.x * sn);
        if (v == 0) g = sst(0.30f, 0.62f, fbm(v3(q.x * 0.35f * f, q.y * f, q.z * 2.2f * f), s, 3));
        else if (v == 1) g = (1 - sst(0.02f, 0.12f, fabsf(noise(v3(q.x * 0.3f * f, q.y * 0.6f * f, q.z * 1.5f * f), s)))) * sst(-0.3f, 0.4f, noise(mul(q, 0.8f * f), s + 4));
        else { g = sst(0.25f, 0.4f, noise(v3(q.x * 0.28f * f, q.y * 0.7f * f, q.z * 1.0f * f), s)); g *= 0.45f + 0.55f * sst(-0.3f, 0.5f, noise(v3(q.x, q.y * 3, q.z * 9 * f), s + 2)); }
        m->c = mix(m->c, fcol(o, 1), g * r * (0.25f + 0.7f * a));
    }
    if ((a = FV(0,0)) > 0 && (r = region(o, 0, L)) > 0.05f) {         /* pigment dots, comets, lumps */
        int s = FV(0,7), v = FV(0,2); float cl = FV(0,1), t = h1(hsh(s, 2, 2, 2)) * 6.28f, c = cosf(t), sn = sinf(t);
        V q = v3(L.x * c + L.z * sn, L.y, L.z * c - L.x * sn);
        if (v == 2) q = warp(q, 1.5f / cl, 0.1f * cl, s);
        d = dots(q, cl, s, 0.75f * r, 0.04f, v == 1 ? 0.11f : 0.2f, v == 1 ? 4 : 0, &id);
        float g = 1 - sst(0.75f, 1.05f, d); if (v == 1) g = fmaxf(g * (1 - 0.0f), 0); if (v == 2) g = fmaxf(g, 0.35f * (1 - sst(0.8f, 2.f, d)));
        m->c = mix(m->c, mul(fcol(o, 0), 0.7f + 0.5f * id), g * (0.3f + 0.7f * a));
    }
    if ((a = FV(2,0)) > 0 && (r = region(o, 2, L)) > 0.05f) {         /* white specks */
        int s = FV(2,7), v = FV(2,2); float cl = FV(2,1); V q = v == 1 ? warp(L, 2.5f / cl, 0.12f * cl, s + 3) : L;
        d = dots(q, cl, s, (v == 1 ? 0.5f : 0.8f) * r, v == 1 ? 0.08f : 0.04f, v == 1 ? 0.3f : 0.17f, 0, &id);
        float g = 1 - sst(v == 2 ? 0.3f : 0.8f, v == 2 ? 1.3f : 1.05f, d);
        m->c = mix(m->c, v3(.95f,.945f,.92f), g * (0.25f + 0.75f * a));
    }
    if ((a = FV(7,0)) > 0) {                                          /* rancid spots with halo */
        int s = FV(7,7), v = FV(7,2); float cl = FV(7,1); r = region(o, 7, L);
        V q = warp(L, 2.2f, v == 2 ? 0.22f : 0.06f, s); d = dots(q, cl, s, 0.75f * r, 0.06f, v == 1 ? 0.13f : 0.2f, 0, &id);
        float halo = expf(-d * d / 4.0f), g = 1 - sst(0.55f, 1.15f, d + 0.15f * noise(mul(L, 7), s));
        m->c = mix(m->c, mulv(m->c, v3(1.0f,.68f,.30f)), halo * a * 0.8f);
        m->c = mix(m->c, mix(v3(.62f,.27f,.05f), v3(.38f,.16f,.04f), id), g * a * 0.9f);
    }
    if ((a = FV(8,0)) > 0 && (r = region(o, 8, L)) > 0.05f) {
        d = dots(L, FV(8,1), FV(8,7), (0.15f + 0.7f * a) * r, 0.06f, FV(8,2) == 1 ? 0.42f : 0.24f, 0, &id);
        m->dark *= 1 - (0.35f + 0.35f * a) * (1 - sst(0.4f, 1.05f, d));
    }
    if ((a = FV(13,0)) > 0 && o[O_bleedable] > 0) {                   /* slit between layers */
        int s = FV(13,7), v = FV(13,2); r = region(o, 13, L);
        float w = (0.015f + 0.09f * a * FV(13,1)) * (0.6f + 0.7f * fbm(v3(L.x * 1.3f, L.y * 1.3f, 0), s, 3));
        if (v == 1) w *= sst(-o[O_hx], o[O_hx], (s & 1 ? p.x : -p.x)) * 1.7f;
        if (v == 2) w *= sst(-0.1f, 0.2f, noise(v3(L.x * 1.6f, L.y * 1.6f, 2), s + 4)) * 1.2f;
        float g = (1 - sst(w * 0.55f, w * 1.1f + 0.01f, fabsf(sd + 0.03f * noise(mul(L, 4), s)))) * r * (w > 0.008f);
        m->dark *= 1 - 0.85f * g; m->h -= 0.12f * g;
    }
    if ((a = FV(9,0)) > 0) { float dp, w = crack_w(o, p, &dp); float g = sst(-0.035f, 0.02f, w); m->dark *= 1 - (0.5f + 0.3f * a) * g; }
    if ((a = FV(12,0)) > 0 && fabsf(n.y) > 0.7f && o[O_cut] > 0) { float l = cutlines(o, p, 1); m->c = mul(m->c, 1 + 0.16f * a * l); }
    if ((a = FV(5,0)) > 0) {                                          /* soda ash */
        int s = FV(5,7), v = FV(5,2); float up = sst(0.25f, 0.6f, n.z);
        r = region(o, 5, L); float f = 0.78f + 0.22f * noise(mul(L, 14), s) + 0.25f * fbm(mul(L, 2.2f), s, 3);
        if (v == 1) f *= sst(-0.12f, 0.12f, fbm(warp(mul(L, 1.1f), 1, 0.4f, s), s + 6, 4) + 0.12f);
        if (v == 2) { float e = fminf(fminf(ix + iz, iz + iy), ix + iy); up = fmaxf(up * 0.6f, 0.7f); f *= 0.25f + expf(-e * e * 1.2f); }
        else up = fmaxf(up, 0.6f * sst(o[O_hz] * 0.55f, o[O_hz], p.z + 0.4f * noise(mul(L, 1.5f), s)) * (n.z > -0.3f));
        float g = clampf(f, 0, 1) * up * r * a; m->c = mix(m->c, v3(.90f,.90f,.885f), g * 0.92f); m->gloss *= 1 - g;
    }
}
