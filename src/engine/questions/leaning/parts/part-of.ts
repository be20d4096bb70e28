import { unbroken } from '../../../over-lines.ts';
import { wordCount } from '../../../text/word-count.ts';
import type { Aspect } from '../aspects/aspect.ts';

/** What is told to a matter, a sentence an item: first what to do, which is said at once, then why and what comes next. */
export type MatterTold = { readonly answer: readonly string[]; readonly why: readonly string[] };

/** What is said first, and all of the matter behind it. */
export type PartTold = { readonly first: readonly string[]; readonly whole: readonly string[] };

const FIGURE = String.raw`(?:\d|\b(?:an?|one|two|few|una?|dos|unos|unas)\b)`;
/** A sentence of a matter that tells what is asked of it, in both languages. */
const TELLS: { readonly [One in Aspect]?: RegExp } = {
  'how-long': new RegExp(
    String.raw`${FIGURE}[^.]*\b(?:seconds?|minutes?|hours?|days?|weeks?|months?|years?|segundos?|minutos?|horas?|d[ií]as?|semanas?|mes(?:es)?|años?)\b`,
    'iu',
  ),
  'how-hot': /\d ?°C/u,
  water: /\b(?:water|agua)\b/iu,
  'how-much':
    /\d[^.]*(?:%|\b(?:g|kg|ml|tsp|Tbsp|teaspoons?|tablespoons?|parts?|cda|cdta|cucharad\p{L}*|partes?)\b)/u,
  safe: /\b(?:safe|good soap|harmless|do not use|not for use|use it|segur\p{L}*|inofensiv\p{L}*|no lo uses|[úu]salo|buen jab[óo]n|el jab[óo]n es bueno)\b/iu,
  why: new RegExp(
    unbroken`
      \b(?:because|since|otherwise|boils?|spits?|or (?:it|they)|makes?|drinks?|heats?|burns?|dulls?|sets?|
      brings?|comes? (?:of|from)|porque|ya que|si no|hierve\p{L}*|salpica\p{L}*|hace\p{L}*|calienta\p{L}*|
      quema\p{L}*|viene\p{L}* de|trae\p{L}*|apaga\p{L}*)(?!\p{L})
    `,
    'iu',
  ),
  'next-time': /\b(?:next time|la pr[óo]xima)\b/iu,
};
/** These ask for what stands behind the answer. */
const BEHIND: ReadonlySet<Aspect> = new Set(['why', 'done', 'still', 'more', 'comes-back', 'next-time']);

const MOST_SENTENCES = 2;
/** Words that two sentences have at most where both are said first. */
const MOST_FIRST = 45;

/**
 * What of an answer is said to somebody who asks on: the sentences that tell what is asked, else for “why” and “what now” what stood behind it;
 * undefined where it tells nothing of that. Nothing is said that the answer does not say. Pure.
 * @example partOf({ answer: ['Wait: 5 to 20 minutes.'], why: ['Pour low.'] }, 'how-long')?.first // ['Wait: 5 to 20 minutes.']
 */
export function partOf({ answer, why }: MatterTold, aspect: Aspect): PartTold | undefined {
  const whole = [...answer, ...why];
  const telling = tellingOf(whole, aspect);
  if (telling.length > 0) return { first: telling.slice(0, MOST_SENTENCES), whole };
  if (aspect === 'same') return { first: answer, whole: why };
  if (!BEHIND.has(aspect)) return undefined;
  const [first, second] = why;
  if (first === undefined) return { first: answer, whole };
  const isShort = second !== undefined && wordCount(first) + wordCount(second) <= MOST_FIRST;
  const said = isShort ? MOST_SENTENCES : 1;
  return { first: why.slice(0, said), whole: [...answer, ...why.slice(said)] };
}

/** Of several instructions those that tell what is asked; none where none does. Pure. */
export const tellingOf = (texts: readonly string[], aspect: Aspect): readonly string[] => {
  const pattern = TELLS[aspect];
  return pattern === undefined ? [] : texts.filter(text => pattern.test(text));
};
