import type { AdditiveId } from '../../../engine/batch/additives/additive.ts';
import type { PrepSteps } from '../../../engine/batch/planning/prep-step.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { OUNCE_G } from '../../../engine/quantities/units.ts';
import { capital, midSentence } from '../../../engine/text/capital.ts';
import type * as en from '../../en/batch/liquids.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';
import { additives, bareLiquids, liquids } from './liquid-names.ts';
import { liquidWarnings } from './liquid-warnings.ts';

const { down, one, whole } = numbersIn('es');
const g = (grams: number) => `${one(grams)} g`;
const pc = (percent: number) => `${one(percent)} %`;
/** Ounces are rounded down: nobody weighs more lye than the grams say. */
const weight = (grams: number) => `${one(grams)} g (${down(grams / OUNCE_G, 2)} oz)`;

const name = (id: AdditiveId) => additives[id];
const bare = (id: AdditiveId) => ({ ...additives, ...bareLiquids })[id];

const refusals: typeof en.jug.refusals = {
  'additive-eats-lye-by-spoon': ({ additive }) =>
    `${capital(name(additive))}: consume sosa, y una cuchara es demasiado imprecisa. Da su peso, como «${bare(additive)} 10 g».`,
  'blend-sets-before-pour': ({ oil, percent, meltsC, startC }) => spaced`
    ${pc(percent)} de la mezcla (${midSentence(oil.es)}) es sólido a ${degrees(startC)}: no se puede
    verter. Vierte por encima de ${degrees(meltsC)} (start:«${whole(Math.ceil(meltsC))} C») o pon menos.
  `,
  'wax-too-much': ({ percent, most }) => spaced`
    Con ${pc(percent)} de cera no sale jabón: cerca de la mitad de una cera no reacciona con la sosa. Como
    mucho ${most} % de los aceites; lo normal, de 1 a 3 %.
  `,
  'oil-never-soap': ({ text }) =>
    `«${text}» nunca se hace jabón: la sosa que le toca quedaría libre en la pastilla. Usa un aceite, una grasa o una manteca.`,
  'fragrance-dose-high': ({ percent, most }) => spaced`
    ${pc(percent)} de los aceites es más aroma del que admite un jabón (como mucho ${most} %; lo normal, 3
    %). Si es la vainillina, escribe «3% de los aceites, vainillina ${one(percent)}%».
  `,
  'fragrance-dose-unclear': ({ text }) =>
    `«${text}»: ¿qué porcentaje es la dosis y cuál su vainillina? Escribe «3% de los aceites, vainillina 8%».`,
  'jug-too-little-water': ({ liquid, lyeGrams, jugWaterGrams, mostGrams }) => spaced`
    Quedan ${g(jugWaterGrams)} de agua para ${g(lyeGrams)} de álcali, que necesita su propio peso. Pon como
    mucho ${g(mostGrams)} de ${bare(liquid)}, o más agua («2,5:1»).
  `,
  'liquid-never-in-jug': ({ liquid }) =>
    `${capital(name(liquid))}: demasiado espeso o graso para la jarra; deja bolsas de sosa y sube. Escribe «${bare(liquid)} en los aceites».`,
  'liquid-is-spirit': ({ text }) => spaced`
    «${text.trim()}» es alcohol fuerte: arde cerca del calor, hace hervir la sosa y espesa la masa de
    golpe. Usa agua; a la cerveza o el vino se les hierve antes el alcohol.
  `,
  'liquid-is-bleach': ({ text }) => spaced`
    «${text.trim()}» nunca va en el jabón: la lejía y el agua oxigenada hacen espuma con la sosa y los
    aceites, queman la piel, destruyen el color, y la lejía con ácidos da gas venenoso. Usa agua.
  `,
  'liquid-water-weight': ({ text }) =>
    `«${text.trim()}»: aquí va lo que reemplaza al agua. Cuánta agua sola, escríbelo en water: «33% sosa», «2:1» (agua a álcali) o «38% de aceites».`,
  'liquid-unknown': ({ text, known }) =>
    `No conozco el líquido «${text}». Prueba ${known.slice(0, 3).map(bare).join(', ')}, cerveza, té o jugo de aloe; con sosa no se adivina.`,
  'liquids-over-all': ({ sum }) => `Los líquidos suman ${pc(sum)} del agua; 100 % es toda.`,
  'lye-shares-unclear': ({ text }) =>
    `«${text}»: ¿qué parte es de cada álcali? Escribe «NaOH 95% + KOH 5%». Son jabones distintos.`,
  'lye-solution-of-both': () =>
    'Una sosa ya disuelta vale aquí para un solo álcali. Escribe «solución de NaOH al 50%», o pesa ambos secos: «NaOH 95% + KOH 5%».',
  'solution-too-weak': ({ percent, solutionWaterGrams, leftGrams }) => spaced`
    Una solución al ${pc(percent)} trae ${g(solutionWaterGrams)} de agua y el lote solo le deja
    ${g(leftGrams)}. Pon más agua, menos líquidos o
    ${percent < 50 ? 'una solución más fuerte (50 %)' : 'sosa seca, pesada en escamas'}.
  `,
  'water-or-masterbatch': ({ percent }) => spaced`
    Solución al ${percent}%: ¿ya la tienes disuelta? Entonces lye:«solución al ${percent}%» y el agua del
    lote, como «33% sosa». Para un lote fuerte escribe «1:1».
  `,
};

