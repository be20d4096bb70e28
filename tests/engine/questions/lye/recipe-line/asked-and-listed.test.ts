import { describe, expect, test } from 'vitest';
import { isAskedBack, readInChat } from '../../read-in-chat.ts';

const given = (question: string) => readInChat(question).given;

describe('however the lye is asked for, it is of the oils that stand there', () => {
  test.each([
    'Could someone work out the sodium hydroxide for 700 g olive and 200 g coconut please',
    'Just the lye number for 700 g olive, 200 g coconut',
    'What would be the lye for 700 g olive, 200 g coconut',
    '700 g olive 200 g coconut lye. Sorry, caps key is stuck',
  ])('%s', question => expect(given(question).oils).toBe('700 g olive, 200 g coconut'));
  test.each([
    '¿me tiran la soda para 700 g de oliva y 200 g de coco?',
    'apúntame la sosa de 700 g de oliva y 200 g de coco',
    'no hay apuro, cuando puedan: soda para 700 g de oliva y 200 g de coco',
    'se me olvidó deciros que son gramos: 700 oliva, 200 coco. sosa',
  ])('%s', question => expect(given(question).oils).toBe('700 g oliva, 200 g coco'));
  // Excuses that are of more than how it is written, and what is not here yet.
  test.each([
    '700 g olive 200 g coconut. The parcel never came. lye?',
    '700 g de oliva y 200 g de coco. El paquete no ha llegado. ¿sosa?',
    '700 g olive 200 g coconut. Sorry about the typo, half the oil. lye?',
  ])('asked: %s', question => expect(isAskedBack(question)).toBe(true));
});

describe('lists as makers type them', () => {
  test.each([
    ['lye for 300/300/200 g olive, coconut, palm', '300 g olive, 300 g coconut, 200 g palm'],
    ['4 blocks of lard at 250 g each and a 500 g tub of coconut, how much lye', '1000 g lard, 500 g coconut'],
    [
      'oliva 330 g, coco 110 g, aguacate 60 g, que son 500 g redondos. ¿sosa?',
      '330 g oliva, 110 g coco, 60 g aguacate',
    ],
    ['500 g manteca cerdo, 200 g coco, ¿sosa?', '500 g manteca de cerdo, 200 g coco'],
    ['fragrance and mica aside, 600 g olive, 200 g coconut. lye?', '600 g olive, 200 g coconut'],
    ['Sin contar fragancia ni arcilla: 600 g de oliva, 200 g de coco. ¿sosa?', '600 g oliva, 200 g coco'],
    [
      '600 g olive, 200 g coconut. The fragrance 30 g goes in later, don’t count it. lye?',
      '600 g olive, 200 g coconut',
    ],
  ])('%s', (question, oils) => expect(given(question).oils).toBe(oils));
  test.each([
    // A weight too few, a sum that does not come out, an oil that is set aside.
    'lye for 300/300 g olive, coconut, palm',
    'oliva 330 g, coco 110 g, que son 500 g redondos. ¿sosa?',
    'castor aside, 600 g olive, 200 g coconut, 50 g castor. lye?',
  ])('asked: %s', question => expect(isAskedBack(question)).toBe(true));
  test.each([
    ['600 g olive 200 g coconut, water:lye 2:1, how much lye', '2:1'],
    ['600 g de oliva y 200 g de coco, agua 1,7 por cada 1 de sosa, ¿sosa?', '1,7:1'],
    ['600 g olive 200 g coconut, KOH, water at 2.5 times the potash. how much', '2.5:1'],
    ['600 g de oliva y 200 g de coco con KOH, agua tres veces la potasa, ¿cuánta?', '3:1'],
  ])('and water by its lye: %s', (question, water) => expect(given(question).water).toBe(water));
});

describe('a figure that was written wrongly before was never in the pot', () => {
  test.each([
    [
      "I said 300 g of lard in my last text, scrap that, it's 200 g lard, 500 g olive. lye?",
      '200 g lard, 500 g olive',
    ],
    [
      '340 g olive, 170 g coconut, 57 g castor. I typed 75 of castor earlier, that was a slip. lye?',
      '340 g olive, 170 g coconut, 57 g castor',
    ],
    [
      'Donde dije 150 g de ricino léase 50 g. Oliva 650 g, coco 300 g, ricino 50 g. ¿sosa?',
      '650 g oliva, 300 g coco, 50 g ricino',
    ],
  ])('%s', (question, oils) => expect(given(question).oils).toBe(oils));
  test.each([
    // What was put is in the pot, whatever is right.
    'I put 300 g of lard in, 200 g lard is right, 500 g olive. lye?',
    // What is said to be right is not what stands there.
    '340 g olive, 57 g castor. I typed 75 of castor earlier, 60 is right. lye?',
    // Which of two counts nobody says.
    'I said 300 g of lard. 200 g lard, 250 g lard, 500 g olive. lye?',
  ])('asked: %s', question => expect(isAskedBack(question)).toBe(true));
});
