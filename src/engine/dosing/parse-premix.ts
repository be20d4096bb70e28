import type { Carrier } from '../colourants/colourant.ts';
import { unbroken } from '../over-lines.ts';
import { parseAmount } from '../quantities/amount.ts';
import { plainText, readDecimal } from '../quantities/number.ts';
import { spokenAmounts } from '../quantities/spoken/spoken-amounts.ts';
import { plainWord } from '../quantities/unit-words.ts';
import { MEASURES, type Measures } from '../quantities/units.ts';
import { Refusal, refuse } from '../refusal.ts';
import { powderFromFigure } from '../text/amounts/powders/powder-among-words.ts';
import { excerpt } from '../text/excerpt.ts';
import { carrierNamed } from '../text/names/carrier-name.ts';
import { partsOf } from './premix-parts.ts';
import type { Premix } from './request.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'premix-unreadable': { text: string };
    'premix-out-of-range': { text: string };
    'carrier-unknown': { text: string };
  }
}

const LONGEST = 200;
const UNKNOWN: ReadonlySet<string> = new Set([
  '?',
  'unknown',
  'yes',
  'desconocido',
  'desconocida',
  'si',
  'no se',
  'no lo se',
]);

/**
 * Reads a carrier by its English or Spanish name, oils by their own. Throws a Refusal: `carrier-unknown`, or one of
 * {@link carrierNamed}'s.
 */
export function parseCarrier(text: string): Carrier {
  return carrierNamed(text) ?? refuse('carrier-unknown', { text: excerpt(text) });
}

/**
 * Reads how a colourant was wetted beforehand: `30%` pigment by weight (`30% in oil`; glycerin unless said), the
 * member's own paste (`1 tsp in 1 Tbsp oil`, `5 g in 15 g glycerin`, `1 cdta en 1 cda de aceite`), or `unknown`.
 * Throws a Refusal: `premix-unreadable`, `premix-out-of-range`, `carrier-unknown`, or one of `parseAmount`.
 */
export function parsePremix(text: string, measures: Measures = MEASURES.us): Premix {
  if (text.length > LONGEST) refuse('premix-unreadable', { text: excerpt(text) });
  try {
    return premixOf(text, measures);
  } catch (refusal) {
    const from = refusal instanceof Refusal && UNREAD.has(refusal.id) ? powderFromFigure(text) : undefined;
    if (from === undefined) throw refusal;
    return premixOf(`${from}${liquidBefore(text, from)}`, measures);
  }
}

/** Refusals of a premix that may only be told in more words. */
const UNREAD: ReadonlySet<string> = new Set([
  'premix-unreadable',
  'amount-unit-unknown',
  'amount-unreadable',
]);

/** The liquid that was named before the figures began. */
function liquidBefore(text: string, from: string): string {
  const liquid = carrierNamed(from) === undefined ? carrierNamed(text) : undefined;
  return liquid === undefined ? '' : ` in ${liquid}`;
}

function premixOf(text: string, measures: Measures): Premix {
  const plain = partsAlone(spokenAmounts(plainText(text).replace(OF_DIALECT, 'of ')))
    .replace(EQUALLY, '1 part $1 to 1 part $2')
    .replace(MEASURES_EACH, '$1 parts $2 to $3 parts $4')
    .replace(NAMES_BEFORE, '$3 parts $1 to $4 parts $2')
    .replace(PART_TO_PARTS, '1 to $1 $2')
    .replace(/^(?:al|at|a|@) ?(?=\d[\d.,]* ?%)/iu, '')
    .replace(SAID, '')
    .replace(LONE_SPOON, '1 ')
    .replace(SAID_BETWEEN, '$1$2por ')
    .replace(NAMES_FIRST, '$2 parts $1 to $4 parts $3');
  const carrier = carrierNamed(plain);
  if (carrier === undefined) refuseUnknownLiquid(plain);
  const percent = /^([\d.,]{1,8}) ?%/u.exec(plain)?.[1];
  if (percent !== undefined)
    return byShare((readDecimal(percent)[0] ?? Number.NaN) / 100, carrier ?? 'glycerin', text);
  if (UNKNOWN.has(plainWord(plain.split(/ (?:in|en) /u)[0] ?? '')))
    return { by: 'unknown', carrier: carrier ?? 'glycerin' };
  const parts = partsOf(plain);
  if (parts) return ownPaste(teaspoons(parts.powder), teaspoons(parts.liquid), carrier, text);
  const [powderText, liquidText] = twoAmounts(plain) ?? sides(plain);
  if (powderText === undefined || liquidText === undefined)
    return refuse('premix-unreadable', { text: excerpt(text) });
  return ownPaste(parseAmount(powderText, measures), parseAmount(liquidText, measures), carrier, text);
}

