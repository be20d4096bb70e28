import { knownOil } from '../../../batch/oils/find-oil.ts';
import type { Colourant } from '../../../colourants/colourant.ts';
import { colourantsMeant, colourantsNamed } from '../../../colourants/find.ts';
import { barredIn } from '../../../hazards/index.ts';
import { spaced } from '../../../over-lines.ts';
import { substanceNamed, substanceNumbered, substanceWithE } from '../../../stability/names.ts';
import { fold } from '../../../text/fold.ts';
import { valuesOn } from '../../../values-on.ts';
import { PLAIN, type Words } from '../words-of.ts';
import { withLabelList } from './label-list.ts';
import type { NamedThing } from './named-thing.ts';
import { HEAD_ALONE, HUE_BEFORE, headApart, headShared, hydrateApart, oneApart } from './named-together.ts';
import { isToothpick } from './toothpick.ts';

const EDGE = new Set(
  spaced`
    a an al and con de del el en for in la las los of para the to un una y o or my mi mis some this that is
    it its as i you me do does will with per por lo le su your by on at be if so is are pigment pigmento
    powder polvo dye colour color shade tint tone tono want need like soap jabon batter mezcla masa oil
    oils aceite aceites water agua bars bar no not put use add poner echar usar puedo can
  `.split(' '),
);
/** Certified colours end in a figure: "red 40", "blue 1". */
const NUMBERED =
  /(?:red|rojo|blue|azul|yellow|amarillo|green|verde|orange|naranja|violet|ext)(?: no)? \d{1,2}$/u;
const MARK = /^(?:[?!;,.:()+&/=%]|[-–—]+)$/u;
const MOST_IN_NAME = 6;

/** Single words that name a colour far more often than what colours. */
const HUES = new Set(
  spaced`
    red green blue yellow orange purple violet pink white black brown grey gold silver bronze copper pearl
    cream beige rojo roja verde azul amarillo amarilla naranja morado morada violeta rosa blanco blanca
    negro negra marron gris oro plata dorado dorada dorados plateado cafe chocolate turquoise teal lavender
    lavanda turquesa mint menta neon earth clear natural lake laca oxide oxido clay arcilla base iron
    hierro raw light dark
  `.split(' '),
);

/** A name does not run over what joins a sentence: "gold mica in the olive one". */
const JOINS = /^(?:in|the|for|with|to|or|and|an?|some|en|con|para|o|y|un|una|is|vs|than|que)$/u;

/** Whether a text is one of the entry's own names, word by word. */
const isNameOf = ({ names, synonyms }: Colourant, text: string): boolean =>
  [names.en, names.es, ...synonyms].some(name => fold(name) === fold(text));

/** One name bears what it is once. */
const REPEATED_HEAD = /\b(mica|oxide|oxido|clay|arcilla|lake|laca|ultramarine|ultramar)\b.*\b\1\b/u;

function meantBy(words: readonly string[]): readonly Colourant[] {
  const text = words.join(' ');
  if (words.length === 1)
    return HUES.has(text) || HUES.has(text.replace(/s$/u, '')) ? [] : colourantsNamed(text);
  // "White white" is how strong, no thing.
  if (new Set(words).size === 1) return [];
  const isJoined = words.some(word => JOINS.test(word));
  const named = REPEATED_HEAD.test(text)
    ? colourantsNamed(text).filter(one => isNameOf(one, text))
    : colourantsNamed(text);
  // "Red oxide and brown oxide" are two, "cocoa for brown" is one and what it is for; "salt and pepper" may be a name.
  if (named.length > 0 && (!isJoined || named.some(one => isNameOf(one, text)))) return named;
  // "Red oxide yellow oxide" without a comma are two.
  if (isJoined || REPEATED_HEAD.test(text)) return [];
  return /\b(?:mica|oxide|oxido|lake|laca|clay|arcilla|ultramarine|ultramar|neon|dye|colorante|chromium|chrome|iron)s?\b/u.test(
    text,
  )
    ? colourantsMeant(text)
    : [];
}

/**
 * The colourants named in a question, longest names first, none of them over another; colours that are refused by name and
 * mere ingredients of labels are among them without an entry.
 */
export function thingsIn(words: Words): readonly NamedThing[] {
  const before = known.get(words);
  if (before) return before;
  const things = withLabelList(
    words,
    namedIn(words).filter(one => !isToothpick(words.words, one)),
  );
  known.set(words, things);
  return things;
}
const known = valuesOn<Words, readonly NamedThing[]>();

