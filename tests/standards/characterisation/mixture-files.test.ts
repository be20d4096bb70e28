import { expect, test } from 'vitest';
import { parseMixtures } from './mixture-files.ts';

const spectra = [
  'Name\t400\t500\t600',
  'A1_w\t80\t82\t84',
  'A1_b\t5\t5\t5',
  'A1_ow\t40\t50\t60',
  'A1_ob\t30\t40\t50',
  'A2_ow\t20\t\t30',
  'A3_ow\t20\t25\t30',
].join('\n');

test('a folder of measured mixtures is read as shares of 1 and reflectances of 1', () => {
  const recipes = ['A1\tRed-White-Black|25-75-0', 'A2\tRed|100', 'A3\tRed-White|9.5-90.5', ''];
  const { films, wavelengths } = parseMixtures(recipes.join('\r\n'), spectra);
  expect(wavelengths).toEqual([400, 500, 600]);
  expect(films.map(({ code }) => code)).toEqual(['A1', 'A3']);
  expect([...films[0]!.shares]).toEqual([
    ['Red', 0.25],
    ['White', 0.75],
  ]);
  expect(films[0]).toMatchObject({ overWhite: [0.4, 0.5, 0.6], overBlack: [0.3, 0.4, 0.5] });
});

test('a film without its own card borrows one, and one side alone is enough', () => {
  const { films } = parseMixtures('A3\tRed-White|9.5-90.5', spectra);
  expect(films[0]?.white).toEqual([0.8, 0.82, 0.84]);
  expect(films[0]?.overBlack).toBeUndefined();
  expect(films[0]?.shares.get('Red')).toBeCloseTo(0.095, 9);
});
