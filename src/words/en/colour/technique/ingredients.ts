import { spaced } from '../../../../engine/over-lines.ts';

/** What is said to what an ingredient does to colour: plants, milk, honey, oils, clays. Trade practice, but for what names a source. */
export const techniqueIngredients = {
  botanicals: {
    answer: ['Nearly all petals, buds and leaves go brown in soap; calendula alone keeps its yellow.'],
    why: [
      'Inside they brown within days and leave tan halos.',
      'On top, dry, pressed on when it is at thick trace or the next day; still some brown.',
      'Coffee grounds, oats and seeds stay as they are and scratch: fine, and at most 1 tsp per 500 g oils.',
      'Nothing fresh: it browns and rots.',
    ],
  },
  'milk-colour': {
    answer: [
      'Milk goes tan to orange with heat: freeze it, lye in a spoonful at a time, keep it cool, no gel.',
    ],
    why: [
      'Its sugar browns in lye, every milk’s does.',
      'Stay under 30 °C (86 °F) with the lye, do not cover the mould.',
      spaced`
        Then it is cream: white becomes ivory, with 1 tsp titanium dioxide per 500 g oils; blues and
        lilacs go greyish, so a little more of them, or warm hues.
      `,
      'Or milk powder at trace, 1 Tbsp per 500 g oils.',
    ],
  },
  'honey-sugar': {
    answer: [
      'Honey, sugar, beer and wine turn it tan to brown and make it hot: at most 1 to 2 tsp per 500 g oils.',
    ],
    why: [
      'Dissolved in a little of the recipe’s water, in at light trace, never into hot lye.',
      'Poured cool, no towel, looked after for cracks.',
      'Beer and wine boiled flat and ice-cold, or they foam over.',
      'No violet stays of red wine.',
      'Warm hues go with it, pastels and blue do not.',
    ],
  },
  'yellow-base': {
    answer: [
      'Paler oils, or 1/2 to 1 tsp titanium dioxide per 500 g oils in that portion before the colour goes in.',
    ],
    why: [
      'Yellow and green of olive, used or unrefined oil add to every colour: blue goes teal, lilac grey, pink salmon.',
      'Palest: refined coconut, lard, light olive, high-oleic sunflower.',
      'A speck of violet takes yellow out of white.',
      'Over dark or used oil: charcoal, cocoa, brick, deep green, no pastels.',
    ],
  },
  'clays-colour': {
    answer: [
      'Yes, soft earth colours that stay: 1 tsp per 500 g oils, up to 3 for full colour, in three times its volume of water.',
    ],
    why: [
      'Rose clay: dusty pink to brick.',
      'Red: terracotta.',
      'Yellow: ochre.',
      'French green: grey-green, khaki in yellow oil.',
      'Purple: greyish mauve.',
      'Kaolin: off-white; bentonite: grey-beige, and it thickens most.',
      'No clay from a river bank: nobody knows what is in it.',
    ],
  },
  'steep-in-oil': {
    answer: [
      'Yes, for annatto, alkanet, paprika, turmeric: 1 to 2 Tbsp in 250 ml (1 cup) light oil, strained, no grit.',
    ],
    why: [
      'Warm, in a water bath at 50 to 60 °C (122 to 140 °F), two hours; cold in the dark four to six weeks.',
      'Strain it through cloth or a coffee filter.',
      'It replaces a part of the recipe’s oils, 5 to 25 % as deep as you wish, and counts among them.',
      'Annatto: yellow to orange.',
      'Alkanet: lilac to grey-blue.',
      'Paprika: peach.',
      'Powder straight in is stronger, but speckles and scratches.',
      'Greens of leaves fade either way.',
    ],
  },
};
