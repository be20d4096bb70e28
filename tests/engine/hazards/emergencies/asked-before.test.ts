import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { isAskedBefore } from '../../../../src/engine/hazards/emergencies/asked-before.ts';
import { emergencyNamed } from '../../../../src/engine/hazards/emergencies/named.ts';
import { EMERGENCY_IDS, readEmergencies } from '../../../../src/engine/hazards/index.ts';

test('who was out having a smoke has no fire', () => {
  expect(
    readEmergencies(
      'was out having a smoke at 3 and the whole sky was going, bright with a glow. what do i mix',
    ),
  ).toEqual([]);
  expect(readEmergencies('smoke is coming out of the lye jug').length).toBeGreaterThan(0);
});

test('water that boils early, high up, is no lye that does', () => {
  expect(
    readEmergencies('up here the water boils at 87 degrees, does that change how I make the lye'),
  ).toEqual([]);
  expect(readEmergencies('acá el agua hierve a 87 grados, ¿cambia algo con la lejía?')).toEqual([]);
  expect(readEmergencies('the lye water boils over the jug').length).toBeGreaterThan(0);
});

test('an interjection is no mouthful', () => {
  expect(readEmergencies('chuta me salpicó la sosa en la mano').map(({ id }) => id)).toEqual(['lye-skin']);
});

test('who chickened out has no chicken that met lye', () => {
  expect(
    readEmergencies(
      'a darker circle in every bar, it was in the oven with the lye soap, then I chickened out',
    ),
  ).toEqual([]);
  expect(readEmergencies('my chicken drank the lye water').length).toBeGreaterThan(0);
});

describe('handling asked about before it is done is no emergency', () => {
  test.each([
    'pour water onto the lye?',
    'la cúrcuma aguanta la soda cáustica',
    'aguanta la sosa la mica rosa?',
    'can I pour water onto the lye',
    'should I add water to the lye?',
    'aluminium pot for lye?',
    'can I use an aluminium pot for lye',
    'hi, is it ok to mix lye in a zinc bucket',
    'puedo echar agua sobre la sosa',
    '¿se puede mezclar la sosa en una olla de aluminio?',
    'olla de aluminio para la sosa',
    '¿en qué orden se echa, el agua sobre la soda o la soda sobre el agua?',
    'in which order, water on the lye or lye in the water?',
    'my uncle used to shout about which one goes in which, so now do I pour the lye in the water or the water on the lye',
    'echo la sosa en el agua o el agua sobre la sosa',
  ])('%s', text => {
    expect(isAskedBefore(text)).toBe(true);
    expect(readEmergencies(text)).toEqual([]);
  });

  test.each([
    'en qué orden se echa, el agua sobre la soda? ya la eché y hierve',
    'I poured water onto the lye',
    'do I pour the lye in the water or the water on the lye, it is boiling over',
    'can I pour water onto the lye it is smoking',
    'poured water on the lye is it ok?',
    'I used an aluminium pot for the lye and it is fizzing',
    'aluminium pot for lye? its bubbling now',
    'can I leave the lye in the aluminium pot, it went black',
    'eché agua sobre la sosa',
    'echó agua sobre la sosa?',
    'la olla de aluminio con la sosa está burbujeando',
    '¿puedo echar agua sobre la sosa? ya está hirviendo',
  ])('%s is still one', text => {
    expect(isAskedBefore(text)).toBe(false);
    expect(readEmergencies(text).length).toBeGreaterThan(0);
  });

  test('no emergency that others wrote is taken for a question beforehand', () => {
    const files = readdirSync(import.meta.dirname).filter(file => /^emergencies-.*\.json$/.test(file));
    expect(files.length).toBeGreaterThan(7);
    for (const file of files) {
      const set = JSON.parse(readFileSync(join(import.meta.dirname, file), 'utf8')) as {
        emergencies: { text: string }[];
        'first-aid-questions'?: { text: string }[];
      };
      for (const { text } of [...set.emergencies, ...(set['first-aid-questions'] ?? [])])
        expect(`${text}: ${isAskedBefore(text)}`).toBe(`${text}: false`);
    }
  });
});

describe('an emergency named in a word or two', () => {
  test.each([
    ['burn', 'lye-skin'],
    ['quemadura', 'lye-skin'],
    ['eye', 'lye-eye'],
    ['en el ojo', 'lye-eye'],
    ['swallowed', 'lye-swallowed'],
    ['dog', 'animal-exposed'],
    ['sarpullido', 'skin-reaction'],
    ['bleach', 'toxic-gas'],
    ['humo', undefined],
    ['constructor', undefined],
    ['', undefined],
    ['how do I cut soap', undefined],
  ] as const)('%s', (text, id) => {
    expect(emergencyNamed(text)).toBe(id);
  });

  test('each has names in both languages', () => {
    const words: Readonly<Record<string, readonly [string, string]>> = {
      'lye-swallowed': ['mouth', 'boca'],
      'lye-eye': ['eye', 'ojo'],
      fire: ['fire', 'fuego'],
      'toxic-gas': ['gas', 'cloro'],
      'fumes-inhaled': ['fumes', 'vapores'],
      'hydrogen-sulfide': ['rotten egg', 'huevo podrido'],
      'hydrogen-from-metal': ['aluminium', 'aluminio'],
      'lye-eruption': ['volcano', 'derrame'],
      'lye-skin': ['skin', 'piel'],
      'animal-exposed': ['cat', 'gato'],
      'skin-reaction': ['rash', 'picor'],
    };
    expect(Object.keys(words).sort()).toEqual([...EMERGENCY_IDS].sort());
    for (const [id, both] of Object.entries(words))
      for (const name of both) expect(`${name}: ${emergencyNamed(name)}`).toBe(`${name}: ${id}`);
  });
});

describe('turns of phrase that tell of nobody hurt', () => {
  test.each([
    'se me pasó la mano con la sosa, puse diez gramos de más',
    'se nos fue la mano con la sosa',
    'hoy llueve a mares, oliva 500 y coco 200, sosa y agua',
    '¿la guardo en vidrio o la sosa se come el cristal?',
    'happy tears when i cut it, the lye went in so smoothly',
  ])('%s', text => {
    expect(readEmergencies(text)).toEqual([]);
  });

  test.each([
    ['se me cayó sosa en la mano y me arde', 'lye-skin'],
    ['me mareé con el vapor de la sosa', 'fumes-inhaled'],
    ['mi hijo se comió la sosa', 'lye-swallowed'],
  ])('%s: with the same words somebody is', (text, id) => {
    expect(readEmergencies(text)[0]?.id).toBe(id);
  });
});
