import { describe, expect, test } from 'vitest';
import { colourantById, colourants } from '../../../src/engine/colourants/catalogue.ts';
import { TYPICAL_BATTER } from '../../../src/engine/dispersion/batter.ts';
import { answerDose } from '../../../src/engine/dosing/answer.ts';
import { US_CUP_ML } from '../../../src/engine/quantities/units.ts';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import { checkColourant } from '../../../src/engine/stability/check-colourant.ts';
import { legalShareOf, otherUseOf, underLaw } from '../../../src/engine/stability/legal-share.ts';
import { euListings, usListings } from '../../../src/engine/stability/listings.ts';
import { substances } from '../../../src/engine/stability/substances/index.ts';

const componentsOf = (list: string) => checkIngredients(list).components;
const idsOf = (list: string) => componentsOf(list).map(({ id }) => id);

describe('shares that the law allows', () => {
  // 21 CFR 74.2208(c): D&C Green No. 8 in amounts not exceeding 0.01 percent by weight of the finished cosmetic product.
  test('D&C Green 8: 0.01 %', () => {
    expect(legalShareOf(componentsOf('D&C Green No. 8'))).toMatchObject({ share: 0.0001, law: 'us' });
    expect(legalShareOf(componentsOf('CI 59040'))).toMatchObject({ share: 0.0001 });
  });

  // Annex IV column g, export of May 2024: entries 9 (CI 12085, 3 %), 74 (CI 45350, 6 %), 67 (CI 42520, 5 ppm).
  test('Annex IV: the most as printed; a limit for lips is none for soap', () => {
    expect(legalShareOf(componentsOf('CI 12085'))?.share).toBeCloseTo(0.03, 12);
    expect(legalShareOf(componentsOf('CI 45350'))?.share).toBeCloseTo(0.06, 12);
    expect(legalShareOf(componentsOf('CI 42520'))?.share).toBeCloseTo(5e-6, 15);
    expect(legalShareOf(componentsOf('CI 45396'))).toBeUndefined();
    expect(legalShareOf(componentsOf('Mica, Titanium Dioxide'))).toBeUndefined();
  });

  test('a stated part of a powder dilutes the limit', () => {
    expect(legalShareOf(componentsOf('Mica 90%, D&C Green 8 10%'))?.share).toBeCloseTo(0.001, 12);
  });

  test('no dose of a powder that holds Green 8 puts more than 0.01 % into the finished bar', () => {
    const dye = colourantById('red-40-dye')!;
    const capped = underLaw(dye, componentsOf('D&C Green 8'));
    for (const cups of [0.5, 1, 2, 10])
      for (const name of ['tint', 'pastel', 'medium', 'full'] as const) {
        const [dose] = answerDose({
          portion: { of: 'batter', measure: 'volume', millilitres: cups * US_CUP_ML },
          colourants: [{ colourant: capped, strength: { by: 'name', name } }],
        }).doses;
        // 15 % of a bar's mass may dry away (common practice).
        const bar = cups * US_CUP_ML * TYPICAL_BATTER.gramsPerMillilitre * 0.85;
        expect(dose!.grams.high / bar).toBeLessThanOrEqual(0.0001 * (1 + 1e-9));
        expect(dose!.grams.high).toBeGreaterThan(0);
      }
  });

  test('a colour without a limit keeps its dose, and the catalogue holds none that the law cuts', () => {
    for (const colourant of colourants)
      expect(underLaw(colourant, checkColourant(colourant).components).dose).toEqual(colourant.dose);
  });

  test('a heavier spoon holds less by volume', () => {
    const dye = colourantById('red-40-dye')!;
    const usual = underLaw(dye, componentsOf('D&C Green 8')).dose.ceilingTspPerCup;
    expect(underLaw(dye, componentsOf('D&C Green 8'), 2).dose.ceilingTspPerCup).toBeLessThan(usual);
  });
});

