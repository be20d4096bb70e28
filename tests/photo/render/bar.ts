import { type Canvas, canvas, type Linear, lay, shade } from './canvas.ts';
import { chance, smoothNoise } from './chance.ts';
import { type Flaw, paintFlaw } from './flaws.ts';

/** How the colours of a bar are laid out; `edge` is how wide each border is, as a fraction of the bar's width. */
export type Design = {
  readonly pattern: 'plain' | 'halves' | 'layers' | 'swirl';
  readonly edge: number;
};

/** Paints the face of a bar, `width` pixels wide, in the given linear colours. */
export function paintBar(
  { pattern, edge }: Design,
  colours: readonly Linear[],
  flaws: readonly Flaw[],
  size: { width: number; height: number; seed: number },
): Canvas {
  const { width, height, seed } = size;
  const face = canvas(width, height);
  const wave = smoothNoise(seed);
  const dice = chance(seed);
  const phase = dice.between(0, 6);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const pixel = y * width + x;
      lay(face, pixel, colours[0]!, 1);
      // A swirl, a half or a layer is where a smooth height passes zero; its slope makes the border `edge` wide.
      const wavy = 0.05 * wave((x / width) * 5, (y / width) * 5);
      const over =
        pattern === 'plain'
          ? -1
          : pattern === 'halves'
            ? x / width - 0.5 + wavy
            : pattern === 'layers'
              ? (y - height * 0.45) / width + wavy * 0.6
              : 0.16 *
                Math.sin(
                  (x / width) * 9 +
                    2.2 * Math.sin((y / width) * 4 + phase) +
                    2 * wave((x / width) * 2, (y / width) * 2),
                );
      if (colours[1]) lay(face, pixel, colours[1], 1 / (1 + Math.exp((-4.4 * over) / Math.max(edge, 0.001))));
      // No soap is quite even: broad mottling and a fine grain.
      shade(face, pixel, 1 + 0.018 * wave((x / width) * 7 + 9, (y / width) * 7) + 0.012 * dice.normal());
    }
  }
  for (const flaw of flaws) paintFlaw(face, flaw, dice);
  return face;
}
