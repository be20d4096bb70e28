import { INK, Sheet } from '../sheet.ts';
import {
  type BatchCard,
  drawCare,
  drawHeading,
  drawHeat,
  drawLoafAndPortions,
  drawNumbers,
  drawWeights,
  type Sizes,
} from './parts.ts';
import { unbroken } from './unbroken.ts';

/** As wide as the narrowest phone in use, CSS pixels: nothing is made smaller there. */
export const PHONE_WIDTH = 360;
const MARGIN = 14;
const INNER = PHONE_WIDTH - 2 * MARGIN;
const SIZES: Sizes = { body: 13.5, small: 12, title: 19, number: 25, facts: false };
/** Device pixels to the CSS pixel: a letter of 12 points is 24 pixels high, and a third costs as much again to paint. */
const SCALE = 2;

/** Draws a batch card for a phone. Returns a PNG. */
export function drawBatchCard(card: BatchCard): Uint8Array {
  const { sheet, height } = laidOut(card);
  return sheet.png(height, SCALE);
}

/** {@link drawBatchCard} before it is painted, and how high it is. */
export function laidOut(written: BatchCard): { readonly sheet: Sheet; readonly height: number } {
  const card = unbroken(written);
  const sheet = new Sheet(PHONE_WIDTH);
  const area = (y: number) => ({ x: MARGIN, y, width: INNER });
  let y = sheet.paragraph(card.title, MARGIN, MARGIN - 4, INNER, { size: SIZES.title, weight: 'bold' });
  sheet.line(MARGIN, y + 1, PHONE_WIDTH - MARGIN, y + 1, INK, 2);
  y = drawNumbers(sheet, card.numbers, area(y + 8), SIZES);
  y = drawWeights(sheet, card.weights, area(y + 2), SIZES);
  y = drawHeading(sheet, card.loaf.title, area(y + 6), SIZES);
  y = drawLoafAndPortions(sheet, card, area(y + 3), SIZES);
  y = drawHeading(sheet, card.heat.title, area(y + 4), SIZES);
  y = drawHeat(sheet, card, { ...area(y + 4), height: 76 }, SIZES);
  y = drawCare(sheet, { warnings: card.warnings, rows: [card.care] }, area(y + 8), SIZES);
  return { sheet, height: y + MARGIN - 2 };
}
