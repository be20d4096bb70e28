import { describe, expect, test } from 'vitest';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import { readEntries } from '../../../src/engine/stability/entries.ts';
import { identityOf } from '../../../src/engine/stability/identity.ts';
import { labelLine } from '../../../src/engine/stability/label.ts';
import { substanceNamed } from '../../../src/engine/stability/names.ts';
import { recognise } from '../../../src/engine/stability/recognise.ts';

const held = (text: string) =>
  readEntries(text).map(entry => {
    const { substances, unknown } = recognise(entry);
    return [...substances.map(({ id }) => id), ...unknown.map(word => `?${word}`)].join(' ');
  });

// A metal that must never meet lye is not hidden by a slip; a slip that may be two things is asked about.
describe('a name that is spelt wrongly', () => {
  test.each([
    ['titanum dioxide', 'titanium-dioxide'],
    ['titaniun dioxid', 'titanium-dioxide'],
    ['iron oxde', 'iron-oxides'],
    ['ultramarnes', 'ultramarines'],
    ['carmin', 'carmine'],
    ['kaolinn', 'kaolin'],
    ['sillica', 'silica'],
    ['turmric', 'turmeric'],
    ['manganese violt', 'manganese-violet'],
    // Metals, by one letter more.
    ['coper', 'copper'],
    ['alumnium', 'aluminium'],
    ['aluminiun', 'aluminium'],
    ['bronzze', 'bronze'],
    ['latón', 'bronze'],
    // Nearer to two than to one, or of four letters and fewer.
    ['alumna', '?alumna'],
    ['alumin', '?alumin'],
    ['carmne', '?carmne'],
    ['tin oxid', '?tin oxid'],
    ['zinz', '?zinz'],
    ['copr', '?copr'],
    ['mca', '?mca'],
    ['talk', '?talk'],
    // What is told of the bench is no ingredient.
    ['jabón', '?jabón'],
    ['the spoons', '?the spoons'],
  ])('%s: %s', (text, id) => {
    expect(held(text)).toEqual([id]);
  });
  test.each([
    ['CI 99999', ['?CI 99999']],
    ['E999', ['?E999']],
    ['Mica CI 99999', ['mica']],
    ['Talc,5% Mica', ['talc', 'mica']],
  ])('a number that nothing has is nothing: %s', (text, ids) => {
    expect(held(text)).toEqual(ids);
  });
});

test('a certified colour may have a dozen words to its name', () => {
  const eleven = 'Red 40 lake no d c aluminium of calcium certified cosmetic';
  expect(substanceNamed(`${eleven} dye`)?.id).toBe('red-40-lake');
  expect(substanceNamed(`Red 40 lake ${'d c '.repeat(5)}dye`)).toBeUndefined();
});

describe('of several that make one kind', () => {
  // Full doses in teaspoons to the cup: turmeric half of one, nettle one, carbon black an eighth (common practice).
  test.each([
    ['Nettle, Turmeric', 'Turmeric'],
    ['Turmeric, Nettle', 'Turmeric'],
    ['Charcoal, Carbon Black', 'Carbon Black'],
    ['Carbon Black, Charcoal', 'Carbon Black'],
    ['Red 40 Lake, D&C Red No. 30 Lake', 'Red 40 Lake'],
    ['D&C Red No. 30 Lake, Red 40 Lake', 'Red 40 Lake'],
  ])('%s is dosed as %s', (list, one) => {
    const [both, alone] = [checkIngredients(list), checkIngredients(one)];
    expect(both.kind).toBe(alone.kind);
    expect(both.dose!.fullTspPerCup).toBe(alone.dose!.fullTspPerCup);
  });
  test('each has its own light and behaviour, and the powder the weakest of them', () => {
    const { components, light, verdict } = checkIngredients('Mica, Turmeric, Carmine');
    expect(components.map(one => [one.id, one.light])).toEqual([
      ['mica', 'holds'],
      ['turmeric', 'fades'],
      ['carmine', 'fades-slowly'],
    ]);
    expect(light).toBe('fades');
    expect(verdict).toBe('shifts');
    // What colours nothing fades for nobody.
    expect(checkIngredients('Mica, Silica').light).toBe('holds');
  });
});

test('words that nobody knows make no identity longer than a line', () => {
  const strange = Array.from({ length: 40 }, (_, at) => `xyzzyol${String.fromCodePoint(97 + (at % 26))}`);
  const identity = identityOf(checkIngredients(`Mica, ${strange.join(', ')}`))!;
  expect(identity.startsWith('of:mica+?xyzzyol')).toBe(true);
  expect(identity.length).toBeLessThanOrEqual(130);
  // In one order, whatever the label's.
  expect(identityOf(checkIngredients('Mica, Xyzzyol, Abcdol'))).toBe(
    identityOf(checkIngredients('Abcdol, Xyzzyol, Mica')),
  );
});

// 21 CFR 701.3 and article 19 of Regulation (EC) No 1223/2009; a carrier is declared with the soap.
test.each([
  ['jojoba oil, Mica', 'Mica', 'Mica'],
  ['Mica, CI 77491', 'Mica, CI 77491', 'Mica, Iron Oxides'],
  ['Silica, Red 40', 'Silica, CI 16035', 'Silica, Red 40'],
  ['Mica, Mica', 'Mica', 'Mica'],
  ['', '', ''],
])('the label of %s', (list, eu, us) => {
  const { components } = checkIngredients(list);
  expect(labelLine(components, 'eu').line).toBe(eu);
  expect(labelLine(components, 'us').line).toBe(us);
});
