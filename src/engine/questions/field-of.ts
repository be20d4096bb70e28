import { isUltramarineWhiff } from '../hazards/index.ts';
import { plainlyElsewhere, withoutLikenesses } from './elsewhere.ts';
import type { Found } from './learned/features.ts';
import { isOfCraft, type Topic, topicsIn } from './learned/topics.ts';
import { tellsOfHurt } from './lye/nearest/hurt.ts';
import { type Outside, outsideField } from './scope.ts';
import { LYE_WORDS, OUR_WORDS, SOAP_WORDS } from './soap-words.ts';
import { isSurelyOurs, WITHOUT_LYE } from './surely-ours.ts';
import { unlistedIn } from './unlisted.ts';
import type { Words } from './words-of.ts';

/** Under this nothing is understood, unless something of ours is named. */
export const LEAST = 0.35;
/** A field that is named by its own words is taken for meant from this chance on. */
const NAMED_FIELD = 0.06;
/** With one: "cold process or only melt and pour". */
const BESIDE_SOAP = 0.3;
/** With no word of soap beside it. */
const CLEAR_FIELD = 0.015;
/** Any other, chosen by leaving out one writer at a time: what is sent away is told so in one sentence, and asked again. */
const LIKELY = 0.25;
/** Where a colour is named or a recipe told, it takes more. */
const NAMED = 0.35;
/** And where so much of a colourant is asked for so much batter, or a flaw is told by what it is on and how it looks. */
const DOSED = 0.6;
/** Where the words are surely ours, it takes the most. */
const SURELY_OURS = 0.9;
/** From here on the judge of jobs is sure. */
const SURE_JOB = 0.97;
/** What speaks of another craft and of no soap is that craft's but where the words are surely ours. */
const OF_CRAFT = 0.1;
/** What asks for nothing that we do, where it is not surely of soap. */
const NOTHING = 0.05;
/** The judge of jobs is so sure that none of ours is asked; the other need only not be sure of the opposite. */
const SURELY_NO_JOB = 0.97;
const HARDLY = 0.01;
/** Near lye, whatever stands around it: what comes near soap is kept. */
const NEAR_LYE = 0.45;
/** What is made without lye is no soap of ours; "no lye in the flat" says something else. */
const OF_SURFACTANTS = /\b(?:champus?|shampoos?|surfactants?|tensioactiv\w*|syndet|sci)\b/u;
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
/** Where a colouring thing is named that no list of ours holds. */
const UNLISTED = 0.95;

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

/** Somebody else's field that a question is about, or undefined. Pure. */
export function fieldOf(words: Words, found: Found, { elsewhere, job, noJob }: Judged): Outside | undefined {
  // Kitchens smell of eggs too.
  if (isUltramarineWhiff(words.text)) return undefined;
  const plainly = plainlyElsewhere(words.text);
  if (plainly !== undefined && !(plainly === 'lye-elsewhere' && isOfSomebody(words))) return plainly;
  const named = outsideField(withoutLikenesses(words.text));
  const isSoap = SOAP_WORDS.test(words.text);
  // "Other" and what is sold are named by words that makers use too.
  const isClear = named !== undefined && named !== 'other' && named !== 'business' && !isSoap;
  const least = isClear ? CLEAR_FIELD : isSoap ? BESIDE_SOAP : NAMED_FIELD;
  if (named !== undefined && elsewhere >= least) return named;
  // Near lye only what was learned sends away: other uses of it, lessons, cloth.
  if (LYE_WORDS.test(words.text) && !(WITHOUT_LYE.test(words.text) && OF_SURFACTANTS.test(words.text)))
    return elsewhere < NEAR_LYE || isOfSomebody(words)
      ? undefined
      : isOfHouse(words)
        ? 'lye-elsewhere'
        : 'other';
  if (isSurelyOurs(words, found)) return elsewhere >= SURELY_OURS ? 'other' : undefined;
  const ofOils = found.amounts.some(({ of }) => of === 'oils' || of === 'oil');
  // The trade's pigments on something that is no soap, with no word of soap beside them.
  if (elsewhere >= OF_CRAFT && !ofOils && !isSoap && isOfCraft(words.words)) return 'other';
  if (elsewhere >= (isJobOfNamed(found, job) ? SURELY_OURS : likelyFrom(words, found))) return 'other';
  const isBare =
    !found.things.some(({ colourants }) => colourants.length > 0) || topicsIn(words.words).length > 0;
  if (isBare && noJob >= SURELY_NO_JOB && elsewhere >= HARDLY) return 'other';
  // What speaks of nothing of ours and asks for nothing we do is somebody else's.
  const isNothing = job < LEAST && elsewhere >= NOTHING && !isOurs(words, found);
  return isNothing && words.words.length > 2 ? 'other' : undefined;
}

/** Something of ours is named, and the judge of jobs is sure of what is asked of it. */
const isJobOfNamed = ({ things, facts }: Found, job: number): boolean =>
  job >= SURE_JOB && (things.some(({ colourants }) => colourants.length > 0) || facts.target !== undefined);

/** From which chance on a question is taken to be about something else, by what of ours it names. */
function likelyFrom(words: Words, found: Found): number {
  const { things, facts, amounts } = found;
  const isForeign = topicsIn(words.words).length > 0;
  const isDosed = things.length > 0 && amounts.some(({ of }) => of !== 'powder');
  if (!isForeign && (isDosed || facts.findings > 1)) return DOSED;
  const isNamed = things.length > 0 || facts.target !== undefined || facts.oils !== undefined;
  if (!isNamed && isUnlisted(words)) return UNLISTED;
  return isNamed ? NAMED : LIKELY;
}

/** Whether a colouring thing that no list of ours holds is named, and nothing of another matter beside it. */
function isUnlisted({ words }: Words): boolean {
  const named = unlistedIn({ words });
  return (
    named !== undefined && topicsIn([...words.slice(0, named.from), ...words.slice(named.to)]).length === 0
  );
}
