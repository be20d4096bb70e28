import { spaced } from '../over-lines.ts';
import { deaccented } from '../text/unaccented.ts';
import { type Measures, OUNCE_G, POUND_G, US_CUP_ML } from './units.ts';

/** Every unit a member may write an amount in. */
export type Unit =
  | 'teaspoon'
  | 'tablespoon'
  | 'cup'
  | 'metric-cup'
  | 'fluid-ounce'
  | 'pint'
  | 'quart'
  | 'gallon'
  | 'imperial-fluid-ounce'
  | 'imperial-pint'
  | 'millilitre'
  | 'centilitre'
  | 'decilitre'
  | 'litre'
  | 'milligram'
  | 'gram'
  | 'kilogram'
  | 'ounce'
  | 'pound';

export type UnitSize = { readonly measure: 'volume' | 'mass'; readonly size: number };

/**
 * Millilitres or grams in one `unit`; spoons and cups as the member's own kitchen has them.
 * US customary units from NIST Handbook 44 Appendix C; the imperial gallon is 4546.09 ml by definition.
 */
export function unitSize(unit: Unit, measures: Measures): UnitSize {
  const volume = (size: number): UnitSize => ({ measure: 'volume', size });
  const mass = (size: number): UnitSize => ({ measure: 'mass', size });
  switch (unit) {
    case 'teaspoon':
      return volume(measures.teaspoon);
    case 'tablespoon':
      return volume(measures.tablespoon);
    case 'cup':
      return volume(measures.cup);
    case 'metric-cup':
      return volume(250);
    case 'fluid-ounce':
      return volume(US_CUP_ML / 8);
    case 'pint':
      return volume(US_CUP_ML * 2);
    case 'quart':
      return volume(US_CUP_ML * 4);
    case 'gallon':
      return volume(US_CUP_ML * 16);
    case 'imperial-fluid-ounce':
      return volume(4546.09 / 160);
    case 'imperial-pint':
      return volume(4546.09 / 8);
    case 'millilitre':
      return volume(1);
    case 'centilitre':
      return volume(10);
    case 'decilitre':
      return volume(100);
    case 'litre':
      return volume(1000);
    case 'milligram':
      return mass(0.001);
    case 'gram':
      return mass(1);
    case 'kilogram':
      return mass(1000);
    case 'ounce':
      return mass(OUNCE_G);
    case 'pound':
      return mass(POUND_G);
  }
}

/** Words for units in English (US and UK) and Spanish: lower case, no accents, no full stops, singular and plural. */
const WORDS: Readonly<Record<Unit, string>> = {
  teaspoon: spaced`
      tsp tsps tspn tspns teaspoon teaspoons teaspoonful teaspoonfuls
      cdta cdtas cdita cditas cucharadita cucharaditas cucharadica cucharadicas cucharilla cucharillas
    `,
  tablespoon:
    'tbsp tbsps tbs tbl tbls tblsp tbspn tbspns tablespoon tablespoons tablespoonful tablespoonfuls cda cdas cucharada cucharadas',
  cup: 'c cup cups cupful cupfuls taza tazas tacita tacitas tz tza',
  'metric-cup': '',
  'fluid-ounce': 'floz',
  pint: 'pt pts pint pints pinta pintas',
  quart: 'qt qts quart quarts',
  gallon: 'gal gals gallon gallons galon galones',
  'imperial-fluid-ounce': '',
  'imperial-pint': '',
  millilitre: 'ml mls cc ccs cm3 millilitre millilitres milliliter milliliters mililitro mililitros',
  centilitre: 'cl centilitre centilitres centiliter centiliters centilitro centilitros',
  decilitre: 'dl decilitre decilitres deciliter deciliters decilitro decilitros',
  litre: 'litrito litritos l lt lts ltr litre litres liter liters litro litros',
  milligram: 'mg milligram milligrams milligramme milligrammes miligramo miligramos',
  gram: 'gramito gramitos gramico gramicos gramillo gramillos g gs gr grs gm gms gram grams gramme grammes gramo gramos',
  kilogram: 'kilito kilitos kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes kilogramo kilogramos',
  ounce: 'oz ozs ounce ounces onza onzas',
  pound: 'lb lbs pound pounds libra libras librita libritas #',
};

const BY_WORD: ReadonlyMap<string, Unit> = new Map(
  (Object.entries(WORDS) as [Unit, string][]).flatMap(([unit, words]) =>
    words
      .split(' ')
      .filter(word => word !== '')
      .map(word => [word, unit] as const),
  ),
);

/** The unit a written word means, or undefined. `T` is a tablespoon and `t` a teaspoon, as recipes write them. */
export function unitOfWord(word: string): Unit | undefined {
  if (word === 'T' || word === 'T.') return 'tablespoon';
  if (word === 't' || word === 't.') return 'teaspoon';
  return BY_WORD.get(word) ?? BY_WORD.get(plainWord(word));
}

/** Lower case, without accents and full stops. */
export function plainWord(word: string): string {
  return deaccented(word).replaceAll('.', '');
}

/** The unit after a qualifier such as `metric` or `imperial`, where that makes another size of it. */
export function qualifiedUnit(unit: Unit, qualifier: 'imperial' | 'metric'): Unit | undefined {
  if (qualifier === 'metric') return unit === 'cup' ? 'metric-cup' : undefined;
  if (unit === 'pint') return 'imperial-pint';
  return unit === 'fluid-ounce' ? 'imperial-fluid-ounce' : undefined;
}

/** Every word for a unit, lower case without accents. */
export const UNIT_WORDS: readonly string[] = [...BY_WORD.keys()];
