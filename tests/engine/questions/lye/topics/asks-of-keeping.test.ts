import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { asksOfKeeping } from '../../../../../src/engine/questions/lye/topics/asks-of-keeping.ts';

const folder = new URL('../../../hazards/emergencies/', import.meta.url);
/** What whoever is hurt wrote, in the sets of all who wrote such texts. */
const emergencies = readdirSync(folder)
  .filter(file => file.endsWith('.json'))
  .flatMap(file => {
    const set = JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as {
      emergencies?: readonly { readonly text: string }[];
    };
    return (set.emergencies ?? []).map(({ text }) => text);
  });

describe('what lye does to a colour, asked in words that an accident has too', () => {
  test.each([
    'la curcuma aguanta la sosa? una vecina dice que si pero yo no me fio',
    'does saffron hold up to lye or is that just burnin money',
    'He leído que la rubia da rosa pero una compañera dice que con la sosa se pone morada. ¿Quién tiene razón?',
  ])('is asked calmly: %s', text => expect(asksOfKeeping(text)).toBe(true));

  test('is no text of anybody who is hurt', () => {
    expect(emergencies.length).toBeGreaterThan(800);
    expect(emergencies.filter(asksOfKeeping)).toEqual([]);
  });

  test.each([
    'turmeric and lye got in my eye and it turns red',
    'me cayó sosa con cúrcuma en la mano y se pone roja',
    'my son licked the spirulina soap, does it stay in him',
  ])('is not asked where somebody is hurt: %s', text => expect(asksOfKeeping(text)).toBe(false));
});
