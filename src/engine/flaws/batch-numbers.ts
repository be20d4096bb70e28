import type { ColourantKind } from '../colourants/colourant.ts';
import type { Lever } from '../heat/crackle.ts';
import type { RemedyId } from './remedies.ts';

/** How strongly a portion was coloured: level US teaspoons per US cup of raw batter. */
export type ColourRate = {
  /** Where it is known by name, from a plan; words name none. */
  readonly portion?: string;
  readonly colourant: string;
  readonly kind: ColourantKind;
  readonly perCup: number;
  /** By its kind, or by what bars taught of the jar. */
  readonly full: number;
  readonly most: number;
  /** How strong the jar is over its kind, where that is known. */
  readonly timesKind?: number | undefined;
};

/** What is known in numbers of the batch that went wrong, from the words or from the member's plan. */
export type BatchNumbers = {
  readonly rates: readonly ColourRate[];
  /** Liquid that went in with the colours of a portion, ml, its size in US cups, and its superfat, percent. */
  readonly carriers?: readonly {
    readonly portion: string;
    readonly cups: number;
    readonly millilitres: number;
    readonly superfat: number;
  }[];
  /** Grams of water, the lye strength in percent it makes, and the grams that 33 % would be. */
  readonly water?: { readonly grams: number; readonly strength: number; readonly atThirdGrams: number };
  /** Percent. */
  readonly superfat?: number;
  /** Estimate: degrees Celsius, chances 0 to 1; `levers` are what would lower the heat, best first. */
  readonly heat?: {
    readonly peakC: number;
    readonly lowC: number;
    readonly highC: number;
    readonly gelChance: number;
    readonly overheatChance: number;
    readonly levers: readonly Lever[];
  };
};

/** One number that goes with a remedy, for `src/words` to say. */
export type RemedyNumber =
  | { readonly id: 'rate'; readonly rate: ColourRate }
  | ({ readonly id: 'carrier' } & NonNullable<BatchNumbers['carriers']>[number])
  | ({ readonly id: 'water' } & NonNullable<BatchNumbers['water']>)
  | { readonly id: 'superfat'; readonly percent: number }
  | ({ readonly id: 'heat' } & Omit<NonNullable<BatchNumbers['heat']>, 'levers'>)
  | { readonly id: 'lever'; readonly lever: Lever };

const isWhite = ({ kind }: ColourRate) => kind === 'white';

/** The numbers of this batch that make a remedy plain: at most three. */
export function numbersFor(remedy: RemedyId, batch: BatchNumbers): readonly RemedyNumber[] {
  return all(remedy, batch).slice(0, 3);
}

function all(
  remedy: RemedyId,
  { rates, carriers = [], water, superfat, heat }: BatchNumbers,
): RemedyNumber[] {
  const rated = (list: readonly ColourRate[]) => list.map(rate => ({ id: 'rate' as const, rate }));
  switch (remedy) {
    case 'keep-white-under-ceiling':
    case 'less-white-pigment':
      return rated(rates.filter(rate => isWhite(rate) && rate.perCup > rate.full));
    case 'dose-down-to-ceiling':
      return rated(rates.filter(rate => rate.perCup > rate.full && !isWhite(rate)));
    case 'dose-up-stepwise':
      return rated(rates.filter(rate => rate.perCup < rate.full && !isWhite(rate)));
    case 'less-carrier':
      return carriers.map(carrier => ({ id: 'carrier', ...carrier }));
    case 'less-water':
    case 'steeper-water-discount':
      return water && water.grams > water.atThirdGrams ? [{ id: 'water', ...water }] : [];
    case 'fresh-oils-lower-superfat':
      return superfat !== undefined && superfat > 5 ? [{ id: 'superfat', percent: superfat }] : [];
    case 'less-heat':
    case 'no-insulation-for-hot-recipe':
    case 'all-gel-or-no-gel': {
      if (!heat) return [];
      const { levers, ...estimate } = heat;
      const cooler =
        remedy === 'less-heat' ? levers.slice(0, 1).map(lever => ({ id: 'lever' as const, lever })) : [];
      return [{ id: 'heat', ...estimate }, ...cooler];
    }
    default:
      return [];
  }
}
