import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { isPlain } from '../../amounts/chat-words.ts';
import type { Item, Name } from '../items/item.ts';
import { type WeighedOil, weighedOils } from '../items/weighed-oils.ts';
import { isHarmlessBesideOil } from './beside-oils.ts';
import { SLIPPED } from './taken-back.ts';

/** What strikes out what stands before it, as a clause by itself: "300 g castor, delete that, 300 g coconut". */
const STRIKES_OUT = new RegExp(
  unbroken`
    ^(?:(?:oh|ah|ay|no|nah|ugh|argh|hmm+|er|um|uy|wait|espera),? )*(?:${SLIPPED}|not (?:that|this)(?: one)?|
    eso no|es[ae] no|wrong (?:one|line|oil|row|list)|my mistake|ugh|argh|me equivoque|equivocad[oa]|never ?mind|nvm|
    (?:delete|del|strike|scrap|scratch|cancel|ignore|forget|erase|remove|undo|disregard|drop|lose|skip)(?: (?:that|
    this|it|the|last|previous|one|oil|line|bit|amount))*|(?:borr|tach|quit|olvid|elimin|suprim|anul|cancel|ignor|descart|retir)\p{L}*(?: (?:
    eso|esto|es[ae]|el|la|lo|ultim[oa]|anterior|aceite|linea))*)$
  `,
  'u',
);
const MOST_WORDS = 5;

/** What is said by itself between two weighed oils, and the oil before it. */
export type SaidBetween = {
  readonly text: string;
  readonly before: Name;
  /** Whether it strikes out what stands before it. */
  readonly strikesOut: boolean;
};

/**
 * A short clause between two weighed oils that names neither oil nor weight and is not known as idle talk: "300 g castor, bórralo,
 * 300 g coconut". Undefined where there is none. Takes the items of a line. Pure.
 */
export function saidBetween(items: readonly Item[]): SaidBetween | undefined {
  const oils = weighedOils(items);
  const all = clausesOf(items).flatMap(clause => betweenIn(clause, oils) ?? []);
  return all.find(({ strikesOut }) => strikesOut) ?? all[0];
}

function betweenIn(clause: readonly Item[], oils: readonly WeighedOil[]): SaidBetween | undefined {
  const [first] = clause;
  if (first === undefined || clause.length > MOST_WORDS || !clause.every(isSpoken)) return undefined;
  const before = oils.findLast(({ name }) => name.to <= first.from);
  const isBetween = before !== undefined && oils.some(({ from }) => from > first.from);
  if (!isBetween) return undefined;
  const text = clause.map(item => item.text).join(' ');
  const strikesOut = STRIKES_OUT.test(text);
  const isKnown = clause.every(
    item => item.is !== 'word' || isPlain(item.text) || isHarmlessBesideOil(item.text),
  );
  return strikesOut || !isKnown ? { text, before: before.name, strikesOut } : undefined;
}

/** Says once more, in other words, what stands before it. */
const RESTATES = new RegExp(
  unbroken`
    (?<before>\p{L}+),? ?(?:[;(-] ?)?(?<text>(?:o sea|osea|es decir|esto es|eso es|that is|that['’]?s|i ?\.? ?e ?\.?|aka|meaning|
    or rather)(?: to say)?,? \d[\d.,]* ?(?:kg|kilos?|gr?|grams?|gramos?|oz|ounces?|onzas?|lbs?|pounds?|libras?|%)?(?: (?:of|de))? (?<oil>\p{L}+))
  `,
  'gu',
);

/**
 * A weighed oil that stands there as another name for the one before it: "300 g ricino, o sea 300 g coco". Undefined where there is
 * none. Takes what `plainWords` gives with its clauses. Pure.
 */
export function restatedAsOther(said: string): string | undefined {
  for (const { groups } of said.matchAll(RESTATES)) {
    const { before = '', oil = '', text } = groups!;
    const [one, other] = [knownOil(before), knownOil(oil)];
    if (one !== undefined && other !== undefined && one.id !== other.id) return text;
  }
  return undefined;
}

const isSpoken = ({ is }: Item): boolean =>
  is === 'word' || is === 'link' || is === 'corrects' || is === 'without';

function clausesOf(items: readonly Item[]): readonly (readonly Item[])[] {
  const ends = items.flatMap(({ is, text }, at) => (is === 'mark' || text === ':' ? [at] : []));
  return [-1, ...ends].map((from, at) => items.slice(from + 1, ends[at] ?? items.length));
}
