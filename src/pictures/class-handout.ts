import { unbroken } from './card/unbroken.ts';
import { Sheet } from './sheet.ts';
import {
  CARD,
  type CardSection,
  drawCautions,
  drawNumbers,
  drawSection,
  drawTitle,
  drawWeights,
  heading,
  type LargeNumbers,
  type Weighed,
} from './wall-parts.ts';

/** A class handout, already in the reader's words. */
export type ClassHandout = {
  readonly title: string;
  readonly subtitle: string;
  readonly numbers: LargeNumbers;
  readonly weights: Weighed;
  readonly cautions: CardSection;
  /** Over the numbers and weights: that they are for each station. */
  readonly each: string;
  /** Stations with their people, steps, what to buy, portions. */
  readonly sections: readonly CardSection[];
};

/** Draws what hangs on the wall of a class: one station's numbers large, then everything else. Returns a PNG. */
export function drawClassHandout(written: ClassHandout): Uint8Array {
  const handout = unbroken(written);
  const sheet = new Sheet(CARD.width);
  let y = drawTitle(sheet, handout, CARD.margin);
  // Safety first: on a wall nobody reads to the end.
  y = drawCautions(sheet, handout.cautions, y + 20);
  y = heading(sheet, handout.each, y + 24);
  y = drawNumbers(sheet, handout.numbers, y + 4);
  y = drawWeights(sheet, handout.weights, y + 8);
  for (const section of handout.sections) y = drawSection(sheet, section, y + 22);
  return sheet.png(y + CARD.margin, CARD.scale);
}
