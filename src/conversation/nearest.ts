import { distance } from '../engine/text/edit-distance.ts';

/** The `most` names closest in spelling to what was typed, closest first. */
export const nearest = (typed: string, names: readonly string[], most: number): readonly string[] =>
  names
    .map(name => ({ name, away: distance(typed.toLowerCase(), name.toLowerCase()) }))
    .sort((a, b) => a.away - b.away)
    .slice(0, most)
    .map(({ name }) => name);
