import { createRequire } from 'node:module';
import type * as english from './en/declared/index.ts';
import type * as spanish from './es/declared/index.ts';
import { LANGUAGES, type Language, type Phrase } from './sentence.ts';

type Said = { readonly [Name in string]: string | Said };
type InEveryLanguage<All extends Readonly<Record<Language, typeof english>>> = All;
/** What declarations say, by language and command: a language that has no line here, or lacks a phrase, does not compile. */
type Declared = InEveryLanguage<{ readonly en: typeof english; readonly es: typeof spanish }>;

/** The same names, each with its phrase in every language. */
export type Phrases<Of> = {
  readonly [Name in keyof Of]: Of[Name] extends string ? Phrase : Phrases<Of[Name]>;
};

/** In which folder of `declared` a command's phrases lie. */
const FOLDERS: Readonly<Record<keyof typeof english, string>> = {
  ask: 'conversation',
  batch: 'batch',
  calibrate: 'colour',
  challenge: 'challenges',
  colourant: 'colour',
  diagnose: 'flaws',
  dose: 'colour',
  'first-aid': 'conversation',
  flaws: 'flaws',
  help: 'conversation',
  match: 'colour',
  palette: 'colour',
  plan: 'batch',
  pour: 'colour',
  prefer: 'members',
  preview: 'colour',
  privacy: 'members',
  recipe: 'batch',
  season: 'challenges',
  shelf: 'members',
  swap: 'challenges',
};

/** At once, as what declares cannot wait. */
const load = createRequire(import.meta.url);
const saidBy = (language: Language, command: keyof typeof english): Said =>
  (load(`./${language}/declared/${FOLDERS[command]}/${command}.ts`) as { readonly says: Said }).says;

/**
 * The phrases of a command's declaration, by the names that its file of words gives them. English is there at once;
 * another language is loaded when its phrase is read, as one command in many is asked for in it.
 */
export const phrases = <Command extends keyof Declared['en']>(
  command: Command,
): Phrases<Declared['en'][Command]> =>
  paired(saidBy('en', command), language => saidBy(language, command)) as Phrases<Declared['en'][Command]>;

function paired(english: Said, inLanguage: (language: Language) => Said): object {
  const pairs = Object.entries(english).map(([name, said]) => [
    name,
    typeof said === 'string'
      ? phraseOf(language => inLanguage(language)[name] as string)
      : paired(said, language => inLanguage(language)[name] as Said),
  ]);
  return Object.fromEntries(pairs) as object;
}

const phraseOf = (inLanguage: (language: Language) => string): Phrase =>
  Object.defineProperties(
    {},
    Object.fromEntries(
      LANGUAGES.map(language => [language, { enumerable: true, get: () => inLanguage(language) }]),
    ),
  ) as Phrase;
