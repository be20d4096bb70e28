import { rememberedWord } from '../../remembered.ts';
import { mostOff, slipCost } from './slip-cost.ts';
import { wordsAround } from './symmetric-delete.ts';

/** Two words are told apart only where one is nearer by so much; otherwise whoever asks is asked back. */
const MARGIN = 0.3;
const LONGEST = 24;

/** Two letters that are heard as one. */
const HEARD: readonly (readonly [RegExp, string])[] = [
  [/y/u, 'll'],
  [/f/u, 'ph'],
  [/k/u, 'qu'],
  [/k/u, 'ck'],
  [/sh/u, 'ch'],
];
const COST_HEARD = 0.5;

const slipsIn = (length: number) => (length < 8 ? 1 : 2);

/** Forms of one word: "oliva" and "olive", "oxide" and "oxyde". */
const isForm = (one: string, other: string): boolean => {
  const begun = Math.max(4, Math.min(one.length, other.length) - 2);
  return one.slice(0, begun) === other.slice(0, begun) || (one.length > 4 && slipCost(one, other) <= 0.6);
};

/** A known word, and how far from it another one is (`slipCost`). */
export type Near = { readonly word: string; readonly cost: number };

export type WordSpeller = {
  /**
   * Every known word that may be meant, nearest first, whether or not what was typed is a word of its own; `most`: how far one may
   * be, as usual for its length where it is not told.
   */
  readonly near: (word: string, most?: number) => readonly Near[];
  /** The known word that a slip was meant for; undefined for words that are known or common, and where two are as near. */
  readonly meant: (word: string) => string | undefined;
};

/**
 * A speller over `known` words (lower case, no accents). What is one of the `common` words is never a slip, and what lies nearer
 * to one of them than to any known word was meant for that.
 */
export function wordSpeller(known: ReadonlySet<string>, common: ReadonlySet<string>): WordSpeller {
  const around = wordsAround(() => known, slipsIn);
  const decoysAround = wordsAround(
    () => [...common].filter(one => one.length > 2 && !known.has(one)),
    () => 1,
  );

  const near = (word: string, most = mostOff(word.length)): readonly Near[] => {
    if (word.length < 3 || word.length > LONGEST) return [];
    const costs = new Map<string, number>();
    for (const candidate of around(word)) costs.set(candidate, slipCost(word, candidate));
    for (const [one, two] of HEARD) {
      const heard = word.replace(one, two);
      if (heard !== word && known.has(heard)) costs.set(heard, COST_HEARD);
    }
    return [...costs]
      .map(([candidate, cost]) => ({ word: candidate, cost }))
      .filter(({ cost }) => cost <= most)
      .sort((a, b) => a.cost - b.cost || (a.word < b.word ? -1 : 1));
  };

  const nearest = rememberedWord((word: string): string | undefined => {
    const [best, ...others] = near(word);
    if (best === undefined) return undefined;
    const rival = others.find(other => !isForm(other.word, best.word));
    if (rival !== undefined && rival.cost - best.cost < MARGIN) return undefined;
    const nearer = [...decoysAround(word)].some(decoy => slipCost(word, decoy) < best.cost);
    return nearer ? undefined : best.word;
  });

  return {
    near,
    meant: word =>
      word.length < 4 || word.length > LONGEST || known.has(word) || common.has(word)
        ? undefined
        : nearest(word),
  };
}
