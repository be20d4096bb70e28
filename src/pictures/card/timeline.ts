import sharp from 'sharp';
import { INK, Sheet } from '../sheet.ts';
import { widthOf } from '../type.ts';
import { type Area, type Paper, tick } from './paper.ts';
import { PHONE_WIDTH } from './phone-card.ts';
import { unbroken } from './unbroken.ts';

/** What to do when, in order. */
export type Timeline = {
  readonly title: string;
  readonly rows: readonly { readonly when: string; readonly what: string }[];
};

const MARGIN = 14;
const SCALE = 2;
/** Shades that letters need: a list without colours is kept with an answer, and kept small. */
const SHADES = 8;

/** When on the left, said once, a box to tick, and what to do. Returns the y under it. */
export function drawSteps(paper: Paper, rows: Timeline['rows'], { x, y, width }: Area, size: number): number {
  const when = Math.min(width * 0.26, Math.max(...rows.map(row => widthOf(row.when, size, 'bold')))) + 8;
  let top = y;
  let last = '';
  for (const row of rows) {
    const said =
      row.when === last ? top : paper.paragraph(row.when, x, top, when - 6, { size, weight: 'bold' });
    last = row.when;
    tick(paper, x + when, top + 2, size * 0.9, INK);
    const left = x + when + size * 1.4;
    top = Math.max(said, paper.paragraph(row.what, left, top, x + width - left, { size })) + 3;
  }
  return top;
}

/** Draws the list of times as a picture of its own, as wide as a phone. Returns a PNG. */
export async function drawTimeline(written: Timeline): Promise<Uint8Array> {
  const { title, rows } = unbroken(written);
  const sheet = new Sheet(PHONE_WIDTH);
  const width = PHONE_WIDTH - 2 * MARGIN;
  const y = sheet.paragraph(title, MARGIN, MARGIN - 4, width, { size: 19, weight: 'bold' });
  sheet.line(MARGIN, y + 1, PHONE_WIDTH - MARGIN, y + 1, INK, 2);
  const under = drawSteps(sheet, rows, { x: MARGIN, y: y + 8, width }, 13);
  const png = sheet.png(under + MARGIN, SCALE);
  // Shades of one ink need no search for the best ones: a third of the time, and no larger.
  return new Uint8Array(
    await sharp(png).png({ palette: true, colours: SHADES, effort: 1, dither: 0 }).toBuffer(),
  );
}
