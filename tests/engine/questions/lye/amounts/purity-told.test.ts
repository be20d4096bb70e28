import { expect, test } from 'vitest';
import { purityTold } from '../../../../../src/engine/questions/lye/amounts/purity-told.ts';

test('how pure the alkali is stands in the option of either', () => {
  expect(purityTold({ lye: 'KOH 90%' })).toEqual({ alkali: 'KOH', percent: 90 });
  expect(purityTold({ lye: 'KOH' })).toBeUndefined();
  expect(purityTold({ purity: 98 })).toEqual({ alkali: 'NaOH', percent: 98 });
  // Lye water has a strength, and both alkalis have shares: neither is a purity.
  expect(purityTold({ lye: '50% lye solution' })).toBeUndefined();
  expect(purityTold({ lye: 'NaOH 40% + KOH 60%' })).toBeUndefined();
  expect(purityTold({})).toBeUndefined();
});
