import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { isTakenBack, readEmergencies } from '../../../../src/engine/hazards/index.ts';

type Case = { readonly text: string; readonly id: string; readonly by: string };

/** Found by a maker who tried to get first aid; `own`: further wordings of the same kind. */
const reviewed = JSON.parse(readFileSync(join(import.meta.dirname, 'emergencies-reviewed.json'), 'utf8')) as {
  emergencies: Case[];
  'no-alarm': { text: string; by: string }[];
};

describe('emergencies that got soap advice', () => {
  test.each(reviewed.emergencies)('$by, $id: $text', ({ text, id }) => {
    expect(readEmergencies(text)[0]?.id).toBe(id);
  });
  test.each(reviewed.emergencies)('in capitals and without marks, $id: $text', ({ text, id }) => {
    expect(readEmergencies(text.toUpperCase())[0]?.id).toBe(id);
    expect(readEmergencies(text.normalize('NFD').replaceAll(/\p{M}/gu, ''))[0]?.id).toBe(id);
  });
  test.each(reviewed['no-alarm'])('$by, no alarm: $text', ({ text }) => {
    expect(readEmergencies(text)).toEqual([]);
  });
  test('an eye that stings is told outright, not in doubt', () => {
    for (const text of ['my eyes sting', 'me arde el ojo', 'got some in my eye'])
      expect(readEmergencies(text)[0]).toMatchObject({ id: 'lye-eye', inDoubt: false });
  });
});

describe('"false alarm" takes back only where it is bare, at the start or the end', () => {
  test.each([
    'false alarm',
    'False alarm!',
    'falsa alarma, el molde se pegó',
    'lye splashed in my eye? false alarm',
    'false alarm the mould stuck',
  ])('taken back: %s', text => {
    expect(isTakenBack(text)).toBe(true);
  });
  test.each([
    '',
    'alarm',
    'no false alarm',
    'this is not a false alarm, my kid drank lye',
    'my kid drank lye, this is not a false alarm',
    'my kid drank lye, is it a false alarm?',
    'false alarm? my kid drank lye',
    'false alarm of yesterday; today my kid drank lye',
    'false alarm, but now my kid drank lye',
    'no es falsa alarma, mi hijo tomo sosa',
    'mi hijo tomo sosa y no es una falsa alarma',
    'falsa alarma de ayer, hoy mi hijo tomo sosa',
    'I thought false alarm yet she drank lye',
  ])('still an alarm: %s', text => {
    expect(isTakenBack(text)).toBe(false);
  });
});

describe('behind a "false alarm" that opens the words', () => {
  test('what may cost a life is still told', () => {
    expect(readEmergencies('falsa alarma, mi hijo ha bebido sosa')[0]?.id).toBe('lye-swallowed');
  });
  test.each([
    'false alarm, my son did not drink lye',
    'mi hijo ha bebido sosa, falsa alarma',
    'false alarm my eye is fine',
    'Falsa alarma!! era agua',
  ])('all else is taken back: %s', text => {
    expect(readEmergencies(text)).toEqual([]);
  });
});
