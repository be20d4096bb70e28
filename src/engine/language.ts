/** The languages in which things have names and members are answered. A further one begins with its line here. */
export const LANGUAGES = ['en', 'es'] as const;
export type Language = (typeof LANGUAGES)[number];

/** What a thing is called in each language. */
export type Names = Readonly<Record<Language, string>>;

/** Something for each language. */
export const byLanguage = <Value>(of: (language: Language) => Value): Readonly<Record<Language, Value>> =>
  Object.fromEntries(LANGUAGES.map(language => [language, of(language)])) as Record<Language, Value>;
