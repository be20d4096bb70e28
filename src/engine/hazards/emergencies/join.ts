import { type Emergency, isEyeBeforeJug } from './emergency.ts';
import type { LearnedReading } from './learned/read.ts';

/**
 * Chosen by leaving out one writer at a time (`learned.test.ts`): log odds that words tell of an emergency from which
 * first aid is shown, and what patterns, or the sum of the lexicon's evidence, add to them.
 */
const SHOWN = -1.25;
const TOLD = 1.5;
const WEIGHED = 0.5;
/** So much likelier, in log odds, one comes before what the lexicon read; half of it where that too was in doubt. */
const BEFORE = 0.5;
/** Before another that patterns told beside it, which stand by urgency. */
const BEFORE_URGENT = 2.5;
/** Two that lie nearer, in log odds, are both shown. */
const UNCLEAR = 2.5;
/** Fewer words are too few to be told from other texts. */
const LEAST_WORDS = 4;

/** What the lexicon read and what was learned from other texts, as one answer; none where both together say too little. */
export function joined(
  read: readonly Emergency[],
  { odds, likeliest }: LearnedReading,
  text: {
    readonly words: number;
    readonly from: string;
    /** It tells of a finished bar. */
    readonly isOver: boolean;
  },
): readonly Emergency[] {
  const [first] = read;
  if (!first && text.words < LEAST_WORDS) return [];
  if (odds + (first ? (first.inDoubt ? WEIGHED : TOLD) : 0) <= SHOWN) return [];
  const [best, next] = likeliest;
  if (!best || !next) return read;
  const inDoubt = (id: Emergency['id']): Emergency => ({ id, from: text.from, inDoubt: true });
  // Metal that has left its marks on a finished bar is no danger any more.
  if (!first && text.isOver && best.id === 'hydrogen-from-metal') return [];
  if (!first)
    return best.score - next.score < UNCLEAR ? [inDoubt(best.id), inDoubt(next.id)] : [inDoubt(best.id)];
  // An animal burns and coughs as people do; its own first aid says so.
  const isAnimals = first.id === 'animal-exposed' && !first.inDoubt;
  if (first.id === best.id || first.airway || isAnimals || isEyeBeforeJug(first, best)) return read;
  const known = read.find(({ id }) => id === best.id);
  const others = read.filter(({ id }) => id !== best.id);
  const lead = best.score - likeliest.find(({ id }) => id === first.id)!.score;
  const needed = first.inDoubt ? BEFORE / 2 : known ? BEFORE_URGENT : BEFORE;
  if (lead > needed) return [known ?? inDoubt(best.id), ...others];
  return known ? read : [first, inDoubt(best.id), ...others.slice(1)];
}
