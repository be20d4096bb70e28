/* Tables, cloths, walls, and the skin of things that are no soap. */
static void wood(float x, float y, V a, V b, int s, Surf *o, float plank) {
	int i = (int)floorf(y / plank);
	float e = y / plank - i; x += 37 * h01(i, 3, 3, s);
	float w = y * 2.2f + 2.5f * fbm2(x * 0.07f, y * 0.35f, 2, s + i);
	float ring = 0.5f + 0.5f * sinf(w * 4.5f), fib = noise2(x * 0.9f, y * 22, s + 2), pore = noise2(x * 2.2f, y * 45, s + 3);
	o->alb = lerpv(a, b, 0.55f * ring * ring + 0.35f * fib);
	o->alb = mul(o->alb, (0.86f + 0.24f * h01(i, 5, 1, s)) * (pore > 0.8f ? 0.82f : 1));
	o->hgt = 0.01f * fib;
	if (e < 0.012f) { o->alb = mul(o->alb, 0.35f); o->hgt -= 0.08f; }
}
static void tabletop(const View *w, float x0, float z0, Surf *o) {
	float c = cosf(w->tangle), n = sinf(w->tangle), x = (x0 * c + z0 * n) / w->tscale, z = (-x0 * n + z0 * c) / w->tscale;
	V a = v3(w->tcol[0], w->tcol[1], w->tcol[2]), b = v3(w->tcol2[0], w->tcol2[1], w->tcol2[2]);
	int s = (int)w->seed;
	o->gloss = w->tgloss; o->rough = 0.35f; o->trans = 0; o->hgt = 0; o->alb = a;
	switch ((int)w->tkind) {
	case 0: wood(x, z, a, b, s, o, 9); break;
	case 1: { /* linen */
		float u = x * 11, v = z * 11, d = 1.5f * fbm2(x * .4f, z * .4f, 2, s); u += d; v += d;
		float th = 0.6f + 0.4f * noise2(floorf(u) * 3.1f, z * 0.8f, s), tv = 0.6f + 0.4f * noise2(x * 0.8f, floorf(v) * 3.1f, s + 1);
		int over = ((int)floorf(u) + (int)floorf(v)) & 1;
		float k = over ? th * sinf(3.14159f * (u - floorf(u))) : tv * sinf(3.14159f * (v - floorf(v)));
		o->alb = mul(a, 0.68f + 0.4f * k); o->hgt = 0.02f * k + 0.5f * fbm2(x * 0.22f, z * 0.14f, 2, s + 4); o->gloss = 0;
		break; }
	case 2: { /* marble */
		float q = fbm2(x * 0.12f, z * 0.12f, 4, s), r = fabsf(fbm2(x * 0.1f + 2 * q, z * 0.1f + q, 4, s + 7) - 0.5f);
		o->alb = lerpv(a, b, 0.55f * smooth(0.07f, 0, r) + 0.2f * q); break; }
	case 3: { /* tiles with joints */
		float t = 10, u = x / t - floorf(x / t), v = z / t - floorf(z / t), e = minf(minf(u, 1 - u), minf(v, 1 - v)) * t;
		o->alb = mul(a, 0.93f + 0.1f * h01((int)floorf(x / t), (int)floorf(z / t), 1, s) + 0.05f * noise2(x * .8f, z * .8f, s));
		if (e < 0.16f) { o->alb = mul(b, 0.8f + 0.3f * noise2(x * 9, z * 9, s)); o->gloss = 0; }
		o->hgt = 0.08f * smooth(0.1f, 0.4f, e); break; }
	case 4: { /* speckled worktop */
		uint32_t id; cracks(x * 8, z * 8, s, &id); float q = rnd(id, 3), g = rnd(id, 4);
		o->alb = q < 0.2f ? lerpv(a, b, 0.7f) : q < 0.25f ? mul(b, 0.5f) : mul(a, 0.85f + 0.25f * g); break; }
	case 5: { /* baking paper or kraft paper, creased */
		uint32_t id; float e = cracks(x * 0.13f, z * 0.13f, s, &id);
		o->alb = mul(a, 0.94f + 0.07f * noise2(x * 6, z * 6, s) + .06f * fbm2(x * 25, z * 3, 2, s)); o->hgt = 0.25f * smooth(0.0f, 0.35f, e) * rnd(id, 2) + 0.1f * fbm2(x * .5f, z * .5f, 2, s); break; }
	case 6: { /* checked oilcloth */
		float t = 2.4f; int i = ((int)floorf(x / t) & 1) + ((int)floorf(z / t) & 1);
		o->alb = i == 0 ? a : i == 1 ? lerpv(a, b, 0.5f) : b; o->hgt = 0.01f * noise2(x * 14, z * 14, s) + 0.2f * noise2(x * .15f, z * .15f, s); break; }
	case 7: { /* towel loops */
		float f = noise2(x * 8, z * 8, s); o->alb = mul(a, 0.62f + 0.42f * f + 0.1f * noise2(x, z, s)); o->hgt = 0.10f * f + 0.9f * fbm2(x * 0.2f, z * 0.12f, 2, s); o->gloss = 0; break; }
	case 8: { /* slate or stained concrete */
		float q = fbm2(x * 0.5f, z * 0.5f, 4, s); o->alb = lerpv(a, b, q); o->hgt = 0.08f * q + 0.02f * noise2(x * 6, z * 6, s); break; }
	case 9: { /* bamboo mat or wire shelf slats */
		float t = 0.8f, v = z / t - floorf(z / t); int i = (int)floorf(z / t);
		wood(x + i * 5, z, a, b, s, o, 50); o->alb = mul(o->alb, (0.85f + 0.3f * h01(i, 2, 2, s)) * smooth(0, 0.16f, minf(v, 1 - v)));
		o->hgt = 0.25f * sqrtf(maxf(0.02f, v * (1 - v))); break; }
	default: o->alb = mul(a, 0.97f + 0.05f * noise2(x * 3, z * 3, s)); o->hgt = 0.004f * noise2(x * 12, z * 12, s);
	}
	float wear = fbm2(x0 * 0.11f, z0 * 0.11f, 3, s + 90);
	o->alb = mul(o->alb, 0.9f + 0.2f * wear);
	if (noise2(x0 * 2.6f, z0 * 2.6f, s + 91) > 0.985f) o->alb = mul(o->alb, 0.8f);
}
static V wall(const View *w, V p) {
	V c = v3(w->wcol[0], w->wcol[1], w->wcol[2]); int s = (int)w->seed + 5;
	float g = 0.85f + 0.25f * fbm2(p.x * 0.03f, p.y * 0.05f, 2, s);
	if (w->wkind == 1) { /* kitchen tiles */
		float u = p.x / 12 - floorf(p.x / 12), v = p.y / 9 - floorf(p.y / 9);
		if (minf(u, 1 - u) < 0.015f || minf(v, 1 - v) < 0.02f) g *= 0.7f;
		g *= 0.92f + 0.12f * h01((int)floorf(p.x / 12), (int)floorf(p.y / 9), 2, s);
	} else if (w->wkind == 2) { /* a bright window and its frame */
		float x = p.x + 20 - 40 * h01(1, 1, 1, s), y = p.y - 26;
		if (fabsf(x) < 24 && fabsf(y) < 22) return (fabsf(x) < 1.2f || fabsf(x) > 22.5f || fabsf(y) > 20.5f) ? mul(c, 0.8f) : v3(1.5f, 1.6f, 1.75f);
	} else if (w->wkind == 3) { /* cupboard doors */
		float u = p.x / 30 - floorf(p.x / 30), e = minf(u, 1 - u) * 30;
		if (e < 0.4f) g *= 0.35f; else if (e > 4 && e < 4.6f) g *= 0.75f;
		if (fabsf(e - 2.5f) < 0.5f && fabsf(p.y - 18) < 4) return v3(.55f, .55f, .55f);
	}
	return mul(c, g);
}
static void thing(const Obj *o, V p, V n, Surf *s) {
	V c = v3(o->col[0], o->col[1], o->col[2]); int sd = (int)o->seed;
	s->alb = c; s->gloss = 0.15f; s->rough = 0.35f; s->trans = 0; s->hgt = 0;
	switch ((int)o->mat) {
	case 1: s->alb = mul(c, 0.9f + 0.2f * fbm3(mul(p, 2.5f), 3, sd)); s->hgt = 0.015f * noise3(v3(p.x * 9, p.y * 4, p.z * 4), sd) + .004f * noise3(mul(p, 20), sd); s->trans = 0.5f; s->gloss = 0.06f;
		if (o->shape == 1) { s->alb = mulv(c, v3(1.02f, .88f, .86f)); s->gloss = 0.2f; } break; /* nail */
	case 3: s->gloss = 0.8f; s->rough = 0.15f; if (sd % 3 == 0 && fabsf(p.y - 0.4f * o->h[1]) < 0.3f) s->alb = mul(c, 0.4f); break;
	case 4: { float f = noise3(v3(p.x * 3, p.y * 14, p.z * 3), sd), q = sinf(p.x * 1.1f + 2.5f * noise3(mul(p, .5f), sd));
		s->alb = mul(lerpv(c, mul(c, 0.45f), (sd % 2) * smooth(0.2f, 0.6f, q)), 0.65f + 0.6f * f); s->hgt = 0.12f * f; s->gloss = 0; break; }
	case 5: if (p.y > 0) { float r = p.z / 0.7f; int i = (int)floorf(r); float f = r - i;
		if (f > 0.3f && f < 0.7f && i % 4 && fabsf(p.x) < o->h[0] * 0.7f && noise2(p.x * 4, i * 5.3f, sd) > 0.35f) s->alb = mul(c, 0.35f); }
		if (fabsf(n.y) < 0.5f && p.x > -o->h[0] + .3f) s->alb = mul(v3(.85f, .83f, .76f), 0.8f + 0.2f * noise2(p.y * 30, 1, sd)); break;
	case 6: wood(p.x, p.y + p.z, c, mul(c, 0.6f), sd, s, 60); break;
	case 7: s->gloss = 1.2f; s->rough = 0.12f; s->alb = mul(c, 0.6f); break;
	case 9: { float f = fbm3(v3(p.x * 3, p.y * .5f, p.z * 3), 2, sd); s->alb = lerpv(c, mulv(c, v3(1.1f, 1.5f, .6f)), smooth(0.45f, 0.7f, f));
		Spot q = spots(p.x + p.z, p.y, .35f, .5f, .01f, .03f, 1, 0, sd); if (q.d < 1) s->alb = mul(s->alb, 1.2f); s->gloss = 0.5f; s->rough = 0.22f; break; }
	case 10: { float f = fbm3(mul(p, 2), 4, sd); s->alb = mul(lerpv(c, mul(c, 0.5f), smooth(-.2f, .9f, n.y)), 0.7f + 0.6f * f); s->hgt = 0.12f * f;
		float h = noise3(mul(p, 4), sd + 3); if (n.y < .3f && h > .72f) { s->alb = mul(s->alb, .6f); s->hgt -= .1f; } s->gloss = 0.03f; break; }
	case 11: { Spot q = spots(p.x + .6f * p.z, p.y + .8f * p.z, .3f, .8f, .04f, .13f, 1, 0, sd); if (q.d < 1) { s->alb = mul(c, .55f + .4f * q.d); s->hgt -= .1f * (1 - q.d); } s->gloss = 0; break; } /* sponge */
	default: s->hgt = 0.01f * noise3(mul(p, 6), sd);
	}
}
