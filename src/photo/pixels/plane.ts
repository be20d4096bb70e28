/** One channel of a picture: rows of values, top row first. */
export type Plane = { readonly width: number; readonly height: number; readonly data: Float32Array };

/** Yes or no at each pixel: 1 or 0. */
export type Mask = { readonly width: number; readonly height: number; readonly data: Uint8Array };

/** CIELAB (D65) in three planes of one size. */
export type LabPlanes = { readonly l: Plane; readonly a: Plane; readonly b: Plane };

export const plane = (width: number, height: number): Plane => ({
  width,
  height,
  data: new Float32Array(width * height),
});

export const mask = (width: number, height: number): Mask => ({
  width,
  height,
  data: new Uint8Array(width * height),
});

/** The mask of the pixels whose index passes `test`. */
export function maskWhere(width: number, height: number, test: (index: number) => boolean): Mask {
  const made = mask(width, height);
  for (let i = 0; i < made.data.length; i++) if (test(i)) made.data[i] = 1;
  return made;
}

/** How many pixels of a mask are set. */
export function areaOf({ data }: Mask): number {
  let area = 0;
  for (let i = 0; i < data.length; i++) area += data[i]!;
  return area;
}

/** Half the size, each pixel the mean of four. An odd last row or column is dropped. */
export function halved({ width, height, data }: Plane): Plane {
  const half = plane(width >> 1, height >> 1);
  for (let y = 0; y < half.height; y++) {
    for (let x = 0; x < half.width; x++) {
      const i = 2 * y * width + 2 * x;
      half.data[y * half.width + x] = (data[i]! + data[i + 1]! + data[i + width]! + data[i + width + 1]!) / 4;
    }
  }
  return half;
}

/** The value between pixels by bilinear interpolation; outside, the nearest edge's. */
export function sample({ width, height, data }: Plane, x: number, y: number): number {
  const cx = Math.min(Math.max(x, 0), width - 1.001);
  const cy = Math.min(Math.max(y, 0), height - 1.001);
  const x0 = Math.floor(cx);
  const y0 = Math.floor(cy);
  const fx = cx - x0;
  const fy = cy - y0;
  const i = y0 * width + x0;
  const top = data[i]! + (data[i + 1]! - data[i]!) * fx;
  const bottom = data[i + width]! + (data[i + width + 1]! - data[i + width]!) * fx;
  return top + (bottom - top) * fy;
}