const joined = (parts: readonly string[]) => parts.join(' + ');
const held = (grams: number) => (grams > 0.05 ? ` (${g(grams)} reservados para los colores)` : '');
const lyes = (list: PrepSteps['mix-lye']['lye']) =>
  list.map(({ alkali, grams }) => `${weight(grams)} de ${alkali}`).join(' y ');
const inJug = (water: number, list: PrepSteps['mix-lye']['liquids'], kind: string) =>
  joined([
    ...list.map(
      ({ additive, grams }) => `${weight(grams)} de ${name(additive)}${additive === 'ice' ? '' : kind}`,
    ),
    ...(water > 0.05 || list.length === 0 ? [`${weight(water)} de agua fría`] : []),
  ]);

/** Lo que hierve no pasa mucho de ahí, pero salta. */
const hottest = (celsius: number) =>
  celsius < 100
    ? `Puede llegar a ${degrees(celsius)}.`
    : 'Puede llegar a hervir y saltar: enfría antes el líquido.';

const steps: typeof en.jug.steps = {
  'boil-off': v => spaced`
    Hierve a fuego suave y destapado: ${bare(v.additive)}, hasta que se vayan el alcohol (cerca de
    ${pc(v.percent)}) y el gas, 20 minutos o más. Enfría y pesa después.
  `,
  'freeze-liquid': v => `Congela ${weight(v.grams)} de ${name(v.additive)} en cubitos.`,
  'mix-lye': v => spaced`
    Pesa ${lyes(v.lye)}; échalo ${v.sour ? 'muy despacio, a cucharadas, ' : 'despacio '}en
    ${inJug(v.waterGrams, v.liquids, v.sour ? ' helado' : ' en frío')}${v.sour ? ', la jarra en un baño de hielo' : ''}${held(v.holdBackGrams)},
    nunca al revés.${v.sour ? ' El ácido y la sosa calientan y salpican.' : ''} ${hottest(v.hottestC)}
    Déjalo enfriar.
  `,
  'mix-lye-frozen': v => spaced`
    Pesa ${lyes(v.lye)}. Jarra en un baño de hielo con
    ${inJug(v.waterGrams, v.liquids, ' en cubitos')}${held(v.holdBackGrams)}: una cucharada de álcali cada
    vez; remueve y para si pasa de 40 °C (104 °F). 15 a 30 minutos. Nunca el líquido sobre la
    sosa.${v.liquids.every(({ additive }) => additive === 'ice') ? '' : ' Huele y amarillea.'}
  `,
  'pour-solution': v => spaced`
    Pesa ${weight(v.grams)} de la solución de ${v.alkali} al
    ${pc(v.percent)}${v.waterGrams > 0.05 ? `; viértela despacio en ${weight(v.waterGrams)} de agua fría${held(v.holdBackGrams)}` : ''}.
    Guantes y gafas: quema tal cual.
  `,
  'dissolve-acid': v =>
    `Disuelve ${weight(v.grams)} de ${name(v.additive)} en el agua o el líquido frío, antes de la sosa.`,
  'acid-into-oils': v =>
    `Disuelve ${weight(v.grams)} de ${name(v.additive)} en un poco del agua del lote y mézclalo con los aceites; nunca en la solución de sosa: herviría.`,
  'liquid-into-oils': v =>
    `Bate ${weight(v.grams)} de ${name(v.additive)} con los aceites, justo antes de la sosa.`,
  'ready-tub': () =>
    'Ten lista una cubeta ancha de polipropileno resistente al calor: este jabón se queda en pasta. Prepara vasos y espátulas.',
  'stays-cool': v =>
    `Las pastillas pequeñas pierden el calor tan rápido como lo hacen (unos ${degrees(v.peakC)} como mucho): no hay momento caliente que vigilar. Tápalas.`,
  'cut-salt-bar': v => spaced`
    ${pc(v.percent)} de sal: corta en cuanto esté firme, entre ${v.fromHours} y ${v.toHours} h, con guantes
    (el jabón crudo quema). En cavidades no hay que cortar. Cura de cuatro a seis semanas.
  `,
  'keep-paste': () =>
    'Es una pasta: no se desmolda ni se corta. Guárdala tapada, con guantes, dos semanas o más antes de diluirla; comprueba que su pH ronde 9 a 10.',
};

