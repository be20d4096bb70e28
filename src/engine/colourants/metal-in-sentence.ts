import { unbroken } from '../over-lines.ts';
import { unaccented } from '../text/unaccented.ts';
import { type Metal, metalIn } from './metals.ts';

/*
 * Metal powder that a whole sentence asks for, beside whatever else it names: the mica at its side is no reason to pass it by. Zinc, aluminium
 * and tin make hydrogen and heat with lye, bronze, brass and copper corrode in it (general chemistry, from memory).
 */

/** Gold and silver are left out: a powder called so is mostly a mica. */
const METAL =
  '(?:alumini?um|aluminio|zinc|cinc|copper|cobre|bronze|bronce|brass|laton|tin|estano|pewter|peltre)';
const METALLIC = '(?:metal|metallic|metalic[oa]|real|pure|pur[oa]|raw)';
const FORM = '(?:powders?|dust|flakes?|filings?|shavings?|turnings?|leaf)';
const FORMA = '(?:polvos?|polvillo|escamas?|copos?|limaduras?|virutas?|purpurinas?|hojas?|laminas?)';
/** What makes a compound or a mica of it, behind it or before. */
const COMPOUND =
  'mica|oxide|oxido|lake|laca|hydroxide|hidroxido|stearate|estearato|chlorophyllin|clorofilina|colou?r|shade|tone|tono|free';
const NAMED = new RegExp(
  unbroken`
    (?<!\p{L})(?<!(?:mica|color|colour|tono|oxide|oxido) (?:de |of )?)(?:
    (?:${METALLIC} )?${METAL}(?: ${METALLIC})? ${FORM}|
    (?:powdered|flaked|ground) ${METAL}(?: ${METALLIC})?|
    ${FORMA} (?:fin[oa]s? )?(?:de |del )${METAL}(?: ${METALLIC})?|
    (?:${METAL}) (?:metalic[oa] )?en (?:polvo|escamas)
    )(?!\p{L})(?! (?:${COMPOUND}))
  `,
  'u',
);
/** By itself a tin is a vessel, so that no name of a colourant is looked for in it. */
const TIN = /(?<!\p{L})(?:tin|estano|pewter|peltre)(?!\p{L})/u;
/** A vessel, and a wrap: "aluminium leaf tray" and the sheet round a mould are not stirred in. */
const A_THING = /(?<!\p{L})(?:tray|mou?lds?|wrap|lining|liner|molde|bandeja|forro|envolver)(?!\p{L})/u;

/**
 * The metal powder, flake or filing that a sentence names, as it stands there without accents, and the metal; undefined where none is named. Takes
 * free prose, unlike {@link metalIn}. Pure.
 * @example metalInSentence('gold mica and bronze powder for 500 g oils') // { text: 'bronze powder', metal: 'bronze' }
 */
export function metalInSentence(
  sentence: string,
): { readonly text: string; readonly metal: Metal } | undefined {
  const plain = unaccented(sentence).replace(/\s+/gu, ' ');
  const text = NAMED.exec(plain)?.[0];
  if (text === undefined || A_THING.test(plain)) return undefined;
  return { text, metal: TIN.test(text) ? 'tin' : (metalIn(text)?.metal ?? 'unnamed') };
}
