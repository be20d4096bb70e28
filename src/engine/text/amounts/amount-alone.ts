import { knownOil } from '../../batch/oils/find-oil.ts';
import { spaced, unbroken } from '../../over-lines.ts';
import { hedged, withoutRemark } from '../../quantities/spoken/amount-remarks.ts';
import { spokenAmounts } from '../../quantities/spoken/spoken-amounts.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';
import { deaccented } from '../unaccented.ts';
import { amountAmongWords } from './amount-among-words.ts';

/** Words that stand before an amount and change nothing of it: who has it, what it comes to. */
const BEFORE = new Set(
  spaced`
    i i've ive i'm im we we've you it it's its there there's theres is are was be will should comes come
    came weighs weigh makes make made holds hold takes got have has had gives the a an all that that's
    thats this what what's whats whole lot of to at out my our mum's mums usual still left over leftover
    batch batter recipe soap oil oils fat fats total just only exactly say call lets let's need want use
    using doing going with for amount size weight measured weighed poured one ok okay well yes no so son es
    sera seran serian tengo tenemos hay queda quedan quedaron quedo sobra sobran sobraron sobro me nos le
    te se sale salen salieron pesa pesan peso lleva llevo llevan hago hice uso usamos total totales todo
    todos toda todas el la lo los las un una de en con mi mis nuestra masa mezcla pasta jabon aceite
    aceites grasa grasas solo nomas justo pues mira bueno a ver creo que receta lote tanda cantidad quiero
    necesito voy hacer usar para aqui ya si junto juntos bucket jug pot bowl jar pail container mould mold
    na mga po remain remains remaining about jarra olla balde cubeta molde vaso recipiente
  `.split(' '),
);
/** Beside an amount these may change how much of what is meant. */
const CHANGES = new RegExp(
  unbroken`
    (?<!\p{L})(?:half|halves|double|twice|triple|thrice|third|quarter|less|minus|plus|except|without|but|
    each|every|per|times|between|mitad|medi[oa]|doble|triple|tercio|cuarto|menos|mas|m[aá]s|sin|pero|salvo|
    excepto|cada|por|entre|lye|naoh|koh|water|milk|wax|sosa|soda|lej[ií]a|agua|leche|cera|imperial(?:es)?|
    british|forgot(?:ten)?|olvid\p{L}*|two|three|four|five|six|seven|eight|nine|ten|dos|tres|cuatro|cinco|
    seis|siete|ocho|nueve|diez)(?!\p{L})
  `,
  'iu',
);
const OF_OILS = /(?<!\p{L})(?:oils?|fats?|aceites?|grasas?)(?!\p{L})/iu;
/** A measure that is said not to be meant: "pesado no en taza", "by weight not cups". */
const NOT_IN = new RegExp(
  unbroken`
    [\s,]*(?:(?:by weight|weighed|pesad[oa]s?)[\s,]+)?(?<!\p{L})(?:not?|nunca|never)(?: (?:en|in|by|
    de))? (?:tazas?|cups?|volum\p{L}+|gram\p{L}*|ml|onzas?|ounces?|ojo)(?!\p{L})
  `,
  'giu',
);
/** What it is told to be without is no part of it. */
const WITHOUT = new RegExp(
  unbroken`
    [\s,]*(?<!\p{L})(?:no|not|without|before|sin|antes de)(?: (?:the|el|la|any|counting|contar|including|
    incluir))* (?:(?:lye|sosa|soda)[ -]?(?:water|agua)|agua (?:de|con) (?:sosa|soda)|water|lye|agua|sosa|
    soda|lej[ií]a)(?: (?:and|y|or|ni|nor) (?:(?:the|el|la) )?(?:water|lye|agua|sosa|soda|
    lej[ií]a))?(?: (?:join|yet|added|in(?: it)?|todav[ií]a|a[uú]n))?(?=[\s.,)]*$)
  `,
  'iu',
);
/** How often it was weighed tells nothing of how much: "420 grams of it, weighed twice". */
const TWICE =
  /[\s,;(]*(?<!\p{L})(?:weighed|measured|checked|pesad[oa]s?|medid[oa]s?|comprobad[oa]s?)(?: it)? (?:twice|two times|dos veces|2 veces|again)(?!\p{L})\)?/giu;
