import { unbroken } from '../../over-lines.ts';
import type { Words } from '../found/words-of.ts';
import type { Found } from '../learned/features.ts';
import { isOfCraft, topicsIn } from '../learned/topics.ts';

const LYE = /\b(?:lye|sosa|soda|naoh|koh|caustic\w?|lejia)\b/u;
const SOAP = /\b(?:soap\w*|jabon\w*|batter|superfat|saponif\w*)\b/u;
/** Said of soap alone: of cakes only "cake batter". */
const MAKING =
  /\b(?:saponif\w*|superfat|(?<!(?:cake|pancake|muffin|waffle) )batter (?:at|is|gets?|went|to) (?:\w+ )?trace)\b/u;
/** What becomes of a colour; a barber's fade is none. */
const KEEPS =
  /\b(?:(?<!\b(?:a|un|the|skin|mid|low|high) )fades?|fading|survives?|holds? up|bleeds?|destin\w*|aguanta\w*|resiste\w*)\b/u;
/** Who has neither lye nor soap in it makes something else. */
export const WITHOUT_LYE =
  /\b(?:no|without|sin|not|surfactants?|tensioactiv\w*|sci) (?:\w+ )?(?:lye|sosa|soda|caustic\w?)\b/u;
/** Of lye that is at hand, or of what it does to a colour. */
const AT_HAND =
  /\b(?:que (?:uso|tengo|compre)|(?:(?:that|which) )?i (?:use|have|bought)|what colou?r|que color)\b/u;
/** A colour that is wished for, as something in the world has it, or for a feast. */
const WISHED =
  /\b(?:get(?!.* (?:out|off)\b)|match|sacar|saco|lograr|logro|conseguir|consigo|(?:baby|bridal) shower|wedding|boda|bautizo)\b/u;
const MATCHED = /\b(?:match for|same colou?r as|mismo color (?:que|de)|el color de)\b/u;
/** "How much blue for 3 cups": a bare hue that is dosed. */
const HUE_DOSED = new RegExp(
  unbroken`
    \b(?:how (?:much|many)|cuant[oa])(?: \w+){0,2}? (?:reds?|pinks?|oranges?|yellows?|greens?|blues?|
    purples?|violets?|browns?|blacks?|whites?|gr[ae]ys?|rojo|roja|rosa|naranja|amarillo|verde|azul|morado|
    violeta|cafe|marron|negro|blanco|gris) (?:for|in|into|per|para|en|por)\b
  `,
  'u',
);
/** The grade that another trade sells: "the painters one". */
const GRADE = /\b(?:painters?|artists?|candle|food|cosmetic) (?:one|grade|kind|type|sort)\b/u;
/** So many signs of a flaw on soap are a flaw, whatever stands around it. */
const SIGNS = 2;

/** Of the group's contest: pictures, entries and the button that one votes by; no election has those. */
const VOTING = new RegExp(
  unbroken`
    \b(?:vot(?:e[sd]?|ing|ar|as?|o|amos)|my (?:entry|pic(?:ture)?|photo)|mi (?:foto|
    entrada))\b(?=.*\b(?:buttons?|boton|pics?|pictures?|photos?|fotos?|entr(?:y|ies)|entradas?|challenge|
    reto|went? th(?:ru|rough)|go th(?:ru|rough))\b)
  `,
  'u',
);

/** Where something is that has the colour, or what the bars are a present at. */
const BY_THE_WAY = /^(?:taxis?|shower)$/u;

const foreignIn = (words: Words['words']) =>
  topicsIn(words.filter(word => !BY_THE_WAY.test(word))).filter(topic => topic !== 'cosmetics');

/** Whether a question's own words are of our matter, whatever was learned of the words around them. Pure. */
export function isSurelyOurs({ text, words }: Words, { things, facts }: Found): boolean {
  const isOfLye = LYE.test(text) && !WITHOUT_LYE.test(text);
  if (MAKING.test(text)) return true;
  // Pictures and buttons are of computers too.
  if (VOTING.test(text) && foreignIn(words).every(topic => topic === 'computers')) return true;
  if (isOfCraft(words) && !isOfLye) return false;
  if (HUE_DOSED.test(text) && foreignIn(words).length === 0) return true;
  if (
    MATCHED.test(text) ||
    (facts.target !== undefined && WISHED.test(text) && foreignIn(words).length === 0)
  )
    return true;
  if (SOAP.test(text) && facts.findings >= SIGNS) return true;
  if (things.length > 0 && [KEEPS, SOAP, GRADE].some(told => told.test(text))) return true;
  return isOfLye && (things.length > 0 || foreignIn(words).length === 0 || AT_HAND.test(text));
}
