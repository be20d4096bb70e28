/* vectors and noise */
#pragma once
#include <math.h>
#include <stdint.h>
#include "gen_params.h"
typedef struct { float x, y, z; } V;
static inline V v3(float x, float y, float z) { V r = {x, y, z}; return r; }
static inline V add(V a, V b) { return v3(a.x + b.x, a.y + b.y, a.z + b.z); }
static inline V sub(V a, V b) { return v3(a.x - b.x, a.y - b.y, a.z - b.z); }
static inline V mul(V a, float s) { return v3(a.x * s, a.y * s, a.z * s); }
static inline V mulv(V a, V b) { return v3(a.x * b.x, a.y * b.y, a.z * b.z); }
static inline float dot(V a, V b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
static inline float len(V a) { return sqrtf(dot(a, a)); }
static inline V nrm(V a) { return mul(a, 1.f / (len(a) + 1e-9f)); }
static inline V cross(V a, V b) { return v3(a.y*b.z - a.z*b.y, a.z*b.x - a.x*b.z, a.x*b.y - a.y*b.x); }
static inline float clampf(float x, float a, float b) { return x < a ? a : x > b ? b : x; }
static inline float sst(float a, float b, float x) { float t = clampf((x - a) / (b - a), 0, 1); return t*t*(3 - 2*t); }
static inline float mixf(float a, float b, float t) { return a + (b - a) * t; }
static inline V mix(V a, V b, float t) { return add(a, mul(sub(b, a), t)); }
static inline uint32_t hsh(int x, int y, int z, int s) {
    uint32_t h = (uint32_t)x * 0x8da6b343u ^ (uint32_t)y * 0xd8163841u ^ (uint32_t)z * 0xcb1ab31fu ^ (uint32_t)s * 0x9e3779b9u;
    h ^= h >> 15; h *= 0x2c1b3c6du; h ^= h >> 12; h *= 0x297a2d39u; h ^= h >> 15; return h;
}
static inline float h1(uint32_t h) { return (h & 0xffffff) * (1.f / 16777216.f); }
static inline uint32_t nxt(uint32_t h) { h *= 0x2c1b3c6du; h ^= h >> 13; h *= 0x297a2d39u; h ^= h >> 16; return h; }
/* value noise, -1..1 */
typedef uint32_t U8 __attribute__((vector_size(32)));
typedef int32_t I8 __attribute__((vector_size(32)));
typedef float F8 __attribute__((vector_size(32)));
static inline float noise(V p, int s) {
    float fx = floorf(p.x), fy = floorf(p.y), fz = floorf(p.z);
    uint32_t x = (int)fx * 0x8da6b343u, y = (int)fy * 0xd8163841u, z = (int)fz * 0xcb1ab31fu + (uint32_t)s * 0x9e3779b9u;
    float u = p.x - fx, v = p.y - fy, w = p.z - fz;
    u = u*u*(3 - 2*u); v = v*v*(3 - 2*v); w = w*w*(3 - 2*w);
    const uint32_t A = 0x8da6b343u, B = 0xd8163841u, C = 0xcb1ab31fu;
    U8 h = (x + (U8){0, A, 0, A, 0, A, 0, A}) ^ (y + (U8){0, 0, B, B, 0, 0, B, B}) ^ (z + (U8){0, 0, 0, 0, C, C, C, C});
    h ^= h >> 15; h *= 0x2c1b3c6du; h ^= h >> 12; h *= 0x297a2d39u; h ^= h >> 15;
    F8 f = __builtin_convertvector((I8)(h & 0xffffff), F8);
    float U = 1 - u, W0 = (1 - v) * (1 - w), W1 = v * (1 - w), W2 = (1 - v) * w, W3 = v * w;
    F8 k = (F8){U, u, U, u, U, u, U, u} * (F8){W0, W0, W1, W1, W2, W2, W3, W3} * f;
    return (k[0] + k[1] + k[2] + k[3] + k[4] + k[5] + k[6] + k[7]) * (2.f / 16777216.f) - 1;
}
static inline V rotn(V p) { return v3(0.8f*p.x - 0.6f*p.y, 0.48f*p.x + 0.64f*p.y - 0.6f*p.z, 0.36f*p.x + 0.48f*p.y + 0.8f*p.z); }
static inline float fbm(V p, int s, int oct) {
    float a = 0.6f, r = 0;
    for (int i = 0; i < oct; i++) { r += a * noise(p, s + i); p = rotn(mul(p, 2.03f)); a *= 0.5f; }
    return r;
}
static inline V warp(V p, float f, float amp, int s) {
    V q = mul(p, f);
    return add(p, v3(amp * noise(q, s), amp * noise(q, s + 71), amp * noise(q, s + 137)));
}
/* scattered balls: distance to the nearest over its radius (1 = edge); tail stretches one side */
static inline float dots(V p, float cell, int s, float dens, float rmin, float rmax, float tail, float *id) {
    V q = mul(p, 1 / cell);
    int bx = floorf(q.x - 0.5f), by = floorf(q.y - 0.5f), bz = floorf(q.z - 0.5f);
    float best = 99; *id = 0;
    for (int i = 0; i < 8; i++) {
        int x = bx + (i & 1), y = by + ((i >> 1) & 1), z = bz + (i >> 2);
        uint32_t h = hsh(x, y, z, s);
        if (h1(h) > dens) continue;
        h = nxt(h); float a = h1(h); h = nxt(h); float b = h1(h); h = nxt(h); float c = h1(h); h = nxt(h); float g = h1(h);
        V d = v3(q.x - x - 0.25f - 0.5f*a, q.y - y - 0.25f - 0.5f*b, q.z - z - 0.25f - 0.5f*c);
        if (tail > 0 && d.z > 0) { float k = 1 + tail; d.z /= k; }
        float r = rmin + (rmax - rmin) * g * g, t = len(d) / r;
        if (t < best) { best = t; *id = a; }
    }
    return best;
}
/* cell edges: second minus first distance */
static inline float cells(V q, int s, float *id) {
    int bx = floorf(q.x), by = floorf(q.y), bz = floorf(q.z);
    float a = 9, b = 9; *id = 0;
    for (int k = -1; k <= 1; k++) for (int j = -1; j <= 1; j++) for (int i = -1; i <= 1; i++) {
        uint32_t h = hsh(bx + i, by + j, bz + k, s);
        float dx = bx + i + h1(h) - q.x; h = nxt(h); float dy = by + j + h1(h) - q.y; h = nxt(h);
        float dz = bz + k + h1(h) - q.z, d = dx*dx + dy*dy + dz*dz;
        if (d < a) { b = a; a = d; *id = h1(nxt(h)); } else if (d < b) b = d;
    }
    return sqrtf(b) - sqrtf(a);
}
typedef struct { V c; float h, gloss, dark, glint; } Mat;
