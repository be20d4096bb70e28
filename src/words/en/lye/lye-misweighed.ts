import { spaced } from '../../../engine/over-lines.ts';

/** What is said where lye, water or oils were weighed wrong, or nobody knows what went in. */
export const lyeMisweighed = {
  'lye-guessed': {
    answer: ['No guess: lye water of unknown strength goes into no soap.'],
    why: [
      spaced`
        If jug and water were weighed before: weigh jug and all now; less jug, less water, the rest is
        lye, as long as it did not boil or stand open.
      `,
      'Half poured: weigh what is left in the jug, and the empty jug; the share that is missing went in.',
      'Neither known: goggles and gloves, let it cool, a labelled HDPE bottle, caustic waste by your local rules.',
      'Start again with a fresh battery; the jug on the scale first, tare, then the lye.',
    ],
  },
  'fluid-ounces': {
    answer: [
      'Lye is ounces of weight, 28.35 g each, on a scale.',
      'Never fluid ounces, never a measuring cup.',
    ],
    why: [
      'A fluid ounce is a space: filled with beads it holds more lye than an ounce weighs, filled with flakes less.',
      'Measured that way already: the amount is unknown.',
      'Do not use it, gloves and goggles; weigh what is left in the tub against what it held, or start again by weight in grams.',
    ],
  },
  'too-much-in': {
    answer: [
      'Do not use it and do not touch it bare: too much lye stays in the bar and burns.',
      'Work out how much.',
    ],
    why: [
      'Goggles and gloves.',
      'Ask me with what really went in, such as “I put 180 g lye in 1000 g olive”: I say the superfat.',
      spaced`
        Below 0 %: only if every weight is certain, the missing oils, weighed and warm, are stirred into
        the batter now, or a set loaf is rebatched with them.
      `,
      'Not certain: a closed, labelled plastic tub, caustic waste by your local rules.',
      'Waiting, pH paper or a taste do not make it safe.',
    ],
  },
  'too-little-in': {
    answer: [
      'Too little lye does not burn, it leaves oil over: soft, greasy, soon rancid.',
      'Add none by guess.',
    ],
    why: [
      spaced`
        Ask me with what went in, such as “I put 100 g lye in 1000 g olive”: up to 10 % superfat it is a
        mild bar, 20 % only in all coconut.
      `,
      spaced`
        Far short: weigh out the lye that is missing, dissolve it in at least its own weight of cold
        water, let it cool, and blend it in while the batter is still liquid, goggles and gloves on.
      `,
      'Never dry, never tomorrow.',
      'Until it is clear which weight is right, treat it as caustic.',
    ],
  },
  'extra-lye': {
    answer: ['No: not a gram more.', 'Lye that the oils do not take stays in the bar and burns.'],
    why: [
      'It cleans no better and sets no harder.',
      'In 500 g olive 5 g more than the 5 % line is down to about −2 %.',
      'Round down, never up: 64.4 g is 64 g. 5 % superfat is the usual reserve; 0 % is the floor, for laundry alone, never below.',
      'For what you weighed ask “I put 70 g lye in 500 g olive”.',
    ],
  },
  'rest-later': {
    answer: ['No: all the lye goes in at once.', 'The rest tomorrow does not mix in any more.'],
    why: [
      'By then the batter is stiff or has separated, and new lye sits in pockets that burn.',
      'Not begun: wait until you have all of it, or make less: “how much lye for 300 g olive” for what your lye is enough for.',
      spaced`
        Begun already: note what went in and ask “I put 40 g lye in 500 g olive”; it is kept labelled,
        gloves on, out of reach, and rebatched with the weighed, dissolved rest, or discarded by your
        local rules.
      `,
    ],
  },
  'second-water': {
    answer: ['It has lye enough and not too much: it is only strong, thick and hot.', 'Add no water now.'],
    why: [
      'Water carries lye and takes no part in the soap.',
      'With 1:1 lye water the batter sets fast, gets hot, may crack or crumble: goggles and gloves, do not cover it, cut it early.',
      'It counts only if the lye was clear, all dissolved and weighed right.',
      'White crystals, a wet sting: do not use it.',
      'Four weeks of cure as ever.',
    ],
  },
  'oil-spilled': {
    answer: ['Do not pour the lye in: less oil takes less lye, and the rest burns.'],
    why: [
      'Goggles on, step round the oil, it is slippery.',
      'Weigh the oil that is left, or weigh out anew what was lost and put it back.',
      'Else weigh the lye anew: ask “how much lye for 600 g olive”.',
      'Lye water made already: pour in only the share by weight, such as 600/800 of it, and keep the rest labelled.',
      'Poured in already: gloves, add the lost oil, weighed, now while it is liquid.',
    ],
  },
  'two-figures': {
    answer: [
      'Two figures a few percent apart may both be right, for another superfat: take the lower.',
      'Further apart, or only one told: mix neither yet.',
    ],
    why: [
      '500 g olive take about 67.8 g NaOH at 0 % and 64.4 g at 5 %.',
      'Books also count other oil values (a range of some 3 %) and another purity.',
      'Compare superfat, purity and NaOH or KOH; the lower figure leaves more oil over and never burns.',
      'A difference of more than 10 % is another oil, KOH, or a misprint: do not mix it until you know.',
      'I can be wrong too: check me with a second source.',
    ],
  },
  'water-unwritten': {
    answer: [
      'Only not written down: twice the weight of the lye, 140 g for 70 g.',
      'Not put in at all: add none now.',
    ],
    why: [
      'Water may be 1.5 to 2.5 times the lye; ask “how much water for 70 g lye”.',
      'If dry lye is in the oils already: no water on it, it heats and spits; goggles, gloves, leave it, and ask “I forgot the water”.',
    ],
  },
  'purity-unknown': {
    answer: [
      'No soap of lye whose label names neither sodium hydroxide nor its purity: ask the seller, or buy another.',
    ],
    why: [
      'A range such as 95–97 %: count with the higher figure, then it is never too much: /plan lye:“NaOH 97%”.',
      'Pearls, flakes and beads differ in form only.',
      'No figure at all, but pure sodium hydroxide by name: count it as 100 %, the bar is a little softer.',
      'Drain openers, mixtures, rusty or unlabelled tins: never.',
    ],
  },
};
