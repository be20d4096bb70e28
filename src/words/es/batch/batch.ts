import type { AdditiveId } from '../../../engine/batch/additives/additive.ts';
import type { ClassStep } from '../../../engine/batch/planning/class-kits.ts';
import type { PlanWarnings } from '../../../engine/batch/planning/plan-warning.ts';
import type { PortionName } from '../../../engine/batch/portions/portion-name.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { capital } from '../../../engine/text/capital.ts';
import type * as en from '../../en/batch/batch.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';
import { scents } from '../hazards/scents.ts';
import { limits, portionSuperfat } from './limits.ts';
import { jug } from './liquids.ts';
import { lyeCautions } from './lye-cautions.ts';

const { one, two } = numbersIn('es');
/** A tenth is what most scales show; less than that still says that it is something. */
const g = (grams: number) => `${(Math.abs(grams) < 0.1 ? two : one)(grams)} g`;
const pc = (percent: number) => `${one(percent)} %`;

const { additives } = jug;
const additive = (id: AdditiveId) => additives[id];

/** A portion as the member named it, or in their own language where it has no name. */
const UNNAMED: Readonly<Record<'plain' | 'rest', string>> = { plain: 'sin color', rest: 'el resto' };
const portionName = (name: PortionName) =>
  'told' in name ? name.told : `${UNNAMED[name.is]}${name.nth === undefined ? '' : ` ${name.nth}`}`;

const browning: Readonly<Record<PlanWarnings['fragrance-browns']['level'], string>> = {
  slight: 'un poco, y tarde',
  tan: 'de beige a caramelo',
  brown: 'marrón',
  dark: 'marrón oscuro',
};

type WarningSentences = { readonly [Id in keyof PlanWarnings]: (values: PlanWarnings[Id]) => string };

