import { knownOil } from '../../batch/oils/find-oil.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import { wordCount } from '../../text/word-count.ts';
import { amountsIn } from '../found/amounts.ts';
import { thingsIn } from '../found/names/entities.ts';
import { unlistedIn } from '../found/names/unlisted.ts';
import { wordsOf } from '../found/words-of.ts';
import type { LyeMatter } from '../lye/topics/lye-matter.ts';
import type { MatterChances } from '../technique/read.ts';
import { isTechnique, type Technique } from '../technique/topic.ts';
import type { Before } from './before.ts';

/*
 * What a short turn is about, read together with the question before: "how long between" behind "how do I do straight layers" is of the layers,
 * though by itself it is nearer to the cure. A common way to read a question in a conversation is to put the earlier questions before it.
 */

/** Longer turns tell what they are about, words. */
const MOST_WORDS = 9;
/** So many words hardly tell anything alone. */
const FEW_WORDS = 4;
/** A name and nothing to be asked of it: "TD?", "and charcoal". */
const NAME_ALONE = 2;

/** Whether a turn names a colour, a colourant, an oil or an amount: a subject of its own. Pure. */
export function namesItsOwn(turn: string): boolean {
  const words = wordsOf(turn);
  const things = thingsIn(words);
  return (
    things.length > 0 ||
    unlistedIn(words) !== undefined ||
    amountsIn(words, things).length > 0 ||
    words.words.some(word => isColourWord(foldedColour(word)) || knownOil(word) !== undefined)
  );
}

/** Whether what was asked before may tell what a turn is about. Pure. */
export const mayNeedContext = (turn: string): boolean =>
  wordCount(turn) <= MOST_WORDS && !turn.startsWith('/');

/*
 * From these chances on; chosen on the later turns of two hands' talks (`cello-teacher` and the first 45 of `railway-signaller`), the last 25
 * of the second one put aside.
 */
/** Together both questions are of one matter. */
const JOINTLY = 0.5;
/** And surely so: of a turn of few words. */
const SURELY = 0.9;
/** By itself the turn is plainly of something; of a few words only where it is surer still. */
const PLAINLY_ALONE = 0.75;
/** A matter that the turn is of tells itself a little in it alone, where it is not the one of before. */
const LEAST_ALONE = 0.05;
/** By itself the turn is of nothing in particular. */
const HARDLY_ALONE = 0.4;

/**
 * The way of working with batter that a turn is of, by what it says alone and behind the question before; undefined where the turn stands alone
 * or nothing is likely. Pure.
 */
export function techniqueInContext(
  turn: string,
  {
    alone,
    joint,
    last,
  }: { readonly alone: MatterChances; readonly joint: MatterChances; readonly last: Before },
): Technique | undefined {
  const [first] = joint.near;
  if (!first || !isTechnique(first.matter) || first.chance < JOINTLY) return undefined;
  const count = wordCount(turn);
  const isShort = count <= FEW_WORDS;
  const isSame = last.kind === 'technique' && last.id === first.matter;
  if (namesItsOwn(turn))
    return isSame && first.chance >= SURELY && count <= NAME_ALONE ? first.matter : undefined;
  const [byItself] = alone.near;
  const chanceAlone = byItself?.chance ?? 0;
  const isAlike = byItself?.matter === first.matter;
  if (!isAlike && chanceAlone >= plainFrom(turn, isShort)) return undefined;
  const inAlone = alone.near.find(({ matter }) => matter === first.matter)?.chance ?? 0;
  if (!isShort && inAlone < LEAST_ALONE) return undefined;
  return isSame || isAlike || chanceAlone < HARDLY_ALONE ? first.matter : undefined;
}

/** A figure tells something by itself: "5 colours". */
function plainFrom(turn: string, isShort: boolean): number {
  if (/\d/u.test(turn)) return JOINTLY;
  return isShort ? SURELY : PLAINLY_ALONE;
}

/** What the judge of lye's matters is sure of. */
type Sure = { readonly topic: LyeMatter; readonly chance: number } | undefined;
/** Who says that it was otherwise is not told more of the same. */
const PUTS_RIGHT =
  /(?<!\p{L})(?:no sorry|sorry|i meant?|not the|wrong word|perd[oó]n|quise decir|quer[ií]a decir|me equivoqu[eé])(?!\p{L})/iu;
/** Near lye more is asked of both together. */
const SURELY_NEAR_LYE = 0.85;

/** The matter of lye that was answered before and that a turn is still of; undefined where it is of another, or may be. Pure. */
export function sameLyeMatter(
  turn: string,
  { alone, joint, last }: { readonly alone: Sure; readonly joint: Sure; readonly last: Before },
): LyeMatter | undefined {
  if (last.kind !== 'matter' || joint === undefined || joint.topic !== last.id || PUTS_RIGHT.test(turn))
    return undefined;
  if (alone !== undefined || joint.chance < SURELY_NEAR_LYE || namesItsOwn(turn)) return undefined;
  return joint.topic;
}
