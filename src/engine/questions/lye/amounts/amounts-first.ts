import { unbroken } from '../../../over-lines.ts';
import { Refusal, refuse } from '../../../refusal.ts';
import { readOnce } from '../../../remembered.ts';
import { type Token, tokensOf } from './recipe-tokens.ts';
import { plainWords } from './words.ts';

declare module '../../../refusal.ts' {
  interface Reasons {
    /** A weight between two names that may be of either. */
    'amounts-whose': { text: string };
  }
}

/** What follows these was not used, or stands for something else. */
const TURNED = new RegExp(
  unbroken`
    (?<!\p{L})(?:but|pero|except|excepto|salvo|instead|rather|switch\p{L}*|swap\p{L}*|mixed up|en vez|
    en lugar|cambi\p{L}*|confund\p{L}*|replac\p{L}*|reemplaz\p{L}*|sustitu\p{L}*)(?!\p{L})
  `,
  'u',
);
type Pair = { readonly name: Token; readonly amount: Token };

/** A run of names and amounts by turns as pairs; undefined where they do not take turns to the end. */
function byTurns(run: readonly Token[]): readonly Pair[] | undefined {
  if (run.length % 2 === 1) return undefined;
  const pairs: Pair[] = [];
  for (let at = 0; at < run.length; at += 2) {
    const [one, other] = [run[at]!, run[at + 1]!];
    if (one.is === other.is || one.is !== run[0]!.is) return undefined;
    const [name, amount] = one.is === 'name' ? [one, other] : [other, one];
    // A figure without a unit is of no word that nobody knows.
    if (name.is === 'name' && name.known === undefined && /^[\d.,/ ]+$/u.test(amount.text)) return undefined;
    pairs.push({ name, amount });
  }
  return pairs;
}

/** Pairs of all amounts: each clause by itself where that gives every amount its name, else the line as one. */
function pairsOf(tokens: readonly Token[]): readonly Pair[] | undefined {
  const clauses: Token[][] = [[]];
  for (const token of tokens)
    if (token.is === 'joint' || token.is === 'opaque') clauses.push([]);
    else clauses.at(-1)!.push(token);
  const counted = clauses.filter(clause => clause.some(({ is }) => is === 'amount'));
  const apart = counted.map(byTurns);
  if (apart.every(pairs => pairs !== undefined)) return apart.flat();
  return byTurns(tokens.filter(({ is }) => is === 'name' || is === 'amount'));
}

const same = (a: readonly Pair[], b: readonly Pair[]): boolean =>
  a.length === b.length &&
  a.every(({ name, amount }, at) => name === b[at]!.name && amount === b[at]!.amount);

const isPercent = ({ text }: Token): boolean => /%|percent|por ciento/u.test(text);
/** The weight of all oils, where each has a percentage. */
function massBesidePercents(tokens: readonly Token[]): Token | undefined {
  const amounts = tokens.filter(({ is }) => is === 'amount');
  const others = amounts.filter(amount => !isPercent(amount));
  return others.length === 1 && amounts.length > 2 ? others[0] : undefined;
}

/** Words at either end that may be asked for rather than weighed, and words nobody knows, with and without. */
function readings(tokens: readonly Token[]): readonly (readonly Pair[])[] {
  const isAsked = (token: Token | undefined) =>
    token?.is === 'name' && token.known !== 'oil' && token.known !== 'other';
  const names = tokens.filter(({ is }) => is === 'name');
  const end = tokens.findLast(({ is }) => is === 'amount')!.from;
  const [first, last] = [names[0], names.findLast(({ from }) => from > end)];
  const whole = massBesidePercents(tokens);
  const known = tokens.filter(token => token.is !== 'name' || token.known !== undefined);
  const variants = [
    tokens,
    ...(isAsked(first) ? [tokens.filter(token => token !== first)] : []),
    ...(isAsked(last) ? [tokens.filter(token => token !== last)] : []),
    ...(isAsked(first) && isAsked(last) ? [tokens.filter(token => token !== first && token !== last)] : []),
    known,
    ...(whole ? [tokens.filter(token => token !== whole)] : []),
  ];
  const found: (readonly Pair[])[] = [];
  for (const variant of variants) {
    const pairs = pairsOf(variant);
    if (pairs && !found.some(other => same(other, pairs))) found.push(pairs);
  }
  return found;
}

