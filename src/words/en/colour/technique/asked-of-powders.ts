/** Answers to what is asked of a powder at the bench: what it is wetted in, which white, how it keeps. Trade practice. */
export const techniqueAskedOfPowders = {
  'wet-in-scent': {
    answer: [
      'Better not: scents can race the batter and the powder clumps in them.',
      'Light oil, and the scent apart, last.',
    ],
    why: [
      '1 tsp of powder in 1 Tbsp of light oil that comes off the recipe.',
      'So a scent that races touches no colour, and the amount of it stays what its sheet allows.',
    ],
  },
  'wet-in-alcohol': {
    answer: [
      'Better oil or glycerin.',
      'A few drops of alcohol wet stubborn powder, but it burns and hurries the batter.',
    ],
    why: [
      'If at all: drops only, strong and colourless, no flame or hot plate near, window open, and left to go off before the oil is added.',
      'Never into warm batter or lye water: it boils up.',
      'A light oil and ten minutes of soaking do the same.',
    ],
  },
  'wet-in-glycerin': {
    answer: ['Yes, glycerin works for nearly all powders: 1 tsp of powder in about 1 Tbsp, stirred smooth.'],
    why: [
      'It holds powder up longer than oil and takes no lye.',
      'Blend it into its portion well, or it stays in wet coloured pockets.',
      'More than a tablespoon or two for 500 g of oils makes the bar softer and it sweats sooner.',
    ],
  },
  'without-white': {
    answer: [
      'Yes: white takes colour, so without it about half gives the same depth, over the yellow of the oils.',
    ],
    why: [
      'Titanium dioxide pales and greys whatever is beside it.',
      'Without it colours are deeper and a little see-through, blues lean green over yellow oils.',
      'Begin with half, look at a spoonful on white paper, add by quarters of a teaspoon.',
    ],
  },
  'zinc-or-titanium': {
    answer: [
      'Titanium dioxide covers about twice as well: for a true white take that.',
      'Zinc oxide is a softer white.',
    ],
    why: [
      'Zinc oxide needs about double for the same, and may thicken the batter a little.',
      'Both hold in lye.',
      'More than 2 tsp of titanium dioxide for 500 g of oils crackles and crumbles.',
      'Either one: cosmetic grade, wetted as its label says.',
    ],
  },
  'old-powder': {
    answer: [
      'Oxides, ultramarines, micas and clays do not go off while dry and closed.',
      'Plants and dyes pale in a year or two.',
    ],
    why: [
      'Lumps from damp: dry them, crush and sieve them, mask on.',
      'Smell, mould or wet: out.',
      'Wetted in oil they keep as long as the oil, in water a day.',
      'Old stock without a list of what is in it stays out of soap.',
      'A test bar shows whether it is still as strong.',
    ],
  },
  pinch: {
    answer: [
      'A pinch is about 1/16 tsp, a smidgen 1/32.',
      'Surer: 1 tsp of powder in 1 Tbsp oil, taken by drops.',
    ],
    why: [
      'A quarter teaspoon of that paste holds about 1/16 tsp of powder.',
      'Stir it up first.',
      'Add, look on white paper, add again: there is no way back.',
    ],
  },
  'use-up-strong': {
    answer: [
      'Yes: grate it into plain batter as confetti, or rebatch it with four or five times as much plain soap.',
    ],
    why: [
      'Reckon it: three times the usual dose wants two parts of plain to one of it at least, six times five parts.',
      'Or cure it and keep it for a dark flannel.',
      'If it zaps or stings it is no matter of colour: do not use it.',
    ],
  },
};
