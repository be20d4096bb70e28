import { expect, test } from 'vitest';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { barsAsked, enoughAsked } from '../../../../src/engine/questions/plans/enough-asked.ts';

/* Whether a jar is enough for a batch, and a colour for so many bars, as makers ask it (from memory): the lighter thing is never guessed, the weight beside the name is the jar's. */

const MICA = { colourant: 'blue mica', has: 120, grams: 1500, of: 'batter' };
test.each([
  ['120 g of blue mica in a tub, batch is 1.5 kg, enough?', MICA],
  ['blue mica 120 g, batch of 1.5 kg of oils, is it enough?', { ...MICA, of: 'oils' }],
  ['batch of 1.5 kg, I have 120 g of blue mica, enough?', MICA],
  ['1.5 kg batch. blue mica: 120 g. enough?', MICA],
  [
    'tengo 50 g de mica azul, lote de 2 kg de aceites, me alcanza?',
    { colourant: 'mica azul', has: 50, grams: 2000, of: 'oils' },
  ],
  ['I have 20 g of blue mica, batch 100 g, enough?', { ...MICA, has: 20, grams: 100 }],
  ['I have 20 g of blue mica, batch 90 g, enough?', undefined],
  ['20 g of blue mica for 1 kg batter', undefined],
  ['20 g of blue mica and pink mica for 1 kg batter, enough?', undefined],
  ['20 g of blue mica, enough?', undefined],
  ['lye: 20 g of blue mica for 1 kg, enough?', undefined],
])('%s', (question, asked) => expect(enoughAsked(wordsOf(question))).toEqual(asked));

test.each([
  ['how much blue mica for 12 bars', 12],
  ['how much blue mica for 1 bar', 1],
  ['how much blue mica for 12 usual bars', 12],
  ['cuánta mica azul para 10 pastillas', 10],
  ['how much blue mica for 0 bars', undefined],
  ['blue mica for 12 bars', undefined],
  ['how much blue mica and pink mica for 12 bars', undefined],
  ['how much blue mica for 12 bars of 100 g', undefined],
  ['how much for 12 bars', undefined],
])('%s: %s', (question, bars) => expect(barsAsked(wordsOf(question))?.bars).toBe(bars));