/** "Lo mezclé con glicerina, una parte de mica y cuatro de glicerina": what it went into is told again with the parts. */
const MIXED_FIRST = new RegExp(
  unbroken`
    ^[^\d,;:]*?(?<!\p{L})(?:mix(?:ed)?|wett?(?:ed)?|stirred|blended|made|mezcl\p{L}+|moj\p{L}+|disolv\p{L}+|
    disuelv\p{L}+|hidrat\p{L}+|bat[ií]\p{L}*|hice)(?!\p{L})([^\d,;:]*)[,;:]\s*(?=(?:\d+|an?|one|
    una?) (?:parts?|partes?|medidas?|measures?) )
  `,
  'iu',
);
function partsAlone(plain: string): string {
  const [head, before] = MIXED_FIRST.exec(plain) ?? [];
  if (head === undefined || before === undefined) return plain;
  const rest = plain.slice(head.length);
  const [told, again] = [carrierNamed(before), carrierNamed(rest)];
  // Another liquid in each is not settled here.
  if (told !== undefined && again !== undefined && told !== again) return plain;
  return again === undefined && told !== undefined ? `${rest} in ${told}` : rest;
}

/** Who mixes says so first; "for each spoon of powder I put four of oil" is one to four. */
const SAID = new RegExp(
  unbroken`
    ^(?:(?:(?:i|we|you) (?:do be |am |be |usually |always )*)?(?:mix|mixing|use|using|do|put|stir|
    wet)(?: (?:it|up|in|about))* |(?:yo )?(?:le )?(?:pongo|echo|uso|mezclo|hago|mojo) )?(?:(?:por|para|
    a) cada |(?:for|per|to) (?:each|every) )?(?=\d|an? |una? |half |media |one |tsp|tbsp|teaspoon|
    tablespoon|cdta|cda|cucharad)
  `,
  'iu',
);
const SAID_BETWEEN =
  /^(.*\d.*?\p{L})(\s)(?:(?:yo )?(?:le )?(?:pongo|echo|uso|meto|agrego|añado|van|va|lleva)|(?:i|we|you) (?:use|put|add|need)|(?:goes|go))\s(?=\d)/iu;
/** "Equal powder and oil". */
const EQUALLY = new RegExp(
  unbroken`
    ^(?:equal|same|igual(?:es)?)(?: (?:parts?|amounts?|partes|cantidad(?:es)?))?(?: (?:of|
    de))?[,:]? (\p{L}+(?: \p{L}+)?) (?:and|n|&|y|to|con|with) (\p{L}+(?: \p{L}+)?)[\s.]*$
  `,
  'iu',
);
/** "Una medida de carbón, cinco de girasol (aceite)". */
const MEASURES_EACH = new RegExp(
  unbroken`
    ^(\d+|an?|one|una?) (?:medidas?|measures?|scoops?|spoons?|cacitos?) (?:of |
    de )?(\p{L}+(?: \p{L}+)?),? (?:and |y |por |to |in |into |en )?(?:to )?(\d+|one|
    una?)(?: (?:(?:same[- ](?:sized?|big)|equal|iguales) )?(?:medidas?|measures?|scoops?|spoons?|cucharas?|
    of the same(?: spoons?)?)(?: iguales)?)? (?:of |
    de )(?:the same spoon of )?(\p{L}+(?: \p{L}+)?)(?: \([\p{L} ]+\))?[\s.]*$
  `,
  'iu',
);
/** "Clay:water 1:2". */
const NAMES_BEFORE =
  /^(\p{L}[\p{L}\d]*(?: \p{L}+)?) ?[:/] ?(\p{L}+(?: \p{L}+)?)[ ,:]+(\d{1,2}) ?[:/] ?(\d{1,2})[\s.]*$/iu;
