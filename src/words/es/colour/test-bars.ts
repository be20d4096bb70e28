import { spaced } from '../../../engine/over-lines.ts';
import { quoted } from '../../../engine/text/lines/option-line.ts';
import type * as en from '../../en/colour/test-bars.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { one } = numbersIn('es');

export const testBars: typeof en.testBars = {
  headline: ({ bars, portion, jars, after, before }) => spaced`
    ${bars} ${bars === 1 ? 'barra' : 'barras'} de prueba de ${portion} para ${jars}
    ${jars === 1 ? 'bote' : 'botes'}: ± ${one(after)} después, ${one(before)} ahora
  `,
  unreached: ({ bars, portion, within, after }) =>
    `${bars} barras de prueba de ${portion} no llegan a ${one(within)}: lo más cerca es ± ${one(after)}`,
  none: ({ within }) => `No hace falta ninguna barra: cada bote ya se conoce a ± ${one(within)}`,
  usualPortion: '1/2 taza',
  pour: 'Vierte estas, cada una con su etiqueta',
  bar: ({ label, doses, portion, word, hex }) => `${label}: ${doses} en ${portion}; saldrá ${word}, ${hex}`,
  dose: ({ spoons, name }) => `${spoons} de ${name}`,
  plain: ({ label }) =>
    `${label}: sin color, salvo que guardes una barra sola de este jabón. Distingue tu base.`,
  jars: 'Lo que dirán',
  jar: ({ name, before, after }) =>
    `${name}: ± ${one(after)} a color pleno o a un cuarto, ${one(before)} ahora`,
  singly: ({ bars }) => `Con un bote por barra hacen falta ${bars}.`,
  mixed: ({ bars }) =>
    `Con dos botes en una barra bastan ${bars}: pídelo con mixes. Una barra mala daña entonces a dos botes.`,
  handIn: ({ example }) =>
    `Curadas, entrega cada una: /calibrate bars ${example}. Espera cuatro semanas o más: las barras jóvenes son más oscuras (práctica común).`,
  handInMixed: ({ example }) => `Una barra de dos botes los nombra: bar-1:${quoted(`${example} #……`)}.`,
  steps:
    'Una tanda, un vertido, un mismo lugar de curado: así solo cambia el color. Pesa el colorante si puedes; las cucharas rasas varían una décima parte.',
  leftOut: ({ names }) => `No entran en este plan: ${names}. Nombra botes para elegir.`,
  label: { perCup: ({ dose, name }) => `${name}: ${dose}`, date: 'Vertida' },
  sheet: { title: 'Etiquetas para tus barras de prueba', plain: 'Sin color' },
  alt: ({ list }) => `Etiquetas para recortar: ${list}.`,
};

export const testBarsRefusals: Pick<
  RefusalSentences,
  'plan-bars-without-jars' | 'plan-bars-too-many' | 'plan-bars-portion'
> = {
  'plan-bars-without-jars': () =>
    'No hay bote que planear: pon uno en tu estantería con /shelf add y di qué es.',
  'plan-bars-too-many': ({ most }) =>
    `Como mucho ${most} botes en un plan: nombra menos, y el resto en otro.`,
  'plan-bars-portion': ({ text }) =>
    `«${text}» no hace una barra de prueba: vierte de 2 cdas a 4 tazas de masa en cada una, como «1/2 taza».`,
};
