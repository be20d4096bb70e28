import { type Canvas, canvas, type Linear, lay, shade } from './canvas.ts';
import { chance, smoothNoise } from './chance.ts';
import { type Flaw, paintFlaw } from './flaws.ts';

/** What is meant to be in the bar and may be taken for a flaw: thin swirls like veins, a fade, pencil lines, seeds. */
export type Deceit = 'veined' | 'ombre' | 'pencil-lines' | 'seeds';
export const DECEITS = ['veined', 'ombre', 'pencil-lines', 'seeds'] as const satisfies readonly Deceit[];

/** How the colours of a bar are laid out; `edge` is how wide each border is, as a fraction of the bar's width. */
export type Design = {
  readonly pattern: 'plain' | 'halves' | 'layers' | 'swirl' | Deceit;
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
      const [u, v] = [x / width, y / width];
      const swirl = 0.16 * Math.sin(u * 9 + 2.2 * Math.sin(v * 4 + phase) + 2 * wave(u * 2, v * 2));
      const over = overBorder(pattern, { u, v, half: (height * 0.45) / width, wavy, swirl, phase });
      // A fade goes from one colour to the other over the whole bar.
      const border = pattern === 'ombre' ? 0.9 : Math.max(edge, 0.001);
      if (colours[1]) lay(face, pixel, colours[1], 1 / (1 + Math.exp((-4.4 * over) / border)));
      // No soap is quite even: broad mottling and a fine grain.
      shade(face, pixel, 1 + 0.018 * wave((x / width) * 7 + 9, (y / width) * 7) + 0.012 * dice.normal());
    }
  }
  for (const flaw of flaws) paintFlaw(face, flaw, dice);
  return face;
}

type Where = {
  readonly u: number;
  readonly v: number;
  readonly half: number;
  readonly wavy: number;
  readonly swirl: number;
  readonly phase: number;
};

/** How far a place is over the border to the second colour, in bar widths; under it where negative. */
function overBorder(pattern: Design['pattern'], { u, v, half, wavy, swirl, phase }: Where): number {
  switch (pattern) {
    case 'plain':
      return -1;
    case 'halves':
      return u - 0.5 + wavy;
    case 'layers':
    case 'ombre':
      return v - half + wavy * 0.6;
    case 'swirl':
      return swirl;
    case 'veined':
      return 0.014 - Math.abs(swirl) * 0.35;
    case 'pencil-lines':
      return 0.006 - Math.abs(((v + wavy * 0.5 + phase) % 0.22) - 0.11);
    case 'seeds': {
      // One seed to a cell of a grid, put aside by its cell's own numbers.
      const [column, row] = [Math.floor(u * 14), Math.floor(v * 14)];
      const [across, down] = [hashed(column, row, phase), hashed(row, column, phase + 1)];
      if (hashed(column + 7, row + 3, phase) < 0.45) return -1;
      const [dx, dy] = [u * 14 - column - 0.25 - across / 2, v * 14 - row - 0.25 - down / 2];
      return (0.13 - Math.hypot(dx, dy * 1.6)) / 14;
    }
  }
}

/** A number 0 to 1 that is always the same for the same cell. */
const hashed = (a: number, b: number, c: number): number => {
  const value = Math.sin(a * 12.9898 + b * 78.233 + c * 37.719) * 43_758.5453;
  return value - Math.floor(value);
};
