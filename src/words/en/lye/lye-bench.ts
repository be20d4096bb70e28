import { spaced } from '../../../engine/over-lines.ts';

/** What is said to questions of safety at the bench: what is worn, what lye is cooled in, what is weighed. */
export const lyeBench = {
  gear: {
    answer: [
      'For lye: goggles that close all round, gloves of nitrile, neoprene or thick household rubber, long sleeves, closed shoes.',
    ],
    why: [
      'Gloves whole and over the wrist: fill them with water once to find a hole.',
      'Thin latex or vinyl tears; cotton soaks lye up and holds it on the skin.',
      'Against the steam a draught and an averted face do more than a mask; with asthma let somebody else mix it.',
      'Lye got into a glove: off with it, running water.',
    ],
  },
  dust: {
    answer: ['Yes: a dust mask (FFP2 or N95) for fine powders, and keep them down.'],
    why: [
      'Titanium dioxide, oxides, clay, charcoal and mica are not poisonous in soap, but their dust does lungs no good.',
      'Spoon slowly, wet the powder under its liquid before you stir, no fan.',
      'Wipe up damp; do not sweep or blow it.',
      'Asthma: let somebody else measure.',
    ],
  },
  unattended: {
    answer: ['Not open and not alone: lye water is labelled, loosely covered, and behind a locked door.'],
    why: [
      'An hour of cooling in a basin in a room that nobody else enters is usual.',
      spaced`
        Overnight: cold, in a closed HDPE or PP bottle that never held a drink, “LYE: CAUSTIC” on it,
        locked away from children and animals.
      `,
      'Open it draws carbon dioxide, gets a crust, and grows weaker.',
    ],
  },
  'other-alkali': {
    answer: [
      'Only pure sodium hydroxide (bars) or potassium hydroxide (soft soap), with its purity on the label: no ash, no lime.',
    ],
    why: [
      'Carbonate, baking soda and lime make no soap with oil.',
      spaced`
        Lye of wood ash made soap once, soft and harsh, for it has a strength that nobody knows, so no
        lye can be weighed with it: it burns or stays greasy.
      `,
      'Oven and drain cleaners hold other things besides.',
      'Food grade is fine if it says NaOH and 98 % or more.',
    ],
  },
  'oil-swapped': {
    answer: [
      'No: every oil takes lye of its own.',
      'With another oil, or less of one, the lye is worked out anew.',
    ],
    why: [
      '1000 g coconut take about 174 g NaOH at 5 % superfat, 1000 g olive about 129 g: the lye of the one burns in the other.',
      'Nothing mixed yet: tell me the oils as they are, such as “how much lye for 700 g olive and 300 g lard”.',
      'Already mixed: “I put 100 g lye in 700 g olive” tells how far off it is; until then gloves, and not on skin.',
    ],
  },
  'less-lye': {
    answer: [
      'Less lye makes no gentler soap, only a soft and greasy one. 5 to 8 % superfat is gentle; 20 % for all coconut.',
    ],
    why: [
      'In a well weighed, cured bar no lye is left.',
      'With half the lye half the oil stays oil: it does not set, and goes rancid.',
      'For a mild bar: much olive, little coconut, five weeks of cure or more.',
      '/plan superfat:8',
    ],
  },
  scale: {
    answer: [
      'Lye on a scale that shows 1 g; for less than 500 g of oils 0.1 g.',
      'Steps of 5 g are too coarse.',
    ],
    why: [
      '5 g more in 26 g of lye is a fifth too much.',
      'Make a batch of 1000 g or more, or take a finer scale; fresh battery, level, the jug weighed first.',
      'A kitchen scale will do if nothing that is eaten touches it again, and it is washed.',
      'Never spoons or cups.',
    ],
  },
  'scent-dose': {
    answer: [
      'At most what its certificate says for rinse-off soap (IFRA category 9): usually up to 3 % of the oils, 30 g per kg.',
    ],
    why: [
      spaced`
        Essential oils by weight too, many far lower: cinnamon and clove under 0.5 %, peppermint and
        citrus with care. 6 % and over is asked back, 8 or 10 % irritates skin and may seize the batter.
      `,
      'No scent for babies.',
      '/plan fragrance:“3%” weighs it.',
    ],
  },
  'old-oil': {
    answer: [
      'Only if you know which fat it is, it is clean, and it does not smell rancid; then as laundry soap rather than for skin.',
    ],
    why: [
      'Filter it, let water settle out, weigh it.',
      'Frying breaks oil up, so its lye is uncertain: take 5 to 8 % superfat and gloves, test for a zap.',
      'Rancid oil gives rancid soap with orange spots.',
      'Mixed, unknown or motor oil: no, since nobody knows its lye.',
    ],
  },
  tared: {
    answer: ["Take the empty vessel's weight off what the scale showed: what is left is the lye."],
    why: [
      'Say a jug of 50 g and 170 g on the scale: 120 g of lye.',
      "Do not guess the vessel's weight: set it empty and dry on the same scale, or weigh the lye anew.",
      'Next time zero the scale with the vessel on it.',
    ],
  },
  'never-taste': {
    answer: ['No: never taste it.', 'What may hold lye is treated as lye.'],
    why: [
      'Nobody can see lye in water.',
      spaced`
        Keep children and animals away, wear goggles and gloves, label it, and get rid of it as lye
        water: little by little into much cold water, by your local rules.
      `,
      'Then weigh out a fresh one.',
      'Somebody tasted it: /first-aid.',
    ],
  },
  'hair-on-bars': {
    answer: [
      'Wipe hair and dust off with a damp cloth, or plane a thin layer off.',
      'Bars still curing: wear gloves.',
    ],
    why: [
      'Cover the rack with a cloth or net that lets air through, away from animals.',
      'An animal that licked or chewed a bar, or lay on soap that is still raw: wash its coat with water and call a vet.',
    ],
  },
  'indicator-pink': {
    answer: [
      'Not for that: pink says only “above pH 8 to 10”, and sound soap is 9 to 10.5.',
      'It proves no lye.',
    ],
    why: [
      'Gloves until you know.',
      'Check the weights first: tell me “I put 100 g lye in 700 g olive”.',
      spaced`
        Then four weeks of cure, pH paper in the lather of a wetted bar: 11 and over, hard crystals, wet
        drops or spots that turn far deeper than the rest: do not use it.
      `,
      'A bar that stays clear with the drops proves nothing either: they see only where they fall.',
    ],
  },
  'puddle-on-top': {
    answer: [
      'Gloves and goggles: treat it as lye until you know.',
      'Do not touch or wipe it bare, do not use it.',
    ],
    why: [
      'Leave it a day: a thin film of oil and dew of glycerin often draw back in.',
      'Still there: pH paper on the drop, not the tongue; 11 and over, or a clear layer under oil, is lye that parted.',
      spaced`
        Then check every weight (“I put 100 g lye in 700 g olive”): if they are certain, rebatch the
        whole loaf with all that ran out of it; if not, caustic waste by your local rules.
      `,
    ],
  },
  'soap-at-large': {
    answer: ['That is about soap, but I have no sure answer to it.'],
    why: [
      spaced`
        I know colour in cold-process soap: how much, what to wet it in, whether it survives lye, what
        went wrong with a bar; and lye and water for your oils.
      `,
      'Ask another way, or /help shows it all.',
    ],
  },
  unsure: {
    answer: ['I have no sure answer to that.', 'Near lye, what is in doubt is left alone.'],
    why: [
      spaced`
        What always holds: goggles and gloves; lye weighed, slowly into cold water, in polypropylene or
        stainless steel, in a draught; children and animals out; nothing else mixed with it; nothing
        eaten or tasted; used only after four weeks and without a zap.
      `,
      'Ask another way, or one thing at a time, such as “can I use a glass jug for lye”.',
      'Somebody hurt: /first-aid.',
    ],
  },
};
