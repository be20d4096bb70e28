import { unbroken } from '../../over-lines.ts';
import { cut } from '../../text/excerpt.ts';
import { unaccented } from '../../text/unaccented.ts';
import { whenAsked } from '../../when-asked.ts';
import { isEveryday, oilWordsMeant, TURNS } from './amounts/chat-words.ts';
import { FAT, LYE, plainWords } from './amounts/words.ts';
import { absenceIn, isHarmlessBesideOil } from './recipe-line/doubts/beside-oils.ts';
import { beyondIn } from './recipe-line/items/beyond-reading.ts';
import type { Item } from './recipe-line/items/item.ts';
import { itemsOf } from './recipe-line/items/items.ts';
import { weighedOils } from './recipe-line/items/weighed-oils.ts';
import { isLostWord } from './recipe-line/items/words-beside.ts';

/** So much of a message is looked at, and of each sentence told again, in UTF-16 units. */
const LONGEST = 2000;
const LONGEST_TOLD = 90;
/** Who chats more than this round a recipe is asked. */
const MOST_TOLD = 3;
/** A sentence with a denial or another word that may turn a recipe has to be of something else by so many of its words. */
const WORDS_OF_ELSE = 2;

/** A sentence ends with its mark, its line or a colon, not within 1.5 kg or 1,5 kg. */
const SENTENCES = /[^.!?;:\n…¿¡]+(?:[.](?=\d)[^.!?;:\n…¿¡]+)*[.!?;:\n…¿¡]*/gu;

/** Of fat, of lye, of water and what takes its place, of a size: a figure may hang on it. Lower case without accents, as all below. */
const OF_FIGURES = new RegExp(
  unbroken`
    (?<!\p{L})(?:${LYE}|${FAT}|fats?|fatty|oils?|oily|butters?|wax(?:es)?|grease|shortening|margarin\p{L}*|
    ghee|suet|dripping|cream|grasas?|aceites?|mantecas?|mantequillas?|ceras?|sebo|unto|tocino|nata|crema|
    water|agua|aguita|milk|leche|beer|cerveza|stout|ale|wine|vino|tea|coffee|cafe|juice|zumo|jugo|liquids?|
    liquid[oa]s?|solids?|solid[oa]s?|hard|soft|dur[oa]s?|bland[oa]s?|runny|purity|pureza|strength|
    percent\p{L}*|porcentaje|discount|descuento|excess|exceso|times|veces|half|halves|mitad(?:es)?|thirds?|
    quarters?|tercios?|cuartos?|\p{L}*grams?|\p{L}*gramos?|kilos?|ounces?|onzas?|pounds?|libras?|cups?|
    tazas?|litres?|liters?|litros?|sizes?|tamanos?|shampoo|batch\p{L}*|recipes?|recetas?|mou?lds?|
    moldes?)(?!\p{L})
  `,
  'u',
);
/** What was named before, a place in a list, whose share, a multiple, a vessel, a loss: what stands in the pot may be another recipe. */
const OF_THE_POT = new RegExp(
  unbroken`
    (?<!\p{L})(?:it|them|those|these|ones?|rest|most|some|any|both|each|either|mine|yours|hers|theirs|lot|
    numbers?|figures?|amounts?|labels?|lists?|lo|l[oa]s (?=\p{L}+(?:e|amos|aron|o|a)(?!\p{L}))|
    (?:se|me|te|nos) l[oa]s?|\p{L}{3,}(?:ar|er|ir|ando|endo)l[oa]s?|es[ea]s?|aquell[oa]s?|otr[oa]s?|resto|
    demas|parte|amb[oa]s|cada|numeros?|cifras?|cantidad(?:es)?|pes(?:o|e|amos|ado|ada|ando|ar)|listas?|
    etiquetas?|mi[oa]s|suy[oa]s?|tuy[oa]s?|weigh\p{L}*|pour\p{L}*|measur\p{L}*|melt\p{L}*|scales?|basculas?|
    balanzas?|first|second|next|former|latter|penultimate|primer[oa]?|ultim[oa]s?|segund[oa]|
    penultim[oa]|anterior|siguiente|twice|doubl\p{L}*|tripl\p{L}*|halv\p{L}*|doble|dupl\p{L}*|multipl\p{L}*|
    scaled?|scaling|divid\p{L}*|split|reparti\p{L}*|swap\p{L}*|switch\p{L}*|substitut\p{L}*|sustitu\p{L}*|
    replac\p{L}*|reemplaz\p{L}*|run out|ran out|used up|empty|missing|falt\p{L}*|vaci[oa]s?|agot\p{L}*|
    pots?|pans?|jars?|jugs?|bowls?|bottles?|tubs?|tins?|cans?|buckets?|containers?|ollas?|ollita|cazos?|
    bol(?:es)?|cuencos?|frascos?|tarros?|botes?|latas?|botellas?|jarras?|baldes?|cubos?|cubetas?|envases?|
    deliver\p{L}*|parcel|ordered|pedido|envio|spil\p{L}*|leak\p{L}*|knock\p{L}*|ate|eaten|drank|stole\p{L}*|
    comio|comieron|bebio|robo|robaron|volc\p{L}*|mistake\p{L}*|wrong\p{L}*|error\p{L}*|equivoc\p{L}*|
    confus\p{L}*|confund\p{L}*|mix\p{L}*|mezcl\p{L}*|muddl\p{L}*|ingredient\p{L}*|
    nope|nah|naw|typo|oops|whoops|ups|correction|errata|tach\p{L}*|borr\p{L}*|delet\p{L}*|scrap\p{L}*|strike|
    struck|scratch|ignor\p{L}*|forget|forgot\p{L}*|cancel\p{L}*|olvid\p{L}*|undo|quit(?:a|e|o|ar|en)\p{L}*|
    anul\p{L}*|descart\p{L}*|leave|leaving|skip\p{L}*|drop\p{L}*)(?!\p{L})
  `,
  'u',
);

