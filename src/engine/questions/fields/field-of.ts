import { isUltramarineWhiff } from '../../hazards/index.ts';
import { unbroken } from '../../over-lines.ts';
import type { Words } from '../found/words-of.ts';
import type { Found } from '../learned/features.ts';
import { chanceOfBoth, type Signs } from '../learned/field/together.ts';
import { isOfCraft, type Topic, topicsIn } from '../learned/topics.ts';
import { tellsOfHurt } from '../lye/topics/nearest/hurt.ts';
import { asksOfTheCook } from './cooked-soap.ts';
import { plainlyElsewhere, withoutLikenesses } from './elsewhere.ts';
import { type Outside, outsideField } from './scope.ts';
import { LYE_WORDS, OUR_WORDS, SOAP_WORDS } from './soap-words.ts';
import { WITHOUT_LYE } from './surely-ours.ts';

/** Under this nothing is understood, unless something of ours is named. */
export const LEAST = 0.35;
/**
 * From this chance on a question is another field's. Chosen by leaving writers out, a sixth of them at a time, so that no more of ours is
 * sent away than twenty thresholds sent that stood here before.
 */
const ELSEWHERE = 0.47;
/** Where nothing of ours would be understood it takes less: nothing is lost. */
const OF_NOTHING = 0.3;
/**
 * Where a colourant of ours is named and no other craft it takes more. In the kept sets whose writers nothing was learned from, no such line of
 * another field was less likely than 0.84, and those of ours that were sent away were less likely than 0.8.
 */
const OF_COLOURANT = 0.8;
/** Near lye it takes more: what comes near soap is kept. */
const NEAR_LYE = 0.85;
/** What is made without lye is no soap of ours; "no lye in the flat" says something else. */
const OF_SURFACTANTS = /\b(?:champus?|shampoos?|surfactants?|tensioactiv\w*|syndet|sci)\b/u;
/** Raw batter holds lye, whatever is to be done with it; cold process is no other craft's word. */
const RAW =
  /\b(?:raw (?:soap|batter)|soap batter|masa (?:cruda|de jabon)|batido (?:crudo|de jabon)|jabon crudo|cold process|proceso (?:en )?frio)\b/u;
const RAW_BATTER =
  /\b(?:raw (?:soap|batter)|soap batter|masa (?:cruda|de jabon)|batido (?:crudo|de jabon)|jabon crudo)\b/u;
/** Matters that lye is bought for elsewhere; who may come to harm by it is none of them. */
const USES_OF_LYE: ReadonlySet<Topic> = new Set([
  'house',
  'laundry',
  'food',
  'building',
  'school',
  'garden',
  'vehicle',
  'office',
]);
/** Beside these words somebody may have come near lye: that is never another field. */
const OF_SOMEBODY: ReadonlySet<Topic> = new Set(['animals', 'health']);
const isOfSomebody = ({ words, text }: Words): boolean =>
  tellsOfHurt(text) || topicsIn(words).some(topic => OF_SOMEBODY.has(topic));
const isOfHouse = ({ words }: Words): boolean => topicsIn(words).some(topic => USES_OF_LYE.has(topic));

/** Matters of crafts that colour with what colours soap. */
const SHARE_POWDERS: ReadonlySet<Topic> = new Set([
  'food',
  'hair',
  'health',
  'cosmetics',
  'cloth',
  'paint',
  'building',
  'pottery',
  'leather',
  'candle',
  'printing',
]);
/** Whether a question speaks of a craft that colours with what colours soap. Pure. */
export const sharesPowders = ({ words }: Words): boolean =>
  isOfCraft(words) || topicsIn(words).some(topic => SHARE_POWDERS.has(topic));

/** Whether anything in a question is of the trade. */
export const isOurs = ({ text }: Words, { things, facts }: Found): boolean =>
  things.length > 0 ||
  facts.target !== undefined ||
  facts.findings > 0 ||
  facts.oils !== undefined ||
  OUR_WORDS.test(text);

/**
 * Of a question: how likely it is about somebody else's field, how likely its likeliest job is meant, and how likely none of ours is, each
 * 0 to 1. Two judges: the second weighs our jobs and whatever is none of them.
 */
export type Judged = { readonly elsewhere: number; readonly job: number; readonly noJob: number };

