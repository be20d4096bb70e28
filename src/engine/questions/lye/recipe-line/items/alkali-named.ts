import { POTASSIUM } from '../../amounts/words.ts';
import type { Item, Name } from './item.ts';

const BY_NAME = /naoh|sodium|sodi|sodic/u;

/** The alkali that a line names, beside those that it says are not used; `both` where it names two. */
export function alkaliNamed(
  items: readonly Item[],
  notMeant: readonly Name[],
): 'potassium' | 'sodium' | 'both' | undefined {
  const named = items.filter(item => !notMeant.some(one => one === item));
  const potassium = named.some(({ is, text }) => (is === 'name' || is === 'asks') && POTASSIUM.test(text));
  // "Sosa" and "caustic" alone are what many call any lye.
  const sodium = named.some(({ is, text }) => is === 'name' && BY_NAME.test(text));
  // "Sosa y potasa": beside potash they are the other one.
  const beside =
    potassium &&
    named.some(
      ({ is, text }) =>
        is === 'name' && /^(?:sosa|soda|caustic soda|lye)/u.test(text) && !POTASSIUM.test(text),
    );
  if (potassium && (sodium || beside)) return 'both';
  return potassium ? 'potassium' : sodium ? 'sodium' : undefined;
}
