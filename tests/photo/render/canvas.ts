/** A colour as linear light, 0 to 1 in each of red, green and blue. */
export type Linear = readonly [number, number, number];

/** A picture in linear light, interleaved. */
export type Canvas = { readonly width: number; readonly height: number; readonly data: Float32Array };

export const canvas = (width: number, height: number): Canvas => ({
  width,
  height,
  data: new Float32Array(width * height * 3),
});

/** Linear light of `#rrggbb` (IEC 61966-2-1). */
export const linear = (hex: string): Linear =>
  [1, 3, 5].map(at => {
    const v = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
  }) as unknown as Linear;

/** Linear light back to 0 to 255. */
export const encoded = (v: number): number =>
  255 * (v <= 0.0031308 ? 12.92 * Math.max(0, v) : 1.055 * Math.min(1, v) ** (1 / 2.4) - 0.055);

/** Lays `colour` over a pixel with the given opacity. */
export function lay({ data }: Canvas, pixel: number, colour: Linear, opacity: number): void {
  for (let c = 0; c < 3; c++) data[3 * pixel + c]! += (colour[c]! - data[3 * pixel + c]!) * opacity;
}

/** Multiplies the light of a pixel. */
export function shade({ data }: Canvas, pixel: number, by: number): void {
  for (let c = 0; c < 3; c++) data[3 * pixel + c]! *= by;
}

/** Calls `paint` for each pixel within `reach` of a place, with its distance in pixels. */
export function around(
  { width, height }: Canvas,
  x: number,
  y: number,
  reach: number,
  paint: (pixel: number, distance: number, dx: number, dy: number) => void,
): void {
  for (let py = Math.max(0, Math.floor(y - reach)); py <= Math.min(height - 1, Math.ceil(y + reach)); py++) {
    for (let px = Math.max(0, Math.floor(x - reach)); px <= Math.min(width - 1, Math.ceil(x + reach)); px++) {
      const distance = Math.hypot(px + 0.5 - x, py + 0.5 - y);
      if (distance <= reach) paint(py * width + px, distance, px + 0.5 - x, py + 0.5 - y);
    }
  }
}
