/** The languages in which things have names and members are answered. A further one begins with its line here. */
export const LANGUAGES = ['en', 'es'] as const;
export type Language = (typeof LANGUAGES)[number];

/** The marks between which each of them quotes. */
const QUOTES: Readonly<Record<Language, readonly [opening: string, closing: string]>> = {
  en: ['“', '”'],
  es: ['«', '»'],
};
/** A name as that language quotes it. */
export const quotedIn = (language: Language, name: string): string => QUOTES[language].join(name);

/** What a thing is called in each language. */
export type Names = Readonly<Record<Language, string>>;

/** Something for each language. */
export const byLanguage = <Value>(of: (language: Language) => Value): Readonly<Record<Language, Value>> =>
  Object.fromEntries(LANGUAGES.map(language => [language, of(language)])) as Record<Language, Value>;
