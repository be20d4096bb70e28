/* Gaussian blur of an interleaved image [h, w, c], in place; edges repeat. */
void blur(float *im, int w, int h, int c, float sigma) {
	int r = (int)ceilf(2.6f * sigma), rl = w * c;
	float *k = malloc(sizeof(float) * (2 * r + 1)), t = 0, *tmp = malloc(sizeof(float) * w * h * c);
	for (int i = -r; i <= r; i++) t += k[i + r] = expf(-0.5f * i * i / (sigma * sigma));
	for (int i = 0; i <= 2 * r; i++) k[i] /= t;
	memset(tmp, 0, sizeof(float) * rl * h);
	for (int y = 0; y < h; y++) for (int i = -r; i <= r; i++) {
		int yy = y + i < 0 ? 0 : y + i >= h ? h - 1 : y + i; float g = k[i + r]; float *a = tmp + (size_t)y * rl, *b = im + (size_t)yy * rl;
		for (int x = 0; x < rl; x++) a[x] += g * b[x];
	}
	float *pad = malloc(sizeof(float) * (w + 2 * r) * c);
	for (int y = 0; y < h; y++) {
		float *a = im + (size_t)y * rl, *b = tmp + (size_t)y * rl;
		for (int x = -r; x < w + r; x++) { int xx = x < 0 ? 0 : x >= w ? w - 1 : x; for (int q = 0; q < c; q++) pad[(x + r) * c + q] = b[xx * c + q]; }
		memset(a, 0, sizeof(float) * rl);
		for (int i = 0; i <= 2 * r; i++) { float g = k[i], *p = pad + i * c; for (int x = 0; x < rl; x++) a[x] += g * p[x]; }
	}
	free(k); free(tmp); free(pad);
}
