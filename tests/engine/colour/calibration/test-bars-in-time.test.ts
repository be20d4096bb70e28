import { expect, test } from 'vitest';
import { planBars } from '../../../../src/engine/colour/calibration/test-bars/plan-bars.ts';
import { usualTeaspoon } from '../../../../src/engine/colour/jars/colourant-optics.ts';
import { colourantById } from '../../../../src/engine/colourants/catalogue.ts';
import { leastCpu } from '../../../cpu-time.ts';

/* Beside the other tests of bars, since code with changes built in is slower, and no change is told by that. */
test('bars for six jars with mixes are planned in under a second', async () => {
  const jars = [
    'ultramarine-blue',
    'red-iron-oxide',
    'ultramarine-violet',
    'chromium-oxide-green',
    'gold-mica',
    'yellow-iron-oxide',
  ].map(id => {
    const colourant = colourantById(id)!;
    return {
      id,
      jar: { colourant: id },
      gramsPerTeaspoon: usualTeaspoon(colourant),
      fullTspPerCup: colourant.dose.fullTspPerCup,
      ceilingTspPerCup: colourant.dose.ceilingTspPerCup,
    };
  });
  const plan = () =>
    planBars({
      jars,
      shades: [{ shade: 'cream', share: 1 }],
      gelled: false,
      portion: { cups: 0.5, grams: 118.294 },
      reading: 3,
      within: 5,
      mostBars: 12,
      mixes: true,
    });
  expect(await leastCpu(plan, 1000)).toBeLessThan(1000);
});
