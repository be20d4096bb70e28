import { rememberedWord } from '../../remembered.ts';
import { byNearness } from './closest-name.ts';
import { distance, slipsIn } from './edit-distance.ts';
import { wordsAround } from './symmetric-delete.ts';

/** Finds the word of a fixed list that a misspelling was meant for; the list is indexed once. */
export type Speller = (word: string) => string | undefined;

/** A letter more where the first one is another: hardly anybody gets it wrong. */
const OTHER_START = 0.5;

/**
 * A speller over `known` words that leaves `untouched` words alone, and of two as near takes the first by the alphabet: for the
 * lexicons of findings, where one word is weak evidence. What is measured out by a name is read by `wordSpeller`, which would
 * rather ask.
 */
export function speller(known: Iterable<string>, untouched: ReadonlySet<string>): Speller {
  const around = wordsAround(() => new Set(known), slipsIn);
  const nearest = rememberedWord(word => {
    const near = byNearness(
      [...around(word)].sort().map(candidate => ({
        thing: candidate,
        far: distance(word, candidate) + (candidate[0] === word[0] ? 0 : OTHER_START),
      })),
    )[0];
    return near && near.far < slipsIn(word.length) + 1 ? near.thing : undefined;
  });
  return word =>
    slipsIn(word.length) === 0 || word.length > 20 || untouched.has(word) ? undefined : nearest(word);
}
