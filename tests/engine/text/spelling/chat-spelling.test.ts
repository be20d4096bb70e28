import { expect, test } from 'vitest';
import { parseOils } from '../../../../src/engine/batch/oils/lists/oil-list.ts';
import { parsePremix } from '../../../../src/engine/dosing/parse-premix.ts';
import { parsePortion } from '../../../../src/engine/quantities/told/portion.ts';
import { chatSpelt } from '../../../../src/engine/text/spelling/chat-spelling.ts';

/** From memory, as makers write on phones in either language. */
test.each([
  ['qiero un kilo d sebo xfa', 'quiero un kilo de sebo por favor'],
  ['pa q qede chiqito', 'para que quede chiquito'],
  ['xq salio cafe', 'por que salio cafe'],
  ['menos rojo pq salio cafe', 'menos rojo pq salio cafe'],
  ['salio cafe xq sera', 'salio cafe por que sera'],
  ['x eso y x dentro', 'por eso y por dentro'],
  ['oxido d fierro', 'oxido de hierro'],
  ['how much lie for 2 lb lard', 'how much lye for 2 lb lard'],
  ['batter w/ mica w clay', 'batter with mica with clay'],
  ['food die', 'food dye'],
])('%s is meant as %s', (typed, meant) => expect(chatSpelt(typed)).toBe(meant));

test.each([
  // Sizes, signs and names of colours by law keep their letters.
  'a mould of 12 x 8 cm',
  '6 bars x 100 g',
  'D&C red 33',
  'D and C red 33',
  'let it lie flat',
  'does it die in lye',
  "I'd like 2 cups",
  'Iraq clay',
])('%s stays as it is', text => expect(chatSpelt(text)).toBe(text));

test('the readers of amounts take what a chat spells', () => {
  expect(parsePortion('medio kilo d masa')).toEqual({ measure: 'mass', grams: 500, of: 'batter' });
  expect(parseOils('oliva 50%, coco 30% y lo demas manteca d puerco').shares).toMatchObject([
    { oil: { id: 'olive' }, share: 0.5 },
    { oil: { id: 'coconut' }, share: 0.3 },
    { oil: { id: 'lard' }, share: expect.closeTo(0.2, 9) },
  ]);
  const paste = parsePremix('1 d polvo x 3 d aceite');
  expect(paste).toMatchObject({ by: 'spoons', carrier: 'oil' });
  expect(paste.by === 'spoons' && paste.carrierMillilitres / paste.powderMillilitres).toBeCloseTo(3, 9);
});

test.each(['leaf lard', 'pork fat', 'manteca de puerco', 'manteca de chancho', 'manteca de marrano'])(
  '%s is lard (common practice)',
  name => expect(parseOils(`500 g ${name}`).shares).toMatchObject([{ oil: { id: 'lard' }, share: 1 }]),
);
