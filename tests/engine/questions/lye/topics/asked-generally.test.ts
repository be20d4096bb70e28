import { describe, expect, test } from 'vitest';
import { emergenciesIn } from '../../../../../src/conversation/first-aid/told.ts';
import {
  asksForOrder,
  isAskedGenerally,
} from '../../../../../src/engine/questions/lye/topics/asked-generally.ts';

/*
 * What is asked in general is answered; one word of somebody hurt, of a vessel that gave way or of what goes on at this moment, and first
 * aid comes before any answer (common practice of first aid: in doubt, help).
 */

const GENERAL = [
  'do I put the lye into the water or the water into the lye',
  'when I mix the caustic, do I put it to the water or the water to it?',
  'la sosa al agua o el agua a la sosa',
  'el agua a la sosa o la sosa al agua, ya',
  'do I put water in the lye or lye in the water now',
  'how do I store lye',
  'how do I store lye, my hands are dry',
  'can I mix bleach and vinegar',
  'may I mix bleach with ammonia',
  'can I store lye in a drink bottle?',
  'I keep lye in a soda bottle, is that ok?',
  'my oil is smoking',
  'my olive oil is smoking on the stove, is that ok',
  'can I use sea shells in soap, my tin',
  'I have asthma, can I make soap',
  'tengo asma, puedo hacer jabón',
  'can I pour lye into boiling water',
  'can I make soap with a parrot in the house',
  'puedo hacer jabón con pájaros en casa',
  'puedo hacer jabón sin ventana',
  'puedo calentar la sosa',
  'should I heat the lye',
  'y qué pasa si pongo demasiada sosa',
  'qué pasaría si me paso de sosa',
  'do I need goggles?',
  'no goggles?',
  'I have no goggles for the lye, is that ok?',
  'how do I do the zap test',
  'can I add more lye to it',
  'how do I dispose of lye',
  'lye and water swapped',
  'is it safe to breathe lye fumes',
  'will turmeric survive the lye?',
  'does beet juice hold up in soap?',
  'does turmeric survive the lye, ok?',
  'does goat milk survive in soap?',
  '¿aguanta la leche de cabra la sosa?',
  '¿resisten los pétalos en el jabón?',
  'I spilled 10 g of lye water, recipe 141 g lye in 282 g water',
];

describe('what is asked in general', () => {
  test.each(GENERAL)('%s', text => {
    expect(isAskedGenerally(text)).toBe(true);
    expect(emergenciesIn([text])).toEqual([]);
  });

  test('is short: a story may hold somebody who is hurt', () => {
    expect(isAskedGenerally(`${'this is the long story of my bench. '.repeat(5)}can I heat the lye`)).toBe(
      false,
    );
    expect(
      isAskedGenerally(
        'I spilled some of the lye beads on the basement lino just now, not a lot, and I’ve shut the dog upstairs and she’s howling about it. Do I sweep it or vinegar it',
      ),
    ).toBe(true);
  });
});

