import { spaced } from '../../../engine/over-lines.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees, degreesBetween } from '../../temperatures.ts';

const { millilitres, percent: pc, whole } = numbersIn('en');

/** The portion and the colour, or the colour alone where it is called after it. */
export const where = (v: { portion: string | undefined; name: string }, portion: string) =>
  v.portion === undefined || v.portion.toLowerCase() === v.name.toLowerCase()
    ? v.name
    : `${portion}, ${v.name}`;

/** The number behind a remedy, of this batch. */
export const flawNumbers = {
  rate: (v: {
    portion: string | undefined;
    name: string;
    had: string;
    full: string;
    most: string;
    /** Bars taught how strong the jar is. */
    learnt: boolean;
  }) =>
    `${where(v, `“${v.portion}”`)}: you had ${v.had} a cup. Full is ${v.full}${v.learnt ? ' by your own bars' : ''}, the most ${v.most}.`,
  carrier: (v: { portion: string; millilitres: number; superfat: number }) =>
    `“${v.portion}”: ${millilitres(v.millilitres)} of liquid with its colours, ${whole(v.superfat)} % superfat there.`,
  water: (v: { grams: number; strength: number; atThirdGrams: number }) =>
    `Your plan: ${whole(v.grams)} g of water, ${whole(v.strength)} % lye. ${whole(v.atThirdGrams)} g makes 33 %.`,
  superfat: (v: { percent: number }) => `Your plan has ${whole(v.percent)} % superfat.`,
  heat: (v: {
    peakC: number;
    lowC: number;
    highC: number;
    gelChance: number;
    overheatChance: number;
  }) => spaced`
    Your plan, estimated: core about ${degrees(v.peakC)}, between
    ${degreesBetween(v.lowC, v.highC, 'and')}; gel ${pc(v.gelChance)}, overheating ${pc(v.overheatChance)}.
  `,
};
