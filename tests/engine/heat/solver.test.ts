import { describe, expect, test } from 'vitest';
import { growthTable, rateFrom, rateTable, SAPONIFICATION } from '../../../src/engine/heat/kinetics.ts';
import { type HeatShape, mouldSection } from '../../../src/engine/heat/mould.ts';
import { gelledShare, runLoaf } from '../../../src/engine/heat/run.ts';
import { type HeatSetting, USUAL_HEAT } from '../../../src/engine/heat/setting.ts';
import { outsideTemperature, TRANSFER } from '../../../src/engine/heat/surroundings.ts';

/** What has converted after a step at constant rate, by the logistic curve's own solution. */
function convertedAfter(converted: number, rate: number, seconds: number): number {
  const odds = (converted / (1 - converted)) * Math.exp(rate * seconds);
  return converted >= 1 ? 1 : odds / (1 + odds);
}

/** Of fresh batter, J/(m3 K), and of all its saponification, J/m3: 65 kJ/mol, 0.0025 mol/g. */
const CAPACITY = 2.42e6;
const HEAT = 65_000 * 0.0025 * 1e6;

const run = (shape: HeatShape, setting: HeatSetting, cell?: number) =>
  runLoaf({
    section: mouldSection(shape, setting, CAPACITY, TRANSFER[setting.process].typical, cell),
    startC: setting.startC,
    wallStartC: setting.roomC,
    outsideC: outsideTemperature(setting),
    heatPerVolume: HEAT,
    rates: rateTable(SAPONIFICATION, SAPONIFICATION.rateAt40C.typical),
  });

const SHAPES: readonly HeatShape[] = [
  { shape: 'loaf', widthCm: 9, heightCm: 7 },
  { shape: 'loaf', widthCm: 6, heightCm: 5 },
  { shape: 'loaf', widthCm: 20, heightCm: 4 },
  { shape: 'round', diameterCm: 7.6, heightCm: 20 },
  { shape: 'round', diameterCm: 5, heightCm: 5 },
];
const PROCESSES = ['ambient', 'insulated', 'oven', 'fridge'] as const;
const MATERIALS = ['wood', 'silicone', 'cardboard'] as const;

/*
 * The same equation in cells a third as wide, whose error is a ninth: the scheme is of second order, and is held
 * against the analytic series in tests/standards/heat.test.ts.
 */
describe.each(SHAPES)('cells as wide as they are, for %o', shape => {
  test.for(PROCESSES.flatMap(process => MATERIALS.map(material => [process, material] as const)))(
    '%s in %s: within what is stated of cells of 2.5 mm',
    ([process, material]) => {
      const setting = { ...USUAL_HEAT, process, material };
      const [ours, fine] = [run(shape, setting), run(shape, setting, 0.0025)];
      expect(Math.abs(ours.peakCoreC - fine.peakCoreC)).toBeLessThan(0.6);
      expect(Math.abs(ours.peakEdgeC - fine.peakEdgeC)).toBeLessThan(0.8);
      expect(Math.abs(ours.peakHours - fine.peakHours)).toBeLessThan(0.12);
      expect(Math.abs(ours.converted - fine.converted)).toBeLessThan(0.03);
    },
  );
});

test('the share that gels differs by a cell or two at most, whatever the onset', () => {
  const shape = SHAPES[0]!;
  const setting = { ...USUAL_HEAT, process: 'insulated', startC: 45 } as const;
  const [ours, fine] = [run(shape, setting), run(shape, setting, 0.0025)];
  for (let onset = 62; onset <= 92; onset += 2)
    expect(Math.abs(gelledShare(ours, onset) - gelledShare(fine, onset))).toBeLessThan(0.1);
});

test('growth looked up for a step is the logistic curve’s own, to a part in ten thousand', () => {
  const rates = rateTable(SAPONIFICATION, 2);
  const growth = growthTable(rates, 90);
  for (let celsius = 1.3; celsius < 149; celsius += 1.7) {
    const odds = (0.3 / 0.7) * rateFrom(growth, celsius);
    const exact = convertedAfter(0.3, rateFrom(rates, celsius), 90);
    expect(Math.abs(odds / (1 + odds) - exact)).toBeLessThan(1e-4);
  }
  expect(rateFrom(rates, -20)).toBe(rates[0]);
  expect(rateFrom(rates, 400)).toBe(rates.at(-1));
});
