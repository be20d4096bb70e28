import { unbroken } from '../over-lines.ts';

/** Marks as they are spoken to a telephone, longest first. Source: the words that dictation of text takes for them, from memory. */
const MARKS: readonly (readonly [spoken: string, mark: string])[] = [
  ['question mark', '?'],
  ['signo de interrogacion', '?'],
  ['signo de interrogación', '?'],
  ['exclamation mark', '!'],
  ['full stop', '.'],
  ['new line', '.'],
  ['nueva línea', '.'],
  ['nueva linea', '.'],
  ['punto y aparte', '.'],
  ['punto y seguido', '.'],
  ['semicolon', ';'],
  ['punto y coma', ';'],
  ['period', '.'],
  ['comma', ','],
  ['coma', ','],
];
/** Typed marks: whoever has these does not speak them. */
const TYPED = /[.,;?!](?!\d)/u;
const SPOKEN = new RegExp(
  unbroken`
    (?<!(?<!\p{L})(?:a|an|the|this|that|each|of|cure|curing|time|un|una|en|que|no)) (?<said>${MARKS.map(([spoken]) => spoken).join('|')})
    (?= |$)(?! of(?!\p{L}))
  `,
  'giu',
);
const MARK_OF: ReadonlyMap<string, string> = new Map(MARKS);
const AT_END = /\b(?:period|full stop|question mark)\s*$/iu;
/** Once may be a word of the sentence: "que coma el perro". */
const LEAST = 2;

/**
 * A text that was spoken with its marks, "three cups comma pink period", with the marks themselves; any other comes back as it is. Pure.
 * @example withSpokenMarks('from the bottom up comma green comma tan') // 'from the bottom up, green, tan'
 */
export function withSpokenMarks(text: string): string {
  if (TYPED.test(text)) return text;
  const spoken = text.match(SPOKEN) ?? [];
  if (spoken.length < LEAST && !AT_END.test(text)) return text;
  return text.replace(SPOKEN, (_, said: string) => MARK_OF.get(said.toLowerCase()) ?? '');
}
