/* Matches a member was lately answered with: what the buttons and the menu under them go on with. */

import { z } from 'zod';
import { SPOONS } from '../../engine/quantities/spoons.ts';
import { refuse } from '../../engine/refusal.ts';
import { recentMatch, recentMatches, under } from '../keys.ts';
import { moment, read, readable, recordKind, written } from '../record.ts';
import { drop, put, type Store } from '../store.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'match-forgotten': Record<never, never>;
  }
}

const lab = z.object({ l: z.number(), a: z.number(), b: z.number() });

const asked = z.object({
  portion: z.string(),
  from: z.enum(['shelf', 'catalogue']).exactOptional(),
  /** The colourants that alone may be used, by name. */
  with: z.string().exactOptional(),
  most: z.int().min(1).max(3),
  base: z.string().exactOptional(),
  gelled: z.boolean(),
});

const kind = recordKind('late match', {
  asked,
  /** The colour that was matched; absent where one is still to be chosen, and in what an earlier program wrote. */
  target: lab.exactOptional(),
  /** Colours of a photo to choose from; empty where the target was given. */
  colours: z.array(z.object({ lab, hex: z.string() })),
  recipes: z.array(
    z.object({
      doses: z.array(
        z.object({
          colourant: z.string(),
          /** The jar on the member's shelf, and what leaves it. */
          item: z.string().exactOptional(),
          milligrams: z.int().min(0),
          /** Of dry powder, in the member's own teaspoons; and what to spoon, in neutral writing. */
          teaspoons: z.number().positive(),
          spoons: z.string(),
          /** The same as values; absent in what an earlier program wrote. */
          counts: z.array(z.object({ spoon: z.enum(SPOONS), count: z.int().positive() })).exactOptional(),
        }),
      ),
      /** One press takes it off the shelf: every colourant is there, and enough of it. */
      takeable: z.boolean(),
    }),
  ),
  at: moment,
});

/** What a match was asked with, in the member's own words. */
export type MatchAsked = z.output<typeof asked>;
export type RecentMatch = Omit<(typeof kind)['schema']['_output'], 'at'>;
export type RecentRecipe = RecentMatch['recipes'][number];

type Member = { readonly store: Store; readonly member: string };

/** As many matches of a member are remembered, the newest. */
const remembered = 20;
/** And no longer than this: their buttons are dead by then, milliseconds. */
const lifetime = 48 * 3_600_000;

/** Remembers a match under the id of the answer that showed it, and forgets those too old to go on with. */
export async function keepRecentMatch(
  { store, member }: Member,
  id: string,
  match: RecentMatch,
  at: Date,
): Promise<void> {
  const { from, to } = under(recentMatches(member));
  const key = recentMatch(member, id);
  const before = readable(kind, await store.range(from, to, 10 * remembered))
    .map(entry => ({ key: entry.key, at: entry.fields.at }))
    .sort((a, b) => b.at.getTime() - a.at.getTime());
  const old = before.filter(
    (one, place) => place >= remembered - 1 || at.getTime() - one.at.getTime() > lifetime,
  );
  await store.commit([
    put(key, written(kind, { ...match, at })),
    ...old.filter(one => one.key !== key).map(one => drop(one.key)),
  ]);
}

/** The match an answer showed. Throws a Refusal `match-forgotten` once newer ones have taken its place. */
export async function recentMatchOf({ store, member }: Member, id: string): Promise<RecentMatch> {
  const key = recentMatch(member, id);
  const [value] = await store.get([key]);
  return value === undefined ? refuse('match-forgotten', {}) : read(kind, key, value);
}
