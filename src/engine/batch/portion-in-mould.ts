import { refuse } from '../refusal.ts';
import { parseSize } from './batch-size.ts';
import { mouldMillilitres } from './mould-sides.ts';

declare module '../refusal.ts' {
  interface Reasons {
    /** A mould of which one side alone is told. */
    'portion-mould-side': { readonly text: string };
  }
}

const MOULD = /(?<!\p{L})(?:mou?lds?|moldes?|loaf|cylinders?|cilindros?|bandeja|slab)(?!\p{L})/iu;
const LENGTH = /\d\s*(?:cms?|mm|in|inch(?:es)?|pulgadas|["”])(?![\p{L}\d])/iu;
const SIDES = /\d[\d.,]*\s*(?:cm|mm|in)?\s*(?:x|×|by|por)\s*\d/iu;

/**
 * A portion with a mould by its sides in millilitres of batter (`mould 25x9x7 cm` is `1575 ml`), any other as it is. Throws a
 * Refusal `portion-mould-side` for a mould of one side, and those of `parseSize` for sides that do not read.
 */
export function inMillilitres(portion: string): string {
  if (SIDES.test(portion) && (MOULD.test(portion) || LENGTH.test(portion))) {
    const size = parseSize(portion);
    return size.by === 'mould' ? `${Math.round(mouldMillilitres(size.mould))} ml` : portion;
  }
  const isOneSide = MOULD.test(portion) && LENGTH.test(portion);
  return isOneSide ? refuse('portion-mould-side', { text: portion.trim().slice(0, 60) }) : portion;
}
