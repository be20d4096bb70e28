import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { colourantById, colourants } from '../../../src/engine/colourants/catalogue.ts';
import { answerDose } from '../../../src/engine/dosing/answer.ts';
import type { DoseAsked, DoseRequest } from '../../../src/engine/dosing/request.ts';
import { parseStrength } from '../../../src/engine/quantities/strength.ts';
import { parsePortion } from '../../../src/engine/quantities/told/portion.ts';
import { MEASURES } from '../../../src/engine/quantities/units.ts';
import { refused } from '../quantities/refused.ts';

const ask = (id: string, strength = 'full', more: Partial<DoseAsked> = {}): DoseAsked => ({
  colourant: colourantById(id)!,
  strength: parseStrength(strength),
  ...more,
});
const answer = (portion: string, colourants: readonly DoseAsked[], more: Partial<DoseRequest> = {}) =>
  answerDose({ portion: parsePortion(portion), colourants, ...more });
const one = (portion: string, asked: DoseAsked, more: Partial<DoseRequest> = {}) =>
  answer(portion, [asked], more).doses[0]!;
const cautionsOf = (portion: string, ...asked: DoseAsked[]) =>
  answer(portion, asked).cautions.map(({ id }) => id);

describe('a portion so small that its colour is taken from a paste', () => {
  test('gets one part of the paste’s water, and its lye is thinned by no more', () => {
    const { doses, lyeShift } = answer('1/4 tsp', [ask('ultramarine-blue')]);
    expect(doses[0]!.spoons).toMatchObject({ spoons: [], paste: { parts: 96, carrierTeaspoons: 12 } });
    // By hand: 1.232 g of batter hold 0.382 g of 30 % lye; 12 tsp / 96 = 0.616 ml of water: 0.1146 / 0.997 = 11.5 %.
    expect(lyeShift).toEqual({ fromPercent: 30, toPercent: 11.5 });
  });
});

describe('one colour in one portion', () => {
  test('full ultramarine blue in two cups is half a teaspoon, half way to its ceiling', () => {
    expect(one('2 cups', ask('ultramarine-blue'))).toMatchObject({
      colourant: { id: 'ultramarine-blue', kind: 'ultramarine' },
      strength: { by: 'name', name: 'full' },
      teaspoons: 0.5,
      spoons: { spoons: [{ spoon: '1/2 tsp', count: 1 }] },
      ceilingTeaspoons: 1,
      ceilingShare: 0.5,
      perCup: 0.25,
    });
  });

  test('a number of spoons a cup is taken as asked, up to the ceiling', () => {
    expect(one('2 cups', ask('ultramarine-blue', '3/8 tsp per cup')).teaspoons).toBe(0.75);
  });

  test('a jar that is stronger than its kind takes fewer spoons for a depth of colour, and as many as are said', () => {
    const twice = { timesKind: 2 };
    expect(one('2 cups', ask('ultramarine-blue', 'full', twice))).toMatchObject({
      teaspoons: 0.25,
      timesKind: 2,
    });
    expect(one('2 cups', ask('ultramarine-blue', 'pastel', twice)).teaspoons).toBe(0.0625);
    const said = one('2 cups', ask('ultramarine-blue', '1/4 tsp per cup', twice));
    expect(said.teaspoons).toBe(0.5);
    expect(said).not.toHaveProperty('timesKind');
  });

  test('a weak jar takes more, never beyond the ceiling, and that is said', () => {
    const weak = ask('ultramarine-blue', 'full', { timesKind: 0.4 });
    expect(one('2 cups', weak)).toMatchObject({ teaspoons: 1, ceilingShare: 1, askedTeaspoons: 1.25 });
    expect(answer('2 cups', [weak]).cautions.find(({ id }) => id === 'capped-at-ceiling')).toMatchObject({
      values: { said: 'depth-of-weak-jar' },
    });
    const deep = ask('ultramarine-blue', '300% of full');
    expect(answer('2 cups', [deep]).cautions.find(({ id }) => id === 'capped-at-ceiling')).toMatchObject({
      values: { said: 'depth' },
    });
  });

  test('beyond the ceiling the answer is the ceiling, and says so', () => {
    const asked = ask('ultramarine-blue', '1 tsp per cup');
    expect(one('1 cup', asked)).toMatchObject({
      teaspoons: 0.5,
      spoons: { spoons: [{ spoon: '1/2 tsp', count: 1 }] },
      ceilingShare: 1,
      askedTeaspoons: 1,
    });
    expect(answer('1 cup', [asked]).cautions).toContainEqual({
      id: 'capped-at-ceiling',
      values: { colourant: asked.colourant.names, said: 'amount', askedTeaspoons: 1, ceilingTeaspoons: 0.5 },
    });
  });

  test('at the ceiling an oxide may colour the lather; at full colour it does not', () => {
    expect(cautionsOf('1 cup', ask('red-iron-oxide', '1/2 tsp per cup'))).toContain('coloured-lather');
    expect(cautionsOf('1 cup', ask('red-iron-oxide'))).not.toContain('coloured-lather');
  });

  test('a teaspoon a pound of oils is a teaspoon in a pound of oils', () => {
    expect(one('1 lb oils', ask('gold-mica', '1 tsp ppo')).teaspoons).toBeCloseTo(1, 9);
    expect(one('1 lb oils', ask('gold-mica', '1 tsp ppo')).perPoundOfOils).toBeCloseTo(1, 9);
  });

  test('oils and cups meet through the recipe’s own batter', () => {
    const batter = { gramsPerMillilitre: 1.02, oilsShare: 0.6, lyeConcentration: 0.33, superfat: 0.08 };
    const { portion, superfatShift } = answer('1 lb oils', [ask('gold-mica')], { batter });
    expect(portion.millilitres).toBeCloseTo(453.59237 / 0.6 / 1.02, 6);
    expect(portion.typicalBatter).toBe(false);
    expect(superfatShift?.fromPercent).toBe(8);
  });

  test('every answer for raw batter begins with gloves and goggles', () => {
    for (const colourant of colourants.filter(({ alkali }) => alkali.behaviour !== 'never')) {
      expect(cautionsOf('1 cup', ask(colourant.id))[0]).toBe('raw-batter');
    }
  });

  test('what must not meet lye is refused', () => {
    const metal = { ...colourantById('gold-mica')!, alkali: { behaviour: 'never' as const } };
    expect(refused(() => answer('1 cup', [{ colourant: metal, strength: parseStrength('full') }]))).toBe(
      'never-meets-lye',
    );
  });

  test('200 kg of oils make more batter than anybody colours', () => {
    expect(refused(() => answer('200 kg oils', [ask('gold-mica')]))).toBe('amount-out-of-range');
  });
});

