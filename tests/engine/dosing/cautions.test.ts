import { describe, expect, test } from 'vitest';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { answerDose } from '../../../src/engine/dosing/answer.ts';
import { parsePremix } from '../../../src/engine/dosing/parse-premix.ts';
import type { DoseAsked, DoseRequest } from '../../../src/engine/dosing/request.ts';
import { parseStrength } from '../../../src/engine/quantities/strength.ts';
import { parsePortion } from '../../../src/engine/quantities/told/portion.ts';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import { underLaw } from '../../../src/engine/stability/legal-share.ts';
import { batterOf } from '../dispersion/batter-of.ts';

type Asked = Partial<DoseAsked> & { readonly strength?: DoseAsked['strength'] };
const asked = (id: string, more: Asked = {}): DoseAsked => ({
  colourant: colourantById(id)!,
  strength: parseStrength('full'),
  ...more,
});
const answer = (portion: string, colourants: readonly DoseAsked[], more: Partial<DoseRequest> = {}) =>
  answerDose({ portion: parsePortion(portion), colourants, ...more });
const idsOf = (...given: Parameters<typeof answer>) => answer(...given).cautions.map(({ id }) => id);
const caution = (id: string, ...given: Parameters<typeof answer>) =>
  answer(...given).cautions.find(one => one.id === id)?.values;

const BLUE = colourantById('ultramarine-blue')!.names;
const named = (names: object) => ({ colourant: expect.objectContaining(names) });

/** What each kind is known for: its own `origins` say where from. Raw soap and dust come first, whatever it is. */
describe('what to be careful of, all of it and in this order', () => {
  test.for<[string, Asked, readonly string[]]>([
    ['ultramarine-blue', {}, ['dish-test-first', 'lye-thins']],
    ['ultramarine-blue', { dishTest: 'water' }, ['lye-thins']],
    ['ultramarine-blue', { dishTest: 'water', carrier: 'water' }, ['lye-thins']],
    ['ultramarine-blue', { dishTest: 'water', carrier: 'oil' }, ['dish-test-disagrees', 'superfat-rises']],
    // Glycerin wets everything: a dish test has nothing against it, and it is stick-blended.
    ['ultramarine-blue', { dishTest: 'water', carrier: 'glycerin' }, ['stick-blend-thickens']],
    ['ultramarine-blue', { carrier: 'oil' }, ['superfat-rises']],
    ['titanium-dioxide', {}, ['dish-test-first', 'brittle', 'stick-blend-thickens', 'lye-thins']],
    ['titanium-dioxide-water-dispersible', {}, ['brittle', 'stick-blend-thickens', 'lye-thins']],
    ['titanium-dioxide', { carrier: 'oil' }, ['brittle', 'superfat-rises']],
    ['gold-mica', {}, ['superfat-rises']],
    ['red-40-dye', {}, ['staining', 'lye-changes', 'fades-in-light', 'lye-thins']],
    ['activated-charcoal', {}, ['staining', 'superfat-rises']],
    ['neon-pink', {}, ['lye-changes', 'fades-in-light', 'superfat-rises']],
  ])('%s %j', ([id, more, ids]) => {
    expect(idsOf('2 cups', [asked(id, more)])).toEqual(['raw-batter', 'dust', ...ids]);
  });

  test('a paste raises no dust, and its dish test is over', () => {
    const premix = parsePremix('30% in oil');
    const wet = asked('red-iron-oxide', { premix, carrier: 'oil', dishTest: 'water' });
    expect(idsOf('2 cups', [wet])).toEqual(['raw-batter', 'superfat-rises']);
    expect(idsOf('2 cups', [wet, asked('gold-mica')])).toContain('dust');
    expect(idsOf('2 cups', [asked('red-iron-oxide', { premix: parsePremix('unknown') })])).toEqual([
      'raw-batter',
      'premix-strength-unknown',
      'stick-blend-thickens',
    ]);
  });

  test('a cup of two tablespoons may be frothed, the batter never', () => {
    expect(idsOf('10 cups', [asked('red-iron-oxide', { dishTest: 'oil' })])).toEqual([
      'raw-batter',
      'dust',
      'froth-cup-only',
      'superfat-rises',
    ]);
    // One of two is enough.
    expect(idsOf('20 cups', [asked('red-iron-oxide', { dishTest: 'oil' }), asked('gold-mica')])).toContain(
      'froth-cup-only',
    );
  });

  test('the same sentence is said once', () => {
    const two = idsOf('2 cups', [asked('gold-mica'), asked('neon-pink'), asked('red-40-dye')]);
    expect(new Set(two).size).toBe(two.length - 2);
    // Two colours fade and two are changed by lye, each under its own name.
    expect(two.filter(id => id === 'fades-in-light')).toHaveLength(2);
    expect(two.filter(id => id === 'dust')).toHaveLength(1);
  });
});

