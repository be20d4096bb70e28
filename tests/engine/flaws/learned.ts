import { CAUSE_IDS, type CauseId } from '../../../src/engine/flaws/cause.ts';
import type { Evidence } from '../../../src/engine/flaws/diagnosis.ts';
import { readWords } from '../../../src/engine/flaws/reading/read.ts';
import type { Gist, Wording, WrittenWording } from '../../../src/engine/flaws/reading/wording.ts';
import { EXAMPLES } from './examples.ts';
import { toldByMakers } from './told-by-makers.ts';

/** A description with the cause it tells of, to learn from. */
export type Example = { readonly text: string; readonly cause: CauseId };

/** A word seen once says more of its writer than of the cause. */
const LEAST_SEEN = 2;
/** Counts the wording of examples: naive Bayes over which words and ideas occur (Maron 1961). */
function learn(examples: readonly { readonly gist: Gist; readonly cause: CauseId }[]): Wording {
  const cases = CAUSE_IDS.map(id => examples.filter(({ cause }) => cause === id).length);
  const counts = new Map<string, Map<number, number>>();
  for (const { gist: features, cause } of examples) {
    const at = CAUSE_IDS.indexOf(cause);
    for (const feature of features) {
      const row = counts.get(feature) ?? new Map<number, number>();
      row.set(at, (row.get(at) ?? 0) + 1);
      counts.set(feature, row);
    }
  }
  const often = [...counts].filter(([, row]) => total([...row]) >= LEAST_SEEN);
  return {
    cases,
    seen: new Map(often.map(([feature, row]) => [feature, [...row].sort(([a], [b]) => a - b)])),
  };
}

const total = (row: readonly (readonly [number, number])[]): number => row.reduce((sum, [, n]) => sum + n, 0);

/** Writes wording down, words in the order of their letters. */
export function writeWording({ cases, seen }: Wording): WrittenWording {
  const rows = [...seen].map(
    ([feature, row]) => [feature, row.map(pair => pair.join(' ')).join(', ')] as const,
  );
  return { cases, seen: Object.fromEntries(rows.sort(([a], [b]) => (a < b ? -1 : 1))) };
}

/** A description read, with what it tells of and who told it: nobody, where it is one of the examples. */
export type Told = {
  readonly gist: Gist;
  readonly evidence: readonly Evidence[];
  readonly cause: CauseId;
  readonly writer: string | undefined;
};

/** The examples and what every maker of `tests/sets` told, each read once. */
export function toldOfFlaws(): readonly Told[] {
  const read = (text: string) => {
    const { gist, evidence } = readWords(text);
    return { gist, evidence };
  };
  return [
    ...EXAMPLES.map(({ text, cause }) => ({ ...read(text), cause, writer: undefined })),
    ...toldByMakers().map(({ text, cause, writer }) => ({ ...read(text), cause, writer })),
  ];
}

/** The wording of these descriptions, counted now. */
export const wordingOf = (told: readonly Told[]): Wording => learn(told);
