import { FAINT, INK, Sheet } from './sheet.ts';

/** Rows of colours edge to edge, in the reader's words; colours as `#rrggbb`. */
export type PaletteStrips = {
  readonly title: string;
  readonly rows: readonly {
    readonly title: string;
    readonly fields: readonly { readonly hex: string; readonly label: string }[];
  }[];
  readonly note: string;
};

const WIDTH = 900;
const MARGIN = 40;
const INNER = WIDTH - 2 * MARGIN;
const HEIGHT = 96;

/** Draws each row as one strip, every colour named under it. Returns a PNG. */
export function drawPaletteStrips({ title, rows, note }: PaletteStrips): Uint8Array {
  const sheet = new Sheet(WIDTH);
  let y = sheet.paragraph(title, MARGIN, MARGIN - 6, INNER, { size: 34, weight: 'bold' }) + 10;
  for (const row of rows) {
    y = sheet.paragraph(row.title, MARGIN, y, INNER, { size: 25, weight: 'bold' }) + 4;
    const width = INNER / row.fields.length;
    const bottoms = row.fields.map(({ hex, label }, at) => {
      sheet.box(MARGIN + at * width, y, width, HEIGHT, hex);
      return sheet.paragraph(label, MARGIN + at * width + 2, y + HEIGHT + 4, width - 6, { size: 19 });
    });
    sheet.box(MARGIN, y, INNER, HEIGHT, 'none', { edge: INK });
    y = Math.max(...bottoms) + 14;
  }
  y = sheet.paragraph(note, MARGIN, y, INNER, { size: 20, colour: FAINT });
  return sheet.png(y + MARGIN - 12, 1.5);
}
