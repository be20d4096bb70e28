import type { CauseId } from '../../../src/engine/flaws/cause.ts';
import { diagnose } from '../../../src/engine/flaws/diagnose.ts';
import { Refusal } from '../../../src/engine/refusal.ts';

/** One line of a maker's list: what was told, and the cause a knowing maker would name first. */
export type FlawLine = {
  readonly text: string;
  readonly cause: CauseId;
  readonly language?: string;
  readonly also?: readonly CauseId[];
};

/** Stated chances of the cause put first, from `low` up to but not including `high`, and how often they came true. */
export type ReliabilityRow = {
  readonly low: number;
  readonly high: number;
  readonly cases: number;
  readonly stated: number;
  readonly right: number;
};

export type FlawScore = {
  /** Lines whose right cause was put first, and among the first three. */
  readonly first: number;
  readonly firstThree: number;
  readonly total: number;
  readonly misses: readonly {
    readonly text: string;
    readonly cause: CauseId;
    readonly got: readonly string[];
    readonly chance: number;
  }[];
  readonly reliability: readonly ReliabilityRow[];
};

const EDGES = [0, 0.2, 0.4, 0.6, 0.8, 0.9, 1];

type Ranked = { readonly ids: readonly string[]; readonly chance: number };

/** A refusal (metal powder in the words) names no cause: it counts as a miss with no chance stated. */
function ranked(text: string): Ranked {
  try {
    const { causes } = diagnose(text);
    return { ids: causes.slice(0, 3).map(({ id }) => id), chance: causes[0]?.probability ?? 0 };
  } catch (error) {
    if (error instanceof Refusal) return { ids: [`refused: ${error.id}`], chance: 0 };
    throw error;
  }
}

/** How the diagnosis does on a maker's list. */
export function scoreFlaws(lines: readonly FlawLine[]): FlawScore {
  const all = lines.map(line => {
    const { ids, chance } = ranked(line.text);
    const good = (id: string | undefined) =>
      id === line.cause || (line.also ?? []).includes((id ?? '') as CauseId);
    return { line, ids, chance, hit: good(ids[0]), near: ids.some(good) };
  });
  const reliability = EDGES.slice(0, -1).flatMap((low, i): ReliabilityRow[] => {
    const high = EDGES[i + 1]!;
    const own = all.filter(({ chance }) => chance >= low && (chance < high || high === 1));
    const mean = (of: (one: (typeof own)[number]) => number) =>
      own.reduce((sum, one) => sum + of(one), 0) / own.length;
    return own.length === 0
      ? []
      : [
          {
            low,
            high,
            cases: own.length,
            stated: mean(one => one.chance),
            right: mean(one => Number(one.hit)),
          },
        ];
  });
  return {
    first: all.filter(({ hit }) => hit).length,
    firstThree: all.filter(({ near }) => near).length,
    total: all.length,
    misses: all
      .filter(({ hit }) => !hit)
      .map(({ line, ids, chance }) => ({ text: line.text, cause: line.cause, got: ids, chance })),
    reliability,
  };
}

/** The score as text: figures, reliability table, and which cause was taken for which; no word of any line. */
export function scoreText(
  name: string,
  { first, firstThree, total, misses, reliability }: FlawScore,
): string {
  const percent = (part: number) => `${((100 * part) / total).toFixed(1)} %`;
  return [
    `${name}: first ${first} of ${total} (${percent(first)}), in the first three ${firstThree} (${percent(firstThree)})`,
    '  stated chance -> came true (cases)',
    ...reliability.map(
      row => `  ${row.stated.toFixed(2)} -> ${row.right.toFixed(2)} (${row.cases}), from ${row.low}`,
    ),
    ...misses.map(miss => `  ${miss.cause} taken for ${miss.got[0] ?? 'nothing'}`),
  ].join('\n');
}
