import { groupedBy } from '../../grouped.ts';
import { type PracticalSpoons, practicalSpoons, timesSpoons } from '../../quantities/spoons.ts';
import { refuse } from '../../refusal.ts';
import type { AdditiveId } from '../additives/additive.ts';
import type { PlanRequest } from '../request.ts';
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

/** One colour of all stations; of a wet one the paste is told. */
export type ClassColour = {
  /** Its id in the catalogue. */
  readonly colourant: string;
  readonly grams: number;
  readonly spoons: PracticalSpoons;
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
    readonly colours: readonly ClassColour[];
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
      colours: coloursOf(station, stations, request.measures),
      lyeGrams: (station.jug.solution?.grams ?? station.lye.grams) * stations,
      waterGrams: station.water.grams * stations,
      gear: people + 1,
    },
    steps: STEPS,
  };
}

/** Each colour once: as many spoons as the stations take one by one, or a paste where one station takes less than a spoon. */
function coloursOf(
  { portions }: PlanAnswer,
  stations: number,
  { owned }: PlanRequest['measures'],
): readonly ClassColour[] {
  const doses = portions.flatMap(portion => portion.doses);
  const named = groupedBy(doses, ({ colourant, premix }) => `${colourant.id}${premix ? ' wet' : ''}`);
  return [...named.values()].map(same => {
    const spooned = same.map(({ premix, spoons }) => premix?.spoons ?? spoons);
    const grams = same.reduce((sum, { premix, grams: dry }) => sum + (premix?.grams ?? dry).typical, 0);
    const teaspoons = spooned.reduce((sum, one) => sum + one.teaspoons, 0) * stations;
    const all = spooned.flatMap(({ spoons }) => spoons);
    const isSpooned = spooned.every(({ spoons }) => spoons.length > 0);
    return {
      colourant: same[0]!.colourant.id,
      grams: grams * stations,
      spoons: isSpooned
        ? { spoons: timesSpoons(all, stations, owned), teaspoons, off: 0 }
        : practicalSpoons(teaspoons, undefined, owned),
    };
  });
}
