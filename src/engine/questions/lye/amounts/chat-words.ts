import { OILS } from '../../../batch/oils/index.ts';
import { spaced, unbroken } from '../../../over-lines.ts';
import { rememberedWord } from '../../../remembered.ts';
import { foldedWords } from '../../../text/fold.ts';
import { slipCost } from '../../../text/spelling/slip-cost.ts';
import { COMMON_WORDS } from '../../../text/spelling/trade/trade-words.ts';
import { DIALECT } from '../../dialect.ts';
import { isIdleWord } from './oils.ts';
import likeOils from './words-like-oils.json' with { type: 'json' };

/** Said beside a recipe, these may turn its sense or the amount of what is meant: nothing is answered. */
export const TURNS = new Set(
  spaced`
    instead rather not no without minus less more forgot forget forgotten replace replaced replacing swap
    swapped swapping switch switched remove removed left out half halve halved double doubled doubling
    twice triple tripled thrice scale scaled except but or unless per each times convert converted same
    other rest remaining remainder actually oops meant mean wait scratch correction sorry between range
    maybe perhaps either both extra additional another sin vez lugar menos mas quita quito quitar olvide
    olvido olvidar cambie cambio cambiar sustituir sustituyo reemplazar reemplazo mitad doble duplica
    duplicar duplique triple triplica triplicar excepto salvo pero por cada o quise decir digo perdon mejor
    entre quiza tal ambos otra otro resto restante igual misma mismo used usado usada waste unknown mixed
    mixture blend mezcla
  `.split(' '),
);
/** What is no fat, or only part of one, or a fat in bits: beside an oil's name it makes another thing of it. */
export const PRODUCTS = new RegExp(
  unbroken`
    ^(?:oils?|oily|butter\p{L}*|fat\p{L}*|wax\p{L}*|lard\p{L}*|tallow\p{L}*|suet|dripping|grease|shortening|
    margarin\p{L}*|ghee|cream\p{L}*|milk\p{L}*|flour|sugar|syrup|juice|vinegar|water|powder\p{L}*|base|
    bases|seeds?|nuts?|kernels?|beans?|leaf|leaves|flakes?|chips?|shells?|husks?|pulp|puree|paste|meal|
    flesh|meat|jelly|jam|starch|stearin|olein|lecithin|extract|essence|essential|fragrance|perfume|scent|
    dried|dry|fresh|desiccated|dessicated|shredded|grated|ground|toasted|roasted|creamed|fractionated|
    hydrogenated|sulfated|sulphated|pickled|candles?|lotion|shampoo|conditioner|acid\p{L}*|solution|bleach|
    aceite\p{L}*|manteca\p{L}*|mantequilla\p{L}*|grasa\p{L}*|cera|ceras|sebo|unto|tocino|crema|nata|leche|
    harina|azucar|jarabe|jugo|zumo|vinagre|agua|polvo|molid[oa]s?|rallad[oa]s?|sec[oa]s?|fresc[oa]s?|
    tostad[oa]s?|semillas?|pepitas?|pipas|nueces|hojas?|pulpa|pasta|carne|almidon|esencia\p{L}*|extracto|
    perfume|fraccionad[oa]|hidrogenad[oa]|velas?|acid[oa]s?|cloro|solucion|argentin\p{L}*|uruguay\p{L}*|
    chilen\p{L}*|paraguay\p{L}*)$
  `,
  'u',
);
/** Who speaks: after "and" these open a sentence, and beside an oil they end its name. */
const SPEAKS = new Set(
  `pls plz please thx old new bless i im ive id me my we us our you your he she they them it its this that
  these those there here who what when where why how which is are was were be been am do does did have has
  had got get can could will would shall should may might must want wanted need needed think thought know
  said says told gave give asked tell show check please thanks thank cheers kindly hi hello hey morning
  afternoon evening good dear so then now today tonight tomorrow yesterday just still also too very really
  quite only all together total altogether for from to in on at by as because since while with nothing ready
  done going gonna wanna lets let make making made weigh weighed pour poured using use put in into onto over
  under before after about around until till the a an of right correct ok okay safe fine enough much many
  yo me mi mis nos nuestro nuestra tu tus usted ustedes el ella ellos ellas lo la los las le les se su sus
  esto esta este estos estas eso esa ese aqui alli ahi quien que cuando donde porque como cual es son era
  eran fue fueron ser estoy esta estan estaba hay tengo tiene tenia tenemos quiero quiere quisiera necesito
  necesita puedo puede podria debo sabe saber digan dice dijo dicen gracias hola buenas buenos dias tardes
  noches oiga oigan oye ya ahora hoy manana ayer luego despues antes entonces solo solamente nomas nada
  listo lista todo toda todos todas total para de del en con al a hasta desde sobre muy bien bueno pues asi
  vale dale echo eche puse uso use hago hice hacer peso pese llevo lleva va vamos quedo queda cuanto cuanta
  cuantos cuantas supuestamente da dan dio sale salen queria quisimos haria seria serian jefe listo da`.split(
    /\s+/u,
  ),
);

