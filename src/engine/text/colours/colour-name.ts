import { parseColour } from '../../quantities/colour.ts';
import { refuse, unlessRefused } from '../../refusal.ts';
import { excerpt } from '../excerpt.ts';
import { nearestNames } from '../spelling/closest-name.ts';
import { comparedIn, longestName, turnedIn } from './colour-comparisons.ts';
import { hexOf, openNames } from './colour-lists.ts';
import {
  apart,
  between,
  type FoundColour as Found,
  hueApart,
  huedBy,
  isHue,
  likeness,
  SHIFTS,
  shadeOf,
  shifted,
  shiftOf,
  thingOfHue,
} from './colour-shades.ts';
import { corrected, FILLERS, inSingular } from './colour-slips.ts';
import {
  FOLDED_WORDS,
  foldedColour as fold,
  isColourWord,
  LONGEST_COLOUR as LONGEST,
} from './folded-colours.ts';
import { COLOUR_WORDS } from './words/colour-words.ts';

/** A colour as it was named: what was understood, and whether a slip of the finger was put right for it. */
export type NamedColour = {
  readonly hex: string;
  /** The name that was understood, in the member's language; the hex where one was written. */
  readonly name: string;
  readonly corrected: boolean;
};

const MOST_WORDS = 14;
/** Degrees of hue (CIELAB) beyond which a thing is not what a hue's name is said of. */
const ANOTHER_HUE = 60;

const ALMOST = /\b(?:almost|casi|nearly)\s+(\p{L}+)/u;

/** Every name of the trade's in a wish, longest first, none over another. */
function namesOfTrade(words: readonly string[]): readonly Found[] {
  const found: Found[] = [];
  const taken = new Set<number>();
  for (let length = Math.min(6, words.length); length > 0; length -= 1)
    for (let at = 0; at + length <= words.length; at += 1) {
      const places = Array.from({ length }, (_, step) => at + step);
      const name = words.slice(at, at + length).join(' ');
      const hex = FOLDED_WORDS.get(name);
      if (hex === undefined || places.some(place => taken.has(place))) continue;
      for (const place of places) taken.add(place);
      found.push({ hex, name, length, trade: true });
    }
  return found;
}

/** A hue that is told beside the names of things: which thing is meant, in that hue. */
function huedThing(words: readonly string[]): Found | undefined {
  const names = namesOfTrade(words);
  const hues = names.filter(({ name }) => isHue(name));
  const things = names.filter(({ name }) => !isHue(name));
  return hues.length === 1 && things.length > 0 ? thingOfHue(hues[0]!.name, things) : undefined;
}

const written = (text: string): string | undefined => unlessRefused(() => parseColour(text));

/**
 * The last resort: a thing's name with an ending, or one of its words in the open list. Words of talk are no colours, so only
 * what tells is looked at, and the last of it first, where English has its noun.
 */
function likened(words: readonly string[]): Found | undefined {
  const left = telling(words).filter(
    word => word.length > 3 && !SHIFTS.some(([pattern]) => pattern.test(word)),
  );
  for (const word of left)
    for (const thing of likeness(word)) {
      const hex = FOLDED_WORDS.get(thing);
      if (hex !== undefined) return { hex, name: thing, length: 1, trade: true };
    }
  if (left.length > 3) return undefined;
  const word = left.findLast(one => openNames().has(one));
  return word === undefined
    ? undefined
    : { hex: openNames().get(word)!, name: word, length: 1, trade: false };
}

/** What is left when fillers and words that only shift a colour are taken out. */
const telling = (words: readonly string[]) => words.filter(word => !FILLERS.has(word));

/** "forget me not blue": one of our things and its hue. */
function ownThingInHue(said: string): string | undefined {
  const words = said.split(' ');
  for (const [hue, rest] of [
    [words.at(-1)!, words.slice(0, -1)],
    [words[0]!, words.slice(1)],
  ] as const) {
    const name = rest.join(' ');
    const turned = FOLDED_WORDS.get(`${hue} ${name}`) ?? FOLDED_WORDS.get(`${name} ${hue}`);
    if (isHue(hue) && turned !== undefined) return turned;
    const hex = FOLDED_WORDS.get(name);
    if (isHue(hue) && hex !== undefined && !isHue(name))
      return huedBy({ hex, name, length: rest.length, trade: true }, words);
  }
  return undefined;
}

/** What a word of likeness at the end turns a colour to: "a leaf in november, coppery". */
function turnedAtEnd(said: string): NamedColour | undefined {
  const words = said.split(' ');
  const last = words.at(-1)!;
  const like = likeness(last)
    .map(thing => FOLDED_WORDS.get(thing))
    .find(hex => hex !== undefined);
  const isDenied = words.slice(-4, -1).some(word => /^(?:not?|less|than|sin|ni|menos|nada)$/u.test(word));
  if (like === undefined || isDenied || words.length < 3 || FOLDED_WORDS.has(last)) return undefined;
  const head = named(words.slice(0, -1).join(' '));
  return head && { ...head, hex: between(head.hex, like, 0.5), name: said };
}

