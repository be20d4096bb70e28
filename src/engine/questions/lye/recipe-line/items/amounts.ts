import { figureText } from '../../../../quantities/for-readers.ts';
import { OUNCE_G, POUND_G } from '../../../../quantities/units.ts';
import type { IngredientsTold } from '../settling/ingredients-told.ts';
import type { Pair } from '../settling/parts.ts';
import { timesOf } from '../settling/times.ts';
import type { Unclear } from '../unclear.ts';
import type { Amount, Name, Unit } from './item.ts';
import { isWhole, noHundred, unplaced } from './percents.ts';
import { LEAST_GRAMS, unitBeside } from './unit-beside.ts';

/** The oils of a line as the strict reader takes them, and what they weigh in all where they are shares or scaled. */
export type Oils = {
  readonly list: readonly string[];
  readonly size: string | undefined;
  readonly unit: Unit;
};

const GRAMS: Readonly<Partial<Record<Unit, number>>> = { g: 1, kg: 1000, oz: OUNCE_G, lb: POUND_G };
const isMass = (unit: Unit | undefined): unit is 'g' | 'kg' | 'oz' | 'lb' =>
  unit !== undefined && GRAMS[unit] !== undefined;
const neat = (figure: number) => figureText(figure, 4);
const gramsOf = ({ figure, unit }: Amount): number | undefined =>
  isMass(unit) ? figure * GRAMS[unit]! : undefined;
const isAmountPair = (pair: Pair): pair is Pair & { readonly measure: Amount } =>
  pair.measure.is === 'amount';

/** From what sum bare figures are grams and no percents. */
const LIKE_GRAMS = 110;

/** The unit of every figure of an oil that has none. */
function unitOfBare(
  told: IngredientsTold,
  oils: readonly Pair[],
): ((figure: number) => Unit | undefined) | undefined {
  const amounts = oils.filter(isAmountPair).map(({ measure }) => measure);
  const bare = amounts.filter(({ unit }) => unit === undefined);
  if (bare.length === 0) return () => undefined;
  if (told.unit !== undefined) return () => told.unit;
  const units = new Set(amounts.flatMap(({ unit }) => (unit === undefined ? [] : [unit])));
  const sum = amounts.reduce((all, { figure }) => all + figure, 0);
  // "32 oz oils: 20 olive, 8 coconut, 4 shea".
  const all = told.whole;
  if (
    all &&
    isMass(all.unit) &&
    bare.length === amounts.length &&
    Math.abs(sum - all.figure) <= 0.01 * all.figure
  )
    return () => all.unit;
  if (units.has('part')) return () => 'part';
  const hasRest = oils.some(({ measure }) => measure.is === 'rest');
  if (units.has('%'))
    return units.size === 1 && (isWhole(sum) || (hasRest && sum < 100)) ? () => '%' : undefined;
  const most = Math.max(...amounts.flatMap(({ figure, unit }) => (unit === undefined ? [] : [figure])));
  if (units.size > 0) return figure => unitBeside(figure, units, most);
  if (isWhole(sum)) return () => '%';
  // "Coconut 0.30, olive 0.45, tallow 0.25": parts of one.
  if (amounts.length > 1 && Math.abs(sum - 1) < 0.011) return () => 'part';
  const areGrams = sum > LIKE_GRAMS && bare.every(({ figure }) => figure >= LEAST_GRAMS);
  if (hasRest && told.whole && isMass(told.whole.unit))
    return bare.every(({ figure }) => figure >= LEAST_GRAMS) && sum < (gramsOf(told.whole) ?? 0) && sum > 99
      ? () => 'g'
      : sum < 100
        ? () => '%'
        : undefined;
  if (hasRest && sum < 100) return () => '%';
  return areGrams ? () => 'g' : undefined;
}

/** "A pound of lard, twelve ounces coconut, four of castor": ounces go on to be told, up to a pound. */
const shortOf = ({ isOf, figure }: Amount, previous: Unit | undefined): Unit | undefined =>
  isOf && previous === 'oz' && figure <= POUND_G / OUNCE_G ? 'oz' : undefined;

/** A bare figure takes another's unit up to so much of it (home batches, common practice): "16 oz olive, 200 shea" are hardly ounces. */
const MOST_OF_A_UNIT: Readonly<Partial<Record<Unit, number>>> = { kg: 25, lb: 25, oz: 100 };

