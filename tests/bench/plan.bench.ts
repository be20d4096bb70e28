import { expect, test } from 'vitest';
import { planBatch } from '../../src/engine/batch/planning/plan.ts';
import { readPlan, withColours } from '../../src/engine/batch/planning/written-plan.ts';
import { findColourant } from '../../src/engine/colourants/find.ts';
import { estimateHeat, type HotBatter, quickHeat } from '../../src/engine/heat/estimate.ts';
import { rateTable, SAPONIFICATION } from '../../src/engine/heat/kinetics.ts';
import { mouldSection } from '../../src/engine/heat/mould.ts';
import { runLoaf } from '../../src/engine/heat/run.ts';
import { USUAL_HEAT } from '../../src/engine/heat/setting.ts';
import { drawBatchCard } from '../../src/pictures/card/phone-card.ts';
import { drawTimeline } from '../../src/pictures/card/timeline.ts';
import { cpuOf } from '../cpu-time.ts';
import { median } from './bots/side-by-side.ts';
import { sayRatio } from './ratio.ts';
import { usualCard } from './usual-card.ts';

/** Of this most is looking letters up in the font files, which the painter does for every glyph, and three pixels to the point. */
const MOST_CARD_MS = 400;

const loaf = { shape: 'loaf', widthCm: 9, heightCm: 7 } as const;
const batter: HotBatter = {
  density: 1.0,
  heatCapacity: 2.4,
  hydroxidePerGram: 0.0025,
  waterPercent: 20,
  speed: 1,
};
/** Each run takes a good part of a second: a dozen are enough for a ratio. */
const warm = { time: 500, iterations: 12, warmupTime: 100, warmupIterations: 2 };

const request = withColours(
  readPlan({
    oils: 'coconut 30%, olive 50%, palm 20%',
    size: '1000 g oils',
    portions:
      '2 cups ultramarine blue in 1 Tbsp olive; 500 ml titanium dioxide medium + gold mica pastel; rest',
  }),
  text => ({ colourant: findColourant(text) }),
);

test('the band of what is not known about heat', async ({ bench }) => {
  const whole = await bench('27 runs of the heat equation', () => {
    estimateHeat(loaf, batter, USUAL_HEAT);
  }).run(warm);
  const quick = await bench('9 runs, heat loss held typical', () => {
    quickHeat(loaf, batter, USUAL_HEAT);
  }).run(warm);
  sayRatio('heat: 9 runs against 27', quick, whole);
});

/** Processor time of each of so many rounds, ms: what else the machine does has little part in the middle one. */
async function rounds(count: number, work: () => unknown): Promise<readonly number[]> {
  const took: number[] = [];
  for (let round = 0; round < count; round += 1) took.push(await cpuOf(work));
  return took;
}

test('the cells of 7.5 mm against cells of 1.25 mm, in degrees', () => {
  const runs = [0.0075, 0.00125].map(cell =>
    runLoaf({
      section: mouldSection(loaf, USUAL_HEAT, 2.4e6, 8, cell),
      startC: 38,
      wallStartC: 21,
      outsideC: () => 21,
      heatPerVolume: 1.6e8,
      rates: rateTable(SAPONIFICATION, 1.2),
    }),
  );
  const [ours, fine] = runs as [(typeof runs)[0], (typeof runs)[0]];
  const off = {
    core: ours.peakCoreC - fine.peakCoreC,
    edge: ours.peakEdgeC - fine.peakEdgeC,
    curve: Math.max(...ours.curve.map((celsius, at) => Math.abs(celsius - (fine.curve[at] ?? celsius)))),
  };
  console.info(
    `cells of 7.5 mm are off by ${off.core.toFixed(2)} C in the core, ${off.edge.toFixed(2)} C at the edge, and ` +
      `${off.curve.toFixed(2)} C at most on the way (of 1.25 mm)`,
  );
  expect(Math.abs(off.core)).toBeLessThan(0.5);
  expect(Math.abs(off.edge)).toBeLessThan(0.5);
  expect(off.curve).toBeLessThan(1);
});

test('a plan and its card in processor time', async () => {
  const [firstPlan] = await rounds(1, () => planBatch(request));
  const plan = median(await rounds(30, () => planBatch(request)));
  const [firstCard] = await rounds(1, () => drawBatchCard(usualCard));
  const card = median(await rounds(10, () => drawBatchCard(usualCard)));
  console.info(
    `a plan ${plan.toFixed(1)} ms (the first of a thread ${firstPlan?.toFixed(0)}), ` +
      `its card ${card.toFixed(0)} ms (${firstCard?.toFixed(0)})`,
  );
  expect(plan).toBeLessThan(40);
  expect(card).toBeLessThan(MOST_CARD_MS);
});

test('27 runs against as many in cells of 5 mm', async ({ bench }) => {
  const runs = (cell: number) => () => {
    const section = mouldSection(loaf, USUAL_HEAT, 2.4e6, 8, cell);
    for (let run = 0; run < 27; run += 1)
      runLoaf({
        section,
        startC: 38,
        wallStartC: 21,
        outsideC: () => 21,
        heatPerVolume: 1.6e8,
        rates: rateTable(SAPONIFICATION, 1.2),
      });
  };
  const ours = await bench('cells of 7.5 mm', runs(0.0075)).run(warm);
  const finer = await bench('cells of 5 mm', runs(0.005)).run(warm);
  sayRatio('heat: cells of 7.5 mm against 5 mm', ours, finer);
  expect(ours.throughput.mean / finer.throughput.mean).toBeGreaterThan(1.5);
});

test('a whole plan', async ({ bench }) => {
  const plan = await bench('plan with its heat and what lowers it', () => {
    planBatch(request);
  }).run(warm);
  const heat = await bench('27 runs of the heat equation alone', () => {
    estimateHeat(loaf, batter, USUAL_HEAT);
  }).run(warm);
  sayRatio('the heat band alone against a whole plan', heat, plan);
});

test('its list of times', async ({ bench }) => {
  const line = 'Stir 1/2 tsp gold mica into 1 Tbsp light oil until no dry speck is left.';
  const drawn = await bench('a list of 40 lines', async () => {
    await drawTimeline({
      title: 'When',
      rows: Array.from({ length: 40 }, (_, at) => ({ when: `${at} min`, what: line })),
    });
  }).run(warm);
  const plan = await bench('the plan on it', () => {
    planBatch(request);
  }).run(warm);
  sayRatio('drawing its times against planning it', drawn, plan);
});
