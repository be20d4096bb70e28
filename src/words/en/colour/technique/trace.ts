import { spaced } from '../../../../engine/over-lines.ts';

/** What is said of trace, of warmth, and of batter that thickens or splits. */
export const techniqueTrace = {
  'thick-now': {
    answer: ['Stop the stick blender.', 'Stir by hand and get it into the mould now.'],
    why: [
      'Still pourable: leave the swirl, pour the colours you have one after the other.',
      spaced`
        Like pudding: spoon it in, press each spoonful down, knock the mould on the table to close the
        gaps; fold what colour is left into the last spoonfuls, streaks are fine.
      `,
      'Hard in the jug: press it into the mould with gloved hands, or warm it gently and finish it as hot process.',
      'One jug thicker than the others: that one first, as a layer.',
      'It is good soap if the lye was weighed right.',
      'Next time: 30 to 35 °C (86 to 95 °F), lye of 28 to 30 %, scent last and by hand.',
      'Hot and climbing out of its pot: gloves, goggles, into a bigger pot or a tray, no lid.',
    ],
  },
  'riced-now': {
    answer: ['Grainy like rice: stick blend it smooth in short bursts, then pour at once.'],
    why: [
      'Mostly the scent did it.',
      'Once smooth it thickens fast, so no swirl.',
      spaced`
        Oil standing on top in the pot: it has split or never joined; blend on until no oil shows, and
        where hard fats have set warm it gently to about 40 °C (104 °F).
      `,
      'Will it not join: finish it as hot process.',
      spaced`
        In the mould already and oil or water lies on it next day: do not use it; stir it together or
        rebatch it, and use nothing that zaps.
      `,
    ],
  },
  'thin-it': {
    answer: ['No: neither oil nor water undoes trace.', 'Stir by hand and pour now.'],
    why: [
      'More oil raises the superfat and softens the bar.',
      'A spoonful of warm water may buy a minute; more makes soft bars and glycerin rivers.',
      'Warming helps only where cool hard fats made it thick (false trace).',
    ],
  },
  'keep-fluid': {
    answer: [
      'Blend only until no oil streaks show, then stir by hand; oils and lye at 30 to 38 °C (86 to 100 °F).',
    ],
    why: [
      'Slow oils, 60 % or more: olive, high-oleic sunflower, rice bran, lard; castor at most 5 %, few butters.',
      'Lye of 28 to 30 %, which is 2.3 to 2.6 parts of water to one of lye.',
      'Powders wetted beforehand, everything set out before the lye goes in.',
      'A scent that you have tried, last, by hand.',
      'Not so cool that hard fats turn cloudy.',
    ],
  },
  'pot-time': {
    answer: [
      'With slow oils and a quiet scent 10 to 30 minutes from emulsion; with a fast scent perhaps one.',
    ],
    why: [
      'Each burst of the blender costs minutes, so does warmth.',
      'Set colours, moulds and tools out first, scent last.',
      'For more time: lye of 28 to 30 %, 30 to 38 °C (86 to 100 °F), slow oils.',
    ],
  },
  'slow-oils': {
    answer: [
      'Slow: olive, high-oleic sunflower, rice bran, almond, lard.',
      'Fast: castor over 5 %, palm, butters.',
    ],
    why: [
      'A swirl recipe by common practice: 50 to 60 % slow liquid oil, 20 to 25 % coconut, the rest lard or palm, castor 0 to 5 %.',
      'Pomace olive is quicker than other olive.',
      'Every oil takes its own lye: /plan oils:“55% olive, 25% coconut, 20% lard” weighs it.',
    ],
  },
  'swirl-water': {
    answer: [
      'Lye of 28 to 30 % for a fine swirl (2.3 to 2.6 parts of water to one of lye), 33 % for a simple one.',
    ],
    why: [
      'A water discount thickens sooner: not for swirls.',
      'More water gels sooner and brings glycerin rivers in white.',
      'Never less water than lye.',
      '/plan water:“29% lye” weighs it.',
    ],
  },
  'swirl-temperature': {
    answer: ['Oils and lye water both at 30 to 38 °C (86 to 100 °F) for swirls.'],
    why: [
      'Warmer thickens sooner; cooler and hard fats set, which is false trace: palm, lard and butters have to be clear.',
      'They lie not more than about 10 °C (18 °F) apart.',
      'Batter at 45 °C (113 °F) is usable, only quicker.',
    ],
  },
  'blend-or-stir': {
    answer: ['Bursts of 2 to 3 seconds with stirring between, until no oil streaks show; the rest by hand.'],
    why: [
      'Often 20 to 60 seconds in all.',
      'Colours and scent are stirred in; a second of the blender in one portion only against lumps, since it thickens.',
      'No blender, or it broke: whisk steadily, it takes 20 to 60 minutes, longer with much olive, with rests in between.',
      'Stay with it.',
      'Nothing after an hour: check the weights of the lye.',
    ],
  },
  'which-trace': {
    answer: ['Light trace for swirls, medium for layers, thick for piping.'],
    why: [
      'Light: like thin custard, a drizzle just shows (in the pot, drop, divider, comb, stripes).',
      'Medium: a spoonful rests on top (layers, spoon swirl).',
      'Thick: holds a peak like buttercream (piping, textured tops).',
      'All colours of one pour at the same thickness.',
    ],
  },
  'false-trace': {
    answer: ['Warm it: if it turns thin again it was false trace, hard fats that set, not soap.'],
    why: [
      'Signs: cool, under about 30 °C (86 °F), dull or grainy, streaks of oil, with palm, lard or butters in it.',
      'Warm it to about 40 °C (104 °F) while stirring and blend on until it stays thick.',
      'Poured as it is it can split, with oil and lye in pockets.',
    ],
  },
  'what-is-trace': {
    answer: [
      'Trace: a drizzle of batter stays on top for a moment.',
      'Emulsion is just before: no oil streaks, thin as milk.',
    ],
    why: [
      'Blender off, lift it and let it drip.',
      'Emulsion: one colour, no shine of oil, and it stays so when it stands; colours go in here.',
      'Light: thin custard, the drizzle just shows.',
      'Medium: it lies on top, like pudding.',
      'Thick: a peak stands.',
      'Thick but cool, dull and with streaks of oil is false trace.',
    ],
  },
  'changed-in-pot': {
    answer: [
      'Pour it: some colours turn in raw batter and come back within days.',
      'Brown or grey after a week stays so.',
    ],
    why: [
      'Add no more now, it cannot be judged.',
      spaced`
        Pink that goes orange and ultramarine that looks dull often come back as the lye is used up;
        iron blue, manganese violet, carmine and food dyes do not.
      `,
      'Look at its list for next time: /colourant check.',
      'The soap itself is good.',
    ],
  },
};
