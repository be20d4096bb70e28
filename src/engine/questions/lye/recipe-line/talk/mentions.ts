import { unbroken } from '../../../../over-lines.ts';
import { PERSON } from '../doubts/harmless-phrases.ts';
import type { Item, Name } from '../items/item.ts';
import { isMeasure, isName, isOil, type Pair, type Part } from '../settling/parts.ts';
import { isPaired, type State, same } from '../state.ts';

/** "The rest was 18 olive, 4 castor", "lo demás igual": the others, and no share of the whole. */
export function withoutOthers(items: readonly Item[]): readonly Item[] {
  return items.filter((item, at) => {
    const next = items.slice(at + 1).find(({ is }) => is !== 'link');
    return (
      item.is !== 'rest' ||
      !(next?.is === 'amount' || /^(?:igual|same|sigue|stays?)$/u.test(next?.text ?? ''))
    );
  });
}

/** What is said of an oil without touching how much of it there is. */
const OPINION = new RegExp(
  unbroken`
    (?<!\p{L})(?:too much|a lot|mucho|demasiad[oa]|all|only|just|plain|puro|todo|nothing else|stays|
    por vencer\p{L}*|about to (?:turn|go off|expire)|needs? using(?: up)?|rancid|enranci\p{L}+|
    go(?:es)? off|smells?|huele|hard|soft|chang(?:e|es) the lye|cambia la sosa|lo sac\p{L}+|lye (?:for|of|
    with)|sosa (?:con|de|del|para)|whats?|que (?:es|tal))(?!\p{L})
  `,
  'u',
);
/** Whence an oil came, how it looks, and how its weighing went: of whatever is weighed there. */
const TOLD_OF_IT = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:was|is) an? (?:\p{L}+ )?(?:present|gift|bargain)|(?:came|comes?|is|are) (?:from|out of)|
    (?:es|son|viene|vienen) de (?:mis?|l[ao]s?|nuestr[oa]s?)(?! ${PERSON}(?!\p{L}))|estaba en oferta|(?:es|
    son) (?:bien |muy )?(?:espes[oa]|oloros[oa]|pur[oa]|car[oa])s?|se derritio|estaban? (?:fundid|
    derretid)[oa]s?|(?:weighed|pes[eao]\p{L}*) (?:again|otra vez|de nuevo))(?!\p{L})
  `,
  'u',
);
/** "Ignore the castor", "I'm keeping the lard for pastry": an oil whose amount was told is spoken of once more. */
export function isToldAgain({ pairs, swaps }: State, name: Name, line: string): boolean {
  if (swaps.some(({ by }) => same(by, name))) return false;
  // "Unto de puerco" is one name.
  const isOneName = (of: Name) => /^ ?(?:de|del|of)? ?$/u.test(line.slice(of.to, name.from));
  const isAgain = pairs.some(
    pair =>
      !isOneName(pair.name) &&
      same(pair.name, name) &&
      pair.name.to <= name.from &&
      pair.measure.to <= name.from,
  );
  const from = Math.max(line.lastIndexOf(';', name.from), line.lastIndexOf(',', name.from)) + 1;
  const [clause = ''] = line.slice(from).split(/[;,]/u);
  return isAgain && !OPINION.test(clause) && !isOnlyToldOf(clause, sentenceAt(line, name.from));
}

/** "It", "lo": of the oil that was just named. */
const IT =
  /(?<!\p{L})(?:it|it['’]s|its|them|they|that|this|ell[oa]s?|l[oa]s?(?= (?!\p{L}+[oa]s? ?(?:$|,))\p{L}+(?:e|o|i|amos|aron|ado|ido)(?!\p{L})))(?!\p{L})/u;
/** A sentence and the next: "its jar is 2 years old, and it's in the bin" is parted at its figure. */
const sentenceAt = (line: string, at: number): string =>
  line
    .slice(line.lastIndexOf(';', at) + 1)
    .split(';')
    .slice(0, 2)
    .join(';');
/** Whether whence it came, or how it was, is all that a sentence says of an oil: "the goose is from auntie, and it's in the bin" says more. */
function isOnlyToldOf(clause: string, sentence: string): boolean {
  const [told] = TOLD_OF_IT.exec(clause) ?? [];
  return told !== undefined && !IT.test(sentence.replace(told, ' '));
}

/** A bare figure from which it is a weight in grams and neither a superfat nor a count (common practice, no source). */
const LEAST_BARE = 20;
/** "Lard, 700 g": a weight by itself is of the oil that was named directly before. */
export function apposed({ items, sentence }: Part, before: Part | undefined, state: State): Pair | undefined {
  const [measure, ...more] = items.filter(({ is }) => is !== 'link' && is !== 'mark');
  const name = before?.items.findLast(isName);
  if (measure?.is !== 'amount' || more.length > 0 || before?.sentence !== sentence) return undefined;
  // "Coconut, 220": a bare figure of so much is a weight.
  const isBare = measure.unit === undefined && measure.figure >= LEAST_BARE;
  if ((measure.unit === undefined && !isBare) || measure.unit === 'other' || measure.unit === '%')
    return undefined;
  const isWaiting = isOil(name) && state.unpaired.at(-1) === name && !isPaired(state, name);
  // Taken in place of another: the swap settles its amount.
  const isSwapped = state.swaps.some(({ by }) => by === name);
  if (!isWaiting || isSwapped || state.masses.length > 0) return undefined;
  state.unpaired.pop();
  return { measure, name };
}

export const isCorrection = ({ is, text }: Item): boolean =>
  is === 'corrects' || (is === 'word' && /^(?:nope|typo|errata|error|wrong|mal)$/u.test(text));
/** A sentence that speaks of the pot: "here we are, with the coffee" does not. */
export const isOfPot = (item: Item): boolean =>
  isMeasure(item) ||
  item.is === 'instead' ||
  (item.is === 'word' && item.text === 'liquid') ||
  (item.is === 'name' && (item.known === 'oil' || item.known === 'water' || item.known === 'lye'));
