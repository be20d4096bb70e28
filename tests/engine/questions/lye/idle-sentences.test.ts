import { describe, expect, test } from 'vitest';
import { withoutIdleSentences } from '../../../../src/engine/questions/lye/idle-sentences.ts';
import { isAskedBack, readInChat } from '../read-in-chat.ts';

/* What is told round a recipe and speaks of nothing in it: the recipe is read without, and it is told again. */

const RECIPE = '500 g olive, 200 g coconut. Superfat 5. Lye?';
const RECETA = '500 g de oliva, 200 g de coco. Sobreengrasado 5. ¿Sosa?';

describe('told again beside the figure', () => {
  test.each([
    ['Long day, the postman sang in the pond and the vicar laughed.', RECIPE],
    ['My daughter has eczema and glasses.', RECIPE],
    ['No wifi on the island, the ferry sank.', RECIPE],
    ['El aguacero nos dejó sin luz y el tejado gotea.', RECETA],
    ['Ni periódico ni alcalde, el cartero bosteza.', RECETA],
  ])('“%s”', (talk, recipe) => {
    const told = withoutIdleSentences(`${talk} ${recipe}`);
    expect(told?.idle).toEqual([talk.replace(/\.$/u, '')]);
    expect(told?.rest).not.toContain(talk);
    expect(told?.rest).toMatch(/500 g/u);
  });
  test('an oil that is weighed further on, where nothing is denied', () => {
    const told = withoutIdleSentences(
      'Saludos desde la nieve, el coco parece piedra de río. 250 g de coco, 250 g de oliva. ¿Sosa?',
    );
    expect(told?.idle).toEqual(['Saludos desde la nieve, el coco parece piedra de río']);
    expect(
      readInChat(
        'Saludos desde la nieve, el coco parece piedra de río. 250 g de coco, 250 g de oliva. ¿Sosa?',
      ),
    ).toMatchObject({
      given: { oils: '250 g coco, 250 g oliva' },
      beside: ['Saludos desde la nieve, el coco parece piedra de río'],
    });
  });
  test('what is longer than a line of a telephone is cut', () => {
    const told = withoutIdleSentences(`The ${'choir sang and '.repeat(12)}marched. ${RECIPE}`);
    expect(told?.idle[0]).toMatch(/^.{60,90}$/u);
  });
});

describe('stays in the message, since a figure may hang on it', () => {
  test.each([
    'It fell behind the cooker.',
    'The first one stays home.',
    'Those belong to grandmother Hilde.',
    'My sister Berta took the jar.',
    'The parcel is stuck in customs.',
    'Half went to the neighbours.',
    'I forgot the kettle.',
    'The scale jumped about.',
    'La segunda espera en casa de Berta.',
    'Se me volcó en la mesa del comedor.',
    'Lo otro es para Berta.',
    'Tacha lo de Berta.',
    'Perdón, 90.',
    'The water boiled away.',
    'We like a high discount.',
    // A denial of nothing else.
    'Never on a Sunday.',
    'Hoy no.',
  ])('“%s”', sentence => {
    expect(withoutIdleSentences(`${sentence} ${RECIPE}`)?.rest ?? sentence).toContain(sentence);
  });
  test.each([
    'No sé si eché el ricino o no. Oliva 500 g, ricino 50 g. ¿Sosa?',
    'I never put the castor in, did I? Olive 500 g, castor 50 g. Lye?',
  ])('an oil that may not be in: “%s”', message => expect(isAskedBack(message)).toBe(true));
});

test('an oil in a sentence that may turn it stays, however much else is told', () => {
  const message = 'Si el coco bosteza, el alcalde tirita. 250 g de coco, 250 g de oliva. ¿Sosa?';
  expect(withoutIdleSentences(message)?.rest ?? message).toContain('bosteza');
});
test('who chats more than three strange sentences is asked', () => {
  const chat = ['The vicar laughed.', 'A heron danced.', 'Our tram derailed.', 'The choir yodelled.'];
  expect(withoutIdleSentences(`${chat.slice(0, 3).join(' ')} ${RECIPE}`)?.idle).toHaveLength(3);
  expect(withoutIdleSentences(`${chat.join(' ')} ${RECIPE}`)).toBeUndefined();
});
test('a message that goes beyond what is followed here keeps all its sentences', () => {
  expect(withoutIdleSentences(`The vicar laughed. All of it by volume. ${RECIPE}`)?.rest ?? '').toBe('');
});
test('a recipe alone has none', () =>
  expect(withoutIdleSentences('500 g olive, 200 g coconut, lye?')).toBeUndefined());
test('a sentence of an oil is judged where it stands: behind the weight it stays, though the same words went before it', () => {
  const message = 'El coco brilla. 250 g de coco, 250 g de oliva. El coco brilla. ¿Sosa?';
  expect(withoutIdleSentences(message)?.rest).toBe('250 g de coco, 250 g de oliva. El coco brilla. ¿Sosa?');
});
