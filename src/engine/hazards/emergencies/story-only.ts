import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

/*
 * A story, a rhyme or a saying that is asked for, with lye, acid and water in it: nothing happens in it yet, and to nobody. Every word has to be known: of
 * who is told it and of which goes into which. Both languages, from general knowledge of them (no source).
 */

/** Longer texts tell it themselves, and it may be true. */
const LONGEST = 160;

const words = (list: string): ReadonlySet<string> => new Set(list.split(/\s+/u).filter(word => word !== ''));

/** No verb of touching, of harm or of what happened; no part of a body. */
const ENGLISH = words(`
  story stories tale rhyme poem joke song saying mnemonic riddle fable
  a an the some short little funny silly bedtime simple good
  tell write give make know need want looking help me us we i you do does is are there any please can could id like
  with about of for on to in into onto and or that which what how who why first then never always not goes go pour add put explain explaining
  remember teach show order safe safely right way
  acid vinegar citric water lye caustic soda naoh milk oil oils soap bath bombs
  my our kids kid children child class pupils students beginners grandkids nieces group
`);
const SPANISH = words(`
  cuento cuentos historia historias rima poema chiste cancion dicho refran adivinanza fabula regla mnemotecnica
  un una el la los las unos unas corto corta cortito gracioso sencillo sencilla bonito buen buena
  cuentame escribe escribeme dame dime haz hazme sabes sabe conoces conocen necesito quiero busco hay algun alguna me nos
  con sobre de del acerca para por en al a y o que cual como quien donde primero luego despues nunca siempre no va van se echa echan pone ponen explicar
  explicarles recordar ensenar ensenarles orden bien seguro
  acido vinagre citrico agua sosa caustica soda naoh leche aceite aceites jabon
  mi mis nuestro ninos ninas nino nina clase alumnos alumnas principiantes nietos sobrinos grupo
`);
const OPENS = new RegExp(
  unbroken`
    ^\W*(?:\p{L}+ ){0,5}?(?:stor(?:y|ies)|tale|rhyme|poem|joke|song|saying|mnemonic|riddle|fable|cuentos?|
    historias?|rima|poema|chiste|cancion|dicho|refran|adivinanza|fabula|regla mnemotecnica)(?!\p{L})
  `,
  'u',
);

/**
 * True where words ask for a story or a rhyme and hold nothing else than what it is to be of. Reads the first 160 characters.
 * @example isStoryOnly('a story with acid, water and lye') // true
 */
export function isStoryOnly(text: string): boolean {
  if (text.length > LONGEST) return false;
  const plain = unaccented(text).replace(/['’]/gu, '');
  if (!OPENS.test(plain)) return false;
  const told = plain.match(/[\p{L}\d]+/gu) ?? [];
  return [ENGLISH, SPANISH].some(known => told.every(word => known.has(word)));
}
