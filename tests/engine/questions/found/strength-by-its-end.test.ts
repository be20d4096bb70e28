import { expect, test } from 'vitest';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

/*
 * Activated charcoal: about 1/8 to 1/4 of the black's dose makes a grey (common practice), so full colour is for black alone. A white that is
 * only to take the yellow off the base is a quarter of a full white (common practice).
 */
test.each([
  [
    'Activated charcoal in a batch with 1200 grams oils but I only want grey like the hull of a boat, not black',
    'pastel',
  ],
  ['charcoal for 500 ml. I want overcast, not midnight', 'pastel'],
  ['how much charcoal for a light grey in 500 g oils', 'tint'],
  ['charcoal for mid grey, 500 g oils', 'medium'],
  ['black oxide, 2 cups, I am after a dark grey', 'medium'],
  ['cuánto carbón activado para 500 ml, lo quiero gris clarito', 'pastel'],
  ['cuánto óxido negro en 1 kg de masa, gris medio', 'medium'],
  ['charcoal for 2 cups, black not grey', 'full'],
  ['2 cups of batter, titanium dioxide, want it white as a lighthouse', 'full'],
  ['how much titanium dioxide for 2 cups? I only wish to knock the yellow back a little', 'pastel'],
  ['cuánto dióxido de titanio para 2 tazas, quiero bajarle lo amarillo', 'pastel'],
  ['charcoal for 500 ml that gives no grey lather', undefined],
  ['how much charcoal for 500 ml', undefined],
])('%s: %s', (question, strength) => {
  expect(readQuestion(question).facts.strength).toBe(strength);
});
