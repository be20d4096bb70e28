import { spaced } from '../../over-lines.ts';
import { tokenise } from '../../text/tokens.ts';

/**
 * Small words, accents left off, that only one of the two languages has; what both write ("me", "no", "a", "he", "has",
 * "son") tells nothing.
 */
const FUNCTION_WORDS = {
  en: spaced`
    the my and is was it its i im ive she his her him they their we our us you your what do does did this
    that these with on of to for from just have had got get are been there at by into how but so if not
    dont can will should when now help please much many could may where which why put make made using water
    oils soap lye batch mould
  `,
  es: spaced`
    el la los las que de en y mi mis su sus un una unos unas le les se lo nos te con por para pa esta estan
    este eso es fue era al del ya pero como cuando donde hay tengo tiene muy yo ella ellos hago hace cayo
    ahora ayuda auxilio socorro favor porque sin si sobre bebi bebio trague tomo tome huele huevo podrido
    lejia jabon quemo quema nino nina hijo hija cuanto cuanta cuantos cuantas puedo puede debo necesito
    quiero hacer pongo poner echo echar aceite aceites agua sosa potasa gramos mezclo mezclar temperatura
    molde horno jabones tinta zumo sirve vez
  `,
} as const;

/** A language in which emergencies are read. */
export type ReadLanguage = keyof typeof FUNCTION_WORDS;

const LANGUAGES = Object.keys(FUNCTION_WORDS) as readonly ReadLanguage[];
const KNOWN = new Map(LANGUAGES.map(one => [one, new Set(FUNCTION_WORDS[one].split(' '))]));

/** Letters that only Spanish writes, of the two; "purée" and "café" are English too. */
const SPANISH = /[áíóúñ¿¡]/iu;

/** From so many small words on, and more than twice those of the other language, it is clear. */
const FEWEST = 2;
const TIMES = 2;

/** The language words are clearly written in, by a count of their small words; undefined in doubt. Never throws. */
export function clearLanguageOf(words: string): ReadLanguage | undefined {
  const tokens = tokenise(words);
  const count = (language: ReadLanguage) =>
    tokens.filter(({ text }) => KNOWN.get(language)!.has(text)).length;
  const [en, es] = [count('en'), count('es') + (SPANISH.test(words) ? 1 : 0)];
  if (en >= FEWEST && en > TIMES * es) return 'en';
  if (es >= FEWEST && es > TIMES * en) return 'es';
  return undefined;
}
