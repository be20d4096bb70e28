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
  // An ounce of 28.349523125 g is shown as 28.35 g, two as 56.7, half a one as 14.17 or 14.18: ounces again.
  ['en', '56.7 g left after taking 14.18 g', '2 oz (56.7 g) left after taking 0.5 oz (14.18 g)'],
  ['en', '14.17 g, 42.52 g, 141.7 g', '0.5 oz (14.17 g), 1.5 oz (42.52 g), 5 oz (141.7 g)'],
  ['en', '2 tsp, about 4 g (2.8 to 5.2 g)', '2 tsp, about 0.14 oz (4 g), 0.1 to 0.18 oz'],
  ['es', 'unos 4 g (de 2,8 a 5,2 g)', 'unos 0,14 oz (4 g), de 0,1 a 0,18 oz'],
  ['en', 'between 4 to 12 g', 'between 0.14 to 0.42 oz (4 to 12 g)'],
  // What may be enough for such a scale is told on it.
  ['en', '2 to 5 g', '0.07 to 0.18 oz (2 to 5 g)'],
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
  'about 2.5 g (1.9 to 3.1 g)',
  '1 to 2 g',
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
