import { describe, expect, test } from 'vitest';
import { waterForLyeIn } from '../../../../../../src/engine/questions/lye/sums/ready-lye.ts';
import { isAskedBack, readInChat } from '../../../read-in-chat.ts';

/* Water, superfat, purity and the pound in the words that makers have for them. */

const OILS = 'olive 500 g, coconut 200 g';
const ACEITES = 'oliva 500 g, coco 200 g';
const given = (message: string) => readInChat(message).given;

describe('water by the lye, in parts and in times of it', () => {
  test.each([
    [`${OILS}, superfat 5, all the liquid is frozen milk at 2.5 times the lye. Lye?`, '2.5:1'],
    [`Flat stout for all of the water, 2.2 x the lye. ${OILS}, superfat 5. Lye?`, '2.2:1'],
    [`${OILS}, superfat 5, liquid is 2.3 to 1. Lye?`, '2.3:1'],
    [`${OILS}, superfat 5, lye at 1 part to 2 parts water. NaOH?`, '2:1'],
    [`${OILS}, superfat 5, water at two parts to one of lye. NaOH?`, '2:1'],
    [`${ACEITES}, sobreengrasado 5, agua a 1,8 por cada parte de sosa. ¿Sosa?`, '1,8:1'],
    [`${ACEITES}, sobreengrasado 5, agua: el doble de la sosa. ¿Sosa?`, '2:1'],
    [`Con cerveza como líquido, el doble que de sosa. ${ACEITES}, sobreengrasado 5. ¿Sosa?`, '2:1'],
  ])('%s', (message, water) => {
    const told = given(message);
    expect(told.water?.replace(',', '.')).toBe(water.replace(',', '.'));
    expect(told).toMatchObject({ oils: expect.stringMatching(/^500 g ol\w+, 200 g coc\w+$/u), superfat: 5 });
  });
  test.each([
    [`${OILS}, superfat 5, water as 33% of the oils. Lye?`, '33% of oils'],
    [`${ACEITES}, sobreengrasado 5, agua al 30% del peso de los aceites. ¿Sosa?`, '30% of oils'],
    [`${ACEITES}, sobreengrasado 5, concentración de la lejía 33 %. ¿Hidróxido de sodio?`, '33% lye'],
  ])('%s', (message, water) => expect(given(message)).toMatchObject({ water, superfat: 5 }));
  test('times of the lye are none of the recipe: its oils stay', () => {
    expect(given(`${ACEITES}, sobreengrasado 5. Agua? el doble de la sosa. Falta: la sosa`).oils).toBe(
      '500 g oliva, 200 g coco',
    );
  });
  test('a recipe that is doubled is no water', () =>
    expect(isAskedBack(`Doble de todo: ${ACEITES}. ¿Sosa y agua?`)).toBe(true));
});

describe('superfat by its other names', () => {
  test.each([
    [`${OILS}. I'd like 7% left unsaponified. Lye?`, 7],
    [`how much lye for one kilo of olive oil if three percent of the fat is to stay free?`, 3],
    [`${OILS}, 5% overfat. Lye?`, 5],
    [`${OILS}. Superfat 6ish, say 7. Lye?`, 7],
    [`${ACEITES}, sobrengrasado 7, cuanta sosa`, 7],
    [`${ACEITES}, superengrasado del 8. Qué sosa?`, 8],
    [`${ACEITES}. Sosa. 6% sob. Gracias`, 6],
    [`${ACEITES}, sobreengrasao del 4, cuanta sosa`, 4],
    [`${ACEITES}, sin sobreengrasado. ¿Sosa?`, 0],
  ])('%s', (message, superfat) => expect(Number(given(message).superfat)).toBe(superfat));
  test.each([
    `${ACEITES}. ¿Sosa? Sin sobreengrasado decidido, lo que uséis`,
    `${OILS}. Lye? no superfat in mind yet`,
  ])('left open it is not told, so that the usual one is taken and said: %s', message => {
    expect(given(message)).toEqual({ oils: expect.stringContaining('500 g') });
  });
});

