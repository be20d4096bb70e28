import { additiveById, knownAdditive } from '../../batch/additives/additives.ts';
import { knownOil } from '../../batch/oils/find-oil.ts';
import { spaced, unbroken } from '../../over-lines.ts';
import { Refusal } from '../../refusal.ts';
import { substanceNamed } from '../../stability/names.ts';
import { foldedWords } from '../../text/fold.ts';
import { acidIn } from '../../text/names/acid-words.ts';
import { riskyScents } from '../scents/read.ts';

/**
 * What a name that is asked for as a colour is in the batch instead. `plain` colours nothing and does nothing that we
 * know of.
 */
export type BatchPart =
  | 'liquid'
  | 'sugar'
  | 'acid'
  | 'fat'
  | 'scent'
  | 'salt'
  | 'wax'
  | 'lye'
  | 'oil'
  | 'herb'
  | 'plain';

const words = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/u));

/** The word that says what a thing is: the last in English ("orange juice"), the first in Spanish ("jugo de naranja"). */
const LAST: readonly (readonly [BatchPart, ReadonlySet<string>])[] = [
  ['scent', words('fragrance perfume parfum scent aroma cologne vanilla vanillin eo')],
  ['wax', words('wax beeswax paraffin lanolin stearin lecithin')],
  ['fat', words('oil butter fat lard tallow ghee shortening margarine suet')],
  [
    'sugar',
    words(
      'honey sugar syrup molasses treacle jaggery agave glucose fructose dextrose sucrose lactose maltose sorbitol xylitol stevia jam nectar marmalade',
    ),
  ],
  ['salt', words('salt lactate')],
  ['lye', words('lye naoh koh')],
  [
    'liquid',
    words(
      spaced`
        milk buttermilk cream beer ale stout lager wine champagne cider tea juice water hydrosol brine
        broth cola lemonade kombucha kefir yoghurt yogurt whey puree infusion decoction smoothie glycerin
      `,
    ),
  ],
  ['herb', words('extract')],
];
const FIRST: readonly (readonly [BatchPart, ReadonlySet<string>])[] = [
  ['scent', words('fragancia perfume aroma esencia colonia vainilla vainillina')],
  ['wax', words('cera parafina lanolina lecitina')],
  ['fat', words('aceite manteca mantequilla grasa sebo margarina')],
  ['sugar', words('miel azucar jarabe melaza panela piloncillo sirope almibar mermelada glucosa fructosa')],
  ['salt', words('sal lactato')],
  ['lye', words('sosa potasa')],
  [
    'liquid',
    words(
      'leche nata suero cerveza vino sidra te zumo jugo agua hidrolato caldo refresco gaseosa yogur infusion bebida licuado batido cocimiento glicerina',
    ),
  ],
  ['herb', words('extracto')],
];
/** A sentence of a scent or of lye is told by these wherever they stand. */
const ANYWHERE: readonly (readonly [BatchPart, RegExp])[] = [
  ['scent', /\b(?:essential oil|fragrance oil|aceite esencial|vanilla extract|extracto de vainilla)\b/u],
  [
    'lye',
    /\b(?:caustic soda|soda caustica|(?:sodium|potassium) hydroxide|hidroxido de (?:sodio|potasio))\b/u,
  ],
  ['wax', /\bstearic acid\b|\bacido estearico\b/u],
];
/** With one of these a name is that of a colour, whatever lent it: "wine mica", "honey pigment". */
const COLOURS = new RegExp(
  unbroken`
    \b(?:mica|oxide|oxido|lake|laca|pigment|pigmento|clay|arcilla|neon|dye|colorante|colourant|tinte|colour|
    glitter|purpurina|ultramarine|ultramar|charcoal|carbon|shimmer|pearl|dispersion)\b
  `,
  'u',
);
/** Whether a name says of itself that it is a colour's. */
export const isCalledColour = (text: string): boolean =>
  COLOURS.test(foldedWords(text.slice(0, 200)).join(' '));

/** What colours are wetted in: as a colour it is nothing. */
const WETS =
  /^(?:(?:distilled|purified|deionized|vegetable) )?(?:water|aqua|glycerin|glycerol|agua|glicerina)(?: (?:destilada|purificada|vegetal))?$/u;
const AS_POWDER = / (?:powder|polvo|en polvo)$|^(?:powdered|polvo de) /u;

/** Moles of protons a gram: vinegar and lemon juice lie above, wine and orange juice far below. */
const SOUR = 0.0005;

/** Whether a name is that of a scent that we know, barred ones too. */
function isScent(name: string): boolean {
  try {
    return riskyScents(name).length > 0;
  } catch (refusal) {
    if (refusal instanceof Refusal) return true;
    throw refusal;
  }
}

const headIn = (
  table: readonly (readonly [BatchPart, ReadonlySet<string>])[],
  head: string,
): BatchPart | undefined => table.find(([, heads]) => heads.has(head))?.[0];

/** By the tables of what is stirred into a batch. */
function added(name: string): BatchPart | undefined {
  const id = knownAdditive(name);
  if (id === undefined || id === 'clay') return undefined;
  const { acid, effects, liquid, sugar } = additiveById(id);
  if (acid > SOUR) return 'acid';
  if (liquid) return 'liquid';
  if (sugar > 0) return 'sugar';
  return effects.includes('hardens') ? 'salt' : 'plain';
}

/**
 * What of the batch a name is, that is no colour: a liquid, a sugar, an acid, a fat, a scent, a salt, a wax, lye, a herb's
 * extract, or something that labels list and that colours nothing. By the kind of word that it is, in English or
 * Spanish; undefined for a colour, and for what nobody knows. Meant for names that are no colourant's own.
 * @example batchPartIn('red wine') // 'liquid'
 */
export function batchPartIn(text: string): BatchPart | undefined {
  const whole = foldedWords(text.slice(0, 200)).join(' ');
  if (whole === '' || COLOURS.test(whole)) return undefined;
  if (WETS.test(whole)) return 'plain';
  const name = whole.replace(AS_POWDER, '');
  const anywhere = ANYWHERE.find(([, pattern]) => pattern.test(name))?.[0];
  if (anywhere) return anywhere;
  const all = name.split(' ');
  const found =
    added(name) ??
    (acidIn(name) === undefined ? undefined : 'acid') ??
    headIn(LAST, all.at(-1) ?? '') ??
    headIn(FIRST, all[0] ?? '');
  // An oil that is none of the fats is mostly a scent's.
  if (
    found === 'fat' &&
    knownOil(name) === undefined &&
    !/^(?:lard|tallow|ghee|sebo|margarine|margarina|shortening|suet)$/u.test(name)
  )
    return isScent(name) ? 'scent' : 'oil';
  // Dried, a milk or a juice is its sugar.
  if (found === 'liquid' && name !== whole) return 'sugar';
  if (found) return found;
  const role = substanceNamed(whole)?.role;
  return role === 'additive' || role === 'carrier' ? 'plain' : undefined;
}
