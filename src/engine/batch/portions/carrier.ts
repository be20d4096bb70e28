import type { Measures } from '../../quantities/units.ts';
import { refuse } from '../../refusal.ts';
import { leadingAmount } from '../../text/amounts/leading-amount.ts';
import { excerpt } from '../../text/excerpt.ts';
import { carrierNamed } from '../../text/names/carrier-name.ts';
import { findOil, knownOil } from '../oils/find-oil.ts';
import type { CarrierAsk } from '../request.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'carrier-by-mass': { text: string };
  }
}

const WATER = /^(?:distilled |hot |warm )?(?:water|agua(?: destilada)?)$/iu;
const GLYCERIN = /^(?:vegetable )?(?:glycerine?|glycerol|glicerina)$/iu;
const DIPPED = /\b(?:dipped|batch|recipe|pot|(?:de|del) (?:la )?(?:receta|lote|masa|olla)|apartado)\b/giu;
const SOME_OIL = /^(?:(?:a )?(?:light|carrier|extra|any) )?(?:oils?|aceites?(?: ligero)?)$/iu;

/**
 * Reads what a colour is wetted in: `water`, `glycerin`, `1 Tbsp olive`, `2 tsp dipped oil` (oil taken out of the
 * batch before the lye). Throws a Refusal `carrier-by-mass`, `oil-unknown`, or one of the amounts' own.
 */
export function parseWetting(text: string, measures?: Measures): CarrierAsk {
  const head = leadingAmount(text, measures);
  if (head?.amount.measure === 'mass') refuse('carrier-by-mass', { text: excerpt(text) });
  const millilitres = head?.amount.measure === 'volume' ? head.amount.millilitres : undefined;
  const liquid = (head?.rest ?? text).replace(/^(?:of|de)\s+/iu, '').trim();
  if (WATER.test(liquid)) return { choice: 'water', millilitres, oil: undefined, dipped: false };
  if (GLYCERIN.test(liquid)) return { choice: 'glycerin', millilitres, oil: undefined, dipped: false };
  if (knownOil(liquid) === undefined && carrierNamed(liquid) === 'water')
    return { choice: 'water', millilitres, oil: undefined, dipped: false };
  const dipped = liquid.search(DIPPED) >= 0;
  const named = liquid.replace(DIPPED, '').replace(/\s+/gu, ' ').trim();
  const unnamed = named === '' || SOME_OIL.test(named);
  return { choice: 'oil', millilitres, oil: unnamed ? undefined : findOil(named), dipped };
}
