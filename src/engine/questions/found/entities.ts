import { knownOil } from '../../batch/oils/find-oil.ts';
import type { Colourant } from '../../colourants/colourant.ts';
import { colourantsMeant, colourantsNamed } from '../../colourants/find.ts';
import { barredIn } from '../../hazards/index.ts';
import { spaced } from '../../over-lines.ts';
import { substanceNamed, substanceNumbered, substanceWithE } from '../../stability/names.ts';
import { fold } from '../../text/fold.ts';
import { valuesOn } from '../../values-on.ts';
import { isToothpick } from './toothpick.ts';
import { PLAIN, type Words } from './words-of.ts';

/** Something named in a question: as it was typed (slips put right), where, and what it may be. */
export type NamedThing = {
  readonly text: string;
  /** First word and the one after the last, in the question's words. */
  readonly from: number;
  readonly to: number;
  /** Catalogue entries it may mean; none for a mere ingredient or a colour that is refused. */
  readonly colourants: readonly Colourant[];
};

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
  const things = namedIn(words).filter(one => !isToothpick(words.words, one));
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
  const shared = [...found, ...headShared(words, found)];
  return [
    ...shared,
    ...headApart(words, shared),
    ...oneApart(words, shared),
    ...hydrateApart(words, shared),
  ].sort((a, b) => a.from - b.from);
}

/** Of English names: in Spanish the head stands before its hue. */
const HUE_BEFORE = /^(?:red|green|blue|yellow|orange|violet|pink|black|brown|white)$/u;
const HUE =
  /^(?:red|green|blue|yellow|orange|violet|pink|black|brown|white|roj[oa]|verde|azul|amarill[oa]|naranja|violeta|rosa|negr[oa]|marron|blanc[oa])$/u;
const HEAD_FIRST = /^((?:oxido(?: de hierro)?|mica|arcilla|ultramar) )\p{L}+$/u;
const HEAD_LAST = /^\p{L}+( (?:iron )?(?:oxide|mica|clay|ultramarine))s?$/u;

/** What joins the last of several hues to the one beside the shared word; further ones may stand between commas. */
const LAST_JOINT = /^(?:and|n|y|e|&|\+)$/u;
const JOINT = /^(?:and|n|y|e|&|\+|,)$/u;
const ARTICLE = /^(?:the|el|la|los|las)$/u;

/** The hues that lie behind one another from `from` on in steps of `step`, the last of them in reading order or the first behind "and". */
function huesBeside(words: readonly string[], from: number, step: 1 | -1): readonly number[] {
  const hues: number[] = [];
  const joints: string[] = [];
  const past = (at: number) => (ARTICLE.test(words[at] ?? '') ? at + step : at);
  for (let at = past(from); JOINT.test(words[at] ?? ''); ) {
    const hue = past(at + step);
    if (!HUE.test(words[hue] ?? '')) break;
    hues.push(hue);
    joints.push(words[at]!);
    at = past(hue + step);
  }
  // "Red, yellow and black oxide": the joint beside the last one named says that it is a list.
  return LAST_JOINT.test((step === 1 ? joints.at(-1) : joints[0]) ?? '') ? hues : [];
}

/** "Óxido rojo y amarillo", "red, yellow and black oxide": things that are named by one word. */
function headShared(words: readonly string[], found: readonly NamedThing[]): readonly NamedThing[] {
  return found.flatMap(({ text, from, to }) => {
    const first = HEAD_FIRST.exec(text)?.[1];
    const last = HEAD_LAST.exec(text)?.[1];
    if ((first ?? last) === undefined) return [];
    const hues = first === undefined ? huesBeside(words, from - 1, -1) : huesBeside(words, to, 1);
    return hues.flatMap(at => {
      if (found.some(one => at >= one.from && at < one.to)) return [];
      const name = first === undefined ? `${words[at]}${last}` : `${first}${words[at]}`;
      const colourants = colourantsMeant(name);
      return colourants.length > 0 ? [{ text: name, from: at, to: at + 1, colourants }] : [];
    });
  });
}

const PLURAL_HEAD: ReadonlyMap<string, (hue: string) => string> = new Map([
  ['oxides', hue => `${hue} iron oxide`],
  ['oxidos', hue => `oxido de hierro ${hue}`],
  ['ultramarines', hue => `${hue} ultramarine`],
  ['ultramares', hue => `ultramar ${hue}`],
]);

