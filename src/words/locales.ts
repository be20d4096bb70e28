import { LANGUAGES, type Language } from '../engine/language.ts';

export { LANGUAGES };

/** The locales of the chat platform that each language serves; the first is the one to pretend. */
export const LOCALES: Readonly<Record<Language, readonly [string, ...string[]]>> = {
  en: ['en-US', 'en-GB'],
  es: ['es-ES', 'es-419'],
};

/** By which locale a language writes its dates. Day before month in English too: half of its readers take 3/4 for the third of April. */
export const dateLocaleOf = (language: Language): string => (language === 'en' ? 'en-GB' : language);

/** The language for a locale tag such as `es-419`; English where we have no words of theirs. */
export const languageOf = (locale: string): Language =>
  LANGUAGES.find(language => language === locale.toLowerCase().split(/[-_]/u)[0]) ?? 'en';
