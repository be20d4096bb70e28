import { knownAdditive } from '../../batch/additives/additives.ts';
import { knownOil } from '../../batch/oils/find-oil.ts';
import { Refusal, refuse } from '../../refusal.ts';
import { isIdleWord } from './oils.ts';
import { COUNT, FAT, LYE, PERCENT, plainWords, UNIT } from './words.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** A weight between two names that may be of either. */
    'amounts-whose': { text: string };
  }
}

const MEASURE = String.raw`(?:${UNIT}|(?:%|percent|por ciento)|(?:ml|cl|l|lit(?:er|re)s?|litros?|cups?|tazas?|tbsps?|tsps?|tablespoons?|teaspoons?|cdt?as?|cucharad(?:it)?as?|fl oz)\b)`;
/** What holds a figure that is no ingredient's amount, and the words that ask. */
const OPAQUE = [
  String.raw`(?:at |with |con |al |a )*-? ?\d+(?:[.,]\d+)? ?(?:%|percent|por ciento)? ?(?:de |of )?${FAT}`,
  String.raw`${FAT} ?(?:of |at |de |del |al |is |=|: ?)*-? ?\d+(?:[.,]\d+)? ?(?:%|percent|por ciento)?`,
  String.raw`\d+(?:[.,]\d+)? ?: ?\d+(?:[.,]\d+)?`,
  String.raw`${PERCENT} ?(?:de |of )?(?:${LYE}|concentration|concentracion|conc|strength|solution|solucion|purity|pureza|pure)`,
  String.raw`(?:${LYE}|concentration|concentracion|conc|strength|solution|solucion|purity|pureza) ?(?:of |at |de |del |al |is |: ?)*${PERCENT}`,
  String.raw`(?:how (?:much|many)|cuant[oa]s?|calcul\w*|que cantidad(?: de)?|amount of)(?: \p{L}+){0,3}? ${LYE}(?: (?:and|n|y|e|or|&) (?:how much |cuanta )?(?:the |el )?(?:water|agua))?`,
  String.raw`${LYE}(?: (?:and|y|&) (?:water|agua))? (?:for|para|pa|needed for)\b`,
];
const TOKENS = new RegExp(
  String.raw`(?<opaque>(?<![\p{L}\d])(?:${OPAQUE.join('|')})(?![\p{L}\d]))|(?<amount>(?<![\p{L}\d.,])${COUNT} ?(?:${MEASURE})?(?![\p{L}\d]))|(?<word>(?:coconut|coco)(?: oil)? (?:76|92)(?:f|°f| deg(?:rees)?)?(?=[\s:=-]+\d)|[\p{L}][\p{L}\p{M}'’-]*)|(?<mark>[;,+/]|[^\s])`,
  'gu',
);
/** What follows these was not used, or stands for something else. */
const TURNED =
  /(?<!\p{L})(?:instead|rather|switch\p{L}*|swap\p{L}*|mixed up|en vez|en lugar|cambi\p{L}*|confund\p{L}*|replac\p{L}*|reemplaz\p{L}*|sustitu\p{L}*)(?!\p{L})/u;
const JOINT = /^(?:and|y|e|n|plus|mas|con|with|in|en|into|then|luego|[;,+/&])$/u;
/** Inside a name these join its words: "aceite de oliva". */
const OF = /^(?:of|de|del|the|el|la)$/u;
const LONGEST_NAME = 4;
/** A name nobody here knows has no more words. */
const LONGEST_STRANGE = 3;
const isLye = (name: string): boolean => new RegExp(`^${LYE}$`, 'u').test(name);
const isWater = (name: string): boolean =>
  /^(?:(?:distilled|cold) )?(?:water|agua)(?: destilada| fria)?$/u.test(name);

type Token = { readonly from: number; readonly to: number; readonly text: string } & (
  | { readonly is: 'amount' | 'joint' | 'opaque' }
  | { readonly is: 'name'; readonly known: 'oil' | 'lye' | 'water' | 'other' | undefined }
);

/** What an ingredient of these words is known as. */
function knownAs(name: string): 'oil' | 'lye' | 'water' | 'other' | undefined {
  if (isLye(name)) return 'lye';
  if (isWater(name)) return 'water';
  if (knownOil(name) !== undefined) return 'oil';
  return knownAdditive(name) === undefined ? undefined : 'other';
}

