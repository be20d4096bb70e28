import { rescale } from '../../engine/batch/planning/rescale.ts';
import { coloursNamed, readPlan, withColours } from '../../engine/batch/planning/written-plan.ts';
import type { PlanRequest } from '../../engine/batch/request.ts';
import { colourantById } from '../../engine/colourants/catalogue.ts';
import { MEASURES, type Measures } from '../../engine/quantities/units.ts';
import { exactlyNamed } from '../../engine/text/names/own-names.ts';
import { calledByOwner } from '../shelf/called.ts';
import { listShelf, type Shelf, type ShelfItem } from '../shelf/index.ts';
import { findJar, type Jar, jarOf, knownOf } from '../shelf/jars/jar.ts';
import { ownOfKind } from '../shelf/jars/own-jar.ts';
import type { KeptPlan, KnownColour, Times } from './index.ts';

/** A kept plan read anew: what to plan, the jar behind each colour of each portion, and what the colours are. */
export type PlanRead = {
  readonly request: PlanRequest;
  readonly jars: readonly (readonly Jar[])[];
  readonly colours: readonly KnownColour[];
};

/**
 * Reads a kept plan for the member whose shelf this is, in their own spoons. A colour is their own jar of that name,
 * else what it was when the plan was kept, else what the catalogue finds.
 * Throws the Refusals of `readPlan` and of `findJar`.
 */
export async function readKept(plan: KeptPlan, shelf: Shelf, measures: Measures): Promise<PlanRead> {
  const read = readPlan(plan.written, MEASURES[plan.spoons]);
  const jars = new Map<string, Jar>();
  const own = await listShelf(shelf);
  for (const text of coloursNamed(read)) {
    const item = exactlyNamed(own, text);
    jars.set(text, item ? jarOf(item) : await knownJar(text, plan, { shelf, own }));
  }
  const jar = (text: string) => jars.get(text)!;
  const request = withColours(read, text => knownOf(underOwnName(jar(text)), measures));
  return {
    request: { ...timesAsMuch(request, plan.times), measures },
    jars: read.portions.map(({ colours }) => colours.map(({ text }) => jar(text))),
    colours: [...jars].map(([text, found]) => knownColour(text, found)),
  };
}

async function knownJar(
  text: string,
  { colours }: KeptPlan,
  { shelf, own }: { readonly shelf: Shelf; readonly own: readonly ShelfItem[] },
): Promise<Jar> {
  const known = colours.find(one => one.text === text);
  const colourant = known && colourantById(known.colourant);
  if (!colourant) return findJar(shelf, text);
  const item = ownOfKind(own, text, colourant);
  if (item) return jarOf(item);
  return {
    colourant,
    ...(known.pigmentFraction !== undefined && { pigmentFraction: known.pigmentFraction }),
  };
}

function knownColour(text: string, { colourant, item, pigmentFraction }: Jar): KnownColour {
  const fraction = item?.pigmentFraction ?? pigmentFraction;
  return { text, colourant: colourant.id, ...(fraction !== undefined && { pigmentFraction: fraction }) };
}

/** A jar is called what its owner calls it, so that the hand at the shelf finds it. */
function underOwnName(jar: Jar): Jar {
  const { colourant, item } = jar;
  if (!item) return jar;
  return { ...jar, colourant: { ...colourant, names: calledByOwner(item) } };
}

/** Each part of the plan made as much bigger as was asked of that part. */
function timesAsMuch(request: PlanRequest, { size, portions, additives, liquids = 1 }: Times): PlanRequest {
  return {
    ...request,
    size: rescale(request, size).size,
    portions: rescale(request, portions).portions,
    additives: rescale(request, additives).additives,
    liquids: rescale(request, liquids).liquids,
  };
}