describe('is not asked in general where', () => {
  test.each([
    ['somebody coughs', 'lye to water or water to lye, I cough'],
    ['somebody coughs', 'la sosa al agua o el agua a la sosa, mi hijo tose'],
    ['it burns', 'lye to water or water to lye, it burns'],
    ['it fizzes', 'lye to water or water to lye, it is fizzing'],
    ['it is on a body', 'lye to water or water to lye, it is on my skin'],
    ['it was done', 'I poured lye to water or water to lye'],
    ['an animal is dying', 'how do I store lye, the cat is dying'],
    ['it bubbles', 'how do I store lye, it is bubbling'],
    ['it was drunk', 'how do I store lye, I drank some'],
    ['two cleaners have met', 'bleach and vinegar mixed'],
    ['lye was swallowed', 'I swallowed lye'],
    ['nothing is asked', 'lye in a drink bottle'],
    ['lye is in the hot oil', 'my olive oil is smoking, I added the lye'],
    ['lye is in the hot oil', 'my oil is smoking, le eché sosa'],
    ['eyes sting', 'the oil smokes and my eyes sting'],
    ['the pot gave way', 'the oil is smoking and the pot cracked'],
    ['a rash is told', 'can I put sand in soap, it gives me a rash'],
    ['the mould broke', 'can I put sand in soap, the mould broke'],
    ['asthma has come', 'I have asthma and I cough, can I make soap'],
    ['lye went into hot water', 'I poured lye into boiling water'],
    ['it foams', 'is it ok to pour lye into hot water, it is foaming'],
    ['the jug cracked', 'is it ok to pour lye into hot water, the jug cracked'],
    ['a bird is dying', 'can I make soap with a parrot in the house, it is dying'],
    ['the jug leaks', 'can I heat the lye, the jug is leaking'],
    ['it rises', 'can I heat the lye, it is rising'],
    ['it comes out at this moment', 'puedo calentar la sosa, se está saliendo'],
    ['somebody got burnt', 'can I heat the lye, I burnt myself'],
    ['somebody got burnt', 'puedo calentar la sosa, me quemé'],
    ['an arm burns', 'qué pasa si me paso de sosa, me arde la mano'],
    ['a child is there', 'qué pasa si pongo demasiada sosa, mi hijo'],
    ['a baby is there', 'qué pasa si me paso de sosa y el bebé'],
    ['it is on skin', 'qué pasa si pongo demasiada sosa, mancha la piel'],
    ['it foams', 'qué pasa si pongo demasiada sosa, hace espuma'],
    ['the jug broke', 'qué pasa si pongo demasiada sosa, se rompió la jarra'],
    ['somebody is ill', 'qué pasa si pongo demasiada sosa, estoy enfermo'],
    ['it was tasted', 'qué pasa si pongo demasiada sosa, lo probé'],
    ['nothing is asked', 'si me paso de sosa'],
    ['eyes hurt', 'I mixed lye without goggles and my eyes hurt?'],
    ['a child is there', 'no goggles? the child'],
    ['a son coughs', 'can I mix lye without goggles, my son is coughing'],
    ['a baby is limp', 'is it safe to breathe lye fumes, the baby is limp'],
    ['a parrot is meant', 'are lye fumes bad for my parrot?'],
    ['it was spilled', 'how do I dispose of lye, I spilled it'],
    ['who spilled it coughs', 'I spilled 10 g of lye water, recipe 141 g lye in 282 g water, I cough'],
    ['a hand burns', 'I swapped the lye and water amounts, my hand burns'],
    ['a dog licked it', 'does turmeric survive the lye, the dog licked it'],
    ['the jar leaked', 'does turmeric survive the lye, the jar leaked'],
    ['it rises', 'does turmeric survive the lye, it is rising'],
    ['a cleaner is meant', 'does bleach survive the lye?'],
    ['a cleaner is meant', 'does ammonia survive the lye?'],
    ['a son is meant', 'does my son survive the lye?'],
    ['more is told behind it', 'does turmeric survive the soap. It went brown. Why'],
    ['nothing of ours is asked', 'what colour is madder'],
  ])('%s: %s', (_, text) => {
    expect(isAskedGenerally(text)).toBe(false);
  });

  test.each([
    ['is it ok to pour lye into hot water, the jug cracked', 'lye-eruption'],
    ['is it safe to breathe lye fumes, the baby is limp', 'fumes-inhaled'],
    ['can I mix lye without goggles, my son is coughing', 'fumes-inhaled'],
  ])('what happened beside it gets first aid: %s', (text, emergency) => {
    expect(emergenciesIn([text])).toContain(emergency);
  });
});

test.each([
  ['is it lye in water or water in lye', true],
  ['el agua a la sosa o la sosa al agua', true],
  ['lye in the water or water in the lye, I had it written on my hand', true],
  ['la sosa al agua o el agua a la sosa, me lo apunté en la mano', true],
  ['lye in the water or water in the lye, it is on my hand', false],
  ['do I put the lye in the water', false],
  ['I poured lye in water or water in lye', false],
])('which goes into which is all that is asked: %s: %s', (text, is) => {
  expect(asksForOrder(text)).toBe(is);
});
