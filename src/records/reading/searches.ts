import type { DatabaseSync, StatementSync } from 'node:sqlite';
import type { Span } from '../store.ts';

/** Where the adapters keep their records, unless told otherwise. */
const NAMESPACE = 'tintmoot';
/** So many keys, or spans, are asked for in one statement. */
export const MOST_KEYS = 32;
/** Prepared statements of each sort kept; then all are made anew. */
const MOST_STATEMENTS = 100;

type Row = readonly [key: string, text: string];
/** With the place of the span that it lies in. */
type Numbered = readonly [key: string, text: string, at: number];

const SELECT = `SELECT key, text FROM records WHERE ns = '${NAMESPACE}'`;
const keysOf = (count: number) =>
  `${SELECT} AND key IN (${Array.from({ length: count }, () => '?').join(', ')})`;
const rangeOf = (limit: number) => `${SELECT} AND key >= ? AND key < ? ORDER BY key LIMIT ${limit}`;
const unionOf = (spans: number, limit: number) =>
  Array.from({ length: spans }, (_, at) => `SELECT key, text, ${at} FROM (${rangeOf(limit)})`).join(
    ' UNION ALL ',
  );

/** Searches in the records of an SQLite file. They throw what SQLite throws. */
export class Searches {
  readonly #db: DatabaseSync;
  readonly #byKeys = new Map<number, StatementSync>();
  /** By limit and number of spans. */
  readonly #bySpans = new Map<number, StatementSync>();

  constructor(db: DatabaseSync) {
    this.#db = db;
  }

  /** What is stored under at most {@link MOST_KEYS} keys, in no order. */
  keys(keys: readonly string[]): readonly Row[] {
    const statement = this.#statement(this.#byKeys, keys.length, () => keysOf(keys.length));
    return statement.all(...keys) as unknown as readonly Row[];
  }

  /** At most `limit` rows of each of at most {@link MOST_KEYS} spans, span by span, in the order of their keys. */
  spans(spans: readonly Span[], limit: number): readonly Numbered[] {
    const which = limit * (MOST_KEYS + 1) + spans.length;
    const statement = this.#statement(this.#bySpans, which, () => unionOf(spans.length, limit));
    return statement.all(...spans.flatMap(({ from, to }) => [from, to])) as unknown as readonly Numbered[];
  }

  /** Prepared once for each number of keys or spans and each limit: a bound limit costs as much as the search. */
  #statement(kept: Map<number, StatementSync>, which: number, sql: () => string): StatementSync {
    const known = kept.get(which);
    if (known) return known;
    const made = this.#db.prepare(sql());
    made.setReturnArrays(true);
    if (kept.size >= MOST_STATEMENTS) kept.clear();
    kept.set(which, made);
    return made;
  }
}