/** A field that is named by its own words; "other" and what is sold are named by words that makers use too. */
const namedField = ({ text }: Words): Outside | undefined => outsideField(withoutLikenesses(text));

/** What tells of another field: both judges' chances, and what is plain in the words. Pure. */
export function signsOf(words: Words, judged: Judged): Signs {
  const isSoap = SOAP_WORDS.test(words.text);
  const named = namedField(words);
  return {
    ...judged,
    craft: !isSoap && isOfCraft(words.words),
    named: !isSoap && named !== undefined && named !== 'other' && named !== 'business',
  };
}

/** How likely a question is about somebody else's field, 0 to 1: both judges together, and what is plain in its words. Pure. */
export const chanceOfField = (words: Words, judged: Judged): number => chanceOfBoth(signsOf(words, judged));

/** What of a question tells of its field beside its words. */
type BesideField = {
  /** Whether else nothing would be understood of it. */
  readonly isNothing?: boolean;
  /** Whether it names a colourant. */
  readonly isColourant?: boolean;
  /** Whether it names a certified colour by its number. */
  readonly isNumbered?: boolean;
};

/** "Candles and my soap", "el jabón y las velas": what is asked for another craft is asked for soap in the same breath. */
const FOR_SOAP_TOO = new RegExp(
  unbroken`
    (?<!\p{L})(?:and|or|plus|as well as|y|e|o|u|tambien) (?:(?:also|for|in|into|my|the|some|our|para|en|mi|mis|el|los|un|tambien) )*(?:soaps?|
    jabon(?:es)?)(?!\p{L})|
    (?<!\p{L})(?:soaps?|jabon(?:es)?) (?:and|or|y|e|o) (?:(?:also|for|in|my|the|some|our|para|en|mi|mis|las?|los|el|unas) )*(?:candles?|bath bombs?|
    wax melts?|velas?|bombas de bano|veladoras?)(?!\p{L})
  `,
  'u',
);
const isForSoapToo = ({ text }: Words): boolean => FOR_SOAP_TOO.test(text);
/** What is asked of a colour that kitchens have too, and hardly of a cake: whether it lasts. */
const FATE = new RegExp(
  unbroken`
    (?<!\p{L})(?:hold|holds|stable|surviv\p{L}*|go off|fade|fades|bleed|bleeds|lye|
    soap|batter|aguanta|resiste|destine|sangra|sosa|soda|jabon|masa de jabon)(?!\p{L})
  `,
  'u',
);
const asksFate = ({ text }: Words): boolean => FATE.test(text);

/**
 * Somebody else's field that a question is about, or undefined; `chance`: how likely it is of one, 0 to 1. Pure.
 */
export function fieldOf(
  words: Words,
  chance: number,
  { isNothing = false, isColourant = false, isNumbered = false }: BesideField = {},
): Outside | undefined {
  // Kitchens smell of eggs too.
  if (isUltramarineWhiff(words.text)) return undefined;
  if (!isColourant && !tellsOfHurt(words.text) && asksOfTheCook(words.text)) return 'hot-process';
  if (isColourant && isForSoapToo(words)) return undefined;
  if (isNumbered && asksFate(words)) return undefined;
  const plainly = plainlyElsewhere(words.text);
  if (plainly !== undefined && !(plainly === 'lye-elsewhere' && isOfSomebody(words))) return plainly;
  const isOfLye =
    RAW.test(words.text) ||
    (LYE_WORDS.test(words.text) && !(WITHOUT_LYE.test(words.text) && OF_SURFACTANTS.test(words.text)));
  // Whatever is to be done with raw batter, no judge sends it away: what keeps from harm waits behind.
  if (RAW_BATTER.test(words.text) && namedField(words) === undefined && !isOfHouse(words)) return undefined;
  const isPlainlyOurs = isColourant && !sharesPowders(words);
  const least = isOfLye ? NEAR_LYE : isPlainlyOurs ? OF_COLOURANT : isNothing ? OF_NOTHING : ELSEWHERE;
  if (chance < least) return undefined;
  const named = namedField(words);
  if (!isOfLye || named !== undefined) return named ?? 'other';
  if (isOfSomebody(words)) return undefined;
  return isOfHouse(words) ? 'lye-elsewhere' : 'other';
}
