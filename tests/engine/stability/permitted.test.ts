import { describe, expect, test } from 'vitest';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import { permittedUses } from '../../../src/engine/stability/permitted.ts';
import { substances } from '../../../src/engine/stability/substances/index.ts';

const usesOf = (list: string) => {
  const [component] = checkIngredients(list).components;
  if (component === undefined) throw new Error(`nothing recognised in ${list}`);
  return permittedUses(component);
};
const usSections = (list: string) =>
  usesOf(list).us.map(use => (use.status === 'listed' ? use.listing.section : use.status));
const euEntries = (list: string) =>
  usesOf(list).eu.map(use => (use.status === 'listed' ? use.listing.entry : use.status));

describe('what the law lists', () => {
  test.each([
    ['Iron Oxides (CI 77491)', ['73.2250'], ['135']],
    ['Ultramarine Blue', ['73.2725'], ['120']],
    ['Chromium Oxide Greens', ['73.2327'], ['129']],
    ['Titanium Dioxide', ['73.2575'], ['143']],
    ['Ferric Ferrocyanide', ['73.2299'], ['138']],
    ['D&C Red No. 30 Aluminum Lake', ['74.2330'], ['100']],
    ['Red 7 Lake', ['74.2307'], ['27']],
    ['Carmine', ['73.2087'], ['115']],
    ['Charcoal Powder', ['not-listed'], ['128']],
    ['Copper Phthalocyanine', ['not-listed'], ['105']],
    ['Polyester-3', ['not-listed'], ['no-row']],
    ['Mica', ['73.2496'], ['no-colour']],
    ['Glycerin', ['no-colour'], ['no-colour']],
    ['Aluminum Powder', ['73.2645'], ['117']],
    ['Beetroot Red', ['not-listed'], ['148']],
    ['CI 12120', ['no-row'], ['10']],
    ['Basic Blue 26', ['not-listed'], ['69']],
    ['Acid Red 52', ['not-listed'], ['71']],
  ])('%s: US %j, EU %j', (list, us, eu) => {
    expect(usSections(list)).toEqual(us);
    expect(euEntries(list)).toEqual(eu);
  });

  test('a lake is marked as one, and must be certified', () => {
    expect(usesOf('Blue 1 Lake').us).toEqual([
      expect.objectContaining({
        status: 'listed',
        lake: true,
        listing: expect.objectContaining({ certified: true }),
      }),
    ]);
  });

  test('every section a substance claims stands in our copy of the list', () => {
    const lost = substances
      .filter(({ us }) => Array.isArray(us) && us.length > 0)
      .filter(({ id }) => permittedUses({ id, as: id }).us.some(({ status }) => status !== 'listed'));
    expect(lost.map(({ id }) => id)).toEqual([]);
  });
});
