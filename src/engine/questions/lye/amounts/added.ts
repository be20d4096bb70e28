import { ADDITIVES } from '../../../batch/additives/additives.ts';
import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { COUNT, MASS, plainWords, type Remaining, told } from './words.ts';

/** Bare milk is the drink, whatever fat is named after it. */
const MILK = /^(?:milk|leche)$/u;
const NAMES = ADDITIVES.flatMap(({ synonyms, liquid }) =>
  synonyms.map(name => ({ name: plainWords(name), isLiquid: liquid !== undefined })),
)
  .filter(
    ({ name }) =>
      name.length > 2 &&
      !/^(?:agua|water|oil)$/u.test(name) &&
      (MILK.test(name) || knownOil(name) === undefined),
  )
  .sort((a, b) => b.name.length - a.name.length);
const SPOONED = `(?:${MASS}|${COUNT} ?(?:%|percent|por ciento|tbsps?|tsps?|tablespoons?|teaspoons?|cups?|ml|cdas?|cdtas?|cucharadas?|cucharaditas?|tazas?))`;

/** What is stirred in and what stands in the place of water, as `/plan` takes them. */
export function addedIn(rest: Remaining): { additives?: string; liquid?: string } {
  const additives: string[] = [];
  const liquids: string[] = [];
  for (const { name, isLiquid } of NAMES) {
    if (!rest.text.includes(name)) continue;
    const plain = name.replace(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`);
    const amount = told(
      rest.take(
        `(?:with |con |and |y |plus |mas )*(${SPOONED}) (?:of |de )?${plain}(?! (?:oil|butter|seed|wax|fat))`,
        `(?:with |con |and |y |plus |mas )*${plain} (${SPOONED})(?! (?:of |de )?(?:olive|coconut|palm|[a-z]+ (?:oil|butter)))`,
      ),
    );
    // "Goat milk for all the water, how much lye and milk": the second is the first once more.
    const isAgain = amount === undefined && liquids.some(liquid => liquid.split(' ').includes(name));
    if (amount !== undefined) additives.push(`${name} ${amount}`);
    else if (
      rest.take(
        unbroken`
          (?:with |con |and |y |plus |mas |some |a |en |in |un poco de )*${plain}(?! (?:oil|butter|seed|wax|
          fat))(?: (?:frozen|fria|frio|congelad[oa]))?(?: (?:instead|in place) of (?:the )?water| en (?:vez|
          lugar) del? agua| (?:for|as) (?:the |my )?water| (?:por|como)(?: el)? agua)?
        `,
      )
    )
      if (!isAgain) (isLiquid ? liquids : additives).push(name);
  }
  return {
    ...(additives.length > 0 && { additives: additives.join(', ') }),
    ...(liquids.length > 0 && { liquid: liquids.join(', ') }),
  };
}
