import { spaced, unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { thingsIn } from '../../found/names/entities.ts';
import { wordsOf } from '../../found/words-of.ts';
import type { Aspect } from '../aspects/aspect.ts';
import { pointsBack } from '../subject/points-back.ts';
import { type MatterTold, type PartTold, partOf } from './part-of.ts';

/** Shorter words are mostly none that tell what is spoken of. */
const SHORTEST_WORD = 4;
/** Of longer words so much is looked at: "passes", "frother" and "froth". */
const STEM = 5;
/** Longer words that tell nothing either. */
const TELLS_NOTHING: ReadonlySet<string> = new Set(
  spaced`
    with that this then what when which will would does have just only really some them they from into
    about like want need much many more less still como para pero esta este esto esos cuanto cuanta mucho
    tengo hago pongo entonces porque solo
  `.split(' '),
);
const tellingWords = (texts: readonly string[]): ReadonlySet<string> =>
  new Set(
    (unaccented(texts.join(' ')).match(/\p{L}+|\d+/gu) ?? [])
      .filter(word => (word.length >= SHORTEST_WORD && !TELLS_NOTHING.has(word)) || /^\d/u.test(word))
      .map(word => word.slice(0, STEM)),
  );
/** What kind of figure is asked for. */
const ASKS_FIGURE: readonly (readonly [Aspect, RegExp])[] = [
  [
    'how-hot',
    /(?<!\p{L})(?:how (?:hot|warm|cold|cool)|temp\p{L}*|degrees?|grados|fah?r[ae]?n?h?eit|celsius|centigrad\p{L}*)(?!\p{L})/u,
  ],
  [
    'how-long',
    new RegExp(
      unbroken`
        (?<!\p{L})(?:how long|how many (?:min\p{L}*|hours|days|weeks|months)|cuanto (?:tiempo|rato|dura|
        tarda)|cuant[oa]s (?:minutos|horas|dias|semanas))(?!\p{L})
      `,
      'u',
    ),
  ],
  ['how-much', /(?<!\p{L})(?:how (?:much|many|thick|big|often|deep)|cuant[oa]s?)(?!\p{L})/u],
];
const figureAsked = (asked: string): Aspect | undefined => {
  const plain = unaccented(asked);
  return ASKS_FIGURE.find(([, words]) => words.test(plain))?.[0];
};
/** A figure where one is asked for decides between sentences that share as many words. */
const OF_A_FIGURE = 0.5;

/** The words of a turn, with both languages' names of the colourants in it. */
function wordsAsked(asked: string): ReadonlySet<string> {
  const names = thingsIn(wordsOf(asked)).flatMap(({ colourants }) =>
    colourants.length === 1 ? Object.values(colourants[0]!.names) : [],
  );
  return tellingWords([asked, ...names]);
}

/** The sentence of an answer that shares most words with what is asked on; the answer itself, with none, where no sentence does. */
function nearestSentence(
  { answer, why }: MatterTold,
  asked: string,
): { readonly said: readonly string[]; readonly most: number } {
  const words = wordsAsked(asked);
  const isOfFigure = figureAsked(asked) !== undefined;
  const shared = (said: readonly string[]) => {
    const most = [...tellingWords(said)].filter(word => words.has(word)).length;
    return most > 0 && isOfFigure && said.some(one => /\d/u.test(one)) ? most + OF_A_FIGURE : most;
  };
  return why.reduce(
    (found, one) => (shared([one]) > found.most ? { said: [one], most: shared([one]) } : found),
    { said: answer, most: shared(answer) },
  );
}

const startingWith = ({ answer, why }: MatterTold, first: readonly string[]): PartTold => ({
  first,
  whole: first === answer ? why : [...answer, ...why],
});

/**
 * Of an answer first the sentence that shares most words with what is asked on, the answer itself where none does; then all of it. Undefined
 * where no word is shared and nothing points back. Pure.
 */
export function nearestPart(told: MatterTold, asked: string): PartTold | undefined {
  const { said, most } = nearestSentence(told, asked);
  return most === 0 && !pointsBack(asked) ? undefined : startingWith(told, said);
}

/**
 * What is said to a turn that goes on with a matter whose answer was told: the sentence that shares its words, the figure that it asks for, else
 * what stood behind the answer. The answer itself once more only where it holds the figure or the name that is asked for. Pure.
 * @example goOnPart({ answer: ['One to three passes.'], why: ['Light trace.'] }, 'how many passes').first // ['One to three passes.']
 */
export function goOnPart(told: MatterTold, asked: string): PartTold | undefined {
  const { said, most } = nearestSentence(told, asked);
  const figure = figureAsked(asked);
  const isNamed = thingsIn(wordsOf(asked)).length > 0;
  if (most > 0 && (said !== told.answer || figure !== undefined || isNamed)) return startingWith(told, said);
  return (figure && partOf(told, figure)) ?? partOf(told, 'more');
}
