import { groupedBy } from '../../grouped.ts';
import { spaced, unbroken } from '../../over-lines.ts';
import { refuse } from '../../refusal.ts';
import { cut } from '../../text/excerpt.ts';
import { foldedWords } from '../../text/fold.ts';
import { BARRED } from './barred.ts';
import type { BarredColour, BarredReason } from './barred-colour.ts';
import { poisonSlipped } from './in-sentence.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** `hue` is true where the name is also given to a mere hue. */
    'colour-barred': { readonly text: string; readonly reason: BarredReason; readonly hue: boolean };
  }
}

/** A barred colour that a text names. */
export type Barred = { readonly reason: BarredReason; readonly hue: boolean; readonly colour: BarredColour };

/** Longer texts are lists and no names. */
const LONGEST_NAME = 4_000;

/** With one of these beside it a barred name is only a hue, or is said not to be in it. */
const HUE_WORDS = new Set(
  spaced`
    mica hue shade tone like look style match matching imitation replacement substitute alternative free
    tono color imitacion estilo libre sin non not neon ultramarine fragrance
  `.split(' '),
);
/** Names that hold a word of the table and are something else. */
const OTHERWISE = new RegExp(
  unbroken`
    \b(?:oxido de cromo|chrom(?:e|ium) (?:oxide|hydroxide)|hidroxido de cromo|lead free|plomo libre|
    magnesium (?:silicate|carbonate|stearate|oxide|hydroxide|myristate|aluminium)\w*|(?:carbonate|carbonato|
    silicato|oxido|estearato|hidroxido) de magnesio|lithium magnesium \w+|magnesium sodium \w+|mint chalk|
    bath paint|white ink cap|vegetable carbon|pyrophosphate|acrylic copolymer|verde esmeralda oxido|
    oxido verde esmeralda)\b
  `,
  'u',
);

/** "Pastels" are sticks for paper; in the singular the word is a strength of ours, and part of other names. */
const STICKS = /^\s*(?:pastels|pasteles)\s*$/iu;

type Row = { readonly words: readonly string[]; readonly hue: boolean; readonly colour: BarredColour };

const rowsOf = (colour: BarredColour): readonly Row[] => {
  const rows = (names: string, hue: boolean) =>
    names.split('; ').map(name => ({ words: foldedWords(name), hue, colour }));
  return [...rows(colour.names, false), ...(colour.hues === undefined ? [] : rows(colour.hues, true))];
};

const ROWS: readonly Row[] = BARRED.flatMap(rowsOf);
/** Rows by their first word: a look-up costs no more for a longer table. Longer names first. */
const BY_FIRST: ReadonlyMap<string, readonly Row[]> = new Map(
  [...groupedBy(ROWS, ({ words }) => words[0] ?? '')].map(([first, rows]) => [
    first,
    rows.toSorted((a, b) => b.words.length - a.words.length),
  ]),
);
const BY_NUMBER: ReadonlyMap<string, BarredColour> = new Map(
  BARRED.flatMap(colour => (colour.ci ?? []).map(number => [number, colour] as const)),
);

const BY_E: ReadonlyMap<string, BarredColour> = new Map(
  BARRED.flatMap(colour => (colour.e ?? []).map(number => [number, colour] as const)),
);

function namedIn(words: readonly string[]): Row | undefined {
  let hue: Row | undefined;
  // Words that a hue's name has used up: the cobalt of "azul cobalto" is no metal beside it.
  let from = 0;
  for (let at = 0; at < words.length; at += 1)
    for (const row of BY_FIRST.get(words[at] ?? '') ?? []) {
      if (at < from || !row.words.every((word, index) => words[at + index] === word)) continue;
      if (!row.hue) {
        // "Cobalt blue" is the hue although "cobalt" alone is the metal.
        const longer = (BY_FIRST.get(words[at] ?? '') ?? []).find(
          other =>
            other.hue &&
            other.words.length > row.words.length &&
            other.words.every((word, index) => words[at + index] === word),
        );
        if (!longer) return row;
        hue ??= longer;
        from = at + longer.words.length;
      } else {
        hue ??= row;
        from = at + row.words.length;
      }
    }
  return hue;
}