describe('the member’s own jar speaks before the catalogue', () => {
  test('its own spoon weight narrows the grams', () => {
    const wide = one('2 cups', ask('ultramarine-blue')).grams;
    const own = one('2 cups', ask('ultramarine-blue', 'full', { gramsPerTeaspoon: 3 })).grams;
    expect(own.typical).toBeCloseTo(1.5, 9);
    expect((own.high - own.low) / own.typical).toBeLessThan((wide.high - wide.low) / wide.typical);
  });

  test.each([0, -1, 50, Number.NaN])('a level teaspoon of %d g is a slip', gramsPerTeaspoon => {
    expect(refused(() => one('1 cup', ask('gold-mica', 'full', { gramsPerTeaspoon })))).toBe(
      'spoon-weight-out-of-range',
    );
  });

  test('its dish test picks the carrier, and a carrier against it is warned of', () => {
    expect(one('1 cup', ask('red-iron-oxide', 'full', { dishTest: 'water' })).carrier.choice).toBe('water');
    const against = ask('red-iron-oxide', 'full', { dishTest: 'oil', carrier: 'water' });
    expect(one('1 cup', against).carrier.choice).toBe('water');
    expect(cautionsOf('1 cup', against)).toContain('dish-test-disagrees');
    expect(cautionsOf('1 cup', ask('red-iron-oxide'))).toContain('dish-test-first');
    expect(cautionsOf('1 cup', ask('red-iron-oxide', 'full', { dishTest: 'oil' }))).not.toContain(
      'dish-test-first',
    );
  });
});

describe('several colours share one portion', () => {
  test('two full micas are cut to half each', () => {
    const { doses, cautions } = answer('1 cup', [ask('gold-mica'), ask('copper-mica')]);
    const half = [{ spoon: '1/2 tsp', count: 1 }];
    expect(doses.map(({ spoons }) => spoons.spoons)).toEqual([half, half]);
    expect(cautions).toContainEqual({ id: 'mix-scaled', values: { percent: 50 } });
  });

  test('pastels that fit together are left alone', () => {
    const ids = cautionsOf('1 cup', ask('gold-mica', 'pastel'), ask('ultramarine-blue', 'pastel'));
    expect(ids).not.toContain('mix-scaled');
  });

  test('white pigments count together', () => {
    const { doses, cautions } = answer('1 cup', [
      ask('titanium-dioxide', '3/4 tsp per cup'),
      ask('zinc-oxide', '3/4 tsp per cup'),
    ]);
    expect(cautions.map(({ id }) => id)).toContain('whites-scaled');
    expect(doses.reduce((sum, { spoons }) => sum + spoons.teaspoons, 0)).toBeLessThanOrEqual(1 + 1e-9);
  });

  test('a second white with a lower ceiling lowers it for both', () => {
    const strict = { ...colourantById('zinc-oxide')!, dose: { fullTspPerCup: 0.25, ceilingTspPerCup: 0.5 } };
    const { doses } = answer('1 cup', [
      ask('titanium-dioxide', '1/2 tsp per cup'),
      { colourant: strict, strength: parseStrength('1/4 tsp per cup') },
    ]);
    expect(doses.reduce((sum, { teaspoons }) => sum + teaspoons, 0)).toBeCloseTo(0.5, 9);
  });

  test('six colours are one too many', () => {
    expect(
      refused(() =>
        answer(
          '1 cup',
          Array.from({ length: 6 }, () => ask('gold-mica', 'tint')),
        ),
      ),
    ).toBe('mix-too-many');
  });

  test('their oils add up in the portion', () => {
    const single = answer('1 cup', [ask('gold-mica', 'medium')]).superfatShift!;
    const double = answer('1 cup', [ask('gold-mica', 'medium'), ask('copper-mica', 'medium')]).superfatShift!;
    expect(double.toPercent).toBeGreaterThan(single.toPercent);
  });
});

