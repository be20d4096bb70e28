import type { Challenge, EntryState } from '../../src/engine/challenges/challenge.ts';
import { colourantById, colourants } from '../../src/engine/colourants/catalogue.ts';
import { type Bar, barOf, type StoredChallenge } from '../../src/records/challenges/queries.ts';
import type { Words } from '../../src/words/index.ts';

/** An entry with the number it is known by. Numbers follow the order of entering and never change. */
export type NumberedBar = EntryState & {
  readonly number: number;
  readonly entry: string;
  readonly by: string;
  readonly bar: Bar;
  /** The event that handed it in last, under which its photo is kept. */
  readonly event: string;
};

/** Ids are whole numbers in decimal: the shorter is the older. */
const older = (a: string, b: string) => a.length - b.length || (a < b ? -1 : 1);

/** Every entry there ever was, those withdrawn or taken out included, in the order of their numbers. */
export const numberedBars = (challenge: StoredChallenge, { entries }: Challenge): readonly NumberedBar[] =>
  [...entries.values()]
    .sort((a, b) => older(a.entry, b.entry))
    .map((entered, index) => ({ ...entered, number: index + 1, ...barOf(challenge, entered) }));

/** Those in the running. */
export const inTheRunning = (bars: readonly NumberedBar[]) =>
  bars.filter(({ state }) => state === 'standing');

/** A member's own bars that a steward took out, with the reason. */
export const takenOutOf = (
  bars: readonly NumberedBar[],
  member: string,
): readonly { readonly title: string; readonly reason: string }[] =>
  bars.flatMap(one =>
    one.by === member && one.state === 'disqualified' ? [{ title: one.bar.title, reason: one.reason }] : [],
  );

/** False while it is not to be said who made what: until the results, where the terms ask for that. */
export const makersAreKnown = ({ terms, phase }: Challenge): boolean =>
  !terms.anonymous || phase === 'closed';

/** A bar as members may know it now: its title, and its maker where that is no secret. */
export function nameOfBar({ bar }: { bar: Bar }, challenge: Challenge, say: Words): string {
  return makersAreKnown(challenge) ? say.challenges.byMaker(bar) : say.challengeSteps.quoted(bar);
}

/**
 * What a bar is coloured with as members may know it now. A jar's own name tells whose shelf it stands on: while
 * makers are hidden a colourant goes by its name in the catalogue, and one that is not there by none.
 */
export function colourantsOfBar(
  { bar }: { bar: Bar },
  challenge: Challenge,
  { language }: Words,
): readonly string[] {
  if (makersAreKnown(challenge)) return bar.colourants;
  return [...new Set(kindsOf(bar).flatMap(id => colourantById(id)?.names[language] ?? []))];
}

/** Of a bar that was kept without its kinds, only what the catalogue calls by the very same name. */
const kindsOf = (bar: Bar): readonly string[] =>
  bar.kinds ??
  colourants
    .filter(({ names }) => bar.colourants.includes(names.en) || bar.colourants.includes(names.es))
    .map(({ id }) => id);

/** The same with its number before it. */
export const numberedName = (bar: NumberedBar, challenge: Challenge, say: Words): string =>
  `${bar.number}. ${nameOfBar(bar, challenge, say)}`;

/** A colour difference to a tenth: no photo knows it any better. */
export const tenth = (difference: number): number => Math.round(10 * difference) / 10;
