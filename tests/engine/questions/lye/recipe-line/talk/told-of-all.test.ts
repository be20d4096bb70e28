import { describe, expect, test } from 'vitest';
import { isAskedBack, readInChat } from '../../../read-in-chat.ts';

/* Recipes as a careful human reads them at once, and twins that change what is in the pot (from memory; the words are our own). */

const OILS = '600 g olive oil, 300 g coconut oil';
const ACEITES = '600 g de oliva, 300 g de coco';

describe('what is told of a recipe as a whole leaves every weight as it stands', () => {
  test.each([
    [`${OILS}, superfat 7%. The lye to two decimals please.`, 7],
    [`${OILS}, weighed not measured. Lye at 5 pct SF`, 5],
    [`Please check my numbers before I start: ${OILS}, 5% superfat. Lye?`, 5],
    [`I ran short of coconut, and so the recipe now stands at ${OILS}, superfat 5%. Lye?`, 5],
    [`Kindly compute the sodium hydroxide for ${OILS}, superfat 6`, 6],
    [`What if it were ${OILS}? lye with 8% superfat, my pupils are asking`, 8],
    [`lye n water for ${OILS}, 5% superfat`, 5],
    [`lye for 600 g olive oil and 300 g coconut oil 5%?`, 5],
    [`${OILS}. 2% excess fat cos we want it to shift grease. naoh`, 2],
    [`I intend to make olive soap from ${OILS}, superfatted at 20%. How much lye will that take?`, 20],
  ] as const)('%s', (text, superfat) => {
    const { given } = readInChat(text);
    expect(given.oils).toBe(OILS);
    expect(given.superfat).toBe(superfat);
    expect(given).not.toHaveProperty('liquid');
  });

  test.each([
    [`${ACEITES}, sobreengrasado 7 %. Agradezco la soda con dos decimales.`, 7],
    [`${ACEITES}, pesado no medido, sobreengrasado 5, ¿sosa?`, 5],
    [`Se me acabó el coco, así que la receta queda en ${ACEITES}. 5 % de SE, ¿sosa?`, 5],
    [`y si fueran ${ACEITES}? sosa con 8% de sobreengrasado, mis alumnos preguntan`, 8],
    [`Para ${ACEITES} al 5%: ¿cuánta sosa?`, 5],
    [`${ACEITES}, 3% de exceso de grasa. soda caustica por favor`, 3],
    [`600 g enteros de oliva, 300 g exactos de coco, sobreengrasado 0, cuanta sosa`, 0],
  ] as const)('%s', (text, superfat) => {
    const { given } = readInChat(text);
    expect(given.oils).toBe('600 g oliva, 300 g coco');
    expect(given.superfat).toBe(superfat);
  });

  test.each([
    ['32 oz of lard alone, superfat 6. lye?', '32 oz lard'],
    ['1 kg coconut oil full stop. 20% superfat. NaOH', '1 kg coconut oil'],
    ['5 kilos de aceite de oliva, solo oliva, al 0, cuánta sosa', '5 kg aceite de oliva'],
    ['2 kilos de sebo y nada más. ¿sosa?', '2 kg sebo'],
  ])('the one oil is alone in the pot: %s', (text, oils) => expect(readInChat(text).given.oils).toBe(oils));

  test('how pure potash is', () => {
    const { given } = readInChat(
      '¿Cuánta potasa, de la de 90 %, para 750 g de girasol y 250 g de coco? Sobreengrasado 3 %.',
    );
    expect(given.lye).toBe('KOH 90%');
  });
});

describe('a share of all that was told is made of each oil', () => {
  test.each([
    [
      'My gran’s recipe is 1 kg olive, 400 g coconut, 100 g castor. 5% superfat. I’ve only the little mold so it’ll be half. How much lye?',
      '750 g oils',
    ],
    ['900 g olive, 300 g coconut, 5%, a third of the recipe. lye?', '400 g oils'],
    [
      '2 kg de manteca de cerdo y 1 kg de oliva, al 5. Yo voy a hacer la tercera parte que somos dos. cuanta sosa',
      '1000 g oils',
    ],
  ])('%s', (text, size) => expect(readInChat(text.replaceAll('’', "'")).given.size).toBe(size));

  test.each([
    '1 kg olive, 400 g coconut, 100 g castor. 5% superfat. It’ll be half except the castor. lye?',
    '1 kg olive, 400 g coconut. This is already half. I’ll do half. lye?',
    '2 kg de manteca de cerdo y 1 kg de oliva. Voy a hacer la mitad menos la oliva. sosa',
  ])('but not where an oil stays as it was: %s', text => expect(isAskedBack(text)).toBe(true));
});

describe('a twin that changes what is in the pot is asked', () => {
  test.each([
    '600 g olive oil, 300 g coconut oil, lard alone is in. lye?',
    '600 g olive oil, 300 g coconut oil, not weighed, measured. lye?',
    'So the recipe now stands at 600 g olive oil, not 500, and I left the coconut. lye?',
    '600 g olive oil before I start taking some out. lye?',
    'What if it were 600 g olive oil or 700 g? lye?',
    '600 g de oliva y 300 de coco, solo oliva. sosa?',
    'mi abuela pregunta si saco la oliva: 600 g de oliva, 300 g de coco. sosa?',
  ])('%s', text => expect(isAskedBack(text)).toBe(true));
});

// Common practice of Spanish markets and makers: shares of a kilo, and wax that is the bees'.
describe('as markets weigh and makers name it', () => {
  test.each([
    [
      '1 kilo y cuarto de oliva, cuarto y mitad de coco y medio cuarto de ricino. ¿Sosa?',
      '1250 g oliva, 375 g coco, 125 g ricino',
    ],
    [
      '700 g de oliva, 250 de coco, 50 de cera, todo en gramos. ¿sosa?',
      '700 g oliva, 250 g coco, 50 g cera de abejas',
    ],
    ['500 g oliva, 50 g cera de soja, sosa?', '500 g oliva, 50 g cera de soja'],
    [
      'mi perra Coco pesa 12 kg, la receta es oliva 450 g, manteca de cacao 50 g. sosa',
      '450 g oliva, 50 g manteca de cacao',
    ],
  ])('%s', (text, oils) => expect(readInChat(text).given.oils).toBe(oils));
});
