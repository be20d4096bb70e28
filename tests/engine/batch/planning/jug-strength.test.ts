import { fc, test as property } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { planHeadline } from '../../../../commands/plan/view.ts';
import { ADDITIVES, additiveById } from '../../../../src/engine/batch/additives/additives.ts';
import { type Jug, lyeJug, STRONGEST_LYE } from '../../../../src/engine/batch/liquids/jug.ts';
import { planClass } from '../../../../src/engine/batch/planning/class-kits.ts';
import { planBatch, planNumbers } from '../../../../src/engine/batch/planning/plan.ts';
import type { PlanAnswer } from '../../../../src/engine/batch/planning/plan-answer.ts';
import { rescale } from '../../../../src/engine/batch/planning/rescale.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';
import type { Preferences } from '../../../../src/records/preferences.ts';
import { wordsIn } from '../../../../src/words/index.ts';
import { asked, filled, type Written } from '../asked.ts';

/* ---- whatever is asked, no jug is printed above 50 % ---- */

const LIQUIDS = ADDITIVES.filter(({ liquid }) => liquid !== undefined).map(({ synonyms }) => synonyms[0]!);
const OTHERS = ADDITIVES.filter(({ liquid }) => liquid === undefined).map(({ synonyms }) => synonyms[0]!);
const share = fc.oneof(
  fc.constant(''),
  fc.integer({ min: 1, max: 100 }).map(percent => ` ${percent}%`),
  fc.integer({ min: 1, max: 900 }).map(grams => ` ${grams} g`),
);
const place = fc.constantFrom('', ' in the oils', ' in the jug', ' frozen');
const liquid = fc
  .record({ name: fc.constantFrom(...LIQUIDS), share, place })
  .map(({ name, share: s, place: p }) => `${name}${s}${p}`);
const written: fc.Arbitrary<Written> = fc.record(
  {
    oils: fc.constantFrom(
      'olive 100%',
      'coconut 100%',
      'coconut 30%, olive 50%, palm 20%',
      'castor 10%, lard 90%',
    ),
    size: fc.constantFrom('300 g oils', '1000 g oils', '1.2 l batter', 'mould 25x9x7 cm', '12 x 100 ml'),
    superfat: fc.integer({ min: 0, max: 30 }),
    lye: fc.constantFrom(
      'NaOH',
      'KOH 90%',
      'NaOH 80% + KOH 20%',
      'masterbatch',
      '45% lye solution',
      'KOH 50% solution',
    ),
    water: fc.oneof(
      fc.integer({ min: 15, max: 55 }).map(percent => `${percent}% lye`),
      fc.integer({ min: 8, max: 40 }).map(tenths => `${tenths / 10}:1`),
      fc.integer({ min: 10, max: 60 }).map(percent => `${percent}% of oils`),
    ),
    liquid: fc.array(liquid, { minLength: 1, maxLength: 3 }).map(list => list.join('; ')),
    additives: fc
      .tuple(fc.constantFrom(...OTHERS, ...LIQUIDS), fc.integer({ min: 1, max: 400 }))
      .map(([name, grams]) => `${name} ${grams} g`),
    portions: fc.constantFrom(
      '2 cups gold mica in 4 Tbsp water; rest',
      'rest titanium dioxide in water',
      '1 cup ultramarine blue in glycerin; rest plain',
    ),
    scale: fc.constantFrom(0.001, 0.1, 1),
  },
  { requiredKeys: ['oils', 'size'] },
);

/** A plan's numbers with what was asked, or undefined where it is refused. */
function requestOrRefusal(one: Written) {
  try {
    const request = asked(one);
    return { request, numbers: planNumbers(request) };
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

/** The jug of a plan, or undefined where it is refused; anything else that is thrown is a fault. */
function jugOrRefusal(act: () => Jug): Jug | undefined {
  try {
    return act();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

function expectSafe(jug: Jug | undefined) {
  if (jug === undefined) return;
  const water =
    jug.waterGrams +
    (jug.solution?.waterGrams ?? 0) +
    jug.liquids.reduce(
      (sum, one) => sum + (one.into === 'jug' ? one.grams * additiveById(one.id).water : 0),
      0,
    );
  expect((100 * jug.lyeGrams) / (jug.lyeGrams + water)).toBeLessThanOrEqual(STRONGEST_LYE + 1e-6);
  expect(jug.strength).toBeCloseTo((100 * jug.lyeGrams) / (jug.lyeGrams + water), 6);
  expect(jug.waterGrams).toBeGreaterThanOrEqual(0);
  expect(jug.heldBackGrams).toBeGreaterThanOrEqual(0);
}

describe('no jug is above 50 % lye', () => {
  property.prop([written, fc.constantFrom(1, 0.5, 3, 0.1)], { numRuns: 1500 })(
    'whatever is planned, as written or rescaled',
    (one, factor) => {
      expectSafe(jugOrRefusal(() => filled(rescale(asked(one), factor)).filled.jug));
    },
  );

  property.prop([written], { numRuns: 600 })(
    'as it is printed, on any scale, in grams and in ounces',
    one => {
      const planned = requestOrRefusal(one);
      if (planned === undefined) return;
      const { request, numbers } = planned;
      const inJug = numbers.jug.liquids.some(({ into }) => into === 'jug');
      for (const mass of ['grams', 'ounces'] as const) {
        const line = planHeadline({
          answer: numbers as PlanAnswer,
          read: { request, jars: [], colours: [] },
          wishes: { mass } as Preferences,
          say: wordsIn('en'),
          notes: { cautions: [], asides: [] },
        });
        const weighed = (text: string) =>
          [...text.matchAll(/([\d.]+) (?:g|oz)/gu)].map(([, grams]) => Number(grams));
        const [before, after = ''] = line.split(' in ');
        if (numbers.jug.solution) expect(line).toMatch(/solution \((?:50|45) %\)/u);
        else if (!inJug) {
          const lye = weighed(before!).reduce((sum, grams) => sum + grams, 0);
          // Two alkalis are each rounded as they are printed: by half of the last figure at most.
          const rounding = numbers.lye.parts.length === 1 ? 1e-9 : request.scaleStepGrams >= 1 ? 1 : 0.1;
          expect(lye).toBeLessThanOrEqual(weighed(after)[0]! + rounding);
        }
      }
    },
  );

  property.prop([written], { numRuns: 12 })('on a whole plan and at each station of a class', one => {
    expectSafe(jugOrRefusal(() => planBatch(asked(one)).jug));
    expectSafe(
      jugOrRefusal(() => planClass(asked(one), { people: 2, stations: 2, planIsFor: 'class' }).station.jug),
    );
  });

  property.prop([
    fc.double({ min: 0.1, max: 500, noNaN: true }),
    fc.double({ min: 0.1, max: 900, noNaN: true }),
    fc.double({ min: 0, max: 500, noNaN: true }),
    fc.double({ min: 0, max: 500, noNaN: true }),
  ])('in the deciding function itself', (lyeGrams, waterGrams, otherWaterGrams, colourWaterGrams) => {
    const wish = {
      lyeGrams,
      waterGrams,
      otherWaterGrams,
      colourWaterGrams,
      liquids: [],
      solutionPercent: undefined,
    };
    expectSafe(jugOrRefusal(() => lyeJug(wish)));
  });
});
