import { FAINT, INK, Sheet } from './sheet.ts';

/** The wanted colour beside what each recipe gives, in the reader's words; colours as `#rrggbb`. */
export type MatchCard = {
  readonly title: string;
  readonly subtitle: string;
  readonly target: { readonly hex: string; readonly label: string };
  readonly recipes: readonly {
    readonly hex: string;
    readonly title: string;
    /** What it gives. */
    readonly label: string;
    /** What goes in, a line each. */
    readonly doses: readonly string[];
  }[];
  readonly note: string;
};

const WIDTH = 900;
const MARGIN = 40;
const INNER = WIDTH - 2 * MARGIN;
const BAR = 400;
const HEIGHT = 132;
const SCALE = 1.5;

/** Where the colours of a card lie in its picture, in its pixels: `[wanted, given]` of each recipe. */
export type MatchPlaces = readonly (readonly { readonly x: number; readonly y: number }[])[];

/** Draws the wanted colour edge to edge with each recipe's, each named in text. Returns a PNG. */
export function drawMatchCard(card: MatchCard): Uint8Array {
  return matchLaidOut(card).png;
}

/** {@link drawMatchCard}, and where its colours lie. */
export function matchLaidOut(card: MatchCard): { readonly png: Uint8Array; readonly places: MatchPlaces } {
  const sheet = new Sheet(WIDTH);
  const places: { x: number; y: number }[][] = [];
  let y = sheet.paragraph(card.title, MARGIN, MARGIN - 6, INNER, { size: 36, weight: 'bold' });
  y = sheet.paragraph(card.subtitle, MARGIN, y, INNER, { size: 24, colour: FAINT }) + 16;
  for (const recipe of card.recipes) {
    const right = MARGIN + BAR + 26;
    const room = WIDTH - MARGIN - right;
    sheet.box(MARGIN, y, BAR / 2, HEIGHT, card.target.hex);
    sheet.box(MARGIN + BAR / 2, y, BAR / 2, HEIGHT, recipe.hex);
    sheet.box(MARGIN, y, BAR, HEIGHT, 'none', { edge: INK });
    places.push([0.25, 0.75].map(part => at(MARGIN + BAR * part, y + HEIGHT / 2)));
    let left = sheet.paragraph(card.target.label, MARGIN, y + HEIGHT + 6, BAR / 2 - 10, { size: 21 });
    const given = sheet.paragraph(recipe.label, MARGIN + BAR / 2 + 6, y + HEIGHT + 6, BAR / 2 - 6, {
      size: 21,
    });
    left = Math.max(left, given);
    let text = sheet.paragraph(recipe.title, right, y - 6, room, { size: 26, weight: 'bold' }) + 4;
    for (const dose of recipe.doses) text = sheet.paragraph(dose, right, text, room, { size: 24 }) + 2;
    y = Math.max(left, text) + 24;
  }
  y = sheet.paragraph(card.note, MARGIN, y, INNER, { size: 20, colour: FAINT });
  return { png: sheet.png(y + MARGIN - 12, SCALE), places };
}

const at = (x: number, y: number) => ({ x: Math.round(x * SCALE), y: Math.round(y * SCALE) });
