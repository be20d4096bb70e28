import { spaced } from '../../../engine/over-lines.ts';

/** What is said to what is asked of a thing near lye: whether it changes the lye, how long it keeps, which is which. */
export const lyeAsked = {
  'takes-no-lye': {
    answer: ['The lye stays the same: clay, colour, honey, sugar, salt, oats and scent take none of it.'],
    why: [
      'It is worked out from the oils, fats and waxes alone.',
      'Only acid takes some (vinegar, lemon, citric acid), and milk or cream bring a little fat.',
      spaced`
        Mind what else they do: honey and sugar heat, 30 g per kg of oils at most; clay drinks water,
        wet it first; some scents thicken at once.
      `,
      '/plan additives:“honey 15 g” counts them.',
    ],
  },
  'wax-counted': {
    answer: ['Yes, count it: beeswax takes lye like an oil, but half as much, about 0.067 g NaOH a gram.'],
    why: [
      spaced`
        Its saponification value is 87 to 104 mg KOH/g (European Pharmacopoeia); 20 g take about 1.3 g
        at 5 % superfat, little beside the oils.
      `,
      'Soy wax is an oil that was hardened and takes as much as one; paraffin takes none.',
      '“How much lye for 500 g olive, 20 g beeswax”.',
      'Hot enough to melt it: 65 °C (149 °F), with care.',
    ],
  },
  'names-of-lye': {
    answer: [
      'For bars the three are one: lye, caustic soda and sodium hydroxide (NaOH).',
      'Potash (KOH) is another.',
    ],
    why: [
      'Go by the label, not the name: “sodium hydroxide” or NaOH, CAS 1310-73-2, 98 % or more and nothing else.',
      'KOH (1310-58-3) makes soft soap and needs another weight.',
      'Not lye: washing soda, baking soda, bleach; drain opener may hold aluminium.',
      'A bottle without a label is used for nothing and never tasted; keep all locked away.',
    ],
  },
  'flakes-or-pearls': {
    answer: [
      'The same weight: flakes, pearls and grains are one lye, gram for gram, if the purity is the same.',
    ],
    why: [
      'So weigh it, never by spoons: a spoon of pearls holds more than one of flakes.',
      'The label has to say sodium hydroxide, 98 % or more, with nothing else in it.',
      'Flakes dissolve slower, pearls roll and jump: goggles and gloves.',
    ],
  },
  'soda-or-potash': {
    answer: ['Soda (NaOH) for hard bars; potash (KOH) for paste and liquid soap, it stays soft.'],
    why: [
      'Never one for the other by weight: the same oils take 1.40 times as much pure KOH, 1.56 times at 90 %.',
      'Both mixed: 5 to 10 % KOH makes a bar creamier, about 60 % is for shaving soap.',
      '/plan lye:“both” works the two weights out.',
    ],
  },
  'tap-water': {
    answer: [
      'Distilled is best.',
      'Soft tap water that you drink works too; hard water leaves scum and specks.',
    ],
    why: [
      'Lime in it makes a little insoluble soap, cloudy lye and less lather; iron may help oils go rancid.',
      'It takes no lye that counts, so weights stay.',
      'Deionised, purified or rain water that was filtered and boiled does as well.',
      'Always cold.',
    ],
  },
  'lye-water-keeps': {
    answer: [
      'Yes: clear and cold it keeps for weeks, closed and labelled, in HDPE (2) or PP (5), locked away.',
    ],
    why: [
      'No glass, no metal, no PET, nothing that drink comes in.',
      'Mark it with strength, date and “corrosive”.',
      'Weigh it before and after: lost water makes it stronger.',
      'A white skin or flakes are carbonate: use only what is clear, and if there is much, make new.',
      'At 50 % it sets solid under about 12 °C (54 °F): warm the closed room, never the jug on a stove.',
      'Cold lye water burns just the same.',
    ],
  },
  'cooling-time': {
    answer: ['One to two hours by itself, 20 to 30 minutes standing in a basin of cold water.'],
    why: [
      'It starts at 80 to 95 °C (176 to 203 °F) and should be at 35 to 45 °C (95 to 113 °F).',
      'Uncovered or loosely covered, out of reach, nobody leaves it.',
      'Nothing goes into the jug to cool it: water on hot lye spits.',
      'Ice in place of part of the water from the start keeps it cooler.',
    ],
  },
  'superfat-on-which': {
    answer: ['It comes off the lye: the oils stay as weighed, and 5 % superfat is the full lye × 0.95.'],
    why: [
      'Nothing is poured in extra.',
      'The lye that all the oils could take is worked out, then that share left out, so that as much oil stays over.',
      'Adding 5 % more oil instead comes to nearly the same; never do both by accident.',
      '“How much lye for 500 g olive, superfat 5”.',
    ],
  },
  'superfat-low': {
    answer: ['5 % is usual for bars: 2 to 4 % leaves little for a slip of the scale, 0 is for laundry only.'],
    why: [
      spaced`
        With lye weighed to the gram and known oils 3 % makes a sound, cleansing bar with more lather;
        hands that are washed often want 5 to 8.
      `,
      'A kilo at 3 % is 4 g of lye from 0.',
      'Below 2 % only for laundry, with gloves.',
    ],
  },
  'superfat-from-lye': {
    answer: [
      'Yes: superfat = 1 − lye that went in / lye the oils could take.',
      'Tell me both and I work it out.',
    ],
    why: [
      'Such as “I put 130 g lye in 700 g olive and 300 g coconut”.',
      'It needs every oil with its weight, and which lye it was: NaOH or KOH, and its purity.',
      'With the lye alone it cannot be known.',
    ],
  },
  'less-lye-went-in': {
    answer: ['It does not burn: less lye leaves oil over, so a softer, greasy bar that goes rancid sooner.'],
    why: [
      'Up to 10 % less is a mild bar, 15 % and more stays soft or does not set.',
      'Add none by guess.',
      'How much too little: “I put 100 g lye instead of 130 in 1000 g olive”, and I tell what is left over.',
    ],
  },
  'rest-of-lye': {
    answer: ['Only while it is liquid, and only if you know to the gram what is missing: else leave it.'],
    why: [
      spaced`
        Weigh the missing lye, dissolve it in its own weight of cold water, let it cool to about 40 °C
        (104 °F), and blend it in slowly; goggles and gloves.
      `,
      'Tell me the recipe and what went in, and I work the rest out.',
      'Never dry into the batter, never by guess, never once it has set: without it the soap is only soft and greasy.',
    ],
  },
  'scale-by-grams': {
    answer: [
      'Reads high: less lye is in than it showed, that does not burn.',
      'Reads low: more is in, do not use it yet.',
    ],
    why: [
      'Grams off count most for the smallest weight, the lye: 5 g are 7 % of 70 g, but 1 % of 500 g of oil.',
      'Take the same off every weight (or add it), then tell me what really went in: “I put 75 g lye in 500 g olive”.',
      'Off by the same percent everywhere, the recipe stands.',
      'Check it with a coin or a litre of water (1000 g), and weigh lye on a scale that shows 1 g.',
    ],
  },
  'lye-heavy-laundry': {
    answer: ['No: soap with too much lye burns hands in the wash too, and lye stays in the cloth.'],
    why: [
      'Laundry soap has 0 to 2 % superfat, not less than nothing.',
      'Gloves on, keep it closed and labelled.',
      'If every weight is certain it can be mended with exactly the oils that are missing; if not, hand it in as caustic waste.',
    ],
  },
  'lye-on-label': {
    answer: [
      'Both are used: what became of it (sodium olivate), or the oils and sodium hydroxide as put in.',
    ],
    why: [
      'EU and UK: INCI names, by weight; soaps as “sodium olivate, sodium cocoate, aqua, glycerin”.',
      'US: plain soap is freer, and many list “saponified oils of”.',
      'If sodium hydroxide is all used up it need not stand there as well.',
      'Your local rules decide: ask your authority.',
      'I am no lawyer.',
    ],
  },
  'children-cured': {
    answer: ['Yes, with bars that are cured: four weeks, no sting, the lye put away.'],
    why: [
      'Stamping, wrapping, painting with mica and water on top: all fine.',
      'Not with fresh bars: raw soap burns for two days and more, and trimmings get into eyes and mouths.',
      'Glitter for crafts is not for soap.',
    ],
  },
  'lye-smell': {
    answer: [
      'Of nothing.',
      'While it dissolves a mist rises that bites in nose and throat: keep your face away.',
    ],
    why: [
      'Mix it in a draught or outside.',
      'A smell of bleach, ammonia or rotten eggs is something else: out into fresh air, then ask.',
    ],
  },
  'ash-lye-once': {
    answer: [
      'Potash lye, of water run through wood ash: mostly potassium carbonate, boiled with fat for hours.',
    ],
    why: [
      'With burnt lime it became potassium hydroxide.',
      'It gave soft soap; salt made it hard.',
      'Its strength was guessed, so it was often harsh.',
      'Today pure sodium or potassium hydroxide, weighed, is milder and safer.',
    ],
  },
  'trace-signs': {
    answer: ['Drops from the blender stay on top for a moment, like thin custard: that is light trace.'],
    why: [
      'No oil floats any more, one colour throughout.',
      'Medium holds a line like yoghurt, thick holds a peak.',
      'Blend in bursts of a few seconds and stir between, oils and lye water near 40 °C (104 °F), the blender under the surface.',
      'Light trace is best for colours.',
    ],
  },
  wrapping: {
    answer: ['Cured bars in something that breathes: paper, a card box or a paper band.', 'No cling film.'],
    why: [
      'They go on drying and sweat in plastic.',
      'Unwaxed or baking paper shows no grease; thin printed paper may bleed onto them.',
      'Cool, dry and dark keeps scent and colour.',
    ],
  },
  'soda-ash-avoided': {
    answer: ['Cover the top at once, and use less water: soda ash is harmless, from raw soap and air.'],
    why: [
      spaced`
        Baking paper or film close on top, covered warm so that it gels, water about 2 times the lye or
        less (33 % lye and over), soap not too cold, kept covered for a day or two.
      `,
      'Ash that is there: steam it, wipe with a damp cloth, or plane it off, gloves on.',
      'Grains that sting are not ash but lye.',
    ],
  },
};
