import { parentPort } from 'node:worker_threads';
import { matchColour } from '../../src/engine/colour/matching/match.ts';
import { plainBase } from '../../src/engine/colour/mixing/base-soap.ts';
import { MixKernel } from '../../src/engine/colour/mixing/mix-kernel.ts';
import { colourDifference, type Lab, labOfHex } from '../../src/engine/colour/spectra/cielab.ts';
import { fullShelf, ONE_CUP } from '../engine/colour/shelves.ts';
import { downhillSimplex } from './colour-simplex.ts';

/** What the worker is asked: to match a colour, or to send the simplex over the same subsets; it answers the number. */
export type MatchJob = { readonly number: number; readonly do: 'match' | 'simplex'; readonly hex: string };

const candidates = fullShelf();
const base = plainBase('white', false);
const kernel = new MixKernel(
  candidates.map(({ optics, gramsPerTeaspoon, ceilingTspPerCup }) => ({
    optics,
    gramsPerUnit: (100 * ceilingTspPerCup * gramsPerTeaspoon) / ONE_CUP.grams,
  })),
  base,
);

parentPort?.on('message', (job: MatchJob) => {
  const target = labOfHex(job.hex);
  if (job.do === 'simplex') simplexOverAll(target);
  else matchColour({ target, candidates, base, portion: ONE_CUP, most: 3 });
  parentPort?.postMessage(job.number);
});

/** One to three of the 39 colours, each with the white, which stands last. */
function simplexOverAll(target: Lab): void {
  const white = candidates.length - 1;
  for (let a = 0; a < white; a++) {
    simplexOver([a, white], target);
    for (let b = a + 1; b < white; b++) {
      simplexOver([a, b, white], target);
      for (let c = b + 1; c < white; c++) simplexOver([a, b, c, white], target);
    }
  }
}

/** A general optimiser sees a value and knows no bounds, so leaving them costs. */
function simplexOver(subset: readonly number[], target: Lab): number {
  const members = [0, 1, 2, 3].map(at => subset[at] ?? kernel.nothing);
  return downhillSimplex(at => {
    const inside = [0, 1, 2, 3].map(i => Math.max(at[i] ?? 0, 0));
    const sum = inside.reduce((total, amount) => total + amount, 0);
    const below = at.reduce((total, amount) => total + Math.max(-amount, 0), 0);
    const amounts = sum > 1 ? inside.map(amount => amount / sum) : inside;
    kernel.predict(members, amounts);
    const lab = { l: kernel.lab[0]!, a: kernel.lab[1]!, b: kernel.lab[2]! };
    return colourDifference(lab, target) + 100 * (below + Math.max(sum - 1, 0));
  }, subset.length).value;
}
