import { plainText, readDecimal } from '../../quantities/number.ts';
import { refuse } from '../../refusal.ts';
import { leadingAmount } from '../../text/amounts/leading-amount.ts';
import { excerpt } from '../../text/excerpt.ts';
import { fold } from '../../text/fold.ts';
import type { AdditiveAsk, AdditiveId } from '../additives/additive.ts';
import { additiveById, gramsOf, knownAdditive, refuseSpirit } from '../additives/additives.ts';
import { refuseBleach } from '../additives/bleach.ts';
import { LIQUIDS } from '../additives/liquids/liquid-table.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** Strong drink or alcohol: it burns, and seizes the batter. */
    'liquid-is-spirit': { text: string };
    /** Water by weight, which the plan works out from what is written for water. */
    'liquid-water-weight': { text: string };
    'liquid-unknown': { text: string; known: readonly AdditiveId[] };
    /** Shares of the water that make more than all of it. */
    'liquids-over-all': { sum: number };
  }
}

const WATER = /^(?:distilled |plain |cold )?(?:water|agua(?: destilada| fria)?)$/u;
const FROZEN = /\b(?:frozen|freeze|slush|congelad[oa]s?|helad[oa]s?)\b/giu;
const INTO_OILS =
  /\b(?:(?:in|into|with|to) (?:the )?oils?|(?:at|after) trace|(?:in|into) (?:the )?batter|(?:en|con|a) los aceites|(?:a|en) la traza|en la masa)\b/giu;
const INTO_JUG =
  /\b(?:(?:in|into) (?:the )?(?:jug|lye(?: water)?)|with (?:the )?lye|for (?:the )?lye|en la (?:jarra|sosa|lej[ií]a)|con la (?:sosa|lej[ií]a))\b/giu;
const HALF = /\b(?:half(?: of)?|1\/2|la mitad(?: de)?|mitad(?: de)?|medi[oa])\b/iu;
const ALL =
  /\b(?:all|only|full|instead of (?:the )?water|tod[oa]|solo|en (?:vez|lugar) (?:de|del) agua)\b/giu;
const SHARE_FIRST = /^(?:half|mitad|medi[oa]|[\d.,]+\s?%)\s/iu;
const NEXT_SHARE = /(?<=\p{L})\s+(?=(?:half|mitad|medi[oa]|[\d.,]+\s?%)\s+\p{L})/giu;
const PERCENT = /([\d.,]+)\s*(?:%|percent|por ciento)/iu;
const OF_OILS = /\b(?:of|de) (?:the |los )?(?:oils?|aceites?)\b/iu;
const OF_WATER = /\b(?:of|de|del) (?:the |el )?(?:water|liquid|agua|l[ií]quido)\b/giu;

type Amount = AdditiveAsk['amount'];
/** `percentOfWater` undefined: an even share of what the others leave. */
type Piece = { readonly ask: Omit<AdditiveAsk, 'amount'> | 'water'; readonly amount: Amount | undefined };

/**
 * Reads what stands in the place of water: `goat milk`, `half beer`, `coconut milk 50% frozen, tea`, `200 g aloe juice`,
 * `cream 100 g in the oils`. A bare percent is of the water; without an amount it takes what the others leave. English
 * or Spanish. Throws a Refusal: `liquid-unknown`, `liquid-is-spirit`, `liquid-is-bleach`, `liquid-water-weight`, `liquids-over-all`,
 * `additive-eats-lye-by-spoon`, or one of the
 * amounts' own.
 */
export function parseLiquids(text: string): readonly AdditiveAsk[] {
  const plain = plainText(text.replaceAll('\n', ';'));
  // `half milk half tea` has no commas, yet only one meaning.
  const broken = SHARE_FIRST.test(plain) ? plain.replace(NEXT_SHARE, ';') : plain;
  const pieces = broken
    .split(/[;|+&]|,(?!\d)|\s(?:and|y)\s/iu)
    .map(piece => piece.trim())
    .filter(piece => piece !== '')
    .map(readPiece);
  const shares = pieces.flatMap(({ amount }) =>
    amount !== undefined && 'percentOfWater' in amount ? [amount.percentOfWater] : [],
  );
  const sum = shares.reduce((total, percent) => total + percent, 0);
  if (sum > 100 + 1e-9) refuse('liquids-over-all', { sum });
  const open = pieces.filter(({ amount }) => amount === undefined).length;
  return pieces.flatMap(({ ask, amount }) =>
    ask === 'water' ? [] : [{ ...ask, amount: amount ?? { percentOfWater: (100 - sum) / open } }],
  );
}

function readPiece(piece: string): Piece {
  if (/(?:^|\s)-\s?\d/u.test(piece)) refuse('additive-without-amount', { text: excerpt(piece) });
  const into = piece.search(INTO_OILS) >= 0 ? 'oils' : piece.search(INTO_JUG) >= 0 ? 'jug' : undefined;
  const frozen = piece.search(FROZEN) >= 0;
  const bare = piece
    .replace(ALL, ' ')
    .replace(INTO_OILS, ' ')
    .replace(INTO_JUG, ' ')
    .replace(FROZEN, ' ')
    .trim();
  const { amount: written, rest } = readAmount(bare);
  const name = rest.replace(/\s+/gu, ' ').trim();
  if (WATER.test(fold(name)))
    return { ask: 'water', amount: written === undefined ? undefined : waterShare(written, piece) };
  refuseSpirit(name);
  refuseBleach(name, piece);
  const id = knownAdditive(name);
  if (id === undefined || additiveById(id).liquid === undefined) {
    return refuse('liquid-unknown', { text: excerpt(piece), known: LIQUIDS.map(one => one.id) });
  }
  const amount =
    written === undefined
      ? undefined
      : 'measured' in written
        ? { grams: gramsOf(id, written.measured) }
        : written;
  return {
    ask: { id, ...(into && { into }), ...(frozen && { frozen }) },
    amount,
  };
}

type Written =
  | { readonly measured: NonNullable<ReturnType<typeof leadingAmount>>['amount'] }
  | Exclude<Amount, { readonly grams: number }>;

/** Only a share of plain water counts here: its weight hangs on the lye, and is written for the water. */
const waterShare = (written: Written, piece: string): Amount =>
  'percentOfWater' in written ? written : refuse('liquid-water-weight', { text: excerpt(piece) });

function readAmount(text: string): { readonly amount: Written | undefined; readonly rest: string } {
  const percent = PERCENT.exec(text);
  if (percent) {
    const value = readDecimal(percent[1]!)[0];
    if (value === undefined || !(value > 0)) refuse('additive-without-amount', { text: excerpt(text) });
    const rest = text.replace(percent[0], ' ');
    if (OF_OILS.test(rest)) return { amount: { percentOfOils: value }, rest: rest.replace(OF_OILS, ' ') };
    return { amount: { percentOfWater: value }, rest: rest.replace(OF_WATER, ' ') };
  }
  if (HALF.test(text)) {
    return { amount: { percentOfWater: 50 }, rest: text.replace(HALF, ' ').replace(OF_WATER, ' ') };
  }
  const number = /\d/u.exec(text)?.index;
  if (number === undefined) return { amount: undefined, rest: text.replace(OF_WATER, ' ') };
  const head =
    leadingAmount(text.slice(number)) ?? refuse('additive-without-amount', { text: excerpt(text) });
  const rest = `${text.slice(0, number)} ${head.rest.replace(/^(?:of|de)\s+/iu, '')}`;
  return { amount: { measured: head.amount }, rest: rest.trim() };
}
