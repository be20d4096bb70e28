import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { matterOf } from './matter-of.ts';
import { ordinarySets } from './ordinary.ts';

/*
 * Ordinary questions of seven hands, one of each matter and a few of each job that another hand labelled them with: those that the engine
 * reads so by itself. The tests of `/ask` count how many of all reach what they ask.
 */

type Held = Readonly<Record<string, readonly number[]>>;
const written = new URL('held/ordinary.json', import.meta.url);
const held = JSON.parse(readFileSync(written, 'utf8')) as Held;
const lines = ordinarySets().flatMap(({ name, questions }) =>
  (held[name] ?? []).map(at => [questions[at]!.label, questions[at]!.text] as const),
);

test.each(lines)('%s: %s', async (label, text) => {
  expect(await matterOf(text)).toBe(label);
});
