/* What an answer folded away: its buttons open it for whoever reads the answer. */

import { z } from 'zod';
import { refuse } from '../../engine/refusal.ts';
import { foldedAnswer, foldedAnswers, under } from '../keys.ts';
import { moment, read, readable, recordKind, written } from '../record.ts';
import { drop, put, type Store } from '../store.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    'fold-forgotten': Record<never, never>;
  }
}

const where = { fold: z.string().exactOptional() };

const kind = recordKind('folded answer', {
  headline: z.string(),
  blocks: z.array(
    z.discriminatedUnion('kind', [
      z.object({
        ...where,
        kind: z.literal('measures'),
        measures: z.array(
          z.object({
            label: z.string(),
            value: z.string(),
            note: z.string().exactOptional(),
            hex: z.string().exactOptional(),
          }),
        ),
      }),
      z.object({
        ...where,
        kind: z.literal('text'),
        text: z.string(),
        folds: z.boolean().exactOptional(),
      }),
      z.object({
        ...where,
        kind: z.literal('rows'),
        title: z.string().exactOptional(),
        rows: z.array(z.string()),
        numbered: z.boolean().exactOptional(),
      }),
      z.object({
        ...where,
        kind: z.literal('picture'),
        name: z.string(),
        alt: z.string(),
        /** PNG, base64. */
        png: z.string(),
      }),
    ]),
  ),
  cautions: z.array(z.object({ ...where, id: z.string(), text: z.string() })),
  /** Lines that its other buttons ask. */
  lines: z.array(z.string()).exactOptional(),
  at: moment,
});

/** The folds of one answer, each block and caution with the name of the fold it is in. */
export type FoldedAnswer = Omit<(typeof kind)['schema']['_output'], 'at'>;

type Member = { readonly store: Store; readonly member: string };

/** As many answers of a member keep their folds, the newest; and no longer than their buttons live, milliseconds. */
const remembered = 20;
const lifetime = 48 * 3_600_000;
/** As many members' answers are counted; then all are counted anew, and the nightly look finds what is too old. */
const MOST_COUNTED = 10_000;

/** How many answers of a member were kept by this process since it looked for those too old. */
const counted = new Map<string, number>();

/** True with every twentieth answer of a member: between two looks as many again are kept. */
function isTimeToLook(member: string): boolean {
  const count = (counted.get(member) ?? 0) + 1;
  if (counted.size >= MOST_COUNTED) counted.clear();
  counted.set(member, count % remembered);
  return count >= remembered;
}

/** Remembers what an answer to a member folded away, under an id that its buttons carry. */
export async function keepFolds(
  { store, member }: Member,
  id: string,
  folded: FoldedAnswer,
  at: Date,
): Promise<void> {
  const key = foldedAnswer(member, id);
  const old = isTimeToLook(member) ? await outlived({ store, member }, at) : [];
  await store.commit([
    put(key, written(kind, { ...folded, at })),
    ...old.filter(one => one !== key).map(drop),
  ]);
}

async function outlived({ store, member }: Member, at: Date): Promise<readonly string[]> {
  const { from, to } = under(foldedAnswers(member));
  return readable(kind, await store.range(from, to, 10 * remembered))
    .map(({ key, fields }) => ({ key, at: fields.at.getTime() }))
    .sort((a, b) => b.at - a.at)
    .filter((one, place) => place >= remembered - 1 || at.getTime() - one.at > lifetime)
    .map(({ key }) => key);
}

/** What an answer to a member folded away. Throws a Refusal `fold-forgotten` once newer ones have taken its place. */
export async function foldsOfAnswer({ store, member }: Member, id: string): Promise<FoldedAnswer> {
  const key = foldedAnswer(member, id);
  const [value] = await store.get([key]);
  return value === undefined ? refuse('fold-forgotten', {}) : read(kind, key, value);
}