describe('what a caution says', () => {
  test('four teaspoons of ultramarine in two cups are held at one, and colour the lather', () => {
    const given = [
      '2 cups',
      [asked('ultramarine-blue', { strength: parseStrength('2 tsp per cup') })],
    ] as const;
    expect(caution('capped-at-ceiling', ...given)).toEqual({
      ...named(BLUE),
      said: 'amount',
      askedTeaspoons: 4,
      ceilingTeaspoons: 1,
    });
    expect(caution('coloured-lather', ...given)).toEqual({ ...named(BLUE), ceilingTeaspoons: 1 });
  });

  test('full colour leaves the lather white, a little more does not; mica never colours it', () => {
    expect(idsOf('2 cups', [asked('ultramarine-blue')])).not.toContain('coloured-lather');
    const more = { strength: parseStrength('3/8 tsp per cup') };
    expect(idsOf('2 cups', [asked('ultramarine-blue', more)])).toContain('coloured-lather');
    expect(idsOf('2 cups', [asked('gold-mica', { strength: parseStrength('1 tsp per cup') })])).not.toContain(
      'coloured-lather',
    );
  });

  test('what was tested and what was asked', () => {
    const against = asked('ultramarine-blue', { dishTest: 'water', carrier: 'oil' });
    expect(caution('dish-test-disagrees', '2 cups', [against])).toEqual({
      ...named(BLUE),
      tested: 'water',
      asked: 'oil',
    });
    expect(caution('dish-test-first', '2 cups', [asked('red-iron-oxide')])).toMatchObject({ carrier: 'oil' });
  });

  test('the ceiling of white in two cups is two teaspoons', () => {
    expect(caution('brittle', '2 cups', [asked('titanium-dioxide')])).toEqual({ ceilingTeaspoons: 2 });
  });

  test('lye changes a conditional colour; it fades', () => {
    expect(caution('lye-changes', '2 cups', [asked('red-40-dye')])).toEqual({
      ...named({ en: colourantById('red-40-dye')!.names.en }),
      behaviour: 'conditional',
    });
    for (const id of ['staining', 'fades-in-light', 'premix-strength-unknown'])
      expect(
        caution(id, '2 cups', [
          asked('red-40-dye', id.startsWith('premix') ? { premix: parsePremix('unknown') } : {}),
        ]),
      ).toEqual(named({ en: colourantById('red-40-dye')!.names.en }));
  });

  test('a percent of the oils: two cups of the usual batter hold 473.2 ml x 1 g/ml x 0.69 = 326 g of them', () => {
    const given = ['2 cups', [asked('gold-mica', { strength: parseStrength('1% of oils') })]] as const;
    expect(caution('percent-of-oils', ...given)).toEqual({
      ...named(colourantById('gold-mica')!.names),
      percent: 1,
      oilsGrams: 326,
    });
  });

  test('21 CFR 74.2208: Green 8 to 0.01 % of the bar', () => {
    const green = underLaw(colourantById('red-40-dye')!, checkIngredients('D&C Green No. 8').components);
    expect(caution('capped-by-law', '2 cups', [asked('red-40-dye', { colourant: green })])).toMatchObject({
      law: 'us',
      percent: 0.01,
    });
  });

  test('superfat and lye of the portion, before and after', () => {
    // 1.5 tsp of oil is 6.77 g: 1 - 0.95 x 326.5 / 333.3 = 6.9 %.
    const oil = [asked('ultramarine-blue', { carrier: 'oil' })];
    expect(caution('superfat-rises', '2 cups', oil)).toEqual({ from: 5, to: 6.9 });
    // 473.2 x 0.31 = 146.7 g of lye solution; 7.38 g of water thin 30 % to 28.6 %.
    expect(caution('lye-thins', '2 cups', [asked('ultramarine-blue')])).toEqual({ from: 30, to: 28.6 });
  });

  test('half a point is worth saying, less is not', () => {
    // A teaspoon of oil in 11.9 kg of batter moves nothing; in 1.4 l it moves superfat by 0.4, in 1.1 l by half a point.
    const tint = [asked('gold-mica', { strength: parseStrength('1/100 tsp per cup') })];
    expect(idsOf('1400 ml', tint)).not.toContain('superfat-rises');
    expect(idsOf('1100 ml', tint)).toContain('superfat-rises');
    const inWater = [asked('ultramarine-blue', { strength: parseStrength('1/100 tsp per cup') })];
    expect(idsOf('1100 ml', inWater)).not.toContain('lye-thins');
    expect(idsOf('880 ml', inWater)).toContain('lye-thins');
  });
});

