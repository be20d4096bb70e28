import { amountsIn } from './amounts.ts';
import { type Command, commandFor } from './command-for.ts';
import { thingsIn } from './entities.ts';
import { type Facts, factsOf } from './facts.ts';
import type { Job } from './jobs.ts';
import type { Found } from './learned/features.ts';
import { type Chance, chancesOf } from './learned/read.ts';
import { topicsIn } from './learned/topics.ts';
import { isHotProcess, type Outside, outsideField } from './scope.ts';
import { settled } from './settled.ts';
import { OUR_WORDS } from './soap-words.ts';
import { wishIn } from './target-in.ts';
import { type Correction, type Words, wordsOf } from './words-of.ts';

/** One way to read a question: the job, how likely it is meant (0 to 1), and the command that does it. */
export type Reading = Command & { readonly job: Job; readonly score: number };

export type QuestionRead = {
  /** Likeliest first; empty where nothing is understood. */
  readonly readings: readonly Reading[];
  readonly facts: Facts;
  readonly corrections: readonly Correction[];
  readonly outside: Outside | undefined;
  readonly hotProcess: boolean;
};

/** Under this nothing is understood, unless something of ours is named. */
const LEAST = 0.35;
/** A second reading with at least this share of the first one's chance is offered beside it. */
const NEAR = 0.25;
/** A field that is named by its own words is taken for meant from this chance on, any other only if it is likelier than not. */
const NAMED_FIELD = 0.15;
const LIKELY = 0.4;
/** Where something of ours is named, it takes more. */
const SURE = 0.5;
const DOSED = 0.9;
const FLAWED = 0.99;
/** And where its words are the trade's. */
const LIKELIER = 0.45;

/**
 * Reads a plain question: which command it asks for, with which options, as far as its own words tell. Nothing is added that
 * the words do not say. Pure; a few milliseconds; only the first 2,000 letters count.
 * @example readQuestion('how much ultramarine for 2 cups?').readings[0].given // { colourant: 'ultramarine', portion: '2 cups' }
 */
export function readQuestion(question: string): QuestionRead {
  const typed = wordsOf(question);
  const things = thingsIn(typed);
  const words = settled(typed, things);
  const amounts = amountsIn(words, things);
  const told = factsOf(question, words, { things, amounts });
  const found = { things, amounts, facts: told };
  const chances = words.text === '' ? [] : chancesOf(words, found);
  const outside = fieldOf(words, found, chances);
  const jobs = chances.filter((one): one is Chance & { of: Job } => one.of !== 'outside');
  const best = jobs[0]?.chance ?? 0;
  // Where a mix is asked for, the colour that is named is the one that is wished.
  const facts =
    jobs[0]?.of === 'mix' && told.target === undefined ? { ...told, target: wishIn(words, things) } : told;
  const isUnderstood = outside === undefined && (best >= LEAST || isOurs(words, found));
  return {
    readings: isUnderstood
      ? jobs
          .filter(({ chance }, at) => at === 0 || (at === 1 && chance >= NEAR * best))
          .map(({ of, chance }) => ({ job: of, score: chance, ...commandFor(of, question, facts) }))
      : [],
    facts,
    corrections: words.corrections,
    outside,
    hotProcess: isHotProcess(words.text),
  };
}

const isOurs = ({ text }: Words, { things, facts }: Found): boolean =>
  things.length > 0 ||
  facts.target !== undefined ||
  facts.findings > 0 ||
  facts.oils !== undefined ||
  OUR_WORDS.test(text);

/** Somebody else's field that a question is about, or undefined. */
function fieldOf(words: Words, found: Found, chances: readonly Chance[]): Outside | undefined {
  const chance = chances.find(({ of }) => of === 'outside')?.chance ?? 0;
  const named = outsideField(words.text);
  if (named !== undefined) return chance >= NAMED_FIELD ? named : undefined;
  const isNamed = found.things.length > 0 || found.facts.target !== undefined;
  // A colourant and how much batter it goes into, with no word of another matter, is ours.
  const isDosed = found.things.length > 0 && found.amounts.some(({ of }) => of !== 'powder');
  const isForeign = topicsIn(words.words).length > 0;
  if (isDosed && !isForeign && chance < DOSED) return undefined;
  // So is a flaw that is told by what it is on and how it looks: "why is my white crackly".
  if (found.facts.findings > 1 && !isForeign && chance < FLAWED) return undefined;
  if (chance >= (isNamed ? SURE : OUR_WORDS.test(words.text) ? LIKELIER : LIKELY)) return 'other';
  // What speaks of nothing of ours and asks for nothing we do is somebody else's.
  const isNothing = (chances[0]?.chance ?? 0) < LEAST && !isOurs(words, found);
  return isNothing && words.words.length > 2 ? 'other' : undefined;
}
