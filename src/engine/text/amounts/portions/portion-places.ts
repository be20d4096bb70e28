import { unbroken } from '../../../over-lines.ts';
import { knowsColour } from '../../colours/known-colours.ts';
import { isName } from '../../names/listed-names.ts';
import { deaccented } from '../../unaccented.ts';
import { type Token, tokensOf } from './portion-tokens.ts';

type Colour = Extract<Token, { is: 'colour' }>;
export const coloursIn = (tokens: readonly Token[]) =>
  tokens.filter((token): token is Colour => token.is === 'colour').map(({ name }) => name);

export const evenly = (names: readonly string[]) => names.map(name => `1 parts ${name}`).join('; ');

const RANKS: ReadonlyMap<Token['is'], number> = new Map([
  ['bottom', 0],
  ['middle', 1],
  ['top', 2],
]);

/** "Bottom burgundy, top cream, in the middle dusty rose": each colour with its place, in any order. */
export function placed(tokens: readonly Token[]): string | undefined {
  const told = tokens
    .filter(({ is }) => is === 'colour' || RANKS.has(is))
    .filter(({ is }, at, all) => is === 'colour' || all[at - 1]?.is !== is);
  const places = told.filter(({ is }) => RANKS.has(is)).map(({ is }) => is);
  if (places.length < 2 || told.length !== 2 * places.length || new Set(places).size < places.length)
    return undefined;
  const layers: { readonly name: string; readonly rank: number }[] = [];
  for (let at = 0; at < told.length; at += 2) {
    const [one, other] = [told[at]!, told[at + 1]!];
    const [colour, place] = one.is === 'colour' ? [one, other] : [other, one];
    const rank = RANKS.get(place.is);
    if (colour.is !== 'colour' || rank === undefined || (one.is === 'colour') !== (told[0]!.is === 'colour'))
      return undefined;
    layers.push({ name: colour.name, rank });
  }
  return evenly(layers.toSorted((a, b) => a.rank - b.rank).map(({ name }) => name));
}

/** "White in the middle, pink's at the top, the base is black": each clause a colour and its place. */
export function placedByClause(text: string): string | undefined {
  const clauses = text.split(/\s*[,;.]\s*|\s+(?:and|y|n|&)\s+/iu).filter(clause => clause !== '');
  const layers = clauses.map(clause => {
    const tokens = tokensOf(clause) ?? [];
    const [place, ...more] = new Set(tokens.flatMap(({ is }) => (RANKS.has(is) ? [is] : [])));
    const [name, ...others] = coloursIn(tokens);
    return name === undefined || place === undefined || more.length + others.length > 0
      ? undefined
      : { name, rank: RANKS.get(place)! };
  });
  const ranks = new Set(layers.map(layer => layer?.rank));
  if (layers.length < 2 || ranks.size < layers.length || !layers.every(layer => layer !== undefined))
    return undefined;
  return evenly(layers.toSorted((a, b) => a.rank - b.rank).map(({ name }) => name));
}

/** "White sits on teal, teal on navy": from the top down. */
const RESTS = new RegExp(
  unbroken`
    ^(?:the |el |la )?([^,;.]+?) (?:(?:sits|rests|goes|lies|is|va|queda) )?(?:on(?: top of)?|over|above|
    sobre|(?:por )?encima del?|arriba del?) (?:the |el |la )?([^,;.]+)$
  `,
  'iu',
);
export function resting(text: string): string | undefined {
  const steps = text.split(/\s*[,;.]\s*(?:and |y |then )?/u).filter(step => step !== '');
  const names: string[] = [];
  for (const step of steps) {
    const [, above = '', below = ''] = RESTS.exec(step.trim()) ?? [];
    if (![above, below].every(name => isName(name.split(' '), knowsColour))) return undefined;
    if (names.length > 0 && deaccented(names.at(-1)!) !== deaccented(above)) return undefined;
    names.push(...(names.length === 0 ? [above, below] : [below]));
  }
  return names.length > 1 ? evenly(names.toReversed()) : undefined;
}

/** Layers from the bottom up: told from the top where the top is named first. */
export function stacked(tokens: readonly Token[]): string | undefined {
  // Named twice in a row, a layer is only referred to.
  const names = coloursIn(tokens).filter(
    (name, at, all) => deaccented(name) !== deaccented(all[at - 1] ?? ''),
  );
  const counts = tokens.flatMap(token => (token.is === 'figure' ? [token.value] : []));
  if (names.length < 2 || counts.some(count => count !== names.length)) return undefined;
  const places = tokens.flatMap(({ is }, at) =>
    (is === 'top' || is === 'bottom') && tokens[at - 1]?.is !== is ? [{ is, at }] : [],
  );
  const tops = places.filter(({ is }) => is === 'top');
  // "Yellow on top of that and the red last": told upwards, each above the one before.
  if (tops.length > 1) return tops[0]!.at > 0 && places.length === tops.length ? evenly(names) : undefined;
  if (places.length - tops.length > 1)
    return places[0]!.is === 'top' && places[0]!.at === 0 ? evenly(names.toReversed()) : undefined;
  // A middle that is told before or behind all else tells another order than that of the list.
  const mid = tokens.findIndex(({ is }) => is === 'middle');
  const ats = places.map(({ at }) => at);
  if (mid >= 0 && ats.length > 1 && (mid < Math.min(...ats) || mid > Math.max(...ats))) return undefined;
  const [top, bottom] = [tops[0]?.at, places.find(({ is }) => is === 'bottom')?.at];
  const middle = tokens.length / 2;
  const first = tokens.findIndex(({ is }) => is === 'first');
  const isTopFirst =
    top !== undefined && !(first >= 0 && first < top) && (bottom === undefined ? top < middle : top < bottom);
  return evenly(isTopFirst ? names.toReversed() : names);
}
