import { FAINT, INK, PAPER } from '../sheet.ts';
import type { Area, Paper } from './paper.ts';

/** The loaf cut across: its portions by volume, and where a ring of gel may stand. */
export type LoafSection = {
  /** Width over height of the loaf, whole. */
  readonly aspect: number;
  readonly round: boolean;
  /** From the bottom up: share of the volume, 0 to 1, and the cured colour, `#rrggbb`. */
  readonly layers: readonly { readonly share: number; readonly hex: string }[];
  /** Distance of the ring from the side as a share of half the width; undefined where none is expected. */
  readonly ring: number | undefined;
};

/** The tallest a section is drawn beside its width. */
const TALLEST = 1.15;

/**
 * Draws the section `width` wide: bands as high as their share, the ring dashed in light and dark so that it shows on
 * any colour. Returns the y under it.
 */
export function drawLoaf(paper: Paper, loaf: LoafSection, { x, y, width }: Area): number {
  const height = width * Math.min(TALLEST, 1 / loaf.aspect);
  let top = y + height;
  for (const { share, hex } of loaf.layers) {
    top -= share * height;
    paper.box(x, top, width, share * height, hex);
  }
  const radius = loaf.round ? Math.min(width, height) / 8 : 4;
  paper.box(x, y, width, height, 'none', { radius: loaf.round ? 0 : 2, edge: INK });
  if (loaf.ring !== undefined) drawRing(paper, { x, y, width, height, inset: loaf.ring, radius });
  return y + height;
}

/** The gelled core keeps the section's own shape. */
function drawRing(
  paper: Paper,
  {
    x,
    y,
    width,
    height,
    inset,
    radius,
  }: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly inset: number;
    readonly radius: number;
  },
): void {
  const [dx, dy] = [(inset * width) / 2, (inset * height) / 2];
  const [left, top, right, bottom] = [x + dx, y + dy, x + width - dx, y + height - dy];
  const r = Math.min(radius, (right - left) / 2, (bottom - top) / 2);
  const d = [
    `M${left + r} ${top}`,
    `H${right - r}`,
    `Q${right} ${top} ${right} ${top + r}`,
    `V${bottom - r}`,
    `Q${right} ${bottom} ${right - r} ${bottom}`,
    `H${left + r}`,
    `Q${left} ${bottom} ${left} ${bottom - r}`,
    `V${top + r}`,
    `Q${left} ${top} ${left + r} ${top}`,
    'Z',
  ].join(' ');
  paper.path(d, { stroke: PAPER, width: 3 });
  paper.path(d, { stroke: INK, width: 1.4, dash: [5, 4] });
}

/** A patch of a portion's colour with a dark edge: pale colours show on paper, too. */
export const patch = (paper: Paper, x: number, y: number, size: number, hex: string): void => {
  paper.box(x, y, size, size, hex, { radius: 3, edge: FAINT });
};
