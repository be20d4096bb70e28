import { practicalSpoons } from '../engine/quantities/spoons.ts';
import type { Measures } from '../engine/quantities/units.ts';
import type { Words } from '../words/index.ts';

/** Teaspoons as they are measured out with the spoons that their reader owns. */
export const spoonedOut = (teaspoons: number, { owned }: Pick<Measures, 'owned'>, say: Words): string =>
  say.quantities.measure(practicalSpoons(teaspoons, undefined, owned));
