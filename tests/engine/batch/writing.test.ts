import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { parseAdditives } from '../../../src/engine/batch/additives/additives.ts';
import { parseFragrance } from '../../../src/engine/batch/additives/fragrance.ts';
import { parseSize } from '../../../src/engine/batch/batch-size.ts';
import { parseLye } from '../../../src/engine/batch/lye/lye-choice.ts';
import { parseWater } from '../../../src/engine/batch/lye/water.ts';
import { mouldMillilitres } from '../../../src/engine/batch/mould-sides.ts';
import { parseOils } from '../../../src/engine/batch/oils/lists/oil-list.ts';
import { coloursNamed, readPlan, withColours } from '../../../src/engine/batch/planning/written-plan.ts';
import { parsePortions } from '../../../src/engine/batch/portions/portion-list.ts';
import { findColourant } from '../../../src/engine/colourants/asked/find-colourant.ts';
import { US_CUP_ML, US_TEASPOON_ML } from '../../../src/engine/quantities/units.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { ONE_LINE } from './asked.ts';

describe('a size', () => {
  test.for([
    ['1000 g oils', { by: 'oils', grams: 1000 }],
    ['1kg', { by: 'oils', grams: 1000 }],
    ['1000 g de aceites', { by: 'oils', grams: 1000 }],
    ['1.2 l batter', { by: 'batter-volume', millilitres: 1200 }],
    ['3 l', { by: 'batter-volume', millilitres: 3000 }],
    ['1500 g batter', { by: 'batter-mass', grams: 1500 }],
    ['12 cavities x 100 ml', { by: 'mould', mould: { shape: 'cavities', count: 12, eachMillilitres: 100 } }],
    ['12 x 100 ml', { by: 'mould', mould: { shape: 'cavities', count: 12, eachMillilitres: 100 } }],
  ] as const)('%s', ([text, size]) => {
    expect(parseSize(text)).toEqual(size);
  });

  test.for([
    ['mould 25x9x7 cm', 1575],
    ['molde 250 x 90 x 70 mm', 1575],
    ['loaf 25 cm x 9 cm x 7 cm', 1575],
    ['mold 10 x 4 x 2 1/2 in', 100 * 2.54 ** 3],
    ['10"x4"x3"', 120 * 2.54 ** 3],
    ['cylinder 8x25 cm', 400 * Math.PI],
    ['tubo 3 in x 10 in', 22.5 * Math.PI * 2.54 ** 3],
  ] as const)('%s holds %d ml', ([text, millilitres]) => {
    const size = parseSize(text);
    expect(size.by === 'mould' && mouldMillilitres(size.mould)).toBeCloseTo(millilitres, 6);
  });

  test.for([
    ['molde 25 x 9 x 7', 'mould-without-unit'],
    ['mould 25x9 cm', 'mould-sides'],
    ['500 ml oils', 'size-oils-by-volume'],
    ['12 x 4 oz', 'cavity-by-mass'],
    ['1000', 'amount-without-unit'],
    ['1 g', 'size-out-of-range'],
    ['mould 900x90x70 cm', 'size-out-of-range'],
    ['a big one', 'size-unreadable'],
  ] as const)('%s is refused: %s', ([text, id]) => {
    expect(() => parseSize(text)).toThrow(expect.objectContaining({ id }));
  });
});

describe('water', () => {
  test.for([
    ['33% lye', { by: 'lye-strength', percent: 33 }],
    ['33 % lye concentration', { by: 'lye-strength', percent: 33 }],
    ['33% sosa', { by: 'lye-strength', percent: 33 }],
    ['2:1', { by: 'ratio', waterPerLye: 2 }],
    ['1,8:1', { by: 'ratio', waterPerLye: 1.8 }],
    ['38% of oils', { by: 'percent-of-oils', percent: 38 }],
    ['38% de aceites', { by: 'percent-of-oils', percent: 38 }],
  ] as const)('%s', ([text, water]) => {
    expect(parseWater(text)).toEqual(water);
  });

  test('a bare percent is refused, because 33 % lye and 33 % of oils are different soaps', () => {
    expect(() => parseWater('33%')).toThrow(
      expect.objectContaining({ id: 'water-bare-percent', values: { percent: '33' } }),
    );
  });

  test.for(['plenty', '33% water', '2 : x', ''])('%s is refused', text => {
    expect(() => parseWater(text)).toThrow(expect.objectContaining({ id: 'water-unreadable' }));
  });
});

