import { byLanguage, type Language } from '../engine/language.ts';
import { kitchenFraction } from '../engine/quantities/number.ts';

/** Numbers as one language writes them. Thousands are never grouped: `1.500` would be 1.5 to half of our readers. */
export type Numbers = {
  /** At most so many decimals. */
  readonly figure: (value: number, decimals: number) => string;
  /** The same, never above what it stands for: so much is there. */
  readonly down: (value: number, decimals: number) => string;
  /** To the nearest whole number. */
  readonly whole: (value: number) => string;
  /** A part of one, in whole per cent: `45 %`. */
  readonly percent: (share: number) => string;
  /** Of a volume, to the nearest whole: `250 ml`. */
  readonly millilitres: (value: number) => string;
  /** At most one decimal. */
  readonly one: (value: number) => string;
  /** At most two decimals. */
  readonly two: (value: number) => string;
  /** Always one decimal. */
  readonly tenths: (value: number) => string;
  /** Three significant digits; whole from a hundred up. */
  readonly plain: (value: number) => string;
  /** As kitchens write it: `1 1/2` where a kitchen fraction is within 1 in 500; else {@link Numbers.plain}. */
  readonly mixed: (value: number) => string;
  /** An amount as somebody typed it, once it was read, with this language's decimal sign: one answer has one. */
  readonly typed: (amount: string) => string;
};

/** So many numbers are known as each format writes them; then all are written anew. */
const MOST_WRITTEN = 500;

/** The same numbers are written again and again: spoons, halves, per cents. */
function writtenOnce(write: (value: number) => string): (value: number) => string {
  const known = new Map<number, string>();
  return value => {
    const before = known.get(value);
    if (before !== undefined) return before;
    const text = write(value);
    if (known.size >= MOST_WRITTEN) known.clear();
    known.set(value, text);
    return text;
  };
}

const numbers = (language: Language): Numbers => {
  const written = (options: Intl.NumberFormatOptions) => {
    const format = new Intl.NumberFormat(language, { useGrouping: false, ...options });
    // A hair below nothing is nothing, not "-0".
    return writtenOnce(value => format.format(value).replace(/^-(?=0(?:[.,]0*)?$)/u, ''));
  };
  const decimals = Array.from({ length: 5 }, (_, most) => written({ maximumFractionDigits: most }));
  const significant = written({ maximumSignificantDigits: 3 });
  const sign = written({ minimumFractionDigits: 1 })(0.5).charAt(1);
  const whole = (value: number) => decimals[0]!(Math.round(value));
  const plain = (value: number) => (Math.abs(value) >= 100 ? decimals[0]! : significant)(value);
  return {
    figure: (value, most) => (decimals[most] ?? written({ maximumFractionDigits: most }))(value),
    down: (value, most) => decimals[most]!(Math.floor(value * 10 ** most + 1e-6) / 10 ** most),
    whole,
    percent: share => `${whole(100 * share)} %`,
    millilitres: value => `${whole(value)} ml`,
    one: decimals[1]!,
    two: decimals[2]!,
    tenths: written({ minimumFractionDigits: 1, maximumFractionDigits: 1 }),
    plain,
    typed: amount => amount.replaceAll(/(?<=\d)[.,](?=\d)/gu, sign),
    mixed: value => {
      const near = kitchenFraction(value);
      return near ? `${near.whole === 0 ? '' : `${near.whole} `}${near.over}/${near.under}` : plain(value);
    },
  };
};

const all = byLanguage(numbers);

/** The one place where numbers of sentences are formatted. */
export const numbersIn = (language: Language): Numbers => all[language];