const OIL_WORDS: readonly string[] = [
  ...new Set(
    OILS.flatMap(({ id, names, synonyms }) => [id, names.en, names.es, ...synonyms]).flatMap(name =>
      foldedWords(name),
    ),
  ),
].filter(word => word.length > 3);
/** Of its letters so many may be others, and a word still be meant for an oil's. */
const NEAR = 0.26;

/** Words that differ by more letters than these lie too far apart. */
const MOST_LETTERS = 3;
const LONGEST = Math.max(...OIL_WORDS.map(({ length }) => length)) + MOST_LETTERS;

/**
 * How far a word is from the nearest word of an oil's name, in slips; undefined where none is near. Lower case without accents. One
 * line is read by several readers, each of which looks at its words again: a quarter of what reading took.
 */
export const nearestOilWord = (word: string): number | undefined =>
  word.length > LONGEST ? undefined : slipsToOil(word);
const slipsToOil = rememberedWord((word: string): number | undefined => {
  const near = OIL_WORDS.filter(oil => Math.abs(oil.length - word.length) <= MOST_LETTERS)
    .map(oil => {
      const most = NEAR * Math.max(word.length, oil.length);
      return { cost: slipCost(word, oil, most), most };
    })
    .filter(({ cost, most }) => cost <= most)
    .map(({ cost }) => cost);
  return near.length === 0 ? undefined : Math.min(...near);
});

/** Everyday words that lie near an oil's and are no slip of it: "butcher". */
const LIKE_OILS: ReadonlySet<string> = new Set([
  ...likeOils.words.flatMap(row => row.split(' ')),
  // That the word lists lack (from memory).
  ...['achiote', 'saldria', 'saldrian', 'easter'],
]);
/** Words one slip from an oil's that mean something of their own, "canela" or "pavo": asked for, and read as no oil. */
const OF_THEIR_OWN: ReadonlySet<string> = new Set([
  ...likeOils.own.flatMap(row => row.split(' ')),
  // Plants that the word lists lack (from memory).
  ...['canela', 'cedro', 'nopal', 'higo'],
]);

/** Whether a word that is no everyday one is spelt nearly as an oil's name. Lower case without accents. */
export function isNearOil(word: string): boolean {
  if (word.length < 4 || COMMON_WORDS.has(word) || LIKE_OILS.has(word) || isPlain(word)) return false;
  return nearestOilWord(word) !== undefined;
}

/** A letter more, fewer or other, or two in each other's place (as `slipCost` counts). */
const ONE_SLIP = 1.05;
/** No other word may be nearly as near. */
const CLEARLY = 0.7;

/**
 * The words of oils' names that a word was meant for where it is one slip away: the nearest, and any that is nearly as near. None
 * where it is a word of its own. Lower case without accents.
 * @example oilWordsMeant('cocnut') // ['coconut']
 */
export function oilWordsMeant(word: string): readonly string[] {
  if (
    OF_THEIR_OWN.has(word) ||
    !isNearOil(word) ||
    OIL_WORDS.includes(word) ||
    PRODUCTS.test(word) ||
    TURNS.has(word)
  )
    return [];
  return oilsOneSlipAway(word);
}
const oilsOneSlipAway = rememberedWord((word: string): readonly string[] => {
  const near = OIL_WORDS.filter(oil => Math.abs(oil.length - word.length) <= 2)
    .map(oil => ({ oil, cost: slipCost(word, oil) }))
    .toSorted((one, other) => one.cost - other.cost);
  const [nearest] = near;
  if (!nearest || nearest.cost > ONE_SLIP) return [];
  return near.filter(({ cost }) => cost <= nearest.cost + CLEARLY).map(({ oil }) => oil);
});

/** Whether a word is one of everyday talk, in either language. Lower case without accents. */
export const isEveryday = (word: string): boolean => isPlain(word) || COMMON_WORDS.has(word);
/** Whether a word is said by who asks, or changes nothing of a recipe. Lower case without accents. */
export const isPlain = (word: string): boolean => SPEAKS.has(word) || DIALECT.has(word) || isIdleWord(word);
