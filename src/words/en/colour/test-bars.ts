import { spaced } from '../../../engine/over-lines.ts';
import { quoted } from '../../../engine/text/lines/option-line.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { one } = numbersIn('en');

export const testBars = {
  headline: (v: { bars: number; portion: string; jars: number; after: number; before: number }) => spaced`
    ${v.bars} test ${v.bars === 1 ? 'bar' : 'bars'} of ${v.portion} for ${v.jars}
    ${v.jars === 1 ? 'jar' : 'jars'}: give or take ${one(v.after)} after, ${one(v.before)} now
  `,
  unreached: (v: { bars: number; portion: string; within: number; after: number }) =>
    `${v.bars} test bars of ${v.portion} do not get to ${one(v.within)}: give or take ${one(v.after)} is as near as they come`,
  none: (v: { within: number }) =>
    `No test bar needed: every jar is known to give or take ${one(v.within)} already`,
  usualPortion: '1/2 cup',
  pour: 'Pour these, each with its label',
  bar: (v: { label: string; doses: string; portion: string; word: string; hex: string }) =>
    `${v.label}: ${v.doses} in ${v.portion}; expect ${v.word}, ${v.hex}`,
  dose: (v: { spoons: string; name: string }) => `${v.spoons} ${v.name}`,
  plain: (v: { label: string }) =>
    `${v.label}: no colour, unless you keep a plain bar of this soap. It tells your base apart.`,
  jars: 'What they tell',
  jar: (v: { name: string; before: number; after: number }) =>
    `${v.name}: give or take ${one(v.after)} at full colour or a quarter of it, ${one(v.before)} now`,
  singly: (v: { bars: number }) => `With one jar a bar it takes ${v.bars}.`,
  mixed: (v: { bars: number }) =>
    `Two jars in one bar would do it in ${v.bars}: ask with mixes. One bad bar then harms two jars.`,
  handIn: (v: { example: string }) =>
    `Cured, hand each in: /calibrate bars ${v.example}. Wait four weeks or more: young bars are darker (common practice).`,
  handInMixed: (v: { example: string }) =>
    `A bar of two jars names them: bar-1:${quoted(`${v.example} #……`)}.`,
  steps:
    'One batch, one pour, one place to cure: then only the colour differs. Weigh the colourant if you can; level spoons scatter by a tenth.',
  leftOut: (v: { names: string }) => `Not in this plan: ${v.names}. Name jars to choose.`,
  label: {
    perCup: (v: { dose: string; name: string }) => `${v.name}: ${v.dose}`,
    date: 'Poured',
  },
  sheet: { title: 'Labels for your test bars', plain: 'No colour' },
  alt: (v: { list: string }) => `Labels to cut out: ${v.list}.`,
};

export const testBarsRefusals: Pick<
  RefusalSentences,
  'plan-bars-without-jars' | 'plan-bars-too-many' | 'plan-bars-portion'
> = {
  'plan-bars-without-jars': () =>
    'There is no jar to plan for: put one on your shelf with /shelf add and say what it is.',
  'plan-bars-too-many': ({ most }) => `At most ${most} jars in one plan: name fewer, the rest in a second.`,
  'plan-bars-portion': ({ text }) =>
    `“${text}” makes no test bar: pour 2 Tbsp to 4 cups of batter into each, such as “1/2 cup”.`,
};
