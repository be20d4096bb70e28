/* Distance functions and ray marching inside each object's own box. */
static V to_local(const Obj *o, V p) {
	p = sub(p, v3(o->pos[0], o->pos[1], o->pos[2]));
	const float *r = o->rot; /* columns: local axes in the world */
	return v3(r[0] * p.x + r[3] * p.y + r[6] * p.z, r[1] * p.x + r[4] * p.y + r[7] * p.z,
			  r[2] * p.x + r[5] * p.y + r[8] * p.z);
}
static V dir_local(const Obj *o, V d) {
	const float *r = o->rot;
	return v3(r[0] * d.x + r[3] * d.y + r[6] * d.z, r[1] * d.x + r[4] * d.y + r[7] * d.z,
			  r[2] * d.x + r[5] * d.y + r[8] * d.z);
}
static V dir_world(const Obj *o, V d) {
	const float *r = o->rot;
	return v3(r[0] * d.x + r[1] * d.y + r[2] * d.z, r[3] * d.x + r[4] * d.y + r[5] * d.z,
			  r[6] * d.x + r[7] * d.y + r[8] * d.z);
}
static const Soap *S; /* the soap of this picture */
static float wrinkle_amp, wrinkle_look, wrinkle_size; static int wrinkle_seed;

/* Height of the brain-like folds of an overheated top. */
static float folds(float x, float z) {
	float f = 1.0f / wrinkle_size;
	float a = fbm2(x * f * .55f, z * f * .55f, 2, wrinkle_seed), b = noise2(x * f * 0.6f + 9, z * f * 0.6f, wrinkle_seed + 5);
	float w;
	if (wrinkle_look < 0.5f) w = fabsf(sinf(11 * a + 5 * b)); /* brain */
	else if (wrinkle_look < 1.5f) w = 0.5f + 0.5f * sinf(z * f * 3.2f + 9 * a + 1.5f * b); /* ripples */
	else { float r = fabsf(a * 2 - 1), q = fabsf(2 * b - 1); w = sqrtf(minf(1, 2.5f * minf(r + 0.25f * q, q + .1f))); }
	return w;
}
static float top_height(const Obj *o, float x, float z) {
	float h = 0, f = S->topfreq; int s = (int)S->seed + 61;
	z += o->zoff;
	if (o->topamp > 0.01f) {
		if (S->topstyle < 0.5f) h = noise2(x * f, z * f, s) - 0.5f;
		else if (S->topstyle < 1.5f) h = 0.5f * sinf(x * f * 3 + 3 * noise2(x * f, z * f * 0.6f, s)); /* spooned waves */
		else h = 1 - 1.5f * fabsf(x / S->h[0]) + 0.25f * noise2(x * f * 2, z * f * 2, s); /* ridge */
		h *= o->topamp;
	}
	if (wrinkle_amp > 0) h += wrinkle_amp * (folds(x, z) - 0.6f);
	return h;
}
static float sdf(const Obj *o, V p) {
	float hx = o->h[0], hy = o->h[1], hz = o->h[2], r = o->round;
	int k = (int)o->shape;
	if (k == 0 || k == 5) {
		if (o->mat < 0.5f && (o->topamp > 0.01f || wrinkle_amp > 0) && p.y > 0)
			p.y -= top_height(o, p.x, p.z) * smooth(0.2f * hy, hy, p.y);
		if (k == 0) {
			V q = v3(fabsf(p.x) - hx + r, fabsf(p.y) - hy + r, fabsf(p.z) - hz + r);
			V m = v3(maxf(q.x, 0), maxf(q.y, 0), maxf(q.z, 0));
			return len(m) + minf(maxf(q.x, maxf(q.y, q.z)), 0) - r;
		}
		float sx = hz / hx, l = sqrtf(p.x * p.x * sx * sx + p.z * p.z) - hz + r, e = fabsf(p.y) - hy + r;
		float a = maxf(l, 0), b = maxf(e, 0);
		return sqrtf(a * a + b * b) + minf(maxf(l, e), 0) - r;
	}
	if (k == 1) {
		V q = v3(p.x / hx, p.y / hy, p.z / hz);
		float a = len(q), b = len(v3(q.x / hx, q.y / hy, q.z / hz));
		return b < 1e-5f ? -hx : a * (a - 1) / b;
	}
	if (k == 2 || k == 4) { /* cylinder, cup */
		float l = sqrtf(p.x * p.x + p.z * p.z), a = l - hx + r, e = fabsf(p.y) - hy + r;
		float d = sqrtf(maxf(a, 0) * maxf(a, 0) + maxf(e, 0) * maxf(e, 0)) + minf(maxf(a, e), 0) - r;
		if (k == 4) d = maxf(d, -maxf(l - hx + 0.35f, -p.y - hy + 0.5f));
		return d;
	}
	if (k == 3) { p.x -= clampf(p.x, -hx + hy, hx - hy); return len(p) - hy * (1 - 0.08f * p.x / hx); }
	float l = sqrtf(p.x * p.x + p.z * p.z); /* 6: cone */
	float w = hx * clampf((hy - p.y) / (2 * hy), 0, 1);
	return maxf((l - w) * 0.85f, fabsf(p.y) - hy);
}
static int slab(const Obj *o, V p, V d, float grow, float *t0, float *t1) {
	float pp[3] = {p.x, p.y, p.z}, dd[3] = {d.x, d.y, d.z}, a = 0, b = 1e9f;
	for (int i = 0; i < 3; i++) {
		float h = o->h[i] + grow;
		if (i == 1) h += o->topamp + wrinkle_amp;
		if (o->shape == 3 && i == 2) h = o->h[1] * 1.1f + grow;
		float iv = 1.0f / (fabsf(dd[i]) > 1e-7f ? dd[i] : 1e-7f), u = (-h - pp[i]) * iv, w = (h - pp[i]) * iv;
		if (u > w) { float q = u; u = w; w = q; }
		a = maxf(a, u); b = minf(b, w);
	}
	*t0 = a; *t1 = b;
	return b > a;
}
/* Does the ray pass the ball round the object at all? */
static int passes(const Obj *o, V wp, V wd, float grow) {
	V c = sub(v3(o->pos[0], o->pos[1], o->pos[2]), wp);
	float t = dot(c, wd), R = o->h[1] + o->topamp + wrinkle_amp + grow, q = o->h[0] * o->h[0] + R * R + o->h[2] * o->h[2] + 2 * grow * (o->h[0] + o->h[2]);
	return dot(c, c) - t * t < q;
}
static float hit_obj(const Obj *o, V wp, V wd, float tmax) {
	if (!passes(o, wp, wd, 0.1f)) return 1e9f;
	V p = to_local(o, wp), d = dir_local(o, wd);
	float t, e;
	if (!slab(o, p, d, 0.02f, &t, &e) || t > tmax) return 1e9f;
	for (int i = 0; i < 48 && t < e; i++) {
		float s = sdf(o, add(p, mul(d, t)));
		if (s < 0.003f) return t;
		t += s * 0.85f;
	}
	return t < e ? t : 1e9f;
}
static V normal_at(const Obj *o, V p) {
	float e = 0.006f;
	return unit(v3(sdf(o, v3(p.x + e, p.y, p.z)) - sdf(o, v3(p.x - e, p.y, p.z)),
				   sdf(o, v3(p.x, p.y + e, p.z)) - sdf(o, v3(p.x, p.y - e, p.z)),
				   sdf(o, v3(p.x, p.y, p.z + e)) - sdf(o, v3(p.x, p.y, p.z - e))));
}
static float shadow(const Obj *os, int n, V wp, V wd, float k) {
	float res = 1;
	for (int j = 0; j < n; j++) {
		const Obj *o = os + j;
		if (!passes(o, wp, wd, minf(0.3f + 2.0f / k, 1.6f))) continue;
		V p = to_local(o, wp), d = dir_local(o, wd);
		float t, e;
		if (!slab(o, p, d, minf(0.3f + 2.0f / k, 1.6f), &t, &e)) continue;
		t = maxf(t, 0.03f);
		for (int i = 0; i < 22 && t < e; i++) {
			float s = sdf(o, add(p, mul(d, t)));
			res = minf(res, 0.5f + 0.5f * k * s / (t + 0.3f));
			if (res < 0.01f) return 0;
			t += clampf(fabsf(s), 0.05f, 1.5f);
		}
	}
	res = clampf(res, 0, 1);
	return res * res * (3 - 2 * res);
}
static float occl(const Obj *os, int n, V p, V nrm) {
	float ao = 1;
	static const float hs[3] = {0.25f, 0.9f, 2.2f}, ws[3] = {0.28f, 0.27f, 0.22f};
	for (int k = 0; k < 3; k++) {
		V q = add(p, mul(nrm, hs[k]));
		float d = maxf(q.y, 0);
		for (int j = 0; j < n; j++) {
			const Obj *o = os + j;
			V c = sub(q, v3(o->pos[0], o->pos[1], o->pos[2]));
			float R = o->h[0] + o->h[1] + o->h[2] + hs[k];
			if (dot(c, c) > R * R) continue;
			d = minf(d, sdf(o, to_local(o, q)));
		}
		ao -= ws[k] * clampf((hs[k] - d) / hs[k], 0, 1);
	}
	return maxf(ao, 0.08f);
}
