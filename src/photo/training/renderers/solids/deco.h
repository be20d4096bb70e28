/* Ornaments and deceivers: things that are no flaw but may look like one. */
static void tint(Surf *s, V c, float k) { s->alb = lerpv(s->alb, c, clampf(k, 0, 1)); }
static void decorate(const Deco *d, V p, int face, float u, float v, Surf *s, int bar) {
	int k = (int)d->type, sd = (int)d->seed + 17 * bar + 3 * face;
	if (k == 0) return;
	float a = d->amount, z = d->size;
	V c = v3(d->col[0], d->col[1], d->col[2]);
	Spot q;
	switch (k) {
	case 1: /* poppy seed: small, all alike, kidney round */
		q = spots(u, v, 0.33f, 0.1f + 0.5f * a, 0.035f, 0.05f, 1.25f, 0.6f, sd);
		tint(s, v3(.05f, .05f, .07f), 0.93f * smooth(1.15f, 0.85f, q.d));
		if (q.d < 1) s->hgt += 0.02f * (1 - q.d * q.d);
		break;
	case 2: /* oats: pale angular flakes */
		q = spots(u, v, 0.75f, 0.15f + 0.6f * a, 0.1f, 0.24f, 1.7f, 2.0f * noise2(u * .4f, v * .4f, sd) * 3, sd);
		{ float e = q.d + 0.5f * (noise2(u * 9, v * 9, sd) - 0.5f);
		  tint(s, lerpv(v3(.80f, .66f, .44f), v3(.56f, .40f, .22f), rnd(q.id, 5)), 0.8f * smooth(1.0f, 0.8f, e));
		  tint(s, v3(.36f, .25f, .13f), 0.45f * smooth(0.14f, 0.05f, fabsf(e - 0.9f))); }
		break;
	case 3: /* coffee grounds: many brown grains of mixed size */
		for (int i = 0; i < 2; i++) {
			q = spots(u, v, i ? 0.2f : 0.4f, 0.25f + 0.5f * a, 0.02f, i ? 0.045f : 0.09f, 1.3f, i, sd + i * 91);
			float e = q.d + 0.7f * (noise2(u * 24, v * 24, sd) - 0.5f);
			tint(s, v3(.11f, .06f, .03f), 0.9f * smooth(1.05f, 0.8f, e));
		}
		break;
	case 4: { /* mica or cocoa line between layers */
		float b = fabsf(p.y - S->h[1] * (0.3f * d->size) - 0.35f * (noise2(p.x * 0.6f, p.z * .3f, (int)d->seed) - 0.5f));
		float w = (0.02f + 0.06f * a) * (0.6f + 0.8f * noise2(p.x * 1.5f, p.z, (int)d->seed + 1));
		if (face != TOP) { tint(s, c, 0.85f * smooth(w, w * 0.5f, b)); s->gloss += 0.3f * smooth(w, 0, b); }
		break; }
	case 5: { /* glitter */
		q = spots(u, v, 0.14f, 0.15f + 0.5f * a, 0.008f, 0.02f, 1, 0, sd);
		if (q.d < 1) { float f = 0.3f + 0.7f * rnd(q.id, 6); tint(s, lerpv(c, v3(1, 1, 1), f), f); s->gloss += 1.5f * f; }
		break; }
	case 6: { /* stamp pressed into the face */
		if (face == SIDE || bar % 3 == 2) break;
		float x = u / z, y = v / z, r = sqrtf(x * x + y * y), g = 1, t = atan2f(y, x);
		g = minf(g, fabsf(r - 1) - 0.05f);
		int m = (int)d->seed % 4;
		if (m == 0) g = minf(g, fabsf(r - 0.62f * (0.6f + 0.4f * cosf(5 * t))) - 0.04f); /* flower */
		else if (m == 1) { g = minf(g, maxf(fabsf(x - .12f * sinf(y * 3)) - 0.04f, r - 0.75f)); /* twig */
			float l = fabsf(fmodf(y + 4 - fabsf(x) * 0.9f, 0.3f) - 0.15f); g = minf(g, maxf(l - 0.05f, maxf(fabsf(x) - 0.42f * (1 - fabsf(y)), r - 0.8f))); }
		else if (m == 2) g = minf(g, maxf(fabsf(fabsf(x) + fabsf(y) - 0.55f) - 0.05f, r - 0.9f));
		else g = minf(g, fabsf(maxf(fabsf(x + .1f) * 0.87f + y * 0.5f, -y) - 0.35f) - 0.045f);
		s->hgt -= 0.07f * smooth(0.05f, -0.03f, g); s->alb = mul(s->alb, 1 - 0.10f * smooth(0.04f, -0.02f, g));
		break; }
	case 7: /* dew */
		for (int i = 0; i < 2; i++) {
			q = spots(u, v, i ? 0.3f : 0.85f, 0.25f + 0.6f * a, 0.03f, i ? 0.07f : 0.2f, 1.1f, 1, sd + i * 5);
			if (q.d < 1) { s->hgt += 0.4f * q.r * (1 - q.d * q.d); s->alb = mul(s->alb, 0.8f + .18f * (1 - q.d) * (1 - q.d)); s->gloss = 3.5f; s->rough = 0.1f; }
		}
		break;
	case 8: /* petals and leaves on the top */
		if (face != TOP) break;
		for (int i = 0; i < 2; i++) {
			q = spots(u, v, 0.9f, 0.3f + 0.6f * a, 0.1f, 0.2f, 2.6f, 1.3f + 2.4f * i + 3 * noise2(u * .3f, v * .3f, sd + i), sd + i * 7);
			if (q.d < 1) { tint(s, mul(i ? c : lerpv(c, v3(.25f, .32f, .12f), 0.6f), 0.75f + 0.4f * rnd(q.id, 4) - .2f * fabsf(q.dx)), smooth(1, .9f, q.d)); s->hgt += 0.10f * (1 - q.d * q.d); s->gloss = 0.05f; }
		}
		break;
	case 9: { /* embeds: cut curls or rounds of other soap */
		q = spots(p.x, p.y, S->h[0] * 0.9f, 0.75f, 0.3f * z, 0.65f * z, 1.15f, 0.4f, (int)d->seed);
		if (face == CUT) { tint(s, mul(c, 0.94f + 0.12f * noise2(u * 3, v * 3, sd)), smooth(1.01f, 0.97f, q.d)); s->hgt -= 0.006f * smooth(0.06f, 0, fabsf(q.d - 1)); }
		break; }
	case 10: /* salt grains on the top */
		if (face != TOP) break;
		q = spots(u, v, 0.3f, 0.1f + 0.6f * a * noise2(u * .6f, v * .6f, sd + 8), 0.05f, 0.13f, 1.15f, 3 * noise2(u, v, sd), sd);
		{ float e = maxf(fabsf(q.dx), fabsf(q.dy));
		  if (e < 0.9f) { tint(s, v3(.93f, .93f, .95f), 0.75f); s->hgt += 0.1f * (1 - 0.5f * e); s->gloss = 0.9f; s->rough = .2f; } }
		break;
	case 11: /* crinkle-cut face */
		if (face == CUT) s->hgt += (0.05f + 0.06f * a) * sinf(u * (4.5f + 3 * z));
		break;
	case 12: { /* paper band round the middle */
		float w = 0.9f + 0.9f * a, e = fabsf(p.x - 0.5f * z) - w;
		if (e < 0) {
			s->alb = mul(c, 0.95f + 0.06f * noise2(p.x * 20, p.y * 20 + p.z * 20, sd)); s->gloss = 0.06f; s->hgt = 0.03f + .01f * noise2(u * 2, v * 2, sd);
			if (face == CUT) { /* lines that stand for writing */
				float row = (v + 3) / 0.34f; int r = (int)row; float f = row - r;
				if (r > 4 && r < 13 && r % 3 && f > 0.3f && f < 0.75f && fabsf(p.x - .5f * z) < w * (0.5f + 0.25f * h01(r, 1, 1, sd)) && noise2(p.x * 9, r * 7.7f, sd) > 0.36f)
					s->alb = mul(s->alb, 0.3f);
			}
		} else if (e < 0.06f) { s->alb = mul(s->alb, 0.75f); }
		break; }
	case 13: { /* thin coloured rim wrapped round a core */
		float e = minf(S->h[0] - fabsf(p.x), minf(S->h[1] - p.y, p.y + S->h[1])) - 0.25f - 0.35f * a;
		tint(s, c, smooth(0.03f, -0.03f, e));
		break; }
	case 14: { /* lint and a hair */
		float y = v - S->h[1] * 0.4f * z - 0.9f * sinf(u * 0.8f + z * 5) * a;
		if (fabsf(y) < 0.012f && fabsf(u) < 2.3f) tint(s, v3(.1f, .07f, .05f), 0.8f);
		q = spots(u, v, 1.2f, 0.5f, 0.02f, 0.05f, 5, 3 * noise2(u, v, sd), sd);
		tint(s, v3(.8f, .8f, .85f), 0.5f * smooth(1, .6f, q.d));
		break; }
	case 15: /* crumbs and soap dust left from planing */
		q = spots(u, v, 0.55f, 0.2f + 0.4f * a, 0.03f, 0.1f, 1.4f, 2, sd);
		{ float e = q.d + 0.8f * (noise2(u * 12, v * 12, sd) - 0.5f); if (e < 0.9f) { s->alb = mul(colour(0), 1.04f); s->hgt += 0.09f * (1 - e); } }
		break;
	}
}
