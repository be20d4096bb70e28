import { FAINT, INK } from '../sheet.ts';
import { widthOf } from '../type.ts';
import { drawHeatCurve, type HeatCurve } from './heat-curve.ts';
import { drawLoaf, type LoafSection, patch } from './loaf.ts';
import { type Area, type Paper, tick } from './paper.ts';

export type CardSection = { readonly title: string; readonly rows: readonly string[] };

/** Everything on a batch card, already in the reader's words. */
export type BatchCard = {
  readonly title: string;
  /** Lye, water and what else decides the pour: the number, and the same in the other unit. */
  readonly numbers: readonly {
    readonly label: string;
    readonly value: string;
    readonly other?: string | undefined;
  }[];
  /** What else is weighed. */
  readonly weights: readonly { readonly label: string; readonly value: string }[];
  /** In the order of the loaf from below. The rows are ticked off; `fact` tells how the portion comes out. */
  readonly portions: readonly {
    readonly title: string;
    readonly hex: string;
    readonly rows: readonly string[];
    readonly fact: string;
  }[];
  readonly loaf: LoafSection & { readonly title: string; readonly note: string };
  readonly heat: HeatCurve & { readonly title: string; readonly note: string };
  /** What may go wrong with this very batch, the worst first: one or two. */
  readonly warnings: readonly string[];
  /** What keeps one from harm, in a line or two. */
  readonly care: string;
};

/** Sizes of a card in CSS pixels. */
export type Sizes = {
  readonly body: number;
  readonly small: number;
  readonly title: number;
  readonly number: number;
  /** Whether there is room to say how each portion comes out. */
  readonly facts: boolean;
};

/** Columns of large numbers with their label above and the other unit below. */
export function drawNumbers(
  paper: Paper,
  numbers: BatchCard['numbers'],
  { x, y, width }: Area,
  { small, number }: Sizes,
): number {
  const gap = 12;
  const column = (width - gap) / 2;
  let top = y;
  for (let at = 0; at < numbers.length; at += 2) {
    const bottoms = numbers.slice(at, at + 2).map(({ label, value, other }, place) => {
      const left = x + place * (column + gap);
      const size = at === 0 ? number : number * 0.72;
      let under = paper.paragraph(label, left, top, column, { size: small, colour: FAINT });
      under = paper.paragraph(value, left, under - 2, column, {
        size: Math.max(small, fitting(value, size, column)),
        weight: 'bold',
      });
      return other ? paper.paragraph(other, left, under - 2, column, { size: small, colour: FAINT }) : under;
    });
    top = Math.max(...bottoms) + 5;
  }
  return top;
}

const fitting = (value: string, size: number, width: number): number =>
  Math.min(size, (size * width) / Math.max(1, widthOf(value, size, 'bold')));

/** What is weighed, in two columns, each with a box to tick. */
export function drawWeights(
  paper: Paper,
  weights: BatchCard['weights'],
  { x, y, width }: Area,
  { body }: Sizes,
): number {
  const gap = 14;
  const column = (width - gap) / 2;
  let top = y;
  for (let at = 0; at < weights.length; at += 2) {
    const bottoms = weights.slice(at, at + 2).map(({ label, value }, place) => {
      const left = x + place * (column + gap);
      const wide = widthOf(value, body, 'bold');
      tick(paper, left, top + 2, body * 0.9, INK);
      paper.text(value, left + column, top + body, { size: body, weight: 'bold', anchor: 'end' });
      return paper.paragraph(label, left + body * 1.4, top, column - body * 1.4 - wide - 6, { size: body });
    });
    top = Math.max(...bottoms) + 3;
  }
  return top;
}

/** The portions, the top of the loaf first, each with the patch of its colour and its boxes to tick. */
export function drawPortions(
  paper: Paper,
  portions: BatchCard['portions'],
  { x, y, width }: Area,
  { body, small, facts }: Sizes,
): number {
  let top = y;
  for (const { title, hex, rows, fact } of [...portions].reverse()) {
    patch(paper, x, top + 1, body * 1.15, hex);
    top = paper.paragraph(title, x + body * 1.7, top, width - body * 1.7, { size: body, weight: 'bold' });
    for (const row of rows) {
      tick(paper, x, top + 2, small * 0.9, INK);
      top = paper.paragraph(row, x + small * 1.5, top, width - small * 1.5, { size: small });
    }
    if (facts || rows.length === 0)
      top = paper.paragraph(fact, x, top, width, { size: small, colour: FAINT });
    top += 5;
  }
  return top;
}

/** The section of the loaf on the left, its portions on the right. */
export function drawLoafAndPortions(
  paper: Paper,
  { loaf, portions }: Pick<BatchCard, 'loaf' | 'portions'>,
  { x, y, width }: Area,
  sizes: Sizes,
): number {
  const left = width * 0.3;
  const gap = 12;
  let under = drawLoaf(paper, loaf, { x, y: y + 3, width: left });
  under = paper.paragraph(loaf.note, x, under + 4, left, { size: sizes.small, colour: FAINT });
  const right = { x: x + left + gap, y, width: width - left - gap };
  return Math.max(under, drawPortions(paper, portions, right, sizes));
}

export function drawHeat(
  paper: Paper,
  { heat }: Pick<BatchCard, 'heat'>,
  { x, y, width, height }: Area & { readonly height: number },
  { small }: Sizes,
): number {
  const under = drawHeatCurve(paper, heat, { x, y, width, height, size: small });
  return paper.paragraph(heat.note, x, under + 2, width, { size: small, colour: FAINT });
}

export function drawHeading(paper: Paper, title: string, { x, y, width }: Area, { body }: Sizes): number {
  const under = paper.paragraph(title, x, y, width, { size: body + 1, weight: 'bold' });
  paper.line(x, under, x + width, under, INK, 1.2);
  return under + 4;
}

/** In a heavy frame: found at a glance, also on a grey printout. */
export function drawCare(
  paper: Paper,
  { warnings, rows }: { readonly warnings: readonly string[]; readonly rows: readonly string[] },
  { x, y, width }: Area,
  { small }: Sizes,
): number {
  let under = y + 6;
  for (const row of warnings)
    under = paper.paragraph(row, x + 8, under, width - 16, { size: small, weight: 'bold' }) + 2;
  for (const row of rows) under = paper.paragraph(row, x + 8, under, width - 16, { size: small }) + 1;
  for (const offset of [0, 1])
    paper.box(x + offset, y + offset, width - 2 * offset, under + 5 - y - 2 * offset, 'none', {
      radius: 6 - offset,
      edge: INK,
    });
  return under + 5;
}
