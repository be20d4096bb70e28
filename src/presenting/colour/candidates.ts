import type { Context } from '../../conversation/context.ts';
import { ceilingPerCup, pigmentPerTeaspoon } from '../../engine/colour/jars/jar-spoons.ts';
import type { JarCandidate } from '../../engine/colour/matching/match-jars.ts';
import { spoonDoses } from '../../engine/colour/matching/spoon-grid.ts';
import { colourantById, colourants } from '../../engine/colourants/catalogue.ts';
import type { AlkaliBehaviour, Colourant } from '../../engine/colourants/colourant.ts';
import { colourantsMeant } from '../../engine/colourants/find.ts';
import type { Spoon } from '../../engine/quantities/spoons.ts';
import type { Measures } from '../../engine/quantities/units.ts';
import { Refusal, refuse } from '../../engine/refusal.ts';
import { listShelf } from '../../records/shelf/index.ts';
import { findJar, type Jar, jarOf } from '../../records/shelf/jars/jar.ts';
import { colourJar, spooned } from './jars.ts';
import { mayBeBought } from './may-be-bought.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'match-of-nothing': Record<never, never>;
    'spoons-too-large': { readonly smallest: Spoon };
  }
}

/** More names than this are no recipe’s. */
const MOST_TOLD = 12;

/** How likely lye spoils a colour, 0 to 1: our own choice, for ordering recipes only. */
export const LYE_RISK: Readonly<Record<AlkaliBehaviour, number>> = {
  stable: 0,
  conditional: 0.3,
  unknown: 0.5,
  shifts: 0.6,
  bleeds: 0.7,
  destroyed: 1,
  never: 1,
};

/** A jar that a recipe may use, and its place in a request. */
export type Usable = { readonly jar: Jar; readonly candidate: JarCandidate };

/** What a recipe may be made of, and the names on the shelf of which nobody said what is in them. */
export type Choice = { readonly usable: readonly Usable[]; readonly unidentified: readonly string[] };

async function usableOf(jar: Jar, id: string, measures: Measures, context: Context): Promise<Usable> {
  const { colourant, item } = jar;
  const spoon = spooned(jar, measures);
  const gramsPerTeaspoon = pigmentPerTeaspoon(spoon, measures);
  const pigment =
    item?.stock.grams === undefined ? undefined : item.stock.grams * (item.pigmentFraction ?? 1);
  return {
    jar,
    candidate: {
      id,
      jar: await colourJar(jar, context),
      gramsPerTeaspoon,
      ceilingTspPerCup: ceilingPerCup(spoon, measures),
      white: colourant.kind === 'white',
      risk: LYE_RISK[colourant.alkali.behaviour],
      ...(pigment !== undefined && { stockTeaspoons: pigment / gramsPerTeaspoon }),
    },
  };
}

/**
 * The jars on the member's shelf that may colour a bar. Of two jars that do the same the cheaper one stands for both, the fuller
 * one where no prices tell:
 * a recipe names one of them.
 */
export async function shelfChoice(measures: Measures, context: Context): Promise<Choice> {
  const items = await listShelf(context.shelf);
  const known = items.filter(({ colourant }) => colourant !== undefined && colourantById(colourant));
  const all = await Promise.all(
    known
      .map(jarOf)
      .filter(({ colourant }) => LYE_RISK[colourant.alkali.behaviour] < 1)
      .map(jar => usableOf(jar, jar.item!.id, measures, context)),
  );
  const fullest = new Map<string, Usable>();
  for (const one of all) {
    const { jar, gramsPerTeaspoon, ceilingTspPerCup } = one.candidate;
    const does = JSON.stringify([jar, gramsPerTeaspoon, ceilingTspPerCup]);
    const other = fullest.get(does);
    if (!other || isRather(one, other)) fullest.set(does, one);
  }
  return {
    usable: [...fullest.values()],
    unidentified: items.filter(item => !known.includes(item)).map(({ name }) => name),
  };
}

/** Whether one of two jars that do the same is taken before the other. */
function isRather(one: Usable, other: Usable): boolean {
  const [a, b] = [one.jar.item?.price, other.jar.item?.price];
  if (!a || !b || a.currency !== b.currency) return stockOf(one) > stockOf(other);
  return a.amount / a.grams < b.amount / b.grams;
}

const stockOf = ({ candidate }: Usable): number => candidate.stockTeaspoons ?? 0;

/**
 * The colourants that a text names, apart by commas or plus signs, but for those that lye spoils; of a name that may be several, one that lye
 * spoils least. Throws the Refusals of finding a jar, and `match-of-nothing` where none is left.
 */
export async function toldChoice(told: string, measures: Measures, context: Context): Promise<Choice> {
  const names = told
    .split(/[,+;]/u)
    .map(name => name.trim())
    .filter(Boolean);
  const jars = await Promise.all(names.slice(0, MOST_TOLD).map(name => jarLikeliest(name, context)));
  const holding = jars.filter(({ colourant }) => LYE_RISK[colourant.alkali.behaviour] < 1);
  if (holding.length === 0) refuse('match-of-nothing', {});
  const once = [...new Map(holding.map(jar => [jar.item?.id ?? jar.colourant.id, jar])).entries()];
  return {
    usable: await Promise.all(once.map(([id, jar]) => usableOf(jar, id, measures, context))),
    unidentified: [],
  };
}

async function jarLikeliest(name: string, { shelf }: Context): Promise<Jar> {
  try {
    return await findJar(shelf, name);
  } catch (refusal) {
    const [first] = colourantsMeant(name).toSorted((a, b) => riskOf(a) - riskOf(b));
    if (!(refusal instanceof Refusal) || refusal.id !== 'colourant-ambiguous' || !first) throw refusal;
    return { colourant: first };
  }
}

const riskOf = ({ alkali }: Colourant): number => LYE_RISK[alkali.behaviour];

/** The catalogue's pigments that may be bought: they hold in lye and in light, and both laws list them. */
export async function catalogueChoice(measures: Measures, context: Context): Promise<Choice> {
  const offered = colourants.filter(mayBeBought);
  const usable = offered.map(colourant => usableOf({ colourant }, colourant.id, measures, context));
  return { usable: await Promise.all(usable), unidentified: [] };
}

/** Throws a Refusal `spoons-too-large` where none of the spoons owned is small enough for any of the colours in such a portion. */
export function refuseTooLarge(
  { usable }: Pick<Choice, 'usable'>,
  { cups }: { readonly cups: number },
  { owned }: Pick<Measures, 'owned'>,
): void {
  const smallest = owned?.at(-1);
  if (smallest === undefined || usable.length === 0) return;
  const fits = usable.some(
    ({ candidate }) => spoonDoses(candidate.ceilingTspPerCup * cups, owned).length > 1,
  );
  if (!fits) refuse('spoons-too-large', { smallest });
}
