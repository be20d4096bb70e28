import { byLanguage, type Language, type Names } from '../../language.ts';

/** Hues as other regions call them (from memory): rosado of rosa, colorado of rojo, naranjo of naranja. */
const TWINS: readonly (readonly [RegExp, readonly string[]])[] = [
  [/(?<!\p{L})rosa(?!\p{L})/u, ['rosado', 'rosada']],
  [/(?<!\p{L})rojo(?!\p{L})/u, ['colorado']],
  [/(?<!\p{L})roja(?!\p{L})/u, ['colorada']],
  [/(?<!\p{L})naranja(?!\p{L})/u, ['naranjo', 'anaranjado', 'anaranjada']],
];
/** "Rosa" is a flower and a woman too: only beside a word for what is coloured does it have twins. */
const OF_PIGMENT = /^(?:mica|[oó]xido|arcilla|ultramar(?:ino)?|laca|barro|greda|tierra|pigmento)(?!\p{L})/u;

const withTwins = (name: string): readonly string[] => [
  name,
  ...(OF_PIGMENT.test(name)
    ? TWINS.flatMap(([hue, others]) => (hue.test(name) ? others.map(other => name.replace(hue, other)) : []))
    : []),
];

/** Names that stand in one line, comma by comma, with the twins of their Spanish hues. Pure. */
export const namesIn = (names: string): readonly string[] => [
  ...new Set(names.split(/,\s*/).flatMap(name => withTwins(name.trim()))),
];

/**
 * The names of one of several that are called alike, the coat of a mica or what a lake is made of in brackets behind them (`apart`, by language;
 * a language that needs none has none), and what it is called without.
 * @example toldApart({ en: 'Gold mica', es: 'Mica dorada' }, { en: 'iron oxide' }).names.en // 'Gold mica (iron oxide)'
 */
export function toldApart(
  called: Names,
  apart: Partial<Names>,
): { readonly names: Names; readonly called: Names } {
  const whole = (language: Language) =>
    apart[language] === undefined ? called[language] : `${called[language]} (${apart[language]})`;
  return { names: byLanguage(whole), called };
}