/** Kinds of pieces that tell nothing of a recipe. */
const OF_TALK: ReadonlySet<Item['is']> = new Set(['word', 'link', 'joint', 'mark']);
/** These may, and do not in a sentence of something else: "sin luz", "my daughter has eczema", "1 hr". */
const OF_ELSE: ReadonlySet<Item['is']> = new Set(['planned', 'mine', 'without', 'not', 'corrects', 'actual']);

const wordsOf = (text: string): readonly string[] => text.split(/[^\p{L}]+/u).filter(word => word !== '');
/** Words that are of no recipe and of no everyday turn: of what else somebody tells. */
const ofElse = (plain: string): readonly string[] =>
  wordsOf(plain).filter(word => word.length > 2 && !isHarmlessBesideOil(word) && !isEveryday(word));

/** Denials and other words that turn a recipe where they stand beside it. */
const MAY_TURN =
  /(?<!\p{L})(?:no|not|never|nothing|nobody|nor|without|sin|ni|nunca|nada|nadie|\p{L}+n['’]t|if|or|si|o)(?!\p{L})/u;
/** "A ver si", "I wonder if": who only asks. */
const WONDERS = /(?<!\p{L})(?:a ver|ver|saber|see|know|wonder(?:ed|ing)?) (?:si|if)(?!\p{L})/gu;

/** A part of a recipe that is named as it is spelt; what is only near one by its letters is none. */
const isNamed = (item: Item): boolean =>
  item.is === 'name' && item.known !== 'other' && item.typed === undefined;

/** Oils that stand with their weight further on in a message, as they are named there; looked for when one is named. */
type WeighedLater = () => ReadonlySet<string>;

/** Whether a piece is of the recipe for sure; an oil that is told before its weight is read there. */
const isOfRecipe = (item: Item, weighedLater: WeighedLater): boolean =>
  item.is === 'amount'
    ? item.unit !== 'other'
    : item.is === 'name'
      ? isNamed(item) && !weighedLater().has(item.text)
      : !OF_TALK.has(item.is) && !OF_ELSE.has(item.is);

/** Whether a sentence by none of its words can be of the oils, their weights, the lye or the water. */
function isIdle(sentence: string, weighedLater: WeighedLater): boolean {
  if (!/\p{L}/u.test(sentence)) return false;
  const typed = unaccented(sentence, LONGEST).replace(WONDERS, ' ');
  if (OF_FIGURES.test(typed) || OF_THE_POT.test(typed) || /\d ?%/u.test(typed)) return false;
  const plain = plainWords(sentence, { clauses: true });
  const items = itemsOf(plain);
  if (absenceIn(plain) !== undefined || items.some(item => isOfRecipe(item, weighedLater))) return false;
  const words = wordsOf(plain);
  if (words.some(isLostWord)) return false;
  const mayTurn =
    sentence.includes('?') ||
    MAY_TURN.test(typed) ||
    words.some(word => TURNS.has(word) || oilWordsMeant(word).length > 0) ||
    !items.every(({ is }) => OF_TALK.has(is) || is === 'name');
  return !mayTurn || (!items.some(isNamed) && ofElse(plain).length >= WORDS_OF_ELSE);
}

/** A message without its idle sentences, and those of them that are told again, as they were typed. */
export type WithoutIdle = { readonly rest: string; readonly idle: readonly string[] };

/**
 * A message without the sentences that speak of nothing in its recipe: no oil, no weight, nothing told before, no multiple, no loss. Those
 * that are more than everyday turns are to be told again. Undefined where there are none, where more than three are to be told, or
 * where the message as a whole goes beyond what is followed here. Pure.
 * @example withoutIdleSentences('I drive a hearse. 500 g olive. Lye?') // { rest: '500 g olive. Lye?', idle: ['I drive a hearse'] }
 */
export function withoutIdleSentences(typed: string): WithoutIdle | undefined {
  if (beyondIn(plainWords(typed, { clauses: true })) !== undefined) return undefined;
  const sentences = [...typed.slice(0, LONGEST).matchAll(SENTENCES)].map(([sentence]) => sentence);
  const areIdle = sentences.map((one, at) =>
    isIdle(
      one,
      whenAsked(() => weighedIn(sentences.slice(at + 1).join(''))),
    ),
  );
  const idle = sentences.filter((_, at) => areIdle[at]);
  const told = idle.filter(sentence => ofElse(plainWords(sentence)).length > 0).map(bare);
  if (idle.length === 0 || told.length > MOST_TOLD) return undefined;
  const rest = sentences.filter((_, at) => !areIdle[at]);
  return { rest: rest.join('').trim(), idle: told };
}

/** Oils that stand with their weight in a text, as they are named there. */
const weighedIn = (text: string): ReadonlySet<string> =>
  new Set(weighedOils(itemsOf(plainWords(text, { clauses: true }))).map(({ name }) => name.text));

const bare = (sentence: string): string =>
  cut(sentence.trim().replace(/[.!?;:…()¿¡\s]+$/u, ''), LONGEST_TOLD);
