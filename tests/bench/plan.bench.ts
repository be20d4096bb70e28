import { test } from 'vitest';
import { planBatch } from '../../src/engine/batch/planning/plan.ts';
import { readPlan, withColours } from '../../src/engine/batch/planning/written-plan.ts';
import { findColourant } from '../../src/engine/colourants/asked/find-colourant.ts';
import { estimateHeat, type HotBatter, quickHeat } from '../../src/engine/heat/estimate.ts';
import { rateTable, SAPONIFICATION } from '../../src/engine/heat/kinetics.ts';
import { mouldSection } from '../../src/engine/heat/mould.ts';
import { runLoaf } from '../../src/engine/heat/run.ts';
import { USUAL_HEAT } from '../../src/engine/heat/setting.ts';
import { drawBatchCard } from '../../src/pictures/card/phone-card.ts';
import { drawTimeline } from '../../src/pictures/card/timeline.ts';
import { cpuOf, leastCpu } from '../cpu-time.ts';
import { median } from './bots/side-by-side.ts';
import { hold, timesAsMany } from './figures.ts';
import { usualCard } from './usual-card.ts';

/**
 * Of this a half is asking the kernel for the memory of 720 by 1,600 pixels, twice, and filling it: 25 ms where a page
 * costs as much as on a crowded virtual machine, a few on another. So the least of some rounds is held to it.
 */
const MOST_CARD_MS = 120;

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

test('the band of what is not known about heat', async ({ bench, task }) => {
  const whole = await bench('27 runs of the heat equation', () => {
    estimateHeat(loaf, batter, USUAL_HEAT);
  }).run(warm);
  const quick = await bench('9 runs, heat loss held typical', () => {
    quickHeat(loaf, batter, USUAL_HEAT);
  }).run(warm);
  hold(task, [{ what: 'heat: 9 runs beside 27', seen: timesAsMany(quick, whole), least: 2, unit: 'times' }]);
});

/** Processor time of each of so many rounds, ms: what else the machine does has little part in the middle one. */
async function rounds(count: number, work: () => unknown): Promise<readonly number[]> {
  const took: number[] = [];
  for (let round = 0; round < count; round += 1) took.push(await cpuOf(work));
  return took;
}

test('the cells of 7.5 mm against cells of 1.25 mm, in degrees', ({ task }) => {
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
  hold(task, [
    { what: 'heat, cells of 7.5 mm: core off', seen: Math.abs(off.core), most: 0.5, unit: 'C' },
    { what: 'heat, cells of 7.5 mm: edge off', seen: Math.abs(off.edge), most: 0.5, unit: 'C' },
    { what: 'heat, cells of 7.5 mm: off on the way', seen: off.curve, most: 1, unit: 'C' },
  ]);
});

test('a plan and its card in processor time', async ({ task }) => {
  const [firstPlan] = await rounds(1, () => planBatch(request));
  const plan = median(await rounds(30, () => planBatch(request)));
  const [firstCard] = await rounds(1, () => drawBatchCard(usualCard));
  const card = await leastCpu(() => drawBatchCard(usualCard), 0, 15);
  console.info(`the first of a thread: a plan ${firstPlan?.toFixed(0)} ms, a card ${firstCard?.toFixed(0)}`);
  hold(task, [
    { what: 'a plan', seen: plan, most: 40, unit: 'ms of processor time' },
    { what: 'its card', seen: card, most: MOST_CARD_MS, unit: 'ms of processor time' },
  ]);
});

test('27 runs against as many in cells of 5 mm', async ({ bench, task }) => {
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
  hold(task, [
    { what: 'heat: cells of 7.5 mm beside 5 mm', seen: timesAsMany(ours, finer), least: 1.5, unit: 'times' },
  ]);
});

test('a whole plan', async ({ bench, task }) => {
  const plan = await bench('plan with its heat and what lowers it', () => {
    planBatch(request);
  }).run(warm);
  const heat = await bench('27 runs of the heat equation alone', () => {
    estimateHeat(loaf, batter, USUAL_HEAT);
  }).run(warm);
  hold(task, [
    {
      what: 'a whole plan beside its heat alone',
      seen: timesAsMany(heat, plan),
      most: 4,
      unit: 'times as long',
    },
  ]);
});

test('its list of times', async ({ bench, task }) => {
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
  hold(task, [
    {
      what: 'drawing its times beside planning it',
      seen: timesAsMany(plan, drawn),
      most: 40,
      unit: 'times as long',
    },
  ]);
});
