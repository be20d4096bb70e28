import { capital, midSentence } from '../../../src/engine/text/capital.ts';
import { comparedIn, longestName } from '../../../src/engine/text/colours/colour-comparisons.ts';
import { hexOf } from '../../../src/engine/text/colours/colour-lists.ts';
import { colourNamed, readColour } from '../../../src/engine/text/colours/colour-name.ts';
import { hueApart, isHue, likeness, shadeOf } from '../../../src/engine/text/colours/colour-shades.ts';
import { corrected, inSingular } from '../../../src/engine/text/colours/colour-slips.ts';
import { colourWordIn } from '../../../src/engine/text/colours/colour-words-in.ts';
import { foldedColour, isColourWord } from '../../../src/engine/text/colours/folded-colours.ts';
import { knowsColour } from '../../../src/engine/text/colours/known-colours.ts';
import { excerpt } from '../../../src/engine/text/excerpt.ts';
import { fold } from '../../../src/engine/text/fold.ts';
import { questionWords } from '../../../src/engine/text/learned/question-words.ts';
import { oneSpelling, quoted } from '../../../src/engine/text/lines/option-line.ts';
import { numberTyped } from '../../../src/engine/text/lines/option-value.ts';
import { acidIn } from '../../../src/engine/text/names/acid-words.ts';
import { carrierNamed } from '../../../src/engine/text/names/carrier-name.ts';
import { percentsMarked } from '../../../src/engine/text/names/listed-names.ts';
import { foldName } from '../../../src/engine/text/names/own-names.ts';
import { chatSpelt, figuresHeard } from '../../../src/engine/text/spelling/chat-spelling.ts';
import { distance } from '../../../src/engine/text/spelling/edit-distance.ts';
import { slipCost } from '../../../src/engine/text/spelling/slip-cost.ts';
import { isBarredWord } from '../../../src/engine/text/spelling/trade/near-barred.ts';
import { respelt, wordMeant } from '../../../src/engine/text/spelling/trade/respelt.ts';
import { foldToken, stem, tokenise } from '../../../src/engine/text/tokens.ts';
import { deaccented, unaccented } from '../../../src/engine/text/unaccented.ts';
import { wordCount } from '../../../src/engine/text/word-count.ts';
import { holdRecorded } from '../recorded.ts';

/*
 * What each reader makes of words, names and colours as makers write them (texts of the sets and of the tests beside). As read when this was
 * written, and looked over for what is plainly wrong.
 */

const STEPS = {
  capital,
  midSentence,
  longestName: (text: string) => longestName(text.split(' ')),
  comparedIn,
  hexOf,
  colourNamed,
  readColour,
  shadeOf,
  hueApart: ([one, other]: [string, string]) => hueApart(one, other),
  isHue,
  likeness,
  corrected: (text: string) => corrected(text.split(' ')),
  inSingular,
  colourWordIn,
  foldedColour,
  isColourWord,
  knowsColour,
  fold,
  questionWords,
  oneSpelling,
  quoted,
  numberTyped,
  acidIn,
  carrierNamed,
  percentsMarked,
  foldName,
  excerpt,
  figuresHeard,
  chatSpelt,
  distance: ([one, other]: [string, string]) => distance(one, other),
  isBarredWord,
  wordMeant,
  respelt,
  slipCost: ([one, other]: [string, string]) => slipCost(one, other),
  foldToken,
  tokenise,
  stem,
  unaccented,
  deaccented,
  wordCount,
} as const;

holdRecorded('a reader of text', { steps: STEPS, folder: import.meta.dirname });
