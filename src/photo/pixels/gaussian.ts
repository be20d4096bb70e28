import { type Plane, plane } from './plane.ts';

function kernel(sigma: number): Float32Array {
  const radius = Math.max(1, Math.ceil(2.6 * sigma));
  const weights = Float32Array.from({ length: radius + 1 }, (_, i) =>
    Math.exp(-(i * i) / (2 * sigma * sigma)),
  );
  const total = weights.reduce((sum, weight, i) => sum + (i === 0 ? weight : 2 * weight), 0);
  return weights.map(weight => weight / total);
}

/** Gaussian blur of standard deviation `sigma` pixels, separable; beyond the edge the edge's value goes on. */
export function blurred(source: Plane, sigma: number): Plane {
  const weights = kernel(sigma);
  return acrossRows(alongRows(source, weights), weights);
}

function alongRows({ width, height, data }: Plane, weights: Float32Array): Plane {
  const radius = weights.length - 1;
  const out = plane(width, height);
  const row = new Float32Array(width + 2 * radius);
  for (let y = 0; y < height; y++) {
    const start = y * width;
    row.fill(data[start]!, 0, radius);
    row.set(data.subarray(start, start + width), radius);
    row.fill(data[start + width - 1]!, radius + width);
    for (let x = 0; x < width; x++) {
      const at = x + radius;
      let sum = row[at]! * weights[0]!;
      for (let k = 1; k <= radius; k++) sum += (row[at - k]! + row[at + k]!) * weights[k]!;
      out.data[start + x] = sum;
    }
  }
  return out;
}

function acrossRows({ width, height, data }: Plane, weights: Float32Array): Plane {
  const radius = weights.length - 1;
  const out = plane(width, height);
  for (let y = 0; y < height; y++) {
    const to = y * width;
    for (let x = 0; x < width; x++) out.data[to + x] = data[to + x]! * weights[0]!;
    for (let k = 1; k <= radius; k++) {
      const above = Math.max(0, y - k) * width;
      const below = Math.min(height - 1, y + k) * width;
      const weight = weights[k]!;
      for (let x = 0; x < width; x++) out.data[to + x]! += (data[above + x]! + data[below + x]!) * weight;
    }
  }
  return out;
}