describe('what is told of the lye, the pound and what takes none', () => {
  test('how pure potash is', () => {
    expect(given('1500 g sunflower, KOH, the tub says 90% pure, superfat 2')).toMatchObject({
      lye: 'KOH 90%',
    });
  });
  test.each([
    [
      '2 libras de manteca de cerdo y 1 libra de coco, libra de 454, sobreengrasado 5, sosa?',
      '2 lb manteca de cerdo, 1 lb coco',
    ],
    [
      '2 libras (de las de 16 onzas) de manteca de cerdo y 1 libra de coco. sobreengrasado 5, sosa?',
      '2 lb manteca de cerdo, 1 lb coco',
    ],
  ])('the usual pound: %s', (message, oils) => expect(given(message).oils).toBe(oils));
  test.each([
    `${OILS}, then 30 g seaweed powder which is not oil. superfat 5, lye?`,
    `${OILS}. superfat 5, lye? The 25 g lavender is scent, leave it out of the sum.`,
  ])('what is no fat: %s', message => expect(given(message).oils).toBe('500 g olive, 200 g coconut'));
  test('a weight of nobody knows what, told to be left out, is asked', () =>
    expect(isAskedBack(`${OILS}, 30 g goes in later, don't count. lye?`)).toBe(true));
  test.each([
    ['KOH for castor 400g coconut 600g, liquid shampoo, sf 1%', '400 g castor, 600 g coconut'],
    ['potassium hydroxide for 1 kg olive oil paste, superfat 2', '1 kg olive oil'],
  ])('what soap potash makes: %s', (message, oils) =>
    expect(given(message)).toMatchObject({ oils, lye: 'KOH' }),
  );
});

describe('asked, since another figure would be right', () => {
  test.each([
    'El de mi hermana: oliva 600 coco 300, el mío: manteca de cerdo 500 ricino 50. Los junto o no sé, cuánta sosa',
    'My pot olive 500 g, hers lard 500 g, together or separate I cannot say, how much lye',
    'Una libra de aceite de coco y dos de palma, ¿cuánta soda? acá la libra es a veces de 500',
    '1 lb olive, 1 lb lard, lye? a pound here is sometimes more like 500',
    'My mould takes 1200 g. 70% olive 30% coconut. NaOH for a full mould?',
    'me caben 1000 g en el molde. 80% oliva 20% coco. ¿sosa?',
    'El molde lleva 900 g. 80% oliva 20% coco. ¿sosa?',
    '70% olive 30% coconut, 1000 g with the water and all. lye?',
    'che en Rosario, 500 g de manteca y 500 g de aceite de girasol, cuánta soda?',
    'vos tenés idea, 300 g de manteca y 300 g de oliva, sosa?',
    '500 g olive 300 g coconut, lye? It is either sodium or potassium',
    'oliva 500 g, coco 200 g, girasol 200 g, o medio girasol, cuánta sosa',
  ])('%s', message => expect(isAskedBack(message)).toBe(true));
  test.each([
    ['My mould takes 1200 g of oils. 70% olive 30% coconut. superfat 5, NaOH?', '70% olive, 30% coconut'],
    [
      '500 g de manteca de cerdo y 500 g de girasol, che, sobreengrasado 5, cuánta soda?',
      '500 g manteca de cerdo, 500 g girasol',
    ],
    ['500 g de manteca y 500 g de oliva, sobreengrasado 5, cuánta sosa?', '500 g manteca, 500 g oliva'],
  ])('and not where it is told: %s', (message, oils) => expect(given(message).oils).toBe(oils));
});

