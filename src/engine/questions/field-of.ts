import { plainlyElsewhere, withoutLikenesses } from './elsewhere.ts';
import type { Found } from './learned/features.ts';
import type { Chance } from './learned/read.ts';
import { isOfCraft, topicsIn } from './learned/topics.ts';
import { type Outside, outsideField } from './scope.ts';
import { OUR_WORDS, SOAP_WORDS } from './soap-words.ts';
import { isSurelyOurs } from './surely-ours.ts';
import { unlistedIn } from './unlisted.ts';
import type { Words } from './words-of.ts';

/** Under this nothing is understood, unless something of ours is named. */
export const LEAST = 0.35;
/** A field that is named by its own words is taken for meant from this chance on, any other only if it is likelier than not. */
const NAMED_FIELD = 0.15;
/** With no word of soap beside it. */
const CLEAR_FIELD = 0.01;
const LIKELY = 0.5;
/** Where something of ours is named, it takes more. */
const SURE = 0.5;
const DOSED = 0.9;
const FLAWED = 0.99;
const NAMED_ALONE = 0.95;
/** What speaks of another craft and of no soap is that craft's but where the words are surely ours. */
const OF_CRAFT = 0.01;
/** And where a colouring thing is named that no list of ours holds. */
const UNLISTED = 0.95;
/** And where its words are the trade's. */
const LIKELIER = 0.45;

/** Whether anything in a question is of the trade. */
export const isOurs = ({ text }: Words, { things, facts }: Found): boolean =>
  things.length > 0 ||
  facts.target !== undefined ||
  facts.findings > 0 ||
  facts.oils !== undefined ||
  OUR_WORDS.test(text);

/** Somebody else's field that a question is about, or undefined; `chances` of what it asks for, the likeliest first. Pure. */
export function fieldOf(words: Words, found: Found, chances: readonly Chance[]): Outside | undefined {
  const plainly = plainlyElsewhere(words.text);
  if (plainly !== undefined) return plainly;
  const chance = chances.find(({ of }) => of === 'outside')?.chance ?? 0;
  const named = outsideField(withoutLikenesses(words.text));
  const isSoap = SOAP_WORDS.test(words.text);
  // "Other" and what is sold are named by words that makers use too.
  const isClear = named !== undefined && named !== 'other' && named !== 'business' && !isSoap;
  if (named !== undefined) return chance >= (isClear ? CLEAR_FIELD : NAMED_FIELD) ? named : undefined;
  if (isSurelyOurs(words, found)) return undefined;
  const isNamed = found.things.length > 0 || found.facts.target !== undefined;
  const ofOils = found.amounts.some(({ of }) => of === 'oils' || of === 'oil');
  // The trade's pigments on something that is no soap, with no word of soap beside them.
  if (chance >= OF_CRAFT && !ofOils && !isSoap && isOfCraft(words.words)) return 'other';
  // A colourant and how much batter it goes into, with no word of another matter, is ours.
  const isDosed = found.things.length > 0 && found.amounts.some(({ of }) => of !== 'powder');
  const isForeign = topicsIn(words.words).length > 0;
  if (isDosed && !isForeign && chance < DOSED) return undefined;
  // So is a colourant by its name, with no word of another matter.
  if (found.things.length > 0 && !isForeign && chance < NAMED_ALONE) return undefined;
  // So is a flaw that is told by what it is on and how it looks: "why is my white crackly".
  if (found.facts.findings > 1 && !isForeign && chance < FLAWED) return undefined;
  if (!isNamed && chance < UNLISTED && isUnlisted(words)) return undefined;
  if (chance >= (isNamed ? SURE : OUR_WORDS.test(words.text) ? LIKELIER : LIKELY)) return 'other';
  // What speaks of nothing of ours and asks for nothing we do is somebody else's.
  const isNothing = (chances[0]?.chance ?? 0) < LEAST && !isOurs(words, found);
  return isNothing && words.words.length > 2 ? 'other' : undefined;
}

/** Whether a colouring thing that no list of ours holds is named, and nothing of another matter beside it. */
function isUnlisted({ words }: Words): boolean {
  const named = unlistedIn({ words });
  return (
    named !== undefined && topicsIn([...words.slice(0, named.from), ...words.slice(named.to)]).length === 0
  );
}
