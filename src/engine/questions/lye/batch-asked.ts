import { unbroken } from '../../over-lines.ts';
import { LYE } from './amounts/words.ts';

const KIND = '(?:batch|recipe|lote|tanda|receta|formula)';
const LABEL = new RegExp(`(?<!\\p{L})${KIND} ([ab12])(?![\\p{L}\\d])(?! ?(?:kg|kilo|g|lb|oz|%))`, 'gu');
const ASKED = new RegExp(
  `(?<!\\p{L})${LYE}(?: (?:and|y) (?:water|agua))?[^;:\\d]{0,30}? (?:for|of|para|de) (?:the |my |la |el |mi )?(${KIND} ([ab12]))(?![\\p{L}\\d])`,
  'u',
);
/** What one recipe takes over of another. */
const LIKE_ANOTHER = new RegExp(
  unbroken`
    (?<!\p{L})(?:same|like|as|plus|extra|more|less|minus|without|but|instead|double|half|igual|mism[oa]s?|
    como|mas|menos|sin|pero|doble|mitad|both|amb[oa]s)(?!\p{L})
  `,
  'u',
);

/**
 * Of two recipes under letters the one whose lye is asked for, where it stands last and takes nothing over from the other: "batch A: …
 * batch B: … how much lye for batch B". Any other line comes back as it was. Takes what `plainWords` gives with its clauses. Pure.
 */
export function ofBatchAsked(plain: string): string {
  const asked = ASKED.exec(plain);
  if (!asked) return plain;
  const place = plain.indexOf(asked[1]!, asked.index);
  const labels = [...plain.matchAll(LABEL)].filter(({ index }) => index !== place);
  const [first, last] = [labels[0], labels.at(-1)];
  const isEachOnce = new Set(labels.map(([, letter]) => letter)).size === labels.length;
  if (!first || !last || labels.length < 2 || !isEachOnce || last[1] !== asked[2]) return plain;
  if (/\d/u.test(plain.slice(0, first.index)) || place < last.index) return plain;
  const own = `${plain.slice(last.index + last[0].length, place)} ; ${plain.slice(place + asked[1]!.length)}`;
  return LIKE_ANOTHER.test(own) ? plain : own;
}
