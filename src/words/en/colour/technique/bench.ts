/** What is said to matters of the bench: a first recipe, moulds, scales, what is cleaned. First what to do, then why. Trade practice. */
export const techniqueBench = {
  'starter-recipe': {
    answer: [
      'First recipe: 50 % olive, 25 % coconut, 25 % lard or palm, 5 % superfat, 500 g oils.',
      'One colour.',
    ],
    why: [
      'Slow enough to swirl, firm in a day or two.',
      'Shea or cocoa butter up to 10 % in the place of lard, castor up to 5 % for lather.',
      'Each oil takes its own lye, so have it weighed for exactly yours: /plan oils:“50% olive, 25% coconut, 25% lard” size:“500 g”.',
      'Goggles and gloves, lye into cold water.',
      'Begin with one oxide or mica, 1/2 tsp, and no scent.',
    ],
  },
  'clean-clothes': {
    answer: [
      'Raw batter on clothes: gloves on, scrape it off, rinse with much cold water, wash it on its own.',
    ],
    why: [
      'It burns skin for a day or two, so take it off if it is wet through, and rinse the skin beneath under running water.',
      'Wool and silk suffer from lye: rinse at once.',
      'When it is soap already: let it dry, brush it off, wash as usual.',
      'Colour that stays: washing-up liquid rubbed in, then the wash; charcoal and oxides go, turmeric and dyes often stay.',
      'No bleach and no vinegar while there is lye in it.',
    ],
  },
  'stuck-in-mould': {
    answer: [
      'Stuck in the mould: leave it a day or two more, or two hours in the freezer; pull the sides away, then push.',
    ],
    why: [
      'Gloves on, it is young soap.',
      'Soft soap sticks: much olive, much water, no gel; it wants more days, not force.',
      'Out of the freezer let it stand until the sweat is dry.',
      'Silicone: let air in all round before you push.',
      'Wood or a box without paper: a thin blade along the sides.',
      'Next time line it, and sodium lactate, 1 tsp per 500 g oils in the cooled lye water, firms it.',
    ],
  },
  'clean-tools': {
    answer: [
      'Wipe raw batter off with paper, gloves on; leave tools a day, it is soap then, and wash them hot.',
    ],
    why: [
      'Paper goes into the bin.',
      'Little of it down the drain, with much hot water after it: batter and wax set in pipes.',
      'A tint in silicone or plastic does no harm: an hour in hot soapy water, or oil rubbed in, takes most of it; turmeric and dyes stay.',
      'Hands and nails: oil, then soap and a brush.',
      'Wooden moulds: let it dry, scrape, damp cloth.',
      'No dishwasher with raw batter, it foams.',
    ],
  },
  'scale-drift': {
    answer: [
      'Level and hard under it, fresh battery, switched on ten minutes; check it with a known weight, zero it again.',
    ],
    why: [
      'A coin or an unopened bag of sugar shows what is off.',
      'Draughts, a phone and a warm jug make it wander; many switch off or creep when you pour slowly, so pour into a cup and weigh that.',
      'Lye of 500 g oils wants a scale of 1 g, less wants 0.1 g.',
      'What was weighed on a scale that wandered is not known: weigh it again before it meets the oils.',
    ],
  },
  'make-it-gel': {
    answer: [
      'To gel: pour at 38 to 43 °C (100 to 109 °F), lid on, towel round it for a day; look after an hour.',
    ],
    why: [
      'Or an oven warmed to 60 °C (140 °F) at most and switched off, the mould in it overnight, nothing plastic that softens.',
      'A small or flat mould loses heat and needs it most.',
      'The whole surface goes dark and see-through, then pale again: an hour or two of that is enough.',
      'Milk, honey, sugar, beer in it: no oven, no towel, it heats by itself.',
      'Crack or bulge on top: uncover it.',
    ],
  },
};
