import { knownAdditive } from '../../../../batch/additives/additives.ts';
import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { OUNCE_G } from '../../../../quantities/units.ts';

const AMOUNT = unbroken`
  (?<figure>\d+(?:[.,]\d+)?) ?(?<unit>g|gr|grams?|gramos?|ml|oz|ounces?|onzas?|%|percent|por ciento|drops?|
  gotas?|tsps?|teaspoons?|cdtas?|cucharaditas?)(?: (?:of|de))?
`;
/** Most of a scent, grams: more under such a name may be an oil, and is asked for (usual rates are 3 % of the oils; common practice, no source). */
const MOST = 100;
const WHEN = '(?: (?:at|at the|in|en|en la|al|for|para) (?:trace|end|traza|final|scent|olor))?';
const SCENTS = [
  `(?:${AMOUNT} )?(?<name>(?:\\p{L}+ ){0,2})(?:essential oils?|fragrance oils?|fragrance|e\\.?o)(?!\\p{L})(?: blend)?${WHEN}`,
  `(?:${AMOUNT} )?(?:(?:aceites?|aceitito) esencial(?:es)?|esencia|fragancia|perfume)(?!\\p{L})(?: (?:de|a) (?<name>\\p{L}+(?: y \\p{L}+)?))?${WHEN}`,
  '(?<figure>\\d+) (?<unit>drops|gotas) (?:of|de) (?<name>\\p{L}+(?: oil)?)',
  '(?<name>\\p{L}+),? (?:unas |about |como |some )?(?<figure>\\d+) (?<unit>drops|gotas)',
].map(pattern => new RegExp(`(?<![\\p{L}\\d.,])${pattern}(?!\\p{L})`, 'gu'));

/** "30 g seaweed powder which is not oil", "the 25 g lavender is scent, leave it out of the sum": told to be no fat. */
const NO_FAT = new RegExp(
  unbroken`
    (?:(?:then|and|y|the|los|las|el|la|with|con|plus|
    mas) )*${AMOUNT} (?<name>(?:\p{L}+ ){0,2}\p{L}+),? (?:which |that |que |but |pero )?(?:(?:is|are|es|son)
    (?:(?:n'?t| not| no) (?:an? |un |una )?(?:oil|fat|aceite|grasa)s?| (?:just |only |solo |for )?(?:scent|
    colou?r|decoration|fragrance|olor|aroma|adorno))|
    (?:do(?:es)?(?:n'?t| not)|no) (?:count|cuenta|cuentan)|no (?:es|son) (?:aceite|
    grasa)s?)(?:,? (?:so )?(?:leave|keep|dejal[oa]s?|no l[oa]s? cuentes)(?: (?:it|them|that))?
    (?: (?:out|off|fuera))?(?: (?:of|de) (?:the|la|las) (?:sums?|lye|oils|cuentas?|suma))?)?
  `,
  'u',
);
/** Things that are no fat (general knowledge); of anything else its weight may be an oil's. */
const OF_NO_FAT = new RegExp(
  unbroken`
    (?<!\p{L})(?:powders?|polvos?|lavender|lavanda|rosemary|romero|herbs?|hierbas?|petals?|petalos?|flowers?|flores|oats?|oatmeal|avena|
    clays?|arcillas?|salts?|sal|sugar|azucar|honey|miel|micas?|pigments?|pigmentos?|colou?rs?|colorantes?|scents?|fragrances?|fragancia|
    seaweed|algas?|coffee grounds|pumice|charcoal|carbon)(?!\p{L})
  `,
  'u',
);
const DOES_NOT_COUNT =
  /(?<!\p{L})(?:i know )?(?:that|it|they|eso|esto) (?:do(?:es)?(?:n'?t| not)|no) (?:counts?|cuentan?)(?!\p{L})/gu;

/** A line without the scents in it, which take no lye, and what they were. Takes what `plainWords` gives. Pure. */
export function withoutScents(plain: string): { readonly rest: string; readonly scents: readonly string[] } {
  const scents: string[] = [];
  let rest = plain.replace(DOES_NOT_COUNT, ' ; ');
  const { 0: told, groups } = NO_FAT.exec(rest) ?? {};
  const { name = '' } = groups ?? {};
  const isOil = name.split(' ').some(word => word.length > 2 && knownOil(word) !== undefined);
  if (told !== undefined && !isOil && (OF_NO_FAT.test(name) || knownAdditive(name) !== undefined)) {
    scents.push(told.trim());
    rest = rest.replace(told, ' ; ');
  }
  for (const pattern of SCENTS)
    rest = rest.replace(pattern, (whole: string, ...more: unknown[]) => {
      const { figure, unit = '', name = '' } = more.at(-1) as Record<string, string | undefined>;
      const grams = Number((figure ?? '0').replace(',', '.')) * (/^o/u.test(unit) ? OUNCE_G : 1);
      // "300 g coconut oil fragrance 10 g": whose the weight is nobody here knows.
      if (name.split(' ').some(word => word !== '' && knownOil(word) !== undefined) || grams > MOST)
        return whole;
      scents.push(whole.trim());
      return ' ';
    });
  return { rest, scents };
}
