import { signsIn } from '../../flaws/signs.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import { amountsIn, isOil } from '../amounts.ts';
import { otherCountryIn } from '../countries.ts';
import { thingsIn } from '../entities.ts';
import { isOfCraft } from '../learned/topics.ts';
import { tellsOfHurt } from '../lye/nearest/hurt.ts';
import { regionIn } from '../regions.ts';
import { type Outside, outsideField } from '../scope.ts';
import { LYE_WORDS, OUR_WORDS, SOAP_WORDS } from '../soap-words.ts';
import { strengthIn } from '../strength-in.ts';
import { wordsOf } from '../words-of.ts';

/** What is done to soap, its batter and its colours, and what they are worked with, beside the words that name them. */
const WORKING =
  /(?<!\p{L})(?:oils?|fats?|butters?|lard|tallow|suet|aceites?|grasas?|mantecas?|sebo|pots?|jugs?|pigment\p{L}*|dyes?|tint\p{L}*|hues?|shades?|tones?|tonos?|powders?|polvos?|fragrances?|scents?|fragancias?|esencias?|aromas?|glycerine?|glicerina|layers?|capas?|stripes?|franjas?|pour\p{L}*|vert\p{L}+|stick blend\p{L}*|batidora|sparkl\p{L}*|brill\p{L}+|gold|silver|dorad\p{L}+|platead\p{L}+|challenge|contest|entr(?:y|ies)|vot(?:e|es|ed|ing|ar)|retos?|concursos?|shelf|stash|estante\p{L}*|curing|caustic\p{L}*|superfat\p{L}*|sobreengras\p{L}*|ppo|recipes?|recetas?|labels?|etiquetas?)(?!\p{L})/u;

const isHue = (word: string): boolean =>
  isColourWord(foldedColour(word)) || isColourWord(foldedColour(word.replace(/s$/u, '')));

/** Fields whose name decides where a question belongs; meals and money are spoken of beside any question. */
const BY_THE_WAY: ReadonlySet<Outside> = new Set(['food', 'business']);

/** One sign alone is read in talk of rain and fish fingers as well. */
const SIGNS = 2;
/** Fewer words are said of what stands before them: "UK, obviously.", "medium", "ombre". */
const LEAST_WORDS = 4;
const WORD = /^\p{L}+/u;
/** Greetings, which are said of nothing. */
const GREETS =
  /^\W*(?:hi|hello|hey|hiya|howdy|good (?:morning|evening|afternoon)|morning|evening|afternoon|hola|holi|buen[oa]s?(?: \p{L}+)?|saludos?|thanks?|thank you|ta|cheers|gracias)(?!\p{L})/u;
/** What a sentence tells that an answer hangs on, though it names nothing of the trade: a figure, a place with a law, how strong, a likeness. */
const TELLS =
  /[\d#]|(?<!\p{L})(?:ombre|gradient|rainbow|arcoiris|laws?|rules?|banned|legal\p{L}*|allowed|normativa|ley(?:es)?|reglament\p{L}+|instead|without|gallons?|en vez|en lugar|sin|exam\p{L}*|class|clase|school project|homework|tarea|same|mism[oa]s?|stronger|weaker|dark\p{L}*|light(?:er)?|bright\p{L}*|pale\p{L}*|soft|bold|clar[oa]s?|oscur[oa]s?|fuertes?|intens[oa]s?|suavec?it[oa]s?|suaves?|palid[oa]s?|viv[oa]s?)(?!\p{L})/u;

/**
 * Whether a sentence speaks of the trade, or of what decides where a question belongs: something that is named, an amount, a hue, an oil, lye, a
 * bar, a sign of a flaw, another craft, or somebody who is hurt. In doubt it does. Pure.
 */
export function speaksOfTrade(sentence: string): boolean {
  const read = wordsOf(sentence);
  const { words, text } = read;
  if ([SOAP_WORDS, OUR_WORDS, LYE_WORDS, WORKING].some(some => some.test(text))) return true;
  if (words.some(isHue) || TELLS.test(text)) return true;
  if (words.filter(word => WORD.test(word)).length < LEAST_WORDS && !GREETS.test(text)) return true;
  if (regionIn(text) !== undefined || otherCountryIn(text) !== undefined) return true;
  if (tellsOfHurt(sentence) || isOfCraft(words)) return true;
  const field = outsideField(text);
  if (field !== undefined && !BY_THE_WAY.has(field)) return true;
  const things = thingsIn(read);
  return (
    things.length > 0 ||
    strengthIn(read, things) !== undefined ||
    amountsIn(read, things).length > 0 ||
    words.some((_, at) => isOil(words, at)) ||
    signsIn(sentence) >= SIGNS
  );
}
