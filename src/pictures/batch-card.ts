import { FAINT, INK, Sheet } from './sheet.ts';
import { widthOf } from './type.ts';

/** Everything on a batch card, already in the reader's words. */
export type BatchCard = {
  readonly title: string;
  readonly subtitle: string;
  /** The numbers that decide the pour, large. */
  readonly numbers: readonly { readonly label: string; readonly value: string; readonly note?: string }[];
  /** What else is weighed. */
  readonly weights: readonly { readonly label: string; readonly value: string }[];
  readonly portions: readonly CardSection[];
  /** Warnings, colours, heat. */
  readonly notes: readonly CardSection[];
  readonly steps: { readonly title: string; readonly rows: readonly { when: string; what: string }[] };
  readonly cautions: CardSection;
};

export type CardSection = { readonly title: string; readonly rows: readonly string[] };

const WIDTH = 900;
const MARGIN = 44;
const INNER = WIDTH - 2 * MARGIN;
const BODY = 25;
const SMALL = 21;
const TICK = 22;
const NUMBER_AND_UNIT =
  /(?<=\d) (?=(?:g|oz|ml|l|tsp|Tbsp|cdtas?|cdas?|cups?|tazas?|cm|mm|h|min|%|°C|°F|\(\d)(?![\p{L}]))/gu;
/** Device pixels to the CSS pixel: sharp on a phone and on A4 at 200 dpi. */
const SCALE = 1.5;

/**
 * Draws a batch card: dark on light, boxes to tick, nothing that colour alone says, so that it prints in black and
 * white. Returns a PNG.
 */
export function drawBatchCard(written: BatchCard): Uint8Array {
  const card = unbroken(written);
  const sheet = new Sheet(WIDTH);
  let y = drawTitle(sheet, card, MARGIN);
  y = drawNumbers(sheet, card.numbers, y + 14);
  y = drawWeights(sheet, card.weights, y + 12);
  for (const portion of card.portions) y = drawTicked(sheet, portion, y + 18);
  y = drawSteps(sheet, card.steps, y + 26);
  for (const note of card.notes) y = drawSection(sheet, note, y + 22);
  y = drawCautions(sheet, card.cautions, y + 28);
  return sheet.png(y + MARGIN, SCALE);
}

/** A number and its unit on one line, wherever they stand in the card. */
export function unbroken<T>(value: T): T {
  if (typeof value === 'string') return value.replaceAll(NUMBER_AND_UNIT, '\u00a0') as T;
  if (Array.isArray(value)) return value.map(unbroken) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, unbroken(one)])) as T;
}

export function drawTitle(
  sheet: Sheet,
  { title, subtitle }: Pick<BatchCard, 'title' | 'subtitle'>,
  top: number,
): number {
  const under = sheet.paragraph(title, MARGIN, top, INNER, { size: 42, weight: 'bold' });
  const y = sheet.paragraph(subtitle, MARGIN, under, INNER, { size: BODY, colour: FAINT });
  sheet.line(MARGIN, y + 10, WIDTH - MARGIN, y + 10, INK, 3);
  return y + 12;
}

/** Two columns of large numbers, their small print below each. */
export function drawNumbers(sheet: Sheet, numbers: BatchCard['numbers'], top: number): number {
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
export function drawWeights(sheet: Sheet, weights: BatchCard['weights'], top: number): number {
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

/** A portion in a frame: its name and volume, then a box to tick for each line. */
function drawTicked(sheet: Sheet, { title, rows }: CardSection, top: number): number {
  const inset = 20;
  const width = INNER - 2 * inset;
  const x = MARGIN + inset;
  let y = sheet.paragraph(title, x, top + 14, width, { size: 30, weight: 'bold' }) + 4;
  rows.forEach((row, at) => {
    // The last line tells how it comes out: nothing to tick.
    const facts = at === rows.length - 1;
    if (!facts) tick(sheet, x, y);
    const indent = facts ? 0 : 38;
    y = sheet.paragraph(row, x + indent, y, width - indent, {
      size: facts ? SMALL : BODY,
      colour: facts ? FAINT : INK,
    });
    y += 4;
  });
  sheet.box(MARGIN, top, INNER, y + 12 - top, 'none', { radius: 10, edge: INK });
  return y + 12;
}

/** The prep list: when on the left, what on the right. */
function drawSteps(sheet: Sheet, { title, rows }: BatchCard['steps'], top: number): number {
  let y = heading(sheet, title, top);
  const when = Math.max(...rows.map(row => widthOf(row.when, SMALL, 'bold'))) + 18;
  let last = '';
  for (const row of rows) {
    tick(sheet, MARGIN, y);
    if (row.when !== last) sheet.text(row.when, MARGIN + 38, y + SMALL + 2, { size: SMALL, weight: 'bold' });
    last = row.when;
    const x = MARGIN + 38 + when;
    y = sheet.paragraph(row.what, x, y, WIDTH - MARGIN - x, { size: BODY }) + 6;
  }
  return y;
}

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
