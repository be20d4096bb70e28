import { unbroken } from '../over-lines.ts';
import { colourNamed } from '../text/colours/colour-name.ts';
import { foldedColour, isColourWord } from '../text/colours/folded-colours.ts';
import { askedPart } from './asking/asked-part.ts';
import { type Judgement, judgedOf } from './asking/judged.ts';
import { chanceOfField, fieldOf, isOurs, type Judged, LEAST } from './fields/field-of.ts';
import { isHotProcess, type Outside } from './fields/scope.ts';
import type { Facts } from './found/facts.ts';
import { foundIn } from './found/found-in.ts';
import { kindAlone } from './found/names/kind-alone.ts';
import type { NamedThing } from './found/names/named-thing.ts';
import { plantsBeside, unlistedIn } from './found/names/unlisted.ts';
import { onHandIn } from './found/on-hand.ts';
import { POUND_OF_OILS, withRateAsked } from './found/rate-asked.ts';
import { shadeWished } from './found/shade-wished.ts';
import { whiteBeside } from './found/strength/white-beside.ts';
import { type Target, wishIn, wishOfThing } from './found/target-in.ts';
import type { Correction, Words } from './found/words-of.ts';
import { type Command, commandFor } from './jobs/command-for.ts';
import { asksHowMuchOf } from './jobs/dose-by-phrase.ts';
import { jobByPhrase } from './jobs/job-by-phrase.ts';
import type { Job } from './jobs/jobs.ts';
import { type PlainJob, plainJobOf } from './jobs/plain-job.ts';
import type { Found } from './learned/features.ts';
import type { Chance } from './learned/read.ts';
import { isOfCraft } from './learned/topics.ts';

/** One way to read a question: the job, how likely it is meant (0 to 1), and the command that does it. */
export type Reading = Command & { readonly job: Job; readonly score: number };

export type QuestionRead = {
  /** Likeliest first; empty where nothing is understood. */
  readonly readings: readonly Reading[];
  readonly facts: Facts;
  readonly corrections: readonly Correction[];
  readonly outside: Outside | undefined;
  /** How likely it is about somebody else's field, 0 to 1. */
  readonly elsewhere: number;
  readonly hotProcess: boolean;
};

/** Nobody asks about a contest without one of these. */
const OF_CHALLENGES = new RegExp(
  unbroken`
    (?<!\p{L})(?:challeng\p{L}*|desafi\p{L}*|competencia\p{L}*|quiz|month(?:s)?|mes|rules|reglas|closing|
    closes?|cierra\p{L}*|cierre|(?:my|sent|swap|mi|la|mande|mandar|subir?) (?:\p{L}+ )?(?:pic|picture|photo|
    foto)s?|contests?|comps?|competitions?|rounds?|theme|vot\p{L}+|entr(?:y|ies|ar|ada|adas)|enter\p{L}*|
    submi\p{L}+|deadline|winn?(?:er|ers|ing)?|won|results?|judg\p{L}+|steward\p{L}*|retos?|concurs\p{L}*|
    tema|plazo|gana\p{L}*|gano|particip\p{L}+|inscri\p{L}+|rondas?|bases|jurad\p{L}+|ballot\p{L}*|
    papeleta\p{L}*)(?!\p{L})
  `,
  'u',
);

/** Jobs that a turn of phrase asks for, and no other field in the same words. */
const OURS_BY_PHRASE: ReadonlySet<Job> = new Set([
  'mix',
  'diagnose',
  'help',
  'preview',
  'shelf-add',
  'shelf-show',
  'survives-lye',
  'wet',
]);
/** From here on a hue that is likened to something is one of another field. */
const SURELY_ELSEWHERE = 0.9;

/** A second reading with at least this share of the first one's chance is offered beside it. */
const NEAR = 0.25;

/** Jobs that are about a colouring thing, so that one which no list of ours holds is told that it is not known. */
const OF_THINGS: ReadonlySet<Job> = new Set([
  'dose',
  'survives-lye',
  'law',
  'preview',
  'wet',
  'shelf-add',
  'shelf-use',
  'shelf-show',
  'compare',
]);

/** The one thing that is named, where its name is a colour's too: "un ocre de fachada vieja". */
const hueItself = (words: Words, things: readonly NamedThing[]): Target | undefined =>
  things.length === 1 && isColourWord(foldedColour(things[0]!.text)) ? wishIn(words, []) : undefined;

