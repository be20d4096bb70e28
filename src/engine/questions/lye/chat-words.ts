import { OILS } from '../../batch/oils/index.ts';
import { foldedWords } from '../../text/fold.ts';
import { slipCost } from '../../text/spelling/slip-cost.ts';
import { COMMON_WORDS } from '../../text/spelling/trade-words.ts';
import { DIALECT } from '../dialect.ts';
import type { Pair } from './chat-pairs.ts';
import type { ChatToken } from './chat-tokens.ts';
import { isIdleWord } from './oils.ts';
import { SOMETHING } from './oils-among-words.ts';
import likeOils from './words-like-oils.json' with { type: 'json' };

/** Said beside a recipe, these may turn its sense or the amount of what is meant: nothing is answered. */
export const TURNS = new Set(
  'instead rather not no without minus less more forgot forget forgotten replace replaced replacing swap swapped swapping switch switched remove removed left out half halve halved double doubled doubling twice triple tripled thrice scale scaled except but or unless per each times convert converted same other rest remaining remainder actually oops meant mean wait scratch correction sorry between range maybe perhaps either both extra additional another sin vez lugar menos mas quita quito quitar olvide olvido olvidar cambie cambio cambiar sustituir sustituyo reemplazar reemplazo mitad doble duplica duplicar duplique triple triplica triplicar excepto salvo pero por cada o quise decir digo perdon mejor entre quiza tal ambos otra otro resto restante igual misma mismo used usado usada waste unknown mixed mixture blend mezcla'.split(
    ' ',
  ),
);
/** In a clause that holds nothing of the recipe these change nothing of it. */
const TURN_ONLY_BESIDE = new Set(
  'or but pero same sorry maybe perhaps either both another between o por tal mejor igual misma mismo quiza entre ambos otra otro'.split(
    ' ',
  ),
);
/** What is no fat, or only part of one, or a fat in bits: beside an oil's name it makes another thing of it. */
export const PRODUCTS =
  /^(?:oil\p{L}*|butter\p{L}*|fat\p{L}*|wax\p{L}*|lard\p{L}*|tallow\p{L}*|suet|dripping|grease|shortening|margarin\p{L}*|ghee|cream\p{L}*|milk\p{L}*|flour|sugar|syrup|juice|vinegar|water|powder\p{L}*|base|bases|seeds?|nuts?|kernels?|beans?|leaf|leaves|flakes?|chips?|shells?|husks?|pulp|puree|paste|meal|flesh|meat|jelly|jam|starch|stearin|olein|lecithin|extract|essence|essential|fragrance|perfume|scent|dried|dry|fresh|desiccated|dessicated|shredded|grated|ground|toasted|roasted|creamed|fractionated|hydrogenated|sulfated|sulphated|pickled|candles?|lotion|shampoo|conditioner|acid\p{L}*|solution|bleach|aceite\p{L}*|manteca\p{L}*|mantequilla\p{L}*|grasa\p{L}*|cera|ceras|sebo|unto|tocino|crema|nata|leche|harina|azucar|jarabe|jugo|zumo|vinagre|agua|polvo|molid[oa]s?|rallad[oa]s?|sec[oa]s?|fresc[oa]s?|tostad[oa]s?|semillas?|pepitas?|pipas|nueces|hojas?|pulpa|pasta|carne|almidon|esencia\p{L}*|extracto|perfume|fraccionad[oa]|hidrogenad[oa]|velas?|acid[oa]s?|cloro|solucion|argentin\p{L}*|uruguay\p{L}*|chilen\p{L}*|paraguay\p{L}*)$/u;
