import { spaced } from '../../../engine/over-lines.ts';

/** What is said of powders that harm, or that are none for soap. */
export const lyePowders = {
  'ultramarine-acid': {
    answer: [
      'No: acid and ultramarine never together, in batter or on the bar.',
      'It frees poisonous hydrogen sulfide.',
    ],
    why: [
      'Lemon, vinegar and citric acid destroy the blue and smell of rotten eggs.',
      spaced`
        In a recipe the acid goes wholly into the lye water first, with the lye it uses: /plan
        additives:“citric acid 10 g”; the pigment only at trace.
      `,
      'On a finished bar no acid at all.',
      'If it smells of rotten eggs: everybody out, fresh air, /first-aid.',
    ],
  },
  'prussian-acid': {
    answer: ['No: no acid with Prussian blue (iron blue), and it does not last in raw soap anyway.'],
    why: [
      'Lye turns it rusty brown.',
      'It holds cyanide bound to iron: safe as it is, but strong hot acid can free hydrogen cyanide.',
      'For a blue that stays: ultramarine, and no acid with that either.',
    ],
  },
  'craft-colour': {
    answer: ['No: colour for art, resin, candles, nails, hair or cloth does not go into soap for skin.'],
    why: [
      'Nobody has tested it for skin: it may hold chromium VI, lead, solvents or banned dyes, and black henna often PPD.',
      'Lye may change it too.',
      spaced`
        Take only what is sold as cosmetic grade with its CI number on the label, such as CI 77288 for
        chromium oxide green, and ask me “will mica, CI 77891 survive lye”.
      `,
    ],
  },
  'ground-stuff': {
    answer: ['No: rust, brick, metal powder or barbecue charcoal do not go into soap.'],
    why: [
      'Nobody knows which metals they hold; they scratch, and lye eats brass, bronze and aluminium powder, some with hydrogen.',
      spaced`
        For brown and red: iron oxide, CI 77491, cosmetic grade; gold: mica with its CI numbers; black:
        activated charcoal or black iron oxide.
      `,
    ],
  },
  filler: {
    answer: ['No: plaster, gypsum and talc do not go into soap.'],
    why: [
      'Plaster sets in the batter, heats, and would do so in a drain.',
      'Talc makes dust that is bad for lungs, and may hold asbestos where it is not cosmetic grade; no powder for babies either.',
      'For a harder bar: more hard oils, less water, 10 to 20 g salt per kg oils in the water, a longer cure.',
    ],
  },
};
