import { describe, expect, test } from 'vitest';
import { fahrenheit } from '../../src/engine/quantities/units.ts';
import { wordsIn } from '../../src/words/index.ts';
import { degrees, degreesBetween, fahrenheitFirst } from '../../src/words/temperatures.ts';

/** Every sentence of a language that is the same whatever is asked. */
function sentencesOf(subject: unknown): readonly string[] {
  if (typeof subject === 'string') return [subject];
  return typeof subject === 'object' && subject !== null ? Object.values(subject).flatMap(sentencesOf) : [];
}

const TOLD =
  /(-?\d+)(?:(?: (?:to|a|y|o|and) |-)(\d+))? °C(?: \((\d+)(?:(?: (?:to|a|y|o|and) |-)(\d+))? °F\))?/gu;
/** What grows warmer by so much, or differs by it: 10 °C more are 18 °F more. */
const BY =
  /(?:heats (?:its|cold) water by|not more than about|calienta (?:su agua|el agua fría) de|no más de unos) $/u;
/** The two scales side by side, as a thermometer is told by. */
const SCALES = /40 °C (?:is|son) 104 °F/u;

describe.each(['en', 'es'] as const)('in %s', language => {
  const told = sentencesOf(wordsIn(language)).flatMap(sentence =>
    SCALES.test(sentence) ? [sentence.replace(SCALES, '')] : [sentence],
  );
  const temperatures = told.flatMap(sentence =>
    [...sentence.matchAll(TOLD)].map(found => [found[0], sentence.slice(0, found.index), found] as const),
  );

  test('there are temperatures to be told', () => {
    expect(temperatures.length).toBeGreaterThan(20);
  });

  test.each(temperatures)('%s stands in both units (0 °C is 32 °F, a kelvin 1.8 °F)', (_, before, found) => {
    const [low, high, lowF, highF] = found
      .slice(1)
      .map(figure => (figure === undefined ? undefined : Number(figure)));
    const turned = (celsius: number) => Math.round(BY.test(before) ? celsius * 1.8 : fahrenheit(celsius));
    expect(lowF).toBe(turned(low!));
    expect(highF).toBe(high === undefined ? undefined : turned(high));
  });
});

test('whoever reads °F has it first, of one temperature and of two', () => {
  expect(degrees(38)).toBe('38 °C (100 °F)');
  expect(fahrenheitFirst(`Pour at ${degrees(38)}.`)).toBe('Pour at 100 °F (38 °C).');
  expect(fahrenheitFirst(degreesBetween(35, 45, 'to'))).toBe('95 to 113 °F (35 to 45 °C)');
  expect(fahrenheitFirst(`entre ${degreesBetween(52, 82, 'y')}`)).toBe('entre 126 y 180 °F (52 y 82 °C)');
  expect(fahrenheitFirst('about 38-43 °C (100-109 °F).')).toBe('about 100-109 °F (38-43 °C).');
  expect(fahrenheitFirst('outside -5 to 120 °C (23 to 248 °F)')).toBe('outside 23 to 248 °F (-5 to 120 °C)');
});
