import { colourantsNamed } from '../../../colourants/find.ts';
import { substanceNamed, substanceNumbered, substanceWithE } from '../../../stability/names.ts';
import type { Words } from '../words-of.ts';
import type { NamedThing } from './named-thing.ts';

/** What every label lists first and no colour is made of. */
const WATER = /^(?:water|aqua|agua)$/u;
const NUMBERED = /^(?:c\.?i\.? ?)?#?(\d{5}(?::\d)?)$/u;
const E_NUMBER = /^e ?(\d{3})$/u;
/** A list has more than two. */
const LEAST_ITEMS = 3;
const MOST_WORDS = 4;
const ENDS = /^(?:[?!.:()]|[-–—]+)$/u;
const PARTS = /^[,;]$/u;

type Span = { readonly from: number; readonly to: number };

/** Whether words are one ingredient as a label writes it. */
function isIngredient(text: string): boolean {
  if (WATER.test(text)) return true;
  const number = NUMBERED.exec(text)?.[1];
  if (number !== undefined) return substanceNumbered(number) !== undefined;
  const e = E_NUMBER.exec(text)?.[1];
  return e !== undefined || substanceNamed(text) !== undefined;
}

/** What stands on labels, and in no list of colours for a loaf: "cocoa, rose clay, green clay" is one. */
const isOfLabels = (text: string): boolean => WATER.test(text) || NUMBERED.test(text) || E_NUMBER.test(text);

/** Whether an ingredient gives colour: by its number, or since the catalogue holds it. */
function isColour(text: string): boolean {
  const e = E_NUMBER.exec(text)?.[1];
  if (e !== undefined) return e.startsWith('1') && substanceWithE(e) !== undefined;
  return NUMBERED.test(text) || colourantsNamed(text).length > 0 || DYE.test(text);
}
const DYE =
  /(?<!\p{L})(?:red|blue|yellow|green|orange|rojo|azul|amarillo|verde|tartrazine?a?|allura|brilliant|brillante)(?!\p{L})/u;

/** Words between commas, sentence by sentence. */
function segmentsOf(words: readonly string[]): readonly (readonly Span[])[] {
  const sentences: Span[][] = [];
  let spans: Span[] = [];
  let from = 0;
  for (let at = 0; at <= words.length; at += 1) {
    const isEnd = at === words.length || ENDS.test(words[at]!);
    if (!isEnd && !PARTS.test(words[at]!)) continue;
    if (at > from) spans.push({ from, to: at });
    from = at + 1;
    if (!isEnd) continue;
    sentences.push(spans);
    spans = [];
  }
  return sentences;
}

/** The ingredient that a segment is, ends or begins with; the longest one. */
function ingredientIn(words: readonly string[], { from, to }: Span, side: 'end' | 'start'): Span | undefined {
  for (let length = Math.min(MOST_WORDS, to - from); length > 0; length -= 1) {
    const start = side === 'end' ? to - length : from;
    if (isIngredient(words.slice(start, start + length).join(' ')))
      return { from: start, to: start + length };
  }
  return undefined;
}

/** One list of a sentence: its first item ends a segment, its last begins one, and those between are ingredients whole. */
function listIn(words: readonly string[], segments: readonly Span[]): readonly Span[] {
  for (const [at, segment] of segments.entries()) {
    const first = ingredientIn(words, segment, 'end');
    if (!first) continue;
    const items = [first];
    for (const next of segments.slice(at + 1)) {
      const item = ingredientIn(words, next, 'start');
      if (!item) break;
      items.push(item);
      if (item.to !== next.to) break;
    }
    const texts = items.map(({ from, to }) => words.slice(from, to).join(' '));
    if (texts.length >= LEAST_ITEMS && texts.some(isColour) && texts.some(isOfLabels)) return items;
  }
  return [];
}

/**
 * A label's list of ingredients that a question reads out, whole: "water, glycerin, E102, E133, E202". Water and what only keeps the jar are
 * of it too, which are no things anywhere else. Empty where none is read out. Pure.
 */
export function labelListIn({ words }: Words): readonly NamedThing[] {
  return segmentsOf(words)
    .flatMap(segments => listIn(words, segments))
    .map(({ from, to }) => {
      const text = words.slice(from, to).join(' ');
      return { text, from, to, colourants: WATER.test(text) ? [] : colourantsNamed(text) };
    });
}

/** What else names the same jar by what it is sold as: its label says better what is in it. */
const SOLD_AS =
  /(?<!\p{L})(?:food|cake|icing|alimentari[oa]|tortas?|reposteria|colorante|colou?ring|dye)(?!\p{L})/u;

/** Things with a label's list among them, in whose place nothing else of it stands. Pure. */
export function withLabelList(read: Words, things: readonly NamedThing[]): readonly NamedThing[] {
  const list = labelListIn(read);
  if (list.length === 0) return things;
  const isOfList = ({ from, to }: NamedThing) => list.some(item => item.from < to && from < item.to);
  const rest = things.filter(thing => !isOfList(thing) && !SOLD_AS.test(thing.text));
  return [...rest, ...list].toSorted((a, b) => a.from - b.from);
}
