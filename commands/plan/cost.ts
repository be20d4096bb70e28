import type { Block } from '../../src/conversation/reply.ts';
import { oilById } from '../../src/engine/batch/oils/find-oil.ts';
import { type Money, type Price, sumsOf } from '../../src/engine/cost/money.ts';
import { oilsCost } from '../../src/engine/cost/oil-prices.ts';
import { type ColourCost, colourCost, perBar, sumsView, unpricedView } from '../../src/presenting/cost.ts';
import type { PlanView } from './view.ts';

/** What a batch costs, as far as prices are known. */
export type PlanCost = {
  /** Undefined where no jar of it has a price, or the member's jars are not to be told. */
  readonly colour: ColourCost | undefined;
  /** The colour of each portion that has a price. */
  readonly portions: readonly { readonly name: string; readonly sums: readonly Money[] }[];
  readonly oils: ReturnType<typeof oilsCost> | undefined;
};

/** The cost of a plan. `own` tells whether what the member's own jars cost may be shown. */
export function costOfPlan(
  { answer, read }: PlanView,
  { prices, own }: { readonly prices: ReadonlyMap<string, Price> | undefined; readonly own: boolean },
): PlanCost {
  const taken = answer.portions.map(({ doses }, at) =>
    doses.map((dose, which) => ({
      item: read.jars[at]?.[which]?.item,
      grams: (dose.premix?.grams ?? dose.grams).typical,
    })),
  );
  const portions = taken.flatMap((doses, at) => {
    const cost = colourCost(doses);
    const name = read.request.portions[at]?.name ?? answer.portions[at]!.name;
    return cost ? [{ name, sums: cost.sums }] : [];
  });
  return {
    colour: own ? colourCost(taken.flat()) : undefined,
    portions: own ? portions : [],
    oils: prices && oilsCost(answer.oils, prices),
  };
}

/** The cost for programs; nothing where nothing has a price. */
export const costData = (cost: PlanCost): object => (isEmpty(cost) ? {} : { cost });

const isEmpty = ({ colour, oils }: PlanCost): boolean => colour === undefined && oils === undefined;

/** What the batch costs: colour by portion, oils, both. */
export function costBlocks({ answer, say }: PlanView, cost: PlanCost): readonly Block[] {
  if (isEmpty(cost)) return [];
  const { colour, portions, oils } = cost;
  const words = say.costs;
  const told = (sums: readonly Money[]) => ({
    sum: sumsView(sums, say),
    bar: sumsView(perBar(sums, answer.batter.grams), say),
  });
  const priced = oils && oils.sums.length > 0 ? oils.sums : undefined;
  return [
    {
      kind: 'rows',
      title: words.title,
      rows: [
        ...(colour ? [words.colour(told(colour.sums))] : []),
        ...(portions.length > 1
          ? portions.map(({ name, sums }) => words.ofPortion({ name, sum: sumsView(sums, say) }))
          : []),
        ...(priced ? [words.oils(told(priced))] : []),
        ...(priced && colour ? [words.both(told(sumsOf([...priced, ...colour.sums])))] : []),
        ...(oils && oils.unpriced.length > 0
          ? [words.oilsUnpriced({ names: oils.unpriced.map(id => oilById(id).names[say.language]) })]
          : []),
        ...(colour ? unpricedView(colour.unpriced, say) : []),
      ],
    },
  ];
}
