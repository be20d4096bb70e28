import { distance } from './edit-distance.ts';

/* Which of some names was meant by what was typed, and how surely. Each reader tells by itself how far a name is. */

/** A thing under one of its names, and by how much that name is off: letters, unless its reader weighs otherwise. */
export type Scored<Thing> = { readonly thing: Thing; readonly far: number };

/** Each thing once, by the nearest of its names; nearest first, equals in the order in which those names came. */
export function byNearness<Thing>(scored: Iterable<Scored<Thing>>): readonly Scored<Thing>[] {
  const things = new Set<Thing>();
  return [...scored]
    .sort((a, b) => a.far - b.far)
    .filter(({ thing }) => !things.has(thing) && things.add(thing));
}

/**
 * The `most` nearest of {@link byNearness}. `scored` is told how far the last of them is by then: what is no nearer has no use, and
 * it may give any number from there on.
 */
export function nearestFew<Row, Thing>(
  rows: Iterable<Row>,
  most: number,
  scored: (row: Row, within: number) => Scored<Thing>,
): readonly Thing[] {
  const few: Scored<Thing>[] = [];
  for (const row of rows) {
    const within = few[most - 1]?.far ?? Number.POSITIVE_INFINITY;
    const one = scored(row, within);
    const known = few.findIndex(({ thing }) => thing === one.thing);
    if (one.far >= within || (known !== -1 && few[known]!.far <= one.far)) continue;
    if (known !== -1) few.splice(known, 1);
    const place = few.findIndex(({ far }) => far > one.far);
    few.splice(place === -1 ? few.length : place, 0, one);
    few.length = Math.min(few.length, most);
  }
  return few.map(({ thing }) => thing);
}

/** The `most` names closest in spelling to what was typed, closest first. */
export const nearestNames = (typed: string, names: readonly string[], most: number): readonly string[] =>
  byNearness(names.map(name => ({ thing: name, far: distance(typed.toLowerCase(), name.toLowerCase()) })))
    .slice(0, most)
    .map(({ thing }) => thing);

/**
 * The one thing that a misspelt name was meant for, of things {@link byNearness}: within `most`, and nearer by `margin` than any
 * other that is not `alike`. Undefined where two are as near, so that whoever asks is asked back.
 */
export function closestThing<Thing>(
  near: readonly Scored<Thing>[],
  {
    most,
    margin,
    alike,
  }: {
    readonly most: number;
    readonly margin: number;
    readonly alike: (one: Thing, other: Thing) => boolean;
  },
): Thing | undefined {
  const [first, ...others] = near;
  if (first === undefined || first.far > most) return undefined;
  const rival = others.find(({ thing }) => !alike(thing, first.thing));
  return rival !== undefined && rival.far - first.far < margin ? undefined : first.thing;
}

/** All things that are as near as the nearest, where that one is within `most`. */
export function allClosest<Thing>(near: readonly Scored<Thing>[], most: number): readonly Thing[] {
  const [first] = near;
  if (first === undefined || first.far > most) return [];
  return near.filter(({ far }) => far === first.far).map(({ thing }) => thing);
}
