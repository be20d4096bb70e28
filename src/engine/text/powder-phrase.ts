import { type Amount, parseAmount } from '../quantities/amount.ts';
import { plainText } from '../quantities/number.ts';
import { Refusal, refuse } from '../refusal.ts';
import { amountPhrase } from './amount-phrases.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'powder-without-amount': { text: string };
  }
}

/** An amount of a colourant as it was written, with the name beside it, empty where none stands there. */
export type WrittenPowder = {
  /** Undefined where it is told in percent of the oils. */
  readonly low: Amount | undefined;
  readonly percentOfOils?: number;
  readonly high?: Amount;
  /** True where it is to the pound of oils ("ppo"). */
  readonly perPound: boolean;
  readonly name: string;
};

const PER_POUND =
  /\b(?:ppo|tpo)\b|\b(?:per|por|a|each|cada|for every|\/)\s*(?:each |every |one |1 )?(?:lb|pound|libra)s?(?:\s+(?:of|de)?\s*(?:the |los )?(?:oils?|fats?|aceites?))?/iu;
const HOLDER =
  /\b(?:bags?|jars?|packets?|pouch(?:es)?|tubs?|pots?|sachets?|bolsas?|bolsitas?|botes?|frascos?|tarros?|paquetes?|sobres?)\b/giu;
const LONGEST_WORDS = 8;

/**
 * Reads an amount of powder and what it is of: `2 tsp rose clay`, `1/4-1/2 tsp`, `2 oz bag of zinc oxide`, `1/2 tsp ppo`, `gold
 * mica 5 g`. Throws a Refusal `powder-without-amount`, or one of the amounts' own.
 */
export function readPowder(text: string): WrittenPowder {
  const plain = plainText(text.slice(0, 200));
  const perPound = PER_POUND.test(plain);
  const said = plain.replace(PER_POUND, ' ').replace(HOLDER, ' ').replace(/\s+/gu, ' ').trim();
  const percent =
    /^(\d+(?:[.,]\d+)?) ?(?:%|percent|por ciento)\s*(?:(?:of|on|de|del|sobre|en)\s+)?(?:the |los |el )?(?:(?:total|peso)\s+(?:de\s+)?)?(?:oils?|fats?|aceites?|grasas?)?\s*(.*)$/iu.exec(
      said,
    );
  if (percent)
    return {
      low: undefined,
      percentOfOils: Number(percent[1]!.replace(',', '.')),
      perPound,
      name: (percent[2] ?? '').replace(/^(?:of|de)\s+/iu, ''),
    };
  const { low, high } = amountPhrase(counted(said));
  const head = headOf(low);
  if (!head) {
    const last = tailOf(said);
    return last ? { ...last, perPound } : refuse('powder-without-amount', { text: said.slice(0, 80) });
  }
  const upper = high === undefined ? undefined : headOf(high);
  const name = (upper ?? head).rest
    .replace(/^(?:of|de|del|level|heaping|rasas?|raso|colmadas?|in|en)\s+/iu, '')
    .replace(/^(?:of|de)\s+/iu, '');
  return { low: head.amount, ...(upper && { high: upper.amount }), perPound, name };
}

/** Spelt numbers that the amounts' grammar does not count: "diez" it does. */
const counted = (text: string) => text.replace(/^(?:un |una )?(?:buena |good )?(?=\p{L}+adita)/iu, '1 ');

function headOf(text: string): { readonly amount: Amount; readonly rest: string } | undefined {
  const words = text.split(' ');
  for (let count = Math.min(LONGEST_WORDS, words.length); count > 0; count -= 1) {
    const amount = amountOf(words.slice(0, count).join(' '));
    if (amount) return { amount, rest: words.slice(count).join(' ') };
  }
  return undefined;
}

/** `gold mica 5 g`: the name first. */
function tailOf(text: string): Pick<WrittenPowder, 'low' | 'high' | 'name'> | undefined {
  for (const { index } of text.matchAll(/(?<=\s)(?:\d|half|media|an? |una? )/giu)) {
    const { low, high } = amountPhrase(text.slice(index));
    const amount = amountOf(low);
    const upper = high === undefined ? undefined : amountOf(high);
    if (amount)
      return {
        low: amount,
        ...(upper && { high: upper }),
        name: text.slice(0, index).replace(/[\s,:=-]+$/u, ''),
      };
  }
  return undefined;
}

function amountOf(text: string): Amount | undefined {
  try {
    return parseAmount(text);
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}
