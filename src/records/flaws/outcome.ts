import type { CauseId } from '../../engine/flaws/cause.ts';
import type { TurnedOut } from '../../engine/flaws/inference.ts';
import { flawOutcome, flawOutcomes, under } from '../keys.ts';
import { type RecordOf, read, readable, written } from '../record.ts';
import { drop, everything, put } from '../store.ts';
import type { FlawScope } from './case.ts';
import { outcomeKind, type outcomes } from './schema.ts';

export type Outcome = (typeof outcomes)[number];

/** What a group found out, counted. */
export type Learned = {
  /** Cases told. */
  readonly cases: number;
  readonly counts: Readonly<Partial<Record<Outcome, number>>>;
  /** What of it shifts the chances: so many cases of a cause from one member and no more. */
  readonly turnedOut: TurnedOut;
};

/** Nobody alone can make a group believe in a flaw. */
export const MOST_OF_ONE_MEMBER = 3;

/** Keeps what a case turned out to be, in place of what was said of it before; an older word never wins. */
export async function keepOutcome(
  { store, group }: FlawScope,
  id: string,
  outcome: Readonly<RecordOf<typeof outcomeKind>>,
): Promise<void> {
  const key = flawOutcome(group, id);
  const [before] = await store.get([key]);
  if (before !== undefined && read(outcomeKind, key, before).at > outcome.at) return;
  await store.commit([put(key, written(outcomeKind, outcome))]);
}

/** What the cases of a group turned out to be. */
export async function learnedIn({ store, group }: FlawScope): Promise<Learned> {
  const entries = await everything(store, under(flawOutcomes(group)));
  const told = readable(outcomeKind, entries).map(({ fields }) => fields);
  const counts: Partial<Record<Outcome, number>> = {};
  const turnedOut: Partial<Record<CauseId, number>> = {};
  const ofMember = new Map<string, number>();
  for (const { cause, member } of told) {
    counts[cause] = (counts[cause] ?? 0) + 1;
    const own = (ofMember.get(`${cause} ${member}`) ?? 0) + 1;
    ofMember.set(`${cause} ${member}`, own);
    if (cause !== 'something-else' && own <= MOST_OF_ONE_MEMBER)
      turnedOut[cause] = (turnedOut[cause] ?? 0) + 1;
  }
  return { cases: told.length, counts, turnedOut };
}

/** Forgets what the cases of a group turned out to be; what is told from now on counts again. Returns how many. */
export async function forgetOutcomes({ store, group }: FlawScope): Promise<number> {
  const entries = await everything(store, under(flawOutcomes(group)));
  for (let at = 0; at < entries.length; at += 200)
    await store.commit(entries.slice(at, at + 200).map(({ key }) => drop(key)));
  return entries.length;
}
