import { z } from 'zod';
import { lesson as lessonKey, lessons, shelfGone, shelfLotFact, under } from '../keys.ts';
import { moment, type RecordOf, readable, recordKind, written } from '../record.ts';
import { learntKind } from '../shelf/schema.ts';
import type { LearntLot } from '../shelf/shelf.ts';
import { absent, add, drop, everything, put, type Write } from '../store.ts';
import type { BatchBook } from './batch.ts';
import { shades } from './schema.ts';

const lab = z.object({ l: z.number(), a: z.number(), b: z.number() });

const bar = z.object({
  /** Which portion of the batch it is. */
  portion: z.int().min(0),
  mix: z.array(
    z.object({
      item: z.string(),
      lot: z.int().min(1),
      colourant: z.string(),
      /** Pigment, grams per 100 g of batter. */
      grams: z.number().min(0),
    }),
  ),
  /** Colours of no jar of theirs: as the catalogue has them. */
  others: z.array(z.object({ colourant: z.string(), grams: z.number().min(0) })),
  shades,
  gelled: z.boolean(),
  lab,
  plusMinus: z.number().positive(),
});

/** What the cured bars of a batch said, and what said before no longer counts; without bars only the latter. */
export const lessonKind = recordKind('lesson', {
  at: moment,
  cause: z.string(),
  batch: z.string(),
  bars: z.array(bar),
  undoes: z.string().exactOptional(),
});

export type Lesson = RecordOf<typeof lessonKind>;
export type LessonBar = Lesson['bars'][number];

/** Every lesson of a member that still counts, oldest first, and how many lines there are in all. */
export async function lessonsOf({
  store,
  member,
}: BatchBook): Promise<{ readonly standing: readonly Lesson[]; readonly lines: number }> {
  const all = readable(lessonKind, await everything(store, under(lessons(member))));
  const undone = new Set(all.flatMap(({ fields }) => fields.undoes ?? []));
  return {
    standing: all
      .map(({ fields }) => fields)
      .filter(({ bars, cause }) => bars.length > 0 && !undone.has(cause)),
    lines: all.reduce((most, { key }) => Math.max(most, Number(key.split('/').at(-1))), 0),
  };
}

/** The newest lesson of a batch with bars in it, whether it still counts or not; undefined where it never taught anything. */
export async function lastLessonOf({ store, member }: BatchBook, batch: string): Promise<Lesson | undefined> {
  const all = readable(lessonKind, await everything(store, under(lessons(member))));
  return all.map(({ fields }) => fields).findLast(one => one.batch === batch && one.bars.length > 0);
}

/** What is now known of a lot; `learnt` is undefined where nothing is left of it. */
export type LotLearnt = {
  readonly item: string;
  readonly lot: number;
  readonly learnt: LearntLot | undefined;
};

/**
 * Writes down a lesson as the next line, and with it what is now known of the jars. False where another lesson came
 * between: then everything is to be read and learnt again.
 */
export async function keepLesson(
  { store, member }: BatchBook,
  {
    lines,
    lesson,
    lots,
  }: { readonly lines: number; readonly lesson: Lesson; readonly lots: readonly LotLearnt[] },
): Promise<boolean> {
  const line = add(lessonKey(member, lines + 1), written(lessonKind, lesson));
  const { done } = await store.commit([line, ...lots.flatMap(one => learntWrites(member, one, lesson.at))]);
  return done;
}

/** Writes what is known of jars without a new lesson, as when test bars were added. */
export async function keepLearnt(
  { store, member }: BatchBook,
  lots: readonly LotLearnt[],
  at: Date,
): Promise<void> {
  await store.commit(lots.flatMap(one => learntWrites(member, one, at)));
}

function learntWrites(member: string, { item, lot, learnt }: LotLearnt, at: Date): readonly Write[] {
  const key = shelfLotFact(member, item, lot, 'learnt');
  if (!learnt) return [drop(key)];
  const { colourant, parameters, covariance, unexplained, bars } = learnt;
  const record = written(learntKind, {
    colourant,
    parameters: [...parameters],
    covariance: covariance.map(row => [...row]),
    ...(unexplained !== undefined && { unexplained }),
    bars,
    at,
  });
  return [absent(shelfGone(member, item)), put(key, record)];
}
