import { FAINT, INK, RULE, Sheet } from './sheet.ts';
import { widthOf, wrap } from './type.ts';

/** A colour with what is written under it. */
type Field = { readonly hex: string; readonly label: string };

/** A mix at four strengths, with and without gel, in the reader's words; colours as `#rrggbb`. */
export type SwatchCard = {
  readonly title: string;
  readonly subtitle: string;
  readonly mix: Field & { readonly title: string; readonly note: string };
  /** The base alone. */
  readonly plain: Field & { readonly title: string };
  readonly columns: readonly [string, string];
  readonly rows: readonly {
    readonly title: string;
    readonly measures: readonly string[];
    readonly fields: readonly [Field, Field];
  }[];
  readonly note: string;
};

const WIDTH = 900;
const MARGIN = 40;
const INNER = WIDTH - 2 * MARGIN;
const GAP = 18;
const LEFT = 296;
const FIELD = (INNER - LEFT - 2 * GAP) / 2;
const HEIGHT = 118;
const LABEL = 23;
const BODY = 24;
/** Device pixels to the CSS pixel: sharp on a phone. */
const SCALE = 1.5;

/** Where the colours of a card lie in its picture, for those who look at it: the middle of each, in CSS pixels times {@link SCALE}. */
export type CardPlaces = { readonly mix: Place; readonly plain: Place; readonly fields: readonly Place[][] };
type Place = { readonly x: number; readonly y: number };

/** Draws a swatch card: every colour has its name and hex written under it in dark on light. Returns a PNG. */
export function drawSwatchCard(card: SwatchCard): Uint8Array {
  return laidOut(card).png;
}

/** {@link drawSwatchCard}, and where its colours lie. */
export function laidOut(card: SwatchCard): { readonly png: Uint8Array; readonly places: CardPlaces } {
  const sheet = new Sheet(WIDTH);
  let y = titled(sheet, card);
  const top = drawMix(sheet, card, y);
  y = top.bottom + 22;
  y = headings(sheet, card.columns, y);
  const fields: Place[][] = [];
  for (const row of card.rows) {
    const drawn = drawRow(sheet, row, y);
    fields.push(drawn.places);
    y = drawn.bottom + 14;
  }
  y = sheet.paragraph(card.note, MARGIN, y + 2, INNER, { size: 20, colour: FAINT });
  return { png: sheet.png(y + MARGIN - 12, SCALE), places: { ...top.places, fields } };
}

const middle = (x: number, y: number, width: number, height: number): Place => ({
  x: Math.round((x + width / 2) * SCALE),
  y: Math.round((y + height / 2) * SCALE),
});

/** A long list of names is cut after two lines: the rows below say all of them. */
function titled(sheet: Sheet, { title, subtitle }: SwatchCard): number {
  const lines = wrap(title, INNER, 36, 'bold');
  const shown = lines.length > 2 ? [lines[0]!, `${lines[1]!.slice(0, -1)}…`] : lines;
  let y = MARGIN - 6;
  for (const line of shown) y = sheet.paragraph(line, MARGIN, y, INNER + 20, { size: 36, weight: 'bold' });
  return sheet.paragraph(subtitle, MARGIN, y, INNER, { size: BODY, colour: FAINT }) + 16;
}

/** The asked mix large, the base alone beside it. */
function drawMix(sheet: Sheet, { mix, plain }: SwatchCard, top: number) {
  const height = 150;
  const wide = INNER - GAP - FIELD;
  const right = MARGIN + wide + GAP;
  sheet.text(mix.title, MARGIN, top + BODY, { size: BODY, weight: 'bold' });
  sheet.text(plain.title, right, top + BODY, { size: BODY, weight: 'bold' });
  const y = top + BODY + 12;
  sheet.box(MARGIN, y, wide, height, mix.hex, { radius: 10, edge: INK });
  sheet.box(right, y, FIELD, height, plain.hex, { radius: 10, edge: INK });
  let bottom = sheet.paragraph(mix.label, MARGIN, y + height + 6, wide, { size: 27, weight: 'bold' });
  bottom = sheet.paragraph(mix.note, MARGIN, bottom, wide, { size: 21, colour: FAINT });
  const other = sheet.paragraph(plain.label, right, y + height + 6, FIELD, { size: LABEL });
  return {
    bottom: Math.max(bottom, other),
    places: { mix: middle(MARGIN, y, wide, height), plain: middle(right, y, FIELD, height) },
  };
}

function headings(sheet: Sheet, columns: readonly string[], top: number): number {
  sheet.line(MARGIN, top, WIDTH - MARGIN, top, INK, 2);
  columns.forEach((column, at) => {
    sheet.text(column, columnAt(at), top + 36, { size: BODY, weight: 'bold' });
  });
  return top + 50;
}

const columnAt = (at: number): number => MARGIN + LEFT + GAP + at * (FIELD + GAP);

function drawRow(sheet: Sheet, { title, measures, fields }: SwatchCard['rows'][number], top: number) {
  let left = sheet.paragraph(title, MARGIN, top, LEFT, { size: 29, weight: 'bold' });
  for (const measure of measures) left = sheet.paragraph(measure, MARGIN, left + 2, LEFT, { size: 21 });
  const bottoms = fields.map(({ hex, label }, at) => {
    const x = columnAt(at);
    sheet.box(x, top + 2, FIELD, HEIGHT, hex, { radius: 10, edge: INK });
    return captioned(sheet, { hex, label }, { x, top: top + HEIGHT + 6 });
  });
  const bottom = Math.max(left, ...bottoms);
  sheet.line(MARGIN, bottom + 6, WIDTH - MARGIN, bottom + 6, RULE);
  return {
    bottom: bottom + 6,
    places: fields.map((_, at) => middle(columnAt(at), top + 2, FIELD, HEIGHT)),
  };
}

/** Name and hex on one line where they fit, else under one another. */
function captioned(sheet: Sheet, { hex, label }: Field, { x, top }: { x: number; top: number }): number {
  const line = `${label}  ${hex}`;
  if (widthOf(line, LABEL) <= FIELD)
    return sheet.paragraph(line.replace('  ', ' '), x, top, FIELD, { size: LABEL });
  const under = sheet.paragraph(label, x, top, FIELD, { size: LABEL });
  return sheet.paragraph(hex, x, under, FIELD, { size: LABEL });
}
