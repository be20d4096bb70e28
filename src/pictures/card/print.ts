import { INK, Sheet } from '../sheet.ts';
import type { Paper } from './paper.ts';
import {
  type BatchCard,
  drawCare,
  drawHeading,
  drawHeat,
  drawLoafAndPortions,
  drawNumbers,
  drawWeights,
  type Sizes,
} from './parts.ts';
import { type PageSize, PdfSheet } from './pdf-sheet.ts';
import { drawSteps, type Timeline } from './timeline.ts';
import { unbroken } from './unbroken.ts';

/** What stands on the printed page: the card, the list of times, and every caution in full. */
export type PrintedCard = {
  readonly card: BatchCard;
  readonly steps: Timeline;
  readonly cautions: readonly string[];
  readonly size: PageSize;
};

const WIDTH = 760;
const GAP = 24;
const COLUMN = (WIDTH - GAP) / 2;
const SIZES: Sizes = { body: 14, small: 12, title: 25, number: 28, facts: true };
const STEP = 11.5;

/** Draws one page of A4 or Letter, whatever the plan: what is long is set smaller, never on a second page. Returns a PDF. */
export async function printBatchCard({
  card: written,
  steps: times,
  cautions,
  size,
}: PrintedCard): Promise<Uint8Array> {
  const printed = { card: unbroken(written), steps: unbroken(times), cautions: unbroken(cautions) };
  // Once to see how high it comes, once on the page.
  const height = drawPage(new Sheet(WIDTH), printed);
  const page = new PdfSheet(size, { width: WIDTH, height, title: written.title });
  drawPage(page, printed);
  return page.pdf();
}

/** Card left, times right, cautions below; returns how high it is. */
export function drawPage(paper: Paper, { card, steps, cautions }: Omit<PrintedCard, 'size'>): number {
  const top = paper.paragraph(card.title, 0, 0, WIDTH, { size: SIZES.title, weight: 'bold' });
  paper.line(0, top + 2, WIDTH, top + 2, INK, 2);
  const left = (y: number) => ({ x: 0, y, width: COLUMN });
  let y = drawNumbers(paper, card.numbers, left(top + 12), SIZES);
  y = drawWeights(paper, card.weights, left(y + 4), SIZES);
  y = drawHeading(paper, card.loaf.title, left(y + 8), SIZES);
  y = drawLoafAndPortions(paper, card, left(y + 4), SIZES);
  y = drawHeading(paper, card.heat.title, left(y + 6), SIZES);
  y = drawHeat(paper, card, { ...left(y + 4), height: 130 }, SIZES);
  const right = { x: COLUMN + GAP, width: COLUMN };
  let under = drawHeading(paper, steps.title, { ...right, y: top + 12 }, SIZES);
  under = drawSteps(paper, steps.rows, { ...right, y: under + 4 }, STEP);
  const care = { warnings: card.warnings, rows: cautions };
  return drawCare(paper, care, { x: 0, y: Math.max(y, under) + 12, width: WIDTH }, SIZES);
}