const warnings: WarningSentences = {
  'start-hot': ({ startC }) =>
    `${degrees(startC)} es solo por la cera: más de lo que se vierte en frío. Puede subir de golpe y quema; olla honda, guantes, molde a mano, sin tapar.`,
  'superfat-high': ({ percent }) =>
    percent > 30
      ? `${pc(percent)} de sobreengrasado: queda tanto aceite suelto que apenas es jabón: blando, graso, pronto rancio. ¿Es lo que quieres? Lo normal es 5 %.`
      : `${pc(percent)} de sobreengrasado es mucho: jabón blando que puede enranciarse pronto.`,
  'superfat-may-go-negative': ({ lowest, oil, low, high }) => spaced`
    Si tus aceites están en lo bajo de su rango, el sobreengrasado podría ser ${pc(lowest)}: demasiada
    sosa. El menos seguro es ${oil.es} (${one(low)} a ${one(high)} mg KOH/g). Sube el sobreengrasado o usa
    el valor del certificado de tu proveedor.
  `,
  'lye-strong': ({ percent }) =>
    `Lejía al ${pc(percent)}: para gente con experiencia. La traza llega rápido y deja poco tiempo para el color.`,
  'lye-weak': ({ percent }) =>
    `Lejía al ${pc(percent)}: es mucha agua. Tarda en cuajar, y hay más riesgo de vetas de glicerina y de que se deforme.`,
  'lye-rounded-down': ({ grams, points }) =>
    `El álcali se redondea ${g(grams)} hacia abajo por tu báscula: el sobreengrasado sube ${one(points)} puntos.`,
  'purity-assumed': ({ alkali, percent }) =>
    percent === 100
      ? `Tomo el ${alkali} como puro; si lo es menos, dímelo: sube el sobreengrasado.`
      : `Tomo el ${alkali} con ${pc(percent)} de pureza. Mira la etiqueta: uno más puro baja el sobreengrasado.`,
  'hold-back-short': ({ carrierWaterGrams, heldBackGrams }) =>
    `Los colores traen ${g(carrierWaterGrams)} de agua y solo se pueden reservar ${g(heldBackGrams)}: el álcali necesita al menos su peso en agua.`,
  'dip-lowers-pot': ({ percent }) =>
    `El aceite apartado para el color deja la olla en ${pc(percent)} de sobreengrasado hasta que vuelve. Las partes sin color se quedan en esa cifra.`,
  'portion-superfat-high': ({ name, percent }) =>
    `${capital(portionName(name))} acaba en ${pc(percent)} de sobreengrasado: más blando ahí. Usa menos aceite para el color o apártalo de la receta.`,
  'portion-lye-weak': ({ name, percent }) =>
    `${capital(portionName(name))} acaba con ${pc(percent)} de sosa en su agua: usa menos agua para su color.`,
  'fragrance-browns': ({ level }) => `Vainillina: lo perfumado queda ${browning[level]}.`,
  'fragrance-speeds': ({ name, drawn }) => spaced`
    ${name === undefined ? 'Tu aroma acelera la masa' : `Aromas como «${name}» suelen acelerar la masa: pruébalo antes en una taza`}.
    Mezcla a mano y algo más frío, primero los colores, al final el aroma, el molde a
    mano${drawn ? '; mejor verter sin más que un dibujo que lleva tiempo' : ''}.
  `,
  'fragrance-unknown': ({ text }) =>
    `De «${text}» no sé nada: pregunta a quien vende el aroma si acelera la masa o la oscurece.`,
  'superfat-shifted': ({ asked, comes }) => spaced`
    El sobreengrasado queda en ${pc(comes)}, no en ${pc(asked)}: suma la grasa que moja los colores o que
    trae un líquido. Algo más blando; la sosa es la que pediste.
  `,
  'fragrance-limit': ({ percentOfOils }) =>
    `${pc(percentOfOils)} de aroma es mucho: mira el máximo en su certificado IFRA (jabón que se aclara, categoría 9).`,
  'additive-heats': ({ additive: id, wrapped }) => spaced`
    ${capital(additive(id))}: calienta y acelera la masa. Trabaja más
    frío${wrapped ? ', míralo cada media hora y desabrígalo si se abomba' : ' y no abrigues el molde'}.
  `,
  'additive-browns': ({ additive: id }) =>
    `${capital(additive(id))}: oscurece con la sosa. Cuenta con una base beige.`,
  'additive-drinks-water': ({ additive: id }) =>
    `${capital(additive(id))}: bebe agua. Mójala antes en una a tres veces su peso de agua.`,
  'additive-hardens': ({ additive: id }) =>
    `${capital(additive(id))}: endurece el jabón. Córtalo pronto; luego puede desmenuzarse.`,
  ...jug.warnings,
  ...scents.warnings,
  ...limits.warnings,
  'portion-superfat-negative': ({ name, percent, lowest }) =>
    portionSuperfat({ portion: capital(portionName(name)), percent, lowest }),
  'citric-eats-lye': ({ grams, lyeGrams, points, form }) =>
    form === 'monohydrate'
      ? spaced`
        ${g(grams)} de ácido cítrico se comen ${g(lyeGrams)} de álcali, contado como monohidrato, el más
        flojo de los dos que se venden; ya están sumados. ¿La etiqueta dice anhidro? Escribe «ácido cítrico
        anhidro»; si no, el sobreengrasado sube ${one(points)} puntos.
      `
      : spaced`
        ${g(grams)} de ácido cítrico anhidro se comen ${g(lyeGrams)} de álcali; ya están sumados. Si la
        etiqueta dice monohidrato, escribe «ácido cítrico»: el sobreengrasado bajaría ${one(points)} puntos.
      `,
};

const classSteps: Readonly<Record<ClassStep['id'], string>> = {
  'gear-for-all': 'Gafas y guantes para todos, también quien enseña, antes de abrir nada.',
  'lye-weighed-by-leader':
    'Quien enseña pesa en báscula la sosa de cada mesa. Nunca se reparte sin pesar ni a ojo.',
  'lye-label-each-jug': 'Etiqueta cada jarra con su mesa y «SOSA, cáustico».',
  'oils-into-station-pots': 'Pesa los aceites de cada mesa en su propia olla.',
  'colours-into-cups':
    'Mide los colores en vasos antes de que llegue la gente, para que no haya polvo en el aire.',
  'one-at-the-lye': 'En cada mesa, una sola persona maneja la sosa, con quien enseña al lado.',
};

export const batch: typeof en.batch = {
  additives,
  portionName,
  warnings,
  ...lyeCautions,
  classSteps,
  headline: jug.headline,
  scaled: limits.scaled,
  jug,
  waterWays: v =>
    `La misma agua: sosa al ${v.strength} % = ${v.ratio}:1 de agua a álcali = ${v.ofOils} % de los aceites.`,
  kit: v => `${v.stations} mesas (${v.people} personas), en cada una: ${v.station}.`,
};
