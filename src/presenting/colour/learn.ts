import type { JarBelief } from '../../engine/colour/calibration/joint/jar-parameters.ts';
import type { LearntBar } from '../../engine/colour/calibration/joint/learn-jars.ts';
import {
  keepLearnt,
  keepLesson,
  type Lesson,
  type LessonBar,
  type LotLearnt,
  lastLessonOf,
  lessonsOf,
} from '../../records/batches/lessons.ts';
import { StoreFailure } from '../../records/failure.ts';
import type { ShelfItem } from '../../records/shelf/index.ts';
import { pool } from './share-jars.ts';
import { type Asking, type BarsSay, type JarLearnt, jarsIn, learnt, nameOfLot } from './what-bars-say.ts';

/** More lessons came between than one member can have under way at once: something else is wrong. */
const MOST_ROUNDS = 50;
/**
 * Learns the jars of a cured batch together with everything else that bars say of them and of the jars they were mixed
 * with, and keeps lesson and jars in one commit. What the same batch said before of the same portions no longer counts.
 * Nothing is kept where `isOdd` says so of one of the bars and what it would teach.
 */
export async function learn(
  { batch, bars }: { readonly batch: string; readonly bars: readonly LessonBar[] },
  asking: Asking,
  isOdd: (bar: LessonBar, fit: LearntBar) => boolean = () => false,
): Promise<Pick<MixedLearnt, 'jars' | 'kept'>> {
  const next = (standing: readonly Lesson[]) => {
    if (standing.some(({ cause }) => cause === asking.change.cause)) return undefined;
    const before = standing.find(one => one.batch === batch);
    const kept = before?.bars.filter(old => !bars.some(({ portion }) => portion === old.portion)) ?? [];
    return { batch, bars: [...kept, ...bars], ...(before && { undoes: before.cause }) };
  };
  const isKept = ({ fits }: BarsSay) => !bars.some(bar => fits.has(bar) && isOdd(bar, fits.get(bar)!));
  return (await written(asking, next, isKept)) ?? { jars: [], kept: true };
}

/** Lines of test bars that several jars share, kept as if they were portions of one batch. */
const TEST_BARS = 'test-bars';
/** As many of them as one member has at most; the newest count. */
const MOST_MIXED = 40;

/** What test bars of several jars say; nothing was kept where some are not explained by any such jars. */
export type MixedLearnt = BarsSay & { readonly kept: boolean };

/**
 * Learns the jars of mixed test bars with all else that bars say of them. A bar of the same portion number is the same mix made
 * again. `forget`: earlier mixed bars with a jar in them that no longer count. Nothing is kept of bars of which `isPoor` says so.
 */
export async function learnMixed(
  bars: readonly LessonBar[],
  {
    forget = () => false,
    isPoor,
  }: { forget?: (bar: LessonBar) => boolean; isPoor: (fit: LearntBar) => boolean },
  asking: Asking,
): Promise<MixedLearnt> {
  const next = (standing: readonly Lesson[]) => {
    const before = standing.find(one => one.batch === TEST_BARS);
    const stays =
      before?.bars.filter(old => !forget(old) && !bars.some(({ portion }) => portion === old.portion)) ?? [];
    if (before?.cause === asking.change.cause) return undefined;
    if (bars.length === 0 && stays.length === (before?.bars.length ?? 0)) return undefined;
    const all = [...stays, ...bars].slice(-MOST_MIXED);
    return { batch: TEST_BARS, bars: all, ...(before && { undoes: before.cause }) };
  };
  const isKept = ({ fits }: BarsSay) => !bars.some(bar => fits.has(bar) && isPoor(fits.get(bar)!));
  const found = await written(asking, next, isKept);
  return found ?? { jars: [], fits: new Map(), kept: true };
}

/** Takes back what a cured batch said; nothing where it said nothing that still counts. */
export const unlearn = (batch: string, asking: Asking): Promise<readonly JarLearnt[]> =>
  jarsOf(asking, standing => {
    const before = standing.find(one => one.batch === batch);
    return before && { batch, bars: [], undoes: before.cause };
  });

/** Learns anew what a batch said that stands in the book again; nothing where it never said anything. */
export async function relearn(batch: string, asking: Asking): Promise<void> {
  const said = await lastLessonOf(asking.book, batch);
  if (said) await learn({ batch, bars: said.bars }, asking);
}

/** The line to write after those that stand; undefined where there is none. */
type Next = (standing: readonly Lesson[]) => Omit<Lesson, 'at' | 'cause'> | undefined;

const jarsOf = async (asking: Asking, next: Next): Promise<readonly JarLearnt[]> =>
  (await written(asking, next))?.jars ?? [];

/** Writes the line that `next` makes of what stands, with all that follows from it for the jars, until nothing comes between. */
async function written(
  asking: Asking,
  next: Next,
  isKept: (found: BarsSay) => boolean = () => true,
): Promise<MixedLearnt | undefined> {
  const { book } = asking;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const { standing, lines } = await lessonsOf(book);
    const made = next(standing);
    if (!made) return undefined;
    const lesson: Lesson = { ...made, at: asking.change.at, cause: asking.change.cause };
    const gone = standing.filter(({ cause }) => cause === lesson.undoes);
    const touched = jarsIn([...lesson.bars, ...gone.flatMap(({ bars }) => bars)]);
    const all = [...standing.filter(one => !gone.includes(one)), lesson];
    const found = await learnt(all, touched, asking);
    const jars = found.jars.filter(({ item }) => touched.has(nameOfLot(item.id, item.lot.number)));
    if (!isKept(found)) return { ...found, jars, kept: false };
    if (!(await keepLesson(book, { lines, lesson, lots: found.jars.map(lotOf) }))) continue;
    await pool(found.jars, asking);
    return { ...found, jars, kept: true };
  }
  throw new StoreFailure('busy', 'write', 'other lessons kept coming between');
}

/** Learns a jar anew with those it was mixed with, as when test bars were added or forgotten. */
export async function learnAgain(
  item: Pick<ShelfItem, 'id' | 'lot'>,
  asking: Asking,
): Promise<JarLearnt | undefined> {
  const { standing } = await lessonsOf(asking.book);
  const { jars } = await learnt(standing, new Set([nameOfLot(item.id, item.lot.number)]), asking);
  await keepLearnt(asking.book, jars.map(lotOf), asking.change.at);
  return jars.find(one => one.item.id === item.id);
}

const beliefOf = ({ parameters, covariance, unexplained }: JarBelief): JarBelief => ({
  parameters,
  covariance,
  ...(unexplained !== undefined && { unexplained }),
});

const lotOf = ({ item, after, bars }: JarLearnt): LotLearnt => ({
  item: item.id,
  lot: item.lot.number,
  learnt:
    after && item.colourant !== undefined
      ? { ...beliefOf(after), colourant: item.colourant, bars }
      : undefined,
});
