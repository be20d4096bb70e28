import { spaced } from '../../../../engine/over-lines.ts';

/** Answers of how pale, how bright and of which hue a bar is, where the question names it. Trade practice. */
export const techniqueHues = {
  'gel-for-pastels': {
    answer: ['No gel for pastels and white: cool batter, no towel, a small mould in a cold place.'],
    why: [
      'It stays milky and paler.',
      spaced`
        Batter at 27 to 32 °C (81 to 90 °F), mould uncovered or in a box without food that is kept cold
        for a day; two days until it is cut.
      `,
      'Half gelled leaves a darker ring: all of it or none.',
    ],
  },
  'gel-for-bright': {
    answer: ['Gel for bright colours: covered and wrapped, it makes them deeper and a little see-through.'],
    why: [
      'Batter at 35 to 40 °C (95 to 104 °F), lid and towel, looked at after an hour for a crack.',
      'No white in those parts.',
      'All of it or none: half gelled leaves a darker ring.',
      'Milk and honey gel too hot: cool and open.',
    ],
  },
  'white-without-titanium': {
    answer: [
      'Without titanium dioxide: pale oils, no gel, no vanilla, full cure.',
      'It ends cream to ivory, no paper white.',
    ],
    why: [
      'Palest: refined coconut, lard, high-oleic sunflower, light olive.',
      'Zinc oxide whitens about half as well and may thicken; kaolin only softens it to off-white.',
      'Cool batter and a speck of ultramarine violet take the yellow out.',
      'Milk, honey and unrefined butter darken it.',
    ],
  },
  'dull-at-large': {
    answer: [
      'All of them paler or duller at once: mostly no gel, a veil of ash, or a bar that is still wet.',
      'Judge it in four weeks.',
    ],
    why: [
      'Wipe or plane a corner: brighter beneath means ash, which steam or a rinse takes off.',
      'Milky right through: it stayed cool, and next time it is covered and wrapped.',
      'One colour alone that went grey or brown is lye: tell me which.',
      'White in the batter dulls every colour, and so does a small dose.',
    ],
  },
  'lighten-in-pot': {
    answer: [
      'Yes, while it is fluid: wetted titanium dioxide, half a teaspoon at a time, by hand; or plain batter.',
    ],
    why: [
      'White makes it milky as well as pale, plain batter only pale.',
      'Stir gently, no blender.',
      'Raw batter looks darker than the bar will, so stop a little early.',
    ],
  },
  'lighten-next-time': {
    answer: [
      'A made bar stays as it is.',
      'Next time half the colour, or a quarter with a little titanium dioxide.',
    ],
    why: [
      'Write down what you took.',
      'Most colours lighten a little in four weeks of cure, plants in light as well.',
      'Grated into white soap it makes a paler rebatch.',
    ],
  },
  'rubs-off': {
    answer: [
      'Loose mica on top always rubs off a little; the first wash takes it.',
      'Next time thinner, on a tacky top.',
    ],
    why: [
      'Blow the rest off outdoors or wipe it with a damp cloth.',
      'It sticks better dripped on in a little oil, or sprayed with alcohol, away from flames.',
    ],
  },
  'white-vanilla': {
    answer: ['Yes, it will brown: leave the white part unscented, or take a scent without vanillin.'],
    why: [
      'Vanillin of 1 % ends tan, 5 % brown, 10 % dark, within days to weeks, and it wanders a little into its neighbours.',
      'Titanium dioxide only makes the brown paler.',
    ],
  },
  'blue-and-yellow': {
    answer: [
      'A dull olive to moss green, of ultramarine and yellow oxide.',
      'A bright one: chromium oxide green alone.',
    ],
    why: [
      'Twice as much yellow as blue to begin with; a yellow base counts as yellow too.',
      'Try it in a spoonful of batter.',
      '/preview mix:“1/4 tsp ultramarine + 1/2 tsp yellow oxide” shows it.',
    ],
  },
  'red-and-blue': {
    answer: [
      'Red oxide and blue make a muddy plum.',
      'Cleaner purple: ultramarine blue with ultramarine pink, or violet.',
    ],
    why: [
      'A red or pink mica that holds in lye is cleaner than oxide.',
      'Ultramarine violet needs no mixing.',
      'Try it in a spoonful of batter.',
      '/preview mix:“1/4 tsp ultramarine + 1/4 tsp ultramarine pink” shows it.',
    ],
  },
  'with-white': {
    answer: [
      'White makes it paler and milky: red oxide goes salmon pink, blue goes sky, black goes a cool grey.',
    ],
    why: [
      'Four parts white to one of colour is a pastel.',
      'Oxides stay earthy; for a clear pink take ultramarine pink or a pink mica.',
      'Charcoal is finer in grey than black oxide.',
      '/preview mix:“1/2 tsp titanium dioxide + 1/8 tsp red oxide” shows it.',
    ],
  },
};