/** A white that is only called white is one of what a mix is made of. */
function withWhite(facts: Facts, { text }: Words): Facts {
  const white =
    facts.named.length === 0 ? undefined : whiteBeside(text)?.replace(/ (?:tint|pastel|medium|full)$/u, '');
  const isNamed = facts.named.some(name => /titan|zinc|white|blanc|kaolin|caolin/u.test(name));
  return white === undefined || isNamed ? facts : { ...facts, named: [...facts.named, white] };
}

/** Jobs that are done for a portion, which may be a part of the batch that is told. */
export const OF_PORTION: ReadonlySet<Job> = new Set(['dose', 'wet', 'mix', 'preview']);
/** Jobs that are done for the whole batch. */
const OF_BATCH: ReadonlySet<Job> = new Set(['plan', 'lye']);

/** The facts with the portion that a job is done for: the whole batch of a plan, a pound of oils of a rate that is looked at. */
function portionFor(job: Job, read: Facts): Facts {
  const { size, portion, oils, strength, named } = read;
  if (OF_BATCH.has(job) && oils === undefined && portion !== undefined && size !== undefined)
    return { ...read, portion: size, reckoned: undefined, unclear: [] };
  const rate = / ppo$/u.test(strength ?? '') ? strength!.replace(/ ppo$/u, '') : undefined;
  // A dose takes the rate for how strong, and is told by the cup.
  if (rate === undefined || portion !== undefined || job === 'dose') return read;
  const mix = job === 'preview' && named.length === 1 ? `${rate} ${named[0]}` : read.mix;
  return { ...read, portion: POUND_OF_OILS, mix };
}

type Said = { readonly words: Words; readonly things: readonly NamedThing[] };

/** The shade that a dose of something named is to come to. */
const withShade = (facts: Facts, { words, things }: Said): Facts =>
  facts.target === undefined && facts.named.length > 0
    ? { ...facts, target: shadeWished(words, things) }
    : facts;

/** Where a mix is asked for, the colour that is named is the one that is wished, and what is at hand all that it may be made of. */
function forMix(told: Facts, { words, things }: Said): Facts {
  const onHand = onHandIn(words, things);
  const target =
    told.target ?? wishIn(words, things) ?? wishOfThing(words, things) ?? hueItself(words, things);
  return withWhite({ ...told, target, ...(onHand.length > 0 && { onHand }) }, words);
}

/** A certified colour by its number, which kitchens have too: "FD&C Blue 1". */
const isNumbered = ({ text }: NamedThing): boolean => /^(?:fd ?& ?c|d ?& ?c) /u.test(text);

/** What a question tells, as its likeliest job takes it. */
function factsFor(job: Job | undefined, read: Facts, { words, things }: Said): Facts {
  const fitted = job === undefined ? read : portionFor(job, read);
  const told = job === 'dose' ? withShade(withRateAsked(fitted, words), { words, things }) : fitted;
  // Where a mix is asked for, the colour that is named is the one that is wished.
  if (job === 'mix') return forMix(told, { words, things });
  const isOfThings = job !== undefined && OF_THINGS.has(job);
  const beside = isOfThings && things.length > 0 ? plantsBeside(words, things) : [];
  if (beside.length > 0) return { ...told, named: [...told.named, ...beside], plants: beside };
  const unlisted =
    isOfThings && things.length === 0 ? (unlistedIn(words)?.text ?? kindAlone(words)) : undefined;
  return unlisted === undefined
    ? told
    : { ...told, named: [unlisted], subject: unlisted, mix: told.mix ?? unlisted };
}

/** What the law of a region says of a named colourant is ours, whoever sells what is made with it, but for another craft's. */
const ALLOWED = /\b(?:allowed|permitted|legal|banned|forbidden|permitid[oa]s?|prohibid[oa]s?|legales)\b/u;
const isLawAsked = ({ text, words }: Words, { things, facts }: Found): boolean =>
  ALLOWED.test(text) &&
  (facts.region !== undefined || facts.country !== undefined) &&
  things.some(({ colourants }) => colourants.length > 0) &&
  !isOfCraft(words);