/** The same line with a unit on every figure of an oil; undefined where that is not plain. */
function settled(told: IngredientsTold): readonly Pair[] | undefined {
  const oils = told.pairs.filter(({ name }) => name.known === 'oil');
  const unit = unitOfBare(told, oils);
  if (!unit) return undefined;
  let previous: Unit | undefined;
  const out: Pair[] = [];
  const areFractions = oils.every(({ measure }) => measure.is !== 'amount');
  const areShares =
    !areFractions && oils.every(({ measure }) => measure.is !== 'amount' || measure.unit === '%');
  for (const pair of oils) {
    const { measure } = pair;
    if (measure.is === 'fraction' && areShares) {
      // "60% of it olive, a quarter of it coconut, the rest castor".
      out.push({ ...pair, measure: { ...measure, is: 'amount', figure: 100 * measure.share, unit: '%' } });
      continue;
    }
    if (measure.is === 'fraction' && !areFractions) {
      // "Medio kilo de manteca, medio de sebo": of the unit told before.
      if (previous !== 'kg' && previous !== 'lb') return undefined;
      out.push({ ...pair, measure: { ...measure, is: 'amount', figure: measure.share, unit: previous } });
      continue;
    }
    if (measure.is !== 'amount') {
      out.push(pair);
      continue;
    }
    const own = measure.unit ?? shortOf(measure, previous) ?? unit(measure.figure);
    if (own === undefined || own === 'other' || own === 'ml') return undefined;
    if (measure.unit === undefined && measure.figure > (MOST_OF_A_UNIT[own] ?? Infinity)) return undefined;
    previous = own;
    out.push({ ...pair, measure: { ...measure, unit: own } });
  }
  return out;
}

/** The oils of what a line tells, each with its weight or share; unclear where figures do not make a whole. */
export function oilsOf(told: IngredientsTold): Oils | Unclear {
  const unclear = unplaced(told.pairs);
  if (told.even.length > 0) return evenly(told) ?? unclear;
  const pairs = settled(told);
  const named = told.pairs.filter(({ name }) => name.known === 'oil');
  if (!pairs || pairs.length === 0) return noHundred(named, unclear) ?? unclear;
  const doubled = massBesideShares(pairs);
  if (doubled) return doubled;
  if (new Set(pairs.map(({ name }) => name.text)).size !== pairs.length) return unclear;
  const masses = pairs.filter(isAmountPair).filter(({ measure }) => isMass(measure.unit));
  const others = pairs.filter(({ measure }) => measure.is !== 'amount' || !isMass(measure.unit));
  if (masses.length > 0)
    return others.every(({ measure }) => measure.is === 'rest')
      ? (byMass(masses, others, told) ?? unclear)
      : unclear;
  return byShare(pairs, told) ?? noHundred(pairs, unclear) ?? unclear;
}

const sizeOf = (whole: Amount | undefined, pairs: readonly Pair[]): string | undefined => {
  if (!whole) return undefined;
  const units = new Set(
    pairs.flatMap(({ measure }) => (measure.is === 'amount' && isMass(measure.unit) ? [measure.unit] : [])),
  );
  const unit = whole.unit ?? (units.size === 1 ? [...units][0] : whole.figure >= 100 ? 'g' : undefined);
  return isMass(unit) ? `${neat(whole.figure)} ${unit} oils` : undefined;
};

function evenly({ even, pairs, whole }: IngredientsTold): Oils | undefined {
  const names = unique(even);
  if (names.length < 2 || pairs.some(({ name }) => name.known === 'oil')) return undefined;
  return {
    list: names.map(name => `${neat(100 / names.length)}% ${name.text}`),
    size: sizeOf(whole, []),
    unit: whole?.unit ?? 'g',
  };
}
const unique = (names: readonly Name[]) => [...new Map(names.map(name => [name.text, name])).values()];

