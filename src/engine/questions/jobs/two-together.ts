import { unbroken } from '../../over-lines.ts';
import { foldedColour, isColourWord } from '../../text/colours/folded-colours.ts';
import type { Words } from '../found/words-of.ts';
import type { Found } from '../learned/features.ts';

/** What two come to, in so many words. */
const COME_TO = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:what|which) colou?r (?:do|does|would|will) (?:\p{L}+ ){1,8}?(?:make|give)|(?:makes?|
    gives?) (?:what|which) colou?rs?|(?:what|which)(?: colou?rs?)? (?:do|will|would|can|might|should|shall) (?:i|
    you|we) (?:get|see|end up with)|what (?:comes|will come|would come) (?:out|of (?:it|that|them))|what (?:do|
    does|will|would) (?:they|it|that|those|these|this) (?:make|give|come (?:out )?(?:to|as)|come out|
    turn (?:in)?to|look like)|what (?:do|does|will|would) .{3,50} (?:make|give|come to)\W*$|=\s*(?:what|
    que|q|\?)|(?:q|k|que) (?:color|colores|tono) (?:me |nos )?(?:dan?|hacen?|sale|salen|queda|resulta|
    obtengo|forman)|(?:q|k|que) (?:me |nos )?(?:sale|saldra|dara|dan|da|obtengo|resulta)(?:\W*$| (?:si|de|al|cuando) (?:(?:yo|se|lo|los) )?(?:mezcl|
    junt|combin|pon|ech|sum|met)\p{L}+)|
    (?:together|tog(?:ether)?|thegither|junt[oa]s|mezclad[oa]s) (?:(?:is|are|was|do|does|will|would|es|son|
    da|dan) )?(?:that|it|they|i get|make|makes|eso|queda|sale)?)(?!\p{L})
  `,
  'u',
);
/** A hue that may come of them, and what else may: "green or just mud", "un morado bonito o uno triste". */
const EITHER =
  /(?<![\p{L}-])(?:or|o)(?: (?:just|a|an|is it|will it be|un|una|solo|un asco|mas bien))*(?: \p{L}+){0,2}\W*$/u;
/** Said of what comes of them, before a hue. */
const GIVES = unbroken`
  (?:makes?|gives?|is that|is it|would (?:that|it) be|will (?:that|it) be|comes? out|yields?|turns? (?:in)?to|da|
  dan|dara|daran|sale|queda|me da|resulta)
`;
/** A hue that is wished is to be mixed, and of what is told beside it. */
const WISHED = new RegExp(
  unbroken`
    (?<!\p{L})(?:how (?:do|can|could|would|should|to|much)|can (?:i|you|we|one) (?:make|get)|
    puedo (?:hacer|sacar)|want\p{L}*|need\p{L}*|after|looking for|hoping for|like (?:a|an)|ratios?|proportions?|
    como (?:hago|hacer|saco|sacar|consigo|logro|obtengo|puedo)|quiero|quisiera|busco|necesito|
    proporcion(?:es)?|cuant[oa]s?)(?!\p{L})
  `,
  'u',
);
const OUTCOME = new RegExp(
  unbroken`
    (?<!\p{L})${GIVES} (?:(?:me|a|an|un|una|to|like|nice|good|clean|proper|buen|lindo|bonito) )*(\p{L}+)
  `,
  'gu',
);

/** Whether the end of a question asks which of two comes out of it: a hue, or something else. */
function asksEither(text: string): boolean {
  const at = EITHER.exec(text)?.index;
  if (at === undefined) return false;
  const before = text.slice(0, at).match(/\p{L}+/gu) ?? [];
  return before.slice(-2).some(word => isColourWord(foldedColour(word)));
}

const tellsOutcome = (text: string): boolean =>
  [...text.matchAll(OUTCOME)].some(([, word]) => isColourWord(foldedColour(word!)));

/** Side by side in a bar two are not stirred into one; what light or lye does to them is told of each. */
const APART = new RegExp(
  unbroken`
    (?<!\p{L})(?:swirl\p{L}*|layers?|stripes?|half|halves|top|bottom|palette|beside|next to|pour\p{L}*|
    remolin\p{L}*|capas?|franjas?|rayas?|mitad|arriba|abajo|paleta|al lado|go(?:es)? with|versus|vs|contra|
    stronger|strongest|difference|diferencia|mas fuerte|in (?:the )?(?:lye|light|sun)|surviv\p{L}*|
    aguant\p{L}*|bleed\p{L}*|fad\p{L}*|lye|naoh|koh|sosa|soda|lejia|superfat)(?!\p{L})
  `,
  'u',
);
/** What was put in already is told of, and not foreseen. */
const PUT_IN_ALREADY = new RegExp(
  unbroken`
    (?<!\p{L})(?:at the weekend|yesterday|last (?:week|night|time)|the other day|ayer|anoche|
    la semana pasada)(?!\p{L})
  `,
  'u',
);
const JOINS = /^(?:and|n|an|y|e|con|with|\+|&|mas|plus|in|into)$/u;
const BESIDE_JOINS =
  /^(?:\d{1,2}|parts?|partes?|a|the|el|la|al?|some|un|una|little|bit|of|poco|de|touch|trace|pinch|hint|dash|drop|hair|speck|pizca|punta|toque|gota)$/u;

/** "Ultramarine and yellow oxide": two that are named beside one another. */
function areJoined({ words }: Words, { things }: Found): boolean {
  const named = things.filter(({ colourants }) => colourants.length > 0);
  const [first, second] = named;
  if (named.length !== 2) return false;
  const between = words.slice(first!.to, second!.from).filter(word => !BESIDE_JOINS.test(word));
  return between.length > 0 && between.length <= 2 && between.every(word => JOINS.test(word));
}

/** A share of each is no amount: "1:1". */
const isShare = (text: string): boolean => /^\d+ ?(?:: ?\d+|part\p{L}*)?$/u.test(text);

/**
 * Whether a question names two colourants and asks which colour both come to in one portion: "what do I get if I put yellow oxide and
 * ultramarine together, a green or just mud". No amount of either is told, so none is foreseen of more than equal doses. Pure.
 */
export function asksWhatTwoMake(read: Words, found: Found): boolean {
  const { text } = read;
  if (APART.test(text) || PUT_IN_ALREADY.test(text) || !areJoined(read, found)) return false;
  if (found.amounts.some(amount => !isShare(amount.text))) return false;
  return COME_TO.test(text) || (!WISHED.test(text) && (asksEither(text) || tellsOutcome(text)));
}
