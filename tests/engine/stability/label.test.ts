import { describe, expect, test } from 'vitest';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import { labelLine } from '../../../src/engine/stability/label.ts';

const parts = (list: string) => checkIngredients(list).components;

describe('the label line of a bar', () => {
  test.each([
    ['Mica, Titanium Dioxide, D&C Red No. 30 Aluminum Lake', 'us', 'Mica, Titanium Dioxide, Red 30 Lake'],
    ['Mica, Titanium Dioxide, D&C Red No. 30 Aluminum Lake', 'eu', 'Mica, CI 77891, CI 73360'],
    ['azul ultramar; óxido de cromo verde', 'us', 'Ultramarines, Chromium Oxide Greens'],
    ['azul ultramar; óxido de cromo verde', 'eu', 'CI 77007, CI 77288'],
    ['Iron Oxides (CI 77491), Iron Oxides (CI 77499)', 'us', 'Iron Oxides'],
    ['Iron Oxides (CI 77491), Iron Oxides (CI 77499)', 'eu', 'CI 77491, CI 77499'],
    ['Calcium Sodium Borosilicate 80%, Tin Oxide', 'eu', 'Calcium Sodium Borosilicate, Tin Oxide'],
    ['Red 7 Lake', 'eu', 'CI 15850:1'],
    ['Glycerin, Titanium Dioxide', 'us', 'Titanium Dioxide'],
  ] as const)('%s (%s): %s', (list, law, line) => {
    expect(labelLine(parts(list), law).line).toBe(line);
  });

  test('the heaviest comes first when masses are known', () => {
    const [mica, white] = parts('Mica, Titanium Dioxide');
    if (mica === undefined || white === undefined) throw new Error('both are known');
    const weighed = [
      { ...mica, grams: 1.2 },
      { ...white, grams: 3.4 },
    ];
    expect(labelLine(weighed, 'us').line).toBe('Titanium Dioxide, Mica');
  });

  test('what a powder only may contain is asked about, not printed', () => {
    expect(labelLine(parts('Mica, +/- Carmine'), 'eu')).toEqual({
      line: 'Mica',
      names: ['Mica'],
      unsure: ['CI 75470'],
    });
  });

  test('metal gets no label: it must not be in the bar', () => {
    expect(() => labelLine(parts('Mica, Copper Powder'), 'us')).toThrow('metal-never-in-lye');
  });
});
