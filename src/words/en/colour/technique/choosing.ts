import { spaced } from '../../../../engine/over-lines.ts';

/** What is said to which colours to buy and take, and which of them hold. */
export const techniqueChoosing = {
  'gel-and-colour': {
    answer: [
      'Gel makes most colours deeper and a little see-through; without it they stay paler and milkier.',
    ],
    why: [
      'For gel: covered and wrapped, warm, looked at for cracks.',
      'Against it: cool batter, small moulds, a cold place (no fridge with food).',
      'Half gelled leaves a darker ring.',
      'Whites stay whiter without, and have fewer rivers with less water.',
      '/plan reckons whether yours gels.',
    ],
  },
  'first-colours': {
    answer: [
      'Five do a lot: titanium dioxide, activated charcoal, ultramarine blue, red and yellow iron oxide.',
    ],
    why: [
      'All hold in lye and light.',
      'Blue and yellow make a quiet green, red and charcoal a brown, white makes any of them pastel.',
      'Then one mica whose label names only mineral colours.',
      'Begin with one colour in a plain recipe, wetted in a little oil.',
      '/palette buy finds what brings most beside what you have.',
    ],
  },
  'mica-or-oxide': {
    answer: [
      'Mica stirs in easily and is brighter; oxides are matt, stronger and always hold, but want good wetting.',
    ],
    why: [
      'To begin with: mica whose label names only mineral colours (CI 77…), since dyes on mica may turn or wander.',
      'For a colour that must not change: oxide or ultramarine.',
      'Clays give soft earth tones and are wetted in water.',
      '/colourant check reads the list on your jar.',
    ],
  },
  'whiter-soap': {
    answer: [
      'Pale oils, no vanilla in the scent, 1 to 1 1/2 tsp titanium dioxide per 500 g oils, and no gel.',
    ],
    why: [
      'Cream comes from olive, unrefined butters, milk and heat.',
      'Wet the titanium dioxide well and use no more: too much crackles, crumbles and shows rivers.',
      '/dose colourant:“titanium dioxide” portion:“500 g oils”.',
    ],
  },
  'bright-colours': {
    answer: ['Pale oils, no titanium dioxide in that portion, the full dose, and let it gel.'],
    why: [
      'White and the yellow of the oils dull every colour; gel deepens it.',
      'Oxides are quiet by nature: vivid reds, violets and greens come of micas and lakes, whose label has to be checked for lye.',
      '/match target:“bright green” shows how near your jars come.',
    ],
  },
  'pastel-colours': {
    answer: ['About a quarter of the full dose, with half a teaspoon of titanium dioxide per 500 g oils.'],
    why: ['Without white it becomes see-through rather than pastel.', '/dose has it as strength:pastel.'],
  },
  'colour-in-cure': {
    answer: [
      'Judge it after four weeks: raw batter looks darker and yellower, most colours lighten as it dries.',
    ],
    why: [
      'In the first two days colours may look wrong and come back; what is brown or grey after a week stays so.',
      'Vanilla browns for weeks.',
      'Plants go on fading in light.',
    ],
  },
  'colours-that-stay': {
    answer: ['Iron oxides, ultramarines, chrome green, charcoal and mineral micas do not fade.'],
    why: [
      'Plant colours, spirulina and many neons fade in weeks to months, at a window sooner.',
      'Cure and keep bars out of the sun.',
      'Name the colour and I say how it holds.',
    ],
  },
  'colours-that-bleed': {
    answer: [
      'Oxides, ultramarines, charcoal, clays and mineral micas stay put; dyes, lakes and many neons wander.',
    ],
    why: [
      'Look for dye numbers on the label (such as CI 16035, 19140, 42090): those may run into white and colour the lather.',
      'Hot, wet batter spreads them more.',
      '/colourant check reads the list.',
    ],
  },
  'natural-colours': {
    answer: [
      'These hold: charcoal, clays, cocoa (brown), madder (pink), indigo (blue), annatto (yellow to orange, slowly paler).',
    ],
    why: [
      'Turmeric, paprika, spirulina and green leaves begin well and fade.',
      'Beetroot, hibiscus, berries and red cabbage turn brown or grey in lye.',
      'Name one and I say what becomes of it and how much goes in.',
    ],
  },
  'egg-smell': {
    answer: ['A whiff of sulphur from ultramarine is usual in warm batter and goes with the cure.'],
    why: [
      'It gets strong where acid meets it: no vinegar, citric acid or sour juice in that batch.',
      'If it is strong: window open, out of the room until it is gone.',
    ],
  },
  'children-colours': {
    answer: [
      'Cosmetic-grade iron oxides, ultramarines, titanium dioxide, clays and plain micas, at a low dose.',
    ],
    why: [
      'Soap is rinsed off; lips and eyes have lists of their own: /colourant check item:“…” with your region says where a colour stands.',
      'Small children need none.',
      'What you sell or give to many needs a safety assessment under your local law.',
    ],
  },
  'buy-where': {
    answer: ['I know no shops.', 'Buy what says cosmetic grade and names its ingredients or CI numbers.'],
    why: [
      'No pigments for resin, nails, candles, crafts or building: heavy metals and dyes are not counted there.',
      '/palette buy says which colours bring most; the list on a label goes into /colourant check.',
    ],
  },
  'unlabelled-powder': {
    answer: [
      'Leave it out of soap: without a list of what is in it nobody can say what it does on skin or in lye.',
    ],
    why: [
      spaced`
        A test in a cup shows whether its colour holds, not whether it is safe: it may be craft, resin
        or wall colour with heavy metals, or laundry blue.
      `,
      'Ask the seller for ingredients and CI numbers; with the list, /colourant check reads it.',
      'Do not taste or sniff it.',
    ],
  },
  'cosmetic-grade': {
    answer: [
      'No: cosmetic, skin or lip safe speaks of skin, not of lye.',
      'Many such colours still turn in raw soap.',
    ],
    why: [
      spaced`
        What helps is “stable in cold process” and the list: CI 77… are minerals and mostly hold, but
        not CI 77510 (iron blue) and CI 77742 (manganese violet).
      `,
      'Food grade says nothing either.',
      'Stir a pinch into a spoonful of batter and look after two days.',
      '/colourant check reads the list for both.',
    ],
  },
  'shine-sparkle': {
    answer: [
      'Mica shines only where light falls on it: dust it or paint it on top.',
      'Inside the bar it looks flat.',
    ],
    why: [
      'Cold-process soap is opaque, so gold turns mustard and pearl turns white in it.',
      'On top: dry through a sieve, or 1 tsp in 2 to 3 tsp light oil.',
      'Gel makes it a little see-through and livelier; a cut face may be steamed or rubbed with a soft cloth.',
      'No craft glitter.',
    ],
  },
};
