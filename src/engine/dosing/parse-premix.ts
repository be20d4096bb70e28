import type { Carrier } from '../colourants/colourant.ts';
import { parseAmount } from '../quantities/amount.ts';
import { excerpt } from '../quantities/excerpt.ts';
import { plainText, readDecimal } from '../quantities/number.ts';
import { plainWord } from '../quantities/unit-words.ts';
import { MEASURES, type Measures } from '../quantities/units.ts';
import { refuse } from '../refusal.ts';
import type { Premix } from './request.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'premix-unreadable': { text: string };
    'premix-out-of-range': { text: string };
    'carrier-unknown': { text: string };
  }
}

const CARRIERS: Readonly<Record<Carrier, string>> = {
  water: 'water agua',
  oil: 'oil oils aceite aceites',
  glycerin: 'glycerin glycerine glycerol glicerina glicerol',
};

const CARRIER_BY_WORD: ReadonlyMap<string, Carrier> = new Map(
  (Object.entries(CARRIERS) as [Carrier, string][]).flatMap(([carrier, words]) =>
    words.split(' ').map(word => [word, carrier] as const),
  ),
);

const UNKNOWN: ReadonlySet<string> = new Set([
  '?',
  'unknown',
  'yes',
  'desconocido',
  'desconocida',
  'si',
  'no se',
  'no lo se',
]);

/** Reads a carrier by its English or Spanish name. Throws a Refusal `carrier-unknown`. */
export function parseCarrier(text: string): Carrier {
  return carrierIn(text) ?? refuse('carrier-unknown', { text: excerpt(text) });
}

function carrierIn(text: string): Carrier | undefined {
  const named = new Set(
    plainWord(text.slice(0, 100))
      .split(/[^a-z]+/u)
      .map(word => CARRIER_BY_WORD.get(word))
      .filter(carrier => carrier !== undefined),
  );
  return named.size === 1 ? [...named][0] : undefined;
}

/**
 * Reads how a colourant was wetted beforehand: `30%` pigment by weight (`30% in oil`; glycerin unless said), the
 * member's own paste (`1 tsp in 1 Tbsp oil`, `5 g in 15 g glycerin`, `1 cdta en 1 cda de aceite`), or `unknown`.
 * Throws a Refusal: `premix-unreadable`, `premix-out-of-range`, or one of `parseAmount`.
 */
export function parsePremix(text: string, measures: Measures = MEASURES.us): Premix {
  if (text.length > 100) refuse('premix-unreadable', { text: excerpt(text) });
  const plain = plainText(text);
  const carrier = carrierIn(plain);
  const percent = /^([\d.,]{1,8}) ?%/u.exec(plain)?.[1];
  if (percent !== undefined)
    return byShare((readDecimal(percent)[0] ?? Number.NaN) / 100, carrier ?? 'glycerin', text);
  if (UNKNOWN.has(plainWord(plain.split(/ (?:in|en) /u)[0] ?? '')))
    return { by: 'unknown', carrier: carrier ?? 'glycerin' };
  const [powderText, liquidText, ...more] = plain.split(/ (?:in|into|en|to|con|with) |:/u);
  if (powderText === undefined || liquidText === undefined || more.length > 0) {
    refuse('premix-unreadable', { text: excerpt(text) });
  }
  return ownPaste(
    parseAmount(powderText, measures),
    parseAmount(withoutCarrier(liquidText), measures),
    carrier,
    text,
  );
}

function ownPaste(
  powder: ReturnType<typeof parseAmount>,
  liquid: ReturnType<typeof parseAmount>,
  carrier: Carrier = 'oil',
  text: string,
): Premix {
  if (powder.measure === 'mass' && liquid.measure === 'mass') {
    return byShare(powder.grams / (powder.grams + liquid.grams), carrier, text);
  }
  if (powder.measure === 'mass' || liquid.measure === 'mass')
    refuse('premix-unreadable', { text: excerpt(text) });
  const { millilitres } = powder;
  // Drier than two parts powder to one of liquid is no paste; thinner than 1 in 1000 colours nothing.
  if (millilitres > 2 * liquid.millilitres || millilitres * 1000 < liquid.millilitres) {
    refuse('premix-out-of-range', { text: excerpt(text) });
  }
  return { by: 'spoons', powderMillilitres: millilitres, carrierMillilitres: liquid.millilitres, carrier };
}

function byShare(pigmentShare: number, carrier: Carrier, text: string): Premix {
  if (!(pigmentShare >= 0.001 && pigmentShare <= 0.95))
    refuse('premix-out-of-range', { text: excerpt(text) });
  return { by: 'percent', pigmentShare, carrier };
}

function withoutCarrier(text: string): string {
  const words = text
    .split(' ')
    .filter(word => !CARRIER_BY_WORD.has(plainWord(word)) && !/^(?:of|de|light|ligero)$/iu.test(word));
  return words.join(' ');
}