describe('a usual batter stands in for the recipe’s own', () => {
  const batter = batterOf({
    oilsGrams: 1000,
    lyeGrams: 134,
    waterGrams: 313,
    millilitres: 1441,
    superfat: 0.05,
  });
  test.for([
    ['2 cups', false],
    ['500 g', true],
    ['500 g oils', true],
    ['500 ml oils', true],
  ] as const)('%s: %s', ([portion, said]) => {
    const { cautions, portion: told } = answer(portion, [asked('gold-mica')]);
    expect(cautions.some(({ id }) => id === 'typical-batter')).toBe(said);
    expect(told.typicalBatter).toBe(true);
    const own = answer(portion, [asked('gold-mica')], { batter });
    expect(own.cautions.some(({ id }) => id === 'typical-batter')).toBe(false);
    expect(own.portion.typicalBatter).toBe(false);
  });

  test('the portion in cups, grams and oils', () => {
    const { portion } = answer('500 g oils', [asked('gold-mica')]);
    expect(portion.oilsGrams).toBeCloseTo(500, 6);
    expect(portion.grams).toBeCloseTo(500 / 0.69, 6);
    expect(portion.cups).toBeCloseTo(500 / 0.69 / 236.588, 3);
    // Light oil at 0.915 g/ml (Codex CXS 210).
    expect(answer('500 ml oils', [asked('gold-mica')]).portion.oilsGrams).toBeCloseTo(457.5, 6);
    expect(answer('500 g', [asked('gold-mica')], { batter }).portion.millilitres).toBeCloseTo(
      (500 * 1441) / 1447,
      6,
    );
    expect(answer('500 g', [asked('gold-mica')], { batter }).portion.grams).toBeCloseTo(500, 6);
  });

  test('oils that make more than 200 l of batter are refused', () => {
    expect(() => answer('150 kg oils', [asked('gold-mica')])).toThrow(
      expect.objectContaining({
        id: 'amount-out-of-range',
        values: {
          text: { value: expect.closeTo(150 / 0.69, 6), unit: 'l' },
          low: { value: 1, unit: 'ml' },
          high: { value: 200, unit: 'l' },
        },
      }),
    );
  });
});
