import { describe, expect, test } from 'vitest';
import { isAskedBack, readInChat } from '../../../read-in-chat.ts';

describe('what only tells of an oil, of something else or of the lye is read past', () => {
  test.each([
    ['600 g olive, 200 g coconut. Half my class is out today. Lye at 5%?', '600 g olive, 200 g coconut'],
    [
      '600 g de oliva, 200 g de coco. Me comí la mitad de las galletas. ¿Sosa al 5%?',
      '600 g oliva, 200 g coco',
    ],
    ['Half asleep. 600 g olive, 200 g coconut. Lye?', '600 g olive, 200 g coconut'],
    ['600 g de oliva, 80 g de ricino. El ricino es bien espeso. ¿Sosa?', '600 g oliva, 80 g ricino'],
    ['600 g olive, 200 g tallow. Tallow’s from the butcher. Lye?', '600 g olive, 200 g tallow'],
    [
      '400 g de aceite de palma, de palma, no de palmiste, y 200 g de coco. ¿Sosa?',
      '400 g aceite de palma, 200 g coco',
    ],
    [
      '900 g olive oil, 300 g of it infused with calendula, and 300 g coconut oil. Lye?',
      '900 g olive oil, 300 g coconut oil',
    ],
    ['500 g de oliva y 150 g de karité que también cuenta para la soda. ¿Soda?', '500 g oliva, 150 g karite'],
    ['500 g olive oil and 150 g shea that counts for the lye too. Lye?', '500 g olive oil, 150 g shea'],
    ['Uno de coco por cada tres de oliva, 1 kg de aceites en total. ¿Soda?', '25% coco, 75% oliva'],
    ['One of coconut for every three of olive, 1 kg of oils in all. Lye?', '25% coconut, 75% olive'],
    [
      '60% olive oil, 40% coconut oil, 1200 g of oils. Lye please, and cheers from the projection booth.',
      '60% olive oil, 40% coconut oil',
    ],
    [
      '5% superfat is what I was after, 96 g lye, and in the pot is 700 g olive oil and 50 g castor oil. Safe?',
      '700 g olive oil, 50 g castor oil',
    ],
  ])('%s', (question, oils) => expect(readInChat(question).given.oils).toBe(oils));

  test.each([
    '600 g olive, 200 g coconut. Half the oil is in the shed. Lye at 5%?',
    '600 g olive, 200 g coconut. Half the jar is empty now. Lye at 5%?',
    '600 g de oliva, 200 g de coco. Guardé la mitad de la botella. ¿Sosa al 5%?',
    '300 g goose fat, 300 g lard. Goose is from Auntie, and it’s in the garbage. Lye?',
    '300 g goose fat, 300 g lard. Goose is from Auntie, jar’s 2 years old, smelled it and it’s in the garbage. Lye?',
    '600 g de oliva, 80 g de karité. El karité me lo regaló mi prima y lo tiré. ¿Sosa?',
    '600 g olive, 200 g canola. Canola’s still in the car. Lye?',
    '500 g de oliva, 150 g de karité que no cuenta para la soda. ¿Soda?',
    '500 g olive, 150 g shea that does not count for the lye. Lye?',
  ])('what may keep some of it out is asked: %s', question => expect(isAskedBack(question)).toBe(true));
});

describe('nuts that are weighed among oils', () => {
  test.each([
    ['almendras 100, oliva 500, coco 200 gramos. ¿sosa?', 'almendras', 'aceite de almendras'],
    ['400 g de oliva, 200 g de coco, 100 g de nueces, ¿sosa al 5%?', 'nueces', 'aceite de nuez'],
    ['400 g de oliva, 200 g de coco, 100 g de avellanas, ¿sosa al 5%?', 'avellanas', 'aceite de avellana'],
  ])('are their oil, and it is said so: %s', (question, nuts, oil) => {
    const { given, respelt } = readInChat(question);
    expect(given.oils).toContain(`100 g ${oil}`);
    expect(respelt).toEqual([{ typed: nuts, read: oil }]);
  });

  test.each([
    '400 g de oliva, 200 g de coco, 50 g de avellanas molidas, ¿sosa al 5%?',
    '400 g de oliva, 200 g de coco, 50 g de almendras picadas, ¿sosa al 5%?',
    '400 g de oliva y 50 g de almendras. ¿sosa?',
    'oliva 500, coco 200, una cucharada de almendras. ¿sosa?',
    'oliva 500, coco 200, 30 g de harina de almendras. ¿sosa?',
  ])('ground, spooned or beside one oil they are no oil: %s', question => {
    expect(isAskedBack(question)).toBe(true);
  });
});
