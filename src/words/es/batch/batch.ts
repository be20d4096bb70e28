import type { ClassStep } from '../../../engine/batch/planning/class-kits.ts';
import type { PlanWarnings } from '../../../engine/batch/planning/plan-warning.ts';
import type { AdditiveId } from '../../../engine/batch/request.ts';
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
const ml = (millilitres: number) => `${Math.round(millilitres)} ml`;

const { additives } = jug;
const additive = (id: AdditiveId) => additives[id];

/** A portion as the member named it, or in their own language where it has no name. */
const portionName = (name: string) =>
  name.replace(/^plain(?= \d+$|$)/u, 'sin color').replace(/^rest(?= \d+$|$)/u, 'el resto');

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

export const batchRefusals: typeof en.batchRefusals = {
  ...jug.refusals,
  ...scents.refusals,
  'oil-not-clarified': ({ text }) => spaced`
    «${text}» tiene cerca de un 82 % de grasa, el resto agua y leche, y llevaría demasiada sosa.
    Clarifícala y escribe «mantequilla clarificada», o usa otra grasa.
  `,
  'oil-unknown': ({ text, nearest }) =>
    text.split(' ').length > 3 || /^\d/u.test(text)
      ? `No puedo leer «${text}» como un aceite con su peso. Escribe cada uno así: «500 g oliva, 200 g coco».`
      : `No conozco el aceite «${text}». ¿Quieres decir ${nearest.map(({ es }) => es).join(', ')}?`,
  'oils-empty': () => 'Dime tus aceites, por ejemplo «coco 30%, oliva 50%, palma 20%».',
  'oil-without-amount': ({ text }) =>
    `A «${text}» le falta un porcentaje o un peso, como «oliva 50%» u «oliva 500 g».`,
  'oil-by-volume': ({ text }) =>
    `«${text}»: los aceites van por peso o porcentaje, no por volumen. De eso depende la sosa.`,
  'oils-mixed-units': () => 'Unos aceites van en porcentaje y otros en peso: usa lo mismo para todos.',
  'oils-percent-sum': ({ sum }) => `Los aceites suman ${pc(sum)}; deberían sumar 100 %.`,
  'size-unreadable': ({ text }) =>
    `No entiendo el tamaño «${text}». Prueba «1000 g de aceites», «1,2 l de masa», «molde 25x9x7 cm» o «12 cavidades x 100 ml».`,
  'size-missing': () =>
    '¿De qué tamaño? Añade «1000 g de aceites», «1,2 l de masa» o «molde 25x9x7 cm», o da los aceites por peso.',
  'size-oils-by-volume': () =>
    'Los aceites van por peso: «1000 g de aceites». Un volumen es de masa: «1,2 l de masa».',
  'size-out-of-range': ({ text }) => `«${text}» está fuera de 20 g a 200 kg (20 ml a 200 l).`,
  'mould-without-unit': ({ text }) => `«${text}»: ¿centímetros o pulgadas? Añade «cm» o «in».`,
  'mould-sides': ({ text, shape }) =>
    shape === 'loaf'
      ? `«${text}»: un molde de barra necesita largo x ancho x alto, como «molde 25x9x7 cm».`
      : `«${text}»: un cilindro necesita diámetro x largo, como «cilindro 8x25 cm».`,
  'cavity-by-mass': ({ text }) =>
    `«${text}» es un peso: una cavidad necesita su volumen, como «12 cavidades x 100 ml».`,
  'water-bare-percent': ({ percent }) =>
    `¿${percent}% de qué? Escribe «${percent}% sosa» (concentración) o «${percent}% de aceites»: son jabones distintos.`,
  'water-unreadable': ({ text }) =>
    `No entiendo el agua «${text}». Escribe «33% sosa», «2:1» (agua a álcali) o «38% de aceites».`,
  'carrier-by-mass': ({ text }) =>
    `«${text}»: mide el líquido de un color con cuchara o en mililitros, como «1 cda de oliva».`,
  'portion-without-amount': ({ text }) =>
    `¿Cuánto es «${text}»? Empieza con una cantidad: «2 tazas ...», «500 ml ...», «2 partes ...», «25% ...» o «resto ...».`,
  'portions-many': ({ count, most }) => `${count} partes son más de las que planifico; como mucho ${most}.`,
  'portions-two-rests': () => 'Solo una parte puede ser el resto. Da una cantidad a la otra, o usa partes.',
  'portion-colours-many': ({ text, most }) => `«${text}»: como mucho ${most} colores en una parte.`,
  'portions-exceed-batter': ({ askedMillilitres, batterMillilitres }) =>
    `Las partes piden ${ml(askedMillilitres)} y el lote da ${ml(batterMillilitres)}: hazlas menores, usa partes o agranda el lote.`,
  'portions-parts-and-rest': () =>
    'Las partes reparten todo lo que queda: quita «resto» o dale partes también.',
  'reserve-out-of-range': ({ percent, most }) =>
    `Una reserva de ${pc(percent)} está fuera de 0 a ${most} % de la masa.`,
  'additive-unknown': ({ text, known }) =>
    `No conozco el aditivo «${text}». Conozco ${known.slice(-7).map(additive).join(', ')}, y líquidos como leche, cerveza o té.`,
  'additive-without-amount': ({ text }) =>
    `A «${text}» le falta una cantidad, como «miel 10 g» o «sal 5%» de los aceites.`,
  'additive-too-much': ({ text, most }) => `«${text}» es más del ${most} % de los aceites.`,
  'superfat-negative': ({ percent }) =>
    `Un sobreengrasado de ${pc(percent)} dejaría sosa libre en el jabón. Usa 0 % o más; lo normal es 5 %.`,
  'superfat-absurd': ({ percent, most }) =>
    `Con ${pc(percent)} de sobreengrasado ya no es jabón; como mucho ${most} %, lo normal es 5 %.`,
  'purity-out-of-range': ({ percent, alkali, least }) =>
    `${pc(percent)} no es la pureza de un ${alkali} seco (${least} a 100 %, mira la etiqueta). ¿Es sosa ya disuelta? Escribe «solución al ${one(percent)}%».`,
  'koh-share-out-of-range': ({ percent }) =>
    `La parte de KOH es ${pc(percent)}; con los dos álcalis va entre 0 y 100 %.`,
  'lye-unreadable': ({ text }) =>
    `¿Qué álcali es «${text}»? Escribe NaOH, KOH o ambos («NaOH 95% + KOH 5%»).`,
  'lye-shares-sum': ({ sum }) => `Las partes de los dos álcalis suman ${pc(sum)}; deberían sumar 100 %.`,
  'percent-unreadable': ({ text }) =>
    `No entiendo «${text}» como aroma. Escribe «3%» de los aceites (como mucho 6 %), y «vainillina 8%» si lo dice la etiqueta.`,
  'scale-too-coarse': ({ stepGrams, points, leastOilGrams }) => spaced`
    Un paso de tu báscula de ${one(stepGrams)} g mueve el sobreengrasado ${one(points)} puntos en este
    lote. Usa una báscula más fina o al menos ${leastOilGrams} g de aceites.
  `,
  'water-turned-round': ({ text, water, lye }) => spaced`
    Leo «${text}» como ${water} de agua por ${lye} de sosa: demasiado fuerte para disolverse con seguridad.
    ¿Querías decir ${lye}:${water} (agua a sosa)? Entonces escribe eso.
  `,
  'lye-too-strong': ({ percent, most }) =>
    `Lejía al ${pc(percent)}: demasiado fuerte para disolverse con seguridad. Usa al menos tanta agua como álcali (${most} %); lo normal es 33 %.`,
  'lye-too-weak': ({ percent, least }) =>
    `Lejía al ${pc(percent)}: demasiado floja para una pastilla. Al menos ${least} %; lo normal es 33 %.`,
  'milk-more-than-water': ({ additiveGrams, waterGrams }) =>
    `La leche y similares traen ${g(additiveGrams)} de agua y la receta lleva ${g(waterGrams)}: pon menos, o más agua.`,
  'dip-too-deep': ({ dippedGrams, potSuperfat }) => spaced`
    Apartar ${g(dippedGrams)} de aceite deja la olla en ${pc(potSuperfat)} de sobreengrasado: demasiada
    sosa ahí. Aparta menos, sube el sobreengrasado o usa aceite extra.
  `,
  'dipped-oil-missing': ({ oil, wantedGrams, recipeGrams }) =>
    `No se pueden apartar ${g(wantedGrams)} de ${oil.es}: la receta lleva ${g(recipeGrams)}.`,
  'rescale-out-of-range': ({ factor }) => `Un factor de ${one(factor)} está fuera de 0,01 a 100.`,
  'class-out-of-range': ({ mostPeople }) =>
    `Una clase tiene de 1 a ${mostPeople} personas y no más mesas que personas, en números enteros.`,
};
