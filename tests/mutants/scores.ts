import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** What a room reached; `all`, where a sample shows it: of how many changes it was drawn. */
export type Score = { readonly noticed: number; readonly of: number; readonly all?: number };
type Kept = Score & { readonly percent: number };

const file = join(import.meta.dirname, 'scores.json');

/** `scores.json`: the best that was seen of each room, its whole before any sample of it. */
export class Scores {
  readonly #kept = JSON.parse(readFileSync(file, 'utf8')) as Record<string, Kept>;

  of(name: string): Kept | undefined {
    return this.#kept[name];
  }

  /** Keeps what was seen where it tells more or is better: a whole room, a larger sample, a share that rose. */
  keep(name: string, { noticed, of, all }: Score): void {
    const before = this.#kept[name];
    const percent = of === 0 ? 100 : Math.floor((1000 * noticed) / of) / 10;
    const isWhole = all === undefined;
    const wasWhole = before !== undefined && before.all === undefined;
    if (!isWhole && (wasWhole || (before && of < before.of))) return;
    if (before && percent < before.percent && of <= before.of) return;
    this.#kept[name] = { percent, noticed, of, ...(isWhole ? {} : { all }) };
    writeFileSync(file, `${JSON.stringify(this.#kept, undefined, 2)}\n`);
  }
}
