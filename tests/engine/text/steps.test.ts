import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { capital, midSentence } from '../../../src/engine/text/capital.ts';
import { comparedIn, longestName } from '../../../src/engine/text/colours/colour-comparisons.ts';
import { hexOf } from '../../../src/engine/text/colours/colour-lists.ts';
import { colourNamed, readColour } from '../../../src/engine/text/colours/colour-name.ts';
import { hueApart, isHue, likeness, shadeOf } from '../../../src/engine/text/colours/colour-shades.ts';
import { corrected, inSingular } from '../../../src/engine/text/colours/colour-slips.ts';
import { colourWordIn } from '../../../src/engine/text/colours/colour-words-in.ts';
import { foldedColour, isColourWord } from '../../../src/engine/text/colours/folded-colours.ts';
import { knowsColour } from '../../../src/engine/text/colours/known-colours.ts';
import { fold } from '../../../src/engine/text/fold.ts';
import { questionWords } from '../../../src/engine/text/learned/question-words.ts';
import { oneSpelling, quoted } from '../../../src/engine/text/lines/option-line.ts';
import { numberTyped } from '../../../src/engine/text/lines/option-value.ts';
import { acidIn } from '../../../src/engine/text/names/acid-words.ts';
import { carrierNamed } from '../../../src/engine/text/names/carrier-name.ts';
import { percentsMarked } from '../../../src/engine/text/names/listed-names.ts';
import { foldName } from '../../../src/engine/text/names/own-names.ts';
import { shown } from '../../../src/engine/text/shown.ts';
import { chatSpelt, figuresHeard } from '../../../src/engine/text/spelling/chat-spelling.ts';
import { distance } from '../../../src/engine/text/spelling/edit-distance.ts';
import { slipCost } from '../../../src/engine/text/spelling/slip-cost.ts';
import { isBarredWord } from '../../../src/engine/text/spelling/trade/near-barred.ts';
import { respelt, wordMeant } from '../../../src/engine/text/spelling/trade/respelt.ts';
import { fold as fold2, stem, tokenise } from '../../../src/engine/text/tokens.ts';
import { deaccented, unaccented } from '../../../src/engine/text/unaccented.ts';
import { wordCount } from '../../../src/engine/text/word-count.ts';
import { asData } from '../as-data.ts';

/*
 * What each reader makes of words, names and colours as makers write them (texts of the sets and of the tests beside). As read when this was
 * written, and looked over for what is plainly wrong.
 */

const STEPS = {
  capital: (text: string) => capital(text),
  midSentence: (text: string) => midSentence(text),
  longestName: (text: string) => longestName(text.split(' ')),
  comparedIn: (text: string) => comparedIn(text),
  hexOf: (text: string) => hexOf(text),
  colourNamed: (text: string) => colourNamed(text),
  readColour: (text: string) => readColour(text),
  shadeOf: (text: string) => shadeOf(text),
  hueApart: ([one, other]: [string, string]) => hueApart(one, other),
  isHue: (text: string) => isHue(text),
  likeness: (text: string) => likeness(text),
  corrected: (text: string) => corrected(text.split(' ')),
  inSingular: (text: string) => inSingular(text),
  colourWordIn: (text: string) => colourWordIn(text),
  foldedColour: (text: string) => foldedColour(text),
  isColourWord: (text: string) => isColourWord(text),
  knowsColour: (text: string) => knowsColour(text),
  fold: (text: string) => fold(text),
  questionWords: (text: string) => questionWords(text),
  oneSpelling: (text: string) => oneSpelling(text),
  quoted: (text: string) => quoted(text),
  numberTyped: (text: string) => numberTyped(text),
  acidIn: (text: string) => acidIn(text),
  carrierNamed: (text: string) => carrierNamed(text),
  percentsMarked: (text: string) => percentsMarked(text),
  foldName: (text: string) => foldName(text),
  shown: (text: string) => shown(text),
  figuresHeard: (text: string) => figuresHeard(text),
  chatSpelt: (text: string) => chatSpelt(text),
  distance: ([one, other]: [string, string]) => distance(one, other),
  isBarredWord: (text: string) => isBarredWord(text),
  wordMeant: (text: string) => wordMeant(text),
  respelt: (text: string) => respelt(text),
  slipCost: ([one, other]: [string, string]) => slipCost(one, other),
  fold2: (text: string) => fold2(text),
  tokenise: (text: string) => tokenise(text),
  stem: (text: string) => stem(text),
  unaccented: (text: string) => unaccented(text),
  deaccented: (text: string) => deaccented(text),
  wordCount: (text: string) => wordCount(text),
} as const;

const rows = JSON.parse(readFileSync(new URL('steps.json', import.meta.url), 'utf8')) as Record<
  keyof typeof STEPS,
  readonly (readonly [input: never, told: unknown])[]
>;

test.each(Object.keys(STEPS) as (keyof typeof STEPS)[])('a reader of text: %s', step => {
  const told = rows[step].map(([input]) => ({ input, told: asData(() => STEPS[step](input)) }));
  expect(told).toEqual(rows[step].map(([input, one]) => ({ input, told: one })));
});