function named(said: string): NamedColour | undefined {
  const whole = hexOf(said);
  const shade = shadeOf(said) ?? ownThingInHue(said);
  // The open list has poets' names too: a shade of a word of the trade is believed where the two differ.
  if (whole !== undefined)
    return {
      hex: shade !== undefined && !FOLDED_WORDS.has(said) && apart(shade, whole) > 15 ? shade : whole,
      name: said,
      corrected: false,
    };
  if (shade !== undefined) return { hex: shade, name: said, corrected: false };
  const words = said.split(' ').slice(0, MOST_WORDS);
  const bare = telling(words).join(' ');
  const bareHex = hexOf(bare);
  if (bareHex !== undefined) return { hex: bareHex, name: bare, corrected: false };
  const ended = turnedAtEnd(said);
  if (ended) return ended;
  const almost = ALMOST.exec(said)?.[1];
  if (almost !== undefined && FOLDED_WORDS.has(almost)) {
    const other = longestName(telling(words.filter(word => word !== almost)));
    const hex = FOLDED_WORDS.get(almost)!;
    return { hex: other ? between(other.hex, hex, 0.75) : hex, name: said, corrected: false };
  }
  const compared = comparedIn(said);
  if (compared !== undefined) return { hex: compared, name: said, corrected: false };
  const turned = turnedIn(said);
  if (turned !== undefined) return { hex: turned, name: said, corrected: false };
  const thing = huedThing(words);
  if (thing) {
    const more = shiftOf(said, thing.name);
    return {
      hex: more ? shifted(thing.hex, more.shift, more.share) : thing.hex,
      name: said,
      corrected: false,
    };
  }
  const found = longestName(words) ?? longestName(telling(words)) ?? likened(words);
  if (!found) return undefined;
  const hued = huedBy(found, words);
  if (hued !== undefined) return { hex: hued, name: said, corrected: false };
  const shift = shiftOf(said, found.name);
  const hex = shift ? shifted(found.hex, shift.shift, shift.share) : found.hex;
  return { hex, name: shift ? said : found.name, corrected: false };
}

/** Six figures anywhere among the words: "something near #8fae9b". */
const HEX = /#[\da-f]{6}(?![\da-f])/iu;

/** "rgb 120 40 60", channels of sRGB from 0 to 255. */
function channelsOf(text: string): string | undefined {
  const channels = /\brgb[ :]+(\d{1,3})[ ,;]+(\d{1,3})[ ,;]+(\d{1,3})\b/iu.exec(text)?.slice(1);
  return channels && written(`rgb(${channels.join(', ')})`);
}

/**
 * The colour somebody names: as hex, `rgb()` or a CSS name, as a word of the trade in either language, by a name of the
 * open list, or as one of these with "light", "dusty", "darker than" and the like. Slips of the finger are put right and
 * said so. Undefined where no word of it names a colour.
 */
export function colourNamed(text: string): NamedColour | undefined {
  const hex =
    HEX.exec(text)?.[0] ?? channelsOf(text) ?? (/#|\(|^[\da-f]{6}$/iu.test(text) ? written(text) : undefined);
  if (hex !== undefined) return { hex, name: hex, corrected: false };
  const typed = fold(text.slice(0, LONGEST));
  if (typed === '') return undefined;
  const said = FOLDED_WORDS.has(typed) ? typed : inSingular(typed);
  const exact = named(said);
  const words = said.split(' ');
  const right = corrected(words);
  const changed = right.filter((word, at) => word !== words[at]);
  const second = changed.length > 0 ? named(right.join(' ')) : undefined;
  if (exact && FOLDED_WORDS.has(exact.name)) {
    // Half a name is no name: in "midnite blue" more than the blue is told, and in "turkesa como el mar" the hue.
    const isWhole = second === undefined || !(second.name.includes(exact.name) || changed.some(isColourWord));
    // Beside a hue, a word that a slip would make a thing of quite another colour is a word that is not known: "rosa capote".
    const isOther = changed.some(word => {
      const hex = FOLDED_WORDS.get(word);
      return hex !== undefined && isHue(exact.name) && hueApart(hex, exact.hex) > ANOTHER_HUE;
    });
    return isWhole || isOther || second.name === exact.name ? exact : { ...second, corrected: true };
  }
  if (second && (!exact || !openNames().has(exact.name))) return { ...second, corrected: true };
  const css = exact ? undefined : written(text);
  return exact ?? (css === undefined ? undefined : { hex: css, name: said, corrected: false });
}

/** {@link colourNamed}. Throws a Refusal `colour-unreadable` with the three names that are spelt most like it. */
export function readColour(text: string): NamedColour {
  return (
    colourNamed(text) ??
    refuse('colour-unreadable', {
      text: excerpt(text),
      nearest: nearestNames(fold(text.slice(0, LONGEST)), [...COLOUR_WORDS.keys()], 3),
    })
  );
}

export { apart };
