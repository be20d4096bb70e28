import { FAINT, INK, type Sheet } from './sheet.ts';
import { widthOf } from './type.ts';

/** The large numbers of a sheet for the wall. */
export type LargeNumbers = readonly {
  readonly label: string;
  readonly value: string;
  readonly note?: string;
}[];
export type Weighed = readonly { readonly label: string; readonly value: string }[];
export type CardSection = { readonly title: string; readonly rows: readonly string[] };

const WIDTH = 900;
const MARGIN = 44;
const INNER = WIDTH - 2 * MARGIN;
const BODY = 25;
const SMALL = 21;
const TICK = 22;
/** Device pixels to the CSS pixel: sharp on a phone and on A4 at 200 dpi. */
const SCALE = 1.5;

export function drawTitle(
  sheet: Sheet,
  { title, subtitle }: { readonly title: string; readonly subtitle: string },
  top: number,
): number {
  const under = sheet.paragraph(title, MARGIN, top, INNER, { size: 42, weight: 'bold' });
  const y = sheet.paragraph(subtitle, MARGIN, under, INNER, { size: BODY, colour: FAINT });
  sheet.line(MARGIN, y + 10, WIDTH - MARGIN, y + 10, INK, 3);
  return y + 12;
}

/** Two columns of large numbers, their small print below each. */
export function drawNumbers(sheet: Sheet, numbers: LargeNumbers, top: number): number {
  const gap = 24;
  const column = (INNER - gap) / 2;
  let y = top;
  for (let at = 0; at < numbers.length; at += 2) {
    const bottoms = numbers.slice(at, at + 2).map(({ label, value, note }, place) => {
      const x = MARGIN + place * (column + gap);
      let under = sheet.paragraph(label, x, y, column, { size: SMALL, colour: FAINT });
      under = sheet.paragraph(value, x, under, column, { size: largest(value, column), weight: 'bold' });
      return note ? sheet.paragraph(note, x, under + 2, column, { size: 19, colour: FAINT }) : under;
    });
    y = Math.max(...bottoms) + 14;
  }
  return y;
}

/** The largest of a few sizes in which a value stands on one line. */
const largest = (value: string, width: number): number =>
  [42, 36, 31].find(size => widthOf(value, size, 'bold') <= width) ?? 28;

/** What to weigh, one a line with a box to tick: name left, grams right. */
export function drawWeights(sheet: Sheet, weights: Weighed, top: number): number {
  let y = top;
  for (const { label, value } of weights) {
    const valueWidth = widthOf(value, BODY, 'bold');
    tick(sheet, MARGIN, y);
    const under = sheet.paragraph(label, MARGIN + 38, y, INNER - valueWidth - 60, { size: BODY });
    sheet.text(value, WIDTH - MARGIN, y + BODY, { size: BODY, weight: 'bold', anchor: 'end' });
    sheet.line(MARGIN, under + 3, WIDTH - MARGIN, under + 3);
    y = under + 8;
  }
  return y;
}

const tick = (sheet: Sheet, x: number, top: number) =>
  sheet.box(x, top + 5, TICK, TICK, 'none', { radius: 3, edge: INK });

export function heading(sheet: Sheet, title: string, top: number): number {
  const y = sheet.paragraph(title, MARGIN, top, INNER, { size: 30, weight: 'bold' });
  sheet.line(MARGIN, y + 2, WIDTH - MARGIN, y + 2, INK, 2);
  return y + 12;
}

export function drawSection(sheet: Sheet, { title, rows }: CardSection, top: number): number {
  let y = heading(sheet, title, top);
  for (const row of rows) y = bullet(sheet, row, { x: MARGIN, top: y, width: INNER, size: BODY }) + 4;
  return y;
}

function bullet(
  sheet: Sheet,
  text: string,
  { x, top, width, size }: { x: number; top: number; width: number; size: number },
): number {
  sheet.text('•', x, top + size, { size });
  return sheet.paragraph(text, x + 24, top, width - 24, { size });
}

/** The cautions in a heavy frame: found at a glance, also on a grey printout. */
export function drawCautions(sheet: Sheet, { title, rows }: CardSection, top: number): number {
  const inset = 22;
  const width = INNER - 2 * inset;
  const x = MARGIN + inset;
  let y = sheet.paragraph(title, x, top + 18, width, { size: 30, weight: 'bold' }) + 4;
  for (const row of rows) y = bullet(sheet, row, { x, top: y, width, size: SMALL }) + 3;
  for (const offset of [0, 1, 2])
    sheet.box(MARGIN + offset, top + offset, INNER - 2 * offset, y + 16 - top - 2 * offset, 'none', {
      radius: 10 - offset,
      edge: INK,
    });
  return y + 16;
}

export const CARD = { width: WIDTH, margin: MARGIN, inner: INNER, scale: SCALE, body: BODY } as const;
