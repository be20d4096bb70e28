import { unbroken } from '../../../over-lines.ts';

/** Longer ones tell what somebody does. */
const LONGEST = 120;

/** Asked out of interest: what a word means, what once was, how long soap keeps, what people like. */
const OPENS = new RegExp(
  unbroken`
    ^\W*(?:what(?:'?s| is| are| does| did)|why (?:is|was) .* (?:called|named)|who |where does|did |
    how long does|how do i write|which .* (?:your opinion|best|creamiest)|melt and pour|qu[eé] (?:es|son|
    significa|era|pasa si dejo)|qui[eé]n |de d[oó]nde|ideas |es (?:caro|barato|dif[ií]cil)|
    cu[aá]nto (?:dura|tiempo)|la base de glicerina)(?!\p{L})
  `,
  'iu',
);
/** What is done with lye or raw soap, what goes wrong, and who is near: there what always holds is said. */
const AT_HAND = new RegExp(
  unbroken`
    \b(?:i (?:put|add|mix|pour|use|spill\w*|forgot|made)|happens?|happened|wrong|safe\w*|danger\w*|mix\w*|
    pour\w*|heat\w*|hot|boil\w*|microwave|oven|raw|uncured|zap\w*|burn\w*|hurt\w*|sting\w*|itch\w*|skin|
    eyes?|kids?|child\w*|bab(?:y|ies)|pets?|dogs?|cats?|eat\w*|drink\w*|taste\w*|swallow\w*|fumes?|smell\w*|
    spill\w*|store lye|aluminium|aluminum|bleach|vinegar|acid|grams?|ounces?|ech[oéa]\w*|mezcl\w*|puse|
    derram\w*|segur\w*|peligr\w*|calient\w*|hierv\w*|crud\w*|pica\w*|quem\w*|arde\w*|piel|ojos?|ni[nñ]\w*|
    beb[eé]\w*|perr\w*|gat\w*|comer|beber|prob\w*|tragar|humos?|huele|vinagre|cloro|gramos?|\d+ ?(?:g|oz|ml|
    %))\b
  `,
  'iu',
);

/**
 * Whether a question is one of interest, with no lye or raw soap at hand: it is told calmly that no answer is known. Pure.
 * @example isCurious('what does lye mean in the name of soap') // true
 */
export const isCurious = (question: string): boolean =>
  question.length <= LONGEST && OPENS.test(question) && !AT_HAND.test(question);
