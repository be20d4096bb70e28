import { fold, foldedWords, wordSet } from '../text/fold.ts';
import { nearestFew } from '../text/spelling/closest-name.ts';
import { distance } from '../text/spelling/edit-distance.ts';
import { whenAsked } from '../when-asked.ts';
import { colourants } from './catalogue.ts';
import type { Colourant } from './colourant.ts';

/** Longer texts are no names; cut, so that work stays bounded. */
const longestName = 80;

/** How much farther a name counts when the text is only like its beginning, as a share of its length. */
const unfinished = 0.05;
/** And when it starts with another letter. */
const otherStart = 0.1;

type Index = ReadonlyMap<string, readonly Colourant[]>;

function indexOf(keysOf: (colourant: Colourant) => readonly string[]): Index {
  const index = new Map<string, Colourant[]>();
  for (const colourant of colourants) {
    for (const key of new Set(keysOf(colourant))) {
      const entries = index.get(key);
      if (entries === undefined) index.set(key, [colourant]);
      else entries.push(colourant);
    }
  }
  return index;
}

const ownNames = (colourant: Colourant): readonly string[] => [
  colourant.id,
  colourant.names.en,
  colourant.names.es,
];
const allNames = (colourant: Colourant): readonly string[] => [...ownNames(colourant), ...colourant.synonyms];

/** Looked through in this order: the first index that knows the text answers. */
const indexes: readonly { readonly index: () => Index; readonly key: (text: string) => string }[] = [
  { index: whenAsked(() => indexOf(one => ownNames(one).map(fold))), key: fold },
  { index: whenAsked(() => indexOf(one => one.synonyms.map(fold))), key: fold },
  { index: whenAsked(() => indexOf(one => allNames(one).map(wordSet))), key: wordSet },
  { index: whenAsked(() => indexOf(({ inci }) => (inci === undefined ? [] : [fold(inci)]))), key: fold },
];

const wordsByEntry = whenAsked(() =>
  colourants.map(colourant => ({
    colourant,
    names: allNames(colourant).map(name => new Set(foldedWords(name))),
  })),
);
const nameRows = whenAsked(() =>
  colourants.flatMap(colourant =>
    [...new Set(allNames(colourant).map(fold))].map(name => ({ colourant, name, sorted: wordSet(name) })),
  ),
);

/** What lakes are laid down on: named alone it is no colour. */
const BASES: ReadonlySet<string> = new Set(
  'talc talco barium bario aluminium aluminio calcium calcio strontium estroncio zirconium circonio'.split(
    ' ',
  ),
);

/** The dear stigmas are no entry's, though turmeric is called Indian saffron. */
const OF_ANOTHER: ReadonlySet<string> = new Set(['saffron', 'azafran']);

/** Grades (water- or oil-dispersible) stand behind the general entry when both match a number or an INCI name. */
function withoutGrades(matches: readonly Colourant[]): readonly Colourant[] {
  const general = matches.filter(colourant => colourant.gradeOf === undefined);
  return general.length > 0 ? general : matches;
}

/**
 * The entries with a Colour Index number, written with or without "CI": those that are only it,
 * else those it comes first in, else those that contain it.
 */
export function colourantsByNumber(text: string): readonly Colourant[] {
  const number = /^(?:c\.?\s?i\.?|colou?r index)?[\s#:.]*(\d{5}(?::\d)?)$/i.exec(text.trim())?.[1];
  if (number === undefined) return [];
  const containing = withoutGrades(colourants.filter(colourant => colourant.ci.includes(number)));
  const only = containing.filter(colourant => colourant.ci.length === 1);
  const first = containing.filter(colourant => colourant.ci[0] === number);
  return only.length > 0 ? only : first.length > 0 ? first : containing;
}

/** The entries that have exactly this name, synonym or INCI name, but for accents, spelling and word order. */
export function colourantsNamed(text: string): readonly Colourant[] {
  for (const { index, key } of indexes) {
    const matches = index().get(key(text));
    if (matches !== undefined) return withoutGrades(matches);
  }
  return [];
}

/** Every entry that a text may mean: one where it is clear, several where it is not ("pink mica"), none where it is unknown. */
export function colourantsMeant(text: string): readonly Colourant[] {
  const byNumber = colourantsByNumber(text);
  if (byNumber.length > 0) return byNumber;
  const byName = colourantsNamed(text);
  if (byName.length > 0) return byName;
  const asked = foldedWords(text);
  if (asked.length === 1 && OF_ANOTHER.has(asked[0]!)) return [];
  if (asked.some(word => BASES.has(word)) && asked.every(word => BASES.has(word) || word === 'lake'))
    return [];
  const partial = wordsByEntry().filter(
    // Within one name: "red" of one synonym and "mars" of another make no colour of this entry.
    entry => asked.length > 0 && entry.names.some(words => asked.every(word => words.has(word))),
  );
  return withoutGrades(partial.map(entry => entry.colourant));
}

/** The catalogue entries whose names are nearest to a text by edit distance, nearest first. */
export function nearestColourants(text: string, limit: number): readonly Colourant[] {
  // Spelled out, some characters become eighteen.
  const name = fold(text.slice(0, longestName)).slice(0, longestName);
  const sorted = wordSet(name);
  return nearestFew(nameRows(), limit, (row, within) => {
    // Hardly anybody gets the first letter wrong.
    const start = row.name[0] === name[0] || row.sorted[0] === sorted[0] ? 0 : otherStart;
    const length = Math.max(name.length, row.name.length, 1);
    // So many slips would be too many, but for what is lost where fractions are rounded.
    const most = (within - start) * length + 1e-6;
    const edits = Math.min(distance(name, row.name, most), distance(sorted, row.sorted, most));
    // What is as long as the row's name is no beginning of it: that would be the same distance again.
    const isBegun = name.length < row.name.length;
    const mostBegun = (within - start - unfinished) * Math.max(name.length, 1) + 1e-6;
    const begun =
      (isBegun ? distance(name, row.name.slice(0, name.length), mostBegun) : edits) /
      Math.max(name.length, 1);
    return { thing: row.colourant, far: Math.min(edits / length, begun + unfinished) + start };
  });
}
