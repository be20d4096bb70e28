import { spaced } from '../../../engine/over-lines.ts';

/** What is said of superfat, and of how much water goes with the lye. */
export const lyeProportions = {
  'superfat-meaning': {
    answer: [
      'Superfat is the percent of the oils that the lye leaves as oil.',
      'Lye discount is the same, said of the lye.',
    ],
    why: [
      spaced`
        5 % superfat is 5 % less lye than the oils could take: a reserve, since oils and scales differ,
        and it feels milder. 5 is usual for bars, 2 to 3 for liquid soap, 15 to 20 for all coconut, 0 to
        1 for laundry only.
      `,
      'Below 0 there is more lye than the oils take, and the bar burns.',
      'Some sheets set a lye discount on top of a superfat: then add the two.',
      '/plan superfat:5',
    ],
  },
  'superfat-high': {
    answer: ['5 to 8 % superfat is mild enough; from 10 % on a bar gets softer and goes rancid sooner.'],
    why: [
      'More oil makes less lather and orange spots sooner, most with soft oils; only all coconut bears 15 to 20 %.',
      'For sensitive skin do more by oils and care: much olive, little coconut, no scent, six weeks of cure.',
      'No soap treats eczema, psoriasis or another disease: that is for a doctor, and promise nobody anything.',
    ],
  },
  'superfat-at-trace': {
    answer: ['In cold process it makes no odds: the lye takes of all the oils, whenever one goes in.'],
    why: [
      'At trace most of the lye is still free, and fats exchange their acids until it is used up, so no oil can be kept out of it.',
      'What you keep for trace is weighed for the lye like the rest.',
      'In hot process, after the cook, an oil added last does stay over: then it is not counted for the lye.',
    ],
  },
  'water-amount': {
    answer: [
      'Water only dissolves the lye and carries it: 1.5 to 2.5 times the weight of the lye, 2 is usual.',
    ],
    why: [
      'It does not change how much lye the oils take, so recipes differ.',
      'Less (to 1.5): thickens fast, hotter, hard sooner, less ash.',
      'More (2.5 and over): thinner and slower, softer at first, gels sooner, dries and shrinks longer; in the end the bar is the same.',
      'Never less water than lye.',
      '“How much water for 70 g lye” or /plan water:“33% lye”.',
    ],
  },
  'more-water': {
    answer: ['A little more or less water harms nothing: more only makes it slower and softer at first.'],
    why: [
      'Water takes no part in the soap.',
      spaced`
        With much more it thickens late, may sweat or gel, stays soft for days and shrinks as it dries:
        leave it in the mould longer, cure six weeks or more.
      `,
      'Do not boil it off, add no lye.',
      'The one limit: never less water than lye.',
      'It separated or stays liquid after two days: the weights are wrong elsewhere, so tell me all of them.',
    ],
  },
  'strength-and-ratio': {
    answer: ['Nearly: 33 % lye is 2.03 parts water to 1 of lye, and 2:1 is 33.3 %.'],
    why: [
      'Strength is lye / (lye + water); the ratio is water / lye. 25 % is 3:1, 30 % 2.33:1, 40 % 1.5:1, 50 % 1:1, the strongest.',
      '“Water as percent of oils” is another thing again: it changes with the recipe.',
      'Any of them in /plan water:“33% lye”, “2:1” or “30% of oils”.',
    ],
  },
};
