import type { AdditiveId } from '../../../engine/batch/additives/additive.ts';
import { spaced } from '../../../engine/over-lines.ts';
import type * as en from '../../en/batch/batch-refusals.ts';
import { numbersIn } from '../../numbers.ts';
import { scents } from '../hazards/scents.ts';
import { jug } from './liquids.ts';

const { millilitres: ml, one, two } = numbersIn('es');
/** A tenth is what most scales show; less than that still says that it is something. */
const g = (grams: number) => `${(Math.abs(grams) < 0.1 ? two : one)(grams)} g`;
const pc = (percent: number) => `${one(percent)} %`;

const { additives } = jug;
const additive = (id: AdditiveId) => additives[id];

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
  'oils-mixed-units': ({ share, weight, isBare }) =>
    isBare
      ? `«${share}» va sin unidad junto a «${weight}»: escríbela, como «500 g oliva», y cada aceite por su peso.`
      : `Unos aceites van en porcentaje y otros en peso («${share}», «${weight}»): usa lo mismo para todos.`,
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
