import { unbroken } from '../../over-lines.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import type { ToldAmount } from './amounts.ts';
import type { NamedThing } from './names/named-thing.ts';
import type { Words } from './words-of.ts';

/** So many words may stand between an amount and what it is of. */
const NEAR = 2;

/** The amount of powder that stands nearest before a thing, else behind it. */
const ownOf = (amounts: readonly ToldAmount[], { from, to }: NamedThing): ToldAmount | undefined => {
  const powders = amounts.filter(({ of, perPound }) => of === 'powder' && !perPound);
  return (
    powders.find(amount => amount.to <= from && from - amount.to <= NEAR) ??
    powders.find(amount => amount.from >= to && amount.from - to <= NEAR)
  );
};

const LITTLE = new RegExp(
  unbroken`
    (?:^| )(?:little|tiny|touch|pinch|hint|dash|speck|hair|drop|bit|poc[oa]|poquit[oa]|tantit[oa]|pizca|toque|
    punta|gota|pelin)(?: (?:bit|of|de|del|the|el|la))*$
  `,
  'u',
);
/** Of one of several a little is told: it is a tint beside the others. */
const isLittle = ({ words }: Words, { from }: NamedThing, before: number): boolean =>
  LITTLE.test(words.slice(Math.max(before, from - 4), from).join(' '));

/** "3 parts yellow oxide", "1 parte de óxido rojo": how many parts of it there are; undefined where none is told. */
function partsOf({ words }: Words, { from }: NamedThing): number | undefined {
  const before = words.slice(Math.max(0, from - 3), from).join(' ');
  const told = /(?:^| )(\d{1,2}|an?|una?) part(?:s|es?)?(?: of| de)?$/u.exec(before)?.[1];
  return told === undefined ? undefined : Number(told) || 1;
}

/** Several that are told in parts: the most of them at full colour, the others in proportion. */
function inParts(words: Words, things: readonly NamedThing[]): string | undefined {
  const parts = things.map(one => partsOf(words, one));
  if (parts.length < 2 || parts.includes(undefined)) return undefined;
  const most = Math.max(...(parts as number[]));
  const share = (told: number) => Math.max(1, Math.round((100 * told) / most));
  return things.map(({ text }, at) => `${text} ${share(parts[at]!)}% of full`).join(' + ');
}

/** "Baby pink or brick red": a hue that is asked about is nothing that goes in. */
const isHueAsked = ({ words }: Words, { text, from }: NamedThing): boolean =>
  /^(?:or?|u)$/u.test(words[from - 1] ?? '') && isColourWord(foldedColour(text));

/**
 * What is put together, as `/preview` reads it: each thing with its amount, or as a tint where of several only a little of it is told. Pure.
 * @example "1 tsp green chrome oxide + 2 g titanium dioxide", "black oxide tint + red oxide"
 */
export function mixOf(
  words: Words,
  things: readonly NamedThing[],
  amounts: readonly ToldAmount[],
): string | undefined {
  const shares = inParts(words, things);
  if (shares !== undefined) return shares;
  const isAmountTold = things.some(one => ownOf(amounts, one));
  const parts = isAmountTold
    ? things.filter(one => ownOf(amounts, one) !== undefined || !isHueAsked(words, one))
    : things;
  if (parts.length === 0) return undefined;
  const littles = parts.map((one, at) => isLittle(words, one, parts[at - 1]?.to ?? 0));
  const isRatio = parts.length > 1 && littles.includes(true) && littles.includes(false);
  return parts
    .map((one, at) => {
      const own = ownOf(amounts, one);
      if (own) return `${own.text} ${one.text}`;
      return isRatio && littles[at] ? `${one.text} tint` : one.text;
    })
    .join(' + ');
}
