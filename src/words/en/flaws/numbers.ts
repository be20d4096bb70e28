import { fahrenheit } from '../../../engine/quantities/units.ts';

const t = (celsius: number) => `${Math.round(celsius)} °C (${Math.round(fahrenheit(celsius))} °F)`;
const pc = (chance: number) => `${Math.round(100 * chance)} %`;
const whole = (value: number) => `${Math.round(value)}`;

/** The number behind a remedy, of this batch. */
export const flawNumbers = {
  rate: (v: { portion: string | undefined; name: string; had: string; full: string; most: string }) =>
    `${v.portion === undefined ? v.name : `“${v.portion}”, ${v.name}`}: you had ${v.had} a cup. Full is ${v.full}, the most ${v.most}.`,
  carrier: (v: { portion: string; millilitres: number; superfat: number }) =>
    `“${v.portion}”: ${whole(v.millilitres)} ml of liquid with its colours, ${whole(v.superfat)} % superfat there.`,
  water: (v: { grams: number; strength: number; atThirdGrams: number }) =>
    `your plan: ${whole(v.grams)} g of water, ${whole(v.strength)} % lye. ${whole(v.atThirdGrams)} g makes 33 %.`,
  superfat: (v: { percent: number }) => `your plan has ${whole(v.percent)} % superfat.`,
  heat: (v: { peakC: number; lowC: number; highC: number; gelChance: number; overheatChance: number }) =>
    `your plan, estimated: core about ${t(v.peakC)}, between ${whole(v.lowC)} and ${whole(v.highC)} °C; gel ${pc(v.gelChance)}, overheating ${pc(v.overheatChance)}.`,
};
