import { signsIn } from '../../flaws/signs.ts';
import { unbroken } from '../../over-lines.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import { type Outside, outsideField } from '../fields/scope.ts';
import { LYE_WORDS, OUR_WORDS, SOAP_WORDS } from '../fields/soap-words.ts';
import { amountsIn, isOil } from '../found/amounts.ts';
import { thingsIn } from '../found/names/entities.ts';
import { strengthIn } from '../found/strength/strength-in.ts';
import { wordsOf } from '../found/words-of.ts';
import { isOfCraft, topicsIn } from '../learned/topics.ts';
import { tellsOfHurt } from '../lye/topics/nearest/hurt.ts';
import { otherCountryIn } from '../places/countries.ts';
import { regionIn } from '../places/regions.ts';
import { OF_LIFE, PEOPLE } from './talk-words.ts';
import { asksWhatItDoes } from './what-it-does.ts';

/** What is done to soap, its batter and its colours, and what they are worked with, beside the words that name them. */
const WORKING = new RegExp(
  unbroken`
    (?<!\p{L})(?:oils?|fats?|butters?|lard|tallow|suet|aceites?|grasas?|mantecas?|sebo|pots?|jugs?|
    pigment\p{L}*|dyes?|tint\p{L}*|hues?|shades?|tones?|tonos?|powders?|polvos?|fragrances?|scents?|
    fragancias?|esencias?|aromas?|glycerine?|glicerina|layers?|capas?|stripes?|franjas?|pour\p{L}*|
    vert\p{L}+|stick blend\p{L}*|batidora|sparkl\p{L}*|brill\p{L}+|gold|silver|dorad\p{L}+|platead\p{L}+|
    challenge|contest|entr(?:y|ies)|vot(?:e|es|ed|ing|ar)|retos?|concursos?|shelf|stash|estante\p{L}*|
    curing|caustic\p{L}*|superfat\p{L}*|sobreengras\p{L}*|ppo|recipes?|recetas?|labels?|etiquetas?)(?!\p{L})
  `,
  'u',
);

/** Times and places of a day that colours are named after. */
const OF_THE_DAY = new RegExp(
  unbroken`
    ^(?:night|noche|midnight|medianoche|sky|cielo|sea|mar|earth|tierra|sun|sol|rain|lluvia|storm|tormenta|
    snow|nieve|fire|fuego|smoke|humo|dawn|dusk|amanecer|atardecer)$
  `,
  'u',
);
const isHue = (word: string): boolean =>
  !OF_THE_DAY.test(word) &&
  (isColourWord(foldedColour(word)) ||
    isColourWord(foldedColour(word.replace(/(?<=[lnr])es$|(?<=[aeo])s$/u, ''))));

/** Fields whose name decides where a question belongs; meals, money and buses are spoken of beside any question. */
const BY_THE_WAY: ReadonlySet<Outside> = new Set(['food', 'business', 'other']);

/** Fewer words are said of what stands before them: "UK, obviously.", "medium", "ombre". */
const LEAST_WORDS = 4;
const WORD = /^\p{L}+/u;
/** Greetings, which are said of nothing. */
const GREETS = new RegExp(
  unbroken`
    ^\W*(?:hi|hello|hey|hiya|howdy|good (?:morning|evening|afternoon)|morning|evening|afternoon|hola|holi|
    buen[oa]s?(?: \p{L}+)?|saludos?|thanks?|thank you|ta|cheers|gracias)(?!\p{L})
  `,
  'u',
);
/** What a sentence tells that an answer hangs on, though it names nothing of the trade: a figure, a place with a law, how strong, a likeness. */
const TELLS = new RegExp(
  unbroken`
    (?<!\p{L})(?:ombre|gradient|rainbow|arcoiris|laws?|rules?|banned|legal\p{L}*|allowed|normativa|
    ley(?:es)?|reglament\p{L}+|instead|without|gallons?|en vez|en lugar|sin|exam\p{L}*|class|clase|
    school project|homework|tarea|same|mism[oa]s?|stronger|weaker|dark\p{L}*|light(?:er)?|bright\p{L}*|
    pale\p{L}*|soft|bold|clar[oa]s?|oscur[oa]s?|fuertes?|intens[oa]s?|suavec?it[oa]s?|suaves?|palid[oa]s?|
    viv[oa]s?)(?!\p{L})
  `,
  'u',
);

