import { apart, colourNamed } from '../../text/colours/colour-name.ts';
import { FOLDED_WORDS, foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import { thingsIn } from '../found/names/entities.ts';
import type { Words } from '../found/words-of.ts';

/** A colour of a plan: as it was said, where, and what it looks like; a part left plain has no hex. */
export type PlanColour = {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly hex?: string;
  /** Whether it is a colourant, and no word for a colour. */
  readonly isThing: boolean;
};

/** A colour by its figure. */
const HEX = /^#[\da-f]{6}$/u;
/** What is left as the oils make it. */
const PLAIN = /^(?:plain|natural|uncolou?red|undyed|nada|na)$/u;
/** Behind or before a name, what makes an oil of it. */
const OF_OIL = /^(?:oils?|kernel|aceites?|butter|manteca|pomace|orujo)$/u;
/** Oils that a recipe names without the word; a peach or an apricot is a colour. */
const BARE_OIL =
  /^(?:olives?|oliva|coconut|coco|palm|palma|avocado|aguacate|palta|almonds?|almendras?|castor|ricino|shea|karite|canola|sunflower|girasol)$/u;
const OIL_BEFORE = /^(?:aceites?|manteca)$/u;
const LONGEST_NAME = 4;
const MOST_WORDS = 120;
const DEPTH =
  /^(?:light|dark|deep|pale|dusty|bright|warm|soft|muted|burnt|hot|baby|claro|clara|oscuro|oscura|palido|fuerte|fuertes|pastel)$/u;

/**
 * The colours that a wish for a plan names, in order: colourants, and words for colours that are no part of a colourant's or an oil's
 * name. Pure.
 * @example planColours(wordsOf('bottom navy, middle white, top gold mica')).map(({ text }) => text) // ['navy', 'white', 'gold mica']
 */
export function planColours(read: Words): readonly PlanColour[] {
  const words = read.words.slice(0, MOST_WORDS);
  const things = thingsIn({ ...read, words }).filter(
    // "6% red" is a share and no red by its number.
    ({ colourants, text }) => colourants.length > 0 && !/^[\d.,]+%/u.test(text),
  );
  const found: PlanColour[] = things.map(({ text, from, to, colourants }) => ({
    text,
    from,
    to,
    isThing: true,
    ...(colourants[0] && { hex: colourants[0].hex }),
  }));
  const isTaken = (from: number, to: number) => found.some(one => from < one.to && one.from < to);
  for (let length = LONGEST_NAME; length > 0; length -= 1)
    for (let at = 0; at + length <= words.length; at += 1) {
      if (isTaken(at, at + length)) continue;
      const hex = hexIn(words, at, length);
      if (hex !== undefined) found.push({ ...spanned(words, at, length), ...(hex !== '' && { hex }) });
    }
  return once(
    unnamed(
      joined(
        found.toSorted((a, b) => a.from - b.from),
        words,
      ),
    ),
  );
}

/** "Plain white" is white, and a hue that only names one told by its figure, "#1f3a5f … navy", is none of its own. */
const unnamed = (found: readonly PlanColour[]): readonly PlanColour[] =>
  found.filter(one => {
    if (one.hex === undefined) return !found.some(({ from, hex }) => hex !== undefined && from === one.to);
    return !found.some(
      ({ text, hex, to }) =>
        HEX.test(text) && !HEX.test(one.text) && to <= one.from && apart(hex!, one.hex!) <= SAME_HUE,
    );
  });

/** What gives a hue is named behind it: "blanco con titanio". */
const GIVEN_BY = /^(?:con|with|from|using|by|de|del)$/u;
/** So far a powder may be from the hue that it gives (CIEDE2000): pink clay is 16 from pink and 24 from white. */
export const SAME_HUE = 22;

/** "Black charcoal", "white with titanium" is one colour: a hue right before what gives it. */
const joined = (found: readonly PlanColour[], words: readonly string[]): readonly PlanColour[] =>
  found.filter(({ text, hex, to, isThing }, at) => {
    const next = found[at + 1];
    if (isThing || !next?.isThing || !isColourWord(foldedColour(text))) return true;
    const isGiven =
      next.from === to + 1 &&
      GIVEN_BY.test(words[to] ?? '') &&
      hex !== undefined &&
      next.hex !== undefined &&
      apart(hex, next.hex) <= SAME_HUE;
    return next.from !== to && !isGiven;
  });

const SOAP = /^(?:soaps?|loaf|loaves|bars?|jabon(?:es)?|pan|barras?|pastillas?)$/u;
/** Whether a hue names what the whole is like, among others: "a watermelon loaf: red inside". Pure. */
export const isTheme = ({ from, to, isThing }: PlanColour, words: readonly string[]): boolean =>
  !isThing &&
  ((SOAP.test(words[from - 1] ?? '') && !(JOINS.test(words[to] ?? '') && isHueAt(words, to + 1))) ||
    (SOAP.test(words[to] ?? '') && !(JOINS.test(words[from - 1] ?? '') && isHueAt(words, from - 2))));

/** "Jabón rojo, blanco y azul", "a red, white and blue soap": one of a list, and not what the whole is like. */
const JOINS = /^(?:,|and|y|e|&|\+)$/u;
const isHueAt = (words: readonly string[], at: number): boolean =>
  words[at] !== undefined && isColourWord(foldedColour(words[at]));

const once = (found: readonly PlanColour[]): readonly PlanColour[] =>
  found.filter((one, at) => found.findIndex(({ text }) => text === one.text) === at);

/** The hex of a colour word or name there, '' of a part left plain; undefined of any other word. */
function hexIn(words: readonly string[], at: number, length: number): string | undefined {
  const said = words.slice(at, at + length).map(plainHue);
  if (length === 1 && HEX.test(said[0]!)) return said[0];
  if (length === 1 && PLAIN.test(said[0]!)) return '';
  if (length === 1 && BARE_OIL.test(said[0]!)) return undefined;
  if (said.some(word => !/^\p{L}/u.test(word))) return undefined;
  const name = foldedColour(said.join(' '));
  if (!(isColourWord(name) || (length > 1 && FOLDED_WORDS.has(name)))) return undefined;
  if (
    OF_OIL.test(words[at + length] ?? '') ||
    words.slice(Math.max(0, at - 2), at).some(one => OIL_BEFORE.test(one))
  )
    return undefined;
  return colourNamed(spanned(words, at, length).text)?.hex;
}

/** A hue as lists have it: "blanquito", "negras" are blanco, negra. */
function plainHue(word: string): string {
  if (isColourWord(foldedColour(word))) return word;
  const one = word.replace(/s$/u, '');
  const stem = one.replace(/quit([oa])$/u, 'c$1').replace(/c?it([oa])$/u, '$1');
  const forms = [one, stem, stem.replace(/[oa]$/u, 'e'), stem.replace(/[oa]$/u, '')];
  return forms.find(form => form.length > 2 && isColourWord(foldedColour(form))) ?? word;
}

/** The name with the word of depth that stands by it: "dark green", "azul claro". */
function spanned(words: readonly string[], at: number, length: number): PlanColour {
  const from = DEPTH.test(words[at - 1] ?? '') ? at - 1 : at;
  const to = DEPTH.test(words[at + length] ?? '') ? at + length + 1 : at + length;
  return { text: words.slice(from, to).map(plainHue).join(' '), from, to, isThing: false };
}
