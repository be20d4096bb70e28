import { spaced } from '../../../../engine/over-lines.ts';

/** Answers to what is asked of a thing of the bench (`src/engine/questions/technique/asked`). Trade practice. */
export const techniqueAsked = {
  'melt-fats': {
    answer: [
      'Hard fats are melted all the way until the oils are clear, then left to cool to 30 to 40 °C (86 to 104 °F).',
    ],
    why: [
      'Weigh first, melt gently in a water bath or on the lowest heat, hardest fats first, the liquid oils after them: those cool the pot.',
      'Bits left solid set in the bar as white spots, and cool butters look like trace.',
      'Only then the cooled lye water goes in.',
      'Never leave oil on the stove alone.',
    ],
  },
  'water-held-back': {
    answer: [
      'Yes: hold a spoon or two of the recipe’s water back for it.',
      'Never less water than lye in the jug.',
    ],
    why: [
      'The lye stays the same, only its water is split.',
      'One tablespoon is 15 g: for 100 g of lye in 200 g of water nothing changes.',
      'Wetted in oil, take that oil off the oils instead.',
      'Water on top of the recipe only keeps the bar soft a little longer.',
    ],
  },
  'salt-and-colour': {
    answer: [
      'Salt makes it paler and milkier: a third to a half more colour than usual.',
      'Cut it within one to four hours.',
    ],
    why: [
      'Salt crystals are white and the bar turns opaque.',
      'Minerals stay true, plants fade as ever.',
      'Stir salt in last, at medium trace, fine salt only: coarse or Dead Sea salt scratches or draws water.',
      'Single moulds save the cutting.',
    ],
  },
  'salt-hardens': {
    answer: ['About 1 tsp of plain salt for 500 g of oils, dissolved in the water before the lye goes in.'],
    why: [
      'It firms the bar sooner and comes out of the mould cleaner; more costs lather.',
      'It takes no lye.',
      'Not into made lye water, and not into soft batter: there it stays as grains.',
      'A salt bar with half the weight of the oils is another thing, cut within hours.',
    ],
  },
  'sensitive-skin': {
    answer: [
      'Nothing can be promised: at most a plain cured bar, no scent, little or no colour.',
      'Sick skin asks a doctor first.',
    ],
    why: [
      'Six weeks of cure or more and no zap on an adult.',
      'Scents, plants and strong spices irritate most, minerals least.',
      'Try it on a small spot of the arm for a day.',
      'Redness or itching: stop, rinse.',
      'A soap cures nothing, and may not be given or sold as if it did.',
    ],
  },
  'rinse-tools': {
    answer: [
      'Neither bleach nor vinegar is needed: paper, gloves, a day’s wait, then hot water and washing-up liquid.',
    ],
    why: [
      'Never mix the two, or either with other cleaners: chlorine gas.',
      'Vinegar on lye heats and spits; on skin it is no help, water is.',
      'After a day what is left in the pot is soap and washes off like soap.',
      'Soap pots stay out of cooking.',
    ],
  },
  'blender-stuff': {
    answer: [
      'A shaft and bell of stainless steel, or stout plastic.',
      'Never aluminium: lye eats it and makes hydrogen.',
    ],
    why: [
      'A magnet and the label tell: light grey metal that goes dull is aluminium.',
      'Plastic takes on colour and scent, which does no harm.',
      'Keep it for soap alone, and wipe it with paper and gloves before it is washed.',
    ],
  },
  'colour-scales': {
    answer: ['Yes: colour goes with the batter.', 'Twice the oils take twice the powder, half takes half.'],
    why: [
      'Only where the whole batch grows; a bigger mould with the same batch takes the same.',
      'Wet it in the same measure: 1 tsp to 1 Tbsp.',
      'Spoons get coarse in small batches: paste of 1 tsp in 1 Tbsp, and count it in quarter teaspoons.',
      'Lye is reckoned anew for the whole recipe.',
    ],
  },
  'how-many-strokes': {
    answer: ['Three to five, then stop; an in-the-pot swirl one or two turns, a hanger one to three passes.'],
    why: [
      'Each further one blends the colours, until it is one: over ten it is mud.',
      'Light to medium trace, so that lines stand.',
      'White or plain batter between colours that make brown together.',
      'Stop while it still looks too coarse: cutting shows finer lines.',
    ],
  },
  'layer-fell': {
    answer: [
      'The one below was too soft: wait until it holds a spoonful on top, then pour low over a spatula.',
      'It is good soap.',
    ],
    why: [
      'What ran together stays a swirl.',
      spaced`
        Next time medium trace, 5 to 20 minutes between layers, the second at the same thickness or
        thinner, poured from a spoon’s height onto a spatula.
      `,
    ],
  },
  'recipe-in-cups': {
    answer: [
      'By weight only: cups are too rough for lye.',
      'Weigh each oil, and tell me the grams and the superfat.',
    ],
    why: [
      'A cup of oil is some 205 to 220 g, of solid butter anything: an error of a tenth is twice the usual superfat of 5 %.',
      'Write it as “500 g olive, 200 g coconut, superfat 5%”, and I weigh the lye.',
      'An old recipe is reckoned anew, its lye too.',
    ],
  },
  'buy-lye': {
    answer: [
      'Pure sodium hydroxide with its purity on the label, 98 % or more and nothing else.',
      'Shops and prices I do not know.',
    ],
    why: [
      'Soap and chemical suppliers have it, some hardware shops too.',
      'Not: drain cleaner with other things in it, gel, perfume, bleach, metal chips, or a tub without a label.',
      'Dry, whole, a lid that children do not open.',
      'Ask your group who is near; local rules may want your name.',
    ],
  },
  pomace: {
    answer: [
      'Hardly: pomace olive takes nearly the same lye, but traces faster and is greener.',
      'Say it in the recipe.',
    ],
    why: [
      'For swirls blend less and pour sooner.',
      'Its green shows through pale colours: some white, or choose warm ones.',
      'Name it as “olive pomace” and its own figure is taken.',
    ],
  },
  scrub: {
    answer: [
      'As fine as flour, through a tea strainer; what stays behind scratches. 1 Tbsp for 500 g of oils, half for the face.',
    ],
    why: [
      'Pumice, oats, poppy seeds, dried and ground plants: stirred in at medium trace, or they sink.',
      'Ground coffee, shells and sand are for hands and feet.',
      'Not on broken or sore skin.',
      'Grinding dusts: a mask.',
      'Plants go brown in lye, whatever they scrub.',
    ],
  },
  'repeat-colour': {
    answer: [
      'Weigh the powder instead of spooning it, and keep oils, temperatures, trace, gel and mould the same.',
    ],
    why: [
      'Most differences come from gel, from another lot of the jar, or from yellower oil.',
      'Write down grams, lot and how warm; judge both at the same age, four weeks.',
      '/batch poured keeps it.',
      'A new jar: one test bar beside the old one.',
    ],
  },
  'are-natural': {
    answer: [
      'Mineral, but mostly made: oxides, ultramarines and the colour on micas come from a works, since dug ones hold lead.',
    ],
    why: [
      'Same substance as in nature, only clean.',
      'Mica flakes are mined or made.',
      'Clays, charcoal and plants are what many call natural; clays and indigo stay, most plants fade.',
      '/colourant check says what the law calls each.',
    ],
  },
  embeds: {
    answer: [
      'Made days before, firm but not cured dry, same recipe; set into batter of medium trace, which carries them.',
    ],
    why: [
      'Light trace lets them sink, thick leaves air under them.',
      'Cut or roll them at one to three days, wet their sides a little so that they bond.',
      'Lay long ones where the cut will cross them: a yellow rod in the middle is a sun in every bar.',
      'Gloves, young soap.',
    ],
  },
};
