import type { PrepSteps, StirredIn, Trace, Wetting } from '../../../engine/batch/planning/prep-step.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { OUNCE_G } from '../../../engine/quantities/units.ts';
import { capital, midSentence } from '../../../engine/text/capital.ts';
import type * as en from '../../en/batch/timeline.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';
import { dispersion } from '../colourants/dispersion.ts';
import { quantities } from '../quantities.ts';
import { batch } from './batch.ts';

const { down, millilitres: ml, one } = numbersIn('es');
const COLOUR = 'su color';
const COLOURS = 'sus colores';
/** Ounces are rounded down: nobody weighs more lye than the grams say. */
const ounces = (grams: number) => down(grams / OUNCE_G, 2);
const weight = (grams: number) => `${one(grams)} g (${ounces(grams)} oz)`;
const spoons = quantities.measure;
const liquid = ({ carrier, carrierSpoons, oil, dipped }: Wetting) => {
  const measure = spoons(carrierSpoons);
  const named = (oil && midSentence(oil.es)) ?? (dipped ? 'aceite' : dispersion.carriers[carrier]);
  return `${measure} de ${named}${dipped ? ' apartado de la receta' : ''}`;
};
/** The colours of a cup; a cup that is called after them need not name them twice. */
const what = ({ name, colours, called }: StirredIn) => {
  const cup = 'told' in name ? name.told.toLowerCase() : '';
  const told = called.every(one => cup.includes(one.es.toLowerCase()));
  if (told) return colours.length === 1 ? COLOUR : COLOURS;
  return colours.map(one => midSentence(one.es)).join(', ');
};
const additive = (id: keyof typeof batch.additives) => batch.additives[id];

const portion = batch.portionName;

const traces: Readonly<Record<Trace, string>> = {
  emulsion: 'que apenas emulsione',
  light: 'traza ligera',
  medium: 'traza media',
};

type StepSentences = { readonly [Id in keyof PrepSteps]: (values: PrepSteps[Id]) => string };

const steps: StepSentences = {
  'gear-on': () => 'Gafas, guantes y manga larga. Niños y animales, fuera.',
  'soak-colour': v =>
    `Remoja ${spoons(v.spoons)} de ${midSentence(v.colour.es)} en ${liquid(v)}. Remueve cada vez que pases.`,
  ...batch.jug.steps,
  'weigh-oils': v => `Pesa los aceites: ${weight(v.grams)} en total.`,
  'melt-oils': v => `Funde las grasas duras y lleva todo a unos ${degrees(v.startC)}.`,
  'dip-oil': v => `Aparta ${weight(v.grams)} de aceite para los colores, antes de la sosa.`,
  'froth-colour': v =>
    `Moja a mano ${spoons(v.spoons)} de ${midSentence(v.colour.es)} bajo ${liquid(v)} y bátelo en el vaso con el espumador hasta que no haya grumos.`,
  'stir-colour': v => `Remueve ${spoons(v.spoons)} de ${midSentence(v.colour.es)} en ${liquid(v)}.`,
  'stir-in-passing': v =>
    v.count === 1 ? 'Remueve otra vez el color en remojo.' : 'Remueve otra vez los colores en remojo.',
  'line-mould': () => 'Forra el molde. Prepara vasos, cucharas, varillas y espátulas.',
  'warm-oven': v => `Calienta el horno a ${degrees(v.ovenC)}.`,
  'check-temperatures': v =>
    v.coldLye
      ? spaced`
        Comprueba: aceites cerca de ${degrees(v.startC)}. La sosa en su líquido se queda fría, por debajo
        de 40 °C (104 °F): no la calientes. Todo pesado y a mano.
      `
      : `Comprueba: aceites y agua de sosa cerca de ${degrees(v.startC)}. Todo pesado y a mano.`,
  'lye-into-oils': v => `El agua de sosa sobre los aceites. Bate a toques cortos hasta ${traces[v.trace]}.`,
  'add-additive': v => `Incorpora ${weight(v.grams)} de ${additive(v.additive)}.`,
  split: v =>
    `Reparte: ${v.portions.map(({ name, millilitres }) => `${portion(name)} ${ml(millilitres)}`).join(', ')}.`,
  'whisk-portion': v => `«${capital(portion(v.name))}»: integra ${what(v)} con varillas.`,
  'stick-blend-portion': v =>
    `«${capital(portion(v.name))}»: integra ${what(v)} con la batidora, a toques cortos. Espesa: déjalo para el final.`,
  'scent-portion': v => `«${capital(portion(v.name))}»: incorpora a mano ${weight(v.grams)} de fragancia.`,
  'pour-in-the-pot': () =>
    'Devuelve los colores a la olla en varios puntos, una vuelta con la espátula y al molde.',
  'pour-drop': () => 'Primero la base al molde; deja caer desde arriba hilos finos de color.',
  'pour-layered': v =>
    `Vierte por capas: ${v.order.map(portion).join(', luego ')}. Lo más espeso primero; cada capa debe aguantar la siguiente: vierte sobre una espátula.`,
  'pour-hanger': () => 'Vierte los colores lado a lado o por turnos y pasa la percha haciendo lazos.',
  'into-tub': () => 'Pásalo al tarro y alisa la superficie.',
  'pour-single': () => 'Vierte en el molde y golpéalo para sacar el aire.',
  'leave-open': () => 'Déjalo sobre la mesa, apenas tapado.',
  'keep-cool': () =>
    'Mantenlo fresco: destapado, con aire alrededor, con ventilador si tienes. El blanco se craquela al recalentarse.',
  wrap: () => 'Tápalo y abrígalo con toallas.',
  'too-hot-to-wrap': v => spaced`
    No lo abrigues ni lo metas al horno: así el centro llegaría a unos ${degrees(v.peakC)}. Déjalo
    destapado, con aire alrededor y una bandeja debajo; míralo cada cuarto de hora.
  `,
  'into-oven': v =>
    `Horno apagado (estaba a ${degrees(v.ovenC)}), molde dentro, puerta cerrada. Déjalo toda la noche.`,
  'into-fridge': () => 'A la nevera, lejos de la comida y con etiqueta.',
  'watch-heat': v =>
    `Ahora está en lo más caliente (centro cerca de ${degrees(v.peakC)}): busca bultos y grietas; enfríalo si sube.`,
  'clean-up': () =>
    'No te quites los guantes: la masa en los utensilios aún quema. Limpia con papel y lava mañana, o lava ahora con guantes.',
  unmould: v =>
    `Cuando esté firme (${v.hours} h o más): desmolda con guantes. Corta; cura de cuatro a seis semanas.`,
};

export const timeline: typeof en.timeline = {
  steps,
  traces,
  when: minutes => {
    if (minutes === 0) return 'Vertido';
    const size = Math.round(Math.abs(minutes));
    const [hours, rest] = [Math.floor(size / 60), size % 60];
    const time = [...(hours > 0 ? [`${hours} h`] : []), ...(rest > 0 ? [`${rest} min`] : [])].join(' ');
    return minutes > 0 ? `${time} antes` : `${time} después`;
  },
};
