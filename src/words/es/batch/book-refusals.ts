import { spaced } from '../../../engine/over-lines.ts';
import type { RefusalSentences } from '../../sentence.ts';

const orList = new Intl.ListFormat('es', { type: 'disjunction' });
const andList = new Intl.ListFormat('es', { type: 'conjunction' });
const quoted = (names: readonly string[]) => names.map(name => `«${name}»`);

type BookRefusal =
  | 'batch-change-unclear'
  | 'batch-changes-many'
  | 'batch-amount-absurd'
  | 'batch-weights-unreadable'
  | 'batch-weights-many'
  | 'batch-unknown'
  | 'batch-gone'
  | 'batches-full'
  | 'batch-events-full'
  | 'batch-day-unfit'
  | 'batch-day-before-pour'
  | 'batch-portion-unsized'
  | 'batch-portions-many'
  | 'batch-nothing-said'
  | 'batch-two-sources'
  | 'batch-colours-unreadable'
  | 'batch-not-here';

export const bookRefusals: Pick<RefusalSentences, BookRefusal> = {
  'batch-change-unclear': ({ text, colours }) =>
    colours.length === 0
      ? `No leo «${text}» como un cambio: escribe «2 cdta en vez de 1» o «1/2 cdta violeta».`
      : `¿Qué color es «${text}»? Este lote lleva ${andList.format(quoted(colours))}: nómbralo, como «2 cdta ${colours[0]}».`,
  'batch-changes-many': ({ most }) => `Como mucho ${most} cambios, separados por comas.`,
  'batch-amount-absurd': ({ text, name }) =>
    `«${text}» es más «${name}» de lo que el jabón aguanta: revisa las cucharas.`,
  'batch-weights-unreadable': ({ text }) =>
    `No leo «${text}» como pesos: escribe cada barra en gramos, como «112 g, 108 g».`,
  'batch-weights-many': ({ most }) => `Como mucho ${most} barras a la vez.`,
  'batch-unknown': ({ asked, nearest }) => {
    if (asked === '') return 'Tu libro está vacío: guarda primero un vertido con /batch poured.';
    return nearest.length === 0
      ? `No hay ningún lote «${asked}», ni otro todavía: guarda uno con /batch poured.`
      : `No hay ningún lote «${asked}». Los más parecidos: ${orList.format(quoted(nearest))}.`;
  },
  'batch-gone': () => 'Ese lote ya no está en tu libro.',
  'batches-full': ({ most }) => `Guardo como mucho ${most} lotes: quita uno primero.`,
  'batch-events-full': ({ most }) => `Guardo como mucho ${most} apuntes junto a un lote.`,
  'batch-day-unfit': ({ text }) =>
    `«${text}» no es un día que haya pasado: escríbelo como 2026-11-03, o «ayer».`,
  'batch-day-before-pour': ({ name, date }) =>
    `«${name}» se vertió el ${date}: antes de eso no le pasó nada.`,
  'batch-portion-unsized': ({ text }) =>
    `¿Cuánta masa es «${text}»? Ponlo primero: «2 tazas violeta 1/2 cdta; 1 taza sin color».`,
  'batch-portions-many': ({ most }) => `Como mucho ${most} partes.`,
  'batch-nothing-said': () =>
    '¿Qué vertiste? Planéalo antes con /plan, nombra una recipe:, o dilo: made:«2 tazas violeta 1/2 cdta; 1 taza sin color».',
  'batch-two-sources': () => 'O una recipe:, o lo que hiciste en palabras: las dos cosas no.',
  'batch-colours-unreadable': ({ text, portions }) => spaced`
    No leo «${text}» como una parte y su color: escribe
    ${portions.length > 1 ? `«${portions[0]} #6b5aa8»` : '«#6b5aa8»'}. Partes:
    ${andList.format(quoted(portions))}.
  `,
  'batch-not-here': ({ name }) =>
    `«${name}» se vertió en otro sitio: solo se puede mostrar en el grupo donde lo apuntaste.`,
};
