import { describe, expect, test } from 'vitest';
import { additiveById } from '../../src/engine/batch/additives/additives.ts';
import { hydroxideDemand, hydroxideIn, superfatPercent, weighLye } from '../../src/engine/batch/lye/lye.ts';
import { waterGrams } from '../../src/engine/batch/lye/water.ts';
import {
  FATTY_ACID_MOLAR_MASS,
  KOH_MOLAR_MASS,
  meanMolarMass,
  NAOH_MOLAR_MASS,
  saponificationFromProfile,
} from '../../src/engine/batch/oils/fatty-acids.ts';
import { oilById } from '../../src/engine/batch/oils/find-oil.ts';
import { OILS } from '../../src/engine/batch/oils/index.ts';
import type { FattyAcid, Oil } from '../../src/engine/batch/oils/oil.ts';
import { oilOf } from '../engine/batch/asked.ts';

/** Saponification values, mg KOH/g. Codex Alimentarius CXS 210-1999 Table 2, CXS 33-1981, CXS 211-1999. */
const CODEX: readonly (readonly [id: string, low: number, high: number])[] = [
  ['palm', 190, 209],
  ['palm-kernel', 230, 254],
  ['palm-olein', 194, 202],
  ['palm-stearin', 193, 205],
  ['coconut', 248, 265],
  ['babassu', 245, 256],
  ['sunflower', 187, 194],
  ['safflower', 186, 198],
  ['canola', 182, 193],
  ['soybean', 189, 195],
  ['corn', 187, 195],
  ['grapeseed', 188, 194],
  ['sesame', 186, 195],
  ['cottonseed', 189, 198],
  ['peanut', 187, 196],
  ['mustard', 168, 184],
  ['olive', 184, 196],
  ['olive-pomace', 182, 193],
  ['lard', 192, 203],
  ['tallow', 190, 202],
];

describe('Codex Alimentarius: named vegetable oils, olive oils, animal fats', () => {
  test.for(CODEX)('%s has the range of the standard', ([id, low, high]) => {
    const { saponification } = oilById(id);
    expect([saponification.low, saponification.high]).toEqual([low, high]);
  });
});

describe('saponification value from fatty acids (the calculation of AOCS Cd 3a-94)', () => {
  // Handbook values of the pure triglycerides: 3 x 56105.3 over molar masses 885.45, 891.50, 639.01, 807.34.
  test.for<[FattyAcid, number]>([
    ['C18:1', 190.1],
    ['C18:0', 188.8],
    ['C12:0', 263.4],
    ['C16:0', 208.5],
  ])('a triglyceride of %s alone', ([acid, value]) => {
    expect(saponificationFromProfile({ [acid]: 100 })).toBeCloseTo(value, 1);
  });

  // AOCS Cd 3a-94: what takes no lye counts in the fat's weight and not in its value.
  test('a tenth that takes no lye leaves nine tenths of the value', () => {
    const all = saponificationFromProfile({ 'C18:1': 100 });
    expect(saponificationFromProfile({ 'C18:1': 100 }, 0.1)).toBeCloseTo(0.9 * all, 6);
  });

  test.for(OILS.map(oil => [oil.id, oil] as const))(
    'typical value of %s lies inside its range',
    ([, oil]) => {
      const { low, typical, high } = oil.saponification;
      expect(typical).toBeGreaterThanOrEqual(low);
      expect(typical).toBeLessThanOrEqual(high);
    },
  );

  test('a typical value is not the middle of the range: almond 190, not 195', () => {
    expect(oilById('almond').saponification.typical).toBeCloseTo(190, 0);
  });
});

/** g iodine on 100 g of triglyceride with that many double bonds; I2 is 253.81 g/mol (CIAAW). */
function iodineOf(oil: Oil): number {
  const bonds = (acid: string) => Number(/:(\d)/u.exec(acid)![1]);
  const entries = Object.entries(oil.profile!) as [FattyAcid, number][];
  const grams = entries.reduce((sum, [, percent]) => sum + percent, 0);
  const moles = entries.reduce(
    (sum, [acid, percent]) => sum + (bonds(acid) * percent) / FATTY_ACID_MOLAR_MASS[acid],
    0,
  );
  const glyceryl = oil.oilClass === 'fatty-acid' ? 0 : 38.049 / 3;
  const mean = meanMolarMass(oil.profile!);
  return ((100 * 253.81 * moles) / grams) * (mean / (mean + glyceryl));
}

