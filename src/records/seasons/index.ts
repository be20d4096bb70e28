/* The season's palette of a group: each member may put one forward and votes for one, and a steward settles it. */

import { z } from 'zod';
import { season, seasonPalette, seasonPalettes, seasonVote, seasonVotes, under } from '../keys.ts';
import { moment, type RecordOf, read, readable, recordKind, written } from '../record.ts';
import { drop, everything, put, type Store } from '../store.ts';

const palette = { title: z.string().min(1), colours: z.array(z.string()).min(1) };
const proposalKind = recordKind('season palette', {
  /** What brought it; a vote names this, so that it leads to nobody. */
  id: z.string(),
  member: z.string(),
  ...palette,
  at: moment,
});
const voteKind = recordKind('season vote', { member: z.string(), palette: z.string(), at: moment });
const seasonKind = recordKind('season', { ...palette, votes: z.int(), at: moment });

type Scope = { readonly store: Store; readonly group: string };
export type Proposal = RecordOf<typeof proposalKind> & { readonly votes: number };
export type Season = RecordOf<typeof seasonKind>;

/** Puts a palette forward in place of the member's earlier one; votes for that do not count for this. */
export async function proposePalette(
  { store, group }: Scope,
  proposal: RecordOf<typeof proposalKind>,
): Promise<void> {
  await store.commit([put(seasonPalette(group, proposal.member), written(proposalKind, proposal))]);
}

/** Palettes put forward with their votes, the most liked first; a vote for one that is gone counts for none. */
export async function proposals({ store, group }: Scope): Promise<readonly Proposal[]> {
  const [forward, cast] = await Promise.all([
    everything(store, under(seasonPalettes(group))),
    everything(store, under(seasonVotes(group))),
  ]);
  const votes = readable(voteKind, cast).map(({ fields }) => fields);
  return readable(proposalKind, forward)
    .map(({ fields }) => ({
      ...fields,
      votes: votes.filter(({ palette: chosen }) => chosen === fields.id).length,
    }))
    .sort((a, b) => b.votes - a.votes || a.at.getTime() - b.at.getTime());
}

/** Votes for a palette by its id, in place of the member's earlier vote. */
export async function voteFor(
  { store, group }: Scope,
  { member, chosen, at }: { readonly member: string; readonly chosen: string; readonly at: Date },
): Promise<void> {
  await store.commit([put(seasonVote(group, member), written(voteKind, { member, palette: chosen, at }))]);
}

/** Settles on a palette: it is the season's, and the next season begins with nothing put forward. */
export async function settleSeason({ store, group }: Scope, settled: Season): Promise<void> {
  const [forward, cast] = await Promise.all([
    everything(store, under(seasonPalettes(group))),
    everything(store, under(seasonVotes(group))),
  ]);
  await store.commit([
    put(season(group), written(seasonKind, settled)),
    ...[...forward, ...cast].map(({ key }) => drop(key)),
  ]);
}

/** The season's palette; undefined where none was settled. */
export async function seasonOf({ store, group }: Scope): Promise<Season | undefined> {
  const key = season(group);
  const [value] = await store.get([key]);
  return value === undefined ? undefined : read(seasonKind, key, value);
}