/** Who speaks: after "and" these open a sentence, and beside an oil they end its name. */
const SPEAKS = new Set(
  `i im ive id me my we us our you your he she they them it its this that these those there here who what when where why how which is are was were be been am do does did have has had got get can could will would shall should may might must want wanted need needed think thought know said says told gave give asked tell show check please thanks thank cheers kindly hi hello hey morning afternoon evening good dear so then now today tonight tomorrow yesterday just still also too very really quite only all together total altogether for from to in on at by as because since while with nothing ready done going gonna wanna lets let make making made weigh weighed pour poured using use put in into onto over under before after about around until till the a an of right correct ok okay safe fine enough much many
  yo me mi mis nos nuestro nuestra tu tus usted ustedes el ella ellos ellas lo la los las le les se su sus esto esta este estos estas eso esa ese aqui alli ahi quien que cuando donde porque como cual es son era eran fue fueron ser estoy esta estan estaba hay tengo tiene tenia tenemos quiero quiere quisiera necesito necesita puedo puede podria debo sabe saber digan dice dijo dicen gracias hola buenas buenos dias tardes noches oiga oigan oye ya ahora hoy manana ayer luego despues antes entonces solo solamente nomas nada listo lista todo toda todos todas total para de del en con al a hasta desde sobre muy bien bueno pues asi vale dale echo eche puse uso use hago hice hacer peso pese llevo lleva va vamos quedo queda cuanto cuanta cuantos cuantas supuestamente da dan dio sale salen queria quisimos haria seria serian jefe listo da`.split(
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

/** How far a word is from the nearest word of an oil's name, in slips; undefined where none is near. Lower case without accents. */
export function nearestOilWord(word: string): number | undefined {
  const near = OIL_WORDS.filter(oil => Math.abs(oil.length - word.length) <= 3)
    .map(oil => ({ cost: slipCost(word, oil), most: NEAR * Math.max(word.length, oil.length) }))
    .filter(({ cost, most }) => cost <= most)
    .map(({ cost }) => cost);
  return near.length === 0 ? undefined : Math.min(...near);
}

/** Everyday words that lie near an oil's and are no slip of it: "butcher". */
const LIKE_OILS: ReadonlySet<string> = new Set(likeOils.words.flatMap(row => row.split(' ')));

/** Whether a word that is no everyday one is spelt nearly as an oil's name. Lower case without accents. */
export function isNearOil(word: string): boolean {
  if (word.length < 4 || COMMON_WORDS.has(word) || LIKE_OILS.has(word) || isPlain(word)) return false;
  return nearestOilWord(word) !== undefined;
}

/** Where an oil comes from: "de la finca", "from the co-op". */
const ORIGIN =
  /^(?:de (?:la|el|mi|mis|los|las|casa|nuestr[oa])|del|from (?:the|my|our)|off the)(?: [\p{L}-]+)?$/u;
const isMark = (token: ChatToken | undefined): boolean => token === undefined || token.is === 'mark';
export const isEveryday = (word: string): boolean => isPlain(word) || COMMON_WORDS.has(word);
export const isPlain = (word: string): boolean => SPEAKS.has(word) || DIALECT.has(word) || isIdleWord(word);

/**
 * The words of a line beside its recipe, run by run, where none of them can be a fat or change an amount; otherwise those that stop it.
 */
export function stands(
  tokens: readonly ChatToken[],
  pairs: readonly Pair[],
): { readonly left: readonly string[] } | { readonly stop: string } {
  const paired = new Set<ChatToken>(pairs.flatMap(({ amount, name }) => [amount, name]));
  const left: string[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    if (tokens[at]!.is !== 'word') continue;
    const from = at;
    while (tokens[at + 1]?.is === 'word') at += 1;
    const words = tokens.slice(from, at + 1).map(({ text }) => text.replace(/['’]/gu, ''));
    const [before, after] = [tokens[from - 1], tokens[at + 1]];
    if (
      words.some(
        word =>
          turns(word, isApart(tokens, from, at)) ||
          PRODUCTS.test(word) ||
          isNearOil(word) ||
          /\d/u.test(word),
      ) ||
      SOMETHING.test(words.join(' '))
    )
      return { stop: words.join(' ') };
    if (isInUnknown(words)) return { stop: words.join(' ') };
    const first = words.find(word => !/^(?:the|an?|el|la|un|una)$/u.test(word)) ?? words[0]!;
    const isJoined =
      (before?.is === 'joint' && !isPlain(first)) ||
      (after?.is === 'joint' && followsPart(tokens, at + 1, paired) && !words.some(isPlain));
    const touches =
      !ORIGIN.test(words.join(' ')) &&
      ((!isMark(before) && before?.is !== 'joint' && before?.is !== 'asks' && !touching(words[0]!, before)) ||
        (!isMark(after) && after?.is !== 'joint' && after?.is !== 'asks' && !touching(words.at(-1)!, after)));
    if (isJoined || touches) return { stop: words.join(' ') };
    const strange = words.filter(word => !isPlain(word));
    if (strange.length > 0) left.push(words.join(' '));
  }
  return { left };
}

const ARTICLE = /^(?:the|my|an?|some|el|la|los|las|mi|un|una)$/u;
/** "In ambrosia", "con pulque": a liquid that nobody here knows may be what the lye goes into. */
const isInUnknown = (words: readonly string[]): boolean =>
  words.some(
    (word, at) =>
      /^(?:in|into|with|using|en|con)$/u.test(word) &&
      !isEveryday(words.slice(at + 1).find(next => !ARTICLE.test(next)) ?? word),
  );

/** Whether a word may turn the sense of what stands beside it, or of the whole line. */
const turns = (word: string, apart: boolean): boolean =>
  TURNS.has(word) && !(apart && TURN_ONLY_BESIDE.has(word));

/** Whether the clause of these tokens holds no amount and no name. */
function isApart(tokens: readonly ChatToken[], from: number, to: number): boolean {
  const isPart = ({ is }: ChatToken) => is === 'amount' || is === 'name';
  for (let at = from; at >= 0 && tokens[at]!.is !== 'mark'; at -= 1) if (isPart(tokens[at]!)) return false;
  for (let at = to; at < tokens.length && tokens[at]!.is !== 'mark'; at += 1)
    if (isPart(tokens[at]!)) return false;
  return true;
}

/** Whether what stands behind a joint is a part of the recipe. */
const followsPart = (tokens: readonly ChatToken[], joint: number, paired: ReadonlySet<ChatToken>): boolean =>
  [tokens[joint + 1], tokens[joint + 2]].some(token => token !== undefined && paired.has(token));

/** Beside a name only what ends it may stand; beside an amount any everyday word. */
const touching = (word: string, beside: ChatToken | undefined): boolean =>
  beside?.is === 'name' ? isPlain(word) : isEveryday(word);
