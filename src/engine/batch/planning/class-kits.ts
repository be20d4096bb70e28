import { refuse } from '../../refusal.ts';
import type { AdditiveId, PlanRequest } from '../request.ts';
import { planBatch } from './plan.ts';
import type { PlanAnswer } from './plan-answer.ts';
import { rescale } from './rescale.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'class-out-of-range': { people: number; stations: number; mostPeople: number };
  }
}

const MOST_PEOPLE = 60;

/** A class: how many come, at how many stations, and whether the plan is each station's or the whole class's. */
export type ClassAsk = {
  readonly people: number;
  readonly stations: number;
  readonly planIsFor: 'station' | 'class';
};

/** Something a teacher does for the class; `src/words` speaks it. Lye never leaves the scale unweighed. */
export type ClassStep = {
  readonly id:
    | 'lye-weighed-by-leader'
    | 'lye-label-each-jug'
    | 'gear-for-all'
    | 'oils-into-station-pots'
    | 'colours-into-cups'
    | 'one-at-the-lye';
};

/** The plan of one station, its people, and what to buy for all. Grams. */
export type ClassPlan = {
  readonly station: PlanAnswer;
  readonly stations: number;
  /** How many people stand at each station. */
  readonly peopleAt: readonly number[];
  readonly totals: {
    readonly oils: readonly { readonly id: string; readonly grams: number }[];
    /** Liquids in the place of water, and what is stirred in. */
    readonly additives: readonly { readonly id: AdditiveId; readonly grams: number }[];
    /** Of dissolved lye with its water. */
    readonly lyeGrams: number;
    readonly waterGrams: number;
    /** Pairs of gloves and goggles: everybody and the leader. */
    readonly gear: number;
  };
  readonly steps: readonly ClassStep[];
};

const STEPS: readonly ClassStep[] = [
  { id: 'gear-for-all' },
  { id: 'lye-weighed-by-leader' },
  { id: 'lye-label-each-jug' },
  { id: 'oils-into-station-pots' },
  { id: 'colours-into-cups' },
  { id: 'one-at-the-lye' },
];

/** What one station plans. Throws a Refusal `class-out-of-range` or `rescale-out-of-range`. */
export function stationRequest(request: PlanRequest, { people, stations, planIsFor }: ClassAsk): PlanRequest {
  const whole = Number.isInteger(people) && Number.isInteger(stations);
  if (!whole || people < 1 || people > MOST_PEOPLE || stations < 1 || stations > people) {
    refuse('class-out-of-range', { people, stations, mostPeople: MOST_PEOPLE });
  }
  return planIsFor === 'class' ? rescale(request, 1 / stations) : request;
}

/**
 * Scales a plan into kits, one a station. Each station's lye is a weighing of its own on the leader's scale, rounded
 * down and checked like any batch, so a kit too small for that scale is refused (`scale-too-coarse`).
 * Throws a Refusal `class-out-of-range`, or any of `planBatch`.
 */
export function planClass(request: PlanRequest, ask: ClassAsk): ClassPlan {
  const { people, stations } = ask;
  const station = planBatch(stationRequest(request, ask));
  return {
    station,
    stations,
    peopleAt: Array.from({ length: stations }, (_, at) =>
      Math.floor((people + stations - 1 - at) / stations),
    ),
    totals: {
      oils: station.oils.map(({ id, grams }) => ({ id, grams: grams * stations })),
      additives: station.additives.map(({ id, grams }) => ({ id, grams: grams * stations })),
      lyeGrams: (station.jug.solution?.grams ?? station.lye.grams) * stations,
      waterGrams: station.water.grams * stations,
      gear: people + 1,
    },
    steps: STEPS,
  };
}
