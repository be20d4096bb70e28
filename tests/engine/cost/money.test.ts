import { describe, expect, test } from 'vitest';
import { costOf, parseMoney, sumsOf, times } from '../../../src/engine/cost/money.ts';
import { oilsCost, parseOilPrices } from '../../../src/engine/cost/oil-prices.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { moneyIn } from '../../../src/words/money.ts';

const refusal = (text: string) => {
  try {
    parseMoney(text);
  } catch (caught) {
    if (caught instanceof Refusal) return caught.id;
    throw caught;
  }
  return undefined;
};

describe('a price', () => {
  // Codes as ISO 4217 has them.
  test.each([
    ['8.50 €', 8.5, 'EUR'],
    ['€8,50', 8.5, 'EUR'],
    ['12 usd', 12, 'USD'],
    ['$4', 4, '$'],
    ['4 dollars', 4, '$'],
    ['1.234,56 EUR', 1234.56, 'EUR'],
    ['£3', 3, 'GBP'],
    ['3 pounds', 3, 'GBP'],
    ['12  usd', 12, 'USD'],
    ['90 pesos', 90, 'pesos'],
    ['A$ 7.20', 7.2, 'A$'],
    ['1200 JPY', 1200, 'JPY'],
  ])('%s', (text, amount, currency) => {
    expect(parseMoney(text)).toEqual({ amount, currency });
  });

  test.each([
    ['8.50', 'price-without-currency'],
    ['€8.50 USD', 'price-without-currency'],
    ['-3 €', 'price-unreadable'],
    ['0 €', 'price-out-of-range'],
    ['999999999999 €', 'price-out-of-range'],
    ['1,500 €', 'price-ambiguous'],
    ['', 'price-unreadable'],
    ['🧼', 'price-unreadable'],
    ['1.2.3 €', 'price-unreadable'],
    ['constructor', 'price-unreadable'],
    ['8 € '.repeat(1250), 'price-unreadable'],
  ])('is not %s', (text, id) => {
    expect(refusal(text)).toBe(id);
  });

  test('is read up to forty signs', () => {
    expect(parseMoney(`8.50${' €'.padStart(2)}`)).toEqual({ amount: 8.5, currency: 'EUR' });
    const long = `${'0'.repeat(34)}8.50 €`;
    expect(long).toHaveLength(40);
    expect(parseMoney(long).amount).toBe(8.5);
    expect(refusal(`0${long}`)).toBe('price-unreadable');
  });

  test('of so many times a thing is so many times the price', () => {
    expect(times({ amount: 2.5, currency: 'EUR' }, 3)).toEqual({ amount: 7.5, currency: 'EUR' });
  });

  test('that is refused is quoted', () => {
    for (const [text, id] of [
      ['200000000 €', 'price-out-of-range'],
      ['12.50', 'price-without-currency'],
      ['a lot', 'price-unreadable'],
    ] as const)
      expect(() => parseMoney(text)).toThrow(expect.objectContaining({ id, values: { text } }));
  });

  test('is written as the language writes it, small ones with two figures', () => {
    expect(moneyIn('en', { amount: 8.5, currency: 'EUR' })).toBe('€8.50');
    expect(moneyIn('es', { amount: 8.5, currency: 'EUR' }).replaceAll('\u00a0', ' ')).toBe('8,50 €');
    expect(moneyIn('en', { amount: 0.00432, currency: 'EUR' })).toBe('€0.0043');
    expect(moneyIn('en', { amount: 4, currency: '$' })).toBe('$4.00');
    expect(moneyIn('es', { amount: 90, currency: 'pesos' })).toBe('90,00 pesos');
  });
});

describe('a cost', () => {
  test('is in proportion to the grams, and no currency is turned into another', () => {
    const jar = { amount: 8, currency: 'EUR', grams: 50 };
    expect(costOf(jar, 1.25)).toEqual({ amount: 0.2, currency: 'EUR' });
    expect(
      sumsOf([
        { amount: 1, currency: 'EUR' },
        { amount: 2, currency: '$' },
        { amount: 3, currency: 'EUR' },
      ]),
    ).toEqual([
      { amount: 4, currency: 'EUR' },
      { amount: 2, currency: '$' },
    ]);
  });

  test('of oils, by weight however it was said', () => {
    const prices = parseOilPrices('olive oil 8 €/kg, coconut oil 3 € per 500 g; lard 2,50 € for 1 lb');
    const { sums, unpriced } = oilsCost(
      [
        { id: [...prices.keys()][0]!, grams: 500 },
        { id: [...prices.keys()][1]!, grams: 250 },
        { id: 'castor', grams: 50 },
      ],
      prices,
    );
    expect(sums).toEqual([{ amount: 5.5, currency: 'EUR' }]);
    expect(unpriced).toEqual(['castor']);
    expect([...prices.values()][2]).toMatchObject({ amount: 2.5, grams: 453.59237 });
  });

  test.each(['olive -8 €/kg', 'olive', '8 €/kg', 'olive 8 €', 'olive 8 € per cup', 'olive €', ''])(
    'of oils is not in "%s"',
    text => {
      expect(() => parseOilPrices(text)).toThrow(Refusal);
    },
  );

  test('of more oils than any batch has is refused, and what is refused is quoted', () => {
    const many = (count: number) => Array.from({ length: count }, () => 'olive oil 8 €/kg').join('; ');
    expect(parseOilPrices(many(30)).size).toBe(1);
    for (const [text, quoted] of [
      [many(31), 'olive oil 8 €/kg'],
      ['olive oil 8 €/kg; olive 8 €', 'olive 8 €'],
    ] as const)
      expect(() => parseOilPrices(text)).toThrow(
        expect.objectContaining({
          id: 'oil-price-unreadable',
          values: { text: expect.stringContaining(quoted) },
        }),
      );
  });
});
