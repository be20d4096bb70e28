import { BARRED } from '../../../hazards/colours/barred.ts';
import { spaced } from '../../../over-lines.ts';
import { fold } from '../../fold.ts';
import { distance, slipsIn } from '../edit-distance.ts';
import { slipCost } from '../slip-cost.ts';

/** Words of names that are refused and yet are everyday words, which a slip is far likelier meant for something harmless by. */
const EVERYDAY: ReadonlySet<string> = new Set(
  spaced`
    colour color colours colores colorante colorantes natural powder pigment pigmento yellow orange violet
    purple amarillo naranja violeta morado acuarela pintura paints dye dyes liquid liquido ink tinta tinte
    tintes marker cream cloth clothes school artist artists leather tissue stained water oil based soluble
    bright golden silver cosmetic cosmetico madera wood easter
  `.split(' '),
);

/** Words by which colours that must stay out of soap are called, and alkalis: no slip near one of them is put right to anything else. */
const WORDS: readonly string[] = [
  ...new Set(
    [...BARRED.map(({ names }) => names), 'hydroxide hidroxido caustic caustica potasa peroxide bleach']
      .flatMap(names => fold(names).split(/[^a-z]+/u))
      .filter(word => word.length > 5 && !EVERYDAY.has(word)),
  ),
];
const known: ReadonlySet<string> = new Set(WORDS);

/** A name that hurts and is farther from what was typed by this much is not what was meant (`slipCost`). */
const MARGIN = 0.7;

/** Whether a word, as it is typed, may be a slip of a name that must stay out of soap rather than of `right`. */
export function mayBeBarred(word: string, right: string): boolean {
  if (isBarredWord(right)) return false;
  const most = slipCost(word, right) + MARGIN;
  return WORDS.some(
    barred =>
      Math.abs(barred.length - word.length) < 3 &&
      distance(word, barred) <= slipsIn(barred.length) &&
      (distance(word, barred) === 1 || slipCost(word, barred) <= most),
  );
}

/** Whether a word is one by which such a colour is called. */
export const isBarredWord = (word: string): boolean => known.has(word);
