import { unaccented } from '../../../text/unaccented.ts';
import { whenAsked } from '../../../when-asked.ts';
import { tellsOfHurt } from '../../lye/topics/nearest/hurt.ts';
import { ASPECTS, type Aspect } from './aspects.ts';
import type { AskedRow } from './row.ts';
import { ASKED_ROWS } from './table.ts';
import { THINGS, type Thing } from './things.ts';

/** Longer texts tell a story, in which a word stands for more than one thing, characters. */
const LONGEST = 130;

const compiled = (patterns: readonly string[]): RegExp =>
  new RegExp(`(?<![a-z0-9])(?:${patterns.join('|')})(?![a-z0-9])`, 'u');
const names = whenAsked(
  (): ReadonlyMap<string, RegExp> =>
    new Map([
      ...Object.entries(THINGS).map(([name, pattern]) => [name, compiled([pattern])] as const),
      ...Object.entries(ASPECTS).map(([name, patterns]) => [name, compiled(patterns)] as const),
    ]),
);

const plainOf = (text: string): string =>
  unaccented(text)
    .replace(/(?<=\p{L})['’](?=\p{L})/gu, '')
    .replace(/[^a-z0-9]+/gu, ' ')
    .trim();

/**
 * The answer to what is asked of which thing of the bench: where cured bars are kept, whether a colour is wetted in the scent. Both have to be
 * said, in whatever words and order, so that it needs no likeness to a question that was asked before. English and Spanish. Undefined where no
 * row of the table fits or somebody is hurt. `spokenOf`: an earlier turn, which may have named the thing. Pure.
 * @example askedOfBench('what do u store them in')?.to // { named: 'store-bars' }
 */
export function askedOfBench(
  question: string,
  spokenOf = '',
): Pick<AskedRow, 'technique' | 'to' | 'overFlaw'> | undefined {
  if (question.length > LONGEST || question.startsWith('/')) return undefined;
  const plain = plainOf(question);
  const earlier = plainOf(spokenOf);
  const said = new Map<string, boolean>();
  const isSaid = (name: Thing | Aspect): boolean => {
    const known = said.get(name) ?? names().get(name)!.test(plain);
    said.set(name, known);
    return known;
  };
  // A thing may have been named before; what is asked is said now.
  const isSpokenOf = (name: Thing | Aspect): boolean =>
    isSaid(name) || (Object.hasOwn(THINGS, name) && names().get(name)!.test(earlier));
  const row = ASKED_ROWS.find(
    ({ said: all, none = [] }) =>
      all.every(names => [names].flat().some(isSpokenOf)) &&
      all.some(names => [names].flat().some(isSaid)) &&
      !none.some(isSaid),
  );
  return row && !tellsOfHurt(question) ? row : undefined;
}
