import { spaced } from '../../../engine/over-lines.ts';

/** What is said of what a first batch is made of: its water and heat, its moulds, what is put in and what is not. */
export const lyeMixing = {
  'other-water': {
    answer: ['No: lye goes into plain cold water only, best distilled.'],
    why: [
      'Sea, pool and salt water bring salt and dirt: lye dissolves badly, the bar crumbles.',
      'Fizzy drinks foam over at once, their sugar heats and their acid uses up lye.',
      'Broth has salt, fat and protein: it heats and stinks.',
      'Peroxide breaks up with heat and foam, never.',
      'Salt or sugar, if wanted, is weighed and dissolved in the plain water first: /plan additives:“salt 10 g”.',
    ],
  },
  'lye-in-oil': {
    answer: ['No: lye goes into cold water first, and that lye water into the oils.'],
    why: [
      'Dry lye does not dissolve in oil: grains stay in the soap and burn skin weeks later.',
      spaced`
        Weigh at least as much water as lye, lye in slowly, stir until clear, let it cool to 35 to 45 °C
        (95 to 113 °F), then into the oils.
      `,
      spaced`
        Dry lye in the oils already: add no water to it, it heats and spits; gloves, goggles, discard it
        as caustic waste by your local rules.
      `,
    ],
  },
  'water-forgotten': {
    answer: ['Do not pour water on it now, and do not use it.'],
    why: [
      'Dry lye under oil heats and spits when water reaches it, and without water it stays in grains that burn.',
      spaced`
        Goggles and gloves, everybody else out; let it stand cold, scrape it into a labelled plastic tub
        (PP or HDPE), hand it in as caustic waste by your local rules, and start again: lye into cold
        water first.
      `,
      'Only a batter that had too little water, not none, may go on if all the lye was dissolved.',
    ],
  },
  'mixing-temperature': {
    answer: ['Both at 35 to 45 °C (95 to 113 °F), and not more than about 10 °C (18 °F) apart.'],
    why: [
      'Lye water at 60 to 70 °C (140 to 158 °F) is too hot: stand its jug in cold water (nothing into the jug), goggles on, and wait.',
      'Too hot thickens at once, may spit and overheats in the mould; under 30 °C (86 °F) hard fats set before they are soap.',
      'Milk, honey or sugar: under 35 °C (95 °F).',
      'Check that your thermometer shows °C: 40 °C is 104 °F.',
    ],
  },
  'mould-stuff': {
    answer: [
      'Only what holds no metal and stands 80 °C (176 °F): silicone, PP (mark 5), wood or card lined with baking paper.',
    ],
    why: [
      spaced`
        Cartons and crisp tubes have foil or bare card inside: line them with baking paper, whole, no
        cut edge bare; with aluminium that shows, never: it reacts with lye and makes hydrogen.
      `,
      'Tins of aluminium or tinplate: no.',
      'Pots of PP are fine, thin PS (mark 6) softens.',
      'PVC pipe softens and does not let go: line it, PP is better.',
      'Never back to food.',
    ],
  },
  'not-an-oil': {
    answer: ['No: not motor, machine, mineral or baby oil, nor the oil of fish tins.'],
    why: [
      'Motor and mineral oils are no fats: lye makes no soap of them, all of it stays free and burns; used motor oil is poisonous.',
      'Oil of fish tins holds salt, water and fish: its lye is unknown and the smell stays.',
      'Take fresh kitchen oil and ask “how much lye for 500 g olive oil”.',
    ],
  },
  'sand-and-shells': {
    answer: ['Only on top or a little fine, washed and dried; nothing sharp in a bar that rubs skin.'],
    why: [
      'Beach sand and shells bring salt, dirt and sharp edges: wash and boil them, dry them, take shells off before use.',
      'Lye does not hurt shell (calcium carbonate) or quartz sand.',
      'Sand scratches: at most 1 tsp of the finest per 500 g oils, never for a face, a child or broken skin.',
      'As a mould: line a shell, or the soap sticks.',
      'Mind local rules: many beaches forbid taking them.',
    ],
  },
  'no-trace': {
    answer: [
      'Add no lye.',
      'Warm it gently to about 40 °C (104 °F) and blend in short bursts, then check the weights.',
    ],
    why: [
      'Olive and much water can take an hour by hand; cool fats look thick and are not.',
      'Still thin after 30 minutes of a stick blender: too little lye, too much water or a wrong oil is likely.',
      'Go over each weight (tell me “I put 64 g lye and 150 g water in 500 g olive”).',
      'Goggles and gloves stay on: it burns as long as it is not soap.',
      'In doubt it is not poured as soap but kept labelled, and discarded by your local rules.',
    ],
  },
  'kitchen-spice': {
    answer: ['Better not: cinnamon, clove, chilli, pepper and mustard irritate skin, more so while raw.'],
    why: [
      'The spice rack is no cosmetic: cinnamon and clove are among the commonest causes of skin allergy, chilli burns eyes and hands.',
      'They also scratch and go brown.',
      spaced`
        For that brown take red or brown iron oxide, or cocoa; for yellow, turmeric or annatto in oil:
        ask “how much annatto for 500 g oils”.
      `,
    ],
  },
  puree: {
    answer: ['At most 1 Tbsp (15 g) per 500 g oils, cooked and very fine, in place of as much of the water.'],
    why: [
      'Its sugar heats: lye, oils and room cool, under 35 °C (95 °F), not wrapped, no oven.',
      'More, or with bits, goes mouldy, brown or soft.',
      'Its water counts: /plan with additives:“pumpkin puree 15 g” takes it out of the water and never below as much water as lye.',
      'Into the oils, never onto lye.',
      'Its colour mostly fades to beige.',
    ],
  },
  'fresh-plants': {
    answer: ['No: fresh petals, leaves and fruit brown in lye and go mouldy.'],
    why: [
      'They bring water that nobody counts, and rot.',
      'Dried, on top only, and they may still brown; calendula petals alone keep their yellow.',
      'Fruit as a purée: cooked, fine, at most 1 Tbsp per 500 g oils, in place of some of the water.',
    ],
  },
  'craft-glitter': {
    answer: ['No: craft glitter is not for skin, nor for a child’s soap.'],
    why: [
      'Its film may hold aluminium, which lye eats, dyes that bleed, and edges that scratch skin and eyes.',
      'Take a cosmetic glitter or mica whose ingredient list you have, and ask me “will mica, CI 77891 survive lye”.',
    ],
  },
  'household-scent': {
    answer: ['No: no fabric softener, cologne, air freshener or kitchen essence in soap.'],
    why: [
      'Softener is not meant for skin and ruins the batter.',
      'Cologne and essences hold alcohol: the batter heats and seizes, and the alcohol burns.',
      'Vanilla browns besides.',
      'Take a scent made for soap, weighed by its certificate (IFRA category 9), or none.',
    ],
  },
  ink: {
    answer: ['No: ink of pens, markers or printers is not for skin and does not go into soap.'],
    why: [
      'Its dyes are not assessed for skin, its solvents irritate, and most of it fades or bleeds in lye.',
      'Take an oxide, an ultramarine or a mica: ask “how much ultramarine blue for 500 g oils”.',
    ],
  },
  'hot-oils-of-scent': {
    answer: [
      'Never “lots”, never by drops or ml: weighed in grams, up to what the oil’s own certificate allows.',
    ],
    why: [
      spaced`
        Cinnamon, clove, thyme, oregano and lemongrass oil burn skin, bring on allergies and seize the
        batter: their share for rinse-off soap (IFRA category 9) is a small fraction of the usual scent,
        for cinnamon bark about nothing.
      `,
      'Without a certificate leave it out; none for children, pregnancy or sore skin.',
      '/plan fragrance:“3%” works the grams out for a scent whose certificate allows it.',
    ],
  },
};
