import { describe, expect, test } from 'vitest';
import { additiveById, parseAdditives } from '../../../src/engine/batch/additives/additives.ts';
import { parseLiquids } from '../../../src/engine/batch/liquids/liquid-list.ts';
import { planBatch } from '../../../src/engine/batch/planning/plan.ts';
import { wordsIn } from '../../../src/words/index.ts';
import { asked, refusalOf } from './asked.ts';

const idOf = (text: string) => parseLiquids(text)[0]?.id;
const warned = (liquid: string) => planBatch(asked({ liquid })).warnings;
const warningOf = (liquid: string, id: string) => warned(liquid).find(one => one.id === id)?.values;

describe('liquids that are not what they look like', () => {
  // Witch hazel of the pharmacopoeia (USP): 14 to 15 % alcohol by volume.
  test.each(['witch hazel', 'half witch hazel', 'hamamelis', 'agua de hamamelis'])(
    '%s holds alcohol: boiled off first',
    liquid => {
      expect(idOf(liquid)).toBe('witch-hazel');
      expect(warningOf(liquid, 'boil-off-alcohol')).toMatchObject({ percent: 14, fizzes: false });
    },
  );

  test.each(['kombucha', 'kombucha 50%'])('%s is boiled: alcohol and gas', liquid => {
    expect(warningOf(liquid, 'boil-off-alcohol')).toMatchObject({ percent: 1, fizzes: true });
    expect(warningOf(liquid, 'additive-heats')).toBeDefined();
  });

  // Mean salinity of the sea: 35 g a kilogram.
  test('sea water brings 35 g of salt a kilogram, and says so', () => {
    const [one] = planBatch(asked({ liquid: 'sea water' })).jug.liquids;
    expect(one?.waterGrams).toBeCloseTo(0.965 * (one?.grams ?? 0), 6);
    const salt = warningOf('sea water', 'liquid-salt') as { grams: number; percent: number };
    expect(salt.grams).toBeCloseTo(0.035 * (one?.grams ?? 0), 6);
    expect(salt.percent).toBeCloseTo(salt.grams / 10, 6);
    expect(idOf('agua de mar')).toBe('sea-water');
    expect(idOf('salmuera')).toBe('brine');
    expect(warningOf('brine', 'liquid-salt')).toMatchObject({ additive: 'brine' });
  });

  test.each(['rose water', 'lavender hydrosol', 'agua de rosas', 'hidrolato de lavanda'])(
    '%s: read the label',
    liquid => {
      expect(idOf(liquid)).toBe('hydrosol');
      expect(warningOf(liquid, 'liquid-read-label')).toBeDefined();
    },
  );

  test.each([
    ['coconut water', 'coconut-water'],
    ['agua de coco', 'coconut-water'],
    ['orange juice', 'fruit-juice'],
    ['zumo de naranja', 'fruit-juice'],
    ['jugo de piña', 'fruit-juice'],
    ['coconut milk', 'coconut-milk'],
    ['lemon juice', 'lemon-juice'],
  ])('%s is %s: sugar heats, it meets lye frozen', (liquid, id) => {
    expect(idOf(liquid)).toBe(id);
    if (id === 'lemon-juice') return;
    const ids = warned(liquid).map(one => one.id);
    expect(ids).toContain('additive-heats');
    expect(ids).toContain('milk-keep-cold');
  });

  test('the acid of a juice or kombucha is counted at its low end: what is not there would leave lye', () => {
    // Apple juice about 0.5 % malic acid (134.09 g/mol, two protons), vinegar acid of kombucha 0.4 % and more.
    expect(additiveById('fruit-juice').acid).toBeLessThanOrEqual((2 * 0.005) / 134.087 + 1e-12);
    expect(additiveById('fruit-juice').acid).toBeGreaterThan(0);
    expect(additiveById('kombucha').acid).toBeLessThanOrEqual(0.004 / 60.052 + 1e-12);
    expect(additiveById('kombucha').acid).toBeGreaterThan(0);
  });
});

describe('what is never silent', () => {
  test.each(['vodka', 'half rum', 'aguardiente', 'ron 50%', 'rubbing alcohol', 'isopropyl alcohol 20 g'])(
    '%s in place of water is refused',
    liquid => {
      expect(refusalOf(() => parseLiquids(liquid)).id).toBe('liquid-is-spirit');
    },
  );
  test.each(['vodka 20 g', 'alcohol 10 g', 'whisky 2%', 'tequila 10 g'])(
    '%s as an additive is refused',
    text => {
      expect(refusalOf(() => parseAdditives(text)).id).toBe('liquid-is-spirit');
    },
  );
  test.each([
    'water 300 g',
    '300 g of water',
    'agua 300 g',
    'goat milk 100 g, water 200 g',
    'agua destilada 200 ml',
  ])('%s: the weight of water is no share, and is told where it goes', liquid => {
    expect(refusalOf(() => parseLiquids(liquid)).id).toBe('liquid-water-weight');
  });
  test.each(['half water, half goat milk', 'goat milk 30%, water 70%', 'goat milk 30%, water'])(
    '%s keeps its shares',
    liquid => {
      expect(parseLiquids(liquid).map(({ id }) => id)).toEqual(['goat-milk']);
    },
  );
});

test('each is spoken of by name in both languages', () => {
  for (const language of ['en', 'es'] as const) {
    const { jug } = wordsIn(language).batch;
    for (const id of ['witch-hazel', 'kombucha', 'coconut-water', 'fruit-juice', 'sea-water'] as const)
      expect(jug.liquids[id].length).toBeGreaterThan(4);
    const said = jug.noWater({ inJug: [{ id: 'goat-milk', mass: '331.8 g' }], frozen: true });
    expect(said).toContain('331.8 g');
    expect(said).not.toMatch(/(?<![\d.])0 g/u);
    expect(jug.noWater({ inJug: [], frozen: false })).not.toContain('0');
  }
});
