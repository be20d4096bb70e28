import { clamped, heading, lines, MARGIN } from './challenge-parts.ts';
import { FAINT, INK, RULE, Sheet } from './sheet.ts';

/** What the card of a challenge says: texts in the group's language, colours as `#rrggbb`. */
export type ChallengeCard = {
  readonly kicker: string;
  readonly title: string;
  readonly brief: string;
  readonly palette: readonly { readonly hex: string; readonly part?: string | undefined }[];
  /** Beneath the palette, such as the seed it was drawn with. */
  readonly paletteNote?: string | undefined;
  readonly dates: readonly { readonly label: string; readonly value: string }[];
  readonly rulesTitle: string;
  readonly rules: readonly string[];
};

const WIDTH = 720;
const INNER = WIDTH - 2 * MARGIN;
const SWATCH = 120;

/** Draws the announcement of a challenge: its palette large enough to mix by. Returns a PNG. */
export function drawChallengeCard(card: ChallengeCard): Uint8Array {
  const sheet = new Sheet(WIDTH);
  let y = heading(sheet, card.title, card.kicker) + 8;
  const brief = clamped(card.brief, { width: INNER, size: 17, lines: 6 });
  if (card.brief !== '') y = lines(sheet, brief, { x: MARGIN, top: y, size: 17 }) + 8;
  if (card.palette.length > 0) y = palette(sheet, card, y + 8);
  y = dates(sheet, card, y + 16);
  if (card.rules.length === 0) return sheet.png(y + MARGIN - 16);
  sheet.line(MARGIN, y, WIDTH - MARGIN, y);
  sheet.text(card.rulesTitle, MARGIN, y + 28, { size: 15, weight: 'bold' });
  y += 38;
  for (const rule of card.rules) {
    sheet.box(MARGIN + 2, y + 9, 5, 5, FAINT, { radius: 2.5 });
    y = sheet.paragraph(rule, MARGIN + 18, y, INNER - 18, { size: 15 }) + 3;
  }
  return sheet.png(y + MARGIN - 8);
}

function palette(sheet: Sheet, { palette: colours, paletteNote }: ChallengeCard, top: number): number {
  const gap = 10;
  const side = (INNER - gap * (Math.max(colours.length, 4) - 1)) / Math.max(colours.length, 4);
  for (const [index, { hex, part }] of colours.entries()) {
    const x = MARGIN + index * (side + gap);
    sheet.box(x, top, side, SWATCH, hex, { radius: 8, edge: RULE });
    const middle = x + side / 2;
    sheet.text(part ? `${hex} · ${part}` : hex, middle, top + SWATCH + 20, { size: 14, anchor: 'middle' });
  }
  const y = top + SWATCH + 30;
  return paletteNote ? sheet.paragraph(paletteNote, MARGIN, y, INNER, { size: 13, colour: FAINT }) : y;
}

function dates(sheet: Sheet, { dates: list }: ChallengeCard, top: number): number {
  let y = top;
  for (const { label, value } of list) {
    sheet.text(label, MARGIN, y + 17, { size: 17, colour: FAINT });
    sheet.text(value, MARGIN + 150, y + 17, { size: 17, weight: 'bold', colour: INK });
    y += 27;
  }
  return y + 6;
}
