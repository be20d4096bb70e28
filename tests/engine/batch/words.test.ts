import { describe, expect, test } from 'vitest';
import { parseAdditives } from '../../../src/engine/batch/additives/additives.ts';
import { parseFragrance } from '../../../src/engine/batch/additives/fragrance.ts';
import { parseSize } from '../../../src/engine/batch/batch-size.ts';
import { parseLiquids } from '../../../src/engine/batch/liquids/liquid-list.ts';
import { parseLye } from '../../../src/engine/batch/lye/lye-choice.ts';
import { parseWater } from '../../../src/engine/batch/lye/water.ts';
import { parseOils } from '../../../src/engine/batch/oils/lists/oil-list.ts';
import { planClass } from '../../../src/engine/batch/planning/class-kits.ts';
import { planBatch } from '../../../src/engine/batch/planning/plan.ts';
import { rescale } from '../../../src/engine/batch/planning/rescale.ts';
import { readPlan } from '../../../src/engine/batch/planning/written-plan.ts';
import { parsePortions } from '../../../src/engine/batch/portions/portion-list.ts';
import { fold } from '../../../src/engine/text/fold.ts';
import { batch as enBatch } from '../../../src/words/en/batch/batch.ts';
import { batchRefusals as enRefusals } from '../../../src/words/en/batch/batch-refusals.ts';
import { heat as enHeat } from '../../../src/words/en/batch/heat.ts';
import { timeline as enTimeline } from '../../../src/words/en/batch/timeline.ts';
import { batch as esBatch } from '../../../src/words/es/batch/batch.ts';
import { batchRefusals as esRefusals } from '../../../src/words/es/batch/batch-refusals.ts';
import { heat as esHeat } from '../../../src/words/es/batch/heat.ts';
import { timeline as esTimeline } from '../../../src/words/es/batch/timeline.ts';
import { asked, ONE_LINE, refusalOf, type Written } from './asked.ts';