function byMass(
  masses: readonly (Pair & { readonly measure: Amount })[],
  rest: readonly Pair[],
  told: IngredientsTold,
): Oils | undefined {
  const sum = masses.reduce((all, { measure }) => all + gramsOf(measure)!, 0);
  const whole = sizeOf(told.whole, masses);
  const grams = told.whole && whole ? parseSize(whole) : undefined;
  if (told.whole && grams === undefined) return undefined;
  const list = masses.map(({ measure, name }) => `${neat(measure.figure)} ${measure.unit} ${name.text}`);
  const { unit } = masses[0]!.measure;
  if (rest.length > 0) {
    if (rest.length > 1 || grams === undefined || grams <= sum || told.times !== undefined) return undefined;
    return { list: [...list, `${neat(grams - sum)} g ${rest[0]!.name.text}`], size: undefined, unit: unit! };
  }
  // "400 g olive, 200 g coconut, 228 g water, so 828 g all together".
  const water = told.pairs.find(({ name }) => name.known === 'water')?.measure;
  const wet = water?.is === 'amount' ? (gramsOf({ ...water, unit: water.unit ?? unit }) ?? 0) : 0;
  const isSum =
    grams !== undefined &&
    [sum, sum + wet].some(all => Math.abs(grams - all) <= (all === sum ? 0.02 : 0.001) * sum);
  if (told.times !== undefined) {
    const factor = timesOf(told.times);
    return grams === undefined && factor !== undefined
      ? { list, size: `${neat(factor * sum)} g oils`, unit: unit! }
      : undefined;
  }
  if (grams !== undefined && !isSum && !told.isRescaled) return undefined;
  return { list, size: isSum ? undefined : whole, unit: unit! };
}

const parseSize = (size: string): number => {
  const [figure, unit] = size.split(' ');
  return Number(figure) * GRAMS[unit as Unit]!;
};

/** Percents, fractions or parts, and what is left of the whole. */
function byShare(pairs: readonly Pair[], told: IngredientsTold): Oils | undefined {
  if (told.times !== undefined) return undefined;
  const areParts = pairs.some(({ measure }) => measure.is === 'amount' && measure.unit === 'part');
  const figures = pairs.map(({ measure }) =>
    measure.is === 'rest' ? undefined : measure.is === 'fraction' ? 100 * measure.share : measure.figure,
  );
  const sum = figures.reduce<number>((all, one) => all + (one ?? 0), 0);
  const rests = figures.filter(one => one === undefined).length;
  if (rests > 1 || (areParts && rests > 0)) return undefined;
  if (rests === 1 && sum >= 100) return undefined;
  if (rests === 0 && !areParts && !isWhole(sum)) return undefined;
  const scale = areParts ? 100 / sum : 1;
  return {
    list: pairs.map(({ name }, at) => `${neat((figures[at] ?? 100 - sum) * scale)}% ${name.text}`),
    size: sizeOf(told.whole, []),
    unit: told.whole?.unit ?? 'g',
  };
}

/** "60 oz of lard, three quarters of the batch, coconut the other quarter": one oil's weight tells that of all. */
function massBesideShares(pairs: readonly Pair[]): Oils | undefined {
  const shares = pairs.filter(({ measure }) => measure.is === 'fraction');
  const masses = pairs.filter(isAmountPair).filter(({ measure }) => isMass(measure.unit));
  const [mass, ...more] = masses;
  const sum = shares.reduce((all, { measure }) => all + (measure.is === 'fraction' ? measure.share : 0), 0);
  const own = shares.find(({ name }) => name.text === mass?.name.text);
  if (!mass || more.length > 0 || own?.measure.is !== 'fraction' || Math.abs(sum - 1) > 0.01)
    return undefined;
  const whole = gramsOf(mass.measure)! / own.measure.share;
  return {
    list: shares.map(
      ({ measure, name }) => `${neat(measure.is === 'fraction' ? measure.share * whole : 0)} g ${name.text}`,
    ),
    size: undefined,
    unit: 'g',
  };
}

/** The weight of lye, of water or of what is added, as words; undefined where its unit is not plain. */
export function besideOils({ measure, name }: Pair, unit: Unit, told: IngredientsTold): string | undefined {
  if (measure.is !== 'amount') return undefined;
  const usual = isMass(told.unit) ? told.unit : isMass(unit) ? unit : 'g';
  const own = measure.unit ?? unitBeside(measure.figure, new Set([usual]), Number.POSITIVE_INFINITY);
  if (own === undefined || own === 'part' || own === 'other') return name.known === 'water' ? '' : undefined;
  return `${neat(measure.figure)} ${own} ${name.text}`;
}
