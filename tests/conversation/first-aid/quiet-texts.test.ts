import { expect, test } from 'vitest';
import { emergenciesIn } from '../../../src/conversation/first-aid/told.ts';
import { readEmergencies } from '../../../src/engine/hazards/index.ts';

test('a text that was read before is read alike again, whatever it tells', () => {
  const texts = ['ultramarine blue', '2 cups', 'lye in my eye', 'dose', 'se bebió la sosa', 'lye in my eye?'];
  const first = texts.map(text => emergenciesIn([text]));
  expect(first[2]).toContain('lye-eye');
  expect(first[4]).toContain('lye-swallowed');
  for (let time = 0; time < 3; time += 1) expect(texts.map(text => emergenciesIn([text]))).toEqual(first);
});

test('nor after more texts than are remembered, of any length', () => {
  for (let at = 0; at < 1_200; at += 1) expect(emergenciesIn([`${at} g`])).toEqual([]);
  const long = `${'a quiet batch and nothing more, '.repeat(3)}then lye in my eye`;
  for (const text of ['lye in my eye', long, '3 g', 'lye in my eye', long])
    expect(emergenciesIn([text])).toEqual(readEmergencies(text).map(({ id }) => id));
});