describe('portions', () => {
  const [blue, white, rest] = parsePortions(ONE_LINE.portions);

  test('take cups, a colour, its strength and an oil by the spoon', () => {
    expect(blue!.share).toEqual({ by: 'volume', millilitres: 2 * US_CUP_ML });
    const [colour] = blue!.colours;
    expect(colour).toMatchObject({ text: 'ultramarine blue', strength: { name: 'full' } });
    expect(colour!.carrier).toMatchObject({ choice: 'oil', dipped: false, oil: { id: 'olive' } });
    expect(colour!.carrier!.millilitres).toBeCloseTo(3 * US_TEASPOON_ML, 9);
  });

  test('let one liquid serve the colours before it', () => {
    expect(white!.colours.map(({ text, carrier }) => [text, carrier?.choice])).toEqual([
      ['titanium dioxide', 'water'],
      ['gold mica', 'water'],
    ]);
    const [red, gold] = parsePortions('1 cup red oxide + gold mica in 2 tsp glycerin')[0]!.colours;
    expect(red!.carrier!.millilitres! + gold!.carrier!.millilitres!).toBeCloseTo(2 * US_TEASPOON_ML, 9);
  });

  test('may stay plain and unscented', () => {
    expect(rest).toEqual({ name: undefined, share: { by: 'rest' }, scented: false, colours: [] });
  });

  test('may be parts, percents, weights, labelled, in Spanish', () => {
    expect(parsePortions('2 parts red oxide; 1 part plain').map(({ share }) => share)).toEqual([
      { by: 'parts', parts: 2 },
      { by: 'parts', parts: 1 },
    ]);
    expect(parsePortions('Sky: 25% ultramarine blue pastel')[0]).toMatchObject({
      name: 'Sky',
      share: { by: 'percent', percent: 25 },
    });
    const [first, second] = parsePortions('2 tazas óxido rojo pastel en agua; resto sin color sin fragancia');
    expect(first!.colours[0]).toMatchObject({ text: 'óxido rojo', strength: { name: 'pastel' } });
    expect(second).toMatchObject({ share: { by: 'rest' }, colours: [], scented: false });
    expect(parsePortions('500 g black oxide')[0]!.share).toEqual({ by: 'mass', grams: 500 });
  });

  test('tell oil dipped from the batch from oil that is added', () => {
    const carrierOf = (text: string) => parsePortions(text)[0]!.colours[0]!.carrier;
    expect(carrierOf('1 cup red oxide in 2 tsp dipped oil')).toMatchObject({ dipped: true, oil: undefined });
    expect(carrierOf('1 cup red oxide in dipped olive')).toMatchObject({
      dipped: true,
      oil: { id: 'olive' },
    });
    expect(carrierOf('1 cup red oxide in light oil')).toMatchObject({ dipped: false, oil: undefined });
  });

  test('take a strength in spoons a cup', () => {
    expect(parsePortions('1 cup gold mica at 1/4 tsp per cup')[0]!.colours[0]!.strength).toEqual({
      by: 'cup',
      tspPerCup: 0.25,
    });
  });

  test('take an amount without “per cup” as what goes into the portion', () => {
    const strengthOf = (text: string) => parsePortions(text)[0]!.colours[0]!.strength;
    const half = { by: 'amount', amount: { measure: 'volume', millilitres: US_TEASPOON_ML / 2 } };
    expect(strengthOf('2 cups gold mica 1/2 tsp')).toEqual(half);
    expect(strengthOf('rest 1/2 tsp gold mica')).toEqual(half);
    expect(strengthOf('2 tazas mica dorada 1/2 cdta')).toEqual(half);
    expect(strengthOf('2 cups 1/2 tsp gold mica')).toEqual(half);
    expect(parsePortions('half blue 1/2 tsp half white 1/2 tsp').map(({ share }) => share)).toEqual([
      { by: 'percent', percent: 50 },
      { by: 'percent', percent: 50 },
    ]);
    expect(parsePortions('2 cups gold mica 1/2 tsp in 1 cup olive')[0]!.colours[0]!.carrier).toMatchObject({
      millilitres: US_CUP_ML,
    });
    expect(parsePortions('1 cup plus 2 tsp gold mica')[0]!.share).toEqual({
      by: 'volume',
      millilitres: US_CUP_ML + 2 * US_TEASPOON_ML,
    });
    expect(strengthOf('2 cups gold mica 1/2 tsp + red oxide 1 tsp')).toEqual(half);
    for (const perCup of ['1/2 tsp a cup', '1/2 tsp/cup', '1/2 tsp to the cup', 'media cdta por cada taza'])
      expect(strengthOf(`2 cups gold mica ${perCup}`)).toEqual({ by: 'cup', tspPerCup: 0.5 });
    expect(strengthOf('2 cups gold mica 2 g')).toEqual({
      by: 'amount',
      amount: { measure: 'mass', grams: 2 },
    });
  });

  test.for([
    ['ultramarine blue', 'portion-without-amount'],
    ['rest blue; rest red', 'portions-two-rests'],
    ['1.500 ml blue', 'amount-ambiguous'],
    ['900 l blue', 'amount-out-of-range'],
    ['1 cup a1 + b2 + c3 + d4 + e5 + f6', 'portion-colours-many'],
    ['1 cup red oxide in 10 g olive', 'carrier-by-mass'],
    ['1 cup red oxide in moonbeams', 'oil-unknown'],
    ['1 cup red oxide in petrol', 'carrier-harms'],
  ] as const)('%s is refused: %s', ([text, id]) => {
    expect(() => parsePortions(text)).toThrow(expect.objectContaining({ id }));
  });
});

