import type { Carrier } from '../../../engine/colourants/colourant.ts';
import type { CarrierReason } from '../../../engine/dispersion/advice.ts';
import type { RefusalSentences } from '../../sentence.ts';

const carriers: Record<Carrier, string> = { water: 'water', oil: 'light oil', glycerin: 'glycerin' };

const listed = new Intl.ListFormat('en', { type: 'disjunction' });

const why: Record<CarrierReason, string> = {
  asked: 'the carrier you asked for, and it works',
  'dish-test-water': 'your lot swirled into water in its dish test',
  'dish-test-oil': 'your lot wanted oil in its dish test',
  'dish-test-neither': 'your lot took to neither in its dish test, and glycerin wets everything',
  'usual-for-kind': 'the usual carrier for this kind of colour',
  'untested-lot': 'the usual first choice, but lots differ: a dish test decides',
  'never-in-water': 'it never disperses in water',
  'already-wetted': 'it comes already wetted',
};

export const dispersion = {
  carriers,
  why,
  /** The first step, in the cup. */
  wet: {
    stir: (v: { carrier: string; amount: string }) =>
      `Put the powder under ${v.amount} of ${v.carrier} and stir until no dry speck is left.`,
    soak: (v: { carrier: string; amount: string }) =>
      `Put the powder under ${v.amount} of ${v.carrier}, stir, and let it soak while you weigh the rest; stir each time you pass. Time, not more liquid.`,
    froth: (v: { carrier: string; amount: string }) =>
      `Put the powder under ${v.amount} of ${v.carrier}, stir by hand first, then froth in the cup; head of the frother under before you switch on.`,
  },
  /** Instead of the first step for a premix. */
  stirPremix: 'Stir it up from the bottom before you measure.',
  /** The second step, in the batter. */
  blend: {
    whisk: 'Whisk it into the batter by hand until the colour is even.',
    'stick-blend': 'Stick-blend it into the batter in short bursts, or pockets of colour stay.',
  },
  /** How to dip oil, where an oil carrier should not add oil to the batch. */
  dipOil:
    'Oil dipped from your batch before the lye goes in keeps the batch as it is; this portion still gets richer.',
  holdBackWater:
    'Hold the same weight of water back from your lye water, but never go below as much water as lye, by weight.',
};

const noGo: Record<Carrier, string> = {
  water: 'it sits on the water and never wets',
  oil: 'it clumps in oil and leaves specks',
  glycerin: 'glycerin does not wet it evenly',
};

export const dispersionRefusals: Pick<RefusalSentences, 'carrier-cannot-work'> = {
  'carrier-cannot-work': ({ colourant, asked, allowed }) =>
    `${colourant.en} does not disperse in ${carriers[asked]}: ${noGo[asked]}. Use ${listed.format(allowed.map(one => carriers[one]))}.`,
};
