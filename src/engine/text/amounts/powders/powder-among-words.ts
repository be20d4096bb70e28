import { colourantsMeant } from '../../../colourants/find.ts';
import { unbroken } from '../../../over-lines.ts';
import { plainText } from '../../../quantities/number.ts';
import { spokenAmounts } from '../../../quantities/spoken/spoken-amounts.ts';
import { isEverydayWord, isHarmlessWord } from '../everyday-words.ts';
import { isStopWord } from '../stop-words.ts';

const LONGEST_NAME = 4;
const words = (text: string): readonly string[] => text.match(/[\p{L}\p{M}'’]+/gu) ?? [];

/** "No more", "nomás" and the like between an amount and what it is of. */
export const NO_MORE = new RegExp(
  unbroken`
    [\s,]*(?<!\p{L})(?:(?:and |y )?(?:not (?:one|a (?:gram|bit|pinch|grain)) more|ni (?:un[oa]?|(?:un|
    una) (?:gramo|pizca|poco)) m[aá]s)|no more|nothing more|not more|no m[aá]s|nada m[aá]s|
    nom[aá]s)(?!\p{L})(?:\s*,)?
  `,
  'giu',
);

/**
 * A text from its first figure on, where only words that change no amount and name no colourant stand before it: "le puse 2
 * cucharaditas de carbón" is "2 cucharaditas de carbón". Undefined where nothing can be left out. Pure.
 */
export function powderFromFigure(text: string): string | undefined {
  const said = spokenAmounts(plainText(text).replace(NO_MORE, ' '));
  const at = said.search(/(?<![\p{L}\d.,/])\d/u);
  // Less than nothing is no amount.
  if (at < 0 || /[-–—+]\s?$/u.test(said.slice(0, at))) return undefined;
  const from = said.slice(at).replace(/[\s,.!]+(?:che|po|pues|ja|haha|lol|mate|dear|love)?[\s.!]*$/iu, '');
  if (from === text) return undefined;
  const before = words(said.slice(0, at));
  return before.every(word => isHarmlessWord(word) || /^(?:put|and|then)$/iu.test(word)) ? from : undefined;
}

const CHANGED =
  /(?<!\p{L})(?:another|a second|some more|double|twice|otr[oa]|doble|de nuevo)(?!\p{L})|(?<![\p{L}\d])\d+ (?:of|de|more|m[aá]s)(?!\p{L})/iu;
/** Whether what stands beside an amount of powder may change it, as "another half" does. Pure. */
export const isChangedBeside = (name: string): boolean =>
  CHANGED.test(name) && colourantsMeant(name).length === 0;

/** The words of a text by runs that no mark parts. */
const clauses = (text: string): readonly (readonly string[])[] =>
  text.split(/[^\p{L}\p{M}'’\s-]+/u).map(clause => words(clause));

/**
 * The one colourant that a text names among other words, as it is written there: "of the kaolin, weighed on the letter scales" is
 * "kaolin". The text itself where it is a name, or where it names none or more than one. Pure.
 */
export function colourantAmongWords(text: string): string {
  if (text === '' || colourantsMeant(text).length > 0 || /\d/u.test(text.split(/[,;(]/u)[0]!)) return text;
  const found = clauses(text).flatMap(clause => namesIn(clause));
  const [name] = found;
  return name !== undefined && found.length === 1 ? name : text;
}

function namesIn(clause: readonly string[]): readonly string[] {
  const names: string[] = [];
  for (let at = 0; at < clause.length; ) {
    const length = longestName(clause, at);
    if (length > 0) names.push(clause.slice(at, at + length).join(' '));
    at += Math.max(1, length);
  }
  return names;
}

function longestName(clause: readonly string[], at: number): number {
  for (let length = Math.min(LONGEST_NAME, clause.length - at); length > 0; length -= 1) {
    const span = clause.slice(at, at + length);
    const isName =
      span.at(-1)!.length > 2 &&
      span[0]!.length > 2 &&
      !isStopWord(span[0]!) &&
      !(length === 1 && isEverydayWord(span[0]!));
    if (isName && colourantsMeant(span.join(' ')).length > 0) return length;
  }
  return 0;
}
