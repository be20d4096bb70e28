import { spaced } from '../../../engine/over-lines.ts';

/** What is said to questions of safety about lye that name no recipe. */
export const lyeSafety = {
  disposal: {
    answer: ['Keep leftover lye closed and labelled for the next batch, or hand it in as caustic waste.'],
    why: [
      'Dry lye: back into its own dry, closed tub.',
      'Lye water: a labelled plastic bottle (HDPE or PP) that never held food or drink, locked away.',
      'What may go down a drain, and how far diluted, is a matter of your local rules: ask your waste service.',
      'Never into an aluminium sink or pipe, never together with acid, bleach or drain opener, never into a bin as it is.',
      'Goggles and gloves.',
    ],
  },
  'drink-bottle': {
    answer: ['Never: no lye in any bottle, jar or cup that food or drink could come in.'],
    why: [
      'People drink from them: that is how lye is swallowed.',
      'Thin drink bottles also soften in hot lye water, and glass can burst.',
      spaced`
        Use a jug of polypropylene (PP, mark 5) or a bottle of HDPE (mark 2) that is bought for it,
        labelled “LYE: CAUSTIC”, filled only once it is cold, locked away from children and animals.
      `,
    ],
  },
  storing: {
    answer: ['Dry, airtight, in its own labelled tub, locked away from children and animals.'],
    why: [
      'Lye draws water out of the air, so close it at once.',
      spaced`
        Plastic tub (HDPE or PP), never aluminium, tin or glass stoppers; apart from acids, bleach and
        food; low down, so that nothing falls on you.
      `,
      spaced`
        Lye water keeps for months in a closed, labelled HDPE bottle that never held a drink, filled
        when cold; by its own weight of water it may set solid when it gets cool.
      `,
    ],
  },
  clumped: {
    answer: ['Better not: lye that has clumped has drawn water, and nobody knows its strength any more.'],
    why: [
      'Weighed by the gram it holds less lye than the recipe counts on, and its crust is carbonate: the soap would be soft and greasy.',
      'Use fresh lye for soap.',
      'Do not break lumps up with a tool: splinters fly into eyes.',
      'Hand it in as caustic waste by your local rules.',
    ],
  },
  children: {
    answer: ['No: children and pets stay out of the room while there is lye, lye water or raw batter.'],
    why: [
      'A drop can cost an eye, and a child moves faster than you.',
      spaced`
        They stay out from the weighing of the lye until everything that touched batter is washed, and
        fresh soap stands out of their reach for the first two days.
      `,
      spaced`
        What they can do: choose colours and scents, stamp and wrap cured bars, or colour a
        melt-and-pour base with you, where no lye is handled.
      `,
    ],
  },
  'more-lye': {
    answer: ['No: never add lye to made soap, or to batter, by guess.'],
    why: [
      'Undissolved or unmixed lye stays in places and burns.',
      'Oily soap is more often badly mixed, too cool or still on its way than short of lye.',
      'Work out what went in: tell me “I put 100 g lye in 700 g olive”.',
      'If lye is truly missing, the soap is rebatched with the weighed difference, dissolved in water, and tested; else discard it.',
    ],
  },
  'zap-use': {
    answer: ['No: a zap is free lye.', 'Do not use it, give it away or sell it.'],
    why: [
      'Gloves on.',
      'Bars under about a week may still zap and lose it: test again at four weeks.',
      'What still zaps then has too much lye, or pockets of it: check the weights (tell me “I put 150 g lye in 1000 g olive”).',
      'It may be rebatched with the missing oils if every weight is certain; otherwise discard it as caustic waste by your local rules.',
    ],
  },
  'zap-test': {
    answer: [
      'No: the tongue is no instrument. pH paper in the lather of a cured bar, and the weights reckoned again.',
    ],
    why: [
      'Free lye burns a mouth at once, and a tongue finds only the spot that it touches.',
      'Wet a cured bar, rub up a lather, pH paper or phenolphthalein on it: 11 and over is suspect; a good figure alone proves nothing.',
      'First the numbers: tell me “I put 100 g lye in 700 g olive”.',
      'Who licked it and feels a sting like a small battery: rinse the mouth with water at once, spit out, do not use the bar.',
    ],
  },
  'soap-ph': {
    answer: ['Sound bar soap is about pH 9 to 10.5; 11 and over is suspect.'],
    why: [
      'Soap is alkaline by nature and cannot be made neutral.',
      'Wet a cured bar, rub up a lather and dip the paper in it; strips read low on soap, so a good figure alone proves nothing.',
      'Trust weighed lye, a clear zap and four weeks of cure first.',
    ],
  },
  'spooned-lye': {
    answer: ['Lye is never measured by spoons or cups: weigh it to the gram.'],
    why: [
      'A spoon of flakes, beads and crystals weighs differently, and a few grams too much make soap that burns.',
      'You need a scale that shows 1 g (0.1 g for under 500 g of oils).',
      'Tell me the oils and I say the grams, such as “how much lye for 500 g olive oil”.',
    ],
  },
  'no-lye': {
    answer: ['No: soap is made of fat and lye; without lye it is no soap.'],
    why: [
      'In a cured, well weighed bar no lye is left: it has all become soap and glycerin.',
      'Whoever does not want to handle lye uses a melt-and-pour base, where somebody else did, or rebatches grated soap.',
    ],
  },
  'lye-gone': {
    answer: ['If it was weighed right, mixed well and cured, no lye is left in the finished bar.'],
    why: [
      'Lye and fat turn each other into soap and glycerin; a superfat of 5 % leaves fat over, not lye.',
      'Most of it happens in two days; cure four weeks.',
      'A zap, white crystals or clear drops that burn say no: then do not use it.',
    ],
  },
  'when-safe': {
    answer: ['Gloves for the first 48 hours; use it after four weeks of cure.'],
    why: [
      'Batter and fresh soap are caustic.',
      'By 24 to 48 hours most of the lye is used up; then unmould and cut, still with gloves.',
      'After four to six weeks, with no zap and no white crystals, it may be used.',
      'Lye-heavy soap is not made safe by waiting.',
    ],
  },
  'koh-for-naoh': {
    answer: [
      'Not the same amount: pure KOH takes 1.40 times the weight of NaOH, the usual 90 % KOH 1.56 times.',
    ],
    why: [
      'And it makes another soap: KOH gives a soft paste, NaOH hard bars.',
      'The same weight of NaOH where KOH was meant is far too much lye and burns.',
      'Work it out anew: /plan lye:“KOH 90%”.',
    ],
  },
  'cure-lye-heavy': {
    answer: ['No: curing dries soap, it does not take away lye that is too much.'],
    why: [
      'A young bar may zap for a week or so and lose it; a bar that zaps after four weeks keeps its lye.',
      'Do not use it: rebatch it with the missing oils if every weight is certain, or discard it by your local rules.',
    ],
  },
  'rebatch-lye-heavy': {
    answer: ['Only if every weight is certain: then with exactly the oils that are missing.'],
    why: [
      'Tell me what went in (“I put 150 g lye in 1000 g olive”), and I say how far off it is.',
      'Gloves and goggles: it is caustic.',
      spaced`
        Grate it, melt it slowly with a little water in a covered stainless pot or slow cooker, stir in
        the missing oils, cook until it is even, mould it, cure four weeks, pH paper in its lather, no
        tongue.
      `,
      'If the weights are not certain, discard it as caustic waste.',
    ],
  },
  baby: {
    answer: ['Cured four to six weeks and without a zap for adults; for a baby ask a doctor first.'],
    why: [
      'Skin of babies is thin and soap is alkaline; water is enough in the first weeks.',
      'Scent, essential oils and colour are best left out.',
      spaced`
        Whoever sells or gives soap meant for children under three needs a safety assessment of its own
        in many countries (EU: Regulation 1223/2009).
      `,
    ],
  },
  'lye-on-skin': {
    answer: [
      'It burns, deep, and often hurts only later.',
      'Running water at once, for at least 15 minutes, if it ever happens.',
    ],
    why: [
      'Take off what is soaked, rinse with much cool water, never vinegar or lemon on skin: that heats and costs time.',
      'Then a doctor for anything larger than a coin, on a face, hand or joint, or that hurts or whitens.',
      'So: gloves, long sleeves, tight goggles, water within reach before you start.',
      'If it has happened now, write “lye on my skin”.',
    ],
  },
  'lye-fumes': {
    answer: ['Yes: keep your face out of the steam, and mix in a strong draught or outside.'],
    why: [
      'While lye dissolves, the steam carries fine caustic drops that hurt nose, throat and eyes; dust from the tub does the same.',
      'Cold water, lye in slowly, arm’s length, window open, nobody else in the room; asthma: let somebody else mix it.',
      'Whoever coughs, wheezes or has a sore throat goes into fresh air and calls a doctor or poison centre.',
    ],
  },
  vessel: {
    answer: ['Lye goes in polypropylene (PP, recycling mark 5) or stainless steel, and in nothing else.'],
    why: [
      'It must stand hot, strong lye: PP stands 100 °C (212 °F), thin or brittle plastics soften and crack.',
      spaced`
        Never aluminium, tin, zinc, copper, brass, cast iron, non-stick coatings or glass,
        heat-resistant glass too: lye etches it until one day it bursts.
      `,
      'A spoon or spatula of silicone or stainless steel; wood frays and keeps lye.',
      'Nothing that closes tight.',
      'Use it for lye alone, never again for food.',
    ],
  },
};
