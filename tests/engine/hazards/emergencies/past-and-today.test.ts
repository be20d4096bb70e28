import { describe, expect, test } from 'vitest';
import { isEyeBeforeJug } from '../../../../src/engine/hazards/emergencies/emergency.ts';
import { readEmergencies } from '../../../../src/engine/hazards/emergencies/read.ts';

const idsIn = (text: string) => readEmergencies(text).map(({ id }) => id);

describe('what is told of long ago', () => {
  test.each([
    'years ago lye got in my eye',
    'in 1998 lye splashed in my eye',
    'long ago lye splashed in my eye and it burned and hurt',
    'hace años me cayó sosa en el ojo',
  ])('is no emergency: %s', text => {
    expect(idsIn(text)).toEqual([]);
  });

  test('ends where today begins', () => {
    expect(idsIn('years ago I made soap, today lye got in my eye')).toEqual(['lye-eye']);
  });
});

// Common first aid: an eye is rinsed at once, whatever else happens on the bench.
test('lye in an eye is told before the jug that boils over, but for one that is in doubt', () => {
  for (const text of [
    'the lye jug is boiling over and lye went in my eye',
    'jug is erupting, lye in my eyes',
  ])
    expect(idsIn(text)).toEqual(['lye-eye', 'lye-eruption']);
  const eye = { id: 'lye-eye', from: 'eye', inDoubt: false } as const;
  expect(isEyeBeforeJug(eye, { id: 'lye-eruption' })).toBe(true);
  expect(isEyeBeforeJug({ ...eye, inDoubt: true }, { id: 'lye-eruption' })).toBe(false);
  expect(isEyeBeforeJug(eye, { id: 'lye-skin' })).toBe(false);
  expect(isEyeBeforeJug({ ...eye, id: 'lye-skin' }, { id: 'lye-eruption' })).toBe(false);
});
