import { unbroken } from '../../over-lines.ts';
import { cut } from '../../text/excerpt.ts';
import { unaccented } from '../../text/unaccented.ts';
import { FAT, LYE, plainWords } from './amounts/words.ts';
import type { Item } from './recipe-line/items/item.ts';
import { itemsOf } from './recipe-line/items/items.ts';
import { isMeasure, isName } from './recipe-line/settling/parts.ts';

/** So much of a message is looked at, and of each sentence told again, in UTF-16 units; and so many sentences. */
const LONGEST = 2000;
const LONGEST_TOLD = 90;
const MOST = 2;
const WORDS_OF_TALK = 4;

/** A sentence ends with its mark or its line, not within 1.5 kg or 1,5 kg. */
const SENTENCES = /[^.!?;\n…]+(?:[.](?=\d)[^.!?;\n…]+)*[.!?;\n…]*/gu;
const OF_LYE = new RegExp(String.raw`(?<!\p{L})(?:${LYE}|${FAT})(?!\p{L})`, 'u');

/** Words that speak of what was named before, or of what it is weighed, held and told in. Lower case without accents. */
export const REFERS = new RegExp(
  unbroken`
    (?<!\p{L})(?:it|them|that|thats|those|these|this|some|one|ones|rest|all|half|most|bit|both|each|
    everything|mine|hers|his|theirs|lot|numbers?|pots?|pans?|jars?|jugs?|bowls?|bottles?|tubs?|bags?|tins?|
    scales?|weigh\p{L}*|pour\p{L}*|melt\p{L}*|render\p{L}*|labels?|lists?|recipes?|batch\p{L}*|mou?ld|oils?|
    fats?|butter|lo|le|les|(?:se|me|te|nos) l[oa]s?|\p{L}{3,}(?:ar|er|ir|ando|endo)l[oa]s?|es[eao]s?|
    est[eao]s?|aquell[oa]s?|otr[oa]s?|resto|demas|mitad|parte|poco|algo|amb[oa]s|cada|tod[oa]s?|numeros?|
    ollas?|frascos?|frasquitos?|bolsas?|botellas?|botecitos?|baldes?|latas?|garrafas?|balanzas?|basculas?|
    pes(?:e|o|a|amos|ado|ando|ar)|etiquetas?|listas?|recetas?|moldes?|aceites?|grasas?)(?!\p{L})
  `,
  'u',
);

/** "El total en la olla da 700, lo conté con los dedos": more words than a figure of a recipe has, and no name of anything that it is of. */
const isTalk = (items: readonly Item[]): boolean =>
  !items.some(isName) && items.filter(({ is }) => is === 'word').length >= WORDS_OF_TALK;
const isCounted = (items: readonly Item[]): boolean =>
  items.some(item => COUNTED.has(item.is)) || (items.some(isMeasure) && !isTalk(items));
/** What the reader of recipes takes into account, each in its own way. */
const COUNTED: ReadonlySet<Item['is']> = new Set(['times', 'rescales', 'swaps', 'instead', 'units']);
const GREETS = new RegExp(
  unbroken`
    ^\W*(?:hi|hey|hello|hiya|howdy|hiya|good|evening|morning|afternoon|thanks?|thank|ta|cheers|lovely|sorry|
    hola|holi|buen[oa]s?|saludos?|gracias|muchas|mil|un saludo|perdon)(?!\p{L})
  `,
  'u',
);
const namesOil = (items: readonly Item[]): boolean =>
  items.some(item => isName(item) && (item.known === 'oil' || item.known === 'any-oil'));

/**
 * The sentences of a message, without figures, in which words were passed by, whole, so that nobody has to guess from a scrap what was not
 * counted; a scrap of a sentence with figures stays as it is. Each at most 90 characters. Pure.
 * @example wholeSentences('500 g olive. The tins are from a korma.', ['tins', 'korma']) // ['The tins are from a korma']
 */
export function wholeSentences(typed: string, scraps: readonly string[]): readonly string[] {
  const sentences = [...typed.slice(0, LONGEST).matchAll(SENTENCES)].map(([sentence]) => sentence.trim());
  const told = scraps.map(scrap => {
    const whole = sentences.find(
      sentence => !/\d/u.test(sentence) && unaccented(sentence, LONGEST).includes(unaccented(scrap)),
    );
    const [bare = ''] = /^.*[^.!?;…\s]/su.exec(whole ?? scrap) ?? [];
    return cut(bare, LONGEST_TOLD);
  });
  return [...new Set(told)];
}

/** "The coconut's": the name is read without what is run together with it. */
const apart = (sentence: string): string => sentence.replace(/(?<=\p{L})['’]s(?!\p{L})/gu, ' is');

/**
 * The sentences of a message that stand beside its recipe and speak of something in it, or of what it is weighed and kept in, without
 * an amount: "Still a fair bit of water in that", "lo pesé dentro de la garrafa". What keeps an oil out of the pot has no end of words, so
 * that whoever told it is shown what was not counted. As they were typed, at most two, each at most 90 characters; questions are none.
 * Pure.
 */
export function saidBeside(typed: string): readonly string[] {
  const told: string[] = [];
  for (const [sentence] of typed.slice(0, LONGEST).matchAll(SENTENCES)) {
    const said = sentence.trim();
    const plain = unaccented(said, LONGEST);
    if (said === '' || said.endsWith('?') || OF_LYE.test(plain)) continue;
    const items = itemsOf(plainWords(apart(said), { clauses: true }));
    const isOfRecipe = namesOil(items) || (REFERS.test(plain) && !GREETS.test(plain));
    if (isCounted(items) || !isOfRecipe) continue;
    const [bare = ''] = /^.*[^.!;…\s]/su.exec(said) ?? [];
    told.push(cut(bare, LONGEST_TOLD));
    if (told.length === MOST) break;
  }
  return told;
}
