import { describe, expect, test } from 'vitest';
import { readQuestion } from '../../../../../src/engine/questions/read.ts';

const jobOf = (question: string) => {
  const { readings, outside } = readQuestion(question);
  return outside ?? readings[0]?.job;
};

describe('a plant that is asked a colour is asked what lye leaves of it', () => {
  test.each([
    'lombarda da morado?',
    'palo de campeche da morado?',
    'onion skins for yellow?',
    'rhubarb root yellow?',
    'brazilwood for pink',
    'saffron for yellow?',
    'flor de jamaica da rojo?',
    'borra de café da marrón?',
    'gofio para marrón aguanta?',
    'avocado pit pink?',
    'comfrey leaf powder?',
    'chlorella?',
  ])('“%s”', question => {
    expect(jobOf(question)).toBe('survives-lye');
  });

  test.each([
    ['a hue that is called after one', 'avocado green'],
    ['a hue before its name', 'verde aguacate'],
    ['a hue that is wished', 'how do i make pumpkin orange'],
    ['a colour word alone', 'cherry red'],
  ])('%s asks for none: “%s”', (_, question) => {
    expect(jobOf(question)).toBe('mix');
  });

  test('two plants, or more that is told, are judged', () => {
    expect(jobOf('madder or alkanet for pink')).not.toBe('survives-lye');
    expect(jobOf('how much spinach powder for 1 lb oils')).toBe('dose');
  });
});
