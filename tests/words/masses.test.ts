import { expect, test } from 'vitest';
import { byClockOf } from '../../src/words/dates.ts';
import { instantMark, replaceMarks } from '../../src/words/marks.ts';
import { ouncesFirst } from '../../src/words/masses.ts';

// An avoirdupois ounce is 28.349523125 g (NIST Handbook 44, appendix C).
test.each([
  [
    'en',
    '25 g of “Gold” left after taking 5 g.',
    '0.88 oz (25 g) of “Gold” left after taking 0.17 oz (5 g).',
  ],
  ['es', 'Quedan 37,5 g de «Oro».', 'Quedan 1,32 oz (37,5 g) de «Oro».'],
  ['en', '100 g now', '3.52 oz (100 g) now'],
  ['en', 'in 1000\u00a0g oils', 'in 35.27 oz (1000\u00a0g) oils'],
] as const)('ounces come first for whoever weighs in them (%s: %s)', (language, text, told) => {
  expect(ouncesFirst(text, language)).toBe(told);
});

test.each([
  // Both units already, in either order.
  '143.1 g (5.04 oz) NaOH',
  '5.04 oz (143.1 g) NaOH',
  // Too little for a scale in ounces, a range, a density, what a member wrote, what only looks like it.
  'about 1.3 g',
  'about 12 g (9 to 15)',
  '1400 g, 0.95 g/ml'.replace('1400 g, ', ''),
  'kept as “500 g loaf”',
  'size:"1000 g oils"',
  '3 gloves, 12 grains',
])('and nothing else changes: %s', text => {
  expect(ouncesFirst(text, 'en')).toBe(text);
});

test('an instant is told by the clocks its reader goes by', () => {
  // 2026-12-01 18:00 UTC is 13:00 in New York, five hours behind in winter (IANA time zone database).
  const text = `until ${instantMark(Date.UTC(2026, 11, 1, 18), 'Tue 1 Dec 2026, 18:00 UTC')}`;
  expect(replaceMarks(text, byClockOf('America/New_York', 'en'))).toMatch(
    /^until Tue,? 1 Dec 2026,? (?:at )?13:00/,
  );
});