const anyAsked = fc
  .record({
    colourant: fc.constantFrom(...colourants.filter(({ alkali }) => alkali.behaviour !== 'never')),
    tspPerCup: fc.double({ min: 0.001, max: 48, noNaN: true }),
  })
  .map(({ colourant, tspPerCup }): DoseAsked => ({ colourant, strength: { by: 'cup', tspPerCup } }));
const anyPortion = fc.double({ min: 1, max: 200_000, noNaN: true });

describe('for any portion and any colours', () => {
  test.prop([anyPortion, fc.array(anyAsked, { minLength: 1, maxLength: 5 })])(
    'neither the doses nor the spoons exceed the ceilings together',
    (millilitres, asked) => {
      const { doses } = answerDose({
        portion: { measure: 'volume', millilitres, of: 'batter' },
        colourants: asked,
      });
      const full = (of: 'dose' | 'spoons') =>
        doses.reduce(
          (sum, { teaspoons, spoons, ceilingTeaspoons }) =>
            sum + (of === 'dose' ? teaspoons : spoons.teaspoons) / ceilingTeaspoons,
          0,
        );
      expect(full('dose')).toBeLessThanOrEqual(1 + 1e-9);
      expect(full('spoons')).toBeLessThanOrEqual(1 + 1e-6);
      const white = doses.filter(({ colourant }) => colourant.kind === 'white');
      const lowest = Math.min(...white.map(({ ceilingTeaspoons }) => ceilingTeaspoons));
      expect(white.reduce((sum, { teaspoons }) => sum + teaspoons, 0)).toBeLessThanOrEqual(
        white.length === 0 ? 0 : lowest * (1 + 1e-9),
      );
    },
  );

  test.prop([anyPortion, anyAsked, fc.integer({ min: 2, max: 5 })])(
    'so many times the batter takes so many times the colour',
    (millilitres, asked, times) => {
      fc.pre(millilitres * times <= 200_000);
      const of = (size: number) =>
        answerDose({ portion: { measure: 'volume', millilitres: size, of: 'batter' }, colourants: [asked] })
          .doses[0]!;
      expect(of(times * millilitres).teaspoons / of(millilitres).teaspoons).toBeCloseTo(times, 6);
    },
  );

  test.prop([fc.integer({ min: 1, max: 400 }), anyAsked])(
    'cups or millilitres, the answer is the same',
    (quarters, asked) => {
      const cups = one(`${quarters / 4} cups`, asked);
      const ml = one(`${((quarters / 4) * 236.5882365).toFixed(7)} ml`, asked);
      expect(ml.teaspoons).toBeCloseTo(cups.teaspoons, 6);
      expect(ml.spoons.spoons).toEqual(cups.spoons.spoons);
    },
  );

  test.prop([anyPortion, anyAsked])(
    'a kitchen with 5 ml spoons gets the same millilitres of colour',
    (millilitres, asked) => {
      fc.pre(asked.strength.by === 'cup');
      const named = { ...asked, strength: parseStrength('medium') };
      const portion = { measure: 'volume', millilitres, of: 'batter' } as const;
      const us = answerDose({ portion, colourants: [named] }).doses[0]!;
      const metric = answerDose({ portion, colourants: [named], measures: MEASURES.metric }).doses[0]!;
      expect(metric.millilitres).toBeCloseTo(us.millilitres, 9);
      expect(metric.teaspoons * 5).toBeCloseTo(us.millilitres, 6);
    },
  );

  test.prop([anyPortion, fc.array(anyAsked, { minLength: 1, maxLength: 5 })])(
    'no number in it is NaN or infinite',
    (millilitres, asked) => {
      const text = JSON.stringify(
        answerDose({ portion: { measure: 'volume', millilitres, of: 'batter' }, colourants: asked }),
        (_key, value: unknown) => (typeof value === 'number' && !Number.isFinite(value) ? 'BROKEN' : value),
      );
      expect(text).not.toContain('BROKEN');
    },
  );
});
