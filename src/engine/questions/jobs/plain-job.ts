import { unbroken } from '../../over-lines.ts';
import { plantNamed } from '../../stability/plant-classes.ts';
import { colourNamed } from '../../text/colours/colour-name.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import { plantAsked } from '../found/asked/plant-asked.ts';
import { kindAlone } from '../found/names/kind-alone.ts';
import type { NamedThing } from '../found/names/named-thing.ts';
import type { Words } from '../found/words-of.ts';
import type { Job } from './jobs.ts';

/** Longer questions tell more than a name and what is asked of it. */
const MOST_WORDS = 9;
/** What may stand beside a name and "how much": anything else may be another craft, a knee or a cake. */
const BESIDE = new RegExp(
  unbroken`
    ^(?:\d.*|[?!.,;:]+|how|much|many|dose|dosis|cantidad|cuant[oa]s?|que|is|was|it|are|do|does|should|can|i|
    we|you|u|one|put|use|add|need|want|of|for|in|to|into|the|a|an|my|per|each|again|hey|hi|hello|so|ok|and|
    then|please|pls|proper|good|nice|full|strong|black|white|colou?r|soap|soaps|batter|oils?|lb|lbs|pound|
    kg|kilos?|g|grams?|cup|cups|batch|le|lo|se|me|pongo|echo|pone|echa|poner|echar|uso|usar|lleva|va|
    necesito|de|del|para|pa|por|en|el|la|los|un|una|mi|y|hola|buenas|oye|jabon|masa|aceites?|gramos?|taza|
    tazas|libra|lote|negro|blanco)$
  `,
  'u',
);
const HOW_MUCH = /(?<!\p{L})(?:how much|how many|cuant[oa]s?|que cantidad|dose|dosis)(?!\p{L})/u;
/** Then it is asked how much is left, what something costs, or how much lye it takes. */
const OF_SOMETHING_ELSE = new RegExp(
  unbroken`
    (?<!\p{L})(?:left|have|has|got|stock|queda\p{L}*|tengo|hay|sobra\p{L}*|cost\p{L}*|price|cuesta|vale|lye|
    naoh|koh|sosa|lejia|superfat|water|agua|long|tiempo|time|weigh\p{L}*|pesa\p{L}*|gave|used|use[ds]|took|
    bought|grams? is|gramos son)(?!\p{L})
  `,
  'u',
);
const BEST = new RegExp(
  unbroken`
    ^(?:(?:what(?:s| is)?|which(?: is)?|cual es|que es) )?(?:the |a |el |la |un |una )?(?:best|good|nicest|
    mejor|buen|buena) (\p{L}+(?: \p{L}+)?)(?: (?:please|pls|in soap|for soap|en jabon|para jabon|
    porfa))? ?\??$
  `,
  'u',
);
/** "Is oxide green toxic": whether it may be used, and nothing is compared. */
const SAFE =
  /^(?:is|are|es|son) (?:the |el |la )?[\p{L} ]{3,40} (?:toxic|poisonous|dangerous|harmful|toxic[oa]s?|peligros[oa]s?|venenos[oa]s?) ?\??$/u;
/** Of a kind that is named without which one, all are dosed alike. */
const DOSED_ALIKE: ReadonlySet<string | undefined> = new Set(['clay', 'arcilla']);

/** A job that a short question asks for in so many words, and of what; undefined where it has to be judged. */
export type PlainJob = { readonly job: Extract<Job, 'dose' | 'mix' | 'survives-lye'>; readonly of: string };

/**
 * "How much ultramarine", "achiote cuánto", "best green": a name and what is asked of it, which needs no judge. Pure.
 * @example plainJobOf(words, things) // { job: 'dose', of: 'ultramarine' }
 */
export function plainJobOf(read: Words, things: readonly NamedThing[]): PlainJob | undefined {
  const { words, text } = read;
  const plant = plantAsked(read, things);
  if (plant !== undefined) return { job: 'survives-lye', of: plant };
  if (words.length > MOST_WORDS) return undefined;
  const [thing] = things;
  if (HOW_MUCH.test(text) && !OF_SOMETHING_ELSE.test(text)) {
    const kind = thing ? undefined : kindAlone(read);
    const isOne = things.length === 1 && thing!.colourants.length > 0;
    const of = isOne ? thing!.text : DOSED_ALIKE.has(kind) ? kind : undefined;
    const named = of?.split(' ') ?? [];
    // "Clays" are named by their kind.
    const isNamed = (word: string) => named.includes(word) || named.includes(word.replace(/s$/u, ''));
    if (of !== undefined && words.every(word => BESIDE.test(word) || isNamed(word)))
      return { job: 'dose', of };
  }
  if (SAFE.test(text.trim()) && things.length === 1 && thing!.colourants.length > 0)
    return { job: 'survives-lye', of: thing!.text };
  const best = BEST.exec(text.trim())?.[1];
  if (best !== undefined && isColourWord(foldedColour(best))) return { job: 'mix', of: best };
  const hue = things.length === 0 ? hueAlone(words) : undefined;
  return hue === undefined ? undefined : { job: 'mix', of: hue };
}

const MOST_OF_A_HUE = 3;
/** The shade of a plant that is all a question says: "avocado green", "verde aguacate?". */
function hueAlone(words: readonly string[]): string | undefined {
  const said = words.filter(word => word !== '?');
  if (said.length < 2 || said.length > MOST_OF_A_HUE || !said.every(word => /^\p{L}+$/u.test(word)))
    return undefined;
  const name = said.join(' ');
  // "Orange spots" are no shade of anything.
  const isOfHue = (word: string) => isColourWord(foldedColour(word)) || plantNamed(word) !== undefined;
  return said.every(isOfHue) && colourNamed(name) ? name : undefined;
}
