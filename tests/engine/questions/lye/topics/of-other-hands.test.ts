import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { givesWayToAWeight } from '../../../../../src/engine/questions/lye/topics/beside-weights.ts';
import { lyeBeyondAllOils } from '../../../../../src/engine/questions/lye/topics/too-much-at-once.ts';
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
  ['undissolved-lye', 'some lye did not dissolve. 500 g olive, lye?', false],
  ['undissolved-lye', '500 g olive, lye?', true],
  ['clean-up', 'I spilt lye. 500 g olive', false],
  ['clean-up', '500 g olive, lye?', true],
  ['oil-forgotten', 'less castor than in this: 500 g olive, 50 g castor. lye?', true],
  ['oil-forgotten', 'I forgot the castor: 500 g olive, 50 g castor', false],
] as const)('%s gives way to a recipe that is weighed beside it: %s', (topic, typed, gives) => {
  expect(givesWayToAWeight(topic, typed)).toBe(gives);
});

test.each([
  ['500 g olive, 200 g coconut, 701 g lye', 701],
  ['500 g olive, 800 g lye, 300 g water', 800],
  ['500 g olive, 800 g lye, 300 g milk', 800],
  ['500 g olive, 200 g coconut, 95 g lye', undefined],
  ['500 g olive, 800 g lye, doubled', undefined],
])('no oils take as much lye as they weigh, or near it: %s', (message, lye) => {
  expect(lyeBeyondAllOils(message)).toBe(lye);
});
