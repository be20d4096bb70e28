import type { HueTurn } from '../../../engine/colour/jars/compare-jars.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const turns: Record<HueTurn, string> = {
  redder: 'redder',
  greener: 'greener',
  yellower: 'yellower',
  bluer: 'bluer',
  lighter: 'lighter',
  darker: 'darker',
  livelier: 'livelier',
  duller: 'duller',
};

const { one, plain } = numbersIn('en');

export const comparing = {
  sameDepth: 'For the same depth of colour, in a cup of batter',
  row: (v: { name: string; spoons: string; grams: number; hex: string }) =>
    `${v.name}: ${v.spoons}, about ${plain(v.grams)} g, ${v.hex}`,
  turned: (v: { one: string; other: string; turns: readonly HueTurn[]; deltaE: number }) =>
    `${v.other} is then ${v.turns.map(turn => turns[turn]).join(' and ')} than ${v.one}: ${one(v.deltaE)} apart (2 just shows).`,
  sameHue: (v: { deltaE: number }) => `Then they look alike: ${one(v.deltaE)} apart (2 just shows).`,
  outOfReach: (v: { other: string }) =>
    `That is more of ${v.other} than a batter takes: it does not get as deep.`,
  cost: (v: { cheaper: string; dearer: string; a: string; b: string }) =>
    `${v.cheaper} is the cheaper: ${v.a} a cup, ${v.dearer} ${v.b}.`,
  twoCurrencies: (v: { one: string; other: string; a: string; b: string }) =>
    `A cup costs ${v.a} with ${v.one}, ${v.b} with ${v.other}; I turn no currency into another.`,
  priceMissing: (v: { name: string }) =>
    `Say what ${v.name} cost with /shelf describe, and I compare that too.`,
  untested: (v: { plusMinus: number }) =>
    `By kind, give or take ${one(v.plusMinus)} in colour: test bars tell your own jars apart, see /calibrate plan.`,
};

export const comparingRefusals: Pick<RefusalSentences, 'compare-with-itself' | 'compare-white-with-colour'> =
  {
    'compare-with-itself': () => 'That is the same jar twice. Name two, such as one: “Dusk”, other: “Sea”.',
    'compare-white-with-colour': () =>
      'A white and a colour do different work: compare two whites, or two colours.',
  };
