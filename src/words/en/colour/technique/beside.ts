import { spaced } from '../../../../engine/over-lines.ts';

/** What is said to matters of soap round its colour: first what to do, then why. Trade practice, but for what names a source. */
export const techniqueBeside = {
  'ash-avoid': {
    answer: [
      'Soda ash is harmless: steam or a damp cloth takes it off.',
      'Against it: cover the mould, less water, gel.',
    ],
    why: [
      'A thin dry white film on top is carbonate of lye and air, not your white pigment.',
      'Cover the mould airtight for the first day, lye of about 33 %, poured at a full light trace and not cool.',
      'Some makers spray isopropyl alcohol (91 % and over) on the fresh top: never near a flame, window open.',
      'Hard grains, wet crystals or a sting are no ash: gloves on, do not use it.',
    ],
  },
  'rebatch-colour': {
    answer: [
      'Yes: grate it, melt it gently with a little water, stir wetted colour in.',
      'The old colour stays in it.',
    ],
    why: [
      spaced`
        So go darker than it was: brown, black, deep green or blue; several colours make brown. 1 to 2
        Tbsp water per 500 g soap, covered, in a slow cooker or water bath at 70 to 80 °C (158 to 176
        °F), oil-wetted colour at the end, pressed into the mould: rustic, no swirls.
      `,
      'Young soap burns: gloves.',
      'What zaps, weeps or holds hard white lumps is no matter of colour: /diagnose first.',
    ],
  },
  'colour-in-mould': {
    answer: [
      'Not evenly any more.',
      'While it is soft: drops of oil-wetted mica on top, drawn in with a stick.',
    ],
    why: [
      '1 tsp mica in 2 to 3 tsp light oil, a few drops, one or two strokes near the top; deeper stirring makes blotches and air.',
      'Poured a minute ago and still thin: back into the jug and stir the wetted colour in by hand.',
      'Firm: leave it, and dust or paint the top.',
      'Without colour it turns out cream.',
    ],
  },
  'cover-mould': {
    answer: [
      'Covered for the first 24 hours: less ash and livelier colours.',
      'Milk, honey or sugar in it: open and cool.',
    ],
    why: [
      'A lid or card, and a towel round it where the room is cool and it shall gel.',
      'For white and pastels no towel.',
      'Feel the side after an hour: hot, with a crack on top, it is uncovered.',
      'Oven only warmed to 60 °C (140 °F) at most and switched off; no fridge with food in it.',
    ],
  },
  'mould-care': {
    answer: [
      'Moulds: let what is left dry a day, peel it off, then hot water and washing-up liquid, gloves on.',
    ],
    why: [
      'Raw batter burns, so wait until it is soap.',
      'Silicone that keeps a tint or a smell of scent does no harm: an hour in hot soapy water takes most of it.',
      'No dishwasher for wood, no metal brush.',
      spaced`
        Lining without wrinkles: paper (freezer or baking paper) cut to the inner size, corners creased
        along a ruler, two strips crosswise, held with a little oil or tape on the outside.
      `,
      'Silicone needs none.',
    ],
  },
  'cure-time': {
    answer: ['Four to six weeks, with colour or without; nearly all olive is better after some months.'],
    why: [
      'On a rack with air, turned once a week, out of the sun, since plants fade in light.',
      'Colour makes it neither longer nor shorter; most colours grow a little lighter as it dries.',
      'Gloves for the first 48 hours; on skin from four weeks on.',
      '/batch poured reminds you.',
    ],
  },
  'lye-nerves': {
    answer: ['Respect is right, fear is not needed: goggles, gloves, and lye slowly into cold water.'],
    why: [
      'Never water onto lye.',
      'Everything weighed and set out first, long sleeves, closed shoes, open window, no children or pets, an hour in which nobody rings.',
      'It heats by itself to 80 to 90 °C (176 to 194 °F) and steams: face away, let it stand until it is 35 °C (95 °F).',
      'A splash: running water at once, at least 20 minutes.',
      'Begin with a plain recipe of 500 g oils and one colour: /plan weighs it.',
    ],
  },
  'stained-things': {
    answer: [
      'Wipe off the grease with paper first, then soap and hot water.',
      'Silicone and plastic keep some colour.',
    ],
    why: [
      'Gloves while the batter is raw.',
      'Charcoal, oxides and mica lie on top and go with washing-up liquid; turmeric, dyes and lakes dye plastic, wood and cloth.',
      'Hands: oil, then soap.',
      'Stone and grout: soon.',
      'No bleach or acid on what still has lye on it.',
      'Keep one spatula and jug for dark colours.',
      'A bar that stains: less colour, 1 tsp per 500 g oils.',
    ],
  },
  'coloured-suds': {
    answer: [
      'Lather should be near white: much colour or a dye tints it.',
      'Ugly, seldom harmful; half the dose next time.',
    ],
    why: [
      'Over about 1 tsp per 500 g oils (charcoal and oxides 1, ultramarine and indigo 1/2) it shows in the lather and on cloth.',
      'Dyes, lakes and many neons tint it at any dose.',
      'Try the bar on an old cloth before you give it away.',
      'It may pale in the cure.',
      'If it stings it is no matter of colour: stop, and /first-aid.',
    ],
  },
  'hot-soap': {
    answer: [
      'Yes: lye water jumps to 80 to 90 °C (176 to 194 °F), and soap in the mould heats to 60 to 80 °C (140 to 176 °F).',
    ],
    why: [
      'That is gel: warm from about an hour on, darker in the middle, cool again the next day.',
      'Milk, honey, sugar, some scents and a big wrapped loaf go hotter.',
      'A crack on top, bulging or bubbling: uncover it, moving air, a tray under it, face away, gloves.',
      'A ring in the cut bar is only half gel.',
    ],
  },
  'label-selling': {
    answer: [
      'Each colour by its INCI name or CI number: mica is “Mica, CI 77891, CI 77491”, as its own sheet says.',
    ],
    why: [
      'EU and UK: colours may stand last in any order, by CI number (Regulation 1223/2009, article 19).',
      spaced`
        Titanium dioxide CI 77891, iron oxides CI 77491, 77492, 77499, ultramarine CI 77007, chromium
        oxide CI 77288, charcoal “Charcoal Powder”.
      `,
      '“May contain” is for ranges of make-up.',
      'What you sell needs its own safety assessment there.',
      'I am no lawyer: ask your authority.',
    ],
  },
  'blend-two': {
    answer: [
      'Blue and yellow: dull green.',
      'Red and white: pink.',
      'Red and blue: plum.',
      'Black and white: grey.',
      'Red and yellow: orange.',
    ],
    why: [
      'Hues that face each other (red and green, blue and orange, yellow and violet) go brown or grey.',
      'Oxides are earthy, so what they make is quiet too.',
      'Name the two powders and I show it: /preview mix:“1/4 tsp ultramarine + 1/4 tsp yellow oxide”.',
    ],
  },
  'colour-families': {
    answer: [
      'Brown: cocoa, coffee.',
      'Yellow to orange: annatto, turmeric, paprika.',
      'Pink: madder, rose clay.',
      'Blue: indigo.',
    ],
    why: [
      'Violet: alkanet, more grey than violet.',
      'Green: leaves and spirulina, which fade to khaki; green clay stays.',
      'Beetroot, hibiscus, berries, purple corn, butterfly pea and red cabbage go brown or grey in lye.',
      'Name one and I say what becomes of it.',
    ],
  },
  'darker-lighter': {
    answer: [
      'Darker: more of the same, up to double.',
      'Lighter: half the colour, or a little titanium dioxide.',
    ],
    why: [
      'In the pot: by quarters of a teaspoon, wetted, by hand.',
      'Raw batter looks darker and yellower than the bar will.',
      'White makes it milky as well as pale; plain batter thins it without.',
      'Black greys a colour: a speck at most.',
      'Gel deepens, no white in that part either.',
      'Made soap is not changed any more.',
      'Tell me the colour and the amount: “ultramarine, 500 g oils, half strength”.',
    ],
  },
  'small-batch': {
    answer: [
      'With a scale of 1 g: 500 g oils at least; with 0.1 g down to about 100 g.',
      'One colour: a spoonful of batter.',
    ],
    why: [
      'Half a gram of lye is 3.5 % of the lye for 100 g of oils, and that is most of a superfat of 5 % (arithmetic).',
      'So split a normal batch into cups and colour each with a pinch: 1/32 tsp in 2 Tbsp.',
      'A narrow, tall jug lets the blender reach; under 200 g whisk by hand.',
      'Keep the cups warm, so that they gel like the loaf would.',
    ],
  },
};
