/* Small vectors, hashes, noise and scattered cells. */
#include <math.h>
#include <stdint.h>
#include <string.h>
typedef struct { float x, y, z; } V;
static inline V v3(float x, float y, float z) { V a = {x, y, z}; return a; }
static inline V add(V a, V b) { return v3(a.x + b.x, a.y + b.y, a.z + b.z); }
static inline V sub(V a, V b) { return v3(a.x - b.x, a.y - b.y, a.z - b.z); }
static inline V mul(V a, float s) { return v3(a.x * s, a.y * s, a.z * s); }
static inline V mulv(V a, V b) { return v3(a.x * b.x, a.y * b.y, a.z * b.z); }
static inline float dot(V a, V b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
static inline V cross(V a, V b) {
	return v3(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);
}
static inline float len(V a) { return sqrtf(dot(a, a)); }
static inline V unit(V a) { float l = len(a); return mul(a, 1.0f / (l > 1e-9f ? l : 1e-9f)); }
static inline V lerpv(V a, V b, float t) { return add(mul(a, 1 - t), mul(b, t)); }
static inline float clampf(float x, float a, float b) { return x < a ? a : x > b ? b : x; }
static inline float lerp(float a, float b, float t) { return a + (b - a) * t; }
static inline float smooth(float a, float b, float x) {
	float t = clampf((x - a) / (b - a), 0, 1);
	return t * t * (3 - 2 * t);
}
static inline float maxf(float a, float b) { return a > b ? a : b; }
static inline float minf(float a, float b) { return a < b ? a : b; }

static inline uint32_t mix32(uint32_t h) {
	h ^= h >> 15; h *= 0x2c1b3c6du; h ^= h >> 12; h *= 0x297a2d39u; h ^= h >> 15;
	return h;
}
static inline uint32_t hash(int x, int y, int z, int s) {
	return mix32((uint32_t)x * 0x8da6b343u ^ (uint32_t)y * 0xd8163841u ^
				 (uint32_t)z * 0xcb1ab31fu ^ (uint32_t)s * 0x9e3779b9u);
}
static inline float rnd(uint32_t h, int k) { /* k-th number in 0..1 from a hash */
	return (mix32(h + 0x9e3779b9u * (uint32_t)(k + 1)) >> 8) * (1.0f / 16777216.0f);
}
static inline float h01(int x, int y, int z, int s) { return (hash(x, y, z, s) >> 8) * (1.0f / 16777216.0f); }

static float noise2(float x, float y, int s) { /* value noise, 0..1 */
	float fx = floorf(x), fy = floorf(y);
	int i = (int)fx, j = (int)fy;
	float u = x - fx, w = y - fy;
	u = u * u * (3 - 2 * u); w = w * w * (3 - 2 * w);
	return lerp(lerp(h01(i, j, 0, s), h01(i + 1, j, 0, s), u),
				lerp(h01(i, j + 1, 0, s), h01(i + 1, j + 1, 0, s), u), w);
}
static float noise3(V p, int s) {
	float fx = floorf(p.x), fy = floorf(p.y), fz = floorf(p.z);
	int i = (int)fx, j = (int)fy, k = (int)fz;
	float u = p.x - fx, v = p.y - fy, w = p.z - fz;
	u = u * u * (3 - 2 * u); v = v * v * (3 - 2 * v); w = w * w * (3 - 2 * w);
	float a = lerp(lerp(h01(i, j, k, s), h01(i + 1, j, k, s), u),
				   lerp(h01(i, j + 1, k, s), h01(i + 1, j + 1, k, s), u), v);
	float b = lerp(lerp(h01(i, j, k + 1, s), h01(i + 1, j, k + 1, s), u),
				   lerp(h01(i, j + 1, k + 1, s), h01(i + 1, j + 1, k + 1, s), u), v);
	return lerp(a, b, w);
}
static float fbm2(float x, float y, int n, int s) {
	float a = 0.5f, r = 0, t = 0;
	for (int i = 0; i < n; i++) {
		r += a * noise2(x, y, s + i); t += a; a *= 0.5f;
		float q = x * 1.6f - y * 1.2f; y = x * 1.2f + y * 1.6f; x = q;
	}
	return r / t;
}
static float fbm3(V p, int n, int s) {
	float a = 0.5f, r = 0, t = 0;
	for (int i = 0; i < n; i++) {
		r += a * noise3(p, s + i); t += a; a *= 0.5f;
		p = v3(p.x * 1.6f - p.y * 1.2f, p.x * 1.2f + p.y * 1.6f, p.z * 2.03f + 3.1f);
	}
	return r / t;
}

/* Scattered spots: the nearest (in units of its radius) spot around (x, y). */
typedef struct { float d; float dx, dy, r; uint32_t id; } Spot;
static Spot spots(float x, float y, float cell, float dens, float r0, float r1, float stretch, float ang, int s) {
	Spot b = {9, 0, 0, 1, 0};
	float c = cosf(ang), n = sinf(ang);
	int ci = (int)floorf(x / cell), cj = (int)floorf(y / cell);
	for (int j = cj - 1; j <= cj + 1; j++)
		for (int i = ci - 1; i <= ci + 1; i++) {
			uint32_t h = hash(i, j, 7, s);
			if (rnd(h, 0) > dens) continue;
			float ex = x - (i + rnd(h, 1)) * cell, ey = y - (j + rnd(h, 2)) * cell;
			float q = rnd(h, 3), r = r0 + (r1 - r0) * q * q;
			float a = (ex * c + ey * n), e = (-ex * n + ey * c) / stretch;
			float d = sqrtf(a * a + e * e) / r;
			if (d < b.d) { b.d = d; b.dx = a / r; b.dy = e / r; b.r = r; b.id = h; }
		}
	return b;
}
/* Distance to the border between the two nearest cell centres. */
static float cracks(float x, float y, int s, uint32_t *id) {
	int ci = (int)floorf(x), cj = (int)floorf(y);
	float d1 = 9, d2 = 9;
	for (int j = cj - 1; j <= cj + 1; j++)
		for (int i = ci - 1; i <= ci + 1; i++) {
			uint32_t h = hash(i, j, 3, s);
			float ex = x - i - 0.1f - 0.8f * rnd(h, 1), ey = y - j - 0.1f - 0.8f * rnd(h, 2);
			float d = sqrtf(ex * ex + ey * ey);
			if (d < d1) { d2 = d1; d1 = d; *id = h; } else if (d < d2) d2 = d;
		}
	return d2 - d1;
}
