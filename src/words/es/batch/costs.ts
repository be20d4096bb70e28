import type * as en from '../../en/batch/costs.ts';
import { moneyIn } from '../../money.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const and = new Intl.ListFormat('es');
const { one, plain, typed } = numbersIn('es');
const g = (grams: number) => `${plain(grams)} g`;

export const costs: typeof en.costs = {
  money: money => moneyIn('es', money),
  ofJar: ({ money, grams }) => `${money} por ${g(grams)}`,
  portion: ({ sum, bar }) => `El color cuesta ${sum}; ${bar} en una pastilla de 100 g.`,
  unpriced: ({ names }) => `Sin precio, así que no cuenta: ${and.format(names)}. Dilo con /shelf describe.`,
  cheapest: ({ recipe, money, deltaE }) =>
    `La más barata que aguanta: ${recipe}, ${money}, difiere ${one(deltaE)}.`,
  recipe: ({ money }) => `cuesta ${money}`,
  title: 'Coste',
  colour: ({ sum, bar }) => `Color: ${sum} el lote, ${bar} en una pastilla de 100 g`,
  ofPortion: ({ name, sum }) => `${name}: ${sum}`,
  oils: ({ sum, bar }) => `Aceites: ${sum}, ${bar} en una pastilla de 100 g`,
  oilsUnpriced: ({ names }) => `Aceites sin precio, no cuentan: ${and.format(names)}`,
  both: ({ sum, bar }) => `Aceites y color: ${sum}, ${bar} en una pastilla de 100 g`,
  noted: ({ name, price }) => `«${name}» cuesta ${price}.`,
};

export const costsRefusals: Pick<
  RefusalSentences,
  | 'price-unreadable'
  | 'price-without-currency'
  | 'price-ambiguous'
  | 'price-out-of-range'
  | 'price-without-size'
  | 'size-without-price'
  | 'oil-price-unreadable'
> = {
  'price-unreadable': ({ text }) => `No entiendo «${text}» como precio. Escríbelo como «8,50 €» o «12 USD».`,
  'price-without-currency': ({ text }) => `A «${text}» le falta una moneda: «8,50 €», «12 USD», «$4».`,
  'price-ambiguous': ({ text, small, large }) =>
    `«${text}» puede ser ${typed(small)} o ${large}. Escríbelo sin la marca o con dos decimales.`,
  'price-out-of-range': ({ text }) => `«${text}» no es un precio: más de 0 y hasta cien millones.`,
  'price-without-size': () =>
    '¿Cuánto compró ese precio? Di también el tamaño (size): «50 g». Sin él no sé lo que cuesta una cuchara.',
  'size-without-price': () => 'El tamaño necesita su precio: price «8,50 €», size «50 g».',
  'oil-price-unreadable': ({ text }) =>
    `No entiendo «${text}» como precios de aceites. Escríbelos como «oliva 8 €/kg, coco 6 € por 500 g», por peso.`,
};
