import { spaced } from '../../../engine/over-lines.ts';

/** What is said of what goes into the batter beside oils and lye: milk, sugar, acid, bleach, scent. */
export const lyeIngredients = {
  'milk-at-once': {
    answer: ['No: never all the lye at once into milk.', 'A spoonful at a time into frozen milk, over ice.'],
    why: [
      'Lye heats milk until it scorches, foams over and smells of ammonia.',
      spaced`
        Freeze the milk to slush, stand the jug in ice, add a spoonful of lye, stir until it is gone,
        then the next; stay under about 30 °C (86 °F).
      `,
      'Or dissolve the lye in its own weight of water, cold, and stir the rest of the liquid as milk into the oils.',
      'Goggles, gloves, open window.',
      '/plan liquid:“goat milk” works both out.',
    ],
  },
  'scorched-milk': {
    answer: [
      'Milk that turned orange and smells of ammonia was scorched: open the windows, let it cool, keep your face away.',
    ],
    why: [
      'Lye breaks up milk sugar and protein when it is hot.',
      'The smell goes off within days, the tan stays.',
      'If it still rises or foams, step back and leave it.',
      'Once it is under 40 °C (104 °F) and smooth it can be used; brown and lumpy: discard it by your local rules.',
      'Next time freeze the milk and add the lye a spoonful at a time over ice.',
    ],
  },
  'bleach-in-soap': {
    answer: ['No: never bleach in soap, batter or lye.'],
    why: [
      'With acids it gives off chlorine, with ammonia (scorched milk too) chloramines: both are toxic.',
      'It hurts skin and eats the soap, and it does not whiten it.',
      'For white: titanium dioxide, pale oils, no vanilla.',
    ],
  },
  'acid-in-batter': {
    answer: ['Not to lower the pH: acid in batter only uses up lye.'],
    why: [
      'Soap stays alkaline; what the acid takes is missing for the oils, so the bar grows softer and greasier.',
      'As an ingredient it is counted beforehand and weighed: /plan additives:“citric acid 10 g” or liquid:“vinegar” adds the lye it uses.',
      'Never acid onto dry lye or strong lye water: it boils.',
    ],
  },
  'acid-on-soap': {
    answer: ['No: acid does not make lye-heavy soap safe.', 'Do not use it.'],
    why: [
      'You cannot know how much lye is free or where it sits, acid wets only the outside, and it heats.',
      'Gloves on.',
      spaced`
        If every weight is certain it may be rebatched with the oils that are missing; otherwise discard
        it as caustic waste by your local rules.
      `,
    ],
  },
  'liquid-instead': {
    answer: [
      'Not just like water: wine and beer boiled flat first, all of it ice-cold, the lye in small steps.',
    ],
    why: [
      'Milk, cream, purée and aloe: frozen to slush, lye a spoonful at a time over ice, or stirred into the oils.',
      'Beer, wine and cider: boiled until flat and without alcohol, chilled or frozen first, or they foam over.',
      'Coffee and tea: brewed beforehand, ice-cold or frozen, never hot.',
      'Juices and other sugars heat: frozen, small share.',
      'Vinegar and lemon use lye up and spit: only cold, the lye they take is added.',
      'Always as much water as lye by weight in the jug.',
      '/plan with liquid:“goat milk”, “half beer” or “vinegar” weighs it all.',
      'Goggles, gloves, draught.',
    ],
  },
  sugars: {
    answer: ['At most 30 g per kg of oils (3 %), dissolved in water first: sugar and honey make soap hot.'],
    why: [
      '10 to 20 g per kg is enough for lather.',
      'More overheats: the loaf cracks, rises or separates, and honey in hot lye foams over.',
      'Dissolve it in a little of the recipe’s water, cold, and stir it into the oils or at thin trace, never into lye water.',
      'Pour cool, under 38 °C (100 °F), no insulation.',
      '/plan additives:“honey 15 g” counts its heat.',
    ],
  },
  'candle-scent': {
    answer: ['Only if its certificate states a share for rinse-off soap (IFRA category 9).'],
    why: [
      'Many scents for candles or rooms are not meant for skin, and may burn, redden or seize the batter.',
      'Ask the seller for the IFRA certificate and keep to its category 9 figure; without one leave it out.',
      'Scent is dosed by weight of oils, never by spoon: /plan fragrance:“3%”.',
    ],
  },
};
