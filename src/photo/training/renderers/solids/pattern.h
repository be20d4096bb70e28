/* The soap itself: how its colours are laid out, before any flaw or ornament. */
static V colour(int i) {
	int n = (int)S->ncol; i = ((i % n) + n) % n;
	return v3(S->col[3 * i], S->col[3 * i + 1], S->col[3 * i + 2]);
}
/* Height of the border between layer i and i + 1 at (x, z). */
static float border(int i, float x, float z) {
	int n = (int)S->ncol, s = (int)S->seed + 31 * i;
	float b = -S->h[1] + 2 * S->h[1] * (i + 1) / n * (0.9f + 0.2f * h01(i, 1, 2, s));
	return b + S->warp * (noise2(x * S->freq, z * 0.3f + i * 9, s) - 0.5f) + 0.04f * noise2(x * 4, z * 2, s + 2);
}
/* Band number as a real: its whole part picks the colour, its fraction tells the way to the border. */
static float band(V p) {
	int s = (int)S->seed; float f = S->freq, w = S->warp;
	switch ((int)S->pattern) {
	case 2: { /* hanger or feather swirl: bent bands */
		float c = cosf(S->angle), n = sinf(S->angle), a = p.x * c + p.y * n, b = -p.x * n + p.y * c;
		float q = fbm3(v3(p.x * 0.35f, p.y * 0.35f, p.z * 0.25f), 2, s);
		return a * f + w * (sinf(b * 1.1f + 5 * q) + 2.5f * q) + 0.12f * noise2(a * 5, b * 5, s + 8);
	}
	case 3: { /* in-the-pot swirl: folded noise */
		V q = v3(p.x * f * 0.45f, p.y * f * 0.45f, p.z * f * 0.3f);
		V d = v3(noise3(q, s + 1), noise3(add(q, v3(7, 3, 1)), s + 2), noise3(add(q, v3(1, 9, 4)), s + 3));
		return 3.2f * fbm3(add(q, mul(d, 1.5f + w)), 3, s + 4);
	}
	case 5: { /* drop swirl: rings round sunk drops */
		float cx = S->h[0] * S->pa, cy = S->h[1] * S->pb;
		float dx = p.x - cx, dy = (p.y - cy) * (p.y > cy ? 0.75f : 1.4f);
		return sqrtf(dx * dx + dy * dy) * f * 1.3f + w * 1.6f * fbm3(mul(p, 0.6f), 2, s) + 0.1f * noise2(p.x * 5, p.y * 5, s);
	}
	case 6: { /* column or tiger stripe */
		return p.y * f + w * 0.7f * fabsf(p.x) * f * 0.5f + w * noise2(p.x * 0.7f, p.y * 0.7f + p.z * .3f, s) * 1.5f;
	}
	}
	return 0;
}
static V soap_colour(V p) {
	int k = (int)S->pattern, n = (int)S->ncol;
	if (k == 1) {
		int i = 0;
		while (i < n - 1 && p.y > border(i, p.x, p.z)) i++;
		return colour(i);
	}
	if (k == 4) { /* ombre */
		float t = clampf(0.5f + 0.5f * p.y / S->h[1] + 0.12f * (noise3(mul(p, 0.7f), (int)S->seed) - 0.5f), 0, 0.999f) * (n - 1);
		int i = (int)t;
		return lerpv(colour(i), colour(i + 1), t - i);
	}
	if (k >= 2 && n > 1) {
		float b = band(p); int i = (int)floorf(b); float t = b - i, e = 0.03f + 0.1f * S->pa * S->pa;
		float fine = noise2(b * 9, (p.x + 0.6f * p.y) * 0.5f, (int)S->seed + 19); /* thin half-mixed trails along the band */
		V c = lerpv(colour(i), colour(i + (fine > 0.5f ? 1 : -1)), 0.55f * smooth(0.22f, 0.42f, fabsf(fine - 0.5f)));
		return t > 1 - e ? lerpv(c, colour(i + 1), smooth(1 - e, 1, t)) : c;
	}
	return colour(0);
}
/* Way (cm, about) past a colour border into the paler side, and the dye's colour. 9 if there is none. */
static float past_border(V p, V *dye) {
	int k = (int)S->pattern, n = (int)S->ncol;
	float best = 9;
	if (k == 1)
		for (int i = 0; i < n - 1; i++) {
			V a = colour(i), b = colour(i + 1);
			float d = p.y - border(i, p.x, p.z), la = a.x + a.y + a.z, lb = b.x + b.y + b.z;
			if (la > lb) d = -d;
			if (d > 0 && d < best) { best = d; *dye = la > lb ? b : a; }
		}
	else if (k == 2 || k == 3 || k == 5 || k == 6) {
		float e = 0.05f, b = band(p); int i = (int)floorf(b); float t = b - i;
		float gx = (band(v3(p.x + e, p.y, p.z)) - b) / e, gy = (band(v3(p.x, p.y + e, p.z)) - b) / e;
		float g = maxf(sqrtf(gx * gx + gy * gy), 0.35f);
		V me = colour(i), lo = colour(i - 1), hi = colour(i + 1);
		float lm = me.x + me.y + me.z;
		if (lo.x + lo.y + lo.z < lm - 0.15f) { best = t / g; *dye = lo; }
		if (hi.x + hi.y + hi.z < lm - 0.15f && (1 - t) / g < best) { best = (1 - t) / g; *dye = hi; }
	}
	return best;
}
static void base_soap(V p, V loc, int face, float u, float v, Surf *s, int bar) {
	int sd = (int)S->seed;
	s->alb = soap_colour(p);
	float m = fbm3(mul(p, 1.1f), 3, sd + 40) - 0.5f; /* natural mottling */
	float m2 = noise3(mul(p, 7), sd + 44) - 0.5f;
	s->alb = mul(s->alb, 1 + S->mottle * (1.4f * m + 0.35f * m2));
	s->alb = mulv(s->alb, v3(1 + 0.06f * m, 1, 1 - 0.08f * m));
	s->gloss = S->gloss; s->rough = 0.38f; s->trans = S->trans; s->hgt = 0;
	if (face == CUT) { /* planed skin: all but flat, faint wire grain */
		s->hgt += 0.004f * noise2(u * 9, v * 1.5f, sd + 50 + bar) + 0.010f * noise2(u * 1.3f, v * 1.3f, sd + 51 + bar)
				+ 0.0025f * noise2(u * 30, v * 30, sd + 52 + bar);
	} else if (face == TOP) {
		s->hgt += 0.03f * fbm2(u * 1.5f, v * 1.5f, 3, sd + 53) * (1 + 2 * (S->topstyle > 0.5f)) + 0.003f * noise2(u * 25, v * 25, sd + 54);
		if (S->mica > 0.02f) {
			float k = smooth(1 - S->mica * 0.75f, 1.15f - S->mica * .7f, fbm2(u * 1.2f + 3 * noise2(u * .5f, v * .5f, sd + 4), v * 0.9f, 3, sd + 55)) * 0.85f;
			s->alb = lerpv(s->alb, v3(S->micacol[0], S->micacol[1], S->micacol[2]), k);
			s->gloss += k * 0.5f * (noise2(u * 60, v * 60, sd) > 0.5f);
		}
	} else {
		s->hgt += 0.012f * noise2(u * 0.9f, v * 0.9f, sd + 56 + bar) + 0.002f * noise2(u * 18, v * 18, sd + 57);
		s->gloss *= 1.25f; s->rough = 0.3f;
	}
}
