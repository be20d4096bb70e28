import { expect, test } from 'vitest';
import { MEASURES } from '../../../../src/engine/quantities/units.ts';
import { leadingAmount } from '../../../../src/engine/text/amounts/leading-amount.ts';

// A metric cup is 250 ml, one of the United States 236.588 ml (NIST Handbook 44, appendix C).
test('the same words are read by the cups of whoever asks, whoever asked before', () => {
  const read = (measures?: typeof MEASURES.us) => leadingAmount('1 cup of the blue', measures)?.amount;
  expect(read()).toMatchObject({ measure: 'volume', millilitres: expect.closeTo(236.588, 2) });
  expect(read(MEASURES.metric)).toMatchObject({ measure: 'volume', millilitres: 250 });
  expect(read()).toMatchObject({ measure: 'volume', millilitres: expect.closeTo(236.588, 2) });
});
