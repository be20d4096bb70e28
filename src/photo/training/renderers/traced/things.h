/* tables, walls, and things that are no soap */
#pragma once
#include "base.h"
static void table_mat(const float *S, float x, float y, Mat *m) {
    int k = S[S_table], s = S[S_tseed]; float f = S[S_tscale], a = S[S_tang], u = (x * cosf(a) + y * sinf(a)), v = (y * cosf(a) - x * sinf(a)), id;
    V A = v3(S[S_tar], S[S_tag], S[S_tab]), B = v3(S[S_tbr], S[S_tbg], S[S_tbb]); V p = v3(u * f, v * f, s * 0.71f);
    m->gloss = 0.15f; m->dark = 1; m->h = 0; m->glint = 0; m->c = A;
    if (k == 0 || k == 9) {                                           /* planks; 9: worn paint on planks */
        float w = 7 / f, g = floorf(v / w), e = fabsf(v / w - g - 0.5f); int b = (int)g + s;
        V q = v3(u * 0.13f * f + 37 * h1(hsh(b, 1, 1, s)), (v + 0.4f * noise(v3(u * 0.12f, v * 0.3f, b), s)) * 1.1f * f, b * 3.1f);
        float r = noise(q, s) + 0.4f * noise(v3(q.x * 6, q.y * 9, 1), s + 1), t = 0.5f + 0.5f * sinf(r * 9 + q.y * 3);
        m->c = mix(A, B, clampf(0.7f * t + 0.35f * noise(v3(q.x * 3, q.y * 22, 1), s + 2), 0, 1)); m->c = mul(m->c, 0.85f + 0.3f * h1(hsh(b, 4, 4, s)));
        if (k == 9) m->c = mix(m->c, v3(.78f,.77f,.73f), sst(-0.25f, 0.0f, fbm(v3(q.x * 2, q.y * 0.8f, 2), s + 6, 4)) * 0.92f);
        float gap = sst(0.485f, 0.497f, e); m->dark = 1 - 0.8f * gap; m->h = 0.02f * t - 0.2f * gap; m->gloss = k == 9 ? 0.1f : 0.3f;
    } else if (k == 1) {                                              /* linen */
        float wu = sinf(u * 38 * f + 2 * noise(v3(u * 2, v * 9, 1), s)), wv = sinf(v * 38 * f + 2 * noise(v3(u * 9, v * 2, 3), s));
        float w = wu * wv, t = 0.5f + 0.25f * w + 0.3f * noise(v3(u * 0.8f, v * 7, 2), s) + 0.25f * noise(v3(u * 7, v * 0.8f, 4), s);
        m->c = mix(B, A, clampf(t, 0, 1)); m->h = 0.012f * w + S[S_fold] * 0.35f * fbm(warp(mul(p, 0.12f), 0.8f, 0.8f, s), s, 3); m->gloss = 0.02f;
    } else if (k == 2) {                                              /* marble */
        float n = fabsf(fbm(warp(mul(p, 0.13f), 0.9f, 0.8f, s), s, 4)), g = 1 - sst(0.0f, 0.07f, n); m->c = mix(A, B, clampf(0.55f * g + 0.35f * (0.5f + fbm(mul(p, 0.1f), s + 4, 4)), 0, 1)); m->gloss = 0.6f;
    } else if (k == 3) {                                              /* slate or concrete */
        float n = fbm(mul(p, 0.35f), s, 5); m->c = mix(A, B, clampf(0.5f + 0.5f * n + 0.2f * noise(mul(p, 12), s), 0, 1)); m->h = 0.03f * n + 0.012f * noise(mul(p, 5), s); m->gloss = 0.1f;
    } else if (k == 4) {                                              /* gingham or stripes */
        float q = 2.2f / f; int i = ((int)floorf(u / q)) & 1, j = S[S_fold] > 0.5f ? 0 : ((int)floorf(v / q)) & 1; m->c = mix(A, B, 0.5f * (i + j));
        float w = sinf(u * 30) * sinf(v * 30); m->c = mul(m->c, 0.93f + 0.08f * w); m->h = 0.01f * w + 0.25f * S[S_fold] * fbm(mul(p, 0.1f), s, 2); m->gloss = 0.02f;
    } else if (k == 5) {                                              /* tiles */
        float q = 9 / f, x2 = u / q - floorf(u / q), y2 = v / q - floorf(v / q), e = fminf(fminf(x2, 1 - x2), fminf(y2, 1 - y2)); id = h1(hsh(floorf(u / q), floorf(v / q), 1, s));
        float g = sst(0.012f, 0.025f, e); m->c = mix(v3(.5f,.48f,.45f), mul(A, 0.9f + 0.15f * id), g); m->h = 0.12f * g * sst(0, 0.08f, e); m->gloss = 0.5f * g;
    } else if (k == 6) {                                              /* baking paper, creased */
        V q = warp(mul(p, 0.2f), 1, 0.5f, s); float n = 1 - fabsf(noise(q, s)) * 4; m->c = mul(A, 1 + 0.02f * noise(mul(p, 3), s)); m->h = 0.09f * (n > 0 ? n : 0) + 0.15f * noise(mul(p, 0.3f), s + 2); m->gloss = 0.2f;
    } else if (k == 7) {                                              /* terrazzo */
        float d = cells(mul(p, 0.9f), s, &id); m->c = id < 0.35f ? A : mix(A, mix(B, v3(.3f,.25f,.2f), id), sst(0.12f, 0.18f, d)); m->gloss = 0.5f;
    } else if (k == 8) {                                              /* slats with gaps (bamboo mat, rack) */
        float q = 2.4f / f, g = v / q - floorf(v / q), t = fabsf(g - 0.5f) * 2; int b = floorf(v / q); m->c = mul(mix(A, B, 0.5f + 0.5f * noise(v3(u * 0.4f, v * 4, b), s)), 0.85f + 0.25f * h1(hsh(b, 2, 2, s)));
        m->h = 0.35f * sqrtf(fmaxf(1 - t * t, 0)) / f; m->dark = 1 - 0.85f * sst(0.86f, 0.98f, t); m->gloss = 0.25f;
    } else { m->c = mul(A, 1 + 0.03f * fbm(mul(p, 0.4f), s, 3)); m->gloss = S[S_fold] * 0.5f; }
}
static void wall_mat(const float *S, float x, float z, Mat *m) {
    int k = S[S_wall]; V W = v3(S[S_wr], S[S_wg], S[S_wb]); float id; int s = S[S_tseed];
    m->c = W; m->h = 0; m->gloss = 0; m->dark = 1; m->glint = 0;
    if (k == 1) { float a = x / 15 + 0.5f * ((int)floorf(z / 7.5f) & 1), b = z / 7.5f, e = fminf(fminf(a - floorf(a), 1 - a + floorf(a)) * 2, fminf(b - floorf(b), 1 - b + floorf(b))); m->c = mul(W, 0.7f + 0.3f * sst(0.03f, 0.06f, e)); }
    else if (k == 2) { float d = dots(v3(x, z, 1), 9, s, 0.6f, 0.1f, 0.35f, 0, &id); m->c = mix(W, mix(v3(.9f,.75f,.45f), v3(.25f,.45f,.2f), id), (1 - sst(0.6f, 1.1f, d)) * 0.7f); }
    else if (k == 3) m->c = mix(W, mul(W, 0.4f), sst(-.1f, .3f, noise(v3(x * 0.09f, z * 0.07f, 1), s)) ); 
    else if (k == 4) { int b = floorf(x / 6); m->c = mul(W, 0.7f + 0.4f * h1(hsh(b, (int)floorf(z / 22), 1, s))); if (z - 22 * floorf(z / 22) < 1.4f) m->c = v3(.25f,.16f,.09f); }
}
static float thing_height(int k, V p, int s) {
    float id;
    switch (k) {
    case 2: return 0.006f * noise(mul(p, 9), s) + 0.012f * (1 - fabsf(noise(mulv(p, v3(1, 4, 1)), s)));
    case 3: return 0.07f * fbm(v3(p.x * 3, p.y * 3, p.z * 9), s, 3);
    case 4: return -0.03f * (1 - sst(0, 1, dots(p, 0.35f, s, 0.9f, 0.2f, 0.45f, 0, &id)));
    case 5: return 0.10f * fbm(mul(p, 1.4f), s, 4);
    case 7: return -0.12f * (1 - sst(0.4f, 1, dots(p, 0.5f, s, 0.9f, 0.15f, 0.45f, 0, &id)));
    case 9: return 0.02f * sinf(p.x * 26) * sinf(p.z * 26) + 0.08f * fbm(mul(p, 0.5f), s, 2);
    }
    return 0;
}
static void thing_mat(const float *o, V p, V n, Mat *m) {
    int k = o[O_mat], s = o[O_seed]; float id; V c = v3(o[O_c0r], o[O_c0g], o[O_c0b]), c1 = v3(o[O_c1r], o[O_c1g], o[O_c1b]);
    m->c = c; m->h = 0; m->gloss = o[O_gloss]; m->dark = 1; m->glint = 0;
    if (k == 1) { float r = 0.5f + 0.5f * sinf(9 * noise(v3(p.x * 0.12f, p.y * 0.7f, p.z * 0.7f), s) + 2 * noise(v3(p.x * 0.8f, p.y * 8, p.z * 8), s)); m->c = mix(c, c1, r); }
    else if (k == 2) m->c = mulv(c, v3(1 + 0.05f * fbm(mul(p, 1.5f), s, 3), 1 + 0.09f * fbm(mul(p, 1.5f), s, 3), 1 + 0.1f * fbm(mul(p, 1.5f), s + 1, 3)));
    else if (k == 3) m->c = mul(mix(c, c1, sst(-0.1f, 0.25f, fbm(mul(p, 0.22f), s, 3))), 1 + 0.35f * noise(v3(p.x * 5, p.y * 5, p.z * 14), s));
    else if (k == 4) m->c = mul(c, 1 + 0.08f * fbm(p, s, 3));
    else if (k == 5) m->c = mix(c, c1, sst(-0.3f, 0.5f, fbm(mul(p, 0.8f), s, 4)) );
    else if (k == 6) { m->c = mul(c, 1 + 0.05f * noise(mul(p, 6), s)); float l = p.z / 0.42f, g = floorf(l), t = l - g; if (fabsf(p.x) < 1.6f && t > 0.35f && t < 0.7f && noise(v3(p.x * 5, g * 7, 1), s) > -0.15f && fabsf(g) < 3) m->c = mix(m->c, c1, 0.8f); }
    else if (k == 7) { float d = dots(p, 0.5f, s, 0.9f, 0.15f, 0.45f, 0, &id); m->dark = 0.55f + 0.45f * sst(0.5f, 1.1f, d); }
    else if (k == 8) m->gloss = 1.3f;
    else if (k == 9) m->c = mul(mix(c, c1, 0.5f + 0.5f * sinf(p.x * 26) * sinf(p.z * 26)), 1);
}
