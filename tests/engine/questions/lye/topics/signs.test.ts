import { describe, expect, test } from 'vitest';
import { emergenciesIn } from '../../../../../src/conversation/first-aid/told.ts';
import { readyLyeIn } from '../../../../../src/engine/questions/lye/sums/ready-lye.ts';
import { lyeTopicIn } from '../../../../../src/engine/questions/lye/topics/topics.ts';

/* Common practice of soap makers handling lye (no source), but where a source stands beside it. */

describe('an oil that never went in', () => {
  test.each([
    'just found the bowl of melted coconut oil still on the counter, the soap’s already in the mould',
    'i poured the loaf and the shea butter is still in the microwave, never went in',
    'oh no i skipped the castor oil, it’s already in the mould',
    'i didn’t add the olive oil!! already poured',
    'se me quedó fuera el aceite de coco, está derretido en la hornilla y el jabón lleva dos horas en el molde',
    'se me pasó echar el coco y ya lo vertí',
  ])('%s: its lye is free, and nothing burns on the stove', text => {
    expect(lyeTopicIn(text)).toBe('oil-forgotten');
    expect(emergenciesIn([text])).toEqual([]);
  });
  test.each([
    'left the coconut oil out on the counter to soften',
    'i haven’t added the olive oil yet, the lye is cooling',
    'can i leave the castor oil out of the recipe',
    'I left the fragrance oil out, the soap is in the mould',
  ])('%s: nothing is missing from soap', text => {
    expect(lyeTopicIn(text)).not.toBe('oil-forgotten');
  });
  test('oil that burns is a fire, whatever was forgotten', () => {
    expect(emergenciesIn(['I left the coconut oil out and the pan on the stove is on fire'])).toContain(
      'fire',
    );
  });
});

describe('lye of which nobody knows whether it went in', () => {
  test.each([
    'I think I forgot the lye? like I cant remember pouring it. its been an hour and its still soup and my kid was home sick and I got distracted',
    'did i even put the lye in? the phone rang, now its been stirring an hour and no trace',
    'creo que no eché la sosa, no me acuerdo, lleva una hora y sigue líquido, el niño está malo en casa y me despisté',
  ])('%s: is found out by weighing, and nobody breathed it', text => {
    expect(lyeTopicIn(text)).toBe('lye-forgotten');
    expect(emergenciesIn([text])).toEqual([]);
  });
  test('a child who drank it is helped', () => {
    expect(emergenciesIn(['I think I forgot the lye on the table and my kid drank from the jug'])).toContain(
      'lye-swallowed',
    );
  });
});

describe('what means less than it seems', () => {
  test.each([
    ['put phenolphthalein on my bar and it went pink is it ruined', 'indicator-pink'],
    ['le he echado fenolftaleína y se pone rosa, lo tiro???', 'indicator-pink'],
    ['the ph drops turned bright pink on my bar', 'indicator-pink'],
    ['las gotas de pH se ponen rosas en la pastilla', 'indicator-pink'],
    ['WET puddle on top this mornin and i cant tell if its oil or what', 'puddle-on-top'],
    ['hay un charquito encima del jabón y no sé si es aceite o qué', 'puddle-on-top'],
    ['i added the lye to the water and it shot up to 195 degrees and steamed, is that normal', 'lye-heats'],
    ['eché la soda al agua y se puso como a 90 grados y soltó un vapor bravo, ¿eso es normal?', 'lye-heats'],
    [
      'my lye solution is on the porch cooling and its 20 below, should i bring it in before it freezes',
      'lye-water-in-cold',
    ],
    [
      'tengo el agua con sosa enfriando en la terraza y estamos a menos dos, se puede congelar?',
      'lye-water-in-cold',
    ],
    ['black dust went EVERYWHERE last time is breathing that a problem', 'dust'],
    ['charcoal keeps poofing all over my kitchen', 'dust'],
    ['la mica vuela por toda la cocina cuando abro el bote', 'dust'],
    ['es malo respirar el polvo de los óxidos?', 'dust'],
  ])('%s: %s, and no first aid', (text, topic) => {
    expect(lyeTopicIn(text)).toBe(topic);
    expect(emergenciesIn([text])).toEqual([]);
  });

  test.each([
    'le eché la sosa al agua y se puso hirviendo y echa humo, es normal?',
    'poured the water onto the lye and it is steaming hot, is that normal',
    'added lye to the water, it steamed and now I cough, is that normal',
    'lye in the water got hot and it is foaming over the jug, is that normal',
  ])('%s: is out of hand', text => {
    expect(lyeTopicIn(text)).not.toBe('lye-heats');
    expect(emergenciesIn([text]).length).toBeGreaterThan(0);
  });
});

describe('spilled lye, with everybody kept away', () => {
  test.each([
    'I spilled some of the lye beads on the basement lino just now, not a lot, and I’ve shut the dog upstairs and she’s howling about it. Do I sweep it or vinegar it or hose it or what',
    'se me cayeron unas perlas de sosa en el suelo de la cocina, el perro está encerrado en el cuarto y llorando, cómo lo recojo',
  ])('%s: is swept up', text => {
    expect(lyeTopicIn(text)).toBe('clean-up');
    expect(emergenciesIn([text])).toEqual([]);
  });
  test.each([
    'I spilled lye beads on the lino and the dog walked through it, do I sweep it',
    'I spilled lye on the floor, shut the dog out, and my foot burns. Do I sweep it',
  ])('%s: somebody met it', text => {
    expect(emergenciesIn([text]).length).toBeGreaterThan(0);
  });
});

test.each([
  'do I put the lye in the water or the water in the lye, I had it written on my hand but it smudged',
  'es la sosa al agua o el agua a la sosa, me lo apunté en la mano y se ha borrado',
])('%s: the hand holds ink, and no lye', text => {
  expect(lyeTopicIn(text)).toBe('lye-into-water');
  expect(emergenciesIn([text])).toEqual([]);
});
test('a hand that holds lye is helped', () => {
  expect(emergenciesIn(['lye in the water or water in the lye? I got lye on my hand'])).toContain('lye-skin');
});

test.each([
  [
    'master batched my lye 50/50. recipe wants 6 oz lye and 12 oz water. how much of the jug',
    12 * 28.3495,
    6 * 28.3495,
  ],
  [
    'tengo la sosa disuelta mitad y mitad, la receta lleva 120 g de sosa y 260 g de agua, cuanto echo',
    240,
    140,
  ],
])('%s: half of it is lye (arithmetic)', (text, solution, water) => {
  const ready = readyLyeIn(text);
  expect(ready?.solutionGrams).toBeCloseTo(solution, 1);
  expect(ready?.waterGrams).toBeCloseTo(water, 1);
});