/** The facts for a further reading: its own portion beside what was settled for the first. */
const withPortionOf = (job: Job, facts: Facts, told: Facts): Facts => {
  const { portion, reckoned, unclear } = portionFor(job, told);
  return { ...facts, portion, reckoned, unclear };
};

const NOTHING_SAID: Judgement = { chances: [], elsewhere: 0 };
const judged = ({ chances, elsewhere }: Judgement): Judged => ({
  elsewhere,
  job: chances.find(({ of }) => of !== 'outside')?.chance ?? 0,
  noJob: chances.find(({ of }) => of === 'outside')?.chance ?? 0,
});

const jobsAmong = (chances: readonly Chance[], { text }: Words): readonly JobChance[] =>
  chances
    .filter((one): one is JobChance => one.of !== 'outside')
    .filter(({ of }) => of !== 'challenge' || OF_CHALLENGES.test(text));

type JobChance = Chance & { readonly of: Job };

/** What is plainly asked of, where nothing else was named or wished. */
function withPlain(facts: Facts, plain: PlainJob | undefined): Facts {
  if (plain?.job !== 'mix' || facts.target !== undefined) return facts;
  const named = colourNamed(plain.of);
  return named ? { ...facts, target: { text: plain.of, hex: named.hex, name: named.name } } : facts;
}

/**
 * Reads a plain question: which command it asks for, with which options, as far as its own words tell. Nothing is added that
 * the words do not say. `said`: the question without its talk. Pure; a few milliseconds; only the first 2,000 letters count.
 * @example readQuestion('how much ultramarine for 2 cups?').readings[0].given // { colourant: 'ultramarine', portion: '2 cups' }
 */
export function readQuestion(question: string, said = askedPart(question)): QuestionRead {
  const { words, found } = foundIn(said);
  const { things, facts: read } = found;
  const judgement = words.text === '' ? NOTHING_SAID : judgedOf(question, { text: said, words, found });
  const { chances } = judgement;
  const judge = judged(judgement);
  const plainly = plainJobOf(words, things);
  const elsewhere = chanceOfField(words, judge);
  const told = plainly ? undefined : jobByPhrase(words, found);
  // What is surely of another field likens no colour of ours.
  const isLikened = told === 'mix' || told === 'diagnose' || told === 'preview';
  const phrase = isLikened && elsewhere >= SURELY_ELSEWHERE ? undefined : told;
  const among = jobsAmong(chances, words);
  const jobs = plainly
    ? [{ of: plainly.job, chance: 1 }]
    : phrase
      ? [{ of: phrase, chance: 1 }, ...among.filter(({ of }) => of !== phrase)]
      : among;
  const best = jobs[0]?.chance ?? 0;
  const isNothing = best < LEAST && !isOurs(words, found);
  const isToldOurs = plainly !== undefined || (phrase !== undefined && OURS_BY_PHRASE.has(phrase));
  const isColourant = things.some(({ colourants }) => colourants.length > 0);
  const field =
    words.text === '' || isToldOurs
      ? undefined
      : fieldOf(words, elsewhere, { isNothing, isColourant, isNumbered: things.some(isNumbered) });
  const isAskedOfOurs = isLawAsked(words, found) || (phrase === 'dose' && asksHowMuchOf(words, found));
  const outside = field === 'other' && isAskedOfOurs ? undefined : field;
  const facts = withPlain(factsFor(jobs[0]?.of, read, { words, things }), plainly);
  const isUnderstood = outside === undefined && !isNothing;
  // Who doses for a shade may want what mixes to it.
  const isShade = jobs[0]?.of === 'dose' && read.target === undefined && facts.target !== undefined;
  return {
    readings: isUnderstood
      ? [...jobs.slice(0, 1), ...(isShade ? [{ of: 'mix', chance: best } as const] : jobs.slice(1))]
          .filter(({ chance }, at) => at === 0 || (at === 1 && chance >= NEAR * best))
          .map(({ of, chance }, at) => ({
            job: of,
            score: chance,
            ...commandFor(
              of,
              of === 'diagnose' ? question : said,
              at === 0 ? facts : withPortionOf(of, facts, read),
            ),
          }))
      : [],
    facts,
    corrections: words.corrections,
    outside,
    elsewhere,
    hotProcess: isHotProcess(words.text),
  };
}
