/* Flaws of form, of heat, of the mould and of the cut. */
static float ring(const Flaw *f, V p, int face, float g, Surf *s, int sd) {
	if (face == SIDE || (face == TOP)) return 0;
	int k = (int)f->look; float z = 0.42f + 0.38f * f->size;
	float x = (p.x - 0.25f * f->c[0]) / S->h[0], y = (p.y - 0.2f * f->c[1]) / S->h[1];
	float q = powf(powf(fabsf(x), 2.6f) + powf(fabsf(y), 2.6f), 1 / 2.6f) / z;
	q += 0.30f * (fbm3(v3(p.x * 0.6f, p.y * 0.6f, p.z * 0.4f), 2, sd) - 0.5f) + 0.03f * (noise2(p.x * 4, p.y * 4, sd + 1) - 0.5f);
	float soft = k == 1 ? 0.13f : 0.05f, core = smooth(1 + soft, 1 - soft, q), line = smooth(0.075f, 0.02f, fabsf(q - 1)) * (k != 1);
	if (k == 2) { float o = smooth(0.35f, 0.6f, noise2(atan2f(y, x) * 1.1f, 2, sd + 5)); core *= 0.45f; line *= 0.3f + 0.7f * o; }
	float a = (0.25f + 0.75f * f->strength);
	V al = s->alb, dk = mulv(mulv(al, v3(.78f, .73f, .66f)), lerpv(v3(1, 1, 1), al, 0.5f));
	s->alb = lerpv(al, dk, 0.85f * core * a);
	s->alb = lerpv(s->alb, mulv(dk, v3(.84f, .8f, .75f)), line * a * 0.8f);
	s->trans += 0.3f * core * a; s->gloss += 0.15f * core * a;
	return maxf(core, line) * a;
}
static float pinholes(const Flaw *f, V p, float u, float v, float g, Surf *s, int sd) {
	int k = (int)f->look; float z = 0.6f + 0.8f * f->size, m = 0;
	if (k == 2) g *= smooth(0.75f, 0.3f, fabsf(v - 0.5f * f->c[1] - 0.7f * noise2(u * 0.7f, 1, sd)));
	for (int i = 0; i < 2; i++) {
		float cell = i ? 0.2f : 0.5f, r1 = i ? 0.035f : (k == 0 ? 0.06f : 0.14f);
		Spot q = spots(u, v, cell, (0.08f + 0.5f * f->strength) * g, 0.012f * z, r1 * z, k == 2 ? 1.5f : 1.1f, rnd(sd, 3) * 3, sd + 31 * i);
		float e = q.d + 0.2f * (noise2(u * 20, v * 20, sd) - 0.5f), h = smooth(1.05f, 0.75f, e);
		if (e < 1.1f) { s->hgt -= minf(0.9f * q.r, 0.11f) * (0.4f + 0.6f * f->strength) * sqrtf(maxf(0, 1 - e * e / 1.21f)); s->gloss *= 1 - 0.8f * h; }
		m = maxf(m, h);
	}
	s->alb = mulv(s->alb, lerpv(v3(1, 1, 1), v3(.52f, .48f, .44f), m * (0.35f + 0.5f * f->strength)));
	return m;
}
static float crack(const Flaw *f, V p, int face, float u, float v, Surf *s, int sd) {
	int k = (int)f->look; float st = f->strength, w = 0.018f + 0.14f * st * (0.4f + 0.6f * f->size), d, m;
	float along = face == TOP ? p.z : p.y;
	float x = p.x - 0.3f * f->c[0] - S->h[0] * 0.7f * (h01(sd, 3, 1, 5) - 0.5f) - 0.7f * (fbm2(along * 0.7f, 1.5f, 3, sd) - 0.5f) - 0.2f * (noise2(along * 4, 2, sd + 2) - 0.5f) - 0.06f * (noise2(along * 15, 2, sd + 3) - .5f);
	if (face == SIDE) return 0;
	if (k == 1 && face == CUT) { /* a jagged break through the face, any way */
		float an = 3.14f * h01(3, 1, 1, (int)f->seed), a = (u - .4f * f->c[0]) * cosf(an) + (v - .4f * f->c[1]) * sinf(an), b = -u * sinf(an) + v * cosf(an);
		x = a - 1.3f * (fbm2(b * 0.8f, 3, 4, sd) - 0.5f) - 0.06f * (noise2(b * 14, 3, sd) - .5f);
		w *= smooth(1, 0.4f, fabsf(b - 0.3f * f->c[1]) / (1.2f + 4 * f->extent)) * (0.5f + noise2(b * 1.4f, 1, sd));
	} else if (face == CUT) { /* it goes down from the top */
		float depth = S->h[1] * (0.25f + 1.2f * f->extent), t = (S->h[1] - p.y) / depth;
		w *= t < 1 ? (1 - t) : 0;
	} else w *= (0.5f + 0.9f * noise2(along * 0.9f, 5, sd)) * (f->extent > .7f ? 1 : smooth(1, .6f, fabsf(along - f->c[2]) / (1 + 6 * f->extent)));
	d = fabsf(x);
	if (k == 2 && face == TOP) { /* side branches */
		uint32_t id; float e = cracks(p.x * 0.42f + .4f * noise2(u * 2, v * 2, sd), p.z * 0.3f + .4f * noise2(u * 2 + 7, v * 2, sd), sd + 9, &id) * 1.3f;
		e /= smooth(2.6f + 2 * f->extent, 0, fabsf(x)) + 0.05f; d = minf(d, e);
	}
	if (w < 0.006f) return 0;
	m = smooth(w, w * 0.5f, d);
	s->hgt -= 0.16f * m; s->hgt += (face == TOP ? 0.10f : 0.015f) * st * expf(-d / (2.2f * w + .08f)); /* lips */
	s->alb = mulv(s->alb, lerpv(v3(1, 1, 1), v3(.22f, .18f, .15f), m * smooth(0.004f, 0.03f, w)));
	s->gloss *= 1 - m;
	return m;
}
static float browning(const Flaw *f, V p, Surf *s, int sd) {
	int k = (int)f->look; float d, n = fbm3(mul(p, 0.55f), 3, sd) - 0.5f;
	float ea = maxf(S->h[0] - fabsf(p.x), 0), eb = maxf(S->h[1] - fabsf(p.y), 0);
	d = ea * eb / sqrtf(ea * ea + eb * eb + 1e-4f); /* rounded in the corners */
	if (S->kind == 1) d = minf(d, S->h[2] - fabsf(p.z));
	float r = (0.2f + 1.5f * f->extent);
	if (k == 1) r *= clampf(0.5f + 1.6f * n + 0.7f * (f->c[0] > 0 ? p.x : -p.x) / S->h[0], 0.05f, 2);
	d = maxf(d + 0.9f * n * r, 0);
	float m = k == 2 ? smooth(r * 1.1f, r * 0.85f, d) : expf(-d * d / (r * r));
	m *= 0.25f + 0.65f * f->strength;
	V br = lerpv(v3(.52f, .33f, .18f), v3(.30f, .16f, .08f), f->size);
	s->alb = lerpv(s->alb, mulv(br, lerpv(v3(1, 1, 1), s->alb, 0.3f)), m);
	return m;
}
static float bled(const Flaw *f, V p, float g, Surf *s, int sd) {
	int k = (int)f->look; V dye = s->alb; float b = past_border(p, &dye), L = 0.15f + 0.75f * f->extent;
	if (b > 5) return 0;
	float n = noise2(p.x * 0.9f, p.z + p.y * 0.3f, sd);
	if (k == 1) L *= 0.25f + 1.9f * smooth(0.35f, 0.75f, noise2(p.x * 2.3f, p.z * 2 + p.y * .4f, sd + 3));
	else if (k == 2) L *= 0.2f + 1.8f * fbm3(mul(p, 0.9f), 3, sd + 4);
	else L *= 0.7f + 0.6f * n;
	float m = expf(-powf(b / L, 1.4f)) * (0.3f + 0.5f * f->strength);
	V c = lerpv(dye, v3(1, 1, 1), 0.1f); c = lerpv(c, mul(c, 1.15f), 0.5f);
	s->alb = lerpv(s->alb, c, m);
	return m;
}
static float drag(const Flaw *f, V p, int face, float u, float v, float g, Surf *s, int sd) {
	if (face != CUT) return 0;
	int k = (int)f->look; float tilt = 0.25f * (h01(5, 5, 5, (int)f->seed) - 0.5f), a = u + tilt * v, m = 0, h = 0, st = f->strength;
	if (k == 2) a += 0.5f * sinf(v * 0.45f + 2 * h01(5, 5, 1, sd));
	if (k == 1) { /* a few deep grooves */
		for (int i = 0; i < 5; i++) {
			float x = a - S->h[0] * (1.8f * h01(i, 4, 4, sd) - 0.9f), l = S->h[1] * (1.6f * h01(i, 4, 5, sd)), w = 0.03f + 0.05f * f->size;
			if (i > 1 + 4 * f->extent || v > S->h[1] - l * 0.4f || v < S->h[1] - l - 1.5f - 4 * f->extent) continue;
			float q = smooth(w, 0, fabsf(x + 0.02f * noise2(v * 3, i, sd)));
			m = maxf(m, q); h += -0.06f * q + 0.04f * smooth(w, 0, fabsf(x - 1.6f * w));
		}
		g = 1;
	} else { /* many fine lines */
		float n = 0.6f * noise2(a * (7 + 9 * f->size), v * 0.12f, sd) + 0.4f * noise2(a * 26, v * 0.2f, sd + 1);
		m = smooth(0.55f, 0.78f, n); h = -0.035f * m + 0.02f * smooth(0.4f, 0.2f, n);
	}
	m *= g;
	s->hgt += h * g * (0.4f + 1.2f * st);
	s->alb = mul(s->alb, 1 - (0.06f + 0.16f * st) * m); s->rough = lerp(s->rough, .6f, m);
	return m;
}
static float gap(const Flaw *f, V p, int face, Surf *s, int sd) {
	if (S->pattern != 1 || face == TOP) return 0;
	int k = (int)f->look, n = (int)S->ncol, pick = (int)f->seed % (n - 1); float m = 0;
	for (int i = 0; i < n - 1; i++) {
		if (k != 2 && i != pick) continue;
		float b = p.y - border(i, p.x, p.z), side = f->c[0] > 0 ? S->h[0] - p.x : p.x + S->h[0];
		float reach = 2 * S->h[0] * (0.2f + 0.9f * f->extent), w = (0.02f + 0.11f * f->strength) * (0.4f + 1.1f * noise2(p.x * 1.3f, p.z + 9 * i, sd));
		if (k == 1) w *= 1.5f * maxf(0, 1 - side / reach); else w *= smooth(reach, reach * 0.7f, side + 1.5f * (noise2(p.x * .8f, 2, sd) - .5f));
		b += 0.05f * (noise2(p.x * 6, p.z * 3, sd + 2) - 0.5f);
		if (w < 0.006f) continue;
		float q = smooth(w, w * 0.55f, fabsf(b));
		s->hgt += -0.15f * q + 0.02f * expf(-fabsf(b) / (w + .03f)); m = maxf(m, q * smooth(0.003f, 0.025f, w));
	}
	s->alb = mulv(s->alb, lerpv(v3(1, 1, 1), v3(.2f, .16f, .13f), m)); s->gloss *= 1 - m;
	return m;
}
static float wrinkled(const Flaw *f, V p, int face, Surf *s) {
	if (face != TOP || wrinkle_amp <= 0) return 0;
	float w = folds(p.x, p.z), k = smooth(0.45f, 0.05f, w) * (0.3f + 0.6f * f->strength);
	s->alb = mulv(s->alb, lerpv(v3(1, 1, 1), v3(.68f, .62f, .54f), k)); s->gloss += 0.25f * f->strength * w; s->hgt += 0.06f * f->strength * w;
	return 0.5f + k * .5f;
}
static float dimples(const Flaw *f, V p, int face, float u, float v, float g, Surf *s, int sd) {
	if (face != SIDE) return 0;
	int k = (int)f->look; float z = 0.6f + 0.9f * f->size, st = 0.3f + 0.7f * f->strength, m = 0;
	if (k == 0) { Spot q = spots(u, v, 0.75f * z, 0.75f * g, 0.12f * z, 0.32f * z, 1.15f, 1, sd); if (q.d < 1) { m = 1 - q.d * q.d; s->hgt -= 0.13f * z * st * m * m; m = sqrtf(m); } }
	else if (k == 1) { /* creases of a folded liner */
		for (int i = 0; i < 2; i++) { float a = fbm2(u * 0.45f / z + i * 9, v * 0.35f / z, 2, sd + 8 * i); float e = fabsf(a - 0.5f); float q = smooth(0.045f, 0, e) * g * smooth(.3f, .5f, noise2(u * .5f, v * .5f, sd + i)); s->hgt -= 0.09f * st * q; m = maxf(m, q); }
	} else { float n = noise2(u * 3.2f / z, v * 3.2f / z, sd), q = noise2(u * 7 / z, v * 7 / z, sd + 2); s->hgt -= 0.10f * st * g * (0.7f * n * n + 0.3f * q); m = g * n; }
	s->alb = mul(s->alb, 1 - 0.12f * st * m * (k < 2));
	return m;
}
