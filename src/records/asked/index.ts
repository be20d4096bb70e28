/* Lines that a member asked lately and that buttons go on with: "which one?", another reading, a change. */

import { z } from 'zod';
import { refuse } from '../../engine/refusal.ts';
import { askedLine, askedLines, under } from '../keys.ts';
import { moment, read, recordKind, written } from '../record.ts';
import { drop, put, type Store } from '../store.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'line-forgotten': Record<never, never>;
  }
}

const kind = recordKind('asked line', {
  /** `shelf use`; `ask` for a plain question. */
  command: z.string(),
  given: z.record(z.string(), z.union([z.string(), z.number(), z.boolean()])),
  /** The option that can mean several things, and the text in it that each candidate takes the place of. */
  option: z.string().exactOptional(),
  replaces: z.string().exactOptional(),
  candidates: z.array(z.string()),
  at: moment,
});

export type AskedLine = Omit<(typeof kind)['schema']['_output'], 'at'>;

type Member = { readonly store: Store; readonly member: string };

/** As many lines of a member are remembered, the newest; and no longer than their buttons live, milliseconds. */
const remembered = 20;
const lifetime = 48 * 3_600_000;

/** Remembers a line under the id of the answer that offered its buttons, and forgets those too old to go on with. */
export async function keepAskedLine(
  { store, member }: Member,
  id: string,
  line: AskedLine,
  at: Date,
): Promise<void> {
  const { from, to } = under(askedLines(member));
  const key = askedLine(member, id);
  const before = (await store.range(from, to, 10 * remembered))
    .map(entry => ({ key: entry.key, at: read(kind, entry.key, entry.value).at }))
    .sort((a, b) => b.at.getTime() - a.at.getTime());
  const old = before.filter(
    (one, place) => place >= remembered - 1 || at.getTime() - one.at.getTime() > lifetime,
  );
  await store.commit([
    put(key, written(kind, { ...line, at })),
    ...old.filter(one => one.key !== key).map(one => drop(one.key)),
  ]);
}

/** The line an answer offered buttons for. Throws a Refusal `line-forgotten` once newer ones have taken its place. */
export async function askedLineOf({ store, member }: Member, id: string): Promise<AskedLine> {
  const key = askedLine(member, id);
  const [value] = await store.get([key]);
  return value === undefined ? refuse('line-forgotten', {}) : read(kind, key, value);
}
