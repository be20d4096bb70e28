import { describe, expect, test } from 'vitest';
import { oilGramsFor } from '../../../src/engine/batch/fit.ts';
import { parseLye } from '../../../src/engine/batch/lye/lye-choice.ts';
import { parseOils } from '../../../src/engine/batch/oils/lists/oil-list.ts';
import { planBatch } from '../../../src/engine/batch/planning/plan.ts';
import { readPlan } from '../../../src/engine/batch/planning/written-plan.ts';
import { makeRecipe } from '../../../src/engine/batch/recipe.ts';
import { askedBackRefusals as en } from '../../../src/words/en/batch/asked-back.ts';
import { batch as enBatch } from '../../../src/words/en/batch/batch.ts';
import { askedBackRefusals as es } from '../../../src/words/es/batch/asked-back.ts';
import { batch as esBatch } from '../../../src/words/es/batch/batch.ts';
import { asked, refusalOf, type Written } from './asked.ts';

type Say = (values: unknown) => string;

/** What is refused, spoken in both languages, each in a sentence or two without a hole. */
function spoken(act: () => unknown, id: string): readonly [string, string] {
  const refusal = refusalOf(act);
  expect(refusal.id).toBe(id);
  const said = [en, es].map(words => (words[id as keyof typeof en] as Say)(refusal.values));
  for (const sentence of said) {
    expect(sentence).not.toMatch(/undefined|NaN|\[object/u);
    expect(sentence.length).toBeGreaterThan(20);
    expect(sentence.length).toBeLessThan(260);
  }
  return [said[0]!, said[1]!];
}

describe('which lye', () => {
  test.each([
    'potassium carbonate',
    'carbonato de potasio',
    'sodium bicarbonate',
    'soda ash',
    'K2CO3',
    'KOH carbonate',
  ])('%s is refused: it is no hydroxide', lye => {
    const [said, dicho] = spoken(() => parseLye(lye), 'lye-not-hydroxide');
    expect(said).toContain('NaOH');
    expect(dicho).toContain('carbonatos');
  });

  test.each(['potash', 'potash 50% solution', 'potasa', 'Potasa 90%', 'potasa líquida'])(
    '%s is asked back: caustic potash or the carbonate?',
    lye => {
      const [said, dicho] = spoken(() => parseLye(lye), 'lye-potash-unclear');
      expect(said).toContain('caustic potash (KOH) or potassium carbonate?');
      expect(dicho).toContain('¿potasa cáustica (KOH) o carbonato de potasio?');
    },
  );

  test.each(['caustic potash', 'potasa cáustica', 'potash (KOH)', 'potassium hydroxide', 'KOH'])(
    '%s is KOH',
    lye => {
      expect(parseLye(lye).kind).toBe('KOH');
    },
  );

  test.each([
    'masterbatch 1:1 by volume',
    '50% by volume NaOH solution',
    'NaOH al 50% en volumen',
    'NaOH 1 cup',
  ])('%s is refused: lye is weighed', lye => {
    expect(spoken(() => parseLye(lye), 'lye-by-volume')[0]).toContain('Weigh it');
  });

  test('a masterbatch by volume is refused where the water is written, too', () => {
    spoken(() => asked({ water: 'masterbatch 1:1 by volume' }), 'lye-by-volume');
  });

  test.each(['100 g NaOH', 'NaOH 200 g', '4 oz NaOH', 'KOH 0.1 kg'])(
    '%s: its weight is worked out, never passed over in silence',
    lye => {
      spoken(() => parseLye(lye), 'lye-weight-told');
    },
  );
});

describe('the percent of a solution is pure alkali', () => {
  const lyeOf = (written: Written) => makeRecipe(asked(written), oilGramsFor(asked(written))).lye[0]!;

  /** 45 % by assay (the trade's usual bottle of caustic potash): as much pure KOH as dry alkali of 100 %. */
  test('KOH 45% solution holds as much KOH as pure flakes do', () => {
    expect(lyeOf({ lye: 'KOH 45% solution' }).exactGrams).toBeCloseTo(
      lyeOf({ lye: 'KOH 100%' }).exactGrams,
      6,
    );
    expect(lyeOf({ lye: 'KOH 45% solution', purity: 90 }).exactGrams).toBeCloseTo(
      lyeOf({ lye: 'KOH 90%' }).exactGrams,
      6,
    );
  });

  test('it says so, and no longer that flakes are taken as 90 %', () => {
    const ids = planBatch(asked({ lye: 'KOH 45% solution' })).warnings.map(({ id }) => id);
    expect(ids).toContain('lye-kept-dissolved');
    expect(ids).not.toContain('purity-assumed');
    expect(planBatch(asked({ lye: 'KOH' })).warnings.map(({ id }) => id)).toContain('purity-assumed');
  });
});

describe('a number parted by a space behind an oil', () => {
  test.each([
    'coconut 76 100g',
    'coconut 92 100 g',
    'coconut oil 76° 100 g',
    'coco 76 100 g',
    'coconut 76 deg 100 g',
  ])('%s is 100 g of coconut of that grade', text => {
    const { totalGrams, shares } = parseOils(`olive 400 g, ${text}`);
    expect(totalGrams).toBeCloseTo(500, 9);
    expect(shares.map(({ oil }) => oil.id)).toEqual(['olive', 'coconut']);
  });

  test.each(['palm 76 300 g', 'castor 5 100 g', 'coconut 2 500 g', 'olive 1 500,5 g', 'oliva: 1 500 g'])(
    '%s is asked back',
    text => {
      spoken(() => parseOils(`olive 400 g, ${text}`), 'oil-number-spaced');
    },
  );

  test('both readings are named', () => {
    const [said, dicho] = spoken(() => parseOils('castor 5 100 g'), 'oil-number-spaced');
    expect(said).toContain('5100 g, or 100 g?');
    expect(dicho).toContain('¿5100 g o 100 g?');
  });

  test('as a percent it stays one: coconut 76 %, olive 24 %', () => {
    expect(parseOils('coconut 76, olive 24').shares[0]!.share).toBeCloseTo(0.76, 9);
    expect(parseOils('coconut 76 30%, olive 70%').shares[0]!.share).toBeCloseTo(0.3, 9);
  });

  test('more than 60 kg of oils is asked back unless the size is told in kilograms', () => {
    const [said] = spoken(() => readPlan({ oils: 'olive 76100 g' }), 'size-very-large');
    expect(said).toContain('76 kg');
    spoken(() => readPlan({ oils: 'olive 100%', size: '76100 g oils' }), 'size-very-large');
    expect(readPlan({ oils: 'olive 100%', size: '76 kg oils' }).size).toEqual({ by: 'oils', grams: 76_000 });
    expect(readPlan({ oils: 'olive 60000 g' }).size).toEqual({ by: 'oils', grams: 60_000 });
  });
});

describe('how hot it may be poured', () => {
  test.each(['95 C', '61 C', '200 F'])('%s is refused for olive and coconut', start => {
    expect(spoken(() => asked({ start }), 'start-too-hot')[0]).toContain('60 °C (140 °F) at most');
  });

  test('what melts well below 50 C does not lift it', () => {
    const oils = 'cocoa butter 20%, lanolin 5%, olive 75%';
    expect(spoken(() => asked({ oils, start: '70 C' }), 'start-too-hot')[0]).toContain('60 °C');
  });

  test('a wax lifts that to 85 C, with a warning before all others', () => {
    const oils = 'beeswax 5%, olive 95%';
    expect(planBatch(asked({ oils, start: '70 C' })).warnings[0]!.id).toBe('start-hot');
    expect(spoken(() => asked({ oils, start: '86 C' }), 'start-too-hot')[0]).toContain('85 °C');
    expect(planBatch(asked({ start: '60 C' })).warnings.map(({ id }) => id)).not.toContain('start-hot');
  });
});

describe('more of an additive than soap takes', () => {
  test.each([
    'honey 50%',
    'honey 500 g',
    // All sugars together: the heat is that of their sum.
    'honey 30 g, sugar 30 g',
    'honey 6%',
    'sugar 5.5%',
    'citric acid 2%, anhydrous citric acid 2%',
    'sodium lactate 50%',
    'clay 100%',
    'citric acid 10%',
    'oatmeal 40%',
  ])('%s is asked back with the most there may be', additives => {
    spoken(() => planBatch(asked({ additives })), 'additive-over-usual');
  });

  test.each(['honey 3%', 'sodium lactate 3%', 'clay 5%', 'citric acid 3%', 'salt 80%', 'honey 5%'])(
    '%s is planned',
    additives => {
      expect(planBatch(asked({ additives })).timeline.length).toBeGreaterThan(0);
    },
  );
});

test.each(['shortening', 'manteca vegetal', 'aceite vegetal', 'almond butter', 'mantequilla de almendra'])(
  '%s is asked back: which fat is in it?',
  oil => {
    expect(spoken(() => parseOils(`${oil} 100%`), 'oil-unclear')[0]).toContain('which fat is in it?');
  },
);

test.each([
  'peanut butter',
  'coconut butter',
  'mantequilla de maní',
  'olives',
  'aceitunas',
  'walnuts',
  'almonds',
])('%s is a food, and lye for its whole weight would burn', food => {
  expect(spoken(() => parseOils(`300 g ${food}, 200 g lard`), 'oil-is-food')[0]).toContain('only some fat');
});

test.each([
  'chicken fat',
  'olive',
  'aceite de almendras',
  'almendras dulces',
  'avocado',
  'aceite de aguacate',
])('%s is an oil', oil => {
  expect(parseOils(`300 g ${oil}`).shares).toHaveLength(1);
});

test('of a sour liquid it is said that a weaker one leaves lye in the bar', () => {
  const plan = planBatch(asked({ liquid: 'half vinegar' }));
  const warning = plan.warnings.find(({ id }) => id === 'liquid-eats-lye')!;
  expect((enBatch.warnings['liquid-eats-lye'] as Say)(warning.values)).toMatch(
    /weaker one leaves lye.*%.*spit/u,
  );
  expect((esBatch.warnings['liquid-eats-lye'] as Say)(warning.values)).toMatch(
    /flojo, queda sosa.*%.*salpican/u,
  );
});

test('weights without a unit are asked for their unit', () => {
  expect(spoken(() => parseOils('olive 500, coconut 300'), 'oils-without-unit')[0]).toContain('Add g or oz');
  expect(parseOils('olive 70, coconut 30').totalGrams).toBeUndefined();
  expect(refusalOf(() => parseOils('olive 70%, coconut 50%')).id).toBe('oils-percent-sum');
});

test('a jug above 40 % is warned of, whoever asked for it', () => {
  const ids = (written: Written) => planBatch(asked(written)).warnings.map(({ id }) => id);
  expect(ids({ water: '1:1' })).toContain('jug-strong');
  expect(ids({ water: '40% lye' })).not.toContain('jug-strong');
});

test.each([
  '1000 g milk',
  'goat milk 100%',
  'leche 1000 g',
  '500 g olive, 500 g water',
  'cerveza 100%',
  'olive 90%, honey 10%',
])('%s: what is no fat takes no lye', oils => {
  expect(spoken(() => parseOils(oils), 'oil-is-liquid')[0]).toContain('is no fat');
});

test.each(['milk fat 100%', 'coconut milk thistle 100%', 'sweet almond 100%', 'mantequilla 100%'])(
  '%s is not taken for a drink',
  oils => {
    const id = (() => {
      try {
        parseOils(oils);
        return undefined;
      } catch (refusal) {
        return (refusal as { id: string }).id;
      }
    })();
    expect(id).not.toBe('oil-is-liquid');
  },
);
