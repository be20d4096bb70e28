import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Overall, overallOf, percentOf, type Score } from './overall.ts';

type Kept = Score & { readonly percent: number };

/** `scores.json`: `all`, what the rooms come to together, and the best that was seen of each, its whole before any sample of it. */
export class Scores {
  readonly #file: string;
  readonly #kept: Record<string, Kept>;
  #all: Overall | undefined;

  constructor(file = join(import.meta.dirname, 'scores.json')) {
    this.#file = file;
    const { all, ...kept } = JSON.parse(readFileSync(file, 'utf8')) as { all?: Overall } & Record<
      string,
      Kept
    >;
    this.#all = all;
    this.#kept = kept;
  }

  of(name: string): Kept | undefined {
    return this.#kept[name];
  }

  /** What the file tells of the whole engine; undefined where nothing was added up yet. */
  get all(): Overall | undefined {
    return this.#all;
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
    writeFileSync(this.#file, `${JSON.stringify({ all, ...this.#kept }, undefined, 2)}\n`);
    return all;
  }
}
