/* separable Gaussian blur of an image with c channels, edges held */
#pragma once
#include <stdlib.h>
#include <math.h>
void gauss(float *a, int h, int w, int c, float s) {
    int R = (int)(s * 3 + 1), n = w * c; float *k = malloc(sizeof(float) * (R + 1)), sum = 0, *t = malloc(sizeof(float) * (size_t)h * n);
    for (int i = 0; i <= R; i++) { k[i] = expf(-0.5f * i * i / (s * s)); sum += (i ? 2 : 1) * k[i]; }
    for (int i = 0; i <= R; i++) k[i] /= sum;
    for (int y = 0; y < h; y++) {
        float *q = t + (size_t)y * n; const float *m = a + (size_t)y * n;
        for (int x = 0; x < n; x++) q[x] = k[0] * m[x];
        for (int i = 1; i <= R; i++) {
            const float *u = a + (size_t)(y - i < 0 ? 0 : y - i) * n, *v = a + (size_t)(y + i >= h ? h - 1 : y + i) * n; float g = k[i];
            for (int x = 0; x < n; x++) q[x] += g * (u[x] + v[x]);
        }
    }
    float *row = malloc(sizeof(float) * (n + 2 * R * c));
    for (int y = 0; y < h; y++) {
        float *q = t + (size_t)y * n, *b = a + (size_t)y * n;
        for (int x = 0; x < n + 2 * R * c; x++) { int i = x - R * c; row[x] = i < 0 ? q[x % c] : i >= n ? q[n - c + x % c] : q[i]; }
        for (int x = 0; x < n; x++) b[x] = k[0] * row[x + R * c];
        for (int i = 1; i <= R; i++) { float g = k[i]; const float *u = row + (R - i) * c, *v = row + (R + i) * c; for (int x = 0; x < n; x++) b[x] += g * (u[x] + v[x]); }
    }
    free(row); free(t); free(k);
}
