import { distance } from '../spelling/edit-distance.ts';

/** The `most` names closest in spelling to what was typed, closest first. */
export function nearestNames(typed: string, names: readonly string[], most: number): readonly string[] {
  return names
    .map(name => ({ name, away: distance(typed.toLowerCase(), name.toLowerCase()) }))
    .sort((a, b) => a.away - b.away)
    .slice(0, most)
    .map(({ name }) => name);
}

/** A thing under one of its names, and by how many letters that name is off. */
type Scored<Thing> = { readonly thing: Thing; readonly far: number };

/**
 * The one thing that a misspelt name was meant for: within `most` slips, and nearer by `margin` slips than any other that is not
 * `alike`. Undefined where two are as near, so that whoever asks is asked back.
 */
export function closestThing<Thing>(
  scored: Iterable<Scored<Thing>>,
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
  const near = [...scored].filter(({ far }) => far < most + margin).sort((a, b) => a.far - b.far);
  const [first] = near;
  if (first === undefined || first.far > most) return undefined;
  const rival = near.find(({ thing }) => thing !== first.thing && !alike(thing, first.thing));
  return rival !== undefined && rival.far - first.far < margin ? undefined : first.thing;
}
