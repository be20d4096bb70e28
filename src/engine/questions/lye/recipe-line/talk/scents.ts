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

/** A line without the scents in it, which take no lye, and what they were. Takes what `plainWords` gives. Pure. */
export function withoutScents(plain: string): { readonly rest: string; readonly scents: readonly string[] } {
  const scents: string[] = [];
  let rest = plain;
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