function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  const words: { text: string; from: number; to: number }[] = [];
  const flush = () => {
    tokens.push(...namesAmong(words));
    words.length = 0;
  };
  for (const match of text.matchAll(TOKENS)) {
    const { opaque, amount, word, mark } = match.groups!;
    const span = { from: match.index, to: match.index + match[0].length, text: match[0].trim() };
    const isJoint = JOINT.test(word ?? mark ?? '');
    if (word !== undefined && !isJoint) words.push(span);
    else if (mark === undefined || isJoint) {
      flush();
      tokens.push({
        ...span,
        is: opaque !== undefined ? 'opaque' : amount !== undefined ? 'amount' : 'joint',
      });
    }
  }
  flush();
  return tokens;
}

type Word = { readonly text: string; readonly from: number; readonly to: number };

/** The known ingredients in a run of words, and the runs of strange ones between them. */
function namesAmong(words: readonly Word[]): readonly Token[] {
  const names: Token[] = [];
  let strange: Word[] = [];
  const flush = () => {
    const [first, last] = [strange[0], strange.at(-1)];
    if (first && last && strange.length <= LONGEST_STRANGE)
      names.push({
        is: 'name',
        known: undefined,
        from: first.from,
        to: last.to,
        text: strange.map(({ text }) => text).join(' '),
      });
    strange = [];
  };
  for (let at = 0; at < words.length; ) {
    const found = longestKnown(words.slice(at, at + LONGEST_NAME));
    if (found) {
      flush();
      names.push(found.token);
      at += found.length;
      continue;
    }
    const word = words[at]!;
    if (!isIdleWord(word.text) && !OF.test(word.text)) strange.push(word);
    else if (strange.length > 0 && !OF.test(word.text)) flush();
    at += 1;
  }
  flush();
  return names;
}

function longestKnown(
  words: readonly Word[],
): { readonly token: Token; readonly length: number } | undefined {
  for (let length = words.length; length > 0; length -= 1) {
    const [first, last] = [words[0]!, words[length - 1]!];
    const text = words
      .slice(0, length)
      .map(word => word.text)
      .join(' ');
    const known = OF.test(first.text) || OF.test(last.text) ? undefined : knownAs(text);
    if (known) return { token: { is: 'name', known, from: first.from, to: last.to, text }, length };
  }
  return undefined;
}

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
    token?.is === 'name' && (token.known === 'lye' || token.known === 'water' || token.known === undefined);
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

const isOil = ({ name }: Pair): boolean => name.is === 'name' && name.known === 'oil';

/**
 * A recipe in which every amount stands before its name: "olive 400 g castor 50 g water 180 g" becomes "400 g olive, 50 g castor, 180 g
 * water". Any other text comes back as it was. Takes what `plainWords` gives. Pure. Throws a Refusal `amounts-whose`
 * where an amount between two names may be of either ("oil 1 kg coconut 300 g water").
 */
export function amountsFirst(text: string): string {
  const tokens = tokensOf(text);
  const amounts = tokens.filter(({ is }) => is === 'amount');
  const hasOil = tokens.some(token => token.is === 'name' && token.known === 'oil');
  if (amounts.length < 2 || !hasOil || TURNED.test(text)) return text;
  const [pairs, other] = readings(tokens).filter(one => one.some(isOil));
  if (other || (!pairs && isNameFirst(tokens))) refuse('amounts-whose', { text: text.slice(0, 80) });
  if (!pairs) return text;
  const behind = pairs.filter(({ name, amount }) => name.from < amount.from);
  return behind
    .reduceRight(
      (said, { name, amount }) =>
        `${said.slice(0, name.from)}${amount.text} ${name.text}, ${said.slice(amount.to)}`,
      text,
    )
    .replace(/(?:\s*,)+(?=\s|$)/gu, ',')
    .replace(/,\s*$/u, '')
    .replace(/\s+/gu, ' ')
    .trim();
}

/** A recipe of a question with its amounts before their names, or why it cannot be told whose they are. Pure; throws nothing. */
export function inOrder(question: string): { readonly ordered: string; readonly unordered?: Refusal } {
  const plain = plainWords(question, { clauses: true });
  try {
    const ordered = amountsFirst(plain);
    return { ordered: ordered === plain ? question : ordered };
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return { ordered: question, unordered: refusal };
  }
}
