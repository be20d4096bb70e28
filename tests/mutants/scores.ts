import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Overall, overallOf, percentOf, type Score, surelyBelow } from './overall.ts';

type Kept = Score & { readonly percent: number };

/**
 * `scores.json`: `all`, what the rooms come to together; `tables`, what a sample of the engine's tables showed; and the best that was seen
 * of each room, its whole before any sample of it.
 */
export class Scores {
  readonly #file: string;
  readonly #kept: Record<string, Kept>;
  #all: Overall | undefined;
  #tables: Kept | undefined;

  constructor(file = join(import.meta.dirname, 'scores.json')) {
    this.#file = file;
    const { all, tables, ...kept } = JSON.parse(readFileSync(file, 'utf8')) as {
      all?: Overall;
      tables?: Kept;
    } & Record<string, Kept>;
    this.#all = all;
    this.#tables = tables;
    this.#kept = kept;
  }

  of(name: string): Kept | undefined {
    return this.#kept[name];
  }

  /** What the file tells of the whole engine; undefined where nothing was added up yet. */
  get all(): Overall | undefined {
    return this.#all;
  }

  /** What a sample of the engine's tables showed; undefined before the first. */
  get tables(): Kept | undefined {
    return this.#tables;
  }

  /** Keeps what a sample of all tables showed where it is as large as the one before it and no worse. */
  keepTables({ noticed, of, all }: Score & { readonly all: number }): void {
    const before = this.#tables;
    const percent = percentOf(of === 0 ? 1 : noticed / of);
    if (before && (of < before.of || percent < before.percent)) return;
    this.#tables = { percent, noticed, of, all };
    this.addUp();
  }

  /** {@link keep}, but where it is surely less than the room has to reach or than was kept: then nothing is kept and that bound returned. */
  keepUnlessBelow(name: string, score: Score, atLeast: number): number | undefined {
    const bound = surelyBelow(score, atLeast, this.#kept[name]?.percent);
    if (bound === undefined) this.keep(name, score);
    return bound;
  }

  /** Keeps what was seen of a room where it tells more and is no worse: a whole, a larger sample. A share never falls. */
  keep(name: string, { noticed, of, all }: Score): void {
    const before = this.#kept[name];
    const percent = percentOf(of === 0 ? 1 : noticed / of);
    const isWhole = all === undefined;
    const wasWhole = before !== undefined && before.all === undefined;
    if (!isWhole && (wasWhole || (before && of < before.of))) return;
    if (before && percent < before.percent) return;
    this.#kept[name] = { percent, noticed, of, ...(isWhole ? {} : { all }) };
    this.addUp();
  }

  /** Writes what the rooms come to beside them. */
  addUp(): Overall {
    const all = overallOf(Object.values(this.#kept));
    this.#all = all;
    writeFileSync(
      this.#file,
      `${JSON.stringify({ all, tables: this.#tables, ...this.#kept }, undefined, 2)}\n`,
    );
    return all;
  }
}
