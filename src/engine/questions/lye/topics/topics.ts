import { withoutFiguresOfSpeech } from '../../../hazards/emergencies/figures-of-speech.ts';
import { unbroken } from '../../../over-lines.ts';
import { readOnce } from '../../../remembered.ts';
import { TextToFit } from '../../../text/patterns/fitting.ts';
import { deaccented } from '../../../text/unaccented.ts';
import { putInAmiss } from '../slips/weighed-amiss.ts';
import { MADE_PATTERNS } from './patterns/bars/made.ts';
import { SIGN_PATTERNS } from './patterns/bars/signs.ts';
import { YOUNG_BAR_PATTERNS } from './patterns/bars/young-bar.ts';
import { BENCH_PATTERNS } from './patterns/bench.ts';
import { CALM_PATTERNS } from './patterns/calm.ts';
import { HANDLING_PATTERNS } from './patterns/handling.ts';
import { HARM_PATTERNS } from './patterns/harm.ts';
import { FIRE_PATTERNS } from './patterns/jug/fire.ts';
import { JUG_PATTERNS } from './patterns/jug/jug.ts';
import { MIXING_PATTERNS } from './patterns/jug/mixing.ts';
import { KITCHEN_PATTERNS } from './patterns/kitchen.ts';
import { AROUND_PATTERNS } from './patterns/people/around.ts';
import { AT_HAND_PATTERNS } from './patterns/people/at-hand.ts';
import { CLASS_PATTERNS } from './patterns/people/class.ts';
import { HOUSE_PATTERNS } from './patterns/people/house.ts';
import { LATER_PATTERNS } from './patterns/people/later.ts';
import { PUT_IN_PATTERNS } from './patterns/put-in.ts';
import { SUBSTANCE_PATTERNS, type TopicPatterns } from './patterns/topic.ts';
import { AMISS_PATTERNS } from './patterns/weights/amiss.ts';
import { DOUBT_PATTERNS } from './patterns/weights/doubt.ts';
import { NEVER_WENT_IN_PATTERNS } from './patterns/weights/never-went-in.ts';
import { TOLD_SHORT_PATTERNS } from './patterns/weights/told-short.ts';
import { TOO_MUCH_PATTERNS } from './patterns/weights/too-much.ts';
import type { LyeTopic } from './topic.ts';

/** Longer texts tell of a batch, and ask nothing that is answered alike for all. */
const LONGEST = 600;

/** The first that fits counts: harm stands before all, and what was made already before what is asked beforehand. */
const PATTERNS = [
  ...HARM_PATTERNS,
  ...CALM_PATTERNS,
  ...AMISS_PATTERNS,
  ...NEVER_WENT_IN_PATTERNS,
  ...FIRE_PATTERNS,
  ...AT_HAND_PATTERNS,
  ...MADE_PATTERNS,
  ...HANDLING_PATTERNS,
  ...HOUSE_PATTERNS,
  ...KITCHEN_PATTERNS,
  ...SUBSTANCE_PATTERNS,
  ...BENCH_PATTERNS,
  ...MIXING_PATTERNS,
  ...CLASS_PATTERNS,
  ...PUT_IN_PATTERNS,
];

/** Weights that went wrong, the jug, and who stands near: answered whatever else is asked beside it. */
const CARE_PATTERNS = [
  ...SIGN_PATTERNS,
  ...TOLD_SHORT_PATTERNS,
  ...DOUBT_PATTERNS,
  ...TOO_MUCH_PATTERNS,
  ...JUG_PATTERNS,
  ...AROUND_PATTERNS,
  ...YOUNG_BAR_PATTERNS,
  ...LATER_PATTERNS,
];

/** A zap that a bar does not have is told of a sound one. */
const NO_ZAP = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:no|not any|not a|zero|without(?: a| any)?|didn ?t(?: get a| even)?|doesn ?t|does not|
    did not|don ?t|never|isn ?t|not|sin|ya no|no (?:me |le |les |hay |tiene |tienen |sale )*(?:da|dan|dio|
    dieron|hay|tiene)?(?: ningun)?) (?:zaps?|zapp(?:ed|ing)|calambre|corriente)|(?:passed|passes|
    paso) (?:the |la )?(?:zap test|prueba de la lengua))(?! ?(?:test|yet))(?!\p{L})
  `,
  'gu',
);

const plainOf = readOnce(
  (question): TextToFit =>
    new TextToFit(
      deaccented(withoutFiguresOfSpeech(question.slice(0, LONGEST)))
        .slice(0, LONGEST)
        .replace(/[^\p{L}\p{N}]+/gu, ' ')
        .replace(NO_ZAP, ' ')
        .trim(),
    ),
);

const foundIn = (plain: TextToFit, among: TopicPatterns): LyeTopic | undefined =>
  among.find(([, patterns]) => patterns.some(pattern => plain.fits(pattern)))?.[0];

/** A matter that is answered before any amount of lye in the same question; harm stands before it. */
export const careTopicIn = readOnce((question): LyeTopic | undefined => {
  const plain = plainOf(question);
  if (foundIn(plain, HARM_PATTERNS) !== undefined) return undefined;
  return putInAmiss(question.slice(0, LONGEST)) ?? foundIn(plain, CARE_PATTERNS);
});

/**
 * Whether a question is asked calmly and ahead, though its words are an accident's too. Of somebody who is hurt, and of
 * what is going on, no such pattern speaks. Pure.
 */
export const isCalmMatter = (question: string): boolean =>
  foundIn(plainOf(question), CALM_PATTERNS) !== undefined;

/** Whether a question is about a matter of harm, which stands before all others. Pure. */
export const isHarmMatter = (question: string): boolean =>
  foundIn(plainOf(question), HARM_PATTERNS) !== undefined;

/** Which matter of handling lye a question asks about, in English or Spanish, or undefined. */
export const lyeTopicIn = readOnce(
  (question): LyeTopic | undefined => careTopicIn(question) ?? foundIn(plainOf(question), PATTERNS),
);