const OF_IT = /(?<=\d\s?\p{L}+) (?:of|o['’]?|de) (?:it|that|this|eso|esto)(?=[\s,.;)]*$)/giu;
/** A comma is none inside a figure. */
const CLAUSES = /[;()–—]|[,.](?!\d)|\.{2,}|\s-\s/u;

const wordsOf = (text: string): readonly string[] =>
  (text.replace(/’/gu, "'").match(/[\p{L}\p{M}']+/gu) ?? []).map(deaccented);

/** Whether a clause names nothing that an amount could be of, and counts nothing. */
const isIdle = (clause: string): boolean => {
  const words = wordsOf(clause);
  return (
    !CHANGES.test(clause) &&
    !words.some((word, at) => (word.length > 2 && unitOfWord(word) !== undefined) || isOil(words, at))
  );
};
const isOil = (words: readonly string[], at: number): boolean =>
  words[at]!.length > 3 &&
  (knownOil(words[at]!) ?? knownOil(words.slice(at, at + 2).join(' '))) !== undefined;

const MASS = String.raw`(\d\/\d|\d[\d.,]*) ?(g|gr|grams?|gramos?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?)?`;
/** "400 g olive plus 200 g coconut", "400 de unos mas 350 de otros, gramos": oils that are added up. */
const SUM = new RegExp(
  unbroken`
    ^${MASS} (?:of |de )?(\p{L}[\p{L} ]*?) (?:plus|and|mas|más|y|\+) ${MASS} (?:of |
    de )?(\p{L}[\p{L} ]*?)(?:[, ]+(?:(?:so|total|in all|que son|son|en total|o sea|makes|
    =) )*${MASS}(?: (?:of|de) (?:oils?|fats?|aceites?|grasas?))?)?$
  `,
  'iu',
);
const OTHERS = /^(?:one|another|some|others?|the (?:one|other)|unos?|otros?|unas?|otras?|una|otra)$/iu;

const KILO = /^(?:kg|kilos?)$/iu;
/** Bare figures that a sum in kilos shows to be grams. */
const gramsBy = (
  one: string,
  other: string,
  [total, unit = '']: readonly [string | undefined, string | undefined],
): 'g' | undefined =>
  total !== undefined && KILO.test(unit) && Number(one) + Number(other) === 1000 * figureOf(total)
    ? 'g'
    : undefined;
const figureOf = (text: string): number => {
  const [over = 0, under = 1] = text.replace(',', '.').split('/').map(Number);
  return over / under;
};

/** Two weights of oils as one, where a sum that is told beside them is theirs; undefined where it is another. */
function sumOf(text: string): string | undefined {
  const last = /^(.*?),? (grams|gramos|ounces|onzas)$/iu.exec(text);
  const [, one, unit, name = '', other, otherUnit, otherName = '', total, totalUnit] =
    SUM.exec(last?.[1] ?? text) ?? [];
  if (one === undefined || other === undefined) return undefined;
  const of = unit ?? otherUnit ?? last?.[2] ?? gramsBy(one, other, [total, totalUnit]);
  const names = [name, otherName].every(said => OTHERS.test(said) || isOil(wordsOf(said), 0));
  if (!names || of === undefined || (unit ?? of) !== (otherUnit ?? of)) return undefined;
  const [a, b, sum] = [one, other, total].map(figure =>
    figure === undefined ? Number.NaN : figureOf(figure),
  );
  const isKilos = unit === undefined && otherUnit === undefined && KILO.test(totalUnit ?? '');
  if (!(a! > 0 && b! > 0) || (total !== undefined && sum! * (isKilos ? 1000 : 1) !== a! + b!))
    return undefined;
  return `${a! + b!} ${of} oils`;
}

const VESSEL = String.raw`(?:(?:the|a|my|this|la|el|una?|mi|esta?) )?(\p{L}+)`;
/** "half the jug, jug's a litre", "media jarra, la jarra es de 2 litros". */
const PART_OF_TOLD = new RegExp(
  unbroken`
    ^((?:(?:an?|one|two|three|un|una|la|dos|tres|[123]) )?(?:half|thirds?|quarters?|mitad|medi[oa]|tercios?|
    cuartos?)|\d\/\d) (?:(?:of|de|del) )?${VESSEL}[\s,;.(]+(?:and |y |(?:which|that|
    que) )?(?:${VESSEL} ?)?(?:['’]?s|is|holds|takes|has|es|son|tiene|lleva|hace|(?:le )?caben?)(?: (?:of|de|
    in all|about|como))* (\d[\d.,/ ]*\p{L}+)\)?$
  `,
  'iu',
);

const IT = /^(?:it|that|this|esta?|esa?)$/iu;

function partOfTold(text: string): string | undefined {
  const [, part, whole, again, amount] = PART_OF_TOLD.exec(text) ?? [];
  if (
    part === undefined ||
    amount === undefined ||
    (again !== undefined && !IT.test(again) && deaccented(again) !== deaccented(whole!))
  )
    return undefined;
  return `${/^medi/iu.test(part) ? '1/2' : part} of ${amount}`;
}

/**
 * The one amount of a text without what is said before and after it: "all that's left, about 900 ml" is "about 900 ml", "los
 * aceites pesan 640 g" is "640 g aceites". Undefined where the text holds figures of two things, or a word beside the amount that
 * may change it. Pure.
 */
export function amountAlone(text: string): string | undefined {
  const said = text.replace(TWICE, '').replace(OF_IT, '');
  return (
    amountOfWords(said.replace(WITHOUT, '')) ?? bareOfOils(said.replace(WITHOUT, '')) ?? amountOfClauses(said)
  );
}

/** From here on a bare figure of oils is grams, as kitchen scales tell them: so many ounces would be 3 kg. */
const LEAST_GRAMS = 100;
const BARE_OILS = new RegExp(
  unbroken`
    ^(?:(?:my|the|mis|los|de|total) )*(?:(?:oils?|fats?|aceites?|grasas?)(?:\s?[:=,]| (?:are|is|son|
    total(?:es)?|in all|en total))* (\d{2,5})|(\d{2,5}) (?:(?:of|de) )?(?:(?:my|the|mis|los) )?(?:oils?|
    fats?|aceites?|grasas?)(?: (?:total(?:es)?|in all|en total))?)[\s.]*$
  `,
  'iu',
);

/** "oils: 650", "700 de aceites". */
function bareOfOils(text: string): string | undefined {
  const match = BARE_OILS.exec(spokenAmounts(text).trim());
  const figure = match?.[1] ?? match?.[2];
  return figure !== undefined && Number(figure) >= LEAST_GRAMS ? `${figure} g oils` : undefined;
}

/** Pieces of so much each are counted by their own reader. */
function amountOfWords(text: string): string | undefined {
  const { amount, count, ofOils } = amountAmongWords(text) ?? {};
  return count === undefined && amount !== undefined ? `${amount}${ofOils ? ' oils' : ''}` : undefined;
}

function amountOfClauses(text: string): string | undefined {
  const spoken = spokenAmounts(text.replace(NOT_IN, '').replace(WITHOUT, ''));
  const told = sumOf(spoken) ?? partOfTold(spoken);
  if (told !== undefined) return told;
  const said = hedged(spoken).text;
  const clauses = said.split(CLAUSES).map(clause => clause.trim());
  const figured = clauses.filter(clause => /\d/u.test(clause));
  const others = clauses.filter(clause => clause !== '' && !/\d/u.test(clause));
  const [clause] = figured;
  if (clause === undefined || figured.length > 1 || !others.every(isIdle)) return undefined;
  const first = clause.search(/\d/u);
  const head = clause.slice(0, first);
  if (!wordsOf(head).every(word => BEFORE.has(word))) return undefined;
  const amount = withoutRemark(clause.slice(first)).replace(/\s+(?:remains?|remaining|left over|po)$/iu, '');
  const rest = clause.slice(first + amount.length);
  if (CHANGES.test(rest)) return undefined;
  const oils = OF_OILS.exec(`${head} ${others.join(' ')}`)?.[0];
  return oils === undefined || OF_OILS.test(amount) || !/\p{L}/u.test(amount) ? amount : `${amount} ${oils}`;
}
