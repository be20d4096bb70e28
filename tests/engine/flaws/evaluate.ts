import { readdirSync, readFileSync } from 'node:fs';
import { CAUSE_IDS, type CauseId } from '../../../src/engine/flaws/cause.ts';
import { diagnose } from '../../../src/engine/flaws/diagnose.ts';

/** One description with its right cause; `null` where nothing known is described. */
export type Described = {
  readonly text: string;
  readonly cause: CauseId | null;
  readonly also?: readonly CauseId[];
};

export type Outcome = {
  readonly right: CauseId | null;
  readonly first: CauseId | 'none';
  readonly hit: boolean;
  readonly second: boolean;
  readonly chance: number;
  readonly told: boolean;
};

/** Reads every description in the JSON files of a folder beside the tests. */
export function described(folder: string): Described[] {
  const url = new URL(`${folder}/`, import.meta.url);
  return readdirSync(url)
    .filter(name => name.endsWith('.json'))
    .flatMap(name => JSON.parse(readFileSync(new URL(name, url), 'utf8')) as Described[]);
}

/** What the diagnosis makes of each description. */
export function outcomes(all: readonly Described[]): Outcome[] {
  return all.map(({ text, cause, also = [] }) => {
    const diagnosis = diagnose(text);
    const good = (id: CauseId | undefined) => id !== undefined && (id === cause || also.includes(id));
    const [first, second] = diagnosis.causes;
    return {
      right: cause,
      first: first?.id ?? 'none',
      hit: good(first?.id),
      second: good(first?.id) || good(second?.id),
      chance: first?.probability ?? 0,
      told: diagnosis.cantTell === undefined,
    };
  });
}

/** Mean squared gap between stated chance and outcome of the cause put first (Brier 1950), 0 to 1. */
export function brier(all: readonly Outcome[]): number {
  return all.reduce((sum, { chance, hit }) => sum + (chance - Number(hit)) ** 2, 0) / all.length;
}

/** Figures of a run as text, with no word of any description in it. */
export function figures(name: string, all: readonly Outcome[]): string {
  const hits = all.filter(item => item.hit).length;
  const lines = [
    `${name}: right cause first in ${hits} of ${all.length} (${((100 * hits) / all.length).toFixed(1)} %), among the first two in ${all.filter(item => item.second).length}`,
    `Brier score ${brier(all).toFixed(3)}; said "I can't tell yet" in ${all.filter(item => !item.told).length}`,
    'stated chance -> came true (cases)',
  ];
  for (let low = 0; low < 1; low += 0.2) {
    const bin = all.filter(item => item.chance >= low && (item.chance < low + 0.2 || low + 0.2 >= 1));
    if (bin.length > 0)
      lines.push(
        `  ${(bin.reduce((s, i) => s + i.chance, 0) / bin.length).toFixed(2)} -> ${(bin.filter(i => i.hit).length / bin.length).toFixed(2)} (${bin.length})`,
      );
  }
  lines.push('confusion: right cause hits/cases, then what came first instead');
  for (const id of CAUSE_IDS) {
    const own = all.filter(item => item.right === id);
    if (own.length === 0) continue;
    const wrong = Object.entries(
      Object.groupBy(
        own.filter(item => !item.hit),
        item => item.first,
      ),
    );
    const told = wrong.map(([first, cases]) => `${first} ${cases?.length ?? 0}`).join(', ');
    lines.push(
      `  ${id} ${own.filter(item => item.hit).length}/${own.length}${told === '' ? '' : `: ${told}`}`,
    );
  }
  return lines.join('\n');
}
