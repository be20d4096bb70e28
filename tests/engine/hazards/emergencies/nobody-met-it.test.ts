import { describe, expect, test } from 'vitest';
import { isNearOnly, isStoryOnly, readEmergencies } from '../../../../src/engine/hazards/index.ts';

/* A false alarm teaches members to pass by the true one; a true one that is passed by costs more. Both sides of each line, in both languages. */

describe('lye that lies somewhere while somebody is only near', () => {
  test.each([
    'lye beads spilt, the dog is about',
    'lye beads spilt on the floor, the dog is about. how do I clean it up',
    'spilled lye pellets on the worktop, the cat is in the next room',
    'some lye granules fell behind the stove, toddler naps upstairs, how do i sweep up',
    'lye crumbs on the scale, the parrot is in its cage. vinegar or water to wipe',
    'knocked over a tub of dry lye in the shed and the chickens roam there, how to make it safe',
    'se me cayeron perlas de sosa al suelo y anda la perra por ahí, ¿cómo lo limpio?',
    'derramé escamas de sosa en la encimera, el gato está en otro cuarto',
    'volqué un bote de sosa seca en el cobertizo donde andan las gallinas, ¿cómo lo dejo seguro?',
    'migas de sosa en la báscula y el loro en su jaula, ¿vinagre o agua para limpiar?',
  ])('no alarm: %s', text => {
    expect(isNearOnly(text)).toBe(true);
    expect(readEmergencies(text)).toEqual([]);
  });
  test.each([
    ['lye beads spilt and the dog walked through them', 'animal-exposed'],
    ['lye beads spilt, the dog licked one up', 'animal-exposed'],
    ['lye beads spilt on the floor, the dog is about and his paws are raw', 'animal-exposed'],
    ['lye granules on the floor and the cat is drooling', 'animal-exposed'],
    ['spilled lye on the dog outside, how do I clean it', 'animal-exposed'],
    ['the dog knocked over the lye, he is in the garden', 'animal-exposed'],
    ['lye spilt over my foot, the dog is about', 'lye-skin'],
    ['se cayeron perlas de sosa y la perra las pisó', 'animal-exposed'],
    ['perlas de sosa por el suelo y la perra se tragó una', 'animal-exposed'],
    ['me cayó sosa en el brazo, el niño está arriba', 'lye-skin'],
    ['el gato babea y había escamas de sosa en la encimera', 'animal-exposed'],
    ['la perra pisó la sosa derramada, anda por casa', 'animal-exposed'],
  ])('first aid: %s', (text, id) => {
    expect(isNearOnly(text)).toBe(false);
    expect(readEmergencies(text).map(one => one.id)).toContain(id);
  });
  // None of these may be taken for calm, whatever else is read in them.
  test.each([
    'lye fell on it, the dog is here',
    'lye beads fell on them, the kids are upstairs',
    'lye beads on me, the kids are upstairs',
    'lye powder everywhere, the baby is here',
    'lye spilt in the dog bowl, the dog is about',
    'le cayó sosa, el niño está en casa',
    'me cayó sosa, el niño está arriba',
    'se me cayó sosa encima, el perro está fuera',
    'cayó sosa en el, el perro está fuera',
    'the lye is boiling over, the dog is about',
    'lye beads spilt, the dog is about, help',
    'beads spilt, the dog is about',
    'lye beads spilt on the floor, how do I clean it up',
  ])('not told calmly enough: %s', text => {
    expect(isNearOnly(text)).toBe(false);
  });
  test('a long text is read as any other', () => {
    expect(isNearOnly(`lye beads spilt, the dog is about.${' how do I clean it up.'.repeat(9)}`)).toBe(false);
  });
});

describe('a story that is asked for', () => {
  test.each([
    'a story with acid, water, lye',
    'tell me a rhyme to remember which goes first, lye or water',
    'un cuento con ácido, agua y sosa para explicar el orden a los niños',
    'dime un refrán para recordar que va primero, el agua o la sosa',
  ])('no alarm: %s', text => {
    expect(isStoryOnly(text)).toBe(true);
    expect(readEmergencies(text)).toEqual([]);
  });
  test.each([
    ['long story: poured water on the lye and it erupted over my hands', 'lye-eruption'],
    ['true story, my son drank the lye water', 'lye-swallowed'],
    ['no es cuento, el niño se tragó sosa', 'lye-swallowed'],
    ['story of my day: acid and lye mixed and now I can hardly breathe', 'fumes-inhaled'],
  ])('first aid: %s', (text, id) => {
    expect(isStoryOnly(text)).toBe(false);
    expect(readEmergencies(text).map(one => one.id)).toContain(id);
  });
  test('a story without a word of what it is, or a long one, is read as any other', () => {
    expect(isStoryOnly('acid, water and lye')).toBe(false);
    expect(isStoryOnly(`a story with lye${' and water'.repeat(16)}`)).toBe(false);
  });
});

describe('words that name a harm elsewhere', () => {
  test.each([
    'dripping and marge, what lye do they need',
    'beef dripping and lard, lye?',
    'dripping soap, what lye',
    'eye bolts for my mould: will steel stand lye',
    '¿qué ojo de buey de acero aguanta la sosa?',
  ])('no alarm: %s', text => {
    expect(readEmergencies(text)).toEqual([]);
  });
  test.each([
    ['dripping lye ran down my sleeve, arm is slippery', 'lye-skin'],
    ['lye dripping and my arm burns', 'lye-skin'],
    ['the jug cracked and lye is dripping on the floor, all over the kitchen', 'lye-eruption'],
    ['lye in my eye, bolting to the tap', 'lye-eye'],
    ['se me metió sosa en el ojo, de verdad duele', 'lye-eye'],
    ['my goggles steamed up so I took them off and lye spat in my eye', 'lye-eye'],
    ['se me empañaron las gafas, me las quité y me saltó sosa al ojo', 'lye-eye'],
  ])('first aid: %s', (text, id) => {
    expect(readEmergencies(text).map(one => one.id)).toContain(id);
  });
});