test.each([
  'how much lye for a 3 lb loaf mold, olive and coconut and lard in equal parts',
  'sosa para un molde de 1200 g, 70% oliva 30% coco',
  'quiero sacar 12 pastillas de 100 g, oliva y coco 70/30. ¿cuánta sosa?',
  '10 bars of 4 oz, 70% olive 30% coconut, lye?',
])('a weight that may be of soap: %s', message => expect(isAskedBack(message)).toBe(true));
test.each([
  'lanolin 20, olive 480 oz, coconut 150. lye? sf 4',
  '16 onzas de oliva, 8 coco, 200 karité, sosa con 5 de sobreengrasado',
])('a figure that is hardly of its neighbour’s unit is asked: %s', message =>
  expect(isAskedBack(message)).toBe(true),
);
test.each([
  ['16 oz olive, 8 coconut, 4 shea, superfat 5, lye?', '16 oz olive, 8 oz coconut, 4 oz shea'],
  ['oliva 2 libras, coco 1, sobreengrasado 5, sosa?', '2 lb oliva, 1 lb coco'],
])('a likely one takes it: %s', (message, oils) => expect(given(message).oils).toBe(oils));
test.each([
  [`${ACEITES}, sobreengrasado 3, y el agua el triple que la sosa. ¿sosa?`, '3:1'],
  [`${OILS}, superfat 2, water three times the lye. NaOH?`, '3:1'],
])('three times the lye: %s', (message, water) => expect(given(message)).toMatchObject({ water }));
test.each([
  '24 onzas de oliva, 8 onzas de coco, sobreengrasado 5, ¿sosa? Las onzas las leí en la taza de vidrio, la de rayas rojas.',
  '16 oz olive, 8 oz coconut, 5% superfat, lye? The ounces I read off the glass jug with the red lines.',
  '1000 g lard, 200 g coconut, superfat 2, lye? The kilo is what the back fat came to at the butcher, rind and all.',
  '1000 g de manteca de cerdo y 200 g de coco, sobreengrasado 2, sosa? El kilo es lo que pesó el tocino, con su corteza y todo.',
  '500 g olive, 300 g coconut, superfat 5, NaOH? The coconut’s those two tins from the korma.',
])('what was weighed, or where it was read: %s', message => expect(isAskedBack(message)).toBe(true));
test.each([
  '500g lard 250g coconut 250g olive. Sorry the lard is 550. Or maybe I took 50 out for pastry. Lye?',
  'oliva 500 g, coco 200 g, o quizá le quité algo al coco. ¿sosa?',
  'aceites 1200 y agua 400, o los 1200 son con el agua? mitad oliva mitad coco. gramos. sosa?',
  'cuánta sosa para jabon de aguacate 1 kg?',
])('what whoever asks leaves open: %s', message => expect(isAskedBack(message)).toBe(true));
test.each([
  '750g of olive with calendula in it (weighed jar, flowers and all) and 250g coconut, sf 5, how much lye',
  '750 g de oliva, tarro y flores y todo, y 250 g de coco, sobreengrasado 5, sosa',
  '800g olive 200g coconut with 5% superfat. lye please. Scale was blinking LO the whole time',
  'oliva 750 coco 250 sobreengrasado 5, ¿sosa? la báscula es de mi abuela y me parece que marca en onzas',
  'NaOH for 1500 g of beef tallow at 5%? It came from the butcher, not rendered yet',
  '1500 g de sebo con carne pegada, sobreengrasado 5, sosa?',
])('weights that are not of fat, or off a scale in doubt: %s', message =>
  expect(isAskedBack(message)).toBe(true),
);
test.each([
  ['I zeroed the jar first. 800 g olive, 200 g coconut, superfat 5, lye?', true],
  ['800 g olive, 200 g coconut, superfat 5, lye? The scale reads in grams', true],
])('%s', (message, isRead) => expect(isAskedBack(message)).toBe(!isRead));
// Arithmetic: 30 % lye is 70 parts of water to 30 of lye.
test.each(['Cuánta agua para 120 g de sosa al 30% de concentración?', 'how much water for 120 g lye at 30%'])(
  '%s',
  question => {
    expect(waterForLyeIn(question)?.waterGrams).toBeCloseTo(280, 6);
  },
);
test('which alkali a bar takes is no doubt of what is in the jar', () =>
  expect(
    given('KOH or NaOH for a bar? and the amount for 800 g sunflower and 20 g beeswax, superfat 5').oils,
  ).toBe('800 g sunflower, 20 g beeswax'));
