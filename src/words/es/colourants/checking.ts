import type { BatchPart } from '../../../engine/hazards/index.ts';
import { spaced } from '../../../engine/over-lines.ts';
import type { OtherUse } from '../../../engine/stability/legal-share.ts';
import type { Standing } from '../../../engine/stability/permitted-summary.ts';
import type * as en from '../../en/colourants/checking.ts';
import { numbersIn } from '../../numbers.ts';
import { batchPart } from '../hazards/hazards.ts';
import { sourceInSpanish } from './sources.ts';

const { plain } = numbersIn('es');
const list = (names: readonly string[]) => names.join(', ');

const us: Readonly<Record<Standing, (names: string) => string>> = {
  listed: () => 'EE. UU.: todos sus colores están listados para usar en la piel.',
  limited: names => `EE. UU.: listado con límites (${names}).`,
  check: names => `EE. UU.: nuestra copia de las listas no trae ${names}: compruébalo antes de vender.`,
  'other-use': names => `EE. UU.: listado solo para otro uso, no para jabón (${names}).`,
  'not-listed': names => `EE. UU.: no está listado como color cosmético (${names}).`,
  'no-colour': () => 'EE. UU.: nada de lo que lleva cuenta como color.',
};
const eu: Readonly<Record<Standing, (names: string) => string>> = {
  listed: () => 'UE: todos sus colores están en el anexo IV.',
  limited: names => `UE: en el anexo IV con límites (${names}).`,
  check: names => `UE: nuestra copia del anexo IV no trae ${names}: compruébalo antes de vender.`,
  'other-use': names => `UE: listado solo para otro uso, no para jabón (${names}).`,
  'not-listed': names => `UE: no está en el anexo IV (${names}).`,
  'no-colour': () => 'UE: nada de lo que lleva cuenta como color.',
};

const uses: Readonly<Record<OtherUse, string>> = {
  teeth: 'pasta de dientes',
  hair: 'teñir el pelo',
  nails: 'esmalte de uñas',
  'novelty-make-up': 'maquillaje de fantasía y esmalte de uñas',
  'make-up': 'maquillaje de ojos, labios y cara, y uñas',
  eyes: 'maquillaje de ojos y polvos de cara',
};

export const checking: typeof en.checking = {
  named: v => `${v.name}: ${v.verdict}`,
  inNoList: v =>
    `No es para jabón: ninguna lista de colores cosméticos, de EE. UU. o la UE, incluye ${v.name}. ${v.verdict}`,
  notForSoap: v => `No es para jabón: EE. UU. lista ${v.name} solo para ${uses[v.use]}. ${v.verdict}`,
  soapElsewhere: v =>
    `No en jabón que se venda en EE. UU., que lista ${v.name} solo para ${uses[v.use]}; donde rige la ley de la UE:`,
  legalMost: v =>
    `Como mucho un ${plain(v.percent)} % de la pastilla (ley de ${v.law === 'us' ? 'EE. UU.' : 'la UE'}, ${v.name}). ${v.verdict}`,
  holdsUnless: v =>
    `Aguanta en jabón crudo, salvo si lleva ${new Intl.ListFormat('es', { type: 'disjunction' }).format(v.names)}.`,
  perhapsWorse: v =>
    `Solo si de verdad lo lleva («puede contener»): ${list(v.names)}. Pregunta a tu proveedor.`,
  inside: 'Qué lleva',
  holds: v => `${list(v.names)}: ${v.names.length > 1 ? 'aguantan' : 'aguanta'} en jabón crudo.`,
  part: v => `${list(v.names)}: ${v.verdict}`,
  kind: 'Tipo',
  fullDose: 'Color pleno',
  perCup: v => `${v.spoons} por taza de masa`,
  most: v => `Como máximo ${v.spoons} por taza.`,
  wetIn: 'Humedécelo en',
  orList: names => new Intl.ListFormat('es', { type: 'disjunction' }).format(names),
  neverWater: 'En agua no: no se mezcla.',
  doseInVain: 'Ninguna dosis conserva su color en jabón crudo.',
  noDose: 'Sin dosis: no debe entrar en jabón crudo.',
  coloursNothing: 'No lleva nada que coloree: no doy cantidad.',
  inBatch: (v: { name: string; part: BatchPart }) => `«${v.name}» ${batchPart[v.part]}.`,
  noDoseKnown: 'Dosis desconocida: empieza con 1/4 cdta por taza en una pastilla de prueba.',
  sure: v => `Certeza: ${v.level}.`,
  mayBeUsed: 'Se puede usar',
  us: v => us[v.standing](list(v.because)),
  eu: v => eu[v.standing](list(v.because)),
  lawOf: v => `${v.name}. ${v.lines.join(' ')}`,
  sources: v => `De dónde sale: ${v.lines.join('; ')}.`,
  source: ({ source }) => sourceInSpanish(source),
  trust: {
    published: 'publicado',
    'common practice': 'práctica común',
    'from memory': 'de memoria',
    computed: 'calculado',
  },
  doseSource: 'dosis',
  carrierSource: 'líquidos',
  labelLeftOut: v => `No está en la línea porque no lo reconozco: ${v.names.join('; ')}.`,
  labelMost: v =>
    `Ley de ${v.law === 'us' ? 'EE. UU.' : 'la UE'}: como mucho un ${plain(v.percent)} % de ${v.name} en la pastilla acabada.`,
  labelShort: 'Son solo los colores: antes van tus aceites, la sosa, el agua y el aroma.',
  labelByWeight: 'Por orden de peso en la pastilla, hasta donde dicen las etiquetas.',
  labelAsGiven: 'En el orden que diste; con una receta guardada puedo ordenar por peso.',
  keptKind: v => `Por sus ingredientes es ${v.kind}.`,
  countedAs: v => `Las dosis lo cuentan como ${v.colourant}.`,
};

export const checkingRefusals: typeof en.checkingRefusals = {
  'colour-not-for-soap': ({ name, use }) =>
    use === 'none'
      ? spaced`
        No es para jabón: ninguna lista de colores cosméticos, de EE. UU. o la UE, tiene ${name}. Por eso
        no hay dosis; usa un pigmento o una mica de la lista.
      `
      : spaced`
        No es para jabón: EE. UU. lista ${name} solo para ${uses[use]}, y la UE no lo lista como color. Por
        eso no hay dosis; usa un pigmento o una mica de la lista.
      `,
  'list-nothing-recognised': ({ text }) =>
    text.trim() === ''
      ? 'Pega los ingredientes de la etiqueta, como: Mica (CI 77019), Titanium Dioxide (CI 77891).'
      : `No reconozco nada en «${text}». Pega los ingredientes de la etiqueta, como: Mica (CI 77019), Titanium Dioxide (CI 77891).`,
  'colour-nothing-given': () =>
    'Dame una sola cosa que mirar: pega los ingredientes de la etiqueta o nombra un producto de tu estantería.',
  'label-nothing-named': () =>
    'Nombra los colores de la pastilla, como: azul ultramar, mica dorada; o una receta guardada que lleve colores.',
};
