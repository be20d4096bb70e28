import { knownAs, OPAQUE } from './recipe-tokens.ts';
import { COUNT, LYE, UNIT } from './words.ts';

type Span = { readonly from: number; readonly to: number; readonly text: string };
export type NameToken = Span & {
  readonly is: 'name';
  readonly known: 'oil' | 'any-oil' | 'lye' | 'water' | 'other';
};
/** A piece of a chat line: every word of it is in one. */
export type ChatToken =
  | NameToken
  | (Span & { readonly is: 'fixed' | 'asks' | 'amount' | 'word' | 'joint' | 'mark' });

const MEASURE = `(?:${UNIT}|(?:%|percent|por ciento|pct)|(?:ml|cl|cc|l|lit(?:er|re)s?|litros?|cups?|tazas?|tbsps?|tsps?|cdt?as?|cucharad(?:it)?as?)\\b)`;
const ASKS = [
  String.raw`(?:how (?:much|many)|cuant[oa]s?|calcul\w*|que cantidad(?: de)?|amount of)(?: \p{L}+){0,3}? ${LYE}(?: (?:and|n|y|e|or|&) (?:how much |cuanta )?(?:the |el )?(?:water|agua))?`,
  String.raw`${LYE}(?: (?:and|y|&) (?:water|agua))? (?:for|para|pa|needed for)\b`,
];
const FIXED = OPAQUE.slice(0, 3).concat(OPAQUE.slice(4, 6));
const TOKENS = new RegExp(
  String.raw`(?<asks>(?<![\p{L}\d])(?:${ASKS.join('|')})(?![\p{L}\d]))|(?<fixed>(?<![\p{L}\d])(?:${FIXED.join('|')})(?![\p{L}\d]))|(?<amount>(?<![\p{L}\d.,])${COUNT} ?(?:${MEASURE})?(?![\p{L}\d]))|(?<word>[\p{L}\d][\p{L}\p{M}\d'’-]*)|(?<mark>[^\s])`,
  'gu',
);
const LYE_FIRST = new RegExp(`^${LYE}`, 'u');
const JOINT = /^(?:and|y|e|n|an|plus|mas|con|with|wid|wi)$/u;
const OF = /^(?:of|de|del|d|a|the|el|la)$/u;
const LONGEST_NAME = 4;
/** Bare milk is the drink, and no butterfat. */
const MILK = /^(?:milk|leche)$/u;
/** A courtesy that is also how some write palm oil. */
const COURTESY = /^(?:po|co|oo|sb|cb)$/u;

/** The pieces of a line in their order. Takes what `plainWords` gives. */
export function tokensOfChat(plain: string): readonly ChatToken[] {
  const found: ChatToken[] = [];
  for (const match of plain.matchAll(TOKENS)) {
    const { asks, fixed, amount, word, mark } = match.groups!;
    const span = { from: match.index, to: match.index + match[0].length, text: match[0].trim() };
    const is =
      asks !== undefined
        ? 'asks'
        : fixed !== undefined
          ? 'fixed'
          : amount !== undefined
            ? 'amount'
            : mark === undefined
              ? JOINT.test(word!)
                ? 'joint'
                : 'word'
              : /[+&]/u.test(mark)
                ? 'joint'
                : 'mark';
    found.push({ ...span, is });
  }
  return withNames(found, plain);
}

function withNames(tokens: readonly ChatToken[], plain: string): readonly ChatToken[] {
  const named: ChatToken[] = [];
  for (let at = 0; at < tokens.length; ) {
    const name = nameAt(tokens, at, plain) ?? lyeAt(tokens, at);
    named.push(name?.token ?? tokens[at]!);
    at += name?.length ?? 1;
  }
  return named;
}

/** "128 lye for 800 tallow": lye that has an amount is not asked for. */
function lyeAt(
  tokens: readonly ChatToken[],
  at: number,
): { readonly token: NameToken; readonly length: number } | undefined {
  const token = tokens[at]!;
  const [lye] = token.is === 'asks' ? (LYE_FIRST.exec(token.text) ?? []) : [];
  const isOf =
    tokens[at - 1]?.is === 'amount' ||
    (OF.test(tokens[at - 1]?.text ?? '') && tokens[at - 2]?.is === 'amount');
  return lye === undefined || !isOf
    ? undefined
    : { token: { ...token, is: 'name', known: 'lye', text: lye }, length: 1 };
}

function nameAt(
  tokens: readonly ChatToken[],
  at: number,
  plain: string,
): { readonly token: NameToken; readonly length: number } | undefined {
  let most = 0;
  while (most < LONGEST_NAME && tokens[at + most]?.is === 'word') most += 1;
  for (let length = most; length > 0; length -= 1) {
    const [first, last] = [tokens[at]!, tokens[at + length - 1]!];
    if (OF.test(first.text) || OF.test(last.text)) continue;
    const text = plain.slice(first.from, last.to);
    const known = COURTESY.test(text) ? undefined : MILK.test(text) ? 'other' : knownAs(text);
    if (known) return { token: { is: 'name', known, from: first.from, to: last.to, text }, length };
  }
  return undefined;
}
