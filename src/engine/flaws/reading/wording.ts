import { unitOfWord } from '../../quantities/unit-words.ts';
import type { Token } from '../../text/tokens.ts';
import { CAUSE_IDS } from '../cause.ts';
import { keyOf, type Mention } from './concepts.ts';
import type { Reading } from './polarity.ts';

/** What a description is made of for comparison with others: words and ideas, marked where denied. */
export type Gist = ReadonlySet<string>;

/**
 * How many descriptions of each cause (by place in {@link CAUSE_IDS}) there are, and how many of them hold a word or
 * idea: pairs of a cause's place and a count, those without any left out.
 */
export type Wording = {
  readonly cases: readonly number[];
  readonly seen: ReadonlyMap<string, readonly (readonly [cause: number, count: number])[]>;
};

/** {@link Wording} as it is written down: `"12 3, 17 1"` is three descriptions of cause 12 and one of cause 17. */
export type WrittenWording = {
  readonly cases: readonly number[];
  readonly seen: Readonly<Record<string, string>>;
};

/**
 * Made-up descriptions, of average wording, for each of a cause's own (m-estimate, Cestnik 1990): a share, so that a word
 * unheard of speaks no more against a cause with many descriptions than against one with few.
 */
const TOPPED_UP = 0.2;

/** The words and ideas of a read text; numbers and what they count left out, so that another unit changes nothing. */
export function gist(tokens: readonly Token[], mentions: readonly Mention[], { standing }: Reading): Gist {
  const mark = (name: string, at: number) => (standing[at] === 'yes' ? name : `${standing[at]} ${name}`);
  const all = new Set<string>();
  tokens.forEach((token, at) => {
    const counted = tokens[at - 1]?.kind === 'number' || unitOfWord(token.text) !== undefined;
    if (token.kind === 'word' && token.text.length > 1 && !counted) all.add(mark(keyOf(token), at));
  });
  for (const { concept, to } of mentions) all.add(mark(`#${concept}`, to - 1));
  return all;
}

const total = (row: readonly (readonly [number, number])[]): number => row.reduce((sum, [, n]) => sum + n, 0);

/** Reads written wording. */
export function readWording({ cases, seen }: WrittenWording): Wording {
  const pairs = (written: string) =>
    written.split(', ').map(pair => {
      const [cause = 0, count = 0] = pair.split(' ').map(Number);
      return [cause, count] as const;
    });
  return {
    cases,
    seen: new Map(Object.entries(seen).map(([feature, written]) => [feature, pairs(written)])),
  };
}

/** How much a text is worded like each cause's descriptions: natural log against any, by place in {@link CAUSE_IDS}. */
export function likeness(features: Gist, { cases, seen }: Wording): Float64Array {
  const examples = cases.reduce((sum, n) => sum + n, 0);
  const sums = new Float64Array(CAUSE_IDS.length);
  for (const feature of features) {
    const row = seen.get(feature);
    if (!row) continue;
    const counts = new Map(row);
    const usual = (total(row) + 0.5) / (examples + 1);
    cases.forEach((n, i) => {
      sums[i]! += Math.log(((counts.get(i) ?? 0) + TOPPED_UP * n * usual) / (n * (1 + TOPPED_UP)) / usual);
    });
  }
  return sums;
}
