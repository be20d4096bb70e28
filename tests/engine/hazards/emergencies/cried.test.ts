import { expect, test } from 'vitest';
import { criesFire } from '../../../../src/engine/hazards/emergencies/cried.ts';
import { readEmergencies } from '../../../../src/engine/hazards/index.ts';

const idsIn = (text: string) => readEmergencies(text).map(({ id }) => id);

test.each([
  'FIRE',
  'Fire!!',
  'help fire',
  'fire fire',
  '¡Fuego!',
  'FUEGO AYUDA',
  'hay fuego',
  'flames!',
  'ayuda fuego en el taller',
  'help! fire in the shed',
])('whoever cries %s and nothing else is told how to put it out', text => {
  expect(criesFire(text)).toBe(true);
  expect(idsIn(text)).toEqual(['fire']);
});

test.each([
  'fire',
  'fuego',
  'fire engine red',
  'FIRE ENGINE RED!',
  'a fire opal swirl!',
  'Fuego es el nombre de mi barra',
  '🔥',
  '',
])('a colour by that name alarms nobody: %s', text => {
  expect(criesFire(text)).toBe(false);
});

test('a cry is told for sure, as it was written', () => {
  expect(readEmergencies('  FIRE! ')).toEqual([{ id: 'fire', from: 'FIRE!', inDoubt: false }]);
});
