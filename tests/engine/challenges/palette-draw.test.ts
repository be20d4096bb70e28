import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { choosePalette, drawColours } from '../../../src/engine/challenges/palette-draw.ts';
import { chanceFrom } from '../../../src/engine/challenges/voting/chance.ts';
import { colourDifference, isOnScreen } from '../../../src/engine/colour/spectra/cielab.ts';

/** Colours of one palette differ by at least this, CIEDE2000. */
const leastApart = 15;

describe('a drawn palette', () => {
  test('has colours a screen can show, the same for the same seed, others for another', () => {
    const colours = drawColours('moon soap', 40);
    expect(colours.every(isOnScreen)).toBe(true);
    expect(drawColours('moon soap', 40)).toEqual(colours);
    expect(drawColours('moon soap', 10)).toEqual(colours.slice(0, 10));
    expect(drawColours('sun soap', 40)).not.toEqual(colours);
  });

  const anyReach = fc.integer({ min: 1, max: 6 }).chain(shelves =>
    fc.array(fc.array(fc.boolean(), { minLength: shelves, maxLength: shelves }), {
      minLength: 30,
      maxLength: 30,
    }),
  );

  test.prop([
    fc.string(),
    anyReach,
    fc.integer({ min: 1, max: 3 }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  ])('is reached as a whole by enough shelves, its colours well apart', (seed, reach, size, leastShare) => {
    const colours = drawColours(seed, reach.length);
    let drawn: ReturnType<typeof choosePalette>;
    try {
      drawn = choosePalette({ colours, reach, size, leastShare });
    } catch (refusal) {
      expect(refusal).toMatchObject({ id: 'palette-out-of-reach' });
      return;
    }
    const { numbers, share } = drawn;
    const reaching = reach[0]!.filter((_, shelf) => numbers.every(number => reach[number]![shelf]));
    expect(numbers).toHaveLength(size);
    expect(share).toBe(reaching.length / reach[0]!.length);
    expect(share).toBeGreaterThanOrEqual(leastShare - 1e-9);
    for (const one of numbers)
      for (const other of numbers)
        if (one !== other)
          expect(colourDifference(colours[one]!, colours[other]!)).toBeGreaterThanOrEqual(leastApart);
  });

  test('takes two colours that are just far enough apart, and not two just too near', () => {
    const grey = (l: number) => ({ l, a: 0, b: 0 });
    const pair = (one: number, other: number) => () =>
      choosePalette({ colours: [grey(one), grey(other)], reach: [[true], [true]], size: 2, leastShare: 1 });
    // Around L 50 a difference in lightness is about its own CIEDE2000.
    expect(pair(42, 58)).not.toThrow();
    expect(pair(43, 57)).toThrow(expect.objectContaining({ id: 'palette-out-of-reach' }));
  });

  test('goes back on a colour that leads nowhere', () => {
    const colours = [
      { l: 20, a: 0, b: 0 },
      { l: 50, a: 60, b: 0 },
      { l: 80, a: 0, b: 60 },
    ];
    // Each shelf reaches two of the three; half of the shelves must reach both colours of the palette.
    const reach = [
      [true, false],
      [false, true],
      [false, true],
    ];
    expect(choosePalette({ colours, reach, size: 2, leastShare: 0.5 })).toEqual({
      numbers: [1, 2],
      share: 0.5,
    });
  });

  test('is refused where nobody has a shelf or nothing is in reach', () => {
    const colours = drawColours('x', 2);
    const none = () => choosePalette({ colours, reach: [[], []], size: 1, leastShare: 0.5 });
    expect(none).toThrow(expect.objectContaining({ id: 'palette-no-shelves' }));
    const far = () => choosePalette({ colours, reach: [[false], [false]], size: 1, leastShare: 0.5 });
    expect(far).toThrow(expect.objectContaining({ id: 'palette-out-of-reach' }));
  });

  test('gives up on a hopeless draw instead of trying for years', () => {
    const colours = drawColours('y', 200);
    const reach = colours.map((_, i) => Array.from({ length: 12 }, (_, shelf) => (i + shelf) % 2 === 0));
    const hopeless = () => choosePalette({ colours, reach, size: 6, leastShare: 0.51 });
    expect(hopeless).toThrow(expect.objectContaining({ id: 'palette-out-of-reach' }));
  });
});

describe('chance', () => {
  test.prop([fc.string(), fc.integer({ min: 1, max: 2 ** 53 })])('stays below its bound', (seed, bound) => {
    const chance = chanceFrom(seed);
    for (let i = 0; i < 20; i++) {
      const drawn = chance.below(bound);
      expect(Number.isInteger(drawn)).toBe(true);
      expect(drawn).toBeGreaterThanOrEqual(0);
      expect(drawn).toBeLessThan(bound);
    }
  });

  test('gives each number below a bound as often as any other', () => {
    const counts = new Array<number>(10).fill(0);
    const chance = chanceFrom('fair');
    for (let i = 0; i < 10_000; i++) counts[chance.below(10)]! += 1;
    // Chi-square with 9 degrees of freedom stays under 27.9 with probability 0.999.
    expect(counts.reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0)).toBeLessThan(27.9);
  });
});
