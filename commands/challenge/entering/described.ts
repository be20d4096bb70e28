import type { Context } from '../../../src/conversation/context.ts';
import type { Challenge } from '../../../src/engine/challenges/challenge.ts';
import { calendarDay } from '../../../src/engine/challenges/day.ts';
import { type Bid, type Violation, violations } from '../../../src/engine/challenges/rules.ts';
import { isoDate } from '../../../src/engine/challenges/wall-time.ts';
import { refuse } from '../../../src/engine/refusal.ts';
import { type Bar, placingsOf } from '../../../src/records/challenges/index.ts';
import { scopeOf } from '../lookup.ts';
import type { Used } from './colourants-used.ts';

declare module '../../../src/engine/refusal.ts' {
  interface Reasons {
    'challenge-entry-unfit': { readonly violations: readonly Violation[] };
    'challenge-bar-title-unfit': { readonly most: number };
  }
}

const mostTitle = 80;

type EntryText = {
  readonly title: string;
  readonly note?: string | undefined;
  readonly made?: string | undefined;
  readonly used: readonly Used[];
  readonly replaces?: string | undefined;
};
export type Described = Omit<Bar, 'colour' | 'region'>;

/**
 * What was said of a bar, as it is kept. Throws a Refusal: `challenge-bar-title-unfit`, or `challenge-entry-unfit` that names
 * everything that breaks the terms.
 */
export async function describe(
  { title, note, made, used, replaces }: EntryText,
  now: Challenge,
  context: Context,
): Promise<Described> {
  const named = title.trim();
  if (named === '' || named.length > mostTitle) refuse('challenge-bar-title-unfit', { most: mostTitle });
  const technique = now.terms.class === 'technique' ? note?.trim() : undefined;
  const madeOn = made?.trim() ? isoDate(calendarDay(made)) : undefined;
  const bid: Bid = {
    by: context.asker.id,
    at: context.at,
    replaces,
    colourants: used.map(({ name, colourant }) => colourant ?? name),
    notOnShelf: used.filter(({ onShelf }) => !onShelf).map(({ name }) => name),
    madeOn,
    technique,
    wins: now.terms.class === 'beginner' ? await winsOf(context) : 0,
  };
  const found = violations(now, bid);
  if (found.length > 0) refuse('challenge-entry-unfit', { violations: found });
  return {
    title: named,
    maker: context.asker.name,
    colourants: used.map(({ name }) => name),
    kinds: [...new Set(used.flatMap(({ colourant }) => colourant ?? []))],
    ...(note?.trim() && { note: note.trim() }),
    ...(madeOn !== undefined && { madeOn }),
    ...(technique && { technique }),
  };
}

const winsOf = async (context: Context) =>
  (await placingsOf(scopeOf(context), context.asker.id)).filter(({ place }) => place === 1).length;
