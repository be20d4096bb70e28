import { fahrenheit } from '../../../engine/quantities/units.ts';
import type { flawNumbers as en } from '../../en/flaws/numbers.ts';

const t = (celsius: number) => `${Math.round(celsius)} °C (${Math.round(fahrenheit(celsius))} °F)`;
const pc = (chance: number) => `${Math.round(100 * chance)} %`;
const whole = (value: number) => `${Math.round(value)}`;

export const flawNumbers: typeof en = {
  rate: v =>
    `${v.portion === undefined ? v.name : `«${v.portion}», ${v.name}`}: pusiste ${v.had} por taza. Pleno es ${v.full}, lo máximo ${v.most}.`,
  carrier: v =>
    `«${v.portion}»: ${whole(v.millilitres)} ml de líquido con sus colores, ${whole(v.superfat)} % de sobreengrasado ahí.`,
  water: v =>
    `tu plan: ${whole(v.grams)} g de agua, sosa al ${whole(v.strength)} %. Con ${whole(v.atThirdGrams)} g es al 33 %.`,
  superfat: v => `tu plan tiene ${whole(v.percent)} % de sobreengrasado.`,
  heat: v =>
    `tu plan, estimado: centro a unos ${t(v.peakC)}, entre ${whole(v.lowC)} y ${whole(v.highC)} °C; gel ${pc(v.gelChance)}, sobrecalentamiento ${pc(v.overheatChance)}.`,
};
