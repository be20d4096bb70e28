import type { Money } from '../../../engine/cost/money.ts';
import { moneyIn } from '../../money.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const and = new Intl.ListFormat('en');
const { one, plain } = numbersIn('en');
const g = (grams: number) => `${plain(grams)} g`;

export const costs = {
  money: (money: Money) => moneyIn('en', money),
  ofJar: (v: { money: string; grams: number }) => `${v.money} for ${g(v.grams)}`,
  portion: (v: { sum: string; bar: string }) => `The colour costs ${v.sum}; ${v.bar} in a 100 g bar.`,
  unpriced: (v: { names: readonly string[] }) =>
    `Without a price, so not counted: ${and.format(v.names)}. Say it with /shelf describe.`,
  cheapest: (v: { recipe: string; money: string; deltaE: number }) =>
    `Cheapest that holds: ${v.recipe}, ${v.money}, off by ${one(v.deltaE)}.`,
  recipe: (v: { money: string }) => `costs ${v.money}`,
  title: 'Cost',
  colour: (v: { sum: string; bar: string }) => `Colour: ${v.sum} for the batch, ${v.bar} in a 100 g bar`,
  ofPortion: (v: { name: string; sum: string }) => `${v.name}: ${v.sum}`,
  oils: (v: { sum: string; bar: string }) => `Oils: ${v.sum}, ${v.bar} in a 100 g bar`,
  oilsUnpriced: (v: { names: readonly string[] }) =>
    `Oils without a price, not counted: ${and.format(v.names)}`,
  both: (v: { sum: string; bar: string }) => `Oils and colour: ${v.sum}, ${v.bar} in a 100 g bar`,
  noted: (v: { name: string; price: string }) => `“${v.name}” costs ${v.price}.`,
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
  'price-unreadable': ({ text }) => `I can’t read “${text}” as a price. Write it like “8.50 €” or “12 USD”.`,
  'price-without-currency': ({ text }) => `“${text}” needs one currency: “8.50 €”, “12 USD”, “$4”.`,
  'price-ambiguous': ({ text, small, large }) =>
    `“${text}” could be ${small} or ${large}. Please write it without the mark, or with two decimals.`,
  'price-out-of-range': ({ text }) => `“${text}” is no price: more than 0, and up to a hundred million.`,
  'price-without-size': () =>
    'How much did that price buy? Say the size too: “50 g”. Without it I cannot tell what a spoon costs.',
  'size-without-price': () => 'A size needs its price too: price “8.50 €”, size “50 g”.',
  'oil-price-unreadable': ({ text }) =>
    `I can’t read “${text}” as oil prices. Write them like “olive 8 €/kg, coconut 6 € per 500 g”, by weight.`,
};
