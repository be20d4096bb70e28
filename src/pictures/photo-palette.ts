import { INK, Sheet } from './sheet.ts';

/** The main colours of a photo, numbered; `#rrggbb`. */
export type PhotoPalette = {
  readonly title: string;
  readonly colours: readonly { readonly hex: string; readonly label: string; readonly note: string }[];
};

const WIDTH = 900;
const MARGIN = 40;

/** Draws the colours of a photo under one another, each with its number and name beside it. Returns a PNG. */
export function drawPhotoPalette({ title, colours }: PhotoPalette): Uint8Array {
  const sheet = new Sheet(WIDTH);
  let y = sheet.paragraph(title, MARGIN, MARGIN - 6, WIDTH - 2 * MARGIN, { size: 34, weight: 'bold' }) + 12;
  for (const { hex, label, note } of colours) {
    sheet.box(MARGIN, y, 300, 100, hex, { radius: 10, edge: INK });
    const room = WIDTH - 2 * MARGIN - 330;
    const under = sheet.paragraph(label, MARGIN + 330, y + 12, room, { size: 28, weight: 'bold' });
    sheet.paragraph(note, MARGIN + 330, under, room, { size: 23 });
    y += 118;
  }
  return sheet.png(y + MARGIN - 18, 1.5);
}
