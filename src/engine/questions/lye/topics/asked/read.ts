import { unaccented } from '../../../../text/unaccented.ts';
import { toldAmounts, wordsOfBatch } from '../../slips/told-amounts.ts';
import { tellsOfHurt } from '../nearest/hurt.ts';
import type { LyeTopic } from '../topic.ts';
import { isHarmMatter } from '../topics.ts';
import { ASPECTS, type Aspect } from './aspects.ts';
import { ASKED_ROWS, type AskedRow } from './table.ts';
import { THINGS, type Thing } from './things.ts';

/** Longer texts tell of a batch, and ask nothing that is answered alike for all. */
const LONGEST = 240;

const compiled = (patterns: readonly string[]): RegExp =>
  new RegExp(`(?<![a-z0-9])(?:${patterns.join('|')})(?![a-z0-9])`, 'u');
const NAMES: ReadonlyMap<string, RegExp> = new Map([
  ...Object.entries(THINGS).map(([name, pattern]) => [name, compiled([pattern])] as const),
  ...Object.entries(ASPECTS).map(([name, patterns]) => [name, compiled(patterns)] as const),
]);

const plainOf = (question: string): string =>
  unaccented(question)
    .replaceAll('%', ' percent ')
    .replace(/[^a-z0-9]+/gu, ' ')
    .trim();

type Name = Thing | Aspect;

/**
 * Which matter a general question is about, by what is asked of what: whether clay changes the lye, how long lye water
 * keeps, off what the superfat is taken. English and Spanish. Undefined where no row of the table fits, oils are told with
 * their weights, somebody is hurt, or the words are of a matter of harm. Pure.
 * @example askedTopicIn('does clay change my lye number') // 'takes-no-lye'
 */
export function askedTopicIn(question: string): LyeTopic | undefined {
  if (question.length > LONGEST || question.startsWith('/')) return undefined;
  const plain = plainOf(question);
  const isSaid = (name: Name) => NAMES.get(name)!.test(plain);
  const isOneSaid = (names: Name | readonly Name[]) => [names].flat().some(isSaid);
  const fits = ({ of, asked, none = [] }: AskedRow) =>
    of.every(isOneSaid) && asked.every(isOneSaid) && !none.some(isSaid);
  const row = ASKED_ROWS.find(fits);
  if (!row || isHarmMatter(question) || tellsOfHurt(question)) return undefined;
  return tellsOils(question) ? undefined : row.topic;
}

const tellsOils = (question: string): boolean =>
  toldAmounts(wordsOfBatch(question)).some(({ role }) => role === 'oil');