/** Whether a line that has no reading of its own looks like one in which names stand before their amounts. */
function isNameFirst(tokens: readonly Token[]): boolean {
  const told = tokens.filter(
    token => token.is === 'amount' || (token.is === 'name' && token.known !== undefined),
  );
  return told[0]?.is === 'name' && told.at(-1)?.is === 'amount';
}

const isOfSoap = ({ name }: Pair): boolean =>
  name.is === 'name' && name.known !== undefined && name.known !== 'other';
const knownNames = (pairs: readonly Pair[]): number =>
  pairs.filter(({ name }) => name.is === 'name' && name.known !== undefined).length;
/** An oil, or lye and its water. */
const isOfLye = (tokens: readonly Token[]): boolean => {
  const known = new Set(tokens.map(token => (token.is === 'name' ? token.known : undefined)));
  return known.has('oil') || (known.has('lye') && known.has('water'));
};
/** A scale of grams and kilograms: a bare figure beside them is in grams. */
const METRIC = /\d ?(?:kg|kilos?|kilograms?|kilogramos?|g|gr|grams?|gramos?)$/u;
const inGrams = (amount: string, isMetric: boolean): string =>
  isMetric && /^\d{2,}(?:[.,]\d+)?$/u.test(amount) ? `${amount} g` : amount;

/**
 * A recipe in which every amount stands before its name: "olive 400 g castor 50 g water 180 g" becomes "400 g olive, 50 g castor, 180 g
 * water". Any other text comes back as it was. Takes what `plainWords` gives. Pure. Throws a Refusal `amounts-whose`
 * where an amount between two names may be of either ("oil 1 kg coconut 300 g water").
 */
export function amountsFirst(text: string): string {
  if ((text.match(/\d+/gu)?.length ?? 0) < 2) return text;
  const tokens = tokensOf(text);
  const amounts = tokens.filter(({ is }) => is === 'amount');
  if (amounts.length < 2 || !isOfLye(tokens) || TURNED.test(text)) return text;
  const found = readings(tokens).filter(one => one.some(isOfSoap));
  const most = Math.max(...found.map(knownNames));
  const [pairs, other] = found.filter(one => knownNames(one) === most);
  if (other || (!pairs && isNameFirst(tokens))) refuse('amounts-whose', { text: text.slice(0, 80) });
  if (!pairs) return text;
  const isMetric =
    amounts.every(({ text: one }) => METRIC.test(one) || /^[\d.,]+$/u.test(one)) &&
    amounts.some(({ text: one }) => METRIC.test(one));
  // A share of something strange is a scent's or a colour's, and reads the same on either side.
  const behind = pairs.filter(
    ({ name, amount }) =>
      name.from < amount.from && !(name.is === 'name' && name.known === undefined && isPercent(amount)),
  );
  return behind
    .reduceRight(
      (said, { name, amount }) =>
        `${said.slice(0, name.from)}${inGrams(amount.text, isMetric)} ${name.text}, ${said.slice(amount.to)}`,
      text,
    )
    .replace(/(?:\s*,)+(?=\s|$)/gu, ',')
    .replace(/,\s*$/u, '')
    .replace(/\s+/gu, ' ')
    .trim();
}

/** A recipe of a question with its amounts before their names, or why it cannot be told whose they are. Pure; throws nothing. */
export const inOrder = readOnce((question): { readonly ordered: string; readonly unordered?: Refusal } => {
  const plain = plainWords(question, { clauses: true });
  try {
    const ordered = amountsFirst(plain);
    return { ordered: ordered === plain ? question : ordered };
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return { ordered: question, unordered: refusal };
  }
});
