import { spaced } from '../../../engine/over-lines.ts';
import { stockDecimals } from '../../../engine/quantities/told/stock.ts';
import { cut } from '../../../engine/text/excerpt.ts';
import { quoted as asValue } from '../../../engine/text/lines/option-line.ts';
import type { LedgerLine } from '../../../records/shelf/shelf.ts';
import type * as en from '../../en/members/shelf.ts';
import { numbersIn } from '../../numbers.ts';

const { figure, one } = numbersIn('es');
const g = (grams: number) => `${figure(grams, stockDecimals(grams))} g`;
const leftG = (grams: number) => g(Math.max(0, grams - 1e-4));

const clip = (name: string) => cut(name, 40);
const quoted = (names: readonly string[]) => names.map(name => `«${name}»`);
const orList = new Intl.ListFormat('es', { type: 'disjunction' });

const movements: Record<LedgerLine['action'], string> = {
  add: 'alta',
  use: 'gasto',
  restock: 'reposición',
  'new-lot': 'lote nuevo',
};

const dishTests: typeof en.shelf.dishTests = {
  water: 'se abre en agua',
  oil: 'va en aceite, no en agua',
  neither: 'no va ni en agua ni en aceite: prueba con glicerina',
};

export const shelf: typeof en.shelf = {
  grams: leftG,
  dishTests,
  movements,
  added: ({ name, grams }) =>
    grams === undefined
      ? `«${name}» ya está en tu estantería.`
      : `${leftG(grams)} de «${name}» en tu estantería.`,
  used: ({ name, taken, left }) => `Quedan ${leftG(left)} de «${name}» tras sacar ${g(taken)}.`,
  take: ({ name, grams }) => `Sacar ${g(grams)} de «${clip(name)}» de mi estantería`,
  taken: ({ name, change = 0, left = 0 }) => shelf.used({ name, taken: -change, left }),
  restocked: ({ name, put, left }) => `Ahora hay ${leftG(left)} de «${name}», ${g(put)} recién puestos.`,
  removed: ({ name }) => `«${name}» ya no está en tu estantería, ni su historial.`,
  dishTested: ({ name, result }) => `Anotado: este lote de «${name}» ${dishTests[result]}.`,
  weighed: ({ name, grams }) => `${g(grams)} por cucharadita rasa de «${name}»: las dosis ya lo usan.`,
  oddSpoon: ({ name, grams }) => spaced`
    La cucharadita que pesaste de «${name}» (${g(grams)}) no puede ser, así que cuenta lo que suele pesar
    su tipo. Pesa otra vez una rasa: /shelf weigh item:${asValue(name)} grams:…
  `,
  lotStarted: ({ name, left }) => spaced`
    Lote nuevo de «${name}»${left === undefined ? '' : `, ${leftG(left)} en total`}. Haz su prueba en el
    plato y pesa una cucharadita rasa: las del lote anterior ya no valen.
  `,
  lowMarkSet: ({ name, grams }) => `Te avisaré cuando queden ${g(grams)} de «${name}».`,
  ingredientsKept: ({ name }) => `Anotados los ingredientes de «${name}».`,
  calibrated: ({ name }) => `Este lote de «${name}» está calibrado: las predicciones ya lo usan.`,
  described: ({ name }) => `Apuntado qué es «${name}»: las dosis ya lo usan.`,
  identified: ({ colourant }) => `Lo cuento como ${colourant}. Si no es así, di qué es con /shelf describe.`,
  unidentified: ({ name }) =>
    `No sé de qué está hecho «${name}»: dilo con /shelf describe y podré dosificarlo.`,
  low: ({ name, left }) =>
    left === 0 ? `«${name}» se ha acabado.` : `Queda poco: ${leftG(left)} de «${name}».`,
  undone: v => `Deshecho: ahora ${leftG(v.left)} de «${v.name}».`,
  takenAlready: v => `Ya estaba sacado: quedan ${leftG(v.left ?? 0)} de «${v.name}».`,
  removeSure: v => `¿Quitar «${v.name}» y las ${v.lines} líneas de su historial?`,
  removeYes: v => `Quitar «${clip(v.name)}»`,
  repeated: 'Ya lo tenía anotado: nada se ha contado dos veces.',
  empty: 'Tu estantería está vacía. Añade tu primer colorante con /shelf add.',
  count: ({ items, low }) => `${items} en tu estantería${low > 0 ? `, ${low} con poca cantidad` : ''}.`,
  amountUnknown: 'cantidad sin anotar',
  lot: ({ number, label }) => (label === undefined ? `lote ${number}` : `lote ${label}`),
  spoon: ({ grams }) => `${g(grams)} por cucharadita rasa`,
  pigment: ({ percent }) => `${one(percent)} % de pigmento`,
  line: ({ date, action, change, left, undoes }) =>
    `${date}: ${undoes ? 'deshecho' : movements[action]} ${g(Math.abs(change))}, quedan ${leftG(left)}`,
};

