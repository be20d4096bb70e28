import { readDecimal } from '../quantities/number.ts';
import { refuse } from '../refusal.ts';
import { excerpt } from '../text/excerpt.ts';
import type { Mould } from './request.ts';

/** An inch is 2.54 cm by definition (NIST Handbook 44, Appendix C). */
const CM_PER_UNIT: readonly (readonly [pattern: RegExp, cm: number])[] = [
  [/^(?:mms?\b|mil[ií]m|millim)/iu, 0.1],
  [/^(?:cms?\b|cent[ií]m)/iu, 1],
  [/^(?:"|”|''|ins?\b|inch|pulg)/iu, 2.54],
];
/** A side with its unit, where it has one: `25`, `3 1/2 in`, `10"`. */
export const SIDE =
  /(\d+(?:[.,]\d+)?(?:[ -]\d\/\d)?)[\s-]*((?:mms?|cms?|ins?)\b|mil[ií]m\p{L}*|millim\p{L}*|cent[ií]m\p{L}*|inch(?:es)?|pulg\p{L}*|["”]|'')?/giu;
const UNIT_LAST =
  /(?:\b(?:mms?|cms?)\b|mil[ií]metros|millimet(?:er|re)s|cent[ií]met(?:ros|ers|res)|inches|pulgadas|["”])/iu;

/** A dimension between figures: `25x9x7 cm` tells sides and no pieces. */
export const SIDES =
  /\d\s*(?:cm|mm|in|inch|inches|pulgadas)?\s*(?:x|by|por)\s*\d[\d.,/ ]*(?:cm|mm|in|inch|"|pulg|x|by|por)/iu;

/** Millilitres a mould holds when filled level: cubic centimetres of its inside. */
export function mouldMillilitres(mould: Mould): number {
  switch (mould.shape) {
    case 'loaf':
      return mould.lengthCm * mould.widthCm * mould.heightCm;
    case 'cylinder':
      return (Math.PI / 4) * mould.diameterCm ** 2 * mould.lengthCm;
    case 'cavities':
      return mould.count * mould.eachMillilitres;
  }
}

/** A mould by its sides, or undefined when the text speaks of none. */
export function readMould(text: string): Mould | undefined {
  const round = /cyl|cilind|tube|tubo|pipe|round|redond|column|\bdiam|\bdia\b/iu.test(text);
  const sides = [...text.matchAll(SIDE)];
  const crossed =
    /\d[^\p{L}x]*(?:cms?|mm|in|inch|inches|pulgadas|cent[ií]metros)?\s*(?:x|by|por)\s*\d/iu.test(text) ||
    /\b(?:long|wide|length|width|largo|ancho)\b/iu.test(text);
  if (!round && !crossed && !/mou?ld|loaf/iu.test(text)) return undefined;
  const shape = round ? 'cylinder' : 'loaf';
  if (sides.length !== (round ? 2 : 3)) refuse('mould-sides', { text: excerpt(text), shape });
  // A unit told once goes for the sides that have none.
  const unit = sides.findLast(side => side[2] !== undefined)?.[2] ?? UNIT_LAST.exec(text)?.[0];
  const [a, b, c] = sides.map(side => {
    const cm = CM_PER_UNIT.find(([pattern]) => pattern.test(side[2] ?? unit ?? ''))?.[1];
    return sideLength(side[1]!, text) * (cm ?? refuse('mould-without-unit', { text: excerpt(text) }));
  });
  return round
    ? { shape: 'cylinder', diameterCm: a!, lengthCm: b! }
    : { shape: 'loaf', lengthCm: a!, widthCm: b!, heightCm: c! };
}

/** `9`, `3.5`, `3,5`, `3 1/2`. */
function sideLength(written: string, text: string): number {
  const [whole, fraction] = written.split(/[\s-]+/u);
  const [over, under] = (fraction ?? '0/1').split('/').map(Number);
  const length = (readDecimal(whole!)[0] ?? Number.NaN) + over! / under!;
  return length > 0 ? length : refuse('size-out-of-range', { text: excerpt(text) });
}
