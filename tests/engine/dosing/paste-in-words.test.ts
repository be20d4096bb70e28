import { describe, expect, test } from 'vitest';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';
import { strengthInPortion, usualStrength } from '../../../src/engine/dosing/amount-in-portion.ts';
import { answerDose } from '../../../src/engine/dosing/answer.ts';
import { parsePremix } from '../../../src/engine/dosing/parse-premix.ts';
import { partsOf } from '../../../src/engine/dosing/premix-parts.ts';
import { wordedParts } from '../../../src/engine/dosing/premix-wordings.ts';
import type { DoseAsked } from '../../../src/engine/dosing/request.ts';
import { parseStrength } from '../../../src/engine/quantities/strength.ts';
import { parsePortion } from '../../../src/engine/quantities/told/portion.ts';
import { MEASURES, US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../src/engine/refusal.ts';

/* How a paste is told in words (common practice, from memory): which of two names is the liquid tells which figure is of the powder. */

test.each<readonly [text: string, powder: number, liquid: number]>([
  // Each part with its name, whichever comes first.
  ['2 partes aceite, una pigmento', 1, 2],
  ['half powder half sunflower', 0.5, 0.5],
  ['half a part clay to 1/2 part water', 0.5, 0.5],
  ['1 1/2 parts clay to 3 parts water', 1.5, 3],
  ['2,5 parts water to 1 part clay', 1, 2.5],
  ['2.5 parts clay to 5 parts water', 2.5, 5],
  ['1/4 part clay to 1 part water', 0.25, 1],
  ['1 part liquid to 2 parts clay', 2, 1],
  ['1 part bleach to 2 parts clay', 2, 1],
  // One measure for both, told once or twice.
  ['2 cucharadas de agua por cada una de arcilla', 1, 2],
  ['2 tsp water to 1 tsp clay', 1, 2],
  ['1 Tsp clay to 3 tsps water', 1, 3],
  ['one tablespoon of clay to 2 tablespoons of water', 1, 2],
  ['charcoal 2 parts, palm kernel oil 5 parts', 2, 5],
  ['aceite de coco 5 partes y carbón 2 partes', 2, 5],
  // Bare figures, powder first, and the liquid behind.
  ['1 to 4 rice bran oil', 1, 4],
  ['1 a 10, achiote en oliva', 1, 10],
  ['uno a 3 aceite', 1, 3],
  // So many times as much.
  ['double the oil to the powder', 1, 2],
  ['el doble de agua que de caolín', 1, 2],
  ['twice as much clay as water', 2, 1],
  ['triple the oil to the powder', 1, 3],
  ['three times as much water as clay', 1, 3],
  ['same weight of castor as powder', 1, 1],
  // What is said behind, or of how it looks, changes nothing.
  ['1 part mica to 3 parts oil; i make it like pancake batter', 1, 3],
  ['1 part mica to 3 parts oil, by weight', 1, 3],
  ['  1 part mica to 3 parts oil  ', 1, 3],
])('“%s”: %f of powder to %f of liquid', (text, powder, liquid) => {
  expect(wordedParts(text)).toEqual({ powder, liquid });
});
test.each([
  // Nothing of one of them, no liquid, or two; two measures; amounts, which are read elsewhere.
  '0 parts clay to 1 part water',
  '1 part clay to 0 parts water',
  'one part clay to two parts mica',
  'one part oil to two parts water',
  'double the powder to the clay',
  'double its weight in oil',
  '2 tsp water to 1 tbsp clay',
  '5 g clay to 15 g water',
  '1 to 4 g rice bran oil',
  '1 to 4 gravel',
  'an to 3',
  'clay in water',
])('“%s” tells no parts', text => {
  expect(wordedParts(text)).toBeUndefined();
});

test('parts may be counted in words', () => {
  expect(partsOf('One part to a part of oil')).toEqual({ powder: 1, liquid: 1 });
  expect(partsOf('A part to 2 parts in water')).toEqual({ powder: 1, liquid: 2 });
  expect(partsOf('1 cap of clay to 3 caps of water')).toEqual({ powder: 1, liquid: 3 });
  expect(partsOf('a gram of clay in 3 of water')).toEqual({ powder: 1, liquid: 3 });
});

const read = (text: string) => {
  const premix = parsePremix(text);
  return premix.by === 'spoons'
    ? [premix.carrierMillilitres / premix.powderMillilitres, premix.carrier]
    : [premix.by === 'percent' ? premix.pigmentShare : premix.by, premix.carrier];
};
test.each<readonly [text: string, ratio: number | string, carrier: string]>([
  ['clay in oil, i use 1 tsp to 3 tsp', 3, 'oil'],
  // What it went into is told before its parts, or with them.
  ['lo mezclé con glicerina, una parte de mica y cuatro de glicerina', 4, 'glycerin'],
  ['mixed it with oil, one part mica and four of oil', 4, 'oil'],
  ['mixed it with water, one part mica and four', 4, 'water'],
  ['stirred up, one part mica and four of water', 4, 'water'],
  ['equal powder and oil', 1, 'oil'],
  ['igual cantidad de arcilla y agua', 1, 'water'],
  ['una medida de carbón, cinco de girasol (aceite)', 5, 'oil'],
  ['clay:water 1:2', 2, 'water'],
  ['clay/oil 1/3', 3, 'oil'],
  ["one o' powder to two o' oil", 2, 'oil'],
  ['el dióxido lo tengo en agua, una parte por cinco de agua', 5, 'water'],
  ['clay one part, water three parts', 3, 'water'],
  ['tsp of clay in 1 tbsp oil', 3, 'oil'],
  ['i mix 1 tsp into 1 tbsp oil', 3, 'oil'],
  ['por cada cucharada de arcilla pongo dos de agua', 2, 'water'],
  ['1 cdta de mica le echo 3 cdtas de aceite', 3, 'oil'],
  ['my powder is 1 tsp in oil of 3 tsp', 3, 'oil'],
  ['1 tsp en cda de agua', 3, 'water'],
  ['a scoop to 3 scoops water', 3, 'water'],
  ['1 cap of clay to 3 caps of water', 3, 'water'],
  ['1 gram of clay with 3 of water', 3, 'water'],
  ['water based, 1:3', 3, 'water'],
  // What stands before its figures tells the liquid, and nothing of how much.
  ['the bottle says 20%', 0.2, 'glycerin'],
  ['my paste in oil, 20%', 0.2, 'oil'],
  ['1 tsp clay in 3 of the same of water', 3, 'water'],
  ['2 tsp in 1 tsp oil', 0.5, 'oil'],
  ['1 tsp in 1000 tsp oil', 1000, 'oil'],
  ['@ 30% in oil', 0.3, 'oil'],
  ['al 30% en agua', 0.3, 'water'],
  ['5 oz in 5 oz oil', 0.5, 'oil'],
  ['no sé', 'unknown', 'glycerin'],
])('“%s”', (text, ratio, carrier) => {
  const [told, wetted] = read(text);
  expect(typeof told === 'number' ? Number(told.toPrecision(9)) : told).toBe(ratio);
  expect(wetted).toBe(carrier);
});
test.each([
  // Drier than two to one, thinner than one in a thousand, weaker and stronger than any paste.
  ['3 tsp in 1 tsp oil', 'premix-out-of-range'],
  ['1 tsp in 1001 tsp oil', 'premix-out-of-range'],
  ['0.05%', 'premix-out-of-range'],
  ['96%', 'premix-out-of-range'],
  ['5 g in 0 g oil', 'amount-out-of-range'],
  // A spoon of what weighs as much as it pleases; three amounts; two liquids; none.
  ['1 tsp in 15 g oil', 'premix-unreadable'],
  ['5 g in 1 tbsp oil', 'premix-unreadable'],
  ['1 tsp and 2 tsp and 3 tsp oil', 'premix-unreadable'],
  ['mixed it with oil, one part mica and four of water', 'amount-unreadable'],
  ['clay paste', 'premix-unreadable'],
  ['stirred up, one part mica and four', 'premix-unreadable'],
  ['0 g clay, 5 g oil', 'amount-out-of-range'],
  ['5 g clay, 0 g oil', 'amount-out-of-range'],
  ['my paste in oil, 96%', 'premix-out-of-range'],
  ['1 tsp in 1 tbsp banana', 'carrier-unknown'],
  ['30% en leche', 'carrier-unknown'],
])('“%s” is refused: %s', (text, id) => {
  expect(() => parsePremix(text)).toThrow(Refusal);
  expect(() => parsePremix(text)).toThrow(expect.objectContaining({ id }));
});

describe('an amount in a portion', () => {
  const mica = colourantById('gold-mica')!;
  const { us: measures } = MEASURES;
  const twoCups = { millilitres: 2 * measures.cup, measures };
  const grams = (gramsTold: number) =>
    ({ by: 'amount', amount: { measure: 'mass', grams: gramsTold } }) as const;

  test('is so many spoons to the cup, by what a spoon of it weighs', () => {
    // Its owner weighed 2.5 g to the teaspoon: 5 g are 2 of them, in two cups.
    expect(strengthInPortion(grams(5), { colourant: mica, gramsPerTeaspoon: 2.5 }, twoCups)).toEqual({
      by: 'cup',
      tspPerCup: expect.closeTo(1, 9),
    });
    // Nobody did: the kind's own bulk density.
    const spoon = mica.bulkDensity.typical * US_TEASPOON_ML;
    expect(strengthInPortion(grams(3 * spoon), { colourant: mica }, twoCups)).toEqual({
      by: 'cup',
      tspPerCup: expect.closeTo(1.5, 9),
    });
  });
  test('of a liquid colour is the dry powder in it', () => {
    // A tenth of 20 g is pigment; the spoon of the liquid is not the powder's.
    const spoon = mica.bulkDensity.typical * US_TEASPOON_ML;
    const liquid = { colourant: mica, gramsPerTeaspoon: 6, pigmentFraction: 0.1 };
    expect(strengthInPortion(grams(20), liquid, twoCups)).toEqual({
      by: 'cup',
      tspPerCup: expect.closeTo(2 / spoon / 2, 9),
    });
  });
  test('any other strength stays, and where none was said it is the usual one of its kind', () => {
    expect(strengthInPortion({ by: 'name', name: 'tint' }, { colourant: mica }, twoCups)).toEqual({
      by: 'name',
      name: 'tint',
    });
    const blue = colourantById('ultramarine-blue')!;
    for (const colourant of [mica, blue])
      expect(strengthInPortion({ by: 'usual' }, { colourant }, twoCups)).toEqual({
        by: 'name',
        name: usualStrength(colourant),
      });
    expect(usualStrength({ dose: { ...mica.dose, usual: 'pastel' } })).toBe('pastel');
    expect(usualStrength({ dose: { fullTspPerCup: 1, ceilingTspPerCup: 2 } as typeof mica.dose })).toBe(
      'full',
    );
  });
});

const asked = (id: string, more: Partial<DoseAsked> = {}): DoseAsked => ({
  colourant: colourantById(id)!,
  strength: parseStrength('full'),
  ...more,
});

describe('a portion for the tip of a toothpick', () => {
  const small = (portion: string, ...colourants: readonly DoseAsked[]) =>
    answerDose({ portion: parsePortion(portion), colourants }).cautions.find(
      ({ id }) => id === 'portion-small',
    );
  const paste = { premix: parsePremix('30% in oil') };

  test('is one below 50 ml, to half a millilitre', () => {
    expect(small('40 ml', asked('gold-mica'))?.values).toEqual({ millilitres: 40 });
    expect(small('49.4 ml', asked('gold-mica'))?.values).toEqual({ millilitres: 49.4 });
    expect(small('49.5 ml', asked('gold-mica'))).toBeUndefined();
    expect(small('50 ml', asked('gold-mica'))).toBeUndefined();
  });
  test('is one for dry powder alone, of which one of two is enough', () => {
    expect(small('40 ml', asked('gold-mica', paste))).toBeUndefined();
    expect(small('40 ml', asked('gold-mica', paste), asked('rose-clay'))).toBeDefined();
  });
});

describe('what goes into the portion with the colour', () => {
  const shift = (portion: string, more: Partial<DoseAsked>) =>
    answerDose({
      portion: parsePortion(portion),
      colourants: [
        { colourant: colourantById('ultramarine-blue')!, strength: parseStrength('full'), ...more },
      ],
    });
  test('is all of the carrier where it can be spooned, or where the paste is bought', () => {
    const spooned = shift('2 cups', { carrier: 'oil' });
    expect(spooned.doses[0]!.spoons.spoons.length).toBeGreaterThan(0);
    expect(spooned.superfatShift!.toPercent).toBeGreaterThan(spooned.superfatShift!.fromPercent);
    const bought = shift('1/4 tsp', { premix: parsePremix('30% in oil') });
    const made = shift('1/4 tsp', { carrier: 'oil' });
    // A paste that one makes for so little brings one part of many; of a bought one all that is in it.
    expect(made.doses[0]!.spoons.paste).toBeDefined();
    expect(bought.superfatShift?.toPercent ?? 0).toBeLessThan(made.superfatShift!.toPercent);
  });
  test('of a paste that is made for it is its one part, and no more', () => {
    const { doses, lyeShift } = shift('2 tsp', { strength: parseStrength('tint') });
    expect(doses[0]!.spoons).toMatchObject({ spoons: [], paste: { parts: 96, carrierTeaspoons: 12 } });
    // By hand: 9.858 ml of batter hold 3.06 g of 30 % lye; 12 tsp / 96 = 0.616 ml of water: 0.918 / 3.676 = 25.0 %.
    expect(lyeShift!.fromPercent).toBe(30);
    expect(lyeShift!.toPercent).toBeCloseTo(25, 0);
  });
  test('whites that are just at their ceiling are not what is too much of a mix', () => {
    const white = colourantById('titanium-dioxide')!;
    const strength = parseStrength(`${white.dose.ceilingTspPerCup} tsp per cup`);
    const { cautions } = answerDose({
      portion: parsePortion('2 cups'),
      colourants: [{ colourant: white, strength }, asked('rose-clay', { strength: parseStrength('full') })],
    });
    expect(cautions.map(({ id }) => id)).toContain('mix-scaled');
    expect(cautions.map(({ id }) => id)).not.toContain('whites-scaled');
  });
});