function namedIn({ words }: Words): readonly NamedThing[] {
  const found: NamedThing[] = [];
  const isTaken = (from: number, to: number) => found.some(one => from < one.to && one.from < to);
  const edges = words.map(isEdge);
  const marks = words.map(word => MARK.test(word));
  for (const reads of [catalogued, refused, listed]) {
    for (let length = Math.min(MOST_IN_NAME, words.length); length > 0; length -= 1)
      for (let from = 0; from + length <= words.length; from += 1) {
        const last = from + length - 1;
        if (edges[from] || marks[last]) continue;
        const span = words.slice(from, from + length);
        if ((edges[last] && !NUMBERED.test(span.join(' '))) || span.some((_, at) => marks[from + at]))
          continue;
        // The head of the name before: "yellow oxide chrome green".
        if (length > 1 && HEAD_ALONE.has(span[0]!) && HUE_BEFORE.test(words[from - 1] ?? '')) continue;
        if (isTaken(from, from + length)) continue;
        const colours = reads(span);
        if (colours) found.push({ text: span.join(' '), from, to: from + length, colourants: colours });
      }
  }
  const isHue = ({ text, colourants }: NamedThing) => colourants.length === 0 && BUTTER_YELLOW.test(text);
  const meant = found
    .filter(one => !isOilOf(words, one))
    .filter((one, _, all) => !(isHue(one) && all.some(({ colourants }) => colourants.length > 0)));
  const shared = [...meant, ...headShared(words, meant)];
  return [
    ...shared,
    ...headApart(words, shared),
    ...oneApart(words, shared),
    ...hydrateApart(words, shared),
  ].sort((a, b) => a.from - b.from);
}

/** "Aceite de maravilla", "sunflower oil": the fat that bears a plant's name. */
const isOilOf = (words: readonly string[], { text, from, to }: NamedThing): boolean =>
  (words[from - 1] === 'de' && words[from - 2] === 'aceite' && knownOil(`aceite de ${text}`) !== undefined) ||
  (words[to] === 'oil' && knownOil(`${text} oil`) !== undefined);

const isEdge = (word: string) => EDGE.has(word) || /^\d{1,4}(?:[.,/]\d+)?$/u.test(word);

const catalogued = (span: readonly string[]): readonly Colourant[] | undefined => {
  // "CI" and its number stand apart.
  const meant = meantBy(span);
  return meant.length > 0 ? meant : undefined;
};

/** "A soft pastel yellow" tells how pale; a stick of it is another thing. */
const SOFT_PASTEL = /^(?:soft )?pastel$/u;

/** A dye that is barred, and a hue of every shade card: where another colourant is named it is that. */
export const BUTTER_YELLOW = /\b(?:butter yellow|amarillo mantequilla)\b/u;
/** Kitchen colours and the like that are refused by name wherever they are named. */
const refused = (span: readonly string[]): readonly Colourant[] | undefined => {
  // "1 lb oils pastel" is how much and how strong, and no crayon.
  if (span.includes('oils') || SOFT_PASTEL.test(span.join(' '))) return undefined;
  const barred = span.length <= 3 ? barredIn(span.join(' ')) : undefined;
  // A name ends where it is whole: "food colouring work" says one word more.
  if (span.length > 1 && barredIn(span.slice(0, -1).join(' ')) !== undefined) return undefined;
  return barred && !barred.hue ? [] : undefined;
};

/** Ingredients as labels list them, by name or Colour Index number. */
const listed = (span: readonly string[]): readonly Colourant[] | undefined => {
  const text = span.join(' ');
  const number = /^(?:ci |c\.i\. )?#?(\d{5}(?::\d)?)$/u.exec(text)?.[1];
  if (/^e ?\d{3}$/u.test(text))
    return substanceWithE(text.replace(/^e ?/u, '')) === undefined ? undefined : [];
  if (number !== undefined) return substanceNumbered(number) === undefined ? undefined : [];
  if (/^(?:neons? (?:pigments?|pigmentos?|powders?|dyes?|colou?rs?)|pigmentos? neon)$/u.test(text)) return [];
  if (span.length === 1 && (HUES.has(text) || PLAIN.has(text) || text.length < 4)) return undefined;
  return substanceNamed(text) !== undefined && knownOil(text) === undefined ? [] : undefined;
};
