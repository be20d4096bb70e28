import { byLanguage, type Language, type Names } from '../../language.ts';

/** A comma-separated run of names, over as many lines as it takes. */
export const namesIn = (names: string): readonly string[] => names.split(/,\s*/).map(name => name.trim());

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
