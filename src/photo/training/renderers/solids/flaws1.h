/* Flaws of colour and of grain. Each returns how much of itself it laid on the point, 0..1. */
static float region(const Flaw *f, V p) { /* where on the bar the flaw dwells */
	if (f->extent > 0.85f) return 1;
	V d = sub(p, v3(f->c[0], f->c[1], f->c[2]));
	float R = 0.7f + 5.5f * f->extent, e = len(d) / R + 1.1f * (fbm3(mul(p, 0.8f), 3, (int)f->seed + 70) - 0.5f);
	return smooth(1, 0.6f, e);
}
static float coloured_specks(const Flaw *f, V p, float u, float v, float g, Surf *s, int sd) {
	V c = v3(f->col[0], f->col[1], f->col[2]); int k = (int)f->look; float z = 0.6f + 0.9f * f->size, m = 0;
	for (int i = 0; i < 2; i++) {
		float cell = (k == 2 ? 0.22f : 0.45f) * (i ? 0.7f : 1.2f);
		Spot q = spots(u, v, cell, (0.08f + 0.45f * f->strength) * g, 0.012f * z, (k == 2 ? 0.035f : i ? 0.05f : 0.1f) * z, 1, 0, sd + 13 * i);
		float e = q.d + 0.45f * (noise2(u * 26, v * 26, sd) - 0.5f), h = smooth(1.0f, 0.75f, e);
		float halo = 0.22f * expf(-maxf(e - 1, 0) * 1.2f) * (q.d < 4);
		if (k == 1) { /* comet: tail along the cut */
			float L = 4 + 9 * rnd(q.id, 7), w = fabsf(q.dx + 0.1f * q.dy * (rnd(q.id, 8) - .5f));
			if (q.dy < 0 && q.dy > -L) h = maxf(h, 0.65f * (1 + q.dy / L) * smooth(1, 0.4f, w / (1 + 0.4f * q.dy / L)));
		}
		m = maxf(m, maxf(h, halo));
	}
	m *= (0.45f + 0.55f * f->strength);
	s->alb = lerpv(s->alb, c, m);
	return m;
}
static float smears(const Flaw *f, V p, float u, float v, float g, Surf *s, int sd) {
	V c = v3(f->col[0], f->col[1], f->col[2]); int k = (int)f->look; float m = 0;
	float an = 6.28f * h01(1, 2, 3, (int)f->seed), ca = cosf(an), sa = sinf(an);
	float a = u * ca + v * sa, b = -u * sa + v * ca;
	a += 1.2f * (fbm2(u * 0.4f, v * 0.4f, 2, sd) - 0.5f);
	if (k == 0) { /* thin long streaks */
		float n = 0.65f * noise2(a * (2 + 2 * f->size), b * 0.4f, sd + 1) + 0.35f * noise2(a * 9, b * 0.7f, sd + 2), t = 0.78f - 0.25f * f->strength;
		m = smooth(t, t + 0.07f, n) * (0.6f + 0.4f * noise2(a * 25, b, sd + 3));
	} else if (k == 1) { /* short flecks drawn out */
		Spot q = spots(a, b, 0.9f, 0.2f + 0.6f * f->strength, 0.04f, 0.11f + .08f * f->size, 6, 0.15f, sd + 3);
		float e = sqrtf(q.dx * q.dx + q.dy * q.dy) + 0.7f * (noise2(a * 14, b * 3, sd + 4) - 0.5f);
		m = smooth(1, 0.5f, e) * (0.65f + 0.35f * smooth(-1, 0.6f, q.dy));
	} else { /* one broad swath with a frayed end */
		float w = 0.25f + 0.5f * f->size, x = a - f->c[0] * ca - f->c[1] * sa, n = noise2(a * 10, b * 0.35f, sd + 5);
		m = smooth(w, w * 0.4f, fabsf(x)) * smooth(0.25f, 0.55f, n + 0.35f * (1 - fabsf(b) / (2 + 3 * f->extent)));
	}
	m *= g * (0.35f + 0.55f * f->strength);
	s->alb = lerpv(s->alb, c, m);
	return m;
}
static float white_specks(const Flaw *f, V p, float u, float v, float g, Surf *s, int sd) {
	int k = (int)f->look; float z = 0.6f + 0.9f * f->size, m = 0;
	if (k == 2) g *= smooth(0.5f, 0.62f, noise2(u * 0.7f, v * 0.7f, sd + 6));
	for (int i = 0; i < 2; i++) {
		float cell = k == 1 ? 0.9f : i ? 0.2f : 0.42f, r1 = k == 1 ? 0.2f : i ? 0.035f : 0.075f;
		Spot q = spots(u, v, cell, (0.1f + 0.5f * f->strength) * g, 0.015f * z, r1 * z, 1.2f, 1.2f, sd + 9 * i);
		float e = q.d + (k == 1 ? 0.8f : 0.4f) * (fbm2(u * 11, v * 11, 2, sd) - 0.5f), h = smooth(1.0f, 0.8f, e);
		if (k == 1) s->alb = mul(s->alb, 1 - 0.1f * f->strength * smooth(1.7f, 1, e) * (1 - h)); /* wet ring round a lump */
		if (h > m) { m = h; s->hgt += 0.012f * h; }
	}
	m *= 0.5f + 0.48f * f->strength;
	s->alb = lerpv(s->alb, v3(.97f, .97f, .95f), m); s->gloss *= 1 - .7f * m;
	return m;
}
static float veins(const Flaw *f, V p, float u, float v, float g, Surf *s, int sd) {
	int k = (int)f->look; float q = 0.55f + 0.55f * f->size, m;
	float wu = u + 1.3f * fbm2(u * .5f, v * .5f, 3, sd), wv = v + 1.3f * fbm2(u * .5f + 9, v * .5f, 3, sd + 4);
	float st = k == 1 ? 0.35f : 1, a = fabsf(fbm2(wu / q * 0.6f, wv * st / q * 0.6f, 2, sd + 7) - 0.5f), b = fabsf(fbm2(wu / q * 1.3f, wv * st / q * 1.3f, 2, sd + 9) - 0.5f);
	float w = 0.02f + 0.05f * f->strength; w *= 0.5f + noise2(u * 0.8f, v * 0.8f, sd + 11);
	m = maxf(smooth(w, w * 0.35f, a), 0.7f * smooth(w * 0.9f, w * 0.3f, b));
	if (k == 2) m = maxf(m, smooth(0.60f - .08f * f->strength, 0.68f, fbm2(wu / q * 0.7f, wv / q * 0.7f, 3, sd + 13)));
	m *= g * (0.4f + 0.6f * f->strength);
	V al = s->alb, dark = mulv(mulv(al, v3(0.70f, 0.64f, 0.55f)), lerpv(v3(1, 1, 1), al, 0.55f));
	s->alb = lerpv(al, dark, m); s->gloss += 0.35f * m; s->trans += 0.4f * m; s->hgt -= 0.008f * m;
	return m;
}
static float crackle(const Flaw *f, V p, float u, float v, float g, Surf *s, int sd) {
	int k = (int)f->look; uint32_t id = 0; float q = (0.17f + 0.35f * f->size) * (k == 1 ? 1.4f : 1);
	float wu = u + 0.5f * fbm2(u, v, 3, sd), wv = v + 0.5f * fbm2(u + 5, v, 3, sd + 4);
	float e = cracks(wu / q, wv / q * (k == 2 ? 0.5f : 1), sd + 1, &id);
	e += 0.2f * (noise2(u / q * 4, v / q * 4, sd + 3) - 0.5f);
	float w = 0.07f + 0.12f * f->strength, m = smooth(w, w * 0.3f, e);
	if (k == 1) { uint32_t j; float e2 = cracks(wu / q * 2.3f, wv / q * 2.3f, sd + 6, &j); m = maxf(m, 0.6f * smooth(w, w * 0.3f, e2)); }
	float gg = g * (0.35f + 0.65f * f->strength);
	m *= gg;
	V al = s->alb;
	al = lerpv(al, v3(.95f, .95f, .94f), 0.22f * gg * (0.5f + 0.5f * rnd(id, 2))); /* islands hold the white */
	V dark = mulv(mulv(s->alb, v3(0.66f, 0.6f, 0.54f)), lerpv(v3(1, 1, 1), s->alb, 0.5f));
	s->alb = lerpv(al, dark, m); s->gloss += 0.25f * m; s->hgt -= 0.01f * m;
	return maxf(m, 0.3f * gg);
}
static float ash(const Flaw *f, V p, int face, float u, float v, float g, Surf *s, int sd) {
	int k = (int)f->look; float st = f->strength, m;
	if (k == 0 && face != TOP && S->kind != 1) { /* only a lip of it runs down from the top */
		g *= smooth(0.6f, 0.1f, S->h[1] - p.y + 0.5f * noise2(p.x * 2, p.z * 2, sd));
	}
	float n = fbm2(u * 0.9f, v * 0.9f, 4, sd), fine = noise2(u * 22, v * 22, sd + 4);
	if (k == 1) m = smooth(0.50f - 0.25f * st, 0.74f - 0.15f * st, n); /* patches */
	else if (k == 2) { /* feathery crystals */
		Spot q = spots(u, v, 0.9f, 0.75f, 0.25f, 0.55f, 1, 0, sd + 2); float t = atan2f(q.dy, q.dx);
		float ray = noise2(t * 7, q.d * 1.3f + 3 * rnd(q.id, 3), sd + 5);
		m = smooth(1.1f, 0.2f, q.d) * (0.35f + 0.65f * smooth(0.35f, 0.65f, ray)); m = maxf(m, 0.4f * smooth(0.45f, 0.7f, n));
	} else m = 0.5f + 0.5f * smooth(0.3f, 0.7f, n);
	m *= g * (0.25f + 0.65f * st) * (0.75f + 0.35f * fine);
	m = clampf(m, 0, 0.92f);
	s->alb = lerpv(s->alb, v3(.90f, .90f, .89f), m); s->gloss *= 1 - m; s->hgt += 0.012f * m * fine + 0.004f * noise2(u * 50, v * 50, sd) * m; s->rough = lerp(s->rough, .8f, m);
	return m;
}
static float rancid(const Flaw *f, V p, float u, float v, float g, Surf *s, int sd) {
	int k = (int)f->look; float z = 0.6f + 0.9f * f->size;
	float cell = k == 1 ? 0.6f : 1.5f, r0 = k == 1 ? 0.03f : 0.09f, r1 = (k == 1 ? 0.12f : 0.32f) * z;
	if (k == 2) { g *= smooth(1.4f, 0.3f, minf(S->h[0] - fabsf(p.x), S->h[1] - fabsf(p.y)) + noise2(u, v, sd)); }
	Spot q = spots(u, v, cell, (0.2f + 0.6f * f->strength) * g, r0, r1, 1.15f, 1, sd);
	float e = q.d + 0.6f * (fbm2(u * 4, v * 4, 3, sd + 3) - 0.5f);
	float core = smooth(0.75f, 0.25f, e), halo = smooth(2.4f, 0.5f, e) * (k == 2 ? 1 : 0.8f);
	float a = 0.4f + 0.6f * f->strength;
	s->alb = lerpv(s->alb, mulv(s->alb, v3(1.0f, 0.74f, 0.36f)), halo * a);
	s->alb = lerpv(s->alb, v3(.60f, .27f, .06f), core * a * (0.75f + 0.25f * noise2(u * 12, v * 12, sd)));
	s->gloss += 0.3f * core; s->hgt -= 0.006f * core;
	return maxf(core, 0.7f * halo) * a;
}
