import { FAINT, INK, Sheet } from './sheet.ts';
import { wrap } from './type.ts';

/** Labels to print and cut out, in the reader's words; colours as `#rrggbb`. */
export type LabelSheet = {
  readonly title: string;
  readonly labels: readonly {
    readonly mark: string;
    readonly lines: readonly string[];
    readonly small: string;
    /** The colour that is expected, to hold beside the bar. */
    readonly hex: string;
  }[];
};

const WIDTH = 900;
const MARGIN = 40;
const GAP = 16;
const COLUMNS = 2;
const LABEL = (WIDTH - 2 * MARGIN - (COLUMNS - 1) * GAP) / COLUMNS;
const PAD = 14;
const SWATCH = 84;
const LINE = 25;
const SMALL = 19;

/** Draws labels two in a row, each with its mark, what went in, and the colour expected. Returns a PNG. */
export function drawLabelSheet({ title, labels }: LabelSheet): Uint8Array {
  const sheet = new Sheet(WIDTH);
  let y = sheet.paragraph(title, MARGIN, MARGIN - 6, WIDTH - 2 * MARGIN, { size: 34, weight: 'bold' }) + 12;
  for (let at = 0; at < labels.length; at += COLUMNS) {
    const row = labels.slice(at, at + COLUMNS);
    const height = Math.max(...row.map(heightOf));
    row.forEach((label, column) => {
      drawLabel(sheet, label, { x: MARGIN + column * (LABEL + GAP), y, height });
    });
    y += height + GAP;
  }
  return sheet.png(y + MARGIN - GAP, 1.5);
}

const ROOM = LABEL - SWATCH - 3 * PAD;

const heightOf = ({ lines, small }: LabelSheet['labels'][number]): number => {
  const rows = lines.flatMap(line => wrap(line, ROOM, LINE)).length;
  const under = wrap(small, ROOM, SMALL).length;
  return Math.max(SWATCH + 2 * PAD, 2 * PAD + 46 + rows * LINE * 1.35 + under * SMALL * 1.35);
};

function drawLabel(
  sheet: Sheet,
  { mark, lines, small, hex }: LabelSheet['labels'][number],
  { x, y, height }: { readonly x: number; readonly y: number; readonly height: number },
): void {
  sheet.element(
    `<rect x="${x}" y="${y}" width="${LABEL}" height="${Math.ceil(height)}" fill="none" stroke="${INK}" stroke-dasharray="6 5"/>`,
  );
  sheet.box(x + LABEL - SWATCH - PAD, y + PAD, SWATCH, SWATCH, hex, { radius: 8, edge: INK });
  let under = sheet.paragraph(mark, x + PAD, y + PAD - 6, ROOM, { size: 34, weight: 'bold' });
  for (const line of lines) under = sheet.paragraph(line, x + PAD, under, ROOM, { size: LINE });
  sheet.paragraph(small, x + PAD, under, ROOM, { size: SMALL, colour: FAINT });
}
