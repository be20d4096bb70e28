import type { Money } from '../engine/cost/money.ts';
import type { Language } from './sentence.ts';

const CODES: ReadonlySet<string> = new Set(Intl.supportedValuesOf('currency'));
/** Below this a price keeps two figures instead of two decimals: a spoon of colour costs fractions of a cent. */
const SMALL = 0.1;

/** Money as a language writes it; a sign or word that is no ISO 4217 code stands before or after as it was written. */
export function moneyIn(language: Language, { amount, currency }: Money): string {
  const figures = amount < SMALL ? { maximumSignificantDigits: 2 } : {};
  if (CODES.has(currency))
    return new Intl.NumberFormat(language, { style: 'currency', currency, ...figures }).format(amount);
  const number = new Intl.NumberFormat(language, {
    ...(amount < SMALL ? figures : { minimumFractionDigits: 2, maximumFractionDigits: 2 }),
  }).format(amount);
  return /\p{Sc}$/u.test(currency) && language === 'en' ? `${currency}${number}` : `${number} ${currency}`;
}
