import { spaced } from '../../../engine/over-lines.ts';

/** What is said to general questions of lye, its water and how it is reckoned, where no recipe is at hand. */
export const lyeGeneral = {
  'liquid-lye': {
    answer: [
      'The lye stays the same: water, milk, tea, coffee, beer and sap take none of it.',
      'Only acid does.',
    ],
    why: [
      'Sugar browns and heats, it takes no lye that counts.',
      spaced`
        The fat in milk is a little more superfat: 300 g whole milk brings about 11 g fat, one point per
        kg of oils; cream is weighed as fat.
      `,
      'Vinegar, lemon and citric acid do take lye, and are reckoned: /plan liquid:“goat milk” or liquid:“vinegar” does all of it.',
      'Always ice-cold or frozen, lye a little at a time, goggles and gloves.',
    ],
  },
  'liquid-amount': {
    answer: [
      'It takes the place of the water gram for gram: as much less water, never less liquid than lye.',
    ],
    why: [
      'All of it or part.',
      'For the safest way dissolve the lye in its own weight of cold water, cool it, and stir the rest as milk, beer or tea into the oils.',
      'Powder (milk, yoghurt): about 10 g for each 100 g of liquid, stirred into the oils, no water taken off.',
      'Beer and wine boiled flat first.',
      '/plan liquid:“half beer” weighs it.',
    ],
  },
  'koh-and-naoh': {
    answer: ['Yes: a little KOH makes a bar creamier, 5 to 10 %; shaving soap takes about 60 % KOH.'],
    why: [
      'Shares of what the oils take, not of grams, since KOH weighs 1.40 times as much (1.56 at 90 %).',
      'More than about 10 % KOH and a bar turns soft.',
      'Never swap one for the other by weight.',
      'Both dissolve in the same cold water, one after the other.',
      '/plan lye:“both” works both weights out, kohShare in it.',
    ],
  },
  'sap-to-naoh': {
    answer: ['Yes: × 0.713, which is 40.00 / 56.11.', 'A value in mg KOH per g also divided by 1000.'],
    why: [
      'Olive of 190 mg KOH/g takes 0.190 g KOH or 0.135 g NaOH a gram, at 0 % superfat; × 0.95 for 5 %.',
      'Back from NaOH to KOH × 1.403, and / 0.90 for KOH of 90 %.',
      'Values are ranges (olive 184 to 196, Codex CXS 33), so keep the superfat.',
    ],
  },
  'acid-lye': {
    answer: [
      'Yes: a gram of citric acid takes 0.62 g NaOH (0.57 g the monohydrate), 100 g vinegar of 5 % 3.3 g.',
    ],
    why: [
      'By molar masses: 3 × 40.0 / 192.1 and 40.0 / 60.05.',
      'Ask with the weight (“how much lye does 10 g citric acid take”), or /plan additives:“citric acid 10 g” adds it.',
      'The acid goes into the cold water before the lye, never onto dry lye or strong lye water, never with ultramarine.',
      'Afterwards acid mends no bar.',
    ],
  },
  'lye-roughly': {
    answer: [
      'Most recipes lie at 12 to 14 g NaOH per 100 g of oils; all coconut takes 17.',
      'Over 19 g no oil takes it.',
    ],
    why: [
      spaced`
        That tells a mad recipe, it makes none: each oil takes its own (olive about 12.9, lard 13.2,
        coconut 17.3 g at 5 % superfat; wax and jojoba half).
      `,
      'KOH is 1.4 to 1.56 times as much.',
      'Name your oils and grams, such as “how much lye for 500 g olive and 200 g coconut”, and I weigh it.',
    ],
  },
  'animal-fat': {
    answer: [
      'Yes: clean rendered fat of bear, goose, deer or sheep takes about as much lye as lard or tallow.',
    ],
    why: [
      'Lard 192 to 203, tallow 190 to 202 mg KOH/g (Codex CXS 211): about 13 g NaOH per 100 g at 5 %.',
      spaced`
        Soft fats (bear, goose, duck, horse) like lard, hard ones (deer, sheep, goat) like tallow; from
        memory, so keep 8 % superfat: “how much lye for 500 g lard, superfat 8”.
      `,
      'Render it with water, skim, weigh it dry: salt, meat and water in it upset the lye.',
    ],
  },
  'caustic-for-soda': {
    answer: [
      'No, quite another thing: soda crystals are sodium carbonate, for washing.',
      'Never caustic soda in their place.',
    ],
    why: [
      spaced`
        A recipe with soda crystals is no recipe for soap but one that scours or softens; caustic soda
        burns skin, eyes and cloth, and boils up in hot water.
      `,
      'For soap it needs sodium hydroxide and weighed oils.',
      '“Soda” alone on an old sheet: ask which was meant before you weigh anything.',
    ],
  },
  'lather-without-coconut': {
    answer: ['Without coconut and palm kernel: castor 5 to 10 %, a little sugar, babassu if you have it.'],
    why: [
      spaced`
        Lard, tallow and sunflower make cream, not bubbles. 10 to 20 g sugar per kg of oils, dissolved
        in some of the water before the lye; beer or milk for water do the same.
      `,
      'More castor than 10 to 15 % gets sticky.',
      'The lye is reckoned anew with each: “how much lye for 600 g lard, 300 g sunflower, 100 g castor”.',
    ],
  },
  'purity-ignored': {
    answer: ['Since it is on the safe side: lye of 98 % for 100 % only leaves about 2 points more superfat.'],
    why: [
      'It never makes a bar caustic, so most leave it.',
      'Below about 96 %, for KOH always (85 to 95 %), count it: /plan lye:“NaOH 97%”.',
      'Old or damp lye is weaker than its label and of no known strength.',
      'Pure by name and figure it has to be.',
    ],
  },
  'scale-off': {
    answer: ['No harm: if every weight came from that scale, all are off alike and the recipe stands.'],
    why: [
      'Shares count, not grams: 5 % more of oils, lye and water is the same soap, only more of it.',
      spaced`
        It does matter where lye or oils came from another scale, a packet or a measuring jug, or where
        it is off by grams and not by percent: then work out what went in and tell me.
      `,
      'Check it with a coin or a litre of water (1000 g).',
    ],
  },
  'hot-lye': {
    answer: [
      'No: let it cool to 35 to 45 °C (95 to 113 °F), the oils too.',
      'Hot lye into oils spits and races.',
    ],
    why: [
      'Fresh lye water reaches 80 to 95 °C (176 to 203 °F).',
      spaced`
        Stand the open jug in a basin of cold water, nothing into the jug, goggles and gloves on, and
        wait; and not more than about 10 °C (18 °F) apart.
      `,
      'Poured already: face away, stir slowly, do not cover or wrap it.',
    ],
  },
  'lye-for-food': {
    answer: ['For food only food grade lye (E 524), by a tested recipe, and with tools that soap never met.'],
    why: [
      'Technical lye may hold metals.',
      spaced`
        Food grade serves for soap too, if it says 98 % or more, but the tub for pretzels, olives or
        hominy stays apart, labelled, and nothing that held soap lye, colour or scent goes back to the
        kitchen.
      `,
      'What went wrong with lye in food nobody eats.',
    ],
  },
  'bars-per-kilo': {
    answer: ['About ten: 1 kg of oils makes some 1.4 kg of batter, ten to eleven bars of 130 g.'],
    why: [
      '1000 g oils, about 140 g lye, about 280 g water; a tenth and more dries away in the cure.',
      '“10 bars of 4 oz” or your mould in /plan size tells the oils for it.',
    ],
  },
  'lye-tub': {
    answer: [
      'Not for food, toys or anything children handle.',
      'Rinsed and marked, only for lye or tools of soap.',
    ],
    why: [
      'Lye stays under the rim and in the lid.',
      'Goggles and gloves: rinse it many times with much cold water, dry it, take the old label off.',
      'It never holds food or drink, whatever it is made of.',
    ],
  },
  'shop-fat': {
    answer: [
      'Yes, if the label names one fat, with no water or salt in it: lard, palm, coconut, sunflower, olive.',
    ],
    why: [
      'Margarine and spreads hold water and salt; “vegetable shortening” is a mixture: name what the label names, with percents.',
      'Refined and pale takes colour best.',
      'Then ask “how much lye for 500 g lard”.',
    ],
  },
  'more-oil': {
    answer: ['It does not burn: more oil is more superfat, 5 % more of the oils are about 5 points.'],
    why: [
      '50 g more in 1000 g of oils: from 5 to about 9.5 %.',
      'Up to 10 it is a mild bar, beyond softer and sooner rancid.',
      spaced`
        Add no lye by guess; in the pot the lye for it may be worked out: “how much lye for 50 g olive,
        superfat 5”, dissolved in its weight of cold water and blended in while it is liquid.
      `,
    ],
  },
};
