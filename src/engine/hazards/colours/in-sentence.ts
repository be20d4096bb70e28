import { groupedBy } from '../../grouped.ts';
import { spaced } from '../../over-lines.ts';
import { foldedWords } from '../../text/fold.ts';
import { distance } from '../../text/spelling/edit-distance.ts';
import { BARRED } from './barred.ts';
import type { BarredColour, BarredReason } from './barred-colour.ts';

/** Says nothing of which thing is meant: "tinte para el pelo". */
const ARTICLES: ReadonlySet<string> = new Set('the a an my some el la los las mi mis'.split(' '));
/** In a sentence these are other words as often as they are a pigment. */
const EVERYDAY: ReadonlySet<string> = new Set(
  spaced`
    cobalt cobalto vermilion vermillion bermellon lead paint ink minium greta galena oleo nickel copper
    metal magnesium tinta toner acrylic acrilico labial mascara delineador
  `.split(' '),
);
/** Only lends its name, or goes onto the finished bar. */
const BESIDE =
  /^(?:mica|hue|shade|tone|tono|scent|scented|fragrance|fragancia|free|brush|brushe|marker|pen)$/u;
/** Names that hold a poison's and are allowed. */
const ALLOWED = /\b(?:chromium|chrome|cromo) (?:oxide|green oxide|hydroxide)\b|\boxido de cromo\b/u;

type Row = { readonly words: readonly string[]; readonly reason: BarredReason };
const telling = (text: string) => foldedWords(text).filter(word => !ARTICLES.has(word));
const rowsOf = ({ names, reason }: BarredColour): readonly Row[] =>
  names
    .split('; ')
    .map(name => ({ words: telling(name), reason }))
    .filter(({ words }) => !words.some(word => /\d/u.test(word)))
    .filter(({ words }) => words.length > 1 || !EVERYDAY.has(words[0] ?? ''));
const BY_FIRST: ReadonlyMap<string, readonly Row[]> = new Map(
  [...groupedBy(BARRED.flatMap(rowsOf), ({ words }) => words[0] ?? '')].map(([first, rows]) => [
    first,
    rows.toSorted((a, b) => b.words.length - a.words.length),
  ]),
);

/** Names of poisons that a slip of the finger is looked for; long ones, for which no everyday word stands one letter off. */
const POISONS: readonly string[] = spaced`
  cadmium cadmio mercury mercurio cinnabar cinabrio arsenic arsenico realgar orpiment oropimente antimony
  antimonio chromate cromato dichromate dicromato cobalt cobalto vermilion bermellon rhodamine rodamina
  uranium uranio
`.split(' ');

/** The poison that a word is one letter from, or undefined; the poison's own name is no slip. */
export function poisonSlipped(word: string): string | undefined {
  if (word.length < 6 || word.length > 12) return undefined;
  return POISONS.includes(word) ? undefined : POISONS.find(poison => distance(word, poison) === 1);
}

/**
 * What of a sentence is the name of a colour that stays out of soap, as the table has it, and in a sentence that says
 * "colour" itself; undefined where none is. Also a poison that is one letter off.
 * @example barredInSentence('could I put hair dye in my soap?') // 'hair dye'
 */
export function barredInSentence(sentence: string): string | undefined {
  const clauses = sentence.slice(0, 600).split(APART).map(telling);
  for (const words of clauses) {
    const named = barredAmong(words);
    if (named !== undefined) return named;
  }
  const words = clauses.flat();
  return words.some(word => BESIDE.test(word))
    ? undefined
    : words.find(word => poisonSlipped(word) !== undefined);
}

/** "Green chrome, yellow oxide" are two things of a list, and no chrome yellow; a comma within a figure parts nothing. */
const APART = /[,;](?!\d)|[()\n]/u;

function barredAmong(words: readonly string[]): string | undefined {
  for (let at = 0; at < words.length; at += 1) {
    const row = (BY_FIRST.get(words[at] ?? '') ?? []).find(({ words: name }) =>
      name.every((word, index) => words[at + index] === word),
    );
    if (!row) continue;
    const after = words[at + row.words.length] ?? '';
    const around = words.slice(Math.max(0, at - 1), at + row.words.length + 2).join(' ');
    if (!BESIDE.test(after) && !ALLOWED.test(around)) return row.words.join(' ');
  }
  return undefined;
}
