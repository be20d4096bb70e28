import type { Name } from '../items/item.ts';
import { type State, same } from '../state.ts';
import { isOil } from './parts.ts';

/**
 * Weighed oils behind which another one is named bare that has its weight only later: "500 g coconut, scratch that, palm. 500 g palm".
 * Whether the first is still in the pot nobody here knows, with a word that takes back or without one. Pure.
 */
export const namedAnew = ({ pairs, unpaired }: State): readonly Name[] =>
  unpaired.filter(isOil).flatMap(bare => {
    const isWeighedLater = pairs.some(({ name }) => same(name, bare) && name.from > bare.to);
    const before = pairs
      .map(({ name }) => name)
      .filter(name => isOil(name) && name.to <= bare.from && !same(name, bare))
      .toSorted((one, other) => one.from - other.from)
      .at(-1);
    return isWeighedLater && before ? [before] : [];
  });
