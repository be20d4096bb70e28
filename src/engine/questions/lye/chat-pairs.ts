import { knownOil } from '../../batch/oils/find-oil.ts';
import type { ChatToken, NameToken } from './chat-tokens.ts';
import { POTASSIUM } from './words.ts';

type AmountToken = ChatToken & { readonly is: 'amount' };
/** An amount and the name whose it is. */
export type Pair = { readonly amount: AmountToken; readonly name: NameToken };
/** Pairs of a whole line, and a percent that stands beside them by itself. */
export type Paired = { readonly pairs: readonly Pair[]; readonly superfat: AmountToken | undefined };

/** Between an amount and its name these say nothing: "300 g of my own lard", "coconut is 20". */
const LINKS =
  /^(?:of|de|del|d|a|the|el|la|los|las|my|mi|mis|our|own|is|are|es|son|at|about|like|some|roughly|exactly|just|only|puro|pura|puros|pure|solid|good|worth|lahat|ng|po|[:=~-])$/u;
/** Where one part of a list ends. */
const BREAKS = /^[;,./()]$/u;
/** Percent of superfat that a bare percent beside weighed oils may be. */
const MOST_SUPERFAT = 30;

const isAmount = (token: ChatToken | undefined): token is AmountToken => token?.is === 'amount';
const isName = (token: ChatToken | undefined): token is NameToken => token?.is === 'name';
const isPercent = ({ text }: ChatToken): boolean => /%|percent|por ciento|pct/u.test(text);
const isBreak = ({ is, text }: ChatToken): boolean => (is === 'mark' && BREAKS.test(text)) || is === 'joint';

/** Whether the alkali that a line names is potassium hydroxide. */
export const isPotassiumNamed = (tokens: readonly ChatToken[]): boolean =>
  tokens.some(({ is, text }) => is !== 'word' && POTASSIUM.test(text));

/** The name next to an amount on one side, with nothing but links between. */
function nameBeside(tokens: readonly ChatToken[], at: number, step: 1 | -1): NameToken | undefined {
  for (let next = at + step; next >= 0 && next < tokens.length; next += step) {
    const token = tokens[next]!;
    if (isName(token)) return token;
    if (!LINKS.test(token.text) || isBreak(token)) return undefined;
  }
  return undefined;
}

/** Every amount with the name on that side of it; undefined where one has none, or two have the same. */
function allOnSide(tokens: readonly ChatToken[], step: 1 | -1): readonly Pair[] | undefined {
  const pairs: Pair[] = [];
  for (const [at, token] of tokens.entries()) {
    if (!isAmount(token)) continue;
    const name = nameBeside(tokens, at, step);
    if (name === undefined || pairs.some(pair => pair.name === name)) return undefined;
    pairs.push({ amount: token, name });
  }
  return pairs;
}

/** The line's parts between its commas, stops and joints. */
function partsOf(tokens: readonly ChatToken[]): readonly (readonly ChatToken[])[] {
  const parts: ChatToken[][] = [[]];
  for (const token of tokens)
    if (isBreak(token)) parts.push([]);
    else parts.at(-1)!.push(token);
  return parts.filter(part => part.some(isAmount));
}

function ofPart(part: readonly ChatToken[]): readonly Pair[] | undefined {
  const [before, after] = [allOnSide(part, 1), allOnSide(part, -1)];
  const [amount, ...more] = part.filter(isAmount);
  const [name, ...others] = part.filter(isName);
  // "Manteca de cacao de la finca 200".
  if (!before && !after && amount && name && more.length === 0 && others.length === 0)
    return [{ amount, name }];
  if (before === undefined || after === undefined) return before ?? after;
  return before.every(({ name }, at) => name === after[at]!.name) ? before : undefined;
}

function allIn(tokens: readonly ChatToken[]): readonly Pair[] | undefined {
  const [before, after] = [allOnSide(tokens, 1), allOnSide(tokens, -1)];
  if (before && after) return undefined;
  if (before ?? after) return before ?? after;
  const [one, ...others] = tokens.filter(isAmount);
  const oils = tokens.filter(token => isName(token) && token.known === 'oil');
  // "All coconut, 800 grams".
  if (one && others.length === 0 && oils.length === 1) return [{ amount: one, name: oils[0] as NameToken }];
  const parts = partsOf(tokens).map(ofPart);
  return parts.every(part => part !== undefined) ? parts.flat() : undefined;
}

/**
 * Every amount of a line with its name, whichever side it stands on; a lone percent beside weights is the superfat, and a lone
 * weight beside shares that of all oils. `stop`: an amount whose it cannot be told, or an oil without one.
 */
export function pairsIn(tokens: readonly ChatToken[]): Paired | { readonly stop: string } {
  const amounts = tokens.filter(isAmount);
  const lone = loneIn(tokens, amounts);
  const again = toldAgain(amounts);
  for (const { without, paired } of lone) {
    const pairs = allIn(tokens.filter(token => token !== without && !again.has(token)));
    if (pairs === undefined) continue;
    const oils = tokens.filter((token): token is NameToken => isName(token) && token.known === 'oil');
    // Who names an oil again, without an amount, speaks of the one that has one.
    const weighed = new Set(pairs.map(({ name }) => knownOil(name.text)));
    const bare = oils.find(
      oil => !pairs.some(({ name }) => name === oil) && !weighed.has(knownOil(oil.text)),
    );
    if (bare) return { stop: bare.text };
    const all = paired === 'whole' ? [...pairs, wholeOf(without!)] : pairs;
    const isSound =
      paired !== 'superfat' || pairs.every(({ amount, name }) => name.known !== 'oil' || !isPercent(amount));
    if (isSound) return { pairs: all, superfat: paired === 'superfat' ? without : undefined };
  }
  return { stop: amounts.map(({ text }) => text).join(', ') };
}

/** Bare figures that an earlier amount told already: "lye 142 ... is the 142 right". */
const toldAgain = (amounts: readonly AmountToken[]): ReadonlySet<ChatToken> =>
  new Set(
    amounts.filter(
      ({ text }, at) =>
        /^\d{3,}$/u.test(text) &&
        amounts.slice(0, at).some(one => Number.parseFloat(one.text) === Number(text)),
    ),
  );

type Lone = { readonly without: AmountToken | undefined; readonly paired: 'none' | 'superfat' | 'whole' };

/** The readings to try: all amounts have names, or one stands alone. */
function loneIn(tokens: readonly ChatToken[], amounts: readonly AmountToken[]): readonly Lone[] {
  const percents = amounts.filter(isPercent);
  const others = amounts.filter(amount => !isPercent(amount));
  const [percent] = percents;
  const [mass] = others;
  return [
    { without: undefined, paired: 'none' },
    ...(percents.length === 1 &&
    others.length > 0 &&
    Number.parseFloat(percent!.text.replace(',', '.')) <= MOST_SUPERFAT
      ? [{ without: percent, paired: 'superfat' as const }]
      : []),
    ...(others.length === 1 &&
    percents.length > 0 &&
    /[a-z]/u.test(mass!.text) &&
    !tokens.some(token => isName(token) && token.known === 'any-oil')
      ? [{ without: mass, paired: 'whole' as const }]
      : []),
  ];
}

const wholeOf = (amount: AmountToken): Pair => ({
  amount,
  name: { ...amount, is: 'name', known: 'any-oil', text: 'oils' },
});
