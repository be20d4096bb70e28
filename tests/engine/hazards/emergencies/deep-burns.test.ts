import { describe, expect, test } from 'vitest';
import { outrightIn } from '../../../../src/engine/hazards/emergencies/outright/read.ts';
import { scenesIn } from '../../../../src/engine/hazards/emergencies/scenes.ts';
import { readEmergencies } from '../../../../src/engine/hazards/index.ts';

/** What is told for sure, by patterns alone: nothing that was learned has a part in it. */
function outright(text: string): readonly string[] {
  const { tokens, reading } = scenesIn(text);
  return outrightIn(tokens, reading).map(({ id }) => id);
}

// Lye burns deep and may not hurt at first: NIOSH Pocket Guide to Chemical Hazards, sodium hydroxide (eye, skin burns; pneumonitis).
describe('a hole in a hand is a burn by lye, though it does not hurt', () => {
  test.each([
    'somethin ate a hole in ma hand overnite. wis makin soap last nite nae gloves didny feel a thing. its grey in the middle',
    'something burned a hole in my finger while I was soaping, it doesn’t hurt',
    'the flake left a hole in my arm, no pain at all',
    'algo me hizo un agujero en el dedo cuando hacía jabón y no duele',
    'la sosa me ha hecho un hueco en la mano, no siento nada',
  ])('%s', text => {
    expect(outright(text)).toContain('lye-skin');
    expect(readEmergencies(text)[0]).toMatchObject({ id: 'lye-skin', inDoubt: false });
  });
  test.each([
    'the lye ate a hole in my apron',
    'burned a hole in my glove, my hand is fine',
    'la sosa hizo un agujero en el delantal',
    'a wee hole in the hand stamp I carved, how do I fill it',
  ])('of what is worn or made it tells no burn outright: %s', text => {
    expect(outright(text)).not.toContain('lye-skin');
  });
});

// Pink or bloody sputum is fluid in the lungs, which corrosive dust and mist may cause: from memory.
describe('a cough that brings up pink or blood beside lye is of lungs that are hurt', () => {
  test.each([
    'been decanting the powdery lye all morning for a big order with no mask on, coughing up pinkish stuff. is that the dust',
    'I weighed lye without a mask and now I’m coughing up blood',
    'mixed my lye in the shed, pink phlegm since',
    'pesé la sosa sin mascarilla y ahora toso sangre',
    'con los vapores de la sosa tengo flemas con sangre',
  ])('%s', text => {
    expect(outright(text)).toContain('fumes-inhaled');
    expect(readEmergencies(text).map(({ id }) => id)).toContain('fumes-inhaled');
  });
  test.each([
    'my cough drop soap came out pink, lye at 5%',
    'pink foam on top of my batter, is that the mica? lye was at 40',
    'espuma rosada encima de la masa con mica, ¿es normal? la sosa estaba a 40',
    'not coughing, my pink mica is lovely, lye at 5%',
  ])('pink that nobody coughs is none: %s', text => {
    expect(outright(text)).not.toContain('fumes-inhaled');
    expect(readEmergencies(text)).toEqual([]);
  });
});
