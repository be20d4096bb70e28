import { spaced } from '../../../engine/over-lines.ts';

/** What is said to general questions of soap that is made: its cure, its tests, how it is sold. */
export const lyeFinished = {
  'free-alkali-test': {
    answer: ['Yes: phenolphthalein on a fresh cut tells yes or no; titrated in alcohol it gives a figure.'],
    why: [
      'A drop on the cut: pink means free lye there, colourless is no proof for the rest.',
      spaced`
        For a figure as in ISO 456: 10 g soap in neutral hot ethanol, then 0.1 mol/l hydrochloric acid
        until the pink is gone; each ml is 4 mg NaOH, 0.04 %.
      `,
      'Away from flames, ethanol burns.',
      'Up to about 0.1 % is common for toilet soap.',
      'Of oil nobody knows it replaces no weights.',
    ],
  },
  'ph-enough': {
    answer: [
      'No: a good figure alone proves nothing. 11 and over says do not use it; below, it needs the rest too.',
    ],
    why: [
      'Strips read low on soap, and touch one spot.',
      'Sound soap is about 9 to 10.5.',
      spaced`
        What tells: weights that were right (“I put 100 g lye in 700 g olive”), four weeks of cure, no
        crystals or drops in the cut, no sting.
      `,
      'Never the tongue.',
    ],
  },
  'why-cure': {
    answer: [
      'Not for the lye: that is used up within days.',
      'The weeks dry the bar: harder, milder, longer lasting.',
    ],
    why: [
      'A fresh bar holds a quarter of water; it loses a tenth of its weight and more in four to six weeks.',
      'It still goes: gloves for the first 48 hours, used after four weeks and with no sting.',
      'A bar with too much lye is not mended by waiting.',
    ],
  },
  'lye-free-claim': {
    answer: [
      'No: all soap is made with lye.',
      '“No lye left in the bar” is true, where it was weighed right and cured.',
    ],
    why: [
      'On a label it stands by what became of it: sodium olivate and such, or the oils and sodium hydroxide.',
      'Claims have to be true in most countries (EU: Regulation 655/2013).',
      'Detergent bars are made without lye, and are no soap.',
    ],
  },
  selling: {
    answer: ['Mostly yes, by the rules where you sell: ask your authority before the first bar is sold.'],
    why: [
      spaced`
        EU and UK: soap is a cosmetic: a safety assessment for each recipe, notified, a label with
        ingredients (INCI), weight, batch, date and who is responsible (Regulation 1223/2009).
      `,
      'US: plain soap is freer, claims make it a cosmetic or a drug.',
      'Given away at a fair counts as well.',
      'I am no lawyer: /colourant check tells what is held of colours.',
    ],
  },
  'melt-and-pour-lye': {
    answer: ['No lye: a melt-and-pour base is soap already, somebody else handled the lye.'],
    why: [
      'It is melted, coloured, scented and poured.',
      'Never add lye or more oil to it.',
      'I know colour in cold-process soap: my doses are no doses for it.',
    ],
  },
  slimy: {
    answer: [
      'That is olive soap, no lye: it soaks up water and goes slippery.',
      'Longer cure, a dish that drains.',
    ],
    why: [
      'All olive wants three to six months, better a year; let bars dry between uses.',
      'Next time 10 to 20 % coconut or other hard oil, less water, 10 to 15 g salt per kg of oils in the water.',
      'Slime that stings or burns is something else: rinse, do not use it.',
    ],
  },
  'smell-fades': {
    answer: [
      'Mostly: smells of beer, milk, lard or lye fade over four to eight weeks of cure in moving air.',
    ],
    why: [
      'Raw soap itself smells of little.',
      'Sour, paint-like or rancid and growing, with orange spots: the oil goes off.',
      'Of ammonia for more than days: scorched milk.',
      'Sharp fumes that make you cough: out into fresh air, /first-aid.',
    ],
  },
  'hot-process-cure': {
    answer: ['Yes: the cook uses the lye up, but the bar still has to dry, two to four weeks.'],
    why: [
      'It can be used sooner, it only wears away fast and is harsher at first.',
      'Test it before: pH paper in its lather, never the tongue.',
      'I know cold process; in hot process colours go in after the cook.',
    ],
  },
};
