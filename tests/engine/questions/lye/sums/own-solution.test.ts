import { expect, test } from 'vitest';
import { Refusal } from '../../../../../src/engine/refusal.ts';
import { readInChat } from '../../read-in-chat.ts';

// The first had been told as dry lye and water: a third of the lye, weighed of the solution.
test.each([
  'Tengo una solución de sosa al 33 %. ¿Cuántos gramos de solución para 1 kg de oliva y 250 g de coco con 5 % de sobreengrasado?',
  'I have a lye solution at 33%. How many grams of solution for 1 kg olive and 250 g coconut at 5% superfat?',
  'I have a 33% lye solution. How many grams of solution for 1 kg olive and 250 g coconut at 5% superfat?',
])('lye water that is had is weighed as that: %s', question => {
  expect(readInChat(question).given.lye).toBe('33% lye solution');
});

test.each([
  '1 kg de oliva, sosa al 5%, solución de sosa al 33%',
  '1 kg olive, lye solution at 33%, superfat 5%, how much lye?',
])('lye water that is wished for is water of that strength: %s', question => {
  expect(readInChat(question).given).toMatchObject({ superfat: 5, water: '33% lye' });
});

test('how strong it is is asked, in the words that name it', () => {
  let refused: unknown;
  try {
    readInChat('Tengo una solución de sosa. ¿Cuánta para 1 kg de oliva al 5%?');
  } catch (error) {
    refused = error;
  }
  expect(refused).toBeInstanceOf(Refusal);
  expect(refused).toMatchObject({ id: 'lye-ready-strength', values: { text: 'solucion de sosa' } });
});
