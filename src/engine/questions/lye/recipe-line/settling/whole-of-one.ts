import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { MASS, UNIT } from '../../amounts/words.ts';

/* A weight of all oils, with the oils told behind it in few words. */

const ALL_OF = new RegExp(
  unbroken`
    ((?<![\d.,])\d+(?:[.,]\d+)? ?(?:${UNIT}) (?:of )?(?:oils?|fats?))[ ,;]+(?:it s |its |
    it is )?all(?: of it)?(?: the)? (\p{L}+)(?: oil)?(?= *(?:[;,]|$))
  `,
  'u',
);
/** "900 g of oils, all olive" as the hundred percent that it is. Pure. */
const allOfOne = (plain: string): string =>
  plain.replace(ALL_OF, (said, whole: string, oil: string) =>
    knownOil(oil) === undefined ? said : `${whole}, 100% ${oil}`,
  );

const SHARES = new RegExp(
  unbroken`
    (?<=(?:^|[ ;])(?:for|para) )(\d+(?:[.,]\d+)? ?(?:kg|kgs|kilos?|g|grams?|gramos?|lbs?|
    oz))((?:,? (?:(?:and|y|of|de) )?\d{1,2} ?%? (?:de )?(?!(?:sf|superfat|sobre|lye|water|
    agua)(?!\p{L}))\p{L}+){2,6})(?=[ ;,]|$)
  `,
  'u',
);
/** "For 1 kg 70 olive 30 coconut": bare figures that make a hundred are shares of the weight before them. Pure. */
const sharesOfWhole = (plain: string): string =>
  plain.replace(SHARES, (said, whole: string, list: string) => {
    const told = [...list.matchAll(/(\d{1,2}) ?%? (?:de )?(\p{L}+)/gu)];
    const sum = told.reduce((all, [, figure]) => all + Number(figure), 0);
    const isOils = told.every(([, , name = '']) => knownOil(name) !== undefined);
    return sum === 100 && isOils
      ? `${whole} oils, ${told.map(([, figure, name]) => `${figure}% ${name}`).join(', ')} `
      : said;
  });

const ALL_ONE_THEN = new RegExp(`(?<![\\d.,])100 ?% (?:de )?(\\p{L}+)(?: oil)?,? (${MASS})(?!\\p{L})`, 'u');
const EVERY_MASS = new RegExp(MASS, 'gu');
/** "100% coconut 800 g": the one weight of a line is that of the oil that is all of it. Pure. */
const allThenWeight = (plain: string): string =>
  plain.replace(ALL_ONE_THEN, (said, oil: string, mass: string) =>
    knownOil(oil) === undefined || (plain.match(EVERY_MASS) ?? []).length !== 1 ? said : `${mass} ${oil}`,
  );

/** A line in which a weight of all oils is told as such, whichever oils share it. Pure. */
export const withWhole = (plain: string): string => sharesOfWhole(allThenWeight(allOfOne(plain)));
