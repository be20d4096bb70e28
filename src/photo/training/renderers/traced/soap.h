/* the soap itself: shape, colours, and what is no flaw though it may look like one */
#pragma once
#include "flaws.h"
static inline V ocol(const float *o, int i) { const float *c = o + O_c0r + 3 * i; return v3(c[0], c[1], c[2]); }
static inline float rbox(V p, V b, float r) {
    V q = v3(fabsf(p.x) - b.x + r, fabsf(p.y) - b.y + r, fabsf(p.z) - b.z + r);
    V m = v3(fmaxf(q.x, 0), fmaxf(q.y, 0), fmaxf(q.z, 0));
    return len(m) + fminf(fmaxf(q.x, fmaxf(q.y, q.z)), 0) - r;
}
static inline float soap_sdf(const float *o, V p, int fine) {
    V b = v3(o[O_hx], o[O_hy], o[O_hz]);
    if (!fine) { b.z -= o[O_topamp] + 0.3f * FV(14,0); return rbox(p, b, o[O_rad]); }
    float far = rbox(p, v3(b.x, b.y, b.z + 0.6f), o[O_rad]); if (far > 0.5f) return far;
    V q = p;
    if (o[O_warpamp] > 0) { float a = o[O_warpamp], s = o[O_seed] + o[O_off]; q.x += a * sinf(p.z * 0.55f + s); q.y += 0.7f * a * sinf(p.x * 0.5f + 2 * s); q.z += 0.6f * a * sinf(p.x * 0.43f + p.y * 0.3f + 3 * s); }
    if (p.z > 0 && (o[O_topamp] > 0 || FV(14,0) > 0)) q.z -= top_h(o, p.x, p.y) * sst(0.2f * b.z, b.z, p.z);
    if (o[O_wavy] > 0) q.y += o[O_wavy] * sinf(p.z * 7.5f) * (p.y > 0 ? 1 : -1);
    float d = rbox(q, b, o[O_rad]);
    if (o[O_chip] > 0 && d < 0.08f) { float e = fminf(fminf(b.x - fabsf(p.x) + b.z - fabsf(p.z), b.x - fabsf(p.x) + b.y - fabsf(p.y)), b.z - fabsf(p.z) + b.y - fabsf(p.y)); if (e < 0.5f) d += o[O_chip] * (1 - e * 2) * fmaxf(noise(add(mul(p, 1.8f), v3(o[O_seed], o[O_off], 0)), 9), 0); }
    if (FV(9,0) > 0 && d < 0.4f) { float dp, w = crack_w(o, p, &dp); d = fmaxf(d, fminf(w * 0.8f, d + 0.5f)); }
    return d;
}
/* painting order of the colours; sd: cm from the border of colour 1, positive within */
static inline V pattern(const float *o, V p, float *sdo) {
    int s = o[O_seed], k = o[O_pattern], nc = o[O_ncol]; float f = o[O_pscale], w = o[O_pwarp], sd[3] = {-9, -9, -9};
    V L = add(p, v3(0, o[O_off], 0)), c = ocol(o, 0); float u = p.z / o[O_hz];
    *sdo = -9;
    if (k == 3) { float t = sst(-0.8f, 0.8f, u + 0.25f * w * fbm(mul(L, 0.6f), s, 3)); return mix(ocol(o, 1), c, t); }
    if (k == 1) for (int i = 0; i < nc; i++) {
        V q = mul(L, f); q = v3(q.x * 0.7f, q.y * 0.5f, q.z * 1.9f); q = warp(q, 0.55f, 1.5f * w, s + 3); q = warp(q, 1.5f, 0.45f * w, s + 31 * i);
        if (i > 0 || (s & 3) == 0) sd[i] = (0.16f + 0.14f * noise(mul(q, 0.8f), s + 2) - fabsf(noise(mul(q, 1.1f), s + 17 * i))) / (f * 2.6f);
        else sd[i] = (0.75f * noise(mul(q, 1.25f), s + 17 * i) + 0.3f * noise(mul(q, 2.9f), s + 40 + i) - 0.1f - 0.12f * i) / (f * 2.6f); }
    else if (k == 2) { float z = p.z + w * 0.5f * fbm(mul(v3(L.x, L.y, 0), f), s, 3), b[3] = {o[O_lay1], o[O_lay2], 0.75f};
        for (int i = 0; i < nc; i++) sd[i] = z - b[i] * o[O_hz] - 0.06f * noise(v3(L.x * 3, L.y * 3, i), s); }
    else if (k == 4) for (int i = 0; i < nc; i++) {                   /* drops poured from above */
        float x = L.x + w * noise(mul(L, 0.4f), s + i) + i * 1.3f / f; V q = v3(x * f, L.y * 0.4f, p.z * 0.25f);
        sd[i] = (cosf(x * f * 2.2f + 1.2f * noise(q, s + 3)) - 0.35f + 0.55f * u - 0.3f * fabsf(noise(v3(x * f, L.y, i), s + 9)) ) / (f * 2.2f); }
    else if (k == 5) for (int i = 0; i < nc; i++) {                   /* hanger loops */
        V q = warp(mul(L, f), 0.7f, 0.4f * w, s); float a = o[O_pang], x = q.x * cosf(a) + q.z * sinf(a), z = q.z * cosf(a) - q.x * sinf(a);
        sd[i] = (sinf(z * 4.5f + 2.4f * w * sinf(x * 1.7f) + i * 2.1f + q.y * 0.3f) - 0.45f) / (f * 4.5f); }
    else if (k == 6) for (int i = 0; i < nc; i++) {                   /* thin marbling */
        V q = warp(mul(L, f), 0.9f, w, s + 13 * i); sd[i] = (0.10f + 0.08f * noise(mul(q, 2), s) - fabsf(noise(q, s + 3 * i))) / (f * 1.8f); }
    for (int i = 0; i < nc; i++) {
        float a = FV(11, 0), e = 0.012f + 0.05f * o[O_pang] * 0.32f, m = sst(-e, e, sd[i]) * (0.94f + 0.06f * noise(warp(mul(L, 1.3f), 1, 0.5f, s), s + 60 + i));
        if (a > 0 && i == 0) {                                        /* dye wandering out on one side */
            int t = FV(11,7), v = FV(11,2); float l = FV(11,1) * (0.55f + 0.6f * (1 + fbm(mul(L, 0.9f), t, 2)));
            if (v == 1) l *= 0.35f + 1.6f * sst(-0.2f, 0.5f, noise(v3(L.x * 2.3f, L.y * 2.3f, L.z * 0.5f), t + 3));
            float g = v == 2 ? 1 - sst(0, l * 1.4f, -sd[i]) : expf(fminf(sd[i], 0) / l);
            m = fmaxf(m, g * a * 0.85f * region(o, 11, L));
        }
        c = mix(c, ocol(o, 1 + i), m);
        if (i == 0) *sdo = sd[0];
    }
    if (k == 2 && o[O_micaline] > 0) c = mix(c, v3(.55f, .42f, .2f), o[O_micaline] * (1 - sst(0.02f, 0.06f, fabsf(sd[0]))));
    return c;
}
static inline float stamp_d(const float *o, V p) {                    /* pressed motif, distance-like, <0 within */
    int k = o[O_stamp]; float R = o[O_stsize], x = p.x / R, z = p.z / R, r = sqrtf(x*x + z*z), a = atan2f(z, x), d = 9;
    if (k == 1) d = fminf(fabsf(r - 1), fabsf(r - 0.55f - 0.25f * cosf(6 * a))) - 0.05f;
    else if (k == 2) { float e = fabsf(x) - 0.45f * cosf(clampf(z, -1, 1) * 1.57f); d = fminf(fabsf(e), fabsf(x)); float vz = z - fabsf(x) * 0.9f; d = fminf(d, fabsf(vz - 0.3f * roundf(vz / 0.3f)) + (e > 0)); d = fmaxf(d - 0.05f, fabsf(z) - 1); }
    else if (k == 3) { float q = x*x + z*z - 0.55f; d = fabsf(q*q*q - x*x*z*z*z) * 2.5f - 0.05f; if (r > 1.3f) d = 9; }
    else if (k == 4) { d = fabsf(fmaxf(fabsf(x) * 0.75f, fabsf(z) * 1.5f) - 1) - 0.05f; float c = x * 6, g = floorf(c); if (fabsf(x) < 0.9f && fabsf(z) < 0.35f) { int h = hsh(g, 3, o[O_seed], 1) & 3; float lx = c - g - 0.5f;
            float e = fminf(fabsf(lx + 0.25f), h == 0 ? fabsf(z * 2) : h == 1 ? fabsf(fabsf(z) - 0.3f) * 2 : h == 2 ? fabsf(lx - z) : fabsf(lx - 0.2f)); d = fminf(d, e * 0.2f - 0.035f); } }
    else if (k == 5) { float q = cosf(8 * a) * 0.12f; d = fminf(fabsf(r - 0.95f - q), fminf(fabsf(r - 0.7f), fabsf(sinf(a * 4)) * r * 0.3f + (r > 0.65f))) - 0.045f; }
    return d * R;
}
static inline float drops(V p, float cell, int s, float dens, float *id) { return dots(p, cell, s, dens, 0.06f, 0.26f, 0, id); }
/* all bump heights, in cm, at p */
static inline float soap_height(const float *o, V p, V n) {
    int s = o[O_seed]; float id, h = 0.0012f * noise(mul(p, 9), s) + 0.0009f * noise(mul(p, 26), s + 1);
    V L = add(p, v3(0, o[O_off], 0));
    if (o[O_cut] > 0 && fabsf(n.y) > 0.7f) h += 0.0015f * noise(v3(p.x * 7, 0, p.z * 0.5f), s);
    else h += 0.003f * noise(mul(p, 2.2f), s + 4);
    if (n.z > 0.4f && o[O_topamp] > 0) h += 0.05f * o[O_topamp] * fbm(mul(L, 3.1f), s + 2, 3);
    if (o[O_exf] > 0) { float d = dots(L, o[O_exfs], s + 40, o[O_exfd], 0.08f, 0.22f, 0, &id); h += 0.012f * (1 - sst(0.7f, 1.1f, d)); }
    if (o[O_stamp] > 0 && p.y > 0 && n.y > 0.5f) h -= 0.07f * (1 - sst(-0.03f, 0.05f, stamp_d(o, p)));
    if (o[O_dew] > 0) { float d = drops(L, o[O_dew], s + 60, 0.7f, &id); if (d < 1) h += o[O_dew] * 0.22f * sqrtf(1 - d * d); }
    return h + flaw_height(o, p, n);
}
static void soap_mat(const float *o, V p, V n, Mat *m) {
    int s = o[O_seed]; float sd, id, d; V L = add(p, v3(0, o[O_off], 0));
    V q = p;
    if (FV(12,0) > 0 && FV(12,2) == 2 && fabsf(n.y) > 0.7f && o[O_cut] > 0) q.z += 0.13f * FV(12,0) * cutlines(o, p, 1);
    m->c = pattern(o, q, &sd); m->h = 0; m->gloss = o[O_gloss]; m->dark = 1; m->glint = 0;
    if (o[O_embed] > 0) {
        float x = p.x - o[O_ex], z = p.z - o[O_ez], r = o[O_er], e;
        if (o[O_embed] < 1.5f) e = sqrtf(x*x + z*z) - r * (1 + 0.04f * noise(mul(L, 1.5f), s));
        else if (o[O_embed] < 2.5f) e = fmaxf(fabsf(x + z), fabsf(x - z)) - r;
        else { float cx = x / r, cz = z / r, t = cx*cx + cz*cz - 0.5f; e = (t*t*t - cx*cx*cz*cz*cz) * r; }
        m->c = mix(m->c, ocol(o, 3), 1 - sst(-0.02f, 0.02f, e)); }
    float mt = fbm(mul(L, 0.9f), s + 50, 3), mf = noise(mul(L, 5), s + 51);
    m->c = mul(m->c, 1 + o[O_mottle] * (0.13f * mt + 0.03f * mf));
    if (o[O_topmica] > 0 && n.z > 0.3f) { V w = warp(mul(L, 0.5f), 0.9f, 0.9f, s + 8); float g = 1 - sst(0.03f, 0.16f, fabsf(noise(w, s + 70)) - 0.02f * noise(mul(L, 12), s));
        m->c = mix(m->c, ocol(o, 3), g * o[O_topmica]); m->glint = fmaxf(m->glint, g * 0.5f); m->gloss += 0.2f * g; }
    if (o[O_exf] > 0) {
        int k = o[O_exf]; V w = k == 1 ? L : warp(L, 3.f / o[O_exfs], 0.09f * o[O_exfs], s); if (k == 3) w.x *= 0.6f;
        d = dots(w, o[O_exfs], s + 40, o[O_exfd], 0.08f, k == 1 ? 0.12f : 0.24f, 0, &id); float g = 1 - sst(0.85f, 1.08f, d);
        V c = k == 1 ? v3(.045f,.05f,.07f) : k == 2 ? v3(.10f,.055f,.03f) : k == 3 ? mix(v3(.62f,.48f,.30f), v3(.8f,.69f,.5f), id) : mix(v3(.20f,.22f,.08f), v3(.33f,.30f,.12f), id);
        m->c = mix(m->c, c, g * (k == 1 ? 0.85f : 0.8f)); }
    if (o[O_botan] > 0 && n.z > 0.35f) {
        V w = warp(v3(L.x, L.y, 0), 2.3f, 0.18f, s); w.x += w.y * 0.5f; w.y *= 0.55f; float g;
        d = dots(v3(w.x, w.y, 0.5f), 0.75f, s + 80, 0.65f, 0.12f, 0.4f, 0, &id); g = 1 - sst(0.85f, 1.05f, d);
        V c = o[O_botan] < 1.5f ? mix(v3(.28f,.2f,.42f), v3(.42f,.34f,.5f), id) : o[O_botan] < 2.5f ? mix(v3(.85f,.52f,.08f), v3(.9f,.68f,.2f), id) : mix(v3(.5f,.12f,.15f), v3(.62f,.28f,.25f), id);
        m->c = mix(m->c, mul(c, 0.8f + 0.3f * noise(mul(L, 9), s)), g); m->dark *= 1 - 0.4f * (1 - sst(0.9f, 1.5f, d)) * (1 - g); m->gloss *= 1 - 0.8f * g; }
    flaw_colour(o, p, n, sd, m);
    if (o[O_glitter] > 0) { d = dots(L, 0.16f, s + 90, o[O_glitter], 0.05f, 0.14f, 0, &id); m->glint = fmaxf(m->glint, (d < 1) * id * id); }
    if (o[O_dew] > 0) { d = drops(L, o[O_dew], s + 60, 0.7f, &id); if (d < 1) { m->gloss = 1.6f; m->c = mul(m->c, 0.86f + 0.1f * d); } }
    if (o[O_stamp] > 0 && p.y > 0 && n.y > 0.5f) m->dark *= 1 - 0.25f * (1 - sst(-0.03f, 0.03f, stamp_d(o, p)));
}
