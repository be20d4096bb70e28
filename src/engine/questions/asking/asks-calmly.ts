import { readEmergencies } from '../../hazards/index.ts';
import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import { thingsIn } from '../found/names/entities.ts';
import { wordsOf } from '../found/words-of.ts';
import { tellsOfHarm } from '../lye/recipe-line/plain-recipe.ts';
import { asksForOrder } from '../lye/topics/asked-generally.ts';
import { asksIn } from './asks.ts';
import { isTalk, speaksOfTrade } from './of-trade.ts';
import { piecesOf } from './pieces.ts';
import { WHO } from './talk-words.ts';
import { WHAT_IT_DOES } from './what-it-does.ts';

/** Longer texts are hardly a question: first aid stays, and nothing is read twice. UTF-16 units. */
const LONGEST = 800;

const HOW_MUCH = /(?<!\p{L})(?:how (?:much|many)|what amount|cuant[oa]s?|que cantidad)(?!\p{L})/u;
/** "For 350 ml of batter". */
const PORTION = new RegExp(
  unbroken`
    (?:\d|(?<!\p{L})(?:an?|one|two|half|una?|medi[oa]|dos)) ?(?:ml|l|lit(?:er|re)s?|litros?|cups?|tazas?|
    k?gs?|grams?|gramos?|kilos?|lbs?|pounds?|libras?|oz|ounces?|onzas?)(?!\p{L})
  `,
  'u',
);
const MIXES = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:what|which)(?: \p{L}+){0,2} (?:do|would|should|can|could) (?:i|you|we) (?:mix|blend|
    combine)|con que (?:polvos?|colores|pigmentos?|micas?|oxidos?)? ?(?:\p{L}+ )?(?:mezclo|saco|hago|
    consigo|logro|sale)|(?<!lo )que (?:(?:polvos?|colores|pigmentos|micas) )?mezclo)(?!\p{L})
  `,
  'u',
);
const namesColour = (piece: string): boolean =>
  thingsIn(wordsOf(piece)).some(({ colourants }) => colourants.length > 0);

/** Whether a sentence plainly asks for an amount of a colour for a portion, for a colour to be mixed, or in which order lye and water go. */
function isPlain(piece: string): boolean {
  const plain = unaccented(piece);
  const isDose = HOW_MUCH.test(plain) && PORTION.test(plain) && namesColour(piece);
  return isDose || MIXES.test(plain) || asksForOrder(piece);
}

/** Somebody who was told of before: what is asked may be of them. */
const OF_SOMEBODY =
  /(?<!\p{L})(?:he|she|him|her|his|they|them|their|ella|ellos|ellas|le (?:hago|doy|pasa|paso))(?!\p{L})/u;
/** What a body feels, beside the words of harm. */
const FEELS = new RegExp(
  unbroken`
    (?<!\p{L})(?:feel\p{L}*|felt|limp|floppy|unwell|ill|dying|dead|unconscious|collapsed?|passed out|
    gasp\p{L}*|inconsciente|desmay\p{L}+|morad[oa] de|no reacciona|flacid[oa]|tight\p{L}*|ribs?|chest|
    lungs?|heart|inhalers?|asthma\p{L}*|numb|swollen|swell\p{L}*|weak|shak(?:y|ing)|headaches?|nausea\p{L}*|
    sient[oe]\p{L}*|sent[ií]\p{L}*|pecho|pulmon\p{L}*|costillas|corazon|inhalador|asma\p{L}*|hinch\p{L}+|
    dormid[oa]s?|debil|tiembl\p{L}+|nauseas?)(?!\p{L})
  `,
  'u',
);
const tellsHarmDone = (plain: string): boolean => tellsOfHarm(plain.replace(WHO, ' ')) || FEELS.test(plain);

/** Talk in which family and animals do what they do all day, and no word of harm stands. */
const isIdle = (piece: string): boolean =>
  !asksIn(piece) && !speaksOfTrade(piece) && isTalk(piece) && !tellsHarmDone(unaccented(piece));

/** Whether without its idle talk a message asks of the trade, points at nobody, and tells of no emergency. */
function isCalmWithoutTalk(pieces: readonly string[]): boolean {
  const rest = pieces.filter(piece => !isIdle(piece));
  if (rest.length === 0 || rest.length === pieces.length) return false;
  const said = unaccented(rest.join(' '));
  return (
    !FEELS.test(said) &&
    rest.some(asksIn) &&
    rest.some(speaksOfTrade) &&
    !OF_SOMEBODY.test(said) &&
    readEmergencies(rest.join(' ').trim()).length === 0
  );
}

/**
 * Whether a message asks plainly for what is answered here, and none of its sentences has a word of harm: talk of rain, family and work beside
 * it is then no accident that was only half told. For texts of which first aid is shown in doubt, never for what is told outright. Pure.
 * @example asksCalmly('El agua se metió al salón anoche. ¿Cuánto óxido rojo para 350 ml?') // true
 */
export function asksCalmly(text: string): boolean {
  if (text.length > LONGEST) return false;
  const plain = unaccented(text);
  const rest = plain.replace(WHAT_IT_DOES, ' ');
  const pieces = piecesOf(text);
  const isAsked = rest !== plain || pieces.some(isPlain);
  return (isAsked && !tellsOfHarm(rest) && !FEELS.test(rest)) || isCalmWithoutTalk(pieces);
}