/** "One o' powder". */
const OF_DIALECT = /(?<!\p{L})o['’] ?(?=\p{L})/giu;
/** "El dióxido lo tengo en agua, una parte por cinco de agua". */
const PART_TO_PARTS =
  /^(?:[^\d,]*,\s*)?(?:1|una?|one) (?:parte?|part) (?:por|to|a|in|en|with|con) (?:cada )?(\d{1,2}) (?:partes? |parts? )?(?:de |of )(\p{L}[\p{L} ]*)$/iu;
/** "Clay one part, water three parts". */
const NAMES_FIRST = new RegExp(
  unbroken`
    ^(?:the )?(\p{L}+(?: \p{L}+)?) (\d+|an?|one|una?) (?:parts?|partes?)[,;]? (?:and |
    y )?(?:the )?(\p{L}+(?: \p{L}+)?) (\d+|an?|one|una?) (?:parts?|partes?)(?!\p{L}).*$
  `,
  'iu',
);
/** A spoon that nobody counts is one. */
const LONE_SPOON = /^(?=(?:tsp|tbsp|teaspoon|tablespoon|cdta|cda|cucharadita|cucharada)\b(?! [\d½¼¾]))/iu;

const UNIT =
  '(?:tsp|teaspoons?|tbsp|tablespoons?|cups?|g|gr|grams?|ml|cc|oz|ounces?|cdtas?|cdas?|cucharaditas?|cucharadas?|tazas?|gramos?|onzas?|t)';
/** What an amount of liquid is of, at the end: "in 1 Tbsp banana", "30% en leche". */
const LIQUID = new RegExp(
  unbroken`
    (?: (?:in|into|en|con|with|to|per|por cada) (?:[\d.,/½¼¾⅛ ]+|an? |una? |one |half an? |
    media )?${UNIT}\.? (?:of |de )?|% (?:in|en) )(\p{L}{3,}(?: \p{L}+){0,2})$
  `,
  'iu',
);
/** Words for the liquid that leave open which it is. */
const ANY_LIQUID =
  /\b(?:liquid|liquido|líquido|carrier|batter|masa|medium|medio|powder|polvo|paste|pasta|spoons?|heaped|level)\b/iu;

/** A liquid by a name that nobody here knows is not taken for oil. Throws a Refusal `carrier-unknown`. */
function refuseUnknownLiquid(plain: string): void {
  const liquid = LIQUID.exec(plain)?.[1];
  if (liquid !== undefined && !ANY_LIQUID.test(liquid)) refuse('carrier-unknown', { text: excerpt(liquid) });
}

/** A part of a paste is taken for a teaspoon: only the proportion counts. */
const teaspoons = (parts: number) =>
  ({ measure: 'volume', millilitres: parts * MEASURES.us.teaspoon }) as const;

/** The powder's and the liquid's amounts, the names beside them left out; undefined where there are not two. */
function twoAmounts(plain: string): readonly [string, string] | undefined {
  const amount = /(?<![\p{L}\d.,/])(?:\d[\d.,/ ]*|half an? |an? |one |media |una? |[½¼¾⅛])\s*\p{L}+/giu;
  const found = [...plain.matchAll(amount)].map(([one]) => one).filter(one => isAmount(one));
  const [powder, liquid] = found;
  return powder !== undefined && liquid !== undefined && found.length === 2 ? [powder, liquid] : undefined;
}

/** What stands before and after "in": its amounts say themselves what is wrong with them. */
function sides(plain: string): readonly [string?, string?] {
  const [powder, liquid, ...more] = plain.split(/ (?:in|into|en|to|con|with|per|por cada) /u);
  return more.length > 0 || powder === undefined || liquid === undefined
    ? []
    : [
        powder,
        liquid
          .replace(/^(?=(?:tsp|tbsp|cucharada|cda))/iu, '1 ')
          .replace(
            /\s*(?:of |de )?(?:light |ligero )?(?:water|agua|oils?|aceites?|glycerine?|glicerina)$/iu,
            '',
          ),
      ];
}

function isAmount(text: string): boolean {
  try {
    parseAmount(text);
    return true;
  } catch (refusal) {
    return (
      refusal instanceof Refusal &&
      (refusal.id === 'amount-ambiguous' || refusal.id === 'amount-out-of-range')
    );
  }
}

function ownPaste(
  powder: ReturnType<typeof parseAmount>,
  liquid: ReturnType<typeof parseAmount>,
  carrier: Carrier = 'oil',
  text: string,
): Premix {
  if (powder.measure === 'mass' && liquid.measure === 'mass') {
    return byShare(powder.grams / (powder.grams + liquid.grams), carrier, text);
  }
  if (powder.measure === 'mass' || liquid.measure === 'mass')
    refuse('premix-unreadable', { text: excerpt(text) });
  const { millilitres } = powder;
  // Drier than two parts powder to one of liquid is no paste; thinner than 1 in 1000 colours nothing.
  if (millilitres > 2 * liquid.millilitres || millilitres * 1000 < liquid.millilitres) {
    refuse('premix-out-of-range', { text: excerpt(text) });
  }
  return { by: 'spoons', powderMillilitres: millilitres, carrierMillilitres: liquid.millilitres, carrier };
}

function byShare(pigmentShare: number, carrier: Carrier, text: string): Premix {
  if (!(pigmentShare >= 0.001 && pigmentShare <= 0.95))
    refuse('premix-out-of-range', { text: excerpt(text) });
  return { by: 'percent', pigmentShare, carrier };
}
