import { describe, expect, test } from 'vitest';
import * as english from '../../../../../../src/words/en/index.ts';
import * as spanish from '../../../../../../src/words/es/index.ts';
import { readInChat, refusalOf } from '../../../read-in-chat.ts';

describe('two pots that are compared are never one', () => {
  // 500 g of coconut takes 91 g NaOH, 500 g of olive 67 g: by the middle of Codex CXS 210 and CXS 33 (256.5 and 190 mg KOH per g).
  test.each([
    'si con 500 g de coco llevo 91 g de sosa, con 500 de oliva lo mismo no? para el 0%',
    'para 500 g de coco son 91 g de sosa, ¿para 500 g de oliva es igual?',
    'mi receta de 500 g de coco lleva 91 g de sosa. ¿y la de 500 g de oliva, lo mismo?',
    '500 g de coco = 91 g de sosa. entonces 500 g de oliva también?',
    'con 1 kg de manteca de cerdo uso 138 g de sosa, ¿puedo usar la misma para 1 kg de girasol?',
    '600 g de sebo y 600 g de oliva, ¿llevan la misma sosa?',
    'if 500 g coconut takes 91 g lye, is 500 g olive the same?',
    'I use 138 g lye for 1 kg lard. what about 1 kg of sunflower, same again?',
    "for 500 g coconut it's 91 g lye, for 500 g olive?",
    'is 91 g lye for 500 g of coconut the same as for 500 g of olive',
    'does 500 g olive need as much lye as 500 g coconut does, 91 g?',
    'Is the lye the same for 600 g lard and 600 g olive?',
  ])('%s', question => expect(refusalOf(question).id).toBe('pots-compared'));

  test.each([
    ['500 g olive, 250 g coconut, 91 g lye, 200 g water. is that too much lye?', 91],
    ['I put 100 g lye in 250 g water for 500 g olive and 250 g coconut, same as last time. is it ok', 100],
    ['500 g oliva 250 g coco 100 g de sosa, igual que siempre, ¿va bien?', 100],
  ])('and one pot is checked: %s', (question, grams) =>
    expect(readInChat(question).weighed?.grams).toBe(grams),
  );

  test('in both languages', () => {
    const { values } = refusalOf('if 500 g coconut takes 91 g lye, is 500 g olive the same?');
    expect(english.refusals['pots-compared'](values as never)).toContain(
      'Two pots stand there (“500 g olive the same',
    );
    expect(spanish.refusals['pots-compared'](values as never)).toContain(
      'Ahí hay dos ollas («500 g olive the same',
    );
  });
});