describe('lye, fragrance and additives', () => {
  test.for([
    ['NaOH', { kind: 'NaOH' }],
    ['sosa cáustica', { kind: 'NaOH' }],
    ['KOH 90%', { kind: 'KOH', kohPurity: 0.9 }],
    ['both', { kind: 'both', kohShare: 0.05 }],
    ['NaOH 95% + KOH 5%', { kind: 'both', kohShare: 0.05 }],
    ['KOH 10%, NaOH 90%', { kind: 'both', kohShare: 0.1 }],
    ['both 20% KOH', { kind: 'both', kohShare: 0.2 }],
    ['NaOH 98%', { kind: 'NaOH', naohPurity: 0.98 }],
  ] as const)('%s', ([text, lye]) => {
    expect(parseLye(text)).toEqual(lye);
  });

  test('an unknown lye, or shares that make no whole, are refused', () => {
    expect(() => parseLye('ash')).toThrow(expect.objectContaining({ id: 'lye-unreadable' }));
    expect(() => parseLye('NaOH 90% KOH 20%')).toThrow(expect.objectContaining({ id: 'lye-shares-sum' }));
  });

  test('fragrance comes with its vanillin, which is none unless said', () => {
    expect(parseFragrance('3%')).toEqual({ percentOfOils: 3, vanillinPercent: 0 });
    expect(parseFragrance('3% of oils, vanillin 8%')).toEqual({ percentOfOils: 3, vanillinPercent: 8 });
    expect(() => parseFragrance('30%')).toThrow(expect.objectContaining({ id: 'fragrance-dose-high' }));
  });

  test('additives come by weight, by spoon and by percent of the oils', () => {
    const [honey, salt, milk] = parseAdditives('1 Tbsp honey, salt 5%, leche de cabra 100 g');
    expect(honey).toMatchObject({ id: 'honey' });
    // A US tablespoon of honey weighs 21 g (USDA household measure).
    expect('grams' in honey!.amount && honey!.amount.grams).toBeCloseTo(21, 0);
    expect(salt).toEqual({ id: 'salt', amount: { percentOfOils: 5 } });
    expect(milk).toEqual({ id: 'goat-milk', amount: { grams: 100 } });
  });

  test.for([
    ['glitter 5 g', 'additive-unknown'],
    ['honey', 'additive-without-amount'],
    ['salt 150%', 'additive-too-much'],
  ] as const)('%s is refused: %s', ([text, id]) => {
    expect(() => parseAdditives(text)).toThrow(expect.objectContaining({ id }));
  });
});

