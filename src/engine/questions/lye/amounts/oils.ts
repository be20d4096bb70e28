import { readOils } from '../../../batch/oils/lists/oil-list.ts';
import { spaced, unbroken } from '../../../over-lines.ts';
import { Refusal, refuse } from '../../../refusal.ts';
import { COUNT, UNIT } from './words.ts';

/** Words that change nothing of the lye, at either end of what is left. */
const IDLE = new Set(
  spaced`
    how much many lye naoh koh sodium potassium hydroxide caustic soda sosa caustica lejia potasa hidroxido
    de sodio potasio do i we you need should would will use using used to make for with in of and the a an
    my me please hi hello hey thanks is it that this right correct ok okay safe by mistake accidentally put
    added have had has got recipe says said say calls soap soaps bar bars batch batches can could what
    whats the s amount calculate calculator calc give tell water grams oil oils on at if it did kindly work
    out workout determine compute find figure so too cold process cp made as from into be are was there all
    only just about also or but know want wanna going gonna does take takes need needed required require
    requires requirement total figure exactly cuanta cuanto cuantos cuantas necesito hace falta hay que
    para con en y de la el los las un una mi me por favor gracias hola es esta bien correcto receta dice
    jabon jabones pastillas lote puedo usar use uso eche puse echar poner hacer quiero calcular calcula
    cantidad agua gramos error sin querer lleva llevan va van se le que si a al del he puesto echado ok
    then will enough weigh weighed masses n mire mira oiga oye tengo tenemos got calculame calculeme
    calculenme calculate dime digame lo nomas solo only already poured pour use ya echado vertido vertida
    good fine sale salga todo bueno buena r u ur me whats amt amount number numbers exact weigh weight
    weights kindly goes give an plz plis nko po dame deme denme pasame sacame mandame usually fast quick
    quickly asap urgent urgente rapido vale dale che vos porfa hija hijo amiga vecina jaja thank you cheers
    need ya pues hoy manana today tonight tomorrow nomas solamente only igual another otro otra with to do
    it in weighed out worked quantity qty caustic calcule calculad ave love dear hun darling mate boss sis
    bro sir madam maam po opo naman lang amor corazon mijo mija pana parce chamo compa loco vecino profe
    reina ty tysm jus nowt else nuthing hey ps dios bendiga bendigas theres there s own reet lad duck nae
    owt che ?
  `.split(' '),
);

/** Whether a word changes nothing of the lye. */
export const isIdleWord = (word: string): boolean => IDLE.has(word.replace(/['’:]/gu, ''));

/** A piece without the words at its ends that change nothing of the lye. */
export function trimmed(piece: string): string {
  const words = piece.split(' ').filter(word => word !== '');
  const isIdle = (word: string | undefined) => word !== undefined && isIdleWord(word);
  while (isIdle(words[0])) words.shift();
  // An oil's own last word stays: "olive oil".
  while (isIdle(words.at(-1)) && !/^(?:oils?)$/u.test(words.at(-1)!)) words.pop();
  return words.join(' ');
}

const SHARES: readonly (readonly [pattern: RegExp, percent: string])[] = [
  [/\b(?:two|2) thirds|\bdos tercios|\b2\/3/gu, '66.67%'],
  [/\b(?:a|one|1) third|\bun tercio|\b1\/3/gu, '33.33%'],
  [/\bthree quarters|\btres cuartos/gu, '75%'],
  [/\b(?:a |one )?quarter\b(?! of a)|\bun cuarto\b(?! de (?:kilo|libra))/gu, '25%'],
  [/\bhalf(?! (?:an? )?(?:kilo|kg|pound|lb|cup|ounce))|\b(?:la )?mitad(?: de)?\b/gu, '50%'],
];

/** Figures that have no unit of their own are grams. */
const inBareGrams = (list: string) =>
  list.replace(
    new RegExp(String.raw`(?<![\d.,/])(${COUNT})(?![\d/]|[.,]\d| ?%| ?percent| ?por ciento| ?${UNIT})`, 'gu'),
    '$1 g',
  );

/** "20 g of my own beeswax": whose it is changes nothing. */
const OWN = new RegExp(`(${COUNT} ?${UNIT} (?:of |de )?)(?:my|our|mi|nuestr[oa]) (?:own |propi[oa] )?`, 'gu');

/** An amount by volume. */
const VOLUME = new RegExp(
  unbroken`
    (?:\d ?|\b(?:an?|one|two|half|una?|dos|media) )(?:cups?|tazas?|fl ?oz|fluid ounces?|onzas? fluidas?|
    ml|l|lit(?:er|re)s?|litros?|tbsps?|tsps?|pints?|quarts?|gallons?)\b
  `,
  'u',
);

/** The list of oils that is left, read by the plan's own reader, which refuses whatever it does not know. */
export function oilsIn(text: string, { inGrams }: { readonly inGrams: boolean }): string | undefined {
  const shared = SHARES.reduce((all, [pattern, percent]) => all.replace(pattern, percent), text);
  const list = shared
    .replace(OWN, '$1')
    .replace(/(?<=\p{L}) (?:and |y )?(?=\d+(?:\.\d+)?%)/gu, ', ')
    .split(/[;,](?!\d)/u)
    .map(trimmed)
    .filter(piece => piece !== '' && !/^(?:oils?)$/u.test(piece))
    .join(', ');
  if (list === '') return undefined;
  if (inGrams) return oilsIn(inBareGrams(list), { inGrams: false });
  const volume = VOLUME;
  if (volume.test(list)) refuse('oil-by-volume', { text: list.slice(0, 60) });
  try {
    return readOils(list).list;
  } catch (refusal) {
    if (!(refusal instanceof Refusal) || refusal.id !== 'oils-without-unit') throw refusal;
    return readOils(inBareGrams(list)).list;
  }
}
