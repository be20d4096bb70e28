import { spaced } from '../../../engine/over-lines.ts';
import { type flawNumbers as en, where } from '../../en/flaws/numbers.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees, degreesBetween } from '../../temperatures.ts';

const { millilitres, percent: pc, whole } = numbersIn('es');

export const flawNumbers: typeof en = {
  rate: v =>
    `${where(v, `«${v.portion}»`)}: pusiste ${v.had} por taza. Pleno es ${v.full}${v.learnt ? ' según tus propias pastillas' : ''}, lo máximo ${v.most}.`,
  carrier: v =>
    `«${v.portion}»: ${millilitres(v.millilitres)} de líquido con sus colores, ${whole(v.superfat)} % de sobreengrasado ahí.`,
  water: v =>
    `Tu plan: ${whole(v.grams)} g de agua, sosa al ${whole(v.strength)} %. Con ${whole(v.atThirdGrams)} g es al 33 %.`,
  superfat: v => `Tu plan tiene ${whole(v.percent)} % de sobreengrasado.`,
  heat: v => spaced`
    Tu plan, estimado: centro a unos ${degrees(v.peakC)}, entre ${degreesBetween(v.lowC, v.highC, 'y')};
    gel ${pc(v.gelChance)}, sobrecalentamiento ${pc(v.overheatChance)}.
  `,
};
