import { isPaired, oilOf, type State } from '../state.ts';
import { isOil } from './parts.ts';

/**
 * "Sin la manteca", where no lard is told: bare "manteca" is lard, and beside a butter of seeds it is that one; of two it is not plain of
 * which. What is unclear in it.
 */
export function butterMeant(state: State): string | undefined {
  for (const [at, one] of state.removed.entries()) {
    if (!/^(?:manteca|mantequilla|butter)$/u.test(one.text) || isPaired(state, one)) continue;
    const butters = state.pairs.filter(({ name }) => isOil(name) && oilOf(name)?.oilClass === 'butter');
    if (butters.length > 1) return one.text;
    if (butters[0]) state.removed[at] = butters[0].name;
  }
  return undefined;
}
