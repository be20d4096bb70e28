/* What an answer folded away: its buttons open it for whoever reads the answer. */

import { z } from 'zod';
import { refuse } from '../../engine/refusal.ts';
import { alone, foldedAnswer, foldedAnswers, under } from '../keys.ts';
import { moment, read, readable, recordKind } from '../record.ts';
import { atHand, drop, put, type Store } from '../store.ts';

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
/** As many members' answers are known; then all are forgotten, and the nightly look finds what is too old. */
const MOST_KNOWN = 2_000;

/** A member's answers that this process kept: keys, with when (ms since 1970 UTC) they were written, the one given last at the end. */
type Kept = { readonly writtenAt: Map<string, number>; hasLooked: boolean };
const kept = new Map<string, Kept>();

function keptOf(member: string): Kept {
  const known = kept.get(member);
  if (known) return known;
  if (kept.size >= MOST_KNOWN) kept.clear();
  const fresh = { writtenAt: new Map<string, number>(), hasLooked: false };
  kept.set(member, fresh);
  return fresh;
}

/**
 * The answers that make room for one more. With a member's first twenty the store is looked through for what an earlier
 * process left; from then on this one knows what it kept, and twenty at once go: reading them all for their times was a
 * tenth of what an answer took.
 */
async function toMakeRoom({ store, member }: Member, at: Date): Promise<readonly string[]> {
  const known = keptOf(member);
  const { writtenAt } = known;
  if (writtenAt.size < (known.hasLooked ? 2 : 1) * remembered) return [];
  if (known.hasLooked) {
    const oldest = [...writtenAt.keys()].slice(0, remembered);
    for (const key of oldest) writtenAt.delete(key);
    return oldest;
  }
  known.hasLooked = true;
  return await outlived({ store, member }, at);
}

/** Remembers what an answer to a member folded away, under an id that its buttons carry. */
export async function keepFolds(
  { store, member }: Member,
  id: string,
  folded: FoldedAnswer,
  at: Date,
): Promise<void> {
  const key = foldedAnswer(member, id);
  putLast(keptOf(member), key, at.getTime());
  const old = await toMakeRoom({ store, member }, at);
  // Made here of what its type holds, so it is checked by whoever reads it; checking it here too took as long as keeping it.
  const record = { v: kind.version, ...folded, at: at.toISOString() };
  await store.commit([put(key, record), ...old.filter(one => one !== key).map(drop)]);
}

/** Written again once they are so old, ms: less than that their buttons may outlive them. */
const RENEWED_AFTER = 600_000;

/**
 * The same for what is told again word for word under the same id: where it was written a moment ago and is still there it
 * counts as given now, and pushes out no other answer's folds.
 */
export async function keepFoldsAgain(
  { store, member }: Member,
  id: string,
  folded: FoldedAnswer,
  at: Date,
): Promise<void> {
  const key = foldedAnswer(member, id);
  const known = keptOf(member);
  const written = known.writtenAt.get(key);
  const isRecent = written !== undefined && at.getTime() - written < RENEWED_AFTER;
  if (!isRecent || !(await isThere(store, key))) return await keepFolds({ store, member }, id, folded, at);
  putLast(known, key, written);
}

function putLast({ writtenAt }: Kept, key: string, at: number): void {
  writtenAt.delete(key);
  writtenAt.set(key, at);
}

async function isThere(store: Store, key: string): Promise<boolean> {
  const span = alone(key);
  const found = atHand(store, span, 1) ?? (await store.range(span.from, span.to, 1));
  return found.length > 0;
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
