import { byLanguage, type Language } from '../language.ts';
import { fold, foldedWords } from '../text/fold.ts';
import { colourants } from './catalogue.ts';
import { nearestColourants } from './find.ts';

/** What an autocomplete menu shows: `value` finds the entry again. */
export type Completion = { readonly value: string; readonly name: string };

/** The platform's menu length. */
const longestMenu = 25;

const rows = colourants.map(colourant => ({
  colourant,
  names: byLanguage(language => fold(colourant.names[language])),
  others: [...colourant.synonyms, colourant.inci ?? '', colourant.id].map(fold),
  words: [...new Set([...Object.values(colourant.names), ...colourant.synonyms].flatMap(foldedWords))],
}));

/** 0 is best; undefined does not match. */
function rank(row: (typeof rows)[number], typed: string, language: Language): number | undefined {
  if (row.names[language].startsWith(typed)) return 0;
  if (row.names[language].includes(` ${typed}`)) return 1;
  if (Object.values(row.names).some(name => name.startsWith(typed))) return 2;
  if (row.others.some(name => name.startsWith(typed))) return 3;
  if (row.colourant.ci.some(number => number.startsWith(typed.replace(/^ci ?/, '') || '-'))) return 4;
  const asked = typed.split(' ');
  if (asked.every(word => row.words.some(known => known.startsWith(word)))) return 5;
  return undefined;
}

/**
 * The catalogue entries that best continue what a member has typed, best first, at most `limit` (and 25).
 * Nothing typed gives the head of the catalogue; nothing that matches gives the nearest names.
 */
export function completeColourants(
  prefix: string,
  language: Language,
  limit = longestMenu,
): readonly Completion[] {
  const length = Math.max(0, Math.min(limit, longestMenu));
  const typed = fold(prefix.slice(0, 80));
  const ranked = rows
    .map(row => ({ colourant: row.colourant, rank: typed === '' ? 0 : rank(row, typed, language) }))
    .filter((row): row is { colourant: (typeof row)['colourant']; rank: number } => row.rank !== undefined)
    .sort((a, b) => a.rank - b.rank);
  const found = ranked.length > 0 ? ranked.map(row => row.colourant) : nearestColourants(typed, 3);
  return found.slice(0, length).map(({ id, names }) => ({ value: id, name: names[language] }));
}