export const shelfRefusals: typeof en.shelfRefusals = {
  'shelf-undo-not-enough': ({ name, left }) =>
    `Solo quedan ${leftG(left)} de «${name}», menos de lo repuesto: corrígelo con /shelf use.`,
  'records-not-read': () =>
    'Ahora mismo no llego a mis registros. No se ha cambiado nada: prueba otra vez en un minuto.',
  'records-not-saved': () =>
    'No se ha guardado: ahora mismo no puedo escribir en mis registros. Prueba otra vez en un minuto.',
  'records-maybe-saved': () =>
    'Perdí el contacto con mis registros a medias y no sé si se guardó. Míralo antes de repetirlo.',
  'shelf-amount-unknown': ({ name }) =>
    `No sé cuánto «${name}» tienes: dímelo una vez con /shelf restock y llevaré la cuenta.`,
  'shelf-full': ({ most }) =>
    `Tu estantería tiene ${most} productos, lo máximo que admite: quita alguno que ya no tengas.`,
  'shelf-grams-unfit': ({ least, most }) => `Di entre ${figure(least, 3)} g y ${one(most / 1000)} kg.`,
  'shelf-item-ambiguous': ({ asked, candidates }) =>
    `«${asked}» puede ser ${orList.format(quoted(candidates))}: ¿cuál?`,
  'shelf-item-unknown': ({ asked, nearest }) =>
    nearest.length === 0
      ? `«${asked}» no está en tu estantería, que aún está vacía: añádelo con /shelf add.`
      : `«${asked}» no está en tu estantería. Lo más parecido: ${orList.format(quoted(nearest))}.`,
  'shelf-name-taken': ({ name }) =>
    `«${name}» ya está en tu estantería: repónlo, abre un lote nuevo o añade este con otro nombre.`,
  'shelf-name-unfit': ({ most }) =>
    `Un nombre lleva al menos una letra o cifra y como mucho ${most} caracteres.`,
  'shelf-not-enough': ({ name, left }) =>
    left === 0
      ? `No queda «${name}»: repónlo antes.`
      : `Solo quedan ${leftG(left)} de «${name}»: saca eso o menos, o repónlo antes.`,
  'shelf-pigment-unfit': () => 'El pigmento que lleva es más de 0 y como mucho el 100 % de su peso.',
  'shelf-spoon-unfit': ({ least, most }) =>
    `Una cucharada rasa así pesa entre ${g(least)} y ${g(most)}: pesa varias y divide.`,
  'jar-unidentified': ({ name }) =>
    `No sé de qué está hecho «${name}»: dilo una vez con /shelf describe, por ejemplo colourant: mica dorada.`,
  'spoon-weight-unreadable': ({ text }) =>
    `«${text}» no es el peso de una cuchara: escribe gramos, como «2,4 g».`,
  'spoons-not-weighed': ({ name }) =>
    `No sé cuánto pesa una cucharada de «${name}»: di gramos, o pesa una cucharadita rasa con /shelf weigh.`,
  'store-scheme-unknown': ({ address, known }) =>
    `No puedo guardar registros en «${address}»: usa ${orList.format(known)}.`,
};
