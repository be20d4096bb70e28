import { unaccented } from '../../text/unaccented.ts';
import { thingsIn } from '../entities.ts';
import { asksForOrder } from '../lye/asked-generally.ts';
import { tellsOfHarm } from '../lye/recipe-line/plain-recipe.ts';
import { wordsOf } from '../words-of.ts';
import { piecesOf } from './pieces.ts';

const HOW_MUCH = /(?<!\p{L})(?:how (?:much|many)|what amount|cuant[oa]s?|que cantidad)(?!\p{L})/u;
/** "For 350 ml of batter". */
const PORTION =
  /(?:\d|(?<!\p{L})(?:an?|one|two|half|una?|medi[oa]|dos)) ?(?:ml|l|lit(?:er|re)s?|litros?|cups?|tazas?|k?gs?|grams?|gramos?|kilos?|lbs?|pounds?|libras?|oz|ounces?|onzas?)(?!\p{L})/u;
const MIXES =
  /(?<!\p{L})(?:(?:what|which)(?: \p{L}+){0,2} (?:do|would|should|can|could) (?:i|you|we) (?:mix|blend|combine)|con que (?:polvos?|colores|pigmentos?|micas?|oxidos?)? ?(?:\p{L}+ )?(?:mezclo|saco|hago|consigo|logro|sale)|(?<!lo )que (?:(?:polvos?|colores|pigmentos|micas) )?mezclo)(?!\p{L})/u;
/** What this can do for whoever asks, who calls nobody to a bench. */
const WHAT_IT_DOES =
  /(?<!\p{L})(?:what (?:can|do|else can) (?:you|u|this) (?:(?:actually|really) )?(?:do|know|help)(?: (?:me )?with)?|how (?:can|do) you help|(?:que|vos que|tu que|usted que) (?:\p{L}+ )?(?:sab[eé]s|puedes|podes|haces) hacer|(?:en|con) que (?:me |nos )?(?:pued[eo]s?|podes|pueden) (?:ayudar(?:me|nos)?|servir)|(?:esto |tu |vos )?para que sirv\p{L}+ (?:esto|tu|vos|este)?)(?!\p{L})/gu;

const namesColour = (piece: string): boolean =>
  thingsIn(wordsOf(piece)).some(({ colourants }) => colourants.length > 0);

/** Whether a sentence plainly asks for an amount of a colour for a portion, for a colour to be mixed, or in which order lye and water go. */
function isPlain(piece: string): boolean {
  const plain = unaccented(piece);
  const isDose = HOW_MUCH.test(plain) && PORTION.test(plain) && namesColour(piece);
  return isDose || MIXES.test(plain) || asksForOrder(piece);
}

/**
 * Whether a message asks plainly for what is answered here, and none of its sentences has a word of harm: talk of rain, family and work beside
 * it is then no accident that was only half told. For texts of which first aid is shown in doubt, never for what is told outright. Pure.
 * @example asksCalmly('El agua se metió al salón anoche. ¿Cuánto óxido rojo para 350 ml?') // true
 */
export function asksCalmly(text: string): boolean {
  const plain = unaccented(text);
  const rest = plain.replace(WHAT_IT_DOES, ' ');
  if (tellsOfHarm(rest)) return false;
  return rest !== plain || piecesOf(text).some(isPlain);
}