const FIGURE = /[\d#½¼¾⅓⅔]/u;
/** What has become of something: of a bar, where nobody else is told of. */
const BECAME = new RegExp(
  unbroken`
    (?<!\p{L})(?:came out|turned|went|gone|going|looks?|feels?|smells?|dropped|split|fell|quedo|quedaron|
    salio|salieron|se (?:me |nos |le )?(?:\p{L}+ )?(?:hizo|hicieron|puso|pusieron|volvio|cort\p{L}+|
    parti\p{L}+|raj\p{L}+|desarm\p{L}+)|endurec\p{L}+|huelen?|(?:eche|puse|tire|use|
    meti)(?: el| la| los| las)?)(?!\p{L})
  `,
  'u',
);
/** "It'd gone stiff", "se me puso duro": the pot's own doing, whoever came in at the door. */
const IT_BECAME = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:it|they|mine)(?:'?d|'?s|'?ve| has| had| have)?(?: all)? (?:gone|went|turned|seized|
    split|came out|going)|(?:^|(?<=[,;] |(?<!\p{L})y ))(?:quedo|quedaron|salio|salieron)|
    (?:se )?me (?:quedo|quedaron|salio|salieron|puso|pusieron|hizo|volvio|corto|partio))(?!\p{L})
  `,
  'u',
);
/** So long is what tells how strong a colour is to be: "medium I guess, not barbie". */
const MOST_OF_STRENGTH = 7;

/**
 * Whether a sentence speaks of the trade, or of what decides where a question belongs: something that is named, an amount, a hue, an oil, lye, a
 * bar, signs of a flaw, another craft, or somebody who is hurt. In doubt it does. Pure.
 */
export function speaksOfTrade(sentence: string): boolean {
  const read = wordsOf(sentence);
  const { words, text, corrections } = read;
  const count = words.filter(word => WORD.test(word)).length;
  if ([SOAP_WORDS, OUR_WORDS, LYE_WORDS, WORKING].some(some => some.test(text))) return true;
  if (asksWhatItDoes(text)) return true;
  if (FIGURE.test(sentence) || TELLS.test(text)) return true;
  if (count < LEAST_WORDS && !GREETS.test(text)) return true;
  if (regionIn(text) !== undefined || otherCountryIn(text) !== undefined) return true;
  if (tellsOfHurt(sentence) || isOfCraft(words)) return true;
  const field = outsideField(text);
  if (field !== undefined && !BY_THE_WAY.has(field)) return true;
  // A slip that was put right in talk is a name that was none: "los pelados" are no pearl.
  const isTyped = (from: number, to: number) => !corrections.some(({ at }) => at >= from && at < to);
  if (words.some((word, at) => isTyped(at, at + 1) && (isHue(word) || isOil(words, at)))) return true;
  const things = thingsIn(read);
  // Pots and soil that somebody knocks over are named by no maker.
  const isOfSomebody = PEOPLE.test(text);
  const isNamed = things.some(
    ({ from, to, colourants }) => isTyped(from, to) && (colourants.length > 0 || !isOfSomebody),
  );
  if (isNamed || amountsIn(read, things).length > 0) return true;
  return (
    (count <= MOST_OF_STRENGTH && strengthIn(read, things) !== undefined) ||
    IT_BECAME.test(text) ||
    (!isOfSomebody && (BECAME.test(text) || signsIn(sentence) > 0))
  );
}

/** Whether a sentence that neither asks nor speaks of the trade greets, or talks of family, weather and the day. Pure. */
export function isTalk(sentence: string): boolean {
  const { words, text } = wordsOf(sentence);
  return GREETS.test(text) || OF_LIFE.test(text) || topicsIn(words).length > 0;
}