/** Hues that run on with no more than marks and articles between them: "red black yellow", "negro, rojo y amarillo". */
function huesRunning(words: readonly string[], from: number): readonly number[] {
  const hues = [from];
  for (let at = from + 1; at < words.length; at += 1) {
    if (HUE.test(words[at]!)) hues.push(at);
    // "An olive green, the yellow one": an article goes on with a list behind "and" alone.
    else if (!JOINT.test(words[at]!) && !(ARTICLE.test(words[at]!) && LAST_JOINT.test(words[at - 1]!))) break;
  }
  return hues;
}

/** "With oxides? The yellow and the black": what is named once for all stands apart, and only hues that run on are of it. */
function headApart(words: readonly string[], found: readonly NamedThing[]): readonly NamedThing[] {
  const isFree = (at: number) => !found.some(one => at >= one.from && at < one.to);
  const at = words.findIndex((word, index) => PLURAL_HEAD.has(word) && isFree(index));
  if (at < 0 || found.some(({ colourants }) => colourants.length > 0)) return [];
  const head = PLURAL_HEAD.get(words[at]!)!;
  const first = words.findIndex((word, index) => HUE.test(word) && huesRunning(words, index).length > 1);
  if (first < 0) return [];
  return huesRunning(words, first).flatMap(hue => {
    const name = head(words[hue]!);
    const colourants = colourantsMeant(name);
    return colourants.length > 0 ? [{ text: name, from: hue, to: hue + 1, colourants }] : [];
  });
}

const HEAD_ALONE: ReadonlyMap<string, (of: string) => string> = new Map([
  ['oxide', of => `${of} iron oxide`],
  ['oxido', of => `oxido de hierro ${of}`],
  ['clay', of => `${of} clay`],
  ['arcilla', of => `arcilla ${of}`],
]);
const BEFORE_ONE = /^(?:the|of|el|la|de|french|francesa|brazilian)$/u;
const AFTER_ONE = /^(?:ones?|francesa|[?!;,.:()])$/u;

/** "To wet oxide? the red one", "clay: slurried? 15 g of french green": one hue stands apart from what it is the hue of. */
function oneApart(words: readonly string[], found: readonly NamedThing[]): readonly NamedThing[] {
  const isFree = (at: number) => !found.some(one => at >= one.from && at < one.to);
  const heads = words.flatMap((word, at) => (HEAD_ALONE.has(word) && isFree(at) ? [at] : []));
  if (heads.length !== 1 || found.some(({ colourants }) => colourants.length > 0)) return [];
  const hues = words.flatMap((word, at) => (HUE.test(word) && isFree(at) ? [at] : []));
  const [hue] = hues;
  if (hues.length !== 1 || hue === undefined) return [];
  const isApart =
    hue > heads[0]! + 1 && BEFORE_ONE.test(words[hue - 1]!) && AFTER_ONE.test(words[hue + 1] ?? '?');
  if (!isApart) return [];
  const text = HEAD_ALONE.get(words[heads[0]!]!)!(words[hue]!);
  const colourants = colourantsMeant(text);
  return colourants.length > 0 ? [{ text, from: hue, to: hue + 1, colourants }] : [];
}

const CHROMIUM = /\b(?:chrom(?:e|ium)|cromo)\b/u;
const HYDRATED = /^(?:hydrated?|hidratad[oa])$/u;
const HYDRATED_NAME = 'hydrated chromium oxide';

/** "El óxido de cromo o el hidratado": the second is of the same metal. */
function hydrateApart(words: readonly string[], found: readonly NamedThing[]): readonly NamedThing[] {
  const at = words.findIndex(word => HYDRATED.test(word));
  const isTaken = found.some(one => at >= one.from && at < one.to);
  if (at < 0 || isTaken || !found.some(({ text }) => CHROMIUM.test(text))) return [];
  return [{ text: HYDRATED_NAME, from: at, to: at + 1, colourants: colourantsMeant(HYDRATED_NAME) }];
}

const isEdge = (word: string) => EDGE.has(word) || /^\d{1,4}(?:[.,/]\d+)?$/u.test(word);

const catalogued = (span: readonly string[]): readonly Colourant[] | undefined => {
  // "CI" and its number stand apart.
  const meant = meantBy(span);
  return meant.length > 0 ? meant : undefined;
};

/** "A soft pastel yellow" tells how pale; a stick of it is another thing. */
const SOFT_PASTEL = /^(?:soft )?pastel$/u;

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
