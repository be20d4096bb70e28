import { OUR_WORDS } from '../../engine/questions/fields/soap-words.ts';
import { asOneText, type Before, isOfLye, type Talk } from '../../engine/questions/leaning/before.ts';
import { dangerAfter } from '../../engine/questions/leaning/danger/danger.ts';
import { mayChangeRecipe } from '../../engine/questions/leaning/recipes/recipe.ts';
import { subjectAfter } from '../../engine/questions/leaning/subject/subject.ts';
import { unaccented } from '../../engine/text/unaccented.ts';
import { wordCount } from '../../engine/text/word-count.ts';
import type { Origin } from '../question.ts';

/** Where somebody asks: what another member asks there, or the same one elsewhere, is another talk. */
type Place = Pick<Origin, 'id' | 'at' | 'group' | 'channel' | 'asker'>;

type Kept = {
  readonly member: string;
  readonly group: string;
  readonly channel: string | undefined;
  /** Id of the question. */
  readonly id: string;
  /** When it was asked, ms since 1970 UTC. */
  readonly at: number;
  readonly talk: Talk;
  /** What that question itself leant on: delivered once more, it is read alike. */
  readonly earlier: Talk | undefined;
};

/**
 * What each member asked last in each place, as it was understood, so that “and for 800 g?” can be read. It lives in this process alone: nothing
 * of it is written down or logged, and a restart forgets it.
 */
export type Lately = {
  /** What the question before this one was understood as; undefined where none was asked here in the last half hour. */
  readonly before: (place: Place) => Talk | undefined;
  /** `words`: what was asked; of it only what it names is kept. `before`: undefined where it was not understood. */
  readonly keep: (place: Place, before: Before | undefined, words?: string) => void;
  /** Forgets all that a member asked, anywhere; tells how much that was. */
  readonly forget: (member: string) => number;
  /** All that is remembered of a member at a time, ms since 1970 UTC. */
  readonly of: (member: string, at: number) => readonly Kept[];
};

/** How long a turn may lean on the one before, ms; common practice of chat (no source). */
const LIFETIME = 30 * 60_000;
/** More talks than this at once are forgotten, the oldest first. */
const MOST_TALKS = 5_000;

const placeOf = ({ group, channel, asker }: Place): string => `${group}\0${channel ?? ''}\0${asker.id}`;

/** A recipe that is asked for after another one was told may be a part of it. */
const recipeAfter = (before: Before | undefined, earlier: Talk | undefined): Before | undefined =>
  before?.kind === 'recipe' && earlier && hadRecipe(earlier) ? { kind: 'recipe', hadOne: true } : before;
const hadRecipe = ({ last, ran }: Talk): boolean =>
  (last.kind === 'recipe' && last.hadOne === true) || (ran !== undefined && isOfLye(ran));

/** The last command of a talk; none where the recipe that it was of is asked for anew. */
function ranAfter(last: Before, earlier: Talk | undefined): Talk['ran'] {
  if (last.kind === 'command') return last;
  return last.kind === 'recipe' ? undefined : earlier?.ran;
}

/** So few words tell nothing without the question before, words. */
const FEW_WORDS = 4;
/** More of a talk is not kept, characters. */
const LONGEST_CHAIN = 200;
/** What was asked: a turn of few words behind the question that it went on from. */
const chained = (earlier: string | undefined, words: string): string =>
  earlier !== undefined && wordCount(words) <= FEW_WORDS && earlier.length + words.length <= LONGEST_CHAIN
    ? asOneText(earlier, words)
    : words.slice(0, LONGEST_CHAIN);

/** A memory of talks that holds nothing yet. */
export function openLately(): Lately {
  const talks = new Map<string, Kept>();
  const isFresh = (kept: Kept, at: number) => at >= kept.at && at - kept.at <= LIFETIME;
  const freshIn = (place: Place): Kept | undefined => {
    const kept = talks.get(placeOf(place));
    return kept && isFresh(kept, place.at) ? kept : undefined;
  };
  /** The oldest stand first. */
  const dropOld = (at: number) => {
    for (const [key, kept] of talks) {
      if (talks.size <= MOST_TALKS && isFresh(kept, at)) return;
      talks.delete(key);
    }
  };
  return {
    before(place) {
      const kept = freshIn(place);
      return kept?.id === place.id ? kept.earlier : kept?.talk;
    },
    keep(place, understood, words = '') {
      const { id, at, group, channel, asker } = place;
      const key = placeOf(place);
      const known = talks.get(key);
      // A slow answer does not take the place of a later question's.
      if (known && known.at > at) return;
      const fresh = freshIn(place);
      const earlier = fresh?.id === id ? fresh.earlier : fresh?.talk;
      // What was not understood of a recipe may have changed it.
      const isDoubtful =
        understood === undefined && earlier !== undefined && mayChangeRecipe(earlier.last, words);
      const before = recipeAfter(isDoubtful ? { kind: 'recipe' } : understood, earlier);
      const subject = subjectAfter(earlier?.subject, {
        text: words,
        ran: before?.kind === 'command' ? before : undefined,
      });
      // What names nothing and was not understood leaves the talk as it was; a first question may be told in two halves.
      const isFirst = earlier === undefined && OUR_WORDS.test(unaccented(words));
      if (before === undefined && !isFirst && (!subject?.isFresh || earlier?.last.kind === 'emergency'))
        return;
      talks.delete(key);
      const last = before ?? ({ kind: 'open' } as const);
      const talk: Talk = {
        last,
        ran: ranAfter(last, earlier),
        subject,
        danger: dangerAfter(earlier?.danger, last),
        words: chained(earlier?.words, words),
      };
      talks.set(key, { member: asker.id, group, channel, id, at, talk, earlier });
      dropOld(at);
    },
    forget(member) {
      const gone = [...talks].filter(([, kept]) => kept.member === member);
      for (const [key] of gone) talks.delete(key);
      return gone.length;
    },
    of: (member, at) => [...talks.values()].filter(kept => kept.member === member && isFresh(kept, at)),
  };
}