type Say = (values: unknown) => string;
const HOLE = /undefined|NaN|\[object/u;
const plan = (written: Written) => () => planBatch(asked(written));

/** Every reason the batch can give, by something a member could have typed. */
const REFUSED: Readonly<Record<keyof typeof enRefusals, () => unknown>> = {
  'oil-unknown': () => parseOils('moonshine 100%'),
  'oil-not-clarified': () => parseOils('butter 500 g'),
  'oils-empty': () => parseOils(' '),
  'oil-without-amount': () => parseOils('olive'),
  'oil-by-volume': () => parseOils('olive 2 cups'),
  'oils-mixed-units': () => parseOils('olive 50%, palm 200 g'),
  'oils-percent-sum': () => parseOils('olive 90%'),
  'size-unreadable': () => parseSize('huge'),
  'size-missing': () => readPlan({ oils: 'olive 100%' }),
  'size-oils-by-volume': () => parseSize('500 ml oils'),
  'size-out-of-range': () => parseSize('1 g oils'),
  'mould-without-unit': () => parseSize('mould 25x9x7'),
  'mould-sides': () => parseSize('mould 25x9 cm'),
  'cavity-by-mass': () => parseSize('12 x 4 oz'),
  'water-bare-percent': () => parseWater('33%'),
  'water-unreadable': () => parseWater('some'),
  'carrier-by-mass': () => parsePortions('1 cup red oxide in 5 g olive'),
  'portion-without-amount': () => parsePortions('red oxide'),
  'portions-many': () => parsePortions(Array.from({ length: 13 }, () => '1 cup plain').join(';')),
  'portions-two-rests': () => parsePortions('rest; rest'),
  'portion-colours-many': () => parsePortions('1 cup a1+b1+c1+d1+e1+f1'),
  'portions-exceed-batter': plan({ portions: '9 l plain' }),
  'portions-parts-and-rest': plan({ portions: '1 part plain; rest' }),
  'reserve-out-of-range': plan({ reserve: 60 }),
  'additive-unknown': () => parseAdditives('glitter 5 g'),
  'additive-without-amount': () => parseAdditives('honey'),
  'additive-too-much': () => parseAdditives('salt 200%'),
  'superfat-negative': plan({ superfat: -3 }),
  'superfat-absurd': plan({ superfat: 90 }),
  'purity-out-of-range': plan({ lye: 'NaOH 10%' }),
  'koh-share-out-of-range': plan({ lye: 'both 100% KOH' }),
  'lye-unreadable': () => parseLye('ashes'),
  'lye-shares-sum': () => parseLye('NaOH 50% KOH 20%'),
  'percent-unreadable': () => parseFragrance('lots'),
  'scale-too-coarse': plan({ size: '100 g oils', scale: 1 }),
  'lye-too-strong': plan({ water: '60% lye' }),
  'water-turned-round': () => parseWater('1:2'),
  'lye-too-weak': plan({ water: '5% lye' }),
  'milk-more-than-water': plan({ additives: 'milk 900 g' }),
  'dip-too-deep': plan({ portions: '3 cups ultramarine blue in 8 Tbsp dipped oil; rest' }),
  'dipped-oil-missing': plan({ portions: '1 cup ultramarine blue in 1 Tbsp dipped jojoba; rest' }),
  'rescale-out-of-range': () => rescale(asked({}), 1000),
  'additive-eats-lye-by-spoon': () => parseAdditives('1 tsp citric acid'),
  'blend-sets-before-pour': plan({ oils: 'stearic acid 50%, coconut 50%' }),
  'wax-too-much': plan({ oils: 'beeswax 40%, olive 60%', start: '80 C' }),
  'oil-never-soap': () => parseOils('paraffin 100%'),
  'scent-needs-certificate': () => parseFragrance('2% clove'),
  'scent-over-certificate': () => parseFragrance('2% clove, certificate 0.5%'),
  'scent-barred': () => parseFragrance('3% eau de toilette'),
  'scent-as-additive': () => parseAdditives('lavender essential oil 10 g'),
  'fragrance-dose-high': () => parseFragrance('8%'),
  'fragrance-dose-unclear': () => parseFragrance('vanillin 8%'),
  'jug-too-little-water': plan({ liquid: 'cream 250 g, goat milk 100 g in the oils' }),
  'liquid-never-in-jug': plan({ liquid: 'cream 50 g in the jug' }),
  'liquid-unknown': () => parseLiquids('mercury'),
  'liquid-is-spirit': () => parseLiquids('half vodka'),
  'liquid-is-bleach': () => parseLiquids('half bleach'),
  'liquid-water-weight': () => parseLiquids('water 300 g'),
  'liquids-over-all': () => parseLiquids('beer 60%, tea 60%'),
  'lye-shares-unclear': () => parseLye('dual lye 60/40'),
  'lye-solution-of-both': () => parseLye('masterbatch of both NaOH and KOH'),
  'solution-too-weak': plan({ lye: '30% lye solution' }),
  'water-or-masterbatch': () => parseWater('50% lye solution'),
  'class-out-of-range': () => planClass(asked({}), { people: 1, stations: 2, planIsFor: 'class' }),
};

describe('a refusal', () => {
  test.for(Object.entries(REFUSED))('%s is one clear sentence or two in both languages', ([id, act]) => {
    const refusal = refusalOf(act);
    expect(refusal.id).toBe(id);
    for (const sentences of [enRefusals, esRefusals]) {
      const said = (sentences[id as keyof typeof enRefusals] as Say)(refusal.values);
      expect(said).not.toMatch(HOLE);
      expect(said.length).toBeGreaterThan(20);
      expect(said.length).toBeLessThan(220);
    }
  });
});

const plans = [
  planBatch(asked(ONE_LINE)),
  planBatch(
    asked({
      portions: '1 cup red oxide in 1 tsp dipped oil; 1 cup titanium dioxide full; rest',
      additives: 'milk 50 g, salt 2%, citric acid 5 g',
      fragrance: '3%, vanillin 2%',
      swirl: 'layered',
      heat: { process: 'oven' },
    }),
  ),
  planBatch(
    asked({ liquid: 'wine', additives: 'honey 20 g', oils: 'olive 90%, beeswax 5%, stearic acid 5%' }),
  ),
  planBatch(
    asked({ liquid: 'coconut milk 30% in the oils', lye: '50% lye solution', additives: 'citric acid 5 g' }),
  ),
  planBatch(asked({ lye: 'KOH', liquid: 'half vinegar' })),
  planBatch(asked({ additives: 'anhydrous citric acid 5 g', size: '12 kg oils' })),
  planBatch(asked({ start: '60 C', liquid: 'goat milk', heat: { process: 'insulated' } })),
  planBatch(asked({ lye: 'NaOH 80% + KOH 20%', additives: 'salt 50%', liquid: 'ice 50 g' })),
];

describe('a plan', () => {
  test('is spoken step by step and warning by warning in both languages, without a hole', () => {
    const spoken = plans.flatMap(({ timeline, warnings }) => [
      ...timeline.flatMap(({ step, values }) =>
        [enTimeline, esTimeline].map(({ steps }) => (steps[step] as Say)(values)),
      ),
      ...warnings.flatMap(({ id, values }) =>
        [enBatch, esBatch].map(({ warnings: sentences }) => (sentences[id] as Say)(values)),
      ),
    ]);
    expect(spoken.length).toBeGreaterThan(60);
    for (const sentence of spoken) {
      expect(sentence).not.toMatch(HOLE);
      expect(sentence.length).toBeLessThan(430);
    }
  });

  test('names the oil a colour is soaked in, and whether it is dipped', () => {
    const said = (at: number, words: typeof enTimeline) =>
      plans[at]!.timeline.filter(({ step }) => step === 'soak-colour')
        .map(({ step, values }) => (words.steps[step] as Say)(values))
        .join(' ');
    expect(said(0, enTimeline)).toContain('1 Tbsp olive oil');
    expect(said(1, enTimeline)).toContain('dipped from the batch');
    expect(said(1, esTimeline)).toContain('apartado de la receta');
  });

  test('never writes a thousand as one comma something', () => {
    const weighed = plans[0]!.timeline.find(({ step }) => step === 'weigh-oils')!;
    expect((enTimeline.steps['weigh-oils'] as Say)(weighed.values)).toContain('1000 g');
  });

  test('tells its heat, its levers and that it is an estimate', () => {
    for (const heat of [enHeat, esHeat]) {
      const { crackle, gel, verdict } = plans[0]!.heat;
      const said = [
        heat.gel(gel),
        heat.verdicts[verdict],
        ...crackle.levers.map(({ id, to, peakCoreC, gelChance }) =>
          heat.lever({ id, to: to ?? 0, peakC: peakCoreC, gelChance }),
        ),
      ].join(' ');
      expect(said).not.toMatch(HOLE);
      expect(said).toMatch(/\d+ °C/u);
      expect(heat.estimate).toMatch(/estima/u);
    }
  });
});

test('the lye cautions say what anybody must hear', () => {
  const english = fold(Object.values(enBatch.lyeCautions).join(' '));
  for (const words of [
    'goggle',
    'glove',
    'long sleeve',
    'lye slowly to cold water',
    'aluminium',
    'not glass',
    'never close the vessel tight',
    'label',
    'by spoon',
    'children',
    'pet',
    'local rule',
    'licensed',
  ]) {
    expect(english).toContain(words);
  }
});
