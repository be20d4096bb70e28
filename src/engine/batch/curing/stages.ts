import { daysLater, instantOf, wallTimeAt } from '../../challenges/wall-time.ts';
import type { Band } from '../../origin.ts';
import { isPaste, isSaltBar, SALT_BAR_HOURS } from '../bar-kind.ts';

/** What a batch asks of its maker after the pour, in this order. */
export const STAGES = ['heat', 'unmould', 'cut', 'turn', 'cured', 'retest'] as const;
export type Stage = (typeof STAGES)[number];

/** What the dates of a batch hang on. */
export type StageFacts = {
  /** When the loaf is hottest, hours after pouring; undefined where nobody worked it out or it stays cool. */
  readonly peakHours: number | undefined;
  /** Days until it is cured. */
  readonly cure: Band;
  readonly kohShare: number;
  readonly saltPercent: number;
  readonly gelled: boolean;
  readonly lyeConcentration: number;
  /** False where every bar has a mould of its own. */
  readonly isLoaf: boolean;
};

/** When something is to be done, ms since 1970 UTC; `exact` where it cannot wait for the maker's hour. */
export type StageDate = { readonly stage: Stage; readonly at: number; readonly exact: boolean };

const HOUR = 3_600_000;
export const DAY = 24 * HOUR;
/** Hours until a loaf comes out, and until it is cut after that (common practice: as soon as it is firm as cheese). */
const UNMOULD = 24;
const CUT_AFTER = 12;
/** A loaf that did not gel, or with much water, is soft for longer, hours (common practice). */
const NOT_GELLED = 12;
const MUCH_WATER = 24;
const MUCH_WATER_BELOW = 28;
/** Bars on a rack are turned once a week (common practice). */
export const TURN_EVERY = 7 * DAY;
/** A shared bar is looked at again after three months: light has had its time. */
export const RETEST_AFTER = 91 * DAY;

/** After so long (ms) nobody needs to be told of a stage any more: it was done, or it is too late. */
export const STALE: Readonly<Record<Stage, number>> = {
  heat: 4 * HOUR,
  unmould: 3 * DAY,
  cut: 3 * DAY,
  turn: 6 * DAY,
  cured: 60 * DAY,
  retest: 60 * DAY,
};

/** The dates of a batch poured at a time (ms since 1970 UTC), before anybody's hour is looked at. */
export function stageDates(pouredAt: number, facts: StageFacts): readonly StageDate[] {
  const { peakHours, cure } = facts;
  const cured: StageDate = { stage: 'cured', at: pouredAt + cure.typical * DAY, exact: false };
  const heat: readonly StageDate[] =
    peakHours === undefined ? [] : [{ stage: 'heat', at: pouredAt + peakHours * HOUR, exact: true }];
  if (isPaste(facts.kohShare)) return [...heat, cured];
  const out = outAndCut(pouredAt, facts);
  const cutAt = out.at(-1)!.at;
  return [...heat, ...out, { stage: 'turn', at: cutAt + TURN_EVERY, exact: false }, cured];
}

/** A bar full of salt is cut within hours or not at all; bars from cavities are not cut. */
function outAndCut(pouredAt: number, facts: StageFacts): readonly StageDate[] {
  if (isSaltBar(facts.saltPercent)) {
    const at = pouredAt + SALT_BAR_HOURS[0] * HOUR;
    return facts.isLoaf
      ? [{ stage: 'cut', at, exact: true }]
      : [{ stage: 'unmould', at: pouredAt + SALT_BAR_HOURS[1] * HOUR, exact: true }];
  }
  const soft = (facts.gelled ? 0 : NOT_GELLED) + (facts.lyeConcentration < MUCH_WATER_BELOW ? MUCH_WATER : 0);
  const unmould: StageDate = { stage: 'unmould', at: pouredAt + (UNMOULD + soft) * HOUR, exact: false };
  const cut: StageDate = { stage: 'cut', at: unmould.at + CUT_AFTER * HOUR, exact: false };
  return facts.isLoaf ? [unmould, cut] : [unmould];
}

/** The first time at or after `at` (ms since 1970 UTC) when the clocks of the zone show that hour, 0 to 23. */
export function nextHour(
  at: number,
  { zone, hour }: { readonly zone: string; readonly hour: number },
): number {
  const wall = { ...wallTimeAt(at, zone), hour, minute: 0 };
  const today = instantOf(wall, zone).at;
  return today >= at ? today : instantOf(daysLater(wall, 1), zone).at;
}

/** Whether a stage that was due is still worth telling; ms since 1970 UTC. */
export const isInTime = (stage: Stage, due: number, now: number): boolean => now - due <= STALE[stage];

/**
 * When a stage that comes every week is told next, at the maker's hour: a week after it was told, however late that was. One that
 * came too late to be told is told instead at their next hour.
 */
export function nextWeek(
  { stage, due, now }: { readonly stage: Stage; readonly due: number; readonly now: number },
  clock: { readonly zone: string; readonly hour: number },
): number {
  // Half a day short of a week: the hour it was told at may lie behind the maker's hour.
  const week = TURN_EVERY - DAY / 2;
  return nextHour(isInTime(stage, due, now) ? Math.max(due, now) + week : Math.max(due + week, now), clock);
}

/** When it is told: at once where it cannot wait, else at the maker's hour. */
export const toldAt = (
  { at, exact }: StageDate,
  clock: { readonly zone: string; readonly hour: number },
): number => (exact ? at : nextHour(at, clock));

/** The dates as they are told at the maker's hour; a loaf is cut so long after its coming out was told. */
export function toldDates(
  dates: readonly StageDate[],
  clock: { readonly zone: string; readonly hour: number },
): readonly StageDate[] {
  const unmould = dates.find(({ stage }) => stage === 'unmould');
  const firm = unmould === undefined ? 0 : toldAt(unmould, clock) + CUT_AFTER * HOUR;
  return dates.map(date => {
    const at = date.stage === 'cut' ? Math.max(date.at, firm) : date.at;
    return { ...date, at: toldAt({ ...date, at }, clock) };
  });
}
