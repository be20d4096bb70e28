import { describe, expect, test } from 'vitest';
import { isAskedBack, readInChat } from '../../read-in-chat.ts';

describe('an oil that is told to be alone is the whole recipe', () => {
  test.each([
    ['soda y agua para 1 kg de grasa vacuna sola', '1 kg grasa vacuna'],
    [
      'Haré jabón de manteca de cerdo sola, son 800 gramos. ¿Me calcula la sosa, por favor?',
      '800 g manteca de cerdo',
    ],
  ])('%s', (question, oils) => {
    expect(readInChat(question).given.oils).toBe(oils);
  });
  test.each([
    '700 g de oliva y la manteca sola aparte 200 g, cuánta sosa',
    'haré jabón luego con 300 g de coco; ahora 500 g de oliva, cuánta sosa',
    'me sobraron 300 g de manteca y tengo 500 g de oliva, cuánta sosa',
  ])('asked: %s', question => {
    expect(isAskedBack(question)).toBe(true);
  });
});
