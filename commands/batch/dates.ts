import {
  DAY,
  isInTime,
  type Stage,
  type StageDate,
  stageDates,
  TURN_EVERY,
  toldDates,
} from '../../src/engine/batch/curing/stages.ts';
import { dryingOf } from '../../src/engine/batch/curing/weight-loss.ts';
import { type Batch, isDone, newest, type ToPour, weighingsOf } from '../../src/records/batches/index.ts';
import { putDue } from '../../src/records/dues/dues.ts';
import type { Write } from '../../src/records/store.ts';

export type Clock = { readonly zone: string; readonly hour: number };

/** The name of a stage's due. */
export const dueName = (stage: Stage): string => `batch-${stage}`;

type Dated = Pick<
  ToPour,
  'peak' | 'cure' | 'kohShare' | 'saltPercent' | 'gelled' | 'lyeConcentration' | 'isLoaf' | 'at' | 'group'
> & { readonly id: string };

/** The dates of a batch as the pour sets them. */
export const datesOf = (batch: Dated): readonly StageDate[] =>
  stageDates(batch.at.getTime(), { ...batch, peakHours: batch.peak?.hours });

export const dueOf = ({ group, id }: Pick<Dated, 'group' | 'id'>, stage: Stage, at: number): Write =>
  putDue({ at: new Date(at), group, what: dueName(stage), id });

/** Everything that is still to come of a batch, as dues. What was over before it was noted is nobody's news. */
export function duesFor(
  batch: Dated,
  { clock, now }: { readonly clock: Clock; readonly now: number },
): readonly Write[] {
  return toldDates(datesOf(batch), clock)
    .filter(({ at }) => at > now)
    .map(({ stage, at }) => dueOf(batch, stage, at));
}

/**
 * What a batch asks for next and when its maker is told (ms since 1970 UTC); turning goes on week by week until it is cured.
 */
export function nextDates(
  batch: Batch,
  { clock, now }: { readonly clock: Clock; readonly now: number },
): readonly StageDate[] {
  if (newest(batch, 'cured')) return [];
  const drying = dryingOf(weighingsOf(batch));
  const dates = toldDates(datesOf(batch), clock)
    .map(date => {
      if (date.stage === 'turn') return { ...date, at: nextTurn(lastTold(batch) ?? date.at, now) };
      if (date.stage !== 'cured' || !drying) return date;
      return { ...date, at: curedAt(date.at, { drying, batch, now }) };
    })
    .filter(({ stage, at }) => !isDone(batch, stage) && (stage === 'cured' || isInTime(stage, at, now)))
    .sort((a, b) => a.at - b.at);
  // Cured bars are turned no more.
  const cured = dates.find(({ stage }) => stage === 'cured');
  return dates.filter(({ stage, at }) => stage !== 'turn' || cured === undefined || at < cured.at);
}

/** When the bars were last said to be turned (ms since 1970 UTC); weeks count from there. */
export const lastTold = ({ events }: Batch): number | undefined =>
  events
    .findLast(
      ({ at, did }) =>
        did.kind === 'told' && did.stage === 'turn' && isInTime('turn', did.due.getTime(), at.getTime()),
    )
    ?.at.getTime();

const nextTurn = (first: number, now: number): number =>
  first >= now ? first : first + Math.ceil((now - first) / TURN_EVERY) * TURN_EVERY;

/** Weights know better than the calendar, both ways. */
function curedAt(
  usual: number,
  {
    drying: { cured, weeksLeft },
    batch,
    now,
  }: {
    readonly drying: NonNullable<ReturnType<typeof dryingOf>>;
    readonly batch: Batch;
    readonly now: number;
  },
): number {
  const last = weighingsOf(batch).at(-1)?.at ?? now;
  if (cured) return last;
  return weeksLeft === undefined ? Math.max(usual, last + 7 * DAY) : last + weeksLeft * 7 * DAY;
}