type Weighed = { readonly mass: string; readonly id: AdditiveId };
const named = (list: readonly Weighed[], after = '') =>
  list.map(({ mass, id }) => `${mass} de ${name(id)}${id === 'ice' ? '' : after}`);

export const jug: typeof en.jug = {
  liquids,
  additives,
  headline: v => {
    const aside = v.inOils.length > 0 ? `, ${joined(named(v.inOils))} en los aceites,` : '';
    const water = v.water === undefined ? [] : [`${v.water} de agua`];
    if (v.solution) {
      return `${joined([`${v.solution.mass} de solución de ${v.alkali} (${pc(v.solution.percent)})`, ...water])}${aside} para ${v.oils} de aceites`;
    }
    const lye = `${v.lye} de ${v.alkali}`;
    return v.method === 'frozen'
      ? `${lye} en ${joined([...named(v.inJug, ' en cubitos'), ...water])}, poco a poco${aside || ','} para ${v.oils} de aceites`
      : `${lye} en ${joined([...water, ...named(v.inJug)])}${aside} para ${v.oils} de aceites`;
  },
  solution: v => `Solución de ${v.alkali} (${pc(v.percent)})`,
  solutionNote: v => `Lleva ${v.lye} de álcali y ${v.water} de agua.`,
  furtherWater: 'Agua que se añade',
  noWater: v =>
    v.inJug.length === 0
      ? 'no se añade ninguna'
      : `no se añade ninguna: la sosa va en ${joined(named(v.inJug, v.frozen ? ' en cubitos' : ''))}`,
  strength: v => `En la jarra: sosa al ${pc(v.percent)}, contada toda su agua.`,
  placed: v =>
    `${v.into === 'oils' ? 'A los aceites' : v.frozen ? 'A la jarra, en cubitos' : 'A la jarra'}; ${v.water} son agua.`,
  warnings: liquidWarnings,
  refusals,
  steps,
};
