import { Color, mix } from 'spectral.js';
import { test } from 'vitest';
import { colourDifference, labOfHex } from '../../src/engine/colour/appearance.ts';
import { plainBase } from '../../src/engine/colour/base-soap.ts';
import { matchColour } from '../../src/engine/colour/match.ts';
import { MixKernel } from '../../src/engine/colour/mix-kernel.ts';
import { candidates, fullShelf, ONE_CUP } from '../engine/colour/shelves.ts';
import { downhillSimplex } from './colour-simplex.ts';
import { sayRatio } from './ratio.ts';

const base = plainBase('white', false);
const ROUNDS = 500;
const warm = { time: 800, warmupTime: 300 };

/** Mixing: the same number of components, colours at hand beforehand, CIELAB here and sRGB there. */
test.for([2, 3, 4])('mixing %i components', async (count, { bench }) => {
  const shelf = candidates('ultramarine-blue', 'red-iron-oxide', 'chromium-oxide-green', 'titanium-dioxide');
  const kernel = new MixKernel(
    shelf.map(({ optics, gramsPerTeaspoon }) => ({ optics, gramsPerUnit: gramsPerTeaspoon })),
    base,
  );
  const members = [0, 1, 2, 3].map(at => (at < count ? at : kernel.nothing));
  const amounts = [0.1, 0.2, 0.3, 0.1].map((amount, at) => (at < count ? amount : 0));
  const colours = ['#2b3fa8', '#8e3b2e', '#5b7440', '#ffffff'].map(css => new Color(css));
  const parts = colours.slice(0, count).map((colour, at): [Color, number] => [colour, amounts[at]!]);
  let seen = 0;
  const ours = await bench('two-constant bar, CIELAB', () => {
    for (let round = 0; round < ROUNDS; round++) {
      amounts[0] = 0.1 + round * 1e-4;
      kernel.predict(members, amounts, count);
      seen += kernel.lab[0]!;
    }
  }).run(warm);
  const theirs = await bench('spectral.js mix, sRGB', () => {
    for (let round = 0; round < ROUNDS; round++) {
      parts[0]![1] = 0.1 + round * 1e-4;
      seen += mix(...parts).XYZ[1];
    }
  }).run(warm);
  if (!Number.isFinite(seen)) throw new Error('no colour came out');
  sayRatio(`mixing ${count} components against spectral.js`, ours, theirs);
});

/** The same 10,700 subsets of a 40-item shelf: our match to its rounded end, the simplex without any rounding. */
test.for(['#8fb3c9', '#c0506a'])('matching %s', async (css, { bench }) => {
  const candidates = fullShelf();
  const request = { target: labOfHex(css), candidates, base, portion: ONE_CUP, most: 3 };
  const kernel = new MixKernel(
    candidates.map(({ optics, gramsPerTeaspoon, ceilingTspPerCup }) => ({
      optics,
      gramsPerUnit: (100 * ceilingTspPerCup * gramsPerTeaspoon) / ONE_CUP.grams,
    })),
    base,
  );
  const white = candidates.length - 1;
  const ours = await bench('every subset, rounded to spoons', () => {
    matchColour(request);
  }).run({ time: 1500, warmupIterations: 3 });
  const theirs = await bench('downhill simplex, every subset', () => {
    for (let a = 0; a < white; a++) {
      simplexOver(kernel, [a, white], request.target);
      for (let b = a + 1; b < white; b++) {
        simplexOver(kernel, [a, b, white], request.target);
        for (let c = b + 1; c < white; c++) simplexOver(kernel, [a, b, c, white], request.target);
      }
    }
  }).run({ time: 100, iterations: 1, warmup: false });
  sayRatio(`matching ${css} against a downhill simplex`, ours, theirs);
});

/** A general optimiser sees a value and knows no bounds, so leaving them costs. */
function simplexOver(
  kernel: MixKernel,
  subset: readonly number[],
  target: ReturnType<typeof labOfHex>,
): number {
  const members = [0, 1, 2, 3].map(at => subset[at] ?? kernel.nothing);
  return downhillSimplex(at => {
    const inside = [0, 1, 2, 3].map(i => Math.max(at[i] ?? 0, 0));
    const sum = inside.reduce((total, amount) => total + amount, 0);
    const below = at.reduce((total, amount) => total + Math.max(-amount, 0), 0);
    const amounts = sum > 1 ? inside.map(amount => amount / sum) : inside;
    kernel.predict(members, amounts, subset.length);
    const lab = { l: kernel.lab[0]!, a: kernel.lab[1]!, b: kernel.lab[2]! };
    return colourDifference(lab, target) + 100 * (below + Math.max(sum - 1, 0));
  }, subset.length).value;
}
