import { unbroken } from '../../../over-lines.ts';

/**
 * Turns of phrase for the colours of kitchens and cake shops, on text in lower case without accents. From memory of how
 * they are spoken of; "vegetal" alone is any colour of plants, in a small bottle it is for cakes.
 */
const KITCHEN_COLOURS: readonly (readonly [RegExp, string])[] = [
  [
    new RegExp(
      unbroken`
        \b(?:(?:gel|liquid|paste|baking|bakery|store bought|grocery store|little bottle of|
        bottled) )*(?:icing|frosting|cake|cupcake|cookie|candy|pastry|fondant|baking|kitchen|food) (?:gel |
        paste |decorating )?(?:colou?r(?:ing|ant)?s?|dyes?|tints?)\b(?: gels?| drops?| paste)?
      `,
      'gu',
    ),
    'food colouring',
  ],
  [
    new RegExp(
      unbroken`
        \bcolou?rantes?(?: (?:vegetal(?:es)?|artificial(?:es)?|liquidos?|rojo|azul|verde|amarillo|en gotas|
        en gel|en pasta))* (?:de|del|en|para|pa) (?:el |la |los |las )?(?:botecitos?|frasquitos?|gotitas?|
        goteros?|pasteles|pastel|tortas?|reposteria|pasteleria|panaderia|betun|gelatinas?|comida|comer|
        cocina|alimentos?|dulces|galletas|fondant|super|mandado)\b
      `,
      'gu',
    ),
    'colorante alimentario',
  ],
  [
    /\bcolou?rantes? (?:vegetal(?:es)? )?(?:comestibles?|alimenticios?|alimentarios?)\b/gu,
    'colorante alimentario',
  ],
];

/** A text in which every name of kitchen colours is the one that the table of refused colours knows. */
export const kitchenColoursNamed = (text: string): string =>
  KITCHEN_COLOURS.reduce((said, [pattern, name]) => said.replace(pattern, name), text);