describe('two independent columns of the standards agree', () => {
  const both = OILS.filter(({ profile, iodine, id }) => profile && iodine && id !== 'hydrogenated-soybean');
  test.for(both.map(oil => [oil.id, oil] as const))(
    'iodine value of %s follows from its fatty acids, within a tenth of the range',
    ([, oil]) => {
      const { low, high } = oil.iodine!;
      expect(iodineOf(oil)).toBeGreaterThanOrEqual(low * 0.9);
      expect(iodineOf(oil)).toBeLessThan(high * 1.1);
    },
  );

  test.for(OILS.filter(({ profile }) => profile).map(oil => [oil.id, oil] as const))(
    'the fatty acids of %s add up to a whole',
    ([, oil]) => {
      const sum = Object.values(oil.profile!).reduce((total, percent) => total + percent, 0);
      expect(Math.abs(sum - 100)).toBeLessThan(2.6);
    },
  );
});

test('one gram of potassium hydroxide is 0.7129 g of sodium hydroxide (CIAAW atomic weights, 39.997 : 56.105)', () => {
  expect(NAOH_MOLAR_MASS / KOH_MOLAR_MASS).toBeCloseTo(0.7129, 4);
});

describe('a lye calculation by hand', () => {
  // 300 g at 257, 500 g at 190, 200 g at 199 mg KOH/g:
  //   77 100 + 95 000 + 39 800 = 211 900 mg KOH = 211.9 g
  //   211.9 x 39.9968 / 56.1053 = 151.061 g NaOH for all of it
  //   less 5 %: 143.508 g; on a 0.1 g scale 143.5 g, on a 1 g scale 143 g
  //   33 % lye: 143.508 x 67 / 33 = 291.365 g water
  const oils = [
    { oil: oilOf('coconut', 257), grams: 300 },
    { oil: oilOf('olive', 190), grams: 500 },
    { oil: oilOf('palm', 199), grams: 200 },
  ];
  const demand = hydroxideDemand(oils).typical;

  test('sodium hydroxide', () => {
    const [part] = weighLye({ kind: 'NaOH', naohPurity: 1 }, demand * 0.95, 0.1);
    expect(part!.exactGrams).toBeCloseTo(143.508, 2);
    expect(part!.grams).toBe(143.5);
    expect(waterGrams({ by: 'lye-strength', percent: 33 }, part!.exactGrams, 1000)).toBeCloseTo(291.365, 2);
  });

  test('rounded down to a 1 g scale, superfat becomes 1 - 143 / 151.061 = 5.336 %', () => {
    const parts = weighLye({ kind: 'NaOH', naohPurity: 1 }, demand * 0.95, 1);
    expect(parts[0]!.grams).toBe(143);
    expect(superfatPercent(hydroxideIn(parts), demand)).toBeCloseTo(5.336, 2);
  });

  test('potassium hydroxide of 90 %: 211.9 x 0.95 / 0.9 = 223.672 g', () => {
    const [part] = weighLye({ kind: 'KOH', kohPurity: 0.9 }, demand * 0.95, 0.1);
    expect(part!.exactGrams).toBeCloseTo(223.672, 2);
  });

  test('both, a tenth of the work by potassium: 129.157 g NaOH and 20.131 g KOH, pure', () => {
    const parts = weighLye(
      { kind: 'both', kohShare: 0.1, naohPurity: 1, kohPurity: 1 },
      demand * 0.95,
      0.001,
    );
    expect(parts[0]!.exactGrams).toBeCloseTo(129.157, 2);
    expect(parts[1]!.exactGrams).toBeCloseTo(20.1305, 2);
  });
});

test('a gram of anhydrous citric acid eats 0.6246 g of sodium hydroxide: three of 39.997 on 192.12', () => {
  expect(additiveById('citric-anhydrous').acid * 39.9968).toBeCloseTo(0.6246, 3);
});

test('a gram of the monohydrate eats 0.571 g: three of 39.997 on 210.14; untold, it is what is counted', () => {
  expect(additiveById('citric-acid').acid * 39.9968).toBeCloseTo(0.571, 3);
});

test('European Pharmacopoeia: yellow beeswax saponifies at 87 to 104, wool fat at 90 to 105', () => {
  expect(oilById('beeswax').saponification).toMatchObject({ low: 87, high: 104 });
  expect(oilById('lanolin').saponification).toMatchObject({ low: 90, high: 105 });
});
