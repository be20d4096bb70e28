import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { givesWayToAWeight } from '../../../../../src/engine/questions/lye/topics/beside-weights.ts';
import { matterOf } from './matter-of.ts';

/*
 * One question of each matter of lye by reviewers who labelled what they asked, and questions by makers of colour that are of none: those that
 * the engine reads so by itself (`tests/engine/questions/matter-texts.ts` has all of them).
 */
const held = JSON.parse(
  readFileSync(new URL('held/matters.json', import.meta.url), 'utf8'),
) as readonly (readonly [label: string, text: string])[];

test.each(held)('%s: %s', async (label, text) => {
  expect((await matterOf(text)) ?? 'none').toBe(label);
});

test.each([
  ['disposal', '500 g olive and 200 g coconut, how much lye, and I throw the peel away', false],
  ['disposal', '500 g olive and 200 g coconut, how do I get rid of leftover lye solution', false],
  ['disposal', '500 g olive and 200 g coconut, how much lye for it', true],
  ['oil-forgotten', 'less castor than in this: 500 g olive, 50 g castor. lye?', true],
  ['oil-forgotten', 'I forgot the castor: 500 g olive, 50 g castor', false],
] as const)('%s gives way to a recipe that is weighed beside it: %s', (topic, typed, gives) => {
  expect(givesWayToAWeight(topic, typed)).toBe(gives);
});
