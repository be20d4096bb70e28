import { Refusal } from '../../refusal.ts';
import { powderFromFigure } from '../../text/amounts/powders/powder-among-words.ts';
import { toldAmount } from '../../text/amounts/told-amount.ts';
import { type Amount, parseAmount } from '../amount.ts';
import { readDecimal } from '../number.ts';
import { plainAmount } from '../plain-amount.ts';
import { unitSize } from '../unit-words.ts';
import { MEASURES, type Measures } from '../units.ts';

/** From a speck to more than a cupboard holds: 1 mg to 100 kg, or as many litres. */
const STOCK = { low: 0.001, high: 100_000 };

/** Decimals in which grams of a jar are shown: as scales for them show. */
export const stockDecimals = (grams: number): number => (grams < 1 ? 3 : grams < 100 ? 2 : 1);

/** Half of the last digit that is shown: whoever asks for what they were shown asks for all there is. */
export const shownSlack = (grams: number): number => 10 ** -stockDecimals(grams) / 2;

/**
 * Reads an amount of colourant on hand: `25 g`, `1 oz`, `1/2 tsp`; a bare number is grams, because jars and
 * scales say grams. What is said around it ("le puse 2 cucharaditas, che") is left out where it changes nothing. Throws a Refusal as {@link parseAmount} does.
 */
export function parseStock(text: string, measures: Measures = MEASURES.us): Amount {
  const bare = readDecimal(text.trim()).length > 0;
  const asked = bare ? `${text.trim()} g` : text;
  const plain = plainStock(asked, measures);
  if (plain) return plain;
  try {
    return parseAmount(asked, measures, STOCK);
  } catch (refusal) {
    const told = refusal instanceof Refusal && UNREAD.has(refusal.id) ? toldStock(asked) : undefined;
    if (told === undefined) throw refusal;
    return parseAmount(told, measures, STOCK);
  }
}

/** An amount in range that is a figure with its unit, as most are; undefined where there is more to read, or to refuse. */
function plainStock(text: string, measures: Measures): Amount | undefined {
  const plain = plainAmount(text);
  if (!plain || plain.of !== undefined) return undefined;
  const { measure, size } = unitSize(plain.unit, measures);
  const value = plain.count * size;
  if (value < STOCK.low || value > STOCK.high) return undefined;
  return measure === 'volume' ? { measure, millilitres: value } : { measure, grams: value };
}

const UNREAD: ReadonlySet<string> = new Set(['amount-unit-unknown', 'amount-unreadable']);
/** Members write a sentence at the most. */
const LONGEST_TOLD = 120;

const toldStock = (text: string): string | undefined =>
  text.length > LONGEST_TOLD ? undefined : (toldAmount(text) ?? powderFromFigure(text));
