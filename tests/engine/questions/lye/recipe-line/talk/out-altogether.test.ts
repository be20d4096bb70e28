import { describe, expect, test } from 'vitest';
import { isAskedBack, readInChat } from '../../../read-in-chat.ts';

/* How makers tell of an oil that they do without (from memory; the words are our own). */

describe('an oil that is out for good, and stands in no list, is no reason to ask', () => {
  test.each([
    [
      'I was going to put 100 g of castor in but the bottle is empty so there’s NO castor. Just 600 g olive and 300 g coconut. 5% superfat, lye please',
      '600 g olive, 300 g coconut',
    ],
    ['no palm today, it ran out. 500 g olive 250 g coconut, lye at 5%?', '500 g olive, 250 g coconut'],
    [
      'Quería echarle aguacate pero se me puso rancio y lo tiré. Queda: oliva 480 g, coco 240 g, ricino 40 g. ¿Sosa?',
      '480 g oliva, 240 g coco, 40 g ricino',
    ],
    [
      'El lino lo quité del todo, olvidaos del lino. Queda oliva 500 g, coco 250 g, palma 250 g. ¿Sosa?',
      '500 g oliva, 250 g coco, 250 g palma',
    ],
  ])('%s', (question, oils) => expect(readInChat(question).given.oils).toBe(oils));
});

describe('what came in its place, or is in after all, is asked', () => {
  test.each([
    '500 g olive 250 g coconut. The palm ran out so I put something else in. how much lye at 5%?',
    '500 g olive 250 g coconut. There’s no palm, so the rest is lard. how much lye at 5%?',
    '480 g tallow, 320 g olive. There’s no bottle of coconut left, a lump of coconut is in too, unweighed. Lye?',
    '500 g olive 250 g coconut 100 g canola. the canola’s part sweet almond because it ran out. lye?',
    '500 g de oliva y 250 g de coco, sosa al 5%. no hay ricino, un poco de almendra sí',
    'Se me acabó el aguacate y puse otra cosa. oliva 600 g, coco 250 g, eso 100 g. ¿sosa?',
  ])('%s', question => expect(isAskedBack(question)).toBe(true));
});
