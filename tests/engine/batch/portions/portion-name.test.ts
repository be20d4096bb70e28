import { expect, test } from 'vitest';
import { parsePortions } from '../../../../src/engine/batch/portions/portion-list.ts';
import { keptName, portionCalled } from '../../../../src/engine/batch/portions/portion-name.ts';
import { wordsIn } from '../../../../src/words/index.ts';

/** The names under which the portions of a plan are kept, in their order. */
const kept = (portions: string): readonly string[] => {
  const taken = new Map<string, number>();
  return parsePortions(portions).map(portion => keptName(portion, taken));
};

test.each([
  ['Sky: 2 cups ultramarine blue; rest', ['Sky', 'rest']],
  ['1 cup gold mica + kaolin; 1 cup gold mica + kaolin', ['gold mica + kaolin', 'gold mica + kaolin 2']],
  ['500 ml plain; 500 ml plain; 500 ml plain; rest plain', ['plain', 'plain 2', 'plain 3', 'rest']],
])('a portion is called as its maker named it, by its colours, or by what it is: %s', (portions, names) => {
  expect(kept(portions)).toEqual(names);
});

test.each([
  ['rest', { is: 'rest' }, 'the rest', 'el resto'],
  ['plain', { is: 'plain' }, 'plain', 'sin color'],
  ['plain 3', { is: 'plain', nth: 3 }, 'plain 3', 'sin color 3'],
  // What a maker wrote stays as it is, and so does a name that only begins like one of ours.
  ['Sky', { told: 'Sky' }, 'Sky', 'Sky'],
  ['plain white 2', { told: 'plain white 2' }, 'plain white 2', 'plain white 2'],
  ['rest day', { told: 'rest day' }, 'rest day', 'rest day'],
])('what has no name of its own is told in each language: %s', (name, called, english, spanish) => {
  expect(portionCalled(name)).toEqual(called);
  expect(wordsIn('en').batch.portionName(portionCalled(name))).toBe(english);
  expect(wordsIn('es').batch.portionName(portionCalled(name))).toBe(spanish);
});
