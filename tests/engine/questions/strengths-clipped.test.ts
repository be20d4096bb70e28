import { expect, test } from 'vitest';
import { readQuestion } from '../../../src/engine/questions/read.ts';

// Written from memory of how hurried thumbs clip words.
test.each([
  ['how much tio2 for 1c batter at half str', 'half'],
  ['ultramarine 2 cups 1/2 strngth', 'half'],
  ['half-str blue mica, 2 cups', 'half'],
  ['cuanto ultramar para 2 tazas a media fza', 'half'],
  ['charcoal 1 kg batter 3/4 strength', '75%'],
  ['charcoal 1 kg batter at quarter str', '25%'],
  ['charcoal 1 kg batter at 60% strength', '60%'],
  ['charcoal 2 cups 2x strength', 'double'],
  ['red oxide 500g batter full-str', 'full'],
  ['blue mica lightish 2 cups', 'pastel'],
  ['purple mica 3 cups v pale', 'tint'],
  ['how much rose clay for 2 cups, a notch lighter than full', 'medium'],
  ['cuanto ultramar para 2 tazas un pelin mas claro', 'medium'],
  ['green oxide 2 cups, a notch darker', 'full'],
  // The word made big or dear, and what is not to be.
  ['cúrcuma para 450 g de aceites, que quede fuertísimo', 'full'],
  ['óxido negro 300 g de masa bien cargadito', 'full'],
  ['carbon activado 200 ml, negro cerrado', 'full'],
  ['charcoal for 2 cups, black not grey', 'full'],
  ['mica azul 2 tazas, un suspiro de azul', 'tint'],
  // Of two rates that were read somewhere neither is wished.
  ['one book says 1 tsp madder ppo, another 3 tsp ppo, how much for 900 g oils, bold', 'full'],
  // A hue that is medium, what is neither, and what is only to lift.
  ['para un violeta medio con mica violeta en 300 ml', 'medium'],
  ['caléndula para 400 g de aceites, que se note a medias, ni pálido ni chillón', 'medium'],
  ['blue mica for 1 lb oils, neither pale nor loud', 'medium'],
  ['mica azul para 2 tazas, ni chillona ni apagada', 'medium'],
  ['green oxide for 500 g oils, not too dark and not too pale', 'medium'],
  ['dióxido de titanio en 200 ml, solo para aclarar', 'tint'],
  ['titanium dioxide in 2 cups just to take the yellow off', 'tint'],
  ['mica azul medio litro', undefined],
  // No strength: a part of the batter, a figure of a recipe, a colour of two halves.
  ['half the batter blue mica 2 cups', undefined],
  ['i want half color half white, blue mica for 2 cups', undefined],
  ['how much blue mica for 2 1/2 cups', undefined],
])('%s: %s', (text, strength) => expect(readQuestion(text).facts.strength).toBe(strength));

test('a part of full colour reaches the command as a share', () =>
  expect(readQuestion('how much charcoal for 2 cups at 3/4 strength').readings[0]?.given).toMatchObject({
    strength: '75% of full',
  }));

// A bare percent is one of the oils, and 50 % of those is no dose.
test.each([
  ['half', '50% of full'],
  ['double', '200% of full'],
])('“%s strength” is written so that the command takes it', (said, strength) =>
  expect(readQuestion(`how much charcoal for 2 cups at ${said} strength`).readings[0]?.given).toMatchObject({
    strength,
  }),
);
