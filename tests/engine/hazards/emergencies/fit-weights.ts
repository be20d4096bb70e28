import {
  type Account,
  START,
  type Weights,
} from '../../../../src/engine/hazards/emergencies/evidence/weigh.ts';
import { type EmergencyId, WEIGHED_IDS, type WeighedId } from '../../../../src/engine/hazards/index.ts';
import { REASONED } from './reasoned-weights.ts';

/** A text as the fit sees it: its accounts, and the emergency it tells of, if any. */
export type Sample = {
  readonly accounts: ReadonlyMap<WeighedId, readonly Account[]>;
  readonly id: EmergencyId | undefined;
};

const ROUNDS = 3;
const STEPS = 50;
const RATE = 1 / 60;
/** Pull towards the reasoned weights, per weight: as strong as this many texts of one kind. */
const PULL = 3;

/** A weight never changes the side it speaks for. */
const onItsSide = (weight: number, reasoned: number, name: string) =>
  name === START ? weight : reasoned >= 0 ? Math.max(0, weight) : Math.min(0, weight);

/**
 * Multinomial logistic regression of "no emergency" (score 0) and the nine, each text by its best account, held to
 * {@link REASONED} by a squared penalty; plain gradient steps from there, so the same texts give the same weights.
 */
export function fitWeights(samples: readonly Sample[]): Weights {
  const table = WEIGHED_IDS.flatMap(id =>
    Object.entries(REASONED[id]).map(([name, weight]) => ({ id, name, weight })),
  );
  const places = new Map(table.map(({ id, name }, at) => [`${id} ${name}`, at]));
  const weights = Float64Array.from(table, ({ weight }) => weight);
  const rowOf = (id: WeighedId, { names }: Account) =>
    Int32Array.from([START, ...names].flatMap(name => places.get(`${id} ${name}`) ?? []));
  const rows = samples.map(({ accounts, id }) => ({
    id,
    all: WEIGHED_IDS.flatMap(one => {
      const known = (accounts.get(one) ?? []).map(account => rowOf(one, account));
      return known.length > 0 ? [{ right: one === id, known }] : [];
    }),
  }));
  for (let round = 0; round < ROUNDS; round += 1) {
    const best = rows.map(({ all }) =>
      all.map(({ right, known }) => ({
        right,
        row: known.reduce((a, b) => (sumOf(b, weights) > sumOf(a, weights) ? b : a)),
      })),
    );
    for (let step = 0; step < STEPS; step += 1) descend(weights, { table, best });
  }
  const rounded = (at: number) => Math.round(weights[at]! * 100) / 100 || 0;
  return Object.fromEntries(
    WEIGHED_IDS.map(id => [
      id,
      Object.fromEntries(table.flatMap((one, at) => (one.id === id ? [[one.name, rounded(at)]] : []))),
    ]),
  ) as Weights;
}

function sumOf(row: Int32Array, weights: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < row.length; i += 1) sum += weights[row[i]!]!;
  return sum;
}

type Rows = {
  readonly table: readonly { readonly name: string; readonly weight: number }[];
  readonly best: readonly (readonly { readonly right: boolean; readonly row: Int32Array }[])[];
};

function descend(weights: Float64Array, { table, best }: Rows): void {
  const slope = weights.map((weight, at) => PULL * (weight - table[at]!.weight));
  for (const taken of best) {
    const odds = taken.map(({ row }) => Math.exp(sumOf(row, weights)));
    const total = odds.reduce((sum, one) => sum + one, 1);
    taken.forEach(({ right, row }, at) => {
      const off = odds[at]! / total - (right ? 1 : 0);
      for (let i = 0; i < row.length; i += 1) slope[row[i]!]! += off;
    });
  }
  table.forEach(({ name, weight }, at) => {
    weights[at] = onItsSide(weights[at]! - RATE * slope[at]!, weight, name);
  });
}