describe('colours listed for another use', () => {
  // 21 CFR 73.2125 (dentifrices), 73.2190 (hair), 73.2500 (nail polish), 73.2995, 74.2052, 74.2053.
  test.each([
    ['CI 75810', 'teeth'],
    ['CI 77820', 'nails'],
    ['CI 77975', 'novelty-make-up'],
    ['D&C Black No. 2', 'make-up'],
    ['D&C Black No. 3', 'eyes'],
  ])('%s: %s', (list, use) => {
    expect(componentsOf(list).map(otherUseOf)).toEqual([use]);
  });

  test('every listing that leaves soap out has its use named', () => {
    const elsewhere = usListings.filter(({ external }) => external !== 'yes').map(({ section }) => section);
    expect(elsewhere).toEqual(['73.2125', '73.2190', '73.2500', '73.2995', '74.2052', '74.2053']);
    for (const list of ['Mica', 'CI 77007', 'FD&C Blue No. 1', 'Iron Oxides'])
      expect(componentsOf(list).map(otherUseOf)).toEqual([undefined]);
  });
});

describe('every listed name finds itself and nothing else', () => {
  const numbersOf = (list: string) =>
    new Set(componentsOf(list).flatMap(({ ci }) => (ci === undefined ? [] : ci.split(', '))));
  const base = (number: string) => number.split(':')[0] ?? '';

  test.each(
    usListings.filter(({ ci }) => ci.length > 0).map(({ section, name, ci }) => [section, name, ci] as const),
  )('21 CFR %s: %s', (section, name, ci) => {
    const found = [...numbersOf(name)].map(base);
    expect(found.length).toBeGreaterThan(0);
    const own = new Set(
      substances.filter(({ us }) => us?.includes(section)).flatMap(one => one.ci.map(base)),
    );
    expect(found.filter(number => !ci.map(base).includes(number) && !own.has(number))).toEqual([]);
    expect(checkIngredients(name).unknown).toEqual([]);
  });

  test('US listings without a number are found by name', () => {
    for (const { name, section } of usListings.filter(({ ci }) => ci.length === 0)) {
      const [only, more] = componentsOf(name);
      expect(more).toBeUndefined();
      const us = substances.find(({ id }) => id === only?.id)?.us;
      expect(us).toContain(section);
    }
  });

  test.each(euListings.filter(({ ci }) => ci.length > 0).map(({ entry, ci }) => [entry, ci] as const))(
    'Annex IV entry %s: %s',
    (_, ci) => {
      for (const number of ci) {
        const found = [...numbersOf(`CI ${number}`)].map(base);
        expect(found).toContain(base(number));
      }
    },
  );

  test('every name of every substance finds that substance, or one with the same number or label name', () => {
    const strayed = substances.flatMap(substance =>
      substance.names.flatMap(name => {
        const found = componentsOf(name);
        const same = found.every(({ id, ci }) => {
          const other = substances.find(one => one.id === id)!;
          const numbers = (ci ?? '').split(', ').map(base);
          return (
            id === substance.id ||
            // Dyes of resins stand in our table without a number, in Annex IV with one: one name, one dye.
            other.names[0].toLowerCase() === name.toLowerCase() ||
            other.names[0] === substance.names[0] ||
            substance.ci.map(base).some(number => numbers.includes(number))
          );
        });
        return found.length > 0 && same ? [] : [`${substance.id}: ${name} -> ${idsOf(name).join('+')}`];
      }),
    );
    expect(strayed).toEqual([]);
  });

  test('substances once taken for another are themselves', () => {
    expect(idsOf('strontium aluminate')).toEqual(['strontium-aluminate']);
    expect(idsOf('aluminato de estroncio')).toEqual(['strontium-aluminate']);
    expect(idsOf('zinc sulfide')).toEqual(['zinc-sulfide-luminescent']);
    expect(idsOf('boron nitride')).toEqual(['boron-nitride']);
    expect(idsOf('Maltodextrin')).toEqual(['maltodextrin']);
    expect(idsOf('Ext. D&C Yellow No. 7')).toEqual(['ext-yellow-7']);
    expect(idsOf('D&C Yellow No. 7')).toEqual(['yellow-7']);
    expect(idsOf('CI 10316')).toEqual(['ext-yellow-7']);
  });
});
