import { spaced } from '../../../engine/over-lines.ts';
import type * as en from '../../en/batch/pouring.ts';
import { lengthsIn } from '../../lengths.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { one, plain } = numbersIn('es');
const length = lengthsIn('es', 'pulg');

export const pouring: typeof en.pouring = {
  spooned: ({ millilitres, spoons }) => `${plain(millilitres)} ml (${spoons})`,
  layers: ({ count, volume }) => `${count} capas de ${volume} cada una`,
  layer: ({ number, volume, grams, each, topCm, unit }) =>
    [
      `Capa ${number}: ${volume}, ${grams} g`,
      each === undefined ? '' : `${each} en cada cavidad`,
      topCm === undefined ? '' : `hasta ${length(topCm, unit)}`,
    ]
      .filter(Boolean)
      .join(', '),
  wedgeLayer: ({ number, volume, grams, low, high, unit }) =>
    `Capa ${number}, la cuña: ${volume}, ${grams} g, de ${length(low, unit)} a ${length(high, unit)} de alto`,
  wedge: ({ raised }) =>
    `Apoya un lado largo en un taco de ${length(raised)} para la primera capa; ponlo a nivel cuando aguante.`,
  layerSteps:
    'Deja que cada capa llegue a traza firme antes de la siguiente y vierte sobre una cuchara. Pesa cada una: 1 ml de masa es 1 g, más o menos.',
  wedgeSteps:
    'Calza el molde para que no resbale ni vuelque: la masa cruda quema. Mide el taco en el borde exterior.',
  line: ({ spoons, grams, name }) => `${spoons} de ${name}, unos ${plain(grams)} g`,
  lineEach: ({ lines, spoons }) => `${spoons} para cada una de las ${lines} líneas.`,
  lineArea: ({ area }) => `Para ${area} cm² con un colador fino: que cubra justo.`,
  lineParts: 'Una línea gruesa hace que las capas se separen al cortar. Más fina aguanta.',
  lineOrigin:
    'Por superficie, de memoria: 0,003 g de mica por centímetro cuadrado cubren justo. Decide tu colador.',
  swirl: ({ list, depth, unit }) =>
    `${list}, para ${unit === 'in' ? 'las' : 'los'} ${length(depth, unit)} de arriba`,
  swirlWhole: ({ list }) => `${list}, en remolino de arriba abajo`,
  swirlShare: ({ name, volume, percent }) => `${name} ${volume} (${percent} %)`,
  swirlRest: ({ volume, percent }) => `La base conserva ${volume} de arriba (${percent} %).`,
  swirlNote:
    'Los colores de igual espesor se reparten la superficie como su volumen; el más espeso se queda donde cae, el más fluido se extiende.',
  gradient: ({ steps, deltaE }) => `${steps} pasos que se ven iguales, a ${one(deltaE)} uno de otro`,
  step: ({ number, first, second, hex }) => `${number}: ${first} de A + ${second} de B, ${hex}`,
  stepOne: ({ number, pot, volume, hex }) => `${number}: ${volume} de ${pot}, ${hex}`,
  pots: ({ a, b }) => `Jarra A: ${a}. Jarra B: ${b}.`,
  potNeeds: ({ a, b }) => `Necesitas en total ${a} de A y ${b} de B.`,
  byParts: ({ most, least }) =>
    `A partes iguales saltaría ${one(most)} en un extremo y ${one(least)} en el otro.`,
  gradientAlike: 'Las dos jarras se ven iguales: no hay pasos entre ellas.',
  gradientTitle: 'Pasos iguales',
  plainPot: 'masa sin color',
  infusion: ({ percent, hex, deltaE }) =>
    `Infusiona el ${percent} % de tus aceites: más o menos ${hex}, difiere ${one(deltaE)}`,
  infusionGrams: ({ oil, plantLow, plantHigh }) =>
    `Son ${oil} g de aceite infusionado, con ${plantLow} a ${plantHigh} g de planta seca.`,
  infusionHow: spaced`
    Planta seca en un bote cerrado de aceite, 1 parte por 5 a 10 en peso: de cuatro a seis semanas a
    oscuras, o de dos a cuatro horas a 60 °C (140 °F) al baño maría, y cuela (práctica común).
  `,
  infusionOtherColour: 'Esta planta no lleva a ese color, con ninguna parte: más cerca no llega.',
  infusionTooWeak: 'Ni con todos los aceites infusionados bastaría: más planta en el aceite, o un pigmento.',
  infusionFirst: 'Primero una barra de prueba: 20 % de los aceites infusionados',
  infusionFirstWhy:
    'Ya curada, dime su parte y su color, «20% #d9b86a», y el color que quieres: te digo qué parte hace falta. No hay dos plantas iguales.',
  infusionCaution:
    'El aceite, al baño maría, nunca sobre llama ni sin vigilar: quema y se inflama. Las plantas frescas se pudren en aceite; usa secas.',
  picture: ({ list }) => `Franja de colores: ${list}.`,
};

export const pouringRefusals: Pick<
  RefusalSentences,
  | 'layers-tilt-too-steep'
  | 'swirl-shares-unreadable'
  | 'swirl-shares-over'
  | 'pour-not-a-mould'
  | 'pour-cavity-depth'
  | 'pour-tilt-round'
  | 'swirl-too-deep'
  | 'infusion-bar-unreadable'
  | 'infusion-without-target'
> = {
  'layers-tilt-too-steep': ({ most }) =>
    `Ese taco es demasiado alto para estas capas: como mucho ${length(Math.floor(most * 10) / 10)}, o la cuña asoma de la segunda capa.`,
  'swirl-shares-unreadable': ({ text }) =>
    `No entiendo «${text}» como partes. Escribe porcentajes, «azul 50%, blanco 30%», o partes, «azul 2, blanco 1»; como mucho 8 colores.`,
  'swirl-shares-over': ({ percent }) => `Eso suma ${percent} %: arriba hay 100.`,
  'pour-not-a-mould': ({ text }) =>
    `«${text}» no es un molde: da su interior, «25x9x7 cm», «cilindro 8x25 cm» o «12 cavidades x 100 ml».`,
  'pour-cavity-depth': () =>
    '¿Qué profundidad tiene una cavidad? Añádela: «12 cavidades x 100 ml, 3 cm de hondo».',
  'pour-tilt-round': ({ shape }) => spaced`
    ${shape === 'cylinder' ? 'Un molde redondo' : 'Una bandeja de cavidades'} no da una cuña pareja al
    inclinarlo: vierte ahí capas a nivel, o usa para la cuña un molde de barra o de losa.
  `,
  'swirl-too-deep': ({ most }) => `Es más hondo que el molde: como mucho ${length(most)}.`,
  'infusion-bar-unreadable': ({ text }) =>
    `No entiendo «${text}» como barra. Da la parte de aceite infusionado y su color: «20% #d9b86a».`,
  'infusion-without-target': () => 'Di también el color que quieres, target: «#c79a3c» o «mostaza».',
};