describe('a whole plan', () => {
  test('takes the usual where nothing is said', () => {
    expect(readPlan({ oils: 'olive 600 g, coconut 400 g' })).toMatchObject({
      size: { by: 'oils', grams: 1000 },
      superfatPercent: 5,
      lye: { kind: 'NaOH' },
      water: { by: 'lye-strength', percent: 33 },
      scaleStepGrams: 0.1,
      reservePercent: 2,
      heat: { process: 'ambient', roomC: 21, startC: 38 },
    });
  });

  test('takes one purity for the lye it names', () => {
    const lyeOf = (lye: string) => readPlan({ oils: 'olive 1 kg', lye, purity: 95 }).lye;
    expect(lyeOf('NaOH')).toMatchObject({ naohPurity: 0.95 });
    expect(lyeOf('both')).toMatchObject({ naohPurity: 0.95, kohPurity: 0.95 });
    expect(lyeOf('KOH 90%')).toMatchObject({ kohPurity: 0.9 });
  });

  test('takes temperatures in either unit', () => {
    const { heat } = readPlan({
      oils: 'olive 1 kg',
      start: '100 F',
      room: '18 °C',
      process: 'oven',
      oven: '170F',
    });
    expect(heat.startC).toBeCloseTo(37.8, 1);
    expect(heat).toMatchObject({ roomC: 18, process: 'oven' });
    expect(heat.ovenC).toBeCloseTo(76.7, 1);
  });

  test('names the colours to find, each once, and calls portions after them', () => {
    const read = readPlan({
      oils: 'olive 1 kg',
      portions: '1 cup gold mica; 1 cup gold mica pastel; Sky: 1 cup ultramarine blue; 100 ml plain; rest',
    });
    expect(coloursNamed(read)).toEqual(['gold mica', 'ultramarine blue']);
    const { portions } = withColours(read, text => ({ colourant: findColourant(text) }));
    expect(portions.map(({ name }) => name)).toEqual(['gold mica', 'gold mica 2', 'Sky', 'plain', 'rest']);
    expect(portions[0]!.colours[0]!.asked.colourant.id).toBe('gold-mica');
  });
});

describe('anything a member may type', () => {
  const words = fc.constantFrom(
    ...'2 1/2 cups 500 ml 33% lye of oils olive coconut in water rest plain + ; : x 25x9x7 cm -1 1,500 g Tbsp ½ KOH mould'.split(
      ' ',
    ),
  );
  const typed = fc.oneof(
    fc.string(),
    fc.array(words, { maxLength: 12 }).map(list => list.join(' ')),
  );
  const readers = {
    oils: parseOils,
    size: parseSize,
    water: parseWater,
    portions: parsePortions,
    additives: parseAdditives,
    lye: parseLye,
    fragrance: parseFragrance,
  };

  for (const [name, read] of Object.entries(readers)) {
    property.prop([typed], { numRuns: 300 })(`is ${name} or a refusal, never a fault`, text => {
      try {
        read(text);
      } catch (error) {
        // Anything but a refusal is a fault of ours.
        if (!(error instanceof Refusal)) throw error;
      }
    });
  }
});
