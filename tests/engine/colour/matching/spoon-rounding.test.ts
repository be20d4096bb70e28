import { describe, expect, test } from 'vitest';
import { opticsOf } from '../../../../src/engine/colour/jars/colourant-optics.ts';
import { SpoonRounding } from '../../../../src/engine/colour/matching/spoon-rounding.ts';
import { SubsetSolver } from '../../../../src/engine/colour/matching/subset-solver.ts';
import { barLab } from '../../../../src/engine/colour/mixing/bar.ts';
import { plainBase } from '../../../../src/engine/colour/mixing/base-soap.ts';
import { colourDifference, labOfHex } from '../../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../../src/engine/colourants/catalogue.ts';

const base = plainBase('cream', false);
const jars = ['ultramarine-blue', 'yellow-iron-oxide', 'titanium-dioxide'].map(id =>
  opticsOf(colourantById(id)!),
);
/** Shares of a ceiling of one gram, as an eighth and a quarter of a spoon measure them. */
const GRID = Float64Array.from([0, 1 / 16, 1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2, 3 / 4, 1]);
const COLOURS = ['#3b4cae', '#7aa06a', '#c9b04a', '#8fb0c8', '#d8cfa0'];

function rounded(hex: string, members: readonly number[]) {
  const target = labOfHex(hex);
  const solver = new SubsetSolver(
    jars.map(optics => ({ optics, gramsPerUnit: 1 })),
    base,
    target,
  );
  const rounding = new SpoonRounding(
    solver,
    jars.map(() => GRID),
  );
  const all = Array.from({ length: 4 }, (_, at) => members[at] ?? solver.kernel.nothing);
  rounding.round(all, members.length, solver.solve(all, members.length), true);
  rounding.polish();
  return { target, rounding };
}

/** Every sum of spoons that fits, tried: the least CIEDE2000. */
function leastOf(target: ReturnType<typeof labOfHex>, members: readonly number[], used = 0): number {
  const tried = (
    parts: readonly { optics: (typeof jars)[number]; grams: number }[],
    from: number,
    sum: number,
  ): number => {
    if (from === members.length)
      return parts.length === 0 ? Infinity : colourDifference(barLab(parts, base), target);
    return Math.min(
      ...Array.from(GRID).map(share =>
        sum + share > 1 + 1e-9
          ? Number.POSITIVE_INFINITY
          : tried(
              share === 0 ? parts : [...parts, { optics: jars[members[from]!]!, grams: share }],
              from + 1,
              sum + share,
            ),
      ),
    );
  };
  return tried([], 0, used);
}

describe('spoons for a colour', () => {
  test.each(COLOURS.flatMap(hex => [[0], [0, 1], [0, 1, 2]].map(members => [hex, members] as const)))(
    '%s of jars %j: no sum of spoons is nearer, all fit, and their colour is as told',
    (hex, members) => {
      const { target, rounding } = rounded(hex, members);
      const found = rounding.best();
      const [best] = found;
      // Of three, what is walked along may miss what trades all of them: recipes are ranked to a tenth.
      expect(best!.deltaE).toBeLessThan(leastOf(target, members) + (members.length > 2 ? 0.1 : 1e-6));
      for (const { steps, count, deltaE, members: of } of found) {
        const shares = Array.from({ length: count }, (_, at) => GRID[steps[at]!]!);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeLessThanOrEqual(1 + 1e-9);
        const parts = shares.map((grams, at) => ({ optics: jars[of[at]!]!, grams }));
        expect(colourDifference(barLab(parts, base), target)).toBeCloseTo(deltaE, 6);
      }
    },
  );

  test('a recipe with one colourant more is told only where it is nearer', () => {
    const { rounding } = rounded('#7aa06a', [0, 1, 2]);
    const used = ({ members, steps, count }: ReturnType<typeof rounding.best>[number]) =>
      members.filter((_, at) => at < count && steps[at]! > 0);
    const found = rounding.best();
    expect(found.length).toBeGreaterThan(0);
    for (const [at, one] of found.entries())
      for (const better of found.slice(0, at))
        expect(used(better).every(member => used(one).includes(member))).toBe(false);
    // Fewer than six are there, so that any subset is worth a look; with six the sixth is what must be beaten.
    expect(rounding.bar()).toBe(found[5]?.deltaE ?? Number.POSITIVE_INFINITY);
  });
});
