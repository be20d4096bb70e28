import { readDecimal } from '../quantities/number.ts';
import { refuse } from '../refusal.ts';
import { excerpt } from '../text/excerpt.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'price-unreadable': { readonly text: string };
    'price-without-currency': { readonly text: string };
    'price-ambiguous': { readonly text: string; readonly small: string; readonly large: string };
    'price-out-of-range': { readonly text: string };
  }
}

/** An amount of money. `currency` is an ISO 4217 code where one was meant for certain, else the sign or word as written. */
export type Money = { readonly amount: number; readonly currency: string };

/** What a jar cost: so much for so many grams of what is in it. */
export type Price = Money & { readonly grams: number };

/** Nobody pays more for soap stuff, whatever the currency. */
const MOST = 100_000_000;
const LONGEST = 40;
const CODES: ReadonlySet<string> = new Set(Intl.supportedValuesOf('currency'));
/** Signs and words of one currency only; `$`, pesos or crowns are those of many and stay as they are. */
const MEANT: Readonly<Record<string, string>> = {
  '€': 'EUR',
  euro: 'EUR',
  euros: 'EUR',
  '£': 'GBP',
  '₹': 'INR',
  '₩': 'KRW',
  '₪': 'ILS',
  '₫': 'VND',
  '₴': 'UAH',
  '₺': 'TRY',
  zł: 'PLN',
  dollar: '$',
  dollars: '$',
  dólar: '$',
  dólares: '$',
  dolares: '$',
  bucks: '$',
  peso: 'pesos',
  pound: '£',
  pounds: '£',
};

const SIGN = String.raw`(?:[A-Z]{0,3}\p{Sc}|\p{L}{1,10})`;
const MONEY = new RegExp(String.raw`^(?:(${SIGN})\s*)?([\d.,'’ ]*\d)(?:[,.][-–])?(?:\s*(${SIGN}))?$`, 'u');

/**
 * Reads a price: `8.50 €`, `€8,50`, `12 USD`, `1,200 yen`. Throws a Refusal: `price-unreadable`, `price-without-currency`,
 * `price-ambiguous` (`1,500`), `price-out-of-range` (0, or over a hundred million).
 */
export function parseMoney(text: string): Money {
  const plain = text.trim().replaceAll(/\s+/gu, ' ');
  const match = plain.length > LONGEST ? null : MONEY.exec(plain);
  if (!match) return refuse('price-unreadable', { text: excerpt(text) });
  const [, before, figures = '', after] = match;
  const readings = readDecimal(figures.trim());
  const [small, large] = readings;
  if (small === undefined) return refuse('price-unreadable', { text: excerpt(text) });
  const sign = before ?? after;
  if (
    sign === undefined ||
    (before !== undefined && after !== undefined && currencyOf(before) !== currencyOf(after))
  )
    return refuse('price-without-currency', { text: excerpt(text) });
  if (large !== undefined)
    refuse('price-ambiguous', { text: excerpt(text), small: String(small), large: String(large) });
  if (!(small > 0 && small <= MOST)) refuse('price-out-of-range', { text: excerpt(text) });
  return { amount: small, currency: currencyOf(sign) };
}

function currencyOf(sign: string): string {
  const known = MEANT[sign.toLowerCase()];
  if (known !== undefined) return currencyAgain(known);
  const code = sign.toUpperCase();
  return CODES.has(code) ? code : sign;
}

/** "pounds" are the sign, and the sign a code. */
const currencyAgain = (known: string): string => (known === '£' ? 'GBP' : known);

/** What so many grams of a jar cost. */
export const costOf = ({ amount, currency, grams: size }: Price, grams: number): Money => ({
  amount: (amount * grams) / size,
  currency,
});

/** Sums, one for each currency, since nothing is converted; in the order the currencies first come in. */
export function sumsOf(costs: readonly Money[]): readonly Money[] {
  const sums = new Map<string, number>();
  for (const { amount, currency } of costs) sums.set(currency, (sums.get(currency) ?? 0) + amount);
  return [...sums].map(([currency, amount]) => ({ currency, amount }));
}

/** The same money for another amount of the thing. */
export const times = ({ amount, currency }: Money, factor: number): Money => ({
  amount: amount * factor,
  currency,
});
