import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { TopicPatterns } from '../../../../../../src/engine/questions/lye/topics/patterns/topic.ts';
import { TextToFit } from '../../../../../../src/engine/text/patterns/fitting.ts';
import { needsOf } from '../../../../../../src/engine/text/patterns/needs.ts';
import { drawn } from '../../../../../walk.ts';
import { matterTexts } from '../../../matter-texts.ts';

const folder = join(import.meta.dirname, '../../../../../../src/engine/questions/lye/topics/patterns');
const lists = (
  await Promise.all(globSync('**/*.ts', { cwd: folder }).map(file => import(join(folder, file))))
).flatMap(module => Object.values(module).filter(Array.isArray)) as readonly TopicPatterns[];
const patterns = lists.flat().flatMap(([topic, all]) => all.map(pattern => ({ topic, pattern })));

const plain = (text: string) =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
const care = readFileSync(join(import.meta.dirname, '../care-wordings.txt'), 'utf8').split('\n');

test('every matter of lye is found in the lines of other hands where its pattern stands, compiled or not', () => {
  expect(patterns.length).toBeGreaterThan(400);
  const lines = drawn([...care, ...matterTexts().map(({ text }) => text)], 120, 'needs').map(plain);
  const otherwise = lines.flatMap(line => {
    const text = new TextToFit(line);
    return patterns
      .filter(({ pattern }) => text.fits(pattern) !== pattern.test(line))
      .map(({ topic }) => `${topic}: ${line}`);
  });
  expect(otherwise).toEqual([]);
});

test('what is asked about a colour compiles hardly any of the patterns of lye', () => {
  const asked = 'how much ultramarine blue for two cups of batter';
  const runs = patterns.filter(({ pattern }) =>
    needsOf(pattern).every(list => list.some(one => asked.includes(one))),
  );
  expect(runs.map(({ topic }) => topic).toSorted()).toEqual(['ground-stuff', 'ultramarine-acid']);
});
