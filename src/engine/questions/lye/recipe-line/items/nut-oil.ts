import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { UNIT } from '../../amounts/words.ts';

const NUTS: Readonly<Record<string, string>> = {
  almendras: 'aceite de almendras',
  nueces: 'aceite de nuez',
  avellanas: 'aceite de avellana',
};
/** What is done to nuts, and to no oil. */
const OF_NUTS =
  /^ *(?:molid|picad|tritur|trocead|rallad|machacad|tostad|crud|enter|pelad|en (?:polvo|trozos|harina)|ground|chopped|crushed)/u;
const WEIGHT_BEFORE = new RegExp(`\\d ?(?:${UNIT})?(?: de)? ?$`, 'u');
const WEIGHT_BEHIND = /^ ?[:=]? ?\d/u;

/**
 * The oil that nuts named in a line at a place stand for: "oliva 500, coco 200, almendras 100". Weighed, and among two oils at the
 * least, nobody means the nuts themselves; elsewhere they are a food, and this is undefined. Pure.
 */
export function nutOil(text: string, line: string, { from }: { readonly from: number }): string | undefined {
  const behind = line.slice(from + text.length);
  const oil = NUTS[text];
  if (oil === undefined || OF_NUTS.test(behind)) return undefined;
  if (!WEIGHT_BEFORE.test(line.slice(0, from)) && !WEIGHT_BEHIND.test(behind)) return undefined;
  const words = line.split(/[^\p{L}]+/u);
  const oils = words.flatMap(word => (word.length > 2 && !(word in NUTS) && knownOil(word)) || []);
  return new Set(oils).size >= 2 ? oil : undefined;
}
