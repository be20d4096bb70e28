import type { Stage } from '../../engine/batch/curing/stages.ts';
import type { RecordOf } from '../record.ts';
import type { Store } from '../store.ts';
import type { batchKind, eventKind } from './schema.ts';

/** Whose batches. */
export type BatchBook = { readonly store: Store; readonly member: string };

/** What was poured, as it is written down. */
export type Poured = RecordOf<typeof batchKind>;
export type PouredPortion = Poured['portions'][number];
export type PouredColour = PouredPortion['colours'][number];

/** One thing that happened to it. */
export type BatchEvent = RecordOf<typeof eventKind>;
export type Did = BatchEvent['did'];
export type Cured = Extract<Did, { kind: 'cured' }>;
export type Measured = Cured['measured'][number];

/** A batch with all that became of it, oldest first. */
export type Batch = Poured & { readonly id: string; readonly events: readonly BatchEvent[] };

/** At most this many batches of one member. */
export const mostBatches = 1000;
/** And so many things that happened to one of them. */
export const mostEvents = 500;

/** The newest of the events of one kind. */
export function newest<Kind extends Did['kind']>(
  { events }: Pick<Batch, 'events'>,
  kind: Kind,
): (BatchEvent & { readonly did: Extract<Did, { kind: Kind }> }) | undefined {
  const found = events.findLast(({ did }) => did.kind === kind);
  return found as ReturnType<typeof newest<Kind>>;
}

/** How far a batch has come. */
export type State = 'poured' | 'cut' | 'cured';
export const stateOf = (batch: Pick<Batch, 'events'>): State =>
  newest(batch, 'cured') ? 'cured' : newest(batch, 'cut') ? 'cut' : 'poured';

/** True once a stage was done, by a press or by what was noted since. */
export function isDone(batch: Pick<Batch, 'events'>, stage: Stage): boolean {
  const state = stateOf(batch);
  if (stage === 'cured' && state === 'cured') return true;
  if (stage === 'retest' || stage === 'turn') return false;
  if (stage !== 'cured' && state !== 'poured') return true;
  return batch.events.some(({ did }) => did.kind === 'done' && did.stage === stage);
}

/** True while its maker wants no more reminders. */
export const isStopped = ({ events }: Pick<Batch, 'events'>): boolean =>
  events.findLast(({ did }) => did.kind === 'stopped' || did.kind === 'resumed')?.did.kind === 'stopped';

/** Everything that was on the scale, oldest first. */
export const weighingsOf = ({ events }: Pick<Batch, 'events'>) =>
  events.flatMap(({ at, did }) =>
    'grams' in did && did.grams ? [{ at: at.getTime(), grams: did.grams }] : [],
  );