/** A colour by its number of the Colour Index or of the EU's food law. */
function numberedIn(part: string): Barred | undefined {
  if (!/\d/.test(part)) return undefined;
  for (const [, number = ''] of part.matchAll(/(?<!\d)(\d{5}(?::\d)?)(?!\d)/g)) {
    const colour = BY_NUMBER.get(number);
    if (colour) return { reason: colour.reason, hue: false, colour };
  }
  for (const [, number = ''] of part.matchAll(/\bE[ -]?(\d{3})[a-z]?\b/giu)) {
    const colour = BY_E.get(`E${number}`);
    if (colour) return { reason: colour.reason, hue: false, colour };
  }
  return undefined;
}

function barredPart(part: string): Barred | undefined {
  const numbered = numberedIn(part);
  if (numbered) return numbered;
  const words = foldedWords(part.replaceAll(/['’]/g, '')).flatMap(word => word.split(':'));
  const row = STICKS.test(part) ? BY_FIRST.get('oil')?.[0] : namedIn(words);
  if (!row || OTHERWISE.test(words.join(' '))) return undefined;
  // "Resin mica" is a barred name that holds such a word itself.
  const onlyHue = words.some(word => HUE_WORDS.has(word) && !row.words.includes(word));
  if (onlyHue) return undefined;
  return { reason: row.colour.reason, hue: row.hue, colour: row.colour };
}

/**
 * The poisonous, prohibited or misplaced colour that a name or an ingredient list holds, or undefined. Names are looked
 * for part by part (commas, signs, line breaks), in both languages; with "mica", "tone", "-free" and the like in the same
 * part they are hues and pass.
 */
export function barredIn(text: string): Barred | undefined {
  const parts = text.slice(0, LONGEST_NAME).split(/[,;+/()\n]/);
  const all = parts.map(barredPart).filter(found => found !== undefined);
  return all.find(({ hue }) => !hue) ?? all[0];
}

/** Reasons that stand whatever else a label lists beside it. */
const POISONS: ReadonlySet<BarredReason> = new Set([
  'cadmium',
  'lead',
  'mercury',
  'arsenic',
  'antimony',
  'chromate',
  'oxidiser',
  'nickel',
  'cobalt',
  'radioactive',
  'asbestos',
  'us-delisted',
  'burning-plant',
]);

/** What is sold for something else: a name that only its own label can clear. */
const MISPLACED: ReadonlySet<BarredReason> = new Set([
  'paint',
  'crayon',
  'candle-dye',
  'cloth-dye',
  'food-colouring',
  'make-up',
]);

/** Throws `colour-barred` where a colourant's name asks for one that must stay out of soap. */
export function refuseBarred(text: string): void {
  const found = barredIn(text) ?? slippedIn(text);
  if (found) refuse('colour-barred', { text: cut(text, 80), reason: found.reason, hue: found.hue });
}

/** A poison that a name is one letter off: "calmium red". */
function slippedIn(text: string): Barred | undefined {
  const poison = foldedWords(text.slice(0, 200)).map(poisonSlipped).find(Boolean);
  return poison === undefined ? undefined : barredIn(`${poison} pigment`);
}

/** Whether a name is one of a poison, or of a hue that a poison once gave. Pure. */
export function isPoison(name: string): boolean {
  const found = barredIn(name);
  return found !== undefined && POISONS.has(found.reason);
}

/** Throws `colour-barred` where an ingredient list holds a poison; a dye inside a resin is for the law to judge. */
export function refusePoisonIn(list: string): void {
  const found = barredIn(list);
  if (found && POISONS.has(found.reason))
    refuse('colour-barred', { text: cut(list, 80), reason: found.reason, hue: found.hue });
}

/**
 * Throws `colour-barred` where a jar's own name is a barred substance, whatever it is described as: a name on a label is
 * nearer to what is in the jar than a memory of it. A mere hue passes, and so does a name of things that are sold for
 * something else, which an ingredient list or a description may clear.
 */
export function refuseBarredJar(name: string): void {
  const found = barredIn(name);
  if (found && !found.hue && !MISPLACED.has(found.reason))
    refuse('colour-barred', { text: cut(name, 80), reason: found.reason, hue: false });
}
