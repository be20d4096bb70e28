import { FAINT, INK, Sheet } from './sheet.ts';

/** What was foretold of each portion edge to edge with what it became, in the reader's words; colours as `#rrggbb`. */
export type BatchPairs = {
  readonly title: string;
  readonly foretold: string;
  readonly became: string;
  readonly pairs: readonly {
    readonly foretold: string;
    readonly became: string;
    readonly label: string;
    readonly note: string;
  }[];
  readonly note: string;
};

const WIDTH = 900;
const MARGIN = 40;
const INNER = WIDTH - 2 * MARGIN;
const BAR = 400;
const HEIGHT = 110;
const SCALE = 1.5;

/** Draws the pairs under one another. Returns a PNG. */
export function drawBatchPairs({ title, foretold, became, pairs, note }: BatchPairs): Uint8Array {
  const sheet = new Sheet(WIDTH);
  let y = sheet.paragraph(title, MARGIN, MARGIN - 6, INNER, { size: 36, weight: 'bold' }) + 10;
  sheet.text(foretold, MARGIN, y + 22, { size: 22, colour: FAINT });
  sheet.text(became, MARGIN + BAR / 2 + 4, y + 22, { size: 22, colour: FAINT });
  y += 34;
  for (const pair of pairs) {
    sheet.box(MARGIN, y, BAR / 2, HEIGHT, pair.foretold);
    sheet.box(MARGIN + BAR / 2, y, BAR / 2, HEIGHT, pair.became);
    sheet.box(MARGIN, y, BAR, HEIGHT, 'none', { edge: INK });
    const right = MARGIN + BAR + 26;
    const room = WIDTH - MARGIN - right;
    const under = sheet.paragraph(pair.label, right, y, room, { size: 26, weight: 'bold' });
    const bottom = sheet.paragraph(pair.note, right, under + 2, room, { size: 22 });
    y = Math.max(y + HEIGHT, bottom) + 20;
  }
  y = sheet.paragraph(note, MARGIN, y, INNER, { size: 20, colour: FAINT });
  return sheet.png(y + MARGIN - 12, SCALE);
}
