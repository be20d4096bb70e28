import { clearLanguageOf } from '../hazards/index.ts';
import { spaced } from '../over-lines.ts';
import { tokenise } from '../text/tokens.ts';

/** Words that hold short questions together and that only one of the two languages writes, lower case without accents; names of things are
 * written in any. */
const TELLING = {
  en: spaced`
    the my and is was it its it's i'm i've do does did what's whats what why how when where which who can
    could should would will with without into from for of to on in at by or not don't an if then than this
    that these those there are am be been put add use get go goes make made much many more less too hi
    hello hey thanks thank cheers please ok yes anyone anybody got sorry wrong looks still lovely morning
    nite
  `,
  es: spaced`
    el la los las del al que q es son una uno unos unas lo se mi mis tu su por para pa con sin y o pero
    como cual cuales cuanto cuanta cuantos cuantas cuando donde porque quien si ya muy mas menos este esta
    estos estas eso esa ese hay ser fue era va van sirve sirven puedo puede pongo poner echo echar hago
    hacer uso usar queda quedo quedan salio sale salen mancha hola buenas buenos gracias vale porfa ayuda
    necesito quiero tengo seca mojada mezclo espesa espeso aguanta tarde tardes noches dias nueva nuevo le
    da dan te se tiene esta estan u mejor peor dura duran alguien jabon molde masa aceite aceites igual
    tapo dejo nada todo algo foto listo perdon jaja jajaja holaa oye puedes ver fotos
  `,
} as const;
/** What short questions in Spanish name, lower case without accents, and English does not write. */
const SPANISH_NAMES: ReadonlySet<string> = new Set(
  spaced`
    traza falsa dosis oxido oxidos rojo roja amarillo amarilla azul verde morado morada negro blanco blanca
    rosado naranja marron gris arcilla arcillas carbon ultramarino dioxido cuantas curado sosa desmoldar
    espuma remolino capas achiote curcuma pimenton espirulina esencia fragancia ceniza
  `.split(' '),
);
type LanguageTold = keyof typeof TELLING;
const WORDS = { en: new Set(TELLING.en.split(' ')), es: new Set(TELLING.es.split(' ')) } as const;
const SPANISH = /[áéíóúñ¿¡]/iu;

/**
 * The language that a question is written in, however short; undefined where nothing tells. Pure.
 * @example languageOfQuestion('achiote cuanto') // 'es'
 */
export function languageOfQuestion(text: string): LanguageTold | undefined {
  const clear = clearLanguageOf(text);
  if (clear) return clear;
  const words = tokenise(text)
    .filter(({ kind }) => kind === 'word')
    .map(word => word.text);
  const count = (language: LanguageTold) => words.filter(word => WORDS[language].has(word)).length;
  const [en, es] = [count('en'), count('es') + (SPANISH.test(text) ? 1 : 0)];
  // English names are typed in any language, Spanish ones in Spanish.
  if (en === 0 && es === 0) return words.some(word => SPANISH_NAMES.has(word)) ? 'es' : undefined;
  return en === es ? undefined : en > es ? 'en' : 'es';
}
