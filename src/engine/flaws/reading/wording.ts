import { unitOfWord } from '../../quantities/unit-words.ts';
import { CAUSE_IDS, type CauseId } from '../cause.ts';
import { keyOf, type Mention } from './concepts.ts';
import type { Reading } from './polarity.ts';
import type { Token } from './tokens.ts';

/** A description with the cause it tells of, to learn from. */
export type Example = { readonly text: string; readonly cause: CauseId };

/** What a description is made of for comparison with others: words and ideas, marked where denied. */
export type Gist = ReadonlySet<string>;

/** For every word or idea, natural log of how much oftener each cause's descriptions hold it than any. */
export type Wording = ReadonlyMap<string, Float64Array>;

/** A word seen once says more of its writer than of the cause. */
const LEAST_SEEN = 2;
/** Made-up descriptions, of average wording, that each cause's own are topped up with (m-estimate, Cestnik 1990). */
const TOPPED_UP = 2;

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

/** Learns wording from examples: naive Bayes over which words and ideas occur (Maron 1961). */
export function learn(examples: readonly { readonly gist: Gist; readonly cause: CauseId }[]): Wording {
  const seen = new Map<string, Float64Array>();
  const cases = new Float64Array(CAUSE_IDS.length);
  for (const { gist: features, cause } of examples) {
    const at = CAUSE_IDS.indexOf(cause);
    cases[at]! += 1;
    for (const feature of features) {
      const row = seen.get(feature) ?? new Float64Array(CAUSE_IDS.length);
      row[at]! += 1;
      seen.set(feature, row);
    }
  }
  const wording = new Map<string, Float64Array>();
  for (const [feature, row] of seen) {
    const times = row.reduce((sum, n) => sum + n, 0);
    if (times < LEAST_SEEN) continue;
    const usual = (times + 0.5) / (examples.length + 1);
    wording.set(
      feature,
      row.map((n, i) => Math.log((n + TOPPED_UP * usual) / (cases[i]! + TOPPED_UP) / usual)),
    );
  }
  return wording;
}

/** How much a text is worded like each cause's descriptions: natural log against any, by place in {@link CAUSE_IDS}. */
export function likeness(features: Gist, wording: Wording): Float64Array {
  const sums = new Float64Array(CAUSE_IDS.length);
  for (const feature of features)
    wording.get(feature)?.forEach((log, i) => {
      sums[i]! += log;
    });
  return sums;
}
